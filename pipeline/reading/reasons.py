"""Why a word was wrong, said between it and the right one: "eight, no, I'd not be cruel, seven"."""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_LEADS = frozenset(
    {"i", "he", "she", "they", "we", "it", "that", "that's", "the", "this", "there", "now", "one", "my", "with", "let"}
    | {"his", "her"}
)
_SINCE = (["once"], ["when"], ["after"], ["now"], ["since"], ["with"], ["from"], ["really"], ["quite"])  # "not once …"
_RAN_OUT = (
    ["ran", "out"],
    ["run", "out"],
    ["out", "of"],
    ["had", "none"],
    ["did", "n't"],
    ["short", "of"],
    ["none", "left"],
)
_OUT = Sayings("ran out", "run out", "'s finished", "was finished", "'s gone", "was gone", "were gone")
_CLOSING = SENTENCE_ENDS | {","}
_AND_IT_IS = (["and", "it", "'s"], ["and", "it", "is"])  # "no, I tried it again and it's the toe"
_LONGEST = 10  # tokens of a reason
_LIGHT = frozenset(
    {"a", "an", "the", "say", "call", "it", "make", "more", "like", "she", "he", "'s", "is", "was", "at", "uh"}
    | {"that"}
)
_A_FOOT = (["foot"], ["feet"], ["hoof"], ["horse"], ["pony"], ["mare"], ["gelding"], ["donkey"], ["mule"])
_NEAR = 4  # tokens from the reason to the right word


def why_wrong(talk: Talk, begin: int) -> int:
    """The token behind the reason that stands at ``begin``, its cues taken out; ``begin`` when there is none."""
    start = begin + 1 if talk.words[begin : begin + 1] == [","] else begin
    turned = talk.words[start : start + 1] == ["not"] and talk.words[start + 1 : start + 2] in _SINCE
    turned = turned or talk.words[start : start + 2] in _RAN_OUT  # "fives, no, ran out, four and a halfs"
    if talk.words[start : start + 1] == [] or not (turned or talk.words[start] in _LEADS):
        return begin
    ahead = range(start, min(len(talk.words), start + _LONGEST + 1))
    end = next((i for i in ahead if talk.words[i] in _CLOSING or talk.words[i : i + 3] in _AND_IT_IS), None)
    if end is None or talk.words[end] in SENTENCE_ENDS or not _said_alone(talk, end + 1):
        return begin
    within = [m for m in talk.mentions if start <= m.start < end and not m.dropped]
    # "I ran out of putty", "the putty ran out"
    gone = [m for m in within if talk.words[m.start - 2 : m.start] == ["out", "of"] or _OUT.at(talk.words, m.end)]
    if any(_of_the_trade(talk, mention) for mention in within if mention not in gone):
        return begin
    for mention in within:
        mention.dropped = mention in gone
        for name in ("denials", "times", "doubts", "plans"):
            mention.readings.pop(name, None)
    return end + 1


def put_right_behind(talk: Talk, begin: int) -> bool:
    """ "Thrush in the right hind, no, that's the last horse, it's the left hind": this horse's, with its own foot."""
    said = talk.words[begin : why_wrong(talk, begin) + 1]
    return said[-1:] == ["it"] and "was" not in said


def _of_the_trade(talk: Talk, mention: Mention) -> bool:
    """Whether the word tells something by itself; the "small" of "it's a small foot" does not."""
    if mention.get("horse") is not None or mention.get("units") is not None:
        return True
    kind = kind_of(mention)
    return kind is not None and not (kind == "severities" and talk.words[mention.end : mention.end + 1] in _A_FOOT)


def _said_alone(talk: Talk, at: int) -> bool:
    """Whether a number, a foot or another word of the trade follows at once: the right word."""
    for start in range(at, min(at + _NEAR, len(talk.words))):
        mention = talk.mention_starting(start)
        if mention is not None and kind_of(mention) is not None:
            return True
        if talk.words[start] not in _LIGHT:
            return False
    return False
