"""A remark on a finding of today, "was there last time", "wasn't there in the spring": it is still one of today."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_THERE = frozenset({"there"})
_REMARK = frozenset({
    "it", "that", "which", "they", "those", "this", "and", "both", "all", "was", "were", "is", "'s", "had", "has",
    "have", "'d", "been", "already", "also", "still", "even", "not", "n't", "never", "too", "as", "well", "the", "in",
    "on", "at", "back", "quite", "really", "yet", "there", "just", "then", "same", "anyway", "only",
})  # fmt: skip
_HAVE = frozenset({"'ve", "have"})
_THEY_HAVE_HAD = (
    frozenset({"i", "we", "he", "she", "it", "they", "you"}),
    frozenset({"'ve", "have", "'s", "has", "'d", "had"}),
    frozenset({"had", "been", "kept", "worn", "stood", "left", "run"}),
)
_TODAY = frozenset({"today", "now"})
_NO_MORE = frozenset({"not", "gone", "n't", "no", "is", "it", "'s", "there", "but", "today", "now", "any", "more"})
_LATE_BY = frozenset({"'re", "'s", "'m", "are", "is", "am", "running", "got", "getting", "was", "were"})
_WORN = frozenset({"there", "only", "have", "has", "had", "still", "just", "got", "'ve", "was", "were", "he"})
SHOWING = frozenset({"see", "shows", "show", "showing", "tell", "know"})


def hear_remarks(talk: Talk) -> list[Draft]:
    """Take the time and the denial out of every such remark; returns the findings said to be there no more."""
    gone: list[Draft] = []
    if not talk.says(_THERE):
        return gone
    for segment in talk.segments:
        found = _remarked_on(talk, segment)
        if found is None:
            continue
        if _no_more(talk, segment):
            gone.append(found)
            continue
        for mention in segment.mentions:
            for name in ("times", "denials"):
                mention.readings.pop(name, None)
        found.note("there before as well")
    return gone


def let_go(gone: list[Draft]) -> None:
    """ "That was there last time, not today." """
    for draft in gone:
        draft.status = Status.RESOLVED
        draft.note("gone")


def found_so(talk: Talk, segment: Segment, cues: list[Mention]) -> bool:
    """ "The off hind had been cast", "he'd been sedated before I came": it was found so today."""
    been = bool(cues) and all(talk.words[m.end - 1] == "been" for m in cues)
    found = all(d.slot == "shoe_state" or d.value == "sedated" for d in segment.drafts)
    return been and found and bool(segment.drafts)


def goes_on_again(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "Those are last cycle's tips reset", "reset last time's shoes": what was on then is on today."""
    whose = talk.words[cue.end : cue.end + 1] == ["'s"]
    reset = [d for d in segment.drafts if d.slot == "work" and d.value in ("reset", "put_back")]
    return whose and any(d.start != cue.end + 1 for d in reset)


def in_it_still(words: list[str], cue: Mention) -> bool:
    """ "I've had her in wedges three weeks": so it still is; not "we had her in wedges"."""
    return words[cue.start] == "had" and words[cue.end - 1] == "in" and words[cue.start - 1] in _HAVE


def has_been_so(behind: list[str]) -> bool:
    """ "… he's been", "… they've had", right behind the interval: how long it has been so up to today."""
    return len(behind) == len(_THEY_HAVE_HAD) and all(
        w in words for w, words in zip(behind, _THEY_HAVE_HAD, strict=True)
    )


def _remarked_on(talk: Talk, segment: Segment) -> Draft | None:
    """The finding that a segment of nothing but "was there" and a time speaks of."""
    if segment.drafts or segment.having("feet") or not segment.having("times", "history"):
        return None
    words = talk.words[segment.start : segment.end]
    timed = {i for m in segment.having("times", "history") for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, timed)
    before = talk.segments[segment.index - 1] if segment.index else None
    if "there" not in words or not rest <= _REMARK or before is None or before.horse != segment.horse:
        return None
    if segment.sentence - before.sentence > 1 or before.past or before.having("times", "history"):
        return None
    found = [d for d in before.drafts if d.slot == "finding" and not d.dropped]
    return found[-1] if found and found[-1] is before.drafts[-1] else None


def _no_more(talk: Talk, segment: Segment) -> bool:
    behind = talk.segments[segment.index + 1] if segment.index + 1 < len(talk.segments) else None
    if behind is None or behind.sentence != segment.sentence or behind.drafts:
        return False
    words = set(talk.words[behind.start : behind.end])
    return words <= _NO_MORE and bool(words & {"not", "gone", "n't"}) and bool(words & _TODAY or "gone" in words)


def in_arrears(talk: Talk, segment: Segment, start: int, end: int) -> bool:
    """ "They're two months behind", "six weeks behind with the money": somebody is late, and no foot is meant."""
    late = _LATE_BY & set(talk.words[max(segment.start, start - 3) : start])
    alone = start == segment.start and len(talk.sentence(segment.sentence)) == 1  # "Three weeks behind."
    return bool(late) or alone or talk.words[end + 1 : end + 2] in (["with"], ["on"])


def worn_by(talk: Talk, at: int, led: set[str]) -> bool:
    """Whether the weeks are those that shoes have been on, "three weeks on the fronts": no interval."""
    word = talk.words[at : at + 1]
    shoes = any(at <= m.start <= at + 1 and m.get("feet") not in (None, "pair_in_hand") for m in talk.having("feet"))
    worn = shoes or talk.words[at + 1 : at + 2] in (["shoes"], ["set"])
    return (worn or word in (["them"], ["those"], ["these"])) and bool(led & _WORN)


def has_had(talk: Talk, draft: Draft, behind: Segment) -> bool:
    """ "She's had laminitis, that was two years ago": of that time alone; not "she's had a corn there since"."""
    at = next((i for i in (1, 2) if talk.words[draft.start - i] == "had"), 0)
    perfect = at and talk.words[draft.start - at - 1] in ("'s", "has", "have", "'ve")
    was = talk.words[behind.start : behind.start + 2] in (["that", "was"], ["it", "was"], ["this", "was"])
    return bool(perfect) and was and behind.sentence == draft.segment.sentence


def may_be(talk: Talk, earlier: Segment, draft: Draft) -> bool:
    """ "It could be laminitis coming on, and he did have it two years back": doubted of today."""
    led = any(m.start < draft.start for m in earlier.having("doubts")) and not earlier.past
    return led and draft.status is Status.SUSPECTED and "have" not in talk.words[earlier.start : draft.start]
