"""What was told before: "an abscess again, the last one was in March" is of both days; "for the canker" tells none."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.earlier_times import UNLIKE, is_unlike
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.record import Status

_BACK = frozenset({"again", "second", "third", "fourth", "another", "back"})
_BEFORE = frozenset({"first", "last", "previous", "other"})
_NAMED = frozenset({"one", "time", "bout", "go", "round", "attack", "lot", "spell"})
_WAS = frozenset({"was", "were", "came", "had"})
_AGAIN = frozenset({"again", "back"})
_WORKING = ("brewing", "getting", "starting", "cooking", "building")
COMING = Sayings(
    *(f"{verb} {it}" for verb in _WORKING for it in ("it", "one", "that")),
    *(f"{it} {may} be {verb}" for it in ("it", "she", "he", "that") for may in ("could", "might", "may", "must")
      for verb in ("starting", "brewing", "flaring")),
    *(f"it {may} be coming" for may in ("could", "might", "may", "must")), "it 's flaring",
    "it 's coming", "it coming", "that coming", "it 's on its way", "it 's starting", "it 's brewing", "one brewing",
)  # fmt: skip
_PAIR = 2
_CENTURY = ("twenty", "nineteen", "two")
_REASON = (["for"], ["because", "of"], ["account", "of"], ["with"], ["given"], ["about"], ["regarding"])
_POINTING = frozenset({"the", "that", "this", "his", "her", "their"})
_MOST_BETWEEN = 2  # words between the pointing word and the finding: "that quarter crack"


def split_once_more(talk: Talk, sentence: Sentence, previous: list[Segment]) -> None:
    """Let the finding stand today, with a second fact for the time that it was there before."""
    if sentence.lacks(_BEFORE) or not talk.says(_BACK):
        return
    for position, segment in enumerate(sentence):
        if not _tells_when(talk, segment) or any(d.slot == "finding" for d in segment.drafts):
            continue
        before = [*previous, *sentence[:position]] if segment.horse == sentence[0].horse else sentence[:position]
        told = [
            d for s in before for d in s.drafts if d.slot == "finding" and s.horse == segment.horse and not d.dropped
        ]
        if (
            told
            and told[-1].status in (Status.PRESENT, Status.HISTORY, Status.SUSPECTED)
            and _is_back(talk, told[-1], segment)
        ):
            _split(told[-1], segment)


def brewing_again(talk: Talk, sentence: Sentence, previous: list[Segment]) -> None:
    """ "She had laminitis last year, and I think she's brewing it again": of then, and suspected today."""
    for position, segment in enumerate(sentence if sentence.says(_AGAIN) else ()):
        words = talk.words[segment.start : segment.end]
        if segment.drafts or not COMING.said_in(words) or words[-1] not in ("again", "back"):
            continue
        before = [d for s in (*previous, *sentence[:position]) for d in s.drafts if d.slot == "finding"]
        told = [d for d in before if d.status in (Status.HISTORY, Status.RESOLVED) and d.segment.horse == segment.horse]
        if told and not {"n't", "not", "if", "never"} & set(words):
            evidence = set(range(segment.start, segment.end))
            rules = ["coming back"]
            again = replace(
                told[-1], segment=segment, start=segment.start, end=segment.end, evidence=evidence, rules=rules
            )
            again.status, again.severity = Status.SUSPECTED, None
            segment.draft(again)


def unlike_then(talk: Talk, sentence: Sentence) -> None:
    """ "No thrush, unlike last time": it was there then."""
    for segment in sentence if "times" in sentence.classes and sentence.says(UNLIKE) else ():
        for cue in [m for m in segment.having("times") if is_unlike(talk, m)]:
            led = [d for s in sentence for d in s.drafts if d.end <= cue.start]
            for draft in led or [d for s in sentence for d in s.drafts]:
                if draft.slot in ("finding", "gait") and draft.status is Status.ABSENT:
                    _split(draft, segment)


def _tells_when(talk: Talk, segment: Segment) -> bool:
    """ "The last one was in March", "first bout was two years ago"."""
    words = [w for w in talk.words[segment.start : segment.end] if w not in ("the", "his", "her", "and", "so", ":")]
    led = words[:1] != [] and words[0] in _BEFORE
    words = words[2:] if led and words[1:2] and words[1] in _NAMED else words[1:]
    year = any(
        word == "in" and (words[i + 1 : i + 2] and (words[i + 1] in _CENTURY or words[i + 1].isdecimal()))
        for i, word in enumerate(words)
    )
    return led and words[:1] != [] and words[0] in _WAS and (year or bool(segment.having("times", "history")))


def _is_back(talk: Talk, draft: Draft, segment: Segment) -> bool:
    """Whether the finding was said to be there once more, between its sentence and the time of before."""
    start = talk.sentence(draft.segment.sentence)[0].start
    return not _BACK.isdisjoint(talk.words[start : segment.start])


def _split(draft: Draft, segment: Segment) -> None:
    past = replace(
        draft,
        feet=draft.feet if len(draft.feet or ()) <= _PAIR else None,
        segment=segment,
        start=segment.start,
        end=segment.end,
        status=Status.HISTORY,
        zone=None,
        severity=None,
        rules=["there before"],
        evidence=set(range(segment.start, segment.end)),
    )
    draft.status = Status.PRESENT if draft.status is Status.HISTORY else draft.status
    draft.note("there once more" if draft.status is not Status.ABSENT else "there then")
    segment.draft(past)


def drop_spoken_again(talk: Talk) -> None:
    """Take out a finding behind "for the", "because of that", when it was told of this horse before."""
    told: list[Draft] = []
    for segment in talk.segments:
        for draft in [d for d in segment.drafts if d.slot == "finding" and not d.dropped]:
            before = [d for d in told if d.segment.horse == segment.horse and d.value == draft.value]
            there = [d for d in before if d.status in (Status.PRESENT, Status.SUSPECTED) and not d.dropped]
            if there and draft.status is Status.PRESENT and _is_reason(talk, draft):
                draft.drop("spoken of again")
            told.append(draft)


def _is_reason(talk: Talk, draft: Draft) -> bool:
    footed = {i for m in draft.segment.having("feet") for i in m.literal}
    for between in range(_MOST_BETWEEN + 1):
        at = draft.start - 1 - between
        if at <= draft.segment.start or at + 1 in footed or talk.words[at] not in _POINTING:
            continue
        return any(talk.words[at - len(lead) : at] == lead for lead in _REASON)
    return False
