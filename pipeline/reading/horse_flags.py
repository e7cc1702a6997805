"""Questions about the horse: a name that was misheard, that several horses bear, that sounds like another, or none."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from pipeline.reading.opening import may_be_beside, of_whom_nothing
from pipeline.reading.roster_names import HorseTalk, NamedHorse
from pipeline.reading.sounds import likeness
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import form_tokens
from pipeline.reading.whose import of_two
from pipeline.record import Flag, FlagKind, HorseMatch, RosterHorse, Transcript

# Of 50 heard names with another so near on the roster and not in the memo, 5 were the other one (Zephyr for Zephyrine,
# Bertie for Birdie); of 33 with one at 0.7 to 0.79, 2. Dakar and Dakota are further apart.
_MISTAKEN_FOR = 0.79
_NOT = frozenset({"not"})
_ONE_BREATH = 6  # tokens from a name to the "not" before the same name


def horse_flags(
    transcript: Transcript, talk: Talk, horse: NamedHorse, roster: Sequence[RosterHorse], found: HorseTalk
) -> list[Flag]:
    """At most one flag of kind HORSE, on the words of the name; ``found`` are all horses of the memo."""
    start, end = horse.tokens
    span = talk.tokens.span(start, end) if end > start else (0, 0)
    quote = transcript.text[span[0] : span[1]]
    reason = _reason(transcript, horse, span, quote) if horse.match is not HorseMatch.NEW or horse.guessed else None
    if horse.namesakes:
        reason = _which_of(horse, roster)
    if reason is None and _set_aside(talk, horse):
        reason = f"“{horse.name}” is said to be the horse and not to be it; which horse is it?"
    if reason is None and transcript.heard and horse.match is HorseMatch.KNOWN:
        reason = _sounds_like(horse, roster, found.horses)
    if reason is None and _nothing_told(talk, horse, found):
        reason = f"Nothing is told of {horse.name} at its name; is what follows told of it, or of the horse before?"
    if reason is None and any(found.horses[s.horse] is horse and may_be_beside(talk, s) for s in found.spans):
        reason = f"{horse.name} is set beside the horse before; is what follows told of it, or of the horse before?"
    kind = _one_of_two(talk, horse, found) if reason is None else None
    if kind is not None:
        span = talk.tokens.span(*kind)
        quote = transcript.text[span[0] : span[1]]
        reason = f"“{quote}” may be said of more than one horse; is this told of {horse.name}?"
    if reason is None:
        return []
    seconds = transcript.seconds_of(*span)
    return [Flag(kind=FlagKind.HORSE, reason=reason, quote=quote, start=seconds[0], end=seconds[1], span=span)]


def _reason(transcript: Transcript, horse: NamedHorse, span: tuple[int, int], quote: str) -> str | None:
    instead = [word.heard for word in transcript.words_of(*span) if word.heard is not None]
    if horse.guessed:
        return (
            f"No horse is named where the memo begins; taken for {horse.name}, who is named later; is that the horse?"
        )
    if horse.match is HorseMatch.KNOWN:
        sure = horse.likeness > 0.999 and not instead
        return (
            None if sure else f"Heard “{instead[0] if instead else quote}”, taken for {horse.name}; is that the horse?"
        )
    if horse.name:
        return f"“{quote}” is not on the roster and was not called a new horse; which horse is it?"
    return "No horse was named; which horse is it?"


def _which_of(horse: NamedHorse, roster: Sequence[RosterHorse]) -> str:
    """The question which of several horses of one name is meant, with their places as far as they are known."""
    name = str(horse.name).lower()
    places = [other.place for other in roster if other.name.lower() == name and other.place]
    where = f" (at {', at '.join(places)})" if places else ""
    return f"Several horses are called {horse.name}{where}, and no place was said; which one is it?"


def _one_of_two(talk: Talk, horse: NamedHorse, found: HorseTalk) -> tuple[int, int] | None:
    """Where "the mare" was taken for this horse though two of the memo are mares."""
    for start, end in of_two(talk, found.spans) if len(found.horses) > 1 else ():
        segment = next((s for s in talk.segments if s.start <= start < s.end), None)
        if segment is not None and found.horses[max(segment.horse, 0)] is horse:
            return start, end
    return None


def _nothing_told(talk: Talk, horse: NamedHorse, found: HorseTalk) -> bool:
    """ "Tally, reset. Buck was asleep. Corn in the near fore." """
    spans = [span for span in found.spans if found.horses[span.horse] is horse]
    later = bool(spans) and spans[0].start > found.spans[0].start and spans[0].role == "opens"
    return later and of_whom_nothing(talk, spans[0]) and not any(span.role == "opens" for span in spans[1:])


def _set_aside(talk: Talk, horse: NamedHorse) -> bool:
    """ "I'm at Selena now, not Selena": one of two names that sound alike was heard as the other."""
    if horse.name is None or not talk.says(_NOT):
        return False
    name = form_tokens(horse.name.lower())
    size = len(name)
    denied = [at + 1 for at in talk.where(_NOT) if talk.words[at + 1 : at + 1 + size] == name]
    named = [at for at in range(len(talk.words)) if talk.words[at : at + size] == name] if denied else ()
    return any(0 < at - 1 - other <= _ONE_BREATH for at in denied for other in named)


def _sounds_like(horse: NamedHorse, roster: Sequence[RosterHorse], named: Iterable[NamedHorse]) -> str | None:
    """ "Bramwell" where the roster has a Branwell too, of whom the memo does not speak as well."""
    spoken_of = {other.name for other in named}
    others = [other.name for other in roster if other.name not in spoken_of]
    near = max(others, key=lambda name: likeness(name, str(horse.name)), default="")
    if likeness(near, str(horse.name)) < _MISTAKEN_FOR:
        return None
    return f"{horse.name} and {near} sound alike; is it {horse.name}?"
