"""A foot cut out for what is in it: "seedy toe in the near fore. Cut out the near fore" is a resection."""

from __future__ import annotations

from pipeline.reading.foot_names import resolve
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_CUT = frozenset({"cut", "dug", "pared", "carved"})
_OUT = (["out"], ["away"])
_BACK = (["back"], ["out"], ["away"])
_IT = (["it"], ["that"], ["them"], ["those"], ["this"])
_WELL = frozenset({"all", "right", "well", "a", "bit", "good"})
_OPENED = frozenset({"opened", "dug"})
_RAN = frozenset({"drained", "drain", "draining", "drainage", "pus"})
_DRY = Sayings(
    "nothing came", "nothing ran", "nothing in", "nothing there", "found nothing", "nothing out", "no abscess",
    "n't find", "came up dry", "it was dry", "bone dry", "nothing doing",
)  # fmt: skip
_NO_PUS = Sayings("no pus", "any pus", "no drainage")
_AFTER_ALL = frozenset({"first", "then", "until", "till", "more", "else", "left"})
_WHOSE = frozenset({"the", "that", "his", "her", "both", "all"})
_CLEANED = frozenset({"puncture", "thrush", "scratches", "corn"})
_FOR = frozenset({"white_line_disease", "keratoma", "canker"})


def draft_cut_out(talk: Talk) -> None:
    """A resection for every foot that was cut out, where something that is cut out was told before."""
    if talk.says(_OPENED):
        _opened(talk)
    if not talk.says(_CUT):
        return
    _cut_back(talk)
    found = [m.start for m in talk.having("findings") if m.get("findings") in _FOR]
    for foot in talk.having("feet") if found else ():
        at = _cut(talk, foot)
        segment = talk.segment_at(at) if at is not None else None
        if at is None or segment is None or min(found) > at or any(d.slot == "treatment" for d in segment.drafts):
            continue
        draft = Draft("treatment", "resection", segment, at, at + 1)
        draft.evidence.update({at, *foot.literal})
        draft.note("treatment: the foot was cut out")
        segment.draft(draft)


def _cut_back(talk: Talk) -> None:
    """ "Seedy toe in the off hind, cut that back": what was told last is what was cut."""
    for at in [i for i in talk.where(_CUT) if i < len(talk.words) - 2]:
        behind = [w for w in talk.words[at + 1 : at + 5] if w not in _WELL]
        segment = talk.segment_at(at)
        if segment is None or behind[:1] not in _IT or behind[1:2] not in _BACK or not _told_last(talk, at):
            continue
        if any(m.get("not_facts") for m in talk.holding(at)):
            continue  # "dug it out of the muckheap"
        if not any(d.slot == "treatment" and (d.value == "resection" or d.start <= at < d.end) for d in segment.drafts):
            draft = Draft("treatment", "resection", segment, at, at + 1)
            draft.evidence.add(at)
            draft.note("treatment: it was cut out")
            segment.draft(draft)


def _opened(talk: Talk) -> None:
    """ "White line disease, opened it up": the wall was, and nothing ran out."""
    for draft in [d for s in talk.segments for d in s.drafts if d.value == "drained"]:
        words = talk.words[draft.start : draft.end]
        if words[0] in ("opened", "dug") and not _RAN & set(words) and _told_last(talk, draft.start):
            draft.value = "resection"
            draft.note("treatment: the wall was opened")
        elif (
            words[0] in ("opened", "dug")
            and _RAN.isdisjoint(talk.words[draft.start : draft.end + 4])
            and _told_last(talk, draft.start, _CLEANED)
        ):
            draft.drop("dug out, and nothing ran")  # "thrush, I dug it out"
        elif words[0] in ("opened", "dug") and _dry(talk, draft):
            draft.drop("opened, and nothing ran")  # "opened it up, nothing came out"


def _dry(talk: Talk, draft: Draft) -> bool:
    """Whether what follows says that nothing ran; not "at first", "nothing more", or of another foot."""
    said = talk.tokens.words  # as they stand: a comma before a denial may have been taken for a stop
    stops = (i for i in range(draft.end, len(said)) if said[i] in SENTENCE_ENDS)
    end = next(stops, len(said))
    behind = said[draft.end : end]
    ran = not _RAN.isdisjoint(behind) and not _NO_PUS.said_in(behind)
    if ran or not _AFTER_ALL.isdisjoint(behind) or any(m.get("feet") for m in talk.starting_in(draft.end, end)):
        return False
    return _DRY.said_in(behind) or _NO_PUS.said_in(behind) or behind[-1:] == ["nothing"]


def _told_last(talk: Talk, at: int, what: frozenset[str] = _FOR) -> bool:
    found = [m for m in talk.having("findings") if m.start < at]
    return bool(found) and found[-1].get("findings") in what and not _elsewhere(talk, found[-1].start, at)


def _elsewhere(talk: Talk, found: int, at: int) -> bool:
    """ "Thrush in the near hind. Off fore, opened it up": of another foot, or of another horse, than what was found."""
    there, here = talk.segment_at(found), talk.segment_at(at)
    if there is None or here is None or there.sentence == here.sentence:
        return False
    feet = [(m, named) for m in talk.having("feet") if (named := resolve(str(m.get("feet")), None))]
    headed = [named for m, named in feet if talk.sentence(here.sentence)[0].start <= m.start < at]
    told = talk.sentence(there.sentence)
    before = [named for m, named in feet if m.start < told[-1].end]
    own = [named for m, named in feet if told[0].start <= m.start < told[-1].end] or before[-1:]
    another = bool(headed and own) and not any(set(headed[-1]) & set(named) for named in own)
    return another or there.horse != here.horse


def _cut(talk: Talk, foot: Mention) -> int | None:
    """The token of "cut" in "cut out the near fore", "cut the near fore out"."""
    at = foot.start - (talk.words[foot.start - 1] in _WHOSE)
    behind = talk.words[foot.end : foot.end + 1] in _OUT
    at = at - 1 if talk.words[at - 1 : at] in _OUT else at if behind else 0
    return at - 1 if at > 0 and talk.words[at - 1] in _CUT else None
