"""Thought or said to be so, and found otherwise: "I thought he was lame on the off fore, but he's sound"."""

from __future__ import annotations

from itertools import pairwise

from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Draft, Segment, Sentence, Talk
from pipeline.reading.tokens import NOT
from pipeline.record import Status

THOUGHT = frozenset(
    {"thought", "thinks", "thinking", "said", "says", "saying", "told", "looked", "reckoned", "reckons", "figured"}
    | {"expected", "expecting", "sworn", "swore", "swears", "wondered", "wonder", "worried", "feared", "convinced"}
    | {"seemed", "appeared", "claimed", "claims", "insists", "insisted", "believed", "believes", "suspected"}
    | {"complained", "complains", "rang", "phoned", "texted", "supposed", "guessed", "afraid", "certain"}
)
OF_THE_SORT = Sayings("nothing of the sort", "nothing of the kind", "no such thing", "far from it", "nothing like it")
_HAD_HIM_DOWN = Sayings(
    "had him down", "had her down", "have him down", "have her down", "has him down", "has her down"
)
_WARNED = frozenset({"warned", "heard", "reputation", "word", "name", "supposedly", "apparently", "meant"})
_NOW = frozenset({"now", "today", "again"})
_SEASONS = frozenset({"spring", "summer", "autumn", "fall", "winter"})
_NOT_SEEN = Sayings(
    "could n't see it", "did n't see it", "never saw it", "could n't see any of it", "not that i could see",
    "not that i saw", "can't see it", "ca n't see it", "did n't see any of it", "saw none of it", "do n't see it",
)  # fmt: skip
_TO_BE = frozenset({("'d", "be"), ("would", "be"), ("to", "be"), ("to", "see"), ("to", "find"), ("to", "go")})
_GAITS, _UNSOUND = frozenset({"gait", "lameness"}), frozenset({"lame", "short_stride"})
_IN_PART = Sayings(
    "on the straight", "on a straight", "in a straight", "on straight", "in straight lines", "on the straightaway",
    "at the walk", "at a walk", "at walk", "in walk", "in the walk", "walking", "walked", "walks", "at the trot",
    "at a trot", "at trot", "in trot", "in the trot", "trotting", "on the hard", "on hard ground", "on the soft",
    "on soft ground", "on soft", "on hard", "on the grass", "on grass", "on the flat",
    "in hand", "on the left rein", "on the right rein",
    "on the lunge", "on the concrete", "on concrete", "on the road", "on the tarmac", "on sand", "on the sand",
    "uphill", "downhill",
)  # fmt: skip
_ON_THE_OTHER = Sayings("on the circle", "on a circle", "on circles", "on a small circle", "lunged", "turning")
_CALLED = frozenset({"called", "calls", "calling", "call"})
_CALLED_OUT = frozenset({"me", "us", "out", "about", "for", "in", "round", "to", "off"})
_BELIEVED = THOUGHT | _CALLED | {"down"}
_BEING = frozenset({"is", "'s", "was", "were", "are", "'re", "be"})


def drop_thought_lame(talk: Talk, sentences: list[Sentence]) -> None:
    """Drop what was only thought of or told and found otherwise, and put back in time what he was and is no more."""
    stood = talk.having("manners")
    went = talk.having("gaits") or talk.having("measures", "lameness")
    believed = talk.says(_BELIEVED)
    if not stood and not went and not believed:
        return
    for before, sentence, after in zip([[], *sentences], sentences, [*sentences[1:], []], strict=False):
        if believed and sentence.says(_BELIEVED):
            _found_otherwise(talk, sentence, after)
        if stood:
            _told_of(talk, sentence, after)
        if went:
            _found_sound(talk, before, sentence, after)
            _sound_in_part(talk, sentence, after)


