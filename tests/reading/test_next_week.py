"""Coming back next week is a week on, next month four; what others do next week is no visit."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. I'll see her next week.", ["- next_visit_weeks 1 planned"]),
    ("Tally. See him next week.", ["- next_visit_weeks 1 planned"]),
    ("Tally. Back next week to look at that foot.", ["- next_visit_weeks 1 planned"]),
    ("Tally. Next visit the week after next.", ["- next_visit_weeks 2 planned"]),
    ("Tally. I'm due back next month.", ["- next_visit_weeks 4 planned"]),
    ("Tally. Booked for next month.", ["- next_visit_weeks 4 planned"]),
    ("Tally. I'll drop in next week.", ["- next_visit_weeks 1 planned"]),
    ("Buck. See them again next week.", ["- next_visit_weeks 1 planned"]),
    ("Buck. I'll call back next week.", ["- next_visit_weeks 1 planned"]),
    ("Buck. See her the week after next.", ["- next_visit_weeks 2 planned"]),
    ("Buck. The vet's back next week.", []),
    ("Buck. They race next week.", []),
    ("Buck. He isn't due till next week.", []),
]

test_next_week = reads(CASES)

test_weeks_just_told_are_put_right = reads(
    [
        (
            "Back in three weeks. No, the vet has to see him first, so let's make that four.",
            ["- next_visit_weeks 4 planned", "- vet referral planned"],
        ),
        ("Three weeks. No, vet first, so let's say four weeks.", ["- next_visit_weeks 4 planned"]),
        (
            "Back in six weeks. Actually he's away hunting then and the owner's gone after, let's call it eight.",
            ["- next_visit_weeks 8 planned"],
        ),
        (
            "Back in six weeks. No, he had seven nails in front, let's call that eight nails.",
            ["- next_visit_weeks 6 planned", "LF+RF nails 8"],
        ),
    ],
    "Buck. {}",
)
