"""The one way through the house: sound or text in, a MemoRecord out, and kept when a store is given.

The recogniser and the reader load late and once: a folder of memos pays for them once, a duplicate never.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Protocol, runtime_checkable

from pipeline.errors import ClinchbookError, FileMissingError, StoreError, WeightsError
from pipeline.hearing.containers import HEAD_BYTES, sniff
from pipeline.hearing.intake import take_in
from pipeline.record import Fact, Flag, FlagKind, Memo, MemoRecord, RosterHorse, Transcript, Visit
from pipeline.vocabulary import Vocabulary

if TYPE_CHECKING:
    from pipeline.hearing.settings import HearingSettings
    from pipeline.judging import LastOf
    from pipeline.keeping import KeptMemo, KeptVisit, Store


class HeardMemo(Protocol):
    """What a hearer gives back: the memo, its words, and the doubts that no fact carries."""

    @property
    def memo(self) -> Memo: ...
    @property
    def transcript(self) -> Transcript: ...
    @property
    def flags(self) -> list[Flag]: ...


class Hearer(Protocol):
    """Turns a sound file into words; raises ClinchbookError when there is nothing to hear."""

    def hear(self, path: Path, names: Sequence[str] = (), recorded: date | None = None) -> HeardMemo: ...


@runtime_checkable
class LearningHearer(Protocol):
    """A hearer that can go on with other words without being made anew."""

    def learn(self, vocabulary: Vocabulary) -> None: ...


@runtime_checkable
class KnowingHearer(Protocol):
    """A hearer that can be told which words are no misheard words of the trade."""

    def know(self, words: Iterable[str]) -> None: ...


class TextReader(Protocol):
    """Turns words into visits of facts."""

    def read(self, transcript: Transcript, roster: Sequence[RosterHorse], day: date) -> list[Visit]: ...


@dataclass(frozen=True)
class ReadMemo:
    """A memo that was read but not kept: its record, the words behind it, and the weights that heard it."""

    record: MemoRecord
    transcript: Transcript
    weights: str


@dataclass(frozen=True)
class Outcome:
    """What became of one file: kept, kept before already, or stopped by a problem."""

    path: Path
    record: MemoRecord | None = None
    visit_ids: list[int] = field(default_factory=list)
    already_kept: bool = False
    problem: ClinchbookError | None = None


@dataclass(frozen=True)
class Reread:
    """What reading again came to: the new reading's number, None when it says the same; the visits before and after."""

    memo: KeptMemo
    reading: int | None
    was: list[KeptVisit]
    now: list[KeptVisit]


