"""Weeks for the pair in a sentence of their own, and a number behind a name and a filler."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES: list[tuple[str, dict[str | None, list[str]]]] = [
    (
        "Tally trimmed. Buck trimmed. Both in six.",
        {
            "Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. I figured on eight weeks, but Buck comes due in seven and both may be seven.",
        {
            "Tally": ["- next_visit_weeks 7 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 7 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. Six weeks for both, but Buck gets eight.",
        {
            "Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally. He forges. Buck. She overreaches. Tally four weeks, and her, well, I'll see her in one.",
        {
            "Tally": ["- gait forge", "- next_visit_weeks 4 planned"],
            "Buck": ["- gait overreach", "- next_visit_weeks 1 planned"],
        },
    ),
    (
        "Tally. He forges. Buck. He overreaches. Tally four weeks, and I'll see him in four.",
        {"Tally": ["- gait forge", "- next_visit_weeks 4 planned"], "Buck": ["- gait overreach"]},
    ),
    (
        "Tally trimmed. Buck trimmed. The pair in five.",
        {
            "Tally": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. The pair of them again in seven.",
        {
            "Tally": ["- next_visit_weeks 7 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 7 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. All of them in six.",
        {
            "Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. The two of them back in four.",
        {
            "Tally": ["- next_visit_weeks 4 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 4 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. Both are due in eight.",
        {
            "Tally": ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. Everybody in five.",
        {
            "Tally": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. Both on six.",
        {
            "Tally": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. The both of them can go to ten.",
        {
            "Tally": ["- next_visit_weeks 10 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 10 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. Tally's four weeks, Buck's, hmm, eight.",
        {
            "Tally": ["- next_visit_weeks 4 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. Tally's in five weeks, Buck's, uh, six.",
        {
            "Tally": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. Buck trimmed. Five weeks for Tally, Buck, hmm, seven.",
        {
            "Tally": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 7 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally, eight weeks. Buck lost his near fore. He can come in with the rest of them in four weeks.",
        {"Tally": ["- next_visit_weeks 8 planned"], "Buck": ["- next_visit_weeks 4 planned", "LF shoe_state lost"]},
    ),
    (
        "Tally, eight weeks. Buck, near fore reset, he can go with the others, six weeks.",
        {"Tally": ["- next_visit_weeks 8 planned"], "Buck": ["- next_visit_weeks 6 planned", "LF work reset"]},
    ),
    (
        "Tally, eight weeks. Buck, near fore reset. Buck's on his usual six.",
        {"Tally": ["- next_visit_weeks 8 planned"], "Buck": ["- next_visit_weeks 6 planned", "LF work reset"]},
    ),
    ("Tally. Reset both fronts. Both in size six.", {"Tally": ["LF+RF shoe_size 6", "LF+RF work reset"]}),
    ("Tally. New shoes in front. Both in steel.", {"Tally": ["LF+RF shoe_material steel", "LF+RF work new_shoe"]}),
]


@pytest.mark.parametrize(("text", "expected"), CASES, ids=[case[0] for case in CASES])
def test_pair_weeks(read: Read, text: str, expected: dict[str | None, list[str]]) -> None:
    assert {v.horse: told(v) for v in read(text, "Tally", "Buck")} == expected


TRIM, SIX = "LF+RF+LH+RH work trim", "- next_visit_weeks 6 planned"
OF_THREE = [
    (f"{led} {told_of} {weeks}", {"Tally": [SIX, TRIM], "Buck": [SIX, TRIM]})
    for led, told_of, weeks in (
        ("Tally and Buck today, Sable's next week, she's in foal.", "Tally trimmed. Buck trimmed.", "Both in six."),
        ("Tally and Buck today, Sable's tomorrow.", "Tally trimmed. Buck trimmed.", "Six weeks for the pair of them."),
        ("I'm doing Sable next week.", "Tally trimmed. Buck trimmed.", "Six weeks for both."),
        ("Tally trimmed.", "Buck trimmed. Sable's on Thursday instead, she was out.", "All back in six weeks."),
        ("Tally trimmed.", "Buck trimmed. Sable isn't due.", "Six weeks for the two of them."),
    )
] + [
    (
        "Tally trimmed. Buck trimmed. Sable trimmed, she's racing next week. Six weeks for all of them.",
        {"Tally": [SIX, TRIM], "Buck": [SIX, TRIM], "Sable": [SIX, TRIM]},
    ),
    (
        "Tally trimmed. Sable's next, trimmed. Buck trimmed. All back in six weeks.",
        {"Tally": [SIX, TRIM], "Sable": [SIX, TRIM], "Buck": [SIX, TRIM]},
    ),
]


@pytest.mark.parametrize(("text", "expected"), OF_THREE, ids=[case[0] for case in OF_THREE])
def test_one_of_another_day(read: Read, text: str, expected: dict[str | None, list[str]]) -> None:
    assert {v.horse: told(v) for v in read(text, "Tally", "Buck", "Sable")} == expected
