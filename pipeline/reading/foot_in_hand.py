"""The foot still in hand for what is told without one, where it means more feet ("six nails in each"), or others.

A plan to go over to something else is for the feet that have its like: "mesh pads … we'll go to full pads".
"""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.reading.foot_groups import SETUP_SLOTS, Groups
from pipeline.reading.number_context import ANGLES, LENGTHS
from pipeline.reading.sayings import Sayings
from pipeline.reading.shoeing_line import line_before, named_feet, named_feet_of
from pipeline.reading.talk import Draft, Feet, Segment, Sentence, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.told_apart import those
from pipeline.reading.whole_horse import in_every
from pipeline.record import FEET, HORSE_SLOTS

_OF_ONE_FOOT = (["side"], ["heel"], ["quarter"], ["branch"])
_A_FOOT = (["a", "foot"], ["a", "shoe"], ["the", "foot"], ["per", "foot"], ["per", "shoe"])
_THAT_FOOT = Sayings("that foot", "that shoe", "that same foot", "the same foot")
_OF_EACH = frozenset({"each", "every", "apiece", "lot", "foot", "shoe"})
_PAIR = 2
_OF_A_SHOE = ("work", "shoe_size", "shoe_type", "shoe_material")
_BARED = ("trim", "removed")
_POINTING = frozenset({"it", "that", "this", "there", "again", "back", "then", "same"})
_EACH_OF_TWO = frozenset({"treatment", "packing", "pad"})
_APIECE = frozenset({"nails", "shoe_size", "clips", "pad", "traction", *ANGLES, *LENGTHS})
_PUT_ON_ALL = frozenset({"nails", "clips", "traction"})
_TRAILING = frozenset({"shoe_material", "shoe_size", "clips", "nails", "nail_size", "traction"})
_IN_A_ROW = frozenset({"shoe_type", "pad"})
_SHARED = _EACH_OF_TWO | _APIECE
_ADDED = frozenset({"traction", "clips", "pad", "packing", "wedge"})
_KIND = frozenset({"shoe_size", "shoe_type", "shoe_material"})
_ADDED_IN = 3  # sentences in a row that may tell what was added to some of the shoes
_WORN = frozenset({"pad", "wedge", "shoe_type", "packing"})
_OVER = frozenset({"go", "going", "move", "switch", "change", "step", "swap", "over", "bump", "put", "drop", "bring"})
_TO = frozenset({"to", "into", "for"})
_UP = frozenset({"up", "down", "back", "over", "on", "him", "her", "them", "straight", "right"})
_REACH = 8
_FINE = frozenset({"fine", "grand", "ok", "okay", "alright", "good", "great", "perfect"})
_IS = _FINE | {"'s", "is", "was", "the", "but", "and", "though", "just", "still"}
_FOR_WHAT_AILS = SETUP_SLOTS | {"treatment", "shoe_state"}
_IT = frozenset({"it", "that", "there"})


@dataclass(frozen=True)
class Aside:
    """One foot that was told of in passing, "I'll pad the off fore next time", and what was in hand before it."""

    before: Feet | None
    planned: bool
    fine: bool = False


def left_in_hand(talk: Talk, left: tuple[int, Feet | None, int], now: Segment, groups: Groups) -> Feet | None:
    """ "Thrush in the near hind. Duke had it last month. Iodine in it": still that foot, if no more was told of him.

    Or if it is pointed to: "back to Buck, six nails in that shoe".
    """
    if left[0] != now.horse:
        return None
    told = now.having("horse") or any(s.drafts or groups[s.index] for s in talk.segments[left[2] : now.index])
    pointed = _THAT_FOOT.within(talk.words, now.start, talk.sentence(now.sentence)[-1].end) if told else ()
    return left[1] if not told or any(pointed) else None


