"""Settling how the horse goes: a grade stands for "lame", "sound" denies it, and a foot named once is enough."""

from __future__ import annotations

from pipeline.reading.denials import NOT_SOUND
from pipeline.reading.talk import Draft
from pipeline.record import Status

_GONE = frozenset({Status.ABSENT, Status.RESOLVED})
_LISTENED = 2  # sentences from what was heard before to what is heard now


def settle_gaits(drafts: list[Draft]) -> None:
    """Drop the gaits that another statement of the same horse says better."""
    _gone_by_now(drafts)
    _not_sound(drafts)
    _grade_for_lame(drafts)
    _foot_for_none(drafts)


def _gone_by_now(drafts: list[Draft]) -> None:
    """ "She'd been overreaching in the winter, and she's not overreaching now": one thing that is gone.

    So in "he used to hit himself, interfering, and that's quit".
    """
    told = [d for d in drafts if d.slot == "gait" and d.value != "lame"]
    for draft in [d for d in told if d.status is Status.HISTORY]:
        for now in [d for d in told if d.value == draft.value and d.status in _GONE and d.start > draft.start]:
            apart = draft.feet and now.feet and set(draft.feet) != set(now.feet)
            near = now.segment.sentence - draft.segment.sentence <= _LISTENED
            if near and not draft.dropped and not apart:
                now.status, now.feet = Status.RESOLVED, now.feet or draft.feet
                now.note("gone by now")
                draft.drop("gone by now")


def _not_sound(drafts: list[Draft]) -> None:
    """ "Sound? No. Two out of five on the near fore.": how he goes instead says it."""
    for draft in [d for d in drafts if NOT_SOUND in d.rules]:
        behind = [d for d in drafts if 0 <= d.segment.sentence - draft.segment.sentence <= _LISTENED]
        if any(d.slot == "lameness" or (d.slot == "gait" and d is not draft) for d in behind if not d.dropped):
            draft.drop("said more exactly")


def _grade_for_lame(drafts: list[Draft]) -> None:
    """ "Two out of five lame" is the grade; "lame" alone is for when none is said; "sound" denies it by itself."""
    sound = {d.segment.sentence for d in drafts if d.slot == "gait" and d.value == "sound"}
    grades = [d for d in drafts if d.slot == "lameness"]
    graded = {(d.segment.sentence, d.status) for d in grades}
    behind = {(d.segment.sentence - 1, d.status, d.feet) for d in grades if "elliptic" in d.rules}
    for draft in [d for d in drafts if d.slot == "gait" and d.value == "lame"]:
        said = (draft.segment.sentence, draft.status)
        doubted = draft.status is Status.PRESENT and (said[0], Status.SUSPECTED) in graded
        if doubted or said in graded or (*said, draft.feet) in behind:
            draft.drop("the grade says it")
        if draft.status is Status.ABSENT and draft.segment.sentence in sound:
            draft.drop("sound says it")


def _foot_for_none(drafts: list[Draft]) -> None:
    """ "She brushes, interferes behind", "a three, three out of five on the off fore": once with feet, once without."""
    told = [d for d in drafts if d.slot in ("gait", "lameness")]
    footed = {(d.slot, d.value, d.status, d.segment.sentence) for d in told if d.feet}
    for draft in [d for d in told if not d.feet]:
        seen = Status.PRESENT if draft.status is Status.SUSPECTED else draft.status  # "the owner thinks …, and it's …"
        if {(draft.slot, draft.value, s, draft.segment.sentence) for s in (draft.status, seen)} & footed:
            draft.drop("said with its foot")
