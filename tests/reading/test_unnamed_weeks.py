"""Weeks dealt out in one breath: by order, by likeness, by pronoun, to the others.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read

IN_ORDER = """\
Six, four and eight weeks, same order I did them.
Six, four and eight weeks, in that order.
Six weeks, four weeks, eight weeks, in order.
Weeks, six, four and eight, in the order I did them.
Six, four, eight weeks respectively.
That's six, four and eight weeks, same order.
Back in six, four and eight weeks, as I named them.
Next time, six, four, eight weeks, in the same order.
Six, four and eight weeks in that order.
"""

LIKEWISE = """\
Tally six weeks, Buck likewise, Sable eight.
Tally six weeks, Buck the same, Sable eight.
Tally six weeks, Buck ditto, Sable eight.
Tally six weeks, same for Buck, Sable eight.
Six weeks for Tally and the same for Buck, eight for Sable.
"""

THE_OTHERS = """\
Tally in eight weeks, the other two in six.
Tally in eight weeks, the other two in five, um, no, six.
Tally in eight, the others in six weeks.
Eight weeks for Tally, six for the other two.
Eight weeks for Tally, other two six.
Tally eight weeks, six for the rest.
Tally eight weeks, the other pair six.
Tally's on eight weeks. Other two, six.
Tally's on eight weeks. The rest, six weeks.
Tally in eight weeks. The other two are on six.
"""

BY_PRONOUN = """\
Four weeks him, nine the mule.
Four weeks for him, nine for the mule.
His four weeks, hers, um, nine.
Hers nine weeks, his, um, four.
Nine weeks the mule, four himself.
Nine for the mule, four weeks for him.
Him in four weeks, her in nine.
Four weeks the gelding, nine herself.
Tally in four weeks, nine the mule.
Four weeks the gelding, the mule nine.
Four weeks for him and nine for her.
She can go nine weeks, him four.
"""


def weeks(read: Read, text: str) -> dict[str | None, list[object]]:
    visits = read(text, "Tally", "Buck", "Sable")
    return {v.horse: [f.value for f in v.facts if f.slot == "next_visit_weeks"] for v in visits}


THREE = "Tally. Thrush in the left hind. Buck. Corn in the right fore. Sable. Trimmed the hinds. "


@pytest.mark.parametrize("form", IN_ORDER.splitlines())
def test_in_the_order_of_the_horses(read: Read, form: str) -> None:
    assert weeks(read, THREE + form) == {"Tally": [6], "Buck": [4], "Sable": [8]}


@pytest.mark.parametrize("form", LIKEWISE.splitlines())
def test_one_as_the_horse_before(read: Read, form: str) -> None:
    assert weeks(read, THREE + form) == {"Tally": [6], "Buck": [6], "Sable": [8]}


@pytest.mark.parametrize("form", THE_OTHERS.splitlines())
def test_the_others(read: Read, form: str) -> None:
    assert weeks(read, THREE + form) == {"Tally": [8], "Buck": [6], "Sable": [6]}


@pytest.mark.parametrize("form", BY_PRONOUN.splitlines())
@pytest.mark.parametrize("mule", ["Mule next, that's Buck.", "Buck the mule next.", "Then the mule, goes by Buck."])
def test_him_and_her(read: Read, form: str, mule: str) -> None:
    text = f"Tally, the gelding. He has thrush in the left hind. {mule} Corn in the right fore. Back to Tally. {form}"
    assert weeks(read, text) == {"Tally": [4], "Buck": [9]}


@pytest.mark.parametrize(
    ("form", "told"),
    [
        ("Six weeks, seven if he hangs on to them.", {"Tally": [], "Buck": [6]}),
        ("Six weeks, no, four.", {"Tally": [], "Buck": [4]}),
        ("Same again in six weeks.", {"Tally": [], "Buck": [6]}),
        ("I'll see him in six weeks.", {"Tally": [], "Buck": [6]}),
    ],
)
def test_the_weeks_of_one_horse(read: Read, form: str, told: dict[str, list[int]]) -> None:
    assert weeks(read, f"Tally. Thrush in the left hind. Buck. He has a corn in the right fore. {form}") == told


BY_WHAT_IT_IS = """\
Tally goes six weeks and the yearling four.
Tally six weeks, the yearling four.
Six weeks for Tally, four for the yearling.
The yearling in four weeks, Tally in six.
Tally goes six weeks. The yearling goes four.
The yearling at four weeks and Tally at six.
"""


@pytest.mark.parametrize("form", BY_WHAT_IT_IS.splitlines())
@pytest.mark.parametrize("noun", ["yearling", "filly", "foal"])
def test_a_horse_told_by_what_it_is(read: Read, form: str, noun: str) -> None:
    text = f"Tally. Trimmed all four. Buck, that's the {noun} for the sale. Left front, flare. "
    assert weeks(read, text + form.replace("yearling", noun)) == {"Tally": [6], "Buck": [4]}


@pytest.mark.parametrize(
    ("form", "told"),
    [
        ("The colt goes four weeks.", {"Buck": [4], "Tally": []}),
        ("Four weeks for the colt.", {"Buck": [4], "Tally": []}),
        ("Six weeks. The colt goes four.", {"Buck": [4], "Tally": [6]}),
        ("I told her six weeks for the colt.", {"Buck": [], "Tally": [6]}),  # her may be the owner
        ("The vet saw the colt six weeks ago.", {"Buck": [], "Tally": []}),
        ("The mare goes four weeks.", {"Buck": [], "Tally": [4]}),
    ],
)
def test_what_it_is_with_weeks_alone(read: Read, form: str, told: dict[str, list[int]]) -> None:
    text = "Buck, that's the colt. Trimmed all four. Tally, the mare. Thrush in the left hind. "
    assert weeks(read, text + form) == told


def test_months_told_of_the_other_horse_are_no_weeks_of_it(read: Read) -> None:
    text = "Tally, she's eleven months along. Trimmed. Buck, that's the yearling. Trimmed. "
    assert weeks(read, text + "Tally six weeks, the yearling four.") == {"Tally": [6], "Buck": [4]}


def test_two_of_a_kind_get_no_weeks_by_it(read: Read) -> None:
    text = (
        "Tally. Trimmed. Buck, the filly. Trimmed. Sable, a filly too. Trimmed. Tally goes six weeks, the filly four."
    )
    assert weeks(read, text) == {"Tally": [6], "Buck": [], "Sable": []}
