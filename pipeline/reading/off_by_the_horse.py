"""Shoes that the horse took off itself: "he'd trodden off his off fore"; and those that came off for a look."""

from __future__ import annotations

from pipeline.reading.foot_lists import NAMED_FEET
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

_VERBS = frozenset({
    "trod", "trodden", "stepped", "knocked", "wrenched", "kicked", "dragged", "sucked", "stood", "stomped", "yanked",
    "ripped", "tore", "torn", "hooked", "pawed", "ran", "run", "walked", "twisted", "trampled",
    "jerked", "snagged", "snatched", "pried",
})  # fmt: skip
_EITHER = frozenset({"pulled", "took", "taken", "had"})  # the farrier does this too: the horse must be said to have
_HORSES = frozenset({"he", "she", "horse", "mare", "gelding", "pony"})
_BY_HAND = frozenset({
    "i", "we", "to", "they", "vet", "vets", "owner", "owners", "farrier", "somebody", "someone", "lad", "groom",
    "rider", "dad", "husband", "wife", "trainer", "you",
})  # fmt: skip
_WHOSE = frozenset({"his", "her", "the", "a", "that", "its", "both", "one"})
_FROM_WHAT = frozenset({"the", "my", "me", "us", "a", "that", "its", "of", "to"})
_TORN = (["pulled"], ["ripped"], ["torn"], ["yanked"], ["kicked"], ["dragged"], ["wrenched"])
_ITSELF = frozenset({"himself", "herself", "itself"})
_SOME_OF_THEM = frozenset({"one", "two", "three", "them"})
_REACH = 4  # tokens from the verb to the foot
_SHOE_OFF = Sayings("shoe came off", "shoes came off", "shoe was off", "one came off", "set came off")
_WHOSE_SHOE = frozenset({"the", "that", "his", "her", "old", "last", "front", "hind", "fore"})
_WHEN_OFF = frozenset({"when", "once", "after"})
_CAME_TO_LIGHT = frozenset({
    "found", "find", "showed", "shows", "saw", "seen", "there", "under", "underneath", "light", "turned", "waiting",
})  # fmt: skip


def draft_off_by_the_horse(talk: Talk) -> None:
    """A lost shoe for every foot whose shoe the horse is said to have taken off; it was not taken off by hand."""
    _only_a_clip(talk)
    for foot in talk.having("feet") if talk.says(_VERBS | _EITHER) else ():
        at = _verb(talk, foot)
        segment = talk.segment_at(at) if at is not None else None
        if at is None or segment is None:
            continue
        for draft in [d for d in segment.drafts if d.slot == "work" and d.value == "removed"]:
            draft.drop("the horse took it off")
        if not any(d.slot == "shoe_state" for d in segment.drafts):
            draft = Draft("shoe_state", "lost", segment, at, at + 1)
            draft.evidence.update({at, *foot.literal})
            draft.note("shoe_state: the horse took it off")
            segment.draft(draft)


def _only_a_clip(talk: Talk) -> None:
    """ "The near fore had quarter clips, and he'd pulled one", "seven nails, he'd lost two": no shoe was lost."""
    for at in talk.where(_SOME_OF_THEM):
        segment = talk.segment_at(at)
        lost = [d for d in segment.drafts if d.value == "lost" and d.start < at <= d.end] if segment is not None else []
        if segment is None or not lost or any(m.start > at for m in segment.having("feet")):
            continue
        behind_comma = talk.tokens.lowers[talk.sentence(segment.sentence)[0].start - 1] == ","  # as it was written
        spoken = [*(talk.sentence(segment.sentence - 1) if behind_comma else ()), *talk.sentence(segment.sentence)]
        near = [m for s in spoken for m in s.mentions if m.start < lost[0].start]
        told = [m for m in near if m.is_any((*CLASS_SLOTS, "work")) or m.get("measures") is not None]
        if told and (told[-1].get("clips") is not None or told[-1].get("measures") == "nails"):
            lost[0].drop("a clip or a nail, no shoe")


def _verb(talk: Talk, foot: Mention) -> int | None:
    """The token of the verb that has the shoe of this foot come off, when the horse is its subject."""
    if NAMED_FEET.get(str(foot.get("feet"))) is None:
        return None
    at = foot.start - 1
    while at > foot.start - _REACH and at > 0 and talk.words[at] in _WHOSE | {"off"}:
        at -= 1
    word = talk.words[at] if at >= 0 else ""
    behind = talk.words[foot.end : foot.end + 2]
    off = "off" in talk.words[at + 1 : foot.start] or "off" in (behind[:1] if behind[:1] != ["shoe"] else behind[1:])
    off = off or (word == "had" and _pulled_off_itself(talk, foot.end))
    beyond = talk.words[foot.end + 1 : foot.end + 2] if behind[:1] == ["off"] else []
    if word not in _VERBS | _EITHER or not off or _FROM_WHAT & set(beyond):
        return None  # "she had the left hind off the ground"
    subject = _subject(talk, at)
    if subject in _BY_HAND or (word in _EITHER and subject not in _HORSES):
        return None
    return at


def _pulled_off_itself(talk: Talk, at: int) -> bool:
    """ "He had both fronts pulled off himself before I got there"; not "… pulled off by the last man"."""
    behind = talk.words[at + 2 : at + 5]
    torn = talk.words[at : at + 1] in _TORN and talk.words[at + 1 : at + 2] == ["off"]
    return torn and (not _ITSELF.isdisjoint(behind) or behind[:2] == ["before", "i"])


def _subject(talk: Talk, verb: int) -> str:
    """The last word before the verb, in its sentence, that can say who did it; a horse's name counts as "horse"."""
    for at in range(verb - 1, -1, -1):
        if talk.words[at] in SENTENCE_ENDS:
            break
        name = talk.mention_starting(at)
        if name is not None and name.get("horse") is not None:
            return "horse"
        if talk.words[at] in _HORSES | _BY_HAND:
            return talk.words[at]
    return ""


def drop_off_for_a_look(talk: Talk) -> None:
    """ "I found a corn when the old shoe came off", "once the shoe came off there was a bruise": no shoe was lost."""
    for at, form in talk.turns(_SHOE_OFF):
        segment = talk.segment_at(at)
        lost = [d for d in segment.drafts if d.value == "lost" and d.end > at] if segment is not None else []
        if segment is None or not lost or not _under_it(talk, segment, at, at + len(form)):
            continue
        lost[0].drop("taken off, not lost")


def _under_it(talk: Talk, segment: Segment, at: int, end: int) -> bool:
    """Whether "when the" stands before the shoe, and something is found that it hid."""
    lead = at - 1
    while lead > segment.start and talk.words[lead] in _WHOSE_SHOE:
        lead -= 1
    old = "old" in talk.words[lead:at]
    closes = talk.words[end : end + 1] in ([","], ["."], [], ["and"], ["there"], ["i"])
    near = [talk.sentence(segment.sentence - 1), talk.sentence(segment.sentence)]
    found = any(d.slot == "finding" and s.horse == segment.horse for told in near for s in told for d in s.drafts)
    shown = old or any(told.says(_CAME_TO_LIGHT) for told in near)
    return talk.words[lead] in _WHEN_OFF and closes and found and shown
