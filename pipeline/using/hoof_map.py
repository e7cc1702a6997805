"""A hoof drawn from below (solar view, toe up) with the places where something was found or done.

Each place carries the number of its line in the list beside the drawing, so that colour is never the only sign. The
colours are those of Okabe and Ito 2008 ("Color universal design"), which colour-blind readers can tell apart; a
doubtful finding is hatched and an answer of "none" is only outlined. The outline is a drawing of our own.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from html import escape
from math import cos, pi, sin

from pipeline.record import Fact, Foot, Status
from pipeline.using.wording import FOOT_NAMES

WIDTH, HEIGHT = 240, 250
_MIDDLE = (120.0, 112.0)
INK = "currentColor"


class Kind(StrEnum):
    """What a place is marked for, from the most to the least pressing."""

    TESTER = "hoof testers"
    FINDING = "finding"
    SUSPECTED = "perhaps"
    DONE = "done here"
    CLEAR = "nothing found"


COLOURS = {
    Kind.TESTER: "#CC79A7",
    Kind.FINDING: "#D55E00",
    Kind.SUSPECTED: "#E69F00",
    Kind.DONE: "#56B4E9",
    Kind.CLEAR: "#009E73",
}
COLOUR_NAMES = {
    Kind.TESTER: "pink",
    Kind.FINDING: "red-orange",
    Kind.SUSPECTED: "yellow-orange with a dashed edge",
    Kind.DONE: "blue",
    Kind.CLEAR: "green outline",
}
_ORDER = tuple(Kind)
Point = tuple[float, float]


@dataclass(frozen=True)
class Mark:
    """One line of the list beside the drawing: its number, its zone (None: no place was said), its words, its kind."""

    number: int
    zone: str | None
    words: str
    kind: Kind


def kind_of(fact: Fact) -> Kind | None:
    """How a fact is marked on the map; None when it has no business there."""
    if fact.slot == "tester":
        return Kind.CLEAR if fact.value == "none" or fact.status is Status.ABSENT else Kind.TESTER
    if fact.slot == "treatment" and fact.status is Status.PRESENT:
        return Kind.DONE
    if fact.slot not in ("finding", "pulse") or fact.status in (Status.HISTORY, Status.PLANNED):
        return None
    if fact.status in (Status.ABSENT, Status.RESOLVED) or fact.value == "normal":
        return Kind.CLEAR
    return Kind.SUSPECTED if fact.status is Status.SUSPECTED else Kind.FINDING


def hoof_svg(foot: Foot, marks: Sequence[Mark], ink: str = INK) -> str:
    """The drawing as an SVG element of WIDTH by HEIGHT units; ``ink`` is the colour of lines and words."""
    drawing = _Drawing(foot, ink)
    by_zone: dict[str, list[Mark]] = {}
    for mark in marks:
        if mark.zone:
            by_zone.setdefault(mark.zone, []).append(mark)
    # Large places first, so that a small one inside stays to be seen.
    for zone in sorted(by_zone, key=lambda zone: ZONE_SHAPES_ORDER.index(zone)):
        drawing.mark(zone, by_zone[zone])
    drawing.placeless([mark for mark in marks if not mark.zone])
    told = "; ".join(f"{mark.number} {mark.words}" for mark in marks) or "nothing marked"
    label = escape(f"{FOOT_NAMES[foot].capitalize()} from below, toe up: {told}", quote=True)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" width="{WIDTH}" height="{HEIGHT}" '
        f'role="img" aria-label="{label}">{drawing.shapes()}</svg>'
    )


def _arc(scale: float, first: float, last: float, side: int, width: float) -> list[Point]:
    """Points of the hoof's rim, shrunk by ``scale``, from ``first`` to ``last`` degrees behind the toe on one side."""
    steps = max(2, int(abs(last - first) / 6))
    points = []
    for step in range(steps + 1):
        angle = (first + (last - first) * step / steps) * pi / 180
        points.append((_MIDDLE[0] + side * width * scale * sin(angle), _MIDDLE[1] - 94 * scale * cos(angle)))
    return points


def _band(outer: float, inner: float, first: float, last: float, side: int, width: float) -> list[Point]:
    return _arc(outer, first, last, side, width) + _arc(inner, last, first, side, width)


