"""What is told once more of another time: "they'll go in again", "a bar on the near fore today, the off next time".

And what is put off behind it: "bar shoes on the fores, but that's for next time", "a full pad, that can wait".
"""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.after_the_event import set_for_later
from pipeline.reading.foot_groups import FootGroup, Groups
from pipeline.reading.plans import plan_one
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE, turns_to_today
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_WORN = frozenset({"pad", "shoe_type", "traction", "wedge", "packing"})
_THEM = frozenset({"they", "them", "it", "those", "that"})
_AHEAD = frozenset({"'ll", "will", "'d", "would", "may", "might", "could", "going", "can", "to"})
_GOING = frozenset({"go", "going", "put", "be", "come", "use", "fit", "try"})
_AGAIN = frozenset({"again", "back"})
_NOT = frozenset({"not", "n't", "never", "no"})
_OF_IT = frozenset({
    "and", "but", "the", "in", "on", "it", "'s", "is", "was", "were", "they", "that", "only", "just", "did", "one",
    "will", "be", "'ll", "had", "has", "he", "she", "for", "his", "her", "to", "of", "get", "gets", "i", "do", "so",
    "then", "with",
})  # fmt: skip
_POINTING = frozenset({"it", "that", "they", "was", "were"})
_NEAR = 1  # sentences from what was worn to the plan


_NEXT = ("another day", "another time", *(
    f"{the}next {time}" for the in ("", "the ") for time in ("time", "visit", "set", "shoeing", "trip", "go")
))  # fmt: skip
_PUT_OFF = Sayings(
    *(f"{it} {led}{when}" for it in ("that 's", "that is", "that 'll be", "they 're", "they 'll be", "it 's")
      for led in ("", "for ", "one for ", "a job for ") for when in _NEXT),
    *(f"{it} can wait" for it in ("that", "those", "they", "it")),
)  # fmt: skip
_THINGS = PLANNABLE - ALWAYS_PLANNED - {"manner"}
_CLOSING: tuple[list[str], ...] = ([], ["though"], ["then"], ["now"], ["too"], ["till"], ["until"], ["for"], ["not"])
_TAKEN_OUT = frozenset({"never done", "only intended", "only wished for"})
_HOW_MUCH = "something that is put off, but not how much of it"


def plan_again(talk: Talk) -> None:
    """A planned draft for each thing worn before that "will go on again"."""
    for segment in talk.segments if talk.says(_AGAIN) else ():
        words = set(talk.words[segment.start : segment.end])
        said = bool(words & _THEM) and bool(words & _AHEAD) and bool(words & _GOING) and bool(words & _AGAIN)
        said = said or _back_on(talk, segment)
        if not said or words & _NOT or any(d.slot in _WORN and not d.dropped for d in segment.drafts):
            continue
        worn = _worn_before(talk, segment)
        if worn:
            for draft in [d for d in segment.drafts if d.slot == "work"]:
                draft.drop("what was worn before goes on again")
        for draft in worn:
            again = replace(
                draft,
                segment=segment,
                start=segment.start,
                end=segment.end,
                status=Status.PLANNED,
                evidence=set(range(segment.start, segment.end)),
                rules=["planned again", "foot: where it was before"],
            )
            segment.drafts.append(again)


def _back_on(talk: Talk, segment: Segment) -> bool:
    """ "Pads left off for now, back on next time": when, and nothing else."""
    if segment.drafts or talk.words[segment.start : segment.start + 2] not in (["back", "on"], ["back", "in"]):
        return False
    return bool(segment.having("plans", "before")) or set_for_later(talk.words[segment.start + 2 : segment.end])


def _worn_before(talk: Talk, segment: Segment) -> list[Draft]:
    """The last kind of thing that the horse is said to have worn, on all feet it was on."""
    near = [s for s in talk.segments[: segment.index] if 0 <= segment.sentence - s.sentence <= _NEAR]
    told = [d for s in near if s.horse == segment.horse for d in s.drafts if not d.dropped and d.slot in _WORN]
    if not told or told[-1].status is not Status.HISTORY:
        return []
    return [d for d in told if d.status is Status.HISTORY and d.segment is told[-1].segment]


