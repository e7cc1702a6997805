"""What was only looked for or asked aloud: "I checked for a puncture", "was it a close nail, no, it wasn't"."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from pipeline.reading.foot_groups import Groups
from pipeline.reading.mentions import Mention
from pipeline.reading.scopes import reached
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import Severity, Status

SOUGHT = "only looked for"
_ASKABLE = frozenset({"finding", "gait"})
_LEADING = frozenset({"now", "well", "and", "but", "ok", "okay"})
_ASKING = frozenset({"was", "is", "were", "are", "did", "does", "has", "have", "had", "could"})
_MAY_ASK = _ASKING | {"none"}
_ASKED_OF = (["it"], ["that"], ["this"], ["there"], ["he"], ["she"], ["they"])
_WHOM = (["me"], ["us"], ["her"], ["him"])
_IF, _WAS = (["if"], ["whether"]), (["was"], ["is"], ["'s"], ["were"], ["had"], ["has"])
_ELLIPTIC = frozenset({"nor", "neither", "so", "as", "than"})
_SPOKE_OF = frozenset(
    {"asked", "asking", "wondered", "wondering", "worried", "thought", "reckoned", "feared", "thinking"}
    | {"swore", "insisted"}
)
_ASKED = frozenset({"asked", "asking", "asks", "wondered", "wondering"})
_WONDERED, _MUSING = frozenset({"wondered", "wondering"}), frozenset({"half", "just", "only", "was", "were"})
_SURE = frozenset({"thought", "reckoned", "feared", "swore", "insisted"})
_SPOKE_OF_WHAT = frozenset(
    {(word, "about") for word in _SPOKE_OF}
    | {("me", "about"), ("us", "about")}
    | {(word, who) for word in _SURE for who in ("he", "she", "it", "there", "they")}
    | {("on", "about")}
)
_SPEAKING = _ASKED | frozenset({first for first, _ in _SPOKE_OF_WHAT} | {"mentioned", "suspected"})
_CALLED = frozenset({"now", "well", "and", "as", "for", "then", "um", "uh", "er", "any", "the", "right", "so", "ok"})
_THINKING = 2  # segments of thinking aloud between a finding and its denial
_OR_WAS = (["or", "was"], ["or", "is"], ["or", "were"], ["or", "did"])
_LOOKING = frozenset(
    {"felt", "looked", "checked", "pared", "look", "searched", "hunted", "dug", "squeezed", "feel", "check", "explored"}
)
_NOT_FOUND = frozenset({"nothing", "none", "no", "nope", "not", "n't", "nil", "clean", "clear"})
_YES = (
    ["there", "is"], ["there", "was"], ["there", "are"], ["it", "is"], ["it", "was"], ["yes"], ["yeah"], ["yep"],
    ["aye"], ["he", "has"], ["she", "has"], ["he", "had"], ["she", "had"], ["he", "does"], ["she", "does"],
    ["he", "is"], ["she", "is"], ["he", "was"], ["she", "was"], ["they", "are"], ["they", "were"],
    ["yes", "there", "is"], ["aye", "there", "is"], ["there", "it", "was"], ["there", "it", "is"],
    ["there", "they", "were"], ["and", "there", "it", "was"], ["sure", "enough"], ["found", "it"], ["got", "it"],
    ["i", "was", "right"], ["i", "did"], ["it", "did"], ["it", "does"], ["it", "has"],
)  # fmt: skip
_FITTED = frozenset({"traction", "pad", "clips", "packing"})
_NO = frozenset({"no", "nope", "none", "nah", "never", "nil"})
_NOT_ON = frozenset({
    ("not", "today"), ("not", "this"), ("not", "yet"), ("no", "need"), ("no", "thanks"), ("says", "no"),
})  # fmt: skip
_NONE_OF_THEM = ([",", "no"], [",", "none"], [",", "not"], [",", "nothing"])
_NONE = frozenset({"neither", "none", "no", "nope", "nowhere", "not", "n't", "never", "nor", "nil", "nothing"})
_SAYS = frozenset({"says", "said", "say", "reckons", "tells", "reckoned"})
_ANSWER = frozenset({
    "only", "just", "in", "on", "the", "a", "an", "of", "it", "there", "'s", "is", "was", "and", "well", "uh", "um",
    "er", "yes", "yeah", "yep", "aye", "ah", "oh", "bit", "one", "both", "at", "his", "her", "though", "down", ",",
    "but", "round", "around", "along", "inside", "up", "as", "day",
})  # fmt: skip


def mark_sought(talk: Talk, groups: Groups) -> None:
    """ "I checked for a puncture": what was only looked for is no fact, though a later "there wasn't one" denies it."""
    sought = talk.having("doubts", "sought")
    _drop_called_to_mind(talk)
    for sentence in talk.sentences():
        asked = talk.words[sentence[-1].end : sentence[-1].end + 1] == ["?"]
        asking, speaking = not sentence.lacks(_MAY_ASK), not sentence.lacks(_SPEAKING)
        if asked:
            _drop_fittings_answered_no(talk, sentence)
        for position, segment in enumerate(sentence if asked or asking or speaking or sought else ()):
            if asked or (asking and _asks(talk, segment)):
                put = {"say"} & set(talk.words[segment.start : segment.end])
                led = segment.start if asked or put else segment.start + 1  # "right hind, has it" asks nothing
                for draft in [d for d in segment.drafts if d.slot in _ASKABLE and d.start >= led]:
                    if not (_affirmed(talk, draft, groups) or _or_was_it(talk, draft, sentence[-1].end)):
                        draft.drop(SOUGHT)
                        if asked:
                            _answer(talk, draft, sentence, groups)
            for draft in _asked_by_others(talk, segment) if speaking else ():
                if not _affirmed(talk, draft, groups):
                    draft.drop(SOUGHT)
            if speaking and brought_up(talk, segment):
                looked = _looked_into(talk, sentence[position:])
                for draft in [d for d in segment.drafts if d.slot == "finding"]:
                    if looked or _said_not_to_be(draft, sentence[position + 1 :]):
                        draft.drop(SOUGHT)
            for cue in segment.having("doubts", "sought") if sought else ():
                for draft in reached(talk, sentence, position, cue):
                    then = _said_of_then(talk, segment, cue)
                    if draft.slot == "finding" and not then and not _affirmed(talk, draft, groups):
                        draft.drop(SOUGHT)


def _drop_fittings_answered_no(talk: Talk, sentence: Sentence) -> None:
    """ "Studs? No, no studs in any of the four", "pads? None.": not on; "toe clips? No, side clips" is left alone."""
    words = talk.words[sentence[-1].end + 1 : sentence[-1].end + 4]
    told_no = words[:1] and words[0] in _NO and (words[1:2] in ([], ["."]) or words[1:] in _NONE_OF_THEM)
    not_on = tuple(words[:2]) in _NOT_ON or tuple(words[1:3]) in _NOT_ON
    for draft in [d for d in sentence[-1].drafts if d.slot in _FITTED] if told_no or not_on else ():
        if talk.words_beside(draft.segment, range(draft.start, draft.end)) <= _CALLED:
            if not_on:
                draft.status = Status.ABSENT  # "studs? Not this time"
            else:
                draft.drop(SOUGHT)


def _said_of_then(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """ "Owner says he had thrush in January": told as so, of an earlier time."""
    told = talk.words[cue.end - 1] in _SAYS and segment.past
    return told and any(m.get("times") in ("history", "recent") for m in segment.having("times"))


def _answer(talk: Talk, asked: Draft, sentence: Sentence, groups: Groups) -> None:
    """ "Any thrush? A touch, off hind.", "Corn? Off fore, inside heel.": there, on the feet that the answer names."""
    answer = talk.sentence(sentence[0].sentence + 1)
    footed = bool(asked.feet) and not asked.foot_carried
    told: list[Draft] = []
    graded: list[Segment] = []
    for segment in answer:
        feet = [g.feet for g in groups.get(segment.index, []) if not g.anaphor]
        if not _only_where(talk, segment):
            again = all(d.slot == "treatment" or d.value == asked.value for d in segment.drafts) and segment.drafts
            if not (again or (told and feet and not _NONE.isdisjoint(talk.words[segment.start : segment.end]))):
                return  # "Is there thrush? Both hinds trimmed.", "Near fore, no."
            break
        if feet and footed:
            return
        graded.append(segment)
        if feet:
            made = replace(
                asked, segment=segment, start=segment.start, end=segment.end, feet=feet[0], dropped=False,
                foot_carried=False, zone=None, severity=None, rules=["foot: named in the answer"],
                evidence=set(range(segment.start, segment.end)),
            )  # fmt: skip
            told.append(made)
        for of in graded if told else ():
            _graded_in(of, told[-1])
        graded = [] if told else graded
    if not told and any(s.having("severities") for s in graded):  # "Any heat in the near fore? A little."
        asked.dropped = False
        asked.rules.remove(SOUGHT)
        for of in graded:
            _graded_in(of, asked)
    for made in told:
        made.segment.draft(made)


def _graded_in(segment: Segment, made: Draft) -> None:
    """The degree and the place that the answer tells."""
    for mention in segment.having("severities")[:1]:
        made.severity = Severity(mention.readings["severities"])
    for mention in segment.having("zones")[:1]:
        made.zone = mention.readings["zones"]
    made.evidence.update(range(segment.start, segment.end))


def _only_where(talk: Talk, segment: Segment) -> bool:
    """Whether a segment tells nothing but feet, places, degrees and whose they are."""
    if segment.drafts or not _NONE.isdisjoint(talk.words[segment.start : segment.end]):
        return False
    if segment.having("denials") or segment.having("doubts") or segment.having("taking_back"):
        return False
    held = {
        i for m in segment.mentions if m.is_any(("feet", "zones", "severities", "horse")) for i in range(m.start, m.end)
    }
    return all(i in held or talk.words[i] in _ANSWER for i in range(segment.start, segment.end))


def _or_was_it(talk: Talk, draft: Draft, end: int) -> bool:
    """ "Corn in the near fore, or was it the off?": asked is only where, or how bad."""
    behind = talk.words[draft.end : end]
    turned = next((draft.end + i for i in range(len(behind) - 1) if behind[i : i + 2] in _OR_WAS), end)
    told = [m for m in talk.starting_in(turned, end) if not m.dropped]
    narrowed = any(m.is_any(("zones", "feet", "severities")) for m in told) and not any(m.get("findings") for m in told)
    return narrowed and draft.segment.joined_by("start") and not _asks(talk, draft.segment)


def _drop_called_to_mind(talk: Talk) -> None:
    """ "Thrush, let's see, no thrush in any of the four": the finding to be told of next, and then denied."""
    for segment in talk.segments if talk.having("denials") else ():
        found = segment.drafts[0] if len(segment.drafts) == 1 and segment.joined_by("start", ",") else None
        if found is None or found.slot != "finding" or not _named_alone(talk, found):
            continue
        behind = talk.segments[segment.index + 1 : segment.index + 2 + _THINKING]
        answer = next((s for s in behind if s.drafts), None)
        if answer is None or answer.horse != segment.horse:
            continue
        if _headed_by(talk, found, answer):
            found.drop(SOUGHT)
        denied = [d for d in answer.drafts if d.slot == "finding" and d.value == found.value]
        led = any(m.end == denied[0].start for m in answer.having("denials")) if denied else False
        if not (led or answer.having("denials", "before")):
            continue  # "sidebone, they asked me, and I don't see any sidebone in front"
        paused = answer.index > segment.index + 1 or talk.words[segment.end : segment.end + 1] == [","]
        if denied and ((paused and segment.joined_by("start")) or set(found.feet or ()) <= set(denied[0].feet or ())):
            found.drop(SOUGHT)


def _headed_by(talk: Talk, heading: Draft, told: Segment) -> bool:
    """ "Cracks, well, there's a toe crack in the near hind": several of a kind, told one by one behind."""
    first = told.drafts[0]
    plural = talk.words[heading.end - 1].endswith("s") and heading.segment.joined_by("start")
    same = first.value == heading.value and told.sentence - heading.segment.sentence <= 1 and not first.foot_carried
    return plural and same and not told.joined_by("and", ", and") and not talk.words[first.end - 1].endswith("s")


def _named_alone(talk: Talk, found: Draft) -> bool:
    """Whether a finding stands in its segment with no foot, place or degree, only with little words before it."""
    segment = found.segment
    words = talk.words_beside(segment, range(found.start, found.end))
    return words <= _CALLED and (not found.feet or found.foot_carried)


def brought_up(talk: Talk, segment: Segment) -> bool:
    """ "Somebody asked about sidebone", "she thought he'd a corn": what others spoke of."""
    words = talk.words[segment.start : segment.end]
    if _SPEAKING.isdisjoint(words):
        return False
    if "i" in words and "i" in words[: next((i for i, word in enumerate(words) if word in _SPOKE_OF), 0)]:
        return False
    told = any(pair in _SPOKE_OF_WHAT for pair in pairwise(words)) or bool({"mentioned", "suspected"} & set(words))
    return told or any(talk.words[m.start - 1] in _SURE for m in segment.having("horse"))  # "they swore Tansy had …"


def _asked_by_others(talk: Talk, segment: Segment) -> list[Draft]:
    """ "They asked was he foundered", "she wondered had it a corn": the findings of a question told."""
    words = talk.words[segment.start : segment.end]
    if _ASKED.isdisjoint(words):
        return []
    at = next((i for i, word in enumerate(words) if word in _ASKED), 0)
    to = at + 1 + (words[at + 1 : at + 2] in _WHOM)
    if words[to : to + 1] in _IF:
        asking = words[to + 1 : to + 2] in _ASKED_OF and words[to + 2 : to + 3] in _WAS
    else:
        asking = words[to : to + 1] != [] and words[to] in _ASKING and words[to + 1 : to + 2] in _ASKED_OF
    if not asking or _asked_myself(talk, segment, at):
        return []
    told = [d for d in segment.drafts if d.slot in _ASKABLE and d.start > segment.start + at]
    return [d for d in told if max(d.evidence, default=0) < segment.end]  # not what was put right: "no, canker"


def _asked_myself(talk: Talk, segment: Segment, at: int) -> bool:
    """ "I wondered was it thrush", "off fore, wondered was it thrush": who speaks doubts, and nobody asked."""
    start = segment.start + at
    if talk.words[start] not in _WONDERED or not segment.having("doubts"):
        return False
    while start and talk.words[start - 1] in _MUSING:
        start -= 1
    foot = talk.mention_ending(start - (talk.words[start - 1] == ","))
    footed = foot is not None and foot.get("feet") is not None
    return footed or not start or talk.words[start - 1] in ("i", "we", *SENTENCE_ENDS)


def _looked_into(talk: Talk, segments: list[Segment]) -> bool:
    """Whether what was spoken of was then looked for and not found: "I felt for it, nothing", "had a look, no"."""
    words = [set(talk.words[s.start : s.end]) for s in segments[1:]]
    return any(_LOOKING & said for said in words) and any(_NOT_FOUND & said for said in words)


def _said_not_to_be(draft: Draft, behind: list[Segment]) -> bool:
    """ "They asked me about sidebone, and I found no sidebone": spoken of, and denied by its name."""
    named = [s for s in behind for d in s.drafts if (d.slot, d.value) == (draft.slot, draft.value)]
    return any(s.having("denials", "before") for s in named)


def _affirmed(talk: Talk, draft: Draft, groups: Groups) -> bool:
    """ "Is there thrush? There is, in both hinds": yes, on the feet that the answer names."""
    behind = talk.segments[draft.segment.index + 1 :][:2]
    if not behind or talk.words[behind[0].start : behind[0].end] not in _YES:
        return False
    if draft.slot == "gait" and any(d.slot == "lameness" for s in talk.sentence(behind[0].sentence) for d in s.drafts):
        return False  # "Lame? Yes, two out of five."
    answer = talk.sentence(behind[0].sentence)
    sought = "for" in talk.words[draft.start - 2 : draft.start] or bool(draft.segment.having("doubts", "sought"))
    if sought and talk.words[behind[0].end - 1] == "did":
        return False  # "Did I check for thrush? I did."
    named = [g.feet for s in behind if s.sentence == behind[0].sentence for g in groups.get(s.index, [])]
    if named and (not draft.feet or "foot: named in the next sentence" in draft.rules):
        draft.feet = named[0]
        draft.note("foot: named in the answer")
    for segment in answer[1:]:
        if not _only_where(talk, segment):
            break
        _graded_in(segment, draft)  # "Any thrush? Yes, off hind, mild."
    return True


def _asks(talk: Talk, segment: Segment) -> bool:
    """ "Was it a close nail I'd left in", "cracks I was going to say none": asked aloud, before the answer is given."""
    words = talk.words[segment.start : segment.end]
    if "none" in words and ("say", "none") in pairwise(words):
        return True
    while words[:1] and words[0] in _LEADING:
        words = words[1:]
    before = talk.words[segment.start - 1] if segment.start else "."
    asked = before not in _ELLIPTIC and words[:1] != [] and words[0] in _ASKING and words[1:2] in _ASKED_OF
    return asked and words[2:3] != ["down"]  # "had it down as thrush" is a doubt
