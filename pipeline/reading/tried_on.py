"""What was tried or taken out and not used: "offered up a three, it was nowhere near", "had the wedges out, no"."""

from __future__ import annotations

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_SLOTS = frozenset({
    "shoe_type", "shoe_material", "shoe_size", "pad", "packing", "clips", "nail_size", "wedge", "traction", "nails",
})  # fmt: skip
_TRIED = Sayings(
    "tried", "offered", "offer up", "held", "looked at", "grabbed", "fetched", "reached for", "reaching for",
    "picked up", "picking up", "picked out", "went to put", "went to fit", "went to use", "threw", "had him up for",
    "had her up for", "had him down for", "had her down for", "got out", "brought", "toyed with", "slapped", "popped",
    "had him measured for", "had her measured for", "halfway through", "fitting", "pulled out", "dug out",
    "brought out",
)  # fmt: skip
_HAD = Sayings("had", "'d", "got", "pulled", "dug", "brought", "put")
_BEFORE_IT = frozenset(
    {"i", "we", "'d", "had", "did", "have", "was", "and", "then", "first", ",", "'ve", "even", "but", "as", "through"}
)
_READY = frozenset(
    {
        "out", "ready", "hand", "hands", "up", "anvil", "fire", "cut", "shaped", "with", "against", "tailgate",
        "bench", "truck", "van", "ute", "box", "rack",
    }
)  # fmt: skip
_SIZES = ("big", "small", "long", "short", "wide", "narrow", "tight", "heavy", "light", "thick", "thin", "much")
_LEFT_IT = Sayings(
    "left it", "left them", "left that", "put it back", "put them back", "put it away", "put them away",
    "put it down", "put them down", "put that back", "put 'em back", "thought no", "thought nah", "thought better",
    "thought again", "and did n't", "then did n't", "but did n't", "but no", "but nah", "but , no", "but , nah",
    "but not", "would n't", "did n't fit", "did n't suit", "did n't sit", "did n't look", "nowhere near", "hung over",
    "swam", "no good", "no use", "never went on", "no way", "no chance", "not a chance", "back on the", "back in the",
    "back they went", "back it went", "like a dinner plate", "like a dustbin", "like a boat", "like a bucket",
    "way off", "miles off", "a mile off", "gave up", "gave it up", "talked myself", "decided against",
    "changed my mind", "looked silly", "looked daft", "was n't big", "were n't big", "not for that",
    "was never going", "were never going", "i left it", "wo n't", "not a hope", "was n't having", "were n't having",
    "did n't see the need", "binned", "never used", "did n't need", "did n't bother", "never bothered", "stuck out",
    "hung off", "hung out", "overhung", "went back in", "went back on", "looked wrong", "looked all wrong",
    "scrapped", "chucked", "that went back", *(f"too {size}" for size in _SIZES), "too far",
)  # fmt: skip
_EARLIER = frozenset({"last", "previous", "previously", "ago", "once", "always"})
_ADVERBS = frozenset({"way", "far", "miles", "much", "a", "bit", "just", "mile", "still", "well", "touch"})
_THEY_WERE = frozenset({"it", "that", "they", "was", "were", "'s", "and", "but", "those", ",", "way", "far", "miles"})
_BEGINS = _TRIED.first_words | _HAD.first_words
_TRYING = _BEGINS | {"too"}


def drop_not_used(talk: Talk, sentence: Sentence, after: list[Segment]) -> None:
    """Drop what the sentence, or the next one, says to have been put away again or not to have fitted."""
    if sentence.lacks(_TRYING):
        return
    start, end = sentence[0].start, sentence[-1].end
    drafts = [d for s in sentence for d in s.drafts if d.slot in _SLOTS and not d.dropped]
    if not drafts or not _EARLIER.isdisjoint(talk.words[start:end]):
        return
    for draft in drafts:
        if draft.slot == "shoe_size" and _too_big(talk, draft.end):
            draft.drop("tried, and not used")
    if _BEGINS.isdisjoint(talk.words[start:end]):
        return
    for at in [i for i in range(start, end) if talk.words[i] in _BEGINS and _tried(talk, i, start)]:
        left = next((i for i, _ in _LEFT_IT.within(talk.words, at + 1, end)), None) or _in_the_next(talk, after)
        if left is None:
            continue
        behind = [d for d in drafts if at <= d.start < min(left, end) and d.start - at <= _reach(talk, d)]
        if not _TRIED.at(talk.words, at) and not any(_ready(talk, d) for d in behind):
            continue
        for draft in behind:
            draft.drop("tried, and not used")
        for draft in [d for s in sentence for d in s.drafts if d.start in (at, left) and behind]:
            draft.drop("tried, and not used")  # "threw a four on there", "put them back on the rack": of no shoe of his


def _tried(talk: Talk, at: int, start: int) -> bool:
    """Whether the speaker tries something at this token, or had something there."""
    said = _TRIED.at(talk.words, at) or _HAD.at(talk.words, at)
    return bool(said) and (at == start or talk.words[at - 1] in _BEFORE_IT)


def _reach(talk: Talk, draft: Draft) -> int:
    """Tokens from the verb to what was tried: all the segment's, none beyond it."""
    return draft.start - draft.segment.start


def _ready(talk: Talk, draft: Draft) -> bool:
    """ "Had the sixes out", "the egg bars in my hand"."""
    return not _READY.isdisjoint(talk.words[draft.end : min(draft.end + 5, draft.segment.end)])


def _too_big(talk: Talk, at: int) -> bool:
    """ "A four was miles too big"."""
    if talk.words[at : at + 1] not in (["was"], ["were"]):
        return False
    at += 1
    while at < len(talk.words) and talk.words[at] in _ADVERBS:
        at += 1
    return talk.words[at : at + 1] == ["too"] and at + 1 < len(talk.words) and talk.words[at + 1] in _SIZES


def _in_the_next(talk: Talk, after: list[Segment]) -> int | None:
    """ "Tried a three. Way too big.": what the next sentence opens with."""
    at = after[0].start if after else len(talk.words)
    while at < len(talk.words) and talk.words[at] in _THEY_WERE and talk.words[at] not in SENTENCE_ENDS:
        at += 1
    return at if _LEFT_IT.at(talk.words, at) or talk.words[at : at + 2] == ["not", "for"] else None
