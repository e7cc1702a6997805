"""How much stays wrong unseen: ``python -m tests.bench.silent [--sound DIR]``.

The kept memos, read as text, and with the hearing bench's folder of sound the takes of kept memos that this project's
hearing has heard there already: the share of facts that are flagged, and of those that are wrong without a flag, each
with its 95 % interval, memos being drawn anew. Nothing but counts is told. Rows are added to ``results/silent.csv``.
"""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterable, Sequence
from pathlib import Path

from pipeline.judging.model import Care
from tests.bench.hearing.making import SOUND
from tests.bench.history import add_rows, print_rows
from tests.bench.judging.__main__ import tally_sound, tally_text
from tests.bench.judging.outcomes import Outcome, Tally
from tests.bench.judging.promising import calibration_error, interval

COLUMNS = (
    *("what", "care", "memos", "takes", "facts", "flagged", "flagged_low", "flagged_high"),
    *("silent", "silent_low", "silent_high", "missed", "missed_silently", "calibration_error"),
)
TEXT = "kept text"


def row(what: str, care: Care, tallies: Iterable[Tally]) -> tuple[str | int, ...]:
    """The figures of some tallies together, in the order of COLUMNS."""
    of = list(tallies)
    outcomes = [outcome for tally in of for outcome in tally.outcomes]
    gold = sum(tally.gold for tally in of)
    wrong, chances = [not one.right for one in outcomes], [1 - one.fact.confidence for one in outcomes]
    return (
        *(what, str(care), len({one.memo for one in outcomes}), sum(tally.memos for tally in of), len(outcomes)),
        *_share(outcomes, lambda one: one.flagged),
        *_share(outcomes, lambda one: not one.right and not one.flagged),
        f"{sum(tally.missed for tally in of) / gold:.4f}",
        f"{sum(tally.missed_silently for tally in of) / gold:.4f}",
        f"{calibration_error(wrong, chances):.3f}",
    )


def _share(outcomes: Sequence[Outcome], counts: Callable[[Outcome], bool]) -> tuple[str, str, str]:
    """A share of the facts and the ends of its interval."""
    by_memo: dict[str, list[bool]] = {}
    for one in outcomes:
        by_memo.setdefault(one.memo, []).append(counts(one))
    parts, wholes = [sum(found) for found in by_memo.values()], [len(found) for found in by_memo.values()]
    low, high = interval(parts, wholes)
    return f"{sum(parts) / sum(wholes):.4f}", f"{low:.4f}", f"{high:.4f}"


def groups(by_condition: dict[str, Tally]) -> dict[str, list[Tally]]:
    """Noises of one strength together; every other condition by itself."""
    found: dict[str, list[Tally]] = {}
    for condition, tally in by_condition.items():
        strength = next((ending for ending in ("15", "5") if condition.endswith(ending)), None)
        found.setdefault(f"kept sound, {strength} dB" if strength else f"kept sound, {condition}", []).append(tally)
    return found


def main(given: Sequence[str] | None = None) -> None:
    """Print the table and add it to the results."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.silent", description=(__doc__ or "").split("\n")[0])
    parser.add_argument("--sound", type=Path, metavar="DIR", default=SOUND)
    parser.add_argument("--care", nargs="+", choices=[str(care) for care in Care], default=[str(Care.USUAL)])
    chosen = parser.parse_args(given)
    rows = []
    for care in map(Care, chosen.care):
        rows.append(row(TEXT, care, [tally_text("kept_", care)]))
        if (chosen.sound / "report.jsonl").exists():
            heard = groups(tally_sound(chosen.sound, "report", care))
            rows += [row(what, care, tallies) for what, tallies in heard.items()]
        else:
            print(f"There is no sound in {chosen.sound}; only text was judged. See python -m tests.bench.hearing.")
    print_rows(COLUMNS, rows)
    add_rows("silent", COLUMNS, rows)


if __name__ == "__main__":
    main()
