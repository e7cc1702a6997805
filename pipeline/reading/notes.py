"""What no slot takes: sentences kept word for word, and trade words that were heard but not understood.

In talk of no trade the few words that would be facts are asked about as well.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import chain

from pipeline.reading.leftovers import leftovers
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, MatchKind, Transcript, Visit


def notes_of(transcript: Transcript, talk: Talk, sentences: list[list[Segment]], told: Iterable[Draft]) -> str:
    """The sentences of one horse in which nothing, or not all, was taken into a fact."""
    read = {draft.segment for draft in told}
    kept = []
    for parts in sentences:
        if not all(_says_nothing(talk, segment) for segment in parts if segment not in read):
            start, end = talk.tokens.span(parts[0].start, parts[-1].end)
            kept.append(transcript.text[start:end].strip())
    return "\n".join(kept)


def _says_nothing(talk: Talk, segment: Segment) -> bool:
    """Names, greetings and bare places say nothing that a fact does not carry."""
    marks, little = talk.tokens.marks, talk.tokens.little
    large = [i for i in range(segment.start, segment.end) if not (marks[i] or little[i])]
    told = {i for m in segment.mentions if not m.readings.keys() <= {"not_facts"} for i in m.literal} if large else ()
    return all(i in told for i in large)


def not_understood(transcript: Transcript, talk: Talk, sentences: list[list[Segment]]) -> list[Flag]:
    """Flags for numbers beside a count or size word, and testers without an answer, that became no fact."""
    flags = [_flagged(transcript, talk, *left) for left in leftovers(talk, sentences)]
    testers = talk.having("tester_heads")
    for segment in chain.from_iterable(sentences) if testers or talk.unread else ():
        for start, end, what in talk.unread:
            weeks = any(d.slot == "next_visit_weeks" and d.start == start for d in segment.kept)  # "back in three"
            if segment.start <= start < segment.end and not weeks:
                flags.append(_flag(transcript, talk, segment, start, end, f"Heard {what}."))
        for head in segment.having("tester_heads") if testers else ():
            sentence = talk.sentence(segment.sentence)
            if not any(d.slot == "tester" for s in sentence for d in s.drafts):
                flags.append(
                    _flag(
                        transcript,
                        talk,
                        segment,
                        head.start,
                        head.end,
                        "The hoof testers are named, but no answer to them was understood.",
                    )
                )
    return flags


def _flag(transcript: Transcript, talk: Talk, segment: Segment, start: int, end: int, reason: str) -> Flag:
    return _flagged(transcript, talk, min(start, segment.start), max(end, segment.end), reason)


def _flagged(transcript: Transcript, talk: Talk, start: int, end: int, reason: str) -> Flag:
    span = talk.tokens.span(start, end)
    seconds = transcript.seconds_of(*span)
    quote = transcript.text[span[0] : span[1]]
    return Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=reason, quote=quote, start=seconds[0], end=seconds[1], span=span)


# Of 1,293 takes of farriers' memos the one that tells least has a fact in 14 words.
_WORDS_A_FACT = 40
_NOBODY_S = 80  # where no horse of the roster is named, a foot makes no work of so little: "it was on my left hand"
_BY_CHANCE = 160  # nor does a horse's name: a short one is heard in other people's talk


def nothing_told(transcript: Transcript, visits: Sequence[Visit]) -> None:
    """Make questions of the facts of heard talk with hardly one, unless a horse or a foot, or what was heard outright,
    says that they are some.
    """
    facts = [fact for visit in visits for fact in visit.facts]
    words = len(transcript.words)
    if not facts or words < _WORDS_A_FACT * len(facts):
        return
    known = words < _BY_CHANCE * len(facts) and any(visit.horse_match is HorseMatch.KNOWN for visit in visits)
    afoot = words < _NOBODY_S * len(facts) and any(fact.foot for fact in facts)
    if (known or afoot) and any(fact.match is not MatchKind.VERIFIED for fact in facts):
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
