"""Sentences of which more was said than read are put before a person, once."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from pipeline.judging import overlooked as module
from pipeline.judging.model import Care
from pipeline.judging.overlooked import Signs, overlooked, sentences, shipped_signs, signs_of
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, Flag, FlagKind, Transcript
from tests.judging.making import fact, heard, visit

TEXT = "Left fore, thrush. Right fore seven nails, five behind. Lovely weather."


def at(words: str, slot: str, value: str | float, foot: str | None = "LF", **more: object) -> Fact:
    start = TEXT.index(words)
    return fact(slot, value, foot, span=(start, start + len(words)), quote=words, **more)


def signs(*facts: Fact) -> list[dict[str, float]]:
    around = Surroundings(TEXT)
    return [signs_of(around, one) for one in sentences(around, facts)]


def test_the_signs_of_each_sentence() -> None:
    first, second, third = signs(at("Left fore, thrush", "finding", "thrush"), at("seven nails", "nails", 7.0, "RF"))
    assert first == {"facts 1": 1.0, "slot finding": 1.0}
    assert second["slot nails"] == second["facts 1"] == 1.0
    assert second["unread numbers"] == pytest.approx(1 / 3)  # five
    assert second["unread words"] == pytest.approx(4 / 12)
    assert second["foot without a fact"] == 1.0  # behind
    assert {"unread: five", "unread: behind", "unread: right"} <= set(second)
    assert (third["facts 0"], third["unread share"]) == (1.0, 1.0)
    assert "foot without a fact" not in third


def raised(facts: Sequence[Fact], flags: Sequence[Flag] = (), above: float = 0.5) -> list[tuple[str, str]]:
    seen = visit(*facts)
    found = overlooked(Transcript(text=TEXT), Surroundings(TEXT), [seen], flags, Care.USUAL)
    return [(flag.quote, flag.reason) for _, flag in found]


@pytest.fixture(autouse=True)
def _numbers_tell(monkeypatch: pytest.MonkeyPatch) -> None:
    """Weights by which only a number that was not read, or a foot of which nothing was, speaks for a missed fact."""
    levels = {kind: dict.fromkeys(Care, 0.5) for kind in ("typed", "heard")}
    told = Signs({"unread numbers": 9.0, "foot without a fact": 2.0}, -1.0, levels)
    monkeypatch.setattr(module, "shipped_signs", lambda: told)


READ = (at("Left fore, thrush", "finding", "thrush"), at("seven nails", "nails", 7.0, "RF"))


def test_a_number_that_was_not_read_is_told_with_its_sentence() -> None:
    number = "The number “five” is said here, but nothing was read from it; was something missed?"
    assert raised(READ) == [("Right fore seven nails, five behind.", number)]


def test_a_foot_of_which_nothing_was_read_is_told() -> None:
    foot = "The left fore is named here, but nothing was read of it; was something missed?"
    assert raised(READ[1:])[0] == ("Left fore, thrush.", foot)


def test_a_foot_that_only_heads_what_is_told_next_is_no_foot_without_a_fact() -> None:
    around = Surroundings("Near fore. Toe crack. Off fore. Trimmed behind.")
    facts = [fact("finding", "crack", span=(11, 20)), fact("work", "trim", "LH", span=(22, 29))]
    heading, _, alone, _ = [signs_of(around, one) for one in sentences(around, facts)]
    assert heading["foot as a heading"] == 1.0
    assert "foot without a fact" not in heading
    assert alone["foot without a fact"] == 1.0


def test_a_sentence_that_is_asked_about_anyway_is_left_alone() -> None:
    asked = at("seven nails", "nails", 7.0, "RF", flagged=True)
    assert raised((READ[0], asked)) == []
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="why", span=(TEXT.index("five"), TEXT.index("five") + 4))
    assert raised(READ, [flag]) == []
    horse = Flag(kind=FlagKind.HORSE, reason="which one", span=flag.span)
    assert len(raised(READ, [horse])) == 1


def test_of_a_heard_memo_the_seconds_are_told() -> None:
    talk = heard(("Lovely.", 0.9), ("Five", 0.9), ("behind.", 0.9))
    ((number, flag),) = overlooked(talk, Surroundings(talk.text), [visit()], [], Care.USUAL)
    assert (number, flag.kind, flag.quote, flag.start, flag.end) == (
        0, FlagKind.NOT_UNDERSTOOD, "Five behind.", 0.5, 1.4,
    )  # fmt: skip


def test_the_stricter_the_more_is_told() -> None:
    for by_care in shipped_signs().levels.values():
        assert 0 < by_care[Care.STRICT] < by_care[Care.USUAL] < by_care[Care.FAST] < 1


def test_a_number_taken_back_is_not_asked_about() -> None:
    text = "Size five, no, four in front. Six nails, hold on, seven. Two and wait."
    around = Surroundings(text)
    assert [module._numbers(around, s) for s in sentences(around, [])] == [["four"], ["seven"], ["two"]]
