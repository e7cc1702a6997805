"""What is planned, and what is only a condition: "if he's still sore we'll go to a full pad"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.after_the_event import SEASONS, TO_COME, planned_after, set_for_a_season, to_do_then
from pipeline.reading.cleft import NEEDED, needed, put_on_behind
from pipeline.reading.conditions import closed_by, conditions_in, due_then, keeps_off, when_due
from pipeline.reading.mentions import Mention
from pipeline.reading.said_behind import SAID_BEHIND, say_behind
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE, bids_no_more, turns_to_today
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.to_be_then import GETTING, got_then, to_be_then
from pipeline.reading.tokens import NOT
from pipeline.reading.treated import TO_DO, to_be_treated
from pipeline.reading.vet import NOT_NEEDED
from pipeline.reading.wishes import HAVE, regretted
from pipeline.record import Status
from pipeline.vocabulary import CLASS_SLOTS

_DAYS = frozenset({"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"})
_LATER = _DAYS | SEASONS | {"tomorrow", "next"} | TO_COME
_IS_DOING, _ANNOUNCING = ("'m", "putting"), frozenset({"plan"})
_GO_ON = {(go, on) for go in ("go", "goes", "going") for on in ("on", "in", "back")}
_NO_PLAN = frozenset({"no", "without", "worked", "working", "works", "held", "paid", "failed", "good", "bad"})
_OF_TODAY, _TOLD = frozenset({"today", "now"}), frozenset({"told", "asked"})
_TOLD_TO_DO = _TOLD | TO_DO
_I_ASKED = (["i"], ["i", "'ve"], ["and", "i"], [".", "i"], [",", "i"], ["so", "i"], ["but", "i"])
_TELLING, _WHO = 10, 4  # tokens back to who was told, and of who it was
_KEEP = frozenset(
    {"keep", "it", "that", "the", "foot", "on", "with", "try", "have", "go", "start", "put", "get", "his", "her"}
    | {"near", "off", "left", "right", "fore", "front", "hind", "both", "hinds", "fronts"}
)
_GET, _HIM = frozenset({"get", "have"}), frozenset({"him", "her", "them", "it"})
_SAID = frozenset({"said", "say", "told", "tell", "asked", "ask", "please"})
_TELLING_WHY = ("and", ", and", ",", "because", ", because", "cause", ", cause")
_BEING = frozenset({"'m", "am", "'re", "are", "'s", "is"})
_THAT_ONE = (["that", "'s"], ["that", "is"], ["that", "was"])
_PUT_NOW = frozenset({"left", "put", "fitted", "strapped", "taped", "nailed", "glued"})
_AHEAD_OF = Sayings("ahead of", "with a view to", "in readiness for", "to get him ready for", "to get her ready for")
_TO_COME = frozenset({"'ll", "will", "'d", "would", "can", "could", "to", "should", "might", "may"})
_IS_ON = (["'s", "on"], ["is", "on"], ["are", "on"], ["'re", "on"], ["'s", "in"], ["are", "in"])
_OPEN = frozenset({"if", "whether", "that", "how", "until", "till", "before", "so", "sure"})
_SO_MUCH = frozenset({"well", "good", "great", "bad", "much", "badly", "strong"})  # "it isn't holding that well"
_DUE = Sayings(
    "due a", "due an", "due the", "due for", "due new", "due another", "due their", "due his", "due her", "due to be",
    "supposed to get", "supposed to have", "supposed to be", "meant to be", "meant to have", "meant to get",
)  # fmt: skip
_DID = frozenset({"did", "done", "got", "managed", "anyway", "regardless", "still", "first"})
_UNTIL_BACK = Sayings(*(f"{until} {back}" for until in ("until", "till", "til") for back in (
    "i 'm back", "i come back", "i get back", "i 'm next", "i see him", "i see her", "we 're back", "we come back",
    "i 'm here", "i 'm out",
)))  # fmt: skip
_NEXT_WEEK = Sayings("next week")
_ASKING = Sayings(
    "been asking", "keep asking", "keeps asking", "was asking", "were asking", "asked about it", "asked about them",
    "asked me about it", "asked me about them", "on at me about it", "on about it",
)  # fmt: skip
_PUT_ON = frozenset({"put", "gave", "fitted", "went", "got", "did", "drilled", "used"})
_NEED, _GETTING = frozenset({"need", "want", "to"}), frozenset({"have", "get", "be"})
_NEED_NOT = frozenset({"to", "no", "nothing", "neither", "none", ".", ","})
_THEY = frozenset({"they", "these", "those", "both"})
_UNTIL = frozenset({"until", "till", "til"})
_PLAN_TIMES = frozenset({
    "next time", "next visit", "next cycle", "next trip", "next shoeing", "next go", "time after", "down the road",
    "down the line", "down the track", "in future", "in the future", "going forward", "plan is", "the plan is",
    "next step", "next stop", "next move", "next option", "another time",
})  # fmt: skip


def plan(talk: Talk, sentence: Sentence) -> None:
    end, planned = sentence[-1].end, "plans" in sentence.classes
    conditions = conditions_in(talk, sentence, end)
    plans = _cues(talk, sentence)
    planned_from = [(m.start, _plan_end(talk, sentence, m)) for m in plans]
    depending = [(stop, _today_behind(talk, sentence, stop)) for _, stop in conditions if stop < end]
    _drop_asked_about(talk, sentence)
    back = [s for s in sentence for d in s.drafts if d.slot == "next_visit_weeks"]
    later = not sentence.lacks(_LATER) or when_due(talk, sentence[0].start) or bool(back)
    unplanned, due = planned or not sentence.lacks(HAVE), talk.tells(_DUE)
    hanging = bool(depending or plans)
    told, said_behind, bid = not sentence.lacks(_TOLD_TO_DO), not sentence.lacks(SAID_BEHIND), not sentence.lacks(_GET)
    for position, segment in enumerate(sentence):
        if unplanned:
            _drop_unplanned(talk, sentence, position)
        if not segment.drafts:
            continue
        if due:
            _due_but(talk, sentence, position)
        if told:
            _told_to(talk, segment)
        if said_behind:
            say_behind(talk, segment, plan_one)
        if bid:
            _bid_sedate(talk, sentence, segment)
        ahead = _planned_from(talk, segment) if plans else None
        ahead = to_do_then(talk, sentence, position) if back and ahead is None else ahead
        later_whole = (later and _is_to_be(talk, sentence, position)) or got_then(talk, sentence, segment)
        later_whole = later_whole or (bool(conditions) and closed_by(talk, sentence, position, conditions))
        conditional = bool(conditions) and any(segment.start < start < segment.end for start, _ in conditions)
        for draft in segment.drafts:
            whole = later_whole or (ahead is not None and draft.start >= ahead)
            if conditions and _lies_in(draft, conditions):
                _drop_in_condition(talk, draft)
            elif conditional and not whole and _stands_without(talk, segment, draft):
                continue
            elif whole or conditional or (hanging and _hangs(talk, draft, depending, planned_from)):
                plan_one(draft)
            elif draft.slot in ALWAYS_PLANNED and draft.status is not Status.ABSENT and not draft.dropped:
                draft.status = Status.PLANNED


def _cues(talk: Talk, sentence: Sentence) -> list[Mention]:
    """What says that something is to be, the feet that need it among them."""
    plans = [m for s in sentence for m in s.having("plans", "before")] if "plans" in sentence.classes else []
    plans = [m for m in plans if not keeps_off(talk, m)]
    plans += [] if sentence.lacks(_NEED) else _feet_in_need(talk, sentence)
    plans = [m for m in plans if not put_on_behind(talk, sentence, m.start)]
    return plans + ([] if sentence.lacks(NEEDED) else needed(talk, sentence)) + to_be_then(talk, sentence)


def _feet_in_need(talk: Talk, sentence: Sentence) -> list[Mention]:
    """ "The fronts need wedge pads, I'd none with me", "they want bars": what they are to get."""
    found = []
    for at in [i for s in sentence for i in range(s.start + 1, s.end - 1) if talk.words[i] in _NEED]:
        feet = talk.mention_ending(at)
        of_feet = (feet is not None and feet.get("feet") is not None) or talk.words[at - 1] in _THEY
        if talk.words[at] == "to" and talk.words[at + 1] not in _GETTING:
            continue  # "off hind to have a poultice every night"
        if of_feet and not any(m.get("plans") for m in talk.holding(at)) and talk.words[at + 1] not in _NEED_NOT:
            found.append(Mention(at, at + 1, (at,), {"plans": "before"}))
    return found


def _today_behind(talk: Talk, sentence: Sentence, start: int) -> int:
    """ "If he's sore we'll go to bars, but today I just trimmed it": where what depends gives way to what was done."""
    turns = [s for s in sentence if s.start > start and turns_to_today(talk, s)]
    return min([s.start for s in turns], default=sentence[-1].end)


def _hangs(talk: Talk, draft: Draft, depending: list[tuple[int, int]], planned_from: list[tuple[int, int]]) -> bool:
    """Whether the draft hangs on a condition or a plan said before."""
    return _follows(talk, draft, depending) or _hangs_on(talk, draft, planned_from)


def _hangs_on(talk: Talk, draft: Draft, planned_from: list[tuple[int, int]]) -> bool:
    """Whether a plan said before reaches the draft."""
    return _lies_in(draft, planned_from) and (draft.slot in PLANNABLE or not _told_of_now(talk, draft))


def _follows(talk: Talk, draft: Draft, depending: list[tuple[int, int]]) -> bool:
    """Whether the draft depends on a condition before it; not "if it won't hold, and it isn't holding, shelly"."""
    follows = _lies_in(draft, depending)
    joined = follows and draft.slot not in PLANNABLE and _clause_of(talk, draft).joined_by("and", ", and")
    return follows and not (joined and _told_of_now(talk, draft))


def _clause_of(talk: Talk, draft: Draft) -> Segment:
    """The draft's segment, or the one with a verb that it is set behind: "it isn't holding well, shelly"."""
    clause = draft.segment
    while not clause.own_clause and clause.joined_by(",") and clause.index:
        clause = talk.segments[clause.index - 1]
    return clause


