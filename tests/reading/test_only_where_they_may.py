"""What is looked for only where it may stand is found as if it were looked for everywhere, over all open memos."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from pipeline.reading import (
    Reader,
    as_the_other,
    at_that_time,
    dates,
    doubts,
    foot_names,
    measures_then,
    never_done,
    nothing_of,
    or_was_it,
    other_animals,
    plans,
    pulled,
    refused,
    restatements,
    said_of_foot,
    sayings,
    seams,
    set_against,
    slips,
)
from pipeline.reading.mentions import Mention
from pipeline.reading.new_statements import every_rule, opens_a_statement
from pipeline.reading.sayings import Sayings
from pipeline.reading.segments import MARKS
from pipeline.reading.stretches import Seam
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import tokenize
from pipeline.record import RosterHorse, Transcript
from pipeline.vocabulary import load_vocabulary
from tests.facts.scoring import load_gold

OPEN = sorted((Path(__file__).resolve().parents[1] / "corpus").glob("open_*.jsonl"))
TURNS = [
    value for file in (never_done, plans, set_against) for value in vars(file).values() if isinstance(value, Sayings)
]

# Of the memo as a whole: whether it tells of them, or where.
ASKED = [
    value
    for file in (
        at_that_time, dates, doubts, foot_names, measures_then, never_done, nothing_of, or_was_it, other_animals,
        pulled, refused, restatements, said_of_foot, as_the_other, set_against, slips,
    )
    for value in vars(file).values()
    if isinstance(value, Sayings)
]  # fmt: skip


def test_a_comma_is_asked_only_by_the_rules_that_may_say_yes(monkeypatch: pytest.MonkeyPatch) -> None:
    """The rules that the words behind a comma leave out would all have said no."""
    asked: list[bool] = []

    def both_ways(seam: Seam) -> bool:
        opens = opens_a_statement(seam)
        assert opens == any(rule(seam) for rule in every_rule())
        asked.append(opens)
        return opens

    monkeypatch.setattr(seams, "opens_a_statement", both_ways)
    reader = Reader(load_vocabulary())
    for memo in (memo for path in OPEN for memo in load_gold(path)):
        roster = [RosterHorse(name=name) for name in memo["roster"]]
        reader.parse(Transcript(text=memo["text"]), roster, date.fromisoformat(memo["date"]))
    assert sum(asked) > 500
    assert len(asked) - sum(asked) > 500


def test_turns_of_words_are_found_by_their_first_two_words_as_by_all() -> None:
    """The first form that stands at a token, in their order, is the one that a look through all of them finds."""
    found = 0
    for memo in (memo for path in OPEN for memo in load_gold(path)):
        words = tokenize(memo["text"]).words
        for turns in TURNS:
            for index in range(len(words)):
                form = next((f for f in turns.forms if words[index : index + len(f)] == f), [])
                assert turns.at(words, index) == form
                found += bool(form)
    assert found > 100


@pytest.mark.parametrize(
    ("words", "told"),
    [("i nearly pulled it", True), ("it was near to it", False), ("pulled it nearly", True), ("", False)],
)
def test_a_memo_knows_whether_it_tells_of_a_turn(words: str, told: bool) -> None:
    tokens = tokenize(words)
    talk = Talk(tokens, list(tokens.words), [])
    turns = sayings.Sayings("nearly", "came near")
    assert talk.tells(turns) is told
    assert talk.tells(sayings.Sayings("of no such words"), turns) is told
    late = sayings.Sayings("pulled it", "near to it")  # made after the memo was looked through
    assert talk.tells(late) is ("pulled it" in words or "near to it" in words)


def test_words_and_turns_are_looked_for_only_where_they_stand() -> None:
    """A memo finds them by their places, and a sentence knows what is said in it, as a look through all would."""
    found = 0
    for talk in _talks():
        for turns in ASKED:
            told = list(turns.within(talk.words, 0, len(talk.words)))
            assert list(talk.turns(turns)) == told
            assert talk.tells(turns) is bool(told)
            places = [index for index, word in enumerate(talk.words) if word in turns.first_words]
            assert talk.where(turns.first_words) == places
            found += len(told)
    assert found > 100


def test_a_sentence_knows_its_words_and_classes_and_holds_its_drafts() -> None:
    """What a rule asks of the sentence is what it would find segment by segment; no draft reaches out of it."""
    drafts = 0
    for talk in _talks():
        for sentence in talk.sentences():
            start, end = sentence[0].start, sentence[-1].end
            assert sentence.words == set(talk.words[start:end])
            for turns in ASKED:
                told = any(word in turns.first_words for word in talk.words[start:end])
                assert (sentence.says(turns.first_words), sentence.lacks(turns.first_words)) == (told, not told)
            assert sentence.classes >= {name for s in sentence for m in s.mentions for name in m.readings}
            for draft in (d for s in sentence for d in s.drafts):
                assert start <= draft.start < end
                assert draft.end <= end
                drafts += 1
    assert drafts > 5000


def test_mentions_are_in_order_wherever_a_rule_has_put_them_so(monkeypatch: pytest.MonkeyPatch) -> None:
    """A memo to which no mention was added, and in which none has moved, needs no sorting."""
    put, sort = [0], Talk.in_order

    def checked(talk: Talk, *, moved: bool = False) -> None:
        sort(talk, moved=moved)
        places = [(m.start, m.end) for m in talk.mentions]
        assert places == sorted(places)
        put[0] += 1

    monkeypatch.setattr(Talk, "in_order", checked)
    assert sum(1 for _ in _talks()) > 500
    assert put[0] > 5000


def test_mentions_are_found_while_they_move_as_by_a_look_through_all(monkeypatch: pytest.MonkeyPatch) -> None:
    """By class, by their first and by their last token: also while rules add some, move them and join them."""
    having, starting, ending = Talk.having, Talk.mention_starting, Talk.mention_ending
    asked = [0]

    def checked(talk: Talk, name: str, canonical: str | None = None) -> list[Mention]:
        found = having(talk, name, canonical)
        asked[0] += bool(found)
        standing = [m for m in talk.mentions if m.get(name) is not None]
        assert found == [m for m in standing if canonical in (None, m.get(name))]
        return found

    def first(talk: Talk, index: int) -> Mention | None:
        found = starting(talk, index)
        assert found is next((m for m in talk.mentions if m.start == index and not m.dropped), None)
        return found

    def last(talk: Talk, index: int) -> Mention | None:
        found = ending(talk, index)
        assert found is next((m for m in talk.mentions if m.end == index and not m.dropped), None)
        return found

    monkeypatch.setattr(Talk, "having", checked)
    monkeypatch.setattr(Talk, "mention_starting", first)
    monkeypatch.setattr(Talk, "mention_ending", last)
    assert sum(1 for _ in _talks()) > 500
    assert asked[0] > 5000


def test_nothing_of_a_memo_is_left_for_the_collector() -> None:
    """Drafts and segments hold each other; both are gone when the memo is read."""
    reader = Reader(load_vocabulary())
    memo = load_gold(OPEN[0])[0]
    roster = [RosterHorse(name=name) for name in memo["roster"]]
    reader.read(Transcript(text=memo["text"]), roster, date.fromisoformat(memo["date"]))
    gc.collect()
    visits = reader.read(Transcript(text=memo["text"]), roster, date.fromisoformat(memo["date"]))
    assert any(visit.facts for visit in visits)
    assert gc.collect() == 0


def test_no_turn_that_a_memo_is_asked_for_has_a_mark() -> None:
    """Marks are read otherwise while a memo is read, and their places are found once."""
    for turns in ASKED:
        assert not {word for form in turns.forms for word in form} & MARKS


def _talks() -> Iterator[Talk]:
    """Every open memo as it is parsed."""
    reader = Reader(load_vocabulary())
    for memo in (memo for path in OPEN for memo in load_gold(path)):
        roster = [RosterHorse(name=name) for name in memo["roster"]]
        yield reader.parse(Transcript(text=memo["text"]), roster, date.fromisoformat(memo["date"]))[0]
