"""Two things told again with their feet crossed, and what was only thought of for another foot.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_told_again_with_feet_crossed = reads(
    [
        (
            "Bruise near fore sole, corn off fore. Hang on, the bruise is on the off and the corn's on the near.",
            ["LF finding corn", "RF finding bruise @sole"],
        ),
        (
            "Abscess right hind, thrush left hind. No, the abscess is the left and the thrush is the right.",
            ["LH finding abscess", "RH finding thrush"],
        ),
        (
            "Near fore sprung, off fore loose. No, sorry, near loose and off sprung.",
            ["LF shoe_state loose", "RF shoe_state sprung"],
        ),
        (
            "Left front loose, right front sprung, no, left sprung, right loose.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Bar shoe on the left front and an egg bar on the right front. No, "
            "wait, egg bar left front, bar shoe right front.",
            ["LF shoe_type egg_bar", "RF shoe_type bar"],
        ),
        (
            "Right front lost and left front loose. Hold on, left front lost and right front loose.",
            ["LF shoe_state lost", "RF shoe_state loose"],
        ),
        (
            "Right front lost and left front loose, hold on, left front lost and right front loose.",
            ["LF shoe_state lost", "RF shoe_state loose"],
        ),
        (
            "Left hind had the thrush and the right hind the canker. Scratch that, "
            "canker left hind, thrush right hind.",
            ["LH finding canker", "RH finding thrush"],
        ),
    ],
    "Tansy. {}",
)

test_not_crossed = reads(
    [
        (
            "Corn in the left front, bruise in the right front. No heat in the "
            "left front, no swelling in the right front.",
            ["LF finding corn", "LF finding heat absent", "RF finding bruise", "RF finding swelling absent"],
        ),
        (
            "Thrush in the left hind, corn in the right front. Sorry, corn in the left front.",
            ["LF finding corn", "LH finding thrush"],
        ),
    ],
    "Tansy. {}",
)

test_asked_whether_the_other_way = reads(
    [
        (
            "Near fore sprung, off fore lost. Or was it the other way round? No, near sprung, off lost.",
            ["LF shoe_state sprung", "RF shoe_state lost"],
        ),
        (
            "Near fore sprung, off fore lost. Or was it the other way round? It was, near lost, off sprung.",
            ["LF shoe_state lost", "RF shoe_state sprung"],
        ),
        (
            "Toe angles, left front fifty two, right front fifty one, scratch that, other way about.",
            ["LF toe_angle 51", "RF toe_angle 52"],
        ),
        ("Right front, toe angle fifty degrees, had that backwards, fifty two degrees.", ["RF toe_angle 52"]),
    ],
    "Tansy. {}",
)

test_the_same_was_only_meant = reads(
    [
        (
            "Did the hinds, trimmed. Was going to do the fronts the same but he'd only had them on three weeks.",
            ["LH+RH work trim"],
        ),
        (
            "Trimmed behind. I'd have trimmed the fronts too, only they're shod and there's two weeks left in them.",
            ["LH+RH work trim"],
        ),
        (
            "Quarter crack in the right front, outside, moderate. Its twin in the left front's grown out.",
            ["LF finding crack resolved", "RF finding crack @lateral_quarter ~moderate"],
        ),
        (
            "Trainer's asking for aluminium again. He can ask. Steel, fronts, new, size two.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
        ),
        (
            "Wanted to pack it with copper sulfate but I was clean out, so iodine, left hind, thrush.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
    ],
    "Tansy. {}",
)
