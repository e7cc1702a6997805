"""A memo's mentions are found by class and by place: the same as by looking through all of them."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.reading import Reader
from pipeline.reading.talk import Talk
from pipeline.record import RosterHorse, Transcript
from pipeline.vocabulary import Vocabulary
from tests.generator.memo import Composer

MENDED = [
    "Otter. Thrush in the left front, no wait, right front. Testers at the toe, mild. Er, no, call it moderate.",
    "Otter. Toe crack in the right hind. Wait, I'm turned around. It's the left hind. Six nails, I mean seven.",
    "Fennel, no, sorry, Otter. Left front 50, right front 53. Swap those. Both hinds reset except the left.",
    "Otter. Four outside and three inside on the near fore, three of the four trimmed, the off hind left alone.",
]


@pytest.fixture(scope="module")
def talks(vocabulary: Vocabulary, reader: Reader) -> list[Talk]:
    """Memos read to the end, with many repairs among them."""
    composer = Composer(11, vocabulary)
    memos = [(memo.text, memo.roster) for memo in (composer.memo() for _ in range(40))]
    memos += [(text, ("Otter", "Fennel")) for text in MENDED]
    rosters = [[RosterHorse(name=name) for name in roster] for _, roster in memos]
    return [
        reader.parse(Transcript(text=text), roster, date(2026, 3, 2))[0]
        for (text, _), roster in zip(memos, rosters, strict=True)
    ]


def test_by_class(talks: list[Talk], vocabulary: Vocabulary) -> None:
    found = 0
    for talk in talks:
        for name in [*vocabulary.classes, "number", "horse"]:
            held = [m for m in talk.mentions if m.get(name) is not None]
            assert talk.having(name) == held
            for segment in talk.segments:
                assert segment.having(name) == [m for m in segment.mentions if m.get(name) is not None]
            found += len(held)
    assert found > 500


def test_by_class_and_name(talks: list[Talk]) -> None:
    for talk in talks:
        for foot in {m.readings["feet"] for m in talk.having("feet")}:
            assert talk.having("feet", foot) == [m for m in talk.mentions if m.get("feet") == foot]
        assert talk.having("feet", "no such foot") == []


def test_by_place(talks: list[Talk]) -> None:
    for talk in talks:
        for index in range(len(talk.words)):
            assert talk.holding(index) == [m for m in talk.mentions if index in m.literal]
            near = [m for m in talk.mentions if index <= m.start < index + 3]
            assert talk.starting_in(index, index + 3) == sorted(near, key=lambda m: m.start)
