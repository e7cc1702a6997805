"""What came off for something else, and what a value was before, is of an earlier time; what took its place stands.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

SHOES = """\
Came in in egg bars in front, went out in straight bars.
Shipped in with egg bars in front. Straight bars on the fronts now.
He arrived in egg bars in front. I put straight bars on the fronts.
Turned up in egg bars in front, now straight bars.
She landed with egg bars in front. Straight bars on the fronts.
Came in wearing egg bars in front, now straight bars.
She came off the track in egg bars up front, now it's straight bars there.
She came here in egg bars up front. It's straight bars now on the fronts.
He was in egg bars in front, he's in straight bars now.
Went from egg bars to straight bars in front.
Changed from egg bars to straight bars on the fronts.
Swapped the egg bars in front for straight bars.
Out of egg bars and into straight bars in front.
Took him out of the egg bars in front and put him in straight bars.
Off with the egg bars in front and on with straight bars.
Egg bars off the fronts and straight bars on.
Egg bars came off in front, straight bars went on.
"""


@pytest.mark.parametrize("said", SHOES.splitlines())
def test_shoes_that_were_changed(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type straight_bar"]


@pytest.mark.parametrize(
    "said",
    [
        "Reset in front, wedge pads out and rim pads in.",
        "Reset in front, with the wedge pads coming out of the fores and rim pads going in.",
        "Fronts reset. Took the wedge pads out and put rim pads in.",
        "Fronts reset. Wedge pads came out, rim pads went in.",
        "Fronts reset. Swapped the wedge pads for rim pads.",
        "Fronts reset. Replaced the wedge pads with rim pads.",
        "Fronts reset. Off with the wedge pads and on with rim pads.",
    ],
)
def test_pads_that_were_changed(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == ["LF+RF pad rim", "LF+RF pad wedge history", "LF+RF work reset"]


test_what_is_to_be_changed = reads(
    [
        (
            "Mesh pads in front. If he gets sore I'll change the mesh pads to full pads.",
            ["LF+RF pad full planned", "LF+RF pad mesh"],
        ),
        (
            "Wedge pads behind. When that's healed I'll swap the wedges for rim pads.",
            ["LH+RH pad rim planned", "LH+RH pad wedge"],
        ),
        (
            "Egg bars on the fronts. Next time we'll go from the egg bars to straight bars up front.",
            ["LF+RF shoe_type egg_bar", "LF+RF shoe_type straight_bar planned"],
        ),
        (
            "Next time she gets leather pads in front and rim pads behind.",
            ["LF+RF pad leather planned", "LH+RH pad rim planned"],
        ),
        ("Next time I'll change the nails and put leather pads in front.", ["LF+RF pad leather planned"]),
    ],
    "Tally. {}",
)

test_what_it_was_before = reads(
    [
        (
            "Wore twelves in front when I took him on, he's down to an eleven.",
            ["LF+RF shoe_size 11", "LF+RF shoe_size 12 history"],
        ),
        (
            "Had been in a size 2 on the fronts, she's up to a 3 now.",
            ["LF+RF shoe_size 2 history", "LF+RF shoe_size 3"],
        ),
        (
            "Wedges in front, was three degrees, it's two degree pads now.",
            ["LF+RF pad wedge", "LF+RF wedge 2", "LF+RF wedge 3 history"],
        ),
        (
            "Toe angle left front 50, right front 53. Last spring the right front was a 48 at the toe.",
            ["LF toe_angle 50", "RF toe_angle 48 history", "RF toe_angle 53"],
        ),
        (
            "Wore wedge pads in front until this morning. Off with them and I went to leather.",
            ["LF+RF pad leather", "LF+RF pad wedge history"],
        ),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    "said",
    [
        "Left front had thrush last time, there's none now.",
        "Left front had thrush in the spring and it hasn't now.",
        "Had thrush in the left front, none now.",
        "Thrush in the left front last visit, nothing there now.",
        "He had thrush in the left front at Christmas, not there now.",
        "Left front had thrush in May, no thrush now.",
        "Left front had thrush last time, he's not got it anymore.",
        "There was thrush in the left front, there isn't any today.",
    ],
)
def test_not_there_now(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == ["LF finding thrush resolved"]


test_what_stands = reads(
    [
        ("Egg bars out front, plain ones behind.", ["LF+RF shoe_type egg_bar", "LH+RH shoe_type plain"]),
        ("Plain on the near fore, egg bar off fore.", ["LF shoe_type plain", "RF shoe_type egg_bar"]),
        ("Egg bars on the fronts. Plain behind.", ["LF+RF shoe_type egg_bar", "LH+RH shoe_type plain"]),
        ("Came in in egg bars in front. Reset those.", ["LF+RF shoe_type egg_bar", "LF+RF work reset"]),
        ("Wedge pads in front come out next time.", ["LF+RF pad wedge planned"]),
        ("Left front had thrush last time. No heat now.", ["LF finding heat absent", "LF finding thrush history"]),
        (
            "Right hind had sheared heels in the spring, severe, and they're not sheared now.",
            ["RH finding sheared_heels resolved ~severe"],
        ),
    ],
    "Tally. {}",
)


test_what_is_to_come_off = reads(
    [
        (
            "Tips in front. If he's no better I'll pull those tips.",
            ["LF+RF shoe_type tip", "LF+RF work removed planned"],
        ),
        (
            "Egg bars in front. Next time I'll take the egg bars off.",
            ["LF+RF shoe_type egg_bar", "LF+RF work removed planned"],
        ),
        (
            "Wedges in front. In six weeks I'll take those wedges out.",
            ["- next_visit_weeks 6 planned", "LF+RF pad wedge"],
        ),
        (
            "She had egg bars in front and I went to plain.",
            ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"],
        ),
        (
            "His near fore had quarter clips, and he'd pulled one, so he's gone to toe clips in both fores.",
            ["LF clips quarter history", "LF+RF clips toe"],
        ),
        # what is to go on, and a shoe that was lost beside its clips
        ("If he's no better I'll pull a boot on the near fore.", ["LF shoe_type boot planned"]),
        (
            "Next time I'll take the egg bars off and put plain shoes on in front.",
            ["LF+RF shoe_type plain planned"],
        ),
        ("He'd pulled one in front, the near fore. Toe clips on it.", ["LF clips toe", "LF shoe_state lost"]),
    ],
    "Tally. {}",
)

test_what_is_to_come_off_is_not_planned = reads(
    [
        (
            "Wedge pads in front. If his heels come up I'll take him out of the wedges and put rim pads on the fores.",
            ["LF+RF pad rim planned", "LF+RF pad wedge"],
        ),
        (
            "New shoes in front with wedge pads. Next time he comes out of the wedges.",
            ["LF+RF pad wedge", "LF+RF work new_shoe"],
        ),
        (
            "Reset in front. Next time I'll put him in wedge pads in front.",
            ["LF+RF pad wedge planned", "LF+RF work reset"],
        ),
    ],
)

test_out_of_those_now = reads(
    [
        (
            "She won on Sunday, in racing plates in front, and she's out of those now.",
            ["LF+RF shoe_type racing_plate history"],
        ),
        (
            "Racing plates in front on Saturday, but he came out of them this morning.",
            ["LF+RF shoe_type racing_plate history"],
        ),
        ("Bar shoes in front, and he's not out of them yet.", ["LF+RF shoe_type bar"]),
    ],
)

test_worn_since_and_not_today = reads(
    [
        ("Near fore, in an egg bar since March, plain today.",
         ["LF shoe_type egg_bar history", "LF shoe_type plain"]),
        ("Fronts, in leather pads since last fall, still in.",
         ["LF+RF pad leather"]),
        ("Fronts in wedges since March, bare behind today.",
         ["LF+RF pad wedge"]),
        ("Hinds, wide webs since June, half rounds now.",
         ["LH+RH shoe_type half_round", "LH+RH shoe_type wide_web history"]),
        ("Fronts, in egg bars since March, reset today.",
         ["LF+RF shoe_type egg_bar", "LF+RF work reset"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_pads_taken_out_by_hand = reads(
    [
        ("Took out the wedges in front.",
         ["LF+RF pad wedge history"]),
        ("Pulled the leather pads in front.",
         ["LF+RF pad leather history"]),
        ("Took off the wedges and leather in front.",
         ["LF+RF pad leather history", "LF+RF pad wedge history"]),
        ("Pulled the wedges and the leather pads in front.",
         ["LF+RF pad leather history", "LF+RF pad wedge history"]),
        ("Pulled the wedges and put leather pads in front.",
         ["LF+RF pad leather", "LF+RF pad wedge history"]),
        ("Pulled the studs behind, cleaned the holes and put the studs back in.",
         ["LH+RH traction studs"]),
    ],
    "Tansy. {}",
)  # fmt: skip

test_what_it_wore_when_it_came = reads(
    [
        (
            "He had racing plates on the fores when he came. He can't hold a nail so I've done new glue-ons in front.",
            ["LF+RF shoe_type glue_on", "LF+RF shoe_type racing_plate history", "LF+RF work new_shoe"],
        ),
        (
            "She was in wedge pads in front when I got here. Full pads today.",
            ["LF+RF pad full", "LF+RF pad wedge history"],
        ),
        (
            "He wore boots in front when he came, new tips in front.",
            ["LF+RF shoe_type boot history", "LF+RF shoe_type tip", "LF+RF work new_shoe"],
        ),
        (
            "She had egg bars on the fronts when she arrived. Plain today.",
            ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"],
        ),
        # nothing else was put on, or it is how it was found
        ("He'd racing plates in front when he came. Reset.", ["LF+RF shoe_type racing_plate", "LF+RF work reset"]),
        ("Left front was loose when he came in. Reset.", ["LF shoe_state loose", "LF work reset"]),
        ("He was missing the near fore when he came.", ["LF shoe_state lost"]),
    ],
    "Tally. {}",
)


test_as_it_was_until_today = reads(
    [
        (
            "He came out of wedges, three degrees they were, and I've him flat now.",
            ["- pad wedge history", "- wedge 3 history"],
        ),
        (
            "He came out of egg bars, size two they were, plain shoes on now in front.",
            ["LF+RF shoe_size 2 history", "LF+RF shoe_type egg_bar history", "LF+RF shoe_type plain"],
        ),
        (
            "Near fore came out of its bar shoe, size one it was, plain on it now.",
            ["LF shoe_size 1 history", "LF shoe_type bar history", "LF shoe_type plain"],
        ),
        ("Wedges in front, three degrees they are.", ["LF+RF pad wedge", "LF+RF wedge 3"]),
        ("Egg bars on the fronts, size two they were.", ["LF+RF shoe_size 2", "LF+RF shoe_type egg_bar"]),
    ],
    "Tally. {}",
)


def test_packing_that_came_with_the_pads(read: Read) -> None:
    (visit,) = read("He shipped in with full pads and silicone up front. Reset with rim pads on both fronts.", "Pansy")
    assert told(visit) == [
        "LF+RF packing silicone history",
        "LF+RF pad full history",
        "LF+RF pad rim",
        "LF+RF work reset",
    ]


def test_pads_that_stay(read: Read) -> None:
    (visit,) = read("He shipped in with full pads in front. Reset.", "Pansy")
    assert told(visit) == ["LF+RF pad full", "LF+RF work reset"]


test_what_comes_next_time_makes_nothing_of_today_past = reads(
    [
        ("He came in with full pads in front. Next time rim pads in front.",
         ["LF+RF pad full", "LF+RF pad rim planned"]),
        ("Came in with full pads in front. We'll go to rim pads next time.",
         ["LF+RF pad full", "LF+RF pad rim planned"]),
        ("Came in with full pads in front, new steel and rim pads today.",
         ["LF+RF pad full history", "LF+RF pad rim", "LF+RF shoe_material steel", "LF+RF work new_shoe"]),
    ],
    "Tally. {}",
)  # fmt: skip
