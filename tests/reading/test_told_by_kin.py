"""A name that only tells which horse is meant turns the talk to nobody; whose foal it is, is a horse unnamed.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_names_in_passing = reads(
    [
        ("Buck, the big bay, Tally's teammate. Corn near fore.", ["LF finding corn"]),
        ("Buck, Tally's half-brother. Corn near fore.", ["LF finding corn"]),
        ("This is Buck, Tally's brother. Corn near fore.", ["LF finding corn"]),
        ("Buck. Tally's stablemate. Corn near fore.", ["LF finding corn"]),
        ("Buck, Tally's old paddock mate, corn near fore.", ["LF finding corn"]),
        ("Buck, brother to Tally. Corn near fore.", ["LF finding corn"]),
        ("Buck, a half sister to Tally. Corn near fore.", ["LF finding corn"]),
        (
            "Buck. Or is it Tally? No, Buck, the grey, Tally's the one that got sold. Corn near fore.",
            ["LF finding corn"],
        ),
        ("This is Buck, or was it Tally, no, it's Buck. Corn near fore.", ["LF finding corn"]),
        ("Buck, corn near fore. Tally's the one that died. Corn off hind.", ["LF+RH finding corn"]),
    ]
)

test_one_in_mind = reads(
    [
        (
            "New in front, size one, no, wait, single aught, I'm thinking of his brother, quarter clips, three a side.",
            ["LF+RF clips quarter", "LF+RF nails 6", "LF+RF shoe_size 0", "LF+RF work new_shoe"],
        ),
        (
            "Six nails in front, no, seven, I had his brother in my head, quarter clips on both.",
            ["LF+RF clips quarter", "LF+RF nails 7"],
        ),
        (
            "Six nails in front, no, seven, I was mixing him up with his stablemate, quarter clips on both.",
            ["LF+RF clips quarter", "LF+RF nails 7"],
        ),
        (
            "Size two in front, I was thinking of the mare next door, no, one, side clips.",
            ["LF+RF clips side", "LF+RF shoe_size 1"],
        ),
        ("Six nails in front, his brother has a corn.", ["LF+RF nails 6"]),
    ],
    "Buck. {}",
)

_TRIM = "LF+RF+LH+RH work trim"
_CORN = "LF finding corn"
CASES = [
    ("Buck, trimmed. Tally, Buck's sister, corn near fore.", {"Buck": [_TRIM], "Tally": [_CORN]}),
    ("Buck, trimmed. Tally's left front has a corn.", {"Buck": [_TRIM], "Tally": [_CORN]}),
    ("Buck, trimmed. Tally. Corn near fore.", {"Buck": [_TRIM], "Tally": [_CORN]}),
    ("Or is it Buck? No, Tally. Trimmed.", {"Tally": [_TRIM]}),
    ("Buck, trimmed. Tally's foal, corn near fore.", {"Buck": [_TRIM], "Tally's foal": [_CORN]}),
    ("Tally, trimmed. Tally's sister. Corn near fore.", {"Tally": [_TRIM], "Tally's sister": [_CORN]}),
    ("Tally. Buck is her brother and I did him Monday. Her near fore has a corn.", {"Tally": [_CORN]}),
    ("Tally. Buck's her half brother, I shod him last week. Trimmed. Corn near fore.", {"Tally": [_CORN, _TRIM]}),
    ("Tally. Buck is next door's and he was done Tuesday. She's a corn in the near fore.", {"Tally": [_CORN]}),
    ("Tally. Buck is her son. Her near fore has a corn.", {"Tally": [_CORN]}),
    ("Buck. Tally's his dam, she's been done on Friday. His near fore has a corn.", {"Buck": [_CORN]}),
    ("Tally, trimmed. Buck is her brother and I did him as well. Corn near fore.", {"Tally": [_TRIM], "Buck": [_CORN]}),
    ("Tally, trimmed. Buck is next, he was to be Monday. Corn near fore.", {"Tally": [_TRIM], "Buck": [_CORN]}),
    (
        "Tally, trimmed. Buck is her brother, he was to be Monday. I did him today. Corn near fore.",
        {"Tally": [_TRIM], "Buck": [_CORN]},
    ),
]


@pytest.mark.parametrize(("text", "horses"), CASES, ids=[text for text, _ in CASES])
def test_whose_part_opens(read: Read, text: str, horses: dict[str, list[str]]) -> None:
    assert {visit.horse: told(visit) for visit in read(text, "Buck", "Tally")} == horses


# What was told is another's, who is named by nothing: taken back, and asked about.
test_told_of_one_in_mind = reads(
    [
        (
            "Left hind's got thrush in the frog. Wait. I'm thinking of his brother. Buck's is the right hind, thrush "
            "in the right hind frog, mild.",
            ["RH finding thrush @frog ~mild"],
        ),
        ("Near fore has a corn. No, I'm thinking of the other mare. Off fore has the corn.", ["RF finding corn"]),
        (
            "Bruise in the left front. Hang on, that's his brother I'm thinking of. Buck has it in the right front.",
            ["RF finding bruise"],
        ),
        ("Trimmed. Left hind has thrush. No, I've got him confused with his brother.", ["LF+RF+LH+RH work trim"]),
        ("Thrush off hind. Corn near fore. Sorry, I was thinking of the last one.", ["RH finding thrush"]),
        # nothing taken back
        ("Left hind has thrush. I'm thinking of his brother coming next time.", ["LH finding thrush"]),
        ("Corn near fore. I was thinking of the other mare when I dug it out.", ["LF finding corn"]),
        ("Left hind's got thrush in the frog. His brother's is way worse.", ["LH finding thrush @frog"]),
    ],
    "Buck. {}",
)
