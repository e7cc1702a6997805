"""A part of the foot that is sound says nothing of how the horse goes."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Off hind frog sound as a bell, no canker.", ["RH finding canker absent"]),
    ("Tally. The soles are sound.", []),
    ("Tally. The frogs are all sound.", []),
    ("Tally. Walls sound on the left front.", []),
    ("Tally. Left hind, the horn's sound, heels sound.", []),
    ("Buck. Nails are all sound and tight.", []),
    ("Buck. Bars sound, frog sound, no thrush in the near fore.", ["LF finding thrush absent @frog"]),
    ("Buck. Sole's good and sound in both fronts.", []),
    ("Buck. The bulbs look sound. He's sound.", ["- gait sound"]),
    ("Buck. He's sound as a bell.", ["- gait sound"]),
    ("Buck. Trotted up sound on the near fore.", ["LF gait sound"]),
    ("Buck. Sound behind.", ["LH+RH gait sound"]),
]


@pytest.mark.parametrize(("text", "expected"), CASES, ids=[case[0] for case in CASES])
def test_sound_parts(read: Read, text: str, expected: list[str]) -> None:
    assert told(read(text, "Tally", "Buck")[0]) == expected
