"""Windows in which names are said that are told apart by ear alone, with the names that sound like them.

A name is most of what tells one horse from another, and the one word of a memo that no grammar can guess. The names of
the memos are few and soon known by heart; words of a dictionary, put in their places, are not.
"""

from __future__ import annotations

import random
import re
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

from rapidfuzz import fuzz, process

from pipeline.errors import ClinchbookError
from pipeline.hearing.alike import alike, spoken_code
from pipeline.vocabulary import load_vocabulary
from tests.bench.adapter.windows import NAMES, SEED, Window, cut, sentences_of

_PROPER, _COMMON = re.compile(r"[A-Z][a-z]{2,9}"), re.compile(r"[a-z]{4,9}")
_PROPER_DRAWN, _COMMON_DRAWN = 2600, 1200
_INFLECTED = ("s", "ing", "ed", "ly", "ness")
_LEAST_CODE, _NEAR = 60, 40  # percent, and how many are looked at
_ALIKE = (0.6, 0.985)  # from here on two names sound alike, and here they sound the same
_MOST_RIVALS = 5
_RIVAL_SAID_SHARE = 0.35  # of the names have one that sounds alike said beside them
_LEAST_NAMES = 8  # that have a rival
_CLOSEST = 2  # rivals that are said
_MEMO_SHARE = 0.7  # of the windows are a memo's sentences with other names, the others turns from horse to horse
_MEMO_WORDS, _LONGEST = (12, 20, 28), 34
_FILLERS = (2, 8)  # names on the roster that nobody speaks of
_TURNS = (
    "{a}. {b} is after him.", "That's {a} done, on to {b} now.", "{a} and {b}, both for trims.",
    "This is {a}, not {b}.", "Next one is {a}.", "Okay so {a} first, then {b}.", "{a}, {b} and {c} today.",
    "Back to {a} for a minute.",
    "{a} was quiet, {b} was a handful.", "And {a}'s hinds, same as {b}'s.", "{a} next, the grey mare.", "Right, {a}.",
    "Same yard, {a} this time.", "That was {a}, this one's {b}.", "Finished with {a}.", "{a} again, the old gelding.",
)  # fmt: skip


def names_to_learn(words: Path, of_memos: Sequence[str]) -> list[str]:
    """The memos' names, and words of a dictionary (a file of a word a line, as Debian's wamerican) as names.

    Without the trade's words. Raises OSError.
    """
    vocabulary = load_vocabulary()
    trade = {word for name in vocabulary.classes for form in vocabulary.spoken(name) for word in form.split()}
    listed = words.read_text(encoding="utf-8").split()
    proper = [word for word in listed if _PROPER.fullmatch(word)]
    common = [word.capitalize() for word in listed if _COMMON.fullmatch(word) and not word.endswith(_INFLECTED)]
    drawn = random.Random(f"{SEED} names")
    found = [*of_memos, *_some(drawn, proper, _PROPER_DRAWN), *_some(drawn, common, _COMMON_DRAWN)]
    return [name for name in dict.fromkeys(found) if name.lower() not in trade]


def _some(drawn: random.Random, words: Sequence[str], most: int) -> list[str]:
    return drawn.sample(words, min(most, len(words)))


def rivals_of(names: Sequence[str]) -> dict[str, tuple[str, ...]]:
    """For every name that has any: those that sound like it but not the same, the most alike first."""
    codes = [spoken_code(name) for name in names]
    found = {}
    for name, code in zip(names, codes, strict=True):
        near = process.extract(code, codes, scorer=fuzz.ratio, score_cutoff=_LEAST_CODE, limit=_NEAR) if code else []
        likely = sorted(((alike(name, names[at]), names[at]) for _, _, at in near), reverse=True)
        rivals = [other for likeness, other in likely if _ALIKE[0] <= likeness < _ALIKE[1] and _apart(name, other)]
        if rivals:
            found[name] = tuple(rivals[:_MOST_RIVALS])
    return found


def _apart(one: str, other: str) -> bool:
    return one.lower() not in other.lower() and other.lower() not in one.lower()


def names_windows(memos: Sequence[dict[str, Any]], names: Sequence[str], count: int) -> Iterator[Window]:
    """``count`` windows with such names in the places of the memos' own, and of turns from one horse to another.

    Raises ClinchbookError where hardly a name sounds like another.
    """
    rivals = rivals_of(names)
    if len(rivals) < _LEAST_NAMES:
        raise ClinchbookError(f"Only {len(rivals)} of the names sound like another one: give more words.")
    drawn = random.Random(f"{SEED} names said")
    places = [place for memo in memos for place in _places(memo, drawn)]
    drawn.shuffle(places)
    of_memos = places[: int(count * _MEMO_SHARE)]
    for sentences, named in of_memos:
        yield _window(*_renamed(sentences, named, _fresh(drawn, rivals, len(named))), rivals, drawn)
    for _ in range(count - len(of_memos)):
        called = _fresh(drawn, rivals, 3)
        turns = [_turn(drawn, called) for _ in range(drawn.randint(1, 3))]
        yield _window(tuple(s for turn in turns for s in sentences_of(turn)), called, rivals, drawn)


def _places(memo: Mapping[str, Any], drawn: random.Random) -> Iterator[tuple[tuple[str, ...], list[str]]]:
    """Short windows of a memo, each with the names of its roster that are said in it."""
    horses = [name for name in memo["roster"] if len(name) > 2 and name[0].isupper()]
    for sentences in cut(memo["text"], drawn.choice(_MEMO_WORDS)):
        text = " ".join(sentences)
        named = [name for name in horses if re.search(rf"\b{re.escape(name)}\b", text)]
        if named and len(text.split()) <= _LONGEST:
            yield sentences, named


def _fresh(drawn: random.Random, rivals: Mapping[str, Sequence[str]], count: int) -> list[str]:
    """So many names, some of them with one beside them that sounds alike."""
    known, found = list(rivals), list[str]()
    while len(found) < count:
        name = drawn.choice(known)
        found += [name] if name not in found else []
        if len(found) < count and drawn.random() < _RIVAL_SAID_SHARE:
            found += [r for r in (drawn.choice(rivals[name][:_CLOSEST]),) if r not in found]
    return found


def _renamed(
    sentences: Sequence[str], named: Sequence[str], instead: Sequence[str]
) -> tuple[tuple[str, ...], Sequence[str]]:
    others = dict(zip(named, instead, strict=True))
    longest_first = sorted(named, key=len, reverse=True)
    pattern = re.compile("|".join(rf"\b{re.escape(name)}\b" for name in longest_first))
    return tuple(pattern.sub(lambda found: others[found[0]], sentence) for sentence in sentences), instead


def _turn(drawn: random.Random, called: Sequence[str]) -> str:
    a, b, c = drawn.sample(called, 3)
    return drawn.choice(_TURNS).format(a=a, b=b, c=c)


def _window(
    sentences: tuple[str, ...], called: Sequence[str], rivals: Mapping[str, Sequence[str]], drawn: random.Random
) -> Window:
    text = " ".join(sentences)
    said = [name for name in called if name in text]
    roster = [*said, *drawn.sample(list(rivals), drawn.randint(*_FILLERS))]
    drawn.shuffle(roster)
    alike_ones = dict.fromkeys(rival for name in said for rival in rivals.get(name, ()) if rival not in said)
    return Window(NAMES, sentences, tuple(dict.fromkeys(roster)), tuple(alike_ones))
