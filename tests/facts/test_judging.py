"""Judging: what lowers trust, what cannot go together, and which caution a record carries."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.judging import cautions, judge
from pipeline.judging.plausibility import implausible, load_limits
from pipeline.record import NUMBER_SLOTS, Fact, FlagKind, HorseMatch, MatchKind, Status, Transcript, Visit, Word
from tests.facts.conftest import Read


def visit(*facts: Fact) -> Visit:
    return Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 5, 12), facts=list(facts))


def fact(slot: str, value: str | float, foot: str | None = "LF", **more: object) -> Fact:
    return Fact.model_validate({"foot": foot, "slot": slot, "value": value, **more})


def judged(*facts: Fact) -> Visit:
    return judge([visit(*facts)], Transcript(text=""))[0]


def test_a_plain_fact_is_trusted() -> None:
    (one,) = judged(fact("finding", "thrush")).facts
    assert one.confidence > 0.9
    assert (one.flagged, one.reasons) == (False, [])


def test_a_sound_alike_is_put_before_him() -> None:
    (one,) = judged(fact("nail_line", "good", match=MatchKind.SOUND_ALIKE, quote="male lines good")).facts
    assert one.flagged
    assert one.reasons == ["Heard “male lines good”, read as good; please listen."]


@pytest.mark.parametrize(("probability", "flagged"), [(0.95, False), (0.2, True)])
def test_an_unsure_number_is_flagged(probability: float, flagged: bool) -> None:
    words = [
        Word(text="six", start=0, end=3, start_s=0, end_s=0.3, probability=probability),
        Word(text="nails", start=4, end=9, start_s=0.3, end_s=0.8, probability=0.9),
    ]
    nails = fact("nails", 6.0, span=(0, 9), quote="six nails")
    (one,) = judge([visit(nails)], Transcript(text="six nails", words=words))[0].facts
    assert bool(one.flagged) == flagged


def test_a_shoe_without_a_foot_is_flagged() -> None:
    (one,) = judged(fact("shoe_size", "2", foot=None)).facts
    assert one.reasons == ["No foot was understood; which one is it?"]


@pytest.mark.parametrize(
    ("slot", "value", "odd"),
    [("toe_angle", 52.0, False), ("toe_angle", 33.0, True), ("toe_angle", 62.0, True), ("toe_length", 88.0, False),
     ("toe_length", 200.0, True), ("nails", 6.0, False), ("nails", 11.0, True), ("sole_depth", 12.0, False)],
)  # fmt: skip
def test_limits(slot: str, value: float, odd: bool) -> None:
    assert (implausible(fact(slot, value)) is not None) is odd


def test_limits_have_sources_and_lie_within_the_record() -> None:
    for slot, limits in load_limits().items():
        low, high = NUMBER_SLOTS[slot]
        assert low <= limits.low <= limits.unusual_low <= limits.unusual_high <= limits.high <= high
        assert limits.source


def test_published_scales_bound_the_record() -> None:
    # AAEP lameness 0-5; Obel 1948, 1-4; Henneke et al. 1983, 1-9; Carter et al. 2009, 0-5
    scales = {slot: NUMBER_SLOTS[slot] for slot in ("lameness", "obel", "body_condition", "cresty_neck")}
    assert scales == {"lameness": (0, 5), "obel": (1, 4), "body_condition": (1, 9), "cresty_neck": (0, 5)}


def test_two_values_of_one_measure_are_a_contradiction() -> None:
    seen = judged(fact("toe_angle", 50.0), fact("toe_angle", 53.0))
    assert [f.flagged for f in seen.facts] == [True, True]
    assert [f.kind for f in seen.flags] == [FlagKind.CONTRADICTION]


def test_found_and_denied_is_a_contradiction() -> None:
    seen = judged(fact("finding", "heat"), fact("finding", "heat", status=Status.ABSENT))
    assert "both found and denied" in seen.flags[0].reason


def test_nails_in_a_bare_foot() -> None:
    assert judged(fact("work", "trim"), fact("nails", 6.0)).facts[1].flagged


CALLING = {
    "laminitis": [fact("finding", "laminitis", foot=None)],
    "puncture": [fact("finding", "puncture")],
    "quicked": [fact("finding", "quicked")],
    "grade 4": [fact("lameness", 4.0)],
    "Copper sulfate": [fact("treatment", "copper_sulfate")],
    "go with laminitis": [fact("finding", "heat"), fact("pulse", "bounding")],
}


@pytest.mark.parametrize("words", CALLING)
def test_what_can_hurt_carries_a_caution(words: str) -> None:
    (line,) = cautions(CALLING[words])
    assert words in line
    assert line.endswith("Ask your vet; local rules apply.")


@pytest.mark.parametrize("status", [Status.HISTORY, Status.ABSENT, Status.PLANNED, Status.RESOLVED])
def test_what_is_not_so_today_carries_none(status: Status) -> None:
    assert cautions([fact("finding", "puncture", status=status)]) == []


def test_heat_without_a_bounding_pulse_carries_none() -> None:
    assert cautions([fact("finding", "heat"), fact("pulse", "raised"), fact("pulse", "bounding", foot="RF")]) == []


def test_a_read_memo_is_judged_whole(read: Read) -> None:
    (seen,) = judge(read("Bramble. Left front toe angle 33 degrees.", "Bramble"), Transcript(text=""))
    assert seen.facts[0].flagged
