"""An amount without its finding: "left hind's got some too", "there's a bit in the off hind", "a touch of it"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk

SOME = "some of it: the finding before"
_BEGINNINGS = frozenset({"start", "beginning", "beginnings", "makings"})
AMOUNTS = _BEGINNINGS | {
    "some", "bit", "little", "touch", "trace", "speck", "smidge", "spot", "hint", "more", "lick", "tad",
}  # fmt: skip
_SIZES = frozenset(
    {"a", "wee", "little", "small", "tiny", "good", "fair", "just", "only", "slight", "some", "mild", "moderate"}
)
_HAVING = frozenset(
    {"has", "have", "had", "got", "found", "saw", "see", "shows", "showing", "seen", "carrying", "get", "getting"}
)
_THERE_IS = (["there", "'s"], ["there", "is"], ["there", "was"], ["there", "were"], ["theres"], ["is", "there"])
_BETWEEN = frozenset({"still", "also", "just", "only", "maybe", "as", "well", "too", "now"})
_OF_IT = Sayings("of it", "of that", "of the same", "of the stuff", "of them", "as well", "too", "also")
_REMAINING: tuple[list[str], ...] = ([","], ["."], ["in"], ["on"], ["at"], ["there"], ["yet"], [])
_BEHIND = frozenset(
    {"in", "on", "at", "too", "also", "as", "now", "still", "though", "going", "starting", "there", "coming", "behind"}
    | {"up", "under", "over", "today", "and", "but", "either", "again", "along", "round", "around"}
)
_DEICTIC = frozenset(
    {"it", "that", "this", "one", "they", "both", "all", "which", "those", "there", "smell", "he", "she"}
)
_TRADE = frozenset({"feet", "zones", "same", "totals", "findings"})
_AWAY = frozenset({"back", "up", "down", "off", "out", "them", "it"})
_DONE = frozenset({
    "bring", "bringing", "brought", "take", "taking", "took", "taken", "set", "dressed", "dressing", "rasped", "cut",
    "pulled", "backed", "backing", "opened", "eased", "pared",
})  # fmt: skip
_WHILE, _BIT = frozenset({"for", "after", "in"}), frozenset({"bit", "little", "touch"})
_DONE_BEFORE = 5  # tokens from "bringing" to "a bit"
FIERCE, _PERSON = frozenset({"savage", "vicious"}), frozenset({"he", "she", "mare", "horse", "gelding", "pony"})
_HEADS = ("pulse_heads", "tester_heads", "tester_responses")
_FOUND = ("findings", "warmths", *_HEADS)
_VERY = FIERCE | {"on", "to", "with", "the", "really", "pretty"}
_LESS, _SO_FAR = frozenset({"not", "n't", "never", "nowhere", "nothing"}), 5


def some_of_it(talk: Talk, segment: Segment) -> list[Mention]:
    """The amounts in the segment that stand for the finding told before; none where a word says of what they are."""
    if segment.having("findings") or AMOUNTS.isdisjoint(talk.words[segment.start : segment.end]):
        return []
    for at in [i for i in range(segment.start, segment.end) if talk.words[i] in AMOUNTS]:
        if talk.having("tester_heads") and any(at in m.literal for m in segment.having("tester_responses")):
            continue  # "testers on the off hind, found a spot"
        behind = at + 1
        if talk.words[behind : behind + 1] == ["left"] and talk.words[behind + 1 : behind + 2] in _REMAINING:
            for side in [m for m in segment.having("feet") if m.start == behind]:
                side.dropped = True  # "there's a little left in the sulcus": no side
            behind += 1
        yet = talk.words[behind : behind + 1] == ["yet"] or talk.words[behind - 1] == "left"
        behind += yet and talk.words[behind : behind + 1] == ["yet"]
        if form := _OF_IT.at(talk.words, behind):
            behind += len(form)
        if talk.words[at] in _BEGINNINGS and form[:1] != ["of"]:
            continue  # "he has the start of it in the off fore"; not "at the start"
        closed = behind >= segment.end or talk.words[behind] in _BEHIND
        yet = yet or "still" in talk.words[segment.start : at]  # "still a bit in the off hind"
        of_it = form[:1] == ["of"]
        if closed and _there(talk, segment, at, sure=of_it or yet or talk.words[at] in ("some", "more")):
            return [Mention(at, behind, tuple(range(at, behind)), {"same": SOME})]
    return []


def _there(talk: Talk, segment: Segment, amount: int, *, sure: bool) -> bool:
    """Whether the amount is there: "has some", "there's a bit", "some in the hinds"; not "a bit on the long side"."""
    at = amount - (talk.words[amount] in _BEGINNINGS and talk.words[amount - 1] == "the")
    while at > segment.start and talk.words[at - 1] in _SIZES:
        at -= 1
    while at > segment.start and talk.words[at - 1] in _BETWEEN:
        at -= 1
    if at == segment.start:
        return (
            segment.delimiter in ("start", "but", "and", ", and", ", but", ",")
            and bool(segment.having("feet"))
            and sure
        )
    if talk.words[at - 1] == "carrying" and not sure and not segment.having("feet"):
        return False  # "carrying a bit, condition seven": weight
    there = talk.words[max(segment.start, at - 2) : at] in _THERE_IS
    return there or talk.words[at - 1] in _HAVING or (sure and talk.words[at - 1] in ("is", "'s"))


def of_another_thing(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Thrush, the flies were bad, and a corn": how bad something else is that has a verb of its own."""
    words = talk.words[segment.start : mention.start]
    plain = len(words) in (2, 3) and words[-1] in ("was", "were") and len(segment.mentions) <= len(words[:-1])
    return plain and _DEICTIC.isdisjoint(words) and not any(m.is_any(_TRADE) for m in segment.mentions)


