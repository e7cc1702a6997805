"""What was found at a time spoken of just before: "laminitis as a yearling, and a keratoma around then as well"."""

from __future__ import annotations

from pipeline.reading.recalling import recall_one
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Sentence, Talk
from pipeline.record import Status

_THEN = Sayings(
    "around then", "about then", "round then", "round about then", "around that time", "about that time",
    "round that time", "around the same time", "about the same time", "round the same time", "much the same time",
    "at the same time", "at that time", "the same year", "the same summer", "the same winter", "the same spring",
    "the same autumn", "the same fall", "the same season", "that same year", "that same summer", "that same winter",
    "that same spring", "that same season", "then as well", "then too", "then also",
    *(f"{films} then" for films in ("films", "film", "rays", "ray", "xrays", "plates", "pictures", "radiographs")),
)  # fmt: skip


_IT_WAS = Sayings("it was", "that was", "he was", "she was", "they called it", "they said it was", "the vet called it")
_BEGINS = _THEN.first_words | _IT_WAS.first_words
_LEAD = 2  # tokens before the number of the grade
_GRADES = frozenset({"obel", "lameness"})


def recall_then(talk: Talk, sentence: Sentence, previous: list[Segment]) -> None:
    """Give a clause that points to "then" the earlier time of the statement before it, in this sentence or the last."""
    if not sentence.says(_BEGINS) or not talk.tells(_THEN, _IT_WAS):
        return
    for position, segment in enumerate(sentence):
        if segment.drafts and not segment.present and (_points_then(talk, segment) or _graded_then(talk, segment)):
            told = [*previous, *sentence[:position]][::-1]
            before = next((s for s in told if s.drafts), None)
            if _today_between(told) and not _points_then(talk, segment):
                continue
            if before is not None and any(d.status in (Status.HISTORY, Status.RESOLVED) for d in before.drafts):
                for draft in segment.drafts:
                    recall_one(draft)


def _today_between(told: list[Segment]) -> bool:
    """ "She foundered last spring. Trotted her up, two out of five it was": something else stands between."""
    return bool(told) and not told[0].drafts and not told[0].having("times", "history")


def _points_then(talk: Talk, segment: Segment) -> bool:
    return _THEN.said_in(talk.words[segment.start : segment.end])


def _graded_then(talk: Talk, segment: Segment) -> bool:
    """ "She foundered two winters back, Obel three it was": a grade and nothing else, as it was then."""
    first, last = segment.drafts[0], segment.drafts[-1]
    closing = any(at + len(form) == segment.end for at, form in _IT_WAS.within(talk.words, last.end, segment.end))
    return first is last and first.slot in _GRADES and first.start - segment.start <= _LEAD and closing
