"""How each fact was asserted: denied, doubted, of an earlier time, gone, planned, or an aside.

The order matters: what is denied cannot be doubted, a time overrules a doubt, and "gone" overrules an earlier time.
"""

from __future__ import annotations

from pipeline.reading.denials import SOUGHT, deny, mark_sought
from pipeline.reading.doubts import doubt, doubt_after
from pipeline.reading.mentions import Mention
from pipeline.reading.plans import ALWAYS_PLANNED, announce, plan
from pipeline.reading.recalling import recall
from pipeline.reading.scopes import drafts_after
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

__all__ = ["SOUGHT", "assert_all", "mark_sought"]


def assert_all(talk: Talk) -> None:
    """Set the status of every draft."""
    sentences = talk.sentences()
    announced = False
    for sentence in sentences:
        announced = announce(talk, sentence, announced)
        deny(talk, sentence)
        doubt(talk, sentence)
        recall(talk, sentence)
        plan(talk, sentence)
        set_aside(talk, sentence)
    for number, sentence in enumerate(sentences):
        previous = sentences[number - 1] if number else []
        told = next((s for s in reversed(sentences[max(0, number - 2) : number]) if any(p.drafts for p in s)), [])
        resolve_gone(talk, sentence, told)
        doubt_after(talk, sentence, previous)


def _same_subject(talk: Talk, segment: Segment) -> bool:
    """ "… and she had dreadful feet": a pronoun still means the other animal."""
    return segment.joined_by("and", ", and") and talk.words[segment.start] in ("he", "she", "it", "they")


def set_aside(talk: Talk, sentence: list[Segment]) -> None:
    """Errands ("order more size fives") and other people's horses are no facts of this visit."""
    for position, segment in enumerate(sentence):
        for cue in (m for m in segment.mentions if m.get("asides") not in (None, "event", "not_today")):
            whole = cue.get("asides") == "not_mine"
            story = cue.get("asides") == "story"  # a story goes on to the end of its sentence
            for later in sentence if whole else sentence[position:]:
                if later is not segment and talk.words[cue.end - 2 : cue.end] == ["out", "of"]:
                    break  # "I was out of iodine, copper sulfate in it"
                if (
                    later is not segment
                    and later.own_clause
                    and not whole
                    and not story
                    and not _same_subject(talk, later)
                ):
                    break
                for draft in later.drafts:
                    if draft.slot not in ALWAYS_PLANNED:
                        draft.drop("an aside")


def resolve_gone(talk: Talk, sentence: list[Segment], previous: list[Segment]) -> None:
    for position, segment in enumerate(sentence):
        for cue in segment.having("resolutions", "before"):
            for draft in drafts_after(segment, cue)[:1]:
                _resolve_one(talk, draft, cue)
        for cue in segment.having("resolutions", "after"):
            if _piece_gone(talk, cue):
                continue
            if talk.words[cue.start + 1 : cue.start + 2] in (["sign"], ["trace"]) and segment.having("feet"):
                continue  # "no sign of it in the near hind" denies it there
            for draft in _gone(sentence, position, cue, previous):
                _resolve_one(talk, draft, cue)


def _piece_gone(talk: Talk, cue: Mention) -> bool:
    """ "A chunk of hoof gone" tells of a loss, "gone by next week" of a hope."""
    before = set(talk.words[max(0, cue.start - 4) : cue.start])
    piece = bool(before & {"chunk", "piece", "lump", "hunk", "slab"})
    return piece or talk.words[cue.end : cue.end + 1] == ["by"] or bool(before & {"hoping", "hope", "hoped"})


def _gone(sentence: list[Segment], position: int, cue: Mention, previous: list[Segment]) -> list[Draft]:
    segment = sentence[position]
    own = [d for d in segment.drafts if d.slot == "finding" and d.end <= cue.start]
    if own:
        found = own[-1:]
        if segment.joined_by("and") and position and not sentence[position - 1].own_clause:
            found += [d for d in sentence[position - 1].drafts if d.slot == "finding"]
        return found
    for earlier in reversed(sentence[:position]):
        findings = [d for d in earlier.drafts if d.slot in ("finding", "gait")]
        if findings:
            return findings[-1:]
        if [d for d in earlier.drafts if d.slot not in ("finding", "treatment")]:
            break
    ahead = [d for d in segment.drafts if d.slot == "finding" and d.start >= cue.end]
    if ahead:
        return [] if segment.drafts[0] is not ahead[0] else ahead[:1]
    if not any(s.drafts for s in sentence):
        findings = [d for s in previous for d in s.drafts if d.slot == "finding" and d.status is not Status.ABSENT]
        return findings[-1:]
    return []


def _resolve_one(talk: Talk, draft: Draft, cue: Mention) -> None:
    plainly = "resolved" in talk.words[cue.start : cue.end]  # "no flare anymore, that's resolved"
    if draft.slot in ("finding", "gait") and ("denied" not in draft.rules or plainly):
        draft.status = Status.RESOLVED
        draft.dropped = draft.dropped and SOUGHT not in draft.rules
        draft.note("gone")
        draft.evidence.update(cue.literal)
