"""A correction cut short: in "rim pads, no, mesh" and "toe clips, I mean quarter" the noun is that of before."""

from __future__ import annotations

from collections.abc import Callable

from pipeline.reading.exchanges import kind_of, window
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import MatchKind
from pipeline.vocabulary import CLASS_SLOTS

Lookup = Callable[[str], dict[str, str]]
_CLASSES = ("pads", "clips", "shoe_types", "packings")
_CLOSING = frozenset({",", ".", "and", "on", "in", "under", "up", "behind", "all", "both", "i", "not"})
_HEADS = {"pads": "pads", "clips": "clips"}
_HEADING = frozenset(_HEADS)
_PARTS = frozenset({"soles", "sole", "heels", "heel", "toes", "toe", "walls", "wall", "feet", "bars"})
_PARTED = frozenset({",", ":", "-", ";", "."})
_LED = frozenset({"the", "his", "her", "front", "hind", "then", "and", "now"})
_ADVERBS = frozenset({"a", "bit", "little", "very", "quite", "rather", "still", "pretty", "too", "are", "is", "both"})
_KINDS = frozenset({"rim", "trailer", "bar", "tip"})  # of shoes: alone they may be anything
_SHOE_WORDS = frozenset({"shoe", "shoes", "plate", "plates"})
_QUALITIES = {
    "flat": "flat_sole", "thin": "thin_sole", "dropped": "dropped_sole", "sheared": "sheared_heels",
    "contracted": "contracted_heels", "pinched": "contracted_heels", "collapsed": "underrun_heels",
    "crushed": "underrun_heels", "weak": "weak_wall", "soft": "weak_wall",
}  # fmt: skip
_LITTLE = frozenset({"little"})
_ALL, _IT = frozenset({"all"}), (["it"], ["that"], ["they"])
_OF_ONE_PART = frozenset(_QUALITIES)
_LED_TO_QUALITY = frozenset({",", "and", "just", "only", "also", "but", "more", "mean"})
_BEHIND_QUALITY = frozenset({".", ",", "on", "in", "behind", "too", "and", "as", "with", "into"})
_AS_WELL = frozenset({"too", "as", "with", "into"})
_STUFF, _UNDER = frozenset({"leather"}), ("pads", "packings")
_BESIDE = frozenset({"and", "or", "with", "over"})
_POURED = frozenset({"poured", "repoured", "pour"})
_POUR_ENDS: tuple[list[str], ...] = ([], ["."], [","], ["and"], ["next"], ["again"], ["today"])
_KIND = 3  # words that may name the kind of a shoe
_SHOD = ("shoe_types", "shoe_materials", "work")
_TOO_AT, _FITTED = 6, ("shoe_types", "pads", "work", "measures")
_ELSEWHERE = ("findings", "tester_heads", "pads", "not_facts")
_BESIDE_SHOES = frozenset({
    "pad", "pads", "padded", "truck", "ramp", "load", "loaded", "hitch", "bought", "quid", "dollars", "bucks", "money",
})  # fmt: skip
_IT_IS = frozenset({"a", "it", "'s", "is", "only", "just", "i", "made", "him", "her", "that", "short", "and", "but"})
_PUTTING_ON = frozenset({
    "gets", "get", "got", "set", "sets", "has", "have", "put", "puts", "nailed", "made", "takes", "take", "wants",
    "needs", "wears", "give", "gave", "hung", "fitted", "him", "her", "and",
})  # fmt: skip
_ITS = (["it", "'s"], ["they", "'re"])
_THE, _TOO = frozenset({"the", "that", "those", "his", "her"}), frozenset({"too", "as", "well", "enough"})
_PART_ENDS = frozenset({",", ".", "and", "so"})
_BEING = _ADVERBS | {"'s", "'re", "was", "were", "not", "n't"}
_THEY_ARE = Sayings("pads are", "pads were", "pad is", "pad 's", "pad was", "pads 're")
_HEADED = 8  # tokens from the heading to the comma behind its feet
_LEADING = frozenset(
    {",", "wait", "they", "it", "'re", "'s", "was", "were", "the", "make", "that", "uh", "um", "actually"}
)


