"""What is said of the horse or of every shoe, "trimmed him", "every shoe worn thin": not of the foot in hand."""

from __future__ import annotations

from pipeline.reading.foot_names import resolve
from pipeline.reading.settling_work import LEFT_BARE
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, Status

_DONE_TO = "foot: done to the whole horse"
_WORK = frozenset({"trim", "reset"})
_OF_THE_THREE = ["of", "the", "three"]
_HIM = frozenset({"him", "her"})
_HE = frozenset({"he", "she"})
_CLOSES = frozenset(
    {
        ",", ";", "and", "but", "so", "up", "out", "today", "again", "now", "anyway", "back", "for", "as", "round",
        "around",
        *SENTENCE_ENDS,
    }
)  # fmt: skip
_GOT = frozenset({"got", "gets", "had", "has"})
_SHOD_BY = ("new_shoe", "reset", "put_back")
_OF_SHOES = ("shoe_size", "shoe_type", "shoe_material")
_LEFT_BARE_BY = ("trim", "removed")
_ALL_OF_IT = frozenset({
    "all", "whole", "lot", "everything", "throughout", "of", "it", "'s", "is", "are", "'re", "was", "were", "they",
    "them", "the", "in",
})  # fmt: skip


def of_the_horse(talk: Talk, draft: Draft, hand: Feet | None) -> bool:
    """ "Scratches on the right hind. Trimmed her, no shoes.": all her feet, unless a shoe in hand was told of."""
    if draft.slot == "finding" and hand is not None and len(hand) > 1:
        return _explained(talk, draft)
    if draft.slot != "work" or draft.value not in _WORK or hand is None:
        return False
    if LEFT_BARE in draft.rules and any(_DONE_TO in d.rules for d in _said_before(talk, draft)):
        return True  # "trimmed him round, left bare"
    said = talk.words[draft.start : draft.end]
    end = draft.end + 1 if talk.words[draft.end : draft.end + 1] in (["him"], ["her"]) else draft.end
    done_to = bool(_HIM & {*said, talk.words[end - 1]}) and set(talk.words[end : end + 1]) <= _CLOSES
    name = talk.mention_ending(draft.start)
    subject = talk.words[draft.start - 1] in ("he", "she") or (name is not None and name.get("horse") is not None)
    return (done_to or (said[0] in _GOT and subject)) and not _shoe_told(talk, draft, hand)


def _explained(talk: Talk, draft: Draft) -> bool:
    """ "He's chipped up, there's wall loss on the right front and on the left hind": said of him, then foot by foot."""
    segment = draft.segment
    behind = talk.segments[segment.index + 1 : segment.index + 2]
    of_him = talk.words[segment.start] in _HE and draft.end == segment.end
    told = bool(behind) and behind[0].sentence == segment.sentence and behind[0].joined_by(",")
    same = told and any((d.slot, d.value) == (draft.slot, draft.value) for d in behind[0].drafts)
    return of_him and same and bool(behind[0].having("feet"))


def _said_before(talk: Talk, draft: Draft) -> list[Draft]:
    return [d for s in talk.sentence(draft.segment.sentence) for d in s.drafts if d.start < draft.start]


def _shoe_told(talk: Talk, draft: Draft, hand: Feet) -> bool:
    """ "Left hind was loose. Reset him.": the shoe in hand is what was reset."""
    near = [s for s in talk.segments[: draft.segment.index] if draft.segment.sentence - s.sentence <= 1]
    return any(d.slot == "shoe_state" and d.feet == hand for s in near for d in s.drafts)


