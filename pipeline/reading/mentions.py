"""Mentions: where a memo names something of the trade, found from the vocabulary alone.

Forms of one length compete on the longest match; a form with a gap ("heels ... contracted") claims only its own
words, so that what stands in the gap ("on the right front are") is still read.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass
from itertools import accumulate
from operator import attrgetter, itemgetter
from typing import NamedTuple

from pipeline.reading.gapped import GAP, Found, GappedForms
from pipeline.reading.heard_numbers import HeardNumbers
from pipeline.reading.numbers import Number, NumberReader, one_and_a_half
from pipeline.reading.phrases import Phrases
from pipeline.reading.tokens import SENTENCE_ENDS, Tokens, form_tokens
from pipeline.record import MatchKind
from pipeline.vocabulary import LEARNED_SOURCE, Vocabulary

# Classes that are read elsewhere, not matched as phrases.
_NOT_PHRASES = frozenset({"numbers", "bias", "clause_words", "remarks"})
# Words that mean something only beside something else; never more important than a word of the trade.
_WEAK = frozenset({"fillers", "totals", "horse_cues", "same"})
_POINTING = frozenset({"in_hand", "pair_in_hand", "other"})
_OF_WHAT = ("taking_back", "about")  # "about the", of which "the" may belong to what follows: "the forge"
_HEADED = {"tester_responses": "tester_heads", "pulses": "pulse_heads", "nail_lines": "nail_line_heads"}
_ANSWERS_IN_A_ROW = 4  # sentences: one for each foot
_SORRY = 6  # tokens of a sentence that only takes back, its stop among them
_HEADS = frozenset(_HEADED.values())
# Never taken for a part of a longer sound-alike: what names a horse or turns the sense round, and little words that
# every sentence has ("thin so", "all for"), unless a person said what the longer words stand for.
LITTLE_WORDS = frozenset({"horse_cues", "fillers"})
_NEVER_A_PART = frozenset({"horse", "denials", "doubts", "resolutions", "taking_back", "not_facts"}) | LITTLE_WORDS
# What a number is told of: "a crest score of four" names no off fore, a misheard "heel angle of four" may.
_OF_A_NUMBER = frozenset({"body_condition", "cresty_neck", "obel", "lameness", "grade", "shoe_size", "nail_size"})
_OF_A_SIDE = frozenset({"the", "his", "her", "in", "on", "of", "that"})
_NUMBERED = frozenset({"size", "sizes", "number", "numbers"})
_AND_A = 2  # tokens
_SETS = frozenset({"set", "sets", "pair", "out"})
_SO_FOUND = ("findings", "gaits", "shoe_states", "manners")
_LED_SO = frozenset({"was", "is", "'s", "were", "are", "'re", "just", "got", "looks", "looked"})
_PUT_ON_WORDS = frozenset({"pad", "pads", "packing", "pack", "coat", "dose", "cotton", "gauze", "bit", "lot"})
# Words that a finding is heard as ("thrush"), but that describe what stands right behind them if it is put on.
_DESCRIBING = frozenset({"fresh", "freshly", "freshy", "trashy", "thrashy"})
_PUT_ON = ("treatments", "packings", "pads", "shoe_types", "shoe_materials", "clips", "traction", "measures", "work")


_RANK, _START = itemgetter(0), attrgetter("start")
PLACE = attrgetter("start", "end")


@dataclass(eq=False, slots=True)
class Mention:
    """A named thing in the token span ``[start, end)``; ``literal`` are the tokens it claims.

    ``readings`` maps each class of words that this span may belong to onto the canonical name there.
    """

    start: int
    end: int
    literal: tuple[int, ...]
    readings: dict[str, str]
    match: MatchKind = MatchKind.VARIANT
    number: Number | None = None
    dropped: bool = False
    stands_for: Mention | None = None

    def get(self, name: str) -> str | None:
        """The canonical name in class ``name``, if this span may belong to it."""
        return self.readings[name] if name in self.readings and not self.dropped else None

    def is_any(self, names: Container[str]) -> bool:
        """Whether the span may belong to any of the classes; it has one or two."""
        for name in self.readings:
            if name in names:
                return not self.dropped
        return False


class _Meaning(NamedTuple):
    """What a form may mean; ``order`` says which of several that share a word counts first."""

    name: str
    canonical: str
    match: MatchKind
    order: int
    learned: bool = False  # whether corrections taught it


# A meaning at its place: rank, end, literal, meaning; of those that share a token the one with the lowest rank is
# chosen. A plain tuple, because a memo makes a hundred of them.
_Candidate = tuple[tuple[int, int, int], int, tuple[int, ...], _Meaning]


class MentionFinder:
    """Finds every mention of a document; built once from the vocabulary."""

    def __init__(self, vocabulary: Vocabulary, sound_alikes: bool = False) -> None:
        """``sound_alikes`` also matches what recognisers write instead of the word."""
        self._numbers = NumberReader(vocabulary.spoken("numbers"))
        self._heard = HeardNumbers(vocabulary, self._numbers) if sound_alikes else None
        self._counted = set(vocabulary.spoken("units")) | {"nail", "nails"}
        self._phrases, self._gapped = Phrases(), GappedForms()
        self._meaning: dict[str, list[_Meaning]] = {}
        self._count_words = frozenset(vocabulary.spoken("numbers"))
        self._counting_feet = self._numbered(vocabulary.heard_as("feet")) if sound_alikes else frozenset()
        learned = _learned_forms(vocabulary)
        for name in sorted(set(vocabulary.classes) - _NOT_PHRASES):
            for form, canonical in vocabulary.spoken(name).items():
                kind = MatchKind.EXACT if form == canonical.replace("_", " ") else MatchKind.VARIANT
                self._add(form, name, canonical, kind, (name, form) in learned)
            if sound_alikes:
                for form, canonical in vocabulary.heard_as(name).items():
                    self._add(form, name, canonical, MatchKind.SOUND_ALIKE, (name, form) in learned)

    def _add(self, form: str, name: str, canonical: str, match: MatchKind, learned: bool) -> None:
        words = form_tokens(form)
        if form not in self._meaning:
            kind: Phrases | GappedForms = self._gapped if GAP in words else self._phrases
            kind.add(form, words)
        own = len(words) - words.count(GAP)
        self._meaning.setdefault(form, []).append(_meaning(name, canonical, match, own, learned))

    def find(self, tokens: Tokens, names: Sequence[Mention] = ()) -> list[Mention]:
        """All mentions in order; a horse's name gives way only to a longer phrase ("Copper", "copper sulfate")."""
        candidates = [*map(_named, names), *_with_heads(tokens, self._candidates(tokens))]
        chosen = _choose(candidates if self._heard is None else _without_parts(candidates))
        chosen = [m for m in chosen if "same" not in m.readings or not self._another_size(tokens, m, chosen)]
        chosen = _without_describing(tokens, chosen) if self._heard is not None else chosen
        chosen = _without_emphasis(tokens, chosen) if "plain" in tokens.words else chosen
        masked = list(tokens.words)
        for mention in chosen:
            whole = "not_facts" in mention.readings or "horse" in mention.readings
            if not whole and len(mention.literal) == 1:
                continue
            if set(mention.readings) == {"horse_cues"} and len(mention.literal) > 1 and self._counts(tokens, mention):
                continue  # "no, it was the two degree" counts degrees, not horses
            for index in mention.literal:
                masked[index] = ""
            if tokens.words[mention.end - 1] == "feet" and not whole:
                masked[mention.end - 1] = "feet"  # "front feet ones" is a size, "the back ones" are feet
        alike = self._heard.write(masked, tokens.words) if self._heard is not None else set()
        numbers = [
            Mention(n.start, n.end, tuple(range(n.start, n.end)), {"number": str(n.value)}, _number_match(n, alike), n)
            for n in self._numbers.find(masked, tokens.words)
            if not _denies(n, masked, chosen)
        ]
        counted = {index for mention in numbers for index in mention.literal}
        kept = [m for m in chosen if counted.isdisjoint(m.literal)]
        return sorted(kept + numbers, key=_START)  # no two begin at one token

    def meaning(self, form: str) -> dict[str, str]:
        """The classes of a form of the vocabulary, with its canonical name in each; empty when it has no such form."""
        found = self._meaning.get(form, [])
        return {m.name: m.canonical for m in found if m.match is not MatchKind.SOUND_ALIKE}

    def _counts(self, tokens: Tokens, mention: Mention) -> bool:
        return mention.end < len(tokens.words) and tokens.words[mention.end] in self._counted

    def _another_size(self, tokens: Tokens, mention: Mention, chosen: list[Mention]) -> bool:
        """ "Size two on the fores and one on the hinds": a size, no second corn of those told before."""
        if tokens.words[mention.start : mention.start + 2] != ["and", "one"]:
            return False
        start = mention.start
        while start and tokens.words[start - 1] != "," and tokens.words[start - 1] not in SENTENCE_ENDS:
            start -= 1
        told = [m for m in chosen if start <= m.start < mention.start]
        sized = any(m.get("measures") == "shoe_size" for m in told)
        ahead = tokens.words[start : mention.start]
        sized = (
            sized or any(self._numbers.is_size(word) for word in ahead) or not self._count_words.isdisjoint(ahead[:1])
        )
        return sized and not any(m.is_any(("findings", "tester_heads")) for m in told)

    def _sides(self, tokens: Tokens, found: list[Found]) -> set[int]:
        """Every side that names a foot: nothing is left in "took the left hind shoe off", nor off in "the off hind"."""
        words = tokens.words
        several = [(form, literal[0]) for form, _, literal in found if len(literal) > 1]
        sides = [(form, at) for form, at in several if words[at] == "left" or _the_off(words, at)]
        return {at for form, at in sides if any(m.name == "feet" for m in self._meaning[form])}

    def _numbered(self, feet: Iterable[str]) -> frozenset[str]:
        """The misheard feet that end in a number: "of four"."""
        return frozenset(form for form in feet if form.rsplit(" ", 1)[-1] in self._count_words)

    def _counted_foot(self, tokens: Tokens, foot: Found, found: list[Found]) -> bool:
        """ "A crest score of four", "a set of fours", "on the left four nails": a number, no misheard fore."""
        if foot[0] not in self._counting_feet:
            return False
        (_, end, literal), words = foot, tokens.words
        behind, start = words[end : end + 1], literal[0]
        if behind and behind[0] in self._counted:
            return True
        if words[start] != "of" or not start or (behind and (behind[0] in self._count_words or behind[0].isdigit())):
            return False  # "crest score of four", and not "size of four, two"
        heads = [form for form, last, _ in found if last == start]
        return words[start - 1] in _SETS or any(
            m.name == "measures" and m.canonical in _OF_A_NUMBER for form in heads for m in self._meaning[form]
        )

    def _sized(self, tokens: Tokens, foot: Found) -> bool:
        """ "Size four shoes in front", "number four shoes": their size, not that there are four."""
        counted = foot[1] - foot[2][0] > 1 and tokens.words[foot[2][0]] in self._count_words
        return counted and any(m.name == "feet" for m in self._meaning[foot[0]])

    def _half_of_a_number(self, words: list[str], found: Found) -> bool:
        """ "Size two and a half rims": the half is the size's, and the rims are not half ones."""
        form, at = found[0], found[2][0]
        return (
            words[at] == "half"
            and words[at - 2 : at] == ["and", "a"]
            and at > _AND_A
            and words[at - 3] in self._count_words | {"1", "2", "3", "4", "5"}
            and form.removeprefix("half ") in self._meaning
        )

    def _candidates(self, tokens: Tokens) -> list[_Candidate]:
        words = tokens.words
        found = self._phrases.find(words)
        if gapped := list(self._gapped.find(tokens)):
            sides = self._sides(tokens, found)
            found += [one for one in gapped if sides.isdisjoint((one[2][0], one[2][-1]))]
        if not _NUMBERED.isdisjoint(words):
            sized = {i + 1 for i, word in enumerate(words) if word in _NUMBERED}
            found = [one for one in found if one[2][0] not in sized or not self._sized(tokens, one)]
        if "half" in words:
            found = [one for one in found if not self._half_of_a_number(words, one)]
            found = [one for one in found if not one_and_a_half(words, one[1] - 1)]
        if self._counting_feet:  # heard
            meant = [one for one in found if self._counted_foot(tokens, one, found)]
            found = [one for one in found if one not in meant] if meant else found
        return [
            ((meaning.order, end - literal[0], literal[0]), end, literal, meaning)
            for form, end, literal in found
            for meaning in self._meaning[form]
        ]


