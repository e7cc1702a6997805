"""Writes the README's figures: what stands between its markers is made from templates and the benches' last rows.

The words are in ``figures/NAME.md``, the figures come from ``measured.py``. ``python -m tests.bench --readme`` writes
them, and a test fails when the README says something else than was measured last.
"""

from __future__ import annotations

import re
import textwrap
from pathlib import Path

import jinja2

from tests.bench.measured import Measured, against, ends, listed, percent, rounded

README = Path(__file__).resolve().parents[2] / "README.md"
TEMPLATES = Path(__file__).resolve().parent / "figures"
_CODE, _SPACE = re.compile(r"`[^`]+`"), "\x1f"
_BLOCK = re.compile(r"(<!-- figures: (\w+) -->\n).*?(<!-- end of figures -->)", re.DOTALL)


def with_figures(readme: str, measured: Measured) -> str:
    """The README's text with every block of figures made anew; raises NotMeasuredError when a figure is missing."""
    templates = jinja2.Environment(
        loader=jinja2.FileSystemLoader(TEMPLATES), undefined=jinja2.StrictUndefined, trim_blocks=True,
        lstrip_blocks=True, keep_trailing_newline=True,
    )  # fmt: skip
    templates.filters.update(rounded=rounded, percent=percent)
    words = {"m": measured, "ends": ends, "listed": listed, "against": against}

    def block(found: re.Match[str]) -> str:
        return found[1] + wrapped(templates.get_template(f"{found[2]}.md").render(words)) + found[3]

    return _BLOCK.sub(block, readme)


def wrapped(text: str) -> str:
    """Paragraphs filled anew, since figures change their length; tables and what stands between backticks stay."""
    parts = re.split(r"\n{2,}", text.strip("\n"))
    return "\n" + "\n\n".join(part if part.startswith("|") else _filled(part) for part in parts) + "\n\n"


def _filled(paragraph: str) -> str:
    held = _CODE.sub(lambda code: code[0].replace(" ", _SPACE), " ".join(paragraph.split()))
    return textwrap.fill(held, 120, break_long_words=False, break_on_hyphens=False).replace(_SPACE, " ")


def blocks(readme: str) -> list[str]:
    """The names of the blocks, in their order."""
    return [found[2] for found in _BLOCK.finditer(readme)]


def write(path: Path = README) -> None:
    """Bring the README up to date."""
    before = path.read_text(encoding="utf-8")
    after = with_figures(before, Measured())
    if after != before:
        path.write_text(after, encoding="utf-8")
    print(f"{path.name}: {'figures brought up to date' if after != before else 'its figures were up to date'}.")
