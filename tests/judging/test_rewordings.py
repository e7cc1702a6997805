"""What stands for something else that was heard is put before a person unless the sound bears it out well."""

from __future__ import annotations

import pytest

from pipeline.judging import judge
from pipeline.record import Flag, FlagKind, MatchKind, Transcript
from tests.judging.making import fact, heard, judged, visit


def reworded(
    support: float, *, heard_as: str = "ketomi", at: int = 1, words: str = "some keratoma at the toe"
) -> Transcript:
    """Typed words as if heard well, of which one stands for another since the sound was weighed."""
    transcript = heard(*((word, 0.95) for word in words.split()))
    change = {"heard": heard_as, "support": support}
    words_now = [w.model_copy(update=change) if n == at else w for n, w in enumerate(transcript.words)]
    return transcript.model_copy(update={"words": words_now})


KERATOMA = fact("finding", "keratoma", span=(5, 13), quote="keratoma", match=MatchKind.VERIFIED)


def test_a_doubtful_wording_is_told_with_what_was_heard() -> None:
    (one,) = judged(KERATOMA, transcript=reworded(-4.1)).facts
    assert (one.flagged, one.reasons) == (True, ["Heard “ketomi”, read as keratoma; please listen."])


def test_a_wording_that_the_sound_bears_out_is_trusted() -> None:
    (one,) = judged(KERATOMA, transcript=reworded(-1.5)).facts
    assert not any("ketomi" in reason for reason in one.reasons)


def test_a_doubtful_wording_without_a_fact_is_a_flag_of_its_own() -> None:
    transcript = reworded(-4.0, heard_as="near hide", at=0, words="near-hind some thrush")
    seen = judged(fact("finding", "thrush", span=(15, 21), quote="thrush"), transcript=transcript)
    (flag,) = seen.flags
    assert (flag.kind, flag.reason) == (FlagKind.UNCLEAR_SPEECH, "Heard “near hide”, read as near-hind; please listen.")
    assert (flag.quote, flag.start, flag.end) == ("near-hind", 0.0, 0.4)


@pytest.mark.parametrize(("support", "count"), [(-1.5, 0), (-1.51, 1)])
def test_a_sure_one_without_a_fact_is_none(support: float, count: int) -> None:
    seen = judged(fact("finding", "thrush", span=(14, 20)), transcript=reworded(support, at=0))
    assert len(seen.flags) == count


def test_words_that_stand_for_the_same_thing_make_one_flag() -> None:
    transcript = heard(("seedy", 0.9), ("toe", 0.9), ("and", 0.9), ("thrush", 0.9))
    change = {"heard": "cedito", "support": -3.0}
    words = [w.model_copy(update=change) if n < 2 else w for n, w in enumerate(transcript.words)]
    seen = judged(fact("finding", "thrush", span=(14, 20)), transcript=transcript.model_copy(update={"words": words}))
    assert [flag.reason for flag in seen.flags] == ["Heard “cedito”, read as seedy toe; please listen."]


def test_a_horse_that_is_asked_about_already_is_not_asked_about_twice() -> None:
    transcript = reworded(-3.0, heard_as="larriber", at=0, words="Nullarbor thrush")
    asked = Flag(kind=FlagKind.HORSE, reason="Heard “larriber”, taken for Nullarbor; is that the horse?", span=(0, 9))
    seen = visit(fact("finding", "thrush", span=(10, 16))).model_copy(update={"flags": [asked]})
    (judged_visit,) = judge([seen], transcript)
    assert judged_visit.flags == [asked]


def test_the_flag_goes_to_the_visit_that_it_lies_nearest_to() -> None:
    transcript = reworded(-3.0, at=3, words="thrush and then keratoma near corns")
    first = visit(fact("finding", "thrush", span=(0, 6)))
    second = visit(fact("finding", "corn", span=(30, 35))).model_copy(update={"horse": "Otter"})
    assert [len(seen.flags) for seen in judge([first, second], transcript)] == [0, 1]
