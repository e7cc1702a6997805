"""A record as one self-contained web page: it opens offline, prints, fits a phone, and runs no script.

Every word of a memo or a roster is escaped by the template engine; a policy in the page forbids scripts and any
address. Jinja2 loads when the first page is made.
"""

from __future__ import annotations

import base64
from importlib.resources import files

from pipeline.using.handover import Handover
from pipeline.using.hoof_map import COLOURS, Kind, hoof_svg
from pipeline.using.origin import long_date, program_version
from pipeline.using.plots import trend_svg
from pipeline.using.wording import harmless

_FOLDER = "pages"


def as_page(page: Handover) -> str:
    """The page's HTML; text in it is harmless whatever was said."""
    from jinja2 import Environment, StrictUndefined
    from markupsafe import Markup

    environment = Environment(
        autoescape=True,
        undefined=StrictUndefined,
        finalize=lambda value: harmless(value) if type(value) is str else value,
    )
    template = environment.from_string(_packaged("record.html"))
    feet = [foot for foot in page.feet if foot.foot]
    text = template.render(
        page=page,
        version=program_version(),
        style=Markup(_packaged("record.css")),
        legend=[(kind.value, COLOURS[kind], kind is Kind.CLEAR) for kind in Kind],
        drawings={foot.foot: Markup(hoof_svg(foot.foot, foot.marks)) for foot in feet if foot.foot},
        testers={f.foot: Markup(hoof_svg(f.foot, f.tester_marks)) for f in feet if f.foot and f.tester_marks},
        trends={m.slot: Markup(trend_svg(m)) if m.has_trend else "" for m in page.measures},
        long_date=long_date,
        base64=lambda data: base64.b64encode(data).decode("ascii"),
    )
    return text.rstrip() + "\n"


def _packaged(name: str) -> str:
    return files("pipeline.using").joinpath(_FOLDER, name).read_text(encoding="utf-8")
