"""Fitting the second opinion and the signs of an overlooked fact: what memos share, never a memo's own words."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.judging.model import Care
from pipeline.judging.opinion import NOT_SO
from pipeline.record import HorseMatch, Transcript, Visit
from tests.bench.judging.opining import Said, fit_opinion, opinions_left_out, said_in
from tests.bench.judging.overlooking import (
    ReadSentence,
    chances_left_out,
    fit_signs,
    levels_of,
    sentences_of,
)
from tests.judging.making import fact, visit

TEXT = "Marigold. Left fore thrush. Six nails on it."
GOLD = {
    "id": "one",
    "visits": [
        {
            "horse": "Marigold",
            "facts": [["LF", "finding", "thrush", "history", None, None], ["LF", "nails", 6, "present", None, None]],
        }
    ],
}


def said(memos: int = 12) -> list[Said]:
    """Facts of memos in which "had" means an earlier time, and of which the first alone says "odd"."""
    found = []
    for number in range(memos):
        own = {"in: odd"} if number == 0 else set()
        found += [Said(f"memo {number}", frozenset({"before: had", *own}), "history")] * 3
        found += [Said(f"memo {number}", frozenset({"before: has"}), "present")] * 3
        found.append(Said(f"memo {number}", frozenset({"slot: work"}), ("absent", "planned", NOT_SO)[number % 3]))
        found.append(Said(f"memo {number}", frozenset({"slot: work"}), ("suspected", "resolved")[number % 2]))
    return found


def test_what_was_meant_is_told_by_gold() -> None:
    (thrush, corn) = said_in(
        GOLD,
        [visit(fact("finding", "thrush", span=(10, 26)), fact("finding", "corn", span=(10, 26)))],
        TEXT,
    )
    assert (thrush.memo, thrush.meant, corn.meant) == ("one", "history", NOT_SO)
    assert {"in: thrush", "slot: finding"} <= thrush.words


def test_a_word_that_several_memos_hold_speaks_for_what_it_meant() -> None:
    opinion = fit_opinion(said())
    assert opinion.chances({"before: had"})["history"] > 0.6
    assert opinion.chances({"before: has"})["present"] > 0.6
    assert "in: odd" not in opinion.weights


def test_a_memo_gets_an_opinion_that_never_saw_it() -> None:
    alone = [Said("alone", frozenset({"before: had"}), "planned") for _ in range(400)]
    found = [*said(), *alone]
    opinion = opinions_left_out(found)["alone"]
    assert opinion.chances({"before: had"})["history"] > 0.6
    assert fit_opinion(found).chances({"before: had"})["planned"] > 0.6


def test_a_sentence_with_a_missed_fact_is_known_by_its_place() -> None:
    read = Visit(horse="Marigold", horse_match=HorseMatch.KNOWN, date=date(2026, 4, 14),
                 facts=[fact("finding", "thrush", status="history", span=(10, 26))])  # fmt: skip
    places = {"nails": [(28, 37)]}
    found = list(sentences_of("typed", GOLD, [read], Transcript(text=TEXT).text, lambda gold: places.get(gold[1], [])))
    assert [one.missed for one in found] == [False, False, True]


def sentences() -> list[ReadSentence]:
    """Sentences of twenty memos: of those with a number that was not read, three in four hide a fact."""
    found = []
    for number in range(20):
        for place in range(8):
            signs = {"unread numbers": 1.0} if place < 4 else {"facts 1": 1.0}
            found.append(ReadSentence(f"memo {number}", f"memo {number} slt", "typed", signs, place < 3))
    return found


def test_signs_are_weighed_and_the_levels_flag_as_many_as_they_may() -> None:
    found = sentences()
    chances = chances_left_out(found)
    levels = levels_of([*found, *(ReadSentence("m", "m", "heard", {}, False),)], [*chances, 0.1])
    signs = fit_signs(found, levels)
    assert signs.chance({"unread numbers": 1.0}) == pytest.approx(0.7, abs=0.1)  # the penalty holds it below 3 in 4
    assert signs.chance({"facts 1": 1.0}) < 0.1
    assert levels["typed"][Care.STRICT] <= levels["typed"][Care.USUAL] <= levels["typed"][Care.FAST]
