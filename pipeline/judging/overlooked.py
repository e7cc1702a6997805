"""Sentences of which more was said than read: each is put before a person once, whatever facts it gave.

``overlooked.json`` holds how far each sign speaks for a missed fact, fitted on sentences of memos that readers had read
without knowing them: of those that are flagged about half held one. ``python -m tests.bench.judging --train`` writes
it.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from itertools import pairwise
from math import exp

from pipeline.judging.model import Care
from pipeline.judging.surroundings import Surroundings, is_number
from pipeline.judging.unread import not_understood, visit_at
from pipeline.record import Fact, Flag, FlagKind, Transcript, Visit

_TAKING_BACK = frozenset({"no", "nope", "wait", "hold", "hang", "sorry", "let", "whoa"})
_HEADING = 4  # words of no fact, that a foot is named with before what is told of it
_MOST_FACTS, _MOST_UNREAD, _MOST_UNKNOWN, _MOST_NUMBERS = 4, 12, 5, 3
_FEET = {"LF": "left fore", "RF": "right fore", "LH": "left hind", "RH": "right hind"}


@dataclass(frozen=True)
class Sentence:
    """The tokens ``[first, last)`` of one sentence, those of them that some fact was read from, and its facts.

    ``behind`` are the feet of what is told in the next sentence: "Left front. Toe crack, mild."
    """

    first: int
    last: int
    read: frozenset[int]
    facts: tuple[Fact, ...]
    behind: frozenset[str | None]


@dataclass(frozen=True)
class Signs:
    """Weights towards a missed fact by the name of the sign, and by kind of memo the chance that each care flags."""

    weights: Mapping[str, float]
    bias: float
    levels: Mapping[str, Mapping[Care, float]]

    def chance(self, signs: Mapping[str, float]) -> float:
        """The chance (0-1) that something of the sentence was missed."""
        score = self.bias + sum(self.weights.get(name, 0.0) * value for name, value in signs.items())
        return 1 / (1 + exp(-score))


def overlooked(
    transcript: Transcript, around: Surroundings, visits: Sequence[Visit], flags: Sequence[Flag], care: Care
) -> Iterator[tuple[int, Flag]]:
    """Flags with the number of the visit that each belongs to; none where something of the sentence is asked anyway."""
    model = shipped_signs()
    above = model.levels["heard" if transcript.heard else "typed"][care]
    asked = [fact.span for visit in visits for fact in visit.facts if fact.flagged]
    asked += [f.span for f in (*flags, *(f for v in visits for f in v.flags)) if f.kind is not FlagKind.HORSE]
    for sentence in sentences(around, [fact for visit in visits for fact in visit.facts]):
        span = (around.tokens[sentence.first].start, around.tokens[sentence.last - 1].end)
        if any(start < span[1] and end > span[0] for start, end in asked if end > start):
            continue
        if model.chance(signs_of(around, sentence)) > above:
            yield visit_at(visits, span[0]), not_understood(transcript, span, _reason(around, sentence))


def sentences(around: Surroundings, facts: Sequence[Fact]) -> Iterator[Sentence]:
    """The sentences of a memo that hold a word, each with what was read from it."""
    places = [(around.place(fact.span), fact) for fact in facts]
    read = frozenset(token for (first, last), _ in places for token in range(first, last))
    at, spans = 0, list[tuple[int, int]]()
    while at < len(around.tokens):
        first, at = around.sentence_of(at)
        if any(token.text[0].isalnum() for token in around.tokens[first:at]):
            spans.append((first, at))
    own = [tuple(fact for (start, _), fact in places if first <= start < last) for first, last in spans]
    for number, (first, last) in enumerate(spans):
        behind = own[number + 1] if number + 1 < len(own) else ()
        read_here = read & frozenset(range(first, last))
        yield Sentence(first, last, read_here, own[number], frozenset(fact.foot for fact in behind))


def signs_of(around: Surroundings, sentence: Sentence) -> dict[str, float]:
    """The signs by name, each between 0 and 1; those that are 0 are left out."""
    words = [i for i in range(sentence.first, sentence.last) if around.tokens[i].text[0].isalnum()]
    unread = [i for i in words if i not in sentence.read]
    said = {(fact.span, fact.slot) for fact in sentence.facts}
    bare = _bare(around, sentence)
    heading = bool(bare & sentence.behind) and not said and len(unread) <= _HEADING
    unknown = len(around.unknown(sentence.first, sentence.last))
    numbers = len(_numbers(around, sentence))
    signs = {
        f"facts {min(len(said), _MOST_FACTS)}": 1.0,
        "unread words": min(len(unread), _MOST_UNREAD) / _MOST_UNREAD,
        "unread share": len(unread) / len(words),
        "unknown words": min(unknown, _MOST_UNKNOWN) / _MOST_UNKNOWN,
        "unread numbers": min(numbers, _MOST_NUMBERS) / _MOST_NUMBERS,
        "foot without a fact": float(bool(bare - sentence.behind)),
        "foot told of behind": float(bool(bare & sentence.behind) and not heading),
        "foot as a heading": float(heading),
        "trade words without a fact": 0.0 if said else 1 - len(around.unlisted(words)) / len(words),
        **{f"slot {slot}": 1.0 for _, slot in said},
        **{f"unread: {around.tokens[i].text}": 1.0 for i in unread},
    }
    return {name: value for name, value in signs.items() if value}


def _bare(around: Surroundings, sentence: Sentence) -> frozenset[str]:
    """The feet named of which the sentence has no fact."""
    return around.feet_named(sentence.first, sentence.last) - {fact.foot for fact in sentence.facts}


def _numbers(around: Surroundings, sentence: Sentence) -> list[str]:
    """The numbers not read; "one" is mostly none, "all four" are feet, and in "five, no, four" the five is gone."""
    feet = {i for start, end in around.feet_words(sentence.first, sentence.last) for i in range(start, end)}
    told = pairwise(token.text for token in around.tokens[sentence.first : sentence.last])
    cues = [i for i, (mark, word) in enumerate(told, sentence.first) if mark == "," and word in _TAKING_BACK]
    back = {at for i in cues for at in (i - 1, i - 2)}
    places = [i for i in range(sentence.first, sentence.last) if i not in sentence.read | feet | back]
    words = [around.tokens[i].text for i in places]
    return [word for word in words if is_number(word) and word not in ("one", "half")]


def _reason(around: Surroundings, sentence: Sentence) -> str:
    numbers = _numbers(around, sentence)
    bare = _bare(around, sentence) - sentence.behind
    if numbers:
        return f"The number “{numbers[0]}” is said here, but nothing was read from it; was something missed?"
    if len(bare) == 1:
        return f"The {_FEET[min(bare)]} is named here, but nothing was read of it; was something missed?"
    if not sentence.facts:
        return "Nothing was read from these words; was something missed?"
    return "More may be said here than was read; was something missed?"


@lru_cache(maxsize=1)
def shipped_signs() -> Signs:
    """The weights that come with the program."""
    told = json.loads((files("pipeline.judging") / "overlooked.json").read_text(encoding="utf-8"))
    levels = {kind: {Care(name): float(above) for name, above in by.items()} for kind, by in told["levels"].items()}
    return Signs(told["weights"], told["bias"], levels)
