"""A part of the foot that is sound says nothing of how the horse goes."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Off hind frog sound as a bell, no canker.", ["RH finding canker absent"]),
    ("Tally. The soles are sound.", []),
    ("Tally. The frogs are all sound.", []),
    ("Tally. Walls sound on the left front.", []),
    ("Tally. Left hind, the horn's sound, heels sound.", []),
    ("Buck. Nails are all sound and tight.", []),
    ("Buck. Bars sound, frog sound, no thrush in the near fore.", ["LF finding thrush absent"]),
    ("Buck. Sole's good and sound in both fronts.", []),
    ("Buck. The bulbs look sound. He's sound.", ["- gait sound"]),
    ("Buck. He's sound as a bell.", ["- gait sound"]),
    ("Buck. Trotted up sound on the near fore.", ["LF gait sound"]),
    ("Buck. Sound behind.", ["LH+RH gait sound"]),
]

test_sound_parts = reads(CASES)
