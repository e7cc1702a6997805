"""Whole sentences with a trap in them: no full stops, feet set against each other, then and now, who does what."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES: dict[str, list[str]] = {
    "left front no thrush right front thrush": ["LF finding thrush absent", "RF finding thrush"],
    "near fore no heat off fore bounding pulse": ["LF finding heat absent", "RF pulse bounding"],
    "left hind thrush right hind no thrush": ["LH finding thrush", "RH finding thrush absent"],
    "left front toe angle fifty right front fifty two": ["LF toe_angle 50", "RF toe_angle 52"],
    "left front lame right front sound": ["LF gait lame", "RF gait sound"],
    "Left front and right front both have thrush, left hind doesn't.": [
        "LF+RF finding thrush",
        "LH finding thrush absent",
    ],
    "The right front is fine, it's the left front that has the abscess.": ["LF finding abscess"],
    "It's not the left front, it's the right front that's got thrush.": ["RF finding thrush"],
    "Not the near fore but the off fore has a corn.": ["RF finding corn"],
    "The left front one has a corn, the right front one a bruise.": ["LF finding corn", "RF finding bruise"],
    "Left front's worse than the right front, both have thrush.": ["LF+RF finding thrush"],
    "Toe angles, left front 52 and right front 53.": ["LF toe_angle 52", "RF toe_angle 53"],
    "Six nails left front, five right front, six each behind.": ["LF+LH+RH nails 6", "RF nails 5"],
    "Pulled a nail from the left front.": [],
    "Left front lost a nail.": [],
    "Clipped one nail short on the right hind.": [],
    "Barefoot behind.": ["LH+RH work trim"],
    "Didn't reset the hinds, just trimmed.": ["LH+RH work trim"],
    "He's sound.": ["- gait sound"],
    "He isn't sound.": ["- gait lame"],
    "Don't call the vet yet.": ["- vet referral absent"],
    "I'd get the vet if it were mine.": ["- vet referral planned"],
    "Owner will call the vet if he's not better in a week.": ["- vet referral planned"],
    "Vet said it's an abscess in the left front.": ["LF finding abscess"],
    "According to the vet there's navicular in the left front.": ["LF finding navicular"],
    "Testers didn't bother him on the left front.": ["LF tester none"],
    "Not a thing on the testers, left front.": ["LF tester none"],
    "Left front testers nothing, nothing, nothing.": ["LF tester none"],
    "Left front no reaction to testers but a strong pulse.": ["LF tester none", "LF pulse raised"],
    "No pulse in the left front.": ["LF pulse normal"],
    "Can't feel a pulse in the left front.": ["LF pulse normal"],
    "Left front, no bounding pulse.": ["LF pulse normal"],
    "Pulse isn't bounding any more, left front.": ["LF pulse normal"],
    "Obel two, no, one.": ["- obel 1"],
    "He scored a five, body condition.": ["- body_condition 5"],
}


@pytest.mark.parametrize("text", CASES)
def test_trap(text: str, read: Read) -> None:
    (visit,) = read(text)
    assert told(visit) == sorted(CASES[text])
