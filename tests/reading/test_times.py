"""When to come back, what is no next visit, and whether the vet should look."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = {
    "weeks": ("Six weeks.", ["- next_visit_weeks 6 planned"]),
    "back in": ("Back in eight weeks.", ["- next_visit_weeks 8 planned"]),
    "range": ("See her in six to seven weeks.", ["- next_visit_weeks 6 planned"]),
    "or": ("Five or six weeks.", ["- next_visit_weeks 5 planned"]),
    "fortnight": ("See him again in a fortnight.", ["- next_visit_weeks 2 planned"]),
    "a month": ("Back in a month.", ["- next_visit_weeks 4 planned"]),
    "ten days": ("I'll be back in fourteen days.", ["- next_visit_weeks 2 planned"]),
    "week's time": ("Back in five weeks' time.", ["- next_visit_weeks 5 planned"]),
    "a week": ("I'll look at him again in a week.", ["- next_visit_weeks 1 planned"]),
    "past ago": ("He was done seven weeks ago.", []),
    "past since": ("It's ten weeks since he was done.", []),
    "let go": ("They'd let him go nine weeks.", []),
    "will let go": ("We'll let him go nine weeks.", ["- next_visit_weeks 9 planned"]),
    "overdue": ("Three weeks overdue.", []),
    "box rest": ("Keep him on two weeks of box rest.", []),
    "show": ("There's a show in three weeks.", []),
    "book": ("Booked him for six weeks.", ["- next_visit_weeks 6 planned"]),
    "every": ("Keep him on a six week cycle.", ["- next_visit_weeks 6 planned"]),
    "vet ring": ("Ring the vet about the left front.", ["- vet referral planned"]),
    "vet should": ("The vet should look at him.", ["- vet referral planned"]),
    "no need": ("No need to call the vet.", ["- vet referral absent"]),
    "vet was": ("The vet was out last week.", []),
    "antibiotics": ("He's on antibiotics for two weeks.", []),
    "last two weeks": ("He's been off for the last two weeks.", []),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)
