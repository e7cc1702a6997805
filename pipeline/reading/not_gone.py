"""What was thought to be gone and is not: "I'd marked it gone, and it isn't", "I said it'd clear, still there"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.foot_groups import one_of_several
from pipeline.reading.foot_names import resolve
from pipeline.reading.questions import SOUGHT
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.reading.thought_lame import OF_THE_SORT
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import Status

_HEALED = frozenset(
    {"gone", "go", "clear", "cleared", "clearing", "heal", "healed", "healing", "dry", "dried", "grow", "grown", "grew"}
    | {"shift", "shifted", "better", "away", "right"}
)
_HOPED = _HEALED | {"finished", "sorted"}
_THOUGHT_SO = _HOPED | {",", "up", "out"}
_IT = frozenset({"it", "that", "they", "this"})
_IS = frozenset({"is", "was", "has", "had", "did", "does", "are", "were", "have", "'s", "'ve", "'d"})
_NOT = frozenset({"n't", "not"})
_CLOSED = frozenset({",", ";", "and", "but", "so", "though", "all", "quite", "yet"}) | SENTENCE_ENDS
_ANEW = (["again"], ["back"])  # "it's gone and hasn't grown back"
_SAYING_SO = Sayings(
    "still there", "there still", "there yet", "'s there again", "is there again", "it 's back", "it is back",
    "it came back", "it has come back", "it 's come back", "they 're back", "no such luck", "no joy", "too soon",
    "wishful thinking", *(" ".join(form) for form in OF_THE_SORT.forms),
)  # fmt: skip
_IT_IS_THERE = Sayings("it 's there", "it is there", "they 're there", "they are there", "it 's in there")
_BEGINS = _SAYING_SO.first_words | _IT | _NOT | {"left"}
_BEHIND_IT = _IS | {"never", *(form[1] for turns in (_SAYING_SO, _IT_IS_THERE) for form in turns.forms)}
_SOME = frozenset({"little", "bit", "some", "touch", "trace", "spot", "speck", "lot", "fair", "wee", "tail"})
_OPENING = 5  # tokens at the head of a sentence that may answer the one before
_SOME_WITHIN = 5


def there_after_all(talk: Talk) -> None:
    """Findings thought to be gone, or hoped to be, that are said to be there still: they are of today."""
    for at in talk.where(_BEGINS):
        if talk.words[at] in _IT and _BEHIND_IT.isdisjoint(talk.words[at + 1 : at + 2]):
            continue
        if not _says_so(talk, at) or "if" in talk.words[max(0, at - 4) : at]:
            continue
        for draft in _thought_gone(talk, at):
            _bring_back(draft, _feet_here(talk, at, draft), next(s for s in talk.segments if at < s.end))


def _bring_back(draft: Draft, feet: Feet | None, segment: Segment) -> None:
    """Make the finding one of today: on its own feet, on one of them, or on another ("still there in the right")."""
    if feet is not None and draft.feet and not set(feet) & set(draft.feet):
        rules = ["not gone after all", "foot: named beside it"]
        there = replace(draft, feet=feet, segment=segment, start=segment.start, end=segment.end, rules=rules)
        there.status, there.evidence = Status.PRESENT, set(range(segment.start, segment.end))
        segment.drafts.append(there)
        return
    part = one_of_several(draft, feet) if feet is not None else draft
    part.status = Status.PRESENT
    part.dropped = part.dropped and SOUGHT not in part.rules
    part.rules = [rule for rule in part.rules if rule not in ("denied", "gone", SOUGHT)]
    part.note("not gone after all")


def _feet_here(talk: Talk, at: int, draft: Draft) -> Feet | None:
    """The feet named in the segment that says so, when it is another one than the finding's."""
    segment = talk.segment_at(at)
    if segment is None or segment is draft.segment:
        return None
    named = [m for m in segment.having("feet") if m.get("feet") not in ("in_hand", "pair_in_hand")]
    named = [m for m in named if m.start != at]  # the "left" of "there's a little left" is no side
    return resolve(str(named[-1].get("feet")), draft.feet) if named else None


