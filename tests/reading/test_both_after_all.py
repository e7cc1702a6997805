"""One foot that turns out to be two, a foot added behind a pronoun, and back to a horse by its feet.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_both_after_all = reads(
    [
        ("I put iodine in the near hind, no, I did the two of them.", ["LH+RH treatment iodine"]),
        ("I put iodine in the near hind, no, I tell a lie, I did the two.", ["LH+RH treatment iodine"]),
        ("I put iodine in the near hind, no, it went in both.", ["LH+RH treatment iodine"]),
        ("I put iodine in the near hind, no, I did the pair.", ["LH+RH treatment iodine"]),
        ("Trimmed the near hind, no, I did the two of them.", ["LH+RH work trim"]),
        ("Copper sulfate in the left hind, well, both hinds actually.", ["LH+RH treatment copper_sulfate"]),
        ("Copper sulfate in the left hind, in fact I did both.", ["LH+RH treatment copper_sulfate"]),
        ("New shoe on the near fore, no, wait, both.", ["LF+RF work new_shoe"]),
        ("Corn in the left front, well, both fronts.", ["LF+RF finding corn"]),
        ("Thrush in the left hind, actually both hinds.", ["LH+RH finding thrush"]),
        # one foot stays one
        ("Corn in the left front, no, the right front.", ["RF finding corn"]),
        ("New shoe on the left front, and well, both hinds trimmed.", ["LF work new_shoe", "LH+RH work trim"]),
        (
            "Corn in the left front, no heat in either, both reset.",
            ["LF finding corn", "LF+RF finding heat absent", "LF+RF work reset"],
        ),
    ]
)

test_done_to_them_and_one_more = reads(
    [
        (
            "I was going to shoe the fronts but she'd had a gutful, so I trimmed them, and the off hind.",
            ["LF+RF+RH work trim"],
        ),
        ("She wouldn't have the shoes on in front so I just trimmed them, and the hinds.", ["LF+RF+LH+RH work trim"]),
        ("Fronts, I reset them, and the near hind.", ["LF+RF+LH work reset"]),
        (
            "The front shoes were loose so I reset them, and the left hind.",
            ["LF+RF shoe_state loose", "LF+RF+LH work reset"],
        ),
        (
            "Thrush in both hinds, I put iodine in them, and the left front.",
            ["LF+LH+RH treatment iodine", "LH+RH finding thrush"],
        ),
        ("Reset the fronts. And the near hind.", ["LF+RF+LH work reset"]),
        # a foot with something of its own
        ("Trimmed the fronts, and the off hind has thrush.", ["LF+RF work trim", "RH finding thrush"]),
        (
            "Flares on the fronts, I trimmed them, and the near hind has a corn at the heel.",
            ["LF+RF finding flare", "LF+RF work trim", "LH finding corn @heel"],
        ),
        (
            "Both hind shoes were worn thin so I pulled them, and the off fore.",
            ["LH+RH shoe_state worn"],
        ),
        ("Iodine on them, both hinds.", ["LH+RH treatment iodine"]),
    ]
)


@pytest.mark.parametrize(
    "said",
    [
        "Oh, Tally's got thrush too, left hind. Trimmed Buck's hinds. If he's not right they call the vet.",
        "Oh, Tally's got thrush too, left hind, trimmed Buck's hinds, if he's not right they call the vet.",
        "Forgot, Tally has thrush in the left hind. Buck's hinds I trimmed. If he's no better the vet's to see him.",
        "Ah, and Tally had thrush, left hind. Buck's hinds got trimmed. Vet if he's no better.",
    ],
)
def test_back_by_his_feet(read: Read, said: str) -> None:
    tally, buck = read(f"Tally, sound. Now Buck, right front, corn. {said}", "Tally", "Buck")
    assert told(tally) == ["- gait sound", "LH finding thrush"]
    assert told(buck) == ["- vet referral planned", "LH+RH work trim", "RF finding corn"]


def test_an_owned_foot_by_the_way(read: Read) -> None:
    """Without an aside before it, another horse's foot takes nothing over."""
    buck, tally = read(
        "Buck's next, trimmed all round. Iodine in Tally's near hind, thrush there. Corn in the left front.",
        "Tally",
        "Buck",
    )
    assert told(buck) == ["LF finding corn", "LF+RF+LH+RH work trim"]
    assert told(tally) == ["LH finding thrush", "LH treatment iodine"]


test_left_after_all = reads(
    [
        (
            "Trimmed all four, no wait, I left the right front, it's got a boot on.",
            ["LF+LH+RH work trim", "RF shoe_type boot"],
        ),
        ("Trimmed all four, no, I left the right front alone.", ["LF+LH+RH work trim"]),
        ("Reset all round, no, I skipped the near hind.", ["LF+RF+RH work reset"]),
        ("Trimmed both hinds, no, I left the near hind.", ["RH work trim"]),
        ("Corn in the left hind, no, I mean left front.", ["LF finding corn"]),
        # a time that is over for the clause behind it
        (
            "She'd been pointing the near fore so I had the testers on it, nothing, off fore mild over the frog.",
            ["LF tester none", "RF tester mild @frog"],
        ),
        ("He'd been lame on the near fore, two out of five.", ["LF lameness 2 history"]),
    ]
)
