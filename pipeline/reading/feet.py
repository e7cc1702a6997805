"""Which foot a fact belongs to: the foot named beside it, the foot still in hand, or the list it stands in."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from pipeline.reading.both_after_all import widen_behind
from pipeline.reading.excepted import except_feet
from pipeline.reading.foot_alone import (
    NAMED_NEXT,
    catching,
    foot_of_another_time,
    headed_before,
    in_apposition,
    is_another,
    it_is_there,
    named_after_all,
    only_where,
    same_statement,
    told_of_itself,
)
from pipeline.reading.foot_groups import (
    SETUP_SLOTS,
    FootGroup,
    Groups,
    contrasted,
    groups_of,
    held_over,
    in_one_breath,
    left_alone,
    listed_alike,
    number_taken_back,
    of_itself,
    passed_over,
    setup_only,
    united,
)
from pipeline.reading.foot_in_hand import done_to_it, done_to_them, from_hand, left_in_hand, of_today, told_in_passing
from pipeline.reading.number_context import ANGLES, LENGTHS, PUT_RIGHT
from pipeline.reading.or_was_it import foot_in_the_end
from pipeline.reading.put_where import feet_of_the_verb, foot_told_behind
from pipeline.reading.second_list import (
    LISTED_BY,
    feet_of_the_rest,
    foot_of_denied_list,
    foot_of_second_list,
    with_the_rest,
)
from pipeline.reading.talk import Draft, Feet, Segment, Talk
from pipeline.reading.told_apart import of_the_others, told_apart
from pipeline.reading.whole_horse import of_the_horse
from pipeline.reading.worn_numbers import wears
from pipeline.record import EITHER_SLOTS, FEET, HORSE_SLOTS

_HEADING_WORDS = frozenset({"then", "now", "so", "next", "and", "the"})
_AT = frozenset({"in", "at", "on", "of", "his", "her"})
_WORDED = frozenset({"work", "shoe_type", "shoe_material"})
_LYING = ("finding", "shoe_state")  # what "it" is, of "it's the right hind"
_STOPPED = 3  # sentences that a foot said behind stops still belongs to
_OPENER = 3  # words: "right then lads, …"
_BEHIND_ASIDE = 2
_NOT_ITS_FOOT = frozenset({"none", "nothing", "no", "not", "n't"})
_SAYING = frozenset({"agree", "says", "said", "reckons", "reckon", "thinks", "think", "suppose", "guess", "called"})
_OF_THE_RIGHT = 6  # tokens from an answer to the narrower foot behind it
_HORSE_GAITS = frozenset({"forge", "overreach", "interfere", "short_stride"})


def attach_feet(talk: Talk) -> Groups:
    """Give every draft its feet, horse by horse; returns the foot groups of each segment by index."""
    groups: Groups = {}
    hand: Feet | None = None
    horse, aside, left = -1, None, (-1, hand, 0)
    several = len({segment.horse for segment in talk.segments}) > 1
    for sentence in talk.sentences():
        before, named, footed = hand, False, False
        for segment in sentence:
            if segment.horse != horse:
                left, hand, aside = (horse, hand, segment.index), left_in_hand(talk, left, segment, groups), None
                before, horse, talk.across, talk.single_out = hand, segment.horse, None, None
            found, hand = groups_of(talk, segment, hand, named)
            groups[segment.index] = of_the_others(talk, segment, groups, found)
            named, footed = named or bool(found), footed or bool(groups[segment.index])
        if aside is not None and of_today(talk, sentence, groups, aside):
            hand, before, aside = aside.before, aside.before, None
        alone = not several or len({s.horse for s in sentence}) == 1
        for position, segment in enumerate(sentence):
            if not segment.drafts:
                continue
            same_horse = sentence if alone else [s for s in sentence if s.horse == segment.horse]
            _attach_segment(
                talk,
                same_horse,
                position if alone else same_horse.index(segment),
                groups,
                before if sentence[0].horse == segment.horse or position else None,
            )
        if footed:
            for told in (_where_it_was_put, widen_behind, foot_told_behind) if len(sentence) > 1 else ():
                told(talk, sentence, groups)
            _foot_behind_sentence(talk, sentence, groups)
            except_feet(sentence, groups)
        foot_in_the_end(talk, sentence, groups)
        aside = told_in_passing(talk, sentence, groups, before, aside)
        if footed:
            hand = contrasted(sentence, groups, before) or passed_over(talk, sentence, groups, before) or hand
            talk.across = told_apart(talk, sentence, groups) or talk.across
    _feet_of_before(talk)
    return groups


def _where_it_was_put(talk: Talk, sentence: list[Segment], groups: Groups) -> None:
    """ "A pair of rims, both new, was nailed on in front": what is listed before the verb is where the verb says."""
    told = feet_of_the_verb(talk, sentence, groups)
    for segment in [s for s in sentence if s.index in told]:
        for draft in [d for d in segment.drafts if d.slot in SETUP_SLOTS]:
            draft.feet, draft.foot_carried = told[segment.index].feet, False
            draft.note("foot: named with the verb")
        groups[segment.index] = []


def _feet_of_before(talk: Talk) -> None:
    """Back to a horse, "her pads aren't leather, they're full pads": on the feet where the pads were said to be."""
    for segment in talk.segments:
        for draft in segment.drafts:
            if draft.feet is None and draft.slot in SETUP_SLOTS - {"work"}:
                same = [d for s in talk.segments[: segment.index] for d in s.drafts if s.horse == segment.horse]
                near = [d for s in talk.segments if 0 <= segment.sentence - s.sentence <= 1 for d in s.drafts]
                shod = [d.feet for d in near if d.slot == "work" and d.value in ("new_shoe", "reset") and d.feet]
                feet = [d.feet for d in same if d.slot == draft.slot and d.feet] or shod
                if feet:
                    draft.feet, draft.foot_carried = feet[-1], True
                    draft.note("foot: where it was said to be before")


def _foot_behind_sentence(talk: Talk, sentence: list[Segment], groups: Groups) -> None:
    """ "Hondo lost one. Left front.": a foot alone in its sentence belongs to a statement that still lacks one."""
    foot_of_another_time(talk, sentence, groups)
    if not groups[sentence[0].index] or not sentence[0].sentence:
        return
    there = it_is_there(talk, sentence[0], groups[sentence[0].index])
    if not there and any(s.drafts for s in sentence):
        return
    opening = sentence[0]
    if opening.having("plans", "day") or not _NOT_ITS_FOOT.isdisjoint(talk.words[opening.start : opening.end]):
        return
    number = sentence[0].sentence
    before = [s for s in talk.segments if number - _STOPPED <= s.sentence < number and s.horse == sentence[0].horse]
    last = max((s.sentence for s in before if s.drafts), default=number - 1)
    bare = [s for s in before if s.sentence == last or all(d.slot == "finding" and not d.feet for d in s.drafts)]
    placed = any(m.is_any(("zones", "severities")) for s in sentence for m in s.mentions)
    for draft in [d for s in bare for d in s.drafts if not there or (d.slot in _LYING and not d.feet)]:
        told_ahead = placed and draft.foot_carried and alone_said(talk, draft)  # "Thrush. Both hinds, in the sulcus."
        if draft.feet is None or told_ahead or (not draft.feet and draft.slot == "finding"):
            draft.feet = groups[sentence[0].index][0].feet
            draft.note(NAMED_NEXT)


def alone_said(talk: Talk, draft: Draft) -> bool:
    """Whether a finding, with its place, is all that its sentence says: "Thrush then.", "Thrush in the frog."."""
    segment = draft.segment
    held = {*range(draft.start, draft.end), *(i for m in segment.having("zones") for i in m.literal)}
    words = _HEADING_WORDS | _AT if draft.zone else _HEADING_WORDS
    return draft.slot == "finding" and segment.joined_by("start") and talk.words_beside(segment, held) <= words


def _attach_segment(talk: Talk, sentence: list[Segment], position: int, groups: Groups, hand: Feet | None) -> None:
    segment, own = sentence[position], groups[sentence[position].index]
    for draft in segment.drafts:
        if draft.slot in HORSE_SLOTS:
            draft.feet = ()
        if draft.feet is not None:
            continue  # told with its foot: "toe angles 53 and 51, left and right front"
        narrower = in_apposition(talk, sentence, position, groups)
        if narrower is not None:
            wider = _nearest(draft, segment, own).feet if own else _told_or_hand(sentence, position, groups, hand)
            if set(narrower) < set(wider) or not wider:
                draft.feet = narrower
                draft.note("foot: named more exactly behind")
                continue
        if own:
            ahead = _as_well_as(talk, own) or with_the_rest(talk, sentence, position, groups, draft)
            draft.feet = ahead or _nearest(draft, segment, own).feet
            draft.note("foot: named beside it")
            continue
        apart = _told_apart(talk, sentence, position, draft, hand)
        listed = None if apart else _from_list(talk, sentence, position, groups, hand, draft)
        if listed is not None:
            draft.feet = listed
            draft.note("foot: named at the end of the list")
            continue
        earlier = _earlier_group(sentence, position, groups, draft)
        if draft.slot == "lameness" and ("elliptic" in draft.rules or _same_lameness(talk, sentence, draft)):
            draft.feet = earlier.feet if earlier and PUT_RIGHT in draft.rules else _last_feet(talk, draft)
            continue
        if _statement_only(draft):
            follows = earlier is not None and same_statement(talk, sentence, position, groups)
            goes = follows and earlier and _goes_on_a_foot(sentence, position, draft)
            draft.feet = earlier.feet if goes and earlier else (headed_before(talk, draft, groups) or ())
            continue
        if earlier is None and of_the_horse(talk, draft, hand):
            draft.note("foot: done to the whole horse")
            continue
        from_hand(talk, draft, earlier.feet if earlier else None, hand)


def _told_or_hand(sentence: list[Segment], position: int, groups: Groups, hand: Feet | None) -> Feet:
    """The feet that "one of them" is one of: those named before in the sentence, else those in hand."""
    earlier = _earlier_group(sentence, position, groups)
    return earlier.feet if earlier else hand or ()


def _as_well_as(talk: Talk, own: list[FootGroup]) -> Feet | None:
    """ "The near fore reset as well as the off": both."""
    for first, second in pairwise(own):
        if talk.words[second.start - 3 : second.start][:3] in (["well", "as", "the"],) or talk.words[
            second.start - 2 : second.start
        ] == ["well", "as"]:
            return tuple(foot for foot in FEET if foot in first.feet or foot in second.feet)
    return None


def _clause_follows(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """Whether a clause follows, unless it only says who thinks so: "founder, the vet says, in both fronts"."""
    if position + 1 >= len(sentence) or not sentence[position + 1].own_clause:
        return False
    aside, last = sentence[position + 1], sentence[position + _BEHIND_ASIDE : position + _BEHIND_ASIDE + 1]
    agreed = not aside.drafts and bool(_SAYING & set(talk.words[aside.start : aside.end]))
    placed = bool(last) and last[0].joined_by(",") and not last[0].drafts and bool(last[0].having("feet"))
    return not (agreed and placed and talk.words[last[0].start] in ("in", "on"))


def _same_lameness(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "It's the near fore she's lame on, and I'm calling it two out of five"."""
    told = [d for s in sentence for d in s.drafts if d.feet and d.start < draft.start]
    bare = draft.segment.having("times") and not talk.plays("subject", draft.segment.start, draft.segment.end)
    return any(d.value == "lame" or (bare and d.slot == "lameness") for d in told)  # "…, one out of five today"


