"""Talk of no trade in which only a word that the ear put in place of another would be a fact: nothing was told."""

from __future__ import annotations

from collections.abc import Iterable

from pipeline.record import Fact, Flag, FlagKind, MatchKind, Transcript, Visit

# Of 1,293 takes of farriers' memos the one that tells least has a fact in 14 words.
_WORDS_A_FACT = 40


def nothing_told(transcript: Transcript, visits: Iterable[Visit]) -> None:
    """Make questions of the facts of a long memo with hardly one, where each rests on words put in place of others."""
    visits = list(visits)
    facts = [fact for visit in visits for fact in visit.facts]
    if len(transcript.words) < _WORDS_A_FACT * max(1, len(facts)):
        return
    if any(fact.match is not MatchKind.VERIFIED for fact in facts):
        return
    for visit in visits:
        visit.flags.extend(_asked(transcript, fact) for fact in visit.facts)
        visit.facts.clear()


def _asked(transcript: Transcript, fact: Fact) -> Flag:
    words = transcript.words_of(*fact.span)
    heard = " ".join(
        dict.fromkeys(word.heard or word.text for word in words)
    )  # one wording may stand for several words
    return Flag(
        kind=FlagKind.NOT_UNDERSTOOD,
        reason=f"Heard “{heard}”, which may be “{fact.quote}”; nothing else of the trade was told, so it is left out.",
        quote=fact.quote,
        start=fact.start,
        end=fact.end,
        span=fact.span,
    )
