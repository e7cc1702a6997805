"""A second horse whose name was lost in hearing is asked about, with everything told behind the place."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.judging import judge
from pipeline.reading import Reader
from pipeline.record import Fact, Flag, FlagKind, RosterHorse, Transcript, Visit
from pipeline.vocabulary import load_vocabulary
from tests.judging.making import heard

ROSTER = [RosterHorse(name=name) for name in ("Toby", "Rye", "Marigold", "Bertie", "Birdie")]
DOUBTS = ("Another horse may have come in", "Told before")
FEET = ("LF", "RF", "LH", "RH")

Told = tuple[str | None, str, str | float]


@pytest.fixture(scope="module")
def reader() -> Reader:
    return Reader(load_vocabulary())


def clearly(text: str) -> Transcript:
    """A transcript of which every word was well heard."""
    return heard(*((word, 0.97) for word in text.split()))


def judged(reader: Reader, transcript: Transcript) -> list[Visit]:
    return judge(reader.read(transcript, ROSTER, date(2026, 4, 14)), transcript, roster=ROSTER)


def doubted(visit: Visit) -> list[Fact]:
    return [fact for fact in visit.facts if any(reason.startswith(DOUBTS) for reason in fact.reasons)]


def asked(visit: Visit) -> list[Flag]:
    return [flag for flag in visit.flags if "may be" in flag.reason and "another horse" in flag.reason]


def told(facts: list[Fact]) -> list[Told]:
    return [(fact.foot, fact.slot, fact.value) for fact in facts]


LOST = [
    (
        "Toby, trimmed all four, pretty quiet. Six weeks. Weka, same barn, trimmed all four. Thrush left hind, mild.",
        "From “Weka, same barn, trimmed all” on this may be another horse: the work on all four feet is told once"
        " more, the weeks are told just before and “Weka” may be a name; please listen.",
        [("LH", "finding", "thrush")],
    ),
    (
        "Toby, reset all round, quiet. Seven weeks. Grey mare next, trimmed all four, she's fidgety.",
        "From “Grey mare next, trimmed all” on this may be another horse: the work on all four feet is told once"
        " more, the manner is told once more and the weeks are told just before; please listen.",
        [(None, "manner", "fidgety")],
    ),
    (
        "Toby, he's fat, trimmed all four. Then her fronts were reset, six nails. She's quiet.",
        "From “Then her fronts were reset” on this may be another horse: the work on the left fore and the right fore"
        " is told once more and “he” and “she” change; please listen.",
        [
            ("LF", "work", "reset"), ("RF", "work", "reset"), ("LF", "nails", 6.0), ("RF", "nails", 6.0),
            (None, "manner", "quiet"),
        ],
    ),
    (
        "Two at the mill. Toby, reset the fronts, hinds trimmed. Gold has thrush in the left hind, mild.",
        "From “Gold has thrush in the” on this may be another horse: “two at” is said, and fewer horses were read;"
        " please listen.",
        [("LH", "finding", "thrush")],
    ),
    (
        "Toby, trimmed all four. Thrush left hind. Right front was loose so I reset it, six nails. Toby eight weeks,"
        " wise four.",
        "From “Thrush left hind” on this may be another horse: the weeks are told for Toby by name, the work on"
        " the right fore is told once more and weeks are told for several horses; please listen.",
        [("LH", "finding", "thrush"), ("RF", "shoe_state", "loose"), ("RF", "work", "reset"), ("RF", "nails", 6.0)],
    ),
    (
        "Toby, reset all round, six nails. Last one, reset all round, seven nails, quiet.",
        "From “Last one, reset all round” on this may be another horse: the work on all four feet is told once more"
        " and the nails are told once more; please listen.",
        [*((foot, "nails", 7.0) for foot in FEET), (None, "manner", "quiet")],
    ),
    (
        "Trimmed all four, quiet. Toby, reset all four, six nails. Eight weeks.",
        "What is told before Toby is named may be of another horse: the work on all four feet is told once more;"
        " please listen.",
        [(None, "manner", "quiet")],
    ),
    (
        "Bertie and Bertie, at the mill. Bertie, trimmed all four. Thrush left hind.",
        "From “Bertie and Bertie, at the” on this may be another horse: “Bertie and Bertie” is heard; please listen.",
        [*((foot, "work", "trim") for foot in FEET), ("LH", "finding", "thrush")],
    ),
]  # fmt: skip


@pytest.mark.parametrize(("text", "question", "facts"), LOST)
def test_a_part_that_begins_without_a_name_is_asked_about(
    reader: Reader, text: str, question: str, facts: list[Told]
) -> None:
    (visit,) = judged(reader, clearly(text))
    (flag,) = asked(visit)
    assert (flag.kind, flag.reason, flag.quote) == (FlagKind.HORSE, question, "")
    assert sorted(told(doubted(visit)), key=str) == sorted(facts, key=str)
    assert all(fact.flagged and fact.confidence <= 0.5 for fact in doubted(visit))


def test_the_question_stands_on_the_sentence_and_its_seconds(reader: Reader) -> None:
    text = "Toby, trimmed all four, quiet. Six weeks. Weka, same barn, trimmed all four. Thrush left hind."
    (visit,) = judged(reader, clearly(text))
    (flag,) = asked(visit)
    assert text[slice(*flag.span)] == "Weka, same barn, trimmed all four."
    assert (flag.start, flag.end) == (3.5, 6.4)
    (thrush,) = doubted(visit)
    assert thrush.reasons[-1] == "Another horse may have come in at “Weka, same barn, trimmed all”; whose is it?"


def test_what_stands_before_the_first_name_is_told_so(reader: Reader) -> None:
    (visit,) = judged(reader, clearly("Trimmed all four, quiet. Toby, reset all four, six nails. Eight weeks."))
    (manner,) = doubted(visit)
    assert manner.reasons[-1] == "Told before Toby is named, and perhaps of another horse; whose is it?"


@pytest.mark.parametrize(
    "text",
    [
        "Toby, trimmed all four. Six weeks. Thrush in the left hind, mild. I said six weeks, no, make it five.",
        "Toby, trimmed all four. Six weeks. Oh, and I forgot, thrush left hind, mild.",
        "Toby, trimmed all four. Thrush left hind. No, I didn't, I reset all four.",
        "Toby, reset the fronts, six nails. Same again on the hinds.",
        "Toby. Last time he was reset all round. Trimmed all four today, thrush left hind.",
        "Toby, pulled all four and left them off. Trimmed all four. Thrush left hind.",
        "Toby, he's fat, trimmed all four. I told her six weeks and she was pleased. Thrush left hind, mild.",
        "Toby, underrun heels in front, both of them. Reset the fronts. Six weeks.",
        "Toby, trimmed all four. Weka was barking the whole time. Thrush left hind, mild.",
        "Toby, trimmed the hinds. Next the fronts, reset, six nails. Six weeks.",
        "Toby, he's fat, trimmed all four. Back in the barn he was quiet. Thrush left hind. Toby six weeks.",
        "Two at the mill. Toby, trimmed all four. Six weeks. Rye, trimmed all four. Eight weeks for the pair of them.",
        "Toby, trimmed all four. Then Rye, reset all four. Back to Toby, thrush left hind. He's quiet.",
    ],
)
def test_one_horse_and_horses_that_were_all_read_are_not_asked_about(reader: Reader, text: str) -> None:
    visits = judged(reader, clearly(text))
    assert [flag.reason for visit in visits for flag in asked(visit)] == []
    assert [told(doubted(visit)) for visit in visits] == [[] for _ in visits]


def test_typed_text_needs_more_since_a_name_is_seldom_lost_in_it(reader: Reader) -> None:
    text = "Two at the mill. Toby, reset the fronts, hinds trimmed. Gold has thrush in the left hind, mild."
    (visit,) = judged(reader, Transcript(text=text))
    assert asked(visit) == []
    again = "Toby, reset all round, six nails. Last one, reset all round, seven nails, quiet."
    (visit,) = judged(reader, Transcript(text=again))
    assert len(asked(visit)) == 1
    assert len(doubted(visit)) == len(FEET) + 1


def test_a_horse_on_either_side_of_a_lost_one_keeps_its_facts(reader: Reader) -> None:
    text = "Toby, trimmed all four, quiet. Six weeks. Weka, trimmed all four. Thrush left hind. Rye, reset the fronts."
    toby, rye = judged(reader, clearly(text))
    assert told(doubted(toby)) == [("LH", "finding", "thrush")]
    assert (doubted(rye), asked(rye)) == ([], [])
