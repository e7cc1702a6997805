"""Full stops in the midst of a sentence: "size aught, no. A one.", "next time bars in front. Steel, size two."

Who stops to think is written down with a full stop. What stands behind it cannot be a statement: it only puts right
the last word before, or goes on a list of what is planned. Read as statements, the first would deny, and the second
would be of today.
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.stretches import CUTS, FILLERS, MARKS, TOLD, WAITING_HEADS, Stretch, next_mark
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_REPLACED = ("feet", "zones", "severities", "packings", "pads", "shoe_types", "shoe_materials", "treatments", "clips",
             "traction")  # fmt: skip
_ITEMS = frozenset({"shoe_types", "shoe_materials", "shoe_size", "pads", "packings", "clips", "traction", "number"})
_PLANS = frozenset({("plans", "before"), ("plans", "condition"), ("plans", "main")})
_PUT_ON = frozenset({"work", "shoe_types", "shoe_materials", "pads"})
_HAS = frozenset({"does", "did", "has", "is", "do", "have"})
_WHO = frozenset({"i", "we", "he", "she", "they"})
_IT_IS = (["it", "'s"], ["it", "is"], ["it", "was"], ["that", "'s"], ["they", "'re"])
_ANSWERS = ("tester_responses", "pulses")
_WAS = frozenset({"was", "were"})
_AGAINST = frozenset({"was", "compared", "down", "up"})
_COMPARED = frozenset({("compared", "with"), ("compared", "to"), ("down", "from"), ("up", "from")})
_LOOKING = (["let", "me"], ["i", "'ll", "have"], ["where", "'s"], ["give", "me"])
_COUNTED = frozenset({"number", "measures", "units", "totals"})
_ITEM_WORDS = frozenset(
    {"with", "and", "a", "an", "the", "of", "on", "in", "under", "size", "each", ",", "number"}
    | {"probably", "maybe", "likely", "about", "say", "no"}
)


def mend_broken_off(talk: Talk) -> None:
    """Read such a full stop as a comma."""
    stops = [i for i, word in enumerate(talk.words) if word in SENTENCE_ENDS]
    starting = talk.starting()
    plans = {m.start for m in talk.having("plans")}
    answers = {m.start for name in _ANSWERS for m in talk.having(name)}
    footed = {m.end for m in talk.having("feet")}
    words, against, opened = talk.words, talk.says(_AGAINST), 0
    for stop, end in pairwise(stops):
        behind = words[stop + 1]
        if words[stop] == "." and (
            (words[stop - 1] == "no" and _put_right(talk, starting, opened, stop))
            or (behind in _WAS and _was_then(talk, starting, stop, end))
            or (against and _set_against(talk, starting, opened, stop))
            or (words[opened] == "no" and _it_was_that_foot(talk, starting, opened, stop))
            or (behind == "so" and _as_asked(talk, starting, opened, stop))
            or ((stop in footed or behind == "no") and _thought_over(talk, starting, opened, stop))
            or (not plans.isdisjoint(range(opened, stop)) and _planned_list(talk, starting, opened, stop, end))
            or (stop + 1 in answers and _answer_behind(talk, starting, opened, stop))
        ):
            words[stop] = ","
        else:
            opened = stop + 1


def _put_right(talk: Talk, starting: dict[int, list[Mention]], opened: int, stop: int) -> bool:
    """ "… in the left front, no. Right front, in the sole": the word behind takes the place of the last one before."""
    if talk.words[stop - 2] != ",":
        return False
    start = stop - 2
    while start > opened and (talk.words[start - 1] not in CUTS or FILLERS.issuperset(talk.words[start : stop - 2])):
        start -= 1
    before = [m for m in Stretch(talk, starting, start, stop - 2).mentions if m.end <= stop - 2]
    end = next_mark(talk, stop + 1, CUTS)
    behind = Stretch(talk, starting, stop + 1, end)
    if not before or not behind.words:
        return False
    if (feet := [m for m in before if m.get("feet")]) and _has_it(talk, starting, behind):
        return all(m.get("feet") != feet[-1].get("feet") for m in behind.feet())
    if behind.words[0] in _WHO and not behind.has(TOLD | WAITING_HEADS | {"feet", "horse"}):
        return _ran_out(talk, starting, before, end)
    if behind.opens_with("taking_back") or behind.words[0] in ("only", "just", "not"):
        return True
    last, next_one = before[-1], [m for m in behind.mentions if m.start == behind.start]
    if any(m.get("feet") for m in next_one):
        other = all(m.get("feet") != last.get("feet") for m in next_one)
        return last.get("feet") is not None and other and behind.only_feet()
    counted = last.number is not None and any(m.number is not None for m in next_one)
    return counted or any(last.get(n) is not None and any(m.get(n) for m in next_one) for n in _REPLACED)


def _has_it(talk: Talk, starting: dict[int, list[Mention]], behind: Stretch) -> bool:
    """ "Both fronts have flat soles, no. The left front does": a foot, and that it has what was said before."""
    return behind.words[-1] in _HAS and Stretch(talk, starting, behind.start, behind.end - 1).only_feet()


def _ran_out(talk: Talk, starting: dict[int, list[Mention]], before: list[Mention], end: int) -> bool:
    """ "Silicone under those, no. I ran out, it's putty": behind a reason stands what takes the last word's place."""
    start = end + 1
    start += 2 * (talk.words[start : start + 2] in _IT_IS)
    first = [m for m in starting.get(start, ()) if not m.dropped]
    kinds = {n for m in first for n in _REPLACED[1:] if m.get(n)}
    last = next((m for m in reversed(before) if m.is_any(kinds)), None)
    if talk.words[end : end + 1] not in ([","], ["."]) or last is None:
        return False
    talk.words[end] = ","
    return True


