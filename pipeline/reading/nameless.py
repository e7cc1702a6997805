"""Horses whose name nobody could say: "then a mare, couldn't tell you her name", "there was a donkey too".

They get a visit of their own, without a name and asked about, so that their facts go to no other horse.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from pipeline.reading.name_words import HORSE_NOUNS
from pipeline.reading.roster_names import NamedHorse, NameSpan
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import COLOURS
from pipeline.record import HorseMatch
from pipeline.vocabulary import CLASS_SLOTS

_TOLD_BY = HORSE_NOUNS | COLOURS
_ONE_OF = frozenset({"next", "last", "another", "this", "that", "other", "third", "second", "final", "fourth", "fifth"})
_DETERMINERS = frozenset({"a", "an", "another", "some", "this", "that", "one"})
_DESCRIBING = COLOURS | {
    *("big", "little", "wee", "old", "young", "new", "small", "nice", "other", "more", "good", "poor", "shaggy"),
    *("tall", "fat", "thin", "next", "last", "third", "second", "final", "quarter", "grey", "dark", "light", "liver"),
    *("welsh", "shetland", "miniature", "rescue", "loan", "boarder", "boarding", "livery", "lesson", "school", "of"),
    *("theirs", "hers", "his", "spare", "paint", "pinto", "draft", "trail", "fine", "black", "white", "owner", "'s"),
}  # fmt: skip
_HIS = r"(?:his|her|its|the|a|that one 's|this one 's|their|(?:the|this|that) \w+ 's) ?"
_NOT_KNOWN = re.compile(
    rf"(?:(?:do|did|does|have|has|had|could|can) (?:n't|not)|never|nobody|no one|no idea|forgot|forget|{_HIS}|no|"
    rf"whatever) ?(?:(?:even|ever|quite|rightly|really|actually) )?"
    rf"(?:(?:know|get|got|catch|caught|heard|hear|have|has|tell you|told me|could tell me|can tell me|tell|remember|"
    rf"think of|recall|learn|ask|asked|to ask|see|seen|of|say|said|leave|left|give|gave me|knew|knows|named) ?)?"
    rf"(?:me |you |us |what |whose |who )*(?:{_HIS})?(?:barn |stable |registered )?"
    rf"(?:name(?! (?:them|him|her|it)\b)|names|named|what (?:he|she|it) 's called|(?:he|she|it) 's called|"
    rf"(?:this|that|the) \w+ (?:is|was|'s) called)\b"
    rf"|whose name (?:i|we|nobody)|{_HIS}name (?:escapes|is gone|'s gone|has gone|went|unknown|is not|is n't)"
    rf"|name (?:unknown|escapes|not known|not given|to follow|to come)|no name|nameless|unnamed"
    rf"|(?:forget|forgot|no idea|(?:do|did|could|can) (?:n't|not) (?:know|remember|recall|tell you)|to tell me|asked|"
    rf"wonder) what (?:they|he|she|it|you) (?:'s |is |was )?(?:calls?|called)\b|name ?(?:'ll|will) (?:come|be)\b"
)
_TURNS = frozenset(
    {"then", "next", "also", "last", "lastly", "finally", "plus", "after", "did", "done", "there", "second"}
)
_MEANWHILE = _TURNS | {
    "and", "now", ",", "so", "was", "'s", "up", "one", "is", "had", "that", "i", "we", "the", "horse",
}  # fmt: skip
_THEIRS = frozenset({"they", "'d", "'ve", "have", "got", "has"})
_DONE = frozenset({"did", "trimmed", "shod", "reset", "done"})
_BEHIND = frozenset({",", "too", "."})
_BEHIND_TWO = (["as", "well"], ["for", "them"], ["for", "her"], ["for", "him"], ["while", "i"], ["of", "theirs"])
_TWO = 2
_TOLD = frozenset({*CLASS_SLOTS, "feet"})
_MEASURED = _TOLD | {"measures"}
_SHORT = 9  # tokens of a sentence that only names and describes


def nameless(talk: Talk, spans: Sequence[NameSpan]) -> list[tuple[NamedHorse, list[NameSpan]]]:
    """Every horse without a name, with the words that stand for it; ``spans`` are the names found so far."""
    found: list[tuple[NamedHorse, list[NameSpan]]] = []
    by_noun: dict[str, int] = {}
    text = talk.tokens.text.lower()
    asked = "name" in text or "call" in text  # whose name is not known has one of the two
    for start, end in _sentences(talk.words) if asked or (spans and talk.says(_TOLD_BY)) else ():
        named = [s for s in spans if start <= s.start < end]
        told = _name_not_known(talk, start, end, named) if asked else None
        told = told or _one_more(talk, start, end, named, spans)
        if told is None:
            for noun, index in by_noun.items():
                found[index][1].extend(_again(talk, start, end, noun))
            continue
        begin, at = told
        noun, more = talk.words[at], "another" in talk.words[begin:at] or "other" in talk.words[begin:at]
        span = NameSpan(begin, at + 1, 0, role="opens")
        if noun in by_noun and noun != "one" and not more:
            found[by_noun[noun]][1].append(span)
            continue
        heard = talk.tokens.said(begin, at + 1)
        found.append((NamedHorse(None, HorseMatch.UNCLEAR, heard, tokens=(begin, at + 1)), [span]))
        by_noun[noun] = len(found) - 1
    return found


def _sentences(words: Sequence[str]) -> list[tuple[int, int]]:
    stops = [i for i, word in enumerate(words) if word in SENTENCE_ENDS] + [len(words)]
    starts = [0, *(i + 1 for i in stops)]
    return [(start, end) for start, end in zip(starts, stops, strict=False) if start < end]


def _name_not_known(talk: Talk, start: int, end: int, named: Sequence[NameSpan]) -> tuple[int, int] | None:
    """The words for a horse whose name the sentence says nobody knew: first token, and the noun's."""
    text = " ".join(talk.words[start:end])
    match = _NOT_KNOWN.search(text) if "name" in text or "call" in text else None
    if match is None or any(m.get("asides") for m in talk.starting_in(start, end)):
        return None
    at = start + text[: match.start()].count(" ")
    behind = start + text[: match.end()].count(" ")
    inside = [i for i in range(at, behind + 1) if talk.words[i] in HORSE_NOUNS]
    horses = [i for i in range(start, end) if _is_horse(talk.words, i)]
    before, after = [i for i in reversed(horses) if i < at], [i for i in horses if i >= at]
    noun = next(iter([*inside, *before, *after]), None)
    if noun is None:
        first = not any(m.is_any(_TOLD) for m in talk.starting_in(0, behind)) and not named
        return (start, start) if first and start == 0 else None  # "Box nine, no name on the door"
    begin = _phrase_start(talk.words, start, noun)
    if any(s.start < noun for s in named) and talk.words[begin] not in ("a", "an", "another", "some"):
        return None  # "Tally is a mare whose name I never remember"
    return begin, noun


