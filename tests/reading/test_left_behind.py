"""A shoe that the horse left somewhere is lost; a foot that the farrier left as it is, is none."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally left his right front in the creek. Nailed a new one on.", ["RF shoe_state lost", "RF work new_shoe"]),
    ("Tally. She left the near fore in the bog.", ["LF shoe_state lost"]),
    ("Tally left the left hind out in the paddock.", ["LH shoe_state lost"]),
    (
        "Tally. He'd left his off hind in the muck heap, so I put the same shoe back on.",
        ["RH shoe_state lost", "RH work put_back"],
    ),
    ("Tally. He left a left front down in the ditch.", ["LF shoe_state lost"]),
    ("Tally. She left her right hind back at the arena.", ["RH shoe_state lost"]),
    ("Tally left his near hind under the gate.", ["LH shoe_state lost"]),
    ("Buck. She left the off fore shoe in the trailer.", ["RF shoe_state lost"]),
    (
        "Buck. He left the right hind on the trail, new shoe on it, size two.",
        ["RH shoe_size 2", "RH shoe_state lost", "RH work new_shoe"],
    ),
    (
        "Buck. He left his left front over by the trough. Reset the other three.",
        ["LF shoe_state lost", "RF+LH+RH work reset"],
    ),
    ("Buck. I left the right front in the boot.", []),
    ("Buck. We left the left hind in the same shoe.", []),
    ("Buck. I've left the near fore alone.", []),
]

test_left_behind = reads(CASES)