def complete_clipped(talk: Talk, lookup: Lookup) -> None:
    """Make a mention of the one word behind a repair cue that names, with the noun said before, another of its kind.

    ``lookup`` gives the classes of a form of the vocabulary with its canonical name in each.
    """
    for cue in talk.having("taking_back", "repair"):
        at = cue.end
        while at < len(talk.words) and (talk.words[at] in _LEADING or _is_cue(talk, at)):
            at += 1
        behind = talk.words[at + 1] if at + 1 < len(talk.words) else "."
        if at >= len(talk.words) or behind not in _CLOSING:
            continue
        old = _said_before(talk, cue)
        if old is not None:
            _complete(talk, old, at, lookup)
    talk.in_order()


def complete_headed(talk: Talk, lookup: Lookup) -> None:
    """ "Pads on the fronts, leather.": the word alone behind the heading and its feet names what is headed."""
    for at in talk.where(_HEADING):
        opens = at == 0 or talk.words[at - 1] in (".", ",", ";", "and")
        comma = next((i for i in range(at + 1, min(len(talk.words), at + _HEADED)) if talk.words[i] in (",", ".")), 0)
        alone = comma + 1 < len(talk.words) and talk.words[comma + 2 : comma + 3] in ([","], ["."], [], ["and"])
        if not opens or not comma or talk.words[comma] == "." or not alone:
            continue
        feet = {i for m in talk.having("feet") for i in range(m.start, m.end)}
        plain = {talk.words[i] for i in range(at + 1, comma) if i not in feet} <= {"on", "in", "the", "under", "for"}
        claimed = any(m.start <= at < m.end and m.is_any(_CLASSES) for m in talk.mentions)
        named = lookup(f"{talk.words[comma + 1]} {talk.words[at]}").get(_HEADS[talk.words[at]])
        here = talk.mention_starting(comma + 1)
        if not plain or claimed or named is None or (here is not None and not here.readings.keys() <= {"zones"}):
            continue
        mention = Mention(comma + 1, comma + 2, (at, comma + 1), {_HEADS[talk.words[at]]: named}, MatchKind.VARIANT)
        talk.mentions[:] = [*(m for m in talk.mentions if m is not here), mention]
        talk.in_order(moved=True)


def complete_told(talk: Talk, lookup: Lookup) -> None:
    """ "The pads are leather", "her pads aren't leather, they're full pads": the word behind names their kind."""
    for at, said in talk.turns(_THEY_ARE):
        word = at + len(said)
        word += talk.words[word : word + 1] in (["n't"], ["not"])
        closed = word < len(talk.words) and talk.words[word + 1 : word + 2] in ([","], ["."], ["and"], ["but"], [])
        named = lookup(f"{talk.words[word]} {said[0]}").get("pads") if closed else None
        if named is None or talk.mention_starting(word) is not None:
            continue
        talk.mentions.append(Mention(word, word + 1, (at, word), {"pads": named}, MatchKind.VARIANT))
    talk.in_order()


def complete_parts(talk: Talk, lookup: Lookup) -> None:
    """ "Soles, thin on both fores", "heels: sheared, left front": how a part of the foot is, behind its heading."""
    for at in [i for i in talk.where(_PARTS) if i < len(talk.words) - 1]:
        word = _said_ahead(talk, at)
        named = _of_a_part(lookup, talk.words[at], talk.words[word]) if word else None
        if named is not None and not any("findings" in m.readings for m in talk.holding(word)):
            talk.mentions.append(Mention(word, word + 1, (word, at), {"findings": named}, MatchKind.VARIANT))
        opens = at == 0 or talk.words[at - 1] in SENTENCE_ENDS or (talk.words[at - 1] in _LED and at > 1)
        if not opens or talk.words[at + 1] not in _PARTED or at == len(talk.words) - 2:
            continue
        word = next((i for i in range(at + 2, len(talk.words)) if talk.words[i] not in _ADVERBS), at + 2)
        here = talk.mention_starting(word)
        if here is not None and here.get("severities") is not None and here.get("findings") is None:
            word, here = here.end, talk.mention_starting(here.end)
        named = _of_a_part(lookup, talk.words[at], talk.words[word]) if word < len(talk.words) else None
        if named is None or (here is not None and here.is_any(("findings", "horse"))):
            continue
        talk.mentions.append(Mention(word, word + 1, (at, word), {"findings": named}, MatchKind.VARIANT))
    talk.in_order()