class Ingest:
    """Hearing, reading and judging in their order, with the heavy parts loaded when first needed."""

    def __init__(
        self,
        settings: HearingSettings,
        vocabulary: Vocabulary,
        *,
        hearer: Hearer | None = None,
        reader: TextReader | None = None,
        care: str = "usual",
    ) -> None:
        """``care`` is how much is put before a person: strict, usual or fast."""
        self.settings = settings
        self.care = care
        self.vocabulary = vocabulary
        self._given_hearer = hearer
        self._given_reader = reader

    def learn(self, vocabulary: Vocabulary) -> None:
        """Go on with other words: the next memo is heard and read by them, with the weights that are loaded."""
        self.vocabulary = vocabulary
        self.__dict__.pop("reader", None)  # made anew, from these words, when it is needed
        hearer = self.__dict__.get("hearer")  # one that is not there yet is made with these words anyway
        if isinstance(hearer, LearningHearer):
            hearer.learn(vocabulary)

    @cached_property
    def hearer(self) -> Hearer:
        """The recogniser; its weights load with the first memo that is heard."""
        return self._given_hearer or load_hearer(self.settings, self.vocabulary)

    @cached_property
    def reader(self) -> TextReader:
        """The reader of the trade's language."""
        return self._given_reader or load_reader(self.vocabulary)

    @cached_property
    def weights(self) -> str:
        """The version of the recogniser's weights, which every kept memo names."""
        from pipeline.hearing.weights import weights_version

        return weights_version(self.settings.model, self.settings.allow_download, self.settings.adapter)

    def read_text(self, text: str, roster: Sequence[RosterHorse], day: date) -> MemoRecord:
        """Read typed text of the given day; it has no sound, so no fact carries seconds."""
        return self._judged(Memo(), Transcript(text=text), roster, day, [])

    def read_sound(
        self,
        path: Path,
        roster: Sequence[RosterHorse],
        recorded: date | None = None,
        last_of: LastOf | None = None,
    ) -> ReadMemo:
        """Hear and read one sound file; ``recorded`` overrules every other source of the date.

        ``last_of`` tells of a horse's visit before, with which this one is compared.

        Raises ClinchbookError when the file holds no speech that can be heard, WeightsError for an unknown model.
        """
        weights = self.weights  # first: a model that is not there is refused before any sound is decoded
        if isinstance(self.hearer, KnowingHearer):
            self.hearer.know(places_and_owners(roster))
        heard = self.hearer.hear(path, names=spoken_names(roster), recorded=recorded)
        day = recorded or (heard.memo.recorded_at.date() if heard.memo.recorded_at else date.today())
        record = self._judged(heard.memo, heard.transcript, roster, day, list(heard.flags), last_of)
        return ReadMemo(record, heard.transcript, weights)

    def keep(self, path: Path, store: Store, recorded: date | None = None) -> Outcome:
        """Hear, read and keep one file. The same sound twice is noticed before any model loads."""
        with take_in(path) as memo:
            if store.has(memo.sha256):
                store.waits_no_more(memo.sha256, path)
                return Outcome(path, already_kept=True)
        where = path.absolute()  # so that the store knows where it lay
        read = self.read_sound(where, store.roster(), recorded, store.last_visit)
        visit_ids = store.keep(
            read.record, read.transcript, path, weights=read.weights, vocabulary=self.vocabulary.version
        )
        if read.record.visits and not visit_ids:  # another program kept it while this one was hearing it
            return Outcome(path, already_kept=True)
        # Keeping may find a doubt of its own, such as two horses of one name: show what is really in the store.
        visits = [store.visit(number).visit for number in visit_ids]
        return Outcome(path, read.record.model_copy(update={"visits": visits}), visit_ids)

    def keep_all(
        self,
        paths: Iterable[Path],
        store: Store,
        recorded: date | None = None,
        starting: Callable[[Path], None] = lambda path: None,
        days: Mapping[Path, date | None] | None = None,
    ) -> Iterator[Outcome]:
        """Keep every file; one that cannot be heard is an Outcome with a problem, waits, and the rest go on.

        ``days`` are those given at an earlier try; ``recorded`` overrules them. Raises WeightsError, without which
        nothing can be heard.
        """
        given = {path: recorded or day for path, day in (days or {}).items()}
        for outcome in _each(paths, lambda path: self.keep(path, store, given.get(path, recorded)), starting):
            if outcome.problem:
                _wait(store, outcome.path, outcome.problem, given.get(outcome.path, recorded))
            yield outcome

    def read_all(
        self,
        paths: Iterable[Path],
        roster: Sequence[RosterHorse],
        recorded: date | None = None,
        starting: Callable[[Path], None] = lambda path: None,
    ) -> Iterator[Outcome]:
        """Hear and read every file and keep nothing; problems are Outcomes as in ``keep_all``."""
        yield from _each(paths, lambda path: Outcome(path, self.read_sound(path, roster, recorded).record), starting)

    def read_again(
        self, memo: KeptMemo, roster: Sequence[RosterHorse], listen: bool = False, last_of: LastOf | None = None
    ) -> ReadMemo:
        """Read a kept memo by today's rules and words; with ``listen`` hear its original again first.

        Nothing is kept. When it listens it raises as ``read_sound`` does, and StoreError for a recording that is no
        longer what was kept.
        """
        recorded = memo.record.memo.recorded_at or memo.kept_at
        day = memo.record.visits[0].date if memo.record.visits else recorded.date()
        if listen:
            heard = self.read_sound(memo.original, roster, day, last_of)
            if heard.record.memo.sha256 != memo.record.memo.sha256:
                raise StoreError(f"The recording of {memo.file_name} in the store is no longer what was kept.")
            return heard
        record = self._judged(memo.record.memo, memo.transcript, roster, day, list(memo.record.flags), last_of)
        return ReadMemo(record, memo.transcript, memo.weights or "")

    def reread(self, store: Store, memo_id: int, listen: bool = False) -> Reread:
        """Let a new reading of a kept memo stand beside the former one; every decision of a person is carried over.

        Raises NotFoundError for an unknown memo, StoreConflictError when somebody else read it again meanwhile, and
        as ``read_again`` does.
        """
        before = store.memo(memo_id)
        # A horse that this memo named first is found as it was then, not known from the roster.
        roster = [kept.horse for kept in store.horses() if kept.from_memo != memo_id]
        read = self.read_again(before, roster, listen, store.last_visit)
        was = [store.visit(number) for number in before.visit_ids]
        number = store.read_again(
            memo_id,
            read.record,
            seen=before.reading,
            vocabulary=self.vocabulary.version,
            heard=read.transcript if listen else None,
            weights=read.weights if listen else None,
            why="heard and read again" if listen else "read again",
        )
        return Reread(store.memo(memo_id), number, was, [store.visit(one) for one in store.memo(memo_id).visit_ids])

    def _judged(
        self,
        memo: Memo,
        transcript: Transcript,
        roster: Sequence[RosterHorse],
        day: date,
        flags: list[Flag],
        last_of: LastOf | None = None,
    ) -> MemoRecord:
        from pipeline.judging import cautions, judge
        from pipeline.judging.model import Care
        from pipeline.judging.putting_right import put_right

        found = put_right(self.reader.read(transcript, roster, day), transcript, flags)
        visits = judge(found, transcript, last_of, Care(self.care), flags, roster)
        facts: list[Fact] = [fact for visit in visits for fact in visit.facts]
        return MemoRecord(memo=memo, transcript=transcript.text, visits=visits, cautions=cautions(facts), flags=flags)


