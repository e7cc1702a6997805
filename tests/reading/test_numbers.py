"""Spoken and written numbers: the value, the tokens it spans, and what is no number at all."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from num2words import num2words

from pipeline.reading.numbers import Number, NumberReader
from pipeline.reading.size_ranges import size_name
from pipeline.record import SHOE_SIZES
from pipeline.vocabulary import load_vocabulary

NUMBERS = NumberReader(load_vocabulary().spoken("numbers"))
MODEST = settings(max_examples=100, deadline=None)


def found(text: str) -> list[Number]:
    return NUMBERS.find(text.split())


VALUES = {
    "six nails": (0, 1, Fraction(6)),
    "put ninety two on": (1, 3, Fraction(92)),
    "hundred and two": (0, 3, Fraction(102)),
    "one hundred and five": (0, 4, Fraction(105)),
    "one hundred , and five mil": (0, 5, Fraction(105)),
    "fifty one point five": (0, 4, Fraction(103, 2)),
    "at 51.5 degrees": (1, 2, Fraction(103, 2)),
    "three and a quarter inches": (0, 4, Fraction(13, 4)),
    "twelve and a half": (0, 4, Fraction(25, 2)),
    "size 1 1/2": (1, 3, Fraction(3, 2)),
    "about 4½ inches": (1, 2, Fraction(9, 2)),
    "½ inch": (0, 1, Fraction(1, 2)),
    "half an inch": (0, 1, Fraction(1, 2)),
    "three eighths of an inch": (0, 2, Fraction(3, 8)),
    "half a dozen nails": (0, 3, Fraction(6)),
    "a dozen nails": (0, 2, Fraction(12)),
    "an inch": (0, 1, Fraction(1)),
}


@pytest.mark.parametrize("text", VALUES)
def test_value_and_span(text: str) -> None:
    (number,) = found(text)
    assert (number.start, number.end, number.value) == VALUES[text]
    assert number.high is None


RANGES = {
    "six to seven weeks": (0, 3, Fraction(6), Fraction(7)),
    "five or six weeks": (0, 3, Fraction(5), Fraction(6)),
    "5 - 6 weeks": (0, 3, Fraction(5), Fraction(6)),
    "in one or two": (1, 4, Fraction(1), Fraction(2)),
}


@pytest.mark.parametrize("text", RANGES)
def test_the_lower_end_counts(text: str) -> None:
    (number,) = found(text)
    assert (number.start, number.end, number.value, number.high) == RANGES[text]


def test_what_falls_is_no_range() -> None:
    assert [(n.value, n.high) for n in found("ten to six")] == [(Fraction(10), None), (Fraction(6), None)]


AUGHTS = {"an aught": 1, "size oh": 1, "zero": 1, "double aught": 2, "two aughts": 2, "00": 2, "triple nought": 3,
          "quad aught": 4}  # fmt: skip


@pytest.mark.parametrize("text", AUGHTS)
def test_sizes_below_one(text: str) -> None:
    (number,) = found(text)
    assert number.aughts == AUGHTS[text]
    assert size_name(number) == "0" * AUGHTS[text]


def test_an_aught_is_not_the_verb() -> None:
    assert found("ought to go") == []


@pytest.mark.parametrize(
    "text", ["quarter clips", "a quarter crack", "this one", "no one", "the other one", "oh dear", "one thing more"]
)
def test_no_number(text: str) -> None:
    assert found(text) == []


@pytest.mark.parametrize("text", ["two out of five", "2 out of 5", "two out of 5"])
def test_out_of(text: str) -> None:
    (number,) = found(text)
    assert (number.start, number.end, number.value, number.out_of) == (0, 4, Fraction(2), 5)


def test_how_cold_it_was_counts_nothing() -> None:
    assert not found("minus twenty and a wind")
    assert not found("it was minus 15 out")
    assert [n.value for n in found("came in minus two hinds")] == [Fraction(2)]


def test_ones_and_fives_are_marked_as_plural() -> None:
    assert [(n.value, n.plural) for n in found("ones in front , fives behind , 2s and a six")] == [
        (Fraction(1), True), (Fraction(5), True), (Fraction(2), True), (Fraction(6), False),
    ]  # fmt: skip


@given(st.integers(1, 199))
@MODEST
def test_every_cardinal_comes_back_at_its_place(number: int) -> None:
    words = num2words(number).replace("-", " ").split()
    (one,) = NUMBERS.find(["with", *words, "nails"])
    assert (one.start, one.end, one.value) == (1, 1 + len(words), Fraction(number))


def parts() -> st.SearchStrategy[tuple[str, Fraction]]:
    eighths = [(f"{num2words(n)} {'eighth' if n == 1 else 'eighths'}", Fraction(n, 8)) for n in (1, 3, 5, 7)]
    quarters = [("a quarter", Fraction(1, 4)), ("three quarters", Fraction(3, 4)), ("a half", Fraction(1, 2))]
    return st.sampled_from(eighths + quarters)


@given(st.integers(1, 99), parts())
@MODEST
def test_mixed_numbers_come_back(whole: int, part: tuple[str, Fraction]) -> None:
    (number,) = found(f"{num2words(whole).replace('-', ' ')} and {part[0]} inches")
    assert number.value == whole + part[1]


@given(st.integers(0, 11), st.booleans())
@MODEST
def test_sizes_keep_their_order(whole: int, half: bool) -> None:
    """000 < 00 < 0 < 1 < 1.5 < 2: common practice, no source."""
    spoken = "aught" if whole == 0 else num2words(whole)
    tail = " and a half" if half and whole else ""
    (number,) = found(f"size {spoken}{tail}")
    above = SHOE_SIZES.index(size_name(number))
    below = [SHOE_SIZES.index(size_name(found(f"size {text}")[0])) for text in ("triple aught", "double aught")]
    assert below[0] < below[1] < above
    assert size_name(number) == f"{whole}{'.5' if tail else ''}"


@given(st.lists(st.text(max_size=12), max_size=30))
@MODEST
def test_numbers_lie_in_order_within_the_tokens(tokens: list[str]) -> None:
    ends = 0
    for number in NUMBERS.find([token.lower() for token in tokens]):
        assert ends <= number.start < number.end <= len(tokens)
        ends = number.end
