"""Judged memos as examples for the model: the evidence of every fact, and whether the fact is right."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import date
from functools import lru_cache
from typing import Any

from pipeline.judging import judge
from pipeline.judging.agreement import disagreements
from pipeline.judging.confidence import doubts
from pipeline.judging.encoding import encode
from pipeline.judging.features import EvidenceOfMemo, Found
from pipeline.judging.opinion import Opinion
from pipeline.judging.plausibility import implausible
from pipeline.judging.putting_right import asked_since, put_right, put_right_by
from pipeline.reading import Reader
from pipeline.record import Flag, FlagKind, RosterHorse, Transcript, Visit
from pipeline.vocabulary import Vocabulary, load_vocabulary
from tests.bench.judging.fitting import Example
from tests.bench.judging.gathering import HeardReading, PastReading, Seconds, facts_of, of_what_stands, views_of
from tests.bench.judging.opining import Said, said_in
from tests.bench.judging.outcomes import Places, Tally, add_memo, spoken
from tests.bench.judging.overlooking import ReadSentence, sentences_of
from tests.bench.judging.where import places_in, places_of


def read(reader: Reader, gold: dict[str, Any], transcript: Transcript) -> list[Visit]:
    """The visits of a memo with the roster and day that its gold names."""
    return reader.read(transcript, roster_of(gold), date.fromisoformat(gold["date"]))


def read_twice(reader: Reader, gold: dict[str, Any], transcript: Transcript, flags: Sequence[Flag] = ()) -> list[Visit]:
    """The same as it goes to judging, once the second reader has put right what it is sure of."""
    return put_right(read(reader, gold, transcript), transcript, flags)


def roster_of(gold: dict[str, Any]) -> list[RosterHorse]:
    """The horses that the farrier of a memo looks after."""
    return [RosterHorse(name=name) for name in gold["roster"]]


def typed_examples(readings: Iterable[PastReading], opinions: Mapping[str, Opinion]) -> list[Example]:
    """One example a fact of the memos that earlier readers read."""
    found: list[Example] = []
    for reading in readings:
        transcript = Transcript(text=reading.gold["text"])
        examples = examples_of(reading.gold, reading.visits, transcript, opinions, reading.second)
        found += [replace(example, fresh=reading.fresh) for example in examples]
    return found


def heard_examples(readings: Iterable[HeardReading], opinions: Mapping[str, Opinion]) -> list[Example]:
    """One example a fact of the takes that were heard and read."""
    found: list[Example] = []
    for reading in readings:
        take = reading.take
        examples = examples_of(take.gold, reading.visits, take.transcript, opinions, reading.second)
        found += [replace(example, fresh=reading.fresh) for example in examples]
    return found


def said_by(typed: Iterable[PastReading], heard: Iterable[HeardReading]) -> list[Said]:
    """What was said in all of these memos, for the second opinion."""
    found = [said for one in typed for said in said_in(one.gold, one.visits, one.gold["text"])]
    return found + [said for one in heard for said in said_in(one.take.gold, one.visits, one.take.transcript.text)]


def sentences_by(typed: Iterable[PastReading], heard: Iterable[HeardReading]) -> list[ReadSentence]:
    """Every sentence of these memos; where the words of a fact stand is told by today's reader, else by its forms."""
    reader = Reader(_vocabulary())
    found: list[ReadSentence] = []
    for one in typed:
        where = _first(places_of(one.gold, reader), one.gold["text"])
        found += sentences_of("typed", one.gold, one.visits, one.gold["text"], where, fresh=one.fresh)
    for other in heard:
        take = other.take
        where = places_in(take, reader)
        name = f"{take.voice} {take.condition}"
        found += sentences_of("heard", take.gold, other.visits, take.transcript.text, where, name, other.fresh)
    return found


def _first(places: Places, text: str) -> Places:
    return lambda fact: places(fact) or spoken(fact, _vocabulary(), text)


@lru_cache(maxsize=1)
def _vocabulary() -> Vocabulary:
    return load_vocabulary()


def examples_of(
    gold: dict[str, Any],
    read: Sequence[Visit],
    transcript: Transcript,
    opinions: Mapping[str, Opinion],
    seconds: Seconds,
) -> list[Example]:
    """The facts of one memo, put right and judged by an opinion and a second reader that do not know it.

    A fact whose horse is asked about anyway counts as asked.
    """
    roster = roster_of(gold)
    as_read = facts_of(read)
    visits = put_right_by(read, views_of(as_read, seconds))
    stands = facts_of(visits)
    views = views_of(stands, of_what_stands(as_read, stands, seconds))
    judged = judge(visits, transcript, roster=roster)
    tally = Tally()
    add_memo(tally, gold, judged, _vocabulary(), transcript.text)
    outcomes = {id(outcome.fact): outcome for outcome in tally.outcomes}
    evidence = EvidenceOfMemo(transcript, visits, roster, opinions.get(gold["id"]), views)
    found = []
    horses = {(told["horse"] or "").lower() for told in gold["visits"]}
    doubtful = [any(flag.kind is FlagKind.HORSE for flag in visit.flags) for visit in judged]
    for number, (before, after) in enumerate(zip(visits, judged, strict=True)):
        others = any(doubtful[:number] + doubtful[number + 1 :])
        named = (before.horse or "").lower() in horses
        against = {id(fact) for group, _ in disagreements(before.facts) for fact in group}
        for fact, seen in zip(before.facts, after.facts, strict=True):
            outcome = outcomes[id(seen)]
            known = Found(
                implausible(fact) is not None,
                id(fact) in against,
                other_horse_asked=others,
                others_contradicted=len(against - {id(fact)}),
            )
            own = asked_since(fact) or doubts(fact, transcript)
            asked = bool(own) or id(fact) in against or outcome.horse_asked
            numbers = encode(evidence.of(fact, before, known))
            found.append(Example(numbers, outcome.right, gold["id"], asked, named, grave=outcome.grave))
    return found
