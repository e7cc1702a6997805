"""From mentions to drafts: the slots that are a word of the trade, and "new" before what was put on."""

from __future__ import annotations

from pipeline.reading.fitted_hot import drop_fitted_hot
from pipeline.reading.mentions import Mention
from pipeline.reading.missing_shoes import part_missing
from pipeline.reading.name_words import HORSE_WORDS
from pipeline.reading.settling_work import LEFT_BARE, SAME_SHOE
from pipeline.reading.some_of_it import FIERCE, tell_fierce
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status
from pipeline.vocabulary import CLASS_SLOTS

# Tester, pulse and nail-line words need their head beside them and are read in responses.py.
_ELSEWHERE = ("tester_responses", "pulses", "nail_lines")
_RANKS = {name: rank for rank, name in enumerate(name for name in CLASS_SLOTS if name not in _ELSEWHERE)}
_DRAFTED = frozenset(_RANKS)
SHOE_NOUNS = ("shoe_types", "shoe_materials")
_PARTED = frozenset({"stretched", "separated", "stretching", "separating"})
_IS_IN = frozenset({"in", "on", "of", "is", "'s", "was", "the", "has", "still", "a", "bit"})
_PARTING = (["stretching"], ["stretched"], ["separating"], ["separated"], ["parting"])
_TIPS = frozenset({"tip", "tips"})
_LOOKING = frozenset(
    {"is", "are", "'s", "'re", "was", "were", "looks", "look", "all", "both", "nice", "good", "and", "still"}
)
_PARTS = frozenset({
    "frog", "frogs", "sole", "soles", "wall", "walls", "horn", "heels", "bars", "bulbs", "bulb", "clenches", "clinches",
    "nails", "quarters", "sulcus", "laminae",
})  # fmt: skip
_TEARING = frozenset({"tore", "ripped", "yanked", "pulled", "kicked"})
_THROWING = frozenset(
    {"tossed", "dropped", "threw", "flung", "slung", "chucked", "pitched", "thrown", "ripped", "tore", "yanked"}
)
_AT_THE = (["at", "the"], ["over", "the"], ["along", "the"])
_THE_SAME = (["same", "shoes"], ["same", "shoe"], ["same", "ones"], ["same", "set"], ["same", "plates"])
_AFTER_THE = (["after", "the"], ["before", "the"], ["after", "a"])
_JUST = frozenset({"just", "then", "simply", "only", "'d", "'ve", "had", "have"})
_NAILING = frozenset({"nailed", "put", "tacked", "set", "fitted", "fit", "hung", "drove"})
_STUFF = {"steel": "steel", "aluminum": "aluminum", "aluminium": "aluminum", "rubber": "rubber", "plastic": "plastic"}
_HAD_COME_OFF = frozenset({
    "found", "lost", "threw", "thrown", "cast", "came", "come", "gone", "missing", "pulled", "field", "paddock", "mud",
    "bog", "ditch", "without", "kept", "saved", "one",
})  # fmt: skip
_BACK_ON = frozenset({"same", "shoe", "went", "straight", "back", "on"})
_BEING_OFF = frozenset({"is", "'s", "was"})
_HAVE = frozenset({"has", "'s", "have", "'ve", "had", "'d", "always", "only", "never"})
_TAKING, _OFF_WITHIN = frozenset({"took", "whipped", "eased", "lifted", "popped"}), 5
_BARE = frozenset({"bare", "barefoot", "shoeless"})
_TRIMMED = frozenset({"trim", "trims", "trimmed", "dressed"})
_MAKING = frozenset({"made", "make"})
_ON_AGAIN = frozenset({"shoe", "shoes", "plate", "plates"})
_IT_IS_HOT = frozenset({"it", "'s", "is", "n't", "not", "that", "foot", "and", "but", "though", "very", "at", "all"})
_WHO = frozenset({"he", "she", "they", "it", "and", "but"})
_MAY_BE_HOT = frozenset({
    "swelling", "abscess", "bruise", "corn", "puncture", "laminitis", "scratches", "quicked", "close_nail", "crack",
    "sidebone", "ringbone", "thrush", "canker", "imbalance", "long_toe", "growth_rings", "club_foot", "flare",
})  # fmt: skip
_LISTING = frozenset({",", "or", "nor", "and", "any"})
_BEHIND_ITEM: tuple[list[str], ...] = (
    [],
    ["."],
    [","],
    [";"],
    ["or"],
    ["nor"],
    ["and"],
    ["in"],
    ["on"],
    ["anywhere"],
    ["either"],
)