def _told_of_now(talk: Talk, draft: Draft) -> bool:
    """ "They want to put pads on and the near fore has a bruise": a clause behind the plan, with a verb of its own."""
    clause = _clause_of(talk, draft)
    words = talk.words[clause.start : draft.start + 1]
    words = words[1:] if words[:2] in _THAT_ONE else words  # "he won't put it down, and that's a five out of five"
    led = {word for word, behind in pairwise(words) if not (word == "that" and behind in _SO_MUCH)}
    apart = clause.own_clause and clause.joined_by(*_TELLING_WHY) and not clause.having("plans")
    doubted = clause.joined_by(*_TELLING_WHY[3:]) and bool(clause.having("doubts", "before"))
    return apart and (clause.present or clause.past or doubted) and led.isdisjoint(_OPEN)


def _stands_without(talk: Talk, segment: Segment, draft: Draft) -> bool:
    """ "He overreaches when he's tired": true whether or not."""
    return draft.slot not in PLANNABLE or _left_until(talk, segment, draft)


def _left_until(talk: Talk, segment: Segment, draft: Draft) -> bool:
    """ "I've left the shoe off until the vet's seen her", "a boot's on it till it grows": done, and for how long."""
    led = talk.words[segment.start : draft.start + 1]
    done = bool(_PUT_NOW & set(led)) and led[0] in _PUT_NOW | {"i", "we"} and _TO_COME.isdisjoint(led)
    said = talk.words[draft.start : draft.end + 2]
    done = done or any(said[i : i + 2] in _IS_ON for i in range(len(said) - 1))
    return done and any(talk.words[m.start] in _UNTIL and m.start >= draft.end for m in segment.having("plans"))


