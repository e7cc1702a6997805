"""How far a condition reaches: "if he's still sore we'll go to a full pad" ends at "we", and the rest hangs on it."""

from __future__ import annotations

from pipeline.reading.brought_in import PEOPLE
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.scopes import ALWAYS_PLANNED, PLANNABLE, turns_to_today
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.to_be_then import GETTING, when_ready

ANY_SIGN = Sayings(
    "any", "the least", "the slightest", "the first sign", "slightest", "one sign", "a sign", "a hint of",
)  # fmt: skip
_WHOSE = (["the"], ["her"], ["his"], ["their"], ["that"], ["this"])
_CLOSING = frozenset({"if", "once", "when", "as", "assuming", "provided", "subject", "depending", "unless"})
_COUNTED = frozenset({"shoe_size", "nail_size", "nails", "wedge"})
_BARE = frozenset({"he", "she", "gets", "goes", "any"})
_TO_GET = frozenset({"gets", "get", "goes", "go", "comes", "come"})
_AGREE = frozenset({"agrees", "agree", "agreed", "okays", "approves", "allows", "recommends", "advises", "prefers"})
_HAD_FIRST = frozenset({"had", "been", "got", "done", "finished", "learnt", "learned"})
_WHEN, _NOT_DUE = frozenset({"when", "once"}), frozenset({"if", "unless", "whether", "work", "training"})
_IS = frozenset({"'s", "is", "comes", "gets"})
_COMING = frozenset({"due", "back", "again"})
_WANTS = frozenset({"wants", "needs"})
_BACK = frozenset({"back", "next"})  # "when I'm back he gets leather pads"
_THAT_IS_WHEN = ["that", "'s", "when"]


def mark_named(talk: Talk) -> None:
    """ "When Tally's sound, new shoes": a condition, as "when he's sound" is; not "when Tally's done"."""
    for name in talk.having("horse") if talk.says(_WHEN) else ():
        behind = talk.words[name.end : name.end + 2]
        led = name.start > 0 and talk.words[name.start - 1] in _WHEN
        if led and not _IS.isdisjoint(behind[:1]) and _HAD_FIRST.isdisjoint(behind):
            at = name.start - 1
            talk.mentions.append(Mention(at, at + 1, (at,), {"plans": "condition"}))
    talk.in_order()


def _main_behind(talk: Talk, segment: Segment, cue: Mention, end: int) -> int:
    """ "Once it dries up she gets a new shoe": the main clause opens with the next subject or foot."""
    feet = [m.start for m in segment.mentions if m.start > cue.end + 1 and m.get("feet")]
    own = (
        cue.end + (talk.words[cue.end - 1] not in _BACK) + (talk.words[cue.end : cue.end + 1] in _WHOSE)
    )  # "if the owner agrees": the condition's subject
    subjects = [i for i in talk.plays("subject", own, segment.end) if talk.words[i] not in ("that", "there")]
    shoes = [i for i in range(cue.end + 1, segment.end) if talk.words[i : i + 2] in (["the", "shoe"], ["the", "shoes"])]
    return min([*feet, *subjects, *shoes], default=end)


def _gets(talk: Talk, segment: Segment, cue: Mention) -> int:
    """ "If she stays tender she gets new shoes in front, plain steel": a subject behind, or a foot, gets something."""
    feet = [m.end - 1 for m in segment.having("feet") if m.start > cue.end + 1]
    last = [*talk.plays("subject", cue.end + 1, segment.end), *feet]
    getting = [i for i in last if talk.words[i + 1 : i + 2] and talk.words[i + 1] in GETTING]
    return min(getting, default=segment.end + 1)


def conditions_in(talk: Talk, sentence: Sentence, end: int) -> list[tuple[int, int]]:
    """The conditions of a sentence, where it has words that may open one; not "in five weeks, when he gets bars"."""
    any_sign = talk.tells(ANY_SIGN) and bool(ANY_SIGN.at(talk.words, sentence[0].start))
    if not any_sign and "plans" not in sentence.classes and sentence.lacks(_WHEN):
        return []
    return [c for c in conditions_of(talk, sentence, end) if not when_due(talk, c[0])]


