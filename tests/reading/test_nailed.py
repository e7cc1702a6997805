"""The nail line told by the nails."""

from __future__ import annotations

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

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

test_sizes_of_nails_in_the_plural = reads(
    [
        (
            "New set, double aughts in front, triple aughts behind. Fives in the front feet, four and a halfs in the "
            "hind feet, three nails a side.",
            [
                "LF+RF nail_size 5",
                "LF+RF shoe_size 00",
                "LF+RF+LH+RH nails 6",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH nail_size 4.5",
                "LH+RH shoe_size 000",
            ],
        ),
        (
            "Reset all round, size two. Fours up front and four and a halfs behind, seven apiece.",
            [
                "LF+RF nail_size 4",
                "LF+RF+LH+RH nails 7",
                "LF+RF+LH+RH shoe_size 2",
                "LF+RF+LH+RH work reset",
                "LH+RH nail_size 4.5",
            ],
        ),
        (
            "New shoes all round, size two. Fives in the fronts, sixes in the hinds.",
            [
                "LF+RF nail_size 5",
                "LF+RF+LH+RH shoe_size 2",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH nail_size 6",
            ],
        ),
        (
            "Fronts reset, aughts. Fives. Six nails.",
            ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 0", "LF+RF work reset"],
        ),
        (
            "New shoes all round. Threes in front, fours behind, six nails each.",
            ["LF+RF shoe_size 3", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 4"],
        ),
        (
            "Reset the fronts, size three. Fours behind, six nails each.",
            ["LF+RF shoe_size 3", "LF+RF work reset", "LH+RH nails 6", "LH+RH shoe_size 4"],
        ),
        ("New shoes in front, size one. Sorry, fives.", ["LF+RF shoe_size 5", "LF+RF work new_shoe"]),
        (
            "New shoes in front, size two. He was in fives last time.",
            ["LF+RF shoe_size 2", "LF+RF shoe_size 5 history", "LF+RF work new_shoe"],
        ),
    ],
    "Tally. {}",
)

test_counted_pair_by_pair_behind_the_size_of_all = reads(
    [
        (
            "Reset all round. Five slims all around, six in the fronts, seven in the hinds.",
            ["LF+RF nails 6", "LF+RF+LH+RH nail_size 5 slim", "LF+RF+LH+RH work reset", "LH+RH nails 7"],
        ),
        (
            "Reset all round, size one. Fives everywhere, six in front and five behind.",
            [
                "LF+RF nails 6",
                "LF+RF+LH+RH nail_size 5",
                "LF+RF+LH+RH shoe_size 1",
                "LF+RF+LH+RH work reset",
                "LH+RH nails 5",
            ],
        ),
        (
            "Reset all round. Number five nails all round, six in front, seven behind.",
            ["LF+RF nails 6", "LF+RF+LH+RH nail_size 5", "LF+RF+LH+RH work reset", "LH+RH nails 7"],
        ),
        (
            "Reset all round, size one. Sixes, eight in the fronts and seven in the hinds.",
            [
                "LF+RF nails 8",
                "LF+RF+LH+RH nail_size 6",
                "LF+RF+LH+RH shoe_size 1",
                "LF+RF+LH+RH work reset",
                "LH+RH nails 7",
            ],
        ),
        (
            "Reset all round. Number six nails in the fronts and number five in the hinds.",
            ["LF+RF nail_size 6", "LF+RF+LH+RH work reset", "LH+RH nail_size 5"],
        ),
    ],
    "Tally. {}",
)

test_a_size_alone_behind_its_shoes = reads(
    [
        (
            "Reset four. Plain. Ones. Six nails. Quiet.",
            [
                "- manner quiet",
                "LF+RF+LH+RH nails 6",
                "LF+RF+LH+RH shoe_size 1",
                "LF+RF+LH+RH shoe_type plain",
                "LF+RF+LH+RH work reset",
            ],
        ),
        (
            "New shoes in front. Rims. Twos. Five slims.",
            ["LF+RF nail_size 5 slim", "LF+RF shoe_size 2", "LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        (
            "Reset all four. Steel. Twos in front. Ones behind.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work reset", "LH+RH shoe_size 1"],
        ),
        ("Reset the fronts. Six nails. Fives.", ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF work reset"]),
        ("Reset the fronts. Six nails. Twos.", ["LF+RF nails 6", "LF+RF work reset"]),
        ("Corns in both fronts. Twos.", ["LF+RF finding corn"]),
    ],
    "Tally. {}",
)

test_counted_in_that_foot = reads(
    [
        (
            "New heart bars on both fronts with a two degree wedge, nailed with five in each foot, fours.",
            [
                "LF+RF nail_size 4", "LF+RF nails 5", "LF+RF pad wedge", "LF+RF shoe_type heart_bar", "LF+RF wedge 2",
                "LF+RF work new_shoe",
            ],
        ),
        ("Pulled a nail in the off fore and left it at six in that foot.", ["RF nails 6"]),
        ("Left fore reset, nailed on with seven in that foot.", ["LF nails 7", "LF work reset"]),
        ("Pulled the nail in the off fore, so five in that foot.", ["RF nails 5"]),
        ("I drew the clench on the off hind.", []),
        ("Pulled the egg bars off behind.", ["LH+RH shoe_type egg_bar history", "LH+RH work removed"]),
        ("Near fore, reset, and it's a two in that foot.", ["LF shoe_size 2", "LF work reset"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_half_a_nail_is_a_size = reads(
    [
        (
            "Plates in front. Nails, three and a half, five to a foot.",
            ["LF+RF nail_size 3.5", "LF+RF nails 5", "LF+RF shoe_type racing_plate"],
        ),
        ("Reset in front. Nails are four and a half slims.", ["LF+RF nail_size 4.5 slim", "LF+RF work reset"]),
        (
            "Reset in front. Nails, six. Toe length three and a half on the near fore.",
            ["LF toe_length 88.9", "LF+RF nails 6", "LF+RF work reset"],
        ),
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

test_each_part_of_a_foot_is_of_that_foot = reads(
    [
        ("Left hind reset, stud in each heel.", ["LH traction studs", "LH work reset"]),
        ("Off fore reset, clip on each quarter.", ["RF clips quarter", "RF work reset"]),
        ("Right front reset, a stud in each branch.", ["RF traction studs", "RF work reset"]),
        # each of two feet
        ("Left hind reset, a stud in each.", ["LH work reset", "LH+RH traction studs"]),
        ("Both hinds reset, stud in each heel.", ["LH+RH traction studs", "LH+RH work reset"]),
    ],
    "Tansy. {}",
)

test_slims_behind_their_feet = reads(
    [
        (
            "New shoes in front, size two. Number five on both, slims.",
            ["LF+RF nail_size 5 slim", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, size one. Number four on both fronts, slims. Six in each.",
            ["LF+RF nail_size 4 slim", "LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work new_shoe"],
        ),
        # here it says nothing
        (
            "New shoes in front, size five on both, side clips.",
            ["LF+RF clips side", "LF+RF shoe_size 5", "LF+RF work new_shoe"],
        ),
    ]
)

test_the_other_nails = reads(
    [
        ("I got close with one nail on the left hind, outside quarter.", ["LH finding close_nail @lateral_quarter"]),
        ("I never got close with a nail, near fore.", ["LF finding close_nail absent"]),
        ("Close nail near fore. Left the shoe on with the five other nails.", ["LF finding close_nail", "LF nails 5"]),
        (
            "Close nail near fore, pulled it, left the shoe on with the other five.",
            ["LF finding close_nail", "LF nails 5"],
        ),
        (
            "New in front, six nails in each, the other two nailed with five.",
            ["LF+RF nails 6", "LF+RF work new_shoe", "LH+RH nails 5"],
        ),
    ],
    "Tansy. {}",
)


test_nails_told_by_their_size = reads(
    [
        ("Size two in front, six number fives in each.", ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 2"]),
        (
            "New in front, size one. I ran out of the slims so it's regular fives, six in each.",
            ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work new_shoe"],
        ),
        ("New in front, regular fives.", ["LF+RF shoe_size 5", "LF+RF work new_shoe"]),
    ],
    "Tansy. {}",
)

test_a_size_right_behind_their_count = reads(
    [
        (
            "Egg bars on the fronts. Four nails a side, size five.",
            ["LF+RF nail_size 5", "LF+RF nails 8", "LF+RF shoe_type egg_bar"],
        ),
        ("Fronts, eight nails in each, number six.", ["LF+RF nail_size 6", "LF+RF nails 8"]),
        ("Fronts, three a side, number five.", ["LF+RF nail_size 5", "LF+RF nails 6"]),
        ("Fronts, six nails each, size four and a half.", ["LF+RF nail_size 4.5", "LF+RF nails 6"]),
        ("Seven nails in both hinds, number five.", ["LH+RH nail_size 5", "LH+RH nails 7"]),
        (
            "Six nails in front, size five, eight nails behind, size six.",
            ["LF+RF nail_size 5", "LF+RF nails 6", "LH+RH nail_size 6", "LH+RH nails 8"],
        ),
        (
            "Fronts, eight nails in each, number six, size two shoes.",
            ["LF+RF nail_size 6", "LF+RF nails 8", "LF+RF shoe_size 2"],
        ),
        ("Fronts, six nails in each, size one.", ["LF+RF nails 6", "LF+RF shoe_size 1"]),
        ("Fronts, six nails in each, size three.", ["LF+RF nails 6", "LF+RF shoe_size 3"]),
        ("Fronts, six nails in each, shoe size five.", ["LF+RF nails 6", "LF+RF shoe_size 5"]),
        ("Fronts, six nails in each, size five shoes.", ["LF+RF nails 6", "LF+RF shoe_size 5"]),
        ("Fronts, size two, six nails, no, eight, eight nails in each.", ["LF+RF nails 8", "LF+RF shoe_size 2"]),
        ("Fronts, size two, six nails in each, no, seven, seven nails.", ["LF+RF nails 7", "LF+RF shoe_size 2"]),
        ("Fronts, size one, three a side, no, four, four a side.", ["LF+RF nails 8", "LF+RF shoe_size 1"]),
        ("Fronts, size two, five nails, I mean six, six in each.", ["LF+RF nails 6", "LF+RF shoe_size 2"]),
        ("Fronts, size two, fives, six nails in each.", ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 2"]),
        (
            "Fronts, size two, four, no, five, six nails in each.",
            ["LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_size 2"],
        ),
    ],
    "Tally. {}",
)


def test_a_size_behind_the_nails_of_a_new_shoe_or_before_its_kind_is_asked(read: Read) -> None:
    for text in (
        "New shoes in front, six nails in each, size five.",
        "Fronts, six nails each, size five, plain steel.",
    ):
        (visit,) = read(f"Tally. {text}", "Tally")
        assert "LF+RF nail_size 5" in told(visit)
        assert [flag.quote for flag in visit.flags if "could not be placed" in flag.reason] == ["size five"]
