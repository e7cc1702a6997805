"""A heading that denies all that stands under it: "Not seen: thrush or swelling in any foot"."""

from __future__ import annotations

from pipeline.reading.denials import deny_one
from pipeline.reading.sayings import said_whole
from pipeline.reading.talk import Draft, Segment, Sentence, Talk

_HEADS = said_whole(
    "not seen", "none seen", "nothing seen", "nowhere seen", "not found", "none found", "not there", "not present",
    "not noted", "not noticed", "not evident", "not felt", "not to be found", "not to be seen", "absent", "negative",
    "negatives", "negative for", "ruled out", "did n't see", "did n't find", "could n't find", "could not find",
    "found no", "saw no", "no", "none of", "nothing of", "no sign of", "no signs of", "no trace of", "free of",
    "clear of", "without",
)  # fmt: skip
_HEARD = _HEADS - said_whole("no", "negative", "negatives", "without", "did n't see", "none of")
_CLOSING = frozenset({words[-1] for words in _HEADS})
_LOOKED = said_whole(
    "looked for and", "looked for but", "checked for and", "checked for but", "checked and", "sought and",
    "felt for and", "what was", "things", "signs",
)  # fmt: skip
_LOOKED_FOR = frozenset({words[0] for words in _LOOKED})
_ANY = frozenset({"any", "either", "anywhere", "or", "nor"})
_SLOTS = frozenset({"finding", "gait", "shoe_state"})
_TURNS = ("but", ", but", "so", ", so", "though", "although", ", though", "except", "then", ", then")


def deny_under_heading(talk: Talk, sentence: Sentence, previous: Sentence) -> None:
    """Deny the findings that a heading of the sentence, or the one that is the sentence before, lists as not there."""
    if sentence.lacks(_CLOSING) and previous.lacks(_CLOSING):
        return
    for position, segment in enumerate(sentence):
        if _heads(talk, sentence, position):
            for draft in _listed(talk, sentence, position + 1):
                deny_one(draft)
        if not position and _stands_alone(talk, previous) and _only_lists(talk, sentence):
            for draft in segment.drafts:
                deny_one(draft)


def _heads(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """Whether the segment is such a heading: before a colon, or opening the sentence before a list with "or", "any"."""
    segment = sentence[position]
    if segment.drafts or (form := _form(talk, segment)) is None or segment.end >= len(talk.words):
        return False
    if talk.words[segment.end] == ":":
        return True
    opens = not position or (position == 1 and _form(talk, sentence[0], _LOOKED) is not None)
    opens = opens or not sentence[position - 1].drafts  # not "sidebone, not seen, …"
    return opens and form in _HEARD and talk.words[segment.end] == "," and _only_lists(talk, _row(sentence, position))


def _row(sentence: list[Segment], position: int) -> list[Segment]:
    """The segments right behind the heading that tell only of findings."""
    row: list[Segment] = []
    for segment in sentence[position + 1 :]:
        if not segment.drafts or any(d.slot not in _SLOTS for d in segment.drafts):
            break
        row.append(segment)
    return row


def _form(talk: Talk, segment: Segment, forms: frozenset[tuple[str, ...]] = _HEADS) -> tuple[str, ...] | None:
    if talk.words[segment.end - 1] not in _CLOSING and forms is _HEADS:
        return None
    words = tuple(talk.words[segment.start : segment.end])
    for looked in _LOOKED if words[0] in _LOOKED_FOR else ():
        if words[: len(looked)] == looked and words != looked:
            words = words[len(looked) :]
            break
    return words if words in forms else None


def _listed(talk: Talk, sentence: list[Segment], start: int) -> list[Draft]:
    """What stands under the heading, up to another heading, a "but" or a clause of its own."""
    drafts: list[Draft] = []
    for segment in sentence[start:]:
        headed = talk.words[segment.end : segment.end + 1] == [":"] and segment is not sentence[start]
        ended = not segment.drafts and not segment.having("feet") and segment is not sentence[start]
        if headed or ended or segment.own_clause or segment.joined_by(*_TURNS):
            break
        drafts += [d for d in segment.drafts if d.slot in _SLOTS]
    return drafts


def _stands_alone(talk: Talk, previous: list[Segment]) -> bool:
    """Whether the sentence before is the heading alone, and no answer to the one before it ("Corn. Not seen.")."""
    if len(previous) != 1 or (form := _form(talk, previous[0])) is None or form not in _HEARD:
        return False
    before = talk.sentence(previous[0].sentence - 1)
    return not any(d.slot in _SLOTS for s in before[-1:] for d in s.drafts)


def _only_lists(talk: Talk, segments: list[Segment]) -> bool:
    """Whether the segments are findings in a row with "or" or "any", no verb among them."""
    words = talk.words[segments[0].start : segments[-1].end] if segments else []
    drafts = [d for s in segments for d in s.drafts]
    verbs = any(talk.plays(role, s.start, s.end) for s in segments for role in ("past", "present", "subject"))
    return not _ANY.isdisjoint(words) and bool(drafts) and all(d.slot in _SLOTS for d in drafts) and not verbs
