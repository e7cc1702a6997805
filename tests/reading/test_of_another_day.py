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
    ],
    "Tansy. {}",
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
