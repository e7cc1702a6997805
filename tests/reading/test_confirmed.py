"""What was first thought and then known, a foot told behind, and a grade of today beside an earlier one."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        ("Tally. Right hind. Might be an abscess, I told her, and then it burst, so it's an abscess, at the quarter."),
        ["RH finding abscess @quarter"],
    ),
    (
        "Tally. Near fore. I thought it might be a corn, and when I pared it, it's a corn, medial heel.",
        ["LF finding corn @medial_heel"],
    ),
    ("Tally. Maybe an abscess in the off fore, then it burst, so yes, it's an abscess.", ["RF finding abscess"]),
    ("Tally. Off hind, could be thrush, had a dig, and it's thrush all right.", ["RH finding thrush"]),
    ("Tally. Suspected a puncture in the right front, found the hole, so a puncture it is.", ["RF finding puncture"]),
    ("Tally. Might be canker in the near hind. It's canker, the vet confirmed it.", ["LH finding canker"]),
    (
        "Tally. Might be an abscess in the left front. Definite abscess in the right hind.",
        ["LF finding abscess suspected", "RH finding abscess"],
    ),
    (
        "Tally. Could be a corn in the left front, and there's a corn in the right front.",
        ["LF finding corn suspected", "RF finding corn"],
    ),
    (
        "Tally. The near fore is grand. The puncture was last spring, that was the off fore.",
        ["RF finding puncture history"],
    ),
    (
        "Tally. Left front trimmed. The abscess was in January, that was the right front.",
        ["LF work trim", "RF finding abscess history"],
    ),
    (
        "Tally. Right hind, thrush. The crack was last year, that was the left hind.",
        ["LH finding crack history", "RH finding thrush"],
    ),
    (
        "Tally. Heat in the near fore. He'd a bruise at Easter, that was the off fore though.",
        ["LF finding heat", "RF finding bruise history"],
    ),
    (
        (
            "Buck. She flinched when I drove one in the near hind, thought I'd pricked her, "
            "pulled it, and no, she's not pricked, just a close nail on the outside."
        ),
        ["LH finding close_nail @lateral", "LH finding quicked absent"],
    ),
    (
        "Tally. Thought I'd pricked her in the left front, pulled the nail, she's not pricked.",
        ["LF finding quicked absent"],
    ),
    ("Tally. I drove one too close in the near fore, close nail, outside.", ["LF finding close_nail @lateral"]),
    ("Tally. I drew one out of the right front and reset it, six nails.", ["RF nails 6", "RF work reset"]),
    ("Tally. Put one in the left hind a bit high, seven nails.", ["LH nails 7"]),
    ("Tally. Worried I'd quicked him on the near hind, and I hadn't.", ["LH finding quicked absent"]),
    ("Tally. Thought I'd got the quick in the off fore, but I hadn't, no blood.", ["RF finding quicked absent"]),
    ("Tally. Near fore, I thought I'd quicked it, not quicked.", ["LF finding quicked absent"]),
    (
        "Tally, recheck on the left hind. Three out of five lame on it last week, call it two today.",
        ["LH lameness 2", "LH lameness 3 history"],
    ),
    (
        "Tally. Three out of five lame on the near hind a fortnight ago, now I'd call it one.",
        ["LH lameness 1", "LH lameness 3 history"],
    ),
    ("Tally. Obel three last month, I'd call it two today.", ["- obel 2", "- obel 3 history"]),
    (
        "Tally. Body condition was eight in the spring, call it seven now.",
        ["- body_condition 7", "- body_condition 8 history"],
    ),
    (
        "Tally. Lame on the left front, four out of five on Monday, two today.",
        ["LF lameness 2", "LF lameness 4 history"],
    ),
    ("Tally. Cresty neck four last visit, make it a three today.", ["- cresty_neck 3", "- cresty_neck 4 history"]),
    (
        (
            "Buck. Off hind, thought I'd quicked her, drew it, and no, "
            "she's not quicked, just a close nail on the inside."
        ),
        ["RH finding close_nail @medial", "RH finding quicked absent"],
    ),
]

test_confirmed = reads(CASES)

test_the_foot_that_it_is = reads(
    [
        ("Thrush, left hind, no, hold on, left hind, yes, left hind.", ["LH finding thrush"]),
        ("Lost a shoe, left hind, no, hold on, left hind, yes, left hind, right hind reset.",
         ["LH shoe_state lost", "RH work reset"]),
        ("Lost a shoe, left hind, no, hold on, left hind, right hind reset.", ["LH shoe_state lost", "RH work reset"]),
        ("Thrush in the near hind, no, wait, near hind, that's right, off hind reset.",
         ["LH finding thrush", "RH work reset"]),
        ("Corn in the near fore, no, near fore, aye, near fore, bruise in the off fore.",
         ["LF finding corn", "RF finding bruise"]),
        ("Lame on the left fore, no, hold on, the left fore, right, two out of five.", ["LF lameness 2"]),
        ("Corn in the left hind, no, right hind, no, left hind.", ["LH finding corn"]),
        ("Bruise near fore, sorry, off fore, no, near fore, poultice on it.",
         ["LF finding bruise", "LF treatment poultice"]),
        ("Reset right hind, new shoe left hind, no, right hind, no, left hind.",
         ["LH work new_shoe", "RH work reset"]),
        # doubted and put right
        ("Thrush in the left hind, no, left hind, I mean right hind.", ["RH finding thrush"]),
        ("Thrush in the left hind, no, left hind, no, right hind.", ["RH finding thrush"]),
        ("Thrush in the left hind, no, the left hind's grand, it's the right hind.", ["RH finding thrush"]),
        ("Thrush in the left hind, no, hold on, right hind, yes, right hind, left hind reset.",
         ["LH work reset", "RH finding thrush"]),
        ("Thrush in the left hind, no, right hind, corn in the left hind.", ["LH finding corn", "RH finding thrush"]),
    ],
    "Tally. {}",
)  # fmt: skip
