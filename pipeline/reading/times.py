"""When to come back: weeks, fortnights and months that are said of the next visit and of nothing else."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.lasting import book_work, couple_of, lasts, since_seen
from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.set_against import INSTEAD
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.until_a_call import from_here_on, otherwise, until_a_call
from pipeline.reading.was_there import has_been_so, in_arrears, worn_by
from pipeline.reading.wishes import weeks_wished
from pipeline.record import Status, value_problem
from pipeline.vocabulary import CLASS_SLOTS

WEEKS_PER_UNIT = {"day": Fraction(1, 7), "week": Fraction(1), "fortnight": Fraction(2), "month": Fraction(4)}
_PAST_AFTER = frozenset({"ago", "back", "since", "overdue", "late", "old", "past", "before", "early", "of"})
_MOST_WEEKS, _OF_HIM = 16, frozenset({"for", "on"})
_RESTING = frozenset({"box", "stall", "rest", "spell", "turnout", "old", "bute", "antibiotics"})
_HAD_OR_RESTED = frozenset({"had", "spell", "spelling", "spelled", "rest", "resting", "rested"})
_PALS = frozenset({"girl", "boy", "lad", "lass", "son", "man", "fella", "feller", "fellow", "mate", "friend", "pal"})
_PAST_BEFORE = frozenset({"last", "past", "been", "gone", "every", "after", "previous", "over", "another's", "went"})
_OTHER_TIMES = frozenset({
    "took", "taken", "foals", "foaling", "runs", "races", "sells", "ships", "competes", "turned", "lame", "antibiotics",
    "bute", "rest",
})  # fmt: skip
_TURNING = frozenset({"actually", "no", ",", "sorry", "wait", "well", "and", "but", "hang", "hold", "on"})
_SCORED, _KEPT_TO = ("body_condition", "cresty_neck", "obel"), (["'s", "on", "since"], ["is", "on", "since"])
_ON_WEEKS = frozenset({"'s", "is", "in", "on", "at", "for", "can", "go", "back", "due", "again", "goes", "stays", ","})
_OF_USE, _USUAL = 2, frozenset({"usual", "normal", "regular"})  # tokens of "his usual"
_SETTLED = frozenset(
    {"say", "saying", "said", "call", "make", "write", "put", "told", "tell", "mark", "book", "rather", "sooner"}
)
_I_SAID = (
    ["i", "said"], ["i", "'d", "said"], ["i", "had", "said"], ["i", "told"], ["i", "'d", "told"], ["i", "had", "told"],
    ["we", "said"], ["we", "'d", "said"], ["we", "had", "said"],
)  # fmt: skip
_MOVED = (["down", "to"], ["up", "to"], ["back", "to"], ["in", "to"], ["out", "to"])
_MOVING = frozenset(
    {"coming", "comes", "going", "goes", "bringing", "moving", "cutting", "dropping", "putting", "pulling"}
)
_MAKE_IT = (["make", "it"], ["make", "that"], ["call", "it"], ["call", "that"], ["'s", "say"], ["'ll", "say"])
_CLOSING = frozenset({",", ".", "and", "or", "if", "unless", "with", "sedated", "please"})
_SEEING, _HIM = frozenset({"see", "seeing", "want", "have", "do", "doing"}), (["him"], ["her"], ["them"], ["you"])
_WANTING, _NEEDING = frozenset({"want", "'d", "need", "'ll"}), frozenset({"needs", "must", "should", "better", "keep"})
_TO_BE = (["to", "be"], ["'ll", "be"], ["will", "be"], ["wants", "doing"], ["wants", "done"], ["wants", "seeing"])
_BACK_IN = (
    ["back", "in"], ["back", "at"], ["book", "for"], ["again", "in"], ["again", "at"], ["time", "in"], ["visit", "in"],
    ["due", "in"], ["doing", "in"], ["trip", "in"], ["booked", "for"], ["down", "for"],
)  # fmt: skip
_COMING_BACK = frozenset(
    {"of", "them", "in", "on", "at", "for", "again", "back", "due", "can", "go", "are", "'re", "to"}
)
_LEFT_OUT = frozenset({"bar", "except", "but", "barring", "for", "from"})
_ASKED = frozenset({"asked", "wanted", "asking", "liked"})
_NAMED_BY = frozenset({
    "for", "at", "on", "in", "to", "'s", "are", "is", "both", "gets", "get", "goes", "go", "back", "again", "so",
    "likes", "wants", "needs", "every", "it", "say", "past", "over", "than",
})  # fmt: skip
_TOLD = frozenset({*CLASS_SLOTS, "feet", "zones", "measures", "units"})


def draft_times(talk: Talk, names: set[int]) -> None:
    """A ``next_visit_weeks`` draft for every interval said of the next visit; ``names`` are the tokens of horses."""
    framed = told = False
    for sentence in talk.sentences():
        counting = [(s, m) for s in sentence for m in s.mentions if m.number is not None or "units" in m.readings]
        if not counting:
            framed = framed and _names_first(talk, sentence, names)
            continue
        intervals = [_timed(talk, m) for _, m in counting]
        framed = (
            any(intervals)
            or _several_told(talk, sentence, names)
            or (framed and (_names_first(talk, sentence, names) or _made_it(talk, sentence)))
            or (told and _name_and_weeks(talk, sentence, names))
        )
        told = told or framed
        for (segment, mention), timed in zip(counting, intervals, strict=True):
            if timed is not None:
                value, end, start = timed
                if not _not_next(talk, sentence, segment, mention, timed):
                    _add(segment, value, start, end)
                    book_work(talk, min(start, (mention.stands_for or mention).start))
            elif (
                _back_in(talk, segment, mention)
                or _for_the_pair(talk, sentence, mention)
                or otherwise(talk, sentence, mention)
                or (framed and mention.number is not None and _bare(talk, segment, mention, names))
            ):
                value = mention.number.value if mention.number is not None else Fraction(0)
                _add(segment, value, mention.start, mention.end)
        _keep_told(talk, sentence)


def _names_first(talk: Talk, sentence: list[Segment], names: set[int]) -> bool:
    """Whether a horse's name opens the sentence, or follows its number: "no, eight for Corny"."""
    told = any(m.number and m.end + 1 in names and talk.words[m.end] in _OF_HIM for s in sentence for m in s.mentions)
    start = sentence[0].start
    while start < sentence[-1].end and talk.words[start] in _TURNING:
        start += 1  # "actually no, Boots gets seven"
    return start in names or told


