"""How long it takes to hand on a horse of many visits: ``python -m tests.bench.export [VISITS]``.

Makes an invented horse in a store of its own, exports it in every form in a fresh Python each, in turns, and prints the
least seconds of processor time and of the clock. Rows are added to results/export.csv.
"""

from __future__ import annotations

import hashlib
import random
import sys
import tempfile
from datetime import date, timedelta
from pathlib import Path

from pipeline.keeping import Store
from pipeline.record import FEET, Fact, HorseMatch, Memo, MemoRecord, RosterHorse, Severity, Transcript, Visit, Word
from pipeline.using.export import FORMS
from tests.bench.cost import Cost, least, taking_turns
from tests.bench.history import add_rows

HORSE = "Bramble"
SEED = 7
ROUNDS = 5
COLUMNS = ("visits", "form", "reader", "processor_s", "clock_s", "target_s")
PER_FOOT: dict[str, tuple[str | float, ...]] = {
    "work": ("trim", "reset", "new_shoe"),
    "shoe_size": ("0", "00", "1"),
    "toe_angle": (48.0, 49.5, 51.0),
    "toe_length": (85.0, 88.9, 90.0),
    "finding": ("thrush", "bruise", "corn", "crack"),
    "tester": ("none", "mild", "strong"),
}


def made_visit(day: date, chance: random.Random) -> Visit:
    """A visit of some twenty-seven facts."""
    facts: list[Fact] = []
    for foot in FEET:
        for slot, values in PER_FOOT.items():
            at = len(facts)
            zone = chance.choice(("toe", "heel", "sulcus")) if slot in ("finding", "tester") else None
            severity = Severity.MILD if slot == "finding" else None
            facts.append(
                Fact(
                    foot=foot, slot=slot, value=chance.choice(values), zone=zone, severity=severity,
                    quote=f"{slot} at word {at}", start=at * 2.0, end=at * 2.0 + 1, flagged=chance.random() < 0.1,
                    reasons=["A word was hard to hear; please listen."],
                )
            )  # fmt: skip
    for slot, value in (("lameness", 2.0), ("body_condition", 5.0), ("next_visit_weeks", 6.0)):
        facts.append(Fact(foot=None, slot=slot, value=value, quote=slot))
    return Visit(horse=HORSE, horse_match=HorseMatch.KNOWN, date=day, facts=facts, notes="Stood well.")


def fill(folder: Path, visits: int) -> None:
    """Keep ``visits`` visits, one a memo."""
    chance = random.Random(SEED)
    words = [Word(text="word", start=0, end=4, start_s=i, end_s=i + 0.5, probability=0.9) for i in range(100)]
    with Store.open(folder / "store") as store:
        store.add_horses([RosterHorse(name=HORSE, owner="A. Fern", place="River barn")])
        for number in range(visits):
            path = folder / f"memo {number}.m4a"
            path.write_bytes(f"memo {number}".encode())
            memo = Memo(sha256=hashlib.sha256(path.read_bytes()).hexdigest(), seconds=60)
            visit = made_visit(date(2003, 1, 6) + timedelta(weeks=6 * number), chance)
            transcript = Transcript(text="word " * 100, words=words)
            store.keep(MemoRecord(memo=memo, transcript=transcript.text, visits=[visit]), transcript, path)


def measured(folder: Path) -> dict[tuple[str, str], Cost]:
    """The least that every form costs for every reader, in milliseconds."""
    kinds = [(form, reader) for form in FORMS for reader in ("owner", "vet")]
    return {kind: least(runs) for kind, runs in taking_turns({k: command(folder, *k) for k in kinds}, ROUNDS).items()}


def command(folder: Path, form: str, reader: str) -> tuple[str, ...]:
    """What Python is given for one export."""
    asked = ("-m", "pipeline.cli", "export", HORSE, "--format", form, "--for", reader)
    return (*asked, "--out", str(folder / f"out.{form}"), "--store", str(folder / "store"))


def main() -> None:
    """Print one line a form and reader, and add it to the results."""
    visits = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    with tempfile.TemporaryDirectory() as name:
        fill(Path(name), visits)
        costs = measured(Path(name))
    print(f"{visits} visits of {HORSE}, seed {SEED}")
    rows = [
        (visits, form, reader, f"{cost.processor / 1000:.2f}", f"{cost.clock / 1000:.2f}", "<= 2")
        for (form, reader), cost in costs.items()
    ]
    for _, form, reader, processor, clock, _ in rows:
        print(f"{form:5} {reader:6} {processor:>5} s of processor, {clock:>5} s of the clock")
    add_rows("export", COLUMNS, rows)


if __name__ == "__main__":
    main()
