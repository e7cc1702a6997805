"""What a recogniser writes for a number: "for nails", "three in an eight", "cresty neck for", "fives and fores"."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.reading.numbers import NumberReader
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import Vocabulary

_SCALES = frozenset({"neck", "crest", "condition", "score", "scale", "obel", "grade", "size"})
_SCORED = frozenset({"for", "fore", "to", "ate", "won"})
_MARKS = frozenset({",", *SENTENCE_ENDS})
_NEAR_SIZE = 7  # tokens between a size and the next
_SIZES = frozenset({"size", "sizes", "sized"})
_PARTS = frozenset({"half", "quarter", "eighth", "eight"})
_LENGTH_SAID = frozenset({"inch", "inches", "toe", "toes", "length", "lengths"})
_LENGTH_WITHIN = 14  # tokens
_REPAIRING = frozenset({"no", "wait", "sorry", "hang", "hold"})
_HESITATING = _REPAIRING | {",", "uh", "um", "er", "on", "make", "that", "it"}


class HeardNumbers:
    """Finds the words of heard text that stand for numbers."""

    def __init__(self, vocabulary: Vocabulary, numbers: NumberReader) -> None:
        """``numbers`` tells which words are sizes."""
        self._numbers = numbers
        self._alike = vocabulary.heard_as("numbers")
        self._count_words = frozenset(vocabulary.spoken("numbers"))
        self._counted = set(vocabulary.spoken("units")) | {"nail", "nails"}

    def write(self, masked: list[str], words: Sequence[str]) -> set[int]:
        """Put the numbers into ``masked``, the words without what was understood otherwise; returns their tokens."""
        if not self._alike:
            return set()
        alike = self._before_what_is_counted(masked) | self._scores(masked, words)
        for index in alike:
            masked[index] = self._alike[masked[index]]
        for index in (sizes := self._sizes(words)):
            masked[index] = "fours"
        for index in (parts := self._parts(words)):
            masked[index] = "and" if masked[index] == "in" else "eighth"
        return alike | sizes | parts

    def _before_what_is_counted(self, words: Sequence[str]) -> set[int]:
        """ "For nails", "to weeks"; only right before what is counted."""
        pairs = [(i, word, words[i + 1]) for i, word in enumerate(words[:-1]) if word in self._alike]
        counted = {i for i, _, behind in pairs if behind in self._counted and behind != "nail"}  # "nothing to nail to"
        return counted | {i for i, word, behind in pairs if word == behind == "for"}  # "six for Buck, for for Tally"

    def _scores(self, masked: Sequence[str], words: Sequence[str]) -> set[int]:
        """ "Cresty neck for, condition seven": a score; "cresty neck too" and "a grade for him" count nothing."""
        if _SCALES.isdisjoint(words):
            return set()
        scored = [i for i, word in enumerate(masked[:-1]) if i and word in _SCORED and words[i - 1] in _SCALES]
        return {i for i in scored if words[i + 1] in _MARKS}

    def _parts(self, words: Sequence[str]) -> set[int]:
        """ "Toe length three in an eight", "three and an eight": a whole number of inches and its part."""
        found: set[int] = set()
        for i in range(1, len(words) - 2):
            joint, article, part = words[i : i + 3]
            if joint not in ("in", "and") or article not in ("a", "an") or part not in _PARTS:
                continue
            near = (*words[max(0, i - _LENGTH_WITHIN) : i], *words[i + 3 : i + 5])
            if words[i - 1] in self._count_words and not _LENGTH_SAID.isdisjoint(near) and _SIZES.isdisjoint(near):
                found |= {i} if joint == "in" else set()
                found |= {i + 2} if part == "eight" else set()
        return found

    def _sizes(self, words: Sequence[str]) -> set[int]:
        """ "Fives in front and fores behind", "fores, no, hang on, fives": sizes that sound like the front feet."""
        if "fores" not in words:
            return set()
        return {i for i, word in enumerate(words) if word == "fores" and self._among_sizes(words, i)}

    def _among_sizes(self, words: Sequence[str], index: int) -> bool:
        behind = list(words[index + 1 : index + 1 + _NEAR_SIZE])
        if behind[:1] == ["behind"] or behind[:2] == ["in", "front"]:
            before = words[max(0, index - _NEAR_SIZE) : index]
            return any(word in _SIZES or self._numbers.is_size(word) for word in before)
        size = next((i for i, word in enumerate(behind) if self._numbers.is_size(word)), 0)
        return set(behind[:size]) <= _HESITATING and not _REPAIRING.isdisjoint(behind[:size])
