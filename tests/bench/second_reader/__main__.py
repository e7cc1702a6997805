"""How well the second reader knows what was read wrongly: ``python -m tests.bench.second_reader --unknown FILE …``.

Reads corpora that neither reader knows, and tells how many of the facts that were read wrong are among those that it
finds least likely (wrong in foot, value or status, not where only the horse is); of the shipped one a row goes to
``results/second_reader.csv``. With ``--out FILE`` it is learnt anew first, from the
open memos, from what readers and ears that did not know them made of them, and from the readings of the project's own
tests, if ``--cases`` has them (``tests/bench/second_reader/cases.py`` writes that file); memos whose id begins with one
of ``--held`` are left out. Whoever wants to ship what was learnt writes it to ``pipeline/judging/second_reader.onnx``.
Learning needs torch and onnx, which nothing else here does but the adapter's torch; the shipped one was learnt on a
graphics card in two minutes.
"""

from __future__ import annotations

import argparse
import random
import sys
from collections.abc import Sequence
from pathlib import Path

from pipeline.judging.second_reader import STATUSES, UNKNOWN, SecondReader, numbered, second_reader
from pipeline.judging.surroundings import Surroundings
from pipeline.reading import Reader
from pipeline.record import Transcript
from pipeline.vocabulary import load_vocabulary
from tests.bench.history import add_rows, print_rows
from tests.bench.judging.examples import read
from tests.bench.judging.opining import meaning, own_gold
from tests.bench.second_reader.gathering import lessons, once, words_of
from tests.facts.scoring import load_gold

COLUMNS = ("memos", "facts", "wrong", "in_2_percent", "in_5_percent", "in_8_percent")
SHARES = (0.02, 0.05, 0.08)
NO_TORCH = "Learning needs torch and onnx (2.11 and 1.23.2 were used): pip install torch onnx."
_LARGE, _SMALL = (96, 128, 64), (32, 48, 32)  # vector, state and hidden
_ROUNDS = (13, 14)


def learnt(cases: Path | None, held: Sequence[str], device: str, out: Path) -> None:
    """Learn and write the net."""
    import torch

    from tests.bench.second_reader.exporting import export
    from tests.bench.second_reader.learning import items, learn, softened
    from tests.bench.second_reader.net import Net

    given = once(lessons(cases), held)
    words, slots = words_of(given), sorted({told.slot for one in given for told in one.told})
    found = items(given, numbered(words), {slot: number for number, slot in enumerate(slots)})
    print(f"{len(given)} memos and cases, {sum(len(one.told) for one in given)} facts, {len(words)} words.")
    torch.manual_seed(1)
    random.seed(1)
    large = learn(Net(len(words) + UNKNOWN + 1, len(slots), _LARGE, 0.5), found, _ROUNDS[0], 2e-3, device)
    small = Net(len(words) + UNKNOWN + 1, len(slots), _SMALL, 0.15)
    small = learn(small, found, _ROUNDS[1], 4e-3, device, softened(large, found, device))
    told = {"words": " ".join(words), "slots": " ".join(slots)}
    export({name: kept.cpu().numpy() for name, kept in small.state_dict().items()}, told, out)


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
                chance = views[id(fact)].statuses[STATUSES.index(fact.status)]
                chances.append((chance, meaning(fact, own, everything) != fact.status))
    chances.sort()
    caught = [sum(wrong for _, wrong in chances[: int(share * len(chances))]) for share in SHARES]
    return (memos, len(chances), sum(wrong for _, wrong in chances), *caught)


def main(given: Sequence[str] | None = None) -> int:
    """Run what was asked for."""
    parser = argparse.ArgumentParser(
        prog="python -m tests.bench.second_reader", description=(__doc__ or "").split("\n")[0]
    )
    parser.add_argument("--cases", type=Path, metavar="FILE", help="readings of tests that passed")
    parser.add_argument("--held", nargs="+", default=[], metavar="ID", help="beginnings of ids that are left out")
    parser.add_argument("--unknown", nargs="+", type=Path, default=[], metavar="FILE", help="corpora nobody knows")
    parser.add_argument("--device", default="cpu", help="cpu or cuda")
    parser.add_argument("--out", type=Path, metavar="FILE", help="learn anew, and where the net goes")
    chosen = parser.parse_args(given)
    if chosen.out:
        try:
            learnt(chosen.cases, chosen.held, chosen.device, chosen.out)
        except ModuleNotFoundError as error:
            if error.name not in ("torch", "onnx"):
                raise
            print(NO_TORCH, file=sys.stderr)
            return 1
    if chosen.unknown:
        net = SecondReader(chosen.out.read_bytes()) if chosen.out else second_reader()
        rows = [row(net, chosen.unknown)]
        if not chosen.out:
            add_rows("second_reader", COLUMNS, rows)
        print_rows(COLUMNS, rows)
    return 0


if __name__ == "__main__":
    sys.exit(main())
