"""The vet: whether he is to look, need not look, or is only spoken of.

The plain forms ("call the vet", "vet should see") stand in the vocabulary. Here is the grammar around the word itself:
who is to be asked, what the vet has to do, and what says that nobody needs him; also as a heading that is answered
behind it ("Vet: not needed").
"""

from __future__ import annotations

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

VETS = frozenset({"vet", "vets", "veterinarian", "veterinary"})
OWNERS = frozenset({"the", "a", "an", "their", "her", "his", "your", "my", "our", "that", "any"})
_ASKING = frozenset({
    "call", "calls", "calling", "called", "ring", "rings", "ringing", "phone", "phones", "phoning", "get", "gets",
    "getting", "have", "has", "having", "want", "wants", "need", "needs", "needing", "like", "ask", "asking", "fetch",
    "show", "recommend", "recommended", "recommending", "suggest", "suggested", "advise", "advised", "say", "involve",
    "book", "booking",
})  # fmt: skip
_RINGING = frozenset({"call", "ring", "phone", "calling", "ringing", "phoning"})
_BRINGING = frozenset({"get", "have", "fetch", "find", "book", "getting", "having"})
_HERE = (["out"], ["in"], ["to"], ["over"], ["back"])
_HIM = frozenset({"him", "her", "them"})
_DOES = frozenset({"does", "do", "did", "is", "has", "can", "could", "would", "will"})
_OWNED = frozenset({"got", "have", "has", "had", "'ve"})
_HAS = (["has"], ["'s"], ["had"], ["have"])
_SEEN = frozenset({"seen", "been", "looked", "had", "come", "touched", "checked", "near"})
_ASKED_FOR = (
    ["call", "in", "to"], ["word", "in", "to"], ["message", "to"], ["asked", "for"], ["asking", "for"], ["sent", "for"],
    ["send", "for"], ["leave", "it", "to"],
)  # fmt: skip
_IT_IS = (
    ["it", "'s"], ["it", "is"], ["that", "'s"], ["then"], ["be"], ["told", "them"], ["told", "her"], ["told", "him"],
)  # fmt: skip
_UNTIL = frozenset({"till", "til", "until", "before"})
_MODALS = frozenset(
    {
        "should", "needs", "need", "must", "ought", "to", "na", "will", "'ll", "can", "could", "coming", "has", "wants",
        "got",
    }
)  # fmt: skip
_BOUND = frozenset({"should", "must", "better", "'ll", "will", "shall"})
_BOUND_TO = tuple(
    [word, "to"] for word in ("has", "have", "got", "ought", "needs", "need", "'s", "is", "going", "wants")
)
_LOOKING = frozenset({
    "see", "look", "come", "check", "film", "x", "xray", "ray", "take", "recheck", "re", "scan", "block", "have",
    "examine", "shoot", "assess", "decide", "image", "ultrasound", "go", "coming", "calling", "ringing", "phoning",
    "visit", "review", "watch", "fly", "drive",
})  # fmt: skip
_ASKED = frozenset(
    {"called", "rung", "phoned", "told", "asked", "there", "involved", "here", "in", "out", "seeing", "looking", "back"}
)
_NOT = frozenset(
    {"no", "not", "n't", "never", "nothing", "nowt", "hardly", "nae", "neither", "nor", "needn't", "without"}
)
_DONE_WITHOUT = (["skip"], ["hold", "off", "on"], ["hold", "off"], ["do", "without"], ["leave"], ["forget"], ["spare"])
_CONDITIONS = frozenset({"if", "unless", "until", "till", "should", "when", "once", "case"})
_PSEUDO = frozenset({
    "better", "easier", "worse", "longer", "right", "improved", "improving", "sounder", "happier", "change",
    "different", "draining", "settled", "gone", "doubt", "question", "later", "only", "just", "wait", "waiting",
    "harm",
})  # fmt: skip
_NEEDLESS = frozenset({"need", "needed", "needs", "required", "necessary", "warranted", "wanted", "bother", "called"})
_REFUSALS = (
    ["i", "said", "no"], ["no", "need"], ["told", "her", "no"], ["told", "him", "no"], ["told", "them", "no"],
    ["i", "said", "not"],
)  # fmt: skip
_FOR_HIM = frozenset({"for", "it", "that", "him", "her", "them", "one", "now", "at", "all", "today"})
_THERE_IS = _NOT | {
    "there", "'s", "is", "was", "it", "he", "she", "we", "i", "they", "do", "does", "did", "wo", "would", "said",
    "told", "them", "her", "him",
}  # fmt: skip
_HIS = frozenset({
    "plates", "films", "x", "xrays", "pictures", "rays", "word", "report", "orders", "radiographs", "request", "shots",
    "images", "truck", "bill", "say", "opinion", "advice", "note", "notion", "idea", "view", "thinking", "theory",
    "guess", "diagnosis", "suspicion", "verdict", "reckoning", "instructions",
})  # fmt: skip
_PEOPLE = frozenset({"sahib", "man", "woman", "lady", "lad", "fella", "girl", "chap", "herself", "himself"})
_WHEN = frozenset(
    {"today", "tonight", "tomorrow", "now", "soon", "asap", "straight", "immediately", "urgent", "urgently", "please"}
    | {"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "morning", "afternoon", "evening"}
    | {"week", "weekend", "first", "sooner"}
)
_BIDDING = frozenset(
    {"not", "no", "later", "than", "i", "'ve", "told", "them", "her", "him", "twice", "said", "so", "owner", "owners"}
    | {",", "and", "in", "on", "at", "by", "this", "the", "away", "thing", "before", "out", "quick", "again", "for"}
    | {"that", "as", "possible", "it", "rather", "must", "be", "has", "to", "they", "know", "'re", "calling"}
)
_BRINGS = frozenset({"to", "for", "the", "a", "get", "take", "send", "should", "must", "go", "needs", "and", "so"})
_AHEAD = frozenset({"the", "and", "so", "a", ",", "right", "ok", "okay", "now"})
_I_AM = (["i", "'m"], ["i", "am"], ["i", "ai"])
_DEGREES = frozenset({"just", "only", "qualified", "trained"})
_REACH = 8
NOT_NEEDED = "vet: not needed"
_BEHIND = 4
_NOT_HIM = _NOT | {"i", "we", "they", "owner", "trainer", "dentist", "physio"}
_SHOEING = ("shoe_types", "shoe_materials", "pads", "packings", "clips", "work", "traction", "wedge", "treatments")


def draft_vet(talk: Talk) -> None:
    """Add what is said of the vet beyond the vocabulary's forms, and deny what is denied of him."""
    for sentence in talk.sentences() if talk.says(VETS) else ():
        for position, segment in enumerate(sentence):
            for at in range(segment.start, segment.end):
                if talk.words[at] in VETS and not _of_the_vet(talk, at) and not _no_vet_myself(talk, segment, at):
                    if not _agrees(talk, segment, at):
                        _read(talk, sentence, position, at)
                elif (talk.words[at] == "one" and _rung_for(talk, segment, at)) or (
                    talk.words[at] in _HIM and _to_ring_him(talk, sentence, segment, at)
                ):
                    _call_one(talk, segment, at)


def _rung_for(talk: Talk, segment: Segment, at: int) -> bool:
    """ "No vet has seen it. I told her to ring one": a vet, where one was spoken of just before."""
    if talk.words[at] != "one":
        return False
    calling = talk.words[at - 1] if at > segment.start else ""
    coming = talk.words[at + 1 : at + 2] in _HERE
    if calling not in _RINGING and not (calling in _BRINGING and coming):
        return False
    begin = talk.sentence(max(0, segment.sentence - 1))[0].start
    there = [s for s in talk.segments if begin <= s.start <= segment.start and s.horse == segment.horse]
    return any(not VETS.isdisjoint(talk.words[s.start : min(s.end, at)]) for s in there)


def _to_ring_him(talk: Talk, sentence: list[Segment], segment: Segment, at: int) -> bool:
    """ "The vet's the man for that, so they're to ring him": others are told to, in the sentence that names him."""
    begin = max(sentence[0].start, segment.start - _REACH * 2)
    told = talk.words[at - 1] in _RINGING and talk.words[at - 2] in ("to", "should", "must")
    if not told or at - 2 < segment.start or {"i", "i'm"} & set(talk.words[at - 4 : at - 2]):
        return False
    asked = any(d.slot == "vet" and d.status is not Status.ABSENT for s in sentence for d in s.drafts)
    return not asked and not VETS.isdisjoint(talk.words[begin : segment.start])


def _agrees(talk: Talk, segment: Segment, at: int) -> bool:
    """ "I don't see it, and no more does the vet", "… nor does the vet": what he thinks, not whether he is needed."""
    before = _before(talk, segment, at)
    led = before[-2:-1] in (["nor"], ["neither"], ["so"]) or before[-3:-1] == ["no", "more"]
    if not led and len(before) == 1:
        led = talk.words[segment.start - 1] in ("nor", "neither", "so")
    return led and before[-1] in _DOES and at + 1 == segment.end


def _call_one(talk: Talk, segment: Segment, at: int) -> None:
    draft = referral(segment, at)
    draft.note("vet: to look")
    if _denied(talk.words[segment.start : at]):
        draft.status = Status.ABSENT
        draft.note("denied")


def _of_the_vet(talk: Talk, at: int) -> bool:
    """ "Going by the vet's plates": something of his."""
    return talk.words[at + 1 : at + 2] == ["'s"] and bool(_HIS & set(talk.words[at + 2 : at + 3]))


def _no_vet_myself(talk: Talk, segment: Segment, at: int) -> bool:
    """ "I'm no vet", "I'm not the vet": who is speaking, not whether the vet is needed."""
    words = [w for w in talk.words[max(0, at - 5) : at] if w not in OWNERS and w not in _NOT | _DEGREES]
    denied = not _NOT.isdisjoint(talk.words[max(0, at - 4) : at])
    if not denied or words[-2:] not in _I_AM:
        return False
    for draft in [d for d in segment.drafts if d.slot == "vet" and d.start <= at < d.end]:
        draft.drop("no vet himself")
    return True


def _read(talk: Talk, sentence: list[Segment], position: int, at: int) -> None:
    segment = sentence[position]
    draft = next((d for d in segment.drafts if d.slot == "vet" and d.start <= at < d.end), None)
    before = _before(talk, segment, at)
    if before[-1:] in (["telling"], ["told"]) and draft is None:
        return  # "don't know who's been telling the vet she's got it"
    if _needless(talk, segment, before, at) or _refused(talk, sentence, position):
        draft = draft or referral(segment, at)
        draft.status = Status.ABSENT
        draft.note("denied")
        draft.note(NOT_NEEDED)
        return
    if draft is not None:
        if _wants_shoes(talk, segment, at):
            draft.drop("what the vet asked for")
        return
    called = _alone(talk, sentence, position) or _bidden(talk, sentence, at) or _for_him(talk, segment, at)
    if called or _wanted(before) or _to_look(talk, segment, at) or _coming_to_look(talk, sentence, at):
        referral(segment, at).note("vet: to look")


def referral(segment: Segment, at: int) -> Draft:
    """A referral to the vet, said at the token ``at``."""
    draft = Draft("vet", "referral", segment, at, at + 1)
    draft.evidence.add(at)
    segment.draft(draft)
    return draft


def _before(talk: Talk, segment: Segment, at: int) -> list[str]:
    """The words of the segment before the vet, without "the" or "their"."""
    end = at
    while end > segment.start and talk.words[end - 1] in OWNERS:
        end -= 1
    return talk.words[max(segment.start, end - _REACH) : end]


def _after(talk: Talk, segment: Segment, at: int) -> list[str]:
    return talk.words[at + 1 : min(segment.end, at + 1 + _BEHIND + 2)]


def _needless(talk: Talk, segment: Segment, before: list[str], at: int) -> bool:
    """ "No call for the vet", "I wouldn't trouble the vet", "the vet needn't come", "skip the vet"."""
    if before[-2:] == ["not", "without"] or set(before) & {"till", "until"}:
        return False
    if before[-1:] == ["per"] or before[-2:] == ["according", "to"]:
        return False  # "no rotation per the vet"
    if before[:1] == ["none"] and before[-1] in _ASKING:
        return True  # "none of it needs the vet"
    after = _after(talk, segment, at)
    if "without" in after and _NOT & set(before[-4:]):
        return False  # "I wouldn't let the vet go without looking at it"
    if before[-1:] == ["no"] and (after[:1] in _HAS and _SEEN & set(after[1:3])):
        return False  # "no vet has seen it"
    if before[-1:] == ["no"] and _OWNED & set(before[-2:-1]):
        return False  # "she has no vet"
    if _OWNED & set(before[-1:]) and _NOT & set(before[-2:-1]) and not after:
        return False  # "they haven't got a vet"
    if any(before[i : i + len(cue)] == cue for cue in _DONE_WITHOUT for i in range(len(before))):
        return before[:1] != ["leave"] or "out" in after
    if after[:3] == ["can", "stay", "home"]:
        return True
    near = after[:_BEHIND]
    if {"not", "n't"} & set(near[:3]) and _NEEDLESS & set(after[:6]):
        return True
    return not _CONDITIONS & set(talk.words[segment.start : at]) and _denied(before)


def _denied(before: list[str]) -> bool:
    """Whether a "no" before the vet is said of him, not of how the horse goes ("not walking better")."""
    for i in range(len(before) - 1, -1, -1):
        if before[i] in _NOT:
            if i == len(before) - 1:
                return before[i] in ("no", "nothing", "without")
            return not _PSEUDO & set(before[i + 1 :])
    return False


def _refused(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """ "Should they call the vet, I said no": the answer stands in the next clause."""
    behind = next(iter(sentence[position + 1 :] or talk.sentence(sentence[0].sentence + 1)), None)
    if behind is None or behind.horse != sentence[position].horse:
        return False
    words = talk.words[behind.start : behind.end]
    if _not_needed(words):
        return not behind.having("manners")  # "the vet sedated her, she was no bother"
    if position + 1 >= len(sentence):
        return False
    return any(words == cue or (len(cue) > 1 and words[: len(cue) + 1] == [*cue, "need"]) for cue in _REFUSALS)


def _not_needed(words: list[str]) -> bool:
    """ "But there's no need", "it isn't necessary", "we won't need him"; not "there's no need to rush"."""
    at = next((i for i, word in enumerate(words) if word in _NEEDLESS), 0)
    return bool(_NOT & set(words[:at])) and set(words[:at]) <= _THERE_IS and set(words[at + 1 :]) <= _FOR_HIM


def _wanted(before: list[str]) -> bool:
    if any(before[-len(cue) :] == cue for cue in (*_ASKED_FOR, *_IT_IS)) or _to_see(before):
        return True
    return bool(before) and (before[-1] in _ASKING or before[-1] in _UNTIL)


def _to_see(before: list[str]) -> bool:
    """ "Ailsa has to see the vet", "he'd better see the vet"; not "I have to see the vet about my bill"."""
    if before[-1:] != ["see"]:
        return False
    bound = not _BOUND.isdisjoint(before[-2:-1]) or before[-3:-1] in _BOUND_TO
    return bound and not {"i", "we"} & set(before)


def _to_look(talk: Talk, segment: Segment, at: int) -> bool:
    """ "Vet to film that hind", "the vet's coming out", "the vet will want to see that"."""
    after = _after(talk, segment, at)
    after = after[1:] if after[:1] and after[0] in _PEOPLE else after
    while after[:1] in (["'s"], ["is"], ["has"], ["going"], ["gon"]):
        after = after[1:]
    if after[1:3] == ["as", "well"] and after[0] in ("might", "may"):
        return after[3:4] != [] and after[3] in _LOOKING and (after[3] != "have" or after[4:5] == ["a"])
    if after[:1] and after[0] in _MODALS and not _wants_shoes(talk, segment, at):
        rest = after[1:5]
        return after[0] == "coming" or bool(_LOOKING & set(rest)) or ("be" in rest and bool(_ASKED & set(rest)))
    return False


def _coming_to_look(talk: Talk, sentence: list[Segment], at: int) -> bool:
    """ "The vet suspects a keratoma, and he's coming out to look at it"."""
    words = talk.words[at + 1 : sentence[-1].end]
    for i in [i for i, word in enumerate(words) if word == "to" and not _LOOKING.isdisjoint(words[i + 1 : i + 2])]:
        led = words[max(0, i - _BEHIND) : i]
        led = led[:-1] if led[-1:] in _HERE else led
        coming = led[-1:] == ["coming"] or (led[-1:] in (["be"], ["come"]) and led[-2:-1] in (["'ll"], ["will"]))
        if coming and _NOT_HIM.isdisjoint(led):
            return True
    return False


def _wants_shoes(talk: Talk, segment: Segment, at: int) -> bool:
    """ "The vet wants a bar shoe on it": what the vet asked for is no call for him."""
    wants = {"wants", "wanted", "asked", "ordered"} & set(talk.words[at + 1 : at + 3])
    said = {"bars", "pads", "shoe", "shoes"} & set(talk.words[at : segment.end])
    return bool(wants) and (bool(said) or any(m.start > at and m.is_any(_SHOEING) for m in segment.mentions))


def _alone(talk: Talk, sentence: list[Segment], position: int) -> bool:
    """ "No better by Tuesday, vet.": the vet alone, at the end of a sentence."""
    last = sentence[-1]
    words = talk.words[last.start : last.end]
    return position == len(sentence) - 1 > 0 and words in (["vet"], ["the", "vet"])


def _for_him(talk: Talk, segment: Segment, at: int) -> bool:
    """ "Vet for Buck", "get Buck to the vet", "Buck should go to the vet": the horse, the vet, and what brings them."""
    names = segment.having("horse")
    rest = talk.words_beside(segment, {at, *(i for m in names for i in range(m.start, m.end))})
    return len(names) == 1 and not rest.isdisjoint(("to", "for")) and rest <= _BRINGS


def _bidden(talk: Talk, sentence: list[Segment], at: int) -> bool:
    """ "Vet, today, not tomorrow, told her twice": the vet, when, and nothing else."""
    words = talk.words[sentence[0].start : sentence[-1].end]
    ahead = talk.words[sentence[0].start : at]
    behind = set(words[len(ahead) + 1 :])
    return set(ahead) <= _AHEAD and bool(_WHEN & behind) and behind <= _WHEN | _BIDDING


_LED = frozenset({"the", "a", "as", "for", "and", "now"})
_NEEDLESS_VET = Sayings(
    "not needed", "not required", "not wanted", "not necessary", "not called for", "not this time", "not today",
    "not yet", "not at present", "none needed", "none required", "none wanted", "no need", "no call", "no", "nope",
    "none", "nothing for", "nothing to", "need n't",
)  # fmt: skip
_WANTED = Sayings(
    "yes", "needed", "required", "wanted", "please", "to see", "to look", "to check", "to be called", "to come",
    "to film",
)  # fmt: skip
_LIGHT = frozenset({
    "needed", "need", "required", "wanted", "call", "necessary", "for", "him", "her", "it", "this", "that", "time",
    "today", "yet", "at", "present", "all", "to", "see", "look", "trouble", "bother", "thank", "god", "goodness", "not",
    "no", "now", "visit", "one", "come", "out", "of", "he", "she", "'s", "i", "told", "said", "so", "them", "here",
    "thanks",
})  # fmt: skip


def draft_vet_answered(talk: Talk) -> None:
    """Add a referral, or its denial, where a segment is the vet alone and the next one says whether he is wanted."""
    if not talk.says(VETS):
        return
    for before, answer in zip(talk.segments, talk.segments[1:], strict=False):
        if before.drafts or answer.having("vet") or not _only_vet(talk, before):
            continue
        if not _answers(talk, before, answer):
            continue
        wanted = bool(_WANTED.at(talk.words, answer.start)) and not answer.having("denials")
        if wanted or _says_no(talk, answer):
            draft = referral(answer, answer.start)
            draft.note("vet: to look" if wanted else "vet: not needed")
            if not wanted:
                draft.status = Status.ABSENT
                draft.note("denied")


def _answers(talk: Talk, before: Segment, answer: Segment) -> bool:
    """Whether the segment behind the vet can be its answer; a bare "yes" or "no" only behind a colon or at the end."""
    bare = talk.words[answer.start : answer.end] in (["no"], ["nope"], ["none"])
    bare = bare or talk.words[answer.start] == "yes"
    closed = talk.words[answer.end : answer.end + 1] in ([], ["."], ["!"])
    goes_on = talk.words[answer.end : answer.end + 2] == [",", "not"]
    if before.sentence != answer.sentence:
        return not bare and closed and answer.joined_by("start")
    return not bare or talk.words[before.end] == ":" or closed or goes_on


def _only_vet(talk: Talk, segment: Segment) -> bool:
    words = talk.words[segment.start : segment.end]
    return segment.joined_by("start") and words[-1] in VETS and set(words[:-1]) <= _LED


def _says_no(talk: Talk, segment: Segment) -> bool:
    """Whether the segment says that he is not needed, and nothing else."""
    form = _NEEDLESS_VET.at(talk.words, segment.start)
    rest = talk.words[segment.start + len(form) : segment.end]
    return bool(form) and not segment.drafts and set(rest) <= _LIGHT
