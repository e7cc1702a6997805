"""Words that sound the same as the trade's, told apart by what stands beside them; everyday talk is left alone."""

from __future__ import annotations

import pytest

from pipeline.hearing.same_sound import same_sounding

MARKS = ".,?!;:"


def found(text: str) -> list[tuple[str, str]]:
    words = text.split()
    plain = [word.strip(MARKS).lower() for word in words]
    marks = [word[len(word.rstrip(MARKS)) :] for word in words]
    return [(" ".join(plain[first:last]), wording) for first, last, wording in same_sounding(plain, marks)]


@pytest.mark.parametrize(
    ("text", "heard", "wording"),
    [
        ("Pulse raised in both fours, normal behind.", "fours", "fores"),
        ("rotation in the off four, about five degrees", "four", "fore"),
        ("rotation in the off-four.", "off-four", "off fore"),
        ("Either four. None.", "four", "fore"),
        ("Quarter clips. For a side, fives.", "for", "four"),
        ("Fidgety as always. For weeks.", "for", "four"),
        ("Trimmed the fore. Slight flare.", "fore", "four"),
        ("Look at him, do weeks.", "do", "two"),
        ("Trimmed the fronts, hinds two. Contracted heels", "two", "too"),
        ("In front, aluminum, poor in pads.", "poor", "pour"),
        ("Hoof with 128 near fore", "with", "width"),
        ("Mulga's flat sold on both fronts", "sold", "soled"),
        ("So I dined in that hole", "i dined", "iodine"),
        ("A bruise at the dough.", "dough", "toe"),
        ("He'll angles 44", "he'll", "heel"),
        ("To length 90", "to", "toe"),
        ("no CD to either", "cd to", "seedy toe"),
        ("six nails a piece.", "a piece", "apiece"),
        ("Heels are under on both fronts", "under on", "underrun"),
        ("Off hind has shared heels.", "shared", "sheared"),
        ("Six for the mayor.", "mayor", "mare"),
        ("Same shoe nail back on", "nail", "nailed"),
        ("might have prick him", "prick", "pricked"),
        ("free weeks", "free", "three"),
        ("New hard bars on both", "hard", "heart"),
    ],
)
def test_the_trades_word_is_offered(text: str, heard: str, wording: str) -> None:
    assert found(text) == [(heard, wording)]


@pytest.mark.parametrize(
    "text",
    [
        "Left four nails in it.",
        "Both 4 nails each.",
        "Lame for weeks now.",
        "He's been off for weeks.",
        "Nails for the hinds.",
        "Went down to the door with him.",
        "Two in front, two behind.",
        "Sold him on.",
        "I dined with the owner.",
        "Trimmed fore and aft",
        "The free end of the lane",
        "Poor in condition",
    ],
)
def test_everyday_talk_is_left_alone(text: str) -> None:
    assert found(text) == []
