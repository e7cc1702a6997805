"""What is said anew without a cue: "fifty, er, fifty two"; "I said six, it was seven"; "medial, not lateral"."""

from __future__ import annotations

import itertools

from pipeline.reading.both_after_all import widen_to_both
from pipeline.reading.clipped import complete_quality
from pipeline.reading.exchanges import counts, kind_of, put_in_place, said_again, swap, take_from_the_foot, window
from pipeline.reading.mentions import Mention
from pipeline.reading.not_that import tell_again
from pipeline.reading.sayings import Sayings
from pipeline.reading.slips import drop_slips
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET
from pipeline.vocabulary import CLASS_SLOTS

_OPPOSITE = {"medial": "lateral", "lateral": "medial"}
_OR_WAS_IT = Sayings(
    "or was it", "or is it", "or was that", "or did i say", "or did we say", "or were they", "or was it a"
)
_ARTICLES = frozenset({"a", "an", "of", "to", "the"})
_LONGEST_OR, _NEAR_DEGREE = 7, 8  # words from the one number ("weeks , or did i say"), or degree, to the other
_FRAMED = 2  # the commas around "let me look again"
_NAMED_WITHIN = 5  # tokens from a number that is denied to the comma: "not six nails in that left front, five"
_INSTEAD = frozenset(
    {",", "but", "he", "she", "it", "they", "'s", "'re", "is", "are", "that", "a", "an", "more", "like"}
)
_I_SAID = Sayings("did i say", "i told you", "i said", "i told", "i wrote", "i put", "i had", "i marked", "i 've got")
_NOTED = frozenset({"sheet", "card", "book", "down", "form", "page", "phone", "paper", "diary"})
_ON_THE_SHEET = _NOTED | {"on", "in", "my", "more", "only", "like", "just", "now", "i", "'d", "call", "say"}
_MORE_THAN, _LET_ME = Sayings("more than"), Sayings("let me")
_NOT, _NOT_SO, _THAN = frozenset({"not"}), frozenset({"not", "n't"}), frozenset({"than"})
_HALTS = frozenset({",", "uh", "um", "er", "erm", "no", "sorry"})
_PAUSES = frozenset({",", "uh", "um", "er", "erm", "eh"})
_PUTTING = frozenset({"put", "had", "marked", "'ve"})
_SAYING = frozenset({"said", "say", "thought", "told", "called", "call", "wrote", "put"})
_PLACED = ("findings", "tester_responses", "zones", "shoe_states")
_AT_THE = frozenset({",", "but", "the", "in", "at", "on", "over", "now", "it", "'s", "is"})
_IT_IS = (["it", "'s"], ["it", "is"], ["they", "'re"], ["they", "are"], ["that", "'s"])
_BOOKED = (None, "week", "fortnight", "month")
_IT_WAS = frozenset(
    [
        "took", "?", "i", "meant", "mean", "nails", "nail", "all", "of", "the", ",", ".", "it", "was", "'s", "is",
        "that", "but", "should", "be", "no", "make", "they", "'re", "wrong", "not", "right", "a", "an", "mistake",
        "mistaken", "incorrect", "actually", "really", "rather", "instead", "size", "sorry", "well",
    ]
)  # fmt: skip
_CALLING = frozenset(
    {"i", "'d", "would", "say", "call", "it", "him", "her", "that", "'s", "more", "like", "nearer", "closer", "to", "a"}
    | {"maybe", "perhaps", "probably", "make", "only", "just", "'ll", "put", "at", "no", "we", "think", "reckon"}
)  # "two, well, I'd call it one", "… well, more like one"
_CUES, _WOULD = frozenset({"call", "make", "put"}), frozenset({"'d", "would", "'ll"})  # alone, cues take back
_CLOSED: tuple[list[str], ...] = ([], ["."], [","], ["really"], ["maybe"], ["probably"], ["perhaps"])
_SAID_OVER = tuple(name for name in CLASS_SLOTS if name not in ("tester_responses", "pulses"))
_OF_ITS_OWN = (*CLASS_SLOTS, "feet", "zones", "horse")


