"""One visit as a person reads it, in 80 columns, and as a program does."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from io import StringIO

from rich.box import SIMPLE_HEAD
from rich.console import Console, Group, RenderableType
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from pipeline.judging import cautions
from pipeline.keeping import KeptVisit
from pipeline.record import FEET, Fact, Flag, FlagKind, HorseMatch, Status
from pipeline.sentences import capital, in_a_row
from pipeline.using.wording import FOOT_NAMES, FOUND_SLOTS, SIGN, clock, fact_words, harmless

WIDTH = 80
_PLAN_SLOTS = frozenset({"next_visit_weeks", "vet"})


def visit_text(kept: KeptVisit) -> str:
    """The visit as plain text, at most 80 columns wide, ending in a line feed."""
    out = StringIO()
    Console(file=out, width=WIDTH, color_system=None, force_terminal=False).print(visit_view(kept))
    return "".join(f"{line.rstrip()}\n" for line in out.getvalue().splitlines())


def visit_view(kept: KeptVisit) -> RenderableType:
    """The visit to be printed by a rich console: per foot what was found and done, plan, doubts, cautions, notes."""
    facts = kept.visit.facts
    planned = [fact for fact in facts if _is_plan(fact)]
    parts: list[RenderableType] = [_heading(kept), _feet([fact for fact in facts if not _is_plan(fact)])]
    parts += _section("Plan", [_line(fact) for fact in planned])
    parts += _section(f"Look at these {SIGN}", _doubts(kept))
    parts += _section("Cautions", [Text(caution) for caution in cautions(facts)])
    parts += _section("Notes", [_plain(kept.visit.notes)] if kept.visit.notes.strip() else [])
    parts += _section("Memo", [_plain(line) for line in _memo_lines(kept)])
    return Group(*parts)


def visit_json(kept: KeptVisit) -> dict[str, object]:
    """The visit as JSON values: the contract's visit with its numbers, horse, memo and cautions."""
    horse = kept.horse.horse.model_dump(mode="json") if kept.horse else None
    return {
        "id": kept.id,
        **kept.visit.model_dump(mode="json"),
        "fact_ids": list(kept.fact_ids),
        "roster": horse,
        "cautions": cautions(kept.visit.facts),
        "memo": kept.memo.record.memo.model_dump(mode="json"),
        "memo_id": kept.memo.id,
        "memo_flags": [flag.model_dump(mode="json") for flag in kept.memo.record.flags],
        "file_name": kept.memo.file_name,
        "original": str(kept.memo.original),
        "transcript": kept.memo.record.transcript,
    }


def horse_name(kept: KeptVisit) -> str:
    """The horse's name, harmless to print; says so when the visit belongs to nobody yet."""
    heard = kept.visit.horse
    if kept.horse:
        return harmless(kept.horse.name)
    return f"Unknown horse (heard: {harmless(heard)})" if heard else "Unknown horse (no name heard)"


def _is_plan(fact: Fact) -> bool:
    return fact.status is Status.PLANNED or fact.slot in _PLAN_SLOTS


def _heading(kept: KeptVisit) -> RenderableType:
    day = kept.visit.date
    title = Text(horse_name(kept), style="bold")
    title.append(f"  {day:%A} {day.day} {day:%B %Y}", style="not bold")
    title.append(f"  visit {kept.id}", style="dim")
    lines: list[RenderableType] = [title]
    if kept.horse:
        known = [part for part in (kept.horse.horse.owner, kept.horse.horse.place) if part]
        if known:
            lines.append(_plain(", ".join(known)))
    if kept.visit.horse_match is HorseMatch.NEW:
        lines.append(Text("A new horse, first named in this memo."))
    return Group(*lines)


def _feet(facts: Sequence[Fact]) -> RenderableType:
    if not facts:
        return Text("\nNothing of this visit was understood as a fact.")
    table = Table(box=SIMPLE_HEAD, width=WIDTH, pad_edge=False)
    table.add_column("foot", width=11)
    table.add_column("found", ratio=1)
    table.add_column("done and measured", ratio=1)
    for foot in (*FEET, None):
        here = [fact for fact in facts if fact.foot == foot]
        if here:
            found = [fact for fact in here if fact.slot in FOUND_SLOTS]
            done = [fact for fact in here if fact.slot not in FOUND_SLOTS]
            table.add_row(FOOT_NAMES[foot], _lines(found), _lines(done))
    return table


def _lines(facts: Iterable[Fact]) -> Text:
    return Text("\n").join(_line(fact, with_foot=False) for fact in facts)


def _line(fact: Fact, with_foot: bool = True) -> Text:
    foot = f"{FOOT_NAMES[fact.foot]}: " if with_foot and fact.foot else ""
    words = f"{foot}{fact_words(fact)}"
    return Text(f"{SIGN} {words}", style="bold yellow") if fact.flagged else Text(words)


def _doubts(kept: KeptVisit) -> list[Text]:
    doubts = []
    for fact in kept.visit.facts:
        if fact.flagged:
            reasons = in_a_row(fact.reasons) or "not sure"
            what = f"{FOOT_NAMES[fact.foot]}: {fact_words(fact)}: {reasons}"
            doubts.append(_plain(what + _heard(fact.quote, fact.start)))
    told = {reason for fact in kept.visit.facts if fact.flagged for reason in fact.reasons}
    flags: list[Flag] = [
        flag
        for flag in (*kept.visit.flags, *kept.memo.record.flags)
        if flag.kind is not FlagKind.CONTRADICTION or flag.reason not in told  # told with each of the facts
    ]
    return doubts + [_plain(capital(flag.reason) + _heard(flag.quote, flag.start)) for flag in flags]


def _heard(quote: str, start_s: float | None) -> str:
    at = f" at {clock(start_s)}" if start_s is not None else ""
    return f" (heard{at}: “{quote}”)" if quote else at


def _memo_lines(kept: KeptVisit) -> list[str]:
    memo = kept.memo.record.memo
    length = f", {clock(memo.seconds)} long" if memo.seconds is not None else ""
    recorded = f", recorded {memo.recorded_at:%Y-%m-%d %H:%M}" if memo.recorded_at else ""
    source = f" (by {memo.recorded_from})" if memo.recorded_at and memo.recorded_from else ""
    original = kept.memo.original
    short = f"{original.parent.name}/{original.stem[:12]}…{original.suffix}"
    return [f"{kept.memo.file_name}{length}{recorded}{source}", f"kept in the store's originals as {short}"]


def _section(title: str, lines: Sequence[Text]) -> list[RenderableType]:
    if not lines:
        return []
    return [Text(f"\n{title}", style="bold"), *(Padding(line, (0, 0, 0, 2)) for line in lines)]


def _plain(text: str) -> Text:
    return Text(harmless(text))
