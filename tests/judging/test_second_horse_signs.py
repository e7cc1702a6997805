"""The signs that speak for a second horse, each by itself."""

from __future__ import annotations

import pytest

from pipeline.judging.horses_counted import horses_counted, turned
from pipeline.judging.naming import the_feet
from pipeline.judging.parts import Part, Parts
from pipeline.judging.spoken_names import SpokenNames
from pipeline.judging.surroundings import Surroundings
from pipeline.judging.told_again import WorkTold, slots_again
from pipeline.judging.weeks_told import WeeksTold
from pipeline.record import Flag, FlagKind, RosterHorse, Status, Transcript
from tests.judging.making import fact, heard, visit


@pytest.mark.parametrize(
    ("text", "count", "words"),
    [
        ("Two at the mill. Toby, trimmed.", 2, "two at"),
        ("So just three today, and the rain.", 3, "so just three today"),
        ("Morning, got four of them done.", 4, "got four of them"),
        ("Toby, trimmed. Two trail horses and a goat.", 2, "two trail horses"),
        ("Toby, trimmed. Six weeks for the pair of them.", 2, "pair of them"),
        ("Toby, trimmed. The other two in eight.", 3, "other two in eight"),
        ("Toby, trimmed. Seven weeks for both.", 2, "weeks for both"),
        ("Toby, trimmed. Both for five weeks.", 2, "both for five"),
        ("Toby. Underrun heels in front, the two of them. Six weeks.", 1, ""),
        ("Toby. Both hinds trimmed, both of them sound.", 1, ""),
        ("Toby. Four on the fronts, two behind. Six weeks.", 1, ""),
        ("Toby. Six weeks for both hinds to grow.", 1, ""),
        ("Toby, trimmed all four. The other two reset.", 1, ""),
    ],
)
def test_horses_are_counted_and_feet_are_not(text: str, count: int, words: str) -> None:
    found = horses_counted(text)
    assert found[0] == count
    assert words in found[1] if words else found[1] == ""


@pytest.mark.parametrize(
    ("before", "behind", "expected"),
    [
        ("he is quiet .", "she is fat", True),
        ("her left fore", "his hinds", True),
        ("he is quiet", "he is fat", False),
        ("trimmed", "she is fat", False),
        ("he and she", "she is fat", False),
        ("he is quiet", "i told her six weeks , he is fat", False),
        ("he is quiet", "the owner said she pays", False),
    ],
)
def test_he_becomes_she_where_it_is_said_of_a_horse(before: str, behind: str, expected: bool) -> None:
    assert turned(before.split(), behind.split()) is expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("fronts trimmed and hinds reset", {"LF": {"trim"}, "RF": {"trim"}, "LH": {"reset"}, "RH": {"reset"}}),
        ("reset the left fore, no, the right fore", {}),
        ("last time all four were reset", {}),
        ("next time I reset the fronts", {}),
    ],
)
def test_work_is_told_of_the_feet_beside_it(text: str, expected: dict[str, set[str]]) -> None:
    around = Surroundings(text)
    assert WorkTold(around).within([Part(0, len(around.tokens))], []) == expected


def test_work_of_facts_counts_where_it_is_said() -> None:
    around = Surroundings("weka weka weka")
    placed = [(1, fact("work", "trim")), (2, fact("work", "reset", "RH")), (1, fact("work", "reset", "LH",
              status=Status.PLANNED))]  # fmt: skip
    assert WorkTold(around).within([Part(0, 2)], placed) == {"LF": {"trim"}}


def test_slots_that_a_horse_has_once_are_told_again_on_the_same_foot() -> None:
    size, other = fact("shoe_size", "1"), fact("shoe_size", "2", "RF")
    assert slots_again([size], [fact("shoe_size", "3"), fact("finding", "thrush")]) == ["shoe_size"]
    assert slots_again([size], [other]) == []
    assert slots_again([fact("finding", "thrush")], [fact("finding", "thrush")]) == []
    assert slots_again([fact("shoe_size", "1", status=Status.HISTORY)], [size]) == []


@pytest.mark.parametrize(
    ("text", "several", "by_name"),
    [
        ("toby, trimmed. toby eight weeks, wise four.", True, True),
        ("toby, trimmed. eight weeks.", False, False),
        ("toby, trimmed. eight weeks, or six.", False, False),
        ("toby, trimmed. eight weeks, six nails.", False, False),
        ("toby, trimmed. toby in eight weeks.", False, True),
        ("toby, trimmed. toby was lame two weeks ago.", False, False),
    ],
)
def test_weeks_of_several_horses_and_of_one_by_name(text: str, several: bool, by_name: bool) -> None:
    around = Surroundings(text)
    named = [at for at, token in enumerate(around.tokens) if token.text == "toby"]
    weeks = WeeksTold(around, named)
    assert (weeks.of_several(), weeks.by_name(named)) == (several, by_name)


def test_parts_go_from_name_to_name_as_they_were_heard() -> None:
    text = "Two here. Marygold, trimmed. Rye, reset. Marigold quiet."
    asked = Flag(kind=FlagKind.HORSE, reason="Which?", quote="Marygold")
    one, other = visit(), visit()
    one, other = one.model_copy(update={"flags": [asked]}), other.model_copy(update={"horse": "Rye"})
    around, transcript = Surroundings(text), Transcript(text=text)
    names = SpokenNames(around, transcript, [one, other], [])
    parts = Parts(around, names, [one, other])
    assert parts.names == [3, 7, 11]
    assert parts.of("Marigold") == [Part(3, 7), Part(11, 14)]
    assert (parts.of("Rye"), parts.named("Rye"), parts.of(None)) == ([Part(7, 11)], [7], [Part(0, 3)])


@pytest.mark.parametrize(("other", "expected"), [("Marigolt", "Marigolt"), ("Bosun", None)])
def test_a_name_may_be_heard_for_one_that_sounds_nearly_so(other: str, expected: str | None) -> None:
    text, roster = "Marigold, trimmed.", [RosterHorse(name="Marigold"), RosterHorse(name=other)]
    spoken, typed = heard(("Marigold,", 0.9), ("trimmed.", 0.9)), Transcript(text=text)
    assert SpokenNames(Surroundings(text), spoken, [visit()], roster).mistaken_for("Marigold") == expected
    assert SpokenNames(Surroundings(text), typed, [visit()], roster).mistaken_for("Marigold") is None


def test_feet_are_listed_in_their_order() -> None:
    assert the_feet(["RH", "LF", "RF"]) == "the left fore, the right fore and the right hind"
    assert the_feet(["RH", "LF", "RF", "LH"]) == "all four feet"
    assert the_feet(["LH"]) == "the left hind"
