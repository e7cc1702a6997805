"""Shoes that came off, pulled by the horse or taken off by hand, today or at the next visit; or made way for new."""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.places import YARD
from pipeline.reading.sayings import Sayings, said_whole
from pipeline.reading.talk import Draft, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET
from pipeline.vocabulary import CLASS_SLOTS

_DONE = frozenset({"drew", "pulled", "removed", "stripped", "took", "taken", "whipped"})
_TAKING = _DONE | {"draw", "pull", "remove", "strip", "take", "pulling", "removing"}
_BY_HAND = frozenset(
    {"we", "i", "'ll", "to", "will", "and", "then", "'d", "would", "can", "could", "should", "'re", "'m"}
)
_SUBJECTS = frozenset({"i", "we", "he", "she"})
_WHOSE = frozenset({"off", "both", "the", "his", "her", "all", "those", "that"})
_I_HAVE = (["i", "'ve"], ["we", "'ve"], ["i", "have"], ["we", "have"])
_CAME_OFF = Sayings("came off", "come off")
_OFF_IT_CAME = Sayings("off it came", "off they came", "off they come", "off came the pair of them", "off came the lot")
_SO_I_DID = Sayings("so i did", "and i did", "which i did", "and so i did", "so i have")
_HAD_SAID = frozenset({"said", "told", "promised", "planned", "meant", "swore"})
_NOT_TAKEN = frozenset({"hand", "hands", "itself", "themselves", "field", "pads", "pad", "bandage", "boot", "boots"})
_LEFT_OFF = (["off", "and", "left"], ["off", "and", "leaving"], ["off", "and", "staying"], ["off", "and", "stay"])
_HAVE = frozenset({"'ve", "have", "'d", "had"})
_NO_MORE: tuple[list[str], ...] = ([], ["."], [","], ["and"], ["but"], ["today"])
_ONE_OF = frozenset({"one", "off", "hind", "front", "fore", "back", "shoe", "of", "the", "them"})
_THE_HORSE = frozenset({"he", "she", "'d", "has", "had", "'s", "who"})
_AND_LEFT = (["and", "left"], ["and", "leaving"], ["and", "staying"], ["and", "leave"], ["and", "stays"])
_SHOE = frozenset({"shoe"})
_SHOE_OFF = said_whole("shoe off", "the shoe off", "that shoe off", "his shoe off", "her shoe off", "shoe off now")
_SHOES = frozenset({"shoe", "shoes"})
_MAY_COME_OFF = _SHOES | {"come", "comes", "coming"}
_TO_HAVE = frozenset({"have", "get", "whip", "slip", "want", "take", "pull", "pop"})  # "I'll have that shoe off him"
_LEFT = frozenset({"left"})
_THREW, _THE_SHOE = frozenset({"threw", "pulled", "thrown"}), frozenset({"it", "that", "them"})
_OUT_THERE = frozenset({"out", "off", "in", "at", "on", "down", "the", "his", "her", "that", "one", "shoe"})
_BY_US = frozenset({"i", "we"})
_SOFT = frozenset({"mud", "bog", "ditch", "creek", "turnout", "swamp"})
_IN_A_PLACE = frozenset({"in", "at", "under", "on", "by"})
_PAIRS = frozenset({"fronts", "hinds"})
_LEAVABLE = frozenset(FEET) | _PAIRS
_LEAVING = frozenset({"he", "she", "who", "has", "had", "'s", "'d", "horse", "mare", "pony", "gelding", "cob"})
_BEHIND_HIM = frozenset({"out", "back", "down", "behind", "over", "shoe", "shoes", "him", "her", "it", "somewhere"})
_LOSING = frozenset({"losing", "pulling", "throwing", "casting", "shedding", "dropping"})
_IS = frozenset({"is", "was"})
_DROPPED = frozenset({"dropped", "shed"})
_HAS_DONE, _ITS = frozenset({"'d", "had", "has", "'s"}), frozenset({"the", "his", "her", "a", "that", "both"})
_NO_MORE_OF_IT = frozenset({",", "and", "so", "again", "but", "since", "overnight", "somewhere", *SENTENCE_ENDS})
_RENEWED = frozenset({"renewed", "replaced"})
_CLOSING = frozenset({",", ".", "and", "but", "with", "today", "now", "again", "too", "because", "since", "as"})
_NOT_BY_ME = frozenset({"he", "she", "they", "they'd", "who", "to", "be", "being", "n't", "not", "never"})
_PULLED, _PULLED_IT, _OFF = 3, frozenset({"pulled"}), frozenset({"off"})
_HALTS, _HALTING = frozenset({",", "um", "uh", "er", "erm", "ah", "eh"}), 8  # "I pulled, um, both front shoes"


