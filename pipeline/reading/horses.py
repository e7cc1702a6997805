"""Whose talk it is: where a name opens a horse's part of the memo."""

from __future__ import annotations

from pipeline.reading.all_but import all_but
from pipeline.reading.both_horses import told_of_both
from pipeline.reading.brought_in import brought_in, taken_on
from pipeline.reading.horses_together import SEVERAL, WEEKLY, HorsesTogether
from pipeline.reading.opening import (
    RETURNING,
    closes,
    done_to,
    done_today,
    heads,
    kept_away,
    leave_out_beside,
    of_kin,
    set_beside,
    spoken_of,
)
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.talk import Segment
from pipeline.reading.together import told_together
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.unnamed_head import name_unnamed_head
from pipeline.reading.unnamed_weeks import HE_AND_SHE, DueBack, could_be
from pipeline.reading.vet import VETS
from pipeline.record import HorseMatch
from pipeline.vocabulary import CLASS_SLOTS

_TO_THE_VET = 12  # tokens
_IF = (["if"], ["and", "if"], ["but", "if"], ["unless"], ["should"])
_IS = tuple(f"{this} {be}" for this in ("it", "this", "this one", "this here") for be in ("is", "'s", "was", "were"))
_STATES = frozenset({"gaits", "findings", "resolutions"})
_RIGHT = frozenset(
    ["right", "settled", "better", "well", "comfortable", "happy", "healed", "fit", "himself", "herself"]
)
_WILL = frozenset(["'ll", "will", "gets", "goes", "can", "needs", "has", "should", "'d"])
_I = frozenset(["i", "we"])
_WILL_GET = frozenset(["'ll", "will", "gets", "goes", "get", "go", "needs"])
_PUTTING_RIGHT = frozenset({"no", "sorry", "wait", "nah", "nope", "hang", "hold", "on", "strike", "scratch", "that"})
_LEADS_TO = frozenset({"on", "about", "for", "with", "of", "to"})
_VET_LEADS = _LEADS_TO | {"check", "get", "take", "send"}
_SAID_FOR = frozenset({"for", "on", "with", "at", "see"})
_FETCHED = frozenset({"brought", "led", "fetched", "got", "had", "pulled", "walked"})
_COMES = frozenset({"out", "in", "up", "over", "round", "through"})
_TOLD = frozenset({*CLASS_SLOTS, "feet", "horse"})
_SHORT = 7
_ASIDE = 2  # sentences of an aside about a horse told before
_FORGOTTEN = frozenset({"oh", "forgot", "forgetting", "forgotten", "also", "meant", "ah", "wait", "remembered", "too"})
_NEXT = 2  # tokens from whose feet to the feet
_A_STORY = 8  # tokens of a sentence, counted twice for its first segment, that tells something of the horse