def in_every(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """ "Eight nails in every shoe": every foot that was shod."""
    if draft.slot == "shoe_state" or (draft.slot == "work" and draft.value == "removed"):
        return _every_shoe(talk, draft, hand)
    if draft.slot == "nail_size" and talk.words[draft.segment.start] == "all":
        return _all_counted(talk, draft)
    if draft.slot in ("shoe_material", "shoe_type"):
        return _all_of_it(talk, draft, hand)
    if draft.slot == "work" and draft.value == "new_shoe":
        return _all_new(talk, draft, hand)
    if draft.slot not in ("nails", "nail_size"):
        return None
    throughout = talk.words[draft.end : draft.end + 1] == ["throughout"]
    every = "every" in talk.words[draft.start : draft.end + 3]
    if _OF_THE_THREE in (talk.words[at : at + 3] for at in range(draft.end, draft.end + 3)):
        three = shod_so_far(talk, draft.segment)  # "reset both fronts and reset the near hind, … of the three"
        return three if len(three) == len(FEET) - 1 else None
    if not (every or throughout):
        return None
    return shod_so_far(talk, draft.segment) or None


def shod_so_far(talk: Talk, segment: Segment) -> Feet:
    """The feet of this horse that were told to have got a shoe before the segment."""
    return _worked(talk, segment, _SHOD_BY)


def the_shod(talk: Talk, segment: Segment, name: str) -> Feet | None:
    """ "Left fore is barefoot. The three with shoes are steel": those that got one, or are left when one was bared."""
    shod = shod_so_far(talk, segment)
    bare = [foot for foot in _bare(talk, segment) if foot not in shod]
    told = shod if not bare or len(shod) + len(bare) == len(FEET) else tuple(f for f in FEET if f not in bare)
    return told if len(told) == len(FEET) - 1 or (told and name == "shod_feet") else None


def _worked(talk: Talk, segment: Segment, values: tuple[str, ...]) -> Feet:
    before = [d for s in talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
    done = {foot for d in before if d.slot == "work" and d.value in values and not d.dropped for foot in _feet_of(d)}
    return tuple(foot for foot in FEET if foot in done)


def _feet_of(draft: Draft) -> Feet:
    """The feet of a draft, or, while its sentence still waits for them, those named beside it."""
    named = [m.readings["feet"] for m in draft.segment.having("feet")] if draft.feet is None else []
    return draft.feet or next((feet for name in named if (feet := resolve(name, None))), ())


def _bare(talk: Talk, segment: Segment) -> Feet:
    """The feet without a shoe: left bare, or told to have lost theirs."""
    before = [d for s in talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
    lost = {foot for d in before if (d.slot, d.value) == ("shoe_state", "lost") for foot in _feet_of(d)}
    bare = {*_worked(talk, segment, _LEFT_BARE_BY), *lost}
    return tuple(foot for foot in FEET if foot in bare)


def _all_of_it(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """ "Fronts reset, hinds new. All of it steel": every foot that got a shoe, unless another stuff was named there."""
    segment = draft.segment
    if not _said_of_all(talk, segment, draft):
        return None
    before = [d for s in talk.segments[: segment.index] if s.horse == segment.horse for d in s.drafts]
    other = {foot for d in before if d.slot == draft.slot and d.value != draft.value for foot in d.feet or ()}
    told = tuple(foot for foot in shod_so_far(talk, segment) if foot not in other)
    return told if told and set(told) != set(hand or ()) else None


def _all_new(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """ "Fronts, size two. Hinds, size one. All new": every foot whose shoe was told of, unless its work was told."""
    segment = draft.segment
    if not _said_of_all(talk, segment, draft):
        return None
    before = [d for s in talk.segments[: segment.index] if s.horse == segment.horse for d in s.kept]
    worked = {foot for d in before if d.slot == "work" for foot in _feet_of(d)}
    shod = {foot for d in before if d.slot in _OF_SHOES and d.status is Status.PRESENT for foot in _feet_of(d)}
    told = tuple(foot for foot in FEET if foot in shod - worked)
    return told if set(hand or ()) < set(told) else None


def _said_of_all(talk: Talk, segment: Segment, draft: Draft) -> bool:
    """Whether nothing stands in the segment but "all", "all of it", "the lot's" and the stuff."""
    rest = talk.words_beside(segment, range(draft.start, draft.end))
    return bool(rest & {"all", "whole", "lot", "everything", "throughout"}) and rest <= _ALL_OF_IT


def _all_counted(talk: Talk, draft: Draft) -> Feet | None:
    """ "Eight nails near fore, seven off fore, all size six": every foot whose nails were just counted."""
    here = draft.segment.sentence
    near = [[d for s in talk.sentence(n) for d in s.drafts if d.slot == "nails"] for n in (here, here - 1)]
    counted = {foot for d in near[0] or near[1] for foot in d.feet or ()}
    return tuple(foot for foot in FEET if foot in counted) or None


def _every_shoe(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """ "Every shoe worn thin", "all his shoes were loose": all four, unless a pair is spoken of."""
    words = set(talk.words[draft.segment.start : draft.segment.end])
    whole = bool({"every", "each", "all", "whole"} & words) and bool({"shoe", "shoes", "set"} & words)
    return FEET if whole and (hand is None or len(hand) == 1) else None