def _said_ahead(talk: Talk, at: int) -> int:
    """ "It's soft as well, the wall", "they're thin, the soles": how the part is, before its name; or 0."""
    if talk.words[at - 2] != "," or talk.words[at - 1] not in _THE or talk.words[at + 1] not in _PART_ENDS:
        return 0
    word = next((i for i in range(at - 3, 1, -1) if talk.words[i] not in _TOO), 0)
    led = next((i for i in range(word - 1, 0, -1) if talk.words[i] not in _BEING), 0)
    return word if led < word - 1 and talk.words[led] in ("it", "they") else 0


def complete_little(talk: Talk) -> None:
    """ "Little toe crack on the left front": right before a finding, or before its place, it tells the degree."""
    for at in talk.where(_LITTLE):
        found = talk.mention_starting(at + 1)
        found = talk.mention_starting(found.end) if found is not None and found.get("zones") else found
        if (
            found is not None
            and found.get("findings")
            and all(m.readings.keys() <= {"horse_cues"} for m in talk.mentions if at in m.literal)
        ):
            talk.mentions.append(Mention(at, at + 1, (at,), {"severities": "mild"}, MatchKind.VARIANT))
    for at in talk.where(_ALL):  # "one in the near fore and all but that's gone": the "and" joins nothing
        if talk.words[at - 1] == "and" and talk.words[at + 1 : at + 2] == ["but"] and _it_has(talk, at + 2):
            talk.mentions.append(Mention(at - 1, at + 1, (at - 1, at), {"remarks": "and all"}, MatchKind.VARIANT))
    talk.in_order()


def _it_has(talk: Talk, at: int) -> bool:
    """ "It's gone", "that has gone", "they went"; not "that one"."""
    return talk.words[at : at + 1] in _IT and talk.words[at + 1 : at + 2] != ["one"]


def complete_quality(talk: Talk) -> None:
    """ "Soles dropped, no, just flat", "sole is flat, and thin with it": a second quality of the part told before."""
    for at in [i for i in talk.where(_OF_ONE_PART) if 1 < i < len(talk.words) - 1]:
        named, behind = _QUALITIES[talk.words[at]], talk.words[at + 1]
        free = behind in _BEHIND_QUALITY and not any(at in m.literal and m.is_any(CLASS_SLOTS) for m in talk.mentions)
        as_well = not _AS_WELL.isdisjoint(talk.words[at + 1 : at + _TOO_AT])
        if free and _of_the_part_before(talk, at, named.split("_")[1], as_well=as_well):
            talk.mentions.append(Mention(at, at + 1, (at,), {"findings": named}, MatchKind.VARIANT))
    talk.in_order()


def _of_the_part_before(talk: Talk, at: int, part: str, *, as_well: bool) -> bool:
    """Whether the sentence told of the sole, the heels or the wall; "thin with it" may stand in one of its own."""
    led = at - 1
    while talk.words[led] in _ADVERBS:
        led -= 1
    they = talk.words[led - 1 : led + 1] in _ITS
    led -= 2 * (they and talk.words[led - 2] in SENTENCE_ENDS)  # "Flat soles on all four. They're thin in front."
    alone = (as_well or they) and talk.words[led] in SENTENCE_ENDS
    low = next((i for i in range(led - alone, -1, -1) if talk.words[i] in SENTENCE_ENDS), -1)
    told = [m for m in talk.having("findings") if low < m.start and m.end <= at]
    shown = talk.words[led] in _LED_TO_QUALITY or alone or they
    told = [m for m in told if m.readings["findings"].split("_")[-1] == part]
    fitted = alone and they and any(m.is_any(_FITTED) and told[0].end <= m.start < at for m in talk.mentions if told)
    return shown and bool(told) and not fitted


