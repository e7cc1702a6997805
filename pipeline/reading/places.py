"""Front and back that are places, no feet: "at the back of the barn", "in the front stalls", "behind the shed".

Also a part of the foot that is no place of a finding: "the white line bends around it"; and a place's own name, which
says nothing of a horse: "Long Meadow", "over at Corn Hill".
"""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.vocabulary import CLASS_SLOTS

YARD = frozenset(
    {
        "block", "paddock", "paddocks", "field", "fields", "yard", "barn", "gate", "gates", "shed", "sheds", "stall",
        "stalls",
    }
    | {"box", "boxes", "road", "lane", "door", "doors", "drive", "row", "aisle", "pasture", "lot", "stable", "stables"}
    | {"meadow", "forty", "acre", "acres", "house", "porch", "rail", "fence", "arena", "school", "track", "hill"}
    | {"yards", "driveway", "step", "steps", "garden", "room", "seat", "office", "pens", "pen", "corral", "run"}
)  # fmt: skip
_VEHICLES = frozenset({"truck", "van", "ute", "lorry", "trailer", "wagon", "tractor", "car", "float", "pickup"})
_ABOUT = frozenset({"dog", "dogs", "kids", "tack", "hay", "feed", "tools", "anvil", "forge", "gear", "pads", "shoes"})
_TIMES = ("week", "fortnight", "month", "day", "year")
_A_BIT = frozenset({"a", "bit", "way", "well", "little", "so", "far", "right", "always", "all"})
_GOING_LATE = frozenset({"running", "getting", "gotten", "falling", "fell", "fallen"})
_BEING = frozenset({"is", "'s", "was", "were", "are", "'re", "'m", "am", "been"})
_PERSONS = (["he"], ["she"], ["i"], ["we"], ["they"], ["owner"], ["have"], ["has"], ["'ve"])
_WITH = (["with"], ["on"], ["schedule"])
_CLOSING: tuple[list[str], ...] = ([], ["."], [","], ["and"], ["but"], *_WITH)
_STANDING = frozenset({"parked", "out", "round", "just", "up", "tied", "sitting", "over", "still", "back"})
_PARTS = frozenset(
    {
        "coronet", "coronary", "bar", "bars", "frog", "heel", "heels", "toe", "quarter", "quarters", "wall", "nail",
        "clip",
    }
    | {"point", "pad", "pads", "shoe", "shoes", "plate", "knee", "fetlock", "pastern"}
    | {"crack", "hole", "tract", "cavity", "separation", "resection"}
)  # fmt: skip
_THE = frozenset(
    {"the", "a", "his", "her", "my", "their", "our", "that", "old", "big", "hay", "muck", "tractor", "feed"}
)
_LOOKED = frozenset({"looking", "look", "looked", "watching", "watched", "seen", "view", "standing", "facing"})
_FROM = 5  # tokens from the looking to where from: "looking at her from the front"
_BEHIND_THE_WALL = frozenset({"abscess", "keratoma", "white_line_disease", "puncture"})
_ALL_OF_IT = 5  # tokens of "all of that I reckon"
_GUESSING = frozenset({"reckon", "think", "guess", "suspect", "fear", "believe"})
_IT = (["it"], ["that"], ["this"])  # "a crack at the toe and seedy toe behind it"; not "sound behind it seems"
_TO_A_PART = frozenset({
    "in", "at", "on", "along", "over", "across", "round", "around", "of", "under", "from", "near", "by", "into", "onto",
    "behind", "above", "below", "inside", "to",
})  # fmt: skip
_ITS, _OF_IT = frozenset({"the", "his", "her", "its"}), frozenset({"it", "that", "them", "there"})
_STANDS = frozenset({"is", "'s", "are", "was", "were", "and", ",", ".", "too", "there", "right", "just"})
_ROUND = 5  # tokens behind a part, in which "it" is told of: "the white line bends in around it"
_ENDS: tuple[list[str], ...] = (
    [], ["."], [","], ["?"], ["!"], [";"], ["and"], ["but"], ["too"], ["as"], ["there"], ["though"],
)  # fmt: skip


