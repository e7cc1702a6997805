"""Statements that were made under the wrong name: "did I say Tally, I meant Buck", "all of that was Buck"."""

from __future__ import annotations

import itertools
import re

from pipeline.reading.exchanges import HESITATING, kind_of, sentence_end
from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import ANIMALS
from pipeline.reading.opening import FELLOWS, sentence_start
from pipeline.reading.sayings import Sayings
from pipeline.reading.stretches import next_mark
from pipeline.reading.strikes import Strike
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import OFFSPRING
from pipeline.record import MatchKind
from pipeline.vocabulary import CLASS_SLOTS

_LEADS = (
    "not", "did i say", "i said", "when i said", "i called him", "i called her", "i keep saying", "i kept saying",
    "i keep calling him", "i keep calling her", "i 've been saying", "i 've been calling him", "i 've been calling her",
    "for", *(f"{this} {isnt}" for this in ("this", "that", "it") for isnt in ("is n't", "is not", "'s not", "was n't")),
)  # fmt: skip
_MEANT = (
    "i meant", "i mean", "it 's", "it was", "it is", "that 's", "that was", "this is", "this 's", "meant", "make that",
    "should be", "it should be", "that should be", "should have said", "i should have said", "he 's", "she 's", "read",
    "he is", "she is", "i was meaning",
)  # fmt: skip
_BETWEEN = frozenset({",", "but", "no", "and", "when", "well", ".", "?", "sorry"})
_ALL = (
    "all of that", "all that", "everything i just said", "everything i said", "everything i just told you",
    "everything i told you", "everything so far", "all i just said", "what i just said", "the whole of that",
)  # fmt: skip
_BELONGS = (
    "was", "is", "was for", "is for", "goes on", "goes to", "goes under", "goes with", "belongs to", "should be",
    "was about", "is about", "'s", "was all", "should go on", "should go under", "goes down to", "was on",
)  # fmt: skip
_ALL_OF_IT = frozenset(f"{everything} {belongs}" for everything in _ALL for belongs in _BELONGS)
_CUE = (
    r"(?:(?:no|nah|wait|sorry|hang on|hold on|actually|scratch that|my mistake|oh|well|correction|wrong horse"
    r"|wrong name|er|uh|um|what am i saying|i tell a lie|let me think|i beg your pardon|excuse me|strike that|i lie) )"
)
_CUES = rf"(?:{_CUE}|, )"
_CUED = re.compile(rf"(?:{_CUE}(?:, )?)+")
_NOT_THE_OTHER = re.compile(
    r"(?:this is|this 's|it is|it 's|it was|that is|that 's|that was|that should be|should be|make that|make it"
    r"|put that down to|put it down to|put that down as|all that was|all of that was) NAME"
    r"(?: (?:i 'm|i was|i am|we 're) (?:on about|talking about|thinking of|at|doing|with))?(?: ,)? not OTHER (?:[.,]|$)"
)
_HAS = r"(?:with|has|had|got|have|'s got|that has|that had|that 's got|that 's|who has|who had|who 's got|who 's)"
_THOSE = "(?:the|those|that|them)"
_IS_HERS = (
    re.compile(rf"{_CUES}*(?:(?:it|that) (?:'s|was|is) )?NAME (?:'s|is|was) the one {_HAS} {_THOSE} FOUND"),
    re.compile(rf"{_CUES}*(?:it|that) (?:'s|was|is) NAME {_HAS} {_THOSE} FOUND"),
    re.compile(rf"{_CUES}+NAME {_HAS} {_THOSE} FOUND"),
    re.compile(
        rf"{_CUES}*{_THOSE} FOUND (?:'s|is|are|was|were|goes|go|belongs?|should be|should go)"
        r" (?:on |under |for |to )?NAME(?: 's?)?(?: [.,]|$)"
    ),
    re.compile(rf"{_CUES}*(?:the )?one {_HAS} {_THOSE} FOUND (?:'s|is|was) NAME"),
)  # fmt: skip
_ELSEWHERE = Sayings(
    "at the last place", "at the last yard", "at the last barn", "at the last stop", "at the last call", "yesterday",
    "last week", "earlier", "this morning", "at the other place", "at the other yard", "at the other barn",
    "from the last place", "from the last yard", "from yesterday", "from this morning", "the day before", "last time",
)  # fmt: skip
_HIM = (["him"], ["her"], ["it"])
_I_HAVE = frozenset({"i", "we", "'ve", "'d", "had", "have", "was"})
_ANOTHER_DAY = frozenset({"last", "before", "yesterday", "previous", "earlier", "once", "first", "mistake", "wrongly"})
_DAY_WITHIN = 5
_WEEKS = frozenset({"week", "weeks", "month", "months"})
_SAME_AS = ["same", "as"]
_CLOSED: tuple[list[str], ...] = ([], ["."], ["for"], ["week"], ["weeks"])
_SHE_IS = frozenset({"on", "she", "he", "it", "'s", "is", "takes", "make", "this", "one", "a", "an", "the", "size"})
_IN_MIND = [["i", am, "thinking", "of"] for am in ("'m", "am", "was")]
_THAT_IS = [
    *(["that", verb, *of] for of in ([], ["for"]) for verb in ("'s", "is", "was")),
    *_IN_MIND, ["that", "'s", "what", "i", "told"],
]  # fmt: skip
_KIN = FELLOWS | OFFSPRING | {"teammate", "dam", "sire"}
_MARKS = SENTENCE_ENDS | {","}
_ASKED, _GONE = (["is", "it"], ["was", "it"], ["is", "this"]), frozenset({"sold", "died", "retired"})
_TOLD = frozenset({*CLASS_SLOTS, "feet", "measures", "number"})
_MOST_OF_KIN, _SOON = 4, 5  # tokens
_NEAR = 2  # sentences from a finding to the words that give it to another horse