def _found_sound(talk: Talk, before: list[Segment], sentence: list[Segment], after: list[Segment]) -> None:
    """ "I thought he was lame on the off fore, but he's sound", "lame last week and sound today"."""
    gaits = [d for s in sentence for d in s.drafts if d.slot in _GAITS and not d.dropped]
    own = [d for d in gaits if d.status in (Status.PRESENT, Status.SUSPECTED)]
    if not own:
        return
    after = after if after and after[0].horse == sentence[0].horse else []
    drafts = [d for s in (*sentence, *after) for d in s.kept]
    for draft in [d for d in own if d.slot == "gait" and d.value == "sound" and _hoped(talk, sentence, d)]:
        draft.drop("only hoped for")
    for draft in [d for d in own if d.slot == "gait" and d.value != "sound" and _only_thought(talk, sentence, d)]:
        if any(d.value == draft.value and d.status is Status.ABSENT and d.start > draft.start for d in drafts):
            draft.drop("thought so and found otherwise")
    for draft in [d for d in own if d.slot == "lameness" or (d.slot == "gait" and d.value in _UNSOUND)]:
        sound = next((d for d in drafts if _sound_after(d, draft)), None)
        rested = "resting" in talk.words[draft.start : draft.end]
        thought = _only_thought(talk, [*(before if rested else ()), *sentence], draft)
        now = sound is not None and bool(_NOW & set(talk.words[sound.start : sound.segment.end]))
        then = any(m.get("times") in ("recent", "history") for s in sentence for m in s.having("times"))
        words = talk.words[sentence[0].start : sentence[-1].end]
        then = then or (now and any(at == "in" and when in _SEASONS for at, when in pairwise(words)))
        if thought and not then and (sound or _free_after(talk, sentence, drafts, draft)):
            draft.drop("thought lame and found sound")
        elif sound is not None and (then or (now and _was(talk, draft))):
            draft.status = Status.HISTORY
            draft.note("sound now")


def _sound_in_part(talk: Talk, sentence: Sentence, after: list[Segment]) -> None:
    """ "Sound on the straight, but on the circle he's lame left hind": the lameness stands, and he is not sound."""
    sound = [d for s in sentence for d in s.drafts if d.slot == "gait" and d.value == "sound" and not d.dropped]
    for draft in [d for d in sound if d.status is Status.PRESENT and _told_in_part(talk, d, _IN_PART)]:
        near = [*sentence, *(s for s in after if s.horse == draft.segment.horse)]
        told = [d for s in near for d in s.drafts if d.status is Status.PRESENT and not d.dropped]
        unsound = [d for d in told if d.slot == "lameness" or d.value in _UNSOUND]
        if any(d.start > draft.start or _told_in_part(talk, d, _IN_PART, _ON_THE_OTHER) for d in unsound):
            draft.drop("sound in part")


def _told_in_part(talk: Talk, draft: Draft, *where: Sayings) -> bool:
    """Whether it is said of a place or a gait: "sound on the straight", "walks out sound", "lame on the circle"."""
    words = talk.words[draft.segment.start : draft.segment.end]
    return any(turns.said_in(words) for turns in where)


def _found_otherwise(talk: Talk, sentence: list[Segment], after: list[Segment]) -> None:
    """ "I'd thought the near fore was loose and it wasn't loose", "I said puncture in June, it's not a puncture"."""
    after = after if after and after[0].horse == sentence[0].horse else []
    denials = [d for s in (*sentence, *after) for d in s.drafts if d.status is Status.ABSENT and not d.dropped]
    own = [d for s in sentence for d in s.drafts if d.slot in ("finding", "shoe_state") and not d.dropped]
    for draft in [d for d in own if denials and d.status is not Status.ABSENT]:
        if not (_only_thought(talk, sentence, draft) or _called(talk, sentence, draft)):
            continue
        answers = [d for d in denials if (d.slot, d.value) == (draft.slot, draft.value) and d.start >= draft.end]
        answers = [d for d in answers if not d.feet or not draft.feet or set(d.feet) & set(draft.feet)]
        if draft.status in (Status.HISTORY, Status.RESOLVED):  # "they said thrush last time, there's none now"
            answers = [d for d in answers if _misnamed(talk, d)]
        if answers:
            draft.drop("thought so and found otherwise")


