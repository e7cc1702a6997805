"""A statement under the wrong name, or on the wrong side, goes where it is put right to: every way of saying so.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

WRONG_HORSE = """\
Tally has thrush in the left hind. No wait, that's Buck.
Tally has thrush in the left hind. Sorry, that was Buck.
Tally has thrush in the left hind. Scratch that, it's Buck that has the thrush.
Tally has thrush in the left hind. I mean Buck has.
Tally has thrush in the left hind. Hang on, wrong horse, that's Buck.
Tally has thrush in the left hind. Wrong horse, Buck.
Tally, no, Buck, has thrush in the left hind.
Tally, sorry, Buck. Thrush in the left hind.
Tally. Correction, Buck. Thrush left hind.
This is Tally. No it's not, it's Buck. Thrush left hind.
Tally. Thrush left hind. Not Tally, Buck.
Tally. Thrush left hind. Did I say Tally, I meant Buck.
Tally. Thrush left hind. I said Tally but it's Buck.
Putting this under Tally. No, this is Buck. Thrush left hind.
"""

WRONG_SIDE = """\
Tally. Thrush in the left hind, no, the right hind.
Tally. Thrush in the left hind, sorry, right hind.
Tally. Thrush in the left hind. Sorry, right.
Tally. Thrush in the left hind, I mean right.
Tally. Thrush in the left hind. No wait, it's the right one.
Tally. Thrush in the left hind. Actually the right hind.
Tally. Thrush in the left hind. Did I say left, I meant right.
Tally. Thrush in the left hind. Not the left, the right.
Tally. Thrush in the left hind. I said left hind, it's the right hind.
Tally. Thrush in the left hind. Make that the right.
Tally. Thrush in the left hind. Correction, right hind.
Tally. Thrush in the left hind. Wrong foot, right hind.
Tally. Thrush in the left hind. Wait, I'm turned around, it's the right hind.
Tally. Thrush in the near hind, off hind, sorry.
Tally. Thrush in the near hind, did I say near, I mean off hind, in the frog.
Tally. Thrush in the left hind. Oh no it isn't, it's in the right hind.
Tally. Left hind has thrush. Scratch that, right hind.
"""


def findings(read: Read, text: str) -> set[tuple[str | None, str | None, object, str]]:
    visits = read(text, "Tally", "Buck")
    return {(v.horse, f.foot, f.value, f.status.value) for v in visits for f in v.facts if f.slot == "finding"}


@pytest.mark.parametrize("text", WRONG_HORSE.splitlines())
def test_the_horse_is_put_right(read: Read, text: str) -> None:
    assert findings(read, text) == {("Buck", "LH", "thrush", "present")}


@pytest.mark.parametrize("text", WRONG_SIDE.splitlines())
def test_the_side_is_put_right(read: Read, text: str) -> None:
    assert findings(read, text) == {("Tally", "RH", "thrush", "present")}


@pytest.mark.parametrize(
    "said", ["All of that was Buck", "Everything I just said goes on Buck", "All that is for Buck"]
)
def test_all_that_was_said_so_far_moves(read: Read, said: str) -> None:
    text = f"Tally. Thrush left hind. New shoes in front. {said}. Tally just got a trim."
    visits = read(text, "Tally", "Buck")
    told = {(v.horse, f.foot, f.value) for v in visits for f in v.facts}
    assert told == {
        *{("Buck", "LH", "thrush"), ("Buck", "LF", "new_shoe"), ("Buck", "RF", "new_shoe")},
        *{("Tally", foot, "trim") for foot in ("LF", "RF", "LH", "RH")},
    }


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        (
            "Tally has a corn in the right front. Buck has thrush behind. "
            "Back to Tally. That corn's in the left front, not the right front.",
            [["LF finding corn"], ["LH+RH finding thrush"]],
        ),
        (
            "Tally. Thrush in the off hind. Bruise in the near fore. Buck. Crack in the off fore. "
            "Back to Tally. The thrush is in the near hind, not the off hind.",
            [["LF finding bruise", "LH finding thrush"], ["RF finding crack"]],
        ),
        (
            "Tally. Right front has a corn. Reset in front. That corn is in the left front, not the right front.",
            [["LF finding corn", "LF+RF work reset"]],
        ),
        # what was told of another horse stands
        (
            "Tally. Corn in the right front. Buck. Corn in the left front, not the right front.",
            [["RF finding corn"], ["LF finding corn", "RF finding corn absent"]],
        ),
        (
            "Tally. Corn in the right front. Buck. Corn in the right front. "
            "Tally again. The corn is in the left front, not the right front.",
            [["LF finding corn"], ["RF finding corn"]],
        ),
    ],
)
def test_on_its_own_horse(read: Read, said: str, facts: list[list[str]]) -> None:
    assert [told(visit) for visit in read(said, "Tally", "Buck")] == facts
