"""Not every foot: "not all four have thrush" denies it of none, and says of none that it has it; so which is asked.

"Not both fronts, only the left" does say which. So is it asked of "thrush in three of the feet" where no foot follows.
"""

from __future__ import annotations

from pipeline.reading.foot_names import resolve
from pipeline.reading.mentions import Mention
from pipeline.reading.stretches import next_mark
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import HORSE_SLOTS, MatchKind

NOT_EVERY = "not_every"
_NOT = frozenset({"not", "n't"})
_PLAIN = _NOT | {"do", "does", "did", "have", "has", "had", "is", "are", "was", "were"}
_WHOLE = frozenset({"every", "all", "both", "each"})
_LEADING = frozenset({"in", "on", "of", "under", "quite", "necessarily", "exactly", "for"})
_AMONG = frozenset({"single", "last", "of", "the", "his", "her", "its", "their", "those", "two"})
_THEM = frozenset({"four", "them", "one"})
_NOUNS = frozenset({
    "foot", "feet", "hoof", "hooves", "leg", "legs", "shoe", "shoes", "fronts", "hinds", "fores", "backs", "front",
    "fore", "hind", "back",
})  # fmt: skip
_OTHER_THINGS = frozenset({"nails", "nail", "clips", "clenches", "clinches", "horses", "heads", "visits", "sides"})
_JOINED = frozenset({"and", "but", "so", "then", "because", "any", "i", "we", *SENTENCE_ENDS, ","})
_BETWEEN = 6  # tokens from "not" to the feet: "doesn't have any sort of thrush in every foot"
_ONLY = frozenset({"only", "just"})
_SAID_OF_IT = ("findings", "shoe_states", "warmths", "work", "pads", "gaits")
_HAVING = frozenset({"have", "has", "got", "having", "show", "need", "be", "been"})
_PAIRS = ("fronts", "hinds", "lefts", "rights")
_COUNTED = frozenset({"two", "three"})
_OF_THE_FEET = frozenset(
    {("of", whose, feet) for whose in ("the", "his", "her", "its") for feet in ("feet", "hooves")}
    | {("of", "the", "four"), ("feet",), ("of", "four")}
)
_WHICH = "feet that are counted, but not which they are"
ASKED = "that not every foot is meant, but not which"


def mark_not_every(talk: Talk) -> None:
    """Take "not every foot" for no foot; where what follows says which are meant, for those."""
    if not (talk.says(_WHOLE) and talk.says(_NOT)):
        return
    for at in talk.where(_WHOLE):
        denial = _denied_right_there(talk, at)
        end = _end_of_feet(talk, at)
        if end and denial is None:
            denial = _denied_before(talk, at)
        elif not end and denial is not None and _shared_out(talk, at):
            end = at + 1
        if not end or denial is None:
            continue
        _take(talk, denial, at, end)
    talk.in_order()


def mark_not_counted_out(talk: Talk) -> None:
    """Take "three of the feet" for no foot in hand, where no foot is named with it or right behind."""
    for at in talk.where(_COUNTED):
        stretch = talk.words[at + 1 : at + 5]
        size = next((n for n in (3, 2, 1) if len(stretch) >= n and tuple(stretch[:n]) in _OF_THE_FEET), 0)
        single = stretch[:1] == ["feet"] and talk.words[at - 1 : at] not in (["in"], ["on"])
        if not size or single or any(m.get("feet") for m in talk.mentions if m.start <= at < m.end):
            continue
        start = max((i + 1 for i in range(at) if talk.words[i] in SENTENCE_ENDS), default=0)
        stops = [i for i in range(at, len(talk.words)) if talk.words[i] in SENTENCE_ENDS]
        end = (stops[1:2] or [len(talk.words)])[0]
        near = [m for m in talk.having("feet") if start <= m.start < end and not m.dropped]
        counted = [m for m in near if at <= m.start < at + 1 + size]  # "two of the four"
        named = len(near) > len(counted)
        told = [
            m for m in talk.mentions if start <= m.start < (stops or [len(talk.words)])[0] and "findings" in m.readings
        ]
        if told and not named:
            for mention in counted:
                mention.dropped = True
            readings = {NOT_EVERY: _WHICH}
            talk.mentions.append(
                Mention(at, at + 1 + size, tuple(range(at, at + 1 + size)), readings, MatchKind.VARIANT)
            )
    talk.in_order()


def _take(talk: Talk, denial: Mention, at: int, end: int) -> None:
    meant = _meant(talk, end)
    feet = None if meant is None else _of_the_pair(talk, meant, at, end)
    for mention in talk.mentions:
        named = at - 1 <= mention.start and mention.end <= end and mention.is_any(("feet", "totals"))
        counted = at <= mention.start < end and mention.number is not None
        if mention is denial or named or counted:
            mention.dropped = True
    pair = _told_before(talk, denial, end)
    if feet is not None and pair is None and not _told_with(talk, at, end):
        return  # "heat, not in every foot, only in the hinds": of what was told before
    if meant is not None:
        meant.dropped = True
    if pair is not None and feet is not None:
        pair.readings["feet"] = feet  # "thrush in the hinds, not both, just the left"
        return
    readings = {NOT_EVERY: ASKED} if feet is None else {"feet": feet}
    talk.mentions.append(Mention(at, end, tuple(range(at, end)), readings, MatchKind.VARIANT))


def _told_with(talk: Talk, at: int, end: int) -> bool:
    """Whether what it is said of stands with it, between the same marks."""
    while at and talk.words[at - 1] not in (",", *SENTENCE_ENDS):
        at -= 1
    while end < len(talk.words) and talk.words[end] not in (",", *SENTENCE_ENDS):
        end += 1
    return any(m.is_any(_SAID_OF_IT) for m in talk.mentions if at <= m.start < end)


