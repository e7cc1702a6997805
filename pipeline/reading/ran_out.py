"""What was named first and had run out: "iodine on it. No, the iodine ran out, it was copper sulfate"."""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of, sentence_end, window
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk

_OUT = Sayings(
    "ran out", "run out", "ran short", "'s finished", "was finished", "is finished", "were finished", "all gone",
    "was out of", "were out of", "'d none", "had none", "'m out of", "'d no", "had no", "was gone", "were gone",
    "'s gone", "was empty",
)  # fmt: skip
_KINDS = frozenset({"treatments", "packings", "pads", "shoe_types", "shoe_materials", "traction", "clips"})
_CUES = frozenset({"no", "wait", "sorry", "actually", "nope", "hang", "hold", "nah"})
_SOON = 4  # tokens behind these words, over a stop: "the putty's finished. Silicone it was"
_NEAR = 3  # tokens from what ran out to these words


def leave_out_what_ran_out(talk: Talk) -> None:
    """Drop the thing that there was none of, where what was used instead is told behind it."""
    if not talk.tells(_OUT):
        return
    for at, form in talk.turns(_OUT):
        behind = at + len(form)
        gone = next((m for m in talk.mentions if _kind(m) and at - _NEAR <= m.start < behind + _NEAR), None)
        if gone is None or gone.dropped:
            continue
        told = [
            m
            for m in talk.mentions
            if window(talk, gone.start) <= m.start < max(sentence_end(talk, gone.start), behind + _SOON)
        ]
        first = next((m for m in told if m.end <= gone.start and _same(m, gone)), None)
        instead = next((m for m in told if m.start >= max(behind, gone.end) and _kind(m) == _kind(gone)), None)
        if (
            first is None
            or instead is None
            or _same(instead, gone)
            or _CUES.isdisjoint(talk.words[first.end : gone.start])
        ):
            continue
        for mention in [m for m in told if first.end <= m.start < instead.start]:
            mention.dropped = mention.dropped or mention.is_any(("times", "denials", "taking_back", "resolutions"))
        first.dropped = gone.dropped = True


def _kind(mention: Mention) -> str | None:
    kind = kind_of(mention)
    return kind if kind in _KINDS else None


def _same(one: Mention, other: Mention) -> bool:
    kind = _kind(other)
    return kind is not None and one.get(kind) == other.get(kind)
