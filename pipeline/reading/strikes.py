"""Carrying out what was taken back as a whole: a statement, a slot, one thing, or a statement of another horse."""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.reading.roster_names import HorseTalk
from pipeline.reading.talk import Segment, Talk

_HESITATING = frozenset({",", "uh", "um", "er", "erm", "no", "wait", "hang", "hold", "on", "oh", "well", "..."})
_UNFINISHED = frozenset(
    {"the", "a", "an", "his", "her", "in", "at", "of", "with", "and", "or", "has", "had", "is", "was", "under", "some"}
)
_POINTING = frozenset({"it", "one", "that", "them", "those", "some"})
_DEEDS = frozenset(
    {"work", "treatment", "pad", "wedge", "packing", "shoe_type", "shoe_material", "shoe_size", "nails", "nail_size"}
    | {"clips", "traction", "next_visit_weeks"}
)


@dataclass(frozen=True)
class Strike:
    """A statement taken back at token ``at``.

    ``about`` is a slot when only that is ("all that about the pads"); ``what`` a slot and value ("forget the heat").
    ``what`` with ``other_horse`` is a thing that was another horse's.
    ``undone`` ("no, I didn't") takes back what was done, not what was found.
    ``named`` is the token of the horse that it belongs to, with all that was said under the wrong name if ``whole``.
    """

    at: int
    end: int
    about: str | None
    other_horse: bool = False
    what: tuple[str, str] | None = None
    named: int | None = None
    whole: bool = False
    undone: bool = False


def carry_out(talk: Talk, found: HorseTalk, strikes: list[Strike]) -> None:
    """Drop, or move to another horse, the drafts that each strike takes back."""
    for strike in strikes:
        before = [s for s in talk.segments if s.start < strike.at]
        if not before:
            continue
        if strike.about is not None:
            _strike_slot(before, strike.about)
            continue
        if strike.what is not None and not strike.other_horse:
            _strike_what(before, strike)
            continue
        last = _struck(talk, found, before, strike)
        if strike.undone:
            _undo(talk, last, strike)
            continue
        for segment in last:
            if strike.other_horse:
                _move(talk, segment, found, strike)
            else:
                _drop_before(before, segment, strike)
        if strike.other_horse and last:
            _keep_in_hand(talk, last[-1], strike)


def _struck(talk: Talk, found: HorseTalk, before: list[Segment], strike: Strike) -> list[Segment]:
    """The segments whose statements are taken back, or moved to another horse."""
    if strike.what is not None:
        return _told_of(talk, before, strike.what)
    return _under_that_name(talk, found, before, strike) if strike.whole else _last_statement(talk, before, strike)


def _undo(talk: Talk, last: list[Segment], strike: Strike) -> None:
    """ "Thrush in the left hind, I used iodine, no I didn't": behind the last "I" what was done goes, if any was.

    "It's got sidebone, no it hasn't": what was found last goes.
    """
    if "has" in talk.words[strike.end : strike.end + 3]:
        for draft in [d for s in last for d in s.drafts if d.slot == "finding" and d.start < strike.at][-1:]:
            if not draft.segment.having("denials", "before"):
                draft.drop("taken back")
        return
    told = [s for s in last if {"i", "we"} & set(talk.words[s.start : s.end])]
    start = told[-1].start if told else 0
    drafts = [d for s in last for d in s.drafts if start <= d.start < strike.at]
    for draft in [d for d in drafts if d.slot in _DEEDS] or drafts:
        draft.drop("taken back")


def _told_of(talk: Talk, before: list[Segment], what: tuple[str, str]) -> list[Segment]:
    """What was said of a finding: its sentence, from the finding to the next one of another name."""
    last = next((s for s in reversed(before) if any((d.slot, d.value) == what for d in s.drafts)), None)
    if last is None:
        return []
    sentence = [s for s in talk.sentence(last.sentence) if s.horse == last.horse]
    others = [s.index for s in sentence if any(d.slot == "finding" and d.value != what[1] for d in s.drafts)]
    first = last.index if any(i < last.index for i in others) else sentence[0].index
    while first > sentence[0].index and not talk.segments[first - 1].drafts:
        first -= 1
    stop = min((i for i in others if i > last.index), default=len(talk.segments))
    return [s for s in sentence if first <= s.index < stop]


def _drop_before(before: list[Segment], segment: Segment, strike: Strike) -> None:
    """Drop the segment's drafts, and the same said just before: "Canker. No, I shouldn't say canker, scratch that"."""
    for draft in [d for d in segment.drafts if d.start < strike.at]:
        draft.drop("taken back")
        for earlier in before:
            near = earlier.horse == segment.horse and segment.sentence - earlier.sentence <= 1
            for same in earlier.drafts if near and draft.slot == "finding" else []:
                if (same.slot, same.value) == (draft.slot, draft.value):
                    same.drop("taken back")