def found_on_another(talk: Talk) -> list[Strike]:
    """A strike for each "no, Tally's the one with the thrush", "the thrush was Tally's" behind another's thrush."""
    strikes = []
    names = talk.having("horse")
    if not names:
        return []
    findings = talk.having("findings")
    for found in findings:
        same = [m for m in findings if m.get("findings") == found.readings["findings"] and m.end <= found.start]
        if not same:
            continue
        start = sentence_start(talk, found.start)
        stop = sentence_end(talk, found.end)
        said = [m for m in same if m.end <= start]
        old = said[-1] if said else None
        under = [m for m in names if old is not None and m.end <= old.start]
        stops = _stops(talk.words[old.end : start]) if old is not None else 0
        for name in [m for m in names if start <= m.start < stop and stops and stops <= _NEAR]:
            if under and under[-1].get("horse") != name.get("horse") and _given_to(talk, start, name, found):
                strikes.append(_given(talk, start, name, found))
    return strikes


def _stops(words: list[str]) -> int:
    """How many sentences lie between; "No. Stop." is none of its own."""
    ended = [i for i, word in enumerate(words) if word in SENTENCE_ENDS]
    short = sum(set(words[one + 1 : other]) <= HESITATING for one, other in itertools.pairwise(ended))
    return len(ended) - short


def _given_to(talk: Talk, start: int, name: Mention, found: Mention) -> bool:
    """Whether the sentence opens with words that give the finding to the horse."""
    words: list[str] = []
    at = start
    while at < min(len(talk.words), max(name.end, found.end) + 2):
        mention = next((m for m in (name, found) if m.start == at), None)
        words.append(talk.words[at] if mention is None else "NAME" if mention is name else "FOUND")
        at = at + 1 if mention is None else mention.end
    return any(pattern.match(" ".join(words)) for pattern in _IS_HERS)


def _given(talk: Talk, start: int, name: Mention, found: Mention) -> Strike:
    end = max(name.end, found.end)
    for mention in [m for m in talk.mentions if start <= m.start < end and m is not name]:
        mention.dropped = True
    talk.putting_right.add(name.start)
    what = ("finding", found.readings["findings"])
    return Strike(start, end, None, other_horse=True, named=name.start, what=what)


def misnamed(talk: Talk) -> list[Strike]:
    """A strike for each name that takes the place of the one before, with all that was said under it."""
    names = talk.having("horse")
    strikes = []
    for before, meant in itertools.pairwise(names):
        if before.get("horse") == meant.get("horse"):
            continue
        start = sentence_start(talk, before.start)
        led = _without_cues(talk, start, before.start) in _LEADS
        if _meant_at_once(talk, before, meant):
            before.dropped = True
        elif led and _takes_its_place(talk, before, meant):
            strikes.append(_strike(start, meant))
        elif _not_the_other(talk, start, before, meant):
            meant.dropped = True
            strikes.append(_strike(start, before))
    for at, name in enumerate(names):
        start = sentence_start(talk, name.start)
        words = _without_cues(talk, start, name.start)
        if words in _ALL_OF_IT or (_this_is(talk, start, name, words) and _ends_there(talk, names, at)):
            strikes.append(_strike(start, name))
    return strikes


