"""No network call, ever: the program is watched at the door to the kernel, and runs where there is no network."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from tests.endurance.outcome import CannotRunError, Outcome
from tests.endurance.tracing import ROOT, needs_strace

# What reaches another machine: addresses of the internet in any call that names one. A library that spaCy loads binds
# a socket to this machine's own loop to see whether there is IPv6, and closes it; that reaches nobody.
_OUTSIDE = ("AF_INET", "AF_INET6", "AF_PACKET", "AF_BLUETOOTH")
_NAMING_A_PEER = ("connect", "sendto", "sendmsg", "sendmmsg", "bind")
_TEXT = "Bramble. Left front, mild thrush in the sulcus, no heat. Six weeks."


def run(demo: bool) -> list[Outcome]:
    """Reading, and with ``demo`` the whole demo, from its sound to its table."""
    needs_strace()
    outcome = Outcome("no network")
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        folder = Path(named)
        tasks = [["extract", "-", "--json", "--date", "2026-03-02"], ["check"], ["--version"]]
        one = ROOT / "demo_audio" / "2026-05-12_09-21-40.wav"  # heard for real: libraries of sound report their use
        tasks += [["demo", "--out", str(folder / "out")]] if demo else [["ingest", str(one)]]
        for arguments in tasks:
            outcome.cases += 1
            outcome.failures += [f"{arguments[0]}: {wrong}" for wrong in _traced(folder, arguments)]
        if not demo:
            return [outcome]
        outcome.cases += 1
        outcome.failures += _cut_off(folder)
    return [outcome]


def calls_outside(log: str) -> list[str]:
    """The lines of a trace that reach for another machine."""
    named = [line for line in log.splitlines() if any(f"{call}(" in line for call in _NAMING_A_PEER)]
    reaching = [line for line in named if any(f"sa_family={family}," in line for family in _OUTSIDE)]
    return [line for line in reaching if not ("bind(" in line and '"::1"' in line)]


def _traced(folder: Path, arguments: list[str]) -> list[str]:
    log = folder / "calls"
    command = ["strace", "-f", "-e", "trace=network", "-o", str(log), sys.executable, "-m", "pipeline.cli", *arguments]
    done = _run(command, folder)
    if done.returncode:
        return [f"exit code {done.returncode}, “{done.stderr.strip()[-300:]}”"]
    return [f"a call to the outside: {line}" for line in calls_outside(log.read_text(errors="replace"))]


def _cut_off(folder: Path) -> list[str]:
    """The demo in a network of its own, which holds nothing, not even the machine's own loop."""
    if shutil.which("unshare") is None or subprocess.run(["unshare", "-n", "true"], capture_output=True).returncode:
        raise CannotRunError("a network of its own is not allowed here")
    program = [sys.executable, "-m", "pipeline.cli", "demo", "--out", str(folder / "cut off")]
    done = _run(["unshare", "-n", *program], folder)
    if done.returncode or "Hester" not in done.stdout:
        return [f"demo without a network: exit code {done.returncode}, “{done.stderr.strip()[-300:]}”"]
    return []


def _run(command: list[str], folder: Path) -> subprocess.CompletedProcess[str]:
    settled = {"PYTHONPATH": str(ROOT), "CLINCHBOOK_STORE": str(folder / "book")}
    return subprocess.run(
        command, input=_TEXT, env={**os.environ, **settled}, cwd=ROOT, capture_output=True, text=True, timeout=900
    )
