"""A horse told before its name: "The second one, his name's gone on me. … Treacle, that's him."."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import COLOURS
from pipeline.vocabulary import CLASS_SLOTS

_HORSES = HORSE_WORDS | COLOURS
_ANOTHER = frozenset({"next", "second", "third", "fourth", "other", "another", "last", "then", "more"})
_LIGHT = frozenset(
    {"that", "'s", "was", "is", "it", "him", "her", "he", "she", "his", "its", "the", "one", "name", "fellow", "fella"}
    | {
        "ah", "oh", "got", "i", "'ve", "remember", "now", "just", "came", "back", "come", "to", "me", "what", "they",
        "call",
    }
    | {"lad", "girl", "again", ",", "right", "yes", "so", "and", "there", "we", "go", "have", "of", "course", "groom"}
    | {
        "says", "said", "did", "done", "then", "uh", "um", "er", "remembered", "called", "would", "be", "mare", "boy",
        "think", "believe",
    }
)  # fmt: skip
_POINTING = frozenset({"that", "it", "him", "her", "he", "she", "his", "name", "remember", "remembered", "got", "call"})
_TRADE = frozenset({*CLASS_SLOTS, "feet", "measures", "tester_heads", "pulse_heads", "nail_line_heads"})


_FIRST = 4  # words of a sentence that say that it is another horse


def named_late(talk: Talk, spans: Sequence[NameSpan], nobodys: Sequence[NameSpan]) -> list[tuple[int, int, NameSpan]]:
    """The sentences, as tokens ``[start, end)``, that open a horse without its name, and where the name comes.

    ``spans`` are the names that were said, ``nobodys`` the words for horses whose name nobody could say.
    A name belongs to the last horse that was opened without one before it.
    """
    found: dict[int, tuple[int, int, NameSpan]] = {}
    for head, end in _sentences(talk) if nobodys or talk.says(_ANOTHER) else ():
        waits = any(head <= s.start < end for s in nobodys)
        if not waits and _ANOTHER.isdisjoint(talk.words[head : min(end, head + _FIRST)]):
            continue
        if any(head <= s.start < end for s in spans) or not (waits or _another(talk, head, end)):
            continue
        known = {s.horse for s in spans if s.start < head}
        name = next((s for s in spans if s.start >= end and s.horse not in known), None)
        if name is not None and (known or waits) and _reveals(talk, name):
            found[name.start] = (head, end, name)
    return list(found.values())


def _told(talk: Talk, head: int) -> bool:
    """Whether anything of the trade was said before the token."""
    return any(m.is_any(_TRADE) for m in talk.starting_in(0, head))


def _another(talk: Talk, head: int, end: int) -> bool:
    """ "The second one, the roan.": another horse, with nothing said of it yet."""
    stop = next((m.start for m in talk.starting_in(head, end) if m.is_any(_TRADE)), end)
    lead = set(talk.words[head:stop])
    return bool(lead & (_HORSES | {"one"})) and _told(talk, head)


def _reveals(talk: Talk, name: NameSpan) -> bool:
    """ "Treacle, that's him", "that was Treacle", "it's Treacle, just came to me": the name of the horse just told."""
    start, end = name.start, name.end
    while start and talk.words[start - 1] not in SENTENCE_ENDS:
        start -= 1
    while end < len(talk.words) and talk.words[end] not in SENTENCE_ENDS:
        end += 1
    words = set(talk.words[start : name.start] + talk.words[name.end : end])
    return words <= _LIGHT and bool(words & _POINTING)


def _sentences(talk: Talk) -> list[tuple[int, int]]:
    """The tokens of each sentence, its end mark left out."""
    found, start = [], 0
    for index, word in enumerate([*talk.words, "."]):
        if word in SENTENCE_ENDS:
            if index > start:
                found.append((start, index))
            start = index + 1
    return found
