"""Memos with known facts are read back, and the generator itself is held to what it promises."""

from __future__ import annotations

import secrets
from random import Random

import pytest

from pipeline.reading import Reader
from pipeline.record import Fact, value_problem
from pipeline.vocabulary import Vocabulary, load_vocabulary
from tests.generator.checking import Tally, check, check_memo
from tests.generator.facts import GeneratedMemo, Gold, Placed, Statement
from tests.generator.fragments import FRAMES
from tests.generator.memo import Composer
from tests.generator.words import UNEXERCISED, Sweep, fit_forms

SEED = 20260302
COUNT = 300
# Measured over 20,000 memos of four seeds: F1 1.0000, exact memos 0.9996. The bounds leave room for an unlucky seed;
# a change that falls below them has broken the reading of plain speech.
LEAST_F1 = 0.998
LEAST_EXACT = 0.985


@pytest.fixture(scope="module")
def vocabulary() -> Vocabulary:
    return load_vocabulary()


def _explained(tally: Tally, seed: int) -> str:
    told = "\n".join(f"{miss.told()}\n    in: {miss.memo.text}" for miss in tally.misses[:20])
    horses = "\n".join(memo.text for memo, _ in tally.wrong_horses[:5])
    return f"seed {seed}: F1 {tally.f1:.4f}, exact {tally.exact_share:.4f}\n{told}\nwrong horses:\n{horses}"


def test_memos_of_a_fixed_seed_are_read_back(vocabulary: Vocabulary) -> None:
    tally = check(SEED, COUNT, vocabulary)
    assert tally.f1 >= LEAST_F1, _explained(tally, SEED)
    assert tally.exact_share >= LEAST_EXACT, _explained(tally, SEED)


def test_memos_of_a_new_seed_are_read_back(vocabulary: Vocabulary) -> None:
    seed = secrets.randbelow(1_000_000)
    print(f"seed {seed}")
    tally = check(seed, COUNT, vocabulary)
    assert tally.f1 >= LEAST_F1, _explained(tally, seed)
    assert tally.exact_share >= LEAST_EXACT, _explained(tally, seed)


def test_the_same_seed_gives_the_same_memos(vocabulary: Vocabulary) -> None:
    first, again, other = (Composer(seed, vocabulary) for seed in (7, 7, 8))
    memos = [first.memo() for _ in range(20)]
    assert memos == [again.memo() for _ in range(20)]
    assert memos != [other.memo() for _ in range(20)]


def test_every_fact_is_one_that_the_record_allows(vocabulary: Vocabulary) -> None:
    composer = Composer(11, vocabulary)
    for _ in range(200):
        for placed in composer.memo().placed:
            for gold in placed.statement.facts:
                assert value_problem(gold.slot, gold.value) is None, placed.statement
                Fact.model_validate({"foot": gold.foot, "slot": gold.slot, "value": gold.value, "zone": gold.zone})


def test_statements_stand_where_the_memo_says(vocabulary: Vocabulary) -> None:
    composer = Composer(12, vocabulary)
    for _ in range(50):
        memo = composer.memo()
        for placed in memo.placed:
            assert memo.text[placed.start : placed.end] == placed.statement.text


def test_no_memo_says_a_thing_twice_of_a_horse(vocabulary: Vocabulary) -> None:
    composer = Composer(13, vocabulary)
    for _ in range(200):
        memo = composer.memo()
        for horse in memo.horses:
            said = [(gold.foot, gold.slot, gold.value) for gold in memo.facts_of(horse)]
            assert len(said) == len(set(said)), memo.text


def test_a_round_of_the_sweep_says_every_form_once(vocabulary: Vocabulary) -> None:
    forms = fit_forms(vocabulary)
    sweep = Sweep(vocabulary, Random(1))
    assert sorted(sweep.draw() for _ in range(sweep.size)) == sorted(forms)


def test_every_class_of_words_has_a_frame_or_is_named_as_left_out(vocabulary: Vocabulary) -> None:
    assert set(FRAMES) | UNEXERCISED == set(vocabulary.classes)
    assert not set(FRAMES) & UNEXERCISED


def _memo(text: str, *golds: Gold) -> GeneratedMemo:
    statement = Statement(text, golds, "by hand")
    opening = "Otter. "
    placed = Placed(statement, "Otter", len(opening), len(opening) + len(text))
    return GeneratedMemo(opening + text, ("Otter", "Fennel"), ("Otter",), (placed,))


@pytest.mark.parametrize(
    ("gold", "right"),
    [
        (Gold("LF", "finding", "thrush", "frog", severity="mild"), True),
        (Gold("LF", "finding", "thrush", "frog", severity="open"), True),
        (Gold("RF", "finding", "thrush", "frog", severity="mild"), False),
        (Gold("LF", "finding", "canker", "frog", severity="mild"), False),
        (Gold("LF", "finding", "thrush", "sulcus", severity="mild"), False),
        (Gold("LF", "finding", "thrush", "frog", severity="severe"), False),
        (Gold("LF", "finding", "thrush", "frog", status="absent", severity="mild"), False),
    ],
)
def test_the_check_tells_right_from_wrong(vocabulary: Vocabulary, gold: Gold, right: bool) -> None:
    tally = Tally()
    check_memo(_memo("Left front has mild thrush in the frog.", gold), Reader(vocabulary), tally)
    assert (tally.exact, len(tally.misses)) == ((1, 0) if right else (0, 1))


def test_the_check_sees_what_was_read_too_much(vocabulary: Vocabulary) -> None:
    tally = Tally()
    check_memo(_memo("Left front has thrush and a corn.", Gold("LF", "finding", "thrush")), Reader(vocabulary), tally)
    assert [fact.value for fact in tally.misses[0].extra] == ["corn"]
    assert (tally.said, tally.read, tally.right, tally.exact) == (1, 2, 1, 0)


def test_the_check_sees_a_wrong_horse(vocabulary: Vocabulary) -> None:
    memo = _memo("Left front has thrush.", Gold("LF", "finding", "thrush"))
    swapped = GeneratedMemo(memo.text.replace("Otter", "Fennel"), memo.roster, memo.horses, memo.placed)
    tally = Tally()
    check_memo(swapped, Reader(vocabulary), tally)
    assert (len(tally.wrong_horses), tally.right, tally.exact) == (1, 0, 0)
