"""What a correction teaches: which words the recogniser writes for something of the trade, and what a horse is called.

A mishearing is learned when it was corrected twice, or when he says so at once; one that he took out again only when
he says so.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass
from difflib import SequenceMatcher
from itertools import product

from pipeline.errors import NotFoundError, StoreError, VocabularyError
from pipeline.keeping import KeptHorse, Store
from pipeline.keeping.lessons import LessonStep, WordLesson
from pipeline.keeping.own_words import add_heard, forget_word, may_be_heard, own_words, plain_form
from pipeline.reading.sounds import likeness
from pipeline.record import Fact
from pipeline.vocabulary import SLOT_CLASSES, Vocabulary

TIMES = 2  # after which a mishearing is learned without asking
_MOST_WORDS = 5
_SHORTEST = 3  # letters
_STRETCH = 3  # words that are compared at once
_ALIKE = 0.45  # below this nobody would mistake one for the other
_MISTAKEN = 0.55  # the same for words that were read as something already
_SURELY_ALIKE = 0.7  # where it is not sure that these are the words that were meant
_TOKEN = re.compile(r"[a-z0-9'./½¼¾%°]+")
_NOT_LEARNED = frozenset({"bias", "remarks", "fillers", "clause_words", "not_facts", "asides", "denials", "feet"})


@dataclass(frozen=True)
class NameLesson:
    """A name as it was heard, said for a horse."""

    horse: KeptHorse
    heard: str


Lesson = WordLesson | NameLesson


def tokens(text: str) -> list[str]:
    """The plain words of a text, as the vocabulary writes them."""
    return [word.strip(".'") for word in _TOKEN.findall(plain_form(text)) if word.strip(".'")]


def from_value(before: Fact, after: Fact, vocabulary: Vocabulary) -> WordLesson | None:
    """The words in the quote that were taken for the old value, when they are no word of the trade themselves.

    None when they sound like nothing that the new value is called: then he said something else, or the words were not
    what was wrong. "Lane" that is corrected from lame to sound teaches nothing.
    """
    name = SLOT_CLASSES.get(before.slot)
    if name is None or before.value == after.value or name not in vocabulary.classes:
        return None
    quote = f" {' '.join(tokens(before.quote))} "
    wrote = [
        form for form, meant in vocabulary.heard_as(name).items() if meant == before.value and f" {form} " in quote
    ]
    called = [form for form, meant in vocabulary.spoken(name).items() if meant == after.value and "..." not in form]
    wrote = [form for form in wrote if not _ordinary(form.split()) and _sounds_like_one(form, called)]
    if not wrote:
        return None
    return WordLesson(name, str(after.value), max(wrote, key=len))


def _sounds_like_one(heard: str, called: Iterable[str]) -> bool:
    near = (form for form in called if abs(form.count(" ") - heard.count(" ")) <= 1)
    return any(likeness(heard, form) >= _MISTAKEN for form in near)


def from_words(text: str, heard: str, meant: str, vocabulary: Vocabulary) -> WordLesson | None:
    """What follows when ``heard`` in ``text`` should read ``meant``: the longest form of the trade that then stands.

    "Male line" that should read "nail line" gives the words "male line" for the nail line. None when nothing of the
    trade stands there, or when the words are more than a phrase.
    """
    words, wrong, right = tokens(text), tokens(heard), tokens(meant)
    at = next((i for i in range(len(words) - len(wrong) + 1) if words[i : i + len(wrong)] == wrong), None)
    if at is None or not wrong or not right or wrong == right:
        return None
    read = [*words[:at], *right, *words[at + len(wrong) :]]
    best: tuple[int, WordLesson] | None = None
    for name, canonical, form in _forms(vocabulary):
        for start in range(max(0, at - len(form) + 1), at + len(right)):
            if start > at or start + len(form) < at + len(right) or read[start : start + len(form)] != form:
                continue
            wrote = [*read[start:at], *wrong, *read[at + len(right) : start + len(form)]]
            if len(wrote) <= _MOST_WORDS and not _ordinary(wrote) and (best is None or len(form) > best[0]):
                best = len(form), WordLesson(name, canonical, " ".join(wrote))
    return best[1] if best else None


def _ordinary(words: list[str]) -> bool:
    """Words that every memo is full of: whoever gave them a meaning would read it everywhere."""
    from spacy.lang.en.stop_words import STOP_WORDS

    return all(word in STOP_WORDS or len(word) < _SHORTEST for word in words)


def _forms(vocabulary: Vocabulary) -> list[tuple[str, str, list[str]]]:
    return [
        (name, entry.canonical, form.split())
        for name, entries in vocabulary.classes.items()
        if name not in _NOT_LEARNED
        for entry in entries
        for form in entry.spoken
        if "..." not in form
    ]


def from_name(horse: KeptHorse, heard: str, vocabulary: Vocabulary) -> NameLesson | None:
    """The name as heard, when the horse is not called so yet and it is a name rather than words of the trade, or words
    that may mean any horse: "this one"."""
    name = " ".join(heard.strip(" .,;:!?").split())
    called = {other.casefold() for other in (horse.name, *horse.horse.also_called)}
    words = name.split()
    if not name or name.casefold() in called or len(words) > 3 or not all(word.isalpha() for word in words):
        return None
    low = [word.lower() for word in words]
    if _ordinary(low) or any(form == low for _, _, form in _forms(vocabulary)):
        return None
    return NameLesson(horse, name)


def may_be_learned(store: Store, lesson: Lesson, vocabulary: Vocabulary) -> bool:
    """Whether it would be learned if he said so: nobody is asked about what is known or means something else."""
    if isinstance(lesson, WordLesson):
        return may_be_heard(vocabulary, lesson.name, lesson.canonical, lesson.form)
    name = lesson.heard.casefold()
    called = (one for kept in store.horses() for one in (kept.name, *kept.horse.also_called))
    return name not in (one.casefold() for one in called)


def due(store: Store, lesson: Lesson) -> bool:
    """Whether it was seen often enough to be learned unasked, and was never taken out again."""
    if isinstance(lesson, WordLesson):
        return store.times_seen(lesson) >= TIMES and not store.lesson_refused(lesson)
    times = store.times_answered(lesson.horse.id, lesson.heard)
    return times >= TIMES and not store.name_refused(lesson.horse.id, lesson.heard)


def learn(store: Store, lesson: Lesson, change: int | None = None) -> str:
    """Learn it, from the correction ``change``, and say so. Raises VocabularyError when it is known already or means
    something else.

    A word that means something in the trade, and a name that another horse has, are never given a second meaning.
    """
    if isinstance(lesson, NameLesson):
        if not store.call_also(lesson.horse.id, lesson.heard):
            raise VocabularyError(f"A horse is called “{lesson.heard}” already.")
        return f"“{lesson.heard}” is a name for {lesson.horse.name} from the next memo on."
    if add_heard(store.folder, lesson.name, lesson.canonical, lesson.form) is None:
        raise VocabularyError(f"“{lesson.form}” is read as {_meaning(lesson)} already.")
    with suppress(StoreError):  # it counts from now on, also where that can no longer be noted
        store.note_lesson(lesson, LessonStep.LEARNED, change=change)
    return f"“{lesson.form}” is read as {_meaning(lesson)} from the next memo on."


def learn_if_due(store: Store, lesson: Lesson, change: int | None = None) -> str | None:
    """Learn what was seen often enough; None when it was not, may not be learned, or cannot be written just now.

    The answer that it follows from is kept by then, and must not look as if it was not.
    """
    try:
        return learn(store, lesson, change) if due(store, lesson) else None
    except (VocabularyError, StoreError):
        return None


def unlearn(store: Store, lesson: Lesson) -> bool:
    """Take out what was learned from a correction that is itself taken back; False when it cannot be written now."""
    try:
        if isinstance(lesson, NameLesson):
            store.forget_name(lesson.heard)
        else:
            forget_word(store.folder, lesson.form)
    except NotFoundError:
        return True  # he has taken it out himself
    except StoreError:
        return False
    return True


def still_learned(lesson: Lesson) -> str:
    """What to do about a lesson that could not be taken out, as a sentence to go on with."""
    form = lesson.heard if isinstance(lesson, NameLesson) else lesson.form
    return f" What was learned from it could not be taken out: clinchbook words forget “{form}”."


def forget(store: Store, form: str) -> list[str]:
    """Take a word of his own, or a learned name, out again: a sentence for each. Raises NotFoundError for neither.

    What was learned and is forgotten so comes back only when he says so.
    """
    names = store.forget_name(form)
    if names:
        return [f"{learned.horse} is no longer called “{learned.name}”." for learned in names]
    told = []
    for word in own_words(store.folder):
        if word.heard and word.form == plain_form(form):  # noted first: a power cut must not let it be learned again
            store.note_lesson(WordLesson(word.name, word.canonical, word.form), LessonStep.FORGOTTEN)
    for word in forget_word(store.folder, form):
        verb = "is no longer read as" if word.heard else "no longer means"
        told.append(f"“{word.form}” {verb} {word.canonical.replace('_', ' ')}.")
    return told


def from_rewording(heard: str, meant: str, vocabulary: Vocabulary) -> WordLesson | None:
    """The stretch of a quote that was typed otherwise and sounds most like what was typed there.

    None when nothing of the trade was typed there, or nothing sounds like it.
    """
    best = _reworded(heard, meant, vocabulary, _ALIKE)
    return best[1] if best else None


def from_missed(unread: Iterable[str], meant: str, vocabulary: Vocabulary) -> WordLesson | None:
    """As ``from_rewording``, where it is not known which of several sentences was meant: the one that sounds most so.

    Little words at either end are no part of a name: "copper in" sounds like corn and is none.
    """
    from spacy.lang.en.stop_words import STOP_WORDS

    found = [best for heard in unread if (best := _reworded(heard, meant, vocabulary, _SURELY_ALIKE))]
    ends = [(alike, lesson, lesson.form.split()) for alike, lesson in found]
    sure = [(alike, lesson) for alike, lesson, words in ends if not STOP_WORDS & {words[0], words[-1]}]
    return max(sure, key=lambda one: one[0])[1] if sure else None


def _reworded(heard: str, meant: str, vocabulary: Vocabulary, least: float) -> tuple[float, WordLesson] | None:
    wrote, said = tokens(heard), tokens(meant)
    best: tuple[float, WordLesson] | None = None
    for op, a, b, c, d in SequenceMatcher(None, wrote, said, autojunk=False).get_opcodes():
        if op != "replace":
            continue
        for wrong, right in product(_stretches(wrote[a:b]), _stretches(said[c:d])):
            alike = likeness(wrong, right) if abs(wrong.count(" ") - right.count(" ")) <= 1 else 0.0
            lesson = from_words(" ".join(wrote), wrong, right, vocabulary) if alike >= least else None
            if lesson is not None and (best is None or alike > best[0]):
                best = alike, lesson
    return best


def _stretches(words: list[str]) -> list[str]:
    return [" ".join(words[at : at + size]) for size in range(1, _STRETCH + 1) for at in range(len(words) - size + 1)]


def offer(lesson: Lesson) -> str:
    """The question whether to learn it at once."""
    if isinstance(lesson, NameLesson):
        return f"Is {lesson.horse.name} called “{lesson.heard}”, or is it heard so?"
    return f"Read “{lesson.form}” as {_meaning(lesson)} from now on?"


def _meaning(lesson: WordLesson) -> str:
    return lesson.canonical.replace("_", " ")
