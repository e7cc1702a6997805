"""Two things told again with their feet crossed: "bruise near fore, corn off fore. No, the bruise is on the off …"."""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of, sentence_end
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET

_TWO = 2
_BACK = 3  # sentences, the one of the cue too
_KINDS = frozenset(
    {"findings", "pads", "shoe_types", "shoe_states", "shoe_materials", "clips", "packings", "treatments"}
)
_SINGLE = frozenset({*FEET, "bare_L", "bare_R"})


def uncross(talk: Talk) -> None:
    """Exchange the feet of two things where they are said again behind a cue, each on the other's foot."""
    feet = [m for m in talk.having("feet") if m.readings["feet"] in _SINGLE]
    for cue in talk.having("taking_back") if len(feet) >= 2 * _TWO else ():
        behind, stop = _told_again(talk, cue.end)
        before = _told_before(talk, cue.start) if behind else []
        if not before or {k for k, _ in before} != {k for k, _ in behind}:
            continue
        sides = {key: foot.readings["feet"][-1 if "_" in foot.readings["feet"] else 0] for key, foot in behind}
        crossed = all(_side(foot) != sides[key] for key, foot in before)
        if crossed and len(set(sides.values())) == _TWO and _side(before[0][1]) != _side(before[1][1]):
            one, other = before[0][1], before[1][1]
            one.readings["feet"], other.readings["feet"] = other.readings["feet"], one.readings["feet"]
            for mention in [m for m in talk.mentions if cue.start <= m.start < stop]:
                mention.dropped = True


def _side(foot: Mention) -> str:
    name = foot.readings["feet"]
    return name[-1] if "_" in name else name[0]


def _told_again(talk: Talk, at: int) -> tuple[list[tuple[tuple[str, str], Mention]], int]:
    """The two things behind the cue, in its sentence or with the next one, and the token that ends them."""
    stop = sentence_end(talk, at)
    for end in (stop, sentence_end(talk, stop + 1)):
        if pairs := _pairs([m for m in talk.mentions if at <= m.start < end]):
            return pairs, end
    return [], stop


def _told_before(talk: Talk, at: int) -> list[tuple[tuple[str, str], Mention]]:
    """What was told in the sentence, or in one or two before it, as far as that is two things with a foot each."""
    starts = [0, *(i + 1 for i in range(at) if talk.words[i] in SENTENCE_ENDS)]
    since = max((m.end for m in talk.having("horse") if m.end <= at), default=0)
    for start in dict.fromkeys(max(start, since) for start in reversed(starts[-_BACK:])):
        told = [m for m in talk.mentions if start <= m.start < at]
        if pairs := _pairs(told):
            return pairs
    return []


def _pairs(said: list[Mention]) -> list[tuple[tuple[str, str], Mention]]:
    """Two things with a foot each, in order; none where there is more or less."""
    standing = [m for m in said if not m.dropped]
    feet = [m for m in standing if m.get("feet")]
    if len(feet) != _TWO or any(m.readings["feet"] not in _SINGLE for m in feet):
        return []
    things = [
        (kind, m.readings[kind]) for m in standing if not m.get("feet") and (kind := kind_of(m)) in _KINDS and kind
    ]
    if len(things) != _TWO or things[0] == things[1] or any(m.get("horse") for m in standing):
        return []
    return list(zip(things, feet, strict=True))
