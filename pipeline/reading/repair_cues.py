"""Words that may take something back, and whether they do: the "no" of "no corn", the "wait" of "she can wait"."""

from __future__ import annotations

from pipeline.reading.exchanges import (
    kind_of,
    of_another_foot,
    opened_sentence,
    sentence_end,
    thought_better,
    window,
)
from pipeline.reading.mentions import Mention
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

_STRONG_NEXT = frozenset({
    ",", "wait", "make", "sorry", "i", "that's", "that", "scratch", "hang", "hold", "actually", "strike", "it",
    "uh", "um", "my", "correction", "not",
})  # fmt: skip
_EVERYDAY = (["wait"], ["wrong"], ["rather"], ["actually"], ["pardon"], ["sorry"])
_ALONE = (["whoa"], ["back", "up"], ["wait", "on"])  # cues only between two marks: not "nailed it back up, six nails"
_WAITING = (["wait", "a"], ["wait", "one"], ["wait", "just"])
_AMISS = frozenset({"nothing", "anything", "something", "much", "what", "owt", "nowt", "little", "never", "nobody"})
ASSESSED = (["call", "it"], ["make", "it"], ["put", "it", "down", "as"])
_ASSESSING = frozenset({"i", "'d", "would", "to", "we", "'ll"})
_NO = (["no"], ["nah"], ["naw"], ["nope"])
_WEIGHING = (
    ["let", "me", "think"], ["let", "me", "see"], ["come", "to", "think", "of", "it"], ["half", "asleep"],
    ["what", "was", "it"], *(["what", "did", "i", *put] for put in (
        ["put"], ["use"], ["put", "on"], ["put", "in"], ["fit"], ["go", "with"], ["say"], ["get"],
    )),
)  # fmt: skip
_HOLDING = (["hang", "on"], ["hold", "on"], ["wait"], ["hang", "about"])
_MOMENTS = (["minute"], ["second"], ["sec"], ["tick"], ["moment"], ["mo"])
_PAUSING = (
    *_HOLDING, *_ALONE, ["excuse", "me"], ["pardon", "me"], ["pardon"],
    *([*hold, *one, *moment] for hold in _HOLDING for one in (["a"], ["one"], ["just", "a"]) for moment in _MOMENTS),
)  # fmt: skip
_ADDING = (["should", "say"], ["actually"])
_SORRY_FOR = (["sorry", "about"], ["sorry", "for"], ["sorry", "if"])
_ANSWERED = (["no"], ["yes"], ["none"], ["nil"], ["nope"], ["yep"], ["yeah"], ["aye"])
_WEEKS, _NEXT = frozenset({"week", "weeks", "month", "months", "fortnight", "days"}), 5
_ENDS, _MARKS = (".", "?"), frozenset({",", ".", "?", ";"})
_IN_FRONT = frozenset({"fronts", "LF", "RF", "other_front"})
_HALTS = frozenset({",", "uh", "um", "er", "erm", "eh", "ah", "oh", "hmm", "well", "or", "no", "wait", "sorry"})
_ONLY_SAYS = frozenset(
    {"the", "a", "an", "on", "in", "at", "it", "'s", "is", "that", "they", "'re", "are", "size", "just", "only", ","}
    | {"make", "call", "say", "of", "his", "her", "he", "she"}
)
_PLACING = frozenset({"units", "measures", "totals", "horse_cues", "fillers", "clause_words", "tester_heads"})


def join_cue_sentences(talk: Talk) -> None:
    """ "Pulse bounding in the right front. Sorry. Raised.": a cue alone in its sentence goes with the word behind it.

    Only where nothing but that word is said there and one of its kind was said before; a "no" may answer a question.
    """
    for cue in talk.having("taking_back", "repair"):
        if cue.end >= len(talk.words) or talk.words[cue.end] not in _ENDS or not _all_hesitation(talk, cue):
            continue
        if talk.words[cue.start : cue.end] in _WEIGHING and not _WEEKS.isdisjoint(
            talk.words[cue.end : cue.end + _NEXT]
        ):
            continue  # "Let me see. Six weeks." is the next thing
        opened = max((i + 1 for i in range(cue.start) if talk.words[i] in SENTENCE_ENDS), default=0)
        kinds = _only_of_a_kind(talk, cue.end + 1, sentence_end(talk, cue.end + 1))
        start = window(talk, opened - 1) if opened else 0
        before = {kind_of(m) for m in talk.mentions if start <= m.start < opened and not m.dropped}
        if len(kinds) == 1 and kinds <= before and talk.words[opened - 1] == "." and opened:
            talk.words[cue.end] = ","


