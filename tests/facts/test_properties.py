"""What must hold for every text: nothing raises, quotes are true, sides never swap, numbers come back as spoken."""

from __future__ import annotations

import re
from datetime import date
from fractions import Fraction

import pint
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from num2words import num2words

from pipeline.reading import Reader
from pipeline.reading.lengths import MM_PER_UNIT
from pipeline.reading.numbers import NumberReader
from pipeline.record import SHOE_SIZES, RosterHorse, Transcript, shoe_size_value
from pipeline.vocabulary import load_vocabulary

NUMBERS = NumberReader(load_vocabulary().spoken("numbers"))
QUIET = settings(
    max_examples=150, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
_TALK = """left right front hind near off fore fronts hinds all four thrush corn crack heat no not none possible size
    one two aught nails a side three degree wedge pads testers nothing mild strong pulse bounding reset trimmed new
    shoes if we'll last time gone weeks six sorry wait make that scratch and but , . in on the toe heel Bramble Otter
    Then toe length inches and a quarter half"""
WORDS = _TALK.split()


def values(text: str) -> list[Fraction]:
    return [n.value for n in NUMBERS.find(text.replace("-", " ").replace(",", "").split())]


@pytest.mark.parametrize("number", range(1, 200))
def test_cardinals_come_back(number: int) -> None:
    spoken = num2words(number)
    assert values(f"it is {spoken} nails") == [Fraction(number)]


PARTS = {"a half": (1, 2), "three eighths": (3, 8), "five eighths": (5, 8), "an eighth": (1, 8), "a quarter": (1, 4)}


@given(st.integers(1, 30), st.sampled_from([(name, Fraction(*part)) for name, part in PARTS.items()]))
@QUIET
def test_mixed_numbers_come_back(whole: int, part: tuple[str, Fraction]) -> None:
    assert values(f"{num2words(whole)} and {part[0]} inches") == [whole + part[1]]


@given(st.integers(1, 40), st.integers(0, 7))
@QUIET
def test_inches_agree_with_pint(whole: int, eighths: int) -> None:
    inches = Fraction(whole) + Fraction(eighths, 8)
    wanted = pint.UnitRegistry().Quantity(float(inches), "inch").to("mm").magnitude
    assert float(inches * MM_PER_UNIT["inch"]) == pytest.approx(wanted)


def test_sizes_are_in_order() -> None:
    # 000 < 00 < 0 < 1: common practice, no source
    assert SHOE_SIZES.index("000") < SHOE_SIZES.index("00") < SHOE_SIZES.index("0") < SHOE_SIZES.index("1")
    assert shoe_size_value("00-0")
    assert not shoe_size_value("0-00")


@given(st.one_of(st.text(max_size=400), st.lists(st.sampled_from(WORDS), max_size=60).map(" ".join)))
@QUIET
def test_no_text_breaks_the_reader(reader: Reader, text: str) -> None:
    roster = [RosterHorse(name="Bramble"), RosterHorse(name="Otter")]
    for visit in reader.read(Transcript(text=text), roster, date(2026, 5, 12)):
        for fact in visit.facts:
            assert text[fact.span[0] : fact.span[1]] == fact.quote


# A side that names no foot is a verb ("left it") or an opener ("right, then"), and these are no mirror of each other.
_STRAY = re.compile(r"(?<!the )\b(?:left|right)\b(?! (?:front|fore|hind|back|rear)\b) ?")


@given(st.lists(st.sampled_from(WORDS), min_size=3, max_size=40).map(" ".join))
@QUIET
def test_mirrored_words_give_mirrored_feet(reader: Reader, text: str) -> None:
    """ "Left" for "right" (and "near" for "off") turns every foot to the other side and changes nothing else."""
    swap = {"left": "right", "right": "left", "near": "off", "off": "near"}
    if {"near", "off"} & set(text.split()):
        text = text.replace("near ", "left ").replace("off ", "right ")
    text = _STRAY.sub("", text)
    mirrored = " ".join(swap.get(word, word) for word in text.split(" "))
    one, other = (
        [f for v in reader.read(Transcript(text=t), [], date(2026, 5, 12)) for f in v.facts] for t in (text, mirrored)
    )
    turn = {"LF": "RF", "RF": "LF", "LH": "RH", "RH": "LH", None: None}
    turned = sorted((str(turn[f.foot]), f.slot, str(f.value), str(f.status)) for f in one)
    assert turned == sorted((str(f.foot), f.slot, str(f.value), str(f.status)) for f in other)
