"""Who took a shoe off, what was put on, and numbers that nobody named."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "pulled by hand": (
        "Pulled both front shoes.",
        ["LF+RF work removed"],
    ),
    "pulled by horse": (
        "Bob pulled his left front.",
        ["LF shoe_state lost"],
    ),
    "trimmed and reset": (
        "Trimmed and reset the fronts.",
        ["LF+RF work reset"],
    ),
    "plural back on": (
        "The fronts went back on.",
        ["LF+RF work reset"],
    ),
    "took off": (
        "Took the fronts off, left them off.",
        ["LF+RF work removed"],
    ),
    "hot foot": (
        "Both fores hot.",
        ["LF+RF finding heat"],
    ),
    "hot day": (
        "It's hot as anything. Corn in the left front.",
        ["LF finding corn"],
    ),
    "bare sizes": (
        "Reset all four, plain steel, fronts one, hinds aught.",
        [
            "LF+RF shoe_size 1",
            "LF+RF+LH+RH shoe_material steel",
            "LF+RF+LH+RH shoe_type plain",
            "LF+RF+LH+RH work reset",
            "LH+RH shoe_size 0",
        ],
    ),
    "plural sizes": (
        "8s in front, 6s behind.",
        ["LF+RF shoe_size 8", "LH+RH shoe_size 6"],
    ),
    "half size": (
        "New steel behind, one and a half, quarter clips.",
        ["LH+RH clips quarter", "LH+RH shoe_material steel", "LH+RH shoe_size 1.5", "LH+RH work new_shoe"],
    ),
    "wedge by degrees": (
        "We put wedges on the fronts. Three degree near fore.",
        ["LF wedge 3", "LF+RF pad wedge"],
    ),
    "sole by soles": (
        "Thin soles in front, 3/8 of an inch left front.",
        ["LF sole_depth 9.5", "LF+RF finding thin_sole"],
    ),
    "in and out": (
        "Reset the left front, three in and two out.",
        ["LF nails 5", "LF work reset"],
    ),
    "oakum": (
        "Leather pads on the fronts, oakum, pine tar with it.",
        ["LF+RF packing oakum", "LF+RF pad leather"],
    ),
    "exact answer": (
        "He snatched it away when I had the testers on the left front heel, strong reaction there.",
        ["LF tester strong @heel"],
    ),
    "vet alone": (
        "No better by Tuesday, vet.",
        ["- vet referral planned"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)


test_the_old_one_put_back = reads(
    [
        (
            "Near fore cast. Put the old one back, seven nails.",
            ["LF nails 7", "LF shoe_state lost", "LF work put_back"],
        ),
        ("Off hind was lost, and the old one went back on.", ["RH shoe_state lost", "RH work put_back"]),
        ("Took the near fore off and put the old one back in the truck.", ["LF work removed"]),
        (
            "New rims in front, and the back pair I reset, plain.",
            ["LF+RF shoe_type rim", "LF+RF work new_shoe", "LH+RH shoe_type plain", "LH+RH work reset"],
        ),
    ],
    "Tansy. {}",
)

test_new_that_was = reads(
    [
        (
            "I put a straight bar across the off hind. New that was, steel.",
            ["RH shoe_material steel", "RH shoe_type straight_bar", "RH work new_shoe"],
        ),
        ("Rims in front, new they were.", ["LF+RF shoe_type rim", "LF+RF work new_shoe"]),
        ("Corn in the off fore. New that was to me.", ["RF finding corn"]),
    ],
    "Tansy. {}",
)

test_renewed_and_put_back = reads(
    [
        ("I renewed the fronts and reset the hinds.", ["LF+RF work new_shoe", "LH+RH work reset"]),
        ("Replaced both hinds with egg bars.", ["LH+RH shoe_type egg_bar", "LH+RH work new_shoe"]),
        ("The fronts were renewed.", ["LF+RF work new_shoe"]),
        ("Replaced the front pads, reset all round.", ["LF+RF+LH+RH work reset"]),
        ("I haven't replaced the hinds.", []),
        ("Put the old shoes back up front.", ["LF+RF work reset"]),
        ("I put her old shoes back behind, six nails.", ["LH+RH nails 6", "LH+RH work reset"]),
        ("Off fore, wall loss where the wall's gone. Same shoe back.", ["RF finding wall_loss", "RF work reset"]),
        ("Off fore, the shoe was gone. Same shoe back.", ["RF shoe_state lost", "RF work put_back"]),
    ],
    "Tally. {}",
)