def _all_hesitation(talk: Talk, cue: Mention) -> bool:
    """Whether the cue's sentence has nothing before it but other cues and halts."""
    at = cue.start
    while at and talk.words[at - 1] not in SENTENCE_ENDS:
        ahead = talk.mention_ending(at)
        if ahead is not None and ahead.get("taking_back") is not None:
            at = ahead.start
        elif talk.words[at - 1] in _HALTS:
            at -= 1
        else:
            return False
    return True


def _only_of_a_kind(talk: Talk, start: int, end: int) -> set[str]:
    """The kinds of word said there; none where anything else is said."""
    said = [m for m in talk.mentions if start <= m.start < end and not m.dropped]
    kinds = {kind for m in said if (kind := kind_of(m)) is not None}
    claimed = {i for m in said if kind_of(m) is not None or m.is_any(_PLACING) for i in range(m.start, m.end)}
    rest = {talk.words[i] for i in range(start, end) if i not in claimed}
    return kinds if rest <= _ONLY_SAYS else set()


def _weighed(talk: Talk, cue: Mention) -> bool:
    """ "Six nails, let me think, seven": a word of one kind right before and, alone, behind; else it only hesitates."""
    recalls = talk.words[cue.start] == "what"
    before = cue.start - 1 if talk.words[cue.start - 1] in (",", ".") else cue.start
    while before and (talk.words[before - 1] in ("no", ",") or (recalls and talk.words[before - 1] in _HALTS)):
        before -= 1
    begin = cue.end + (talk.words[cue.end : cue.end + 1] == [","])
    begin = _answered(talk, begin) if recalls else begin
    end = next_mark(talk, begin)
    kinds = _only_of_a_kind(talk, begin, end)
    if opened_sentence(talk, cue.start):
        start = window(talk, cue.start)
        told = {kind_of(m) for m in talk.mentions if start <= m.start < cue.start and not m.dropped}
        feet = [m.readings["feet"] for m in talk.having("feet") if start <= m.start < end and not m.dropped]
        if kinds == {"feet"} and len(feet) > 1 and (feet[-2] in _IN_FRONT) != (feet[-1] in _IN_FRONT):
            return False  # "the other hind was reset. Let me see, the front."
        return len(kinds) == 1 and kinds <= told and end < len(talk.words) and talk.words[end] == "."
    ahead = talk.mention_ending(before)
    if ahead is not None and ahead.is_any(("units", "measures", "totals")) and kind_of(ahead) is None:
        ahead = talk.mention_ending(ahead.start)
    if recalls and len(kinds) == 1:  # "two degree wedge pads, what did I put, three"
        start = max(i for i in range(-1, before) if i < 0 or talk.words[i] in _MARKS) + 1
        said = [m for m in talk.mentions if start <= m.start < before and not m.dropped]
        return kinds <= {kind_of(m) for m in said} and not any(m.get("horse") for m in said)
    return ahead is not None and kinds == {kind_of(ahead)}


def _answered(talk: Talk, begin: int) -> int:
    """ "What did I put, three, it was three degree", "…, it was three": of today; where the answer begins."""
    for at in (begin, next_mark(talk, begin) + 1):
        timed = any(m.end <= at and SENTENCE_ENDS.isdisjoint(talk.words[m.end : at]) for m in talk.having("times"))
        if talk.words[at : at + 2] == ["it", "was"] and not timed:
            talk.roles[at + 1] = None
    while talk.words[begin : begin + 1] != [] and talk.words[begin] in _HALTS:
        begin += 1
    return begin


