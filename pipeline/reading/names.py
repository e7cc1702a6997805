"""The names of a memo's horses: roster names by spelling and by sound, names taken back, and new ones."""

from __future__ import annotations

from pipeline.reading.also_called import also_called, short_names
from pipeline.reading.mentions import Mention
from pipeline.reading.name_words import ANIMALS, HORSE_WORDS, NEVER_NAMES
from pipeline.reading.named_late import named_late
from pipeline.reading.nameless import nameless
from pipeline.reading.roster_names import NamedHorse, NameSpan
from pipeline.reading.run_on import SMALL_LIKENESS, small_openings
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.unlisted import UnlistedNames
from pipeline.reading.whose import COLOURS, at_place, by_colour, by_kin, by_owner, of_its_dam
from pipeline.record import HorseMatch
from pipeline.vocabulary import CLASS_SLOTS

_CUE_WITHIN = 4
_SENTENCES = 4  # from a name set aside to the words that tell why: "Buck, no. Hang on. Tally. Buck was Tuesday."
_HESITATING = frozenset({".", ",", "uh", "um", "er", "erm", "no", "wait", "hang", "on", "hold", "sorry", "oh", "nah"})
_DENYING = _HESITATING | {"it", "this", "that", "is", "was", "'s", "n't", "not"}
_TOLD_OF = frozenset({"is", "'s", "was", "went", "has", "had", "will", "'ll", "does", "did", "comes", "goes", "stays"})
_TURNS = frozenset({"next", "first", "last", "now", "then", "up"})  # "Buck is next" is no reason
_MARKS = SENTENCE_ENDS | {","}
_TRADE = frozenset({*CLASS_SLOTS, "feet", "measures"})
_TO_A_NAME = frozenset({",", "uh", "um", "er", "him", "her", "is"})
_NOT_THIS_ONE = (
    ("supposed", "to", "be"), ("meant", "to", "be"), ("should", "have", "been"), ("should", "'ve", "been"),
    ("supposed", "to", "do"), ("meant", "to", "do"), ("should", "have", "done"), ("should", "'ve", "done"),
)  # fmt: skip
_SET_APART = (
    ["unlike"], ["than"], ["bad", "as"], ["confused", "with"], ["mixed", "up", "with"], ["mistaken", "for"],
    ["which", "is", "n't"], ["who", "is", "n't"], ["that", "is", "n't"], ["this", "is", "n't"],
)  # fmt: skip
_IN_ORDER = frozenset({"first", "next"})
_IN_TURN = frozenset({"next", "one", "first", "second", "third", "last"})
_EXCUSES = (["but"], ["only"], ["because"], ["and"])
_PAUSES = ([","], ["."])
_HE = (["he"], ["she"])
_ASIDE = frozenset({"i", "we", "it", "my", "what", "where", "hang", "hold", "there"})
_OF_A_HORSE = HORSE_WORDS | COLOURS | {"he", "she", "him", "her", "his", "one"}
_SOON = 8  # tokens from a repair to the name that is meant


