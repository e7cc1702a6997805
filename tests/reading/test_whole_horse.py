"""Work said of the horse and not of the foot in hand; a shoe that the horse came without; plans behind a condition.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

_ALL = "LF+RF+LH+RH"


@pytest.mark.parametrize(
    ("said", "work"),
    [
        ("A grade two on the left hind. Trimmed him and left him barefoot.", f"{_ALL} work trim"),
        ("Scratches on the right hind. Trimmed her, no shoes.", f"{_ALL} work trim"),
        ("Corn in the near fore. Reset him today.", f"{_ALL} work reset"),
        ("Thrush in the left hind. Just gave him a trim.", f"{_ALL} work trim"),
        ("Thrush in the left hind. She got a trim and that's it.", f"{_ALL} work trim"),
        ("Flare in both fronts. Trimmed him.", f"{_ALL} work trim"),
        ("Thrush in the off hind. Trimmed that foot.", "RH work trim"),
        ("Left hind was loose. Reset him there.", "LH work reset"),
        ("Left hind was loose, so I reset him.", "LH work reset"),
        ("Lost the left front. Reset it.", "LF work reset"),
    ],
)
def test_work_done_to_the_horse_is_on_all_feet(read: Read, said: str, work: str) -> None:
    assert [f for f in told(read(f"Tansy. {said}", "Tansy")[0]) if " work " in f] == [work]


test_a_shoe_that_he_came_without_is_lost = reads(
    [
        ("He came in missing the left front.", ["LF shoe_state lost"]),
        ("Missing the off hind. New one on, size two.", ["RH shoe_size 2", "RH shoe_state lost", "RH work new_shoe"]),
        ("Missing the left front. They had the shoe, I tacked it back on.", ["LF shoe_state lost", "LF work put_back"]),
        ("Came in from the field missing both hinds.", ["LH+RH shoe_state lost"]),
        ("Turned up without the near fore shoe.", ["LF shoe_state lost"]),
        ("Walked in minus the off fore.", ["RF shoe_state lost"]),
        ("He arrived one shoe down, near hind.", ["LH shoe_state lost"]),
        ("He came back short of the right hind.", ["RH shoe_state lost"]),
        ("Right hind was missing when I got here.", ["RH shoe_state lost"]),
        ("He's missing some wall in the left front.", ["LF finding wall_loss"]),
        ("Missing a chunk of hoof on the near hind.", ["LH finding wall_loss"]),
        ("Missing some hair above the left hind.", []),
        ("Missing the point in the left front.", []),
    ],
    "Tansy. {}",
)

test_a_shoe_that_is_pulled_is_taken_off = reads(
    [
        (
            "Close nail in the left hind, so that shoe's pulled and staying off.",
            ["LH finding close_nail", "LH work removed"],
        ),
        ("Heat in the left front so the shoe is pulled.", ["LF finding heat", "LF work removed"]),
        ("Corn in the off fore, that shoe's pulled for now.", ["RF finding corn", "RF work removed"]),
        ("The left hind shoe's pulled tight.", []),
    ],
    "Tansy. {}",
)


@pytest.mark.parametrize(
    ("said", "plan"),
    [
        ("Crack in the left hind. If it gets any worse I'll put a bar shoe on it.", "LH shoe_type bar planned"),
        ("If the left hind crack gets worse I'll put a bar shoe on it.", "LH shoe_type bar planned"),
        ("If he gets sore we'll put a rim pad on the off fore.", "RF pad rim planned"),
        ("If the thrush in the near hind gets no better I'll use iodine.", "LH treatment iodine planned"),
        ("If he's no better in the morning I'll pull the left front shoe.", "LF work removed planned"),
        (
            "Off fore shoe stays off, the other three are reset. Once she's sound that foot gets a leather pad.",
            "RF pad leather planned",
        ),
        ("Corn in the left hind. Other three reset. If it's no better that foot gets a rim pad.", "LH pad rim planned"),
    ],
)
def test_what_follows_a_condition_is_planned_on_its_foot(read: Read, said: str, plan: str) -> None:
    assert [f for f in told(read(f"Tansy. {said}", "Tansy")[0]) if "planned" in f] == [plan]


test_what_was_broken_off_is_taken_back_alone = reads(
    [
        ("Navicular in the left front, and ringbone in the, no, forget that.", ["LF finding navicular"]),
        ("Navicular in the left front, and ringbone in the, that was another horse.", ["LF finding navicular"]),
        ("Thrush in the left hind, and a corn in the, no, scratch that, wrong horse.", ["LH finding thrush"]),
        ("Left front, thrush and a crack at the, no, strike that.", ["LF finding thrush"]),
        ("Corn in the left front and a bruise on the, uh, no, forget that.", ["LF finding corn"]),
        ("Left front, thrush, and a crack, no, forget that.", []),
        ("Bruise on the off fore, no, that was a different horse. Trimmed the hinds.", ["LH+RH work trim"]),
        ("Thrush in the left hind. No, wait, that was the other horse. Trimmed the hinds.", ["LH+RH work trim"]),
    ],
    "Tansy. {}",
)


def test_what_was_said_of_a_horse_nobody_named_is_flagged(read: Read) -> None:
    visit = read("Tansy. Bruise on the off fore, no, that was a different horse. Trimmed the hinds.", "Tansy")[0]
    assert "Heard something of another horse, which was not named." in [f.reason for f in visit.flags]


test_the_size_of_all_nails_that_were_counted = reads(
    [
        (
            "New shoes on both fores, size three, eight nails near fore, seven off fore, all size six.",
            ["LF nails 8", "LF+RF nail_size 6", "LF+RF shoe_size 3", "LF+RF work new_shoe", "RF nails 7"],
        ),
        (
            "New shoes on both fores, size three. Six nails left front, five right front. All size five.",
            ["LF nails 6", "LF+RF nail_size 5", "LF+RF shoe_size 3", "LF+RF work new_shoe", "RF nails 5"],
        ),
        (
            "New shoes in front, size three, six nails left front, seven right front, size five.",
            ["LF nails 6", "LF+RF nail_size 5", "LF+RF shoe_size 3", "LF+RF work new_shoe", "RF nails 7"],
        ),
        (
            "Bar shoe on the left front, plain on the right front. Both new, both ones, six nails a foot.",
            ["LF shoe_type bar", "LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work new_shoe", "RF shoe_type plain"],
        ),
    ],
    "Tansy. {}",
)

test_a_foot_in_a_foot_is_one_more = reads(
    [
        ("Off hind in both fores reset, seven nails in each.", ["LF+RF+RH nails 7", "LF+RF+RH work reset"]),
        ("Trimmed the left hind in both fronts.", ["LF+RF+LH work trim"]),
        ("Thrush in the near hind in off hind, mild.", ["LH+RH finding thrush ~mild"]),
        ("Near hind in front of me all day, reset that one.", ["LH work reset"]),
        ("Reset the left hind in both hinds.", ["LH work reset"]),
    ],
    "Tansy. {}",
)

test_all_of_it_is_every_shoe = reads(
    [
        (
            "Fronts reset. Hinds new, size two. All of it steel.",
            ["LF+RF work reset", f"{_ALL} shoe_material steel", "LH+RH shoe_size 2", "LH+RH work new_shoe"],
        ),
        (
            "New fronts, size one. Hinds reset, size nought, all steel.",
            [
                "LF+RF shoe_size 1",
                "LF+RF work new_shoe",
                f"{_ALL} shoe_material steel",
                "LH+RH shoe_size 0",
                "LH+RH work reset",
            ],
        ),
        (
            "New shoe left front, reset right front. Trimmed behind. It's all aluminum.",
            ["LF work new_shoe", "LF+RF shoe_material aluminum", "LH+RH work trim", "RF work reset"],
        ),
        (
            "New shoe left front, reset right front. The lot's steel.",
            ["LF work new_shoe", "LF+RF shoe_material steel", "RF work reset"],
        ),
        (
            "New aluminum in front. Hinds reset. All steel.",
            [
                "LF+RF shoe_material aluminum",
                "LF+RF work new_shoe",
                "LH+RH shoe_material steel",
                "LH+RH work reset",
            ],
        ),
        (
            "Reset in front, trimmed behind. Steel throughout.",
            ["LF+RF shoe_material steel", "LF+RF work reset", "LH+RH work trim"],
        ),
        (
            "Trimmed the hinds and reset the fronts, six nails all round.",
            ["LF+RF nails 6", "LF+RF work reset", "LH+RH work trim"],
        ),
        ("Fronts reset. Hinds new, steel.", ["LF+RF work reset", "LH+RH shoe_material steel", "LH+RH work new_shoe"]),
    ],
    "Tansy. {}",
)

test_the_feet_with_shoes = reads(
    [
        (
            "Left fore is barefoot. The three with shoes are steel, size zero, quarter clips.",
            [
                "LF work trim",
                "RF+LH+RH clips quarter",
                "RF+LH+RH shoe_material steel",
                "RF+LH+RH shoe_size 0",
            ],
        ),
        (
            "Trimmed the off hind, three with shoes on have seven nails apiece.",
            ["LF+RF+LH nails 7", "RH work trim"],
        ),
        (
            "Right hind shoe's off and I left it off. The three still shod are aluminum.",
            ["LF+RF+LH shoe_material aluminum", "RH work removed"],
        ),
        (
            "Trimmed the hinds. Reset in front. The shod feet are steel, size two.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF work reset", "LH+RH work trim"],
        ),
        (
            "Left front new. The other front reset. The remaining pair trimmed.",
            ["LF work new_shoe", "LH+RH work trim", "RF work reset"],
        ),
        (
            "Off hind: new shoe. Reset the remaining three. Six nails in those, seven in the new one.",
            ["LF+RF+LH nails 6", "LF+RF+LH work reset", "RH nails 7", "RH work new_shoe"],
        ),
        (
            "Barefoot behind. The pair with shoes on have six nails each.",
            ["LF+RF nails 6", "LH+RH work trim"],
        ),
        ("Near fore has nothing on it. The three that have shoes are steel.", ["RF+LH+RH shoe_material steel"]),
        ("Left hind is shod, steel.", ["LH shoe_material steel"]),
    ],
    "Tansy. {}",
)

test_all_over_the_foot_is_the_foot_in_hand = reads(
    [
        ("Corn in the near hind. Testers, nothing, all over the foot.", ["LH finding corn", "LH tester none"]),
        ("Near fore reset. No heat anywhere in that foot.", ["LF finding heat absent", "LF work reset"]),
        ("Off hind trimmed, no thrush all round that foot.", ["RH finding thrush absent", "RH work trim"]),
        ("Near fore reset. No heat anywhere.", ["LF work reset", "LF+RF+LH+RH finding heat absent"]),
        ("Near fore reset. No heat all over.", ["LF work reset", "LF+RF+LH+RH finding heat absent"]),
    ],
    "Tansy. {}",
)

test_said_of_him_and_then_foot_by_foot = reads(
    [
        (
            "Reset all four. He's chipped up, there's wall loss on the right front at the toe and on the left hind at "
            "the heel.",
            ["LF+RF+LH+RH work reset", "LH finding wall_loss @heel", "RF finding wall_loss @toe"],
        ),
        (
            "Reset both fronts. He's bruised, there's a bruise in the left front.",
            ["LF finding bruise", "LF+RF work reset"],
        ),
        (
            "Reset both hinds. She's cracked, there's a crack in the off hind at the toe.",
            ["LH+RH work reset", "RH finding crack @toe"],
        ),
        # something else is told behind
        (
            "Reset both fronts. He's bruised, moderate, and there's heat in the left front.",
            ["LF finding heat", "LF+RF finding bruise ~moderate", "LF+RF work reset"],
        ),
    ],
    "Tally. {}",
)

test_full_sets_and_all_new = reads(
    [
        ("Trim only, the full set.", ["LF+RF+LH+RH work trim"]),
        ("Just a trim, a full set.", ["LF+RF+LH+RH work trim"]),
        ("Reset the full set.", ["LF+RF+LH+RH work reset"]),
        ("Trimmed and a full set.", ["LF+RF+LH+RH work new_shoe"]),
        (
            "Fronts, size two. Hinds, size one. All new.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 1"],
        ),
        (
            "Fronts, size six wide webs. Hinds, size five, plain. All new and all steel.",
            [
                "LF+RF shoe_size 6",
                "LF+RF shoe_type wide_web",
                "LF+RF+LH+RH shoe_material steel",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH shoe_size 5",
                "LH+RH shoe_type plain",
            ],
        ),
        (
            "Fronts reset, size two. Hinds size one. All new.",
            ["LF+RF shoe_size 2", "LF+RF work reset", "LH+RH shoe_size 1", "LH+RH work new_shoe"],
        ),
        (
            "Left front was loose, sprung, the lot. Reset it, six nails.",
            ["LF nails 6", "LF shoe_state loose", "LF shoe_state sprung", "LF work reset"],
        ),
        (
            "Left front, thrush and a crack, the lot. Reset it.",
            ["LF finding crack", "LF finding thrush", "LF work reset"],
        ),
        ("Reset the fronts, steel, the lot.", ["LF+RF work reset", "LF+RF+LH+RH shoe_material steel"]),
        (
            "New all round in plain steel.",
            ["LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH shoe_type plain", "LF+RF+LH+RH work new_shoe"],
        ),
        (
            "New in front in egg bars. Reset behind.",
            ["LF+RF shoe_type egg_bar", "LF+RF work new_shoe", "LH+RH work reset"],
        ),
        (
            "Reset the hinds, new in front. Size five nails throughout.",
            ["LF+RF work new_shoe", "LF+RF+LH+RH nail_size 5", "LH+RH work reset"],
        ),
    ],
    "Tally. {}",
)

test_each_of_the_three = reads(
    [
        (
            "I reset the near hind and I reset both fronts, with seven nails in each of the three.",
            ["LF+RF+LH nails 7", "LF+RF+LH work reset"],
        ),
        (
            "Near hind new, fronts reset, six nails in each of the three.",
            ["LF+RF work reset", "LF+RF+LH nails 6", "LH work new_shoe"],
        ),
        ("Fronts reset, seven nails in each.", ["LF+RF nails 7", "LF+RF work reset"]),
    ]
)


test_what_is_added_to_some_does_not_narrow_the_shoeing = reads(
    [
        (
            "Reset all four, wide webs up front, plain behind. Side clips on the fronts. Mesh pads and putty in both "
            "fronts. Seven nails in each foot.",
            ["LF+RF clips side", "LF+RF packing putty", "LF+RF pad mesh", "LF+RF shoe_type wide_web",
             "LF+RF+LH+RH nails 7", "LF+RF+LH+RH work reset", "LH+RH shoe_type plain"],
        ),
        ("New shoes all round. Studs behind. Toe clips in front. Six nails in each.",
         ["LF+RF clips toe", "LF+RF+LH+RH nails 6", "LF+RF+LH+RH work new_shoe", "LH+RH traction studs"]),
        ("Reset all four. Size two. Side clips on the fronts. Seven nails in each.",
         ["LF+RF clips side", "LF+RF+LH+RH nails 7", "LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work reset"]),
        # where the fronts alone were shod, or a foot was looked at between, the foot in hand stays
        ("Trimmed the hinds. New shoes on the fronts. Rim pads on the fronts. Side clips there. Seven nails in each.",
         ["LF+RF clips side", "LF+RF nails 7", "LF+RF pad rim", "LF+RF work new_shoe", "LH+RH work trim"]),
        ("Reset all four. Rim pads in both fronts. Thrush in the left front. Six nails in each.",
         ["LF finding thrush", "LF+RF nails 6", "LF+RF pad rim", "LF+RF+LH+RH work reset"]),
    ],
    "Tally. {}",
)  # fmt: skip