def _last_feet(talk: Talk, draft: Draft) -> Feet:
    """ "One out of five on it, and back in December it was a three": the foot of the grade before."""
    earlier = [d for s in talk.segments[: draft.segment.index] if s.horse == draft.segment.horse for d in s.drafts]
    earlier += [d for d in draft.segment.drafts if d.start < draft.start]
    graded = [d for d in earlier if (d.slot == draft.slot or d.value == "lame") and d.feet]
    return graded[-1].feet or () if graded else ()


def _statement_only(draft: Draft) -> bool:
    """Gait, lameness and laminitis take a foot only from their own statement."""
    return draft.slot in EITHER_SLOTS and (draft.slot != "finding" or draft.value == "laminitis")


def _goes_on_a_foot(sentence: list[Segment], position: int, draft: Draft) -> bool:
    """ "Off fore, he's short": behind a foot alone; else this gait is the horse's, whatever foot was told of."""
    headed = draft.value == "short_stride" and position == 1 and not sentence[0].drafts
    return headed or draft.value not in _HORSE_GAITS


def _nearest(draft: Draft, segment: Segment, own: list[FootGroup]) -> FootGroup:
    """With several feet in one segment: the one before in a foot-first row, else the one that follows."""
    if len(own) == 1:
        return own[0]
    real = _each_side(draft, segment, [g for g in own if not g.anaphor] or own)
    first_fact = min(d.start for d in segment.drafts)
    if real[0].start < first_fact:
        before = [g for g in real if g.start < draft.start]
        touching = [g for g in real if 0 <= g.start - draft.end <= 1]
        led = any(before and before[-1].end <= m.start < draft.start for m in segment.having("plans"))
        far = bool(before) and draft.start - before[-1].end > _OF_THE_RIGHT
        if draft.slot in SETUP_SLOTS and touching and (far or led):
            return touching[0]  # "if that near fore won't take it she'll go into boots in front"
        behind = [g for g in real if g.start >= draft.end and before and set(g.feet) < set(before[-1].feet)]
        if (
            draft.slot in ("tester", "finding", *ANGLES, *LENGTHS)
            and behind
            and behind[0].start - draft.end <= _OF_THE_RIGHT
        ):
            return behind[0]  # "on the fronts I got a moderate at the toe of the right"
        return before[-1] if before else real[0]
    after = [g for g in real if g.start >= draft.start]
    return after[0] if after else real[-1]


