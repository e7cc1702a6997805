"""Which files of a watched folder are complete: those that have stopped growing."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path


@dataclass
class _Seen:
    size: int
    modified_ns: int
    since_s: float
    handed_out: bool = False


class Settling:
    """Hands out each file once it has kept its size and time for ``settle_s`` seconds, and again if it changes."""

    def __init__(self, settle_s: float, clock: Callable[[], float] = time.monotonic) -> None:
        self.settle_s = settle_s
        self.clock = clock
        self._seen: dict[Path, _Seen] = {}

    def ready(self, paths: Iterable[Path]) -> list[Path]:
        """The files of ``paths`` that are complete and were not handed out in this state before."""
        return [path for path in paths if self._is_ready(path)]

    def again(self, path: Path) -> None:
        """Hand a file out once more, after it has waited as long as a new one."""
        if path in self._seen:
            self._seen[path].handed_out, self._seen[path].since_s = False, self.clock()

    def growing(self) -> list[Path]:
        """The files seen so far that were never handed out as they are now."""
        return [path for path, seen in self._seen.items() if not seen.handed_out]

    def _is_ready(self, path: Path) -> bool:
        try:
            status = path.stat()
        except FileNotFoundError:  # a sync programme renames its temporary files under our eyes
            self._seen.pop(path, None)
            return False
        seen = self._seen.get(path)
        if seen is None or (seen.size, seen.modified_ns) != (status.st_size, status.st_mtime_ns):
            seen = self._seen[path] = _Seen(status.st_size, status.st_mtime_ns, self.clock())
        if seen.handed_out or self.clock() - seen.since_s < self.settle_s:
            return False
        seen.handed_out = True
        return True
