"""Fitting the second opinion: which status was meant, from the words around, in memos that a reader did not know."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression
from sklearn.model_selection import GroupKFold

import pipeline.judging
from pipeline.judging.opinion import NOT_SO, TENTHS, Opinion, words_around
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, Status, Visit
from tests.facts.scoring import GoldFact, same_value

OPINION = Path(pipeline.judging.__file__).resolve().parent / "opinion.json"
STATUSES = (*(status.value for status in Status), NOT_SO)
FOLDS = 10
_FEWEST_MEMOS = 4  # memos that must hold a word in its place, so that no memo's own words count
_STRENGTH = 0.15  # of the fit (sklearn's C)
# Hundredths: a word whose weights are all nearer to 0 than the first is left out, and a weight nearer than the second
# is 0; of kept text and sound the same facts stayed wrong unseen, and 0.1 to 0.3 % more were asked about. The others
# are whole steps.
_LEAST, _NOTHING, _STEP = 20, 10, 10


@dataclass(frozen=True)
class Said:
    """One fact as read: the words around it and the status that was meant."""

    memo: str
    words: frozenset[str]
    meant: str


def said_in(gold: dict[str, Any], visits: Sequence[Visit], text: str) -> Iterator[Said]:
    """Every fact that a reader read in a memo."""
    around = Surroundings(text)
    for visit in visits:
        own = own_gold(gold, visit)
        everything = [fact for told in gold["visits"] for fact in told["facts"]]
        for fact in visit.facts:
            words = frozenset(words_around(around, fact.span, fact.slot))
            yield Said(gold["id"], words, meaning(fact, own, everything))


def own_gold(gold: dict[str, Any], visit: Visit) -> list[GoldFact]:
    """The facts that a memo's gold has of the horse of a visit."""
    name = (visit.horse or "").lower()
    return [fact for told in gold["visits"] if (told["horse"] or "").lower() == name for fact in told["facts"]]


def meaning(fact: Fact, own: Sequence[GoldFact], everything: Sequence[GoldFact]) -> str:
    """The status that was meant of a fact, by its horse's gold, else by any horse's of the memo, or ``NOT_SO``."""
    return _meant(fact, own) or _meant(fact, everything) or NOT_SO


def _meant(fact: Fact, gold: Sequence[GoldFact]) -> str | None:
    """The status of the same fact in gold: its own where gold has it too."""
    found = [str(g[3]) for g in gold if (g[0], g[1]) == (fact.foot, fact.slot) and same_value(g[1], fact.value, g[2])]
    return str(fact.status.value) if fact.status.value in found else next(iter(found), None)


def fit_opinion(said: Sequence[Said]) -> Opinion:
    """Multinomial logistic regression on the words that several memos hold."""
    memos = Counter(word for word, _ in {(word, one.memo) for one in said for word in one.words})
    kept = {word for word, count in memos.items() if count >= _FEWEST_MEMOS}
    table = DictVectorizer()
    rows = table.fit_transform([dict.fromkeys(one.words & kept, 1.0) for one in said])
    model = LogisticRegression(C=_STRENGTH, max_iter=200, tol=1e-3).fit(rows, np.array([one.meant for one in said]))
    order = [list(model.classes_).index(status) for status in STATUSES]
    rounded = np.round(TENTHS * _STEP * model.coef_[order].T).astype(int)
    weights = {
        str(word): [round(weight / _STEP) if abs(weight) >= _NOTHING else 0 for weight in row]
        for word, row in zip(table.get_feature_names_out(), rounded, strict=True)
        if abs(row).max() >= _LEAST
    }
    return Opinion(STATUSES, [round(float(bias), 4) for bias in model.intercept_[order]], weights)


def opinions_left_out(said: Sequence[Said]) -> dict[str, Opinion]:
    """For every memo an opinion that was fitted without it."""
    found: dict[str, Opinion] = {}
    memos = [one.memo for one in said]
    for inside, outside in GroupKFold(FOLDS).split(np.zeros(len(said)), groups=memos):
        opinion = fit_opinion([said[i] for i in inside])
        found |= dict.fromkeys((memos[i] for i in outside), opinion)
    return found


def write_opinion(opinion: Opinion) -> None:
    """Write ``opinion.json``: by place the words and, word after word, their weights, which packs small."""
    words: dict[str, list[str]] = {}
    weights: dict[str, list[float]] = {}
    for name, row in sorted(opinion.weights.items()):
        place, word = name.split(": ", 1)
        words.setdefault(place, []).append(word)
        weights.setdefault(place, []).extend(row)
    told = {
        "statuses": list(opinion.statuses),
        "bias": list(opinion.bias),
        "words": {place: " ".join(found) for place, found in words.items()},
        "weights": weights,
    }
    lines = [f'"{key}": {json.dumps(value, ensure_ascii=False, separators=(",", ":"))}' for key, value in told.items()]
    OPINION.write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8")