def restate(talk: Talk) -> None:
    """Exchange, on the mentions, what was begun anew, said wrongly before, or only denied."""
    drop_slips(talk)
    tell_again(talk)
    widen_to_both(talk)
    complete_quality(talk)
    _restart(talk)
    _one_or_other(talk)
    _looked_again(talk)
    _said_before(talk)
    _would_not_say(talk)
    _not_that_number(talk)
    _this_not_that(talk)
    _more_than_that(talk)
    _more_this_than_that(talk)
    _well_in_degree(talk)
    _well_in_number(talk)


def _one_or_other(talk: Talk) -> None:
    """ "Six weeks, or was it five. Five.": of two numbers the one that is then said alone."""
    numbers = [m for m in talk.having("number") if m.number is not None] if talk.tells(_OR_WAS_IT) else []
    for first, second, last in zip(numbers, numbers[1:], numbers[2:], strict=False):
        between = talk.words[first.end : second.start]
        asked = any(between[-len(words) :] == words for words in _OR_WAS_IT.forms)
        alone = talk.words[second.end : last.start] in (["."], [","], ["?"])
        closed = talk.words[last.end : last.end + 1] in (["."], [","], [])
        if not (asked and alone and closed) or len(between) > _LONGEST_OR:
            continue
        if said_again(second, last, "number"):
            swap(talk, first, second, "number")
            last.dropped = True
        elif said_again(first, last, "number"):
            second.dropped = last.dropped = True


def _looked_again(talk: Talk) -> None:
    """ "Crest three, let me feel it again, four": a number, a look at it, and a number."""
    numbers = [m for m in talk.mentions if m.number is not None and not m.dropped] if talk.tells(_LET_ME) else []
    for first, second in itertools.pairwise(numbers):
        between = talk.words[first.end : second.start]
        led = between[:3] == [",", "let", "me"] and between[-1] == "," and between.count(",") == _FRAMED
        if led and counts(talk, second) in (None, counts(talk, first)):
            swap(talk, first, second, "number")


def _zone_restart(talk: Talk) -> None:
    """ "Lateral side, uh, medial": the other side of the foot, said after a filler."""
    zones = [m for m in talk.having("zones") if m.readings["zones"].split("_")[0] in _OPPOSITE]
    for first, second in itertools.pairwise(zones):
        between = talk.words[first.end : second.start]
        side, other = (str(m.get("zones")).split("_")[0] for m in (first, second))
        fillers = _HALTS.issuperset(between) and set(between) - {","}
        if (fillers and _OPPOSITE.get(side) == other) or between == [",", "well", ","]:
            put_in_place(talk, first, second, "zones")


def _restart(talk: Talk) -> None:
    """ "Fifty, er, fifty two": a number begun anew after a filler."""
    _zone_restart(talk)
    numbers = [m for m in talk.mentions if m.number is not None]
    for first, second in itertools.pairwise(numbers):
        between = talk.words[first.end : second.start]
        if not between or between[0] not in {*_PAUSES, "and"}:
            continue
        begun = between == ["and", ","] and first.number is not None and _begun_anew(first, second)
        fillers = _PAUSES.issuperset(between) and set(between) - {","}
        if not (fillers or begun):
            continue
        counted, again = counts(talk, first), counts(talk, second)
        sized = first.number is not None and first.number.aughts is not None
        if (counted not in (None, again) and again is not None) or (sized and again is not None):
            continue  # "double aught, uh, five nails" counts two things
        swap(talk, first, second, "number")


def _begun_anew(first: Mention, second: Mention) -> bool:
    """ "Three and, three and five eighths": the whole number is said again with its part."""
    one, other = first.number, second.number
    return one is not None and other is not None and one.value == int(other.value) and other.value.denominator > 1


