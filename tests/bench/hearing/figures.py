"""The figures of one configuration over some takes: words, trade terms, names, facts, time."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Any

import jiwer

from pipeline.record import Visit
from tests.bench.hearing.recognising import Hearing
from tests.bench.hearing.terms import Terms, names_in, recalled
from tests.bench.hearing.words import plain
from tests.facts.scoring import Score, score

_LONGEST_CONFUSION = 4  # a longer stretch is a loss of the thread, not a word taken for another


@dataclass
class WordCounts:
    """Counted over memos: words, trade words, terms and names, said and lost."""

    words: int = 0
    wrong: int = 0  # substituted, left out or put in
    trade_words: int = 0
    trade_wrong: int = 0  # substituted or left out
    terms: int = 0
    terms_heard: int = 0
    terms_made_up: int = 0
    names: int = 0
    names_heard: int = 0
    confusions: Counter[tuple[str, str]] = field(default_factory=Counter)

    def count(self, said: str, heard: str, terms: Terms, names: Sequence[str]) -> None:
        """Add one memo."""
        reference, written = plain(said), plain(heard)
        self._align(reference, written, terms)
        in_said, in_heard = terms.in_text(reference), terms.in_text(written)
        self.terms += in_said.total()
        self.terms_heard += recalled(in_said, in_heard)
        self.terms_made_up += (in_heard - in_said).total()
        names_said = names_in(reference, names)
        self.names += names_said.total()
        self.names_heard += recalled(names_said, names_in(written, names))

    def _align(self, said: Sequence[str], heard: Sequence[str], terms: Terms) -> None:
        self.words += len(said)
        trade = [word in terms.words for word in said]
        self.trade_words += sum(trade)
        for at, to, one, other in mistakes(said, heard):
            self.wrong += max(to - at, len(other))
            self.trade_wrong += sum(trade[at:to])
            if any(trade[at:to]) and max(len(one), len(other)) <= _LONGEST_CONFUSION:
                self.confusions[" ".join(one), " ".join(other) or "(nothing)"] += 1

    @property
    def wer(self) -> float:
        """Word error rate."""
        return self.wrong / max(self.words, 1)


def mistakes(said: Sequence[str], heard: Sequence[str]) -> Iterator[tuple[int, int, Sequence[str], Sequence[str]]]:
    """Stretches that were heard otherwise: where they begin and end in ``said``, what was said and what was heard.

    A stretch counts as many mistakes as its longer side has words, which is what an alignment with fewest edits gives.
    A compound written apart or together ("side bone") is no mistake.
    """
    for at, to, first, last in _unequal(said, heard):
        one, other = said[at:to], heard[first:last]
        if "".join(one) != "".join(other):
            yield at, to, one, other


def _unequal(said: Sequence[str], heard: Sequence[str]) -> Iterator[tuple[int, int, int, int]]:
    """Where stretches that are not equal begin and end in ``said``, then in ``heard``."""
    if not said or not heard:
        yield 0, len(said), 0, len(heard)
        return
    equal = [
        (chunk.ref_start_idx, chunk.ref_end_idx, chunk.hyp_start_idx, chunk.hyp_end_idx)
        for chunk in jiwer.process_words(" ".join(said), " ".join(heard)).alignments[0]
        if chunk.type == "equal"
    ]
    end = (len(said), len(said), len(heard), len(heard))
    for before, after in pairwise([(0, 0, 0, 0), *equal, end]):
        if before[1] < after[0] or before[3] < after[2]:
            yield before[1], after[0], before[3], after[2]


@dataclass
class Figures:
    """Everything that is told of a configuration over a set of takes."""

    files: int = 0
    counts: WordCounts = field(default_factory=WordCounts)
    pairs: list[tuple[dict[str, Any], list[Visit]]] = field(default_factory=list)
    work_s: float | None = 0.0  # None where not all of it was the processor's
    sound_s: float = 0.0

    def add(self, memo: dict[str, Any], heard: Hearing, visits: list[Visit] | None, terms: Terms) -> None:
        """One take: its gold, what was heard, and what was read from that, None when it has no facts to read."""
        self.files += 1
        self.counts.count(memo["text"], heard.transcript.text, terms, memo.get("roster", []))
        self.work_s = None if self.work_s is None or heard.work_s is None else self.work_s + heard.work_s
        self.sound_s += heard.memo.seconds or 0
        if visits is not None:
            self.pairs.append((memo, visits))

    @property
    def facts(self) -> Score:
        """All facts against gold."""
        return score(self.pairs)

    @property
    def unflagged(self) -> Score:
        """The facts that carry no flag, against gold."""
        return score([(memo, [_unflagged(visit) for visit in visits]) for memo, visits in self.pairs])

    def row(self) -> list[str]:
        """The figures in the order of COLUMNS; "" where there was nothing to count."""
        counts, facts, silent = self.counts, self.facts, self.unflagged
        return [
            str(self.files),
            f"{counts.wer:.3f}",
            _share(counts.trade_wrong, counts.trade_words),
            _share(counts.terms_heard, counts.terms),
            _share(counts.terms_made_up, counts.terms_heard + counts.terms_made_up),
            _share(counts.names_heard, counts.names),
            f"{facts.f1:.3f}" if self.pairs else "",
            f"{facts.horses}/{facts.visits}" if self.pairs else "",
            _share(facts.said - silent.said, facts.said),
            _share(silent.said - silent.right, facts.said),
            core_seconds(self.work_s, self.sound_s),
        ]


COLUMNS = (
    *("files", "wer", "trade_wer", "terms_recall", "terms_made_up", "names_recall", "f1", "horses", "flagged"),
    *("wrong_unflagged", "core_s_per_s"),
)


def core_seconds(work_s: float | None, sound_s: float) -> str:
    """Seconds of one core for a second of sound; "" where the processor did not do the work."""
    return f"{work_s / sound_s:.2f}" if work_s is not None and sound_s else ""


def _unflagged(visit: Visit) -> Visit:
    return visit.model_copy(update={"facts": [fact for fact in visit.facts if not fact.flagged]})


def _share(part: int, whole: int) -> str:
    return f"{part / whole:.3f}" if whole else ""
