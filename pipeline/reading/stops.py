"""Full stops that only mark a pause: "Quarter crack, left front. Mild." is one statement.

People pause before the degree and the place, and recognisers write a full stop there.
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.stretches import TOLD, WAITING_HEADS, Stretch, next_mark
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_JUDGING = Sayings(
    "i 'd say", "i would say", "i 'd call it", "i 'd call that", "i 'd put it as", "i 'd put it at", "i 'd go", "i say",
    "i reckon", "call it", "call that", "say",
)  # fmt: skip
_MODIFIERS = ("severities", "zones")
_GRADED = (*_MODIFIERS, "feet", "fillers", "same")
_MODIFIED = frozenset({"findings", "tester_responses", "tester_heads", "gaits"})
_NO_MODIFIER = _MODIFIED | {"not_facts"}
_LITTLE = frozenset(
    {"at", "in", "on", "the", "of", "down", "just", "only", "still", "very", "and", "it", "is", "'s", "that", "its"}
    | {"one", "over", "along", "under", "near", "around", "right", "up", "his", "her", "but", "about", ","}
)
_COMPARED = frozenset({"worse", "worst", "better"})
_POINTING = frozenset({"in_hand", "pair_in_hand"})
_ANSWERED = frozenset({"findings", "pulses", "tester_responses"})
_BESIDE_FEET = frozenset({"the", "on", "in", "and", "both", "his", "her", "that", "'s", "only", "just"})
_A_PLACE = frozenset({"zones", "totals", "horse_cues", "fillers"})  # "out at the lateral quarter"
_MEASURED = {("measures", slot) for slot in ("toe_length", "heel_height", "sole_depth", "hoof_width", "toe_angle")}
_LEADS_TO_FEET = frozenset({"on", "in", "of", "under", "behind", "to", "for", "with"})
_OF_THE_HORSE = frozenset({"horse", "manners", "vet"})
_IT_IS = (["it", "'s"], ["it", "is"])
_WEEKS = frozenset({"week", "weeks", "fortnight"})
_AGO = frozenset({("measures", "obel"), ("measures", "grade"), ("times", "history")})


def soften_stops(talk: Talk) -> None:
    """Read the full stop before a sentence of nothing but degree and place as a comma, if it has what to belong to."""
    starting = talk.starting()
    told = {m.start for name in _MODIFIED for m in talk.having(name)}
    named = {m.start for m in talk.mentions if "feet" in m.readings or "work" in m.readings}
    stops = [i for i, word in enumerate(talk.words) if word in SENTENCE_ENDS]
    modified, start, opened = False, 0, 0
    timed, judging = bool(talk.having("times", "history")), talk.tells(_JUDGING)
    for number, stop in enumerate(stops):
        softened = number > 0 and talk.words[stops[number - 1]] == ","
        modified = not told.isdisjoint(range(start, stop)) or (modified and softened)
        opened = opened if softened else start
        start = stop + 1
        end = stops[number + 1] if number + 1 < len(stops) else len(talk.words)
        if talk.words[stop] != "." or start >= end:
            continue
        goes_on = modified and (_only_modifies(talk, starting, start, end) or _degree_leads(talk, starting, start, end))
        goes_on = goes_on or (judging and _judged(talk, starting, opened, start, end, modified))
        opens = not named.isdisjoint((start, start + 1))
        if not goes_on and (opens or (timed and modified)):
            before = Stretch(talk, starting, opened, stop)
            goes_on = modified and timed and _long_ago(before, Stretch(talk, starting, start, end))
            goes_on = goes_on or (opens and _its_feet(talk, before, start, starting))
            goes_on = goes_on or (opens and _leads_to_feet(talk, stop))
            goes_on = goes_on or (opens and _work_again(talk, before, start, starting))
        if goes_on:
            talk.words[stop] = ","


def _long_ago(before: Stretch, behind: Stretch) -> bool:
    """ "He'd an abscess in that foot. Two winters ago.", "… laminitis. Obel grade three, last spring": a time alone."""
    told = {pair for pair in behind.cues if pair[0] not in ("number", "fillers")}
    if ("times", "history") not in told or not told <= _AGO or before.has(("denials", "times")):
        return False
    claimed = {i for m in behind.mentions for i in range(m.start, m.end)}
    return {w for i, w in enumerate(behind.words, behind.start) if i not in claimed} <= _LITTLE


def _its_feet(talk: Talk, before: Stretch, start: int, starting: dict[int, list[Mention]]) -> bool:
    """ "Navicular, mild. Near fore. Four weeks.": feet alone that nothing behind waits for are those of before."""
    if before.has(("feet", "denials")):
        return False
    measured = before.cues & _MEASURED and talk.mention_ending(before.end) in talk.having("units")
    if not (before.has(_ANSWERED) or measured):
        return False
    first = _to_the_mark(talk, starting, start)
    named = {i for m in first.feet() for i in range(m.start, m.end)}
    rest = {w for i, w in enumerate(first.words, first.start) if i not in named}
    if not named or not rest <= _BESIDE_FEET:
        return False
    after = _to_the_mark(talk, starting, first.end + 1)
    put_right = after.has(("taking_back",)) and bool(after.feet())
    if put_right and after.has(TOLD):
        return False  # "Sidebone too. Left hind, I mean right hind has a corn"
    if put_right or (after.has(("zones",)) and after.classes <= _A_PLACE):
        after = _to_the_mark(talk, starting, after.end + 1)
    if measured and not after.has(TOLD | WAITING_HEADS | {"zones", "units"}):
        return True
    return not after.words or bool(after.feet()) or after.has(_OF_THE_HORSE) or not _WEEKS.isdisjoint(after.words)


def _leads_to_feet(talk: Talk, stop: int) -> bool:
    """ "White line's stretched at the toe on. Both fronts, mild.": not "put a new shoe on"."""
    ahead = talk.mention_ending(stop - 1) if talk.words[stop - 1] in _LEADS_TO_FEET else None
    return ahead is not None and ahead.is_any(("findings", "zones", "severities"))


def _work_again(talk: Talk, before: Stretch, start: int, starting: dict[int, list[Mention]]) -> bool:
    """ "Both hinds got their own shoes back. Reset, seven nails in the near hind": the work said over again."""
    if not before.feet():
        return False
    first = _to_the_mark(talk, starting, start)
    if not first.opens_with("work"):
        return False
    alone = [m for m in first.mentions if m.start == first.start and m.end == first.end]
    if talk.words[first.end : first.end + 1] != [","] or not alone:
        return False
    again = ("work", alone[0].get("work")) in before.cues  # or nothing was told of the feet so far
    if before.has(TOLD) and (not again or len([pair for pair in before.cues if pair[0] == "work"]) > 1):
        return False
    return bool(_to_the_mark(talk, starting, first.end + 1).feet())


def _to_the_mark(talk: Talk, starting: dict[int, list[Mention]], start: int) -> Stretch:
    """The words up to the next comma or stop."""
    end = next_mark(talk, start)
    return Stretch(talk, starting, min(start, end), end)


def _degree_leads(talk: Talk, starting: dict[int, list[Mention]], start: int, end: int) -> bool:
    """ "… in the sulcus. Bad, copper sulfate packed in", "… Both in the frog, iodine on each"; not "mild, a corn".

    "It's mild, and there's no sign of one in the left" says its degree, whatever follows.
    """
    comma = next((i for i in range(start, end) if talk.words[i] == ","), end)
    if comma < end and talk.words[start : start + 2] in _IT_IS and _only_modifies(talk, starting, start, comma):
        return True
    behind = [m for i in range(comma, end) if i in starting for m in starting[i]]
    if comma == end or any(m.is_any(_MODIFIED) for m in behind):
        return False
    if any(m.get("severities") and m.end == comma for m in starting.get(start, ())):
        return True
    return all(m.number is None for m in behind) and _only_modifies(talk, starting, start, comma)


def _judged(talk: Talk, starting: dict[int, list[Mention]], opened: int, start: int, end: int, modified: bool) -> bool:
    """ "… right hind too, in the commissure. I'd say moderate": somebody's judgement, and a degree alone behind it."""
    said = _JUDGING.at(talk.words, start)
    degree = [m for m in starting.get(start + len(said), ()) if m.get("severities")] if said else []
    if not degree or degree[0].end > end:
        return False
    if not {",", *SENTENCE_ENDS}.issuperset(talk.words[degree[0].end : degree[0].end + 1]):
        return False
    return modified or Stretch(talk, starting, opened, start - 1).has(("zones",))


def _only_modifies(talk: Talk, starting: dict[int, list[Mention]], start: int, end: int) -> bool:
    """Whether the tokens hold a degree or a place and no statement; a foot takes a degree ("off hind mild")."""
    claimed: set[int] = set()
    found: set[str] = set()
    for index in range(start, end):
        for mention in starting.get(index, ()):
            if mention.dropped:
                continue
            if (kind := _kind(mention)) == "other":
                return False
            found.add(kind)
            claimed.update(mention.literal)
    rest = {talk.words[i] for i in range(start, end) if i not in claimed}
    graded = "severities" in found or rest & _COMPARED
    placed = "zones" in found and "feet" not in found
    return bool(graded or placed) and rest <= _LITTLE | _COMPARED


def _kind(mention: Mention) -> str:
    if mention.is_any(_NO_MODIFIER):
        return "other"
    if mention.get("horse_cues") == "opener" or mention.get("feet") in _POINTING:
        return "little"
    return next((kind for kind in _GRADED if mention.get(kind)), "other")