def _said_before(talk: Talk) -> None:
    """ "I said six, it was seven": the six of before is exchanged, wherever it was said."""
    for index, words in talk.turns(_I_SAID):
        begin = index + len(words)
        begin += talk.words[begin : begin + 1] in (["a"], ["an"], ["the"])
        again = talk.mention_starting(begin)
        if again is not None and again.number is None and again.get("measures"):
            again = talk.mention_starting(again.end) or again  # "I said size one"
        kind = kind_of(again) if again is not None else None
        if again is None or kind is None:
            continue
        behind = [m for m in talk.mentions if m.start >= again.end and m.get("feet") != "in_hand"]  # "on that corn"
        new = next((m for m in behind if not m.dropped and kind_of(m) == kind), None)
        olds = [m for m in talk.mentions if m.end <= index and not m.dropped and kind_of(m) == kind]
        counted = counts(talk, again)
        if kind == "number" and counted is not None:
            olds = [m for m in olds if counts(talk, m) == counted] or olds
        olds = [m for m in olds if said_again(m, again, kind) or m.readings.get(kind, "") == again.readings.get(kind)]
        olds = _of_the_horse(talk, index, olds)
        between = set(talk.words[again.end : new.start]) if new is not None else set()
        noted = not _NOTED.isdisjoint(between) and "but" in between
        put = words[1] in _PUTTING and not noted  # "I put six in front, seven behind"
        if new is not None and olds and not put and between <= (_IT_WAS | _ON_THE_SHEET if noted else _IT_WAS):
            again.dropped = True
            if kind == "feet":
                olds[-1].readings["feet"] = new.readings["feet"]
                continue
            _stand_for(talk, olds[-1], new, kind)


def _of_the_horse(talk: Talk, at: int, olds: list[Mention], *, back: bool = False) -> list[Mention]:
    """ "And Tally, I said size one": what was said of the horse that is named there, or ``back`` in any sentence."""
    names = [m for m in talk.having("horse") if m.start < at]
    if not names or (not back and SENTENCE_ENDS & set(talk.words[names[-1].end : at])):
        return olds
    whose = [next((n for n in reversed(names) if n.start < m.start), None) for m in olds]
    same = [m for m, n in zip(olds, whose, strict=True) if n is not None and n.get("horse") == names[-1].get("horse")]
    return same if back else same or olds


def _stand_for(talk: Talk, old: Mention, new: Mention, kind: str) -> None:
    """The new word instead of the old; a number of an earlier sentence stays there, on its horse and its feet."""
    elsewhere = bool(SENTENCE_ENDS & set(talk.words[old.end : new.start]))
    if old.number is None or new.number is None:
        swap(talk, old, new, kind)
        return
    if not elsewhere or counts(talk, old) in _BOOKED:
        old.dropped = True
        new.stands_for = old
        return
    old.number = new.number
    old.literal = (*old.literal, *new.literal)
    new.dropped = True


def _would_not_say(talk: Talk) -> None:
    """ "I wouldn't even say three": a number that is only denied."""
    for mention in [m for m in talk.mentions if m.number is not None] if talk.says(_WOULD) else ():
        before = talk.words[max(0, mention.start - 5) : mention.start]
        if before[-1:] in (["say"], ["call", "it"]) and "would" in before and {"n't", "not"} & set(before):
            mention.dropped = True


def _not_that_number(talk: Talk) -> None:
    """ "He's not six weeks, he's five", "it's not a two but a three": the second number counts what the first did."""
    numbers = [m for m in talk.mentions if m.number is not None and not m.dropped] if talk.says(_NOT_SO) else []
    for wrong, right in itertools.pairwise(numbers):
        before, between = range(max(0, wrong.start - 2), wrong.start), talk.words[wrong.end : right.start]
        if _NOT_SO.isdisjoint([talk.words[i] for i in before]):
            continue
        turn = next((i for i, word in enumerate(between) if word in (",", "but")), len(between))
        alike = counts(talk, right) in (None, counts(talk, wrong))
        if not (alike and turn <= _NAMED_WITHIN and set(between[turn:]) <= _INSTEAD and between[turn:]):
            continue
        wrong.dropped = True
        right.stands_for = _taken_back(talk, wrong, right) or wrong
        for cue in [m for m in talk.mentions if m.start in before]:
            cue.readings.pop("denials", None)


def _taken_back(talk: Talk, wrong: Mention, right: Mention) -> Mention | None:
    """ "Size two, no, not a two, a three": the two of before goes as well, not that of other feet named behind it."""
    begin = window(talk, wrong.start)
    told = [m for m in talk.mentions if begin <= m.start < wrong.start and m.number is not None and not m.dropped]
    if not told or not said_again(told[-1], wrong, "number"):
        return None
    between = [m for m in talk.mentions if told[-1].end <= m.start < right.start]
    if any(m.get("feet") for m in between) or not any(m.get("taking_back") for m in between if m.end <= wrong.start):
        return None
    told[-1].dropped = True
    return told[-1]


