"""How well the second reader knows what was read wrongly: ``python -m tests.bench.second_reader --unknown FILE …``.

Reads corpora that neither reader knows, and tells how many of the facts that were read wrong are among those that it
finds least likely (wrong in foot, value or status, not where only the horse is); of the shipped one a row goes to
``results/second_reader.csv``.

With ``--out FILE`` it is learnt anew first: from the open memos, from what readers and ears that did not know them made
of them, from readers that lack rules (so many times as ``--lacking`` says), and from the readings of the project's own
tests, if ``--cases`` has them (``tests/bench/second_reader/cases.py`` writes that file); memos whose id begins with one
of ``--held`` are left out. Whoever wants to ship what was learnt writes it to ``pipeline/judging/second_reader.onnx``.
``--left-out`` learns five more, each without a fifth of the memos and the cases like them, and keeps beside the
readings that judging is fitted on what the one makes of them that did not know the memo.

Learning needs torch and onnx, which nothing else here does but the adapter's torch. Each of these is learnt from three
large nets first, one to two minutes each on a graphics card.
"""

from __future__ import annotations

import argparse
import random
import sys
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from hashlib import sha256
from importlib.util import find_spec
from pathlib import Path
from tempfile import TemporaryDirectory

from pipeline.judging.second_reader import UNKNOWN, SecondReader, numbered, second_reader
from pipeline.judging.surroundings import Surroundings
from pipeline.reading import Reader
from pipeline.record import Transcript
from pipeline.vocabulary import load_vocabulary
from tests.bench.history import add_rows, print_rows
from tests.bench.judging.examples import read
from tests.bench.judging.gathering import open_memos, past_readings, renew_seconds
from tests.bench.judging.opining import meaning, own_gold
from tests.bench.second_reader.gathering import Lesson, lessons, once, words_of
from tests.bench.second_reader.lacking import ROUNDS
from tests.facts.scoring import load_gold

COLUMNS = ("memos", "facts", "wrong", "in_2_percent", "in_5_percent", "in_8_percent")
SHARES = (0.02, 0.05, 0.08)
NO_TORCH = "Learning needs torch and onnx (2.11 and 1.23.2 were used): pip install torch onnx."
_LARGE, _SMALL = (96, 128, 64), (32, 48, 32)  # vector, state and hidden
_ROUNDS = (13, 18)
_LARGE_ONES = 3  # what they make of a question together is what the small one learns from
_FOLDS = 5
_IN_A_ROW = 6  # words that a case shares with a memo that it may have been made from


@dataclass(frozen=True)
class Taught:
    """All that nets are learnt from, and the words and slots that they know."""

    lessons: list[Lesson]
    words: list[str]
    slots: list[str]

    def without(self, left_out: Collection[str], memos: Collection[str]) -> Taught:
        """The same without these memos, and without the cases that share words in a row with one of them.

        ``memos`` are the names of all memos; every other lesson is a case.
        """
        theirs = {run for one in self.lessons if one.name in left_out for run in _runs(one)}
        kept = (one for one in self.lessons if one.name not in left_out)
        return replace(self, lessons=[one for one in kept if one.name in memos or theirs.isdisjoint(_runs(one))])


def _runs(one: Lesson) -> set[tuple[str, ...]]:
    words = [word for word in one.words if word[0].isalnum()]
    return {tuple(words[first : first + _IN_A_ROW]) for first in range(len(words) - _IN_A_ROW + 1)}


def to_learn_from(cases: Path | None, lacking: int, held: Sequence[str]) -> Taught:
    """Gather it."""
    given = once(lessons(cases, lacking), held)
    slots = sorted({told.slot for one in given for told in one.told})
    found = Taught(given, words_of(given), slots)
    print(f"{len(given)} memos and cases, {sum(len(one.told) for one in given)} facts, {len(found.words)} words.")
    return found


