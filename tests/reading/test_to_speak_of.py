"""What there is none to speak of is the thing named, not the pulse that was told of before."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Pulses up in both fronts, no heat to speak of.", ["LF+RF finding heat absent", "LF+RF pulse raised"]),
    (
        "Tally. Pulse raised in the near fore, no swelling worth mentioning.",
        ["LF finding swelling absent", "LF pulse raised"],
    ),
    ("Tally. Pulse bounding in the left front, no heat to mention.", ["LF finding heat absent", "LF pulse bounding"]),
    (
        "Tally. Digital pulse up in the off fore, no bruise worth talking about.",
        ["RF finding bruise absent", "RF pulse raised"],
    ),
    (
        "Tally. Pulse up in the left hind. No heat to speak of in that foot.",
        ["LH finding heat absent", "LH pulse raised"],
    ),
    ("Buck. No pulse to speak of in the left front.", ["LF pulse normal"]),
    ("Buck. No digital pulse worth mentioning in either fore.", ["LF+RF pulse normal"]),
    ("Buck. No heat to speak of in either fore.", ["LF+RF finding heat absent"]),
    ("Buck. Corn in the near fore, no heat to speak of.", ["LF finding corn", "LF finding heat absent"]),
    (
        "Buck. Pulse raised in both fores, no flare to speak of on the hinds.",
        ["LF+RF pulse raised", "LH+RH finding flare absent"],
    ),
]

test_to_speak_of = reads(CASES)

test_the_score_named_last = reads(
    [
        ("Body condition six. No cresty neck to speak of, call it a one.", ["- body_condition 6", "- cresty_neck 1"]),
        ("Body condition five, crest nothing much, make it a two.", ["- body_condition 5", "- cresty_neck 2"]),
        ("Body condition six, no, call it a seven.", ["- body_condition 7"]),
        (
            "Condition's an eight, neck's a four on the cresty score, no, three.",
            ["- body_condition 8", "- cresty_neck 3"],
        ),
    ],
    "Tally. {}",
)