def less_so(talk: Talk, at: int) -> bool:
    """ "Not nearly as bad", "nowhere near as sore": less than it was or than another, and how much is not said."""
    led = talk.words[max(0, at - _SO_FAR) : at]
    return led[-1:] in (["as"], ["so"]) and not _LESS.isdisjoint(led)


def how_far(talk: Talk, mention: Mention) -> bool:
    """ "Been bringing the long toes back a bit", "took a bit off", "for a bit": no degree."""
    if talk.words[mention.start - 1] in _WHILE and talk.words[mention.end - 1] in _BIT:
        return True
    led = talk.words[max(0, mention.start - _DONE_BEFORE) : mention.start]
    if talk.words[mention.end : mention.end + 1] == ["off"]:
        return not _DONE.isdisjoint(led[-1:])
    bit = talk.words[mention.end - 1] in _BIT
    return bit and not _AWAY.isdisjoint(led[-1:]) and not _DONE.isdisjoint(led[:-1])


def tell_fierce(talk: Talk) -> None:
    """ "Savage heat", "the pulse was vicious": how strong it is; "she was savage" tells of the horse."""
    for mention in [m for m in talk.having("manners") if m.get("severities")]:
        of_what = _fierce(talk, mention)
        for name in ("severities", "pulses") if of_what is False else ():
            mention.readings.pop(name, None)
        if of_what is not False:
            del mention.readings["manners"]
        if of_what is None:
            mention.dropped = True
            talk.unread.append((mention.start, mention.end, "how bad it is, or how the horse was"))


def _fierce(talk: Talk, mention: Mention) -> bool | None:
    """Whether it is said of what is found; None where it may be said of either: "corn, near fore, savage"."""
    if (segment := talk.segment_at(mention.start)) is None:
        return False
    found = [m for m in segment.mentions if m is not mention and m.is_any(_FOUND)]
    person = not _PERSON.isdisjoint(talk.words[segment.start : mention.start])
    if any(m.end <= mention.start for m in found):
        return not person
    places = {i for m in segment.having("zones") for i in m.literal}
    if found and _VERY.issuperset(talk.words[i] for i in range(mention.end, found[0].start) if i not in places):
        return None if person and found[0].get("tester_heads") else True  # "he was vicious with the testers"
    alone = segment.joined_by(",", "start") and _VERY.issuperset(talk.words[segment.start : segment.end])
    ahead = talk.segments[segment.index - 1].mentions if segment.index and alone else []
    behind = bool(ahead) and ahead[-1].end == segment.start - 1 and "findings" in ahead[-1].readings
    if behind or any(m.is_any(_HEADS) for m in ahead):
        return True  # "near fore, thrush, savage"
    return None if any(m.is_any(_FOUND) for m in ahead) else False
