"""Which foot: the other one of a pair, the foot across, the feet left out, and words for feet that name none.

The forms are common practice of speech, no source. Frames by markers, with their counter-cases.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

_FEET = (("near fore", "LF", "RF"), ("right front", "RF", "LF"), ("near hind", "LH", "RH"), ("right hind", "RH", "LH"))
_SAME = (
    "the other one's the same", "likewise the other", "other one the same", "ditto the other one", "other's the same",
    "and the other one too", "and the other as well", "same with the other one", "same goes for the other one",
    "the other likewise", "same on the other", "so has the other", "its mate too",
)  # fmt: skip


@pytest.mark.parametrize("joint", [". ", ", "])
@pytest.mark.parametrize("form", _SAME)
@pytest.mark.parametrize(("said", "foot", "other"), _FEET[::3])
def test_the_same_on_the_other(read: Read, said: str, foot: str, other: str, form: str, joint: str) -> None:
    (visit,) = read(f"Tally. Scratches on the off fore. Thrush in the {said}{joint}{form}. Six weeks.", "Tally", "Buck")
    assert {(f.foot, f.value) for f in visit.facts} == {
        ("RF", "scratches"), (foot, "thrush"), (other, "thrush"), (None, 6.0),
    }  # fmt: skip


_TOLD = (
    ("Thrush in the {}", "has a corn", "finding", "thrush", "corn"),
    ("Thrush in the {}", "'s got a bad corn", "finding", "thrush", "corn"),
    ("Pulse bounding in the {}", "'s normal", "pulse", "bounding", "normal"),
    ("Toe angle fifty on the {}", "'s fifty one", "toe_angle", 50.0, 51.0),
    ("Toe angle fifty on the {}", " fifty one", "toe_angle", 50.0, 51.0),
)


@pytest.mark.parametrize("joint", [". The other", ", the other one", ", and the other"])
@pytest.mark.parametrize(("first", "second", "slot", "one", "two"), _TOLD)
@pytest.mark.parametrize(("said", "foot", "other"), _FEET)
def test_another_thing_on_the_other(
    read: Read,
    said: str,
    foot: str,
    other: str,
    first: str,
    second: str,
    slot: str,
    one: object,
    two: object,
    joint: str,
) -> None:
    second = second if second[0] in " '" else f" {second}"
    (visit,) = read(f"Tally. {first.format(said)}{joint}{second}. Six weeks.", "Tally", "Buck")
    assert {(f.foot, f.value) for f in visit.facts if f.slot == slot} == {(foot, one), (other, two)}


test_the_other_is_no_foot = reads(
    [
        (
            "Thrush in the near fore. The other one is due in six weeks.",
            ["- next_visit_weeks 6 planned", "LF finding thrush"],
        ),
        ("Thrush in the near fore. The other day it rained.", ["LF finding thrush"]),
        (
            "Thrush in the near fore, the other three are clear.",
            ["LF finding thrush", "RF+LH+RH finding thrush absent"],
        ),
        ("Thrush in the near fore. The other, a corn.", ["LF finding thrush", "RF finding corn"]),
        ("Corn in both fores. The other one's a grey.", ["LF+RF finding corn"]),
        ("Corn in the near fore, one thing or the other, iodine on it.", ["LF finding corn", "LF treatment iodine"]),
    ],
    "Tally. {}",
)


def test_the_other_of_several_may_be_a_horse(read: Read) -> None:
    visits = read("Tally has thrush in the near fore. The other one has a corn. That was Buck.", "Tally", "Buck")
    assert "RF" not in {f.foot for v in visits for f in v.facts}


@pytest.mark.parametrize(
    "form", ["{} a corn, {} an abscess", "{} a corn, {} a bad abscess", "{} a corn, {} a wee abscess"]
)
@pytest.mark.parametrize(
    ("said", "side", "foot", "other"),
    [("near fore", "off", "LF", "RF"), ("right front", "left", "RF", "LF"), ("left hind", "right", "LH", "RH")],
)
def test_the_side_across(read: Read, said: str, side: str, foot: str, other: str, form: str) -> None:
    (visit,) = read(f"Tally. {form.format(said, side).capitalize()}. Six weeks.", "Tally")
    assert {(f.foot, f.value) for f in visit.facts} == {(foot, "corn"), (other, "abscess"), (None, 6.0)}


test_side_and_verb = reads(
    [
        ("A corn on the right front and on the left a bruise.", ["LF finding bruise", "RF finding corn"]),
        ("A corn on the near fore and on the off thrush.", ["LF finding corn", "RF finding thrush"]),
        ("Right front had a corn, left a leather pad on it.", ["RF finding corn", "RF pad leather"]),
        ("Corn in the near fore, left it open.", ["LF finding corn"]),
        ("Corn in the right front, right where the nail was.", ["RF finding corn"]),
        ("Corn in the near fore, took some off the heel. Iodine on it.", ["LF finding corn", "LF treatment iodine"]),
    ],
    "Tally. {}",
)


_ALL_BUT = (
    "Apart from the {} they've all got thrush", "Except for the {} there's thrush in all of them",
    "Thrush in all four, not counting the {}", "They all have thrush only for the {}",
    "They've all got thrush except the {}", "Thrush in all four other than the {}", "Every foot bar the {} has thrush",
)  # fmt: skip


@pytest.mark.parametrize("form", _ALL_BUT)
@pytest.mark.parametrize(("said", "foot", "other"), _FEET)
def test_all_but_one(read: Read, said: str, foot: str, other: str, form: str) -> None:
    (visit,) = read(f"Tally. {form.format(said)}. Six weeks.", "Tally")
    assert {f.foot for f in visit.facts if f.slot == "finding"} == {"LF", "RF", "LH", "RH"} - {foot}
    assert all(f.status == "present" for f in visit.facts if f.slot == "finding")


_LATE = (
    "She's behind with her bookings", "Three weeks behind", "They were running behind", "Truck's out the front",
    "The van was parked in front", "The dog's in the back",
)  # fmt: skip


@pytest.mark.parametrize("aside", _LATE)
def test_no_end_of_the_horse(read: Read, aside: str) -> None:
    (visit,) = read(f"Tally. Corn in the near fore. {aside}. Leather pad on that one.", "Tally")
    assert told(visit) == ["LF finding corn", "LF pad leather"]


test_ends_of_the_horse = reads(
    [
        ("Shod behind with studs.", ["LH+RH traction studs"]),
        ("Corn in the near fore. Behind, thrush.", ["LF finding corn", "LH+RH finding thrush"]),
        ("He's lame behind.", ["LH+RH gait lame"]),
        (
            "Trimmed the hinds. Heel angle in front forty four on the left and forty two on the right.",
            ["LF heel_angle 44", "LH+RH work trim", "RF heel_angle 42"],
        ),
    ],
    "Tally. {}",
)

test_work_of_today_behind_another_foot = reads(
    [
        ("I'll reset the off fore next time. Trimmed him today.", ["LF+RF+LH+RH work trim", "RF work reset planned"]),
        ("I'll reset the off fore next time. Trimmed.", ["LF+RF+LH+RH work trim", "RF work reset planned"]),
        ("Last time the off fore had a corn. Trimmed.", ["LF+RF+LH+RH work trim", "RF finding corn history"]),
        ("No heat in the off fore. Reset.", ["LF+RF+LH+RH work reset", "RF finding heat absent"]),
        ("Last time the off fore had a corn. Reset it.", ["RF finding corn history", "RF work reset"]),
        ("Corn in the off fore. Trimmed.", ["RF finding corn", "RF work trim"]),
        (
            "The off fore is where he had a corn last time. Testers get nothing there now. Same shoe reset.",
            ["RF finding corn history", "RF tester none", "RF work reset"],
        ),
    ],
    "Tally. {}",
)

test_work_of_the_rest = reads(
    [
        ("New shoe on the off hind and the rest just a trim.", ["LF+RF+LH work trim", "RH work new_shoe"]),
        ("New shoes in front and the hinds taken back to a bare trim.", ["LF+RF work new_shoe", "LH+RH work trim"]),
        ("Reset the fronts and the hinds went back to a trim.", ["LF+RF work reset", "LH+RH work trim"]),
        ("Size two in front and the hinds back in shape.", ["LF+RF+LH+RH shoe_size 2"]),
        ("New shoe on the off hind and other three trimmed.", ["LF+RF+LH work trim", "RH work new_shoe"]),
        ("New shoes on the off hind and near hind, six nails each.", ["LH+RH nails 6", "LH+RH work new_shoe"]),
        ("Reset the near fore, pulled the other.", ["LF work reset", "RF work removed"]),
        (
            "Thrush in the near fore, a corn in the off hind. Iodine in each.",
            ["LF finding thrush", "LF+RH treatment iodine", "RH finding corn"],
        ),
        (
            "Thrush in the near fore, a corn in the off fore. Leather pad on each.",
            ["LF finding thrush", "LF+RF pad leather", "RF finding corn"],
        ),
        ("Thrush in the near fore. Iodine each day.", ["LF finding thrush", "LF treatment iodine"]),
    ],
    "Tally. {}",
)

test_what_a_foot_is_like = reads(
    [
        (
            "Near fore's a club foot. The off fore's the opposite, underrun heels.",
            ["LF finding club_foot", "RF finding underrun_heels"],
        ),
        (
            "The right front is upright. Left front is just the opposite, a long toe.",
            ["LF finding long_toe"],
        ),
        (
            "Club foot on the left front. Right front was quite the opposite, flat soles.",
            ["LF finding club_foot", "RF finding flat_sole"],
        ),
        (
            "Near fore's a club foot. The off fore has gone the other way, it's a long toe.",
            ["LF finding club_foot", "RF finding long_toe"],
        ),
        (
            "Left front has contracted heels. Right front's gone the opposite way, underrun heels.",
            ["LF finding contracted_heels", "RF finding underrun_heels"],
        ),
        ("Thrush in the near fore, none in the opposite.", ["LF finding thrush", "RF finding thrush absent"]),
        (
            "Toe crack in the near fore, corn in the off fore. No, the other way.",
            ["LF finding corn", "RF finding crack @toe"],
        ),
    ],
    "Tally. {}",
)

test_put_right_round_one_foot = reads(
    [
        ("Near fore, abscess, poultice right round.", ["LF finding abscess", "LF treatment poultice"]),
        ("Left front, abscess, bandaged right round.", ["LF finding abscess", "LF treatment bandage"]),
        ("Off hind, canker. Bandage all the way round.", ["RH finding canker", "RH treatment bandage"]),
        ("Left hind has an abscess, poulticed it right round.", ["LH finding abscess", "LH treatment poultice"]),
        (
            "Right front puncture, drained it. Wrapped right round.",
            ["RF finding puncture", "RF treatment bandage", "RF treatment drained"],
        ),
        (
            "Near hind, abscess drained, poultice on right round.",
            ["LH finding abscess", "LH treatment drained", "LH treatment poultice"],
        ),
        ("Off fore thrush. Copper sulfate right round.", ["RF finding thrush", "RF treatment copper_sulfate"]),
        ("Left front, seedy toe. Iodine all the way round.", ["LF finding white_line_disease", "LF treatment iodine"]),
        ("Near hind, puncture. Bandaged it all the way round.", ["LH finding puncture", "LH treatment bandage"]),
        ("Right hind abscess, poultice all the way round.", ["RH finding abscess", "RH treatment poultice"]),
        # here it says nothing
        ("Fronts reset. Iodine right round.", ["LF+RF work reset", "LF+RF+LH+RH treatment iodine"]),
        ("Reset right round.", ["LF+RF+LH+RH work reset"]),
        ("Near fore thrush. Trimmed right round.", ["LF finding thrush", "LF+RF+LH+RH work trim"]),
        ("Flare all the way round.", ["LF+RF+LH+RH finding flare"]),
        ("Near fore abscess. Six nails right round.", ["LF finding abscess", "LF+RF+LH+RH nails 6"]),
    ]
)

test_sides_and_back_shoes_by_name = reads(
    [
        ("Lefts have thrush.", ["LF+LH finding thrush"]),
        ("Reset the lefts.", ["LF+LH work reset"]),
        ("Trimmed the rights.", ["RF+RH work trim"]),
        ("Thrush in all four, the lefts worse than the rights.", ["LF+RF+LH+RH finding thrush"]),
        ("Lefts are size two, rights are size three.", ["LF+LH shoe_size 2", "RF+RH shoe_size 3"]),
        ("Heat in the lefts, none in the rights.", ["LF+LH finding heat", "RF+RH finding heat absent"]),
        ("Corns in the rights, lefts clean.", ["LF+LH finding corn absent", "RF+RH finding corn"]),
        ("Flare on the lefts.", ["LF+LH finding flare"]),
        ("Pulled her back shoes.", ["LH+RH work removed"]),
        ("Took the back shoes off.", ["LH+RH work removed"]),
        ("Both back shoes loose.", ["LH+RH shoe_state loose"]),
        ("Reset his back shoes.", ["LH+RH work reset"]),
        # here it says nothing
        ("By rights he should have had pads.", []),
        ("Put him to rights. Fronts reset.", ["LF+RF work reset"]),
        ("He's right as rain. Fronts reset.", ["LF+RF work reset"]),
        ("I nailed back his shoes.", []),
        ("She has grazing rights there. Fronts reset.", ["LF+RF work reset"]),
    ]
)
