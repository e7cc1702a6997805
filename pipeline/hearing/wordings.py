"""Other wordings for what the recogniser wrote.

Words of the trade and names that sound like words which the trade has no use for; and, wherever they stand, the rivals
of numbers and of "no", which are cheap to get wrong and dear.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from rapidfuzz import fuzz, process

from pipeline.hearing.alike import alike, letters, spoken_code
from pipeline.hearing.same_sound import same_sounding
from pipeline.vocabulary import Vocabulary

# Classes whose words carry facts by themselves; the others are full of everyday words.
_TELLING = (
    "findings", "zones", "feet", "shoe_types", "shoe_materials", "shoe_states", "pads", "packings", "treatments",
    "clips", "traction", "work", "tester_heads", "tester_responses", "pulse_heads", "severities", "gaits", "vet",
)  # fmt: skip
_LONGEST = 3  # words of a wording
_LEAST_LETTERS = 4
_LEAST_ALIKE = 0.66  # of 90 misheard words of the trade in synthetic speech, nine in ten were at least so alike
_LEAST_CODE = 55  # percent; only to look at fewer
_MOST = 4  # wordings weighed for the same words
# What is easily taken for one another in noise and means something else in the same place.
_PAIRS = (
    ("no", "now"),
    ("five", "nine"),
    ("5", "9"),
    *((f"{stem}teen", f"{stem}ty") for stem in ("thir", "four", "fif", "six", "seven", "eigh", "nine")),
    *((f"1{figure}", f"{figure}0") for figure in range(3, 10)),
)
_SPELLED = {"fourty": "forty"}
_NO_LESS = {"know": ("no",)}  # never the other way: a "no" that is lost turns a fact round
RIVAL_LIKENESS = 0.4375  # so that a rival stands only where the sound prefers it outright
# What the trade would say there, where the sound is the same. Of 46 such places in 80 memos all were right, with
# margins down to -15.
_SAME_SOUND = 12.0
_LINKED = ("in", "on", "and")  # "thrushing the hinds" was "thrush in the hinds"
_SENTENCE_END = re.compile(r"[.,?!;:]$")
_MARKS = ".,?!;:"
_BARE = re.compile(r"[^a-z' ]+")


@dataclass(frozen=True)
class Proposal:
    """``wording`` in the place of the words ``[first, last)``, and how alike the two sound (0-1).

    ``prior`` is what speaks for it beside the sound, in nats.
    """

    first: int
    last: int
    heard: str
    wording: str
    likeness: float
    name: bool = False
    prior: float = 0.0


class Wordings:
    """The wordings that a vocabulary and a roster offer; built once a memo's roster is known."""

    def __init__(self, vocabulary: Vocabulary, names: Sequence[str] = (), known: Sequence[str] = ()) -> None:
        """``names`` may be proposed; the words of ``known`` (places, owners) are only left alone."""
        spoken = {form for name in vocabulary.classes if name != "bias" for form in vocabulary.spoken(name)}
        trade = {word for form in spoken for word in form.split()}
        self.names = tuple(names)
        self._known = trade | {word for name in (*names, *known) for word in bare(name).split()}
        self._names = {bare(name): name for name in names}
        self._written = _spellings(name for name in names if not set(bare(name).split()) & trade)
        telling = {form for name in _TELLING for form in vocabulary.spoken(name) if "..." not in form}
        phrases = {form for form in telling if len(form.split()) <= _LONGEST}
        words = {word for form in telling for word in form.split() if word.isalpha()}
        offered = {p for p in phrases | words if len(letters(p)) >= _LEAST_LETTERS}
        nouns = {f for f in vocabulary.spoken("findings") if len(f.split()) == 1}
        offered |= {f"{noun} {link}" for noun in nouns for link in _LINKED}
        self._offered = sorted(offered | set(self._names))
        self._codes = [spoken_code(wording) for wording in self._offered]
        self._found: dict[str, list[tuple[float, str]]] = {}

    def propose(self, words: Sequence[str]) -> list[Proposal]:
        """Proposals for the words of one stretch (as written, with their marks): rivals, then the most alike first.

        Other words that the trade knows are left alone: they are what would make sense already.
        """
        plainest = [bare(word) for word in words]
        plain = [word.strip().strip(_MARKS).lower() for word in words]
        marks = [word.strip()[len(word.strip().rstrip(_MARKS)) :] for word in words]
        found = [
            Proposal(first, last, " ".join(plain[first:last]), wording, 1.0, prior=_SAME_SOUND)
            for first, last, wording in same_sounding(plain, marks)
        ]
        found += [
            Proposal(at, at + 1, word, rival, RIVAL_LIKENESS)
            for at, word in enumerate(plain)
            for rival in _SOUND_ALIKES.get(word, ())
        ]
        others = []
        for first, last in self._windows(words, plainest):
            heard = " ".join(plainest[first:last])
            for likeness, wording in self._alike(heard):
                name = self._names.get(wording)
                if name is not None and set(wording.split()) <= set(heard.split()):
                    continue  # the name was heard; what else stands there is no part of it
                others.append(Proposal(first, last, heard, name or wording, likeness, name is not None))
        return found + sorted(others, key=lambda p: -p.likeness)

    def spelled(self, text: str) -> str:
        """The text with the roster's names as the roster spells them; no letter more or less."""
        return self._written.sub(lambda found: self._names[found[0].lower()], text) if self._written else text

    def _windows(self, words: Sequence[str], bare: Sequence[str]) -> Iterable[tuple[int, int]]:
        """Runs of one to three words within a clause that hold a word which the trade has no use for."""
        for first in range(len(words)):
            for last in range(first + 1, min(first + _LONGEST, len(words)) + 1):
                inside = bare[first:last]
                if last - first > 1 and _SENTENCE_END.search(words[last - 2].strip()):
                    break
                if not all(inside):
                    break
                if not all(_known(word, self._known) for run in inside for word in run.split()):
                    yield first, last

    def _alike(self, heard: str) -> list[tuple[float, str]]:
        if heard not in self._found:
            code = spoken_code(heard)
            near = process.extract(code, self._codes, scorer=fuzz.ratio, score_cutoff=_LEAST_CODE, limit=60)
            scored = [(alike(heard, self._offered[i]), self._offered[i]) for _, _, i in near if code]
            self._found[heard] = sorted((s for s in scored if s[0] >= _LEAST_ALIKE), reverse=True)[:_MOST]
        return self._found[heard]


def _rivals() -> dict[str, tuple[str, ...]]:
    """For every word of a pair the words that it is taken for, or stands for."""
    rivals: dict[str, tuple[str, ...]] = dict(_NO_LESS)
    for pair in _PAIRS:
        one, other = (_SPELLED.get(word, word) for word in pair)
        rivals[one] = (*rivals.get(one, ()), other)
        rivals[other] = (*rivals.get(other, ()), one)
    return rivals


_SOUND_ALIKES = _rivals()


def _spellings(names: Iterable[str]) -> re.Pattern[str] | None:
    """The names as they may stand in a text in small letters; None without any."""
    plain = sorted({name.lower() for name in names if bare(name) == name.lower()}, key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, plain))})\b") if plain else None


def _known(word: str, known: set[str]) -> bool:
    """Whether the trade uses the word, also as "frog's" or "bars"."""
    return word in known or word.removesuffix("'s") in known or word.removesuffix("s") in known


def bare(word: str) -> str:
    """The word or words in small letters, without marks; a hyphen parts words."""
    return " ".join(_BARE.sub("", word.lower().replace("-", " ")).split())
