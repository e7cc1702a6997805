"""One foot that turns out to be two: "iodine in the near hind, no, I did the two of them", "…, well, both hinds".

And a pair, or its second foot, behind what was done: "six nails, both of them", "… and the left front with six".
"""

from __future__ import annotations

from pipeline.reading.foot_groups import COUNTED, SETUP_SLOTS, Groups, setup_only
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Sentence, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET

_PAIR_OF = {"LF": "fronts", "RF": "fronts", "LH": "hinds", "RH": "hinds"}
_BOTH = Sayings(
    "the two of them", "the two", "both of them", "both", "the pair", "the pair of them", "the both of them"
)
_TURNS = frozenset(
    {"no", "nope", "nah", "sorry", "actually", "well", "fact", "wait", "lie", "mean", "rather", "ended", "sure"}
)
_LIGHT = frozenset(
    {",", "i", "we", "did", "done", "it", "went", "got", "put", "gave", "in", "on", "hang", "hold", "a", "tell", "to"}
    | {
        "make", "that", "was", "'s", "'ve", "have", "had", "him", "her", "them", "the", "now", "then", "er", "um",
        "uh", "up", "doing", "ah", "under", "underneath", "beneath",
    }
)  # fmt: skip
_LEADING = _TURNS | _LIGHT
_PAIRED = frozenset({"two", "both", "pair", "hinds", "fronts", "fores"})
_LONGEST = 14  # tokens from the one foot to the word for both


def widen_to_both(talk: Talk) -> None:
    """Make the pair of a single foot that is put right at once to both, whatever cue says so."""
    if not (talk.says(_PAIRED) and talk.says(_TURNS)):
        return
    for foot in [m for m in talk.having("feet") if m.readings["feet"] in FEET]:
        at = foot.end
        if talk.words[at : at + 1] != [","]:
            continue
        limit = min(len(talk.words), foot.end + _LONGEST)
        while at < limit and talk.words[at] in _LEADING and not _both_at(talk, at, foot):
            at += 1
        end = _both_at(talk, at, foot) if at < limit else 0
        between = talk.words[foot.end : at]
        if end and between and _TURNS & set(between) and not SENTENCE_ENDS & set(between):
            _widen(talk, foot, at, end)


def _both_at(talk: Talk, at: int, foot: Mention) -> int:
    """The token behind a word for both that closes its clause: "both", "the two of them", "both hinds"; else 0."""
    named = talk.mention_starting(at)
    pair = _PAIR_OF[foot.readings["feet"]]
    end = at + len(_BOTH.at(talk.words, at))
    if named is not None and named.get("feet") == pair:
        end = named.end
    closed = talk.words[end : end + 1] in (
        [],
        [","],
        ["."],
        [";"],
        ["actually"],
        ["really"],
        ["and"],
        ["got"],
        ["while"],
        ["in"],
    )
    return end if end > at and closed else 0


def _widen(talk: Talk, foot: Mention, at: int, end: int) -> None:
    foot.readings["feet"] = _PAIR_OF[foot.readings["feet"]]
    foot.literal = (*foot.literal, *range(at, end))
    for mention in [m for m in talk.mentions if at <= m.start and m.end <= end]:
        mention.dropped = True
        for name in ("feet", "horse_cues", "number"):
            mention.readings.pop(name, None)
    for mention in [m for m in talk.mentions if foot.end <= m.start and m.end <= at]:
        for name in ("taking_back", "denials", "doubts", "work"):
            mention.readings.pop(name, None)


_SHOD = frozenset({"work", "shoe_type", "shoe_material"})
_WITH = (["with"], ["in"])
_AHEAD = frozenset({"the", "his", "her", "on", "in", "and"})


def widen_behind(talk: Talk, sentence: Sentence, groups: Groups) -> None:
    """Give what stands right before "both of them" or "both plain" to the pair, where it was of the foot in hand."""
    for position, segment in enumerate(sentence if "feet" in sentence.classes else ()):
        if position:
            _widen_to_second(talk, sentence[position - 1], segment, groups)
        if not groups[segment.index] or (segment.drafts and position != 1):
            continue
        both = segment.having("feet", "pair_in_hand")
        alone = len(both) == 1 and both[0].end - both[0].start == segment.end - segment.start
        heading = len(both) == 1 and both[0].start == segment.start and setup_only(segment) and position == 1
        if (segment.drafts and not heading) or not (alone or heading):
            continue
        pair = groups[segment.index][0].feet
        slots = SETUP_SLOTS
        for before in reversed(sentence[:position]):
            if groups[before.index] or not before.drafts or before.horse != segment.horse:
                break
            for draft in [d for d in before.drafts if d.slot in slots and d.foot_carried]:
                if set(draft.feet or ()) < set(pair):
                    draft.feet = pair
                    draft.note("foot: both of them")
            slots = SETUP_SLOTS - COUNTED  # told foot by foot, unless "both of them" is right behind


def _widen_to_second(talk: Talk, first: Segment, second: Segment, groups: Groups) -> None:
    """ "I reset the right front with five nails and the left front with six": what was done, on the second foot too."""
    if not second.drafts or second.own_clause or any(d.slot not in COUNTED for d in second.drafts):
        return
    one, other = groups[first.index], groups[second.index]
    if len(one) != 1 or len(other) != 1 or one[0].anaphor or other[0].anaphor or first.horse != second.horse:
        return
    led = set(talk.words[second.start : other[0].start]) <= _AHEAD and second.joined_by("and", ", and", ",")
    link = talk.words[other[0].end : other[0].end + 1]
    if not led or link not in _WITH or talk.words[one[0].end : one[0].end + 1] != link:
        return
    for draft in [d for d in first.drafts if d.slot in _SHOD and d.end <= one[0].start and d.feet == one[0].feet]:
        draft.feet = tuple(foot for foot in FEET if foot in one[0].feet or foot in other[0].feet)
        draft.note("foot: and the second, with its own number")
