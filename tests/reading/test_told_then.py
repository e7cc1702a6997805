"""What is of an earlier time with it, "founder in April, with heat in both", and what was only promised then.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_as_it_was_promised = reads(
    [
        ("Full pads on her fronts today like I'd promised in the spring.", ["LF+RF pad full"]),
        ("Wedges on both fronts like I said last time.", ["LF+RF pad wedge"]),
        ("Leather pads on both fronts, the way I told them last visit I would.", ["LF+RF pad leather"]),
        ("Trimmed all four same as we talked about last month.", ["LF+RF+LH+RH work trim"]),
        ("Egg bars on the fronts like I meant to in the spring.", ["LF+RF shoe_type egg_bar"]),
        ("Rim pads on both fronts as promised in the spring.", ["LF+RF pad rim"]),
        ("Full pads on the fronts like she had in the spring.", ["LF+RF pad full history"]),
        ("I'd promised full pads for the fronts in the spring.", ["LF+RF pad full history"]),
        ("Egg bars on the fronts that the owner told me she had in the spring.", ["LF+RF shoe_type egg_bar history"]),
        ("Thrush in the near hind like I found last time.", ["LH finding thrush history"]),
    ],
    "Tansy. {}",
)

test_with_what_it_was_then = reads(
    [
        (
            "was Obel grade two in April, with a bounding pulse in both fronts. Today the pulse is normal in both.",
            ["- obel 2 history", "LF+RF pulse bounding history", "LF+RF pulse normal"],
        ),
        (
            "had laminitis in April, with heat in both fronts. Reset.",
            ["- finding laminitis history", "LF+RF finding heat history", "LF+RF work reset"],
        ),
        (
            "was three out of five lame last time, with heat in the near fore. Sound today.",
            ["- gait sound", "- lameness 3 history", "LF finding heat history"],
        ),
        (
            "had an abscess in the near fore in April, with a bar shoe on it now.",
            ["LF finding abscess history", "LF shoe_type bar"],
        ),
        (
            "had an abscess in April, with testers strong on the near fore today.",
            ["- finding abscess history", "LF tester strong"],
        ),
        ("had thrush last time, with a crack in the near fore now.", ["- finding thrush history", "LF finding crack"]),
        ("was sound, better than last time, with a corn in the near fore.", ["- gait sound", "LF finding corn"]),
    ],
    "Tansy {}",
)
