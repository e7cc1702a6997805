"""A side said alone, "the left" or "moderate on the off", where front or hind was said before or comes behind.

Also a side whose two feet are told: "the near fore and hind", "front and back on the off side".
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET, MatchKind

SIDES = {"left": "L", "near": "L", "right": "R", "off": "R"}
_SIDE_WORDS = frozenset(SIDES)
_BARE_AFTER = frozenset({
    "", ",", ".", "and", "but", "is", "'s", "has", "had", "was", "got", "one", "too", "side", "foot", "a", "an", "the",
    "as", "in", "with", "at", "for", ";", ":", "or", "also", "i", "he", "she", "it", "took", "takes", "because",
    "cause", "since", "where", "though", "only", "if", "gets", "needs", "wants", "lost", "still", "never", "just",
    "looks", "looked", "could", "might", "may", "will", "'ll", "does", "did", "keeps", "seems", "feels", "shows",
    "hardly", "already", "yet", "always", "came", "comes",
})  # fmt: skip
_NEAR_AFTER = frozenset({
    ",", ".", "and", "but", "one", "foot", "side", "is", "'s", "was", "has", "had", "still", "lost", "i", "that", "got",
    "gets", "needs", "just", "only",
})  # fmt: skip
_CLAUSE_OPENERS = frozenset({",", "and", ".", "but", ";"})
_SIDE_VERBS = frozenset({"is", "'s", "was", "being", "one"})
_NUMBER_ENDS = frozenset({",", ".", "and", "but", ";", ""})
_LENGTH_UNITS = ("mm", "cm", "inch", "degree")
_ACROSS = {"left": "right", "right": "left", "near": "off", "off": "near"}
_LIGHT = frozenset({"a", "an", "some", "bit", "of", "the", "just", "only"})
_OBJECTS = frozenset({"it", "him", "her", "the", "a", "an", "with", "them"})
_TAKING = frozenset({"took", "take", "taken", "taking", "rasped", "cut", "nipped", "dressed"})
_OWNED = frozenset({"the", "his", "her", "its"})
_STATES = ("severities", "shoe_states", "gaits", "pulses", "tester_responses")
PAIRS = {"fronts": "F", "hinds": "H"}
_LEADING_TO_PAIR = frozenset({",", "on", "the", "in", "of", "up", "both", "that", "'s", "for"})
_BARE_BEFORE = frozenset({"the", "his", "her", "on", "in", "its"})
_WHOLE = {"L": "lefts", "R": "rights"}
_FRONT_WORDS, _HIND_WORDS = frozenset({"front", "fore"}), frozenset({"hind", "back", "behind", "rear"})
_OF_A_SIDE = frozenset({"on", "down", "of", "along"})
_BEFORE_A_SIDE = _OWNED | {"both", "on", "in", "to", "for", "down", "and", "but", ",", ";", *SENTENCE_ENDS}
_LEADING_SIDE = frozenset({"on", "the", "then", "now", "first", "and", "his", "her", "down", ","})
_HEADED_BY = frozenset({",", ":", ".", "he", "she", "there", "first", "the", "i"})
_PLURAL = frozenset({"fronts", "fores", "hinds", "backs", "rears", "both", "pair", "two", "feet"})
_WORKED = ("work", "findings", "shoe_types", "shoe_states")


def mark_bare_sides(talk: Talk) -> None:
    """Make mentions of "the left", "on the right" or "the off" where front or hind was not said."""
    taken = talk.claimed()
    for index in [at for at in talk.where(_SIDE_WORDS) if at and at not in taken]:
        word = talk.words[index]
        kind = "bare" if _is_side(talk, index) else "whole" if _side_alone(talk, index) else None
        if kind is None:
            continue
        end = index + 2 if talk.words[index + 1 : index + 2] in (["one"], ["foot"], ["side"]) else index + 1
        named = _WHOLE[SIDES[word]] if _worked_side(talk, index) else f"{kind}_{SIDES[word]}"
        talk.mentions.append(Mention(index, end, (index,), {"feet": named}, MatchKind.VARIANT))
    talk.in_order()


def _is_side(talk: Talk, index: int) -> bool:
    word, before = talk.words[index], talk.words[index - 1]
    after = talk.words[index + 1] if index + 1 < len(talk.words) else ""
    led = before in _OWNED and talk.words[index - 2] in ("on", "in") and _found_behind(talk, index)
    led = led or _across_from(talk, index)
    if word == "left" and after in _OBJECTS and not led:
        return False  # "left it alone"
    if _numbered(talk, index, after) or _told_by_side(talk, index, after):
        return True
    near = word == "near" and after not in _NEAR_AFTER
    determined = (before in _OWNED and not near) or (before in _BARE_BEFORE and word in ("left", "right"))
    now = after == "now" and before in _OWNED  # not "in right now"
    now = now or (after == "that" and before == "the")  # "it's the right that has the bruise"
    return (determined and (after in _BARE_AFTER or now or _state_behind(talk, index))) or led


def _side_alone(talk: Talk, index: int) -> bool:
    """ "Both near feet flared, off side straight": a side without an article, which may mean two feet of the horse."""
    ends = index + 2 >= len(talk.words) or talk.words[index + 2] in (",", *SENTENCE_ENDS)
    opens = talk.words[index - 1] in _CLAUSE_OPENERS
    return talk.words[index + 1 : index + 2] == ["side"] and (opens or ends)


def _worked_side(talk: Talk, index: int) -> bool:
    """ "Trimmed the near side, off side tomorrow": both feet of it, where no front and no hind was spoken of before."""
    if talk.words[index + 1 : index + 2] != ["side"] or any(m.start < index for m in talk.having("feet")):
        return False
    behind = talk.mention_starting(index + 2)
    if not _CLAUSE_OPENERS.isdisjoint(talk.words[index + 2 : index + 3]):  # not "trimmed the near side heel"
        behind = talk.mention_ending(index - (talk.words[index - 1] in _OWNED))
    return behind is not None and behind.get("work") in ("trim", "reset", "new_shoe")


def _numbered(talk: Talk, index: int, after: str) -> bool:
    """ "50 left, 51 right", "left 50 and right 51": a number stands beside the side."""
    told = next((m for m in talk.mentions if m.end == index and m.get("units") in _LENGTH_UNITS), None)
    at = told.start if told is not None else index
    behind = any(m.number and m.start == index + 1 for m in talk.mentions)
    before = any(m.number and m.end == at for m in talk.mentions) or _nails_on_each(talk, index)
    if before and talk.words[index] == "off" and _TAKING & set(talk.words[max(0, at - 4) : at]):
        return False  # "took five mil off"
    if before and (after in _NUMBER_ENDS or behind or _pair_follows(talk, index + 1)):
        return True
    ahead = talk.mention_ending(index)
    if _called(talk, index):
        return True
    led = before or (ahead is not None and ahead.is_any(("feet", "measures")))
    opens = index - (talk.words[index - 1] in _OWNED) - 1  # "and the right 52"
    return behind and (led or talk.words[opens] in _CLAUSE_OPENERS)


def _nails_on_each(talk: Talk, index: int) -> bool:
    """ "Five nails left, six right", "five nails near, six off"; nails are left over unless the other side follows."""
    other = _ACROSS[talk.words[index]]
    near = talk.words[index + 1 : index + 5]
    nails = talk.words[index - 1] in ("nails", "nail") and any(m.number and m.end == index - 1 for m in talk.mentions)
    return nails and other in near and not SENTENCE_ENDS & set(near[: near.index(other)])


def _called(talk: Talk, index: int) -> bool:
    """ "Six nails in the left front, the right call it seven"."""
    at = index + 2 if talk.words[index + 1 : index + 2] in (["side"], ["one"], ["foot"]) else index + 1
    called = talk.words[at : at + 2] in (["call", "it"], ["make", "it"], ["say", "it"], ["call", "that"])
    number = talk.mention_starting(at + 2)
    return called and number is not None and number.number is not None


def _pair_follows(talk: Talk, at: int) -> bool:
    pair = next((m for m in talk.having("feet") if m.readings["feet"] in PAIRS and 0 <= m.start - at <= 2), None)
    return pair is not None and set(talk.words[at : pair.start]) <= _LEADING_TO_PAIR


def _told_by_side(talk: Talk, index: int, after: str) -> bool:
    """ "Thrush in both fronts, left mild, right moderate", "left is the worse": a side alone, and what it is like."""
    opens = talk.words[index - 1] in _CLAUSE_OPENERS
    if opens and (after in _SIDE_VERBS or _state_behind(talk, index)):
        return True
    ahead = talk.mention_ending(index)
    if after not in _NUMBER_ENDS or ahead is None or ahead.get("severities") is None:
        return False
    return talk.words[ahead.start - 1] not in _TAKING  # "took a bit off"


def _across_from(talk: Talk, index: int) -> bool:
    """ "Near fore seedy toe, off a bruise", "right front a flare, left a corn": the foot across, and what is there."""
    if talk.words[index - 1] not in _CLAUSE_OPENERS or not _found_behind(talk, index):
        return False
    stop = max((i for i in range(index) if talk.words[i] in SENTENCE_ENDS), default=-1)
    ahead = [m for m in talk.having("feet") if stop < m.start < index]
    last = ahead[-1] if ahead else None
    return last is not None and last.get("feet") in FEET and talk.words[last.start] == _ACROSS[talk.words[index]]


def _found_behind(talk: Talk, index: int) -> bool:
    """Whether a finding stands behind the side: "a corn", "bad thrush", "a bit of a flare"."""
    at = index + 1
    while at < len(talk.words) and (told := talk.mention_starting(at)) is not None and told.is_any(("severities",)):
        at = told.end
    while at < len(talk.words) and talk.words[at] in _LIGHT:
        at += 1
    while at < len(talk.words) and (told := talk.mention_starting(at)) is not None and told.is_any(("severities",)):
        at = told.end
    told = talk.mention_starting(at)
    zoned = told is not None and told.get("zones") is not None and talk.mention_starting(told.end)
    return told is not None and (told.is_any(("findings",)) or bool(zoned and zoned.is_any(("findings",))))


def _state_behind(talk: Talk, index: int) -> bool:
    behind = talk.mention_starting(index + 1)
    return behind is not None and behind.is_any(_STATES)


def pair_behind(talk: Talk) -> None:
    """ "Mild flare on the left and moderate on the right, hinds": the pair that closes the sentence lends its end."""
    bare: list[Mention] = []
    for mention in talk.having("feet"):
        name = mention.readings["feet"]
        if bare and SENTENCE_ENDS & set(talk.words[bare[-1].end : mention.start]):
            bare = []
        if name.startswith("bare_"):
            bare.append(mention)
            continue
        if bare and name in PAIRS and _closes(talk, bare[-1], mention):
            for side in bare:
                side.readings["feet"] = f"{side.readings['feet'][-1]}{PAIRS[name]}"
            mention.dropped = True
        bare = []


def _closes(talk: Talk, side: Mention, pair: Mention) -> bool:
    """Whether nothing but a comma or "on the" parts the last side from the pair, and nothing is said of it behind."""
    counted = {i for m in talk.mentions if m.number for i in m.literal}
    between = [talk.words[i] for i in range(side.end, pair.start) if i not in counted]
    after = talk.words[pair.end] if pair.end < len(talk.words) else "."
    return set(between) <= _LEADING_TO_PAIR and (after in SENTENCE_ENDS or after in (",", ""))


def mark_both_of_a_side(talk: Talk) -> None:
    """ "Reset the near fore and hind", "new ones front and back on the off side": the two feet of a side."""
    moved = False
    for foot in talk.having("feet"):
        if foot.get("feet") == "all" and _one_end(talk, foot.start) != _one_end(talk, foot.end - 1):
            side, start, end = _side_beside(talk, foot)
        else:
            side, start, end = _with_the_other_end(talk, foot)
        if not side:
            continue
        for other in talk.having("feet"):
            other.dropped = other is not foot and start <= other.start < end
        foot.readings, foot.start, foot.end = {"feet": _WHOLE[side]}, start, end
        foot.literal, moved = tuple(range(start, end)), True
        talk.changed()
    talk.in_order(moved=moved)


def mark_ends_of_a_side(talk: Talk) -> None:
    """ "On the left, thrush in front and a corn behind", "left side: front a corn": the ends of the side that heads.

    The side opens its sentence, with a mark, its end or who has it right behind; alone there it heads the next one.
    """
    side, reach, heads = "", 0, None
    for foot in talk.having("feet"):
        name = foot.readings["feet"]
        whole = name in ("lefts", "rights") or name.startswith(("bare_", "whole_"))
        if whole and not foot.dropped and _heads_its_ends(talk, foot):
            side, heads = ("L" if name in ("lefts",) or name[-1] == "L" else "R"), foot
            stops = [i for i in range(foot.end, len(talk.words)) if talk.words[i] in SENTENCE_ENDS]
            stops = [
                i for i in stops if i == foot.end or talk.tokens.words[i] in SENTENCE_ENDS
            ]  # not a seam at a comma
            reach = (stops or [len(talk.words)])[0]
            reach = (stops[1:2] or [len(talk.words)])[0] if reach == foot.end else reach
            continue
        plain = name in PAIRS and not _PLURAL & set(talk.words[foot.start : foot.end])
        if side and foot.start < reach and plain:
            foot.readings["feet"] = side + PAIRS[name]
            if heads is not None:
                heads.dropped, heads = True, None
            talk.changed()
        else:
            side = ""
    talk.in_order()


def _heads_its_ends(talk: Talk, side: Mention) -> bool:
    at = side.start
    while at and talk.words[at - 1] in _LEADING_SIDE:
        at -= 1
    behind = talk.words[side.end : side.end + 1]
    return (not at or talk.words[at - 1] in SENTENCE_ENDS) and (
        not behind or behind[0] in _HEADED_BY or _one_end(talk, side.end) != ""
    )


def _one_end(talk: Talk, at: int) -> str:
    """ "F" for "fore", "H" for "hind", nothing for a word that names no end of the horse."""
    word = talk.words[at]
    return "F" if word in _FRONT_WORDS else "H" if word in _HIND_WORDS else ""


def _with_the_other_end(talk: Talk, foot: Mention) -> tuple[str, int, int]:
    """ "Near hind and fore", "off side fore and hind": the side, and the tokens ``[start, end)`` of all of it."""
    at, name = foot.end + 1, foot.get("feet")
    if name in FEET and talk.words[foot.end : at] == ["and"] and at < len(talk.words):
        pair = talk.mention_starting(at)
        alone = pair is not None and pair.end == at + 1 and pair.get("feet") in PAIRS
        if alone and _one_end(talk, at) not in ("", name[1]):
            return name[0], foot.start, at + 1
    return "", 0, 0


def _side_beside(talk: Talk, both: Mention) -> tuple[str, int, int]:
    """The side that "fore and hind" is said of, before it or behind, and the tokens ``[start, end)`` of all of it."""
    worked = talk.mention_ending(both.start)
    at = both.start - 1
    if worked is not None and worked.get("work") and talk.words[worked.start - 1] == "side":
        at = worked.start - 1  # "near side reset front and back"
    at -= talk.words[at - 1 : at + 1] == ["side", ","]
    at -= talk.words[at] == "side"
    if at > 0 and talk.words[at] in SIDES and _is_of_feet(talk, at):
        return SIDES[talk.words[at]], at, both.end
    words = [*talk.words[both.end : both.end + 4], "", "", "", ""]
    owned = words[1] in _OWNED
    sided = words[2 + owned] == "side"
    at = both.end + 1 + owned
    named = talk.mention_starting(at)
    foot = named.get("feet") if named is not None else None
    bare = foot is None or foot.startswith(("bare_", "whole_"))
    if words[0] in _OF_A_SIDE and words[1 + owned] in SIDES and (owned or sided) and bare:
        return SIDES[words[1 + owned]], both.start, at + 1 + sided
    return "", 0, 0


def _is_of_feet(talk: Talk, at: int) -> bool:
    """Whether the word is a side, not in "his shoes off front and back", "I left front and back alone"."""
    told = talk.mention_ending(at)
    return talk.words[at - 1] in _BEFORE_A_SIDE or (told is not None and told.is_any(_WORKED))