def _this_not_that(talk: Talk) -> None:
    """ "Medial, not lateral"; "it's the left hind, not the right": the word behind "not" was said before in error."""
    said = set(talk.where(_NOT))
    for cue in [m for m in talk.mentions if m.start in said and m.end - m.start == 1] if said else ():
        if _place_to_come(talk, cue):
            continue
        at = cue.end + 1 if talk.words[cue.end : cue.end + 1] == ["the"] else cue.end
        wrong = talk.mention_starting(at)
        before = cue.start - 1 if cue.start and talk.words[cue.start - 1] == "," else cue.start
        right = talk.mention_ending(before)
        if wrong is None or right is None:
            continue
        kinds = ("feet", "zones", "severities", *(_SAID_OVER if _should_be(talk, right) else ()))
        for kind in kinds:
            if wrong.get(kind) is not None and right.get(kind) is not None:
                _exchange_earlier(talk, kind, right, wrong, cue)


def _place_to_come(talk: Talk, cue: Mention) -> bool:
    """ "Thrush in the, uh, not the sulcus, the commissure": behind a finding without a place, the wrong one goes."""
    told = [m for m in talk.mentions if m.end <= cue.start and not m.dropped and m.is_any(_PLACED)]
    places = [m for m in talk.having("zones") if told and m.start >= cue.end]
    if len(places) < 2 or talk.words[cue.start - 1] != "," or told[-1].get("zones"):
        return False
    wrong, between = places[0], talk.words[places[0].end : places[1].start]
    if (
        "," not in between
        or not {*talk.words[cue.end : wrong.start], *between} <= _AT_THE
        or SENTENCE_ENDS & set(talk.words[told[-1].end : cue.start])
    ):
        return False
    cue.readings.pop("denials", None)
    wrong.dropped = True
    return True


def _should_be(talk: Talk, right: Mention) -> bool:
    """ "Egg bars on the fronts. That should be straight bars, not egg bars": said before and put right."""
    words = [word for word in talk.words[max(0, right.start - 4) : right.start] if word not in _ARTICLES]
    return words[-2:] in (["should", "be"], ["make", "that"], ["i", "mean"], ["i", "meant"], ["should", "say"])


def _exchange_earlier(talk: Talk, kind: str, right: Mention, wrong: Mention, cue: Mention) -> None:
    told = [m for m in talk.having(kind) if m.end <= right.start]
    earlier = _of_the_horse(talk, right.start, told, back=kind == "feet")
    said = next((m for m in reversed(earlier) if _holds(m.readings[kind], wrong.readings[kind])), None)
    if said is None and kind not in ("zones", "severities"):
        return  # "toe crack in the left front, not the right front" denies it there
    cue.readings.pop("denials", None)
    wrong.dropped = True
    if said is not None and kind == "feet":
        take_from_the_foot(talk, said, right, last=said is earlier[-1])
    elif said is not None:
        if kind == "zones":
            said.readings[kind] = said.readings[kind].replace(wrong.readings[kind], right.readings[kind])
        else:
            said.readings[kind] = right.readings[kind]
        right.dropped = True


def _holds(said: str, wrong: str) -> bool:
    """Whether a word said is the wrong one, or holds it ("lateral_heel", "lateral")."""
    return said == wrong or said.startswith(f"{wrong}_")


def _more_than_that(talk: Talk) -> None:
    """ "Pulse raised. More than raised, bounding.": the stronger word stands for the first."""
    for index in [at + 1 for at, _ in talk.turns(_MORE_THAN)]:
        again, new = talk.mention_starting(index + 1), talk.mention_starting(index + 3)
        if again is None or new is None or talk.words[index + 2 : index + 3] != [","]:
            continue
        kinds = [k for k in ("pulses", "severities", "tester_responses") if again.get(k) and new.get(k)]
        olds = [m for m in talk.mentions if m.end < index and kinds and m.get(kinds[0]) == again.get(kinds[0])]
        beside = talk.mention_starting(new.end + 2) or talk.mention_starting(new.end + 1)
        if olds and beside is not None and beside.get("feet") in FEET:
            again.dropped = True  # "raised in the fronts, more than raised, bounding in the near fore": there alone
        elif olds:
            again.dropped = True
            put_in_place(talk, olds[-1], new, kinds[0])


