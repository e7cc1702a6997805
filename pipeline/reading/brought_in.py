"""Where a horse is brought in by what it looks like before its name is said.

"The other one, no blaze, is Buck", "Then they led out a mare I didn't know, Buck, and she was lame." Or by how
it came to be done (``taken_on``): "they hollered that Buck had tossed a fore", "they asked would I do Buck, so I did".
"""

from __future__ import annotations

from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import NOT, SENTENCE_ENDS
from pipeline.reading.whose import COLOURS, KIN
from pipeline.vocabulary import CLASS_SLOTS

_ONES = frozenset({"one", "other", "extra", "stray", "another", "hers", "fella", "fellow", "lad", "twin", "mate"})
_NOUNS = HORSE_WORDS | COLOURS | KIN | _ONES
_IS = frozenset({"is", "was", "'s", "be", "being"})
_NAMING = frozenset({"name", "papers", "passport", "card", "sheet", "list", "books", "registered", "has", "used"})
_CALLS = frozenset({"name", "says", "say", "as", "him", "her"})
_BEHIND = frozenset({",", ".", "and", "who", ";"})
PEOPLE = frozenset(
    {"owner", "owners", "lady", "wife", "husband", "daughter", "son", "girl", "boy", "kid", "vet", "trainer", "groom"}
    | {"rider", "neighbour", "neighbor", "friend", "woman", "man", "sire", "dam", "favourite", "favorite", "yard"}
)
_NOT_OPENING = frozenset(
    {"if", "when", "because", "since", "while", "until", "till", "though", "unless", "than", "like"}
    | {"bit", "kicked", "hit", "chased", "hates", "fights", "owns", "reminds"}
)
_IN_HAND = frozenset({"he", "she", "him", "same"})  # "he fights with the grey, Buck": the horse in hand is told of
_SPEAKING = frozenset({"held", "holds", "said", "says", "told", "wants", "wanted", "reckons", "thinks", "asked"})
_NEAR = 4  # tokens right before the name: "the owner's wife, Marigold"
_REACH = 18  # tokens from the head of the sentence to the name
_REPORTED = frozenset(
    {"hollered", "yelled", "yells", "shouted", "called", "roared", "said", "says", "tell", "tells", "told", "noticed"}
)
_ASKED = frozenset({"asked", "asks", "wanted", "begged", "had", "got", "talked"})
_WHOM = frozenset({"me", "would", "could"})
_HAVING, _HAS = frozenset({"had", "'d", "'ve", "got"}), frozenset({"had", "has", "'s", "'d"})
_STANDING = frozenset({"standing", "stood", "tied", "waiting", "there", "in", "ready", "here"})
_OFF = frozenset({"lost", "thrown", "cast", "pulled", "tossed", "sprung", "torn", "ripped", "dropped"})
_LATER = NOT | {"next", "last", "another", "'ll", "will", "but", "if", "when", "week", "friday", "monday", "tomorrow"}
_LED = 5  # words before the name that tell why it comes up
_TRADE = frozenset({*CLASS_SLOTS, "measures", "tester_heads", "pulse_heads", "nail_line_heads", "not_facts", "units"})


def brought_in(talk: Talk, start: int, end: int) -> bool:
    """Whether the name at ``[start, end)`` closes a description of the horse that comes next."""
    head = start
    while head and talk.words[head - 1] not in SENTENCE_ENDS:
        head -= 1
    before = talk.words[head:start]
    if not before or len(before) > _REACH or not (_NOUNS | _NAMING) & set(before) or _NOT_OPENING & set(before):
        return False
    if talk.words[end : end + 1] and talk.words[end] not in _BEHIND:
        return False
    if any(m.is_any(_TRADE) for m in talk.starting_in(head, start)):
        return False
    people = {at for at in range(head, start) if talk.words[at] in PEOPLE and talk.words[at + 1] != "'s"}
    naming = _NAMING & set(before)
    if before[-1] in _IS or (naming and before[-1] in _CALLS):
        return bool(naming or not people) and NOT.isdisjoint(before[-_NEAR:])
    place = before[-3:-2] in (["in"], ["at"], ["from"], ["near"])  # "one in town, Kildare"
    person = people & set(range(start - _NEAR, start)) or _SPEAKING & set(talk.words[end + 1 : end + 2])
    return before[-1] == "," and not place and not person and not _IN_HAND & set(before)


def taken_on(talk: Talk, start: int, end: int) -> bool:
    """Whether the talk goes over to the name at ``[start, end)`` by what led to it, and by work or a foot behind."""
    led = talk.words[max(0, start - _LED) : start]
    before = [word for word in led if word not in ("that", "me", "i")]
    behind = talk.words[end : end + 3]
    if before == [] or len(behind) <= 1 or any(m.is_any(_TRADE) for m in talk.starting_in(start - 2, start)):
        return False
    if behind[0] == "'s" and not _HAVING.isdisjoint(before):
        foot = talk.mention_starting(end + 1)
        if foot is not None and foot.get("feet"):  # "and I'd only Buck's near hind to look at"
            return talk.words[foot.end : foot.end + 2] in (["to", "look"], ["to", "do"], ["to", "see"])
    reported = before[-1] in _REPORTED and behind[0] in _HAS and not _OFF.isdisjoint(behind)
    asked = before[-1] in ("do", "see", "shoe", "at") and not _ASKED.isdisjoint(led) and not _WHOM.isdisjoint(led)
    waiting = before[-1] in _HAVING and behind[0] in _STANDING  # "they'd Buck standing there, so I trimmed her"
    return (reported or asked or waiting) and _done_today(talk, end)


def _done_today(talk: Talk, start: int) -> bool:
    """Whether the sentence from here, or else the next one, tells of work done, and of no other time before it."""
    behind = start + 2  # the "pulled" of "Buck had pulled a shoe" is none
    for _ in range(2):
        end = next((i for i in range(start, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
        told = talk.starting_in(start, end)
        work = next((m.end for m in told if "work" in m.readings and m.start > behind), None)
        other = not _LATER.isdisjoint(talk.words[start : end if work is None else work + 3])
        if work is not None or other or any("horse" in m.readings for m in told):
            return work is not None and not other
        start = end + 1
    return False
