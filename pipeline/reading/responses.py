"""Hoof testers, digital pulse and nail line: a head word opens a statement, response words answer it.

"Testers mild across the frog on the right front, nothing on the left front" is two responses to one head. A response
word means nothing without its head: "mild" beside a bruise is a severity.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.some_of_it import less_so
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import NOT
from pipeline.record import MatchKind


@dataclass(frozen=True)
class _Frame:
    head: str
    responses: str
    slot: str


_FRAMES = (
    _Frame("tester_heads", "tester_responses", "tester"),
    _Frame("pulse_heads", "pulses", "pulse"),
    _Frame("nail_line_heads", "nail_lines", "nail_line"),
)
_CONTENT = (
    "findings", "work", "shoe_types", "shoe_states", "pads", "packings", "treatments", "clips", "traction", "gaits",
    "manners",
)  # fmt: skip
_OTHER = frozenset({*_CONTENT, "units", "doubts", "plans", "pulse_heads", "nail_line_heads"})
_FEW = 3  # segments of an answer with its foot and place
_SEVERITY_RESPONSE = {"mild": "mild", "moderate": "moderate", "severe": "strong"}
_EMPTY = frozenset({"nothing", "none", "no", "not", "n't", "never", "nowt", "empty", "zip", "zilch", "zero", "nil"})
_HANDLING = frozenset(
    {
        "use", "used", "using", "put", "need", "needed", "bother", "bring", "brought", "try", "tried", "have", "here",
        "find", "truck",
    }
)  # fmt: skip
_NOT_USED = frozenset({
    "no", "not", "n't", "never", "without", "need", "forgot", "left", "lost", "want", "next", "will", "'ll", "if",
    "vet", "could", "would", "should",
})  # fmt: skip
_FROM = frozenset({"from", "to", "with", "off", "out", "for"})

# "Neither of the fronts gave me anything on the testers", "the hinds didn't give me a thing to the testers".
_GAVE_NOTHING = (
    frozenset({"neither", "none", "n't", "not", "never"}), frozenset({"gave", "give", "given", "showed", "show"}),
    frozenset({"anything", "thing", "flinch", "twitch"}),
)  # fmt: skip

_HAVE_NOTHING = (["have", "nothing"], ["got", "nothing"], ["has", "nothing"], ["had", "nothing"], ["nothing", "on"])
_NO_PULSE = frozenset({"no", "nor", "without", "any", "hardly", "barely", "scarcely"})  # "not much of a pulse" too
_BOUNDS = frozenset({"bounding"})
_PULSING = frozenset({"normal", "raised", "bounding", "elevated"})
_GOING = frozenset(
    {"the", "is", "'s", "was", "are", "were", "both", "in", "on", "and", "but", "though", "only", "it", "still", "now"}
)
_OF_AN_ANSWER = frozenset({"tester_responses", "zones", "feet"})
_PAIRS = (["LF", "RF"], ["LH", "RH"])
_BEING = frozenset({"is", "'s", "are", "'re", "was", "were", "still", "both", "not", "n't"})
_PICKED_UP = frozenset({"picked", "lifted", "lift", "held", "holding", "picking", "lifting"})
_REACTS = ("react", "respon")
_AROUND_A_DEGREE = frozenset({
    "a", "an", "one", "it", "was", "is", "'s", "there", "that", "too", "only", "just", "and", "but", "fairly", "quite",
    "very", "pretty", "mind", "in", "fact", "though", "to", "the", "at", "on", "all", "either",
})  # fmt: skip
_HARD, _SET_ON = frozenset({"hard"}), frozenset({"put", "on", "really", "pretty", "quite", "real", "good", "and"})


def draft_responses(talk: Talk) -> None:
    """A draft for each answer to the testers, the pulse and the nail line."""
    for frame in _FRAMES:
        for sentence in [s for s in talk.sentences() if frame.head in s.classes]:
            _read_sentence(talk, frame, sentence)
        _continue_nothing(talk, frame)
    _pressed_hard(talk)
    _bounding(talk)
    _goes_on(talk, _FRAMES[1])
    _goes_on(talk, _FRAMES[2])
    for segment in talk.segments:
        if len(segment.drafts) > 1:
            segment.drafts.sort(key=lambda d: (d.start, d.end))


def _read_sentence(talk: Talk, frame: _Frame, sentence: list[Segment]) -> None:
    heads = [(s, m) for s in sentence for m in s.having(frame.head) if not m.get("not_facts") and _is_head(talk, s, m)]
    if not heads:
        return
    first = heads[0][0].index
    open_until = _reach(talk, frame, sentence, first)
    for segment in sentence:
        headed = bool(segment.having(frame.head))
        if not headed and (segment.index < first or segment.index > open_until):
            continue
        _read_segment(talk, frame, segment, headed)
    if frame.slot == "pulse":
        _bare_pulse(talk, frame, sentence)
    elif frame.slot == "tester":
        _bare_nothing(talk, frame, heads)


def _is_head(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Line's good" is the nail line only where nails are spoken of."""
    if talk.words[mention.start : mention.end] not in (["line"], ["lines"]):
        return True
    if mention.end < len(talk.words) and talk.words[mention.end] in ("'s", "is", "are", "was", "looks"):
        return True
    near = [s for s in talk.segments if segment.sentence - 1 <= s.sentence <= segment.sentence]
    return any(m.get("measures") == "nails" for s in near for m in s.mentions)


