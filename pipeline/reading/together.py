"""Several horses told at once: "Tally, Buck and Sable. All three trimmed.", "Tally and Buck, both reset in front"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.roster_names import NameSpan
from pipeline.reading.sayings import Sayings
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

GROUP = Sayings(
    "all three", "all four", "all of them", "all of these", "all", "both of them", "both", "every one of them",
    "every one", "each of them", "each one", "everybody", "everyone", "they all", "they both", "the lot of them",
    "the pair of them", "the three of them", "the two of them",
)  # fmt: skip
_TRADE = frozenset({*CLASS_SLOTS, "feet"})
_LIGHT = frozenset(
    {"and", ",", "then", "so", "okay", "ok", "right", "well", "did", "done", "today", "the", "horses", "uh"}
)
_BEHIND = frozenset(
    {"are", "were", "both", "all", "each", "every", "get", "got", "have", "had", "is", "was", ",", "i", "we"}
)
_MEASURED = frozenset({*CLASS_SLOTS, "measures"})
_SHOEING = ("work", "shoe_types", "shoe_materials", "pads", "packings", "clips", "traction", "measures", "nail_lines")
_ONE = frozenset({"he", "she", "his", "her", "him", "i", "but", "lame"})
_ANY_OF = Sayings("any of the")
_COUNTS = {"two": 2, "pair": 2, "three": 3, "four": 4, "five": 5}
_SEVERAL = 2
_COUNTED_FIRST = {
    "both": 2, "a pair of": 2, "the pair of": 2, "two": 2, "the two of them": 2, "all three": 3, "three": 3,
    "all four": 4, "four": 4,
}  # fmt: skip
_ALL_OF_THEM = frozenset({"all of them", "every one of them", "the lot of them", "each of them", "every one"})
_ALL_SO_MANY = frozenset({
    ("all three", 3), ("the three of them", 3), ("all three of them", 3), ("all five", 5), ("both of them", 2),
    ("the pair of them", 2), ("the two of them", 2), ("all four of them", 4),
})  # fmt: skip
_A_DAY = frozenset({"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "tomorrow", "week"})
_ON_A_DAY = _A_DAY | {
    "'s", "is", "'ll", "will", "be", "next", "on", "for", "in", "instead", "not", "till", "until", "to", "the", "get",
    "getting", "done", "booked", "down", "coming", "having", "it", "i", "'m", "doing", "do", "now",
}  # fmt: skip
_CLAUSE = frozenset({",", "and", "but", "so", "because", *SENTENCE_ENDS})
_LEAD_WITHIN = 4  # words of a sentence that count its horses
_WAITS = 2  # sentences that may pass between the names and what is said of them all


def told_together(talk: Talk, spans: list[NameSpan]) -> dict[int, list[int]]:
    """For each segment that is said of several horses, their indices."""
    together: dict[int, list[int]] = {}
    waiting, shared, since = list[int](), list[int](), 0
    here = here_today(talk, spans, 1 + max((s.horse for s in spans), default=-1))
    for sentence in talk.sentences():
        behind = _listed_behind(talk, sentence, spans)
        if behind:
            together.update(_count_horses(talk, sentence, behind))
            waiting, shared, since = [], behind, 1
            continue
        listed, end = _listed(talk, sentence, spans)
        named = [s for s in spans if sentence[0].start <= s.start < sentence[-1].end]
        several = len(named) == len(listed) >= _SEVERAL
        told = several and any(m.is_any(_TRADE) for s in sentence for m in s.mentions)
        counted = _of_so_many(talk, sentence)
        everyone = [h for h in here if any(s.horse == h and s.start < sentence[0].start for s in spans)]
        if counted is not None and not named and len(everyone) == counted:
            together.update(dict.fromkeys([s.index for s in sentence], everyone))
            _horses_not_feet(sentence)
        elif len(everyone) >= _SEVERAL and _all_back(talk, sentence):
            first = min((s.start for s in named), default=sentence[-1].end)
            together.update({s.index: everyone for s in sentence if s.end <= first})
        elif told and _goes_on(talk, end):
            together.update(dict.fromkeys([s.index for s in sentence if s.end > end], listed))
            _free_of_feet(talk, sentence, end)
            waiting, shared = [], listed
        elif several and not told:
            waiting, since = listed, 0
        elif waiting and not named and _of_all_waiting(talk, sentence, len(waiting)):
            together.update(dict.fromkeys([s.index for s in sentence], waiting))
            since, shared = 0, waiting
        elif shared and not named and only_shoeing(talk, sentence):
            together.update(dict.fromkeys([s.index for s in sentence], shared))
        elif named or since >= _WAITS:
            waiting = []
        if not any(s.index in together for s in sentence):
            shared = []
        since += 1
    return together


def here_today(talk: Talk, spans: list[NameSpan], horses: int) -> list[int]:
    """The horses without one that is only told to be another day's, "Sable's next week": the rest are "the pair"."""
    everyone = list(range(horses))
    if horses <= _SEVERAL or not (talk.says(_A_DAY) or talk.having("asides", "not_today")):
        return everyone
    here = [h for h in everyone if not _of_another_day(talk, [s for s in spans if s.horse == h], h)]
    return here if len(here) >= _SEVERAL else everyone