def is_no_cue(talk: Talk, cue: Mention) -> bool:
    """Cues that are none here: the second "no" of "but no, no corn", the "wait" of "she can wait for six"."""
    said = talk.words[cue.start : cue.end]
    if said == ["wrong"] and _AMISS & set(talk.words[max(0, cue.start - 4) : cue.start]):
        return True  # "nothing else wrong"
    led = [word for word in talk.words[max(0, cue.start - 3) : cue.start] if word != ","]
    if led[-1:] == ["yeah"] and SENTENCE_ENDS.issuperset(led[-2:-1]):
        return True  # "yeah nah, off fore, corn" opens the talk
    if said == ["forget", "it"]:
        return talk.words[cue.start - 1] not in (",", ".", "oh", "just")  # "don't let me forget it"
    if said in _WEIGHING:
        return not _weighed(talk, cue)
    if talk.words[cue.start : cue.end + 1] in _SORRY_FOR or (said in _ADDING and _adds(talk, cue)):
        return True
    if "thinking" in said and talk.words[cue.end - 1] != "horse":
        return talk.words[cue.end : cue.end + 1] not in ([], ["."], [","], ["there"])  # "… of his brother coming too"
    if said in _PAUSING and (_two_statements(talk, cue) or _goes_on(talk, cue)):
        return True
    if said in _ALONE:
        marked = (",", "no", "oh") if talk.words[cue.start] != "wait" else (",", "no", "oh", ".")
        if talk.words[cue.start - 1] not in marked or talk.words[cue.end : cue.end + 1] not in ([","], ["."]):
            return True
    if said in _EVERYDAY or talk.words[cue.start : cue.start + 2] in _WAITING:
        before = talk.words[cue.start - 1] if cue.start else "."
        after = talk.words[cue.end] if cue.end < len(talk.words) else "."
        return before not in (",", ".", "no", "uh", "um", "oh", "or") and after not in (",", ".")
    if said == ["should", "be"] and talk.words[cue.start - 1] in ("it", "he", "she", "they"):
        return True
    if said in ASSESSED and cue.start and talk.words[cue.start - 1] in _ASSESSING:
        better = thought_better(talk, cue) and not _against_before(talk, cue)
        return not better  # "today I'd call it grade one" corrects nothing
    if said in ASSESSED and of_another_foot(talk, cue):
        return True
    if said in ASSESSED and _against_before(talk, cue):
        return True  # "two out of five last week, call it one today"
    if said != ["no"]:
        return False
    if answers_in_turn(talk, cue.start):
        return True
    follower = talk.mention_starting(cue.end)
    return (follower is not None and follower.is_any(CLASS_SLOTS) and follower.number is None) or _says_none(talk, cue)


def answers_in_turn(talk: Talk, at: int) -> bool:
    """ "Thrush no, corn yes", "thrush, no, corn, no": findings gone through, each with its answer behind it."""
    asked = talk.mention_ending(at - (talk.words[at - 1] == ",")) if at else None
    after = talk.mention_starting(at + 2) if talk.words[at + 1 : at + 2] == [","] else None
    if asked is None or after is None or not all("findings" in m.readings for m in (asked, after)):
        return False
    answer = after.end + (talk.words[after.end : after.end + 1] == [","])
    return talk.words[answer : answer + 1] in _ANSWERED


def _two_statements(talk: Talk, cue: Mention) -> bool:
    """ "Corn in the near fore, hang on, thrush in the off hind": another thing on another foot takes nothing back."""
    ahead = _last_of_each(talk, window(talk, cue.start), cue.start)
    stopped = cue.end + (talk.words[cue.end : cue.end + 1] == ["."])
    behind = _last_of_each(talk, stopped, sentence_end(talk, stopped))
    return all(ahead) and all(behind) and not any(one == other for one, other in zip(ahead, behind, strict=True))