def draft_pulled(talk: Talk) -> None:
    """ "Tally pulled her right hind", "she'd dropped the near fore": the horse did it, not the farrier."""
    for foot in talk.having("feet") if talk.says(_PULLED_IT) else ():
        words = talk.words[max(0, foot.start - 3) : foot.start]
        if len(words) < _PULLED or words[1] != "pulled" or words[2] not in ("his", "her", "a", "the"):
            continue
        had = words[0] in _HAS_DONE  # "Tally had pulled the left hind"
        name = talk.mention_ending(foot.start - 2 - had)
        named = name is not None and name.get("horse") is not None
        if words[0] in ("he", "she") or named or (words[0] == "and" and _by_the_horse(talk, foot.start - 2)):
            _add(talk, foot.start - 2, "shoe_state", "lost", "shoe_state: pulled by the horse")
    for foot in talk.having("feet") if talk.says(_DROPPED) else ():
        words = talk.words[max(0, foot.start - 3) : foot.start]
        behind = talk.words[foot.end : foot.end + 1]
        shed = len(words) == _PULLED and words[0] in _HAS_DONE and words[1] in _DROPPED and words[2] in _ITS
        if shed and (behind == [] or behind[0] in _NO_MORE_OF_IT) and foot.get("feet") in _LEAVABLE:
            _add(talk, foot.start - 2, "shoe_state", "lost", "shoe_state: dropped by the horse")

    for foot in talk.having("feet") if talk.says(_LOSING) else ():
        at = foot.start - 1 - (talk.words[foot.start - 1] in _ITS)
        just = talk.words[at - 1] == "after" and talk.words[at - 2] in _THE_HORSE | _IS  # Irish: has just lost it
        part = talk.mention_starting(foot.end)
        if just and talk.words[at] in _LOSING and (part is None or not part.is_any(("zones", "findings"))):
            _add(talk, at, "shoe_state", "lost", "shoe_state: pulled by the horse")


def draft_shoe_off(talk: Talk) -> None:
    """ "Drained it. Shoe off.": the shoe alone in its segment, off, where none was told to be lost."""
    lost = any(m.get("shoe_states") in ("lost", "loose") for m in talk.having("shoe_states"))
    for segment in talk.segments if talk.says(_SHOE) and not lost else ():
        alone = tuple(talk.words[segment.start : segment.end]) in _SHOE_OFF
        if alone and any(m.end <= segment.start for m in talk.having("feet")):
            _add(talk, segment.end - 2, "work", "removed", "work: taken off by hand")


def draft_pulled_by_hand(talk: Talk) -> None:
    """ "Pulled both front shoes", "next time we pull the hinds", "front shoes off and left off": by hand."""
    taken = talk.says(_TAKING)
    for foot in talk.having("feet") if taken or talk.says(_OFF) else ():
        at = _taking(talk, foot) if taken else None
        at = _fronted(talk, foot) if taken and at is None else at
        at = _one_of_them(talk, foot) if taken and at is None else at
        if at is not None and _only_said_then(talk, at):
            at = None
        if at is not None:
            _add(talk, at, "work", "removed", "work: taken off by hand", set(foot.literal))
        elif (
            talk.words[foot.start - 2 : foot.start] == ["shoe", "off"]
            and talk.words[foot.end : foot.end + 2] in _AND_LEFT
        ):
            _add(talk, foot.start - 2, "work", "removed", "work: taken off by hand", set(foot.literal))
        elif talk.words[foot.end - 1] in ("shoe", "shoes") and talk.words[foot.end : foot.end + 3] in _LEFT_OFF:
            _add(talk, foot.end - 1, "work", "removed", "work: taken off by hand", set(foot.literal))


