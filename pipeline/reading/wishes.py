"""What was thought of, begun with, asked for or regretted, where another of its kind was put on or nothing was."""

from __future__ import annotations

from pipeline.reading.brought_in import PEOPLE
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import PLANNABLE
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.reading.tokens import NOT
from pipeline.record import Status
from pipeline.vocabulary import CLASS_SLOTS

_ONE_OF_A_KIND = frozenset({"shoe_type", "shoe_material", "shoe_size", "pad", "packing", "clips", "nail_size", "wedge"})
_SHOEING = frozenset({"reset", "new_shoe"})  # the same shoes or new ones, never both
_SHOD = frozenset({"reset", "new_shoe", "put_back"})
HAVE, _SOONER = frozenset({"have", "'ve"}), frozenset({"rather", "sooner", "maybe", "probably", "really"})
_MODAL = frozenset({"should", "could", "would", "'d"})
_PARTICIPLES = frozenset({
    "put", "had", "been", "gone", "done", "left", "kept", "given", "got", "gotten", "taken", "shod", "set", "stuck",
    "made", "brought",
})  # fmt: skip
_RUN_OUT = frozenset({"out", "up", "last", "finished", "left"})
_PROMISED = frozenset({"told", "promised"})
_WISHING = frozenset({"like", "love", "fancies", "prefer", "sooner", "rather", "push", "have"})
_GETTING = frozenset({"getting", "get", "gets", "having", "have", "giving", "'ll", "be", "her", "him", "them", "'s"})
_IDEA, _IT = frozenset({"idea", "notion"}), frozenset({"it", "them", "that", "those"})
_CLOSING: tuple[list[str], ...] = ([], ["."], [","], ["and"], ["but"], ["week"], ["weeks"], ["instead"])
_ON_WISH = _ONE_OF_A_KIND - {"shoe_size", "nail_size"} | {"traction", "treatment"}
_WANTED, _GRANTED = (
    {"wanted", "asked", "like"},
    {"so", "put", "got", "gave", "fitted", "did", "done", "now", "that", "went"},
)
_DID_IT = frozenset({"did", "done", "got", "gave"})
_OWNERS, _PUT_IT = frozenset({"she", "he", "they", "client", "boss", "customer"}), 5  # "I put it on"
_UNREAL = Sayings(
    *(f"{were} {so}" for were in ("if it were", "if it was", "were it") for so in ("up to me", "my horse")),
    *(f"{were} mine" for were in ("if she were", "if she was", "if he were", "if he was", "were she", "were he")),
    *(f"{had} my {way}" for had in ("if i had", "had i", "if i got") for way in ("way", "choice", "druthers")),
    "if i had the choice", "if i had a choice", "given the choice", "left to me", "in a perfect world",
    "in an ideal world",
)  # fmt: skip
_WOULD, _BUT_SO = frozenset({"would", "'d"}), ("but", "so", ", but", ", so", "and so", ", and so")
_NEAR = 2  # sentences between the thought and what was put on
_CUED = frozenset({"doubts", "vet", "wishes"})


def drop_wished(talk: Talk) -> None:
    """Take out what was only wished for, where the same stretch of talk names what stands in its place."""
    if talk.tells(_UNREAL):
        _drop_unreal(talk)
    cued = talk.having("wishes") or talk.having("doubts", "before") or "wanted" in talk.words
    for segment in talk.segments if cued else ():
        for cue in _cues(talk, segment):
            for draft in _wished(talk, segment, cue):
                words = {*talk.words[cue.start : cue.end]}
                planned = draft.status is Status.PLANNED and {"would", "'d"} & words
                short = draft.status is Status.HISTORY and _RUN_OUT & words  # "a one, I ran out of noughts"
                if (draft.status is Status.PRESENT or planned or short) and _put_on_instead(talk, draft):
                    draft.drop("another was put on")
                elif draft.status is Status.PRESENT and _wished_by_owner(talk, cue, draft):
                    draft.drop("only wished for")
                    talk.unread.append((cue.start, draft.end, "a wish, but not whether it was done"))
                elif draft.status is Status.PRESENT and (
                    (words & _IDEA and _may_try(talk, segment)) or (words & _WANTED and _of_others(talk, cue, draft))
                ):
                    draft.status = Status.PLANNED
                    draft.note("only wished for")


