"""Irish and Scottish names that are written as they sound, and unlisted names that the memo goes on about."""

from __future__ import annotations

import pytest

from pipeline.reading.name_base import KNOWN_LIKENESS
from pipeline.reading.sounds import as_sounded, likeness
from tests.reading.conftest import Read
from tests.reading.telling import told

HEARD = [
    ("Dervla", "Dearbhla"),
    ("Neeve", "Niamh"),
    ("Neve", "Niamh"),
    ("Seersha", "Saoirse"),
    ("Keeva", "Caoimhe"),
    ("Eefa", "Aoife"),
    ("Shivawn", "Siobhán"),
    ("Sive", "Sadhbh"),
    ("Osheen", "Oisín"),
    ("Rosheen", "Róisín"),
    ("Neesha", "Naoise"),
    ("Alva", "Ailbhe"),
    ("Leesha", "Laoise"),
    ("Keera", "Ciara"),
    ("Cleena", "Clíodhna"),
    ("Felim", "Feidhlim"),
    ("Dermot", "Diarmuid"),
    ("Vari", "Mhairi"),
    ("Kieran", "Ciaran"),
    ("Roo", "Ruadh"),
]


@pytest.mark.parametrize(("heard", "name"), HEARD)
def test_written_as_it_sounds(heard: str, name: str) -> None:
    assert likeness(heard, name) >= KNOWN_LIKENESS


@pytest.mark.parametrize(
    ("heard", "name"),
    [("Maeve", "Niamh"), ("Nora", "Niamh"), ("Clover", "Clíodhna"), ("Sherlock", "Dearbhla"), ("Iona", "Eithne")],
)
def test_another_name(heard: str, name: str) -> None:
    assert likeness(heard, name) < KNOWN_LIKENESS


@pytest.mark.parametrize("name", ["champion", "bramble", "quill", "captain", "sheba", "misty", "cinders", "thimble"])
def test_no_gaelic_name(name: str) -> None:
    assert as_sounded(name) is None


READ = [
    (
        "Two to do. Dervla first, who was sedated. Corn in the near hind. Fergus, then. Trimmed all four. "
        "Dervla in three weeks and Fergus in six.",
        ["Dearbhla", "Fergus"],
        {
            "Dearbhla": ["- manner sedated", "- next_visit_weeks 3 planned", "LH finding corn"],
            "Fergus": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Neesha, heat in the right front. Neeve is lame on the off hind. Neeve one week, Neesha two.",
        ["Naoise", "Niamh", "Nuala"],
        {
            "Naoise": ["- next_visit_weeks 2 planned", "RF finding heat"],
            "Niamh": ["- next_visit_weeks 1 planned", "RH gait lame"],
        },
    ),
    (
        "Did Leesha this morning, new shoes in front.",
        ["Laoise", "Lottie"],
        {"Laoise": ["LF+RF work new_shoe"]},
    ),
    (
        "Two here, Rosebud and Fergus. Rosebud is sound again. The abscess in the off hind is gone. "
        "Then Fergus, thrush in the near hind.",
        ["Tally", "Fergus"],
        {"Rosebud": ["- gait sound", "RH finding abscess resolved"], "Fergus": ["LH finding thrush"]},
    ),
    (
        "Rosebud was lame on the off hind. Then Fergus, thrush in the near hind. Rosebud two weeks, Fergus six.",
        ["Tally", "Fergus"],
        {
            "Rosebud": ["- next_visit_weeks 2 planned", "RH gait lame"],
            "Fergus": ["- next_visit_weeks 6 planned", "LH finding thrush"],
        },
    ),
    (
        "Nettles everywhere. Fergus, thrush in the near hind. Reset the fronts.",
        ["Tally", "Fergus"],
        {"Fergus": ["LF+RF work reset", "LH finding thrush"]},
    ),
]


@pytest.mark.parametrize(("text", "roster", "visits"), READ)
def test_whose_facts(read: Read, text: str, roster: list[str], visits: dict[str, list[str]]) -> None:
    assert {str(v.horse): told(v) for v in read(text, *roster)} == visits
