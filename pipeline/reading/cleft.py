"""What is put first: "it wasn't the left front that was lame, it was the right", "a bar shoe is what he needs".

And a finding that a pronoun takes up: "Corn, she has one in the off fore".
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.opening import sentence_start
from pipeline.reading.talk import Segment, Sentence, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_WAS_NOT = (["was", "n't"], ["is", "n't"], ["was", "not"], ["'s", "not"], ["is", "not"])
_NOT = frozenset({"n't", "not"})
_IT = frozenset({"it", "that"})
_IS = frozenset({"was", "'s", "is"})
_WHO = frozenset({"that", "which", "who", "he", "she"})
NEEDED = frozenset({"needs", "need", "wants", "want"})
_ASKS_FOR = 6  # tokens from "what" to the verb
_ARE = _IS - {"was"} | {"are"}
_PUT = frozenset({"put", "got", "gave", "went", "fitted", "did", "made"})
_WILL = frozenset({"'ll", "will", "gonna", "going", "'d", "would", "could"})
_WHOSE = frozenset({"he", "she", "they", "there", "it", "i"})
_DONE = _PUT - {"made"} | {"popped", "nailed", "used", "have", "has"}
_SAYS_DONE = _DONE | _WHOSE | {
    "we", "them", "that", "'s", "what", "a", "pair", "set", "one", "some", "on", "in", "him", "her", "'ve", "now",
}  # fmt: skip
_MANAGED = frozenset({"managed", "did", "done"})
_SAYS_MANAGED = _SAYS_DONE | _MANAGED | {"so", "to", "the", "end", "too", "just", "got", "and"}
_PUT_FIRST = frozenset({"a", "an", "the", "now", "then", "and", "so", "okay", "right", "that", "old", "his", "her"})
_HAVING = frozenset({"had", "has", "have", "'s", "'d", "'ve", "got", "is", "was", "found", "saw"})
_ADVERBS = frozenset({"still", "always", "also", "once", "only", "just"})
_TAKING_UP = frozenset({"it", "that", "one", "some"})
_FOOT_WITHIN = 3  # tokens from the pronoun to its foot: "one on the off fore"
_LONGEST = 12  # tokens from the first foot to the one that is meant


def set_foot_right(talk: Talk) -> None:
    """Put the foot that it is in place of the foot that it wasn't; the denial goes, since it only denied the foot."""
    if not (talk.says(_WHO) and talk.says(_NOT)):
        return
    for at in [i for i in talk.where(_IT) if i < len(talk.words) - 4 and talk.words[i + 1 : i + 3] in _WAS_NOT]:
        wrong = _foot_at(talk, at + 3)
        if wrong is None or _WHO.isdisjoint(talk.words[wrong.end : wrong.end + 1]):
            continue
        meant = _meant(talk, wrong)
        if meant is None:
            continue
        name, side = str(meant.readings["feet"]), str(wrong.readings["feet"])
        wrong.readings["feet"] = name[-1] + side[-1] if name.startswith("bare_") and len(side) == len("LF") else name
        meant.dropped = True
        for mention in [m for m in talk.mentions if at < m.start < wrong.start or at < m.end <= wrong.start]:
            mention.readings.pop("denials", None)


def take_up(talk: Talk) -> None:
    """ "Corn, she has one in the off fore": the finding is said where the pronoun stands, not on the foot in hand."""
    moved = False
    for found in talk.having("findings"):
        at = _pronoun(talk, found.end) if talk.tokens.lowers[found.end : found.end + 1] == [","] else None
        if at is None or found.dropped or not _heads(talk, found.start):
            continue
        pronoun = talk.mention_starting(at)
        if pronoun is not None:
            pronoun.dropped = True
        found.start, found.end, moved = at, at + 1, True
        found.literal = (at,)
        talk.changed()
    talk.in_order(moved=moved)


def _heads(talk: Talk, at: int) -> bool:
    """Whether the finding stands alone in its clause, and no foot before it in the sentence: "left front, corn, …"."""
    start = sentence_start(talk, at)
    if any(start <= m.start < at for m in talk.having("feet")):
        return False
    while at > start and talk.words[at - 1] in _PUT_FIRST:
        at -= 1
    return at == start or talk.words[at - 1] == ","


def _pronoun(talk: Talk, comma: int) -> int | None:
    """The token of "one" in ", she has one in the off fore"."""
    at = comma + 1
    if talk.words[at : at + 1] == [] or talk.words[at] not in _WHOSE:
        return None
    start = at = at + 1
    while at < len(talk.words) and talk.words[at] in _HAVING | _ADVERBS:
        at += 1
    if at == start or at >= len(talk.words):
        return None
    footed = any(at < m.start <= at + _FOOT_WITHIN for m in talk.having("feet"))
    return at if talk.words[at] in _TAKING_UP and footed else None


def needed(talk: Talk, sentence: Sentence) -> list[Mention]:
    """ "A bar shoe is what that off hind needs": a plan, unless it is told behind that it was put on."""
    found = []
    for position, segment in enumerate(sentence):
        for at in [i for i in range(segment.start + 2, segment.end) if talk.words[i] in NEEDED]:
            what = next(
                (i for i in range(at - 1, max(segment.start, at - _ASKS_FOR), -1) if talk.words[i] == "what"), 0
            )
            if not what or talk.words[what - 1] not in _ARE or _put_on(talk, sentence[position + 1 :]):
                continue
            found.append(Mention(segment.start, at + 1, (what, at), {"plans": "before"}))
    return found


def _put_on(talk: Talk, behind: list[Segment]) -> bool:
    """ "… and that's what he got", "… so I put one on"; not "… and I'll put one on"."""
    words = [set(talk.words[s.start : s.end]) for s in behind]
    return any(said & _PUT and not said & _WILL for said in words)


def put_on_behind(talk: Talk, sentence: Sentence, at: int) -> bool:
    """ "He ought to be in bar shoes, so I put them on", "so that's what he got"; not "so I put them on the list"."""
    last = sentence[-1].index
    for behind in talk.segments[sentence[0].index + 1 : last + 2]:
        said = talk.words[behind.start : behind.end]
        joined = behind.index <= last or talk.words[behind.start - 1] in ("so", "and")
        if behind.start > at and not _MANAGED.isdisjoint(said) and _SAYS_MANAGED.issuperset(said):
            return True  # "I hoped to reset the fronts, and I managed it"
        if behind.start > at and joined and not _DONE.isdisjoint(said) and _SAYS_DONE.issuperset(said):
            return {*_WILL, "next", "if"}.isdisjoint(talk.words[sentence[0].start : behind.start])
    return False


def _meant(talk: Talk, wrong: Mention) -> Mention | None:
    """The foot behind "it was" in the same sentence."""
    for at in range(wrong.end + 1, min(wrong.end + _LONGEST, len(talk.words) - 1)):
        if talk.words[at] in SENTENCE_ENDS:
            return None
        if talk.words[at] in _IT and talk.words[at + 1] in _IS and talk.words[at - 1] in (",", "but"):
            return _foot_at(talk, at + 2)
    return None


def _foot_at(talk: Talk, at: int) -> Mention | None:
    at = at + 1 if talk.words[at : at + 1] in (["the"], ["his"], ["her"]) else at
    return next((m for m in talk.having("feet") if m.start in (at - 1, at) and m.end > at), None)
