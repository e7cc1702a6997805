"""Words for feet that mean something else: "silicone behind them", "kept elsewhere", "match the right"."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.pointed_out import names_no_foot
from pipeline.reading.talk import Segment, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET
from pipeline.vocabulary import CLASS_SLOTS

_CLOSING_ANYWHERE = frozenset({",", ".", "and", "but", "either", "at", "on", "in"})
_ANYWHERE = frozenset({"anywhere", "everywhere", "anyplace", "place"})
# The last words of those that may mean something else than feet.
_MAY_BE_NO_FOOT = frozenset({
    "both", "lot", "behind", "elsewhere", "one", "anywhere", "everywhere", "anyplace", "place", "round", "around",
    "over", "rest",
})  # fmt: skip
# "Drained it the rest of the way", "cleaned out the rest of it": what is left of something else than the feet.
_OF_THE = frozenset({"the", "that", "this", "my", "his", "her"})
_LEFT_TO_DO = frozenset({
    "way", "day", "morning", "afternoon", "week", "month", "year", "time", "season", "summer", "winter", "spring",
    "fall", "autumn", "it", "that", "this", "pus", "muck", "gunk", "stuff", "cavity", "hole", "foot", "hoof", "barn",
    "yard", "herd", "string", "horses", "bottle", "tube", "can", "job",
})  # fmt: skip
_GOING = frozenset({"going", "go", "goes", "gone", "went", "get", "gets", "getting", "got"})
_PRONOUNS = (["them"], ["it"], ["that"], ["those"])
_WHAT_IT_COVERS = (["me"], ["my"], ["us"], ["it"], ["that"], ["them"], ["the"], ["both"], ["his"], ["her"], ["each"])
# The last words of "all" that name no feet where nothing of the trade is told.
_MAY_BE_TOLD_OF = frozenset({
    "round", "around", "over", "anywhere", "everywhere", "anyplace", "place", "everything", "lot", "them", "any",
    "one", "corner", "horse",
})  # fmt: skip
_OF_THE_TRADE = (*CLASS_SLOTS, "measures", "tester_heads", "pulse_heads", "totals", "zones", "severities", "same")
_LIGHT = frozenset({
    "so", "and", "then", "now", "that", "'s", "is", "was", "it", "they", "are", "were", "on", "in", "at", "for",
    "the", "right", "well", "just", "but", "a", "again", "no", "not",
})  # fmt: skip
_DOING = frozenset({
    "did", "do", "doing", "done", "shod", "plated", "nailed", "pulled", "rasped", "dressed", "tidied", "came",
    "bare", "barefoot", "shoes", "ones", "clips", "feet", "same", "nothing", "none", "gone", "off",
})  # fmt: skip
_THE_WHOLE_WAY = frozenset({"right", "way"})  # bare "bent all round" may be four shoes
_TURNING = frozenset({
    "bent", "turned", "twisted", "pulled", "swung", "spun", "slewed", "shifted", "wrenched", "buckled", "curled",
    "folded", "wrapped",
})  # fmt: skip
_WHAT_TURNS = frozenset({"it", "the", "that", "his", "her", "shoe", "bar", "clip", "foot"})
_GOING_ROUND = frozenset({"round", "around", "starting", "begin", "beginning"})
_LIKENED = frozenset({"match", "matches", "matching", "like", "than", "unlike", "from", "matched"})
_OF_THEM = (["either", "of"], ["both", "of"], ["any", "of"], ["either", "one"])
_DONE = frozenset({"shod", "done", "kept", "from", "lives", "living", "stabled", "trimmed", "been", "him", "her"})
_ANSWERS = frozenset(
    {"nothing", "none", "reaction", "response", "flinch", "anything", "answer", "nowt", "gone", "cleared", "away"}
    | {"thing", "peep", "murmur", "flicker", "twitch"}
)


def _after_packing(talk: Talk, mention: Mention) -> bool:
    before = talk.mention_ending(mention.start)
    return before is not None and before.is_any(("packings", "pads"))


def _rest_of_it(talk: Talk, mention: Mention) -> bool:
    """ "Drained it the rest of the way", "pared the rest of that sole": more of something told, not the other feet."""
    if talk.words[mention.end - 1 : mention.end + 1] != ["rest", "of"]:
        return False
    at = mention.end + 1
    at += _OF_THE.issuperset(talk.words[at : at + 1]) and talk.words[at + 1 : at + 2] not in ([","], ["."], [])
    told = talk.mention_starting(at)
    part = told is not None and told.is_any(("zones", "findings")) and told.get("feet") is None
    return part or not _LEFT_TO_DO.isdisjoint(talk.words[at : at + 1])


def _shod_elsewhere(talk: Talk, mention: Mention) -> bool:
    """ "He's been kept elsewhere", "done elsewhere": another place, no feet."""
    return talk.words[mention.start : mention.end] == ["elsewhere"] and talk.words[mention.start - 1] in _DONE


def the_lot(talk: Talk, mention: Mention) -> bool:
    return talk.words[mention.start : mention.end] == ["the", "lot"]


def _and_so_on(talk: Talk, mention: Mention) -> bool:
    """ "Loose, sprung, the lot", "thrush and cracks, the lot": all that was found there, not all four feet."""
    last = talk.mention_ending(mention.start - 1) if the_lot(talk, mention) else None
    at = 0 if last is None else last.start - 1 - (talk.words[last.start - 1] in ("a", "an", "some"))
    return all(m is not None and m.is_any(("shoe_states", "findings")) for m in (last, talk.mention_ending(at)))


def _behind_them(talk: Talk, mention: Mention) -> bool:
    """ "Full pads with silicone behind them", "no keratoma behind either of them": no hind foot."""
    if talk.words[mention.start : mention.end] != ["behind"]:
        return False
    him = talk.words[mention.end : mention.end + 1] in (["him"], ["her"])
    if him and "left" in talk.words[max(0, mention.start - 6) : mention.start]:
        return True  # "left both fronts behind him in the bog"
    of_them = talk.words[mention.end : mention.end + 2] in _OF_THEM
    return of_them or (talk.words[mention.end : mention.end + 1] in _PRONOUNS and _after_packing(talk, mention))


def _both_places(talk: Talk, mention: Mention) -> bool:
    """ "Thrush in both the frog and the sulcus", "both medial and lateral": two places, not two feet."""
    if talk.words[mention.end - 1] != "both":
        return False
    first = _place_at(talk, mention.end)
    if first is None or talk.words[first.end : first.end + 1] != ["and"]:
        return False
    return _place_at(talk, first.end + 1) is not None


def _round_a_foot(talk: Talk, mention: Mention) -> bool:
    """ "Growth rings right round both fores": how far the finding runs on the feet named behind, not four feet."""
    if mention.get("feet") != "all" or talk.words[mention.end - 1] not in ("round", "around"):
        return False
    if _turned(talk, mention):
        return True
    found = talk.mention_ending(mention.start) or talk.mention_ending(mention.start - 1)
    led = talk.words[mention.end : mention.end + 1] in (["the"], ["on"], ["in"], ["his"], ["her"])
    foot = next((m for m in talk.having("feet") if mention.end <= m.start <= mention.end + led), None)
    covered = found is not None and found.is_any(("findings", "treatments"))
    return covered and (foot or _one_foot_before(talk, mention, found)) is not None


def _turned(talk: Talk, mention: Mention) -> bool:
    """ "The shoe was bent right round", "twisted it all the way round": how far a shoe was turned."""
    if _THE_WHOLE_WAY.isdisjoint(talk.words[mention.start : mention.end]):
        return False
    at = mention.start - 1
    while at and talk.words[at] in _WHAT_TURNS:
        at -= 1
    alone = talk.words[at] == "pulled" and at == mention.start - 1 and talk.words[mention.start] != "right"
    return talk.words[at] in _TURNING and not alone  # "pulled all the way round" takes four shoes off


def _one_foot_before(talk: Talk, mention: Mention, found: Mention | None) -> Mention | None:
    """ "Off hind, flare all the way round", "near fore, abscess. Poultice right round.": the one foot so far.

    Of its sentence, or of that before for what is put on a foot.
    """
    if _THE_WHOLE_WAY.isdisjoint(talk.words[mention.start : mention.end]):
        return None
    ends = [0, *(i + 1 for i in range(mention.start) if talk.words[i] in SENTENCE_ENDS)]
    opened = ends[-2:][0] if found is not None and "treatments" in found.readings else ends[-1]
    feet = [m for m in talk.having("feet") if opened <= m.start < mention.start and m.get("feet") != "in_hand"]
    return feet[-1] if len(feet) == 1 and feet[0].get("feet") in FEET else None


def _over_something(talk: Talk, mention: Mention) -> bool:
    """ "Iodine all over it", "all over the sole": how far on the foot in hand."""
    place = talk.mention_starting(mention.end)
    over = talk.words[mention.end : mention.end + 1] in _WHAT_IT_COVERS
    return over or (place is not None and place.get("zones") is not None)


def _place_at(talk: Talk, at: int) -> Mention | None:
    place = talk.mention_starting(at + (talk.words[at : at + 1] in (["the"], ["his"], ["her"])))
    return place if place is not None and place.get("zones") is not None else None


def _something_else(talk: Talk, mention: Mention) -> bool:
    """ "Bandaged the lot", "silicone behind them", "been kept elsewhere": a word for feet that means something else."""
    if _both_places(talk, mention) or _round_a_foot(talk, mention) or _and_so_on(talk, mention):
        return True
    if talk.words[mention.start : mention.end] == ["all", "over"] and _over_something(talk, mention):
        return True
    if the_lot(talk, mention) and mention.start and talk.words[mention.start - 1] not in (",", ".", "on"):
        return True  # "bandaged the lot" wraps one foot; "steel, the lot" is all four
    if _behind_them(talk, mention) or _shod_elsewhere(talk, mention) or _rest_of_it(talk, mention):
        return True
    packed = talk.mention_ending(mention.start)
    if talk.words[mention.start : mention.end] == ["in", "behind"] and packed is not None and packed.get("packings"):
        return True  # "putty in behind" lies behind the pad
    after = talk.words[mention.end] if mention.end < len(talk.words) else "."
    inside = talk.mention_starting(mention.end)
    if mention.get("feet") == "all" and inside is not None and inside.get("feet") == "in_hand":
        return True  # "no hole anyplace in there"
    anywhere = talk.words[mention.end - 1] in _ANYWHERE
    if anywhere and talk.words[mention.start - 1] in _GOING:
        return True  # "ringbone, it's not going anywhere"
    head = next((i + 1 for i in range(mention.start - 1, -1, -1) if talk.words[i] in SENTENCE_ENDS), 0)
    foot = talk.mention_starting(head) if anywhere else None
    if foot is not None and foot.get("feet") in FEET and talk.words[foot.end] == ",":
        return True  # "near fore, nothing anywhere on the testers"
    return anywhere and after not in _CLOSING_ANYWHERE  # "I couldn't find anywhere decent to nail"


def told_of_in_passing(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Bent right round", "she kicked everything", "couldn't find it anywhere": nothing of the trade, and no feet."""
    if segment.drafts or talk.words[mention.end - 1] not in _MAY_BE_TOLD_OF:
        return False
    if any(m is not mention and (m.is_any(_OF_THE_TRADE) or m.number is not None) for m in segment.mentions):
        return False
    beside = {*talk.words[segment.start : mention.start], *talk.words[mention.end : segment.end]} - _LIGHT
    return bool(beside) and beside.isdisjoint(_DOING)


