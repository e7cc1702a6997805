"""Told of both horses of a memo: "hinds trimmed on the two", "both ponies trimmed behind", "both of them in steel"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.vocabulary import CLASS_SLOTS

_ON_BOTH = Sayings(
    *(f"{on} {both}" for on in ("on", "for", "in") for both in (
        "the two", "the two of them", "both of them", "the both of them", "the pair of them", "either of them",
    ))
)  # fmt: skip
_EITHER = Sayings("either of them", "neither of them", "either of the two", "neither of the two", "neither one of them")
_HORSES = ("horses", "ponies", "mares", "cobs", "geldings", "donkeys")
_BOTH_HORSES = Sayings(
    *(f"{both} {horses}" for both in (
        "both", "the two", "both the", "both of the", "both these", "both of these", "these two", "the two of these",
        "both of those",
    ) for horses in _HORSES)
)  # fmt: skip
_BOTH_LED = Sayings("both of them", "the two of them", "the pair of them", "they 're both", "they both", "both")
_NEITHER = Sayings(
    "neither one of them", "neither one", "neither of them", "neither of these", "neither of the two", "neither horse",
    "neither pony", "neither of the horses", "neither of the ponies", "neither",
)  # fmt: skip
_SHOEING = frozenset({"work", "shoe_types", "shoe_materials", "pads", "packings", "clips", "traction"})
_PAIRS = frozenset({"fronts", "hinds", "pair_in_hand", "all"})
_OF_ONE = frozenset({"his", "her"})
_BEGINS = _EITHER.first_words | _ON_BOTH.first_words | _BOTH_HORSES.first_words | _BOTH_LED.first_words
_BEGINS |= _NEITHER.first_words
_TWO = 2
_WEEKS_EACH = Sayings(
    *(f"{time} {each}" for time in ("week", "weeks", "month", "months", "fortnight") for each in ("each", "apiece"))
)
_VET_FOR_EITHER = Sayings(
    *(f"for {them}" for them in (
        "either of them", "either one", "either", "both of them", "the both of them", "the pair of them", "any of them",
    ))
)  # fmt: skip


def told_of_each(talk: Talk, segment: Segment, slot: str) -> bool:
    """ "Eight weeks apiece", "no vet for either of them": of every horse that it was not told of before."""
    if slot == "vet":
        closing = _VET_FOR_EITHER.within(talk.words, segment.start, segment.end)
        return any(at + len(form) == segment.end for at, form in closing)
    return slot == "next_visit_weeks" and _WEEKS_EACH.said_in(talk.words[segment.start : segment.end])


def told_of_both(talk: Talk, spans: list[NameSpan]) -> dict[int, list[int]]:
    """For each segment that speaks of the two horses of the memo, their indices; their words are then no feet."""
    if len({span.horse for span in spans}) != _TWO or not talk.says(_BEGINS):
        return {}
    together: dict[int, list[int]] = {}
    before = 0
    for sentence in talk.sentences():
        start, end = sentence[0].start, sentence[-1].end
        earlier = [s for s in spans if before <= s.start < start]
        before = start
        both = list(dict.fromkeys(s.horse for s in spans if s.start < end))
        named = [s for s in spans if start <= s.start < end]
        if len(both) < _TWO:
            continue
        for segment in sentence:
            words = _needs_no_vet(talk, segment)
            if words is None:
                words = _of_both(talk, segment) if not named else _closing(talk, segment, named, earlier)
            if words is None:
                continue
            alone = len(words) == segment.end - segment.start
            told = sentence if alone and not named else [segment]
            together.update({s.index: both for s in told})
            for mention in [m for m in segment.having("feet") if words.start <= m.start and m.end <= words.stop]:
                mention.dropped = True
    return together


def _needs_no_vet(talk: Talk, segment: Segment) -> range | None:
    """ "No need for the vet with either of them", "neither of them needs the vet": horses are meant."""
    if not segment.having("vet") or segment.having("units"):
        return None
    return next(
        (range(at, at + len(form)) for at, form in _EITHER.within(talk.words, segment.start, segment.end)), None
    )


def _of_both(talk: Talk, segment: Segment) -> range | None:
    """ "Hinds trimmed on the two", where the feet are named too; "both ponies", alone or before what was done.

    In "reset his fronts with wedges on both of them" the feet are one horse's, and both of them are these.
    """
    for at, form in _BOTH_HORSES.within(talk.words, segment.start, segment.end):
        return range(at, at + len(form))
    form = _NEITHER.at(talk.words, segment.start)
    if form and segment.having("vet") and not _feet_told(talk, segment):
        return range(segment.start, segment.start + len(form))
    for at, form in _ON_BOTH.within(talk.words, segment.start, segment.end):
        words = range(at, at + len(form))
        feet = [m for m in segment.having("feet") if m.start not in words]
        footed = bool(feet) and not any(_of_one(talk, m) for m in feet if m.end <= at)
        noun = talk.mention_starting(words.stop)
        if footed and not (noun is not None and noun.is_any(("feet", "zones"))):
            return words
    return None


def _feet_told(talk: Talk, segment: Segment) -> bool:
    """Whether "neither" may be two feet: a pair that is named with it, or with a finding right before."""
    before = talk.sentence(segment.sentence - 1)
    found = any(s.having("findings") for s in before) and any(
        m.get("feet") in _PAIRS for s in before for m in s.mentions
    )
    return found or any(m.get("feet") != "pair_in_hand" for m in segment.having("feet"))


def _of_one(talk: Talk, foot: Mention) -> bool:
    """ "His fronts": the feet of the horse in hand alone."""
    return not _OF_ONE.isdisjoint(talk.words[max(0, foot.start - 1) : foot.end])


def _closing(talk: Talk, segment: Segment, named: list[NameSpan], earlier: list[NameSpan]) -> range | None:
    """ "Tally's fronts are resets, Buck's are new, and both of them in steel": behind a clause of each.

    The clause of the first may be ``earlier``, since a comma before a name that opens is read as a full stop.
    """
    form = _BOTH_LED.at(talk.words, segment.start)
    apart = len({s.horse for s in named if s.end <= segment.start}) == _TWO and segment.joined_by("and", ", and")
    apart = apart or (len({s.horse for s in [*earlier, *named]}) == _TWO and segment.joined_by(", and"))
    if not form or not apart or any(segment.start <= s.start < segment.end for s in named):
        return None
    behind = talk.mention_starting(segment.start + len(form))
    last = max(s.start for s in named if s.end <= segment.start)
    told = any(m.is_any(CLASS_SLOTS) or m.number for m in talk.starting_in(last, segment.start))
    shod = any(m.is_any(_SHOEING) for m in segment.mentions)
    footed = behind is not None and behind.get("feet") is not None
    return range(segment.start, segment.start + len(form)) if told and shod and not footed else None
