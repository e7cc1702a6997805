"""What was not used, given up, or only looked out for: "instead of rim pads", "gave up on the wedges", "for heat"."""

from __future__ import annotations

from pipeline.reading.foot_groups import SETUP_SLOTS
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.record import Status

INSTEAD = Sayings("instead of", "rather than", "in place of", "in lieu of", "sooner than")
_GIVEN_UP = Sayings(
    "gave up on", "given up on", "giving up on", "stopped using", "quit using", "finished with", "done with",
    "no longer using", "ditched", "moved on from", "gone off", "went off", "dispensed with",
)  # fmt: skip
_WATCHING = Sayings(
    "keep an eye", "keeping an eye", "kept an eye", "watch", "watching", "monitor", "keep watching", "look out",
    "check", "keep checking", "eye kept",
)  # fmt: skip
_FEARED = Sayings(
    "afraid of", "feared", "fearing", "scared of", "worried about", "worried it was", "afraid it was",
    *(f"{reckoned} {it}" for reckoned in ("reckoned", "thought", "figured", "supposed", "assumed", "guessed", "said")
      for it in ("he 'd", "she 'd", "he had", "she had", "it was", "there was", "it was just", "we had", "we 'd")),
    "took it for",
)  # fmt: skip
SET_AGAINST = (INSTEAD, _GIVEN_UP, _WATCHING, _FEARED)
_BEGINS = frozenset().union(*(turns.first_words for turns in SET_AGAINST))
_TURNED_OUT = Sayings("turned out", "turns out", "was really", "is really", "ended up being", "proved to be")
_LIGHT = frozenset(
    {"a", "an", "the", "those", "his", "her", "any", "more", "signs", "of", "sign", "new", "fresh", "that"}
)
_COUNTED = frozenset({"nails", "shoe_size", "nail_size"})  # "started with six, finished with seven"
_LIGHT_OF_ALL = _LIGHT - {"of"}
_USED = SETUP_SLOTS | {"treatment"}


def set_against(talk: Talk, sentence: Sentence) -> None:
    """Drop, or put back in time, what such words speak of."""
    if sentence.lacks(_BEGINS):
        return
    for segment in sentence:
        for draft in [d for d in segment.drafts if not d.dropped and d.status is Status.PRESENT]:
            before = _words_before(talk, segment, draft, _LIGHT_OF_ALL)
            if before == segment.start:
                continue
            if (draft.slot in _USED or draft.slot == "finding") and _ends(talk, segment, before, INSTEAD):
                draft.drop("another in its place")
            elif draft.slot in _USED - _COUNTED and _ends(talk, segment, before, _GIVEN_UP):
                draft.status = Status.HISTORY
                draft.note("given up")
            elif draft.slot == "finding" and _looked_out_for(talk, segment, draft):
                draft.drop("only looked out for")
            elif draft.slot == "finding" and _ends(talk, segment, before, _FEARED):
                _feared(talk, sentence, draft)


def _words_before(talk: Talk, segment: Segment, draft: Draft, light: frozenset[str]) -> int:
    """The token behind the last word before the draft that is more than one of the ``light`` ones."""
    at = draft.start
    while at > segment.start and talk.words[at - 1] in light:
        at -= 1
    return at


def _ends(talk: Talk, segment: Segment, at: int, sayings: Sayings) -> bool:
    """Whether one of the sayings ends right before the token."""
    return any(i + len(form) == at for i in range(segment.start, at) if (form := sayings.at(talk.words, i)))


def _looked_out_for(talk: Talk, segment: Segment, draft: Draft) -> bool:
    """ "Keep an eye on the left front for heat", "watch that foot for any sign of thrush"."""
    at = _words_before(talk, segment, draft, _LIGHT)
    if talk.words[at - 1] != "for" or segment.past:
        return False
    return next(_WATCHING.within(talk.words, segment.start, at), None) is not None


def _feared(talk: Talk, sentence: list[Segment], draft: Draft) -> None:
    """ "I was afraid of an abscess, but it's only a bruise": what it turned out to be stands."""
    for later in [s for s in sentence if s.index > draft.segment.index]:
        words = talk.words[later.start : later.end]
        only = bool({"only", "just", "merely"} & set(words)) or _TURNED_OUT.said_in(words)
        if only and any(d.slot == "finding" and d.value != draft.value for d in later.drafts):
            draft.drop("only feared")
