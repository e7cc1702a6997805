"""Python's collector of cyclic garbage at rest for the moment that a memo takes."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def collector_at_rest() -> Iterator[None]:
    """Leave the garbage of one memo, some thousand small objects, until it is read: looking for it takes time.

    Who has put the collector to rest already finds it so behind.
    """
    if not gc.isenabled():
        yield
        return
    gc.disable()
    try:
        yield
    finally:
        gc.enable()
