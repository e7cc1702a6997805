"""The foot that stays in hand behind another horse that was only spoken of, or is pointed to on coming back.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

test_the_foot_goes_on_behind_another_horse = reads(
    [
        (
            "toe crack in the off fore. Buck had the same last year. Reset it.",
            ["RF finding crack @toe", "RF work reset"],
        ),
        (
            "thrush in the near hind. Buck had it last month. Iodine in it.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        (
            "thrush in both hinds. Buck had it last week, far worse than her. Iodine in both.",
            ["LH+RH finding thrush", "LH+RH treatment iodine"],
        ),
        (
            "toe crack in the off fore. Buck had one like it two years ago and it never gave him trouble, so "
            "I've let hers be and reset the shoe.",
            ["RF finding crack @toe", "RF work reset"],
        ),
        (
            "corn in the near fore. They had the vet to Buck last week. Bar shoe on it.",
            ["LF finding corn", "LF shoe_type bar"],
        ),
        (
            "corn in the near fore. The vet was out to Buck last week and they wondered should she be seen too, "
            "but there's no need for the vet.",
            ["- vet referral absent", "LF finding corn"],
        ),
        (
            "bruise in the near fore. Whoever wrote Buck on the card got it wrong, Buck wasn't even in today. "
            "Leather pads on both fronts.",
            ["LF finding bruise", "LF+RF pad leather"],
        ),
        (
            "bruise in the near fore. Somebody put Buck down for that, wrong. Leather pads on both fronts.",
            ["LF finding bruise", "LF+RF pad leather"],
        ),
    ],
    "Tansy, {}",
)


def test_back_to_that_foot(read: Read) -> None:
    first, _ = read(
        "Tansy had lost the near fore. Then Buck, thrush in the left hind. Back to Tansy, six nails in that shoe.",
        *NAMES,
    )
    assert told(first) == ["LF nails 6", "LF shoe_state lost"]
    first, _ = read("Tansy, corn near fore. Buck, bruise off hind. Tansy, reset.", *NAMES)
    assert told(first) == ["LF finding corn", "LF+RF+LH+RH work reset"]