def _more_this_than_that(talk: Talk) -> None:
    """ "Corn at the inside heel, well no, it's more bruise than corn": the one stands for the other."""
    findings = talk.having("findings") if talk.says(_THAN) else []
    for better, worse in itertools.pairwise(findings):
        lead = [w for w in talk.words[max(0, better.start - 3) : better.start] if w not in _ARTICLES]
        between = [w for w in talk.words[better.end : worse.start] if w not in _ARTICLES]
        if lead[-1:] not in (["more"], ["closer"]) or between != ["than"]:
            continue
        said = [m for m in findings if m.end <= better.start and m.get("findings") == worse.get("findings")]
        kind = better.readings["findings"]
        worse.dropped = True
        if not said:
            continue
        again = [m for m in findings if m.start > worse.end and m.get("findings") == kind]
        put_in_place(talk, said[-1], better, "findings")
        for mention in again[:1]:
            mention.dropped = "." not in talk.words[worse.end : mention.start]


def _well_in_degree(talk: Talk) -> None:
    """ "Thrush, pretty bad, well, moderate", "I said moderate to her but it's mild": the degree said last stands."""
    degrees = talk.having("severities")
    for first, second in itertools.pairwise(degrees):
        between = talk.words[first.end : second.start]
        if len(between) > _NEAR_DEGREE or not SENTENCE_ENDS.isdisjoint(between):
            continue
        it_is = between[-2:] in _IT_IS
        closed = it_is and talk.words[second.end : second.end + 1] in _CLOSED and not _another(talk, first, second)
        if between[-3:] == [",", "well", ","] or (closed and _said_first(talk, first, between)):
            if talk.words[first.end : first.end + 1] == [","]:
                first.dropped = True  # "mild, well, moderate thrush"
            else:
                put_in_place(talk, first, second, "severities")


def _another(talk: Talk, first: Mention, second: Mention) -> bool:
    """Whether a foot, a time or a thing of the trade stands between the two degrees."""
    between = [m for m in talk.mentions if first.end <= m.start < second.start]
    return any(m.is_any((*_OF_ITS_OWN, "times")) for m in between)


def _said_first(talk: Talk, first: Mention, between: list[str]) -> bool:
    """Whether the first degree was only said or thought, or is taken back by "well"."""
    led = talk.words[max(0, first.start - 4) : first.start]
    told = [i for i, word in enumerate(led) if word in _SAYING]
    said = bool(told) and bool({"i", "we", "'d", "'ve"} & set(led[: told[-1]]))
    return said or between[-5:-2] == [",", "well", ","] or between[:2] in (["i", "thought"], ["i", "said"])


def _without_calling(words: list[str]) -> list[str]:
    """The words without "I'd call it", "more like" and their like at the end."""
    rest = words[: next((i + 1 for i in range(len(words) - 1, -1, -1) if words[i] not in _CALLING), 0)]
    if rest == [".", "well", ","] and rest != words:
        return [",", "well", ","]  # "condition six. Well, I'd say five"
    return [*rest, ","] if rest[-1:] == ["well"] and rest != words else rest


def _well_in_number(talk: Talk) -> None:
    """ "Seven nails, well, six": the number said last stands, when it is said alone and counts nothing else."""
    numbers = [m for m in talk.having("number") if m.number is not None]
    for first, second in itertools.pairwise(numbers):
        between = talk.words[first.end : second.start]
        if "well" not in between:
            continue
        if _CUES.isdisjoint(between) or not _WOULD.isdisjoint(between):
            between = _without_calling(between)
        closed = talk.words[second.end : second.end + 1] in _CLOSED
        if between[-3:] != [",", "well", ","] or len(between) > _NEAR_DEGREE:
            continue
        if counts(talk, second) not in (None, counts(talk, first)):
            continue
        if closed or counts(talk, second) is not None:
            named = [m for m in talk.mentions if first.end <= m.start < second.start and m.is_any(_OF_ITS_OWN)]
            if not named and not SENTENCE_ENDS & set(between):
                swap(talk, first, second, "number")
