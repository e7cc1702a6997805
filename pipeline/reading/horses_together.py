"""Where a fact is said of several horses: "Cash and Boomer are on six", "five weeks for the pair", "all trims"."""

from __future__ import annotations

from pipeline.reading.both_horses import told_of_each
from pipeline.reading.names import NameFinder
from pipeline.reading.roster_names import NameSpan
from pipeline.reading.talk import Segment
from pipeline.reading.times import the_horse_before, the_horse_behind
from pipeline.reading.together import here_today

SEVERAL = 2
_BESIDE = frozenset(["beside", "next", "near", "alongside", "standing"])
_ONLY_WHEN = frozenset(["when", "once", "after", "before", "while", "till", "until", "as", "since", "because"])
WEEKLY = ("week", "fortnight", "month")


class HorsesTogether(NameFinder):
    """Tells of whom each fact of a memo of several horses is said."""

    _together: dict[int, list[int]]  # the horses of a segment that speaks of several

    def _names_in(self, *segments: Segment) -> list[NameSpan]:
        """The names that begin from the first of the segments to the last."""
        start, end = segments[0].start, segments[-1].end
        return [s for s in self.found.spans if start <= s.start < end]

    def _only_name(self, segment: Segment) -> NameSpan | None:
        """The name that a segment holds, where it holds nothing else."""
        names = [] if segment.drafts else self._names_in(segment)
        alone = len(names) == 1 and (names[0].start, names[0].end) == (segment.start, segment.end)
        return names[0] if alone else None

    def _next_in_row(self, segment: Segment) -> NameSpan | None:
        """ "Lasso in six weeks, and Twister, I told them five": a name alone behind another horse's weeks.

        What follows it in the sentence is its own, if a number follows.
        """
        alone = next((s for s in self.found.spans if (s.start, s.end) == (segment.start, segment.end)), None)
        if alone is None:
            return None
        sentence = self._talk.sentence(segment.sentence)
        if not any(m.get("units") in WEEKLY for s in sentence for m in s.mentions):
            return None
        before = [s for s in self.found.spans if sentence[0].start <= s.start < alone.start and s.horse != alone.horse]
        behind = [s for s in sentence if s.index > segment.index]
        counted = any(m.number for s in sentence for m in s.mentions if m.start < alone.start)
        number = next((m.start for s in behind for m in s.mentions if m.number), -1)
        others = [s for s in self.found.spans if alone.end <= s.start < number + 3]
        return alone if before and counted and number >= 0 and not others else None

    def sharing(self, segment: Segment, slot: str) -> list[int]:
        """The horses that a fact is said of together: "five weeks for the pair", "the other two in ten"."""
        if segment.index in self._together:
            return self._together[segment.index]
        cues = {m.get("horse_cues") for m in segment.mentions if self._talk.words[m.start - 1] != "with"}
        everyone = here_today(self._talk, self.found.spans, len(self.found.horses))
        if "pair_any" in cues or self._of_them_all(segment):
            return everyone
        if len(everyone) > 1 and told_of_each(self._talk, segment, slot):
            return self._not_told_yet(segment, slot)
        if slot not in ("next_visit_weeks", "manner"):
            return []
        if slot == "next_visit_weeks":
            cues |= self._cues_of_corrected(segment)
        following = self._following(segment)
        if following is not None and slot == "next_visit_weeks":
            cues |= {m.get("horse_cues") for m in following.mentions}
        if "others" in cues or (slot == "next_visit_weeks" and self._the_other_one(segment)):
            sentence = self._talk.sentence(segment.sentence)
            named = {s.horse for s in self._names_in(*sentence)}
            return [i for i in everyone if i not in (named or {segment.horse})]
        paired = "pair" in cues or any(m.get("feet") == "pair_in_hand" for m in segment.mentions)
        return everyone if paired else []

    def _not_told_yet(self, segment: Segment, slot: str) -> list[int]:
        """The horses of whom the slot was not told before; none where the sentence names its own."""
        sentence = self._talk.sentence(segment.sentence)
        if self._names_in(*sentence):
            return []
        told = [(s, d) for s in self._talk.segments[: segment.index] for d in s.drafts if d.slot == slot]
        named = {i for s, d in told if not d.dropped for i in d.horses or (max(s.horse, 0),)}
        return [i for i in range(len(self.found.horses)) if i not in named or i == segment.horse]

    def _cues_of_corrected(self, segment: Segment) -> set[str | None]:
        """ "Eight weeks the pair, well, no, seven": a number put right is said of whom the first was said of."""
        olds = [m.stands_for.start for m in segment.mentions if m.stands_for is not None]
        said = [s for s in self._talk.sentence(segment.sentence) if any(s.start <= at < s.end for at in olds)]
        named = self._names_in(segment)
        return {m.get("horse_cues") for s in said for m in s.mentions} if not named else set()

    def _the_other_one(self, segment: Segment) -> bool:
        """ "Ten weeks Bodkin, six for the mare": of two horses the one whose name the sentence does not say."""
        sentence = self._talk.sentence(segment.sentence)
        named = {s.horse for s in self._names_in(*sentence)}
        if len(self.found.horses) != SEVERAL or len(named) != 1:
            return False
        told = range(segment.start, segment.end)
        return any(the_horse_behind(self._talk, at) or the_horse_before(self._talk, at) for at in told)

    def _of_them_all(self, segment: Segment) -> bool:
        """ "Pogo, Fiddle and Thimble. All trims, everybody's barefoot.": said of all before anything is said of one."""
        sentence = self._talk.sentence(segment.sentence)
        if any(d for s in self._talk.segments[: sentence[0].index] for d in s.drafts if not d.dropped):
            return False
        if self._names_in(*sentence):
            return False
        words = self._talk.words[sentence[0].start : sentence[-1].end]
        opened = words[:1] in (["both"], ["everybody"], ["everyone"]) or words[:2] in (["all", "three"], ["all", "of"])
        noun = self._talk.words[sentence[0].start + 1 : sentence[0].start + 2]
        feet = [m for m in sentence[0].mentions if m.get("feet") and m.start <= sentence[0].start + 2]
        together = opened and all(m.end - m.start == 1 for m in feet) and noun not in (["his"], ["her"], ["the"])
        return together or bool(set(words) & {"everybody", "everyone"})

    def _following(self, segment: Segment) -> Segment | None:
        """The next segment of the sentence when it is a few words without a fact: "four weeks, the pair of them"."""
        index = segment.index + 1
        if index >= len(self._talk.segments) or self._talk.segments[index].sentence != segment.sentence:
            return None
        following = self._talk.segments[index]
        return following if not following.drafts and following.end - following.start <= 5 else None

    def _named_before(self, before: list[Segment]) -> list[int]:
        """ "Pilchard and Linnet, six weeks": the horses of the segments before that hold a name and nothing else."""
        horses: list[int] = []
        for segment in reversed(before):
            name = self._only_name(segment)
            if name is None:
                break
            horses.append(name.horse)
        return horses if len(horses) > 1 else []

    def _told_together(self, before: list[Segment]) -> list[int]:
        """ "Tahi and Rata are the same job, fores reset, hinds trimmed": what follows is said of both."""
        named = [s for s in before if self._names_in(s)]
        if not named or (named[-1].index != before[-1].index and any(s.drafts for s in before)):
            return []
        names = self._names_in(*named)
        verb = self._talk.words[names[-1].end : names[-1].end + 1]
        together = verb in (["are"], ["were"], ["both"], ["all"], ["get"], ["have"])
        horses = list(dict.fromkeys(n.horse for n in names))
        return horses if together and len(horses) >= SEVERAL else []

    def _only_when(self, span: NameSpan) -> bool:
        """ "When Buck had settled I reset her hinds": nothing is told of Buck."""
        led, behind = self._talk.words[span.start - 1], self._talk.words[span.end : span.end + 1]
        beside = led == "with" and not _BESIDE.isdisjoint(behind)
        return span.role != "opens" and (beside or led in _ONLY_WHEN)

    def sharers(self, segment: Segment) -> list[int]:
        """All horses that a segment speaks of: "Cash and Boomer are on six"."""
        if segment.index in self._together:
            return self._together[segment.index]
        sentence = self._talk.sentence(segment.sentence)
        position = sentence.index(segment)
        shared = [segment.horse]
        if segment.moved:  # "no, sorry, that's Tansy": the name in it was the wrong one
            return shared
        names_here = [s.horse for s in self._names_in(segment) if not self._only_when(s)]
        if not names_here:
            return self._named_before(sentence[:position]) or self._told_together(sentence[:position]) or shared
        shared.extend(h for h in names_here if h not in shared)
        for after in sentence[position + 1 :]:
            name = self._only_name(after)
            if name is None or self._next_in_row(after) is not None:
                break
            shared.append(name.horse)
        if segment.joined_by("and", ", and"):
            for before in reversed(sentence[:position]):
                names = self._names_in(before)
                if len(names) != 1 or before.drafts or names[0].end < before.end:
                    break
                shared.append(names[0].horse)
        return list(dict.fromkeys(shared))
