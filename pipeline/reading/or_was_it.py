"""A word asked again and answered, "or was it the bar, it was the bar"; a loose or lost shoe's foot told in the end."""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of, put_in_place
from pipeline.reading.foot_groups import FootGroup
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_ASKED = Sayings("or was it", "or is it", "or did i say", "was it", "or were they", "or was that")
_ANSWERED = Sayings(
    "it was", "it is", "it 's", "no it was", "that was", "that 's it", "they were", "yes it was", "yes", "yeah", "aye"
)
_THE = frozenset({"the", "a", "an", "his", "her", "in", "on", "at", "no", "nah", "yes", "aye", "yeah", "well"})
_KINDS = ("zones", "severities", "feet", "findings", "pads", "shoe_types", "packings", "treatments", "clips")
_CLOSED: tuple[list[str], ...] = ([","], ["."], ["and"], [])
_OPPOSITE = {"medial": "lateral", "lateral": "medial"}
_SOON = 12  # tokens from the question to the place that is meant
_REASON = 10  # tokens
_PLACED = 3  # tokens between two words of one answer
_IT = frozenset({"it", "that", "which"})
_IS = frozenset({"was", "'s", "is"})
_THE_FOOT = frozenset({"the", "his", "her", "actually", "really", "only", "in", "fact"})
_TURNED_OUT = (["turned", "out", "to", "be"], ["turns", "out", "to", "be"], ["turned", "out"], ["turns", "out"])
_FOUND = frozenset({
    "that", "'s", "was", "is", "bare", "missing", "gone", "off", "lost", "loose", "sprung", "without", "right",
    "enough", "had", "has", "come", "the", "which", "all", "along", "after", "alone", "by", "itself", "of", "course",
})  # fmt: skip
_SHOE = frozenset({"shoe_state"})


def answer_own_question(talk: Talk) -> None:
    """Let the answer stand in place of the word of its kind that was said before the question."""
    for at, form in talk.turns(_ASKED):
        asked = _behind(talk, at + len(form))
        if at == 0 or talk.words[at - 1] != "," or asked is None:
            continue
        start = asked.end
        while start < len(talk.words) and (talk.words[start] in (",", "?") or talk.words[start] in _THE):
            start += 1
        if talk.words[asked.end : asked.end + 1] == ["?"] and _another_of_its_kind(talk, asked, at):
            talk.words[asked.end] = ","  # asked of the place or the degree alone: the finding is there
        start = _behind_the_reason(talk, start)
        answer = _answer(talk, asked, start)
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
            put_in_place(talk, before[-1], answer, kind)


def deny_own_question(talk: Talk) -> None:
    """ "Was it the outside? No. That wall loss is the inside quarter.": the place named behind was meant at first."""
    for at, form in talk.turns(_ASKED):
        asked = _behind(talk, at + len(form))
        side = asked.get("zones") if asked is not None else None
        behind = talk.words[asked.end : asked.end + 2] if asked is not None else []
        if asked is None or side not in _OPPOSITE or behind not in (["?", "no"], ["?", "nah"]):
            continue
        zones = [m for m in talk.having("zones") if m is not asked]
        said = [m for m in zones if m.end <= at and m.readings["zones"].startswith(side)]
        meant = [m for m in zones if asked.end <= m.start < asked.end + _SOON]
        meant = [m for m in meant if m.readings["zones"].startswith(_OPPOSITE[side])]
        if said and meant:
            said[-1].readings["zones"] = said[-1].readings["zones"].replace(side, _OPPOSITE[side])
            for mention in [m for m in talk.mentions if at <= m.start < asked.end + 2]:
                mention.dropped = True


def _answer(talk: Talk, asked: Mention, start: int) -> Mention | None:
    """The word that stands in the answer, which may be the one just asked: "was it the off, it was"."""
    said = _ANSWERED.at(talk.words, start)
    if not said:
        again = _behind(talk, start)
        kinds = [k for k in ("zones", "severities") if again is not None and again.get(k) is not None]
        return again if again is not None and any(again.get(k) == asked.get(k) for k in kinds) else None
    closed = talk.words[asked.end : asked.end + 1] in ([","], ["?"])
    answer = _behind(talk, start + len(said)) if closed else None
    if answer is None and talk.words[start + len(said) : start + len(said) + 1] in _CLOSED:
        return asked  # "he'd cast the off hind and, wait now, was it the off, it was"
    return answer


def _another_of_its_kind(talk: Talk, asked: Mention, at: int) -> bool:
    """ "At the toe, or was it the quarter?": behind a word of its kind in the same sentence."""
    start = at
    while start > 0 and talk.words[start - 1] not in SENTENCE_ENDS:
        start -= 1
    before = [m for m in talk.mentions if start <= m.start and m.end <= at and not m.dropped]
    found = any(m.get("findings") or m.get("tester_responses") for m in before)
    return found and any(asked.get(kind) and m.get(kind) for m in before for kind in ("zones", "severities", "feet"))


def _behind_the_reason(talk: Talk, start: int) -> int:
    """ "… or was it the quarter, no, I'm looking at my notes, it was …": the answer stands behind what says why."""
    if talk.words[start : start + 1] != ["i"]:
        return start
    end = next((i for i in range(start, start + _REASON) if talk.words[i : i + 1] == [","]), start)
    named = [m for m in talk.mentions if start <= m.start < end and kind_of(m) is not None]
    return start if named or not _ANSWERED.at(talk.words, end + 1) else end + 1


def _behind(talk: Talk, at: int) -> Mention | None:
    while at < len(talk.words) and talk.words[at] in _THE:
        at += 1
    mention = next((m for m in talk.mentions if m.start == at and not m.dropped), None)
    return mention if mention is not None and kind_of(mention) is not None else None


def foot_in_the_end(talk: Talk, sentence: list[Segment], groups: dict[int, list[FootGroup]]) -> None:
    """Give a shoe told without a foot the one that "it was", or "turned out to be", behind it in the sentence."""
    told = [d for s in sentence for d in s.drafts if d.slot in _SHOE]
    for draft in [d for d in told if "foot: named beside it" not in d.rules]:
        behind = [s for s in sentence if s.index > draft.segment.index and s.horse == draft.segment.horse]
        meant = [g for s in behind if not s.drafts and (g := _it_was(talk, s, groups.get(s.index, []))) is not None]
        if meant:
            draft.feet, draft.foot_carried = meant[-1].feet, False
            draft.note("foot: it turned out to be")
        again = [d for d in told if (d.slot, d.value) == (draft.slot, draft.value) and d.start > draft.start and d.feet]
        if not draft.feet and again:
            draft.drop("said again with its feet")


def _it_was(talk: Talk, segment: Segment, found: list[FootGroup]) -> FootGroup | None:
    """The foot of "it was the off hind", "it's the near fore that's bare"; not of "it was down as the off fore"."""
    if len(found) != 1 or found[0].anaphor:
        return None
    words = talk.words[segment.start : found[0].start]
    led = words[:1] != [] and words[0] in _IT
    was = led and words[1:2] != [] and words[1] in _IS
    words = words[led + was :]
    turned = next((len(form) for form in _TURNED_OUT if words[: len(form)] == form), 0)
    words, led = words[turned:], was or turned > 0
    behind = set(talk.words[found[0].end : segment.end])
    return found[0] if led and set(words) <= _THE_FOOT and behind <= _FOUND else None
