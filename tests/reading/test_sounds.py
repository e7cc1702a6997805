"""How alike two names are."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pipeline.reading.sounds import likeness, sound_code


@pytest.mark.parametrize(("one", "other"), [("Bramble", "bramble"), ("Rook's Nest", "rooks nest"), ("O'Hara", "ohara")])
def test_case_space_and_marks_do_not_count(one: str, other: str) -> None:
    assert likeness(one, other) == 1.0


def test_one_sound_two_spellings() -> None:
    assert sound_code("Tansy") == sound_code("Tanzy")
    assert 0.85 < likeness("Tansy", "Tanzy") < 1.0


@pytest.mark.parametrize(
    ("said", "near", "far"),
    [("Brumbel", "Bramble", "Otter"), ("Feebee", "Phoebe", "Freddy"), ("Mary Gold", "Marigold", "Margaret")],
)
def test_the_name_that_sounds_so_is_nearer(said: str, near: str, far: str) -> None:
    assert likeness(said, near) > likeness(said, far)


@pytest.mark.parametrize("empty", ["", "123", "!?", "馬"])
def test_no_letters_are_like_nothing(empty: str) -> None:
    assert likeness(empty, "Bramble") == 0.0
    assert likeness(empty, empty) == 0.0


@given(st.text(max_size=30), st.text(max_size=30))
def test_a_share_that_does_not_depend_on_the_order(one: str, other: str) -> None:
    assert 0.0 <= likeness(one, other) <= 1.0
    assert likeness(one, other) == pytest.approx(likeness(other, one))
