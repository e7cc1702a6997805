"""What is to be after an event to come: "after the race he goes back into steel" is planned, "he went" is done."""

from __future__ import annotations

from pipeline.reading.scopes import PLANNABLE
from pipeline.reading.talk import Segment, Talk

AFTER = frozenset({"after"})
TO_COME = AFTER | {"tonight"}
_UNTIL = frozenset({"until", "till"})
_WHOSE = frozenset({"the", "his", "her", "their", "this", "that", "next"})
_DAYS = frozenset(
    {"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "weekend", "christmas"}
)
_EVENTS = _DAYS | {
    "show", "shows", "sale", "sales", "season", "holidays", "race", "races", "racing", "meet", "meeting", "hunt",
    "hunting", "event", "competition", "championships", "finals", "trials", "trial", "gymkhana", "rodeo", "fair",
    "ride", "camp", "wedding", "foaling",
}  # fmt: skip
_DONE_BY_ME = frozenset({"i", "we", "put", "stuck", "did", "gave", "got", "left", "went"})
_BEFORE_EVENT = 3  # words between "after" and what it is after: "after her next big show"
_TO_BE = frozenset({"goes", "go", "comes", "come", "gets", "get", "is", "'s", "are", "'re", "be", "can", "will", "'ll"})
_I = frozenset({"i", "we"})


def planned_after(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """Whether the segment tells what is to be after an event that it, or the segment before it, names."""
    segment = sentence[position]
    if tonight(talk, segment):
        return True
    if segment.past or segment.having("times", "today"):
        return False
    if any(talk.words[at - 1] in _I for at in talk.plays("action", segment.start + 1, segment.end)):
        return False  # "after the race I put him back in steel"
    at = _event_at(talk, segment)
    if at is None and position and not sentence[position - 1].drafts:
        at = _event_at(talk, sentence[position - 1])
    if at is None or not all(d.slot in PLANNABLE for d in segment.drafts):
        return False  # "he's short after the race", "she comes back with a bruise after a hunt"
    return bool(_TO_BE & set(talk.words[segment.start : segment.end]))


def tonight(talk: Talk, segment: Segment) -> bool:
    """ "Poultice tonight", "they're to soak it tonight": what others will do to the foot when I am gone."""
    words = set(talk.words[segment.start : segment.end])
    if segment.past or "tonight" not in words or words & _DONE_BY_ME:
        return False
    return all(d.slot == "treatment" and not talk.words[d.start].endswith("ed") for d in segment.drafts)


def _event_at(talk: Talk, segment: Segment) -> int | None:
    """The token behind "after the race", where the segment says it."""
    for led in [i for i in range(segment.start, segment.end) if talk.words[i] in AFTER]:
        if led and talk.words[led - 1] in _UNTIL:
            continue  # "plain shoes till after the show"
        for at in range(led + 1, min(led + 1 + _BEFORE_EVENT, segment.end)):
            named = talk.words[led + 1] in _WHOSE or at == led + 1
            if named and talk.words[at] in _EVENTS:
                return at + 1
    return None
