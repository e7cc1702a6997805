"""A foot or a horse shod as another, "the right hind got exactly what the left hind got", or with "as many nails"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.copying import Copied, copy_draft, told_before
from pipeline.reading.foot_groups import SETUP_SLOTS, FootGroup, Groups
from pipeline.reading.opening import REPEATING
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_TWO = 2
_WHAT = frozenset({"what", "whatever"})
_GOT = frozenset({"got", "gets", "has", "had", "did", "does", "have", "wears", "is", "was", "wearing", "getting", "'s"})
_LIGHT = _GOT | _WHAT | {
    "the", "exactly", "just", "all", "of", "that", "on", "in", "it", "he", "she", "his", "her", "so", "and", "then",
    "i", "gave", "put", "done", "up", "with",
}  # fmt: skip
_CONTRARY = frozenset({"opposite", "versa", "reverse", "way"})
_NOT_THE_SAME = Sayings("n't say the same", "not say the same", "cannot say the same", "wish i could say the same")
_JUST = _LIGHT | {"other", "exact", "vice", "round", "around", "about", "foot"}
AS_MANY = Sayings("same number", "same count", "as many", "same nails", "same nail count", "same amount of nails")
SAME_SIZE = Sayings(
    "same size nail", "same size nails", "same sized nails", "same sized nail", "same nail size", "same size of nail",
    "same size of nails", "same nail",
)  # fmt: skip
_RULES = {"nails": "the same number of nails", "nail_size": "the same size of nail"}


def copy_shoeing(talk: Talk, segment: Segment, groups: Groups) -> list[Copied]:
    """What was put on the foot that is named behind "what", on the foot named before it."""
    if not talk.says(_WHAT):
        return []
    found = groups[segment.index]
    pair = found if len(found) > 1 else [*_alone_before(talk, segment, groups), *found]
    if len(pair) != _TWO or pair[0].anaphor or not _WHAT & set(talk.words[pair[0].end : pair[1].start]):
        return []
    named = {i for group in pair for i in range(group.start, group.end)}
    rest = talk.words_beside(segment, named)
    if not rest <= _LIGHT or not rest & _GOT or set(pair[0].feet) & set(pair[1].feet):
        return []
    told = [d for d in told_before(talk, segment) if d.slot in SETUP_SLOTS and d.status is Status.PRESENT]
    last: dict[str, Draft] = {d.slot: d for d in told if set(pair[1].feet) <= set(d.feet or ())}
    return [c for draft in last.values() for c in copy_draft(segment, draft, pair[0].feet, "as the other foot")]


def _alone_before(talk: Talk, segment: Segment, groups: Groups) -> list[FootGroup]:
    """ "The right front, just what the left front got": the foot stands alone in the segment before."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or before.sentence != segment.sentence or before.drafts:
        return []
    return groups.get(before.index, [])[:1]


def ask_contrary(talk: Talk) -> None:
    """ "Rio. The opposite." behind another horse's facts: of what, is asked."""
    _ask_not_the_same(talk)
    for segment in talk.segments if talk.says(_CONTRARY) else ():
        named = {i for m in segment.having("horse") for i in range(m.start, m.end)}
        words = talk.words_beside(segment, named)
        last = next((s for s in reversed(talk.segments[: segment.index]) if s.drafts), segment)
        said = words & _CONTRARY - {"way"} or {"other", "way"} <= words
        if (named or last.horse != segment.horse) and said and words <= _CONTRARY | _JUST and not segment.drafts:
            talk.unread.append((segment.start, segment.end, "the opposite of the horse before, but not what of it"))


def _ask_not_the_same(talk: Talk) -> None:
    """ "No thrush in the near hind. Can't say the same for the off": perhaps there, if it is not told behind."""
    for at, form in talk.turns(_NOT_THE_SAME):
        segment = talk.segment_at(at)
        if segment is None:
            continue
        near = [s for number in (-1, 0) for s in talk.sentence(segment.sentence + number)]
        denied = any(s.having("denials") for s in near if s.index < segment.index)
        behind = [d for s in near if s.index >= segment.index for d in s.kept]
        copies = [d for d in behind if "the same on another foot" in d.rules]
        for draft in copies:
            draft.status = Status.SUSPECTED
            if not denied or len(copies) < len(behind):
                draft.drop("the same is not said of it")
        if not any(not d.dropped for d in behind):
            talk.unread.append((at, at + len(form), "that the same can't be said of another, but not what can"))


def as_the_horse_before(talk: Talk, segment: Segment) -> bool:
    """Whether a horse's talk opens with "same deal", before anything is said of it."""
    same = segment.having("same", "same")
    if segment.horse < 0 or not same:
        return False
    before = talk.segments[: segment.index]
    own = [s for s in before if s.horse == segment.horse]
    run = next((i for i, s in enumerate(reversed(before)) if s.horse != segment.horse), 0)
    if len(own) == len(before) or any(s.drafts for s in own) or run > 1:
        return False
    if any(s.having("units") for s in talk.sentence(segment.sentence)):
        return False
    told = [d.slot for s in before if s.horse != segment.horse for d in s.kept if d.feet]
    named = [*same, *segment.having("horse"), *segment.having("feet")]
    rest = talk.words_beside(segment, {i for m in named for i in range(m.start, m.end)})
    found = told[-1:] == [] or told[-1] not in SETUP_SLOTS
    return rest <= REPEATING and not (found and rest & {"is", "was", "'s"})


def copy_other_horse(talk: Talk, segment: Segment, found: list[FootGroup]) -> list[Copied]:
    """ "Jubilee, same deal front and back": the shoeing of the horse before, on the feet named or on all it had."""
    others = [s for s in talk.segments[: segment.index] if s.horse != segment.horse]
    drafts = [d for s in others if s.horse == others[-1].horse for d in s.kept if d.feet or d.slot == "work"]
    copies = []
    for draft in [d for d in drafts if d.slot in SETUP_SLOTS and d.status is Status.PRESENT]:
        named = found[-1].feet if found else draft.feet or ()
        feet = tuple(f for f in draft.feet or named if f in named)
        if feet or not (draft.feet or found):  # "Trim. Duke. Same."
            evidence = set(range(segment.start, segment.end)) | draft.evidence
            made = replace(draft, feet=feet or None, segment=segment, start=segment.start, end=segment.end)
            made.evidence = evidence
            made.rules = [*draft.rules, "the same as the horse before"]
            segment.drafts.append(made)
            copies.append(Copied(made, draft))
    return copies


def copy_nails(talk: Talk, segment: Segment, groups: Groups) -> list[Copied]:
    """The nails told last, their number or their size, on the feet of the segment or of those before it."""
    if not talk.tells(AS_MANY, SAME_SIZE):
        return []
    words = talk.words[segment.start : segment.end]
    slot = "nails" if AS_MANY.said_in(words) else "nail_size" if SAME_SIZE.said_in(words) else ""
    if not slot or {"not", "n't", "twice", "half"} & set(words) or any(d.slot == slot for d in segment.drafts):
        return []
    counted = [d for d in told_before(talk, segment) if d.slot == slot and d.feet]
    sentence = [s for s in talk.sentence(segment.sentence) if s.index <= segment.index]
    named = [g.feet for s in sentence for g in groups.get(s.index, []) if not g.anaphor]
    if not counted or not named or named[-1] == counted[-1].feet:
        return []
    return copy_draft(segment, counted[-1], named[-1], _RULES[slot])
