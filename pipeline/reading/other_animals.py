"""What was written down of another horse: "there was a two and a half here, but that's the old mare"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_KIN = ("brother", "sister", "mother", "dam", "stablemate", "foal")
_HORSES = ("mare", "horse", "pony", "gelding", "cob", "one", "fella", "lad")
_ANOTHER = Sayings(
    *(f"that {is_} {whose} {kin}" for is_ in ("'s", "was", "is") for whose in ("his", "her") for kin in _KIN),
    *(
        f"that {is_} {which} {horse}"
        for is_ in ("'s", "was", "is")
        for which in ("the old", "the other", "another", "the last", "her other", "his other")
        for horse in _HORSES
    ),
)
_IS = frozenset({"'s", "is", "was", "has", "had", "'d"})
_STOPS = frozenset({",", *SENTENCE_ENDS})
_IT_IS = (["it", "'s"], ["it", "is"], ["that", "'s"], ["that", "is"])
_NOT_THIS_ONE = Sayings(
    "not this one", "not him", "not her", "not this horse", "not this mare", "not this fella", "not this lad",
    "not this girl", "not this guy", "not this pony", "not this gelding",
)  # fmt: skip
_BEFORE = frozenset({"but", ",", "no", "and"})
_WRITTEN = frozenset({"here", "down", "written", "says", "said", "sheet", "book", "card", "marked", "had"})


def drop_another_horses(talk: Talk) -> None:
    """Drop what is said of a horse that was named only to be told apart, and a number written down of another."""
    if talk.having("horse_cues", "not"):
        _drop_of_the_one_not_meant(talk)
    if talk.having("horse"):
        _drop_of_who_has_it(talk)
    if not talk.tells(_ANOTHER):
        return
    for at, form in talk.turns(_ANOTHER):
        end = at
        while end and talk.words[end - 1] in _BEFORE:
            end -= 1
        start = end
        while start and talk.words[start - 1] not in (",", *SENTENCE_ENDS):
            start -= 1
        counted = any(start <= m.start < end and m.number is not None for m in talk.mentions)
        taken_back = (
            not counted and "no" in talk.words[end:at] and talk.words[end] == ","
        )  # "clubby, no, that was his dam"
        if end == at or not (taken_back or _WRITTEN & set(talk.words[start:end])):
            continue
        for mention in [m for m in talk.mentions if start <= m.start < at + len(form)]:
            before = mention.start < end and (taken_back or mention.number is not None)
            mention.dropped = mention.dropped or before or taken_back or mention.start >= at


def _drop_of_who_has_it(talk: Talk) -> None:
    """ "It's Buck who has the navicular, not this one": told only so that nobody takes the one for the other."""
    for name in talk.having("horse"):
        led = talk.words[max(0, name.start - 2) : name.start] in _IT_IS
        if not led or talk.words[name.end : name.end + 1] not in (["who"], ["that"]):
            continue
        end = next((i for i in range(name.end, len(talk.words)) if talk.words[i] in _STOPS), len(talk.words))
        if not _NOT_THIS_ONE.at(talk.words, end + 1):
            continue
        for mention in talk.mentions:
            mention.dropped = mention.dropped or name.start <= mention.start < end


def _drop_of_the_one_not_meant(talk: Talk) -> None:
    """ "Not Selena, Selena's the one that bit me in May": a name said again to say which horse it is not."""
    for denied, again in pairwise(talk.having("horse")):
        not_meant = talk.words[denied.start - 1 : denied.start] == ["not"] and denied.get("horse") == again.get("horse")
        told = talk.words[again.end : again.end + 1]
        if not not_meant or talk.words[denied.end : again.start] != [","] or not told or told[0] not in _IS:
            continue
        end = next((i for i in range(again.end, len(talk.words)) if talk.words[i] in _STOPS), len(talk.words))
        for mention in talk.mentions:
            mention.dropped = mention.dropped or again.end <= mention.start < end
