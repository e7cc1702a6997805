"""A word asked again aloud and answered at once: "corn at the medial heel, or was it the bar, it was the bar"."""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of, put_in_place
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_ASKED = Sayings("or was it", "or is it", "or did i say", "was it", "or were they", "or was that")
_ANSWERED = Sayings(
    "it was", "it is", "it 's", "no it was", "that was", "that 's it", "they were", "yes it was", "yes", "yeah", "aye"
)
_THE = frozenset({"the", "a", "an", "his", "her", "in", "on", "at", "no", "nah", "yes", "aye", "yeah", "well"})
_KINDS = ("zones", "severities", "feet", "findings", "pads", "shoe_types", "packings", "treatments", "clips")
_CLOSED: tuple[list[str], ...] = ([","], ["."], ["and"], [])
_PLACED = 3  # tokens between two words of one answer


def answer_own_question(talk: Talk) -> None:
    """Let the answer stand in place of the word of its kind that was said before the question."""
    for at, form in talk.turns(_ASKED):
        asked = _behind(talk, at + len(form))
        if at == 0 or talk.words[at - 1] != "," or asked is None:
            continue
        start = asked.end
        while start < len(talk.words) and (talk.words[start] in (",", "?") or talk.words[start] in _THE):
            start += 1
        said = _ANSWERED.at(talk.words, start)
        answer = (
            _behind(talk, start + len(said))
            if said and talk.words[asked.end : asked.end + 1] in ([","], ["?"])
            else None
        )
        if answer is None and said and talk.words[start + len(said) : start + len(said) + 1] in _CLOSED:
            answer = asked  # "he'd cast the off hind and, wait now, was it the off, it was"
        kind = next((k for k in _KINDS if asked.get(k) and answer is not None and answer.get(k)), None)
        before = [m for m in talk.mentions if kind and m.end < at and m.get(kind) and not m.dropped]
        if answer is None or kind is None or not before or SENTENCE_ENDS & set(talk.words[before[-1].end : at]):
            continue
        asked.dropped = True
        for cue in [m for m in talk.having("taking_back") if before[-1].end <= m.start < at and answer is asked]:
            cue.dropped = True
        if kind == "feet":
            name = str(answer.readings["feet"])
            end = before[-1].readings["feet"][-1]
            before[-1].readings["feet"] = name[-1] + end if name.startswith("bare_") else name
            answer.dropped = True
        else:
            put_in_place(before[-1], answer, kind)


def _behind(talk: Talk, at: int) -> Mention | None:
    while at < len(talk.words) and talk.words[at] in _THE:
        at += 1
    mention = next((m for m in talk.mentions if m.start == at and not m.dropped), None)
    return mention if mention is not None and kind_of(mention) is not None else None
