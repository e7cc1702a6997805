"""``python -m tests.generator --seed N --count 5000``: compose memos, read them back, report what came of it."""

from __future__ import annotations

import argparse
from collections import Counter

from pipeline.vocabulary import load_vocabulary
from tests.generator.checking import Tally, check
from tests.generator.words import fit_forms


def main() -> None:
    """Parse the arguments, run and print."""
    parser = argparse.ArgumentParser(prog="python -m tests.generator", description=__doc__)
    parser.add_argument("--seed", type=int, default=1, help="the memos follow from this number alone")
    parser.add_argument("--count", type=int, default=5000, help="how many memos")
    parser.add_argument(
        "--show", type=int, default=3, help="how many wrong readings to print of each kind of statement"
    )
    chosen = parser.parse_args()
    vocabulary = load_vocabulary()
    tally = check(chosen.seed, chosen.count, vocabulary)
    print(f"seed {chosen.seed}, {tally.memos} memos, {tally.said} facts said, {tally.read} read, {tally.right} right")
    print(f"F1 {tally.f1:.4f}, exact memos {tally.exact_share:.4f}, memos with a wrong horse {len(tally.wrong_horses)}")
    for memo, visits in tally.wrong_horses[: chosen.show]:
        read = [(visit.horse, str(visit.horse_match)) for visit in visits]
        print(f"horses {memo.horses}, read {read}\n    in: {memo.text}")
    _report_kinds(tally, chosen.show)
    unsaid = Counter(name for name, _, form in fit_forms(vocabulary) if (name, form) not in tally.forms)
    print(f"forms said: {len(tally.forms)}; not said, for want of a natural frame: {dict(unsaid)}")
    print(f"forms never read right: {len(tally.forms_never_right)}")
    for name, form in tally.forms_never_right:
        print(f"    {name}: {form}")


def _report_kinds(tally: Tally, show: int) -> None:
    """The kinds of statement, the most often misread first, with examples."""
    wrong = Counter(miss.placed.statement.kind for miss in tally.misses)
    for kind, count in wrong.most_common():
        print(f"{kind}: {count} of {tally.kinds[kind]} misread")
        for miss in [m for m in tally.misses if m.placed.statement.kind == kind][:show]:
            print(f"  {miss.told()}\n    in: {miss.memo.text}")


if __name__ == "__main__":
    main()
