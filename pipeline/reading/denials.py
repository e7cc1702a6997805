"""What is denied: "no thrush, no heat or swelling", "there wasn't one", and what was only looked for."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.nothing_of import SAID_OF_NOTHING, both_asked, both_of, denied_of_its_kind
from pipeline.reading.questions import SOUGHT
from pipeline.reading.repair_cues import answers_in_turn
from pipeline.reading.sayings import said_whole
from pipeline.reading.scopes import last_doubtable, reached
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.there_all_the_same import affirm_all, less_than_it_was, there_all_the_same
from pipeline.reading.thought_lame import THOUGHT
from pipeline.record import Status

_DENIABLE = frozenset({
    "finding", "tester", "pulse", "gait", "shoe_state", "pad", "packing", "traction", "clips", "treatment", "vet",
    "manner", "shoe_type", "shoe_material", "work", "wedge", "lameness", "nail_line",
})  # fmt: skip
_NOT_DONE = "denied: not done"
_FELT = frozenset({"tester", "pulse", "gait"})
NOT_SOUND = "not sound, as was asked"
BARE_DENIALS = said_whole(
    "it is n't", "it was n't", "they are n't", "they were n't", "it was not", "it 's not", "it is not", "they 're not",
    "there is n't", "there was n't", "he has n't", "she has n't", "he is n't", "she is n't", "he does n't",
    "she does n't", "he did n't", "she did n't", "they do n't", "he had n't", "she had n't", "they had n't",
    "he 's not", "she 's not", "he was n't", "she was n't", "he is not", "she is not", "he was not", "she was not",
    "there 's not", "there is not",
)  # fmt: skip
_BARE_ANSWERS = said_whole(
    "none", "nothing", "no", "nil", "zero", "nope", "none at all", "nothing there", "absent", "not seen", "none seen",
    "not found", "none found", "not there", "not present", "not a trace", "no trace", "not a sign", "no sign",
    "not that i found", "not that i saw", "not that i could find", "not that i could see",
    "none of it", "none of them", "none of those", "none of that", "not really", "not quite", "not at all", "not now",
    "not today", "not a bit", "he is n't", "she is n't", "he was n't", "she was n't", "he 's not", "she 's not",
)  # fmt: skip
_NOT_BY_ME = said_whole("i had n't", "i have n't", "i did n't", "i 'd not", "i 've not")
_JOINING = frozenset({"or", "and", ",", "a", "an", "any"})
_ANY_MORE = frozenset({"anymore", "any"})
_NOT = frozenset({"n't", "not", "no", "never"})
_NEITHER = frozenset({"neither", "none", "not", "no"})
_THINK = frozenset({"think", "believe", "reckon", "suppose", "figure"})
BEING = frozenset({"'s", "is", "was", "has", "are", "'re", "were"})
_HE_IS_NOT = (frozenset({"it", "he", "she", "they", "that"}), BEING, frozenset({"not", "n't"}))
_ONLY_SO = (["enough"], ["from"], ["because"], ["with"], ["for"], ["due"])
_REALLY = frozenset({"actually", "really", "truly", "properly", "been", "got"})
# Without one of these nothing is denied but by a mention, nor is it denied any more.
_DENYING = _NOT | _NEITHER | _ANY_MORE | SAID_OF_NOTHING | {"free", "nothing", "nil", "zero", "nope", "absent"}
_FOUND = frozenset({"find", "found", "seen", "see", "saw"})


def _free_of(talk: Talk, draft: Draft) -> bool:
    """ "Thrush free all round", "both hinds are thrush-free"."""
    at = draft.end + (talk.words[draft.end : draft.end + 1] == ["-"])
    return draft.slot == "finding" and talk.words[at : at + 1] == ["free"]


def _is_not(talk: Talk, draft: Draft) -> bool:
    """ "A keratoma it is not", "lame he isn't"."""
    behind = talk.words[draft.end : draft.segment.end]
    told = len(behind) == len(_HE_IS_NOT) and all(w in words for w, words in zip(behind, _HE_IS_NOT, strict=True))
    return told and draft.slot in ("finding", "gait")


def _not_thought(talk: Talk, draft: Draft) -> bool:
    """ "I don't think he's foundered": how the horse is, right behind; not "… he's lame enough", "… lame from it"."""
    at = draft.start
    while talk.words[at - 1] in _REALLY:
        at -= 1
    if draft.slot not in ("finding", "gait") or at < 5 or talk.words[at - 1] not in BEING:
        return False
    said = talk.words[at - 4 : at - 1]
    thought = said[0] in ("n't", "not") and said[1] in _THINK and said[2] in ("he", "she", "they", "it")
    return thought and talk.words[draft.end : draft.end + 1] not in _ONLY_SO


def _before_foot(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """ "There's a keratoma they were worried about, right front, but I don't see one": the foot alone between."""
    foot = sentence[position - 1]
    footed = {i for m in foot.having("feet") for i in range(m.start, m.end)}
    rest = {talk.words[i] for i in range(foot.start, foot.end) if i not in footed}
    if position < 2 or not footed or not rest <= {"in", "on", "the", "of"}:
        return []
    told = sentence[position - 2]
    return [] if told.having("feet") else [d for d in told.drafts if d.slot == "finding"][-1:]


def _mark_corrections(sentence: Sentence) -> None:
    """What stands behind a repair cue that is alone in its segment puts right what was said before."""
    for position, segment in enumerate(sentence if "taking_back" in sentence.classes else ()):
        if not segment.drafts and segment.having("taking_back", "repair"):
            for draft in [d for s in sentence[position:] for d in s.drafts]:
                draft.corrects = True


def deny(talk: Talk, sentence: Sentence) -> None:
    _mark_corrections(sentence)
    denied = "denials" in sentence.classes
    if not denied and sentence.lacks(_DENYING):
        return
    for position, segment in enumerate(sentence):
        for cue in segment.having("denials", "before") if denied else ():
            ahead = reached(talk, sentence, position, cue)
            for draft in ahead or _found_no(talk, sentence, position, cue):
                if not there_all_the_same(talk, segment, cue, draft):
                    deny_one(draft, cue)
        for draft in [d for d in segment.drafts if _is_denied_by_itself(talk, d)]:
            deny_one(draft)
        answered = [*_answered_at_once(talk, sentence, position), *_on_neither(talk, sentence, position)]
        for draft in [*answered, *denied_of_its_kind(talk, sentence, position), *both_asked(talk, sentence, position)]:
            deny_one(draft)
        for cue in segment.having("denials", "after") if denied else ():
            if talk.words[cue.end : cue.end + 1] == [":"]:
                continue  # a heading: what it denies stands behind it
            if any(m.get("times") == "history" and m.start == cue.end for m in segment.having("times")):
                continue  # "thrush that wasn't there last time"
            before = [d for d in segment.drafts if d.end <= cue.start]
            near = position and not segment.drafts and sentence[position - 1].horse == segment.horse
            earlier = (sentence[position - 1].drafts or _before_foot(talk, sentence, position)) if near else []
            earlier = earlier or (_thought_before(talk, sentence, position) if near else [])
            earlier = [d for d in earlier if not _of_another_foot(segment, d)]
            ahead = reached(talk, sentence, position, cue)  # "there isn't any heat in the left hind"
            last = both_of(talk, sentence, position, cue) or _listed(talk, sentence, position, before)
            sought = _sought([*_question(talk, sentence, position), *sentence[:position]])
            for draft in last or ahead or sought or _joined(talk, sentence, earlier[-1:]):
                if not _lost_for_good(talk, cue, draft):
                    deny_one(draft, cue)
        _deny_answered(talk, sentence, position)
    affirm_all(talk, sentence)
    _never_done(talk, sentence)
    _gone_by_now(talk, sentence)


def _is_denied_by_itself(talk: Talk, draft: Draft) -> bool:
    return _denied_in_gap(talk, draft) or _free_of(talk, draft) or _not_thought(talk, draft) or _is_not(talk, draft)


def _deny_answered(talk: Talk, sentence: list[Segment], position: int) -> None:
    """A segment that is nothing but a denial: "none", "there isn't", "none of it"."""
    segment = sentence[position]
    words = tuple(talk.words[segment.start : segment.end])
    answers = words in _BARE_ANSWERS and _closes(sentence, position)
    answers = answers or (len(words) > 1 and words in _BARE_ANSWERS and bool(_question(talk, sentence, position)))
    none = words[0] == "none" and position and not (segment.drafts or answers) and _only_none(talk, segment)
    if none or (answers and (segment.having("denials") or words[0] != "no")):
        told = _joined(talk, sentence, _asked(talk, sentence, position), of_it="of" in words)
        for draft in [d for d in told if not _of_another_foot(segment, d)]:
            deny_one(draft)
    if position and (words in BARE_DENIALS or words in _NOT_BY_ME):
        _deny_barely(talk, sentence, position)


def _lost_for_good(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Lost both fronts, couldn't find either": it is the shoes that nobody found."""
    searched = not _FOUND.isdisjoint(talk.words[cue.start : cue.end])
    return searched and draft.slot == "shoe_state" and draft.value == "lost" and draft.end <= cue.start


