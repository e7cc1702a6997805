"""What is doubted: "possible corn", "might be heat", "I wouldn't swear to it" after the fact."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from pipeline.reading.foot_groups import Groups
from pipeline.reading.mentions import Mention
from pipeline.reading.questions import SOUGHT
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import DOUBTABLE, drafts_after, last_doubtable, reached
from pipeline.reading.settling_doubts import settle_guess
from pipeline.reading.talk import Draft, Feet, Segment, Sentence, Talk
from pipeline.record import FEET, Status

_COMMENT = 4  # tokens of a segment that only comments: ", could be, "
_HIDDEN = frozenset({"abscess", "puncture", "keratoma", "navicular"})  # nobody sees it from outside
_OPINION = Sayings("i 'd say", "i would say", "i should say", "i 'd call it", "i would call it", "i 'd put it down to")
_NOT_REACHED = Sayings(
    *(f"{verb} {it}" for verb in ("get to", "get at", "get down to", "reach", "find", "open") for it in ("it", "that"))
)
_SUSPECT_IT = tuple([verb, it] for verb in ("suspect", "suspected") for it in ("it", "that", "one", "so"))
_BECAUSE = Sayings(
    *(f"because {it}" for it in ("there is", "there was", "there are", "he has", "she has", "it is", "it was"))
)
UNSEEN = (_OPINION, _NOT_REACHED)
_BEGINS = _OPINION.first_words | _NOT_REACHED.first_words
_KNOWN = frozenset({"the", "that", "his", "her", "this", "old"})
_RECKONING = frozenset({"guess", "think", "reckon", "suppose", "believe"})
_EITHER = frozenset({"either"})
_ARTICLES = frozenset({"a", "an", "the"})
_OH = frozenset({"oh", "well", "say", "a", "about"})
_SOME = _ARTICLES | {"some", "one"}
_SHARP = frozenset(
    {"nail", "nails", "screw", "staple", "wire", "stone", "flint", "tack", "thorn", "glass", "bolt", "stub", "spike"}
)
_SHORT_NAME = 4  # tokens: "an old roofing nail"
_CAUSED = frozenset({"from", "because", "since", "due", "caused", "thanks"})
_WONDERING = frozenset({"wonder", "wondering", "wondered"})
_WHAT_ABOUT = frozenset({"if", "whether", "would", "should", "could", "what", "how", "why", "about"})
# "from the look", "from where I stood"
_AS_SEEN = frozenset(
    [
        "look", "looks", "sound", "sounds", "feel", "smell", "way", "what", "how", "here", "there", "where", "outside",
        "above", "distance", "side", "far",
    ]
)  # fmt: skip
# Words with which a doubt is only commented on: what stands beside them is what the doubt is of.
_COMMENTING = frozenset({
    "it", "that", "this", "there", "here", "one", "some", "any", "them", "these", "those", "him", "her", "his", "i",
    "we", "you", "me", "us", "he", "she", "they", "who", "'s", "'re", "'ve", "'m", "'d", "'ll", "is", "was", "are",
    "were", "be", "been", "being", "has", "have", "had", "do", "does", "did", "will", "would", "could", "can",
    "should", "may", "might", "n't", "not", "no", "nae", "yes", "never", "ever", "to", "so", "too", "but", "though",
    "although", "yet", "still", "just", "only", "even", "and", "or", "nor", "at", "all", "for", "the", "a", "an",
    "now", "today", "then", "well", "really", "honestly", "honest", "either", "way", "myself", "yourself", "sure",
    "certain", "if", "what", "which", "whether", "about", "on", "in", "of", "as", "with", "by", "up", "out", "say",
    "said", "call", "put", "know", "tell", "think", "thinks", "reckons", "make", "made", "judge", "look", "looks",
    "feel", "sound", "smell", "see", "find", "found", "get", "got", "without", "more", "most", "less", "than",
    "better", "much", "very", "quite", "anything", "something", "nothing", "kind", "sort", "thing", "things",
    "case", "bit", "little", "moment", "minute", "stage", "point", "present", "eye", "eyes", "hand", "light",
    "mind", "opinion", "view", "word", "words", "money", "life", "first", "till", "until", "before", "after",
    "unless", "because", "enough", "far", "near", "vet", "owner", "again", "right", "wrong", "true", "muck", "mud",
    "dirt", "stain", "dirty", "imagining", "imagination",
})  # fmt: skip
_NARROWING = ("feet", "zones", "severities", "fillers", "horse", "taking_back", "times", "denials")
_THERE = frozenset({"there", "it"})
_IT = frozenset({"it", "that"})  # "couldn't swear to it from here"
_TRUSTED = frozenset({"it", "him", "her", "them", "that"})
_ONLY = frozenset({"only", "just"})
_NOT = frozenset({"n't", "not", "never", "nae"})


def doubt(talk: Talk, sentence: Sentence) -> None:
    for position, segment in enumerate(sentence if "doubts" in sentence.classes else ()):
        for cue in segment.having("doubts", "before"):
            if (
                _of_degree(talk, sentence, position, cue)
                or _of_the_cause(talk, segment, cue)
                or _of_what_it_was(talk, sentence, position, cue)
            ):
                continue
            touched = _named_before(talk, segment, cue) or reached(talk, sentence, position, cue)
            if talk.words[cue.end - 1] == "like" and not touched and cue.end < segment.end:
                continue  # "smells like a drain" compares
            aside = _of_something_else(talk, segment, cue)
            short = segment.end - segment.start <= _COMMENT and not aside
            opens = short and not touched and _opens_what_is_there(talk, sentence, position)
            if not touched and position and not segment.drafts and short and not opens:
                touched = last_doubtable(sentence[:position])
            if not touched and position + 1 < len(sentence) and not drafts_after(segment, cue):
                touched = [] if sentence[position + 1].own_clause and not opens else sentence[position + 1].drafts[:1]
            touched = touched or _only_thought(talk, sentence[:position], segment, cue)
            if (
                not touched
                and not drafts_after(segment, cue)
                and not aside
                and _nothing_behind(sentence, position, cue)
            ):
                touched = last_doubtable(sentence[: position + 1])
            for draft in _either(talk, touched, sentence):
                if not _of_another_foot(talk, segment, draft, cue) and not _there_it_is(talk, sentence, draft):
                    _doubt_one(draft, cue)


def _there_it_is(talk: Talk, sentence: Sentence, draft: Draft) -> bool:
    """ "I won't say there isn't a bruise, because there is": said to be there, whatever was doubted before."""
    told = [at + len(form) for at, form in talk.turns(_BECAUSE) if draft.end <= at < sentence[-1].end]
    return any(talk.words[end : end + 1] in ([], [","], ["."]) for end in told)


def _nothing_behind(sentence: Sentence, position: int, cue: Mention) -> bool:
    """ "A corn near fore, possibly.", "a corn near fore maybe, I'll know next time": it closes what was told."""
    behind = sentence[position + 1 :]
    return not behind or (cue.end == sentence[position].end and not any(s.drafts for s in behind))


def _opens_what_is_there(talk: Talk, sentence: Sentence, position: int) -> bool:
    """ "I think, I only think, there's a corn": a comment, said once or twice, that leads to what is doubted."""
    behind = sentence[position + 1 : position + 2]
    if sentence[position].drafts or not behind:
        return False
    goes_on = not behind[0].drafts and "doubts" in behind[0].named
    if not goes_on and talk.words[behind[0].start] not in _THERE:
        return False
    while position and sentence[position].joined_by(",") and "doubts" in sentence[position - 1].named:
        position -= 1
    led = not any(s.drafts for s in sentence[:position]) or sentence[position].joined_by("and", ", and", "but", ", but")
    return led and not sentence[position].drafts


def doubt_after(talk: Talk, sentence: Sentence, previous: list[Segment]) -> None:
    for position, segment in enumerate(sentence if "doubts" in sentence.classes else ()):
        for cue in segment.having("doubts", "after"):
            if (
                _of_degree(talk, sentence, position, cue)
                or _of_the_cause(talk, segment, cue)
                or _of_what_it_was(talk, sentence, position, cue)
            ):
                continue
            ahead = [d for d in drafts_after(segment, cue) if d.slot in DOUBTABLE]
            wondered = talk.words[cue.end - 1] in _WONDERING and _WHAT_ABOUT & set(talk.words[cue.end : cue.end + 1])
            if not ahead and wondered:
                continue  # "a corn. I wonder if a bar shoe would help" wonders about the shoe
            if not ahead and _of_something_else(talk, segment, cue):
                continue
            behind = last_doubtable(sentence[: position + 1])
            alone = position == 0 or _doubts_throughout(sentence)
            if not behind and alone and not last_doubtable(sentence):
                behind = last_doubtable(previous)
            for draft in ahead or _either(talk, behind, [*previous, *sentence]):
                if not _of_another_foot(talk, segment, draft, cue):
                    _doubt_one(draft, cue)
    settle_guess(talk, sentence, previous)


def _doubts_throughout(sentence: Sentence) -> bool:
    """ "Or maybe it's only mud, I couldn't tell": all that is said is what else it may be."""
    opened = any(m.start <= sentence[0].start + 1 for m in sentence[0].having("doubts", "before"))
    return opened and sentence.says(_ONLY) and not any(s.drafts or s.having("feet") for s in sentence)


def _either(talk: Talk, touched: list[Draft], segments: list[Segment]) -> list[Draft]:
    """ "Corn or bruise, can't make up my mind which": of two that an "or" joins both are in doubt."""
    at = touched[0].start if touched else 0
    while at > 0 and talk.words[at - 1] in _ARTICLES:
        at -= 1
    if at == 0 or talk.words[at - 1] != "or":
        return touched
    slot = touched[0].slot
    return [*touched, *(d for s in segments for d in s.drafts if d.end == at - 1 and d.slot == slot)]


def _of_another_foot(talk: Talk, segment: Segment, draft: Draft, cue: Mention) -> bool:
    """ "Left front has a corn, right front I couldn't tell": the doubt is of the foot that was named since."""
    if not draft.feet or segment.sentence - draft.segment.sentence > 1 or cue.start < draft.end:
        return False
    end = segment.end if segment is not draft.segment else cue.start  # "…, possibly the near fore"
    named = [m for m in talk.starting_in(draft.end, end) if m.get("feet") and not m.dropped]
    foot = _single(str(named[-1].get("feet")), draft.feet) if named and draft.slot == "finding" else None
    return foot is not None and foot not in draft.feet


def _single(name: str, feet: Feet) -> str | None:
    """The one foot that a name means, a bare side at the end of the foot before."""
    if name.startswith("bare_") and len({foot[1] for foot in feet}) == 1:
        return name[-1] + feet[0][1]
    return name if name in FEET else None


def doubt_either(talk: Talk, sentence: Sentence) -> None:
    """ "It's either a corn or a bruise": nobody knows which; not "no corn or bruise in either fore"."""
    if sentence.lacks(_EITHER):
        return
    drafts = [d for s in sentence for d in s.drafts if d.slot == "finding"]
    for one, other in pairwise(drafts):
        led = talk.words[one.start - (2 if talk.words[one.start - 1] in _ARTICLES else 1)]
        between = talk.words[one.end : other.start]
        if led == "either" and between[:1] == ["or"] and set(between[1:]) <= _ARTICLES:
            _suspect(one, range(one.start, one.end))
            _suspect(other, range(one.end, other.end))


def doubt_asked(talk: Talk, sentence: Sentence, previous: list[Segment], groups: Groups) -> None:
    """ "Is there a corn? I did wonder, off fore, can't say for certain": what was asked is suspected."""
    if "doubts" not in sentence.classes or any(s.drafts for s in sentence):
        return
    if talk.words[sentence[0].start - 1 : sentence[0].start] != ["?"]:
        return
    cues = [m for s in sentence for m in s.having("doubts") if m.readings["doubts"] in ("before", "after")]
    if not cues or any(s.having("denials") for s in sentence):
        return
    feet = next((g.feet for s in sentence for g in groups.get(s.index, [])), None)
    for draft in [d for s in previous for d in s.drafts if SOUGHT in d.rules and d.dropped][-1:]:
        draft.dropped, draft.feet = False, draft.feet if draft.feet and not draft.foot_carried else feet or draft.feet
        draft.rules.remove(SOUGHT)
        zone = next((m for s in sentence for m in s.having("zones")), None)
        draft.zone = draft.zone or (zone.readings["zones"] if zone is not None else None)
        _doubt_one(draft, cues[0])


def doubt_unseen(talk: Talk, sentence: Sentence) -> None:
    """ "I'd say it's an abscess", "an abscess, I couldn't get to it": an opinion of what lies hidden in the foot."""
    if sentence.lacks(_BEGINS):
        return
    hidden = [d for s in sentence for d in s.drafts if d.value in _HIDDEN and talk.words[d.start - 1] not in _KNOWN]
    for segment in sentence if hidden else ():
        for at, form in _OPINION.within(talk.words, segment.start, segment.end):
            for draft in [d for d in hidden if at + len(form) <= d.start < segment.end]:
                _suspect(draft, range(at, at + len(form)))
        for at, form in _NOT_REACHED.within(talk.words, segment.start, segment.end):
            if not _NOT.isdisjoint(talk.words[max(0, at - 2) : at]):
                for draft in [d for d in hidden if d.end <= at][-1:]:
                    _suspect(draft, range(at - 1, at + len(form)))


def _named_before(talk: Talk, segment: Segment, cue: Mention) -> list[Draft]:
    """ "A keratoma suspected at the toe": what the participle stands right behind."""
    if talk.words[cue.start : cue.end] != ["suspected"]:
        return []
    return [d for d in segment.drafts if d.end == cue.start and d.slot in DOUBTABLE]


def _only_thought(talk: Talk, before: list[Segment], segment: Segment, cue: Mention) -> list[Draft]:
    """ "I thought there was ringbone in it, and I only suspect it": thought at first, and suspected still."""
    if segment.drafts or talk.words[cue.end - 1 : cue.end + 1] not in _SUSPECT_IT:
        return []
    thought = [d for s in before for d in s.drafts if SOUGHT in d.rules][-1:]
    for draft in thought:
        draft.dropped = False
        draft.rules.remove(SOUGHT)
    return thought


def _of_degree(talk: Talk, sentence: Sentence, position: int, cue: Mention) -> bool:
    """ "A crack at the toe, moderate I reckon", "…, moderate, I guess": how bad it is is in doubt, not that it is."""
    segment = sentence[position]
    alone = position > 0 and (cue.start, cue.end) == (segment.start, segment.end)
    if alone and talk.words[cue.end - 1] in _RECKONING:
        near = sentence[position - 1]
        told = [m for m in near.mentions if not m.is_any(("fillers",))]
        words = [word for word in talk.words[near.start : near.end] if word not in _OH]
        return len(told) == 1 and told[0].get("severities") is not None and len(words) == len(told[0].literal)
    grade = talk.mention_starting(cue.end) if position and cue.start == segment.start else None
    if grade is not None and grade.end == segment.end and grade.get("severities"):
        return True  # "heat in the foot, I want to say mild"
    before = [m for m in segment.mentions if m.end <= cue.start]
    degree = bool(before) and before[-1].get("severities") is not None and before[-1].end == cue.start
    return degree and len(before) == 1 and before[0].start == segment.start and _closes(segment, cue)


def _of_something_else(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "A corn, I think he trod on something", "… not sure where he got it": the doubt is of other words."""
    if any(d.slot in DOUBTABLE and not d.dropped for d in segment.drafts):
        return not _CAUSED.isdisjoint(talk.words[max(d.end for d in segment.drafts) : cue.start])
    start = cue.end if cue.get("doubts") == "after" else segment.start  # "it's that dry I can't tell" gives the reason
    words = talk.words[start : segment.end]
    seen = "from" in words and not _AS_SEEN.isdisjoint(words[words.index("from") :][1:3])
    if seen or segment.joined_by("or", ", or"):
        return False  # "from where I stood"; "or maybe it's old dirt" says what else it may be
    held = {i for m in segment.mentions if m.is_any(_NARROWING) for i in range(m.start, m.end)}
    held |= {i for m in segment.having("doubts") for i in m.literal}
    return any(talk.words[i] not in _COMMENTING for i in range(start, segment.end) if i not in held)


