"""Front, back and behind that tell where a horse stood or what stood before what: they name no feet."""

from __future__ import annotations

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = [
    ("Tally. Toe clips before, quarter clips behind.", ["LF+RF clips toe", "LH+RH clips quarter"]),
    ("Tally. Size one behind and size two before.", ["LF+RF shoe_size 2", "LH+RH shoe_size 1"]),
    ("Tally. New shoes before and behind.", ["LF+RF+LH+RH work new_shoe"]),
    ("Tally. He'd had studs behind, and full pads before.", ["LH+RH pad full history", "LH+RH traction studs history"]),
    ("Tally. Studs behind. Full pads in front, as he had before.", ["LF+RF pad full", "LH+RH traction studs"]),
    ("Tally. Stinking hot out at the back block. Hinds trimmed.", ["LH+RH work trim"]),
    (
        "Tally. Did him at the back of the barn, corn and a bruise in the left front.",
        ["LF finding bruise", "LF finding corn"],
    ),
    ("Tally. Saw him in the back paddock, thrush and all, left hind.", ["LH finding thrush"]),
    ("Tally. Lost a shoe behind the barn, left front.", ["LF shoe_state lost"]),
    ("Tally. Corn in front of the bar, left front.", ["LF finding corn @bar"]),
    ("Tally. Baking hot at the back gate. New shoes in front.", ["LF+RF work new_shoe"]),
    ("Tally. Roasting out front. Left hind has thrush.", ["LH finding thrush"]),
    ("Tally. It's hot out the back. Trimmed.", ["LF+RF+LH+RH work trim"]),
    ("Tally. Warm day up the back road. Reset in front.", ["LF+RF work reset"]),
    ("Tally. Hot and dusty out back, flies everywhere. Reset in front.", ["LF+RF work reset"]),
    ("Tally. Boiling hot in the front stalls. Reset the hinds.", ["LH+RH work reset"]),
    ("Tally. Left front's hot. Both hinds warm.", ["LF+LH+RH finding heat"]),
    ("Tally. Scorching hot down at the front gate, he's lame on the off hind.", ["RH gait lame"]),
    ("Tally. Warm out in front of the shed today. Corn in the left hind.", ["LH finding corn"]),
    ("Tally. Shod him behind the shed. Six nails each in front.", ["LF+RF nails 6"]),
    ("Tally. Tied up at the front rail. Six nails each behind.", ["LH+RH nails 6"]),
    ("Tally. Thrush, out in the back field he was, left hind.", ["LH finding thrush"]),
    ("Tally. Heat at the back of the left front.", ["LF finding heat"]),
    ("Tally. Hot in behind the coronet on the left front.", ["LF finding heat @coronary_band"]),
    ("Tally. Hot morning for it. Hot in the off fore.", ["RF finding heat"]),
    ("Tally. Reset in front of course, six nails each.", ["LF+RF nails 6", "LF+RF work reset"]),
    ("Tally. Trimmed behind the same as before.", ["LH+RH work trim"]),
    ("Tally. Full pads in front, silicone behind the pads.", ["LF+RF packing silicone", "LF+RF pad full"]),
    ("Tally. Six nails in the front, seven in the back.", ["LF+RF nails 6", "LH+RH nails 7"]),
    ("Tally. Pulled the front shoes in the back stall, left them off.", ["LF+RF work removed"]),
    (
        "Tally. New shoes on the front, size one, in behind the tractor shed we were.",
        ["LF+RF shoe_size 1", "LF+RF work new_shoe"],
    ),
    ("Tally. Corn just in front of the heel on the off fore.", ["RF finding corn @heel"]),
    ("Tally. The front row of boxes, third along. Flare on the left hind.", ["LH finding flare"]),
]

test_places = reads(CASES)

test_behind_what_was_told = reads(
    [
        (
            "Tally. Toe crack in the near fore, and there's white line disease behind it.",
            ["LF finding crack @toe", "LF finding white_line_disease"],
        ),
        ("Tally. Bruise at the off fore and some swelling behind that.", ["RF finding bruise", "RF finding swelling"]),
        ("Tally. Reset in front, trimmed behind. It looks grand.", ["LF+RF work reset", "LH+RH work trim"]),
        ("Tally. Trimmed behind and it went well.", ["LH+RH work trim"]),
    ]
)

test_what_a_part_does_there_is_no_place = reads(
    [
        (
            "I suspect a keratoma at the toe of the left hind, because the white line bends around it.",
            ["LH finding keratoma suspected @toe"],
        ),
        ("A keratoma I'd say in the near hind, the wall bulges out over it.", ["LH finding keratoma"]),
        ("Might be a keratoma in the near fore, since the sole dips under it.", ["LF finding keratoma suspected"]),
        ("Bruise in the off fore, at the toe right under it.", ["RF finding bruise @toe"]),
        ("Thrush in the near fore, the sulcus of it.", ["LF finding thrush @sulcus"]),
        ("Thrush in both hinds, the frog mostly.", ["LH+RH finding thrush @frog"]),
        ("Abscess in the right hind, the sole, and pus coming out of it.", ["RH finding abscess @sole"]),
    ],
    "Tally. {}",
)


