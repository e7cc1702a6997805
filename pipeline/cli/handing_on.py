"""``clinchbook export`` and ``import``: a record goes to its owner, a vet, a program or another store, and back."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from pipeline.cli.endings import say_written
from pipeline.cli.looking import PlaceOption
from pipeline.cli.options import StoreOption, read_day, read_first_day
from pipeline.errors import SettingsError

if TYPE_CHECKING:
    from pipeline.keeping import Store
    from pipeline.using.export import Request

FormOption = Annotated[
    Literal["html", "pdf", "csv", "json", "md"],
    typer.Option("--format", help="A page or a PDF to read, a table, JSON for programs and other stores, Markdown."),
]
OutOption = Annotated[
    Path | None, typer.Option(metavar="FILE", help="Write here; with --all and html, pdf or md, into this folder.")
]


def export(
    horse: Annotated[str | None, typer.Argument(metavar="HORSE", help="The horse's name.")] = None,
    everything: Annotated[bool, typer.Option("--all", help="The whole store instead of one horse.")] = False,
    form: FormOption = "md",
    reader: Annotated[Literal["owner", "vet"], typer.Option("--for", help="Who reads it.")] = "owner",
    since: Annotated[str | None, typer.Option(metavar="YYYY-MM-DD", help="Only visits of this day or later.")] = None,
    redact: Annotated[bool, typer.Option("--redact", help="Leave out names, places and everything said.")] = False,
    with_audio: Annotated[
        bool, typer.Option("--with-audio", help="html: the sound of each quote; json: the recordings.")
    ] = False,
    on: Annotated[
        str | None, typer.Option("--dated", metavar="YYYY-MM-DD", help="The day that it carries. Default: today.")
    ] = None,
    out: OutOption = None,
    place: PlaceOption = None,
    store: StoreOption = None,
) -> None:
    """Hand on one horse's record, or the whole store.

    For the owner it is in plain words, with what to mind and when you come again; for the vet
    it is a dated line a foot, with measures, grades and their scale, hoof testers and every
    correction. A record, not a diagnosis.

    Example: clinchbook export Hester --format html --for vet --out hester.html
    """
    from pipeline.keeping import Store, store_folder
    from pipeline.using.export import BINARY, Request, choice_of

    if everything == (horse is not None):
        raise SettingsError("Name one horse, or give --all for the whole store.")
    request = Request(form, choice_of(read_day(on), reader, redact, read_first_day(since)), with_audio)
    request.check()
    if out is None and form in BINARY:
        raise SettingsError(f"{form} is no text for the screen; say with --out where to write it.")
    with Store.open(store_folder(store), create=False) as kept:
        _hand_on(kept, horse, request, out, place)


def take_in(
    file: Annotated[Path, typer.Argument(metavar="FILE.json", help="A record made with export --format json.")],
    horses: Annotated[
        Literal["ask", "mine", "theirs"],
        typer.Option("--horses", help="What holds where your list says something else of a horse; ask takes nothing."),
    ] = "ask",
    store: StoreOption = None,
) -> None:
    """Take in a record that another clinchbook exported.

    All of it or nothing: a file that is broken, redacted, or at odds with what is kept leaves
    the store as it was. Taking it in twice adds nothing.

    Example: clinchbook import hester.json
    """
    from pipeline.cli.output import counted
    from pipeline.keeping import Prefer, Store, store_folder
    from pipeline.using.interchange import read_record
    from pipeline.using.interchange import take_in as take_in_record

    read_record(file)  # before a store is made for a file that is no record
    with Store.open(store_folder(store)) as kept:
        taken = take_in_record(kept, file, Prefer(horses))
    added = (counted(taken.horses, "horse"), counted(taken.memos, "memo"), counted(taken.visits, "visit"))
    nothing = not (taken.horses or taken.memos or taken.visits)
    typer.echo("Nothing new: all of it is here already." if nothing else f"{', '.join(added)} taken in.")


def _hand_on(kept: Store, horse: str | None, request: Request, out: Path | None, place: str | None) -> None:
    from pipeline.using.export import export_all, export_all_to, export_horse, export_horse_to

    if out is None:
        data = export_all(kept, request) if horse is None else export_horse(kept, horse, request, place)
        sys.stdout.write(data.decode("utf-8"))
    elif horse is None:
        say_written(export_all_to(kept, request, out))
    else:
        say_written(export_horse_to(kept, horse, request, out, place))
