"""The drawing of a hoof: every zone has its place, inside and outside are right, colour is never alone."""

from __future__ import annotations

from xml.etree import ElementTree

import pytest

from pipeline.record import FEET, ZONES, Fact, Foot
from pipeline.using.hoof_map import (
    COLOURS,
    HEIGHT,
    WIDTH,
    ZONE_SHAPES_ORDER,
    Kind,
    Mark,
    hoof_svg,
    kind_of,
    zone_shapes,
)

SVG = "{http://www.w3.org/2000/svg}"


@pytest.mark.parametrize("foot", FEET)
@pytest.mark.parametrize("zone", ZONES)
def test_every_zone_of_the_record_can_be_drawn(foot: Foot, zone: str) -> None:
    shapes = zone_shapes(zone, foot)
    assert shapes
    assert all(0 <= x <= WIDTH and 0 <= y <= HEIGHT for shape in shapes for x, y in shape)
    drawing = ElementTree.fromstring(hoof_svg(foot, [Mark(1, zone, "thrush", Kind.FINDING)]))
    filled = [path for path in drawing.iter(f"{SVG}path") if path.get("fill") == COLOURS[Kind.FINDING]]
    assert len(filled) == len(shapes)
    assert [text.text for text in drawing.iter(f"{SVG}text")][-1] == "1"


def test_no_zone_is_left_out() -> None:
    assert sorted(ZONE_SHAPES_ORDER) == sorted(ZONES)


@pytest.mark.parametrize(("foot", "outside_is_right"), [("LF", True), ("LH", True), ("RF", False), ("RH", False)])
def test_seen_from_below_the_outside_of_a_left_foot_is_on_the_right(foot: Foot, outside_is_right: bool) -> None:
    middle = WIDTH / 2
    for zone, right in (("lateral_quarter", outside_is_right), ("medial_heel", not outside_is_right)):
        (shape,) = zone_shapes(zone, foot)
        assert all((x > middle) == right for x, _ in shape)
    words = {
        text.text: float(text.get("x", 0)) for text in ElementTree.fromstring(hoof_svg(foot, [])).iter(f"{SVG}text")
    }
    assert (words["outside"] > words["inside"]) == outside_is_right


def test_the_toe_is_up_and_the_heel_is_down() -> None:
    toe = [y for shape in zone_shapes("toe", "LF") for _, y in shape]
    heel = [y for shape in zone_shapes("heel", "LF") for _, y in shape]
    bulbs = [y for shape in zone_shapes("heel_bulb", "LF") for _, y in shape]
    assert max(toe) < min(heel) < max(heel) < min(bulbs) + 10


def test_two_marks_of_one_zone_take_the_more_pressing_colour_and_both_numbers() -> None:
    marks = [Mark(1, "sulcus", "thrush", Kind.FINDING), Mark(2, "sulcus", "iodine", Kind.DONE)]
    drawing = ElementTree.fromstring(hoof_svg("LH", marks))
    fills = {path.get("fill") for path in drawing.iter(f"{SVG}path")}
    assert COLOURS[Kind.FINDING] in fills
    assert COLOURS[Kind.DONE] not in fills
    assert [text.text for text in drawing.iter(f"{SVG}text")][-1] == "1,2"
    assert drawing.get("aria-label") == "Left hind from below, toe up: 1 thrush; 2 iodine"


def test_a_mark_without_a_place_colours_nothing() -> None:
    assert hoof_svg("LF", [Mark(1, None, "thrush", Kind.FINDING)]).count("<path") == hoof_svg("LF", []).count("<path")


@pytest.mark.parametrize(
    ("slot", "value", "status", "kind"),
    [
        ("finding", "thrush", "present", Kind.FINDING),
        ("finding", "thrush", "suspected", Kind.SUSPECTED),
        ("finding", "thrush", "absent", Kind.CLEAR),
        ("finding", "thrush", "resolved", Kind.CLEAR),
        ("finding", "thrush", "history", None),
        ("tester", "none", "present", Kind.CLEAR),
        ("tester", "strong", "present", Kind.TESTER),
        ("pulse", "bounding", "present", Kind.FINDING),
        ("pulse", "normal", "present", Kind.CLEAR),
        ("treatment", "iodine", "present", Kind.DONE),
        ("treatment", "iodine", "planned", None),
        ("shoe_size", "00", "present", None),
    ],
)
def test_what_a_fact_is_marked_as(slot: str, value: str, status: str, kind: Kind | None) -> None:
    assert kind_of(Fact.model_validate({"foot": "LF", "slot": slot, "value": value, "status": status})) is kind
