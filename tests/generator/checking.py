"""Holds what the reader made of a memo against what the memo says, statement by statement."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date

from pipeline.reading import Reader
from pipeline.record import Fact, HorseMatch, RosterHorse, Transcript, Visit
from pipeline.vocabulary import Vocabulary
from tests.generator.facts import GeneratedMemo, Gold, Placed
from tests.generator.memo import Composer

DAY = date(2026, 3, 2)


@dataclass(frozen=True)
class Miss:
    """A statement that was read wrong: what it says that was missed, and what was read that it does not say."""

    memo: GeneratedMemo
    placed: Placed
    missed: tuple[Gold, ...]
    extra: tuple[Fact, ...]

    def told(self) -> str:
        """The statement, what was expected and what came, for a person."""
        missed = "; ".join(_gold_text(gold) for gold in self.missed) or "-"
        extra = "; ".join(_fact_text(fact) for fact in self.extra) or "-"
        said = self.placed.statement
        return f"[{said.kind}] {said.text}\n    missed: {missed}\n    read instead: {extra}"


@dataclass
class Tally:
    """Counts over many memos."""

    memos: int = 0
    exact: int = 0
    said: int = 0
    read: int = 0
    right: int = 0
    wrong_horses: list[tuple[GeneratedMemo, list[Visit]]] = field(default_factory=list)
    misses: list[Miss] = field(default_factory=list)
    kinds: Counter[str] = field(default_factory=Counter)
    forms: Counter[tuple[str, str]] = field(default_factory=Counter)
    forms_right: Counter[tuple[str, str]] = field(default_factory=Counter)

    @property
    def f1(self) -> float:
        """Harmonic mean of precision and recall over facts (foot, slot, value and status)."""
        return 2 * self.right / (self.said + self.read) if self.said + self.read else 0.0

    @property
    def exact_share(self) -> float:
        """Share of memos with every horse, fact, zone and severity as said, and nothing besides."""
        return self.exact / self.memos if self.memos else 0.0

    @property
    def forms_never_right(self) -> list[tuple[str, str]]:
        """Forms that were said but in no memo read right."""
        return sorted(form for form in self.forms if not self.forms_right[form])


def check(seed: int, count: int, vocabulary: Vocabulary) -> Tally:
    """Compose ``count`` memos from ``seed``, read each and tally the outcome."""
    reader, composer, tally = Reader(vocabulary), Composer(seed, vocabulary), Tally()
    for _ in range(count):
        check_memo(composer.memo(), reader, tally)
    return tally


def check_memo(memo: GeneratedMemo, reader: Reader, tally: Tally) -> None:
    """Read one memo and add what came of it to the tally."""
    roster = [RosterHorse(name=name) for name in memo.roster]
    visits = reader.read(Transcript(text=memo.text), roster, DAY)
    by_horse = {visit.horse: visit for visit in visits}
    wrong_horse = _wrong_horses(memo, visits)
    misses = []
    for name in dict.fromkeys((*memo.horses, *(visit.horse for visit in visits))):
        facts = by_horse[name].facts if name in by_horse else []
        said = memo.facts_of(name) if name is not None else []
        left, missed = _matched(said, facts)
        tally.said, tally.read = tally.said + len(said), tally.read + len(facts)
        tally.right += len(said) - len(missed[0])
        misses += _by_statement(memo, name, (*missed[0], *missed[1]), left)
    tally.memos += 1
    if wrong_horse:  # nothing is to be learnt of the statements when they went to another horse
        tally.wrong_horses.append((memo, visits))
        return
    wrong = {id(miss.placed) for miss in misses}
    for placed in memo.placed:
        _count(placed, id(placed) not in wrong, tally)
    tally.exact += not misses
    tally.misses += misses


def _count(placed: Placed, right: bool, tally: Tally) -> None:
    tally.kinds[placed.statement.kind] += 1
    form = placed.statement.form
    if form is not None:
        tally.forms[form] += 1
        tally.forms_right[form] += right


def _wrong_horses(memo: GeneratedMemo, visits: list[Visit]) -> bool:
    """Whether a horse of the memo is missing, one too many is there, or one is taken for new that is not."""
    silent = {name for name in memo.horses if not memo.facts_of(name)}
    read = {visit.horse for visit in visits}
    if not set(memo.horses) - silent <= read or not read <= set(memo.horses):
        return True
    return any(
        v.horse_match != (HorseMatch.KNOWN if v.horse in memo.roster and v.horse in memo.horses else HorseMatch.NEW)
        for v in visits
    )


def _matched(said: list[Gold], facts: list[Fact]) -> tuple[list[Fact], tuple[list[Gold], list[Gold]]]:
    """What was read too much; what was missed; what was read but with another zone or severity."""
    left, missed, blurred = list(facts), [], []
    for gold in said:
        same = [fact for fact in left if gold.right(fact)]
        if not same:
            missed.append(gold)
            continue
        best = next((fact for fact in same if gold.exact(fact)), same[0])
        left.remove(best)
        if not gold.exact(best):
            blurred.append(gold)
    return left, (missed, blurred)


def _by_statement(memo: GeneratedMemo, horse: str | None, golds: Iterable[Gold], left: list[Fact]) -> list[Miss]:
    """The misses of one horse, each laid to the statement that it belongs to."""
    golds = tuple(golds)
    misses = []
    for placed in memo.placed:
        own = tuple(g for g in golds if placed.horse == horse and any(g is fact for fact in placed.statement.facts))
        extra = tuple(f for f in left if placed.start <= f.span[0] <= placed.end)
        if own or extra:
            misses.append(Miss(memo, placed, own, extra))
    return misses


def _gold_text(gold: Gold) -> str:
    return " ".join(str(part) for part in (gold.foot, gold.slot, gold.value, gold.status, gold.zone, gold.severity))


def _fact_text(fact: Fact) -> str:
    return " ".join(str(part) for part in (fact.foot, fact.slot, fact.value, fact.status, fact.zone, fact.severity))
