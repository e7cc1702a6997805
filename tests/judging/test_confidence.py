"""How far a fact is trusted, and what is told when it is not."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pipeline.judging import judge
from pipeline.judging.confidence import FLAG_BELOW, doubts, weigh
from pipeline.record import Fact, MatchKind, Status, Transcript
from tests.judging.making import fact, heard, judged, visit

TYPED = Transcript(text="")


def six_nails(probability: float) -> tuple[float, list[str]]:
    transcript = heard(("six", probability), ("nails", 0.95))
    return weigh(fact("nails", 6.0, span=(0, 9), quote="six nails"), transcript)


def test_typed_words_are_trusted() -> None:
    confidence, reasons = weigh(fact("finding", "thrush"), TYPED)
    assert confidence > 0.95
    assert reasons == []


def test_a_hard_word_is_named() -> None:
    _, reasons = six_nails(0.2)
    assert reasons == ["The word “six” was hard to hear; please listen."]


@given(st.floats(0, 1), st.floats(0, 1))
def test_a_word_heard_worse_is_never_trusted_more(one: float, other: float) -> None:
    low, high = sorted((one, other))
    assert six_nails(low)[0] <= six_nails(high)[0]
    assert 0 <= six_nails(low)[0] <= 1


@pytest.mark.parametrize("dear", ["no", "left", "right", "near", "off", "hind", "fore"])
def test_no_and_the_words_of_side_must_be_heard_better(dear: str) -> None:
    claim = fact("finding", "thrush", "LH", status=Status.ABSENT, span=(0, len(dear) + 7))
    confidence, reasons = weigh(claim, heard((dear, 0.55), ("thrush", 0.95)))
    plain, silent = weigh(claim.model_copy(update={"span": (0, 11)}), heard(("some", 0.55), ("thrush", 0.95)))
    assert confidence < plain
    assert (reasons, silent) == ([f"The word “{dear}” was hard to hear; please listen."], [])


def test_words_outside_the_quote_do_not_count() -> None:
    transcript = heard(("mumble", 0.01), ("thrush", 0.95))
    confidence, reasons = weigh(fact("finding", "thrush", span=(7, 13)), transcript)
    assert confidence > FLAG_BELOW
    assert reasons == []


def test_a_sound_alike_is_flagged_and_told() -> None:
    (one,) = judged(fact("finding", "thrush", match=MatchKind.SOUND_ALIKE, quote="fresh")).facts
    assert one.flagged
    assert one.reasons == ["Heard “fresh”, read as thrush; please listen."]


@pytest.mark.parametrize("match", [MatchKind.EXACT, MatchKind.VARIANT, MatchKind.VERIFIED])
def test_the_other_matches_are_not(match: MatchKind) -> None:
    (one,) = judged(fact("finding", "thrush", match=match)).facts
    assert (one.flagged, one.reasons) == (False, [])


def test_a_foot_still_in_hand_is_trusted_a_little_less() -> None:
    named = weigh(fact("finding", "thrush"), TYPED)[0]
    carried = weigh(fact("finding", "thrush", rules=["foot: still in hand"]), TYPED)[0]
    assert FLAG_BELOW < carried < named


def test_a_finding_on_no_foot_is_asked_about() -> None:
    (one,) = judged(fact("finding", "long_toe", None)).facts
    assert one.reasons == ["No foot was understood; which one is it?"]
    (of_the_horse,) = judged(fact("finding", "laminitis", None)).facts
    assert of_the_horse.reasons == []


def test_work_on_no_named_foot_is_asked_about() -> None:
    (one,) = judged(fact("work", "trim", rules=["foot: not said"])).facts
    assert one.reasons == ["No foot was said; is it all four?"]


def test_a_value_of_an_earlier_time_is_not_questioned() -> None:
    now = judged(fact("toe_angle", 36.0)).facts[0]
    then = judged(fact("toe_angle", 36.0, status=Status.HISTORY)).facts[0]
    assert (now.flagged, then.flagged) == (True, False)


FACTS = st.sampled_from(
    [
        fact("toe_angle", 33.0),
        fact("toe_angle", 52.0, "RF"),
        fact("nails", 11.0),
        fact("nails", 6.0),
        fact("work", "trim"),
        fact("work", "reset"),
        fact("work", "new_shoe", rules=["foot: not said"]),
        fact("finding", "white_line_disease", match=MatchKind.SOUND_ALIKE, quote="white lion disease"),
        fact("finding", "thrush"),
        fact("finding", "thrush", status=Status.ABSENT),
        fact("shoe_size", "2", None),
        fact("shoe_size", "00-0"),
        fact("body_condition", 1.0, None),
        fact("next_visit_weeks", 20.0, None, status=Status.PLANNED),
    ]
)
SENTENCE = re.compile(r"[A-Z].*[.?]")


@given(st.lists(FACTS, max_size=8))
def test_every_reason_is_a_sentence_and_nothing_said_is_changed(facts: list[Fact]) -> None:
    before = [f.model_copy(deep=True) for f in facts]
    (seen,) = judge([visit(*facts)], TYPED)
    assert facts == before
    untouched = {"foot", "slot", "value", "zone", "status", "severity", "quote", "span", "match", "rules"}
    assert [f.model_dump(include=untouched) for f in seen.facts] == [f.model_dump(include=untouched) for f in facts]
    for one in seen.facts:
        assert one.flagged == (one.confidence < FLAG_BELOW)
        assert bool(one.reasons) == one.flagged
        assert all(SENTENCE.fullmatch(reason) and "_" not in reason for reason in one.reasons)
    assert all(SENTENCE.fullmatch(flag.reason) and "_" not in flag.reason for flag in seen.flags)


def test_a_pulse_in_a_word_that_no_list_has_is_asked_about() -> None:
    rules = ["pulse: spoken of without a degree", "pulse: how it goes was not understood"]
    fact = Fact(foot="LF", slot="pulse", value="raised", quote="the pulse bombing", span=(9, 26), rules=rules)
    transcript = Transcript(text="Heat and the pulse bombing in the near fore.")
    assert doubts(fact, transcript) == ["“the pulse bombing”: how strong is the pulse?"]
    assert doubts(fact.model_copy(update={"rules": rules[:1]}), transcript) == []
