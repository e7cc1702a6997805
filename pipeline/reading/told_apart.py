"""Two feet told of one by one: "left front was sprung, right hind was worn through. New shoes on those two"."""

from __future__ import annotations

from pipeline.reading.foot_groups import SETUP_SLOTS, FootGroup
from pipeline.reading.pointed_out import is_across
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import FEET

_ARE = (["are"], ["'re"], ["were"], ["both"], ["got"], ["have"])
_PLURAL = ("those", "they", "these")
_IN_THEM = (
    ["in", "them"], ["on", "them"], ["under", "them"], ["under", "those"], ["on", "those"], ["in", "those"],
    ["the", "two"], ["those", "two"],
)  # fmt: skip
_NAMED = frozenset({"other_three", "other_two", "other", "other_front", "other_hind", "fronts", "hinds"})
_POINTING = frozenset({"those", "them", "these", "there", "that"})
_DONE_TO_THEM = ("reset", "put_back", "removed")
_ONLY, _PUT_UNDER, _IN_HAND = frozenset({"only", "alone"}), ("pad", "packing", "wedge"), "foot: still in hand"
_JUST = 2  # sentences from the feet told one by one to the word for both


def told_apart(talk: Talk, sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> Feet | None:
    """A front and a hind that were told of in one sentence, or in two in a row, with nothing said of another foot."""
    named = _single_feet(sentence, groups)
    if named is None:
        return None
    before = talk.sentence(sentence[0].sentence - 1) if sentence[0].sentence else []
    if len(named) == 1 and before and before[-1].horse == sentence[0].horse:
        one = _single_feet(before, groups)
        named = [*one, *named] if one is not None and len(one) == 1 else named
    feet = tuple(foot for foot in FEET if foot in named)
    return feet if is_across(feet) else None


def _single_feet(sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> list[str] | None:
    """The feet named one by one in a sentence, in order; None where several are named at once."""
    named: list[str] = []
    for group in [g for s in sentence for g in groups.get(s.index, ()) if not g.anaphor]:
        if len(group.feet) != 1:
            return None
        if group.feet[0] not in named:
            named.append(group.feet[0])
    return named if named and len({s.horse for s in sentence}) == 1 else None


def those(talk: Talk, draft: Draft, feet: Feet | None) -> Feet | None:
    """ "Leather under the left front, a rim pad under the right, oakum in the leather one. Those are new": the pair."""
    if draft.slot not in SETUP_SLOTS or feet is None or len(feet) != 1:
        return feet
    if not _several(talk, draft):
        return feet
    other = ("R" if feet[0][0] == "L" else "L") + feet[0][1]
    near = [s for s in talk.segments[: draft.segment.index] if 0 <= draft.segment.sentence - s.sentence <= _JUST]
    told = {foot for s in near if s.horse == draft.segment.horse for d in s.drafts for foot in d.feet or ()}
    return tuple(foot for foot in FEET if foot in (*feet, other)) if other in told else feet


def _done_to_them(talk: Talk, draft: Draft) -> bool:
    """ "Left front was worn, right front was worn, and I reset them, six nails": and what is listed behind it."""
    near = [d for s in talk.sentence(draft.segment.sentence) for d in s.drafts if d.start <= draft.start]
    done = next((d for d in reversed(near) if d.slot == "work" and d.value in _DONE_TO_THEM), None)
    if done is None or "them" not in talk.words[done.start : done.end + 1]:
        return False
    return not any(m.get("feet") for m in talk.starting_in(done.end, draft.start))


def _that_too(talk: Talk, draft: Draft) -> bool:
    """ "I reset that, and the off fore too, plain, size nought": what is listed behind is on the two."""
    sentence = [s for s in talk.sentence(draft.segment.sentence) if s.index < draft.segment.index]
    footed = [s for s in sentence if s.having("feet")]
    if not footed or draft.segment.own_clause or draft.segment.having("feet") or draft.slot == "work":
        return False
    last = footed[-1]
    done = any(
        d.slot == "work" and d.value in _DONE_TO_THEM for s in sentence for d in s.drafts if s.index < last.index
    )
    return done and not last.drafts and bool(last.having("same", "too")) and last.joined_by("and", ", and")


def _several(talk: Talk, draft: Draft) -> bool:
    """ "Those are new", "trimmed, those", "road nails in them", "I took the two off and put new on", "reset them"."""
    if _done_to_them(talk, draft) or _that_too(talk, draft):
        return True
    start = talk.sentence(draft.segment.sentence)[0].start
    opened = talk.words[start] in _PLURAL and talk.words[start + 1 : start + 2] in _ARE
    closed = talk.words[draft.segment.end : draft.segment.end + 2] == [",", "those"]
    them = any(talk.words[i : i + 2] in _IN_THEM for i in range(start, _listed_on(talk, draft) - 1))
    return opened or closed or them


def _listed_on(talk: Talk, draft: Draft) -> int:
    """ "Two degree wedges and putty under those": the end of the list that the draft opens."""
    end = draft.segment.end
    for behind in talk.sentence(draft.segment.sentence):
        if behind.index > draft.segment.index:
            if behind.own_clause or not behind.joined_by(",", "and", ", and") or not behind.drafts:
                break
            end = behind.end
    return end


def of_the_others(
    talk: Talk, segment: Segment, groups: dict[int, list[FootGroup]], found: list[FootGroup]
) -> list[FootGroup]:
    """ "Near fore, heat. The other three are fine, no heat in those": a denial behind feet that were only named."""
    before = talk.segments[segment.index - 1] if segment.index and segment.drafts else None
    if before is None or before.drafts or not segment.having("denials"):
        return found
    names = [m.readings["feet"] for m in before.having("feet")]
    near = before.horse == segment.horse and segment.sentence - before.sentence <= 1
    if not near or not groups[before.index] or not names or names[-1] not in _NAMED:
        return found
    others = groups[before.index][-1].feet
    everywhere = bool(found) and all(group.feet == FEET for group in found)  # "in any of those"
    opens = talk.words[segment.start] == "there"  # "there's no flare in all four" points at none
    pointed = bool(_POINTING & set(talk.words[segment.start + opens : segment.end]))
    if (found and not (everywhere and pointed)) or not (pointed or _found_before(talk, segment, others)):
        return found
    return [FootGroup(segment.start, segment.start, others, True)]


def _found_before(talk: Talk, segment: Segment, others: Feet) -> bool:
    """Whether what the segment denies was just found on a foot that is none of the others."""
    near = [s for s in talk.segments[: segment.index] if segment.sentence - s.sentence <= _JUST]
    told = {(d.slot, d.value) for s in near for d in s.drafts if d.feet and not set(d.feet) & set(others)}
    return any((d.slot, d.value) in told for d in segment.drafts if d.slot == "finding")


def both_on_this_one(talk: Talk) -> None:
    """ "Reset in front, a mesh pad and putty on the off fore only": what an "and" joins to it is on that foot too."""
    for segment in talk.segments[1:]:
        before, feet = talk.segments[segment.index - 1], segment.having("feet")
        if not segment.joined_by("and") or len(feet) != 1 or feet[0].get("feet") not in FEET:
            continue
        only = not _ONLY.isdisjoint(talk.words[feet[0].end : feet[0].end + 2])
        put = [d for d in before.drafts if d.slot in _PUT_UNDER and _IN_HAND in d.rules and not d.dropped]
        for draft in put if any(d.slot in _PUT_UNDER and d.feet for d in segment.drafts) else ():
            single = not talk.words[draft.end - 1].endswith("s")  # "pads" are on both
            if single and (only or talk.words[draft.start - 1] in ("a", "an", "one")):
                draft.feet = (str(feet[0].get("feet")),)
                draft.note("foot: on this one alone")
