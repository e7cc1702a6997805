"""What the review puts before a person: one item is one question, with one answer."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from textwrap import shorten

from pipeline.judging.asked_place import AskedPlace, asked_place
from pipeline.keeping import KeptFact, KeptFlag, KeptVisit
from pipeline.record import FEET, Fact, FlagKind
from pipeline.sentences import capital
from pipeline.using.wording import FOOT_NAMES, fact_words

_LONGEST_QUOTE = 60  # characters of the words in question; all of them stand in the text below


class ItemKind(StrEnum):
    """What is asked."""

    FIELD = "field"  # is this field right?
    CHOICE = "choice"  # which of these fields, which cannot all be right?
    HORSE = "horse"  # whose visit was it?
    SECOND_HORSE = "second_horse"  # did another horse come in at this place of it?
    WORDS = "words"  # what was said here?
    DAY = "day"  # was it this day?
    SPOT_CHECK = "spot_check"  # is this field, which nobody doubts, right?


@dataclass(frozen=True)
class Item:
    """One question about a visit. ``facts`` are one field on one or several feet, or what a choice is between.

    ``key`` names the item for as long as it is open; ``score`` is harm times doubt; ``seen`` is the visit's revision
    that this item shows.
    """

    key: str
    kind: ItemKind
    visit: KeptVisit
    score: float
    facts: tuple[KeptFact, ...] = ()
    flags: tuple[KeptFlag, ...] = ()

    @property
    def seen(self) -> int:
        """The revision of the visit that this item shows."""
        return self.visit.revision

    @property
    def fact(self) -> Fact | None:
        """The field in question, as on its first foot; None when the question is not about one."""
        return self.facts[0].fact if self.facts and self.kind is not ItemKind.CHOICE else None

    @property
    def feet(self) -> tuple[str | None, ...]:
        """The feet that the field stands on, in their order; (None,) for the whole horse."""
        here = {kept.fact.foot for kept in self.facts}
        return tuple(foot for foot in (*FEET, None) if foot in here)

    @property
    def spot_check(self) -> bool:
        """Whether nobody doubts this; it is asked to learn how often silence is wrong."""
        return self.kind is ItemKind.SPOT_CHECK

    @property
    def place(self) -> AskedPlace | None:
        """Where in the visit another horse may have come in; None when something else is asked."""
        return asked_place(self.flags[0].flag.reason) if self.kind is ItemKind.SECOND_HORSE else None

    @property
    def span(self) -> tuple[int, int]:
        """The words in question, as a half-open span of the memo's transcript; (0, 0) when there are none."""
        return told_span([*(kept.fact.span for kept in self.facts), *(flag.flag.span for flag in self.flags)])

    @property
    def seconds(self) -> tuple[float, float] | None:
        """Where those words are in the sound, in seconds; None when it is not known."""
        starts = [kept.fact.start for kept in self.facts] + [flag.flag.start for flag in self.flags]
        ends = [kept.fact.end for kept in self.facts] + [flag.flag.end for flag in self.flags]
        told = [s for s in starts if s is not None], [s for s in ends if s is not None]
        return (min(told[0]), max(told[1])) if told[0] and told[1] else None

    def as_read(self) -> str:
        """What stands in the record, in words: ``left fore, right fore: shoe size 3``."""
        if self.kind is ItemKind.HORSE:
            return f"horse: {self._horse()}"
        if (place := self.place) is not None:
            return f"horse {place_words(place)}: {self._horse()}"
        if self.kind is ItemKind.DAY:
            return f"day: {self.visit.visit.date.isoformat()}"
        if self.kind is ItemKind.CHOICE:
            return " or ".join(dict.fromkeys(with_feet(kept.fact, (kept.fact.foot,)) for kept in self.facts))
        if self.facts:
            return with_feet(self.facts[0].fact, self.feet)
        quote = shorten(self.flags[0].flag.quote, _LONGEST_QUOTE, placeholder=" …") if self.flags else ""
        return f"words to look at: “{quote}”" if quote else "nothing was read here"

    def reason(self) -> str:
        """Why it is asked, in one or more plain sentences."""
        if self.spot_check:
            return "Nothing is doubted here. Is it what was said?"
        told = [flag.flag.reason for flag in self.flags]
        told += [reason for kept in self.facts for reason in kept.fact.reasons]
        if not told:
            no_name = self.kind is ItemKind.HORSE and self.visit.horse is None
            told = ["No horse was named; which horse is it?" if no_name else "This is not sure; is it right?"]
        return " ".join(_sentence(reason) for reason in dict.fromkeys(told))

    def _horse(self) -> str:
        return self.visit.horse.name if self.visit.horse else "nobody yet"

    def heard_name(self) -> str:
        """The horse's name as it was heard; empty when none was. Of a second horse, a word that may be its name."""
        if (place := self.place) is not None:
            return place.name or ""
        quotes = [flag.flag.quote for flag in self.flags if flag.flag.kind is FlagKind.HORSE and flag.flag.quote]
        return quotes[0] if quotes else self.visit.visit.horse or ""


def place_words(place: AskedPlace) -> str:
    """The place in words, inside a sentence."""
    return f"before {place.words} is named" if place.before else f"from “{place.words}” on"


def told_span(spans: Iterable[tuple[int, int]]) -> tuple[int, int]:
    """The one span that holds all of these; empty ones tell nothing, and without any other it is (0, 0)."""
    told = [span for span in spans if span[1] > span[0]]
    return (min(span[0] for span in told), max(span[1] for span in told)) if told else (0, 0)


def with_feet(fact: Fact, feet: tuple[str | None, ...]) -> str:
    """A field with its feet in words."""
    named = [FOOT_NAMES[foot] for foot in feet if foot is not None]
    where = "all four feet" if len(named) == len(FEET) else ", ".join(named)
    return f"{where}: {fact_words(fact)}" if where else fact_words(fact)


def _sentence(reason: str) -> str:
    text = capital(reason.strip())
    return text if text.endswith((".", "?", "!")) else f"{text}."
