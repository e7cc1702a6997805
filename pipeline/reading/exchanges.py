"""Exchanging one word for another of its kind: the shared ground of everything that is taken back."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.foot_names import resolve
from pipeline.reading.mentions import Mention
from pipeline.reading.numbers import Number
from pipeline.reading.opening import sentence_start
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET
from pipeline.vocabulary import CLASS_SLOTS

_KINDS = {name: rank for rank, name in enumerate((*CLASS_SLOTS, "zones", "severities"))}
_NEAR = 4
_IN_A_LIST = frozenset({",", "and", "in", "on", "the", "his", "her"})
_PART_REACH = 9  # tokens from a repair cue to the count and the foot that it is of
_SURELY = frozenset(
    {"a", "an", "definitely", "definite", "clearly", "just", "plain", "really", "certainly", "for", "sure"}
)
_IT_IS = (["it", "is"], ["it", "'s"], ["that", "'s"], ["that", "is"], ["it", "was"], ["they", "are"], ["they", "'re"])
_THINKING = frozenset({"i", "'d", "would", "'ll", "we", ",", "really", "honestly"})
_WEEKS = frozenset({"week", "weeks", "month", "months", "fortnight"})
_HUNDRED = 100
_LEFT_ALONE = frozenset({"left", "skipped", "missed", "leave", "skip"})
_GROUPS = {"all": FEET, "fronts": FEET[:2], "hinds": FEET[2:]}
_TOLD_OF_EACH = frozenset({"each", "apiece", "both"})
_A_FOOT = (
    ["a", "foot"], ["per", "foot"], ["a", "shoe"], ["per", "shoe"], ["the", "foot"], ["the", "shoe"], ["a", "side"],
    ["per", "side"], ["all", "round"], ["all", "around"], ["all", "four"],
)  # fmt: skip
_PAIR_OF = {"LF": "fronts", "RF": "fronts", "LH": "hinds", "RH": "hinds", "fronts": "fronts", "hinds": "hinds"}
_SCORED = frozenset({"body_condition", "cresty_neck", "obel"})
_YES = frozenset({"yes", "yeah", "aye", "that", "right"})
HESITATING = frozenset({",", "sorry", "no", "wait", "uh", "um", "hang", "on", "hold", "stop", "nope", "nah", "oh"})


def kind_of(mention: Mention) -> str | None:
    """The class of word that a mention is exchanged within: "number", "feet" or a class of the vocabulary."""
    if mention.number is not None:
        return "number"
    if mention.dropped:
        return None
    if "feet" in mention.readings:
        return "feet"
    first = None
    for name in mention.readings:
        if name in _KINDS and (first is None or _KINDS[name] < _KINDS[first]):
            first = name
    return first


def counts(talk: Talk, mention: Mention) -> str | None:
    """What a number counts, by the words around it; None when they do not say."""
    after = talk.mention_starting(mention.end)
    if after is not None:
        for name in ("units", "measures", "totals"):
            if after.get(name) in ("each", "each_side", "outside", "inside"):
                return "nails"
            if after.get(name) is not None:
                return after.readings[name]
    before = talk.mention_ending(mention.start)
    if before is not None and before.get("measures") is not None:
        counted = before.readings["measures"]
        return "grade" if counted in ("obel", "lameness") else counted
    return None


def same_count(talk: Talk, olds: list[Mention], new: Mention) -> Mention | None:
    """The last number that counted the same thing; any number when the new one does not say what it counts."""
    counted = counts(talk, new)
    near = bool(olds) and new.start - olds[-1].end <= _NEAR
    if counted == "shoe_size" and olds and _size_of_nails(talk, olds[-1], new):
        return olds[-1]  # "number five nails, no, number six"
    if near and counted == "nails" and counts(talk, olds[-1]) == "shoe_size" and _halved(new):
        return olds[-1]  # "number five, no, four and a half nails": half a nail is a size
    if counted is None:
        return olds[-1] if olds and not _another_score_between(talk, olds[-1], new) else None
    if olds and counts(talk, olds[-1]) is None and (near or _of_the_foot_before(talk, olds[-1], new)):
        return olds[-1]  # "six nails in front and six, no, five in each behind"
    same = [m for m in olds if counts(talk, m) == counted]
    if same:
        return same[-1]
    silent = [m for m in olds if counts(talk, m) is None]
    return (
        silent[-1]
        if silent and silent[-1] is olds[-1]
        else (olds[-1] if counted in ("week", "degree", "inch", "mm") and olds else None)
    )


def _another_score_between(talk: Talk, old: Mention, new: Mention) -> bool:
    """ "Body condition six. No cresty neck to speak of, call it a one": the score is of what was named last."""
    heads = [m for m in talk.having("measures") if old.end <= m.start < new.start and m.readings["measures"] in _SCORED]
    heads = [m for m in heads if {",", *SENTENCE_ENDS} & set(talk.words[old.end : m.start])]
    return any(m.readings["measures"] != counts(talk, old) for m in heads)


def _of_the_foot_before(talk: Talk, old: Mention, new: Mention) -> bool:
    """ "Three inches on the left front, right front two, no, let me look, two and a half inches": of that foot."""
    foot = talk.mention_ending(old.start)
    another = any(old.end <= m.start < new.start for m in talk.having("feet"))
    return foot is not None and foot.get("feet") is not None and not another


def graded_finding(talk: Talk, cue: int, new: Mention) -> Mention | None:
    """ "Testers strong, and I found a corn, a bad one, call it severe": the degree is the corn's, no answer to them."""
    if new.get("severities") is None or new.get("tester_responses") is None:
        return None
    start = window(talk, cue)
    said = [m for m in talk.mentions if start <= m.start and m.end <= cue and not m.dropped]
    last = next((m for m in reversed(said) if m.is_any(("findings", "tester_heads"))), None)
    return last if last is not None and last.get("findings") else None


