"""Horses told in one breath: "…, seven weeks, Ned, barefoot trim all round" has a full stop before Ned.

Recognisers write a comma where a flat voice made a stop. A name opens by what stands around it, not by the mark before.
"""

from __future__ import annotations

from collections.abc import Sequence

from pipeline.reading.mentions import Mention
from pipeline.reading.name_base import KNOWN_LIKENESS
from pipeline.reading.name_words import HORSE_WORDS, NEVER_NAMES
from pipeline.reading.opening import set_beside, turns_on
from pipeline.reading.segments import MARKS, TRADE, WEEKLY, Clauses
from pipeline.reading.sounds import likeness
from pipeline.reading.talk import Talk
from pipeline.reading.together import GROUP, group_at
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.whose import COLOURS, KIN
from pipeline.record import RosterHorse

_LITTLE = frozenset({"horse_cues", "fillers", "taking_back"})
_TURNS = frozenset(
    {"then", "next", "now", "last", "lastly", "finally", "back", "over", "onto", "after", "second", "third", "fourth"}
)
_LEADS = _TURNS | {
    *("and", "oh", "so", "is", "'s", "was", "a", "an", "the", "there", "of", "to", "on", "up", "i", "forgot", "one"),
    *("right", "okay", "ok", "well", "also", "as", "for", "going", "moving", "that", "this", "it", "say", "meant"),
    *("thing", "more", "his", "her", "mate", "other", "first", "out", "did", "we", "got", "had", "have", "left", "add"),
    *("with", "put", "down"),
    *("anyway", "old", "wee", "big", "little", "young", "good", "poor", "whereas", "but", "while", "meanwhile", "went"),
    *("stall", "box", "pen", "number", "what", "else", "not", "least", "leave", "two", "three", "about"),
    *("sorry", "no", "just", "hang", "wait"),
}  # fmt: skip
_DESCRIBING = HORSE_WORDS | COLOURS | {"the", "a", "an", "big", "little", "old", "young", "wee", "other", "one", "mate"}
_DESCRIBING = _DESCRIBING | KIN | {"fella", "fellow", "lad", "girl", "boy", "lady"}
_COMPARED = frozenset({"as", "like", "than", "unlike", "by", "from", "not", "near", "beside", "with", "about", "for"})
_FOR = (["as", "for"], ["now", "for"], ["down", "for"], ["thing", "about"])
_IT_WAS = frozenset({"it", "i", "he", "she", ",", "put"})  # "for Buck it was new shoes", "with Buck, I trimmed"
_CUES = frozenset(
    ["first", "next", "then", "last", "again", "too", "also", "now", "today", "finally", "after", "here", "as", "so"]
)
_VERBS = frozenset([
    "it", "he", "she", "i", "'s", "is", "was", "has", "had", "got", "gets", "needs", "needed", "lost", "threw", "cast",
    "stood", "went", "came", "goes", "can", "wears", "wore", "shows", "showed", "stands", "only", "just", "will", "'ll",
    "'d", "pulled", "sprung", "tore", "trotted", "jogged", "walked", "looks", "forges", "overreaches", "interferes",
    "moved", "moves",
])  # fmt: skip
_ARTICLES = frozenset({"the", "a", "an", "for"})  # "then Buck the bay", "back to Buck a second"
_OF_HIM = (["he"], ["she"], ["who"], ["his"], ["hers"])
_MOVES = frozenset({"turned", "came", "walked", "stood", "gave", "took", "wanted", "would", "could", "did", "behind"})
_OWNED = frozenset([
    "owner", "owners", "rider", "groom", "trainer", "stall", "box", "stable", "paddock", "field", "girl", "lad", "lady",
    "people", "saddle", "rug", "truck", "trailer", "lorry", "feed", "hay", "mum", "mother", "vet", "name",
])  # fmt: skip
_TAKEN_BACK = frozenset({"no", "nah", "sorry", "meant", "actually"})  # "eight weeks, no, Buck can go ten"
_POINTING = (["that", "'s"], ["that", "was"], ["it", "'s"], ["it", "was"])  # "both reset, that's Tally and Buck."
_SMALL_FOLLOWERS = frozenset({"'s", "first", "next", "again", "then", "is", "was", "has", "had", "in", "lost", "got"})
SMALL_LIKENESS = 0.88
_LONG = 5  # letters of a name that may stand in small ones
_LONGEST_LEAD = 6
_CLAUSES_AHEAD = 3


def part_horses(talk: Talk, roster: Sequence[RosterHorse]) -> None:
    """Read the comma before a name that opens another horse's part as the full stop that it was."""
    _Parting(talk, roster).carry_out()


def small_opening(talk: Talk, at: int) -> bool:
    """Whether a word in small letters stands where a horse's part opens: "…, goana is dead lame"."""
    behind = talk.words[at + 1] if at + 1 < len(talk.words) else "."
    if len(talk.words[at]) < _LONG or behind not in _SMALL_FOLLOWERS:
        return False
    before = talk.words[at - 1] if at else "."
    if before in _TURNS and at > 1:
        before = talk.words[at - 2]
    return before in MARKS


