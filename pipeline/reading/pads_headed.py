"""Rims that are pads, because pads head the sentence: "pads, I was thinking leather, went with rims"."""

from __future__ import annotations

from pipeline.reading.exchanges import sentence_end
from pipeline.reading.talk import Talk

_PADS = frozenset({"pads", "pad"})
_RIMS = frozenset({"rim", "rims"})
_PLACES = frozenset(
    {"in", "on", "the", "under", "for", "both", "front", "fronts", "behind", "hinds", "fores", "now", "well"}
)


def pads_under_heading(talk: Talk) -> None:
    """Read a rim behind the heading "pads", in the same sentence, as a rim pad."""
    if not talk.says(_PADS) or not talk.says(_RIMS):
        return
    for rim in [m for m in talk.having("shoe_types", "rim") if talk.words[m.start] in _RIMS]:
        heading = next((i for i in range(rim.start - 1, -1, -1) if talk.words[i] in _PADS), None)
        if heading is None or sentence_end(talk, heading) < rim.start or "shoe" in talk.words[rim.end - 1]:
            continue
        opens = heading == 0 or talk.words[heading - 1] in (".", ",", "?", "and")
        comma = next((i for i in range(heading + 1, rim.start) if talk.words[i] == ","), None)
        if opens and comma is not None and set(talk.words[heading + 1 : comma]) <= _PLACES:
            rim.readings.pop("shoe_types")
            rim.readings["pads"] = "rim"
