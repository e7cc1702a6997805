"""Said to be there on another foot: "but the right hind does", "so has the off fore", "in the hinds, yes"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.copying import AFFIRMED, OTHER_FOOT, Copied, content_of, copy_draft, told_before
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.record import Status

_NONE = frozenset({"none", "no", "not", "n't", "nothing", "nil", "neither"})
_YES = frozenset({"yes", "aye", "yeah", "yep"})
_AFFIRMING = _YES | frozenset({"does", "do", "has", "have", "got", "is", "are", "did"})
_AFFIRMED = (
    _AFFIRMING
    | {"on", "it", "'s", "some", "the", "but", "there", "in", "though", "has", "them"}
    | {"still", "at", "one", "hanging", "lingering", "hangs"}
)
_SURELY = frozenset({"definitely", "certainly", "surely"})
_ONLY_THERE = frozenset({"only", "just"})
_LIGHT = frozenset({
    "and", "the", "in", "on", "his", "her", "but", "maybe", "some", "one", "it", "of", "too", "as", "well", "also",
    "has", "have", "had", "be", "is", "there", "'s", "could", "may", "might", "i", "though", "same", "a", "at",
    "bit", "got", "little", "touch", "wee",
})  # fmt: skip
_HAD = frozenset({"'s", "had", "was", "were"})
_HAVING = frozenset({"got", "has", "have"})
_WORSE = frozenset({"the", "his", "her", "is", "'s", "worse", "a", "lot", "bit", "good", "deal", "even", "much", "and"})
_POINTING = frozenset({"that", "which", "now", "today", "yet"})


def is_affirmed(talk: Talk, segment: Segment) -> bool:
    """ "No thrush in the left hind but the right hind does", "right pair has it", "in the hinds, yes"."""
    words = content_of(talk, segment) | set(_yes(talk, segment))
    if "one" in talk.words[segment.start : segment.end] and segment.having("severities"):
        return False  # "the left front has a little one": the same in another degree
    narrowed = {i for m in segment.mentions if m.is_any(("zones", "severities")) for i in range(m.start, m.end)}
    rest = words - {talk.words[i] for i in narrowed}
    if not rest.isdisjoint(_HAVING):
        rest -= _POINTING  # "it's the right front that's still got it"
    rest -= _SURELY | _ONLY_THERE
    is_in = {"it", "'s"} <= words and not words.isdisjoint(
        {"in", "on"}
    )  # "no thrush in the off fore, it's in the near"
    only = words & _ONLY_THERE and not segment.having("severities")  # not "bad in front, just a touch behind"
    said = words & (_AFFIRMING | _SURELY) or only or "some" in words or is_in or words == {"one"}
    return bool(said) and rest <= _AFFIRMED


def _yes(talk: Talk, segment: Segment) -> list[str]:
    """ "In the hinds, yes, in both": the answer alone behind its foot; not "in front, yes, I put new rims"."""
    answer, *more = [*talk.segments[segment.index + 1 : segment.index + 3], segment]
    alone = answer.joined_by(",") and answer.end - answer.start == 1 and talk.words[answer.start] in _YES
    goes_on = len(more) > 1 and more[0].joined_by(",") and bool(more[0].drafts)
    return [talk.words[answer.start]] if alone and not goes_on else []


def so_has(talk: Talk, segment: Segment) -> bool:
    """ "Left front has thrush, so does the right front", "… as does the right"."""
    first = segment.start + 1 if talk.words[segment.start] == "as" else segment.start
    led = talk.words[first - 1] in ("so", "as") and talk.words[first] in _AFFIRMING | _HAD
    return led and content_of(talk, segment) - {"as", *_HAD} <= _AFFIRMED


def is_worse(talk: Talk, segment: Segment) -> bool:
    """ "Thrush in the near hind, the off hind's worse": it has the finding told last, too; not "was worse"."""
    if "worse" not in talk.words[segment.start + 1 : segment.end] or segment.drafts:
        return False
    told, said = told_before(talk, segment), content_of(talk, segment)
    if not told or told[-1].slot != "finding" or told[-1].status is not Status.PRESENT:
        return False
    if any(s.having("resolutions") for s in talk.sentence(told[-1].segment.sentence)):
        return False  # "a bruise near fore, resolved. Off fore is worse."
    return not {"is", "'s"}.isdisjoint(said) and said <= _WORSE


def is_doubted(talk: Talk, segment: Segment) -> bool:
    """ "A corn in the left front, possibly the right front", "… and the off fore might have": a foot and a doubt."""
    cues = [m for m in segment.having("doubts") if m.get("doubts") == "before"]
    held = {i for m in cues for i in range(m.start, m.end)}
    held |= {i for m in segment.having("feet") for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, held)
    return bool(cues) and (rest <= _LIGHT or ("same" not in rest and rest - {"starting", "brewing"} <= _LIGHT))


def copy_doubted(talk: Talk, segment: Segment, feet: Feet) -> list[Copied]:
    """The finding told last, suspected on another foot."""
    told = told_before(talk, segment)
    last = told[-1] if told and told[-1].slot == "finding" else None
    if last is None or segment.sentence - last.segment.sentence > 1 or set(feet) & set(last.feet or feet):
        return []
    rules = [r for r in last.rules if r != "denied"]
    there = replace(last, status=Status.SUSPECTED, zone=None, severity=None, rules=[*rules, "doubted", AFFIRMED])
    return copy_draft(segment, there, feet, OTHER_FOOT)


def copy_affirmed(talk: Talk, segment: Segment, feet: Feet) -> list[Copied]:
    told = told_before(talk, segment)
    findings = [d for d in told if d.slot == "finding"]
    if not findings or findings[-1].segment.sentence < segment.sentence - 1:
        return []
    if told[-1].slot != "finding" and not _ONLY_THERE.isdisjoint(content_of(talk, segment)):
        return []  # "… no corn. A leather pad on the left front, just the left"
    yes = not _YES.isdisjoint([*content_of(talk, segment), *_yes(talk, segment)])
    yes = yes and not _NONE.isdisjoint(talk.words[findings[-1].segment.start : segment.start])
    words = set(talk.words[segment.start : segment.end])
    known = not _SURELY.isdisjoint(words) and bool(findings[-1].segment.having("doubts"))  # "maybe a corn in the …"
    denied = bool(findings[-1].segment.having("denials")) or "denied" in findings[-1].rules
    denied = denied or _none_of_it(talk, findings[-1], segment)
    if not (yes or known or denied) and not _gone_there(talk, findings[-1], segment, feet):
        return []
    rules = [r for r in findings[-1].rules if r != "denied"]
    there = replace(findings[-1], status=Status.PRESENT, zone=None, severity=None, rules=[*rules, AFFIRMED])
    return copy_draft(segment, there, feet, OTHER_FOOT)


def _none_of_it(talk: Talk, last: Draft, segment: Segment) -> bool:
    """ "Thrush, none in the near hind, but the off hind's got it, severe": the place and degree are its own."""
    ahead = talk.segments[segment.index - 1]
    if ahead.sentence != segment.sentence or ahead.drafts or talk.words[ahead.start] not in _NONE:
        return False
    behind = [m for s in talk.sentence(segment.sentence) if s.index >= segment.index for m in s.mentions]
    if any(m.get("zones") == last.zone and last.evidence.issuperset(m.literal) for m in behind):
        last.zone = None
    if any(m.get("severities") and last.evidence.issuperset(m.literal) for m in behind):
        last.severity = None
    return True


def _gone_there(talk: Talk, last: Draft, segment: Segment, feet: Feet) -> bool:
    """ "Left hind had thrush last time and that's gone. Right hind's still got it": gone from the one foot alone."""
    between = talk.segments[last.segment.index : segment.index]
    return any(s.having("resolutions") for s in between) and bool(last.feet) and not set(feet) & set(last.feet or ())
