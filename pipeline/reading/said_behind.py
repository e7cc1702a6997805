"""What is said behind the thing itself: "boots would do", "leather pads might help", "the bars haven't come"."""

from __future__ import annotations

from collections.abc import Callable

from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import NOT

_MODALS = ("would", "'d", "might", "may", "could", "should", "will", "'ll")
_HELPING = ("do", "suffice", "suit", "serve", "help", "work", "benefit", "sort", "fix", "be worth", "make sense")
_BEING = (
    "enough", "plenty", "my next", "the next", "next", "the answer", "the way", "an option", "better", "best", "ideal",
    "good", "nice", "useful", "handy", "needed", "on the cards", "what i 'd", "my choice", "the plan", "worth",
)  # fmt: skip
_WOULD_DO = Sayings(
    *(f"{modal} {verb}" for modal in _MODALS for verb in _HELPING),
    *(f"{modal} be {what}" for modal in ("would", "'d", "might", "may", "could") for what in _BEING),
    "is where we 're going", "is where i 'm going", "is where we 'll go", "is what 's next", "is my next",
    "is the next", "is next", "is on the cards", "are on the cards", "are next",
)  # fmt: skip
_TOO_MUCH = Sayings(
    *(f"{modal} be {what}" for modal in ("would", "'d") for what in (
        "overkill", "too", "wrong", "daft", "mad", "a waste", "a mistake", "pointless", "no good", "silly", "wasted",
        "no use", "far too",
    )),
)  # fmt: skip
_NOT_COME = Sayings(
    *(f"{have} {verb}" for have in ("have n't", "has n't", "have not", "has not")
      for verb in ("come", "arrived", "turned up", "got here", "landed", "been delivered", "shown up")),
    *(f"{did} {verb}" for did in ("did n't", "did not") for verb in ("come", "arrive", "turn up", "show up")),
    *(f"{are} {how}" for are in ("are", "is", "'re", "'s")
      for how in ("on order", "on back order", "still to come", "yet to come", "not in yet", "on the way", "coming")),
)  # fmt: skip
_COMING_ON = Sayings(
    *(f"{go} {when}" for go in ("going on", "going back on", "to go on", "to come", "to follow")
      for when in ("next", "tomorrow", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday",
                   "on monday", "on tuesday", "on wednesday", "on thursday", "on friday", "in a", "in two", "in the",
                   "then", "later", "after")),
)  # fmt: skip
_THINGS = PLANNABLE - ALWAYS_PLANNED
_CUT_IT = (
    ["cut", "it"], ["be", "enough"], ["shift", "it"], ["shift", "that"], ["touch", "it"], ["touch", "that"],
    ["do", "it"],
)  # fmt: skip
_ENOUGH = frozenset({"cut", "enough", "shift", "touch", "do"})
_WILL = frozenset({"wo", "will", "would", "is", "'s", "are", "'re", "was", "were", "did", "going", "gon", "na", "to"})
_BETWEEN = 7  # tokens between the thing and what is said of it: "a full pad on the near fore would help"
_TOLD_APART = frozenset({",", "with", "today", "and", "but", "that", "which", "it", "he", "she", "i", "we"})
SAID_BEHIND = _ENOUGH | {"would", "'d", "might", "may", "could", "should", "will", "'ll", "is", "are", "'s", "'re"} | {
    "have", "has", "did", "going", "to",
}  # fmt: skip


def say_behind(talk: Talk, segment: Segment, plan: Callable[[Draft], None]) -> None:
    """Plan, or drop, the things that what follows says are not on today."""
    own = [d for d in segment.drafts if d.slot in _THINGS]
    if not own:
        return
    for turns, to_come in ((_WOULD_DO, True), (_NOT_COME, True), (_COMING_ON, True), (_TOO_MUCH, False)):
        for at, _ in turns.within(talk.words, segment.start + 1, segment.end) if talk.tells(turns) else ():
            for draft in _said_of(talk, own, at):
                if to_come:
                    plan(draft)
                else:
                    draft.drop("said not to be right")
    _will_not_do(talk, segment, own)


def _said_of(talk: Talk, own: list[Draft], at: int) -> list[Draft]:
    """The things right before the token: none behind a comma, a joiner or another subject."""
    near = [d for d in own if d.end <= at and at - d.end <= _BETWEEN]
    return [d for d in near if _TOLD_APART.isdisjoint(talk.words[d.end : at])]


def _will_not_do(talk: Talk, segment: Segment, own: list[Draft]) -> None:
    """ "Purple spray isn't going to cut it", "a rim pad won't be enough": not what was used."""
    at = segment.end - 2
    if talk.words[at : segment.end] not in _CUT_IT:
        return
    for draft in [d for d in own if d.end <= at]:
        between = set(talk.words[draft.end : at])
        if between & NOT and between <= NOT | _WILL:  # not "sedated next time or I won't do it"
            draft.drop("said not to be enough")