def _each(
    paths: Iterable[Path], take: Callable[[Path], Outcome], starting: Callable[[Path], None]
) -> Iterator[Outcome]:
    for path in paths:
        starting(path)
        try:
            yield take(path)
        except WeightsError:  # not this memo's fault: no other could be heard either
            raise
        except ClinchbookError as problem:
            yield Outcome(path, problem=problem)
        except MemoryError as error:
            yield Outcome(path, problem=_because(f"There is not enough memory to hear {path.name}.", error))
        except OSError as error:
            reason = error.strerror or type(error).__name__
            yield Outcome(path, problem=_because(f"{path.name} cannot be taken in: {reason}.", error))
        except RuntimeError as error:  # what the recogniser's engine raises when it cannot go on
            yield Outcome(path, problem=_because(f"The recogniser gave up on {path.name}.", error))


def _because(sentence: str, cause: BaseException) -> ClinchbookError:
    problem = ClinchbookError(sentence)
    problem.__cause__ = cause
    return problem


def _wait(store: Store, path: Path, problem: ClinchbookError, day: date | None) -> None:
    """Put a failed memo on the store's waiting list; a store that cannot be written has said so already."""
    from pipeline.keeping.originals import sha256_of

    sha256 = None
    with suppress(OSError, ValueError):
        sha256 = sha256_of(path) if path.is_file() else None
    with suppress(StoreError):
        store.wait(path, sha256, str(problem), day)


def load_hearer(settings: HearingSettings, vocabulary: Vocabulary) -> Hearer:
    """The real recogniser."""
    from pipeline.hearing.recognise import Recogniser

    return Recogniser(settings, vocabulary)


def load_reader(vocabulary: Vocabulary) -> TextReader:
    """The real reader."""
    from pipeline.reading import Reader

    return Reader(vocabulary)


def spoken_names(roster: Iterable[RosterHorse]) -> list[str]:
    """Every name that may be said of a horse on the roster, each once, in roster order."""
    return list(dict.fromkeys(name for horse in roster for name in (horse.name, *horse.also_called)))


def places_and_owners(roster: Iterable[RosterHorse]) -> list[str]:
    """What else may be said by name: each place and owner on the roster once, in roster order."""
    return list(dict.fromkeys(told for horse in roster for told in (horse.place, horse.owner) if told))


def failed_record(problem: ClinchbookError, kind: FlagKind, memo: Memo | None = None) -> MemoRecord:
    """An object for a memo that could not be read: no visits, and a flag that says why."""
    return MemoRecord(memo=memo or Memo(), transcript="", flags=[Flag(kind=kind, reason=str(problem))])


# Endings that phones and recorders give to memos.
SOUND_ENDINGS = frozenset(
    (".3gp", ".aac", ".amr", ".caf", ".flac", ".m4a", ".mka", ".mp3", ".mp4", ".oga", ".ogg", ".opus", ".wav", ".webm")
)


def sound_files(paths: Iterable[Path], leave_out: Path | None = None) -> list[Path]:
    """The files to hear: those named, and in a folder those that are sound by ending or by content, in order of name.

    Hidden files, links and everything under ``leave_out`` (the store) are passed over in folders.
    Raises FileMissingError for a path that is not there.
    """
    found: dict[Path, None] = {}
    for path in paths:
        if not path.exists():
            raise FileMissingError(f"There is no file or folder {path}.")
        for file in _files_in(path, leave_out) if path.is_dir() else [path]:
            found.setdefault(file)
    return list(found)


def _files_in(folder: Path, leave_out: Path | None) -> Iterator[Path]:
    for path in sorted(folder.rglob("*")):
        hidden = any(part.startswith(".") for part in path.relative_to(folder).parts)
        if hidden or path.is_symlink() or not path.is_file():
            continue
        if leave_out is not None and path.resolve().is_relative_to(leave_out.resolve()):
            continue
        if path.suffix.lower() in SOUND_ENDINGS or _sounds(path):
            yield path


def _sounds(path: Path) -> bool:
    try:
        with path.open("rb") as handle:
            return sniff(handle.read(HEAD_BYTES)) is not None
    except PermissionError:
        return True  # whoever asks for it gets the sentence that says so; passing it over would hide a memo
