"""What is to be at a time to come: "back in a fortnight, and then it's new bars", "when he dries up he gets a shoe"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import PLANNABLE
from pipeline.reading.talk import Draft, Segment, Sentence, Talk

GETTING = frozenset({"gets", "get", "goes", "go", "takes", "take", "'ll", "will", "can", "could", "needs", "wants"})
_WHEN = frozenset({"when"})
_TO_GET = frozenset({"gets", "get", "goes", "go", "'ll", "will"})
_THEN_IT_IS = Sayings(*(
    f"{then} {it}" for then in ("then", "after that", "after which", "at which point", "from then on", "that day")
    for it in ("it 's", "it is", "he 's in", "she 's in", "he 's back in", "she 's back in", "the", "new", "a new")
))  # fmt: skip
_GETS_THEN, _INTO = _TO_GET - {"goes", "go"}, frozenset({"back", "into", "to", "up"})
_THEN = frozenset({"then", "after", "point", "day", "for", "sedated", "sedation", "doped"}) | _TO_GET
_TO_COME = GETTING | {"due", "getting", "to", "having", "going"}
_THEN_SAID = frozenset({"then"})
_NEAR = 3  # tokens from "for" or "then" to what will be done: "for his new front shoes"


def when_ready(talk: Talk, sentence: list[Segment]) -> list[tuple[int, int]]:
    """ "When he dries up he gets a new shoe": up to what he gets, where only what will be put on is told behind.

    Not "when he gets a new shoe he forges", "when he came in …", "when I trim him he gets fidgety".
    """
    ranges = []
    for at, segment in _whens(talk, sentence):
        rest = sentence[segment.index - sentence[0].index + 1 :][:1]
        last = rest[0].end if rest and rest[0].joined_by(",") and not rest[0].past else segment.end
        mains = [i for i in range(at + 2, last - 1) if _is_to_get(talk, i)]
        if mains and _only_fitted(sentence, mains[0], sentence[-1].end):
            ranges.append((at, mains[0]))
    return ranges


def _whens(talk: Talk, sentence: list[Segment]) -> list[tuple[int, Segment]]:
    """Each "when" that no list knows as the head of a condition, in a clause that tells of no earlier time."""
    told = [(i, s) for s in sentence for i in range(s.start, s.end) if talk.words[i] == "when"]
    return [(i, s) for i, s in told if not s.past and not any("plans" in m.readings for m in talk.holding(i))]


def _is_to_get(talk: Talk, at: int) -> bool:
    """ "He gets", "the off fore goes": somebody, or a foot, and what is to come of it."""
    foot = talk.mention_ending(at + 1)
    subject = talk.roles[at] == "subject" or (foot is not None and foot.get("feet") is not None)
    return subject and talk.words[at] != "you" and talk.words[at + 1] in _TO_GET


def _only_fitted(sentence: list[Segment], start: int, end: int) -> bool:
    drafts = [d for s in sentence for d in s.drafts if start < d.start < end]
    return bool(drafts) and all(d.slot in PLANNABLE - {"manner"} for d in drafts)


def to_be_then(talk: Talk, sentence: Sentence) -> list[Mention]:
    """Where what is to be begins: behind a time to come, and before "when he dries up".

    Not "reset in front, then it's a trim behind", which goes on about today.
    """
    starts = [] if sentence.lacks(_WHEN) else _till_ready(talk, sentence)
    starts += _then(talk, sentence) if talk.says(_THEN) else []
    return [Mention(at, at + 1, (at,), {"plans": "before"}) for at in starts]


def _till_ready(talk: Talk, sentence: list[Segment]) -> list[int]:
    """ "He gets a new shoe and a full pad when he dries up": where he gets it."""
    starts = []
    for at, segment in _whens(talk, sentence):
        mains = [i for i in range(sentence[0].start, at) if _is_to_get(talk, i)]
        closing = segment is sentence[-1] and not any(d.start > at for d in segment.drafts)
        if mains and closing and _only_fitted(sentence, mains[0], at):
            starts.append(mains[0])
    return starts


def _then(talk: Talk, sentence: list[Segment]) -> list[int]:
    """ "Back in a fortnight, and then it's new heart bars in front": where what will be done then begins."""
    first, last = sentence[0], sentence[-1]
    near = talk.segments[max(0, first.index - 1) : last.index + 1]
    told = [d for s in near if s.horse == first.horse for d in s.drafts]
    starts: list[int] = []
    if not any(d.slot == "next_visit_weeks" for d in told):
        return starts
    told.sort(key=lambda d: d.start)
    for due, behind in pairwise(told):
        if due.slot != "next_visit_weeks" or not first.start <= behind.start < last.end:
            continue
        said = any(_THEN_IT_IS.within(talk.words, max(due.end, first.start), behind.start))
        later = said or _right_behind(talk, due.end, behind) or (due.start >= first.start and _gets(talk, due, behind))
        if later and all(d.slot in PLANNABLE for d in told if d.start > due.start):
            starts.append(behind.start - 1)
    return starts


def _right_behind(talk: Talk, end: int, behind: Draft) -> bool:
    """ "See him in six weeks for a trim", "two weeks, then heart bars"; not "six weeks, then trimmed the hinds"."""
    between = [word for word in talk.tokens.lowers[end : behind.start] if word != "and"]
    lead, *rest = between[between[:1] == [","] :] or [""]
    fitted = behind.slot != "work" or behind.value == "new_shoe"
    if between in ([], [","], ["with"], [",", "with"]) and behind.value == "sedated":
        end = behind.end + (talk.words[behind.end : behind.end + 1] == [","])  # "Duke in three, sedated, please."
        return talk.words[end : end + 1] in ([], ["."], ["please"])
    return (lead == "for" or (lead == "then" and fitted)) and len(rest) <= _NEAR and not {",", "."} & set(rest)


def _gets(talk: Talk, due: Draft, behind: Draft) -> bool:
    """ "Back in one week, and the left hind gets a new shoe", "… goes into a bar shoe"; not "… goes best in bars"."""
    told = [i for i in range(due.end, behind.start - 1) if _is_to_get(talk, i)]
    if not told or behind.segment.having("times", "today"):
        return False
    verb, after = talk.words[told[0] + 1 : told[0] + 3]
    return verb in _GETS_THEN or after in _INTO


def got_then(talk: Talk, sentence: Sentence, segment: Segment) -> bool:
    """ "Four weeks, and he's due new shoes then, size three": what he is to get then, and the list behind it."""
    if sentence.lacks(_THEN_SAID):
        return False
    lead = segment
    while not lead.own_clause and lead.index > sentence[0].index:
        lead = talk.segments[lead.index - 1]
    words = talk.words[lead.start : lead.end]
    if "then" not in (words[-1], words[-2:-1]) or _TO_COME.isdisjoint(words):
        return False
    near = talk.segments[max(0, sentence[0].index - 2) : lead.index]
    return any(d.slot == "next_visit_weeks" and not d.dropped for s in near for d in s.drafts)
