"""Horses told without their name: by their owner, by their colour, by their kin; and one name at two places."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.reading.roster_names import NamedHorse, NameSpan
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS, form_tokens
from pipeline.record import HorseMatch, RosterHorse

COLOURS = frozenset(
    {"bay", "black", "brown", "chestnut", "sorrel", "grey", "gray", "roan", "palomino", "buckskin", "dun", "skewbald"}
    | {"piebald", "cremello", "grulla", "paint", "pinto", "appaloosa"}
)
_NOUNS = frozenset({"mare", "gelding", "horse", "pony", "cob", "filly", "colt", "stallion", "mule", "one", "lad"})
_OWNED = frozenset({"mare", "gelding", "horse", "pony", "cob", "filly", "colt", "stallion", "mule"})
KIN = frozenset({"sister", "brother", "mother", "daughter", "son"})
_LEADS = frozenset({"then", "next", "now", "and", "so", ",", "okay", "right", "to", "on", "onto", "back"})
_OWNER_LIKENESS = 0.9  # an owner for his horse is a guess to be confirmed


def by_owner(talk: Talk, roster: Sequence[RosterHorse]) -> tuple[NamedHorse, NameSpan] | None:
    """ "Mrs Whitlock's mare": the horse of an owner who has one alone; None when nobody, or several, could be meant."""
    owned: dict[str, list[RosterHorse]] = {}
    for horse in roster:
        if horse.owner:
            owned.setdefault(horse.owner, []).append(horse)
    for owner, horses in owned.items():
        tokens = form_tokens(owner.lower())
        for start in range(len(talk.words)):
            for said in [tokens, tokens[-1:]] if len(tokens) > 1 else [tokens]:
                end = start + len(said)
                if talk.words[start:end] == said and talk.tokens.large[start] and _has_horse(talk, end):
                    if len(horses) > 1 or _of_another(owner, said[-1], owned):
                        return None
                    heard = talk.tokens.said(start, end + 2)
                    one = horses[0]
                    told = NamedHorse(one.name, HorseMatch.KNOWN, heard, _OWNER_LIKENESS, (start, end), one.place)
                    return told, NameSpan(start, end, 0)
    return None


def _has_horse(talk: Talk, end: int) -> bool:
    behind = talk.words[end : end + 2]
    return (behind[:1] == ["'s"] and bool(set(behind[1:]) & _OWNED)) or bool(set(behind[:1]) & _OWNED)


def _of_another(owner: str, surname: str, owned: dict[str, list[RosterHorse]]) -> bool:
    return any(other != owner and form_tokens(other.lower())[-1:] == [surname] for other in owned)


def by_colour(talk: Talk, spans: Sequence[NameSpan]) -> list[NameSpan]:
    """ "Misty, the grey mare … Then the grey again": a colour given to a horse names it at the head of a sentence."""
    coloured: dict[str, int] = {}
    for span in spans:
        behind = talk.words[span.end : span.end + 4]
        colour = next((w for w in behind[1:] if w in COLOURS), None) if behind[:2] == [",", "the"] else None
        if colour is not None:
            coloured[colour] = span.horse if coloured.get(colour, span.horse) == span.horse else -1
    named = {i for s in spans for i in range(s.start, s.end)}
    found = []
    for index, word in enumerate(talk.words[:-1] if coloured else ()):
        horse = coloured.get(talk.words[index + 1], -1) if word == "the" else -1
        if horse >= 0 and _leads(talk, index) and not {index - 1, index - 2} & named:
            end = index + 3 if talk.words[index + 2 : index + 3] and talk.words[index + 2] in _NOUNS else index + 2
            found.append(NameSpan(index, end, horse))
    return found


def by_kin(talk: Talk) -> tuple[NamedHorse, NameSpan] | None:
    """ "Then her sister, trimmed.": another horse, that nobody named."""
    for index in [i - 1 for i in talk.where(KIN) if 1 < i < len(talk.words) - 1]:
        if talk.words[index] not in ("her", "his"):
            continue
        if talk.words[index + 2] in (",", ".") and _leads(talk, index) and talk.words[index - 1] not in SENTENCE_ENDS:
            heard = talk.tokens.said(index, index + 2)
            horse = NamedHorse(heard, HorseMatch.UNCLEAR, heard, tokens=(index, index + 2))
            return horse, NameSpan(index, index + 2, 0)
    return None


def _leads(talk: Talk, index: int) -> bool:
    """Whether nothing but "then", "and", "back to" stands before the token in its sentence."""
    start = index
    while start and talk.words[start - 1] not in SENTENCE_ENDS:
        start -= 1
    return all(word in _LEADS for word in talk.words[start:index])


def at_place(talk: Talk, horse: RosterHorse, roster: Sequence[RosterHorse]) -> tuple[str | None, bool]:
    """The place of a name, and whether it is doubtful: of namesakes, the one whose place the memo names."""
    namesakes = [other for other in roster if other.name.lower() == horse.name.lower()]
    if len(namesakes) == 1:
        return horse.place, False
    told = [other for other in namesakes if other.place and _says(talk.words, form_tokens(other.place.lower()))]
    return (told[0].place, False) if len(told) == 1 else (None, True)


def _says(words: list[str], tokens: list[str]) -> bool:
    return any(words[i : i + len(tokens)] == tokens for i in range(len(words)))
