"""A record as Markdown for people. Words of a memo can never become Markdown or HTML."""

from __future__ import annotations

import re
from collections.abc import Iterator

from pipeline.using.handover import FootRecord, Handover
from pipeline.using.origin import long_date
from pipeline.using.visits import Said, VisitTold
from pipeline.using.wording import harmless, number_words

_MARKDOWN = re.compile(r"([\\`*_{}\[\]<>#|~&])")


def as_markdown(page: Handover) -> str:
    """The record, ending in a line feed."""
    lines = [*_head(page)]
    if not page.visits:
        lines += [f"No visit of this horse has been kept {'since that day' if page.choice.since else 'yet'}.", ""]
    lines += _explained(page)
    for foot in page.feet:
        lines += _foot(foot)
    lines += [*_measures(page), *_scales(page)]
    lines += ["## Visits", ""] if page.visits else []
    for visit in page.visits:
        lines += _visit(visit)
    lines += [*_edits(page), *_quotes(page)]
    return "\n".join(lines).rstrip() + "\n"


def plain_markdown(text: str) -> str:
    """Text in which nothing is Markdown or HTML, on one line."""
    return _MARKDOWN.sub(r"\\\1", " ".join(harmless(text).split()))


def _head(page: Handover) -> Iterator[str]:
    yield from (f"# {plain_markdown(page.title)}", "")
    for what, text in page.identity:
        yield f"{plain_markdown(what)}: {plain_markdown(text)}  "
    since = f" Visits since {long_date(page.choice.since)} only." if page.choice.since else ""
    yield from ("", f"{page.disclaimer} {page.defer}", "", f"{page.origin}{since}", "")
    if page.cautions or page.vet_wanted:
        yield from ("## Cautions", "")
        yield from (f"- {plain_markdown(caution)}" for caution in (*page.vet_wanted, *page.cautions))
        yield ""
    if page.next_visit:
        yield from (f"**Next visit:** {page.next_visit}.", "")
    if page.to_review:
        yield from (f"Facts not reviewed by a person yet, marked (!): {page.to_review}.", "")


def _explained(page: Handover) -> Iterator[str]:
    if page.explained:
        yield from ("## What the words mean, and what to mind", "")
        for word in page.explained:
            advice = f" **{word.advice}**" if word.advice else ""
            yield f"- **{plain_markdown(word.word)}** ({word.feet}): {word.plain}{advice}"
        yield ""


def _foot(foot: FootRecord) -> Iterator[str]:
    if foot.days:
        yield from (f"## {foot.name}", "")
        for day in foot.days:
            yield f"- **{day.date.isoformat()}**: {'; '.join(_told(line) for line in day.lines)}"
        yield ""


def _told(line: Said) -> str:
    parts = [plain_markdown(line.words)]
    if line.before:
        parts.append(f"(before: {plain_markdown(line.before)})")
    if line.doubt:
        parts.append(f"(! not reviewed yet: {plain_markdown(line.doubt)})")
    if line.quote:
        parts.append(f"\\[{line.quote}\\]")
    return " ".join(parts)


def _measures(page: Handover) -> Iterator[str]:
    for measure in page.measures:
        yield from (f"## {measure.name}{f' ({measure.unit})' if measure.unit else ''}", "")
        yield f"| Day | {' | '.join(measure.column_names)} |"
        yield f"| --- |{' ---: |' * len(measure.columns)}"
        for day, numbers in measure.rows:
            cells = ["" if number is None else number_words(number) for number in numbers]
            yield f"| {day.isoformat()} | {' | '.join(cells)} |"
        yield ""


def _scales(page: Handover) -> Iterator[str]:
    if page.for_vet and page.scales:
        yield from ("## Scales", "")
        for scale in page.scales:
            steps = "".join(f" {step};" for step in scale.steps)
            yield f"- **{scale.name}.**{steps} Source: {scale.source}."
        yield ""


def _visit(visit: VisitTold) -> Iterator[str]:
    memo = f"Memo {plain_markdown(visit.memo)}, visit {visit.number}." if visit.memo else f"Visit {visit.number}."
    yield from (f"### {visit.date.isoformat()}, {visit.date:%A}", "", memo, "")
    if visit.notes:
        yield from ("Notes:", "", *(f"- {plain_markdown(line)}" for line in visit.notes.splitlines()), "")
    if visit.doubts:
        yield from ("To be looked at:", "", *(f"- {plain_markdown(doubt)}" for doubt in visit.doubts), "")


def _edits(page: Handover) -> Iterator[str]:
    if not page.for_vet:
        return
    yield from ("## Corrections", "")
    for edit in page.edits:
        who = f" by {plain_markdown(edit.who)}" if edit.who else ""
        why = f" ({plain_markdown(edit.why)})" if edit.why else ""
        yield (f"- {edit.at:%Y-%m-%d %H:%M} UTC{who}: {plain_markdown(edit.told)}{why}")
    if not page.edits:
        yield "Nothing of this record was corrected after it was first written."
    yield ""


def _quotes(page: Handover) -> Iterator[str]:
    if page.quotes:
        yield from ("## What was said", "")
        for quote in page.quotes:
            at = f" at {quote.at}" if quote.at else ""
            memo = plain_markdown(quote.file_name)
            yield f"{quote.number}. “{plain_markdown(quote.words)}” {quote.date.isoformat()}, {memo}{at}"
        yield ""
