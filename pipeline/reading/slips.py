"""A slip of the tongue that is owned up to: "egg bars, I keep saying bar shoes, egg bars" puts on no bar shoes."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.exchanges import kind_of, said_again, sentence_end, swap
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_SLIPS = Sayings(
    *(f"keep {on}{verb}" for on in ("", "on ") for verb in ("saying", "calling", "writing", "thinking")),
    *(f"kept {verb}" for verb in ("saying", "calling", "writing")),
    *(f"always {verb}" for verb in ("say", "call", "saying", "calling")),
    *(f"{nearly} said" for nearly in ("nearly", "almost", "about", "near")),
    "about to say", "was going to say", "was gonna say", "keep wanting to say", "why i said", "why did i say",
    "why do i say", "why am i saying", "why am i calling", "do n't know where i got", "heard myself say",
)  # fmt: skip
_BEEN = Sayings("been saying", "been calling", "been writing", "been telling everybody", "been telling everyone")
_GOING_WITH = Sayings(
    "going with", "go with", "call it", "calling it", "calling that", "settle on", "settling on", "settled on",
    "make it", "making it", "put down", "putting down", "it 's", "he 's", "she 's", "it is",
)  # fmt: skip
_TURN = frozenset({"but", "though", "only"})
_IN_MY_HEAD = Sayings("in my head", "on the brain", "in me head", "in my mind", "on my mind")
_LIGHT = frozenset({"a", "an", "the", "them", "it", "'em", "those", "that", "size", ",", "one", "ones"})
_SHE_IS = frozenset({"she", "he", "they", "'s", "is", "'re", "are", "in", "takes", "wears", "has", "on"})
_NAMING = frozenset({"say", "call", "calls", "called", "known", "saying", "calling"})
_NAMED_SO = _NAMING | {
    ",", "i", "guess", "think", "suppose", "or", "they", "you", "some", "people", "folk", "folks", "we", "it", "'d",
    "would", "what", "as", "the", "here", "there", "also", "to", "is", "'s", "that", "which", "most", "others",
    "around", "round", "these", "parts", "down", "over", "up", "supposed", "a", "bit", "of", "owners", "lads", "us",
}  # fmt: skip
_THAT_IS = (
    [",", "that", "'s"], ["that", "'s"], [",", "that", "is"], [",", "meaning"], ["meaning"], [",", "which", "is"],
)  # fmt: skip
_NAMING_ANEW = _NAMING | {"that", "meaning", "which"}
_TWO_NAMES = 9  # words between the two names of one finding
_BEFORE = 30  # tokens that may lie between what was said and the slip that is owned up to


def drop_slips(talk: Talk) -> None:
    """Take out, on the mentions, what is only named as a slip, and the right word where it is said over."""
    if talk.says(_NAMING_ANEW):
        _drop_second_names(talk)
    for at, words in talk.turns(_BEEN):
        _settle(talk, at + len(words))
    for at, _ in talk.turns(_IN_MY_HEAD):
        _drop_thought(talk, at)
    for at, words in talk.turns(_SLIPS):
        slip = _named(talk, at + len(words), _LIGHT | _SHE_IS)
        kind = kind_of(slip) if slip is not None else None
        if slip is not None and slip.get("denials") and talk.words[at : at + 2] == ["was", "going"]:
            _not_so_after_all(talk, slip)
        if slip is None or kind is None or _asked_before(talk, at):
            continue
        olds = [m for m in talk.mentions if at - _BEFORE <= m.start and m.end <= at and not m.dropped]
        olds = [m for m in olds if kind_of(m) == kind and _near(talk, m, at)]
        right = next((m for m in reversed(olds) if not _same(m, slip, kind)), None)
        if right is None:
            _put_right_behind(talk, olds, slip, kind)
            continue
        slip.dropped = True
        _not_planned(talk, at)
        again = _named(talk, slip.end)
        if again is not None and kind_of(again) == kind and _same(right, again, kind):
            again.dropped = True
        wrong = [m for m in olds if m.end <= right.start and _same(m, slip, kind)]
        if wrong and talk.words[wrong[-1].end : right.start] == [","]:
            swap(talk, wrong[-1], right, kind)


def _settle(talk: Talk, at: int) -> None:
    """ "I've been saying Obel three all morning but I'm going with two": what was settled on stands for it."""
    said = _named(talk, at)
    said = _named(talk, said.end) if said is not None and said.number is None and said.get("measures") else said
    kind = kind_of(said) if said is not None else None
    if said is None or kind is None:
        return
    end = sentence_end(talk, said.end)
    turn = next((i for i in range(said.end, end) if talk.words[i] in _TURN), end)
    for start in range(turn, end):
        form = _GOING_WITH.at(talk.words, start)
        meant = _named(talk, start + len(form)) if form else None
        if meant is not None and kind_of(meant) == kind and not _same(said, meant, kind):
            swap(talk, said, meant, kind)
            _not_planned(talk, start)
            return


def _drop_second_names(talk: Talk) -> None:
    """ "Mud fever, I guess they say scratches", "greasy heel, scratches that is": one finding by two of its names."""
    for first, second in pairwise(talk.having("findings")):
        if first.get("findings") != second.get("findings"):
            continue
        between = talk.words[first.end : second.start]
        named = set(between) <= _NAMED_SO and not _NAMING.isdisjoint(between) and len(between) <= _TWO_NAMES
        named = named or (between == [","] and talk.words[second.end : second.end + 2] == ["that", "is"])
        if named or between in _THAT_IS:
            for mention in [m for m in talk.mentions if first.end <= m.start < second.end]:
                mention.dropped = True


def _drop_thought(talk: Talk, at: int) -> None:
    """ "Rim pads, I'd full pads in my head": what the clause names was in the head alone."""
    start = next((i + 1 for i in range(at - 1, -1, -1) if talk.words[i] in (",", *SENTENCE_ENDS)), 0)
    if "i" in talk.words[start : start + 2]:
        for mention in [m for m in talk.mentions if start <= m.start < at and kind_of(m) is not None]:
            mention.dropped = True


def _put_right_behind(talk: Talk, olds: list[Mention], slip: Mention, kind: str) -> None:
    """ "Plain, why am I saying plain, rims": the right word stands behind the slip."""
    new = _named(talk, slip.end)
    if new is not None and olds and kind_of(new) == kind and not _same(slip, new, kind):
        slip.dropped = True
        swap(talk, olds[-1], new, kind)


def _same(one: Mention, other: Mention, kind: str) -> bool:
    if kind in ("number", "feet"):
        return said_again(one, other, kind)
    return one.get(kind) == other.get(kind)


def _named(talk: Talk, at: int, light: frozenset[str] = _LIGHT) -> Mention | None:
    """The mention behind the token, over nothing but little words."""
    while at < len(talk.words) and talk.words[at] in light and talk.mention_starting(at) is None:
        at += 1
    return talk.mention_starting(at)


def _near(talk: Talk, said: Mention, at: int) -> bool:
    """Whether what was said is in the sentence of the slip or in the one before."""
    return sum(word in SENTENCE_ENDS for word in talk.words[said.end : at]) <= 1


def _asked_before(talk: Talk, at: int) -> bool:
    """ "They keep saying bar shoes": others' words are no slip of the speaker's."""
    return bool({"he", "she", "they", "owner", "vet", "people"} & set(talk.words[max(0, at - 3) : at]))


def _not_planned(talk: Talk, at: int) -> None:
    """ "I will keep saying leather" plans nothing."""
    for mention in [m for m in talk.mentions if at - 2 <= m.start <= at]:
        mention.readings.pop("plans", None)


def _not_so_after_all(talk: Talk, denial: Mention) -> None:
    """ "I was going to say no thrush, but there's a touch": denied nearly."""
    if "but" in talk.words[denial.end : sentence_end(talk, denial.end)]:
        denial.readings.pop("denials")