def _of_the_pair(talk: Talk, meant: Mention, at: int, end: int) -> str | None:
    """The foot that "only the left" is of "both fronts", of the pair told before; None where no pair was told."""
    name = meant.readings["feet"]
    if not name.startswith("bare_"):
        return name
    whole = [str(m.get("feet")) for m in talk.mentions if m.end <= end and m.get("feet") in ("fronts", "hinds")]
    resolved = resolve(name, resolve(whole[-1], None)) if whole else None
    return resolved[0] if resolved else None


def _told_before(talk: Talk, denial: Mention, end: int) -> Mention | None:
    """The pair that "not both" narrows, when it stands alone behind it."""
    alone = talk.words[end - 1] == "both" and talk.words[denial.start - 1 : denial.start] in ([","], ["."])
    pairs = [m for m in talk.mentions if m.end < denial.start and m.get("feet")] if alone else []
    return pairs[-1] if pairs and pairs[-1].get("feet") in _PAIRS else None


def _denied_right_there(talk: Talk, at: int) -> Mention | None:
    """ "Not every", "isn't in all": the plain denial right before the whole."""
    while at and talk.words[at - 1] in _LEADING:
        at -= 1
    return _plain_denial(talk, at)


def _plain_denial(talk: Talk, end: int) -> Mention | None:
    """The denial by a mere "not" before the token, "doesn't have" too: no "couldn't find any"."""
    if not end or talk.words[end - 1] not in _NOT:
        return None
    told = [m for m in talk.mentions if m.start < end <= m.end and m.get("denials") == "before"]
    plain = [m for m in told if _PLAIN.issuperset(talk.words[m.start : m.end])]
    return plain[0] if plain else None


def _denied_before(talk: Talk, at: int) -> Mention | None:
    """ "He hasn't thrush in every foot": a denial before what it is denied of; not "… no thrush in any"."""
    if talk.words[at - 1] not in _LEADING or talk.words[at] == "both":
        return None
    for index in range(at - 1, max(at - _BETWEEN, 0), -1):
        if talk.words[index - 1] in _NOT:
            told = any(m.is_any(_SAID_OF_IT) for m in talk.mentions if index <= m.start < at)
            return _plain_denial(talk, index) if told else None
        if talk.words[index - 1] in _JOINED:
            return None
    return None


def _end_of_feet(talk: Talk, at: int) -> int:
    """Where "every one of his feet", "all four", "both of the hinds" ends; 0 where no feet are told."""
    index, counted = at + 1, False
    while index < len(talk.words) and (talk.words[index] in _AMONG or talk.words[index] in _THEM):
        counted = counted or talk.words[index] in _THEM
        index += 1
    name = talk.mention_starting(index)
    if name is not None and name.get("horse") and talk.words[name.end : name.end + 1] == ["'s"]:
        index = name.end + 1
    behind = talk.words[index : index + 1]
    if behind and behind[0] in _NOUNS:
        more = talk.words[index + 1 : index + 2]
        return index + 2 if more and more[0] in _NOUNS else index + 1
    alone = talk.words[at] == "both" and index == at + 1 and (not behind or behind[0] in (",", *SENTENCE_ENDS))
    return index if alone or (counted and not _OTHER_THINGS & set(behind)) else 0


def _shared_out(talk: Talk, at: int) -> bool:
    """ "The feet don't all have it", "the shoes weren't all loose": the whole stands behind the verb of its feet."""
    if talk.words[at] not in ("all", "both"):
        return False
    start = at
    while start and talk.words[start - 1] not in (",", *SENTENCE_ENDS):
        start -= 1
    feet = any(m.get("feet") for m in talk.mentions if start <= m.start < at)
    feet = feet or not _NOUNS.isdisjoint(talk.words[start:at]) or "they" in talk.words[start:at]
    behind = talk.mention_starting(at + 1)
    told = behind is not None and behind.is_any(_SAID_OF_IT)
    return feet and (told or not _HAVING.isdisjoint(talk.words[at + 1 : at + 2]))


def _meant(talk: Talk, end: int) -> Mention | None:
    """ "… , just the fronts": the feet that have it, named alone behind "just" or "only"."""
    stop = next_mark(talk, end, SENTENCE_ENDS)
    for foot in [m for m in talk.mentions if end < m.start < stop and m.get("feet")]:
        lead = foot.start
        while lead > end and talk.words[lead - 1] in ("the", "in", "on", "his", "her"):
            lead -= 1
        alone = talk.words[foot.end : foot.end + 1] in ([], [","], ["."], [";"], ["!"])
        if talk.words[lead - 1] in _ONLY:
            return foot if alone else None
    return None


def drop_not_every(talk: Talk) -> None:
    """Keep nothing that is said of not every foot, and ask which are meant."""
    for mention in talk.having(NOT_EVERY):
        segment = talk.segment_at(mention.start)
        if segment is None:
            continue
        told = [d for d in segment.drafts if d.slot not in HORSE_SLOTS]
        for draft in told:
            draft.drop("not every foot: which is not said")
        if told or _goes_on(talk, segment):
            talk.unread.append((mention.start, mention.end, mention.readings[NOT_EVERY]))


def _goes_on(talk: Talk, segment: Segment) -> bool:
    """ "Thrush, not all four have it": what it is said of was told just before."""
    return any(d.slot not in HORSE_SLOTS for s in talk.sentence(segment.sentence) for d in s.drafts)
