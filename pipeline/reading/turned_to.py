"""Horses turned to without a name, told in one breath: "…, six weeks, then a mare nobody could name, trimmed".

The comma before such a turn is a stop, and so is that before a name that comes at last: "…, trimmed, Buck, that's him".
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.name_words import HORSE_NOUNS
from pipeline.reading.segments import MARKS, Clauses
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import COLOURS

_LIGHT = frozenset({"oh", "and", "so", "okay", "ok", "right"})
_TURNS = frozenset({"then", "next", "also", "after", "finally", "lastly", "last", "now"})
_ARTICLES = frozenset({"a", "an", "another", "some"})
_ORDINALS = frozenset({"second", "third", "fourth", "next", "last", "other"})
_ONES = HORSE_NOUNS | {"one"}
_POINTING = (["that", "'s"], ["that", "was"], ["it", "'s"], ["it", "was"])
_HIM = frozenset({"him", "her", "it", "fellow", "fella", "one", "lad", "girl", "boy", "name"}) | HORSE_NOUNS
_DESCRIBED = HORSE_NOUNS | COLOURS | {"name", "called"}
_REACH = 6  # tokens behind "the second one" in which the horse is described


def part_turns(talk: Talk) -> None:
    """Read the comma before a turn to a horse without a name as a full stop, and those around a name said at last."""
    if _ONES.isdisjoint(talk.words):
        return
    clauses = Clauses(talk)
    commas = [i for i, word in enumerate(talk.words) if word == ","]
    for comma in commas:
        start = comma + 1
        while talk.words[start : start + 1] and talk.words[start] in _LIGHT:
            start += 1
        turned = _another(clauses, start) or _the_next(clauses, start)
        if turned and clauses.told(clauses.back(comma, SENTENCE_ENDS), comma):
            talk.words[comma] = "."
    for comma, behind in pairwise(commas):
        if talk.words[behind + 1 : behind + 3] not in _POINTING:
            continue
        end = clauses.ahead(behind + 1, MARKS)
        if end - behind < _REACH and talk.words[end - 1] in _HIM and _named(clauses, comma, behind):
            _close(talk, comma, end)


def _close(talk: Talk, *marks: int) -> None:
    for mark in marks:
        if talk.words[mark : mark + 1] == [","]:
            talk.words[mark] = "."


def _another(clauses: Clauses, start: int) -> bool:
    """ "Then a mare nobody told me the name of", "now the mare, couldn't tell you her name"."""
    if start >= len(clauses.words) or clauses.words[start] not in _TURNS:
        return False
    end = clauses.ahead(start, MARKS)
    words = clauses.words[start:end]
    if not words or clauses.traded(start, end):
        return False
    nouns = [i for i, word in enumerate(words) if word in HORSE_NOUNS]
    if not nouns:
        return False
    before = set(words[: nouns[0]])
    return bool(_ARTICLES & before) or ("the" in before and nouns[0] == len(words) - 1 and len(words) <= _REACH)


def _the_next(clauses: Clauses, start: int) -> bool:
    """ "The second one, the roan", "the other one, the black, is Buck": no foot, for a horse is described behind."""
    words = clauses.words
    if words[start : start + 1] != ["the"] or not _ORDINALS & set(words[start + 1 : start + 2]):
        return False
    if words[start + 2 : start + 3] == [] or words[start + 2] not in _ONES:
        return False
    end = min(start + 3 + _REACH, len(words))
    stop = next((i for i in range(start + 3, end) if words[i] in SENTENCE_ENDS), end)
    described = bool(_DESCRIBED & set(words[start + 3 : stop]))
    return described and not clauses.traded(start, clauses.ahead(start + 4, MARKS))


def _named(clauses: Clauses, comma: int, behind: int) -> bool:
    """Whether a name alone stands between two commas."""
    found = clauses.starting.get(comma + 1, ())
    return any(m.get("horse") and m.end == behind for m in found)
