"""How each fact was asserted: denied, doubted, of an earlier time, gone, or planned.

Scopes follow NegEx (Chapman et al. 2001, J Biomed Inform 34:301-310) and ConText (Harkema et al. 2009, J Biomed
Inform 42:839-851): a cue reaches forward or backward until a word ends its scope. Here the reach is counted in
segments: a list joined by "or" stays inside, "but" and a new clause end it.
"""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_DOUBTABLE = frozenset({"finding", "tester", "pulse", "gait", "lameness", "obel"})
_DENIABLE = frozenset({
    "finding", "tester", "pulse", "gait", "shoe_state", "pad", "packing", "traction", "clips", "treatment", "vet",
    "manner", "shoe_type", "work", "wedge", "lameness", "nail_line",
})  # fmt: skip
_PLANNABLE = frozenset({
    "work", "shoe_type", "shoe_size", "shoe_material", "pad", "wedge", "packing", "treatment", "nails", "nail_size",
    "clips", "traction", "manner", "next_visit_weeks", "vet",
})  # fmt: skip
_ALWAYS_PLANNED = frozenset({"next_visit_weeks", "vet"})
SOUGHT = "only looked for"
_BARE_DENIALS = (
    ["it", "is", "n't"],
    ["it", "was", "n't"],
    ["they", "are", "n't"],
    ["they", "were", "n't"],
    ["it", "was", "not"],
)
_NOT_REACH = 5
_COMMENT = 4  # tokens of a segment that only comments: ", could be, "
_PLAN_TIMES = frozenset({"next time", "next visit", "next cycle", "next trip", "next shoeing", "next go", "time after"})


def mark_sought(talk: Talk) -> None:
    """ "I checked for a puncture": what was only looked for is no fact, though a later "there wasn't one" denies it."""
    for sentence in talk.sentences():
        for position, segment in enumerate(sentence):
            for cue in segment.having("doubts", "sought"):
                for draft in _reached(talk, sentence, position, cue):
                    if draft.slot == "finding":
                        draft.drop(SOUGHT)


def assert_all(talk: Talk) -> None:
    """Set the status of every draft."""
    for sentence in talk.sentences():
        _deny(talk, sentence)
        _doubt(talk, sentence)
        _recall(talk, sentence)
        _plan(talk, sentence)
        _set_aside(talk, sentence)
    for number, sentence in enumerate(talk.sentences()):
        _resolve(talk, sentence, talk.sentences()[number - 1] if number else [])
        _doubt_after(talk, sentence, talk.sentences()[number - 1] if number else [])


def _same_subject(talk: Talk, segment: Segment) -> bool:
    """ "… and she had dreadful feet": a pronoun still means the other animal."""
    return segment.joined_by("and", ", and") and talk.words[segment.start] in ("he", "she", "it", "they")


def _set_aside(talk: Talk, sentence: list[Segment]) -> None:
    """Errands ("order more size fives") and other people's horses are no facts of this visit."""
    for position, segment in enumerate(sentence):
        for cue in (m for m in segment.mentions if m.get("asides") not in (None, "event")):
            whole = cue.get("asides") == "not_mine"
            for later in sentence if whole else sentence[position:]:
                if later is not segment and later.own_clause and not whole and not _same_subject(talk, later):
                    break
                for draft in later.drafts:
                    if draft.slot not in _ALWAYS_PLANNED:
                        draft.drop("an aside")


# -- denial ------------------------------------------------------------------------------------------------------------


def _deny(talk: Talk, sentence: list[Segment]) -> None:
    for position, segment in enumerate(sentence):
        if segment.having("taking_back", "repair") and not segment.drafts:
            for draft in [d for s in sentence[position:] for d in s.drafts]:
                draft.corrects = True
        for cue in segment.having("denials", "before"):
            for draft in _reached(talk, sentence, position, cue):
                _deny_one(draft)
        for draft in segment.drafts:
            if _denied_in_gap(talk, draft):
                _deny_one(draft)
        for cue in segment.having("denials", "after"):
            before = [d for d in segment.drafts if d.end <= cue.start]
            earlier = sentence[position - 1].drafts if position and not segment.drafts else []
            for draft in before[-1:] or _sought(sentence, position) or earlier[-1:]:
                _deny_one(draft)
        if talk.words[segment.start : segment.end] in _BARE_DENIALS and position:
            for draft in _last_doubtable(sentence[:position]):
                _deny_one(draft)


def _sought(sentence: list[Segment], position: int) -> list[Draft]:
    return [d for s in sentence[:position] for d in s.drafts if SOUGHT in d.rules]


def _denied_in_gap(talk: Talk, draft: Draft) -> bool:
    """ "Heels aren't contracted": the denial stands inside the phrase."""
    gap = [i for i in range(draft.start, draft.end) if i not in draft.evidence]
    return draft.slot not in ("tester", "pulse") and any(talk.words[i] in ("n't", "not", "no", "never") for i in gap)


