"""What is looked for only where it may stand is found as if it were looked for everywhere, over all open memos."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from pipeline.reading import Reader, never_done, plans, sayings, seams, set_against
from pipeline.reading.new_statements import every_rule, opens_a_statement
from pipeline.reading.sayings import Sayings
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
