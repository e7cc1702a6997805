"""What a denial does not deny: "not the bars he had", "never quit fidgeting", "I wouldn't call it a bad crack"."""

from __future__ import annotations

from pipeline.reading.foot_groups import SETUP_SLOTS
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_AS_BAD = Sayings("as bad", "so bad", "that bad", "like it", "like that", "like this", "to match it", "worse")
_STOPPED = frozenset({"quit", "quits", "quitting", "stop", "stops", "stopped", "stopping", "ceased", "cease"})
_POINTED = (["the"], ["those"], ["them"], ["that"], ["his"], ["her"])
_WHO_HAD = (("he",), ("she",), ("they",), ("it",), ("i",))
_HAD_ON = (("had",), ("wore",), ("'d",), ("was",), ("came",), ("used",))


def there_all_the_same(talk: Talk, segment: Segment, cue: Mention, draft: Draft) -> bool:
    """Whether the denial ``cue`` leaves the draft standing, though it reaches it."""
    there = _only_the_degree(talk, segment, cue, draft) or _went_on(talk, cue, draft)
    return there or _not_what_he_had(talk, cue, draft) or _never_seen_worse(talk, cue, draft)


def _only_the_degree(talk: Talk, segment: Segment, cue: Mention, draft: Draft) -> bool:
    """ "Wouldn't call it a bad crack": it is there, and not so bad."""
    called = "call" in talk.words[cue.start : cue.end]
    if not called or not any(cue.end <= m.start < draft.start for m in segment.having("severities")):
        return False
    draft.severity = None
    draft.note("not in that degree")
    return True


def _not_what_he_had(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Steel in front, not the aluminum he had last time": what he had until today."""
    pointed = talk.words[cue.start : cue.end] == ["not"] and talk.words[cue.end : cue.end + 1] in _POINTED
    worn = tuple(talk.words[draft.end : draft.end + 2])
    if draft.slot not in SETUP_SLOTS or not pointed or worn[:1] not in _WHO_HAD or worn[1:] not in _HAD_ON:
        return False
    draft.status = Status.HISTORY
    draft.note("what he had until today")
    return True


def _never_seen_worse(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "I've never seen thrush as bad": there was none like it before."""
    return talk.words[cue.start] == "never" and bool(_AS_BAD.at(talk.words, draft.end))


def _went_on(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Never quit fidgeting", "didn't stop dancing about": what was not stopped went on."""
    return draft.slot in ("manner", "gait") and not _STOPPED.isdisjoint(talk.words[cue.start : draft.start])