def _only_said_then(talk: Talk, at: int) -> bool:
    """ "I'd said last time I'd pull the fronts": nothing was pulled then, but today, where "so I did" stands behind."""
    segment = talk.segment_at(at)
    times = segment.having("times", "history") if segment is not None else []
    if segment is None or not times or talk.words[at - 1] not in ("'d", "would"):
        return False
    if _HAD_SAID.isdisjoint(talk.words[segment.start : at]):
        return False
    told = (*talk.sentence(segment.sentence), *talk.sentence(segment.sentence + 1))
    if not any(segment.end <= i < told[-1].end for done in (_SO_I_DID, _OFF_IT_CAME) for i, _ in talk.turns(done)):
        return True
    for time in times:
        time.dropped = True
    return False


def draft_off_it_came(talk: Talk) -> None:
    """ "His shoes were worn, so off they came": by hand; not a bandage, nor what came off in the hand."""
    for at, form in talk.turns(_OFF_IT_CAME):
        end = at + len(form)
        segment = talk.segment_at(end - 1)
        if segment is None:
            continue
        first = talk.sentence(segment.sentence - 1) or talk.sentence(segment.sentence)
        before = set(talk.words[first[0].start : at])
        if before & (_SHOES | _TAKING) and _NOT_TAKEN.isdisjoint((*before, *talk.words[at : end + 3])):
            _add(talk, end - 1, "work", "removed", "work: off they came", set(range(at, end)))


def draft_renewed(talk: Talk) -> None:
    """ "I renewed the fronts and reset the hinds", "replaced both hinds": new shoes; not "replaced the front pads"."""
    for foot in talk.having("feet") if talk.says(_RENEWED) else ():
        at = foot.start - 1
        while at > 0 and talk.words[at] in _WHOSE:
            at -= 1
        behind = talk.words[foot.end : foot.end + 1]
        closed = behind == [] or behind[0] in _CLOSING
        shod = any(m.is_any(("work", "shoe_states")) for m in talk.holding(at)) or talk.words[at - 1] in _NOT_BY_ME
        if talk.words[at] in _RENEWED and closed and not shod and foot.get("feet") in (*_LEAVABLE, "all"):
            _add(talk, at, "work", "new_shoe", "work: renewed", set(foot.literal))


def draft_thrown_there(talk: Talk) -> None:
    """ "Left front. He threw it out in the pasture", "she pulled it in the bog": where a horse loses its shoe.

    Not behind a shoe that was taken off or put on: "took the old one off, and he threw it in the field".
    """
    for at in talk.where(_THREW):
        segment, ahead = talk.segment_at(at), talk.words[at - 1]
        who = talk.words[at - 2] if ahead in _HAVE else ahead
        behind = [word for word in talk.words[at + 2 : at + 6] if word not in _OUT_THERE]
        shoe = not _THE_SHOE.isdisjoint(talk.words[at + 1 : at + 2])
        there = shoe and behind[:1] and behind[0] in YARD | _SOFT
        if segment is None or who not in ("he", "she") or not there:
            continue
        told = [d for s in talk.sentence(segment.sentence) if s.index <= segment.index for d in s.drafts]
        by_hand = not _BY_US.isdisjoint(talk.words[talk.sentence(segment.sentence)[0].start : at])
        if not by_hand and not any(d.slot in ("work", "shoe_state") for d in told):
            _add(talk, at, "shoe_state", "lost", "shoe_state: pulled by the horse")


