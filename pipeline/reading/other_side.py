"""A side put right without its end: "thrush in the left hind, sorry, right", "did I say left, I meant right".

And an end that is said over, which names no other feet: "lame on the right hind, hind mind you, not front".
"""

from __future__ import annotations

from pipeline.reading.bare_sides import SIDES
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.record import MatchKind

ENDS = {"front": "F", "fore": "F", "hind": "H", "back": "H", "rear": "H"}
_ONE_FOOT = ("LF", "RF", "LH", "RH")
_PAIRS = ("fronts", "hinds")
_NOT = frozenset({"not"})
_LIGHT = frozenset({",", ".", "the", "it", "'s", "is", "was", "on", "in", "that", "be", "should", "just", "only"})
_BEHIND = (",", ".", "?", "one", "foot", "side", "and", "")
_ALONE = frozenset({"just", "only"})
_TELLING_OVER = frozenset({"not", "mind"})
_OVER = frozenset({",", ".", "the", "a", "it", "'s", "that", "is", "in"})
_OVER_BEHIND = _OVER | {"mind", "you", "now", "i", "said", "say", "one", "foot"}
_CLOSED = (",", ".", "?", "and", "so", "")
_REACH = 6  # tokens from the cue to the side


def complete_sides(talk: Talk) -> None:
    """Give a side behind a repair cue the end of the foot named before it,."""
    _not_this_but_that(talk)
    if talk.says(_TELLING_OVER):
        for foot in talk.having("feet"):
            if foot.readings["feet"] in _ONE_FOOT:
                _said_over(talk, foot)
    for cue in talk.having("taking_back", "repair"):
        at = cue.end
        while at < min(len(talk.words), cue.end + _REACH) and talk.words[at] in _LIGHT:
            at += 1
        told = talk.words[at : at + 1]
        if told and (told[0] in SIDES or (told[0] in ENDS and talk.words[at - 1] != "in")):
            _complete(talk, cue, at)
    talk.in_order()


def _complete(talk: Talk, cue: Mention, at: int) -> None:
    """The foot before the cue lends its end, where nothing but a side is said: "sorry, front" its side."""
    behind = talk.words[at + 1] if at + 1 < len(talk.words) else ""
    before = [m for m in talk.having("feet") if m.end <= cue.start]
    last = before[-1].readings["feet"] if before else ""
    if last in _PAIRS and talk.words[at] in SIDES and not _ALONE.isdisjoint(talk.words[cue.end : at]):
        last = f"*{last[0].upper()}"  # "thrush in both hinds, no, just the left"
    elif last not in _ONE_FOOT:
        return
    if behind not in _BEHIND:
        return
    foot = SIDES.get(talk.words[at], last[0]) + ENDS.get(talk.words[at], last[1])
    own = next((m for m in talk.mentions if m.start <= at < m.end and m.get("feet")), None)
    if own is not None:
        if own.readings["feet"].startswith("bare_") or (own.readings["feet"] in _PAIRS and own.end == at + 1):
            own.readings["feet"] = foot
        return
    end = at + 2 if behind in ("one", "foot", "side") else at + 1
    talk.mentions.append(Mention(at, end, (at,), {"feet": foot}, MatchKind.VARIANT))


def _said_over(talk: Talk, foot: Mention) -> None:
    words = [*talk.words, ""]
    start = foot.end
    while words[start] in _OVER:
        start += 1
    if start == foot.end or ENDS.get(words[start]) != foot.readings["feet"][1]:
        return
    stop = start + 1
    while words[stop] in _OVER_BEHIND:
        stop += 1
    minded = words[start + 1] == "mind" or words[start + 1 : start + 3] == ["one", "mind"]
    if words[stop] == "not":
        denied = stop + 1
        while words[denied] in _OVER:
            denied += 1
        if words[denied] not in ENDS or ENDS[words[denied]] == foot.readings["feet"][1]:
            return
        stop, minded = denied + 1, words[denied + 1] in _CLOSED
    for mention in talk.mentions if minded else ():
        mention.dropped = mention.dropped or start <= mention.start < stop


def _not_this_but_that(talk: Talk) -> None:
    """ "Not the left, the right.": a repair cue of its own."""
    for at in talk.where(_NOT):
        if at + 3 >= len(talk.words) or (at and talk.words[at - 1] not in (".", ",")):
            continue
        side = at + 2 if talk.words[at + 1] == "the" else at + 1
        if talk.words[side] in SIDES and talk.words[side + 1 : side + 2] == [","]:
            for mention in [m for m in talk.mentions if at <= m.start <= side]:
                mention.dropped = True
            literal = tuple(range(at, side + 1))
            talk.mentions.append(Mention(at, side + 1, literal, {"taking_back": "repair"}, MatchKind.VARIANT))
