"""A finding of then that is graded of now: "severe in January and it's mild now", "thrush last time, mild now"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.mentions import Mention
from pipeline.reading.moved_numbers import GRADED_SINCE
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Severity, Status

THEN_AND_NOW = "graded then and now"
_NOW = frozenset({"now", "today", "days", "visit", "time", "trip", "present", "moment", "still"})
_LIGHT = frozenset({
    "it", "'s", "is", "they", "'re", "are", "that", "those", "and", "but", "only", "just", "both", "of", "them", "at",
    "down", "to", "a", "more", "or", "less", "pretty", "all", "been", "look", "looks", "call", "'d", "i", "so", "very",
    "quite", "the", "most", "worst", "no", "than", "well", "then", "come", "came", "back", "gone", "'ve", "'m",
    "say", "would", "calling", "saying", "has", "have", "be", "about", "still", "one", "like",
})  # fmt: skip
_ELSEWHERE = ("denials", "plans", "taking_back", "asides", "not_facts", "doubts")
_AS_IT_WAS = Sayings(
    "the same", "no worse", "no better", "no different", "unchanged", "n't changed", "not changed", "n't moved",
    "not moved", "n't budged", "not budged", "n't improved", "not improved", "n't shifted", "not shifted", "as it was",
    "as they were", "as was", "no change",
)  # fmt: skip
_STANDING = frozenset({
    "and", "but", "well", "it", "that", "they", "those", "which", "'s", "is", "are", "'re", "look", "looks", "has",
    "have", "'ve", "much", "pretty", "about", "just", "exactly", "really", "same", "the", "as", "was", "were",
    "a", "bit", "now", "today", "still", "either", "nor", "or", "worse", "better", "since", "at", "all", "there",
}) | {word for form in _AS_IT_WAS.forms for word in form}  # fmt: skip


def keep_what_stands(talk: Talk) -> None:
    """ "Last time I wrote down a toe crack, and it's the same as it was": a finding of then that is one of today."""
    if not talk.tells(_AS_IT_WAS):
        return
    for segment in talk.segments:
        words = talk.words[segment.start : segment.end]
        if _AS_IT_WAS.said_in(words) and not segment.drafts and not segment.having("feet"):
            held = {i for m in segment.mentions if m.is_any(("severities", "fillers", "times")) for i in m.literal}
            rest = talk.words_beside(segment, held)
            last = _last_told(talk, segment) if rest <= _STANDING else None
            if last is not None and last.status is Status.HISTORY and last.slot == "finding":
                last.status = Status.PRESENT
                last.note("as it was")


def _last_told(talk: Talk, segment: Segment) -> Draft | None:
    """The last thing said of the horse, in the same sentence or the one before it."""
    opens = talk.sentence(segment.sentence)[0] is segment
    near = [s for s in talk.segments[: segment.index] if 0 <= segment.sentence - s.sentence <= opens]
    told = [d for s in near if s.horse == segment.horse for d in s.kept]
    return told[-1] if told else None


def _lamer_then(talk: Talk) -> None:
    """ "She was Obel three. Well, she's a one": the grade of the past is the earlier one, without a word of time."""
    for now in [d for s in talk.segments for d in s.drafts if GRADED_SINCE in d.rules and d.status is Status.PRESENT]:
        near = [s for s in talk.segments[: now.segment.index] if now.segment.sentence - s.sentence <= 1]
        near = [s for s in near if s.horse == now.segment.horse and (s.past or _some_days_ago(talk, s))]
        for then in [d for s in near for d in s.kept if d.slot == now.slot]:
            if then.status is Status.PRESENT and (then.feet == now.feet or not then.feet):
                then.status = Status.HISTORY
                then.note(THEN_AND_NOW)


def _some_days_ago(talk: Talk, segment: Segment) -> bool:
    """ "Three out of five on Friday", "… when they rang, that was Monday": the day, here or right behind."""
    behind = talk.segments[segment.index + 1 : segment.index + 2]
    same = [s for s in behind if s.sentence == segment.sentence and not s.drafts]
    return any(s.having("times", "recent") for s in (segment, *same))


def grade_then_and_now(talk: Talk) -> None:
    """Tell the degree of today from that of the earlier time; both are facts."""
    if talk.having("number"):
        _lamer_then(talk)
    if talk.says(_NOW):
        for segment in [s for s in talk.segments if "severities" in s.named and s.having("times", "today")]:
            finding = _graded_now(talk, segment) if segment.having("severities") else None
            if finding is None or _told_since(talk, finding, segment):
                continue
            then = _degree_then(talk, finding, segment)
            if "still" in talk.words[segment.start : segment.end]:
                _still_there(finding, segment)
            elif then is not None or finding.status is Status.HISTORY:
                _tell_apart(talk, finding, segment, then)


def _graded_now(talk: Talk, segment: Segment) -> Draft | None:
    """The finding that the segment grades of today with nothing else in it: the last one told."""
    named = [m for m in segment.having("feet") if m.readings["feet"] not in ("in_hand", "pair_in_hand")]
    held = {i for m in segment.mentions if m.is_any(("times", "severities", "feet", "fillers")) for i in m.literal}
    rest = talk.words_beside(segment, held)
    turned = any(m.is_any(_ELSEWHERE) and not _calling(talk, m) for m in segment.mentions)
    other = named or turned or any(d.slot != "finding" for d in segment.kept)
    if other or not rest <= _LIGHT:
        return None
    opens = talk.sentence(segment.sentence)[0] is segment
    near = [s for s in talk.segments[: segment.index] if 0 <= segment.sentence - s.sentence <= opens]
    found = [d for s in near if s.horse == segment.horse for d in s.drafts if d.slot == "finding" and not d.dropped]
    return next((d for d in found if (d.value, d.feet) == (found[-1].value, found[-1].feet)), None)


def _calling(talk: Talk, mention: Mention) -> bool:
    """ "I'd call it moderate" takes nothing back."""
    return mention.get("taking_back") == "repair" and talk.words[mention.end - 1] == "it"


def _told_since(talk: Talk, finding: Draft, segment: Segment) -> bool:
    """Whether anything else was told since the finding, or it was not there."""
    told = [d for s in talk.segments[finding.segment.index : segment.index] for d in s.kept if d.start >= finding.start]
    return finding.status is Status.ABSENT or any((d.slot, d.value) != (finding.slot, finding.value) for d in told)


def _degree_then(talk: Talk, finding: Draft, segment: Segment) -> Mention | None:
    """The degree said before, in a clause of an earlier time."""
    since = talk.segments[finding.segment.index : segment.index]
    earlier = finding.status is Status.HISTORY or "of an earlier time" in finding.rules
    graded = [m for s in since if earlier or s.past or s.having("times", "history") for m in s.having("severities")]
    return graded[-1] if graded else None


def _still_there(finding: Draft, segment: Segment) -> None:
    """ "Underrun heels, severe, last spring. They're still severe": one fact, of today."""
    if finding.status is Status.HISTORY:
        finding.status = Status.PRESENT
        finding.severity = Severity(segment.having("severities")[-1].readings["severities"])
        finding.note(THEN_AND_NOW)


def _tell_apart(talk: Talk, finding: Draft, segment: Segment, then: Mention | None) -> None:
    """Leave the finding in its degree of then, and add it in that of today."""
    for again in [d for s in talk.segments[finding.segment.index : segment.index + 1] for d in s.drafts]:
        same = (again.slot, again.value, again.feet) == ("finding", finding.value, finding.feet)
        elsewhere = again.zone != finding.zone and again.segment is finding.segment
        if same and again is not finding and not elsewhere:
            again.drop(THEN_AND_NOW)
    now = segment.having("severities")[-1]
    degree = Severity(now.readings["severities"])
    rules = [*finding.rules, THEN_AND_NOW]
    made = replace(finding, segment=segment, start=now.start, end=now.end, severity=degree, rules=rules)
    made.status, made.evidence = Status.PRESENT, {*finding.evidence, *now.literal}
    segment.drafts.append(made)
    finding.status = Status.HISTORY
    if then is not None:
        finding.severity = Severity(then.readings["severities"])
    elif finding.evidence & set(now.literal):
        finding.severity = None  # the degree is today's alone
    finding.note(THEN_AND_NOW)
