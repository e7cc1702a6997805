"""A side, a pair or a finding told the wrong way round is put right as a whole, however the speaker says so.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

TURNED = """\
Wait, I'm turned around, she was facing me. It's the left hind.
No, I'm turned around. It's the left hind.
Hang on, he was facing me. That's the left hind.
Wait, I'm looking at him backwards. Left hind.
Sorry, wrong side. It's the left hind.
No, hold on, I've got him back to front. It's the near hind.
Wait, that's my right, not his. It's the left hind.
Hang on, I was stood facing him. Make that the left hind.
Wait, she was turned around on me. Left hind.
No, wrong leg. Left hind.
And that was my right, so his left hind.
I was under the other side of him. It's the left hind.
Hold on, let me look. It's the left hind.
Hold on, let me get my bearings. No, left hind.
I've got my lefts and rights mixed up. That's the left hind.
"""


@pytest.mark.parametrize("behind", TURNED.splitlines())
def test_a_foot_named_from_the_wrong_side(read: Read, behind: str) -> None:
    (visit,) = read(f"Tally. Toe crack in the right hind, severe. {behind} Reset in front.", "Tally")
    assert told(visit) == ["LF+RF work reset", "LH finding crack @toe ~severe"]


def test_only_the_last_foot_was_wrong(read: Read) -> None:
    text = "Tally. Mild thrush in the left hind, testers strong on the left front. Wait, I'm turned around."
    (visit,) = read(f"{text} It's the right front.", "Tally")
    assert told(visit) == ["LH finding thrush ~mild", "RF tester strong"]


test_a_foot_named_next_is_no_correction = reads(
    [
        ("Thrush in the right hind. Wait, the left hind has it too.", ["LH+RH finding thrush"]),
        ("Thrush in the right hind. Hold on, the left hind as well.", ["LH+RH finding thrush"]),
        ("Thrush in the right hind. He turned around. Left hind reset.", ["LH work reset", "RH finding thrush"]),
        ("Corn right front. He stood facing me. Left front trimmed.", ["LF work trim", "RF finding corn"]),
    ],
    "Tally. {}",
)


SWAPPED = """\
Swap those.
Swap those, left is the 53 and right is the 50.
Switch those round.
No, flip them.
Other way round.
Other way around.
No wait, the other way about.
Sorry, I've got those backwards.
I had them the wrong way round.
No, I've got those back to front.
Hang on, it's the other way round, left 53, right 50.
"""


@pytest.mark.parametrize("behind", SWAPPED.splitlines())
def test_two_feet_are_exchanged(read: Read, behind: str) -> None:
    (visit,) = read(f"Tally. Toe angle left front 50, right front 53. {behind} Six weeks.", "Tally")
    assert told(visit) == ["- next_visit_weeks 6 planned", "LF toe_angle 53", "RF toe_angle 50"]


test_what_two_feet_have_is_exchanged = reads(
    [
        ("Testers mild on the left front, strong on the right. Swap those.", ["LF tester strong", "RF tester mild"]),
        ("Ones in front, twos behind. No, other way about.", ["LF+RF shoe_size 2", "LH+RH shoe_size 1"]),
        (
            "Moderate thrush in the near hind, mild in the off hind, no, the reverse.",
            ["LH finding thrush ~mild", "RH finding thrush ~moderate"],
        ),
        ("Thrush left hind, corn right hind. Flip those.", ["LH finding corn", "RH finding thrush"]),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ("Lame on the left front on the circle. Other way round, fine.", ["LF gait lame"]),
        ("Left front reset, right front new. Swap those for rims next time.", ["LF work reset", "RF work new_shoe"]),
        ("Quarter clips behind, no, sorry, quarter clips in front, toe clips behind, other way about.",
         ["LF+RF clips quarter", "LH+RH clips toe"]),
    ],
)  # fmt: skip
def test_nothing_is_exchanged(read: Read, text: str, lines: list[str]) -> None:
    (visit,) = read(f"Tally. {text}", "Tally")
    assert [line for line in told(visit) if "planned" not in line] == lines


@pytest.mark.parametrize(
    "said",
    [
        "Tally at four weeks and Buck six. Other way around, Buck four and Tally six.",
        "Four weeks for Tally, six for Buck. No, other way about.",
        "Tally at four weeks and Buck six. Swap those.",
        "Four weeks on Tally and six on Buck. Had that backwards, Buck is the four.",
        "Tally four weeks, Buck six. Sorry, switch those.",
    ],
)
def test_the_weeks_of_two_horses_are_exchanged(read: Read, said: str) -> None:
    visits = read(f"Tally. Trimmed. Buck. Trimmed. {said}", "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [
        ("Tally", ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"]),
        ("Buck", ["- next_visit_weeks 4 planned", "LF+RF+LH+RH work trim"]),
    ]


@pytest.mark.parametrize(
    "behind",
    [
        "Or not both, the left hind's what I'm looking at.",
        "Well, not both, just the left hind.",
        "Not both, only the left.",
        "No, not both, it's the left hind.",
        "I say both, it's only the left hind.",
        "No, only the left hind.",
        "Actually just the left hind.",
    ],
)
def test_one_foot_of_the_pair_said(read: Read, behind: str) -> None:
    (visit,) = read(f"Tally. She has thrush in both hinds. {behind} Trimmed in front.", "Tally")
    assert told(visit) == ["LF+RF work trim", "LH finding thrush"]


ANOTHERS = """\
No wait, Tally is the one with the scratches.
No, Tally's the one with the scratches.
Tally's the one that has the scratches, not Buck.
Sorry, the scratches are Tally's.
The scratches go on Tally.
No, it's Tally who has the scratches.
It was Tally had the scratches.
Wait, the one with the scratches is Tally.
Hang on, that was Tally with the scratches.
No, Tally has the scratches.
No. Stop. That's Tally with the scratches.
Wait. No. It's Tally that has the scratches.
"""


@pytest.mark.parametrize("behind", ANOTHERS.splitlines())
def test_a_finding_given_to_another_horse(read: Read, behind: str) -> None:
    text = f"Tally. New shoes in front. Buck. Scratches right hind, severe, washed with antiseptic. {behind} Trimmed."
    visits = read(text, "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [
        ("Tally", ["LF+RF work new_shoe", "RH finding scratches ~severe", "RH treatment antiseptic"]),
        ("Buck", ["LF+RF+LH+RH work trim"]),
    ]


def test_the_foot_goes_along(read: Read) -> None:
    text = "Buck. Crack on the near fore, moderate. No. Stop. That's Tally with the crack."
    visits = read(f"{text} So Tally has a straight bar on that foot. Buck has no cracks in any foot.", "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [
        ("Buck", ["LF+RF+LH+RH finding crack absent"]),
        ("Tally", ["LF finding crack ~moderate", "LF shoe_type straight_bar"]),
    ]


def test_the_other_findings_stay(read: Read) -> None:
    text = "Tally. Reset in front. Buck. Thrush left hind, iodine on it, scratches right hind."
    visits = read(f"{text} No, Tally's the one with the scratches.", "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [
        ("Tally", ["LF+RF work reset", "RH finding scratches"]),
        ("Buck", ["LH finding thrush", "LH treatment iodine"]),
    ]


@pytest.mark.parametrize(
    "text",
    [
        "Tally. Corn left front. And Buck has the corn in the right front.",
        "Tally. Corn left front. Buck. He's the one with the corn in the right front.",
        "Tally. Corn left front. Buck has a corn too, right front.",
    ],
)
def test_both_horses_have_it(read: Read, text: str) -> None:
    visits = read(text, "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [("Tally", ["LF finding corn"]), ("Buck", ["RF finding corn"])]


test_one_number_put_right = reads(
    [
        (
            "Off hind, pulse is bounding. Near hind, toe angle fifty degrees, had that backwards, fifty two degrees.",
            ["LH toe_angle 52", "RH pulse bounding"],
        ),
        (
            "Left front toe angle 50, right front 53, had that backwards, 53 and 50.",
            ["LF toe_angle 53", "RF toe_angle 50"],
        ),
    ],
    "Tansy. {}",
)

test_a_memo_that_ends_in_the_middle = reads(
    [
        (
            "Right hind and it's a severe corn. Wait, I'm turned around, she was facing me. It's the",
            ["RH finding corn ~severe"],
        )
    ]
)


test_a_remark_turns_nothing_round = reads(
    [
        ("Tally. Trimmed in front and reset behind, which is back to front.", ["LF+RF work trim", "LH+RH work reset"]),
        (
            "Tally. Size three in front and four behind, which is the wrong way round for a horse.",
            ["LF+RF shoe_size 3", "LH+RH shoe_size 4"],
        ),
        (
            "Tally. Trimmed in front and reset behind. No, other way round.",
            ["LF+RF work reset", "LH+RH work trim"],
        ),
        (
            "Tally. Swelling in the right front. Left front, the axis is broken backwards.",
            ["LF finding broken_back_axis", "RF finding swelling"],
        ),
        ("Tally. A corn in the off fore. The near fore's axis is broken, backwards.", ["RF finding corn"]),
        (
            "Tally. Broken back axis in the near fore, corn in the off fore. I had that backwards.",
            ["LF finding corn", "RF finding broken_back_axis"],
        ),
    ]
)

test_looked_at_from_the_front = reads(
    [
        (
            "Near fore's a club foot. No, I'm looking at her from the front, it's the off fore that's the club foot.",
            ["RF finding club_foot"],
        ),
        (
            "Flare on the left front. No, I was looking at her from the front, it's the right front.",
            ["RF finding flare"],
        ),
        ("Looking at him from behind, there's a crack in the left hind.", ["LH finding crack"]),
    ]
)
