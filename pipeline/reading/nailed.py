"""The nail line told by the nails themselves: "nailed a bit low", "the nails came out good and high"."""

from __future__ import annotations

from fractions import Fraction

from pipeline.reading.mentions import Mention
from pipeline.reading.number_context import UNPLACED
from pipeline.reading.shoeing_line import feet_meant, feet_of, line_before, told_of
from pipeline.reading.talk import Draft, Segment, Talk

_LIGHT = frozenset({
    "him", "her", "it", "them", "on", "a", "bit", "little", "touch", "shade", "tad", "wee", "too", "quite", "pretty",
    "fairly", "out", "up", "in", "all", "nice", "and", "good",
})  # fmt: skip
_SAID = frozenset({"nailed", "nails"})
_CAME = frozenset({"came", "come", "coming", "ended", "finished"})
_LOW = frozenset({"low", "lowish"})
_GOOD = frozenset({"good", "level", "even", "high", "nice", "nicely", "well", "sweet"})
_ARE = (["are"], ["were"], ["sit"], ["sat"])
_REACH = 6
_FAR_IN_A_FOOT = 2
_USUAL_NAIL = Fraction(7, 2)  # below it a size is rather the shoe's; common practice, no source
FAR_FROM_ITS_SIZE = 3  # sizes between the shoes of one horse; common practice, no source


def draft_nailed(talk: Talk) -> None:
    """A ``nail_line`` draft where nails are said to be low, or to have come out well, without the word line."""
    places = talk.where(_SAID)
    for segment in talk.segments if places else ():
        if segment.having("nail_line_heads"):
            continue
        for at in [at for at in places if segment.start <= at < segment.end]:
            if talk.words[at] == "nailed":
                _add(talk, segment, at, at + 1, _LOW)
            elif talk.words[at] == "nails" and talk.words[at + 1 : at + 2] and talk.words[at + 1] in _CAME:
                _add(talk, segment, at, at + 2, _LOW | _GOOD)
            elif talk.words[at] == "nails" and talk.words[at + 1 : at + 2] in _ARE:
                _add(talk, segment, at, at + 2, _LOW)  # how else they are, good or high, may be their clinches


def of_a_sized_shoe(talk: Talk, segment: Segment, count: Fraction, foot: Mention) -> bool:
    """ "Both hinds, size two, six in the near hind and seven in the off": too far from that size to be another."""
    line = line_before(talk, segment)
    sized = told_of(segment, line, foot.start, "shoe_size")
    own = feet_meant(segment, line)
    if not sized or not own <= feet_of(sized):
        return False
    largest = max(Fraction(str(d.value).rsplit("-", 1)[-1]) for d, feet in sized if feet & own)  # every nought is none
    one_by_one = str(foot.get("feet"))[:-1] in ("L", "R", "bare_")
    return count - largest >= (_FAR_IN_A_FOOT if one_by_one else FAR_FROM_ITS_SIZE)


def size_behind_count(talk: Talk, drafts: list[Draft], worded: Mention, mention: Mention) -> bool:
    """ "Four nails a side, size five": theirs though no size of shoe was told, from the smallest usual nail on.

    Asked where the shoe is new, whose size is missed, or its kind is told behind ("six nails each, size five, steel").
    """
    number, between = mention.number, talk.words[drafts[-1].end : worded.start]
    if number is None or number.value < _USUAL_NAIL or "," in between[:-1] or drafts[-1].slot != "nails":
        return False
    if talk.words[worded.start].startswith("shoe") or between[-1:] != [","]:
        return False
    end = mention.end + (talk.words[mention.end : mention.end + 1] == [","])
    behind = talk.mention_starting(end)
    shod = behind is not None and behind.is_any(("shoe_types", "shoe_materials"))
    if shod or any(d.value == "new_shoe" for d in drafts):
        talk.unread.append((worded.start, mention.end, UNPLACED))
    return True


def _add(talk: Talk, segment: Segment, start: int, at: int, answers: frozenset[str]) -> None:
    """Add the draft when one of the answers closes a short run of little words behind the verb."""
    stop = min(segment.end, at + _REACH)
    end = next((i for i in range(at, stop) if talk.words[i] in answers and not _goes_on(talk, segment, i)), None)
    if end is None or not set(talk.words[at:end]) <= _LIGHT | answers or _taken(segment, end):
        return
    draft = Draft("nail_line", "low" if talk.words[end] in _LOW else "good", segment, start, end + 1)
    draft.evidence.update({start, end})
    draft.note("nail_line: by the nails")
    segment.draft(draft)


def _goes_on(talk: Talk, segment: Segment, at: int) -> bool:
    """ "Nice and even": the word before "and" does not close it."""
    return talk.words[at + 1 : at + 2] == ["and"] and at + 1 < segment.end


def _taken(segment: Segment, at: int) -> bool:
    """Whether the word belongs to something else that was found."""
    mention: Mention | None = next((m for m in segment.mentions if at in m.literal), None)
    return mention is not None and not mention.is_any(("nail_lines", "severities", "manners", "fillers", "horse_cues"))
