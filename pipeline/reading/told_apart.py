"""Two feet told of one by one: "left front was sprung, right hind was worn through. New shoes on those two"."""

from __future__ import annotations

from pipeline.reading.foot_groups import FootGroup
from pipeline.reading.pointed_out import is_across
from pipeline.reading.talk import Feet, Segment, Talk
from pipeline.record import FEET


def told_apart(talk: Talk, sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> Feet | None:
    """A front and a hind that were told of in one sentence, or in two in a row, with nothing said of another foot."""
    named = _single_feet(sentence, groups)
    before = talk.sentence(sentence[0].sentence - 1) if sentence[0].sentence else []
    if named is not None and len(named) == 1 and before and before[-1].horse == sentence[0].horse:
        one = _single_feet(before, groups)
        named = [*one, *named] if one is not None and len(one) == 1 else named
    feet = tuple(foot for foot in FEET if foot in (named or ()))
    return feet if is_across(feet) else None


def _single_feet(sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> list[str] | None:
    """The feet named one by one in a sentence, in order; None where several are named at once."""
    named = [g.feet for s in sentence for g in groups.get(s.index, []) if not g.anaphor]
    if not named:
        return None
    if any(len(feet) != 1 for feet in named) or len({s.horse for s in sentence}) > 1:
        return None
    return list(dict.fromkeys(feet[0] for feet in named))
