"""Ways in which bytes and texts go wrong; what comes out follows from the random numbers alone."""

from __future__ import annotations

import random
from collections.abc import Callable, Sequence

_NUMBERS = (
    b"\x00",
    b"\xff",
    b"\x7f\xff\xff\xff",
    b"\xff\xff\xff\xff",
    b"\x00\x00\x00\x00",
    b"\x80\x00\x00\x00",
    b"\x01\x00\x00\x00",
)
_ODD = (
    "\x00", "\ufeff", "\u202e", "\u2028", "\r", "\n\n", "\t", "\u200b", "\U0001f40e", "é", "e\u0301", "ﬁ", "½", "°",
    "\ud7ff", "\uffff", "′", "″", "١٢", "Ⅻ", "二", "ß", "İ", "'", "’", "“", '"', "-", "—", "/", "\\", "%s", "{}", "00",
    "1e309", "-1", "999999999999999999999999", "0.0000001", "1/0", "½½", "3.5.2", "..", "…", "?!", ".", ",", "(", "0",
)  # fmt: skip
_SAID = (
    "no", "not", "and", "or", "scratch that", "left", "right", "front", "hind", "both", "all four", "except", "each",
    "the same", "a side", "quarter", "and a half", "hundred", "thousand", "million", "point", "aught", "double",
    "degrees", "inches", "weeks", "last time", "maybe", "no heat", "new horse",
)  # fmt: skip


def damaged_bytes(whole: bytes, chance: random.Random) -> bytes:
    """A file with one to four things wrong: cut off, bits turned, pieces lost, doubled, moved, numbers made huge."""
    data = bytearray(whole)
    for _ in range(chance.randint(1, 4)):
        chance.choice(_DAMAGES)(data, chance)
    return bytes(data)


def _cut(data: bytearray, chance: random.Random) -> None:
    del data[chance.randint(0, len(data)) :]


def _turn_bits(data: bytearray, chance: random.Random) -> None:
    for _ in range(chance.choice((1, 3, 20, 200))):
        if data:
            data[_place(data, chance) % len(data)] ^= 1 << chance.randrange(8)


def _number(data: bytearray, chance: random.Random) -> None:
    place, number = _place(data, chance), chance.choice(_NUMBERS)
    data[place : place + len(number)] = number


def _lose(data: bytearray, chance: random.Random) -> None:
    place = _place(data, chance)
    del data[place : place + chance.choice((1, 4, 100, 5000))]


def _double(data: bytearray, chance: random.Random) -> None:
    place = _place(data, chance)
    data[place:place] = data[place : place + chance.choice((4, 100, 5000))] * chance.choice((1, 1, 50))


def _noise(data: bytearray, chance: random.Random) -> None:
    place = _place(data, chance)
    size = chance.choice((4, 64, 2000))
    data[place : place + size] = chance.randbytes(size)


def _place(data: bytearray, chance: random.Random) -> int:
    """Half of the time in the first 600 bytes, where headers are."""
    return chance.randint(0, min(len(data), 600) if chance.random() < 0.5 else len(data)) if data else 0


_DAMAGES: Sequence[Callable[[bytearray, random.Random], None]] = (_cut, _turn_bits, _number, _lose, _double, _noise)


def damaged_text(texts: Sequence[str], chance: random.Random) -> str:
    """A memo with one to eight things wrong: words lost, doubled, swapped, of another memo; odd letters and numbers."""
    words = chance.choice(texts).split(" ")
    for _ in range(chance.randint(1, 8)):
        place = chance.randint(0, len(words))
        way = chance.randrange(7)
        if way == 0:
            del words[place : place + chance.randint(1, 5)]
        elif way == 1:
            words[place:place] = words[place : place + chance.randint(1, 6)] * chance.choice((1, 1, 2, 20))
        elif way == 2:
            other = chance.choice(texts).split(" ")
            start = chance.randint(0, len(other))
            words[place:place] = other[start : start + chance.randint(1, 12)]
        elif way == 3:
            words.insert(place, chance.choice(_ODD))
        elif way == 4:
            words.insert(place, chance.choice(_SAID))
        elif way == 5 and words:
            words[place % len(words)] = _misspelt(words[place % len(words)], chance)
        else:
            words[place : place + 8] = chance.sample(words[place : place + 8], len(words[place : place + 8]))
    return " ".join(words)


def _misspelt(word: str, chance: random.Random) -> str:
    place = chance.randint(0, len(word))
    return chance.choice(
        (
            word[:place] + chance.choice(_ODD) + word[place:],
            word[:place] + word[place + 1 :],
            word.upper(),
            word * 30,
            word[::-1],
        )
    )