def _made_it(talk: Talk, sentence: list[Segment]) -> bool:
    """ "Three weeks. No, the vet has to see him first, so let's make that four": the weeks just told, put right."""
    if talk.words[sentence[0].start] not in _TURNING:
        return False
    numbers = [m for m in sentence[-1].mentions if m.number is not None and m.end == sentence[-1].end]
    return any(talk.words[m.start - 2 : m.start] in _MAKE_IT for m in numbers)


def _name_and_weeks(talk: Talk, sentence: list[Segment], names: set[int]) -> bool:
    """ "Buck's on eight.": nothing but a horse and a number, in a memo that told another's weeks before."""
    number = next((m for m in sentence[-1].mentions if m.number is not None and m.end == sentence[-1].end), None)
    if number is None or sentence[0].start not in names:
        return False
    between = [talk.words[i] for i in range(sentence[0].start, number.start) if i not in names]
    if between and between[-1] in _USUAL and between[-2:-1] in (["his"], ["her"], ["their"], ["the"]):
        between = between[:-2]  # "Buck's on his usual eight."
    return between[-1:] in (["in"], ["on"], ["at"], ["for"]) and set(between) <= _ON_WEEKS


def _back_in(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Back in 4.": nothing else is counted in coming back."""
    number = mention.number
    if number is None or mention.dropped or number.aughts is not None or number.plural:
        return False  # "put him back in threes" are sizes
    closes = _CLOSING.issuperset(talk.words[mention.end : mention.end + 1])
    back = closes and coming_back(talk, mention) and number.value <= _MOST_WEEKS
    return back and not segment.having("feet")


def coming_back(talk: Talk, mention: Mention) -> bool:
    """Whether the number, or the one it was put right from, stands behind "back in", "see him in", "see Buck in"."""
    at = (mention.stands_for or mention).start
    name = talk.mention_ending(at - 1)
    who = name.start if name and "horse" in name.readings else (at - 2) * (talk.words[at - 2 : at - 1] in _HIM)
    seen = who > 0 and talk.words[at - 1] == "in" and talk.words[who - 1] in _SEEING
    seen = seen or talk.words[who - 1 : at : 2] == ["want", "at"]  # "I want her at four"
    return seen or talk.words[at - 2 : at] in _BACK_IN


def _for_the_pair(talk: Talk, sentence: list[Segment], mention: Mention) -> bool:
    """ "Both in six.", "the pair of them again in seven.": of all horses told of, with nothing else in the sentence."""
    number = mention.number
    if number is None or mention.dropped or number.aughts is not None or mention.end != sentence[-1].end:
        return False
    led = talk.words[mention.start - 1] in ("in", "on", "at", "for")
    if not led and talk.words[mention.start - 2 : mention.start] != ["go", "to"]:
        return False
    start = sentence[0].start
    told = next((m for m in talk.starting_in(start, start + 2) if m.get("horse_cues") in ("pair", "all")), None)
    if told is None or not 1 < number.value <= _MOST_WEEKS:
        return False
    return set(talk.words[told.end : mention.start]) <= _COMING_BACK


def _several_told(talk: Talk, sentence: list[Segment], names: set[int]) -> bool:
    """ "Five on Jubal, six on Jubilee": two numbers with a horse each count weeks without the word."""
    ends = [m.end for s in sentence for m in s.mentions if m.number is not None and not m.number.plural]
    return len(ends) > 1 and sum(at + 1 in names and talk.words[at] in _OF_HIM for at in ends) > 1


def _timed(talk: Talk, mention: Mention) -> tuple[Fraction, int, int] | None:
    """Weeks, end and start token of a number with a time unit, or of "a month", "a fortnight"."""
    if mention.number is not None and not mention.dropped:
        after = talk.mention_starting(mention.end)
        if after is not None and after.get("units") in WEEKS_PER_UNIT:
            return mention.number.value * WEEKS_PER_UNIT[after.readings["units"]], after.end, mention.start
        own = after is not None and after.is_any(("measures", "units"))
        old = talk.mention_starting(mention.stands_for.end) if mention.stands_for is not None else None
        if old is not None and old.get("units") in WEEKS_PER_UNIT and not own:
            return mention.number.value * WEEKS_PER_UNIT[old.readings["units"]], mention.end, mention.start
        return None
    unit = mention.get("units")
    few = couple_of(talk, mention.start) if unit is not None and unit != "day" and unit in WEEKS_PER_UNIT else None
    if unit is not None and few is not None:
        return 2 * WEEKS_PER_UNIT[unit], mention.end, few
    if unit in WEEKS_PER_UNIT and unit != "day" and mention.start and talk.words[mention.start - 1] == "a":
        return WEEKS_PER_UNIT[unit], mention.end, mention.start - 1
    return None


def _till_stop(words: list[str]) -> list[str]:
    return words[: words.index(".")] if "." in words else words


def _not_next(
    talk: Talk, sentence: list[Segment], segment: Segment, mention: Mention, timed: tuple[Fraction, int, int]
) -> bool:
    weeks, end, start = timed
    after = talk.words[end] if end < len(talk.words) else "."
    before = talk.words[max(segment.start, start - 3) : start]
    if until_a_call(talk, sentence, segment, start, end, weeks):
        return True
    kept_to = [*before[-2:], after] in _KEPT_TO
    if (after in _PAST_AFTER and not kept_to) or (after == "behind" and in_arrears(talk, segment, start, end)):
        return True
    led = set(since_seen(talk.words[segment.start : start]))
    if "rest" in led and talk.words[talk.words.index("rest", segment.start) + 1] == "of":
        led.remove("rest")  # "the rest of his are fine until I'm back in four weeks"
    if led & _OTHER_TIMES or after in ("off", "into") or talk.words[end : end + 2] in (["in", "."], ["in", ","]):
        return True  # "the abscess took six weeks", "he's had six weeks off", "he lost it six weeks in"
    if (before[-1:] in (["him"], ["her"], ["it"]) and led & _HAD_OR_RESTED) or before[-2:] == ["was", "off"]:
        return True  # "they've had him six weeks", "spell her ten days"
    limited = before[-2:] in (["go", "past"], ["go", "over"], ["go", "beyond"], ["day", "over"])
    treated = before[-1:] == ["for"] and any(d.slot == "treatment" for d in segment.drafts)
    if treated or has_been_so(talk.words[end : end + 3]):
        return True  # "poultice for three days", "three weeks I've had her in wedges"
    if before[-1:] == ["every"] and weeks >= 1 and _from_now_on(talk, sentence, segment, start):
        return False
    if (set(before) & _PAST_BEFORE and not limited) or lasts(talk, segment, start, end) or before[-1:] == ["these"]:
        return True
    if "let" in led and led & {"they", "had", "owners"} and not led & {"'ll", "will", "can", "should"}:
        return True  # "they'd let him go nine weeks"
    had_on = before[-2:] in (["them", "on"], ["those", "on"], ["these", "on"]) and "had" in led
    if had_on or talk.words[end : end + 2] == ["left", "in"]:
        return True  # "he'd only had them on three weeks"
    if after in ("on", "in") and worn_by(talk, end + 1, led):
        return True  # "there's only three weeks on them"
    addressed = _PALS & set(talk.words[end : end + 4])  # "see you in eight weeks, old girl"
    resting = set(_till_stop(talk.words[end : end + 3]))
    if {"with", "the"} - resting and resting & _RESTING - ({"old"} if addressed else set()):
        return True
    events = segment.having("asides", "event")
    if events and not (events[0].start > end and "or" in talk.words[end : events[0].start]):
        return True
    covering = [m for m in talk.having("times") if m.start < end and m.end > start]
    return any(m.readings["times"] in ("history", "neutral") for m in covering)


def _from_now_on(talk: Talk, sentence: list[Segment], segment: Segment, start: int) -> bool:
    """ "I want him every four weeks", "so I'm back every five": how often is what is to come, not what has been."""
    led = talk.words[segment.start : start]
    wanted = any(led[i] in ("i", "we") and _WANTING & set(led[i + 1 : i + 3]) for i in range(len(led)))
    needed = not _NEEDING.isdisjoint(led) or any(led[i : i + 2] in _TO_BE for i in range(len(led)))
    ahead = from_here_on(talk, sentence)
    ahead = ahead or (led[-2:] == ["back", "every"] and "'m" in led)
    liked = any(led[k : k + 3] in (["i", "'d", "like"], ["we", "'d", "like"]) for k in range(len(led)))  # no past
    return liked or (not segment.past and (wanted or needed or ahead))


def _bare(talk: Talk, segment: Segment, mention: Mention, names: set[int]) -> bool:
    """ "Five for Whiskey", "Sorrel in five", "on six": a number beside a horse's name counts weeks too."""
    number = mention.number
    if number is None or number.aughts is not None or not 1 <= number.value <= 20 or mention.dropped or number.plural:
        return False
    if any(d.start <= mention.start < d.end for d in segment.drafts):
        return False
    if any(at + len(form) == mention.start for at, form in INSTEAD.within(talk.words, segment.start, mention.start)):
        return False  # "make it four weeks rather than six"
    if any(m.get("measures") in _SCORED for s in talk.sentence(segment.sentence) for m in s.mentions):
        return False  # "condition, Mulga six, Drover four"
    after = talk.words[mention.end] if mention.end < len(talk.words) else "."
    if (after in ("for", "on") and mention.end + 1 in names) or mention.end in names:
        return True
    if the_horse_behind(talk, mention.end) or the_horse_before(talk, mention.start):
        return True
    named = any(i in names for i in range(segment.start, mention.start))
    said_at = (mention.stands_for or mention).start  # "in four, I mean five"
    said_at -= _OF_USE if said_at > _OF_USE and talk.words[said_at - 1] in _USUAL else 0  # "on his usual six"
    before = talk.words[said_at - 1] if said_at else ""
    others = [m for m in segment.mentions if m.get("horse_cues") in ("others", "pair")]
    told = any(m.end == mention.start or (m.start < mention.start and before == "on") for m in others)
    so_it_is = talk.words[max(0, said_at - 3) : said_at] == ["so", "it", "'s"]
    settled = _settled(talk, segment, mention)
    if (so_it_is or before in ("so", "likes", "wanted") or settled) and not segment.having("feet"):
        near = [s for s in talk.segments if s.horse == segment.horse and 0 <= segment.sentence - s.sentence <= settled]
        if any(d.slot == "next_visit_weeks" for s in near for d in s.drafts):
            return True
    again = before == "in" and said_at > 1 and talk.words[said_at - 2] in ("again", "back")
    if again and after in (".", ","):
        return True  # "the ride's in six weeks so he wants doing again in five"
    behind = before in _NAMED_BY or mention.start - 1 in names or before in (",", "uh", "um") or told or settled
    named = named or any(m.start < mention.start for m in others)
    named = named or mention.stands_for is not None or _name_before(segment, talk, names)
    return named and behind and (told or not _on_a_foot(segment))


def _on_a_foot(segment: Segment) -> bool:
    """Whether a foot is named; "the other two" are horses where weeks are dealt out."""
    others = {m.start for m in segment.mentions if m.get("horse_cues") in ("others", "pair")}
    return any(m.start not in others for m in segment.having("feet"))


def _settled(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "So let's say six", "write down four", "I told them six", said with nothing else that is counted."""
    before = talk.words[max(segment.start, mention.start - 3) : mention.start]
    closes = talk.words[mention.end : mention.end + 1] in ([","], ["."], [], ["and"], ["but"])
    return closes and bool(_SETTLED & set(before)) and not segment.having("measures")


def the_horse_behind(talk: Talk, at: int) -> bool:
    """ "Ten weeks Bodkin, six for the mare": a horse that is not named again."""
    words = talk.words[at : at + 3]
    return len(words) == 3 and words[0] in ("for", "on") and words[1] == "the" and words[2] in HORSE_WORDS


def the_horse_before(talk: Talk, at: int) -> bool:
    """ "Setanta in a week and herself in five"."""
    return talk.words[at - 1] in ("in", "at") and talk.words[max(0, at - 2)] in ("herself", "himself")


def _name_before(segment: Segment, talk: Talk, names: set[int]) -> bool:
    """ "Buck, uh, ten": the segment before is the horse's name alone."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or before.sentence != segment.sentence:
        return False
    led = talk.words[before.end - 1] in ("in", "at", "for", "on") and before.end - 2 in names
    last = before.end - 2 if talk.words[before.end - 1] == "'s" else before.end - 1
    left_out = last > 0 and talk.words[last - 1] in _LEFT_OUT  # "six weeks bar Buck, he's at four"
    return led or (last in names and (left_out or not before.drafts))


def _add(segment: Segment, value: Fraction, start: int, end: int) -> None:
    if value_problem("next_visit_weeks", float(value)):
        return
    draft = Draft("next_visit_weeks", value, segment, start, end, status=Status.PLANNED)
    draft.evidence.update(range(start, end))
    draft.note("next visit: an interval")
    segment.draft(draft)


def _but_this(talk: Talk, later: list[Segment], said: list[Draft]) -> bool:
    """ "I said five but with those glue-ons, four": a number alone behind the "but" is the one that stands."""
    turned = next((i for i, s in enumerate(later) if s.joined_by("but", ", but")), None)
    if turned is None:
        return False
    for segment in later[turned:]:
        number = next((m for m in segment.mentions if m.number and not m.dropped), None)
        words = set(talk.words[segment.start : segment.end])
        if number is None or number.number is None or any(d.start == number.start for d in segment.drafts):
            continue
        alone = segment.end - segment.start == number.end - number.start or words & {"make", "say", "call"}
        closes = bool(alone) or _moved_to(talk, segment, number) or _brought_to(talk, segment, number)
        if closes and number.number.value <= _MOST_WEEKS and number.number.aughts is None:
            _add(segment, number.number.value, number.start, number.end)
            for draft in said:
                draft.drop("said at first")
            return True
    return False


def _moved_to(talk: Talk, segment: Segment, number: Mention) -> bool:
    """ "… but they're away, so she's going on to seven", "so it'll be five": nothing else is told."""
    led = talk.words[number.start - 1] in ("to", "be", "for", "'s", "on") and number.end == segment.end
    return led and not any(m.is_any(_TOLD) for m in segment.mentions)


def _brought_to(talk: Talk, segment: Segment, number: Mention) -> bool:
    """ "I'd said six weeks, but with that in it he's coming down to five": the weeks are moved, and no measure."""
    led = talk.words[max(segment.start, number.start - 2) : number.start]
    closes = talk.words[number.end : number.end + 1] in ([","], ["."], [], ["and"], ["now"], ["instead"], ["for"])
    counted = any(m.is_any(("measures", "gaits")) for m in segment.mentions) or _on_a_named_foot(segment)
    return closes and led in _MOVED and bool(_MOVING & set(talk.words[segment.start : number.start])) and not counted


def _on_a_named_foot(segment: Segment) -> bool:
    return any(m.get("feet") not in ("in_hand", "pair_in_hand") for m in segment.having("feet"))


def _keep_told(talk: Talk, sentence: list[Segment]) -> None:
    """ "They asked for eight weeks but I told them six": what was asked for is no plan."""
    for position, segment in enumerate(sentence):
        asked = [d for d in segment.drafts if d.slot == "next_visit_weeks"]
        if not asked:
            continue
        words = talk.words[segment.start : segment.end]
        buts = [s for s in sentence[position + 1 :] if s.delimiter in ("but", ", but")]
        overruled = any({"told", "said"} & set(talk.words[s.start : s.end]) for s in buts)
        if (words[:2] in _I_SAID or words[:3] in _I_SAID) and _but_this(talk, sentence[position + 1 :], asked):
            continue
        overruled = overruled or weeks_wished(talk, segment, sentence[position + 1 :])
        if not (_ASKED & set(words) or ("too" in words and "long" in words) or overruled):
            continue
        for later in sentence[position + 1 :]:
            told = next((m for m in later.mentions if m.number and not m.dropped), None)
            have = any(d.slot == "next_visit_weeks" for d in later.drafts)
            if told is not None and told.number is not None and not have:
                _add(later, told.number.value, told.start, told.end)
                have = True
            if have:
                break
        else:
            have = _told_already(talk, sentence, position)
        if have:
            for draft in asked:
                draft.drop("asked for, not agreed")


def _told_already(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """ "Six weeks, she wanted eight", "Five weeks. They asked for six.": told before, and nothing agreed behind."""
    segment = sentence[position]
    before = sentence[:position] or talk.sentence(segment.sentence - 1)
    told = [d for s in before if s.horse == segment.horse for d in s.drafts if d.slot == "next_visit_weeks"]
    return bool(told) and position == len(sentence) - 1 and "so" not in talk.words[segment.start : segment.end]
