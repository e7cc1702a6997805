"""What is told of the two horses of a memo is on both; of two feet it is not.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

NAMED = ("Tally", "Buck", "Sable")


@pytest.mark.parametrize(
    "said",
    [
        "Hinds trimmed on the two.",
        "Hinds, both horses, trimmed.",
        "Trimmed behind on both horses.",
        "Trimmed the hinds on the pair of them.",
        "Both ponies trimmed behind.",
        "The hinds on both of them were trimmed.",
    ],
)
def test_done_to_both(read: Read, said: str) -> None:
    tally, buck = read(f"Tally, resets in front. Buck, new shoes in front. {said}", "Tally", "Buck")
    assert told(tally) == ["LF+RF work reset", "LH+RH work trim"]
    assert told(buck) == ["LF+RF work new_shoe", "LH+RH work trim"]


@pytest.mark.parametrize(
    "said",
    [
        "Tally's fronts are resets, Buck's fronts are new, and both of them in steel in front.",
        "Tally had resets in front, Buck got new shoes in front, and both in steel up front.",
        "Tally had resets in front, Buck got new shoes in front, and the pair of them are in steel up front.",
    ],
)
def test_closed_by_both(read: Read, said: str) -> None:
    tally, buck = read(f"Tally and Buck. {said}", "Tally", "Buck")
    assert told(tally) == ["LF+RF shoe_material steel", "LF+RF work reset"]
    assert told(buck) == ["LF+RF shoe_material steel", "LF+RF work new_shoe"]


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        ("Buck, thrush in the hinds, both of them.", ["LH+RH finding thrush"]),
        ("Buck, fronts reset and the pair of them in rim pads.", ["LF+RF pad rim", "LF+RF work reset"]),
        ("Buck has thrush in both hinds, and both of them are bad.", ["LH+RH finding thrush ~severe"]),
    ],
)
def test_two_feet_of_one(read: Read, said: str, facts: list[str]) -> None:
    tally, buck = read(f"Tally, trimmed. {said}", "Tally", "Buck")
    assert told(tally) == ["LF+RF+LH+RH work trim"]
    assert told(buck) == facts


@pytest.mark.parametrize(
    "said",
    [
        "there's none in Buck's hinds",
        "nothing in Buck's hinds",
        "Buck's hinds have none",
    ],
)
def test_none_on_the_other_horse(read: Read, said: str) -> None:
    tally, buck = read(
        f"Tally and Buck. Buck, fronts reset. Tally has thrush in both hinds, and {said}.", "Tally", "Buck"
    )
    assert told(tally) == ["LH+RH finding thrush"]
    assert told(buck) == ["LF+RF work reset", "LH+RH finding thrush absent"]


def test_put_right_takes_over_only_its_own(read: Read) -> None:
    tally, buck = read(
        "Tally, reset in front, rim pads, no, wait, rim pads on Buck, it's leather pads for Tally.", "Tally", "Buck"
    )
    assert told(tally) == ["LF+RF pad leather", "LF+RF work reset"]
    assert told(buck) == ["LF+RF pad rim"]


@pytest.mark.parametrize("said", ["Eight weeks apiece.", "Eight weeks each.", "Four months, no, eight weeks apiece."])
def test_weeks_of_each(read: Read, said: str) -> None:
    tally, buck = read(f"Tally, sound. Buck, fidgety. {said}", "Tally", "Buck")
    assert told(tally) == ["- gait sound", "- next_visit_weeks 8 planned"]
    assert told(buck) == ["- manner fidgety", "- next_visit_weeks 8 planned"]


def test_weeks_of_each_but_of_whom_they_were_told(read: Read) -> None:
    tally, buck, sable = read("Tally, sound, five weeks. Buck, sound. Sable, sound. Eight weeks each.", *NAMED)
    assert told(tally) == ["- gait sound", "- next_visit_weeks 5 planned"]
    assert told(buck) == told(sable) == ["- gait sound", "- next_visit_weeks 8 planned"]


@pytest.mark.parametrize(
    "said", ["No vet for either of them.", "No vet needed for either.", "I want the vet for both of them."]
)
def test_the_vet_for_either(read: Read, said: str) -> None:
    status = "absent" if said.startswith("No") else "planned"
    tally, buck = read(f"Tally, sound. Buck, fidgety. {said}", "Tally", "Buck")
    assert told(tally) == ["- gait sound", f"- vet referral {status}"]
    assert told(buck) == ["- manner fidgety", f"- vet referral {status}"]


@pytest.mark.parametrize("said", ["No vet for either of them.", "No vet needed for either.", "Neither needs the vet."])
def test_the_vet_for_either_is_not_of_a_horse_told_later(read: Read, said: str) -> None:
    tally, buck, sable = read(
        f"Tally, sound. Buck, fidgety. {said} Sable, abscess in the near fore, vet to see her.", *NAMED
    )
    assert told(tally) == ["- gait sound", "- vet referral absent"]
    assert told(buck) == ["- manner fidgety", "- vet referral absent"]
    assert told(sable) == ["- vet referral planned", "LF finding abscess"]


def test_no_vet_for_any_of_three(read: Read) -> None:
    visits = read("Tally, sound. Buck, fidgety. Sable, trimmed the hinds. No vet for any of them.", *NAMED)
    assert [[f.status for f in v.facts if f.slot == "vet"] for v in visits] == [["absent"]] * 3


def test_six_nails_each_are_no_weeks(read: Read) -> None:
    tally, buck = read(
        "Tally, sound, six weeks. Buck, new shoes in front, six nails each. Seven weeks.", "Tally", "Buck"
    )
    assert told(tally) == ["- gait sound", "- next_visit_weeks 6 planned"]
    assert told(buck) == ["- next_visit_weeks 7 planned", "LF+RF nails 6", "LF+RF work new_shoe"]


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        (
            "Reset his fronts with two degree wedge pads on the both of them.",
            ["LF+RF pad wedge", "LF+RF wedge 2", "LF+RF work reset"],
        ),
        ("Trimmed her hinds and put boots on both of them.", ["LH+RH shoe_type boot", "LH+RH work trim"]),
        ("I put new shoes in her fronts with rim pads in the two of them.", ["LF+RF pad rim", "LF+RF work new_shoe"]),
    ],
)
def test_both_feet_of_his(read: Read, said: str, facts: list[str]) -> None:
    tally, buck = read(f"Tally, toe clips in front. Buck's the bay. {said}", "Tally", "Buck")
    assert told(tally) == ["LF+RF clips toe"]
    assert told(buck) == facts


@pytest.mark.parametrize(
    "said",
    [
        "No need for the vet with either of them.",
        "Neither of them needs the vet.",
        "Tally in six weeks and Buck in five, and there's no need for the vet for either of them.",
    ],
)
def test_no_vet_for_either(read: Read, said: str) -> None:
    visits = read(f"Tally. Trimmed. Buck. Trimmed. {said}", "Tally", "Buck")
    assert [[f.status for f in v.facts if f.slot == "vet"] for v in visits] == [["absent"], ["absent"]]


def test_no_vet_for_the_one_in_hand(read: Read) -> None:
    visits = read("Tally. Trimmed. Buck. Bruise in both fronts. No need for the vet.", "Tally", "Buck")
    assert [[f.status for f in v.facts if f.slot == "vet"] for v in visits] == [[], ["absent"]]


@pytest.mark.parametrize(
    "said",
    [
        "Neither one needs the vet",
        "Neither of them needs a vet",
        "Neither needs the vet to look",
        "Neither horse needs the vet",
    ],
)
def test_neither_needs_the_vet(read: Read, said: str) -> None:
    tally, buck = read(f"Tally, fronts reset. Buck, corn in the off fore. {said}.", "Tally", "Buck")
    assert told(tally) == ["- vet referral absent", "LF+RF work reset"]
    assert told(buck) == ["- vet referral absent", "RF finding corn"]


def test_neither_of_two_feet_needs_the_vet(read: Read) -> None:
    tally, buck = read("Tally, fronts reset. Buck, thrush in both hinds. Neither needs the vet.", "Tally", "Buck")
    assert told(tally) == ["LF+RF work reset"]
    assert told(buck) == ["- vet referral absent", "LH+RH finding thrush"]


@pytest.mark.parametrize(
    "said",
    [
        "Both of these horses get eight weeks",
        "These two horses come back in eight weeks",
        "Both these ponies go eight weeks",
    ],
)
def test_weeks_of_both_of_these(read: Read, said: str) -> None:
    tally, buck = read(f"Tally, fronts reset. Buck, trimmed the hinds. {said}.", "Tally", "Buck")
    assert told(tally) == ["- next_visit_weeks 8 planned", "LF+RF work reset"]
    assert told(buck) == ["- next_visit_weeks 8 planned", "LH+RH work trim"]


@pytest.mark.parametrize(
    ("said", "each"),
    [
        (
            "New shoes all round on the two of them, and studs in the hinds",
            ["LF+RF+LH+RH work new_shoe", "LH+RH traction studs"],
        ),
        ("Reset all round on both of them, with studs behind", ["LF+RF+LH+RH work reset", "LH+RH traction studs"]),
        ("New in front on the pair of them, and the hinds trimmed", ["LF+RF work new_shoe", "LH+RH work trim"]),
    ],
)
def test_shoeing_goes_on_of_both(read: Read, said: str, each: list[str]) -> None:
    tally, buck = read(f"Tally and Buck. {said}. Tally's forging. Buck is sound.", "Tally", "Buck")
    assert told(tally) == ["- gait forge", *each]
    assert told(buck) == ["- gait sound", *each]


def test_shoeing_goes_on_of_one(read: Read) -> None:
    said = "New shoes all round on the two of them, and Buck got studs in the hinds"
    tally, buck = read(f"Tally and Buck. {said}. Tally's forging.", "Tally", "Buck")
    assert told(tally) == ["- gait forge", "LF+RF+LH+RH work new_shoe"]
    assert told(buck) == ["LF+RF+LH+RH work new_shoe", "LH+RH traction studs"]
