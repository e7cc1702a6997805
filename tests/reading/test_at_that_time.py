"""A clause that points to the earlier time of the one before it, and measures of two times side by side.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_clause_points_to_the_time_before = reads(
    [
        (
            "She foundered last spring, and the films then showed six degrees of rotation in the near fore.",
            ["- finding laminitis history", "LF finding rotation history"],
        ),
        (
            "He had laminitis two winters back. The X-rays then had a thin sole on both fronts.",
            ["- finding laminitis history", "LF+RF finding thin_sole history"],
        ),
        (
            "He had laminitis as a four year old, and they found a keratoma in the near fore around then as well.",
            ["- finding laminitis history", "LF finding keratoma history"],
        ),
        (
            "He had an abscess last spring in the left front, and a puncture in the right hind about the same time.",
            ["LF finding abscess history", "RH finding puncture history"],
        ),
        (
            "Abscess last winter in the off hind. Thrush in the near hind the same winter.",
            ["LH finding thrush history", "RH finding abscess history"],
        ),
        (
            "He'd had a corn in the near fore last season, and seedy toe in the off fore that same season.",
            ["LF finding corn history", "RF finding white_line_disease history"],
        ),
        (
            "She was lame on the left front last year, with a quarter crack in it then too.",
            ["LF finding crack history @quarter", "LF gait lame history"],
        ),
        (
            "Bruise in the right front two years ago, and a corn in the left front at that time.",
            ["LF finding corn history", "RF finding bruise history"],
        ),
        (
            "He lost the left hind shoe last month. An abscess in the right hind about then.",
            ["LH shoe_state lost history", "RH finding abscess history"],
        ),
        (
            "Canker in the off hind last year, and scratches in the near hind round about then.",
            ["LH finding scratches history", "RH finding canker history"],
        ),
        (
            "A puncture last summer, left front, heat in the right front around that time.",
            ["LF finding puncture history", "RF finding heat history"],
        ),
        (
            "Last year he'd an abscess in the near fore. Bruise in the off fore that same year.",
            ["LF finding abscess history", "RF finding bruise history"],
        ),
    ],
    "Buck. {}",
)

test_then_is_now = reads(
    [
        (
            "The vet's films today showed rotation in both fronts.",
            ["LF+RF finding rotation"],
        ),
        ("I looked at the pictures then, there's a thin sole on the left front.", ["LF finding thin_sole"]),
        ("Reset the fronts, and trimmed the hinds at the same time.", ["LF+RF work reset", "LH+RH work trim"]),
        (
            "Abscess in the left front last year, and thrush in both hinds today, around the same time as the others.",
            ["LF finding abscess history", "LH+RH finding thrush"],
        ),
        (
            "Bruise in the left front. Thrush in the right hind, at the same time.",
            ["LF finding bruise", "RH finding thrush"],
        ),
        ("Laminitis last spring, thrush in the left hind now.", ["- finding laminitis history", "LH finding thrush"]),
    ],
    "Buck. {}",
)

test_a_measure_of_today_beside_one_of_an_earlier_time = reads(
    [
        (
            "Toe length near fore was ninety-four millimetres last time, eighty-nine today.",
            ["LF toe_length 89", "LF toe_length 94 history"],
        ),
        ("Toe angle left front was 48 last time, 51 today.", ["LF toe_angle 48 history", "LF toe_angle 51"]),
        ("Right front toe angle, 48 last time, 51 now.", ["RF toe_angle 48 history", "RF toe_angle 51"]),
        (
            "Heel height in the off fore was 40 millimetres in March, 44 today.",
            ["RF heel_height 40 history", "RF heel_height 44"],
        ),
        ("Heel angle left hind was 50 last visit and 53 today.", ["LH heel_angle 50 history", "LH heel_angle 53"]),
        ("Toe angle in both fronts was 47 last trip, now 50.", ["LF+RF toe_angle 47 history", "LF+RF toe_angle 50"]),
        (
            "Toe length right front, three and a half inches last time but three and a quarter today.",
            ["RF toe_length 82.6", "RF toe_length 88.9 history"],
        ),
        (
            "Sole depth left front, nine millimetres last month, eleven this time.",
            ["LF sole_depth 11", "LF sole_depth 9 history"],
        ),
        ("Toe angle 52 today on the off hind, 49 last time.", ["RH toe_angle 49 history", "RH toe_angle 52"]),
        ("Left front toe length was 90 last year, this time 86.", ["LF toe_length 86", "LF toe_length 90 history"]),
        ("Toe angle 50 on both fronts, two horses today.", ["LF+RF toe_angle 50"]),
        ("Six nails in the left front, two today for me and two for the lad.", ["LF nails 6"]),
    ],
    "Buck. {}",
)

test_a_grade_closed_by_it_was_is_of_the_time_before = reads(
    [
        (
            "She's foundered before, two winters back they said, Obel three it was. Today I'd say one, Obel one.",
            ["- finding laminitis history", "- obel 1", "- obel 3 history"],
        ),
        (
            "She foundered last spring. Obel two that was. Obel one now.",
            ["- finding laminitis history", "- obel 1", "- obel 2 history"],
        ),
        (
            "He foundered two years ago, an Obel two they called it.",
            ["- finding laminitis history", "- obel 2 history"],
        ),
        ("Lame on the near fore last month, three out of five it was.", ["LF lameness 3 history"]),
        ("Laminitis, both fronts. Obel two it was.", ["- obel 2", "LF+RF finding laminitis"]),
        (
            "She foundered last spring. Trotted her up just now, two out of five it was.",
            ["- finding laminitis history", "- lameness 2"],
        ),
    ],
    "Buck. {}",
)

test_that_is_what_he_had = reads(
    [
        (
            "Came wearing plastic on both fronts, with wedge pads under them, so that's what he had before.",
            ["LF+RF pad wedge history", "LF+RF shoe_material plastic history"],
        ),
        (
            "He came in egg bars with full pads in front. That's what he had on. I put him in straight bars.",
            ["LF+RF pad full history", "LF+RF shoe_type egg_bar history", "LF+RF shoe_type straight_bar"],
        ),
        ("Corn in the near fore, that's what I found.", ["LF finding corn"]),
    ],
    "Tansy. {}",
)

test_had_until_today_and_known_by = reads(
    [
        (
            "He'd had boots on the fronts since the summer, glad to be rid of them. I put tips on the fores, new.",
            ["LF+RF shoe_type boot history", "LF+RF shoe_type tip", "LF+RF work new_shoe"],
        ),
        (
            "She'd been wearing glue-ons in front, and I put her in plain steel.",
            ["LF+RF shoe_material steel", "LF+RF shoe_type glue_on history", "LF+RF shoe_type plain"],
        ),
        ("He'd had rims in front since June, and I reset them.", ["LF+RF shoe_type rim", "LF+RF work reset"]),
        (
            "This is the pony that foundered. Obel three he was last spring, Obel one now.",
            ["- finding laminitis history", "- obel 1", "- obel 3 history"],
        ),
        ("She's foundered, I'm sure of it.", ["- finding laminitis"]),
        ("She's in for her second visit since the laminitis.", ["- finding laminitis history"]),
        ("First visit since the abscess in the left front.", ["LF finding abscess history"]),
        ("He's been lame on the left front since the puncture.", ["LF finding puncture history", "LF gait lame"]),
        ("He has had thrush in the left hind since spring.", ["LH finding thrush"]),
        ("He's been lame since Tuesday, abscess in the left front.", ["- gait lame", "LF finding abscess"]),
    ],
    "Tansy. {}",
)

test_the_last_word_is_not_before_the_first = reads(
    [
        ("The laminitis is better since", ["- finding laminitis"]),
        ("Foundered, I think it was that", ["- finding laminitis"]),
    ]
)

test_that_day_and_so_today = reads(
    [
        (
            "He was lame on the right hind a fortnight ago. He's sound today. I drained it that day.",
            ["- gait sound", "RH gait lame history", "RH treatment drained history"],
        ),
        (
            "She'd an abscess in the near fore last month. I poulticed it that day.",
            ["LF finding abscess history", "LF treatment poultice history"],
        ),
        ("Abscess in the left hind. I drained it that day.", ["LH finding abscess", "LH treatment drained"]),
        (
            "He quicked easy last time, I quicked the right front, so today I set them low, low nail line both fronts.",
            ["LF+RF nail_line low", "RF finding quicked history"],
        ),
        (
            "He was sore last visit, I quicked the near hind, so this time I set them fine, low nail line both hinds.",
            ["LH finding quicked history", "LH+RH nail_line low"],
        ),
        ("Thrush in the left hind, iodine on it, so today he's happier.", ["LH finding thrush", "LH treatment iodine"]),
    ],
    "Tally. {}",
)

test_put_on_lately = reads(
    [
        (
            "The poultice I put on the off fore yesterday has earned its keep. I've drained it.",
            ["RF treatment drained", "RF treatment poultice history"],
        ),
        ("The bandage they put on the near hind on Monday was soaked through.", ["LH treatment bandage history"]),
        (
            "Last night's poultice on the near fore has drawn it. Fresh poultice on.",
            ["LF treatment poultice", "LF treatment poultice history"],
        ),
        ("Near fore. The poultice I put on is to stay till Monday.", ["LF treatment poultice"]),
        ("The poultice I put on the off fore today is to come off on Monday.", ["RF treatment poultice"]),
    ],
    "Tally. {}",
)

test_a_fortnight_since = reads(
    [
        ("Obel two a fortnight since, Obel one today.", ["- obel 1", "- obel 2 history"]),
        (
            "Pulse was bounding in the near fore a week since, it's normal now.",
            ["LF pulse bounding history", "LF pulse normal"],
        ),
        ("Six weeks since his last trim, flare in both fronts.", ["LF+RF finding flare"]),
        (
            "Only five weeks since she got new shoes in front, near fore's lost already.",
            ["LF shoe_state lost", "LF+RF work new_shoe history"],
        ),
        (
            "It's a fortnight since I drained it, no heat in the near fore.",
            ["- treatment drained history", "LF finding heat absent"],
        ),
        ("A fortnight since I was here. Drained the near fore.", ["LF treatment drained"]),
    ],
    "Tally. {}",
)


test_she_has_had_it_and_that_was_then = reads(
    [
        ("She's had laminitis, that was two years ago.", ["- finding laminitis history"]),
        ("He's had an abscess in the left front, that was in January.", ["LF finding abscess history"]),
        ("He has had a corn in the off fore, that was last time.", ["RF finding corn history"]),
        (
            "She's got laminitis again, and she had it two summers ago.",
            ["- finding laminitis", "- finding laminitis history"],
        ),
    ],
    "Tally. {}",
)
