"""What is denied or doubted, marker by marker and frame by frame: where it ends, and whose foot it is of.

Each marker stands in several frames, with a neighbour before and behind it that keeps its own foot and status.
The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from collections.abc import Callable

from tests.reading.conftest import reads

_BEFORE, _CANKER = "Canker on the left hind. ", "LH finding canker"
_DENIED = (
    "I don't believe there's any heat", "I don't reckon there's any heat", "I failed to find any heat",
    "we can rule out heat", "no hint of heat", "I don't suspect heat",
)  # fmt: skip
_DENIED_BEHIND = (
    "not that I could see", "not that I found", "none to report", "not a sign", "no trace", "he has none",
    "there's not", "nothing doing",
)  # fmt: skip
_LISTS = (
    "heat or swelling, none", "no heat, swelling, nothing", "heat, swelling, none of it", "neither heat nor swelling",
    "I couldn't see any heat or any swelling",
)  # fmt: skip
_DOUBTED = (
    "looks to be", "looks as though there's", "may well be", "I've a feeling it's", "can't tell if it's",
    "chances are it's", "has the look of", "presumably", "I'd imagine", "I assume", "as likely as not",
)  # fmt: skip
_DOUBTED_BEHIND = ("I would think", "by the look of it", "unless I'm wrong", "could be", "I couldn't swear to it")
_OF_ELSE = (
    "I think he trod on something", "I reckon he hit a stone", "might be the bedding", "about a month old I'd guess",
    "and I think it'll grow out", "it might take a while to clear", "probably an old one", "not sure where he got it",
    "not sure where it came from", "hard to say what caused it", "couldn't say how long",
    "and I'm not worried about it", "I believe the man changed hay on him",
)  # fmt: skip
_OTHER_FOOT = (
    "possibly the off fore", "and maybe the off fore", "off fore maybe", "might be some in the off fore",
    "suspected in the off fore", "and the off fore might have",
)  # fmt: skip
_SETTLED = (
    ("Might be a corn. It is.", ""), ("Might be a corn. No, it is.", ""), ("Could be a corn. Yes, it is.", ""),
    ("I thought it might be a corn, and sure enough it is.", ""), ("I suspected a corn and I was right.", ""),
    ("I suspected a corn and I was wrong.", " absent"), ("I suspected a corn, turned out not to be.", " absent"),
    ("Might be a corn. He was quiet.", " suspected"),
)  # fmt: skip
_NOT_THE_TIME = ("that wasn't there last time", "I didn't see last time", "I hadn't noticed before")
_THERE = (
    "the owner never mentioned thrush",
    "nobody had mentioned thrush",
    "nothing but thrush",
    "nothing only thrush",
)


def _each(cases: list[tuple[str, list[str]]]) -> Callable[..., None]:
    """The cases with the finding before them, which stays as it is."""
    return reads([(_BEFORE + text, sorted([_CANKER, *facts])) for text, facts in cases])


test_what_is_denied_and_where_it_ends = _each(
    [(f"{said[0].upper()}{said[1:]} in the off fore.", ["RF finding heat absent"]) for said in _DENIED]
    + [
        (
            f"Off fore, {said}, but there's a corn in the near fore.",
            ["LF finding corn", "RF finding heat absent"],
        )
        for said in _DENIED
    ]
    + [(f"Off fore, heat, {said}.", ["RF finding heat absent"]) for said in _DENIED_BEHIND]
    + [
        (f"Off fore, heat, {said}. Near fore, a corn.", ["LF finding corn", "RF finding heat absent"])
        for said in _DENIED_BEHIND
    ]
    + [(f"Off fore, {said}.", ["RF finding heat absent", "RF finding swelling absent"]) for said in _LISTS]
    + [(f"Off fore, {said}.", ["RF finding thrush"]) for said in _THERE]
    + [(f"Off fore, thrush {said}.", ["RF finding thrush"]) for said in _NOT_THE_TIME]
)

test_what_is_doubted_and_where_it_ends = _each(
    [(f"Off fore, {said} a corn.", ["RF finding corn suspected"]) for said in _DOUBTED]
    + [
        (
            f"Off fore, {said} a corn, and there's thrush in the near fore.",
            ["LF finding thrush", "RF finding corn suspected"],
        )
        for said in _DOUBTED
    ]
    + [(f"Off fore, a corn, {said}.", ["RF finding corn suspected"]) for said in _DOUBTED_BEHIND]
    + [(f"A corn in the off fore, {said}.", ["RF finding corn"]) for said in _OF_ELSE]
    + [(f"Off fore, thrush, {said}.", ["RF finding thrush"]) for said in _OF_ELSE]
    + [
        (f"Thrush in the near fore, {said}.", ["LF finding thrush", "RF finding thrush suspected"])
        for said in _OTHER_FOOT
    ]
    + [
        (f"No thrush in the near fore, {said}.", ["LF finding thrush absent", "RF finding thrush"])
        for said in ("only in the off fore", "just in the off fore", "it's in the off fore")
    ]
)

test_a_doubt_that_is_settled = _each(
    [
        (
            f"Off fore. {text}",
            [*(["- manner quiet"] if "quiet" in text else []), f"RF finding corn{is_}"],
        )
        for text, is_ in _SETTLED
    ]
)

test_what_is_denied_of_the_other_foot_is_what_was_just_told = _each(
    [
        ("Reset the near fore, not the off fore.", ["LF work reset"]),
        ("Iodine on the near fore, not on the off fore.", ["LF treatment iodine"]),
        ("Leather pad near fore, not the off fore.", ["LF pad leather"]),
        ("Pulse raised near fore, nothing off fore.", ["LF pulse raised", "RF pulse normal"]),
        ("Pulse bounding in the near fore, not the off fore.", ["LF pulse bounding", "RF pulse normal"]),
        (
            "Near fore has seedy toe, I resected a strip, and the off fore hasn't got any.",
            [
                "LF finding white_line_disease",
                "LF treatment resection",
                "RF finding white_line_disease absent",
            ],
        ),
        (
            "Near fore is free of heat, the off fore isn't.",
            ["LF finding heat absent", "RF finding heat"],
        ),
        ("Near fore, a corn rather than thrush.", ["LF finding corn"]),
        ("Near fore, instead of thrush I found a corn.", ["LF finding corn"]),
        ("Thrush in the near fore, the off fore I couldn't tell.", ["LF finding thrush"]),
        ("Flat soles in front, the hinds aren't bad.", ["LF+RF finding flat_sole"]),
        ("Thrush in the near fore isn't bad.", ["LF finding thrush ~mild"]),
        (
            "Sulcus thrush, bad in both fronts, just a touch in the off hind.",
            ["LF+RF finding thrush @sulcus ~severe", "RH finding thrush ~mild"],
        ),
    ]
)
