"""What a denial does not deny: "not the bars he had", "never quit fidgeting", "I wouldn't call it a bad crack"."""

from __future__ import annotations

from pipeline.reading.foot_groups import SETUP_SLOTS
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import EXCEPT, EXCEPT_FOR
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.record import FEET, Status

_AS_BAD = Sayings("as bad", "so bad", "that bad", "like it", "like that", "like this", "to match it", "worse")
_STOPPED = frozenset({"quit", "quits", "quitting", "stop", "stops", "stopped", "stopping", "ceased", "cease"})
_POINTED = (["the"], ["those"], ["them"], ["that"], ["his"], ["her"])
_WHO_HAD = (("he",), ("she",), ("they",), ("it",), ("i",))
_HAD_ON = (("had",), ("wore",), ("'d",), ("was",), ("came",), ("used",))
_NO, _NOT_IT = frozenset({"not", "n't", "no", "none", "neither", "nor"}), frozenset({"not", "n't", "no"})
_ANY, _RELATIVE = frozenset({"a", "one", "single", "of", "any"}), frozenset({"that", "which", "what", "but", "who"})
_THEN = frozenset({"it", "they", "he", "she", "last", "before", "this", "in", "usual"})
_WHOLE = frozenset({"foot", "feet", "hoof", "hooves"})
_FOOT = frozenset({"foot", "feet", "hoof", "hooves", "one", "fore", "hind", "front", "fronts", "fores", "hinds"})
_LACKING = frozenset({"without", "that", "which", "free", "clear"})


def there_all_the_same(talk: Talk, segment: Segment, cue: Mention, draft: Draft) -> bool:
    """Whether the denial ``cue`` leaves the draft standing, though it reaches it."""
    there = (
        _but_one(talk.words[draft.end : draft.end + 5])
        or _only_the_degree(talk, segment, cue, draft)
        or _went_on(talk, cue, draft)
    )
    return there or _not_what_he_had(talk, cue, draft) or _never_seen_worse(talk, cue, draft)


def _but_one(words: list[str]) -> bool:
    """ "No corn other than the one in the near fore"; a "bar" may be a place."""
    led = words[:3] if words[:1] in EXCEPT[1:] else words[2:] if words[:2] in EXCEPT_FOR else []
    return "one" in led


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


def less_than_it_was(talk: Talk, draft: Draft) -> bool:
    """ "The sole isn't as thin as it was": thin still; not "isn't as thin as the off one"."""
    words, behind = talk.words[draft.start : draft.end], talk.words[draft.end : draft.end + 2]
    less = words[-2] in ("as", "so") and (behind[:1] != ["as"] or behind[-1] in _THEN)
    if less:
        draft.note("less than it was")
    return less


def _went_on(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Never quit fidgeting", "didn't stop dancing about": what was not stopped went on."""
    return draft.slot in ("manner", "gait") and not _STOPPED.isdisjoint(talk.words[cue.start : draft.start])


def affirm_all(talk: Talk, sentence: Sentence) -> None:
    """ "Not a foot on him that hasn't thrush", "no hind without a crack": denied of none is told of all."""
    if sentence.lacks(_LACKING) or sentence.lacks(_FOOT):
        return
    for draft in [d for s in sentence for d in s.drafts if d.slot == "finding" and "denied" in d.rules]:
        if _not_one_without(talk.words[draft.segment.start : draft.start]):
            draft.rules.remove("denied")
            draft.status = Status.PRESENT
            draft.note("not one foot without it")
            if not _WHOLE.isdisjoint(talk.words[draft.segment.start : draft.start]) and not draft.segment.having(
                "feet"
            ):
                draft.feet, draft.foot_carried = FEET, False


def _not_one_without(words: list[str]) -> bool:
    end = len(words)
    first = next((i for i, word in enumerate(words) if word in _NO), end)
    of = next((i for i in range(first + 1, end) if words[i] not in _ANY), end)
    feet = words[first + 1 : of + 2]
    second = next((i for i in range(of, end) if words[i] in _NOT_IT | {"without", "free", "clear"}), end)
    if second == end or _FOOT.isdisjoint(feet):
        return False
    return words[second] not in _NOT_IT or not _RELATIVE.isdisjoint(words[first:second])
