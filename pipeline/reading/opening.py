"""Where a horse's name takes the talk over: at the head of a sentence, or behind what was done to it.

"Next horse is Buck", "his mate Buck", "then there was Buck" open; "same as Buck", "Buck's owner", "he bit Buck" do not.
"New shoes in front on Buck" is Buck's, and so is what follows.
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.on_another_day import on_another_day, put_down_wrongly
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import COLOURS, KIN
from pipeline.vocabulary import CLASS_SLOTS

_COMPARED = frozenset(
    [
        "as", "like", "than", "unlike", "by", "from", "not", "near", "beside", "after", "before", "with", "about",
        "told", "said", "tell", "asked", "called", "behind", "against", "past", "bit", "kicked", "hit", "chased",
        "owns",
    ]
)  # fmt: skip
_SUBJECTS = frozenset({"he", "she", "it", "they", "that", "this", "who", "him", "her"})
_MEETING = frozenset({
    "did", "do", "have", "had", "got", "done", "went", "moved", "started", "finished", "looked", "was", "'s", "is",
    "were", "be", "'d",
})  # fmt: skip
_NOT_OPENING = frozenset(
    {"if", "when", "because", "since", "while", "until", "till", "which", "though", "unless", "for", "vet"}
)
_OWNED = (
    ["owner"], ["owners"], ["rider"], ["groom"], ["trainer"], ["stall"], ["box"], ["stable"], ["paddock"], ["field"],
    ["girl"], ["lad"], ["lady"], ["people"], ["saddle"], ["rug"], ["mum"], ["mom"], ["dad"],
    ["headcollar"], ["halter"], ["bridle"], ["truck"], ["trailer"], ["lorry"],
    ["feed"], ["hay"],
)  # fmt: skip
_NOTED = (["put", "down", "for"], ["write", "down", "for"], ["mark", "down", "for"], ["note", "for"], ["add", "to"])
_ATTACKS = frozenset(
    {"bit", "bites", "kicked", "kicks", "chased", "chases", "hit", "pushed", "trod", "clouted", "cornered", "got"}
)
_HIM = (["him"], ["her"])
_BEHIND_HIM = (
    [],
    *([word] for word in (".", ",", ";", "there", "on", "in", "at", "over", "again", "last", "when", "and")),
)
_LINKS = frozenset({"is", "was", "'s", ",", "that"})
_TAIL = frozenset({"on", "for", "of"})
_PLANNING = frozenset({"will", "'ll", "to", "'d", "going"})
_DONE_BEFORE = _PLANNING | {
    "i", "we", "then", "and", "just", "also", "so", "now", "next", "after", "that", "but", "'ve", "'m",
}  # fmt: skip
_DONE_WORDS = frozenset({"reset", "shod"})
_HEAD_REACH = 5
_ORDINAL = 3  # "number two, Buck", "the second one is Buck"
_KEPT_AWAY = ("gait", "gaits", "lameness", "findings", "vet")
_TRADE = frozenset(
    {*CLASS_SLOTS, "feet", "measures", "tester_heads", "pulse_heads", "nail_line_heads", "asides", "not_facts"}
)
_OF_TRADE = _TRADE - {"asides"}
_DONE = ("work", "shoe_types", "shoe_materials", "pads", "findings", "treatments", "packings", "clips")


def heads(talk: Talk, span: NameSpan) -> bool:
    """Whether the name stands at the head of its sentence, with nothing of the trade before it."""
    start = sentence_start(talk, span.start)
    before = talk.words[start : span.start]
    if not before or len(before) > _HEAD_REACH or "," in before[:-1] or owns(talk, span):
        return False
    again = not _ALIKE.isdisjoint(before) and before[-1] != "as" and REPEATING.issuperset(before)
    if before in _NOTED or again or (before[-1] == "said" and "should" in before and RETURNING.issuperset(before)):
        return True
    if before[-1] in _COMPARED or before[-1] == "n't" or set(before) & _NOT_OPENING:
        return False
    kin = of_kin(talk, span)
    said = {word for word, after in pairwise([*before, ""]) if after not in FELLOWS}  # "over to her sister Buck"
    if said & _SUBJECTS and not said & _MEETING:
        return False
    told = [m for m in talk.starting_in(start, span.start) if m not in kin]
    large = any(m.number is not None and m.number.value > _ORDINAL for m in told)
    planned = any(m.get("plans") not in (None, "main") for m in told)
    return not large and not planned and not any(m.is_any(_TRADE) for m in told)


def of_kin(talk: Talk, span: NameSpan) -> list[Mention]:
    """ "His sister Buck", "her brother is Buck": whose kin or mate the horse is, said right before its name."""
    start = span.start
    while start and talk.words[start - 1] in _LINKS:
        start -= 1
    return [m for m in talk.having("asides") if m.end == start]


def bred_from(talk: Talk, span: NameSpan) -> bool:
    """ "He's out of Buck", "his sire was Buck", "he's Buck's brother": only kin of the horse in hand."""
    before = talk.words[sentence_start(talk, span.start) : span.start]
    kin = talk.words[span.end : span.end + 1] == ["'s"] and not KIN.isdisjoint(talk.words[span.end + 1 : span.end + 3])
    if kin and before[-1:] in (["'s"], ["is"], ["was"]) and before[-2:-1] in (["he"], ["she"]):
        return True
    parent = before[-2:-1] in (["sire"], ["dam"]) and before[-1] in ("is", "was", ",")
    return parent or (before[-2:] == ["out", "of"] and bool(_SUBJECTS & set(before)))


def closes(talk: Talk, segment: Segment, span: NameSpan) -> bool:
    """ "New shoes in front on Buck": what was done stands before the name, and "on" or "for" leads to it."""
    if talk.words[span.start - 1] not in _TAIL or talk.words[span.end : span.end + 1] == ["'s"]:
        return False
    done = [m for m in segment.mentions if m.end <= span.start and m.is_any(_DONE)]
    return bool(done) and not segment.having("units") and not segment.having("asides")


def done_to(talk: Talk, segment: Segment, span: NameSpan) -> bool:
    """ "Trimmed Tally and reset Buck": what is done stands right before the name."""
    work = talk.mention_ending(span.start)
    led = talk.words[segment.start : work.start] if work is not None and work.get("work") is not None else [","]
    return _DONE_BEFORE.issuperset(led) and talk.words[span.end : span.end + 1] != ["'s"]


def done_today(talk: Talk, segment: Segment, span: NameSpan) -> bool:
    """ "Reset Buck", and the talk goes on about him; not "I'll reset Buck", "reset Buck last week"."""
    verb, led = talk.words[span.start - 1], talk.words[segment.start : span.start]
    done = (verb.endswith("ed") or verb in _DONE_WORDS) and _PLANNING.isdisjoint(led)
    return done and not _another_day(talk.words[span.end : segment.end])


def owns(talk: Talk, span: NameSpan) -> bool:
    """ "Buck's owner was there": the name is only whose person or thing is spoken of."""
    return talk.words[span.end : span.end + 1] == ["'s"] and talk.words[span.end + 1 : span.end + 2] in _OWNED


FELLOWS = KIN | {"mate", "friend", "buddy", "pal", "companion", "stablemate", "neighbour", "neighbor", "twin", "half"}
_MISSED = frozenset({"skipped", "skip", "skipping", "missed"})
_SENT = frozenset({"moved", "sold", "lent", "sent"})
_LEFT = frozenset({"left", "leaving", "leave"})
_DOING = frozenset({"do", "did", "doing", "done", "see", "saw", "catch", "caught", "get", "got", "to", "reach"})
_NO = frozenset({"n't", "not", "never", "no", "nor"})
_DENIED_AWAY = frozenset({"there", "in", "here", "caught", "ready", "back", "home", "due", "coming"})
_AWAY = frozenset(
    {"away", "gone", "sold", "retired", "wait", "home", "elsewhere", "missing", "moved", "hospital", "turned", "loaned"}
    | {"off", "dead", "out", "left", "foal", "cancelled", "canceled", "skipped", "postponed", "vet", "wet", "lent"}
)
_BE_AWAY = frozenset(
    {"'s", "is", "was", "has", "been", "have", "had", "to", "be", "can", "will", "'ll", "in", "the", "at", "out", "all"}
    | {"too", "still", "must", "got", "already", "already's", "just", "a", "on", "now", "n't", "not", "could", "did"}
)
_IS = frozenset({"'s", "is", "was"})
_IN_TURN = frozenset(
    {"next", "then", "first", "second", "last", "now", "after", "too", "turn", "here", "up", "also"}
) | {"shape"}
_TELLS = frozenset({"'s", "is", "was", "had", "has", "stood", "looked", "lives", "wanted", "slept"})
_SEEN = frozenset({"saw", "met"})
_THEN = frozenset({"next", "last", "another", "other"})
_DAYS = frozenset(
    {"week", "month", "time", "visit", "trip", "year", "day", "fortnight", "monday", "tuesday", "wednesday", "thursday"}
    | {"friday", "saturday", "sunday", "winter", "summer", "spring", "autumn", "fall", "season"}
)
_HAS_IT = Sayings(
    *(f"{has} {it}" for has in ("has", "'s got", "has got") for it in ("one", "it", "them", "that", "the same")),
    "'s the same", "is the same",
)  # fmt: skip
_HAD = frozenset({"had", "gets", "get", "was", "did", "through"})
_HAD_IT = frozenset({"one", "same", "that", "it", "this", "similar"})
_NEXT_SENTENCE = 6  # tokens of it that may tell what he got all the same: "I did him today"
_CAME_OF_IT = [["and", it, did] for it in ("it", "that", "he", "she") for did in ("never", "did", "went")]
_REACH = 7  # tokens to what he had: "has had a touch of that"
_MORE = frozenset({"and", "but", "now", "still", "today", "since", "shoes", "shoe"})
_ONCE = frozenset({"like", "once", "every", "before", "used", "always", "went"})
_LOOKED = frozenset(
    {"met", "saw", "looked", "look", "checked", "check", "eye", "popped", "gander", "gave", "hello", "g'day", "fed"}
)
_BESIDE = frozenset({"too", "well", "while", "whilst"})
_HIS = frozenset({"he", "she", "him", "her", "his", "hers"})
_NOTHING = frozenset({"nothing", "no", "fine", "good", "pat", "hello", "g'day", "fed"})
_NOTHING_DONE = frozenset({"too", "as", "while", "whilst", "nothing", "pat", "hello", "g'day", "fed", "met"})
_TURNED = frozenset({"then", "next", "after", "afterwards", "now", "last"})
_TURNED_WITHIN = 2  # tokens behind the name: "saw Buck after that"
_STOPS = SENTENCE_ENDS | {","}
_OTHER_DAYS = frozenset({"tomorrow", "yesterday"})
_WITH = frozenset({"with", "without", "beside", "behind", "about", "near"})
_ALIKE = frozenset({"same", "likewise", "ditto"})
_OF_HIM = frozenset({"with", "beside", "near", "keep", "keeping", "kept", "behind"})
RETURNING = frozenset(
    {"forgot", "forget", "forgotten", "say", "said", "saying", "tell", "mention", "mentioned", "add", "addition"}
    | {"thing", "things", "one", "more", "another", "other", "last", "something", "else", "missed", "miss", "bit"}
    | {"i", "you", "to", "that", "this", "did", "do", "n't", "not", "never", "meant", "should", "have", "'ve", "sure"}
    | {"by", "the", "way", "while", "think", "of", "it", "now", "come", "before", "a", "minute", "second", "sorry"}
    | {"wait", "actually", "oh", "hang", "hold", "on", "about", "for", "with", "also", "and", "again", "so", "quick"}
    | {"just", "going", "go", "back", "remembered", "remember", "well", "yeah", "right", "okay", "no", "up", "as"}
    | {"carrying", "carry", "out", "slipped", "my", "mind", "skipped", "over", "left", "correction"}
    | {"anything", "everything", "nothing", "how", "then", "but", "still", "word", "note"}
    | {"quickly", "what", "is", "was", "'s", "all", ","}
)
REPEATING = (
    RETURNING
    | _ALIKE
    | {"exact", "exactly", "deal", "job", "story", "gave", "got", "gets", "had", "next", "he", "she", "too", "done"}
)


def spoken_of(talk: Talk, span: NameSpan) -> bool:
    """Whether the horse is only spoken of: as somebody's, as kin, as the one that bit him, or in passing."""
    return owns(talk, span) or bred_from(talk, span) or turns_on(talk, span.end) or in_passing(talk, span)


