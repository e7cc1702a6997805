"""What the speaker takes back: "size one, no, make that an aught"; "left, sorry, right front"; "scratch that".

A repair cue is followed by the repair; its first word of each kind (a number, a foot, a shoe, a zone …) replaces the
last one of the same kind said before the cue. What is of another kind stands. A strike with no repair behind it takes
back the statement before it.
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.at_that_time import asked_how, of_another_time
from pipeline.reading.exchanges import (
    confirmed,
    counted_on_a_part,
    counts,
    graded_finding,
    grades,
    kind_of,
    left_after_all,
    only_that,
    said_again,
    same_count,
    sentence_end,
    swap,
    window,
)
from pipeline.reading.mentions import Mention
from pipeline.reading.misnamed import mixed_up, on_another_day, other_named, said_of_all
from pipeline.reading.not_that import denied, narrowed, not_that, not_the_same, refused
from pipeline.reading.reasons import put_right_behind, why_wrong
from pipeline.reading.repair_cues import ASSESSED, is_no_cue, is_repair
from pipeline.reading.rest_stands import rest_stands
from pipeline.reading.restatements import restate
from pipeline.reading.said_before_cue import replace_before
from pipeline.reading.strikes import Strike
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET
from pipeline.vocabulary import CLASS_SLOTS

_WORN = frozenset({"are", "is", "'s", "take", "takes", "get", "have", "has"})
_GROUPED = frozenset({"all", "fronts", "hinds", "other_three", "those_three"})
_REPAIR_REACH, _PAIR, _TOGETHER = 24, 2, 3  # the last: tokens within which a second thing is taken back with the first
_SO_HAS = frozenset({("so", "does"), ("so", "has"), ("so", "is"), ("so", "do"), ("so", "did"), ("so", "was")})
_CUES = ("repair", "strike", "other_horse")
_IN_THE_MIND = frozenset({"mixing", "mixed", "confusing", "thinking", "thought", "mind", "head", "brain"})
_LEAD_IN = 4  # tokens of ", I had the" before "wrong horse", and of "… in my head" behind it
_BEFORE_ASSESSED = frozenset({"let", "'s", "us", "we", "'ll", "i", "say", ",", "uh", "um", "er", "well", "oh"})
_SURELY = frozenset({"definitely", "certainly", "surely", "clearly", "defo"})


def repair(talk: Talk) -> list[Strike]:
    """Carry out every repair on the mentions; returns the strikes, which are carried out on the drafts."""
    restate(talk)
    strikes: list[Strike] = []
    for mention in talk.having("taking_back", "strike_object"):
        if not mention.dropped and (what := _object(talk, mention)) is not None:
            strikes.append(Strike(mention.start, mention.end, None, what=what))
    index, right = 0, None
    cues = [m for m in talk.having("taking_back") if m.readings["taking_back"] in _CUES and not is_no_cue(talk, m)]
    for cue in cues:
        cue.readings.pop("manners", None)  # "fifty, half asleep, fifty two": not the horse
    while index < len(cues):
        run = [cues[index]]
        while index + 1 < len(cues) and _adjacent(talk, run[-1], cues[index + 1]):
            index += 1
            run.append(cues[index])
        index += 1
        mixed = mixed_up(talk, run[-1])
        if right is not None and _says_why(talk, right, run):
            _drop_cues(run)
            continue
        struck = len(strikes)
        _handle(talk, run, strikes, mixed)
        right = run[-1] if len(strikes) == struck and run[-1].get("taking_back") is None else None
    return strikes


def _says_why(talk: Talk, right: Mention, run: list[Mention]) -> bool:
    """ "Size one, no, size two, I had the wrong horse in my head": how the slip just put right came about.

    Behind a stop only what says that it was in the mind: "No, size two. I was thinking of another horse".
    """
    if any(m.get("taking_back") != "other_horse" for m in run):
        return False
    between = [i for i in range(right.end, run[0].start) if talk.words[i] == "," or talk.words[i] in SENTENCE_ENDS]
    inner = [i for i in between if right.end < i < run[0].start - _LEAD_IN]
    stopped = any(talk.words[i] in SENTENCE_ENDS for i in between)
    in_mind = not _IN_THE_MIND.isdisjoint(talk.words[run[0].start : run[-1].end + _LEAD_IN])
    return not inner and (in_mind or not stopped)


def _object(talk: Talk, cue: Mention) -> tuple[str, str] | None:
    """The slot and value named right behind "scratch the …", "forget the …"; the mention itself is used up."""
    for mention in talk.mentions:
        if cue.end <= mention.start <= cue.end + 2:
            for name, slot in CLASS_SLOTS.items():
                value = mention.get(name)
                if value is not None:
                    mention.dropped = True
                    return slot, value
    return None


def _adjacent(talk: Talk, first: Mention, second: Mention) -> bool:
    between = talk.words[first.end : second.start]
    return len(between) <= 3 and set(between) <= {",", "uh", "um", "er", "oh", ".", "no", "well", "i"}


def _will_wait(talk: Talk, cue: Mention) -> bool:
    """ "Buck will have to wait", "Buck can wait": nothing is put right."""
    return talk.words[cue.start] == "wait" and talk.words[cue.start - 1 : cue.start] in (["to"], ["can"], ["could"])


def _back_to_another(talk: Talk, first: Mention, last: Mention) -> bool:
    """ "Then Buck. Reset in front. Sorry, on Tally, new shoes in front": what was told of Buck stands."""
    if first.start and talk.words[first.start - 1] not in SENTENCE_ENDS:
        return False
    at = last.end + (talk.words[last.end : last.end + 1] == [","])
    led = talk.words[at : at + 1] in (["on"], ["about"], ["for"], ["with"])
    names = talk.having("horse")
    name = next((m for m in names if m.start == at + led), None)
    before = [m for m in names if m.end <= first.start]
    if name is None or not before or before[-1].get("horse") == name.get("horse"):
        return False
    again = talk.words[name.end : name.end + 1] == ["again"]
    return (led or again) and talk.words[name.end + again : name.end + again + 1] == [","]


def _handle(talk: Talk, run: list[Mention], strikes: list[Strike], mixed: bool | None) -> None:
    kind = {m.readings["taking_back"] for m in run}
    if kind == {"repair"} and not is_repair(talk, run):
        return None
    if _not_done(talk, run[-1]):
        strikes.append(Strike(run[0].start, run[-1].end, None, undone=True))
        return _drop_cues(run)
    if _turns_back(talk, run[-1]) or _will_wait(talk, run[0]):
        return None
    if _back_to_another(talk, run[0], run[-1]):
        return _drop_cues(run)
    answers = of_another_time(talk, run[0]) or asked_how(talk, run[0])
    if _of_the_other(talk, run[-1]) or answers or not_the_same(talk, run):
        return _drop_cues(run)
    _made_sure(talk, run)
    named = other_named(talk, run[-1])
    if named is not None and on_another_day(talk, named):
        talk.putting_right.add(named)
        strikes.append(Strike(run[0].start, run[-1].end, None))
        return _drop_cues(run)
    if named is not None:
        strikes.append(Strike(run[0].start, run[-1].end, None, other_horse=True, named=named))
        return _drop_cues(run)
    if mixed is not None or "other_horse" in kind:
        if not ((mixed or put_right_behind(talk, run[0].end)) and _replace(talk, run if mixed else run[:1])):
            strikes.append(Strike(run[0].start, run[-1].end, None, other_horse=mixed is None))
        return _drop_cues(run)
    about = _about(talk, run[-1])
    if "strike" in kind and about is not None:
        strikes.append(Strike(run[0].start, run[-1].end, about))
        return _drop_cues(run)
    if any(put_right(talk, run) for put_right in _PUTTING_RIGHT):
        return _drop_cues(run)
    if "strike" in kind and not said_of_all(talk, run[-1].end):
        strikes.append(Strike(run[0].start, run[-1].end, None))
        return _drop_cues(run)
    return None


def _made_sure(talk: Talk, run: list[Mention]) -> None:
    """ "Maybe a reaction at the toe. No, definitely a reaction.": the doubt goes with the first word."""
    at = run[-1].end + (talk.words[run[-1].end : run[-1].end + 1] == [","])
    if talk.words[at : at + 1] and talk.words[at] in _SURELY and talk.words[at + 1 : at + 2] != ["not"]:
        start = window(talk, run[0].start)
        for doubt in [m for m in talk.having("doubts") if start <= m.start < run[0].start]:
            doubt.dropped = True


def _not_done(talk: Talk, cue: Mention) -> bool:
    """ "Hinds I reset too. No, I didn't, …": the whole statement before is taken back."""
    start = cue.end + (talk.words[cue.end : cue.end + 1] == [","])
    words = talk.words[start : start + 4]
    has = words[:2] in (["it", "has"], ["he", "has"], ["she", "has"]) and talk.words[cue.start - 1] == ","
    told = has or words[:2] in (["i", "did"], ["we", "did"])
    return told and words[2:3] in (["n't"], ["not"]) and words[3:4] in ([","], ["."])


def _turns_back(talk: Talk, cue: Mention) -> bool:
    """ "Wait, back to Tally, trimmed the hinds": another horse's turn, nothing is taken back."""
    start = cue.end + (talk.words[cue.end : cue.end + 1] == [","])
    words = talk.words[start : start + 3]
    at = start + 3 if words[:1] == ["going"] else start + 2
    name = talk.mention_starting(at)
    return words[:1] in (["back"], ["going"]) and "back" in words and name is not None and name.get("horse") is not None


