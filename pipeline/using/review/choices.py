"""What may be right instead: the likeliest first, and every value that the slot can hold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from pipeline.keeping.correcting import FactFields
from pipeline.reading.sounds import likeness
from pipeline.record import NUMBER_SLOTS, SHOE_SIZES, WORDED_SLOTS, Fact, Foot, Status, value_problem
from pipeline.using.review.harm import foot_in_doubt
from pipeline.using.review.items import Item, ItemKind, with_feet
from pipeline.using.review.surroundings import LastTime
from pipeline.vocabulary import SLOT_CLASSES, Vocabulary

MOST = 6  # numbered keys for what may be right instead
_ALIKE = 0.6  # below this a word of the trade does not sound like what was heard
# A "no" that was missed, or heard where there was none, turns the record round.
_DENIABLE = frozenset({"finding", "vet"})
_FEET_ASKED: tuple[tuple[Foot | None, ...], ...] = (("LF", "RF"), ("LH", "RH"), ("LF",), ("RF",), ("LH",), ("RH",))


@dataclass(frozen=True)
class Choice:
    """One answer: what it says, and the fields that it sets, the feet, the facts of a choice that it keeps, or those
    that it adds."""

    says: str
    fields: FactFields = field(default_factory=lambda: FactFields())
    keeps: tuple[int, ...] = ()
    feet: tuple[Foot | None, ...] = ()
    adds: tuple[Fact, ...] = ()


def choices_of(item: Item, vocabulary: Vocabulary, last: LastTime | None) -> list[Choice]:
    """The likeliest answers other than the field as it was read, at most MOST."""
    if item.kind is ItemKind.CHOICE:
        return _either(item)
    fact = item.fact
    if fact is None:
        return []
    if foot_in_doubt(fact):
        return [Choice(with_feet(fact, feet), feet=feet) for feet in _FEET_ASKED if feet != item.feet][:MOST]
    values = dict.fromkeys(value for value in _values(fact, vocabulary, last) if value != fact.value)
    found = [FactFields(value=value) for value in values if value_problem(fact.slot, value) is None]
    if fact.slot in _DENIABLE:
        found.insert(0, FactFields(status=_turned(fact)))
    return [Choice(_says(item, fact, fields), fields) for fields in found[:MOST]]


def slot_values(slot: str) -> tuple[str, ...]:
    """Every value of a slot with a closed set, in its order; () for numbers and sizes, which are typed."""
    return SHOE_SIZES if slot == "shoe_size" else WORDED_SLOTS.get(slot, ())


def _either(item: Item) -> list[Choice]:
    kept: dict[str, list[int]] = {}
    for one in item.facts:
        kept.setdefault(with_feet(one.fact, (one.fact.foot,)), []).append(one.id)
    return [Choice(said, keeps=tuple(ids)) for said, ids in kept.items()][:MOST]


def _says(item: Item, fact: Fact, fields: FactFields) -> str:
    return with_feet(fact.model_copy(update=dict(fields)), item.feet)


def _turned(fact: Fact) -> Status:
    if fact.status is not Status.ABSENT:
        return Status.ABSENT
    return Status.PLANNED if fact.slot == "vet" else Status.PRESENT


def _values(fact: Fact, vocabulary: Vocabulary, last: LastTime | None) -> Iterator[str | float]:
    """What the last visit said, what sounds like the words heard, and the neighbours of a number or size."""
    if last is not None:
        yield last.value
    if fact.slot in WORDED_SLOTS:
        yield from _sounding_alike(fact, vocabulary)
        if len(WORDED_SLOTS[fact.slot]) <= MOST:
            yield from WORDED_SLOTS[fact.slot]
    elif fact.slot == "shoe_size" and fact.value in SHOE_SIZES:
        place = SHOE_SIZES.index(str(fact.value))
        yield from (SHOE_SIZES[at] for at in (place - 1, place + 1, place - 2, place + 2) if 0 <= at < len(SHOE_SIZES))
    elif fact.slot == "nail_size":
        yield from _nail_sizes(str(fact.value))
    elif fact.slot in NUMBER_SLOTS and isinstance(fact.value, float | int):
        yield from (float(fact.value + step) for step in (-1, 1, -2, 2))


def _nail_sizes(value: str) -> Iterator[str]:
    number, slim = value.removesuffix(" slim"), value.endswith(" slim")
    yield number if slim else f"{number} slim"
    for step in (-0.5, 0.5, -1, 1):
        yield f"{float(number) + step:g}{' slim' if slim else ''}"


def _sounding_alike(fact: Fact, vocabulary: Vocabulary) -> Iterator[str]:
    name = SLOT_CLASSES[fact.slot]
    if name not in vocabulary.classes:
        return
    windows = word_windows(fact.quote)
    best: dict[str, float] = {}
    for entry in vocabulary.entries(name):
        for form in entry.spoken:
            if "..." not in form:
                alike = max((likeness(form, window) for window in windows if _near(form, window)), default=0.0)
                best[entry.canonical] = max(best.get(entry.canonical, 0.0), alike)
    yield from (value for value in sorted(best, key=lambda one: -best[one]) if best[value] >= _ALIKE)


def word_windows(quote: str, most: int = 3) -> list[str]:
    """Every stretch of one to ``most`` words of a quote, in small letters without marks."""
    words = [word.strip('.,;:!?"“”').lower() for word in quote.split()]
    return [" ".join(words[at : at + size]) for size in range(1, most + 1) for at in range(len(words) - size + 1)]


def _near(form: str, window: str) -> bool:
    return form.count(" ") == window.count(" ") or abs(len(form) - len(window)) <= 2
