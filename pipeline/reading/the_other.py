"""The other foot of a pair as the one spoken of: "he'd lost the off hind, and the other one was loose"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind

_THE_OTHER = Sayings("the other one", "the other", "other one", "other")
_OTHER = frozenset({"other"})
_OPENED_BY = frozenset({",", ":", "and", "but", "while", "though", *SENTENCE_ENDS})
_VERBS = frozenset({"was", "is", "'s", "had", "has", "have"})
_NOR_SO = frozenset({"neither", "nor", "so"})
_DOES = _VERBS | {"does", "did", "do"}
_CLOSING = frozenset({",", "and", "but", *SENTENCE_ENDS})
_TOO = frozenset({"too", "as"})
_OF_A_SHOE = frozenset(
    {"loose", "sprung", "hanging", "twisted", "shifted", "gone", "clinched", "bent", "slipped", "half"}
)
_OF_A_FOOT = frozenset({
    "clean", "clear", "some", "none", "a", "it", "no", "got", "fine", "good", "grand", "cold", "cool", "okay", "ok",
    "new", "brand", "reset", "replaced", "tight", "plain",
})  # fmt: skip
_LIGHT = frozenset({"just", "only", "a", "bit", "well", "nearly", "also", "still", "all"})
_LEADING_IN = _LIGHT | {"an", "got", "some", "another", "there"}
_TOLD_OF_A_FOOT = (
    "findings", "severities", "pulses", "tester_responses", "shoe_states", "shoe_types", "pads", "same", "too",
)  # fmt: skip
_TOLD_BY_FOOT = frozenset({"finding", "shoe_state", "pulse", "tester"})
_LED_BY = _OPENED_BY | {"because", "as", "since", "cause", "so"}
_PAIR = 2  # feet
_NEAR = 2  # sentences from the one to the other
_ALIKE = ("same", "too")
_LINKS = frozenset({"with", "for", "on", "in", "of", "goes"})
_PULLED = frozenset({"pulled", "pull"})
_WEEKLY = ("week", "fortnight", "month", "year")
_COUNTED_BEFORE = 16  # tokens from the number of the one to that of the other


def mark_the_other(talk: Talk) -> None:
    """Make a foot of "the other" where a shoe, a finding, an answer or a number is told, and one foot was before.

    Where the memo has several horses, "the other one" may be one of them: only what is found on a foot, or counted,
    is told of a foot then, and not behind a sentence that speaks of a horse.
    """
    if not talk.says(_OTHER):
        return
    taken = talk.claimed()
    alone = len({m.readings["horse"] for m in talk.having("horse")}) == 1
    for at, form in _THE_OTHER.within(talk.words, 1, len(talk.words)):
        end = at + len(form)
        if form[-1] == "one":
            _part_from_one(talk, end, taken)
        if talk.words[at - 1] == "the" or taken & set(range(at, end)):
            continue
        foot = _foot_before(talk, at)
        if foot is None:
            continue
        told = _found_behind(talk, at, end) and (alone or not _of_a_horse(talk, foot, at))
        worded = _worded_behind(talk, at, end, one_horse=alone)
        if told or worded or (alone and _as_the_first(talk, at, end)) or _worked(talk, foot, at, end, one_horse=alone):
            talk.mentions.append(Mention(at, end, tuple(range(at, end)), {"feet": "other"}, MatchKind.VARIANT))
    talk.in_order()


def _found_behind(talk: Talk, at: int, end: int) -> bool:
    """ "The other one has a corn", "the other's normal", "the other, fifty one", "likewise the other one"."""
    if _said_alike(talk, at, end):
        return True
    if talk.words[at - 1] not in _OPENED_BY:
        return False
    said = end + 1 if talk.words[end : end + 1] in ([","], [":"]) else end
    verb = talk.words[said : said + 1] != [] and talk.words[said] in _VERBS
    said += verb
    number = talk.mention_starting(said)
    if number is not None and number.number is not None and not number.number.article:
        return _counted(talk, at, number)
    if said == end:  # nothing parts them: "the other corn", but "the other as well", "the other a plain one"
        own = talk.words[end : end + 1] in (["a"], ["an"]) and _starts(talk, end + 1, _TOLD_OF_A_FOOT)
        return own or any(talk.having(name) and _starts(talk, end, (name,)) for name in _ALIKE)
    while said < len(talk.words) and talk.words[said] in _LEADING_IN and not _starts(talk, said, _TOLD_OF_A_FOOT):
        said += 1
    return _starts(talk, said, _TOLD_OF_A_FOOT)


def _part_from_one(talk: Talk, end: int, taken: set[int]) -> None:
    """ "Other one the same": no "one the same" of its own, as in "off fore has one the same"."""
    cue = talk.mention_starting(end - 1)
    if cue is not None and cue.get("same") == "one" and talk.words[end : end + 1] in (["the"], ["just"], ["as"]):
        kind = "too" if talk.words[end] == "as" else "same"
        cue.dropped = True
        talk.mentions.append(Mention(end, cue.end, tuple(range(end, cue.end)), {kind: kind}, MatchKind.VARIANT))
        taken.discard(end - 1)


def _starts(talk: Talk, at: int, classes: tuple[str, ...]) -> bool:
    told = talk.mention_starting(at)
    return told is not None and told.is_any(classes)


def _said_alike(talk: Talk, at: int, end: int) -> bool:
    """ "Likewise the other", "same goes for the other one": it is the same, and nothing else is said of it."""
    closed = talk.words[end : end + 1] == [] or talk.words[end] in _CLOSING
    while at > 1 and talk.words[at - 1] in _LINKS:
        at -= 1
    cue = talk.mention_ending(at)
    return closed and cue is not None and cue.get("same") is not None


def _counted(talk: Talk, at: int, number: Mention) -> bool:
    """Whether a number was told of the one before, and the other's is no time."""
    unit = talk.mention_starting(number.end)
    timed = unit is not None and unit.get("units") in _WEEKLY
    return not timed and any(m.number and 0 < at - m.end < _COUNTED_BEFORE for m in talk.mentions)


