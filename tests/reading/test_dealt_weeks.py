"""Weeks dealt out among horses go to the horse that its own clause names, in every order of saying so.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

DEALT = """\
I'd say five weeks on Tally, make that eight, and six on Buck.
Five weeks for Tally, make that eight, Buck six.
I'd go four weeks on Buck, no, six, and eight on Tally.
Eight weeks is Tally, six is Buck.
Eight weeks for Tally, six for Buck.
Tally they wanted ten weeks, I'm saying eight. Buck six.
Six weeks on Buck. Tally they wanted ten, I'm saying eight.
Six weeks for both. No, Tally can go eight.
Six weeks the pair. Tally, make that eight.
Six weeks, both. Hang on, make Tally eight.
Keep Tally at five weeks, Buck six. Actually Tally's owner's away, so make it eight for him.
Buck six weeks. Tally, give her eight.
Tally in eight, Buck in six.
Tally's on an eight, Buck's on a six week cycle.
Weeks, Tally eight, Buck six.
Tally they asked for seven weeks but I told them eight. Buck six.
Owner wants Tally at six weeks, I said eight. Buck goes six.
Long stretch for Tally, eight weeks, and Buck can have six.
Give Tally eight. Give Buck six weeks.
Tally, let's say eight. Buck, let's say six weeks.
Tally can go eight weeks and Buck, uh, six.
Buck again, he's not eight weeks, he's six. Tally eight weeks.
Six weeks, Buck. Eight weeks, Tally.
Tally and Buck in eight and six weeks.
Tally's an eight weeker, Buck six.
Tally's an eight weeker and Buck's a six weeker.
Tally is an eight weeker, and Buck, what did I tell them, six.
Tally at eight and Buck at six, weeks, I mean.
Buck six weeks, and Tally, what did I promise, uh, nine, no, I promised eight.
Tally eight and Buck, what did I say, six weeks.
I promised Tally eight weeks, and Buck, I think, six.
Tally in eight, Buck in six, or seven. Call it six.
Tally eight weeks, Buck, oh, whenever, say six.
Tally in eight weeks, or nine, and Buck in six.
Tally in eight weeks, and Buck, let's call it five, no, six.
Tally eight weeks, Buck, uh, make it six.
Tally in eight weeks, and Buck, we'll make it four, no, six.
Tally in ten weeks, let's call it eight, and Buck, say six.
"""


@pytest.mark.parametrize("said", DEALT.splitlines())
def test_each_horse_has_its_own(read: Read, said: str) -> None:
    visits = read(f"Tally. Trimmed. Buck. Trimmed. {said}", "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [
        ("Tally", ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"]),
        ("Buck", ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"]),
    ]


TOGETHER = """\
Five weeks for Tally and Buck goes when he goes.
Five weeks for Tally, Buck the same.
Tally five weeks, same for Buck.
Five weeks for Tally, Buck to go with him.
Tally five weeks and Buck goes with her.
Five weeks for Tally and Buck.
Tally and Buck five weeks.
Pair of them in four. Actually the man's hauling to the fair, call it five weeks.
Both of them, four weeks. No, the lady's away, make it five.
Team's back on the list in five weeks.
Pair's due in five weeks.
Tally at five weeks, and Buck too.
Tally in five weeks, Buck as well.
Five weeks for Tally and Buck also.
Tally in five weeks. Buck too.
"""


@pytest.mark.parametrize("said", TOGETHER.splitlines())
def test_both_horses_have_the_same(read: Read, said: str) -> None:
    visits = read(f"Tally. Trimmed. Buck. Trimmed. {said}", "Tally", "Buck")
    assert [(v.horse, told(v)) for v in visits] == [
        ("Tally", ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"]),
        ("Buck", ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"]),
    ]


@pytest.mark.parametrize(
    "said",
    [
        "Six weeks for Tally and Buck, five for Sable.",
        "Tally and Buck six weeks, Sable five.",
        "Sable's on five weeks, and Tally and Buck are on, what'd I say, seven, no, six.",
        "Sable's on five weeks, and Tally and Buck are on, I think, six.",
        "Six weeks for Tally and Buck, and five for Sable.",
        "Sable five weeks, the others six.",
        "All back in six weeks, no, Sable five.",
        "Sable five weeks. Tally and Buck are both six.",
        "Tally in six weeks, Buck too, and Sable five.",
        "Sable five weeks, Tally in six, and Buck as well.",
        "Tally in six weeks, and Buck six too, and Sable five too.",
        "Tally, Buck and Sable in six, six and five weeks.",
    ],
)
def test_two_horses_and_a_third(read: Read, said: str) -> None:
    visits = read(f"Tally. Trimmed. Buck. Trimmed. Sable. Trimmed. {said}", "Tally", "Buck", "Sable")
    weeks = [(v.horse, f.value) for v in visits for f in v.facts if f.slot == "next_visit_weeks"]
    assert weeks == [("Tally", 6), ("Buck", 6), ("Sable", 5)]


@pytest.mark.parametrize(
    ("said", "weeks"),
    [
        ("Owner's after seven weeks. He's getting five.", 5),
        ("They want eight weeks. He's getting six.", 6),
        ("She asked for ten, she's getting eight weeks.", 8),
        ("He's not six weeks, he's five.", 5),
        ("It's not eight weeks but six.", 6),
        ("Back at six if the glue holds.", 6),
        ("Back in six unless he springs it.", 6),
    ],
)
def test_what_was_agreed_stands(read: Read, said: str, weeks: int) -> None:
    (visit,) = read(f"Tally. Trimmed. {said}", "Tally")
    assert told(visit) == [f"- next_visit_weeks {weeks} planned", "LF+RF+LH+RH work trim"]


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ("Tally. Not six nails in that left front, five.", ["LF nails 5"]),
        ("Tally. Six nails in the left front, make that five, and Buck says hello.", ["LF nails 5"]),
        ("Tally. Left front toe angle isn't 50, it's 52.", ["LF toe_angle 52"]),
        ("Tally. I'm not doing four weeks, five nails in the left front.",
         ["- next_visit_weeks 4 planned", "LF nails 5"]),
    ],
)  # fmt: skip
def test_numbers_of_something_else_stay(read: Read, text: str, lines: list[str]) -> None:
    assert told(read(text, "Tally", "Buck")[0]) == lines


@pytest.mark.parametrize(
    ("said", "weeks"),
    [
        ("Tally, Buck and Sable six weeks.", (6, 6, 6)),
        ("Six weeks for Tally, Buck and Sable.", (6, 6, 6)),
        ("Six weeks for Tally, Buck, Sable.", (6, 6, 6)),
        ("Six weeks for Tally and Buck, Sable at five.", (6, 6, 5)),
        ("Six weeks for Tally, Buck and Sable in five.", (6, 5, 5)),
        ("Six, seven and five weeks for Tally, Buck and Sable.", (6, 7, 5)),
        ("Six weeks for all but Sable, five for her.", (6, 6, 5)),
        ("Tally six weeks, Buck seven, Sable five.", (6, 7, 5)),
        ("All three in six weeks.", (6, 6, 6)),
    ],
)
def test_of_three(read: Read, said: str, weeks: tuple[int, ...]) -> None:
    names = ("Tally", "Buck", "Sable")
    visits = read(f"Tally. Trimmed. Buck. Trimmed. Sable. Trimmed. {said}", *names)
    assert [(v.horse, told(v)[0]) for v in visits] == [
        (name, f"- next_visit_weeks {number} planned") for name, number in zip(names, weeks, strict=True)
    ]


@pytest.mark.parametrize(
    ("said", "tally", "buck"),
    [
        ("Two, three weeks for Tally and Buck.", 2, 2),
        ("Four, five weeks for Tally and Buck.", 4, 4),
        ("Seven, eight weeks for both.", 7, 7),
        ("Tally and Buck in five, six weeks.", 5, 5),
        ("See Tally and Buck in six, seven weeks.", 6, 6),
        ("Tally in five, six weeks, Buck in eight.", 5, 8),
        ("Buck and Tally, nine, ten weeks.", 9, 9),
        ("I'd say six, seven weeks for the pair.", 6, 6),
        ("Three, four weeks on Buck, eight on Tally.", 8, 3),
        ("Five, six weeks for Buck, Tally seven.", 7, 5),
        # no range
        ("Eight, six weeks for Tally and Buck.", 8, 6),
        ("Five and six weeks for Tally and Buck.", 5, 6),
        ("Tally six, Buck seven weeks.", 6, 7),
        ("Buck's on six weeks. Tally, I'm back there in three.", 3, 6),
        ("Buck's on six weeks. And Tally we're back there in four.", 4, 6),
        ("Tally six, seven weeks Buck.", 6, 7),
        ("Six weeks, seven weeks for Tally and Buck.", 6, 7),
    ],
)
def test_a_range_is_of_all_that_it_is_told_for(read: Read, said: str, tally: int, buck: int) -> None:
    weeks = [
        (visit.horse, fact.value)
        for visit in read(f"Tally. Fronts reset. Buck, hinds trimmed. {said}", "Tally", "Buck")
        for fact in visit.facts
        if fact.slot == "next_visit_weeks"
    ]
    assert weeks == [("Tally", tally), ("Buck", buck)]