def _of_another_day(talk: Talk, spans: list[NameSpan], horse: int) -> bool:
    """Whether all that is told of the horse is that it is another day's."""
    told = [d for s in talk.segments if s.horse == horse for d in s.drafts if d.slot != "next_visit_weeks"]
    for span in spans if not any(not d.dropped for d in told) else ():
        stop = next_mark(talk, span.end, _CLAUSE)
        words = talk.words[span.end : stop]
        away = any(m.get("asides") == "not_today" for m in talk.starting_in(span.end, stop))
        day = not _A_DAY.isdisjoint(words) and (words[-1] != "week" or words[-2:] == ["next", "week"])
        if not away and not (day and _ON_A_DAY.issuperset(words)):
            return False
    return bool(spans) and all(d.dropped for d in told)


def _of_all_waiting(talk: Talk, sentence: list[Segment], count: int) -> bool:
    """Whether the sentence is said of all the horses named before; its word for all is then no word for feet."""
    if group_at(talk, sentence[0].start):
        _free_of_feet(talk, sentence, sentence[0].start)
        return True
    if _done_to_all(talk, sentence, count):
        _horses_not_feet(sentence)
        return True
    return False


def _done_to_all(talk: Talk, sentence: list[Segment], count: int) -> bool:
    """ "Trimmed all three.": what was done opens the sentence, and as many horses as were named close it."""
    work = talk.mention_starting(sentence[0].start)
    if work is None or work.get("work") is None or len(sentence) > 1:
        return False
    rest = " ".join(talk.words[work.end : sentence[0].end])
    return rest in _ALL_OF_THEM or (rest, count) in _ALL_SO_MANY


def _horses_not_feet(sentence: list[Segment]) -> None:
    for mention in [m for s in sentence for m in s.mentions if m.get("feet") in ("all", "any", "those_three")]:
        mention.dropped = True


def _listed_behind(talk: Talk, sentence: list[Segment], spans: list[NameSpan]) -> list[int]:
    """ "Both trimmed all round, Tally and Buck.": the horses that close a sentence which counted them first."""
    named = [s for s in spans if sentence[0].start <= s.start < sentence[-1].end]
    if len(named) < _SEVERAL or named[-1].end != sentence[-1].end:
        return []
    gaps = [talk.words[one.end : other.start] for one, other in pairwise(named)]
    lead = talk.words[sentence[0].start : named[0].start]
    counted = next((n for form, n in _COUNTED_FIRST.items() if _holds(lead[:_LEAD_WITHIN], form)), None)
    told = any(m.is_any(_SHOEING) for s in sentence for m in s.mentions if m.start < named[0].start)
    listed = all(gap in ([","], ["and"], [",", "and"], ["&"]) for gap in gaps)
    horses = list(dict.fromkeys(s.horse for s in named))
    joined = lead[-1:] in ([","], ["was"], ["is"], ["'s"], ["were"], ["are"], [":"])
    return horses if told and listed and joined and counted == len(horses) else []


