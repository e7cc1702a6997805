"""What the hearing bench speaks: which memo, by which voice, under which condition.

``tune`` is spoken from the open memos and may be looked at; ``report`` is spoken from the kept memos, of which only
scores and counts ever come out. The two share no voice.
"""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.facts.scoring import load_gold

CORPUS = Path(__file__).resolve().parents[2] / "corpus"
SEED = 20260302
MOST_WORDS = 190  # about 90 s of speech in the slowest of these voices
CLEAN = "clean"
NOISES = ("wind", "hammer", "diesel", "voices")
RATIOS_DB = (15, 5)
FAST = "fast"  # spoken at 1.3 times the voice's own speed
LINES = ("telephone", "amr", "opus")  # what the sound went through
CONDITIONS = (CLEAN, *(f"{noise}{db}" for noise in NOISES for db in RATIOS_DB), FAST, *LINES)
_FAST_SPEED = 1.3

# Each memo is spoken by two voices; the pairs go round, the slow human-like voices (af_...) least often.
_TUNE_PAIRS = (
    ("hibari_heart", "slt"),
    ("pico_us", "awb"),
    ("kal16", "af_sarah"),
    ("pico_us", "hibari_heart"),
    ("slt", "awb"),
)
_REPORT_PAIRS = (
    ("joe", "rms"),
    ("pico_gb", "af_bella"),
    ("rms", "pico_gb"),
    ("joe", "pico_gb"),
    ("pico_gb", "joe"),
    ("rms", "joe"),
    ("joe", "rms"),
    ("pico_gb", "rms"),
    ("rms", "pico_gb"),
    ("joe", "af_nova"),
    ("pico_gb", "joe"),
    ("rms", "af_bella"),
)
REPORT_VOICES = frozenset(voice for pair in _REPORT_PAIRS for voice in pair)  # nothing is ever learnt from these


@dataclass(frozen=True)
class Take:
    """One file of sound: a memo as one voice says it, under one condition."""

    part: str  # tune or report
    memo: dict[str, Any]
    voice: str
    condition: str = CLEAN

    @property
    def stem(self) -> str:
        """The file's name without its ending."""
        return f"{self.memo['id']}-{self.voice}-{self.condition}"

    @property
    def speed(self) -> float:
        """How fast it is spoken, 1 being the voice's own way."""
        return _FAST_SPEED if self.condition == FAST else 1.0

    @property
    def clean(self) -> Take:
        """The take that this one is made from."""
        return Take(self.part, self.memo, self.voice)


def tune_takes(memos: int = 40) -> list[Take]:
    """Open memos, as many from each file as from the others, each by two voices."""
    return _clean_takes("tune", _spread("open_", memos), _TUNE_PAIRS)


def report_takes(memos: int = 24, disturbed: int = 12) -> list[Take]:
    """Kept memos by two voices each, clean; the first ``disturbed`` also by one voice under every other condition."""
    clean = _clean_takes("report", _spread("kept_", memos), _REPORT_PAIRS)
    first = clean[: 2 * disturbed : 2]
    return clean + [Take("report", t.memo, t.voice, name) for name in CONDITIONS[1:] for t in first]


def _clean_takes(part: str, memos: Sequence[dict[str, Any]], pairs: Sequence[tuple[str, str]]) -> list[Take]:
    return [Take(part, memo, voice) for n, memo in enumerate(memos) for voice in pairs[n % len(pairs)]]


def _spread(prefix: str, wanted: int) -> list[dict[str, Any]]:
    """Memos drawn by a fixed seed, the files taking turns, none longer than MOST_WORDS."""
    drawn: list[Iterator[dict[str, Any]]] = []
    for path in sorted(CORPUS.glob(f"{prefix}*.jsonl")):
        memos = [memo for memo in load_gold(path) if len(memo["text"].split()) <= MOST_WORDS]
        random.Random(f"{SEED} {path.stem}").shuffle(memos)
        drawn.append(iter(memos))
    chosen: list[dict[str, Any]] = []
    while len(chosen) < wanted and drawn:
        for memos_left in list(drawn):
            memo = next(memos_left, None)
            if memo is None:
                drawn.remove(memos_left)
            elif len(chosen) < wanted:
                chosen.append(memo)
    return chosen


PARTS = {"tune": tune_takes, "report": report_takes}
