"""Every reason is a sentence that a farrier understands."""

from __future__ import annotations

import pytest

from pipeline.judging.reasons import reasons_for
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, Transcript
from tests.judging.making import fact, heard

TALK = heard(*((word, 0.5 if word == "reset," else 0.9) for word in ["Left", "fore", "reset,", "sorry,", "trimmed."]))


def told(found: Fact, transcript: Transcript = TALK, /, **parts: float) -> list[str]:
    named = {name.replace("_", " "): part for name, part in parts.items()}
    return reasons_for(found, named, transcript, Surroundings(transcript.text))


@pytest.mark.parametrize(
    ("part", "sentence"),
    [
        ("least", "The word “reset” was hard to hear; please listen."),
        ("least_before", "The words around it were hard to hear; please listen."),
        ("foot_before", "The word for the foot was hard to hear; is it the left fore?"),
        ("correction_after", "“Sorry” is said close by; does this still stand?"),
        ("earlier_near", "An earlier time is spoken of in the same sentence; is this of today?"),
        ("plan_near", "A plan is spoken of in the same sentence; was it done, or is it still to do?"),
        ("doubt_near", "A doubt is said in the same sentence; how sure is this?"),
        ("denial_near", "A “no” is said in the same sentence; is this there or not?"),
        ("foot_in_hand", "No foot is named beside it; is it the left fore?"),
        ("hardly_this_foot", "The words hardly seem to tell of this foot; is it the left fore?"),
        ("foot_copied", "Taken over from what was said of something else; is it the same here?"),
        ("several_horses", "It is not sure which horse is spoken of here; whose is it?"),
        ("unread_words", "More is said in this sentence than was understood; is this right?"),
        ("slot_work", "Facts said in this way are often misread; is it right?"),
    ],
)
def test_each_group_of_evidence_has_its_sentence(part: str, sentence: str) -> None:
    assert told(fact("work", "reset", span=(10, 16)), **{part: 1.0}) == [sentence]


def test_the_two_strongest_are_told_and_the_stronger_first() -> None:
    found = told(fact("work", "reset", span=(10, 16)), earlier_near=0.5, least=0.9, doubt_near=0.3)
    assert found == [
        "The word “reset” was hard to hear; please listen.",
        "An earlier time is spoken of in the same sentence; is this of today?",
    ]


def test_what_hardly_weighs_is_not_told() -> None:
    found = told(fact("work", "reset", span=(10, 16)), earlier_near=0.19)
    assert found == ["Facts said in this way are often misread; is it right?"]


def test_no_foot_is_doubted_that_was_named_beside_it() -> None:
    found = told(fact("work", "reset", span=(10, 16), rules=["foot: named beside it"]), no_foot_before=1.0)
    assert found == ["Facts said in this way are often misread; is it right?"]


def test_a_word_put_for_another_is_told_with_what_was_heard() -> None:
    talk = heard(("keratoma.", 0.9))
    words = [talk.words[0].model_copy(update={"heard": "ketomi", "support": -1.0})]
    found = told(fact("finding", "keratoma", span=(0, 9)), talk.model_copy(update={"words": words}), replaced=1.0)
    assert found == ["Heard “ketomi”, read as keratoma; please listen."]


def test_how_the_second_reader_takes_it_stands_for_the_second_opinion() -> None:
    reset, parts = fact("work", "reset", span=(10, 16)), {"otherwise": 0.5, "hardly so": 0.5, "least": 0.8}
    told = reasons_for(reset, parts, TALK, Surroundings(TALK.text), "May it be a plan?")
    assert told == ["May it be a plan?", "The word “reset” was hard to hear; please listen."]
