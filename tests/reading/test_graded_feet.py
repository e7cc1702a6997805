"""A grade on a foot, a degree in doubt, the vet bidden for a day, and a foot that heads a statement of its own.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_grades_and_degrees = reads(
    [
        (
            "Bruise left front, severe I'd say, and a corn right front.",
            ["LF finding bruise ~severe", "RF finding corn"],
        ),
        ("Grade two on the near fore.", ["LF lameness 2"]),
        ("Laminitis, grade two on both fronts.", ["- obel 2", "LF+RF finding laminitis"]),
        ("Left front, emergency. Grade three on it.", ["LF lameness 3"]),
        ("Left hind, he's three out of five on it, no, two, I'd say two.", ["LH lameness 2"]),
        ("Moses, new, no, not new, reset, all four.", ["LF+RF+LH+RH work reset"]),
        ("Off fore sore. Two out of five on that.", ["RF lameness 2"]),
        ("Off fore, grade three on that foot.", ["RF lameness 3"]),
        ("RF, lame. Grade four on it.", ["RF gait lame", "RF lameness 4"]),
        ("Right hind. Lame on it.", ["RH gait lame"]),
        ("Thrush right hind, bad I guess.", ["RH finding thrush ~severe"]),
        (
            "Thrush right hind, bad I reckon, and left hind, thrush too, mild.",
            ["LH finding thrush ~mild", "RH finding thrush ~severe"],
        ),
        ("Thrush right hind, mild I suppose. Corn left hind.", ["LH finding corn", "RH finding thrush ~mild"]),
        ("Toe crack right front, mild I think, left front a corn.", ["LF finding corn", "RF finding crack @toe ~mild"]),
        (
            "Toe crack right front, moderate I guess, and left front, toe crack too, that's a mild one.",
            ["LF finding crack @toe ~mild", "RF finding crack @toe ~moderate"],
        ),
    ],
    "Buck. {}",
)

test_the_vet_and_when = reads(
    [
        ("Vet, today, not tomorrow, told her twice.", ["- vet referral planned"]),
        ("Vet, today.", ["- vet referral planned"]),
        ("Vet tomorrow, I've told them.", ["- vet referral planned"]),
        ("Vet, and soon.", ["- vet referral planned"]),
        ("Vet tonight.", ["- vet referral planned"]),
        ("Vet this week, no later.", ["- vet referral planned"]),
        ("Vet, straight away.", ["- vet referral planned"]),
        ("Vet, please, before the weekend.", ["- vet referral planned"]),
        ("Vet was here yesterday.", []),
        ("Vet today said it's fine.", []),
        ("Vet there today with his machine.", []),
    ],
    "Buck. {}",
)
