"""What the second reader has to say of a fact in words, and what it takes the words to tell of besides."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence

from pipeline.judging.model import Care
from pipeline.judging.naming import the_feet
from pipeline.judging.second_reader import View
from pipeline.judging.unread import not_understood
from pipeline.record import FEET, Fact, Flag, Foot, Status, Transcript

# The chance of a foot of which nothing was read from which it is asked about, by care. DEVELOPERS.md, section 5, tells
# what the usual one costs and catches.
_ALSO = {Care.STRICT: 0.9, Care.USUAL: 0.95, Care.FAST: 0.98}
_IN_MIND = 0.2  # the least chance of a status that is worth a word
_MAY = {
    Status.PRESENT: "be there or done today",
    Status.ABSENT: "not be there",
    Status.SUSPECTED: "only be suspected",
    Status.RESOLVED: "have gone since",
    Status.HISTORY: "be from an earlier time",
    Status.PLANNED: "be for a later day",
}
_READ = {
    Status.PRESENT: "there or done today",
    Status.ABSENT: "not there",
    Status.SUSPECTED: "only suspected",
    Status.RESOLVED: "gone since",
    Status.HISTORY: "from an earlier time",
    Status.PLANNED: "for a later day",
}


def read_otherwise(fact: Fact, view: View | None) -> str | None:
    """What to ask of a fact of which the second reader has another status in mind than was read, if it has."""
    if view is None:
        return None
    other, chance = view.otherwise(fact.status)
    if chance < max(_IN_MIND, view.not_so):
        return None
    return f"By the words around it this may {_MAY[other]}; it was read as {_READ[fact.status]}. Which is it?"


def feet_left_out(
    asked: Sequence[Fact], read: Collection[Fact], views: Mapping[int, View], transcript: Transcript, care: Care
) -> Iterator[Flag]:
    """A question for each statement of ``asked`` whose words seem to tell of more feet.

    Not of a foot that has anything of the same slot among ``read``, the facts of the visit and what was read of other
    horses from the same words.
    """
    known = {(fact.foot, fact.slot) for fact in read}
    missed: dict[tuple[int, int], list[Foot]] = {}
    for fact in asked:
        if fact.foot is None or id(fact) not in views:
            continue
        for foot in FEET:
            if (foot, fact.slot) not in known and views[id(fact)].of_foot(foot) >= _ALSO[care]:
                known.add((foot, fact.slot))
                missed.setdefault(fact.span, []).append(foot)
    for span, feet in missed.items():
        reason = f"More may be meant here than the feet that were read: {the_feet(feet)}; was something missed?"
        yield not_understood(transcript, span, reason)
