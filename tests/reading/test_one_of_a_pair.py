"""One shoe of a pair is the one that its side names behind it; nails and words told of each side stay there."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. He threw a front shoe, the right one.", ["RF shoe_state lost"]),
    ("Tally. He'd cast a hind shoe, the near one.", ["LH shoe_state lost"]),
    ("Tally. Lost a front shoe, the left.", ["LF shoe_state lost"]),
    ("Tally. A hind shoe was loose, the off one.", ["RH shoe_state loose"]),
    ("Tally. She'd sprung a front shoe, right front.", ["RF shoe_state sprung"]),
    ("Tally. He yanked a hind shoe off, the left, and the wall's fine.", ["LH shoe_state lost"]),
    ("Tally. Missing a front shoe, it was the left one.", ["LF shoe_state lost"]),
    ("Buck. He came in with a fore shoe loose, the off fore.", ["RF shoe_state loose"]),
    ("Buck. Threw a hind, the right one, in the night.", ["RH shoe_state lost"]),
    ("Buck. One front shoe was worn through, the left one.", ["LF shoe_state worn"]),
    (
        "Buck. Hinds, one of them was loose, it was the left hind, so both of those got reset.",
        ["LH shoe_state loose", "LH+RH work reset"],
    ),
    ("Buck. One of the fronts was sprung, the right one.", ["RF shoe_state sprung"]),
    ("Buck. Both hinds, one of them was worn, the near hind.", ["LH shoe_state worn"]),
    ("Buck. One of the hinds was loose, that was the off hind.", ["RH shoe_state loose"]),
    ("Buck. New shoes in front. Five nails left, six right.", ["LF nails 5", "LF+RF work new_shoe", "RF nails 6"]),
    ("Buck. Hinds reset, six nails near, seven off.", ["LH nails 6", "LH+RH work reset", "RH nails 7"]),
    (
        "Buck. Eight nails on the left front and seven on the right because one wouldn't hold.",
        ["LF nails 8", "RF nails 7"],
    ),
    ("Buck. Six nails on the near fore and five on the off since the wall's poor.", ["LF nails 6", "RF nails 5"]),
    ("Buck. Seven nails in the right front and six in the left where the wall broke.", ["LF nails 6", "RF nails 7"]),
    ("Buck. Left front reset, six nails, left hind has a corn.", ["LF nails 6", "LF work reset", "LH finding corn"]),
]

OF_THE_END: list[tuple[str, list[str]]] = [
    ("Tally. He is one out of five in front on the near fore.", ["LF lameness 1"]),
    ("Tally. She's lame behind, on the off hind.", ["RH gait lame"]),
    ("Buck. Two out of five up front on the right front.", ["RF lameness 2"]),
    ("Buck. There's a flare behind on the near hind, mild.", ["LH finding flare ~mild"]),
    ("Buck. Flare behind, in the left hind, and a corn.", ["LH finding corn", "LH finding flare"]),
    ("Buck. Reset in front, on the near fore with a leather pad.", ["LF pad leather", "LF+RF work reset"]),
    ("Buck. Trimmed behind, in the near hind there's thrush.", ["LH finding thrush", "LH+RH work trim"]),
    ("Buck. Six nails in front, on the near fore seven.", ["LF nails 7", "RF nails 6"]),
    ("Buck. Trimmed behind. On the near hind, a corn.", ["LH finding corn", "LH+RH work trim"]),
]

test_one_of_a_pair = reads(CASES)
test_the_foot_of_an_end = reads(OF_THE_END)

test_one_hind_needed = reads(
    [
        (
            "Reset the hinds. One hind needed six nails, the other needed seven.",
            ["- nails 6", "- nails 7", "LH+RH work reset"],
        ),
        (
            "Reset the hinds. One hind took six nails and the other took seven.",
            ["- nails 6", "- nails 7", "LH+RH work reset"],
        ),
        ("Reset the hinds. One hind needed six nails.", ["- nails 6", "LH+RH work reset"]),
        ("New shoes in front. One hind took a full pad.", ["- pad full", "LF+RF work new_shoe"]),
        (
            "Size two front, size one hind, six nails.",
            ["LF+RF shoe_size 2", "LF+RF+LH+RH nails 6", "LH+RH shoe_size 1"],
        ),
    ],
    "Tally. {}",
)

test_pulled_one = reads(
    [
        ("Hinds, pulled one, the left.", ["LH work removed"]),
        ("Fronts, pulled one, the right one, and reset the other.", ["LF work reset", "RF work removed"]),
        ("Pulled one hind, the left.", ["LH work removed"]),
        ("Hinds, took one off, the off one.", ["RH work removed"]),
        ("Pulled one, the left hind.", ["LH work removed"]),
        ("I pulled one of the fronts, the near.", ["LF work removed"]),
        ("Hinds, he'd pulled one, the left.", ["LH shoe_state lost"]),
        ("He pulled one, the left hind.", []),
        ("Pulled one nail, the left front.", []),
        ("I haven't pulled one, the left front.", []),
    ],
    "Tally. {}",
)

test_its_neighbour_is_asked = reads(
    [
        (f"Near fore has a corn. {said}", ["- finding thrush", "LF finding corn"])
        for said in (
            "Its neighbour has thrush.",
            "Its neighbor's got thrush.",
            "The one beside it has thrush.",
            "Thrush in the foot next to it.",
            "Thrush in the neighbouring foot.",
        )
    ]
    + [
        ("Near fore has a corn. The other one of the pair has thrush.", ["LF finding corn", "RF finding thrush"]),
        ("Near fore has a corn. Its fellow has thrush.", ["LF finding corn", "RF finding thrush"]),
        ("Near fore has a corn. It has thrush.", ["LF finding corn", "LF finding thrush"]),
        ("Near fore has a corn. The neighbour held her, thrush in it.", ["LF finding corn", "LF finding thrush"]),
    ],
    "Tally. {}",
)

test_the_foot_of_a_side_told_behind_its_end = reads(
    [
        ("Corn in front, on the near side.", ["LF finding corn"]),
        ("There's a bruise in front, on the right.", ["RF finding bruise"]),
        ("The thrush is in front, on the off side, in the frog.", ["RF finding thrush @frog"]),
        ("Lost a shoe behind, on the off side. Nailed it back on.", ["RH shoe_state lost", "RH work put_back"]),
        ("A crack behind, left side, at the toe.", ["LH finding crack @toe"]),
        ("The abscess is in front, off side. Drained it.", ["RF finding abscess", "RF treatment drained"]),
        ("Thrush behind, on the left, and a corn on the right.", ["LH finding thrush", "RH finding corn"]),
        ("She's lame in front, on the off side.", ["RF gait lame"]),
        ("Loose in back, on the left. Reset it.", ["LH shoe_state loose", "LH work reset"]),
        ("Thrush in front. On the off side there's a crack too.", ["LF+RF finding thrush", "RF finding crack"]),
        ("Testers in front, on the off side mild.", ["RF tester mild"]),
        ("New shoes in front, on the off side.", ["LF+RF work new_shoe"]),
        ("A corn in front, right, so I put a bar shoe on.", ["LF+RF finding corn", "LF+RF shoe_type bar"]),
    ],
    "Tansy. {}",
)
