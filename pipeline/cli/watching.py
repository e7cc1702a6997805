"""``clinchbook watch``: memos are kept as a phone syncs them into a folder."""

from __future__ import annotations

import itertools
import time
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import ModelOption, ReviewOption, StoreOption, ThreadsOption, hearing_settings, level_of_care

if TYPE_CHECKING:
    from pipeline.cli.reporting import Report
    from pipeline.ingest import Ingest

POLL_S = 1.0  # between looks at the folder; polling also works on network drives, which send no notices


def watch(
    folder: Annotated[Path, typer.Argument(metavar="FOLDER", help="The folder that the phone syncs into.")],
    store: StoreOption = None,
    model: ModelOption = None,
    threads: ThreadsOption = None,
    settle: Annotated[
        float, typer.Option(metavar="SECONDS", min=0, max=600, help="A file this long unchanged is complete.")
    ] = 5.0,
    once: Annotated[bool, typer.Option("--once", help="Sweep once, then end.")] = False,
    care: ReviewOption = None,
) -> None:
    """Keep new memos as a phone syncs them into a folder.

    Each is taken in when its file has stopped growing. Ends with Ctrl-C; a memo that is being
    heard at that moment is taken in at the next start.

    Example: clinchbook watch ~/Sync/memos
    """
    from pipeline.cli.endings import exit_code_of, say
    from pipeline.cli.reporting import Report
    from pipeline.ingest import Ingest
    from pipeline.keeping import store_folder
    from pipeline.keeping.own_words import vocabulary_with_own

    words = vocabulary_with_own(store_folder(store))
    hearing = Ingest(hearing_settings(model=model, threads=threads), words, care=level_of_care(care))
    report = Report()
    try:
        _sweep(hearing, folder, store, report, settle, once)
    except KeyboardInterrupt:
        say(f"Watching ended. {report.counts()}")
        raise typer.Exit from None
    say(report.counts())
    raise typer.Exit(exit_code_of(report.problems))


def _sweep(hearing: Ingest, folder: Path, store: Path | None, report: Report, settle_s: float, once: bool) -> None:
    from pipeline.cli.endings import say
    from pipeline.cli.settling import Settling
    from pipeline.keeping import store_folder

    settling, kept_in = Settling(settle_s), store_folder(store)
    there = True
    # One sweep looks twice: a file that did not change in between is complete.
    last_look = 1 if once else None
    for look in itertools.count():
        there, found = _found(folder, kept_in, told=not there, must=once or look == 0)
        complete = settling.ready(found)
        if look == 0:
            say(f"Looking through {folder}." if once else f"Watching {folder}.")
        for path in _taken_in(hearing, complete, kept_in, report, once) if complete else []:
            settling.again(path)
        if look == last_look:
            break
        time.sleep(settle_s if once else POLL_S)
    for path in settling.growing():
        say(f"{path} is still growing and is left for the next sweep.")


def _found(folder: Path, kept_in: Path, told: bool, must: bool) -> tuple[bool, list[Path]]:
    """Whether the folder is there, and its memos. A stick or a share may be gone for a while; that is said once."""
    from pipeline.cli.endings import say
    from pipeline.errors import FileMissingError
    from pipeline.ingest import sound_files

    try:
        return True, sound_files([folder], leave_out=kept_in)
    except (FileMissingError, OSError):
        if must:
            raise
    if not told:
        say(f"{folder} cannot be read just now; its memos are taken in when it is back.")
    return False, []


def _taken_in(hearing: Ingest, complete: list[Path], kept_in: Path, report: Report, once: bool) -> list[Path]:
    """Keep the memos; those that must be tried again because another program held the store, unless it is ``once``."""
    from pipeline.cli.endings import say
    from pipeline.errors import StoreBusyError
    from pipeline.keeping import Store

    again: list[Path] = []
    _hear_new_words(hearing, kept_in)
    try:
        with Store.open(kept_in) as kept:
            for outcome in hearing.keep_all(complete, kept):
                if isinstance(outcome.problem, StoreBusyError) and not once:
                    say(f"{outcome.path}: {outcome.problem} It is tried again.")
                    again.append(outcome.path)
                else:
                    report.tell(outcome)
    except StoreBusyError as busy:
        if once:
            raise
        say(f"{busy} The memos are tried again.")
        return complete
    return again


def _hear_new_words(hearing: Ingest, store: Path) -> None:
    """Go on with the user's own words as they are now; while they have a mistake, with those known before."""
    from pipeline.cli.endings import say
    from pipeline.errors import VocabularyError
    from pipeline.keeping.own_words import vocabulary_with_own

    try:
        words = vocabulary_with_own(store)
    except VocabularyError as error:
        say(f"{error} Your words stay as they were before.")
        return
    if words.version != hearing.vocabulary.version:
        hearing.learn(words)
        say("Your own words changed; they count from the next memo on.")
