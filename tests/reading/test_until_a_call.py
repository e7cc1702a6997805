"""An interval until somebody rings or looks is no next visit."""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

NO_VISIT = [
    "Call me in a week if he's sore.",
    "Give me a ring in ten days if she isn't right.",
    "They'll ring me in a month unless he throws one.",
    "Told her to text me in a fortnight if the crack opens.",
    "Let me know in a week how he is.",
    "Send me a picture in two weeks.",
    "In a week, if he's sore, ring me.",
    "I'll phone her in ten days to see how he is.",
]
VISIT = {
    "I'll call back in six weeks if he's sound.": 6,
    "Six weeks, but ring me in a week if he's sore.": 6,
    "Five weeks, ring me if he's sore.": 5,
    "Let me know how he goes, see him in five weeks.": 5,
    "I'll see her in seven weeks if she rings me.": 7,
    "See him in six weeks if not before.": 6,
    "I'll be back in a week if he's still lame, otherwise six.": 6,
    "Back in two weeks if it's still draining. If not, then it's seven.": 7,
    "I'll be back in a week if he's still lame.": 1,
    "Give it four weeks, and if the soreness goes we'll leave it.": 4,
    "I'll see him with the vet in three weeks.": 3,
    "The vet says see him in four weeks.": 4,
}


@pytest.mark.parametrize("text", NO_VISIT)
def test_the_interval_is_until_a_call(read: Read, text: str) -> None:
    (visit,) = read(text, *NAMES)
    assert not [fact for fact in visit.facts if fact.slot == "next_visit_weeks"]


@pytest.mark.parametrize("text", VISIT)
def test_the_interval_is_until_the_visit(read: Read, text: str) -> None:
    (visit,) = read(text, *NAMES)
    assert told(visit) == [f"- next_visit_weeks {VISIT[text]} planned"]


OF_THE_VET = (
    "Give it a week and call the vet if he's no better.",
    "The vet's to see him in a week if he's lame.",
    "Vet to come out in two weeks.",
)


@pytest.mark.parametrize("text", OF_THE_VET)
def test_the_interval_is_the_vets(read: Read, text: str) -> None:
    (visit,) = read(text, *NAMES)
    assert told(visit) == ["- vet referral planned"]


test_perhaps_a_week_more = reads(
    [
        ("Six, maybe seven weeks.", ["- next_visit_weeks 6 planned"]),
        ("Five, maybe six, weeks.", ["- next_visit_weeks 5 planned"]),
        ("See him in six, perhaps seven weeks.", ["- next_visit_weeks 6 planned"]),
        ("Back in four, could be five weeks.", ["- next_visit_weeks 4 planned"]),
        ("Six or maybe even seven weeks.", ["- next_visit_weeks 6 planned"]),
        ("Six, no, seven weeks.", ["- next_visit_weeks 7 planned"]),
        ("Six, make it seven weeks.", ["- next_visit_weeks 7 planned"]),
        ("Fronts, size six, maybe seven weeks.", ["- next_visit_weeks 7 planned", "LF+RF shoe_size 6"]),
        ("Fronts, six nails, maybe seven weeks.", ["- next_visit_weeks 7 planned", "LF+RF nails 6"]),
    ],
    "Tansy. {}",
)

test_not_back_till = reads(
    [
        ("They've got a show in three weeks but I won't be back till six.", ["- next_visit_weeks 6 planned"]),
        ("The show's in two weeks, I won't be out till five.", ["- next_visit_weeks 5 planned"]),
        ("Usually eight weeks but I won't be back till ten.", ["- next_visit_weeks 10 planned"]),
        ("He's due in four weeks, but we won't be back until five.", ["- next_visit_weeks 5 planned"]),
        ("They've a show in three weeks but I won't be back till six tonight.", []),
        ("They've a show in three weeks, I'm not home till six.", []),
        ("Show in three weeks but I won't be back until the sixth.", []),
        ("I won't be back till six.", []),
    ],
    "Tansy. {}",
)
