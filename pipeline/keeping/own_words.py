"""The user's own words: CSV files of the vocabulary's four columns in the store's folder, one a class of words.

They join the shipped words at every load, so that a word counts from the next memo on and is out again once forgotten.
"""

from __future__ import annotations

import csv
import io
import os
from contextlib import suppress
from pathlib import Path
from typing import NamedTuple

from pipeline.errors import NotFoundError, StoreError, VocabularyError
from pipeline.keeping.database import plain_errors, sync_file, sync_folder
from pipeline.keeping.location import make_private_folder
from pipeline.keeping.locking import alone
from pipeline.sentences import none_such
from pipeline.terms import WORDED_SLOTS, ZONES
from pipeline.vocabulary import (
    CLASS_SLOTS,
    COLUMNS,
    LEARNED_SOURCE,
    Entry,
    Vocabulary,
    late_vocabulary,
    load_vocabulary,
)

WORDS_NAME = "words"
OWN_SOURCE = "own word"
_NO_MEANING = frozenset({"bias"})  # what the recogniser is told to expect; it gives no word a meaning


class OwnWord(NamedTuple):
    """One form that the user gave a meaning: a class of words and a canonical name there.

    ``heard`` is True for what the recogniser writes instead, which counts only in memos that were heard.
    """

    name: str
    canonical: str
    form: str
    heard: bool = False


def vocabulary_with_own(folder: Path) -> Vocabulary:
    """The shipped words joined by those of the store in ``folder``; a store without any, or none at all, adds nothing.

    Raises VocabularyError naming file and line when one of the user's files has a mistake, StoreError for a file that
    cannot be read.
    """
    return load_vocabulary(own_words=_entries(folder))


def late_vocabulary_with_own(folder: Path) -> Vocabulary:
    """The same words, each class of them read when it is first asked for; raises VocabularyError then.

    A mistake in one of the user's own files is refused at once.
    """
    return late_vocabulary(_entries(folder))


def own_words(folder: Path) -> list[OwnWord]:
    """Every word of the user's own, by class and then as added. Raises VocabularyError for a file with a mistake."""
    return [word for name, entry in _entries(folder) for word in _words_of(name, entry)]


def add_word(folder: Path, name: str, canonical: str, spoken: str) -> OwnWord | None:
    """Give a spoken form a meaning and return it as kept; None when it has that meaning already.

    Raises VocabularyError for an unknown class or canonical name (the sentence lists those there are), a form that is
    not plain words, and a form that means something else already; StoreError when the file cannot be written and
    StoreBusyError when another program is writing: two programs that add at once lose nothing.
    """
    with plain_errors(folder), alone(folder):
        return _add(folder, name, Entry(canonical, (plain_form(spoken),), (), OWN_SOURCE, "new", 1))


def _add(folder: Path, name: str, new: Entry) -> OwnWord | None:
    """Write an entry of one form, under the lock of the caller; None when the form has that meaning already."""
    vocabulary = vocabulary_with_own(folder)
    _check_meaning(vocabulary, name, new.canonical)
    heard = bool(new.heard_as)
    form = (new.heard_as or new.spoken)[0]
    if (vocabulary.heard_as(name) if heard else vocabulary.spoken(name)).get(form) == new.canonical:
        return None
    _check_free(vocabulary, name, form)
    entries = _entries(folder)
    try:
        load_vocabulary(own_words=[*entries, (name, new)])
    except VocabularyError as error:
        raise VocabularyError(str(error).removeprefix("new line 1: ")) from error
    _write(folder, name, [*(entry for other, entry in entries if other == name), new])
    return OwnWord(name, new.canonical, form, heard)


def forget_word(folder: Path, spoken: str) -> list[OwnWord]:
    """Take a form out of the user's own words, from every class; returns what was taken out.

    Raises NotFoundError when the user added no such word, StoreError when a file cannot be written.
    """
    form = plain_form(spoken)
    if not _own_with(folder, form):
        shipped = any(form in load_vocabulary().spoken(name) for name in load_vocabulary().classes)
        why = "it is one of clinchbook's words, which stay" if shipped else "see clinchbook words list"
        raise NotFoundError(f"“{form}” is no word of your own; {why}.")
    with plain_errors(folder), alone(folder):
        gone, entries = _own_with(folder, form), _entries(folder)
        for name in dict.fromkeys(word.name for word in gone):
            _write(folder, name, [_without(entry, form) for other, entry in entries if other == name])
    return gone


def _own_with(folder: Path, form: str) -> list[OwnWord]:
    return [word for name, entry in _entries(folder) for word in _words_of(name, entry) if word.form == form]


def add_heard(folder: Path, name: str, canonical: str, heard: str) -> OwnWord | None:
    """Say what the recogniser writes where something of the trade was said; None when that is known already.

    Raises VocabularyError for an unknown class or name, a form that is not plain words, and a form that is itself a
    word of the trade: what is truly said must stay readable. Raises StoreError when the file cannot be written.
    """
    with plain_errors(folder), alone(folder):
        return _add(folder, name, Entry(canonical, (), (plain_form(heard),), LEARNED_SOURCE, "new", 1))


