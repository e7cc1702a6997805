"""What a statement of nothing but a degree or "that was" tells of then: "severe last time", "that was in January"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.days_ago import time_words
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import NOT
from pipeline.record import Status

_BESIDE = frozenset({"and", "but", "it", "'s", "that", "was", "were", "a", "bit", "only", "just", "back", "in", "on"})
_GOING = frozenset({"that", "this", "it", "'s", "is", "or", "so", "now", "about", "well", "more"})
_THAT = frozenset({"that", "those", "and", "all"})
_JUST_THEN = frozenset({"back", "just", "all", "though", "only", "of", "mind", "you"})
_ONE = frozenset({"one", "it", "that", "them", "these", "this"})
_I_MEAN = frozenset({"i", "mean", "a", "an", "the", "that", "is", "was", "it"})
_ANSWERED = {"tester": "tester_responses", "pulse": "pulses"}
_NOTHING = {"tester_responses": "none", "pulses": "normal"}
_NOW, _DOES = frozenset({"now", "today"}), frozenset({"does", "do", "any", "more", "there", "i"})
_STRENGTH = {"mild": "mild", "moderate": "moderate", "severe": "strong"}
_THEY = frozenset({
    "they", "it", "he", "she", "that", "was", "were", "'s", "is", "are", "'re", "and", "but", "only", "just", "a",
    "bit", "been", "had", "'d", "back", "down", "to", "up", "where", "which",
})  # fmt: skip


def bare_degree(talk: Talk, segment: Segment) -> bool:
    """ "Severe last time", "and bad in January": a degree and a time, and nothing else."""
    told = {i for m in segment.mentions if m.is_any(("severities", "fillers")) for i in m.literal}
    told |= time_words(talk, segment.having("times"))
    rest = talk.words_beside(segment, told)
    return bool(segment.having("severities")) and not segment.drafts and rest <= _BESIDE


def graded_apart(talk: Talk, segment: Segment, before: list[Segment]) -> bool:
    """Whether a bare degree is of a finding that was told in a degree of its own, of today, or in a sentence before."""
    if not before or not before[-1].drafts or not bare_degree(talk, segment):
        return False
    last = before[-1]
    apart = last.sentence != segment.sentence or bool(last.having("times", "today"))
    return apart or last.drafts[-1].severity is not None


def told_before(talk: Talk, sentence: list[Segment], position: int) -> list[Segment]:
    """What was told before a segment: of "thrush, right front. Mild today. Moderate last time" the thrush."""
    before = sentence[:position] or talk.sentence(sentence[0].sentence - 1)
    of_today = len(before) == 1 and before[0].having("times", "today") and bare_degree(talk, before[0])
    return talk.sentence(before[0].sentence - 1) if of_today else before


def that_was_then(talk: Talk, sentence: list[Segment], position: int, cues: list[Mention]) -> list[Draft]:
    """ "Scratches, near fore. That was last time.", "lame on it, that was in January": what was then is told before."""
    segment = sentence[position]
    if (meant := _named_behind(talk, sentence, position)) is not None:
        return [meant]
    if segment.drafts:
        return []
    told = time_words(talk, cues)
    rest = [talk.words[i] for i in range(segment.start, segment.end) if i not in told]
    at = next((i for i, word in enumerate(rest) if word in ("was", "were")), 0)
    going = talk.words[cues[0].start] == "going" and set(rest) <= _GOING  # "that's going back three years"
    if not going and (not at or not set(rest[:at]) <= _THAT or not set(rest[at + 1 :]) <= _JUST_THEN):
        return []
    near = sentence[:position] or talk.sentence(segment.sentence - 1)
    last = next((s for s in reversed(near) if s.drafts), None)
    if last is None or last.horse != segment.horse or last.having("times", "today"):
        return []
    return last.drafts


def _named_behind(talk: Talk, sentence: list[Segment], position: int) -> Draft | None:
    """ "She had one of these in the left hind last spring, an abscess I mean": what it was stands behind."""
    segment, behind = sentence[position], sentence[position + 1 : position + 2]
    if not behind or len(behind[0].drafts) != 1 or _ONE.isdisjoint(talk.words[segment.start : segment.end]):
        return None
    draft = behind[0].drafts[0]
    at, end = behind[0].start, behind[0].end
    words = [*talk.words[at : draft.start], *talk.words[draft.end : end]]
    named = draft.slot == "finding" and draft.status is Status.PRESENT and not behind[0].having("feet")
    return draft if named and {"mean", "that"} & {*words} and _I_MEAN.issuperset(words) else None


def answer_then_and_now(talk: Talk) -> None:
    """ "Testers mild, they were strong last time", "bounding in May. Raised today": the answer of the other time."""
    for slot, name in _ANSWERED.items():
        if not talk.having(f"{slot}_heads"):
            continue
        for segment in talk.segments:
            answer = _answer(talk, segment, name) or _not_now(talk, segment, name)
            told = _told_last(talk, segment, slot) if answer is not None else None
            if told is None or answer is None:
                continue
            value = answer.get(name) or _STRENGTH[answer.readings["severities"]]
            then = not _of_today(talk, segment)
            if not then and told.value != value:
                told.status = Status.HISTORY
            made = replace(told, segment=segment, value=value, start=answer.start, end=answer.end, zone=None)
            made.status, made.evidence = Status.HISTORY if then else Status.PRESENT, {*told.evidence, *answer.literal}
            made.rules = [*told.rules, "answered then and now"]
            segment.draft(made)


def _of_today(talk: Talk, segment: Segment) -> bool:
    return bool(segment.having("times", "today")) or "now" in talk.words[segment.start : segment.end]


def _not_now(talk: Talk, segment: Segment, name: str) -> Mention | None:
    """ "Sore on the testers last time, she's not now": all the answer that there is."""
    words = set(talk.words[segment.start : segment.end])
    if segment.drafts or words.isdisjoint(NOT) or words.isdisjoint(_NOW) or not words <= _THEY | NOT | _NOW | _DOES:
        return None
    return Mention(segment.start, segment.end, (segment.start,), {name: _NOTHING[name]})


def _answer(talk: Talk, segment: Segment, name: str) -> Mention | None:
    """The one answer of a segment that tells a time beside it, and nothing else."""
    classes = (name, "severities") if name == "tester_responses" else (name,)
    if segment.drafts or not segment.having("times"):
        return None
    answers = [m for m in segment.mentions if m.is_any(classes)]
    if len(answers) != 1:
        return None
    told = {i for m in segment.mentions if m.is_any(("fillers", *classes)) for i in range(m.start, m.end)}
    told |= time_words(talk, segment.having("times"))
    rest = talk.words_beside(segment, told)
    neutral = segment.having("times", "neutral")
    return answers[0] if rest <= _THEY and not neutral else None


def _told_last(talk: Talk, segment: Segment, slot: str) -> Draft | None:
    """What was told last of the horse, where it is an answer of the other time."""
    near = [s for s in talk.segments[: segment.index] if 0 <= segment.sentence - s.sentence <= 1]
    told = [d for s in near if s.horse == segment.horse for d in s.kept]
    last = told[-1] if told and told[-1].slot == slot else None
    if last is None or not last.feet:
        return None
    if not _of_today(talk, segment):
        return last if last.status is Status.PRESENT else None
    was = last.segment.past and not last.segment.present and not _of_today(talk, last.segment)
    return last if last.status is Status.HISTORY or (was and last.value not in _NOTHING.values()) else None


def how_bad_it_is(talk: Talk, draft: Draft, mention: Mention) -> bool:
    """ "A bit of seedy toe, moderate I suppose": a bit is only how it was begun, behind it comes the degree."""
    begun = talk.words[draft.start - 1] in ("of", "a") and "of" in talk.words[draft.start - 2 : draft.start]
    return begun and mention.start > draft.end and talk.words[mention.start] in ("moderate", "severe", "moderately")