def _worded_behind(talk: Talk, at: int, end: int, *, one_horse: bool) -> bool:
    """ "And the other one was loose", "the other is clean": a verb, and what a shoe or a foot may be."""
    if talk.words[at - 1] not in _OPENED_BY or talk.words[end : end + 1] == [] or talk.words[end] not in _VERBS:
        return False
    said = end + 1
    while said < len(talk.words) and talk.words[said] in _LIGHT and talk.words[said] != "a":
        said += 1
    word = talk.words[said : said + 1]
    return word != [] and (word[0] in _OF_A_SHOE or (one_horse and word[0] in _OF_A_FOOT))


def _as_the_first(talk: Talk, at: int, end: int) -> bool:
    """ "No heat in the near fore and neither does the other": what was said of the one, said in short of the other."""
    led = talk.words[at - 2] in _NOR_SO and talk.words[at - 1] in _DOES if at > 1 else False
    return led and (talk.words[end : end + 1] == [] or talk.words[end] in _CLOSING)


def _worked(talk: Talk, foot: Mention, at: int, end: int, *, one_horse: bool) -> bool:
    """ "Reset the near fore, pulled the other too": done to the other foot of the same sentence.

    Of a memo's one horse also in the next: "near hind was sprung. Reset it, and trimmed the other".
    """
    work = talk.mention_ending(at)
    done = talk.words[at - 1] in _PULLED or (work is not None and work.is_any(("work",)))
    closed = talk.words[end : end + 1] == [] or talk.words[end] in _CLOSING | _TOO
    return closed and done and (one_horse or SENTENCE_ENDS.isdisjoint(talk.words[foot.end : at]))


def _of_a_horse(talk: Talk, foot: Mention, at: int) -> bool:
    """Whether a horse is named in the sentence of the foot: "Tally has a corn in the near fore, the other one …"."""
    start = foot.start
    while start and talk.words[start - 1] not in SENTENCE_ENDS:
        start -= 1
    return any(m.get("horse") for m in talk.mentions if start <= m.start < at)


def _foot_before(talk: Talk, at: int) -> Mention | None:
    """The one foot that was named last, in this sentence or the one before, if no horse was named behind it."""
    before = [m for m in talk.mentions if m.end <= at and not m.dropped and (m.get("feet") or m.get("horse"))]
    if before and before[-1].get("feet") == "in_hand":
        before = [m for m in before if m.get("feet") != "in_hand"]
    if not before or not _one_foot(str(before[-1].get("feet"))):
        return None
    stops = sum(word in SENTENCE_ENDS for word in talk.words[before[-1].end : at])
    return before[-1] if stops <= 1 else None


def leave_the_one(talk: Talk) -> None:
    """ "She threw her right front. New on both fronts, because the other one was worn": the other is the left."""
    if not talk.says(_OTHER):
        return
    for segment in talk.segments[1:]:
        at = next((at for at, _ in _THE_OTHER.within(talk.words, segment.start, segment.end)), 0)
        if not at or talk.words[at - 1] not in _LED_BY or any(m.start > at for m in segment.having("feet")):
            continue
        told = [d for d in segment.drafts if d.start > at and d.slot in _TOLD_BY_FOOT and len(d.feet or ()) == _PAIR]
        near = [s for s in talk.segments[: segment.index] if segment.sentence - s.sentence <= _NEAR] if told else []
        ones = {d.feet for s in near if s.horse == segment.horse for d in s.kept if d.slot in _TOLD_BY_FOOT}
        for draft in told:
            pair = draft.feet or ()
            one = [feet[0] for feet in ones if feet and len(feet) == 1 and feet[0] in pair]
            if len(one) == 1:
                draft.feet, draft.foot_carried = tuple(foot for foot in pair if foot not in one), False
                draft.note("the other one")


def _one_foot(name: str) -> bool:
    return name in FEET or name.startswith("bare_")
