"""What is asked because the second reader takes a fact otherwise, or takes its words to tell of a foot more.

It never changes a fact: of what it doubts about half is wrong, and it does not follow who takes something back.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from pipeline.judging.model import Care
from pipeline.judging.naming import the_feet
from pipeline.judging.second_reader import FEET, View
from pipeline.judging.unread import not_understood
from pipeline.record import Fact, Flag, Foot, Status, Transcript

# The chance of another status from which it is asked about, that of a foot below which, and that of a foot of which
# nothing was read from which: by care. DEVELOPERS.md, section 7, tells what each costs and catches.
_OTHERWISE = {Care.STRICT: 0.5, Care.USUAL: 0.6, Care.FAST: 0.8}
_HARDLY = {Care.STRICT: 0.03, Care.USUAL: 0.01, Care.FAST: 0.003}
_ALSO = {Care.STRICT: 0.9, Care.USUAL: 0.95, Care.FAST: 0.98}
_MEANT = {
    Status.PRESENT: "there or done today",
    Status.ABSENT: "not there",
    Status.SUSPECTED: "only suspected",
    Status.RESOLVED: "gone since",
    Status.HISTORY: "of an earlier time",
    Status.PLANNED: "for a later day",
}


def read_otherwise(fact: Fact, view: View | None, care: Care) -> list[str]:
    """The reasons to ask about a fact that the second reader takes otherwise."""
    if view is None:
        return []
    other, chance = view.otherwise(fact.status)
    found = []
    if chance >= _OTHERWISE[care]:
        told = f"By the words around it this may be {_MEANT[other]}; it was read as {_MEANT[fact.status]}. Which is it?"
        found.append(told)
    if fact.foot is not None and view.of_foot(fact.foot) < _HARDLY[care]:
        found.append("The words hardly seem to tell of this foot; is it the right one?")
    return found


def feet_left_out(
    facts: Sequence[Fact], views: Mapping[int, View], transcript: Transcript, care: Care
) -> Iterator[Flag]:
    """A question for each statement whose words seem to tell of more feet, of which nothing of the kind was read."""
    read = {(fact.foot, fact.slot) for fact in facts}
    missed: dict[tuple[int, int], list[Foot]] = {}
    for fact in (fact for fact in facts if fact.foot is not None and id(fact) in views):
        for foot in FEET:
            if foot and (foot, fact.slot) not in read and views[id(fact)].of_foot(foot) >= _ALSO[care]:
                read.add((foot, fact.slot))
                missed.setdefault(fact.span, []).append(foot)
    for span, feet in missed.items():
        reason = f"More may be meant here than the feet that were read: {the_feet(feet)}; was something missed?"
        yield not_understood(transcript, span, reason)
