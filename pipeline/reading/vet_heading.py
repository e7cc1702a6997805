"""The vet as a heading, answered behind it: "Vet: not needed", "Vet, none required this time", "Vet: yes"."""

from __future__ import annotations

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.vet import VETS, referral
from pipeline.record import Status

_LED = frozenset({"the", "a", "as", "for", "and", "now"})
_NEEDLESS = Sayings(
    "not needed", "not required", "not wanted", "not necessary", "not called for", "not this time", "not today",
    "not yet", "not at present", "none needed", "none required", "none wanted", "no need", "no call", "no", "nope",
    "none", "nothing for", "nothing to", "need n't",
)  # fmt: skip
_WANTED = Sayings(
    "yes", "needed", "required", "wanted", "please", "to see", "to look", "to check", "to be called", "to come",
    "to film",
)  # fmt: skip
_LIGHT = frozenset({
    "needed", "need", "required", "wanted", "call", "necessary", "for", "him", "her", "it", "this", "that", "time",
    "today", "yet", "at", "present", "all", "to", "see", "look", "trouble", "bother", "thank", "god", "goodness", "not",
    "no", "now", "visit", "one", "come", "out", "of", "he", "she", "'s", "i", "told", "said", "so", "them", "here",
    "thanks",
})  # fmt: skip


def draft_vet_answered(talk: Talk) -> None:
    """Add a referral, or its denial, where a segment is the vet alone and the next one says whether he is wanted."""
    if not talk.says(VETS):
        return
    for before, answer in zip(talk.segments, talk.segments[1:], strict=False):
        if before.drafts or answer.having("vet") or not _only_vet(talk, before):
            continue
        if not _answers(talk, before, answer):
            continue
        wanted = bool(_WANTED.at(talk.words, answer.start)) and not answer.having("denials")
        if wanted or _says_no(talk, answer):
            draft = referral(answer, answer.start)
            draft.note("vet: to look" if wanted else "vet: not needed")
            if not wanted:
                draft.status = Status.ABSENT
                draft.note("denied")


def _answers(talk: Talk, before: Segment, answer: Segment) -> bool:
    """Whether the segment behind the vet can be its answer; a bare "yes" or "no" only behind a colon or at the end."""
    bare = talk.words[answer.start : answer.end] in (["no"], ["nope"], ["none"])
    bare = bare or talk.words[answer.start] == "yes"
    closed = talk.words[answer.end : answer.end + 1] in ([], ["."], ["!"])
    goes_on = talk.words[answer.end : answer.end + 2] == [",", "not"]
    if before.sentence != answer.sentence:
        return not bare and closed and answer.joined_by("start")
    return not bare or talk.words[before.end] == ":" or closed or goes_on


def _only_vet(talk: Talk, segment: Segment) -> bool:
    words = talk.words[segment.start : segment.end]
    return segment.joined_by("start") and words[-1] in VETS and set(words[:-1]) <= _LED


def _says_no(talk: Talk, segment: Segment) -> bool:
    """Whether the segment says that he is not needed, and nothing else."""
    form = _NEEDLESS.at(talk.words, segment.start)
    rest = talk.words[segment.start + len(form) : segment.end]
    return bool(form) and not segment.drafts and set(rest) <= _LIGHT
