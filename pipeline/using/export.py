"""A record to hand on: for an owner or a vet to read, for tables, for programs, for another store."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from pipeline.errors import FileMissingError, NotFoundError, SettingsError
from pipeline.keeping import KeptHorse, KeptVisit, Store
from pipeline.using.edits import edits
from pipeline.using.files import file_name, write_all
from pipeline.using.handover import Choice, Clip, Handover, handover
from pipeline.using.interchange import as_json, record_file
from pipeline.using.markdown import as_markdown
from pipeline.using.redaction import redacted
from pipeline.using.tables import as_csv, dictionary_csv

FORMS = ("html", "pdf", "csv", "json", "md")
BINARY = ("pdf",)
ONE_FILE = ("csv", "json")  # forms in which a whole store is one file
_BOM = "\ufeff"


@dataclass(frozen=True)
class Request:
    """What to hand on: the form, the choice of what goes in, and whether the sound goes along (html and json)."""

    form: str
    choice: Choice
    with_audio: bool = False

    def check(self) -> None:
        """Raises SettingsError for what cannot be had."""
        if self.form not in FORMS:
            raise SettingsError(f"{self.form!r} is no form of export; known are {', '.join(FORMS)}.")
        if self.with_audio and self.form not in ("html", "json"):
            raise SettingsError("The sound can go along with --format html or json only.")
        if self.with_audio and self.choice.redact:
            raise SettingsError("A redacted record cannot carry sound: a voice says names.")


def export_horse(store: Store, name: str, request: Request, place: str | None = None) -> bytes:
    """One horse's record. Raises NotFoundError for a horse that is unknown or one of several, and SettingsError."""
    request.check()
    horse = store.horse(name, place)
    if request.form in ONE_FILE:
        return _table_or_json(store, [horse], visits_of(store, horse), request)
    return _one(store, horse, request, 0)


def export_horse_to(store: Store, name: str, request: Request, path: Path, place: str | None = None) -> list[Path]:
    """Write one horse's record to ``path``, whole or not at all; a table's data dictionary lies beside it."""
    return write_all(_with_dictionary(path, export_horse(store, name, request, place), request))


def export_all(store: Store, request: Request) -> bytes:
    """The whole store as one file (csv, json). Raises SettingsError for a form that is one file a horse."""
    request.check()
    if request.form not in ONE_FILE:
        raise SettingsError(f"A whole store as {request.form} is one file a horse; name a folder with --out.")
    horses = store.horses()
    visits = [visit for horse in horses for visit in visits_of(store, horse)]
    # Visits that belong to nobody yet have no row in a table of horses, but a copy of the store needs them.
    nobodys = store.unassigned() if request.form == "json" else []
    return _table_or_json(store, horses, [*visits, *nobodys], request)


def export_all_to(store: Store, request: Request, path: Path) -> list[Path]:
    """Write the whole store: csv and json into the file ``path``, the other forms one file a horse into that folder."""
    request.check()
    if request.form in ONE_FILE:
        return write_all(_with_dictionary(path, export_all(store, request), request))
    if not path.is_dir():
        raise FileMissingError(f"There is no folder {path} to write the records into; make it first.")
    horses = store.horses()
    if not horses:
        raise NotFoundError("The store holds no horse yet.")
    written: dict[Path, bytes] = {}
    for number, horse in enumerate(horses):
        called = f"horse {number + 1}" if request.choice.redact else f"{horse.name} {horse.horse.place or ''}"
        written[_free(path / f"{file_name(called)}.{request.form}", written)] = _one(store, horse, request, number)
    return write_all(written)


def _free(path: Path, taken: dict[Path, bytes]) -> Path:
    number, free = 2, path
    while free in taken:
        free = path.with_stem(f"{path.stem}-{number}")
        number += 1
    return free


def _with_dictionary(path: Path, data: bytes, request: Request) -> dict[Path, bytes]:
    if request.form != "csv":
        return {path: data}
    # With the mark, spreadsheets read ° and ½ as what they are; on the screen and in a pipe it would be in the way.
    dictionary = dictionary_csv(request.choice).encode("utf-8")
    mark = _BOM.encode("utf-8")
    return {path: mark + data, path.with_name(f"{path.stem}-columns.csv"): mark + dictionary}


def _table_or_json(store: Store, horses: Sequence[KeptHorse], visits: Sequence[KeptVisit], request: Request) -> bytes:
    choice = request.choice
    if request.form == "json":
        file = record_file(
            store, horses, visits, on=choice.on, since=choice.since, redact=choice.redact, with_audio=request.with_audio
        )
        return as_json(file).encode("utf-8")
    told = []
    for number, horse in enumerate(horses):
        own = [visit for visit in visits if visit.horse and visit.horse.id == horse.id]
        told.append(redacted(horse, own, number) if choice.redact else (horse, own))
    return as_csv(told, choice).encode("utf-8")


def visits_of(store: Store, horse: KeptHorse) -> list[KeptVisit]:
    """The horse's visits, oldest first."""
    return store.visits_of(horse.name, horse.horse.place or "")


def _one(store: Store, horse: KeptHorse, request: Request, number: int) -> bytes:
    with _nothing_thrown_away():
        return _RENDERERS[request.form](told_of(store, horse, request, number))


@contextmanager
def _nothing_thrown_away() -> Iterator[None]:
    """Keep Python from looking for what could be thrown away while one record is made.

    A record of two hundred visits is some hundred thousand objects, all of which are needed to its end; looking
    through them again and again took a fifth of the time.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def told_of(store: Store, horse: KeptHorse, request: Request, number: int = 0) -> Handover:
    """One horse's record arranged for people."""
    choice = request.choice
    visits = visits_of(store, horse)
    leaving = store.leaving([horse], visits, choice.since)
    corrections = edits(leaving, visits, choice.redact)
    if choice.redact:
        horse, visits = redacted(horse, visits, number)
    return handover(horse, visits, corrections, choice, _clips() if request.with_audio else None)


def _clips() -> Clip:
    from pipeline.hearing.clips import Clipper

    cutters: dict[Path, Clipper | None] = {}

    def clip(visit: KeptVisit, start_s: float, end_s: float) -> bytes:
        original = visit.memo.original
        if original not in cutters:
            cutters.clear()  # one recording at a time: a day of them would fill the memory
            cutters[original] = Clipper(original) if original.is_file() else None
        cutter = cutters[original]
        return cutter.clip(start_s, end_s) if cutter else b""

    return clip


def _html(page: Handover) -> bytes:
    from pipeline.using.page import as_page

    return as_page(page).encode("utf-8")


def _pdf(page: Handover) -> bytes:
    from pipeline.using.pdf import as_pdf

    return as_pdf(page)


def _markdown(page: Handover) -> bytes:
    return as_markdown(page).encode("utf-8")


_RENDERERS: dict[str, Callable[[Handover], bytes]] = {"html": _html, "pdf": _pdf, "md": _markdown}


def choice_of(
    on: date | None = None, audience: str = "owner", redact: bool = False, since: date | None = None
) -> Choice:
    """A choice from plain values; ``on`` None is today. Raises SettingsError for an unknown reader."""
    if audience not in ("owner", "vet"):
        raise SettingsError(f"{audience!r} is no reader of a record; known are owner and vet.")
    return Choice(on or date.today(), "vet" if audience == "vet" else "owner", redact, since)