def conditions_of(talk: Talk, sentence: list[Segment], end: int) -> list[tuple[int, int]]:
    """Token ranges of "if …" up to where the main clause starts."""
    ranges = [*_any_sign(talk, sentence), *when_ready(talk, sentence)]
    ends = {end, *(s.end for s in sentence)}
    for segment in sentence:
        for cue in segment.having("plans", "condition"):
            if segment.past and talk.words[cue.start] not in ("if", "unless", "should") and not _first_had(talk, cue):
                continue  # "had him sedated by the time I pulled in"
            if cue.dropped or any(m.end == cue.start for m in segment.having("plans", "condition")):
                continue  # "if he's off in the morning": one condition
            mains = [m.start for s in sentence for m in s.mentions if m.start >= cue.end and _opens_main(m, ends)]
            nexts = [
                s.start
                for s in sentence
                if s.start >= cue.end and s.index > segment.index and s.delimiter in (",", "then", ", then")
            ]
            stop = min(mains, default=end)
            if mains and nexts and nexts[0] < stop and _bids(talk, sentence, nexts[0]):
                stop = nexts[0]
            elif not mains and nexts:
                stop = min(nexts[0], _gets(talk, segment, cue))
            elif not mains:
                stop = _main_behind(talk, segment, cue, end)
            if talk.words[cue.start] in _BARE:
                # "he's off in the morning, that shoe comes off", "if he gets worse it's going in a bar"
                led = segment.having("plans", "condition")[0] is not cue
                subjects = talk.plays("subject", cue.end, segment.end) if led else ()
                stop = min([*subjects, *(at for at in mains if at < segment.end)], default=segment.end)
            stop = min(stop, _otherwise(talk, sentence, cue), _agreed(talk, segment, cue))
            ranges.append((cue.start, _it_is_what(talk, sentence, stop)))
    return ranges


def _first_had(talk: Talk, cue: Mention) -> bool:
    """ "The hinds get their new ones when he's had some schooling", "once he's been sedated": what is to come first."""
    at = cue.end - (talk.words[cue.end - 1] == "'s")
    perfect = talk.words[at : at + 1] in (["'s"], ["has"]) and not _HAD_FIRST.isdisjoint(talk.words[at + 1 : at + 2])
    segment = talk.segment_at(cue.start) if perfect else None
    return segment is not None and not _TO_GET.isdisjoint(talk.words[segment.start : segment.end])


def _it_is_what(talk: Talk, sentence: list[Segment], stop: int) -> int:
    """ "If it does it's antiseptic it'll get": what he will get stands before the main clause that it belongs to."""
    got = next((d for s in sentence for d in s.drafts if d.end == stop and d.slot in PLANNABLE), None)
    if got is None:
        return stop
    at = got.start - (talk.words[got.start - 1] in ("a", "an", "the", "new"))
    return at - 2 if talk.words[at - 2 : at] in (["it", "'s"], ["it", "is"]) else stop


def _otherwise(talk: Talk, sentence: list[Segment], cue: Mention) -> int:
    """ "Ring me if she goes off, but otherwise six weeks": what comes when the condition does not, or today."""
    later = [s for s in sentence if s.start >= cue.end]
    starts = [s.start for s in later if talk.words[s.start] == "otherwise"]
    starts += [s.start for s in later if s.joined_by("but", ", but") and turns_to_today(talk, s)]
    return min(starts, default=sentence[-1].end)


def _agreed(talk: Talk, segment: Segment, cue: Mention) -> int:
    """ "If the vet agrees heart bars": what is agreed to is what will be put on."""
    things = [d for d in segment.drafts if d.start > cue.end and d.slot in PLANNABLE - ALWAYS_PLANNED]
    said = [d.start for d in things if not _AGREE.isdisjoint(talk.words[max(cue.end, d.start - 3) : d.start])]
    return min(said, default=len(talk.words))


def _any_sign(talk: Talk, sentence: list[Segment]) -> list[tuple[int, int]]:
    """ "Any sign of heat in it and the vet's to see her": a condition that no "if" opens."""
    first = sentence[0]
    second = next((s for s in sentence[1:] if s.joined_by("and", ", and")), None)
    if (
        second is None
        or not ANY_SIGN.at(talk.words, first.start)
        or any(s.own_clause for s in sentence[1 : second.index - first.index])
    ):
        return []
    found = any(d.slot in ("finding", "gait", "lameness", "pulse", "shoe_state") for d in first.drafts)
    main = any(d.slot == "vet" for d in second.drafts) or any(
        _opens_main(m, {sentence[-1].end}) for m in second.mentions
    )
    return [(first.start, second.start)] if found and main else []


