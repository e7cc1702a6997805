"""As many nails again, said of another foot; and "this day week", counted from the memo's day."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    (
        "Reset both fronts. Left front has a leather pad. Six nails in each, number fives.",
        ["LF pad leather", "LF+RF nail_size 5", "LF+RF nails 6", "LF+RF work reset"],
    ),
    (
        "Near hind new, off hind reset, both steel. Near hind's got a full pad. Seven nails each, size sixes.",
        [
            "LH pad full",
            "LH work new_shoe",
            "LH+RH nail_size 6",
            "LH+RH nails 7",
            "LH+RH shoe_material steel",
            "RH work reset",
        ],
    ),
    ("Six nails in the near fore, size fives in the off fore.", ["LF nails 6", "RF nail_size 5"]),
    ("Fores reset, two size four nails a side.", ["LF+RF nail_size 4", "LF+RF nails 4", "LF+RF work reset"]),
    ("Near fore reset, six number four nails.", ["LF nail_size 4", "LF nails 6", "LF work reset"]),
    ("Fronts reset, seven size five slims each.", ["LF+RF nail_size 5 slim", "LF+RF nails 7", "LF+RF work reset"]),
    (
        "Fronts reset, size two, number five nails, six each.",
        ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work reset"],
    ),
    ("Tally. I'll look in myself this day week.", ["- next_visit_weeks 1 planned"]),
    ("Tally. I'll call back this day fortnight.", ["- next_visit_weeks 2 planned"]),
    ("Tally. See him today week.", ["- next_visit_weeks 1 planned"]),
    ("Tally. See her this day month.", ["- next_visit_weeks 4 planned"]),
    ("Tally. I'm back this day three weeks.", ["- next_visit_weeks 3 planned"]),
    ("Tally. He was sore this day week ago.", []),
    ("Tally. Out to her again a week today.", ["- next_visit_weeks 1 planned"]),
    ("Tally. Two weeks today I'll be back.", ["- next_visit_weeks 2 planned"]),
    (
        "Tally. The vet is coming to see him tonight, and I'll call in myself this day week.",
        ["- next_visit_weeks 1 planned", "- vet referral planned"],
    ),
    ("Tally. I'll call in to her today fortnight.", ["- next_visit_weeks 2 planned"]),
    ("Tally. Back to him this day month.", ["- next_visit_weeks 4 planned"]),
    ("Tally. I'm out to her again tomorrow week.", ["- next_visit_weeks 1.1 planned"]),
    ("Tally. The vet's back today week.", []),
    ("Tally. I'll drop by this day fortnight, no shoes till then.", ["- next_visit_weeks 2 planned"]),
    (
        "Tally. New shoe on the near hind, eight nails. The off hind was reset, with the same number of nails.",
        ["LH work new_shoe", "LH+RH nails 8", "RH work reset"],
    ),
    ("Tally. Reset the left hind, eight nails. Right hind the same count.", ["LH+RH nails 8", "LH+RH work reset"]),
    (
        "Tally. Reset the hinds, eight nails in the left and as many in the right.",
        ["LH+RH nails 8", "LH+RH work reset"],
    ),
    (
        "Tally. New shoes in front, seven nails each. Hinds reset, same number of nails.",
        ["LF+RF work new_shoe", "LF+RF+LH+RH nails 7", "LH+RH work reset"],
    ),
    ("Tally. Off hind six nails, reset. The near hind took just as many.", ["LH+RH nails 6", "RH work reset"]),
    ("Tally. Near fore six nails. Put the same number of nails in the off fore.", ["LF+RF nails 6"]),
    ("Tally. Left front, seven nails. Right front reset, the same nail count.", ["LF+RF nails 7", "RF work reset"]),
    ("Tally. Six nails in the near hind, the off hind the same number.", ["LH+RH nails 6"]),
]

test_as_many = reads(CASES)
