"""Of another horse or somebody else's: "a two and a half, but that's the old mare", "her other mare's got sidebone"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_NOUNS, KIN_SEXES
from pipeline.reading.sayings import Sayings
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import MatchKind

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
_NEARBY = frozenset(
    {"neighbor", "neighbour", "neighbors", "neighbours", "friend", "fella", "fellow", "feller", "guy", "buddy", "mate"}
    | {"else", "people", "cousin"}
)
_LADS = frozenset({"lad", "fella", "fellow", "feller", "girl"})  # a horse when it is somebody's other one
_WHOSE = frozenset({"'s", "'", "her", "his", "their", "the"})
_HAS = frozenset({"has", "had"})
_TOLD_OF = frozenset({"has", "had", "is", "was"})
_OTHER = frozenset({"other"})
# One that they had before; "old" and "first" may also be said of the one in hand.
_EARLIER = frozenset({"last", "late", "previous", "former", "old", "first"})
_PERHAPS_HIS = frozenset({"old", "first"})
_THEIRS = frozenset({"her", "his", "their", "'s", "'"})
_DID = frozenset({
    "had", "'d", "was", "went", "got", "foundered", "died", "lost", "ended", "developed", "suffered", "always", "never",
})  # fmt: skip
_ABOUT = frozenset({"about"})
_ASKING = frozenset({
    "asking", "asked", "ask", "know", "stopped", "rang", "called", "phoned", "texted", "collared", "caught", "grabbed",
})  # fmt: skip
_PEOPLE = frozenset({
    "lady", "woman", "girl", "gal", "fella", "fellow", "feller", "guy", "man", "bloke", "chap", "lad", "kid", "rider",
    "neighbor", "neighbour", "somebody", "someone", "boarder", "livery",
})  # fmt: skip
_ANYBODY = frozenset({"somebody", "someone", "boarder", "livery", "neighbor", "neighbour"})
_SOME = frozenset({"a", "some", "another", "one"})
_RIDDEN = HORSE_NOUNS | {"hunter", "eventer", "jumper", "racehorse", "cobs", "ponies", "horses"}
_ASIDE_WITHIN, _ASKER_WITHIN, _DESCRIBED_IN = 8, 10, 2
_LED_WITHIN = 5  # tokens: "I was mixing him up with his stablemate"
_HEADS = frozenset({"head", "mind", "brain"})
_MINDED = _HEADS | {"thinking", "confusing", "mixing", "picturing"}
_KINDRED, _ACROSS = frozenset(KIN_SEXES), {"she": "his", "he": "her"}
_ANOTHER_DAY = Sayings(
    "different story", "another story", "another day", "doing him tomorrow", "doing her tomorrow",
    *(
        f"{is_} {day}"
        for is_ in ("'s", "is", "'s on", "is on", "'s for", "'s not till", "'s next", "is next")
        for day in ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "tomorrow", "week")
    ),
)  # fmt: skip
_POSSESSIVES = frozenset({"'s", "'"})


def drop_another_horses(talk: Talk) -> None:
    """Drop what is said of a horse that was named only to be told apart, and a number written down of another."""
    if talk.having("horse_cues", "not"):
        _drop_of_the_one_not_meant(talk)
    if talk.having("horse"):
        _drop_of_who_has_it(talk)
    if not talk.tells(_ANOTHER):
        return
    for at, form in talk.turns(_ANOTHER):
        if talk.words[at + len(form) : at + len(form) + 2] == [",", "it"]:
            continue  # "…, no, that's the last horse, it's the left hind"
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
        end = next_mark(talk, name.end, _STOPS)
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
        end = next_mark(talk, again.end, _STOPS)
        for mention in talk.mentions:
            mention.dropped = mention.dropped or again.end <= mention.start < end


def mark_others(talk: Talk) -> None:
    """Set aside somebody else's animal, and what is told of it."""
    _mark_nearby(talk)
    _mark_other_ones(talk)
    _mark_earlier_ones(talk)
    _mark_asked_about(talk)
    if talk.says(_KINDRED):
        _mark_of_his_dam(talk)
    if talk.says(_MINDED):
        _forget_the_one_in_mind(talk)
    talk.in_order()


def _forget_the_one_in_mind(talk: Talk) -> None:
    """ "Size one, no, two, I'm thinking of his brother, toe clips": why he slipped; the rest is of this horse."""
    for aside in talk.having("asides"):
        before = [m for m in talk.having("horse") if m.end == aside.start]  # "I'd Tally's brother in my head"
        lead = talk.words[max(0, (before[-1] if before else aside).start - _LED_WITHIN) : aside.start]
        behind = talk.words[aside.end : aside.end + 3]
        if any(word in _MINDED and word not in _HEADS for word in lead) or (
            behind[:1] == ["in"] and behind[-1] in _HEADS
        ):
            aside.dropped = True


