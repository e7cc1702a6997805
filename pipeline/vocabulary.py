"""The trade's words, read from the CSV files of ``vocab/``: never code, one file a class of word.

Every file has the columns ``canonical,spoken,heard_as,source``. ``spoken`` and ``heard_as`` hold forms separated by
``|``; ``...`` inside a form stands for up to four words on the way ("nailed ... back on"). Brackets hold alternatives,
which may be empty: "i [;do] wonder [if;whether]" stands for four forms, in the order in which they would be written
out. ``heard_as`` is what recognisers tend to write instead. A line that starts with ``#`` is a comment. A mistake is
refused with its line.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cached_property
from pathlib import Path
from typing import NamedTuple

from pipeline.errors import VocabularyError
from pipeline.terms import WORDED_SLOTS, ZONES

COLUMNS = ("canonical", "spoken", "heard_as", "source")
LEARNED_SOURCE = "learned from a correction"  # the source of what the user's corrections showed to be misheard

# Files whose canonical names are values of the record contract.
CLASS_SLOTS = {
    "findings": "finding",
    "warmths": "finding",  # "hot" is a finding beside a foot, and the weather else
    "tester_responses": "tester",
    "pulses": "pulse",
    "shoe_types": "shoe_type",
    "shoe_materials": "shoe_material",
    "work": "work",
    "shoe_states": "shoe_state",
    "pads": "pad",
    "packings": "packing",
    "treatments": "treatment",
    "nail_lines": "nail_line",
    "clips": "clips",
    "traction": "traction",
    "gaits": "gait",
    "manners": "manner",
    "vet": "vet",
}

# The file that holds most words of a slot: the first one named above.
SLOT_CLASSES = {slot: name for name, slot in reversed(CLASS_SLOTS.items())}

_FORM = re.compile(r"[a-z0-9'./½¼¾%°]+(?: [a-z0-9'./½¼¾%°]+)*")
_MARKS = "abcdefghijklmnopqrstuvwxyz0123456789'./½¼¾%° |".encode("latin-1")  # of forms, and between them
_ALTERNATIVES = re.compile(r"\[([^][]*)\]")


class Entry(NamedTuple):
    """One line of a vocabulary file."""

    canonical: str
    spoken: tuple[str, ...]
    heard_as: tuple[str, ...]
    source: str
    file: str
    line: int


class Vocabulary:
    """All classes of words, by file name without its ending."""

    def __init__(self, classes: Mapping[str, tuple[Entry, ...]]) -> None:
        self.classes = classes

    def entries(self, name: str) -> tuple[Entry, ...]:
        """The entries of a class; raises VocabularyError when there is no such file."""
        try:
            return self.classes[name]
        except KeyError as error:
            raise VocabularyError(f"The vocabulary has no file {name}.csv.") from error

    def spoken(self, name: str) -> dict[str, str]:
        """Spoken form to canonical name, for one class."""
        return {form: entry.canonical for entry in self.entries(name) for form in entry.spoken}

    def heard_as(self, name: str) -> dict[str, str]:
        """What recognisers write instead, to canonical name, for one class."""
        return {form: entry.canonical for entry in self.entries(name) for form in entry.heard_as}

    @cached_property
    def version(self) -> str:
        """A short digest that changes with any word."""
        import hashlib  # loads long, and a search needs no digest

        lines = (f"{name}|{entry}" for name in sorted(self.classes) for entry in self.classes[name])
        return hashlib.sha256("\n".join(lines).encode()).hexdigest()[:12]


def vocabulary_folder() -> Path:
    """Where the shipped words lie: inside the wheel, or beside the package in a source tree."""
    package = Path(__file__).resolve().parent
    packaged = package / "vocab"
    return packaged if packaged.is_dir() else package.parent / "vocab"


def load_vocabulary(folder: Path | None = None, own_words: Iterable[tuple[str, Entry]] = ()) -> Vocabulary:
    """Read every file of ``folder`` (default: the shipped one) and join the user's own words, given by class name.

    Raises VocabularyError, naming file and line, for a wrong column, an unknown canonical name, a form that is not
    plain lower-case words, or one form given to two canonical names.
    """
    classes = {name: list(_read_file(path)) for name, path in _files(folder or vocabulary_folder()).items()}
    for name, entry in own_words:
        if name not in classes:
            raise VocabularyError(f"There is no class of words {name!r}; known are {', '.join(sorted(classes))}.")
        _check_entry(entry, name)
        classes[name].append(entry)
    for name, entries in classes.items():
        _check_unique(name, entries)
    return Vocabulary({name: tuple(entries) for name, entries in classes.items()})


def late_vocabulary(own_words: Iterable[tuple[str, Entry]] = ()) -> Vocabulary:
    """The shipped words joined by the user's own, each class read and checked when it is first asked for.

    For whoever needs few of them: a search for a finding needs one class in forty. What ``load_vocabulary`` raises is
    raised then, for that class alone.
    """
    return Vocabulary(_LateClasses(_files(vocabulary_folder()), own_words))


class _LateClasses(Mapping[str, tuple[Entry, ...]]):
    """Classes of words by name, read when asked for."""

    def __init__(self, paths: Mapping[str, Path], own_words: Iterable[tuple[str, Entry]]) -> None:
        self._paths = paths
        self._own = tuple(own_words)
        self._read: dict[str, tuple[Entry, ...]] = {}

    def __getitem__(self, name: str) -> tuple[Entry, ...]:
        if name not in self._read:
            entries = list(_read_file(self._paths[name]))
            for _, entry in (own for own in self._own if own[0] == name):
                _check_entry(entry, name)
                entries.append(entry)
            _check_unique(name, entries)
            self._read[name] = tuple(entries)
        return self._read[name]

    def __contains__(self, name: object) -> bool:
        return name in self._paths

    def __iter__(self) -> Iterator[str]:
        return iter(self._paths)

    def __len__(self) -> int:
        return len(self._paths)


def _files(folder: Path) -> dict[str, Path]:
    paths = sorted(folder.glob("*.csv"))
    if not paths:
        raise VocabularyError(f"No vocabulary files in {folder}.")
    return {path.stem: path for path in paths}


def _read_file(path: Path) -> Iterator[Entry]:
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise VocabularyError(f"{path.name} cannot be read as UTF-8 text.") from error
    header: list[str] | None = None
    for number, line in enumerate(text.splitlines(), start=1):
        if not line.strip() or line.lstrip().startswith("#"):
            continue
        # A reader is made only where it is needed: making one takes longer than the line does.
        cells = next(csv.reader([line])) if '"' in line else line.split(",")
        row = [cell.strip() for cell in cells]
        if header is None:
            header = row
            if tuple(header) != COLUMNS:
                raise VocabularyError(f"{path.name} line {number}: the columns must be {','.join(COLUMNS)}.")
            continue
        if len(row) != len(COLUMNS):
            raise VocabularyError(f"{path.name} line {number}: {len(row)} cells where {len(COLUMNS)} belong.")
        where = f"{path.name} line {number}"
        entry = Entry(row[0], _forms(row[1], where), _forms(row[2], where), row[3], path.name, number)
        _check_entry(entry, path.stem)
        yield entry


def _forms(cell: str, where: str) -> tuple[str, ...]:
    told = filter(None, map(str.strip, cell.split("|")))
    if "[" not in cell and "]" not in cell:
        return tuple(told)
    forms: list[str] = []
    for form in told:
        if "[" in form or "]" in form:
            forms += _written_out(form, where)
        else:
            forms.append(form)
    return tuple(forms)


def _written_out(form: str, where: str) -> list[str]:
    """The forms that one with alternatives in brackets stands for, those of the last brackets side by side."""
    first, *parts = _ALTERNATIVES.split(form)  # in turn what stands outside of brackets and what within
    if any("[" in part or "]" in part for part in (first, *parts[1::2])):
        raise VocabularyError(f"{where}: the brackets of {form!r} do not match; none may stand inside others.")
    forms, gaps = [first], False
    for within, behind in zip(parts[::2], parts[1::2], strict=True):
        alternatives = within.split(";")
        if len(set(alternatives)) < max(2, len(alternatives)):
            raise VocabularyError(f"{where}: the brackets of {form!r} must hold two or more alternatives, as in [a;b].")
        forms = [before + alternative + behind for before in forms for alternative in alternatives]
        gaps = gaps or "" in alternatives
    return [" ".join(one.split()) for one in forms] if gaps else forms


def _check_entry(entry: Entry, name: str) -> None:
    where = f"{entry.file} line {entry.line}"
    if not entry.canonical:
        raise VocabularyError(f"{where}: no canonical name.")
    slot = CLASS_SLOTS.get(name)
    if slot and entry.canonical not in WORDED_SLOTS[slot]:
        raise VocabularyError(f"{where}: {entry.canonical!r} is no {slot} of the record.")
    if name == "zones" and entry.canonical not in ZONES:
        raise VocabularyError(f"{where}: {entry.canonical!r} is no zone of the record.")
    if not entry.spoken and not (entry.heard_as and entry.source == LEARNED_SOURCE):
        raise VocabularyError(f"{where}: {entry.canonical!r} has no spoken form.")
    if not entry.source:
        raise VocabularyError(f"{where}: no source; write 'common practice, no source' if there is none.")
    forms = (*entry.spoken, *entry.heard_as)
    if not _all_plain(forms):
        wrong = next(form for form in forms if not _FORM.fullmatch(form))
        raise VocabularyError(f"{where}: {wrong!r} must be words of the small letters a to z, with single spaces.")


def _all_plain(forms: tuple[str, ...]) -> bool:
    """Whether all are forms for certain, seen at once: one by one took a quarter of the loading."""
    joined = f"|{'|'.join(forms)}|"
    spaced = "  " not in joined and "| " not in joined and " |" not in joined and "||" not in joined
    strange = joined.encode("latin-1", "replace").translate(None, _MARKS)
    return spaced and not strange and joined.count("|") == len(forms) + 1


def _check_unique(name: str, entries: list[Entry]) -> None:
    seen: dict[str, Entry] = {}
    for entry in entries:
        for form in filter(seen.__contains__, entry.spoken):
            other = seen[form]
            if other.canonical != entry.canonical:
                raise VocabularyError(
                    f"{entry.file} line {entry.line}: {form!r} means {other.canonical} on line {other.line} already."
                )
        seen |= dict.fromkeys(entry.spoken, entry)
