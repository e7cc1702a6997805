"""``clinchbook demo``: a farrier's day, taken in by the real pipeline."""

from __future__ import annotations

import shutil
import time
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import ModelOption, ThreadsOption, hearing_settings
from pipeline.errors import FileMissingError, StoreError

if TYPE_CHECKING:
    from pipeline.ingest import Ingest, Outcome

DEMO_FOLDER = "demo_audio"
ROSTER_NAME = "roster.csv"


def demo(
    folder: Annotated[
        Path | None, typer.Option(metavar="FOLDER", help="The demo's recordings, when they lie somewhere else.")
    ] = None,
    out: Annotated[Path, typer.Option(metavar="FOLDER", help="Where the demo's store is made, anew each time.")] = Path(
        "outputs"
    ),
    model: ModelOption = None,
    threads: ThreadsOption = None,
) -> None:
    """Take in a day of an invented farrier and show it.

    Example: clinchbook demo
    """
    from pipeline.cli.daybook import Day, print_day
    from pipeline.cli.endings import exit_code_of, say
    from pipeline.ingest import Ingest, sound_files
    from pipeline.vocabulary import load_vocabulary

    sounds = find_recordings(folder)
    files = sound_files([sounds])
    store = fresh_store(out / "demo-store", files)
    hearing = Ingest(hearing_settings(model=model, threads=threads), load_vocabulary())
    say(f"Hearing {len(files)} memos from {sounds}; the first run also puts the recogniser's weights in place.")
    started = time.monotonic()
    outcomes = _take_in(hearing, sounds, files, store)
    print_day(Day(outcomes, time.monotonic() - started, store))
    raise typer.Exit(exit_code_of(outcome.problem for outcome in outcomes if outcome.problem))


def find_recordings(named: Path | None) -> Path:
    """The folder named, or the demo's own in this folder or beside the source. Raises FileMissingError."""
    if named is not None:
        if named.is_dir():
            return named
        raise FileMissingError(f"There is no folder {named}.")
    beside_source = Path(__file__).resolve().parents[2] / DEMO_FOLDER
    for place in (Path(DEMO_FOLDER), beside_source):
        if place.is_dir():
            return place
    raise FileMissingError(
        f"The demo's recordings are not part of the installed program: they lie in the folder {DEMO_FOLDER} of its "
        "source; go there, or name it with --folder."
    )


def fresh_store(folder: Path, files: Sequence[Path]) -> Path:
    """Clear away the store of an earlier demo of these files. Raises StoreError rather than remove anything else."""
    from pipeline.keeping import Store
    from pipeline.keeping.location import is_store
    from pipeline.keeping.originals import sha256_of

    if folder.is_dir() and any(folder.iterdir()):
        if not is_store(folder):
            raise StoreError(
                f"{folder} holds something that is no store of the demo; move it away or name another --out."
            )
        with Store.open(folder, create=False) as kept:
            strangers = {memo.record.memo.sha256 for memo in kept.memos()} - {sha256_of(file) for file in files}
        if strangers:
            raise StoreError(f"{folder} holds memos that are not the demo's; move it away or name another --out.")
        shutil.rmtree(folder)
    return folder


def _take_in(hearing: Ingest, sounds: Path, files: list[Path], folder: Path) -> list[Outcome]:
    from pipeline.cli.reporting import progress
    from pipeline.keeping import Store
    from pipeline.keeping.roster import read_roster

    roster = sounds / ROSTER_NAME
    with Store.open(folder) as store, progress(len(files)) as starting:
        if roster.is_file():
            store.add_horses(read_roster(roster))
        return list(hearing.keep_all(files, store, starting=starting))
