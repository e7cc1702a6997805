"""Where on the foot, and how bad: zone and severity words go to the finding or tester response that they stand with."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from pipeline.reading.degrees_then import bare_degree, how_bad_it_is
from pipeline.reading.foot_alone import headed_anew
from pipeline.reading.foot_groups import FootGroup, Groups, one_of_several
from pipeline.reading.graded_again import of_both
from pipeline.reading.mentions import Mention
from pipeline.reading.places import goes_round_it
from pipeline.reading.some_of_it import SOME, how_far, less_so, of_another_thing
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.there_too import so_has
from pipeline.record import Severity, Status

_LEADING_IN = frozenset({"in", "at", "on", "along", "over", "across", "round", "around"})
_ZONED = frozenset({"finding", "tester"})
_OF_THE_SHOE = frozenset({"worn", "sprung", "loose"})
_HIGH_ON = {"inside": "medial", "medial": "medial", "outside": "lateral", "lateral": "lateral"}
_AT_THE = _LEADING_IN | {"the", "his", "her", "thin", "right", "down", "away", "off", "through", "out", "badly"}
_GRADED = frozenset({"finding", "gait"})
_SIDED = ("heel", "quarter")
_NEXT = 2
_REACHING = frozenset({"high", "higher", "long", "longer", "low", "lower", "up", "down", "taller", "deeper"})
_LOOKED = frozenset({"checked", "looked", "searched", "dug", "pared", "cleaned", "opened"})
_THERE = _LOOKED | {"there", "so"}
_SO, _MORE = frozenset({"so"}), frozenset({"more", "further", "farther", "deeper"})
_PARED = frozenset({"pared", "trimmed", "dug", "went", "cut", "took"})
_SUMMED = (["that", "'s"], ["it", "'s"], ["that", "is"], ["it", "is"])
_THAT_IS = (["that", "is"], ["that", "was"], ["it", "is"], ["it", "was"], ["i", "mean"])
_NEAR, _BACK = 2, 3  # sentences back; segments to the foot of "that's the bad one"
_OWN_PLACE = {  # a finding whose name is its place takes that place for no zone
    "underrun_heels": "heel", "contracted_heels": "heel", "sheared_heels": "heel", "long_toe": "toe",
    "thin_sole": "sole", "flat_sole": "sole", "dropped_sole": "sole", "weak_wall": "wall",
    "white_line_disease": "white_line", "white_line_separation": "white_line",
}  # fmt: skip


def attach_zones(talk: Talk, groups: Groups) -> None:
    """Give each zone word to a draft; a second zone joined by "and" makes the same finding there too."""
    _place_high_sides(talk)
    for sentence in talk.sentences():
        if "zones" not in sentence.classes:
            continue
        for segment in sentence:
            _place_shoe_states(talk, segment)
        for position, segment in enumerate(sentence):
            for mention in _zone_words(segment):
                if not goes_round_it(talk, mention) and not _share_with_answers(sentence, segment, mention):
                    _attach_zone(talk, sentence, position, mention, groups)
    place_behind(talk)


def _place_high_sides(talk: Talk) -> None:
    """ "Right hind is high on the inside": the side is a part of the phrase itself."""
    for draft in [d for d in talk.drafts if d.slot == "finding" and d.value == "imbalance" and d.zone is None]:
        sides = [_HIGH_ON[w] for w in talk.words[draft.start : draft.end] if w in _HIGH_ON]
        draft.zone = sides[0] if len(set(sides)) == 1 else None


def _place_shoe_states(talk: Talk, segment: Segment) -> None:
    """ "Worn thin at the toe", "sprung at the heel": where the shoe was found so, when nothing else stands there."""
    for draft in [d for d in segment.drafts if d.slot == "shoe_state" and d.value in _OF_THE_SHOE]:
        for mention in _zone_words(segment):
            led = talk.words[draft.end : mention.start]
            if mention.start >= draft.end and led and set(led) <= _AT_THE and _LEADING_IN & set(led):
                draft.zone = draft.zone or mention.readings["zones"]
                draft.evidence.update(mention.literal)


def place_behind(talk: Talk) -> None:
    """ "Took the outside quarter, so wall loss there", "so it's a crack", "checked the frog. No thrush in it"."""
    _high_so_unbalanced(talk)
    for before, segment in pairwise(talk.segments) if talk.says(_THERE) else ():
        apart = segment.sentence - before.sentence
        if not segment.drafts or apart > 1 or before.horse != segment.horse:
            continue
        told, words = [d for d in before.drafts if d.slot in _ZONED], _zone_words(before)
        elsewhere = bool(apart and segment.having("feet"))
        looked = not _LOOKED.isdisjoint(talk.words[before.start : before.end])
        for draft in [d for d in segment.drafts if d.slot == "finding" and d.zone is None and not d.dropped]:
            behind = talk.words[draft.end : draft.end + 2]
            there = looked if behind == ["in", "it"] else behind[:1] == ["there"] and not elsewhere
            summed = talk.words[segment.start : segment.start + 2] in _SUMMED and segment.joined_by("so", ", so")
            if told and there and all((d.value, d.feet) == (draft.value, draft.feet) for d in told):
                draft.zone = told[-1].zone  # "thought I'd a crack at the toe. There's no crack there"
            elif words and not told and (there or summed):
                _give(draft, words[-1].readings["zones"], words[-1], joined=False)


def _high_so_unbalanced(talk: Talk) -> None:
    """ "High on the inside, off fore, so out of balance": the place that the conclusion is drawn from."""
    for segment in [s for s in talk.segments if s.joined_by("so", ", so")] if talk.says(_SO) else ():
        before = [s for s in talk.sentence(segment.sentence) if s.index < segment.index]
        if any(d.slot in _ZONED for s in before for d in s.drafts):
            continue
        words = [m for s in before for m in _zone_words(s) if _REACHING & set(talk.words[s.start : m.start + 1])]
        for draft in [d for d in segment.drafts if d.value == "imbalance" and d.zone is None and not d.dropped]:
            for mention in words[-1:]:
                _give(draft, mention.readings["zones"], mention, joined=False)


def _narrow(draft: Draft, sentence: list[Segment], position: int, groups: Groups) -> Draft:
    """Of a finding on several feet, the part on the foot spoken of now: "near hind's the worse, that one's severe"."""
    named = [
        g for s in sentence[draft.segment.index - sentence[0].index + 1 : position + 1] for g in groups.get(s.index, [])
    ]
    return one_of_several(draft, named[-1].feet) if named else draft


def _share_with_answers(sentence: list[Segment], segment: Segment, mention: Mention) -> bool:
    """ "Testers at the toe, strong on the right, mild on the left": a place said with the head is everyone's."""
    positive = [d for d in segment.drafts if (d.slot, d.value) == ("tester", "positive")]
    others = [d for s in sentence for d in s.drafts if d.slot == "tester" and d.segment is not segment]
    graded = {foot for d in others for foot in d.feet or ()}
    told_only = [d for d in positive if not d.feet or (d.foot_carried and set(d.feet) <= graded)]
    if not segment.having("tester_heads") or len(told_only) < len(segment.drafts):
        return False
    zone = mention.readings["zones"]
    behind = [s for s in sentence if s.index > segment.index]
    behind = [s for s in behind if all(_combine(zone, m.readings["zones"]) for m in _zone_words(s))]  # not "the heel"
    answers = [d for s in behind for d in s.drafts if d.slot == "tester" and d.zone is None]
    for draft in answers:
        _give(draft, zone, mention, joined=False)
    for draft in told_only if answers else ():
        draft.drop("its answers stand behind")
    return bool(answers)


