"""Python's collector of cyclic garbage: at rest for the moment that a memo takes, and blind to what stays loaded."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache


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


@cache
def leave_what_is_loaded() -> None:
    """Have the collector pass over all that is there now, once in a process: vocabulary and matchers live as long.

    Else it walks over half a million objects every few memos: on average a fifth to a quarter of a memo's time.
    """
    gc.freeze()
