"""A heading and its answers: "Did the testers. Left front mild, right front nothing." is one statement."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

_ANSWERS = {"tester_heads": ("tester_responses", "severities"), "pulse_heads": ("pulses",)}
_NOTHING = frozenset({"nothing", "none", "zip", "zilch", "nil", "nowt", "normal", "zero", "no", "not", "a", "flicker"})
_LIGHT = frozenset({
    "the", "on", "in", "at", "and", ",", "both", "was", "were", "are", "is", "'s", "gave", "got", "a", "an", "of", "to",
    "over", "his", "her", "across", "just", "only", "about", "then", "but", "it", "as", "well", "too", "same", "foot",
    "that",
})  # fmt: skip
_LEADS = frozenset({"the", "on", "in", "both", "his", "her"})
_DENIED = frozenset({"n't", "not", "no", "never", "if", "when", "none", "without"})
_YES = frozenset({
    ("it", "was"), ("it", "is"), ("there", "was"), ("there", "is"), ("he", "did"), ("she", "did"), ("he", "was"),
    ("she", "was"), ("he", "had"), ("she", "had"), ("they", "were"), ("they", "are"),
})  # fmt: skip
_YES_ALONE = frozenset({"yes", "yeah", "aye", "yep"})
_SHORT = 9  # tokens of a heading


def join_headings(talk: Talk) -> None:
    """Read the full stop between a heading and answers that open with a foot as a comma."""
    if not any(talk.having(name) for name in _ANSWERS):
        return
    stops = [i for i, word in enumerate(talk.words) if word in SENTENCE_ENDS]
    head: str | None = None
    for number, stop in enumerate(stops):
        start = stops[number - 1] + 1 if number else 0
        end = stops[number + 1] if number + 1 < len(stops) else len(talk.words)
        head = _heading(talk, start, stop) or (head if number and talk.words[stops[number - 1]] == "," else None)
        if head is not None and talk.words[stop] == "?" and _said_yes(talk, stop):
            _answered_after_all(talk, head, start, stop, end)
        if head is not None and talk.words[stop] == "." and _answers(talk, head, stop + 1, end):
            talk.words[stop] = ","


def _said_yes(talk: Talk, stop: int) -> bool:
    """Whether the sentence behind a question opens with a yes: "It was, bounding in that foot"."""
    words = talk.words[stop + 1 : stop + 4]
    return (words[2:] == [","] and (words[0], words[1]) in _YES) or (words[1:2] == [","] and words[0] in _YES_ALONE)


def _answered_after_all(talk: Talk, head: str, start: int, stop: int, end: int) -> None:
    """ "Was the pulse up? It was, bounding in that foot": one statement, of which only the answer counts."""
    behind = [m for m in talk.mentions if stop < m.start < end and not m.dropped]
    if _answered(behind, head):
        for mention in [m for m in talk.mentions if start <= m.start < stop and m.is_any(_ANSWERS[head])]:
            mention.dropped = not mention.get(head)
        talk.words[stop] = ","


def _heading(talk: Talk, start: int, stop: int) -> str | None:
    """The class of the head that a sentence names with no foot of its own and nothing else of the trade."""
    if stop - start > _SHORT:
        return None
    said = [m for m in talk.mentions if start <= m.start < stop and not m.dropped]
    head = next((name for name in _ANSWERS for m in said if m.get(name)), None)
    if head is None:
        return None
    asked = talk.words[stop] == "?"  # "was the pulse up?" names an answer, and asks
    content = [m for m in said if not (m.get(head) or (asked and m.is_any(_ANSWERS[head])))]
    told = any((m.number and m.number.value != 1) or m.is_any(CLASS_SLOTS) for m in content)
    footed = any(m.get("feet") not in (None, "all", "any") for m in said)
    denied = _DENIED & set(talk.words[start:stop])
    return None if told or footed or denied else head


def _answers(talk: Talk, head: str, start: int, end: int) -> bool:
    """Whether the tokens are nothing but feet, what was answered there, and where."""
    said = [m for m in talk.mentions if start <= m.start < end and not m.dropped]
    while start < end and talk.words[start] in _LEADS and not any(m.start == start for m in said):
        start += 1
    led = next((m for m in said if m.start == start), None)
    if led is not None and led.is_any(_ANSWERS[head]):  # "Pulses. Bounding near fore, raised off fore."
        at = led.end
        while at < end and talk.words[at] in _LEADS and not any(m.start == at for m in said):
            at += 1
        led = next((m for m in said if m.start == at), None)
    if led is None or not led.get("feet"):
        return False
    taken = [m for m in said if m.get("feet") or m.is_any((*_ANSWERS[head], "zones", "fillers"))]
    held = {i for m in taken for i in range(m.start, m.end)}
    rest = {talk.words[i] for i in range(start, end) if i not in held}
    return rest <= _LIGHT | _NOTHING and (_answered(taken, head) or bool(rest & _NOTHING))


def _answered(taken: list[Mention], head: str) -> bool:
    return any(m.is_any(_ANSWERS[head]) for m in taken)