def draft_words(talk: Talk) -> None:
    """A draft for every mention of a finding, shoe, pad, treatment and the like."""
    drop_fitted_hot(talk)
    if talk.says(FIERCE):
        tell_fierce(talk)
    for segment in talk.segments:
        for mention in segment.mentions:
            name = None if _DRAFTED.isdisjoint(mention.readings) else _class_of(talk, segment, mention)
            if name is None:
                continue
            draft = add_draft(segment, CLASS_SLOTS[name], mention.readings[name], mention)
            if name == "work":
                _note_work(talk, draft, mention)
            elif name == "shoe_types" and (stuff := _STUFF.keys() & talk.words[mention.start : mention.end]):
                add_draft(segment, "shoe_material", _STUFF[min(stuff)], mention)


def _note_work(talk: Talk, draft: Draft, mention: Mention) -> None:
    """Note of a trim that it left bare, of shoes put back that they are the same."""
    said, segment = set(talk.words[mention.start : mention.end]), draft.segment
    if draft.value == "trim" and _BARE & said and not _TRIMMED & said:
        draft.note(LEFT_BARE)
    if draft.value == "reset":
        _say_twice(talk, draft, mention.end)
    if draft.value != "put_back":
        return
    back_on = said <= _BACK_ON and "shoe" in said
    back_on = back_on and ("same" in said or _same_kind(talk, mention)) and _was_on(talk, segment)
    if back_on or ("same" in said and _taken_off_just_now(talk, segment, mention)):
        draft.note(SAME_SHOE)


def _say_twice(talk: Talk, draft: Draft, at: int) -> None:
    """ "Reset the hinds, same shoes": the same shoes are what a reset is, and nothing more to be read."""
    foot = next((m for m in talk.starting_in(at, at + 3) if m.get("feet")), None)
    end = foot.end if foot is not None else at
    if talk.words[end + 1 : end + 3] in _THE_SAME:
        draft.evidence.update(range(at, end + 3))


def _same_kind(talk: Talk, mention: Mention) -> bool:
    """ "Same rim shoe back on": the kind or the stuff of the shoe stands between."""
    kind = talk.mention_ending(mention.start)
    return kind is not None and kind.is_any(SHOE_NOUNS) and talk.words[kind.start - 1] == "same"


def _was_on(talk: Talk, segment: Segment) -> bool:
    """Whether nothing near tells that the shoe had come off: "they found it in the field, same shoe back on"."""
    near = [*talk.sentence(segment.sentence - 1), *talk.sentence(segment.sentence)] if segment.sentence else [segment]
    said = [i for s in near if s.index <= segment.index for i in range(s.start, s.end)]
    words = {talk.words[i] for i in said if talk.words[i] != "gone" or talk.words[i - 2] not in _PARTS}  # "wall's gone"
    return words.isdisjoint(_HAD_COME_OFF)


