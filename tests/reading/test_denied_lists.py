"""How far a denial reaches in a list, whose foot it is, and what an aside or another statement leaves as it is."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import product

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

_ROWS = (
    "no {a}, {b} and {c}", "no {a}, {b} or {c}", "no {a}, no {b}, no {c}", "there's no {a} and there's no {b} or {c}",
    "no {a}, nor {b}, nor {c}", "not a hint of {a}, {b} or {c}", "I found no {a}, {b}, or {c}",
    "no {a}, {b}, {c} or anything",
    "free of {a}, {b} and {c}", "no {a}, {b}, {c}, anything like that",
)  # fmt: skip
_ITEMS = (
    (("heat", "heat"), ("seedy toe", "white_line_disease"), ("canker", "canker")),
    (("corns", "corn"), ("white line", "white_line_disease"), ("bruising", "bruise")),
    (("thrush", "thrush"), ("swelling", "swelling"), ("white line", "white_line_disease")),
)
_FEET = (("off fore", "RF"), ("left hind", "LH"), ("either hind", "LH+RH"))


def _line(feet: str, *values: str) -> list[str]:
    return sorted(f"{feet} finding {value} absent" for value in values)


@pytest.mark.parametrize(("row", "items", "foot"), list(product(_ROWS, _ITEMS, _FEET)))
def test_all_of_a_denied_list_is_denied_on_the_foot_behind_it(
    read: Read, row: str, items: Sequence[tuple[str, str]], foot: tuple[str, str]
) -> None:
    said = row.format(**dict(zip("abc", (words for words, _ in items), strict=True)))
    said = said[0].upper() + said[1:]
    where = f"in {foot[0]}" if foot[0].startswith("either") else f"in the {foot[0]}"
    (visit,) = read(f"Near fore, growth rings. {said} {where}. Six weeks.")
    kept = ["- next_visit_weeks 6 planned", "LF finding growth_rings"]
    assert told(visit) == sorted([*kept, *_line(foot[1], *(value for _, value in items))])


@pytest.mark.parametrize("row", _ROWS)
def test_all_of_a_denied_list_is_denied_on_the_foot_ahead(read: Read, row: str) -> None:
    (visit,) = read(f"Off hind, {row.format(a='thrush', b='cracks', c='sidebone')}. Six weeks.")
    assert told(visit) == ["- next_visit_weeks 6 planned", *_line("RH", "thrush", "crack", "sidebone")]


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("Off hind, no thrush, a corn and a bruise.",
         ["RH finding bruise", "RH finding corn", "RH finding thrush absent"]),
        ("Off hind, no thrush, mild heat and swelling.",
         ["RH finding heat ~mild", "RH finding swelling", "RH finding thrush absent"]),
        ("Off hind, no thrush, corn.", ["RH finding corn", "RH finding thrush absent"]),
        ("Off hind, no thrush, a crack at the toe, no heat.",
         ["RH finding crack @toe", "RH finding heat absent", "RH finding thrush absent"]),
        ("Off hind, no thrush, heat, canker, but a corn.",
         ["RH finding canker absent", "RH finding corn", "RH finding heat absent", "RH finding thrush absent"]),
        ("Off hind, no thrush, bruise at the white line and sore there.",
         ["RH finding bruise @white_line", "RH finding thrush absent"]),
        ("Left front no corn, no heat in the right front.", ["LF finding corn absent", "RF finding heat absent"]),
        ("Thrush, canker and heat, none in the off hind.", _line("RH", "canker", "heat", "thrush")),
        ("Off hind, a corn and thrush, canker, none.",
         ["RH finding canker absent", "RH finding corn", "RH finding thrush"]),
        ("No thrush except in the off hind.", ["LF+RF+LH finding thrush absent", "RH finding thrush"]),
        ("No canker apart from the off hind.", ["LF+RF+LH finding canker absent", "RH finding canker"]),
        ("Near fore, heat and swelling both gone.", ["LF finding heat resolved", "LF finding swelling resolved"]),
        ("Hinds, thrush in both.", ["LH+RH finding thrush"]),
        ("Off hind, thrush no, corn yes, heat no.",
         ["RH finding corn", "RH finding heat absent", "RH finding thrush absent"]),
        ("Off hind, thrush, no, corn, yes.", ["RH finding corn", "RH finding thrush absent"]),
        ("Off hind, thrush, no, canker.", ["RH finding canker"]),
    ],
)  # fmt: skip
def test_where_a_denial_in_a_list_ends(read: Read, text: str, facts: list[str]) -> None:
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


_PAUSES = (
    "hang on",
    "hold on a second",
    "excuse me",
    "wait a minute",
    "sorry about the noise",
    "the dog got in the way",
)


@pytest.mark.parametrize(
    ("pause", "frame"),
    list(product(_PAUSES, (
        "Corn in the near fore, {}, thrush in the off hind.", "Corn in the near fore. {}. Thrush in the off hind.",
        "Near fore, corn, {}, off hind, thrush.", "Near fore corn, {}, off hind thrush.",
    ))),
)  # fmt: skip
def test_a_pause_between_two_statements_takes_nothing_back(read: Read, pause: str, frame: str) -> None:
    said = frame.format(pause.capitalize() if ". {}" in frame else pause)
    (visit,) = read(said)
    assert told(visit) == ["LF finding corn", "RH finding thrush"]


@pytest.mark.parametrize("pause", _PAUSES[:4])
def test_a_pause_before_another_word_of_the_same_kind_takes_back(read: Read, pause: str) -> None:
    (visit,) = read(f"Thrush in the near hind, {pause}, off hind.")
    assert told(visit) == ["RH finding thrush"]
    (visit,) = read(f"Thrush in the near hind, {pause}, thrush in the off hind.")
    assert told(visit) == ["RH finding thrush"]


@pytest.mark.parametrize(
    ("side", "frame"),
    list(product(("left", "right"), (
        "On the {}, thrush in the front and a corn in the hind.", "The {} side: front has thrush, hind has a corn.",
        "On the {} side there's thrush in front and a corn behind.", "{} side, front thrush, hind a corn.",
    ))),
)  # fmt: skip
def test_the_ends_are_of_the_side_that_heads_them(read: Read, side: str, frame: str) -> None:
    (visit,) = read(f"Trimmed. {frame.format(side.capitalize() if frame.startswith('{}') else side)} Six weeks.")
    feet = ("LF", "LH") if side == "left" else ("RF", "RH")
    found = [fact for fact in told(visit) if "finding" in fact]
    assert found == sorted([f"{feet[0]} finding thrush", f"{feet[1]} finding corn"])


@pytest.mark.parametrize("text", [
    "Near hind, canker. Three of the feet have thrush.", "Near hind, canker. Thrush in three of her feet.",
    "Near hind, canker. There's thrush in two of the four.", "Near hind, canker. Thrush in three feet.",
])  # fmt: skip
def test_feet_that_are_only_counted_are_asked_about(read: Read, text: str) -> None:
    (visit,) = read(text)
    assert told(visit) == ["LH finding canker"]
    assert any("which they are" in flag.reason for flag in visit.flags)


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("Thrush in three of the feet, both fronts and the near hind.", ["LF+RF+LH finding thrush"]),
        ("Thrush in two feet. Both fronts.", ["LF+RF finding thrush"]),
        ("The left is worse, corn there. Thrush in front.", ["LF+RF finding thrush"]),
        ("Near fore, thrush, the flies were bad, no heat.", ["LF finding heat absent", "LF finding thrush"]),
        ("Near fore, thrush, it was bad, no heat.", ["LF finding heat absent", "LF finding thrush ~severe"]),
    ],
)
def test_what_is_said_of_feet_and_degrees_all_the_same(read: Read, text: str, facts: list[str]) -> None:
    (visit,) = read(text)
    assert [fact for fact in told(visit) if not fact.startswith("- ") and "corn" not in fact] == facts