def _the_off(words: list[str], at: int) -> bool:
    return words[at] == "off" and words[max(0, at - 1)] in _OF_A_SIDE


def _meaning(name: str, canonical: str, match: MatchKind, words: int, learned: bool) -> _Meaning:
    weak = name in _WEAK or canonical in _POINTING or (name, canonical) == _OF_WHAT
    # What was heard otherwise comes last, then more words come first, then a name (_named), then what is not weak.
    order = ((match is MatchKind.SOUND_ALIKE) << 12) - (words << 2) + 2 + weak
    return _Meaning(name, canonical, match, order, learned)


def _named(name: Mention) -> _Candidate:
    """A horse's name; of as many words it counts first."""
    order = -len(name.literal) << 2
    meaning = _Meaning("horse", name.readings["horse"], MatchKind.EXACT, order)
    return (order, name.end - name.start, name.start), name.end, name.literal, meaning


def _learned_forms(vocabulary: Vocabulary) -> frozenset[tuple[str, str]]:
    """The class and the form of every sound-alike that corrections taught."""
    return frozenset(
        (name, form)
        for name, entries in vocabulary.classes.items()
        for entry in entries
        if entry.source == LEARNED_SOURCE
        for form in entry.heard_as
    )


def _with_heads(tokens: Tokens, candidates: list[_Candidate]) -> list[_Candidate]:
    """Without the responses whose head is spoken of neither in their sentence nor in the one before.

    Else "couldn't find" (a pulse) would swallow the denial of "couldn't find an abscess".
    """
    names = [meaning.name for _, _, _, meaning in candidates]
    if _HEADED.keys().isdisjoint(names):
        return candidates
    if _HEADS.isdisjoint(names):
        return [c for c in candidates if c[3].name not in _HEADED]
    ends = list(accumulate(map(SENTENCE_ENDS.__contains__, tokens.texts), initial=0))
    heads, answered, found = set[tuple[str, int]](), set[tuple[str, int]](), set[int]()
    for name, (_, _, literal, _) in zip(names, candidates, strict=True):
        if name == "findings":
            found.update(literal)
        elif name in _HEADS:
            heads.add((name, ends[literal[0]]))
        elif name in _HEADED:
            answered.add((_HEADED[name], ends[literal[0]]))
        elif name == "taking_back" and ends.count(at := ends[literal[0]]) <= _SORRY:
            answered.update((head, at) for head in _HEADS)  # "pulse bounding. Sorry. Raised."

    def headed(name: str, at: int) -> bool:
        """Whether the head is in this sentence or before it, with nothing but sentences of answers between."""
        head = _HEADED[name]
        for back in range(at, at - _ANSWERS_IN_A_ROW, -1):
            if (head, back) in heads or (head, back - 1) in heads:
                return True
            if (head, back - 1) not in answered:
                return False
        return False

    return [
        c
        for c, name in zip(candidates, names, strict=True)
        if name not in _HEADED or (headed(name, ends[c[2][0]]) and not _spans(c, found))
    ]


