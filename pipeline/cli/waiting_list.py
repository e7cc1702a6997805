"""``clinchbook waiting``: the memos that could not be taken in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import JsonOption, StoreOption

if TYPE_CHECKING:
    from pipeline.keeping.waiting import Waiting


def waiting(
    drop: Annotated[
        list[int] | None, typer.Option(metavar="N", help="Take this entry off the list; may be given several times.")
    ] = None,
    store: StoreOption = None,
    as_json: JsonOption = False,
) -> None:
    """List the memos that could not be taken in, and why.

    They are tried again by ingest --again, and leave the list when they are kept or dropped. Dropping
    an entry leaves its file as it is.

    Example: clinchbook waiting --drop 3
    """
    from pipeline.cli.endings import say
    from pipeline.keeping import Store, store_folder

    with Store.open(store_folder(store), create=False) as kept:
        if drop:
            for entry in kept.stop_waiting(drop):
                say(f"{entry.path} no longer waits.")
        entries = kept.waiting()
    for entry in entries:
        _print(entry, as_json)
    say("Try them again with: clinchbook ingest --again" if entries else "No memo waits.")
    if entries:
        say("Take one off the list with: clinchbook waiting --drop N")


def _print(entry: Waiting, as_json: bool) -> None:
    from pipeline.cli.output import counted, print_json
    from pipeline.using.wording import harmless

    if as_json:
        print_json(
            {
                "number": entry.id,
                "path": str(entry.path),
                "sha256": entry.sha256,
                "date": entry.day.isoformat() if entry.day else None,
                "reason": entry.reason,
                "since": entry.since.isoformat(),
                "last_tried": entry.last_tried.isoformat(),
                "tries": entry.tries,
            }
        )
        return
    since = entry.since.astimezone().date().isoformat()
    where = harmless(str(entry.path))
    typer.echo(f"{entry.id}  {where}  since {since}, {counted(entry.tries, 'try', 'tries')}: {harmless(entry.reason)}")