def leave_out_beside(talk: Talk, names: list[NameSpan]) -> None:
    """Drop what is only set beside a horse: "a corn, Buck had that last year"."""
    for told in (m for s in names[1:] for m in set_beside(talk, s) or seen_before(talk, s)):
        told.dropped = True


def kept_away(talk: Talk, names: list[NameSpan]) -> list[NameSpan]:
    """The names that head a sentence in which the horse is only spoken of."""
    return [s for s in names if s.start and in_passing(talk, s) and s.start == sentence_start(talk, s.start)]


def in_passing(talk: Talk, span: NameSpan) -> bool:
    """ "Didn't get to Buck", "Buck's away", "I did Buck last week", "she stood next to Buck": he is not turned to.

    Only where the sentence tells nothing else of the trade, but what keeps him away: "Buck's off, lame".
    """
    start = sentence_start(talk, span.start)
    end = next((i for i in range(span.end, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    before, behind = talk.words[start : span.start], talk.words[span.end : end]
    beside = set_beside(talk, span) is not None or bool(seen_before(talk, span)) or put_down_wrongly(before, behind)
    if beside or _looked_in_on(talk, span, end) or before[-2:] == ["me", "of"]:
        return True
    said = talk.starting_in(start, end)
    own = next((m.get("horse") for m in said if m.start == span.start), None)
    if any(m.get("horse") not in (None, own) for m in said):
        return _with_another(before, behind)  # "Buck's next week, it's Misty I mean": the other one is turned to
    told = [m for m in said if m.is_any(_OF_TRADE) and m.get("measures") != "weeks"]
    if any(m.start < span.end or not m.is_any(_KEPT_AWAY) for m in told):
        return False
    away = _is_away(behind)
    if told and not away:
        return False
    away = away or _not_reached(before, behind) or _with_another(before, behind) or _another_day(before + behind)
    return away or on_another_day(before, behind, talk.words[end + 1 : end + 1 + _NEXT_SENTENCE])


def set_beside(talk: Talk, span: NameSpan | Mention) -> list[Mention] | None:
    """ "A corn, Buck had that last year", "same as Buck had", "Buck gets that": what is told of his, if only that."""
    if _HAD.isdisjoint(talk.words[span.end : span.end + 3]):
        return None
    stop = next((i for i in range(span.end, len(talk.words)) if talk.words[i] in _STOPS), len(talk.words))
    ends = next((i for i in range(span.end, stop) if talk.words[i : i + 3] in _CAME_OF_IT), stop)
    said, told = talk.words[span.end : ends], talk.starting_in(span.end, stop + 2)
    what = talk.words[span.start - 1] == "what" or talk.words[span.start - 2 : span.start] == ["same", "as"]
    had = not _HAD.isdisjoint(said[:3]) and (what or not _HAD_IT.isdisjoint(said[:_REACH]))
    if not had or not _MORE.isdisjoint(said) or any(m.is_any(_OF_TRADE) for m in told if m.start < stop):
        return None
    then = what or not _ONCE.isdisjoint(said) or any(m.readings.get("times") in ("history", "recent") for m in told)
    return [m for m in told if m.start < stop or "times" in m.readings] if then or _another_day(said) else None


def seen_before(talk: Talk, span: NameSpan) -> list[Mention]:
    """ "Buck has one on the near fore, I saw it last week": what is told of his, seen on another day."""
    if not _HAS_IT.at(talk.words, span.end):
        return []
    end = next((i for i in range(span.end, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    told = talk.starting_in(span.end, end) if _another_day(talk.words[span.end : end]) else []
    return [] if any(m.is_any(CLASS_SLOTS) for m in told) else told


def may_be_beside(talk: Talk, span: NameSpan) -> bool:
    """ "Corn, off fore. Buck has one too. Reset.": his name, where nothing was done yet to the one before him."""
    here = talk.segment_at(span.start) if span.start and _HAS_IT.at(talk.words, span.end) else None
    told = [d for s in talk.segments[: here.index] for d in s.kept if s.horse != span.horse] if here else []
    last = {d.slot for d in told if d.segment.horse == told[-1].segment.horse}
    return bool(last) and last.isdisjoint(("work", "next_visit_weeks", "shoe_type", "treatment", "pad"))


def _looked_in_on(talk: Talk, span: NameSpan, end: int) -> bool:
    """ "Met Buck too", "looked at Buck while I was there, nothing to do", "Buck I looked at, all good"."""
    start = next((i for i in range(span.start, 0, -1) if talk.words[i - 1] in _STOPS), 0)
    behind = talk.words[span.end : end]
    before = talk.words[start : span.start]
    if _LOOKED.isdisjoint([*before, *behind[:2]]) and behind[:2] != ["was", "there"]:
        return False
    stop = next((i for i in range(end + 1, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    if not _HIS.isdisjoint(talk.words[end + 1 : stop]):
        return False  # "saw Buck too. Trimmed him"
    nothing = not _NOTHING.isdisjoint([*before, *behind])
    if not nothing and (_BESIDE.isdisjoint(behind) or talk.tokens.texts[end : end + 1] == [","]):
        return False
    return not any(m.is_any(_OF_TRADE) for m in talk.starting_in(start, end)) and not _seen_to(talk, span, end, stop)


def _seen_to(talk: Talk, span: NameSpan, end: int, stop: int) -> bool:
    """ "Then saw Buck, no problems. Fronts reset.": in his turn, or when the one before was done; and work behind."""
    start = sentence_start(talk, span.start)
    if not _NOTHING_DONE.isdisjoint(talk.words[start:end]) or not any(
        "work" in m.readings for m in talk.starting_in(end, stop)
    ):
        return False
    last = max((m.start for m in talk.having("horse") if m.start < start), default=0)
    done = any("work" in m.readings for m in talk.starting_in(last, start))
    return done or not _TURNED.isdisjoint(talk.words[start : span.end + _TURNED_WITHIN])


def of_whom_nothing(talk: Talk, span: NameSpan) -> bool:
    """ "Buck was asleep", "saw Buck over the fence": whether the next sentence is of Buck nobody can know."""
    start = sentence_start(talk, span.start)
    end = next((i for i in range(span.end, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    before, behind = talk.words[start : span.start], talk.words[span.end : end]
    seen = before[-1:] != [] and before[-1] in _SEEN
    tells = not before and behind[1:2] not in ([], ["the"]) and behind[0] in _TELLS  # not "Buck's the one"
    said = {*before, *behind}
    if not (seen or tells) or not _IN_TURN.isdisjoint(said) or not (HORSE_WORDS | COLOURS).isdisjoint(said):
        return False
    return not any(m.is_any(_OF_TRADE) or m.number for m in talk.starting_in(start, end))


def _is_away(behind: list[str]) -> bool:
    """What is said behind the name: "'s away at a show", "couldn't be caught", "had to be left"."""
    at = next((i for i, word in enumerate(behind) if word not in _BE_AWAY), len(behind))
    said = behind[: at + 1]
    if "out" in said[:-1] and said[0] in _IS and _IN_TURN.isdisjoint(behind):
        return True  # "Buck was out hacking"
    if at == len(behind):
        return not _NO.isdisjoint(behind) and behind[-1:] in (["in"], ["there"])
    if behind[at] == "off":
        return behind[at + 1 : at + 2] in ([], [","], ["sick"], ["lame"], ["today"], ["work"])
    if behind[at] == "turned":
        return behind[at + 1 : at + 2] in (["away"], ["out"])
    return behind[at] in (_DENIED_AWAY if not _NO.isdisjoint(said) else _AWAY)


def _not_reached(before: list[str], behind: list[str]) -> bool:
    """ "Didn't get to", "couldn't catch", "skipped", "left … for next time", "no … today"."""
    if before[-1:] == ["no"] or before[-1:] == ["not"]:
        return behind[:1] == ["today"] or behind == []
    if before and before[-1] in _LEFT:
        return behind[:1] in (["for"], ["till"], ["until"], ["out"], ["alone"])
    if before[:1] == ["they"] and before[-1] in _SENT:
        return True
    said = before + behind if "but" in behind[:2] else before  # "asked would I do Buck, but there was no time"
    denied = bool(before) and before[-1] in _DOING and not _NO.isdisjoint(said)
    return denied or (bool(before) and before[-1] in _MISSED)


def _with_another(before: list[str], behind: list[str]) -> bool:
    """ "She stood next to Buck", "the owner asked about Buck"; "Buck stood with her", "kept him company"."""
    near = before[-2:] == ["next", "to"] or (before[-1:] != [] and before[-1] in _WITH)
    near = near and _ALIKE.isdisjoint(before)  # "same deal with Buck" turns to him
    if near and not RETURNING.issuperset(before[:-1]) and behind[:1] != [","]:
        return True
    him = next((i for i, word in enumerate(behind) if i and word in ("him", "her")), None)
    of_him = him is not None and (behind[him - 1] in _OF_HIM or behind[him - 2 : him] == ["next", "to"])
    return of_him and behind[-1:] != ["owner"]


def _another_day(said: list[str]) -> bool:
    """ "Buck next week", "I did Buck on Tuesday"."""
    if not _OTHER_DAYS.isdisjoint(said):
        return True
    return any(then in _THEN and day in _DAYS for then, day in pairwise(said))


_BEING = (["was"], ["is"], ["'s"], ["were"], ["kept"], ["keeps"])
_NOISES = frozenset(
    {"roaring", "shouting", "hollering", "screaming", "bawling", "whinnying", "neighing", "nickering", "bellowing"}
    | {"calling", "roared", "shouted", "hollered", "screamed", "whinnied", "nickered", "yelling", "banging", "kicking"}
)
_FOOD = frozenset(
    {"breakfast", "feed", "dinner", "hay", "bucket", "tea", "supper", "grub", "oats", "haynet", "lunch", "grain"}
)


def turns_on(talk: Talk, end: int) -> bool:
    """ "Buck bit him there": the horse in hand is "him", the name before the token ``end`` is not.

    "Wren got her fronts reset" is Wren's own.
    """
    attacked = talk.words[end : end + 1] != [] and talk.words[end] in _ATTACKS
    bit_him = attacked and talk.words[end + 1 : end + 2] in _HIM and talk.words[end + 2 : end + 3] in _BEHIND_HIM
    return bit_him or _calls_for_food(talk, end)


def _calls_for_food(talk: Talk, end: int) -> bool:
    """ "Buck was roaring over the door for his breakfast": heard from a stall, nothing is told of him."""
    verb = end + (talk.words[end : end + 1] in _BEING)
    if talk.words[verb : verb + 1] == [] or talk.words[verb] not in _NOISES:
        return False
    stop = next((i for i in range(verb, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    told = any(m.is_any(CLASS_SLOTS) or m.get("feet") for m in talk.mentions if verb <= m.start < stop)
    return not told and not _FOOD.isdisjoint(talk.words[verb:stop])


def sentence_start(talk: Talk, index: int) -> int:
    """The first token of the sentence that the token stands in."""
    while index > 0 and talk.words[index - 1] not in SENTENCE_ENDS:
        index -= 1
    return index
