"""What was skipped or left off: "poultice, no, actually I skipped the poultice", "left the iodine off"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.denials import deny_one
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.record import Status

_SLOTS = frozenset({"treatment", "packing", "pad", "clips", "traction"})
_SKIPPED = frozenset({"skipped", "skip", "skipping", "omitted", "forwent", "dodged"})
_LED = (
    ("left", "off"), ("left", "out"), ("leaving", "off"), ("leaving", "out"),
    ("held", "off"), ("hold", "off"), ("went", "without"), ("go", "without"),
    ("did", "without"), ("do", "without"), ("passed", "on"), ("ran", "out"),
    ("was", "out"), ("were", "out"), ("'m", "out"), ("'re", "out"),
    ("all", "out"), ("clean", "out"), ("held", "back"),
)  # fmt: skip
_INTENDED = Sayings("planned", "intended", "thought of", "thinking of", "in mind", "was to have", "plan was",
    "wanted", "ordered", "asked for", "meant to", "going to",
)  # fmt: skip
_GIVEN_UP = Sayings(
    *(f"{left} {it} {off}" for left in ("left", "leaving") for it in ("it", "them") for off in ("off", "out")),
    "did n't bother", "did n't need them", "went without", "decided against",
)  # fmt: skip
_AGAINST = frozenset({"better", "against", "changed"})
_AND_I = frozenset({"i", "we", "then", "and", "but", "so", "just"})
_MEANT = _SLOTS | {"shoe_type", "wedge"}
_OFF = frozenset({"as", "off", "pull", "pulled", "barefoot", "bare"})  # "I planned to pull them, so left them off"
_THINGS = frozenset({"bar", "bars", "pads", "shoes", "wedges", "plates", "clips"})  # of no kind that a slot keeps
_NOTHING = frozenset({"nothing"})
_STOP = frozenset({"stop", "quit", "stopped"})
_LEFT = frozenset({"left", "leave", "leaving"})
_AWAY = frozenset({"off", "out"})
_SMALL = frozenset({"the", "his", "her", "any", "on", "that", "of", "a", "all", "those", "usual"})
_VERBS = _SKIPPED | _LEFT | {verb for verb, _ in _LED}
_BEGINS = _VERBS | _STOP


def deny_left_out(talk: Talk, sentence: Sentence, before: Sentence) -> None:
    """Deny what was left out, and drop what was said of it before in the same sentence."""
    if talk.tells(_GIVEN_UP):
        if sentence.says(_INTENDED.first_words):
            _give_up(talk, sentence)
        _no_shoe(talk, [*before, *sentence])
        if before.says(_INTENDED.first_words) and _GIVEN_UP.at(talk.words, sentence[0].start):
            _give_up(talk, [*before, *sentence])
    for draft in [d for s in sentence for d in s.drafts if d.slot == "shoe_state"] if sentence.says(_NOTHING) else ():
        if talk.words[draft.start - 1] in _NOTHING:
            deny_one(draft)  # "nothing lost"
    if not sentence.lacks(_AGAINST):
        _off_again(talk, sentence, before)
    if sentence.lacks(_BEGINS):
        return
    for draft in [d for s in sentence for d in s.drafts if d.slot == "treatment"] if sentence.says(_STOP) else ():
        if talk.words[draft.start - 1] in _STOP:
            draft.drop("to be stopped")
    if sentence.lacks(_VERBS) or ("plans" in sentence.classes and any(s.having("plans") for s in sentence)):
        return
    for segment in sentence:
        for draft in [d for d in segment.drafts if d.slot in _SLOTS and _left_out(talk, segment, d)]:
            said = [d for s in sentence for d in s.drafts if (d.slot, d.value) == (draft.slot, draft.value)]
            for earlier in [d for d in said if d.start < draft.start and _same_feet(d, draft)]:
                earlier.drop("left out after all")
            deny_one(draft)


def _no_shoe(talk: Talk, sentence: list[Segment]) -> None:
    """ "She'd been in wedge pads, I left them off": the pads, no shoe."""
    for pad, left in pairwise([d for s in sentence for d in s.kept]):
        if left.value == "removed" and pad.slot in ("pad", "wedge") and _GIVEN_UP.at(talk.words, left.start):
            left.drop("no shoe was left off")


def _give_up(talk: Talk, sentence: list[Segment]) -> None:
    """ "I'd planned bars in front but left them off": nothing was put on, and no shoe was left off."""
    meant, intended = False, list[Draft]()
    for segment in sentence:
        words = talk.words[segment.start : segment.end]
        if meant and _GIVEN_UP.said_in(words):
            for draft in [*intended, *(d for d in segment.drafts if d.value == "removed")]:
                draft.drop("only intended")
        named = not _THINGS.isdisjoint(words) or any(d.slot in _MEANT for d in segment.drafts)
        if named and _INTENDED.said_in(words) and _OFF.isdisjoint(words):
            meant = True
        if meant:
            intended += [d for d in segment.drafts if d.slot in _MEANT]


def _off_again(talk: Talk, sentence: Sentence, before: Sentence) -> None:
    """ "I put toe clips on them and thought better of it", "pads on. Decided against them.": none are on."""
    for position, segment in enumerate(sentence):
        cue = next(iter(segment.having("plans", "given_up")), None)
        if cue is None or segment.drafts or not _AND_I.issuperset(talk.words[segment.start : cue.start]):
            continue
        near = sentence[:position] or before
        told = [s for s in near if s.drafts and s.horse == segment.horse][-1:]
        for draft in [d for s in told if not any(n.having("plans") for n in near) for d in s.drafts]:
            if draft.slot in _MEANT and draft.status is Status.PRESENT:
                draft.drop("thought better of")


def _same_feet(one: Draft, other: Draft) -> bool:
    return not one.feet or not other.feet or bool(set(one.feet) & set(other.feet))


def _left_out(talk: Talk, segment: Segment, draft: Draft) -> bool:
    at = draft.start - 1
    while at > segment.start and talk.words[at] in _SMALL and tuple(talk.words[at - 1 : at + 1]) not in _LED:
        at -= 1
    if at < segment.start:
        return False
    led = tuple(talk.words[max(segment.start, at - 1) : at + 1])
    if talk.words[at] in _SKIPPED or (led in _LED and (led[0] not in _LEFT or at < draft.start - 1)):
        return True  # "left off the iodine"; not "shoe off, left off, soaked"
    behind = talk.words[draft.end : draft.end + 1]
    return talk.words[at] in _LEFT and bool(_AWAY & set(behind))
