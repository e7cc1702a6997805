"""A foot alone in its segment behind a statement: the one that was meant, or the subject of a clause of its own."""

from __future__ import annotations

from pipeline.reading.foot_groups import SETUP_SLOTS, FootGroup, Groups
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_CAUGHT = frozenset({"catching", "clipping", "hitting", "striking", "grabbing", "knocking", "treading", "catches"})
_POINTS_OUT = frozenset({"the", "his", "her", "it", "was", "'s", "is", "that", "being"})
_A_SHOE = (["front", "shoe"], ["fore", "shoe"], ["hind", "shoe"], ["back", "shoe"])
_LEADING = frozenset({"the", "his", "her", "now", "then", "on", "in", "right", "so", "well", "first"})
_THE_WORST = frozenset({"worst", "worse", "one", "culprit", "bad"})
_IT_IS = frozenset({("it", "'s"), ("it", "is"), ("it", "was"), ("they", "'re"), ("they", "are"), ("they", "were")}) | {
    ("those", "were"), ("those", "are"), ("that", "was"), ("that", "'s"), ("these", "were"), ("these", "are"),
}  # fmt: skip
_WHERE = frozenset({"in", "on", "at", "under", "the", "his", "her", "'s", "both", "all", "of", "again"})
_ONLY = frozenset({"only", "just"})
_SUBJECT_OF = frozenset({"are", "is", "'s", "'re", "was", "were", "stay", "stays", "do", "does", "did", "look"})


def in_apposition(
    talk: Talk, sentence: list[Segment], position: int, groups: dict[int, list[FootGroup]]
) -> Feet | None:
    """ "He'd lost one in front, the near fore", "one of them was loose, it was the near hind": the one meant."""
    behind = sentence[position + 1] if position + 1 < len(sentence) else None
    if behind is None or behind.delimiter != "," or behind.drafts or len(groups[behind.index]) != 1:
        return None
    words = talk.words[sentence[position].start : sentence[position].end]
    if "one" not in words and not any(words[i : i + 2] in _A_SHOE for i in range(len(words) - 1)):
        return None
    group = groups[behind.index][0]
    rest = {talk.words[i] for i in range(behind.start, behind.end) if not group.start <= i < group.end}
    return group.feet if rest <= _POINTS_OUT else None