def is_no_foot(talk: Talk, mention: Mention) -> bool:
    """ "Match the right", "seen from the front": a foot that is only looked at, or none."""
    last = talk.words[mention.end - 1]
    if last == "both" and mention.end - mention.start == 1 and _two_findings_end(talk, mention.start):
        return True  # "heat and swelling both gone"
    if names_no_foot(talk, mention) or (last in _MAY_BE_NO_FOOT and _something_else(talk, mention)):
        return True
    near = talk.words[max(0, mention.start - 2) : mention.start]
    if "as" in near and "same" in talk.words[max(0, mention.start - 4) : mention.start]:
        return True  # "same size as the fronts"
    if _LIKENED.isdisjoint(near):
        return False
    before = set(near[-1:] if near[-1:] == ["."] or near[:1] in (["."], [","]) else near)
    if "from" in before and _ANSWERS & set(talk.words[max(0, mention.start - 6) : mention.start]):
        before.discard("from")  # "nothing from the off fore"
    if "from" in before and not _GOING_ROUND.isdisjoint(talk.words[max(0, mention.start - 6) : mention.start]):
        before.discard("from")  # "going round him from the near fore: reset, off fore trimmed"
    if near[:1] == ["than"] and near[1:] not in (["the"], ["on"], ["in"], ["his"], ["her"], ["those"]):
        before.discard("than")  # "I did no more than trim the hinds"
    if near == ["like", "that"]:
        before.discard("like")  # "no heat, nothing like that in any of them"
    return not _LIKENED.isdisjoint(before)


def _two_findings_end(talk: Talk, at: int) -> bool:
    """Whether two findings that an "and" joins stand right before the token."""
    last = talk.mention_ending(at)
    first = talk.mention_ending(last.start - 1) if last is not None and talk.words[last.start - 1] == "and" else None
    return all(m is not None and "findings" in m.readings for m in (last, first))
