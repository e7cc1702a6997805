"""Where a horse's name takes the talk over: at the head of a sentence, or behind what was done to it.

"Next horse is Buck", "his mate Buck", "then there was Buck" open; "same as Buck", "Buck's owner", "he bit Buck" do not.
"New shoes in front on Buck" is Buck's, and so is what follows.
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

_COMPARED = frozenset(
    [
        "as", "like", "than", "unlike", "by", "from", "not", "near", "beside", "after", "before", "with", "about",
        "told", "said", "tell", "asked", "called", "behind", "against", "past", "bit", "kicked", "hit", "chased",
        "owns",
    ]
)  # fmt: skip
_SUBJECTS = frozenset({"he", "she", "it", "they", "that", "this", "who", "him", "her"})
_MEETING = frozenset(
    {
        "did", "do", "have", "had", "got", "done", "went", "moved", "started", "finished", "looked", "was", "'s", "is",
        "were", "be",
    }
)  # fmt: skip
_NOT_OPENING = frozenset(
    {"if", "when", "because", "since", "while", "until", "till", "which", "though", "unless", "for"}
)
_OWNED = (
    ["owner"], ["owners"], ["rider"], ["groom"], ["trainer"], ["stall"], ["box"], ["stable"], ["paddock"], ["field"],
    ["girl"], ["lad"], ["lady"], ["people"], ["saddle"], ["rug"], ["truck"], ["trailer"], ["lorry"], ["feed"], ["hay"],
)  # fmt: skip
_NOTED = (["put", "down", "for"], ["write", "down", "for"], ["mark", "down", "for"], ["note", "for"], ["add", "to"])
_ATTACKS = frozenset(
    {"bit", "bites", "kicked", "kicks", "chased", "chases", "hit", "pushed", "trod", "clouted", "cornered", "got"}
)
_HIM = (["him"], ["her"])
_BEHIND_HIM = (
    [],
    *([word] for word in (".", ",", ";", "there", "on", "in", "at", "over", "again", "last", "when", "and")),
)
_LINKS = frozenset({"is", "was", "'s", ",", "that"})
_TAIL = frozenset({"on", "for", "of"})
_HEAD_REACH = 5
_ORDINAL = 3  # "number two, Buck", "the second one is Buck"
_TRADE = frozenset(
    {*CLASS_SLOTS, "feet", "measures", "tester_heads", "pulse_heads", "nail_line_heads", "asides", "not_facts"}
)
_DONE = ("work", "shoe_types", "shoe_materials", "pads", "findings", "treatments", "packings", "clips")


def heads(talk: Talk, span: NameSpan) -> bool:
    """Whether the name stands at the head of its sentence, with nothing of the trade before it."""
    start = sentence_start(talk, span.start)
    before = talk.words[start : span.start]
    if not before or len(before) > _HEAD_REACH or "," in before[:-1] or owns(talk, span):
        return False
    if before in _NOTED:
        return True
    if before[-1] in _COMPARED or before[-1] == "n't" or set(before) & _NOT_OPENING:
        return False
    if set(before) & _SUBJECTS and not set(before) & _MEETING:
        return False
    kin = of_kin(talk, span)
    told = [m for m in talk.starting_in(start, span.start) if m not in kin]
    large = any(m.number is not None and m.number.value > _ORDINAL for m in told)
    planned = any(m.get("plans") not in (None, "main") for m in told)
    return not large and not planned and not any(m.is_any(_TRADE) for m in told)


def of_kin(talk: Talk, span: NameSpan) -> list[Mention]:
    """ "His sister Buck", "her brother is Buck": whose kin or mate the horse is, said right before its name."""
    start = span.start
    while start and talk.words[start - 1] in _LINKS:
        start -= 1
    return [m for m in talk.having("asides") if m.end == start]


def bred_from(talk: Talk, span: NameSpan) -> bool:
    """ "He's out of Buck", "his sire was Buck": only a parent of the horse in hand."""
    before = talk.words[sentence_start(talk, span.start) : span.start]
    parent = before[-2:-1] in (["sire"], ["dam"]) and before[-1] in ("is", "was", ",")
    return parent or (before[-2:] == ["out", "of"] and bool(_SUBJECTS & set(before)))


def closes(talk: Talk, segment: Segment, span: NameSpan) -> bool:
    """ "New shoes in front on Buck": what was done stands before the name, and "on" or "for" leads to it."""
    if talk.words[span.start - 1] not in _TAIL or talk.words[span.end : span.end + 1] == ["'s"]:
        return False
    done = [m for m in segment.mentions if m.end <= span.start and m.is_any(_DONE)]
    return bool(done) and not segment.having("units") and not segment.having("asides")


def owns(talk: Talk, span: NameSpan) -> bool:
    """ "Buck's owner was there": the name is only whose person or thing is spoken of."""
    return talk.words[span.end : span.end + 1] == ["'s"] and talk.words[span.end + 1 : span.end + 2] in _OWNED


_BEING = (["was"], ["is"], ["'s"], ["were"], ["kept"], ["keeps"])
_NOISES = frozenset(
    {"roaring", "shouting", "hollering", "screaming", "bawling", "whinnying", "neighing", "nickering", "bellowing"}
    | {"calling", "roared", "shouted", "hollered", "screamed", "whinnied", "nickered", "yelling", "banging", "kicking"}
)
_FOOD = frozenset(
    {"breakfast", "feed", "dinner", "hay", "bucket", "tea", "supper", "grub", "oats", "haynet", "lunch", "grain"}
)


def turns_on(talk: Talk, end: int) -> bool:
    """ "Buck bit him there": the horse in hand is "him", the name before the token ``end`` is not.

    "Wren got her fronts reset" is Wren's own.
    """
    attacked = talk.words[end : end + 1] != [] and talk.words[end] in _ATTACKS
    bit_him = attacked and talk.words[end + 1 : end + 2] in _HIM and talk.words[end + 2 : end + 3] in _BEHIND_HIM
    return bit_him or _calls_for_food(talk, end)


def _calls_for_food(talk: Talk, end: int) -> bool:
    """ "Buck was roaring over the door for his breakfast": heard from a stall, nothing is told of him."""
    verb = end + (talk.words[end : end + 1] in _BEING)
    if talk.words[verb : verb + 1] == [] or talk.words[verb] not in _NOISES:
        return False
    stop = next((i for i in range(verb, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    told = any(m.is_any(CLASS_SLOTS) or m.get("feet") for m in talk.mentions if verb <= m.start < stop)
    return not told and not _FOOD.isdisjoint(talk.words[verb:stop])


def sentence_start(talk: Talk, index: int) -> int:
    """The first token of the sentence that the token stands in."""
    while index > 0 and talk.words[index - 1] not in SENTENCE_ENDS:
        index -= 1
    return index