def _reached(talk: Talk, sentence: list[Segment], position: int, cue: Mention) -> list[Draft]:
    segment = sentence[position]
    verbal = talk.words[cue.end - 1] in ("not", "n't", "never")
    reach = segment.end if not verbal else cue.end + _NOT_REACH
    own = [d for d in segment.drafts if cue.end <= d.start < reach and not _new_clause(talk, segment, cue, d)]
    own = _until_barrier(talk, segment, cue, own)
    if not own:
        return []
    reached = list(own)
    for number in range(position + 1, len(sentence)):
        later = sentence[number]
        if not _continues_list(talk, sentence, number):
            break
        first = later.drafts[0]
        reached.append(first)
        reached.extend(d for d in later.drafts[1:] if "or" in talk.words[first.end : d.start])
    return reached


def _new_clause(talk: Talk, segment: Segment, cue: Mention, draft: Draft) -> bool:
    """Whether a new subject or a plan stands between cue and draft: "not better … they need to call the vet"."""
    between = [m for m in segment.mentions if cue.end <= m.start < draft.start]
    subject = bool(talk.plays("subject", cue.end, draft.start))
    return any(m.get("plans") is not None for m in between) or (subject and cue.get("denials") is not None)


def _until_barrier(talk: Talk, segment: Segment, cue: Mention, drafts: list[Draft]) -> list[Draft]:
    """Another cue or a word of the present ends the scope within the segment."""
    barrier = [m.start for m in segment.mentions if m.start >= cue.end and m.get("times") == "today"]
    subjects = talk.plays("subject", max(cue.end + 1, drafts[0].end), segment.end) if drafts else []
    limit = min([*barrier, *subjects], default=segment.end)
    kept = [d for d in drafts if d.start < limit]
    return kept or drafts[:1] if not barrier else kept


def _continues_list(talk: Talk, sentence: list[Segment], number: int) -> bool:
    """Whether the segment is a further item of a denied or doubted list: "heat, swelling or pus"."""
    later = sentence[number]
    if later.having("denials") or later.having("severities") or not later.drafts or later.own_clause:
        return False
    if later.drafts[0].slot not in ("finding", "pulse", "tester"):
        return False
    lead = talk.words[later.start : later.drafts[0].start]
    if set(lead) - {"or", "nor", "any", "even", "for", "of"}:
        return False
    if "or" in lead or "nor" in lead or later.joined_by("or", "nor"):
        return True
    if later.joined_by("and"):
        return not later.having("zones")
    for following in sentence[number:]:
        if following.own_clause or not following.delimiter.startswith(","):
            return False
        words = talk.words[following.start : following.end]
        if "or" in words or "nor" in words:
            return True
    return False


def _deny_one(draft: Draft) -> None:
    if draft.slot not in _DENIABLE or "denied" in draft.rules:
        return None
    if draft.slot in ("work", "manner", "treatment"):
        return draft.drop("denied: not done")
    draft.note("denied")
    if SOUGHT in draft.rules:
        draft.dropped = False
    if draft.slot == "tester":
        draft.value = "none"
    elif draft.slot == "pulse":
        draft.value = "normal"
    else:
        draft.status = Status.ABSENT
    return None


# -- doubt -------------------------------------------------------------------------------------------------------------


def _doubt(talk: Talk, sentence: list[Segment]) -> None:
    for position, segment in enumerate(sentence):
        for cue in segment.having("doubts", "before"):
            reached = _reached(talk, sentence, position, cue)
            if not reached and position and not segment.drafts and segment.end - segment.start <= _COMMENT:
                reached = _last_doubtable(sentence[:position])
            if not reached and position + 1 < len(sentence) and not _drafts_after(segment, cue):
                reached = [] if sentence[position + 1].own_clause else sentence[position + 1].drafts[:1]
            if not reached and not _drafts_after(segment, cue) and position == len(sentence) - 1:
                reached = _last_doubtable(sentence[: position + 1])
            for draft in reached:
                _doubt_one(draft)


def _drafts_after(segment: Segment, cue: Mention) -> list[Draft]:
    return [d for d in segment.drafts if d.start >= cue.end]


def _doubt_after(talk: Talk, sentence: list[Segment], previous: list[Segment]) -> None:
    for position, segment in enumerate(sentence):
        for cue in segment.having("doubts", "after"):
            ahead = [d for d in _drafts_after(segment, cue) if d.slot in _DOUBTABLE]
            behind = _last_doubtable(sentence[: position + 1])
            if not behind and position == 0 and not _last_doubtable(sentence):
                behind = _last_doubtable(previous)
            for draft in ahead or behind:
                _doubt_one(draft)


