"""The trade's adapter learnt anew: ``python -m tests.bench.adapter [--voices DIR] [--words FILE] [--quotes DIR]
[--real DIR]``.

Windows of the open memos, of generated memos, of names and of general talk are spoken by synthetic voices (what is
there below ``--sound`` is kept), disturbed anew each time, and shown to the base weights, to which low-rank factors are
learnt. ``--words`` is a file of a word a line, as Debian's wamerican has one: its words are said as names.
``--quotes`` is the folder of Debian's fortunes, from which the general talk comes; ``--real`` that of a professional
speaker's prompts, as Debian's asterisk-core-sounds-en-wav has them. Both are to be heard as the bare weights hear
them. The factors are written to ``--out``; whoever wants to ship them puts them in the place of
``pipeline/hearing/adapter.npz.z``.

Adds to ``results/adapter.csv`` a row for each set that is held out (two voices, general talk, windows in voices that
are learnt from, real prompts): its loss, in nats a word piece, with the bare weights and with the factors as they were
written, in clean and in disturbed sound. Needs torch, which nothing else here does.
"""

from __future__ import annotations

import argparse
import errno
import os
import sys
import tempfile
import time
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from typing import Any, NamedTuple

from pipeline.errors import ClinchbookError
from pipeline.hearing.weights import weights_folder
from pipeline.vocabulary import load_vocabulary
from tests.bench.adapter.batches import Batch, Batches
from tests.bench.adapter.course import Course
from tests.bench.adapter.exporting import at_strength, export, rounded
from tests.bench.adapter.names import names_to_learn, names_windows
from tests.bench.adapter.prompts import Prompts
from tests.bench.adapter.real import real_readings
from tests.bench.adapter.saying import LONGEST_S, path_of, say
from tests.bench.adapter.voices import Reading, held_out, kept_same, learnt_from, readings
from tests.bench.adapter.weights import read
from tests.bench.adapter.windows import GENERAL, MEMO, Window, all_windows, open_memos, swappable
from tests.bench.ending import ended
from tests.bench.hearing.conditions import seconds_of
from tests.bench.hearing.making import SOUND
from tests.bench.history import add_rows, print_rows

COLUMNS = (
    *("device", "torch", "windows", "hours", "learnt_from", "kept_same", "rank", "steps", "strength", "learning_s"),
    *("set", "held", "bare_clean", "bare_disturbed", "clean", "disturbed"),
)
NO_TORCH = "Learning needs torch (2.11 on a graphics card and 2.5.1 on a processor were used): pip install torch."
NO_WORDS = (
    "Names are learnt from the memos alone: more need --words FILE, Debian's wamerican "
    "(/usr/share/dict/american-english)."
)
NO_QUOTES = (
    "General talk is left out: it needs --quotes DIR, the folder of Debian's fortunes (/usr/share/games/fortunes)."
)
NO_REAL = (
    "Real prompts are left out: they need --real DIR, the folder of Debian's asterisk-core-sounds-en-wav "
    "(/usr/share/asterisk/sounds)."
)
STRENGTH = 0.85  # why not all of it, section 6 of DEVELOPERS.md says
_NAMES_WINDOWS = 1700
_AT_ONCE = 20  # readings whose loss is computed together
_HELD_SEED = 3
_TOLD_EVERY = 200  # steps

Losses = dict[str, tuple[float, float]]  # of each set: in clean sound, in disturbed sound


class TorchParts(NamedTuple):
    """The modules that need torch, and where it computes."""

    learning: Any
    whisper: Any
    device: str


