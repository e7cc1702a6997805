"""What belongs to an earlier time: a word of time colours its clause, "today" and "still" end it."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.degrees_then import bare_degree, graded_apart, that_was_then, told_before
from pipeline.reading.earlier_times import IT_WAS, WHERE, earlier_cues, tells_a_year
from pipeline.reading.foot_names import resolve
from pipeline.reading.mentions import Mention
from pipeline.reading.moved_numbers import AS_IT_IS
from pipeline.reading.number_context import ANGLES, LENGTHS, SCORES
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, DOUBTABLE, put_in_between, to_come
from pipeline.reading.segments import AGAINST
from pipeline.reading.set_against import INSTEAD
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import NOT
from pipeline.reading.treated import treated_then, used_then_and_now
from pipeline.reading.was_there import SHOWING, found_so, has_had, may_be
from pipeline.record import Severity, Status

_TAKING = frozenset({"took", "pulled", "whipped", "stripped", "had", "taking", "pulling"})
_NOT_THERE = frozenset({"nothing", "no", "not", "n't", "never", "hardly", "none", "neither"})
_COMPARING = frozenset({"down", "up", "from", "better", "worse", "compared", "same"})
_COMPARED = frozenset({"worse", "better", "bigger", "smaller", "deeper", "wider", "longer", "wetter", "softer"})
_THEY_HAD = (["'d", "had"], ["had", "had"], ["they", "had"], ["owner", "had"], ["owners", "had"], ["been", "on"])
_IT, _HAD_ALREADY = frozenset({"it", "that", "one", "this", "those", "they"}), (["had", "already"], ["'d", "already"])
_WISHED = frozenset({"like", "liked", "ideally", "want", "wanted", "love", "prefer", "rather", "hoped", "hoping"})
_CAME, _WAS_ON = frozenset({"got", "came", "arrived", "landed"}), frozenset({"shoe_type", "pad", "treatment"})
_COME_OFF = frozenset({"clips", "shoe_type", "pad", "wedge", "packing", "traction"})
_HAD_ON = frozenset({"finding", "shoe_type", "pad", "traction", "packing", "clips"})
_SEEING = frozenset(
    {"see", "seen", "saw", "notice", "noticed", "spot", "spotted", "there", "find", "found", "feel", "have", "here"}
)
_TWO_AT_ONCE = frozenset({"finding", "work", "treatment"})  # of one foot, beside another
_STILL = frozenset({"he", "she", "they", "still", "does", "do", "is", "are", "has"})
_RATHER = Sayings("or rather there was", "rather there was", "or there was", "i mean there was", "well there was")


def recall(talk: Talk, sentence: Sentence) -> None:
    """A word of an earlier time colours its clause, and later past-tense clauses when it led the sentence."""
    timed = "times" in sentence.classes or not sentence.lacks(_TELLING_WHEN) or tells_a_year(talk, sentence)
    if timed or any(segment.drafts for segment in sentence):
        _recall_clauses(talk, sentence, timed=timed)


def _recall_clauses(talk: Talk, sentence: Sentence, *, timed: bool) -> None:
    recalled = went_on = been = False
    by_word = [rule for rule, words in _BY_WORD if not words.isdisjoint(sentence.words)]
    for position, segment in enumerate(sentence):
        if timed:
            _recall_recent(talk, sentence, position)
        elif not segment.drafts:
            continue
        _contrasted_with_now(talk, sentence, position)
        cues, today = (earlier_cues(talk, sentence, segment), segment.having("times", "today")) if timed else ([], [])
        if today and _there_today(talk, segment):
            _still_there(sentence[:position], talk.words[segment.start : segment.end])
        if today and (not cues or today[-1].start > cues[-1].start):
            recalled = False
            if not cues:
                continue
        recalled = recalled and (bool(cues) or not (_turns_to_today(segment, been=been) or to_come(segment)))
        if not (recalled or cues) and position and segment.drafts and _lame_with_it(talk, sentence, position):
            _recall_all(segment.drafts)
        opens = bool(cues) and _opens_what_follows(talk, sentence, position, cues[0])
        if cues:
            _recall_all(that_was_then(talk, sentence, position, cues))
        if cues and not segment.drafts and not opens and (position or segment.having("severities")):
            _recall_it(talk, segment, told_before(talk, sentence, position))
        if cues:
            leads = not any(d.start < cues[0].start for d in segment.drafts)
            if not opens and _speaks_of_before(talk, segment, cues[0]):
                _recall_back(talk, sentence, position)
            went_on = recalled
            recalled = recalled or ((leads or not segment.present) and not found_so(talk, segment, cues))
        if recalled or cues:
            _recall_drafts(talk, segment, cues, today)
        if cues:
            recalled = opens or (recalled and (went_on or _leads(sentence, position, cues[0])))
            been = not went_on and all(talk.words[m.end - 1] == "been" for m in cues)
        if segment.drafts:
            _recall_then(talk, sentence, position)
            for rule in by_word:
                rule(talk, segment)


def _recall_all(drafts: list[Draft]) -> None:
    for draft in drafts:
        recall_one(draft)


def _opens_what_follows(talk: Talk, sentence: list[Segment], position: int, cue: Mention) -> bool:
    """ "Toe angle forty seven, and last time, off the card, it was forty five": a time alone, of what follows."""
    segment, behind = sentence[position], sentence[position + 1 :]
    alone = position > 0 and (segment.start, segment.end) == (cue.start, cue.end)
    if not alone or talk.words[cue.start] == "before" or not segment.joined_by("and", ", and", "but", ", but"):
        return False  # "… pads on, and before that, …" speaks of the pads
    told = next((s for s in behind if s.drafts), None)
    return told is not None and told.past and not told.present and told.joined_by(",")


def _recall_drafts(talk: Talk, segment: Segment, cues: list[Mention], today: list[Mention]) -> None:
    """Give the drafts of a segment to the earlier time, but those behind a later word of today."""
    for draft in _recalled_by(talk, segment, cues):
        later_today = any(t.start < draft.start and (not cues or t.start > cues[-1].start) for t in today)
        if not later_today and (cues or draft.slot != "manner"):
            recall_one(draft)
            _stood_then(talk, draft, cues)


def _turns_to_today(segment: Segment, *, been: bool) -> bool:
    """Whether a clause ends the time before it: "she'd been pointing it, so I had the testers on it" as well."""
    told = bool(segment.drafts) or "taking_back" not in segment.named  # not "last time rims, no, I'm wrong, bars"
    clause = told and segment.own_clause and (segment.present or not segment.past)
    joined = segment.joined_by("but", ", but", "so", ", so", "then", ", then") and not segment.past
    return clause or joined or (been and segment.joined_by("so", ", so"))


def _left_by_an_old_one(talk: Talk, segment: Segment) -> None:
    """ "A scar from an old abscess", "an old abscess scar": what is seen today is only what it left."""
    for draft in [d for d in segment.drafts if d.slot == "finding" and talk.words[d.start - 1] == "old"]:
        if not _LEFT_BY_IT.isdisjoint(talk.words[draft.end : draft.end + 1]):
            recall_one(draft)
        before = talk.words[max(segment.start, draft.start - 3) : draft.start - 1]
        if {"from", "of"} & set(before) and set(before) <= {"from", "of", "an", "the", "that", "his", "her", *_LEFT}:
            recall_one(draft)


def _there_today(talk: Talk, segment: Segment) -> bool:
    """ "… and it's still there", "… and still does"; not "nothing done to it now", nor "it's only mild now"."""
    words = set(talk.words[segment.start : segment.end])
    told = segment.having("severities") or segment.drafts or words & _NOT_THERE
    told = told or segment.having("feet")  # "… last time, this time it's the off fore"
    return not told and ("it" in words or words <= _STILL)


def _speaks_of_before(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """Whether the time may reach back; not "better than last time", "up on March when he was lame"."""
    return talk.words[cue.start : cue.end] != ["when"] and talk.words[segment.start] not in _COMPARING


def _treated_by_others(talk: Talk, segment: Segment) -> None:
    """ "They'd had a poultice on it": what the owners did before today."""
    for draft in [d for d in segment.drafts if d.slot == "treatment" and d.status is Status.PRESENT]:
        before = talk.words[max(segment.start, draft.start - 4) : draft.start]
        behind = talk.words[draft.end : segment.end]
        then = any(behind[i : i + 2] == ["before", "i"] and behind[i + 2] in _CAME for i in range(len(behind) - 2))
        if then or before[-2:] in _HAD_ALREADY or any(before[i : i + 2] in _THEY_HAD for i in range(len(before))):
            recall_one(draft)


def _lame_with_it(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """ "She had an abscess last month, three out of five lame on it", "founder in April, with heat": of then."""
    segment, ahead, slots = sentence[position], sentence[position - 1], {d.slot for d in sentence[position].drafts}
    if not ahead.drafts or ahead.drafts[-1].status is not Status.HISTORY or segment.own_clause:
        return False
    if talk.words[segment.start] == "with" and slots <= DOUBTABLE and ahead.having("times", "history"):
        return True
    only = ahead.drafts[-1].slot == "finding" and slots <= {"lameness", "gait"}
    return only and talk.words[segment.end - 2 : segment.end] in (["on", "it"], ["with", "it"])


def _as_steep_as_then(sentence: list[Segment], position: int) -> None:
    """ "He had wedge pads last time, four degree": so many degrees had the wedge that was just told of."""
    segment, before = sentence[position], sentence[position - 1].drafts if position else []
    if not before or len(segment.drafts) != 1 or segment.drafts[0].slot != "wedge" or segment.own_clause:
        return
    then = before[-1].value == "wedge" and before[-1].status is Status.HISTORY
    if then and segment.joined_by(",") and not segment.having("times", "today"):
        segment.drafts[0].feet = segment.drafts[0].feet or before[-1].feet
        recall_one(segment.drafts[0])


def _taken_off(talk: Talk, segment: Segment) -> None:
    """ "Pulled the egg bars off the fronts": what was on until today."""
    for draft in [d for d in segment.drafts if d.slot in _WAS_ON | _COME_OFF]:
        verb = set(talk.words[max(segment.start, draft.start - 3) : draft.start]) & _TAKING
        off = {"off", "out"} & set(talk.words[draft.end : draft.end + 1])
        behind = talk.words[draft.end : draft.end + 4]
        gone = bool({"was", "were", "has", "have"} & set(behind[:1])) and "off" in behind[1:]
        gone = gone and bool({"taken", "pulled", "stripped", "cut"} & set(behind)) and draft.slot in _WAS_ON
        if gone or (draft.slot in _COME_OFF and draft.status is Status.PRESENT and verb and off):
            draft.status = Status.HISTORY
            draft.note("taken off")


def _recall_then(talk: Talk, sentence: list[Segment], position: int) -> None:
    segment = sentence[position]
    _as_steep_as_then(sentence, position)
    if not talk.says(_THEN) or not _closed_by_then(talk, segment):
        return
    if to_come(segment) or any(d.slot == "next_visit_weeks" for s in sentence[:position] for d in s.drafts):
        return  # "I'm back in a week, and I'd say a full pad on it then", "hunting in December, we'll do studs then"
    if segment.past or any(s.having("times", "history") for s in sentence[:position]):
        for draft in segment.drafts:
            recall_one(draft)


def _recalled_by(talk: Talk, segment: Segment, cues: list[Mention]) -> list[Draft]:
    """ "Crest is a three where it used to be a four": behind a word of the present, only what follows."""
    behind = [m.start for m in cues if talk.words[m.start : m.end] == ["when"]]
    behind += [at for at, _ in INSTEAD.within(talk.words, segment.start, cues[0].start)] if cues else []
    placed = {m.start for m in segment.having("times")}  # "where he was before" is a time of its own
    told = [at for at in talk.where(WHERE) if segment.start < at < segment.end and at not in placed]
    behind += [at for at in told if tuple(talk.words[at + 1 : at + 3]) in IT_WAS]
    if behind:  # "putty in place of the silicone he had before"
        return [d for d in segment.drafts if d.start > behind[0]]
    if found_so(talk, segment, cues) or _not_then(talk, segment, cues):
        return []
    used_to = next((m for m in cues if talk.words[m.start : m.end] == ["used", "to"]), None)
    if used_to is None or not talk.plays("present", segment.start, used_to.start):
        return segment.drafts
    return [d for d in segment.drafts if d.start > used_to.start]


def _not_then(talk: Talk, segment: Segment, cues: list[Mention]) -> bool:
    """ "Thrush I didn't see last time", "a corn that wasn't there before": it is the not seeing that was then."""
    ends = [d.end for d in segment.drafts if cues and d.end <= cues[0].start]
    words = set(talk.words[ends[-1] : cues[0].start]) if ends else set()
    return not words.isdisjoint(NOT) and not words.isdisjoint(_SEEING)


def _closed_by_then(talk: Talk, segment: Segment) -> bool:
    """ "He foundered two years back, Obel two then,": a "then" at the end is that earlier time."""
    end = segment.end - 1 if talk.words[segment.end - 1] == "then" else segment.end
    behind = talk.words[end + 1 : end + 2]
    return talk.words[end : end + 1] == ["then"] and behind in ([","], ["."], ["and"], [])


_LEFT = frozenset(
    {"scar", "mark", "hole", "track", "line", "ring", "remains", "cavity", "seam", "left", "over", "trace"}
)
_LEFT_BY_IT = frozenset({"scar", "scars", "mark", "hole", "track", "tract", "site", "cavity", "remains"})
_SAID = frozenset({"found", "diagnosed", "spotted", "noticed", "picked", "told"})
_HAPPENED = frozenset({"overreached", "reached", "forged", "interfered", "limped", "hobbled", "nodded", "grabbed"})
_TELLING_WHEN, _THEN = frozenset({"when", "before"}), frozenset({"then"})
_NO_TIME_TO_STAND = frozenset(
    {"had been", "he'd been", "she'd been", "he was in", "she was in", "been wearing", "before i came", "wore"}
    | {"he 'd been", "she 'd been", "had him in", "had her in", "i had him in", "i had her in", "before this"}
    | {"to start with", "to begin with", "at the start", "initially", "originally"}
)  # "he'd been sedated when I got there" is of today
_AGAINST_TODAY = frozenset({"wedge", "shoe_size", *SCORES, *ANGLES, *LENGTHS})


def _contrasted_with_now(talk: Talk, sentence: list[Segment], position: int) -> None:
    """ "Crest score two, was a four": a second number of the same thing behind "was" is the earlier one."""
    segment = sentence[position]
    if not segment.past or segment.present or not segment.drafts:
        return
    before = [s for s in talk.segments[: segment.index] if s.horse == segment.horse]
    told = [d for s in before for d in s.drafts if d.status is Status.PRESENT and not d.dropped]
    said, today = {(d.slot, d.feet) for d in told}, {(d.slot, d.feet, d.value) for d in told}
    if segment.joined_by("start") and not any(m.get("feet") for m in segment.mentions):
        return  # only beside a value said in the same breath, or on a foot named again
    for draft in segment.drafts:
        again = (draft.slot, draft.feet, draft.value) in today  # "no, two, I'd say two"
        if draft.slot in _AGAINST_TODAY and (draft.slot, draft.feet) in said and not again:
            if _WISHED.isdisjoint(talk.words[segment.start : draft.start]):
                recall_one(draft)
            else:
                draft.drop("only wished for")  # "it's fifty, I'd like it at fifty-two"


def _recall_recent(talk: Talk, sentence: list[Segment], position: int) -> None:
    """ "He was lame on Saturday", "overreached on Monday": a gait of then; a shoe lost on Saturday is as found."""
    segment, later = sentence[position], sentence[position + 1 :]
    if segment.drafts and segment.having("times", "recent") and not segment.having("times", "today"):
        again = any(s.having("times", "today") and any(d.slot == "lameness" for d in s.drafts) for s in later)
        today = {d.slot for s in sentence if s is not segment and s.having("times", "today") for d in s.drafts}
        for draft in segment.drafts:
            if draft.slot in ("tester", "pulse") and draft.slot in today:
                recall_one(draft)  # "normal in that foot now, Sunday it was bounding"
            if draft.slot == "treatment" and treated_then(talk, segment, draft):
                recall_one(draft)
            gone = draft.slot in ("gait", "lameness", "obel") and not segment.present
            happened = draft.slot == "gait" and not _HAPPENED.isdisjoint(talk.words[draft.start : draft.end])
            if gone and (again or segment.past or happened or draft.slot == "obel"):
                recall_one(draft)


def _still_there(before: list[Segment], words: list[str]) -> None:
    """ "The vet told us that years back and it's still there"; not "she'd laminitis once, you'd see it still"."""
    for draft in [d for s in before for d in s.drafts if d.slot in ("finding", "gait") and d.status is Status.HISTORY]:
        if draft.value != "laminitis" or SHOWING.isdisjoint(words):
            draft.status = Status.PRESENT
            draft.note("still there")


def _recall_it(talk: Talk, segment: Segment, before: list[Segment]) -> None:
    """ "Laminitis, they reckon she had it last spring": the pronoun stands for what was said before.

    When it was found ("she has sidebone in the off fore, the vet found it in March") is no fact of its own.
    Behind a statement of its own ("she's got laminitis again, and she had it two summers ago") both are facts.
    """
    words = set(talk.words[segment.start : segment.end])
    graded = next((m.readings["severities"] for m in segment.having("severities")), None)
    only_graded = graded and (talk.words[segment.start] in ("was", "were") or graded_apart(talk, segment, before))
    found = _SAID & words and any(s.present and s.horse == segment.horse for s in before[-1:])
    feet = [resolve(str(m.get("feet")), None) for m in segment.having("feet")]
    elsewhere = bool(feet) and any(d.feet and d.feet not in feet for s in before for d in s.drafts)
    if (
        (found and {"told", "had"} - words)
        or elsewhere
        or segment.having("resolutions", "after")
        or _COMPARED & words
        or not (only_graded or _IT & words)
    ):
        return
    for earlier in reversed([s for s in before if s.horse == segment.horse]):
        for draft in [d for d in earlier.drafts if d.slot in _HAD_ON][-1:]:
            doubted = may_be(talk, earlier, draft)
            rather = _RATHER.said_in(talk.words[draft.end : segment.start])  # "… or rather there was one, that was"
            today = (earlier.present or graded or doubted) and not (rather or has_had(talk, draft, segment))
            if today and draft.slot == "finding":
                again = replace(
                    draft, segment=segment, start=segment.start, end=segment.end, status=Status.HISTORY,
                    severity=Severity(graded) if graded else None,
                    zone=draft.zone if graded and earlier.sentence == segment.sentence else None,
                    rules=["it: the finding before"],
                )  # fmt: skip
                segment.drafts.append(again)
            else:
                recall_one(draft)
                for degrees in [d for s in before if s.index >= earlier.index for d in s.drafts if d.slot == "wedge"]:
                    if draft.value == "wedge" and degrees.start > draft.start:
                        recall_one(degrees)  # "he had a wedge pad, three degree, that was two shoeings back"
            return


def _leads(sentence: list[Segment], position: int, cue: Mention) -> bool:
    """Whether the time was said before any fact of its clause."""
    start = position
    while start > 0 and not sentence[start].own_clause:
        start -= 1
    return not any(d.start < cue.start for s in sentence[start : position + 1] for d in s.drafts)


def _recall_back(talk: Talk, sentence: list[Segment], position: int) -> None:
    """A time said at the end reaches back over the verbless segments of its clause, not over "52, 50 last time"."""
    counted = {(d.slot, d.feet) for d in sentence[position].drafts if d.slot not in _TWO_AT_ONCE}
    bare = bare_degree(talk, sentence[position])
    for number in range(position, 0, -1):
        between = put_in_between(talk, sentence[number])
        if not between and (sentence[number].own_clause or sentence[number].delimiter in AGAINST):
            break
        before = sentence[number - 1]
        if (
            before.having("times", "today")
            or to_come(before)
            or any((d.slot, d.feet) in counted for d in before.drafts)
        ):
            break
        if (bare and any(d.severity for d in before.drafts)) or used_then_and_now(sentence, position, before):
            break  # "mild thrush, severe last time"
        for draft in before.drafts:
            recall_one(draft)


def _stood_then(talk: Talk, draft: Draft, cues: list[Mention]) -> None:
    """ "Fidgety last time", "at his old yard he was dangerous", "bad for the last man": a time in the same clause."""
    if draft.slot != "manner":
        return
    told = [c for c in cues if " ".join(talk.words[c.start : c.end]) not in _NO_TIME_TO_STAND]
    beside = any(draft.end <= c.start and {"him", "her", "for"} >= set(talk.words[draft.end : c.start]) for c in told)
    inside = [c for c in told if not _another_between(draft, c)]
    clause = draft.segment.start, draft.end
    was = bool(talk.plays("past", *clause)) and not talk.plays("present", *clause)
    if beside or (inside and (was or any(c.end <= draft.start for c in inside))):
        draft.status = Status.HISTORY


def _another_between(draft: Draft, cue: Mention) -> bool:
    """Whether a fact of another kind stands between how he stood and the time."""
    first, last = min(draft.end, cue.end), max(draft.start, cue.start)
    return any(d.slot != "manner" and first <= d.start < last for d in draft.segment.drafts)


def recall_one(draft: Draft) -> None:
    """Make a draft one of an earlier time; what is always planned, or was denied then, is no fact."""
    if AS_IT_IS in draft.rules:
        return
    if draft.slot in ALWAYS_PLANNED:
        draft.drop("said of an earlier time")
    elif draft.slot == "manner" and draft.segment.joined_by("start"):
        return  # how he stood opens a sentence; the time behind it belongs to something else
    elif draft.status is Status.ABSENT:
        draft.drop("denied of an earlier time")
    elif draft.status in (Status.PRESENT, Status.SUSPECTED):
        draft.status = Status.HISTORY
        draft.note("of an earlier time")


# What was so until today without any word of time, by the words that each rule waits for.
_BY_WORD = (
    (_taken_off, frozenset({"off", "out"})), (_treated_by_others, frozenset({"had", "been", "'d", "before"})),
    (_left_by_an_old_one, frozenset({"old"})),
)  # fmt: skip
