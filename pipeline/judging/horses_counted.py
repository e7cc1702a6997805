"""How many horses a memo says there are: "two at the mill", "six weeks for the pair of them".

And whether a horse that was "he" has become "she", or the other way round.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence

_MANY = {"two": 2, "pair": 2, "couple": 2, "both": 2, "three": 3, "four": 4, "five": 5, "six": 6}
_THREE = frozenset({"all three", "other two"})
_NEAR_WEEKS = 30  # characters from "both of them" to weeks that are of both
_AT_START = 140  # characters in which a bare "two today" is of horses
_COUNT = r"(two|three|four|five|six|pair|couple)"
_OPENING = re.compile(
    r"(?:^|[.!?,] )(?:(?:so|right|okay|alright|well|uh|um|just|only|the|all|back|did|done|got|had) )*" + _COUNT + r" "
    r"(?:of (?:them|'em|em)|today|tonight|this|done|here|at|up|over|down|before|after|to do|to put|in from|under|above"
    r"|below|out(?! of)|for (?!\w+ weeks?))\b"
)
_OF_A_KIND = re.compile(r"\b" + _COUNT + r" (?:\w+ |of )?(?:horses|ponies|mares|geldings|cobs|donkeys|minis|head)\b")
_OF_THEM = re.compile(r"\b(both|pair|two|three|lot|bunch|team|all) of (?:them|'em|em)\b(?! (?:fronts|hinds|feet))")
_NUMBER = r"(?:two|three|four|five|six|seven|eight|nine|ten|\d+)"
_BEFORE_WEEKS = re.compile(
    r"\b(both|the two|pair|team|all three|bunch|other two|everybody|everyone)(?: again| back)?(?: of (?:them|'em))?"
    r"(?: in| for| at| go)* " + _NUMBER + r"\b"
)
_BEHIND_WEEKS = re.compile(
    r"\bweeks?,? (?:or so |again )?(?:(?:on |for |with )(?:the )?|the )"
    r"(both|two|three|pair|lot|bunch|team|everyone|everybody)\b(?! (?:weeks|fronts|hinds|fores))"
)
_BOTH = re.compile(r"\b(both horses|brother and sister|mother and daughter)\b")
_WEEKS = re.compile(r"\b(?:weeks?|fortnight)\b(?! (?:ago|old))")


def horses_counted(text: str) -> tuple[int, str]:
    """The most horses that are spoken of at once, and the words that say so; 1 and nothing without such words."""
    return max(_counts(text.lower()), key=lambda count: count[0], default=(1, ""))


def _counts(text: str) -> Iterator[tuple[int, str]]:
    for pattern in (_OPENING, _OF_A_KIND, _OF_THEM, _BEFORE_WEEKS, _BEHIND_WEEKS, _BOTH):
        for found in pattern.finditer(text):
            if pattern is _OPENING and not _opens(text, found):
                continue
            if pattern is _OF_THEM and not _WEEKS.search(text, *_near(text, found)):
                continue  # "underrun heels in front, the two of them"
            word = found.group(1)
            yield (3 if word in _THREE else _MANY.get(word, 2)), found.group().strip(" ,.!?")


def _opens(text: str, found: re.Match[str]) -> bool:
    """Whether a bare count stands at the beginning, where it is of horses; "two of them" only in the first sentence."""
    of_them = " of " in found.group()
    return found.start() <= _AT_START and not (of_them and "." in text[: found.start() + 1])


def _near(text: str, found: re.Match[str]) -> tuple[int, int]:
    """The characters around, within the sentence."""
    end = text.find(".", found.end())
    end = len(text) if end < 0 else end
    start = text.rfind(".", 0, found.start()) + 1
    return max(start, found.start() - _NEAR_WEEKS), min(end, found.end() + _NEAR_WEEKS)


_HE = frozenset({"he", "him", "his", "himself", "he's", "he'd", "he'll"})
_SHE = frozenset({"she", "her", "hers", "herself", "she's", "she'd", "she'll"})
# A clause with one of these tells of people or of other animals: "I told her six weeks".
_OF_OTHERS = frozenset(
    [
        "told", "tell", "asked", "ask", "says", "said", "say", "rang", "ring", "owner", "lady", "woman", "girl", "lad",
        "vet", "paid", "pays", "reckons", "talked", "phoned", "text", "texted", "wife", "daughter", "missus", "groom",
        "dog", "terrier", "cat",
    ]
)  # fmt: skip


def turned(before: Sequence[str], behind: Sequence[str]) -> bool:
    """Whether the words behind are mostly of the other kind than the words before; both must have such words."""
    he, she = _counted(before)
    then_he, then_she = _counted(behind)
    return (he > she and then_she > then_he) or (she > he and then_he > then_she)


def _counted(words: Sequence[str]) -> tuple[int, int]:
    told = [word for clause in _clauses(words) if _OF_OTHERS.isdisjoint(clause) for word in clause]
    return sum(word in _HE for word in told), sum(word in _SHE for word in told)


def _clauses(words: Iterable[str]) -> Iterator[list[str]]:
    clause: list[str] = []
    for word in words:
        if word[0].isalnum():
            clause.append(word)
        else:
            yield clause
            clause = []
    yield clause
