"""The line of a shoeing, item by item: sizes, nails and their size, with commas and in short sentences.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from itertools import permutations

from tests.reading.conftest import reads

FRONTS, HINDS, ALL = "LF+RF", "LH+RH", "LF+RF+LH+RH"
_ITEMS = {
    "Twos": "shoe_size 2",
    "Plain": "shoe_type plain",
    "Side clips": "clips side",
    "Three and three": "nails 6",
    "Number five nails": "nail_size 5",
}
_ORDERS = [o for o in permutations(_ITEMS) if o.index("Twos") < min(o.index("Three and three"), o.index(o[-1]) + 1)]
_ORDERS = [o for o in _ORDERS if o.index("Twos") < o.index("Number five nails")][::4]

test_one_line_in_any_order = reads(
    [
        (f"Reset {where}{mark}{mark.join(order if mark == '. ' else [o.lower() for o in order])}.",
         sorted([f"{feet} {fact}" for fact in _ITEMS.values()] + [f"{feet} work reset"]))
        for order in _ORDERS
        for where, feet, mark in (("in front", FRONTS, ", "), ("behind", HINDS, ". "))
    ],
    "Tally. {}",
)  # fmt: skip

test_a_second_size_is_the_nails = reads(
    [
        (
            f"Reset {where}, {size}{between}{nails}. Six weeks.",
            sorted(["- next_visit_weeks 6 planned"]
                   + [f"{feet} {fact}" for fact in ("work reset", "shoe_size 2", f"nail_size {kept}")]
                   + ([f"{feet} clips side"] if "clips" in between else [])),
        )
        for where, feet in (("in front", FRONTS), ("on the hinds", HINDS), ("all round", ALL))
        for size in ("size two", "twos", "number two", "a two")
        for between in (", ", ". Side clips. ", ", side clips, ")
        for nails, kept in (("fives", "5"), ("three and a halfs", "3.5"))
    ],
    "Tally. {}",
)  # fmt: skip

test_sizes_pair_by_pair = reads(
    [
        (
            f"Reset four. {sizes}. {nails}.",
            sorted([f"{ALL} work reset", f"{FRONTS} shoe_size 2", f"{HINDS} shoe_size 1.5",
                    f"{FRONTS} nail_size 5", f"{HINDS} nail_size 4.5"]),
        )
        for sizes in (
            "Fronts two, hinds one and a half", "Two in front and one and a half behind",
            "A two up front and a one and a half at the back", "Twos in front, one and a halfs behind",
            "Size two in front, one and a half behind", "Number two on the fronts, number one and a half on the hinds",
        )
        for nails in ("Fives in front, four and a halfs behind", "Nail size five in front, four and a half behind",
                      "Number five nails in front and number four and a half behind")
    ],
    "Tally. {}",
)  # fmt: skip

test_told_of_all_behind_two_pairs = reads(
    [
        (
            f"Reset in front, size two. New shoes behind, size one. {last}.",
            sorted([f"{ALL} {fact}", f"{FRONTS} shoe_size 2", f"{FRONTS} work reset", f"{HINDS} shoe_size 1",
                    f"{HINDS} work new_shoe"]),
        )
        for last, fact in (
            ("Six nails in each", "nails 6"), ("Six nails each", "nails 6"), ("Seven apiece", "nails 7"),
            ("Six nails to a foot", "nails 6"), ("Fives all round", "nail_size 5"), ("All plain", "shoe_type plain"),
            ("All steel", "shoe_material steel"),
        )
    ],
    "Tally. {}",
)  # fmt: skip

test_numbers_side_by_side = reads(
    [
        ("Size two and a half rims in front.", ["LF+RF shoe_size 2.5", "LF+RF shoe_type rim"]),
        ("New half rims in front.", ["LF+RF shoe_type rim", "LF+RF work new_shoe"]),
        ("Reset behind, aluminum, one and a half, three nails a side.",
         ["LH+RH nails 6", "LH+RH shoe_material aluminum", "LH+RH shoe_size 1.5", "LH+RH work reset"]),
        ("Reset behind, steel, two, four nails a side.",
         ["LH+RH nails 8", "LH+RH shoe_material steel", "LH+RH shoe_size 2", "LH+RH work reset"]),
        ("Reset behind, size one, six five slims.",
         ["LH+RH nail_size 5 slim", "LH+RH nails 6", "LH+RH shoe_size 1", "LH+RH work reset"]),
        ("Reset in front, number five nails, number two, side clips.",
         ["LF+RF clips side", "LF+RF nail_size 5", "LF+RF shoe_size 2", "LF+RF work reset"]),
        ("New size two on the fronts with toe clips.", ["LF+RF clips toe", "LF+RF shoe_size 2", "LF+RF work new_shoe"]),
        ("Reset in front, size two. Six in the near fore, seven in the off fore.",
         ["LF nails 6", "LF+RF shoe_size 2", "LF+RF work reset", "RF nails 7"]),
        ("Reset all round, two degree wedges. A two in front, a one behind.",
         ["LF+RF shoe_size 2", f"{ALL} pad wedge", f"{ALL} wedge 2", f"{ALL} work reset", "LH+RH shoe_size 1"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_where_it_is_no_such_number = reads(
    [
        ("Reset in front, size one. Sorry, fives.", ["LF+RF shoe_size 5", "LF+RF work reset"]),
        ("Reset in front, size two. Fives behind.", ["LF+RF shoe_size 2", "LF+RF work reset", "LH+RH shoe_size 5"]),
        ("Reset in front, size two. He was in fives last time.",
         ["LF+RF shoe_size 2", "LF+RF shoe_size 5 history", "LF+RF work reset"]),
        ("Reset in front. Six nails. Twos.", ["LF+RF nails 6", "LF+RF work reset"]),
        ("New fours in front. Fours, he takes them well.", ["LF+RF shoe_size 4", "LF+RF work new_shoe"]),
        ("Toe length three and three eighths, near fore.", ["LF toe_length 85.7"]),
        ("Corn in the near fore. Three and three.", ["LF finding corn"]),
        ("Reset in front, six nails. New shoes behind. Seven nails each.",
         ["LF+RF nails 6", "LF+RF work reset", "LH+RH nails 7", "LH+RH work new_shoe"]),
        ("Trimmed in front. New shoes behind. Six nails each.",
         ["LF+RF work trim", "LH+RH nails 6", "LH+RH work new_shoe"]),
        ("Reset in front. New shoes behind, size two, six nails each.",
         ["LF+RF work reset", "LH+RH nails 6", "LH+RH shoe_size 2", "LH+RH work new_shoe"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_of_the_nails_told_for_every_foot = reads(
    [
        ("Size five nails everywhere, six on a front and seven on a hind.",
         ["LF+RF nails 6", "LF+RF+LH+RH nail_size 5", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe",
          "LH+RH nails 7"]),
        ("Five slims all round, six to a front, eight to a hind.",
         ["LF+RF nails 6", "LF+RF+LH+RH nail_size 5 slim", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe",
          "LH+RH nails 8"]),
        ("Size five nails in front and six on the hinds.",
         ["LF+RF nail_size 5", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH nail_size 6"]),
    ],
    "Tally. New shoes all round, size two. {}",
)  # fmt: skip

test_size_before_the_nails = reads(
    [
        ("Right front a new racing plate, aluminum, five, six nails.",
         ["RF nails 6", "RF shoe_material aluminum", "RF shoe_size 5", "RF shoe_type racing_plate",
          "RF work new_shoe"]),
        ("Fores new, plain, steel, four, side clips, seven nails.",
         ["LF+RF clips side", "LF+RF nails 7", "LF+RF shoe_material steel", "LF+RF shoe_size 4",
          "LF+RF shoe_type plain", "LF+RF work new_shoe"]),
        ("Fores new, aluminium, six, five nails a side.",
         ["LF+RF nails 10", "LF+RF shoe_material aluminum", "LF+RF shoe_size 6", "LF+RF work new_shoe"]),
        ("Fores new, steel, six, number five nails.",
         ["LF+RF nail_size 5", "LF+RF shoe_material steel", "LF+RF work new_shoe"]),
        ("Fores new, steel, size two, six, seven weeks.",
         ["- next_visit_weeks 7 planned", "LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF work new_shoe"]),
        ("Both fronts got a new one and a half.", ["LF+RF shoe_size 1.5", "LF+RF work new_shoe"]),
        ("Near fore got a brand new two, off fore a new one and a half.",
         ["LF shoe_size 2", "LF+RF work new_shoe", "RF shoe_size 1.5"]),
        ("Near fore got a new one and a half round went on the off.", ["LF work new_shoe", "RF shoe_type half_round"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_as_well = reads(
    [
        ("Hinds new, steel, three as well.",
         ["LF+RF nails 6", "LF+RF+LH+RH shoe_size 3", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_material steel"]),
        ("Hinds plain, three too.", ["LF+RF nails 6", "LF+RF work new_shoe", "LF+RF+LH+RH shoe_size 3",
         "LH+RH shoe_type plain"]),
        ("Hinds reset, six as well.",
         ["LF+RF shoe_size 3", "LF+RF work new_shoe", "LF+RF+LH+RH nails 6", "LH+RH work reset"]),
        ("Hinds reset, five as well.",
         ["LF+RF nails 6", "LF+RF shoe_size 3", "LF+RF work new_shoe", "LH+RH work reset"]),
        ("Corn in the near hind, three as well.",
         ["LF+RF nails 6", "LF+RF shoe_size 3", "LF+RF work new_shoe", "LH finding corn"]),
    ],
    "Tally. Fores new, size three, six nails. {}",
)  # fmt: skip

test_new_and_back_on = reads(
    [
        (
            "Near hind sprung and the off hind worn. So they've both had new, size three.",
            ["LH shoe_state sprung", "LH+RH shoe_size 3", "LH+RH work new_shoe", "RH shoe_state worn"],
        ),
        (
            "Hinds were worn right through, and he's had new on them, plain.",
            ["LH+RH shoe_state worn", "LH+RH shoe_type plain", "LH+RH work new_shoe"],
        ),
        (
            "Right front shoe gone. I built him a new one, a bar shoe.",
            ["RF shoe_state lost", "RF shoe_type bar", "RF work new_shoe"],
        ),
        (
            "Off fore had been lost, so I nailed it back with six.",
            ["RF nails 6", "RF shoe_state lost", "RF work put_back"],
        ),
        (
            "Right front was lost. Shoe back on that foot. Reset the left front.",
            ["LF work reset", "RF shoe_state lost", "RF work put_back"],
        ),
        (
            "Reset all round, nails are three and a halfs, six in a foot.",
            ["LF+RF+LH+RH nail_size 3.5", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"],
        ),
        # nothing new
        ("They've both had thrush, the hinds.", ["LH+RH finding thrush"]),
    ],
    "Buck. {}",
)

test_the_lot_that_was_treated = reads(
    [
        (
            "Thrush, moderate in the hinds and mild in the fores. I've scrubbed the lot with antiseptic.",
            ["LF+RF finding thrush ~mild", "LF+RF+LH+RH treatment antiseptic", "LH+RH finding thrush ~moderate"],
        ),
        (
            "Abscess in the near fore, drained it and bandaged the lot.",
            ["LF finding abscess", "LF treatment bandage", "LF treatment drained"],
        ),
    ],
    "Buck. {}",
)


test_size_of_all_put_right = reads(
    [
        (
            "I've put him in fours all round, no, tell a lie, fours in front and threes behind. New ones, steel.",
            ["LF+RF shoe_size 4", "LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 3"],
        ),
        (
            "New all round, size three on all four, wait, no, threes in front and fours behind.",
            ["LF+RF shoe_size 3", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 4"],
        ),
        (
            "New all round, size two, no, size three, fives in front, sixes behind.",
            ["LF+RF nail_size 5", "LF+RF+LH+RH shoe_size 3", "LF+RF+LH+RH work new_shoe", "LH+RH nail_size 6"],
        ),
        (
            "Size two, six nails, fives, no, sixes in front and fives behind.",
            ["LF+RF nail_size 6", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH shoe_size 2", "LH+RH nail_size 5"],
        ),
    ]
)
