"""A foot pointed at by what it has: "the loose one I reset", "oakum in the leather one only", "the front one's mild".

The words that point become a foot on the mentions, where what they name was said of one foot before.
"""

from __future__ import annotations

from pipeline.reading.bare_sides import PAIRS
from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Feet, Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind
from pipeline.vocabulary import CLASS_SLOTS

_POINTING = ("shoe_states", "shoe_types", "shoe_materials", "pads", "work", "severities", "findings", "gaits")
_THE = frozenset({"the", "that", "his", "her", "this"})
_NOUNS = frozenset({"one", "shoe", "foot"})
_CLAUSE_ENDS = frozenset({",", "and", "but", *SENTENCE_ENDS})
_ENDS_OF_A_SHOE = frozenset({"backs", "fronts"})
_A_FOOT = (["foot"], ["one"], ["hoof"], ["leg"])
_BARS = frozenset({"bar", "straight_bar", "egg_bar", "heart_bar"})
_NO_SHOES = frozenset({"pad", "pads", "wedge", "wedges", "clip", "clips", "stud", "studs", "nail", "nails", "packing"})
_COPULA, _DONE = frozenset({"'s", "is", "was"}), frozenset({"new", "brand", "reset", "old"})
_COPULAS = (["'s"], ["is"], ["was"])
_CONTRARY, _QUITE = ["the", "opposite"], frozenset({"just", "quite", "exactly", "pretty", "much", "completely"})
_BACK = 3  # sentences from what is pointed at to the words that point


def point_out(talk: Talk) -> None:
    """Make a foot of every "the loose one", "the leather one", "the club" whose foot was said before."""
    for mention in [m for m in talk.mentions if talk.words[m.start - 1] in _THE and m.is_any(_POINTING)]:
        end = _noun_end(talk, mention)
        if end is not None and mention.start and not mention.dropped:
            word = talk.words[mention.start]
            foot = _foot_said_with(talk, _alike_before(talk, mention)) or _foot_said_with(
                talk, _word_before(talk, mention.start, word)
            )
            _point(talk, mention.start - 1, end, foot)
    for bar in talk.having("zones", "bar") if talk.having("shoe_types") else ():
        _bar_for_its_foot(talk, bar)
    for at in [i - 1 for i in talk.where(_COPULA) if i > 1 and _done_about(talk, i)] if talk.says(_DONE) else ():
        _word_for_its_foot(talk, at)
    for at in [i + 1 for i in talk.where(_THE) if i + 2 < len(talk.words)]:
        word, behind = talk.words[at], talk.words[at + 1]
        alone = word == "club" and behind not in ("foot", "feet", "footed")
        if (alone or behind == "one") and not _said_otherwise(talk, at):
            foot = _foot_said_with(talk, _word_before(talk, at, word))
            _point(talk, at - 1, at + 1 if alone else at + 2, foot)
    talk.in_order()


def _word_for_its_foot(talk: Talk, at: int) -> None:
    """ "The bar's new, rim's reset": a word that was said with one foot before, and is the subject."""
    led = talk.words[at - 1]
    if talk.words[at] in _NO_SHOES:
        return  # "the pad's new": a new pad, not a new shoe
    if (led in _THE or led in _CLAUSE_ENDS) and not any(m.start <= at < m.end and not m.dropped for m in talk.mentions):
        _point(talk, at - (led in _THE), at + 1, _foot_said_with(talk, _word_before(talk, at, talk.words[at])))


def _bar_for_its_foot(talk: Talk, bar: Mention) -> None:
    """ "The bar's new, the other's a reset": the shoe, which may be an egg bar, stands for the foot that it is on."""
    led = talk.words[bar.start - 1] if bar.start else "."
    if not (led in _THE or led in _CLAUSE_ENDS) or not _done_about(talk, bar.end):
        return
    floor = _floor(talk, bar.start)
    told = [m for m in talk.having("shoe_types") if floor <= m.start < bar.start and m.readings["shoe_types"] in _BARS]
    foot = _foot_said_with(talk, told[-1].start) if told else None
    _point(talk, bar.start - (led in _THE), bar.end, foot)


def _point(talk: Talk, start: int, end: int, foot: str | None) -> None:
    """Put a foot in place of the words ``[start, end)``, unless their clause names one itself."""
    if foot is None or _foot_beside(talk, start, end):
        return
    for other in [m for m in talk.mentions if start <= m.start < end]:
        other.dropped = True
    talk.mentions.append(Mention(start, end, tuple(range(start, end)), {"feet": foot}, MatchKind.VARIANT))


def names_no_foot(talk: Talk, mention: Mention) -> bool:
    """ "Call the vet on that canker", "the backs of her front shoes", "the off fore's the opposite": no foot meant."""
    if talk.words[mention.start : mention.end] == _CONTRARY:
        return _said_of_a_foot(talk, mention)
    last = talk.words[mention.end - 1]
    if last in _ENDS_OF_A_SHOE:
        return talk.words[mention.end : mention.end + 1] == ["of"]
    behind = talk.mention_starting(mention.end) if last == "that" else None
    found = behind is not None and behind.get("findings") is not None
    return found and behind is not None and talk.words[behind.end : behind.end + 1] not in _A_FOOT


def _said_of_a_foot(talk: Talk, mention: Mention) -> bool:
    """Whether a foot is said to be the opposite, "the off fore is the opposite, underrun": what it is like."""
    at = mention.start - 1
    while at > 0 and talk.words[at] in _QUITE:
        at -= 1
    subject = talk.mention_ending(at)
    return talk.words[at] in _COPULA and subject is not None and subject.get("feet") is not None


