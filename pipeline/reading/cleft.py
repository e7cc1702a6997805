"""The foot put first and set right: "it wasn't the left front that was lame, it was the right"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_WAS_NOT = (["was", "n't"], ["is", "n't"], ["was", "not"], ["'s", "not"], ["is", "not"])
_IT = frozenset({"it", "that"})
_IS = frozenset({"was", "'s", "is"})
_WHO = frozenset({"that", "which", "who", "he", "she"})
_LONGEST = 12  # tokens from the first foot to the one that is meant


def set_foot_right(talk: Talk) -> None:
    """Put the foot that it is in place of the foot that it wasn't; the denial goes, since it only denied the foot."""
    if not talk.says(_WHO):
        return
    for at in [i for i in range(len(talk.words) - 4) if talk.words[i] in _IT and talk.words[i + 1 : i + 3] in _WAS_NOT]:
        wrong = _foot_at(talk, at + 3)
        if wrong is None or _WHO.isdisjoint(talk.words[wrong.end : wrong.end + 1]):
            continue
        meant = _meant(talk, wrong)
        if meant is None:
            continue
        name, side = str(meant.readings["feet"]), str(wrong.readings["feet"])
        wrong.readings["feet"] = name[-1] + side[-1] if name.startswith("bare_") and len(side) == len("LF") else name
        meant.dropped = True
        for mention in [m for m in talk.mentions if at < m.start < wrong.start or at < m.end <= wrong.start]:
            mention.readings.pop("denials", None)


def _meant(talk: Talk, wrong: Mention) -> Mention | None:
    """The foot behind "it was" in the same sentence."""
    for at in range(wrong.end + 1, min(wrong.end + _LONGEST, len(talk.words) - 1)):
        if talk.words[at] in SENTENCE_ENDS:
            return None
        if talk.words[at] in _IT and talk.words[at + 1] in _IS and talk.words[at - 1] in (",", "but"):
            return _foot_at(talk, at + 2)
    return None


def _foot_at(talk: Talk, at: int) -> Mention | None:
    at = at + 1 if talk.words[at : at + 1] in (["the"], ["his"], ["her"]) else at
    return next((m for m in talk.having("feet") if m.start in (at - 1, at) and m.end > at), None)
