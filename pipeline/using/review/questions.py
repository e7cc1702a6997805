"""Which questions a visit raises, and in which order: by harm times doubt, whose visit it was always first.

The same rules serve a visit in full and the light rows of a whole store (``pipeline.keeping.doubted``).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from operator import attrgetter
from typing import Protocol, TypeVar

from pipeline.judging.asked_place import asked_place
from pipeline.record import FlagKind
from pipeline.using.review.harm import Weighed, fact_score, flag_score, horse_score
from pipeline.using.review.items import ItemKind, told_span
from pipeline.using.review.spot_checks import place_of

_NAMED = 0.9  # a horse that has a name, though a doubtful one, comes after one that has none
_KINDS = {FlagKind.DATE: ItemKind.DAY, FlagKind.HORSE: ItemKind.HORSE}
_GROUPED = attrgetter("span", "slot", "value", "zone", "status", "severity")


class Told(Weighed, Protocol):
    """What of a fact decides how it is asked."""

    @property
    def flagged(self) -> bool:
        """Whether it is doubtful."""

    @property
    def reasons(self) -> Sequence[str]:
        """Why it is."""

    @property
    def span(self) -> tuple[int, int]:
        """Its words, half-open in the transcript."""


class ToldFlag(Protocol):
    """What of a flag decides how it is asked."""

    @property
    def kind(self) -> FlagKind:
        """What it is about."""

    @property
    def reason(self) -> str:
        """Why it was raised."""

    @property
    def span(self) -> tuple[int, int]:
        """Its words, half-open in the transcript."""


class FactRow(Protocol):
    """A fact with its row."""

    @property
    def id(self) -> int:
        """The row's number."""

    @property
    def fact(self) -> Told:
        """What was said."""


class FlagRow(Protocol):
    """A flag with its row."""

    @property
    def id(self) -> int:
        """The row's number."""

    @property
    def flag(self) -> ToldFlag:
        """What is doubted."""


F = TypeVar("F", bound=FactRow)


@dataclass(frozen=True)
class Asked:
    """What of a visit decides about its questions. ``nameless`` has no horse, and nobody has left it so.

    ``flags`` are the open ones of the visit, then those of its memo if it is the memo's first.
    """

    id: int
    nameless: bool
    facts: Sequence[FactRow]
    flags: Sequence[FlagRow]


@dataclass(frozen=True)
class Question:
    """A question before all that goes with it is fetched; see ``Item``."""

    key: str
    kind: ItemKind
    score: float
    facts: tuple[FactRow, ...] = ()
    flags: tuple[FlagRow, ...] = ()

    @property
    def span(self) -> tuple[int, int]:
        """The words in question."""
        return told_span([*(kept.fact.span for kept in self.facts), *(kept.flag.span for kept in self.flags)])


def questions_of(visit: Asked, checks: Sequence[Question] = ()) -> list[Question]:
    """The open questions of a visit in their order; spot checks stand anywhere among them."""
    horse = list(_of_horse(visit, [flag for flag in visit.flags if flag.flag.kind is FlagKind.HORSE]))
    choices = list(_choices(visit))
    taken = {kept.id for one in choices for kept in one.facts} | {flag.id for one in choices for flag in one.flags}
    rest = [*choices, *_fields(visit, taken)]
    rest += [
        _of_flag(visit, flag) for flag in visit.flags if flag.flag.kind is not FlagKind.HORSE and _apart(visit, flag)
    ]
    rest.sort(key=lambda one: (-one.score, one.span, one.key))
    for check in checks:
        rest.insert(place_of(check.key, len(rest) + 1), check)
    return [*horse, *rest]


def _of_horse(visit: Asked, flags: list[FlagRow]) -> Iterator[Question]:
    """Whose the whole visit was; then, place by place, whether another horse came in there."""
    places = [flag for flag in flags if _within_visit(flag.flag)]
    whole = [flag for flag in flags if flag not in places]
    if whole or visit.nameless:
        score = max([flag_score(flag.flag.kind) for flag in whole], default=horse_score())
        score *= 1 if visit.nameless else _NAMED
        yield Question(f"v{visit.id}-h", ItemKind.HORSE, score, flags=tuple(whole))
    for flag in sorted(places, key=lambda flag: flag.flag.span):
        score = flag_score(flag.flag.kind) * _NAMED
        yield Question(f"v{visit.id}-p{flag.id}", ItemKind.SECOND_HORSE, score, flags=(flag,))


def _within_visit(flag: ToldFlag) -> bool:
    """Whether another horse may have come in within the visit; at its first word, it is asked whose all of it is."""
    asked = asked_place(flag.reason)
    return asked is not None and (asked.before or flag.span[0] > 0)


def _choices(visit: Asked) -> Iterator[Question]:
    """Contradictions between fields of one foot: one question about all of them."""
    taken: set[int] = set()
    for flag in visit.flags:
        if flag.flag.kind is not FlagKind.CONTRADICTION:
            continue
        facts = [kept for kept in carrying(visit.facts, flag) if kept.id not in taken]
        if len(facts) < 2 or len({kept.fact.foot for kept in facts}) > 1:
            continue
        taken.update(kept.id for kept in facts)
        score = max(flag_score(flag.flag.kind), *(fact_score(kept.fact) for kept in facts))
        yield Question(f"v{visit.id}-c{flag.id}", ItemKind.CHOICE, score, tuple(facts), (flag,))


def carrying(facts: Sequence[F], flag: FlagRow) -> list[F]:
    """The fields that are doubted for the very reason of this flag."""
    return [kept for kept in facts if kept.fact.flagged and flag.flag.reason in kept.fact.reasons]


def _apart(visit: Asked, flag: FlagRow) -> bool:
    """A contradiction that its fields carry is asked with them."""
    return flag.flag.kind is not FlagKind.CONTRADICTION or not carrying(visit.facts, flag)


def _fields(visit: Asked, taken: set[int]) -> Iterator[Question]:
    flagged = [kept for kept in visit.facts if kept.fact.flagged and kept.id not in taken]
    for kept in grouped(flagged):
        score = max(fact_score(one.fact) for one in kept)
        yield Question(f"v{visit.id}-f{kept[0].id}", ItemKind.FIELD, score, tuple(kept))


def spot_checks(visit_id: int, facts: Iterable[FactRow]) -> list[Question]:
    """The questions about fields that nobody doubts and that were drawn."""
    return [
        Question(f"v{visit_id}-s{kept[0].id}", ItemKind.SPOT_CHECK, fact_score(kept[0].fact), tuple(kept))
        for kept in grouped(facts)
    ]


def grouped(facts: Iterable[F]) -> list[list[F]]:
    """The same field on several feet, said once, together."""
    groups: dict[tuple[object, ...], list[F]] = defaultdict(list)
    for kept in facts:
        one = kept.fact
        alone = kept.id if one.span[0] == one.span[1] else 0  # typed by hand: no words say that they belong together
        groups[(*_GROUPED(one), alone)].append(kept)
    return list(groups.values())


def _of_flag(visit: Asked, flag: FlagRow) -> Question:
    kind = _KINDS.get(flag.flag.kind, ItemKind.WORDS)
    return Question(f"v{visit.id}-g{flag.id}", kind, flag_score(flag.flag.kind), flags=(flag,))