def _of_the_other(talk: Talk, cue: Mention) -> bool:
    """ "Size eight, no, that's the nail": the number stands, of the nail."""
    start = cue.end + (talk.words[cue.end : cue.end + 1] == [","])
    words = talk.words[start : start + 5]
    told = words[:1] == ["that"] and words[1:3] in (["'s", "the"], ["was", "the"], ["is", "the"])
    return told and words[3:4] in (["nail"], ["nails"], ["shoe"], ["shoes"]) and words[4:5] in ([","], ["."], [])


def _drop_cues(run: list[Mention]) -> None:
    for mention in run:
        for name in ("denials", "taking_back", "doubts"):
            mention.readings.pop(name, None)


def _about(talk: Talk, cue: Mention) -> str | None:
    """The slot named behind "scratch all that about the …"."""
    window = [m for m in talk.mentions if cue.end <= m.start <= cue.end + 4]
    if not any(m.get("taking_back") == "about" for m in window) and "about" not in talk.words[cue.end : cue.end + 2]:
        return None
    for mention in window:
        for name, slot in CLASS_SLOTS.items():
            if mention.get(name) is not None:
                return slot
    words = talk.words[cue.end : cue.end + 6]
    nouns = {
        "pads": "pad", "pad": "pad", "wedge": "pad", "wedges": "pad", "shoes": "work", "shoe": "work", "nails": "nails",
        "clips": "clips", "size": "shoe_size", "packing": "packing", "testers": "tester", "pulse": "pulse",
    }  # fmt: skip
    return next((nouns[w] for w in words if w in nouns), None)


