"""What is said once and meant twice: "right hind too", "hinds the same", "none in the off fore"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from pipeline.reading.as_the_other import (
    AS_MANY,
    SAME_SIZE,
    as_the_horse_before,
    copy_nails,
    copy_other_horse,
    copy_shoeing,
)
from pipeline.reading.copying import (
    AFFIRMED,
    OTHER_DEGREE,
    Copied,
    content_of,
    copy_draft,
    keep_its_own,
    only_done,
    tells_of_work,
    told_before,
)
from pipeline.reading.foot_groups import SETUP_SLOTS, FootGroup
from pipeline.reading.foot_lists import POINTED_AT
from pipeline.reading.none_there import copy_none, copy_none_behind, is_clean, is_heading, is_none, looked_for_it
from pipeline.reading.number_context import ANGLES, LENGTHS
from pipeline.reading.places import YARD
from pipeline.reading.questions import SOUGHT
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.reading.there_too import copy_affirmed, copy_doubted, is_affirmed, is_doubted, is_worse, so_has
from pipeline.record import HORSE_SLOTS, Severity, Status

_FOUND = frozenset({"finding", "tester", "pulse", "shoe_state"})
ALSO = "also on another foot"
_SPREADING = frozenset({"moved", "spread", "crept", "jumped", "gotten", "got", "gone", "started"})
_SPREAD_AT = 3
_LIGHT_WORDS = frozenset({
    "a", "the", "in", "on", "is", "'s", "only", "just", "at", "and", "of", "one", "has", "got", "it", "small", "little",
    "wee", "tiny",
})  # fmt: skip
_SHOE_WORDS = (["shoe"], ["shoes"], ["bars"], ["plates"], ["set"], ["pads"], ["half"], ["egg"], ["heart"], ["nails"])
_ONE_TIME = YARD | {"bog", "mud", "creek", "ditch", "swamp", "storm", "ride", "hunt", "day", "night", "week", "morning"}
_COMMON = frozenset(
    {"heel", "heels", "toe", "toes", "sole", "soles", "wall", "walls", "white", "the", "a", "his", "her"}
)
_THOUGHT = frozenset({"thought", "wondered", "tempted", "nearly", "almost", "meant", "checked", "looked", "look"})
_MEASURED = (*ANGLES, *LENGTHS)
_IN_IT_TOO = frozenset({"the", "in", "on", "his", "her", "but", "also", "too", "as", "well"})
_ALSO = frozenset({"and", ", and", "plus", ", plus", "&"})


def copy_statements(talk: Talk, groups: dict[int, list[FootGroup]]) -> list[Copied]:
    """Add the drafts that ellipsis leaves out; their status comes later, with ``inherit_status``."""
    copies: list[Copied] = []
    again = talk.tells(AS_MANY, SAME_SIZE)
    for segment in talk.segments:
        same = again or "same" in segment.named
        if not same and any(draft.slot not in HORSE_SLOTS for draft in segment.drafts):
            continue  # it tells what it tells by itself
        made = _copy_in(talk, segment, groups)
        for copy in made:
            _own_severity(talk, copy.draft, groups)
            _own_zone(talk, copy.draft, groups)
            keep_its_own(talk, copy.draft)
        copies += made
    return copies


def _copy_in(talk: Talk, segment: Segment, groups: dict[int, list[FootGroup]]) -> list[Copied]:
    copies: list[Copied] = []
    found = groups.get(segment.index, [])
    own = [d for d in segment.drafts if d.slot not in HORSE_SLOTS]
    same = {m.readings["same"] for m in segment.having("same")} if "same" in segment.named else set()
    if "same_size" in same and not segment.having("times", "neutral"):
        copies += _copy_again(talk, segment, groups, "same size", ("shoe_size",))
    if "same_stuff" in same and not segment.having("times", "neutral"):
        copies += _copy_again(talk, segment, groups, "same stuff", ("shoe_material", "treatment", "packing"))
    copies += copy_nails(talk, segment, groups)
    if not own and not found and is_none(talk, segment) and not segment.having("resolutions", "after"):
        copies += copy_none_behind(talk, segment, groups)
    if "same" in same and not own and as_the_horse_before(talk, segment):
        copies += copy_other_horse(talk, segment, found)
    if "same" in same and not found and not own and _ditto(talk, segment) and _after_a_foot(segment, groups, talk):
        copies += _copy_same(talk, segment, groups[segment.index - 1][-1].feet)
    return copies if not found or own else copies + _copy_on(talk, segment, found, groups)


def _copy_on(talk: Talk, segment: Segment, found: list[FootGroup], groups: dict[int, list[FootGroup]]) -> list[Copied]:
    """What a segment with nothing but a foot of its own repeats."""
    shod = copy_shoeing(talk, segment, groups)
    if shod:
        return shod
    feet = next((g for g in found if not g.anaphor), found[0]).feet
    if is_none(talk, segment) or is_clean(talk, segment, feet) or looked_for_it(talk, segment):
        return copy_none(talk, segment, feet)
    if so_has(talk, segment):
        return _copy_last(talk, segment, feet, groups)
    if is_affirmed(talk, segment):
        return copy_affirmed(talk, segment, feet)
    if segment.having("doubts") and is_doubted(talk, segment):
        return copy_doubted(talk, segment, feet)
    if _has_spread(talk, segment):
        return _copy_graded(talk, segment, feet)
    if _only_graded(talk, segment) or is_worse(talk, segment):
        return _copy_graded(talk, segment, feet)
    if _only_meant(talk, segment):
        return []
    if _ditto(talk, segment):
        return _copy_same(talk, segment, feet)
    if _past_the_denied(talk, segment):
        there = [d for d in told_before(talk, segment) if d.slot == "finding" and "denied" not in d.rules]
        return [c for d in there[-1:] for c in copy_draft(segment, d, feet, ALSO)]
    if segment.having("same", "too") and tells_of_work(talk, segment):
        return []
    if segment.having("same", "too") or (_just_a_foot(talk, segment, found[0]) and not _another_doing(talk, segment)):
        return _copy_last(talk, segment, feet, groups)
    return []


def _past_the_denied(talk: Talk, segment: Segment) -> bool:
    """ "A corn in the near fore, not the off fore, the near hind", "the near hind too": there, as before the "not"."""
    denied = talk.segments[segment.index - 1]
    if talk.words[denied.start] != "not" or denied.sentence != segment.sentence or denied.delimiter != ",":
        return False
    there = talk.segments[denied.index - 1].drafts
    found = any("denied" in d.rules for d in denied.drafts) and any(d.slot == "finding" for d in there)
    return found and segment.joined_by(",", "but", ", but") and content_of(talk, segment) <= _IN_IT_TOO


def _only_meant(talk: Talk, segment: Segment) -> bool:
    """ "Right hind I thought about pulling too", "the off fore, I thought I saw a crack": nothing was done or found."""
    behind = [s for s in talk.segments[segment.index + 1 : segment.index + 2] if s.joined_by(",") and s.drafts]
    thought = not _THOUGHT.isdisjoint(talk.words[segment.start : behind[0].end if behind else segment.end])
    return thought or bool(segment.having("plans", "unmet") or segment.having("plans", "given_up"))


def _own_severity(talk: Talk, draft: Draft, groups: dict[int, list[FootGroup]]) -> None:
    """ "Near hind as well, only that one's mild": the copy has a degree of its own."""
    if draft.slot != "finding" or draft.status is Status.ABSENT:
        return
    for segment in talk.segments[draft.segment.index :]:
        feet = [g for g in groups.get(segment.index, []) if not g.anaphor]
        other = segment is not draft.segment and (feet or segment.drafts)
        if segment.sentence != draft.segment.sentence or other:
            return
        for mention in segment.having("severities"):
            draft.severity = Severity(mention.readings["severities"])
            draft.evidence.update(mention.literal)
            return


def _own_zone(talk: Talk, draft: Draft, groups: dict[int, list[FootGroup]]) -> None:
    """ "… but there's some in the near fore, in the frog", "near fore too, in the frog": the place of the copy."""
    too = ALSO in draft.rules and draft.slot == "finding"
    if not too and (AFFIRMED not in draft.rules or draft.zone):
        return
    for segment in talk.sentence(draft.segment.sentence):
        if segment.index < draft.segment.index:
            continue
        other = any(not g.anaphor for g in groups.get(segment.index, []))  # "yes, in both, at the toe"
        if segment is not draft.segment and (other or segment.drafts or (too and not segment.joined_by(","))):
            return
        for mention in segment.having("zones"):
            draft.zone = mention.readings["zones"]
            draft.evidence.update(mention.literal)
            return


def inherit_status(copies: list[Copied]) -> None:
    """A copy that nothing was asserted of is asserted as its source was."""
    for copy in copies:
        if copy.source.dropped and SOUGHT not in copy.source.rules:
            copy.draft.drop("its source was taken back")
        elif copy.draft.status is Status.PRESENT and not {"denied", AFFIRMED} & set(copy.draft.rules):
            copy.draft.status, copy.draft.value = copy.source.status, copy.source.value


def _copy_again(
    talk: Talk, segment: Segment, groups: dict[int, list[FootGroup]], said: str, slots: tuple[str, ...]
) -> list[Copied]:
    """ "Same size", "same stuff": what was said last of these slots, on the feet in hand."""
    told = [d for d in told_before(talk, segment) if d.slot in slots]
    hand = [g for s in talk.segments[: segment.index + 1] if s.horse == segment.horse for g in groups.get(s.index, [])]
    return copy_draft(segment, told[-1], hand[-1].feet, f"the {said}") if told and hand else []


def _ditto(talk: Talk, segment: Segment) -> bool:
    """Whether "same" is said of the statement before, not of a shoe or a place: "his same shoes", "the same field"."""
    cues = [m for m in segment.having("same", "same") if talk.words[m.end : m.end + 1] not in _SHOE_WORDS]
    return any(_ONE_TIME.isdisjoint(talk.words[m.end : m.end + 1]) for m in cues)


def _has_spread(talk: Talk, segment: Segment) -> bool:
    """ "The thrush has moved over to the off hind", "the off hind though, it's spread in there"."""
    words = talk.words[segment.start : segment.end]
    led = words[:1] == ["it"] and words[1:2] in (["'s"], ["has"], ["is"]) and len(words) > _SPREAD_AT
    at = _SPREAD_AT + (words[_SPREAD_AT:][:1] == ["over"] or words[_SPREAD_AT:][:1] == ["across"]) if led else 0
    into = words[at : at + 1] in (["in"], ["into"], ["to"])
    return led and into and words[_SPREAD_AT - 1 : at + 1] != ["gone", "in"] and words[_SPREAD_AT - 1] in _SPREADING


def _only_graded(talk: Talk, segment: Segment) -> bool:
    """ "Near hind a small bit in the frog": a foot with a degree or a place and nothing else."""
    told = {i for m in segment.mentions if m.is_any(("severities", "zones")) for i in m.literal}
    if not told or segment.drafts or segment.having("taking_back"):
        return False
    feet = {i for m in segment.having("feet") for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, feet | told)
    return rest <= _LIGHT_WORDS and (bool(segment.having("severities")) or not _opens_finding(talk, segment))


def _opens_finding(talk: Talk, segment: Segment) -> bool:
    """ "Right hind frog, canker", "off fore toe, 85, no, 87 mil": the place is that of what is told behind it."""
    for at, behind in enumerate(talk.segments[segment.index + 1 :]):
        if behind.sentence != segment.sentence or not behind.joined_by(",") or behind.having("feet"):
            return False
        if any(d.slot in _MEASURED for d in behind.drafts):
            return not behind.having("measures")  # "off fore toe, heel angle 48": the angle has its own place
        if not at and any(d.slot in ("finding", "tester") for d in behind.drafts):
            return True
    return False


def _copy_graded(talk: Talk, segment: Segment, feet: Feet) -> list[Copied]:
    findings = [d for d in told_before(talk, segment) if d.slot == "finding"]
    last = findings[-1] if findings else None
    if last is not None and is_heading(talk, last) and last.feet and last.foot_carried:
        last.drop(SOUGHT)
        last = replace(last, feet=None)
    if last is None or last.segment.sentence < segment.sentence - 1 or set(feet) & set(last.feet or ()):
        return []
    zone = next((m.readings["zones"] for m in segment.having("zones")), None)
    rules = [r for r in last.rules if r != "denied"]
    there = replace(last, status=Status.PRESENT, zone=zone, severity=None, dropped=False, rules=[*rules, AFFIRMED])
    return copy_draft(segment, there, feet, OTHER_DEGREE)


def _after_a_foot(segment: Segment, groups: dict[int, list[FootGroup]], talk: Talk) -> bool:
    """ "Right front, same again.": the foot stands alone in the segment before."""
    before = talk.segments[segment.index - 1] if segment.index else None
    alone = before is not None and before.sentence == segment.sentence and not before.drafts
    return alone and bool(groups.get(segment.index - 1))


def _copy_same(talk: Talk, segment: Segment, feet: Feet) -> list[Copied]:
    earlier = [d for d in told_before(talk, segment) if d.feet and d.slot not in HORSE_SLOTS]
    measured = _same_measure(talk, segment)
    if measured is not None:
        earlier = [d for d in earlier if d.slot == measured]
        return copy_draft(segment, earlier[-1], feet, "the same on another foot") if earlier else []
    if not earlier:
        return []
    last = earlier[-1]
    if isinstance(last.value, Fraction) and last.slot not in SETUP_SLOTS:
        return copy_draft(segment, last, feet, "the same on another foot")
    if last.slot in SETUP_SLOTS:
        alone = segment.delimiter == "start"
        source = [
            d
            for d in earlier
            if d.feet == last.feet and d.slot in SETUP_SLOTS and (alone or d.segment.sentence == last.segment.sentence)
        ]
    else:
        source = [
            d
            for d in earlier
            if d.segment.sentence == last.segment.sentence and d.slot in _FOUND and d.feet == last.feet
        ]
    said = {_what(d) for d in earlier if d.feet == feet}
    wanted = [draft for draft in source if _what(draft) not in said]
    return [copy for draft in wanted for copy in copy_draft(segment, draft, feet, "the same on another foot")]


def _same_measure(talk: Talk, segment: Segment) -> str | None:
    """ "Off fore, same toe angle": what is measured stands right behind."""
    for cue in segment.having("same", "same"):
        before = [m for m in segment.mentions if m.end in (cue.start, cue.start - 1) and m.end <= cue.start]
        for head in (talk.mention_starting(cue.end), *before):  # "toe angle the same on both fronts, 48"
            if head is not None and head.get("measures") in (*ANGLES, *LENGTHS):
                return head.get("measures")
    return None


def _what(draft: Draft) -> tuple[str, str]:
    """What a draft tells: a foot has one set-up of a kind, but any number of findings."""
    return draft.slot, str(draft.value) if draft.slot in _FOUND else ""


def _just_a_foot(talk: Talk, segment: Segment, group: FootGroup) -> bool:
    """ "… and the right hind": a foot joined by "and" to a statement that has its own."""
    extra = set(talk.words[segment.start : segment.end]) - set(talk.words[group.start : group.end])
    added = segment.delimiter in _ALSO or (segment.delimiter == "start" and talk.words[segment.start - 1] == "and")
    return added and not group.anaphor and extra <= {"the", "in", "on", "his", "her", "also"}


def _another_doing(talk: Talk, segment: Segment) -> bool:
    """ "Worn thin so I pulled them, and the off fore": the foot is added to what no slot took, or is told of behind."""
    before = talk.segments[segment.index - 1] if segment.index else None
    untold = before is not None and before.sentence == segment.sentence and before.own_clause and not before.drafts
    done = untold and before is not None and bool({"i", "we"} & set(talk.words[before.start : before.start + 2]))
    return done or _told_next(talk, segment)


def _told_next(talk: Talk, segment: Segment) -> bool:
    """ "… and the right hind, that one's only loose": the foot opens a statement of its own."""
    behind = talk.segments[segment.index + 1] if segment.index + 1 < len(talk.segments) else None
    if behind is None or not behind.drafts:
        return behind is not None and behind.sentence == segment.sentence and bool(behind.having("pulses"))
    if _worked_next(talk, segment, behind):
        return True
    if behind.sentence != segment.sentence:
        return False
    if _headed_anew(talk, segment, behind):
        return True
    last = next((d for d in reversed(told_before(talk, segment)) if d.slot == "finding"), None)
    again = last is not None and any((d.slot, d.value) == (last.slot, last.value) for d in behind.drafts)
    bare = not behind.having("feet")  # "… and left front, toe crack too"
    return talk.words[behind.start] in ("that", "it", "this") or (again and bare)


def _headed_anew(talk: Talk, segment: Segment, behind: Segment) -> bool:
    """ "Iodine in that one. Oh, and the near fore, quarter crack": the foot heads a finding."""
    opens = talk.segments[segment.index - 1].sentence != segment.sentence
    told = told_before(talk, segment)[-1:] if opens and behind.joined_by(",") else []
    first = behind.drafts[0]
    found = first.slot in ("finding", "shoe_state") and bool(told) and told[0].slot not in _FOUND
    another = any(first.slot == d.slot and first.value != d.value for d in told)
    return (found or another) and not behind.having("feet")


def _worked_next(talk: Talk, segment: Segment, behind: Segment) -> bool:
    """ "Reset the fronts, and the hinds, I trimmed them": another work on the foot, right behind a comma as written."""
    done = next((d for d in reversed(told_before(talk, segment)) if d.slot == "work"), None)
    worked = next((d for d in behind.drafts if d.slot == "work"), None)
    pointed = not POINTED_AT.isdisjoint(talk.words[behind.start : behind.end])
    near = talk.tokens.lowers[segment.end] == ","
    return done is not None and worked is not None and pointed and near and done.value != worked.value


def _meant(talk: Talk, segment: Segment, earlier: list[Draft]) -> Draft | None:
    """ "Thin sole on the off fore, testers mild. Near fore used to be thin as well": the finding named by its word."""
    said = content_of(talk, segment) - _COMMON
    findings = [d for d in reversed(earlier) if d.slot == "finding" and d.end - d.start > 1]
    return next((d for d in findings if talk.words[d.start] in said), None)


def _done_to_them(talk: Talk, segment: Segment, last: Draft) -> bool:
    """ "… so I trimmed them, and the off hind": done to a pronoun's feet and to one more; no list goes on behind it."""
    behind = talk.segments[segment.index + 1 : segment.index + 2]
    goes_on = bool(behind) and behind[0].sentence == segment.sentence and behind[0].joined_by(",")
    goes_on = goes_on and not behind[0].having("totals", "each")  # "six nails in each" is of both
    pronoun = bool({"them", "those", "these", "it", "that"} & set(talk.words[last.segment.start : last.segment.end]))
    done = last.slot in ("work", "treatment") and segment.index - last.segment.index == 1
    return pronoun and done and not (goes_on and (behind[0].drafts or behind[0].having("severities")))


