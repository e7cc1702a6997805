"""A side said alone: the pair it belongs to stands before it, or closes the sentence.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads


def told(read: Read, text: str, slot: str) -> set[tuple[str | None, object, str | None]]:
    """Foot, value and severity of a slot's facts."""
    return {
        (f.foot, f.value, f.severity.value if f.severity else None)
        for v in read(f"Tally. {text}", "Tally")
        for f in v.facts
        if f.slot == slot
    }


@pytest.mark.parametrize(
    "text",
    [
        "Thrush in both hinds, left mild, right severe.",
        "Thrush both hinds, mild left, severe right.",
        "Thrush in both hinds, near mild, off severe.",
        "Thrush in both hinds, left is mild and the right's severe.",
        "Thrush in both hinds, the left mild, the right severe.",
        "Thrush on the hinds. Left is mild. Right is severe.",
        "Mild thrush on the left and severe on the right, hinds.",
        "Thrush in the hinds, mild on the left and severe on the right.",
        "Thrush in the hinds, left one mild, right one severe.",
    ],
)
def test_each_side_has_its_degree(read: Read, text: str) -> None:
    assert told(read, text, "finding") == {("LH", "thrush", "mild"), ("RH", "thrush", "severe")}


@pytest.mark.parametrize(
    "text",
    [
        "Toe angles 50 left, 51 right, fronts.",
        "Toe angles 50 left, 51 right on the fronts.",
        "Toe angles 50 left 51 right on the fronts.",
        "Toe angles on the fronts 50 left, 51 right.",
        "Toe angles on the fronts left 50 right 51.",
        "Front toe angles 50 left 51 right.",
        "Front toe angles 50 left 51 right, heels 45 left 46 right.",
        "Toe angle left 50 right 51 in front.",
    ],
)
def test_each_side_has_its_number(read: Read, text: str) -> None:
    assert told(read, text, "toe_angle") == {("LF", 50.0, None), ("RF", 51.0, None)}


def test_left_alone_is_no_side(read: Read) -> None:
    text = "Thrush in both hinds, mild, left it alone. Right, trimmed the fronts."
    assert told(read, text, "finding") == {("LH", "thrush", "mild"), ("RH", "thrush", "mild")}
    assert told(read, text, "work") == {("LF", "trim", None), ("RF", "trim", None)}


@pytest.mark.parametrize(
    ("text", "slot", "millimetres"),
    [
        ("Toe length three and a quarter left front.", "toe_length", 82.6),
        ("Toe lengths 3 1/4 left front.", "toe_length", 82.6),
        ("Left front toe length eight and a half.", "toe_length", 85.0),
        ("Toe length 84 left front.", "toe_length", 84.0),
        ("Heel height inch and five eighths left front.", "heel_height", 41.3),
        ("Heel height is inch and a half on the left front.", "heel_height", 38.1),
        ("Heel height forty left front.", "heel_height", 40.0),
        ("Hoof width five and an eighth left front.", "hoof_width", 130.2),
        ("Sole depth nine left front.", "sole_depth", 9.0),
        ("Sole depth three eighths left front.", "sole_depth", 9.5),
    ],
)
def test_the_unit_that_nobody_says(read: Read, text: str, slot: str, millimetres: float) -> None:
    assert told(read, text, slot) == {("LF", millimetres, None)}


def test_feet_ones_are_sizes(read: Read) -> None:
    assert told(read, "Fore feet ones, hind feet double aughts.", "shoe_size") == {
        *{(foot, "1", None) for foot in ("LF", "RF")},
        *{(foot, "00", None) for foot in ("LH", "RH")},
    }


test_both_feet_of_a_side = reads(
    [
        ("Reset the near fore and hind.", ["LF+LH work reset"]),
        ("Thrush in the off hind and fore.", ["RF+RH finding thrush"]),
        (
            "Left front and hind new, right front and hind reset.",
            ["LF+LH work new_shoe", "RF+RH work reset"],
        ),
        (
            "He needed new shoes front and back on the off side. Fore and hind on the near were a reset.",
            ["LF+LH work reset", "RF+RH work new_shoe"],
        ),
        ("Thrush down the near side, fore and hind. Not on the off side.",
         ["LF+LH finding thrush", "RF+RH finding thrush absent"]),
        ("Off side reset front and back.", ["RF+RH work reset"]),
        ("Off side fore and hind trimmed.", ["RF+RH work trim"]),
        # the other end is a pair of its own, or no side is told at all
        ("Left hind and front feet trimmed.", ["LF+RF+LH work trim"]),
        ("Left front and hinds reset.", ["LF+LH+RH work reset"]),
        ("Took his shoes off front and back.", ["LF+RF+LH+RH work removed"]),
        ("I reset front and back right away.", ["LF+RF+LH+RH work reset"]),
        ("New shoes front and back, on the near hind side clips.", ["LF+RF+LH+RH work new_shoe", "LH clips side"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_every_single_foot = reads(
    [
        ("Thrush in every single foot.", ["LF+RF+LH+RH finding thrush"]),
        ("Copper sulfate into each and every foot.", ["LF+RF+LH+RH treatment copper_sulfate"]),
        ("Seven nails on every last foot.", ["LF+RF+LH+RH nails 7"]),
        ("Thrush in every single foot bar the near fore.", ["RF+LH+RH finding thrush"]),
    ],
    "Tally. {}",
)

test_both_ends_of_a_side = reads(
    [
        (
            "Reset the left side, front and back. New shoes on the right side, front and back.",
            ["LF+LH work reset", "RF+RH work new_shoe"],
        ),
        ("The near pair of shoes, front and hind, were loose.", ["LF+LH shoe_state loose"]),
        ("Reset front and hind on the off side.", ["RF+RH work reset"]),
        ("New shoes, fore and hind, on the left.", ["LF+LH work new_shoe"]),
        ("Reset front and back. Thrush in the left hind.", ["LF+RF+LH+RH work reset", "LH finding thrush"]),
        ("Bruise in the left front, front and hind reset.", ["LF finding bruise", "LF+RF+LH+RH work reset"]),
    ],
    "Tally. {}",
)
