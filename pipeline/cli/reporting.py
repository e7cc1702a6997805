"""What became of each memo, said as it happens: results on stdout, problems on stderr, counts at the end."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path

from pipeline.cli.endings import exit_code_of, say
from pipeline.cli.output import counted, error_console, flag_words, print_json, print_record, visit_title
from pipeline.errors import ClinchbookError
from pipeline.ingest import Outcome, failed_record
from pipeline.record import FlagKind, HorseMatch, Memo, MemoRecord, Visit
from pipeline.using.wording import harmless


@dataclass
class Report:
    """What a run over many memos came to. A dry run shows what was read instead of what was kept."""

    as_json: bool = False
    dry_run: bool = False
    taken: int = 0
    before: int = 0
    looks: int = 0
    nameless: int = 0  # visits of which it is not clear whose they were
    problems: list[ClinchbookError] = field(default_factory=list)

    def tell_all(self, outcomes: Iterable[Outcome]) -> int:
        """Say what became of every file, then the counts on stderr; returns the exit code of the run."""
        for outcome in outcomes:
            self.tell(outcome)
        say(self.counts())
        if self.looks and not self.dry_run:
            them = "it" if self.looks == 1 else "them"
            say(f"{counted(self.looks, 'doubt')} to look at: clinchbook review puts {them} before you.")
        return exit_code_of(self.problems)

    def tell(self, outcome: Outcome) -> None:
        """Say what became of one file."""
        if outcome.problem:
            self.problems.append(outcome.problem)
            sentence = str(outcome.problem)
            say(sentence if outcome.path.name in sentence else f"{outcome.path}: {sentence}")
            if self.as_json:
                failed = failed_record(outcome.problem, FlagKind.SOUND, Memo(path=str(outcome.path)))
                print_json(failed.model_dump(mode="json"))
        elif outcome.already_kept:
            self.before += 1
            say(f"{outcome.path}: kept before already, nothing added.")
        elif outcome.record:
            self.taken += 1
            self.looks += _looks(outcome.record)
            self.nameless += sum(visit.horse_match is HorseMatch.UNCLEAR for visit in outcome.record.visits)
            self._tell_record(outcome.record, outcome.visit_ids)

    def counts(self) -> str:
        """One sentence on how many memos were taken in."""
        parts = [f"{self.taken} {'read, none kept' if self.dry_run else 'kept'}"]
        parts += [f"{self.before} kept before already"] if self.before else []
        parts += [f"{len(self.problems)} could not be taken in"] if self.problems else []
        return f"Memos: {', '.join(parts)}."

    def _tell_record(self, record: MemoRecord, visit_ids: list[int]) -> None:
        if self.as_json:
            print_json(record.model_dump(mode="json") | ({} if self.dry_run else {"visit_ids": visit_ids}))
        elif self.dry_run:
            print_record(record)
        else:
            _print_kept(record, visit_ids)
        sys.stdout.flush()


def kept_line(number: int, visit: Visit) -> str:
    """One line on a kept visit: its number, horse, day and how many facts want a look."""
    looks = sum(fact.flagged for fact in visit.facts)
    wanting = f", {looks} to look at" if looks else ""
    return f"visit {number}: {visit_title(visit)}: {counted(len(visit.facts), 'fact')}{wanting}"


@contextmanager
def progress(total: int) -> Iterator[Callable[[Path], None]]:
    """A progress bar on stderr, shown on a terminal only; call the result with each file as it starts."""
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeElapsedColumn

    console = error_console()
    columns = TextColumn("{task.description}", markup=False), BarColumn(), MofNCompleteColumn(), TimeElapsedColumn()
    # A bar on stderr must not take over a stdout that goes into a file or a pipe.
    bar = Progress(
        *columns, console=console, disable=not console.is_terminal, transient=True, redirect_stdout=sys.stdout.isatty()
    )
    with bar:
        task = bar.add_task("", total=total)
        started = 0

        def starting(path: Path) -> None:
            nonlocal started
            bar.update(task, description=path.name, completed=started)
            started += 1

        yield starting


def _looks(record: MemoRecord) -> int:
    """How many facts and flags of a memo want a look."""
    flagged = sum(fact.flagged for visit in record.visits for fact in visit.facts)
    return flagged + len(record.flags) + sum(len(visit.flags) for visit in record.visits)


def _print_kept(record: MemoRecord, visit_ids: list[int]) -> None:
    lines = [kept_line(number, visit) for visit, number in zip(record.visits, visit_ids, strict=True)]
    flags = [*record.flags, *(flag for visit in record.visits for flag in visit.flags)]
    lines += [f"  {flag_words(flag)}" for flag in flags]
    lines += [f"  Caution: {caution}" for caution in record.cautions]
    sys.stdout.writelines(f"{harmless(line)}\n" for line in lines)
