"""What a correction teaches counts from the next memo on, and is out again once forgotten."""

from __future__ import annotations

import pytest

from pipeline.errors import NotFoundError, StoreError, VocabularyError
from pipeline.hearing.bias import bias_forms
from pipeline.keeping.correcting import FactFields
from pipeline.keeping.lessons import LearnedName, WordLesson
from pipeline.keeping.own_words import OwnWord, own_words, vocabulary_with_own
from pipeline.reading import Reader
from pipeline.record import HorseMatch
from pipeline.using.review import ItemKind, Review, learning
from pipeline.using.review.session import Done
from pipeline.vocabulary import load_vocabulary
from tests.using.review.conftest import Keep, no_disk

MISHEARD = "Hester. On the left front, thruss in the sulcus."
UNCLEAR = "thruss in the sulcus"
MEANT = "left fore, thrush in the sulcus"
LESSON = WordLesson("findings", "thrush", "thruss")
VOCABULARY = load_vocabulary()


def say_what_was_said(review: Review) -> Done:
    """Answer the open stretch of unclear words."""
    return review.add(next(item for item in review.queue() if item.kind is ItemKind.WORDS), MEANT)


def found(review: Review, visit: int) -> list[tuple[str | None, str | float, bool]]:
    """The findings of a visit: foot, value and whether a person entered them."""
    facts = review.store.visit(visit).facts
    return [(kept.fact.foot, kept.fact.value, kept.by_hand) for kept in facts if kept.fact.slot == "finding"]


def again(review: Review, hear: Keep, day: str) -> int:
    """The same mistake once more, heard and read with all that was learned; returns the visit."""
    return hear(review, MISHEARD, day=day, read=Reader(vocabulary_with_own(review.store.folder)))[0]


def test_a_mishearing_is_offered_once_and_learned_at_the_second_time(yard: Review, hear: Keep) -> None:
    hear(yard, MISHEARD, day="2026-05-10", unclear=UNCLEAR)
    first = say_what_was_said(yard)
    assert (first.lesson, first.learned) == (LESSON, None)
    assert first.offer == "Read “thruss” as thrush from now on?"
    assert found(yard, again(yard, hear, "2026-05-11")) == []

    hear(yard, MISHEARD, day="2026-05-12", unclear=UNCLEAR)
    assert say_what_was_said(yard).learned == "“thruss” is read as thrush from the next memo on."
    assert found(yard, again(yard, hear, "2026-05-13")) == [("LF", "thrush", False)]


def test_it_is_learned_at_once_when_he_says_so(yard: Review, hear: Keep) -> None:
    hear(yard, MISHEARD, day="2026-05-10", unclear=UNCLEAR)
    lesson = say_what_was_said(yard).lesson
    assert lesson is not None
    assert yard.learn(lesson) == "“thruss” is read as thrush from the next memo on."
    assert own_words(yard.store.folder) == [OwnWord("findings", "thrush", "thruss", heard=True)]
    assert yard.learned == ["“thruss” is read as thrush from the next memo on."]
    visit = again(yard, hear, "2026-05-13")
    assert found(yard, visit) == [("LF", "thrush", False)]
    assert yard.store.visit(visit).facts[0].fact.flagged  # a sound-alike is still put before him


def test_hearing_expects_what_was_misheard_before(yard: Review) -> None:
    learning.learn(yard.store, WordLesson("findings", "canker", "conquer"))
    assert bias_forms(VOCABULARY)[0] != "canker"
    assert bias_forms(vocabulary_with_own(yard.store.folder))[0] == "canker"


def test_what_is_forgotten_is_not_learned_again_unasked(yard: Review, hear: Keep) -> None:
    learning.learn(yard.store, LESSON)
    assert learning.forget(yard.store, "Thruss") == ["“thruss” is no longer read as thrush."]
    assert found(yard, again(yard, hear, "2026-05-09")) == []
    for day in ("2026-05-10", "2026-05-11", "2026-05-12"):
        hear(yard, MISHEARD, day=day, unclear=UNCLEAR)
        assert say_what_was_said(yard).learned is None
    assert own_words(yard.store.folder) == []
    yard.learn(LESSON)
    assert own_words(yard.store.folder) == [OwnWord("findings", "thrush", "thruss", heard=True)]


