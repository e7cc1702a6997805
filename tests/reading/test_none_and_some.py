"""A finding that heads its sentence, with its place, and the feet behind it that have none of it, or some.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_none_here_some_there = reads(
    [
        (
            "Thrush in the frog, near hind has none, off hind severe.",
            ["LH finding thrush absent @frog", "RH finding thrush ~severe"],
        ),
        (
            "Thrush in the sulcus, left hind none, right hind has it bad.",
            ["LH finding thrush absent @sulcus", "RH finding thrush ~severe"],
        ),
        (
            "Bruising on the sole, off fore has none, near fore moderate.",
            ["LF finding bruise ~moderate", "RF finding bruise absent @sole"],
        ),
        ("Corn at the heel, near fore hasn't one, off fore has.", ["LF finding corn absent @heel", "RF finding corn"]),
        ("Thrush, near hind clean, off hind bad.", ["LH finding thrush absent", "RH finding thrush ~severe"]),
        (
            "Thrush in the frog, near hind's clear, off hind mild.",
            ["LH finding thrush absent", "RH finding thrush ~mild"],
        ),
        (
            "Thrush in the frog. Near hind none, off hind severe.",
            ["LH finding thrush absent", "RH finding thrush ~severe"],
        ),
        ("Thrush, near hind has none, off hind has.", ["LH finding thrush absent", "RH finding thrush"]),
        ("Cracks, left front none, left hind one.", ["LF finding crack absent", "LH finding crack"]),
    ],
    "Tally. {}",
)

test_some_here_none_there = reads(
    [
        ("Thrush in the frog, near hind, off hind has none.", ["LH finding thrush @frog", "RH finding thrush absent"]),
        (
            "Thrush in the frog, near hind bad, off hind has none.",
            ["LH finding thrush @frog ~severe", "RH finding thrush absent"],
        ),
        ("Near fore, corn at the heel, off fore has none.", ["LF finding corn @heel", "RF finding corn absent"]),
        (
            "Near fore, long toe. Corn at the heel. Off fore none.",
            ["LF finding corn @heel", "LF finding long_toe", "RF finding corn absent"],
        ),
        ("Thrush in the near hind. Off hind's clean.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Thrush in the near hind, clean now.", ["LH finding thrush resolved"]),
        (
            "Thrush in the frog, near hind mild, off hind severe.",
            ["LH finding thrush @frog ~mild", "RH finding thrush ~severe"],
        ),
    ],
    "Tally. {}",
)

test_put_on_the_other_foot = reads(
    [
        (
            "Thrush, off hind, no it wasn't, it was the near hind, in the frog, moderate. The off hind hasn't any.",
            ["LH finding thrush @frog ~moderate", "RH finding thrush absent"],
        ),
        ("Thrush, off hind, no it wasn't, it was the near hind, in the frog.", ["LH finding thrush @frog"]),
    ],
    "Tally. {}",
)

test_films_show_none = reads(
    [
        (
            "Rotation in the left front, her films didn't show any in the right front.",
            ["LF finding rotation", "RF finding rotation absent"],
        ),
        (
            "Keratoma near fore. The x-ray showed none in the off fore.",
            ["LF finding keratoma", "RF finding keratoma absent"],
        ),
        (
            "Moderate on the testers in the left front, didn't show any in the right front.",
            ["LF tester moderate", "RF tester none"],
        ),
        ("Thrush in both hinds. Films show nothing in the fronts.", ["LH+RH finding thrush"]),
        (
            "Thrush left hind. This horse showed no heat in the right hind.",
            ["LH finding thrush", "RH finding heat absent"],
        ),
    ],
    "Tally. {}",
)
