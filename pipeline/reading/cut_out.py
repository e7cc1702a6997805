"""A foot cut out for what is in it: "seedy toe in the near fore. Cut out the near fore" is a resection."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Talk

_CUT = frozenset({"cut", "dug", "pared", "carved"})
_OUT = (["out"], ["away"])
_WHOSE = frozenset({"the", "that", "his", "her", "both", "all"})
_FOR = frozenset({"white_line_disease", "keratoma", "canker"})


def draft_cut_out(talk: Talk) -> None:
    """A resection for every foot that was cut out, where something that is cut out was told before."""
    if not talk.says(_CUT):
        return
    found = [m.start for m in talk.having("findings") if m.get("findings") in _FOR]
    for foot in talk.having("feet") if found else ():
        at = _cut(talk, foot)
        segment = talk.segment_at(at) if at is not None else None
        if at is None or segment is None or min(found) > at or any(d.slot == "treatment" for d in segment.drafts):
            continue
        draft = Draft("treatment", "resection", segment, at, at + 1)
        draft.evidence.update({at, *foot.literal})
        draft.note("treatment: the foot was cut out")
        segment.draft(draft)


def _cut(talk: Talk, foot: Mention) -> int | None:
    """The token of "cut" in "cut out the near fore", "cut the near fore out"."""
    at = foot.start - (talk.words[foot.start - 1] in _WHOSE)
    behind = talk.words[foot.end : foot.end + 1] in _OUT
    at = at - 1 if talk.words[at - 1 : at] in _OUT else at if behind else 0
    return at - 1 if at > 0 and talk.words[at - 1] in _CUT else None