def grades(degree: Mention, found: Mention) -> bool:
    """Whether a degree is that of the finding: behind it, or right before it ("a bad corn")."""
    return degree.get("severities") is not None and degree.end >= found.start


def _size_of_nails(talk: Talk, old: Mention, new: Mention) -> bool:
    """Whether the size before was the nails', and is said again with the word that led it: "number", "size"."""
    after, sized = talk.mention_starting(old.end), talk.words[old.start - 1] == talk.words[new.start - 1]
    shoes = talk.words[new.end : new.end + 1] in (["shoe"], ["shoes"], ["plates"])
    return sized and not shoes and old.start > 0 and after is not None and after.get("measures") == "nails"


def _halved(mention: Mention) -> bool:
    return mention.number is not None and mention.number.value.denominator > 1


def said_again(old: Mention, new: Mention, kind: str) -> bool:
    """ "Size two, no, I told the owner two but they're size one": the same once more corrects nothing yet."""
    if kind == "feet":
        return old.readings["feet"] == new.readings["feet"]
    return (
        kind == "number"
        and old.number is not None
        and new.number is not None
        and ((old.number.value, old.number.aughts) == (new.number.value, new.number.aughts))
    )


def swap(talk: Talk, old: Mention, new: Mention, kind: str) -> None:
    """``new`` stands for ``old``."""
    if kind == "feet":
        if talk.words[old.start - 1] == "," and _begins_anew(talk, old, new):
            talk.words[old.start - 1] = "."
        for said in (old, *_taken_for(talk, old)):
            said.readings["feet"] = _both_of_it(said.readings["feet"], new.readings["feet"])
        return
    ahead = talk.mention_ending(new.start)
    if kind == "findings" and ahead is not None and ahead.get("denials") is not None:
        return  # "and the right hind, hold on, right hind's got no thrush"
    if kind == "findings" and old.readings[kind] == new.readings[kind]:
        new.dropped = not _made_sure(talk, new)  # "it's the off hind that's got the thrush" says the thrush again
        return
    elsewhere = bool(SENTENCE_ENDS & set(talk.words[old.end : new.start]))
    parted = elsewhere or (kind != "number" and _told_between(talk, old, new))
    if kind == "zones" or (kind != "number" and parted and not _on_its_own_foot(talk, old, new, kind)):
        put_in_place(talk, old, new, kind)
        return
    if kind == "number" and old.number is not None and new.number is not None:
        new.number = _within_the_hundred(old.number, new.number)
        if elsewhere and counts(talk, new) is None and _several_ones(talk, old) and _several_ones(talk, new):
            old.number, old.literal, new.dropped = new.number, (*old.literal, *new.literal), True
            return
    old.dropped = True
    new.stands_for = (kind == "number" and old.stands_for) or old  # "six weeks, no, seven, no, eight": of the six


