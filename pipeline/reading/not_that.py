"""What is named again behind "not" and taken back: "trailers, no, not trailers, rolled toes"."""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of, sentence_end, swap, window
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import NOT
from pipeline.vocabulary import CLASS_SLOTS

_HALTS = frozenset({",", "um", "uh", "er", "erm", "ah", "oh"})
_ARTICLES = frozenset({"the", "a", "his", "her", "on", "in"})
_SAYING = frozenset({"say", "call", "it", "that"})
_REFUSING = NOT | {
    "i", "'d", "would", "could", "should", "say", "call", "it", "that", "them", "go", "as", "far", "so", "to",
    "quite", "really", "exactly", "is", "'s", "are", "'re", "was", "were", "they", "he", "she", "the", "a", "an",
    "his", ",", "her", "on", "in", "be", "much", "very", "that's", "we",
}  # fmt: skip
_IT = frozenset({"it"})
_JUST = frozenset({"just", "only"})
_SOON = 16  # tokens from the foot to where it is said again
_NEXT_FOOT = ([","], [",", "the"], [",", "and"], [",", "and", "the"])
_DENYING = NOT | {"none", "no", "nothing", "neither", "never"}
_NEAR = 3  # tokens from "I thought" to what was thought

_PAIRS = {"fronts": ("LF", "RF"), "hinds": ("LH", "RH")}


def just_that_foot(talk: Talk) -> None:
    """ "Thrush in the left hind, let me think, no, just the left hind, right hind didn't have any": nothing put right.

    What is told of the other foot behind it is a statement of its own.
    """
    feet = talk.having("feet") if talk.says(_JUST) else []
    for first, again, other in zip(feet, feet[1:], feet[2:], strict=False):
        if first.readings["feet"] != again.readings["feet"] or other.readings["feet"] == again.readings["feet"]:
            continue
        between, behind = talk.words[first.end : again.start], talk.words[again.end : other.start]
        led = [word for word in between[-2:] if word != "the"][-1:]
        if led == [] or led[0] not in _JUST or len(between) > _SOON or behind not in _NEXT_FOOT:
            continue
        told = [m for m in talk.mentions if first.end <= m.start < again.start and kind_of(m) not in (None, "zones")]
        if told or _DENYING.isdisjoint(talk.words[other.end : sentence_end(talk, other.end)]):
            continue
        for cue in [m for m in talk.having("taking_back") if first.end <= m.start < again.start]:
            cue.dropped = True
        again.dropped = True
        talk.words[again.end] = "."


def not_that(talk: Talk, run: list[Mention], new_ones: list[Mention]) -> bool:
    """ "Trailers, no, not trailers, rolled toes": what is named behind "not" goes, what follows stands for it.

    Only when the words behind "not" were said before the cue; else it is a denial of its own.
    """
    if _clipped_again(talk, run, new_ones):
        return True
    again = next((m for m in new_ones[1:] if kind_of(m) is not None), None)
    kind = kind_of(again) if again is not None else None
    if again is None or kind is None:
        return False
    between = set(talk.words[new_ones[0].end : again.start])
    said = bool(between & _SAYING)  # "no, I shouldn't say canker"
    if talk.words[new_ones[0].start : new_ones[0].end] not in ((["not"], ["n't"]) if said else (["not"],)):
        return False
    start = window(talk, run[0].start)
    olds = [m for m in talk.mentions if start <= m.start and m.end <= run[0].start and not m.dropped]
    olds = [m for m in olds if _same_thing(m, again, kind)]
    kind = kind_of(olds[-1]) or kind if olds else kind
    if kind == "findings" and olds and _only_thought(talk, olds[-1]):
        return False  # "thought I'd quicked him, and no, he's not quicked, just a close nail": denied
    later = [m for m in new_ones if m.start > again.start and kind_of(m) == kind]
    if not later and kind == "feet":
        later = _in_next_sentence(talk, again)
    if not olds or between - _ARTICLES - (_SAYING if said else set()):
        return False
    if not later and not said and kind in ("findings", "feet", "gaits"):
        return False
    new_ones[0].readings.pop("denials", None)
    again.dropped = True
    if not later:
        olds[-1].dropped = True
        return True
    swap(talk, olds[-1], later[0], kind)
    if kind == "feet":
        later[0].dropped = True
    return True


