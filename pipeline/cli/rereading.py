"""``clinchbook reread``: kept memos read again by today's rules and words."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import (
    BeamOption,
    ComputeOption,
    DeviceOption,
    DownloadOption,
    JsonOption,
    ModelOption,
    ReviewOption,
    StoreOption,
    ThreadsOption,
    hearing_settings,
    level_of_care,
)

if TYPE_CHECKING:
    from pipeline.ingest import Ingest, Reread
    from pipeline.keeping import Store


def reread(
    memos: Annotated[
        list[str] | None, typer.Argument(metavar="[MEMO]...", help="A memo's number, or the name of its file.")
    ] = None,
    every: Annotated[bool, typer.Option("--all", help="Every memo of the store.")] = False,
    listen: Annotated[bool, typer.Option("--listen", help="Hear the recording again too; takes as long as ingest.")] = (
        False
    ),
    undo: Annotated[bool, typer.Option("--undo", help="Let the reading before the present one stand again.")] = False,
    store: StoreOption = None,
    model: ModelOption = None,
    threads: ThreadsOption = None,
    device: DeviceOption = None,
    compute_type: ComputeOption = None,
    beam: BeamOption = None,
    allow_download: DownloadOption = False,
    as_json: JsonOption = False,
    care: ReviewOption = None,
) -> None:
    """Read kept memos again, by today's rules and words.

    What you confirmed, corrected, dropped or added stays; what the new reading no longer finds of it is put before
    you. Says what is gone (-), new (+) and doubtful by now (?). The former reading is kept: --undo brings it back.

    Example: clinchbook reread --all
    """
    if every == bool(memos):
        raise typer.BadParameter("Name the memos to read again, or say --all.")
    if undo and listen:
        raise typer.BadParameter("--undo brings a reading back; it does not listen.")
    settings = hearing_settings(
        model=model,
        threads=threads,
        device=device,
        compute_type=compute_type,
        beam=beam,
        allow_download=allow_download,
    )
    from pipeline.ingest import Ingest
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.own_words import vocabulary_with_own

    folder = store_folder(store)
    with Store.open(folder, create=False) as kept:
        # A memo of which a horse was removed for good is not read again, or the horse would be back.
        left_out = kept.not_to_read()
        numbers = (
            [number for number in kept.memo_numbers() if number not in left_out]
            if every
            else [kept.memo_number(name) for name in dict.fromkeys(memos or ())]
        )
        if undo:
            _take_back(kept, numbers, every, as_json)
        else:
            reading = Ingest(settings, vocabulary_with_own(folder), care=level_of_care(care))
            raise typer.Exit(_read(reading, kept, numbers, listen, as_json))


def _take_back(kept: Store, numbers: list[int], every: bool, as_json: bool) -> None:
    from pipeline.cli.endings import say
    from pipeline.cli.output import counted, print_json

    back = 0
    for number in numbers:
        if every and kept.memo(number).reading == 1:
            continue
        reading = kept.take_reading_back(number)
        back += 1
        if as_json:
            print_json({"memo": number, "reading": reading})
        else:
            typer.echo(f"memo {number}: reading {reading} stands again.")
    if every:
        say(f"{counted(back, 'memo')} taken back.")


def _read(hearing: Ingest, kept: Store, numbers: list[int], listen: bool, as_json: bool) -> int:
    """Read one memo after the other; one that cannot be heard is named and the others go on."""
    from pipeline.cli.endings import exit_code_of, say
    from pipeline.cli.output import counted
    from pipeline.cli.reporting import progress
    from pipeline.errors import ClinchbookError, WeightsError

    problems: list[ClinchbookError] = []
    changed = 0
    with progress(len(numbers)) as starting:
        for number in numbers:
            starting(Path(f"memo {number}"))
            try:
                again = hearing.reread(kept, number, listen)
            except WeightsError:  # no other memo could be heard either
                raise
            except ClinchbookError as problem:
                problems.append(problem)
                say(f"memo {number}: {problem}")
                continue
            changed += again.reading is not None
            _tell(again, as_json)
    same = len(numbers) - changed - len(problems)
    failed = f", {len(problems)} could not be read" if problems else ""
    say(f"{counted(len(numbers), 'memo')}: {changed} read differently, {same} the same{failed}.")
    return exit_code_of(problems)


def _tell(again: Reread, as_json: bool) -> None:
    from pipeline.cli.output import print_json
    from pipeline.using.differences import difference_json, difference_lines, differences

    found = differences(again.was, again.now)
    if as_json:
        told = [difference_json(one) for one in found]
        print_json({"memo": again.memo.id, "reading": again.reading, "visits": told})
    elif again.reading is not None:
        file, same = again.memo.file_name, "" if found else " the facts are the same, its notes or doubts are not."
        typer.echo(f"memo {again.memo.id} ({file}), reading {again.reading}:{same}")
        for line in difference_lines(found):
            typer.echo(f"  {line}")