def _taken_for(talk: Talk, foot: Mention) -> list[Mention]:
    """ "Left hind, no, right hind, no, left hind": the foot that the last one stands for."""
    before = [m for m in talk.having("feet") if m.end <= foot.start and m.get("feet") == foot.get("feet")][-1:]
    return [m for m in before if set(talk.words[m.end : foot.start]) <= HESITATING | {"the"}]


def confirmed(talk: Talk, foot: Mention) -> bool:
    """ "Left hind, no, left hind, yes, left hind", "left hind, no, left hind, right hind reset"."""
    at = foot.end + 1
    if "feet" not in foot.readings or talk.words[foot.end : at] != [","]:
        return False
    other, stop = talk.mention_starting(at), next_mark(talk, at)
    if other is None or "feet" not in other.readings:
        return not _YES.isdisjoint(talk.words[at : at + 1])
    return any(other.end <= m.start < stop and kind_of(m) for m in talk.mentions)


def _tell_elsewhere(talk: Talk, said: Mention, right: Mention) -> None:
    """ "Back to Tally. That corn's in the left front, not the right front": the corn told of the right front goes."""
    told = [m for m in talk.having("findings") if m.start >= sentence_start(talk, said.start) and m.end <= right.start]
    for old in [m for m in told[:-1] if m.readings == told[-1].readings and m.start < sentence_end(talk, said.start)]:
        old.dropped = told[-1].start >= sentence_start(talk, right.start)


def take_from_the_foot(talk: Talk, said: Mention, right: Mention, *, last: bool) -> None:
    """ "Corn right front, reset. That corn's in the left front, not the right front": the reset stays on the right."""
    begin, start = sentence_start(talk, right.start), sentence_start(talk, said.start)
    again = [m.readings["findings"] for m in talk.having("findings") if begin <= m.start < right.start][-1:]
    told = [m for m in talk.mentions if again and start <= m.start < begin and not m.dropped and _of_a_foot(m)]
    others = [m for m in told if m.get("findings") not in again]
    ahead = [m for m in others if m.end <= said.start and not m.is_any(("feet", "horse"))]
    if ahead or not last:  # "corn and a bruise right front", or another foot was named since
        _tell_elsewhere(talk, said, right)
        return
    rest = next((m for m in others if m.start >= said.end), said)
    if rest is not said and not rest.is_any(("feet", "horse")):
        talk.mentions.append(Mention(rest.start, rest.end, rest.literal, {"feet": said.readings["feet"]}, rest.match))
        talk.in_order()
    said.readings["feet"] = right.readings["feet"]
    right.dropped = True


def _of_a_foot(mention: Mention) -> bool:
    if mention.is_any(("severities", "zones")):
        return False
    return mention.number is not None or mention.is_any((*CLASS_SLOTS, "feet", "horse"))


def _begins_anew(talk: Talk, old: Mention, new: Mention) -> bool:
    """ "Left front keratoma, reset, left front, I mean right front, five nails": the reset is of the left front."""
    ahead = next((m for m in reversed(talk.having("feet")) if m.end <= old.start), old)
    between = [m for m in talk.mentions if ahead.end <= m.start < old.start and m.is_any(CLASS_SLOTS)]
    behind = [m for m in talk.mentions if new.end <= m.start < sentence_end(talk, new.end)]
    if ahead.readings["feet"] != old.readings["feet"] or not between or between[-1].get("findings"):
        return False  # "bruise left front, and a crack, where was it, left front, no, right hind, mild"
    stopped = not SENTENCE_ENDS.isdisjoint(talk.tokens.words[ahead.end : old.start])
    return not stopped and any(m.number or m.is_any(CLASS_SLOTS) for m in behind)