def learnt(from_: Taught, device: str, out: Path) -> None:
    """Learn from all of it and write the net."""
    import torch

    from tests.bench.second_reader.exporting import export
    from tests.bench.second_reader.learning import averaged, items, learn, softened
    from tests.bench.second_reader.net import Net

    found = items(from_.lessons, numbered(from_.words), {slot: number for number, slot in enumerate(from_.slots)})
    counts = len(from_.words) + UNKNOWN + 1, len(from_.slots)
    large = []
    for seed in range(1, _LARGE_ONES + 1):
        torch.manual_seed(seed)
        random.seed(seed)
        net = learn(Net(*counts, _LARGE, 0.5), found, _ROUNDS[0], 2e-3, device)
        large.append(softened(net, found, device))
    torch.manual_seed(1)
    random.seed(1)
    small = learn(Net(*counts, _SMALL, 0.15), found, _ROUNDS[1], 4e-3, device, averaged(large))
    told = {"words": " ".join(from_.words), "slots": " ".join(from_.slots)}
    export({name: kept.cpu().numpy() for name, kept in small.state_dict().items()}, told, out)


def fold_of(memo: str) -> int:
    """Which of the nets does not learn from an open memo."""
    return int(sha256(memo.encode()).hexdigest(), 16) % _FOLDS


def left_out(from_: Taught, device: str) -> None:
    """Learn a net without each fifth of the open memos and keep what it makes of the readings of those."""
    memos = {*open_memos(), *(past.gold["id"] for past in past_readings())}
    with TemporaryDirectory() as folder:
        nets = []
        for fold in range(_FOLDS):
            out = Path(folder) / f"{fold}.onnx"
            learnt(from_.without({memo for memo in memos if fold_of(memo) == fold}, memos), device, out)
            nets.append(SecondReader(out.read_bytes()))
    renew_seconds(lambda memo: nets[fold_of(memo)])


def row(net: SecondReader, unknown: Sequence[Path]) -> tuple[object, ...]:
    """How many of the wrong facts are among those that it finds least likely as they were read."""
    reader, memos = Reader(load_vocabulary()), 0
    chances: list[tuple[float, bool]] = []
    for gold in (gold for path in unknown for gold in load_gold(path)):
        memos += 1
        everything = [fact for visit in gold["visits"] for fact in visit["facts"]]
        visits = read(reader, gold, Transcript(text=gold["text"]))
        views = net.views(Surroundings(gold["text"]), [fact for visit in visits for fact in visit.facts])
        for visit in visits:
            own = own_gold(gold, visit)
            for fact in (fact for fact in visit.facts if id(fact) in views):
                chance = views[id(fact)].of_status(fact.status)
                chances.append((chance, meaning(fact, own, everything) != fact.status))
    chances.sort()
    caught = [sum(wrong for _, wrong in chances[: int(share * len(chances))]) for share in SHARES]
    return (memos, len(chances), sum(wrong for _, wrong in chances), *caught)


def learn_anew(chosen: argparse.Namespace) -> None:
    """Learn the one to ship, or those that leave memos out, or both."""
    taught = to_learn_from(chosen.cases, chosen.lacking, chosen.held)
    if chosen.out:
        learnt(taught, chosen.device, chosen.out)
    if chosen.left_out:
        left_out(taught, chosen.device)


def main(given: Sequence[str] | None = None) -> int:
    """Run what was asked for."""
    parser = argparse.ArgumentParser(
        prog="python -m tests.bench.second_reader", description=(__doc__ or "").split("\n")[0]
    )
    parser.add_argument("--cases", type=Path, metavar="FILE", help="readings of tests that passed")
    parser.add_argument("--lacking", type=int, default=ROUNDS, metavar="N", help="readings by readers that lack rules")
    parser.add_argument("--held", nargs="+", default=[], metavar="ID", help="beginnings of ids that are left out")
    parser.add_argument("--unknown", nargs="+", type=Path, default=[], metavar="FILE", help="corpora nobody knows")
    parser.add_argument("--device", default="cpu", help="cpu or cuda")
    parser.add_argument("--out", type=Path, metavar="FILE", help="learn anew, and where the net goes")
    parser.add_argument("--left-out", action="store_true", help="learn five that each leave a fifth out")
    chosen = parser.parse_args(given)
    if chosen.out or chosen.left_out:
        if any(find_spec(name) is None for name in ("torch", "onnx")):
            print(NO_TORCH, file=sys.stderr)
            return 1
        learn_anew(chosen)
    if chosen.unknown:
        net = SecondReader(chosen.out.read_bytes()) if chosen.out else second_reader()
        rows = [row(net, chosen.unknown)]
        if not chosen.out:
            add_rows("second_reader", COLUMNS, rows)
        print_rows(COLUMNS, rows)
    return 0


if __name__ == "__main__":
    sys.exit(main())
