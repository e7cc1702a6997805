"""What was at a time that is pointed to: "and a keratoma around then as well", "that's what he had before".

Or asked and put there: "Leather pads? No, that was last time." tells of last time, and takes nothing back.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import product

from pipeline.reading.mentions import Mention
from pipeline.reading.questions import SOUGHT
from pipeline.reading.recalling import recall_one
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import Status

_THEN = Sayings(
    "around then", "about then", "round then", "round about then", "around that time", "about that time",
    "round that time", "around the same time", "about the same time", "round the same time", "much the same time",
    "at the same time", "at that time", "the same year", "the same summer", "the same winter", "the same spring",
    "the same autumn", "the same fall", "the same season", "that same year", "that same summer", "that same winter",
    "that same spring", "that same season", "then as well", "then too", "then also",
    *(f"{films} then" for films in ("films", "film", "rays", "ray", "xrays", "plates", "pictures", "radiographs")),
)  # fmt: skip
_THAT_TIME = Sayings("that time", "the first time", "both times", "the time before", "on that occasion")
_THAT_DAY = Sayings("that day", "the same day", "that night", "the same night", "that week", "that morning")
_SO_TODAY = Sayings("so today", "so this time", "so now")
_DAYS_BACK = 3  # sentences back to the time that "that day" means
_DID_IT = Sayings(
    "did it", "done it", "did that", "done that", "did the same", "done the same", "did this", "done this",
    "been through it", "been through this", "went through it", "went through this", "happened",
    "had the same",
)  # fmt: skip
_THE_HORSE = frozenset({
    "he", "she", "it", "that", "this", "'s", "'d", "has", "had", "and", "but", "also", "already", "the", "same", "only",
    "thing",
})  # fmt: skip
_NEAR = 2  # sentences back to what was done again
_WHAT_HE_HAD = Sayings(*(
    f"{what} {who} {had}"
    for what in ("that 's what", "that was what", "that is what", "those are what", "those were what")
    for who in ("he", "she", "they", "i")
    for had in ("had", "wore", "was in", "was wearing", "came in", "came with", "found him in", "found her in",
                "took off")
))  # fmt: skip
_POINTING = frozenset({"the", "that", "this", "those", "his", "her"})
_WHO_DID = frozenset({"i", "we", "they", "she", "he", "you", "that", "which"})
_NOT_THEN = frozenset(
    {"is", "are", "goes", "gets", "to", "till", "until", "comes", "stays", "today", "can", "will", "'ll", "must", "now"}
)  # "the poultice I put on stays till Monday"
_FOUNDERED = frozenset({"foundered"})
_HORSE_SAID = frozenset({"one", "horse", "mare", "pony", "gelding"})
_BEFORE_US = frozenset({"trainer", "breeder", "dealer", "seller"})
_SINCE = frozenset({"since"})
_EARLIER = "of an earlier time"
_HAS_BEEN = frozenset(product(("'s", "has", "'ve", "have"), ("been", "had", "worn", "gone")))
_WAS = frozenset({"was", "were", "had", "'d", "did", "wore"})
_COMES_AND_GOES = frozenset({"abscess", "bruise", "corn", "puncture", "heat", "swelling"})
_FOUNDERED_SINCE = _FOUNDERED | _SINCE
_WHICH = frozenset({"the", "that", "his", "her", "their", "last", "bad", "old", "big", "bout", "of", "attack", "spell"})
_WORN = frozenset({"shoe_type", "shoe_material", "shoe_size", "pad", "wedge", "packing", "traction", "clips", "nails"})


def recall_what_he_had(talk: Talk, sentence: Sentence, previous: list[Segment]) -> None:
    """ "Plastic on both fronts, with wedge pads, so that's what he had before": all that he wore until today.

    So is what the horse is known by, and what "since" says to have come before today.
    """
    if "times" in sentence.classes and "treatments" in sentence.classes:
        _put_on_lately(talk, sentence)
    if talk.says(_FOUNDERED_SINCE):
        _that_foundered(talk, sentence)
        _since_then(talk, sentence)
        _ever_since(talk, sentence)
    for draft in [d for s in sentence for d in s.drafts if d.slot in _WORN] if sentence.says(_BEFORE_US) else ():
        if talk.words[draft.start - 1] == "had" and talk.words[draft.start - 2] in _BEFORE_US:
            recall_one(draft)
    for position, segment in enumerate(sentence if talk.tells(_WHAT_HE_HAD) else ()):
        if segment.drafts or not _WHAT_HE_HAD.said_in(talk.words[segment.start : segment.end]):
            continue
        told = [s for s in sentence[:position] if s.drafts] or previous
        for draft in [d for s in told for d in s.drafts if d.slot in _WORN and s.horse == segment.horse]:
            recall_one(draft)


def _put_on_lately(talk: Talk, sentence: list[Segment]) -> None:
    """ "The poultice I put on yesterday has earned its keep", "last night's poultice": done before today."""
    for segment in sentence:
        recent = segment.having("times", "recent")
        for draft in [d for d in segment.drafts if d.slot == "treatment"] if recent else ():
            led, behind = talk.words[draft.start - 1], talk.words[draft.end : draft.end + 1]
            then = _NOT_THEN.isdisjoint(talk.words[draft.end : recent[0].start]) and recent[0].start > draft.end
            told = led in _POINTING and bool(_WHO_DID.intersection(behind)) and then
            if told or (led == "'s" and any(m.end == draft.start - 1 for m in recent)):
                recall_one(draft)


def _that_foundered(talk: Talk, sentence: list[Segment]) -> None:
    """ "That's the pony that foundered", "the foundered one": what the horse is known by; not "he's foundered"."""
    for draft in [d for s in sentence for d in s.drafts if d.value == "laminitis"] if talk.says(_FOUNDERED) else ():
        led = talk.words[max(0, draft.start - 1) : draft.start]
        one = led == ["the"] and not _HORSE_SAID.isdisjoint(talk.words[draft.end : draft.end + 1])
        if talk.words[draft.start] in _FOUNDERED and (one or led in (["that"], ["who"])):
            recall_one(draft)


def _since_then(talk: Talk, sentence: Sentence) -> None:
    """ "His second visit since the laminitis", "six weeks since I trimmed her": what came before all of today."""
    for draft in [d for s in sentence for d in s.drafts if d.slot in _DONE_THEN] if sentence.says(_SINCE) else ():
        at = draft.start - 1
        if draft.slot != "finding":
            if _weeks_since(talk, at):
                recall_one(draft)
            continue
        while at > 0 and talk.words[at] in _WHICH:
            at -= 1
        if at >= 0 and talk.words[at] in _SINCE and at + 1 < draft.start:
            recall_one(draft)


def _ever_since(talk: Talk, sentence: Sentence) -> None:
    """ "Boots on both fronts since she foundered last spring", "since she foundered, she's been in boots": of today."""
    for segment in sentence if sentence.says(_SINCE) else ():
        at = next((i for i in range(segment.start, segment.end) if talk.words[i] in _SINCE), -1)
        then = [m for m in segment.having("times", "history") if "since" not in talk.words[m.start : m.end]]
        if at < 0 or not then or then[0].start < at or not _INTERVALS.isdisjoint(talk.words[at - 1 : at]):
            continue
        behind = next((i for i in range(then[0].end, segment.end) if tuple(talk.words[i : i + 2]) in _HAS_BEEN), -1)
        first, last = (behind, segment.end) if at == segment.start else (segment.start, at)
        had = any(tuple(talk.words[i : i + 2]) in _HAS_BEEN for i in range(first, last))
        if first < 0 or (not had and not _WAS.isdisjoint(talk.words[first:last])):
            continue
        for draft in [d for d in segment.drafts if first <= d.start < last and d.status is Status.HISTORY]:
            if draft.slot not in ("work", "treatment") and (had or draft.value not in _COMES_AND_GOES):
                draft.status = Status.PRESENT
                draft.rules = [rule for rule in draft.rules if rule != _EARLIER]


def _weeks_since(talk: Talk, at: int) -> bool:
    """Whether an interval, "since" and who did it stand before the token, and nothing else."""
    while at > 0 and talk.words[at] in _WHO_DID_IT:
        at -= 1
    return talk.words[at] in _SINCE and talk.words[at - 1] in _INTERVALS


_DONE_THEN = frozenset({"finding", "treatment", "work"})
_WHO_DID_IT = frozenset({"i", "we", "he", "she", "they", "was", "were", "had", "got", "last", "'d", "first", "new"})
_INTERVALS = frozenset({"week", "weeks", "fortnight", "month", "months", "days"})
_IT_WAS = Sayings("it was", "that was", "he was", "she was", "they called it", "they said it was", "the vet called it")
THEN = (_DID_IT, _THAT_DAY, _SO_TODAY, _THEN, _IT_WAS, _THAT_TIME)
_BEGINS = _THEN.first_words | _IT_WAS.first_words | _THAT_TIME.first_words
_LEAD = 2  # tokens before the number of the grade
_GRADES = frozenset({"obel", "lameness"})


def recall_then(talk: Talk, sentence: Sentence, previous: list[Segment]) -> None:
    """Give a clause that points to "then" the earlier time of the statement before it, in this sentence or the last."""
    if talk.tells(_DID_IT, _THAT_DAY, _SO_TODAY):
        _done_before(talk, sentence)
        _on_that_day(talk, sentence)
        _until_today(talk, sentence, previous)
    if not talk.tells(_THEN, _IT_WAS, _THAT_TIME) or sentence.lacks(_BEGINS):
        return
    for position, segment in enumerate(sentence):
        if segment.drafts and not segment.present and (_points_then(talk, segment) or _graded_then(talk, segment)):
            told = [*previous, *sentence[:position]][::-1]
            before = next((s for s in told if s.drafts), None)
            if _today_between(told) and not _points_then(talk, segment):
                continue
            if before is not None and any(d.status in (Status.HISTORY, Status.RESOLVED) for d in before.drafts):
                for draft in segment.drafts:
                    recall_one(draft)


def _on_that_day(talk: Talk, sentence: list[Segment]) -> None:
    """ "Four out of five a fortnight ago. He's sound today. I drained it that day": a day told of before, not today."""
    for segment in sentence:
        at = next((at for at, _ in _THAT_DAY.within(talk.words, segment.start, segment.end)), None)
        if at is None or segment.present or segment.having("plans"):
            continue
        near = [s for s in talk.segments[: segment.index] if s.horse == segment.horse]
        near = [s for s in near if segment.sentence - s.sentence <= _DAYS_BACK]
        if any(s.having("times", "history") or s.having("times", "recent") for s in near):
            for draft in [d for d in segment.drafts if d.start < at]:
                recall_one(draft)


def _until_today(talk: Talk, sentence: list[Segment], previous: list[Segment]) -> None:
    """ "He quicked easy last time, I quicked the off fore, so today I set them low": all before "so today" was then."""
    if not previous or not talk.tells(_SO_TODAY):
        return
    turned = [s.joined_by("so", ", so") and bool(s.having("times", "today")) for s in sentence]
    turn = turned.index(True) if True in turned else 0
    then = previous[-1].horse == sentence[0].horse and bool(previous[-1].having("times", "history"))
    if not then or any(s.present or s.having("times") for s in sentence[:turn]):
        return
    for draft in [d for s in sentence[:turn] for d in s.drafts]:
        recall_one(draft)


def _today_between(told: list[Segment]) -> bool:
    """ "She foundered last spring. Trotted her up, two out of five it was": something else stands between."""
    return bool(told) and not told[0].drafts and not told[0].having("times", "history")


def _points_then(talk: Talk, segment: Segment) -> bool:
    """ "… around then as well", "Obel two that time": the second only where it closes its segment."""
    that_time = _THAT_TIME.within(talk.words, segment.start, segment.end)
    closing = any(at + len(form) == segment.end for at, form in that_time)
    return closing or _THEN.said_in(talk.words[segment.start : segment.end])


def _graded_then(talk: Talk, segment: Segment) -> bool:
    """ "She foundered two winters back, Obel three it was": a grade and nothing else, as it was then."""
    first, last = segment.drafts[0], segment.drafts[-1]
    closing = any(at + len(form) == segment.end for at, form in _IT_WAS.within(talk.words, last.end, segment.end))
    return first is last and first.slot in _GRADES and first.start - segment.start <= _LEAD and closing


def _done_before(talk: Talk, sentence: list[Segment]) -> None:
    """ "He's foundered. He did it once before, two springs back": what was just told of, then as well."""
    for segment in sentence:
        at = next((at for at, _ in _DID_IT.within(talk.words, segment.start, segment.end)), None)
        if at is None or not set(talk.words[segment.start : at]) <= _THE_HORSE or _told_behind(talk, sentence, segment):
            continue
        if segment.drafts:
            continue
        timed = any(s.having("times", "history") for s in sentence if 0 <= s.index - segment.index <= 1)
        told = _found_last(talk, segment) if timed or talk.words[segment.end - 1] == "before" else None
        if told is not None:
            then = replace(told, segment=segment, start=at, end=segment.end, severity=None, zone=None, evidence={at})
            then.status, then.rules = Status.HISTORY, ["it: the finding before"]
            segment.draft(then)


def _told_behind(talk: Talk, sentence: list[Segment], cue: Segment) -> bool:
    """ "She did this two years ago in the left hind too, a toe crack": what it was, of then; "too" copies nothing."""
    then = cue.having("times", "history") or "before" in talk.words[cue.start : cue.end]
    behind = [s for s in sentence if s.index > cue.index and s.drafts]
    if not then or not behind or behind[0].drafts[0].slot != "finding" or any(s.present for s in behind):
        return False
    for draft in cue.drafts:
        draft.drop("it: what is told behind")
    for draft in behind[0].drafts:
        recall_one(draft)
    return True


def _found_last(talk: Talk, segment: Segment) -> Draft | None:
    """The finding told last of the horse, if it is there today."""
    near = [s for s in talk.segments[: segment.index] if s.horse == segment.horse]
    told = [d for s in near if segment.sentence - s.sentence <= _NEAR for d in s.kept]
    found = [d for d in told if d.slot == "finding"]
    return found[-1] if found and found[-1].status is Status.PRESENT else None


_THAT = frozenset({"that", "those", "they", "it", "these"})
_WAS = frozenset({"was", "were", "'d", "had"})
_NO = (["no"], ["nah"], ["nope"])
_NO_OR_NONE = (*_NO, ["none"], ["not"])
_NO_MORE = frozenset(
    {"no", "nah", "nope", "none", "not", "any", "more", "today", "now", "this", "time", "at", "all", ","}
)
_ASKED = ("gaits", "pads", "packings", "clips", "traction", "shoe_types")
_TOLD = frozenset({"i", "we", "put", "'ve", "alright", "okay"})
_FITTED = frozenset({"traction", "pad", "packing", "clips", "wedge", "shoe_type"})


def of_another_time(talk: Talk, cue: Mention) -> bool:
    """Whether "no" answers a question with the time that it belongs to."""
    asked = cue.start > 0 and talk.words[cue.start - 1] == "?"
    return asked and talk.words[cue.start : cue.end] in _NO and _time_behind(talk, cue.end)


def asked_how(talk: Talk, cue: Mention) -> bool:
    """ "Lame? No, sound.", "Leather pads? No, rim pads.": the "no" answers, and takes nothing back."""
    if not cue.start or talk.words[cue.start - 1] != "?" or talk.words[cue.start : cue.end] not in _NO:
        return False
    start = max((i + 1 for i in range(cue.start - 1) if talk.words[i] in SENTENCE_ENDS), default=0)
    end = next((i for i in range(cue.end, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    told = [[m.start for m in talk.having(name)] for name in _ASKED]
    return any(any(start <= at < cue.start for at in of) and any(cue.end <= at < end for at in of) for of in told)


def _time_behind(talk: Talk, at: int) -> bool:
    """ ", that was last time": up to the next comma or stop."""
    at += talk.words[at : at + 1] == [","]
    if at + 2 >= len(talk.words) or talk.words[at] not in _THAT or talk.words[at + 1] not in _WAS:
        return False
    times = [m for m in talk.having("times", "history") if at + 2 <= m.start <= at + 4]
    return bool(times) and "," not in talk.words[at : times[0].start]


def recall_asked(talk: Talk, sentence: list[Segment], previous: list[Segment]) -> None:
    """Give what the sentence before asked about to the earlier time that this one opens with, or deny it."""
    start = sentence[0].start
    if not previous or talk.words[start - 1 : start] != ["?"]:
        return
    if talk.words[start : start + 1] in _NO and _time_behind(talk, start + 1):
        for draft in [d for s in previous for d in s.drafts if d.status is Status.PRESENT]:
            draft.status = Status.HISTORY
            draft.dropped = draft.dropped and SOUGHT not in draft.rules
            draft.note(_EARLIER)
    elif _TOLD.isdisjoint(talk.words[previous[0].start : start]):  # "Put pads on the fronts, all right?" asks nothing
        fitted = [d for s in previous for d in s.kept if d.slot in _FITTED and d.status is Status.PRESENT]
        _answer(talk.words[start : sentence[-1].end], [d for s in sentence for d in s.drafts], fitted)


def _answer(words: list[str], answered: list[Draft], asked: list[Draft]) -> None:
    """ "Studs? He had them last season", "Toe clips? No, quarter clips.", "Studs behind? None today"."""
    past = {draft.value for draft in answered if draft.status is Status.HISTORY}
    told = {draft.slot for draft in answered}
    denied = (words[:1] in _NO and words[1:2] == [","]) or (words[:1] in _NO_OR_NONE and set(words) <= _NO_MORE)
    for draft in asked:
        if draft.value in past or (denied and draft.slot in told):
            draft.dropped = True
        elif denied and not told:
            draft.status = Status.ABSENT
            draft.note("denied in the answer")
