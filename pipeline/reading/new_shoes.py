"""The "new" that is said before what was put on: "new egg bars", "brand new today"; not "new, no, not new, reset"."""

from __future__ import annotations

from pipeline.reading.drafting import SHOE_NOUNS
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import said_whole
from pipeline.reading.size_ranges import new_on_a_foot
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_NEW = frozenset({"new", "fresh", "brand"})
_NEW_ALONE = frozenset(
    {"new", "brand", "also", "all", "both", "four", "too", "they", "'re", "those", "are", "it", "'s", "that"}
    | {"so", "as", "well"}
)
_NEW_TODAY = _NEW_ALONE | {"today", "now", "this", "time", "set", "morning", "ones", "on", "put", "fresh"}
_NEW_ON_FEET = _NEW_TODAY | {"he", "she", "i", "went", "got", "had", "with", "in", "for", "the", "is", "was", "were"}
_NEW_ON_FEET |= {"did", "done", "only", "just", "'ve", "have", "has", "shod", "reshod", "him", "her"}
_ON_THOSE = (["on", "those"], ["on", "them"], ["on", "these"])  # "hinds were worn, so new on those as well"
_NEW_ON_THEM = _NEW_ON_FEET | {"them", "these", "and"}
_PUT_NEW_ON = said_whole(
    "put new on", "put on new", "new on", "nailed new on", "put new back on", "fitted new", "i put new on",
    "shoe 's new", "shoe is new", "the shoe 's new", "the shoe is new", "that shoe 's new", "shoe 's a new one",
    "the shoe 's a new one", "the shoe is a new one", "that shoe 's a new one", "shoes are new", "the shoes are new",
    "both shoes are new", "those shoes are new", "shoes new",
)  # fmt: skip
_THAT_WAS = said_whole("that was", "that is", "that one was", "that one is", "those were", "they were", "they are")
_OF_A_SHOE = ("shoe_size", "nails", "nail_size")
_WHAT_IS_NEW = frozenset({"nothing", "anything", "something", "nowt", "owt", "summat"})
_NEW_REACH = 5
_NOT_NEW_WITHIN = 8  # tokens


def draft_new(talk: Talk) -> None:
    """ "New egg bars", "in new glue-ons": new before a shoe word is a new shoe put on."""
    places = talk.where(_NEW)
    for segment in talk.segments:
        for index in [at for at in places if segment.start <= at < segment.end] if places else ():
            put_on = tuple(talk.words[segment.start : segment.end]) in _PUT_NEW_ON  # "the shoe's a new one"
            inside = _inside_strong(segment, index) and not put_on
            if inside or _not_new(talk, index):
                continue
            noun = _shoe_behind(talk, segment, index)
            if put_on or _new_size(talk, segment, index):
                segment.drafts.append(_new_draft(segment, index, set()))
                continue
            feet = {i for m in segment.having("feet") for i in range(m.start, m.end)}
            held = feet.union(*(range(m.start, m.end) for m in segment.having("horse")))
            rest = talk.words_beside(segment, held)
            told = rest <= _NEW_TODAY and _shoes_told(talk, segment)
            told = told or (talk.words[index + 1 : index + 3] in _ON_THOSE and rest <= _NEW_ON_THEM)
            if rest <= (_NEW_ON_FEET if feet else _NEW_ALONE) or told or _new_that_was(talk, segment):
                segment.drafts.append(_new_draft(segment, index, set()))
                continue
            led = index + 1 if talk.words[index + 1 : index + 2] in (["on"], ["for"]) else index
            reach = led + 2 if led > index else index + 1
            footed = next((m for m in segment.mentions if index < m.start <= reach and m.get("feet")), None)
            within = footed is not None and talk.words[footed.end : footed.end + 1] == [
                "in"
            ]  # "new all round in steel"
            if footed is not None and (noun is None or within):
                segment.drafts.append(_new_draft(segment, index, set()))
                continue
            if noun is None or noun.start - index > _NEW_REACH or _blocked(segment, index, noun):
                continue
            segment.drafts.append(_new_draft(segment, index, set(noun.literal)))
        if len(segment.drafts) > 1:
            segment.drafts.sort(key=lambda d: (d.start, d.end))


def _new_size(talk: Talk, segment: Segment, index: int) -> bool:
    """ "New twos", "new triple noughts", "new number ones", "so that's a new ten": a size for its shoe."""
    named = talk.mention_starting(index + 1)
    at = named.end if named is not None and named.get("measures") == "shoe_size" else index + 1
    sized = next((m for m in segment.mentions if m.start == at and m.number is not None), None)
    if sized is None or sized.number is None:
        return False
    if new_on_a_foot(talk, sized) or at > index + 1:  # "new size three on the fronts"
        return True
    led = talk.words[index - 1] in ("a", "an", "brand")
    return sized.number.plural or bool(sized.number.aughts) or led


def _new_that_was(talk: Talk, segment: Segment) -> bool:
    """ "A straight bar across it. New that was, steel.": the shoe just told of."""
    before = talk.segments[segment.index - 1] if segment.index else None
    words = talk.words[segment.start : segment.end]
    shod = before is not None and before.horse == segment.horse and any(m.is_any(SHOE_NOUNS) for m in before.mentions)
    return shod and words[0] == "new" and tuple(words[1:]) in _THAT_WAS


def _shoes_told(talk: Talk, segment: Segment) -> bool:
    """ "Number one, plain steel, both fronts, brand new today": shoes are spoken of before it in the sentence."""
    before = [s for s in talk.sentence(segment.sentence) if s.index < segment.index]
    return any(
        m.is_any((*SHOE_NOUNS, "clips", "traction")) or m.get("measures") in _OF_A_SHOE
        for s in before
        for m in s.mentions
    )


def _not_new(talk: Talk, index: int) -> bool:
    """ "New, no, not new, reset": said to be none right behind; "nothing new in that" is of no shoe at all."""
    if index and talk.words[index - 1] in _WHAT_IS_NEW:
        return True
    behind = talk.words[index + 1 : index + _NOT_NEW_WITHIN]
    stop = next((i for i, word in enumerate(behind) if word in SENTENCE_ENDS), len(behind))
    closed: tuple[list[str], ...] = ([","], ["but"], ["."], [])  # not "new in front, not new behind"
    return any(
        behind[i : i + 2] == ["not", talk.words[index]] and behind[i + 2 : i + 3] in closed for i in range(stop - 1)
    )


def _shoe_behind(talk: Talk, segment: Segment, index: int) -> Mention | None:
    """The shoe word behind "new", also one that was exchanged: "new egg bars, no, I went straight bars"."""
    near = talk.starting_in(index + 1, segment.end)
    inside = [m for m in near if any(name in m.readings for name in SHOE_NOUNS)]
    exchanged = {id(m.stands_for) for m in talk.mentions if m.stands_for is not None}
    return next((m for m in inside if not m.dropped or id(m) in exchanged), None)


def _new_draft(segment: Segment, index: int, shoe: set[int]) -> Draft:
    draft = Draft("work", "new_shoe", segment, index, index + 1)
    draft.evidence.update({index, *shoe})
    draft.note("work: new before a shoe")
    return draft


def _inside_strong(segment: Segment, index: int) -> bool:
    return any(index in m.literal and m.is_any(("work", "horse_cues", "not_facts")) for m in segment.mentions)


def _blocked(segment: Segment, index: int, noun: Mention) -> bool:
    between = [m for m in segment.mentions if index < m.start < noun.start]
    return any(m.is_any(("findings", "pads", "feet", "treatments")) for m in between)
