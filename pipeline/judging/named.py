"""Whether the horse's name was heard well enough to be believed; a wrong horse makes every fact of a visit wrong."""

from __future__ import annotations

from pipeline.judging.surroundings import bare
from pipeline.record import Flag, FlagKind, HorseMatch, Transcript, Visit, Word

# The best heard of a name's words below this is asked about. On spoken memos that this was chosen with, 13 of 77 known
# horses were, both wrong ones among them.
_LOW = 0.35


def doubt_of_name(visit: Visit, transcript: Transcript) -> Flag | None:
    """A flag of kind HORSE for a heard memo whose name is new, and so spelt by ear, or was hard to hear.

    None where the reader asks already, and for typed text.
    """
    if not transcript.heard or visit.horse is None or any(flag.kind is FlagKind.HORSE for flag in visit.flags):
        return None
    names = set(visit.horse.lower().split())
    said = [word for word in transcript.words if bare(word).removesuffix("'s") in names]
    best = max(said, key=lambda word: word.probability, default=None)
    if visit.horse_match is HorseMatch.NEW:
        return _flag(f"A new horse, heard as “{visit.horse}”; is that its name?", best)
    if visit.horse_match is HorseMatch.KNOWN and best is not None and best.probability < _LOW:
        return _flag(f"The name “{visit.horse}” was hard to hear; is that the horse?", best)
    return None


def _flag(reason: str, word: Word | None) -> Flag:
    if word is None:
        return Flag(kind=FlagKind.HORSE, reason=reason)
    return Flag(
        kind=FlagKind.HORSE,
        reason=reason,
        quote=word.text.strip(" ,.?!"),
        start=word.start_s,
        end=word.end_s,
        span=(word.start, word.end),
    )
