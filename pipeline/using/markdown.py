"""A horse's record as a page for people: cautions first, then each foot through time, then the visits."""

from __future__ import annotations

import re
from collections.abc import Sequence

from pipeline.judging import cautions
from pipeline.keeping import KeptHorse, KeptVisit
from pipeline.record import FEET, Fact, Flag, FlagKind
from pipeline.using.wording import FOOT_NAMES, clock, fact_words, harmless

DISCLAIMER = "This is a record of what was said, found and done: a record, not a diagnosis."
_MARKDOWN = re.compile(r"([\\`*_{}\[\]<>#|~&])")


def as_markdown(horse: KeptHorse, visits: Sequence[KeptVisit]) -> str:
    """The page; ``visits`` are the horse's, oldest first. Words of a memo can never become Markdown or HTML."""
    lines = [f"# {plain_markdown(horse.name)}", ""]
    known = (("Owner", horse.horse.owner), ("Place", horse.horse.place))
    lines += [f"{what}: {plain_markdown(text)}  " for what, text in known if text]
    lines += ["", DISCLAIMER, ""]
    warned = cautions(fact for visit in visits for fact in visit.visit.facts)
    if warned:
        lines += ["## Cautions", "", *(f"- {plain_markdown(caution)}" for caution in warned), ""]
    for foot in (*FEET, None):
        lines += _foot_lines(foot, visits)
    lines += ["## Visits", ""]
    for visit in visits:
        lines += _visit_lines(visit)
    if not visits:
        lines += ["No visit of this horse has been kept yet.", ""]
    return "\n".join(lines)


def plain_markdown(text: str) -> str:
    """Text in which nothing is Markdown or HTML, on one line."""
    return _MARKDOWN.sub(r"\\\1", " ".join(harmless(text).split()))


def own_flags(kept: KeptVisit) -> list[Flag]:
    """The doubts of the whole memo that may go to this horse's owner: of a shared memo only those without words."""
    flags = kept.memo.record.flags
    if len(kept.memo.record.visits) == 1:
        return flags
    return [flag.model_copy(update={"quote": ""}) for flag in flags if flag.kind in (FlagKind.DATE, FlagKind.SOUND)]


def _foot_lines(foot: str | None, visits: Sequence[KeptVisit]) -> list[str]:
    lines: list[str] = []
    for visit in visits:
        told = [_told(fact) for fact in visit.visit.facts if fact.foot == foot]
        if told:
            lines.append(f"- **{visit.visit.date.isoformat()}**: {'; '.join(told)}")
    return [f"## {FOOT_NAMES[foot].capitalize()}", "", *lines, ""] if lines else []


def _told(fact: Fact) -> str:
    doubt = f" (! to be looked at: {plain_markdown('; '.join(fact.reasons) or 'not sure')})" if fact.flagged else ""
    return f"{plain_markdown(fact_words(fact))}{doubt}"


def _visit_lines(kept: KeptVisit) -> list[str]:
    day = kept.visit.date
    seconds = kept.memo.record.memo.seconds
    length = f", {clock(seconds)} long" if seconds is not None else ""
    lines = [
        f"### {day.isoformat()}, {day:%A}",
        "",
        f"Memo {plain_markdown(kept.memo.file_name)}{length}, visit {kept.id}.",
        "",
    ]
    if kept.visit.notes.strip():
        lines += [f"Notes: {plain_markdown(kept.visit.notes)}", ""]
    doubts = [f"- {plain_markdown(flag.reason)}" for flag in (*kept.visit.flags, *own_flags(kept))]
    if doubts:
        lines += ["To be looked at:", "", *doubts, ""]
    return lines
