"""The foot of a loose or lost shoe, told in the end; what others had said of it does not count.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_the_foot_in_the_end = reads(
    [
        (
            "She had lost one, it was down as the off fore, but I get there and it's the near fore that's bare.",
            ["LF shoe_state lost"],
        ),
        (
            "She'd a loose shoe, the lassie said the near hind, and it was nothing of the kind, it was the off hind.",
            ["RH shoe_state loose"],
        ),
        ("He'd lost a shoe, they told me the left front, but it was the right front.", ["RF shoe_state lost"]),
        ("Lost a shoe, the text said left hind, turned out to be the right hind.", ["RH shoe_state lost"]),
        ("He had a shoe loose, she thought the near fore, it turned out to be the off fore.", ["RF shoe_state loose"]),
        ("Cast a shoe, I had it down as the near hind, and it's the off hind that's missing.", ["RH shoe_state lost"]),
        ("She'd sprung one, he said it was the left front, it's the right front.", ["RF shoe_state sprung"]),
        ("Lost one, it was the near fore.", ["LF shoe_state lost"]),
        (
            "She had lost one, the near fore, and it was the off fore that was loose.",
            ["LF shoe_state lost", "RF shoe_state loose"],
        ),
        ("He'd lost the near fore, and it was the off fore I trimmed.", ["LF shoe_state lost", "RF work trim"]),
        (
            "Loose shoe, it was the near hind, and the off hind's sprung.",
            ["LH shoe_state loose", "RH shoe_state sprung"],
        ),
    ],
    "Tansy. {}",
)
