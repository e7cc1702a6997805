"""How far a fact can be trusted by hand-set weights: for facts whose words are not there, and what is always asked.

Each piece of evidence multiplies the confidence and may give a reason in words; below ``FLAG_BELOW`` the fact is
flagged. The recogniser's probabilities count most on the words that are dear to get wrong: numbers, feet and "no".
"""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.judging.feet import unusual_foot
from pipeline.judging.plausibility import implausible
from pipeline.judging.rewordings import reworded
from pipeline.judging.surroundings import bare, is_number
from pipeline.record import (
    EITHER_SLOTS,
    HORSE_SLOTS,
    NUMBER_SLOTS,
    SIZED_SLOTS,
    Fact,
    MatchKind,
    Status,
    Transcript,
    Word,
)

FLAG_BELOW = 0.75
_BASE = 0.98
_UNSURE = 0.5
_UNSURE_DEAR = 0.6
_HARDLY_HEARD = 0.4
# Nats. Of 95 facts with a support between this and SURE_SUPPORT 11 were wrong, no more than of all: the model decides.
_HARDLY_BORNE_OUT = -4.0
# Little words that carry no fact; a recogniser is often unsure of them.
_LITTLE = frozenset(
    {"a", "an", "the", "of", "on", "in", "and", "is", "it", "he", "she", "at", "there", "i", "some", "so"}
)
_OF_THE_HORSE = "laminitis"  # the only finding that is told without a foot as a rule
_DEAR = frozenset({"no", "not", "left", "right", "near", "off", "front", "hind", "fore"})


@dataclass(frozen=True)
class Evidence:
    """A factor on the confidence and, if it is worth telling, why."""

    factor: float
    reason: str | None = None


def weigh(fact: Fact, transcript: Transcript) -> tuple[float, list[str]]:
    """Confidence (0-1) and the reasons that lowered it below trust, in plain words."""
    evidence = [
        _of_match(fact),
        _of_wording(fact, transcript),
        _of_words(fact, transcript),
        _of_foot(fact),
        _of_value(fact),
        _of_degree(fact),
    ]
    confidence = _BASE
    for piece in evidence:
        confidence *= piece.factor
    return round(confidence, 3), [p.reason for p in evidence if p.reason is not None]


def doubts(fact: Fact, transcript: Transcript) -> list[str]:
    """The reasons that are asked about whatever else speaks for the fact: match, wording, words, foot and value."""
    pieces = (
        _of_match(fact),
        _of_wording(fact, transcript),
        _of_dear_word(fact, transcript),
        _of_foot(fact),
        _of_value(fact),
        _of_degree(fact),
    )
    return [piece.reason for piece in pieces if piece.reason is not None]


def _of_match(fact: Fact) -> Evidence:
    if fact.match is MatchKind.SOUND_ALIKE:
        name = str(fact.value).replace("_", " ")
        return Evidence(0.6, f"Heard “{fact.quote}”, read as {name}; please listen.")
    return Evidence(1.0)


def _of_wording(fact: Fact, transcript: Transcript) -> Evidence:
    """Words that stand for others since the sound was weighed, and that it hardly bears out."""
    words = transcript.words_of(*fact.span) if fact.match is MatchKind.VERIFIED else []
    doubtful = [word for word in words if word.support is not None and word.support < _HARDLY_BORNE_OUT]
    if not doubtful:
        return Evidence(1.0)
    heard = min(doubtful, key=lambda word: word.support or 0.0).heard or ""
    return Evidence(0.6, reworded(heard, [word for word in doubtful if word.heard == heard]))


def _of_words(fact: Fact, transcript: Transcript) -> Evidence:
    words = transcript.words_of(*fact.span) if transcript.heard else []
    if not words:
        return Evidence(1.0)
    telling = [w for w in words if bare(w) not in _LITTLE] or words
    worst = min(telling, key=lambda w: w.probability)
    limit = _UNSURE_DEAR if _is_dear(worst, fact) else _UNSURE
    if worst.probability < limit:
        return Evidence(
            0.5 + worst.probability / 2, f"The word “{worst.text.strip(' ,.')}” was hard to hear; please listen."
        )
    return Evidence(0.9 + worst.probability / 10)


def _of_dear_word(fact: Fact, transcript: Transcript) -> Evidence:
    """A "no", a foot, a count or a size that was hardly heard: of 40 such numbers 12 were wrong, else one in eight."""
    words = transcript.words_of(*fact.span) if transcript.heard else []
    counted = fact.status is not Status.ABSENT and (fact.slot in NUMBER_SLOTS or fact.slot in SIZED_SLOTS)
    dear = [word for word in words if bare(word) in _DEAR or (counted and is_number(bare(word)))]
    worst = min(dear, key=lambda word: word.probability, default=None)
    if worst is None or worst.probability >= _HARDLY_HEARD:
        return Evidence(1.0)
    return Evidence(0.6, f"The word “{worst.text.strip(' ,.')}” was hard to hear; please listen.")


def _is_dear(word: Word, fact: Fact) -> bool:
    text = bare(word)
    counted = fact.slot in NUMBER_SLOTS or fact.slot in SIZED_SLOTS
    return text in _DEAR or (counted and fact.status is not Status.ABSENT)


def _of_foot(fact: Fact) -> Evidence:
    of_a_foot = fact.slot not in HORSE_SLOTS | EITHER_SLOTS or (fact.slot == "finding" and fact.value != _OF_THE_HORSE)
    if fact.foot is None and of_a_foot:
        return Evidence(0.5, "No foot was understood; which one is it?")
    if "foot: not said" in fact.rules:
        return Evidence(0.6, "No foot was said; is it all four?")
    if "foot: still in hand" in fact.rules:
        return Evidence(0.97)
    return Evidence(1.0)


def _of_value(fact: Fact) -> Evidence:
    reason = implausible(fact) if fact.status is not Status.HISTORY else None
    if reason is None and fact.status in (Status.PRESENT, Status.SUSPECTED):
        reason = unusual_foot(fact)
    return Evidence(0.6, reason) if reason else Evidence(1.0)


def _of_degree(fact: Fact) -> Evidence:
    """A pulse of which something was said that no list has, and which is taken for a raised one."""
    if "pulse: how it goes was not understood" in fact.rules:
        return Evidence(0.6, f"“{fact.quote}”: how strong is the pulse?")
    return Evidence(1.0)
