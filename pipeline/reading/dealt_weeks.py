"""Weeks dealt out among horses: "eight weeks is Tally, six is Buck"; "Tally they wanted ten, I'm saying eight".

Read only in sentences that hold nothing but names, numbers and the little words of booking, so that no number of
anything else is taken; there every number goes to the horse, or the horses, that its own clause gives it to.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise

from pipeline.reading.all_but import is_left_out
from pipeline.reading.mentions import Mention
from pipeline.reading.roster_names import HorseTalk
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.times import WEEKS_PER_UNIT
from pipeline.reading.together import here_today
from pipeline.reading.unnamed_weeks import HE_AND_SHE, described, weeks_put_right
from pipeline.record import Status, value_problem
from pipeline.vocabulary import CLASS_SLOTS

_LIGHT = frozenset([
    "week", "weeks", "fortnight", "month", "for", "on", "is", "in", "at", "'s", "goes", "go", "gets", "get",
    "getting", "can", "could", "have", "has", "keep", "put", "give", "giving", "her", "him", "them", "and", "but",
    "no", "not", "actually", "so", "make", "it", "that", "call", "say", "saying", "i", "'m", "'ll", "'d", "we",
    "they", "the", "a", "an", "to", "wanted", "asked", "want", "wants", "asking", "hoping", "liked", "said", "told",
    "all", "due", "again", "next", "see", "book", "booked", "down", "short", "hop", "stretch", "out", "about", "let",
    "same", "too", "also", "well", "then", "only", "just", "hang", "hold", "wait", "sorry", "now", "she", "he", "'re",
    "owner", "owners", "after", "comes", "come", "going", "will", "be", "been", "us", "you", "okay", "right", "oh",
    "uh", "um", "er", "until", "every", "cycle", "with", "as", "quick", "turn", "back", "visit", "up", "this", "one",
    "mark", "write", "though", "was", "should", "rather", "their", "his", "its", "of", "by", ",", "likewise",
    "together", "along", "early", "long", "soon", "when", "mean", "meant", "what", "did", "promise", "promised", "tell",
    "think", "thinking", "guess", "weeker", "weekers", "'ve", "figured", "reckoned", "planned", "may", "might", "were",
    "are", "or", "whenever", "list",
])  # fmt: skip
_ASKED = frozenset({"wanted", "asked", "want", "wants", "asking", "hoping", "after", "liked"})
_AGREED = frozenset(
    {"i", "'m", "told", "said", "saying", "getting", "gets", "get", "giving", "made", "make", "call", "no"}
)
_SAME = frozenset({"same", "likewise", "together"})
_TOO = frozenset({"too", "also", "well"})
_JOINING = _TOO | {"and", "as"}
_WITH = (("goes", "with"), ("go", "with"), ("comes", "with"), ("goes", "when"), ("go", "when"), ("along", "with"))
_GIVING = frozenset({"for", "on", "is", "with"})
_BEFORE_NAME = _GIVING | {"week", "weeks", "month", "months", "fortnight", "to", "'s", "the"}
_PUT_RIGHT = frozenset({"actually", "no", "wait", "sorry", "hang", "hold", "well", "oh"})
_NAMING = (("make", "it"), ("make", "that"), ("call", "it"), ("i", "say"), ("'m", "saying"), ("better", "say"))
_MEASURED = frozenset({*CLASS_SLOTS, "measures"})
_OTHER_TALK = frozenset({*CLASS_SLOTS, "feet", "zones", "asides", "times"})
_SETTLED_BACK = 4
_ARE = frozenset({"are", "'re"})
_MOST = 26
_TWO = 2
_Named = tuple[int, int, tuple[int, ...]]  # token span, and the horses that it names


@dataclass
class _Number:
    """Weeks said at the tokens ``[start, end)``."""

    start: int
    end: int
    weeks: Fraction
    unit: bool


@dataclass
class _Clause:
    """A clause of booking: the horses named at their tokens, and the weeks; what stood before it is ``led_by``."""

    start: int
    end: int
    led_by: str
    horses: list[_Named] = field(default_factory=list)
    numbers: list[_Number] = field(default_factory=list)

    def names(self) -> tuple[int, ...]:
        """All horses of the clause."""
        return tuple(dict.fromkeys(h for _, _, horses in self.horses for h in horses))


@dataclass
class _Dealt:
    number: _Number
    horses: tuple[int, ...]


def deal_weeks(talk: Talk, found: HorseTalk) -> None:
    """Give the weeks of every run of booking sentences to their horses, and put right what is said right behind."""
    run: list[list[Segment]] = []
    for sentence in talk.sentences():
        if _pure(talk, sentence, found, _SAME | _TOO if run else _SAME):
            run.append(sentence)
            continue
        if not run:
            continue
        put_right = _put_right(talk, sentence)
        last = _deal_run(talk, run, found, put_right is not None and put_right.unit)
        run = []
        if last is not None and put_right is not None:
            _give_instead(talk, sentence, found, _Dealt(put_right, last.horses))
    _deal_run(talk, run, found, False)


def _pure(talk: Talk, sentence: list[Segment], found: HorseTalk, alike: frozenset[str]) -> bool:
    """Whether the sentence is only of names and weeks, and says any, or that they are as before."""
    start, end = sentence[0].start, sentence[-1].end
    if any(d.slot != "next_visit_weeks" for s in sentence for d in s.drafts):
        return False
    said = talk.starting_in(start, end)
    numbers = any(m.number is not None for m in said)
    if not numbers and alike.isdisjoint(talk.words[start:end]):
        return False
    held = {i for s in found.spans for i in range(s.start, s.end)}
    named = [s for s in found.spans if start <= s.start < end]
    if any(is_left_out(talk, s) for s in named) and (
        "all" in talk.words[start:end] or any(_group(m, len(found.horses)) for m in said)
    ):
        return False  # "six weeks for all of them but Buck"
    if not named and any(m.get("horse_cues") == "others" and talk.words[m.start - 1] == "with" for m in said):
        return False  # "she can come in with the rest of them in four weeks": her weeks alone
    for mention in said:
        number = mention.number
        if number is not None:
            if number.aughts is not None or number.plural or number.out_of or not 1 <= number.value <= _MOST:
                return False
            held.update(mention.literal)
        elif _group(mention, len(found.horses)):
            held.update(range(mention.start, mention.end))
        elif mention.is_any(_OTHER_TALK):
            return False
    same = any(s.start <= i < s.end for s in sentence for i in range(start, end) if talk.words[i] in alike)
    held.update(i for i in range(start + 1, end) if talk.words[i - 1 : i + 2] == ["back", "there", "in"])
    return (numbers or same) and all(talk.words[i] in _LIGHT for i in range(start, end) if i not in held)


def _group(mention: Mention, horses: int) -> bool:
    paired = mention.get("feet") in ("pair_in_hand", "all") and not mention.is_any(CLASS_SLOTS)
    return horses > 1 and (mention.get("horse_cues") in ("pair", "pair_any", "others") or paired)


def _deal_run(talk: Talk, run: list[list[Segment]], found: HorseTalk, framed: bool) -> _Dealt | None:
    """The weeks dealt last in a run of booking sentences; None when it says nothing that can be dealt.

    ``framed`` is true when what follows says that weeks are counted.
    """
    if not run:
        return None
    clauses = [c for sentence in run for c in _clauses(talk, sentence, found)]
    numbers = [n for c in clauses for n in c.numbers]
    framed = framed or any(n.unit for n in numbers) or any(weeks_put_right(talk, s) for s in run)
    framed = framed or sum(bool(c.horses and c.numbers) for c in clauses) > 1
    asked = any(_asked(talk, clauses, i) for i in range(len(clauses)))
    if not numbers or not framed or not (asked or any(c.horses for c in clauses)):
        return None
    segments = [s for sentence in run for s in sentence]
    dealt = _dealt(talk, found, clauses, segments)
    for segment in segments:
        segment.drafts = [d for d in segment.drafts if d.slot != "next_visit_weeks"]
    for one in dealt:
        _add(segments, one)
    return dealt[-1] if dealt else None


def _clauses(talk: Talk, sentence: list[Segment], found: HorseTalk) -> list[_Clause]:
    start, end = sentence[0].start, sentence[-1].end
    numbers = _numbers(talk, start, end)
    horses = _horses(talk, start, end, found)
    cuts = [start]
    for i in range(start, end):
        word = talk.words[i]
        counted = any(cuts[-1] <= n.start < i for n in numbers)
        parts = word == "but" or (word == "," and not any(n.start < i < n.end for n in numbers))
        if parts or (word == "and" and counted):
            cuts.append(i + 1)
    clauses: list[_Clause] = []
    for begin, stop in zip(cuts, [*(cut - 1 for cut in cuts[1:]), end], strict=True):
        clause = _Clause(begin, stop, talk.words[begin - 1] if begin > start else ".")
        clause.horses = [h for h in horses if begin <= h[0] < stop]
        clause.numbers = [n for n in numbers if begin <= n.start < stop]
        if talk.words[begin] == "or" and not clause.horses and any(c.numbers for c in clauses):
            clause.numbers = []  # "Tally in five, or six": the lower end of a range
        clauses.append(clause)
    return clauses


def _numbers(talk: Talk, start: int, end: int) -> list[_Number]:
    """The weeks said; a number that was put right in the same sentence is not among them."""
    said = talk.starting_in(start, end)
    replaced = {id(m.stands_for) for m in said if m.stands_for is not None}
    later = {id(m.stands_for) for m in talk.mentions if m.stands_for is not None and m.start >= end}
    found = []
    for mention in said:
        if mention.number is None or id(mention) in replaced or (mention.dropped and id(mention) not in later):
            continue
        unit = next((m for m in said if m.start == mention.end and m.get("units") in WEEKS_PER_UNIT), None)
        per = WEEKS_PER_UNIT[unit.readings["units"]] if unit is not None else Fraction(1)
        stop = unit.end if unit is not None else mention.end
        found.append(_Number(mention.start, stop, mention.number.value * per, unit is not None))
    for mention in said:
        one = mention.get("units") in ("fortnight", "month") and talk.words[mention.start - 1] == "a"
        if one:
            found.append(_Number(mention.start - 1, mention.end, WEEKS_PER_UNIT[mention.readings["units"]], True))
    return _ranges(talk, sorted(found, key=lambda n: n.start))


def _ranges(talk: Talk, numbers: list[_Number]) -> list[_Number]:
    """ "Two, three weeks for Tally and Buck": of a range the lower end; "six, four", "Tally six, seven weeks Buck"."""
    for low, high in pairwise(numbers):
        if low.unit or not high.unit or high.weeks - low.weeks != 1 or talk.words[low.end : high.start] != [","]:
            continue
        named = [m and m.get("horse") for m in (talk.mention_ending(low.start), talk.mention_starting(high.end))]
        if not all(named) and not any(n.end == low.start - 1 for n in numbers):
            return [_Number(n.start, high.end, n.weeks, True) if n is low else n for n in numbers if n is not high]
    return numbers


def _horses(talk: Talk, start: int, end: int, found: HorseTalk) -> list[_Named]:
    """Token span and horses of every name, and of "both", "the pair", "the others"."""
    spans = [s for s in found.spans if start <= s.start < end and s.start not in talk.putting_right]
    named: list[_Named] = [(s.start, s.end, (s.horse,)) for s in spans]
    everyone = tuple(here_today(talk, found.spans, len(found.horses)))
    if talk.words[start] in ("all", "everybody", "everyone") and len(everyone) > 1:
        named.append((start, start + 1, everyone))  # "All back in eight weeks"
    told = {s.horse for s in spans}
    for mention in [m for m in talk.starting_in(start, end) if _group(m, len(everyone))]:
        if told and talk.words[mention.start - 1] in _ARE:
            continue  # "Tally and Buck are both seven": those two
        others = tuple(h for h in everyone if h not in told)
        named.append((mention.start, mention.end, others if mention.get("horse_cues") == "others" else everyone))
    return sorted(named)


def _dealt(talk: Talk, found: HorseTalk, clauses: Sequence[_Clause], segments: Sequence[Segment]) -> list[_Dealt]:
    dealt = _numbers_first(clauses)
    if dealt:
        return dealt
    waiting: tuple[int, ...] = ()
    subject: tuple[int, ...] = ()
    used: set[int] = set()
    for index, clause in enumerate(clauses):
        if not clause.numbers:
            waiting = () if index in used else _named_only(talk, found, clauses, index, dealt, waiting)
            continue
        in_row = _in_a_row(clauses, index, waiting)
        if in_row:
            dealt += in_row
            used.update(range(index, index + len(in_row)))
        for number in clause.numbers if index not in used else []:
            horses = _own(talk, clause, number) or waiting
            if len(clause.names()) > 1 and clause.led_by == "," and clause.horses[0][0] == clause.start:
                horses = (*waiting, *horses)  # "Tally, Buck and Sable in six weeks"
            if not horses and _name_behind(talk, clauses, index):
                horses = clauses[index + 1].names()
                used.add(index + 1)
            hand = next(max(s.horse, 0) for s in segments if s.start <= number.start < s.end)
            subject = horses or (talk.words[clause.start] not in HE_AND_SHE and subject) or (hand,)
            if not _asked(talk, clauses, index):
                dealt.append(_Dealt(number, subject))
        waiting = ()
    return dealt


def _numbers_first(clauses: Sequence[_Clause]) -> list[_Dealt]:
    """ "Six, seven and five weeks for Tally, Buck and Sable": bare numbers, then as many names in their order."""
    numbers, names = [n for c in clauses for n in c.numbers], [h for c in clauses for h in c.horses]
    bare = all([(c.start, c.end)] == [(n.start, n.end) for n in c.numbers] for c in clauses[: len(numbers) - 1])
    first = bare and 1 < len(numbers) == len(names) and numbers[-1].end <= names[0][0]
    return [_Dealt(n, h[2]) for n, h in zip(numbers, names, strict=False)] if first else []


def _in_a_row(clauses: Sequence[_Clause], index: int, waiting: tuple[int, ...]) -> list[_Dealt]:
    """ "Tally and Buck in six and five weeks": as many numbers behind the names as there are names, in their order."""
    clause = clauses[index]
    ahead = all(h[1] <= clause.numbers[0].start and len(h[2]) == 1 for h in clause.horses)
    names = (*waiting, *clause.names())
    row = [c for c in clauses[index : index + len(names)] if len(c.numbers) == 1]
    plain = all(c.led_by in ("and", ",") and not c.horses for c in row[1:])
    if len(names) < _TWO or len(row) != len(names) or not ahead or not clause.horses or not plain:
        return []
    return [_Dealt(c.numbers[0], (horse,)) for c, horse in zip(row, names, strict=True)]


def _named_only(
    talk: Talk, found: HorseTalk, clauses: Sequence[_Clause], index: int, dealt: list[_Dealt], waiting: tuple[int, ...]
) -> tuple[int, ...]:
    """A clause that names a horse without a number: "Buck the same", "… and Buck too", "Tally, let's say six"."""
    clause = clauses[index]
    names, words = clause.names(), talk.words[clause.start : clause.end]
    at = (i for i in range(clause.start, clause.end) if talk.words[i] not in _JOINING)
    bare = all(any(a <= i < b for a, b, _ in clause.horses) for i in at)
    with_it = bool(_SAME & set(words)) or any(pair in pairwise(words) for pair in _WITH)
    with_it = with_it or (bare and not _TOO.isdisjoint(words))
    if names and dealt and with_it:
        dealt.append(_Dealt(dealt[-1].number, names))
        return ()
    last = [(h[1], h[2]) for h in clauses[index - 1].horses[-1:]] if index else []
    row = dealt and (len(names) > 1 or last == [(clause.start - 1, dealt[-1].horses[-1:])])
    listed = clause.led_by == "and" or (clause.led_by == "," and row)  # "six for Tally, Buck, Sable"
    if names and dealt and bare and listed and not _number_follows(clauses, index):
        dealt[-1].horses = (*dealt[-1].horses, *names)
        return ()
    return (*waiting, *names) if names else _pointed_at(talk, found, clause) or waiting


def _pointed_at(talk: Talk, found: HorseTalk, clause: _Clause) -> tuple[int, ...]:
    """ "Tally four weeks, and her, I'll see her in one": a pronoun alone, for the horse that can be meant."""
    words = [word for word in talk.words[clause.start : clause.end] if word not in ("and", "but")]
    horse = described(talk, found, words[0]) if len(words) == 1 and words[0] in HE_AND_SHE else None
    return () if horse is None else (horse,)


def _number_follows(clauses: Sequence[_Clause], index: int) -> bool:
    """ "Tally ten weeks and Buck, uh, eight": whether the next number of the sentence names no horse of its own."""
    for later in clauses[index + 1 :]:
        if later.led_by == "." or later.horses:
            return False
        if later.numbers:
            return True
    return False


def _own(talk: Talk, clause: _Clause, number: _Number) -> tuple[int, ...]:
    """The horses that the clause itself gives the number to: "Buck six", "six weeks for Buck", "six is Buck"."""
    before = [n.end for n in clause.numbers if n.end <= number.start]
    ahead = [h for h in clause.horses if max(before, default=clause.start) <= h[0] < number.start]
    behind = next((h for h in clause.horses if h[0] >= number.end), None)
    if behind is not None:
        link = talk.words[number.end : behind[0]]
        given = set(link) <= _BEFORE_NAME and (bool(_GIVING & set(link)) or not ahead)
        if given and (not ahead or before):
            return tuple(h for b in clause.horses if b[0] >= behind[0] for h in b[2])
    return tuple(h for a in ahead for h in a[2])


def _name_behind(talk: Talk, clauses: Sequence[_Clause], index: int) -> bool:
    """ "Six weeks, Tally. Five weeks, Buck.": a name alone behind the number, and the next number behind that."""
    following = clauses[index + 1 : index + 3]
    if not following or following[0].numbers or len(following[0].horses) != 1:
        return False
    begin, end, _ = following[0].horses[0]
    alone = (begin, end) == (following[0].start, following[0].end)
    closed = len(following) == 1 or following[1].led_by == "."
    return alone and (closed or bool(following[1].numbers and not following[1].horses))


def _asked(talk: Talk, clauses: Sequence[_Clause], index: int) -> bool:
    """ "They wanted ten, I'm saying eight": weeks that were asked for, where others are agreed right behind."""
    clause = clauses[index]
    first = clause.numbers[0].start if clause.numbers else clause.start
    words = set(talk.words[clause.start : first])
    if not clause.numbers or not _ASKED & words or "i" in words:
        return False
    for later in clauses[index + 1 :]:
        if later.numbers:
            agreed = _AGREED & set(talk.words[later.start : later.numbers[0].start])
            return bool(agreed) and set(later.names()) <= set(clause.names())
    return False


def _put_right(talk: Talk, sentence: list[Segment]) -> _Number | None:
    """ "Actually Tally's owner's away, so make it four for him": weeks that stand for those before."""
    start, end = sentence[0].start, sentence[-1].end
    words = talk.words[start:end]
    if words[0] not in _PUT_RIGHT:
        return None
    said = [m for m in talk.starting_in(start, end) if not m.dropped]
    numbers = _numbers(talk, start, end)
    told = any(m.is_any(_MEASURED) for m in said) or any(m.get("feet") and not m.number for m in said)
    if told or len(numbers) != 1 or not 1 <= numbers[0].weeks <= _MOST:
        return None
    before = words[max(0, numbers[0].start - start - _SETTLED_BACK) : numbers[0].start - start]
    return numbers[0] if any(pair in pairwise(before) for pair in _NAMING) else None


def _give_instead(talk: Talk, sentence: list[Segment], found: HorseTalk, dealt: _Dealt) -> None:
    """Give the weeks to the horses that the sentence names, else to those of the weeks before."""
    start, end = sentence[0].start, sentence[-1].end
    named = tuple(dict.fromkeys(s.horse for s in found.spans if start <= s.start < end))
    for segment in sentence:
        segment.drafts = [d for d in segment.drafts if d.slot != "next_visit_weeks"]
    _add(sentence, _Dealt(dealt.number, named or dealt.horses))


def _add(segments: Sequence[Segment], dealt: _Dealt) -> None:
    number = dealt.number
    if value_problem("next_visit_weeks", float(number.weeks)):
        return
    segment = next(s for s in segments if s.start <= number.start < s.end)
    draft = Draft("next_visit_weeks", number.weeks, segment, number.start, number.end, status=Status.PLANNED)
    draft.horses = dealt.horses
    draft.evidence.update(range(number.start, number.end))
    draft.note("next visit: an interval")
    draft.note("dealt out by name")
    segment.draft(draft)
