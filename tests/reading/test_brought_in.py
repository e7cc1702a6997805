"""A horse brought in by what it looks like, its name behind: what follows is its own, on the roster or not.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

BEHIND_IS = """\
The other one, no blaze, is {N}.
The other one, the black, is {N}.
His sister is {N}.
The second one, with the docked tail, that's {N}.
The bay beside him, the one with the sock, is {N}.
The mare in the end box is {N}.
The grey that came in after was {N}.
His full brother, same markings, is {N}.
Other bay, star and no socks, is {N}.
The old fella in the back pen is {N}.
The one tied to the trailer, that'd be {N}.
The next one out of the barn was {N}.
The pony, the fat one, she's {N}.
His pasture mate is {N}.
The one he shares a field with is {N}.
"""

BEHIND_A_COMMA = """\
Then they led out a mare I'd never laid eyes on, {N}, and she's not on the sheet.
Next they walked out a grey gelding, {N}, never seen him before.
There was an extra one waiting, {N}, not down on my sheet.
And an extra, {N}, who isn't on my list.
They had one more for me, {N}, and he's not on the roster.
Then a pony I don't know, {N}.
The lady next door brought hers over too, {N}, a bay cob.
They added one, a filly, {N}.
One that's not on my sheet, {N}.
Did a stray as well, {N}, belongs to the neighbour.
They sprang another one on me, {N}.
Then out comes the other one, {N}, and he was quiet enough.
"""

PEOPLE_AND_PLACES = """\
The owner's wife, {N}, held him.
The mare's owner, {N}, held him.
The girl with the grey pony, {N}, held him.
Bought him off a fella in Ballymore, {N}.
I did one yesterday in town, {N}, same thing.
"""

ONLY_SPOKEN_OF = """\
The other one isn't {N}.
He's out of {N}.
His sire was {N}.
"""


def findings(read: Read, form: str, name: str) -> set[tuple[str | None, str | None, object]]:
    text = f"Tally. Thrush in the left hind. {form.format(N=name)} Corn in the right fore."
    visits = read(text, "Tally", "Buck", "Sable")
    return {(v.horse, f.foot, f.value) for v in visits for f in v.facts if f.slot == "finding"}


@pytest.mark.parametrize("name", ["Buck", "Pontoon"])
@pytest.mark.parametrize("form", [*BEHIND_IS.splitlines(), *BEHIND_A_COMMA.splitlines()])
def test_the_next_horse_is_described_and_then_named(read: Read, form: str, name: str) -> None:
    assert findings(read, form, name) == {("Tally", "LH", "thrush"), (name, "RF", "corn")}


@pytest.mark.parametrize("form", PEOPLE_AND_PLACES.splitlines())
def test_a_person_or_a_place_is_no_horse(read: Read, form: str) -> None:
    assert findings(read, form, "Pontoon") == {("Tally", "LH", "thrush"), ("Tally", "RF", "corn")}


@pytest.mark.parametrize("name", ["Buck", "Pontoon"])
@pytest.mark.parametrize("form", ONLY_SPOKEN_OF.splitlines())
def test_a_horse_only_spoken_of_is_not_brought_in(read: Read, form: str, name: str) -> None:
    assert findings(read, form, name) == {("Tally", "LH", "thrush"), ("Tally", "RF", "corn")}


@pytest.mark.parametrize(
    ("text", "horse"),
    [
        ("Tally, off hind reset. Buck next door. Loose near fore.", "Buck"),
        ("Tally, off hind reset. They'd Buck standing there as well, and he had a loose near fore.", "Buck"),
        ("Tally, off hind reset. They'd Buck beside her for company. Loose near fore.", "Tally"),
        ("Tally, off hind reset. Buck's next door. Loose near fore.", "Tally"),
        ("Tally, off hind reset. He kicked Buck next door. Loose near fore.", "Tally"),
    ],
)
def test_a_name_next_door_is_the_next_horse(read: Read, text: str, horse: str) -> None:
    loose = [v.horse for v in read(text, "Tally", "Buck") for f in v.facts if f.slot == "shoe_state"]
    assert loose == [horse]


def test_the_order_put_right(read: Read) -> None:
    """ "Tally first, no, Buck first": Tally comes behind him, though something of no concern is told at first."""
    text = (
        "Two done. Tally first, no, I tell a lie, Buck was first. Reset all round. Tally's on box rest, nowt to do with"
        " me. Trimmed all round. No heat in her off hind."
    )
    facts = {visit.horse: told(visit) for visit in read(text, "Tally", "Buck")}
    assert facts == {"Buck": ["LF+RF+LH+RH work reset"], "Tally": ["LF+RF+LH+RH work trim", "RH finding heat absent"]}


def test_why_another_is_told(read: Read) -> None:
    (visit,) = read("Tally, no, hang on, Buck. Tally was Tuesday. Trimmed all round.", "Tally", "Buck")
    assert (visit.horse, told(visit)) == ("Buck", ["LF+RF+LH+RH work trim"])


TAKEN_ON = [
    (
        "I was loading up when they hollered that Buck had tossed his right front. Nailed it back on. No heat in it.",
        [],
        ["RF finding heat absent", "RF shoe_state lost", "RF work put_back"],
    ),
    (
        "Before I could get away they tell me Buck's thrown his left front. I tacked it back on, six nails.",
        [],
        ["LF nails 6", "LF shoe_state lost", "LF work put_back"],
    ),
    (
        "He asked would I do Buck, his sister's pony, so she got a trim, all four. Thrush in both hinds. Eight weeks.",
        [],
        ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim", "LH+RH finding thrush"],
    ),
    (
        "She wanted me to look at Buck while I was there, so he got a trim, all four.",
        [],
        ["LF+RF+LH+RH work trim"],
    ),
    (
        "They'd Buck standing there as well, so I trimmed her fores. Thrush in the off fore.",
        [],
        ["LF+RF work trim", "RF finding thrush"],
    ),
    (
        "Six weeks, and I'd only Buck's near hind to look at, she'd a crack at the toe, so that got a resection.",
        ["- next_visit_weeks 6 planned"],
        ["LH finding crack @toe", "LH treatment resection"],
    ),
    ("She asked would I do Buck but there was no time. Thrush in the near fore.", ["LF finding thrush"], []),
    ("They asked me to do Buck, but I couldn't. Thrush in the near fore.", ["LF finding thrush"], []),
    ("She asked could I see Buck next week. Thrush in the near fore.", ["LF finding thrush"], []),
    ("They had Buck tied up beside her for company. Thrush in the near fore.", ["LF finding thrush"], []),
    ("They hollered that Buck had got loose, so I waited. Thrush in the near fore.", ["LF finding thrush"], []),
]


@pytest.mark.parametrize(("text", "tally", "buck"), TAKEN_ON, ids=[text for text, _, _ in TAKEN_ON])
def test_taken_on(read: Read, text: str, tally: list[str], buck: list[str]) -> None:
    """He is in hand from there on where work is told behind what led to it; else Tally goes on."""
    facts = {visit.horse: told(visit) for visit in read(f"Tally. Reset all round. {text}", "Tally", "Buck")}
    assert facts.get("Buck", []) == buck

    assert facts["Tally"] == sorted([*tally, "LF+RF+LH+RH work reset"])


@pytest.mark.parametrize(
    "turn",
    [
        "Now the new horse is a gray, they're calling him Sergeant.",
        "There's a new pony, they're calling him Sergeant.",
        "And a new gelding, a chestnut, they're calling him Sergeant round the barn.",
    ],
)
def test_a_second_new_horse(read: Read, turn: str) -> None:
    tally, sergeant = read(f"Tally. Hinds reset. {turn} Trimmed his fronts. Corn in the near fore.", "Tally", "Captain")
    assert told(tally) == ["LH+RH work reset"]
    assert (sergeant.horse, sergeant.horse_match) == ("Sergeant", "new")
    assert told(sergeant) == ["LF finding corn", "LF+RF work trim"]


@pytest.mark.parametrize(
    "aside", ["The kids are calling her Princess now.", "Their new helper, they're calling him Bob."]
)
def test_no_second_horse(read: Read, aside: str) -> None:
    (tally,) = read(f"Tally. Hinds reset. {aside} Corn in the near fore.", "Tally")
    assert told(tally) == ["LF finding corn", "LH+RH work reset"]
