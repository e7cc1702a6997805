"""Where another horse may have come in: one question a place, and what is told there goes to the horse he names."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.errors import CorrectionError, NotFoundError
from pipeline.judging import judge
from pipeline.keeping import ChangeKind
from pipeline.reading import Reader
from pipeline.record import MemoRecord, Transcript
from pipeline.using.review import Item, ItemKind, Review
from tests.using.review.conftest import Keep

LOST = (
    "Hester, trimmed all four, pretty quiet. Six weeks. Weka, same barn, trimmed all four. Thrush left hind, mild."
    " Somebody borrowed the ladder. Corn in the right fore."
)
TWICE = (
    "Hester, trimmed all four, pretty quiet. Six weeks. Weka, same barn, trimmed all four. Thrush left hind, mild."
    " Figaro, trimmed all four. Hester, she stood well, bruise right fore. Next horse, his fronts were reset, six"
    " nails, he's quiet, corn in the left fore."
)
PLACE = "Weka, same barn, trimmed all"
THERE = ["left hind: thrush (mild)", "right fore: corn"]


def places(review: Review) -> list[Item]:
    """The open questions where another horse may have come in."""
    return [item for item in review.queue() if item.kind is ItemKind.SECOND_HORSE]


def told(review: Review, horse: str) -> list[str | float]:
    """What stands at a horse's only visit."""
    (visit,) = review.store.visits_of(horse)
    return [kept.fact.value for kept in visit.facts]


@pytest.fixture
def lost(yard: Review, hear: Keep) -> Review:
    """A yard with one memo of Hester, in which a second horse's name was not read."""
    hear(yard, LOST)
    return yard


def test_it_asks_about_the_place_and_tells_what_is_told_there(lost: Review) -> None:
    (item,) = places(lost)
    shown = lost.show(item)
    assert item.as_read() == f"horse from “{PLACE}” on: Hester"
    assert shown.words.marked == "Weka, same barn, trimmed all four."
    assert shown.there == THERE
    assert [start.says for start in shown.starts] == [
        "Weka, same barn, trimmed all four.", "Thrush left hind, mild.", "Somebody borrowed the ladder.",
        "Corn in the right fore.",
    ]  # fmt: skip
    assert {near.says for near in shown.horses} == {"Figaro", "Rowan"}


def test_it_came_in_with_no_sentence_behind_which_nothing_stands(yard: Review, hear: Keep) -> None:
    hear(yard, LOST.replace(" Corn in the right fore.", ""))
    assert [start.says for start in yard.show(places(yard)[0]).starts][-1] == "Thrush left hind, mild."


def test_that_part_goes_to_the_horse_he_names_in_one_change(lost: Review) -> None:
    before = told(lost, "Hester")
    done = lost.split(places(lost)[0], lost.store.horse("Figaro"))
    assert done.says == f"From “{PLACE}” on it is Figaro: left hind: thrush (mild), right fore: corn."
    assert (told(lost, "Figaro"), told(lost, "Hester")) == (["thrush", "corn"], before[:-2])
    assert [change.kind for change in lost.store.last_action(who="Reviewer")] == [ChangeKind.MOVE]
    assert places(lost) == []
    assert not [f for item in lost.queue() if item.visit.id == 1 for f in item.facts if "another" in item.reason()]
    assert lost.undo().says == "Taken back at Hester; it is asked again."
    assert (told(lost, "Hester"), lost.store.visits_of("Figaro")) == (before, [])
    assert len(places(lost)) == 1


def test_he_may_say_with_which_sentence_it_came_in(lost: Review) -> None:
    item = places(lost)[0]
    last = lost.show(item).starts[-1]
    done = lost.split(item, lost.store.horse("Figaro"), last.at)
    assert done.says == "From “Corn in the right fore.” on it is Figaro: right fore: corn."
    assert told(lost, "Figaro") == ["corn"]
    thrush = next(kept.fact for kept in lost.store.visit(1).facts if kept.fact.value == "thrush")
    assert (thrush.flagged, thrush.reasons) == (False, [])


def test_a_new_horse_from_there_on(lost: Review) -> None:
    done = lost.new_horse(places(lost)[0], "Juniper", "Sedge Yard")
    assert done.says.startswith(f"From “{PLACE}” on it is Juniper, a new horse: left hind")
    assert (told(lost, "Juniper"), lost.store.horse("Juniper").horse.place) == (["thrush", "corn"], "Sedge Yard")


def test_the_same_horse_all_through_is_asked_no_more(lost: Review) -> None:
    before = told(lost, "Hester")
    assert lost.accept(places(lost)[0]).says == "Right: it is Hester all through."
    assert [item for item in lost.queue() if "another horse" in item.reason().lower()] == []
    assert told(lost, "Hester") == before
    lost.undo()
    assert len(places(lost)) == 1


