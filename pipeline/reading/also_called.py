"""One horse under two names: "he's down as Buck, though the kids call him Biscuits" is Buck, the name of the roster."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_WORDS, NAME_FOLLOWERS
from pipeline.reading.roster_names import HorseTalk, NameSpan
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import COLOURS, KIN
from pipeline.record import RosterHorse
from pipeline.vocabulary import CLASS_SLOTS

_ANOTHER = HORSE_WORDS | COLOURS | KIN | {"one", "other", "another", "foal", "then", "next", "mate", "twin", "new"}
_LEADS = frozenset({"is", "'s", "was", "says", "say", "said", "as", "name", "him", "her", "it", "be", "this", "that"})
_AT_HOME = frozenset(
    {"home", "kids", "children", "nickname", "short", "everybody", "everyone", "yard", "barn", "girls"}
)
_OBJECTS = frozenset({"him", "her"})
_TRADE = frozenset({*CLASS_SLOTS, "feet", "measures"})
_TITLES = frozenset([
    "mister", "mr", "miss", "missus", "sir", "lord", "lady", "madam", "madame", "captain", "major", "colonel", "doctor",
    "dr", "general", "sergeant", "prince", "princess", "king", "queen", "duke", "duchess", "count", "baron", "old",
    "little", "big", "auld", "wee", "young",
])  # fmt: skip
_PEOPLE = _TITLES | {"mrs", "ms", "owner", "vet", "farrier", "by"}
_STEM = 3  # letters that a short form has from the name
ExactName = tuple[int, int, RosterHorse]


def also_called(talk: Talk, cue: Mention, name: tuple[int, int], exact: Sequence[ExactName]) -> RosterHorse | None:
    """The roster's horse that a name off the roster is only another name of, None when it names a horse of its own.

    ``cue`` is the calling ("they call him", "known as"), ``name`` the tokens of the name that it gives.
    """
    head, end = _sentence(talk, cue.start)
    here = [e for e in exact if head <= e[0] < end]
    if not here:
        return _told_before(talk, head, end, exact)
    if len({horse.name for _, _, horse in here}) > 1:
        return None
    start, stop, horse = here[0]
    between = range(stop, cue.start) if stop <= cue.start else range(max(cue.end, name[1]), start)
    words = {talk.words[at] for at in between}
    if words & _ANOTHER or any(m.is_any(_TRADE) for m in talk.mentions if m.start in between):
        return None
    if stop <= cue.start:
        return horse
    owned = talk.words[stop : stop + 1] == ["'s"]
    return horse if talk.words[start - 1] in _LEADS and not owned else None


def short_names(talk: Talk, found: HorseTalk) -> list[NameSpan]:
    """ "Mandolin, Mandy, the black one. … Mandy is six weeks.": a short form, told between commas behind the name."""
    named = {i for s in found.spans for i in range(s.start, s.end)}
    short: dict[str, int] = {}
    for span in found.spans:
        name, at = talk.words[span.start], span.end + 1
        if talk.words[span.end : at] != [","] or talk.words[at + 1 : at + 2] not in ([","], ["."]) or at in named:
            continue
        alike = talk.words[at][:_STEM] == name[:_STEM] and len(talk.words[at]) < len(name)
        if alike and len(talk.words[at]) >= _STEM and talk.tokens.large[at] and talk.mention_starting(at) is None:
            short[talk.words[at]] = span.horse
    places = talk.where(frozenset(short)) if short else ()
    spans = [NameSpan(at, at + 1, short[talk.words[at]]) for at in places if at not in named and talk.tokens.large[at]]
    return spans + _untitled(talk, found, named)


def _untitled(talk: Talk, found: HorseTalk, named: set[int]) -> list[NameSpan]:
    """ "Mister Beaumont, … Beaumont at five weeks": the title left out behind the whole name; not "Mrs Beaumont"."""
    spans = []
    for span in found.spans if talk.says(_TITLES) else ():
        rest = talk.words[span.start + 1 : span.end]
        alike = {s.horse for s in found.spans if talk.words[s.start + 1 : s.end] == rest}
        if talk.words[span.start] not in _TITLES or not rest or len(alike) > 1:  # "Big Red", "Little Red"
            continue
        for at in talk.where(frozenset(rest[:1])):
            end = at + len(rest)
            free = (
                at >= span.end and named.isdisjoint(range(at, end)) and {*talk.words[end : end + 1]} <= NAME_FOLLOWERS
            )
            if free and talk.words[at:end] == rest and talk.tokens.large[at] and talk.words[at - 1] not in _PEOPLE:
                spans.append(NameSpan(at, end, span.horse))
                named.update(range(at, end))
    return spans


def _told_before(talk: Talk, head: int, end: int, exact: Sequence[ExactName]) -> RosterHorse | None:
    """ "Buck. They call him Biscuits at home.": a name for daily use, behind the sentence with the roster's."""
    words = set(talk.words[head:end])
    if not words & _AT_HOME or not words & _OBJECTS or head < 1:
        return None
    before, _ = _sentence(talk, head - 1)
    named = {horse.name: horse for start, _, horse in exact if before <= start < head}
    return next(iter(named.values())) if len(named) == 1 else None


def _sentence(talk: Talk, at: int) -> tuple[int, int]:
    """The tokens of the sentence that the token stands in, its end mark left out."""
    start = end = at
    while start and talk.words[start - 1] not in SENTENCE_ENDS:
        start -= 1
    while end < len(talk.words) and talk.words[end] not in SENTENCE_ENDS:
        end += 1
    return start, end
