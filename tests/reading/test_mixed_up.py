"""Another horse in the mind: "no, I'm mixing him up with Buck" takes back what was said, and opens no other horse."""

from __future__ import annotations

from tests.reading.conftest import reads

test_mixed_up_with_another = reads(
    [
        (
            "Tally's left front was sprung. No, I'm mixing him up with Buck. Tally's left front was only loose.",
            ["LF shoe_state loose"],
        ),
        ("Tally, thrush near hind. No, I'm mixing him up with Buck. He has a corn there.", ["LH finding corn"]),
        (
            "Tally, thrush near hind. I'm mixing him up with Buck, he's clean. Six weeks.",
            ["- next_visit_weeks 6 planned"],
        ),
        ("Tally, corn off fore. Sorry, I'm thinking of Buck. It's a bruise with Tally.", ["RF finding bruise"]),
        ("Tally, near fore was lost, I'm mixing him up with Buck, his was only sprung.", ["LF shoe_state sprung"]),
        (
            "Tally, reset all round, seven nails each, no, I'm confusing him with Buck, six each.",
            ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"],
        ),
        (
            "Tally, thrush in the near fore, no, I've got him mixed up with Buck, it's the off fore. Iodine in it.",
            ["RF finding thrush", "RF treatment iodine"],
        ),
        # neighbours
        (
            "Tally, new rim shoes in front, no, I'm thinking of Buck, new bar shoes.",
            ["LF+RF shoe_type bar", "LF+RF work new_shoe"],
        ),
        (
            "Tally, trimmed. I always mix her up with Buck. Six weeks.",
            ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "Tally, six nails in front, no, seven, I was mixing him up with Buck, quarter clips on both.",
            ["LF+RF clips quarter", "LF+RF nails 7"],
        ),
    ]
)