def _answered_behind(talk: Talk, segment: Segment, groups: dict[int, list[FootGroup]]) -> bool:
    """ "Strong on the near fore, and on the off fore, mild.": the foot has an answer of its own."""
    behind = talk.segments[segment.index + 1 : segment.index + 2]
    answered = bool(behind) and behind[0].sentence == segment.sentence and not groups.get(behind[0].index)
    return answered and behind[0].joined_by(",") and any(d.slot == "tester" for d in behind[0].drafts)


def _copy_last(talk: Talk, segment: Segment, feet: Feet, groups: dict[int, list[FootGroup]]) -> list[Copied]:
    earlier = [d for d in told_before(talk, segment) if d.slot not in HORSE_SLOTS]
    done = segment.having("same", "too") and only_done(talk, segment)
    earlier = [d for d in earlier if d.slot not in _FOUND] if done else earlier
    if not earlier:
        return []
    last = _meant(talk, segment, earlier) or earlier[-1]
    if last.slot == "tester" and _answered_behind(talk, segment, groups):
        return []
    if not groups.get(last.segment.index) and not segment.having("same", "too"):
        if not _done_to_them(talk, segment, last):
            return []
        last.foot_carried = False  # the pronoun names the feet
    shod = done and last.slot in SETUP_SLOTS
    near = earlier if shod else last.segment.drafts
    source = [
        d
        for d in near
        if d.feet == last.feet and not d.dropped and (d.slot in _FOUND) == (last.slot in _FOUND)
        if not shod or (d.segment.sentence == last.segment.sentence and d.slot in SETUP_SLOTS)
    ]
    return [c for draft in source for c in copy_draft(segment, draft, feet, ALSO)]
