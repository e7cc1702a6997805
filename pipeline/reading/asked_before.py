"""Asked and put in its time: "Leather pads? No, that was last time." tells of last time, and takes nothing back."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.questions import SOUGHT
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import Status

_THAT = frozenset({"that", "those", "they", "it", "these"})
_WAS = frozenset({"was", "were", "'d", "had"})
_NO = (["no"], ["nah"], ["nope"])


def of_another_time(talk: Talk, cue: Mention) -> bool:
    """Whether "no" answers a question with the time that it belongs to."""
    asked = cue.start > 0 and talk.words[cue.start - 1] == "?"
    return asked and talk.words[cue.start : cue.end] in _NO and _time_behind(talk, cue.end)


def asked_how(talk: Talk, cue: Mention) -> bool:
    """ "Lame? No, sound.", "Is he sound? No, short on the near fore.": the "no" answers, and takes nothing back."""
    if not cue.start or talk.words[cue.start - 1] != "?" or talk.words[cue.start : cue.end] not in _NO:
        return False
    start = max((i + 1 for i in range(cue.start - 1) if talk.words[i] in SENTENCE_ENDS), default=0)
    end = next((i for i in range(cue.end, len(talk.words)) if talk.words[i] in SENTENCE_ENDS), len(talk.words))
    went = [m.start for m in talk.having("gaits")]
    return any(start <= at < cue.start for at in went) and any(cue.end <= at < end for at in went)


def _time_behind(talk: Talk, at: int) -> bool:
    """ ", that was last time": up to the next comma or stop."""
    at += talk.words[at : at + 1] == [","]
    if at + 2 >= len(talk.words) or talk.words[at] not in _THAT or talk.words[at + 1] not in _WAS:
        return False
    times = [m for m in talk.having("times", "history") if at + 2 <= m.start <= at + 4]
    return bool(times) and "," not in talk.words[at : times[0].start]


def recall_asked(talk: Talk, sentence: list[Segment], previous: list[Segment]) -> None:
    """Give what the sentence before asked about to the earlier time that this one opens with."""
    start = sentence[0].start
    if not previous or talk.words[start : start + 1] not in _NO or talk.words[start - 1 : start] != ["?"]:
        return
    if _time_behind(talk, start + 1):
        for draft in [d for s in previous for d in s.drafts if d.status is Status.PRESENT]:
            draft.status = Status.HISTORY
            draft.dropped = draft.dropped and SOUGHT not in draft.rules
            draft.note("of an earlier time")
