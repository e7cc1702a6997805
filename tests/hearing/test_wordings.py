"""What is proposed for what was written: words of the trade and names, where the trade has no use for what stands."""

from __future__ import annotations

from itertools import pairwise

import pytest

from pipeline.hearing.wordings import Proposal, Wordings
from pipeline.vocabulary import load_vocabulary


@pytest.fixture(scope="module")
def wordings() -> Wordings:
    """Those of the shipped vocabulary with three names."""
    return Wordings(load_vocabulary(), ["Nullarbor", "Marigold", "Sir Percy"])


def proposed(wordings: Wordings, text: str) -> list[Proposal]:
    first, *rest = text.split()
    return wordings.propose([first, *(f" {word}" for word in rest)])


@pytest.mark.parametrize(
    ("text", "heard", "wording"),
    [
        ("and a ketomi in the toe", "ketomi", "keratoma"),
        ("boreum on the heels", "boreum", "borium"),
        ("some cedito at the ground", "cedito", "seedy toe"),
        ("then larriber stood well", "larriber", "Nullarbor"),
    ],
)
def test_a_word_without_use_gets_the_trades_word(wordings: Wordings, text: str, heard: str, wording: str) -> None:
    assert (heard, wording) in {(p.heard, p.wording) for p in proposed(wordings, text)}


@pytest.mark.parametrize(
    "text",
    [
        "left front, mild thrush in the sulcus, some heat",
        "six nails, size one, Marigold's hinds",
        "the off-fore",
        "not any",
    ],
)
def test_what_the_trade_says_is_left_alone(wordings: Wordings, text: str) -> None:
    assert proposed(wordings, text) == []


@pytest.mark.parametrize(
    ("text", "rivals"),
    [
        ("No, heat", {"now"}),
        ("now heat", {"no"}),
        ("know heat", {"no"}),
        ("five nails", {"nine"}),
        ("fifty", {"fifteen"}),
        ("forty.", {"fourteen"}),
        ("18", {"80"}),
        ("5", {"9"}),
    ],
)
def test_no_and_numbers_are_weighed_against_their_rivals_wherever_they_stand(
    wordings: Wordings, text: str, rivals: set[str]
) -> None:
    found = proposed(wordings, f"{text} there")
    assert {p.wording for p in found if p.first == 0 and p.last == 1} == rivals
    # so unlike that a rival stands at a margin of 0 and above, and only from 3 nats up without a question
    assert {8 * (1 - p.likeness) for p in found} == {4.5}


def test_a_name_is_told_from_a_word(wordings: Wordings) -> None:
    names = {p.wording for p in proposed(wordings, "so larriber had a ketomi") if p.name}
    assert names == {"Nullarbor"}


def test_no_wording_reaches_over_the_end_of_a_clause(wordings: Wordings) -> None:
    spans = {(p.first, p.last) for p in proposed(wordings, "the keto, me again")}
    assert all(not (first <= 1 < last - 1) for first, last in spans)


def test_the_most_alike_come_first_and_are_alike_enough(wordings: Wordings) -> None:
    found = proposed(wordings, "a ketomi and boreum and cedito there")
    assert all(one.likeness >= other.likeness for one, other in pairwise(found))
    assert min(p.likeness for p in found) >= 0.66


def test_marks_and_figures_are_no_wordings(wordings: Wordings) -> None:
    assert proposed(wordings, "52 ... 38 -") == []


def test_without_names_no_name_is_proposed() -> None:
    assert not any(p.name for p in proposed(Wordings(load_vocabulary()), "so larriber stood"))


def test_places_and_owners_are_left_alone() -> None:
    assert "told" in {p.wording for p in proposed(Wordings(load_vocabulary()), "at Toll Farm")}
    assert proposed(Wordings(load_vocabulary(), known=["Toll Farm"]), "at Toll Farm") == []


def test_a_name_that_was_heard_is_left_alone_beside_one_that_sounds_like_it() -> None:
    """Forced decoding knows nothing of the roster: it prefers the commoner of two names, whichever was said."""
    assert proposed(Wordings(load_vocabulary(), ["Tallow", "Tallulah", "Pip"]), "Tallow, left hind") == []


def test_a_name_that_was_heard_swallows_no_word_beside_it() -> None:
    found = proposed(Wordings(load_vocabulary(), ["Fennel"]), "Fennel shot behind")
    assert not any(p.name for p in found)


def test_a_name_of_which_one_word_was_heard_is_still_offered(wordings: Wordings) -> None:
    assert ("sir persee", "Sir Percy") in {(p.heard, p.wording) for p in proposed(wordings, "then sir persee stood")}


def test_names_get_the_rosters_capitals_unless_the_trade_uses_the_word() -> None:
    wordings = Wordings(load_vocabulary(), ["Bingo", "Copper", "Sir Percy"])
    text = " also bingo, copper sulfate for sir percy's frog, bingos"
    assert wordings.spelled(text) == " also Bingo, copper sulfate for Sir Percy's frog, bingos"


def test_what_sounds_the_same_speaks_for_the_trade(wordings: Wordings) -> None:
    found = proposed(wordings, "pulse raised in both fours, normal behind")
    assert [(p.first, p.last, p.heard, p.wording, p.prior) for p in found] == [(4, 5, "fours", "fores", 12.0)]
