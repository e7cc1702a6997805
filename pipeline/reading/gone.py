"""What is gone: findings of before that are said to have healed, grown out or cleared up, foot by foot."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from pipeline.reading.denials import deny_one
from pipeline.reading.foot_groups import SETUP_SLOTS, Groups, one_of_several
from pipeline.reading.found_not_so import only_told
from pipeline.reading.mentions import Mention
from pipeline.reading.moved_numbers import AS_IT_WAS
from pipeline.reading.name_words import HORSE_NOUNS
from pipeline.reading.questions import SOUGHT
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import drafts_after
from pipeline.reading.talk import Draft, Feet, Segment, Sentence, Talk
from pipeline.record import Status

_OWNED = frozenset({"the", "his", "her", "that"})
_BY_NOW = frozenset({"now", "today", "anymore", "more", "longer"})
_NOT_ANY = frozenset({"not", "n't", "none", "no", "nothing", "never", "nil", "neither"})
_ONCE = (["there", "was"], ["he", "did"], ["she", "did"], ["it", "did"], ["he", "had"], ["she", "had"], ["it", "had"])
_CLOSED = ([","], ["but"], ["."], ["before"], ["and"])
_BECOME = frozenset(
    {"a", "bit", "very", "quite", "rather", "slightly", "really", "dead", "right", "all", "touch", "so"}
)
_WORSE = frozenset({
    "short", "sore", "tender", "lame", "soft", "hard", "crumbly", "brittle", "wrong", "rotten", "black", "flat", "long",
    "wide", "crooked", "stiff", "backwards", "downhill", "septic", "bad", "worse", "footy", "ouchy", "shelly", "boxy",
    "upright", "dry", "spongy", "smelly",
})  # fmt: skip
_STAYING = frozenset({"away", "still"})
_LOST = frozenset({"lost"})
_THAT = (["that"], ["the"], ["its"], ["his"], ["her"], ["all", "that"])
_IS = (["'s"], ["is"], ["are"], ["'re"], ["has"])
_IN_IT = (["in"], ["on"], ["of"])
_PUT = (["in"], ["into"], ["on"], ["onto"], ["over"], ["under"], ["underneath"], ["round"], ["around"], ["back"])
_PUT_THERE = SETUP_SLOTS | {"treatment"}
_NOT_NOW = frozenset({
    "he", "she", "is", "'s", "does", "any", "though", "there", "of", "it", "that", "sign", "signs", "doing", "do",
    "and", "at", "all",
}) | _BY_NOW | _NOT_ANY  # fmt: skip
_STOPPED_BESIDE = frozenset({"now", "he", "she", "has", "'s", "it", "that", "since", "though", "today"})
_KNOWN = frozenset({"the", "that"})  # "the abscess in the near fore, fine now"
_WELL = frozenset({"grand", "fine", "good", "great", "perfect", "lovely", "cold", "cool", "dry"})
_TODAY = (["now"], ["today"])
_NOW, _COLD = frozenset({"now", "today", "again"}), frozenset({"cold", "cool"})
_WET = frozenset({"thrush", "abscess", "canker", "scratches"})
_WAS = Sayings(
    *(f"{who} {was}" for who in ("he", "she", "it", "they") for was in ("was", "were", "had", "did")),
    "there was", "there were",
)  # fmt: skip
_ONE_THERE = Sayings(
    "was one", "had one", "'d one", "was another", "had another", "was some", "had some", "were one", "were another",
    "were some", "been one", "been some",
)  # fmt: skip
_WHEN = frozenset({"in", "last", "at", "back", "before", "on", "a", "when", "two", "three", "until", "till", "the"})
_BARELY = 6  # tokens of "he was in the spring", "there was last time I came"
_NOR_DO = (["does"], ["do"], ["did"], ["can"], ["could"], ["would"], ["has"], ["is"])
_HEALING = frozenset({"healed", "grown", "grew", "dried", "closed"})

_SETTLING = frozenset(
    {"settled", "has", "have", "had", "'s", "'d", "'ve", "soon", "then", "is", "fully", "just", "all"}
)
_HORSE = HORSE_NOUNS | {"he", "she", "they", "horse", "lad", "girl"}


def resolve_gone(talk: Talk, sentence: Sentence, earlier: list[Sentence], groups: Groups) -> None:
    """Findings that are said to be gone, on the feet they are gone from; ``earlier`` are the two sentences before."""
    _lost_finding(talk, sentence)
    cued = "resolutions" in sentence.classes
    if not cued and sentence.lacks(_STAYING):
        return
    previous = next((s for s in reversed(earlier) if any(p.drafts for p in s)), Sentence())
    for position, segment in enumerate(sentence):
        for draft in [d for d in segment.drafts if _is_away(talk, d)]:
            _resolve_one(talk, draft, Mention(draft.end, segment.end, tuple(range(draft.end, draft.end + 2)), {}))
        for cue in segment.having("resolutions", "before") if cued else ():
            if not _NOT_ANY.isdisjoint(talk.words[max(segment.start, cue.start - 2) : cue.start]):
                continue  # "he hasn't stopped forging"
            alone = _stopped(talk, segment, cue)
            for draft in _gone(talk, sentence, position, cue, []) if alone else drafts_after(segment, cue)[:1]:
                _resolve_one(talk, draft, cue)
        for cue in segment.having("resolutions", "after") if cued else ():
            if (
                _piece_gone(talk, cue)
                or _gone_in(talk, segment, cue)
                or _horse_settled(talk, segment, cue)
                or any(cue.start in d.evidence for d in segment.drafts if d.slot == "shoe_state")
            ):
                continue
            for draft in _gone(talk, sentence, position, cue, previous):
                if _gone_then(segment, cue, draft) and sentence.lacks(_STAYING):
                    continue
                named = _naming(talk, sentence, position, groups)
                feet = _named(groups, named)
                draft = _on_that_foot(draft, [*previous, *sentence[:position]], feet)
                if _of_another_kind(talk, cue, draft) or _not_well(talk, segment, cue):
                    continue
                if _never_there(talk, cue, draft, feet) or _gone_elsewhere(talk, segment, named, cue, draft, feet):
                    continue
                if _well_by_now(talk, cue) and not (_of_before(draft) or talk.words[draft.start - 1] in _KNOWN):
                    continue
                _resolve_one(talk, one_of_several(draft, _named_by_now(sentence, position, draft, groups)), cue)
        if not segment.drafts and position and "still" in talk.words[segment.start : segment.end]:
            _still_on(talk, sentence, position, _named(groups, segment))


def _lost_finding(talk: Talk, sentence: Sentence) -> None:
    """ "He's lost that flare on the near fore", "the frog's lost its thrush": no shoe is lost."""
    for lost, draft in pairwise([d for s in sentence for d in s.kept] if sentence.says(_LOST) else []):
        if lost.value == "lost" and draft.slot == "finding" and talk.words[lost.end : draft.start] in _THAT:
            lost.drop("a finding is lost")
            _resolve_one(talk, draft, Mention(lost.start, lost.end, (lost.start,), {}))


def _horse_settled(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "She settled down", "the mare has settled completely": it is the horse that did, no finding."""
    at = cue.end - 1
    while at > cue.start and talk.words[at] != "settled":
        at -= 1
    while at > segment.start and (talk.words[at] in _SETTLING or talk.words[at].endswith("ly")):
        at -= 1
    named = any(m.start <= at < m.end for m in segment.having("horse"))
    return "settled" in talk.words[cue.start : cue.end] and (named or talk.words[at] in _HORSE)


