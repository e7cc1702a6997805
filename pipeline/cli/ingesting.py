"""``clinchbook ingest``: sound files in, visits kept."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import (
    BeamOption,
    ComputeOption,
    DateOption,
    DeviceOption,
    DownloadOption,
    JsonOption,
    MinutesOption,
    ModelOption,
    ReviewOption,
    StoreOption,
    ThreadsOption,
    hearing_settings,
    level_of_care,
    read_day,
    roster_given,
)
from pipeline.cli.text_input import STDIN

if TYPE_CHECKING:
    from pipeline.ingest import Ingest
    from pipeline.record import RosterHorse

PathsArgument = Annotated[list[Path] | None, typer.Argument(metavar="PATH", help="Sound files, or folders of them.")]
DryRunOption = Annotated[bool, typer.Option("--dry-run", help="Hear and read, and keep nothing.")]
RosterOption = Annotated[
    Path | None,
    typer.Option("--roster", metavar="FILE", help="With --dry-run: a roster as CSV, not the store's."),
]
LinesOption = Annotated[
    Path | None,
    typer.Option("--jsonl", metavar="FILE", help='With --dry-run: lines of {"id", "date", "roster", "audio"}.'),
]
AgainOption = Annotated[
    bool, typer.Option("--again", help="Try those that wait too; without a PATH, only those. See waiting.")
]


def ingest(
    paths: PathsArgument = None,
    day: DateOption = None,
    store: StoreOption = None,
    roster: RosterOption = None,
    model: ModelOption = None,
    threads: ThreadsOption = None,
    device: DeviceOption = None,
    compute_type: ComputeOption = None,
    beam: BeamOption = None,
    max_minutes: MinutesOption = None,
    allow_download: DownloadOption = False,
    dry_run: DryRunOption = False,
    as_json: JsonOption = False,
    jsonl: LinesOption = None,
    again: AgainOption = False,
    care: ReviewOption = None,
) -> None:
    """Hear memos and keep what was said, with the sound.

    A memo that cannot be heard is named, with the reason, and waits; the others go on. The same sound
    twice adds nothing.

    Example: clinchbook ingest memos/ --date 2026-03-02
    """
    _refuse_nonsense(paths, day, roster, dry_run, jsonl, again)
    when = read_day(day)
    settings = hearing_settings(
        model=model,
        threads=threads,
        device=device,
        compute_type=compute_type,
        beam=beam,
        max_minutes=max_minutes,
        allow_download=allow_download,
    )
    from pipeline.ingest import Ingest
    from pipeline.keeping import store_folder
    from pipeline.keeping.own_words import vocabulary_with_own
    from pipeline.vocabulary import load_vocabulary

    # Lines bring everything with them and are read alike on every machine: the user's own words stay out.
    words = load_vocabulary() if jsonl is not None else vocabulary_with_own(store_folder(store))
    hearing = Ingest(settings, words, care=level_of_care(care))
    if jsonl is not None:
        code = _ingest_lines(hearing, jsonl)
    elif dry_run:
        code = _try_out(hearing, paths or [], roster_given(roster, store), when, as_json)
    else:
        code = _keep(hearing, paths or [], store, when, as_json, again)
    raise typer.Exit(code)


def _refuse_nonsense(
    paths: list[Path] | None, day: str | None, roster: Path | None, dry_run: bool, jsonl: Path | None, again: bool
) -> None:
    if again and (dry_run or jsonl is not None):
        raise typer.BadParameter("--again keeps what it hears, so it does not go with --dry-run or --jsonl.")
    if jsonl is not None and not dry_run:
        raise typer.BadParameter("--jsonl keeps nothing; say so with --dry-run.")
    if jsonl is not None and (paths or roster is not None or day is not None):
        raise typer.BadParameter("With --jsonl every line brings its own audio, roster and date; leave the others out.")
    if jsonl is None and not paths and not again:
        raise typer.BadParameter("Name at least one sound file or folder.")
    if roster is not None and not dry_run:
        raise typer.BadParameter(
            "--roster goes with --dry-run; a store learns its roster by: clinchbook roster import."
        )


def _keep(hearing: Ingest, paths: list[Path], store: Path | None, when: date | None, as_json: bool, again: bool) -> int:
    from pipeline.cli.endings import say
    from pipeline.cli.reporting import Report, progress
    from pipeline.ingest import sound_files
    from pipeline.keeping import Store, store_folder

    folder = store_folder(store)
    named = sound_files(paths, leave_out=folder)
    report = Report(as_json)
    with Store.open(folder) as kept:
        days = {entry.path: entry.day for entry in kept.waiting()} if again else {}
        files = [*days, *(path for path in named if path.absolute() not in days)]
        if again and not files:
            say("No memo waits.")
            return 0
        if not files:
            say(f"No sound file lies in {', '.join(map(str, paths))}.")
        with progress(len(files)) as starting:
            code = report.tell_all(hearing.keep_all(files, kept, when, starting, days))
        if report.nameless and not kept.roster():
            say("No horse is known yet; names are heard far better with a list: clinchbook roster import horses.csv")
        if waits := len(kept.waiting()):
            say(f"Memos: {waits} waiting; see clinchbook waiting, try again with clinchbook ingest --again.")
    return code


def _try_out(hearing: Ingest, paths: list[Path], horses: list[RosterHorse], when: date | None, as_json: bool) -> int:
    from pipeline.cli.reporting import Report, progress
    from pipeline.ingest import sound_files

    files = sound_files(paths)
    with progress(len(files)) as starting:
        return Report(as_json, dry_run=True).tell_all(hearing.read_all(files, horses, when, starting))


def _ingest_lines(hearing: Ingest, path: Path) -> int:
    from pipeline.cli.lines import Answerer, Request
    from pipeline.record import FlagKind, MemoRecord

    folder = Path() if path == STDIN else path.parent

    def answer(request: Request) -> MemoRecord:
        return hearing.read_sound(folder / request.needed("audio"), request.horses(), request.date).record

    return Answerer(answer, FlagKind.SOUND).run(path)
