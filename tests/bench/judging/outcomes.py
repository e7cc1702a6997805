"""Judged visits beside their gold: which facts are right, which are flagged, and which were missed without a flag."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from pipeline.record import Fact, Flag, FlagKind, Visit
from pipeline.vocabulary import CLASS_SLOTS, Vocabulary
from tests.facts.scoring import GoldFact, same_value

_NEAR = 90  # characters between the words of a missed fact and a flag that would lead there


@dataclass(frozen=True)
class Outcome:
    """One fact that was said: whether gold has it, and whether it would be put before a person."""

    memo: str
    fact: Fact
    right: bool
    flagged: bool


@dataclass
class Tally:
    """The facts of many memos with what became of them; ``missed`` counts gold facts that no fact matches."""

    outcomes: list[Outcome] = field(default_factory=list)
    gold: int = 0
    missed: int = 0
    missed_silently: int = 0
    flags: int = 0
    memos: int = 0

    def line(self, name: str) -> str:
        """The counts in one line."""
        facts = len(self.outcomes)
        flagged = [o for o in self.outcomes if o.flagged]
        wrong = sum(not o.right for o in self.outcomes)
        caught = sum(not o.right for o in flagged)
        silent = wrong - caught
        return (
            f"{name:14s} facts {facts:5d}  wrong {wrong:4d}  flagged {len(flagged):4d} ({_share(len(flagged), facts)})"
            f"  of these wrong {caught:4d} ({_share(caught, len(flagged))})  silent wrong {silent:4d}"
            f" ({_share(silent, facts)})  missed {self.missed:4d}, no flag near {self.missed_silently:4d}"
            f" ({_share(self.missed_silently, self.gold)})  flags without a fact {self.flags / self.memos:.2f} a memo"
        )


def add_memo(
    tally: Tally,
    gold: dict[str, Any],
    visits: Sequence[Visit],
    vocabulary: Vocabulary,
    text: str,
    memo_flags: Sequence[Flag] = (),
) -> None:
    """Count one memo: visits are paired by the horse's name, and a misnamed one stands for the next that is left."""
    unpaired = list(visits)
    tally.memos += 1
    tally.flags += len(memo_flags) + sum(f.kind is not FlagKind.CONTRADICTION for v in visits for f in v.flags)
    for wanted in gold["visits"]:
        named = next((v for v in unpaired if (v.horse or "").lower() == (wanted["horse"] or "").lower()), None)
        chosen = named or (unpaired[0] if unpaired else None)
        if chosen is not None:
            unpaired.remove(chosen)
        flags = [*memo_flags, *(flag for visit in visits for flag in visit.flags)]
        _add_visit(
            tally, gold["id"], wanted["facts"], chosen, named is not None, _places(visits, flags), vocabulary, text
        )
    for visit in unpaired:
        asked = any(f.kind is FlagKind.HORSE for f in visit.flags)
        tally.outcomes += [Outcome(gold["id"], f, False, f.flagged or asked) for f in visit.facts]


def _add_visit(
    tally: Tally,
    memo: str,
    gold: Sequence[GoldFact],
    visit: Visit | None,
    named: bool,
    flagged_places: Sequence[tuple[int, int]],
    vocabulary: Vocabulary,
    text: str,
) -> None:
    left = list(visit.facts) if visit else []
    asked = visit is not None and not named and any(f.kind is FlagKind.HORSE for f in visit.flags)
    tally.gold += len(gold)
    for wanted in gold:
        hit = next((f for f in left if _matches(f, wanted)), None)
        if hit is not None:
            left.remove(hit)
            tally.outcomes.append(Outcome(memo, hit, named, hit.flagged or asked))
            continue
        tally.missed += 1
        stands_in = visit is not None and any(f.flagged and _kin(f, wanted) for f in visit.facts)
        if not stands_in and not _flag_near(wanted, flagged_places, vocabulary, text):
            tally.missed_silently += 1
    tally.outcomes += [Outcome(memo, f, False, f.flagged or asked) for f in left]


def _matches(fact: Fact, gold: GoldFact) -> bool:
    foot, slot, value, status = gold[:4]
    return (fact.foot, fact.slot, fact.status) == (foot, slot, status) and same_value(slot, fact.value, value)


def _kin(fact: Fact, gold: GoldFact) -> bool:
    """Whether whoever looks at the flagged fact hears the words of the gold one."""
    return fact.slot == gold[1] and (fact.foot == gold[0] or same_value(gold[1], fact.value, gold[2]))


def _places(visits: Sequence[Visit], flags: Sequence[Flag]) -> list[tuple[int, int]]:
    told = [flag.span for flag in flags if flag.kind is not FlagKind.HORSE and flag.span[1] > flag.span[0]]
    return told + [fact.span for visit in visits for fact in visit.facts if fact.flagged]


def _flag_near(gold: GoldFact, places: Sequence[tuple[int, int]], vocabulary: Vocabulary, text: str) -> bool:
    spots = [(m.start(), m.end()) for m in _pattern(gold[1], str(gold[2]), vocabulary).finditer(text.lower())]
    return any(start < p_end + _NEAR and end > p_start - _NEAR for start, end in spots for p_start, p_end in places)


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


def _share(part: int, whole: int) -> str:
    return f"{part / whole:.2%}" if whole else "-"
