"""The same mistake played again: real sound through the recogniser, corrected once, right from the next memo on.

``off_hind.ogg`` says "Hester. Off hind, canker in the frog, mild. Six weeks." in the synthetic voice hibari_heart
(Apache-2.0, as in demo_audio/NOTICE.md), Opus at 24 kbit/s. The packaged weights write "Kinker" for the canker.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from pipeline.errors import WeightsError
from pipeline.hearing.recognise import Recogniser
from pipeline.hearing.settings import HearingSettings
from pipeline.hearing.snippets import Snippets
from pipeline.ingest import Ingest
from pipeline.keeping import Store
from pipeline.keeping.lessons import WordLesson
from pipeline.keeping.own_words import vocabulary_with_own
from pipeline.record import RosterHorse
from pipeline.using.review import Review
from pipeline.vocabulary import load_vocabulary

CLIP = Path(__file__).with_name("off_hind.ogg")
DAY = date(2026, 5, 12)
MEANT = ("RH", "canker", "frog", "mild", True)


@pytest.fixture(scope="module")
def unbiased() -> Recogniser:
    """A recogniser that is told nothing, so that it makes the same mistake every time."""
    recogniser = Recogniser(HearingSettings(bias=False, verify=False, adapter=False), load_vocabulary())
    try:
        assert recogniser.version
    except WeightsError as error:
        pytest.skip(f"the packaged weights are not installed: {error}")
    return recogniser


@pytest.fixture
def yard(tmp_path: Path) -> Iterator[Store]:
    with Store.open(tmp_path / "yard") as store:
        store.add_horses([RosterHorse(name="Hester"), RosterHorse(name="Rowan"), RosterHorse(name="Figaro")])
        yield store


def played_again(folder: Path) -> Path:
    """The same sound as another file, so that it counts as another memo."""
    path = folder / "again.wav"
    path.write_bytes(Snippets().wav(CLIP, 0.0, 60.0))
    return path


def correct_it(store: Store) -> Review:
    """Say what was missed, and let it be learned."""
    review = Review(store, load_vocabulary(), "Reviewer")
    lesson = review.add(review.queue()[0], "off hind, canker in the frog, mild").lesson
    assert lesson == WordLesson("findings", "canker", "kinker")
    assert review.learn(lesson) == "“kinker” is read as canker from the next memo on."
    return review


def heard_and_found(store: Store, visit: int) -> tuple[bool, list[tuple[object, ...]]]:
    """Whether the mistake is in the words, and the findings that were read from them."""
    kept = store.visit(visit)
    found: list[tuple[object, ...]] = [
        (fact.foot, fact.value, fact.zone, fact.severity, fact.flagged)
        for fact in kept.visit.facts
        if fact.slot == "finding"
    ]
    return "kinker" in kept.memo.transcript.text.lower(), found


def test_the_same_mistake_is_read_right(yard: Store, unbiased: Recogniser, tmp_path: Path) -> None:
    ingest = Ingest(HearingSettings(bias=False, verify=False, adapter=False), load_vocabulary(), hearer=unbiased)
    (first,) = ingest.keep(CLIP, yard, DAY).visit_ids
    assert heard_and_found(yard, first) == (True, [])
    review = correct_it(yard)
    ingest.learn(vocabulary_with_own(yard.folder))
    (second,) = ingest.keep(played_again(tmp_path), yard, DAY).visit_ids
    assert heard_and_found(yard, second) == (True, [MEANT])
    assert any(item.visit.id == second and item.as_read().startswith("right hind: canker") for item in review.queue())


def test_as_farriers_hear_it_the_mistake_is_gone_too(yard: Store, unbiased: Recogniser, tmp_path: Path) -> None:
    ingest = Ingest(HearingSettings(verify=False, adapter=False), load_vocabulary())
    (first,) = ingest.keep(CLIP, yard, DAY).visit_ids
    assert heard_and_found(yard, first) == (True, [])
    correct_it(yard)
    ingest.learn(vocabulary_with_own(yard.folder))
    (second,) = ingest.keep(played_again(tmp_path), yard, DAY).visit_ids
    # The prompt begins with what was misheard before; what is written for it now is the weights' affair.
    assert [found[:3] for found in heard_and_found(yard, second)[1]] == [MEANT[:3]]
