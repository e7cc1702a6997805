"""Words of denial that deny nothing: much of it, a surprise, a doubt of its absence, a part that is gone."""

from __future__ import annotations

from tests.reading.conftest import reads

test_there_is_much_of_it = reads(
    [
        ("Tally. No shortage of thrush in the hinds.", ["LH+RH finding thrush"]),
        ("Tally. There's no end of flare on the near fore.", ["LF finding flare"]),
        ("Tally. No lack of bruises in the off fore.", ["RF finding bruise"]),
        ("Tally. Never seen such a crack on an off hind.", ["RH finding crack"]),
        ("Tally. Never seen a flare like it, near fore.", ["LF finding flare"]),
    ]
)

test_it_was_not_looked_for = reads(
    [
        ("Tally. Not surprised to see thrush in the left hind.", ["LH finding thrush"]),
        ("Tally. Didn't expect to find a corn in the right front.", ["RF finding corn"]),
        ("Tally. The owner hadn't noticed thrush in the near hind.", ["LH finding thrush"]),
        ("Tally. They didn't know he had a bruise in the off fore.", ["RF finding bruise"]),
    ]
)

test_its_absence_is_doubted = reads(
    [
        ("Tally. I can't say there's no thrush in the left hind.", ["LH finding thrush suspected"]),
        ("Tally. Wouldn't swear there's no abscess in the near fore.", ["LF finding abscess suspected"]),
        ("Tally. Not saying there isn't a corn in the off fore.", ["RF finding corn suspected"]),
    ]
)

test_a_part_of_it_is_gone = reads(
    [
        ("Tally. Not all of the thrush is gone from the left hind.", ["LH finding thrush"]),
        ("Tally. The swelling in the off hind hasn't all gone.", ["RH finding swelling"]),
        ("Tally. None of the thrush has cleared in the near hind.", ["LH finding thrush"]),
    ]
)

test_it_is_denied = reads(
    [
        ("Tally. I hadn't noticed any heat in the left front.", ["LF finding heat absent"]),
        ("Tally. Didn't expect any thrush in the hinds and there wasn't any.", ["LH+RH finding thrush absent"]),
        ("Tally. I've never seen thrush in that left hind.", ["LH finding thrush absent"]),
        ("Tally. I'm not surprised he's no heat in the left front.", ["LF finding heat absent"]),
        ("Tally. The thrush is all gone from the left hind.", ["LH finding thrush resolved"]),
        ("Tally. Not that there's any thrush in the left hind.", ["LH finding thrush absent"]),
    ]
)
