"""A heading and its answers: "Did the testers. Left front mild, right front nothing." is one statement.

Rims and leather are pads where pads head the sentence: "pads, I was thinking leather, went with rims".
"""

from __future__ import annotations

from pipeline.reading.exchanges import sentence_end
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import MatchKind
from pipeline.vocabulary import CLASS_SLOTS

_ANSWERS = {"tester_heads": ("tester_responses", "severities"), "pulse_heads": ("pulses",)}
_NOTHING = frozenset({"nothing", "none", "zip", "zilch", "nil", "nowt", "normal", "zero", "no", "not", "a", "flicker"})
_LIGHT = frozenset({
    "the", "on", "in", "at", "and", ",", "both", "was", "were", "are", "is", "'s", "gave", "got", "a", "an", "of", "to",
    "over", "his", "her", "across", "just", "only", "about", "then", "but", "it", "as", "well", "too", "same", "foot",
    "that",
})  # fmt: skip
_NOUGHTS = frozenset({"zero", "nought", "naught"})
_NOUGHT = tuple([word] for word in _NOUGHTS)
_CUT = frozenset({",", "and", "but", *SENTENCE_ENDS})
_AROUND_ANSWERS = frozenset(
    {"tester_heads", "tester_responses", "severities", "zones", "feet", "fillers", "horse_cues", "clause_words"}
)
_EMPTY = _NOTHING - {"no", "not", "a", "normal"}
_GRADING = frozenset({
    "grade", "graded", "a", "about", "i", "'d", "say", "call", "it", "he", "she", "was", "'s", "is", "around",
})  # fmt: skip
_WORST = 5  # of the grades of lameness
_LEADS = frozenset({"the", "on", "in", "both", "his", "her"})
_DENIED = frozenset({"n't", "not", "no", "never", "if", "when", "none", "without"})
_YES = frozenset({
    ("it", "was"), ("it", "is"), ("there", "was"), ("there", "is"), ("he", "did"), ("she", "did"), ("he", "was"),
    ("she", "was"), ("he", "had"), ("she", "had"), ("they", "were"), ("they", "are"),
})  # fmt: skip
_YES_ALONE = frozenset({"yes", "yeah", "aye", "yep"})
_NOT_MOVED = frozenset({"never", "did", "not"})
_SHORT = 9  # tokens of a heading


def take_noughts(talk: Talk) -> None:
    """ "Testers strong near fore, zero off fore": alone beside its foot, it is an answer and no size of a shoe."""
    for mention in talk.having("number") if talk.says(_NOUGHTS) and talk.having("tester_heads") else ():
        if talk.words[mention.start : mention.end] not in _NOUGHT:
            continue
        start = next((i for i in range(mention.start, 0, -1) if talk.words[i - 1] in _CUT), 0)
        end = next((i for i in range(mention.end, len(talk.words)) if talk.words[i] in _CUT), len(talk.words))
        beside = {i for m in talk.mentions if m.get("feet") or m.get("zones") for i in m.literal}
        rest = [talk.words[i] for i in range(start, end) if i not in beside and i != mention.start]
        told = [m for m in talk.mentions if m.end <= start and not m.is_any(_AROUND_ANSWERS)]
        heads = [m.start for m in talk.having("tester_heads") if m.start < mention.start]
        if heads and _LIGHT.issuperset(rest) and not any(m.start > heads[-1] for m in told):
            mention.number, mention.readings = None, {"tester_responses": "none"}
            talk.changed()


