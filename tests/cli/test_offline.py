"""Nothing reaches for a network: a whole run, in a process of its own, with every connection forbidden."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

# Python runs this before anything else; it stands in for a machine without a network, and tells who asked for one.
FORBID = """
import socket

def refused(*arguments, **options):
    raise SystemExit("a connection was asked for")

socket.socket.connect = socket.socket.connect_ex = socket.getaddrinfo = socket.create_connection = refused
"""


def test_reading_text_asks_for_no_connection(tmp_path: Path) -> None:
    (tmp_path / "sitecustomize.py").write_text(FORBID, encoding="utf-8")
    before = os.environ.get("PYTHONPATH")
    done = subprocess.run(
        [sys.executable, "-m", "pipeline.cli", "extract", "-", "--json", "--date", "2026-03-02"],
        input="Bramble. Thrush in the left hind.",
        env={**os.environ, "PYTHONPATH": os.pathsep.join([str(tmp_path), *([before] if before else [])])},
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert done.stderr == ""
    facts = json.loads(done.stdout)["visits"][0]["facts"]
    assert [(fact["foot"], fact["value"], fact["status"]) for fact in facts] == [("LH", "thrush", "present")]


def test_the_guard_itself_works(tmp_path: Path) -> None:
    (tmp_path / "sitecustomize.py").write_text(FORBID, encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-c", "import socket; socket.create_connection(('localhost', 9))"],
        env={**os.environ, "PYTHONPATH": str(tmp_path)},
        capture_output=True,
        text=True,
        timeout=60,
    )
    assert done.stderr == "a connection was asked for\n"
