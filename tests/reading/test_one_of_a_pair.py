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

test_one_of_a_pair = reads(CASES)
