"""The words of an earlier time in a segment, also "when he was" and a lone "before"; not what is still to come."""

from __future__ import annotations

from itertools import product

from pipeline.reading.all_season import CALENDAR, before_then, season_ahead, since_what, still_to_come
from pipeline.reading.days_ago import event_ahead, some_days_ago
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Segment, Sentence, Talk
from pipeline.reading.was_there import goes_on_again, in_it_still

_KNOWN = frozenset({"know", "knew", "known"})
_AT_SOME = (["at", "some"], ["at", "one"], *(["in", s] for s in ("spring", "summer", "autumn", "winter", "fall")))
WHERE, IT_WAS = frozenset({"where"}), frozenset(product(("he", "she", "it", "they"), ("was", "were", "had")))
_BEFORE_US = (["before", "me"], ["before", "us"])
_WORE = frozenset({"was", "were", "had", "wore", "'d"})
_WEARERS = frozenset({"he", "she", "they", "it", "we", "somebody", "someone"})
_GOES_ON = frozenset({
    "only", "just", "never", "was", "were", "is", "are", "did", "do", "had", "have", "has", "came", "went", "kept",
    "wo", "would", "could", "held", "always",
})  # fmt: skip
_BEFELL = frozenset({"foundered", "had", "'d", "got", "did", "was"})
_IN = frozenset({"in"})
_OTHER_THINGS = frozenset({"days", "weeks", "months", "hours", "minutes", "degrees", "of", "feet"})
_RECENT_YEARS, _OLD_YEARS = range(11, 27), range(90, 100)
_PICTURES = frozenset({"films", "film", "pictures", "x", "xrays", "radiographs", "images"})  # they show what is there
_BY_VET, _IT = frozenset({"vet", "vets", "they", "clinic", "hospital"}), frozenset({"it", "that", "this", "them"})
_FOUND = frozenset({"confirmed", "diagnosed", "found", "x", "xrayed", "filmed", "saw", "spotted", "showed", "picked"})
_FOR_GOOD = frozenset({"navicular", "ringbone", "sidebone", "rotation", "keratoma", "club_foot"})
_GONE = frozenset({"gone", "resolved", "cleared", "removed", "cured", "operated"})
_AS = frozenset({"like", "as", "way", "what", "that"})
_AGREED = frozenset({
    "promised", "said", "told", "agreed", "planned", "meant", "talked", "discussed", "decided", "suggested", "advised",
})  # fmt: skip
_AGREED_BY = _AS | _AGREED | frozenset({
    "i", "we", "they", "he", "she", "you", "'d", "had", "'ve", "have", "her", "him", "them", "about", "to", "would",
    "on", "it", "was", "do", "vet", "the", "owner", "back",
})  # fmt: skip
UNLIKE = frozenset({"unlike", "not", "change"})
_TIMES = CALENDAR | frozenset({
    "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "time", "visit", "trip", "month",
    "week", "year", "season", "cycle", "day", "ago",
})  # fmt: skip


def earlier_cues(talk: Talk, sentence: list[Segment], segment: Segment) -> list[Mention]:
    cues = segment.having("times", "history")
    if not cues or _only_found_then(talk, sentence, segment):
        return _unlisted(talk, sentence, segment)
    told = [m for m in cues if not season_ahead(talk, sentence, segment, m) and not still_to_come(talk, segment, m)]
    told = [m for m in told if not _weeks_at_first(talk, segment, m) and not before_then(talk, segment, m)]
    told = [m for m in told if not since_what(talk, m) and not event_ahead(talk, sentence, segment, m)]
    told = [m for m in told if not _names_pictures(talk.words[m.end : m.end + 2])]
    told = [m for m in told if not goes_on_again(talk, segment, m) and not in_it_still(talk.words, m)]
    told = [m for m in told if talk.words[m.start : m.start + 2] not in _AT_SOME or _has_been(talk, segment)]
    told = [m for m in told if not (talk.says(_AGREED) and _as_agreed(talk, segment, m))]
    told = [m for m in told if not is_unlike(talk, m) and talk.words[m.start - 2 : m.start - 1] != ["unlike"]]
    return told or _unlisted(talk, sentence, segment)


def _names_pictures(behind: list[str]) -> bool:
    """ "On last month's films": they show what is there."""
    return behind[:1] == ["'s"] and not _PICTURES.isdisjoint(behind[1:])


def _only_found_then(talk: Talk, sentence: list[Segment], segment: Segment) -> bool:
    """ "Navicular both fronts, vet confirmed it in March": told then, and what never goes away is there today."""
    said = talk.words[segment.start : segment.end]
    by_him = not _BY_VET.isdisjoint(said) and (not _IT.isdisjoint(said) or "by" in said)
    if segment.drafts or not by_him or _FOUND.isdisjoint(said) or not _GONE.isdisjoint(talk.words):
        return False
    told = [d for s in sentence if s.index < segment.index for d in s.drafts]
    if not told or any(d.value not in _FOR_GOOD for d in told):
        return False
    told[-1].evidence.update(range(segment.start, segment.end))
    told[-1].note("found then, and there for good")
    return True


