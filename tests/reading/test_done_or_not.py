"""What was done, meant, offered, refused, left to others, and measured: frames by what is told, on a foot of their own.

A neighbour on another foot, before it or behind, must stay as it is. The forms are common practice, no source.
"""

from __future__ import annotations

from itertools import product

from tests.reading.conftest import reads

_BASE = ["LH finding flare ~mild", "LH+RH work trim"]
_BEHIND = "Tally. Trimmed the hinds. {} Mild flare on the left hind."
_BEFORE = "Tally. Trimmed the hinds. Mild flare on the left hind. {}"
_PUT = [("a poultice", "treatment poultice"), ("a leather pad", "pad leather"), ("silicone", "packing silicone")]
_DID = [
    ("poulticed", "poultice", "poulticing"),
    ("soaked", "soak", "soaking"),
    ("disinfected", "disinfect", "disinfecting"),
]
_CALLED = {"disinfect": "antiseptic"}


def _with(*facts: str) -> list[str]:
    return sorted([*_BASE, *facts])


_NOT_PUT = [
    "Offered {} for the off fore, she said no.", "Offered {} on the off fore and they refused.",
    "Suggested {} on the off fore, owner's not keen.", "Owner turned down {} on the off fore.",
    "Owner refused {} on the off fore.", "Changed my mind about {} on the off fore.",
    "Offered to put {} on the off fore, he said no.", "Meant to put {} on the off fore and forgot.",
    "Wanted to put {} on the off fore but ran out of time.", "Forgot to put {} on the off fore.",
]  # fmt: skip
_NOT_DONE = [
    "Offered to {1} the off fore, he said no.", "Ran out of time to {1} the off fore.", "Forgot to {1} the off fore.",
    "Meant to {1} the off fore and didn't.", "No need to {1} the off fore.", "I'd have {0} the off fore if he'd stood.",
    "Changed my mind about {2} the off fore.", "Wanted to {1} the off fore but he'd had enough.",
]  # fmt: skip
_TO_DO = [
    "The off fore should be {0} daily.", "The off fore has to be {0} every night.", "They can {1} the off fore.",
    "The vet can {1} the off fore tomorrow.", "Owner has agreed to {1} the off fore.",
]  # fmt: skip
_PUT_LATER = [
    "Off fore to have {} every night.", "Off fore to get {} on Friday.", "Left her {} for the off fore.",
    "The off fore should get {} again tomorrow.", "{} on the off fore tomorrow.",
]  # fmt: skip
_DONE_THEN = ["The vet had already {0} the off fore.", "The off fore was {0} before I got there."]
_DONE = [
    "Wanted to {1} the off fore, so I did.", "Didn't forget to {1} the off fore, {0} it.", "The off fore got {0}.",
    "I've {0} the off fore and it has to dry.", "{0} the off fore.",
]  # fmt: skip

test_treatments = reads(
    [
        *((f.format(thing), _BASE) for f, (thing, _) in product(_NOT_PUT, _PUT)),
        *((f.format(*verb), _BASE) for f, verb in product(_NOT_DONE, _DID)),
        *(
            (f.format(*v).capitalize(), _with(f"RF treatment {_CALLED.get(v[1], v[1])}{status}"))
            for frames, status in ((_TO_DO, " planned"), (_DONE_THEN, " history"), (_DONE, ""))
            for f, v in product(frames, _DID)
        ),
        *(
            (f.format(thing).capitalize(), _with(f"RF treatment {fact} planned"))
            for f, (thing, fact) in product(_PUT_LATER, [("a poultice", "poultice"), ("iodine", "iodine")])
        ),
    ],
    _BEHIND,
)

_MEASURES = [
    ("toe angle", "fifty-two", "toe_angle 52", "fifty degrees", "toe_angle 50"),
    ("heel angle", "42 degrees", "heel_angle 42", "forty", "heel_angle 40"),
    ("toe length", "three and a half inches", "toe_length 88.9", "eighty-five mil", "toe_length 85"),
    ("sole depth", "ten mil", "sole_depth 10", "half an inch", "sole_depth 12.7"),
]
_IN_TURN = [
    "{0} {1} and {3} in front, left then right.", "{0}s {1} and {3}, left front then right.",
    "Fronts, {0} {1} and {3}, left and right.", "The left front {0} is {1} and the right {3}.",
]  # fmt: skip
_ONE = [
    ("{0} the same on both fronts, {1}.", ["LF+RF {2}"]),
    ("{0} on the off fore {1}, up from {3}.", ["RF {2}", "RF {4} history"]),
    ("{0} on the off fore is {1}, I'd like it at {3}.", ["RF {2}"]),
    ("{0} on the off fore {1}, ideally it'd be {3}.", ["RF {2}"]),
    ("{0} {1}, heel height two inches on the off fore.", ["RF {2}", "RF heel_height 50.8"]),
    ("heel height two inches, {0} {1} on the off fore.", ["RF {2}", "RF heel_height 50.8"]),
    ("off fore, {0} {1}. There's fifty-two horses on that yard.", ["RF {2}"]),
]

