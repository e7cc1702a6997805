"""``clinchbook check`` and ``--version``: is everything here that a memo needs, and what to do when it is not."""

from __future__ import annotations

import os
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Annotated

import typer

from pipeline.cli.options import JsonOption, ModelOption, StoreOption, hearing_settings
from pipeline.errors import ClinchbookError, StoreError

DISTRIBUTION = "clinchbook"
BACK_UP_DAYS = 14  # after so many a back-up is old; common practice, no source


@dataclass(frozen=True)
class Finding:
    """One thing that was looked at: what was found, or what is wrong and what to do.

    ``look`` marks what is not wrong but wants a person's look.
    """

    what: str
    found: str
    problem: ClinchbookError | None = None
    look: bool = False


def check(
    store: StoreOption = None,
    model: ModelOption = None,
    deep: Annotated[
        bool, typer.Option("--deep", help="Read every byte of weights and recordings; damaged weights are rebuilt.")
    ] = False,
    as_json: JsonOption = False,
) -> None:
    """Check that all is well, and say what to do if not.

    Looks at libraries, weights, words and store.

    Example: clinchbook check --deep
    """
    from pipeline.cli.endings import exit_code_of
    from pipeline.cli.output import print_json

    findings = [
        _look("libraries", _libraries),
        _look("words", lambda: _words(store)),
        _look("weights", lambda: _weights(model, deep)),
        _look("store", lambda: _store(store, deep)),
        _look("review", lambda: _review(store)),
        *_unless_wrong("back-up", lambda: _back_up(store)),
        *_unless_wrong("waiting", lambda: _waiting(store)),
        *_unless_wrong("privacy", lambda: _privacy(store)),
        *_unless_wrong("place", lambda: _place(store)),
    ]
    for finding in findings:
        right = finding.problem is None
        if as_json:
            print_json({"what": finding.what, "right": right, "look": finding.look, "found": finding.found})
        else:
            word = "look " if finding.look else "ok   "
            typer.echo(f"{word if right else 'WRONG'}  {finding.what:<10} {finding.found}")
    raise typer.Exit(exit_code_of(finding.problem for finding in findings if finding.problem))


def print_versions() -> None:
    """The versions of program, weights and words, a line each. Raises ClinchbookError when one cannot be told."""
    from pipeline import __version__
    from pipeline.vocabulary import load_vocabulary

    typer.echo(f"clinchbook {__version__}")
    typer.echo(f"weights {_weights_in_use()}")
    typer.echo(f"words {load_vocabulary().version}")


def _weights_in_use() -> str:
    """The version of the weights that hear; raises WeightsError and SettingsError."""
    from pipeline.hearing.weights import weights_version

    # Asked of the settings only where one counts: loading the library behind them takes longer than all the rest.
    if not any(os.environ.get(f"CLINCHBOOK_{name}") for name in ("MODEL", "ADAPTER")):
        return weights_version()
    settings = hearing_settings()
    return weights_version(settings.model, settings.allow_download, settings.adapter)


def _look(what: str, looking: Callable[[], str]) -> Finding:
    try:
        return Finding(what, looking())
    except ClinchbookError as problem:
        return Finding(what, str(problem), problem)


def _unless_wrong(what: str, looking: Callable[[], str | None]) -> list[Finding]:
    """A finding that wants a look, or none when there is nothing to say; a store that cannot be read said so above."""
    try:
        found = looking()
    except StoreError:
        return []
    return [Finding(what, found, look=True)] if found else []


def _libraries() -> str:
    """Every pinned requirement is installed in the version that clinchbook was tested with."""
    from importlib.metadata import PackageNotFoundError, requires, version

    try:
        pins = [line for line in requires(DISTRIBUTION) or [] if "extra ==" not in line]
    except PackageNotFoundError:
        return "run from its source without being installed, so there are no versions to compare"
    wrong = []
    for name, _, pinned in (pin.partition("==") for pin in pins):
        try:
            here = version(name)
        except PackageNotFoundError:
            here = "missing"
        if here != pinned:
            wrong.append(f"{name} is {here} instead of {pinned}")
    if wrong:
        raise ClinchbookError(f"{'; '.join(wrong)}: install clinchbook again.")
    return f"{len(pins)} in the versions that clinchbook was tested with"


def _words(store: Path | None) -> str:
    from pipeline.keeping import store_folder
    from pipeline.keeping.own_words import vocabulary_with_own

    vocabulary = vocabulary_with_own(store_folder(store))
    entries = sum(len(entries) for entries in vocabulary.classes.values())
    return f"{entries} entries in {len(vocabulary.classes)} files, version {vocabulary.version}"


def _weights(model: str | None, deep: bool) -> str:
    from pipeline.hearing.weights import check_weights, takes_adapter, weights_folder

    settings = hearing_settings(model=model)
    folder = weights_folder(settings.model)
    version = check_weights(settings.model, deep, settings.adapter)
    if deep and settings.adapter and takes_adapter(settings.model):
        from pipeline.hearing.adapter import adapted  # which loads numpy

        adapted(Path(folder))
    return f"{version} in {folder}{', every byte read' if deep else ''}"


def _store(store: Path | None, deep: bool) -> str:
    from pipeline.cli.output import counted
    from pipeline.keeping import Store, store_folder

    folder = store_folder(store)
    if not folder.exists():
        return f"none yet; the first memo makes it in {folder}"
    with Store.open(folder, create=False) as kept:
        problems, counts = kept.problems(deep=deep), kept.counts()
    if problems:
        lost = [problem for problem in problems if "removal" not in problem]
        advice = f" What is lost may be in the last back-up of {folder}." if lost else ""
        raise StoreError(" ".join(problems) + advice)
    return f"whole, with {counted(counts['horses'], 'horse')} and {counted(counts['memos'], 'memo')}, in {folder}"


def _back_up(store: Path | None) -> str | None:
    from pipeline.keeping import Store, store_folder

    folder = store_folder(store)
    if not folder.exists():
        return None
    with Store.open(folder, create=False) as kept:
        last, memos = kept.last_back_up(), kept.counts()["memos"]
    if not memos:
        return None
    if last is None:
        return "this store was never saved: see clinchbook backup"
    days = (datetime.now(UTC) - last[0]).days
    return f"the last one is {days} days old, in {last[1]}: see clinchbook backup" if days > BACK_UP_DAYS else None


def _waiting(store: Path | None) -> str | None:
    from pipeline.cli.output import counted
    from pipeline.keeping import Store, store_folder

    folder = store_folder(store)
    if not folder.exists():
        return None
    with Store.open(folder, create=False) as kept:
        entries = kept.waiting()
    if not entries:
        return None
    since = entries[0].since.astimezone().date().isoformat()
    what = counted(len(entries), "memo could not be taken in", "memos could not be taken in")
    return f"{what}, the first on {since}: see clinchbook waiting, try again with clinchbook ingest --again"


def _privacy(store: Path | None) -> str | None:
    from pipeline.keeping import store_folder
    from pipeline.keeping.privacy import open_to_others

    return " ".join(open_to_others(store_folder(store))) or None


def _review(store: Path | None) -> str:
    from pipeline.keeping import Store, store_folder
    from pipeline.using.review.spot_checks import silent_errors

    folder = store_folder(store)
    if not folder.exists():
        return "no spot check yet; there is no store"
    with Store.open(folder, create=False) as kept:
        return silent_errors(kept)


def _place(store: Path | None) -> str | None:
    from pipeline.keeping import store_folder
    from pipeline.keeping.shares import share_warning

    return share_warning(store_folder(store))