def _spans(candidate: _Candidate, found: set[int]) -> bool:
    """ "Pulse up, no heat to speak of": a finding stands in the gap, and it is what the words deny."""
    _, end, literal, _ = candidate
    return len(literal) < end - literal[0] and any(literal[0] < i < end for i in found - {*literal})


def _denies(number: Number, words: Sequence[str], chosen: list[Mention]) -> bool:
    """ "Zero thrush" is no thrush, not a number."""
    if number.end - number.start != 1 or words[number.start] != "zero":
        return False
    return any(m.start == number.end and "findings" in m.readings for m in chosen)


def _number_match(number: Number, alike: set[int]) -> MatchKind:
    heard_otherwise = alike.intersection(range(number.start, number.end))
    return MatchKind.SOUND_ALIKE if heard_otherwise else MatchKind.VARIANT


def _choose(candidates: list[_Candidate]) -> list[Mention]:
    """The longest candidates that do not overlap; equal spans share one mention with several readings."""
    used: dict[int, Mention] = {}
    taken = used.keys()
    chosen: list[Mention] = []
    for (_, _, start), end, literal, (name, canonical, match, _, _) in sorted(candidates, key=_RANK):
        if start not in used and (end - start == 1 or taken.isdisjoint(literal)):
            mention = Mention(start, end, literal, {name: canonical}, match)
            chosen.append(mention)
            for index in literal:
                used[index] = mention
            continue
        holder = used.get(start)
        shared = holder is not None and holder.literal == literal and holder.match is not MatchKind.SOUND_ALIKE
        if shared and holder is not None and "horse" not in holder.readings:
            holder.readings.setdefault(name, canonical)
    return chosen