test_what_the_part_does_there = reads(
    [
        ("Off fore has a keratoma at the toe, because the white line bends in there.", ["RF finding keratoma @toe"]),
        ("Possible keratoma in the off fore at the toe, the white line dips under there.",
         ["RF finding keratoma suspected @toe"]),
        ("Right hind, the sulcus has thrush in there.", ["RH finding thrush @sulcus"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_two_places_with_one_part = reads(
    [
        ("Wall loss, near fore, medial and lateral quarters both.",
         ["LF finding wall_loss @lateral_quarter", "LF finding wall_loss @medial_quarter"]),
        ("Near fore has bruising at the medial and lateral heels both.",
         ["LF finding bruise @lateral_heel", "LF finding bruise @medial_heel"]),
        ("Cracks in the inside and outside quarters of the off hind.",
         ["RH finding crack @lateral_quarter", "RH finding crack @medial_quarter"]),
        ("Fronts reset. Bruise at the toe, both.", ["LF+RF finding bruise @toe", "LF+RF work reset"]),
        ("Left front, corn at the inside heel and outside quarters cracked.",
         ["LF finding corn @medial_heel", "LF finding crack @lateral_quarter"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_a_place_that_needs_draining = reads(
    [
        ("Thrush in both hinds, the whole place needs draining.", ["LH+RH finding thrush"]),
        ("Thrush in the near fore, that field could do with draining.", ["LF finding thrush"]),
        ("The yard ought to be drained. Thrush in the off hind.", ["RH finding thrush"]),
        ("Abscess in the near fore, it needs draining.", ["LF finding abscess", "LF treatment drained planned"]),
        ("Abscess drained in the near fore.", ["LF finding abscess", "LF treatment drained"]),
    ],
    "Tally. {}",
)

test_behind_it_in_the_foot = reads(
    [
        (
            "White line disease in the left front, resected. Might be a keratoma behind all that.",
            ["LF finding keratoma suspected", "LF finding white_line_disease", "LF treatment resection"],
        ),
        (
            "Seedy toe in the near fore. There's an abscess behind all this.",
            ["LF finding abscess", "LF finding white_line_disease"],
        ),
        (
            "Crack in the left front at the toe. Keratoma in behind all of that I reckon.",
            ["LF finding crack @toe", "LF finding keratoma suspected"],
        ),
        (
            "Crack in the near fore. There's white line disease behind it all.",
            ["LF finding crack", "LF finding white_line_disease"],
        ),
        (
            "Crack in the left front at the toe. I found seedy toe behind there.",
            ["LF finding crack @toe", "LF finding white_line_disease"],
        ),
        (
            "Crack in the left front. Seedy toe in behind the crack.",
            ["LF finding crack", "LF finding white_line_disease"],
        ),
        # the hind feet
        ("New shoes in front. Trimmed behind that.", ["LF+RF work new_shoe", "LH+RH work trim"]),
        ("Corn in front. Behind that's all trimmed.", ["LF+RF finding corn", "LH+RH work trim"]),
        ("Corn in front. Behind there's thrush in both.", ["LF+RF finding corn", "LH+RH finding thrush"]),
        ("Corn in front. Behind it's thrush in both.", ["LF+RF finding corn", "LH+RH finding thrush"]),
    ],
    "Tally. {}",
)

test_a_name_of_a_place = reads(
    [
        ("Mild white line disease at the toe, right hind. Long Meadow.", ["RH finding white_line_disease @toe ~mild"]),
        ("Bruise on the right hind sole. Flat Rock.", ["RH finding bruise @sole"]),
        ("Out at Sole Street. Trimmed.", ["LF+RF+LH+RH work trim"]),
        ("Up at Sandcrack Lane. Left front reset.", ["LF work reset"]),
        ("This was over at Corn Hill Farm. Left front reset.", ["LF work reset"]),
        ("Left hind bruised. Then on to Abscess Creek.", ["LH finding bruise"]),
        ("Lost Creek, that is. Reset in front.", ["LF+RF work reset"]),
        # no place
        ("Left front, thrush at the toe. Long.", ["LF finding long_toe", "LF finding thrush @toe"]),
        ("Thin Soles. Left front.", ["LF finding thin_sole"]),
        ("Corn, left front. Barn was cold.", ["LF finding corn"]),
        ("Left front bruised, a corn. Hill farm next.", ["LF finding bruise", "LF finding corn"]),
    ],
    "Tally. {}",
)


def test_a_horse_of_the_name_of_a_place(read: Read) -> None:
    tally, meadow = read("Tally. Thrush at the toe, left hind. Long Meadow. Trimmed.", "Tally", "Long Meadow")
    assert told(tally) == ["LH finding thrush @toe"]
    assert told(meadow) == ["LF+RF+LH+RH work trim"]


# "Right back" as how far something was cut, no right hind.
test_how_far_back = reads(
    [
        (
            "White line disease in the near hind, severe, resected it right back, copper sulphate on it.",
            ["LH finding white_line_disease ~severe", "LH treatment copper_sulfate", "LH treatment resection"],
        ),
        (
            "Left front, seedy toe, I resected the wall right back.",
            ["LF finding white_line_disease", "LF treatment resection"],
        ),
        ("Canker near fore. Pared the frog right back, iodine.", ["LF finding canker", "LF treatment iodine"]),
        ("Trimmed right back to sound horn in the near fore.", ["LF work trim"]),
        ("Took the toe right back on the off fore, reset it.", ["RF work reset"]),
        ("Abscess in the left front, it's come right back.", ["LF finding abscess"]),
        # the right hind
        ("Trimmed right back.", ["RH work trim"]),
        ("Resected the right back, iodine.", ["RH treatment iodine", "RH treatment resection"]),
        ("Took the shoe off the right back.", ["RH work removed"]),
        ("Corn left front, crack right back.", ["LF finding corn", "RH finding crack"]),
        ("He had thrush at the toe right back.", ["RH finding thrush @toe"]),
        ("Trimmed it right back and left back.", ["LH+RH work trim"]),
    ],
    "Tally. {}",
)
