"""Shoe sizes and nails that are told of the horse or of what is left: "he's a six", "which makes seven in the near"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import NumberContext
from pipeline.reading.numbers import Number
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_WORN_BY = frozenset(
    {"'s", "is", "are", "'re", "was", "were", "takes", "took", "wears", "wore", "wearing", "into", "gets", "got"}
)
_FIRMLY_WORN = frozenset({"wearing", "wears", "wore", "into", "takes", "took"})
_STANDS = frozenset({"'s", "is", "are", "'re", "was", "were", "goes", "go", "stays", "still", "both", "now", "back"})
_SOFTENED = frozenset({"still", "now", "just", "only", "about", "probably", "always", "a", "an"})
_CLOSES = frozenset({",", ".", "and", "but", "now", "today", "they", "the", "all", "on", "in", "so", "last", "before"})
_SHOEING = ("work", "shoe_types", "shoe_materials")
_HEADS = ("lameness", "obel", "grade", "body_condition", "cresty_neck", "wedge", "nails", "nail_size")
_LARGEST = 12  # the largest shoe size kept
_MOST_NAILS = 10
_FEWEST_NAILS = 3
_COUNTED = frozenset({"makes", "leaves", "leaving", "making", "'s", "is", "are", "so", "and", ",", "left"})
_FEWEST_GOT = 4  # "got two", "has three" may be a size; common practice, no source
_GOT = frozenset({"got", "gets", "has", "have", "had", "took"})
_ON = frozenset({"on", "got", "has", "took", "'s", "only"})
_LEADING = _COUNTED | _GOT | _ON | {"with"}
_BACK_ON = ("put_back", "reset", "new_shoe")


class WornNumbers(NumberContext):
    """Rules for numbers that no word of size or nails stands beside."""

    def _worn_size(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "He's a six all round"; "fours they are"; "she took fives last year"; "she's in a four on both fronts"."""
        noun = number.article or number.plural or bool(number.aughts)
        if not noun or number.value > _LARGEST or number.value.denominator > 2 or number.out_of is not None:
            return False
        behind = self._words[mention.end : mention.end + 1]
        if behind and behind[0] not in _CLOSES and not self._foot_at(mention.end):
            return False
        old = mention.stands_for
        first = old.start if old is not None and old.start < segment.start else mention.start
        begins = segment.start if first == mention.start else self._sentence(segment)[0].start
        at = first - 1
        while at > begins and self._words[at] in _SOFTENED:
            at -= 1
        told = self._words[mention.end : mention.end + 2] in (["they", "are"], ["they", "'re"], ["she", "is"])
        verb = self._words[at] if at >= begins else ""
        named = self._words[max(begins, at - 1) : at] in (["shoe"], ["shoes"])
        stands_in = verb == "in" and at > begins and self._words[at - 1] in _STANDS
        verb = "into" if stands_in else verb
        firm = verb in _FIRMLY_WORN and bool(segment.having("feet") or number.plural)
        if not (told or verb in _WORN_BY) or not (named or firm or self._shod_near(segment)):
            return False
        if not named and not self._worn_beside_nails(verb, number) and self._scored_near(segment):
            return False
        self._set_frame("shoe_size", segment)
        value = "0" * number.aughts if number.aughts else f"{float(number.value):g}"
        return self._add(segment, "shoe_size", value, mention)

    def _worn_beside_nails(self, verb: str, number: Number) -> bool:
        """ "Three and a half nails, and he's wearing a four": a horse wears its shoes, whatever was told of nails."""
        nailed = self._frame is not None and self._frame.slot in ("nails", "nail_size")
        return nailed and number.article and verb in ("wears", "wearing")

    def _foot_at(self, index: int) -> bool:
        foot = self._talk.mention_starting(index)
        return foot is not None and foot.get("feet") is not None

    def _near(self, segment: Segment) -> list[Segment]:
        """The segments of this sentence and the one before that are the same horse's."""
        before = self._talk.segments[: segment.index + 1]
        return [s for s in before if s.horse == segment.horse and segment.sentence - s.sentence <= 1]

    def _shod_near(self, segment: Segment) -> bool:
        frame = self._frame
        sized = frame is not None and frame.slot == "shoe_size" and segment.sentence - frame.sentence <= 1
        near = self._near(segment)
        done = any(d.slot == "work" for s in near for d in s.drafts)
        return sized or done or any(m.is_any(_SHOEING) for s in near for m in s.mentions)

    def _scored_near(self, segment: Segment) -> bool:
        frame = self._frame
        framed = frame is not None and frame.slot in _HEADS and frame.sentence == segment.sentence
        framed = framed or self._scored_then(segment)
        said = self._sentence(segment)
        return framed or any(m.get("measures") in _HEADS or m.get("gaits") for s in said for m in s.mentions)

    def _nails_left(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Took a nail out, which makes seven in the near fore"; "nailed it back on with six"; "that's on six"."""
        before = self._words[mention.start - 1] if mention.start > segment.start else ","
        if before not in _LEADING:
            return False
        whole = number.value.denominator == 1 and number.aughts is None and number.high is None
        if not whole or number.plural or number.article or not _FEWEST_NAILS <= number.value <= _MOST_NAILS:
            return False
        sizing = (
            self._frame is not None and self._frame.slot == "nail_size" and self._frame.sentence == segment.sentence
        )
        if before in _COUNTED and self._in_foot(mention.end) and self._nail_near(segment) and not sizing:
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value, mention)
        closed = not set(self._words[mention.end : mention.end + 1]) - {",", "and", "but", ";", *SENTENCE_ENDS}
        if before == "with" and (closed or self._foot_at(mention.end + 1)) and self._put_on(segment, mention):
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value, mention)
        if before in _GOT and closed and self._got(segment, mention, number):
            self._set_frame("nails", segment)
            return self._add(segment, "nails", number.value, mention)
        frame = self._frame
        counting = frame is not None and frame.slot == "nails" and frame.sentence == segment.sentence
        apart = any("-" in str(m.get("feet")) for s in self._sentence(segment) for m in s.mentions)
        led = self._words[segment.start] in ("that", "which", "where", "it")
        return (
            counting
            and apart
            and led
            and closed
            and before in _ON
            and (self._add(segment, "nails", number.value, mention))
        )

    def _put_on(self, segment: Segment, mention: Mention) -> bool:
        """ "Reset with six", "the hinds are on with eight", "hung them on with six": a shoe that the nails hold."""
        if any(m.get("work") in _BACK_ON and m.start < mention.start for m in segment.mentions):
            return True
        on = self._words[mention.start - 2] == "on" and mention.start - 2 >= segment.start
        return on and (bool(segment.having("feet")) or self._shod_near(segment))

    def _got(self, segment: Segment, mention: Mention, number: Number) -> bool:
        """ "Hinds reset, near hind's got six": how many nails hold a shoe just told of."""
        frame = self._frame
        other = frame is not None and frame.slot != "nails" and segment.sentence - frame.sentence <= frame.heading
        foot = next((m for m in segment.having("feet") if m.start < mention.start), None)
        led = foot is not None and set(self._words[foot.end : mention.start]) <= _GOT | {"'s", "'ve", "only", "both"}
        on = any(d.slot == "work" and d.value in _BACK_ON for s in self._near(segment) for d in s.drafts)
        return led and on and not other and number.value >= _FEWEST_GOT

    def _in_foot(self, index: int) -> bool:
        at = index + 1
        while self._words[at : at + 1] and self._words[at] in ("the", "his", "her"):
            at += 1
        return self._words[index : index + 1] == ["in"] and (self._foot_at(at) or self._foot_at(index))

    def _nail_near(self, segment: Segment) -> bool:
        near = self._near(segment)
        words = {w for s in near for w in self._words[s.start : s.end]}
        return bool(words & {"nail", "nails"}) or any(
            m.get("findings") in ("close_nail", "quicked") for s in near for m in s.mentions
        )

    def _count_the_other(self) -> None:
        """ "Size eight, no, that's the nail": the number just said is the nail's, or the shoe's."""
        other = {"nail": "nail_size", "nails": "nail_size", "shoe": "shoe_size", "shoes": "shoe_size"}
        for at in range(len(self._words) - 3):
            if self._words[at] != "that" or self._words[at + 1 : at + 3] not in (
                ["'s", "the"],
                ["was", "the"],
                ["is", "the"],
            ):
                continue
            slot = other.get(self._words[at + 3])
            if slot is None or self._words[at + 4 : at + 5] not in ([","], ["."], []):
                continue
            stops = [i for i in range(at) if self._words[i] in SENTENCE_ENDS]
            start = stops[-2] if len(stops) > 1 else 0
            said = [d for s in self._talk.segments for d in s.drafts if start <= d.start and d.end <= at]
            sizes = [d for d in said if d.slot in ("shoe_size", "nail_size")]
            if sizes:
                sizes[-1].slot = slot
                sizes[-1].note(f"{slot}: put right")


def wears(talk: Talk, draft: Draft) -> bool:
    """ "He was in a three, I've dropped him to a two, new half rounds in front": a size of the horse, not of a foot."""
    led = talk.words[draft.segment.start : draft.start]
    return draft.slot == "shoe_size" and led[-1:] == ["a"] and not {"he", "she", "him", "her"}.isdisjoint(led)
