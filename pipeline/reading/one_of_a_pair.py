"""One shoe of a pair, told by its side behind: "he threw a front shoe, the right one", "a hind was loose, the near".

Or one foot of the end that is named before it: "two out of five in front on the near fore".
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET

_ENDS = {"front": "F", "fore": "F", "hind": "H", "back": "H", "rear": "H"}
_ONE = frozenset({"a", "one", "another"})
_SHOES = frozenset({"shoe", "one", "plate", "foot"})
_LEADING = frozenset({"the", "his", "her", "it", "was", "'s", "that", "is", "being"})
_CLAUSE_ENDS = frozenset({",", *SENTENCE_ENDS})
_AT_THE_END = frozenset({"front", "behind"})  # "in front", "up front", "behind"; not "both fronts"
_PAIRS = {"fronts": "F", "hinds": "H"}


def name_one_of_a_pair(talk: Talk) -> None:
    """Give a bare side the end of the one shoe told of right before it, and take the pair out that was not meant."""
    for side in talk.having("feet"):
        name = side.readings["feet"]
        at = side.start - 1
        while at > 0 and talk.words[at] in _LEADING:
            at -= 1
        if at < 1 or talk.words[at] != "," or not _closes(talk, side):
            continue
        end = _the_one(talk, at)
        if end is None:
            continue
        if name in ("bare_L", "bare_R"):
            side.readings["feet"] = name[-1] + _ENDS[talk.words[end]]
        elif name not in FEET or name[1] != _ENDS[talk.words[end]]:
            continue
        for pair in talk.having("feet"):
            if pair.start <= end < pair.end and pair is not side:
                pair.dropped = True


def name_the_foot_of_the_end(talk: Talk) -> None:
    """ "One out of five in front on the near fore", "lame behind, on the off hind.": the foot alone is meant."""
    for at in [i for i in talk.where(_AT_THE_END) if i + 3 < len(talk.words)]:
        comma = talk.words[at + 1] == ","
        on = at + 1 + comma
        start = on + 1 + (talk.words[on + 1] in ("the", "his", "her"))
        pair, foot = talk.mention_ending(at + 1), talk.mention_starting(start)
        if talk.words[on] not in ("on", "in") or pair is None or foot is None or (comma and not _closes(talk, foot)):
            continue
        end, name = _PAIRS.get(str(pair.get("feet"))), str(foot.get("feet"))
        if end is not None and name in FEET and name[1] == end:
            pair.dropped = True


def _closes(talk: Talk, side: Mention) -> bool:
    """Whether nothing is said of the side itself: "a front shoe, the right one is loose" tells of another."""
    behind = talk.words[side.end] if side.end < len(talk.words) else "."
    return behind in (",", "and", "so", "but", "again", "that", *SENTENCE_ENDS)


def _the_one(talk: Talk, comma: int) -> int | None:
    """The token of "front" or "hind" in "a front shoe", in the clause that the comma closes."""
    for end in range(comma - 1, 0, -1):
        if talk.words[end] in _CLAUSE_ENDS:
            return None
        if talk.words[end] in _ENDS and talk.words[end - 1] in _ONE:
            behind = talk.words[end + 1]
            verb = behind in ("was", "is", "'s", "had", "has", "came", ",")
            return end if behind in _SHOES or verb else None
    return None
