"""A roster list from a CSV file: one horse a line, with the columns name, owner, place and also_called."""

from __future__ import annotations

import csv
import io
import unicodedata
from collections import Counter
from pathlib import Path

from pipeline.errors import FileMissingError, RosterError
from pipeline.keeping.identity import MICROCHIP, UELN, IdentityError, with_identity
from pipeline.keeping.names import name_key
from pipeline.record import RosterHorse

_OWN_COLUMNS = ("name", "owner", "place", "also_called")
_LONGEST = 200  # characters of a name; more is a broken file


def read_roster(path: Path) -> list[RosterHorse]:
    """The horses of a CSV file, its cells parted by commas, semicolons or tabs, in its order.

    Several other names are separated by ``;`` (in quotes where that parts the cells).

    Other columns are kept in ``other``, a UELN and a microchip in their written form. Raises FileMissingError, and
    RosterError naming the line for text that is no UTF-8, a missing name column, an empty name, a line of the wrong
    length, one name twice at one place, a number that is no UELN or microchip, or one such number twice.
    """
    text = _text(path)
    lines = csv.reader(io.StringIO(text, newline=""), strict=True, delimiter=_delimiter(text))
    horses: list[RosterHorse] = []
    seen: dict[tuple[str, str], int] = {}
    numbers: dict[tuple[str, str], int] = {}
    header: list[str] = []
    line = 1
    try:
        for cells in lines:
            if any(cell.strip() for cell in cells):
                if not header:
                    header = _header(cells, path.name)
                else:
                    fitted = _fitted(cells, header, path.name, line)
                    horse = _horse(dict(zip(header, fitted, strict=True)), path.name, line)
                    _check_once(horse, seen, path.name, line)
                    _check_numbers_once(horse, numbers, path.name, line)
                    horses.append(horse)
            line = lines.line_num + 1
    except csv.Error as error:
        raise RosterError(f"{path.name} line {line} is no proper CSV: {error}.") from error
    if not header:
        raise RosterError(f"{path.name} is empty; its first line must name the columns, with a column “name”.")
    return horses


def _text(path: Path) -> str:
    try:
        data = path.read_bytes()
    except FileNotFoundError as error:
        raise FileMissingError(f"There is no file {path}.") from error
    except (OSError, ValueError) as error:
        why = "is a folder; name the list in it" if path.is_dir() else "cannot be read"
        raise RosterError(f"{path} {why}.") from error
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise RosterError(f"{path.name} line {line} is no UTF-8 text; save the list as UTF-8.") from error


def _delimiter(text: str) -> str:
    """What parts the cells: a spreadsheet writes semicolons where the comma is the decimal sign, or tabs."""
    first = next((line for line in text.splitlines() if line.strip()), "")
    return max(",;\t", key=first.count)


def _header(cells: list[str], file: str) -> list[str]:
    named = [cell.strip().casefold().replace(" ", "_") for cell in cells]
    header = [name or f"column {number}" for number, name in enumerate(named, start=1)]
    if "name" not in header:
        raise RosterError(f"{file} has no column “name”; its first line must name the columns: name,owner,place.")
    twice = [column for column, times in Counter(header).items() if times > 1]
    if twice:
        raise RosterError(f"{file} has the column {min(twice)} twice.")
    return header


def _fitted(cells: list[str], header: list[str], file: str, line: int) -> list[str]:
    if len(cells) > len(header) and any(cell.strip() for cell in cells[len(header) :]):
        raise RosterError(f"{file} line {line} has {len(cells)} cells where {len(header)} belong.")
    return [cell.strip() for cell in cells[: len(header)]] + [""] * (len(header) - len(cells))


def _horse(cells: dict[str, str], file: str, line: int) -> RosterHorse:
    name = " ".join(cells["name"].split())
    if not name_key(name):
        raise RosterError(f"{file} line {line} has no name.")
    if len(name) > _LONGEST:
        raise RosterError(f"{file} line {line}: a name of {len(name)} characters is too long.")
    for cell in cells.values():
        if any(unicodedata.category(letter) == "Cc" and letter not in "\n\t" for letter in cell):
            raise RosterError(f"{file} line {line} has a character that cannot be printed.")
    also = [" ".join(other.split()) for other in cells.get("also_called", "").split(";")]
    others = {column: cell for column, cell in cells.items() if column not in _OWN_COLUMNS and cell}
    try:
        others = with_identity(others)
    except IdentityError as error:
        raise RosterError(f"{file} line {line}: {error}.") from error
    return RosterHorse(
        name=name,
        owner=cells.get("owner") or None,
        place=cells.get("place") or None,
        also_called=[other for other in dict.fromkeys(also) if name_key(other)],
        other=others,
    )


def _check_once(horse: RosterHorse, seen: dict[tuple[str, str], int], file: str, line: int) -> None:
    first = seen.setdefault((name_key(horse.name), name_key(horse.place)), line)
    if first != line:
        where = f" at {horse.place}" if horse.place else ""
        raise RosterError(f"{file} has {horse.name}{where} twice: line {first} and line {line}.")


def _check_numbers_once(horse: RosterHorse, seen: dict[tuple[str, str], int], file: str, line: int) -> None:
    for kind in (UELN, MICROCHIP):
        number = horse.other.get(kind)
        first = seen.setdefault((kind, number), line) if number else line
        if first != line:
            raise RosterError(f"{file} gives the {kind} {number} to two horses: line {first} and line {line}.")
