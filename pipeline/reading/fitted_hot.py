"""Shoes that went on hot: "hot nailed size twos in front" tells how they were fitted, no heat and no quicked foot."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

_HOT = frozenset({"hot", "warm"})
_NAILED = frozenset({"nailed", "nail", "nails"})
_FITTING = frozenset({
    "shod", "shoe", "shoes", "shoed", "shoeing", "fit", "fits", "fitted", "fitting", "set", "sets", "setting", "seated",
    "seat", "seating", "bedded", "pressed", "burnt", "burned", "rasped", "iron", "steel", "work", "seared", "sear",
    "searing",
})  # fmt: skip
_FITTED = frozenset({"shod", "shoed", "fit", "fitted", "set", "seated", "bedded", "burnt", "burned", "shoes"})
_DID, _IT = frozenset({"did", "done"}), frozenset({"him", "her", "it", "them", "the", "his", "in", "on", "back"})
_PUT_ON = frozenset({"put", "went", "goes", "go", "going", "nailed", "stuck", "them", "those", "these", "shoes"})
_IN_FRONT_OF_A_SHOE = frozenset({
    "on", "a", "an", "the", "his", "her", "their", "new", "old", "same", "own", "plain", "size", "sized", "number",
    "of", "all", "both", "four", "two", "three", "front", "hind", "fresh", "some", "with", "pair", "set", "nice",
})  # fmt: skip
_SHOES = frozenset({"shoe", "shoes", "plate", "plates", "set", "pair", "them", "those", "these", "ones", "irons"})
_WAS = frozenset({"was", "were", "are", "is", "'re", "'s", "all", "both", "got", "went", "on", "in", "the"})
OUT_THERE = frozenset({"barn", "shade", "yard", "shed"})
_OF_THE_DAY = OUT_THERE | {"out", "brutal"}
_OF_A_HORSE = (*CLASS_SLOTS, "feet", "zones", "pulse_heads", "denials", "resolutions")
_HORSE = frozenset({"it", "he", "she", "him", "her"})
_AHEAD = 6  # tokens from "hot nailed" to its shoes


def drop_fitted_hot(talk: Talk) -> None:
    """Drop "hot" and "hot nailed" where they tell how shoes were put on, and the day's heat."""
    for mention in talk.having("findings") if talk.says(_OF_THE_DAY) else ():
        if talk.words[mention.start : mention.end] == ["heat"] and _of_the_day(talk, mention):
            mention.dropped = True
    if not talk.says(_HOT):
        return
    for mention in talk.mentions:
        if mention.is_any(("findings", "warmths")) and _fitted_hot(talk, mention):
            mention.dropped = True


def _of_the_day(talk: Talk, mention: Mention) -> bool:
    """ "Heat's awful, ninety-six in that barn", "heat was brutal today", and nothing of a horse."""
    home, end = talk.segment_at(mention.start), next_mark(talk, mention.end, SENTENCE_ENDS)
    begin = talk.sentence(home.sentence)[0].start if home else end
    words, said = talk.words[begin:end], talk.starting_in(begin, end)
    told = [m for m in said if m.is_any(_OF_A_HORSE) and OUT_THERE.isdisjoint(talk.words[m.end : m.end + 1])]
    bad = {m.start for m in said if m.is_any(("severities",))} & {mention.end + 1} or "brutal" in words
    return bool(bad and told == [mention]) and _HORSE.isdisjoint(words) and not _OF_THE_DAY.isdisjoint(words)


def _fitted_hot(talk: Talk, mention: Mention) -> bool:
    words = talk.words[mention.start : mention.end]
    if _HOT.isdisjoint(words):
        return False
    if mention.get("findings") == "quicked":
        return "nailed" in words and (
            _shoes_behind(talk, mention.end) or _shoes_ahead(talk, mention.start) or _sized(talk, mention.end)
        )
    if mention.get("warmths") is None:
        return False
    before, behind = talk.words[max(0, mention.start - 2) : mention.start], talk.words[mention.end : mention.end + 1]
    put_on = before[-1:] == ["on"] and not _PUT_ON.isdisjoint(before)
    return put_on or not _FITTING.isdisjoint(behind) or _fitted_so(talk, mention.start)


def _fitted_so(talk: Talk, at: int) -> bool:
    """ "Fitted hot", "shod him hot", "did both fronts hot": nothing but what was fitted stands between."""
    while at:
        told = talk.mention_ending(at)
        if talk.words[at - 1] in _FITTED | _DID:
            return talk.words[at - 1] in _FITTED or talk.words[at] not in _HOT
        if told is not None and told.get("feet"):
            at = told.start
        elif talk.words[at - 1] in _IT:
            at -= 1
        else:
            return False
    return False


def _sized(talk: Talk, at: int) -> bool:
    """ "Hot nailed both fronts, size two": a pair with the size of its shoes right behind."""
    told = talk.mention_starting(at + (talk.words[at : at + 1] == ["the"]))
    if told is None or told.get("feet") not in ("fronts", "hinds", "all"):
        return False
    sized = talk.mention_starting(told.end + (talk.words[told.end : told.end + 1] == [","]))
    return sized is not None and (sized.get("measures") == "shoe_size" or sized.is_any(("shoe_types",)))


def _shoes_behind(talk: Talk, at: int) -> bool:
    """ "Hot nailed a pair of twos", "hot nailed size two shoes on": what was nailed is a shoe."""
    for index in range(at, min(at + _AHEAD, len(talk.words))):
        told = talk.mention_starting(index)
        if talk.words[index] in _SHOES or (told is not None and told.is_any(("shoe_types", "shoe_materials"))):
            return True
        number = told.number if told is not None else None
        if number is not None and number.plural:
            return True
        if number is None and talk.words[index] not in _IN_FRONT_OF_A_SHOE:
            return False
    return False


def _shoes_ahead(talk: Talk, at: int) -> bool:
    """ "The shoes were nailed hot": what stands before is a shoe."""
    while at and talk.words[at - 1] in _WAS:
        at -= 1
    told = talk.mention_ending(at)
    plural = told is not None and told.number is not None and told.number.plural
    return plural or talk.words[at - 1 : at] in (["shoe"], ["shoes"], ["plates"], ["them"])
