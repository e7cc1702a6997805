"""How a run's time is shared out among its steps, each without the steps inside it."""

from __future__ import annotations

import functools
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any, NamedTuple


class Spent(NamedTuple):
    """Seconds of the processor, over all its cores, and of the clock."""

    processor: float
    clock: float

    def less(self, other: Spent) -> Spent:
        """What is left without the other."""
        return Spent(self.processor - other.processor, self.clock - other.clock)

    def more(self, other: Spent) -> Spent:
        """Both together."""
        return Spent(self.processor + other.processor, self.clock + other.clock)


NOTHING = Spent(0.0, 0.0)


def now() -> Spent:
    """The processor time of this process so far, and the clock."""
    return Spent(time.process_time(), time.monotonic())


class Stopwatch:
    """Adds up the time of named steps; a step inside another takes its time from the outer one."""

    def __init__(self, read: Callable[[], Spent] = now) -> None:
        self.spent: dict[str, Spent] = {}
        self._read = read
        self._inside = [NOTHING]

    @contextmanager
    def step(self, name: str) -> Iterator[None]:
        """Time what happens here."""
        began = self._read()
        self._inside.append(NOTHING)
        try:
            yield
        finally:
            took = self._read().less(began)
            self.spent[name] = self.spent.get(name, NOTHING).more(took.less(self._inside.pop()))
            self._inside[-1] = self._inside[-1].more(took)

    def watch(self, owner: Any, attribute: str, name: str, then: Callable[[Any], None] | None = None) -> None:
        """Time every call of a function of a module or class from now on; ``then`` is told what it gave back."""
        real = getattr(owner, attribute)
        function = real.__func__ if isinstance(owner.__dict__.get(attribute), classmethod) else real

        @functools.wraps(function)
        def timed(*arguments: Any, **named: Any) -> Any:
            with self.step(name):
                given = function(*arguments, **named)
            if then is not None:
                then(given)
            return given

        setattr(owner, attribute, classmethod(timed) if function is not real else timed)
