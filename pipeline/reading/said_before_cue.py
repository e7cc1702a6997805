"""The right word before the cue: "size nought, double nought I mean"; "thrush in the near hind, off hind, sorry"."""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of, opened_sentence, said_again, swap, window
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk

_AFTERTHOUGHTS = (["call", "it"], ["i", "mean"], ["i", "meant"], ["should", "say"], ["sorry"], ["rather"])
_NEAR = 3  # tokens from the cue to a word that it would rather lead to


def replace_before(talk: Talk, run: list[Mention]) -> bool:
    """ "Size nought, double nought I mean": the repair stands before its cue."""
    cue = run[-1]
    follower = talk.words[cue.end] if cue.end < len(talk.words) else "."
    if len(run) > 1 or follower not in (",", ".") or talk.words[cue.start : cue.end] not in _AFTERTHOUGHTS:
        return False
    begun = cue.start - (talk.words[cue.start - 1] == "i")  # "I should say"
    alone = begun > 1 and talk.words[begun - 1] == ","
    if alone and _number_alone(talk, begun):
        return _exchange_number(talk, begun)
    if alone and (old := _right_before(talk, cue, begun)) is not None:
        old_kind = kind_of(old)
        new_one = talk.mention_ending(begun - 1)
        if old_kind is not None and new_one is not None:
            swap(talk, old, new_one, old_kind)
            new_one.dropped = new_one.dropped or old_kind == "feet"
        return True
    if alone and (follower != "." or talk.words[cue.start : cue.end] == ["sorry"]):
        return False
    limit = begun - 1 if alone else begun
    comma = max((i for i in range(limit) if talk.words[i] in (",", ".")), default=-1)
    new = next(
        (m for m in talk.mentions if comma < m.start and m.end <= cue.start and not m.dropped and kind_of(m)), None
    )
    if new is not None and new.stands_for is not None:
        return True  # "size two, er, two and a half I mean" is put right already
    bare = new is not None and (new.start, new.end) == (comma + 1, begun)  # "Left front is fifty. Fifty one I mean."
    if new is None or comma < 0 or (talk.words[comma] != "," and not (alone or bare)):
        return False
    kind = kind_of(new)
    start = window(talk, comma)
    olds = [m for m in talk.mentions if start <= m.start and m.end <= comma and not m.dropped and kind_of(m) == kind]
    if not olds or kind is None:
        return False
    swap(talk, olds[-1], new, kind)
    return True


def _right_before(talk: Talk, cue: Mention, begun: int) -> Mention | None:
    """ "Thrush in the near hind, off hind, sorry.": two of a kind on end, the cue and none of their kind behind it."""
    new = talk.mention_ending(begun - 1)
    kind = kind_of(new) if new is not None else None
    if new is None or kind is None:
        return None
    at = new.start
    while at and talk.words[at - 1] in ("the", "a", "an", "in", "on"):
        at -= 1
    old = talk.mention_ending(at - 1) if at > 1 and talk.words[at - 1] == "," else None
    behind = next((m for m in talk.mentions if m.start > cue.end and kind_of(m)), None)
    if old is None or kind_of(old) != kind or said_again(old, new, kind) or old.readings == new.readings:
        return None
    near = behind is not None and behind.start - cue.end <= _NEAR and talk.words[cue.end] == ","
    return None if near and behind is not None and kind_of(behind) == kind else old


def _number_alone(talk: Talk, begun: int) -> bool:
    """ "Seven nails. Eight, sorry, in each.": the repair opens its sentence."""
    number = talk.mention_ending(begun - 1)
    return number is not None and number.number is not None and opened_sentence(talk, number.start)


def _exchange_number(talk: Talk, begun: int) -> bool:
    new = talk.mention_ending(begun - 1)
    olds = [m for m in talk.mentions if new is not None and m.end <= new.start and not m.dropped and m.number]
    old = next((m for m in reversed(olds) if m.start >= window(talk, new.start)), None) if new is not None else None
    if new is None or old is None:
        return False
    swap(talk, old, new, "number")
    return True
