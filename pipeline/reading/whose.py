"""Horses told without their name: by their owner, by their colour, by their kin; and one name at two places."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.reading.roster_names import HorseTalk, NamedHorse, NameSpan
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
OFFSPRING = frozenset({"filly", "colt", "foal", "yearling", "weanling", "youngster"})
_RELATED = KIN | OFFSPRING
_KINDS = _NOUNS - {"horse", "one", "lad"}
_DESCRIBED = COLOURS | _KINDS
_BUILT = frozenset({"big", "little", "small", "wee", "old", "young", "tall", "fat", "dark", "light"})
_DOES = frozenset({"do", "did", "take", "took", "have", "had", "done"})
_STARTS = frozenset({"start", "starting", "started", "begin", "beginning", "began"})
_BEFORE = frozenset({",", "and", "for"})
_LEADS = frozenset({"then", "next", "now", "and", "so", ",", "okay", "right", "to", "on", "onto", "back", "going"})
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
    """ "Misty, the grey mare … Then the grey again": a colour given to a horse names it at the head of a sentence.

    "Buck's the big bay and Misty's the little grey, I'll do the grey first" gives it, too, and opens the grey's part.
    """
    coloured = _coloured(talk, spans) if talk.says(_DESCRIBED) else {}
    named = {i for s in spans for i in range(s.start, s.end)} if coloured else set()
    found = []
    for at in talk.where(frozenset(coloured)) if coloured else ():
        index = _article_before(talk, at)
        horse = coloured[talk.words[at]] if index is not None else -1
        if index is None or horse < 0 or {index - 1, index - 2} & named:
            continue
        end = at + 2 if talk.words[at + 1 : at + 2] and talk.words[at + 1] in _NOUNS else at + 1
        if _taken_first(talk, index, end):
            found.append(NameSpan(index, end, horse, role="opens"))
            continue
        heads = _leads(talk, index) or talk.words[index - 1] in _BEFORE
        heads = heads or talk.words[end : end + 1] == ["'s"]  # "thrush in the grey's near hind"
        if heads and not any(s.start - end in (0, 1) for s in spans):
            found.append(NameSpan(index, end, horse))
    return found


def of_two(talk: Talk, spans: Sequence[NameSpan]) -> list[tuple[int, int]]:
    """ "Misty, the mare. … Tansy, the mare. … The mare has a corn": where nobody can know which of them is meant."""
    if not talk.says(_DESCRIBED):
        return []
    shared = frozenset(word for word, horse in _coloured(talk, spans).items() if horse < 0)
    named = {i for s in spans for i in range(s.start - 1, s.end)}
    places = [(_article_before(talk, at), at) for at in talk.where(shared)] if shared else []
    told = [(the, at + 1) for the, at in places if the is not None and not {the - 1, the - 2, at + 1} & named]
    return [(the, end) for the, end in told if talk.words[the - 1] not in ("'s", "is", "was")]


def _coloured(talk: Talk, spans: Sequence[NameSpan]) -> dict[str, int]:
    """Each colour and kind given to a horse, and the horse; -1 where it was given to several."""
    coloured: dict[str, int] = {}
    for span in spans:
        for word in _described_behind(talk, span) or _colour_before(talk, span):
            coloured[word] = span.horse if coloured.get(word, span.horse) == span.horse else -1
    return coloured


def _described_behind(talk: Talk, span: NameSpan) -> list[str]:
    """ "Misty, the grey mare", "Buck's the big bay", "Buck the cob": its colour and its kind."""
    at = span.end + (talk.words[span.end : span.end + 1] in ([","], ["is"], ["'s"], ["was"]))
    if talk.words[at : at + 1] not in (["the"], ["a"], ["another"]):
        return []
    at += 1
    told = []
    while at < len(talk.words) and (talk.words[at] in _BUILT or talk.words[at] in _DESCRIBED):
        told += [talk.words[at]] if talk.words[at] not in _BUILT else []
        at += 1
    return told


def _colour_before(talk: Talk, span: NameSpan) -> list[str]:
    """ "The little grey is Misty"."""
    at = span.start - 2
    if at < 1 or talk.words[at + 1] not in ("is", "'s", "was"):
        return []
    noun = [talk.words[at]] if talk.words[at] in _KINDS else []
    at -= talk.words[at] in _NOUNS
    said = [*noun, talk.words[at]] if talk.words[at] in COLOURS else noun
    return said if _article_before(talk, at if talk.words[at] in COLOURS else at + 1) is not None else []


def _article_before(talk: Talk, at: int) -> int | None:
    """The "the" of "the grey", "the little grey"."""
    while at and talk.words[at - 1] in _BUILT:
        at -= 1
    return at - 1 if at and talk.words[at - 1] == "the" else None


def _taken_first(talk: Talk, start: int, end: int) -> bool:
    """ "I'll do the grey first", "starting with the grey"."""
    last, behind = talk.words[start - 1 : start], talk.words[end : end + 2]
    led = talk.words[max(0, start - 2) : start]
    ahead = last[:1] != [] and last[0] in _DOES and (behind[:1] == ["first"] or behind == ["to", "start"])
    return ahead or (led[1:] == ["with"] and led[0] in _STARTS)


def by_kin(talk: Talk, spans: Sequence[NameSpan]) -> tuple[NamedHorse, NameSpan] | None:
    """ "Then her sister, trimmed.", "Tally's foal, bare": another horse, that nobody named."""
    named = {s.start for s in spans}
    owners = {s.end: s.start for s in spans}
    for index in [i - 1 for i in talk.where(_RELATED) if 1 < i < len(talk.words) - 1]:
        at = owners.get(index, index)
        if at < index and talk.words[index] == "'s" and talk.words[index + 2] in (",", ".") and _leads(talk, at):
            heard = talk.tokens.said(at, index + 2)
            return NamedHorse(heard, HorseMatch.UNCLEAR, heard, tokens=(at, index + 2)), NameSpan(at, index + 2, 0)
        if talk.words[index] not in ("her", "his") or index + 3 in named:
            continue
        if talk.words[index + 2] in (",", ".") and _leads(talk, index) and talk.words[index - 1] not in SENTENCE_ENDS:
            heard = talk.tokens.said(index, index + 2)
            horse = NamedHorse(heard, HorseMatch.UNCLEAR, heard, tokens=(index, index + 2))
            return horse, NameSpan(index, index + 2, 0)
    return None


def of_its_dam(talk: Talk, roster: Sequence[RosterHorse], found: HorseTalk) -> list[tuple[RosterHorse, list[NameSpan]]]:
    """ "Misty, trimmed. Then her filly, …" is Misty's Filly, where the roster has a horse of that name.

    "Four weeks for the filly" is, too, once it was told of; before that only "her filly" at the head of a sentence
    names it, and only while Misty was the horse named last.
    """
    told = []
    for horse in roster if talk.says(_RELATED) else ():
        *dam, owned, noun = ["", "", *form_tokens(horse.name.lower())]
        if owned != "'s" or noun not in _RELATED:
            continue
        dams = {i for i, h in enumerate(found.horses) if h.name and form_tokens(h.name.lower()) == dam[2:]}
        names, known = [], False
        for at in talk.where(frozenset({noun})):
            before = [s for s in found.spans if s.start < at]
            if any(s.end > at for s in before):
                known = True  # "Misty's Filly", named as such
                continue
            led = talk.words[at - 1] in ("her", "his") and bool(before) and before[-1].horse in dams
            if led and _leads(talk, at - 1):
                names.append(NameSpan(at - 1, at + 1, 0, role="opens"))
                known = True
            elif known and talk.words[at - 1] in ("the", "her", "his"):
                names.append(NameSpan(at - 1, at + 1, 0))
        if names:
            told.append((horse, names))
    return told


def _leads(talk: Talk, index: int) -> bool:
    """Whether nothing but "then", "and", "back to" stands before the token in its sentence."""
    start = index
    while start and talk.words[start - 1] not in SENTENCE_ENDS:
        start -= 1
    return all(word in _LEADS for word in talk.words[start:index])


def at_place(talk: Talk, horse: RosterHorse, roster: Sequence[RosterHorse]) -> tuple[str | None, bool]:
    """The place of a name, and whether it is doubtful: of namesakes, the one whose place the memo names."""
    name = horse.name.lower()
    namesakes = [other for other in roster if other.name.lower() == name]
    if len(namesakes) == 1:
        return horse.place, False
    told = [other for other in namesakes if other.place and _says(talk.words, form_tokens(other.place.lower()))]
    return (told[0].place, False) if len(told) == 1 else (None, True)


def _says(words: list[str], tokens: list[str]) -> bool:
    return any(words[i : i + len(tokens)] == tokens for i in range(len(words)))