def _reach(talk: Talk, frame: _Frame, sentence: list[Segment], first: int) -> int:
    """The last segment that the head still reaches: until something else is spoken of."""
    last = first
    for segment in sentence:
        if segment.index <= first:
            continue
        other = any(f is not frame and segment.having(f.head) for f in _FRAMES)
        answers = _answers(talk, frame, segment)
        content = [m for m in segment.mentions if m.is_any(_CONTENT) and not m.get(frame.responses)]
        guessed = bool(segment.having("doubts")) and frame.slot == "tester" and not other and not answers
        if guessed and not _measured(talk, segment):
            continue  # "mild at the toe, could be a bruise in it, and nothing in the near fore"
        if other or (content and (not answers or content[0].start < answers[0].start)) or _measured(talk, segment):
            break
        last = segment.index
    return last


def _measured(talk: Talk, segment: Segment) -> bool:
    """Whether something is measured here; "toe" alone is a place, no length, and "across the frog" no width."""
    told = [m for m in segment.mentions if m.get("measures") is not None and m.get("zones") is None]
    return any(talk.words[m.start : m.end] != ["across"] or segment.having("units") for m in told)


def _answers(talk: Talk, frame: _Frame, segment: Segment) -> list[Mention]:
    found = []
    for mention in segment.mentions:
        severity = frame.slot == "tester" and mention.get("severities") is not None
        if (mention.get(frame.responses) is not None or severity) and not _before_content(segment, mention):
            found.append(mention)
    if frame.slot == "tester" and found and talk.says(_PICKED_UP):
        found = [m for m in found if not _minds_being_held(talk, segment, m)]
    return found


def _minds_being_held(talk: Talk, segment: Segment, mention: Mention) -> bool:
    """ "Didn't like having it picked up" behind the testers is manners, no answer to them."""
    behind = talk.words[mention.end : segment.end]
    return behind[:1] != ["when"] and _value(_FRAMES[0], mention) == "positive" and not _PICKED_UP.isdisjoint(behind)


def _before_content(segment: Segment, mention: Mention) -> bool:
    """Whether a finding follows directly, so that the word is its severity."""
    return any(m.is_any(("findings", "gaits")) and 0 <= m.start - mention.end <= 1 for m in segment.mentions)


def _value(frame: _Frame, mention: Mention) -> str:
    value = mention.get(frame.responses)
    if value is not None:
        return value
    return _SEVERITY_RESPONSE[mention.readings["severities"]]


