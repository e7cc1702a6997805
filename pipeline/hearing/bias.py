"""What the recogniser is told to expect: the names on the roster and the trade's words, within its room for a prompt.

The words come from ``vocab/bias.csv`` by rank and go in as hotwords, in short sentences of two: the recogniser writes
as it was prompted. After one long list with commas it leaves out the full stops and capitals that reading needs; after
sentences of one word each it writes two full stops for every one that was said, after sentences of four too few. The
figures are in DEVELOPERS.md, section 6.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence

from pipeline.errors import VocabularyError
from pipeline.vocabulary import LEARNED_SOURCE, Vocabulary

# Whisper gives half of its 448 text positions to what came before; the recogniser cuts a longer prompt off unasked.
PROMPT_TOKENS = 223
_NAMES_SHARE = 0.5
_TOGETHER = 2  # items of a sentence
# The recogniser punctuates as its prompt does, so the prompt ends in the manner of a memo.
MANNER = (
    "Okay, this is the next one, and she stood quiet. Near fore, in the sulcus, mild, and no heat in either hind. "
    "Reset all round, size two, six nails each, and he's back in eight weeks."
)
# Marks such as <|endoftext|> would be read as commands to the recogniser, not as words.
_STRANGE = re.compile(r"[^\w '.&/-]+")

CountTokens = Callable[[str], int]


def bias_forms(vocabulary: Vocabulary) -> list[str]:
    """The trade's words in the order of their rank, behind those that were misheard here and corrected.

    Raises VocabularyError for a rank that is no number.
    """
    ranked = []
    for entry in vocabulary.entries("bias"):
        if not entry.canonical.isdigit():
            raise VocabularyError(f"{entry.file} line {entry.line}: the rank {entry.canonical!r} must be a number.")
        ranked.append((int(entry.canonical), entry.spoken))
    expected = [form for _, forms in sorted(ranked, key=lambda item: item[0]) for form in forms]
    return list(dict.fromkeys([*_misheard_before(vocabulary), *expected]))


def _misheard_before(vocabulary: Vocabulary) -> list[str]:
    """The first spoken form of everything that corrections showed to be misheard, the latest first."""
    forms = []
    for entries in vocabulary.classes.values():
        for learned in (entry for entry in entries if entry.source == LEARNED_SOURCE):
            said = next((e.spoken[0] for e in entries if e.spoken and e.canonical == learned.canonical), None)
            forms.extend([said] if said else [])
    return forms[::-1]


def bias_prompt(forms: Sequence[str], names: Iterable[str], count: CountTokens, budget: int = PROMPT_TOKENS) -> str:
    """One prompt of at most ``budget`` tokens as ``count`` sees it: names first, in their order, then trade words.

    Names get at most half of the room as long as there are trade words to fill the rest; what does not fit is left
    out, the last first.
    """
    called = list(dict.fromkeys(name for raw in names if (name := _clean(raw))))
    room = int(budget * _NAMES_SHARE) if forms else budget
    prompt = _fill("", called, count, room)
    return _fill(prompt, forms, count, budget)


def in_manner(prompt: str) -> str:
    """The prompt with a sentence behind it that shows how a memo is punctuated."""
    return f"{prompt} {MANNER}".strip()


def _clean(name: str) -> str:
    return " ".join(_STRANGE.sub(" ", name).split())


def _fill(start: str, items: Iterable[str], count: CountTokens, budget: int) -> str:
    prompt = start
    together: list[str] = []
    for item in items:
        if count(_with(prompt, [*together, item])) > budget:
            break
        together.append(item)
        if len(together) == _TOGETHER:
            prompt, together = _with(prompt, together), []
    return _with(prompt, together)


def _with(prompt: str, items: Sequence[str]) -> str:
    """The prompt with one more sentence of these items; the prompt itself without any."""
    sentence = ", ".join(items)
    return f"{prompt} {sentence[:1].upper()}{sentence[1:]}.".strip() if items else prompt
