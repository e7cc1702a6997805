"""Fitting the signs of an overlooked fact: sentences of memos that a reader did not know, and what it missed there."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression
from sklearn.model_selection import GroupKFold

import pipeline.judging
from pipeline.judging.model import Care
from pipeline.judging.overlooked import Signs, sentences, signs_of
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, Visit
from tests.bench.judging.fitting import Array
from tests.facts.scoring import GoldFact, same_value

SIGNS = Path(pipeline.judging.__file__).resolve().parent / "overlooked.json"
# Flags a memo that each level of care may raise, before those are left out where something is asked anyway.
FLAGS = {
    "typed": {Care.STRICT: 1.6, Care.USUAL: 1.0, Care.FAST: 0.4},
    "heard": {Care.STRICT: 2.4, Care.USUAL: 1.5, Care.FAST: 0.5},
}
FOLDS = 10
_FEWEST_MEMOS = 4  # memos that must hold a sign, so that no memo's own words count
_STRENGTH = 0.2  # of the fit (sklearn's C)

Places = Callable[[GoldFact], Sequence[tuple[int, int]]]


@dataclass(frozen=True)
class ReadSentence:
    """One sentence of a memo with its signs, and whether a fact that was said there was missed."""

    memo: str
    take: str
    kind: str
    signs: dict[str, float]
    missed: bool
    fresh: bool = True  # heard by an ear and read by a reader of today that did not know the memo


def sentences_of(
    kind: str,
    gold: dict[str, Any],
    visits: Sequence[Visit],
    text: str,
    where: Places,
    take: str = "",
    fresh: bool = True,
) -> Iterator[ReadSentence]:
    """Every sentence of one memo; ``where`` tells where the words of a gold fact stand, of which the first counts."""
    around = Surroundings(text)
    places = [where(fact) for fact in _missed(gold, visits)]
    missed = {around.sentence_of(around.place(spans[0])[0])[0] for spans in places if spans and around.tokens}
    for sentence in sentences(around, [fact for visit in visits for fact in visit.facts]):
        yield ReadSentence(
            gold["id"], f"{gold['id']} {take}", kind, signs_of(around, sentence), sentence.first in missed, fresh
        )


def _missed(gold: dict[str, Any], visits: Sequence[Visit]) -> Iterator[GoldFact]:
    """The gold facts that no fact matches, whosever it is."""
    left = [fact for visit in visits for fact in visit.facts]
    for wanted in (fact for told in gold["visits"] for fact in told["facts"]):
        hit = next((fact for fact in left if _same(fact, wanted)), None)
        if hit is None:
            yield wanted
        else:
            left.remove(hit)


def _same(fact: Fact, gold: GoldFact) -> bool:
    return (fact.foot, fact.slot, fact.status) == (gold[0], gold[1], gold[3]) and same_value(
        gold[1], fact.value, gold[2]
    )


def fit_signs(found: Sequence[ReadSentence], levels: Mapping[str, Mapping[Care, float]] | None = None) -> Signs:
    """Logistic regression on the signs that several memos hold."""
    memos = Counter(name for name, _ in {(name, one.memo) for one in found for name in one.signs})
    table = DictVectorizer()
    rows = table.fit_transform([{n: v for n, v in one.signs.items() if memos[n] >= _FEWEST_MEMOS} for one in found])
    model = LogisticRegression(C=_STRENGTH, max_iter=300).fit(rows, np.array([one.missed for one in found]))
    named = zip(table.get_feature_names_out(), model.coef_[0], strict=True)
    weights = {str(name): round(20 * float(weight)) / 20 for name, weight in named if abs(weight) >= 0.125}
    return Signs(weights, round(float(model.intercept_[0]), 4), levels or {})


def chances_left_out(found: Sequence[ReadSentence]) -> Array:
    """For every sentence the chance by a fit that did not know its memo."""
    chances = np.zeros(len(found))
    for inside, outside in GroupKFold(FOLDS).split(chances, groups=[one.memo for one in found]):
        signs = fit_signs([found[i] for i in inside])
        chances[outside] = [signs.chance(found[i].signs) for i in outside]
    return chances


def levels_of(found: Sequence[ReadSentence], chances: Sequence[float] | Array) -> dict[str, dict[Care, float]]:
    """By kind of memo the chance above which each level of care flags, as many a fresh memo as ``FLAGS`` says."""
    levels: dict[str, dict[Care, float]] = {}
    for kind, wanted in FLAGS.items():
        own = np.sort([c for c, one in zip(chances, found, strict=True) if one.kind == kind and one.fresh])[::-1]
        takes = len({one.take for one in found if one.kind == kind and one.fresh})
        levels[kind] = {
            care: round(float(own[min(int(flags * takes), len(own) - 1)]), 4) for care, flags in wanted.items()
        }
    return levels


def told(found: Sequence[ReadSentence], chances: Array, levels: Mapping[str, Mapping[Care, float]]) -> Iterator[str]:
    """A line a kind and level: how many sentences are flagged, and how many of those had a missed fact."""
    for kind, by_care in levels.items():
        own = [(one, c) for one, c in zip(found, chances, strict=True) if one.kind == kind]
        for care, above in by_care.items():
            flagged = [one.missed for one, c in own if c > above]
            missed = sum(one.missed for one, _ in own)
            yield (
                f"{kind} {care.value}: {len(flagged)} of {len(own)} sentences flagged, {sum(flagged)} of them with a "
                f"missed fact; {missed} such sentences in all"
            )


def write_signs(signs: Signs) -> None:
    """Write ``overlooked.json``, one sign a line."""
    levels = {kind: {care.value: above for care, above in by.items()} for kind, by in signs.levels.items()}
    whole = {"levels": levels, "bias": signs.bias, "weights": dict(sorted(signs.weights.items()))}
    SIGNS.write_text(json.dumps(whole, indent=0, ensure_ascii=False) + "\n", encoding="utf-8")
