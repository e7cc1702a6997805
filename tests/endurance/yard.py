"""An invented yard for hard use: recordings with made-up sound, records with made-up facts, and what must hold."""

from __future__ import annotations

import hashlib
import random
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from pathlib import Path

from pipeline.keeping import Store
from pipeline.record import (
    FEET,
    Fact,
    Flag,
    FlagKind,
    HorseMatch,
    Memo,
    MemoRecord,
    RosterHorse,
    Transcript,
    Visit,
    Word,
)

HORSES = tuple(
    RosterHorse(name=name, owner=f"Owner of {name}", place="River barn")
    for name in ("Bramble", "Tansy", "Copper", "Juniper", "Sorrel", "Mallow")
)
_FINDINGS = ("thrush", "flare", "bruise", "corn", "crack", "abscess")


@dataclass(frozen=True)
class Spoken:
    """A recording on the disk with what would be read from it."""

    path: Path
    record: MemoRecord
    transcript: Transcript

    @property
    def sha256(self) -> str:
        """The recording's hash."""
        return str(self.record.memo.sha256)


def spoken(folder: Path, number: int, sound_bytes: int = 20_000) -> Spoken:
    """Write recording ``number`` and make its record: two or three visits with facts and flags, the same each time."""
    chance = random.Random(f"memo {number}")
    path = folder / f"memo {number}.m4a"
    path.write_bytes(chance.randbytes(sound_bytes))
    digest = hashlib.sha256(path.read_bytes()).hexdigest()
    text = f"Memo number {number}. Left front, thrush in the sulcus, six nails."
    day = date(2026, 3, 2) + timedelta(days=number % 300)
    memo = Memo(path=str(path), sha256=digest, seconds=20.5, recorded_at=datetime(day.year, day.month, day.day, 9, 30))
    visits = [_visit(chance, day, place) for place in range(chance.randint(2, 3))]
    flag = Flag(kind=FlagKind.SOUND, reason="the recording stops in the middle of speech", start=20.0, end=20.5)
    words = [Word(text="Memo", start=0, end=4, start_s=0.1, end_s=0.4, probability=0.75)]
    record = MemoRecord(memo=memo, transcript=text, visits=visits, flags=[flag])
    return Spoken(path, record, Transcript(text=text, words=words))


def _visit(chance: random.Random, day: date, place: int) -> Visit:
    facts = [
        Fact(foot=foot, slot="finding", value=chance.choice(_FINDINGS), flagged=chance.random() < 0.3, quote="thrush")
        for foot in FEET[: chance.randint(1, 4)]
    ]
    facts.append(Fact(foot="LF", slot="nails", value=chance.randint(4, 8), quote="six nails", span=(52, 61)))
    flag = Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="a word was not understood", quote="Memo", span=(0, 4))
    horse = chance.choice(HORSES).name
    match = HorseMatch.KNOWN if place else HorseMatch.UNCLEAR
    return Visit(horse=horse, horse_match=match, date=day, facts=facts, flags=[flag], notes=f"note {place}")


def with_roster(folder: Path) -> None:
    """A store in ``folder`` that knows the yard's horses and keeps nothing yet."""
    with Store.open(folder) as store:
        store.add_horses(HORSES, who="Ann")


def keep(store: Store, memo: Spoken) -> list[int]:
    """Keep one memo as ingest does."""
    return store.keep(memo.record, memo.transcript, memo.path, weights="none", vocabulary="none")


def wholeness(store: Store, memos: Sequence[Spoken]) -> list[str]:
    """What is wrong with a store that may hold these memos: damage, a half memo, a changed recording."""
    wrong = store.problems(deep=True)
    for memo in memos:
        if store.has(memo.sha256):
            wrong += _differences(store, memo)
        if hashlib.sha256(memo.path.read_bytes()).hexdigest() != memo.sha256:
            wrong.append(f"the recording {memo.path.name} itself was changed")
    return wrong


def _differences(store: Store, memo: Spoken) -> list[str]:
    kept = store.memo(memo.sha256)
    wrong = []
    if kept.transcript != memo.transcript or kept.record.flags != memo.record.flags:
        wrong.append(f"{memo.path.name} came back with other words or flags")
    if len(kept.record.visits) != len(memo.record.visits):
        wrong.append(f"{memo.path.name} has {len(kept.record.visits)} visits of {len(memo.record.visits)}")
    for there, said in zip(kept.record.visits, memo.record.visits, strict=False):
        if (there.facts, there.flags, there.notes, there.date) != (said.facts, said.flags, said.notes, said.date):
            wrong.append(f"{memo.path.name} has a visit that is not whole")
    return wrong