def told_in_passing(
    talk: Talk, sentence: Sentence, groups: Groups, before: Feet | None, aside: Aside | None
) -> Aside | None:
    """What a sentence leaves that names one foot and tells nothing of today but a denial; else the one before."""
    if (ailing := _but_fine(talk, sentence, groups)) is not None:
        return Aside(ailing, planned=False, fine=True)
    named = {group.feet for s in sentence for group in groups[s.index]}
    if len(named) > 1 or (not named and aside is None):
        return None
    told = [d for s in sentence for d in s.drafts if d.slot not in HORSE_SLOTS]
    if not named:
        return None if told else aside  # "testers get nothing there now": the foot is in hand
    timed = sentence if "times" in sentence.classes else []
    if len(next(iter(named))) > 1 or any(s.having("times", "today") for s in timed):
        return None
    planned = "plans" in sentence.classes and any(s.having("plans") for s in sentence)
    planned = planned and not any(d.slot == "finding" for d in told)
    past = any(s.having("times", "history") for s in timed)
    away = [s.having("denials") or s.having("resolutions") for s in sentence if s.drafts]
    denied = all(d.slot == "finding" for d in told) and all(away)
    if not (planned or past or (told and denied)):
        return None
    return Aside(aside.before if aside else before, planned)


def _but_fine(talk: Talk, sentence: Sentence, groups: Groups) -> Feet | None:
    """ "A corn in the near fore, off fore's fine.": the foot that is not, for what is put on behind a stop."""
    last = sentence[-1]
    if not sentence.says(_FINE) or last.drafts or len(sentence) == 1 or len(groups[last.index]) != 1:
        return None
    fine = groups[last.index][0]
    told = [s for s in sentence[:-1] if groups[s.index]]
    ailing = groups[told[-1].index][-1].feet if told and any(s.drafts for s in told) else fine.feet
    rest = talk.words_beside(last, range(fine.start, fine.end))
    return None if rest - _IS or set(ailing) & set(fine.feet) else ailing


def of_today(talk: Talk, sentence: Sentence, groups: Groups, aside: Aside | None) -> bool:
    """ "I'll pad the off fore next time. Trimmed.": work of today, which is not of the foot told of in passing.

    Behind a plan so is all that is put on; behind a denial or an earlier time only a trim or reset said alone.
    """
    if aside is None:
        return False
    told = [d for s in sentence for d in s.drafts if d.slot not in HORSE_SLOTS]
    if aside.fine:
        ailing = told and not any(d.value in ("trim", "reset") or d.slot not in _FOR_WHAT_AILS for d in told)
        return bool(ailing) and all(g.anaphor for s in sentence for g in groups[s.index])
    if not told or any(groups[s.index] for s in sentence) or sentence.says(_POINTING):
        return False
    if talk.tokens.lowers[sentence[0].start - 1] not in SENTENCE_ENDS:
        return False  # "studs on the near fore last time, reset for now": of the foot just named
    if any(s.having("plans") or s.having("times", "history") for s in sentence):
        return False
    work = told[0].slot == "work" and told[0].value in ("trim", "reset")
    put_on = aside.planned and all(d.slot in SETUP_SLOTS for d in told)
    return put_on or (work and aside.before is None)


def done_to_them(talk: Talk, draft: Draft) -> bool:
    """ "I put iodine in them, and the left front": the pronoun's feet, to which the one behind is added."""
    done = draft.slot in ("work", "treatment", "nails")
    shoes = talk.mention_starting(draft.end + 1)  # "reset those heart bars, both fronts"
    shod = shoes is not None and shoes.get("shoe_types") is not None
    pointed = {"them", "those"} & set(talk.words[draft.start : min(draft.end + 2, draft.segment.end)])
    return done and bool(pointed) and not shod


def done_to_it(talk: Talk, draft: Draft, hand: Feet) -> bool:
    """ "Sprung the near fore shoe. Reset it, and rolled toes on both fores": the one in hand alone was reset."""
    it = "it" in talk.words[draft.start : draft.end + 1]
    it = it or talk.words[draft.end : draft.end + 2] == ["that", "and"]  # "I reset that and the off hind"
    return draft.slot == "work" and len(hand) == 1 and it


def from_hand(talk: Talk, draft: Draft, earlier: Feet | None, hand: Feet | None) -> None:
    """The foot named before in the sentence, or the one in hand."""
    over = feet_gone_over(talk, draft, hand) if earlier is None else _behind_a_row(talk, draft, earlier)
    draft.feet = (
        over
        or (_reset_both(talk, draft, hand) if earlier is None else None)
        or in_every(talk, draft, earlier or hand)
        or _in_each(talk, draft, those(talk, draft, earlier or _shod_before(talk, draft, hand)))
    )
    draft.foot_carried = True
    draft.note("foot: still in hand")


