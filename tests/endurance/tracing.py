"""System calls of a program as strace tells them, and programs that run with one of their calls made to fail."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from tests.endurance.apart import start
from tests.endurance.outcome import CannotRunError

ROOT = Path(__file__).resolve().parents[2]
CALLS = ("openat", "write", "pwrite64", "fsync", "fdatasync", "rename", "mkdir", "unlink", "ftruncate")
_LINE = re.compile(r"(?P<pid>\d+) +(?P<name>\w+)\((?P<given>.*)\) += (?P<answer>-?\d+|\?)(?P<rest>.*)")
_HEX = re.compile(r'"((?:\\x[0-9a-f]{2})*)"|<((?:\\x[0-9a-f]{2})*)>')


@dataclass(frozen=True)
class Call:
    """One system call: its name, how many of this name came before it, its paths and bytes, its numbers, its answer."""

    name: str
    ordinal: int
    texts: tuple[bytes, ...]
    given: str
    answer: int
    answered_path: bytes | None

    @property
    def paths(self) -> list[Path]:
        """What of the call may be a path."""
        return [Path(os.fsdecode(text)) for text in self.texts if text[:1] == b"/" and b"\0" not in text]

    def numbers(self) -> list[int]:
        """The plain numbers among what was given, in order: sizes, offsets, modes."""
        bare = _HEX.sub("", self.given)
        return [int(part) for part in re.findall(r"(?<![\w-])\d+(?!\w)", bare)]


def needs_strace() -> None:
    """Raise CannotRunError where strace is not installed or may not trace."""
    if shutil.which("strace") is None:
        raise CannotRunError("strace is not installed")
    tried = subprocess.run(["strace", "-f", "-e", "trace=none", "true"], capture_output=True, text=True)
    if tried.returncode:
        raise CannotRunError("strace may not trace here")


def program(*arguments: str | Path) -> list[str]:
    """The command of ``keep_one`` with its arguments."""
    return [sys.executable, "-m", "tests.endurance.keep_one", *(str(argument) for argument in arguments)]


def run_traced(log: Path, command: list[str], *options: str) -> subprocess.CompletedProcess[str]:
    """Run a command under strace, which writes ``log``."""
    tracer = ["strace", "-f", "-y", "-xx", "--seccomp-bpf", "-s", "10000000", "-o", str(log)]
    # The same calls in the same order each time: no compiled files are written, no hash is random.
    settled = {"PYTHONDONTWRITEBYTECODE": "1", "PYTHONHASHSEED": "0", "PYTHONPATH": str(ROOT)}
    watched = ["-e", f"trace={','.join(CALLS)}"]
    return subprocess.run(
        [*tracer, *watched, *options, *command],
        env={**os.environ, **settled}, cwd=ROOT, capture_output=True, text=True, timeout=120,
    )  # fmt: skip


@dataclass(frozen=True)
class Attached:
    """How a traced child ended: what it wrote, and the signal that killed it, 0 for none."""

    written: str
    signal: int


def run_attached(log: Path, work: Callable[[int], None], *options: str) -> Attached:
    """Fork, let strace watch the child, then let it do ``work``: many times as fast as a program that loads anew."""
    going, go = os.pipe()

    def when_watched(pipe: int) -> None:
        os.close(go)
        os.read(going, 1)
        work(pipe)

    child = start(when_watched)
    os.close(going)
    tracer = ["strace", "-f", "-y", "-xx", "-s", "10000000", "-o", str(log), "-p", str(child.pid)]
    watched = ["-e", f"trace={','.join(CALLS)}", *options]
    with subprocess.Popen([*tracer, *watched], stderr=subprocess.PIPE, text=True) as strace:
        said = strace.stderr.readline() if strace.stderr else ""
        os.write(go, b"!")
        os.close(go)
        written, status = child.written().decode(), child.wait()
    if "attached" not in said:
        raise CannotRunError(f"strace cannot watch a running program here: {said.strip()}")
    return Attached(written, os.WTERMSIG(status) if os.WIFSIGNALED(status) else 0)


def calls(log: Path) -> Iterator[Call]:
    """The calls of the program's first thread, in order; failed ones too."""
    seen: dict[str, int] = {}
    first: str | None = None
    for line in log.read_text(encoding="ascii").splitlines():
        parsed = _LINE.match(line)
        if parsed is None:
            continue
        first = first or parsed["pid"]
        if parsed["pid"] != first:
            continue
        name = parsed["name"]
        seen[name] = seen.get(name, 0) + 1
        texts = tuple(_bytes(quoted or pointed) for quoted, pointed in _HEX.findall(parsed["given"]))
        answer = -1 if parsed["answer"] == "?" else int(parsed["answer"])
        opened = _HEX.search(parsed["rest"])
        yield Call(name, seen[name], texts, parsed["given"], answer, _bytes(opened[2]) if opened else None)


def _bytes(hexed: str) -> bytes:
    return bytes.fromhex(hexed.replace("\\x", ""))