def _gone_then(segment: Segment, cue: Mention, draft: Draft) -> bool:
    """ "Thrush in the near fore again, it was gone last time": what was gone then is told of today."""
    then = any(m.start >= cue.end for m in segment.having("times", "history")) and segment.past
    return then and not segment.present and draft.segment is not segment and draft.status is Status.PRESENT


def _stopped(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "Used to forge, not now, stopped", "… quit now": with nothing behind it but the time."""
    stopped = talk.words[cue.start : cue.end] in (["stopped"], ["quit"])
    rest = talk.words_beside(segment, range(cue.start, cue.end))
    return stopped and rest <= _STOPPED_BESIDE


def _is_away(talk: Talk, draft: Draft) -> bool:
    """ "The canker's away", "the corn in the off fore is away"; not "the owner's away, corn in the off fore"."""
    at = draft.end
    foot = next((m for m in draft.segment.having("feet") if 0 <= m.start - at <= 2), None)
    at = foot.end if foot is not None and talk.words[at : at + 1] in _IN_IT else at
    there = talk.words[at : at + 1] in _IS and talk.words[at + 1 : at + 2] == ["away"]
    return draft.slot == "finding" and there and at + 1 < draft.segment.end


def _naming(talk: Talk, sentence: list[Segment], position: int, groups: Groups) -> Segment:
    """The segment that names the foot: its own, or the one before it with nothing but the foot's subject."""
    segment, before = sentence[position], sentence[position - 1]
    joined = segment.joined_by("and", ",", "but", ", but") or (segment.joined_by(", and") and _one_there(talk, before))
    return segment if groups.get(segment.index) or before.drafts or not (position and joined) else before


def _one_there(talk: Talk, segment: Segment) -> bool:
    """ "There was one in the off fore": of what was told of another foot."""
    return _ONE_THERE.said_in(talk.words[segment.start : segment.end])


def _gone_elsewhere(
    talk: Talk, segment: Segment, named: Segment, cue: Mention, draft: Draft, feet: Feet | None
) -> bool:
    """ "Thrush in the left hind, gone in the right hind", "…, the right hind's dried up": still there on the one foot.

    So in "… and the off fore used to and doesn't now", where the foot is the subject of what is gone, and in "… and
    there was one in the off fore, and that's cleared up".
    """
    led = talk.words[cue.end : cue.end + 1] in (["in"], ["from"], ["on"])
    apart = feet is not None and bool(draft.feet) and not set(feet) & set(draft.feet or ())
    there = draft.slot == "finding" and draft.status is Status.PRESENT and not draft.foot_carried
    subject = any(m.end <= cue.start and m.start - named.start <= 1 for m in named.having("feet"))
    subject = subject and all(d.value == draft.value for d in named.drafts)  # nothing else is told of the foot
    subject = subject or _one_there(talk, named)
    if not ((led and there) or subject) or not apart or feet is None or draft.segment in (segment, named):
        return False
    _gone_from(segment, cue, draft, feet)
    return True


def _gone_from(segment: Segment, cue: Mention, draft: Draft, feet: Feet) -> None:
    """The finding once more, gone, on the feet that are rid of it."""
    gone = replace(draft, feet=feet, segment=segment, start=cue.start, end=cue.end, zone=None, severity=None)
    gone.status, gone.rules, gone.evidence = Status.RESOLVED, [*draft.rules, "gone"], {*draft.evidence, *cue.literal}
    segment.draft(gone)


def _well_by_now(talk: Talk, cue: Mention) -> bool:
    """ "Her heels were sheared, they're grand now": well again is only what was told of before."""
    return talk.words[cue.start] in _WELL and talk.words[cue.end - 1] in _NOW


def _not_well(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "It's not clear today", "wasn't dry now": no word of its having gone."""
    denied = not _NOT_ANY.isdisjoint(talk.words[max(segment.start, cue.start - 2) : cue.start])
    return denied and talk.words[cue.start] in _WELL | {"clean", "clear"}


def _of_another_kind(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "Cold now" is only what was hot, "dry now" what was wet."""
    word = talk.words[cue.start]
    if word == "dry":
        return draft.value not in _WET
    return word in _COLD and draft.value != "heat"


def _on_that_foot(draft: Draft, told: list[Segment], feet: Feet | None) -> Draft:
    """ "Crack in the near fore, corn in the off fore, the near fore's grown out": what was told of the foot named."""
    if feet is None or draft.slot != "finding" or not draft.feet or set(feet) & set(draft.feet):
        return draft
    there = [d for s in told for d in s.drafts if d.slot == "finding" and d.feet and set(feet) <= set(d.feet)]
    return there[-1] if there else draft


def _never_there(talk: Talk, cue: Mention, draft: Draft, feet: Feet | None) -> bool:
    """ "Thrush in the near hind, not a trace of it in the other three": denied there, where nobody said it had been."""
    denied = talk.words[cue.start] in _NOT_ANY and talk.words[cue.start : cue.end][-2:] == ["of", "it"]
    if denied and only_told(talk, draft) and talk.words[cue.end : cue.end + 1] not in _TODAY:
        deny_one(draft, cue)  # "everyone was saying founder. There's no sign of it."
        return True
    return denied and feet is not None and bool(draft.feet) and not set(feet) & set(draft.feet or ())


def _named(groups: Groups, segment: Segment) -> Feet | None:
    named = [g.feet for g in groups.get(segment.index, []) if not g.anaphor]
    return named[-1] if named else None


def _named_by_now(sentence: list[Segment], position: int, draft: Draft, groups: Groups) -> Feet | None:
    """The foot named in the segment ("the thrush behind is gone in the left"), else the last since the finding."""
    for segment in reversed(sentence[: position + 1]):
        if segment is draft.segment or _named(groups, segment) is not None:
            return _named(groups, segment)
    return None


def _still_on(talk: Talk, sentence: list[Segment], position: int, feet: Feet | None) -> None:
    """ "The left's gone, right hind's still got it": what stays on one foot of two."""
    words = talk.words[sentence[position].start : sentence[position].end]
    there = "there" in words or (bool({"got", "has", "have"} & set(words)) and bool({"it", "some"} & set(words)))
    findings = [d for s in sentence[:position] for d in s.drafts if d.slot == "finding"]
    if feet is None or not there or not findings:
        return
    part = one_of_several(findings[-1], feet)
    if part.feet == feet and part.status is not Status.ABSENT:
        part.status = Status.PRESENT
        part.note("still there")


def _piece_gone(talk: Talk, cue: Mention) -> bool:
    """ "A chunk of hoof gone", "a nail gone in at the sole" tell of a loss, "gone by next week" of a hope."""
    before = set(talk.words[max(0, cue.start - 4) : cue.start])
    piece = bool(before & {"chunk", "piece", "lump", "hunk", "slab"})
    driven = talk.words[cue.end : cue.end + 1] in (["in"], ["into"], ["through"], ["up"])
    piece = piece or (driven and bool(before & {"nail", "screw", "wire", "thorn", "glass", "flint", "stone", "tack"}))
    return piece or talk.words[cue.end : cue.end + 1] == ["by"] or bool(before & {"hoping", "hope", "hoped"})


def _gone_in(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "Copper sulphate has gone into it", "a full pad's gone on", "gone from a three to a two": nothing is gone."""
    if talk.words[cue.end - 1] == "gone" and any(AS_IT_WAS in d.rules and d.start > cue.end for d in segment.drafts):
        return True
    counted = talk.mention_starting(cue.end)
    if talk.words[cue.end - 1] == "gone" and counted is not None and counted.number is not None:
        unit = talk.mention_starting(counted.end)
        if unit is not None and unit.get("units") is not None:
            return True  # "he's gone nine weeks"
    graded = any(m.start == cue.end for m in segment.having("severities"))  # "it's just gone mild on me"
    if talk.words[cue.end - 1] == "gone" and (graded or talk.words[cue.end : cue.end + 1] == ["into"]):
        return True  # "it's gone into the wall there"
    if talk.words[cue.end - 1] == "gone" and _become_worse(talk, cue.end):
        return True
    if talk.words[cue.end - 1] != "gone" or talk.words[cue.end : cue.end + 1] not in _PUT:
        return False
    before = [d for d in segment.drafts if d.end <= cue.start and not d.dropped]
    return bool(before) and all(d.slot in _PUT_THERE for d in before)


def _become_worse(talk: Talk, at: int) -> bool:
    """ "The off fore has gone short", "gone a bit tender": what it has become, nothing that is gone."""
    while at < len(talk.words) and talk.words[at] in _BECOME:
        at += 1
    return talk.words[at : at + 1] != [] and talk.words[at] in _WORSE


def _mended(talk: Talk, cue: Mention, sentence: list[Segment], position: int) -> bool:
    """ "An abscess, three out of five lame on it, and that's healed": a wound heals, a gait does not."""
    heals = bool(_HEALING & set(talk.words[cue.start : cue.end]))
    return heals and any(d.slot == "finding" for s in sentence[:position] for d in s.drafts)


def _gone(talk: Talk, sentence: list[Segment], position: int, cue: Mention, previous: list[Segment]) -> list[Draft]:
    segment = sentence[position]
    own = [d for d in segment.drafts if d.slot == "finding" and d.end <= cue.start]
    if not own and cue.end == segment.end and talk.words[segment.start] in _OWNED:
        own = [d for d in segment.drafts if d.slot == "gait"]  # "the forging she did back in winter is gone"
    if own:
        found = own[-1:]
        if segment.joined_by("and") and position and not sentence[position - 1].own_clause:
            found += [d for d in sentence[position - 1].drafts if d.slot == "finding"]
        return found
    if talk.words[cue.end - 1] == "finished":
        return []  # "thrush in the near hind, and the hinds are finished"
    kinds = ("finding",) if _mended(talk, cue, sentence, position) else ("finding", "gait")
    for earlier in reversed(sentence[:position]):
        findings = [d for d in earlier.drafts if d.slot in kinds]
        if findings:
            return findings[-1:]
        passed = ("finding", "treatment") if len(kinds) > 1 else ("finding", "treatment", "lameness", "gait")
        if [d for d in earlier.drafts if d.slot not in (*passed, "obel")]:
            break
    ahead = [d for d in segment.drafts if d.slot in ("finding", "gait") and d.start >= cue.end]
    if ahead and talk.words[cue.end - 1] == "gone" and set(talk.words[cue.end : ahead[0].start]) <= _BECOME:
        return []  # "gone lame", "gone a bit short"
    if ahead:
        return [] if segment.drafts[0] is not ahead[0] else ahead[:1]
    if all(d.slot == "obel" for s in sentence[: position + 1] for d in s.drafts):  # "…, Obel two it was, that's gone"
        findings = [d for s in previous for d in s.drafts if d.slot == "finding" and d.status is not Status.ABSENT]
        return findings[-1:]
    return []


def _resolve_one(talk: Talk, draft: Draft, cue: Mention) -> None:
    plainly = "resolved" in talk.words[cue.start : cue.end]  # "no flare anymore, that's resolved"
    plainly = plainly or _was_there(talk, draft, cue) or _gone_as_well(talk, draft, cue)
    if draft.slot in ("finding", "gait") and ("denied" not in draft.rules or plainly):
        draft.status = Status.RESOLVED
        draft.dropped = draft.dropped and SOUGHT not in draft.rules
        draft.note("gone")
        draft.evidence.update(cue.literal)


def _was_there(talk: Talk, draft: Draft, cue: Mention) -> bool:
    """ "There's none in the left front, there was, but it's cleared up": denied, and yet there once."""
    between = talk.words[draft.start : cue.start]
    return any(between[i : i + 2] in _ONCE and between[i + 2 : i + 3] in _CLOSED for i in range(len(between) - 2))


def _gone_as_well(talk: Talk, draft: Draft, cue: Mention) -> bool:
    """ "I'm not seeing any on the right hind now, that's gone too": there once, as on the foot before."""
    also = talk.words[cue.end : cue.end + 1] == ["too"] or talk.words[cue.end : cue.end + 2] == ["as", "well"]
    return also and "gone" in talk.words[cue.start : cue.end] and "none in the other foot" in draft.rules


def no_longer(talk: Talk, sentence: Sentence, before: Sentence, groups: Groups) -> None:
    """ "Had thrush last time, there's none now", "used to forge, not now", "… they're not sheared now": gone.

    ``before`` is the sentence before, of which that is said as well: "Thrush in both hinds last time. None now."
    """
    for position, segment in enumerate(() if sentence.lacks(_BY_NOW) or sentence.lacks(_NOT_ANY) else sentence):
        _was_before(talk, sentence, position)
        near = sentence[:position] or [s for s in before if s.horse == segment.horse]
        told = [s for s in near if s.drafts]
        words = set(talk.words[segment.start : segment.end] if told else ())
        if not words & _BY_NOW or not words & _NOT_ANY or segment.having("doubts") or _nor_others(talk, segment):
            continue
        named = _named(groups, segment)
        for draft in told[-1].drafts:
            again = [d for d in segment.drafts if (d.slot, d.value, d.feet) == (draft.slot, draft.value, draft.feet)]
            same = len(again) == len(segment.drafts) and (named is None or named == draft.feet)
            never = "never" in talk.words[draft.segment.start : draft.start]
            gait = draft.slot == "gait" and draft.status is Status.HISTORY
            barely = gait and (words <= _NOT_NOW or bool(again))  # "used to forge, and he's not forging now"
            if not (draft.slot == "finding" or barely) or not same or never or not _of_before(draft):
                continue
            draft.status, draft.dropped = Status.RESOLVED, False
            draft.note("not there now")
            for denial in again:
                denial.drop("it is gone")


def _was_before(talk: Talk, sentence: list[Segment], position: int) -> None:
    """ "Not short in his stride now, he was in May", "no heat in it today, there was last time": gone."""
    segment, behind = sentence[position], sentence[position + 1] if position + 1 < len(sentence) else None
    if behind is None or behind.drafts or behind.having("feet") or behind.end - behind.start > _BARELY:
        return
    was = _WAS.at(talk.words, behind.start) and not _WHEN.isdisjoint(talk.words[behind.start + 2 : behind.start + 3])
    timed = any(m.get("times") == "history" for m in behind.mentions)
    for draft in [d for d in segment.drafts if was and d.status is Status.ABSENT]:
        if not timed and "there before as well" not in draft.rules:
            continue
        if draft.slot in ("finding", "gait"):
            draft.status = Status.RESOLVED
            draft.note("not there now")


def _nor_others(talk: Talk, segment: Segment) -> bool:
    """ "I don't see it, and no more does the vet": another who says so, no earlier time."""
    return talk.words[segment.start : segment.start + 2] == ["no", "more"] and (
        talk.words[segment.start + 2 : segment.start + 3] in _NOR_DO
    )


def _of_before(draft: Draft) -> bool:
    """Whether a finding was told of an earlier time, or only in the past."""
    past = draft.segment.past and draft.status in (Status.ABSENT, Status.PRESENT)
    return draft.status is Status.HISTORY or past or "denied of an earlier time" in draft.rules
