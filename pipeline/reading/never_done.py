"""What was nearly done, or would have been: "I nearly pulled her shoes", "I'd have soaked it but had no water"."""

from __future__ import annotations

from pipeline.reading.cleft import put_on_behind
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.record import Status

_NEARLY = Sayings(
    "nearly", "almost", "i about", "i just about", "i all but", "we about", "came near", "came close to",
    "came within an inch of", "this close to", "very close to", "half a mind to", "a good mind to", "'d a mind to",
    "had a mind to", "in two minds about", "two minds whether to", "on the point of", "within an ace of",
    "was minded to",
)  # fmt: skip
_WOULD_HAVE = Sayings(
    "'d have", "would have", "would 've", "'d 've", "could have", "could 've", "would of",
)  # fmt: skip
_MEANT = Sayings(
    "meant to", "forgot to", "wanted to", "hoped to", "time to", "intended to", "forgot about", "mind about", "mind on",
    "refused", "declined", "turned down",
)  # fmt: skip
_BEGINS = _NEARLY.first_words | _WOULD_HAVE.first_words | _MEANT.first_words
_DONE = frozenset(
    {"pulled", "took", "taken", "put", "reset", "trimmed", "shod", "nailed", "glued", "fitted", "wedged", "packed"}
    | {
        "poulticed", "soaked", "drained", "opened", "used", "gone", "went", "given", "gave", "done", "liked",
        "preferred",
    }
    | {"disinfected", "treated", "switched", "swapped", "changed", "bandaged", "wrapped", "painted", "resected", "cut"}
    | {"drilled", "clipped"}
    | {
        "studded", "left", "lost", "cast", "threw", "quicked", "pricked", "stuck", "tried", "added", "set", "made",
        "drew", "drawn", "had",
    }
)  # fmt: skip
_DOING = frozenset(
    {"pull", "pulling", "take", "taking", "put", "putting", "reset", "resetting", "trim", "trimming", "leave"}
    | {"leaving", "shoe", "shoeing", "nail", "nailing", "fit", "fitting", "wedge", "wedging", "pack", "packing"}
    | {"poultice", "poulticing", "soak", "soaking", "drain", "draining", "open", "opening", "use", "using", "go"}
    | {"going", "switch", "switching", "try", "trying", "add", "adding", "set", "setting", "glue", "gluing"}
    | {"quick", "quicking", "prick", "pricking", "lose", "losing", "give", "giving", "swap", "swapping", "change"}
)
_DOING |= {"get", "do", "paint", "drill", "wrap", "dress", "treat", "cut", "clip", "stud", "pad", "shim", "tap"}
_OF_THE_TRADE = ("treatments", "packings", "pads", "work", "shoe_types", "clips", "traction")
_TO_NAIL, _BROUGHT_OFF = frozenset({"nail", "tack"}), frozenset({"managed", "able", "had"})
_SAYING = frozenset({"say", "mention", "tell", "note"})
_ARTICLE = 2  # tokens to what was meant, an article among them
_WORN, _FIRST = frozenset({"worn"}), frozenset({"first", "only"})
_TURNS = frozenset({"only", "except", "but", "if", "had", "save", "ended", "finished", "settled"})
_ADVERBS = frozenset({"just", "only", "gladly", "rather", "probably", "maybe", "even", "very"})


def drop_never_done(talk: Talk, sentence: Sentence) -> None:
    """Drop from the sentence what was only nearly done or would have been done."""
    _first_worn(talk, sentence)
    for draft in [d for s in sentence for d in s.drafts] if sentence.says(_TO_NAIL) else ():
        done = talk.words[draft.start - 2] in _BROUGHT_OFF or put_on_behind(talk, sentence, draft.start)
        done = done or talk.words[draft.start - 1] != "to"  # "left hind, tack it back on"
        if draft.slot == "work" and talk.words[draft.start] in _TO_NAIL and draft.status is Status.PRESENT and not done:
            draft.drop("never done")  # "he wouldn't stand to nail it back on"
    if sentence.lacks(_BEGINS) or not talk.tells(_NEARLY, _WOULD_HAVE, _MEANT):
        return
    for position, segment in enumerate(sentence):
        for at in [i for i in range(segment.start, segment.end) if talk.words[i] in _BEGINS]:
            verb = _nearly(talk, at) or _would_have(talk, at) or _meant(talk, at)
            if verb and not put_on_behind(talk, sentence, at):
                for draft in _from_there(talk, sentence, position, verb):
                    draft.drop("never done")


