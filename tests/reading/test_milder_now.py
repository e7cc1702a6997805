"""How bad a finding of an earlier time is today, and what is still as it was."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        (
            "Tally. When I started on her a year ago she had contracted heels in both "
            "fronts, severe, and now they're mild, both of them."
        ),
        ["LF+RF finding contracted_heels history ~severe", "LF+RF finding contracted_heels ~mild"],
    ),
    (
        "Tally. He had severe thrush in the left hind last visit, today it's only mild.",
        ["LH finding thrush history ~severe", "LH finding thrush ~mild"],
    ),
    (
        "Tally. Last time he had thrush in the left hind, bad, and it's moderate now.",
        ["LH finding thrush history ~severe", "LH finding thrush ~moderate"],
    ),
    (
        "Tally. Bad scratches on the right hind last month, now they're down to mild.",
        ["RH finding scratches history ~severe", "RH finding scratches ~mild"],
    ),
    (
        "Tally. She'd severe canker in the near hind in January, and it's mild now.",
        ["LH finding canker history ~severe", "LH finding canker ~mild"],
    ),
    (
        "Tally. Canker in the near hind frog, it was severe in January and it's mild now.",
        ["LH finding canker @frog ~mild", "LH finding canker history @frog ~severe"],
    ),
    (
        "Tally. White line disease in the right front was severe last fall, it's mild today.",
        ["RF finding white_line_disease history ~severe", "RF finding white_line_disease ~mild"],
    ),
    (
        "Tally. The flare on the left front was severe when I took him on, now I'd call it moderate.",
        ["LF finding flare history ~severe", "LF finding flare ~moderate"],
    ),
    ("Tally. Thrush in the left hind last time, mild now.", ["LH finding thrush history", "LH finding thrush ~mild"]),
    ("Tally. He had thrush in the left hind last time, and it's still moderate.", ["LH finding thrush ~moderate"]),
    ("Tally. He had a corn in the left front last time, it's still there.", ["LF finding corn"]),
    (
        "Tally. Had underrun heels in both fronts, severe, last spring. They're still severe.",
        ["LF+RF finding underrun_heels ~severe"],
    ),
    ("Tally. Thrush in the left hind was severe last time, now it's gone.", ["LH finding thrush resolved ~severe"]),
    (
        "Tally. Last visit he'd a severe flare on the near fore. Now I'd call it moderate.",
        ["LF finding flare history ~severe", "LF finding flare ~moderate"],
    ),
    (
        "Tally. He had bad thrush in the left hind last time, mild flare on it now.",
        ["LH finding flare ~mild", "LH finding thrush history ~severe"],
    ),
]
test_milder_now = reads(CASES)
