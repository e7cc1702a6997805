"""Names said only to tell which horse is meant: "Buck, Tally's teammate", "or is it Tally?", "Tally's the one sold"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import KIN, OFFSPRING
from pipeline.record import MatchKind
from pipeline.vocabulary import CLASS_SLOTS

_FELLOWS = KIN | OFFSPRING | frozenset({
    "dam", "sire", "teammate", "stablemate", "companion", "friend", "buddy", "pal", "twin", "mate", "match", "partner",
    "neighbour", "neighbor", "mum", "mom", "dad", "father", "sibling", "cousin", "shadow", "half", "other",
})  # fmt: skip
_WITHIN = 3  # tokens: "Tally's old paddock mate"
_TO = frozenset({"to", "of"})
_MARKS = SENTENCE_ENDS | {","}
_ASKED = tuple([*led, *be] for led in ([], ["or"], ["wait"]) for be in (["is", "it"], ["was", "it"], ["is", "this"]))
_GONE = frozenset({"sold", "died", "retired", "dead", "gone", "left", "put"})
_THE_ONE = (["'s", "the", "one"], ["is", "the", "one"], ["was", "the", "one"])
_TOLD = frozenset({*CLASS_SLOTS, "feet", "measures"})


def leave_out_told_by(talk: Talk) -> None:
    """Drop the names of horses that only tell which one is meant; none of them was seen."""
    names = talk.having("horse")
    for before, name in pairwise(names):
        other = before.get("horse") != name.get("horse")
        kin = other and _of_kin(talk, name) and not _told_between(talk, before, name)
        if kin or (other and _asked(talk, name)) or _gone_since(talk, name):
            name.dropped = True
            here = tuple(range(name.start, name.end))  # so that its sound names nobody
            talk.mentions.append(Mention(name.start, name.end, here, {"remarks": "remark"}, MatchKind.VARIANT))


def _of_kin(talk: Talk, name: Mention) -> bool:
    """ "Buck, the big bay, Tally's brother.", "Buck, brother to Tally,": closed by a mark."""
    words, start = talk.words, name.start
    if words[name.end : name.end + 1] not in (["'s"], ["'"]):
        led = words[max(0, start - 2) : start]
        return led[1:] != [] and led[1] in _TO and led[0] in _FELLOWS and words[start - 3] in (",", "a", "full", "half")
    end = next_mark(talk, name.end, _MARKS)
    said = words[name.end + 1 : min(end, name.end + 1 + _WITHIN)]
    opens = words[start - 1] in _MARKS or words[start - 1] in ("is", "'s", "was")
    return opens and end - name.end - 1 == len(said) and said[-1:] != [] and said[-1] in _FELLOWS


def _told_between(talk: Talk, before: Mention, name: Mention) -> bool:
    """Whether anything of the trade was told of the horse before: then the kin may be the next horse."""
    return any(m.is_any(_TOLD) or m.number is not None for m in talk.starting_in(before.end, name.start))


def _asked(talk: Talk, name: Mention) -> bool:
    """ "Buck. Or is it Tally? No, Buck.": a question with nothing but the name."""
    start = name.start
    while start and talk.words[start - 1] not in _MARKS:
        start -= 1
    asked = talk.words[start : name.start] in _ASKED and talk.words[name.end : name.end + 1] in (["?"], ["."], [","])
    return asked and _named_behind(talk, name)


def _named_behind(talk: Talk, name: Mention) -> bool:
    """ "… No, Buck": whether the next horse that is named is another one."""
    behind = next((m for m in talk.having("horse") if m.start > name.start), None)
    near = behind is not None and talk.words[behind.start - 1] in (",", "it", "'s", "is", "no", ".")
    return near and behind is not None and behind.get("horse") != name.get("horse") and behind.start - name.end <= 5


def _gone_since(talk: Talk, name: Mention) -> bool:
    """ "Tally's the one that got sold": told of only to say that she is not the horse in hand."""
    if talk.words[name.end : name.end + 3] not in _THE_ONE or talk.words[name.start - 1 : name.start] not in (
        [","],
        ["."],
    ):
        return False
    end = next_mark(talk, name.end, _MARKS)
    said = talk.words[name.end + 3 : end]
    return not _GONE.isdisjoint(said) and not any(m.is_any(_TOLD) for m in talk.starting_in(name.end, end))
