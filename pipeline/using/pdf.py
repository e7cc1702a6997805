"""A record as a PDF: real text that can be searched, page numbers, links from each fact to its words.

fpdf2 is pure Python and draws SVG as vectors; the letters are those of DejaVu Sans, which comes with matplotlib and
knows ½, ° and the accents of names. It loads when the first PDF is made.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime, time
from io import BytesIO

from pipeline.using.handover import FootRecord, Handover
from pipeline.using.hoof_map import COLOUR_NAMES, HEIGHT, WIDTH, Kind, Mark, hoof_svg
from pipeline.using.origin import long_date
from pipeline.using.pdf_paper import Paper, Piece
from pipeline.using.trends import trend
from pipeline.using.visits import Quote, Said
from pipeline.using.wording import number_words

_INK = "#222222"
_MAP_MM = 40.0
_SMALL = 8.5  # points
_TREND_MM = 150.0


def as_pdf(page: Handover) -> bytes:
    """The PDF's bytes; the same record of the same day gives the same bytes."""
    paper = Paper(
        title=f"{page.title}: hoof record{' for the vet' if page.for_vet else ''}, {long_date(page.choice.on)}",
        foot_line=f"A record, not a diagnosis. {page.origin}",
        made=datetime.combine(page.choice.on, time(), UTC),
    )
    _head(paper, page)
    if not page.visits:
        paper.text(f"No visit of this horse has been kept {'since that day' if page.choice.since else 'yet'}.")
        return paper.bytes()
    links = {quote.number: paper.new_link() for quote in page.quotes}
    if not page.for_vet:
        _last_visit(paper, page, links)
        _explained(paper, page)
    _maps(paper, page)
    _measures(paper, page)
    _scales(paper, page)
    _timeline(paper, page, links)
    _visits(paper, page)
    _edits(paper, page)
    _quotes(paper, page, links)
    return paper.bytes()


def _head(paper: Paper, page: Handover) -> None:
    left_out = ", names and quotes left out" if page.choice.redact else ""
    paper.faint(f"Hoof record for the {'vet' if page.for_vet else 'owner'}{left_out}")
    paper.title(page.title)
    for what, text in page.identity:
        paper.pair(what, text)
    paper.gap()
    paper.strong(page.disclaimer)
    paper.text(page.defer)
    since = f" Visits since {long_date(page.choice.since)} only." if page.choice.since else ""
    paper.faint(f"{page.origin}{since}")
    if page.cautions or page.vet_wanted:
        paper.notice("Cautions", [*page.vet_wanted, *page.cautions])
    if page.next_visit:
        paper.pair("Next visit", page.next_visit)
    if page.to_review:
        paper.text(f"(!) Facts not reviewed by a person yet: {page.to_review}; each is marked so.")


def _last_visit(paper: Paper, page: Handover, links: dict[int, int]) -> None:
    if page.last_day:
        paper.heading(f"The last visit, {long_date(page.last_day)}")
    for foot in page.last:
        paper.subheading(foot.name)
        for day in foot.days:
            for line in day.lines:
                paper.bullet(_said(line, links))


def _explained(paper: Paper, page: Handover) -> None:
    if not page.explained:
        return
    paper.heading("What the words mean, and what to mind")
    paper.faint("General explanations, not about your horse alone; your farrier and your vet know more.")
    for word in page.explained:
        paper.bullet([Piece(f"{word.word} ({word.feet}):", "strong"), Piece(word.plain), Piece(word.advice, "strong")])


def _maps(paper: Paper, page: Handover) -> None:
    if page.last_day:
        paper.heading(f"The feet on {long_date(page.last_day)}", room_mm=60)
    colours = "; ".join(f"{COLOUR_NAMES[kind]}: {kind.value}" for kind in Kind)
    paper.faint(f"Each foot seen from below, toe up. The numbers belong to the lines beside. {colours.capitalize()}.")
    _drawn(paper, [(foot, foot.marks) for foot in page.feet])
    testers = [(foot, foot.tester_marks) for foot in page.feet if foot.tester_marks]
    if page.for_vet and testers:
        paper.heading("Hoof testers, the last answer at each place", room_mm=60)
        _drawn(paper, testers)


