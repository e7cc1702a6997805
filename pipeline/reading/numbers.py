"""Spoken and written numbers: cardinals, fractions, mixed numbers, ranges and the sizes below one ("double aught").

Works on lower-case tokens; spans are half-open token ranges. Nothing here knows what a number counts.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

_FIFTHS = frozenset({"fifth", "fifths"})
_DIGITS = re.compile(r"\d+(?:\.\d+)?")
_SLASH = re.compile(r"(\d+)/(\d+)")
_PLURAL_DIGITS = re.compile(r"(\d+(?:\.\d+)?)s")
_AUGHT_DIGITS = re.compile(r"0{1,4}")
_GLYPHS = {"½": Fraction(1, 2), "¼": Fraction(1, 4), "¾": Fraction(3, 4)}
_DIGITS_AND_GLYPHS = frozenset("0123456789½¼¾")
_FRACTIONS = {"half": 2, "quarter": 4, "third": 3, "eighth": 8, "sixteenth": 16}
# "A pair of ones", "size ones"; behind anything else ("leather ones") it is a pronoun.
_BEFORE_ONES = frozenset(
    [
        "size", "sizes", "of", "number", "are", "were", "in", "with", "to", "from", "and", ",", ".", "single", "fronts",
        "hinds", "fores", "feet", "front", "behind", "both", "all", "takes", "take", "took", "wears", "wear", "wore",
        "wearing",
    ]
)  # fmt: skip
# Before these, "one" is a thing that did something ("one snapped, so six").
_VERBS_OF_ONE = frozenset(["broke", "bent", "came", "fell", "went", "split", "sheared", "was", "had", "has", "did"])
# After these, "one" is a pronoun ("that one", "the loose one" is caught by the caller).
_PRONOUN_BEFORE = frozenset(
    [
        "this", "that", "the", "other", "each", "every", "which", "any", "last", "same", "loose", "bad", "good", "no",
        "another", "another's", "front", "back", "hind", "rear", "left", "right", "near", "off", "plain", "steel",
        "leather", "broke", "bent", "snapped", "lost", "dropped", "pulled", "new", "old", "those", "these", "odd",
        "big", "little",
    ]
)  # fmt: skip

_ZEROS = frozenset({"zero", "zeros", "zeroes"})
_QUARTER = 4
_PUTTING_RIGHT = frozenset({
    ",", "no", "sorry", "wait", "well", "uh", "um", "er", "erm", "make", "that", "it", "'s", "actually", "rather",
    "more", "like", "hang", "on",
})  # fmt: skip
_WEEKS = frozenset({"week", "weeks", "wks", "wk", "month", "months", "days"})
# What stands before a loose "five, six weeks"; behind anything else the first number counts something of its own.
_BEFORE_WEEKS = frozenset({
    ".", "?", "!", "say", "saying", "about", "in", "maybe", "every", "back", "again", "uh", "um", "er", "erm", "like",
    "around", "roughly", "probably", "him", "her", "them", "so",
})  # fmt: skip
_BEHIND_THE_COLD = frozenset({",", ".", "and", "but", "degrees", "out", "outside", "here", "today", "with", "again"})
_PERHAPS = (
    ["maybe", "even"],
    ["maybe"],
    ["perhaps"],
    ["possibly"],
    ["could", "be"],
    ["might", "be"],
    ["may", "be"],
    ["even"],
)
_WIDEST = 4  # weeks
_CALLED = (("call", "it"), ("make", "it"), ("say", "it"), ("leave", "it"), ("keep", "it"))


_HALF = (["and", "a", "half"], ["and", "a", "halfs"], ["and", "a", "halves"])


@dataclass(frozen=True)
class Number:
    """A number in the token span ``[start, end)``.

    ``value`` is the number, of a range its lower end, ``high`` the upper end or None; ``aughts`` counts the noughts of
    a size below one; ``out_of`` is M in "N out of M"; ``plural`` is true for "ones", "fives"; ``fraction`` for a bare
    part of a whole ("three eighths").
    """

    start: int
    end: int
    value: Fraction
    high: Fraction | None = None
    aughts: int | None = None
    out_of: int | None = None
    plural: bool = False
    fraction: bool = False
    article: bool = False


@lru_cache(maxsize=1024)  # making a fraction takes longer than finding one
def _exact(value: int | str) -> Fraction:
    return Fraction(value)


def one_and_a_half(tokens: Sequence[str], index: int) -> bool:
    """ "Got a new one and a half": no pronoun; not "a new one and a half round"."""
    return (
        tokens[index] == "one"
        and tokens[index + 1 : index + 4] in _HALF
        and tokens[index + 4 : index + 5] not in (["round"], ["rounds"], ["mesh"])
    )


def _of_the_weather(tokens: Sequence[str], number: Number) -> bool:
    """ "Minus twenty and a wind": how cold it was; "minus two shoes" counts."""
    behind = tokens[number.end] if number.end < len(tokens) else "."
    return number.start > 0 and tokens[number.start - 1] == "minus" and behind in _BEHIND_THE_COLD


class NumberReader:
    """Finds the numbers in a row of tokens, with number words taken from the vocabulary."""

    def __init__(self, spoken: dict[str, str]) -> None:
        """``spoken`` maps a word to its canonical meaning in ``numbers.csv``."""
        self._cardinals = {w: int(c) for w, c in spoken.items() if c.isdigit()}
        self._parts = {w: _FRACTIONS[c] for w, c in spoken.items() if c in _FRACTIONS}
        self._times = {w: int(c.removeprefix("times")) for w, c in spoken.items() if c.startswith("times")}
        self._aughts = {w for w, c in spoken.items() if c == "aught"}
        self._starts = {*self._cardinals, *self._parts, *self._times, *self._aughts, *_ZEROS, "a", "an", "half"}
        self._plurals = {w for w in spoken if w.endswith("s") and w.removesuffix("s") in spoken} | {"sixes"}

    def find(self, tokens: Sequence[str], said: Sequence[str] | None = None) -> list[Number]:
        """Every number of ``tokens`` (lower case), left to right, ranges and "out of" joined.

        ``said`` are the same tokens with nothing masked.
        """
        found: list[Number] = []
        end = 0
        starts = self._starts
        written = not _DIGITS_AND_GLYPHS.isdisjoint("".join(tokens))
        begun = [
            i for i, w in enumerate(tokens) if w in starts or (written and w and not w.isalpha() and self._may_begin(w))
        ]
        for index in begun:
            number = self._at(tokens, index) if index >= end else None
            if number is not None and not _of_the_weather(tokens, number):
                number = self._with_out_of(tokens, number)
                number = self._with_range(tokens, number, said or tokens)
                found.append(number)
                end = number.end
        return found

    def _may_begin(self, word: str) -> bool:
        return word in self._starts or not (word.isalpha() or _DIGITS_AND_GLYPHS.isdisjoint(word[:4]))

    def _at(self, tokens: Sequence[str], index: int) -> Number | None:
        if tokens[index] in ("a", "an"):
            if not self._counted_by_article(tokens, index + 1):
                return None
            number = self._article(tokens, index) or self._dozen(tokens, index)
            return number or self._part(tokens, index, _exact(1), index + 1)
        if number := self._aught(tokens, index) or self._dozen(tokens, index):
            return number
        value, end = self._count(tokens, index)
        return self._part(tokens, index, value, end) or self._mixed(tokens, index, value, end)

    def _counted_by_article(self, tokens: Sequence[str], index: int) -> bool:
        return index < len(tokens) and (tokens[index] in ("inch", "dozen") or tokens[index] in self._parts)

    def _aught(self, tokens: Sequence[str], index: int) -> Number | None:
        word = tokens[index]
        nxt = tokens[index + 1] if index + 1 < len(tokens) else ""
        noughty = nxt in self._aughts or nxt in _ZEROS or nxt == "0"
        if word in self._times and noughty:
            return Number(index, index + 2, _exact(0), aughts=self._times[word])
        if word in ("two", "three", "four") and nxt in self._aughts and nxt not in ("oh", "o"):
            return Number(index, index + 2, _exact(0), aughts=self._cardinals[word])
        if word[:1] == "0" and _AUGHT_DIGITS.fullmatch(word):
            return Number(index, index + 1, _exact(0), aughts=len(word))
        upper = tokens[index + 2] if nxt == "to" and index + 2 < len(tokens) else ""  # "nought to one" is a size
        ought = nxt == "to" and not (upper in ("a", "an") or upper.isdigit() or upper in self._cardinals)
        if word in self._aughts and word not in ("oh", "ohs", "o") and not ought:
            return Number(index, index + 1, _exact(0), aughts=1, plural=word in self._plurals)
        if word in _ZEROS:
            return Number(index, index + 1, _exact(0), aughts=1, plural=word != "zero")
        if word in ("oh", "o") and index and tokens[index - 1] in ("size", "sizes", "number", "an"):
            return Number(index, index + 1, _exact(0), aughts=1)
        return None

    @staticmethod
    def _article(tokens: Sequence[str], index: int) -> Number | None:
        """ "An inch" is one inch; weeks and months with an article are read in times.py."""
        before = tokens[index - 1] if index else ""
        if list(tokens[index : index + 2]) in (["an", "inch"], ["a", "inch"]) and before not in ("of", "half"):
            return Number(index, index + 1, _exact(1), article=True)
        return None

    def _part(self, tokens: Sequence[str], index: int, value: Fraction | None, end: int) -> Number | None:
        """A bare fraction: "half", "three eighths", "a quarter", "3/8"; quarters need an inch or "of" behind them."""
        if value is not None and end < len(tokens) and tokens[end] in self._parts:
            size = self._parts[tokens[end]]
            behind_inch = index > 1 and tokens[index - 1] == "and" and tokens[index - 2] in ("inch", "inches")
            measured = behind_inch or self._inch_follows(tokens, end + 1) or self._put_right(tokens, end + 1)
            if size == 4 and not measured:
                return None
            if value < size:
                return Number(index, end + 1, Fraction(value, size), fraction=True)
            return None
        if tokens[index] == "half" and self._half_counts(tokens, index + 1):
            return Number(index, index + 1, Fraction(1, 2), fraction=True)
        if tokens[index] in self._parts and tokens[index] != "half" and self._inch_follows(tokens, index + 1):
            return Number(index, index + 1, Fraction(1, self._parts[tokens[index]]), fraction=True)
        match = _SLASH.fullmatch(tokens[index]) if "/" in tokens[index] else None
        if match and int(match[2]):
            part = Fraction(int(match[1]), int(match[2]))
            return Number(
                index, index + 1, part, out_of=int(match[2]) if match[2] in ("5", "9") else None, fraction=True
            )
        if tokens[index] in _GLYPHS:
            return Number(index, index + 1, _GLYPHS[tokens[index]], fraction=True)
        return None

    @staticmethod
    def _inch_follows(tokens: Sequence[str], index: int) -> bool:
        rest = list(tokens[index : index + 3])
        return bool(rest) and (rest[0] in ("inch", "inches", "in", '"') or rest[:2] in (["of", "an"], ["of", "a"]))

    def _put_right(self, tokens: Sequence[str], index: int) -> bool:
        """ "A quarter, no, three eighths": a part that another part stands for is one itself."""
        if list(tokens[index : index + 1]) != [","]:
            return False
        at = index
        while at < len(tokens) and tokens[at] in _PUTTING_RIGHT:
            at += 1
        value, end = self._count(tokens, at)
        part = value is not None and end < len(tokens) and tokens[end] in self._parts
        return part and self._parts[tokens[end]] != _QUARTER and at > index + 1

    @staticmethod
    def _half_counts(tokens: Sequence[str], index: int) -> bool:
        return index < len(tokens) and tokens[index] in ("an", "a", "inch", "inches", "degree", "degrees", "of")

    def _dozen(self, tokens: Sequence[str], index: int) -> Number | None:
        if tokens[index] not in ("half", "a"):
            return None
        if tokens[index : index + 3] == ["half", "a", "dozen"]:
            return Number(index, index + 3, _exact(6))
        if tokens[index : index + 2] in (["a", "dozen"], ["half", "dozen"]):
            return Number(index, index + 2, Fraction(12 if tokens[index] == "a" else 6))
        return None

    def _mixed(self, tokens: Sequence[str], index: int, value: Fraction | None, end: int) -> Number | None:
        if value is None or self._pronoun(tokens, index):
            return None
        halves = tokens[min(end + 2, len(tokens) - 1)] in ("halves", "halfs")  # "two and a halves"
        plural = halves or tokens[end - 1] in self._plurals or bool(_PLURAL_DIGITS.fullmatch(tokens[end - 1]))
        article = index > 0 and tokens[index - 1] in ("a", "an")
        part, after = self._and_part(tokens, end)
        whole = value + part if part else value
        return Number(index, after, whole, plural=plural, article=article)

    def _and_part(self, tokens: Sequence[str], end: int) -> tuple[Fraction, int]:
        """The part after a whole number: "and a half", "and three eighths", "1/4"; (0, end) when there is none."""
        rest = tokens[end : end + 4]
        first = rest[0] if rest else ""
        if first != "and" and first not in _GLYPHS and "/" not in first:
            return _exact(0), end
        if (match := _SLASH.fullmatch(first)) and int(match[2]) in (2, 4, 8, 16):
            return Fraction(int(match[1]), int(match[2])), end + 1
        if first in _GLYPHS:
            return _GLYPHS[first], end + 1
        slashed = _SLASH.fullmatch(rest[1]) if len(rest) > 1 and first == "and" else None
        if slashed and int(slashed[2]) in (2, 4, 8, 16):
            return Fraction(int(slashed[1]), int(slashed[2])), end + 2
        if len(rest) >= 3 and first == "and":
            count, after = self._count(tokens, end + 1, allow_article=True)
            if count is not None and after < len(tokens) and tokens[after] in self._parts:
                size = self._parts[tokens[after]]
                quarter_noun = (
                    size == 4 and after + 1 < len(tokens) and tokens[after + 1] in ("clips", "clip", "crack", "cracks")
                )
                if count < size and not quarter_noun:
                    return Fraction(count, size), after + 1
        return _exact(0), end

    def is_size(self, word: str) -> bool:
        """Whether the word is a number as only sizes are called: "twos", "nought"."""
        return word in self._plurals or word in _ZEROS or (word in self._aughts and len(word) > len("ohs"))

    def _pronoun(self, tokens: Sequence[str], index: int) -> bool:
        follower = tokens[index + 1] if index + 1 < len(tokens) else ""
        if one_and_a_half(tokens, index):
            return False
        if tokens[index] == "one" and follower in ("'s", "of", "thing", "more"):
            return follower != "of" or index + 2 < len(tokens)
        if tokens[index] == "one" and (
            follower in _VERBS_OF_ONE or (follower.endswith("ed") and follower not in self._cardinals)
        ):
            return True
        masked = tokens[index] == "ones" and index > 0 and tokens[index - 1] not in _BEFORE_ONES
        return tokens[index] in ("one", "ones") and index > 0 and (masked or tokens[index - 1] in _PRONOUN_BEFORE)

    def _count(self, tokens: Sequence[str], index: int, allow_article: bool = False) -> tuple[Fraction | None, int]:
        """A whole or decimal number at ``index`` and the index behind it."""
        if index >= len(tokens):
            return None, index
        word = tokens[index]
        if allow_article and word in ("a", "an"):
            return _exact(1), index + 1
        digits = (_DIGITS.fullmatch(word) or _PLURAL_DIGITS.fullmatch(word)) if word[:1].isdecimal() else None
        if digits:
            return _exact(word.rstrip("s")), index + 1
        if word and word[-1] in _GLYPHS and word[:-1].isdecimal():
            return Fraction(word[:-1]) + _GLYPHS[word[-1]], index + 1
        if word not in self._cardinals:
            return None, index
        value, end = self._cardinals[word], index + 1
        if value in range(20, 100, 10) and end < len(tokens) and 1 <= self._cardinals.get(tokens[end], 0) <= 9:
            value, end = value + self._cardinals[tokens[end]], end + 1
        value, end = self._hundreds(tokens, value, end)
        return self._decimals(tokens, _exact(value), end)

    def _hundreds(self, tokens: Sequence[str], value: int, end: int) -> tuple[int, int]:
        if value == 100:
            pass
        elif value == 1 and end < len(tokens) and 10 <= self._cardinals.get(tokens[end], 0) < 100:
            rest, after = self._count(tokens, end)  # "one thirty two" is a hundred and thirty two
            return (value, end) if rest is None else (100 + int(rest), after)
        elif 1 <= value <= 9 and end < len(tokens) and tokens[end] == "hundred":
            value, end = value * 100, end + 1
        else:
            return value, end
        skip = end + 1 if end < len(tokens) and tokens[end] == "and" else end
        skip = end + 2 if list(tokens[end : end + 2]) == [",", "and"] else skip  # a pause within the number
        rest, after = self._count(tokens, skip)
        if rest is not None and rest < 100 and rest.denominator == 1:
            return value + int(rest), after
        return value, end

    def _decimals(self, tokens: Sequence[str], value: Fraction, end: int) -> tuple[Fraction, int]:
        if end + 1 < len(tokens) and tokens[end] == "point" and self._cardinals.get(tokens[end + 1], 10) < 10:
            return value + Fraction(self._cardinals[tokens[end + 1]], 10), end + 2
        return value, end

    def _with_out_of(self, tokens: Sequence[str], number: Number) -> Number:
        if list(tokens[number.end : number.end + 2]) == ["out", "of"]:
            total, end = self._count(tokens, number.end + 2)
            if total is not None and total.denominator == 1:
                return Number(number.start, end, number.value, out_of=int(total))
        if tokens[number.end : number.end + 2] in (["of", "5"], ["of", "five"], ["over", "five"], ["over", "5"]):
            return Number(number.start, number.end + 2, number.value, out_of=5)
        if not _FIFTHS.isdisjoint(tokens[number.end : number.end + 1]) and "of" not in tokens[number.end + 1 :][:1]:
            return Number(number.start, number.end + 1, number.value, out_of=5)  # "two fifths lame"
        if number.out_of is not None:  # "2/5" was read as a fraction; whether it is a grade is the caller's question
            return Number(number.start, number.end, number.value, out_of=number.out_of, fraction=True)
        return number

    def _with_range(self, tokens: Sequence[str], number: Number, said: Sequence[str]) -> Number:
        """ "six to seven", "5-6", "five or six", "five, six weeks": the lower end counts, the upper is kept."""
        if (loosely := self._told_loosely(said, number)) is not None:
            return loosely
        if (
            number.end + 1 >= len(tokens)
            or tokens[number.end] not in ("to", "or", "-")
            or number.aughts
            or number.out_of
        ):
            return number
        high = self._at(tokens, number.end + 1) if self._may_begin(tokens[number.end + 1]) else None
        if high is None or high.aughts is not None or not number.value < high.value or high.out_of:
            return number
        high = self._with_out_of(tokens, high)  # "one to two out of five"
        return Number(number.start, high.end, number.value, high=high.value, out_of=high.out_of)

    def _told_loosely(self, tokens: Sequence[str], number: Number) -> Number | None:
        """ "Say five, six weeks", "six, maybe seven weeks": weeks behind the next; not "took five, six weeks"."""
        at = number.end + (tokens[number.end : number.end + 1] == [","])
        at += tokens[at : at + 1] == ["or"]
        doubt = next((len(form) for form in _PERHAPS if tokens[at : at + len(form)] == form), 0)
        if number.aughts or number.plural or number.out_of or not (doubt or tokens[at - 1] == ","):
            return None
        high, end = self._count(tokens, at + doubt)
        end += bool(doubt) and tokens[end : end + 1] == [","]
        timed = end < len(tokens) and tokens[end] in _WEEKS
        if high is None or not timed or not 0 < high - number.value <= (_WIDEST if doubt else 2):
            return None
        ahead = tuple(tokens[max(0, number.start - 2) : number.start])
        led = not ahead or ahead[-1] in _BEFORE_WEEKS or ahead in _CALLED
        return Number(number.start, end, number.value, high=high) if led else None
