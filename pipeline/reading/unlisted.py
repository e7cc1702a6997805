"""Names that the roster lacks and nobody called new: kept as heard, so that no other horse gets their facts."""

from __future__ import annotations

from pipeline.reading.brought_in import brought_in
from pipeline.reading.name_base import NameBase
from pipeline.reading.name_words import HORSE_WORDS, NEVER_NAMES, REMARK_ENDINGS
from pipeline.reading.roster_names import NamedHorse, NameSpan
from pipeline.reading.tokens import SENTENCE_ENDS, form_tokens
from pipeline.reading.whose import COLOURS
from pipeline.record import HorseMatch
from pipeline.vocabulary import CLASS_SLOTS

_BEHIND_A_NAME = frozenset({",", "'s", ".", "first", "stood", "had", "the", "here", "today", "is", "was"})
_BEFORE_A_NAME = frozenset({"did", "done", "doing", "with", "to", "that's", "finished", "for", "was", "is", "'s"})
_LIGHT = frozenset({"and", "so", "there", "was", "is", "'s", "on", "to", "it", "came", "up", ",", "i", "did", "that"})
_LONGEST = 3  # words of a name
_SHORTEST = 3  # letters of one: "Ur." is a filler
_OBJECTS = (["the"], ["his"], ["her"], ["them"], ["him"], ["all"], ["both"], ["it"], ["had"], ["were"], ["are"])
_DESCRIBING = HORSE_WORDS | COLOURS | {"a", "the", "big", "wee", "old", ","}
_TOLD = frozenset({*CLASS_SLOTS, "feet"})
_OPENING = 12  # tokens in which a memo names its first horse
_HAVING = ("has", "had", "got", "'s")
_PEOPLE_DO = frozenset({
    "promised", "agreed", "offered", "said", "told", "asked", "rung", "phoned", "rang", "texted", "ordered", "decided",
    "paid", "noticed", "reported", "messaged", "sworn", "arranged", "emailed",
})  # fmt: skip
_SMALL = 0.99  # likeness of a name in small letters: taken, and asked about
_OPENERS = frozenset({"okay", "ok", "so", "right", "now", "this", "is", "'s", ",", "uh", "and"})
_TURNS = frozenset({"then", "next", "now", "lastly", "finally", "after"})