def test_the_whole_visit_may_be_another_horse_s(lost: Review) -> None:
    before = told(lost, "Hester")
    lost.assign(places(lost)[0], lost.store.horse("Rowan"))
    assert (told(lost, "Rowan"), lost.store.visits_of("Hester"), places(lost)) == (before, [], [])
    lost.undo()
    assert (told(lost, "Hester"), len(places(lost))) == (before, 1)


def test_what_cannot_be_is_one_sentence(lost: Review) -> None:
    item = places(lost)[0]
    with pytest.raises(CorrectionError, match="It stands at Hester already; say that it is the same horse"):
        lost.split(item, lost.store.horse("Hester"))
    with pytest.raises(NotFoundError, match="No horse called Nobody"):
        lost.split(item, lost.store.horse("Nobody"))
    with pytest.raises(CorrectionError, match="Rowan is on the roster already"):
        lost.new_horse(item, "Rowan")
    other = next(one for one in lost.queue() if one.kind is not ItemKind.SECOND_HORSE)
    with pytest.raises(CorrectionError, match="no answer to what is asked"):
        lost.split(other, lost.store.horse("Figaro"))
    assert lost.store.changes(1) == []


def test_a_word_that_may_be_the_name_is_offered_for_learning(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester, reset all round. Seven weeks. Weka, same barn, reset all round. Thrush left hind, mild.")
    (item,) = places(yard)
    assert "“Weka” may be a name" in item.reason()
    done = yard.split(item, yard.store.horse("Figaro"))
    assert done.offer == "Is Figaro called “Weka”, or is it heard so?"
    assert done.lesson is not None
    yard.learn(done.lesson)
    assert yard.store.horse("Weka").name == "Figaro"
    yard.undo()
    assert yard.store.learned_names() == []


def test_it_is_no_name_of_the_horse_of_the_whole_visit(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester, reset all round. Seven weeks. Weka, same barn, reset all round. Thrush left hind, mild.")
    assert yard.assign(places(yard)[0], yard.store.horse("Figaro")).lesson is None


def test_an_everyday_word_at_the_place_is_no_name_to_learn(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester, reset all round, quiet. Seven weeks. Grey mare next, reset all round, she's fidgety.")
    assert yard.split(places(yard)[0], yard.store.horse("Figaro")).lesson is None


def test_two_places_of_one_visit_are_two_questions(yard: Review, hear: Keep) -> None:
    hear(yard, TWICE)
    first, second = places(yard)
    assert first.visit.id == second.visit.id
    yard.split(first, yard.store.horse("Rowan"))
    assert told(yard, "Rowan") == ["thrush"]
    (left,) = places(yard)
    assert left.key == second.key
    yard.split(left, yard.store.horse("Figaro"))
    assert told(yard, "Figaro") == ["trim"] * 4 + ["reset", "reset", 6.0, 6.0, "corn"]
    assert told(yard, "Hester") == ["trim", "trim", "quiet", 6.0, "bruise"]
    hester = yard.store.visits_of("Hester")[0]
    assert not [kept for kept in hester.facts if any("Another horse" in why for why in kept.fact.reasons)]


def test_the_name_that_was_learned_is_read_by_then_and_the_visit_found(
    yard: Review, hear: Keep, reader: Reader
) -> None:
    text = "Hester, reset all round. Seven weeks. Weka, same barn, reset all round. Thrush left hind, mild."
    hear(yard, text)
    done = yard.split(places(yard)[0], yard.store.horse("Figaro"))
    assert done.lesson is not None
    yard.learn(done.lesson)
    transcript: Transcript = yard.store.memo(1).transcript
    visits = judge(reader.read(transcript, yard.store.roster(), date(2026, 5, 12)), transcript)
    record = MemoRecord(memo=yard.store.memo(1).record.memo, transcript=text, visits=visits)
    assert yard.store.read_again(1, record, seen=1, vocabulary="later") == 2
    assert [visit.id for visit in yard.store.visits_of("Figaro")] == [2]
    assert told(yard, "Figaro") == ["reset", "reset", "reset", "reset", "thrush"]
    assert told(yard, "Hester") == ["reset", "reset", "reset", "reset", 7.0]


def test_from_the_first_word_on_it_is_asked_whose_all_of_it_is(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester and Hester, trimmed all four. Thrush in the left hind, mild. Six weeks.")
    assert places(yard) == []
    item = next(item for item in yard.queue() if item.kind is ItemKind.HORSE)
    yard.accept(item)
    assert [one for one in yard.queue() if "another horse" in one.reason().lower()] == []
