"""The pronoun that stands for a finding: "there's one in the off fore", "I think he's brewing another one"."""

from __future__ import annotations

from pipeline.reading.drafting import add_draft
from pipeline.reading.mentions import Mention
from pipeline.reading.some_of_it import AMOUNTS, SOME, some_of_it
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_ANY_AMOUNT = AMOUNTS | {"any"}
_ANY_OF_IT = (["any"], ["some"], ["more"])
_COMING = frozenset({"brewing", "coming", "cooking"})  # "another one brewing": in the foot in hand
_DOUBTED = frozenset({"maybe", "possibly", "perhaps", "might", "could"})


def draft_pronouns(talk: Talk) -> None:
    """ "There's one in the off fore now": "one" is the finding spoken of last."""
    recent: Draft | None = None
    counted: Draft | None = None
    for segment in talk.segments if talk.having("same", "one") or talk.says(_ANY_AMOUNT) else ():
        for mention in [*segment.having("same", "one"), *some_of_it(talk, segment)]:
            last = recent if mention.readings["same"] == SOME else counted
            free = last is not None and _of_this_horse(segment, last) and not segment.having("findings")
            put = _put_before(talk, segment, mention, last)
            if put is not None and mention.readings["same"] != SOME and any(m.get("feet") for m in segment.mentions):
                add_draft(segment, put.slot, str(put.value), mention).note(f"one: the {put.slot} before")
            elif free and last is not None and _foot_near(talk, segment, mention):
                draft = add_draft(segment, "finding", str(last.value), mention)
                some = mention.readings["same"] == SOME
                draft.note(SOME if some else "one: the finding before")
                if talk.words[mention.start] in _DOUBTED:
                    draft.status = Status.SUSPECTED
        last = recent
        for lost in [d for d in segment.drafts if last is not None and d.slot == "shoe_state" and d.value == "lost"]:
            if last is not None and last.value == "wall_loss" and talk.words[lost.end : lost.end + 1] in _ANY_OF_IT:
                lost.slot, lost.value = "finding", "wall_loss"  # "lost wall near fore, the off fore hasn't lost any"
                lost.note("wall: the finding before")
        findings = [d for d in segment.drafts if d.slot == "finding"]
        recent = findings[-1] if findings else recent
        counted = next((d for d in reversed(findings) if _counted(talk, d)), counted)


def _counted(talk: Talk, found: Draft) -> bool:
    """ "Heat in it, swollen too. I think he's brewing another one": neither of those, but another abscess."""
    return found.value != "heat" and (found.value != "swelling" or talk.words[found.start - 1] == "a")


def _of_this_horse(segment: Segment, last: Draft) -> bool:
    """The same horse's, or that of the one told right before: "no thrush. Buck had it in the near fore"."""
    named = bool(segment.having("horse")) and segment.sentence - last.segment.sentence == 1
    return named or last.segment.horse == segment.horse


def _put_before(talk: Talk, segment: Segment, mention: Mention, found: Draft | None) -> Draft | None:
    """ "Bruise in the right fore, I put a full pad on it and one on the left": what was put on behind the finding."""
    drafts = [d for s in talk.sentence(segment.sentence) for d in s.drafts if d.start < mention.start]
    put = [d for d in drafts if d.slot in ("pad", "shoe_type") and (found is None or d.start > found.start)]
    led = ("a", "an", "the", "new", ",", ".")
    single = bool(put) and put[-1] is drafts[-1] and talk.words[put[-1].start - 1] in led
    return put[-1] if single and talk.words[put[-1].end - 1][-1:] != "s" else None


def _foot_near(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """Whether a foot stands beside the pronoun, or alone in the segment before it."""
    before = talk.segments[segment.index - 1] if segment.index else None
    near = before is not None and segment.sentence - before.sentence <= (mention.readings.get("same") == SOME)
    alone = near and before is not None and not before.drafts
    here = any(m.get("feet") for m in segment.mentions) or not _COMING.isdisjoint(
        talk.words[mention.start : mention.end]
    )
    return here or (alone and before is not None and bool(before.having("feet")))