def _mark_nearby(talk: Talk) -> None:
    for at in [*talk.where(_NEARBY), *_of_another_day(talk)]:
        owned = talk.words[at + 1 : at + 3]
        if talk.words[max(0, at - 2) : at - 1] == ["be"]:
            continue  # "next time she's sedated or she'll be somebody else's mare": still this one
        if len(owned) > 1 and owned[0] in _POSSESSIVES and owned[1] in HORSE_NOUNS:
            _mark(talk, at, at + 3)


def _of_another_day(talk: Talk) -> list[int]:
    """ "Danny's horse with the abscess, that's Thursday, a different story": whose it is, behind the horse in hand."""
    owners = []
    for day, _ in talk.turns(_ANOTHER_DAY) if talk.having("horse") else ():
        at = day
        while at > 1 and talk.words[at] not in SENTENCE_ENDS:
            at -= 1
            if talk.words[at] in _POSSESSIVES and talk.words[at + 1] in HORSE_NOUNS:
                break
        named = [m.start for m in talk.having("horse")]
        if (
            named[0] < at - 1
            and talk.words[at] in _POSSESSIVES
            and talk.tokens.large[at - 1]
            and not any(at < name < day for name in named)
        ):
            owners.append(at - 1)
    return owners


def _mark_other_ones(talk: Talk) -> None:
    """ "The lady's other gelding had thrush": only where something is told of it; "her other mare, trimmed" is next."""
    words = talk.words
    for at in [i for i in talk.where(_OTHER) if 0 < i < len(words) - 2]:
        if words[at - 1] not in _WHOSE or words[at + 1] not in HORSE_NOUNS | _LADS:
            continue
        told_of = _HAS if words[at - 1] == "the" else _TOLD_OF  # "the other mare is shod in front" is the next one
        if words[at + 2] in told_of or words[at + 2 : at + 4] == ["'s", "got"]:
            _mark(talk, at - 1, at + 3)


def _mark_earlier_ones(talk: Talk) -> None:
    """ "Her last pony had canker", "their old cob, God rest him, had canker": told of one that they had before."""
    words = talk.words
    for at in [i for i in talk.where(_EARLIER) if 0 < i < len(words) - 2]:
        if words[at - 1] not in _THEIRS or words[at + 1] not in HORSE_NOUNS:
            continue
        verb = at + 2
        if words[verb] == ",":
            verb = next((i for i in range(verb + 1, min(verb + _ASIDE_WITHIN, len(words))) if words[i] == ","), at) + 1
        end = next_mark(talk, verb, _STOPS) + 1  # a foot may stand right behind the comma
        perhaps_his = words[at] in _PERHAPS_HIS and any(at < m.start <= end for m in talk.having("feet"))
        named = any(at < m.start <= verb for m in talk.having("horse"))
        if words[verb : verb + 1] and words[verb] in _DID and not perhaps_his and not named:
            _mark(talk, at - 1, verb)


def _mark_asked_about(talk: Talk) -> None:
    """ "Lady there was asking me about her barrel horse with the crack": not the owner, nor plainly "her horse"."""
    words = talk.words
    for at in talk.where(_ABOUT):
        start = max((i + 1 for i in range(max(0, at - _ASKER_WITHIN), at) if words[i] in SENTENCE_ENDS), default=0)
        start = max(start, at - _ASKER_WITHIN)
        who = next((i for i in range(start, at) if words[i] in _PEOPLE), at)
        asked = not _ASKING.isdisjoint(words[who:at])
        stranger = words[who] in _ANYBODY or words[who - 1] in _SOME
        first = at + 2
        horse = next((i for i in range(first, min(first + _DESCRIBED_IN + 1, len(words))) if words[i] in _RIDDEN), at)
        another = words[at + 1 : first] in (["a"], ["another"])
        if asked and horse > at and (another or (words[at + 1] in _THEIRS and (stranger or horse > first))):
            _mark(talk, at + 1, horse + 1)


def _mark_of_his_dam(talk: Talk) -> None:
    """ "Same as his mother had. She foundered in the end": by "his" and "she" it is the mother that is told of on."""
    words = talk.words
    for at in [i for i in talk.where(_KINDRED) if i and words[i - 1] in ("his", "her")]:
        stop = next((i for i in range(at, len(words)) if words[i] in SENTENCE_ENDS), len(words))
        who = KIN_SEXES[words[at]]
        if words[stop + 1 : stop + 2] == [who] and words[at - 1] == _ACROSS[who]:
            _mark(talk, stop + 1, stop + 2)


def _mark(talk: Talk, start: int, end: int) -> None:
    if not any(m.get("asides") and m.start < end and start < m.end for m in talk.mentions):
        literal = tuple(range(start, end))
        talk.mentions.append(Mention(start, end, literal, {"asides": "elsewhere"}, MatchKind.VARIANT))
