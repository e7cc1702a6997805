"""A horse told before its name, or without one: its facts go to nobody else.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read

OPENED = """\
The second one, the roan, his name's gone on me.
Next one, no name on the stall.
Then a bay mare, didn't get her name.
The other one, never caught the name.
Then there's a grey, nobody could tell me its name.
Second horse, I forget what they call it.
The next one, name escapes me.
Third one, don't know his name.
Now the chestnut, whatever he's called.
One more, a pony, no idea of the name.
The other one, name'll come to me.
Another one now, can't think of the name.
Then one I don't have a name for.
The next horse, nobody about to tell me what it's called.
Didn't get a name for the next one.
The grey next, I never asked its name.
Last one, the dun, his name I can't remember.
And the grey, don't know its name.
"""

NAMED_AT_LAST = """\
Buck, that's him.
Buck, that's the fellow.
That was Buck.
That's Buck, it just came to me.
Buck, it was.
His name's Buck, I've got it now.
It's Buck, just came back to me.
Buck, that's what they call him.
Buck, I remember now.
Buck is his name.
Buck, that was the name.
He's Buck, the groom says.
Got it, Buck.
Buck, that one.
Ah, Buck, that's it.
Buck, I think they call him.
"""

DESCRIBED = """\
The second one, the roan.
Then a bay mare.
Next horse, big dun thing.
The other mare.
Another one, a grey pony.
The last one, the cob.
"""

SOMEBODY_ELSE = """\
The owner was there, forgot her name.
New groom on the yard, didn't catch his name.
They've a new groom, I forget the name.
"""

THRUSH = ("Tally", "LH", "thrush")


def told(read: Read, text: str) -> set[tuple[str | None, str | None, str]]:
    visits = read(text, "Tally", "Buck", "Sable")
    return {(v.horse, f.foot, str(f.value)) for v in visits for f in v.facts}


@pytest.mark.parametrize("form", OPENED.splitlines())
def test_a_second_horse_without_a_name_is_nobodys(read: Read, form: str) -> None:
    facts = told(read, f"Tally. Thrush in the left hind. {form} Corn in the right fore. Six weeks.")
    assert facts == {THRUSH, (None, "RF", "corn"), (None, None, "6.0")}


@pytest.mark.parametrize("form", OPENED.splitlines())
def test_what_follows_by_name_is_not_the_nameless_ones(read: Read, form: str) -> None:
    facts = told(read, f"Tally. Thrush in the left hind. {form} Corn in the right fore. Then Buck. Canker right hind.")
    assert facts == {THRUSH, (None, "RF", "corn"), ("Buck", "RH", "canker")}


@pytest.mark.parametrize("name", NAMED_AT_LAST.splitlines())
@pytest.mark.parametrize("form", [OPENED.splitlines()[0], *DESCRIBED.splitlines()])
def test_the_name_comes_at_last(read: Read, form: str, name: str) -> None:
    facts = told(read, f"Tally. Thrush in the left hind. {form} Corn in the right fore. {name} Six weeks.")
    assert facts == {THRUSH, ("Buck", "RF", "corn"), ("Buck", None, "6.0")}


@pytest.mark.parametrize(
    "form",
    [
        "Never got a name on this one, chestnut with a wall eye.",
        "Box nine, nobody about to tell me what it's called.",
        "Didn't get a name, she's the Lindqvist girl's mare.",
        "Bay gelding by the gate, no idea what they call him.",
    ],
)
def test_the_first_horse_without_a_name_is_not_the_second(read: Read, form: str) -> None:
    assert told(read, f"{form} Corn in the right fore. Then Buck. Canker in the right hind.") == {
        (None, "RF", "corn"),
        ("Buck", "RH", "canker"),
    }
    assert told(read, f"{form} Corn in the right fore.") == {(None, "RF", "corn")}


@pytest.mark.parametrize("form", SOMEBODY_ELSE.splitlines())
def test_a_name_that_is_no_horses(read: Read, form: str) -> None:
    facts = told(
        read, f"Tally. Thrush in the left hind. {form} Corn in the right fore. Buck. Canker in the right hind."
    )
    assert facts == {THRUSH, ("Tally", "RF", "corn"), ("Buck", "RH", "canker")}


def test_two_without_a_name(read: Read) -> None:
    text = "The bay, can't think of her name. Corn right fore. And the grey, don't know its name. Canker right hind. "
    visits = read(text + "Then Tally. Thrush in the left hind.", "Tally", "Buck")
    assert [(v.horse, [f.value for f in v.facts]) for v in visits] == [
        (None, ["corn"]),
        (None, ["canker"]),
        ("Tally", ["thrush"]),
    ]
