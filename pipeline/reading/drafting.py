"""From mentions to drafts: the slots that are a word of the trade, and "new" before what was put on."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.vocabulary import CLASS_SLOTS

# Tester, pulse and nail-line words need their head beside them and are read in responses.py.
_WORD_CLASSES = tuple(name for name in CLASS_SLOTS if name not in ("tester_responses", "pulses", "nail_lines"))
_SHOE_NOUNS = ("shoe_types", "shoe_materials")
_NEW = frozenset({"new", "fresh", "brand"})
_NEW_ALONE = frozenset(
    {"new", "brand", "also", "all", "both", "four", "too", "they", "'re", "those", "are", "it", "'s", "that"}
)
_TAKEN_OFF = frozenset(
    {"pulled", "removed", "stripped", "took", "pull", "remove", "strip", "take", "pulling", "removing"}
)
_DONE = frozenset({"pulled", "removed", "stripped", "took"})
_BY_HAND = frozenset(
    {"we", "i", "'ll", "to", "will", "and", "then", "'d", "would", "can", "could", "should", "'re", "'m"}
)
_PULLED = 3
_NEW_REACH = 5


def draft_words(talk: Talk) -> None:
    """A draft for every mention of a finding, shoe, pad, treatment and the like."""
    for segment in talk.segments:
        for mention in segment.mentions:
            name = _class_of(talk, segment, mention)
            if name is None:
                continue
            add_draft(segment, CLASS_SLOTS[name], mention.readings[name], mention)


def add_draft(segment: Segment, slot: str, value: str, mention: Mention) -> Draft:
    """Append a draft for ``mention`` to its segment."""
    draft = Draft(slot, value, segment, mention.start, mention.end, mention.match)
    draft.evidence.update(mention.literal)
    segment.drafts.append(draft)
    return draft


def _class_of(talk: Talk, segment: Segment, mention: Mention) -> str | None:
    if mention.get("not_facts") is not None:
        return None
    names = [name for name in _WORD_CLASSES if mention.get(name) is not None]
    if not names:
        return None
    if names[0] == "manners" and (_answers_a_head(segment, mention) or _answers_before(talk, segment, mention)):
        return None
    if mention.get("horse_cues") == "new" and not _new_shoe_talk(talk, segment, mention):
        return None
    if names[0] == "warmths" and not _of_a_foot(talk, segment):
        return None
    if mention.get("zones") is not None and _reads_as_zone(talk.words, segment, mention):
        return None
    return names[0]


def _answers_before(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Testers on the off fore, quiet.": the answer alone in its segment, the testers before it in the sentence."""
    if mention.get("tester_responses") is None or segment.end - segment.start != mention.end - mention.start:
        return False
    sentence = talk.sentence(segment.sentence)
    return any(s.having("tester_heads") for s in sentence if s.index < segment.index)


def _of_a_foot(talk: Talk, segment: Segment) -> bool:
    """ "Both fores hot" and "it's warm round the coronet" tell of a foot, "it's hot" of the day."""
    placed = segment.having("feet") or segment.having("zones")
    return bool(placed) or bool({"foot", "feet", "hoof"} & set(talk.words[segment.start : segment.end]))


def _answers_a_head(segment: Segment, mention: Mention) -> bool:
    """ "Pulse quiet" tells of the pulse, not of the horse's manner."""
    heads = (("pulse_heads", "pulses"), ("tester_heads", "tester_responses"), ("nail_line_heads", "nail_lines"))
    return any(segment.having(head) and mention.get(answer) is not None for head, answer in heads)


