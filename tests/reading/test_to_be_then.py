"""What is to be at a time to come, or when the horse is ready for it.

The forms are common practice of speech, no source.
"""

from tests.reading.conftest import reads

test_behind_a_time_to_come = reads(
    [
        (
            "Pulled the fronts and left them off. I'm back in a fortnight, and then it's new heart bars in front.",
            [
                "- next_visit_weeks 2 planned",
                "LF+RF shoe_type heart_bar planned",
                "LF+RF work new_shoe planned",
                "LF+RF work removed",
            ],
        ),
        (
            "Took her front shoes off and left them off. Back in two weeks, then it'll be new egg bars in front.",
            [
                "- next_visit_weeks 2 planned",
                "LF+RF shoe_type egg_bar planned",
                "LF+RF work new_shoe planned",
                "LF+RF work removed",
            ],
        ),
        (
            "Pulled the off fore and left it bare. See him in three weeks, after that it's a new shoe with a full pad.",
            ["- next_visit_weeks 3 planned", "RF pad full planned", "RF work new_shoe planned", "RF work removed"],
        ),
        (
            "Trimmed all four. Back in six weeks and then it's new shoes in front, size two.",
            [
                "- next_visit_weeks 6 planned",
                "LF+RF shoe_size 2 planned",
                "LF+RF work new_shoe planned",
                "LF+RF+LH+RH work trim",
            ],
        ),
        (
            "Reset in front. See him in six weeks for a trim behind.",
            ["- next_visit_weeks 6 planned", "LF+RF work reset", "LH+RH work trim planned"],
        ),
        (
            "Trimmed all four. Back in two weeks, then heart bars in front.",
            ["- next_visit_weeks 2 planned", "LF+RF shoe_type heart_bar planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "Pulled both fronts. I'm back in ten days, that's when the heart bars go on.",
            ["- next_visit_weeks 1.4 planned", "LF+RF shoe_type heart_bar planned", "LF+RF work removed"],
        ),
        # of today
        ("Reset in front, and then it's a trim behind.", ["LF+RF work reset", "LH+RH work trim"]),
        ("New shoes in front. Then it's toe clips on both fronts.", ["LF+RF clips toe", "LF+RF work new_shoe"]),
        (
            "Six weeks. Then it's thrush in the left hind, iodine on it.",
            ["- next_visit_weeks 6 planned", "LH finding thrush", "LH treatment iodine"],
        ),
        (
            "Reset in front. Six weeks, then trimmed the hinds.",
            ["- next_visit_weeks 6 planned", "LF+RF work reset", "LH+RH work trim"],
        ),
        (
            "Six weeks, and then it's steel behind but today I just trimmed them.",
            ["- next_visit_weeks 6 planned", "LH+RH shoe_material steel planned", "LH+RH work trim"],
        ),
        (
            "Back in six weeks. New egg bars in front, and then it's a full pad under each.",
            ["- next_visit_weeks 6 planned", "LF+RF pad full", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
    ],
    "Tally. {}",
)

test_when_he_is_ready = reads(
    [
        (
            "Shoe's off the left hind and staying off. When he dries up he gets a new shoe on there with a full pad.",
            ["LH pad full planned", "LH work new_shoe planned", "LH work removed"],
        ),
        (
            "Shoe's off, near fore, and it stays off. He gets a new shoe and a full pad when he dries up.",
            ["LF pad full planned", "LF work new_shoe planned", "LF work removed"],
        ),
        (
            "Left front barefoot. When he grows some heel, he gets wedge pads in front.",
            ["LF work trim", "LF+RF pad wedge planned"],
        ),
        (
            "Trimmed all four. She goes into rim shoes when she starts work.",
            ["LF+RF+LH+RH shoe_type rim planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "Reset in front. When she settles the off fore gets a heart bar.",
            ["LF+RF work reset", "RF shoe_type heart_bar planned"],
        ),
        (
            "Reset all round. Soon as the ground hardens we go to steel in front.",
            ["LF+RF shoe_material steel planned", "LF+RF+LH+RH work reset"],
        ),
        (
            "Reset in front. When I'm back he gets leather pads in front.",
            ["LF+RF pad leather planned", "LF+RF work reset"],
        ),
        # of today, or of every day
        ("When he gets excited he forges.", ["- gait forge"]),
        ("When I trim him he gets fidgety. Trimmed all four.", ["- manner fidgety", "LF+RF+LH+RH work trim"]),
        ("Lost the near fore when he got cast. New shoe on it.", ["LF shoe_state lost", "LF work new_shoe"]),
        (
            "When I pulled the shoe the corn drained, left front, new shoe on.",
            ["LF finding corn", "LF treatment drained", "LF work new_shoe"],
        ),
        ("Once he's shod he's sound. Reset in front, plain.", ["LF+RF shoe_type plain", "LF+RF work reset"]),
    ],
    "Tally. {}",
)


test_what_is_told_of_it = reads(
    [
        (
            "Four weeks, and he's due new shoes all round then, size three.",
            ["- next_visit_weeks 4 planned", "LF+RF+LH+RH shoe_size 3 planned", "LF+RF+LH+RH work new_shoe planned"],
        ),
        (
            "Reset in front. Six weeks, and she's getting new ones then, size two, toe clips.",
            [
                "- next_visit_weeks 6 planned",
                "LF+RF clips toe planned",
                "LF+RF shoe_size 2 planned",
                "LF+RF work new_shoe planned",
                "LF+RF work reset",
            ],
        ),
        (
            "Back in five weeks, he's due new ones in front then, size one, six nails.",
            [
                "- next_visit_weeks 5 planned",
                "LF+RF nails 6 planned",
                "LF+RF shoe_size 1 planned",
                "LF+RF work new_shoe planned",
            ],
        ),
        (
            "Six weeks it is then, new shoes in front, size two.",
            ["- next_visit_weeks 6 planned", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "Six weeks. He was due new shoes then, so he got new in front, size two.",
            ["- next_visit_weeks 6 planned", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
    ]
)

test_gets_behind_a_time_to_come = reads(
    [
        (
            "Left hind abscess, drained. Shoe's off and stays off. I'm back in one week, and the left hind gets a new "
            "shoe with a full pad.",
            [
                "- next_visit_weeks 1 planned",
                "LH finding abscess",
                "LH pad full planned",
                "LH treatment drained",
                "LH work new_shoe planned",
                "LH work removed",
            ],
        ),
        (
            "Back in a week, and he goes back into a plain shoe on the off fore, size one.",
            ["- next_visit_weeks 1 planned", "RF shoe_size 1 planned", "RF shoe_type plain planned"],
        ),
        (
            "Abscess off fore. Shoe off, soaked it. Back in one week, and I'd hope to put a new shoe on it.",
            [
                "- next_visit_weeks 1 planned",
                "RF finding abscess",
                "RF treatment soak",
                "RF work new_shoe planned",
                "RF work removed",
            ],
        ),
        ("I'm hoping to get bar shoes on in front.", ["LF+RF shoe_type bar planned"]),
        # no plan
        ("I hope to God it's only a bruise in the off fore.", ["RF finding bruise"]),
        (
            "Back in six weeks, today the left hind gets a new shoe.",
            ["- next_visit_weeks 6 planned", "LH work new_shoe"],
        ),
        ("Back in six weeks, and the left hind has thrush.", ["- next_visit_weeks 6 planned", "LH finding thrush"]),
        (
            "The left hind gets a new shoe, six nails. Back in six weeks.",
            ["- next_visit_weeks 6 planned", "LH nails 6", "LH work new_shoe"],
        ),
        ("I'd hoped to get bars on the fronts but he'd not stand.", []),
    ]
)
