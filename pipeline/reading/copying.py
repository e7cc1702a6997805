"""The shared ground of ellipsis: a draft said once and meant again on other feet."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

from pipeline.reading.questions import SOUGHT
from pipeline.reading.talk import Draft, Feet, Segment, Talk

AFFIRMED = "said to be there"
_DONE = frozenset({"did", "do", "done", "doing", "put", "gave", "treated", "packed"})
_WORKED = frozenset(
    {"pared", "cleaned", "felt", "looked", "look", "looking", "check", "checked", "trimmed", "shod", "shoe", "nail"}
    | {"nailed", "reset", "open", "opened", "tested", "squeezed", "hosed", "picked", "rasped", "dressed", "tried"}
)
OTHER_FOOT = "there in the other foot"
ANOTHER_FOOT = "the finding before, on another foot"
OTHER_DEGREE = "the same in another degree"
_UNDONE = frozenset({"nearly", "almost", "meant", "wanted", "want", "wants", "asked", "intended", "hoped", "planned"})
_WOULD = frozenset({"would", "'d", "could", "should"})


@dataclass
class Copied:
    """A draft that repeats another one on other feet."""

    draft: Draft
    source: Draft


def told_before(talk: Talk, segment: Segment) -> list[Draft]:
    """What was said of the horse before the segment, and what was looked for."""
    return [
        d
        for s in talk.segments[: segment.index]
        for d in s.drafts
        if s.horse == segment.horse and (not d.dropped or SOUGHT in d.rules)
    ]


def content_of(talk: Talk, segment: Segment) -> set[str]:
    """The words of the segment without its feet."""
    feet = {i for m in segment.having("feet") for i in range(m.start, m.end)}
    return talk.words_beside(segment, feet)


def copy_draft(segment: Segment, draft: Draft, feet: Feet, rule: str) -> list[Copied]:
    """The draft once more in this segment, on these feet."""
    if draft.feet == feet:
        return []
    evidence = set(range(segment.start, segment.end)) | draft.evidence
    rules = [r for r in draft.rules if not r.startswith("foot:")]
    made = replace(
        draft,
        feet=feet,
        dropped=False,
        segment=segment,
        start=segment.start,
        end=segment.end,
        foot_carried=False,
        rules=[*rules, rule],
        evidence=evidence,
    )
    segment.drafts.append(made)
    return [Copied(made, draft)]


def keep_its_own(talk: Talk, copy: Draft) -> None:
    """ "The near hind's is gone, but the off hind's hanging on, mild": degree and place behind are the copy's alone.

    "Both hinds have it, near hind mild, off hind bad" tells it foot by foot: the copy on both gives way.
    """
    told = [d for d in told_before(talk, copy.segment) if (d.slot, d.value) == (copy.slot, copy.value)]
    if not told or not {OTHER_FOOT, OTHER_DEGREE} & set(copy.rules):
        return
    behind = [s for s in talk.sentence(copy.segment.sentence) if s.start >= copy.start]
    parts = [
        d for s in behind for d in s.drafts if ANOTHER_FOOT in d.rules and (d.slot, d.value) == (copy.slot, copy.value)
    ]
    apart = {foot for d in parts for foot in d.feet or ()}
    if copy.feet and apart and apart >= set(copy.feet):
        copy.drop("told foot by foot behind")
    elif copy.feet and apart:
        copy.feet = tuple(foot for foot in copy.feet if foot not in apart)
    for mention in (m for s in behind if not s.having("feet", "pair_in_hand") for m in s.mentions):
        if mention.start in told[-1].evidence and mention.get("severities") == told[-1].severity:
            told[-1].severity = None
        if mention.start in told[-1].evidence and mention.get("zones") == told[-1].zone:
            told[-1].zone = None


def only_done(talk: Talk, segment: Segment) -> bool:
    """ "I did the off fore too": what was done before, not what was found."""
    return bool(_DONE & set(talk.words[segment.start : segment.end]))


def tells_of_work(talk: Talk, segment: Segment) -> bool:
    """ "I nearly shod the hinds too", "cleaned the right hind out as well": work of its own, or none; nothing again."""
    words = talk.words[segment.start : segment.end]
    undone = any(pair[0] in _WOULD and pair[1] == "have" for pair in pairwise(words))
    going = "going" in words and "to" in words[words.index("going") :]
    return undone or going or bool((_UNDONE | _WORKED) & set(words))
