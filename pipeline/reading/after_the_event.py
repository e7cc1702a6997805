"""What is to be after an event to come: "after the race he goes back into steel" is planned, "he went" is done."""

from __future__ import annotations

from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE, turns_to_today
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
_TO_DO = [[verb] for verb in ("do", "finish", "drain", "pull", "take", "nail", "have", "get")]
SEASONS = frozenset({"spring", "summer", "fall", "autumn", "winter"})
_IN_SEASON = Sayings(*(f"{lead} {season}" for lead in ("in the", "back in", "on in") for season in sorted(SEASONS)))
_THAT_IS = Sayings("that 's", "it 's", "that is", "it is", "then it 's", "that 'll be", "it 'll be")
_AGAIN = "what is to be done again, but not whether it was done today"
_TO_GET = Sayings(
    *(f"to {get}" for get in ("get", "have", "go", "be")), *(f"{go} back" for go in ("go", "goes", "put", "going")),
    "put them", "put it", "gets", "goes into", "go into", "going into", "getting", "back on in", "back in in",
)  # fmt: skip


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


def to_do_then(talk: Talk, sentence: list[Segment], position: int) -> int | None:
    """ "I'm back in a week to pull it and drain it again": where what we come back to do begins; None without any."""
    segment = sentence[position]
    for told in reversed(sentence[: position + 1]):
        weeks = next((d for d in told.drafts if d.slot == "next_visit_weeks"), None)
        if weeks is not None:
            led = talk.words[weeks.end : weeks.end + 1] == ["to"] and _is_to_do(talk, weeks.end + 1)
            if led and told is not segment and {"do", "again"} <= {*talk.words[weeks.end : told.end]}:
                if told is sentence[position - 1]:  # "… to do it again, bar shoes in front"
                    talk.unread.append((weeks.end, segment.end, _AGAIN))
                return None
            return max(segment.start, weeks.end) if led and not segment.having("times", "today") else None
        if told.past or talk.plays("subject", told.start, told.start + 1):
            return None  # "…, and I reset the fronts"
    return None


def _is_to_do(talk: Talk, at: int) -> bool:
    told = talk.mention_starting(at)
    does = told is not None and told.is_any(("work", "treatments", "shoe_states"))
    return does or at in talk.plays("action", at, at + 1) or talk.words[at : at + 1] in _TO_DO


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


def set_for_a_season(talk: Talk, segment: Segment) -> bool:
    """ "So that's borium on all four in the fall": what is put on, and no word of the past: a season to come."""
    if segment.past or not segment.drafts or not talk.tells(_IN_SEASON):
        return False
    only = all(d.slot in PLANNABLE - ALWAYS_PLANNED for d in segment.drafts)
    words = talk.words[segment.start : segment.end]
    closing = any(words[-len(form) :] == form for form in _IN_SEASON.forms)
    if only and closing and (_TO_GET.said_in(words) or _against_today(talk, segment)):
        return True  # "they're to get bars in the spring", "reset for now, and bars in the spring"
    led = any(at < segment.drafts[0].start for at, _ in _THAT_IS.within(talk.words, segment.start, segment.end))
    return only and closing and led and not segment.having("times", "today")


def set_for_later(words: list[str]) -> bool:
    """ "… in the spring", and nothing behind it."""
    return words in _IN_SEASON.forms


def _against_today(talk: Talk, segment: Segment) -> bool:
    """Whether what was done today is told right before, and it has no verb; not "egg bars in the fall, plain now"."""
    if any(talk.roles[i] in ("subject", "past", "present", "action") for i in range(segment.start, segment.end)):
        return False
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or segment.sentence - before.sentence > 1 or before.horse != segment.horse:
        return False
    done = any(d.slot in PLANNABLE - ALWAYS_PLANNED and not d.dropped for d in before.drafts)
    return done and turns_to_today(talk, before)
