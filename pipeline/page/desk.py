"""What every page works with: the store, opened anew for each request, and one review that goes on through all."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property, lru_cache
from pathlib import Path
from threading import RLock
from typing import TYPE_CHECKING

from flask import current_app

from pipeline.errors import NotFoundError
from pipeline.keeping import Store
from pipeline.page.evening import Evening
from pipeline.page.gate import Gate
from pipeline.record import RosterHorse, Transcript, Visit
from pipeline.using.review import Review
from pipeline.using.review.typed import TextReader
from pipeline.vocabulary import Vocabulary

if TYPE_CHECKING:
    from pipeline.hearing.snippets import Snippets

LONGEST_CLIP_S = 120.0
_NAME = "clinchbook"


@dataclass
class Desk:
    """One reviewer at one store."""

    folder: Path
    vocabulary: Vocabulary
    gate: Gate
    who: str | None = None
    reader: TextReader | None = None
    busy_s: float = 5.0  # how long a page waits for another program that writes
    evening: Evening = field(default_factory=Evening)
    _review: Review | None = None
    _lock: RLock = field(default_factory=RLock)
    _cutting: RLock = field(default_factory=RLock)

    @contextmanager
    def review(self) -> Iterator[Review]:
        """The review over a store that is open for this request alone; one request at a time."""
        with self._lock, Store.open(self.folder, create=False, busy_s=self.busy_s) as store:
            if self._review is None:
                self._review = Review(store, self.vocabulary, self.who, self.reader or _LateReader(self.vocabulary))
            # A connection belongs to the thread that opened it; what was learned tonight goes on.
            self._review = replace(self._review, store=store)
            yield self._review

    def wav(self, memo_id: int, start_ms: int, end_ms: int) -> bytes:
        """Some seconds of a memo's sound as a WAV. Raises NotFoundError for a memo or seconds that are not there."""
        with self._lock, Store.open(self.folder, create=False, busy_s=self.busy_s) as store:
            memo = store.memo(memo_id)
        length_ms = (memo.record.memo.seconds or 0.0) * 1000
        if not 0 <= start_ms < min(end_ms, length_ms) or end_ms - start_ms > LONGEST_CLIP_S * 1000:
            raise NotFoundError("There is no such stretch of sound in this memo.")
        with self._cutting:
            return self._cut(memo.original, start_ms, end_ms)

    @cached_property
    def _cut(self) -> _Cutter:
        return _Cutter()


class _Cutter:
    """Cuts clips and remembers the last few: a browser asks for the same clip in several ranges."""

    def __init__(self) -> None:
        from pipeline.hearing.snippets import Snippets

        self._snippets: Snippets = Snippets()
        self._kept = lru_cache(maxsize=8)(self._snippets_wav)

    def __call__(self, recording: Path, start_ms: int, end_ms: int) -> bytes:
        return self._kept(recording, start_ms, end_ms)

    def _snippets_wav(self, recording: Path, start_ms: int, end_ms: int) -> bytes:
        return self._snippets.wav(recording, start_ms / 1000, end_ms / 1000)


class _LateReader:
    """The reader of memos, loaded by the first typed answer and then kept."""

    def __init__(self, vocabulary: Vocabulary) -> None:
        self._vocabulary = vocabulary

    @cached_property
    def _reader(self) -> TextReader:
        from pipeline.reading import Reader

        return Reader(self._vocabulary)

    def read(self, transcript: Transcript, roster: list[RosterHorse], day: date) -> list[Visit]:
        """What the real reader reads."""
        return self._reader.read(transcript, roster, day)


def desk() -> Desk:
    """The desk of the request that is being answered."""
    found = current_app.extensions[_NAME]
    if not isinstance(found, Desk):
        raise TypeError("the page was made without its desk")
    return found


def put(extensions: dict[str, object], at: Desk) -> None:
    """Give an application its desk."""
    extensions[_NAME] = at
