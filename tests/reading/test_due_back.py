"""What is planned for a horse that is named with its weeks in the midst of another's talk.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

BEFORE = "Tally. Corn in the left front. Buck, trimmed all four. "
CORN, TRIM = "LF finding corn", "LF+RF+LH+RH work trim"
CASES = [
    (
        "I'm back for Tally in two weeks, and when it's dry she gets a new shoe on the left hind with a full pad. "
        "Buck's on eight.",
        ["- next_visit_weeks 2 planned", CORN, "LH pad full planned", "LH work new_shoe planned"],
        ["- next_visit_weeks 8 planned", TRIM],
    ),
    (
        "I'll be back for Tally in ten days and she'll get a new shoe on the left hind. Buck can go eight weeks.",
        ["- next_visit_weeks 1.4 planned", CORN, "LH work new_shoe planned"],
        ["- next_visit_weeks 8 planned", TRIM],
    ),
    (
        "Six weeks for Tally, and she'll want bar shoes in front. Buck eight.",
        ["- next_visit_weeks 6 planned", CORN, "LF+RF shoe_type bar planned"],
        ["- next_visit_weeks 8 planned", TRIM],
    ),
    (
        "I need to see Tally again in three weeks, if she's not right the vet's to look. Buck's on eight.",
        ["- next_visit_weeks 3 planned", "- vet referral planned", CORN],
        ["- next_visit_weeks 8 planned", TRIM],
    ),
    (
        "Tally in four weeks. If that corn's no better I'll put a bar shoe on the left front. Buck in eight.",
        ["- next_visit_weeks 4 planned", CORN, "LF shoe_type bar planned"],
        ["- next_visit_weeks 8 planned", TRIM],
    ),
    (
        "I'm back for Tally in two weeks. If it's no better she gets a bar shoe on the left front. Buck's on eight.",
        ["- next_visit_weeks 2 planned", CORN, "LF shoe_type bar planned"],
        ["- next_visit_weeks 8 planned", TRIM],
    ),
    (
        "Six weeks for Tally, and eight for Buck, and he gets trimmed again then.",
        ["- next_visit_weeks 6 planned", CORN],
        ["- next_visit_weeks 8 planned", TRIM],
    ),
]


@pytest.mark.parametrize(("text", "first", "second"), CASES, ids=[text for text, _, _ in CASES])
def test_planned_for_the_horse_that_is_due(read: Read, text: str, first: list[str], second: list[str]) -> None:
    tally, buck = read(BEFORE + text, "Tally", "Buck")
    assert (told(tally), told(buck)) == (first, second)


NOT_DENIED = [
    "If she's not right the vet's to look.",
    "If it's not settled the vet can look.",
    "If there's no change the vet's to look at it.",
    "If he isn't sound by Friday it's one for the vet.",
    "If it doesn't drain by Monday her vet comes out.",
    "If he isn't any better the vet's booked for Monday.",
    "If he's not sound get the vet out.",
]
DENIED = [
    "If he's right we don't need the vet.",
    "If he's sound don't ring the vet.",
    "If he comes right there's no call to bother the vet.",
    "If he's sound there's no need for the vet.",
]


@pytest.mark.parametrize(
    ("text", "status"),
    [*((t, "planned") for t in NOT_DENIED), *((t, "absent") for t in DENIED)],
    ids=NOT_DENIED + DENIED,
)
def test_the_vet_behind_a_denied_condition(read: Read, text: str, status: str) -> None:
    (visit,) = read(f"Tally. Corn in the left front. {text}", "Tally")
    assert told(visit) == [f"- vet referral {status}", CORN]


NO_TURN_IN_A_CORRECTION = [
    (
        "Tally. Eight weeks, no, Buck's eight, he's six. Trimmed all round.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"], "Buck": ["- next_visit_weeks 8 planned"]},
    ),
    (
        "Tally. Trimmed all round. Seven weeks, no, wait, Buck's seven, make Tally five. No heat in the near fore.",
        {
            "Tally": ["- next_visit_weeks 5 planned", "LF finding heat absent", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 7 planned"],
        },
    ),
    (
        "Tally. Trimmed in front. Eight weeks. No, Buck's eight, she's six. Hinds trimmed too.",
        {"Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"], "Buck": ["- next_visit_weeks 8 planned"]},
    ),
    (
        "Tally trimmed all round. Buck. Reset all round. Six weeks, sorry, Tally's six, he's eight.",
        {
            "Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work reset"],
        },
    ),
    (
        "Tally. New fronts, size two, no, Buck's a two, she's a one. Seven nails.",
        {"Tally": ["LF+RF nails 7", "LF+RF shoe_size 1", "LF+RF work new_shoe"]},
    ),
    (
        "Tally. Trimmed all round, six weeks. Buck's eight weeks. Trimmed all round.",
        {
            "Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally. Trimmed all round, six weeks, no, Buck, new shoes in front, size one.",
        {
            "Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["LF+RF shoe_size 1", "LF+RF work new_shoe"],
        },
    ),
    ("Tally. No, sorry, Buck's first. Trimmed all round.", {"Buck": ["LF+RF+LH+RH work trim"]}),
]


@pytest.mark.parametrize(("text", "facts"), NO_TURN_IN_A_CORRECTION, ids=[case[0] for case in NO_TURN_IN_A_CORRECTION])
def test_no_turn_in_a_correction(read: Read, text: str, facts: dict[str, list[str]]) -> None:
    assert {v.horse: told(v) for v in read(text, "Tally", "Buck")} == facts


_IN_THREE, _RESET = "- next_visit_weeks 3 planned", "LF+RF+LH+RH work reset"
_SEDATED = "- manner sedated planned"

test_back_in_so_many_sedated = reads(
    [
        ("Reset. Back in three, sedated.", [_SEDATED, _IN_THREE, _RESET]),
        ("Reset. Back in three and sedated, please.", [_SEDATED, _IN_THREE, _RESET]),
        ("Reset. Back in three with sedation.", [_SEDATED, _IN_THREE, _RESET]),
        ("Reset. See him in three, doped.", [_SEDATED, _IN_THREE, _RESET]),
        ("Reset. Three weeks, with sedation.", [_SEDATED, _IN_THREE, _RESET]),
        # of today, or no weeks
        ("Reset, three weeks, sedated today.", ["- manner sedated", _IN_THREE, _RESET]),
        ("Reset. Three weeks, he was sedated.", ["- manner sedated", _IN_THREE, _RESET]),
        ("Reset, sedated. Back in three.", ["- manner sedated", _IN_THREE, _RESET]),
        ("Reset all round. Put him back in threes.", ["LF+RF+LH+RH shoe_size 3", _RESET]),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize("said", ["Back in three.", "See him in three.", "Due in three, weather permitting."])
def test_weeks_without_the_word_are_placed(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. Reset all round. {said}", *NAMES)
    assert told(visit) == [_IN_THREE, _RESET]
    assert not visit.flags