class HorseFinder(HorsesTogether):
    """Gives each segment of a memo its horse."""

    def _set_roles(self) -> None:
        for number, span in enumerate(self.found.spans):
            new = self.found.horses[span.horse].match is HorseMatch.NEW
            taken = number > 0 and taken_on(self._talk, span.start, span.end)
            passing = not taken and self._only_spoken_of(span)
            if number and (passing or span.start in self._talk.putting_right):
                continue
            if (
                number == 0
                or taken
                or (new and span.start == self.found.horses[span.horse].tokens[0])
                or self._only_openers(span.start)
                or self._stands_alone(span)
                or self._introduced(span)
                or heads(self._talk, span)
                or brought_in(self._talk, span.start, span.end)
            ):
                span.role = "opens"
                for kin in of_kin(self._talk, span):
                    kin.dropped = True

    def _only_spoken_of(self, span: NameSpan) -> bool:
        behind = self._behind(span)
        when = self._only_when(span) and not (_I.isdisjoint(behind) or HE_AND_SHE.isdisjoint(behind))
        return when or spoken_of(self._talk, span) or self._not_today(span)

    def _behind(self, span: NameSpan) -> list[str]:
        words = self._talk.words
        return words[span.end : next((i for i in range(span.end, len(words)) if words[i] in SENTENCE_ENDS), span.end)]

    def _whose(self, span: NameSpan, current: int, words: list[str], here: Segment | None) -> bool | None:
        """Whether "he" or "her" is the horse named; None where it may be the one in hand."""
        word = next((w for w in words if w in HE_AND_SHE), "")
        his, hers = (could_be(self._talk, self.found, i, word, leave_out=here) for i in (span.horse, current))
        return None if his is hers or not word else bool(his or hers is False)

    def _ask_whose(self) -> None:
        """ "When Buck had settled I reset the hinds": asked about where it may be his."""
        for span in [s for s in self.found.spans if s.role != "opens"]:
            segment, behind = self._talk.segment_at(span.start), self._behind(span)
            if segment is None or self._settled_plan(segment, span, behind) or segment.horse == span.horse:
                continue
            here = self._talk.segment_at(span.end + len(behind) - 1)
            if here is None or not (self._only_when(span) and self._trade_words(span.end, here.end)):
                continue
            its = self._whose(span, segment.horse, behind, here)
            if its:
                here.horse = span.horse  # "his", of the one that is no mare
            elif its is None:
                self._talk.unread.append((span.start, segment.end, "two horses, but not whose work that is"))

    def _not_today(self, span: NameSpan) -> bool:
        """ "Hamish isn't due till Tuesday": a horse that is only spoken of; "Hamish next door." is the next one."""
        near = [m for m in self._talk.having("asides", "not_today") if 0 <= m.start - span.end <= 3]
        here = self._talk.words[span.end : span.end + 3] == ["next", "door", "."]
        return bool(near) and not (here and span.start == self._sentence_start(span.start))

    def _introduced(self, span: NameSpan) -> bool:
        """ "Nantucket's next door, this is Regent", "they led out Rangi, who'd sprung his left fore"."""
        last = self._talk.words[span.start - 1] if span.start else ""
        after = self._talk.words[span.end : span.end + 2]
        told = self._talk.words[self._sentence_start(span.start) : span.start]
        if after[:1] in ([","], ["."], [":"]) and last in _LEADS_TO and RETURNING.issuperset(told):
            return True  # "and the other thing about Rosie, …", "by the way, on Rosie, …"
        if last in _FETCHED and _COMES.issuperset(self._talk.words[span.end : span.end + 1]):
            return True  # "they brought Rangi out"
        led = " ".join(self._talk.words[max(0, span.start - 2) : span.start])
        if (
            after == [",", "who"]
            or led in ("looked at", "went to", "moved to", "on to", "over to", "started on")
            or (last in ("out", "up", "did", "done") and after[:1] in ([","], ["."]))
        ):
            return True
        before = " ".join(self._talk.words[max(0, span.start - 3) : span.start])
        return before.endswith(_IS)

    def _stands_alone(self, span: NameSpan) -> bool:
        """ "Next stall, Long Division.": a name alone behind a comma, before anything is said."""
        before = self._talk.words[span.start - 1] if span.start else "."
        after = self._talk.words[span.end] if span.end < len(self._talk.words) else "."
        start = self._sentence_start(span.start)
        closing = after in (".", "?") and before in ("on", "to", "with", "about", "was", "is")
        if closing and span.start - start <= _SHORT and VETS.isdisjoint(self._talk.words[start : span.start]):
            return not self._trade_words(start, span.start)  # "What else on Clip."
        strong = [
            m
            for m in self._talk.starting_in(start, span.start)
            if m.number is None and set(m.readings) - {"horse_cues", "fillers", "horse", "feet", "measures"}
        ]
        told = {"he", "him", "same"} & set(self._talk.words[start : span.start])  # "he fights with the other one, Buck"
        return before == "," and after in (".", ",") and not strong and not told and span.start - start <= 8

    def _trade_words(self, start: int, end: int) -> bool:
        return any(m.is_any(CLASS_SLOTS) or m.number for m in self._talk.starting_in(start, end))

    def assign(self) -> None:
        """Give each segment its horse; where one is named all is its own, but for its kin and what is set beside it."""
        names = [s for s in self.found.spans if s.start not in self._talk.putting_right]
        several = len(self.found.horses) >= SEVERAL
        if several or self._talk.having("asides"):
            self._set_roles()
        leave_out_beside(self._talk, names)
        if several:
            self._part_among(names)
            self._give_back_asides()
            name_unnamed_head(self._talk, self.found)
            self._ask_whose()
            self._share()
            return
        for segment in self._talk.segments if self.found.spans else ():
            segment.horse = 0

    def _part_among(self, names: list[NameSpan]) -> None:
        """Give each segment the horse named last at the head of a sentence, or named within it."""
        current, lent, owner = 0, None, None
        due: DueBack | None = None
        away = kept_away(self._talk, names)
        for segment in self._talk.segments:
            inside = [s for s in names if segment.start <= s.start < segment.end]
            if segment.delimiter != "start":
                lent = self._next_in_row(segment) or (None if lent in away and self._turned(segment, lent) else lent)
            elif lent not in away or self._talk.tokens.texts[segment.start - 1] != ",":
                lent = None
            owner = owner if owner is not None and self._goes_on(segment) else None
            due = due if due is not None and not inside and due.goes_on(self._talk, segment) else None
            owned = due.horse if owner is None and due is not None else owner
            segment.horse = lent.horse if lent is not None else current if owned is None else owned
            for span in inside:
                leads = span.start == segment.start or self._only_openers(span.start)
                corrects = self._corrects(segment)
                if (span.role == "opens" or (leads and not self._only_spoken_of(span))) and not corrects:
                    current = segment.horse = span.horse
                elif span.horse != current and self._put_right(segment) and closes(self._talk, segment, span):
                    segment.horse = span.horse  # "toe clips in front, no, sorry, toe clips on Buck": the rest stays
                elif span.horse != current and closes(self._talk, segment, span):
                    current = segment.horse = span.horse
                    self._take_over(segment, span)
                elif span.horse != current and done_to(self._talk, segment, span):
                    segment.horse = span.horse
                    current = span.horse if done_today(self._talk, segment, span) else current
                elif span in away:
                    segment.horse, lent = span.horse, span  # "Buck's off, lame, doing him next week."
                elif self._for_horse(segment, span):
                    segment.horse = span.horse
                    if self._hangs_on(segment, span) or self._vet_behind(segment, span):
                        lent = span  # "if Buck gets worse, get the vet"
                    owner = span.horse if self._feet_of(segment, span) else owner
                    if owner == span.horse and self._turns_back(segment, span, current):
                        current = span.horse
                    due = None if corrects else DueBack(span.horse, segment)

    def _turned(self, segment: Segment, lent: NameSpan) -> bool:
        """ "Buck had one like it, so I let hers be": back to her."""
        return segment.joined_by("so", ", so", "but", ", but") and set_beside(self._talk, lent) is not None

    def _hangs_on(self, segment: Segment, span: NameSpan) -> bool:
        """ "New shoes when Buck's sound", "if Buck's sound, …": what hangs on how a horse is, is that horse's."""
        led = any(m.end == span.start for m in segment.having("plans", "condition"))
        stated = led and any(m.start >= span.end and m.is_any(_STATES) for m in segment.mentions)
        return stated or (led and self._comes_right(segment, span))

    def _comes_right(self, segment: Segment, span: NameSpan) -> bool:
        """ "Once Buck comes right he'll get a new shoe", "… I'll put one on": Buck's, unless it is she that gets it."""
        words = self._talk.words[span.end : self._talk.sentence(segment.sentence)[-1].end]
        at = next((at for at, word in enumerate(words) if word in ("he", "she", "i", "we")), len(words))
        if _RIGHT.isdisjoint(words[:at]) or _WILL.isdisjoint(words[at + 1 : at + 2]):
            return False
        if words[at] in ("i", "we"):
            return HE_AND_SHE.isdisjoint(words)  # not "once Buck's settled I'll do her hinds"
        # whose "he" it is, is not known yet
        return could_be(self._talk, self.found, span.horse, words[at], leave_out=segment) is not False

    def _settled_plan(self, segment: Segment, span: NameSpan, behind: list[str]) -> bool:
        """ "He'll get a new shoe, once Buck comes right": Buck's, asked about where "he" may be the one in hand."""
        led = any(m.end == span.start for m in segment.having("plans", "condition"))
        stated = any(m.start >= span.end and m.is_any(_STATES) for m in segment.mentions)
        closes = segment.index and segment.end == span.end + len(behind)
        if not (led and closes and (stated or not _RIGHT.isdisjoint(behind))):
            return False
        comma = self._talk.tokens.texts[segment.start - 1] == ","
        first = segment.sentence - (comma and segment.joined_by("start"))
        near = [s for s in self._talk.segments[1 : segment.index + 1] if s.sentence >= first]
        verbs = [i for i, s in enumerate(near) if not _WILL_GET.isdisjoint(self._talk.words[s.start : s.end])]
        plan = near[verbs[-1] :] if verbs else near[-1:]
        words = self._talk.words[plan[0].start : span.start]
        if not (verbs or plan[0].mentions[0].is_any(CLASS_SLOTS)) or self._names_in(*plan) != [span]:
            return False
        before = self._talk.segments[plan[0].index - 1].horse
        its = self._whose(span, before, words, plan[0])
        pointed = "it" in words  # "she'll get a shoe on it": on the foot in hand
        if pointed or not (its or HE_AND_SHE.isdisjoint(words)):
            self._talk.unread.append((plan[0].start, plan[0].end, "a plan that hangs on a horse, but not whose"))
        for part in plan:
            part.horse = before if pointed or its is False else span.horse
        return True

    def _vet_behind(self, segment: Segment, span: NameSpan) -> bool:
        asked = self._talk.words[segment.start : span.start] in _IF
        return asked and not VETS.isdisjoint(self._talk.words[span.end : span.end + _TO_THE_VET])

    def _share(self) -> None:
        """Note which segments are told of several horses."""
        self._together = told_together(self._talk, self.found.spans)
        self._together.update(told_of_both(self._talk, self.found.spans))
        self._weeks_then_name()
        self._together.update(all_but(self._talk, self.found.spans, len(self.found.horses)))

    def _turns_back(self, segment: Segment, span: NameSpan, current: int) -> bool:
        """ "Oh, Tally's got one too, left hind. Trimmed Buck's hinds.": back to Buck, told before the aside."""
        told = [s for s in self._talk.segments[: segment.index] if s.sentence < segment.sentence]
        aside = next((s.sentence for s in reversed(told) if s.horse != current), -1) + 1
        before = [s for s in told if s.sentence < aside]
        led = next((s.start for s in told if s.sentence == aside), 0)
        forgot = bool(_FORGOTTEN & set(self._talk.words[max(0, led - 2) : led + 4]))
        last = bool(before) and before[-1].horse == span.horse
        return last and forgot and segment.sentence - aside <= _ASIDE and any(s.horse == current for s in before)

    def _weeks_then_name(self) -> None:
        """ "Six weeks, Tally. Five weeks, Buck.": the name closes a sentence that is nothing but an interval."""
        names = {(s.start, s.end): s for s in reversed(self.found.spans)}
        for sentence in self._talk.sentences():
            name = names.get((sentence[-1].start, sentence[-1].end))
            if name is None:
                continue
            before = sentence[:-1]
            told = [m for s in before for m in s.mentions if m.is_any(_TOLD)]
            timed = any(m.get("units") in WEEKLY for s in before for m in s.mentions)
            if timed and not told:
                self._together.update({s.index: [name.horse] for s in before})

    def _put_right(self, segment: Segment) -> bool:
        """Whether nothing but a "no", "sorry" or the like stands right before the segment."""
        before = self._talk.segments[segment.index - 1] if segment.index else None
        words = self._talk.words[before.start : before.end] if before is not None else []
        return before is not None and before.sentence == segment.sentence and set(words) <= _PUTTING_RIGHT

    def _corrects(self, segment: Segment) -> bool:
        """ "Eight weeks, no, Buck's eight, she's six": no turn to him."""
        told = any(m.is_any(CLASS_SLOTS) or m.get("feet") for m in segment.mentions)
        return not told and any(m.number for m in segment.mentions) and self._put_right(segment)

    def _take_over(self, segment: Segment, span: NameSpan) -> None:
        """ "New shoes in front, steel, on Buck": the verbless segments of the sentence before are his too."""
        for before in reversed([s for s in self._talk.segments[: segment.index] if s.sentence == segment.sentence]):
            if any(before.start <= s.start < before.end for s in self.found.spans):
                break
            before.horse = span.horse

    def _give_back_asides(self) -> None:
        """ "Doris trod on the phone. … Next visit four weeks.": a horse of whom no trade word is said had no visit.

        Only for a name that opens a sentence about something else; what follows belongs to the horse before.
        """
        runs = self._runs()
        for number, run in enumerate(runs[1:], start=1):
            horse = run[0].horse
            name = next(iter(self._names_in(run[0])), None)
            said = run[0].end - run[0].start + sum(s.end - s.start for s in run if s.sentence == run[0].sentence)
            said -= 2 * (name.end - name.start - 1) if name is not None else 0  # a name of two words is no story
            others = [s for r in runs if r is not run for s in r if s.horse == horse]
            row = any(self._next_in_row(s) is not None for s in run)
            if name is None or others or row or said < _A_STORY or any(self._told_of(s) for s in run):
                continue
            if any(span.horse == horse and span is not name for span in self.found.spans):
                continue
            if self.found.horses[horse].match is HorseMatch.NEW:
                continue  # "new mare, her name is Larch"
            for segment in run:
                segment.horse = runs[number - 1][0].horse

    def _runs(self) -> list[list[Segment]]:
        runs: list[list[Segment]] = []
        for segment in self._talk.segments:
            if runs and runs[-1][0].horse == segment.horse:
                runs[-1].append(segment)
            else:
                runs.append([segment])
        return runs

    def _told_of(self, segment: Segment) -> bool:
        """Whether anything but the next visit is said in the segment."""
        words = CLASS_SLOTS.keys() - {"vet"}
        names = self._names_in(segment)
        timed = any(m.number for m in segment.mentions) or self._vet_told(segment)
        timed = timed or ("same" in segment.named and segment.end - segment.start < _SHORT)  # "same again for Buck"
        return (bool(names) and timed) or any(m.is_any(words) or m.get("feet") for m in segment.mentions)

    def _vet_told(self, segment: Segment) -> bool:
        return bool(segment.having("vet")) or not VETS.isdisjoint(self._talk.words[segment.start : segment.end])

    def _feet_of(self, segment: Segment, span: NameSpan) -> bool:
        owned = self._talk.words[span.end : span.end + 1] == ["'s"]
        feet = [m for m in segment.mentions if m.get("feet") and m.start > span.end]
        return owned and any(m.start - span.end <= _NEXT for m in feet)

    def _goes_on(self, segment: Segment) -> bool:
        """ "… and the rockers went on Buck's fronts, also new, number one": the rest is Buck's too."""
        there = self._talk.words[segment.end - 1] == "there"  # "iodine in Tally's near hind, thrush there"
        return segment.joined_by(",") and (there or not segment.own_clause) and not segment.having("feet")

    def _for_horse(self, segment: Segment, span: NameSpan) -> bool:
        """ "Eight weeks for Pepper": the segment is Pepper's although somebody else is in hand."""
        if self._feet_of(segment, span):
            return True  # "no mud fever on Gwen's hinds"
        if self._talk.words[segment.start : span.start] in _IF or self._hangs_on(segment, span):
            return True  # "if Gwen gets sore on that, I'll poultice it"
        if segment.having("units"):
            return True
        vet = self._vet_told(segment) and not segment.having("times", "recent")  # "the vet saw Buck last week"
        leads = _SAID_FOR | _VET_LEADS if vet else _SAID_FOR  # "ring the vet about Gwen", "get Gwen to the vet"
        timed = bool(vet) or any(m.number for m in segment.mentions)
        before = self._talk.mention_ending(span.start)
        counted = before is not None and (before.number is not None or before.get("units") is not None)
        return timed and (counted or span.start == segment.start or self._talk.words[span.start - 1] in leads)
