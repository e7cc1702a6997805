"""The second reader: what a small net, which knows no rule, makes of the words around each fact.

Words become vectors, two layers of gated recurrent units (Cho et al. 2014, "Learning Phrase Representations using RNN
Encoder-Decoder", arXiv 1406.1078) pass over the whole memo both ways, and for each fact its first word, its last and
the mean of all between tell how it was meant and of which feet. It was learnt from memos with their gold and from the
project's own cases: ``python -m tests.bench.second_reader``. ``second_reader.onnx`` holds it, with its words.
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files

import numpy as np

from pipeline.judging.surroundings import Surroundings
from pipeline.record import FEET, Fact, Foot, Status

# The net gives a chance for each of these, in this order, and last that nothing of the kind was meant.
STATUSES = (Status.PRESENT, Status.ABSENT, Status.SUSPECTED, Status.RESOLVED, Status.HISTORY, Status.PLANNED)
OF_FEET: tuple[Foot | None, ...] = (None, *FEET)  # and that the words tell of each of these, the whole horse first
UNKNOWN = 1  # the number of a word that was not learnt; 0 fills up shorter memos while learning
_DIGIT = re.compile(r"\d")


def plain(word: str) -> str:
    """A word as the net knows it: of figures only how many there are."""
    return _DIGIT.sub("#", word) if word[0].isdigit() else word


def numbered(words: Iterable[str]) -> dict[str, int]:
    """Each word's number in the net."""
    return {word: number for number, word in enumerate(words, UNKNOWN + 1)}


@dataclass(frozen=True)
class View:
    """Chances, 0 to 1, of one fact.

    ``statuses`` are those of each of ``STATUSES`` and then of none of them, together 1; ``feet`` are those that its
    words tell of each of ``OF_FEET``, each by itself.
    """

    statuses: tuple[float, ...]
    feet: tuple[float, ...]

    def of_status(self, status: Status) -> float:
        """The chance that this status was meant."""
        return self.statuses[STATUSES.index(status)]

    @property
    def not_so(self) -> float:
        """The chance that nothing of the kind was meant."""
        return self.statuses[-1]

    def otherwise(self, status: Status) -> tuple[Status, float]:
        """The likeliest other status and its chance; that nothing was meant is none."""
        given = zip(self.statuses[:-1], STATUSES, strict=True)
        others = [(chance, other) for chance, other in given if other is not status]
        chance, best = max(others)
        return best, chance

    def of_foot(self, foot: Foot | None) -> float:
        """The chance that the words tell of this foot."""
        return self.feet[OF_FEET.index(foot)]


class SecondReader:
    """Runs the net on one core."""

    def __init__(self, model: bytes) -> None:
        # The runtime reports its use to its maker unless it is told not to before it is loaded.
        os.environ["ORT_DISABLE_TELEMETRY"] = "1"
        import onnxruntime

        options = onnxruntime.SessionOptions()
        options.intra_op_num_threads = options.inter_op_num_threads = 1
        self._net = onnxruntime.InferenceSession(model, options, providers=["CPUExecutionProvider"])
        kept = self._net.get_modelmeta().custom_metadata_map
        self._words = numbered(kept["words"].split(" "))
        self._slots = {slot: number for number, slot in enumerate(kept["slots"].split(" "))}

    def views(self, around: Surroundings, facts: Sequence[Fact]) -> dict[int, View]:
        """What it makes of each fact, by the fact's id; nothing of a slot that it did not learn."""
        known = [fact for fact in facts if fact.slot in self._slots]
        count = len(around.tokens)
        if not known or not count:
            return {}
        places = [around.place(fact.span) for fact in known]
        first = [min(start, count - 1) for start, _ in places]
        asked = {
            "words": [self._words.get(plain(token.text), UNKNOWN) for token in around.tokens],
            "first": first,
            "last": [max(start + 1, min(end, count)) for start, (_, end) in zip(first, places, strict=True)],
            "slot": [self._slots[fact.slot] for fact in known],
            "foot": [OF_FEET.index(fact.foot) for fact in known],
        }
        found = self._net.run(["statuses", "feet"], {name: np.array(row, np.int64) for name, row in asked.items()})
        rows = zip(known, *found, strict=True)
        return {id(fact): View(tuple(map(float, status)), tuple(map(float, feet))) for fact, status, feet in rows}


@lru_cache(maxsize=1)
def second_reader() -> SecondReader:
    """The one that comes with the program."""
    return SecondReader((files("pipeline.judging") / "second_reader.onnx").read_bytes())
