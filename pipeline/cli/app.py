"""The command ``clinchbook`` and its sub-commands. Nothing here imports a heavy library."""

from __future__ import annotations

from typing import Annotated

import typer

from pipeline.cli import (
    backing,
    checking,
    demonstrate,
    extracting,
    handing_on,
    ingesting,
    looking,
    past,
    removing,
    rereading,
    reviewing,
    rostering,
    rounds,
    waiting_list,
    watching,
    wording,
)
from pipeline.cli.endings import PlainEndings

app = typer.Typer(
    cls=PlainEndings,
    name="clinchbook",
    # Plain help: rich would more than double the time that --help takes.
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
    add_completion=False,
    no_args_is_help=True,
)


@app.callback(invoke_without_command=True)
def clinchbook(
    version: Annotated[bool, typer.Option("--version", help="Print the versions of program, weights, words.")] = False,
) -> None:
    """Turn a farrier's spoken memos into per-foot visit records, offline, on this machine.

    Example: clinchbook ingest memos/
    """
    if version:
        checking.print_versions()
        raise typer.Exit


app.command("ingest")(ingesting.ingest)
app.command("watch")(watching.watch)
app.command("extract")(extracting.extract)
app.command("show")(looking.show)
app.command("search")(looking.search)
app.command("brief")(rounds.brief)
app.command("due")(rounds.due)
app.command("stock")(rounds.stock)
app.command("export")(handing_on.export)
app.command("import")(handing_on.take_in)
app.command("assign")(looking.assign)
app.command("review")(reviewing.review)
app.command("reread")(rereading.reread)
app.command("history")(past.history)
app.add_typer(rostering.roster, name="roster")
app.add_typer(wording.words, name="words")
app.command("demo")(demonstrate.demo)
app.command("check")(checking.check)
app.command("waiting")(waiting_list.waiting)
app.command("forget")(removing.forget)
app.command("backup")(backing.backup)
app.command("restore")(backing.restore)


def main() -> None:
    """Run the command line; leaves the process with an exit code."""
    app(prog_name="clinchbook")
