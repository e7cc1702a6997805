"""Numbers of something else than shoes: "in a four acre field", "a two man job", "stable number five"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.numbers import Number
from pipeline.reading.talk import Talk

# Words that tell more of the shoe whose size stands before them.
_OF_A_SHOE = frozenset({
    "wide", "slim", "regular", "medium", "light", "heavy", "hind", "front", "fore", "pattern", "fullered", "stamped",
    "concave", "unclipped", "clipped", "open", "iron", "handmade", "blank", "fit", "fits", "size", "sized", "full",
    "shoe", "shoes", "plate", "plates", "shod", "nailed", "punched", "heeled", "toed", "branch", "section", "creased",
})  # fmt: skip
_LAND = frozenset({
    "acre", "acres", "mile", "miles", "furlong", "furlongs", "kilometre", "kilometer", "kilometres", "kilometers",
    "hectare", "hectares", "hand", "hands", "year", "years", "dollar", "dollars", "pound", "pounds", "quid", "euro",
    "euros", "hour", "hours", "minute", "minutes", "kilo", "kilos", "ton", "tons", "stone", "o'clock", "star", "field",
    "paddock", "barn", "stable", "yard", "bale", "bales", "foal", "foals", "kids", "lads", "men", "people",
})  # fmt: skip
_NUMBERED_THINGS = frozenset({
    "stable", "box", "stall", "barn", "house", "lot", "field", "paddock", "row", "pen", "gate", "shed", "yard", "road",
    "unit", "hip", "cap", "bib", "saddlecloth", "phone", "route", "block", "aisle", "loosebox", "race", "heat",
})  # fmt: skip
_ONE_OF_A_ROW = frozenset({"horse", "one", "client", "customer", "call", "stop", "job", "today", "tomorrow"})
_WHERE, _ARTICLE = frozenset({"in", "on", "at", "for"}), frozenset({"the", "my", "our", "their", "his", "her", "this"})
_TO_A_FOOT = frozenset({"in", "on", "up", "for", "the", "his", "her", "out", "at", "each", "all", "both", "to", "of"})
_SOMEBODY = frozenset({"him", "her", "me", "us", "them", "you", "it", "of"})


def counts_other_things(talk: Talk, mention: Mention, number: Number) -> bool:
    """ "A four acre field", "a two man job", "three miles": a noun that is none of the trade is what is counted."""
    at = mention.end + (talk.words[mention.end : mention.end + 1] == ["-"])
    behind = talk.words[at] if at < len(talk.words) else "."
    if behind in _LAND and number.aughts is None:
        return True
    if not number.article or behind in _OF_A_SHOE or talk.tokens.marks[at : at + 1] != [False]:
        return False
    if behind.endswith("ing"):
        return False  # "a one going on a two"
    held = (m for m in talk.mentions if m.start <= at < m.end and not m.dropped)
    return not talk.tokens.little[at] and all("not_facts" in m.readings for m in held)


def numbers_other_things(talk: Talk, mention: Mention) -> bool:
    """ "Stable number five", "number four on my list", "number two horse": which one of a row, not a size."""
    at = mention.start - 1
    if at < 0 or talk.words[at] != "number":
        return False
    if talk.words[at - 1 : at] and talk.words[at - 1] in _NUMBERED_THINGS:
        return True
    behind = talk.words[mention.end : mention.end + 2]
    if behind and behind[0] in HORSE_WORDS | _ONE_OF_A_ROW:
        return True
    placed = len(behind) > 1 and ((behind[0] in _WHERE and behind[1] in _ARTICLE) or behind[0] == "at")
    noun = talk.mention_starting(mention.end + 2)
    foot = any(m.get("feet") for m in talk.mentions if mention.end <= m.start <= mention.end + 2)
    return placed and not foot and (noun is None or noun.get("feet") is None)


def leads_to_foot(talk: Talk, mention: Mention, foot: Mention) -> bool:
    """Whether nothing but little words parts a size from its foot: not "two kids on the fronts", "two behind him"."""
    between = talk.words[mention.end : foot.start]
    told = [m for m in talk.mentions if mention.end <= m.start < foot.start and not m.dropped]
    held = {i for m in told for i in m.literal}
    plain = all(w in _TO_A_FOOT or i in held for i, w in enumerate(between, mention.end))
    place = talk.words[foot.end - 1] in ("front", "behind") and talk.words[foot.end : foot.end + 1]
    return plain and not (place and place[0] in _SOMEBODY)