def _holds(words: list[str], form: str) -> bool:
    return f" {form} " in f" {' '.join(words)} "


def _count_horses(talk: Talk, sentence: list[Segment], horses: list[int]) -> dict[int, list[int]]:
    """ "Both trimmed all round": with feet named too, the word for all means the horses."""
    feet = [m for s in sentence for m in s.mentions if m.get("feet")]
    for mention in [m for m in feet if talk.words[m.start] in ("both", "all") and m.start <= sentence[0].start + 1]:
        if mention.get("feet") in ("pair_in_hand", "those_three", "any"):
            mention.dropped = True
    return dict.fromkeys([s.index for s in sentence], horses)


def _all_back(talk: Talk, sentence: list[Segment]) -> bool:
    """ "All back in eight weeks": weeks for every horse that was named."""
    if not group_at(talk, sentence[0].start):
        return False
    timed = any(m.get("units") in ("week", "fortnight", "month") for s in sentence for m in s.mentions)
    told = any(
        m.is_any(CLASS_SLOTS.keys()) or m.get("measures") not in (None, "weeks") for s in sentence for m in s.mentions
    )
    return timed and not told


def _of_so_many(talk: Talk, sentence: list[Segment]) -> int | None:
    """ "No laminitis in any of the three": as many horses as were named."""
    for at, words in _ANY_OF.within(talk.words, sentence[0].start, sentence[-1].end - 2):
        count = _COUNTS.get(talk.words[at + 3]) if at + len(words) < len(talk.words) else None
        if count is not None:
            return count
    return None


def only_shoeing(talk: Talk, sentence: list[Segment]) -> bool:
    """ "Six nails each. Trimmed behind.": goes on about the shoeing of all, with no word of one of them."""
    words = set(talk.words[sentence[0].start : sentence[-1].end])
    told = [m for s in sentence for m in s.mentions if m.is_any(_MEASURED)]
    return bool(told) and all(m.is_any(_SHOEING) for m in told) and not words & _ONE


def _listed(talk: Talk, sentence: list[Segment], spans: list[NameSpan]) -> tuple[list[int], int]:
    """The horses named at the head of the sentence with nothing but commas between, and the token behind the last."""
    horses: list[int] = []
    end = 0
    for span in [s for s in spans if sentence[0].start <= s.start < sentence[-1].end]:
        gap = talk.words[end if horses else sentence[0].start : span.start]
        opened = not horses and not any(
            m.is_any(CLASS_SLOTS.keys()) for s in sentence for m in s.mentions if m.start < span.start
        )
        if not (set(gap) <= _LIGHT or (opened and len(gap) <= len(_LIGHT) and gap[-1:] == [","])):
            break
        horses.append(span.horse)
        end = span.end
    return list(dict.fromkeys(horses)), end


def _goes_on(talk: Talk, end: int) -> bool:
    """Whether what follows the names can be said of all: "are both reset", ", every one trimmed", ", trims"."""
    if talk.words[end : end + 1] == [","]:
        behind = talk.mention_starting(end + 1)
        work = behind is not None and behind.get("work") is not None
        return work or group_at(talk, end + 1) > 0 or talk.words[end + 1 : end + 3] == ["same", "job"]
    return bool(_BEHIND & set(talk.words[end : end + 1]))


def group_at(talk: Talk, start: int) -> int:
    """How many words at the token speak of all the horses; 0 when none do."""
    return len(GROUP.at(talk.words, start))


def _free_of_feet(talk: Talk, sentence: list[Segment], start: int) -> None:
    """ "Every one of them reset in front": with feet named behind, the word for all means the horses."""
    at = start + 1 if talk.words[start : start + 1] == [","] else start
    span = range(at, at + group_at(talk, at))
    feet = [m for s in sentence for m in s.mentions if m.get("feet")]
    for mention in [m for m in feet if m.start in span and any(o.start >= span.stop for o in feet)]:
        mention.dropped = True
