"""Shoes taken off only to go on again, and the two parts of a count of nails.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_off_and_on_and_parts_of_nails = reads(
    [
        ("Had his shoes off and refitted the same ones all round.", ["LF+RF+LH+RH work reset"]),
        ("Took his shoes off and reset them.", ["LF+RF+LH+RH work reset"]),
        ("Shoes off, trimmed, same shoes back on all round.", ["LF+RF+LH+RH work reset"]),
        ("Took the shoes off, pared him, and put new shoes on all four.", ["LF+RF+LH+RH work new_shoe"]),
        ("Took his shoes off and left them off.", ["- work removed"]),
        ("Took the front shoes off and left them off, reset the hinds.", ["LF+RF work removed", "LH+RH work reset"]),
        (
            "New straight bar on the right front, three nails, one on the bad side and two on the good.",
            ["RF nails 3", "RF shoe_type straight_bar", "RF work new_shoe"],
        ),
        ("Left front reset, seven nails, four on the good side and three on the bad.", ["LF nails 7", "LF work reset"]),
        ("Right front, six nails, four outside and two in.", ["RF nails 6"]),
        ("Right hind six nails, four on the strong side, two on the weak.", ["RH nails 6"]),
        ("Near fore, five nails, three up the good side and two up the broken one.", ["LF nails 5"]),
        (
            "Near fore reset, seven nails, four in the right side and three in the left.",
            ["LF nails 7", "LF work reset"],
        ),
        ("Six nails left front, four in the right front on the outside.", ["LF nails 6", "RF nails 4"]),
        ("Left hind six nails, right hind three, near fore three.", ["LF+RH nails 3", "LH nails 6"]),
    ],
    "Buck. {}",
)


TRIM, RESET, WEEKS = "LF+RF+LH+RH work trim", "LF+RF+LH+RH work reset", "- next_visit_weeks 8 planned"


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("Buck, Tally and Sable. Trimmed all three.", {"Buck": [TRIM], "Tally": [TRIM], "Sable": [TRIM]}),
        ("Buck and Tally. Reset both of them.", {"Buck": [RESET], "Tally": [RESET]}),
        ("Sable and Buck. Trimmed the pair of them.", {"Sable": [TRIM], "Buck": [TRIM]}),
        ("Tally, Buck, Sable. Reset every one of them.", {"Tally": [RESET], "Buck": [RESET], "Sable": [RESET]}),
        ("Tally, Buck and Sable. Trimmed the lot of them.", {"Tally": [TRIM], "Buck": [TRIM], "Sable": [TRIM]}),
        (
            "Buck and Tally. Trimmed both of them. Eight weeks for the bunch.",
            {"Buck": [WEEKS, TRIM], "Tally": [WEEKS, TRIM]},
        ),
        ("Buck, Tally and Sable. Trimmed all four.", {"Sable": [TRIM]}),
    ],
)
def test_done_to_all_of_them(text: str, facts: dict[str, list[str]], read: Read) -> None:
    visits = read(text, "Buck", "Tally", "Sable")
    told_of = {str(visit.horse): told(visit) for visit in visits}
    assert told_of == facts


test_loose_and_on_again = reads(
    [
        (
            "The near fore had been sprung, I'd to hammer it flat before it went back on.",
            ["LF shoe_state sprung", "LF work reset"],
        ),
        (
            "Off hind was loose, took it off, straightened it and put it back on.",
            ["RH shoe_state loose", "RH work reset"],
        ),
        (
            "Reset her fronts. The near fore was loose, and it went back on with six nails.",
            ["LF nails 6", "LF shoe_state loose", "LF+RF work reset"],
        ),
        # a lost shoe is put back
        (
            "He'd cast the off fore, it was bent, so I flattened it and put it back on.",
            ["RF shoe_state lost", "RF work put_back"],
        ),
        (
            "Near fore was loose. Off fore lost, put it back on.",
            ["LF shoe_state loose", "RF shoe_state lost", "RF work put_back"],
        ),
    ],
    "Tally. {}",
)