def _reset_both(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """ "… lame on the right front. Egg bars again, aluminum, reset both of them": the kind of both."""
    if draft.slot not in _KIND or hand is None or len(hand) != 1:
        return None
    sentence, behind = talk.sentence(draft.segment.sentence), talk.sentence(draft.segment.sentence + 1)
    several = any(talk.words[m.end - 1].endswith("s") for s in sentence for m in s.having("shoe_types"))
    if not several:
        return None
    next_one = behind[:1] if behind and talk.tokens.texts[behind[0].start - 1] == "," else []
    later = [s for s in sentence if s.index > draft.segment.index]
    work = next((s for s in [*later, *next_one] if s.having("work")), draft.segment)
    feet = [m.readings["feet"] for s in {*sentence, work} for m in s.having("feet")]
    ends = {"fronts": "F", "hinds": "H", "pair_in_hand": hand[0][1]}
    end = ends.get(feet[0]) if len(feet) == 1 and work.having("feet") else None
    return (f"L{end}", f"R{end}") if end else None


def _behind_a_row(talk: Talk, draft: Draft, last: Feet) -> Feet | None:
    """ "Straight bar on the left front, plain on the right front, steel, size one": what trails is of both feet."""
    if draft.slot not in _TRAILING or len(last) != 1:
        return None
    line = [s for s in talk.sentence(draft.segment.sentence) if s.index < draft.segment.index]
    told = [d for s in line for d in s.drafts if not d.dropped and d.slot not in HORSE_SLOTS]
    at = max((i for i, d in enumerate(told) if d.feet == last and not d.foot_carried), default=0)
    if not at:
        return None
    one, two, behind = told[at - 1], told[at], talk.segments[told[at].segment.index + 1]
    row = one.slot == two.slot and one.slot in _IN_A_ROW and one.segment is not two.segment
    feet = tuple(foot for foot in FEET if foot in (*(one.feet or ()), *last))
    pair = len(one.feet or ()) == 1 and feet in (FEET[:_PAIR], FEET[_PAIR:])
    own = any(d.slot == draft.slot and set(d.feet or ()) & set(feet) and len(d.feet or ()) == 1 for d in told)
    return feet if row and pair and not own and behind.joined_by(",") else None


def _shod_before(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """ "New shoes all round, borium on the hinds. Five nails each": an add-on to some does not narrow the shoeing."""
    if draft.slot not in ("nails", "nail_size") or hand is None:
        return hand
    for back in range(1, _ADDED_IN + 2):
        before = [s for s in talk.sentence(draft.segment.sentence - back) if s.horse == draft.segment.horse]
        told = [d for s in before for d in s.drafts]
        shod = [d.feet for d in told if d.slot == "work" and d.value != "trim" and d.feet]
        added = {d.slot for d in told if (d.feet == hand if back == 1 else not shod)}
        if not added <= (_ADDED if back == 1 else _ADDED | _KIND) or not (added or (shod and back > 1)):
            return hand
        if shod:
            return shod[-1] if set(hand) < set(shod[-1]) else hand
    return hand


def _in_each(talk: Talk, draft: Draft, feet: Feet | None) -> Feet | None:
    """ "Six nails in each", said with one foot in hand, is both of the pair; "a stud in each heel" is not.

    The nails are of one size on all the feet that they were counted for.
    """
    if draft.slot == "nail_size" and feet:
        nails = [d for s in talk.sentence(draft.segment.sentence) for d in s.drafts if d.slot == "nails" and d.feet]
        counted = nails[-1].feet if nails and nails[-1].end <= draft.start else None
        return counted if counted and set(feet) < set(counted) else feet  # "six in each, size fives"
    if feet is None or draft.slot not in _SHARED or not _of_each(talk, draft):
        return feet
    if draft.slot in _PUT_ON_ALL and len(feet) == _PAIR:
        return _of_both_pairs(talk, draft, feet)
    if draft.slot in _EACH_OF_TWO and set(feet) < set(told := _told_one_by_one(talk, draft, feet)):
        return told
    if len(feet) != 1 or draft.slot not in _APIECE:
        return feet
    return (f"L{feet[0][1]}", f"R{feet[0][1]}")


def _of_each(talk: Talk, draft: Draft) -> bool:
    behind = draft.end + 3 if draft.slot == "nails" else draft.segment.end
    if _OF_EACH.isdisjoint(talk.words[draft.segment.start : behind + 1]):
        return False
    said = range(draft.segment.start, min(behind, len(talk.words)))
    wraps = draft.value in ("bandage", "poultice")  # one foot
    shared = draft.slot in _PUT_ON_ALL or (draft.slot == "treatment" and not wraps)
    if shared and any(talk.words[i] == "lot" and i not in draft.evidence for i in said):
        return True  # not of "let the lot out"
    words = ("each", "every", "apiece") if draft.slot in _PUT_ON_ALL else ("each", "apiece")  # not "soak it every day"
    return any(
        (talk.words[i] in words or talk.words[i : i + 2] in _A_FOOT) and talk.words[i + 1 : i + 2] not in _OF_ONE_FOOT
        for i in range(draft.start, min(behind, len(talk.words)))
    )


def _of_both_pairs(talk: Talk, draft: Draft, feet: Feet) -> Feet:
    """ "New in front, size two. Reset behind, size one. Six nails each.": all four, where none were counted yet.

    Behind a comma it is so where the sentence told of both pairs, else it is only the last that are counted.
    """
    line = [s for s in talk.sentence(draft.segment.sentence) if s.index <= draft.segment.index]
    if any(s.having("feet") for s in line[:-1]):  # its own "in each foot" names none
        before = line if named_feet_of(line) == set(FEET) else []
    else:
        only = all(d.slot in _PUT_ON_ALL or d.slot == "nail_size" for s in line for d in s.drafts)
        before = line_before(talk, draft.segment) if only else []
        named = [feet_told for s in before if (feet_told := named_feet(s))]
        before = before if named and named[-1] >= set(feet) else []
    told = [d for s in before for d in s.drafts if d is not draft and d.feet and not d.dropped]
    shod = {foot for d in told if d.slot in _OF_A_SHOE and d.value not in _BARED for foot in d.feet or ()}
    counted = {foot for d in told if d.slot == draft.slot for foot in d.feet or ()}
    return FEET if shod == set(FEET) and not counted else feet


def _told_one_by_one(talk: Talk, draft: Draft, hand: Feet) -> Feet:
    """ "Thrush in the near fore, a corn in the off hind. Iodine in each": the feet that were told of one by one.

    The one in hand among them, if nothing else was told of it: "… and near hind too. Iodine in the lot".
    """
    own = [s for s in talk.segments if s.horse == draft.segment.horse]
    near = [d for s in own if 0 <= draft.segment.sentence - s.sentence <= _ADDED_IN for d in s.drafts]
    found = [d for d in near if d.slot == "finding" and d.start < draft.start and not d.segment.having("denials")]
    told = {foot for d in found for foot in d.feet or ()}
    told |= set(hand) if told and all(d.feet != hand for d in near) else set()
    return tuple(foot for foot in FEET if foot in told)


def feet_gone_over(talk: Talk, draft: Draft, hand: Feet | None) -> Feet | None:
    """The feet on which the same kind of thing was told last, where the plan names none and they are not in hand."""
    if draft.slot not in _WORN:
        return None
    segment = draft.segment
    ahead = talk.words[max(segment.start, draft.start - _REACH) : draft.start]
    led = _leads_over(ahead)
    pointed = _IT & set(talk.words[draft.end : segment.end])
    if not led or pointed:
        return None
    if not any(s.having("plans") for s in talk.sentence(segment.sentence)):
        return None
    earlier = [s for s in talk.segments[: segment.index] if s.horse == segment.horse and s.sentence < segment.sentence]
    told = [d.feet for s in earlier for d in s.drafts if d.slot == draft.slot and d.feet and not d.dropped]
    return told[-1] if told and not set(told[-1]) & set(hand or told[-1]) else None


def _leads_over(ahead: list[str]) -> bool:
    """ "Go to", "go up to", "step him down to"."""
    for at in [i for i, word in enumerate(ahead) if word in _OVER]:
        beyond = at + 1
        while beyond < len(ahead) and ahead[beyond] in _UP:
            beyond += 1
        if ahead[beyond : beyond + 1] and ahead[beyond] in _TO:
            return True
    return False