def may_be_heard(vocabulary: Vocabulary, name: str, canonical: str, heard: str) -> bool:
    """Whether ``add_heard`` would add it to these words: it is not known yet, and means nothing else."""
    form = plain_form(heard)
    try:
        _check_meaning(vocabulary, name, canonical)
        _check_free(vocabulary, name, form)
    except VocabularyError:
        return False
    return vocabulary.heard_as(name).get(form) != canonical


def plain_form(spoken: str) -> str:
    """A form as the vocabulary writes it: lower case, single spaces, no hyphen between words, straight apostrophes."""
    return " ".join(spoken.lower().replace("’", "'").replace("-", " ").split())


def _check_meaning(vocabulary: Vocabulary, name: str, canonical: str) -> None:
    if name not in vocabulary.classes:
        raise VocabularyError(none_such(name, "class of words", sorted(vocabulary.classes)))
    meanings = _meanings(vocabulary, name)
    if canonical not in meanings and (called := vocabulary.spoken(name).get(plain_form(canonical))):
        raise VocabularyError(f"“{canonical}” is {called} among the {name}; say {called}.")
    if canonical not in meanings:
        raise VocabularyError(none_such(canonical, f"name among the {name}", meanings))


def _meanings(vocabulary: Vocabulary, name: str) -> tuple[str, ...]:
    if name in CLASS_SLOTS:
        return WORDED_SLOTS[CLASS_SLOTS[name]]
    if name == "zones":
        return ZONES
    return tuple(dict.fromkeys(entry.canonical for entry in vocabulary.entries(name)))


def _check_free(vocabulary: Vocabulary, name: str, form: str) -> None:
    """A form with two meanings would be read by chance: "no" must stay a denial."""
    classes = [name] if name in _NO_MEANING else [c for c in vocabulary.classes if c not in _NO_MEANING]
    for other in classes:
        meaning = vocabulary.spoken(other).get(form)
        if meaning is not None:
            raise VocabularyError(f"“{form}” has a meaning already: {meaning.replace('_', ' ')} among the {other}.")


def _entries(folder: Path) -> list[tuple[str, Entry]]:
    words = folder / WORDS_NAME
    try:
        with plain_errors(folder):
            classes = load_vocabulary(words).classes if any(words.glob("*.csv")) else {}
    except VocabularyError as error:
        raise VocabularyError(f"In your own words in {words}: {error}") from error
    return [
        (name, entry._replace(file=f"{WORDS_NAME}/{entry.file}"))
        for name, entries in classes.items()
        for entry in entries
    ]


def _without(entry: Entry, form: str) -> Entry:
    spoken = tuple(other for other in entry.spoken if other != form)
    return entry._replace(spoken=spoken, heard_as=tuple(other for other in entry.heard_as if other != form))


def _words_of(name: str, entry: Entry) -> list[OwnWord]:
    spoken = [OwnWord(name, entry.canonical, form) for form in entry.spoken]
    return spoken + [OwnWord(name, entry.canonical, form, heard=True) for form in entry.heard_as]


def _write(folder: Path, name: str, entries: list[Entry]) -> None:
    """Write one class whole or not at all, under the lock of ``alone``; a class without words has no file."""
    text = io.StringIO(newline="")
    rows = csv.writer(text, lineterminator="\n")
    rows.writerow(COLUMNS)
    for entry in entries:
        if entry.spoken or entry.heard_as:
            rows.writerow([entry.canonical, "|".join(entry.spoken), "|".join(entry.heard_as), entry.source])
    path = folder / WORDS_NAME / f"{name}.csv"
    make_private_folder(path.parent)
    try:
        for left in path.parent.glob(".*.part"):  # by a program that was stopped; no other writes now
            left.unlink(missing_ok=True)
        if any(entry.spoken or entry.heard_as for entry in entries):
            _replace(path, text.getvalue())
        else:
            path.unlink()
    except OSError as error:
        raise StoreError(f"Your own words in {path} cannot be written; they stay as they were.") from error
    try:
        sync_folder(path.parent)
    except OSError as error:
        raise StoreError(
            f"Your own words in {path} are changed, but the disk gave an error; "
            "after a power cut they may be as before."
        ) from error


def _replace(path: Path, text: str) -> None:
    import tempfile  # looking for words need not wait for it

    handle, temporary = tempfile.mkstemp(prefix=f".{path.stem}-", suffix=".part", dir=path.parent)
    part = Path(temporary)
    try:
        with os.fdopen(handle, "w", encoding="utf-8", newline="") as file:
            file.write(text)
            file.flush()
            sync_file(file.fileno())
        part.replace(path)
    finally:
        with suppress(OSError):
            part.unlink(missing_ok=True)