def _without_cues(talk: Talk, start: int, end: int) -> str:
    """The words without the cues that take something back at their head: "sorry, all of that was"."""
    words = " ".join(talk.words[start:end])
    cued = _CUED.match(f"{words} ")
    return words[cued.end() :] if cued is not None else words


def said_of_all(talk: Talk, at: int) -> bool:
    """ "Scratch that, this is Tally, not Buck": what was said is not taken back but given to another."""
    name = next((m for m in talk.having("horse") if at <= m.start < sentence_end(talk, at)), None)
    words = " ".join(word for word in talk.words[at : name.start] if word != ",") if name is not None else ""
    return words in _ALL_OF_IT or words in ("this is", "this 's", "it 's", "it is")


def _meant_at_once(talk: Talk, before: Mention, meant: Mention) -> bool:
    """ "Buck, I mean Tally.", "this is Buck, or rather Tally": at the head of his turn, the second name alone."""
    between = " ".join(word for word in talk.words[before.end : meant.start] if word != ",")
    headed = " ".join(talk.words[sentence_start(talk, before.start) : before.start]) in ("", "this is", "this 's")
    closed = talk.words[meant.end : meant.end + 1] in (["."], [","], [])
    return headed and closed and between in ("i mean", "i meant", "make that", "make it", "or rather", "rather")


def _not_the_other(talk: Talk, start: int, name: Mention, other: Mention) -> bool:
    """ "Sorry, this is Tally, not Buck": behind what was said of the other, who is named once more."""
    told_of = any(m.end <= start and m.get("horse") == other.get("horse") for m in talk.having("horse"))
    if not told_of or other.end > sentence_end(talk, start):
        return False
    words = [*talk.words[start : name.start], "NAME", *talk.words[name.end : other.start], "OTHER"]
    told = " ".join([*words, *talk.words[other.end : other.end + 1]])
    cued = _CUED.match(told)
    return _NOT_THE_OTHER.match(told, cued.end() if cued is not None else 0) is not None


def _this_is(talk: Talk, start: int, name: Mention, words: str) -> bool:
    """ "Sorry, this is Tally.": a cue, and whose turn it was."""
    cued = words != " ".join(talk.words[start : name.start])
    return cued and words in ("this is", "this 's", "this was") and talk.words[name.end : name.end + 1] in (["."], [])


def _ends_there(talk: Talk, names: list[Mention], at: int) -> bool:
    """Whether another horse is named before it and, behind it, the next horse or nothing."""
    name, following = names[at], names[at + 1 : at + 2]
    end = following[0].start if following else len(talk.words)
    return at > 0 and names[at - 1].get("horse") != name.get("horse") and set(talk.words[name.end : end]) <= {"."}


def called_before(talk: Talk) -> None:
    """ "I think I called her Buck on the last tape": the name of another day opens nothing."""
    for cue in [m for m in talk.having("horse_cues", "named") if talk.words[m.start] == "called"]:
        at = cue.end + (talk.words[cue.end : cue.end + 1] in _HIM)
        name = talk.mention_starting(at)
        told = talk.words[cue.start - 1] in _I_HAVE and name is not None and name.get("horse") is not None
        if name is not None and told and _ANOTHER_DAY & set(talk.words[name.end : name.end + _DAY_WITHIN]):
            name.dropped = cue.dropped = True


def without_animals(talk: Talk) -> None:
    """ "Barn dog, name of Borium", "a pup called Thrush": an animal's name is no word of the trade."""
    for cue in talk.having("horse_cues", "named"):
        before = [word for word in talk.words[max(0, cue.start - 3) : cue.start] if word not in (",", "'s", "is")]
        named = talk.mention_starting(cue.end)
        if before and before[-1] in ANIMALS and named is not None and named.get("horse") is None:
            named.dropped = True