_SIDES = ("medial", "lateral")
_NAMED = (YARD - {"step", "steps", "seat", "office", "rail", "run", "gate", "door"}) | {
    "street", "farm", "farms", "creek", "rock", "rocks", "ranch", "stables", "brook", "hollow", "ridge", "bridge",
    "green", "cross", "corner", "mill", "park", "valley", "cottage", "avenue", "stud", "wood", "woods", "springs",
    "river", "pond",
    "livery", "bottom", "common", "bank", "heath", "moor", "acres", "gap", "pines", "oaks", "station", "downs",
}  # fmt: skip
_LEADS_TO_PLACE = frozenset({"at", "in", "from", "to", "near", "by", "past", "of", ".", ",", "called"})
_IN_A_NAME = ("findings", "zones", "shoe_states", "shoe_types", "severities", "measures", "pads", "clips")
_COMING_BACK = Sayings(*(f"{led} back there" for led in ("i 'm", "we 're", "'ll be", "to be", "be", "i come", "i go")))
_LONGEST = 3  # words of "Long Meadow Farm" before its last
_AND = (["and"], ["and", "the"], ["and", "in", "the"], ["and", "at", "the"])
_RIGHT_BACK = Sayings("right back")
_CUTTING = frozenset({
    "cut", "cutting", "pare", "pared", "paring", "carved", "whittled", "took", "take", "taken", "taking", "brought",
    "bring", "set", "go", "goes", "went", "gone", "going", "runs", "running", "ran", "come", "comes", "came", "grown",
    "clipped", "hacked", "ground", "rolled", "peeled",
})  # fmt: skip
_CUT_IT = _CUTTING | {
    "resected", "resect", "resecting", "debrided", "dressed", "dress", "dressing", "rasped", "rasp", "trimmed", "trim",
    "nipped", "dug", "cleaned", "scraped", "backed",
}  # fmt: skip
_CUT_OFF = frozenset({"it", "that", "them", "those", "this", "everything"})
_WHAT_IS_CUT = frozenset({"toe", "toes", "wall", "walls", "frog", "heel", "heels", "horn", "hoof", "shoe", "shoes"})
_SAME_CLAUSE = frozenset({",", *SENTENCE_ENDS})


def leave_out_places(talk: Talk) -> None:
    """Take the reading as feet from every "front", "back" and "behind" that tells where something or somebody is."""
    for mention in talk.having("feet"):
        if mention.readings["feet"] in ("fronts", "hinds") and _is_place(talk, mention):
            mention.readings.pop("feet")
            mention.dropped = mention.dropped or not mention.readings
    for at, _ in talk.turns(_RIGHT_BACK):
        for mention in [m for m in talk.having("feet", "RH") if m.start == at and _how_far_back(talk, at)]:
            mention.readings.pop("feet")
            mention.dropped = True
    for at, form in talk.turns(_COMING_BACK):
        for mention in talk.mentions:
            if mention.start == at + len(form) - 2 and mention.get("feet") is not None:
                mention.dropped = True  # "Buck, I'm back there in three"
    for mention in talk.having("feet", "pair_in_hand"):
        if talk.words[mention.start : mention.end] == ["both"] and _both_places(talk, mention):
            mention.readings.pop("feet")
            mention.dropped = mention.dropped or not mention.readings


def leave_out_named_places(talk: Talk) -> None:
    """Drop the words of the trade in a place's name, all of it in capitals: "Long Meadow.", "over at Sandcrack Lane".

    A name of the roster stays, and so does what is done to a horse: "Reset Brook".
    """
    large = talk.tokens.large
    if all(large[at] for at, word in enumerate(talk.words) if word.isalpha()):
        return  # typed in capitals throughout: they tell no name
    for last in talk.where(_NAMED):
        first = last
        while first and last - first < _LONGEST and large[first - 1] and talk.words[first - 1] not in _LEADS_TO_PLACE:
            first -= 1
        if first == last or not large[last] or (first and talk.words[first - 1] not in _LEADS_TO_PLACE):
            continue
        said = [m for m in talk.mentions if first <= m.start <= last and not m.dropped]
        if all(m.end <= last + 1 and m.is_any(_IN_A_NAME) for m in said):
            for mention in said:
                mention.dropped = True


def complete_places(talk: Talk) -> None:
    """ "The medial and lateral quarters": the part is said once, of both sides."""
    for first, second in pairwise(talk.having("zones")):
        side, whole = first.readings["zones"], second.readings["zones"]
        if side in _SIDES and whole.startswith(_SIDES) and not whole.startswith(side) and "_" in whole:
            joined = talk.words[first.end : second.start] in _AND and talk.words[second.end - 1].endswith("s")
            if joined:
                first.readings["zones"] = f"{side}_{whole.split('_', 1)[1]}"


def _both_places(talk: Talk, mention: Mention) -> bool:
    """ "The medial and lateral quarters both": two places of one foot, not both feet."""
    named = [m for m in talk.having("zones") if m.end <= mention.start][-2:]
    if len(named) < 2 or named[1].end != mention.start:
        return False
    return talk.words[named[0].end : named[1].start] in _AND