def _said_otherwise(talk: Talk, at: int) -> bool:
    """Whether the word before "one" is a word of its own: a foot, a number, a thing of the trade."""
    return any(m.start <= at < m.end and (m.number or m.is_any((*CLASS_SLOTS, "feet"))) for m in talk.mentions)


def _noun_end(talk: Talk, mention: Mention) -> int | None:
    """The token behind "one", "shoe" or "foot", in the form itself ("loose shoe") or right behind it."""
    if talk.words[mention.end : mention.end + 1] and talk.words[mention.end] in _NOUNS:
        return mention.end + 1
    named = mention.end - mention.start > 1 and talk.words[mention.end - 1] in _NOUNS
    return mention.end if named or _new_or_reset(talk, mention) else None


def _new_or_reset(talk: Talk, mention: Mention) -> bool:
    """ "The heart bar's new, the egg bar is a reset": a kind of shoe told of before, and what was done about it."""
    return mention.get("shoe_types") is not None and _done_about(talk, mention.end)


def _done_about(talk: Talk, at: int) -> bool:
    words = talk.words[at : at + 3]
    if words[:1] not in _COPULAS:
        return False
    words = words[2:] if words[1:2] in (["a"], ["an"]) else words[1:2]
    return words[:1] in (["new"], ["brand"], ["reset"], ["old"])


def _floor(talk: Talk, at: int) -> int:
    """The token from which on the same horse was spoken of in the last sentences."""
    floor, stops = at, 0
    while floor > 0 and stops <= _BACK:
        floor -= 1
        stops += talk.words[floor] in SENTENCE_ENDS
    named = [m.end for m in talk.mentions if m.get("horse") and m.end <= at]
    return max(floor, max(named, default=0))


def _alike_before(talk: Talk, pointing: Mention) -> int | None:
    """The token where the same thing was said last."""
    floor = _floor(talk, pointing.start)
    told = [m for m in talk.mentions if floor <= m.start and m.end < pointing.start]
    same = [m for m in told if any(m.get(n) is not None and m.get(n) == pointing.get(n) for n in _POINTING)]
    return same[-1].start if same else None


def _word_before(talk: Talk, at: int, word: str) -> int | None:
    """The token where the same word was said last: "leather pad on the left front … the leather one"."""
    return next((i for i in range(at - 2, _floor(talk, at) - 1, -1) if talk.words[i] == word), None)


def _foot_said_with(talk: Talk, at: int | None) -> str | None:
    """The one foot that is named in the clause of the token."""
    foot = _foot_beside(talk, at, at + 1) if at is not None else None
    if foot == "other" and at is not None:
        return _opposite(talk, at)
    if foot == "in_hand" and at is not None:  # "so that foot got a new one … except the new one"
        before = [str(m.get("feet")) for m in talk.having("feet") if _floor(talk, at) <= m.start < at]
        foot = next((name for name in reversed(before) if name != "in_hand"), None)
    return foot if foot in (*FEET, "bare_L", "bare_R") else None


def _opposite(talk: Talk, at: int) -> str | None:
    """ "Left hind was sprung, and its mate was loose": the foot across from the one named before it."""
    other = next((m for m in reversed(talk.having("feet", "other")) if m.start <= at), None)
    other = other or next((m for m in talk.having("feet", "other") if m.start > at), None)
    before = [m for m in talk.having("feet") if other is not None and m.start < other.start and not m.dropped]
    named = str(before[-1].get("feet")) if before and before[-1].start >= _floor(talk, at) else ""
    return ("R" if named[0] == "L" else "L") + named[1] if named in FEET else None


def _foot_beside(talk: Talk, start: int, end: int) -> str | None:
    """The foot named in the clause of the tokens, the only one; "several" when there are more."""
    while start and talk.words[start - 1] not in _CLAUSE_ENDS:
        start -= 1
    while end < len(talk.words) and talk.words[end] not in _CLAUSE_ENDS:
        end += 1
    feet = {str(m.get("feet")) for m in talk.mentions if m.get("feet") and start <= m.start < end}
    if not feet:
        return None
    return next(iter(feet)) if len(feet) == 1 else "several"


def of_the_two(talk: Talk, segment: Segment, mention: Mention, hand: Feet | None) -> Feet | None:
    """ "Seedy toe in the left front and right hind, mild on the front one": the front one of the two in hand."""
    end = PAIRS.get(str(mention.get("feet")))
    if end is None:
        return None
    across = hand if is_across(hand) else talk.across
    if across is None:
        return None
    one = {"one", "foot"} & set(talk.words[mention.end - 1 : mention.end + 1])
    graded = not segment.drafts and any(m.is_any(("severities", "zones")) for m in segment.mentions)
    answered = bool(segment.drafts) and all(d.slot in ("tester", "pulse") for d in segment.drafts)
    several = {"both", "two", "either", "neither", "pair"} & set(talk.words[mention.start : mention.end])
    if several or not (one or graded or answered):
        return None
    return tuple(foot for foot in across if foot[1] == end)


def is_across(feet: Feet | None) -> bool:
    """Whether the feet are one front and one hind: "left front and right hind"."""
    return feet is not None and len(feet) == len("FH") and feet[0][1] != feet[1][1]


def both_across(talk: Talk, name: str, hand: Feet | None) -> Feet | None:
    """ "Copper sulfate in the two of them", "the opposite two are clear": of a front and a hind that were named."""
    if talk.across is None or not set(hand or ()) <= set(talk.across):
        return None
    if name == "other_two":
        return tuple(foot for foot in FEET if foot not in talk.across)
    return talk.across if name == "pair_in_hand" else None