def _was_then(talk: Talk, starting: dict[int, list[Mention]], stop: int, end: int) -> bool:
    """ "Heel angle fifty. Was forty eight in the fall": no subject of its own, and a time of before."""
    behind = Stretch(talk, starting, stop + 2, end)
    return behind.opens_with("number") and ("times", "history") in behind.cues


def _set_against(talk: Talk, starting: dict[int, list[Mention]], opened: int, stop: int) -> bool:
    """ "Pulse is normal. Compared with bounding a week ago", "and last time, off the card. The off fore was 45"."""
    if tuple(talk.words[stop + 1 : stop + 3]) in _COMPARED:
        return Stretch(talk, starting, opened, stop).has(TOLD)
    foot = next((m for i in (stop + 1, stop + 2) for m in starting.get(i, ()) if m.get("feet")), None)
    if foot is None or talk.words[foot.end : foot.end + 1] != ["was"]:
        return False
    start, last = stop, Stretch(talk, starting, stop, stop)
    while start > opened and not last.has(("times",)) and not last.has(TOLD | WAITING_HEADS | {"feet"}):
        end = start
        while start > opened and talk.words[start - 1] not in CUTS:
            start -= 1
        last = Stretch(talk, starting, start, end)
        start -= 1
    if last.classes != {"times"} or ("times", "history") not in last.cues:
        return False
    row = Stretch(talk, starting, opened, max(opened, last.start))
    return row.has(("measures",)) and any(m.number for m in starting.get(foot.end + 1, ()))


def _it_was_that_foot(talk: Talk, starting: dict[int, list[Mention]], opened: int, stop: int) -> bool:
    """ "He'd sprung the off fore. No, I'm thinking of the paint. It was the near fore": the reason of a "no"."""
    if talk.words[opened + 1 : opened + 2] != [","] or talk.words[stop + 1 : stop + 3] not in _IT_IS:
        return False
    reason = Stretch(talk, starting, opened + 2, stop)
    if not reason.words or reason.words[0] not in _WHO or reason.has(TOLD | WAITING_HEADS | {"feet", "horse"}):
        return False
    return any(m.get("feet") for i in (stop + 3, stop + 4) for m in starting.get(i, ()))


def _as_asked(talk: Talk, starting: dict[int, list[Mention]], opened: int, stop: int) -> bool:
    """ "They wanted studs, I said not this time. So no studs.": what was asked about is denied in the end."""
    if talk.words[stop + 2 : stop + 3] != ["no"]:
        return False
    end = next_mark(talk, stop + 1)
    denied = {pair for pair in Stretch(talk, starting, stop + 1, end).cues if pair[0] in _ITEMS}
    return bool(denied) and denied <= Stretch(talk, starting, opened, stop).cues


