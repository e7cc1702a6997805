"""Limits of single values: the published scales exactly, the trade's limits with their margin."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from pipeline.judging.plausibility import implausible, load_limits
from pipeline.record import HORSE_SLOTS, NUMBER_SLOTS
from tests.judging.making import fact

# Lowest and highest grade of each published scale.
SCALES = {
    "lameness": (0.0, 5.0),  # American Association of Equine Practitioners, lameness scale, grades 0-5
    "obel": (1.0, 4.0),  # Obel 1948, Studies on the histopathology of acute laminitis, grades 1-4
    "body_condition": (1.0, 9.0),  # Henneke et al. 1983, Equine Vet J 15:371-372, scores 1-9
    "cresty_neck": (0.0, 5.0),  # Carter et al. 2009, Vet J 179:204-210, scores 0-5
}


def where(slot: str) -> str | None:
    return None if slot in HORSE_SLOTS else "LF"


@pytest.mark.parametrize("slot", SCALES)
def test_the_ends_of_a_scale_can_be_recorded(slot: str) -> None:
    assert [fact(slot, grade, None).value for grade in SCALES[slot]] == list(SCALES[slot])


@pytest.mark.parametrize("slot", SCALES)
def test_beyond_a_scale_nothing_can_be_recorded(slot: str) -> None:
    low, high = SCALES[slot]
    for grade in (low - 0.5, high + 0.5, low - 1, high + 1):
        with pytest.raises(ValidationError, match="is outside"):
            fact(slot, grade, None)


@pytest.mark.parametrize("slot", sorted(load_limits()))
def test_limits_name_their_source(slot: str) -> None:
    limits = load_limits()[slot]
    published = {"lameness": "AAEP", "obel": "Obel 1948", "body_condition": "Henneke et al. 1983",
                 "cresty_neck": "Carter et al. 2009", "toe_angle": "45 (Hickman 1987) to 60 degrees (Ovnicek 1995)",
                 "heel_angle": "5 degrees less than the toe's is underrun (Turner",
                 "sole_depth": "at least 15 mm is wanted and 7 mm is thin (Baus"}  # fmt: skip
    assert limits.source.startswith(published.get(slot, "common practice, no source"))


def test_every_number_of_the_record_has_limits() -> None:
    assert set(load_limits()) == set(NUMBER_SLOTS)


@given(st.sampled_from(sorted(NUMBER_SLOTS)), st.floats(0, 1))
def test_a_value_is_questioned_just_outside_its_usual_range(slot: str, share: float) -> None:
    low, high = NUMBER_SLOTS[slot]
    value = low + (high - low) * share
    limits = load_limits()[slot]
    reason = implausible(fact(slot, value, where(slot)))
    assert (reason is None) == (limits.unusual_low <= value <= limits.unusual_high)
    if reason is not None:
        assert ("hardly occurs" in reason) == (not limits.low <= value <= limits.high)
        assert reason.endswith("please check.")


def test_the_sentence_names_the_value_and_the_range() -> None:
    assert implausible(fact("toe_angle", 33.0)) == "A toe angle of 33 hardly occurs (35 to 70 does); please check."
    assert implausible(fact("toe_angle", 44.0)) == "A toe angle of 44 is unusual; please check."
    assert implausible(fact("nails", 9.0)) == "A shoe with 9 nails is unusual; please check."
    assert implausible(fact("nails", 11.0)) == "A shoe with 11 nails hardly occurs (3 to 10 does); please check."
    assert implausible(fact("wedge", 6.0)) == "A wedge of 6 degrees is unusual; please check."
    weeks = fact("next_visit_weeks", 16.0, None)
    assert implausible(weeks) == "A next visit after 16 weeks is unusual; please check."


def test_words_are_never_questioned() -> None:
    assert implausible(fact("shoe_size", "12")) is None
    assert implausible(fact("nail_size", "5 slim")) is None
