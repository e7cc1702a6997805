"""What was measured last, as the README tells it: figures out of the benches' histories, rounded as they are written.

Every method raises NotMeasuredError, which names the bench to run, when its history lacks what is asked for.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from decimal import ROUND_HALF_UP, Decimal
from functools import cached_property
from pathlib import Path
from statistics import mean

from tests.bench.history import RESULTS, Row, last_rows, rows_of

NOISES = ("wind", "hammer", "diesel", "voices")
PLAIN, BIAS, WEIGHED, OURS = "plain", "unverified", "unadapted", "ours"  # the hearing bench's configurations


class NotMeasuredError(LookupError):
    """A history has no such row."""


class Measured:
    """The last rows of every history in a folder."""

    def __init__(self, results: Path = RESULTS) -> None:
        self._results = results

    def _rows(self, name: str) -> list[Row]:
        return rows_of(self._results / f"{name}.csv")

    def _one(self, bench: str, name: str, wanted: Callable[[Row], bool]) -> Row:
        found = [row for row in self._rows(name) if wanted(row)]
        if not found:
            raise NotMeasuredError(f"{name}.csv lacks a row that the README tells: run python -m tests.bench {bench}.")
        return found[-1]

    def reading(self, corpus: str) -> Row:
        """The row of a corpus: open, kept, generator, or the demo from its sound."""
        bench = "profile" if corpus.startswith("demo") else "reading"
        return self._one(bench, "reading", lambda row: row["corpus"] == corpus)

    def profile(self, what: str) -> Row:
        """The row of a step of the demo."""
        return self._one("profile", "profile", lambda row: row["what"] == what)

    def largest_share(self, *left_out: str) -> Row:
        """The step of the demo that takes most of it, those left out."""
        rows = last_rows(self._rows("profile"), "what").values()
        steps = [row for row in rows if row["target"] and row["what"] not in left_out]
        if not steps:
            raise NotMeasuredError("profile.csv is empty: run python -m tests.bench profile.")
        return max(steps, key=lambda row: float(row["share"]))

    def startup(self, what: str) -> Row:
        """The row of a command's start."""
        return self._one("startup", "startup", lambda row: row["what"] == what)

    def chores(self, what: str) -> Row:
        """The row of a chore in a large store."""
        return self._one("chores", "chores", lambda row: row["what"] == what)

    def export(self, form: str) -> float:
        """Processor seconds of a form of export, the dearer of its two readers'."""
        rows = last_rows(self._rows("export"), "form", "reader")
        return max(float(row["processor_s"]) for (name, _), row in rows.items() if name == form)

    def evening(self) -> Row:
        """The scripted review of the demo day."""
        return self._one("evening", "evening", lambda row: True)

    def wheel(self) -> Row:
        """The weight of the wheel."""
        return self._one("wheel", "wheel", lambda row: True)

    def speed(self) -> Row | None:
        """The whole of ingest beside plain faster-whisper; None before that was measured."""
        return next(reversed(self._rows("hearing_speed")), None)

    def archive(self) -> Row | None:
        """A long archive taken in on a graphics card; None before that was measured."""
        return next((row for row in reversed(self._rows("hearing_archive")) if row["device"] == "cuda"), None)

    def long(self) -> Row | None:
        """The longest memo heard as one; None before that was measured."""
        return max(self._rows("hearing_long"), key=lambda row: float(row["minutes"]), default=None)

    def silent(self, what: str) -> Row:
        """What is flagged and wrong unseen, at the usual care."""
        return self._one("silent", "silent", lambda row: row["what"] == what and row["care"] == "usual")

    @cached_property
    def _large(self) -> dict[str, float]:
        """The store bench's figures of its largest store."""
        rows = self._rows("store")
        largest = max((int(row["visits"]) for row in rows), default=0)
        return {row["what"]: float(row["figure"]) for row in rows if int(row["visits"]) == largest}

    def store(self, what: str) -> float:
        """A figure of the largest store."""
        if what not in self._large:
            raise NotMeasuredError(f"store.csv lacks {what!r}: run python -m tests.bench store.")
        return self._large[what]

    def stores(self, ending: str, *left_out: str) -> list[float]:
        """All figures of the largest store whose name ends so, the smallest first."""
        return sorted(
            figure
            for what, figure in self._large.items()
            if what.endswith(ending) and not any(what.startswith(name) for name in left_out)
        )

    def clock_apart(self, *commands: str) -> float:
        """By how many ms the clock and the processor differ at most over these commands, or over all but stock."""
        names = commands or tuple(
            what.removesuffix(", beyond Python")
            for what in self._large
            if what.endswith(", beyond Python") and not what.startswith("stock")
        )
        return max(
            abs(self.store(f"{name}, beyond Python, by the clock") - self.store(f"{name}, beyond Python"))
            for name in names
        )

    def heard(self, condition: str, configuration: str, column: str) -> float:
        """A figure of the kept memos' takes; a condition that ends in dB is the mean over the noises."""
        if condition.endswith(" dB"):
            each = [f"{noise}{condition.removesuffix(' dB')}" for noise in NOISES]
            return mean(self.heard(one, configuration, column) for one in each)
        wanted = ("report", condition, "all", configuration)
        row = self._one(
            "hearing",
            "hearing",
            lambda row: (row["set"], row["condition"], row["voice"], row["configuration"]) == wanted,
        )
        return float(row[column])

    def heard_row(self, condition: str) -> list[str]:
        """The README's columns of a condition: facts of four configurations, then words, trade words, names of two."""
        facts = [rounded(self.heard(condition, one, "f1"), 3) for one in (PLAIN, BIAS, WEIGHED, OURS)]
        words = [
            percent(self.heard(condition, one, column), 1) for column in ("wer", "trade_wer") for one in (PLAIN, OURS)
        ]
        return [*facts, *words, *(rounded(self.heard(condition, one, "names_recall"), 2) for one in (PLAIN, OURS))]

    def real_wer(self, configuration: str) -> float:
        """Word error rate on the readings from a novel."""
        row = self._one(
            "hearing", "hearing", lambda row: (row["condition"], row["configuration"]) == ("librivox", configuration)
        )
        return float(row["wer"])

    def facts_from_noise(self) -> int:
        """How many facts this project's hearing made of noise alone, over all noises."""
        rows = last_rows(self._rows("hearing_noise"), "noise", "configuration")
        return sum(int(row["facts"]) for (_, configuration), row in rows.items() if configuration == OURS)

    def work(self, configuration: str) -> str:
        """Core seconds for a second of sound, where the processor did the work."""
        row = self._one(
            "hearing", "hearing", lambda row: row["configuration"] == configuration and bool(row["core_s_per_s"])
        )
        return row["core_s_per_s"]


def rounded(figure: float | str, places: int = 0) -> str:
    """A figure with so many places, halves going up, thousands parted."""
    return f"{Decimal(str(round(float(figure), 9))).quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP):,}"


def percent(share: float | str, places: int = 0) -> str:
    """A share in percent."""
    return f"{rounded(100 * float(share), places)} %"


def ends(low: str, high: str, places: int = 0) -> str:
    """An interval of shares in percent."""
    return f"{rounded(100 * float(low), places)} to {rounded(100 * float(high), places)}"


def listed(figures: Iterable[float], places: int) -> str:
    """Figures in a row of words."""
    told = [rounded(figure, places) for figure in figures]
    return f"{', '.join(told[:-1])} and {told[-1]}" if len(told) > 1 else "".join(told)


def against(figure: float | str, target: float, places: int = 0) -> str:
    """A figure, in bold when it is above its target."""
    told = rounded(figure, places)
    return f"**{told}**" if float(figure) > target else told