def _read_segment(talk: Talk, frame: _Frame, segment: Segment, headed: bool) -> None:
    answers = _answers(talk, frame, segment)
    if not answers:
        return
    runs: list[list[Mention]] = []
    for mention in answers:
        if runs and not _foot_between(segment, runs[-1][-1], mention):
            runs[-1].append(mention)
        else:
            runs.append([mention])
    for run in runs:
        heads = segment.having(frame.head)
        alike = any(m.match is MatchKind.SOUND_ALIKE for m in (*run, *heads))
        match = MatchKind.SOUND_ALIKE if alike else run[0].match
        draft = Draft(frame.slot, _merge(frame, run), segment, run[0].start, run[-1].end, match)
        if frame.slot == "tester" and draft.value != "none" and less_so(talk, draft.start):
            draft.value = "positive"
        for mention in run:
            draft.evidence.update(mention.literal)
        draft.evidence.update(i for m in heads for i in m.literal)
        draft.note(f"{frame.slot}: {'head in the same segment' if headed else 'head earlier in the sentence'}")
        segment.drafts.append(draft)


def _foot_between(segment: Segment, first: Mention, second: Mention) -> bool:
    return any(m.get("feet") is not None and first.end <= m.start and m.end <= second.start for m in segment.mentions)


def _merge(frame: _Frame, run: list[Mention]) -> str:
    """One answer out of several words: "mild positive" is mild; a plain "positive" only when nothing is more exact."""
    values = [_value(frame, m) for m in run]
    if frame.slot == "tester":
        exact = [v for v in values if v != "positive"]
        return exact[0] if exact else "positive"
    return values[0]


def _bare_pulse(talk: Talk, frame: _Frame, sentence: list[Segment]) -> None:
    """ "Heat and a digital pulse in the near fore": a pulse that is spoken of at all is a raised one."""
    for segment in sentence:
        for head in segment.having(frame.head):
            if any(d.slot == "pulse" for s in sentence for d in s.drafts):
                return
            before = talk.words[head.start - 1] if head.start else ""
            if before in ("a", "some", "no", "digital", "and", "strong", "or", "any", "has", "have", "got"):
                led = set(talk.words[segment.start : head.start])
                denied = not _NO_PULSE.isdisjoint(led) or ("much" in led and not NOT.isdisjoint(led))
                draft = Draft("pulse", "normal" if denied else "raised", segment, head.start, head.end, head.match)
                draft.evidence.update(head.literal)
                draft.note("pulse: spoken of without a degree")
                if _goes_somehow(talk, head.end):
                    draft.note("pulse: how it goes was not understood")
                    draft.evidence.add(head.end)
                segment.drafts.append(draft)


def _goes_somehow(talk: Talk, index: int) -> bool:
    """ "The pulse bombing in both fores": what it does is told, in a word that no list has."""
    told = index < len(talk.words) and talk.words[index].endswith(("ing", "ed"))
    return told and talk.mention_starting(index) is None


def _pressed_hard(talk: Talk) -> None:
    """ "Testers hard on the frog, he wasn't bothered": so they were put on; a lone "nothing" may be of the rest."""
    for before, behind in pairwise(talk.segments) if talk.says(_HARD) else ():
        hard = next((d for d in before.kept if d.slot == "tester" and talk.words[d.start : d.end] == ["hard"]), None)
        if hard is None or before.horse != behind.horse or behind.named.keys() & {"feet", "zones"}:
            continue
        heads = [m.end for m in before.having("tester_heads") if m.end <= hard.start]
        set_on = any(_SET_ON.issuperset(talk.words[end : hard.start]) for end in heads)
        answers = _answers(talk, _FRAMES[0], behind) if set_on or talk.words[hard.end] == "with" else []
        told = [m for m in answers if len(m.literal) > 1 or (behind.own_clause and m.get("tester_responses") != "none")]
        if told:
            hard.value = _merge(_FRAMES[0], told)
            hard.note("tester: pressed hard")
            behind.drafts = [d for d in behind.drafts if d.slot != "tester"]


