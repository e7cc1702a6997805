"""What was only asked about, and is planned after all: "asking about studs, we'll put them in the hinds"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.foot_names import resolve
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import turns_to_today
from pipeline.reading.talk import Draft, Feet, Segment, Sentence, Talk
from pipeline.record import Status

_PUTTING = frozenset({"put", "fit", "try", "use", "go", "get", "give", "do", "nail", "have"})
_THEM = frozenset({"them", "those", "it", "some", "one", "that", "these"})
_FITTED = frozenset({"traction", "pad", "wedge", "packing", "shoe_type", "clips"})
_SHALL = frozenset({"'ll", "will", "going", "gon"})

_WE_WILL = Sayings(
    *(f"{who} {do}" for who in ("we", "i") for do in ("will", "'ll do it", "'ll do that", "will do it", "'ll do so")),
    *(f"{who} 'll {put} them" for who in ("we", "i") for put in ("fit", "try", "do", "use")),
    *(f"{who} 'll {put} them {on}" for who in ("we", "i") for put in ("put", "nail") for on in ("on", "in")),
)  # fmt: skip
_THEY_ARE_ON = Sayings(
    *(f"i {put} them {on}" for put in ("put", "'ve put", "nailed", "'ve nailed") for on in ("on", "in")),
    *(f"{who} got them" for who in ("he", "she", "he 's", "she 's")), "they 're on", "they went on", "on they went",
    "so i did",
)  # fmt: skip
_DID_IT = Sayings(
    *(f"{did} {it}" for did in ("i did", "we did", "'ve done") for it in ("it", "them")),
    *(f"{put} {it} {on}" for put in ("put", "nailed", "fitted") for it in ("it", "them") for on in ("on", "in")),
    *(f"{they} went {on}" for they in ("they", "it") for on in ("on", "in")),
)  # fmt: skip
_TODAY = frozenset({"today", "now", "this"})
_NOW = frozenset({".", "now", "today", "for", "with"})
_WHEN = frozenset({"if", "when", "once", "next", "then", "unless", "."})


def plan_after_all(talk: Talk, sentence: Sentence, before: list[Segment]) -> None:
    """Plan, on the feet that are named, what was asked about in this sentence or in the one before."""
    if sentence.says(_TODAY) and talk.tells(_DID_IT):
        _done_today_after_all(talk, sentence)
    agreed = talk.tells(_WE_WILL, _THEY_ARE_ON)
    shall = not sentence.lacks(_SHALL)
    if not (agreed or shall) or not (talk.having("plans", "unmet") or talk.having("wishes")):
        return
    for position, segment in enumerate(sentence if agreed else ()):
        if _closed(talk, segment, _WE_WILL, _WHEN):
            _as_asked(segment, [*before, *sentence[: position + 1]], Status.PLANNED)
        elif _closed(talk, segment, _THEY_ARE_ON, _NOW):
            _as_asked(segment, [*before, *sentence[: position + 1]], Status.PRESENT)
    for position, segment in enumerate(sentence if shall else ()):
        words = set(talk.words[segment.start : segment.end])
        feet = [m for m in segment.having("feet") if m.get("feet")]
        if segment.drafts or len(feet) > 1 or not (words & _PUTTING and words & _THEM and words & _SHALL):
            continue
        told = [d for s in [*before, *sentence[:position]] for d in s.drafts if s.horse == segment.horse]
        if not feet:
            _plan_where_wanted(segment, told)
            continue
        where = resolve(str(feet[0].get("feet")), None)
        if where and told and _only_asked_about(told[-1]):
            _plan(segment, told[-1], where)


def _done_today_after_all(talk: Talk, sentence: Sentence) -> None:
    """ "I was going to put pads on next time but I did it today", "… but they went on today"."""
    for position, segment in enumerate(sentence):
        told = [d for s in sentence[:position] for d in s.drafts if d.slot in _FITTED]
        if segment.drafts or not told or not segment.joined_by("but", ", but", "so", ", so"):
            continue
        done = _closed(talk, segment, _DID_IT, _NOW) and turns_to_today(talk, segment)
        for draft in told if done else ():
            if draft.status is Status.PLANNED or _only_asked_about(draft):
                draft.status, draft.dropped = Status.PRESENT, False
                draft.note("done after all")


def _plan_where_wanted(segment: Segment, told: list[Draft]) -> None:
    """ "They wanted studs in the hinds, I said not this time. If it's wet he'll get them": on the feet they wanted."""
    last = told[-1] if told else None
    if last is None or last.slot not in _FITTED or not last.feet or not segment.having("plans"):
        return
    wanted = [d for d in told if (d.slot, d.value) == (last.slot, last.value) and d.segment.having("wishes")]
    if wanted and (last.status is Status.ABSENT or last is wanted[-1]):
        _plan(segment, last, last.feet)


def _closed(talk: Talk, segment: Segment, answers: Sayings, behind: frozenset[str]) -> bool:
    """ "… then we will", "we'll do it if she's no better": with nothing behind but when, or on what condition."""
    told = answers.within(talk.words, segment.start, segment.end)
    return any(at + len(form) == segment.end or talk.words[at + len(form)] in behind for at, form in told)


def _as_asked(segment: Segment, told: list[Segment], status: Status) -> None:
    """What was asked about is planned, or on, on the feet that it was asked about for."""
    drafts = [d for s in told for d in s.drafts if s.horse == segment.horse and "only a condition" not in d.rules]
    if drafts and drafts[-1].feet and _only_asked_about(drafts[-1]):
        _plan(segment, drafts[-1], drafts[-1].feet, status)


def _only_asked_about(draft: Draft) -> bool:
    return draft.dropped and "only intended" in draft.rules and draft.slot in _FITTED


def _plan(segment: Segment, asked: Draft, where: Feet, status: Status = Status.PLANNED) -> None:
    made = replace(
        asked,
        segment=segment,
        start=segment.start,
        end=segment.end,
        feet=where,
        status=status,
        dropped=False,
        foot_carried=False,
        rules=["asked about, and planned" if status is Status.PLANNED else "asked about, and done"],
        evidence={*range(segment.start, segment.end), *asked.evidence},
    )
    segment.drafts.append(made)
