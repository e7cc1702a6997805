"""How far a cue reaches: its own segment, the list that goes on, never past a new clause.

Scopes follow NegEx (Chapman et al. 2001, J Biomed Inform 34:301-310) and ConText (Harkema et al. 2009, J Biomed
Inform 42:839-851), counted in segments: a list joined by "or" stays inside, "but" and a new clause end it.
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Draft, Segment, Talk

DOUBTABLE = frozenset({"finding", "tester", "pulse", "gait", "lameness", "obel"})
PLANNABLE = frozenset({
    "work", "shoe_type", "shoe_size", "shoe_material", "pad", "wedge", "packing", "treatment", "nails", "nail_size",
    "clips", "traction", "manner", "next_visit_weeks", "vet",
})  # fmt: skip
ALWAYS_PLANNED = frozenset({"next_visit_weeks", "vet"})
_NOT_REACH = 5
_CLOSING = (["nothing"], ["none"])  # "no corns, thrush, heat, nothing"
_SUCH = frozenset({("like", "that"), ("of", "that"), ("of", "the"), ("like", "it")})  # "… anything like that"
_OPENING = frozenset({"nil", "neither", "nor"})
_OBJECTS, _WITH = frozenset({"it", "them", "that", "her", "him"}), frozenset({"with", "in", "on", "under"})
_OR = frozenset({"or", "a", "an", "any"})
_ARTICLES = frozenset({"the", "a", "her", "his", "their", "our", "my"})
EXCEPT = (["bar"], ["except"], ["besides"], ["beyond"], ["save"], ["barring"])
EXCEPT_FOR = (["apart", "from"], ["other", "than"], ["more", "than"], ["except", "for"])
_CALLING = frozenset(
    {"need", "call", "ring", "get", "want", "bother", "have", "having", "calling", "ringing", "getting", "for", "to"}
    | {"of", "trouble", "phone", "see", "send", "about", "by", "from", "needing", "any", "involve", "fetch", "bring"}
)
_SAYING = frozenset({"says", "say", "said", "reckons", "reckon", "thinks", "tells", "claims"})
_TELLING_ME = frozenset({("tells", "me"), ("told", "me"), ("tell", "me"), ("says", "he"), ("says", "she")})
_WHO_SAYS = 4  # tokens of who told it
_TODAY = frozenset({"today", "now", "this", "until", "till", "in"})
_BIDDING, _DID_IT = frozenset({"told", "asked", "instructions"}), frozenset({"dug", "took", "drove", "left", "drew"})
_HANDLING = frozenset({"hold", "trot", "walk", "stand", "bring", "lead", "jog", "run", "pick", "move", "turn", "tie"})
_HANDLED = 5  # tokens of what they are to do with the horse: "bring him over to me"
_PUT_ON, _SHOD = frozenset({"put", "set"}), PLANNABLE - ALWAYS_PLANNED - {"treatment", "packing", "manner"}
_NOT_TODAY = frozenset({"than", "from", "as", "till", "until", "to", "like", "if", "by"})


def reached(talk: Talk, sentence: list[Segment], position: int, cue: Mention) -> list[Draft]:
    segment = sentence[position]
    verbal = talk.words[cue.end - 1] in ("not", "n't", "never")
    reach = segment.end if not verbal else cue.end + _NOT_REACH + _foot_between(segment, cue)
    reach = _over_or(talk, segment, reach) if verbal else reach
    own = [d for d in segment.drafts if cue.end <= d.start < reach and not _new_clause(talk, segment, cue, d)]
    if not own:
        return []
    own = [d for d in own if not (verbal and _presupposed(talk, cue, d)) and not _taken_off(talk, cue, d)]
    own = [d for d in own if not _excepted(talk, cue, d) and not _called_if(talk, segment, cue, d)]
    own = _until_barrier(talk, segment, cue, own)
    if not own:
        return []
    reached = list(own)
    for number in range(position + 1, len(sentence)):
        later = sentence[number]
        if not _continues_list(talk, sentence, number):
            break
        first = later.drafts[0]
        reached.append(first)
        reached.extend(d for d in later.drafts[1:] if "or" in talk.words[first.end : d.start])
    return reached


def _foot_between(segment: Segment, cue: Mention) -> int:
    """ "Didn't pack the left front with putty": the tokens of a foot that stands in the reach of a verb's "not"."""
    named = [m for m in segment.having("feet") if not str(m.get("feet")).endswith("in_hand")]
    return sum(m.end - m.start for m in named if cue.end <= m.start < cue.end + _NOT_REACH)


