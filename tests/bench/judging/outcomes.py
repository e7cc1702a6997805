"""Judged visits beside their gold: which facts are right, which are flagged, and which were missed without a flag."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from pipeline.record import Fact, Flag, FlagKind, Visit
from pipeline.vocabulary import CLASS_SLOTS, Vocabulary
from tests.bench.judging.promising import bound, calibration_error, interval, memo_losses
from tests.facts.scoring import GoldFact, same_value

_NEAR = 40  # characters, some seven words, between the words of a missed fact and a flag that leads there

# Flags that are counted elsewhere: their facts are flagged, the horse is asked about, a memo has its day.
_COUNTED = frozenset({FlagKind.CONTRADICTION, FlagKind.HORSE, FlagKind.DATE})

Places = Callable[[GoldFact], Sequence[tuple[int, int]]]


@dataclass(frozen=True)
class Outcome:
    """One fact that was said: whether gold has it, and whether it would be put before a person.

    Under a wrong horse that is asked about a fact is right when it is right of the horse that is meant: one question
    puts them all right. Under a wrong horse that nobody asks about it is wrong. ``grave`` is a wrong one of which the
    horse, the foot or the "no" is wrong: what it tells was said of another foot, or with a "no", or without one.
    """

    memo: str
    fact: Fact
    right: bool
    flagged: bool
    horse_asked: bool = False
    grave: bool = False


@dataclass
class Tally:
    """The facts of many memos with what became of them; ``missed`` counts gold facts that no fact matches."""

    outcomes: list[Outcome] = field(default_factory=list)
    gold: int = 0
    missed: int = 0
    missed_silently: int = 0
    flags: int = 0
    memos: int = 0
    missed_by_memo: list[tuple[int, int]] = field(default_factory=list)  # without a flag near; of how many in gold
    horses: int = 0
    horses_asked: int = 0

    def lines(self, name: str) -> str:
        """The counts with the shares that matter and their 95 % intervals, memos being drawn anew."""
        facts = len(self.outcomes)
        flagged = [o for o in self.outcomes if o.flagged]
        wrong, caught = sum(not o.right for o in self.outcomes), sum(not o.right for o in flagged)
        silent = [not o.right and not o.flagged for o in self.outcomes]
        memos = len({o.memo for o in self.outcomes})
        told = [
            f"{name}: {memos} memos in {self.memos} takes, {facts} facts, {wrong} wrong;"
            f" of {len(flagged)} flagged {caught} wrong"
            f" ({_share(caught, len(flagged))}); {self.horses_asked} of {self.horses} horses asked about;"
            f" {self.flags / max(1, self.memos):.2f} flags without a fact a memo",
            f"  flagged {self._share(lambda o: o.flagged)}",
            f"  wrong in silence {self._share(lambda o: not o.right and not o.flagged)},"
            f" promised for new memos {bound(memo_losses(silent, [o.memo for o in self.outcomes])):.1%}",
            f"  missed {self.missed} of {self.gold}, with no flag near {_share(self.missed_silently, self.gold)}"
            f" ({_told(self._missed_interval())})",
            f"  calibration error {calibration_error([not o.right for o in self.outcomes], self._chances()):.3f}",
        ]
        return "\n".join(told)

    def _chances(self) -> list[float]:
        return [1 - o.fact.confidence for o in self.outcomes]

    def _share(self, counts: Callable[[Outcome], bool]) -> str:
        by_memo: dict[str, list[bool]] = {}
        for outcome in self.outcomes:
            by_memo.setdefault(outcome.memo, []).append(counts(outcome))
        parts, wholes = [sum(found) for found in by_memo.values()], [len(found) for found in by_memo.values()]
        return f"{_share(sum(parts), sum(wholes))} ({_told(interval(parts, wholes))})"

    def _missed_interval(self) -> tuple[float, float]:
        return interval([silent for silent, _ in self.missed_by_memo], [gold for _, gold in self.missed_by_memo])


def add_memo(
    tally: Tally,
    gold: dict[str, Any],
    visits: Sequence[Visit],
    vocabulary: Vocabulary,
    text: str,
    memo_flags: Sequence[Flag] = (),
    where: Places | None = None,
) -> None:
    """Count one memo: visits are paired by the horse's name, then misnamed ones stand for those left, in order.

    ``where`` tells where the words of a gold fact stand in the text; by default the vocabulary's forms are looked for.
    """
    where = where or (lambda fact: spoken(fact, vocabulary, text))
    unpaired = list(visits)
    tally.memos += 1
    before = tally.missed_silently, tally.gold
    tally.horses += len(visits)
    tally.horses_asked += sum(any(f.kind is FlagKind.HORSE for f in v.flags) for v in visits)
    tally.flags += sum(f.kind not in _COUNTED for f in memo_flags) + sum(
        f.kind not in _COUNTED for v in visits for f in v.flags
    )
    places = _places(visits, [*memo_flags, *(flag for visit in visits for flag in visit.flags)])
    for wanted, chosen, named in _pairs(gold["visits"], unpaired):
        _add_visit(tally, gold["id"], wanted["facts"], chosen, named, places, where)
    tally.missed_by_memo.append((tally.missed_silently - before[0], tally.gold - before[1]))
    for visit in unpaired:
        asked = any(f.kind is FlagKind.HORSE for f in visit.flags)
        tally.outcomes += [Outcome(gold["id"], f, False, f.flagged or asked, asked, grave=True) for f in visit.facts]


def _pairs(gold: Sequence[dict[str, Any]], unpaired: list[Visit]) -> list[tuple[dict[str, Any], Visit | None, bool]]:
    """Each gold visit with the one that was read of it and whether that has its name; what is paired is taken out.

    Names go first: a horse that was not read at all must not take another's visit.
    """
    found: list[Visit | None] = []
    for wanted in gold:
        name = (wanted["horse"] or "").lower()
        hit = next((visit for visit in unpaired if (visit.horse or "").lower() == name), None)
        if hit is not None:
            unpaired.remove(hit)
        found.append(hit)
    return [
        (wanted, hit, True) if hit is not None else (wanted, unpaired.pop(0) if unpaired else None, False)
        for wanted, hit in zip(gold, found, strict=True)
    ]


def _add_visit(
    tally: Tally,
    memo: str,
    gold: Sequence[GoldFact],
    visit: Visit | None,
    named: bool,
    flagged_places: Sequence[tuple[int, int]],
    where: Places,
) -> None:
    left = list(visit.facts) if visit else []
    asked = visit is not None and not named and any(f.kind is FlagKind.HORSE for f in visit.flags)
    tally.gold += len(gold)
    for wanted in gold:
        hit = next((f for f in left if _matches(f, wanted)), None)
        if hit is not None:
            left.remove(hit)
            tally.outcomes.append(Outcome(memo, hit, named or asked, hit.flagged, grave=not (named or asked)))
            continue
        tally.missed += 1
        stands_in = visit is not None and any(f.flagged and _kin(f, wanted) for f in visit.facts)
        if not stands_in and not _near(where(wanted), flagged_places):
            tally.missed_silently += 1
    tally.outcomes += [Outcome(memo, f, False, f.flagged, grave=not named or _misplaced(f, gold)) for f in left]


def _misplaced(fact: Fact, gold: Sequence[GoldFact]) -> bool:
    """Whether what a wrong fact tells was said of another foot, or with or without the "no" that it has or lacks."""
    alike = [told for told in gold if fact.slot == told[1] and same_value(told[1], fact.value, told[2])]
    here = [told for told in alike if told[0] == fact.foot]
    return any((told[3] == "absent") != (fact.status == "absent") for told in here) or bool(alike and not here)


def _matches(fact: Fact, gold: GoldFact) -> bool:
    foot, slot, value, status = gold[:4]
    return (fact.foot, fact.slot, fact.status) == (foot, slot, status) and same_value(slot, fact.value, value)


def _kin(fact: Fact, gold: GoldFact) -> bool:
    """Whether whoever looks at the flagged fact hears the words of the gold one."""
    return fact.slot == gold[1] and (fact.foot == gold[0] or same_value(gold[1], fact.value, gold[2]))


def _places(visits: Sequence[Visit], flags: Sequence[Flag]) -> list[tuple[int, int]]:
    told = [flag.span for flag in flags if flag.kind is not FlagKind.HORSE and flag.span[1] > flag.span[0]]
    return told + [fact.span for visit in visits for fact in visit.facts if fact.flagged]


def _near(spots: Sequence[tuple[int, int]], places: Sequence[tuple[int, int]]) -> bool:
    return any(start < p_end + _NEAR and end > p_start - _NEAR for start, end in spots for p_start, p_end in places)


def spoken(gold: GoldFact, vocabulary: Vocabulary, text: str) -> list[tuple[int, int]]:
    """Where the vocabulary's forms of a gold fact are said; none for numbers, which have no form of their own."""
    return [match.span() for match in _pattern(gold[1], str(gold[2]), vocabulary).finditer(text.lower())]


