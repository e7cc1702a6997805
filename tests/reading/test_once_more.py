"""What is back is of today, and of the time when it was there before."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. Abscess in the left hind again, the last one was in March.",
        ["LH finding abscess", "LH finding abscess history"],
    ),
    (
        "Tally. Thrush in the near fore again, the last time was at Christmas.",
        ["LF finding thrush", "LF finding thrush history"],
    ),
    (
        "Tally. Second bout of laminitis, the first was two years ago.",
        ["- finding laminitis", "- finding laminitis history"],
    ),
    (
        "Tally. Laminitic again, first time was in twenty twenty-three.",
        ["- finding laminitis", "- finding laminitis history"],
    ),
    (
        "Tally. Laminitic again, poor thing. Second bout: the first was in twenty twenty-three.",
        ["- finding laminitis", "- finding laminitis history"],
    ),
    (
        "Tally. Another abscess in the off fore, the previous one was last winter.",
        ["RF finding abscess", "RF finding abscess history"],
    ),
    (
        "Tally. Corn in the right front is back, mild, the last one was last year.",
        ["RF finding corn history", "RF finding corn ~mild"],
    ),
    (
        "Buck. Seedy toe in the near hind again, the first lot was last summer.",
        ["LH finding white_line_disease", "LH finding white_line_disease history"],
    ),
    (
        "Buck. Third abscess in the right hind, the last one was in June.",
        ["RH finding abscess", "RH finding abscess history"],
    ),
    (
        "Buck. Bruise in the left front again. The last one was in the spring.",
        ["LF finding bruise", "LF finding bruise history"],
    ),
    ("Buck. Abscess in the left hind, the vet's last visit was in March.", ["LH finding abscess"]),
    ("Buck. Trimmed again, the last time was in March.", ["LF+RF+LH+RH work trim"]),
    ("Buck. Corn in the left front. The last trim was in March.", ["LF finding corn"]),
]

test_once_more = reads(CASES)

test_unlike_last_time = reads(
    [
        ("No thrush, unlike last time.", ["- finding thrush absent", "- finding thrush history"]),
        ("No thrush in the left hind, unlike last time.", ["LH finding thrush absent", "LH finding thrush history"]),
        ("No heat in either fore, unlike last visit.", ["LF+RF finding heat absent", "LF+RF finding heat history"]),
        ("Unlike last time there's no thrush in the left hind.",
         ["LH finding thrush absent", "LH finding thrush history"]),
        ("Not lame, unlike last month.", ["- gait lame absent", "- gait lame history"]),
        ("No thrush in the left hind, not like last time.", ["LH finding thrush absent", "LH finding thrush history"]),
        ("No thrush anywhere, unlike last summer.", ["- finding thrush history", "LF+RF+LH+RH finding thrush absent"]),
        ("No thrush in the left hind, which is a change from last time.",
         ["LH finding thrush absent", "LH finding thrush history"]),
        ("Thrush in the left hind, unlike last time.", ["LH finding thrush"]),
        ("Sound, unlike last time.", ["- gait sound"]),
        ("No thrush, same as last time.", ["- finding thrush absent"]),
        ("No pulse in the near fore, unlike last time.", ["LF pulse normal"]),
        ("No thrush, unlike Buck last time.", ["- finding thrush absent"]),
        ("No thrush last time.", []),
    ],
    "Tally. {}",
)  # fmt: skip
