"""How far the reviewer is tonight: which questions wait, which were skipped, how many were answered."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date

from pipeline.errors import NotFoundError
from pipeline.using.review import Done, Item, Review
from pipeline.using.review.learning import Lesson


@dataclass
class Evening:
    """The order of the questions is made when the review starts, and looked at again when it has come to its end.

    ``day`` is the day that is reviewed, None for all days. ``notice`` and ``offer`` are what the next page says once.
    """

    day: date | None = None
    started: bool = False
    waiting: list[str] = field(default_factory=list)
    skipped: list[str] = field(default_factory=list)
    answered: int = 0
    notice: str | None = None
    offer: tuple[str, Lesson] | None = None
    _answers: list[tuple[str, bool]] = field(default_factory=list)

    def start(self, review: Review, day: date | None) -> None:
        """Begin anew with all open questions of a day, or of all days."""
        self.day, self.started = day, True
        self.skipped.clear()
        self._answers.clear()
        self.answered = 0
        self.offer = None
        self._look_again(review)

    def next(self, review: Review) -> Item | None:
        """The next open question; None when only skipped ones are left, or none at all.

        A review that nobody has started yet is that of the newest day.
        """
        if not self.started:
            newest = review.store.days(1)
            self.start(review, newest[0].day if newest else None)
        item = self._first_open(review)
        if item is None:
            # Another reviewer, or an answer, may have opened a question since.
            self._look_again(review)
            item = self._first_open(review)
        return item

    def place(self, key: str) -> tuple[int, int]:
        """Where a question stands: (7, 19) is the seventh of nineteen."""
        done = self.answered + len(self.skipped)
        waiting = len(self.waiting) + (key not in self.waiting)
        return done + 1, done + waiting

    def skip(self, key: str) -> None:
        """Leave a question for later tonight."""
        if key in self.waiting:
            self.waiting.remove(key)
        if key not in self.skipped:
            self.skipped.append(key)

    def ask_skipped(self) -> None:
        """Ask what was skipped after all."""
        self.waiting += self.skipped
        self.skipped.clear()

    def settle(self, key: str, done: Done) -> None:
        """Note an answer and what the next page says of it."""
        self._answers.append((key, done.answered))
        if done.answered:
            self.answered += 1
            for keys in (self.waiting, self.skipped):
                if key in keys:
                    keys.remove(key)
        learned = f" Learned: {done.learned}" if done.learned else ""
        self.notice = f"{done.says}{learned}"
        self.offer = (done.offer, done.lesson) if done.lesson and done.offer else None

    def taken_back(self, review: Review, done: Done) -> None:
        """Note that the last answer was taken back; its question comes first."""
        key, answered = self._answers.pop() if self._answers else ("", False)
        self.answered -= answered
        self._look_again(review)
        if key in self.waiting:
            self.waiting.remove(key)
            self.waiting.insert(0, key)
        self.notice, self.offer = done.says, None

    def say_once(self) -> str | None:
        """What the next page is to say; said once."""
        notice, self.notice = self.notice, None
        return notice

    def _first_open(self, review: Review) -> Item | None:
        while self.waiting:
            try:
                return review.item(self.waiting[0])
            except NotFoundError:
                self.waiting.pop(0)
        return None

    def _look_again(self, review: Review) -> None:
        self.waiting = [key for key in review.open_keys(self.day) if key not in self.skipped]