def test_that_it_is_not_wanted_is_kept_before_it_goes(yard: Review, monkeypatch: pytest.MonkeyPatch) -> None:
    learning.learn(yard.store, LESSON)

    def pulled_out(*given: object) -> None:
        raise StoreError("The drive was pulled out.")

    monkeypatch.setattr(learning, "forget_word", pulled_out)
    with pytest.raises(StoreError):
        learning.forget(yard.store, "thruss")
    assert yard.store.lesson_refused(LESSON)


def test_a_correction_that_is_taken_back_teaches_nothing(yard: Review, hear: Keep) -> None:
    hear(yard, MISHEARD, day="2026-05-10", unclear=UNCLEAR)
    say_what_was_said(yard)
    yard.undo()
    assert yard.store.times_seen(LESSON) == 0
    say_what_was_said(yard)
    hear(yard, MISHEARD, day="2026-05-12", unclear=UNCLEAR)
    assert say_what_was_said(yard).learned is not None
    yard.undo()
    assert own_words(yard.store.folder) == []
    assert yard.learned == []


def learned_on_an_earlier_evening(yard: Review, hear: Keep) -> Review:
    """What was misheard twice is learned; the review of the next evening."""
    for day in ("2026-05-10", "2026-05-12"):
        hear(yard, MISHEARD, day=day, unclear=UNCLEAR)
        say_what_was_said(yard)
    assert own_words(yard.store.folder) == [OwnWord("findings", "thrush", "thruss", heard=True)]
    return Review(yard.store, VOCABULARY, "Reviewer", yard.given_reader)


def test_a_correction_of_another_evening_takes_its_lesson_back_too(yard: Review, hear: Keep) -> None:
    assert learned_on_an_earlier_evening(yard, hear).undo().says == "Taken back at Hester; it is asked again."
    assert own_words(yard.store.folder) == []


def test_taking_back_is_done_though_he_has_forgotten_the_word_himself(yard: Review, hear: Keep) -> None:
    later = learned_on_an_earlier_evening(yard, hear)
    learning.forget(yard.store, "thruss")
    assert later.undo().says == "Taken back at Hester; it is asked again."
    assert yard.store.times_seen(LESSON) == 1


def test_taking_back_is_done_though_the_lesson_cannot_be_taken_out(
    yard: Review, hear: Keep, monkeypatch: pytest.MonkeyPatch
) -> None:
    later = learned_on_an_earlier_evening(yard, hear)

    def pulled_out(*given: object) -> None:
        raise StoreError("The drive was pulled out.")

    monkeypatch.setattr(learning, "forget_word", pulled_out)
    assert later.undo().says == (
        "Taken back at Hester; it is asked again. What was learned from it could not be taken out: "
        "clinchbook words forget “thruss”."
    )
    assert yard.store.times_seen(LESSON) == 1


def test_a_wrong_sound_alike_gets_its_true_meaning(yard: Review, hear: Keep) -> None:
    hear(yard, "Hester. Left hind has fresh at the toe.", day="2026-05-10")
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    assert item.as_read() == "left hind: thrush (toe)"
    lesson = yard.correct(item, FactFields(value="flare")).lesson
    assert lesson == WordLesson("findings", "flare", "fresh")
    learning.learn(yard.store, lesson)
    reader = Reader(vocabulary_with_own(yard.store.folder))
    visit = hear(yard, "Hester. Left hind has fresh at the toe.", day="2026-05-13", read=reader)[0]
    assert found(yard, visit) == [("LH", "flare", False)]


@pytest.mark.parametrize(
    ("said", "instead"),
    [
        ("Hester. Left hind has fresh at the toe.", "crack"),
        ("Hester. Trotted up lamb.", "sound"),
        ("Hester. He kept savoring it on the trot.", "sound"),
    ],
)
def test_words_that_sound_like_nothing_of_the_new_value_teach_nothing(
    yard: Review, hear: Keep, said: str, instead: str
) -> None:
    hear(yard, said)
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    done = yard.correct(item, FactFields(value=instead))
    assert (done.lesson, done.offer) == (None, None)