def _opens_main(mention: Mention, ends: set[int]) -> bool:
    """Not the "next time" that closes its clause: "if he's sound, new shoes in front next time, reset for now"."""
    plan = mention.get("plans")
    return plan == "main" or (plan == "before" and mention.end not in ends) or mention.get("vet") is not None


def _bids(talk: Talk, sentence: list[Segment], at: int) -> bool:
    """ "If it gets worse, poultice it and ring the vet": what they are to do opens the main clause."""
    told = next((d for s in sentence if s.start == at for d in s.drafts if d.start == at), None)
    return told is not None and told.slot in ("treatment", "work") and not talk.words[at].endswith(("ed", "ing"))


def closed_by(talk: Talk, sentence: list[Segment], position: int, conditions: list[tuple[int, int]]) -> bool:
    """ "Leather pads on the fronts, if the owner agrees.": what is put on hangs on a condition that closes all.

    So does a list of nothing else: "egg bars, size two, when we can find some".
    """
    closing = [s for s in sentence if (s.start, sentence[-1].end) in conditions and s.joined_by(",")]
    at = sentence.index(closing[0]) if closing and talk.words[closing[0].start] in _CLOSING else 0
    apart = position + 1 == at and _COUNTED.isdisjoint(d.slot for d in sentence[position].drafts)
    listed = sentence[position if apart else 0 : at]
    named = any(d.slot not in _COUNTED for s in listed for d in s.drafts)  # not "two in front, if I'm not wrong"
    return position < at and named and all(_to_put_on(s) for s in listed)


def _to_put_on(segment: Segment) -> bool:
    if segment.past or segment.present or segment.having("times", "today"):
        return False
    return all(d.slot in PLANNABLE - ALWAYS_PLANNED - {"work"} for d in segment.drafts)


def when_due(talk: Talk, at: int) -> bool:
    """ "Due in five weeks, when the near hind goes back into a plain shoe": a time to come, no condition.

    So is "I'm back in ten days, that's when the bars go on".
    """
    at += 2 * (talk.words[at : at + 3] == _THAT_IS_WHEN)
    led = at - 2 * (talk.words[max(0, at - 2) : at + 1] == _THAT_IS_WHEN)
    segment = talk.segment_at(at) if talk.words[at] == "when" else None
    if segment is None or segment.past or GETTING.isdisjoint(talk.words[at : segment.end]):
        return False
    near = talk.segments[max(0, segment.index - 1) : segment.index + 1]
    return any(d.slot == "next_visit_weeks" and d.end in (led, led - 1) for s in near for d in s.drafts)


def due_then(talk: Talk, draft: Draft) -> bool:
    """ "When he's due in three weeks he'll get rolled toes": when he comes, not whether."""
    led = talk.words[draft.segment.start : draft.start]
    due = led[-1:] == ["in"] and bool(_COMING & set(led)) and not _NOT_DUE & set(led)
    return draft.slot == "next_visit_weeks" and due and bool(_WHEN & set(led))


def keeps_off(talk: Talk, cue: Mention) -> bool:
    """ "Full pads so the snow won't ball up, silicone under them": what the pads are for is no plan.

    Nor is "it'll stay off till it's drained": what stays off is off.
    """
    if talk.words[cue.end : cue.end + 2] == ["stay", "off"] or _wants_no_more(talk, cue):
        return True
    led = talk.words[cue.start - 4 : cue.start]
    return talk.words[cue.start] == "wo" and "so" in led[1:] and led[led.index("so") - 1] not in (",", ".")


def _wants_no_more(talk: Talk, cue: Mention) -> bool:
    """ "Wants nothing but a trim", "he just wants a trim": that is what was done; not "owner wants nothing but …"."""
    led = cue.start - (talk.words[cue.start - 1] in ("just", "only"))
    behind = talk.words[cue.end : cue.end + 5]
    alone = led < cue.start or behind[:1] == ["nothing"]
    trim = any(behind[i : i + 2] == ["a", "trim"] for i in (0, 2, 3)) and "to" not in behind
    return talk.words[cue.start] in _WANTS and alone and trim and talk.words[led - 1] not in PEOPLE
