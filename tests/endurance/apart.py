"""Running a function in a process of its own, with limits on memory and time, and telling how it ended."""

from __future__ import annotations

import os
import pickle
import select
import signal
import sys
import time
import traceback
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from types import TracebackType
from typing import Any

if sys.platform != "win32":
    import resource


@dataclass(frozen=True)
class Ending:
    """How a child ended: what the function returned, or in ``trouble`` what went wrong (empty when nothing did)."""

    value: Any = None
    trouble: str = ""


@dataclass
class Child:
    """A forked process and the pipe that it writes to."""

    pid: int
    pipe: int

    def kill(self) -> None:
        """Kill it so that it can catch nothing, and wait for its end."""
        with suppress(ProcessLookupError):
            os.kill(self.pid, signal.SIGKILL)

    def written(self) -> bytes:
        """All that it wrote until its end; the pipe is closed."""
        with os.fdopen(self.pipe, "rb") as pipe:
            return pipe.read()

    def wait(self) -> int:
        """Its exit status as ``os.waitpid`` gives it."""
        return os.waitpid(self.pid, 0)[1]


class Caught:
    """Catches whatever is raised inside and keeps it as text: a run over many cases must not end with one."""

    def __init__(self) -> None:
        self.trouble = ""

    def __enter__(self) -> Caught:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> bool:
        if error is not None:
            self.trouble = "".join(traceback.format_exception(error))
        return True


def start(work: Callable[[int], None]) -> Child:
    """Fork; the child calls ``work`` with the pipe's writing end and ends without any of the parent's clean-up."""
    reading, writing = os.pipe()
    pid = os.fork()
    if pid:
        os.close(writing)
        return Child(pid, reading)
    code = 70
    try:
        os.close(reading)
        with Caught() as caught:
            work(writing)
        sys.stderr.write(caught.trouble)
        code = 70 if caught.trouble else 0
    finally:
        os._exit(code)


def run_apart(function: Callable[[], object], *, seconds: float = 60, memory: int | None = None) -> Ending:
    """Call ``function`` in a child that may take ``seconds`` and, besides what it has, ``memory`` bytes of addresses.

    A traceback, a signal, too much time and too much memory are each told in ``trouble``. The value must pickle.
    """

    def work(pipe: int) -> None:
        if memory is not None:
            _limit_memory(memory)
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
        value = None
        with Caught() as caught:
            value = function()
        _write_all(pipe, pickle.dumps(Ending(value, caught.trouble)))

    child = start(work)
    data, late = _read_until(child.pipe, time.monotonic() + seconds)
    if late:
        child.kill()
    status = child.wait()
    if late:
        return Ending(trouble=f"took longer than {seconds:g} seconds")
    if os.WIFSIGNALED(status):
        return Ending(trouble=f"ended by {signal.Signals(os.WTERMSIG(status)).name}")
    if not data:
        return Ending(trouble=f"ended with exit code {os.WEXITSTATUS(status)} and no answer")
    ending: Ending = pickle.loads(data)
    return ending


def _limit_memory(more: int) -> None:
    with open("/proc/self/statm", encoding="ascii") as file:
        now = int(file.read().split()[0]) * resource.getpagesize()
    resource.setrlimit(resource.RLIMIT_AS, (now + more, now + more))


def _read_until(pipe: int, deadline: float) -> tuple[bytes, bool]:
    pieces: list[bytes] = []
    try:
        while True:
            ready, _, _ = select.select([pipe], [], [], max(0, deadline - time.monotonic()))
            if not ready:
                return b"".join(pieces), True
            piece = os.read(pipe, 1 << 16)
            if not piece:
                return b"".join(pieces), False
            pieces.append(piece)
    finally:
        os.close(pipe)


def _write_all(pipe: int, data: bytes) -> None:
    while data:
        data = data[os.write(pipe, data) :]
