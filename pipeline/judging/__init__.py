"""Facts in, judged facts out: confidence, plausibility and flags."""

from __future__ import annotations

from typing import TYPE_CHECKING

from pipeline.judging.cautions import cautions

if TYPE_CHECKING:
    from pipeline.judging.judge import judge

__all__ = ["cautions", "judge"]


def __getattr__(name: str) -> object:
    """``judge``, loaded when it is asked for: whoever only reads what was judged needs none of it."""
    if name != "judge":
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from pipeline.judging.judge import judge

    globals()["judge"] = judge  # the import has put the module of the same name there
    return judge
