"""The evidence of one fact, piece by piece, and as numbers."""

from __future__ import annotations

from math import exp, log

import pytest

from pipeline.judging.encoding import DOUBTS, encode
from pipeline.judging.features import Evidence, EvidenceOfMemo, Found
from pipeline.judging.opinion import Opinion
from pipeline.record import SURE_SUPPORT, Fact, HorseMatch, MatchKind, RosterHorse, Status, Transcript
from tests.judging.making import fact, heard, visit

TEXT = "Marigold. Left fore reset. Thrush, no, scratch that, white line in the off hind."


def evidence(found: Fact, transcript: Transcript | None = None, known: Found | None = None) -> Evidence:
    seen = visit(found)
    return EvidenceOfMemo(transcript or Transcript(text=TEXT), [seen]).of(found, seen, known or Found())


def at(words: str, text: str = TEXT) -> tuple[int, int]:
    return text.index(words), text.index(words) + len(words)


def test_the_evidence_of_a_typed_fact_is_all_there_and_that_of_sound_is_missing() -> None:
    found = evidence(fact("finding", "thrush", "LF", span=at("Thrush"), rules=["foot: still in hand"]))
    assert (found.slot, found.status, found.match, found.foot) == (
        "finding", Status.PRESENT, MatchKind.EXACT, "in_hand",
    )  # fmt: skip
    assert (found.words_to_foot, found.sentences_to_foot) == (3, 1)
    assert (found.correction_before, found.correction_after) == (None, 1)
    assert (found.doubt_near, found.earlier_near, found.plan_near, found.denial_near) == (False, False, False, True)
    assert (found.horses, found.horse, found.facts_in_sentence) == (1, HorseMatch.KNOWN, 1)
    heard_only = ("least", "mean", "least_foot", "around", "memo_mean", "seconds_a_word", "sentence_least",
                  "least_before", "foot_before", "number", "support")  # fmt: skip
    assert {name: getattr(found, name) for name in heard_only} == dict.fromkeys(heard_only)


@pytest.mark.parametrize(
    ("foot", "slot", "rules", "kind"),
    [
        ("LF", "finding", ["foot: named beside it"], "named"),
        ("LF", "finding", ["foot: still in hand", "foot: not said"], "guessed"),
        ("LF", "finding", ["the same on another foot"], "copied"),
        ("LF", "finding", ["foot: named in the next sentence"], "next"),
        ("LF", "finding", ["foot: where it was said to be before"], "before"),
        ("LF", "finding", [], "list"),
        (None, "pulse", [], "none"),
        (None, "manner", [], "horse"),
    ],
)
def test_how_the_foot_was_found_is_told_by_the_rules(foot: str | None, slot: str, rules: list[str], kind: str) -> None:
    assert (
        evidence(fact(slot, {"finding": "thrush", "pulse": "normal", "manner": "quiet"}[slot], foot, rules=rules)).foot
        == kind
    )


def test_the_sound_gives_the_least_and_the_mean_of_the_telling_words() -> None:
    talk = heard(("Off", 0.4), ("hind.", 0.9), ("Six", 0.6), ("of", 0.1), ("nails.", 0.8))
    found = evidence(fact("nails", 6.0, "RH", span=(10, 22)), talk)
    assert (found.least, found.number, found.least_before) == (0.6, 0.6, 0.4)
    assert found.mean == pytest.approx(0.7)
    assert found.foot_before == 0.9
    assert found.memo_mean == pytest.approx(0.56)
    assert found.seconds_a_word == pytest.approx(1.4 / 3)


def test_a_word_put_for_another_brings_its_support() -> None:
    talk = heard(("keratoma.", 0.9))
    word = talk.words[0].model_copy(update={"heard": "ketomi", "support": -3.0})
    found = evidence(fact("finding", "keratoma", span=(0, 9)), talk.model_copy(update={"words": [word]}))
    assert found.support == -3.0
    assert encode(found)["unsupported"] == pytest.approx((SURE_SUPPORT + 3.0) / 6)


