"""Facts in, judged facts out: confidence, plausibility and flags."""

from __future__ import annotations

from typing import TYPE_CHECKING

from pipeline.judging.cautions import cautions

if TYPE_CHECKING:
    from pipeline.judging.earlier import LastVisit
    from pipeline.judging.judge import LastOf, judge

__all__ = ["LastOf", "LastVisit", "cautions", "judge"]


def __getattr__(name: str) -> object:
    """The rest, loaded when it is asked for: whoever only reads what was judged needs none of it."""
    if name == "LastVisit":
        from pipeline.judging.earlier import LastVisit

        return LastVisit
    if name not in ("judge", "LastOf"):
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from pipeline.judging.judge import LastOf, judge

    globals()["judge"] = judge  # the import has put the module of the same name there
    return judge if name == "judge" else LastOf
