"""Statements and numbers given to another horse, and work told of several horses that are named behind it."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = [
    (
        (
            "Tally first. Reset the hinds. Then Buck, new shoes in front. Buck had "
            "the off hind loose too, no, I wrong him, that was Tally."
        ),
        {"Tally": ["LH+RH work reset", "RH shoe_state loose"], "Buck": ["LF+RF work new_shoe"]},
    ),
    (
        (
            "Tally. Reset the fronts. Buck. Trimmed all four. He'd a corn in "
            "the off fore, no, I'm mixing them up, that was Tally."
        ),
        {"Tally": ["LF+RF work reset", "RF finding corn"], "Buck": ["LF+RF+LH+RH work trim"]},
    ),
    (
        (
            "Tally. Reset the fronts. Buck. Trimmed all four. Bruise in the "
            "near hind, sorry, I've the horses crossed, that's Tally."
        ),
        {"Tally": ["LF+RF work reset", "LH finding bruise"], "Buck": ["LF+RF+LH+RH work trim"]},
    ),
    (
        (
            "Tally. Reset the fronts. Buck. Thrush in the left hind, hang on, "
            "I've got them mixed up, that was Tally. Trimmed all four."
        ),
        {"Tally": ["LF+RF work reset", "LH finding thrush"], "Buck": ["LF+RF+LH+RH work trim"]},
    ),
    (
        (
            "Tally. Reset the fronts. Buck. Trimmed all four. Buck was lame on "
            "the near fore, no, I do him wrong, that was Tally."
        ),
        {"Tally": ["LF gait lame", "LF+RF work reset"], "Buck": ["LF+RF+LH+RH work trim"]},
    ),
    (
        "Buck's a body condition six, no, five, it's Tally that's the six. Tally then, reset in front.",
        {"Buck": ["- body_condition 5"], "Tally": ["- body_condition 6", "LF+RF work reset"]},
    ),
    (
        "Both trimmed all round, Tally and Buck. Buck is a condition five, no, six, Tally's the five.",
        {
            "Tally": ["- body_condition 5", "LF+RF+LH+RH work trim"],
            "Buck": ["- body_condition 6", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        (
            "Tally. Reset the fronts, six nails each. Buck. Trimmed. Buck's "
            "cresty neck is four, no, three, Tally's the four."
        ),
        {
            "Tally": ["- cresty_neck 4", "LF+RF nails 6", "LF+RF work reset"],
            "Buck": ["- cresty_neck 3", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally. Trimmed. Buck. Reset in front, condition score four, sorry, seven, Tally is the four.",
        {"Tally": ["- body_condition 4", "LF+RF+LH+RH work trim"], "Buck": ["- body_condition 7", "LF+RF work reset"]},
    ),
    (
        "Tally and Buck, both trimmed. Buck is Obel two, no, one, it's Tally who's the two.",
        {"Tally": ["- obel 2", "LF+RF+LH+RH work trim"], "Buck": ["- obel 1", "LF+RF+LH+RH work trim"]},
    ),
    (
        "Tally. New shoes in front. Buck. Six nails each in front, seven for the hinds. Buck's the big one.",
        {"Tally": ["LF+RF work new_shoe"], "Buck": ["LF+RF nails 6", "LH+RH nails 7"]},
    ),
    (
        "Buck, condition five. Tally's the grey one. Trimmed all four.",
        {"Buck": ["- body_condition 5"], "Tally": ["LF+RF+LH+RH work trim"]},
    ),
    (
        "Both trimmed all round, Tally and Buck. Buck six weeks, Tally four.",
        {
            "Tally": ["- next_visit_weeks 4 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Trimmed both of them today, Tally and Buck. Tally has thrush in the left hind.",
        {"Tally": ["LF+RF+LH+RH work trim", "LH finding thrush"], "Buck": ["LF+RF+LH+RH work trim"]},
    ),
    (
        "Two trims this morning, Tally and Buck. Buck has a corn in the off fore.",
        {"Tally": ["LF+RF+LH+RH work trim"], "Buck": ["LF+RF+LH+RH work trim", "RF finding corn"]},
    ),
    (
        "Both reset all round, that's Tally and Buck.",
        {"Tally": ["LF+RF+LH+RH work reset"], "Buck": ["LF+RF+LH+RH work reset"]},
    ),
    (
        "All three trimmed, Tally, Buck and Sable. Sable's lame on the near hind.",
        {
            "Tally": ["LF+RF+LH+RH work trim"],
            "Buck": ["LF+RF+LH+RH work trim"],
            "Sable": ["LF+RF+LH+RH work trim", "LH gait lame"],
        },
    ),
    (
        "A pair of trims, Buck and Tally. Crack in the left front on Tally.",
        {"Buck": ["LF+RF+LH+RH work trim"], "Tally": ["LF finding crack", "LF+RF+LH+RH work trim"]},
    ),
    (
        "The two ponies, Tally and Buck, both trimmed on all four. Buck is a condition six.",
        {"Tally": ["LF+RF+LH+RH work trim"], "Buck": ["- body_condition 6", "LF+RF+LH+RH work trim"]},
    ),
    (
        "Both fronts reset on the two of them, Tally and Buck.",
        {"Tally": ["LF+RF work reset"], "Buck": ["LF+RF work reset"]},
    ),
    (
        "Reset both fronts, Tally. Then Buck, trimmed.",
        {"Tally": ["LF+RF work reset"], "Buck": ["LF+RF+LH+RH work trim"]},
    ),
    ("Both hinds trimmed and the fronts reset, Tally.", {"Tally": ["LF+RF work reset", "LH+RH work trim"]}),
    (
        "Tally. Reset in front. Eight weeks, no, that was Buck, six.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"]},
    ),
    (
        "Tally. Reset in front. Back in eight weeks, no, that's Buck, six.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"]},
    ),
    (
        "Tally. Reset in front. Eight, no, that was Buck, six weeks.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"]},
    ),
    (
        "Tally. Reset in front. Eight weeks, no, I'm thinking of Buck, six.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"]},
    ),
    (
        "Tally. Reset in front. Eight weeks, no, that was for Buck, six.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"]},
    ),
    (
        "Tally. Reset in front. Eight weeks, no, that's what I told Buck, she's six.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"]},
    ),
    (
        "Tally. Reset in front. Eight weeks. No, that was Buck, six.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"]},
    ),
    (
        "Tally and Buck. Both trimmed. Tally eight weeks, no, that was Buck, six.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"], "Buck": ["LF+RF+LH+RH work trim"]},
    ),
    (
        "Tally. Reset in front. Eight weeks, no, that was Buck.",
        {"Tally": ["LF+RF work reset"], "Buck": ["- next_visit_weeks 8 planned"]},
    ),
    (
        "Tally. Reset in front. Six weeks. Buck eight.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF work reset"], "Buck": ["- next_visit_weeks 8 planned"]},
    ),
    (
        "Tally. Reset in front. Size two, no, that was Buck, size one.",
        {"Tally": ["LF+RF shoe_size 1", "LF+RF work reset"]},
    ),
]


@pytest.mark.parametrize(("text", "visits"), CASES)
def test_told_of_another(read: Read, text: str, visits: dict[str, list[str]]) -> None:
    assert {str(v.horse): told(v) for v in read(text, "Tally", "Buck", "Sable")} == visits


@pytest.mark.parametrize(
    "said",
    [
        "Eight weeks. No, that was Buck. Six.",
        "Eight weeks. No, that's Buck. Six weeks.",
        "Eight weeks. Sorry, that was Buck. She's six.",
        "Eight weeks. Wait, no, I'm thinking of Buck. Six for her.",
        "Eight weeks. No, I'm thinking of Buck, six for her.",
        "Eight weeks, no, that's Buck, she's on six.",
        "Eight weeks. No, six.",
    ],
)
def test_weeks_of_another_put_right(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. Reset in front. {said}", "Tally", "Buck")
    assert told(visit) == ["- next_visit_weeks 6 planned", "LF+RF work reset"]


@pytest.mark.parametrize("said", ["Six weeks. No, that was Buck.", "Six weeks. No, that was Buck. Tally was grand."])
def test_weeks_of_another_alone(read: Read, said: str) -> None:
    facts = {v.horse: told(v) for v in read(f"Tally. Reset in front. {said}", "Tally", "Buck")}
    assert facts == {"Tally": ["LF+RF work reset"], "Buck": ["- next_visit_weeks 6 planned"]}


HAD_IT = [
    ("No thrush in any of the four. Buck had it in the left front last visit and that's gone.", "absent", "resolved"),
    ("Thrush in all four. Buck had it in the left front last visit and that's gone.", "", "resolved"),
    ("No thrush in any of the four. Buck had it in the left front last visit.", "absent", "history"),
    ("No thrush in any of the four. Buck has some in the left front.", "absent", ""),
]


@pytest.mark.parametrize(("text", "tally", "buck"), HAD_IT, ids=[text for text, _, _ in HAD_IT])
def test_had_by_another(read: Read, text: str, tally: str, buck: str) -> None:
    """What one horse is told of, had by the other: on his foot, and hers stays as it was told."""
    facts = {visit.horse: told(visit) for visit in read(f"Buck. Tally. {text}", "Tally", "Buck")}
    assert facts["Tally"] == [f"LF+RF+LH+RH finding thrush {tally}".strip()]
    assert facts["Buck"] == [f"LF finding thrush {buck}".strip()]


test_lame_people = reads(
    [
        ("Sound. It's the owner that's lame, she came off a ladder.", ["- gait sound"]),
        ("Trimmed. The owner's lame herself, bad hip.", ["LF+RF+LH+RH work trim"]),
        ("The groom was lame so the lad held her. Trimmed.", ["LF+RF+LH+RH work trim"]),
        ("I'm the one that's lame after her. Reset all four.", ["LF+RF+LH+RH work reset"]),
        ("I was lame myself.", []),
        ("The owner says she's lame on the near fore.", ["LF gait lame"]),
        ("Owner reckons it's the near fore that's lame.", ["LF gait lame"]),
        ("This old girl's lame in front.", ["LF+RF gait lame"]),
    ],
    "Tansy. {}",
)

test_one_beside_him_and_his_kin = reads(
    [
        (
            "Dangerous behind, reset the fronts. The old pony tied beside him was sedated, and he's not mine.",
            ["- manner dangerous", "LF+RF work reset"],
        ),
        ("The horse stood beside him has thrush in all four. Trimmed Buck.", ["LF+RF+LH+RH work trim"]),
        ("Trimmed. There's a cob in with him that's foundered.", ["LF+RF+LH+RH work trim"]),
        (
            "He had a full sister with navicular. New egg bars in front.",
            ["LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
        ("His full brother had navicular. Reset in front.", ["LF+RF work reset"]),
        ("Same sire as a mare that had ringbone. Trimmed.", ["LF+RF+LH+RH work trim"]),
        (
            "Club foot on the near fore, same as his mother had. She foundered in the end. Trimmed him all four.",
            ["LF finding club_foot", "LF+RF+LH+RH work trim"],
        ),
        ("His dam had sidebone. She went lame with it. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
        (
            "I'd egg bars made up for another horse. He's in plain steel on both fronts, new.",
            ["LF+RF shoe_material steel", "LF+RF shoe_type plain", "LF+RF work new_shoe"],
        ),
        ("He's lame. He was lame last time too.", ["- gait lame", "- gait lame history"]),
    ],
    "Buck. {}",
)


test_seen_elsewhere = reads(
    [
        ("Had a mare at the last yard with canker, this one's got thrush, near hind.", ["LH finding thrush"]),
        ("I did a mare yesterday with canker, and this fella's a crack in the near fore.", ["LF finding crack"]),
        ("I did a cob yesterday with thrush in every foot. Corn in the near fore.", ["LF finding corn"]),
        ("Saw a horse this morning with a keratoma. Near fore has thrush.", ["LF finding thrush"]),
    ]
)

test_a_horse_up_the_road = reads(
    [
        ("The Simmons horse up the road had rotation. Growth rings in front.", ["LF+RF finding growth_rings"]),
        ("The mare down the lane had it, but this guy's films didn't show any rotation in either front.",
         ["LF+RF finding rotation absent"]),
        ("Thrush in the near hind. The horse up the road has it too. Iodine on it.",
         ["LH finding thrush", "LH treatment iodine"]),
    ],
    "Tansy. {}",
)  # fmt: skip
