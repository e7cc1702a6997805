"""A finding that is only spoken of again, as the reason for something: "for the canker I want him sooner"."""

from __future__ import annotations

from pipeline.reading.talk import Draft, Talk
from pipeline.record import Status

_REASON = (["for"], ["because", "of"], ["account", "of"], ["with"], ["given"], ["about"], ["regarding"])
_POINTING = frozenset({"the", "that", "this", "his", "her", "their"})
_MOST_BETWEEN = 2  # words between the pointing word and the finding: "that quarter crack"


def drop_spoken_again(talk: Talk) -> None:
    """Take out a finding behind "for the", "because of that", when it was told of this horse before."""
    told: list[Draft] = []
    for segment in talk.segments:
        for draft in [d for d in segment.drafts if d.slot == "finding" and not d.dropped]:
            before = [d for d in told if d.segment.horse == segment.horse and d.value == draft.value]
            there = [d for d in before if d.status in (Status.PRESENT, Status.SUSPECTED) and not d.dropped]
            if there and draft.status is Status.PRESENT and _is_reason(talk, draft):
                draft.drop("spoken of again")
            told.append(draft)


def _is_reason(talk: Talk, draft: Draft) -> bool:
    footed = {i for m in draft.segment.having("feet") for i in m.literal}
    for between in range(_MOST_BETWEEN + 1):
        at = draft.start - 1 - between
        if at <= draft.segment.start or at + 1 in footed or talk.words[at] not in _POINTING:
            continue
        return any(talk.words[at - len(lead) : at] == lead for lead in _REASON)
    return False