def _replace(talk: Talk, run: list[Mention]) -> bool:
    """Replace what the words behind the cue correct; False when nothing before is of their kind."""
    begin = why_wrong(talk, run[-1].end + 1 if talk.words[run[-1].end : run[-1].end + 1] == ["."] else run[-1].end)
    new_ones, stop = _said_in(talk, begin, sentence_end(talk, begin)), _segment_end(talk, begin)
    if (over := refused(talk, run, new_ones)) or denied(new_ones):
        return over or not_that(talk, run, new_ones)
    said = range(start := window(talk, run[0].start), run[0].start)
    first_old: Mention | None = None
    for new in new_ones:
        graded = graded_finding(talk, run[0].start, new)
        kind = "severities" if graded is not None else kind_of(new)
        if new.start >= stop or (first_old is None and (new.stands_for is not None or _adds(talk, said, begin, new))):
            break  # "six weeks, wait, they're away, make it seven": put right by the cue before
        apart = new.get("totals") == "each" or "from" in talk.words[new.start - 2 : new.start]  # "no, in each foot"
        if kind is None or (kind == "feet" and apart):
            continue
        begins = 0 if kind == "feet" and _wrong_way_round(talk, run) else start
        olds = [m for m in talk.mentions if begins <= m.start and m.end <= run[0].start and not m.dropped]
        olds = _named(talk, [m for m in olds if (kind_of(m) == kind if graded is None else grades(m, graded))])
        if kind == "feet" and first_old is None and olds and _told_apart(talk, olds, new, new_ones):
            return True
        only = kind == "feet" and (_said_to_be_all(talk, begin, new) or _right_beside(talk, run, olds, new))
        if kind == "feet" and olds and olds[-1].readings["feet"] in _GROUPED and _several_feet(new_ones) and not only:
            continue  # "size four all round, no, fronts are four …"
        if kind == "number" and (_for_a_horse(talk, run[-1].end, new) or _another_named(talk, run[0])):
            continue  # "Biddy and Corny in seven. No, eight for Corny": the seven stays Biddy's
        old = same_count(talk, olds, new) if kind == "number" else (olds[-1] if olds else None)
        if (old is None and first_old is None) or (old and _of_the_two(talk, olds, old, new, kind)):
            return old is not None
        only_that(talk, olds if only else [])
        if again := old is not None and said_again(old, new, kind):
            stop = new.end if confirmed(talk, new) else _segment_end(talk, new.end + 1)
        if again or old is None or (first_old is not None and old.start < first_old.start - _TOGETHER):
            continue
        if kind == "feet" and first_old is not None and {",", "and"} & set(talk.words[old.end : first_old.start]):
            continue  # "bounding in both fronts, raised, no, normal in the hinds": the fronts stay as they were
        swap(talk, old, new, kind)
        first_old = first_old or old
        if only:
            break  # "both fronts, no, just the right front, the left was only loose"
    return first_old is not None and _both_alike(talk, start, run[0].start, new_ones)


