"""Sentences of a heard memo that gave no fact but look as if they should have: a lone number, a word hardly heard.

On spoken memos that the thresholds were chosen with, 23 of 57 of these flags stood on a fact that had been missed.

And speech or text in another language, out of which a recogniser and a reader may still make facts.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from pipeline.hearing.language import NOT_ENGLISH
from pipeline.judging.surroundings import Surroundings, bare
from pipeline.record import Flag, FlagKind, Transcript, Visit

_LOW = 0.5  # probability of a word that was hardly heard
_SHORT = 5  # words of a sentence in which a number stands nearly alone
_NUMBERS = frozenset(
  [
    "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
    "twos", "threes", "fours", "fives", "sixes", "sevens", "eights", "tens", "aught", "ought", "nought",
  ]
)  # fmt: skip
# "All four", "three of them".
_FEET_BESIDE = frozenset({"all", "other", "either", "both", "of", "feet", "foot"})


def unread_sentences(
    transcript: Transcript, around: Surroundings, visits: Sequence[Visit], flags: Sequence[Flag] = ()
) -> list[tuple[int, Flag]]:
    """Flags with the number of the visit that each belongs to; none for typed text."""
    if not transcript.heard:
        return []
    told = [fact.span for visit in visits for fact in visit.facts]
    told += [flag.span for flag in (*flags, *(f for visit in visits for f in visit.flags))]
    names = {word for visit in visits for word in (visit.horse or "").lower().split()}
    found, place = [], 0
    while place < len(around.tokens):
        first, last = around.sentence_of(place)
        place = last
        span = (around.tokens[first].start, around.tokens[last - 1].end)
        if any(start < span[1] and end > span[0] for start, end in told if end > start):
            continue
        reason = _lone_number(around, first, last) or _hardly_heard(transcript, around, first, last, names)
        if reason:
            found.append((visit_at(visits, span[0]), not_understood(transcript, span, reason)))
    return found


def _lone_number(around: Surroundings, first: int, last: int) -> str | None:
    words = [token.text for token in around.tokens[first:last] if token.text[0].isalnum()]
    number = next((word for word in words if word in _NUMBERS or word[0].isdigit()), None)
    if number is None or len(words) > _SHORT or _FEET_BESIDE & set(words):
        return None
    return f"Heard the number “{number}”, but not what it counts; please listen."


def _hardly_heard(
    transcript: Transcript, around: Surroundings, first: int, last: int, names: Iterable[str]
) -> str | None:
    span = (around.tokens[first].start, around.tokens[last - 1].end)
    unknown = set(around.unknown(first, last)) - set(names)
    for word in transcript.words_of(*span):
        if word.probability < _LOW and bare(word) in unknown:
            return f"“{bare(word)}” was hard to hear, and nothing was read from these words; please listen."
    return None


def visit_at(visits: Sequence[Visit], place: int) -> int:
    """The visit whose facts were told last before ``place``; the first when none was."""
    before = [(fact.span[0], number) for number, visit in enumerate(visits) for fact in visit.facts]
    return max((one for one in before if one[0] <= place), default=(0, 0))[1]


def not_understood(transcript: Transcript, span: tuple[int, int], reason: str) -> Flag:
    """A flag of kind NOT_UNDERSTOOD on these characters, with their seconds."""
    start, end = transcript.seconds_of(*span)
    quote = transcript.text[span[0] : span[1]]
    return Flag(kind=FlagKind.NOT_UNDERSTOOD, reason=reason, quote=quote, start=start, end=end, span=span)


# Words that neither the trade nor common speech has: of 486 memos in English the most was 0.18 of them, of 19 texts in
# ten other languages the least was 0.8.
_MOST_UNKNOWN = 0.5
_FEWEST = 8  # words; of fewer the share says little

ASKED = "This may be in another language than English; is it right?"

Span = tuple[int, int]


def overlaps(span: Span, others: Iterable[Span]) -> bool:
    """Whether a stretch of text shares a character with any of the others."""
    return any(start < span[1] and span[0] < end for start, end in others)


def foreign(transcript: Transcript, around: Surroundings, flags: Sequence[Flag]) -> tuple[list[Span], list[Flag]]:
    """The stretches of text that are not English, and a flag where hearing has not told so already (``flags``)."""
    heard = [flag.span for flag in flags if flag.reason == NOT_ENGLISH]
    if heard:
        return heard, []
    words = [token.text for token in around.tokens if token.text[0].isalpha()]
    unknown = around.unknown(0, len(around.tokens))
    if len(words) < _FEWEST or len(unknown) <= _MOST_UNKNOWN * len(words):
        return [], []
    span = (0, len(transcript.text))
    start, end = transcript.seconds_of(*span)
    flag = Flag(
        kind=FlagKind.NOT_UNDERSTOOD, reason=NOT_ENGLISH, quote=transcript.text, start=start, end=end, span=span
    )
    return [span], [flag]
