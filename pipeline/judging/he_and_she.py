"""Whether a horse that was "he" has become "she", or the other way round."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

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