def _is_to_be(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """Whether the segment tells of a day, a visit or an event to come."""
    segment = sentence[position]
    to_come = _set_for_a_day(talk, sentence, position) or set_for_a_season(talk, segment)
    to_come = to_come or _when_i_am_back(talk, sentence, segment)
    return to_come or planned_after(talk, sentence, position)


def _lies_in(draft: Draft, stretches: list[tuple[int, int]]) -> bool:
    return any(start <= draft.start < stop for start, stop in stretches)


def _drop_unplanned(talk: Talk, sentence: Sentence, position: int) -> None:
    """Drop what was only intended, given up or feared."""
    segment = sentence[position]
    unmet = [m.end for m in segment.having("plans", "unmet")] + regretted(talk, segment)
    for end in unmet if unmet and not put_on_behind(talk, sentence, unmet[0]) else ():
        told = talk.words[end - 1] != "about" or any(m.start >= end and m.is_any(CLASS_SLOTS) for m in segment.mentions)
        _drop_unmet(sentence if told or end == segment.end else sentence[: position + 1], position, end)
    for cue in segment.having("plans", "given_up"):
        _give_up(talk, sentence, cue)
    for cue in segment.having("plans", "before"):
        _drop_feared(talk, segment, cue)
        if _unwanted(talk, cue) and not segment.having("plans", "condition"):
            for draft in [d for d in segment.drafts if d.start >= cue.end and d.slot in PLANNABLE - ALWAYS_PLANNED]:
                draft.drop("only intended")


def _unwanted(talk: Talk, cue: Mention) -> bool:
    """ "Didn't want to put pads on", "not going to trim": what was not to be."""
    return talk.words[cue.end - 1] == "to" and not NOT.isdisjoint(talk.words[cue.start - 1 : cue.start])


def _due_but(talk: Talk, sentence: list[Segment], position: int) -> None:
    """ "The hinds were due a trim but she'd had enough": what was due and, says the "but", did not come to pass."""
    segment = sentence[position]
    if position + 1 == len(sentence) or not sentence[position + 1].joined_by("but", ", but"):
        return
    behind = set(talk.words[sentence[position + 1].start : sentence[position + 1].end])
    if behind & _DID and not behind & NOT:
        return  # "due a trim, but I did them anyway" says that they were done
    due = next((at for at, _ in _DUE.within(talk.words, segment.start, segment.end)), segment.end)
    for draft in [d for d in segment.drafts if d.start >= due and d.slot in PLANNABLE - ALWAYS_PLANNED]:
        draft.drop("only intended")


def _told_to(talk: Talk, segment: Segment) -> None:
    """ "Told the lad to soak it", "asked her to keep it poulticed", "I asked for a soak": what others are to do."""
    for draft in to_be_treated(talk, segment):
        plan_one(draft)
    for draft in [d for d in segment.drafts if d.slot == "treatment"]:
        led = talk.words[max(segment.start, draft.start - _TELLING) : draft.start]
        at = max((i for i, word in enumerate(led) if word in _TOLD), default=len(led))
        said = led[at + 1 :]
        if said[:1] == ["for"] and led[:at][-2:] in _I_ASKED:
            plan_one(draft)
        to = said.index("to") if "to" in said else 0
        if 0 < to <= _WHO and set(said[to + 1 :]) <= _KEEP and said[:1] != ["me"]:
            plan_one(draft)


def _bid_sedate(talk: Talk, sentence: list[Segment], segment: Segment) -> None:
    """ "I said get the vet and get her sedated", "get him sedated before I come": what others are to see to."""
    for draft in [d for d in segment.drafts if d.value == "sedated" and d.status is Status.PRESENT]:
        at = draft.start - 2
        if at < sentence[0].start or talk.words[at] not in _GET or talk.words[at + 1] not in _HIM:
            continue
        led = talk.words[sentence[0].start : at]
        bid = not led or led[-1] in _SAID or led[-2:-1] in (["told"], ["asked"])
        joined = led[-1:] in (["and"], [","], ["to"], ["or"]) and not _SAID.isdisjoint(led)
        if bid or joined:
            plan_one(draft)


def announce(talk: Talk, sentence: Sentence, announced: bool) -> bool:
    """ "Next trip's plan first.": what follows is planned, until today is spoken of; returns whether that goes on."""
    if (not announced and sentence.lacks(_ANNOUNCING)) or sentence.says(_OF_TODAY):
        return False
    drafts = [d for s in sentence for d in s.drafts]
    if announced:
        for draft in drafts:
            plan_one(draft)
        return not drafts
    return not drafts and sentence.says(_ANNOUNCING) and sentence.lacks(_NO_PLAN)


def _drop_unmet(sentence: list[Segment], position: int, end: int) -> None:
    """ "I was going to do straight bars but …": what was only intended, up to the next clause."""
    for segment in sentence[position:]:
        if segment is not sentence[position] and (segment.own_clause or not segment.delimiter.startswith(",")):
            return
        for draft in segment.drafts:
            if draft.start >= end and draft.slot in PLANNABLE - {"next_visit_weeks"} and NOT_NEEDED not in draft.rules:
                draft.drop("only intended")


def _drop_feared(talk: Talk, segment: Segment, cue: Mention) -> None:
    """ "He'll get thrush if she doesn't clean it": what is to come is no finding of today."""
    if {"get", "develop", "end"} & set(talk.words[cue.end - 1 : cue.end + 2]):
        for draft in segment.drafts:
            if draft.slot == "finding" and draft.start >= cue.end:
                draft.drop("only feared")


def _give_up(talk: Talk, sentence: list[Segment], cue: Mention) -> None:
    """ "I'd put wedges on, but thought better of it": what was planned before goes."""
    for draft in [d for s in sentence for d in s.drafts if d.start < cue.start]:
        would = {"'d", "would", "could"} & set(talk.words[draft.segment.start : draft.start])
        if draft.slot in PLANNABLE - ALWAYS_PLANNED and (draft.status is Status.PLANNED or would):
            draft.drop("only intended")


def _set_for_a_day(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """ "I'm putting a glue-on on it Tuesday", "we're fitting bars tomorrow": done on a day to come."""
    segment = sentence[position]
    if segment.past or segment.having("times", "today"):
        return False
    words = talk.words[segment.start : segment.end]
    named = "tomorrow" in words or any(talk.words[m.end - 1] in _DAYS for m in segment.having("times", "recent"))
    named = named or _NEXT_WEEK.said_in(words)
    if not _GO_ON.isdisjoint(pairwise(words[1:])):
        named = named or any(d.slot == "next_visit_weeks" for d in segment.drafts)
        return named and all(d.slot in PLANNABLE for d in segment.drafts)  # "the boots go on the fronts next week"
    subjects = talk.plays("subject", segment.start, segment.end)
    if not subjects and not segment.present and "tomorrow" in words:
        return all(d.slot in PLANNABLE for d in segment.drafts)  # "a poultice on it tomorrow"
    going = [talk.words[i + 1 : i + 3] for i in subjects]
    return named and any(w[0] in _BEING and w[1].endswith("ing") for w in going if len(w) == len(_IS_DOING))


def _drop_asked_about(talk: Talk, sentence: list[Segment]) -> None:
    """ "Borium, they've been asking, and I said in the fall": the topic of what was asked, not put on."""
    for position, (topic, asked) in enumerate(pairwise(sentence) if talk.tells(_ASKING) else ()):
        if asked.drafts or not _ASKING.said_in(talk.words[asked.start : asked.end]):
            continue
        alone = len(topic.drafts) == 1 and topic.drafts[0].end == topic.end and topic.drafts[0].start == topic.start
        put_on = any(not _PUT_ON.isdisjoint(talk.words[s.start : s.end]) for s in sentence[position + 2 :])
        if alone and not put_on and topic.drafts[0].slot in PLANNABLE - ALWAYS_PLANNED:
            topic.drafts[0].drop("asked about")


def _when_i_am_back(talk: Talk, sentence: list[Segment], segment: Segment) -> bool:
    """ "In six weeks the fronts get leather pads": a time to come opens the sentence, and what is to be follows."""
    first = sentence[0]
    if when_due(talk, segment.start):
        return True
    if not any(d.slot == "next_visit_weeks" for d in first.drafts):
        return False
    if segment is not first and talk.words[segment.end - 1] == "then":
        return True  # "I'm back in one week, and I'd say a full pad on the near fore then"
    led = talk.words[first.start] == "in"
    getting = GETTING & set(talk.words[segment.start : segment.end])
    return led and bool(getting) and not segment.having("times", "today") and not segment.past


def _planned_from(talk: Talk, segment: Segment) -> int | None:
    """Where the plan of a segment with a time to come begins: "trimmed them today, with pads to come next time"."""
    cues = segment.having("plans", "before")
    times = [m for m in cues if " ".join(talk.words[m.start : m.end]) in _PLAN_TIMES]
    if not times:
        return None
    today = [m.end for m in segment.having("times", "today") if m.end <= times[-1].start]
    today += [at + len(form) for at, form in _AHEAD_OF.within(talk.words, segment.start, times[-1].start)]
    return max(today, default=segment.start)


def _plan_end(talk: Talk, sentence: list[Segment], cue: Mention) -> int:
    """A plan reaches to the end of its sentence, or to the first word of today."""
    today = [m.start for s in sentence for m in s.having("times", "today") if m.start > cue.end]
    today += [s.start for s in sentence if s.start > cue.end and turns_to_today(talk, s)]
    joined = [s for s in sentence if s.joined_by("but", ", but", "so", ", so") or talk.words[s.start] == "so"]
    turns = [s.start for s in joined if s.start > cue.end]
    turns += [s.start for s in sentence if s.start > cue.end and (_done_instead(talk, s) or bids_no_more(talk, cue, s))]
    if _unwanted(talk, cue):
        turns += [s.start for s in sentence if s.start > cue.end and s.own_clause]
    return min([*today, *turns], default=sentence[-1].end)


def _done_instead(talk: Talk, segment: Segment) -> bool:
    """ "Told them to stop and soaked it myself": "soaked it" was done; "wrapped and soaked" is to be."""
    done = any(d.start == segment.start and talk.words[d.start].endswith("ed") for d in segment.drafts)
    it = talk.words[segment.start + 1 : segment.start + 2]
    return done and segment.joined_by("and", ", and") and not _HIM.isdisjoint(it)


def _drop_in_condition(talk: Talk, draft: Draft) -> None:
    until = draft.slot == "next_visit_weeks" and _UNTIL_BACK.said_in(talk.words[draft.segment.start : draft.start])
    if until or due_then(talk, draft):
        return  # "the rest are fine until I'm back in four weeks"
    if draft.slot == "vet":
        draft.status = Status.PLANNED
    else:
        draft.drop("only a condition")


def plan_one(draft: Draft) -> None:
    if draft.dropped or draft.status in (Status.HISTORY, Status.RESOLVED):
        return
    if draft.slot == "manner" and draft.value != "sedated":
        return
    if draft.slot not in PLANNABLE and "denied" in draft.rules:
        return  # "thinking I'll find corns and no, no corns in either fore"
    if draft.slot not in PLANNABLE:
        draft.drop("spoken of in a plan")
    elif draft.status is not Status.ABSENT:
        draft.status = Status.PLANNED
        draft.note("planned")
