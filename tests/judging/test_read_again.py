"""What the second reader takes otherwise is asked about; no fact is changed by it."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from pipeline.judging import judge
from pipeline.judging.model import Care
from pipeline.judging.read_again import feet_left_out, read_otherwise
from pipeline.judging.second_reader import OF_FEET, STATUSES, SecondReader, View
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Fact, FlagKind, Status, Transcript, Visit
from tests.judging.making import fact, visit

TEXT = "Wickham. Full pads in front."
PLAN = "By the words around it this may be for a later day; it was read as there or done today. Which is it?"
HARDLY = "The words hardly seem to tell of this foot; is it the left fore?"


def left_out_of(feet: str) -> str:
    return f"More may be meant here than the feet that were read: {feet}; was something missed?"


def view(status: Status = Status.PRESENT, sure: float = 0.9, **feet: float) -> View:
    """A view that is so sure of a status, the rest being the first other one's, and of the feet that are given."""
    other = next(one for one in STATUSES if one is not status)
    statuses = (sure if one is status else 1 - sure if one is other else 0.0 for one in STATUSES)
    return View((*statuses, 0.0), tuple(feet.get(str(foot), 0.5) for foot in OF_FEET))


def pads(foot: str | None = "LF", value: str = "full") -> Fact:
    return fact("pad", value, foot, span=(9, 18), quote="Full pads")


def test_it_tells_the_likeliest_other_status() -> None:
    assert read_otherwise(pads(), view(Status.PLANNED, 0.61)) == PLAN
    assert read_otherwise(pads(), view(Status.PLANNED, 0.21)) == PLAN
    assert read_otherwise(pads(), None) is None


def test_what_it_has_hardly_in_mind_it_does_not_tell() -> None:
    assert read_otherwise(pads(), view(Status.PLANNED, 0.19)) is None
    nothing = View((0.1, 0.0, 0.0, 0.0, 0.0, 0.4, 0.5), (0.5,) * 5)  # more likely that nothing of the kind was meant
    assert read_otherwise(pads(), nothing) is None


def left_out(facts: Sequence[Fact], *views: View, care: Care = Care.USUAL) -> list[str]:
    known = {id(one): seen for one, seen in zip(facts, views, strict=True)}
    flags = list(feet_left_out(facts, facts, known, Transcript(text=TEXT), care))
    assert all((flag.kind, flag.quote) == (FlagKind.NOT_UNDERSTOOD, "Full pads") for flag in flags)
    return [flag.reason for flag in flags]


def test_a_foot_left_out_is_asked_about_once() -> None:
    both = [pads("LF"), pads("LF", "rim")]
    assert left_out(both, view(RF=0.96), view(RF=0.99)) == [left_out_of("the right fore")]
    assert left_out([pads("LF")], view(RF=0.94)) == []
    several = left_out_of("the right fore and the left hind")
    assert left_out([pads("LF")], view(RF=0.96, LH=0.97)) == [several]


@pytest.mark.parametrize(("care", "chance"), [(Care.STRICT, 0.9), (Care.USUAL, 0.95), (Care.FAST, 0.98)])
def test_a_foot_left_out_by_care(care: Care, chance: float) -> None:
    assert len(left_out([pads("LF")], view(RF=chance + 0.001), care=care)) == 1
    assert left_out([pads("LF")], view(RF=chance - 0.001), care=care) == []


def test_a_foot_of_which_that_was_read_is_not_asked_about() -> None:
    assert left_out([pads("LF"), pads("RF", "rim")], view(RF=0.99), view(LF=0.99)) == []
    assert left_out([pads(None)], view(RF=0.99)) == []  # the horse's, or no foot was understood, which is asked anyway


class Sure(SecondReader):
    """A second reader that takes everything for planned, and for the off fore's too."""

    def __init__(self) -> None:
        pass

    def views(self, around: Surroundings, facts: Sequence[Fact]) -> dict[int, View]:
        return {id(one): view(Status.PLANNED, 0.99, LF=0.9, RF=0.99) for one in facts}


def test_judging_asks_and_changes_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("pipeline.judging.features.second_reader", Sure)
    given = fact("finding", "thrush", "LF", span=(9, 15), quote="Thrush")
    (seen,) = judge([visit(given)], Transcript(text="Wickham. Thrush in front."))
    (one,) = seen.facts
    assert (one.foot, one.value, one.status, one.flagged, one.reasons) == ("LF", "thrush", Status.PRESENT, True, [PLAN])
    assert one.confidence < 0.75
    assert left_out_of("the right fore") in [flag.reason for flag in seen.flags]


def test_a_fact_on_a_foot_of_which_the_words_hardly_tell_is_asked_about(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("pipeline.judging.features.second_reader", Elsewhere)
    given = fact("finding", "thrush", "LF", span=(9, 15), quote="Thrush", rules=["foot: named beside it"])
    (one,) = judge([visit(given)], Transcript(text="Wickham. Thrush in front."))[0].facts
    assert (one.flagged, one.reasons) == (True, [HARDLY])


class Elsewhere(SecondReader):
    """A second reader that takes everything for today's, but hardly on the near fore."""

    def __init__(self) -> None:
        pass

    def views(self, around: Surroundings, facts: Sequence[Fact]) -> dict[int, View]:
        return {id(one): view(Status.PRESENT, 1.0, LF=0.001, RF=0.6) for one in facts}


def asked_of(text: str, *visits: Visit) -> list[str]:
    return [flag.reason for seen in judge(visits, Transcript(text=text)) for flag in seen.flags]


def test_what_another_horse_has_from_the_same_words_was_not_missed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("pipeline.judging.features.second_reader", Sure)
    text = "Wickham and Tolly. Thrush in front."
    one, other = (fact("finding", "thrush", foot, span=(19, 25)) for foot in ("LF", "RF"))
    assert left_out_of("the right fore") in asked_of(text, visit(one))
    assert left_out_of("the right fore") not in asked_of(text, visit(one), visit(other))


@pytest.mark.parametrize("span", [(0, 0), (900, 910)])
def test_of_words_that_are_not_there_no_foot_is_missed(span: tuple[int, int], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("pipeline.judging.features.second_reader", Sure)
    assert left_out_of("the right fore") not in asked_of(TEXT, visit(fact("pad", "full", "LF", span=span)))


def test_of_another_language_no_foot_is_missed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("pipeline.judging.features.second_reader", Sure)
    text = "Vorne links vier nails auf jeder Seite, hinten rechts ist der Strahl etwas faul."
    assert left_out_of("the right fore") not in asked_of(text, visit(fact("nails", 4.0, "LF", span=(12, 22))))