def _over_or(talk: Talk, segment: Segment, reach: int) -> int:
    """ "I couldn't see a corn or a crack": how far a verb's "not" reaches over what an "or" joins."""
    for one, other in pairwise(segment.drafts):
        between = talk.words[one.end : other.start]
        if one.start < reach and "or" in between and _OR.issuperset(between):
            reach = max(reach, other.start + 1)
    return reach


def _presupposed(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Hadn't noticed the thrush": the article says that it is there; what is denied is the noticing."""
    return draft.slot == "finding" and talk.words[draft.start - 1] == "the" and draft.start - cue.end > 1


def _called_if(talk: Talk, segment: Segment, cue: Mention, draft: Draft) -> bool:
    """ "If she's not right the vet's to look": the "not" is the condition's, the vet opens what follows from it."""
    conditions = [m for m in segment.having("plans", "condition") if m.end <= cue.start]
    at = draft.start
    while at > cue.end and talk.words[at - 1] in _ARTICLES:
        at -= 1
    return draft.slot == "vet" and bool(conditions) and at > cue.end and talk.words[at - 1] not in _CALLING


def _excepted(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Nothing done behind bar a trim", "no work except a reset": what is named as the exception was done."""
    before = [
        word for word in talk.words[max(cue.end, draft.start - 4) : draft.start] if word not in ("a", "the", "his")
    ]
    if draft.slot == "finding":  # "no fault in the near fore other than a bit of thrush"
        led = talk.words[max(cue.end, draft.start - _NOT_REACH) : draft.start]
        return any([word] in EXCEPT for word in led) or any([*pair] in EXCEPT_FOR for pair in pairwise(led))
    return (before[-1:] in EXCEPT or before[-2:] in EXCEPT_FOR) and draft.slot == "work"


def _taken_off(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Thirty eight, that's without the wedge": what is measured without is there."""
    return talk.words[cue.end - 1 : draft.start] == ["without", "the"] and draft.slot in ("pad", "wedge", "shoe_type")


def _new_clause(talk: Talk, segment: Segment, cue: Mention, draft: Draft) -> bool:
    """Whether a new subject or a plan stands between cue and draft: "not better … they need to call the vet"."""
    between = [m for m in segment.mentions if cue.end <= m.start < draft.start]
    subjects = talk.plays("subject", cue.end, draft.start)  # "didn't pack it with putty": no subject
    subject = any(talk.words[i] not in _OBJECTS or talk.words[i + 1] not in _WITH for i in subjects)
    return any(m.get("plans") is not None for m in between) or (subject and cue.get("denials") is not None)


def _until_barrier(talk: Talk, segment: Segment, cue: Mention, drafts: list[Draft]) -> list[Draft]:
    """Another cue or a word of the present ends the scope within the segment."""
    barrier = [m.start for m in segment.mentions if m.start >= cue.end and m.get("times") == "today"]
    subjects = talk.plays("subject", max(cue.end + 1, drafts[0].end), segment.end) if drafts else []
    feet = [m.start for m in segment.mentions if m.get("feet") and drafts and m.start >= drafts[0].end]
    bare = [at for at in feet if talk.words[at - 1] not in ("in", "on", "of", "the", "either", "both", "or")]
    limit = min([*barrier, *subjects, *bare], default=segment.end)
    kept = [d for d in drafts if d.start < limit]
    return kept or drafts[:1] if not barrier else kept


def _continues_list(talk: Talk, sentence: list[Segment], number: int) -> bool:
    """Whether the segment is a further item of a denied or doubted list: "heat, swelling or pus"."""
    later = sentence[number]
    if later.having("denials") or later.having("severities") or not later.drafts or later.own_clause:
        return False
    if later.drafts[0].slot not in ("finding", "pulse", "tester"):
        return False
    lead = talk.words[later.start : later.drafts[0].start]
    if set(lead) - {"or", "nor", "any", "even", "for", "of"}:
        return False
    if "or" in lead or "nor" in lead or later.joined_by("or", "nor"):
        return True
    if later.joined_by("and"):
        return all(m.start == later.drafts[0].start for m in later.having("zones"))  # not "… and bruise at the toe"
    for at in range(number, len(sentence)):
        following = sentence[at]
        if at > number and following.joined_by("but", ", but") and following.drafts:
            return bare_item(sentence, at - 1) and bare_item(sentence, at - 2)  # "no corn, heat, thrush, but a bruise"
        words = talk.words[following.start : following.end]
        if tuple(words[1:3]) in _SUCH:
            return True
        if following.own_clause or not following.delimiter.startswith((",", "and")):
            return False
        if "or" in words or "nor" in words or words in _CLOSING:
            return True
        if following.joined_by("and", ", and"):  # "no corn, thrush and heat in the left hind"
            told = following.drafts[:1]
            closed = bool(told) and told[0].slot == "finding" and told[0].start == following.start
            closed = closed and at > number and all(bare_item(sentence, i) for i in range(number - 1, at))
            return closed and not following.having("severities")
    return False


def bare_item(sentence: list[Segment], at: int) -> bool:
    """Whether a finding ends the segment, and opens it where it is no first one: no article and no place with it."""
    segment = sentence[at]
    told = segment.drafts[-1:] if at >= 0 and not segment.having("severities") else []
    if not told or told[0].slot != "finding" or told[0].end != segment.end:
        return False
    return len(segment.drafts) == 1 and (bool(segment.having("denials")) or told[0].start == segment.start)


def denied_item(talk: Talk, sentence: list[Segment], at: int) -> bool:
    """Whether the segment is an item of a denied list: it opens with the denial, or goes on with the list of one."""
    segment = sentence[at]
    if not segment.drafts:
        return False
    first = segment.drafts[0].start
    if any(m.end <= first and not m.is_any(("denials",)) for m in segment.having("feet")):
        return False
    if any(m.start < first for m in segment.having("denials", "before")) or talk.words[segment.start] in _OPENING:
        return True
    return at > 0 and _continues_list(talk, sentence, at) and denied_item(talk, sentence, at - 1)


def drafts_after(segment: Segment, cue: Mention) -> list[Draft]:
    return [d for d in segment.drafts if d.start >= cue.end]


def last_doubtable(segments: list[Segment]) -> list[Draft]:
    """The last thing said that can be doubted, with what was joined to it by a bare "and"."""
    for segment in reversed(segments):
        drafts = [d for d in segment.drafts if d.slot in DOUBTABLE and not d.dropped]
        if drafts:
            return [d for d in drafts if d.start == drafts[-1].start]
    return []


def put_in_between(talk: Talk, segment: Segment) -> bool:
    """ "He foundered, the owner says, the autumn before last": who told it, between commas."""
    words = talk.words[segment.start : segment.end]
    told = words[-1] in _SAYING or tuple(words[-2:]) in _TELLING_ME
    return told and not segment.drafts and len(words) <= _WHO_SAYS and segment.joined_by(",")


def turns_to_today(talk: Talk, segment: Segment) -> bool:
    """ "… and just a trim this time", "… reset for now": a segment that tells of today by its own words."""
    today = [m.start for m in segment.having("times", "today") if talk.words[m.start] in _TODAY]
    apart = not segment.having("plans", "condition") and not segment.having("plans", "before")
    return apart and any(talk.words[at - 1] not in _NOT_TODAY for at in today)


def to_come(segment: Segment) -> bool:
    """ "Last time studs, and next time side clips": a segment of what is to come."""
    return not segment.past and bool(segment.having("plans", "before"))


def _shod_meanwhile(talk: Talk, cue: Mention, segment: Segment) -> bool:
    """ "Asked the lad to hold her, and put bar shoes on": who holds a horse shoes none; boots may be theirs."""
    near = segment.start - cue.end <= _HANDLED
    shod = near and all(d.slot in _SHOD and d.value != "boot" for d in segment.drafts)
    return shod and talk.words[segment.start] in _PUT_ON and not _HANDLING.isdisjoint(talk.words[cue.end : cue.end + 1])


def bids_no_more(talk: Talk, cue: Mention, segment: Segment) -> bool:
    """ "Told them to box her and soak it" bids both; not so "… and I trimmed", "… and soaked the off fore"."""
    first = talk.words[segment.start]
    alone = segment.end - segment.start == 1  # "keep it wrapped and soaked"
    done = not alone and (first.endswith("ed") or first in _DID_IT or _shod_meanwhile(talk, cue, segment))
    goes_on = segment.joined_by("and", ", and", "or") and first not in ("i", "we") and not done
    return not goes_on and not _BIDDING.isdisjoint(talk.words[cue.start : cue.end])
