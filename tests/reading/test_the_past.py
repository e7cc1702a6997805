"""What was at an earlier time, by every frame it is told in and every word for the time, beside what is of today.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from itertools import product

from tests.reading.conftest import reads

_TIMES = (
    "last time", "last go round", "the shoeing before last", "the cycle before", "last week", "the other week",
    "ten days ago", "a couple of shoeings ago", "early in the year", "when he came off the track",
    "when he first came to me", "before they bought him", "earlier in his life", "before me",
)  # fmt: skip
_FOUND = (
    "He had a corn in the left front {}.",
    "He'd a corn in the left front {}.",
    "He's the one that had a corn in the left front {}.",
    "Owner says he had a corn in the left front {}.",
    "Corn in the left front. That was {}.",
    "Corn in the left front, that was {}.",
)
_LEADING = (
    "{}, he had a corn in the left front.",
    "{} he had a corn in the left front.",
    "{}, a corn, left front.",
)
_IN_FORM = "Tally. Flare on the right hind. {} Right front has a keratoma. Six weeks."
_BESIDE = ["- next_visit_weeks 6 planned", "RF finding keratoma", "RH finding flare"]

test_found_then = reads(
    [
        *((f.format(when), ["LF finding corn history"]) for f, when in product(_FOUND, _TIMES[:-1])),
        *((f.format(when).capitalize(), ["LF finding corn history"]) for f, when in product(_LEADING, _TIMES)),
    ],
    "Tally. {}",
)

test_what_stands_beside_it_stays = reads(
    [
        (frame.format(when), sorted([*_BESIDE, "LF finding corn history"]))
        for frame, when in product(_FOUND[::2], _TIMES[::3])
    ],
    _IN_FORM,
)

_THEN_AND_NOW = [
    (
        ("Thrush in the left front. Severe {}. Mild today.", "Mild thrush in the left front today, severe {}."),
        ["LF finding thrush history ~severe", "LF finding thrush ~mild"],
    ),
    (
        (
            "Testers mild on the left front, they were strong {}.",
            "Testers mild on the left front, strong {}.",
            "He was strong to the testers on the left front {}. Mild today.",
        ),
        ["LF tester mild", "LF tester strong history"],
    ),
    (
        ("Pulse raised in the left front, bounding {}.", "Pulse raised in the left front, it was bounding {}."),
        ["LF pulse bounding history", "LF pulse raised"],
    ),
    (
        (
            "He was three out of five on the left front {}, one out of five today.",
            "One out of five on the left front today, three out of five {}.",
        ),
        ["LF lameness 1", "LF lameness 3 history"],
    ),
    (
        (
            "Toe angle on the left front was 50 {}. It's 52 today.",
            "Toe angle on the left front 52, 50 {}.",
            "Toe angle on the left front gone from 50 {} to 52 today.",
        ),
        ["LF toe_angle 50 history", "LF toe_angle 52"],
    ),
    (
        ("Rim pad on the left front this time, not the leather pad he had {}.",),
        ["LF pad leather history", "LF pad rim"],
    ),
]

test_then_and_now = reads(
    [
        (frame.format(when), facts)
        for frames, facts in _THEN_AND_NOW
        for frame, when in product(frames, ("last time", "three weeks ago", "last week", "the shoeing before last"))
    ],
    "Tally. {}",
)

test_changed_for_another = reads(
    [
        ("Fronts went from quarter clips to toe clips.", ["LF+RF clips quarter history", "LF+RF clips toe"]),
        ("Fronts went from wedge pads to leather pads.", ["LF+RF pad leather", "LF+RF pad wedge history"]),
        (
            "Swapped the aluminum in front for steel.",
            ["LF+RF shoe_material aluminum history", "LF+RF shoe_material steel"],
        ),
        (
            "Was in egg bars in front, now in wide webs.",
            ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type wide_web"],
        ),
        ("Somebody before me put egg bars on the fronts.", ["LF+RF shoe_type egg_bar history"]),
        ("He had wedge pads in front before the show.", ["LF+RF pad wedge history"]),
    ],
    "Tally. {}",
)

test_quicked_by_himself = reads(
    [
        ("I pricked him last week in the left front.", ["LF finding quicked history"]),
        ("I quicked him in the left front last week.", ["LF finding quicked history"]),
        ("I quicked him on Tuesday, left front.", ["LF finding quicked history"]),
    ],
    "Tally. {}",
)

test_not_the_past = reads(
    [
        ("He lost the left front on Tuesday.", ["LF shoe_state lost"]),
        ("Somebody quicked him last week, left front.", ["LF finding quicked"]),
        ("I quicked him, left front.", ["LF finding quicked"]),
        ("Reset the fronts before the show.", ["LF+RF work reset"]),
        ("He was due before the show. Leather pads in front.", ["LF+RF pad leather"]),
        ("Thrush in the left front since last week.", ["LF finding thrush"]),
        ("Thrush in the left front, worse than last week.", ["LF finding thrush"]),
        ("Corn in the left front. That was there last time.", ["LF finding corn"]),
        ("He has a corn in the left front, they found it last week.", ["LF finding corn"]),
        ("Owner says he had a corn in the left front.", []),
        ("Mild thrush in the left front, same as last time.", ["LF finding thrush ~mild"]),
        ("Rim pad on the left front, not the leather pad.", ["LF pad leather absent", "LF pad rim"]),
    ],
    "Tally. {}",
)

test_when_they_met = reads(
    [
        (
            "Toe angle fifty on both fores, and they were both forty-five when I met him.",
            ["LF+RF toe_angle 45 history", "LF+RF toe_angle 50"],
        ),
        ("He had a corn in the left front when I first met her.", ["LF finding corn history"]),
        ("She was in egg bars in front when I first saw her.", ["LF+RF shoe_type egg_bar history"]),
        (
            "He had rubber shoes on both fronts when they lived in town.",
            ["LF+RF shoe_material rubber history"],
        ),
        ("Leather pads on both fronts when he was living over the hill.", ["LF+RF pad leather history"]),
        ("I was glad when I saw him. Corn in the left front.", ["LF finding corn"]),
        ("They live in town. Rubber shoes on both fronts.", ["LF+RF shoe_material rubber"]),
    ],
    "Tally. {}",
)

test_pricked_by_me_some_days_ago = reads(
    [
        ("Near fore, I pricked that one last week and he's none the worse.",
         ["LF finding quicked history"]),
        ("I pricked the off hind last week, he's none the worse for it.",
         ["RH finding quicked history"]),
        ("Left fore, quicked him, and he's lame on it.",
         ["LF finding quicked", "LF gait lame"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_one_then_named = reads(
    [
        ("She had one of these in the left hind last spring, an abscess I mean.", ["LH finding abscess history"]),
        (
            "I suspect an abscess near fore. She had one in the left hind last spring, an abscess I mean.",
            ["LF finding abscess suspected", "LH finding abscess history"],
        ),
        ("He had that in the off fore last year, I mean the corn.", ["RF finding corn history"]),
        ("There's one in the near fore, a corn I mean.", ["LF finding corn"]),
        ("It was dry last time, a corn in the near fore.", ["LF finding corn"]),
        ("That was fine in May, a corn now off fore.", ["RF finding corn"]),
    ],
    "Tansy. {}",
)

_FOUNDERED = "LF+RF finding laminitis history"
test_what_still_goes_on_since_then = reads(
    [
        ("Boots on both fronts since she foundered last spring.", [_FOUNDERED, "LF+RF shoe_type boot"]),
        ("Heart bars in front since she had laminitis in March.", [_FOUNDERED, "LF+RF shoe_type heart_bar"]),
        ("He's had leather pads in front since the tendon went last summer.", ["LF+RF pad leather"]),
        ("He's been in bars in front since last spring.", ["LF+RF shoe_type bar"]),
        ("Since she foundered last spring she's been in boots on both fronts.",
         [_FOUNDERED, "LF+RF shoe_type boot"]),
        ("She's had thrush in the near hind since she was out last winter.", ["LH finding thrush"]),
        ("Flat sole near fore since he foundered two years ago.",
         ["LF finding flat_sole", "LF finding laminitis history"]),
        # of then, or until today
        ("She had boots on both fronts when she foundered last spring.",
         [_FOUNDERED, "LF+RF shoe_type boot history"]),
        ("She was in boots on both fronts since she foundered last spring, now it's rims.",
         [_FOUNDERED, "LF+RF shoe_type boot history", "LF+RF shoe_type rim"]),
        ("In an egg bar near fore since she foundered last spring, plain today.",
         ["LF finding laminitis history", "LF shoe_type egg_bar history", "LF shoe_type plain"]),
        ("Six weeks since I trimmed her last spring, flare in front.",
         ["LF+RF finding flare", "LF+RF+LH+RH work trim history"]),
        ("She had an abscess near fore last spring, no trouble since.", ["LF finding abscess history"]),
    ],
    "Tally. {}",
)  # fmt: skip


test_a_case_of_then = reads(
    [
        (
            "Founder case from the winter, Obel was a three then, today I'd say one.",
            ["- finding laminitis history", "- obel 1", "- obel 3 history"],
        ),
        (
            "Laminitis case from January. Heart bars in front.",
            ["- finding laminitis history", "LF+RF shoe_type heart_bar"],
        ),
        ("Founder case. Heart bars in front.", ["- finding laminitis", "LF+RF shoe_type heart_bar"]),
        ("Founder case since the spring.", ["- finding laminitis"]),
        ("Reset in front. They are last cycle's", ["LF+RF work reset"]),  # the memo breaks off
        ("Growth rings from the winter on both fores.", ["LF+RF finding growth_rings"]),
    ]
)
