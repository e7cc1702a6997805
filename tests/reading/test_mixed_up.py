"""Another horse in the mind: "no, I'm mixing him up with Buck" takes back what was said, and opens no other horse."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

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


@pytest.mark.parametrize(
    ("said", "tally", "buck"),
    [
        ("She's stiff, hang on, that was Buck. Buck's the one going short.", True, ["- gait short_stride"]),
        ("She's stiff behind the saddle, no, that was Buck. Buck has a corn, near fore.", True, ["LF finding corn"]),
        # the bruise itself
        ("Hang on, that was Buck.", False, ["RF finding bruise @sole"]),
        ("She, no, that was Buck.", False, ["RF finding bruise @sole"]),
        ("She's got it bad, hang on, that was Buck.", False, ["RF finding bruise @sole"]),
    ],
)
def test_only_what_was_said_last_is_another_horses(read: Read, said: str, tally: bool, buck: list[str]) -> None:
    """What nobody could read moves alone; the bruise told in the sentence before stays where it was told."""
    visits = read(f"Tally. Fronts reset. Bruise off fore, in the sole. {said}", "Tally", "Buck")
    bruise = ["RF finding bruise @sole"] if tally else []
    assert [told(visit) for visit in visits] == [["LF+RF work reset", *bruise], buck]


def test_what_another_horse_is_like_is_asked(read: Read) -> None:
    """A word that no list knows, said of a horse that nothing else is told of, is a question."""
    visits = read("Tally. Fronts reset. Bruise off fore. He's footy, no, that was Buck.", "Tally", "Buck")
    reasons = [flag.reason for visit in visits for flag in visit.flags]
    assert [told(visit) for visit in visits] == [["LF+RF work reset", "RF finding bruise"]]
    assert any("how another horse is" in reason for reason in reasons)
