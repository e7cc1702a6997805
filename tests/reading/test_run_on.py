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


OWN = """\
{A} got her fronts reset, seven nails in each.
{A} got her fronts reset. Seven nails in each.
{A} got him new shoes in front, seven nails in each.
"""


@pytest.mark.parametrize("form", OWN.splitlines())
def test_what_a_horse_got_is_its_own(read: Read, form: str) -> None:
    assert {horse for horse, *_ in told(read, form, "Tally", "Buck")} == {"Tally"}


@pytest.mark.parametrize("form", BACK.splitlines())
def test_back_to_a_horse_behind_a_comma(read: Read, form: str) -> None:
    assert told(read, "{A}. Thrush in the left front. {B}. New shoes in front, " + run_on(form), "Tally", "Buck") == {
        ("Tally", "LF", "thrush"),
        *{("Buck", foot, "new_shoe") for foot in ("LF", "RF")},
        *{("Tally", foot, "trim") for foot in ("LH", "RH")},
    }


NOT_AS_SPELLED = [
    ("tally's next. New shoes in front.", "Tally"),
    ("tally's got new shoes in front.", "Tally"),
    ("tally first. New shoes in front.", "Tally"),
    ("tally again, new shoes in front.", "Tally"),
    ("tally's the cob, new shoes in front.", "Tally"),
    ("wombet's next. New shoes in front.", "Wombat"),
    ("wombet is in new shoes in front.", "Wombat"),
    ("then Wombet, new shoes in front.", "Wombat"),
    ("then Wombet. New shoes in front.", "Wombat"),
    ("Wombet had new shoes in front.", "Wombat"),
    ("okay, now Wombet, new shoes in front.", "Wombat"),
    ("dervla was next. New shoes in front.", "Dearbhla"),
    ("then Dervla, new shoes in front.", "Dearbhla"),
]


@pytest.mark.parametrize(("form", "name"), NOT_AS_SPELLED)
def test_a_name_misspelled_or_in_small_letters(read: Read, form: str, name: str) -> None:
    visits = read("Buck. Thrush in the left hind, " + form, "Buck", "Tally", "Wombat", "Dearbhla")
    assert {(v.horse, f.foot, str(f.value)) for v in visits for f in v.facts} == {
        ("Buck", "LH", "thrush"),
        *{(name, foot, "new_shoe") for foot in ("LF", "RF")},
    }


# Words of the trade in small letters are no horses, though the roster has horses of that name.
WORDS = [
    ("heel's underrun, new shoes in front.", ("LH", "underrun_heels")),
    ("corn's at the heel, new shoes in front.", ("LH", "corn")),
    ("wedge again, new shoes in front.", ("LH", "wedge")),
]


@pytest.mark.parametrize(("form", "fact"), WORDS)
def test_a_word_of_the_trade_in_small_letters_is_no_name(read: Read, form: str, fact: tuple[str, str]) -> None:
    visits = read("Buck. Thrush in the left hind, " + form, "Buck", "Heel", "Corn", "Wedge")
    assert {(v.horse, f.foot, str(f.value)) for v in visits for f in v.facts} == {
        ("Buck", "LH", "thrush"),
        ("Buck", *fact),
        *{("Buck", foot, "new_shoe") for foot in ("LF", "RF")},
    }


WEEKS = [
    ("Tally. Trimmed all round, Tally in six, Buck in eight weeks.", {("Tally", 6), ("Buck", 8)}),
    ("Tally. Trimmed all round, Tally six weeks, Buck eight.", {("Tally", 6), ("Buck", 8)}),
    ("Tally. Trimmed all round, six weeks for Tally, Buck in eight.", {("Tally", 6), ("Buck", 8)}),
    ("Tally. Trimmed all round, both in six weeks.", {("Tally", 6), ("Buck", 6)}),
    ("Tally. Trimmed all round, six weeks for the pair.", {("Tally", 6), ("Buck", 6)}),
    ("Tally. Trimmed all round, eight weeks for the two of them.", {("Tally", 8), ("Buck", 8)}),
    ("Tally. Trimmed all round, all back in seven weeks.", {("Tally", 7), ("Buck", 7)}),
]