def join_headings(talk: Talk) -> None:
    """Read the full stop between a heading and answers that open with a foot as a comma."""
    stops = [i for i, word in enumerate(talk.words) if word in SENTENCE_ENDS]
    if talk.having("gaits", "lame"):
        _join_grades(talk, stops)
    heads = {m.start for name in _ANSWERS for m in talk.having(name)}
    if not heads:
        return
    head: str | None = None
    for number, stop in enumerate(stops):
        start = stops[number - 1] + 1 if number else 0
        end = stops[number + 1] if number + 1 < len(stops) else len(talk.words)
        near = not heads.isdisjoint(range(start, stop))
        goes_on = number > 0 and talk.words[stops[number - 1]] == ","
        head = (_heading(talk, start, stop) if near else None) or (head if goes_on else None)
        named = head or (_heading(talk, start, stop, footed=True) if near else None)
        asked = talk.words[stop] == "?"
        yes = asked and named is not None and _said_yes(talk, stop)
        if named is not None and yes and _answered([m for m in talk.mentions if stop < m.start < end], named):
            _answered_after_all(talk, named, start, stop, end)
        if head is not None and talk.words[stop] in (".", "?") and _answers(talk, head, stop + 1, end):
            _answered_after_all(talk, head, start, stop, end)
        if named is not None and talk.words[stop] in (".", "?") and _answer_alone(talk, named, stop, end):
            _answered_after_all(talk, named, start, stop, end)


def _join_grades(talk: Talk, stops: list[int]) -> None:
    """ "Lame on the off fore. Two out of five.", "Was he lame? He was, grade two on the near fore": one statement."""
    lame = [m.start for m in talk.having("gaits", "lame")]
    for number, stop in enumerate(stops[:-1]):
        start = stops[number - 1] + 1 if number else 0
        asked = talk.words[stop] == "?"
        if not any(start <= at < stop for at in lame) or not (asked or talk.words[stop] == "."):
            continue
        at = stop + 1
        if asked and _said_yes(talk, stop):
            at = talk.words.index(",", at) + 1
        while talk.words[at : at + 1] and talk.words[at] in _GRADING:
            at += 1
        grade = talk.mention_starting(at)
        told = grade.number if grade is not None else None
        if grade is None or told is None or not (told.out_of == _WORST or talk.words[at - 1] in ("grade", "graded")):
            continue
        if asked or grade.end == stops[number + 1]:
            for index in range(stop, at):
                talk.words[index] = "," if talk.words[index] in (".", "?") else talk.words[index]


def _answer_alone(talk: Talk, head: str, stop: int, end: int) -> bool:
    """ "Testers on the near fore. He flinched.", "Pulse in the off fore? Strong.": an answer without a foot."""
    said = [m for m in talk.mentions if stop < m.start < end and not m.dropped]
    taken = [m for m in said if m.is_any((*_ANSWERS[head], "zones", "fillers"))]
    if any(m.get("feet") for m in said if m not in taken):
        return False
    if talk.words[stop] == "." and any(m.get("manners") and talk.words[m.start] not in _NOT_MOVED for m in taken):
        return False  # "Testers on the near fore. Quiet.", but "… He never stirred"
    held = {i for m in taken for i in range(m.start, m.end)}
    rest = {talk.words[i] for i in range(stop + 1, end) if i not in held}
    return rest <= _LIGHT | _NOTHING | {"he", "she"} and (_answered(taken, head) or bool(rest & _EMPTY))


def _said_yes(talk: Talk, stop: int) -> bool:
    """Whether the sentence behind a question opens with a yes: "It was, bounding in that foot"."""
    words = talk.words[stop + 1 : stop + 4]
    return (words[2:] == [","] and (words[0], words[1]) in _YES) or (words[1:2] == [","] and words[0] in _YES_ALONE)


def _answered_after_all(talk: Talk, head: str, start: int, stop: int, end: int) -> None:
    """ "Was the pulse up? It was, bounding in that foot": one statement, of which only the answer counts."""
    behind = [m for m in talk.mentions if stop < m.start < end and not m.dropped]
    asked = [m for m in talk.mentions if start <= m.start < stop and m.is_any(_ANSWERS[head])]
    for mention in asked if talk.words[stop] == "?" and _answered(behind, head) else ():
        mention.dropped = not mention.get(head)
    talk.words[stop] = ","


