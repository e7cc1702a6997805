"""What stood open at the last visit and was not spoken of: one key says that it is gone, another that it is there."""

from __future__ import annotations

import hashlib
from datetime import date
from pathlib import Path

import pytest

from pipeline.judging import judge
from pipeline.record import Memo, MemoRecord, Status, Transcript
from pipeline.using.review import Review
from pipeline.using.review.items import Item, ItemKind


def visited(review: Review, folder: Path, day: str, text: str) -> int:
    """Keep a visit that is judged with the one before it in mind; its number."""
    said, when = Transcript(text=text), date.fromisoformat(day)
    visits = judge(review.reader.read(said, review.store.roster(), when), said, review.store.last_visit)
    path = folder / f"{day}.wav"
    path.write_bytes(day.encode() * 50)
    memo = Memo(path=str(path), sha256=hashlib.sha256(path.read_bytes()).hexdigest())
    (number,) = review.store.keep(MemoRecord(memo=memo, transcript=text, visits=visits), said, path)
    return number


def question(review: Review, visit: int) -> Item:
    """The question after what was not spoken of."""
    (found,) = [item for item in review.queue() if item.visit.id == visit and "not spoken of" in item.reason()]
    return found


@pytest.fixture
def later(yard: Review, tmp_path: Path) -> int:
    """A visit at which nothing is said of the thrush and the corn of the last one."""
    visited(yard, tmp_path, "2026-04-07", "Hester. Thrush in both hinds. Left fore, corn at the inside heel.")
    return visited(yard, tmp_path, "2026-05-12", "Hester. Trimmed all four. Six weeks.")


def test_both_answers_are_offered(yard: Review, later: int) -> None:
    shown = yard.show(question(yard, later))
    assert [choice.says for choice in shown.choices] == [
        "left hind, right hind: thrush: gone now, left fore: corn (medial heel): gone now",
        "still there: left hind, right hind: thrush, left fore: corn (medial heel)",
    ]


@pytest.mark.parametrize(("key", "status"), [(0, Status.RESOLVED), (1, Status.PRESENT)])
def test_one_key_writes_it_down_and_answers_the_question(yard: Review, later: int, key: int, status: Status) -> None:
    item = question(yard, later)
    done = yard.choose(item, yard.show(item).choices[key])
    assert done.answered
    found = [fact for fact in yard.store.visit(later).visit.facts if fact.slot == "finding"]
    assert [(fact.foot, fact.value, fact.zone, fact.status) for fact in found] == [
        ("LH", "thrush", None, status),
        ("RH", "thrush", None, status),
        ("LF", "corn", "medial_heel", status),
    ]
    assert [item for item in yard.queue() if "not spoken of" in item.reason()] == []
    yard.undo()
    assert question(yard, later).kind is ItemKind.WORDS
    assert [fact for fact in yard.store.visit(later).visit.facts if fact.slot == "finding"] == []


def test_other_questions_have_no_such_answers(yard: Review, later: int, tmp_path: Path) -> None:
    last = visited(yard, tmp_path, "2026-06-23", "Hester. The hoof testers on the left fore. Trimmed all four.")
    others = [item for item in yard.queue() if item.visit.id == last and item.kind is ItemKind.WORDS]
    assert others
    assert all(choice.adds == () for item in others for choice in yard.show(item).choices)


def test_what_was_put_right_meanwhile_is_asked_without_them(yard: Review, later: int) -> None:
    first = yard.store.visit(1)
    yard.store.drop(first.facts[0].id, seen=first.revision, why="it was mud")
    assert yard.show(question(yard, later)).choices == []
