"""A horse whose name nobody could say gets a visit of its own, so that its facts go to no other horse.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from pipeline.record import FlagKind, HorseMatch
from tests.reading.conftest import Read
from tests.reading.telling import told

SECOND = """\
Now the mare, couldn't tell you her name, brown.
Then a bay gelding, don't know his name.
Next one's a pony, nobody could tell me the name.
There was a grey mare with no name on the stall.
Last one, I never got his name, a chestnut.
Then the new mare, they haven't named her yet.
Then some gelding whose name I didn't catch.
Also did a sorrel colt, name unknown.
Then the owner's other horse, forgot to ask what he's called.
Whatever his name is, the pony in the end stall.
And a mule, doesn't have a name.
Next one, didn't get a name.
Then a mare, name escapes me.
Don't know the pony's name, the little grey.
Then a bay mare.
Then the other mare.
There was a donkey too.
They had a donkey in as well.
Next horse, a grey.
"""


@pytest.mark.parametrize("named", SECOND.splitlines())
def test_a_second_horse_without_a_name(read: Read, named: str) -> None:
    first, second = read(
        f"Tally. Reset in front, six nails. {named} Corn left front. Trimmed all four. Eight weeks.", "Tally"
    )
    assert (first.horse, told(first)) == ("Tally", ["LF+RF nails 6", "LF+RF work reset"])
    assert (second.horse, second.horse_match) == (None, HorseMatch.UNCLEAR)
    assert told(second) == ["- next_visit_weeks 8 planned", "LF finding corn", "LF+RF+LH+RH work trim"]
    assert [f.kind for f in second.flags] == [FlagKind.HORSE]


@pytest.mark.parametrize(
    "named",
    [
        "Nobody around to ask, so I couldn't tell you what this chestnut is called.",
        "First a roan mare, no name on the card.",
        "I don't know what they call this gelding, didn't get a name for him.",
    ],
)
def test_the_first_horse_without_a_name(read: Read, named: str) -> None:
    first, second = read(f"Out at the fairgrounds. {named} Corn left front. Tally, now her I know. Trimmed.", "Tally")
    assert (first.horse, told(first)) == (None, ["LF finding corn"])
    assert (second.horse, told(second)) == ("Tally", ["LF+RF+LH+RH work trim"])


def test_announced_and_told_later(read: Read) -> None:
    text = (
        "Tally, then a mare nobody told me the name of. Tally's reset in front. Now the mare, brown. Corn left front."
    )
    first, second = read(text, "Tally")
    assert (first.horse, told(first)) == ("Tally", ["LF+RF work reset"])
    assert (second.horse, told(second)) == (None, ["LF finding corn"])


def test_two_of_them(read: Read) -> None:
    text = "Then a mare, name escapes me, corn left front. Then another mare, don't know her name either, trimmed."
    visits = read(f"Tally. Reset in front. {text} Buck. Reset.", "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [
        ("Tally", ["LF+RF work reset"]),
        (None, ["LF finding corn"]),
        (None, ["LF+RF+LH+RH work trim"]),
        ("Buck", ["LF+RF+LH+RH work reset"]),
    ]


@pytest.mark.parametrize(
    "aside",
    [
        "The groom, can't think of her name, held him.",
        "The vet came, forget his name.",
        "She's a bay mare, don't know her breeding.",
        "A nice mare to do.",
        "The mare's owner, I forget his name, was there.",
        "Nobody called about the mare.",
        "Then a mare next door kicked the wall.",
        "Then a horse got loose.",
        "I didn't name them, it's a pony club yard.",
        "They've a dog, name unknown.",
    ],
)
def test_no_other_horse(read: Read, aside: str) -> None:
    (visit,) = read(f"Tally. Reset in front. {aside} Corn left front.", "Tally")
    assert (visit.horse, told(visit)) == ("Tally", ["LF finding corn", "LF+RF work reset"])


@pytest.mark.parametrize(
    "said", ["Next up, a bay mare. Buck.", "Next up is Buck, a bay gelding.", "Then a grey, Buck."]
)
def test_described_before_its_name(read: Read, said: str) -> None:
    first, second = read(f"Tally. Reset in front. {said} Corn left front.", "Tally", "Buck")
    assert (first.horse, told(first)) == ("Tally", ["LF+RF work reset"])
    assert (second.horse, told(second)) == ("Buck", ["LF finding corn"])
