"""Where a horse is brought in by what it looks like before its name is said.

"The other one, no blaze, is Buck", "Then they led out a mare I didn't know, Buck, and she was lame."
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