def denied(new_ones: list[Mention]) -> bool:
    """Whether a denial opens what is said behind the cue, or stands within its finding: "no, soles aren't thin"."""
    found = next((m for m in new_ones if m.get("findings") is not None), None)
    return any(
        m.get("denials") == "before" and (not at or (found is not None and found.start < m.start < found.end))
        for at, m in enumerate(new_ones)
    )


def refused(talk: Talk, run: list[Mention], new_ones: list[Mention]) -> bool:
    """ "Strong, no, I'd not go as far as strong, moderate", "it's not silicone, it's tar": denied over again."""
    again = next((m for m in new_ones if kind_of(m) is not None), None)
    kind = kind_of(again) if again is not None else None
    if again is None or kind is None or kind == "number":
        return False
    if talk.words[again.start] == "not":
        return _graded_anew(talk, run, again, new_ones)
    lead = talk.words[run[-1].end : again.start]
    if NOT.isdisjoint([talk.words[run[-1].end - 1], *lead]) or not set(lead) <= _REFUSING:
        return False
    start = window(talk, run[0].start)
    olds = [m for m in talk.mentions if start <= m.start and m.end <= run[0].start and not m.dropped]
    olds = [m for m in olds if _same_thing(m, again, kind)]
    kind = kind_of(olds[-1]) if olds else None
    later = next((m for m in new_ones if m.start > again.start and kind_of(m) is not None), None)
    if kind is None or later is None or (later.get(kind) is None or later.get(kind) == again.get(kind)):
        return False
    if _only_thought(talk, olds[-1]) or not set(talk.words[again.end : later.start]) <= _REFUSING - NOT | {"but"}:
        return False
    for mention in [m for m in talk.mentions if run[-1].end <= m.start < again.start]:
        mention.readings.pop("denials", None)
    again.dropped = True
    swap(talk, olds[-1], later, kind)
    later.dropped = later.dropped or kind == "feet"
    return True


def _graded_anew(talk: Talk, run: list[Mention], denied: Mention, new_ones: list[Mention]) -> bool:
    """ "Pulse bounding. No, it's not bounding, it's raised": "not bounding" is no degree where another follows."""
    later = next((m for m in new_ones if m.start >= denied.end and kind_of(m) is not None), None)
    kind = next(
        (k for k in ("pulses", "tester_responses", "severities") if later and later.get(k) and denied.get(k)), ""
    )
    start = window(talk, run[0].start)
    olds = [m for m in talk.mentions if start <= m.start and m.end <= run[0].start and m.get(kind)]
    if later is None or not olds or not set(talk.words[denied.end : later.start]) <= _REFUSING - NOT | {"but"}:
        return False
    denied.dropped = True
    swap(talk, olds[-1], later, kind)
    return True


def tell_again(talk: Talk) -> None:
    """ "Off fore the same, no, not the same, it's mild and at the toe": the finding, told anew for this foot."""
    for first in talk.having("same") if talk.says(_IT) else ():
        end = sentence_end(talk, first.end)
        at = next((i for i in range(first.end, end) if talk.words[i] == "it"), end)
        told = [m for m in talk.having("findings") if m.end <= first.start]
        between, behind = talk.starting_in(first.end, at), talk.starting_in(at, end)
        back = any(m.get("taking_back") == "repair" or m.get("denials") for m in between)
        placed = any(m.get("zones") for m in behind) and not any(m.get("feet") for m in between)
        other = any(m.is_any(CLASS_SLOTS) for m in (*between, *behind))  # "no, not the same, a corn"
        if told and back and placed and not other:
            first.readings = {"findings": told[-1].readings["findings"]}
            for mention in between:
                mention.dropped = True
            talk.changed()


