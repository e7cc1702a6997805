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

test_both_have_it_foot_by_foot = reads(
    [
        (
            "No thrush in front, but both hinds have it, near hind frog it's mild, off hind sulcus it's bad.",
            ["LF+RF finding thrush absent", "LH finding thrush @frog ~mild", "RH finding thrush @sulcus ~severe"],
        ),
        (
            "No corns in the hinds, the fronts have them, mild in the near fore, severe in the off fore.",
            ["LF finding corn ~mild", "LH+RH finding corn absent", "RF finding corn ~severe"],
        ),
        (
            "No thrush in front, but the hinds have it, off hind severe.",
            ["LF+RF finding thrush absent", "LH finding thrush", "RH finding thrush ~severe"],
        ),
        ("Thrush in the near hind, severe in the off hind.", ["LH finding thrush", "RH finding thrush ~severe"]),
        (
            "A toe crack in the near hind and a corn in the off hind, neither of them more than mild.",
            ["LH finding crack @toe ~mild", "RH finding corn ~mild"],
        ),
        (
            "A bruise in the near fore and a corn in the off fore, neither worse than slight.",
            ["LF finding bruise ~mild", "RF finding corn ~mild"],
        ),
        (
            "A bruise in the near fore, severe, and a corn in the off fore, mild.",
            ["LF finding bruise ~severe", "RF finding corn ~mild"],
        ),
    ],
    "Buck. {}",
)

test_another_one_on_the_other_foot = reads(
    [
        (
            "He's short on the off fore. Sole bruise there, severe, and a mild one in the near fore sole.",
            ["LF finding bruise @sole ~mild", "RF finding bruise @sole ~severe", "RF gait short_stride"],
        ),
        (
            "Off fore. A bruise, moderate, and a severe one in the near fore.",
            ["LF finding bruise ~severe", "RF finding bruise ~moderate"],
        ),
        (
            "Off fore's lame. Abscess there, and a small one in the near fore.",
            ["LF finding abscess ~mild", "RF finding abscess", "RF gait lame"],
        ),
        (
            "Off fore has thrush. A corn as well, mild, and another in the near fore.",
            ["LF finding corn", "RF finding corn ~mild", "RF finding thrush"],
        ),
        (
            "Pulled the near fore. Corn there, moderate, and a severe one in the off.",
            ["LF finding corn ~moderate", "LF work removed", "RF finding corn ~severe"],
        ),
        (
            "Off hind first. Toe crack, mild, and a bad one in the near hind.",
            ["LH finding crack ~severe", "RH finding crack @toe ~mild"],
        ),
        # one only
        ("A corn, and a bad one, in the near fore.", ["LF finding corn ~severe"]),
        ("Corn, a bad one, in the off fore.", ["RF finding corn ~severe"]),
    ],
    "Tally. {}",
)


test_the_bad_one = reads(
    [
        (
            "Off hind's got thrush, in the frog, and so has the near hind, in the frog again, and that's the bad one.",
            ["LH finding thrush @frog ~severe", "RH finding thrush @frog"],
        ),
        (
            "Off hind's got thrush, and so has the near hind, and that's the bad one.",
            ["LH finding thrush ~severe", "RH finding thrush"],
        ),
        (
            "Thrush in the off hind, and the near hind too, that's the bad one.",
            ["LH finding thrush ~severe", "RH finding thrush"],
        ),
        ("Thrush in the off hind, bad, and so has the near hind.", ["LH+RH finding thrush ~severe"]),
        ("Thrush in the off hind, and so has the near hind, mild.", ["LH finding thrush ~mild", "RH finding thrush"]),
    ]
)

test_a_degree_between_a_finding_and_its_foot = reads(
    [
        (
            "Moderate flare on both fronts and a little thrush, mild, in the right hind frog.",
            ["LF+RF finding flare ~moderate", "RH finding thrush @frog ~mild"],
        ),
        (
            "Flare on both fronts, thrush, bad, in the left hind.",
            ["LF+RF finding flare", "LH finding thrush ~severe"],
        ),
        (
            "Corns on both fronts and a crack, moderate, at the toe of the left hind.",
            ["LF+RF finding corn", "LH finding crack @toe ~moderate"],
        ),
        (
            "Flare on both hinds, and a bruise, slight, near fore sole.",
            ["LF finding bruise @sole ~mild", "LH+RH finding flare"],
        ),
        (
            "A corn in the near fore and a bruise, mild, in the off fore.",
            ["LF finding corn", "RF finding bruise ~mild"],
        ),
        (
            "Flare on both fronts and thrush, mild, in the right hind, and a corn in the left hind.",
            ["LF+RF finding flare", "LH finding corn", "RH finding thrush ~mild"],
        ),
        (
            "Thrush, mild, in the left hind and moderate in the right hind.",
            ["LH finding thrush ~mild", "RH finding thrush ~moderate"],
        ),
        ("Near fore, a corn, mild, off fore, a bruise.", ["LF finding corn ~mild", "RF finding bruise"]),
        (
            "Left front, thrush and a corn, mild, in the right front a bruise.",
            ["LF finding corn ~mild", "LF finding thrush", "RF finding bruise"],
        ),
        (
            "Thrush in the near hind and a corn, mild, off fore had a bruise.",
            ["LH finding corn ~mild", "LH finding thrush", "RF finding bruise"],
        ),
        (
            "Left front, thrush and a corn, mild, right front reset.",
            ["LF finding corn ~mild", "LF finding thrush", "RF work reset"],
        ),
    ],
    "Tally. {}",
)