@pytest.mark.parametrize(("form", "weeks"), WEEKS)
def test_the_weeks_of_several_behind_a_comma(read: Read, form: str, weeks: set[tuple[str, int]]) -> None:
    visits = read("Buck. Thrush in the left hind. " + form, "Buck", "Tally")
    assert {(v.horse, f.foot, f.slot, f.value) for v in visits for f in v.facts} == {
        ("Buck", "LH", "finding", "thrush"),
        *{("Tally", foot, "work", "trim") for foot in ("LF", "RF", "LH", "RH")},
        *{(horse, None, "next_visit_weeks", float(count)) for horse, count in weeks},
    }


TURNS = """\
then a mare nobody told me the name of, new shoes in front.
then a mare, couldn't tell you her name, new shoes in front.
and then another pony, no name on the door, new shoes in front.
then they led out a gelding, forgot what they call him, new shoes in front.
also a donkey of theirs, new shoes in front.
the second one, the roan, his name's gone on me, new shoes in front.
the next one, a bay, no idea what he's called, new shoes in front.
the last one, the grey, never caught her name, new shoes in front.
oh, and the third horse, a chestnut, didn't get the name, new shoes in front.
"""


@pytest.mark.parametrize("form", TURNS.splitlines())
def test_a_horse_without_a_name_behind_a_comma(read: Read, form: str) -> None:
    assert told(read, "{A}. Thrush in the left hind, six weeks, " + form, "Tally", "Buck") == {
        ("Tally", "LH", "thrush"),
        ("Tally", None, "6.0"),
        *{(None, foot, "new_shoe") for foot in ("LF", "RF")},
    }


LATE = """\
{B}, that's him. Trimmed the hinds.
{B}, that's her, trimmed the hinds.
{B}, that was the fellow, trimmed the hinds.
{B}, it's him, trimmed the hinds.
"""


@pytest.mark.parametrize("form", LATE.splitlines())
def test_a_name_that_comes_late_behind_a_comma(read: Read, form: str) -> None:
    text = "{A}. Thrush in the left hind, six weeks, the second one, the roan, his name's gone on me, corn in the left"
    assert told(read, f"{text} front, {form}", "Tally", "Buck") == {
        ("Tally", "LH", "thrush"),
        ("Tally", None, "6.0"),
        ("Buck", "LF", "corn"),
        *{("Buck", foot, "trim") for foot in ("LH", "RH")},
    }


NO_TURN = """\
the second one was the worse, new shoes in front.
the other one, new shoes in front.
then the last one, new shoes in front.
next time the mare gets a rest, new shoes in front.
"""


@pytest.mark.parametrize("form", NO_TURN.splitlines())
def test_no_horse_is_turned_to(read: Read, form: str) -> None:
    assert {(h, v) for h, _, v in told(read, "{A}. Thrush in the left hind, " + form, "Tally", "Buck")} == {
        ("Tally", "thrush"),
        ("Tally", "new_shoe"),
    }


# A full stop within what is said of the name that was set aside.
SET_ASIDE = """\
This is {A}, not {B}. {B} was last week. Trimmed the hinds.
This is {A}, not {B}. {B}'s the other bay. Trimmed the hinds.
{A} this time, not {B}. {B} went home on the float. Trimmed the hinds.
{A}, not {B}. {B} is the one that bit the postman. Trimmed the hinds.
Okay, {B}, no. Hang on. {A}. {B} was Tuesday. Trimmed the hinds.
First is {B}. Uh. No. {A}. {B} is the other one. Trimmed the hinds.
First is {B}. Uh. No. {A}, {B} is the other one. Trimmed the hinds.
{A} today. It was supposed to be {B} but {B} is out on the hack. Trimmed the hinds.
{A} today. It was supposed to be {B}, but {B}'s away at a show. Trimmed the hinds.
{A} today. It was supposed to be {B}. But {B} is still out in the field. Trimmed the hinds.
{A}. I was meant to do {B}, only he's lame behind. Trimmed the hinds.
{A}. It should have been {B}, but he has an abscess. Trimmed the hinds.
{A}. It should have been {B}. But he has an abscess in the near fore. Trimmed the hinds.
So this is {B}. No. Sorry. {A}. Trimmed the hinds.
This is {B}, no it isn't, it's {A}. {B} was last week, ginger cob, hairy legs. Trimmed the hinds.
This is {B}. No, it isn't. It's {A}. {B} was last week, bay mare. Trimmed the hinds.
{B}. No, that's not {B}. It's {A}, {B} was Tuesday, the grey pony. Trimmed the hinds.
{A}, not {B}. {B} went home, big chestnut horse. Trimmed the hinds.
{B} then. No it isn't, it's {A}, {B}'s got the white sock. Trimmed the hinds.
{B} next. No it's not, this is {A}. Trimmed the hinds.
{B} now. No it was {A}, {B} was this morning. Trimmed the hinds.
"""