def _without_describing(tokens: Tokens, chosen: list[Mention]) -> list[Mention]:
    """ "A fresh bandage over that": what is put on is described, and no finding was heard as the word before it."""
    alikes = [m for m in chosen if m.match is MatchKind.SOUND_ALIKE and tokens.words[m.start] in _DESCRIBING]
    put_on = {m.start for m in chosen if m.is_any(_PUT_ON)} if alikes else set()
    put_on |= {m.end for m in alikes if not _PUT_ON_WORDS.isdisjoint(tokens.words[m.end : m.end + 1])}
    describing = {m.start for m in alikes if "findings" in m.readings and m.end in put_on}
    return [m for m in chosen if m.start not in describing] if describing else chosen


def _without_emphasis(tokens: Tokens, chosen: list[Mention]) -> list[Mention]:
    """ "The left hind was just plain lame", "it's plain worn out": how much so, no plain shoe."""
    told = {m.start for m in chosen if m.is_any(_SO_FOUND)}
    words = tokens.words
    return [
        m
        for m in chosen
        if words[m.start : m.end] != ["plain"] or m.end not in told or words[m.start - 1] not in _LED_SO
    ]


def _without_parts(candidates: list[_Candidate]) -> list[_Candidate]:
    """Without the words that are only a part of what a recogniser wrote for something longer.

    The toe of "CD toe" is no toe: there the longer sound-alike stands, as the longer phrase does elsewhere.
    """
    alikes = [c for c in candidates if c[3].match is MatchKind.SOUND_ALIKE and len(c[2]) > 1]
    if not alikes:
        return candidates
    exact = [(c, set(c[2])) for c in candidates if c[3].match is not MatchKind.SOUND_ALIKE]
    parts: set[int] = set()
    for alike in alikes:
        touched = [c for c, own in exact if not own.isdisjoint(alike[2])]
        if all(_is_part(one, alike) for one in touched):
            parts.update(id(c) for c in touched)
    return [c for c in candidates if id(c) not in parts]


def _is_part(exact: _Candidate, alike: _Candidate) -> bool:
    """Whether a sound-alike may stand in place of an exact word: not of one that goes on beyond it, nor of one that
    means the same, which is the surer of the two, nor of one of _NEVER_A_PART."""
    (_, _, part, meant), (_, _, whole, heard) = exact, alike
    kept = _NEVER_A_PART - LITTLE_WORDS if heard.learned else _NEVER_A_PART - {"horse_cues"}
    return set(part) < set(whole) and meant[:2] != heard[:2] and meant.name not in kept