def _several_ones(talk: Talk, number: Mention) -> bool:
    """ "Six nails each, fives. Sorry, sixes.": what "fives" are is told by its place."""
    return talk.words[number.end - 1].endswith("s") and counts(talk, number) is None


def _told_between(talk: Talk, old: Mention, new: Mention) -> bool:
    """ "A corn in the right front, mild, no, a bruise": foot, place and degree of the first are the second's.

    Not its doubt: "possible bruise in the left front, no, it's a corn".
    """
    ahead = talk.mention_ending(old.start)
    if old.readings == new.readings or (
        ahead is not None and ahead.get("doubts") is not None and _made_sure(talk, new)
    ):
        return False
    placing = ("feet", "zones", "severities")
    between = [m for m in talk.mentions if old.end <= m.start < new.start and m.is_any(placing) and not m.dropped]
    behind = range(new.end, sentence_end(talk, new.end))
    return bool(between) and not any(m.start in behind and m.is_any(placing) for m in talk.mentions)


def _on_its_own_foot(talk: Talk, old: Mention, new: Mention, kind: str) -> bool:
    """ "Canker. No, scratch that, it's thrush, right front": the right word has a foot, the wrong one has none."""
    if kind != "findings":
        return False
    feet = [m.start for m in talk.having("feet")]
    told = any(old.start < at < new.start for at in feet) or any(at < old.start for at in feet)
    return not told and any(new.end <= at < sentence_end(talk, new.end) for at in feet)


def _both_of_it(old: str, new: str) -> str:
    """ "The left front's underrun, no, that's both of them": the pair of the foot that was said."""
    pair = _PAIR_OF.get(old) if new == "pair_in_hand" else None
    return pair or new


def _made_sure(talk: Talk, found: Mention) -> bool:
    """ "Possible bruise, no, it is a bruise": what was doubted is sure when it is said so again."""
    at = found.start
    while at and talk.words[at - 1] in _SURELY:
        at -= 1
    return talk.words[at - 2 : at] in _IT_IS and not {"that", "the"} & set(talk.words[at : found.start])


def _within_the_hundred(old: Number, new: Number) -> Number:
    """ "A hundred and twenty five, no, twenty six": the hundreds stand."""
    if old.value < _HUNDRED or new.value >= _HUNDRED or old.value % _HUNDRED == 0:
        return new
    return replace(new, value=old.value - old.value % _HUNDRED + new.value)


def put_in_place(talk: Talk, old: Mention, new: Mention, kind: str) -> None:
    """ "Testers at the frog, mild. Er, no, call it moderate.": the correction stays in the sentence it corrects."""
    for name in [n for n in old.readings if n == kind or n in new.readings]:
        old.readings.pop(name)
    old.readings.update({name: value for name, value in new.readings.items() if name != "taking_back"})
    old.literal = (*old.literal, *new.literal)
    old.match = new.match
    new.dropped = True
    talk.changed()


def of_another_foot(talk: Talk, cue: Mention) -> bool:
    """ "Six nails in the near fore, off fore call it seven": the foot opens the clause in which it is called so."""
    foot = next((m for m in talk.having("feet") if m.end == cue.start), None)
    if foot is None:
        return False
    at = foot.start
    while at and talk.words[at - 1] in ("the", "on", "in", "his", "her", "for"):
        at -= 1
    return at == 0 or talk.words[at - 1] in (",", ";", "and", "but", *SENTENCE_ENDS)


def thought_better(talk: Talk, cue: Mention) -> bool:
    """ "Severe. Well, I'd call it moderate": said on second thoughts; not "well, I'd call it seven weeks"."""
    at = cue.start
    while at and talk.words[at - 1] in _THINKING:
        at -= 1
    opens = at > 1 and talk.words[at - 2] in (",", "but", *SENTENCE_ENDS)
    return opens and talk.words[at - 1] == "well" and _WEEKS.isdisjoint(talk.words[cue.end : cue.end + _NEAR])


def sentence_end(talk: Talk, index: int) -> int:
    """The token that ends the sentence."""
    words = talk.words
    return next((at for at in range(index, len(words)) if words[at] in SENTENCE_ENDS), len(words))