def _each_side(draft: Draft, segment: Segment, real: list[FootGroup]) -> list[FootGroup]:
    """ "Front toe angles 50 left 51 right": with a number for each side, the pair is only their heading."""
    told = [d for d in segment.drafts if d.slot == draft.slot and isinstance(d.value, Fraction)]
    if len(told) <= 1 or draft not in told:
        return real
    sides = [g for g in real if any(set(g.feet) < set(o.feet) and o.start < g.start for o in real)]
    return sides if len(told) == len(sides) else real


def _earlier_group(
    sentence: list[Segment], position: int, groups: Groups, draft: Draft | None = None
) -> FootGroup | None:
    named = [s for s in sentence[:position] if groups[s.index]] if position else []
    if not named:
        return None
    both = contrasted(named, groups)
    if draft is not None and any(d.slot == draft.slot for s in sentence[:position] for d in s.drafts):
        both = None  # "wide webs in front, size five, and plain ones behind, size four"
    if both is not None and len(both) < len(FEET) and (draft is None or draft.slot not in SETUP_SLOTS):
        both = None  # "seven nails in the near fore and six in the off fore, where there's a crack"
    last = groups[named[-1].index][-1]
    return FootGroup(last.start, last.end, both) if both else last


def _told_apart(talk: Talk, sentence: list[Segment], position: int, draft: Draft, hand: Feet | None) -> bool:
    """Whether a draft leads no list: a statement of its own, or what is done to the feet in hand."""
    if hand and (done_to_them(talk, draft) or done_to_it(talk, draft, hand)):
        return True
    return _statement_only(draft) and (_clause_follows(talk, sentence, position) or catching(talk, draft))


