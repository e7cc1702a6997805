"""Somebody else's animals: "the neighbor's mule leaned over the fence", "her other mare's got sidebone"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_NOUNS
from pipeline.reading.talk import Talk
from pipeline.record import MatchKind

_NEARBY = frozenset(
    {"neighbor", "neighbour", "neighbors", "neighbours", "friend", "fella", "fellow", "feller", "guy", "buddy", "mate"}
    | {"else", "people", "cousin"}
)
_LADS = frozenset({"lad", "fella", "fellow", "feller", "girl"})  # a horse when it is somebody's other one
_WHOSE = frozenset({"'s", "'", "her", "his", "their", "the"})
_HAS = frozenset({"has", "had"})
_TOLD_OF = frozenset({"has", "had", "is", "was"})
_OTHER = frozenset({"other"})
_POSSESSIVES = frozenset({"'s", "'"})


def mark_others(talk: Talk) -> None:
    """Set aside somebody else's animal, and what is told of it."""
    _mark_nearby(talk)
    _mark_other_ones(talk)
    talk.in_order()


def _mark_nearby(talk: Talk) -> None:
    for at in talk.where(_NEARBY):
        owned = talk.words[at + 1 : at + 3]
        if talk.words[max(0, at - 2) : at - 1] == ["be"]:
            continue  # "next time she's sedated or she'll be somebody else's mare": still this one
        if len(owned) > 1 and owned[0] in _POSSESSIVES and owned[1] in HORSE_NOUNS:
            _mark(talk, at, at + 3)


def _mark_other_ones(talk: Talk) -> None:
    """ "The lady's other gelding had thrush": only where something is told of it; "her other mare, trimmed" is next."""
    words = talk.words
    for at in [i for i in talk.where(_OTHER) if 0 < i < len(words) - 2]:
        if words[at - 1] not in _WHOSE or words[at + 1] not in HORSE_NOUNS | _LADS:
            continue
        told_of = _HAS if words[at - 1] == "the" else _TOLD_OF  # "the other mare is shod in front" is the next one
        if words[at + 2] in told_of or words[at + 2 : at + 4] == ["'s", "got"]:
            _mark(talk, at - 1, at + 3)


def _mark(talk: Talk, start: int, end: int) -> None:
    if not any(m.get("asides") and m.start < end and start < m.end for m in talk.mentions):
        literal = tuple(range(start, end))
        talk.mentions.append(Mention(start, end, literal, {"asides": "elsewhere"}, MatchKind.VARIANT))