@lru_cache(maxsize=2000)
def _forms(slot: str, value: str, version: str, vocabulary: _Held) -> tuple[str, ...]:
    words = vocabulary.held
    classes = [name for name, its in CLASS_SLOTS.items() if its == slot]
    forms = [f for name in classes for f, canonical in words.spoken(name).items() if canonical == value]
    heads = {"tester": "tester_heads", "pulse": "pulse_heads", "nail_line": "nail_line_heads"}
    if slot in heads:
        forms += list(words.spoken(heads[slot]))
    if not classes:
        forms += [f for f, canonical in words.spoken("measures").items() if canonical == slot]
    if slot == "next_visit_weeks":
        forms += ["week", "weeks", "fortnight", "month", "months"]
    return tuple(sorted(set(forms), key=len, reverse=True))


@dataclass(frozen=True, eq=False)
class _Held:
    held: Vocabulary


def _pattern(slot: str, value: str, vocabulary: Vocabulary) -> re.Pattern[str]:
    forms = _forms(slot, value, vocabulary.version, _Held(vocabulary))
    return re.compile(
        r"\b(" + "|".join(re.escape(form).replace(r"\.\.\.", r".{1,30}") for form in forms) + r")\b"
        if forms
        else r"(?!)"
    )


def _told(ends: tuple[float, float]) -> str:
    return f"95 % {ends[0]:.1%} to {ends[1]:.1%}"


def _share(part: int, whole: int) -> str:
    return f"{part / whole:.2%}" if whole else "-"