class NameFinder(UnlistedNames):
    """Finds the names of one memo."""

    def find_names(self) -> None:
        """Fill ``found`` with every name: new ones, roster ones, and those a recogniser misspelled."""
        named = self._new_names()
        named += self._named_again(named)
        for start, end, horse in self._exact:
            if not any(s.start <= start < s.end for s in named) and not self._rejected(start):
                place, doubtful = at_place(self._talk, horse, self._roster)
                known = NamedHorse(horse.name, HorseMatch.KNOWN, tokens=(start, end), place=place, namesakes=doubtful)
                named.append(NameSpan(start, end, self.found.index_of(known)))
        self.found.spans = named
        self._sort()
        self._leave_out_excuses()
        self._sound_alike_names()
        self.found.spans += short_names(self._talk, self.found)
        self._sort()
        self._told_otherwise()
        self._loose_name()
        self._nameless()
        self._named_at_last()
        self._order_horses()

    def _named_at_last(self) -> None:
        """ "The second one, the roan. … Treacle, that's him.": told without a name, named at last."""
        nobody = {index for index, horse in enumerate(self.found.horses) if horse.name is None}
        named = [s for s in self.found.spans if s.horse not in nobody]
        nobodys = [s for s in self.found.spans if s.horse in nobody]
        for start, end, name in named_late(self._talk, named, nobodys):
            waiting = {s.horse for s in nobodys if start <= s.start < end}
            for span in [s for s in self.found.spans if s.horse in waiting]:
                span.horse = name.horse
            if not waiting:
                at = max(start, next(s.start for s in self._talk.segments if s.end > start))
                self.found.spans.append(NameSpan(at, at + 1, name.horse, role="opens"))
        self._sort()

    def _told_otherwise(self) -> None:
        """Horses told by their owner, where no name is said, by their colour and by their kin."""
        told = by_owner(self._talk, self._roster) if not self.found.spans else None
        for known, named in of_its_dam(self._talk, self._roster, self.found):
            place, doubtful = at_place(self._talk, known, self._roster)
            at = (named[0].start, named[0].end)
            horse = NamedHorse(known.name, HorseMatch.KNOWN, tokens=at, place=place, namesakes=doubtful)
            index = self.found.index_of(horse)
            self.found.spans += [NameSpan(s.start, s.end, index, s.role) for s in named]
        self._sort()
        kin = by_kin(self._talk, self.found.spans)
        for horse, span in [pair for pair in (told, kin) if pair is not None]:
            owner = [s for s in self.found.spans if s.start == span.start and s.end < span.end]  # "Tally's foal"
            if owner or not any(s.start <= span.start < s.end for s in self.found.spans):
                self.found.spans = [s for s in self.found.spans if s not in owner]
                self.found.spans.append(NameSpan(span.start, span.end, self.found.index_of(horse)))
        self.found.spans += by_colour(self._talk, self.found.spans)
        self._sort()

    def _nameless(self) -> None:
        """Horses whose name nobody could say."""
        for horse, spans in nameless(self._talk, self.found.spans):
            taken = {i for s in self.found.spans for i in range(s.start, s.end)}
            free = [s for s in spans if s.start not in taken]
            index = self.found.index_of(horse) if free else 0
            self.found.spans += [NameSpan(s.start, s.end, index, s.role) for s in free]
        self._sort()

    def _rejected(self, start: int) -> bool:
        """ "Not Duke", "Duke, no, sorry, Duchess": a name taken back."""
        if self._set_aside(start):
            return True
        name = self._horse_at(start)
        before = [s for s, _, h in self._exact if s < start and h.name == name]
        same = [s for s in before if self._set_aside(s)]
        if not same or not (same[-1] == before[-1] or self._rejected(before[-1])):
            return False  # "Tally, not Buck, Buck's the bay and Buck's next week": set aside all along
        return self._sentence_start(start) == self._sentence_start(same[-1]) or self._told_why(start, same[-1])

    def _set_aside(self, start: int) -> bool:
        words = self._talk.words
        if self._after_not(start) or any(words[start - len(led) : start] == led for led in _SET_APART):
            return True
        return self._taken_back(start) or self._stood_in_for(start)

    def _told_why(self, start: int, rejected: int) -> bool:
        """ "This is Tally, not Buck. Buck was last week.": the name just set aside, and nothing of the trade of it."""
        words = self._talk.words
        led = words[start - 1] in _MARKS or words[start - 2 : start] == [".", "but"]
        named = next(end for at, end, _ in self._exact if at == rejected)
        led = led and words[named] not in _IN_ORDER  # "Buck first, no, Tally first": Buck comes behind her
        if not led or sum(w in SENTENCE_ENDS for w in words[rejected:start]) > _SENTENCES:
            return False
        end = start
        while end < len(words) and words[end] not in _MARKS:
            end += 1
        said = [m for m in self._talk.starting_in(start, end) if m.is_any(_TRADE)]
        return end > start + 1 and not said and words[start + 1] in _TOLD_OF and words[end - 1] not in _TURNS

    def _stood_in_for(self, start: int) -> bool:
        """ "Tally today. It was supposed to be Buck, but Buck's off": the horse that was to be done, and was not."""
        words = self._talk.words
        if tuple(words[max(0, start - 3) : start]) not in _NOT_THIS_ONE:
            return False
        return _IN_TURN.isdisjoint(words[self._sentence_start(start) : start])  # "the next one was meant to be Buck"

    def _leave_out_excuses(self) -> None:
        """ "It was meant to be Buck, but he's lame": what is told of the horse that was not done."""
        for start, end, _ in [exact for exact in self._exact if self._stood_in_for(exact[0])]:
            at = end + (self._talk.words[end : end + 1] in ([","], ["."]))
            stop = next((i for i in range(at, len(self._talk.words)) if self._talk.words[i] in SENTENCE_ENDS), end)
            others = any(start < span.start < stop for span in self.found.spans)
            him = self._talk.words[at + 1 : at + 2] in _HE or self._horse_at(at + 1) == self._horse_at(start)
            if self._talk.words[at : at + 1] in _EXCUSES and him and not others:
                for mention in self._talk.starting_in(end, stop):
                    mention.dropped = True

    def _taken_back(self, start: int) -> bool:
        """ "So Posy, no, sorry, it was Rosie I've just had": the first name, when a repair and another name follow."""
        end = next(e for s, e, _ in self._exact if s == start)
        end += self._talk.words[end] in _TURNS if end < len(self._talk.words) else 0  # "Tally then. No it isn't, …"
        behind = self._talk.words[end : end + 1]
        near = self._talk.starting_in(end + 1, end + _CUE_WITHIN + 1) if behind in _PAUSES else ()  # dropped ones, too
        cue = next((m for m in near if m.readings.get("taking_back") == "repair"), None)
        if cue is None:
            return False
        if behind == [","] and set(self._talk.words[end : cue.start]) - {",", "uh", "um", "er", "no", "oh"}:
            return False
        other = [s for s, _, h in self._exact if cue.end <= s <= cue.end + _SOON and h.name != self._horse_at(start)]
        if not other:
            return False
        between = self._talk.words[end : other[0]]
        if any(m.number for m in near) and "'s" in self._talk.words[other[0] : other[0] + 3]:
            return False  # "Tally. Eight weeks, no, Buck's eight"
        if set(between) <= _DENYING:
            return True  # "First is Tally. Uh. No. Buck.", "This is Tally. No, it isn't. It's Buck."
        named = between[-1] in ("was", "is", "'s", ",", "no", "sorry")
        return named and "." not in between[1:]

    def _after_not(self, start: int) -> bool:
        near = self._talk.words[max(0, start - 4) : start]
        if "not" not in near or near[-2:] == ["not", "least"]:
            return False  # "last but not least, Buck"
        return not {",", ".", "but"} & set(near[near.index("not") :])

    def _horse_at(self, start: int) -> str | None:
        return next((h.name for s, _, h in self._exact if s == start), None)

    def _new_names(self) -> list[NameSpan]:
        spans: list[NameSpan] = []
        cue_new = bool(self._talk.having("horse_cues", "new"))
        for mention in self._talk.having("horse_cues", "named"):
            if self._names_an_animal(mention.start):
                continue
            start = mention.end
            while start < len(self._talk.words) and self._talk.words[start] in _TO_A_NAME:
                start += 1
            end = self._name_end(start, called=True)
            if end > start:
                spans.append(self._called(mention, start, end) or self._named(start, end, cue_new))
                spans[-1].role = "opens"
        if not spans and cue_new:
            spans.extend(self._name_near_new())
        return spans

    def _called(self, cue: Mention, start: int, end: int) -> NameSpan | None:
        """ "Buck, the kids call him Biscuits": another name of a horse of the roster."""
        text = self._text(start, end)
        horse = also_called(self._talk, cue, (start, end), self._exact)
        if horse is None or any(h.name.lower() == text.lower() for h in self._roster):
            return None
        place, doubtful = at_place(self._talk, horse, self._roster)
        known = NamedHorse(horse.name, HorseMatch.KNOWN, tokens=(start, end), place=place, namesakes=doubtful)
        return NameSpan(start, end, self.found.index_of(known))

    def _names_an_animal(self, at: int) -> bool:
        """ "They've got a dog called Thrush", "barn dog, name of Borium": no horse."""
        before = [word for word in self._talk.words[max(0, at - 3) : at] if word not in (",", "'s", "is", "s")]
        return before[-1:] != [] and before[-1] in ANIMALS

    def _named(self, start: int, end: int, cue_new: bool) -> NameSpan:
        text = self._text(start, end)
        known = next((h for h in self._roster if h.name.lower() == text.lower()), None)
        if known is not None:
            return NameSpan(
                start,
                end,
                self.found.index_of(NamedHorse(known.name, HorseMatch.KNOWN, tokens=(start, end), place=known.place)),
            )
        match = HorseMatch.NEW if cue_new else HorseMatch.UNCLEAR
        self._new_is_the_horse(start)
        best = self._best(text) if not cue_new else None
        if best is not None:
            horse, score = best
            return NameSpan(
                start,
                end,
                self.found.index_of(NamedHorse(horse.name, HorseMatch.KNOWN, text, score, (start, end), horse.place)),
            )
        return NameSpan(start, end, self.found.index_of(NamedHorse(text, match, text, tokens=(start, end))))

    def _named_again(self, named: list[NameSpan]) -> list[NameSpan]:
        """Later mentions of a horse that is not on the roster."""
        texts, again = self._talk.tokens.texts, []
        for span in named:
            name = texts[span.start : span.end]
            for start in range(span.end, len(texts) - len(name) + 1):
                if texts[start : start + len(name)] == name:
                    again.append(NameSpan(start, start + len(name), span.horse))
        return again

    def _may_be(self, start: int) -> bool:
        tokens = self._talk.tokens
        named = tokens.large[start] and not tokens.little[start] and tokens.lowers[start] not in NEVER_NAMES
        return named and self._unknown(start)

    def _name_near_new(self) -> list[NameSpan]:
        cue = self._talk.having("horse_cues", "new")[0]
        head = self._sentence_start(cue.start)
        behind = self._talk.words[head + 1 : head + 2]
        exact_first = any(a == head for a, _, _ in self._exact)
        if head < cue.start and behind in (["is"], ["'s"], ["was"], [","]) and not exact_first and self._may_be(head):
            return [self._named(head, self._name_end(head), True)]  # "Zephyr is a new horse"
        tokens = self._talk.tokens
        for start in range(cue.end, min(len(self._talk.words), cue.end + 25)):
            exact = any(a <= start < b for a, b, _ in self._exact)
            if exact or not tokens.large[start] or tokens.lowers[start] in NEVER_NAMES or not self._unknown(start):
                continue
            initial = self._talk.words[start - 1] in SENTENCE_ENDS
            if initial and (tokens.little[start] or not self._follows_like_name(start + 1)):
                continue
            if not initial and self._is_place(start):
                continue
            return [self._named(start, self._name_end(start), True)]
        return []

    def _sound_alike_names(self) -> None:
        """Capitalised words in the place of a name that sound like one of the roster."""
        taken = {i for s in self.found.spans for i in range(s.start, s.end)}
        taken.update(i for s, e, _ in self._exact for i in range(s, e))
        taken.update(i for m in self._talk.mentions if "horse" in m.readings for i in m.literal)  # dropped ones, too
        tokens = self._talk.tokens
        small = small_openings(self._talk) if self._cased else ()
        for start in sorted({*self._strange, *filter(self._means_nothing, small)}) if small else self._strange:
            if start in taken or (tokens.lowers[start] in self._common and self._cried_out(start)):
                continue
            if not tokens.large[start]:
                self._alike_in_small(start, taken)
                continue
            for end in (start + 2, start + 1):
                if end > len(tokens) or taken.intersection(range(start, end)) or not self._follows_like_name(end):
                    continue
                if end == start + 2 and (tokens.marks[start + 1] or not self._unknown(start + 1)):
                    continue
                best = self._best(self._text(start, end))
                if best is None:
                    continue
                named = NamedHorse(
                    best[0].name, HorseMatch.KNOWN, self._text(start, end), best[1], (start, end), best[0].place
                )
                self.found.spans.append(NameSpan(start, end, self.found.index_of(named)))
                taken.update(range(start, end))
                break
        self._sound_alike_again(taken)
        self._sort()

    def _cried_out(self, start: int) -> bool:
        """ "Dang, I dropped my phone": a remark, where its sentence tells nothing of the trade or of a horse."""
        words, end = self._talk.words, start + 1
        if words[end : end + 1] != [","] or not _ASIDE.issuperset(words[end + 1 : end + 2]):
            return False
        while end < len(words) and words[end] not in SENTENCE_ENDS:
            end += 1
        told_of_it = not _OF_A_HORSE.isdisjoint(words[start:end])
        return not told_of_it and not any(m.is_any(_TRADE) for m in self._talk.starting_in(start + 1, end))

    def _alike_in_small(self, start: int, taken: set[int]) -> None:
        """ "…, meddler's mud fever has gone": a name misspelled in small letters, only where a part opens."""
        tokens = self._talk.tokens
        if tokens.lowers[start] in self._common:
            return
        best = self._best(self._text(start, start + 1))
        if best is not None and best[1] >= SMALL_LIKENESS:
            text = self._text(start, start + 1)
            named = NamedHorse(best[0].name, HorseMatch.KNOWN, text, best[1], (start, start + 1), best[0].place)
            self.found.spans.append(NameSpan(start, start + 1, self.found.index_of(named)))
            taken.add(start)

    def _sound_alike_again(self, taken: set[int]) -> None:
        """ "Neeve, heat in the near fore. … Neeve six weeks.": said again where a name need not be expected."""
        alike = [s for s in self.found.spans if self.found.horses[s.horse].heard]
        for span in alike:
            name = self._text(span.start, span.end)
            if self._talk.tokens.text.count(name) == 1:
                continue
            for start in range(len(self._talk.words) - (span.end - span.start) + 1):
                again = range(start, start + span.end - span.start)
                if not taken & set(again) and self._text(again.start, again.stop) == name:
                    self.found.spans.append(NameSpan(again.start, again.stop, span.horse))
                    taken.update(again)

    def _order_horses(self) -> None:
        """Horses in the order in which they are first named."""
        order = list(dict.fromkeys(s.horse for s in self.found.spans))
        self.found.horses = [self.found.horses[i] for i in order]
        for span in self.found.spans:
            span.horse = order.index(span.horse)