def _is_place(talk: Talk, mention: Mention) -> bool:
    last, behind = talk.words[mention.end - 1], talk.words[mention.end : mention.end + 3]
    led = mention.start - (talk.words[mention.start - 1] == "the")
    if talk.words[led - 1] == "from" and behind[:1] in ([","], ["."], ["and"], []):
        return not _LOOKED.isdisjoint(talk.words[max(0, mention.start - _FROM) : mention.start])
    if _late(talk, mention) or _thing_there(talk, mention):
        return True
    if last in ("front", "back"):
        name = talk.mention_starting(mention.end + 1)
        whose = (name is not None and name.get("horse") is not None) or behind[1:2] in (["him"], ["her"], ["them"])
        of = behind[:1] == ["of"] and behind[1:2] != ["course"] and not whose
        counted = (number := talk.mention_starting(mention.end)) is not None and number.end - number.start > 1
        return of or (bool(behind) and behind[0] in YARD and not counted)  # "heel angle in front forty four"
    if last == "behind" and _behind_it(talk, mention):
        return True
    if last != "behind" or not behind or behind[0] not in _THE:
        return False
    noun = next((word for word in behind if word not in _THE - {"tractor"}), "")
    return noun in YARD | _VEHICLES | _PARTS


def _how_far_back(talk: Talk, at: int) -> bool:
    """ "Resected it right back", "took the toe right back", "pared right back to sound horn": how far, no right hind.

    Not "trimmed right back", "took the shoe off the right back", "trimmed it right back and left back".
    """
    led, behind = talk.words[at - 1], talk.words[at + 2 : at + 5]
    if "left" in behind[:3] and behind[0] in ("and", "or"):
        return False
    if led in _CUTTING or behind[:1] in (["to"], ["past"], ["into"]):
        return True
    start = at - 1
    while start and talk.words[start - 1] not in _SAME_CLAUSE:
        start -= 1
    part = talk.mention_ending(at)
    told = part is not None and part.is_any(("zones", "findings")) and part.get("feet") is None
    first = part.start if part is not None and told else at - 1
    cut = led in _CUT_OFF or ((told or led in _WHAT_IS_CUT) and talk.words[first - 1] in _ITS | {"that", "those", "my"})
    return cut and not _CUT_IT.isdisjoint(talk.words[start:at])


def _behind_it(talk: Talk, mention: Mention) -> bool:
    """ "A keratoma behind it", "behind all that", "behind it all I reckon", "an abscess behind there": in the foot."""
    words = talk.words[mention.end : mention.end + _ALL_OF_IT]
    named = talk.mention_ending(mention.start - (talk.words[mention.start - 1] == "in"))
    if named is not None and named.get("work"):
        return False  # "trimmed behind that"
    if words[:1] == ["there"]:
        return named is not None and named.get("findings") in _BEHIND_THE_WALL and words[1:2] in _ENDS
    every = words[:1] == ["all"]
    words = words[every + (every and words[1:2] == ["of"]) :]
    if words[:1] not in _IT:
        return False
    after = words[1 + (words[1:2] == ["all"]) :]
    return after[:1] in _ENDS or (every and after[0] not in _BEING) or (after[0] == "i" and after[-1] in _GUESSING)


def _late(talk: Talk, mention: Mention) -> bool:
    """ "Three weeks behind", "she's behind with her bookings", "running behind": late, no hind feet."""
    if talk.words[mention.start : mention.end] != ["behind"]:
        return False
    before, behind = talk.mention_ending(mention.start), talk.words[mention.end : mention.end + 1]
    counted = before is not None and before.get("units") in _TIMES and behind in _CLOSING
    at = mention.start - 1
    while at > 0 and talk.words[at] in _A_BIT:
        at -= 1
    going = talk.words[at] in _GOING_LATE
    person = talk.words[at] in _BEING and talk.words[at - 1 : at] in _PERSONS
    return counted or going or (person and behind in _WITH)


def _thing_there(talk: Talk, mention: Mention) -> bool:
    """ "The truck's out the front", "dog was in the back": where a thing is that has no feet to shoe."""
    at = mention.start - (talk.words[mention.start - 1] == "the")
    while at > 0 and talk.words[at - 1] in _STANDING:
        at -= 1
    return at > 1 and talk.words[at - 1] in _BEING and talk.words[at - 2] in _VEHICLES | _ABOUT


def goes_round_it(talk: Talk, mention: Mention) -> bool:
    """ "A keratoma, because the white line bends around it", "the sole dips in there": what the part does there.

    Not "bruise at the toe right under it", "the sulcus of it", which tell where.
    """
    behind = talk.words[mention.end : mention.end + _ROUND]
    if talk.words[mention.start - 1] not in _ITS or talk.words[mention.start - 2] in _TO_A_PART:
        return False
    if not behind or behind[0] in _TO_A_PART | _STANDS or talk.mention_starting(mention.end) is not None:
        return False
    turns = [i for i, word in enumerate(behind[:-1]) if word in _TO_A_PART and behind[i + 1] in _OF_IT]
    found = turns and any(m.is_any(CLASS_SLOTS) for m in talk.starting_in(mention.end, mention.end + turns[0]))
    return bool(turns) and not found and {",", "."}.isdisjoint(behind[: turns[0]])
