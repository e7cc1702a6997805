"""Margins worked by hand: an invented recogniser with one piece a word and set probabilities."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from pipeline.hearing.verified import replaced, support
from pipeline.hearing.weighing import Weighed, weigh, written
from pipeline.hearing.wordings import Proposal

WORDS = ["Some", " ketomi,", " in", " the", " toe", " today", " and", " all", " well."]


class Ear:
    """One piece a word, numbered as it comes; every piece is as probable as it is told, in nats."""

    def __init__(self, **nats: float) -> None:
        self.pieces: list[str] = []
        self.nats = nats
        self.texts: list[str] = []

    def encode(self, text: str) -> list[int]:
        words = [word.strip(" ,.").lower() for word in text.split()]
        self.pieces += [word for word in words if word not in self.pieces]
        return [self.pieces.index(word) for word in words]

    def weigh(self, texts: list[list[int]]) -> list[NDArray[np.float64]]:
        self.texts += [" ".join(self.pieces[piece] for piece in text) for text in texts]
        return [np.array([self.nats.get(self.pieces[piece], -1.0) for piece in text]) for text in texts]


def keratoma(likeness: float = 0.9) -> Proposal:
    return Proposal(1, 2, "ketomi", "keratoma", likeness)


def test_the_margin_is_the_difference_over_the_wording_and_four_pieces_behind() -> None:
    ear = Ear(ketomi=-7.0, keratoma=-2.0)
    (one,) = weigh(WORDS, [keratoma()], ear.encode, ear.weigh)
    assert one.margin == 5.0
    assert ear.texts == ["some ketomi in the toe today and all well", "some keratoma in the toe today"]


def test_what_comes_behind_counts_with_it() -> None:
    class Context(Ear):
        def weigh(self, texts: list[list[int]]) -> list[NDArray[np.float64]]:
            plain, other = super().weigh(texts)
            other[2:] += 0.5  # the four behind fit better there
            return [plain, other]

    ear = Context(ketomi=-3.0, keratoma=-3.0)
    (one,) = weigh(WORDS, [keratoma()], ear.encode, ear.weigh)
    assert one.margin == 2.0


def test_wordings_far_apart_share_a_text_and_near_ones_do_not() -> None:
    far = Proposal(7, 8, "all", "oil", 0.8)
    near = Proposal(3, 4, "the", "toe", 0.7)
    ear = Ear()
    weigh(WORDS, [keratoma(), far, near], ear.encode, ear.weigh)
    assert ear.texts[1:] == ["some keratoma in the toe today and oil well", "some ketomi in toe toe today and all"]


def test_no_more_than_three_texts_are_weighed_for_a_stretch() -> None:
    many = [Proposal(1, 2, "ketomi", f"word{number}", 0.9 - number / 100) for number in range(11)]
    ear = Ear()
    weighed = weigh(WORDS, many, ear.encode, ear.weigh)
    assert (len(ear.texts), [w.proposal.wording for w in weighed]) == (4, [f"word{number}" for number in range(3)])


def test_without_proposals_nothing_is_weighed() -> None:
    ear = Ear()
    assert weigh(WORDS, [], ear.encode, ear.weigh) == []
    assert ear.texts == []


@pytest.mark.parametrize(
    ("words", "text"),
    [
        ([" ketomi,"], " keratoma,"),
        (["Ketomi."], "Keratoma."),
        ([" ke", " tomi?"], " keratoma?"),
        ([" X"], " Keratoma"),
    ],
)
def test_a_wording_is_written_as_what_stood_there(words: list[str], text: str) -> None:
    assert written(words, Proposal(0, len(words), "", "keratoma", 1.0)) == text


def test_unlikeness_costs_eight_nats() -> None:
    assert support(Weighed(keratoma(0.75), 1.0)) == -1.0


def test_what_stands_beside_it_speaks_for_a_wording() -> None:
    assert support(Weighed(Proposal(0, 1, "fours", "fores", 1.0, prior=12.0), -14.0)) == -2.0


@pytest.mark.parametrize(
    ("likeness", "margin", "stands"), [(1.0, -7.7, True), (1.0, -7.9, False), (0.4375, -0.1, False)]
)
def test_a_rival_must_be_preferred_by_the_sound_also_to_a_rare_word(
    likeness: float, margin: float, stands: bool
) -> None:
    text, _ = replaced(WORDS, [Weighed(Proposal(1, 2, "ketomi", "keratoma", likeness), margin)], pieces)
    assert text.startswith("Some keratoma, in") == stands


def pieces(text: str) -> list[int]:
    """Words that begin with k are rare: two pieces; all others one."""
    return [0, 0] if text.strip().startswith("k") else [0]


def test_the_best_of_overlapping_wordings_stands() -> None:
    good, better = Weighed(keratoma(), 0.0), Weighed(Proposal(0, 2, "some ketomi", "some canker", 1.0), 1.0)
    text, done = replaced(WORDS, [good, better], pieces)
    assert text == "Some canker, in the toe today and all well."
    assert [(r.heard, r.support, text[r.start : r.end]) for r in done] == [("Some ketomi", 1.0, "Some canker,")]


@pytest.mark.parametrize(("margin", "stands"), [(-4.4, True), (-4.6, False)])
def test_a_common_word_gives_way_to_a_well_borne_wording_only(margin: float, stands: bool) -> None:
    instead = Weighed(Proposal(3, 4, "the", "toe", 1.0), margin)
    text, done = replaced(WORDS, [instead], pieces)
    assert ("in toe toe" in text, len(done)) == (stands, int(stands))


@pytest.mark.parametrize(("margin", "stands"), [(-7.7, True), (-7.9, False)])
def test_a_word_that_the_recogniser_spells_in_pieces_gives_way_sooner(margin: float, stands: bool) -> None:
    text, _ = replaced(WORDS, [Weighed(keratoma(1.0), margin)], pieces)
    assert text.startswith("Some keratoma, in") == stands


def test_two_wordings_are_both_replaced_in_their_order() -> None:
    both = [Weighed(Proposal(7, 8, "all", "oil", 1.0), 1.0), Weighed(keratoma(1.0), 0.0)]
    text, done = replaced(WORDS, both, pieces)
    assert text == "Some keratoma, in the toe today and oil well."
    assert [text[r.start : r.end] for r in done] == [" keratoma,", " oil"]