def _bounding(talk: Talk) -> None:
    """ "Fronts were bounding then": nothing of a foot but its pulse bounds."""
    for segment in talk.segments if talk.says(_BOUNDS) else ():
        for mention in segment.having("pulses", "bounding"):
            said = talk.words[mention.start - 1 : mention.end]
            alone = said[-1:] == ["bounding"] and said[0] in _BEING and not segment.having("pulse_heads")
            if alone and segment.having("feet") and not any(d.slot == "pulse" for d in segment.drafts):
                draft = Draft("pulse", "bounding", segment, mention.start, mention.end, mention.match)
                draft.evidence.update(mention.literal)
                draft.note("pulse: nothing else bounds")
                segment.drafts.append(draft)


def _goes_on(talk: Talk, frame: _Frame) -> None:
    """ "Pulse raised in the left fore. Right fore is perfectly normal.": the other foot, in a word of its own."""
    told: list[Segment] = []
    for sentence in talk.sentences() if talk.having(frame.head) else ():
        drafted = any(d.slot == frame.slot for s in sentence for d in s.drafts)
        if told and not drafted and len(sentence) == 1 and _alone(talk, frame, sentence[0], told):
            _read_segment(talk, frame, sentence[0], headed=False)
            drafted = True
        told = list(sentence) if drafted else []


def _alone(talk: Talk, frame: _Frame, segment: Segment, told: list[Segment]) -> bool:
    """Whether nothing stands in the segment but a foot and an answer; "fine" and "quiet" say no pulse.

    A nail line goes on to the other foot of the pair alone: "low on the near fore. On the off fore it's good.".
    """
    feet = segment.having("feet")
    goes = segment.having(frame.responses)
    if frame.slot == "pulse":
        goes = [m for m in goes if not _PULSING.isdisjoint(talk.words[m.start : m.end])]
    else:
        sides = [m.readings["feet"] for s in told for m in s.having("feet")] + [m.readings["feet"] for m in feet]
        if sorted(sides) not in _PAIRS:
            return False
    held = {i for m in (*feet, *goes) for i in range(m.start, m.end)}
    rest = talk.words_beside(segment, held)
    return len(goes) == 1 and bool(feet) and rest <= _GOING


def _bare_nothing(talk: Talk, frame: _Frame, heads: list[tuple[Segment, Mention]]) -> None:
    """ "Testers came up empty", "no joy from the testers": a "no" beside them, in words that nobody listed."""
    for segment, head in heads:
        if any(d.slot == frame.slot for s in talk.sentence(segment.sentence) for d in s.drafts):
            return
        before = talk.words[segment.start : head.start]
        after = talk.words[head.end : segment.end]
        empty = bool(_EMPTY & set(after)) and not _HANDLING & set(after)
        led = (
            bool(_EMPTY & set(before)) and bool(before) and before[-1] in _FROM | {"the"} and bool(_FROM & set(before))
        )
        if empty or (led and not _HANDLING & set(before)) or all(words & set(before) for words in _GAVE_NOTHING):
            draft = Draft(frame.slot, "none", segment, head.start, head.end, head.match)
            draft.evidence.update(head.literal)
            draft.note("tester: nothing came of them")
            segment.drafts.append(draft)


