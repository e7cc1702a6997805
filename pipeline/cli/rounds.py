"""``clinchbook brief``, ``due`` and ``stock``: before the next visit, the next round and the next order.

The annotations here are no strings: compiling them took every command several milliseconds.
"""

from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Annotated

import typer

from pipeline.cli.endings import say_written
from pipeline.cli.options import CsvOption, JsonOption, StoreOption, one_form, read_day, read_first_day

PlaceOption = Annotated[str | None, typer.Option(metavar="TEXT", help="Only horses at this place.")]


def brief(
    horse: Annotated[str | None, typer.Argument(metavar="[HORSE]", help="The horse's name.")] = None,
    day: Annotated[
        str | None, typer.Option(metavar="YYYY-MM-DD", help="As of this day; without a horse, that day's round.")
    ] = None,
    place: Annotated[str | None, typer.Option(metavar="TEXT", help="Where the horse, or the round, is.")] = None,
    full: Annotated[bool, typer.Option("--full", help="All of it, however many screens that takes.")] = False,
    store: StoreOption = None,
    as_json: JsonOption = False,
) -> None:
    """Tell what to know of a horse before its visit.

    What is on its feet, what is open, what was planned and what came of it. Without a horse:
    every horse seen on the day or, when none was, due by then. A record, not a diagnosis.

    Example: clinchbook brief Hester
    """
    from pipeline.cli.output import print_json
    from pipeline.keeping.location import store_folder
    from pipeline.keeping.looking import Looking
    from pipeline.using.brief import brief as brief_of
    from pipeline.using.brief import round_of
    from pipeline.using.brief_text import brief_json, brief_lines

    on = read_day(day) or date.today()
    with Looking.open(store_folder(store)) as kept:
        found = round_of(kept, on, place) if horse is None else [brief_of(kept, kept.horse(horse, place), on)]
    if as_json:
        for one in found:
            print_json(brief_json(one))
        return
    typer.echo(f"\n{'-' * 80}\n".join("\n".join(brief_lines(one, full)) for one in found))


def due(
    until: Annotated[str | None, typer.Option(metavar="YYYY-MM-DD", help="Due up to this day.")] = None,
    weeks: Annotated[
        int | None, typer.Option(metavar="N", min=0, max=520, help="Due within so many weeks; 1 unless given.")
    ] = None,
    place: PlaceOption = None,
    everything: Annotated[bool, typer.Option("--all", help="Horses not seen for a year as well.")] = False,
    day: Annotated[str | None, typer.Option(metavar="YYYY-MM-DD", help="As of this day; today unless given.")] = None,
    ics: Annotated[Path | None, typer.Option(metavar="FILE", help="Write a calendar file too.")] = None,
    owners: Annotated[bool, typer.Option("--owners", help="Name the owners in the calendar file.")] = False,
    store: StoreOption = None,
    as_json: JsonOption = False,
    as_csv: CsvOption = False,
) -> None:
    """List the horses that are due, overdue first, place by place.

    The day comes from what was said at the last visit; where nothing was said, from the
    horse's own rhythm, and the list says so.

    Example: clinchbook due --weeks 2 --ics due.ics
    """
    from pipeline.cli.output import print_json
    from pipeline.errors import SettingsError
    from pipeline.keeping.location import store_folder
    from pipeline.keeping.looking import Looking
    from pipeline.using.due import due_list
    from pipeline.using.due_text import due_csv, due_json, due_lines

    form = one_form(as_json, as_csv)
    if until is not None and weeks is not None:
        raise SettingsError("Say either --until or --weeks, not both.")
    if owners and ics is None:
        raise SettingsError("--owners is about the calendar file; say --ics FILE too.")
    today = read_day(day) or date.today()
    last = read_day(until) or today + timedelta(weeks=1 if weeks is None else weeks)
    with Looking.open(store_folder(store)) as kept:
        found = due_list(kept, today, last, place, everything)
    if ics is not None:
        from pipeline.using.calendar import due_calendar
        from pipeline.using.files import write_whole

        write_whole(ics, due_calendar(found, datetime.now(UTC), owners).decode("utf-8"))
        say_written([ics])
    if form == "json":
        print_json(due_json(found))
    else:
        typer.echo(due_csv(found) if form == "csv" else "\n".join(due_lines(found)), nl=form == "text")


def stock(
    since: Annotated[
        str | None, typer.Option(metavar="YYYY-MM-DD", help="Used from this day on; 12 weeks ago unless given.")
    ] = None,
    weeks: Annotated[int, typer.Option(metavar="N", min=0, max=520, help="Foreseen for so many weeks.")] = 6,
    place: PlaceOption = None,
    day: Annotated[str | None, typer.Option(metavar="YYYY-MM-DD", help="As of this day; today unless given.")] = None,
    store: StoreOption = None,
    as_json: JsonOption = False,
    as_csv: CsvOption = False,
) -> None:
    """Count shoes, nails, pads and packing, used and foreseen.

    Foreseen is what the horses due will need if their set-ups stay as they are, or as the
    last visit planned them: an order list.

    Example: clinchbook stock --since 2026-01 --weeks 6
    """
    from pipeline.cli.output import print_json
    from pipeline.keeping.location import store_folder
    from pipeline.keeping.looking import Looking
    from pipeline.using.stock import stock as stock_of
    from pipeline.using.stock_text import stock_csv, stock_json, stock_lines

    form = one_form(as_json, as_csv)
    today = read_day(day) or date.today()
    with Looking.open(store_folder(store)) as kept:
        found = stock_of(kept, read_first_day(since) or today - timedelta(weeks=12), today, weeks, place)
    if form == "json":
        print_json(stock_json(found))
    else:
        typer.echo(stock_csv(found) if form == "csv" else "\n".join(stock_lines(found)), nl=form == "text")
