"""What is on a foot follows from what was said, visit by visit, and says what it carries from before."""

from __future__ import annotations

import pytest

from pipeline.keeping.seen import SeenVisit
from pipeline.using.set_ups import last_set_ups, set_up_words
from tests.using.seeing import said, visit

SHOD = visit(
    0,
    said("LF", "work", "new_shoe"),
    said("LF", "shoe_size", "0"),
    said("LF", "shoe_type", "egg_bar"),
    said("LF", "shoe_material", "aluminum"),
    said("LF", "nails", 6.0),
    said("LF", "nail_size", "5 slim"),
    said("LF", "pad", "wedge"),
    said("LF", "wedge", 3.0),
    said("LF", "packing", "putty"),
)


def words(*visits: SeenVisit, foot: str = "LF") -> str:
    """The set-up of a foot after these visits, in words."""
    return set_up_words(last_set_ups(visits)[foot])


def test_all_that_was_put_on_is_told() -> None:
    assert words(SHOD) == "new shoe, size 0, egg bar, aluminum, wedge pad, wedge 3°, putty, 6 nails, nail size 5 slim"


@pytest.mark.parametrize("work", ["trim", "removed"])
def test_a_trim_or_a_shoe_taken_off_leaves_the_foot_bare(work: str) -> None:
    assert words(SHOD, visit(6, said("LF", "work", work))) == f"bare ({work})"


def test_a_bare_foot_may_stand_in_a_boot_and_the_boot_is_gone_with_the_next_shoe() -> None:
    booted = visit(6, said("LF", "work", "removed"), said("LF", "shoe_type", "boot", flagged=True))
    assert words(SHOD, booted) == "bare (removed), (!) boot"
    assert words(SHOD, booted, visit(8, said("LF", "work", "new_shoe"))) == "new shoe"
    taken_off = visit(6, said("LF", "work", "removed"), said("LF", "shoe_type", "egg_bar"))
    assert words(SHOD, taken_off) == "bare (removed)"


def test_a_reset_keeps_what_was_on_it() -> None:
    assert words(SHOD, visit(6, said("LF", "work", "reset"), said("LF", "nails", 7.0))) == (
        "reset, 7 nails; from before: size 0, egg bar, aluminum, wedge pad, wedge 3°, putty, nail size 5 slim"
    )


def test_pads_and_packing_go_with_the_old_shoe() -> None:
    assert words(SHOD, visit(6, said("LF", "work", "new_shoe"), said("LF", "shoe_size", "1"))) == (
        "new shoe, size 1; from before: egg bar, aluminum, 6 nails, nail size 5 slim"
    )


def test_another_type_is_of_its_own_material() -> None:
    assert words(SHOD, visit(6, said("LF", "work", "new_shoe"), said("LF", "shoe_type", "plain"))) == (
        "new shoe, plain; from before: size 0, 6 nails, nail size 5 slim"
    )


def test_what_is_said_to_be_off_is_off() -> None:
    off = visit(6, said("LF", "work", "reset"), said("LF", "pad", "wedge", "absent"))
    assert "wedge" not in words(SHOD, off)


@pytest.mark.parametrize("status", ["planned", "history", "suspected"])
def test_only_what_was_done_is_on_the_foot(status: str) -> None:
    assert words(SHOD, visit(6, said("LF", "shoe_type", "plain", status))) == words(SHOD)


def test_a_lost_shoe_is_off_until_one_is_put_on() -> None:
    lost = visit(3, said("LF", "shoe_state", "lost"))
    assert words(SHOD, lost).endswith("; shoe lost, found 2026-01-26")
    assert "lost" not in words(SHOD, lost, visit(4, said("LF", "work", "put_back")))
    assert "lost" not in words(SHOD, visit(3, said("LF", "shoe_state", "lost"), said("LF", "work", "put_back")))


def test_what_nobody_has_looked_at_is_marked() -> None:
    assert words(visit(0, said("LF", "work", "new_shoe"), said("LF", "shoe_size", "0", flagged=True))) == (
        "new shoe, (!) size 0"
    )


def test_feet_do_not_mix() -> None:
    set_ups = last_set_ups([SHOD, visit(6, said("RH", "work", "trim"), said(None, "manner", "quiet"))])
    assert list(set_ups) == ["LF", "RH"]
    assert set_ups["RH"].bare
    assert not set_ups["LF"].bare
