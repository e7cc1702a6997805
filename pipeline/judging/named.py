"""Whether the horse of a visit is to be believed; a wrong one makes every fact of the visit wrong."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.judging.spoken_names import SpokenNames
from pipeline.judging.surroundings import Surroundings, bare
from pipeline.record import Flag, FlagKind, HorseMatch, Transcript, Visit, Word

# The best heard of a name's words below this is asked about. On spoken memos that this was chosen with, 13 of 77 known
# horses were, both wrong ones among them. Noisier takes since then had two more of 0.35 and 0.39.
_LOW = 0.45
# Of 27 visits of so few facts beside another in the same memo, 16 were of a horse that was only spoken of.
_HARDLY_ANYTHING, _MUCH = 2, 5  # facts


def doubt_of_horse(
    visit: Visit, visits: Sequence[Visit], transcript: Transcript, around: Surroundings, names: SpokenNames
) -> Flag | None:
    """A flag of kind HORSE where the horse may not be the one that is spoken of; None where the reader asks already."""
    if visit.horse is None or any(flag.kind is FlagKind.HORSE for flag in visit.flags):
        return None
    if len(visit.facts) <= _HARDLY_ANYTHING and any(len(other.facts) >= _MUCH for other in visits):
        return _flag(f"Hardly anything was read of {visit.horse}; was it there, or only spoken of?", None)
    return doubt_of_name(visit, transcript) or _other_horse(visit, transcript, around, names)


def _other_horse(visit: Visit, transcript: Transcript, around: Surroundings, names: SpokenNames) -> Flag | None:
    """A word that sounds like a horse of which nothing was read, or a count of more horses than were read."""
    if names.more_horses is not None:
        more = names.more_horses
        return _flag(
            f"“{more.capitalize()}” is said, and fewer horses were read; is all of this {visit.horse}'s?", None
        )
    said = names.alike or names.passed_over(visit.horse, transcript.heard)
    if said is None:
        return None
    span = (around.tokens[said.first].start, around.tokens[said.last - 1].end)
    quote = transcript.text[span[0] : span[1]]
    start, end = transcript.seconds_of(*span)
    whose = f"may be {said.horse}" if not said.sure else "is said too"
    reason = f"“{quote}” {whose}, of which nothing was read; is all of this {visit.horse}'s?"
    return Flag(kind=FlagKind.HORSE, reason=reason, quote=quote, start=start, end=end, span=span)


def doubt_of_name(visit: Visit, transcript: Transcript) -> Flag | None:
    """A flag of kind HORSE for a heard memo whose name is new, and so spelt by ear, or was hard to hear.

    None for typed text.
    """
    if not transcript.heard or visit.horse is None:
        return None
    names = set(visit.horse.lower().split())
    said = [word for word in transcript.words if bare(word).removesuffix("'s") in names]
    best = max(said, key=lambda word: word.probability, default=None)
    if visit.horse_match is HorseMatch.NEW:
        return _flag(f"A new horse, heard as “{visit.horse}”; is that its name?", best)
    if best is not None and all(word.heard is not None for word in said):
        return _flag(f"Heard “{best.heard}”, read as {visit.horse}; is that the horse?", best)
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