def another_horses_number(talk: Talk) -> None:
    """ "Size one, sorry, that's Twister's, Cotton's a double aught": the number just said was another horse's."""
    names = talk.having("horse")
    for name in names:
        if talk.words[name.start - 2 : name.start] == _SAME_AS and _alone(names, name):
            talk.putting_right.add(name.start)  # "seven weeks, same as Tally": not hers, who is told of nowhere else
        form = next((f for f in _THAT_IS if talk.words[name.start - len(f) : name.start] == f), [])
        begin = name.start - len(form)
        owned = talk.words[name.end : name.end + 2] in (["'s", ","], ["'s", "."], ["'", ","], ["'", "."])
        at = begin
        while at > 0 and talk.words[at - 1] in HESITATING:
            at -= 1
        number = talk.mention_ending(at)
        cued = set(talk.words[at:begin]) - {","}
        mark = _another_number_behind(talk, at - (talk.words[at - 1] == "."), name) if form and cued else None
        if mark is not None:
            talk.words[mark] = ","  # "… no, that was Duke. Six.": one sentence, as the repairs want it
            talk.putting_right.add(name.start)
            name.dropped = True  # what is left, "size three, no, that was …, she's a two", puts the number right
            continue
        if not form or not owned or number is None or number.number is None:
            continue
        name.dropped = number.dropped = True
        for cue in [m for m in talk.mentions if at <= m.start < name.start]:
            cue.dropped = True


def _alone(names: list[Mention], name: Mention) -> bool:
    return [m.get("horse") for m in names].count(name.get("horse")) == 1


def _another_number_behind(talk: Talk, cue: int, name: Mention) -> int | None:
    """The mark behind which the right number stands: "size three, no, that was Duke yesterday, she's a two".

    The last thing told before, and the first behind, must be numbers; None where they are not.
    """
    start, stop = sentence_start(talk, cue), sentence_end(talk, name.end)
    at = stop + 1 + 2 * (talk.words[stop + 2 : stop + 3] == ["'s"])  # "… that was Duke. She's six.", "… Six for her."
    six = talk.mention_starting(at) if stop == name.end and not _WEEKS.isdisjoint(talk.words[start:cue]) else None
    joined = six is not None and six.number is not None and talk.words[six.end : six.end + 1] in _CLOSED
    stop = sentence_end(talk, at) if joined else stop
    told = [kind for m in talk.mentions if start <= m.start < cue and (kind := kind_of(m)) not in (None, "feet")]
    others = [m for m in talk.having("horse") if start <= m.start < stop and m is not name]
    dealt = len(others) > 1 or any(m.start > cue or m.get("horse") == name.get("horse") for m in others)
    booked = dealt and not _WEEKS.isdisjoint(talk.words[start:cue])  # dealt out to the horses elsewhere
    comma = name.end if joined else next((i for i in range(name.end, stop) if talk.words[i] == ","), stop)
    behind = [m for m in talk.mentions if name.end <= m.start < stop and kind_of(m)]
    led = comma < stop and bool(behind) and _SHE_IS.issuperset(talk.words[comma + 1 : behind[0].start])
    right = told[-1:] == ["number"] and led and not booked and behind[0].number is not None and behind[0].start > comma
    return comma if right else None


def _strike(start: int, meant: Mention) -> Strike:
    return Strike(start, meant.end, None, other_horse=True, named=meant.start, whole=True)


def _takes_its_place(talk: Talk, before: Mention, meant: Mention) -> bool:
    """Whether nothing but "I meant" and the like stands between the two names."""
    between = [word for word in talk.words[before.end : meant.start] if word not in _BETWEEN]
    return not between or " ".join(between) in _MEANT


def other_named(talk: Talk, cue: Mention) -> int | None:
    """ "No, hang on, that's Fiddler I'm thinking of": the token of the horse that the statement belongs to."""
    start = cue.end
    while talk.words[start : start + 1] in ([","], ["."], ["stop"]):
        start += 1
    if talk.words[start : start + 2] in (["it", "'s"], ["it", "was"]):
        return _that_has(talk, start + 2)
    if talk.words[start : start + 2] not in (["that", "'s"], ["that", "was"]):
        return _that_has(talk, start)
    if talk.words[start + 2 : start + 3] == ["not"]:
        return _after_not_that_one(talk, start + 3)
    name = talk.mention_starting(start + 2)
    return name.start if name is not None and name.get("horse") is not None else None


