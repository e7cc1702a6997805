"""Every way of naming the next horse: what follows is its own, and nothing of it the other's.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read

PAIRS = [("Tally", "Buck"), ("Rusty", "Copper"), ("Long Division", "Star")]
ROSTER = (
    "Tally",
    "Buck",
    "Rusty",
    "Copper",
    "Patch",
    "Heel",
    "Long Division",
    "Star",
    "Juno",
    "Duke",
    "Duchess",
    "Sable",
)

FIRST = """\
{A}. Thrush in the left hind.
{A}, thrush in the left hind.
Okay this is {A}. Thrush in the left hind.
So, {A}. Thrush in the left hind.
First up {A}, thrush in the left hind.
First one's {A}. Thrush in the left hind.
Started with {A}. Thrush in the left hind.
Did {A} first. Thrush in the left hind.
{A} first. Thrush in the left hind.
Here's {A}. Thrush in the left hind.
We've got {A} here. Thrush in the left hind.
I've {A} here now. Thrush in the left hind.
Right, that's {A} done. Thrush in the left hind.
Just finished {A}. Thrush in the left hind.
Just done {A}, thrush in the left hind.
Out of {A} now. Thrush in the left hind.
{A} at the mill. Thrush in the left hind.
{A} the bay mare. Thrush in the left hind.
The bay mare, {A}. Thrush in the left hind.
Bay mare called {A}. Thrush in the left hind.
Left hind on {A} has thrush.
Thrush in {A}'s left hind.
There's thrush in the left hind of {A}.
Found thrush in the left hind on {A}.
Thrush in the left hind, this is {A}.
Thrush in the left hind. This is {A}.
Thrush in the left hind. That's {A}.
Thrush in the left hind, that's {A}.
{A} has thrush in the left hind.
{A}'s got thrush in the left hind.
{A} had thrush in the left hind.
With {A} it's thrush in the left hind.
On {A}, thrush in the left hind.
For {A}, thrush in the left hind.
Uh, {A}. Thrush in the left hind.
{A} today. Thrush in the left hind.
{A} again. Thrush in the left hind.
Back at {A}. Thrush in the left hind.
Monday, raining. {A}, thrush in the left hind.
Two done at Miller's. {A} had thrush in the left hind.
Two at the mill, {A} and {B}. {A} has thrush in the left hind.
Two today. {A}'s the first. Thrush in the left hind.
Two horses here, {A} and {B}. {A}, thrush in the left hind.
{A} then. Thrush in the left hind.
{A} was first, thrush in the left hind.
Old {A}. Thrush in the left hind.
Good old {A}, thrush in the left hind.
Wee {A}. Thrush in the left hind.
Young {A}, thrush in the left hind.
"""

SECOND = """\
{B}. New shoes in front.
{B}, new shoes in front.
Then {B}. New shoes in front.
Then {B}, new shoes in front.
Then {B} got new shoes in front.
Next is {B}. New shoes in front.
Next up {B}, new shoes in front.
Next one, {B}. New shoes in front.
Next horse is {B}, new shoes in front.
Next, {B}, new shoes in front.
And {B}. New shoes in front.
And {B} got new shoes in front.
And {B}, new shoes in front.
And then {B}, new shoes in front.
After that {B}, new shoes in front.
After that I did {B}, new shoes in front.
Second one's {B}. New shoes in front.
The other one is {B}, new shoes in front.
The other one, {B}, new shoes in front.
Other horse {B}, new shoes in front.
Now {B}. New shoes in front.
Now {B}, new shoes in front.
Now for {B}. New shoes in front.
Now on to {B}. New shoes in front.
On to {B}, new shoes in front.
Over to {B}. New shoes in front.
Moving on to {B}. New shoes in front.
{B} next. New shoes in front.
{B} now, new shoes in front.
{B} was next, new shoes in front.
{B} after, new shoes in front.
{B} got new shoes in front.
{B} gets new shoes in front.
{B} has new shoes in front.
{B}'s in new shoes in front.
{B}'s got new shoes in front.
{B} I put new shoes on in front.
{B} needed new shoes in front.
{B} went into new shoes in front.
{B} was due, new shoes in front.
As for {B}, new shoes in front.
With {B} it was new shoes in front.
For {B} it was new shoes in front.
Over on {B} new shoes in front.
Put new shoes on {B} in front.
New shoes in front on {B}.
New shoes in front for {B}.
I put new shoes on the front of {B}.
Also {B}, new shoes in front.
Also did {B}. New shoes in front.
Last one {B}, new shoes in front.
Last was {B}, new shoes in front.
Last but not least {B}. New shoes in front.
Finally {B}, new shoes in front.
Then there's {B}. New shoes in front.
Then there was {B}, new shoes in front.
Then we have {B}, new shoes in front.
Then on {B}, new shoes in front.
Then I went to {B}, new shoes in front.
So {B}. New shoes in front.
Okay {B}. New shoes in front.
Right, {B}. New shoes in front.
Right, {B}, new shoes in front.
Alright {B}, new shoes in front.
Anyway, {B}. New shoes in front.
Meanwhile {B} got new shoes in front.
Whereas {B} got new shoes in front.
His mate {B}, new shoes in front.
His sister {B} got new shoes in front.
The grey, {B}, new shoes in front.
The pony, {B}, new shoes in front.
The old fella {B}, new shoes in front.
Oh and {B}, new shoes in front.
Oh and {B} got new shoes in front.
Oh, and {B}. New shoes in front.
And last {B}, new shoes in front.
Number two, {B}. New shoes in front.
Two, {B}. New shoes in front.
Did {B} as well. New shoes in front.
Done {B} too, new shoes in front.
"""

NOT_ITS_TALK = """\
New shoes in front, same as {B}.
New shoes in front, like {B}.
New shoes in front, {B} is due next week.
He bit {B}, new shoes in front.
{B}'s owner was there. New shoes in front.
If {B} stands we'll do him next time. New shoes in front.
Not {B}. New shoes in front.
I told {B}'s owner to wait. New shoes in front.
He's quieter than {B}, new shoes in front.
Stood beside {B} he's a giant. New shoes in front.
"""


def told(read: Read, text: str, first: str, second: str) -> set[tuple[str | None, str | None, str]]:
    visits = read(text.format(A=first, B=second), *ROSTER)
    return {(v.horse, f.foot, str(f.value)) for v in visits for f in v.facts}


@pytest.mark.parametrize(("first", "second"), PAIRS)
@pytest.mark.parametrize("form", FIRST.splitlines())
def test_the_first_horse_is_named(read: Read, form: str, first: str, second: str) -> None:
    assert told(read, form + " Six weeks. {B}. New shoes in front.", first, second) == {
        *{(first, "LH", "thrush"), (first, None, "6.0")},
        *{(second, foot, "new_shoe") for foot in ("LF", "RF")},
    }


@pytest.mark.parametrize(("first", "second"), PAIRS)
@pytest.mark.parametrize("form", SECOND.splitlines())
def test_the_second_horse_is_named(read: Read, form: str, first: str, second: str) -> None:
    assert told(read, "{A}. Thrush in the left hind. " + form + " Seven nails in each.", first, second) == {
        (first, "LH", "thrush"),
        *{(second, foot, value) for foot in ("LF", "RF") for value in ("new_shoe", "7.0")},
    }


@pytest.mark.parametrize("form", NOT_ITS_TALK.splitlines())
def test_a_horse_only_spoken_of_takes_nothing(read: Read, form: str) -> None:
    assert told(read, "{A}. Thrush in the left hind. " + form, "Tally", "Buck") == {
        ("Tally", "LH", "thrush"),
        *{("Tally", foot, "new_shoe") for foot in ("LF", "RF")},
    }


BACK = """\
Oh, and {A} again, trimmed the hinds.
Going back to {A}, trimmed the hinds.
Back to {A}, trimmed the hinds.
Back to {A}. Trimmed the hinds.
{A} again. Trimmed the hinds.
{A} again, trimmed the hinds.
And {A}, I forgot, trimmed the hinds.
I forgot on {A}, trimmed the hinds.
Forgot to say, {A}, trimmed the hinds.
Forgot to say {A} had the hinds trimmed.
Oh yeah {A}, trimmed the hinds.
One more thing on {A}, trimmed the hinds.
One thing about {A}, trimmed the hinds.
About {A}, trimmed the hinds.
Also on {A}, trimmed the hinds.
{A}'s hinds I trimmed.
Trimmed {A}'s hinds too.
On {A} I trimmed the hinds as well.
{A} as well, trimmed the hinds.
Meant to say {A}'s hinds are trimmed.
With {A}, I left out that I trimmed the hinds.
Another thing, {A}, trimmed the hinds.
Wait, back to {A}, trimmed the hinds.
Sorry, back on {A}, trimmed the hinds.
And on {A} I trimmed the hinds.
And I trimmed {A}'s hinds.
Left out on {A}, hinds trimmed.
For {A} put hinds trimmed.
Add to {A}, hinds trimmed.
Put down for {A}, hinds trimmed.
"""

WEEKS = """\
Six weeks for {A}, five for {B}, eight for {C}.
{A} six weeks, {B} five, {C} eight.
{A} in six weeks, {B} in five, {C} in eight.
{A} in six, {B} in five, {C} in eight weeks.
{A} at six weeks, {B} at five and {C} at eight.
{A}'s due in six weeks, {B} in five, {C} in eight.
{A}'s six weeks, {B}'s five, {C}'s eight.
{A} six, {B} five, {C} eight weeks.
Six weeks on {A}, five on {B}, eight on {C}.
Back to {A} in six weeks, {B} in five and {C} in eight.
See {A} in six weeks, {B} in five, {C} in eight.
I'll see {A} in six weeks, {B} in five, {C} in eight.
{A} can go six weeks, {B} five, {C} eight.
{A} goes six weeks, {B} goes five, {C} goes eight.
{A} on six weeks, {B} on five, {C} on eight.
{A} gets six weeks, {B} gets five, {C} gets eight.
Put {A} down for six weeks, {B} for five, {C} for eight.
Next time {A} six weeks, {B} five weeks, {C} eight weeks.
{A}, six weeks. {B}, five. {C}, eight.
{A} six weeks. {B} five weeks. {C} eight weeks.
Six weeks, {A}. Five weeks, {B}. Eight weeks, {C}.
Six for {A}, five for {B} and eight for {C}, weeks that is.
{A} and {B} in six and five weeks, {C} in eight.
Book {A} for six weeks, {B} for five, {C} for eight.
"""


@pytest.mark.parametrize("form", BACK.splitlines())
def test_back_to_a_horse(read: Read, form: str) -> None:
    assert told(read, "{A}. Thrush in the left front. {B}. New shoes in front. " + form, "Tally", "Buck") == {
        ("Tally", "LF", "thrush"),
        *{("Buck", foot, "new_shoe") for foot in ("LF", "RF")},
        *{("Tally", foot, "trim") for foot in ("LH", "RH")},
    }


@pytest.mark.parametrize("form", WEEKS.splitlines())
def test_each_of_three_has_its_weeks(read: Read, form: str) -> None:
    text = "Tally. Thrush in the left front. Buck. New shoes in front. Sable. Trimmed the hinds. "
    facts = told(read, text + form.replace("{C}", "Sable"), "Tally", "Buck")
    weeks = {(horse, weeks) for horse, foot, weeks in facts if foot is None}
    assert weeks == {("Tally", "6.0"), ("Buck", "5.0"), ("Sable", "8.0")}


@pytest.mark.parametrize(
    "opening",
    [
        "New mare on the books, her name is Larch.",
        "New gelding here today, his name is Larch.",
        "New mare, name of Larch.",
    ],
)
def test_a_new_horse_of_whom_only_weeks_are_told_is_no_aside(read: Read, opening: str) -> None:
    visits = read(f"Tally. Near fore, corn. {opening} Nice day for it. Back in six weeks.", "Tally")
    assert [(v.horse, [(f.foot, f.value) for f in v.facts]) for v in visits] == [
        ("Tally", [("LF", "corn")]),
        ("Larch", [(None, 6.0)]),
    ]
