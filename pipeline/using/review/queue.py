"""The questions of a review in their order: harm times doubt, one horse together."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from datetime import date

from pipeline.keeping import ChangeKind, KeptFact, KeptFlag, KeptVisit, Store
from pipeline.record import FlagKind
from pipeline.using.review.harm import fact_score, flag_score, horse_score
from pipeline.using.review.items import Item, ItemKind
from pipeline.using.review.spot_checks import DRAWN_DAYS, drawn, place_of

_KINDS = {FlagKind.DATE: ItemKind.DAY, FlagKind.HORSE: ItemKind.HORSE}
_GROUPED = ("span", "slot", "value", "zone", "status", "severity")


def queue(store: Store, day: date | None = None) -> list[Item]:
    """Every open question of the store, or of one day: the horse with the most harmful doubt first, its own questions
    together."""
    visits = store.visits_to_review(DRAWN_DAYS) if day is None else store.visits_on(day)
    checks = _spot_checks(store, visits)
    by_visit = {visit.id: _items_of(store, visit, checks.get(visit.id, [])) for visit in visits}
    ranked = sorted((items for items in by_visit.values() if items), key=lambda items: (-_worst(items), items[0].key))
    horses = list(dict.fromkeys(_whose(items[0]) for items in ranked))
    ranked.sort(key=lambda items: horses.index(_whose(items[0])))
    return [item for items in ranked for item in items]


def items_of(store: Store, visit: KeptVisit) -> list[Item]:
    """The open questions of one visit in their order."""
    checks = _spot_checks(store, store.visits_on(visit.visit.date))
    return _items_of(store, visit, checks.get(visit.id, []))


def _items_of(store: Store, visit: KeptVisit, checks: Sequence[Item]) -> list[Item]:
    first = visit.memo.visit_ids[:1] == (visit.id,)
    flags = [*visit.flags, *(visit.memo.flags if first else ())]
    horse = _horse_items(store, visit, [flag for flag in flags if flag.flag.kind is FlagKind.HORSE])
    choices = list(_choices(visit, flags))
    taken = {kept.id for item in choices for kept in item.facts} | {flag.id for item in choices for flag in item.flags}
    rest = [*choices, *_fields(visit, taken)]
    rest += [_flag_item(visit, flag) for flag in flags if flag.flag.kind is not FlagKind.HORSE and _apart(visit, flag)]
    rest.sort(key=lambda item: (-item.score, item.span, item.key))
    for check in checks:
        rest.insert(place_of(check.key, len(rest) + 1), check)
    return [*horse, *rest]


def _spot_checks(store: Store, visits: Sequence[KeptVisit]) -> dict[int, list[Item]]:
    found: dict[int, list[Item]] = defaultdict(list)
    since = store.days_back(DRAWN_DAYS)
    recent = [visit for visit in visits if since is not None and visit.visit.date >= since]
    for visit, facts in drawn(store, recent):
        for kept in grouped(facts):
            key = f"v{visit.id}-s{kept[0].id}"
            found[visit.id].append(Item(key, ItemKind.SPOT_CHECK, visit, fact_score(kept[0].fact), tuple(kept)))
    return found


def _worst(items: Iterable[Item]) -> float:
    return max(item.score for item in items)


def _whose(item: Item) -> tuple[str, int]:
    return ("horse", item.visit.horse.id) if item.visit.horse else ("visit", item.visit.id)


def _horse_items(store: Store, visit: KeptVisit, flags: list[KeptFlag]) -> list[Item]:
    if flags or (visit.horse is None and not _left_without_horse(store, visit)):
        score = max([flag_score(flag.flag) for flag in flags], default=horse_score())
        return [Item(f"v{visit.id}-h", ItemKind.HORSE, visit, score, flags=tuple(flags))]
    return []


def _left_without_horse(store: Store, visit: KeptVisit) -> bool:
    """Whether a person looked at the question and left it: its flags are answered, and there is no horse."""
    changes = store.changes(visit.id)
    undone = {change.undoes for change in changes}
    return any(change.kind is ChangeKind.LOOK and change.id not in undone for change in changes)


def _choices(visit: KeptVisit, flags: Iterable[KeptFlag]) -> Iterator[Item]:
    """Contradictions between fields of one foot: one question about all of them."""
    taken: set[int] = set()
    for flag in flags:
        facts = [kept for kept in carrying(visit, flag) if kept.id not in taken]
        if flag.flag.kind is not FlagKind.CONTRADICTION or len(facts) < 2 or len({k.fact.foot for k in facts}) > 1:
            continue
        taken.update(kept.id for kept in facts)
        score = max(flag_score(flag.flag), *(fact_score(kept.fact) for kept in facts))
        yield Item(f"v{visit.id}-c{flag.id}", ItemKind.CHOICE, visit, score, tuple(facts), (flag,))


def carrying(visit: KeptVisit, flag: KeptFlag) -> list[KeptFact]:
    """The fields that are doubted for the very reason of this flag."""
    return [kept for kept in visit.facts if kept.fact.flagged and flag.flag.reason in kept.fact.reasons]


def _apart(visit: KeptVisit, flag: KeptFlag) -> bool:
    """A contradiction that its fields carry is asked with them."""
    return flag.flag.kind is not FlagKind.CONTRADICTION or not carrying(visit, flag)


def _fields(visit: KeptVisit, taken: set[int]) -> Iterator[Item]:
    flagged = [kept for kept in visit.facts if kept.fact.flagged and kept.id not in taken]
    for kept in grouped(flagged):
        score = max(fact_score(one.fact) for one in kept)
        yield Item(f"v{visit.id}-f{kept[0].id}", ItemKind.FIELD, visit, score, tuple(kept))


def grouped(facts: Iterable[KeptFact]) -> list[list[KeptFact]]:
    """The same field on several feet, said once, together."""
    groups: dict[tuple[object, ...], list[KeptFact]] = defaultdict(list)
    for kept in facts:
        one = kept.fact
        alone = kept.id if one.span[0] == one.span[1] else 0  # typed by hand: no words say that they belong together
        groups[(*(getattr(one, name) for name in _GROUPED), alone)].append(kept)
    return list(groups.values())


def _flag_item(visit: KeptVisit, flag: KeptFlag) -> Item:
    kind = _KINDS.get(flag.flag.kind, ItemKind.WORDS)
    return Item(f"v{visit.id}-g{flag.id}", kind, visit, flag_score(flag.flag), flags=(flag,))