def not_the_same(talk: Talk, run: list[Mention]) -> bool:
    """ "Right front's the same, no, right front is contracted heels": only "the same" is taken back, for this foot."""
    cue = run[0].start
    same = next((m for m in talk.having("same") if m.end <= cue and set(talk.words[m.end : cue]) <= _HALTS), None)
    if same is None:
        return False
    foot = next((m for m in talk.having("feet") if 0 <= same.start - m.end <= _NEAR), None)
    behind = [m for m in talk.mentions if run[-1].end <= m.start < sentence_end(talk, run[-1].end)]
    again = foot is not None and any(m.get("feet") == foot.get("feet") for m in behind)
    if foot is None or not again or not any(m.is_any(CLASS_SLOTS) for m in behind):
        return False
    same.dropped = foot.dropped = True
    return True


def _clipped_again(talk: Talk, run: list[Mention], new_ones: list[Mention]) -> bool:
    """ "Rim pads, sorry, not rim, wedge pads": behind "not" the first word alone of what was said before."""
    at = new_ones[0].end
    if talk.words[new_ones[0].start : at] != ["not"] or talk.words[at + 1 : at + 2] not in ([","], ["but"]):
        return False
    start = window(talk, run[0].start)
    olds = [m for m in talk.mentions if start <= m.start and m.end <= run[0].start and not m.dropped]
    old = next((m for m in reversed(olds) if len(m.literal) > 1 and talk.words[m.start] == talk.words[at]), None)
    later = [m for m in new_ones[1:] if m.start > at and old is not None and kind_of(m) == kind_of(old)]
    if old is None or not later or _only_thought(talk, old):
        return False
    new_ones[0].readings.pop("denials", None)
    swap(talk, old, later[0], str(kind_of(old)))
    return True


def _same_thing(old: Mention, again: Mention, kind: str) -> bool:
    """Whether the word behind "not" is the one said before: "rim pads, sorry, not rim"; "both hinds, no, not both"."""
    if kind == "feet":
        pair = again.readings["feet"] == "pair_in_hand" and old.get("feet") in ("fronts", "hinds", "lefts", "rights")
        return old.get("feet") is not None and (pair or old.readings["feet"] == again.readings["feet"])
    said = kind_of(old)
    return said is not None and said != "number" and old.readings.get(said) in again.readings.values()


def _only_thought(talk: Talk, said: Mention) -> bool:
    return any(
        m.get("doubts") in ("sought", "before") and 0 <= said.start - m.end <= _NEAR for m in talk.having("doubts")
    )


def _in_next_sentence(talk: Talk, again: Mention) -> list[Mention]:
    """ "Hang on, not the near hind. That crack's in the off hind."."""
    stop = sentence_end(talk, again.end)
    if talk.words[stop + 1 : stop + 2] not in (["that"], ["it"]):
        return []
    following = [m for m in talk.mentions if stop < m.start < sentence_end(talk, stop + 1) and m.get("feet")]
    return following[:1]


def narrowed(talk: Talk, run: list[Mention]) -> bool:
    """ "Left hind I reset, and both fronts, no, I only reset the left front": one of the pair, and the rest stands."""
    feet, behind = talk.having("feet"), run[-1].end
    pair = next((m for m in reversed(feet) if m.end <= run[0].start), None)
    new = next((m for m in feet if m.start >= behind), None)
    if pair is None or new is None or new.readings["feet"] not in _PAIRS.get(pair.readings["feet"], ()):
        return False
    added = talk.words[pair.start - 1] == "and" and set(talk.words[pair.end : run[0].start]) <= {","}
    only = not {"only", "just"}.isdisjoint(said := talk.words[behind : new.start]) and "." not in said
    done = [m for m in talk.having("work") if m.end <= pair.start and sentence_end(talk, m.start) >= pair.start]
    again = [m for m in talk.having("work") if behind <= m.start < new.start]
    if not (added and only and done and again) or done[-1].readings["work"] != again[0].readings["work"]:
        return False
    pair.readings["feet"] = new.readings["feet"]
    return True
