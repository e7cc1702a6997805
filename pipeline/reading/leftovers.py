"""Sentences in which something of a foot was said and nothing was read: put before a person, never passed over.

Tried on talk that the rules had not been written for: of the sentences that are flagged here a third held a fact that
was missed; a foot or a little word alone would flag many more for nothing.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from pipeline.reading.some_of_it import how_far
from pipeline.reading.talk import Segment, Talk

Left = tuple[int, int, str]  # tokens [start, end) and the sentence that says why

_UNKNOWN_BESIDE_A_FOOT = 2  # words that no list knows, beside a foot, before a sentence is put before him
# A foot by its name; "behind", "the lot" and "the other three" are said of much else.
_FOOT_WORDS = frozenset(["fore", "fores", "front", "fronts", "hind", "hinds", "lf", "rf", "lh", "rh"])
# All is well, or was left alone: no fact, and nothing to look at.
_QUIET = frozenset({
    "fine", "great", "grand", "lovely", "super", "perfect", "tidy", "tight", "touch", "touched", "touching",
    "untouched", "leave", "left", "due", "need", "needed", "start", "started", "starting", "begin", "first", "last",
})  # fmt: skip
_NOT_HIS = frozenset({"asides", "not_facts"})
# Measure words that are also common words ("across", "high") or stand without any number.
_PLAIN_WORDS = frozenset({
    "toe", "toes", "heel", "heels", "sole", "soles", "height", "length", "lengths", "width", "widths", "depth",
    "condition", "neck", "angle", "angles", "number", "size", "sizes", "sized", "grade", "grades", "score", "scored",
    "scoring", "graded", "nail", "nails", "male", "males", "wide", "across", "drives",
})  # fmt: skip
_TIMES = frozenset({"weeks"})


def leftovers(talk: Talk, sentences: Iterable[Sequence[Segment]]) -> Iterator[Left]:
    """One entry a sentence that names a foot, a place or a measure, and of which nothing became a fact.

    Of a sentence that was read, what a degree was said of and no list knows.
    """
    for parts in sentences:
        sentence = talk.sentence(parts[0].sentence)
        if any(segment.drafts for segment in sentence):
            yield from _graded(talk, parts) if "severities" in sentence.classes else ()
            continue  # read, or left out for a reason that a rule gave
        if any(m.is_any(_NOT_HIS) for segment in parts for m in segment.mentions):
            continue
        reason = _reason(talk, parts)
        if reason:
            yield parts[0].start, parts[-1].end, reason


def _graded(talk: Talk, parts: Sequence[Segment]) -> Iterator[Left]:
    """ "He sprues the sole of that foot, moderate": a degree of what no list knows, beside what was read."""
    given = {i for segment in parts for draft in segment.drafts for i in draft.evidence}
    for position, segment in enumerate(parts):
        loose = any(given.isdisjoint(m.literal) and not how_far(talk, m) for m in segment.having("severities"))
        if not loose or segment.drafts or any(m.is_any(_NOT_HIS) for m in segment.mentions):
            continue
        ahead = [s for s in parts[max(0, position - 1) : position] if not s.drafts]
        near = [*ahead, segment]
        placed = any(s.having("zones") or s.having("feet") for s in near)
        if placed and any(True for s in near for _ in _unknown(talk, s)):
            yield near[0].start, segment.end, "A degree is named here, but not of what was understood."


def _reason(talk: Talk, parts: Sequence[Segment]) -> str | None:
    measure = _unanswered(talk, parts)
    if measure is not None:
        return f"Heard “{measure}”, but no value for it was understood."
    footed = any(set(talk.words[m.start : m.end]) & _FOOT_WORDS for s in parts for m in s.having("feet"))
    if any(segment.having("taking_back") for segment in parts):
        return None
    unknown = sum(1 for segment in parts for _ in _unknown(talk, segment))
    if unknown >= (1 if _placed(parts) else _UNKNOWN_BESIDE_A_FOOT) and footed:
        return "A foot is named here, but nothing of it was understood."
    return None


def _placed(parts: Sequence[Segment]) -> bool:
    """Whether a place on the foot or a degree is named as well."""
    return any(segment.having("zones") or segment.having("severities") for segment in parts)


def _unanswered(talk: Talk, parts: Sequence[Segment]) -> str | None:
    """A measure named in so many words whose value neither this sentence nor the next tells."""
    following = talk.sentence(parts[-1].sentence + 1)
    if any(segment.having("denials") for segment in parts):
        return None  # "sole depth wasn't taken"
    for segment in parts:
        for mention in segment.having("measures"):
            words = [talk.words[i] for i in mention.literal]
            slot = mention.readings["measures"]
            if slot in _TIMES or (len(words) == 1 and words[0] in _PLAIN_WORDS):
                continue
            if not any(draft.slot == slot for later in following for draft in later.drafts):
                return " ".join(words)
    return None


def _unknown(talk: Talk, segment: Segment) -> Iterator[int]:
    told = {i for mention in segment.mentions for i in mention.literal}
    marks, little = talk.tokens.marks, talk.tokens.little
    for index in range(segment.start, segment.end):
        if index not in told and not marks[index] and not little[index] and talk.words[index] not in _QUIET:
            yield index
