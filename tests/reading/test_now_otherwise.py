"""What was, with only a "was", beside how it is now: answers, warmth, what is dry, what was worn.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_answered_then_and_now = reads(
    [
        (
            "Pulse was bounding in both fronts when the vet was out, today it's normal.",
            ["LF+RF pulse bounding history", "LF+RF pulse normal"],
        ),
        (
            "Pulse was bounding in both fronts. Today it's normal.",
            ["LF+RF pulse bounding history", "LF+RF pulse normal"],
        ),
        ("Testers were strong in the near fore, now they're nothing.", ["LF tester none", "LF tester strong history"]),
        (
            "He was sore on the testers in the near fore, today he isn't.",
            ["LF tester none", "LF tester positive history"],
        ),
        (
            "She was sore on the testers in the near fore, she's not now.",
            ["LF tester none", "LF tester positive history"],
        ),
        (
            "Was sore on the testers last time in the off fore and isn't now.",
            ["RF tester none", "RF tester positive history"],
        ),
        ("Pulse was up in the near fore, it isn't now.", ["LF pulse normal", "LF pulse raised history"]),
        ("Pulse was normal in the near fore, it's up now.", ["LF pulse normal history", "LF pulse raised"]),
        ("Pulse was bounding in the near fore, raised in the off.", ["LF pulse bounding", "RF pulse raised"]),
        ("Testers were strong in the near fore, and today he's no better.", ["LF tester strong"]),
    ],
    "Tansy. {}",
)

test_gone_cold_or_dry = reads(
    [
        ("The off fore was hot Monday, it's cold now.", ["RF finding heat resolved"]),
        ("There was heat in the off fore, it's cool now.", ["RF finding heat resolved"]),
        ("Abscess in the off fore was running, it's dry now.", ["RF finding abscess resolved"]),
        ("Thrush was bad in the left hind when I was here, it's clean today.", ["LH finding thrush resolved ~severe"]),
        ("Thrush in the left hind was shocking, dry as a bone today.", ["LH finding thrush resolved ~severe"]),
        (
            "The thrush behind is gone in the left but the right still has it.",
            ["LH finding thrush resolved", "RH finding thrush"],
        ),
        (
            "The thrush in the hinds has cleared on the near, the off still has it.",
            ["LH finding thrush resolved", "RH finding thrush"],
        ),
        ("The thrush is gone from both hinds.", ["LH+RH finding thrush resolved"]),
        (
            "Crack at the right front toe since healed. Trimmed.",
            ["LF+RF+LH+RH work trim", "RF finding crack resolved @toe"],
        ),
        ("Corn in the near fore, the foot's cold now.", ["LF finding corn"]),
        ("Thrush in the near hind, bedding's dry now.", ["LH finding thrush"]),
        ("The corn in the near fore has grown out. Trimmed it.", ["LF finding corn resolved", "LF work trim"]),
    ],
    "Tansy. {}",
)

test_wore_until_today = reads(
    [
        (
            "He was wearing egg bars, I've put him back to plain shoes in front.",
            ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"],
        ),
        (
            "He was wearing egg bars. Put him in plain today in front.",
            ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"],
        ),
        (
            "She was wearing wide webs in front, I've gone to plain.",
            ["LF+RF shoe_type plain", "LF+RF shoe_type wide_web history"],
        ),
        ("She was wearing wide webs in front, reset those.", ["LF+RF shoe_type wide_web", "LF+RF work reset"]),
        (
            "She was wearing wide webs in front and plain behind. Reset all round.",
            ["LF+RF shoe_type wide_web", "LF+RF+LH+RH work reset", "LH+RH shoe_type plain"],
        ),
    ],
    "Tansy. {}",
)
