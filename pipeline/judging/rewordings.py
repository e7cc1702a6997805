"""Doubtful wordings in place of what was heard, on which no fact rests: a foot, a turn, a thing to watch."""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.record import SURE_SUPPORT, Flag, FlagKind, Transcript, Visit, Word


def doubtful_rewordings(visits: Sequence[Visit], transcript: Transcript) -> list[list[Flag]]:
    """For every visit the flags of the doubtful wordings nearest to it.

    Facts and horses that rest on such a wording tell it themselves.
    """
    flags: list[list[Flag]] = [[] for _ in visits]
    told = [span for visit in visits for span in _spans(visit)]
    for run in _runs(transcript.words):
        start, end = run[0].start, run[-1].end
        if visits and not any(first < end and start < last for first, last in told):
            flags[_nearest(visits, start, end)].append(_flag(transcript, run))
    return flags


def reworded(heard: str, words: Sequence[Word]) -> str:
    """The sentence that puts a doubtful wording before a person."""
    together = " ".join(word.text.strip(" ,.;:?!") for word in words)
    return f"Heard “{heard}”, read as {together}; please listen."


def _spans(visit: Visit) -> list[tuple[int, int]]:
    horse = [flag.span for flag in visit.flags if flag.kind is FlagKind.HORSE]
    return [fact.span for fact in visit.facts] + horse


def _runs(words: Sequence[Word]) -> list[list[Word]]:
    """Neighbouring words that stand for the same thing heard."""
    runs: list[list[Word]] = []
    before: Word | None = None
    for word in words:
        if word.support is not None and word.support < SURE_SUPPORT:
            if runs and before is not None and (before.heard, before.support) == (word.heard, word.support):
                runs[-1].append(word)
            else:
                runs.append([word])
        before = word
    return runs


def _nearest(visits: Sequence[Visit], start: int, end: int) -> int:
    """The visit whose words lie closest to a stretch of the transcript."""

    def away(index: int) -> int:
        return min((max(first - end, start - last) for first, last in _spans(visits[index])), default=end)

    return min(range(len(visits)), key=away)


def _flag(transcript: Transcript, run: Sequence[Word]) -> Flag:
    start, end = run[0].start, run[-1].end
    return Flag(
        kind=FlagKind.UNCLEAR_SPEECH,
        reason=reworded(run[0].heard or "", run),
        quote=transcript.text[start:end],
        start=run[0].start_s,
        end=run[-1].end_s,
        span=(start, end),
    )
