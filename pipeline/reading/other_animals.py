"""What was written down of another horse: "there was a two and a half here, but that's the old mare"."""

from __future__ import annotations

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
_BEFORE = frozenset({"but", ",", "no", "and"})
_WRITTEN = frozenset({"here", "down", "written", "says", "said", "sheet", "book", "card", "marked", "had"})


def drop_another_horses(talk: Talk) -> None:
    """Drop the numbers of the clause that is said to be of another horse, where it tells of something written."""
    if not talk.says(_WRITTEN) or not talk.tells(_ANOTHER):
        return
    for at, form in _ANOTHER.within(talk.words, 1, len(talk.words)):
        end = at
        while end and talk.words[end - 1] in _BEFORE:
            end -= 1
        start = end
        while start and talk.words[start - 1] not in (",", *SENTENCE_ENDS):
            start -= 1
        if end == at or not _WRITTEN & set(talk.words[start:end]):
            continue
        for mention in talk.mentions:
            number = start <= mention.start < end and mention.number is not None
            mention.dropped = mention.dropped or number or at <= mention.start < at + len(form)
