"""Told of both horses of a memo: "hinds trimmed on the two", "both ponies trimmed behind", "both of them in steel"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.together import only_shoeing
from pipeline.reading.vet import VETS
from pipeline.vocabulary import CLASS_SLOTS

_ON_BOTH = Sayings(
    *(f"{on} {both}" for on in ("on", "for", "in") for both in (
        "the two", "the two of them", "both of them", "the both of them", "the pair of them", "either of them",
    ))
)  # fmt: skip
_HORSES = ("horses", "ponies", "mares", "cobs", "geldings", "donkeys")
_BOTH_HORSES = Sayings(
    *(f"{both} {horses}" for both in (
        "both", "the two", "both the", "both of the", "both these", "both of these", "these two", "the two of these",
        "both of those",
    ) for horses in _HORSES)
)  # fmt: skip
_BOTH_LED = Sayings("both of them", "the two of them", "the pair of them", "they 're both", "they both", "both")
_SHOEING = frozenset({"work", "shoe_types", "shoe_materials", "pads", "packings", "clips", "traction"})
_PAIRS = frozenset({"fronts", "hinds", "pair_in_hand", "all"})
_OF_ONE = frozenset({"his", "her"})
_TWO = 2
_WEEKS_EACH = Sayings(
    *(f"{time} {each}" for time in ("week", "weeks", "month", "months", "fortnight") for each in ("each", "apiece"))
)
_VET_OF_THEM = Sayings(
    *(f"{one} {them}" for one in ("either", "neither", "neither one") for them in ("of them", "of the two")),
    "neither of these", "neither horse", "neither pony", "neither of the horses", "neither of the ponies",
    "for both of them", "for the both of them", "for the pair of them",
)  # fmt: skip
_VET_OF_ALL = Sayings("for any of them")
# These may be two feet as well.
_VET_OF_BOTH = Sayings("neither", "neither one", "for either", "for either one")
_VET_OF = (_VET_OF_THEM, _VET_OF_BOTH, _VET_OF_ALL)
_BEGINS = frozenset().union(*(said.first_words for said in (_ON_BOTH, _BOTH_HORSES, _BOTH_LED, *_VET_OF)))


def told_of_each(talk: Talk, segment: Segment, slot: str) -> bool:
    """ "Eight weeks apiece": of every horse that it was not told of before."""
    return slot == "next_visit_weeks" and _WEEKS_EACH.said_in(talk.words[segment.start : segment.end])


def told_of_both(talk: Talk, spans: list[NameSpan]) -> dict[int, list[int]]:
    """For each segment that speaks of the two horses of the memo, their indices; their words are then no feet."""
    several = len({span.horse for span in spans})
    if several < _TWO or not talk.says(_BEGINS):
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
            words = _of_the_vet(talk, segment, len(both))
            if words is None and several == _TWO:
                words = _of_both(talk, segment) if not named else _closing(talk, segment, named, earlier)
            if words is None:
                continue
            alone = len(words) == segment.end - segment.start
            told = sentence if alone and not named else [segment]
            rest = sentence[segment.index - sentence[0].index :]
            if (
                not named
                and only_shoeing(talk, rest)
                and all(m.get("feet") in _PAIRS for s in rest[1:] for m in s.having("feet"))
            ):
                told = rest  # "new shoes on the two of them, and road nails in the hinds"
            together.update({s.index: both for s in told})
            for mention in [m for m in segment.having("feet") if words.start <= m.start and m.end <= words.stop]:
                mention.dropped = True
    return together


def _of_the_vet(talk: Talk, segment: Segment, horses: int) -> range | None:
    """ "No need for the vet with either of them", "neither needs the vet", "no vet for either": horses are meant."""
    named = segment.having("vet") or not VETS.isdisjoint(talk.words[segment.start : segment.end])
    if not named or segment.having("units"):
        return None
    said = _VET_OF_THEM if horses == _TWO else _VET_OF_ALL
    told = [range(at, at + len(form)) for at, form in said.within(talk.words, segment.start, segment.end)]
    if told or horses != _TWO or _feet_told(talk, segment):
        return told[0] if told else None
    both = [range(at, at + len(form)) for at, form in _VET_OF_BOTH.within(talk.words, segment.start, segment.end)]
    return next((words for words in both if words.start == segment.start or words.stop == segment.end), None)


def _of_both(talk: Talk, segment: Segment) -> range | None:
    """ "Hinds trimmed on the two", where the feet are named too; "both ponies", alone or before what was done.

    In "reset his fronts with wedges on both of them" the feet are one horse's, and both of them are these.
    """
    for at, form in _BOTH_HORSES.within(talk.words, segment.start, segment.end):
        return range(at, at + len(form))
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
