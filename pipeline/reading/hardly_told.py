"""Talk of no trade, out of which a few words would be facts: they are asked about, and nothing was told."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.record import Fact, Flag, FlagKind, HorseMatch, MatchKind, Transcript, Visit

# Of 1,293 takes of farriers' memos the one that tells least has a fact in 14 words.
_WORDS_A_FACT = 40


def nothing_told(transcript: Transcript, visits: Sequence[Visit]) -> None:
    """Make questions of the facts of heard talk with hardly one, unless a horse or a foot, or what was heard outright,
    says that they are some.
    """
    facts = [fact for visit in visits for fact in visit.facts]
    if not facts or len(transcript.words) < _WORDS_A_FACT * len(facts):
        return
    of_a_horse = any(visit.horse_match is HorseMatch.KNOWN for visit in visits) or any(fact.foot for fact in facts)
    if of_a_horse and any(fact.match is not MatchKind.VERIFIED for fact in facts):
        return
    for visit in visits:
        visit.flags.extend(_asked(transcript, fact) for fact in visit.facts)
        visit.facts.clear()


def _asked(transcript: Transcript, fact: Fact) -> Flag:
    # what one wording stands for is kept with each of its words
    heard = dict.fromkeys(word.heard for word in transcript.words_of(*fact.span) if word.heard)
    said = f"Heard “{' '.join(heard)}”, which may be “{fact.quote}”" if heard else f"Heard “{fact.quote}”"
    return Flag(
        kind=FlagKind.NOT_UNDERSTOOD,
        reason=f"{said}; hardly anything else of the trade was told, so it is left out.",
        quote=fact.quote,
        start=fact.start,
        end=fact.end,
        span=fact.span,
    )
