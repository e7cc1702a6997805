"""Of before or still to come: "in studs all season" and "keep him in studs all season", "before that"."""

from __future__ import annotations

from pipeline.reading.after_the_event import set_for_a_season
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Segment, Talk

_THROUGH = frozenset({"through", "throughout", "right", "all"})
_SEASONS = frozenset({"season", "winter", "summer"})
_KEPT = frozenset({
    "keep", "keeps", "see", "carry", "get", "gets", "take", "stay", "stays", "leave", "'ll", "will", "wears", "wear",
    "runs", "goes", "wants", "needs",
})  # fmt: skip
_GAITS = frozenset({"gait", "lameness"})
_WORN = frozenset({"shoe_type", "pad", "packing", "traction"})
_HAS_BEEN = frozenset({"'s", "has"})
_IN_A_SEASON = frozenset({"in", "over", "at", "early", "late", "during", "around", "round"})
_GONE_BY = frozenset({"last", "before", "back", "ago", "gone"})
CALENDAR = frozenset(
    {"january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november"}
    | {"december", "spring", "summer", "autumn", "fall", "winter", "christmas", "easter", "thanksgiving"}
)
_UP_TO_TODAY = frozenset({"today", "now", "recently", "lately"})
_ENDS = frozenset({",", ".", ";", "and", "but", "so", "when", "in", "on", "today", "now"})


def goes_on(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """Whether a season said as a stretch of time is the one that is going on or to come, so that it recalls nothing."""
    if talk.words[cue.start] not in _THROUGH or talk.words[cue.end - 1] not in _SEASONS:
        return False
    ahead = set(talk.words[segment.start : cue.start])
    lame_since = {d.slot for d in segment.drafts} <= _GAITS and not _HAS_BEEN.isdisjoint(ahead)
    return not _KEPT.isdisjoint(ahead) or lame_since or (segment.present and not segment.past)


def still_to_come(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "They're off the road till fall", "keep him in bar shoes all winter": of today, and until a time to come."""
    till = talk.words[cue.start] in ("till", "until") and talk.words[cue.end - 1] not in _UP_TO_TODAY
    till = till and not segment.past and not _ended(talk, segment)
    return till or goes_on(talk, segment, cue)


def season_ahead(talk: Talk, sentence: list[Segment], segment: Segment, cue: Mention) -> bool:
    """ "We'll try bars in the spring", "early in July he goes barefoot": a season beside a plan is to come."""
    words = talk.words[cue.start : cue.end]
    if set_for_a_season(talk, segment):
        return True
    if words[0] not in _IN_A_SEASON or _GONE_BY & set(words):
        return False
    planned = any(m.start < cue.start for s in sentence for m in s.having("plans", "before"))
    planned = planned or (not segment.past and bool({"can", "could"} & set(talk.words[sentence[0].start : cue.start])))
    if words[-1] in CALENDAR:
        planned = planned or (bool(segment.having("plans", "before")) and not segment.past)
        planned = planned or (any(d.slot == "next_visit_weeks" for d in segment.drafts) and not segment.past)
    return planned and (words[0] in ("in", "over") or words[-1] in CALENDAR)


def _ended(talk: Talk, segment: Segment) -> bool:
    """ "Racing plates all round till September. Today plain steel": what the next sentence has in its place today."""
    after = talk.sentence(segment.sentence + 1)
    opened = bool(after) and any(m.start == after[0].start for m in after[0].having("times", "today"))
    worn = {d.slot: d.value for d in segment.drafts if d.slot in _WORN}
    today = [d for s in after for d in s.drafts if s.horse == segment.horse] if opened else []
    shod = "shoe_type" in worn and any(d.value == "new_shoe" for d in today)
    return shod or any(d.value != worn[d.slot] for d in today if d.slot in worn)


def before_then(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "If the glue-ons come off before that": a time to come."""
    ahead = talk.words[cue.start : cue.end] in (["before", "that"], ["before", "then"], ["before"])
    return ahead and bool(segment.having("plans", "condition") or segment.having("vet"))


def since_what(talk: Talk, cue: Mention) -> bool:
    """ "Six weeks since his last trim, flare in front" counts from something; "Obel two a week since" is that time."""
    behind = talk.words[cue.end : cue.end + 1]
    return talk.words[cue.end - 1] == "since" and bool(behind) and behind[0] not in _ENDS
