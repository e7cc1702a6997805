"""A shoe that is not there: "came in missing the left front", "turned up without the near fore"; not "missing hair"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_THE = frozenset({"the", "his", "her", "its", "a", "that", "one", "both"})
_SHOES = frozenset({"shoe", "shoes", "plate", "plates", "one", "two", "set", "again", "today"})
_PLACED = frozenset(
    {",", ";", "and", "but", "on", "in", "off", "when", "since", "so", "as", "up", "out", "this", "now"}
)
_CAME = frozenset(
    {
        "came",
        "come",
        "comes",
        "coming",
        "walked",
        "turned",
        "arrived",
        "arrives",
        "trotted",
        "showed",
        "back",
        "brought",
    }
)
_LACKING = frozenset({"without", "minus", "short", "lacking"})


def part_missing(talk: Talk, mention: Mention) -> bool:
    """ "Missing some hair": what is missing is named, and it is neither a shoe nor a foot."""
    if talk.words[mention.start : mention.end] != ["missing"]:
        return False
    at = _past_the_article(talk, mention.end)
    if at >= len(talk.words) or talk.words[at] in SENTENCE_ENDS | _SHOES or _foot_at(talk, at) is not None:
        return False
    return at > mention.end or talk.words[at] not in _PLACED


def draft_came_without(talk: Talk) -> None:
    """ "Turned up without the near fore", "walked in minus a hind shoe": said of a horse that came so."""
    for segment in talk.segments if talk.says(_LACKING) else ():
        for at in range(segment.start, segment.end):
            if talk.words[at] not in _LACKING or not _CAME & set(talk.words[segment.start : at]):
                continue
            behind = at + 2 if talk.words[at + 1 : at + 2] == ["of"] else at + 1
            foot = _foot_at(talk, _past_the_article(talk, behind))
            if foot is None or any(d.slot == "shoe_state" for d in segment.drafts):
                continue
            draft = Draft("shoe_state", "lost", segment, at, at + 1)
            draft.evidence.update({at, *foot.literal})
            draft.note("shoe_state: came without it")
            segment.draft(draft)


def _past_the_article(talk: Talk, at: int) -> int:
    while at < len(talk.words) and talk.words[at] in _THE and _foot_at(talk, at) is None:
        at += 1
    return at


def _foot_at(talk: Talk, at: int) -> Mention | None:
    return next((m for m in talk.holding(at) if m.get("feet") and not m.dropped and m.start == at), None)