def _continue_nothing(talk: Talk, frame: _Frame) -> None:
    """ "Nothing on the right." in the sentence after the testers still answers them, as it does where none has yet."""
    drafts = (d for s in talk.segments for d in s.drafts)
    if frame.slot != "tester" or not (talk.having(frame.head) or any(d.slot == frame.slot for d in drafts)):
        return
    open_frame = waiting = False
    before: list[Segment] = []
    for sentence in talk.sentences():
        drafted = any(d.slot == frame.slot for s in sentence for d in s.drafts)
        own = next(
            (i for i, s in enumerate(sentence) if i and (s.own_clause or s.having("pulse_heads"))), len(sentence)
        )
        first = sentence[:own]  # "off fore, lateral heel, strong, and there's a corn in it"
        drafted = drafted or bool(before and _degree_behind(talk, frame, before, first[0], waiting))
        if (
            open_frame
            and not drafted
            and not bare_below(talk, sentence[-1])
            and _only_answers(talk, frame, first, waiting)
        ):
            for segment in first:
                _read_segment(talk, frame, segment, headed=False)
            drafted = True
        waiting = not drafted and _unanswered(talk, frame, sentence)
        open_frame = drafted or waiting
        before = sentence if open_frame else []


def _degree_behind(talk: Talk, frame: _Frame, before: list[Segment], segment: Segment, waiting: bool) -> bool:
    """ "He flinched on the testers at the toe. Strong reaction.": how he did so, or the answer that was waited for.

    A degree that says no reaction is the testers' only where they were spoken of last.
    """
    answers, places = _answers(talk, frame, segment), segment.having("zones")
    held = {i for m in (*answers, *places) for i in range(m.start, m.end)}
    said = talk.words[segment.start : segment.end]
    if not answers or not talk.words_beside(segment, held) <= _AROUND_A_DEGREE:
        return False
    reacts = any(word.startswith(_REACTS) for word in said)
    value = _merge(frame, answers)
    drafts = [d for s in before for d in s.drafts if d.slot != "manner"]
    told = [d for d in drafts if d.slot == frame.slot and d.value == "positive"]
    placed = {m.readings["zones"] for s in before for m in s.having("zones")}
    here = {m.readings["zones"] for m in places}
    clear = len(told) == 1 and (reacts or drafts == told) and here <= (placed or here)
    if waiting and reacts:
        _read_segment(talk, frame, segment, headed=False)
    elif not clear or value in ("none", "positive"):
        return False
    else:
        told[0].value = value
        told[0].zone = here.pop() if len(here) == 1 else None  # "he flinched on the testers. Strong at the toe."
        told[0].evidence.update(held)
        told[0].note("tester: its degree behind a stop")
    return True


def _unanswered(talk: Talk, frame: _Frame, sentence: Sentence) -> bool:
    """ "I went round the off fore twice with the testers.": what they came to follows; not "no need of the testers"."""
    if frame.head not in sentence.classes or sentence.says(_NOT_USED):
        return False
    return any(_is_head(talk, s, m) for s in sentence for m in s.having(frame.head))


def bare_below(talk: Talk, segment: Segment) -> bool:
    """ "Hinds have nothing, I just trimmed them": no shoes there, whatever the testers came to before."""
    behind = talk.segments[segment.index + 1 : segment.index + 2]
    trimmed = any(d.slot == "work" and d.value == "trim" for s in behind for d in s.drafts)
    return trimmed and talk.words[segment.end - 2 : segment.end] in _HAVE_NOTHING and not behind[0].having("feet")


def _only_answers(talk: Talk, frame: _Frame, sentence: list[Segment], waiting: bool) -> bool:
    """Whether a sentence is nothing but an answer with its foot or place: "Left fore, no reaction.".

    Where none has come yet it may be one a foot: "Left fore, mild, at the toe, right fore, strong, at the heel."
    """
    mentions = [m for s in sentence for m in s.mentions]
    if not any(m.get(frame.responses) for m in mentions):
        return False
    told = waiting and all(s.end - s.start == 1 or not _OF_AN_ANSWER.isdisjoint(s.named) for s in sentence)
    placed = (told or len(sentence) <= _FEW) and any(m.is_any(("feet", "zones")) for m in mentions)
    if not placed or any(_measured(talk, s) for s in sentence):
        return False
    return not any(m.is_any(_OTHER) and not m.is_any((frame.responses, "zones")) for m in mentions)
