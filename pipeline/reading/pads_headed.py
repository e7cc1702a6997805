"""Rims and leather that are pads, because pads head the sentence: "pads, I was thinking leather, went with rims"."""

from __future__ import annotations

from pipeline.reading.exchanges import sentence_end
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.record import MatchKind

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