def test_what_was_missed_is_looked_for_among_the_words_of_no_fact(yard: Review, hear: Keep) -> None:
    said = (
        "Hester. New shoes in front, size three. There is kerry toma at the toe of the off fore. She stood by the gate."
    )
    visit = hear(yard, said, unsure=("three",))[0]
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    done = yard.add(item, "off fore, keratoma at the toe")
    assert (done.says, done.answered) == ("Added: right fore: keratoma (toe).", False)
    assert done.lesson == WordLesson("findings", "keratoma", "kerry toma")
    assert done.offer == "Read “kerry toma” as keratoma from now on?"
    assert found(yard, visit) == [("RF", "keratoma", True)]
    yard.learn(done.lesson)
    visit = hear(yard, said, day="2026-05-13", read=Reader(vocabulary_with_own(yard.store.folder)))[0]
    assert found(yard, visit) == [("RF", "keratoma", False)]


def test_what_was_missed_and_taught_is_kept_whole_and_taken_back_whole(
    yard: Review, hear: Keep, monkeypatch: pytest.MonkeyPatch
) -> None:
    visit = hear(yard, "Hester. New shoes in front, size three. There is kerry toma at the toe.", unsure=("three",))[0]
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    lesson = WordLesson("findings", "keratoma", "kerry toma")
    with monkeypatch.context() as broken:
        broken.setattr("pipeline.keeping.deciding.write_lesson", no_disk)
        with pytest.raises(StoreError):
            yard.add(item, "off fore, keratoma at the toe")
    assert (found(yard, visit), yard.store.times_seen(lesson)) == ([], 0)
    assert yard.add(item, "off fore, keratoma at the toe").lesson == lesson
    yard.learn(lesson)
    assert (found(yard, visit), yard.store.times_seen(lesson)) == ([("RF", "keratoma", True)], 1)
    later = Review(yard.store, VOCABULARY, "Reviewer")
    assert later.undo().says == "Taken back at Hester; it is asked again."
    assert (found(yard, visit), yard.store.times_seen(lesson), own_words(yard.store.folder)) == ([], 0, [])


def test_nothing_is_made_of_words_that_only_sound_a_little_like_what_was_missed() -> None:
    unread = ["There was copper in the bucket", "Kicks when the dog is near"]
    assert learning.from_missed(unread, "left fore, corn at the toe", VOCABULARY) is None
    assert learning.from_missed([], "left fore, corn at the toe", VOCABULARY) is None
    meant = "off hind, thrush in the commissure"
    assert learning.from_missed([*unread, "In the commissa"], meant, VOCABULARY) == (
        WordLesson("zones", "commissure", "commissa")
    )


def test_what_would_be_refused_is_not_offered(yard: Review, hear: Keep) -> None:
    said = "Hester. New shoes in front, size three. There's a heel cracking it too on the medial heel."
    hear(yard, said, unsure=("three",))
    item = next(item for item in yard.queue() if item.kind is ItemKind.FIELD)
    meant = "right hind, heel crack, medial heel, moderate"
    lesson = learning.from_missed(item.visit.visit.notes.splitlines(), meant, VOCABULARY)
    assert lesson == WordLesson("findings", "crack", "cracking")
    with pytest.raises(VocabularyError, match="has a meaning already"):
        yard.learn(lesson)
    assert yard.add(item, meant).lesson is None
    hear(yard, "Rohand. First one stood quiet. Trimmed all four.", day="2026-05-11")
    yard.store.call_also(yard.store.horse("Figaro").id, "Rohand")
    assert name_it(yard).lesson is None


def test_a_learned_phrase_may_hold_words_that_mean_something_alone(yard: Review, hear: Keep) -> None:
    said = "Hester. Left hind has greedy toe. Off fore has the in soul."
    assert found(yard, hear(yard, said, day="2026-05-10")[0]) == []
    learning.learn(yard.store, WordLesson("findings", "white_line_disease", "greedy toe"))
    learning.learn(yard.store, WordLesson("findings", "thin_sole", "the in soul"))
    reader = Reader(vocabulary_with_own(yard.store.folder))
    visit = hear(yard, said, day="2026-05-13", read=reader)[0]
    assert found(yard, visit) == [("LH", "white_line_disease", False), ("RF", "thin_sole", False)]


