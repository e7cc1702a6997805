"""``clinchbook extract``: typed text in, facts out; no store is touched."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import DateOption, JsonOption, read_day
from pipeline.cli.text_input import STDIN

if TYPE_CHECKING:
    from pipeline.ingest import Ingest
    from pipeline.record import RosterHorse


def extract(
    file: Annotated[Path, typer.Argument(metavar="[FILE|-]", help="A UTF-8 text; - is stdin.")] = STDIN,
    roster: Annotated[Path | None, typer.Option(metavar="FILE", help="A roster as CSV with a column name.")] = None,
    day: DateOption = None,
    as_json: JsonOption = False,
    jsonl: Annotated[
        Path | None,
        typer.Option(metavar="FILE", help='Read many memos: lines of {"id", "date", "roster", "text"}.'),
    ] = None,
    explain: Annotated[
        bool, typer.Option("--explain", help="Show how each fact was matched and by which rules.")
    ] = False,
) -> None:
    """Read typed text; no store is touched.

    Text without --date is of today.

    Example: echo "Bramble. Thrush in the left hind." | clinchbook extract - --date 2026-03-02 --json
    """
    if jsonl is not None:
        _refuse_with_jsonl(file, roster, day, explain)
        raise typer.Exit(_extract_lines(jsonl))
    if as_json and explain:
        raise typer.BadParameter("--explain is for people; --json always carries match and rules.")
    from pipeline.cli.output import print_json, print_record
    from pipeline.cli.text_input import read_text

    when = read_day(day) or date.today()
    horses = _roster(roster)
    record = _reading().read_text(read_text(file), horses, when)
    if as_json:
        print_json(record.model_dump(mode="json"))
    else:
        print_record(record, explain)


def _refuse_with_jsonl(file: Path, roster: Path | None, day: str | None, explain: bool) -> None:
    if file != STDIN or roster is not None or day is not None or explain:
        raise typer.BadParameter("With --jsonl every line brings its own text, roster and date; leave the others out.")


def _reading() -> Ingest:
    from pipeline.hearing.settings import HearingSettings
    from pipeline.ingest import Ingest
    from pipeline.vocabulary import load_vocabulary

    return Ingest(HearingSettings(), load_vocabulary())


def _roster(file: Path | None) -> list[RosterHorse]:
    if file is None:
        return []
    from pipeline.keeping.roster import read_roster

    return read_roster(file)


def _extract_lines(path: Path) -> int:
    from pipeline.cli.lines import Answerer, Request
    from pipeline.record import FlagKind, MemoRecord

    reading = _reading()

    def answer(request: Request) -> MemoRecord:
        return reading.read_text(request.needed("text"), request.horses(), request.date or date.today())

    return Answerer(answer, FlagKind.NOT_UNDERSTOOD).run(path)