def _zone_words(segment: Segment) -> list[Mention]:
    zones = segment.having("zones") if "zones" in segment.named else []
    claimed = {i for d in segment.drafts for i in d.evidence} if zones else set()
    return [m for m in zones if m.get("not_facts") is None and claimed.isdisjoint(m.literal)]


def _attach_zone(talk: Talk, sentence: list[Segment], position: int, mention: Mention, groups: Groups) -> None:
    segment = sentence[position]
    zone = mention.readings["zones"]
    own = [d for d in segment.drafts if d.slot in _ZONED and not d.dropped]
    if own:
        draft = _nearest(own, mention)
        _give(draft, zone, mention, joined=False)
        _share_with_list(sentence, position, draft, mention)
        return
    if any(d.slot not in _ZONED for d in segment.drafts):
        return
    if segment.own_clause and not _placed(talk, segment, mention) and not _heading(talk, segment):
        return
    earlier = [d for s in sentence[:position] for d in s.drafts if d.slot in _ZONED]
    if not earlier and not any(s.drafts for s in sentence) and segment.sentence:
        ahead = _told_ahead(talk, segment)
        earlier = [d for s in ahead for d in s.drafts if d.slot in _ZONED and s.horse == segment.horse]
        sentence, position = [*ahead, *sentence], position + len(ahead)
    if earlier and headed_anew(earlier[-1], sentence, position, groups):
        earlier = []
    last = _its_other_part(earlier[-1], earlier, groups.get(segment.index, [])) if earlier else None
    if last is not None and (
        _another_foot(last, groups.get(segment.index, [])) or _turned(talk, last, sentence, position, groups)
    ):
        return
    if last is not None and not _other_work_between(sentence[:position], last):
        draft = _narrow(last, sentence, position, groups)
        _give(draft, zone, mention, joined=segment.joined_by("and", ", and"))
        return
    later = sentence[position + 1] if position + 1 < len(sentence) else None
    following = [d for d in later.drafts if d.slot in _ZONED] if later is not None else []
    if following and not _zone_words(sentence[position + 1]):
        _give(following[0], zone, mention, joined=False)