def _drawn(paper: Paper, marked: Sequence[tuple[FootRecord, list[Mark]]]) -> None:
    blocks = []
    for record, marks in marked:
        if record.foot:
            lines = [f"{mark.number}  {mark.words}" for mark in marks]
            svg = hoof_svg(record.foot, marks, _INK)
            blocks.append((BytesIO(svg.encode("utf-8")), record.name, lines or ["Nothing to mark."]))
    paper.in_pairs(blocks, _MAP_MM, _MAP_MM * HEIGHT / WIDTH)


def _measures(paper: Paper, page: Handover) -> None:
    if page.measures:
        paper.heading("Measures and grades", room_mm=85)
    for measure in page.measures:
        paper.subheading(f"{measure.name}{f' ({measure.unit})' if measure.unit else ''}", room_mm=70)
        if measure.has_trend:
            paper.drawing(trend(measure), _TREND_MM)
        rows = [
            [day.isoformat(), *("" if number is None else number_words(number) for number in numbers)]
            for day, numbers in measure.rows
        ]
        paper.table([22.0, *(28.0 for _ in measure.columns)], ["Day", *measure.column_names], rows)


def _scales(paper: Paper, page: Handover) -> None:
    if page.scales and page.for_vet:
        paper.heading("Scales")
        for scale in page.scales:
            steps = "".join(f"{step}; " for step in scale.steps)
            paper.bullet([Piece(f"{scale.name}.", "strong"), Piece(steps), Piece(f"Source: {scale.source}.", "faint")])


def _timeline(paper: Paper, page: Handover, links: dict[int, int]) -> None:
    if page.through_time:
        paper.heading("Foot by foot through time" if page.for_vet else "Earlier visits, foot by foot")
    for foot in page.through_time:
        paper.subheading(foot.name)
        for day in foot.days:
            pieces = [Piece(day.date.isoformat(), "strong")]
            for number, line in enumerate(day.lines, start=1):
                pieces += _said(line, links, ";" if number < len(day.lines) else "")
            paper.paragraph(pieces, hang=23)


def _said(line: Said, links: dict[int, int], end: str = "") -> list[Piece]:
    pieces: list[tuple[str, str, int | None]] = [(line.words, "", None)]
    if line.before:
        pieces.append((f"(before: {line.before})", "faint", None))
    if line.doubt:
        pieces.append((f"(!) not reviewed yet: {line.doubt}", "warn", None))
    if line.quote:
        pieces.append((f"[{line.quote}]", "", links[line.quote]))
    words, style, link = pieces[-1]
    return [Piece(*piece) for piece in (*pieces[:-1], (words + end, style, link))]


def _visits(paper: Paper, page: Handover) -> None:
    paper.heading("Visits")
    for visit in page.visits:
        memo = f", memo {visit.memo}" if visit.memo else ""
        paper.subheading(long_date(visit.date))
        paper.faint(f"Visit {visit.number}{memo}")
        if visit.notes:
            paper.text("Notes:")
        for line in visit.notes.splitlines():
            paper.bullet([Piece(line)])
        for doubt in visit.doubts:
            paper.bullet([Piece("(!)", "warn"), Piece(doubt)])


def _edits(paper: Paper, page: Handover) -> None:
    if not page.for_vet:
        return
    paper.heading("Corrections")
    for edit in page.edits:
        who = f" by {edit.who}" if edit.who else ""
        why = f" ({edit.why})" if edit.why else ""
        when = f"{edit.at:%Y-%m-%d %H:%M} UTC{who}:"
        paper.bullet([Piece(when, "faint"), Piece(f"{edit.told}{why}")])
    if not page.edits:
        paper.text("Nothing of this record was corrected after it was first written.")


def _quotes(paper: Paper, page: Handover, links: dict[int, int]) -> None:
    if page.quotes:
        paper.heading("What was said")
    by_memo: dict[tuple[str, str], list[Quote]] = {}
    for quote in page.quotes:
        by_memo.setdefault((quote.date.isoformat(), quote.file_name), []).append(quote)
    for (day, file_name), quotes in by_memo.items():
        pieces = [Piece(f"{day}, {file_name}:", "faint")]
        for quote in quotes:
            at = f" {quote.at}" if quote.at else ""
            pieces.append(Piece(f"[{quote.number}] “{quote.words}”{at}", anchor=links[quote.number]))
        paper.paragraph(pieces, size=_SMALL)
        paper.gap(1)
