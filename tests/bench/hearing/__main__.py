"""The hearing bench: recognisers beside each other on spoken memos, on real readings, and on noise.

``python -m tests.bench.hearing [--voices DIR]``. Memos of the corpora are spoken once by synthetic voices and kept
below ``--sound``, and so is what each recogniser heard, so that scoring again takes seconds. Adds to
``results/hearing.csv`` and ``results/hearing_noise.csv``. Five configurations, all with the base weights, all behind
the same reader and judge: ``plain``, faster-whisper at its own defaults; ``unbiased``, this project's hearing without
the trade's words and the roster's names; ``unverified``, told them, but without weighing them on the sound;
``unadapted``, weighing them; and ``ours``, which alone has the trade's adapter.

The columns: word error rate (how words are levelled is told in ``words.py``); the share of the trade's words that were
lost; the share of trade terms and of roster names that were heard; the share of heard trade terms that nobody said;
facts F1 and horses (``tests/facts/scoring.py``); the share of facts that are flagged, and that are wrong without a
flag; seconds of one core for a second of sound, where the processor did the work. ``--device cuda`` hears on a graphics
card, whose roundings differ.
"""

from __future__ import annotations

import argparse
import sys
from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path

from pipeline.ingest import load_reader
from pipeline.vocabulary import load_vocabulary
from tests.bench.ending import ended
from tests.bench.hearing.figures import COLUMNS, Figures
from tests.bench.hearing.filling import Job, fill
from tests.bench.hearing.making import SOUND, make, small_talk, speak_small_talk
from tests.bench.hearing.noise_memos import NOISE_COLUMNS, noise_jobs, noise_rows
from tests.bench.hearing.real import DATA, FOLDERS, HOW_TO_GET_READINGS, real_figures, real_jobs
from tests.bench.hearing.recognising import CONFIGURATIONS, DEVICES, Listener, ears
from tests.bench.hearing.running import Bench, memo_jobs
from tests.bench.hearing.takes import CONDITIONS, PARTS, Take
from tests.bench.hearing.terms import trade_terms
from tests.bench.history import add_rows, print_rows

SETS = ("tune", "report", "real", "noise")


