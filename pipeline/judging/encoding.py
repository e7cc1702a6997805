"""Evidence as numbers for the model: each between about 0 and 1, larger meaning more doubt unless it is a mere kind.

Every number has a name. Those in ``DOUBTS`` may only ever lower trust: training holds their weights at 0 or above.
"""

from __future__ import annotations

from math import exp, log

from pipeline.judging.features import Evidence
from pipeline.judging.second_horse import MOST
from pipeline.judging.several_feet import MOST_SETS
from pipeline.record import SURE_SUPPORT, HorseMatch, MatchKind, Status

_REACH_AFTER, _REACH_BEFORE = 6.0, 8.0  # words after which the nearness of a correction has fallen to a third
_FAR = 30  # words to a foot beyond which distance says no more
_MOST_UNKNOWN, _MOST_UNREAD = 6, 10
_MOST_FACTS = 8
_MOST_CONTRADICTED = 4
_FLOOR = 0.02  # probabilities below this are all the same
_MOST_DOUBT = -log(_FLOOR)
_MOST_NATS = 6.0
_LEAST_CHANCE, _LEAST_OF_FOOT = 0.005, 0.002  # chances below these are all the same
_SLOW_S = 1.2  # seconds a word beyond which words were hardly said in one breath

DOUBTS = frozenset(
    {
        "foot copied", "foot guessed", "foot none", "foot in hand", "far rule", "words to foot", "no foot before",
        "sentences to foot", "correction after", "correction before", "correction close", "doubt near", "earlier near",
        "plan near", "denial near", "unknown words", "unread words", "horse unclear", "several horses", "value odd",
        "contradicted", "changed", "sound alike", "least", "mean", "least foot", "around", "memo mean", "slow",
        "least below half", "least below 0.8", "long sentence", "sentence least", "foot before", "number",
        "least before", "unknown before", "nought",
        "unsupported", "otherwise", "hardly so", "hardly this foot", "other name", "horse missed", "work twice",
        "other horse asked", "others contradicted", "foot inside differs", "feet differ", "described", "name like",
    }
)  # fmt: skip


def encode(evidence: Evidence) -> dict[str, float]:
    """The numbers that are not 0, by name; what is missing is 0, so that a piece that is not there decides nothing."""
    numbers = {
        **_of_foot(evidence),
        **_of_near_feet(evidence),
        **_of_surroundings(evidence),
        f"slot {evidence.slot}": 1.0,
        f"status {evidence.status.value}": float(evidence.status is not Status.PRESENT),
        "horse unclear": float(evidence.horse is HorseMatch.UNCLEAR),
        "several horses": float(evidence.horses > 1),
        "otherwise": _unlikely(1 - evidence.otherwise, _LEAST_CHANCE),
        "hardly so": _unlikely(evidence.as_read, _LEAST_CHANCE),
        "hardly this foot": _unlikely(evidence.of_foot, _LEAST_OF_FOOT),
        "other name": float(evidence.other_name),
        "horse missed": float(evidence.horse_missed),
        "work twice": float(evidence.work_twice),
        "other horse asked": float(evidence.other_horse_asked),
        "others contradicted": min(evidence.others_contradicted, _MOST_CONTRADICTED) / _MOST_CONTRADICTED,
        "described": float(evidence.described),
        "name like": evidence.name_like / MOST,
        "nought": float(evidence.nought),
        "value odd": float(evidence.value_odd),
        "contradicted": float(evidence.contradicted),
        "changed": float(evidence.changed),
        **_of_hearing(evidence),
    }
    return {name: value for name, value in numbers.items() if value}


def _of_foot(evidence: Evidence) -> dict[str, float]:
    numbers = {f"foot {evidence.foot.replace('_', ' ')}": 1.0, "far rule": float(evidence.far_rule)}
    if evidence.foot in ("horse", "none", "named"):
        return numbers
    if evidence.words_to_foot is None:
        return {**numbers, "no foot before": 1.0}
    numbers["words to foot"] = min(evidence.words_to_foot, _FAR) / _FAR
    numbers["sentences to foot"] = min(evidence.sentences_to_foot or 0, 4) / 4
    return numbers


def _of_near_feet(evidence: Evidence) -> dict[str, float]:
    feet = evidence.feet
    return {
        "foot inside differs": float(feet.inside_differs),
        "feet differ": float(feet.set_differs),
        "feet in sentence": feet.sets_before / MOST_SETS,
    }


def _of_surroundings(evidence: Evidence) -> dict[str, float]:
    after, before = evidence.correction_after, evidence.correction_before
    return {
        "correction after": exp(-after / _REACH_AFTER) if after is not None else 0.0,
        "correction before": exp(-before / _REACH_BEFORE) if before is not None else 0.0,
        "correction close": float(after is not None and after <= 1),
        "doubt near": float(evidence.doubt_near),
        "earlier near": float(evidence.earlier_near),
        "plan near": float(evidence.plan_near),
        "denial near": float(evidence.denial_near),
        "unknown words": min(evidence.unknown_words, _MOST_UNKNOWN) / _MOST_UNKNOWN,
        "unknown before": min(evidence.unknown_before, _MOST_UNKNOWN) / _MOST_UNKNOWN,
        "unread words": min(evidence.unread_words, _MOST_UNREAD) / _MOST_UNREAD,
        "long sentence": min(max(evidence.sentence_words - 20, 0), 40) / 40,
        "alone in sentence": 1 - min(evidence.facts_in_sentence - 1, _MOST_FACTS) / _MOST_FACTS,
        "late": float(evidence.position > 0.8),
    }


def _of_hearing(evidence: Evidence) -> dict[str, float]:
    numbers = {"sound alike": float(evidence.match is MatchKind.SOUND_ALIKE)}
    parts = {
        "least": evidence.least,
        "mean": evidence.mean,
        "least foot": evidence.least_foot,
        "around": evidence.around,
        "memo mean": evidence.memo_mean,
        "sentence least": evidence.sentence_least,
        "foot before": evidence.foot_before,
        "least before": evidence.least_before,
        "number": evidence.number,
    }
    numbers |= {name: _doubt(value) for name, value in parts.items() if value is not None}
    if evidence.least is not None:
        numbers["heard"] = 1.0
        numbers["heard nought"] = float(evidence.nought)
        numbers["least below half"] = float(evidence.least < 0.5)
        numbers["least below 0.8"] = float(evidence.least < 0.8)
    if evidence.seconds_a_word is not None:
        numbers["slow"] = float(evidence.seconds_a_word > _SLOW_S)
    if evidence.support is not None:
        numbers["replaced"] = 1.0
        numbers["unsupported"] = min(max(SURE_SUPPORT - evidence.support, 0.0), _MOST_NATS) / _MOST_NATS
    return numbers


def _unlikely(chance: float, least: float) -> float:
    """0 for what is certain, 1 for a chance of ``least`` and below."""
    return log(max(min(chance, 1.0), least)) / log(least)


def _doubt(probability: float) -> float:
    """0 for a word that was heard for certain, 1 for one that was hardly heard."""
    return -log(max(_FLOOR, min(1.0, probability))) / _MOST_DOUBT