def _ring(outer: float, inner: float, width: float) -> list[Point]:
    """From heel to heel around the toe and back."""
    right, left = _arc(outer, 0, _HEEL, 1, width), _arc(outer, _HEEL, 0, -1, width)
    return [*left, *right, *_arc(inner, _HEEL, 0, 1, width), *_arc(inner, 0, _HEEL, -1, width)]


_HEEL = 146.0  # degrees behind the toe where the wall ends and turns in to the bar
_SECTORS = {"toe": (0.0, 38.0), "quarter": (38.0, 98.0), "heel": (98.0, _HEEL)}
_WALL, _LINE, _SOLE = 1.0, 0.86, 0.80

ZONE_SHAPES_ORDER = (
    "coronary_band", "sole", "medial", "lateral", "wall", "white_line", "toe", "quarter", "heel", "medial_quarter",
    "lateral_quarter", "medial_heel", "lateral_heel", "heel_bulb", "bar", "frog", "commissure", "sulcus",
)  # fmt: skip


def zone_shapes(zone: str, foot: Foot) -> list[list[Point]]:
    """The closed outlines of a zone on this foot, in drawing units. Every zone of the record has at least one."""
    width = 84.0 if foot in ("LF", "RF") else 76.0  # a hind foot is narrower than a front foot
    # Seen from below with the toe up, the outside of a left foot is on the right.
    outside = 1 if foot[0] == "L" else -1
    sides = {"medial": (-outside,), "lateral": (outside,)}
    side_name, _, part = zone.partition("_")
    if side_name in sides:
        at = sides[side_name]
        return [shape for side in at for shape in _wall_part(part or None, side, width)]
    whole = (-1, 1)
    match zone:
        case "toe" | "quarter" | "heel":
            return [shape for side in whole for shape in _wall_part(zone, side, width)]
        case "wall":
            return [_ring(_WALL, _LINE, width)]
        case "white_line":
            return [_ring(_LINE, _SOLE, width)]
        case "coronary_band":
            return [_ring(1.10, 1.04, width)]
        case "sole":
            return [_sole(side, width) for side in whole]
        case _:
            return [_mirrored(shape, side) for shape in _INNER[zone] for side in whole]


def _wall_part(part: str | None, side: int, width: float) -> list[list[Point]]:
    first, last = _SECTORS[part] if part else (0.0, _HEEL)
    return [_band(_WALL, _LINE, first, last, side, width)]


def _sole(side: int, width: float) -> list[Point]:
    return [*_arc(_SOLE, 0, 128, side, width), (_MIDDLE[0] + side * 12, 96.0), (_MIDDLE[0], 88.0)]


# Right halves, as distances from the middle line; the left ones are mirrored.
_INNER: dict[str, list[list[Point]]] = {
    "frog": [[(0, 92), (7, 108), (20, 150), (30, 194), (14, 204), (0, 198)]],
    "sulcus": [[(0, 146), (5, 160), (6, 180), (0, 196)]],
    "commissure": [[(6, 92), (13, 106), (27, 148), (38, 190), (30, 194), (20, 150), (7, 108)]],
    "bar": [[(21, 120), (34, 146), (47, 184), (38, 190), (27, 148)]],
    "heel_bulb": [[(6, 212), (30, 206), (50, 198), (56, 212), (48, 228), (26, 234), (8, 228)]],
}


def _mirrored(shape: list[Point], side: int) -> list[Point]:
    return [(_MIDDLE[0] + side * x, y) for x, y in shape]


