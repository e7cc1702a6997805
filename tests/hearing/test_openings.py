"""A name that the recogniser missed at the head of a memo: found only where the sound bears it out."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from pipeline.hearing.openings import is_named, opening_name
from pipeline.hearing.weighing import Weighed
from pipeline.hearing.wordings import Proposal

ROSTER = ("Marigold", "Sedge", "Quillon")


def words(text: str) -> list[str]:
    return [f" {word}" for word in text.split()]


class Ear:
    """The margin of every name as it is told, far below nothing for the others; keeps what it was asked."""

    def __init__(self, **nats: float) -> None:
        self.nats = nats
        self.asked: list[tuple[str, str]] = []

    def __call__(self, proposals: Sequence[Proposal]) -> list[Weighed]:
        self.asked += [(p.heard, p.wording) for p in proposals]
        return [Weighed(p, self.nats.get(p.wording.lower(), -40.0)) for p in proposals]


def test_a_name_written_as_other_words_is_found_where_it_was_said() -> None:
    found = opening_name(words("Right then, merry gold, the cob. Trimmed all round."), ROSTER, Ear(marigold=-3.0))
    assert found is not None
    assert (found.proposal.wording, found.proposal.heard) == ("Marigold", "merry gold")
    assert found.proposal.name


@pytest.mark.parametrize(("margin", "stands"), [(-9.0, True), (-15.0, False)])
def test_it_stands_only_where_the_sound_bears_it_out(margin: float, stands: bool) -> None:
    assert (opening_name(words("Merry gold, trimmed."), ROSTER, Ear(marigold=margin)) is not None) == stands


@pytest.mark.parametrize(("other", "stands"), [(-9.0, True), (-4.0, False)])
def test_another_name_nearly_as_good_leaves_it_open(other: float, stands: bool) -> None:
    """Both "Marigold" and "Marygold" sound like what was written."""
    ear = Ear(marigold=-3.0, marygold=other)
    assert (opening_name(words("Merry gold, trimmed."), [*ROSTER, "Marygold"], ear) is not None) == stands


@pytest.mark.parametrize(
    "text",
    ["New one here, merry gold, trimmed.", "A mare called merry gold, trimmed.", "Her name's merry gold, trimmed."],
)
def test_a_horse_said_to_be_new_or_named_is_no_horse_of_the_roster(text: str) -> None:
    ear = Ear(marigold=5.0)
    assert opening_name(words(text), ROSTER, ear) is None
    assert ear.asked == []


@pytest.mark.parametrize(
    "text",
    [
        "Merry gold, new shoes all round.",
        "Merry gold, new all round, size two.",
        "Merry gold. New ones on the fronts, steel.",
        "Merry gold has a new set. " + "and so on " * 10 + "new horse next.",
    ],
)
def test_new_shoes_are_no_new_horse(text: str) -> None:
    found = opening_name(words(text), ROSTER, Ear(marigold=-3.0))
    assert found is not None
    assert found.proposal.wording == "Marigold"


@pytest.mark.parametrize("text", ["Merry gold, not Sedge, trimmed.", "Not Sedge, merry gold, trimmed."])
def test_a_name_that_the_horse_is_told_apart_from_is_not_its_own(text: str) -> None:
    ear = Ear(marigold=-3.0, sedge=0.0)
    found = opening_name(words(text), ROSTER, ear)
    assert found is not None
    assert found.proposal.wording == "Marigold"
    assert "Sedge" not in {name for _, name in ear.asked}


def test_only_the_head_is_looked_at_and_no_words_across_a_full_stop() -> None:
    ear = Ear()
    opening_name(words("Merry. Gold " + "and so on " * 5 + "merry gold"), ROSTER, ear)
    heads = [heard for heard, name in ear.asked if name == "Marigold"]
    assert "merry gold" not in heads
    assert "merry" in heads


def test_words_that_sound_nothing_like_a_name_are_not_weighed() -> None:
    ear = Ear()
    assert opening_name(words("He stood up."), ["Quillon"], ear) is None
    assert ear.asked == []


@pytest.mark.parametrize(
    ("text", "named"),
    [
        (" Sedge, trimmed.", True),
        (" This is sedge's farm.", True),
        (" The sedges are high.", False),
        (" Nobody.", False),
        (" This one, not Sedge.", False),
        (" Sedge, not Quillon.", True),
        (" Reddy was lame. " + "and so on " * 5 + " Then Sedge.", False),
    ],
)
def test_a_name_stands_at_the_head_as_a_word(text: str, named: bool) -> None:
    assert is_named(text, ROSTER) is named


@pytest.mark.parametrize(("margin", "stands"), [(-1.0, False), (3.0, False), (5.0, True)])
def test_a_name_that_sounds_hardly_like_what_was_written_needs_the_sound_outright(margin: float, stands: bool) -> None:
    """Of "retlete" and "Diesel" hardly half is alike, which costs 4 nats."""
    assert (opening_name(words("Retlete begins."), ["Diesel"], Ear(diesel=margin)) is not None) is stands
