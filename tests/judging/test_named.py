"""Whether a heard name is believed."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.judging.named import doubt_of_name
from pipeline.record import Flag, FlagKind, HorseMatch, Transcript, Visit
from tests.judging.making import heard


def named(match: HorseMatch, *flags: Flag) -> Visit:
    return Visit(horse="Marigold", horse_match=match, date=date(2026, 4, 14), flags=list(flags))


def test_a_new_horse_is_asked_about_since_its_name_was_spelt_by_ear() -> None:
    flag = doubt_of_name(named(HorseMatch.NEW), heard(("New", 0.9), ("horse,", 0.9), ("Marigold.", 0.99)))
    assert flag is not None
    assert (flag.kind, flag.reason, flag.quote, flag.span, flag.start, flag.end) == (
        FlagKind.HORSE, "A new horse, heard as “Marigold”; is that its name?", "Marigold", (11, 20), 1.0, 1.4,
    )  # fmt: skip


@pytest.mark.parametrize(("best", "asked"), [(0.34, True), (0.35, False), (0.9, False)])
def test_a_known_horse_is_asked_about_when_its_name_was_never_heard_well(best: float, asked: bool) -> None:
    talk = heard(("Marigold,", 0.1), ("trim.", 0.99), ("Marigold's", best))
    flag = doubt_of_name(named(HorseMatch.KNOWN), talk)
    assert (flag.reason if flag else None) == (
        "The name “Marigold” was hard to hear; is that the horse?" if asked else None
    )


def test_typed_names_and_those_already_asked_about_are_left_alone() -> None:
    assert doubt_of_name(named(HorseMatch.NEW), Transcript(text="Marigold.")) is None
    asked = Flag(kind=FlagKind.HORSE, reason="Which one?")
    assert doubt_of_name(named(HorseMatch.KNOWN, asked), heard(("Marigold", 0.1))) is None