def small_openings(talk: Talk) -> frozenset[int]:
    """The words in small letters at which a horse's part may open."""
    followed = [at - 1 for at in talk.where(_SMALL_FOLLOWERS) if at and len(talk.words[at - 1]) >= _LONG]
    return frozenset(at for at in followed if small_opening(talk, at))


class _Parting(Clauses):
    """One memo's names, and its mentions by their first token."""

    def __init__(self, talk: Talk, roster: Sequence[RosterHorse]) -> None:
        super().__init__(talk)
        self._named = {m.start: m for m in talk.having("horse")}
        self._names = sorted([*self._named.values(), *self._guessed(roster)], key=lambda m: m.start)
        self._named = {m.start: m for m in self._names}

    def _guessed(self, roster: Sequence[RosterHorse]) -> list[Mention]:
        """Words behind a comma that sound like a name of the roster, or that a turn of the talk leads to."""
        tokens, found = self.talk.tokens, []
        for at in sorted({i for i, large in enumerate(tokens.large) if large} | small_openings(self.talk)):
            if tokens.little[at] or tokens.marks[at] or tokens.lowers[at] in NEVER_NAMES:
                continue
            head, large = self.back(at, MARKS), tokens.large[at]
            if not head or self.words[head - 1] != "," or not self._leads(head, at):
                continue
            if any(at in m.literal for m in self.talk.mentions if not m.dropped):
                continue
            best = max((likeness(tokens.texts[at], h.name) for h in roster), default=0.0)
            turned = large and bool(_TURNS & set(self.words[head:at]))
            if turned or best >= (KNOWN_LIKENESS if large else SMALL_LIKENESS):
                name = max((h.name for h in roster), key=lambda n: likeness(tokens.texts[at], n), default="")
                horse = name if best >= KNOWN_LIKENESS else tokens.lowers[at]
                found.append(Mention(at, at + 1, (at,), {"horse": horse}))
        return found

    def carry_out(self) -> None:
        """Put a full stop for every comma before a name that opens, in the order of the names."""
        current, last = "", ""
        for name in self._names:
            horse = name.readings["horse"]
            cut = None if horse == current == last else self._cut(name)
            if cut is not None:
                self.words[cut] = "."
            if cut is not None or not current or self._heads(name):
                current = horse
            last = horse
        for name in self._names:
            if self._goes_on_about_him(name):
                self.words[name.end] = ","
        for at in [i for i in self.talk.where(GROUP.first_words) if i and self.words[i - 1] == ","]:
            if self._all_back(at - 1):
                self.words[at - 1] = "."

    def _goes_on_about_him(self, name: Mention) -> bool:
        """ "Six weeks for everybody except Buck. He can go eight.": the full stop in one statement."""
        left_out = self.words[name.start - 1 : name.start] in (["except"], ["bar"], ["but"])
        end = self.ahead(name.end + 1, MARKS)
        stopped = self.words[name.end : name.end + 1] == ["."] and self.words[name.end + 1 : name.end + 2] in _OF_HIM
        return left_out and stopped and self._only_weeks(name.end + 1, end)

    def _all_back(self, comma: int) -> bool:
        """ "…, hinds trimmed, all back in seven weeks": weeks of all the horses stand for themselves."""
        grouped = group_at(self.talk, comma + 1)
        if not grouped:
            return False
        start, end = self.back(comma, SENTENCE_ENDS), self.ahead(comma + 1, MARKS)
        return self.traded(start, comma) and self.weekly(comma + 1 + grouped, end)

    def _heads(self, name: Mention) -> bool:
        """Whether the name opens as it stands: at the head of a sentence or of a clause."""
        begins = self.words[name.start - 1 : name.start] == [","] and not self._listed(name.start - 1)
        head = self.back(name.start, SENTENCE_ENDS)
        return (begins or self._leads(head, name.start)) and not self._only_spoken_of(name.end)

    def _cut(self, name: Mention) -> int | None:
        """The comma that was a full stop before the name, None where the name opens nothing or has its stop."""
        head = self.back(name.start, MARKS)
        if not head or self.words[head - 1] != "," or not self._leads(head, name.start):
            return None
        comma = head - 1
        start = self.back(comma, SENTENCE_ENDS)
        while (before := self.back(comma, MARKS)) > start and before < comma and self._leads(before, comma):
            comma = before - 1
        lead = self.words[comma + 1 : name.start]
        turned = bool(_TURNS & set(lead))
        if self._leads(start, comma) or self._listed(comma) or not self.told(0 if turned else start, comma):
            return None
        end = self._list_end(name)
        closed = self.ahead(end, MARKS) == end and self.words[end : end + 1] != [","]
        if self._only_spoken_of(end) or (_TAKEN_BACK & set(lead) and not turned):
            return None
        if lead[-2:] in _POINTING and closed:
            return None
        if self._weeks(end):
            return comma if not (self._weeks_before(comma) or self._measure(comma)) else None
        if not turned and self.words[end : end + 1] != [","] and self._by_name(start, comma):
            return None
        if set_beside(self.talk, name) is not None:
            return comma
        return comma if self._follows(end, turned, comma + 1 < name.start) else None

    def _leads(self, start: int, end: int) -> bool:
        """Whether the tokens only lead to a name: "and then", "oh, going back to", "the other one, the bay"."""
        words = self.words[start:end]
        little = [m for at in range(start, end) for m in self.starting.get(at, ()) if m.is_any(_LITTLE)]
        allowed = {i for m in little for i in m.literal}
        phrased = any(m.end == end and m.end - m.start > 1 for m in little)  # "sticking with Buck"
        compared = bool(words) and words[-1] in _COMPARED and not phrased and not self._given(start, end)
        if len(words) > _LONGEST_LEAD or compared:
            return False
        return all(i in allowed or self.words[i] in _LEADS | _DESCRIBING | {","} for i in range(start, end))

    def _given(self, start: int, end: int) -> bool:
        """ "As for Buck", "for Buck it was new shoes", "with Buck, I trimmed the hinds": he is what is told of."""
        words, name = self.words[start:end], self._named.get(end)
        alone = words in (["for"], ["with"], ["about"], ["and", "for"], ["and", "with"])
        behind = self.words[name.end : name.end + 1] if name is not None else []
        return words[-2:] in _FOR or (alone and bool(behind) and behind[0] in _IT_WAS)

    def _listed(self, comma: int) -> bool:
        """Whether the clause before the comma is a name and nothing else: "Tally, Buck and Sable"."""
        before = self._named.get(self.back(comma, MARKS))
        return before is not None and before.end == comma

    def _list_end(self, name: Mention) -> int:
        """Behind the name, or behind the last of those joined to it: "Tally and Buck"."""
        end = name.end
        while self.words[end : end + 1] in (["and"], ["&"]) and end + 1 in self._named:
            end = self._named[end + 1].end
        return end

    def _weeks(self, start: int) -> bool:
        """Whether what follows a name is nothing but its next visit."""
        if self.words[start : start + 1] == [","]:
            start += 1
        end = self.ahead(start, MARKS)
        return self._only_weeks(start, end)

    def _only_weeks(self, start: int, end: int) -> bool:
        told = [m for at in range(start, end) for m in self.starting.get(at, ())]
        timed = any(m.number is not None or m.get("units") in WEEKLY for m in told)
        return timed and not any(m.is_any(TRADE - {"units"}) for m in told)

    def _weeks_before(self, comma: int) -> bool:
        """Whether the clause before the comma gives weeks to a horse by name, too."""
        start = self.back(comma, MARKS)
        named = any(start <= m.start < comma for m in self._names)
        return named and self._only_weeks(start, comma)

    def _by_name(self, start: int, end: int) -> bool:
        """Whether every clause between the tokens begins with a name: "Tally's fores are a two, Buck's are a one"."""
        begins = [start, *(i + 1 for i in range(start, end) if self.words[i] == ",")]
        return all(at in self._named for at in begins)

    def _only_spoken_of(self, end: int) -> bool:
        """ "Buck bit me", "Buck's owner", "it's Buck that has it", "Buck's are a two": nothing that opens his part."""
        word, behind = self.words[end : end + 1], self.words[end + 1 : end + 2]
        if word in (["'s"], ["is"], ["was"]) and behind == ["the"] and self.ahead(end, MARKS) == end + 3:
            return True  # "condition five, no, six, Tally's the five"
        if word in (["'s"], ["'"]):
            return not behind or behind[0] in _OWNED | MARKS | {"are", "were"}  # "no, sorry, that's Tally's, …"
        return word == ["that"] or turns_on(self.talk, end)

    def _measure(self, comma: int) -> bool:
        """ "Condition, Tally six, Buck four": whether a measure alone stands before the comma, for all that follow."""
        start = self.back(comma, MARKS)
        return any(m.get("measures") and m.end == comma for m in self.starting.get(start, ()))

    def _follows(self, at: int, turned: bool, led: bool) -> bool:
        """Whether what stands behind the name tells of that horse."""
        words = self.words
        word = words[at] if at < len(words) else "."
        if any(m.is_any(TRADE) for m in self.starting.get(at, ())) or word in _CUES:
            return True
        if word in SENTENCE_ENDS:
            return led
        if turned and (word in _ARTICLES or word in _MOVES):
            return True
        verb = word in _VERBS or self.talk.roles[at] in ("past", "present", "action")
        if word != "," and not verb:
            return False
        if turned:
            return True
        end = at + (word == ",")
        for _ in range(_CLAUSES_AHEAD):
            start, end = end, self.ahead(end + 1, MARKS)
            if self.traded(start, end):
                return True
            if end >= len(words) or words[end] in SENTENCE_ENDS:
                return False
        return False