def _new_shoe_talk(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "I made him a new one, size two" against "pleased to see the new one"."""
    near = [m for m in segment.mentions if m is not mention]
    before = talk.segments[segment.index - 1] if segment.index else None
    shod = before is not None and before.sentence == segment.sentence
    if shod and before is not None and any(m.is_any(("shoe_types", "shoe_states")) for m in before.mentions):
        return True  # "straight bar on that foot, a new one"
    return (
        bool(talk.plays("action", segment.start, segment.end))
        or mention.start == segment.start
        or any(m.is_any(("feet", "shoe_types", "shoe_states", "work")) or m.number for m in near)
    )


def _reads_as_zone(words: list[str], segment: Segment, mention: Mention) -> bool:
    """ "Bar" beside a finding or the testers is a place on the foot; else it is a shoe."""
    others = [m for m in segment.mentions if m is not mention]
    if any(m.is_any(("findings", "tester_heads", "tester_responses")) for m in others):
        return True
    return words[max(segment.start, mention.start - 2) : mention.start] in (
        ["at", "the"],
        ["over", "the"],
        ["along", "the"],
    )


def draft_white_line(talk: Talk) -> None:
    """ "No thrush, no white line": a white line that is denied by name is the disease."""
    for segment in talk.segments:
        for mention in segment.having("zones", "white_line"):
            denied = mention.start > segment.start and talk.words[mention.start - 1] in ("no", "any")
            if denied and talk.words[mention.start : mention.end] == ["white", "line"] and not segment.drafts:
                draft = add_draft(segment, "finding", "white_line_disease", mention)
                draft.note("white line: denied by name")


def draft_pulled(talk: Talk) -> None:
    """ "Tally pulled her right hind": the horse did it, not the farrier."""
    for foot in [m for m in talk.mentions if m.get("feet")]:
        words = talk.words[max(0, foot.start - 3) : foot.start]
        if len(words) < _PULLED or words[1] != "pulled" or words[2] not in ("his", "her", "a", "the"):
            continue
        name = talk.mention_ending(foot.start - 2)
        if words[0] in ("he", "she") or (name is not None and name.get("horse") is not None):
            segment = next(s for s in talk.segments if s.start <= foot.start - 2 < s.end)
            draft = Draft("shoe_state", "lost", segment, foot.start - 2, foot.start - 1)
            draft.evidence.add(foot.start - 2)
            draft.note("shoe_state: pulled by the horse")
            segment.drafts.append(draft)


def draft_pulled_by_hand(talk: Talk) -> None:
    """ "Pulled both front shoes", "removed the hind shoes", "took the fronts off": the farrier did it."""
    for foot in [m for m in talk.mentions if m.get("feet")]:
        before = range(foot.start - 1, max(-1, foot.start - _PULLED - 1), -1)
        at = next((i for i in before if talk.words[i] in _TAKEN_OFF), None)
        if at is None or any(m.is_any(("work", "shoe_states")) and at in m.literal for m in talk.mentions):
            continue
        behind = talk.words[foot.end : foot.end + 1]
        if talk.words[at] in ("took", "take") and behind != ["off"]:
            continue
        if talk.words[at] not in _DONE and not (at and talk.words[at - 1] in _BY_HAND):
            continue
        if (
            talk.words[at] in _DONE
            and talk.words[at - 1] in ("he", "she", "'d", "has", "had")
            or _names_horse(talk, at)
        ):
            continue
        segment = next((s for s in talk.segments if s.start <= at < s.end), None)
        rest = set(talk.words[at + 1 : foot.start]) - {"both", "the", "his", "her", "all", "those", "that"}
        if segment is not None and not rest and "nail" not in talk.words[segment.start : segment.end]:
            draft = Draft("work", "removed", segment, at, at + 1)
            draft.evidence.update({at, *foot.literal})
            draft.note("work: taken off by hand")
            segment.drafts.append(draft)


def _names_horse(talk: Talk, at: int) -> bool:
    name = talk.mention_ending(at)
    return name is not None and name.get("horse") is not None


def draft_pronouns(talk: Talk) -> None:
    """ "There's one in the off fore now": "one" is the finding spoken of last."""
    last: Draft | None = None
    for segment in talk.segments:
        for mention in segment.having("same", "one"):
            free = last is not None and last.segment.horse == segment.horse and not segment.having("findings")
            if free and last is not None and _foot_near(talk, segment, mention):
                draft = add_draft(segment, "finding", str(last.value), mention)
                draft.note("one: the finding before")
        findings = [d for d in segment.drafts if d.slot == "finding"]
        last = findings[-1] if findings else last


def _foot_near(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """Whether a foot stands beside the pronoun, or alone in the segment before it."""
    before = talk.segments[segment.index - 1] if segment.index else None
    alone = before is not None and before.sentence == segment.sentence and not before.drafts
    here = any(m.get("feet") for m in segment.mentions)
    return here or (alone and before is not None and bool(before.having("feet")))


def draft_new(talk: Talk) -> None:
    """ "New egg bars", "in new glue-ons": new before a shoe word is a new shoe put on."""
    for segment in talk.segments:
        for index in range(segment.start, segment.end):
            if talk.words[index] not in _NEW or _inside_strong(segment, index):
                continue
            noun = _shoe_behind(talk, segment, index)
            sized = next((m for m in segment.mentions if m.start == index + 1 and m.number is not None), None)
            if sized is not None and talk.words[index - 1] in ("a", "an"):
                segment.drafts.append(_new_draft(segment, index, set()))  # "so that's a new ten"
                continue
            feet = {i for m in segment.having("feet") for i in range(m.start, m.end)}
            if {talk.words[i] for i in range(segment.start, segment.end) if i not in feet} <= _NEW_ALONE:
                segment.drafts.append(_new_draft(segment, index, set()))
                continue
            footed = next((m for m in segment.mentions if m.start == index + 1 and m.get("feet")), None)
            if footed is not None and noun is None:
                segment.drafts.append(_new_draft(segment, index, set()))
                continue
            if noun is None or noun.start - index > _NEW_REACH or _blocked(segment, index, noun):
                continue
            segment.drafts.append(_new_draft(segment, index, set(noun.literal)))
        segment.drafts.sort(key=lambda d: (d.start, d.end))


def _shoe_behind(talk: Talk, segment: Segment, index: int) -> Mention | None:
    """The shoe word behind "new", also one that was exchanged: "new egg bars, no, I went straight bars"."""
    inside = [m for m in talk.mentions if index < m.start < segment.end and m.is_any(_SHOE_NOUNS)]
    exchanged = {id(m.stands_for) for m in talk.mentions if m.stands_for is not None}
    return next((m for m in inside if not m.dropped or id(m) in exchanged), None)


def _new_draft(segment: Segment, index: int, shoe: set[int]) -> Draft:
    draft = Draft("work", "new_shoe", segment, index, index + 1)
    draft.evidence.update({index, *shoe})
    draft.note("work: new before a shoe")
    return draft


def _inside_strong(segment: Segment, index: int) -> bool:
    return any(index in m.literal and m.is_any(("work", "horse_cues", "not_facts")) for m in segment.mentions)


def _blocked(segment: Segment, index: int, noun: Mention) -> bool:
    between = [m for m in segment.mentions if index < m.start < noun.start]
    return any(m.is_any(("findings", "pads", "feet", "treatments")) for m in between)
