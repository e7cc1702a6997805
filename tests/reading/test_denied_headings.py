"""A heading that denies all that stands under it, and headings and answers that do not.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_all_that_stands_under_a_denial_is_denied = reads(
    [
        (
            "Not seen: thrush or swelling in any foot.",
            ["LF+RF+LH+RH finding swelling absent", "LF+RF+LH+RH finding thrush absent"],
        ),
        ("Not found: heat, thrush.", ["- finding heat absent", "- finding thrush absent"]),
        (
            "Absent: canker, heat, swelling, both fronts.",
            ["LF+RF finding canker absent", "LF+RF finding heat absent", "LF+RF finding swelling absent"],
        ),
        ("Not present: canker in either hind.", ["LH+RH finding canker absent"]),
        ("No: thrush, heat, left front.", ["LF finding heat absent", "LF finding thrush absent"]),
        ("Nothing of: seedy toe, off hind.", ["RH finding white_line_disease absent"]),
        ("Didn't find: thrush or heat in the fronts.", ["LF+RF finding heat absent", "LF+RF finding thrush absent"]),
        (
            "Looked for and not found: thrush in the hinds, heat in the fronts.",
            ["LF+RF finding heat absent", "LH+RH finding thrush absent"],
        ),
        (
            "Checked, not there: sidebone, ringbone, both fronts.",
            ["LF+RF finding ringbone absent", "LF+RF finding sidebone absent"],
        ),
        ("Not noticed: a corn or a bruise, near fore.", ["LF finding bruise absent", "LF finding corn absent"]),
        ("Ruled out: puncture, left front.", ["LF finding puncture absent"]),
        ("None seen: thrush, left hind.", ["LH finding thrush absent"]),
        ("Not seen, any thrush in the hinds.", ["LH+RH finding thrush absent"]),
        (
            "Not seen. Thrush or swelling in any foot.",
            ["LF+RF+LH+RH finding swelling absent", "LF+RF+LH+RH finding thrush absent"],
        ),
        (
            "Seen: corn in the right front. Not seen: thrush, left hind.",
            ["LH finding thrush absent", "RF finding corn"],
        ),
        (
            "Seen: corn in the right front, not seen: thrush in the left hind.",
            ["LH finding thrush absent", "RF finding corn"],
        ),
    ],
    "Buck. {}",
)

test_what_no_heading_denies = reads(
    [
        ("Not found: thrush, seen: corn, both in the left front.", ["LF finding corn", "LF finding thrush absent"]),
        (
            "Not seen: thrush, either hind, but a corn in the left front.",
            ["LF finding corn", "LH+RH finding thrush absent"],
        ),
        (
            "Not found: heat or swelling, right hind. Corn in the left front.",
            ["LF finding corn", "RH finding heat absent", "RH finding swelling absent"],
        ),
        ("Absent: heat in the left front, and he was quiet.", ["- manner quiet", "LF finding heat absent"]),
        (
            "Thrush in the left hind, not seen. Heat in the right front.",
            ["LH finding thrush absent", "RF finding heat"],
        ),
        ("Corn in the right front not seen, thrush in the left hind.", ["LH finding thrush", "RF finding corn absent"]),
        (
            "Ringbone. Not seen. Thrush in the left hind or the right.",
            ["- finding ringbone absent", "LH+RH finding thrush"],
        ),
        ("Canker. None found. Corn, left front.", ["- finding canker absent", "LF finding corn"]),
        ("Seen: thrush or canker, left hind.", ["LH finding canker", "LH finding thrush"]),
        ("Found: heat, left front.", ["LF finding heat"]),
    ],
    "Buck. {}",
)
