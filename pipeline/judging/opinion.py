"""A second opinion on every fact: what the words around it say of its status, whatever rule it was read by.

``opinion.json`` holds how far each word, by its place, speaks for each status and for none, word after word. It was
fitted on what was meant in memos that readers had read without knowing them: ``python -m tests.bench.judging --train``.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from math import exp

from pipeline.judging.surroundings import Surroundings

NOT_SO = "not so"  # no such fact was meant at all
TENTHS = 10  # weights are kept as whole numbers
_NEAR, _CLOSE = 8, 3  # words on each side that count, and that count as close
_SENTENCE_BEFORE = 12


def words_around(around: Surroundings, span: tuple[int, int], slot: str) -> set[str]:
    """The words of a fact's sentence and of the one before, each with its place, and the slot."""
    first, last = around.place(span)
    start, end = around.sentence_of(first)
    places = {
        "before": (max(start, first - _NEAR), first),
        "close before": (max(start, first - _CLOSE), first),
        "in": (first, last),
        "behind": (last, min(end, last + _NEAR)),
        "close behind": (last, min(end, last + _CLOSE)),
        "sentence": (start, end),
        "sentence before": (max(0, start - _SENTENCE_BEFORE), start),
    }
    found = {f"{place}: {token.text}" for place, (a, b) in places.items() for token in around.tokens[a:b]}
    return found | {f"slot: {slot}"}


@dataclass(frozen=True)
class Opinion:
    """Weights by status, in the order of ``statuses``, which end with ``NOT_SO``."""

    statuses: Sequence[str]
    bias: Sequence[float]
    weights: Mapping[str, Sequence[float]]

    def chances(self, words: set[str]) -> dict[str, float]:
        """How likely each status is, 0 to 1, together 1."""
        scores = list(self.bias)
        for word in words:
            for place, weight in enumerate(self.weights.get(word, ())):
                scores[place] += weight / TENTHS
        most = max(scores)
        parts = [exp(score - most) for score in scores]
        return {status: part / sum(parts) for status, part in zip(self.statuses, parts, strict=True)}


@lru_cache(maxsize=1)
def shipped_opinion() -> Opinion:
    """The opinion that comes with the program."""
    told = json.loads((files("pipeline.judging") / "opinion.json").read_text(encoding="utf-8"))
    statuses, weights = told["statuses"], {}
    for place, words in told["words"].items():
        rows = iter(told["weights"][place])
        weights.update({f"{place}: {word}": [next(rows) for _ in statuses] for word in words.split(" ")})
    return Opinion(statuses, told["bias"], weights)
