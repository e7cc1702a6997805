"""What is asked, and in which order."""

from __future__ import annotations

from datetime import date
from itertools import groupby
from pathlib import Path

import pytest

from pipeline.errors import NotFoundError
from pipeline.keeping import Store
from pipeline.record import Fact, Memo, MemoRecord
from pipeline.using.review import ItemKind, Review
from pipeline.using.review.harm import fact_score, weights
from pipeline.using.review.queue import items_of
from pipeline.using.review.surroundings import clip_of, words_of
from tests.endurance.answering import Reviewer, make_yard
from tests.using.review.conftest import Keep


def test_a_visit_without_a_horse_comes_first_and_every_horse_is_asked_about_at_one_go(demo: Review) -> None:
    items = demo.queue()
    assert (items[0].kind, items[0].visit.horse) == (ItemKind.HORSE, None)
    runs = [whose for whose, _ in groupby(item.visit.horse.name if item.visit.horse else "?" for item in items)]
    assert len(runs) == len(set(runs))


def in_full(review: Review) -> list[str]:
    """The order as it is promised, from every visit of the store in full."""
    visits = [review.store.visit(number) for memo in review.store.memos() for number in memo.visit_ids]
    asked = [items for items in (items_of(review.store, visit) for visit in visits) if items]
    worst = {id(items): -max(item.score for item in items) for items in asked}
    asked.sort(key=lambda items: (worst[id(items)], items[0].key))
    whose = [items[0].visit.horse.id if items[0].visit.horse else -items[0].visit.id for items in asked]
    return [item.key for one in dict.fromkeys(whose) for name, items in zip(whose, asked, strict=True) if name == one
            for item in items]  # fmt: skip


def test_the_order_of_the_whole_store_is_that_of_its_visits_in_full(demo: Review) -> None:
    assert demo.open_keys() == in_full(demo) == [item.key for item in demo.queue()]
    assert demo.open_keys(date(2026, 5, 12)) == [item.key for item in demo.queue(date(2026, 5, 12))]
    assert len(demo.open_keys()) > 20


def test_the_order_stays_the_same_whatever_is_answered(tmp_path: Path) -> None:
    make_yard(tmp_path, 15)
    with Store.open(tmp_path / "book") as store:
        for evening in range(3):
            reviewer = Reviewer(store, f"evening {evening}")
            for number in range(10):
                reviewer.answer(number)
                assert reviewer.review.open_keys() == in_full(reviewer.review)
        memo = store.memos()[5]
        record = MemoRecord(memo=Memo(), transcript=memo.record.transcript, visits=memo.record.visits[:1])
        store.read_again(memo.id, record, seen=1, vocabulary="other")
        assert reviewer.review.open_keys() == in_full(reviewer.review)


def test_within_a_horse_the_most_harmful_comes_first(demo: Review) -> None:
    for _, items in groupby(demo.queue(), key=lambda item: item.visit.id):
        scores = [item.score for item in items if item.kind not in (ItemKind.HORSE, ItemKind.SPOT_CHECK)]
        assert scores == sorted(scores, reverse=True)


def test_harm_counts_as_much_as_doubt() -> None:
    puncture = Fact(foot="LF", slot="finding", value="puncture", confidence=0.7)
    size = Fact(foot="LF", slot="shoe_size", value="2", confidence=0.5)
    assert fact_score(puncture) == pytest.approx(3.0)
    assert fact_score(size) == pytest.approx(1.5)
    assert fact_score(size.model_copy(update={"rules": ["foot: not said"]})) == pytest.approx(4.5)


def test_what_can_hurt_stands_above_sizes() -> None:
    table = weights()
    grave = ("horse", "foot", "laminitis", "puncture", "quicked", "rotation", "obel", "abscess", "lameness")
    assert min(table[subject][0] for subject in grave) > max(table[s][0] for s in ("shoe_size", "work", "*"))


def test_one_field_on_several_feet_is_one_question(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. New shoes in front, size three.", unsure=("three",))
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    assert item.feet == ("LF", "RF")
    assert item.as_read() == "left fore, right fore: shoe size 3"
    assert item.reason() == "The word “three” was hard to hear; please listen."


def test_unclear_words_are_named_but_not_all_of_a_long_stretch(yard: Review, hear: Keep) -> None:
    words = "thruss in the sulcus and some more that goes on and on as he talks in the wind there"
    hear(yard, f"Hester. Left front {words}.", unclear=words)
    asked = [item.as_read() for item in yard.queue() if item.kind is ItemKind.WORDS]
    assert asked == ["words to look at: “thruss in the sulcus and some more that goes on and on as …”"]


def test_a_contradiction_is_one_question_with_both_readings(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. On the left front, toe angle 48 degrees. Left front toe angle 52 degrees.")
    items = [item for item in yard.queue() if item.kind is not ItemKind.SPOT_CHECK]
    assert [item.kind for item in items] == [ItemKind.CHOICE]
    assert [choice.says for choice in yard.show(items[0]).choices] == [
        "left fore: toe angle 48°", "left fore: toe angle 52°",
    ]  # fmt: skip


def test_the_words_around_it_and_their_seconds(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. New shoes in front, size three, and he stood quiet.", unsure=("three",))
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    words, clip = words_of(item), clip_of(item)
    assert (words.before, words.marked, words.behind) == (
        "Hester. New shoes in front, ", "size three", ", and he stood quiet.",
    )  # fmt: skip
    assert clip is not None
    assert [clip.start_s, clip.end_s] == pytest.approx([2.1, 3.8])  # 2.5 to 3.4, and 0.4 around it


def test_what_the_last_visit_said(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. New shoes in front, size two.", day="2026-03-31")
    hear(yard, "Hester. New shoes in front, size three.", unsure=("three",))
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    shown = yard.show(item)
    assert shown.last is not None
    assert (shown.last.day.isoformat(), shown.last.said) == ("2026-03-31", "left fore, right fore: shoe size 2")
    assert shown.choices[0].says == "left fore, right fore: shoe size 2"


def test_a_foot_that_was_not_said_is_asked_for(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. Trimmed her and toe length is 92 millimetres.")
    item = next(item for item in yard.queue() if item.fact and item.fact.slot == "toe_length")
    assert [choice.feet for choice in yard.show(item).choices][:3] == [("LF", "RF"), ("LH", "RH"), ("LF",)]


def test_a_question_is_found_by_its_key_until_it_is_answered(demo: Review) -> None:
    items = demo.queue()
    assert [demo.item(item.key) for item in items] == items
    item = next(item for item in items if item.kind is ItemKind.FIELD)
    demo.accept(item)
    with pytest.raises(NotFoundError, match="has been answered"):
        demo.item(item.key)


def test_a_key_that_never_was(demo: Review) -> None:
    for key in ("", "v1", "v1-f99999", "x", "v999-h", "v²-h", "v99999999999999999999999-h", "v١-h"):
        with pytest.raises(NotFoundError):
            demo.item(key)