def tell_elsewhere(talk: Talk, groups: Groups) -> None:
    """A foot and a time alone: what was just told of another foot, or another time, is told of these as well.

    "A bar on the near fore today, the off fore next time", "thrush in it last time, today it's the off fore".
    """
    for segment in talk.segments if talk.having("times") or talk.having("plans") else ():
        if not groups.get(segment.index) or any(not d.dropped for d in segment.drafts):
            continue
        named = [g for g in groups[segment.index] if not g.anaphor]
        if len(named) != 1:
            continue
        status = _time_alone(talk, segment, named[0])
        if status is None or _heads(talk, segment):
            continue
        for draft in _just_told(talk, segment):
            done = draft.slot in PLANNABLE - ALWAYS_PLANNED and draft.slot != "manner"
            if draft.status is not status and (done or (draft.slot == "finding" and status is not Status.PLANNED)):
                again = replace(
                    draft, segment=segment, start=segment.start, end=segment.end, feet=named[0].feet, status=status,
                    rules=["told of another time"], evidence=set(range(segment.start, segment.end)), foot_carried=False,
                    zone=None, severity=None,
                )  # fmt: skip
                segment.drafts.append(again)


def _time_alone(talk: Talk, segment: Segment, foot: FootGroup) -> Status | None:
    """The time that a segment tells with a foot and nothing else."""
    times = [(m, Status.HISTORY) for m in segment.having("times", "history")]
    times += [(m, Status.PLANNED) for m in segment.having("plans", "before") if "next" in talk.words[m.start : m.end]]
    if turns_to_today(talk, segment):
        times += [(m, Status.PRESENT) for m in segment.having("times", "today")]
    times += [(m, Status.PLANNED) for m in segment.having("plans", "day") if m.start >= foot.end]
    held = {i for m, _ in times for i in m.literal} | set(range(foot.start, foot.end))
    held |= {i for m in segment.having("plans", "before") for i in m.literal}
    rest = {talk.words[i] for i in range(segment.start, segment.end) if i not in held}
    return times[0][1] if len({status for _, status in times}) == 1 and rest <= _OF_IT else None


def _heads(talk: Talk, segment: Segment) -> bool:
    """ "…, off fore next time, bar shoes": the foot and the time head what follows."""
    behind = talk.sentence(segment.sentence)
    return any(s.index == segment.index + 1 and s.joined_by(",") and s.drafts and not s.having("feet") for s in behind)


def _just_told(talk: Talk, segment: Segment) -> list[Draft]:
    """What the sentence told last, or the one before it where this one points to it."""
    near = [s for s in talk.sentence(segment.sentence) if s.index < segment.index]
    pointing = segment.having("plans", "day") or _POINTING & set(talk.words[segment.start : segment.end])
    if not near and pointing:
        near = list(talk.sentence(segment.sentence - 1))
    told = [[d for d in s.drafts if not d.dropped and d.feet] for s in near if s.horse == segment.horse]
    last = next((drafts for drafts in reversed(told) if drafts), [])
    if last and last[-1].status is Status.RESOLVED and "in" not in talk.words[segment.start : segment.end]:
        return []  # "that's healed. It's the off fore now. A crack"
    return [d for d in last if d.status is last[-1].status and d.feet == last[-1].feet]


def put_off(talk: Talk) -> None:
    """Plan what is told right before; whether more is meant is asked where other things were told in that breath."""
    if not talk.tells(_PUT_OFF):
        return
    for segment in talk.segments:
        form = _PUT_OFF.at(talk.words, segment.start)
        behind = talk.words[segment.start + len(form) : segment.end]
        if not form or behind[:1] not in _CLOSING or any(not d.dropped for d in segment.drafts):
            continue
        here = [s for s in talk.sentence(segment.sentence) if s.index < segment.index]
        here = [s for s in here or talk.sentence(segment.sentence - 1) if s.horse == segment.horse]
        told = _in_one_breath(here)
        for draft in told:
            draft.dropped = draft.dropped and _TAKEN_OUT.isdisjoint(draft.rules)
            plan_one(draft)
        others = [d for s in here for d in s.drafts if d not in told and d.slot in _THINGS and not d.dropped]
        bare = bool(here) and not here[-1].drafts  # "reset the fronts, the hinds, that's for next time"
        if (told or bare) and any(d.status is Status.PRESENT for d in others):
            talk.unread.append((segment.start, segment.end, _HOW_MUCH))


def _in_one_breath(here: list[Segment]) -> list[Draft]:
    """The things of the last segment, and of those that an "and" joins to it."""
    told: list[Draft] = []
    for segment in reversed(here):
        if told and segment.having("feet"):
            break  # "side clips in front and leather pads behind, but that's for next time"
        if not segment.drafts or any(d.slot not in _THINGS for d in segment.drafts if not d.dropped):
            break  # "thrush in the near hind, but that's for next time"
        told += segment.drafts
        if segment.own_clause or not segment.joined_by("and", ", and", "plus"):
            break
    return [d for d in told if d.slot in _THINGS and d.status is not Status.ABSENT]
