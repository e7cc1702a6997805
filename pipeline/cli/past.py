"""``clinchbook history``: what was changed in a visit, and how it stood at a moment."""

from __future__ import annotations

from datetime import datetime, time
from typing import Annotated

import typer

from pipeline.cli.options import JsonOption, StoreOption
from pipeline.errors import DateError


def history(
    visit: Annotated[int, typer.Argument(metavar="VISIT", help="The visit's number.")],
    at: Annotated[
        str | None,
        typer.Option(metavar="WHEN", help="Show the visit as it stood at the end of that day, or at a time of it."),
    ] = None,
    store: StoreOption = None,
    as_json: JsonOption = False,
) -> None:
    """Show every change to a visit: when, who, what, and why.

    Nothing is ever erased: what was corrected, dropped or taken back is all here.

    Example: clinchbook history 12
    """
    from pipeline.cli.output import print_json
    from pipeline.keeping import Store, store_folder
    from pipeline.using.past import history_json, history_lines
    from pipeline.using.show import visit_json, visit_text

    when = read_moment(at) if at is not None else None
    with Store.open(store_folder(store), create=False) as kept:
        if when is not None:
            stood = kept.visit_at(visit, when)
            if as_json:
                print_json({"at": when.isoformat(), **visit_json(stood)})
            else:
                typer.echo(f"As it stood on {when:%Y-%m-%d at %H:%M:%S}:\n")
                typer.echo(visit_text(stood), nl=False)
            return
        found = kept.history_of(visit)
    if as_json:
        print_json(history_json(found))
        return
    for line in history_lines(found):
        typer.echo(line)


def read_moment(text: str) -> datetime:
    """A day, meant to its end, or a day with a time, local unless it names its zone. Raises DateError."""
    try:
        moment = datetime.fromisoformat(text.strip())
        if len(text.strip()) <= len("2026-03-02"):
            moment = datetime.combine(moment.date(), time.max)
        return moment.astimezone()
    except (ValueError, OverflowError, OSError) as error:
        raise DateError(
            f"{text!r} is no moment; write it as YYYY-MM-DD or YYYY-MM-DD HH:MM, such as 2026-03-02 18:00."
        ) from error
