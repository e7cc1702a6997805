"""What was only intended, given up, announced or conditional."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "get away with": (
        "I thought I'd get away with resetting the off fore but it was worn out, so that's new as well.",
        ["RF shoe_state worn", "RF work new_shoe"],
    ),
    "hoped to": (
        "I'd hoped to reset the hinds but they were loose, so new shoes behind.",
        ["LH+RH shoe_state loose", "LH+RH work new_shoe"],
    ),
    "couldn't get away with": (
        "I couldn't get away with a reset on the near hind, so it's a new shoe.",
        ["LH work new_shoe"],
    ),
    "thought about": (
        "I thought about resetting the off fore but it was worn out.",
        ["RF shoe_state worn"],
    ),
    "thought about it": (
        "I thought about it and reset them both in front.",
        ["LF+RF work reset"],
    ),
    "got away with": (
        "I got away with a reset on the near hind.",
        ["LH work reset"],
    ),
    "was going to": (
        "I was going to put straight bars on the fronts, but they're reset.",
        ["LF+RF work reset"],
    ),
    "thought better": (
        "I'd put wedges on the fronts, but thought better of it.",
        [],
    ),
    "wanted": (
        "I wanted toe clips in front and it's quarter clips.",
        ["LF+RF clips quarter"],
    ),
    "meant to reset": (
        "I meant to reset the hinds but they were both sprung.",
        ["LH+RH shoe_state sprung"],
    ),
    "meant to fit": (
        "I meant to fit egg bars in front, so straight bars went on the fronts.",
        ["LF+RF shoe_type straight_bar"],
    ),
    "meant another foot": (
        "Reset the left front. Did I say left front? I meant the right front.",
        ["RF work reset"],
    ),
    "announced": (
        "Next trip's plan first. Leather pads on the fronts. Today, trimmed all four.",
        ["LF+RF pad leather planned", "LF+RF+LH+RH work trim"],
    ),
    "then he": (
        "Once he's right he gets a new shoe on the left front.",
        ["LF work new_shoe planned"],
    ),
    "when": (
        "He overreaches when he's tired.",
        ["- gait overreach"],
    ),
    "did not want to": (
        "She didn't want to come out of the stall, and when she did she was short strided.",
        ["- gait short_stride"],
    ),
    "did not want to, without a comma": (
        "She didn't want to come out and when she did she was short strided.",
        ["- gait short_stride"],
    ),
    "was not going to": (
        "He wasn't going to trot up and when he did he was lame.",
        ["- gait lame"],
    ),
    "wants, and there is": (
        "I'm going to see him sooner next time and there's thrush in the left hind.",
        ["LH finding thrush"],
    ),
    "will not, and has": (
        "He won't go forward and the near fore has a bruise.",
        ["LF finding bruise"],
    ),
    "did not want, used instead": (
        "I didn't want to put pads on the fronts and I used putty instead.",
        ["LF+RF packing putty"],
    ),
    "did not want to trim": (
        "I didn't want to trim the hinds and she wasn't short striding.",
        ["- gait short_stride absent"],
    ),
    "wants to see whether": (
        "They want to rest him and see whether the pulse is up. Left front, corn.",
        ["LF finding corn"],
    ),
    "due, but": (
        "Fronts reset. The hinds were due a trim but she'd had enough.",
        ["LF+RF work reset"],
    ),
    "due, and not had": (
        "Fronts reset. Hinds due new shoes, but the owner wants to wait.",
        ["LF+RF work reset"],
    ),
    "supposed to": (
        "The hinds were supposed to get a trim but I ran out of daylight. Fronts reset.",
        ["LF+RF work reset"],
    ),
    "due, but something else": (
        "The hinds were due new shoes but I reset them.",
        ["LH+RH work reset"],
    ),
    "due, but done": (
        "The hinds were due a trim next week but I did them anyway. Fronts reset.",
        ["LF+RF work reset", "LH+RH work trim"],
    ),
    "only due": (
        "Her hinds were only due a reset.",
        ["LH+RH work reset"],
    ),
    "honest": (
        "If I'm honest it's a severe crack at the toe of the left front.",
        ["LF finding crack @toe ~severe"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)


test_what_is_for_a_season_to_come_or_only_asked_about = reads(
    [
        (
            "Reset in front, six nails each, borium, they've been asking, so that's borium all round in the fall.",
            [
                "LF+RF nails 6",
                "LF+RF work reset",
                "LF+RF+LH+RH traction borium planned",
            ],
        ),
        (
            "Reset in front. Borium, they've been asking, I said in the fall, so that's borium all round in the fall.",
            ["LF+RF work reset", "LF+RF+LH+RH traction borium planned"],
        ),
        (
            "Reset in front. So it's egg bars in front in the winter.",
            ["LF+RF shoe_type egg_bar planned", "LF+RF work reset"],
        ),
        ("Reset in front. Studs, she keeps asking, not on this ground.", ["LF+RF work reset"]),
        (
            "Reset in front. Borium, they've been asking for it, so I put it on.",
            ["LF+RF traction borium", "LF+RF work reset"],
        ),
        ("He had egg bars in front in the winter.", ["LF+RF shoe_type egg_bar history"]),
        ("Egg bars in front in the fall, plain now.", ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"]),
    ],
    "Buck. {}",
)

test_what_others_were_told_to_do = reads(
    [
        (
            "Abscess in the off hind. Told the boss to soak it, he'll forget.",
            ["RH finding abscess", "RH treatment soak planned"],
        ),
        ("Told the owner's wife to keep the near hind poulticed.", ["LH treatment poultice planned"]),
        ("Asked the groom to soak the off hind. Hinds trimmed.", ["LH+RH work trim", "RH treatment soak planned"]),
        ("The vet told me to soak it, so I soaked the off hind.", ["RH treatment soak"]),
        ("Told the lad to hold him and soaked the off hind.", ["RH treatment soak"]),
        (
            "Thrush in the off hind, I've asked for a soak every night.",
            ["RH finding thrush", "RH treatment soak planned"],
        ),
        (
            "Thrush in the off hind. I asked for it to be poulticed.",
            ["RH finding thrush", "RH treatment poultice planned"],
        ),
        (
            "Thrush in the off hind. She asked for a poultice, on it went.",
            ["RH finding thrush", "RH treatment poultice"],
        ),
    ],
    "Tansy. {}",
)

test_on_until = reads(
    [
        (
            "There's nothing to nail to on the left front, so a boot's on that foot till there is.",
            ["LF shoe_type boot"],
        ),
        ("Near fore, a glue-on's on that foot until it grows.", ["LF shoe_type glue_on"]),
        ("Leather pads are on both fronts until the soles thicken.", ["LF+RF pad leather"]),
        ("I put a hoof boot on the left front until it grows.", ["LF shoe_type boot"]),
        ("I'll put a hoof boot on the left front until it grows.", ["LF shoe_type boot planned"]),
        ("Told her to put a hoof boot on the left front until it grows.", ["LF shoe_type boot planned"]),
    ],
    "Tally. {}",
)


test_booked_to_do = reads(
    [
        ("Tally. Left hind, I'm booked to do a resection on it.", ["LH treatment resection planned"]),
        ("Tally. He's booked in to get bar shoes in front.", ["LF+RF shoe_type bar planned"]),
        ("Tally. I was booked to put egg bars in front, but they'd sold him.", []),
    ]
)

test_once_something_was_had = reads(
    [
        (
            "The fronts got new shoes. The hinds get their new ones when he's had a bit of schooling.",
            ["LF+RF work new_shoe", "LH+RH work new_shoe planned"],
        ),
        ("Once he's been sedated the hinds get new shoes.", ["LH+RH work new_shoe planned"]),
        ("Trimmed the hinds. He's grand when he's been sedated.", ["- manner sedated", "LH+RH work trim"]),
        ("I've ordered pour ins for both fores for next visit.", ["LF+RF pad pour_in planned"]),
        ("We ordered rim pads for the hinds for next time.", ["LH+RH pad rim planned"]),
        ("I've ordered size fives for next time. Trimmed.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_what_is_needed_put_first = reads(
    [
        ("A bar shoe is what that off hind needs, and I'll put one on next time.", ["RH shoe_type bar planned"]),
        ("Wedge pads are what he wants in front.", ["LF+RF pad wedge planned"]),
        ("Boots is what she needs behind.", ["LH+RH shoe_type boot planned"]),
        ("A bar shoe is what the off hind needs, so I put one on.", ["RH shoe_type bar"]),
        ("A bar shoe is what I put on the off hind.", ["RH shoe_type bar"]),
    ],
    "Off hind. {}",
)

test_treated_tonight_is_to_come = reads(
    [
        (
            "Heat in the off hind. Poultice tonight, I've told the kid how.",
            ["RH finding heat", "RH treatment poultice planned"],
        ),
        ("Abscess in the left front. They'll soak it tonight.", ["LF finding abscess", "LF treatment soak planned"]),
        ("Poulticed it tonight on the left front.", ["LF treatment poultice"]),
        ("I put a poultice on tonight, left front.", ["LF treatment poultice"]),
    ],
    "Tansy. {}",
)

test_planned_and_given_up = reads(
    [
        ("I'd planned leather pads in front but left them off.",
         []),
        ("Was to have egg bars in front. Left them off in the end.",
         []),
        ("Had studs in mind for the hinds, went without.",
         []),
        ("Reset the fronts, I'd planned studs behind, left them out.",
         ["LF+RF work reset"]),
        ("I'd planned leather pads in front and put them on.",
         ["LF+RF pad leather"]),
        ("Heart bars in front as planned, didn't need wedges.",
         ["LF+RF pad wedge absent", "LF+RF shoe_type heart_bar"]),
        ("Pulled the fronts and left them off.",
         ["LF+RF work removed"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_asked_about_what_is_no_thing_of_the_trade = reads(
    [
        ("Left front, thrush, owner was asking about the weather, iodine on it.",
         ["LF finding thrush", "LF treatment iodine"]),
        ("Left front size two, she was asking about my mother, right front size one.",
         ["LF shoe_size 2", "RF shoe_size 1"]),
        ("Owner was asking about bar shoes, wedges, trimmed all round.",
         ["LF+RF+LH+RH work trim"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_what_everybody_wants_is_nobodys = reads(
    [
        ("Everybody wants studs this month. Reset all round.", ["LF+RF+LH+RH work reset"]),
        ("Everyone wants leather pads. Trimmed behind.", ["LH+RH work trim"]),
        ("She wants leather pads in front. Trimmed behind.", ["LF+RF pad leather planned", "LH+RH work trim"]),
    ],
    "Tansy. {}",
)

test_the_vet_nearly_called = reads(
    [
        (
            "I was all set to get the vet to the right front. No need for the vet, mild bruise in the sole.",
            ["- vet referral absent", "RF finding bruise @sole ~mild"],
        ),
        ("I nearly called the vet to her, but it's only a bruise in the off fore.", ["RF finding bruise"]),
        (
            "I was on the point of ringing the vet. No vet needed, it's a bruise in the near fore.",
            ["- vet referral absent", "LF finding bruise"],
        ),
        ("I'd the phone out to get the vet, it's only a corn in the near fore.", ["LF finding corn"]),
        ("I was all set to nail the near fore when she pulled back. Reset it after.", ["LF work reset"]),
        ("I'm all set to get the vet to the right front.", ["- vet referral planned"]),
        ("Abscess in the near fore, get the vet to it.", ["- vet referral planned", "LF finding abscess"]),
        ("I nearly put my hand through the window. Reset all four.", ["LF+RF+LH+RH work reset"]),
    ],
    "Tansy. {}",
)