class UnlistedNames(NameBase):
    """Capitalised words that stand where a horse is named and mean nothing else."""

    def _loose_name(self) -> None:
        """No roster name anywhere: a capitalised unknown word that opens the memo stays as heard, unclear."""
        if self.found.spans:
            self._unknown_before()
            self._unknown_later()
            return
        if self._written_small():
            return
        tokens = self._talk.tokens
        for start in range(min(len(tokens), _OPENING)):
            lower = tokens.lowers[start]
            if not tokens.large[start] or tokens.little[start] or lower in NEVER_NAMES or not self._unknown(start):
                continue
            if start == 0 and self._talk.words[1:2] in _OBJECTS and lower in self._common:
                continue  # "Shod the fronts", "Left the hinds alone"
            end = self._name_end(start)
            if end > start + 1 and tokens.lowers[end - 1] in HORSE_WORDS:
                continue
            opens = end < len(tokens) and tokens.lowers[end] in _BEHIND_A_NAME and self._only_openers(start)
            if opens or (start and self._introduced_unlisted(start, end)):
                self._hear(start, end)
                return

    def _written_small(self) -> bool:
        """ "Okay, cinder fronts": where no other name is said, a roster name that opens the memo in small letters."""
        words = self._talk.words
        for start in range(min(len(words), _OPENING)):
            for horse in self._roster:
                end = start + len(form_tokens(horse.name.lower()))
                if words[start:end] == list(form_tokens(horse.name.lower())) and self._only_openers(start):
                    known = NamedHorse(
                        horse.name, HorseMatch.KNOWN, self._text(start, end), _SMALL, (start, end), horse.place
                    )
                    self.found.spans.append(NameSpan(start, end, self.found.index_of(known)))
                    return True
        return False

    def _unknown_before(self) -> None:
        """ "Gretel to begin with … Then Bran": a name off the roster that the memo begins with."""
        tokens = self._talk.tokens
        first = self.found.spans[0].start
        for start in range(min(first, _OPENING)):
            behind = self._talk.words[start + 1 : start + 3]
            begins = behind[:1] == ["first"] or behind in (["to", "begin"], ["to", "start"])
            begins = begins or (behind[:1] == ["and"] and first == start + 2)
            if not begins:
                continue
            named = tokens.large[start] and not tokens.little[start] and tokens.lowers[start] not in NEVER_NAMES
            named = named and "for" not in self._talk.words[start + 1 : start + 4]  # "Plan first for Banksia"
            opened = self._only_openers(start) or self._said_again(start, start + 1)
            if named and self._unknown(start) and opened:
                self._hear(start, start + 1)
                self._again(start)
                return

    def _introduced_unlisted(self, start: int, end: int) -> bool:
        """ "Did Zephyr this morning", "here with Zephyr.", in the memo's first sentence."""
        if SENTENCE_ENDS & set(self._talk.words[:start]) or self._is_place(start):
            return False
        lead = self._talk.words[start - 1]
        behind = self._talk.words[end] if end < len(self._talk.words) else "."
        return lead in _BEFORE_A_NAME and (behind in (",", ".", "at", "done", "again") or lead in ("did", "done"))

    def _unknown_later(self) -> None:
        """ "Maisie, corn in the left front. Then Zephyr, trimmed.": a turn to a name that is on no list."""
        tokens, taken = self._talk.tokens, {i for s in self.found.spans for i in range(s.start, s.end)}
        taken.update(i for s, e, _ in self._exact for i in range(s, e))  # a name set aside is known
        self._unknown_heads(taken)
        for start in self._strange:
            if not start or start in taken:
                continue
            head = self._sentence_start(start)
            turned = head < start and bool(_TURNS & set(self._talk.words[head:start]))
            end = self._name_end(start)
            behind = self._talk.words[end] if end < len(tokens) else "."
            if turned and behind in (",", ".", "'s") and self._leads_up(head, start):
                self._hear(start, end)
                self._again(start)
                return

    def _unknown_heads(self, taken: set[int]) -> None:
        """ "Tally. Trimmed. Zephyr. Thrush in the left hind.": an unknown name alone, or before what is told of it."""
        words = self._talk.words
        for start in self._strange:
            end = self._name_end(start) if start not in taken else start
            if end <= start or not self._could_be_new(start, end):
                continue
            if not start and not self._said_again(start, end):
                continue
            head = self._sentence_start(start)
            alone = not any(head <= span.start < start for span in self.found.spans)  # not "Buck, registered name X"
            led_in = alone and brought_in(self._talk, start, end) and self._told_soon(end)
            opened = head == start or self._introduced_plainly(head, start) or led_in
            if not opened or end - start > _LONGEST or len(self._text(start, end)) < _SHORTEST:
                continue
            behind = words[end] if end < len(words) else "."
            told = behind in SENTENCE_ENDS and self._trade_follows(end + 1)
            told = told or (behind == "," and self._told_at_once(end + 1))
            verbs = ("has", "had", "got", "'s", "is", "was") if self._said_again(start, end) else _HAVING
            somebody = words[end + 1 : end + 2] != [] and words[end + 1] in _PEOPLE_DO  # "Siân has promised to soak it"
            told = told or (behind in verbs and head == start and not somebody and self._trade_follows(end))
            told = told or led_in
            if told and (not self._heard or self._said_again(start, end)):
                self._hear(start, end)
                self._again(start)
                taken.update(range(start, end))

    def _said_again(self, start: int, end: int) -> bool:
        """Whether the name is said once more: a recogniser writes a misheard word large once, seldom twice."""
        texts, name = self._talk.tokens.texts, self._text(start, end)
        again = (at for at, text in enumerate(texts) if text == texts[start] and at != start)
        return any(self._text(at, at + end - start) == name for at in again)

    def _could_be_new(self, start: int, end: int) -> bool:
        """Whether the words are capitalised and neither of the trade, nor in any phrase of the vocabulary."""
        tokens = self._talk.tokens
        for at in range(start, end):
            lower = tokens.lowers[at]
            common = tokens.little[at] or lower in NEVER_NAMES or lower in HORSE_WORDS
            if not tokens.large[at] or common or lower.endswith(REMARK_ENDINGS):
                return False
            if lower in self._common or not self._unknown(at):
                return False
        return True

    def _introduced_plainly(self, head: int, start: int) -> bool:
        """ "Okay this is Zephyr.", "So, Zephyr."."""
        before = set(self._talk.words[head:start])
        described = bool(before & HORSE_WORDS) and before <= _DESCRIBING
        return described or before <= _OPENERS

    def _trade_follows(self, start: int) -> bool:
        """Whether the words from here to the end of the sentence tell something of the trade."""
        end = start
        while end < len(self._talk.words) and self._talk.words[end] not in SENTENCE_ENDS:
            end += 1
        horse = bool(HORSE_WORDS & set(self._talk.words[start:end]))
        return horse or any(m.is_any(CLASS_SLOTS) for m in self._talk.starting_in(start, end))

    def _told_soon(self, start: int) -> bool:
        """Whether the rest of this sentence or the next one tells something of the trade."""
        end = start
        while end < len(self._talk.words) and self._talk.words[end] not in SENTENCE_ENDS:
            end += 1
        return self._trade_follows(start) or self._trade_follows(end + 1)

    def _told_at_once(self, start: int) -> bool:
        """ "Zephyr, bay mare", "Zephyr, thrush in the left hind"; not "Jumpy, would not hold still"."""
        horse = bool(HORSE_WORDS & set(self._talk.words[start : start + 4]))
        near = self._talk.starting_in(start, start + 2)
        return horse or any(m.is_any(_TOLD) and m.get("manners") is None for m in near)

    def _leads_up(self, head: int, start: int) -> bool:
        """Whether only a turn stands before the name: "and then there was Zephyr", "next is Zephyr"."""
        return all(word in _TURNS | _LIGHT for word in self._talk.words[head:start])

    def _hear(self, start: int, end: int) -> None:
        text = self._text(start, end)
        self._new_is_the_horse(start)
        best = self._best(text)
        horse = NamedHorse(text, HorseMatch.UNCLEAR, text, tokens=(start, end))
        if best is not None:
            horse = NamedHorse(best[0].name, HorseMatch.KNOWN, text, best[1], (start, end), best[0].place)
        index = self.found.index_of(horse)
        self.found.spans.append(NameSpan(start, end, index))
        self._sort()

    def _again(self, start: int) -> None:
        """The same name further on in the memo."""
        texts = self._talk.tokens.texts
        horse = next(span.horse for span in self.found.spans if span.start == start)
        taken = {span.start for span in self.found.spans}
        for at in range(start + 1, len(texts)):
            if texts[at] == texts[start] and at not in taken:
                self.found.spans.append(NameSpan(at, at + 1, horse))
        self._sort()
