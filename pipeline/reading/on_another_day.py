"""Another horse that is done on another day, or by somebody else: "her mate Buck is Thursday's job", "not my list"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.tokens import NOT

_WEEKDAYS = frozenset({"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"})
_DAYS = _WEEKDAYS | {"tomorrow", "yesterday"}
_LISTS = frozenset({"list", "lists", "job", "run", "round", "books", "one", "work", "call", "problem", "visit", "lot"})
_OTHERS = (
    ["somebody", "else"], ["someone", "else"], ["another", "farrier"], ["a", "different", "farrier"],
    ["the", "other", "farrier"], ["their", "own", "farrier"],
)  # fmt: skip
_IS = frozenset({"is", "'s", "was", "will", "'ll", "has", "goes", "gets", "belongs", "'m", "did", "do", "doing", "be"})
_SET = _IS | NOT | frozenset({
    "on", "for", "down", "in", "a", "an", "to", "due", "set", "till", "until", "my", "the", "up", "i", "we", "'re",
    "'ve", "had", "been", "done", "seen", "booked", "being", "getting", "pencilled", "penciled", "part", "of", "with",
    "by", "one", "job", "even",
})  # fmt: skip
_WROTE, _WRONG = frozenset({"wrote", "put", "had", "'d", "marked"}), frozenset({"wrong", "mistake", "wrongly"})
_AFTER_ALL = frozenset({"today", "anyway", "instead"})
_HIM = frozenset({"him", "her", "them"})


def on_another_day(before: list[str], behind: list[str], following: list[str]) -> bool:
    """Whether what is said around a name is only that the horse is another day's, not today's, or somebody else's.

    Not "Buck was meant to be Thursday. I did him today", which the words ``following`` tell.
    """
    at = next((i for i, word in enumerate(behind) if word not in _SET), len(behind))
    led, rest = behind[:at], behind[at:]
    if not rest or _IS.isdisjoint([*before[-2:], *led]):
        return False
    told = [*rest, *following]
    if not _HIM.isdisjoint(told) and not _AFTER_ALL.isdisjoint(told):
        return False
    if any(behind[i : i + len(who)] == who for who in _OTHERS for i in (at - 1, at)):
        return True
    whose = rest[1:2] == ["'s"]  # "Thursday's", "Thursday's job"
    ended = rest[1:2] in ([], [","]) or (whose and all(word in _LISTS for word in rest[2:]))
    today = not NOT.isdisjoint(led) and (rest[0] == "today" or rest[0] in _LISTS)
    return ended and (rest[0] in _DAYS or today)


def put_down_wrongly(before: list[str], behind: list[str]) -> bool:
    """ "Whoever put Buck down for that got it wrong": he is not turned to."""
    return (
        before[-1:] != []
        and before[-1] in _WROTE
        and any(word in _WRONG and led not in ("something", "anything", "what") for led, word in pairwise(behind))
    )
