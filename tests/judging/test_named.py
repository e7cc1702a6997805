"""Whether a heard name is believed."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.judging.named import doubt_of_horse, doubt_of_name
from pipeline.judging.spoken_names import SpokenNames
from pipeline.judging.surroundings import Surroundings
from pipeline.record import Flag, FlagKind, HorseMatch, RosterHorse, Transcript, Visit
from tests.judging.making import fact, heard


def named(match: HorseMatch, *flags: Flag) -> Visit:
    return Visit(horse="Marigold", horse_match=match, date=date(2026, 4, 14), flags=list(flags))


def test_a_new_horse_is_asked_about_since_its_name_was_spelt_by_ear() -> None:
    flag = doubt_of_name(named(HorseMatch.NEW), heard(("New", 0.9), ("horse,", 0.9), ("Marigold.", 0.99)))
    assert flag is not None
    assert (flag.kind, flag.reason, flag.quote, flag.span, flag.start, flag.end) == (
        FlagKind.HORSE, "A new horse, heard as “Marigold”; is that its name?", "Marigold", (11, 20), 1.0, 1.4,
    )  # fmt: skip


@pytest.mark.parametrize(("best", "asked"), [(0.44, True), (0.45, False), (0.9, False)])
def test_a_known_horse_is_asked_about_when_its_name_was_never_heard_well(best: float, asked: bool) -> None:
    talk = heard(("Marigold,", 0.1), ("trim.", 0.99), ("Marigold's", best))
    flag = doubt_of_name(named(HorseMatch.KNOWN), talk)
    assert (flag.reason if flag else None) == (
        "The name “Marigold” was hard to hear; is that the horse?" if asked else None
    )


def test_typed_names_and_those_already_asked_about_are_left_alone() -> None:
    assert doubt_of_name(named(HorseMatch.NEW), Transcript(text="Marigold.")) is None
    asked = Flag(kind=FlagKind.HORSE, reason="Which one?")
    assert told([named(HorseMatch.KNOWN, asked)], "Marigold", heard(("Marigold", 0.1))) == [None]


def told(
    visits: list[Visit], text: str, transcript: Transcript | None = None, roster: tuple[str, ...] = ()
) -> list[str | None]:
    """What is asked about the horse of each visit."""
    around, words = Surroundings(text), transcript or Transcript(text=text)
    names = SpokenNames(around, words, visits, [RosterHorse(name=name) for name in ("Marigold", *roster)])
    flags = [doubt_of_horse(one, visits, words, around, names) for one in visits]
    return [flag.reason if flag else None for flag in flags]


def visit_of(horse: str, facts: int) -> Visit:
    thrush = fact("finding", "thrush")
    return Visit(horse=horse, horse_match=HorseMatch.KNOWN, date=date(2026, 4, 14), facts=[thrush] * facts)


@pytest.mark.parametrize(("facts", "asked"), [(2, True), (3, False)])
def test_a_horse_of_which_hardly_anything_was_read_beside_another_may_only_be_spoken_of(
    facts: int, asked: bool
) -> None:
    reason = "Hardly anything was read of Biddy; was it there, or only spoken of?"
    visits = [visit_of("Marigold", 9), visit_of("Biddy", facts)]
    assert told(visits, "Marigold. Biddy ate my lunch.") == [None, reason if asked else None]
    assert told([visit_of("Biddy", facts)], "Biddy.") == [None]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("Fia first, lame on the off hind. Then Marigold, trimmed.", "Fia"),
        ("Fiagh first, lame on the off hind. Then Marigold, trimmed.", "Fiagh"),
        ("Marigold, trimmed. Fiadh is next week.", None),  # said as it is written: the reader has decided that
        ("Marigold, trimmed, fia or no fia.", None),  # not written as a name
        ("Marigold, trimmed, by the Lough.", None),
    ],
)
def test_a_word_that_sounds_like_a_horse_of_which_nothing_was_read_is_asked_about(text: str, said: str | None) -> None:
    reason = f"“{said}” may be Fiadh, of which nothing was read; is all of this Marigold's?" if said else None
    assert told([visit_of("Marigold", 9)], text, roster=("Fiadh",)) == [reason]


def test_a_word_nearer_to_a_horse_that_was_read_is_that_horse() -> None:
    assert told([visit_of("Rowan", 9)], "Rowan, trimmed. Rowans hinds too.", roster=("Roman",)) == [None]


def test_a_word_half_as_long_as_a_name_is_not_it() -> None:
    assert told([visit_of("Marigold", 9)], "Marigold, trimmed, and Del wants him back.", roster=("Teasel",)) == [None]


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("Marigold, no, hang on, Hopsack. Trimmed.", True),
        ("Hopsack, sorry, Marigold. Trimmed.", True),
        ("Marigold, trimmed all four and quiet for once. Off to see Hopsack now.", False),
    ],
)
def test_a_horse_named_beside_the_one_that_was_read_is_asked_about(text: str, asked: bool) -> None:
    reason = "“Hopsack” is said too, of which nothing was read; is all of this Marigold's?" if asked else None
    assert told([visit_of("Marigold", 9)], text, roster=("Hopsack",)) == [reason]


def test_in_heard_talk_another_name_is_asked_about_wherever_it_is_said() -> None:
    words = "Marigold, trimmed all four and quiet for once. Off to see Hopsack now."
    talk = heard(*((word, 0.9) for word in words.split()))
    reason = "“Hopsack” is said too, of which nothing was read; is all of this Marigold's?"
    assert told([visit_of("Marigold", 9)], words, talk, roster=("Hopsack",)) == [reason]


def test_a_name_that_stands_for_other_words_wherever_it_is_said_is_asked_about() -> None:
    talk = heard(("Merry", 0.9), ("gold.", 0.9), ("Marigold", 0.9))
    replaced = talk.model_copy(update={"words": [*talk.words[:2], talk.words[2].model_copy(update={"heard": "mary"})]})
    flag = doubt_of_name(named(HorseMatch.KNOWN), replaced)
    assert flag is not None
    assert flag.reason == "Heard “mary”, read as Marigold; is that the horse?"
    assert doubt_of_name(named(HorseMatch.KNOWN), talk) is None


@pytest.mark.parametrize(("words", "last"), [("Marigold, trimmed. Hopsacks the worry, lame.", "Hopsack")])
def test_in_heard_talk_a_name_with_an_s_behind_is_that_horse(words: str, last: str) -> None:
    talk = heard(*((word, 0.9) for word in words.split()))
    visits = [visit_of("Marigold", 9), visit_of(last, 1)]
    for transcript, expected in ((talk, last), (Transcript(text=words), "Marigold")):
        said = SpokenNames(Surroundings(words), transcript, visits, []).before(8)
        assert said is not None
        assert said.horse == expected
