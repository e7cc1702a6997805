"""What the network is shown as text: the window's words, and before them a prompt as hearing builds it."""

from __future__ import annotations

import random
from collections.abc import Sequence
from functools import cached_property
from pathlib import Path

from tokenizers import Tokenizer

from pipeline.errors import WeightsError
from pipeline.hearing.bias import MANNER, PROMPT_TOKENS, bias_forms, bias_prompt, in_manner
from pipeline.hearing.pieces import mended
from pipeline.vocabulary import Vocabulary
from tests.bench.adapter.windows import Window

_NO_PROMPT_SHARE = 0.1
_LONGER_SHARE, _LONGER = 0.4, (3, 29)  # rosters with more names than the memo's, and how many more
_UNSAID_SHARE = 0.12  # rosters without the names that are said
_SHORT_SHARE, _SHORT = 0.3, (1, 5)  # rosters of a few names
_RIVAL_SHARE = 0.4  # of the names that sound like one that is said are on the roster as well
_MOST_NAMES = 25
_FEWER_WORDS_SHARE = 0.3  # prompts with some of the trade's words, in any order
_BEFORE = "<|startofprev|>"
_START = ("<|startoftranscript|>", "<|en|>", "<|transcribe|>", "<|notimestamps|>")
_END = "<|endoftext|>"


class Prompts:
    """Texts and prompts as numbers of word pieces, as the recogniser counts them."""

    def __init__(self, folder: Path, vocabulary: Vocabulary, names: Sequence[str]) -> None:
        """``folder`` is that of the weights; ``names`` are all that a roster may have."""
        self._tokenizer = mended(Tokenizer.from_file(str(folder / "tokenizer.json")))
        self._forms = bias_forms(vocabulary)
        self._names = list(names)

    def encode(self, text: str) -> list[int]:
        """The pieces of a text, which begins a word."""
        return list(self._tokenizer.encode(f" {text.strip()}", add_special_tokens=False).ids)

    def head(self, prompt: Sequence[int]) -> list[int]:
        """What stands before the first word: the prompt, if there is one, and the marks that ask for English words."""
        return [*([self._mark(_BEFORE), *prompt] if prompt else ()), *map(self._mark, _START)]

    @cached_property
    def end(self) -> int:
        """The mark behind the last word."""
        return self._mark(_END)

    def _mark(self, name: str) -> int:
        number = self._tokenizer.token_to_id(name)
        if number is None:
            raise WeightsError(f"The weights' tokenizer has no mark {name}.")
        return number

    def prompt(self, window: Window, drawn: random.Random) -> list[int]:
        """A prompt for a window, of the names of a roster that may be his and of the trade's words; or none."""
        if drawn.random() < _NO_PROMPT_SHARE:
            return []
        forms = list(self._forms)
        if drawn.random() < _FEWER_WORDS_SHARE:
            forms = drawn.sample(forms, drawn.randrange(len(forms)))
        room = PROMPT_TOKENS - self._count(MANNER)
        return self.encode(in_manner(bias_prompt(forms, self.roster(window, drawn), self._count, room)))

    def roster(self, window: Window, drawn: random.Random) -> list[str]:
        """The window's roster, longer, shorter or in another order; sometimes without the names that are said."""
        names = list(window.roster)
        if drawn.random() < _LONGER_SHARE:
            names += drawn.sample(self._names, min(len(self._names), drawn.randint(*_LONGER)))
        if drawn.random() < _UNSAID_SHARE:
            names = [name for name in names if name not in window.text]
        if drawn.random() < _SHORT_SHARE:
            names = names[: drawn.randint(*_SHORT)]
        names += [rival for rival in window.rivals if drawn.random() < _RIVAL_SHARE]
        drawn.shuffle(names)
        names.sort(key=lambda name: name not in window.text)  # those that are said come through the cut
        names = list(dict.fromkeys(names))[:_MOST_NAMES]
        drawn.shuffle(names)
        return names

    def _count(self, text: str) -> int:
        return len(self.encode(text))