def _named(talk: Talk, olds: list[Mention]) -> list[Mention]:
    """ "The left hind had a flare on it, no, it's the right hind": the "it" goes with the foot that is put right."""
    if len(olds) < _PAIR or olds[-1].get("feet") != "in_hand" or olds[-2].get("feet") not in FEET:
        return olds
    between = talk.words[olds[-2].end : olds[-1].start]
    if "," in between or not SENTENCE_ENDS.isdisjoint(between):
        return olds
    olds[-1].dropped = True
    return olds[:-1]


# In this order: the first that finds what it corrects carries it out.
_PUTTING_RIGHT = (narrowed, left_after_all, rest_stands, counted_on_a_part, replace_before, _replace)


def _of_the_two(talk: Talk, olds: list[Mention], old: Mention, new: Mention, kind: str) -> bool:
    """ "Oakum or putty, no, putty", "four or five nails, no, five": of the two that were told the one said over."""
    same = said_again(old, new, kind) if kind in ("number", "feet") else old.readings == new.readings
    other = olds[-2] if len(olds) > 1 and olds[-1] is old else None
    between = talk.words[other.end : old.start] if other is not None else []
    if not same or other is None or between[:1] != ["or"] or len(between) > _TOGETHER:
        return False
    closed = talk.words[new.end : new.end + 1] in ([","], ["."], [])  # else what follows is of the word said over
    again = new if closed or kind == "feet" else old
    other.dropped = again.dropped = True
    return True


def _both_alike(talk: Talk, start: int, cue: int, new_ones: list[Mention]) -> bool:
    """ "Five nails near hind and six off hind, no, six in both": the count of the other foot goes with the last."""
    number, pair = new_ones[0], new_ones[1] if len(new_ones) > 1 else new_ones[0]
    if number.number is None or pair.get("feet") != "pair_in_hand":
        return True
    said = [m for m in talk.mentions if start <= m.start < cue and m.number is not None]
    if len(said) < _PAIR or said[-2].dropped:
        return True
    one, last = (next((m for m in talk.having("feet") if m.start >= n.end), None) for n in said[-_PAIR:])
    footed = one is not None and one.get("feet") in FEET and one.end <= said[-1].start and last is not None
    if footed and last is not None and last.end <= cue and counts(talk, said[-1]) in (None, counts(talk, said[-2])):
        said[-2].dropped = True
    return True


def _said_to_be_all(talk: Talk, begin: int, foot: Mention) -> bool:
    """ "Both fronts, no, just the right front"."""
    return not {"just", "only"}.isdisjoint(talk.words[max(begin, foot.start - 2) : foot.start])


def _said_in(talk: Talk, start: int, end: int) -> list[Mention]:
    """The mentions that begin there and stand."""
    return [m for m in talk.mentions if start <= m.start < end and not m.dropped]