def _heading(talk: Talk, start: int, stop: int, *, footed: bool = False) -> str | None:
    """The class of the head that a sentence names with nothing else of the trade, and no foot unless ``footed``."""
    if stop - start > _SHORT:
        return None
    said = [m for m in talk.mentions if start <= m.start < stop and not m.dropped]
    head = next((name for name in _ANSWERS for m in said if m.get(name)), None)
    if head is None:
        return None
    asked = talk.words[stop] == "?"  # "was the pulse up?" names an answer, and asks
    content = [m for m in said if not (m.get(head) or (asked and m.is_any(_ANSWERS[head])))]
    told = any((m.number and m.number.value != 1) or m.is_any(CLASS_SLOTS) for m in content)
    other = not footed and any(m.get("feet") not in (None, "all", "any") for m in said)
    other = other or (footed and any(m.is_any(("times", "plans", "doubts")) for m in said))
    denied = _DENIED & set(talk.words[start:stop])
    return None if told or other or denied else head


def _answers(talk: Talk, head: str, start: int, end: int) -> bool:
    """Whether the tokens are nothing but feet, what was answered there, and where."""
    said = [m for m in talk.mentions if start <= m.start < end and not m.dropped]
    while start < end and talk.words[start] in _LEADS and not any(m.start == start for m in said):
        start += 1
    led = next((m for m in said if m.start == start), None)
    if led is not None and led.is_any(_ANSWERS[head]):  # "Pulses. Bounding near fore, raised off fore."
        at = led.end
        while at < end and not any(m.start == at and m.get("feet") for m in said):
            place = next((m for m in said if m.start == at and m.get("zones")), None)
            if place is None and talk.words[at] not in _LIGHT:
                break
            at = place.end if place is not None else at + 1
        led = next((m for m in said if m.start == at and m.get("feet")), None)
    if led is None or not led.get("feet"):
        return False
    taken = [m for m in said if m.get("feet") or m.is_any((*_ANSWERS[head], "zones", "fillers"))]
    held = {i for m in taken for i in range(m.start, m.end)}
    rest = {talk.words[i] for i in range(start, end) if i not in held}
    return rest <= _LIGHT | _NOTHING and (_answered(taken, head) or bool(rest & _NOTHING))


def _answered(taken: list[Mention], head: str) -> bool:
    return any(m.is_any(_ANSWERS[head]) for m in taken)


_PADS = frozenset({"pads", "pad"})
_LEATHER = frozenset({"leather", "leathers"})
_KINDS = {"leather": "leather", "leathers": "leather", "rim": "rim", "mesh": "mesh", "full": "full"}
_LED = frozenset({",", ":", "and"})  # "pads: leather on the fronts and mesh behind"
_HAD = frozenset({"had", "wore", "in", "with", "used", "to", "got", "went"})
_RIMS = frozenset({"rim", "rims"})
_PLACES = frozenset(
    {"in", "on", "the", "under", "for", "both", "front", "fronts", "behind", "hinds", "fores", "now", "well"}
)


def pads_under_heading(talk: Talk) -> None:
    """Read a rim behind the heading "pads", in the same sentence, as a rim pad, and what else they are of as well."""
    if not talk.says(_PADS) or not talk.says(_RIMS | frozenset(_KINDS)):
        return
    for rim in [m for m in talk.having("shoe_types", "rim") if talk.words[m.start] in _RIMS]:
        if "shoe" not in talk.words[rim.end - 1] and _headed(talk, rim.start):
            rim.readings.pop("shoe_types")
            rim.readings["pads"] = "rim"
            talk.changed()
    for at in talk.where(frozenset(_KINDS)):
        led = talk.words[at - 1] in _LED or (talk.words[at] in _LEATHER and talk.words[at - 1] in _HAD)
        if at and led and talk.mention_starting(at) is None and _headed(talk, at):
            kind = _KINDS[talk.words[at]]
            talk.mentions.append(Mention(at, at + 1, (at,), {"pads": kind}, MatchKind.VARIANT))
            talk.in_order()


def _headed(talk: Talk, at: int) -> bool:
    """Whether "pads" heads the sentence of the token."""
    heading = next((i for i in range(at - 1, -1, -1) if talk.words[i] in _PADS), None)
    if heading is None or sentence_end(talk, heading) < at:
        return False
    opens = heading == 0 or talk.words[heading - 1] in (".", ",", "?", "and")
    comma = next((i for i in range(heading + 1, at) if talk.words[i] in (",", ":")), None)
    return opens and comma is not None and set(talk.words[heading + 1 : comma]) <= _PLACES