def _last_doubtable(segments: list[Segment]) -> list[Draft]:
    """The last thing said that can be doubted, with what was joined to it by a bare "and"."""
    for segment in reversed(segments):
        drafts = [d for d in segment.drafts if d.slot in _DOUBTABLE and not d.dropped]
        if drafts:
            return [d for d in drafts if d.start == drafts[-1].start]
    return []


def _doubt_one(draft: Draft) -> None:
    if draft.slot in _DOUBTABLE and draft.status is Status.PRESENT and "denied" not in draft.rules:
        draft.status = Status.SUSPECTED
        draft.note("doubted")


# -- earlier times -----------------------------------------------------------------------------------------------------


def _recall(talk: Talk, sentence: list[Segment]) -> None:
    """A word of an earlier time colours its clause, and later past-tense clauses when it led the sentence."""
    recalled = False
    for position, segment in enumerate(sentence):
        cues = [
            m for m in segment.having("times", "history") if not _season_ahead(talk, sentence, m)
        ] or _before_at_end(talk, segment)
        today = segment.having("times", "today")
        if today and "it" in talk.words[segment.start : segment.end] and not segment.drafts:
            _still_there(sentence[:position])
        if today and (not cues or today[-1].start > cues[-1].start):
            recalled = False
            if not cues:
                continue
        if segment.own_clause and not cues and (segment.present or not segment.past):
            recalled = False
        if segment.joined_by("but", ", but", "so", ", so", "then", ", then") and not cues and not segment.past:
            recalled = False
        if cues and not segment.drafts and position:
            _recall_it(talk, segment, sentence[:position])
        if cues:
            leads = not any(d.start < cues[0].start for d in segment.drafts)
            if talk.words[segment.start] not in ("down", "up", "from", "better", "worse", "compared", "same"):
                _recall_back(sentence, position)
            recalled = True if leads or not segment.present else recalled
        if recalled or cues:
            for draft in segment.drafts:
                later_today = any(t.start < draft.start and (not cues or t.start > cues[-1].start) for t in today)
                if not later_today:
                    _recall_one(draft)
        if cues and not _leads(sentence, position, cues[0]):
            recalled = False


def _season_ahead(talk: Talk, sentence: list[Segment], cue: Mention) -> bool:
    """ "We'll try bars in the spring": a season behind a plan is to come."""
    planned = any(m.start < cue.start for s in sentence for m in s.having("plans", "before"))
    return planned and talk.words[cue.start] in ("in", "over")


def _before_at_end(talk: Talk, segment: Segment) -> list[Mention]:
    """ "Somebody had him in egg bars before": a lone "before" that closes its segment."""
    last = segment.end - 1
    if talk.words[last] != "before" or any(last in m.literal and m.get("times") for m in segment.mentions):
        return []
    return [Mention(last, segment.end, (last,), {"times": "history"})]


def _still_there(before: list[Segment]) -> None:
    """ "The vet told us that years back and it's still there"."""
    for draft in [d for s in before for d in s.drafts if d.slot == "finding" and d.status is Status.HISTORY]:
        draft.status = Status.PRESENT
        draft.note("still there")


def _recall_it(talk: Talk, segment: Segment, before: list[Segment]) -> None:
    """ "Laminitis, they reckon she had it last spring": the pronoun stands for what was said before.

    Behind a statement of its own ("she's got laminitis again, and she had it two summers ago") both are facts.
    """
    if not {"it", "that", "one", "this"} & set(talk.words[segment.start : segment.end]):
        return
    for earlier in reversed(before):
        for draft in [d for d in earlier.drafts if d.slot in ("finding", "shoe_type", "pad")][-1:]:
            if earlier.present and draft.slot == "finding":
                again = replace(draft, segment=segment, start=segment.start, end=segment.end, status=Status.HISTORY,
                                severity=None, zone=None, rules=["it: the finding before"])  # fmt: skip
                segment.drafts.append(again)
            else:
                _recall_one(draft)
            return


def _leads(sentence: list[Segment], position: int, cue: Mention) -> bool:
    """Whether the time was said before any fact of its clause."""
    start = position
    while start > 0 and not sentence[start].own_clause:
        start -= 1
    return not any(d.start < cue.start for s in sentence[start : position + 1] for d in s.drafts)


def _recall_back(sentence: list[Segment], position: int) -> None:
    """A time said at the end reaches back over the verbless segments of its own clause."""
    for number in range(position, 0, -1):
        if sentence[number].own_clause:
            break
        before = sentence[number - 1]
        if before.having("times", "today"):
            break
        for draft in before.drafts:
            _recall_one(draft)


def _recall_one(draft: Draft) -> None:
    if draft.slot in _ALWAYS_PLANNED:
        draft.drop("said of an earlier time")
    elif draft.slot == "manner" and draft.segment.joined_by("start"):
        return  # how he stood opens a sentence; the time behind it belongs to something else
    elif draft.status is Status.ABSENT:
        draft.drop("denied of an earlier time")
    elif draft.status in (Status.PRESENT, Status.SUSPECTED):
        draft.status = Status.HISTORY
        draft.note("of an earlier time")