def _adds(talk: Talk, said: range, begin: int, new: Mention) -> bool:
    """ "Wait, and the left hind", "wait, the left hind has it too": another foot, not a better one."""
    if any(pair in _SO_HAS for pair in pairwise(talk.words[begin : new.start])):
        return True  # "oh wait, so does the right"
    told = [m.get("feet") for m in talk.having("feet") if m.start in said]
    other = new.get("feet") not in (None, *told[-1:])  # not "the hinds are nought. No, the hinds are a one too"
    return "and" in talk.words[begin : new.start] or (other and _as_well(talk, new))


def _as_well(talk: Talk, foot: Mention) -> bool:
    clause = talk.words[foot.end : foot.end + 4]
    clause = clause[: next((i for i, word in enumerate(clause) if word in (",", *SENTENCE_ENDS)), len(clause))]
    return bool({"too", "also"} & set(clause)) or clause[-2:] == ["as", "well"]


def _told_apart(talk: Talk, olds: list[Mention], new: Mention, new_ones: list[Mention]) -> bool:
    """ "He's a six all round. No, the hinds are five and a half": of all feet some have a number of their own."""
    number = next((m for m in new_ones if m.start > new.end and m.number is not None), None)
    worn = bool(_WORN & set(talk.words[new.end : new.end + 1]))
    own = number is not None and set(talk.words[new.end + 1 : number.start]) <= {"a", "an", "only", "just"}
    of_all = olds[-1].readings["feet"] == "all" and new.readings["feet"] != "all"
    return of_all and worn and own


def _for_a_horse(talk: Talk, cue_end: int, number: Mention) -> bool:
    if any(m.get("horse") is not None for m in talk.mentions if cue_end <= m.start < number.start):
        return True  # "No, Lacey can go eight"
    name = talk.mention_starting(number.end + 1)
    return talk.words[number.end : number.end + 1] == ["for"] and name is not None and name.get("horse") is not None


def _right_beside(talk: Talk, run: list[Mention], olds: list[Mention], new: Mention) -> bool:
    """ "Contracted heels behind, I mean in front, and a crack in the left front": nothing but the cue between.

    So in "new shoes on his hinds, no, his fronts, and the hinds are reset".
    """
    if not olds:
        return False
    gap = talk.words[olds[-1].end : run[0].start] + talk.words[run[-1].end : new.start]
    closed = talk.words[new.end : new.end + 1] in ([","], ["."], [])
    return set(gap) <= ({",", "on", "in", "under", "the", "his", "her"} if closed else {",", "his", "her"})


def _another_named(talk: Talk, cue: Mention) -> bool:
    """ "Lasso six weeks, Twister, make it four": a name right before "make it" has a number of its own."""
    at = cue.start
    while at and talk.words[at - 1] in _BEFORE_ASSESSED:
        at -= 1  # "Twister, let's call it four", "Twister, uh, make it four"
    name = talk.mention_ending(at)
    said = talk.words[cue.start : cue.end]
    return (
        any(said[-len(words) :] == words for words in ASSESSED) and name is not None and name.get("horse") is not None
    )


def _wrong_way_round(talk: Talk, run: list[Mention]) -> bool:
    """ "I had that backwards, … it's the left hind": the foot named last, however far back."""
    return any("backwards" in talk.words[m.start : m.end] for m in run)


def _several_feet(mentions: list[Mention]) -> bool:
    return len({m.readings["feet"] for m in mentions if m.get("feet") is not None}) > 1


def _segment_end(talk: Talk, index: int) -> int:
    """The end of the repair: the next comma or stop after its first mention, or a few words on."""
    begun = False
    for at in range(index, min(len(talk.words), index + _REPAIR_REACH)):
        word = talk.words[at]
        if not begun and talk.words[at - 2 : at] in (["was", "the"], ["'s", "the"], ["is", "the"]):
            begun = True  # "hold on, I was turned around, it was the right front"
        if word in SENTENCE_ENDS or (begun and word in (",", "and", "but", "so")):
            return at
        found = talk.mention_starting(at)
        begun = begun or (found is not None and kind_of(found) is not None)
    return min(len(talk.words), index + _REPAIR_REACH)
