"""Some days ago: "he had a corn last week", "raised now, bounding on Tuesday"; what befell a foot may still be so."""

from __future__ import annotations

from collections.abc import Iterable

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Segment, Talk

_STOOD = frozenset({"had", "'d", "was", "were", "wore", "been"})
_DUE = frozenset({
    "to", "due", "meant", "supposed", "told", "asked", "wanted", "hoping", "going", "booked", "thinking", "better",
})  # fmt: skip
_DID = frozenset({
    "put", "trimmed", "reset", "pulled", "nailed", "set", "dressed", "packed", "used", "pared", "soaked", "shod", "got",
    "fitted", "applied", "treated", "gave", "poulticed", "wrapped", "measured", "found", "dealt",
})  # fmt: skip
_COUNTED_FROM = frozenset(
    {"since", "until", "till", "by", "from", "for", "next", "this", "every", "than", "as", "like"}
)
_THAT_WAS = frozenset({"last", "week", "weekend", "ago", "yesterday", "night", "evening", "morning", "back"})
_THAT, _HAD = frozenset({"that", "who", "which"}), (["had"], ["was"], ["were"], ["wore"])
_SOME = frozenset({"a", "an", "couple", "few", "of", "about", "around", "some"})
_NAILED = frozenset({"close_nail", "quicked", "puncture"})
_FARRIER, _STRUCK = frozenset({"i", "we"}), frozenset({"pricked", "quicked", "nicked", "hit", "caught", "stuck"})
_LED, _HAD_ONE = 5, frozenset({"had", "gave", "drove", "got", "left", "put"})
_EVENTS = frozenset({
    "show", "event", "ride", "race", "sale", "sales", "hunt", "hunting", "showing", "competition", "trials", "rodeo",
    "point", "foaling", "weaning", "holiday", "holidays", "break", "off", "layoff", "move", "snow", "frost", "thaw",
    "rain", "floods", "drought",
})  # fmt: skip


def some_days_ago(talk: Talk, sentence: list[Segment], segment: Segment) -> list[Mention]:
    """The day, where what stood or was done then is told: not what befell the foot ("lost it on Tuesday")."""
    days = [m for m in segment.having("times", "recent") if talk.words[m.start - 1] not in _COUNTED_FROM]
    if not days or (segment.present and not _the_one_that_had(talk, segment)) or segment.having("plans"):
        return []
    told = next((s.drafts for s in reversed(sentence) if s.index <= segment.index and s.drafts), [])
    if any(d.value in _NAILED and _did_it(talk, segment, d) for d in told):
        return days  # "I pricked him last week"; whom somebody else quicked then has it today
    if any(d.slot == "shoe_state" or d.value in _NAILED for d in told):
        return []
    words = talk.words[segment.start : segment.end]
    done = bool(segment.drafts) and not _DID.isdisjoint(words)
    done = done or ("went" in words and {d.slot for d in segment.drafts} in ({"gait"}, {"lameness"}))
    if done or _stood(talk, segment) or _told_of_today(talk, sentence, segment):
        return days
    acted = segment.past or talk.plays("action", segment.start, segment.end)
    return [] if acted else [m for m in days if not _THAT_WAS.isdisjoint(talk.words[m.start : m.end])]


def _did_it(talk: Talk, segment: Segment, draft: Draft) -> bool:
    """ "I pricked him", "pricked the near fore": the farrier, whom no word need name; not "pricked by the last man"."""
    if not _FARRIER.isdisjoint(talk.words[draft.start - 1 : draft.start + 1]):
        return True
    led = talk.words[max(segment.start, draft.start - _LED) : draft.start]
    if any(led[i] in _FARRIER and led[i + 1] in _HAD_ONE for i in range(len(led) - 1)):
        return True  # "Monday I had a close nail in his left front"
    behind = talk.words[draft.end : segment.end]
    whom = behind[:1] in (["him"], ["her"], ["it"]) or talk.words[draft.end - 1] in ("him", "her")
    at = draft.end + (
        draft.end - draft.start > 1 and behind[:1] in (["on"], ["in"])
    )  # "nicked the quick on the off fore"
    foot = talk.mention_starting(at + (talk.words[at : at + 1] in (["the"], ["his"], ["her"])))
    whom = whom or (foot is not None and foot.get("feet") is not None)
    return whom and draft.start == segment.start and talk.words[draft.start] in _STRUCK and "by" not in behind


def event_ahead(talk: Talk, sentence: list[Segment], segment: Segment, cue: Mention) -> bool:
    """ "Reset him before the show" is of today; "he had a corn before the show" of then."""
    if talk.words[cue.start : cue.start + 2] != ["before", "the"] or talk.words[cue.end - 1] not in _EVENTS:
        return False
    if segment.present or segment.having("plans"):
        return True
    alone = (segment.start, segment.end) == (cue.start, cue.end) and segment.joined_by("start")
    behind = [s for s in sentence if s.index == segment.index + 1]
    stood = any(_stood(talk, s) for s in ([segment, *behind] if alone else [segment]))
    return not stood and not _told_of_today(talk, sentence, segment)


def _told_of_today(talk: Talk, sentence: list[Segment], segment: Segment) -> bool:
    """Whether the day stands against today: "steel in front today, aluminum before the show"."""
    then = bool(segment.drafts) and not segment.past and not segment.having("times", "today")
    return then and any(s is not segment and s.drafts and s.having("times", "today") for s in sentence)


def _the_one_that_had(talk: Talk, segment: Segment) -> bool:
    """ "He's the one that had size ones last week": the present is only of who it is."""
    words = talk.words[segment.start : segment.end]
    turn = next((i for i, word in enumerate(words) if word in _THAT and words[i + 1 : i + 2] in _HAD), 0)
    behind = bool(talk.plays("present", segment.start + turn, segment.end))
    return turn > 0 and not behind and not segment.having("times", "today")


def time_words(talk: Talk, times: Iterable[Mention]) -> set[int]:
    """The tokens of the times, with what each counts: the "three" of "weeks ago"."""
    told: set[int] = set()
    for time in times:
        told.update(range(counted_from(talk, time), time.end))
    return told


def counted_from(talk: Talk, time: Mention, end: int = 0) -> int:
    """Where a time begins with what it counts, not before ``end``: "a couple of", "three"."""
    at = time.start
    while at > end:
        counted = talk.mention_ending(at)
        number = counted is not None and counted.number is not None
        if not number and talk.words[at - 1] not in _SOME:
            break
        at = counted.start if counted is not None and number else at - 1
    return at


def _stood(talk: Talk, segment: Segment) -> bool:
    """Whether "had" or "was" says how it stood: not "had to be done", "was due"."""
    at = [i for i in range(segment.start, segment.end) if talk.words[i] in _STOOD]
    return any(_DUE.isdisjoint(talk.words[i + 1 : i + 2]) for i in at)