def told_of_itself(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    """ "Hinds, size six, toe clips, fronts are fine": a foot that is the subject of its own clause closes no list."""
    if talk.words[segment.start] == "nor" and not segment.drafts:
        return True  # "she isn't quicked there, nor is she on the left front"
    leads = set(talk.words[segment.start : group.start]) <= {"the", "his", "her", "both"}
    behind = talk.words[group.end : segment.end]
    if _THE_WORST & set(behind):
        return False  # "thrush in three of them, left hind's the worst"
    return leads and bool(behind) and behind[0] in _SUBJECT_OF and not named_after_all(talk, segment, group)


def named_after_all(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    """ "I pricked him, near fore that was": the foot comes as an afterthought."""
    return talk.words[group.end : segment.end] in (["that", "was"], ["that", "is"], ["that", "'s"], ["it", "was"])


def headed_before(talk: Talk, draft: Draft, groups: Groups) -> Feet | None:
    """ "Emergency on Tally, left hind. Four out of five lame.": a foot alone, and how lame, with no verb, behind it."""
    here = draft.segment
    before = talk.segments[here.index - 1] if here.index else here
    opens = talk.words[here.start : draft.start] in ([], ["grade"])
    lame = draft.slot == "lameness" or draft.value in ("lame", "short_stride")
    if not (opens and lame) or before.sentence == here.sentence or before.horse != here.horse:
        return None
    told = [d for s in talk.segments[: before.index] if here.sentence - s.sentence < _NEAR for d in s.drafts]
    spent = any(d.segment.sentence == before.sentence or NAMED_NEXT in d.rules for d in told)
    if spent or before.drafts or not _heads(talk, before, groups):
        return None
    foot = groups[before.index][0]
    draft.evidence.update(range(foot.start, foot.end))
    return foot.feet


NAMED_NEXT = "foot: named in the next sentence"
_NEAR = 3


def is_another(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    """ "Off fore. A bruise, severe, and a mild one in the near fore"."""
    ahead = talk.words[segment.start : group.start]
    return not segment.drafts and ("one" in ahead or "another" in ahead)


_SO_LAME = frozenset({"that", "which", "it", "this", "call", "so"})
_NOT = frozenset({"n't", "not", "no", "never", "barely", "hardly", "nt"})
_LOADING = frozenset({"touch", "touches", "put", "puts", "putting", "bear", "stand", "load", "weight", "lean", "use"})
_SORE = frozenset(
    {"sore", "crook", "ouchy", "footy", "tender", "gimpy", "pottery", "unlevel", "uneven", "favoring", "iffy"}
)
_SPARING = frozenset({"pointing", "resting", "nursing", "sparing", "favouring", "favoring", "hopping", "dangling"})


def only_where(talk: Talk, segment: Segment, found: list[FootGroup]) -> bool:
    """ "A corn, and it's on the near fore", "full pads, but in front only": nothing is told but where that is."""
    if segment.drafts or len(found) != 1 or found[0].anaphor:
        return False
    own = [range(m.start, m.end) for m in (*segment.having("horse"), *segment.having("times", "history"))]
    held = {i for part in (*own, range(found[0].start, found[0].end)) for i in part}
    rest = [talk.words[i] for i in range(segment.start, segment.end) if i not in held]
    led = tuple(rest[:2]) in _IT_IS and segment.delimiter in ("and", ", and", ",", "but", ", but")
    narrowed = not _ONLY.isdisjoint(rest) and segment.delimiter in ("but", ", but", ",", "and", ", and")
    return (led and set(rest[2:]) <= _WHERE | _ONLY) or (narrowed and set(rest) <= _WHERE | _ONLY)


def it_is_there(talk: Talk, segment: Segment, found: list[FootGroup]) -> bool:
    """ "He has an abscess. It's the right hind, and I opened it": nothing but where, before what else is told."""
    if segment.drafts or len(found) != 1 or found[0].anaphor:
        return False
    words = talk.words[segment.start : found[0].start]
    return tuple(words[:2]) in _IT_IS and set(words[2:]) <= _WHERE and found[0].end == segment.end


def headed_anew(draft: Draft, sentence: list[Segment], position: int, groups: Groups) -> bool:
    """ "Both hinds, nothing, off fore, lateral heel, strong": a foot alone, its place, and what is found there."""
    near, behind = sentence[position - 1], sentence[position + 1 : position + 2]
    found = groups.get(near.index, []) if position and not near.drafts and near is not draft.segment else []
    told = any(d.slot in ("finding", "tester") for s in behind if s.joined_by(",") for d in s.drafts)
    elsewhere = bool(found) and draft.feet is not None and not set(found[0].feet) & set(draft.feet)
    return told and sentence[position].joined_by(",") and elsewhere


def same_statement(talk: Talk, sentence: list[Segment], position: int, groups: Groups) -> bool:
    """Whether no new clause starts behind the last named foot, or the foot heads it ("near fore, he's lame")."""
    here, ahead = sentence[position], sentence[position - 1] if position else None
    if ahead is not None and groups[ahead.index] and _spared(talk, sentence[:position], here):
        return True
    if here.own_clause and ahead is not None and here.delimiter == "," and not ahead.drafts:
        return _heads(talk, ahead, groups)
    for number in range(position, 0, -1):
        if sentence[number].own_clause:
            return False
        if groups[sentence[number - 1].index]:
            return True
    return False


def _spared(talk: Talk, before: list[Segment], here: Segment) -> bool:
    """ "He won't put the right front down, and that's a five": how lame he is on the foot that he spares."""
    calling = bool({"call", "calling", "say", "grade"} & set(talk.words[here.start : here.start + 3]))
    if before[-1].drafts or not (talk.words[here.start] in _SO_LAME or calling):
        return False
    words = set(talk.words[before[0].start : before[-1].end])
    if "on" in words and words & _SORE:
        return True  # "crook on the near hind, I'd call it three out of five"
    return bool(words & _SPARING) or bool(words & _LOADING and words & _NOT)


def _heads(talk: Talk, segment: Segment, groups: Groups) -> bool:
    """ "Left hind, …", "now the near fore, …": a foot alone that opens what is told."""
    found = groups[segment.index]
    rest = {w for i, w in enumerate(talk.words[segment.start : segment.end], segment.start) if not _named(found, i)}
    return bool(found) and not found[0].anaphor and rest <= _LEADING


def _named(found: list[FootGroup], at: int) -> bool:
    return any(group.start <= at < group.end for group in found)


def catching(talk: Talk, draft: Draft) -> bool:
    """ "She's overreaching, catching her front heels": what is caught is not the foot that does it."""
    return draft.value in ("overreach", "forge") and not _CAUGHT.isdisjoint(talk.words[draft.end : draft.end + 3])


def foot_of_another_time(talk: Talk, sentence: list[Segment], groups: Groups) -> None:
    """ "Next time leather pads, today I just reset the fronts": the one foot that is named, of the other time too."""
    named = next((s for s in sentence if groups[s.index]), sentence[0])
    opens = not named.index or talk.tokens.lowers[named.start - 1] in SENTENCE_ENDS
    if opens or not any(d.slot in SETUP_SLOTS for d in named.drafts):
        return
    feet = {group.feet for s in sentence for group in groups[s.index]}
    if len(feet) != 1:
        return
    at, there = named.index, _time_of(named)
    while at and talk.tokens.lowers[talk.segments[at].start - 1] not in SENTENCE_ENDS:
        at -= 1  # as far back as the sentence goes as it was written
        before = talk.segments[at]
        other = before.horse == named.horse and _time_of(before) not in (None, there)
        for draft in [d for d in before.drafts if d.feet is None and d.slot in SETUP_SLOTS] if other else ():
            draft.feet = next(iter(feet))
            draft.note("foot: of another time")


def _time_of(segment: Segment) -> str | None:
    if segment.having("plans", "before"):
        return "ahead"
    return next((time for time in ("history", "today") if segment.having("times", time)), None)
