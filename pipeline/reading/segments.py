"""Cutting a memo into sentences and segments, and marking which segments start a clause of their own."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Segment, Talk, by_start
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

_MARKS = frozenset({",", ";", ":", "-", "...", ".."})
_JOINERS = frozenset(
    {"and", "but", "so", "then", "plus", "while", "though", "although", "except", "because", "cause", "&"}
)
_COMPARING = frozenset({"where", "whereas"})
_AT_THE = frozenset({"at", "the", "in"})
_TO_A_FOOT = _AT_THE | {"on", "of", "his", "her"}
_TO_THE_NEXT = 3  # tokens
_ENDS: tuple[list[str], ...] = (["."], ["?"], ["!"], [])
AGAINST = frozenset({"against", "versus", "vs", "compared"})
_MAY_CUT = SENTENCE_ENDS | _MARKS | _JOINERS | _COMPARING | AGAINST
_OPENS_A_CLAUSE = frozenset({"start", "but", ", but", "so", ", so"})
_HAS = frozenset({"has", "have", "had", "got", "is", "'s", "are", "takes", "took", "gets", "carries", "was", "were"})
_WEAK = frozenset({"fillers", "totals", "horse_cues", "same"})


def split_segments(talk: Talk) -> None:
    """Fill ``talk.segments``; each mention goes to the segment that its first token lies in."""
    claimed = _claimed(talk.mentions, talk.words) | _degrees_between(talk)
    sentence, start, delimiter = 0, 0, "start"
    pieces: list[tuple[int, int, int, str]] = []
    words = [*talk.words, "."]
    for index in [i for i, word in enumerate(words) if word in _MAY_CUT]:
        word = words[index]
        ends = word in SENTENCE_ENDS
        joins = word in _JOINERS or (word in _COMPARING and _a_foot_has(talk, index + 1))
        joins = joins or (word in AGAINST and _numbers_beside(talk, index))
        cuts = ends or (index not in claimed and (word in _MARKS or joins))
        if not cuts:
            continue
        if index > start:
            pieces.append((sentence, start, index, delimiter))
            delimiter = ""
        start = index + 1
        if ends:
            sentence, delimiter = sentence + 1, "start"
        elif delimiter != "start":
            mark = "," if word in _MARKS else word
            delimiter = _join(delimiter, mark)
    talk.segments = [Segment(i, s, a, b, d or ",") for i, (s, a, b, d) in enumerate(pieces)]
    _deal_mentions(talk)
    _drop_fillers(talk)
    for segment in talk.segments:
        _mark_clause(talk, segment)


def _a_foot_has(talk: Talk, at: int) -> bool:
    """ "Five nails where the right front has six": what another foot has, told beside it."""
    at += talk.words[at : at + 1] == ["the"]
    foot = talk.mention_starting(at)
    return (
        foot is not None and foot.get("feet") is not None and not _HAS.isdisjoint(talk.words[foot.end : foot.end + 1])
    )


def _numbers_beside(talk: Talk, at: int) -> bool:
    """ "Sixty millimetres against forty two on the near fore": two numbers, and the foot of each beside its own."""
    after = at + 1 + (talk.words[at] == "compared" and talk.words[at + 1 : at + 2] in (["to"], ["with"]))
    after += talk.words[after : after + 1] in (["a"], ["an"])
    before, behind = talk.mention_ending(at - (talk.words[at - 1] == "as")), talk.mention_starting(after)
    if before is not None and before.number is None and before.is_any(("measures", "zones")):
        led = before.start  # "fifty degrees at the toe against fifty two on the near"
        while talk.words[led - 1] in _AT_THE:
            led -= 1
        before = talk.mention_ending(led)
    counted = before is not None and (before.number is not None or before.get("units") is not None)
    return counted and behind is not None and behind.number is not None


def _join(before: str, mark: str) -> str:
    if not before:
        return mark
    if mark == ",":
        return before
    return f", {mark}" if before.startswith(",") else mark


def _claimed(mentions: list[Mention], talk_words: list[str]) -> set[int]:
    """Tokens inside a phrase, where "and" or a comma joins nothing."""
    inside = {i for m in mentions if not m.dropped and not _WEAK.issuperset(m.readings) for i in m.literal}
    for mention in mentions:
        part = mention.number is not None and mention.number.fraction
        if part and talk_words[mention.start - 2 : mention.start - 1] in (["inch"], ["inches"]):
            inside.add(mention.start - 1)  # "an inch and three quarters"
    return inside


def _degrees_between(talk: Talk) -> set[int]:
    """ "Flare in front and a little thrush, mild, in the right hind frog": the commas around the degree.

    Not so "a corn, mild, in the right front a bruise".
    """
    found: set[int] = set()
    words = talk.words
    for degree in talk.having("severities"):
        at, start = degree.start - 1, degree.end + 1
        finding = talk.mention_ending(at)
        if words[at] != "," or words[degree.end : start] != [","] or finding is None or not finding.get("findings"):
            continue
        led, end = words[start : start + 1] in (["in"], ["at"], ["on"]), _past_the_foot(talk, start)
        behind = talk.starting_in(end + 1, end + 1 + _TO_THE_NEXT)
        joined = "and" in words[end : end + 2] or not any(m.is_any(("findings", "severities")) for m in behind)
        closed = words[end : end + 1] in _ENDS or (led and words[end] in _MAY_CUT and joined)
        if end > start and closed and (led or "and" in words[max(0, finding.start - _TO_THE_NEXT) : at]):
            found |= {at, degree.end}
    return found


def _past_the_foot(talk: Talk, at: int) -> int:
    """The token behind "in the right hind frog", "at the toe of the near fore"; ``at`` where no foot is."""
    end, foot = at, False
    while end < len(talk.words):
        place = talk.mention_starting(end)
        if place is not None and place.is_any(("feet", "zones")):
            foot, end = foot or place.get("feet") is not None, place.end
        elif talk.words[end] in _TO_A_FOOT:
            end += 1
        else:
            break
    return end if foot else at


def _deal_mentions(talk: Talk) -> None:
    holder = {index: segment for segment in talk.segments for index in range(segment.start, segment.end)}
    for mention in talk.mentions:
        # "And one on": the joiner that opens the mention belongs to no segment.
        segment = holder.get(mention.start)
        segment = segment or next((holder[index] for index in mention.literal if index in holder), None)
        if segment is None:
            continue
        segment.mentions.append(mention)
        for name in mention.readings:
            segment.named.setdefault(name, []).append(mention)


def _drop_fillers(talk: Talk) -> None:
    """A segment of nothing but "uh" or "you know" is no segment; the next one keeps the stronger delimiter."""
    if not talk.having("fillers"):
        return
    kept: list[Segment] = []
    carried = ""
    for segment in talk.segments:
        filler = {i for m in segment.having("fillers") for i in m.literal}
        if filler and filler.issuperset(range(segment.start, segment.end)):
            if segment.delimiter not in ("", ","):
                carried = carried or segment.delimiter
            continue
        if carried and segment.delimiter in ("", ","):
            segment.delimiter = carried
        carried = ""
        segment.index = len(kept)
        kept.append(segment)
    talk.segments = kept


def _mark_clause(talk: Talk, segment: Segment) -> None:
    roles = talk.roles[segment.start : segment.end]
    segment.past = "past" in roles
    segment.present = "present" in roles or ("times" in segment.named and bool(segment.having("times", "today")))
    verb = segment.past or segment.present or "action" in roles
    segment.own_clause = segment.delimiter in _OPENS_A_CLAUSE or verb or "subject" in roles[:3]


MARKS = SENTENCE_ENDS | {","}
WEEKLY = ("week", "fortnight", "month")
TRADE = frozenset({*CLASS_SLOTS, "feet", "measures", "tester_heads", "pulse_heads", "nail_line_heads"})


class Clauses:
    """One memo's words, and its mentions by their first token; a full stop may be put for a comma."""

    def __init__(self, talk: Talk) -> None:
        """Hold the words themselves, so that a mark that is changed counts at once."""
        self.talk, self.words = talk, talk.words
        standing = [mention for mention in talk.mentions if not mention.dropped]
        self.starting = talk.starting() if len(standing) == len(talk.mentions) else by_start(standing)

    def back(self, at: int, marks: frozenset[str]) -> int:
        """The first token behind the last of the marks before the token."""
        while at and self.words[at - 1] not in marks:
            at -= 1
        return at

    def ahead(self, at: int, marks: frozenset[str]) -> int:
        """The next of the marks from the token on, or the end."""
        last = len(self.words)
        while at < last and self.words[at] not in marks:
            at += 1
        return at

    def told(self, start: int, end: int) -> bool:
        """Whether the tokens say anything of the trade, or a number."""
        return any(m.is_any(TRADE) or m.number for at in range(start, end) for m in self.starting.get(at, ()))

    def traded(self, start: int, end: int) -> bool:
        """Whether the tokens say anything of the trade."""
        return any(m.is_any(TRADE) for at in range(start, end) for m in self.starting.get(at, ()))

    def weekly(self, start: int, end: int) -> bool:
        """Whether the tokens count weeks and say nothing else of the trade."""
        told = [m for at in range(start, end) for m in self.starting.get(at, ())]
        other = [m for m in told if m.is_any(TRADE) and m.get("measures") != "weeks"]
        return any(m.get("units") in WEEKLY for m in told) and not other