@pytest.mark.parametrize("form", SET_ASIDE.splitlines())
def test_a_name_set_aside_takes_nothing_behind_a_full_stop(read: Read, form: str) -> None:
    assert told(read, form, "Tally", "Buck") == {("Tally", foot, "trim") for foot in ("LH", "RH")}


# A name that was set aside once, and then has its own part.
TWO_AFTER_ALL = """\
This is {A}, not {B}. Trimmed the hinds. {B}. New shoes in front.
{A} first, it was meant to be {B}. Trimmed the hinds. Then {B}, new shoes in front.
{A} first. No bother, trimmed the hinds. It's {B} next, new shoes in front.
{A}, trimmed the hinds. The next one was supposed to be {B}, and it was. New shoes in front.
This is {A}, not {B}. Trimmed the hinds. Now {B}, new shoes in front.
This is {A}, not {B}, trimmed the hinds, then {B}, new shoes in front.
This is {A}, not {B}. Trimmed the hinds. {B} has new shoes in front.
This is {A}, not {B}. Trimmed the hinds. {B}, bay mare, new shoes in front.
"""


@pytest.mark.parametrize("form", TWO_AFTER_ALL.splitlines())
def test_a_name_set_aside_has_its_own_part_later(read: Read, form: str) -> None:
    assert told(read, form, "Tally", "Buck") == {
        *{("Tally", foot, "trim") for foot in ("LH", "RH")},
        *{("Buck", foot, "new_shoe") for foot in ("LF", "RF")},
    }


ALL_BUT_ONE = [
    ("Six weeks for everybody except {B}. He can go eight.", {("Tally", 6), ("Sable", 6), ("Buck", 8)}),
    ("Everybody's on six weeks except {B}. He's on eight.", {("Tally", 6), ("Sable", 6), ("Buck", 8)}),
    ("Everybody's on six weeks except {B}, he's on eight.", {("Tally", 6), ("Sable", 6), ("Buck", 8)}),
    ("All six weeks bar {B}, he's at eight.", {("Tally", 6), ("Sable", 6), ("Buck", 8)}),
    ("All six weeks bar {B}, he's at the far gate.", {("Tally", 6), ("Sable", 6)}),
    ("Six weeks for everyone except {B}. Who can go eight.", {("Tally", 6), ("Sable", 6), ("Buck", 8)}),
    ("Six weeks for all of them but {B}.", {("Tally", 6), ("Sable", 6)}),
    ("All in six weeks except {B}.", {("Tally", 6), ("Sable", 6)}),
    ("All three in six weeks apart from {B}.", {("Tally", 6), ("Sable", 6)}),
    ("Six weeks for everybody except {B} and Sable.", {("Tally", 6)}),
]


@pytest.mark.parametrize(("form", "weeks"), ALL_BUT_ONE)
def test_the_weeks_of_all_but_one(read: Read, form: str, weeks: set[tuple[str, int]]) -> None:
    text = "{A}. Thrush in the left front. {B}. New shoes in front. Sable. Trimmed the hinds. " + form
    said = {(horse, value) for horse, foot, value in told(read, text, "Tally", "Buck") if foot is None}
    assert said == {(horse, f"{count}.0") for horse, count in weeks}
