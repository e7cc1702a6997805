"""What is to be done on a day to come, what was there once, and the number said last of two.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_when_it_was_or_will_be = reads(
    [
        (
            "Right hind, he'd lost that one and nobody's ever gonna find it, so a new one there, number one.",
            ["RH shoe_size 1", "RH shoe_state lost", "RH work new_shoe"],
        ),
        (
            "Near hind. Nothing would hold a nail so I'm putting a glue-on on it Tuesday.",
            ["LH shoe_type glue_on planned"],
        ),
        ("I'm fitting egg bars in front on Friday.", ["LF+RF shoe_type egg_bar planned"]),
        ("We're putting wedges on the fronts tomorrow.", ["LF+RF pad wedge planned"]),
        ("He's getting new shoes in front next week.", ["LF+RF work new_shoe planned"]),
        ("They're bringing him in Monday for new shoes on the hinds.", ["LH+RH work new_shoe planned"]),
        (
            "He lost the near hind and took the outside quarter with it, so wall loss there.",
            ["LH finding wall_loss @lateral_quarter", "LH shoe_state lost"],
        ),
        ("Broke the inside heel off on the left front, wall loss there.", ["LF finding wall_loss @medial_heel"]),
        (
            "Thin sole on the off fore. Near fore used to be thin as well but it's thickened up nicely.",
            ["LF finding thin_sole resolved", "RF finding thin_sole"],
        ),
        (
            "Thin sole on the off fore, testers mild at the toe. Near fore used to be thin as well, it's come right.",
            ["LF finding thin_sole resolved", "RF finding thin_sole", "RF tester mild @toe"],
        ),
        (
            "Underrun heels on the left front. Right front used to be underrun too but that's gone.",
            ["LF finding underrun_heels", "RF finding underrun_heels resolved"],
        ),
        (
            "His hind shoes came off at New Year and he's carried on without, I just trimmed those two.",
            ["LH+RH work removed history", "LH+RH work trim"],
        ),
        (
            "Her front shoes came off in October and she's been barefoot since. Trimmed all four.",
            ["LF+RF work removed history", "LF+RF+LH+RH work trim"],
        ),
        ("Six weeks, or was it five. Five.", ["- next_visit_weeks 5 planned"]),
        ("Six weeks, or was it five. Six.", ["- next_visit_weeks 6 planned"]),
        ("Six nails, or did I say seven. Seven.", ["- nails 7"]),
        ("Size one or was it two? Two.", ["- shoe_size 2"]),
        ("Toe angle on the left front fifty, or was it fifty one, fifty one.", ["LF toe_angle 51"]),
        ("Next visit 4 weeks. No, he's off on his holidays then, five.", ["- next_visit_weeks 5 planned"]),
        ("Five weeks. Hang on, she's at camp that week, so four.", ["- next_visit_weeks 4 planned"]),
        # what is of today stands
        ("I'm fitting egg bars in front today.", ["LF+RF shoe_type egg_bar"]),
        ("On Friday he lost the left front, new shoe on it.", ["LF shoe_state lost", "LF work new_shoe"]),
        ("Six nails or was it seven in the left front.", ["LF nails 7"]),
        ("He's off on the left front.", ["LF gait lame"]),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    ("said", "weeks"),
    [
        ("Eight weeks the pair, well, no, harvest, seven.", (7, 7, None)),
        ("Tally down for six weeks and Buck for, let me look, eight. Actually no, Buck gets seven.", (6, 7, None)),
        ("Tally six weeks, Buck eight. No, Buck makes it seven.", (6, 7, None)),
        ("Buck can go ten weeks, Tally's every three.", (3, 10, None)),
        ("Sable, trimmed. Eight weeks for the first two, three for Sable.", (8, 8, 3)),
        ("Sable, reset. Tally in eight, the shod pair in six weeks.", (8, 6, 6)),
        ("Sable, reset. Six weeks for the shod two, Tally eight.", (8, 6, 6)),
        ("Sable, reset. Tally eight weeks, the other two six.", (8, 6, 6)),
    ],
)
def test_whose_weeks(read: Read, said: str, weeks: tuple[int | None, ...]) -> None:
    visits = read(f"Tally, trimmed. Buck, reset. {said}", "Tally", "Buck", "Sable")
    found = {v.horse: [f.value for f in v.facts if f.slot == "next_visit_weeks"] for v in visits}
    wanted = zip(("Tally", "Buck", "Sable"), weeks, strict=True)
    assert found == {name: [value] for name, value in wanted if value is not None}


test_treated_some_days_ago = reads(
    [
        (
            "Abscess in the near fore, the vet drained it on Monday.",
            ["LF finding abscess", "LF treatment drained history"],
        ),
        (
            "Canker in the off hind. The vet resected it last week.",
            ["RH finding canker", "RH treatment resection history"],
        ),
        (
            "Bruise in the off fore, the owner poulticed it on Sunday.",
            ["RF finding bruise", "RF treatment poultice history"],
        ),
        ("Thrush in the near hind, iodine on it since Friday.", ["LH finding thrush", "LH treatment iodine"]),
        (
            "Abscess in the near fore. The owner's to poultice it on Friday.",
            ["LF finding abscess", "LF treatment poultice planned"],
        ),
        ("Drained an abscess in the near fore.", ["LF finding abscess", "LF treatment drained"]),
    ],
    "Tally. {}",
)

test_what_it_wants = reads(
    [
        ("What they need is a leather pad in front, and I'd none with me.", ["LF+RF pad leather planned"]),
        ("Near fore and off fore, what they want is egg bars.", ["LF+RF shoe_type egg_bar planned"]),
        ("Both hinds want soaking twice a day.", ["LH+RH treatment soak planned"]),
        (
            "Near fore abscess. It needs poulticing till Friday.",
            ["LF finding abscess", "LF treatment poultice planned"],
        ),
        ("The fronts need wedge pads, I'd none on the van.", ["LF+RF pad wedge planned"]),
        ("They need a bar shoe in front but I'd none with me.", ["LF+RF shoe_type bar planned"]),
        ("The fronts need no pads, reset in front.", ["LF+RF work reset"]),
        ("Both hinds need a trim. Trimmed them.", ["LH+RH work trim"]),
        ("I need more size twos. Size two in front.", ["LF+RF shoe_size 2"]),
        ("Soaked the near fore.", ["LF treatment soak"]),
        ("Next time she'll be sedated or she'll be somebody else's horse.", ["- manner sedated planned"]),
        ("Somebody else's mare was lame on the near fore. Trimmed the hinds.", ["LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_this_set_and_the_last = reads(
    [
        (
            "Quarter clips on the fronts last set. I've gone to side clips this set, new shoes.",
            ["LF+RF clips quarter history", "LF+RF clips side", "LF+RF work new_shoe"],
        ),
        (
            "He'd bar shoes behind last set, plain this set, all new.",
            ["LH+RH shoe_type bar history", "LH+RH shoe_type plain", "LH+RH work new_shoe"],
        ),
        ("I used my last set of rim pads on the fronts.", ["LF+RF pad rim"]),
        ("Tips in front. Those are last cycle's tips reset.", ["LF+RF shoe_type tip", "LF+RF work reset"]),
        (
            "Front feet, last time's bar shoes reset, size two.",
            ["LF+RF shoe_size 2", "LF+RF shoe_type bar", "LF+RF work reset"],
        ),
        ("Front feet, egg bars. Last time's were plain.", ["LF+RF shoe_type egg_bar", "LF+RF shoe_type plain history"]),
    ],
    "Tally. {}",
)

test_who_was_struck_then = reads(
    [
        ("Pricked the near fore last week.", ["LF finding quicked history"]),
        ("Quicked the off hind last week.", ["RH finding quicked history"]),
        ("Pricked him in the near fore on Monday.", ["LF finding quicked history"]),
        ("We pricked the left front last week.", ["LF finding quicked history"]),
        (
            "Pricked her off fore yesterday, no heat in it now.",
            ["RF finding heat absent", "RF finding quicked history"],
        ),
        ("Nicked the quick on the off fore last week.", ["RF finding quicked history"]),
        ("Quicked him last week in the left hind.", ["LH finding quicked history"]),
        ("Pricked that foot last week, the near hind.", ["LH finding quicked history"]),
        ("Quicked the right front the other day.", ["RF finding quicked history"]),
        ("Caught the quick in the off hind on Friday.", ["RH finding quicked history"]),
        # here it says nothing
        ("Pricked the near fore.", ["LF finding quicked"]),
        ("Pricked the near fore today.", ["LF finding quicked"]),
        ("Somebody pricked the near fore last week.", ["LF finding quicked"]),
        ("He was pricked in the near fore last week.", ["LF finding quicked"]),
        ("Pricked in the near fore last week.", ["LF finding quicked"]),
    ]
)


SPOKEN_OF_BETWEEN_COMMAS = [
    (
        "Tally. Flat soles both fores. Buck's on Friday, don't let me forget. Testers strong on the near fore.",
        {"Tally": ["LF tester strong", "LF+RF finding flat_sole"]},
    ),
    (
        "Tally. Trimmed all round. Buck's tomorrow, if the rain holds off. No heat in the near fore.",
        {"Tally": ["LF finding heat absent", "LF+RF+LH+RH work trim"]},
    ),
    (
        "Tally. Trimmed all round. Buck was meant to be Thursday, but I did him today. Corn in the near fore.",
        {"Tally": ["LF+RF+LH+RH work trim"], "Buck": ["LF finding corn"]},
    ),
]


@pytest.mark.parametrize(
    ("text", "facts"), SPOKEN_OF_BETWEEN_COMMAS, ids=[case[0] for case in SPOKEN_OF_BETWEEN_COMMAS]
)
def test_spoken_of_between_commas(read: Read, text: str, facts: dict[str, list[str]]) -> None:
    assert {v.horse: told(v) for v in read(text, "Tally", "Buck")} == facts
