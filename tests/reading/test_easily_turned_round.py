"""Short stretches of talk in which a foot, a "no" or a time is easily turned round, each with its whole record.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_corrections_of_a_foot = reads(
    [
        (
            "Trimmed all round. Thrush left hind, pretty deep. I said left, it's right.",
            ["LF+RF+LH+RH work trim", "RH finding thrush"],
        ),
        (
            "Bit of a bruise, off hind. Other side, sorry. Trimmed all four.",
            ["LF+RF+LH+RH work trim", "LH finding bruise ~mild"],
        ),
        (
            "Reset the fronts. Crack in the left front at the quarter, a quarter crack. That's the off fore I meant.",
            ["LF+RF work reset", "RF finding crack @quarter"],
        ),
        (
            "Thrush in both fronts. No, both hinds, both hinds. Iodine in them.",
            ["LH+RH finding thrush", "LH+RH treatment iodine"],
        ),
        (
            "Pulse bounding in the right front. Testers nothing. Hold on, I've the wrong leg, it's the left front.",
            ["LF pulse bounding", "LF tester none"],
        ),
        (
            "Puncture in the off hind, from a nail. Packed it. Wait, no, that was the near hind, the off was grand.",
            ["LH finding puncture"],
        ),
        ("She's lame on the right front, two out of five. My right, so her left.", ["LF lameness 2"]),
        ("Canker, left hind. Not left, right. Bandaged.", ["RH finding canker", "RH treatment bandage"]),
        (
            "Bruise near fore, corn off fore. Other way about, bruise off, corn near.",
            ["LF finding corn", "RF finding bruise"],
        ),
        ("Flare on the lateral side, right hind. I tell a lie, it's the medial side.", ["RH finding flare @medial"]),
        (
            "Corns in the fronts and thrush in the hinds. Sorry, thrush in the fronts.",
            ["LF+RF finding corn", "LF+RF finding thrush"],
        ),
        (
            "Six nails in the left front, seven in the right front. Wait, that's backwards.",
            ["LF nails 7", "RF nails 6"],
        ),
    ],
    "Tansy. {}",
)

test_one_left_out = reads(
    [
        (
            "Thrush all round bar the near fore. Iodine in the three of them.",
            ["RF+LH+RH finding thrush", "RF+LH+RH treatment iodine"],
        ),
        ("No heat anywhere but the off fore.", ["LF+LH+RH finding heat absent", "RF finding heat"]),
        (
            "Pulses normal in all bar the left fore, and that one's bounding.",
            ["LF pulse bounding", "RF+LH+RH pulse normal"],
        ),
        ("Every foot but the left hind has thrush.", ["LF+RF+RH finding thrush"]),
        ("Not a mark on the hinds. Fronts both bruised, the right more than the left.", ["LF+RF finding bruise"]),
        ("Six nails everywhere but the off fore, which only took five.", ["LF+LH+RH nails 6", "RF nails 5"]),
        (
            "Reset the lot. White line's stretched all round excepting the right hind.",
            ["LF+RF+LH finding white_line_separation", "LF+RF+LH+RH work reset"],
        ),
        ("Only the near fore has thrush, the rest don't.", ["LF finding thrush", "RF+LH+RH finding thrush absent"]),
    ],
    "Tansy. {}",
)

test_then_and_now = reads(
    [
        ("He came in with thrush in the left hind last month, clean as a whistle now.", ["LH finding thrush resolved"]),
        (
            "She still has that abscess in the near fore. Poultice again.",
            ["LF finding abscess", "LF treatment poultice"],
        ),
        ("He'd a corn in the off fore the last day, there's no sign of it today.", ["RF finding corn resolved"]),
        (
            "Last time I had her in size threes, she's in twos today all round.",
            ["LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH shoe_size 3 history"],
        ),
        (
            "Abscess blew out the heel of the off hind a fortnight ago, dry now, packed the hole with putty.",
            ["RH finding abscess resolved @heel", "RH packing putty"],
        ),
        (
            "Lame on the near fore on Sunday, sound today. Couldn't find a thing.",
            ["- gait sound", "LF gait lame history"],
        ),
    ],
    "Tansy. {}",
)

test_plans_and_wishes = reads(
    [
        ("Reset in front. Would have gone to pads only she's thin enough on money.", ["LF+RF work reset"]),
        (
            "Trimmed her. Told the owner to keep her in and poultice that near fore.",
            ["LF treatment poultice planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "Thrush in the off hind. Owner's to put iodine on it twice a day.",
            ["RH finding thrush", "RH treatment iodine planned"],
        ),
        ("I wanted to put bars on the hinds but hadn't the size, so reset what he had.", ["LH+RH work reset"]),
        (
            "Left front abscess. Vet's to X-ray it if it's not draining by Monday.",
            ["- vet referral planned", "LF finding abscess"],
        ),
        ("Should really be in leather pads but they said no. Reset all round.", ["LF+RF+LH+RH work reset"]),
        (
            "Reset four. Next time I'd like to see her in wide webs in front.",
            ["LF+RF shoe_type wide_web planned", "LF+RF+LH+RH work reset"],
        ),
        (
            "Off fore corn. Pared it and he'll need a bar shoe on that if it comes back.",
            ["RF finding corn", "RF shoe_type bar planned"],
        ),
        ("Could have done with studs but the owner forgot them. New shoes all round.", ["LF+RF+LH+RH work new_shoe"]),
        ("Was supposed to be new shoes today, but the old ones had plenty in them. Reset.", ["LF+RF+LH+RH work reset"]),
    ],
    "Tansy. {}",
)

test_questions_and_hearsay = reads(
    [
        ("Thought it was an abscess in the near fore, turned out a bruise.", ["LF finding bruise"]),
        ("Is that thrush? Yeah, it's thrush. Left hind.", ["LH finding thrush"]),
        ("That's a corn in the right front, isn't it? No, just a bit of bruising.", ["RF finding bruise ~mild"]),
        ("Any heat in them? None in front. Behind I'm not so sure.", ["LF+RF finding heat absent"]),
        ("Might be the start of an abscess, right hind, can't be certain.", ["RH finding abscess suspected"]),
        ("Looked like seedy toe in the off fore but it was only dirt.", ["RF finding white_line_disease absent"]),
        ("I'd have sworn there was a pulse in the left front, but no, nothing there.", ["LF pulse normal"]),
        ("Not thrush, is it? No. Just muck.", ["- finding thrush absent"]),
        (
            "Trainer reckons it's the stifle. I think it's the foot, left hind, likely an abscess.",
            ["LH finding abscess suspected"],
        ),
        (
            "Could be bruised, could be a corn in there. Near fore.",
            ["LF finding bruise suspected", "LF finding corn suspected"],
        ),
        ("I don't believe there's an abscess in it at all, off hind.", ["RH finding abscess absent"]),
        ("You'd think he'd thrush the smell of it, but there isn't any.", ["- finding thrush absent"]),
        (
            "Owner thinks the white line's gone again. She's right, both fronts, it's seedy toe.",
            ["LF+RF finding white_line_disease"],
        ),
    ],
    "Tansy. {}",
)

test_testers_and_pulses = reads(
    [
        ("Wouldn't give me anything on the testers, off fore.", ["RF tester none"]),
        (
            "Hoof testers, not a flicker in front. Quite a reaction on the left hind.",
            ["LF+RF tester none", "LH tester positive"],
        ),
        ("Pulses quiet all round.", ["LF+RF+LH+RH pulse normal"]),
        ("Banging pulse, off fore. Negative to testers.", ["RF pulse bounding", "RF tester none"]),
    ],
    "Tansy. {}",
)
