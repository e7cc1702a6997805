"""A list that waits for its verb: "a pair of egg bars, steel, size two, has been fitted in front" is all in front."""

from __future__ import annotations

from pipeline.reading.foot_groups import FootGroup, Groups
from pipeline.reading.talk import Segment, Talk

_AUXILIARY = frozenset({"is", "was", "were", "are", "has", "have", "had", "'s", "'ve", "went", "go", "goes", "got"})
_PUT = frozenset(
    {"fitted", "put", "nailed", "hung", "tacked", "set", "driven", "glued", "applied", "used", "on", "fit", "shod"}
    | {"placed", "laid", "attached", "gone", "hammered"}
)
_THAT_WAS = (["that", "was"], ["that", "'s"], ["it", "was"], ["that", "'d"], ["which", "was"])
_VERB_WITHIN = 4
_NOUNS = frozenset({"a", "the", "new", "full", "another", "half", "same", "of"})


def feet_of_the_verb(talk: Talk, sentence: list[Segment], groups: Groups) -> dict[int, FootGroup]:
    """The foot that a verb behind commas brings, for each segment of its subject, by segment index."""
    told: dict[int, FootGroup] = {}
    for position, segment in enumerate(sentence):
        if not position or not groups[segment.index] or not _put_on(talk, segment):
            continue
        for before in reversed(sentence[:position]):
            named = any(not group.anaphor for group in groups[before.index])
            if named or before.horse != segment.horse or _verbal(talk, before):
                break
            told[before.index] = groups[segment.index][0]
            if before.delimiter != ",":
                break
    return told


def _put_on(talk: Talk, segment: Segment) -> bool:
    """Whether the segment opens with "was nailed", "has been fitted", "went on": it has its subject before it."""
    words = talk.words[segment.start : min(segment.end, segment.start + _VERB_WITHIN)]
    return words[0] in _AUXILIARY and bool(_PUT & set(words[1:]))


def _verbal(talk: Talk, segment: Segment) -> bool:
    """Whether the segment has a verb or a subject of its own; the "set" of "a set of rims" is a noun."""
    doing = [i for role in ("past", "present", "action") for i in talk.plays(role, segment.start, segment.end)]
    doing = [i for i in doing if talk.words[i - 1] not in _NOUNS]
    return bool(doing) or bool(talk.plays("subject", segment.start, segment.start + 2))


def foot_told_behind(talk: Talk, sentence: list[Segment], groups: Groups) -> None:
    """ "The puncture was last autumn, that was the off hind.": the foot of what was just said, told behind it."""
    for position, segment in enumerate(sentence):
        if not position or segment.drafts:
            continue
        words = talk.words[segment.start : segment.start + 2]
        named = [group for group in groups[segment.index] if not group.anaphor]
        if words not in _THAT_WAS or len(named) != 1 or _more(talk, segment, named[0]):
            continue
        told = next((s for s in reversed(sentence[:position]) if s.drafts), None)
        for draft in told.drafts if told is not None else []:
            if draft.foot_carried and draft.slot == "finding":
                draft.feet, draft.foot_carried = named[0].feet, False
                draft.note("foot: told behind it")


def _more(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    """Whether more is said than "that was the off hind though"."""
    behind = talk.words[group.end : segment.end]
    return bool(set(behind) - {"though", "then", "too", "mind", "only", "as", "well"})
