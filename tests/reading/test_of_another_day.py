"""A foot cut out, and what was of another horse's visit or written down of another horse.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_foot_cut_out = reads(
    [
        (
            "White line disease in the near fore. Cut out the near fore, iodine on it.",
            ["LF finding white_line_disease", "LF treatment iodine", "LF treatment resection"],
        ),
        (
            "Seedy toe, left front. Cut the left front out and soaked it.",
            ["LF finding white_line_disease", "LF treatment resection", "LF treatment soak"],
        ),
        (
            "Seedy toe in both fronts. Cut out both fronts.",
            ["LF+RF finding white_line_disease", "LF+RF treatment resection"],
        ),
        (
            "White line disease in the off hind. Dug out the off hind.",
            ["RH finding white_line_disease", "RH treatment resection"],
        ),
        (
            "Canker in the near hind. Cut away the near hind, antiseptic on it.",
            ["LH finding canker", "LH treatment antiseptic", "LH treatment resection"],
        ),
        (
            "Abscess in the near fore. Opened the near fore and drained it.",
            ["LF finding abscess", "LF treatment drained"],
        ),
        ("Corn in the near fore. Cut out the heel of the near fore.", ["LF finding corn"]),
    ],
    "Tansy. {}",
)

test_told_of_another_visit_or_horse = reads(
    [
        ("This is her, not Buck, Buck's the one that bit me in May. Fronts reset.", ["LF+RF work reset"]),
        ("Not Buck, Buck had the abscess. This one's sound.", ["- gait sound"]),
        ("Not Sable, Sable's got thrush in both hinds, this is Tansy. Fidgety.", ["- manner fidgety"]),
        ("She's not quiet, she bit me in May.", ["- manner dangerous history"]),
        ("She was fidgety, no, that was Buck at the last place, this one came out sedated.", ["- manner sedated"]),
        ("She was quiet, no, that was Buck yesterday, this one was fidgety.", ["- manner fidgety"]),
        ("Size two in front, there was a two and a half written here but that's the old mare.", ["LF+RF shoe_size 2"]),
        ("Size two in front, I had a three down but that's the other horse.", ["LF+RF shoe_size 2"]),
        ("Eight weeks, it says six here but that's her brother.", ["- next_visit_weeks 8 planned"]),
        (
            "Right, new wide webs, both fores, size three, no, hang on, that was Buck yesterday, she's a two.",
            ["LF+RF shoe_size 2", "LF+RF shoe_type wide_web", "LF+RF work new_shoe"],
        ),
        ("Reset in front, six nails each, no wait, that was Buck, seven.", ["LF+RF nails 7", "LF+RF work reset"]),
        ("New in front, size three, sorry, that's Buck I'm thinking of, make it a two and a half.",
         ["LF+RF shoe_size 2.5", "LF+RF work new_shoe"]),
        ("Reset all four, size one, hang on, that was Buck, he's a nought. Six nails each.",
         ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH shoe_size 0", "LF+RF+LH+RH work reset"]),
        ("Reset in front, size one. No, that was Buck, she's a two.", ["LF+RF shoe_size 2", "LF+RF work reset"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_a_finding_of_another_horse_stays_its = reads(
    [
        ("Bruise in the near fore. No, hang on, that's Tansy I'm thinking of.", ["LF finding bruise"]),
    ],
    "Buck. {}",
)

test_answers_of_another_day_beside_those_of_today = reads(
    [
        (
            "Testers mild at the frog on the left hind now; on Monday I had strong at the frog.",
            ["LH tester mild @frog", "LH tester strong history @frog"],
        ),
        (
            "Pulse normal in the left front today, on Saturday it was bounding.",
            ["LF pulse bounding history", "LF pulse normal"],
        ),
        (
            "Testers mild at the toe on the left front today, last week I got strong at the toe.",
            ["LF tester mild @toe", "LF tester strong history @toe"],
        ),
        ("Testers none on the right front today, mild on Tuesday.", ["RF tester mild history", "RF tester none"]),
        (
            "He lost the left front on Monday, and now the right front is loose.",
            ["LF shoe_state lost", "RF shoe_state loose"],
        ),
    ],
    "Tally. {}",
)

test_done_or_worn_on_another_day = reads(
    [
        (
            "New shoe on the near fore. They soaked it every night last week.",
            ["LF treatment soak history", "LF work new_shoe"],
        ),
        (
            "Abscess in the near fore. Drained it yesterday, poultice on it today.",
            ["LF finding abscess", "LF treatment drained history", "LF treatment poultice"],
        ),
        (
            "He had a wedge pad on the near fore, three degree, that was two shoeings back.",
            ["LF pad wedge history", "LF wedge 3 history"],
        ),
        (
            "She'd rim pads on in front, that was in March. Three degree wedges today.",
            [
                "LF+RF pad rim history",
                "LF+RF pad wedge",
                "LF+RF wedge 3",
            ],
        ),
        ("Not short in his stride now, he was in May.", ["- gait short_stride resolved"]),
        ("No heat in the near fore today, there was last time.", ["LF finding heat resolved"]),
        # a day to come or from which it goes on, and what was not there before either
        ("Abscess in the near fore. Soak it till Saturday.", ["LF finding abscess", "LF treatment soak"]),
        ("Abscess in the near fore. Poultice on it since yesterday.", ["LF finding abscess", "LF treatment poultice"]),
        ("No heat in the near fore today, there wasn't last time either.", ["LF finding heat absent"]),
    ],
    "Tally. {}",
)

test_gone_for_good = reads(
    [
        ("The toe crack in the off hind is no longer with us.", ["RH finding crack resolved @toe"]),
        ("Corns in the fores, and that's behind us.", ["LF+RF finding corn resolved"]),
        ("The hinds had mud fever in March and they're over it.", ["LH+RH finding scratches resolved"]),
        # the pad over it, and the gate behind us
        ("Bruise in the near fore, a leather pad over it.", ["LF finding bruise", "LF pad leather"]),
        ("Bruise in the near fore. We'd the gate behind the van.", ["LF finding bruise"]),
    ],
    "Tally. {}",
)

test_findings_beside_a_plan = reads(
    [
        (
            "He might go to glue-ons in front if it won't hold, and it isn't holding that well, off fore, shelly.",
            ["LF+RF shoe_type glue_on planned", "RF finding weak_wall"],
        ),
        ("If that foot won't dry up I'll be back, and there's thrush in the near hind.", ["LH finding thrush"]),
        ("If he's sore behind, and there's heat in it, the vet's to look.", ["- vet referral planned"]),
    ],
    "Tally. {}",
)
