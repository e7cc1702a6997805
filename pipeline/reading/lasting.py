"""What lasts or happens within some weeks and is no next visit: "no riding for a week", "should be right in a week".

And the other way round: "trim again in six weeks" is the visit to come, and no trim of today.
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.record import Status

_LASTING = frozenset({
    "rest", "off", "boots", "in", "on", "sore", "lame", "tender", "footsore", "away", "dry", "clean", "walk", "walking",
    "walked", "turn", "turned", "work", "riding", "ride", "ridden", "exercise", "lunging", "jumping", "stiff",
    "holiday", "abroad", "confined", "quiet",
})  # fmt: skip
_COMING = frozenset({
    "right", "sound", "sell", "selling", "sold", "hunting", "season", "starts", "start", "work", "better", "healed",
    "grown", "racing", "competing", "travelling", "traveling", "moving", "leaving", "leaves", "finishes", "weaned",
    "grow", "grows",
})  # fmt: skip
_VISITS = frozenset({"see", "seeing", "again", "visit", "due", "do", "doing", "book", "booked", "return"})
_BOOKING = _VISITS | {"booking", "pencil", "pencilled", "put", "mark", "write", "down", "back"}
_TOO_LONG = Sayings(
    "was too long", "were too long", "is too long", "'s too long", "was too much", "is too much", "is pushing it",
    "was pushing it", "has been too long", "was far too long", "is far too long", "was the", "was what", "but it was",
)  # fmt: skip
_LEFT = (["left", "him"], ["left", "her"], ["left", "it"], ["left", "them"])
_AFTERWARDS = frozenset({"i", "we", "the", "that", "you", "he", "she"})
_SUPPOSED = Sayings("supposed to be", "meant to be", "should have been")
_LINKS = frozenset(
    {"again", "him", "her", "it", "them", "in", "within", "at", "every", "on", "about", "around", "inside"}
)
_LEADING = frozenset({"in", "within", "at", "every", "again"})
_MOST_LINKS = 6
_NEVER = Sayings(
    *(f"{had} {no}" for had in ("did", "had", "have", "has", "'d", "'ve") for no in ("n't", "not")),
    "never", "nobody", "no one", "not been", "first time",
)  # fmt: skip
_SEEN = frozenset(
    {"see", "do", "seen", "been", "had", "done", "trim", "trimmed", "touched", "shod", "laid", "get", "on"}
)


def lasts(talk: Talk, segment: Segment, start: int, end: int) -> bool:
    """Whether the interval ``[start, end)`` is how long something is to last, or when something else is to be."""
    led = talk.words[segment.start : start]
    last_visit = max((i for i, word in enumerate(led) if word in _VISITS), default=-1)
    told = set(led[last_visit + 1 :])
    if led[-1:] in (["in"], ["for"], ["over"]) and _not_seen(led):
        return True
    if led[-1:] == ["for"]:
        return not told.isdisjoint(_LASTING) and _BOOKING.isdisjoint(led)
    if led[-1:] in (["in"], ["within"]) and not told.isdisjoint(_COMING):
        return True
    if led[-2:] == ["overdue", "by"] or led[-2:] in _LEFT or "take" in told:
        return True
    behind = talk.words[end : end + 2]
    after = behind[:1] == ["after"] and not _AFTERWARDS.isdisjoint(behind[1:])
    supposed = any(at + len(form) == start - segment.start for at, form in _SUPPOSED.within(led, 0, len(led)))
    return after or _too_long(talk, segment, end) or (supposed and "was" in led)


def _not_seen(led: list[str]) -> bool:
    """ "Didn't see Buck in eight weeks", "nobody's touched her in nine weeks"."""
    at = next((at for at, _ in _NEVER.within(led, 0, len(led))), len(led))
    behind = led[at + 1 :]
    return not _SEEN.isdisjoint(behind) and _BOOKING.isdisjoint(set(behind) - _SEEN)


def _too_long(talk: Talk, segment: Segment, end: int) -> bool:
    """ "Six weeks was too long"; where the weeks instead are told behind, both wait to be weighed (``times.py``)."""
    if not _TOO_LONG.at(talk.words, end):
        return False
    return not any(m.number is not None and m.start >= end for s in talk.sentence(segment.sentence) for m in s.mentions)


def since_seen(led: list[str]) -> list[str]:
    """What stands behind the seeing: "if he's lame on it I want to see him in three weeks"."""
    return led[max((i for i, word in enumerate(led) if word == "see"), default=0) :]


def couple_of(talk: Talk, at: int) -> int | None:
    """Where "a couple of", right before the token, begins; None where it does not stand."""
    start = at - 1 if talk.words[max(0, at - 1) : at] == ["of"] else at
    if not start or talk.words[start - 1] != "couple":
        return None
    return start - 2 if talk.words[max(0, start - 2)] == "a" else start - 1


def book_work(talk: Talk, start: int) -> None:
    """ "Trim again in six weeks", "due a reset in five": the visit to come; "trim the hinds in six weeks": planned."""
    segment = talk.segment_at(start)
    if segment is None:
        return
    for draft in [d for d in segment.drafts if d.slot == "work" and 0 < start - d.end <= _MOST_LINKS]:
        feet = [m for m in segment.having("feet") if m.start >= draft.end and m.end <= start]
        held = {i for m in feet for i in range(m.start, m.end)} | _articles(talk, feet)
        words = {talk.words[i] for i in range(draft.end, start) if i not in held}
        if not words <= _LINKS or words.isdisjoint(_LEADING) or draft.value not in ("trim", "reset", "new_shoe"):
            continue
        if talk.words[draft.start].endswith("ed") or segment.past:
            continue
        if feet:
            draft.status = Status.PLANNED
        else:
            draft.drop("the visit to come")


def _articles(talk: Talk, feet: list[Mention]) -> set[int]:
    return {m.start - 1 for m in feet if talk.words[m.start - 1] in ("the", "both", "his", "her")}