@dataclass(frozen=True)
class Learner:
    """The network, how it learns, and the maker of what it learns from."""

    learning: Any
    network: Any
    batches: Batches

    def losses(self, sets: Mapping[str, Sequence[Reading]]) -> Losses:
        """The loss over each set, as it was spoken and disturbed."""
        return {
            name: (
                self.learning.loss_over(self.network, self._batches(held, disturbed=False)),
                self.learning.loss_over(self.network, self._batches(held, disturbed=True)),
            )
            for name, held in sets.items()
        }

    def _batches(self, held: Sequence[Reading], disturbed: bool) -> Iterator[Batch]:
        made = self.batches.disturbed if disturbed else self.batches.plain
        for at in range(0, len(held), _AT_ONCE):
            yield made(held[at : at + _AT_ONCE], _HELD_SEED * 1_000_000 + at)

    def learn(self, course: Course, said: Sequence[Reading], same: Sequence[Reading]) -> float:
        """Learn, telling the loss now and then; the seconds that it took."""
        began = time.monotonic()
        lately: list[float] = []

        def watch(step: int, loss: float) -> None:
            lately.append(loss)
            if step % _TOLD_EVERY == 0 or step == course.steps:
                print(f"step {step}: loss {sum(lately) / len(lately):.4f}", file=sys.stderr, flush=True)
                lately.clear()

        self.learning.learn(self.network, course, self.batches.learning(said, same, course), watch)
        return time.monotonic() - began


