"""Options that several commands share, and the small readings of their values."""

from __future__ import annotations

from calendar import monthrange
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from pipeline.errors import DateError, SettingsError

if TYPE_CHECKING:
    from pipeline.hearing.settings import HearingSettings
    from pipeline.record import RosterHorse

StoreOption = Annotated[
    Path | None,
    typer.Option(
        "--store",
        metavar="FOLDER",
        readable=False,  # not asked here: the store says itself, and better, why it cannot be used
        help="The store. Default: CLINCHBOOK_STORE, else your user data folder.",
    ),
]
DateOption = Annotated[
    str | None, typer.Option("--date", metavar="YYYY-MM-DD", help="The day of the visits; overrules the file's own.")
]
JsonOption = Annotated[bool, typer.Option("--json", help="Print JSON, one object a line.")]
CsvOption = Annotated[bool, typer.Option("--csv", help="Print rows for a spreadsheet.")]
ModelOption = Annotated[
    str | None, typer.Option("--model", metavar="NAME", help="Recogniser: base, tiny.en or a folder with a model.")
]
ThreadsOption = Annotated[int | None, typer.Option("--threads", metavar="N", help="Processor threads; 0 is all.")]
DeviceOption = Annotated[str | None, typer.Option("--device", metavar="NAME", help="cpu, cuda or auto.")]
ComputeOption = Annotated[
    str | None, typer.Option("--compute-type", metavar="TYPE", help="Number format of the recogniser, such as int8.")
]
BeamOption = Annotated[int | None, typer.Option("--beam", metavar="N", help="Beam size: how many wordings it weighs.")]
MinutesOption = Annotated[
    float | None, typer.Option("--max-minutes", metavar="N", help="Refuse memos that are longer than this.")
]
DownloadOption = Annotated[
    bool, typer.Option("--allow-download", help="Let a model named with --model be fetched from the network.")
]

ReviewOption = Annotated[
    Literal["strict", "usual", "fast"] | None,
    typer.Option("--review", help="How much is put before you; says what that costs. Default: usual."),
]


def level_of_care(chosen: str | None) -> str:
    """The level of care; what it costs is told where it was chosen."""
    if chosen is None:
        return "usual"
    from pipeline.cli.endings import say
    from pipeline.judging.model import Care, cost_of

    say(cost_of(Care(chosen)))
    return chosen


def read_day(text: str | None) -> date | None:
    """A day written as YYYY-MM-DD; None stays None. Raises DateError."""
    return None if text is None else _day(text, text, "YYYY-MM-DD, such as 2026-03-02")


def _day(written: str, said: str, forms: str = "2026-03-02, or 2026-03 for a month, or 2026 for a year") -> date:
    try:
        return date.fromisoformat(written)
    except ValueError as error:
        raise DateError(f"{said!r} is no date; write it as {forms}.") from error


def read_first_day(text: str | None) -> date | None:
    """A day, or the first one of a month (YYYY-MM) or year (YYYY); None stays None. Raises DateError."""
    if text is None:
        return None
    return _day(text + {4: "-01-01", 7: "-01"}.get(len(text), ""), text)


def read_last_day(text: str | None) -> date | None:
    """A day, or the last one of a month (YYYY-MM) or year (YYYY); None stays None. Raises DateError."""
    if text is None or len(text) not in (4, 7):
        return read_day(text)
    first = _day(f"{text}-12-01" if len(text) == 4 else f"{text}-01", text)
    return first.replace(day=monthrange(first.year, first.month)[1])


def one_form(as_json: bool, as_csv: bool) -> Literal["json", "csv", "text"]:
    """How to print. Raises SettingsError when two ways are asked for at once."""
    if as_json and as_csv:
        raise SettingsError("Either --json or --csv can be printed, not both at once.")
    return "json" if as_json else "csv" if as_csv else "text"


def roster_given(file: Path | None, store: Path | None) -> list[RosterHorse]:
    """The horses of a list, else those of the store if there is one already. Raises what reading them raises."""
    if file is not None:
        from pipeline.keeping.roster import read_roster

        return read_roster(file)
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.location import is_store

    folder = store_folder(store)
    if not is_store(folder):
        return []
    with Store.open(folder, create=False) as kept:
        return kept.roster()


def hearing_settings(
    *,
    model: str | None = None,
    threads: int | None = None,
    device: str | None = None,
    compute_type: str | None = None,
    beam: int | None = None,
    max_minutes: float | None = None,
    allow_download: bool = False,
) -> HearingSettings:
    """Settings from the environment, with the flags that were given winning. Raises SettingsError."""
    from pipeline.hearing.settings import HearingSettings

    flags = {
        "model": model,
        "threads": threads,
        "device": device,
        "compute_type": compute_type,
        "beam_size": beam,
        "max_minutes": max_minutes,
        "allow_download": allow_download or None,
    }
    return HearingSettings.from_environment(**flags)
