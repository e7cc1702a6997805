"""Feet listed with commas are one group; the last of them stands alone where it tells something new.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import line, told

test_feet_in_a_list = reads(
    [
        ("Trimmed RH, LH, RF, LF.", ["LF+RF+LH+RH work trim"]),
        ("Trimmed RH, LH, RF, LF, nothing nailed on.", ["LF+RF+LH+RH work trim"]),
        ("Trimmed off hind, near hind, off fore, near fore.", ["LF+RF+LH+RH work trim"]),
        ("Trimmed the left front, the right front and the left hind.", ["LF+RF+LH work trim"]),
        ("Reset left front, right front, left hind.", ["LF+RF+LH work reset"]),
        ("New shoes left front, right front, six nails.", ["LF+RF nails 6", "LF+RF work new_shoe"]),
        ("Thrush in the left hind, right hind, and left front.", ["LF+LH+RH finding thrush"]),
        ("No thrush in the left hind, right hind or left front.", ["LF+LH+RH finding thrush absent"]),
        ("Flare left front, right front, left hind, mild.", ["LF+RF+LH finding flare ~mild"]),
        ("Worn shoes, left front, right front, left hind.", ["LF+RF+LH shoe_state worn"]),
        ("Trimmed near hind, off hind. Reset near fore, off fore.", ["LF+RF work reset", "LH+RH work trim"]),
        ("Trimmed both hinds, left front.", ["LF+LH+RH work trim"]),
        ("Left front, right front, left hind trimmed.", ["LF+RF+LH work trim"]),
        ("Left front, right front, thrush.", ["LF+RF finding thrush"]),
        (
            "Testers none left front, right front, left hind, mild right hind.",
            ["LF+RF+LH tester none", "RH tester mild"],
        ),
        ("Trimmed left hind, right hind corn.", ["LH work trim", "RH finding corn"]),
        ("Trimmed left hind, right hind had a corn.", ["LH work trim", "RH finding corn"]),
        ("Trimmed left hind, right hind, testers mild right front.", ["LH+RH work trim", "RF tester mild"]),
        ("Trimmed left hind, right hind reset.", ["LH work trim", "RH work reset"]),
        ("Bruise left front, right front a corn.", ["LF finding bruise", "RF finding corn"]),
        ("Thrush left hind, right hind none.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Off hind and near hind, trim only.", ["LH+RH work trim"]),
        ("Trims on the off hind, the near hind, the off fore.", ["RF+LH+RH work trim"]),
        ("Pulled LF, RF, trimmed LF, RF, LH.", ["LF+RF work removed", "LF+RF+LH work trim"]),
        ("Pulse normal LF, RF, LH, raised RH.", ["LF+RF+LH pulse normal", "RH pulse raised"]),
        ("Thrush left hind, right hind, corn.", ["LH finding thrush", "RH finding corn"]),
        ("Thrush left hind, right hind, nothing.", ["LH finding thrush", "RH finding thrush absent"]),
        ("New shoes near fore, off fore, seven nails.", ["LF+RF nails 7", "LF+RF work new_shoe"]),
        ("Size one LF, RF, two LH, RH.", ["LF+RF shoe_size 1", "LH+RH shoe_size 2"]),
        ("Testers mild left front, right front, nothing on the hinds.", ["LF+RF tester mild", "LH+RH tester none"]),
        ("Left front, right front, heat and a pulse.", ["LF+RF finding heat", "LF+RF pulse raised"]),
        ("Off fore, near fore, corns.", ["LF+RF finding corn"]),
        ("Near fore, reset. Off fore, near hind, off hind, trimmed.", ["LF work reset", "RF+LH+RH work trim"]),
    ],
    "Buck. {}",
)

test_the_last_of_a_list_that_was_worked_on_otherwise = reads(
    [
        ("Trimmed the hinds, and the fronts, I reset those.", ["LF+RF work reset", "LH+RH work trim"]),
        ("Trimmed the fronts, and the hinds, I put new shoes on those.", ["LF+RF work trim", "LH+RH work new_shoe"]),
        ("Trimmed the hinds, and the left front, that one I reset.", ["LF work reset", "LH+RH work trim"]),
        ("Reset the fronts, and the hinds, uh, I trimmed them.", ["LF+RF work reset", "LH+RH work trim"]),
        ("Trimmed the left hind, the right hind, those I left bare.", ["LH+RH work trim"]),
        ("Reset the fronts, and the hinds, I had them off first.", ["LF+RF+LH+RH work reset"]),
        ("Reset the fronts, and the hinds. Trimmed her whiskers.", ["LF+RF+LH+RH work reset"]),
    ],
    "Buck. {}",
)

test_two_findings_of_one_verb = reads(
    [
        ("He has long toes and a bruise in both fronts.", ["LF+RF finding bruise", "LF+RF finding long_toe"]),
        ("There's a corn and a bruise in the left front.", ["LF finding bruise", "LF finding corn"]),
        (
            "Near hind reset. She had thrush and a crack in the off hind last time.",
            ["LH work reset", "RH finding crack history", "RH finding thrush history"],
        ),
        # each with a foot or a verb of its own, or only the one denied
        ("He has thrush in the left hind and a corn in the right front.", ["LH finding thrush", "RF finding corn"]),
        ("He has navicular and he has a bruise in the left front.", ["- finding navicular", "LF finding bruise"]),
        ("There is no thrush and a corn in the left front.", ["- finding thrush absent", "LF finding corn"]),
    ]
)

test_an_opening_word_is_no_foot = reads(
    [
        (
            f"Ringbone in the off fore. {opening}, rocker toes, new both fores, size one.",
            ["LF+RF shoe_size 1", "LF+RF shoe_type rocker_toe", "LF+RF work new_shoe", "RF finding ringbone"],
        )
        for opening in ("Right", "Right so", "Right then", "Well", "Right then lads")
    ],
    "Tally. {}",
)

test_counted_anew = reads(
    [
        (
            "Size three in front, and behind, um, three as well, no, two and a half.",
            ["LF+RF shoe_size 3", "LH+RH shoe_size 2.5"],
        ),
        ("Size three near fore, and off fore, um, three as well, no, two.", ["LF shoe_size 3", "RF shoe_size 2"]),
        ("Size three in front, and behind, er, three, no, two.", ["LF+RF shoe_size 3", "LH+RH shoe_size 2"]),
        ("Size three in front, and behind, three as well.", ["LF+RF+LH+RH shoe_size 3"]),
        ("Size two in front, and behind, six nails each.", ["LF+RF+LH+RH nails 6", "LF+RF+LH+RH shoe_size 2"]),
    ],
    "Tansy. {}",
)

test_the_place_behind_a_list_within_all_four = reads(
    [
        ("Reset all four, leather pads and toe clips in front.",
         ["LF+RF clips toe", "LF+RF pad leather", "LF+RF+LH+RH work reset"]),
        ("New shoes all round, studs and quarter clips behind.",
         ["LF+RF+LH+RH work new_shoe", "LH+RH clips quarter", "LH+RH traction studs"]),
        ("Trimmed all four, thrush and a bruise in the near fore.",
         ["LF finding bruise", "LF finding thrush", "LF+RF+LH+RH work trim"]),
        ("Thrush in both hinds, a flare and a crack in the near hind.",
         ["LH finding crack", "LH finding flare", "LH+RH finding thrush"]),
        ("Reset all four with leather pads and toe clips in front.",
         ["LF+RF clips toe", "LF+RF pad leather", "LF+RF+LH+RH work reset"]),
        ("Shod all round with studs and quarter clips on the hinds.",
         ["LH+RH clips quarter", "LH+RH traction studs"]),
        ("All four reset with three degree wedge pads, putty and toe clips on the fores.",
         ["LF+RF clips toe", "LF+RF packing putty", "LF+RF pad wedge", "LF+RF wedge 3", "LF+RF+LH+RH work reset"]),
        # of them all, or asked
        ("Reset all four with six nails each and toe clips in front.",
         ["LF+RF clips toe", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"]),
        ("Reset all four with leather pads all round and toe clips in front.",
         ["LF+RF clips toe", "LF+RF+LH+RH pad leather", "LF+RF+LH+RH work reset"]),
        ("Reset all four with leather pads. Toe clips in front.",
         ["LF+RF clips toe", "LF+RF+LH+RH pad leather", "LF+RF+LH+RH work reset"]),
        ("Reset all four with leather pads in front and studs behind.",
         ["LF+RF pad leather", "LF+RF+LH+RH work reset", "LH+RH traction studs"]),
        ("Reset all four, six nails and toe clips in front.",
         ["LF+RF clips toe", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH work reset"]),
        ("Reset all four, plain and toe clips in front.",
         ["LF+RF clips toe", "LF+RF+LH+RH shoe_type plain", "LF+RF+LH+RH work reset"]),
        ("Trimmed all four, thrush, and a bruise in the near fore.",
         ["LF finding bruise", "LF+RF+LH+RH finding thrush", "LF+RF+LH+RH work trim"]),
        ("Reset all four, leather pads in front and studs behind.",
         ["LF+RF pad leather", "LF+RF+LH+RH work reset", "LH+RH traction studs"]),
    ],
    "Tansy. {}",
)  # fmt: skip


@pytest.mark.parametrize(
    "text",
    [
        "Reset all four with leather pads, and toe clips in front.",
        "Reset all four with leather pads and toe clips in front, quarter clips behind.",
        "Reset all four, leather pads and toe clips in front, quarter clips behind.",
        "Reset all four with leather pads and studs on the near hind.",
    ],
)
def test_asked_whether_the_pads_are_on_all_four(read: Read, text: str) -> None:
    (visit,) = read(f"Tansy. {text}", *NAMES)
    assert [line(f) for f in visit.facts if "foot: not said" in f.rules] == ["pad leather"] * 4
    assert "LF+RF+LH+RH pad leather" in told(visit)


test_told_anew_of_the_rest = reads(
    [
        (
            "Reset in front. Five slims, six slims behind.",
            ["LF+RF nail_size 5 slim", "LF+RF work reset", "LH+RH nail_size 6 slim"],
        ),
        (
            "Reset all round. Six nails and five behind.",
            ["LF+RF nails 6", "LF+RF+LH+RH work reset", "LH+RH nails 5"],
        ),
        (
            "New all round. Twos, ones behind.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "New all round. Steel, size two, size one behind.",
            [
                "LF+RF shoe_size 2",
                "LF+RF+LH+RH shoe_material steel",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH shoe_size 1",
            ],
        ),
        (
            "Reset all round. Six nails, seven in the near fore.",
            ["LF nails 7", "LF+RF+LH+RH work reset", "RF+LH+RH nails 6"],
        ),
        (
            "Reset all round. Toe clips, side clips behind.",
            ["LF+RF clips toe", "LF+RF+LH+RH work reset", "LH+RH clips side"],
        ),
        (
            "New all round. Rims, egg bars behind.",
            ["LF+RF shoe_type rim", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_type egg_bar"],
        ),
        (
            "Thrush in the near fore. Five slims, six slims behind.",
            ["LF finding thrush", "LF+RF nail_size 5 slim", "LH+RH nail_size 6 slim"],
        ),
        # one list
        (
            "New behind. Half rounds, rolled toes behind.",
            ["LH+RH shoe_type half_round", "LH+RH shoe_type rolled_toe", "LH+RH work new_shoe"],
        ),
        (
            "Reset all round. Side clips and toe clips behind.",
            ["LF+RF+LH+RH work reset", "LH+RH clips side", "LH+RH clips toe"],
        ),
        (
            "Reset all round. Six nails, five slims behind.",
            ["LF+RF+LH+RH work reset", "LH+RH nail_size 5 slim", "LH+RH nails 6"],
        ),
        ("Reset behind. Six nails, size five behind.", ["LH+RH nail_size 5", "LH+RH nails 6", "LH+RH work reset"]),
    ],
    "Tally. {}",
)

test_the_last_foot_has_an_answer_of_its_own = reads(
    [
        (
            "Pulse is normal in the left front, and the right front, uh, let me think, that one's raised.",
            ["LF pulse normal", "RF pulse raised"],
        ),
        (
            "Pulse normal in the left front and the right front, that one's bounding.",
            ["LF pulse normal", "RF pulse bounding"],
        ),
        (
            "Mild thrush in the left hind and the right hind, that one's severe.",
            ["LH finding thrush ~mild", "RH finding thrush ~severe"],
        ),
        ("Pulse is raised in the left front and the right front, and that's a worry.", ["LF+RF pulse raised"]),
        ("Pulse is normal in the left front, and the right front.", ["LF+RF pulse normal"]),
    ],
    "Tally. {}",
)
