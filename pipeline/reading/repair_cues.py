"""Words that may take something back, and whether they do: the "no" of "no corn", the "wait" of "she can wait"."""

from __future__ import annotations

from pipeline.reading.exchanges import of_another_foot, opened_sentence, sentence_end, thought_better, window
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.vocabulary import CLASS_SLOTS

_STRONG_NEXT = frozenset({
    ",", "wait", "make", "sorry", "i", "that's", "that", "scratch", "hang", "hold", "actually", "strike", "it",
    "uh", "um", "my", "correction", "not",
})  # fmt: skip
_EVERYDAY = (["wait"], ["wrong"], ["rather"], ["actually"], ["pardon"], ["sorry"])
_AMISS = frozenset({"nothing", "anything", "something", "much", "what", "owt", "nowt", "little", "never", "nobody"})
ASSESSED = (["call", "it"], ["make", "it"], ["put", "it", "down", "as"])
_ASSESSING = frozenset({"i", "'d", "would", "to", "we", "'ll"})
_NO = (["no"], ["nah"], ["naw"], ["nope"])


def is_no_cue(talk: Talk, cue: Mention) -> bool:
    """Cues that are none here: the second "no" of "but no, no corn", the "wait" of "she can wait for six"."""
    if talk.words[cue.start : cue.end] == ["wrong"] and _AMISS & set(talk.words[max(0, cue.start - 4) : cue.start]):
        return True  # "nothing else wrong"
    if talk.words[cue.start : cue.end] == ["forget", "it"]:
        return talk.words[cue.start - 1] not in (",", ".", "oh", "just")  # "don't let me forget it"
    if talk.words[cue.start : cue.end] in _EVERYDAY:
        before = talk.words[cue.start - 1] if cue.start else "."
        after = talk.words[cue.end] if cue.end < len(talk.words) else "."
        return before not in (",", ".", "no", "uh", "um", "oh", "or") and after not in (",", ".")
    if talk.words[cue.start : cue.end] == ["should", "be"] and talk.words[cue.start - 1] in ("it", "he", "she", "they"):
        return True
    if talk.words[cue.start : cue.end] in ASSESSED and cue.start and talk.words[cue.start - 1] in _ASSESSING:
        better = thought_better(talk, cue) and not _against_before(talk, cue)
        return not better  # "today I'd call it grade one" corrects nothing
    if talk.words[cue.start : cue.end] in ASSESSED and of_another_foot(talk, cue):
        return True
    if talk.words[cue.start : cue.end] in ASSESSED and _against_before(talk, cue):
        return True  # "two out of five last week, call it one today"
    if talk.words[cue.start : cue.end] != ["no"]:
        return False
    follower = talk.mention_starting(cue.end)
    return (follower is not None and follower.is_any(CLASS_SLOTS) and follower.number is None) or _says_none(talk, cue)


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
    return after in _STRONG_NEXT or (counted and opened)
