"""The paper that a record is written on: A4 with margins, page numbers and a few styles. Lengths are mm."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from io import BytesIO

from pipeline.using.pdf_pages import FAMILY, MARGIN, Pages
from pipeline.using.trends import HEIGHT, WIDTH, Drawing
from pipeline.using.wording import harmless

_LINE, _INDENT = 4.8, 5.0
_SIZE = 9.5
_STYLES = {
    "": ("", (34, 34, 34)),
    "strong": ("B", (34, 34, 34)),
    "faint": ("", (95, 90, 82)),
    "warn": ("B", (138, 59, 0)),
}


@dataclass(frozen=True)
class Piece:
    """Words of one style; ``link`` leads elsewhere in the record, ``anchor`` is a place that others lead to."""

    words: str
    style: str = ""
    link: int | None = None
    anchor: int | None = None


@dataclass
class _Run:
    """Words beside each other on one line."""

    piece: Piece
    words: str
    x: float
    width: float


class Paper:
    """Writes from the top down; a style is "", "strong", "faint" or "warn"."""

    def __init__(self, title: str, foot_line: str, made: datetime) -> None:
        self._pdf = Pages()
        self._widths: dict[tuple[str, str, float], float] = {}
        self._parted: dict[tuple[str, str, float, float], list[tuple[str, float]]] = {}
        self._pdf.foot_line = foot_line
        self._pdf.set_margins(MARGIN, 15, MARGIN)
        self._pdf.c_margin = 0
        self._pdf.set_auto_page_break(True, margin=17)
        self._pdf.set_title(harmless(title))
        self._pdf.set_creator("clinchbook")
        self._pdf.set_lang("en")
        self._pdf.set_creation_date(made)
        self._pdf.add_page()
        self._style("")

    def bytes(self) -> bytes:
        """The finished PDF."""
        return bytes(self._pdf.output())

    def title(self, text: str) -> None:
        """The one title."""
        self._pdf.set_font(FAMILY, "B", 20)
        self._pdf.set_text_color(34, 34, 34)
        self._block(text, 9)

    def heading(self, text: str, room_mm: float = 28) -> None:
        """A heading with a rule beneath, also in the outline, with ``room_mm`` of room beneath it on its page."""
        self._room(room_mm)
        self.gap(4)
        self._pdf.start_section(harmless(text))
        self._pdf.set_font(FAMILY, "B", 13)
        self._pdf.set_text_color(34, 34, 34)
        self._block(text, 7)
        self._pdf.set_draw_color(190, 184, 172)
        self._pdf.line(MARGIN, self._pdf.get_y(), self._pdf.w - MARGIN, self._pdf.get_y())
        self.gap(1.5)

    def subheading(self, text: str, room_mm: float = 16) -> None:
        """A smaller heading with ``room_mm`` of room beneath it on its page."""
        self._room(room_mm)
        self.gap(1.5)
        self._pdf.set_font(FAMILY, "B", 10.5)
        self._pdf.set_text_color(34, 34, 34)
        self._block(text, 5.5)

    def text(self, text: str) -> None:
        """A paragraph."""
        self.paragraph([Piece(text)])

    def strong(self, text: str) -> None:
        """A paragraph that stands out."""
        self._style("strong")
        self._block(text, _LINE)

    def faint(self, text: str, room_mm: float = 0) -> None:
        """A paragraph that stands back, with room beneath it."""
        self._room(room_mm)
        self.paragraph([Piece(text, "faint")])

    def pair(self, what: str, text: str) -> None:
        """A name and what it names."""
        self._style("faint")
        self._pdf.cell(28, _LINE, harmless(what))
        self._style("")
        self._block(text, _LINE)

    def notice(self, title: str, lines: Sequence[str]) -> None:
        """A block with a bar at its side, kept together where it fits on a page."""
        self._room(10 + 10 * len(lines))
        self.gap(2)
        top, first_page = self._pdf.get_y(), self._pdf.page_no()
        with self._between(MARGIN + 4, self._pdf.w - MARGIN):
            self._style("warn")
            self._block(title, 5.5)
            for line in lines:
                self.bullet([Piece(line)])
        if self._pdf.page_no() == first_page:
            self._pdf.set_fill_color(138, 59, 0)
            self._pdf.rect(MARGIN, top, 1.2, self._pdf.get_y() - top, style="F")
        self.gap(2)

    def bullet(self, pieces: Sequence[Piece]) -> None:
        """A line of a list."""
        self.paragraph([Piece("•", "faint"), *pieces], hang=_INDENT)

    def paragraph(self, pieces: Sequence[Piece], hang: float = 0, size: float = _SIZE) -> None:
        """Running text of several styles; the first piece stands out to the left by ``hang``.

        The library's own running text measures every letter of every line; a record of two hundred visits has some
        twenty thousand words, of which most are the same few, so words are measured once here.
        """
        line = size / _SIZE * _LINE
        for runs in self._lines(pieces, hang, size):
            self._room(line)
            top = self._pdf.get_y()
            for beside in self._of_one_style(runs, size):
                self._print(beside, top, line, size)
            self._pdf.set_xy(self._pdf.l_margin, top + line)

    def table(self, widths: Sequence[float], head: Sequence[str], rows: Sequence[Sequence[str]]) -> None:
        """A small table of short cells: the first column left, the others right; its head again on each page."""
        self._row(widths, head, "strong")
        for row in rows:
            if self._room(_LINE):
                self._row(widths, head, "strong")
            self._row(widths, row, "")
        self.gap(1.5)

    def drawing(self, drawing: Drawing, width: float) -> None:
        """A drawing on a line of its own."""
        height = width / WIDTH * HEIGHT
        self._room(height)
        self._pdf.draw(drawing, MARGIN, self._pdf.get_y(), width)
        self._pdf.set_y(self._pdf.get_y() + height + 1)

    def in_pairs(self, blocks: Sequence[tuple[BytesIO, str, Sequence[str]]], width: float, height: float) -> None:
        """Drawings of ``width`` by ``height``, two a row, each with its title and lines at its right."""
        half = (self._pdf.w - 2 * MARGIN) / 2
        for first in range(0, len(blocks), 2):
            row = blocks[first : first + 2]
            room = half - width - 5
            tallest = max(sum(self._height(line, room) for line in lines) for _, _, lines in row)
            self._room(max(height, 12 + tallest) + 3)
            top, page, bottom = self._pdf.get_y() + 1, self._pdf.page_no(), 0.0
            for place, (svg, title, lines) in enumerate(row):
                left = MARGIN + place * half
                self._pdf.image(svg, x=left, y=top, w=width, h=height)
                self._pdf.set_y(top + 2)
                with self._between(left + width + 3, left + half - 2):
                    self.subheading(title, room_mm=0)
                    for line in lines:
                        self.text(line)
                bottom = max(bottom, self._pdf.get_y(), top + height)
            if self._pdf.page_no() == page:
                self._pdf.set_y(bottom + 2)

    def new_link(self) -> int:
        """A place to lead to, set by the piece that has it as its anchor."""
        return int(self._pdf.add_link())

    def gap(self, height: float = 2) -> None:
        """Empty space."""
        self._pdf.ln(height)

    def _lines(self, pieces: Sequence[Piece], hang: float, size: float) -> Iterator[list[_Run]]:
        left, right = self._pdf.l_margin, self._pdf.w - self._pdf.r_margin
        runs: list[_Run] = []
        x = left
        for number, piece in enumerate(pieces):
            if number == 1:
                x = max(x, left + hang)
            space = self._width(" ", piece.style, size)
            for word, width in self._words(piece, size, right - left - hang):
                if runs and x + width > right:
                    yield runs
                    runs, x = [], left + hang
                if runs and runs[-1].piece is piece:
                    runs[-1].words += f" {word}"
                    runs[-1].width += space + width
                else:
                    runs.append(_Run(piece, word, x, width))
                x += width + space
        if runs:
            yield runs

    def _words(self, piece: Piece, size: float, room: float) -> list[tuple[str, float]]:
        """The words of a piece with their widths; one that is wider than ``room`` is cut."""
        key = (piece.words, piece.style, size, room)
        if key not in self._parted:
            found: list[tuple[str, float]] = []
            for word in _one_line(piece.words).split():
                while (width := self._width(word, piece.style, size)) > room:
                    short = max(1, int(len(word) * room / width) - 1)
                    found.append((word[:short], self._width(word[:short], piece.style, size)))
                    word = word[short:]
                found.append((word, width))
            self._parted[key] = found
        return self._parted[key]

    def _width(self, word: str, style: str, size: float) -> float:
        weight, _ = _STYLES[style]
        key = (word, weight, size)
        if key not in self._widths:
            self._widths[key] = self._pdf.width_of(word, weight, size)
        return self._widths[key]

    def _of_one_style(self, runs: Sequence[_Run], size: float) -> Iterator[list[_Run]]:
        """Runs that one stroke of the pen can write: of one style, with no more than a space between them."""
        beside: list[_Run] = []
        for run in runs:
            if beside:
                last = beside[-1]
                gap = run.x - last.x - last.width - self._width(" ", last.piece.style, size)
                if run.piece.style != last.piece.style or abs(gap) > 0.01:
                    yield beside
                    beside = []
            beside.append(run)
        yield beside

    def _print(self, runs: Sequence[_Run], top: float, line: float, size: float) -> None:
        words = " ".join([run.words for run in runs])
        weight, colour = _STYLES[runs[0].piece.style]
        self._pdf.put(runs[0].x, top + 0.72 * line, words, weight, size, colour)
        for run in runs:
            if run.piece.link is not None:
                self._pdf.lead(run.x, top, run.width, line, run.piece.link)
            if run.piece.anchor is not None:
                self._pdf.set_link(run.piece.anchor, y=top, page=self._pdf.page_no())

    def _height(self, text: str, width: float) -> float:
        with self._between(MARGIN, MARGIN + width):
            return _LINE * len(list(self._lines([Piece(text)], 0, _SIZE)))

    def _row(self, widths: Sequence[float], cells: Sequence[str], style: str) -> None:
        weight, colour = _STYLES[style]
        x, top = self._pdf.l_margin, self._pdf.get_y()
        for place, (width, cell) in enumerate(zip(widths, map(_one_line, cells), strict=True)):
            left = x + width - self._width(cell, style, _SIZE) if place else x
            self._pdf.put(left, top + 0.72 * _LINE, cell, weight, _SIZE, colour)
            x += width
        self._pdf.set_y(top + _LINE)

    def _block(self, text: str, line: float) -> None:
        self._pdf.multi_cell(0, line, _one_line(text), align="L", new_x="LMARGIN", new_y="NEXT")

    def _style(self, name: str) -> None:
        """The style of what the library sets."""
        weight, colour = _STYLES[name]
        self._pdf.set_font(FAMILY, weight, _SIZE)
        self._pdf.set_text_color(*colour)

    def _room(self, height: float) -> bool:
        """Turn the page when less than ``height`` is left on it; whether it was turned."""
        if not self._pdf.will_page_break(height):
            return False
        self._pdf.add_page()
        return True

    @contextmanager
    def _between(self, left: float, right: float) -> Iterator[None]:
        """Write between two distances from the paper's left edge."""
        margins = self._pdf.l_margin, self._pdf.r_margin
        self._pdf.set_left_margin(left)
        self._pdf.set_right_margin(self._pdf.w - right)
        self._pdf.set_x(left)
        yield
        self._pdf.set_left_margin(margins[0])
        self._pdf.set_right_margin(margins[1])
        self._pdf.set_x(margins[0])


def _one_line(text: str) -> str:
    return " ".join(harmless(text).split(" ")).replace("\n", " ").replace("\t", " ")