def _first_worn(talk: Talk, sentence: Sentence) -> None:
    """ "Frog support pads, the first she's worn": how new they are to her, not how worn."""
    for segment in () if sentence.lacks(_WORN) or sentence.lacks(_FIRST) else sentence:
        for draft in [d for d in segment.drafts if d.value == "worn"]:
            before = talk.words[segment.start : draft.start]
            by_her = before[-2:-1] in (["he"], ["she"]) or before[-3:-2] in (["he"], ["she"])
            if by_her and not _FIRST.isdisjoint(before):
                draft.drop("never worn before")


def _nearly(talk: Talk, at: int) -> int:
    """The token of the verb behind "nearly" and its like; 0 when there is none."""
    form = _NEARLY.at(talk.words, at)
    if not form:
        return 0
    verb = at + len(form)
    doing = len(form) > 1 and form[0] not in ("i", "we")
    return verb if verb < len(talk.words) and talk.words[verb] in (_DOING if doing else _DONE) else 0


def _would_have(talk: Talk, at: int) -> int:
    """The token of the verb behind "I'd have" and its like; 0 when there is none."""
    form = _WOULD_HAVE.at(talk.words, at)
    if not form:
        return 0
    verb = at + len(form)
    while verb < len(talk.words) and talk.words[verb] in _ADVERBS:
        verb += 1
    stood = talk.words[verb : verb + 1] == ["been"] and form[0] != "could"
    return verb if verb < len(talk.words) and (stood or talk.words[verb] in _DONE) else 0


def _meant(talk: Talk, at: int) -> int:
    """The token of what was meant, forgotten or refused: "forgot to soak it", "ran out of time to", "refused a pad"."""
    form = _MEANT.at(talk.words, at)
    led, verb = talk.words[at - 1 : at], at + len(form)
    if not form or verb >= len(talk.words) or (form[0] == "time" and led != ["of"]) or led in (["n't"], ["not"]):
        return 0
    if (form[0] == "mind" and talk.words[at - 2 : at - 1] != ["changed"]) or led == ["never"]:
        return 0
    if talk.words[verb] in _SAYING or talk.words[verb : verb + 2] in (["add", "on"], ["add", "for"], ["add", "about"]):
        return 0  # "forgot to add on Buck, egg bars"
    named = any(m.is_any(_OF_THE_TRADE) for m in talk.starting_in(verb, verb + _ARTICLE))
    return verb if named or (form[-1] == "to" and talk.words[verb] in _DOING) else 0


def _from_there(talk: Talk, sentence: list[Segment], position: int, verb: int) -> list[Draft]:
    """What hangs on the verb: to the end of its segment, and on over "and" while no new subject comes."""
    reached: list[Draft] = []
    for segment in sentence[position:]:
        later = segment is not sentence[position]
        subject = bool(talk.plays("subject", segment.start, segment.start + 3))
        if later and (subject or not segment.joined_by(",", "and", ", and") or _TURNS & {talk.words[segment.start]}):
            break
        if later and talk.words[verb - 1] == "to" and segment.past:
            break  # "meant to poultice it, and bandaged it"
        if later and segment.own_clause and not segment.joined_by("and"):
            break
        turn = next(
            (i for i in range(max(verb + 1, segment.start), segment.end) if talk.words[i] in _TURNS), segment.end
        )
        reached += [d for d in segment.drafts if verb <= d.start < turn and _hangs_on(talk, d, verb)]
        if turn < segment.end:
            break
    return reached


def _hangs_on(talk: Talk, draft: Draft, verb: int) -> bool:
    if talk.words[verb] == "been":
        return draft.slot in ("gait", "lameness")
    own = draft.start <= verb < draft.end
    return (draft.slot in PLANNABLE - ALWAYS_PLANNED) or (draft.slot in ("finding", "shoe_state") and own)
