"""``clinchbook extract``: typed text in, facts out; nothing is kept."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import (
    DateOption,
    JsonOption,
    ReviewOption,
    StoreOption,
    level_of_care,
    read_day,
    roster_given,
)
from pipeline.cli.text_input import STDIN

if TYPE_CHECKING:
    from pipeline.ingest import Ingest
    from pipeline.record import MemoRecord, RosterHorse
    from pipeline.vocabulary import Vocabulary


def extract(
    file: Annotated[Path, typer.Argument(metavar="[FILE|-]", help="A UTF-8 text; - is stdin.")] = STDIN,
    roster: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Horses from a CSV file instead of the store's.")
    ] = None,
    day: DateOption = None,
    as_json: JsonOption = False,
    jsonl: Annotated[
        Path | None,
        typer.Option(metavar="FILE", help='Read many memos: lines of {"id", "date", "roster", "text"}.'),
    ] = None,
    explain: Annotated[
        bool, typer.Option("--explain", help="Show why: rules, what was not kept, what each cue changed.")
    ] = False,
    store: StoreOption = None,
    care: ReviewOption = None,
) -> None:
    """Read typed text; nothing is kept.

    It is read with your horses and your own words. Text without --date is of today.

    Example: echo "Hester. Thrush in the left hind." | clinchbook extract - --date 2026-03-02 --json
    """
    if jsonl is not None:
        _refuse_with_jsonl(file, roster, day, explain, store)
        raise typer.Exit(_extract_lines(jsonl, care))
    if as_json and explain:
        raise typer.BadParameter("--explain is for people; --json always carries match and rules.")
    from pipeline.cli.output import print_json, print_record
    from pipeline.cli.text_input import read_text
    from pipeline.keeping import store_folder
    from pipeline.keeping.own_words import vocabulary_with_own

    when = read_day(day) or date.today()
    horses = roster_given(roster, store)
    reading = _reading(vocabulary_with_own(store_folder(store)), care)
    record = reading.read_text(read_text(file), horses, when)
    if as_json:
        print_json(record.model_dump(mode="json"))
        return
    print_record(record)
    if explain:
        _explain(reading, record, horses)


def _refuse_with_jsonl(file: Path, roster: Path | None, day: str | None, explain: bool, store: Path | None) -> None:
    if file != STDIN or roster is not None or day is not None or explain or store is not None:
        raise typer.BadParameter("With --jsonl every line brings its own text, roster and date; leave the others out.")


def _reading(vocabulary: Vocabulary, care: str | None) -> Ingest:
    from pipeline.hearing.settings import HearingSettings
    from pipeline.ingest import Ingest

    return Ingest(HearingSettings(), vocabulary, care=level_of_care(care))


def _explain(reading: Ingest, record: MemoRecord, horses: list[RosterHorse]) -> None:
    from pipeline.cli.explaining import print_explanation
    from pipeline.reading import Reader
    from pipeline.reading.explain import explain
    from pipeline.record import Transcript

    reader = reading.reader if isinstance(reading.reader, Reader) else Reader(reading.vocabulary)
    print_explanation(explain(reader, Transcript(text=record.transcript), horses, record.visits))


def _extract_lines(path: Path, care: str | None) -> int:
    from pipeline.cli.lines import Answerer, Request
    from pipeline.record import FlagKind
    from pipeline.vocabulary import load_vocabulary

    reading = _reading(load_vocabulary(), care)  # as every line brings its own roster, no store has a say

    def answer(request: Request) -> MemoRecord:
        return reading.read_text(request.needed("text"), request.horses(), request.date or date.today())

    return Answerer(answer, FlagKind.NOT_UNDERSTOOD).run(path)
