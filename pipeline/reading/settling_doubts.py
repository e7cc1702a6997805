"""Settling what was doubted and then answered: "I was thinking laminitis. No laminitis.", "I couldn't be sure"."""

from __future__ import annotations

from pipeline.reading.talk import Draft
from pipeline.record import Status

_ANSWERED_WITHIN = 2  # sentences from a thought to its denial


def settle_doubts(drafts: list[Draft]) -> None:
    """Drop a doubt or a statement that has its answer behind it, each by its own rule."""
    _thought_then_denied(drafts)
    _confirmed_in_the_end(drafts)
    _denied_in_the_end(drafts)
    _doubted_in_the_end(drafts)


def _thought_then_denied(drafts: list[Draft]) -> None:
    """ "I was thinking laminitis. No laminitis.": the doubt goes with its answer."""
    for draft in drafts:
        if draft.slot == "finding" and draft.status is Status.SUSPECTED:
            answers = [o for o in drafts if (o.slot, o.value) == (draft.slot, draft.value) and o.start > draft.start]
            answers = [o for o in answers if o.segment.sentence - draft.segment.sentence <= _ANSWERED_WITHIN]
            denied = [set(o.feet or ()) for o in answers if o.status is Status.ABSENT]
            if denied and set(draft.feet or ()) <= set().union(*denied):  # "none in the left front, none in the right"
                draft.drop("denied in the end")


def _confirmed_in_the_end(drafts: list[Draft]) -> None:
    """ "Might be an abscess, I said, and then the pus came, so it's an abscess": the doubt goes with its answer."""
    for draft in [d for d in drafts if d.slot == "finding" and d.status is Status.SUSPECTED]:
        near = [d for d in drafts if 0 <= d.segment.sentence - draft.segment.sentence <= 1 and d.start > draft.start]
        carried = set(draft.feet or ()) if draft.foot_carried else set()
        alike = [d for d in near if d.feet == draft.feet or (carried and carried < set(d.feet or ()))]
        sure = [d for d in alike if (d.slot, d.value, d.status) == (draft.slot, draft.value, Status.PRESENT)]
        if sure and None in (draft.zone, sure[0].zone):
            sure[0].zone = sure[0].zone or draft.zone
            draft.drop("confirmed in the end")


def _denied_in_the_end(drafts: list[Draft]) -> None:
    """ "I thought he had a corn in that foot, but no, no corn", "forging, no, he isn't forging": the denial."""
    denied = [draft for draft in drafts if draft.status is Status.ABSENT]
    for draft in drafts if denied else ():
        if (
            draft.slot in ("finding", "vet", "gait")
            and draft.status in (Status.PRESENT, Status.SUSPECTED, Status.PLANNED)
            and any(
                o.start > draft.start
                and (o.slot, o.value) == (draft.slot, draft.value)
                and ((o.segment.sentence == draft.segment.sentence and draft.slot != "gait") or o.corrects)
                and (o.feet == draft.feet or (draft.slot == "gait" and not o.feet))
                for o in denied
            )
        ):
            draft.drop("denied in the end")


def _doubted_in_the_end(drafts: list[Draft]) -> None:
    """ "There's a corn, medial heel, well, I say corn, I couldn't be sure": the doubt counts for the first word too."""
    suspected = any(d.status is Status.SUSPECTED for d in drafts)
    for draft in drafts if suspected else []:
        later = next(
            (
                o
                for o in drafts
                if o.status is Status.SUSPECTED
                and o.start > draft.start
                and (o.slot, o.value, o.feet) == (draft.slot, draft.value, draft.feet)
                and o.segment.sentence == draft.segment.sentence
            ),
            None,
        )
        if draft.slot == "finding" and draft.status is Status.PRESENT and later is not None:
            draft.status = Status.SUSPECTED
            later.drop("said again")
