"""Several horses told at once: each of them gets what is said of all.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read

FEET = ("LF", "RF", "LH", "RH")


def told(read: Read, text: str) -> set[tuple[str | None, str | None, str, str]]:
    visits = read(text, "Tally", "Buck", "Sable")
    return {(v.horse, f.foot, f.slot, str(f.value)) for v in visits for f in v.facts}


@pytest.mark.parametrize(
    "text",
    [
        "Tally, Buck and Sable, all three trimmed.",
        "Tally, Buck and Sable all got trimmed.",
        "Tally, Buck and Sable. All three trimmed, all four feet.",
        "Tally, Buck and Sable, and all three got all four trimmed.",
        "Three today, Tally, Buck and Sable. All trimmed.",
        "Trimmed Tally, Buck and Sable.",
        "Did Tally, Buck and Sable. All of them trimmed all round.",
    ],
)
def test_all_were_trimmed(read: Read, text: str) -> None:
    assert told(read, text) == {(horse, foot, "work", "trim") for horse in ("Tally", "Buck", "Sable") for foot in FEET}


@pytest.mark.parametrize(
    "text",
    [
        "Tally and Buck, every one of them reset in front and trimmed behind.",
        "Tally and Buck, both reset in front and trimmed behind.",
        "Tally and Buck are both reset in front and trimmed behind.",
        "Tally and Buck both got resets in front and trims behind.",
        "Tally and Buck, same job, fronts reset, hinds trimmed.",
    ],
)
def test_both_were_reset_in_front_and_trimmed_behind(read: Read, text: str) -> None:
    work = {"LF": "reset", "RF": "reset", "LH": "trim", "RH": "trim"}
    assert told(read, text) == {(horse, foot, "work", work[foot]) for horse in ("Tally", "Buck") for foot in FEET}


@pytest.mark.parametrize(
    "text",
    [
        "Tally and Buck both reset in front, ones on Tally, twos on Buck.",
        "Tally and Buck both reset in front. Ones on Tally and twos on Buck.",
    ],
)
def test_each_has_its_size(read: Read, text: str) -> None:
    sizes = {fact for fact in told(read, text) if fact[2] != "work"}
    assert sizes == {
        *{("Tally", foot, "shoe_size", "1") for foot in ("LF", "RF")},
        *{("Buck", foot, "shoe_size", "2") for foot in ("LF", "RF")},
    }


@pytest.mark.parametrize(
    ("text", "weeks"),
    [
        ("Tally in six weeks, and Buck, I told them five but write down four.", {"Tally": "6.0", "Buck": "4.0"}),
        ("Tally six weeks, Buck, make it four.", {"Tally": "6.0", "Buck": "4.0"}),
        ("Tally can go ten weeks, Buck can't go past five.", {"Tally": "10.0", "Buck": "5.0"}),
        ("Tally in a week, Buck in, uh, four.", {"Tally": "1.0", "Buck": "4.0"}),
        ("Tally and Buck. Put the whole bunch down for six weeks.", {"Tally": "6.0", "Buck": "6.0"}),
    ],
)
def test_each_has_its_weeks(read: Read, text: str, weeks: dict[str, str]) -> None:
    assert told(read, text) == {(horse, None, "next_visit_weeks", count) for horse, count in weeks.items()}


def test_what_follows_one_name_is_its_own(read: Read) -> None:
    facts = told(read, "Tally and Buck, trims. Tally has thrush in the left hind.")
    assert {fact for fact in facts if fact[2] == "finding"} == {("Tally", "LH", "finding", "thrush")}


def test_scores_denials_and_weeks_are_dealt_out(read: Read) -> None:
    text = (
        "Tally, Buck and Sable all trimmed. No laminitis in any of the three. "
        "Condition, Tally six, Buck four, Sable a seven. All back in eight weeks, no, Buck can go ten."
    )
    facts = {fact for fact in told(read, text) if fact[2] != "work"}
    weeks = {"Tally": "8.0", "Buck": "10.0", "Sable": "8.0"}
    score = {"Tally": "6.0", "Buck": "4.0", "Sable": "7.0"}
    assert facts == {
        *{(horse, None, "finding", "laminitis") for horse in weeks},
        *{(horse, None, "body_condition", count) for horse, count in score.items()},
        *{(horse, None, "next_visit_weeks", count) for horse, count in weeks.items()},
    }