def _from_list(
    talk: Talk,
    sentence: list[Segment],
    position: int,
    groups: Groups,
    hand: Feet | None,
    draft: Draft,
) -> Feet | None:
    """Feet named after a list that this draft leads: "corn, bruise and flare on the left front"."""
    denied = None if _statement_only(draft) else foot_of_denied_list(talk, sentence, position, groups)
    if denied is not None:
        return denied
    if (before := _earlier_group(sentence, position, groups)) is not None:
        behind = _foot_behind(talk, sentence, position, groups)
        return behind or foot_of_second_list(sentence, position, groups, before, draft)
    for later in sentence[position + 1 :]:
        if groups[later.index] and only_where(talk, later, groups[later.index]):
            return groups[later.index][0].feet
        if later.delimiter not in LISTED_BY or left_alone(talk, later) or (hand and talk.words[later.start] == "nor"):
            return None  # "testers make no odds to him there, nor on the near fore": on both
        found = groups[later.index]
        if not found:
            if later.own_clause and later.drafts and not setup_only(later):
                return None
            continue
        if draft.slot == "finding" and later.joined_by("and", ", and") and is_another(talk, later, found[0]):
            return None
        if held := held_over(sentence, later, draft):
            return united(sentence, later, groups, draft, {d.slot for d in held})
        if draft.slot in _WORDED and number_taken_back(talk, later):
            continue  # "steel, size seven in front, no, size eight in front, seven behind"
        foot_only = not [d for d in later.drafts if d.slot not in HORSE_SLOTS]
        if foot_only and named_after_all(talk, later, found[0]):
            return found[0].feet
        if foot_only and told_of_itself(talk, later, found[0]):
            return None
        if foot_only:
            return None if later.past or (later.own_clause and later.joined_by("and", ", and")) else found[0].feet
        if talk.words[draft.start].endswith("ed") and sentence[position].having("times", "history"):
            return None  # "she foundered in the fall, and growth rings on all four"
        alike = hand is not None and listed_alike(talk, sentence[position], later, found[0], draft)
        leads = all(s.end - s.start <= _OPENER and not s.drafts for s in sentence[:position])
        if not (alike or wears(talk, draft) or _may_distribute(sentence[position], later, found, hand, draft, leads)):
            return None
        rest = feet_of_the_rest(sentence, later, found[0], hand, draft)
        return united(sentence, later, groups, draft) if rest is None else rest or None
    return None


