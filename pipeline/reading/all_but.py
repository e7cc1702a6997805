"""Weeks of all the horses but one: "six weeks for everybody except Buck. He can go eight."."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.reading.mentions import Mention
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.together import group_at
from pipeline.vocabulary import CLASS_SLOTS

_BUT = (["except"], ["bar"], ["but"], ["save"], ["excluding"], ["barring"], ["except", "for"], ["apart", "from"])
_BUT_TWO = (["other", "than"], ["bar", "for"], ["but", "for"], ["but", "not"], ["and", "not"], [",", "not"])
_HE = frozenset({"he", "she", "him", "her", "his", "hers", "who", "that", "himself", "herself"})
_COMING = frozenset({"comes", "is", "'s", "goes", "gets", "can", "will", "'ll", "needs", "wants", "was", "has"})
_WEEKLY = ("week", "fortnight", "month")
_REACH = 2  # words that lead to the name: "apart from"


def all_but(talk: Talk, spans: Sequence[NameSpan], horses: int) -> dict[int, list[int]]:
    """For each segment that gives weeks to all horses but those named behind, the horses that it is said of.

    What is said of the one left out, in the rest of the sentence or in the next one, is in it too.
    """
    found: dict[int, list[int]] = {}
    for sentence in talk.sentences():
        left_out = _left_out(talk, [s for s in spans if sentence[0].start <= s.start < sentence[-1].end])
        if not left_out or not _of_all(talk, sentence, left_out[0].start):
            continue
        out = list(dict.fromkeys(s.horse for s in left_out))
        rest = [h for h in range(horses) if h not in out]
        found.update({s.index: rest for s in sentence if s.start < left_out[0].start})
        behind = [s for s in sentence if s.start >= left_out[-1].start]
        following = talk.sentence(sentence[0].sentence + 1)
        found.update({s.index: out for s in [*behind, *(following if _of_him(talk, following, spans) else [])]})
    return found


def _left_out(talk: Talk, named: Sequence[NameSpan]) -> list[NameSpan]:
    """The names of a sentence that it leaves out, "and Sable" behind one of them too."""
    found: list[NameSpan] = []
    for span in named:
        joined = bool(found) and talk.words[found[-1].end : span.start] in (["and"], ["or"], ["and", "for"])
        if joined or is_left_out(talk, span):
            found.append(span)
    return found


def is_left_out(talk: Talk, span: NameSpan) -> bool:
    """ "Except Buck", "apart from Buck"; not "eight weeks, but Buck comes due in seven"."""
    before = talk.words[max(0, span.start - _REACH) : span.start]
    comes = before[-1:] == ["but"] and not _COMING.isdisjoint(talk.words[span.end : span.end + 1])
    return before in (*_BUT, *_BUT_TWO) or (before[-1:] in _BUT and not comes)


def _of_all(talk: Talk, sentence: list[Segment], end: int) -> bool:
    """Whether weeks are given to all before the token, and nothing else of the trade is said."""
    said = [m for m in talk.starting_in(sentence[0].start, end) if not m.dropped]
    everyone = any(m.get("horse_cues") in ("pair", "pair_any") or m.get("feet") == "all" for m in said)
    timed = any(m.get("units") in _WEEKLY for m in said)
    everyone = everyone or any(group_at(talk, at) for at in range(sentence[0].start, end))
    return timed and everyone and not _told(said)


def _told(said: Sequence[Mention]) -> bool:
    return any(m.is_any(CLASS_SLOTS.keys() - {"vet"}) for m in said)


def _of_him(talk: Talk, sentence: list[Segment], spans: Sequence[NameSpan]) -> bool:
    """ "He can go eight.", "Eight for her.": the sentence behind goes on about the one that was left out."""
    if not sentence:
        return False
    start, end = sentence[0].start, sentence[-1].end
    said = talk.starting_in(start, end)
    named = any(start <= s.start < end for s in spans)
    numbered = any(m.number is not None for m in said)
    return numbered and not named and not _told(said) and bool(_HE & set(talk.words[start:end]))
