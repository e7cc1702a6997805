"""The library's pages with a foot line, and with quicker ways for the three things that a long record has thousands of.

Measured on a record of two hundred visits: the library spent two thirds of its time on finding out anew, for every
string, what a letter is in its font, and on looking through twenty fields of every link for the four that it has.
"""

from __future__ import annotations

from collections.abc import Callable
from importlib.util import find_spec
from pathlib import Path
from typing import Any

from pipeline.keeping.database import without
from pipeline.using.trends import WIDTH, WORD_SIZE, Drawing, Line

with without("numpy"):
    from fpdf import FPDF
    from fpdf.annotations import AnnotationDict

FAMILY = "DejaVu"
MARGIN = 17.0  # mm
Colour = tuple[int, int, int]
INK, FAINT = (34, 34, 34), (225, 223, 218)
_WEIGHTS = {"": "DejaVuSans.ttf", "B": "DejaVuSans-Bold.ttf"}


class Pages(FPDF):
    """Pages with a foot line and their numbers, in DejaVu Sans."""

    foot_line = ""

    def __init__(self) -> None:
        super().__init__(format="A4", unit="mm")
        self._inks: dict[Colour, str] = {}
        self._sizes: dict[tuple[int, str, float], str] = {}
        for weight, name in _WEIGHTS.items():
            self.add_font(FAMILY, weight, _fonts() / name)
        self._faces = {weight: self.fonts[f"{FAMILY.lower()}{weight}"] for weight in _WEIGHTS}
        self._letters = {weight: _Letters(face.encode_text) for weight, face in self._faces.items()}

    def footer(self) -> None:
        """Called by the library at the end of each page."""
        self.set_y(-12)
        self.set_font(FAMILY, size=7.5)
        self.set_text_color(95, 90, 82)
        width = self.w - 2 * MARGIN  # the page may turn inside a narrower block
        self.set_x(MARGIN)
        self.cell(width, 5, self.foot_line, align="L")
        self.set_x(MARGIN)
        self.cell(width, 5, f"page {self.page_no()} of {{nb}}", align="R")

    def put(self, x: float, y: float, words: str, weight: str, size: float, colour: Colour) -> None:
        """Words with their first letter's foot at ``x``, ``y`` (mm), at ``size`` points, whatever font is set."""
        text = "".join(map(self._letters[weight].__getitem__, words))
        ink = self._inks.get(colour) or self._inks.setdefault(colour, _ink(colour))
        font = self._sizes.get((self.page, weight, size)) or self._sized(weight, size)
        self._out(f"q {ink} BT {font} {x * self.k:.2f} {(self.h - y) * self.k:.2f} Td ({text}) Tj ET Q")

    def width_of(self, words: str, weight: str, size: float) -> float:
        """How wide words are at ``size`` points, in mm."""
        return float(self._faces[weight].get_text_width(words, size, None)[1] / self.k)

    def lead(self, x: float, y: float, width: float, height: float, link: int) -> None:
        """Let a part of the page lead to another place of the record."""
        place = _Link(
            "Link", x * self.k, self.h_pt - y * self.k, width * self.k, height * self.k, dest=self.links[link]
        )
        self.pages[self.page].add_annotation(place)

    def draw(self, drawing: Drawing, x: float, y: float, width: float) -> None:
        """A drawing with its upper left corner at ``x``, ``y``."""
        mm = width / WIDTH
        for line in drawing.lines:
            self._pen(line, mm)
            self.polyline([(x + mm * across, y + mm * down) for across, down in line.points])
        self.set_dash_pattern()
        for shape in drawing.shapes:
            self.set_fill_color(*_rgb(shape.colour))
            self.polygon([(x + mm * across, y + mm * down) for across, down in shape.points], style="F")
        size = WORD_SIZE * mm * self.k
        for words in drawing.words:
            wide = {"start": 0.0, "middle": 0.5, "end": 1.0}[words.anchor] * self.width_of(words.text, "", size)
            self.put(x + mm * words.x - wide, y + mm * words.y, words.text, "", size, INK)

    def _sized(self, weight: str, size: float) -> str:
        """What chooses a font on this page; what the library thinks is chosen stays, as ``put`` gives it back."""
        chosen = self.current_font_is_set_on_page
        font = self._set_font_for_page(self._faces[weight], size, wrap_in_text_object=False)
        self.current_font_is_set_on_page = chosen
        return self._sizes.setdefault((self.page, weight, size), font)

    def _pen(self, line: Line, mm: float) -> None:
        self.set_draw_color(*(FAINT if line.faint else _rgb(line.colour) if line.colour else INK))
        self.set_line_width(line.width * mm)
        dash, gap = line.dash or (0.0, 0.0)
        self.set_dash_pattern(dash * mm, gap * mm)


class _Letters(dict[str, str]):
    """What each letter is in a font, found out once."""

    def __init__(self, encode: Callable[[str], str]) -> None:
        super().__init__()
        self.encode = encode

    def __missing__(self, letter: str) -> str:
        self[letter] = self.encode(letter).removeprefix("(").removesuffix(") Tj")
        return self[letter]


class _Link(AnnotationDict):
    """A link inside the record, written out as what it is."""

    __slots__ = ()

    def serialize(self, _security_handler: Any = None, _obj_id: int | None = None) -> str:
        """The link as PDF."""
        assert self.dest is not None
        to = self.dest.serialize()
        return f"<< /Type /Annot /Subtype /Link /Rect {self.rect} /Border {self.border} /F {self.f} /Dest {to} >>"


def _fonts() -> Path:
    """The folder of fonts that matplotlib brings; loading it for them would take half a second."""
    found = find_spec("matplotlib")
    assert found is not None
    assert found.submodule_search_locations
    return Path(found.submodule_search_locations[0]) / "mpl-data" / "fonts" / "ttf"


def _ink(colour: Colour) -> str:
    """The colour as PDF sets it for what is filled, letters too."""
    return " ".join(f"{part / 255:.3f}" for part in colour) + " rg"


def _rgb(colour: str) -> Colour:
    """The parts of ``#RRGGBB``."""
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)
