"""What was thought or told and is not so: "they told me his heels were contracted. They're nothing of the sort"."""

from __future__ import annotations

from pipeline.reading.denials import BARE_DENIALS, BEING, NOT_SOUND, deny_one
from pipeline.reading.questions import SOUGHT, brought_up
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.thought_lame import OF_THE_SORT, THOUGHT
from pipeline.record import Status

_IT_IS = (" it is", " so", " it was", " it 's that", " he is", " she is", " he has", " she has", " there is", "")
_NOT_MY_VIEW = Sayings(
    *(f"i {no} {think}{so}"
      for no in ("do n't", "do not", "would n't")
      for think in ("think", "believe", "reckon", "say")
      for so in _IT_IS)
)  # fmt: skip
_NOT_SO = Sayings(
    *(" ".join(form) for form in BARE_DENIALS),
    "that 's not it", "that is n't it", "there 's no sign", "i see none", "i found none", "never found",
    "i did n't", "i did not", "it did n't", "it did not",
    *(f"{can} {find}" for can in ("could n't", "ca n't", "did n't", "do n't", "could not", "did not")
      for find in ("see", "find", "feel")),
)  # fmt: skip
_HAS_NOT = Sayings(
    *(f"{he} {has} it" for he in ("he", "she")
      for has in ("has n't got", "has not got", "'s not got", "ai n't got", "does n't have", "does not have"))
)  # fmt: skip
AGAINST = Sayings(*(" ".join(form) for said in (_HAS_NOT, _NOT_SO, _NOT_MY_VIEW, OF_THE_SORT) for form in said.forms))
_IT = frozenset({
    "no", "it", "one", "that", "any", "them", "there", "i", "we", "looked", "had", "a", "look", "and", "but", "though",
    "at", "all", "today", "of", "myself", "well", "nope", "listened", "felt", "checked", "him", "her",
})  # fmt: skip
_BEFORE = frozenset({"had", "'d", "been"})
_THEY_ARE = _IT | BEING | {"he", "she", "they", "this", "which", "have", "got", "really"}


def deny_thought(talk: Talk, sentence: Sentence, before: Sentence) -> None:
    """ "They thought there was a keratoma but I couldn't find it", "her mum thinks laminitis. I don't reckon it is"."""
    if sentence.lacks(AGAINST.first_words):
        return
    for position, segment in enumerate(sentence):
        if segment.drafts or any(m.readings["feet"] != "in_hand" for m in segment.having("feet")):
            continue
        words = talk.words[segment.start : segment.end]
        form = next((f for i in range(segment.start, segment.end) if (f := AGAINST.at(talk.words, i))), None)
        sort = form in OF_THE_SORT.forms
        if form is None or not {*words} - {*form} <= (_THEY_ARE if sort else _IT):
            continue
        told = [d for s in sentence[:position] for d in s.drafts]
        here, then = ({m.get("feet") for s in part for m in s.having("feet")} for part in (sentence[:position], before))
        if not told and not (here and then and here.isdisjoint(then | {"in_hand"})):  # not behind another foot
            told = [d for s in before for d in s.drafts if s.horse == segment.horse]
        if not told or told[-1].slot not in ("finding", "gait", "manner"):
            continue
        flatly = told[-1].segment not in sentence and tuple(form) in BARE_DENIALS
        flatly = flatly and (segment is sentence[-1] or (not position and _told_so(talk, told[-1])))
        flatly = flatly and told[-1].status is Status.PRESENT  # "they say it's hot. It's not."
        if flatly or (_told_so(talk, told[-1]) if sort else _was_thought(talk, told[-1], form)):
            _found_not_so(told[-1], segment, sentence)


def _told_so(talk: Talk, draft: Draft) -> bool:
    """ "His fronts, I was told, were contracted": not "they told me it was gone", which denies no finding."""
    sentence = talk.sentence(draft.segment.sentence)
    gone = any(s.having("resolutions") for s in sentence if s.index >= draft.segment.index)
    return sentence.says(THOUGHT) and not gone


def only_told(talk: Talk, draft: Draft) -> bool:
    """ "Everyone was saying founder": of today, and seen by nobody; not "they said he had an abscess"."""
    sentence = talk.sentence(draft.segment.sentence)
    return _told_so(talk, draft) and not sentence.says(_BEFORE) and "times" not in sentence.classes


def _found_not_so(draft: Draft, segment: Segment, sentence: Sentence) -> None:
    """ "They told me he was sound. He's nothing of the kind": he is lame, on which foot is often told next."""
    if draft.segment not in sentence:
        draft.evidence.update(range(segment.start, segment.end))
    if draft.value != "sound":
        return deny_one(draft)
    if any(d.slot in ("gait", "lameness") for s in sentence for d in s.drafts if d is not draft):
        return draft.drop(NOT_SOUND)
    draft.value, draft.dropped = "lame", draft.dropped and SOUGHT not in draft.rules
    return draft.note(NOT_SOUND)


def _was_thought(talk: Talk, draft: Draft, form: list[str]) -> bool:
    """Not "I suspect an abscess. I couldn't find it", which may be there all the same."""
    if form in _HAS_NOT.forms:
        return not draft.segment.having("horse")  # "he's a laminitis waiting to happen, but he hasn't got it"
    own = draft.status is Status.SUSPECTED and form[-1] not in ("see", "find", "feel", "found")
    if form in _NOT_MY_VIEW.forms:
        own = not THOUGHT.isdisjoint(talk.words[talk.sentence(draft.segment.sentence)[0].start : draft.start])
    return own or SOUGHT in draft.rules or brought_up(talk, draft.segment)