def _called(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "The last man called it a club foot"; not "they called me out for a corn"."""
    said = talk.words[sentence[0].start : draft.start]
    at = next((i for i, word in enumerate(said) if word in _CALLED), len(said))
    named = said[-1:] in (["a"], ["an"]) or said[at + 1 :] == ["it"]
    return named and at < len(said) and not _CALLED_OUT & set(said[at + 1 : at + 2])


def _misnamed(talk: Talk, denial: Draft) -> bool:
    """ "It's not a puncture", "it never was a club foot": the name was wrong."""
    said = set(talk.words[max(denial.segment.start, denial.start - 4) : denial.start + 1])
    return bool(said & _BEING and said & NOT) and "there" not in said


def _told_of(talk: Talk, sentence: list[Segment], after: list[Segment]) -> None:
    """ "They warned me he was dangerous, stood like a lamb for me": how he stood for others; "sedated, so quiet"."""
    own = [d for s in sentence for d in s.drafts if d.slot == "manner"]
    if not own:
        return
    stood = [d for s in (*sentence, *after) if s.horse == sentence[0].horse for d in s.drafts if d.slot == "manner"]
    kept = [d for d in own if d.status is Status.PRESENT and not d.dropped]
    for one, draft in pairwise(kept):
        if (one.value, draft.value) == ("sedated", "quiet") and "so" in talk.words[one.end : draft.start + 1]:
            draft.drop("quiet for being sedated")
    for draft in kept:
        before = set(talk.words[sentence[0].start : draft.start])
        others = {d.value for d in stood if d.start >= draft.end and d.value != draft.value and not d.dropped}
        if not others or not before & (THOUGHT | _WARNED):
            continue
        if _hoped(talk, sentence, draft) or talk.words[draft.start] in ("would", "'d"):  # "told me he wouldn't stand"
            draft.drop("told beforehand")
        elif "quiet" in others:
            draft.status = Status.HISTORY
            draft.note("told of him")


def _hoped(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    """ "I thought he'd be sound by now", "I was hoping to find her sound"."""
    before = talk.words[max(sentence[0].start, draft.start - 6) : draft.start]
    hoped = bool((THOUGHT | _WARNED | {"hoped", "hoping", "hope", "liked", "wanted", "like", "want"}) & set(before))
    return hoped and any(pair in _TO_BE for pair in pairwise(before))


def _sound_after(sound: Draft, lame: Draft) -> bool:
    """Whether the horse, or the foot that was thought lame, is said to be sound behind it."""
    elsewhere = sound.feet and lame.feet and not set(sound.feet) & set(lame.feet)
    told = sound.slot == "gait" and sound.value == "sound" and sound.status is Status.PRESENT
    return told and sound.start > lame.start and not elsewhere and (not sound.feet or bool(lame.feet))


def _only_thought(talk: Talk, sentence: list[Segment], draft: Draft) -> bool:
    before = talk.words[sentence[0].start : draft.start]
    return bool(THOUGHT & set(before)) or _HAD_HIM_DOWN.said_in(before)


def _was(talk: Talk, draft: Draft) -> bool:
    return bool({"was", "were", "been"} & set(talk.words[draft.segment.start : draft.start]))


def _free_after(talk: Talk, sentence: list[Segment], drafts: list[Draft], draft: Draft) -> bool:
    """ "I wondered about the near hind, he was resting it, but there's no heat in it", "… I couldn't see it"."""
    if _NOT_SEEN.said_in(talk.words[draft.end : sentence[-1].end]):
        return True
    rested = "resting" in talk.words[draft.start : draft.end]
    return rested and any(d.start > draft.end and _is_free(d) for d in drafts)


def _is_free(draft: Draft) -> bool:
    return draft.status is Status.ABSENT or draft.value in ("normal", "none")
