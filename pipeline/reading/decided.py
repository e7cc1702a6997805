"""A choice and what it came to: "full pads or leather, leather it is", "six weeks or seven, seven it is"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.exchanges import kind_of, window
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import MatchKind

_CHOSEN = frozenset({"it"})
_CHOOSING = frozenset(
    {"or", "between", "either", "whether", "versus", "vs", "decide", "debated", "debating", "torn", "toss", "choice"}
)
_WANTED = frozenset({"wants", "wanted", "want"})  # "I'd studs ready but she wants road nails, so road nails it is"
_CHOOSING_IT = _CHOOSING | _WANTED
_KINDS = ("findings", "pads", "shoe_types", "shoe_materials", "packings", "treatments", "clips", "traction")
_PADS = {
    "leather": "leather", "leathers": "leather", "full": "full", "fulls": "full", "rim": "rim", "rims": "rim",
    "mesh": "mesh", "wedge": "wedge", "wedges": "wedge",
}  # fmt: skip
_LEADS = frozenset({"so", "then", "well", "and", "the", "a", "ok", "okay", "right", "hmm", "no", "an"})
_CLOSES = frozenset({",", ";", "and", "for", "in", "on", "then", "today", "so", "with", "but", *SENTENCE_ENDS})
_LONGEST = 4  # words of what is chosen
_STANDING = frozenset({"sticking", "stick", "staying", "stay", "stuck", "stand", "standing"})
_BY = frozenset({"with", "to", "at", "by"})
_ANOTHER_SAID = frozenset({
    "reckoned", "reckons", "thought", "thinks", "said", "says", "called", "calls", "wanted", "wants", "asked",
    "figured",
})  # fmt: skip
_TWO = 2
_OWN_GRADE, _IT = frozenset({"say", "call", "make", "put", "give"}), (["it"], ["her"], ["him"], ["a"], ["that"])


def decide(talk: Talk) -> None:
    """Let what "it is" decides for stand, and drop what it was chosen from."""
    for at in talk.where(_STANDING):
        _stand_by(talk, at)
    for at in talk.where(_OWN_GRADE) if talk.says(_ANOTHER_SAID) else ():
        _own_grade(talk, at)
    if not talk.says(_CHOSEN) or not talk.says(_CHOOSING_IT):
        return
    for at in range(1, len(talk.words) - 1):
        if talk.words[at : at + 2] != ["it", "is"] or set(talk.words[at + 2 : at + 3]) - _CLOSES:
            continue
        start = _start(talk, at)
        if start is not None:
            _choose(talk, start, at)
    talk.in_order()


def _stand_by(talk: Talk, at: int) -> None:
    """ "Two out of five, the nurse reckoned a three but I'm sticking with two": what was told first stands."""
    by = at + (talk.words[at + 1 : at + 2] != [] and talk.words[at + 1] in _BY) + 1
    by += talk.words[by : by + 1] in (["a"], ["my"], ["the"])
    again = talk.mention_starting(by)
    if by <= at + 1 or again is None or again.number is None:
        return
    told = [m for m in talk.starting_in(window(talk, at), at) if m.number is not None][-2:]
    if len(told) < _TWO or told[0].number is None or told[0].number.value != again.number.value:
        return
    if not _ANOTHER_SAID.isdisjoint(talk.words[told[0].end : told[1].start]):
        told[1].dropped = again.dropped = True


def _own_grade(talk: Talk, at: int) -> None:
    """ "The owner reckons she's three out of five lame and I'd say two, so put two": the farrier's own grade stands."""
    if talk.words[at - 1] not in ("i", "'d", "'ll") or "i" not in talk.words[at - 2 : at]:
        return
    own = talk.mention_starting(at + 1 + (talk.words[at + 1 : at + 2] in _IT) + (talk.words[at + 2 : at + 3] == ["a"]))
    since = window(talk, at)
    told = [m for m in talk.starting_in(since, at) if m.number is not None][-1:]
    if own is None or own.number is None or not told or told[0].number is None or told[0].number.out_of is None:
        return
    closing = {",", *SENTENCE_ENDS} if talk.words[at] == "put" else _CLOSES  # not "I'll put two in the heels"
    if _ANOTHER_SAID.isdisjoint(talk.words[since : told[0].start]) or {*talk.words[own.end : own.end + 1]} - closing:
        return
    for again in [m for m in talk.starting_in(own.start, own.end + 4) if m.number is not None]:
        again.dropped = again.number is not None and again.number.value == own.number.value
    told[0].number = replace(told[0].number, value=own.number.value)


def _start(talk: Talk, at: int) -> int | None:
    """The first token of what is chosen: behind the last comma or stop, a few words at most."""
    stop = next((i for i in range(at - 1, -1, -1) if talk.words[i] in (",", ";", *SENTENCE_ENDS)), -1)
    start = stop + 1
    while start < at and talk.words[start] in _LEADS:
        start += 1
    return start if 0 < at - start <= _LONGEST and stop >= 0 else None


def _choose(talk: Talk, start: int, at: int) -> None:
    since = window(talk, start)
    if _CHOOSING.isdisjoint(talk.words[since:start]):
        since = max((i + 1 for i in range(since, start) if talk.words[i] in SENTENCE_ENDS), default=since)
        footed = any("feet" in m.readings for m in talk.starting_in(since, start))
        if footed or _WANTED.isdisjoint(talk.words[since:start]):
            return
    said = [m for m in talk.mentions if start <= m.start and m.end <= at and not m.dropped]
    before = [m for m in talk.mentions if since <= m.start and m.end < start and not m.dropped]
    chosen = next((m for m in said if m.number is not None or kind_of(m) in _KINDS), None)
    if chosen is not None and chosen.number is not None:
        _choose_number(chosen, [m for m in before if m.number is not None])
        return
    kind = kind_of(chosen) if chosen is not None else "pads"
    bare = _PADS.get(talk.words[start]) if chosen is None and at - start == 1 else None
    others = [m for m in before if kind_of(m) == kind]
    if (chosen is None and bare is None) or not others:
        return
    for other in others:
        other.dropped = True
    if chosen is None and bare is not None:
        for mention in said:
            mention.dropped = True
        talk.mentions.append(Mention(start, at, (start,), {"pads": bare}, MatchKind.VARIANT))


def _choose_number(chosen: Mention, before: list[Mention]) -> None:
    """ "Six weeks or seven, seven it is": the number chosen stands where the first of the choice stood."""
    number = chosen.number
    told = [m.number for m in before if m.number is not None]
    if number is None or not any(number.value in (n.value, n.high) and number.aughts == n.aughts for n in told):
        return
    first = before[0]
    if first.number is None:
        return
    first.number = replace(number, start=first.number.start, end=first.number.end)
    for other in [*before[1:], chosen]:
        other.dropped = True