test_measures = reads(
    [
        *((f.format(*m).capitalize(), _with(f"LF {m[2]}", f"RF {m[4]}")) for f, m in product(_IN_TURN, _MEASURES)),
        *(
            (f.format(*m).capitalize(), _with(*(g.format(*m) for g in gold)))
            for (f, gold), m in product(_ONE, _MEASURES)
        ),
        ("Off fore, sole depth nine mil, three mil more than last time.", _with("RF sole_depth 9")),
        ("Near fore, heel height forty mil, took five mil off.", _with("LF heel_height 40")),
        ("Off fore heel height went from two inches to half an inch.",
         _with("RF heel_height 12.7", "RF heel_height 50.8 history")),
        ("Soaked and poulticed the off fore.", _with("RF treatment poultice", "RF treatment soak")),
        ("Leather pad on the off fore, I didn't pack it with putty.",
         _with("RF pad leather", "RF packing putty absent")),
        ("Took side clips off the off fore.", _with("RF clips side history")),
    ],
    _BEFORE,
)  # fmt: skip

test_they_must_not_act = reads(
    [
        ("Near fore, toe angle 52. Heel angle 48, toe length 85 mil on the off fore.",
         ["LF heel_angle 48", "LF toe_angle 52", "RF toe_length 85"]),
        ("Abscess in the off fore. He seems to have a crack in the near fore.",
         ["LF finding crack suspected", "RF finding abscess"]),
        ("Sedated before I got there. Poulticed the off fore.", ["- manner sedated", "RF treatment poultice"]),
        ("Wanted to see him trot, poulticed the off fore.", ["RF treatment poultice"]),
        ("Offered carrots. Poulticed the off fore, he said no with his ears.", ["RF treatment poultice"]),
        ("Poulticed the off fore, no need for the vet.", ["- vet referral absent", "RF treatment poultice"]),
        ("I got soaked, poulticed the off fore.", ["RF treatment poultice"]),
        ("The off fore was trimmed to suit the near fore.", ["RF work trim"]),
        ("He refused to stand, poulticed the off fore.", ["RF treatment poultice"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_what_ought_to_be_was_put_on = reads(
    [
        ("Ought to be in bar shoes in front, so I put them on.", ["LF+RF shoe_type bar"]),
        ("Should have been in leather pads in front, so that's what he got.", ["LF+RF pad leather"]),
        ("The vet wants bar shoes in front, so I put them on.", ["LF+RF shoe_type bar"]),
        ("He wants wide web shoes in front, so I nailed a set on.", ["LF+RF shoe_type wide_web"]),
        ("He ought to have leather pads in front. So in they went.", ["LF+RF pad leather"]),
        ("Needs heart bars in front, so he has them on.", ["LF+RF shoe_type heart_bar"]),
        ("He needs a trim behind, and he got one.", ["LH+RH work trim"]),
        # still to be
        ("He ought to be in bar shoes in front, so I put them on the list.", ["LF+RF shoe_type bar planned"]),
        ("He ought to be in bar shoes in front, so I put that to the owner.", ["LF+RF shoe_type bar planned"]),
        ("He ought to be in bar shoes in front, and that's what he'll get.", ["LF+RF shoe_type bar planned"]),
        ("He ought to be in bar shoes in front but I didn't put them on.", ["LF+RF shoe_type bar planned"]),
        ("Next time leather pads in front, and I did what I could.", ["LF+RF pad leather planned"]),
        ("I should have put leather pads in front, so I'll do that next time.", []),
    ],
    "Tally. {}",
)

test_who_holds_a_horse_shoes_none = reads(
    [
        ("Asked the lad to hold her, and put bar shoes on in front.", ["LF+RF shoe_type bar"]),
        ("Told the owner to walk him on, and put egg bars on in front.", ["LF+RF shoe_type egg_bar"]),
        ("Told the lad to stand him up and set heart bars in front.", ["LF+RF shoe_type heart_bar"]),
        ("Asked the groom to bring him over, and put new shoes on in front.", ["LF+RF work new_shoe"]),
        # theirs to do
        ("Told them to bring him in and put boots on in front.", ["LF+RF shoe_type boot planned"]),
        ("Asked the owner to walk him daily and put iodine on the near fore.", ["LF treatment iodine planned"]),
        ("Asked the lad to put bar shoes on in front.", ["LF+RF shoe_type bar planned"]),
        ("Told her to tie him up and put him in bar shoes in front next time.", ["LF+RF shoe_type bar planned"]),
    ],
    "Tally. {}",
)
