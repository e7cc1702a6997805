"""Why a fact is put before a person, in sentences that a farrier understands; never a number alone."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from pipeline.judging.features import LITTLE, foot_kind
from pipeline.judging.naming import the_foot
from pipeline.judging.opinion import NOT_SO, shipped_opinion, words_around
from pipeline.judging.surroundings import Surroundings, bare
from pipeline.record import Fact, Status, Transcript

_MOST = 2
_LEAST_PART = 0.2  # log-odds that a group of evidence must add to be told
_REACH = 12  # words within which a correction is named

# What the words around a fact may mean instead of what was read.
_OTHERWISE = {
    Status.PRESENT.value: "It is said as if it were so today; is it?",
    Status.ABSENT.value: "It is said as if it were denied; is this there or not?",
    Status.SUSPECTED.value: "It is said as if it were a guess; how sure is this?",
    Status.RESOLVED.value: "It is said as if it were over; is it still there?",
    Status.HISTORY.value: "It is said as if of an earlier time; is this of today?",
    Status.PLANNED.value: "It is said as if it were a plan; was it done, or is it still to do?",
    NOT_SO: "It is said in a way that is often misread; is this right?",
}

Tell = Callable[[Fact, Transcript, Surroundings], str | None]


def reasons_for(
    fact: Fact,
    parts: Mapping[str, float],
    transcript: Transcript,
    around: Surroundings,
    otherwise: str | None = None,
) -> list[str]:
    """The strongest one or two reasons, at least one; ``otherwise`` tells how the second reader takes the fact."""
    weighed = sorted(((sum(parts.get(name, 0.0) for name in names), tell) for names, tell in _GROUPS),
                     key=lambda pair: -pair[0])  # fmt: skip
    told: list[str] = []
    for part, tell in weighed:
        if part < _LEAST_PART or len(told) == _MOST:
            break
        sentence = otherwise if otherwise and tell is _otherwise else tell(fact, transcript, around)
        if sentence and sentence not in told:
            told.append(sentence)
    return told or ["Facts said in this way are often misread; is it right?"]


def hard_word(fact: Fact, transcript: Transcript) -> str | None:
    """The word of the fact that was heard worst, little words aside."""
    words = transcript.words_of(*fact.span)
    telling = [word for word in words if bare(word) not in LITTLE] or words
    return min(telling, key=lambda word: word.probability).text.strip(" ,.?!") if telling else None


def _hard(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    word = hard_word(fact, transcript)
    return f"The word “{word}” was hard to hear; please listen." if word else None


def _hard_around(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "The words around it were hard to hear; please listen."


def _hard_foot(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return f"The word for the foot was hard to hear; is it {the_foot(fact.foot)}?" if fact.foot else None


def _replaced(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    words = [word for word in transcript.words_of(*fact.span) if word.heard is not None]
    if not words:
        return None
    heard = words[0].heard
    together = " ".join(word.text.strip(" ,.;:?!") for word in words if word.heard == heard)
    return f"Heard “{heard}”, read as {together}; please listen."


def _corrected(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    cue = around.cue_words("correction", *around.place(fact.span), reach=_REACH)
    return f"“{cue.capitalize()}” is said close by; does this still stand?" if cue else None


def _earlier(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "An earlier time is spoken of in the same sentence; is this of today?"


def _planned(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "A plan is spoken of in the same sentence; was it done, or is it still to do?"


def _doubted(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "A doubt is said in the same sentence; how sure is this?"


def _denied(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "A “no” is said in the same sentence; is this there or not?"


def _foot(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    if fact.foot is None or foot_kind(fact) == "named":
        return None
    return f"No foot is named beside it; is it {the_foot(fact.foot)}?"


def _otherwise(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    chances = shipped_opinion().chances(words_around(around, fact.span, fact.slot))
    del chances[fact.status.value]
    return _OTHERWISE[max(chances, key=lambda status: chances[status])]


def _another_horse(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "Another horse is named just before; whose is this?"


def _missed_horse(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "More horses may be spoken of in this memo than were read; whose is this?"


def _other_asked(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "Another horse of this memo is in doubt; whose is this?"


def _two_horses(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "Two kinds of work are told of one foot, as if of two horses; whose is this?"


def _copied(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "Taken over from what was said of something else; is it the same here?"


def _nought(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return f"“{fact.quote}” sounds like other words; is it a size?" if fact.quote else None


def _horse(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "It is not sure which horse is spoken of here; whose is it?"


def _other_foot(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return f"Another foot is named close by; is it {the_foot(fact.foot)}?" if fact.foot else None


def _hardly_foot(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return f"The words hardly seem to tell of this foot; is it {the_foot(fact.foot)}?" if fact.foot else None


def _come_in(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "Another horse may have been named or described before this; whose is it?"


def _elsewhere(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "Other things told of this horse contradict each other; is this right?"


def _much_else(fact: Fact, transcript: Transcript, around: Surroundings) -> str | None:
    return "More is said in this sentence than was understood; is this right?"


_GROUPS: tuple[tuple[tuple[str, ...], Tell], ...] = (
    (("least", "mean", "least below half", "least below 0.8", "least foot", "number", "slow"), _hard),
    (("around", "memo mean", "sentence least", "least before"), _hard_around),
    (("foot before",), _hard_foot),
    (("replaced", "unsupported"), _replaced),
    (("correction after", "correction before", "correction close"), _corrected),
    (("earlier near",), _earlier),
    (("plan near",), _planned),
    (("doubt near",), _doubted),
    (("denial near",), _denied),
    (("words to foot", "sentences to foot", "no foot before", "foot in hand", "foot list"), _foot),
    (("foot copied", "far rule"), _copied),
    (("nought", "heard nought"), _nought),
    (("other name",), _another_horse),
    (("horse missed",), _missed_horse),
    (("work twice",), _two_horses),
    (("other horse asked",), _other_asked),
    (("horse unclear", "several horses"), _horse),
    (("foot inside differs", "feet differ"), _other_foot),
    (("described", "name like"), _come_in),
    (("others contradicted",), _elsewhere),
    (("otherwise", "hardly so"), _otherwise),
    (("hardly this foot",), _hardly_foot),
    (("unknown words", "unread words", "unknown before", "long sentence"), _much_else),
)
