"""What is asked where another horse's part may have begun: once of the visit, and of every fact in that part."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.judging.asked_place import asks_before, asks_from, of_fact_before, of_fact_from
from pipeline.judging.second_horse import Seam
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, Flag, FlagKind, Transcript, Visit

_QUOTED = 5  # words
_MOST_SIGNS = 3


def question(seam: Seam, visit: Visit, transcript: Transcript, around: Surroundings) -> Flag:
    """A flag of kind HORSE with the place and what speaks for it.

    The words of the place stand in the reason: as its quote they would be taken for a name that was heard.
    """
    signs = _listed(seam.signs[:_MOST_SIGNS])
    if seam.unnamed:
        reason = asks_before(visit.horse, signs)
        place = 0, around.tokens[max(0, seam.last - 1)].end
    else:
        reason = asks_from(_words(seam, transcript, around), signs)
        place = around.tokens[seam.first].start, around.tokens[around.sentence_of(seam.first)[1] - 1].end
    start, end = transcript.seconds_of(*place)
    return Flag(kind=FlagKind.HORSE, reason=reason, start=start, end=end, span=place)


def whose(fact: Fact, visit: Visit, seams: Sequence[Seam], transcript: Transcript, around: Surroundings) -> str | None:
    """Why it is asked whose a fact is; None for a fact that is in none of the parts in question."""
    at = around.place(fact.span)[0]
    seam = next((one for one in seams if one.first <= at < one.last), None)
    if seam is None:
        return None
    if seam.unnamed:
        return of_fact_before(visit.horse)
    return of_fact_from(_words(seam, transcript, around))


def _words(seam: Seam, transcript: Transcript, around: Surroundings) -> str:
    """The first words of the place, as they are written."""
    end = around.sentence_of(seam.first)[1]
    words = [token for token in around.tokens[seam.first : end] if token.text[0].isalnum()][:_QUOTED]
    return transcript.text[words[0].start : words[-1].end] if words else ""


def _listed(signs: Sequence[str]) -> str:
    return " and ".join(filter(None, [", ".join(signs[:-1]), signs[-1]])) if signs else ""