def _thought_over(talk: Talk, starting: dict[int, list[Mention]], opened: int, stop: int) -> bool:
    """ "Size three. No. Wait till I see. A two", "nine on the near fore, on the off. Let me look, twelve"."""
    start = stop
    while start > opened and talk.words[start - 1] not in CUTS:
        start -= 1
    near = Stretch(talk, starting, start, stop)
    denied = talk.words[stop + 1] == "no" and talk.words[stop + 2 : stop + 3] in (["."], [","])
    if not denied and not (near.only_feet() and (near.words[0] in ("on", "in") or talk.words[start - 1] == ",")):
        return False
    row = Stretch(talk, starting, opened, max(opened, start - 1))
    at = _behind_thinking(talk, starting, stop + 3 if denied else stop + 1)
    end = next_mark(talk, at)
    said, ahead = Stretch(talk, starting, at, end), near if denied else row
    counted = said.opens_with("number") and said.classes <= _COUNTED and ahead.has(("number",))
    counted = counted and {c for c in said.cues if c[0] in ("measures", "units")} <= ahead.cues
    other = denied and said.only_feet() and near.has(("feet",)) and near.cues.isdisjoint(said.cues & _named(said))
    if not (other or (counted and (denied or row.feet()))):
        return False
    for index in range(stop, at):
        talk.words[index] = "," if talk.words[index] == "." else talk.words[index]
    return True


def _named(stretch: Stretch) -> set[tuple[str, str]]:
    return {cue for cue in stretch.cues if cue[0] == "feet"}


def _behind_thinking(talk: Talk, starting: dict[int, list[Mention]], start: int) -> int:
    """Behind the stretches in which somebody only looks again: "wait till I see", "let me look", "um"."""
    while (end := next((i for i in range(start, len(talk.words)) if talk.words[i] in MARKS), 0)) > start:
        near = Stretch(talk, starting, start, end)
        looking = near.words[:2] in _LOOKING or near.words[:3] in _LOOKING or near.opens_with("fillers", "taking_back")
        if not looking or near.has(TOLD | WAITING_HEADS | {"feet", "denials"}):
            break
        start = end + 1
    return start


def _planned_list(talk: Talk, starting: dict[int, list[Mention]], opened: int, stop: int, end: int) -> bool:
    """ "Next time she gets new shoes on both fronts. Steel, size one, side clips": only more of what is planned."""
    before, behind = Stretch(talk, starting, opened, stop), Stretch(talk, starting, stop + 1, end)
    if behind.words[:1] == ["no"] and behind.words[1:2] != [","]:
        return False  # "no pads"
    if not behind.words or not before.cues & _PLANS or not before.has(_PUT_ON) or behind.has(("feet", "work", "times")):
        return False
    told = [m for m in behind.mentions if m.is_any(_ITEMS) or m.number is not None]
    counted = [m for m in behind.mentions if m.get("measures") in ("shoe_size", "nails", "nail_size", "slim")]
    claimed = {i for m in (*told, *counted) for i in range(m.start, m.end)}
    rest = {w for i, w in enumerate(behind.words, behind.start) if i not in claimed}
    return bool(told) and rest <= _ITEM_WORDS


def _answer_behind(talk: Talk, starting: dict[int, list[Mention]], opened: int, stop: int) -> bool:
    """ "Testers, left front, mild, right front. No reaction": the foot of a row of answers waits for its own."""
    start = stop
    while start > opened and talk.words[start - 1] != ",":
        start -= 1
    foot, row = Stretch(talk, starting, start, stop), Stretch(talk, starting, opened, max(opened, start - 1))
    if not foot.only_feet() or not row.feet() or not row.has(("tester_heads", "pulse_heads")):
        return False
    end = next_mark(talk, stop + 1, CUTS)
    behind = Stretch(talk, starting, stop + 1, end)
    return behind.opens_with(*_ANSWERS) and not behind.has(("feet", "findings"))