def complete_kinds(talk: Talk, lookup: Lookup) -> None:
    """ "Reset, rim, steel", "a new trailer on the left hind": the kind of a shoe without the word for it."""
    for at in talk.where(_KINDS):
        here = talk.mention_starting(at)
        if (here is not None and here.end > at + 1) or not (_listed(talk, at) or _put_on(talk, at)):
            continue
        named = lookup(f"{talk.words[at]} shoe").get("shoe_types")
        if named is None or any(m.start < at < m.end for m in talk.mentions):
            continue
        if here is not None:
            here.dropped = True
        talk.mentions.append(Mention(at, at + 1, (at,), {"shoe_types": named}, MatchKind.VARIANT))
    talk.in_order()


def complete_same(talk: Talk, lookup: Lookup) -> None:
    """ "Same rim shoe back on": the shoe that is back on takes the kind that stands before it."""
    for work in [m for m in talk.having("work") if talk.words[m.start] in _SHOE_WORDS]:
        for at in range(max(0, work.start - _KIND), work.start):
            named = lookup(" ".join(talk.words[at : work.start + 1])).get("shoe_types")
            held = [m for m in talk.mentions if m.start < work.start and m.end > at and not m.dropped]
            if named is not None and all(m.readings.keys() <= {"zones"} for m in held):
                for place in held:
                    place.dropped = True  # the bar of "same bar shoe back on"
                literal = tuple(range(at, work.start))
                talk.mentions.append(Mention(at, work.start, literal, {"shoe_types": named}, MatchKind.VARIANT))
                break
    talk.in_order()


def complete_beside(talk: Talk, lookup: Lookup) -> None:
    """ "Wedge and leather", "leather with pine tar": beside what lies under the same shoe the stuff alone is a pad."""
    for at in talk.where(_STUFF):
        before = at - (talk.words[at - 1] == "a")
        under = talk.mention_ending(before - 1) if talk.words[before - 1] in _BESIDE else None
        if under is None and talk.words[at + 1 : at + 2] and talk.words[at + 1] in _BESIDE:
            under = talk.mention_starting(at + 2 + (talk.words[at + 2 : at + 3] == ["a"]))
        named = lookup(f"{talk.words[at]} pad").get("pads")
        taken = any(m.start <= at < m.end for m in talk.mentions)
        if under is not None and under.is_any(_UNDER) and named is not None and not taken:
            talk.mentions.append(Mention(at, at + 1, (at,), {"pads": named}, MatchKind.VARIANT))
    for at in talk.where(_POURED):
        if _poured(talk, at):
            talk.mentions.append(Mention(at, at + 1, (at,), {"pads": "pour_in"}, MatchKind.VARIANT))
    talk.in_order()


def _poured(talk: Talk, at: int) -> bool:
    """ "Poured both fronts", "near fore reset, poured it", "reset and re-poured": a pad; not rain, nor iodine."""
    start, end = _stretch(talk, at, SENTENCE_ENDS)
    told = any(m.is_any(("treatments", *_UNDER)) and start <= m.start < end for m in talk.mentions)
    behind, after = talk.mention_starting(at + 1), talk.words[at + 1 : at + 3]
    if told or talk.words[at - 1] in ("it", "rain"):
        return False
    if after[:1] in _POUR_ENDS:
        ahead = talk.mention_ending(at - (talk.words[at - 1] == "and"))
        return talk.words[at - 1] in ("both", "re", "-") or (ahead is not None and ahead.is_any(("work", "feet")))
    pointed = after[0] in ("it", "them") and after[1:] in _POUR_ENDS
    return (
        pointed
        or after[1:] in (["soles"], ["feet"], ["pads"])
        or (behind is not None and behind.get("feet") is not None)
    )


