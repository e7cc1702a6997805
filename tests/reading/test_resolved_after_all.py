"""What is denied today and was there once is gone."""

from __future__ import annotations

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. Thrush in the left hind. There's none in the right hind, there was, but it's cleared up.",
        ["LH finding thrush", "RH finding thrush resolved"],
    ),
    ("Tally. No thrush in the left hind, he had, but it's gone.", ["LH finding thrush resolved"]),
    ("Tally. No abscess in the near fore now, there was, and it's healed.", ["LF finding abscess resolved"]),
    ("Tally. No corn in the off fore, there was, it's grown out.", ["RF finding corn resolved"]),
    ("Tally. No heat in the left front, there was, but it's gone now.", ["LF finding heat resolved"]),
    ("Buck. There's no bruise in the right front, she had, but it's cleared.", ["RF finding bruise resolved"]),
    ("Buck. That right hind abscess blew out last week, he's over it now.", ["RH finding abscess resolved"]),
    ("Buck. The bruise in the near fore, he's well over it.", ["LF finding bruise resolved"]),
    ("Buck. Mud fever on both hinds at Easter, she's over it now.", ["LH+RH finding scratches resolved"]),
    (
        "Buck. No thrush in the left hind, and the crack's gone from the right hind.",
        ["LH finding thrush absent", "RH finding crack resolved"],
    ),
    ("Buck. Iodine over it, left hind.", ["LH treatment iodine"]),
]

test_resolved_after_all = reads(CASES)

test_no_trace_left = reads(
    [
        ("There's no trace left of the abscess in the off hind.", ["RH finding abscess resolved"]),
        ("Not a sign left of that bruise, near fore.", ["LF finding bruise resolved"]),
        ("Nothing at all left of his thrush, both hinds.", ["LH+RH finding thrush resolved"]),
        ("No trace of thrush in the left hind.", ["LH finding thrush absent"]),
        ("There's a trace left of the thrush in the left hind.", ["LH finding thrush ~mild"]),
    ],
    "Tally. {}",
)


test_a_gait_that_has_stopped = reads(
    [
        ("He used to hit himself, interfering, and that's quit since we changed the hinds.",
         ["- gait interfere resolved"]),
        ("He used to hit himself, brushing, and that's stopped.", ["- gait interfere resolved"]),
        ("He was forging last time, and there's none of that today.", ["- gait forge resolved"]),
        ("He was forging last time, and he's not doing it now.", ["- gait forge resolved"]),
        ("She was interfering last visit, no sign of that today.", ["- gait interfere resolved"]),
        ("He used to overreach, and that's stopped. He's forging now.", ["- gait forge", "- gait overreach resolved"]),
        ("He was forging last time, and there's no pad on him today.", ["- gait forge history"]),
    ],
    "Tally. {}",
)  # fmt: skip


def test_talk_cut_off_behind_it_was(read: Read) -> None:
    (visit,) = read("Tally. No heat in it today, it was", "Tally")
    assert told(visit) == ["- finding heat absent"]