def draft_left_behind(talk: Talk) -> None:
    """ "He left his right front in the creek": the shoe that the horse lost."""
    if not talk.says(_LEFT):
        return
    for foot in [m for m in talk.having("feet") if m.readings["feet"] in _LEAVABLE]:
        at = foot.start - 1
        while at > 0 and talk.words[at] in ("his", "her", "the", "a", "its", "both"):
            at -= 1
        if at < 1 or talk.words[at] != "left" or talk.words[at - 1] in ("i", "we", "have", "'ve"):
            continue
        if foot.readings["feet"] not in FEET and talk.words[at - 1] not in _LEAVING:
            continue  # "and left the fronts in the old steel": the farrier did
        behind = talk.words[foot.end : foot.end + 6]
        while behind and behind[0] in _BEHIND_HIM:
            behind = behind[1:]
        where = talk.mention_starting(foot.end + 2)
        trade = where is not None and where.is_any(CLASS_SLOTS)
        if len(behind) > 1 and behind[0] in _IN_A_PLACE and behind[1] in ("the", "a", "that", "some") and not trade:
            _add(talk, at, "shoe_state", "lost", "shoe_state: left behind", set(foot.literal))


def draft_coming_off(talk: Talk) -> None:
    """ "If he's no better the front shoes come off": taken off by hand, when that is a plan or hangs on one."""
    for at in [i for i in talk.where(_MAY_COME_OFF) if i and talk.words[i + 1 : i + 2] == ["off"]]:
        coming = talk.words[at] not in _SHOES
        segment = talk.segment_at(at)
        near = set(talk.words[max(segment.start, at - 4) : at]) if segment is not None else set()
        if segment is None or not (_SHOES & near or _feet_come(talk, at) if coming else _TO_HAVE & near):
            continue
        if any(m.is_any(("work", "shoe_states")) for m in talk.holding(at)):
            continue
        cues = [m for s in talk.sentence(segment.sentence) for m in s.mentions if m.start < at]
        if any(m.get("plans") in ("condition", "before") for m in cues):
            _add(talk, at, "work", "removed", "work: to be taken off")


def _feet_come(talk: Talk, at: int) -> bool:
    """ "The fronts come off", "the hinds are coming off": their shoes; not "the pads in front come off"."""
    end = at - (talk.words[at - 1] in ("are", "'re", "'ll", "can", "is", "'s"))
    foot = talk.mention_ending(end)
    if foot is None or foot.get("feet") not in _LEAVABLE or talk.words[foot.start] in ("in", "up", "behind"):
        return False
    begin = foot.start
    while begin and talk.words[begin - 1] in ("the", "his", "her", "both", "those"):
        begin -= 1
    return talk.words[begin - 1] not in ("on", "in", "of", "from", "under", "to")


def draft_came_off(talk: Talk) -> None:
    """ "His hind shoes came off at New Year": the shoes of a pair that came off in the past were taken off then.

    "It was his left hind that came off, not the right": the shoe that is found lost.
    """
    for at, _ in talk.turns(_CAME_OFF):
        segment = talk.segment_at(at)
        if segment is not None and (foot := _that_came(talk, at)) is not None:
            _add(talk, at, "shoe_state", "lost", "shoe_state: came off", set(foot.literal))
        if (
            segment is None
            or talk.words[at] == "come"
            or not {"shoes", "plates"} & set(talk.words[max(segment.start, at - 4) : at])
        ):
            continue
        if segment.having("times", "history") and not any(d.slot in ("work", "shoe_state") for d in segment.drafts):
            _add(talk, at, "work", "removed", "work: taken off")


def _that_came(talk: Talk, at: int) -> Mention | None:
    """ "It was the near fore that came off", "it's his hinds that have come off": the feet put first."""
    that = at - 1 - (talk.words[at - 1] in _HAS_DONE | _HAVE)
    foot = talk.mention_ending(that)
    if talk.words[that] not in ("that", "which") or foot is None or foot.get("feet") not in _LEAVABLE:
        return None
    begin = foot.start - (talk.words[foot.start - 1] in _ITS)
    put_first = talk.words[begin - 2] in ("it", "that") and talk.words[begin - 1] in ("was", "'s", "is")
    return foot if put_first and (talk.words[at] == "came" or that < at - 1) else None


