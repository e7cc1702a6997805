"""A finding as a heading, asked aloud, or spoken of again: what is told of it counts, once, on the feet told.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        (
            "Off fore, corn. Thrush. Near fore none, off fore none, near hind a bit in the frog, off hind too.",
            ["LF+RF finding thrush absent", "LH+RH finding thrush @frog ~mild", "RF finding corn"],
        ),
        (
            "Off fore, corn. Thrush. Left front a little in the frog, right front none.",
            ["LF finding thrush @frog ~mild", "RF finding corn", "RF finding thrush absent"],
        ),
        (
            "Right front, size two. Cracks. Right front none, left front one at the toe.",
            ["LF finding crack @toe", "RF finding crack absent", "RF shoe_size 2"],
        ),
        (
            "Right front, bruise. Thrush now. Near hind mild, off hind none.",
            ["LH finding thrush ~mild", "RF finding bruise", "RH finding thrush absent"],
        ),
        (
            "Flares on both fronts. Thrush. Lord. Both hinds, way down in the sulcus, bad.",
            ["LF+RF finding flare", "LH+RH finding thrush @sulcus ~severe"],
        ),
        ("Right front, size two. Bruising. Both fronts, at the toe.", ["LF+RF finding bruise @toe", "RF shoe_size 2"]),
        (
            "The near hind. Was it a close nail I'd left him with last time. No, it wasn't, no close nail in there.",
            ["LH finding close_nail absent"],
        ),
        ("Left front. Is it a bruise, is it a corn. I'd call it a corn.", ["LF finding corn"]),
        ("Left front, sore at the toe. Could it be an abscess, I don't know. No heat.", ["LF finding heat absent"]),
        ("Is there thrush, there is, in the left hind.", ["LH finding thrush"]),
        ("Had he thrush behind? He had, both hinds.", ["LH+RH finding thrush"]),
        (
            "Cracks I was going to say none, but the off fore has one at the toe, no cracks in the other three.",
            ["LF+LH+RH finding crack absent", "RF finding crack @toe"],
        ),
        (
            "Wedges in front. I had a lecturer who said never wedge a horse, and he's selling insurance now.",
            ["LF+RF pad wedge"],
        ),
        (
            "Trimmed all four. I did a pony for a man in town that was nothing but cracks and toe clips.",
            ["LF+RF+LH+RH work trim"],
        ),
        (
            "Right front, canker, mild. The left front has no canker. For the canker I want him in two weeks.",
            ["- next_visit_weeks 2 planned", "LF finding canker absent", "RF finding canker ~mild"],
        ),
        (
            "Quarter crack on the near fore. New shoes in front. Because of that crack I want him in four weeks.",
            ["- next_visit_weeks 4 planned", "LF finding crack @quarter", "LF+RF work new_shoe"],
        ),
        (
            "Thrush in both hinds. Fronts reset. Copper sulfate for the thrush.",
            ["LF+RF work reset", "LH+RH finding thrush", "LH+RH treatment copper_sulfate"],
        ),
        (
            "Left front. Thrush in the frog. Right front. Copper sulfate for the thrush in that one.",
            ["LF finding thrush @frog", "RF treatment copper_sulfate"],
        ),
        # what is told stands
        ("Left front, size two. Corn. Right hind. Thrush.", ["LF finding corn", "LF shoe_size 2", "RH finding thrush"]),
        ("Thrush in the left hind, so is the right hind.", ["LH+RH finding thrush"]),
        ("Left hind, copper sulfate for the thrush.", ["LH finding thrush", "LH treatment copper_sulfate"]),
        ("Is there thrush? There's a corn. Left front.", ["LF finding corn"]),
    ],
)
def test_what_is_told_of_it(read: Read, said: str, facts: list[str]) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == facts
