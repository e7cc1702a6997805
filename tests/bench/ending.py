"""How a bench ends when something that it needs is missing: with a sentence, and not with a traceback."""

from __future__ import annotations

import sys
from collections.abc import Callable

from pipeline.errors import ClinchbookError


def ended(bench: Callable[[], None]) -> int:
    """Run a bench; 1, with one sentence, when it raises ClinchbookError."""
    try:
        bench()
    except ClinchbookError as error:
        print(error, file=sys.stderr)
        return 1
    return 0
