"""What is said to learn from: windows of whole sentences from the open memos, from the grammar, and of no trade.

The kept memos, which the hearing bench reports on, have no part in it.
"""

from __future__ import annotations

import random
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path
from typing import Any

from pipeline.vocabulary import load_vocabulary
from tests.bench.hearing.takes import CORPUS
from tests.facts.scoring import load_gold
from tests.generator.memo import Composer

SEED = 20261127
MEMO, GENERATED, NAMES, GENERAL, REAL = "memo", "generated", "names", "general", "real"
_GENERATOR_SEED = 31
_MEMO_WORDS = (20, 35, 50, 60)  # at most, of a window; 60 are about half a minute in the slowest voice
_GENERATED_WORDS = (20, 40, 55)
_SWAPPED_SHARE = 0.65  # of the memos get other names, so that these are learnt by ear and not by heart
_OTHER_ROSTER_SHARE = 0.7  # of the names that such a memo does not speak of
_BEGIN_OF_SENTENCE = re.compile(r"(?<=[.?!])\s+")
# Files of Debian's "fortunes" with hardly anything but prose.
_QUOTES = ("wisdom", "people", "work", "science", "food", "pets", "literature")
_PLAIN_SENTENCES = re.compile(r"[A-Za-z ,.'?!;-]+[.?!]")
_QUOTE_WORDS = (8, 55)
_STRANGERS = 8  # names on the roster of general sentences


@dataclass(frozen=True)
class Window:
    """Whole sentences that are said in one go, the roster they belong to, and where they are from."""

    kind: str  # memo, generated, names, general or real
    sentences: tuple[str, ...]
    roster: tuple[str, ...]
    rivals: tuple[str, ...] = ()  # names that are not said but sound like one that is

    @property
    def text(self) -> str:
        """All of it."""
        return " ".join(self.sentences)


def all_windows(quotes: Path | None, generated: int = 150, general: int = 150) -> list[Window]:
    """Everything there is to say; the general sentences only with ``quotes``, the folder of the quotations."""
    memos = open_memos()
    names = swappable(memos)
    found = [*memo_windows(memos, names), *generated_windows(generated)]
    return [*found, *(general_windows(quotes, names, general) if quotes else ())]


def open_memos(corpus: Path = CORPUS) -> list[dict[str, Any]]:
    """The open memos alone."""
    return [memo for path in sorted(corpus.glob("open_*.jsonl")) for memo in load_gold(path)]


def swappable(memos: Sequence[dict[str, Any]]) -> list[str]:
    """All names of horses that may stand for another one."""
    return sorted({name for memo in memos for name in memo["roster"] if re.fullmatch(r"[!-/:-~ ]{3,18}", name)})


def memo_windows(memos: Sequence[dict[str, Any]], names: Sequence[str]) -> Iterator[Window]:
    """The memos cut into windows, with other names in most; what is drawn of one does not hang on the others."""
    for memo in memos:
        key = f"{SEED} {memo['id']}"
        drawn = random.Random(key)
        most, swapped = drawn.choice(_MEMO_WORDS), drawn.random() < _SWAPPED_SHARE
        text, roster = memo["text"], list(memo["roster"])
        if swapped:
            text, roster = with_other_names(text, roster, names, key)
        for sentences in cut(text, most):
            yield Window(MEMO, sentences, tuple(roster))


def with_other_names(text: str, roster: Sequence[str], names: Sequence[str], key: str) -> tuple[str, list[str]]:
    """The text with other names for those of the roster, and the roster that goes with it."""
    drawn = random.Random(f"roster {key}")
    others = list(roster)
    for at, name in enumerate(roster):
        word = re.compile(rf"\b{re.escape(name)}\b")
        if not word.search(text):
            if drawn.random() < _OTHER_ROSTER_SHARE:
                others[at] = _other_name(names, f"{key} {name}")
        elif len(name) > 2 and name[0].isupper():
            others[at] = _other_name(names, f"{key} {name}")
            text = word.sub(others[at].replace("\\", r"\\"), text)
    return text, others


def _other_name(names: Sequence[str], key: str) -> str:
    """One of the names: the same for the same key, and seldom another when there are a few names more.

    So that most of what was spoken already is still wanted when the corpus has grown.
    """
    return min(names, key=lambda name: sha256(f"{key} {name}".encode()).digest())


def generated_windows(count: int) -> Iterator[Window]:
    """Memos of the grammar, cut into windows."""
    composer = Composer(_GENERATOR_SEED, load_vocabulary())
    for number in range(count):
        memo = composer.memo()
        drawn = random.Random(f"{SEED} generated {number}")
        for sentences in cut(memo.text, drawn.choice(_GENERATED_WORDS)):
            yield Window(GENERATED, sentences, tuple(memo.roster))


def general_windows(folder: Path, names: Sequence[str], count: int) -> list[Window]:
    """Quotations of plain sentences that have nothing to do with the trade, so that other talk is not unlearnt."""
    drawn = random.Random(SEED)
    quotes = [quote for name in _QUOTES for quote in quotations(folder / name)]
    drawn.shuffle(quotes)
    return [Window(GENERAL, sentences_of(q), tuple(drawn.sample(names, _STRANGERS))) for q in quotes[:count]]


def quotations(path: Path) -> Iterator[str]:
    """The quotations of a file, told apart by lines of a percent sign, that are plain sentences; without their source.

    None where the file is missing.
    """
    whole = path.read_text(encoding="utf-8", errors="ignore") if path.is_file() else ""
    for told in re.split(r"^%$", whole, flags=re.MULTILINE):
        quote = " ".join(told.split("-- ")[0].split())
        if _QUOTE_WORDS[0] <= len(quote.split()) <= _QUOTE_WORDS[1] and _PLAIN_SENTENCES.fullmatch(quote):
            yield quote


def sentences_of(text: str) -> tuple[str, ...]:
    """The sentences of a text, by their closing marks."""
    return tuple(filter(None, _BEGIN_OF_SENTENCE.split(text.strip())))


def cut(text: str, most_words: int) -> Iterator[tuple[str, ...]]:
    """Whole sentences in their order, as many together as have ``most_words`` words; a longer one stands alone."""
    together: list[str] = []
    for sentence in sentences_of(text):
        if together and len(" ".join([*together, sentence]).split()) > most_words:
            yield tuple(together)
            together = []
        together.append(sentence)
    if together:
        yield tuple(together)
