"""``clinchbook backup`` and ``restore``: the whole store, copied out and put back."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import StoreOption

if TYPE_CHECKING:
    from pipeline.keeping.backing_up import BackedUp

PASSPHRASE_VARIABLE = "CLINCHBOOK_PASSPHRASE"

PassphraseFileOption = Annotated[
    Path | None,
    typer.Option("--passphrase-file", metavar="FILE", help=f"Its first line; else {PASSPHRASE_VARIABLE}, else asked."),
]


def backup(
    target: Annotated[Path, typer.Argument(metavar="DEST", help="A folder of its own; with --encrypt a new file.")],
    encrypt: Annotated[
        bool, typer.Option("--encrypt", help="Write one file that only a passphrase opens (a zip of age files).")
    ] = False,
    passphrase_file: PassphraseFileOption = None,
    store: StoreOption = None,
) -> None:
    """Save the whole store: database, recordings and your own words.

    A folder is brought up to date: recordings that are there are not copied again, and what was
    removed from the store goes out of it. The copy is opened and checked before it counts. Memos
    may be taken in meanwhile.

    Example: clinchbook backup /media/stick/clinchbook
    """
    from pipeline.keeping import Store, store_folder

    if passphrase_file is not None and not encrypt:
        raise typer.BadParameter("--passphrase-file goes with --encrypt.")
    with Store.open(store_folder(store), create=False) as kept:
        if encrypt:
            done = kept.archive(target.expanduser(), _passphrase(passphrase_file, new=True)())
        else:
            done = kept.back_up(target.expanduser())
    _tell(done, encrypt)


def restore(
    source: Annotated[Path, typer.Argument(metavar="SRC", help="The back-up: a folder, or an encrypted file.")],
    replace: Annotated[
        bool, typer.Option("--replace", help="Set a store that is there aside; it is kept beside the new one.")
    ] = False,
    passphrase_file: PassphraseFileOption = None,
    store: StoreOption = None,
) -> None:
    """Put a back-up back as the store.

    A store that is there already is left alone unless --replace, and even then it is not deleted.

    Example: clinchbook restore /media/stick/clinchbook --store restored
    """
    from pipeline.cli.endings import say
    from pipeline.cli.output import counted
    from pipeline.errors import BackupError
    from pipeline.keeping import store_folder
    from pipeline.keeping.restoring import restore as put_back
    from pipeline.using.wording import harmless

    passphrase = _passphrase(passphrase_file, new=False)
    done = put_back(source.expanduser(), store_folder(store), replace=replace, passphrase=passphrase)
    for problem in done.problems:
        say(harmless(problem))
    typer.echo(f"Restored {counted(done.memos, 'memo')} into {done.folder}.")
    if done.set_aside:
        typer.echo(f"The store that was there is set aside in {done.set_aside}.")
    raise typer.Exit(BackupError.exit_code if done.problems else 0)


def _tell(done: BackedUp, encrypted: bool) -> None:
    from pipeline.cli.endings import say
    from pipeline.cli.output import counted
    from pipeline.errors import BackupError
    from pipeline.keeping.privacy import open_to_others
    from pipeline.using.wording import harmless

    for problem in done.problems:
        say(harmless(f"{problem} Its record is in the back-up."))
    recordings = f"{counted(done.copied, 'recording')} copied"
    recordings += f", {done.there_before} there before" if done.there_before else ""
    recordings += f", {done.taken_out} taken out" if done.taken_out else ""
    typer.echo(f"Saved and checked: {counted(done.memos, 'memo')} ({recordings}) in {done.path}.")
    if said := [] if encrypted else open_to_others(done.path):
        say(" ".join(said))
        say("On a disk that knows no such rights, clinchbook backup --encrypt keeps it from everybody.")
    raise typer.Exit(BackupError.exit_code if done.problems else 0)


def _passphrase(file: Path | None, new: bool) -> Callable[[], str]:
    """Where the passphrase comes from when it is needed: the file's first line, the variable, or the keyboard."""

    def asking() -> str:
        import warnings
        from getpass import GetPassWarning

        from pipeline.errors import PassphraseError

        if file is not None:
            from pipeline.cli.text_input import read_text

            return read_text(file).splitlines()[0]
        given = os.environ.get(PASSPHRASE_VARIABLE, "")
        if given:
            return given
        try:
            with warnings.catch_warnings(action="error", category=GetPassWarning):  # nobody could type it unseen
                return str(typer.prompt("Passphrase", hide_input=True, confirmation_prompt=new, err=True))
        except (typer.Abort, GetPassWarning) as error:
            typer.echo(err=True)  # the question stands there still
            raise PassphraseError(
                f"No passphrase was given: type it, or set {PASSPHRASE_VARIABLE}, or name a --passphrase-file."
            ) from error

    return asking
