"""A horse that is on no list: every way of bringing it up, as the first and behind another.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading import telling
from tests.reading.conftest import Read, reads

FORMS = """\
New one today, {N}.
New one, {N}.
A new one, {N}, a bay mare.
There's a new one, {N}.
New horse, {N}.
New horse on the yard, {N}.
New mare called {N}.
New mare by the name of {N}.
New mare, name of {N}.
New mare, they call her {N}.
New mare, goes by {N}.
New mare, answers to {N}.
New mare. {N}, she's called.
New mare, {N} is her name.
New mare. Her name is {N}.
New mare. Name's {N}.
New pony, {N} I think they said.
New pony here called {N}.
This one's new, {N}.
This one's new to me, {N}.
This one's not on my list, {N}.
Never done this one before, {N}.
First time for this one, {N}.
First visit for {N}.
First time I've seen {N}.
{N}, new to me.
{N}, new horse.
{N}, she's new.
{N} is new here.
{N}'s a new one.
{N}, a new mare.
{N}, the new mare.
{N}, not on the list.
A chestnut called {N}.
A chestnut cob by the name of {N}.
A chestnut mare they call {N}.
Bay gelding named {N}.
Big grey called {N}.
They've a new cob, {N}.
They've got a new cob called {N}.
They've bought a mare called {N}.
They bought a new one, {N}.
Just arrived, {N}.
This is {N}.
This is {N}, new one.
Okay this is {N}.
{N}.
{N}, bay mare.
So, {N}.
Picked up a new one, {N}.
Got a new customer, the mare's called {N}.
New customer, mare called {N}.
Right, new one, {N}.
Next a new one, {N}.
And there's one I don't know, {N}.
One I don't know, called {N}.
One I hadn't met, {N}.
They call this one {N}.
He's called {N}.
She's called {N}, this one.
Her name's {N}.
The name's {N}.
Name of {N}.
"""


def told(read: Read, text: str) -> set[tuple[str | None, str | None, str]]:
    visits = read(text, "Tally", "Buck", "Rusty", "Copper")
    return {(v.horse, f.foot, str(f.value)) for v in visits for f in v.facts}


@pytest.mark.parametrize("name", ["Mandolin", "Huckleberry"])
@pytest.mark.parametrize("form", FORMS.splitlines())
def test_the_first_horse_is_unlisted(read: Read, form: str, name: str) -> None:
    text = form.format(N=name) + " Thrush in the left hind. Six weeks."
    assert told(read, text) == {(name, "LH", "thrush"), (name, None, "6.0")}


@pytest.mark.parametrize("name", ["Mandolin", "Huckleberry"])
@pytest.mark.parametrize("form", FORMS.splitlines())
def test_an_unlisted_horse_takes_nothing_from_the_one_before(read: Read, form: str, name: str) -> None:
    text = "Tally. Trimmed the fronts. " + form.format(N=name) + " Thrush in the left hind. Six weeks."
    assert told(read, text) == {
        *{("Tally", foot, "trim") for foot in ("LF", "RF")},
        *{(name, "LH", "thrush"), (name, None, "6.0")},
    }


@pytest.mark.parametrize("word", ["Lovely", "Jumpy", "Anyway", "Ur", "Perfect", "Done"])
def test_a_word_alone_is_no_horse(read: Read, word: str) -> None:
    visits = read(f"Tally. Trimmed the fronts. {word}. Thrush in the left hind.", "Tally", "Buck")
    assert [v.horse for v in visits] == ["Tally"]


PEOPLE = ("Mam has promised me", "Mum has the boots for", "Siân has promised", "Lowri has agreed", "Dad has offered")


@pytest.mark.parametrize("somebody", PEOPLE)
def test_who_promised_is_no_horse(read: Read, somebody: str) -> None:
    visits = read(f"Tally. Trimmed the fronts. {somebody} to soak the left hind.", "Tally", "Buck")
    assert [v.horse for v in visits] == ["Tally"]


def test_a_horse_that_has_something_is_one(read: Read) -> None:
    visits = read("Tally. Trimmed the fronts. Zephyr has thrush in the left hind.", "Tally", "Buck")
    assert [v.horse for v in visits] == ["Tally", "Zephyr"]


test_a_shoe_is_no_name = reads(
    [
        (
            "Tally's got a toe crack, right front. Shoe's a new one, a one and a half.",
            ["RF finding crack @toe", "RF shoe_size 1.5", "RF work new_shoe"],
        ),
        ("Tally. Left front, new shoe. Shoe's an aluminum one.", ["LF shoe_material aluminum", "LF work new_shoe"]),
    ]
)


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("New horse at the farm, a Connemara by the name of Dulcie May. She", "Dulcie May"),
        ("New horse, called April Rose. She", "April Rose"),
        ("New mare, her name is Little May. She", "Little May"),
        ("New mare, they call her Sunday Best. She", "Sunday Best"),
        ("New horse, name's Free Will. He", "Free Will"),
        ("New one, name of Buck Off. He", "Buck Off"),
        ("New horse called Zephyr. May was wet. He", "Zephyr"),
        ("New horse called Zephyr, I met him before. He", "Zephyr"),
        ("Duke. The owner called Monday. He", "Duke"),
    ],
)
def test_months_and_common_words_in_a_new_name(read: Read, said: str, name: str) -> None:
    (visit,) = read(f"{said} had thrush in the left hind.", "Tally", "Duke")
    assert (visit.horse, telling.told(visit)) == (name, ["LH finding thrush"])
