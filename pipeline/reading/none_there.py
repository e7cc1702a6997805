"""What is not there on another foot: "none in the off fore", "the hinds are clean"."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from pipeline.reading.copying import AFFIRMED, Copied, content_of, copy_draft, told_before
from pipeline.reading.feet import alone_said
from pipeline.reading.foot_groups import SETUP_SLOTS, FootGroup
from pipeline.reading.questions import SOUGHT
from pipeline.reading.responses import bare_below
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import HORSE_SLOTS, Status

_NAE = frozenset({"hasnae", "havenae", "isnae", "wasnae", "arenae", "werenae", "doesnae", "didnae", "hadnae", "nane"})
_NONE_WORDS = frozenset({
    "not", "nothing", "none", "nope", "neither", "n't", "in", "on", "the", "his", "her", "but", "it", "of", "that",
    "is", "was", "does", "has", "have", "had", "do", "did", "any", "at", "all", "there", "one", "'s", "either", "no",
    "though", "too", "to", "report", "ones", "fine", "sign", "signs", "trace", "evidence", "they", "'re", "are", "were",
    "like", "which", "where", "got", "such", "thing", "sort", "kind", "something", "whereas", "while", "found", "foot",
    "feet", "a", "bit", "spot", "scrap", "mark", "speck", "hint", "and", "never", "ai", "nor", "down",
}) | _NAE  # fmt: skip
_SAYING = frozenset({"said", "says", "say", "told", "tells", "reckons", "reckoned"})
_TELLERS = frozenset({"i", "he", "she", "they", "'d", "the", "vet", "owner", "me", "us", "them", "her", "that", "also"})
_BY_NOW = frozenset({"now", "today"})
_PRONOUNS = (["it"], ["that"], ["any"], ["them"], ["one"], ["some"], ["this"])
_WHO = frozenset({"he", "she"})
_FINDING = frozenset(
    {"i", "find", "see", "seen", "saw", "feel", "felt", "could", "can", "ca", "'m", "seeing", "finding", "show"}
    | {"showed", "shows", "this", "guy", "horse", "films", "film", "x", "-", "rays", "ray", "pictures", "radiographs"}
)
# "And I saw none in the off fore"
_TOLD_BY = _WHO | {"i", "said", "says", "owner", "vet", "saw", "see", "felt", "feel"}
_NAMES_A_PLACE = frozenset({"heel", "heels", "toe", "toes", "sole", "soles", "wall", "walls", "quarter", "white"})
_CLEAN = frozenset({
    "clean", "clear", "free", "of", "it", "that", "are", "is", "'s", "'re", "was", "were", "the", "all", "nice", "both",
    "them", "those", "any", "from", "which", "while", "whereas",
})  # fmt: skip
_NONE = frozenset({"nothing", "none", "nope", "not", "n't", "neither", "nor"}) | _NAE
_ANY_MORE = frozenset({("any", "more"), ("any", "longer")})
_EVER = frozenset({("never", "was"), ("never", "has"), ("never", "had"), ("was", "never"), ("had", "never")})
_HAVING_THEM = frozenset({("got", "them"), ("have", "them"), ("has", "them"), ("had", "them")})
_OF_TWO = frozenset({"neither"})  # part of a foot's name: "neither hind does"
_SAYS_NONE = _NONE | {"no", "clear", "never"}
_OF_WHAT = frozenset({"it", "any", "nor", "none"})
_OF_IT = frozenset({"it", "such", "one", "any"})
_SEEN_IN = frozenset({"in", "there", "of", "found", "like", "sign"})
_OF_THAT_KIND = frozenset({"like", "sort", "kind", "such"})
_HAVE = frozenset({"does", "do", "has", "have", "had", "did", "is", "are", "was", "were"})
_STAYS = {"has": {"has", "'s"}, "have": {"have", "'ve"}, "is": {"is", "'s"}, "are": {"are", "'re"}}
_FREE = frozenset({"free", "clear", "clean"})
_IS_NOT = ({"is", "n't"}, {"is", "not"}, {"are", "n't"}, {"are", "not"}, {"'s", "not"})
_FITTED = frozenset({"traction", "clips", "pad", "packing"})
_PUT_ON = ("traction", "pads", "packings", "clips", "shoe_types", "shoe_materials", "treatments", "work")
_FITTINGS = frozenset({"pads", "pad", "shoes", "packing", "clips"})
_FOUND = ("findings", "tester_heads", "pulse_heads", "shoe_states", "gaits")
_NOT_NAMED_BESIDE = frozenset({"foot: named at the end of the list", "foot: named in the next sentence"})


def is_none(talk: Talk, segment: Segment) -> bool:
    """ "None in the off fore", "nothing behind": a foot and that there is none."""
    if _SAYS_NONE.isdisjoint(talk.words[segment.start : segment.end]):
        return False
    feet = {i for m in segment.having("feet") for i in range(m.start, m.end) if talk.words[i] not in _OF_TWO}
    feet |= {i for m in segment.mentions if m.is_any(("fillers", "zones", "horse")) for i in m.literal}
    words = talk.words_beside(segment, feet)
    pairs = set(pairwise(talk.words[segment.start : segment.end]))
    if not _HAVING_THEM.isdisjoint(pairs):
        words.discard("them")
    if not _ANY_MORE.isdisjoint(pairs) or "anymore" in words:
        words -= {"more", "longer", "anymore"}  # "the off fore hasn't any more": gone from there
    never = not _EVER.isdisjoint(pairs) and words - _WHO <= _NONE_WORDS  # "he never was in the off fore"
    if talk.words[segment.end - 3 : segment.end] == ["clear", "of", "it"]:
        return words <= _NONE_WORDS | {"clear"}
    if "any" in words and any(m.readings["feet"] != "in_hand" for m in segment.having("feet")):
        words -= _BY_NOW  # "not seeing any on the right hind now"
    if not _OF_WHAT.isdisjoint(words):
        words -= _TOLD_BY  # "he hasn't got it in the near fore"
    if not words.isdisjoint(("any", "one", "none")):
        words -= _FINDING  # "didn't find any in the off fore"
    if not words.isdisjoint(_SAYING):
        words -= _told_that(talk, segment)
    none = bool(_NONE & words) or ("no" in words and bool(_OF_IT & words))  # "no sign of one in the left front"
    return (none and (words <= _NONE_WORDS or words - _NONE_WORDS <= _its_word(talk, segment))) or never


def _told_that(talk: Talk, segment: Segment) -> set[str]:
    """ "… and said the right front doesn't have it": who tells it."""
    at = next(i for i in range(segment.start, segment.end) if talk.words[i] in _SAYING)
    led = set(talk.words[segment.start : at])
    return {*_SAYING, *_TELLERS} if led <= _TELLERS else set()


def _its_word(talk: Talk, segment: Segment) -> set[str]:
    """ "Flat soles in front, the hinds aren't flat", "white line's stretched …, left hind isn't stretched"."""
    told = told_before(talk, segment)
    last = told[-1] if told and segment.sentence - told[-1].segment.sentence <= 1 else None
    if last is None or last.slot != "finding":
        return set()
    return {talk.words[last.start], talk.words[last.end - 1]} - _NAMES_A_PLACE


def is_clean(talk: Talk, segment: Segment, feet: Feet) -> bool:
    """ "Thrush in both fronts, the hinds are clean": right behind a finding on other feet."""
    before = told_before(talk, segment)
    words = content_of(talk, segment)
    near = bool(before) and before[-1].slot == "finding" and segment.sentence - before[-1].segment.sentence <= 1
    other = near and (not set(before[-1].feet or ()) & set(feet) or is_heading(talk, before[-1]))
    there = other and before[-1].status is Status.PRESENT
    return there and bool({"clean", "clear", "free"} & words) and words <= _CLEAN


def is_heading(talk: Talk, draft: Draft) -> bool:
    """ "Thrush then. Near fore none, near hind a bit.": a finding alone, that has no foot of its own beside it."""
    beside = draft.feet and not draft.foot_carried and not _NOT_NAMED_BESIDE & set(draft.rules)
    told = beside or bool({"refers back", "denied"} & set(draft.rules))
    return not told and alone_said(talk, draft)


def _graded_behind(talk: Talk, segment: Segment, told: Draft) -> bool:
    """ "Thrush in the frog, near hind's clear, off hind mild": how bad it is in the foot behind."""
    behind = [s for s in talk.sentence(segment.sentence) if s.index > segment.index]
    return any(m.start in told.evidence for s in behind if s.having("feet") for m in s.having("severities"))


def copy_none(talk: Talk, segment: Segment, feet: Feet) -> list[Copied]:
    """The finding or the answer said last, denied on these feet."""
    if _not_gone_there(talk, segment):
        return _copy_not_gone(talk, segment, feet)
    told = _of_the_other_horse(talk, segment) or told_before(talk, segment)
    findings = [
        d for d in told if d.slot in ("finding", "tester") or (d is told[-1] and _of_the_shoe(talk, segment, d))
    ]
    if (told_apart := _not_of_this(talk, segment, feet, told)) is not None:
        return told_apart
    if not findings or _nothing_put_on(talk, segment, told[-1]) or _named_right_behind(talk, segment, feet, findings):
        return []
    last = findings[-1]
    elsewhere = bool(_NOT_NAMED_BESIDE & set(last.rules)) and bool(last.feet) and not set(last.feet or ()) & set(feet)
    placed = bool(last.segment.having("zones")) and last.feet in (None, (), feet)
    elsewhere = elsewhere or (last.zone is not None and not placed)
    graded = last.severity and not _graded_behind(talk, segment, last)
    if is_heading(talk, last) and not (graded or elsewhere):  # not "Thrush, left hind. Right none."
        if last.feet == feet:  # "Cracks, left front none, left hind one"
            return _denied_here(last, segment)
        last.drop(SOUGHT)
    if last.slot == "finding" and "report" in talk.words[segment.start : segment.end]:
        return []  # "near hind nothing to report" denies nothing in particular
    if SOUGHT in last.rules and last.feet == feet:  # "Thrush? None in the left hind."
        return _denied_here(last, segment)
    if last.slot == "tester":
        made = copy_draft(segment, replace(last, value="none", zone=None), feet, "nothing on the other foot")
    else:
        if not last.feet and last.end - last.start == last.segment.end - last.segment.start:
            last.drop(SOUGHT)  # "Sidebone. None in either fore."
        elsewhere = last.segment.horse != segment.horse
        gone = replace(last, zone=None, severity=None, status=Status.ABSENT, feet=None if elsewhere else last.feet)
        made = copy_draft(segment, gone, feet, "none in the other foot")
        made += _first_of_two(talk, segment, findings, gone, feet)
    for copy in made:
        copy.draft.note("denied")
    return made


def _denied_here(asked: Draft, segment: Segment) -> list[Copied]:
    """ "All four reset. Thrush? Not in any of his feet": denied on the feet in hand, where no copy is needed."""
    asked.dropped, asked.status = False, Status.ABSENT
    asked.evidence.update(range(segment.start, segment.end))
    asked.note("denied")
    return []


def _first_of_two(talk: Talk, segment: Segment, findings: list[Draft], gone: Draft, feet: Feet) -> list[Copied]:
    """ "The left has a flat sole and a crack, the right has neither": the finding before the last, too."""
    two = any(talk.words[m.start] in _OF_TWO for m in segment.having("denials"))
    first = [d for d in findings[-2:-1] if two and d.slot == "finding" and d.value != gone.value]
    first = [replace(gone, value=d.value) for d in first if segment.sentence - d.segment.sentence <= 1]
    return [copy for draft in first for copy in copy_draft(segment, draft, feet, "none in the other foot")]


def _not_of_this(talk: Talk, segment: Segment, feet: Feet, told: list[Draft]) -> list[Copied] | None:
    """What a denial of another foot says where it denies no finding; none where it does."""
    if _denies_what_was_fitted(talk, segment):
        return []
    if _not_free_of_it(talk, segment):
        there = replace(told[-1], status=Status.PRESENT, zone=None, severity=None)
        return copy_draft(segment, replace(there, rules=[*there.rules, AFFIRMED]), feet, "not free of it")
    other = _told_beside(talk, segment, told)
    if other is None:
        return None
    pulse = other.slot == "pulse" and set(feet).isdisjoint(other.feet or feet)
    made = copy_draft(segment, replace(other, value="normal"), feet, "none on the other foot") if pulse else []
    for copy in made:
        copy.draft.note("denied")
    return made


def _not_free_of_it(talk: Talk, segment: Segment) -> bool:
    """ "Left front is free of thrush, the right front isn't": not free of it, so it is there."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or content_of(talk, segment) - {"the", "but", "and"} not in _IS_NOT:
        return False
    cues = before.having("denials", "before") if before.sentence == segment.sentence else []
    free = any(talk.words[cue.start] in _FREE for cue in cues)
    return free and any(d.slot == "finding" for d in before.drafts)


