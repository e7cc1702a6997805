"""A memo kept through the one way in is compared with the horse's last visit."""

from __future__ import annotations

import wave
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path

import pytest

from pipeline.hearing.intake import take_in
from pipeline.hearing.settings import HearingSettings
from pipeline.ingest import Ingest
from pipeline.keeping import Store
from pipeline.record import Flag, Memo, RosterHorse, Transcript, Visit
from pipeline.vocabulary import load_vocabulary


@dataclass
class Heard:
    memo: Memo
    transcript: Transcript
    flags: list[Flag] = field(default_factory=list)


@dataclass
class Hearer:
    """Hears what the test put into ``said`` under the file's name."""

    said: dict[str, str]

    def hear(self, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> Heard:
        with take_in(path) as memo:
            day = recorded or date(2026, 3, 3)
            stamp = datetime(day.year, day.month, day.day, 9, 30)
            kept = Memo(path=str(path), sha256=memo.sha256, seconds=1.0, recorded_at=stamp, recorded_from="test")
            return Heard(kept, Transcript(text=self.said[path.name]))


def memo(folder: Path, number: int) -> Path:
    path = folder / f"{number}.wav"
    with wave.open(str(path), "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(2)
        sound.setframerate(8000)
        sound.writeframes(number.to_bytes(2, "little") * 800)
    return path


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(tmp_path / "book") as opened:
        opened.add_horses([RosterHorse(name="Bramble")])
        yield opened


def kept(ingest: Ingest, path: Path, store: Store, day: date) -> Visit:
    record = ingest.keep(path, store, day).record
    assert record is not None
    (visit,) = record.visits
    return visit


@dataclass
class Knowing(Hearer):
    """Also told what is no misheard word of the trade."""

    known: list[str] = field(default_factory=list)

    def know(self, words: Iterable[str]) -> None:
        self.known = list(words)


def test_the_hearer_is_told_places_and_owners(tmp_path: Path) -> None:
    hearer = Knowing({"1.wav": "Bramble. Trim."})
    roster = [
        RosterHorse(name="Bramble", owner="Nora Pell", place="Tollgate Farm"),
        RosterHorse(name="Otter", owner="Nora Pell"),
    ]
    Ingest(HearingSettings(), load_vocabulary(), hearer=hearer).read_sound(memo(tmp_path, 1), roster)
    assert hearer.known == ["Tollgate Farm", "Nora Pell"]


def test_jumps_and_what_is_left_unsaid(store: Store, tmp_path: Path) -> None:
    said = {
        "1.wav": "Bramble. Left front toe angle 50 degrees. Abscess in the right hind. New shoes in front, size one.",
        "2.wav": "Bramble. Left front toe angle 56 degrees. New shoes on both fronts, size three.",
        "3.wav": "Bramble. Left front toe angle 50 degrees. Abscess in the right hind is gone.",
    }  # fmt: skip
    ingest = Ingest(HearingSettings(), load_vocabulary(), hearer=Hearer(said))
    ingest.keep(memo(tmp_path, 1), store, date(2026, 3, 3))
    second = kept(ingest, memo(tmp_path, 2), store, date(2026, 4, 14))
    reasons = {(f.foot, f.slot): f.reasons for f in second.facts if f.flagged}
    assert reasons == {
        ("LF", "toe_angle"): ["Toe angle 56 on LF; on 3 March 2026 it was 50. Is that right?"],
        ("LF", "shoe_size"): ["Shoe size 3 on LF; on 3 March 2026 it was 1. Is that right?"],
        ("RF", "shoe_size"): ["Shoe size 3 on RF; on 3 March 2026 it was 1. Is that right?"],
    }
    assert [flag.reason for flag in second.flags] == [
        "Found on 3 March 2026 and not spoken of today: abscess on the right hind. Is it gone?"
    ]
    third = kept(ingest, memo(tmp_path, 3), store, date(2026, 3, 31))
    assert third.flags == []  # beside 3 March, which was the visit before it
    assert not any(fact.flagged for fact in third.facts)


def test_reading_again_compares_with_the_same_visit(store: Store, tmp_path: Path) -> None:
    said = {"1.wav": "Bramble. Left front toe angle 50 degrees.", "2.wav": "Bramble. Left front toe angle 56 degrees."}
    ingest = Ingest(HearingSettings(), load_vocabulary(), hearer=Hearer(said))
    ingest.keep(memo(tmp_path, 1), store, date(2026, 3, 3))
    ingest.keep(memo(tmp_path, 2), store, date(2026, 4, 14))
    assert ingest.reread(store, 2).reading is None
    assert ingest.reread(store, 1).reading is None
