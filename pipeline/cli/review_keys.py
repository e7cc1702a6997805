"""The review at a terminal: one key an answer, one question after the other."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from pipeline.cli.review_screen import key_lines, question_text
from pipeline.errors import ClinchbookError, CorrectionError, NotFoundError, StoreConflictError, StoreUnsureError
from pipeline.using.review.items import Item, ItemKind
from pipeline.using.review.typed import FEET_SAID
from pipeline.using.wording import harmless

if TYPE_CHECKING:
    from pipeline.cli.playing import Player
    from pipeline.using.review.session import Done, Review, Shown

_FEET_KEYS = dict(zip("12345678", FEET_SAID, strict=True))
_FEET_ASKED = "1 left fore  2 right fore  3 left hind  4 right hind\n5 fronts  6 hinds  7 all four  8 whole horse"
_MOST_STARTS = 9  # sentences to choose from, a key each
_FIELDS = (ItemKind.FIELD, ItemKind.SPOT_CHECK)


@dataclass
class Terminal:
    """Where keys and lines come from and where text goes."""

    key: Callable[[], str]
    line: Callable[[str], str]
    tell: Callable[[str], None]


class _Stop(ClinchbookError):
    """He has had enough for tonight; what he said is kept."""


@dataclass
class KeyReview:
    """Asks every open question once, until none is left or he stops."""

    review: Review
    terminal: Terminal
    player: Player
    answered: int = 0
    skipped: set[str] = field(default_factory=set)
    _asked_on: list[bool] = field(default_factory=list)  # of every answer, whether its question was open still

    def run(self) -> None:
        """Ask until all is answered, skipped or left for another time, then say how it ended."""
        try:
            while (item := self._next()) is not None or self._once_more():
                if item is not None:
                    self._ask(item)
        except _Stop:
            pass
        self._say_end()

    def _next(self) -> Item | None:
        # The order is made anew each time: an answer may have answered another question too.
        self._open = [key for key in self.review.open_keys() if key not in self.skipped]
        for key in self._open:
            with suppress(NotFoundError):  # somebody else answered it this very moment
                return self.review.item(key)
        return None

    def _once_more(self) -> bool:
        """The last answer can be taken back like any other: whether it was."""
        if not self._asked_on:
            return False
        self.terminal.tell("That was the last question.  u take back the last answer, any other key ends")
        return self.terminal.key() == "u" and self._undo()

    def _ask(self, item: Item) -> None:
        shown = self.review.show(item)
        before = self.answered + len(self.skipped)
        self.terminal.tell(question_text(shown, before + 1, before + len(self._open)))
        while True:
            try:
                if self._answer(shown):
                    return
            except (StoreConflictError, StoreUnsureError) as changed:
                self.terminal.tell(str(changed))
                return
            except _Stop:
                raise
            except ClinchbookError as problem:
                self.terminal.tell(str(problem))

    def _answer(self, shown: Shown) -> bool:
        """Take one key; whether the question has to be shown anew or the next one asked."""
        key = self.terminal.key().lower()
        if key in ("q", "\x03", "\x04", ""):
            raise _Stop("stopped")
        if key == "p":
            self.terminal.tell(self.player.play(shown.item.visit, shown.clip))
            return False
        if key == "s":
            self.skipped.add(shown.item.key)
            return True
        if key == "u":
            return self._undo()
        done = self._decided(shown, key)
        if done is None:
            self.terminal.tell("\n".join(["This key says nothing here.", *key_lines(shown.item)]))
            return False
        self._settled(done)
        return True

    def _decided(self, shown: Shown, key: str) -> Done | None:
        review, item = self.review, shown.item
        if key.isdigit():
            return self._numbered(shown, int(key))
        if key == "a":
            return review.accept(item)
        if key == "n" and item.facts:
            return review.drop(item)
        if key == "m":
            return review.add(item, self._line("What was said, with its foot"))
        if key == "c" and item.kind in _FIELDS:
            return review.correct_typed(item, self._line("What it is instead"))
        if key == "c" and item.kind is ItemKind.DAY:
            return review.set_day(item, self._line("The day, as YYYY-MM-DD"))
        if key == "f" and item.kind in _FIELDS:
            return self._foot(item)
        return self._of_horse(shown, key)

    def _of_horse(self, shown: Shown, key: str) -> Done | None:
        review, item = self.review, shown.item
        if key == "h" and item.kind is ItemKind.HORSE:
            return review.assign(item, review.store.horse(self._line("Which horse")))
        if key == "h" and item.kind is ItemKind.SECOND_HORSE:
            return review.split(item, review.store.horse(self._line("Which horse is this part")), self._start(shown))
        if key == "v" and item.kind is ItemKind.SECOND_HORSE:
            return review.assign(item, review.store.horse(self._line("Which horse is the whole visit")))
        if key == "h" and item.kind in _FIELDS:
            return review.move(item, review.store.horse(self._line("To which horse")))
        if key == "w" and item.kind in (ItemKind.HORSE, ItemKind.SECOND_HORSE):
            return review.new_horse(item, self._line("The new horse's name"), start=self._start(shown))
        if key == "o" and item.kind is ItemKind.HORSE:
            return review.no_horse(item)
        return None

    def _numbered(self, shown: Shown, number: int) -> Done | None:
        if 1 <= number <= len(shown.choices):
            return self.review.choose(shown.item, shown.choices[number - 1])
        if 1 <= number <= len(shown.horses) and not shown.choices:
            horse, second = shown.horses[number - 1].horse, shown.item.kind is ItemKind.SECOND_HORSE
            if second:
                return self.review.split(shown.item, horse, self._start(shown))
            return self.review.assign(shown.item, horse)
        return None

    def _start(self, shown: Shown) -> int | None:
        """Where the other horse comes in, asked when there is more than one sentence to choose from."""
        starts = shown.starts[:_MOST_STARTS]
        if len(starts) < 2:
            return None
        told = [f"  {number}  {harmless(start.says)}" for number, start in enumerate(starts, start=1)]
        self.terminal.tell("\n".join(["With which words does the other horse come in?", *told]))
        key = self.terminal.key()
        if not (key.isdecimal() and 1 <= int(key) <= len(starts)):
            raise CorrectionError("No such place; nothing is changed.")
        return starts[int(key) - 1].at

    def _foot(self, item: Item) -> Done:
        self.terminal.tell(_FEET_ASKED)
        feet = _FEET_KEYS.get(self.terminal.key())
        if feet is None:
            raise CorrectionError("No foot was chosen; nothing is changed.")
        return self.review.set_feet(item, FEET_SAID[feet])

    def _line(self, asked: str) -> str:
        typed = self.terminal.line(asked).strip()
        if not typed:
            raise CorrectionError("Nothing was typed; nothing is changed.")
        return typed

    def _settled(self, done: Done) -> None:
        self.answered += done.answered
        self._asked_on.append(not done.answered)
        self.terminal.tell(harmless(done.says))
        if done.learned:
            self.terminal.tell(f"Learned: {harmless(done.learned)}")
        if done.lesson and done.offer:
            self.terminal.tell(f"{harmless(done.offer)}  y yes, any other key not yet")
            if self.terminal.key() == "y":
                self.terminal.tell(harmless(self.review.learn(done.lesson)))

    def _undo(self) -> bool:
        self.terminal.tell(harmless(self.review.undo().says))
        if self._asked_on and not self._asked_on.pop():
            self.answered -= 1
        return True

    def _say_end(self) -> None:
        left = len([key for key in self.review.open_keys() if key not in self.skipped])
        end = f"{left} left for another time." if left else "All done."
        if self.skipped:
            end += f" {len(self.skipped)} skipped; they are asked again next time."
        kept = "1 answered, and kept." if self.answered == 1 else f"{self.answered} answered, all of them kept."
        told = ["-" * 80, f"{end} {kept if self.answered else 'None answered.'}"]
        if self.review.learned:
            told += ["Learned tonight:", *(f"  {harmless(said)}" for said in self.review.learned)]
            told.append("clinchbook words forget takes a word or a name out again.")
        self.terminal.tell("\n".join(told))
