"""Shoe sizes between two: "between an aught and a one", "size double aught to an aught", "a one going on a two"."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import NumberContext
from pipeline.reading.numbers import Number
from pipeline.reading.talk import Segment, Talk
from pipeline.record import FEET, SHOE_SIZES

_MOVED = frozenset({"from", "went", "gone", "moved", "dropped", "up", "down", "changed", "going", "shaped", "closed"})
_NEARLY = (["going", "on"], ["heading", "for"], ["nearly", "a"], ["nearer", "a"], ["bordering", "on"])
_NEARER = frozenset({("closer", "to"), ("nearer", "to"), ("nearer", "a"), ("nearer", "the"), ("closer", "on")})
_NEARER_WITHIN = 4  # tokens behind the two sizes
_SINCE_BETWEEN, _TO_THE_OTHER = 5, 3  # tokens
_TIMES = {"single": 1, "double": 2, "triple": 3}
_WHOLE = frozenset(size for size in SHOE_SIZES if not size.endswith(".5"))
_LARGEST = 12  # the largest shoe size kept


def new_on_a_foot(talk: Talk, mention: Mention) -> bool:
    """ "New two on the left front": on one foot it is one new shoe, of that size."""
    number, end = mention.number, mention.end
    lead = mention.start - 1 - (talk.words[mention.start - 1] in ("number", "size"))
    if number is None or talk.words[lead] != "new" or talk.words[end : end + 1] not in (["on"], ["for"]):
        return False
    foot = talk.mention_starting(end + 1 + (talk.words[end + 1 : end + 2] in (["the"], ["his"], ["her"], ["that"])))
    plain = number.high is None and number.out_of is None and number.value <= _LARGEST
    return plain and foot is not None and foot.get("feet") in FEET


class SizeRanges(NumberContext):
    """Rules for a size that is told by its two neighbours."""

    def _to_the_next(self, segment: Segment, mention: Mention, number: Number) -> tuple[str, int] | None:
        """ "Size double aught to an aught", "a one going on a two": between two sizes that follow each other."""
        if _MOVED & set(self._words[segment.start : mention.start]):
            return None  # "went from a one to a two"
        if number.high is not None and "or" not in self._words[mention.start : mention.end]:
            return self._told_range(mention, plain(number.value), plain(number.high), mention.end)
        if self._words[mention.end : mention.end + 1] == ["to"]:
            at = mention.end + 1
        elif self._words[mention.end : mention.end + 2] in _NEARLY:
            at = mention.end + 2
        else:
            return None
        while self._words[at : at + 1] and self._words[at] in ("a", "an", "size"):
            at += 1
        upper = self._talk.mention_starting(at)
        if upper is None or upper.number is None or upper.number.plural:
            return None
        return self._told_range(mention, size_name(number), size_name(upper.number), upper.end, upper.start)

    def _told_range(
        self, mention: Mention, one: str, other: str, end: int, used: int | None = None
    ) -> tuple[str, int] | None:
        name = neighbours(one, other)
        if name is None or self._words[mention.start - 1] == "from":
            return None
        if used is not None:
            self._used.add(used)
        return name, end

    def _between(self, mention: Mention, number: Number) -> tuple[str, int] | None:
        """ "Between an aught and a one" is "0-1", smaller first."""
        low = max(0, mention.start - _SINCE_BETWEEN)
        if "between" not in self._words[low : mention.start]:
            return None
        if number.aughts and (short := self._said_short(mention)) is not None:
            return short
        following = next(
            (m for m in self._talk.mentions if m.number and m.start >= mention.end and not m.dropped), None
        )
        if following is None or following.number is None or following.start - mention.end > 3:
            return None
        names = sorted((size_name(number), size_name(following.number)), key=_size_order)
        self._used.update((following.start, self._nearer_to(following)))
        return "-".join(names), following.end

    def _said_short(self, mention: Mention) -> tuple[str, int] | None:
        """ "Between a single and a double aught", "between an aught and a double": the noughts said once for both."""
        words, end = self._words, mention.end
        ahead = [w for w in words[max(0, mention.start - _SINCE_BETWEEN) : mention.start] if w not in ("a", "an")]
        behind = [w for w in words[end : end + _TO_THE_OTHER] if w not in ("a", "an")]
        if ahead[-1:] == ["and"] and ahead[-3:-2] == ["between"]:
            other, stop = ahead[-2], end
        elif ahead[-1:] == ["between"] and behind[:1] == ["and"]:
            other = " ".join(behind[1:2])
            stop = words.index(other, end) + 1 if other else end
        else:
            return None
        if stop > end and self._talk.mention_starting(stop - 1) is not None:
            return None  # "between a single aught and a double aught"
        named = neighbours("0" * _TIMES.get(other, 0), size_name(mention.number)) if mention.number else None
        return (named, stop) if named is not None else None

    def _nearer_to(self, upper: Mention) -> int:
        """ "Between a one and a two, closer to two": the number of the nearer one, which is none of its own."""
        for at in range(upper.end, upper.end + _NEARER_WITHIN):
            if tuple(self._words[at : at + 2]) in _NEARER:
                near = (m for m in self._talk.starting_in(at + 2, at + 5) if m.number is not None)
                return next((m.start for m in near), upper.start)
        return upper.start


def neighbours(one: str, other: str) -> str | None:
    """The canonical name of what lies between two sizes that follow each other, in either order."""
    low, high = sorted((one, other), key=_size_order)
    step = 2 if low in _WHOLE and high in _WHOLE and _size_order(low) >= _size_order("1") else 1
    return f"{low}-{high}" if 0 < _size_order(high) - _size_order(low) <= step else None


def size_name(number: Number) -> str:
    """The canonical shoe size of a number: aughts as noughts, half sizes with a point."""
    return "0" * number.aughts if number.aughts else plain(number.value)


def _size_order(name: str) -> int:
    return SHOE_SIZES.index(name) if name in SHOE_SIZES else len(SHOE_SIZES)


def plain(value: Fraction) -> str:
    return str(value.numerator) if value.denominator == 1 else f"{float(value):g}"
