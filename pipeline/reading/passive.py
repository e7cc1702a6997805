"""Shoes that were taken off, put back or lost, told in the passive: "her shoe has been taken off", "had been cast"."""

from __future__ import annotations

from pipeline.reading.settling_work import SAME_BACK
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_AUXILIARY = frozenset({"has", "have", "had", "'s", "'ve", "'d", "was", "were", "is", "are", "be", "being"})
_BETWEEN = frozenset({"been", "now", "since", "just", "then", "all", "both", "being", "already", "duly", "only"})
_TAKEN = frozenset({"taken", "pulled", "drawn", "whipped", "stripped", "lifted", "eased", "slipped"})
_TORN = frozenset({"pulled", "torn", "ripped", "wrenched", "dragged", "sucked", "trodden", "stepped", "kicked"})
_BACK = frozenset({"put", "nailed", "tacked", "gone", "driven", "fitted", "set", "went"})
_LOST = frozenset({"cast", "thrown", "lost", "shed"})
_SHOES = frozenset({"shoe", "shoes", "plate", "plates", "shoe's"})
_OWN = frozenset({"same", "old", "own", "it", "that", "one", "shoe", "shoes", "they", "plate", "plates"})
_SAME = frozenset({"same", "old"})
_A_SHOE = frozenset({"plate", "rim", "bar", "tip"})
_OFF_ALONE = frozenset({"removed", "drawn", "stripped", "lifted"})
_BOX = frozenset({"stall", "box", "stable", "loosebox"})
_ENDS_HERE: tuple[list[str], ...] = ([], ["."], [","], ["and"], [";"], ["now"], ["today"], ["for"], ["so"], ["but"])
_ENDS_BACK = (*_ENDS_HERE, ["with"], ["again"])
_OPENS = frozenset({"the", "his", "her", ",", ";", "and", "so", "but", *SENTENCE_ENDS})
_VERBS = _TAKEN | _TORN | _BACK | _LOST | {"removed"}
_IN_A_BOX = 5
_LONGEST = 3  # words between the auxiliary and the verb


def draft_passive(talk: Talk) -> None:
    """Drafts for shoes that "have been taken off", "been put back", "had been cast"."""
    for at in talk.where(_VERBS):
        segment = talk.segment_at(at)
        if segment is not None and at > segment.start and _passive(talk, segment, at):
            _draft_one(talk, segment, at)
        elif segment is not None and talk.words[at] in _BACK and (_lost(talk, at) or _then_lost(talk, segment)):
            _put_back_by_hand(talk, segment, at)
            _foot_put_back(talk, segment, at)
    if talk.says(_SAME):
        _same_back_on(talk)


def _passive(talk: Talk, segment: Segment, at: int) -> bool:
    """Whether an auxiliary stands before the verb with at most a few words between."""
    for index in range(at - 1, max(segment.start, at - _LONGEST) - 1, -1):
        if talk.words[index] in _AUXILIARY:
            return True
        if talk.words[index] not in _BETWEEN:
            return False
    return False


def _draft_one(talk: Talk, segment: Segment, at: int) -> None:
    words, verb = talk.words, talk.words[at]
    behind = words[at + 1 : at + 2]
    straight = at + 2 if behind in (["straight"], ["right"]) else at + 1
    subject = set(words[segment.start : at])
    shoes = bool(subject & _SHOES)
    stalled = _BOX & set(words[at + 1 : at + _IN_A_BOX])  # a horse is cast in its box, a shoe in the field
    if any(m.is_any(("work", "shoe_states")) for m in talk.holding(at)) or (verb == "cast" and stalled):
        return
    if words[straight : straight + 1] == ["back"] and verb in _BACK and _put_back(talk, segment, at, subject):
        _add(talk, segment, at, straight + 1, "work", "put_back")
    elif verb in _OFF_ALONE and shoes:
        _add(talk, segment, at, at + 1, "work", "removed")
    elif behind == ["off"] and verb in _TAKEN and shoes:
        _add(talk, segment, at, at + 2, "work", "removed")
    elif verb == "pulled" and shoes and words[at - 1] in ("'s", "is", "are") and words[at + 1 : at + 2] in _ENDS_HERE:
        _add(talk, segment, at, at + 1, "work", "removed")
    elif behind == ["off"] and verb in _TORN and segment.having("feet") and "been" in words[segment.start : at]:
        _add(talk, segment, at, at + 2, "shoe_state", "lost")
    elif verb in _LOST and "been" in words[segment.start : at] and (shoes or segment.having("feet")):
        _add(talk, segment, at, at + 1, "shoe_state", "lost")


