"""The model of plain numbers: chances by hand, and what holds of the shipped one."""

from __future__ import annotations

from dataclasses import replace
from math import ceil, exp

import pytest

from pipeline.judging import judge
from pipeline.judging.encoding import DOUBTS, encode
from pipeline.judging.features import EvidenceOfMemo, Found
from pipeline.judging.model import Care, Level, Model, Odds, cost_of, shipped
from pipeline.record import Transcript
from tests.judging.making import fact, heard, visit


def model(**weights: float) -> Model:
    level = Level(flag_above=0.5, flagged=0.1, silent=0.02, expected=0.03, grave_expected=0.02, bound=0.04)
    named = {name.replace("_", " "): weight for name, weight in weights.items()}
    grave = Odds({"contradicted": 4.0}, -3.0, 1.0, 0.0)
    return Model(Odds(named, -2.0, 0.5, 0.25), grave, dict.fromkeys(Care, level), 100, 10)


def seen(probability: float = 0.9) -> EvidenceOfMemo:
    return EvidenceOfMemo(heard(("trim", probability)), [visit(fact("work", "trim", span=(0, 4)))])


def test_the_chance_by_hand() -> None:
    made = fact("work", "trim", span=(0, 4))
    found = encode(seen().of(made, visit(made), Found(value_odd=True)))
    one = model(value_odd=3.0, contradicted=5.0).wrong
    assert one.chance(found) == pytest.approx(1 / (1 + exp(-(0.5 * (3.0 - 2.0) + 0.25))))
    assert one.parts(found) == {"value odd": 3.0}


def test_a_fact_is_flagged_for_being_wrong_or_for_being_gravely_so() -> None:
    one = model(value_odd=3.0, contradicted=0.5)
    wrong, parts = one.doubt({}, Care.USUAL)
    assert wrong == pytest.approx(1 / (1 + exp(0.75)))
    assert parts is None
    wrong, parts = one.doubt({"value odd": 1.0}, Care.USUAL)
    assert wrong > 0.5
    assert parts == {"value odd": 3.0}
    wrong, parts = one.doubt({"contradicted": 0.7}, Care.USUAL)  # gravely so: twice 1 / (1 + exp(0.2)) is 0.9
    assert wrong < 0.5
    assert parts == {"contradicted": 4.0 * 0.7}
    assert one.doubt({"contradicted": 0.4}, Care.USUAL)[1] is None  # twice 1 / (1 + exp(1.4)) is 0.4


@pytest.mark.parametrize("kind", ["typed", "heard"])
def test_the_shipped_doubts_only_ever_lower_trust(kind: str) -> None:
    for odds in (shipped()[kind].wrong, shipped()[kind].grave):
        assert {name: weight for name, weight in odds.weights.items() if name in DOUBTS and weight < 0} == {}
        assert odds.scale > 0


@pytest.mark.parametrize("kind", ["typed", "heard"])
def test_the_stricter_the_more_is_flagged_and_the_less_is_wrong_in_silence(kind: str) -> None:
    levels = shipped()[kind].levels
    strict, usual, fast = levels[Care.STRICT], levels[Care.USUAL], levels[Care.FAST]
    assert strict.flag_above < usual.flag_above < fast.flag_above
    assert strict.flagged > usual.flagged > fast.flagged
    assert strict.silent < usual.silent < fast.silent
    assert all(level.silent < level.bound < 1 for level in levels.values())


@pytest.mark.parametrize(("kind", "care", "grave"), [("typed", Care.USUAL, 0.005), ("heard", Care.STRICT, 0.005),
                                                    ("heard", Care.USUAL, 0.0065)])  # fmt: skip
def test_one_per_cent_is_promised_and_about_half_of_it_of_horse_foot_and_no(
    kind: str, care: Care, grave: float
) -> None:
    level = shipped()[kind].levels[care]
    assert level.expected <= 0.01
    assert level.grave_expected <= grave
    assert shipped()[kind].memos >= 299  # of which none wrong would promise 1 % with 95 % confidence


def test_a_harder_word_is_trusted_less() -> None:
    made = fact("work", "trim", span=(0, 4))
    chances = [
        shipped()["heard"].wrong.chance(encode(seen(p).of(made, visit(made), Found()))) for p in (0.99, 0.7, 0.4, 0.1)
    ]
    assert chances == sorted(chances)
    assert chances[0] < chances[-1]


def test_evidence_that_is_missing_decides_nothing() -> None:
    made = fact("work", "trim", span=(0, 4))
    found = seen().of(made, visit(made), Found())
    less = replace(found, least=None, mean=None, around=None, memo_mean=None, sentence_least=None)
    assert set(encode(less)) < set(encode(found))
    assert 0 < shipped()["heard"].wrong.chance(encode(less)) < 1


TALK = "Bramble. Left fore reset, six nails, sorry, five nails. Last time thrush in the off hind. Maybe a corn there."


@pytest.mark.parametrize("text", [TALK, TALK.replace(",", "."), TALK.lower()])
def test_a_stricter_level_flags_all_that_a_faster_one_flags(text: str) -> None:
    facts = [
        fact("work", "reset", span=(19, 24)),
        fact("nails", 6.0, span=(26, 35)),
        fact("nails", 5.0, span=(44, 54)),
        fact("finding", "thrush", "RH", span=(66, 72), status="history"),
        fact("finding", "corn", "RH", span=(98, 102), status="suspected"),
    ]
    flagged = []
    for care in (Care.FAST, Care.USUAL, Care.STRICT):
        (judged,) = judge([visit(*facts)], Transcript(text=text), care=care)
        flagged.append({number for number, one in enumerate(judged.facts) if one.flagged})
        assert all(bool(one.reasons) == one.flagged and 0 <= one.confidence <= 1 for one in judged.facts)
    assert flagged[0] <= flagged[1] <= flagged[2]


def test_what_a_level_costs_is_told_with_its_bound() -> None:
    told, level = cost_of(Care.STRICT), shipped()["heard"].levels[Care.STRICT]
    assert told.startswith(f"--review strict: of heard facts {100 * level.flagged:.1f} % were put before a person and ")
    promised = [ceil(1000 * share - 1e-9) / 10 for share in (level.expected, level.grave_expected, level.bound)]
    assert 100 * level.expected <= promised[0] < 100 * level.expected + 0.1
    assert f"in new memos at most {promised[0]} % on average" in told
    assert f"with the wrong horse, foot or “no” {promised[1]} %" in told
    assert f"with 95 % confidence at most {promised[2]} %" in told
    assert f"chosen on {shipped()['heard'].memos} memos" in told
