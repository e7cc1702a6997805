"""A shoe that is not there: "came in missing the left front", "turned up without the near fore"; not "missing hair"."""

from __future__ import annotations

from pipeline.reading.foot_lists import NAMED_FEET
from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_NOUNS
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_THE = frozenset({"the", "his", "her", "its", "a", "that", "one", "both"})
_SHOES = frozenset({"shoe", "shoes", "plate", "plates", "one", "two", "set", "again", "today"})
_PLATES = frozenset({"shoe", "shoes", "plate", "plates"})
_CLOSING = frozenset({",", ".", ";", "!", "?", "and", "but", "when", "so", "again", "altogether", "from", "since"})
_PLACED = frozenset(
    {",", ";", "and", "but", "on", "in", "off", "when", "since", "so", "as", "up", "out", "this", "now"}
)
_CAME = frozenset({
    "came", "come", "comes", "coming", "walked", "turned", "arrived", "arrives", "trotted", "showed", "back", "brought",
})  # fmt: skip
_GONE = (["gone"], ["'s", "gone"], ["is", "gone"], ["was", "gone"], ["were", "gone"], ["are", "gone"], ["all", "gone"])
_BESIDE_GONE = frozenset({
    "'s", "is", "was", "were", "are", "has", "had", "the", "his", "her", "already", "again", "with", "came", "in",
    "when", "i", "got", "here", "he", "she", "walked", "turned", "up", "completely", "both", "clean", "altogether",
})  # fmt: skip
_WHOLLY = frozenset({"altogether", "completely", "entirely", "clean", "again"})
_CAN_GO = frozenset({"finding", "gait", "tester", "pulse", "lameness"})
_LACKING = frozenset({"without", "minus", "short", "lacking", "shy"})
_HE = HORSE_NOUNS | {"he", "she", "who"}
_WAS, _STILL = (
    frozenset({"'s", "is", "was", "were", "'d", "been"}),
    frozenset({"already", "again", "now", "still", "just"}),
)
_SO_ENDS = _CLOSING | _SHOES | {"on", "this", "which", "i", "already", "now", "after", "before"}


def part_missing(talk: Talk, mention: Mention) -> bool:
    """ "Missing some hair": what is missing is named, and it is neither a shoe nor a foot."""
    if talk.words[mention.start : mention.end] != ["missing"]:
        return False
    at = _past_the_article(talk, mention.end)
    if at >= len(talk.words) or talk.words[at] in SENTENCE_ENDS | _SHOES or _foot_at(talk, at) is not None:
        return False
    return at > mention.end or talk.words[at] not in _PLACED


def draft_came_without(talk: Talk) -> None:
    """ "Turned up without the near fore", "was shy his left front", "he's minus the off hind": said of the horse."""
    for segment in talk.segments if talk.says(_LACKING) else ():
        for at in range(segment.start, segment.end):
            if talk.words[at] not in _LACKING:
                continue
            came = not _CAME.isdisjoint(talk.words[segment.start : at])
            behind = at + 2 if talk.words[at + 1 : at + 2] == ["of"] else at + 1
            named = _past_the_article(talk, behind)
            foot = _foot_at(talk, named) if came or _he_was(talk, segment, at) else None
            if foot is None or any(d.slot == "shoe_state" for d in segment.drafts):
                continue
            if talk.words[at] == "short" and talk.words[foot.start] in ("in", "on", "behind"):
                continue  # "she trotted up short in front" is how she goes
            told = named > behind or talk.words[named : named + 1] == ["both"]
            if not came and not (told and _SO_ENDS.issuperset(talk.words[foot.end : foot.end + 1])):
                continue
            draft = Draft("shoe_state", "lost", segment, at, at + 1)
            draft.evidence.update({at, *foot.literal})
            draft.note("shoe_state: came without it")
            segment.draft(draft)


def _he_was(talk: Talk, segment: Segment, at: int) -> bool:
    """Whether "he's", "Buck was", "the mare is already" stands right before: not "all reset, minus the near fore"."""
    if at - 1 <= segment.start:
        return False
    verb = at - 1
    while verb > segment.start and talk.words[verb] in _STILL:
        verb -= 1
    name = talk.mention_ending(verb)
    him = talk.words[verb - 1] in _HE or (name is not None and name.get("horse") is not None)
    opens = verb - 1 == segment.start and talk.tokens.large[verb - 1]  # a name that no list knows
    return talk.words[verb] in _WAS and (him or opens)


def _past_the_article(talk: Talk, at: int) -> int:
    while at < len(talk.words) and talk.words[at] in _THE and _foot_at(talk, at) is None:
        at += 1
    return at


def _foot_at(talk: Talk, at: int) -> Mention | None:
    return next((m for m in talk.holding(at) if m.get("feet") and not m.dropped and m.start == at), None)


def draft_gone(talk: Talk) -> None:
    """ "RH gone, new shoe on that one": a foot that is gone lost its shoe, unless a finding of it can be meant."""
    for cue in talk.having("resolutions"):
        segment = talk.segment_at(cue.start)
        if segment is None or _bare_words(talk, cue) not in _GONE or segment.drafts:
            continue
        if talk.words[cue.end : cue.end + 1] in (["in"], ["from"]):
            continue  # "thrush in the left hind, gone in the right hind"
        feet = segment.having("feet") or _alone_before(talk, segment)
        if any(talk.words[m.end : m.end + 1] == ["'s"] and m.end < cue.start for m in feet):
            continue  # "the near hind's is gone": what it had
        told = {i for m in (*feet, cue) for i in range(m.start, m.end)}
        rest = talk.words_beside(segment, told)
        named = NAMED_FEET.get(str(feet[0].get("feet"))) if len(feet) == 1 else None
        shod = talk.words[cue.start - 1] in _PLATES and not _CLOSING.isdisjoint(
            talk.words[cue.end : cue.end + 1] or ["."]
        )
        if named is None or not (shod or (rest <= _BESIDE_GONE and _none_found(talk, segment, named))):
            continue
        draft = Draft("shoe_state", "lost", segment, cue.start, cue.end)
        draft.evidence.update({*cue.literal, *feet[0].literal})
        draft.note("shoe_state: the foot is gone")
        segment.draft(draft)


def _bare_words(talk: Talk, cue: Mention) -> list[str]:
    """The words of the cue without "altogether", "completely" behind them."""
    words = talk.words[cue.start : cue.end]
    return words[:-1] if words[-1] in _WHOLLY else words


def _alone_before(talk: Talk, segment: Segment) -> list[Mention]:
    """ "Left front. Gone.": the foot stands alone right before."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or before.horse != segment.horse or before.drafts:
        return []
    feet = before.having("feet")
    return feet if len(feet) == 1 and feet[0].end - feet[0].start == before.end - before.start else []


def _none_found(talk: Talk, segment: Segment, named: set[str]) -> bool:
    """Whether nothing that may be gone was said of the foot in this sentence or the one before."""
    near = [s for s in talk.segments[: segment.index] if segment.sentence - s.sentence <= 1]
    for other in [s for s in near if s.horse == segment.horse and any(d.slot in _CAN_GO for d in s.drafts)]:
        feet = [NAMED_FEET.get(str(m.get("feet"))) for m in other.having("feet")]
        if not feet or any(one is None or one & named for one in feet):
            return False
    return True