def _told_ahead(talk: Talk, segment: Segment) -> list[Segment]:
    """The sentence before; or that before it, when nothing but a word is between: "Thrush. Lord. Both hinds, …"."""
    before = talk.sentence(segment.sentence - 1)
    word = len(before) <= 1 and all(not s.drafts and s.end - s.start == 1 for s in before)
    return [*talk.sentence(segment.sentence - 2), *before] if word else before


def _heading(talk: Talk, segment: Segment) -> bool:
    """ "Left hind frog, thrush": a foot and a place, and what is there behind the comma."""
    told = {i for m in segment.mentions if m.is_any(("feet", "zones")) for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, told)
    return bool(segment.having("feet")) and rest <= {"the", "on", "in", "at", "so", "that", "this", "his", "her", "now"}


def _placed(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """A zone in its own clause belongs to the finding before in "it's at the toe", not in "the wall looks queer".

    "Into the quarter, outside quarter that is": the place said more exactly.
    """
    if mention.start == segment.start and talk.words[mention.end : segment.end] in _THAT_IS:
        return True
    if talk.words[segment.start] in ("i", "we", "there"):
        return False
    before = set(talk.words[max(segment.start, mention.start - 3) : mention.start])
    return bool(before & {"in", "at", "on", "over", "along", "across", "under", "near", "'s", "is"})


def _other_work_between(segments: list[Segment], draft: Draft) -> bool:
    after = segments[segments.index(draft.segment) + 1 :]
    return any(d.slot not in _ZONED for s in after for d in s.drafts)


def _nearest(own: list[Draft], mention: Mention) -> Draft:
    """The finding right behind the zone ("sole bruise"), else the one before it, else the first one after."""
    behind = [d for d in own if 0 <= d.start - mention.end < _NEXT]
    closed = [d for d in own if d.end <= mention.start]
    if behind and not (closed and mention.start - closed[-1].end <= 1):
        return behind[0]
    return closed[-1] if closed else own[0]


def _share_with_list(sentence: list[Segment], position: int, draft: Draft, mention: Mention) -> None:
    """ "Bruise and corn at the inside heel": a bare finding joined just before takes the zone too."""
    if position == 0 or draft.slot != "finding" or mention.start < draft.end or not sentence[position].joined_by("and"):
        return
    before = sentence[position - 1]
    bare = len(before.drafts) == 1 and before.end - before.start <= 2 and before.drafts[0].slot == "finding"
    if bare and before.drafts[0].zone is None and sentence[position].drafts[0] is draft:
        _give(before.drafts[0], mention.readings["zones"], mention, joined=False)


def _give(draft: Draft, zone: str, mention: Mention, joined: bool) -> None:
    draft.evidence.update(mention.literal)
    if draft.slot == "finding" and _OWN_PLACE.get(str(draft.value)) == zone:
        return
    combined = _combine(draft.zone, zone)
    if combined is not None:
        draft.zone = combined
        draft.note(f"zone: {combined}")
        return
    if joined or mention.start - draft.end > 0:
        twin = replace(draft, zone=zone, rules=[*draft.rules, "zone: a second one"], evidence=set(draft.evidence))
        if not any(d.zone == zone and d.slot == draft.slot and d.value == draft.value for d in draft.segment.drafts):
            draft.segment.drafts.append(twin)


def _combine(old: str | None, new: str) -> str | None:
    """One zone out of two words for it, or None when they are two places."""
    if old is None or old == new:
        return new
    if old in ("medial", "lateral") and new in _SIDED:
        return f"{old}_{new}"
    if new in ("medial", "lateral"):
        if old in _SIDED:
            return f"{new}_{old}"
        return old
    if new.endswith(f"_{old}"):
        return new
    if old.endswith(f"_{new}") or old in ("medial", "lateral"):
        return old if old.endswith(f"_{new}") else new
    return None


def _another_foot(draft: Draft, found: list[FootGroup]) -> bool:
    """Whether the segment names a foot that the draft is not on: its degree is not the draft's."""
    return bool(found) and draft.feet is not None and not set(found[0].feet) & set(draft.feet)


def _turned(talk: Talk, draft: Draft, sentence: list[Segment], position: int, groups: Groups) -> bool:
    """ "No thrush in the hinds but there's some in the near fore, in the frog": the place is the other foot's.

    So is it in "thrush in the off hind, and a mild one in the near hind, in the frog", which is copied with its degree,
    and in "thrush in the off hind, in the sulcus, near hind too, in the frog".
    """
    back = _BACK if "one" in talk.words[sentence[position].start : sentence[position].end] else 1
    for near in sentence[max(0, position - back) : position]:  # "… and so has the near hind, and that's the bad one"
        if so_has(talk, near) and _another_foot(draft, groups.get(near.index, [])):
            return True
        graded = bool(near.having("severities")) and near.joined_by("and", ", and") and not near.drafts
        too = bool(near.having("same", "too")) and not near.drafts and sentence[position].joined_by(",")
        if (graded or too) and near is not draft.segment and _another_foot(draft, groups.get(near.index, [])):
            return True
    if all(m.readings["denials"] == "pseudo" for m in draft.segment.having("denials")):
        return False  # "thrush is no better, moderate, but the off hind has dried up"
    behind = [s for s in sentence if s.index > draft.segment.index and s.joined_by("but", ", but")]
    return any(_another_foot(draft, groups.get(s.index, [])) and not s.drafts for s in behind)


def attach_severity(talk: Talk, groups: Groups) -> None:
    """Give each severity word its finding or gait."""
    for sentence in talk.sentences():
        for position, segment in enumerate(sentence if "severities" in sentence.classes else ()):
            for mention in [m for m in segment.having("severities") if not _no_degree(talk, m)]:
                _attach_severity(talk, sentence, position, mention, groups)


def _no_degree(talk: Talk, mention: Mention) -> bool:
    """ "Marked him down as a three" (the verb), "stopped for a bit" (how long), "as bad as Buck's": no degrees."""
    behind = talk.words[mention.end : mention.end + 1]
    at = next((i for i in range(mention.end, mention.end + 3) if talk.words[i : i + 1] in (["as"], ["than"])), 0) + 1
    named = talk.mention_starting(at + (talk.words[at : at + 1] == ["what"])) if at > 1 else None
    if how_far(talk, mention) or less_so(talk, mention.start) or (named is not None and named.get("horse")):
        return True
    if not _MORE.isdisjoint(behind) and not _PARED.isdisjoint(talk.words[mention.start - 2 : mention.start]):
        return True  # "when I'd pared it a bit more"
    return talk.words[mention.start] == "marked" and behind in (["it"], ["that"], ["them"], ["him"], ["her"], ["down"])


def _just_told(talk: Talk, segment: Segment) -> list[Draft]:
    """ "Thrush. Left hind. Mild.", "… Mild today.": a degree alone in its clause is that of the finding just told."""
    near = [s for s in talk.segments[: segment.index] if s.horse == segment.horse]
    drafts = [d for s in near if segment.sentence - s.sentence <= _NEAR for d in s.drafts]
    return drafts[-1:] if drafts and drafts[-1].slot == "finding" else []


def _on_these_feet(talk: Talk, sentence: list[Segment], segment: Segment, groups: Groups) -> list[Draft]:
    """ "Thrush on the hinds. Left is mild. Right is severe.": the finding that the sentences before told of both."""
    before = [s for s in sentence if s.index <= segment.index]
    named = [g.feet for s in before for g in groups.get(s.index, []) if not g.anaphor]
    if not named or (segment.own_clause and any(s.drafts for s in sentence)):
        return []
    near = [s for s in talk.segments[: segment.index] if s.horse == segment.horse]
    drafts = [d for s in near if segment.sentence - s.sentence <= _NEAR for d in s.drafts]
    whole = [d for d in drafts if d.slot == "finding" and set(named[-1]) <= set(d.feet or ())]
    only = {(d.slot, d.value) for d in drafts} == {(d.slot, d.value) for d in whole}
    return whole[-1:] if only or (drafts and drafts[-1] in whole) else []


def _attach_severity(talk: Talk, sentence: list[Segment], position: int, mention: Mention, groups: Groups) -> None:
    segment = sentence[position]
    if (said := next((d for d in segment.drafts if set(mention.literal) & d.evidence), None)) is not None:
        if SOME in said.rules and sum(len(s.having("severities")) for s in sentence[position:]) == 1:
            said.severity = Severity(mention.readings["severities"])  # "left hind's got a touch of it too"
        return
    own = [d for d in segment.drafts if d.slot in _GRADED]
    draft: Draft | None = next((d for d in own if d.start < mention.start and mention.end < d.end), None)
    if draft is not None:
        pass  # "the toe's a bit long": the degree stands inside the phrase
    elif own:
        after = [d for d in own if d.start >= mention.end]
        before = [d for d in own if d.end <= mention.start]
        close = after and (not before or after[0].start - mention.end <= _NEXT)
        if close and before and "with" in talk.words[mention.end : after[0].start]:
            close = False  # "crack, medial quarter, moderate with heat above it"
        draft = after[0] if close else next(iter(reversed(before or after)), None)
    elif not segment.drafts and not of_another_thing(talk, segment, mention):
        earlier = [d for s in sentence[:position] for d in s.drafts] or _on_these_feet(talk, sentence, segment, groups)
        alone = not any(s.drafts for s in sentence) and bare_degree(talk, segment)
        if not earlier and alone and segment.having("times", "today") == segment.having("times"):
            earlier = _just_told(talk, segment)
        draft = earlier[-1] if earlier and earlier[-1].slot in _GRADED else None
        draft = _its_other_part(draft, earlier, groups.get(segment.index, [])) if draft is not None else None
        if draft is not None and (
            _another_foot(draft, groups.get(segment.index, [])) or _turned(talk, draft, sentence, position, groups)
        ):
            return
        if draft is not None and draft.segment.sentence < segment.sentence:
            sentence = [s for s in talk.segments if draft.segment.sentence <= s.sentence <= segment.sentence]
            position = sentence.index(segment)
        draft = _narrow(draft, sentence, position, groups) if draft is not None else None
    draft = _at_its_place(talk, sentence, draft, mention) if draft is not None else None
    if draft is None or draft.status is Status.ABSENT or (draft.severity and not how_bad_it_is(talk, draft, mention)):
        return
    for graded in [draft, *_twins(talk, draft, mention), *of_both(talk, draft, sentence[:position], segment, groups)]:
        graded.severity = Severity(mention.readings["severities"])
        graded.evidence.update(mention.literal)
        graded.note(f"severity: {graded.severity}")


def _its_other_part(draft: Draft, earlier: list[Draft], found: list[FootGroup]) -> Draft:
    """ "Thrush in all four, bad in the left hind and slight in the other three": the part on the feet named now."""
    if not _another_foot(draft, found):
        return draft
    parts = [d for d in earlier if (d.slot, d.value, d.start) == (draft.slot, draft.value, draft.start)]
    return next((d for d in parts if set(found[-1].feet) <= set(d.feet or ())), draft)


def _at_its_place(talk: Talk, sentence: list[Segment], draft: Draft, mention: Mention) -> Draft:
    """ "Thrush, mild in the frog and severe in the sulcus", "in the frog, mild, and in the sulcus, severe"."""
    several = sum(len(s.having("severities")) for s in sentence) > 1
    places = {d.zone: d for d in _at_all_places(draft) if d.zone is not None and d.slot == "finding"}
    zones = [m for s in sentence for m in s.having("zones") if m.readings["zones"] in places]
    if not several or len(places) < 2 or len(zones) < 2:
        return draft
    behind = [m for m in zones if 0 < m.start - mention.end <= 2 and talk.words[mention.end] in _LEADING_IN]
    before = [m for m in zones if m.end <= mention.start]
    near = behind[:1] or before[-1:]
    return places[near[0].readings["zones"]] if near else draft


def _at_all_places(draft: Draft) -> list[Draft]:
    """The draft and its like of the same words and feet, which differ in the place alone."""
    return [d for d in draft.segment.drafts if (d.start, d.value, d.feet) == (draft.start, draft.value, draft.feet)]


def _twins(talk: Talk, draft: Draft, mention: Mention) -> list[Draft]:
    """ "Thrush in the frog and the sulcus, bad": the same finding at the second place has the degree too."""
    same = [
        d
        for d in _at_all_places(draft)
        if d is not draft and d.slot == "finding" and not d.dropped and d.severity is None
    ]
    placed = [i for d in (draft, *same) for i in d.evidence]
    between = bool(placed) and min(placed) < mention.start < max(placed)
    ahead = mention.end <= draft.start  # "bad thrush in the frog and the sulcus"
    return same if ahead or not between else []