# -- gone --------------------------------------------------------------------------------------------------------------


def _resolve(talk: Talk, sentence: list[Segment], previous: list[Segment]) -> None:
    for position, segment in enumerate(sentence):
        for cue in segment.having("resolutions", "before"):
            for draft in _drafts_after(segment, cue)[:1]:
                _resolve_one(draft)
        for cue in segment.having("resolutions", "after"):
            for draft in _gone(sentence, position, cue, previous):
                _resolve_one(draft)


def _gone(sentence: list[Segment], position: int, cue: Mention, previous: list[Segment]) -> list[Draft]:
    segment = sentence[position]
    own = [d for d in segment.drafts if d.slot == "finding" and d.end <= cue.start]
    if own:
        found = own[-1:]
        if segment.joined_by("and") and position and not sentence[position - 1].own_clause:
            found += [d for d in sentence[position - 1].drafts if d.slot == "finding"]
        return found
    for earlier in reversed(sentence[:position]):
        findings = [d for d in earlier.drafts if d.slot in ("finding", "gait")]
        if findings:
            return findings[-1:]
        if [d for d in earlier.drafts if d.slot != "finding"]:
            break
    ahead = [d for d in segment.drafts if d.slot == "finding" and d.start >= cue.end]
    if ahead:
        return [] if segment.drafts[0] is not ahead[0] else ahead[:1]
    if position == 0:
        findings = [d for s in previous for d in s.drafts if d.slot == "finding" and d.status is not Status.ABSENT]
        return findings[-1:]
    return []


def _resolve_one(draft: Draft) -> None:
    if draft.slot in ("finding", "gait") and "denied" not in draft.rules:
        draft.status = Status.RESOLVED
        draft.dropped = False
        draft.note("gone")


# -- plans and conditions ----------------------------------------------------------------------------------------------


def _plan(talk: Talk, sentence: list[Segment]) -> None:
    end = sentence[-1].end
    conditions = _conditions(sentence, end)
    planned_from = [(m.start, _plan_end(sentence, m)) for s in sentence for m in s.having("plans", "before")]
    planned_from += [(stop, end) for _, stop in conditions if stop < end]
    for segment in sentence:
        whole = any(_is_time_of_plan(talk, m) for m in segment.mentions)
        conditional = any(segment.start < start < segment.end for start, _ in conditions)
        for draft in segment.drafts:
            if any(start <= draft.start < stop for start, stop in conditions):
                _drop_in_condition(draft)
            elif whole or conditional or any(start <= draft.start < stop for start, stop in planned_from):
                _plan_one(draft)
            elif draft.slot in _ALWAYS_PLANNED and draft.status is not Status.ABSENT and not draft.dropped:
                draft.status = Status.PLANNED


def _is_time_of_plan(talk: Talk, mention: Mention) -> bool:
    return mention.get("plans") == "before" and " ".join(talk.words[mention.start : mention.end]) in _PLAN_TIMES


def _conditions(sentence: list[Segment], end: int) -> list[tuple[int, int]]:
    """Token ranges of "if …" up to where the main clause starts."""
    ranges = []
    for segment in sentence:
        for cue in segment.having("plans", "condition"):
            mains = [m.start for s in sentence for m in s.mentions if m.start > cue.end and _opens_main(m)]
            nexts = [
                s.start
                for s in sentence
                if s.start >= cue.end and s.index > segment.index and s.delimiter in (",", "then", ", then")
            ]
            stop = min(mains, default=end)
            if not mains and nexts:
                stop = nexts[0]
            ranges.append((cue.start, stop))
    return ranges


def _opens_main(mention: Mention) -> bool:
    return mention.get("plans") in ("main", "before") or mention.get("vet") is not None


def _plan_end(sentence: list[Segment], cue: Mention) -> int:
    """A plan reaches to the end of its sentence, or to the first word of today."""
    today = [m.start for s in sentence for m in s.having("times", "today") if m.start > cue.end]
    turns = [s.start for s in sentence if s.start > cue.end and s.joined_by("but", ", but")]
    return min([*today, *turns], default=sentence[-1].end)


def _drop_in_condition(draft: Draft) -> None:
    if draft.slot == "vet":
        draft.status = Status.PLANNED
    else:
        draft.drop("only a condition")


def _plan_one(draft: Draft) -> None:
    if draft.dropped or draft.status in (Status.HISTORY, Status.RESOLVED):
        return
    if draft.slot not in _PLANNABLE:
        draft.drop("spoken of in a plan")
    elif draft.status is not Status.ABSENT:
        draft.status = Status.PLANNED
        draft.note("planned")
