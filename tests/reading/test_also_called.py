"""A horse under two names keeps the roster's; a name for another horse stays that horse's.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read

TWO_NAMES = """\
This one's down as Buck, though the kids call him {N}.
Buck, they call him {N} at home.
Buck, also known as {N}.
Buck on my sheet, {N} to the kids.
The kids call him {N} but he's Buck on my sheet.
{N} they call him, Buck on the books.
He goes by {N} at home, my list says Buck.
Show name {N}, barn name Buck.
Papers say {N}, everybody calls him Buck.
Buck, or {N} to the girls.
Buck, goes by {N} with the kids.
His card says {N}, that's Buck.
Buck, answers to {N}.
The vet has her as {N}, but on my sheet she's Buck.
I have him as Buck, the owner calls him {N}.
Buck, registered name {N}.
Buck, he's {N} on his papers.
{N}, that's what they call him now, used to be Buck.
Buck. They call him {N} at home.
"""

TWO_HORSES = """\
Buck was out. They've a pony they call {N}.
A chestnut called {N}, bigger than Buck.
Buck's half brother, a colt called {N}.
Stood in beside Buck, a mare known as {N}.
"""


def findings(read: Read, text: str) -> set[tuple[str | None, str | None, object]]:
    visits = read(text, "Tally", "Buck", "Sable")
    return {(v.horse, f.foot, f.value) for v in visits for f in v.facts if f.slot == "finding"}


@pytest.mark.parametrize("name", ["Mister Biscuits", "Pontoon"])
@pytest.mark.parametrize("form", TWO_NAMES.splitlines())
def test_the_name_of_the_roster_stands(read: Read, form: str, name: str) -> None:
    told = form.format(N=name)
    assert findings(read, f"{told} Corn in the right fore.") == {("Buck", "RF", "corn")}
    behind = findings(read, f"Tally. Thrush in the left hind. {told} Corn in the right fore.")
    assert behind == {("Tally", "LH", "thrush"), ("Buck", "RF", "corn")}


@pytest.mark.parametrize("form", TWO_HORSES.splitlines())
def test_another_horse_keeps_its_own(read: Read, form: str) -> None:
    told = f"Tally. Thrush in the left hind. {form.format(N='Pontoon')} Corn in the right fore."
    assert findings(read, told) == {("Tally", "LH", "thrush"), ("Pontoon", "RF", "corn")}


SHORT_NAMES = """\
Mandolin, {N}, the black one. Corn in the right fore. Then Buck. Thrush in the left hind. {N} is six weeks, Buck four.
Mandolin, {N}. Corn in the right fore. Then Buck, thrush in the left hind. Six weeks for {N} and four for Buck.
Buck. Thrush in the left hind. Four weeks. Then Mandolin, {N}, and {N} has a corn in the right fore. {N} is six weeks.
"""


@pytest.mark.parametrize("name", ["Mandy", "Mands"])
@pytest.mark.parametrize("form", SHORT_NAMES.splitlines())
def test_a_short_form_behind_the_name_is_the_same_horse(read: Read, form: str, name: str) -> None:
    visits = read(form.format(N=name), "Mandolin", "Buck")
    assert {(v.horse, f.value) for v in visits for f in v.facts} == {
        ("Mandolin", "corn"),
        ("Mandolin", 6),
        ("Buck", "thrush"),
        ("Buck", 4),
    }


@pytest.mark.parametrize("name", ["Zephyr", "Tim"])
def test_another_word_behind_the_name_is_no_short_form(read: Read, name: str) -> None:
    visits = read(
        f"Mandolin, {name}, held her. Corn in the right fore. Then Buck. {name} has thrush in the left hind.",
        "Mandolin",
        "Buck",
    )
    assert ("Mandolin", "thrush") not in {(v.horse, f.value) for v in visits for f in v.facts}


@pytest.mark.parametrize(
    ("name", "again", "horse"),
    [
        ("Mister Beaumont", "Beaumont has", "Mister Beaumont"),
        ("Old Trafalgar", "Trafalgar has", "Old Trafalgar"),
        ("Lady Jane", "Jane has", "Lady Jane"),
        ("Big Red", "Red's got", "Big Red"),
        ("Sir Lancelot", "Back to Lancelot, he has", "Sir Lancelot"),
        ("Mister Beaumont", "Mrs Beaumont held him. He has", "Buck"),
        ("Lady Jane", "The owner Jane held him. He has", "Buck"),
        ("Big Red", "Red pads. He has", "Buck"),
        ("Big Red", "Little Red went well. He has", "Buck"),
    ],
)
def test_a_title_left_out_later(read: Read, name: str, again: str, horse: str) -> None:
    visits = read(f"{name}, reset in front. Buck, trimmed all four. {again} thrush in the left hind.", name, "Buck")
    assert [v.horse for v in visits for f in v.facts if f.value == "thrush"] == [horse]


def test_weeks_without_the_title(read: Read) -> None:
    text = "Mister Beaumont, reset in front. Taz, the donkey, trimmed. Beaumont at five weeks, the donkey at ten."
    visits = read(text, "Mister Beaumont", "Taz")
    weeks = {v.horse: f.value for v in visits for f in v.facts if f.slot == "next_visit_weeks"}
    assert weeks == {"Mister Beaumont": 5, "Taz": 10}