def test_evidence_as_numbers_by_hand() -> None:
    numbers = encode(evidence(fact("finding", "thrush", "LF", span=at("Thrush"), rules=["foot: still in hand"])))
    assert numbers["slot finding"] == numbers["foot in hand"] == numbers["denial near"] == 1.0
    assert numbers["words to foot"] == pytest.approx(3 / 30)
    assert numbers["correction after"] == pytest.approx(exp(-1 / 6))
    assert numbers["correction close"] == 1.0
    assert not any(name in numbers for name in ("heard", "least", "value odd", "contradicted"))


def test_a_word_that_was_hardly_heard_counts_as_one_and_a_sure_one_as_none() -> None:
    def least(probability: float) -> float:
        return encode(evidence(fact("work", "trim", span=(0, 4)), heard(("trim", probability)))).get("least", 0.0)

    assert (least(1.0), least(0.02), least(0.001)) == (0.0, 1.0, 1.0)
    assert least(0.5) == pytest.approx(log(0.5) / log(0.02))


def test_what_judging_found_out_is_evidence_too() -> None:
    numbers = encode(evidence(fact("work", "trim", span=(0, 4)), known=Found(True, True, True, True)))
    told = ("value odd", "contradicted", "changed", "other horse asked")
    assert [numbers[name] for name in told] == [1.0, 1.0, 1.0, 1.0]
    assert set(told) <= DOUBTS


TWO = "Marigold, trim all round. Then Biddy, new shoes in front. Back to Marigold, thrush."


@pytest.mark.parametrize(("words", "other"), [("trim", False), ("new shoes", True), ("thrush", False)])
def test_whose_name_was_said_last(words: str, other: bool) -> None:
    found = fact("work", "trim", span=at(words, TWO))
    seen = visit(found)
    evidence = EvidenceOfMemo(Transcript(text=TWO), [seen], [RosterHorse(name="Biddy")]).of(found, seen, Found())
    assert evidence.other_name is other
    assert encode(evidence).get("other name", 0.0) == float(other)


@pytest.mark.parametrize(
    ("text", "missed"),
    [
        ("So two today, wet as anything. Marigold, trim.", True),
        ("Two on the hill road. Marigold, trim.", True),
        ("One today. Marigold, trim.", False),
        ("Marigold, trim. Size two on both.", False),
        ("Marigold, trim. I saw Biddie too.", True),  # sounds like Biddy, of whom nothing was read
    ],
)
def test_more_horses_than_were_read(text: str, missed: bool) -> None:
    found = fact("work", "trim", span=at("trim", text))
    seen = visit(found)
    roster = [RosterHorse(name="Biddy"), RosterHorse(name="Marigold")]
    evidence = EvidenceOfMemo(Transcript(text=text), [seen], roster).of(found, seen, Found())
    assert evidence.horse_missed is missed


def test_two_kinds_of_work_on_one_foot_may_be_two_horses() -> None:
    def twice(*works: Fact) -> bool:
        seen = visit(*works)
        return EvidenceOfMemo(Transcript(text=TEXT), [seen]).of(works[0], seen, Found()).work_twice

    assert twice(fact("work", "trim"), fact("work", "reset"))
    assert not twice(fact("work", "trim"), fact("work", "reset", "RF"))
    assert not twice(fact("work", "trim"), fact("work", "new_shoe", status=Status.PLANNED))


def test_the_second_opinion_is_asked_for_the_status_that_was_read() -> None:
    opinion = Opinion(("present", "absent"), (0.0, 0.0), {"in: thrush": (0, 11)})
    found = fact("finding", "thrush", "LF", span=at("Thrush"))
    seen = visit(found)
    evidence = EvidenceOfMemo(Transcript(text=TEXT), [seen], opinion=opinion).of(found, seen, Found())
    assert evidence.otherwise == pytest.approx(1 / (1 + exp(-1.1)))
    assert encode(evidence)["otherwise"] == pytest.approx(log(1 - evidence.otherwise) / log(0.005))
