"""Another horse that is done on another day, by somebody else, or named as kin: "her mate Buck is Thursday's job".

"Buck is her brother and I did him Monday" tells of his day behind whose he is.
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.name_words import KIN_SEXES
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


_MALES, _FEMALES = (frozenset(kin for kin, sex in KIN_SEXES.items() if sex == one) for one in ("he", "she"))
_BETWEEN = frozenset({"full", "half", "big", "little", "older", "younger", "own", "twin", "wee"})
_KIN_WORDS = 5  # "is her little half brother"
_IN_TURN = ("next", "first", "second", "now", "here", "up")  # "Buck is next, he was to be Monday"
_THEY = frozenset({"he", "she", "they", "it", "i", "we"})
_DONE = frozenset({"shod", "reset", "saw", "seen", "trimmed"})
_LAST = frozenset({"last", "back", "already", "just", "only", "week", "morning", "afternoon"})


def on_another_day(before: list[str], behind: list[str], following: list[str]) -> bool:
    """Whether what is said around a name is only that the horse is another day's, not today's, or somebody else's.

    Not "Buck was meant to be Thursday. I did him today", which the words ``following`` tell.
    """
    return _another_day(before, behind, following) or _whose_and_when(behind, following)


def _whose_and_when(behind: list[str], following: list[str]) -> bool:
    """ "Buck is her brother and I did him Monday", "… next door's, he was done Tuesday"; "her brother. Her fronts"."""
    if behind[1:2] == [] or behind[0] not in ("is", "'s") or not _AFTER_ALL.isdisjoint(behind):
        return False
    if behind[1] in _IN_TURN and behind[2:3] != ["door"]:
        return False
    kin = set(behind[2:])
    if len(behind) <= _KIN_WORDS and kin <= _BETWEEN | _MALES | _FEMALES:
        return _other_sex(behind[1:2], kin, following[:2])
    at = next((i for i in range(len(behind) - 1, 1, -1) if behind[i] in _THEY and behind[i - 1] in ("and", ",")), 0)
    day = [w for w in behind[at:] if w not in _HIM | _LAST and w not in ("he", "she", "it")]
    after = [w for w in following if w != behind[1]]  # "her brother. Her fore today" is not of him
    return at > 0 and _another_day([], ["did" if w in _DONE else w for w in day], after)


def _other_sex(whose: list[str], kin: set[str], following: list[str]) -> bool:
    """ "Her brother. Her front end …", "his dam. He's …": told on of the one in hand."""
    if whose == ["her"]:
        return not kin.isdisjoint(_MALES) and not {"her", "she"}.isdisjoint(following)
    return whose == ["his"] and not kin.isdisjoint(_FEMALES) and not {"his", "he"}.isdisjoint(following)


def _another_day(before: list[str], behind: list[str], following: list[str]) -> bool:
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