def _listed(talk: Talk, at: int) -> bool:
    """Whether the word stands alone between marks, in a sentence of shoes and of nothing found or padded."""
    start, end = _stretch(talk, at, SENTENCE_ENDS)
    low, high = _stretch(talk, at, _PARTED)
    alone = _IT_IS.issuperset(talk.words[low:at]) and high == at + 1  # "a trailer", "it's only a tip"
    if (low, high) == (start, end) and start > 1:  # a sentence of its own, behind the one that tells of the shoe
        start = _stretch(talk, start - 1, SENTENCE_ENDS)[0]
    told = [m for m in talk.mentions if start <= m.start < end and not m.dropped]
    shod = any(m.is_any(_SHOD) or m.get("measures") == "shoe_size" for m in told)
    shod = shod or ("new" in talk.words[start:at] and any(m.get("feet") for m in told))  # "off hind new. Trailer."
    return alone and shod and _of_shoes(talk, start, end)


def _put_on(talk: Talk, at: int) -> bool:
    """ "A new trailer on the left hind", "she gets a bar on the off fore": put on a foot that is named beside it."""
    start, end = _stretch(talk, at, _PARTED | SENTENCE_ENDS)
    lead = at
    while lead > start and talk.words[lead - 1] in ("a", "new", "short"):
        lead -= 1
    footed = any(m.get("feet") and start <= m.start < end for m in talk.mentions)
    bare = (
        at == start and talk.words[at] != "bar" and talk.words[at + 1 : at + 2] == ["on"]
    )  # "…, rim on the near fore"
    led = bare or (lead < at and (lead == start or talk.words[lead - 1] in _PUTTING_ON))
    return led and footed and _of_shoes(talk, start, end)


def _of_shoes(talk: Talk, start: int, end: int) -> bool:
    found = any(m.is_any(_ELSEWHERE) and start <= m.start < end and not m.dropped for m in talk.mentions)
    return not found and _BESIDE_SHOES.isdisjoint(talk.words[start:end])


def _stretch(talk: Talk, at: int, marks: frozenset[str]) -> tuple[int, int]:
    """The tokens around one, up to the nearest marks."""
    start = next((i + 1 for i in range(at - 1, -1, -1) if talk.words[i] in marks), 0)
    return start, next((i for i in range(at + 1, len(talk.words)) if talk.words[i] in marks), len(talk.words))


def _of_a_part(lookup: Lookup, part: str, word: str) -> str | None:
    """The finding that a word tells of a part: "soles … thin", "walls … weak"."""
    return lookup(f"{part} {word}").get("findings") or lookup(f"{word} {part}").get("findings")


def _is_cue(talk: Talk, at: int) -> bool:
    mention = talk.mention_starting(at)
    return mention is not None and mention.get("taking_back") == "repair"


def _said_before(talk: Talk, cue: Mention) -> Mention | None:
    """The last thing of two words or more that can be put right, in the sentence of the cue or the one before."""
    start = window(talk, cue.start)
    told = [m for m in talk.mentions if start <= m.start and m.end <= cue.start and m.is_any(_CLASSES)]
    return told[-1] if told and len(told[-1].literal) > 1 else None


def _complete(talk: Talk, old: Mention, at: int, lookup: Lookup) -> None:
    kind = kind_of(old)
    here = talk.mention_starting(at)
    if kind not in _CLASSES or (here is not None and (here.end != at + 1 or kind_of(here) == kind)):
        return
    noun = talk.words[old.end - 1]
    forms = (f"{talk.words[at]} {noun}", f"{talk.words[at]} {noun.removesuffix('s')}")
    named = next((found[kind] for found in map(lookup, forms) if kind in found), None)
    if named is None:
        return
    if here is not None:
        here.readings, here.number = {kind: named}, None
        return
    talk.mentions.append(Mention(at, at + 1, (at,), {kind: named}, MatchKind.VARIANT))