def _of_what_it_was(talk: Talk, sentence: Sentence, position: int, cue: Mention) -> bool:
    """ "Stepped on a nail, a fencing nail I reckon": what he stepped on is in doubt, not the puncture."""
    segment = sentence[position]
    if talk.words[cue.end - 1] == "believe" and cue.end == segment.end - 1 and talk.words[cue.end] in _TRUSTED:
        return True  # "the vet told them that and I believe it"
    if cue.end != segment.end or segment.drafts or not segment.joined_by(","):
        return False
    alone = cue.start == segment.start and position > 1  # "a piece of glass, I reckon"
    named = sentence[position - 1] if alone else segment
    words = talk.words[named.start : named.end if alone else cue.start]
    return bool(words) and words[0] in _SOME and words[-1] in _SHARP and len(words) <= _SHORT_NAME and not named.drafts


def _of_the_cause(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "A bruise, from a stone I reckon", "a bruise, probably from a stone": where it came from is in doubt."""
    led = talk.words[cue.end] if cue.end < segment.end and talk.words[cue.end - 1] not in _IT else ""
    at = cue.end if led in _CAUSED else segment.start
    if talk.words[at] not in _CAUSED or not _AS_SEEN.isdisjoint(talk.words[at : at + 3]):
        return False
    if led not in _CAUSED and segment.joined_by("start"):
        return False
    return not any(d.end > at for d in segment.drafts)


def _closes(segment: Segment, cue: Mention) -> bool:
    """Whether the cue ends its segment, or only an "and" to another foot stands behind: "…, and left front, …"."""
    behind = [m for m in segment.mentions if m.start >= cue.end and not m.get("horse_cues")]
    return cue.end == segment.end or (bool(behind) and not segment.drafts and bool(behind[0].get("feet")))


def _doubt_one(draft: Draft, cue: Mention) -> None:
    if draft.slot in DOUBTABLE:
        _suspect(draft, cue.literal)


def _suspect(draft: Draft, evidence: Iterable[int]) -> None:
    if draft.status is Status.PRESENT and "denied" not in draft.rules:
        draft.status = Status.SUSPECTED
        draft.note("doubted")
        draft.evidence.update(evidence)
