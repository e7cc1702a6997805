"""How each fact was asserted: denied, doubted, of an earlier time, gone, planned, or an aside.

The order matters: what is denied cannot be doubted, a time overrules a doubt, and "gone" overrules an earlier time.
"""

from __future__ import annotations

from collections.abc import Callable

from pipeline.reading.again_planned import plan_again, put_off, tell_elsewhere
from pipeline.reading.at_that_time import THEN, recall_asked, recall_then, recall_what_he_had
from pipeline.reading.changed_over import changed_over
from pipeline.reading.degrees_then import answer_then_and_now
from pipeline.reading.denials import deny
from pipeline.reading.denied_headings import deny_under_heading
from pipeline.reading.doubts import UNSEEN, doubt, doubt_after, doubt_asked, doubt_either, doubt_unseen
from pipeline.reading.excepted import there_where_excepted
from pipeline.reading.foot_groups import Groups
from pipeline.reading.found_not_so import AGAINST, deny_thought
from pipeline.reading.gone import no_longer, resolve_gone
from pipeline.reading.left_out import deny_left_out
from pipeline.reading.mentions import Mention
from pipeline.reading.never_done import drop_never_done
from pipeline.reading.not_gone import there_after_all
from pipeline.reading.off_by_the_horse import drop_off_for_a_look
from pipeline.reading.once_more import COMING, brewing_again, drop_spoken_again, split_once_more, unlike_then
from pipeline.reading.plans import announce, plan, plan_one
from pipeline.reading.put_in_then import plan_after_all
from pipeline.reading.recalling import recall
from pipeline.reading.refused import drop_refused
from pipeline.reading.sayings import Sayings, said_whole
from pipeline.reading.scopes import ALWAYS_PLANNED
from pipeline.reading.set_against import SET_AGAINST, set_against
from pipeline.reading.talk import Segment, Sentence, Talk
from pipeline.reading.then_and_now import grade_then_and_now, keep_what_stands
from pipeline.reading.thought_lame import drop_thought_lame
from pipeline.reading.tried_on import drop_not_used
from pipeline.reading.was_there import hear_remarks, let_go
from pipeline.reading.wishes import drop_wished
from pipeline.record import Status

_NAILED = frozenset({"close_nail", "quicked"})
_NO_HOOVES = frozenset({"dog", "cat", "collie", "terrier", "sheepdog", "rooster"})
_STOCK = frozenset({"more", "another", "some", "extra", "box", "boxes", "stock", "few"})
_FITTED = frozenset({"shoe_type", "shoe_material", "pad", "wedge", "traction", "clips"})
_NOT_THIS_ONE = said_whole(
    *(f"{who} {verb}" for who in ("he", "she", "this one") for verb in ("does not", "does n't", "has n't", "has not"))
)  # "her other mare's got navicular, and he does not, no navicular in either front"
# Rules that do nothing in a memo without such turns of words: asked once, not sentence by sentence.
_WAITING: dict[Callable[..., None], tuple[Sayings, ...]] = {
    doubt_unseen: UNSEEN, deny_thought: (AGAINST,), recall_then: THEN, brewing_again: (COMING,),
    set_against: SET_AGAINST,
}  # fmt: skip


def assert_all(talk: Talk, groups: Groups) -> None:
    """Set the status of every draft; ``groups`` are the feet named in each segment."""
    sentences = talk.sentences()
    announced = False
    no_more = hear_remarks(talk)
    told = {rule for rule, turns in _WAITING.items() if talk.tells(*turns)}
    for number, sentence in enumerate(sentences):
        before = sentences[number - 1] if number else Sentence()
        announced = announce(talk, sentence, announced)
        _deny_first(talk, sentence, before)
        _doubt(talk, sentence, before, groups, told)
        _tell_times(talk, sentence, before, told)
        if any(segment.drafts for segment in sentence):
            plan(talk, sentence)
        plan_after_all(talk, sentence, before)
        changed_over(talk, sentence)
        no_longer(talk, sentence, before, groups)
        drop_never_done(talk, sentence)
        drop_not_used(talk, sentence, sentences[number + 1] if number + 1 < len(sentences) else [])
        if set_against in told:
            set_against(talk, sentence)
        set_aside(talk, sentence)
    drop_off_for_a_look(talk)
    drop_thought_lame(talk, sentences)
    drop_wished(talk)
    drop_refused(talk)
    put_off(talk)
    for number, sentence in enumerate(sentences):
        resolve_gone(talk, sentence, sentences[max(0, number - 2) : number], groups)
        doubt_after(talk, sentence, sentences[number - 1] if number else [])
    drop_spoken_again(talk)
    _say_what_is_there(talk)
    let_go(no_more)
    plan_again(talk)
    tell_elsewhere(talk, groups)
    _no_degree_of_nothing(talk)


