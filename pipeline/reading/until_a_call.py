"""Intervals until somebody calls or looks: "ring me in a week if he's sore" is no next visit of the farrier's."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk

_CALLING = Sayings(
    *(f"{call} {whom}"
      for call in ("call", "ring", "phone", "text", "message", "email", "buzz", "whatsapp")
      for whom in ("me", "us", "her", "him", "them", "the owner", "the yard", "the barn")),
    *(f"give {whom} a {call}"
      for whom in ("me", "us", "her", "him", "them")
      for call in ("ring", "call", "shout", "bell", "buzz", "text", "holler", "tinkle")),
    *(f"{get} {me}" for get in ("get onto", "get on to", "get back to", "get hold of", "get a hold of", "get after",
                                "get in touch with", "let") for me in ("me", "us")),
    "get in touch", "be in touch", "check in with", "ring", "shout", "holler", "shout at me", "shout if",
)  # fmt: skip
_SHOWING = Sayings(
    "let me know", "let us know", "send me", "send us", "text me a", "send a photo", "send a picture", "send a video",
    "send photos", "send pictures", "report back", "hear how", "tell me how", "see how he", "see how she", "see how it",
)  # fmt: skip
_HENCE = Sayings(
    "from now on", "from here on", "from here out", "from today on", "from this on", "going forward", "till i hear",
    "until i hear", "unless i hear", "till further notice", "until further notice",
)  # fmt: skip
_IF = frozenset({"if", "unless", "should", "how", "whether"})
_WAIT = (["give", "it"], ["leave", "it"], ["allow", "it"], ["gave", "it"])
_THEN = frozenset({"call", "ring", "phone", "get", "text", "let", "send"})
_OUT = frozenset({"out", "again", "back", "round", "over"})
_LEADING = frozenset({"in", "within", "inside", "after", "by", "at", "of", "about", "maybe", "around"})
_MOST_WEEKS = 16
_MAKING_IT = frozenset(
    {"it", "'s", "in", "he", "she", "is", "then", "make", "that", "say", "'ll", "be", "on", ",", "at"}
)
_CLOSING = frozenset({",", ".", "!"})
_COMING = frozenset({"'s", "is", "will", "'ll", "be", "coming", "comes", "due"})
_VETS, _OWN = frozenset({"vet", "vets"}), frozenset({"i", "we", "me", "back", "and", "says", "said", "wants"})
_SEEN = frozenset({"see", "look", "come", "coming", "out", "comes", "due", "call", "check", "x-ray", "visit", "here"})
_VISITS = frozenset({"see", "back", "visit", "due", "shoe", "reset", "trim", "come", "coming", "do", "book"})
_TO_ME = frozenset({"me", "us"})
_RINGING = frozenset({"ring", "call", "text", "phone", "message", "whatsapp", "email"})
_TILL, _NOT = frozenset({"till", "until", "til", "before"}), frozenset({"n't", "not", "never"})
_MYSELF, _HERE = frozenset({"i", "we"}), frozenset({"back", "out", "here", "see", "again"})
_SOON = 3  # weeks: who is to ring in three or less tells how it goes; "ring me in six" is a booking


def until_a_call(talk: Talk, sentence: list[Segment], segment: Segment, start: int, end: int, weeks: Fraction) -> bool:
    """Whether the interval ``[start, end)`` ends with a call, a look by the vet, or is only waited out."""
    if weeks <= _SOON and _rung_in(talk, segment, start):
        return True
    floor, stop = segment.start, sentence[-1].end
    asked = not _IF.isdisjoint(talk.words[floor:stop])
    at = start
    while at > floor and talk.words[at - 1] in _LEADING:
        at -= 1
    if (asked and talk.words[at - 2 : at] in _WAIT and _then_called(talk, end)) or _the_vets(talk, floor, at):
        return True  # "give it a week and call the vet if he's no better"
    led = [*_SHOWING.within(talk.words, floor, start), *(_CALLING.within(talk.words, floor, start) if asked else ())]
    called = any(_OUT.isdisjoint(talk.words[i + len(form) : at]) for i, form in led)
    if called and _VISITS.isdisjoint(talk.words[floor:at]):
        return True
    behind = [s for s in sentence if s.start >= end] if asked and at == floor < start and end == segment.end else []
    first = bool(behind) and talk.words[behind[0].start] in _IF  # "in a week, if he's sore, ring me"
    return first and any(_CALLING.at(talk.words, s.start) for s in behind)


def from_here_on(talk: Talk, sentence: list[Segment]) -> bool:
    """ "Every three weeks from now on", "… till I hear otherwise": of visits; not how often to soak it."""
    treated = any(d.slot == "treatment" for s in sentence for d in s.drafts)
    said = any(next(_HENCE.within(talk.words, s.start, s.end), None) is not None for s in sentence)
    return said and not treated


def _rung_in(talk: Talk, segment: Segment, start: int) -> bool:
    """ "Ring me in a week": who is to call, right before the interval."""
    led = talk.words[segment.start : start]
    return len(led) > 2 and led[-1] == "in" and led[-2] in _TO_ME and led[-3] in _RINGING


def _then_called(talk: Talk, end: int) -> bool:
    """ "… and call the vet": right behind the interval; "give it six weeks, and if …" is the next visit."""
    return talk.words[end : end + 1] == ["and"] and not _THEN.isdisjoint(talk.words[end + 1 : end + 2])


def _the_vets(talk: Talk, floor: int, at: int) -> bool:
    """ "The vet's to see him in a week", "vet in a week if he's not right": when he comes, and nobody else."""
    led = talk.words[floor:at]
    vet = next((i for i in range(len(led) - 1, -1, -1) if led[i] in _VETS), None)
    if vet is None or led[max(0, vet - 2) : vet][:1] == ["with"] or led[max(0, vet - 1) : vet] == ["with"]:
        return False
    coming = led[vet + 1 : led.index("back")] if "back" in led[vet:] else []
    if coming and _COMING.issuperset(coming) and led.index("back") + 2 >= len(led):
        return True  # "the vet's coming back in three weeks"
    return _OWN.isdisjoint(led[vet:]) and not _SEEN.isdisjoint(("", *led[vet + 1 :]) if led[vet + 1 :] else _SEEN)


def otherwise(talk: Talk, sentence: list[Segment], mention: Mention) -> bool:
    """ "Back in a week if he's still lame, otherwise six": a number alone counts weeks where weeks were told before."""
    number, at = mention.number, mention.start
    closes = _CLOSING.issuperset(talk.words[mention.end : mention.end + 1])
    if number is None or not closes or mention.dropped or number.aughts is not None:
        return False
    if talk.words[at - 1] in _TILL and 1 < number.value <= _MOST_WEEKS:
        return _not_back_till(talk, sentence, mention)
    while at and talk.words[at - 1] in _MAKING_IT:
        at -= 1
    led = talk.words[at - 1 : at] in (["otherwise"], ["else"]) or talk.words[at - 2 : at] == ["if", "not"]
    if not led or not 1 < number.value <= _MOST_WEEKS:
        return False
    near = [*talk.sentence(sentence[0].sentence - 1), *sentence]
    return any(d.slot == "next_visit_weeks" for s in near for d in s.drafts)


def _not_back_till(talk: Talk, sentence: list[Segment], mention: Mention) -> bool:
    """ "They've a show in three weeks but I won't be back till six": weeks, where weeks were spoken of; not an hour."""
    segment = next(s for s in sentence if s.start <= mention.start < s.end)
    led = {*talk.words[segment.start : mention.start]}
    if not (led & _MYSELF and led & _NOT and led & _HERE) or segment.having("times") or segment.having("feet"):
        return False
    told = [m for m in talk.having("units") if sentence[0].start <= m.start < mention.start]
    if not any(m.get("units") in ("week", "fortnight", "month") for m in told):
        return False
    for cue in segment.having("plans", "condition"):
        cue.dropped = cue.dropped or cue.end == mention.start  # "until six" is no condition
    if segment.joined_by("but", ", but") and not segment.having("horse"):
        for draft in [d for s in sentence for d in s.drafts if d.slot == "next_visit_weeks"]:
            draft.drop("overruled: not back till later")  # "usually eight weeks, but I won't be back till ten"
    return True