def arguments(given: Sequence[str] | None) -> argparse.Namespace:
    """What to measure."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.hearing", description=(__doc__ or "").split("\n")[0])
    parser.add_argument("--sets", nargs="+", choices=SETS, default=["tune", "report", "real", "noise"])
    parser.add_argument("--conditions", nargs="+", choices=CONDITIONS, default=list(CONDITIONS))
    parser.add_argument("--configurations", nargs="+", choices=CONFIGURATIONS, default=list(CONFIGURATIONS))
    parser.add_argument("--limit", type=int, metavar="N", help="only the first N takes of each condition")
    parser.add_argument(
        "--voices", type=Path, metavar="DIR", help="the folder of say.py, to make sound that is missing"
    )
    parser.add_argument("--sound", type=Path, metavar="DIR", default=SOUND)
    parser.add_argument("--threads", type=int, default=1, metavar="N", help="cores for each recogniser (default 1)")
    parser.add_argument("--device", choices=DEVICES, default="cpu", help="the processor, or a graphics card")
    parser.add_argument("--processes", type=int, default=1, metavar="N", help="files heard at once (default 1)")
    parser.add_argument("--by-voice", action="store_true", help="a row for each voice as well")
    parser.add_argument("--confusions", action="store_true", help="only list the commonest mishearings of tune")
    parser.add_argument("--make-only", action="store_true", help="make the sound and hear nothing")
    return parser.parse_args(given)


def takes_of(part: str, conditions: Sequence[str], limit: int | None) -> list[Take]:
    """The takes of a set under these conditions, at most ``limit`` of each."""
    counted: Counter[str] = Counter()
    chosen = []
    for take in PARTS[part]():
        if take.condition in conditions and (limit is None or counted[take.condition] < limit):
            counted[take.condition] += 1
            chosen.append(take)
    return chosen


def memo_rows(
    bench: Bench, listeners: Sequence[Listener], takes: Sequence[Take], by_voice: bool
) -> Iterator[list[str]]:
    """A row a condition and configuration, then, when wanted, one a voice."""
    part = takes[0].part
    for condition in dict.fromkeys(take.condition for take in takes):
        chosen = [take for take in takes if take.condition == condition]
        for listener in listeners:
            yield [part, condition, "all", *_ear(listener), *bench.figures(chosen, listener).row()]
            for voice in sorted({take.voice for take in chosen}) if by_voice else ():
                spoken = [take for take in chosen if take.voice == voice]
                yield [part, condition, voice, *_ear(listener), *bench.figures(spoken, listener).row()]


def _ear(listener: Listener) -> tuple[str, str]:
    return listener.ear.name, listener.ear.device


def real_rows(listeners: Sequence[Listener]) -> Iterator[list[str]]:
    """A row a folder of readings and configuration."""
    if not DATA.is_dir():
        print(HOW_TO_GET_READINGS, file=sys.stderr)
        return
    for folder in FOLDERS:
        for listener in listeners:
            yield ["real", folder, "all", *_ear(listener), *real_figures(folder, listener).row()]


def tell_confusions(figures: Figures, most: int = 20) -> None:
    """The commonest stretches with a trade word that were heard otherwise."""
    for (said, heard), count in figures.counts.confusions.most_common(most):
        print(f"{count:3}  {said} -> {heard}")


def run(chosen: argparse.Namespace) -> None:
    """Make what sound is missing, then measure and tell."""
    parts = [part for part in ("tune", "report") if part in chosen.sets]
    takes = {part: takes_of(part, chosen.conditions, chosen.limit) for part in parts}
    for part in parts:
        make(takes[part], chosen.sound, chosen.voices)
    if "noise" in chosen.sets:
        prepare_small_talk(chosen.sound, chosen.voices)
    if chosen.make_only:
        return
    if chosen.processes > 1:
        jobs = jobs_of([take for part in parts for take in takes[part]], chosen)
        fill(jobs, chosen.configurations, chosen.sound / "heard", chosen.device, chosen.processes)
    vocabulary = load_vocabulary()
    bench = Bench(vocabulary, load_reader(vocabulary), trade_terms(vocabulary), chosen.sound)
    names = chosen.configurations
    heard_by = ears(names, vocabulary, chosen.threads, chosen.device)
    listeners = [Listener(ear, chosen.sound / "heard") for ear in heard_by]
    if chosen.confusions:
        for listener in listeners:
            print(f"{listener.ear.name}:")
            tell_confusions(bench.figures(takes_of("tune", ["clean"], chosen.limit), listener))
        return
    rows = [row for part in parts for row in memo_rows(bench, listeners, takes[part], chosen.by_voice)]
    rows += real_rows(listeners) if "real" in chosen.sets else []
    tell("hearing", ("set", "condition", "voice", "configuration", "device", *COLUMNS), rows)
    if "noise" in chosen.sets:
        tell("hearing_noise", NOISE_COLUMNS, noise_rows(bench, listeners))


def jobs_of(takes: Sequence[Take], chosen: argparse.Namespace) -> list[Job]:
    """Everything that the chosen sets need heard."""
    jobs = memo_jobs(takes, chosen.sound)
    jobs += real_jobs() if "real" in chosen.sets else []
    return jobs + (noise_jobs(chosen.sound) if "noise" in chosen.sets else [])


def prepare_small_talk(sound: Path, voices: Path | None) -> None:
    """Speak what other voices say in the noise; without voices that noise is left out, which is said."""
    if voices:
        speak_small_talk(sound, voices)
    elif not small_talk(sound):
        print("The noise of other voices is left out: it needs --voices.", file=sys.stderr)


def tell(name: str, columns: Sequence[str], rows: Sequence[Sequence[str]]) -> None:
    """Print the rows and put them behind the earlier ones."""
    if rows:
        print_rows(columns, rows)
        add_rows(name, columns, rows)


def main(given: Sequence[str] | None = None) -> int:
    """Run the bench; 1, with one sentence, when something is missing."""
    return ended(lambda: run(arguments(given)))


if __name__ == "__main__":
    sys.exit(main())