def _as_agreed(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "Full pads on both fronts like I'd promised in the spring": done today, only the word was of then."""
    at = cue.start
    while at > segment.start and talk.words[at - 1] in _AGREED_BY:
        at -= 1
    as_it_was = talk.words[at] in _AS and not _AGREED.isdisjoint(talk.words[at : cue.start])
    return as_it_was and all(draft.end <= at for draft in segment.drafts)


def is_unlike(talk: Talk, cue: Mention) -> bool:
    """ "Unlike last time", "not like last time", "a change from last time"."""
    led = talk.words[cue.start - 1]
    return led == "unlike" or (led in UNLIKE and talk.words[cue.start] in ("like", "from"))


def _unlisted(talk: Talk, sentence: list[Segment], segment: Segment) -> list[Mention]:
    told = _when_it_was(talk, segment) or _before_at_end(talk, segment) or some_days_ago(talk, sentence, segment)
    return told or _short_year(talk, segment)


def tells_a_year(talk: Talk, sentence: Sentence) -> bool:
    """Whether a segment closes with what may be a year of two digits."""
    return not sentence.lacks(_IN) and any(_short_year(talk, segment) for segment in sentence)


def _short_year(talk: Talk, segment: Segment) -> list[Mention]:
    """ "Foundered in twenty one", "had an abscess back in eighteen": a year, at the end of what befell him."""
    year = next((m for m in segment.mentions if m.number and m.end == segment.end), None)
    if year is None or year.number is None or talk.words[year.start - 1] != "in" or year.start - 1 <= segment.start:
        return []
    told = {*talk.words[segment.start : year.start]} & _BEFELL
    ended = _OTHER_THINGS.isdisjoint(talk.words[segment.end : segment.end + 2])  # "in twenty days"
    known = not year.number.fraction and (year.number.value in _RECENT_YEARS or year.number.value in _OLD_YEARS)
    return [Mention(year.start, year.end, (year.start,), {"times": "history"})] if told and ended and known else []


def _has_been(talk: Talk, segment: Segment) -> bool:
    """ "He's had laminitis at some stage"; not "they'll come off at some stage"."""
    return segment.past or bool({"had", "been", "foundered"} & set(talk.words[segment.start : segment.end]))


def _when_it_was(talk: Talk, segment: Segment) -> list[Mention]:
    """ "Better than February when he was three out of five": a time, and how it stood then."""
    for at in range(segment.start + 1, segment.end - 2):
        if talk.words[at] != "when" or tuple(talk.words[at + 1 : at + 3]) not in IT_WAS:
            continue
        if talk.words[at - 1] in _TIMES or any(m.end == at and m.get("times") for m in segment.mentions):
            return [Mention(at, at + 1, (at,), {"times": "history"})]
    opened = segment.delimiter != "start" and talk.words[segment.start] == "when"
    opened = opened and tuple(talk.words[segment.start + 1 : segment.start + 3]) in IT_WAS
    if opened and talk.words[segment.start - 2] in _TIMES:
        return [Mention(segment.start, segment.start + 1, (segment.start,), {"times": "history"})]
    return []


def _weeks_at_first(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "Four weeks to begin with": the first interval of several to come."""
    begun = talk.words[cue.end - 2 : cue.end] in (["begin", "with"], ["start", "with"])
    return begun and not segment.past and any(d.slot == "next_visit_weeks" for d in segment.drafts)


def _before_at_end(talk: Talk, segment: Segment) -> list[Mention]:
    """ "Somebody had him in egg bars before", "… before me": a lone "before" that closes its segment, or its clause."""
    if talk.words[segment.start : segment.start + 2] in _BEFORE_US:
        return [Mention(segment.start, segment.start + 2, (segment.start,), {"times": "history"})]
    last = segment.end - 2 if talk.words[segment.end - 2 : segment.end] in _BEFORE_US else segment.end - 1
    if talk.words[last] != "before" and "before" in talk.words[segment.start : segment.end]:
        last = _worn_before(talk.words, segment.start, segment.end)
    if talk.words[last] != "before" or any(last in m.literal and m.is_any(("times", "feet")) for m in segment.mentions):
        return []
    if talk.words[last - 1] == "from" and not _KNOWN.isdisjoint(talk.words[segment.start : last]):
        return []  # "ringbone, we know that from before": an old one that is still there
    return [Mention(last, segment.end, (last,), {"times": "history"})]


def _worn_before(words: list[str], start: int, end: int) -> int:
    """ "The pads he was wearing before only held dirt": where the "before" of what was worn is, else the last word."""
    worn = next((i for i in range(start + 1, end - 1) if words[i] in _WEARERS and words[i + 1] in _WORE), end)
    ends = (i for i in range(worn + 2, end - 1) if words[i] == "before" and words[i + 1] in _GOES_ON)
    return next(ends, end - 1)
