"""A word taken back, by frame and cue: what was said of it stays, its neighbours stay, and a "no" may correct nothing.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from itertools import product

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

# statement with a place for the word, the word said first, the right one, how it is said alone, what is then told
_SAID = {
    "foot": (
        "Thrush in the {}, moderate", "left front", "right front", "the right front", ["RF finding thrush ~moderate"],
    ),
    "size": ("Fronts reset, size {}", "two", "three", "size three", ["LF+RF shoe_size 3", "LF+RF work reset"]),
    "nails": ("Fronts reset, {} nails each", "six", "seven", "seven nails", ["LF+RF nails 7", "LF+RF work reset"]),
    "zone": (
        "Bruise at the {}, right front", "inside heel", "outside heel", "the outside heel",
        ["RF finding bruise @lateral_heel"],
    ),
    "degree": ("Thrush in the right front, {}", "severe", "moderate", "moderate", ["RF finding thrush ~moderate"]),
    "finding": ("{} in the right front, mild", "a corn", "a bruise", "a bruise", ["RF finding bruise ~mild"]),
    "pad": ("{} on the fronts", "leather pads", "rim pads", "rim pads", ["LF+RF pad rim"]),
    "pulse": ("Pulse {} in the right front", "bounding", "raised", "raised", ["RF pulse raised"]),
    "tester": (
        "Right front, testers {} across the heels", "strong", "moderate", "moderate", ["RF tester moderate @heel"],
    ),
    "work": ("Fronts {}", "reset", "trimmed", "trimmed", ["LF+RF work trim"]),
}  # fmt: skip
_CUES = ("no", "sorry", "wait a minute", "what am I on about", "no, let me rephrase that", "I lie")
_STOPPED = ("No", "Sorry", "Er, no", "Hang on a sec", "Let me rephrase that")
_OVER = (
    "{said}. No, it's not {wrong}, it's {right}.",
    "{said}. I said {wrong}, it's {right}.",
    "{said}. When I said {wrong} I meant {right}.",
    "{said}. Did I say {wrong}? {Right}.",
)
_BEFORE, _BEHIND = "Left hind, flare at the heel.", "Right hind, sidebone. Quiet to do."
_NEIGHBOURS = ["- manner quiet", "LH finding flare @heel", "RH finding sidebone"]


def _texts() -> list[tuple[str, list[str]]]:
    texts: list[tuple[str, list[str]]] = []
    for statement, wrong, right, alone, facts in _SAID.values():
        said = _upper(statement.format(wrong))
        texts += [(f"{_upper(statement.format(f'{wrong}, {cue}, {right}'))}.", facts) for cue in _CUES]
        texts += [(f"{said}. {cue}. {_upper(alone)}.", facts) for cue in _STOPPED]
        full = {"left front": "the ", "inside heel": "the "}.get(wrong, "")
        words = {"said": said, "wrong": full + wrong, "right": full + right, "Right": _upper(full + right)}
        texts += [(over.format(**words), facts) for over in _OVER if wrong != "reset" or "Did" in over]
    return texts


def _upper(text: str) -> str:
    return text[:1].upper() + text[1:]


@pytest.mark.parametrize(("text", "facts"), _texts(), ids=lambda case: case if isinstance(case, str) else "")
def test_the_right_word_takes_the_place_of_the_wrong_one(text: str, facts: list[str], read: Read) -> None:
    (visit,) = read(f"Tally. {_BEFORE} {text} {_BEHIND}", *NAMES)
    assert told(visit) == sorted([*facts, *_NEIGHBOURS])


_LATE = (
    "this is Sable, not Buck",
    "this is Sable",
    "it's Sable, not Buck",
    "all of that was Sable",
)


@pytest.mark.parametrize(
    "put_right", [f"{cue}, {late}" for cue, late in product(("No", "Sorry", "Scratch that", "I tell a lie"), _LATE)]
)
def test_a_name_put_right_behind_all_that_was_said(put_right: str, read: Read) -> None:
    visits = read(f"Buck. Thrush in the left front, mild. Reset the hinds. {put_right}.", *NAMES)
    assert [(v.horse, told(v)) for v in visits] == [("Sable", ["LF finding thrush ~mild", "LH+RH work reset"])]


@pytest.mark.parametrize(
    "memo",
    [
        "Buck. Thrush in the left front. Right, this is Sable, not Buck. Corn in the off hind.",
        "Buck. Thrush in the left front. Sorry, this is Sable. Corn in the off hind.",
    ],
)
def test_the_next_horse_takes_nothing(memo: str, read: Read) -> None:
    visits = read(memo, *NAMES)
    assert [(v.horse, told(v)) for v in visits] == [("Buck", ["LF finding thrush"]), ("Sable", ["RH finding corn"])]


test_taken_back_and_not = reads(
    [
        # two of a kind on end, and of two the one said over
        ("Near fore, off fore, sorry, medium crack at the quarter.", ["RF finding crack @quarter ~moderate"]),
        ("Fronts packed with silicone, pine tar, sorry.", ["LF+RF packing pine_tar"]),
        ("Fronts packed with oakum or putty, no, putty.", ["LF+RF packing putty"]),
        ("Fronts reset, eight or seven, no, seven nails each.", ["LF+RF nails 7", "LF+RF work reset"]),
        ("Fronts reset, size two no three.", ["LF+RF shoe_size 3", "LF+RF work reset"]),
        (
            "Fronts reset, six nails each, fives. Sorry, sixes.",
            ["LF+RF nail_size 6", "LF+RF nails 6", "LF+RF work reset"],
        ),
        (
            "Testers strong at the toe, left front, no, I'd not go as far as strong, moderate.",
            ["LF tester moderate @toe"],
        ),
        ("Egg bars on the fronts. That should be straight bars, not egg bars.", ["LF+RF shoe_type straight_bar"]),
        ("Mild, well, moderate thrush in the right front.", ["RF finding thrush ~moderate"]),
        # only hesitation
        ("Size two in front, let me think, size one behind.", ["LF+RF shoe_size 2", "LH+RH shoe_size 1"]),
        ("Six nails, let me think, seven nails, both fronts.", ["LF+RF nails 7"]),
        ("Crack at the toe, let me see, in the left front.", ["LF finding crack @toe"]),
        (
            "Corn in the left front. Come to think of it, the right hind had a bit of thrush.",
            ["LF finding corn", "RH finding thrush ~mild"],
        ),
        ("She can wait a minute. Left front, corn. Right front, bruise.", ["LF finding corn", "RF finding bruise"]),
        # a no that corrects nothing
        ("Any heat? No. Left front, thrush.", ["- finding heat absent", "LF finding thrush"]),
        ("No heat, no, none at all. Left front, corn.", ["- finding heat absent", "LF finding corn"]),
        ("Left front, no change in the corn. Right front, no, nothing there.", ["LF finding corn"]),
        ("Thrush in the left hind. No, it isn't thrush.", ["LH finding thrush absent"]),
        (
            "Bruise in the left front. Right front, corn, not a bruise.",
            ["LF finding bruise", "RF finding bruise absent", "RF finding corn"],
        ),
    ],
    "Tally. {}",
)
