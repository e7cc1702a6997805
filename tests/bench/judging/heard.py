"""Takes of spoken memos with what a recogniser heard in them, from the hearing bench's folder of sound."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pipeline.record import Flag, Transcript
from tests.facts.scoring import load_gold


@dataclass(frozen=True)
class HeardTake:
    """One memo in one voice under one condition: its gold, and what was heard."""

    gold: dict[str, Any]
    voice: str
    condition: str
    transcript: Transcript
    flags: tuple[Flag, ...]


def heard_takes(sound: Path, part: str, ear: str = "ours") -> Iterator[HeardTake]:
    """The takes of ``part`` (tune or report) that the bench has heard already, in the order of its list."""
    heard = {}
    for path in sorted((sound / "heard").glob("*.json"), key=lambda p: p.stat().st_mtime):
        told = json.loads(path.read_text(encoding="utf-8"))
        if told["ear"] == ear:
            heard[Path(told["memo"]["path"]).name] = told
    for row in load_gold(sound / f"{part}.jsonl"):
        told = heard.get(Path(row["file"]).name)
        if told is None:
            continue
        flags = tuple(Flag.model_validate(flag) for flag in told["flags"])
        yield HeardTake(row, row["voice"], row["condition"], Transcript.model_validate(told["transcript"]), flags)
