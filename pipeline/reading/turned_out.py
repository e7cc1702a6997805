"""A loose or lost shoe whose foot is told in the end: "they said the near fore, and it was the off"."""

from __future__ import annotations

from pipeline.reading.foot_groups import FootGroup
from pipeline.reading.talk import Segment, Talk

_IT = frozenset({"it", "that", "which"})
_IS = frozenset({"was", "'s", "is"})
_THE = frozenset({"the", "his", "her", "actually", "really", "only", "in", "fact"})
_TURNED_OUT = (["turned", "out", "to", "be"], ["turns", "out", "to", "be"], ["turned", "out"], ["turns", "out"])
_FOUND = frozenset({
    "that", "'s", "was", "is", "bare", "missing", "gone", "off", "lost", "loose", "sprung", "without", "right",
    "enough", "had", "has", "come", "the", "which", "all", "along", "after", "alone", "by", "itself", "of", "course",
})  # fmt: skip
_SHOE = frozenset({"shoe_state"})


def foot_in_the_end(talk: Talk, sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> None:
    """Give a shoe told without a foot the one that "it was", or "turned out to be", behind it in the sentence."""
    told = [d for s in sentence for d in s.drafts if d.slot in _SHOE]
    for draft in [d for d in told if not {"foot: named beside it"} & set(d.rules)]:
        behind = [s for s in sentence if s.index > draft.segment.index and s.horse == draft.segment.horse]
        meant = [g for s in behind if not s.drafts and (g := _it_was(talk, s, groups.get(s.index, []))) is not None]
        if meant:
            draft.feet, draft.foot_carried = meant[-1].feet, False
            draft.note("foot: it turned out to be")
        again = [d for d in told if (d.slot, d.value) == (draft.slot, draft.value) and d.start > draft.start and d.feet]
        if not draft.feet and again:
            draft.drop("said again with its feet")


def _it_was(talk: Talk, segment: Segment, found: list[FootGroup]) -> FootGroup | None:
    """The foot of "it was the off hind", "it's the near fore that's bare"; not of "it was down as the off fore"."""
    if len(found) != 1 or found[0].anaphor:
        return None
    words = talk.words[segment.start : found[0].start]
    led = words[:1] != [] and words[0] in _IT
    was = led and words[1:2] != [] and words[1] in _IS
    words = words[led + was :]
    turned = next((len(form) for form in _TURNED_OUT if words[: len(form)] == form), 0)
    words, led = words[turned:], was or turned > 0
    behind = set(talk.words[found[0].end : segment.end])
    return found[0] if led and set(words) <= _THE and behind <= _FOUND else None
