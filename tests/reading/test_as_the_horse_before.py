"""One horse shod as the one told before, and a statement about another horse's feet that goes on behind the comma.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told


def said(read: Read, text: str) -> dict[str, list[str]]:
    return {str(visit.horse): told(visit) for visit in read(text, "Tally", "Buck", "Sable")}


@pytest.mark.parametrize(
    ("text", "horse", "lines"),
    [
        (
            "Two of them, Tally and Buck, Buck first. Buck, new, size one, both fronts, two a side. "
            "Tally, uh, she got exactly the same up front, except three a side.",
            "Tally",
            ["LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work new_shoe"],
        ),
        (
            "Tally, new wide webs in front, size two. Buck, exactly the same up front, except size one.",
            "Buck",
            ["LF+RF shoe_size 1", "LF+RF shoe_type wide_web", "LF+RF work new_shoe"],
        ),
        (
            "Tally, reset all round, six nails. And Buck, exactly the same all round.",
            "Buck",
            ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"],
        ),
        (
            "Buck, new steel shoes behind, six nails. Tally. He got the same again behind, only seven nails.",
            "Tally",
            ["LH+RH nails 7", "LH+RH shoe_material steel", "LH+RH work new_shoe"],
        ),
        ("Tally and Buck. Buck, reset all round. Tally, same deal.", "Tally", ["LF+RF+LH+RH work reset"]),
        ("Tally. Trim. Buck. Same.", "Buck", ["LF+RF+LH+RH work trim"]),
        ("Tally. Trim. Buck. Same in front.", "Buck", ["LF+RF work trim"]),
        # what is the same is of its own
        (
            "Tally, reset in front. Buck, trimmed behind. Buck, thrush in the left front, same again in the right.",
            "Buck",
            ["LF+RF finding thrush", "LH+RH work trim"],
        ),
    ],
)
def test_the_shoeing_of_the_horse_before(read: Read, text: str, horse: str, lines: list[str]) -> None:
    assert said(read, text)[horse] == lines


@pytest.mark.parametrize(
    ("text", "mine", "others"),
    [
        (
            "Tally, new, size two in front, and the rocker toes went on Buck's fronts, also new, size one.",
            ["LF+RF shoe_size 2", "LF+RF work new_shoe"],
            ["LF+RF shoe_size 1", "LF+RF shoe_type rocker_toe", "LF+RF work new_shoe"],
        ),
        (
            "Tally, size two in front. The wide webs went on Buck's hinds, steel, new, size three. Clips in front.",
            ["LF+RF shoe_size 2"],
            ["LH+RH shoe_material steel", "LH+RH shoe_size 3", "LH+RH shoe_type wide_web", "LH+RH work new_shoe"],
        ),
        (
            "Tally, no mud fever on Buck's hinds, six nails in front.",
            ["LF+RF nails 6"],
            ["LH+RH finding scratches absent"],
        ),
        (
            "Tally, there's thrush in Buck's left hind, in the sulcus. Tally was trimmed.",
            ["LF+RF+LH+RH work trim"],
            ["LH finding thrush @sulcus"],
        ),
    ],
)
def test_another_horses_feet(read: Read, text: str, mine: list[str], others: list[str]) -> None:
    assert said(read, text) == {"Tally": mine, "Buck": others}


@pytest.mark.parametrize(
    "again",
    [
        "Same again for Buck",
        "Same for Buck too",
        "Same deal with Buck",
        "Same job on Buck",
        "Did the same for Buck",
        "Buck the same",
        "Buck's the same",
        "Buck got the same",
        "Ditto for Buck",
        "Likewise Buck",
        "Buck, same as Tally",
    ],
)
def test_the_whole_horse_again(read: Read, again: str) -> None:
    lines = ["LF+RF shoe_size 2", "LF+RF work reset", "LH+RH work trim"]
    text = f"Tally. Fronts reset, size two, hinds trimmed. {again}."
    assert said(read, text) == {"Tally": lines, "Buck": lines}


@pytest.mark.parametrize(
    ("text", "buck"),
    [
        ("Tally. Trimmed all round. Buck. The same lad holds her. Corn in the off fore.", ["RF finding corn"]),
        ("Tally. Trimmed all round. Same again for Buck in six weeks.", ["- next_visit_weeks 6 planned"]),
        ("Tally. Trimmed all round. Buck, corn in the off fore. Buck the same.", ["RF finding corn"]),
    ],
)
def test_not_the_whole_horse_again(read: Read, text: str, buck: list[str]) -> None:
    assert said(read, text) == {"Tally": ["LF+RF+LH+RH work trim"], "Buck": buck}


@pytest.mark.parametrize(
    "text",
    [
        "Reset in front, trimmed behind. Buck. The opposite.",
        "Reset in front, trimmed behind. Buck, just the opposite.",
        "Reset in front, trimmed behind. Buck. Other way round.",
        "Reset in front, trimmed behind. And Buck is exactly the reverse.",
    ],
)
def test_the_opposite_of_the_horse_before_is_asked(read: Read, text: str) -> None:
    (visit,) = read(f"Tally. {text}", "Tally", "Buck")
    assert told(visit) == ["LF+RF work reset", "LH+RH work trim"]
    assert [f.reason for f in visit.flags] == ["Heard the opposite of the horse before, but not what of it."]


def test_the_same_in_front_is_the_horse_befores(read: Read) -> None:
    talk = "Tally. Trimmed. Buck. Same in front."
    assert said(read, talk) == {"Tally": ["LF+RF+LH+RH work trim"], "Buck": ["LF+RF work trim"]}