def _foot_behind(talk: Talk, sentence: list[Segment], position: int, groups: Groups) -> Feet | None:
    """ "Strong at the toe, left front, moderate at the toe, right front": each answer has its foot behind it."""
    following = sentence[position + 1] if position + 1 < len(sentence) else None
    if following is None or following.delimiter != "," or following.drafts or not groups[following.index]:
        return None
    again = sentence[position].drafts[0].slot in _WORDED and number_taken_back(talk, following)
    none = {"none", "nothing", "not", "n't", "no", "neither", "clean", "clear"}
    if none & set(talk.words[following.start : following.end]):
        return None
    if again or left_alone(talk, following) or told_of_itself(talk, following, groups[following.index][0]):
        return None
    first_draft = next((s.drafts[0].start for s in sentence if s.drafts), -1)
    first_foot = next(groups[s.index][0].start for s in sentence if groups[s.index])
    return groups[following.index][0].feet if first_draft < first_foot else None


def _may_distribute(
    first: Segment, later: Segment, found: list[FootGroup], hand: Feet | None, draft: Draft, leads: bool
) -> bool:
    trailing = min(d.start for d in later.drafts) < found[0].start
    set_up = draft.slot in SETUP_SLOTS and later.joined_by("and") and len(found[0].feet) > 1
    if not trailing or of_itself(draft, later) or (found[0].anaphor and not set_up):
        return False  # "wide webs and leather pads on the pair of them"
    if draft.slot in SETUP_SLOTS and all(d.slot in SETUP_SLOTS for d in later.drafts):
        if leads and first.end - first.start == draft.end - draft.start and draft.slot != "work":
            return True  # "steel, new ones all four feet", "right so, rims, new both fores": a bare word that leads
        return not any(d.slot == "work" for d in later.drafts)
    if later.own_clause or ((first.past or first.present) and not in_one_breath(first, later, draft)):
        return False
    zoned = bool(first.having("zones"))
    if hand is not None:
        return later.joined_by("and") and not zoned and draft.slot == "finding"
    return not zoned or later.joined_by("and")
