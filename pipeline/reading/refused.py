"""What somebody wanted and was told no: "owner wanted bar shoes in front, I said no" puts nothing on."""

from __future__ import annotations

from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE
from pipeline.reading.talk import Segment, Talk
from pipeline.record import Status
from pipeline.vocabulary import CLASS_SLOTS

_WANTING = frozenset(
    {"wanted", "wants", "asked", "asking", "after", "fancied", "keen", "begged", "suggested", "want", "hollering"}
)
_OFFERING = frozenset({"offered", "recommended", "advised", "proposed", "suggested"})  # by anybody, the farrier too
_REFUSED = Sayings(
    "they refused", "she refused", "owner refused", "owners refused", "declined", "turned it down", "turned that down",
    "not keen", "n't keen", "not interested", "n't interested", "would n't hear", "did n't want", "not for it",
    "said no", "say no", "told her no", "told him no", "told them no", "i refused", "told him not", "told her not",
    "told them not", "wo n't pay", "would n't pay", "wo n't have it", "would n't have it", "wo n't spring for",
    "wo n't stand for", "we refused", "not happening", "no chance", "not a chance", "i would n't", "i wo n't",
    "i 'm not doing", "i was n't having", "not on my watch", "talked her round", "talked him round",
    "talked them round", "talked her out", "talked him out", "talked them out", "turned her down", "turned him down",
    "turned them down", "not going to happen", "told her to forget", "told him to forget", "told them to forget",
    "i 'd not", "said not this time", "said not today", "said not yet", "said not now", "told her not yet",
    "told him not yet", "told them not yet", "no thanks", "no thank you", "do n't bother", "n't bother", "not today",
    "says no", "leave it", "leave them", "leave those",
)  # fmt: skip
_FLATLY = frozenset({"no", "refused", "declined", "pay", "have"})  # what is only put off stays planned
_WOULD = Sayings("i 'd put", "i 'd go", "i 'd use")
_STAYS = frozenset({"hurry", "rush", "problem", "in", "on", "as", "there", "alone", "with", "to", "at"})
_LIGHT = frozenset({"in", "on", "the", "a", "for", "some", "any"})
_STAYED = Sayings(
    "stayed with", "stayed in", "stuck with", "stuck to", "kept to", "kept him in", "kept her in", "kept them in",
    "kept him on", "kept her on", "left him in", "left her in", "left them in", "staying with", "staying in",
    "sticking with", "sticking to", "held out for", "stood by", "we kept the", "i kept the", "stayed on",
)  # fmt: skip


def drop_refused(talk: Talk) -> None:
    """Take out what was wanted where the refusal follows in the same breath."""
    if not talk.tells(_REFUSED, _STAYED):
        return
    for segment in talk.segments:
        said = _REFUSED.within(talk.words, segment.start, segment.end)
        at = next((i for i, form in said if _STAYS.isdisjoint(talk.words[i + len(form) :][:1])), None)
        stayed = next((i for i, _ in _STAYED.within(talk.words, segment.start, segment.end)), None)
        stood = {(d.slot, d.value) for d in segment.drafts if stayed is not None and d.start > stayed}
        at = stayed if at is None and stood else at
        if at is None or {"if", "unless", "or"} & set(talk.words[segment.start : at]):
            continue
        for wanted in _wanted_before(talk, segment, at) or _headed(talk, segment, at):
            for draft in wanted.drafts:
                instead = not stood or any(s == draft.slot and v != draft.value for s, v in stood)
                if draft.slot in PLANNABLE - ALWAYS_PLANNED - {"manner"} and draft.start < at and instead:
                    draft.drop("wanted, and refused")


def _headed(talk: Talk, segment: Segment, at: int) -> list[Segment]:
    """ "Studs, no thanks", "leather pads, they said don't bother": alone, and refused with no word more."""
    before = talk.segments[segment.index - 1] if segment.index else segment
    said = _REFUSED.at(talk.words, at)
    if not segment.joined_by(",") or not before.joined_by("start") or not before.drafts or said[:1] in ([], ["leave"]):
        return []
    told = {i for m in before.mentions if m.is_any((*CLASS_SLOTS, "feet")) for i in m.literal}
    alone = talk.words_beside(before, told) <= _LIGHT and at + len(said) == segment.end
    return [before] if alone and not segment.drafts else []


def _wanted_before(talk: Talk, segment: Segment, at: int) -> list[Segment]:
    """The segments from the one that says who wanted it to the refusal; none where something was done between."""
    found: list[Segment] = []
    flat = not _FLATLY.isdisjoint(_REFUSED.at(talk.words, at))
    for earlier in reversed(talk.segments[: segment.index + 1]):
        if earlier.horse != segment.horse or segment.sentence - earlier.sentence > 1:
            return []
        found.append(earlier)
        words = talk.words[earlier.start : min(earlier.end, at)]
        meant = _WOULD.said_in(words) or any(d.status is Status.PLANNED for d in earlier.drafts)
        if flat and meant and earlier is not segment:
            return found  # "I'd go to a heart bar. Owner said no"
        wanting = any(word in _WANTING and words[max(0, i - 1)] not in ("i", "we") for i, word in enumerate(words))
        if wanting or not _OFFERING.isdisjoint(words):
            return found
        if earlier is not segment and earlier.own_clause and earlier.drafts:
            return []
    return []