def _drop_unreal(talk: Talk) -> None:
    """ "If it were up to me she'd have a full pad, but I reset it": no plan, and what "but" brings is so today."""
    for at, form in talk.turns(_UNREAL):
        segment = talk.segment_at(at)
        later = [s for s in talk.sentence(segment.sentence) if s.index >= segment.index] if segment else []
        stop = next((s.start for s in later if s.start > at and s.joined_by(*_BUT_SO)), len(talk.words))
        told = [d for s in later for d in s.kept if d.slot in PLANNABLE and d.start > at]
        told = told if not _WOULD.isdisjoint(talk.words[at + len(form) : stop]) else []
        unreal = [d for d in told if d.start < stop]
        for draft in unreal:
            draft.drop("only if it were so")
        if unreal:
            talk.unread.append((at, unreal[-1].end, "what would be, but not whether it was done"))
        for draft in told[len(unreal) :]:
            if draft.status is Status.PLANNED and not draft.segment.having("plans"):
                draft.status = Status.PRESENT
                draft.note("as it is")


def _of_others(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "The vet wanted egg bars in front": a wish, unless they are said to be on behind it, or told of again."""
    who = talk.words[cue.start if cue.get("vet") else cue.start - 1]
    return who in PEOPLE and draft.slot in _ON_WISH and not _granted(talk, draft)


def _wished_by_owner(talk: Talk, cue: Mention, draft: Draft) -> bool:
    """ "She wanted studs on behind. Reset all four.": nobody says that they are on, which is asked.

    So is "owner wanted a trim all round"; "hinds only wanted a trim" is no wish.
    """
    asked = talk.words[cue.start : cue.end] == ["wanted"] or talk.words[cue.end - 2 : cue.end] == ["asked", "for"]
    who = {talk.words[cue.start - 1], talk.words[cue.start]}
    if draft.slot == "work" and talk.words[cue.start - 1] in PEOPLE:
        behind = set(talk.words[draft.end : talk.sentence(draft.segment.sentence)[-1].end + _NEAR])
        return asked and (_DID_IT.isdisjoint(behind) or not NOT.isdisjoint(behind))
    wished = draft.slot in _ON_WISH or draft.value in ("trim", "removed")
    return asked and wished and not who.isdisjoint(_OWNERS) and not _granted(talk, draft)


def _granted(talk: Talk, draft: Draft) -> bool:
    same = [d for d in talk.drafts if (d.slot, d.value) == (draft.slot, draft.value) and d is not draft]
    again = any(d.status is not Status.PLANNED for d in same)  # not "they asked for boots, the boots go on next week"
    end = talk.sentence(draft.segment.sentence)[-1].end
    behind = talk.words[end : end + _PUT_IT]
    put = not _IT.isdisjoint(behind) and not _GRANTED.isdisjoint(behind)
    return again or put or not _GRANTED.isdisjoint(talk.words[draft.end : end + _NEAR])


def _may_try(talk: Talk, idea: Segment) -> bool:
    """ "Rubber shoes were her idea, and I might try them": an idea for a later day."""
    later = [s for s in talk.sentence(idea.sentence) if s.index >= idea.index and s.having("plans", "before")]
    return any(_IT & {*talk.words[s.start : s.end]} for s in later)


def _cues(talk: Talk, segment: Segment) -> list[Mention]:
    """The words for a wish, and "I'm thinking aluminum", which doubts a finding and weighs a shoe."""
    if _CUED.isdisjoint(segment.named):
        return []
    weighed = [m for m in segment.having("doubts", "before") if "thinking" in talk.words[m.start : m.end]]
    asked = [m for m in segment.having("vet") if talk.words[m.end - 1] == "wanted"]
    return [*segment.having("wishes"), *weighed, *asked]


def _wished(talk: Talk, segment: Segment, cue: Mention) -> list[Draft]:
    """The drafts that the cue tells of: behind it up to the next clause, or right before it."""
    work = "wanted" in talk.words[cue.start : cue.end]  # "she wanted the hinds trimmed"
    own = [d for d in segment.kept if _of_a_kind(d) or d.slot in _ON_WISH or (work and d.slot == "work")]
    if cue.get("wishes") == "after":
        return [d for d in own if d.end <= cue.start][-1:]
    wished = [d for d in own if d.start >= cue.start and d.start not in cue.literal]
    if _PROMISED & set(talk.words[cue.start : cue.end]):
        return [d for d in wished if not _says(talk, cue.end, d.start)]
    for later in talk.sentence(segment.sentence):
        if later.index <= segment.index:
            continue
        if later.own_clause or later.delimiter != "and":
            break
        wished += [d for d in later.drafts if not d.dropped and _of_a_kind(d)]
    return wished


def _says(talk: Talk, start: int, end: int) -> bool:
    """ "I told her he's in egg bars": a statement of what is; "I told her egg bars" is one of what was to be."""
    return any(talk.plays(role, start, end) for role in ("subject", "past", "present"))


def _of_a_kind(draft: Draft) -> bool:
    return draft.slot in _ONE_OF_A_KIND or (draft.slot == "work" and draft.value in _SHOEING)


def _put_on_instead(talk: Talk, wished: Draft) -> bool:
    """Whether another of its kind is told as done today, on the same feet, close by; or that work again."""
    near = [
        s
        for s in talk.segments
        if abs(s.sentence - wished.segment.sentence) <= _NEAR
        or (wished.value == "boot" and s.index < wished.segment.index)
    ]
    for draft in [d for s in near if s.horse == wished.segment.horse for d in s.kept]:
        one, other = set(draft.feet or ()), set(wished.feet or ())
        same = (draft.slot == wished.slot and _of_a_kind(draft)) or _nails_begun_with(talk, draft, wished)
        elsewhere = bool(one) and bool(other) and not one & other
        again = draft.slot == wished.slot == "work" and draft.value == wished.value and draft.start > wished.start
        other_one = draft is not wished and ((same and draft.value != wished.value) or again) and not elsewhere
        instead = _shod_not_booted(draft, wished) or _packed_instead(talk, draft, wished)
        other_one = other_one or (instead and not elsewhere)
        if other_one and draft.status is Status.PRESENT and not _is_wished(talk, draft):
            return True
    return False


def _nails_begun_with(talk: Talk, nails: Draft, wished: Draft) -> bool:
    """ "Size four, three and a half nails. I started with fives": behind the nails of a sized shoe a size is theirs."""
    own = [d for s in talk.segments if s.horse == wished.segment.horse for d in s.drafts if d.end <= wished.start]
    sized = any(d.slot == "shoe_size" and d.feet == wished.feet for d in own)
    return wished.slot == "shoe_size" and nails.slot == "nail_size" and nails in own and sized


def _packed_instead(talk: Talk, done: Draft, wished: Draft) -> bool:
    """ "I first thought frog support pads, but no, I've packed silicone in them instead": the one for the other."""
    said = "instead" in talk.words[done.segment.start : done.segment.end]
    return said and {done.slot, wished.slot} == {"pad", "packing"}


def _shod_not_booted(done: Draft, wished: Draft) -> bool:
    """ "New shoes in front. Boots were what the owner wanted": a shod foot wears no boot."""
    return wished.value == "boot" and done.slot == "work" and done.value in _SHOD


def _is_wished(talk: Talk, draft: Draft) -> bool:
    return any(draft in _wished(talk, draft.segment, cue) for cue in _cues(talk, draft.segment))


def regretted(talk: Talk, segment: Segment) -> list[int]:
    """ "I should have put pads on", "would rather have had bars": behind what, by the modal, did not come to pass."""
    words = talk.words
    have = [i for i in range(segment.start + 1, segment.end - 1) if words[i] in HAVE]
    led = [i - 1 if words[i - 1] in _SOONER else i for i in have]
    return [i + 2 for i, at in zip(have, led, strict=True) if words[at - 1] in _MODAL and _took_place(words[i + 1])]


def _took_place(word: str) -> bool:
    return word in _PARTICIPLES or (word.endswith("ed") and word != "need")


def weeks_wished(talk: Talk, segment: Segment, later: list[Segment]) -> bool:
    """ "She'd like ten weeks and she's getting seven", "… and seven is what she'll get": not what was wished for."""
    words = talk.words[segment.start : segment.end]
    if _WISHING.isdisjoint(words) or words[0] in ("i", "we") or not later or later[0].joined_by("or", ", or"):
        return False  # "he'd like five weeks, or it can be six"
    told = [m for s in later for m in s.mentions]
    numbers = [m for m in told if m.number is not None and not m.dropped]
    given = [
        (talk.words[m.start - 1] in _GETTING and talk.words[m.end : m.end + 1] in _CLOSING)
        or talk.words[m.end : m.end + 2] == ["is", "what"]
        for m in numbers
    ]  # not "in six weeks, and get four done together"
    return any(given) and not any(m.is_any((*CLASS_SLOTS, "feet", "measures", "horse")) for m in told)
