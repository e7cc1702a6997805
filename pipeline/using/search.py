"""Search as it is asked: a farrier's words in, what the store holds out.

What a memo denied is never listed unless absent facts are asked for: "no thrush" is no thrush.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from datetime import date
from typing import TYPE_CHECKING, NamedTuple, Protocol

from pipeline.errors import SettingsError
from pipeline.keeping.seen import Comparison, Found, Wanted
from pipeline.sentences import did_you_mean, none_such
from pipeline.terms import FEET, NUMBER_SLOTS, SLOTS, WORDED_SLOTS, ZONES, Status, value_problem
from pipeline.vocabulary import CLASS_SLOTS, SLOT_CLASSES, Vocabulary

if TYPE_CHECKING:
    from pipeline.keeping.counting import Count
    from pipeline.keeping.looking import Looking

DEFAULT_STATUSES = (Status.PRESENT.value, Status.SUSPECTED.value)
WHOLE_HORSE = "horse"
_WORD = re.compile(r"[\w'-]+")
_ASKED_FEET = {
    "left fore": "LF", "left front": "LF", "near fore": "LF",
    "right fore": "RF", "right front": "RF", "off fore": "RF",
    "left hind": "LH", "near hind": "LH",
    "right hind": "RH", "off hind": "RH",
}  # fmt: skip


class Asked(NamedTuple):
    """A search as the command line takes it: words as a farrier says them, nothing resolved yet."""

    words: str = ""
    findings: Sequence[str] = ()
    slots: Sequence[str] = ()
    values: Sequence[str] = ()
    feet: Sequence[str] = ()
    zones: Sequence[str] = ()
    statuses: Sequence[str] = ()
    compared: Sequence[str] = ()
    horse: str | None = None
    owner: str | None = None
    place: str | None = None
    since: date | None = None
    until: date | None = None
    flagged: bool | None = None
    limit: int = 1000


class Searchable(Protocol):
    """What can be searched: the store itself, or a look into it."""

    def search(self, wanted: Wanted) -> Found:
        """The facts and passages that hold all that is wanted."""


def search(store: Searchable, asked: Asked, vocabulary: Vocabulary) -> Found:
    """Look for what is asked. Raises SettingsError for a slot, value, foot, zone or status that there is none of.

    Free words that name a finding ("seedy toe") look for that finding; words that together name another thing of the
    trade ("egg bars", "copper sulphate") look for that; and a foot beside either ("left hind") for that foot. Other
    words must stand in the memo's words.
    """
    return store.search(wanted_of(asked, vocabulary))


def count(store: Looking, asked: Asked, by: str, vocabulary: Vocabulary) -> list[Count]:
    """Count what is asked for, by month, horse and so on; errors as in ``search``.

    Free words that name no finding must stand in the fact's own words: passages are not counted.
    """
    from pipeline.keeping.counting import COUNTED_BY

    return store.count(wanted_of(asked, vocabulary), _one_of(by, COUNTED_BY, "way to count"))


def meant_perhaps(words: str, vocabulary: Vocabulary) -> str:
    """After a search in vain: a question that offers the words of the trade that were perhaps meant, or ""."""
    said = _plain(words)
    forms = [form for name in CLASS_SLOTS for form in forms_of(name, vocabulary)]
    return "" if said in forms else did_you_mean(said, forms, alike=0.75)


def wanted_of(asked: Asked, vocabulary: Vocabulary) -> Wanted:
    """What is asked, in canonical names; see ``search`` for the errors."""
    findings_said, words = split_findings(asked.words, vocabulary)
    feet_said, others = _split_feet(words)
    named = [] if findings_said else _named(others, vocabulary)
    if findings_said or named:
        words = [] if named else others
    else:
        feet_said = []
    findings = [*(_finding(said, vocabulary) for said in asked.findings), *findings_said]
    slots = tuple(_one_of(slot, SLOTS, "kind of fact") for slot in asked.slots)
    values = [("finding", finding) for finding in findings]
    if asked.since and asked.until and asked.since > asked.until:
        raise SettingsError(f"Nothing lies between {asked.since} and {asked.until}: the first day is the later one.")
    if asked.limit < 1:
        raise SettingsError("At least one result must be asked for.")
    return Wanted(
        slots=slots,
        values=(*values, *named, *(pair for said in asked.values for pair in _values(said, slots, vocabulary))),
        feet=(*(foot_asked(foot) for foot in asked.feet), *feet_said),
        zones=tuple(_zone(zone, vocabulary) for zone in asked.zones),
        statuses=tuple(_one_of(status, list(Status), "status") for status in asked.statuses) or DEFAULT_STATUSES,
        compared=tuple(one for said in asked.compared for one in _compared(said, vocabulary)),
        horse=asked.horse,
        owner=asked.owner,
        place=asked.place,
        since=asked.since,
        until=asked.until,
        flagged=asked.flagged,
        words=tuple(words),
        limit=asked.limit,
    )


def _compared(said: str, vocabulary: Vocabulary) -> list[Comparison]:
    from pipeline.using.comparing import comparisons  # its patterns take long to make, and few searches compare

    return comparisons(said, vocabulary)


def split_findings(words: str, vocabulary: Vocabulary) -> tuple[list[str], list[str]]:
    """Canonical findings named in free words, longest form first, and the words that are left."""
    forms = forms_of("findings", vocabulary)
    left = [word.casefold() for word in _WORD.findall(words)]
    longest = max((len(form.split()) for form in forms), default=1)
    findings: list[str] = []
    others: list[str] = []
    while left:
        for length in range(min(longest, len(left)), 0, -1):
            form = " ".join(left[:length]).replace("-", " ")
            if form in forms:
                findings.append(forms[form])
                left = left[length:]
                break
        else:
            others.append(left.pop(0))
    return list(dict.fromkeys(findings)), others


def _named(words: Sequence[str], vocabulary: Vocabulary) -> list[tuple[str, str | float]]:
    """What all the words together are a name of, outside the findings; a bare place ("toe") names nothing."""
    form = _plain(" ".join(words))
    if form in forms_of("zones", vocabulary):
        return []
    return [
        (slot, forms[form])
        for name, slot in CLASS_SLOTS.items()
        if name != "findings" and form in (forms := forms_of(name, vocabulary))
    ]


def _split_feet(words: list[str]) -> tuple[list[str], list[str]]:
    feet: list[str] = []
    others: list[str] = []
    left = list(words)
    while left:
        pair = " ".join(left[:2])
        if left[0].upper() in FEET:
            feet.append(left.pop(0).upper())
        elif pair in _ASKED_FEET:
            feet.append(_ASKED_FEET[pair])
            left = left[2:]
        else:
            others.append(left.pop(0))
    return feet, others


def forms_of(name: str, vocabulary: Vocabulary) -> dict[str, str]:
    """Every form of a vocabulary class, canonical names included, to its canonical name."""
    slot = CLASS_SLOTS.get(name)
    canonical = WORDED_SLOTS[slot] if slot else ZONES
    spoken = vocabulary.spoken(name) if name in vocabulary.classes else {}
    return {**spoken, **{word.replace("_", " "): word for word in canonical}}


def foot_asked(said: str) -> str | None:
    """``LF`` for LF, "left fore", "near fore" …; None for the whole horse. Raises SettingsError for anything else."""
    plain = _plain(said)
    if plain.upper() in FEET:
        return plain.upper()
    if plain == WHOLE_HORSE:
        return None
    if plain not in _ASKED_FEET:
        raise SettingsError(f"{said!r} is no foot; say LF, RF, LH, RH, or {WHOLE_HORSE} for the whole horse.")
    return _ASKED_FEET[plain]


def _finding(said: str, vocabulary: Vocabulary) -> str:
    forms = forms_of("findings", vocabulary)
    if _plain(said) not in forms:
        raise SettingsError(f"{said!r} is no finding that clinchbook knows.{did_you_mean(_plain(said), forms)}")
    return forms[_plain(said)]


def _zone(said: str, vocabulary: Vocabulary) -> str:
    forms = forms_of("zones", vocabulary)
    if _plain(said) not in forms:
        near = did_you_mean(_plain(said), forms)
        raise SettingsError(f"{said!r} is no part of the foot that clinchbook knows.{near}")
    return forms[_plain(said)]


def _values(said: str, slots: Sequence[str], vocabulary: Vocabulary) -> list[tuple[str, str | float]]:
    """The (slot, value) pairs that ``said`` can mean, in the asked slots or, without any, in every slot."""
    pairs: list[tuple[str, str | float]] = []
    classes = SLOT_CLASSES
    for slot in slots or SLOTS:
        value: str | float | None = said.strip()
        if slot in classes:
            value = forms_of(classes[slot], vocabulary).get(_plain(said))
        elif slot in NUMBER_SLOTS:
            value = _number(said)
        if value is not None and value_problem(slot, value) is None:
            pairs.append((slot, value))
    if not pairs:
        where = f" of {', '.join(slots)}" if slots else ""
        raise SettingsError(f"{said!r} is no value{where} that clinchbook knows.")
    return pairs


def _number(said: str) -> float | None:
    try:
        return float(said)
    except ValueError:
        return None


def _one_of(said: str, known: Iterable[str], what: str) -> str:
    name = _plain(said).replace(" ", "_")
    names = [str(other) for other in known]
    if name not in names:
        raise SettingsError(none_such(said, what, names))
    return name


def _plain(said: str) -> str:
    return " ".join(said.casefold().replace("_", " ").replace("-", " ").split())
