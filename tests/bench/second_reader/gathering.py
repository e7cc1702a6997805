"""What the second reader learns from: the words of memos, and of every fact that a reader read there what was meant."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pipeline.judging.opinion import NOT_SO
from pipeline.judging.second_reader import OF_FEET, STATUSES, plain
from pipeline.judging.surroundings import Surroundings, shipped_cues
from pipeline.reading import Reader
from pipeline.record import HORSE_SLOTS, Fact, Transcript, Visit
from pipeline.vocabulary import load_vocabulary
from tests.bench.judging.examples import read
from tests.bench.judging.gathering import CORPUS, heard_readings, past_readings
from tests.bench.judging.opining import meaning, own_gold
from tests.bench.second_reader.lacking import ROUNDS, readings
from tests.facts.scoring import GoldFact, load_gold, same_value

MEANINGS = (*(str(status) for status in STATUSES), NOT_SO)
_NAMED_BY = 60  # a case is named by its first letters
_FEWEST_MEMOS = 9  # memos that must hold a word
_NAME_MORE = 4  # a word that is written large in a sentence so many times as often as small is a name
_CAPITAL = re.compile(r"(?<=[a-z,;] )([A-Za-z][a-z']*)")


@dataclass(frozen=True)
class Told:
    """One fact as read: its words ``[first, last)``, slot and foot, and its meaning by the place in ``MEANINGS``."""

    first: int
    last: int
    slot: str
    foot: int
    meant: int


@dataclass(frozen=True)
class Feet:
    """The words ``[first, last)`` of one statement, and of each foot 1 where it was meant, 0 where not, -1 unknown."""

    first: int
    last: int
    slot: str
    meant: tuple[int, ...]


@dataclass(frozen=True)
class Lesson:
    """One memo or case: its words, in small letters, its facts and the feet of its statements."""

    name: str
    text: str
    words: tuple[str, ...]
    told: tuple[Told, ...]
    feet: tuple[Feet, ...]


def lessons(cases: Path | None = None, lacking: int = ROUNDS) -> Iterator[Lesson]:
    """All that there is to learn from; of memos several readings, and so many by readers that lack rules."""
    reader = Reader(load_vocabulary())
    for gold in (gold for path in sorted(CORPUS.glob("open_*.jsonl")) for gold in load_gold(path)):
        yield lesson(gold, read(reader, gold, Transcript(text=gold["text"])), gold["text"])
    for past in past_readings():
        yield lesson(past.gold, past.visits, past.gold["text"])
    for heard in heard_readings():
        yield lesson(heard.take.gold, heard.visits, heard.take.transcript.text)
    for gold, text, visits in readings(lacking):
        yield lesson(gold, visits, text)
    for line in cases.read_text(encoding="utf-8").splitlines() if cases else ():
        case = json.loads(line)
        visits = [Visit.model_validate(visit) for visit in case["visits"]]
        told = [{"horse": visit.horse, "facts": [_as_gold(fact) for fact in visit.facts]} for visit in visits]
        yield lesson({"id": case["text"][:_NAMED_BY], "visits": told}, visits, case["text"])


def _as_gold(fact: Fact) -> GoldFact:
    return [fact.foot, fact.slot, fact.value, str(fact.status), fact.zone, fact.severity]


def lesson(gold: dict[str, Any], visits: Sequence[Visit], text: str) -> Lesson:
    """What one reading teaches, the memo's gold being known."""
    around = Surroundings(text)
    told: list[Told] = []
    statements: dict[tuple[int, int, str, str], list[tuple[Fact, bool, frozenset[str]]]] = {}
    everything = [fact for visit in gold["visits"] for fact in visit["facts"]]
    for visit in visits:
        own = own_gold(gold, visit)
        for fact in visit.facts:
            first, last = around.place(fact.span)
            how = meaning(fact, own, everything)
            told.append(Told(first, max(last, first + 1), fact.slot, OF_FEET.index(fact.foot), MEANINGS.index(how)))
            key = (first, max(last, first + 1), fact.slot, str(fact.value))
            statements.setdefault(key, []).append((fact, how != NOT_SO, _feet_of(fact, own)))
    feet = tuple(Feet(*key[:3], _meant_feet(same)) for key, same in statements.items() if key[2] not in HORSE_SLOTS)
    words = tuple(plain(token.text) for token in around.tokens)
    return Lesson(gold["id"], text, words, tuple(told), feet)


def _feet_of(fact: Fact, gold: Sequence[GoldFact]) -> frozenset[str]:
    """The feet that gold has with this value of the slot, however meant."""
    return frozenset(str(g[0]) for g in gold if g[1] == fact.slot and same_value(fact.slot, fact.value, g[2]))


def _meant_feet(same: Sequence[tuple[Fact, bool, frozenset[str]]]) -> tuple[int, ...]:
    good = {fact.foot for fact, right, _ in same if right}
    somewhere = frozenset[str]().union(*(feet for *_, feet in same))
    return tuple(1 if foot in good else -1 if str(foot) in somewhere else 0 for foot in OF_FEET)


def once(given: Iterable[Lesson], held: Sequence[str] = ()) -> list[Lesson]:
    """The lessons of one memo in the same words together, without what is held out and without those of no fact."""
    found: dict[tuple[str, tuple[str, ...]], Lesson] = {}
    for one in given:
        if held and one.name.startswith(tuple(held)):
            continue
        key = (one.name, one.words)
        before = found.get(key)
        told, feet = (before.told, before.feet) if before else ((), ())
        told, feet = tuple(dict.fromkeys((*told, *one.told))), tuple(dict.fromkeys((*feet, *one.feet)))
        found[key] = Lesson(one.name, one.text, one.words, told, feet)
    return [one for one in found.values() if one.told and one.words]


def words_of(given: Sequence[Lesson]) -> list[str]:
    """The words worth knowing, the most frequent first: of enough memos, and no names."""
    names = _names(given)
    memos = Counter(word for _, word in {(one.name, word) for one in given for word in one.words if word not in names})
    return [word for word, count in sorted(memos.items(), key=_frequent_first) if count >= _FEWEST_MEMOS]


def _frequent_first(counted: tuple[str, int]) -> tuple[int, str]:
    return -counted[1], counted[0]


def _names(given: Sequence[Lesson]) -> set[str]:
    known = shipped_cues().known
    large, small = Counter[str](), Counter[str]()
    for text in {one.text for one in given}:
        for word in _CAPITAL.findall(text):
            (large if word[0].isupper() else small)[word.lower()] += 1
    names = {word for word in large if large[word] > _NAME_MORE * small[word] and word not in known}
    return {word for word in names if word.split("'")[0] != "i"}
