"""The nail line told by the nails."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Left front nailed low.", ["LF nail_line low"]),
    ("Tally. Nails came out low on the off fore.", ["RF nail_line low"]),
    ("Tally. Nailed him a bit low on the left front.", ["LF nail_line low"]),
    (
        "Tally. New shoes in front, six nails, nailed low.",
        ["LF+RF nail_line low", "LF+RF nails 6", "LF+RF work new_shoe"],
    ),
    ("Tally. Right hind reset, nailed it too low.", ["RH nail_line low", "RH work reset"]),
    ("Tally. The nails came out nice and even on both fronts.", ["LF+RF nail_line good"]),
    ("Buck. Left front, the nails came out a bit low.", ["LF nail_line low"]),
    ("Buck. Near hind, nails came up good and high.", ["LH nail_line good"]),
    ("Buck. Both hinds, nails came out level.", ["LH+RH nail_line good"]),
    ("Buck. Off fore nailed a touch low.", ["RF nail_line low"]),
    ("Buck. Nailed the same shoe back on the left front, low heels on him.", ["LF work put_back"]),
    ("Buck. Reset in front, nail line low.", ["LF+RF nail_line low", "LF+RF work reset"]),
]

test_nailed = reads(CASES)

test_nails_beside_those_of_another_foot = reads(
    [
        (
            "I quicked the left front, pulled that nail, and left it with five nails where the right front has six.",
            ["LF finding quicked", "LF nails 5", "RF nails 6"],
        ),
        ("Left front has seven nails where the right front has six.", ["LF nails 7", "RF nails 6"]),
        (
            "Toe angle is fifty on the left front whereas the right front is fifty two.",
            ["LF toe_angle 50", "RF toe_angle 52"],
        ),
        ("That's where the left front is worn.", ["LF shoe_state worn"]),
    ],
    "Tally. {}",
)

test_counted_in_feet_of_a_sized_pair = reads(
    [
        (
            "New shoes on both hinds, size two, steel, six in the near hind and seven in the off.",
            ["LH nails 6", "LH+RH shoe_material steel", "LH+RH shoe_size 2", "LH+RH work new_shoe", "RH nails 7"],
        ),
        (
            "Fronts reset, size aught, five in the left front, six in the right front.",
            ["LF nails 5", "LF+RF shoe_size 0", "LF+RF work reset", "RF nails 6"],
        ),
        (
            "New shoes, size two in the left front and three in the right front.",
            ["LF shoe_size 2", "LF+RF work new_shoe", "RF shoe_size 3"],
        ),
    ],
)

test_nails_that_were_low = reads(
    [
        ("The nails were low on the near hind.", ["LH nail_line low"]),
        ("Left front reset, the nails are a bit low.", ["LF nail_line low", "LF work reset"]),
        ("The nails weren't low on the near hind.", []),
        ("Near hind reset. I'm running low on nails.", ["LH work reset"]),
    ],
    "Tally. {}",
)

test_slims_behind_their_head = reads(
    [
        ("New shoes up front, and the nails are number five slims.", ["LF+RF nail_size 5 slim", "LF+RF work new_shoe"]),
        ("Reset behind. Nails were size four slim.", ["LH+RH nail_size 4 slim", "LH+RH work reset"]),
        ("Reset behind. Nails were number fives, slim ones.", ["LH+RH nail_size 5 slim", "LH+RH work reset"]),
    ]
)

test_counted_in_feet_beside_their_size = reads(
    [
        (
            "New all round. Seven in the front feet, six in the back feet, fives for nails throughout.",
            ["LF+RF nails 7", "LF+RF+LH+RH nail_size 5", "LF+RF+LH+RH work new_shoe", "LH+RH nails 6"],
        ),
        (
            "Reset all round. Six in the fronts and five in the hinds, fours for nails.",
            ["LF+RF nails 6", "LF+RF+LH+RH nail_size 4", "LF+RF+LH+RH work reset", "LH+RH nails 5"],
        ),
        ("New all round. Seven in the front feet, six in the back feet.", ["LF+RF+LH+RH work new_shoe"]),
    ]
)

test_the_nails_of_the_other_feet = reads(
    [
        (
            "New all round, size aught. Size three nails in front, six in each. Size fours behind, five in each.",
            [
                "LF+RF nail_size 3",
                "LF+RF nails 6",
                "LF+RF+LH+RH shoe_size 0",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH nail_size 4",
                "LH+RH nails 5",
            ],
        ),
        (
            "Reset all round, size one. Number four nails in front. Number fives behind.",
            ["LF+RF nail_size 4", "LF+RF+LH+RH shoe_size 1", "LF+RF+LH+RH work reset", "LH+RH nail_size 5"],
        ),
        ("Size three and a half nails in front. Size ones behind.", ["LF+RF nail_size 3.5", "LH+RH shoe_size 1"]),
    ]
)