def _listed(talk: Talk, sentence: list[Segment], position: int, before: list[Draft]) -> list[Draft]:
    """The last draft before the denial and the findings joined to it: "sidebone and ringbone have been ruled out"."""
    told = before[-1:]
    while told and position and len(before) == 1 and sentence[position].joined_by("and", "or", ",", ", and", ", or"):
        position -= 1
        before = [d for d in sentence[position].drafts if d.slot == "finding"]
        held = {i for d in before for i in range(d.start, d.end)}
        rest = {talk.words[i] for i in range(sentence[position].start, sentence[position].end) if i not in held}
        if len(before) != 1 or told[0].slot != "finding" or not rest <= {"the", "any", "a"}:
            break
        told = [*before, *told]
    return told


def _joined(talk: Talk, sentence: list[Segment], told: list[Draft], *, of_it: bool = False) -> list[Draft]:
    """ "Heat or thrush, none", "corns, thrush, heat, none of it": what an "or", or a list, joins to what is denied."""
    found = [d for s in sentence for d in s.drafts if d.slot == "finding" and told and d.end <= told[0].start]
    for draft in reversed(found if len(told) == 1 else []):
        between = set(talk.words[draft.end : told[0].start])
        of_it = of_it or between == {"and"} or between == {",", "and"}
        if not between <= _JOINING or not ("or" in between or of_it):
            break
        told = [draft, *told]
    return told


