"""Settling what was doubted and then answered: "I was thinking laminitis. No laminitis.", "I couldn't be sure"."""

from __future__ import annotations

from pipeline.reading.sayings import said_whole
from pipeline.reading.scopes import last_doubtable
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.record import Status

_DENIED = frozenset({"finding", "vet", "gait"})
_ANSWERED_WITHIN = 2  # sentences from a thought to its denial
_LEADING = frozenset({"and", "but", "yes", "yeah", "no", "aye", "well", "so", "then"})
_SURE = ("", "sure enough ", "turns out ", "turned out ", "it turns out ", "it turned out ")
_IT_IS = said_whole(
    *(f"{sure}{it}" for sure in _SURE
      for it in ("it is", "it was", "there is", "there was", "he has", "she has", "they are")),
    "i was right", "i was n't wrong", "i was not wrong", "it is one", "it was one", "it is so", "turned out to be",
    "turned out to be one", "turned out i was right", "sure enough",
)  # fmt: skip
_IT_IS_NOT = said_whole(
    "i was wrong", "turned out not to be", "turned out not", "turned out it was n't", "turns out it is n't",
    "turns out it 's not", "turned out it was not", "turns out i was wrong", "turned out i was wrong",
    "it turned out not", "it turned out not to be",
)  # fmt: skip
_PUS = frozenset({"pus"})
_SETTLING = frozenset({"is", "was", "has", "are", "sure", "turned", "turns"})


def settle_doubts(drafts: list[Draft]) -> None:
    """Drop a doubt or a statement that has its answer behind it, each by its own rule."""
    told = {draft.status for draft in drafts}
    suspected = Status.SUSPECTED in told
    if suspected:
        _thought_then_denied(drafts)
        _confirmed_in_the_end(drafts)
    if Status.ABSENT in told:
        _denied_in_the_end(drafts)
    if suspected:
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
    denied = [draft for draft in drafts if draft.status is Status.ABSENT and draft.slot in _DENIED]
    named = {(draft.slot, draft.value) for draft in denied}
    for draft in drafts if named else ():
        if (
            draft.slot in _DENIED
            and (draft.slot, draft.value) in named
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
    for draft in drafts:
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


def settle_guess(talk: Talk, sentence: Sentence, before: list[Segment]) -> None:
    """ "Might be a corn. It is.", "I suspected a corn and I was wrong": what is doubted and settled in a clause."""
    if talk.says(_PUS) and sentence.says(_PUS):
        _no_pus_yet(talk, sentence, before)
    if sentence.lacks(_SETTLING):
        return
    for position, segment in enumerate(sentence):
        words = [word for word in talk.words[segment.start : segment.end] if word not in _LEADING]
        there, gone = tuple(words) in _IT_IS, tuple(words) in _IT_IS_NOT
        if segment.drafts or not (there or gone):
            continue
        told = last_doubtable(sentence[:position]) or (last_doubtable(before) if not position else [])
        told = told or [d for d in last_doubtable(before) if all(s.end - s.start == 1 for s in sentence[:position])]
        for draft in [d for d in told if d.status is Status.SUSPECTED and d.segment.horse == segment.horse]:
            draft.status = Status.PRESENT if there else Status.ABSENT
            draft.note("settled" if there else "denied")
            draft.evidence.update(range(segment.start, segment.end))


def _no_pus_yet(talk: Talk, sentence: Sentence, before: list[Segment]) -> None:
    """ "I suspect an abscess, but I didn't get any pus": suspected still, since not all of them run at once."""
    told = [d for s in [*before, *sentence] for d in s.kept if d.value == "abscess"]
    doubted = [d for d in told if d.status is Status.SUSPECTED]
    for draft in told:
        dry = draft.status is Status.ABSENT and talk.words[draft.end - 1] in _PUS
        if dry and any(d.start < draft.start and d.feet == draft.feet for d in doubted):
            draft.drop("no pus yet")
