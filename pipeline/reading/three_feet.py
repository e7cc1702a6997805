"""Three feet of four: "got three feet trimmed, never touched the left hind" is work on the other three.

So is a finding in "no thrush in three of her feet, and the fourth, the near fore, has it".
"""

from __future__ import annotations

from pipeline.reading.mentions import PLACE, Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind

_REFUSED = frozenset({"never", "n't", "not", "left", "skipped", "without", "except", "bar", "missed", "nt"})
_COUNTED = (
    ["feet"], ["of", "them"], ["of", "his", "feet"], ["of", "her", "feet"], ["of", "four"], ["of", "the", "four"],
)  # fmt: skip
_FOURTH = (
    ["fourth", ",", "the"], ["fourth", "the"], ["fourth", "is", "the"], ["fourth", "'s", "the"], ["fourth", ","],
    ["fourth", "one", ",", "the"], ["fourth", "being", "the"], ["fourth", "foot", ",", "the"], ["but", "the"],
)  # fmt: skip
_SHOD = Sayings("got", "gets", "shod", "reset", "i shod", "i reset", "i put", *(
    f"{is_} {so}" for is_ in ("is", "'s", "was") for so in ("shod", "reset", "the odd")
))  # fmt: skip
_OPENS = frozenset({",", "and", "but", *SENTENCE_ENDS})
_FULL_SET, _ONLY, _ONLY_WITHIN = ["full", "set"], frozenset({"only", "just"}), 2
_THREE, _BARE = frozenset({"three"}), frozenset({"bare", "barefoot"})
_BARED, _BARED_WITHIN = _BARE | {"trimmed", "trim", "pulled", "off"}, 2
_CLOSING: tuple[list[str], ...] = ([], ["."], [","], ["and"], ["feet"], ["of"], ["that"])
_BACK = 6  # tokens from the foot back to what says that it was left


def mark_three_of_four(talk: Talk) -> None:
    """Make "three feet" the three that are left when a foot is named as not done."""
    for three in [m for m in talk.mentions if (m.number or "feet" in m.readings) and _is_three(talk, m)]:
        end = next((three.end + len(c) for c in _COUNTED if talk.words[three.end : three.end + len(c)] == c), three.end)
        end = _feet_of_the_horse(talk, end) if end == three.end else end
        if end == three.end and not _worked(talk, three):
            continue
        left = next((m for m in talk.mentions if m.start >= end and m.get("feet") in FEET), None)
        told = left is not None and (
            _the_fourth(talk, end, left) or not _BARE.isdisjoint(talk.words[left.end : left.end + 1])
        )
        if left is None or not (told or _left_out(talk, end, left)):
            continue
        for mention in talk.mentions:
            if (three.start <= mention.start < end and "horse" not in mention.readings) or (
                mention is left and not told
            ):
                mention.dropped = True
        literal = tuple(range(three.start, end))
        feet = {"feet": f"all-{left.readings['feet']}"}
        talk.mentions.append(Mention(three.start, end, literal, feet, MatchKind.VARIANT))
    _mark_all_three(talk)
    talk.in_order()


def _mark_all_three(talk: Talk) -> None:
    """ "Trimmed the left hind, six nails in all three": behind a foot that was left bare, the other three."""
    for at in [i for i in talk.where(_THREE) if talk.words[i - 1] == "all" and talk.words[i - 2] in ("in", "on")]:
        feet = sorted((m for m in talk.having("feet") if m.end < at), key=PLACE)
        if not feet or feet[-1].get("feet") not in FEET or talk.words[at + 1 : at + 2] not in _CLOSING:
            continue
        near = talk.words[max(0, feet[-1].start - _BARED_WITHIN) : feet[-1].end + _BARED_WITHIN]
        stops = sum(word in SENTENCE_ENDS for word in talk.words[feet[-1].end : at])
        if stops > 1 or _BARED.isdisjoint(near) or len({m.get("horse") for m in talk.having("horse")}) > _BARED_WITHIN:
            continue
        for three in [m for m in talk.mentions if m.start in (at - 1, at)]:
            three.dropped = True
        talk.mentions.append(Mention(at - 1, at + 1, (at - 1, at), {"feet": "those_three"}, MatchKind.VARIANT))


def _feet_of_the_horse(talk: Talk, at: int) -> int:
    """Where "of Buck's feet" ends; where it does not stand, the same token again."""
    name = talk.mention_starting(at + 1) if talk.words[at : at + 1] == ["of"] else None
    owned = name is not None and "horse" in name.readings
    behind = name.end if owned and name is not None else at
    return behind + 2 if owned and talk.words[behind : behind + 2] == ["'s", "feet"] else at


def _the_fourth(talk: Talk, start: int, foot: Mention) -> bool:
    """ "… and the fourth, the near fore, has it": the foot that the three are told apart from is told of itself."""
    between = talk.words[start : foot.start]
    stops = sum(word in SENTENCE_ENDS for word in between)
    named = between[-3:] in _FOURTH or between[-2:] in _FOURTH or between[-4:] in _FOURTH
    # "trimmed three, the off fore got a shoe"
    named = named or (bool(_SHOD.at(talk.words, foot.end)) and not _OPENS.isdisjoint(between[-2:]))
    return stops <= 1 and named and not any(m.get("feet") for m in talk.mentions if start <= m.start < foot.start)


def mark_full_sets(talk: Talk) -> None:
    """ "Trim only, the full set", "reset the full set": all four of what was done, and no new set of shoes."""
    works = talk.having("work")
    for mention in [m for m in works if m.get("work") == "new_shoe" and talk.words[m.end - 2 : m.end] == _FULL_SET]:
        before = [m for m in works if m.end <= mention.start and m.get("work") in ("trim", "reset") and not m.dropped]
        if not before or SENTENCE_ENDS & set(talk.words[before[-1].end : mention.start]):
            continue
        done, near = before[-1], talk.words[max(0, before[-1].start - _ONLY_WITHIN) : before[-1].end + _ONLY_WITHIN]
        only = done.get("work") == "trim" and not _ONLY.isdisjoint(near)
        if only or talk.words[done.end : mention.start] in ([], ["the"], ["his"], ["her"]):
            mention.readings.pop("work")
            mention.readings["feet"] = "all"
            talk.changed()


def _is_three(talk: Talk, mention: Mention) -> bool:
    if (number := mention.number) is not None:
        return not number.plural and number.value == len(FEET) - 1
    return mention.get("feet") == "those_three" and talk.words[mention.start] == "three"


def _worked(talk: Talk, three: Mention) -> bool:
    """ "Trimmed three", "three trimmed", "reset three"."""
    beside = (talk.mention_ending(three.start), talk.mention_starting(three.end))
    after = talk.words[three.end : three.end + 1]
    return any(m is not None and m.get("work") for m in beside) and after in ([","], ["."], ["and"], ["but"], [])


def _left_out(talk: Talk, start: int, foot: Mention) -> bool:
    """Whether the foot is named as the one that was not done, in this sentence or the next."""
    between = talk.words[start : foot.start]
    stops = sum(word in SENTENCE_ENDS for word in between)
    near = between[-_BACK:]
    if SENTENCE_ENDS & set(near):
        near = near[max(i for i, word in enumerate(near) if word in SENTENCE_ENDS) + 1 :]
    return stops <= 1 and bool(_REFUSED & set(near))