def arguments(given: Sequence[str] | None) -> argparse.Namespace:
    """What to learn from, and how."""
    parser = argparse.ArgumentParser(
        prog="python -m tests.bench.adapter",
        description=__doc__,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("--voices", type=Path, metavar="DIR", help="the folder of say.py, to speak what is missing")
    parser.add_argument("--sound", type=Path, metavar="DIR", default=SOUND, help="where sound is kept: %(default)s")
    parser.add_argument("--words", type=Path, metavar="FILE", help="a word a line, to be said as names")
    parser.add_argument("--quotes", type=Path, metavar="DIR", help="the folder of Debian's fortunes, for general talk")
    parser.add_argument("--real", type=Path, metavar="DIR", help="a folder of a person's prompts, WAV files")
    parser.add_argument("--steps", type=_positive, metavar="N", default=Course.steps, help="default %(default)s")
    parser.add_argument(
        "--readings", type=_positive, metavar="N", default=Course.readings, help="of a step (default %(default)s)"
    )
    parser.add_argument(
        "--strength", type=float, metavar="X", default=STRENGTH, help="times what was learnt is written (%(default)s)"
    )
    parser.add_argument("--device", choices=("cpu", "cuda"), help="default: the graphics card, where there is one")
    parser.add_argument("--processes", type=_positive, metavar="N", default=1, help="that speak at once (default 1)")
    parser.add_argument(
        "--limit", type=_positive, metavar="N", help="a trial with N readings of each voice; no rows are added"
    )
    parser.add_argument("--out", type=Path, metavar="FILE", help="default: adapter.npz.z beside the sound")
    parser.add_argument("--say-only", action="store_true", help="speak what is missing and learn nothing")
    return parser.parse_args(given)


def _positive(told: str) -> int:
    if not told.isdigit() or int(told) == 0:
        raise argparse.ArgumentTypeError(f"{told!r} is no whole number above 0")
    return int(told)


def chosen_readings(chosen: argparse.Namespace) -> list[Reading]:
    """All readings, or at most so many of each voice."""
    windows = all_windows(chosen.quotes)
    if chosen.words:
        windows += named_windows(chosen.words)
    else:
        print(NO_WORDS, file=sys.stderr)
    if not any(window.kind == GENERAL for window in windows):
        print(NO_QUOTES, file=sys.stderr)
    real: Sequence[Reading] = ()
    if chosen.real:
        real = real_readings(chosen.real, chosen.sound, [w.roster for w in windows if w.kind == MEMO], chosen.limit)
    else:
        print(NO_REAL, file=sys.stderr)
    said: dict[str, list[Reading]] = {}
    for reading in (*readings(windows), *real):
        said.setdefault(reading.speaker, []).append(reading)
    return [reading for by_one in said.values() for reading in by_one[: chosen.limit]]


def named_windows(words: Path) -> list[Window]:
    """Windows of names; raises ClinchbookError when the file of words cannot be read."""
    memos = open_memos()
    try:
        return list(names_windows(memos, names_to_learn(words, swappable(memos)), _NAMES_WINDOWS))
    except (OSError, UnicodeDecodeError) as error:
        raise ClinchbookError(f"The words for names cannot be read from {words}.") from error


def writable(out: Path) -> Path:
    """The same file; raises ClinchbookError, before anything is learnt, when it cannot be written."""
    try:
        out.parent.mkdir(parents=True, exist_ok=True)
        if out.is_dir():
            raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
        with tempfile.TemporaryFile(dir=out.parent):
            return out
    except OSError as error:
        raise ClinchbookError(f"The adapter cannot be written to {out}: {(error.strerror or '').lower()}.") from error


def torch_parts(device: str | None) -> TorchParts:
    """What needs torch, asked for before anything is spoken; raises ClinchbookError without it or without the card."""
    try:
        learning, whisper = (import_module(f"tests.bench.adapter.{name}") for name in ("learning", "whisper"))
    except ModuleNotFoundError as error:
        if error.name != "torch":
            raise
        raise ClinchbookError(NO_TORCH) from error
    return TorchParts(learning, whisper, learning.device(device))


def learner(parts: TorchParts, course: Course, sound: Path, said: Sequence[Reading]) -> Learner:
    """The network on its device, and the maker of its batches."""
    folder = Path(weights_folder())
    network = parts.whisper.Whisper(read(folder), course, parts.device)
    prompts = Prompts(folder, load_vocabulary(), swappable(open_memos()))
    return Learner(parts.learning, network, Batches(prompts, sound, said))


def run(chosen: argparse.Namespace) -> None:
    """Speak what is missing, and unless that is all that is wanted, learn."""
    out = writable(chosen.out or chosen.sound / "adapter" / "adapter.npz.z")
    parts = None if chosen.say_only else torch_parts(chosen.device)
    said = chosen_readings(chosen)
    say(said, chosen.sound, chosen.voices, chosen.processes)
    if parts:
        rows = list(learn(parts, chosen, said, out))
        print_rows(COLUMNS, rows)
        if chosen.limit is None:
            add_rows("adapter", COLUMNS, rows)
        print(f"The adapter is in {out}.")


def learn(parts: TorchParts, chosen: argparse.Namespace, said: Sequence[Reading], out: Path) -> Iterator[list[object]]:
    """Learn, write the factors to ``out``, and give the rows of the table."""
    lengths = {reading: seconds_of(path_of(reading, chosen.sound)) for reading in said}
    short = [reading for reading, seconds in lengths.items() if seconds <= LONGEST_S]
    held, learnt, same = held_out(short), learnt_from(short), kept_same(short)
    if not learnt:
        raise ClinchbookError("There is nothing to learn from: nothing fits into half a minute, or all is held out.")
    course = Course(steps=chosen.steps, readings=chosen.readings)
    pupil = learner(parts, course, chosen.sound, learnt)
    with pupil.network.bare():
        bare = pupil.losses(held)
    learning_s = pupil.learn(course, learnt, same)
    factors = at_strength(pupil.network.factors(), chosen.strength)
    export(factors, out)
    pupil.network.take(rounded(factors))
    hours = f"{sum(lengths[reading] for reading in short) / 3600:.2f}"
    sound_told = (parts.device, parts.learning.VERSION, len(short), hours, len(learnt), len(same))
    course_told = (course.rank, course.steps, chosen.strength, round(learning_s))
    yield from table((*sound_told, *course_told), held, bare, pupil.losses(held))


def table(
    run_told: Sequence[object], held: Mapping[str, Sequence[Reading]], bare: Losses, adapted: Losses
) -> Iterator[list[object]]:
    """A row a set: what is the same of all, the set and its size, and four losses."""
    for name, found in held.items():
        yield [*run_told, name, len(found), *(f"{loss:.4f}" for loss in (*bare[name], *adapted[name]))]


def main(given: Sequence[str] | None = None) -> int:
    """Learn; 1, with one sentence, when something is missing."""
    return ended(lambda: run(arguments(given)))


if __name__ == "__main__":
    sys.exit(main())