def _taken_off_just_now(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Took it off and set the same one back": by hand, not lost; but "took my arm off"."""
    near = [*talk.sentence(segment.sentence - 1), *talk.sentence(segment.sentence)] if segment.sentence else [segment]
    words = talk.words[near[0].start : mention.start]
    taking = [i for i, word in enumerate(words) if word in _TAKING]
    return any("off" in behind and "my" not in behind for i in taking if (behind := words[i + 1 : i + _OFF_WITHIN]))


def add_draft(segment: Segment, slot: str, value: str, mention: Mention) -> Draft:
    """Append a draft for ``mention`` to its segment."""
    draft = Draft(slot, value, segment, mention.start, mention.end, mention.match)
    draft.evidence.update(mention.literal)
    segment.drafts.append(draft)
    return draft


def _class_of(talk: Talk, segment: Segment, mention: Mention) -> str | None:
    if mention.dropped or "not_facts" in mention.readings:
        return None
    ranked = [name for name in mention.readings if name in _RANKS]
    first = ranked[0] if len(ranked) == 1 else min(ranked, key=_RANKS.__getitem__)
    if first == "work" and _tells_when(talk, segment, mention):
        return None
    if first == "manners" and (_answers_a_head(segment, mention) or _answers_before(talk, segment, mention)):
        return None
    if mention.get("horse_cues") == "new" and not _new_shoe_talk(talk, segment, mention):
        return None
    if first == "warmths" and not _of_a_foot(talk, segment) and not _of_the_foot_before(talk, segment, mention):
        return None
    if first == "shoe_states" and _thrown_away(talk, segment, mention):
        return None
    if first == "shoe_states" and (_torn_off_by_hand(talk, segment, mention) or part_missing(talk, mention)):
        return None
    if first == "gaits" and (_of_a_part(talk, mention) or _off_the_foot(talk, segment, mention)):
        return None
    if first == "shoe_states" and _has_worn(talk, segment, mention):
        return None
    if mention.get("zones") is not None and _reads_as_zone(talk.words, segment, mention):
        return None
    return first


def _tells_when(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Toe length after the trim, left front ninety": a time, where the work on this horse was told elsewhere."""
    ahead = talk.words[mention.start - 2 : mention.start]
    timed = mention.get("work") == "trim" and (ahead in _AFTER_THE or ahead[-1:] in (["once"], ["after"], ["before"]))
    if not timed or not segment.having("measures"):
        return False
    return any(s.having("work") for s in talk.segments if s.horse == segment.horse and s is not segment)


def _of_a_part(talk: Talk, mention: Mention) -> bool:
    """ "The frog's sound", "soles sound as a bell": said of a part of the foot, not of how the horse goes."""
    if mention.get("gaits") != "sound":
        return False
    at = mention.start - 1
    while at > 0 and talk.words[at] in _LOOKING:
        at -= 1
    return at >= 0 and talk.words[at] in _PARTS


def _off_the_foot(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "The shoe's off on the left hind": only the horse itself is off on a foot, "Tally's off on the left hind"."""
    if talk.words[mention.end - 2 : mention.end] != ["off", "on"] or talk.words[mention.start] not in _BEING_OFF:
        return False
    name = talk.mention_ending(mention.start)
    horse = (name is not None and name.get("horse") is not None) or talk.words[mention.start - 1] in HORSE_WORDS
    return not horse or not any(m.start >= mention.end for m in segment.having("feet"))


def _has_worn(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "She's worn steel up front all her life": what she has had on, not how it was found."""
    if talk.words[mention.start : mention.end] != ["worn"] or talk.words[mention.start - 1] not in _HAVE:
        return False
    return any(0 <= m.start - mention.end <= 1 and m.is_any(SHOE_NOUNS) for m in segment.mentions)


def _torn_off_by_hand(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Tore that pair off and nailed on new ones": what the farrier took off, since he nailed on what follows."""
    following = talk.segments[segment.index + 1] if segment.index + 1 < len(talk.segments) else None
    if talk.words[mention.start] not in _TEARING or mention.start != segment.start or following is None:
        return False
    joined = following.sentence == segment.sentence and following.joined_by("and", ", and", "then", ", then")
    return joined and talk.words[following.start] in _NAILING


def _thrown_away(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "It had sprung, so I tossed it": the farrier did it, and with an old shoe."""
    at = mention.start - 1
    while at > segment.start and talk.words[at] in _JUST:
        at -= 1
    by_hand = at >= segment.start and talk.words[at] in ("i", "we")
    return (by_hand and talk.words[mention.start] in _THROWING) or _throws_a_flare(talk, mention)


def _throws_a_flare(talk: Talk, mention: Mention) -> bool:
    """ "The off hind could be throwing a flare", "has thrown out some flare": the foot grows it, and lost no shoe."""
    at = mention.end + (talk.words[mention.end : mention.end + 1] == ["out"])
    at += talk.words[at : at + 1] in (["a"], ["an"], ["another"], ["some"], ["more"])
    found = talk.mention_starting(at)
    found = talk.mention_starting(found.end) if found is not None and found.get("zones") else found  # "a quarter crack"
    verb = talk.words[mention.start : mention.end]
    return verb in (["throwing"], ["thrown"], ["threw"]) and found is not None and found.get("findings") is not None


def _answers_before(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Testers on the off fore, quiet.", "…, he never stirred": alone in its segment, the testers ahead of it."""
    if mention.get("tester_responses") is None or segment.end != mention.end:
        return False
    if not _WHO.issuperset(talk.words[segment.start : mention.start]):
        return False
    sentence = talk.sentence(segment.sentence)
    return any(s.having("tester_heads") for s in sentence if s.index < segment.index)


def _of_a_foot(talk: Talk, segment: Segment) -> bool:
    """ "Both fores hot" and "it's warm round the coronet" tell of a foot, "it's hot" of the day."""
    placed = segment.having("feet") or segment.having("zones")
    return bool(placed) or bool({"foot", "feet", "hoof"} & set(talk.words[segment.start : segment.end]))


def _of_the_foot_before(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Swelling in the right hind, and it isn't hot": of the foot that has the finding just told."""
    before = talk.segments[segment.index - 1] if segment.index else None
    if before is None or before.sentence != segment.sentence or not before.having("feet"):
        return False
    found = any(m.get("findings") in _MAY_BE_HOT for m in before.mentions)
    led = talk.words[segment.start : mention.start]
    return found and mention.end == segment.end and set(led) <= _IT_IS_HOT


def _answers_a_head(segment: Segment, mention: Mention) -> bool:
    """ "Pulse quiet" tells of the pulse, not of the horse's manner."""
    heads = (("pulse_heads", "pulses"), ("tester_heads", "tester_responses"), ("nail_line_heads", "nail_lines"))
    return any(segment.having(head) and mention.get(answer) is not None for head, answer in heads)


def _new_shoe_talk(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "I made him a new one, size two" against "pleased to see the new one"."""
    near = [m for m in segment.mentions if m is not mention]
    before = talk.segments[segment.index - 1] if segment.index else None
    shod = before is not None and before.sentence == segment.sentence
    if shod and before is not None and any(m.is_any(("shoe_types", "shoe_states")) for m in before.mentions):
        return True  # "straight bar on that foot, a new one"
    if shod and before is not None and _ON_AGAIN & set(talk.words[before.start : before.end]):
        return True  # "he has a shoe on it again, a new one"
    return (
        bool(talk.plays("action", segment.start, segment.end))
        or not _MAKING.isdisjoint(talk.words[segment.start : segment.end])
        or mention.start == segment.start
        or any(m.is_any(("feet", "shoe_types", "shoe_states", "work")) or m.number for m in near)
    )


def _reads_as_zone(words: list[str], segment: Segment, mention: Mention) -> bool:
    """ "Bar" beside a finding or the testers is a place on the foot; else it is a shoe."""
    others = [m for m in segment.mentions if m is not mention]
    if any(m.is_any(("findings", "tester_heads", "tester_responses")) for m in others):
        return True
    return words[max(segment.start, mention.start - 2) : mention.start] in _AT_THE


def draft_tips(talk: Talk) -> None:
    """ "A glue-on tip", "steel tips": behind the word for a shoe or its stuff a tip is a shoe, and no gratuity."""
    for at in talk.where(_TIPS):
        ahead, segment = talk.mention_ending(at), talk.segment_at(at)
        if ahead is None or segment is None or not ahead.is_any(SHOE_NOUNS) or talk.holding(at):
            continue
        add_draft(segment, "shoe_type", "tip", Mention(at, at + 1, (at,), {"shoe_types": "tip"}))
        segment.drafts.sort(key=lambda d: (d.start, d.end))


def draft_white_line(talk: Talk) -> None:
    """ "White line could be stretching" tells of its separation, so does "white line in the off hind is stretched"."""
    for segment in talk.segments if talk.having("zones", "white_line") else ():
        for mention in segment.having("zones", "white_line"):
            doubted = [m for m in segment.having("doubts", "before") if m.start == mention.end]
            if doubted and talk.words[doubted[0].end : doubted[0].end + 1] in _PARTING:
                draft = add_draft(segment, "finding", "white_line_separation", mention)
                draft.end, draft.status = doubted[0].end + 1, Status.SUSPECTED
            parting = _parted_there(talk, segment, mention)
            if parting:
                draft = add_draft(segment, "finding", "white_line_separation", mention)
                draft.end = parting


def name_white_line(talk: Talk) -> None:
    """ "No thrush, no white line", "free of white line": denied by name it is the disease, before a list is cut."""
    for mention in talk.having("zones", "white_line") if talk.having("denials") else ():
        if talk.words[mention.start : mention.end] == ["white", "line"] and _listed_as_not_there(talk, mention):
            mention.readings = {"findings": "white_line_disease"}
            talk.changed()


def _listed_as_not_there(talk: Talk, mention: Mention) -> bool:
    """ "No white line", "no thrush, white line or bruising": among denied findings, and no place of the next one."""
    if talk.words[mention.end : mention.end + 1] not in _BEHIND_ITEM:
        return False
    at, denials = mention.start, talk.having("denials", "before")
    while at and not any(m.end == at or m.start == at - 1 for m in denials):
        told = talk.mention_ending(at)
        if talk.words[at - 1] not in _LISTING and (told is None or "findings" not in told.readings):
            return False
        at = at - 1 if talk.words[at - 1] in _LISTING or told is None else told.start
    return at > 0


def _parted_there(talk: Talk, segment: Segment, mention: Mention) -> int:
    """Where "white line in the right hind is stretched" ends: nothing but the foot and "is" between; else 0."""
    footed = {i for m in segment.having("feet") for i in range(m.start, m.end)}
    for at in range(mention.end, segment.end):
        if talk.words[at] in _PARTED:
            return at + 1 if footed & set(range(mention.end, at)) and not talk.holding(at) else 0
        if at not in footed and talk.words[at] not in _IS_IN:
            return 0
    return 0
