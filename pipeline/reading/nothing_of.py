"""Denied at a distance: "nothing in the off fore by way of cracks", "nothing behind you'd call thrush"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
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


def denied_of_its_kind(talk: Talk, sentence: Sentence, position: int) -> list[Draft]:
    """The drafts of the segment, and of the list that goes on, which "nothing … by way of" denies."""
    segment = sentence[position]
    if not sentence.says(SAID_OF_NOTHING) or not talk.tells(_OF_THE_KIND):
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
