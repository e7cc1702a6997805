"""A record as a tidy table, one fact a row, and the data dictionary that says what its columns hold."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from pipeline.judging import cautions
from pipeline.keeping import KeptHorse, KeptVisit
from pipeline.keeping.identity import MICROCHIP, UELN
from pipeline.record import FEET, NUMBER_SLOTS, SIZED_SLOTS, SLOTS, ZONES, Fact, Severity, Status
from pipeline.sentences import in_a_row
from pipeline.using.cells import Cell, csv_text
from pipeline.using.handover import Choice
from pipeline.using.origin import DISCLAIMER, program_version
from pipeline.using.wording import MEASURE_UNITS, fact_words

_COLUMNS: tuple[tuple[str, str], ...] = (
    ("horse", "The horse's name; a number in a redacted record."),
    ("owner", "Whose horse it is; empty when redacted or unknown."),
    ("place", "Where it stands; empty when redacted or unknown."),
    ("ueln", "Its Universal Equine Life Number, 15 characters."),
    ("microchip", "Its microchip, 15 digits (ISO 11784). Read this column as text."),
    ("identity", "Both once more as text that no spreadsheet takes for a number: UELN ..., microchip ..."),
    ("date", "Day of the visit, YYYY-MM-DD."),
    ("visit", "Number of the visit in the store that it came from."),
    ("foot", f"One of {', '.join(FEET)} (left or right, fore or hind); empty for the whole horse."),
    ("slot", f"What the fact is about: {', '.join(SLOTS)}."),
    ("value", "The fact's value. Read this column as text: shoe sizes such as 00 or 1-2 are no numbers."),
    ("number", f"The value once more when it is a number: {', '.join(NUMBER_SLOTS)}."),
    ("size", "A shoe or nail size once more as text that no spreadsheet takes for a number or a day: size 00."),
    ("unit", "Unit of the number: mm, ° or weeks; empty for counts and grades."),
    ("zone", f"Where on the foot: {', '.join(ZONES)}; empty when no place was said."),
    ("status", f"One of {', '.join(Status)}; absent is said not to be there, history is said of an earlier time."),
    ("severity", f"One of {', '.join(Severity)}; empty when not said."),
    ("in_words", "The fact as a person reads it. Grades name their scale."),
    ("confidence", "How probable it is that the fact is right as written, 0 to 1."),
    ("flagged", "yes: not reviewed by a person yet, though a person must look; no: nothing in doubt."),
    ("reasons", "Why a person must look."),
    ("quote", "The words of the memo that it was read from; empty when redacted."),
    ("start_s", "Where the words begin in the memo, seconds; empty for typed text."),
    ("end_s", "Where they end, seconds."),
    ("memo_file", "The memo's file name; empty when redacted."),
    ("memo_sha256", "SHA-256 of the memo's bytes; empty when redacted."),
    ("cautions", "The cautions that the facts of this visit call for."),
    ("exported_on", "Day of this export, YYYY-MM-DD."),
    ("clinchbook", "Version of the program that made it."),
    ("note", DISCLAIMER),
)
COLUMNS = tuple(name for name, _ in _COLUMNS)


def as_csv(horses: Iterable[tuple[KeptHorse, Sequence[KeptVisit]]], choice: Choice) -> str:
    """One fact a row under ``COLUMNS``; text that a spreadsheet would run is made plain text by an apostrophe."""
    return csv_text(COLUMNS, _rows(horses, choice))


def _rows(horses: Iterable[tuple[KeptHorse, Sequence[KeptVisit]]], choice: Choice) -> Iterator[list[Cell]]:
    for horse, visits in horses:
        for visit in visits:
            if choice.since is None or visit.visit.date >= choice.since:
                warned = " ".join(cautions(visit.visit.facts))
                for fact in visit.visit.facts:
                    yield [*_row(horse, visit, fact), warned, choice.on.isoformat(), program_version(), DISCLAIMER]


def dictionary_csv(choice: Choice) -> str:
    """The data dictionary: column and meaning, and when and with what the table was made."""
    made = ("(this table)", f"Made on {choice.on.isoformat()} with clinchbook {program_version()}.")
    return csv_text(("column", "meaning"), (*_COLUMNS, made))


def _row(horse: KeptHorse, kept: KeptVisit, fact: Fact) -> list[Cell]:
    roster = horse.horse
    return [
        horse.name,
        roster.owner,
        roster.place,
        roster.other.get(UELN),
        roster.other.get(MICROCHIP),
        _identity(roster.other.get(UELN), roster.other.get(MICROCHIP)),
        kept.visit.date.isoformat(),
        kept.id,
        fact.foot,
        fact.slot,
        fact.value,
        fact.value if isinstance(fact.value, int | float) else None,
        f"size {fact.value}" if fact.slot in SIZED_SLOTS else None,
        MEASURE_UNITS.get(fact.slot),
        fact.zone,
        fact.status.value,
        fact.severity.value if fact.severity else None,
        fact_words(fact),
        round(fact.confidence, 4),
        fact.flagged,
        in_a_row(fact.reasons),
        fact.quote,
        fact.start,
        fact.end,
        kept.memo.file_name,
        kept.memo.record.memo.sha256,
    ]


def _identity(ueln: str | None, microchip: str | None) -> str | None:
    said = [f"{name} {number}" for name, number in (("UELN", ueln), ("microchip", microchip)) if number]
    return ", ".join(said) or None
