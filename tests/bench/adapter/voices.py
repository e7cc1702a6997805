"""Who says which window, and which readings are held out: two voices, windows of the others, names, real prompts.

The voices of the hearing bench's report are never among them.
"""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from hashlib import sha256

from tests.bench.adapter.windows import GENERAL, MEMO, NAMES, REAL, SEED, Window

HELD_VOICES = ("kal16", "af_sarah")  # validated with, never learnt from
TURNED = "af_sarah, British or low"
# How often each is drawn of a hundred, the rest falling to the formant voices, each of another accent.
_QUICK = {"hibari_heart": 26, "slt": 17, "awb": 16, "kal16": 9, "pico_us": 20}
_ACCENTS = ("us", "us_m3", "us_f2", "us_annie", "gb", "rp", "scot", "lancs", "wmids", "carib")
_FORMANT = tuple(f"espeak_{accent}" for accent in _ACCENTS)
_FORMANT_SHARE = 0.1
# The most human ones take longest to speak: a part of the memos' windows is said by them as well.
_SPEAKERS = ("alloy", "aoede", "heart", "jessica", "kore", "nicole", "river", "sarah", "sky")
_HUMAN = tuple(f"af_{name}" for name in _SPEAKERS)
_HUMAN_SHARE = 0.02
_BLENDED_SHARE = 0.5  # of those are said by a blend of two
# They speak American; told British sounds, or with their sound drawn out so that it lies as low as a man's, they stand
# for the voices that are missing here. Of memos' windows, and of names'.
_TURNED_SHARES = {MEMO: 0.06, NAMES: 0.05}
_BRITISH_SHARE = 0.75  # of those
_DEPTHS = (1.0, 1.0, 0.88, 0.84, 0.8)
# Of the memos' windows, to say all of which in the quick voices would take thirty hours of sound.
_QUICK_SHARE = 0.2
_SPEEDS = (0.9, 0.95, 1.0, 1.0, 1.05, 1.15, 1.25, 1.35)
_HUMAN_SPEEDS = (0.9, 1.0, 1.1, 1.25)
# Of each set that is held out: how many at most, and which share of those that might be.
_HELD = {
    "kal16": (60, Fraction(1)),
    "af_sarah": (40, Fraction(1)),
    TURNED: (40, Fraction(1)),
    GENERAL: (20, Fraction(1, 4)),
    "windows": (60, Fraction(1, 4)),
    NAMES: (60, Fraction(1, 4)),
    REAL: (120, Fraction(2, 5)),
}
_HUMAN_TIMES = 2  # so often is each human reading learnt from, for once of the others


@dataclass(frozen=True)
class Reading:
    """A window in one voice at one speed, 1 being the voice's own; or what a person said, once, in a ``take``.

    ``british`` is with British sounds, ``depth`` times how high the voice's own sound lies.
    """

    window: Window
    voice: str
    speed: float
    take: str = ""
    british: bool = False
    depth: float = 1.0

    @cached_property
    def key(self) -> str:
        """A name for its file that changes with what is said, by whom, how fast and in which take."""
        turned = f"{self.depth:g} {self.british} " if self.turned else ""
        told = f"{turned}{self.voice} {self.speed:g} {self.window.text}{self.take}"
        return sha256(told.encode("utf-8")).hexdigest()[:16]

    @property
    def speaker(self) -> str:
        """The voice; of a blend the first."""
        return self.voice.partition("*")[0]

    @property
    def turned(self) -> bool:
        """Whether it is said otherwise than the voice would."""
        return self.british or self.depth != 1.0

    @property
    def human(self) -> bool:
        """Whether one of the slow voices says it."""
        return self.voice.startswith("af_")


def readings(windows: Sequence[Window]) -> list[Reading]:
    """Every window in a voice drawn for it, and some once more in a slow one, in the order of their keys."""
    return sorted({r.key: r for window in windows for r in _readings_of(window)}.values(), key=lambda r: r.key)


def _readings_of(window: Window) -> Iterator[Reading]:
    drawn = random.Random(f"{SEED} {window.text}")
    voice = drawn.choices(tuple(_QUICK), tuple(_QUICK.values()))[0]
    voice = drawn.choice(_FORMANT) if drawn.random() < _FORMANT_SHARE else voice
    speed = drawn.choice(_SPEEDS)
    if window.kind != MEMO or drawn.random() < _QUICK_SHARE:
        yield Reading(window, voice, speed)
    if window.kind == MEMO and drawn.random() < _HUMAN_SHARE:
        yield Reading(window, _slow(drawn), drawn.choice(_HUMAN_SPEEDS))
    if drawn.random() < _TURNED_SHARES.get(window.kind, 0.0):
        british = drawn.random() < _BRITISH_SHARE
        depth = drawn.choice(_DEPTHS) if british else min(_DEPTHS)
        yield Reading(window, _slow(drawn), drawn.choice(_HUMAN_SPEEDS), british=british, depth=depth)


def _slow(drawn: random.Random) -> str:
    return _blend(drawn) if drawn.random() < _BLENDED_SHARE else drawn.choice(_HUMAN)


def _blend(drawn: random.Random) -> str:
    """Two slow voices in one, by weights; none that is held out."""
    pair = drawn.sample([voice for voice in _HUMAN if voice not in HELD_VOICES], 2)
    return "+".join(f"{voice}*{drawn.randint(1, 3)}" for voice in pair)


def every_voice() -> set[str]:
    """All voices that may be drawn, alone or in a blend."""
    return {*_QUICK, *_FORMANT, *_HUMAN}


def held_out(said: Sequence[Reading]) -> dict[str, list[Reading]]:
    """What the losses are told of, by name: two voices, general sentences, windows in voices learnt from, real ones.

    None has more than its count in ``_HELD``, nor more than its share of what would otherwise be learnt from; sets of
    nothing are left out.
    """
    sets: dict[str, list[Reading]] = {name: [] for name in _HELD}
    for reading in said:
        name = _held_as(reading)
        if name:
            sets[name].append(reading)
    counts = {name: min(most, int(share * len(sets[name]))) for name, (most, share) in _HELD.items()}
    return {name: sets[name][:count] for name, count in counts.items() if count}


def _held_as(reading: Reading) -> str | None:
    """The set that a reading may be held out for."""
    if reading.voice in HELD_VOICES:
        return TURNED if reading.turned else reading.voice
    if reading.window.kind in (NAMES, GENERAL, REAL):
        return reading.window.kind
    return "windows" if reading.window.kind == MEMO and reading.voice in _QUICK else None


def learnt_from(said: Sequence[Reading]) -> list[Reading]:
    """All but real prompts and what is held out, and nothing by a voice that is; the human readings several times."""
    left = [reading for reading in _not_held(said) if reading.window.kind != REAL]
    return [reading for reading in left for _ in range(_HUMAN_TIMES if reading.human else 1)]


def kept_same(said: Sequence[Reading]) -> list[Reading]:
    """Talk of no trade, to be heard as the bare weights hear it: general and real, but for what is held out."""
    return [reading for reading in _not_held(said) if reading.window.kind in (GENERAL, REAL)]


def _not_held(said: Sequence[Reading]) -> list[Reading]:
    """What is not held out: no window that is, in another voice either, and nothing by a voice that is."""
    voices = (*HELD_VOICES, TURNED)
    held = {r.window.text for name, found in held_out(said).items() if name not in voices for r in found}
    return [r for r in said if r.voice not in HELD_VOICES and r.window.text not in held]