def _is_horse(words: Sequence[str], at: int) -> bool:
    """A word for a horse: "mare", "the chestnut", "next one"; not "the mare's owner"."""
    if words[at] in HORSE_NOUNS and list(words[at + 1 : at + 2]) == ["'s"]:
        return False
    if words[at] == "one":
        return at > 0 and words[at - 1] in _ONE_OF | {"then"}
    alone = words[at] in COLOURS and not (at + 1 < len(words) and words[at + 1] in HORSE_NOUNS | COLOURS)
    return words[at] in HORSE_NOUNS or (alone and at > 0 and words[at - 1] in _DETERMINERS | _DESCRIBING | {"the"})


def _phrase_start(words: Sequence[str], start: int, noun: int) -> int:
    at = noun
    while at > start and words[at - 1] in _DESCRIBING:
        at -= 1
    if at > start and words[at - 1] in _DETERMINERS | {"the"}:
        at -= 1
    return at


def _one_more(
    talk: Talk, start: int, end: int, named: Sequence[NameSpan], spans: Sequence[NameSpan]
) -> tuple[int, int] | None:
    """ "Then a bay mare, corn left front.", "also trimmed a donkey for them": a horse that turns up without a name."""
    if named or not spans or spans[0].start > start or _TOLD_BY.isdisjoint(talk.words[start:end]):
        return None
    if any(end < s.start <= end + _TWO for s in spans):
        return None  # "Next up a grey mare. Tally."
    alone = len({s.horse for s in spans}) == 1
    for noun in [i for i in range(start, end) if _is_horse(talk.words, i) and talk.words[i] != "one"]:
        begin = _phrase_start(talk.words, start, noun)
        if _turns_up(talk.words, start, begin, noun, alone) and _described(talk, start, end):
            return begin, noun
    return None


def _turns_up(words: Sequence[str], start: int, begin: int, noun: int, alone: bool) -> bool:
    """Whether "then", "also", "too" say that it is another horse; "the other mare" only where one horse is told of."""
    article = words[begin] in ("a", "an", "another", "some", "one")
    other = words[begin] == "the" and "other" in words[begin:noun] and alone
    lead, behind = set(words[start:begin]), list(words[noun + 1 : noun + 4])
    behind = behind[1:] if behind[:1] in (["in"], ["there"]) else behind[:2]
    as_well = behind[:1] == ["too"] or behind == ["as", "well"]
    turned = bool(_TURNS & lead) or words[begin] == "another" or as_well
    closed = not behind or behind[0] in _BEHIND or behind in _BEHIND_TWO
    return (article or other) and turned and closed and lead <= _MEANWHILE | _DONE | _THEIRS


def _described(talk: Talk, start: int, end: int) -> bool:
    """Whether the sentence tells something of the trade, or only that the horse is there."""
    said = talk.starting_in(start, end)
    told = any(m.is_any(_MEASURED) for m in said)
    called = any(m.get("horse_cues") == "named" for m in said)
    return not called and (told or end - start <= _SHORT)


def _again(talk: Talk, start: int, end: int, noun: str) -> list[NameSpan]:
    """ "Now the mare, brown.", "ten weeks for the donkey": the noun with its article."""
    found = []
    for at in range(start, end):
        begin = _phrase_start(talk.words, start, at) if talk.words[at] == noun else at
        if begin < at and talk.words[begin] in ("the", "this", "that") and "other" not in talk.words[begin:at]:
            lead = talk.words[start:begin]
            opens = set(lead) <= _MEANWHILE | {"back", "to", "on", "okay", "right"}
            found.append(NameSpan(begin, at + 1, 0, role="opens" if opens else "refers"))
    return found
