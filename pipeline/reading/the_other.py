"""The other foot of a pair as the one spoken of: "he'd lost the off hind, and the other one was loose"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind

_THE_OTHER = Sayings("the other one", "the other")
_OPENED_BY = frozenset({",", "and", "but", "while", "though", *SENTENCE_ENDS})
_VERBS = frozenset({"was", "is", "'s", "had", "has", "have"})
_NOR_SO = frozenset({"neither", "nor", "so"})
_DOES = _VERBS | {"does", "did", "do"}
_CLOSING = frozenset({",", "and", "but", *SENTENCE_ENDS})
_OF_A_SHOE = frozenset(
    {"loose", "sprung", "hanging", "twisted", "shifted", "gone", "clinched", "bent", "slipped", "half"}
)
_OF_A_FOOT = frozenset(
    {
        "clean",
        "clear",
        "some",
        "none",
        "a",
        "it",
        "no",
        "got",
        "fine",
        "good",
        "grand",
        "cold",
        "cool",
        "okay",
        "ok",
        "new",
        "brand",
        "reset",
        "replaced",
        "tight",
        "plain",
    }
)
_LIGHT = frozenset({"just", "only", "a", "bit", "well", "nearly", "also", "still", "all"})


def mark_the_other(talk: Talk) -> None:
    """Make a foot of "the other" where a shoe is spoken of, or, with one horse in the memo, a finding."""
    if not talk.says(frozenset({"other"})):
        return
    taken = talk.claimed()
    horses = {m.readings["horse"] for m in talk.having("horse")}
    for at, form in _THE_OTHER.within(talk.words, 1, len(talk.words)):
        end = at + len(form)
        foot = len(horses) == 1 and _as_the_first(talk, at, end)
        if not (foot or _told_behind(talk, at, end, one_horse=len(horses) == 1)):
            continue
        if _of_one_foot(talk, at) and not taken & set(range(at, end)):
            talk.mentions.append(Mention(at, end, tuple(range(at, end)), {"feet": "other"}, MatchKind.VARIANT))
    talk.in_order()


def _told_behind(talk: Talk, at: int, end: int, *, one_horse: bool) -> bool:
    """ "And the other one was loose", "the other is clean": a verb, and what a shoe or a foot may be."""
    if talk.words[at - 1] not in _OPENED_BY or talk.words[end : end + 1] == [] or talk.words[end] not in _VERBS:
        return False
    said = end + 1
    while said < len(talk.words) and talk.words[said] in _LIGHT and talk.words[said] != "a":
        said += 1
    word = talk.words[said : said + 1]
    return word != [] and (word[0] in _OF_A_SHOE or (one_horse and word[0] in _OF_A_FOOT))


def _as_the_first(talk: Talk, at: int, end: int) -> bool:
    """ "No heat in the near fore and neither does the other": what was said of the one, said in short of the other."""
    led = talk.words[at - 2] in _NOR_SO and talk.words[at - 1] in _DOES if at > 1 else False
    return led and (talk.words[end : end + 1] == [] or talk.words[end] in _CLOSING)


def _of_one_foot(talk: Talk, at: int) -> bool:
    """Whether one foot, and no horse behind it, was named last, in this sentence or the one before."""
    before = [m for m in talk.mentions if m.end <= at and not m.dropped and (m.get("feet") or m.get("horse"))]
    if not before or before[-1].get("feet") not in FEET:
        return False
    stops = sum(word in SENTENCE_ENDS for word in talk.words[before[-1].end : at])
    return stops <= 1
