"""Numbers, lengths and intervals of the trade: this reader beside text2num, quantulum3 and dateparser.

``python -m tests.bench.phrases``. The phrases and what each means are in ``phrases.csv``, written by this project with
its own reader in view, so the figures say which work a general library would leave over, not which is better. A phrase
is right when exactly what it means comes out, and nothing when it means nothing ("none"). None of the three is a
dependency of the project; one that is not installed is passed over, and said to be.
"""

from __future__ import annotations

import csv
import sys
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime
from importlib import import_module
from importlib.metadata import version
from importlib.util import find_spec
from pathlib import Path

from pipeline.reading import Reader
from pipeline.reading.numbers import NumberReader
from pipeline.reading.tokens import tokenize
from pipeline.record import RosterHorse, Transcript
from pipeline.vocabulary import load_vocabulary
from tests.bench.history import add_rows, print_rows

HERE = Path(__file__).resolve().parent
COLUMNS = ("kind", "group", "reader", "right", "of")
DAY = date(2026, 4, 14)
MM = {"inch": 25.4, "millimetre": 1.0, "millimeter": 1.0, "centimetre": 10.0, "centimeter": 10.0}
TOLERANCE = {"number": 1e-9, "quantity": 0.06, "interval": 0.75}  # two months are 8 weeks here and 61 days to others

Reading = Callable[[str], list[float]]


@dataclass(frozen=True)
class Phrase:
    """What is said, and the number it means; None means none."""

    kind: str
    group: str
    words: str
    expected: float | None

    def is_right(self, found: list[float]) -> bool:
        """Whether exactly the expected number was found."""
        if self.expected is None:
            return found == []
        return len(found) == 1 and abs(found[0] - self.expected) <= TOLERANCE[self.kind]


def phrases() -> list[Phrase]:
    """All phrases, in the order of their file."""
    with (HERE / "phrases.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    meant = [None if row["expected"] == "none" else float(row["expected"]) for row in rows]
    return [Phrase(row["kind"], row["group"], row["phrase"], mean) for row, mean in zip(rows, meant, strict=True)]


def own_readings() -> dict[str, Reading]:
    """This reader: bare numbers; a toe length on a named foot; the interval of a memo about one horse."""
    vocabulary = load_vocabulary()
    numbers, reader = NumberReader(vocabulary.spoken("numbers")), Reader(vocabulary)

    def number(words: str) -> list[float]:
        return [float(n.value) for n in numbers.find(tokenize(words).lowers)]

    def slot(name: str, frame: str) -> Reading:
        def read(words: str) -> list[float]:
            visits = reader.read(Transcript(text=frame.format(words)), [RosterHorse(name="Bramble")], DAY)
            return [float(fact.value) for visit in visits for fact in visit.facts if fact.slot == name]

        return read

    return {
        "number": number,
        "quantity": slot("toe_length", "Bramble. Left fore toe length {}."),
        "interval": slot("next_visit_weeks", "Bramble. {}."),
    }


def text2num_reading() -> Reading:
    """The numerals that text2num makes of the words."""
    library = import_module("text_to_num")

    def read(words: str) -> list[float]:
        found = []
        for part in library.alpha2digit(words, "en").replace(",", " ").split():
            try:
                found.append(float(part))
            except ValueError:
                continue
        return found

    return read


def quantulum_reading() -> Reading:
    """The lengths that quantulum3 finds, in millimetres; a number without a unit counts as it stands."""
    library = import_module("quantulum3.parser")

    def read(words: str) -> list[float]:
        return [quantity.value * MM.get(quantity.unit.name, 1.0) for quantity in library.parse(words)]

    return read


def dateparser_reading() -> Reading:
    """The dates that dateparser finds, in weeks from the day of the memo."""
    library = import_module("dateparser.search")
    noon = datetime(DAY.year, DAY.month, DAY.day, 12)

    def read(words: str) -> list[float]:
        settings = {"RELATIVE_BASE": noon, "PREFER_DATES_FROM": "future"}
        found = library.search_dates(words, languages=["en"], settings=settings) or []
        return [(when.replace(tzinfo=None) - noon).total_seconds() / 604800 for _, when in found]

    return read


OTHERS = {
    "number": ("text2num", "text_to_num", text2num_reading),
    "quantity": ("quantulum3", "quantulum3", quantulum_reading),
    "interval": ("dateparser", "dateparser", dateparser_reading),
}


def rows_of(said: list[Phrase], name: str, read: Reading, tell: bool) -> list[list[str]]:
    """Kind, group, reader, right and all, a row a group; ``tell`` names every miss."""
    counts: dict[tuple[str, str], list[bool]] = {}
    for phrase in said:
        found = read(phrase.words)
        counts.setdefault((phrase.kind, phrase.group), []).append(phrase.is_right(found))
        if tell and not phrase.is_right(found):
            print(f"  {name}: {phrase.words!r} means {phrase.expected}, read as {found}")
    return [[kind, group, name, str(sum(right)), str(len(right))] for (kind, group), right in counts.items()]


def main(arguments: list[str]) -> int:
    """Print the table and append it to the results; ``--misses`` also names every phrase that was misread."""
    tell, own, rows = "--misses" in arguments, own_readings(), []
    for kind, (name, module, make) in OTHERS.items():
        said = [phrase for phrase in phrases() if phrase.kind == kind]
        rows += rows_of(said, "clinchbook", own[kind], tell)
        if find_spec(module) is None:
            print(f"{name} is not installed (pip install {name}); it was not compared.")
        else:
            rows += rows_of(said, f"{name} {version(name)}", make(), tell)
    print_rows(COLUMNS, rows)
    add_rows("phrases", COLUMNS, rows)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
