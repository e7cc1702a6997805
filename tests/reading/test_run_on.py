"""A comma that was heard for the full stop before the next horse: a name opens by what stands around it.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.test_openings import BACK, NOT_ITS_TALK, PAIRS, SECOND, told

# "Thrush in the left hind, new shoes in front on Buck": whose thrush it is nobody could tell from the words alone.
_NAME_BEHIND = ("Put new shoes on", "New shoes in front", "I put new shoes")
ONE_BREATH = [form for form in SECOND.splitlines() if not form.startswith(_NAME_BEHIND)]

ONLY_SPOKEN_OF = """\
the same as {B} has on, new shoes in front.
he's in with {B}, new shoes in front.
he's the twin of {B}, new shoes in front.
{B} bit him there, new shoes in front.
{B} kicked him there, new shoes in front.
{B}'s owner held him, new shoes in front.
{B}'s rug was on him, new shoes in front.
not as bad as {B}, new shoes in front.
they were asking after {B}, new shoes in front.
he never kicked {B}, new shoes in front.
it was worse than {B}, new shoes in front.
much like {B}, new shoes in front.
he came from {B}'s place, new shoes in front.
"""


def run_on(form: str) -> str:
    """The form behind a comma, and every full stop within it a comma."""
    parts = form.removesuffix(".").split(". ")
    return ", ".join(part if part.startswith(("{", "I ")) else part[0].lower() + part[1:] for part in parts) + "."


@pytest.mark.parametrize(("first", "second"), PAIRS)
@pytest.mark.parametrize("form", ONE_BREATH)
def test_the_next_horse_behind_a_comma(read: Read, form: str, first: str, second: str) -> None:
    assert told(read, "{A}. Thrush in the left hind, " + run_on(form) + " Seven nails in each.", first, second) == {
        (first, "LH", "thrush"),
        *{(second, foot, value) for foot in ("LF", "RF") for value in ("new_shoe", "7.0")},
    }


@pytest.mark.parametrize("form", [*NOT_ITS_TALK.splitlines(), *ONLY_SPOKEN_OF.splitlines()])
def test_a_horse_only_spoken_of_behind_a_comma(read: Read, form: str) -> None:
    assert told(read, "{A}. Thrush in the left hind, " + run_on(form), "Tally", "Buck") == {
        ("Tally", "LH", "thrush"),
        *{("Tally", foot, "new_shoe") for foot in ("LF", "RF")},
    }


@pytest.mark.parametrize("form", BACK.splitlines())
def test_back_to_a_horse_behind_a_comma(read: Read, form: str) -> None:
    assert told(read, "{A}. Thrush in the left front. {B}. New shoes in front, " + run_on(form), "Tally", "Buck") == {
        ("Tally", "LF", "thrush"),
        *{("Buck", foot, "new_shoe") for foot in ("LF", "RF")},
        *{("Tally", foot, "trim") for foot in ("LH", "RH")},
    }