def _taking(talk: Talk, foot: Mention) -> int | None:
    """The token of the verb that takes off the shoes of this foot, when the farrier is its subject."""
    if _TAKING.isdisjoint(talk.words[max(0, foot.start - _HALTING) : foot.start]):
        return None
    before = [i for i in range(foot.start - 1, max(-1, foot.start - _HALTING), -1) if talk.words[i] not in _HALTS]
    before = before[:_PULLED]
    at = next((i for i in before if talk.words[i] in _TAKING), None)
    if at is None or any(m.is_any(("work", "shoe_states")) for m in talk.holding(at)):
        return None
    verb, subject = talk.words[at], talk.words[at - 1] if at else "."
    off = ["off"] in (talk.words[foot.end : foot.end + 1], talk.words[at + 1 : at + 2])
    if verb in ("took", "take", "taken", "whipped") and not off:
        return None
    if verb in ("drew", "draw") and foot.get("feet") not in _PAIRS and talk.words[foot.end - 1] not in _SHOES:
        return None  # "I drew the near fore forward"
    if verb == "taken" and talk.words[at - 2 : at] not in _I_HAVE:
        return None
    if verb not in _DONE and subject not in _BY_HAND:
        return None
    name = talk.mention_ending(at)
    by_horse = verb in _DONE and subject in ("he", "she", "'d", "has", "had")
    by_horse = by_horse or (subject == "and" and _by_the_horse(talk, at))
    if by_horse or (name is not None and name.get("horse") is not None):
        return None
    return at if set(talk.words[at + 1 : foot.start]) <= _WHOSE | _HALTS else None


def _one_of_them(talk: Talk, foot: Mention) -> int | None:
    """ "Hinds, pulled one, the left", "took one hind off, the near": the verb, by hand, and which it was."""
    comma = foot.start - 1 - (talk.words[foot.start - 1] == "the")
    at = max((i for i in range(max(1, comma - _HALTING), comma) if talk.words[i] in _DONE), default=0)
    told = talk.words[at + 1 : comma]
    if not at or talk.words[comma] != "," or told[:1] != ["one"] or not _ONE_OF.issuperset(told):
        return None
    name, off = talk.mention_ending(at), talk.words[at] in ("pulled", "stripped", "removed") or "off" in told
    by_horse = talk.words[at - 1] in _THE_HORSE or (name is not None and name.get("horse") is not None)
    return at if off and not by_horse and not any(m.is_any(("work", "shoe_states")) for m in talk.holding(at)) else None


def _fronted(talk: Talk, foot: Mention) -> int | None:
    """ "Fronts I took off and left off", "the hinds we pulled": the verb, the feet before it, nothing behind."""
    if talk.words[foot.end : foot.end + 1] not in (["i"], ["we"]):
        return None
    at = foot.end + 1
    at += not _HAVE.isdisjoint(talk.words[at : at + 1])
    if at >= len(talk.words):
        return None
    off = talk.words[at + 1 : at + 2] == ["off"]
    done = talk.words[at] in _DONE and (off or talk.words[at] in ("pulled", "stripped", "removed"))
    closed = talk.words[at + 1 + off : at + 2 + off] in _NO_MORE
    return at if done and closed and not any(m.get("work") for m in talk.holding(at)) else None


def _by_the_horse(talk: Talk, at: int) -> bool:
    """ "She overreached and pulled the off fore": the last subject of the sentence is the horse."""
    subjects = []
    for index in range(at - 1, -1, -1):
        if talk.words[index] in SENTENCE_ENDS:
            break
        name = talk.mention_starting(index)
        if talk.words[index] in _SUBJECTS or (name is not None and name.get("horse") is not None):
            subjects.append(talk.words[index])
    return bool(subjects) and subjects[0] not in ("i", "we")


def _add(talk: Talk, at: int, slot: str, value: str, rule: str, evidence: set[int] | None = None) -> None:
    segment = talk.segment_at(at)
    if segment is None or "nail" in talk.words[segment.start : segment.end]:
        return
    draft = Draft(slot, value, segment, at, at + 1)
    draft.evidence.update({at}, evidence or ())
    draft.note(rule)
    segment.drafts.append(draft)
