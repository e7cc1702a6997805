"""What the wheel weighs: ``python -m tests.bench.wheel [--check]``.

Builds it with pip (which fetches the build's own tool) and ends with 1 when it is 2 MB or more, lacks the trade's
words, or brings sound, tests or stores along. A row goes to ``results/wheel.csv``; ``--check`` only looks.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

from pipeline.ingest import SOUND_ENDINGS
from tests.bench.history import add_rows, print_rows

ROOT = Path(__file__).resolve().parents[2]
COLUMNS = ("files", "packed_mb", "unpacked_mb", "target_mb")
MOST_BYTES = 2_000_000
TOP = ("pipeline", "clinchbook-")
NEEDED = (
    "pipeline/vocab/findings.csv",
    "pipeline/judging/model.json",
    "pipeline/using/clinchbook-record-1.schema.json",
)


def built(folder: Path) -> Path:
    """The wheel of this source tree; raises CalledProcessError when it cannot be built."""
    command = [sys.executable, "-m", "pip", "wheel", "--no-deps", "--quiet", "--wheel-dir", str(folder), str(ROOT)]
    subprocess.run(command, check=True)
    (wheel,) = folder.glob("*.whl")
    return wheel


def faults(names: Iterable[str], packed_bytes: int) -> Iterator[str]:
    """A sentence for everything that is wrong with a wheel of these files."""
    inside = set(names)
    if packed_bytes >= MOST_BYTES:
        yield f"The wheel has {packed_bytes / 1e6:.2f} MB, and must stay below {MOST_BYTES / 1e6:.0f}."
    yield from (f"{name} is missing from the wheel." for name in NEEDED if name not in inside)
    for name in sorted(inside):
        if not name.startswith(TOP) or Path(name).suffix.lower() in (*SOUND_ENDINGS, ".db"):
            yield f"{name} does not belong into the wheel."


def main(given: Sequence[str] | None = None) -> int:
    """Build, look, print; 1 when something is wrong."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.wheel", description=(__doc__ or "").split("\n")[0])
    parser.add_argument("--check", action="store_true", help="only look, and remember nothing")
    only_look = parser.parse_args(given).check
    with tempfile.TemporaryDirectory() as temporary:
        wheel = built(Path(temporary))
        packed = wheel.stat().st_size
        with zipfile.ZipFile(wheel) as opened:
            files = opened.infolist()
    unpacked = sum(file.file_size for file in files)
    rows = [(len(files), f"{packed / 1e6:.2f}", f"{unpacked / 1e6:.2f}", f"< {MOST_BYTES / 1e6:.0f}")]
    print_rows(COLUMNS, rows)
    if not only_look:
        add_rows("wheel", COLUMNS, rows)
    wrong = list(faults((file.filename for file in files), packed))
    print("\n".join(wrong), file=sys.stderr, end="\n" if wrong else "")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
