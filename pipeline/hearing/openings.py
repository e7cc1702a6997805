"""The name at the head of a memo, where the recogniser wrote something else: "rag the Highland" for Morag.

Nearly every memo begins with a name of the roster. Where none can be read at its head, every name that sounds
at all like some words there is weighed against the sound there; it stands when the sound bears it out and no
other name nearly as well. Of 240 openings of memos in five synthetic voices (the limits were chosen on 182 of them) the
horse was right in 60 of 70 without this and in 68 with it in clean sound, in 61 and 64 of 72 at 15 dB, in 51 and 54 of
71 at 5 dB; in clean sound half of the gain is that of stretches heard again.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from pipeline.hearing.alike import alike
from pipeline.hearing.verified import support
from pipeline.hearing.weighing import Weighed
from pipeline.hearing.wordings import Proposal, bare

Weighing = Callable[[Sequence[Proposal]], list[Weighed]]

_HEAD = 14  # words
_TOLD_BY = 30  # words within which it is said of a horse that it is new, or what it is called
_LONGEST = 3
_LEAST_ALIKE = 0.4
_EXPECTED = 8.0  # nats: what speaks for a name that is on the roster, where one is missing
_STANDS, _AHEAD = -4.5, 2.0
_HARDLY_ALIKE = 0.5  # below it the sound alone must prefer the name
_SENTENCE_END = re.compile(r"[.?!;:]$")
# Said of a horse that is on no roster, or whose name nobody knew.
_NAMING = frozenset({"name", "names", "name's", "named", "called", "call"})
# Words behind "new" of a horse's shoes; any other may be a new horse's.
_FITTED = frozenset(
    [
        "shoe", "shoes", "set", "sets", "pair", "pads", "nails", "ones", "all", "on", "in", "up", "front", "fronts",
        "behind", "hinds", "steel", "aluminum", "aluminium", "plain", "bar", "bars", "egg", "heart", "straight", "wide",
        "rim", "rims", "racing", "plates", "rolled", "half", "glue", "glued", "keg", "concave",
    ]
)  # fmt: skip
# Words of feet and their fittings stand for themselves, unless a name sounds the same.
_OF_FEET = frozenset(
    [
        "fore", "fores", "front", "fronts", "hind", "hinds", "near", "off", "left", "right", "toe", "toes", "heel",
        "heels", "shoe", "shoes", "nail", "nails",
    ]
)  # fmt: skip
_THE_SAME = 0.9


def is_named(text: str, names: Sequence[str]) -> bool:
    """Whether any of the names stands at the head of the text; not one that the horse is told apart from."""
    plain = _plain(bare(text).split()[: _HEAD + _LONGEST])
    return any(name and f" {name} " in plain.replace(f" not {name} ", " not ") for name in map(bare, names))


def _plain(words: Sequence[str]) -> str:
    return " " + " ".join(word.removesuffix("'s") for word in words) + " "


def _not_listed(plain: Sequence[str]) -> bool:
    """Whether the words speak of a horse that is new, or say what it is called; "new shoes" are no new horse."""
    if _NAMING.intersection(plain):
        return True
    return any(word == "new" and behind not in _FITTED for word, behind in zip(plain, [*plain[1:], ""], strict=True))


def opening_name(words: Sequence[str], names: Sequence[str], weighing: Weighing) -> Weighed | None:
    """The roster's name that was said at the head of a memo's first stretch, of which no name was read.

    ``words`` are as written, with their marks. None where no name is borne out, or a horse is said to be new.
    """
    plain = [bare(word) for word in words]
    if _not_listed(plain[:_TOLD_BY]):
        return None
    head = _plain(plain[: _HEAD + _LONGEST])
    meant = [name for name in names if f" not {bare(name)} " not in head]
    best: dict[str, Weighed] = {}
    for weighed in weighing(list(_proposals(words, plain, meant))):
        name = weighed.proposal.wording
        best[name] = max(best.get(name, weighed), weighed, key=support)
    ranked = sorted(best.values(), key=support, reverse=True)
    if not ranked or support(ranked[0]) < _needed(ranked[0]):
        return None
    clear = len(ranked) == 1 or support(ranked[0]) - support(ranked[1]) >= _AHEAD
    return ranked[0] if clear else None


def _needed(weighed: Weighed) -> float:
    return _STANDS if weighed.proposal.likeness >= _HARDLY_ALIKE else _EXPECTED


def _proposals(words: Sequence[str], plain: Sequence[str], names: Sequence[str]) -> list[Proposal]:
    found = []
    for first in range(min(len(words), _HEAD)):
        for last in range(first + 1, min(first + _LONGEST, len(words)) + 1):
            if last - first > 1 and _SENTENCE_END.search(words[last - 2].strip()):
                break
            heard = " ".join(plain[first:last])
            likely = ((name, alike(heard, name)) for name in names)
            found += [
                Proposal(first, last, heard, name, likeness, name=True, prior=_EXPECTED)
                for name, likeness in likely
                if likeness >= (_THE_SAME if _OF_FEET.intersection(plain[first:last]) else _LEAST_ALIKE)
            ]
    return found