def _deny_first(talk: Talk, sentence: Sentence, before: Sentence) -> None:
    deny(talk, sentence)
    deny_left_out(talk, sentence, before)
    deny_under_heading(talk, sentence, before)
    there_where_excepted(talk, sentence)


def _doubt(talk: Talk, sentence: Sentence, before: Sentence, groups: Groups, told: set[Callable[..., None]]) -> None:
    doubt(talk, sentence)
    if doubt_unseen in told:
        doubt_unseen(talk, sentence)
    doubt_either(talk, sentence)
    doubt_asked(talk, sentence, before, groups)
    if deny_thought in told:
        deny_thought(talk, sentence, before)


def _tell_times(talk: Talk, sentence: Sentence, before: Sentence, told: set[Callable[..., None]]) -> None:
    recall(talk, sentence)
    if recall_then in told:
        recall_then(talk, sentence, before)
    recall_what_he_had(talk, sentence, before)
    recall_asked(talk, sentence, before)
    split_once_more(talk, sentence, before)
    unlike_then(talk, sentence)
    if brewing_again in told:
        brewing_again(talk, sentence, before)


def _say_what_is_there(talk: Talk) -> None:
    """What was thought to be gone and is not, and how bad a finding is today beside how bad it was."""
    there_after_all(talk)
    answer_then_and_now(talk)
    grade_then_and_now(talk)
    keep_what_stands(talk)


def _no_degree_of_nothing(talk: Talk) -> None:
    """ "No thrush in front, behind yes, mild": what is not there has no degree."""
    for draft in talk.drafts:
        if draft.status is Status.ABSENT:
            draft.severity = None


def _alone(segment: Segment, cue: Mention) -> bool:
    return (segment.start, segment.end) == (cue.start, cue.end)


def _same_subject(talk: Talk, segment: Segment) -> bool:
    """ "… and she had dreadful feet": a pronoun still means the other animal."""
    return segment.joined_by("and", ", and", ",") and talk.words[segment.start] in ("he", "she", "it", "they")


def _ordered_for(talk: Talk, segment: Segment, cue: Mention) -> bool:
    """Whether something was ordered for feet of this horse, to be put on another time."""
    behind = [m for m in segment.mentions if m.start >= cue.end]
    then = any(m.get("plans") == "before" for m in behind)
    if talk.words[cue.end - 1] != "ordered" or not (_STOCK.isdisjoint(talk.words[cue.end : cue.end + 3])):
        return False
    foot = next((m for m in behind if m.get("feet") is not None), None)
    if foot is not None and "for" in talk.words[cue.end : foot.start]:
        for draft in [d for d in segment.drafts if d.slot in _FITTED]:
            plan_one(draft)  # "I've ordered heart bars for the fronts", "the pads I ordered for the fronts"
        return True
    return then and any(d.feet for d in segment.drafts if d.slot in _FITTED)


def set_aside(talk: Talk, sentence: Sentence) -> None:
    """Errands ("order more size fives") and other people's horses are no facts of this visit."""
    for position, segment in enumerate(sentence if "asides" in sentence.classes else ()):
        for cue in (m for m in segment.having("asides") if m.readings["asides"] not in ("event", "not_today")):
            whole = cue.readings["asides"] == "not_mine"
            if talk.words[max(0, cue.start - 1) : cue.start] == ["be"]:
                continue  # "sedated next time or she'll be somebody else's horse": still this one
            if _ordered_for(talk, segment, cue):
                continue  # "I've ordered pads for both fores for next visit": what those feet are to get
            if whole and _NAILED & {d.value for s in sentence[:position] for d in s.drafts} and _alone(segment, cue):
                continue  # "a close nail, not mine": another's nail in this horse
            story = cue.readings["asides"] == "story"  # a story goes on to the end of its sentence
            for later in sentence if whole else sentence[position:]:
                if later is not segment and talk.words[cue.end - 2 : cue.end] == ["out", "of"]:
                    break  # "I was out of iodine, copper sulfate in it"
                if tuple(talk.words[later.start : later.end]) in _NOT_THIS_ONE:
                    break
                if later is not segment and talk.words[later.start] == "this":
                    break  # "had a mare at the last place with canker, but this one's just got thrush"
                if later is not segment and talk.words[cue.end - 1] in _NO_HOOVES and not _same_subject(talk, later):
                    break  # "the dog got in the way, a corn in the off fore"
                if (
                    later is not segment
                    and later.own_clause
                    and not whole
                    and not story
                    and not _same_subject(talk, later)
                ):
                    break
                for draft in later.drafts:
                    if draft.slot not in ALWAYS_PLANNED:
                        draft.drop("an aside")