def _says_so(talk: Talk, at: int) -> bool:
    """Whether the words from here say that something is there yet, or not gone."""
    words = talk.words[at : at + 5]
    if _SAYING_SO.at(words, 0):
        normal = talk.words[at : at + 3] == ["it", "'s", "back"] and talk.words[at + 3 : at + 4] == ["to"]
        return not normal and not _NOT & set(talk.words[max(0, at - 2) : at])
    if form := _IT_IS_THERE.at(words, 0):
        return talk.words[at + len(form)] in _CLOSED if at + len(form) < len(talk.words) else True
    if words[:1] == ["left"] and set(talk.words[max(0, at - _SOME_WITHIN) : at]) & _SOME:
        foot = talk.mention_starting(at)
        named = foot is not None and foot.get("feet") is not None and foot.end > at + 1
        there = {"there", "has", "got", "still"} & set(talk.words[max(0, at - _SOME_WITHIN) : at])
        return bool(there) and not named and "no" not in talk.words[max(0, at - _SOME_WITHIN) : at]
    if words[:1] and words[0] in _NOT and words[1:2] and words[1] in _HEALED - {"right", "better", "go", "clear"}:
        return words[2:3] not in _ANEW
    if words[:1] and words[0] in _NOT and talk.words[at - 1] in _IS and talk.words[at - 2] in _THOUGHT_SO:
        return words[1:2] == [] or words[1] in _CLOSED  # "the crack, which I thought was gone, isn't"
    if words[:1] and words[0] in _IT and words[1:2] == ["never"]:
        return words[2:3] in (["did"], ["has"], ["cleared"], ["healed"], ["went"])
    if len(words) > 2 and words[0] in _IT and words[1] in _IS and words[2] in _NOT:
        return words[3:4] == [] or words[3] in _CLOSED or words[3] in _HEALED
    return False


def _thought_gone(talk: Talk, at: int) -> list[Draft]:
    """The finding spoken of before that was said to be gone, or was hoped to be, with no other foot named since."""
    head = _head(talk, at)
    floor = _head(talk, head - 1) if head and at - head <= _OPENING else head
    drafts = [d for s in talk.segments for d in s.drafts if floor <= d.start < at and d.slot == "finding"]
    drafts = [d for d in drafts if not d.dropped or SOUGHT in d.rules]
    last = max(drafts, key=lambda d: d.start, default=None)
    if last is None or any(m.end <= last.start for m in last.segment.having("denials", "before")):
        return []  # "no heat in it", and it stays denied
    floor = head if last.start >= head else floor
    since = next((d.end for d in reversed(drafts) if d.value != last.value), floor)
    hoped = [i for i in range(since, at) if talk.words[i] in _HOPED and not last.start <= i < last.end]
    hoped = [i for i in hoped if talk.words[i] != "right" or not any(m.get("feet") for m in talk.holding(i))]
    earlier = last.status is Status.HISTORY
    if not hoped and not earlier:
        return []
    here = next((s.start for s in talk.segments if s.start <= at < s.end), at)
    named = [m for m in talk.having("feet") if m.readings["feet"] != "in_hand" and m.start < here]
    named = [m for m in named if resolve(m.readings["feet"], last.feet) != last.feet]
    if any(m.start > (hoped[0] if hoped else last.end) and not _said_with(m.start, last) for m in named):
        return []
    return [d for d in drafts if d.value == last.value and d.segment.sentence == last.segment.sentence]


def _said_with(start: int, draft: Draft) -> bool:
    """Whether the foot is the one that the finding stands with."""
    return draft.segment.start <= start < draft.segment.end


def _head(talk: Talk, at: int) -> int:
    while at > 0 and talk.words[at - 1] not in SENTENCE_ENDS:
        at -= 1
    return max(at, 0)
