"""Feet listed with commas, "trimmed left hind, right hind, left front": one group, whatever was done to all of them."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.opening import sentence_start
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

NAMED_FEET = {
    "LF": {"LF"},
    "RF": {"RF"},
    "LH": {"LH"},
    "RH": {"RH"},
    "fronts": {"LF", "RF"},
    "hinds": {"LH", "RH"},
}
_JOINTS = frozenset({",", "and", "or", "&", "plus"})
_LEADS = frozenset({"the", "on", "in", "his", "her", "both"})
_NOTHING = frozenset(
    {"none", "nothing", "clean", "clear", "free", "zip", "nil", "normal", "negative", "not", "no", "ok"}
)
_ANSWERS = ("findings", "tester_responses", "pulses", "gaits", "resolutions")
_OWN = ("tester_responses", "pulses", "severities")
_HEADS = (*CLASS_SLOTS, "tester_heads", "pulse_heads", "nail_line_heads", "tester_responses", "pulses")
_BETWEEN = _JOINTS | _LEADS
_PAIR = 2
_NOT, _NOT_WITHIN = frozenset({"not"}), 4  # ", not in the" before a foot
_THAT_ONE, _IS, _SOON = ["that", "one"], frozenset({"'s", "is", "was"}), 10  # tokens to "that one"
POINTED_AT = frozenset({"those", "them", "that", "these"})


def foot_lists(talk: Talk) -> list[list[Mention]]:
    """Runs of two or more feet that are one group; the last foot of a row is left out where it tells something new."""
    found = []
    for run in _runs(talk):
        if not any(talk.words[one.end] == "," for one in run[:-1]):
            continue  # "left front and right hind" is joined elsewhere
        kept = run if _closes(talk, run) else run[:-1]
        if len(kept) >= _PAIR:
            found.append(kept)
    return found


def _runs(talk: Talk) -> list[list[Mention]]:
    """Feet in a row with nothing but commas and "and" between them, no foot twice."""
    runs: list[list[Mention]] = []
    turned = talk.says(_NOT)
    for foot in [m for m in talk.having("feet") if m.readings["feet"] in NAMED_FEET]:
        denied = turned and _denied_alone(talk, runs[-1], foot) if runs else False
        if runs and not denied and _joined(talk, runs[-1], foot):
            runs[-1].append(foot)
        else:
            runs.append([foot])
    return [run for run in runs if len(run) >= _PAIR]


def _denied_alone(talk: Talk, run: list[Mention], foot: Mention) -> bool:
    """ "Thrush in the near fore, not the off fore, the near hind": what is told goes on behind the foot denied."""
    first = run[0]
    led = talk.words[max(0, first.start - _NOT_WITHIN) : first.start]
    if "not" not in led or "," not in led[: led.index("not")] or len(run) > 1 or talk.words[first.end] != ",":
        return False
    return talk.words[foot.end : foot.end + 1] not in (["or"], ["nor"], [","]) and _told_before(talk, first)


def _joined(talk: Talk, run: list[Mention], foot: Mention) -> bool:
    gap = talk.tokens.lowers[run[-1].end : foot.start]  # as written: a stop that was softened parts them
    if not gap or gap[0] not in _BETWEEN or _JOINTS.isdisjoint(gap) or not _BETWEEN.issuperset(gap):
        return False
    return not any(NAMED_FEET[m.readings["feet"]] & NAMED_FEET[foot.readings["feet"]] for m in run)


def _closes(talk: Talk, run: list[Mention]) -> bool:
    """Whether the last foot only ends the list: "… left hind." does, "… left hind had a corn" tells of that foot."""
    first, last = run[0], run[-1]
    after = talk.words[last.end] if last.end < len(talk.words) else "."
    told = _told_before(talk, first)
    if talk.tokens.lowers[last.end : last.end + 1] == [","] and _worked_otherwise(talk, first, last):
        return False
    if told_by_itself(talk, first, last):
        return False
    if after in SENTENCE_ENDS:
        return True
    if after == "," and _counts_anew(talk, first, last):
        return False
    if after != ",":
        return not told and len(run) > _PAIR  # "left front, right front, left hind trimmed"
    return len(run) > _PAIR or not _tells_more(talk, last.end + 1) or (not told and not _nothing(talk, last.end + 1))


def _told_before(talk: Talk, foot: Mention) -> bool:
    """Whether something that can be of all the feet stands before the first of them in its sentence."""
    start = foot.start
    while start and talk.words[start - 1] not in SENTENCE_ENDS:
        start -= 1
    return any(m.is_any(_HEADS) for m in talk.mentions if start <= m.start < foot.start)


def _tells_more(talk: Talk, start: int) -> bool:
    """ "Thrush left hind, right hind, corn.": whether what follows may be told of the last foot alone."""
    start = _past_fillers(talk, start)
    end = start
    while end < len(talk.words) and talk.words[end] != "," and talk.words[end] not in SENTENCE_ENDS:
        end += 1
    here = [m for m in talk.mentions if start <= m.start < end]
    own = any(m.get("feet") for m in here)
    return not own and (_nothing(talk, start) or any(m.is_any(_ANSWERS) for m in here))


def _counts_anew(talk: Talk, first: Mention, last: Mention) -> bool:
    """ "Size three in front, and behind, um, two and a half": a number alone answers the one before the first foot."""
    before = talk.mention_ending(first.start)
    start = _past_fillers(talk, last.end + 1)
    number = next((m for m in talk.mentions if m.start == start), None)  # it may have been put right since
    if before is None or before.number is None or number is None or number.number is None or number.number.plural:
        return False
    closes = talk.words[number.end : number.end + 2]
    return closes[:1] in ([","], ["."], ["too"], ["also"], []) or closes == ["as", "well"]


def _worked_otherwise(talk: Talk, first: Mention, last: Mention) -> bool:
    """ "Trimmed the hinds, and the fronts, I reset those": the feet named last were worked on in another way."""
    end = start = _past_fillers(talk, last.end + 1)
    while end < len(talk.words) and talk.words[end] != "," and talk.words[end] not in SENTENCE_ENDS:
        end += 1
    behind = next((m for m in talk.having("work") if start <= m.start < end), None)
    if behind is None or POINTED_AT.isdisjoint(talk.words[start:end]):
        return False
    before = next((m for m in reversed(talk.having("work")) if m.end <= first.start), None)
    near = before is not None and SENTENCE_ENDS.isdisjoint(talk.words[before.end : first.start])
    return near and before is not None and before.get("work") != behind.get("work")


def told_by_itself(talk: Talk, first: Mention, last: Mention) -> bool:
    """ "Normal in the near fore, and the off fore, let me see, that one's raised": an answer, and another of its own.

    Not "thrush in the near hind and the off hind, that one's severe", where both have what was told.
    """
    for at in range(last.end, min(last.end + _SOON, len(talk.words) - 3)):
        if talk.words[at : at + 2] == _THAT_ONE:
            told = talk.mention_starting(at + 3) if talk.words[at + 2] in _IS else None
            start = sentence_start(talk, first.start)
            before = [m for m in talk.mentions if told is not None and start <= m.start < first.start]
            return told is not None and told.is_any(_OWN) and any(m.is_any(_OWN) for m in before)
        if talk.words[at] in SENTENCE_ENDS or talk.words[at] == "and":
            return False
    return False


def _past_fillers(talk: Talk, start: int) -> int:
    """ "… and on the left front, uh, moderate"."""
    filler = talk.mention_starting(start)
    while filler is not None and filler.is_any(("fillers",)) and talk.words[filler.end : filler.end + 1] == [","]:
        start = filler.end + 1
        filler = talk.mention_starting(start)
    return start


def _nothing(talk: Talk, start: int) -> bool:
    return bool(_NOTHING & set(talk.words[start : start + 1]))