def _told_beside(talk: Talk, segment: Segment, told: list[Draft]) -> Draft | None:
    """ "Reset the left front, not the right": what is denied in one breath with it; no finding of a sentence before."""
    near = [d for d in told if d.segment.sentence == segment.sentence and d.slot not in HORSE_SLOTS]
    if not near or _of_the_shoe(talk, segment, near[-1]):
        return None
    found = [d for d in told if d.slot == "finding" and segment.sentence - d.segment.sentence <= 1]
    treated = bool(found) and found[-1].feet == near[-1].feet  # "seedy toe in the left front, I resected it, none in …"
    if treated or any(d.slot in ("finding", "tester", "shoe_state") for d in near):
        return None
    return near[-1]


def _denies_what_was_fitted(talk: Talk, segment: Segment) -> bool:
    """ "A bruise in front. No borium this time, not on any foot": the same denial on its feet, of no finding before."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or before.sentence != segment.sentence or not before.having("denials", "before"):
        return False
    found = any(m.is_any(_FOUND) for m in before.mentions)
    fitted = any(m.is_any(_PUT_ON) for m in before.mentions)
    return not found and (fitted or not _FITTINGS.isdisjoint(talk.words[before.start : before.end]))


def _not_gone_there(talk: Talk, segment: Segment) -> bool:
    """ "The mud fever has cleared on the left hind, and on the right hind it hasn't": not gone, so there."""
    words = talk.words[segment.start : segment.end]
    aux = _STAYS.get(words[-2]) if words[-1] in ("n't", "not") and len(words) > 1 else None
    before = talk.segments[segment.index - 1] if segment.index else None
    if aux is None or before is None or before.sentence != segment.sentence:
        return False
    told = any(d.slot == "finding" for d in before.drafts) and bool(before.having("feet"))
    gone = before.having("resolutions", "after")
    return told and any(not aux.isdisjoint(talk.words[m.start - 1 : m.end]) for m in gone)


def _copy_not_gone(talk: Talk, segment: Segment, feet: Feet) -> list[Copied]:
    last = [d for d in talk.segments[segment.index - 1].drafts if d.slot == "finding"][-1]
    behind = [s for s in talk.sentence(segment.sentence) if s.index > segment.index]
    if any(last.evidence & set(m.literal) for s in behind for m in s.having("severities")):
        last.severity = None  # "…, and on the right hind it hasn't, still moderate"
    there = replace(last, status=Status.PRESENT, zone=None, severity=None, rules=[*last.rules, AFFIRMED])
    return copy_draft(segment, there, feet, "not gone from the other foot")


def _named_right_behind(talk: Talk, segment: Segment, feet: Feet, told: list[Draft]) -> bool:
    """ "Nothing of the sort up front, no scratches on the fronts": which of the findings before, is told behind it."""
    behind = talk.segments[segment.index + 1 : segment.index + 2]
    if not behind or not behind[0].joined_by(",", "and", ", and") or not behind[0].having("denials", "before"):
        return False
    denied = next((d for d in behind[0].drafts if d.slot == "finding"), None)
    again = denied is not None and any((d.slot, d.value) == (denied.slot, denied.value) for d in told)
    return again and denied is not None and set(denied.feet or ()) == set(feet)


def _nothing_put_on(talk: Talk, segment: Segment, last: Draft) -> bool:
    """ "A new shoe on it, half round. Nothing on the hinds": no shoes there, which denies no finding."""
    if bare_below(talk, segment):
        return True
    words = talk.words[segment.start : segment.end]
    shod = last.slot in SETUP_SLOTS and last.status is Status.PRESENT and last.segment.sentence < segment.sentence
    return shod and "nothing" in words and not _SEEN_IN & set(words)


def _of_the_shoe(talk: Talk, segment: Segment, last: Draft) -> bool:
    """ "Studs on the hinds, none up front", "bars behind but not in front", "a rim pad, nothing like that on the near".

    What was put on the other feet, in the same breath.
    """
    words = talk.words[segment.start : segment.end]
    fitted = last.slot in _FITTED and last.status is Status.PRESENT and last.segment.sentence == segment.sentence
    none = "none" in words or ("nothing" in words and not _OF_THAT_KIND.isdisjoint(words))
    but_not = segment.joined_by("but", ", but") and words[0] == "not" and segment.index - last.segment.index == 1
    shod = fitted or (last.slot == "shoe_type" and last.status is Status.PRESENT)
    return (bool(last.feet) and ((fitted and none) or (shod and but_not))) or _was_not(talk, segment, last)


def _of_the_other_horse(talk: Talk, segment: Segment) -> list[Draft]:
    """ "Tally has thrush in both hinds, and there's none in Buck's": what was just told of the horse before."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or before.horse == segment.horse or not segment.having("horse"):
        return []
    near = [s for s in talk.segments[: segment.index] if s.horse == before.horse and segment.sentence - s.sentence <= 1]
    return [d for s in near for d in s.drafts if d.slot == "finding" and not d.dropped]