def _put_back(talk: Talk, segment: Segment, at: int, subject: set[str]) -> bool:
    """ "The same shoe was put back", "so the near fore was put back" where its shoe was lost."""
    if subject & _OWN and _of_a_shoe(talk, segment):
        return True
    return _lost(talk, at) and any(m.end <= at for m in segment.having("feet"))


def _lost(talk: Talk, at: int) -> bool:
    """Whether a shoe was told to be lost before."""
    return any(m.get("shoe_states") == "lost" and m.start < at for m in talk.having("shoe_states"))


def _then_lost(talk: Talk, segment: Segment) -> bool:
    """ "Left front put back on, he stepped it off last night": the same foot's, told right behind a comma."""
    if talk.tokens.lowers[segment.end : segment.end + 1] != [","] or segment is talk.segments[-1]:
        return False
    behind = talk.segments[segment.index + 1 : segment.index + 2]  # none behind "on the fronts, if you please"
    others = [m for s in behind for m in s.having("feet") if m.readings["feet"] not in ("pair_in_hand", "in_hand")]
    return any(s.having("shoe_states", "lost") for s in behind) and not others


def _put_back_by_hand(talk: Talk, segment: Segment, at: int) -> None:
    """ "He'd lost both fronts, I put the near fore back": nothing but the foot between the verb and "back"."""
    first = at + 2 if talk.words[at + 1 : at + 2] in (["the"], ["his"], ["her"], ["that"]) else at + 1
    foot = next((m for m in segment.having("feet") if m.start == first), None)
    worked = any(m.is_any(("work", "shoe_states")) for m in talk.holding(at))
    if foot is not None and talk.words[foot.end : foot.end + 1] == ["back"] and not worked:
        _add(talk, segment, at, foot.end + 1, "work", "put_back")


def _foot_put_back(talk: Talk, segment: Segment, at: int) -> None:
    """ "Lost both fronts. Right front put back on": the foot right before the verb, whose shoe was lost."""
    foot, words = talk.mention_ending(at), talk.words
    closed = words[at + 1 : at + 3] == ["back", "on"] and words[at + 3 : at + 4] in _ENDS_BACK
    opens = foot is not None and words[foot.start - 1] in _OPENS
    worked = any(m.is_any(("work", "shoe_states")) for m in talk.holding(at))
    if foot is not None and foot.get("feet") is not None and opens and closed and not worked:
        _add(talk, segment, at, at + 3, "work", "put_back")


def _same_back_on(talk: Talk) -> None:
    """ "Fores, the same half rounds back on", "same aluminium back on behind": nothing but the shoes between."""
    shoes = {(m.start, m.end) for name in ("shoe_types", "shoe_materials") for m in talk.having(name)}
    for first, last in sorted(shoes | {(at, at + 1) for at in talk.where(_A_SHOE)}):
        at = last + (talk.words[last : last + 1] in (["went"], ["go"], ["going"], ["gone"], ["put"]))
        if talk.words[at : at + 2] != ["back", "on"] or any(m.get("work") for m in talk.holding(at)):
            continue
        start, before = first, talk.mention_ending(first)
        while before is not None and before.is_any(("shoe_materials", "shoe_types", "number", "measures")):
            start, before = before.start, talk.mention_ending(before.start)
        behind = talk.mention_starting(at + 2 + (talk.words[at + 2 : at + 3] in (["the"], ["both"], ["his"], ["her"])))
        placed = talk.words[at + 2 : at + 3] in _ENDS_HERE or (behind is not None and behind.get("feet") is not None)
        segment = talk.segment_at(at)
        if placed and segment is not None and start and talk.words[start - 1] in _SAME:
            _add(talk, segment, at, at + 2, "work", "put_back", SAME_BACK)


def _of_a_shoe(talk: Talk, segment: Segment) -> bool:
    """Whether a shoe is spoken of in the sentence, or one was lost before."""
    sentence = talk.sentence(segment.sentence)
    shoes = _SHOES & set(talk.words[sentence[0].start : segment.end])
    lost = any(m.get("shoe_states") in ("lost", "loose") for s in sentence for m in s.mentions)
    return bool(shoes) or lost


def _add(talk: Talk, segment: Segment, start: int, end: int, slot: str, value: str, rule: str = "") -> None:
    draft = Draft(slot, value, segment, start, end)
    draft.evidence.update(range(start, end))
    draft.note(rule or f"{slot}: told in the passive")
    segment.draft(draft)
    if value == "removed":
        for other in [d for s in talk.sentence(segment.sentence) for d in s.drafts if d.start > start]:
            if (other.slot, other.value) == (slot, value):
                other.drop("said again")  # "taken off and will be staying off" is one thing
