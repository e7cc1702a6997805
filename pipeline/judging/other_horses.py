"""Hints between a horse's name and a fact that another horse has come in: it is described, or named by an odd word."""

from __future__ import annotations

from collections.abc import Iterator

from pipeline.judging.surroundings import Surroundings

# What a horse is called that has no name yet: common practice, no source.
_KINDS = frozenset(
    [
        "mare", "gelding", "cob", "donkey", "pony", "foal", "filly", "colt", "stallion", "hunter", "yearling",
        "youngster", "mule", "grey", "gray", "chestnut", "bay", "roan", "piebald", "skewbald", "dun", "palomino",
    ]
)  # fmt: skip
_FAR = 25  # words behind a horse's name from which its description is no longer told
_SHORT = 3  # words of a sentence that may be nothing but a name
_NEXT = frozenset({"now", "next", "then"})
MOST = 3


def described(around: Surroundings, name: int, fact: int) -> bool:
    """Whether a horse is described far behind the name that begins at one token and before the fact at another."""
    return any(token.text in _KINDS for token in around.tokens[name + _FAR + 1 : fact])


def name_like(around: Surroundings, name: int, fact: int) -> int:
    """How many times (0-3) something between the two may be a name: "Now weka.", "Buck different fours." """
    return min(sum(1 for _ in _name_like(around, name + _SHORT, fact)), MOST)


def _name_like(around: Surroundings, first: int, fact: int) -> Iterator[int]:
    at = first
    while at < fact:
        start, end = around.sentence_of(at)
        words = [place for place in range(start, end) if around.tokens[place].text[0].isalnum()]
        short = start > first and 0 < len(words) <= _SHORT
        turned = start >= first and bool(words) and around.tokens[words[0]].text in _NEXT
        if (short and around.unknown(start, end)) or (turned and around.unknown(words[0] + 1, words[0] + 3)):
            yield start
        at = max(end, at + 1)
