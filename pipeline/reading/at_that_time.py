"""What was found at a time spoken of just before: "laminitis as a yearling, and a keratoma around then as well"."""

from __future__ import annotations

from pipeline.reading.recalling import recall_one
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.record import Status

_THEN = Sayings(
    "around then", "about then", "round then", "round about then", "around that time", "about that time",
    "round that time", "around the same time", "about the same time", "round the same time", "much the same time",
    "at the same time", "at that time", "the same year", "the same summer", "the same winter", "the same spring",
    "the same autumn", "the same fall", "the same season", "that same year", "that same summer", "that same winter",
    "that same spring", "that same season", "then as well", "then too", "then also",
    *(f"{films} then" for films in ("films", "film", "rays", "ray", "xrays", "plates", "pictures", "radiographs")),
)  # fmt: skip


def recall_then(talk: Talk, sentence: list[Segment], previous: list[Segment]) -> None:
    """Give a clause that points to "then" the earlier time of the statement before it, in this sentence or the last."""
    if not talk.tells(_THEN):
        return
    for position, segment in enumerate(sentence):
        if segment.drafts and not segment.present and _THEN.said_in(talk.words[segment.start : segment.end]):
            before = next((s for s in [*previous, *sentence[:position]][::-1] if s.drafts), None)
            if before is not None and any(d.status in (Status.HISTORY, Status.RESOLVED) for d in before.drafts):
                for draft in segment.drafts:
                    recall_one(draft)
