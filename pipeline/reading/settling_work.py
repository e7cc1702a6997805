"""What work and packing say twice: shoes left off leave the foot bare, shoes put back unlost were reset."""

from __future__ import annotations

from pipeline.reading.talk import Draft
from pipeline.record import Status

LEFT_BARE = "work: said to be left bare"
SAME_BACK = "work: the same shoes back on"
SAME_SHOE = "work: the same shoe"
_OAKUM_ALONE = 2  # tokens: more of them name the pine tar with it
_JUST = 1  # sentences from the shoes taken off to the bare feet, from a loose shoe to its going on again
_STILL_ON = frozenset({"loose", "sprung", "worn"})


def settle_bare(drafts: list[Draft]) -> None:
    """ "Pulled his shoes, leaving him bare", "the shoe's off and it'll stay off": off and left off, no more."""
    removed = [d for d in drafts if d.slot == "work" and d.value == "removed"]
    off = [d for d in removed if d.status is Status.PRESENT]
    for stays in [d for d in removed if d.status is Status.PLANNED] if off else ():
        if any(_here(d, stays) and d.feet == stays.feet for d in off):
            stays.drop("taken off and left off")
    left = (Status.PRESENT, Status.PLANNED)  # "his shoes are off and he's to stay barefoot"
    for bare in [d for d in drafts if LEFT_BARE in d.rules and d.status in left] if off else ():
        near = [d for d in off if 0 <= bare.segment.sentence - d.segment.sentence <= _JUST and d.start < bare.start]
        if any(set(bare.feet or ()) <= set(d.feet or ()) for d in near):
            bare.drop("taken off and left off")


def _here(off: Draft, stays: Draft) -> bool:
    """Whether the shoe taken off stays so in the same breath."""
    return off.segment.sentence == stays.segment.sentence and off.start < stays.start


def back_on_without_loss(drafts: list[Draft]) -> None:
    """ "The fronts went back on", "near fore, same shoe back on": what was not lost was reset.

    So was a shoe that was loose or sprung: "the near fore was sprung, I flattened it before it went back on".
    """
    lost = [d for d in drafts if d.slot == "shoe_state" and d.value == "lost"]
    there = [d for d in drafts if d.slot == "shoe_state" and d.value in _STILL_ON and d.feet]
    for draft in [d for d in drafts if d.slot == "work" and d.value == "put_back"]:
        here = [d for d in lost if not d.feet or not draft.feet or set(d.feet) & set(draft.feet)]
        same = not {SAME_BACK, SAME_SHOE}.isdisjoint(draft.rules) and bool(draft.feet) and not here
        sprung = any(set(draft.feet or ()) == set(d.feet or ()) and _told_near(d, draft) for d in there) and not here
        if same or sprung or (len(draft.feet or ()) > 1 and not lost):
            draft.value = "reset"


def _told_near(state: Draft, work: Draft) -> bool:
    return state.status is Status.PRESENT and 0 <= work.segment.sentence - state.segment.sentence <= _JUST


def tar_in_oakum(drafts: list[Draft]) -> None:
    """ "Oakum, pine tar with it", "pine tar. Oakum and pine tar": oakum is one packing, with or without pine tar."""
    packed = [d for d in drafts if d.slot == "packing" and d.value == "oakum"]
    named = [d for d in packed if d.end - d.start > _OAKUM_ALONE]
    oakum = {(d.segment.sentence, d.feet) for d in packed} | {(d.segment.sentence - 1, d.feet) for d in named}
    for draft in drafts:
        if draft.slot == "packing" and draft.value == "pine_tar" and (draft.segment.sentence, draft.feet) in oakum:
            draft.drop("belongs to the oakum")
