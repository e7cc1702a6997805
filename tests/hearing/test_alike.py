"""How alike two wordings sound, against the published code and by what it must not depend on."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pipeline.hearing.alike import alike, letters, spoken_code

WORDING = st.text(alphabet="abcdefghijklmnopqrstuvwxyz '-", max_size=24)


@pytest.mark.parametrize(
    ("wording", "code"),
    [
        # L. Philips, "Hanging on the Metaphone", Computer Language 7(12), 1990: the letter's rules, worked by hand.
        ("thumb", "TM"),  # TH is one sound, written 0 there and T here; B is silent behind M
        ("knight", "NT"),  # initial KN, silent GH
        ("wrapped", "RPT"),  # initial WR
        ("phase", "FS"),  # PH
        ("centre", "SNTR"),  # C before E
    ],
)
def test_the_code_follows_the_published_rules(wording: str, code: str) -> None:
    assert spoken_code(wording) == code


def test_voiced_and_unvoiced_consonants_are_alike() -> None:
    assert spoken_code("pad") == spoken_code("bat")
    assert spoken_code("seedy toe") == spoken_code("cedito") == "STT"


def test_spaces_do_not_count() -> None:
    assert alike("side bone", "sidebone") == 1.0


@pytest.mark.parametrize(
    ("near", "far"),
    [("ketomi", "canker"), ("boreum", "barium chloride"), ("illuminum", "lunatic")],
)
def test_what_sounds_near_scores_above_what_does_not(near: str, far: str) -> None:
    said = {"ketomi": "keratoma", "boreum": "borium", "illuminum": "aluminum"}[near]
    assert alike(near, said) > 0.66 > alike(far, said)


@given(WORDING, WORDING)
def test_it_lies_between_0_and_1_and_has_no_direction(one: str, other: str) -> None:
    assert 0.0 <= alike(one, other) <= 1.0
    assert alike(one, other) == pytest.approx(alike(other, one))


@given(WORDING)
def test_everything_pronounced_is_like_itself(wording: str) -> None:
    assert alike(wording, wording) == (1.0 if spoken_code(wording) else 0.0)
    assert letters(wording).isalpha() or letters(wording) == ""
