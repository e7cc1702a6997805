"""Sentences changed in a way whose effect is known: the facts must change just so."""

from __future__ import annotations

import re

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pipeline.record import WORDED_SLOTS
from tests.reading.conftest import Read
from tests.reading.telling import line, told

MODEST = settings(max_examples=100, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
MEMOS = (
    "Near fore has a bruise on the sole, off fore has none. Reset both fronts, three nails a side.",
    "Left hind next. Bit of thrush in the frog. Right hind too. Iodine in both.",
    "Trimmed the hinds and left them bare. Right front lost, nailed it back on, seven nails.",
    "Corn in the left front, sorry, right front, inside heel. No heat in the left hind.",
    "Off hind, possible abscess. Near hind, the crack has grown out. Full pads on the off fore next time.",
    "Toe angle fifty two degrees left front and fifty three degrees right front.",
    "Testers positive on the left front, nothing on the right. Pulse bounding in the left front.",
)
SWAP = {"left": "right", "right": "left", "near": "off", "off": "near"}
TURNED = {"LF": "RF", "RF": "LF", "LH": "RH", "RH": "LH", None: None}
SIDES = re.compile(r"\b(?:left|right|near|off)\b(?= (?:front|fore|hind)|[.,])", re.IGNORECASE)


def mirrored(text: str) -> str:
    """``text`` with the words of side exchanged where a foot is named."""

    def turn(match: re.Match[str]) -> str:
        word = SWAP[match[0].lower()]
        return word.capitalize() if match[0][0].isupper() else word

    return SIDES.sub(turn, text)


def rows(read: Read, text: str) -> list[tuple[str | None, str]]:
    (visit,) = read(text)
    return [(fact.foot, line(fact)) for fact in visit.facts]


@pytest.mark.parametrize("text", MEMOS)
def test_exchanged_sides_exchange_the_feet_and_nothing_else(text: str, read: Read) -> None:
    assert mirrored(text) != text
    turned = sorted((str(TURNED[foot]), said) for foot, said in rows(read, text))
    assert turned == sorted((str(foot), said) for foot, said in rows(read, mirrored(text)))


NAMES = {"left": "LF", "right": "RF", "near": "LF", "off": "RF"}
SPOKEN = [name.replace("_", " ") for name in ("thrush", "flare", "corn", "abscess", "bruise", "heat", "canker",
                                              "keratoma", "puncture", "laminitis", "swelling", "crack")]  # fmt: skip


@given(st.sampled_from(SPOKEN), st.sampled_from(sorted(NAMES)), st.sampled_from(["front", "fore", "hind"]))
@MODEST
def test_no_denies_and_its_absence_asserts(read: Read, finding: str, side: str, pair: str) -> None:
    foot = NAMES[side][0] + ("H" if pair == "hind" else "F")
    assert finding.replace(" ", "_") in WORDED_SLOTS["finding"]
    value = finding.replace(" ", "_")
    assert told(read(f"No {finding} in the {side} {pair}.")[0]) == [f"{foot} finding {value} absent"]
    assert told(read(f"There is {finding} in the {side} {pair}.")[0]) == [f"{foot} finding {value}"]
    assert told(read(f"Maybe {finding} in the {side} {pair}.")[0]) == [f"{foot} finding {value} suspected"]


@given(st.lists(st.sampled_from(SPOKEN), min_size=2, max_size=5, unique=True))
@MODEST
def test_a_denied_list_denies_each(read: Read, findings: list[str]) -> None:
    listed = f"{', '.join(findings[:-1])} or {findings[-1]}"
    (visit,) = read(f"Left hind has no {listed}.")
    assert told(visit) == sorted(f"LH finding {f.replace(' ', '_')} absent" for f in findings)


@given(st.sampled_from(MEMOS), st.sampled_from(MEMOS))
@MODEST
def test_a_second_horse_changes_nothing_about_the_first(read: Read, one: str, other: str) -> None:
    alone = read(f"Tansy. {one}", "Tansy", "Fennel")[0]
    together = read(f"Tansy. {one} Next up Fennel. {other}", "Tansy", "Fennel")
    assert [visit.horse for visit in together] == ["Tansy", "Fennel"]
    assert told(together[0]) == told(alone)
    assert told(together[1]) == told(read(f"Fennel. {other}", "Tansy", "Fennel")[0])


@given(st.sampled_from(MEMOS), st.sampled_from(["Um, ", "Right, ", "Okay, ", "So, ", "Well, "]))
@MODEST
def test_an_opening_word_changes_nothing(read: Read, text: str, opener: str) -> None:
    assert rows(read, opener + text[0].lower() + text[1:]) == rows(read, text)
