"""A memo spoken to the vet, who is asked or spared as "you": "I'd like you out this week", "please come and film it".

Who is spoken to is told by the memo: "doctor" called by that name, "a report for the clinic", "the mare you blocked".
"""

from __future__ import annotations

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.vet import referral
from pipeline.record import Status

_SPOKEN_TO = frozenset({"you", "please"})
_DOCTORS = frozenset({"doctor", "doc", "doctors", "vet", "vets"})
_HOUSES = frozenset({"clinic", "doctor", "doc", "vet", "vets", "practice", "surgery", "hospital"})
_WRITTEN = frozenset({
    "note", "notes", "update", "report", "memo", "message", "record", "word", "letter", "this", "one", "follow", "up",
    "on", "over", "in", "copy", "summary", "news", "file", "line", "details", ".", ",",
})  # fmt: skip
_HIS_WORK = Sayings(
    "your films", "your x", "your xrays", "your radiographs", "your pictures", "your shots", "your blocks",
    "your block", "your scan", "your scans", "your plates", "your images", "your visit", "your report", "you blocked",
    "you nerve blocked", "you filmed", "you took films", "you x", "you xrayed", "you radiographed", "you scanned",
    "you injected", "you diagnosed", "you examined", "you prescribed", "you operated", "you lanced", "you referred",
)  # fmt: skip
_LOOKING = frozenset({
    "see", "look", "come", "check", "film", "x", "xray", "recheck", "scan", "block", "examine", "assess", "image",
    "ultrasound", "visit", "review", "radiograph", "shoot", "lance", "advise", "looking", "seeing", "coming",
    "checking", "filming", "taking",
})  # fmt: skip
_HAVING = frozenset({"have", "take", "get"})  # with what is looked at or taken behind them
_HAD = frozenset({"look", "films", "film", "pictures", "picture", "rays", "ray", "x", "shots", "out", "radiographs"})
_LOOKED = frozenset({"saw", "looked", "came", "checked", "filmed", "took", "had", "seen", "been", "examined", "see"})
_HERE = frozenset({"out", "back", "in", "here", "over", "up"})
_WANTING = frozenset({"like", "want", "need", "prefer", "love", "have", "ask", "asking", "wanting", "needing", "get"})
_GLAD = frozenset(
    {"glad", "grateful", "obliged", "happier", "better", "appreciate", "easier", "pleased", "well", "good", "like"}
)
_ASKING = frozenset({"could", "can", "would", "will"})
_MUST = frozenset({"should", "need", "ought", "must", "'ll", "will", "may", "might", "had", "'d"})
_TROUBLED = frozenset({"trouble", "bother", "troubling", "bothering", "drag", "dragging", "call", "calling"})
_NOT = frozenset({"no", "not", "n't", "never", "without", "hardly", "nothing", "neither", "nor"})
_CONDITIONS = frozenset({"if", "unless", "until", "till", "should", "when", "once", "case", "better", "doubt"})
_LOOKED_AT = frozenset({"him", "her", "it", "them", "this", "that", "both"})
_REACH = 7  # tokens around "you"


def draft_vet_addressed(talk: Talk) -> None:
    """Add what the vet is asked to do, or need not do, in a memo that is spoken to him."""
    if not talk.says(_SPOKEN_TO) or not _spoken_to_the_vet(talk):
        return
    for segment in talk.segments:
        if any(d.slot == "vet" for d in segment.drafts):
            continue
        for at in range(segment.start, segment.end):
            asked = _asked(talk, segment, at) if talk.words[at] in _SPOKEN_TO else None
            if asked is not None:
                draft = referral(segment, at)
                draft.note("vet: to look" if asked else "vet: not needed")
                if not asked:
                    draft.status = Status.ABSENT
                    draft.note("denied")
                break


def _spoken_to_the_vet(talk: Talk) -> bool:
    return talk.tells(_HIS_WORK) or any(
        _called_by_name(talk, at) or _written_to(talk, at) for at in talk.where(_HOUSES)
    )


def _called_by_name(talk: Talk, at: int) -> bool:
    """ "Doctor, this is about her", "following up on her, doctor.": alone between marks."""
    ahead, behind = talk.words[at - 1 : at] if at else ["."], talk.words[at + 1 : at + 2]
    return (
        talk.words[at] in _DOCTORS
        and ahead[0] in (",", ".")
        and behind in ([","], ["."])
        and ahead + behind != [".", "."]
    )


def _written_to(talk: Talk, at: int) -> bool:
    """ "A report for the clinic", "for the doctor's file", "I'm sending this on to the vet"."""
    led = talk.words[max(0, at - 2) : at]
    if led not in (["for", "the"], ["to", "the"]):
        return False
    ahead = talk.words[at - 3] if at > len(led) else "."
    filed = talk.words[at + 1 : at + 3] in (["'s", "file"], ["'s", "records"], ["'s", "notes"], ["'s", "ears"])
    return filed or (ahead in _WRITTEN and (led[0] == "for" or ahead not in (".", ",")))


def _asked(talk: Talk, segment: Segment, at: int) -> bool | None:
    """Whether the vet is asked to come or look, or need not (False); nothing where neither is said."""
    before = talk.words[max(segment.start, at - _REACH) : at]
    after = talk.words[at + 1 : min(segment.end, at + 1 + _REACH)]
    if talk.words[at] == "please":
        sent = after[:1] == ["see"] and _LOOKED_AT.isdisjoint(after[1:2])  # "please see the notes"
        return True if _looks(after) and not sent else None
    if not after:
        return False if before[-1:] and before[-1] in _TROUBLED and not _NOT.isdisjoint(before) else None
    if not _asks(before, after):
        return _needless(before, after)
    led = talk.words[segment.start : at]
    denied = not _NOT.isdisjoint(before) or not _NOT.isdisjoint(after[:3])
    return not denied or not _CONDITIONS.isdisjoint(led)


def _needless(before: list[str], after: list[str]) -> bool | None:
    """ "No need for you to come out", "I won't trouble you with it": no call for him."""
    spared = before[-1:] == ["for"] or (before[-1:] != [] and before[-1] in _TROUBLED)
    return False if spared and not _NOT.isdisjoint(before) and _CONDITIONS.isdisjoint(before) else None


def _asks(before: list[str], after: list[str]) -> bool:
    """Whether the words around "you" ask him to come or look."""
    last = before[-1] if before else ""
    rest = [word for word in after if word not in _NOT and word != "do"]
    if not rest:
        return False
    if last in _WANTING:
        return rest[0] in _HERE or (rest[0] == "to" and _looks(rest[1:]))
    if last == "if" and not _GLAD.isdisjoint(before):
        return rest[0] in _LOOKED or _looks(rest[1:])
    if last in ("till", "until"):
        return not _LOOKED.isdisjoint(rest[:3])
    if last in _ASKING and _looks(rest):
        return True
    return rest[0] in _MUST and _looks(rest[1:])


def _looks(words: list[str]) -> bool:
    """ "Come and film it", "to have a look", "want to see him", "please see her"."""
    for word in words[:4]:
        if word in _LOOKING:
            return True
        if word in _HAVING:
            return not _HAD.isdisjoint(words)
        if word not in ("to", "want", "and", "please", "mind", "just", "have", "be", "need", "better", "do", "then"):
            return False
    return False