class _Drawing:
    """Collects the shapes of one foot."""

    def __init__(self, foot: Foot, ink: str) -> None:
        self.foot = foot
        self.ink = ink
        self.filled: list[str] = []
        self.badges: list[str] = []
        self._taken: list[Point] = []

    def mark(self, zone: str, marks: Sequence[Mark]) -> None:
        """Colour a zone by its most pressing mark and put the numbers on it."""
        kind = min((mark.kind for mark in marks), key=_ORDER.index)
        shapes = zone_shapes(zone, self.foot)
        for shape in shapes:
            self.filled.append(_filled(shape, kind))
            if kind is Kind.SUSPECTED:
                self.filled.append(_hatched(shape, self.ink))
        at = self._free(_badge_place(zone, shapes))
        numbers = ",".join(str(mark.number) for mark in marks)
        self.badges.append(_badge(at, numbers))

    def placeless(self, marks: Sequence[Mark]) -> None:
        """Put the numbers of what has no place in the corner, under a word that says so."""
        if marks:
            kind = min((mark.kind for mark in marks), key=_ORDER.index)
            numbers = ",".join(str(mark.number) for mark in marks)
            self.badges.append(_word((4, 14), "no place said:", "start", self.ink))
            self.badges.append(_badge((14 + 3.4 * (len(numbers) - 1), 28), numbers, COLOURS[kind]))

    def shapes(self) -> str:
        """Everything drawn, the plain outlines over the colours and the numbers on top."""
        outlines = [
            _path(shape, f'fill="none" stroke="{self.ink}" stroke-width="{weight}"')
            for zone, weight in (("wall", 1.6), ("white_line", 0.6), ("frog", 1.2), ("bar", 0.8), ("heel_bulb", 1))
            for shape in zone_shapes(zone, self.foot)
        ]
        left = "outside" if self.foot[0] == "R" else "inside"
        right = "inside" if self.foot[0] == "R" else "outside"
        words = [
            _word((120, 12), "toe", "middle", self.ink),
            _word((4, 246), left, "start", self.ink),
            _word((236, 246), right, "end", self.ink),
        ]
        return "".join([*self.filled, *outlines, *words, *self.badges])

    def _free(self, at: Point) -> Point:
        """``at``, or the nearest place beside it where no number stands yet."""
        x, y = at
        while any(abs(x - other[0]) < 20 and abs(y - other[1]) < 16 for other in self._taken):
            y += 17
        self._taken.append((x, y))
        return x, y


def _badge_place(zone: str, shapes: Sequence[list[Point]]) -> Point:
    if zone == "coronary_band":
        return (_MIDDLE[0] - 84, 56.0)
    if zone in ("toe", "wall", "white_line"):
        return (_MIDDLE[0], _MIDDLE[1] - 94 * (0.72 if zone == "white_line" else 0.93))
    if zone == "sole":
        return (_MIDDLE[0], 70.0)
    if zone == "frog":
        return (_MIDDLE[0], 128.0)
    if zone == "sulcus":
        return (_MIDDLE[0], 172.0)
    shape = shapes[-1]
    if zone in ("medial", "lateral"):  # the middle of a half wall
        return shape[len(shape) // 4]
    return (sum(x for x, _ in shape) / len(shape), sum(y for _, y in shape) / len(shape))


def _path(shape: Sequence[Point], style: str) -> str:
    points = " L".join(f"{x:.1f} {y:.1f}" for x, y in shape)
    return f'<path d="M{points} Z" {style}/>'


def _filled(shape: Sequence[Point], kind: Kind) -> str:
    colour = COLOURS[kind]
    if kind is Kind.CLEAR:
        return _path(shape, f'fill="none" stroke="{colour}" stroke-width="3" stroke-linejoin="round"')
    return _path(shape, f'fill="{colour}" fill-opacity="0.75" stroke="none"')


def _hatched(shape: Sequence[Point], ink: str) -> str:
    return _path(shape, f'fill="none" stroke="{ink}" stroke-width="1.4" stroke-dasharray="3 2"')


def _badge(at: Point, numbers: str, edge: str = "#222222") -> str:
    half = 9 + 3.4 * (len(numbers) - 1)
    x, y = at
    return (
        f'<rect x="{x - half:.1f}" y="{y - 8:.1f}" width="{2 * half:.1f}" height="16" rx="8" fill="#ffffff" '
        f'stroke="{edge}" stroke-width="{1 if edge == "#222222" else 3}"/>'
        f'<text x="{x:.1f}" y="{y + 4:.1f}" font-size="11" font-weight="bold" font-family="sans-serif" '
        f'text-anchor="middle" fill="#222222">{numbers}</text>'
    )


def _word(at: Point, text: str, anchor: str, ink: str) -> str:
    return (
        f'<text x="{at[0]:.0f}" y="{at[1]:.0f}" font-size="11" font-family="sans-serif" text-anchor="{anchor}" '
        f'fill="{ink}">{text}</text>'
    )
