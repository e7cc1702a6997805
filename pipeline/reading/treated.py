"""Which foot was treated, the one that has the finding and not the one named last as free of it; and when."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import FEET, Status

_ON_THE = tuple([on, "the"] for on in ("on", "in", "for", "to", "into", "over"))
_THERE = (Status.PRESENT, Status.SUSPECTED)
_NEAR = 2  # sentences from the finding to its treatment
_DONE = frozenset({"work", "treatment"})
TO_DO = frozenset({"should", "must", "can", "ought", "has", "have", "left", "gave"})
_LEFT_WITH = tuple([gave, whom] for gave in ("left", "gave") for whom in ("her", "him", "them"))
_TO_BE_DONE = frozenset({
    "to", "be", "get", "have", "keep", "put", "go", "on", "a", "an", "the", "it", "that", "another", "more", "some",
    "left", "right", "near", "off", "fore", "front", "hind", "both", "fronts", "hinds", "foot", "daily", "pack", "with",
})  # fmt: skip
_POINTING = frozenset({"in_hand", "pair_in_hand", "those_three"})
_UP_TO_NOW = frozenset({"since", "from", "till", "until", "til", "by", "to", "next", "this"})
_USED = frozenset({"treatment", "packing"})
_TREATED = frozenset({"cut", "dug", "put", "got", "gave", "took", "let", "packed", "stuck"})


def treat_what_is_there(talk: Talk) -> None:
    """ "Thrush in the off hind, none in the near hind. Iodine on that.": the iodine is the off hind's."""
    if talk.having("treatments"):
        _treat_the_finding(talk)
    for draft in talk.drafts:
        treated = draft.slot == "treatment" or (draft.slot, draft.value) == ("work", "removed")
        if not treated or draft.status is not Status.PRESENT or not draft.feet or _named(talk, draft):
            continue
        feet = _where_it_is(talk, draft)
        if feet:
            draft.feet = feet
            draft.note("foot: where the finding is")


def _treat_the_finding(talk: Talk) -> None:
    """ "Scratches behind, thrush in the left. Antiseptic on the scratches, iodine on the thrush.": no new one."""
    for segment in talk.segments:
        for treatment, found in pairwise(segment.kept if len(segment.drafts) > 1 else ()):
            if (treatment.slot, found.slot) != ("treatment", "finding") or segment.having("feet"):
                continue
            if talk.words[treatment.end : found.start] not in _ON_THE:
                continue
            told = [
                d for d in talk.drafts if (d.slot, d.value) == ("finding", found.value) and d.start < treatment.start
            ]
            there = [d for d in told if d.segment.horse == segment.horse and d.status in _THERE and d.feet]
            if there:
                treatment.feet = tuple(foot for foot in FEET if any(foot in (d.feet or ()) for d in there))
                treatment.note("foot: where the finding is")
                found.drop("told before")


def _named(talk: Talk, draft: Draft) -> bool:
    """Whether a foot is named beside the treatment, not only pointed at."""
    named = [m for m in draft.segment.having("feet") if m.get("feet") not in _POINTING]
    behind = any("end of the list" in rule or "exactly behind" in rule for rule in draft.rules)
    return bool(named) or behind or _foot_leads(talk, draft)


def _foot_leads(talk: Talk, draft: Draft) -> bool:
    """ "Off fore, footbath.", "pulled the shoe on the off fore and left it off": named for what is done."""
    for before in talk.sentence(draft.segment.sentence):
        named = [m for m in before.having("feet") if m.get("feet") not in _POINTING]
        if before.index >= draft.segment.index or not named:
            continue
        alone = any((m.start, m.end) == (before.start, before.end) for m in named)
        if (alone and before.index == draft.segment.index - 1) or any(d.slot in _DONE for d in before.drafts):
            return True
    return False


def _where_it_is(talk: Talk, treatment: Draft) -> Feet:
    """The feet that have what the treatment's foot was last said to be free of; none when that foot has anything."""
    near = [
        d
        for s in talk.segments
        if s.horse == treatment.segment.horse and 0 <= treatment.segment.sentence - s.sentence <= _NEAR
        for d in s.drafts
        if d.slot == "finding" and not d.dropped and d.start < treatment.start and d.feet
    ]
    there = [d for d in near if d.status in _THERE]
    if any(set(d.feet or ()) & set(treatment.feet or ()) for d in there):
        return ()
    absent = [d for d in near if d.status is Status.ABSENT and set(treatment.feet or ()) <= set(d.feet or ())]
    same = [d for d in there if absent and d.value == absent[-1].value]
    found = {foot for d in same for foot in d.feet or ()}
    return tuple(foot for foot in FEET if foot in found)


def to_be_treated(talk: Talk, segment: Segment) -> list[Draft]:
    """ "It should be poulticed daily", "they can bandage it", "has to be soaked": what is still to be done."""
    found = []
    for draft in [d for d in segment.drafts if d.slot in ("treatment", "packing") and d.status is Status.PRESENT]:
        led = talk.words[segment.start : draft.start]
        at = max((i for i, word in enumerate(led) if word in TO_DO), default=None)
        rest = led[at + 1 :] if at is not None else []
        if (led[-3:-1] in _LEFT_WITH or led[-2:] in _LEFT_WITH) and talk.words[draft.end : draft.end + 1] == ["for"]:
            found.append(draft)  # "left her a poultice for the near fore"
        bound = at is not None and (led[at] in ("should", "must", "can") or rest[:1] == ["to"])
        if bound and set(rest) <= _TO_BE_DONE:
            found.append(draft)
    return found


def treated_then(talk: Talk, segment: Segment, draft: Draft) -> bool:
    """ "The vet drained it on Friday", "they poulticed it Monday"; not "iodine on it since Friday", nor a plan."""
    cue = segment.having("times", "recent")[-1]
    if segment.having("plans") or talk.words[cue.start - 1] in _UP_TO_NOW or segment.present:
        return False
    led = talk.words[segment.start : draft.end]
    return segment.past or not _TREATED.isdisjoint(led) or any(word.endswith("ed") for word in led)


def used_then_and_now(sentence: list[Segment], position: int, before: Segment) -> bool:
    """ "Thrush, iodine last time, copper sulfate today": what was used then, on what is there today."""
    used = bool(sentence[position].drafts) and all(d.slot in _USED for d in sentence[position].drafts)
    now = any(s.having("times", "today") and any(d.slot in _USED for d in s.drafts) for s in sentence[position + 1 :])
    return used and now and any(d.slot == "finding" for d in before.drafts)