def _strike_slot(before: list[Segment], slot: str) -> None:
    slots = {"pad", "wedge", "packing"} if slot == "pad" else {slot}
    for segment in before:
        if segment.horse == before[-1].horse:
            for draft in segment.drafts:
                if draft.slot in slots:
                    draft.drop("taken back")


def _strike_what(before: list[Segment], strike: Strike) -> None:
    """ "Forget the heat": the last thing of that name is taken back."""
    for segment in reversed(before):
        same = [d for d in segment.drafts if (d.slot, d.value) == strike.what and d.start < strike.at and not d.dropped]
        for draft in same:
            draft.drop("taken back")
        if same:
            return


def _last_statement(talk: Talk, before: list[Segment], strike: Strike) -> list[Segment]:
    """The segments that a strike takes back: its own sentence so far, or the one before when it opens a sentence."""
    sentence = [s for s in before if s.sentence == before[-1].sentence]
    drafted = [s for s in sentence if any(d.start < strike.at for d in s.drafts)]
    last = [s for s in sentence if s.end <= strike.at]
    if drafted and last and last[-1].own_clause and not last[-1].drafts and last[-1].having("feet"):
        return []  # "thrush in the right hind, and the left's not so bad, leave that out": it was no fact
    if strike.undone and last and last[-1].own_clause and not drafted:
        return []  # "six nails. The near fore I left as it was, no I didn't": nothing was done there
    if not drafted and strike.other_horse and last and _says_how_he_is(talk, last):
        return last  # "Bruise, off fore. She's stiff, hang on, that was Buck": the bruise stays
    if drafted:
        return drafted[-1:] if _broken_off(talk, strike) else drafted
    number = before[-1].sentence - 1
    return [s for s in before if s.sentence == number]


def _says_how_he_is(talk: Talk, last: list[Segment]) -> bool:
    """Whether a clause of the horse stands there of which nothing was read; not "she's got it bad"."""
    clauses = [talk.words[s.start : s.end] for s in last]
    return any(words[0] in ("he", "she") and len(words) > 2 and _POINTING.isdisjoint(words) for words in clauses)


def _broken_off(talk: Talk, strike: Strike) -> bool:
    """ "Navicular in the left front, and ringbone in the, no, forget that": what was not said to its end goes alone."""
    at = strike.at - 1
    while at > 0 and talk.words[at] in _HESITATING:
        at -= 1
    return talk.words[at] in _UNFINISHED


def _under_that_name(talk: Talk, found: HorseTalk, before: list[Segment], strike: Strike) -> list[Segment]:
    """All that was said of the horse so far, and what follows until another is named."""
    horse = before[-1].horse
    first = next((i for i in range(len(before), 0, -1) if before[i - 1].horse != horse), 0)
    after = []
    for segment in talk.segments[len(before) :]:
        named = any(segment.start <= s.start < segment.end and s.start >= strike.end for s in found.spans)
        if segment.horse != horse or named:
            break
        after.append(segment)
    return [*before[first:], *after]


def _keep_in_hand(talk: Talk, moved: Segment, strike: Strike) -> None:
    """ "… No. Stop. That's Tally with the crack. A bar shoe on that foot": what was only hesitated parts no talk."""
    for segment in talk.segments[moved.index + 1 :]:
        if segment.start >= strike.end or segment.drafts:
            return
        segment.horse = moved.horse


def _move(talk: Talk, segment: Segment, found: HorseTalk, strike: Strike) -> None:
    """The statement belongs to the horse named behind the cue, or to the only other one; else to nobody here."""
    named = next((s.horse for s in found.spans if s.start == strike.named), None)
    segment.moved = True
    if named is not None and not segment.drafts and not any(s.horse == named and s.drafts for s in talk.segments):
        talk.unread.append((segment.start, segment.end, "how another horse is, but not what that is"))
    if named is not None:
        segment.horse = named
        for weeks in [d for d in segment.drafts if d.horses and d.start < strike.at]:
            weeks.horses = (named,)  # "eight weeks, no, that was Duke"
    elif len(found.horses) == 2 and any(s.horse == 1 - segment.horse for s in talk.segments):
        segment.horse = 1 - segment.horse
    else:
        taken = [d for d in segment.drafts if d.start < strike.at]
        for draft in taken:
            draft.drop("said of another horse")
        if taken:
            talk.unread.append((segment.start, segment.end, "something of another horse, which was not named"))
