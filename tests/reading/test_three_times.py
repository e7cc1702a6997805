"""Today, last time and next time of one foot in one sentence, in any order; each keeps its own time and its foot."""

from __future__ import annotations

from itertools import permutations

from tests.reading.conftest import reads

# How each time is told, with the foot (%) and without it, and what that is.
_TODAY = (
    ("today I just reset %", "just a reset this time", "work reset"),
    ("reset % today", "reset for now", "work reset"),
    ("trimmed % today", "I've only trimmed it today", "work trim"),
    ("I've put % back in a plain shoe today", "a plain shoe on now", "shoe_type plain"),
)
_NEXT = (
    ("next time a leather pad on %", "next time a leather pad", "pad leather planned"),
    ("I'll put a leather pad on % next time", "he'll get a leather pad next time", "pad leather planned"),
    ("% to get a leather pad in the spring", "I'm going to try a leather pad next visit", "pad leather planned"),
)
_LAST = (
    ("last time I had studs on %", "he had studs last time", "traction studs history"),
    ("% had studs last year", "it was studs before that", "traction studs history"),
    ("studs on % last time", "last visit I put studs on", "traction studs history"),
)
_JOINERS = (", ", " and ", " but ", ", and ", ", but ")


def _told(number: int, *parts: tuple[str, str, str]) -> tuple[str, list[str]]:
    """The parts in one sentence, the foot in the first, and the facts of all."""
    first, *rest = parts
    text = first[0].replace("%", "the near fore") + "".join(
        f"{_JOINERS[(number + at) % len(_JOINERS)]}{without}" for at, (_, without, _) in enumerate(rest)
    )
    return f"{text[0].upper()}{text[1:]}.", sorted(f"LF {fact}" for _, _, fact in parts)


_TWO = [
    pair
    for one, other in ((_TODAY, _NEXT), (_TODAY, _LAST), (_LAST, _NEXT))
    for first in one
    for second in other
    for pair in permutations((first, second))
]
_THREE = [order for parts in zip(_TODAY, _NEXT, _LAST, strict=False) for order in permutations(parts)]

test_each_time_stands = reads([_told(number, *parts) for number, parts in enumerate([*_TWO, *_THREE])], "Tally. {}")

test_the_foot_behind_is_of_both_times = reads(
    [
        (f"{first.capitalize()}{joiner}{last.replace('%', 'the near fore')}.", sorted([f"LF {fact}", f"LF {done}"]))
        for _, first, fact in (*_NEXT[:2], *_LAST)
        for joiner, (last, _, done) in zip(_JOINERS, _TODAY, strict=False)
    ],
    "Tally. {}",
)

test_another_foot_at_another_time = reads(
    [
        ("Studs on the near fore today and the off fore next time.",
         ["LF traction studs", "RF traction studs planned"]),
        ("Near fore a bar shoe today, off fore next time.", ["LF shoe_type bar", "RF shoe_type bar planned"]),
        ("Near fore had studs last time, off fore today.", ["LF traction studs history", "RF traction studs"]),
        ("Reset the near fore today and the off fore next time.", ["LF work reset", "RF work reset planned"]),
        ("Reset the near fore last time and the off fore today.", ["LF work reset history", "RF work reset"]),
        ("Last time I packed both fronts with putty, today only the left.",
         ["LF packing putty", "LF+RF packing putty history"]),
        ("Near fore had thrush last time, this time it's the off fore.",
         ["LF finding thrush history", "RF finding thrush"]),
        ("Last time it was the near fore with a corn, today it's the off fore.",
         ["LF finding corn history", "RF finding corn"]),
        ("Off fore has a corn today, last time it was the near fore.",
         ["LF finding corn history", "RF finding corn"]),
        ("Near fore had bad thrush in the sulcus last time, today it's the off fore.",
         ["LF finding thrush history @sulcus ~severe", "RF finding thrush"]),
        # what follows is the foot's own, and a foot alone without a time is told of nothing else
        ("Near fore a bar shoe today, off fore next time, leather pad.",
         ["LF shoe_type bar", "RF pad leather planned"]),
        ("The studs, those were on both fores last year.", ["LF+RF traction studs history"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_what_should_have_been_was_not = reads(
    [
        (f"Trimmed the hinds. {text}", ["LF+RF work reset", "LH+RH work trim"])
        for thing in ("leather pads", "egg bars", "side clips")
        for text in (
            f"Should have put {thing} on the fronts. Reset.", f"Fronts reset, should've had {thing} on.",
            f"Fronts reset, I would rather have put {thing} on.", f"Fronts reset, could have fitted {thing}.",
        )
    ],
    "Tally. {}",
)  # fmt: skip

test_what_is_put_off_and_what_is_done_after_all = reads(
    [
        ("I've ordered heart bars for the fronts, reset for now.",
         ["LF+RF shoe_type heart_bar planned", "LF+RF work reset"]),
        ("Reset the fronts today, I've ordered heart bars for next time.",
         ["LF+RF shoe_type heart_bar planned", "LF+RF work reset"]),
        ("The heart bars I ordered for the fronts haven't come so I reset them.",
         ["LF+RF shoe_type heart_bar planned", "LF+RF work reset"]),
        ("Reset the fronts, ordered more heart bars.", ["LF+RF work reset"]),
        ("If the vet agrees, heart bars on the fronts next time, reset for now.",
         ["LF+RF shoe_type heart_bar planned", "LF+RF work reset"]),
        ("If the vet agrees heart bars, but today the fronts are just reset.",
         ["LF+RF shoe_type heart_bar planned", "LF+RF work reset"]),
        ("I was going to put studs in the fronts next time but I did it today.", ["LF+RF traction studs"]),
        ("I'd said leather pads next time for the fronts but I put them on today.", ["LF+RF pad leather"]),
        ("I was going to put studs in the fronts but I didn't do it today.", []),
        ("Fronts reset ahead of leather pads next time.", ["LF+RF pad leather planned", "LF+RF work reset"]),
        ("Fronts reset, leather pads left off for now, back on next time.",
         ["LF+RF pad leather history", "LF+RF pad leather planned", "LF+RF work reset"]),
        ("Fronts came in in leather pads, gone back in plain shoes.",
         ["LF+RF pad leather history", "LF+RF shoe_type plain"]),
        ("He came in barefoot, left in egg bars on the fronts.", ["LF+RF shoe_type egg_bar"]),
        ("He came in barefoot, trimmed the fronts.", ["LF+RF work trim"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_of_then_and_of_today = reads(
    [
        ("Near fore, thrush, iodine last time, copper sulfate today.",
         ["LF finding thrush", "LF treatment copper_sulfate", "LF treatment iodine history"]),
        ("Near fore, the corn from last time is half gone.", ["LF finding corn"]),
        ("Near fore, a corn again, it was gone last time.", ["LF finding corn"]),
        ("Near fore, the corn is gone. Plan worked. Pulse normal in the off hind.",
         ["LF finding corn resolved", "RH pulse normal"]),
        ("He had an abscess in the near fore in the spring.", ["LF finding abscess history"]),
        ("The near fore had a bar shoe in the spring.", ["LF shoe_type bar history"]),
    ],
    "Tally. {}",
)  # fmt: skip