def mixed_up(talk: Talk, cue: Mention) -> bool | None:
    """ "No, I'm mixing him up with Buck", "sorry, I'm thinking of Buck": a name that only tells why it was wrong.

    Whether the right word may stand behind its comma; None where no horse was in the mind.
    """
    at = cue.end + (talk.words[cue.end : cue.end + 1] in ([","], ["."]))
    if cue.get("taking_back") != "other_horse":
        at = at + 4 if talk.words[at : at + 4] in _IN_MIND else len(talk.words)
    elif talk.words[cue.end - 1] == "horse":
        return None  # "wrong horse, Buck" is of him
    name = talk.mention_starting(at)
    if name is None or name.get("horse") is None or not _MARKS.issuperset(talk.words[name.end : name.end + 1]):
        return None
    _only_told_by(talk, name)
    return talk.words[name.end : name.end + 1] == [","]


def on_another_day(talk: Talk, named: int) -> bool:
    """ "She was fidgety, no, that was Buck at the last place": told of another visit, and kept there."""
    name = talk.mention_starting(named)
    return name is not None and bool(_ELSEWHERE.at(talk.words, name.end))


def _that_has(talk: Talk, start: int) -> int | None:
    """ "It's Buck that has the thrush", "I mean Buck has": a name and that it is his."""
    name = talk.mention_starting(start)
    if name is None or name.get("horse") is None:
        return None
    behind = talk.words[name.end : name.end + 2]
    return name.start if behind[:1] == ["that"] or behind in (["has", "."], ["had", "."], ["did", "."]) else None


def _after_not_that_one(talk: Talk, start: int) -> int | None:
    """ "That's not Mustard, sorry, it's Custard that has the crack"."""
    names = [m for m in talk.having("horse") if start <= m.start < sentence_end(talk, start)]
    return names[1].start if len(names) > 1 else None


def leave_out_told_by(talk: Talk) -> None:
    """Drop the names that only tell which horse is meant: "Buck, Tally's teammate", "or is it Tally? No, Buck"."""
    names = talk.having("horse")
    for before, name, behind in zip(names, names[1:], [*names[2:], None], strict=False):
        other = before.get("horse") != name.get("horse")
        told = any(m.is_any(_TOLD) for m in talk.starting_in(before.end, name.start))
        if (
            (other and not told and _of_kin(talk, name))
            or (other and behind is not None and _asked(talk, name, behind))
            or _gone_since(talk, name)
        ):
            _only_told_by(talk, name)


def _only_told_by(talk: Talk, name: Mention) -> None:
    name.dropped = True
    here = tuple(range(name.start, name.end))  # so that its sound names nobody
    talk.mentions.append(Mention(name.start, name.end, here, {"remarks": "remark"}, MatchKind.VARIANT))


def _of_kin(talk: Talk, name: Mention) -> bool:
    """ "Buck, the big bay, Tally's half-brother.", "Buck, brother to Tally": closed by a mark."""
    words, end = talk.words, next_mark(talk, name.end, _MARKS)
    if words[name.end : name.end + 1] != ["'s"]:
        return words[name.start - 1] in ("to", "of") and words[name.start - 2] in _KIN
    opens = words[name.start - 1] in _MARKS or words[name.start - 1] in ("is", "'s", "was")
    return opens and end - name.end <= _MOST_OF_KIN and words[end - 1] in _KIN


def _asked(talk: Talk, name: Mention, behind: Mention) -> bool:
    """ "Buck. Or is it Tally? No, Buck.": a question with nothing but the name, and another horse's behind it."""
    asked = talk.words[name.start - 2 : name.start] in _ASKED and not _MARKS.isdisjoint(
        talk.words[name.end : name.end + 1]
    )
    return asked and behind.get("horse") != name.get("horse") and behind.start - name.end <= _SOON


def _gone_since(talk: Talk, name: Mention) -> bool:
    """ "Tally's the one that got sold": told of only to say that she is not the horse in hand."""
    end = next_mark(talk, name.end, _MARKS)
    one = talk.words[name.end + 1 : name.end + 3] == ["the", "one"] and talk.words[name.start - 1] in _MARKS
    return one and talk.words[end - 1] in _GONE
