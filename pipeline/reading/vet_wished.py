"""The vet wished for, "I'd sooner the vet saw it", or done with, "the vet passed her and needn't see her again"."""

from __future__ import annotations

from pipeline.reading.brought_in import PEOPLE
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.vet import OWNERS, VETS, referral
from pipeline.record import Status

_PREFERRED = (
    ["sooner"], ["rather"], ["prefer"], ["as", "soon"], ["happier", "if"], ["happier", "with"], ["better", "if"],
    ["better", "with"], ["easier", "if"], ["high", "time"], ["about", "time"], ["glad", "if"], ["as", "well", "if"],
    ["best", "if"], ["no", "harm", "if"], ["wish"],
)  # fmt: skip
_LONGEST = 3  # words of such a wish
_LOOKED = frozenset({"looked", "saw", "had", "came", "looking", "checked", "took", "got", "gave", "seeing", "would"})
_FIRST = frozenset({"before", "first"})
_LOOKS = (["sees"], ["checks"], ["examines"], ["films"], ["scans"])
_NOT_SO = frozenset({"if", "when", "n't", "not", "every", "always", "usually", "never"})
_NO_NEED = Sayings(
    "need n't", "need not", "does n't need to", "does not need to", "wo n't need to", "has no need to",
    "did n't need to",
)  # fmt: skip
_SEES = Sayings(
    "wants to see", "wants another", "needs to see", "'s to see", "is to see", "'ll see", "will see", "'ll be back",
)  # fmt: skip
_ONCE_MORE = frozenset({"again", "another", "back"})
_REACH = 5  # words from the first of these to his verb
_COMING = frozenset({"see", "look", "come", "check", "recheck", "visit", "call", "be", "return", "have"})


def draft_vet_wished(talk: Talk) -> None:
    """Add what is said of the vet with a wish before him, or with his verb in a clause behind."""
    for sentence in talk.sentences() if talk.says(VETS) else ():
        for position, segment in enumerate(sentence if sentence.says(VETS) else ()):
            if any(d.slot == "vet" for s in sentence for d in s.drafts):
                break
            wished = next((at for at in range(segment.start, segment.end) if _preferred(talk, segment, at)), None)
            wished = _looks_first(talk, segment) if wished is None else wished
            if wished is None and _sees_again(talk, sentence, position):
                wished = segment.start
            if wished is not None:
                referral(segment, wished).note("vet: to look")
            elif _has_no_need(talk, sentence, position):
                draft = referral(segment, segment.start)
                draft.status = Status.ABSENT
                draft.note("denied")


def _preferred(talk: Talk, segment: Segment, at: int) -> bool:
    """ "I'd sooner the vet looked at her", "I'd be happier if the vet saw it", "high time the vet had a look"."""
    if talk.words[at] not in VETS:
        return False
    end = at
    while end > segment.start and talk.words[end - 1] in OWNERS:
        end -= 1
    before, after = talk.words[max(segment.start, end - _LONGEST) : end], talk.words[at + 1 : at + 3]
    led = any(before[-len(cue) :] == cue for cue in _PREFERRED)
    return led and after[:1] != [] and after[0] in _LOOKED and not {"n't", "not"} & set(after)


def _looks_first(talk: Talk, segment: Segment) -> int | None:
    """ "The vet sees him before I cut any deeper", "vet has a look first": where he stands, if he comes before more."""
    if _FIRST.isdisjoint(talk.words[segment.start : segment.end]) or segment.past:
        return None
    at = next((i for i in range(segment.start, segment.end) if talk.words[i] in VETS), segment.end)
    if at - segment.start > 1 + (segment.end - segment.start > 1) or _NOT_SO & set(talk.words[segment.start : at]):
        return None
    looks = talk.words[at + 1 : at + 3]
    behind = talk.words[at + 2 : segment.end]
    gets = looks[:1] in (["has"], ["gets"]) and "look" in behind
    return (
        at
        if (gets or looks[:1] in _LOOKS or looks == ["looks", "at"])
        and _FIRST & set(behind)
        and not _NOT_SO & set(behind)
        else None
    )


def _sees_again(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """ "Vet graded her a two, and he wants to see her again": the vet heads the sentence, and nobody else is named."""
    segment, head = sentence[position], sentence[0].start
    at = segment.start + (talk.words[segment.start] in ("he", "she", "they"))
    vet = position > 0 and not VETS.isdisjoint(talk.words[head : head + 2])
    vet = vet and (PEOPLE - VETS).isdisjoint(talk.words[head:at])
    return vet and bool(_SEES.at(talk.words, at)) and not _ONCE_MORE.isdisjoint(talk.words[at : segment.end])


def _has_no_need(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """ "The vet passed her sound and needn't see her again": the vet stands before, the verb opens its own clause."""
    segment = sentence[position]
    form = _NO_NEED.at(talk.words, segment.start)
    behind = talk.words[segment.start + len(form) : segment.start + min(len(form) + 2, _REACH)]
    spoken = not VETS.isdisjoint(talk.words[sentence[0].start : segment.start])
    return bool(form) and spoken and bool(_COMING & set(behind))