def _was_not(talk: Talk, segment: Segment, last: Draft) -> bool:
    """ "Near fore was loose, off fore wasn't", "loosened the near hind, not the off": the shoe found otherwise."""
    words = talk.words[segment.start : segment.end]
    if last.slot == "shoe_state" and content_of(talk, segment) in ({"not"}, {"not", "the"}):
        return True
    return last.slot == "shoe_state" and words[-2:] in (["was", "n't"], ["is", "n't"], ["was", "not"], ["is", "not"])


def looked_for_it(talk: Talk, segment: Segment) -> bool:
    """ "I looked for it in the near fore and came away with nothing": the finding told before, sought and not found."""
    sought = any(talk.words[m.end : m.end + 1] in _PRONOUNS for m in segment.having("doubts", "sought"))
    behind = talk.segments[segment.index + 1 : segment.index + 2] if sought and not segment.drafts else []
    if not behind or behind[0].sentence != segment.sentence or behind[0].drafts or behind[0].having("feet"):
        return False
    return bool(behind[0].having("denials")) or not _NONE.isdisjoint(talk.words[behind[0].start : behind[0].end])


def copy_none_behind(talk: Talk, segment: Segment, groups: dict[int, list[FootGroup]]) -> list[Copied]:
    """ "Right hind frog, none.": the foot, and the place, stand in the segment before."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or before.sentence != segment.sentence or before.drafts or not groups.get(before.index):
        return []
    made = copy_none(talk, segment, groups[before.index][-1].feet)
    for copy in made:
        copy.draft.zone = next((m.get("zones") for m in before.having("zones")), None)
    return made