def _goes_on(talk: Talk, cue: Mention) -> bool:
    """ "Fifty left front and, hang on, fifty two right front", "…, and on the right front, hang on, fifty two"."""
    start, stop = window(talk, cue.start), sentence_end(talk, cue.end)
    feet = [m for m in talk.having("feet") if start <= m.start < stop]
    ahead = [m.get("feet") for m in feet if m.start < cue.start]
    if len(ahead) == len(feet) > 1 and feet[-1].end == cue.start - (talk.words[cue.start - 1] == ","):
        told = [m for m in talk.starting_in(feet[-2].start, stop) if m.number is not None]  # one a foot
        apart = len(told) > 1 and told[0].start < feet[-1].start and told[-1].start > cue.end
        return apart and feet[-2].get("feet") != feet[-1].get("feet")
    if "and" not in talk.words[cue.start - 2 : cue.start]:
        return False
    return 0 < len(ahead) < len(feet) and ahead[-1] != feet[len(ahead)].get("feet")


def _adds(talk: Talk, cue: Mention) -> bool:
    """ "Oh, I should say, near fore's got a corn", "actually she's got a flare as well": one more finding."""
    stop = sentence_end(talk, cue.end)
    findings = [m for m in talk.having("findings") if window(talk, cue.start) <= m.start < stop]
    new = next((m for m in findings if m.start >= cue.end), None)
    if new is None or not {"got", "has", "there"} & set(talk.words[cue.end : new.start]):
        return False
    if talk.words[cue.start] == "actually" and not {"well", "too"} & set(talk.words[new.end : stop]):
        return False
    return all(m.start >= cue.end or m.get("findings") != new.get("findings") for m in findings)


def _last_of_each(talk: Talk, start: int, end: int) -> list[str | None]:
    """The last foot and the last finding told there."""
    told = [m for m in talk.mentions if start <= m.start < end and not m.dropped]
    return [next((m.get(name) for m in reversed(told) if m.get(name)), None) for name in ("feet", "findings")]


def _says_none(talk: Talk, cue: Mention) -> bool:
    """ "Hardener on it, heat, no, none on either front": answers of a thing named alone, and takes nothing back."""
    topic = talk.mention_ending(cue.start - 1) if talk.words[cue.start - 1] == "," else None
    alone = topic is not None and "findings" in topic.readings and _opens(talk, topic)
    return alone and talk.words[cue.end : cue.end + 2] in ([",", "none"], [",", "nothing"])


def _opens(talk: Talk, mention: Mention) -> bool:
    """Whether it opens the memo, or stands behind a comma or a stop."""
    return mention.start == 0 or talk.words[mention.start - 1] in (",", ".")


def _against_before(talk: Talk, cue: Mention) -> bool:
    """Whether the number behind the cue is today's and the one before it is of an earlier time."""
    start, end = window(talk, cue.start), sentence_end(talk, cue.end)
    times = [m for m in talk.having("times") if start <= m.start < end]
    before = any(m.get("times") in ("history", "recent") and m.end <= cue.start for m in times)
    return before and any(m.get("times") == "today" and m.start >= cue.end for m in times)


def is_repair(talk: Talk, run: list[Mention]) -> bool:
    """A lone "no" before a finding is a denial; before a comma, another cue, a number or a foot it takes back."""
    if len(run) > 1 or talk.words[run[0].start : run[0].end] not in _NO:
        return True
    after = talk.words[run[0].end] if run[0].end < len(talk.words) else "."
    follower = talk.mention_starting(run[0].end)
    counted = follower is not None and (follower.number is not None or follower.get("feet") is not None)
    if after == "." and opened_sentence(talk, run[0].start):
        beyond = talk.mention_starting(run[0].end + 1)
        return beyond is not None and (beyond.number is not None or beyond.get("feet") is not None)
    opened = run[0].start == 0 or talk.words[run[0].start - 1] in (",", ".", "uh", "um")
    return after in _STRONG_NEXT or (counted and opened) or _between_two(talk, run[0])


def _between_two(talk: Talk, cue: Mention) -> bool:
    """ "Size two no three", "left front no right front": without commas, between two of one kind on end."""
    old, new = talk.mention_ending(cue.start), talk.mention_starting(cue.end)
    kind = kind_of(old) if old is not None else None
    return kind in ("number", "feet", "severities") and new is not None and kind_of(new) == kind
