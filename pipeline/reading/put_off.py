"""What is put off behind it: "bar shoes on the fores, but that's for next time", "a full pad, that can wait"."""

from __future__ import annotations

from pipeline.reading.plans import plan_one
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_TIMES = ("time", "visit", "set", "shoeing", "trip", "go", "cycle")
_NEXT = ("another day", "another time", "later on", *(f"{the}next {time}" for the in ("", "the ") for time in _TIMES))
_PUT_OFF = Sayings(
    *(f"{it} {led} {when}"
      for it in ("that 's", "that is", "that 'll be", "that will be", "they 're", "it 's", "those are", "them 's")
      for led in ("for", "one for", "a job for", "something for") for when in _NEXT),
    *(f"{it} {when}" for it in ("that 'll be", "that will be", "they 'll be", "it 'll be") for when in _NEXT),
    *(f"{it} can wait" for it in ("that", "those", "they", "it", "them")),
)  # fmt: skip
_THINGS = PLANNABLE - ALWAYS_PLANNED - {"manner"}
_CLOSING: tuple[list[str], ...] = ([], ["though"], ["then"], ["now"], ["too"], ["till"], ["until"], ["for"], ["not"])
_TAKEN_OUT = frozenset({"never done", "only intended", "only wished for"})
_HOW_MUCH = "something that is put off, but not how much of it"


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
            if draft.dropped and _TAKEN_OUT.isdisjoint(draft.rules):
                continue
            draft.dropped = False
            plan_one(draft)
            draft.note("put off")
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
