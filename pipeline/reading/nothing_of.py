"""Denied at a distance, "nothing in the off fore by way of cracks", and both in one word: "heat or a corn? Neither"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.questions import SOUGHT
from pipeline.reading.sayings import Sayings, said_whole
from pipeline.reading.scopes import reached
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import NOT

_NOTHING = Sayings("nothing", "not a thing", "nowt", "naething", "n't a thing", "anything")
_OF_THE_KIND = Sayings(
    "by way of", "by the way of", "in the way of", "in the line of", "along the lines of", "in the shape of",
    "in the nature of", "in the form of", "in terms of", "as regards", "worth calling", "you 'd call", "you could call",
    "you would call", "i 'd call", "i would call", "i could call", "to call", "resembling", "like", "that looks like",
    "looking like", "amounting to",
)  # fmt: skip
SAID_OF_NOTHING = _NOTHING.first_words
_ARTICLES = frozenset({"a", "an", "any", "real", "proper"})
_OF_TWO = frozenset({"neither", "either"})
_ANSWERS = said_whole(
    "neither", "neither one", "neither of them", "neither of those", "neither of the two", "but neither", "and neither",
)  # fmt: skip


def denied_of_its_kind(talk: Talk, sentence: Sentence, position: int) -> list[Draft]:
    """The drafts of the segment, and of the list that goes on, which "nothing … by way of" denies."""
    segment = sentence[position]
    if sentence.lacks(SAID_OF_NOTHING) or not talk.tells(_OF_THE_KIND):
        return []
    found = [d for d in segment.drafts if d.slot == "finding"]
    if not found:
        return []
    at = found[0].start
    while at > segment.start and talk.words[at - 1] in _ARTICLES:
        at -= 1
    led = next((i for i, form in _OF_THE_KIND.within(talk.words, segment.start, at) if i + len(form) == at), None)
    if led is None or not any(_denies(talk, segment, i) for i, _ in _NOTHING.within(talk.words, segment.start, led)):
        return []
    cue = Mention(led, at, tuple(range(led, at)), {"denials": "before"})
    return reached(talk, sentence, position, cue)


def _denies(talk: Talk, segment: Segment, at: int) -> bool:
    """ "Anything" denies only behind a "not": "I didn't find anything in the way of bruising"."""
    return talk.words[at] != "anything" or not NOT.isdisjoint(talk.words[segment.start : at])


def both_of(talk: Talk, sentence: list[Segment], position: int, cue: Mention) -> list[Draft]:
    """What "there's neither" or "no sign of either" denies: the last two findings before it, or all looked for.

    Nothing where the word has something behind it ("there's neither heat nor swelling").
    """
    if _OF_TWO.isdisjoint(talk.words[cue.start : cue.end]):
        return []
    if any(d.start >= cue.end for d in sentence[position].drafts):
        return []
    return _last_two([d for s in sentence[: position + 1] for d in s.drafts if d.end <= cue.start])


def both_asked(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """What a bare "neither" answers, in its sentence or in the one before."""
    segment = sentence[position]
    if segment.drafts or tuple(talk.words[segment.start : segment.end]) not in _ANSWERS:
        return []
    before = sentence[:position] or talk.sentence(segment.sentence - 1)
    return _last_two([d for s in before if s.horse == segment.horse for d in s.drafts])


def _last_two(drafts: list[Draft]) -> list[Draft]:
    """The last two findings, with all that was only looked for; nothing told before the looking."""
    found = [d for d in drafts if d.slot == "finding" and (not d.dropped or SOUGHT in d.rules)]
    first = min((d.start for d in found if SOUGHT in d.rules), default=0)
    found = [d for d in found if d.start >= first]
    sought = [d for d in found[:-2] if SOUGHT in d.rules]
    return [*sought, *found[-2:]] if len(found) > 1 else []
