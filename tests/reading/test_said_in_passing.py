"""Said in passing: findings called to mind and denied, what has "gone in", parts as headings, numbers put right.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_what_has_gone_on_is_not_gone = reads(
    [
        (
            "Thrush in the sulcus of the near fore, and copper sulphate has gone into it.",
            ["LF finding thrush @sulcus", "LF treatment copper_sulfate"],
        ),
        ("Thrush in both hinds, iodine has gone on both.", ["LH+RH finding thrush", "LH+RH treatment iodine"]),
        ("A bruise in the off fore, so a full pad has gone on.", ["RF finding bruise", "RF pad full"]),
        ("A corn in the off fore, a bar shoe has gone on over it.", ["RF finding corn", "RF shoe_type bar"]),
        (
            "Abscess in the near hind, and a poultice has gone on that foot.",
            ["LH finding abscess", "LH treatment poultice"],
        ),
        (
            "Seedy toe in the left front, hardener's gone in there.",
            ["LF finding white_line_disease", "LF treatment hardener"],
        ),
        (
            "White line disease in the right front, I resected it and copper sulfate's gone in the hole.",
            ["RF finding white_line_disease", "RF treatment copper_sulfate", "RF treatment resection"],
        ),
        ("The off hind has canker, and a bandage has gone round it.", ["RH finding canker", "RH treatment bandage"]),
        ("Thrush in the near fore, copper sulphate gone in it.", ["LF finding thrush", "LF treatment copper_sulfate"]),
        (
            "Thrush in the near fore. Copper sulphate has gone into it.",
            ["LF finding thrush", "LF treatment copper_sulfate"],
        ),
        ("A corn in the near fore and a leather pad's gone under the shoe.", ["LF finding corn", "LF pad leather"]),
        ("The thrush in the near fore has gone.", ["LF finding thrush resolved"]),
        ("The bruise under the pad on the near fore has gone.", ["LF finding bruise resolved"]),
        (
            "He had thrush in the near fore, iodine did it, it's gone.",
            ["LF finding thrush resolved", "LF treatment iodine"],
        ),
        ("Thrush in the left hind, gone in the right hind.", ["LH finding thrush", "RH finding thrush resolved"]),
        ("He's stopped forging.", ["- gait forge resolved"]),
        ("He hasn't stopped forging.", ["- gait forge"]),
        ("She's not quit interfering.", ["- gait interfere"]),
    ],
    "Tally. {}",
)

test_called_to_mind_and_denied = reads(
    [
        (
            "Hinds trimmed. Thrush, let's see, no thrush in any of the four.",
            ["LF+RF+LH+RH finding thrush absent", "LH+RH work trim"],
        ),
        (
            "Hinds trimmed, thrush, let me think, no thrush anywhere.",
            ["LF+RF+LH+RH finding thrush absent", "LH+RH work trim"],
        ),
        ("Hinds trimmed. Thrush, no thrush anywhere.", ["LF+RF+LH+RH finding thrush absent", "LH+RH work trim"]),
        ("Hinds trimmed. Corns, um, no corns in the fronts.", ["LF+RF finding corn absent", "LH+RH work trim"]),
        ("Hinds trimmed. Heat, no heat in the left hind.", ["LH finding heat absent", "LH+RH work trim"]),
        ("Hinds trimmed. Cracks. No cracks behind.", ["LH+RH finding crack absent", "LH+RH work trim"]),
        ("Fronts reset. Any heat, no, no heat in the fronts.", ["LF+RF finding heat absent", "LF+RF work reset"]),
        (
            "Fronts reset. As for thrush, well, there's no thrush behind.",
            ["LF+RF work reset", "LH+RH finding thrush absent"],
        ),
        ("Left hind, thrush. No thrush in the right.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Left hind. Thrush. No thrush in the right hind.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Left hind. Thrush, no bruise.", ["LH finding bruise absent", "LH finding thrush"]),
        ("Left hind, thrush, no thrush in the right hind.", ["LH finding thrush", "RH finding thrush absent"]),
        (
            "Left hind reset, thrush, um, no thrush in the right.",
            ["LH finding thrush", "LH work reset", "RH finding thrush absent"],
        ),
    ],
    "Tally. {}",
)

test_the_three_without_it = reads(
    [
        (
            "Crack in the off fore. The near fore is contracted. No cracks in the other three.",
            ["LF finding contracted_heels", "LF+LH+RH finding crack absent", "RF finding crack"],
        ),
        (
            "Thrush in the left hind. Right front has a bruise. No thrush in the rest.",
            ["LF+RF+RH finding thrush absent", "LH finding thrush", "RF finding bruise"],
        ),
        (
            "Abscess in the near hind, drained it. Off hind reset. No abscess in the others.",
            ["LF+RF+RH finding abscess absent", "LH finding abscess", "LH treatment drained", "RH work reset"],
        ),
        (
            "Thrush in the left hind, copper sulfate on it. No thrush in the other three feet.",
            ["LF+RF+RH finding thrush absent", "LH finding thrush", "LH treatment copper_sulfate"],
        ),
        (
            "Left front, corn. Right hind, flare. The other three have no corns.",
            ["LF finding corn", "RF+LH+RH finding corn absent", "RH finding flare"],
        ),
    ],
    "Tally. {}",
)

test_a_part_and_how_it_is = reads(
    [
        (
            "Soles, thin on both fores, ten millimetres deep near fore and nine off fore.",
            ["LF sole_depth 10", "LF+RF finding thin_sole", "RF sole_depth 9"],
        ),
        ("Soles: thin in front.", ["LF+RF finding thin_sole"]),
        ("Soles, a bit flat, both fronts.", ["LF+RF finding flat_sole ~mild"]),
        ("Heels, contracted on both fores.", ["LF+RF finding contracted_heels"]),
        ("Heels, sheared on the left front.", ["LF finding sheared_heels"]),
        ("Heels, underrun in front, mild.", ["LF+RF finding underrun_heels ~mild"]),
        ("Toes, long on the hinds.", ["LH+RH finding long_toe"]),
        ("Soles, flat on all four.", ["LF+RF+LH+RH finding flat_sole"]),
        ("Walls, weak on both fronts.", ["LF+RF finding weak_wall"]),
        ("Walls, shelly behind.", ["LH+RH finding weak_wall"]),
        ("Front soles. Thin, both of them.", ["LF+RF finding thin_sole"]),
        ("Thrush at the heels, bad in the left hind.", ["LH finding thrush @heel ~severe"]),
        ("Crack in the wall, moderate, left front.", ["LF finding crack @wall ~moderate"]),
    ],
    "Tally. {}",
)

test_a_word_for_all_the_shoes = reads(
    [
        (
            "Reset all four. Steel rim shoes, between a double aught and an aught in front, single aught behind.",
            [
                "LF+RF shoe_size 00-0",
                "LF+RF+LH+RH shoe_material steel",
                "LF+RF+LH+RH shoe_type rim",
                "LF+RF+LH+RH work reset",
                "LH+RH shoe_size 0",
            ],
        ),
        (
            "New shoes all round, steel, size seven in front, uh, no, size eight in front, seven behind.",
            ["LF+RF shoe_size 8", "LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 7"],
        ),
        (
            "New shoes all round, plain, aluminum, size two in front, I mean size three in front, size two behind.",
            [
                "LF+RF shoe_size 3",
                "LF+RF+LH+RH shoe_material aluminum",
                "LF+RF+LH+RH shoe_type plain",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH shoe_size 2",
            ],
        ),
        (
            "New shoes all round, steel, twos in front, no, threes in front, and twos behind.",
            ["LF+RF shoe_size 3", "LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 2"],
        ),
        (
            "Four new, size five in front, and behind, five again, no, four and a half behind. Steel, the lot of them.",
            [
                "LF+RF shoe_size 5",
                "LF+RF+LH+RH shoe_material steel",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH shoe_size 4.5",
            ],
        ),
        (
            "Four new shoes, fives in front, fours behind. Wide webs, the whole lot of them.",
            ["LF+RF shoe_size 5", "LF+RF+LH+RH shoe_type wide_web", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 4"],
        ),
        (
            "Reset the fronts, steel, size two, no, size three.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 3", "LF+RF work reset"],
        ),
        ("Trimmed the lot of them.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_put_back_where_it_was_lost = reads(
    [
        (
            "Lost both fronts, so the near fore was put back and the off fore got a new one.",
            ["LF work put_back", "LF+RF shoe_state lost", "RF work new_shoe"],
        ),
        ("Lost both fronts. Left front was put back.", ["LF work put_back", "LF+RF shoe_state lost"]),
        ("Lost the near fore. Her near fore has been put back.", ["LF shoe_state lost", "LF work put_back"]),
        ("Lost both fronts. I put the near fore back.", ["LF work put_back", "LF+RF shoe_state lost"]),
        (
            "He'd lost both fronts, so I tacked the near fore back and put a new one on the off.",
            ["LF work put_back", "LF+RF shoe_state lost", "RF work new_shoe"],
        ),
        ("He'd lost the near hind. The near hind has been nailed back on.", ["LH shoe_state lost", "LH work put_back"]),
        ("Picked up the near fore, put the near fore back.", []),
    ],
    "Tally. {}",
)

test_have_that_shoe_off = reads(
    [
        ("If he goes lame on the off fore I'll have that shoe off him.", ["RF work removed planned"]),
        ("If he goes lame on the off fore, I'll have the shoe off.", ["RF work removed planned"]),
        (
            "Bruise in the near fore. If that's no better I'll whip the shoe off.",
            ["LF finding bruise", "LF work removed planned"],
        ),
        (
            "Close nail in the off fore. If it flares up we'll have that shoe off.",
            ["RF finding close_nail", "RF work removed planned"],
        ),
        (
            "Abscess in the near hind, if it isn't drained by Friday I'll have the shoe off it.",
            ["LH finding abscess", "LH work removed planned"],
        ),
    ],
    "Tally. {}",
)

test_how_bad_it_was_before = reads(
    [
        (
            "Left hind has canker in the frog, moderate. Last time it was severe.",
            ["LH finding canker @frog ~moderate", "LH finding canker history ~severe"],
        ),
        (
            "Crack at the toe of the near fore, mild. It was moderate last time.",
            ["LF finding crack @toe ~mild", "LF finding crack history ~moderate"],
        ),
        (
            "Crack at the toe of the near fore, mild, was severe last time.",
            ["LF finding crack @toe ~mild", "LF finding crack history @toe ~severe"],
        ),
        (
            "Thrush in the near fore, mild now. It was bad in March.",
            ["LF finding thrush history ~severe", "LF finding thrush ~mild"],
        ),
        ("Scratches on the left hind, mild. They were worse last time.", ["LH finding scratches ~mild"]),
        ("Thrush in the near fore, mild. It was worse last visit.", ["LF finding thrush ~mild"]),
    ],
    "Tally. {}",
)

test_well_one_number_then_another = reads(
    [
        ("Lame on the left front, grade two, well, I'd call it one.", ["LF lameness 1"]),
        ("Lame on the left front, grade two, well, more like one.", ["LF lameness 1"]),
        ("Obel two, well, call it three.", ["- obel 3"]),
        ("Body condition six, well, I'd say seven.", ["- body_condition 7"]),
        ("Condition five, well, maybe six.", ["- body_condition 6"]),
        ("Cresty neck three, well, nearer to four.", ["- cresty_neck 4"]),
    ],
    "Tally. {}",
)

test_the_second_of_two_put_right = reads(
    [
        (
            "Toe angle fifty-three near fore and fifty-one, er, make it fifty-two off fore.",
            ["LF toe_angle 53", "RF toe_angle 52"],
        ),
        (
            "Toe angle fifty-three near fore and fifty-one, no, fifty-two off fore.",
            ["LF toe_angle 53", "RF toe_angle 52"],
        ),
        ("Seven nails near fore and six, er, make it five off fore.", ["LF nails 7", "RF nails 5"]),
        ("Eight nails in the left front and seven, sorry, six in the right front.", ["LF nails 8", "RF nails 6"]),
        ("Size two near fore and size three, no, size one off fore.", ["LF shoe_size 2", "RF shoe_size 1"]),
        ("Sole depth ten millimetres near fore and nine, no, eight off fore.", ["LF sole_depth 10", "RF sole_depth 8"]),
        (
            "Toe length three inches left front and four, I mean three and a half right front.",
            ["LF toe_length 76.2", "RF toe_length 88.9"],
        ),
        ("Thrush in the left hind, sorry, right hind, mild.", ["RH finding thrush ~mild"]),
    ],
    "Tally. {}",
)

test_never_stopped = reads(
    [
        ("Never quit fidgeting.", ["- manner fidgety"]),
        ("He never stopped fidgeting.", ["- manner fidgety"]),
        ("Didn't stop dancing about.", ["- manner fidgety"]),
        ("Wouldn't quit fidgeting.", ["- manner fidgety"]),
        ("He couldn't stop fidgeting the whole time.", ["- manner fidgety"]),
        ("Never fidgeted once.", []),
        ("Striding short on the near fore.", ["LF gait short_stride"]),
        ("He strides short on the left front.", ["LF gait short_stride"]),
    ],
    "Tally. {}",
)

test_smaller_things = reads(
    [
        ("Near hind, had it down as thrush.", ["LH finding thrush suspected"]),
        ("Had he thrush in the near hind, no.", ["LH finding thrush absent"]),
        (
            "A flare and ringbone in the left hind. Testers on the right hind, found a spot.",
            ["LH finding flare", "LH finding ringbone", "RH tester positive"],
        ),
        ("Flare in the left hind, found a spot in the right hind.", ["LH+RH finding flare"]),
        (
            "Bandage change on Tally. Left hind has canker. Fresh bandage on.",
            ["LH finding canker", "LH treatment bandage"],
        ),
        ("Poultice today. Abscess in the near fore, poultice on it.", ["LF finding abscess", "LF treatment poultice"]),
        (
            "May be a corn in the off fore, medial heel, the testers were mild there, and nothing on the near fore.",
            ["LF tester none", "RF finding corn suspected @medial_heel", "RF tester mild @medial_heel"],
        ),
        (
            "A bruise in the off fore, medial quarter. Testers strong there.",
            ["RF finding bruise @medial_quarter", "RF tester strong @medial_quarter"],
        ),
        (
            "Bruise in the sole of the off fore, testers strong there.",
            ["RF finding bruise @sole", "RF tester strong @sole"],
        ),
        (
            "Corn at the medial heel, near fore, nothing on the testers there.",
            ["LF finding corn @medial_heel", "LF tester none"],
        ),
    ],
    "Tally. {}",
)

test_what_he_was_afraid_of_and_what_else_a_horse_loses = reads(
    [
        (
            "I had a bad minute thinking I'd quicked him last time, left hind, but no, there's no hot nail in there.",
            ["LH finding quicked absent"],
        ),
        ("Near fore, worried I'd pricked him with the last one, no, no hot nail.", ["LF finding quicked absent"]),
        ("Trimmed the near fore. Condition four, he's lost some.", ["- body_condition 4", "LF work trim"]),
        ("Reset the fronts. She's lost a bit since the foal.", ["LF+RF work reset"]),
        ("Left front, he's lost some wall at the toe.", ["LF finding wall_loss @toe"]),
        ("I quicked him, left hind.", ["LH finding quicked"]),
        ("Reset the hinds, he's lost the left front.", ["LF shoe_state lost", "LH+RH work reset"]),
        (
            "Testers, right front, mild at the toe both times, and the left front didn't answer at all.",
            ["LF tester none", "RF tester mild @toe"],
        ),
        ("Testers in front, mild at the toe on both.", ["LF+RF tester mild @toe"]),
    ],
    "Tally. {}",
)

test_a_horse_called_by_its_shoes = reads(
    [
        ("Tally. I was late because of the heart bar horse. Fronts reset.", ["LF+RF work reset"]),
        ("Tally. Fronts reset. Got kicked by the egg bar mare after.", ["LF+RF work reset"]),
        ("Tally. Heart bars on the fronts.", ["LF+RF shoe_type heart_bar"]),
    ]
)