def _thought_before(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """ "The lad thought he felt heat in it, but I had my hand there a good while and there's none"."""
    before = sentence[:position]
    told = next((s for s in reversed(before) if s.drafts), None)
    if told is None or sentence[position].having("feet"):
        return []
    if any(m.get("feet") != "in_hand" for s in before if s.index > told.index for m in s.having("feet")):
        return []
    thought = not THOUGHT.isdisjoint(talk.words[before[0].start : told.drafts[0].start])
    return [d for d in told.drafts if thought and d.slot == "finding"]


def _deny_barely(talk: Talk, sentence: list[Segment], position: int) -> None:
    """ "… there isn't", "… he hasn't", and "I thought I'd quicked him, I hadn't"."""
    words = tuple(talk.words[sentence[position].start : sentence[position].end])
    lost = _said_lost(talk, sentence, position)
    for draft in lost or _sought(sentence[:position]) or last_doubtable(sentence[:position]):
        if words in BARE_DENIALS or draft.value in ("quicked", "close_nail"):
            deny_one(draft)


def _said_lost(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """ "They said he'd lost the left front, he hadn't"."""
    before = sentence[position - 1].drafts
    had = talk.words[sentence[position].start + 1] in ("had", "has", "did")
    return before[-1:] if before and had and before[-1].slot == "shoe_state" else []


def _never_done(talk: Talk, sentence: Sentence) -> None:
    """ "Soaked it, no I didn't soak it": the first word goes with its denial."""
    drafts = [d for s in sentence for d in s.drafts]
    for denied in [d for d in drafts if _NOT_DONE in d.rules]:
        for draft in drafts:
            apart = draft.feet and denied.feet and not set(draft.feet) & set(denied.feet)
            same = (draft.slot, draft.value) == (denied.slot, denied.value)
            if draft.start < denied.start and same and not apart:
                draft.drop(_NOT_DONE)
        if denied.slot == "manner":
            _not_that_wild(talk, denied)


def _not_that_wild(talk: Talk, denied: Draft) -> None:
    """ "He bit me. He's not dangerous, only fidgety": what the next sentence denies goes."""
    for draft in [d for s in talk.sentence(denied.segment.sentence - 1) for d in s.drafts]:
        if (draft.slot, draft.value, draft.segment.horse) == ("manner", denied.value, denied.segment.horse):
            draft.drop(_NOT_DONE)


def _gone_by_now(talk: Talk, sentence: Sentence) -> None:
    """ "Her heels aren't underrun anymore": what is denied was there once."""
    for segment in () if sentence.lacks(_ANY_MORE) else sentence:
        words = talk.words[segment.start : segment.end]
        if "anymore" in words or not {("any", "more"), ("any", "longer")}.isdisjoint(pairwise(words)):
            for draft in [d for d in segment.drafts if d.slot in ("finding", "gait") and d.status is Status.ABSENT]:
                draft.status = Status.RESOLVED


def _only_none(talk: Talk, segment: Segment) -> bool:
    """ "Sidebone, none that I can feel in either front": nothing but the answer and the feet."""
    told = {i for m in segment.mentions if m.is_any(("feet", "fillers", "denials")) for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, told)
    return rest <= {"none", "in", "on", "of", "the", "at", "all", "either", "any"}


def _of_another_foot(segment: Segment, told: Draft) -> bool:
    """ "A bruise in the near fore and none in the off fore, no bruise in that one": found there, told with its foot."""
    feet, its = ({m.get("feet") for m in s.having("feet")} for s in (segment, told.segment))
    return SOUGHT not in told.rules and bool(feet) and bool(its) and feet.isdisjoint(its | {"in_hand"})


def _question(talk: Talk, sentence: list[Segment], position: int) -> list[Segment]:
    """ "Any thrush in the hinds? I looked, both of them, and not a trace": what was asked, nothing told since."""
    asked = talk.words[sentence[0].start - 1] == "?" and not any(s.drafts for s in sentence[:position])
    footed = any(m.get("feet") != "pair_in_hand" for s in sentence[: position + 1] for m in s.having("feet"))
    return talk.sentence(sentence[0].sentence - 1) if asked and not footed else []


def _closes(sentence: list[Segment], position: int) -> bool:
    """ "Sidebone, none." and "Sidebone, none, either fore.": at the end, or before nothing but a foot."""
    behind = sentence[position + 1 :]
    return not behind or (len(behind) == 1 and not behind[0].drafts and bool(behind[0].having("feet")))


def _sought(segments: list[Segment]) -> list[Draft]:
    return [d for s in segments for d in s.drafts if SOUGHT in d.rules]


def _asked(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """What a bare "none" or "no" answers: "checked for heat, none", "thrush in the left hind? No."."""
    before = sentence[:position] or talk.sentence(sentence[0].sentence - 1)
    before = _question(talk, sentence, position) or before
    drafts = [d for s in before for d in s.drafts if d.slot == "finding" or SOUGHT in d.rules]
    sought = [d for d in drafts if SOUGHT in d.rules]
    if (
        not position
        and drafts
        and talk.words[before[0].start : before[-1].end] == talk.words[drafts[-1].start : drafts[-1].end]
    ):
        return drafts[-1:]  # "Ringbone. None."
    if before and not drafts and not THOUGHT.isdisjoint(talk.words[before[0].start : before[-1].end]):
        return [d for s in before for d in s.drafts if d.slot in _FELT][-1:]  # "I thought he flinched, but no"
    return sought or (drafts[-1:] if position and sentence[position - 1].drafts else [])


def _denied_in_gap(talk: Talk, draft: Draft) -> bool:
    """ "Heels aren't contracted": the denial stands inside the phrase."""
    if draft.slot in ("tester", "pulse") or _NOT.isdisjoint(talk.words[draft.start : draft.end]):
        return False
    if not any(talk.words[i] in _NOT for i in range(draft.start, draft.end) if i not in draft.evidence):
        return False
    return not less_than_it_was(talk, draft)


def _answered_at_once(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """ "Sidebone none either fore", "thrush or canker nil": the answer right behind what was looked for."""
    segment = sentence[position]
    found = [d for d in segment.drafts if d.slot == "finding" and d.end < segment.end]
    if not found:
        found = [d for d in segment.drafts if d.slot == "finding" and d.end == segment.end]
        return [d for d in found if talk.words[d.end : d.end + 2] == [",", "no"] and answers_in_turn(talk, d.end + 1)]
    closing = talk.words[segment.end : segment.end + 1] in ([], ["."], [";"])
    answers = {"none", "nil", "nope", "no"} if closing else {"none", "nil", "nope"}
    answered = [
        d
        for d in found
        if (talk.words[d.end] in answers and (talk.words[d.end] != "no" or d.end + 1 == segment.end))
        or (talk.words[d.end] == "no" and answers_in_turn(talk, d.end))
    ]
    if not answered:
        return []
    found = sorted((d for s in sentence for d in s.drafts if d.slot == "finding"), key=lambda d: d.end)
    for draft in reversed(found):
        if draft.end <= answered[-1].start:
            if not set(talk.words[draft.end : answered[-1].start]) <= {"and", "or"}:
                break
            answered.append(draft)
    return answered


def _found_no(talk: Talk, sentence: list[Segment], position: int, cue: Mention) -> list[Draft]:
    """ "Looked for thrush and didn't find any": what ends in "any" with nothing behind answers what was looked for."""
    looked = {"find", "found", "see", "saw", "feel", "seen"} & set(talk.words[cue.start : cue.end])
    if not looked or talk.words[cue.end - 1] != "any" or cue.end < sentence[position].end:
        return []
    before = [d for s in sentence[: position + 1] for d in s.drafts if d.slot == "finding" and d.end <= cue.start]
    return _sought(sentence[: position + 1]) or before[-1:]


def _on_neither(talk: Talk, sentence: list[Segment], position: int) -> list[Draft]:
    """ "Neither hind has thrush", "not one foot with thrush": the denial is part of the foot's name."""
    denied: list[Draft] = []
    for foot in sentence[position].having("feet") if talk.says(_NEITHER) else ():
        if _NEITHER.isdisjoint(talk.words[foot.start : foot.start + 2]):
            continue
        before = [d for d in sentence[position].drafts if d.end <= foot.start]
        denied += reached(talk, sentence, position, foot) or before[-1:]
    return denied


def deny_one(draft: Draft, cue: Mention | None = None) -> None:
    """Deny a draft, as its slot is denied; nothing is done to what cannot be, or is already."""
    if draft.slot not in _DENIABLE or "denied" in draft.rules:
        return None
    if draft.slot in ("work", "manner", "treatment", "shoe_material"):
        return draft.drop(_NOT_DONE)
    draft.note("denied")
    draft.evidence.update(cue.literal if cue is not None else ())
    if SOUGHT in draft.rules:
        draft.dropped = False
    if draft.value == "sound" and SOUGHT in draft.rules:
        draft.value = "lame"  # "Is he sound? No."
        draft.note(NOT_SOUND)
    elif draft.slot == "tester":
        draft.value = "none"
    elif draft.slot == "pulse":
        draft.value = "normal"
    else:
        draft.status = Status.ABSENT
    return None