def window(talk: Talk, at: int) -> int:
    """Where the thing taken back may start: this sentence, or the one before when the cue opens its sentence."""
    this = sentence_start(talk, at)
    if not this or any(kind_of(m) for m in talk.mentions if this <= m.start < at and not m.dropped):
        return this
    return sentence_start(talk, this - 1)


def opened_sentence(talk: Talk, index: int) -> bool:
    """Whether the token opens its sentence."""
    return index == 0 or talk.words[index - 1] in SENTENCE_ENDS


def _leave_out(talk: Talk, start: int, cue: Mention, left: Mention) -> bool:
    """ "Trimmed all four, no wait, I left the right front": all that was said before but this foot."""
    olds = [m for m in talk.having("feet") if start <= m.start and m.end <= cue.start and not m.dropped]
    group = _GROUPS.get(olds[-1].readings["feet"], ()) if olds else ()
    if left.readings["feet"] not in group:
        return False
    olds[-1].readings["feet"] = "+".join(foot for foot in group if foot != left.readings["feet"])
    return True


def left_after_all(talk: Talk, run: list[Mention]) -> bool:
    """ "Trimmed all four, no wait, I left the right front": the first foot behind the cue, where it is left alone."""
    stop = sentence_end(talk, run[-1].end)
    foot = next((m for m in talk.having("feet") if run[-1].end <= m.start < stop and not m.dropped), None)
    if foot is None or not _LEFT_ALONE & set(talk.words[run[-1].end : foot.start]):
        return False
    return _leave_out(talk, window(talk, run[0].start), run[0], foot)


def counted_on_a_part(talk: Talk, run: list[Mention]) -> bool:
    """ "Six nails each, no, seven in the right front": the count of all stands on the feet that are not named anew."""
    begin = run[-1].end
    stop = sentence_end(talk, begin + 1)
    behind = [m for m in talk.mentions if begin <= m.start < stop and not m.dropped]
    new = next((m for m in behind if m.number is not None), None)
    part = next((m for m in behind if m.get("feet") is not None), None)
    if new is None or part is None or max(new.end, part.end) - begin > _PART_REACH:
        return False
    start = window(talk, run[0].start)
    olds = [m for m in talk.mentions if m.end <= run[0].start and m.number is not None and not m.dropped]
    old = same_count(talk, [m for m in olds if m.start >= start], new)
    if old is None or said_again(old, new, "number"):
        return False
    feet = [m for m in talk.having("feet") if m.end <= run[0].start and m.readings["feet"] != "pair_in_hand"]
    whole = (resolve(feet[-1].readings["feet"], None) or ()) if feet else FEET
    if len(feet) > 1 and any(m.get("totals") == "each" and feet[-1].end <= m.start < old.start for m in talk.mentions):
        whole = tuple(foot for m in feet if m.start >= start for foot in resolve(m.readings["feet"], whole) or ())
    named = resolve(part.readings["feet"], whole) or ()
    plural = new.end <= part.start and all(m.number is not None and m.number.plural for m in (new, old))
    if plural and {f for m in behind for f in resolve(m.readings.get("feet", ""), whole) or ()} == set(whole):
        old.dropped = True  # "sixes. No, fives behind, it's only sixes in front"
        return True
    others = [counts(talk, m) for m in olds if m.start >= start and m is not old]
    plural = plural and {*others} != {"nails"}  # of shoes without a size "fives behind" is theirs
    return bool(named) and set(named) < set(whole) and (plural or _told_of_each(talk, old, run[0].start))


def _told_of_each(talk: Talk, old: Mention, stop: int) -> bool:
    words = talk.words[old.start : stop]
    return bool(_TOLD_OF_EACH & set(words)) or any(words[i : i + 2] in _A_FOOT for i in range(len(words)))


def only_that(talk: Talk, feet: list[Mention]) -> None:
    """ "Seedy toe in the left fore and the right fore, no, just the right": the others of the list go."""
    for first, second in zip(feet[::-1], feet[-2::-1], strict=False):
        single = first.readings["feet"] in FEET and second.readings["feet"] in FEET
        if not (single and _IN_A_LIST.issuperset(talk.words[second.end : first.start])):
            return
        second.dropped = True
