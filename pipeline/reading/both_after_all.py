"""One foot that turns out to be two: "iodine in the near hind, no, I did the two of them", "…, well, both hinds"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
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
        "uh", "up", "doing", "ah",
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
    closed = talk.words[end : end + 1] in ([], [","], ["."], [";"], ["actually"], ["and"], ["got"], ["while"], ["in"])
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