@pytest.mark.parametrize(
    ("lesson", "why"),
    [
        (WordLesson("findings", "abscess", "bruise"), "has a meaning already: bruise"),
        (WordLesson("findings", "abscess", "no"), "has a meaning already"),
        (WordLesson("findings", "thrush", "fresh"), "is read as thrush already"),
    ],
)
def test_a_word_of_the_trade_never_gets_a_second_meaning(yard: Review, lesson: WordLesson, why: str) -> None:
    with pytest.raises(VocabularyError, match=why):
        yard.learn(lesson)
    assert own_words(yard.store.folder) == []


@pytest.mark.parametrize(
    ("text", "heard", "meant", "lesson"),
    [
        ("the male line is low", "male", "nail", WordLesson("nail_line_heads", "nail_line", "male line")),
        ("size augment behind", "augment", "aught", WordLesson("numbers", "aught", "augment")),
        ("he stood by the tractor", "tractor", "gate", None),
        ("trimmed all four", "snow", "thrush", None),
        ("in the sulcus", "the", "thrush", None),
    ],
)
def test_the_phrase_that_follows_from_a_reworded_stretch(
    text: str, heard: str, meant: str, lesson: WordLesson | None
) -> None:
    assert learning.from_words(text, heard, meant, VOCABULARY) == lesson


def test_words_that_nobody_would_mistake_teach_nothing() -> None:
    assert learning.from_rewording("the tractor was by the gate", "left fore, mild thrush", VOCABULARY) is None


NAMELESS = "Rohand. First one stood quiet. Trimmed all four."


def name_it(review: Review) -> Done:
    """Say that the visit was Rowan's."""
    return review.assign(
        next(item for item in review.queue() if item.kind is ItemKind.HORSE), review.store.horse("Rowan")
    )


def test_a_name_is_learned_at_the_second_time(yard: Review, hear: Keep) -> None:
    hear(yard, NAMELESS, day="2026-05-10")
    first = name_it(yard)
    assert (first.learned, first.offer) == (None, "Is Rowan called “Rohand”, or is it heard so?")
    hear(yard, NAMELESS, day="2026-05-11")
    assert name_it(yard).learned == "“Rohand” is a name for Rowan from the next memo on."
    assert yard.store.learned_names() == [LearnedName("Rowan", "Rohand")]
    visit = yard.store.visit(hear(yard, NAMELESS, day="2026-05-12")[0])
    assert visit.horse is not None
    assert (visit.horse.name, visit.visit.horse_match, visit.flags) == ("Rowan", HorseMatch.KNOWN, ())


@pytest.mark.parametrize("heard", ["this one", "That One", "the other", "one"])
def test_words_that_may_mean_any_horse_are_no_name(yard: Review, heard: str) -> None:
    rowan = yard.store.horse("Rowan")
    assert learning.from_name(rowan, heard, VOCABULARY) is None
    assert learning.from_name(rowan, "Rohand", VOCABULARY) == learning.NameLesson(rowan, "Rohand")
    assert learning.from_name(rowan, "The Duke", VOCABULARY) == learning.NameLesson(rowan, "The Duke")


def test_a_learned_name_is_forgotten(yard: Review, hear: Keep) -> None:
    hear(yard, NAMELESS, day="2026-05-10")
    lesson = name_it(yard).lesson
    assert lesson is not None
    yard.learn(lesson)
    assert learning.forget(yard.store, "rohand") == ["Rowan is no longer called “Rohand”."]
    assert yard.store.horse("Rowan").horse.also_called == []
    assert yard.store.visit(hear(yard, NAMELESS, day="2026-05-11")[0]).horse is None
    assert name_it(yard).learned is None


def test_the_name_of_another_horse_is_never_learned(yard: Review) -> None:
    with pytest.raises(VocabularyError, match="A horse is called “Hester” already"):
        yard.learn(learning.NameLesson(yard.store.horse("Rowan"), "Hester"))


def test_forgetting_what_was_never_learned(yard: Review) -> None:
    with pytest.raises(NotFoundError):
        learning.forget(yard.store, "rohand")
