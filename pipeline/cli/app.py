"""The command ``clinchbook`` and its sub-commands. Nothing here imports a heavy library."""

from __future__ import annotations

from typing import Annotated, Any

import typer

from pipeline.cli.endings import PlainEndings
from pipeline.cli.late import LateCommands

# Every command or group of commands, in the order of the help: the module of this folder that holds it, its name there.
COMMANDS = {
    "ingest": ("ingesting", "ingest"),
    "watch": ("watching", "watch"),
    "extract": ("extracting", "extract"),
    "show": ("looking", "show"),
    "search": ("looking", "search"),
    "brief": ("rounds", "brief"),
    "due": ("rounds", "due"),
    "stock": ("rounds", "stock"),
    "export": ("handing_on", "export"),
    "import": ("handing_on", "take_in"),
    "assign": ("looking", "assign"),
    "review": ("reviewing", "review"),
    "reread": ("rereading", "reread"),
    "history": ("past", "history"),
    "demo": ("demonstrate", "demo"),
    "check": ("checking", "check"),
    "waiting": ("waiting_list", "waiting"),
    "forget": ("removing", "forget"),
    "backup": ("backing", "backup"),
    "restore": ("backing", "restore"),
    "roster": ("rostering", "roster"),
    "words": ("wording", "words"),
}


class Clinchbook(PlainEndings):
    """The root command, whose commands are made when they are asked for."""

    def __init__(self, **settings: Any) -> None:
        super().__init__(**settings)
        self.commands = LateCommands(COMMANDS)


app = typer.Typer(
    cls=Clinchbook,
    name="clinchbook",
    # Plain help: rich would more than double the time that --help takes.
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
    add_completion=True,
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
        from pipeline.cli.checking import print_versions

        print_versions()
        raise typer.Exit


def main() -> None:
    """Run the command line; leaves the process with an exit code."""
    app(prog_name="clinchbook")
