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
        ("I left the hot bars on her", "hot", "heart"),
        ("a boss shoe on the off fore", "boss", "bar"),
        ("They were leather lost time and", "lost", "last"),
        ("a three, lost spring, she's sound", "lost", "last"),
        ("Cresty neck far.", "far", "four"),
        ("Mud fever on the far feet.", "far", "four"),
        ("A new set on the fore, rim shoes, a three in front and a two behind.", "fore", "four"),
        ("Seven in the hinds, toe clips on the fore.", "fore", "four"),
        ("Seven nails in the far.", "far", "four"),
        ("Bess's fore trimmed, and she's sound.", "fore", "four"),
        ("A leather pad on it, oak a minute.", "oak a minute", "oakum in it"),
        ("Seven nails in the fore.", "fore", "four"),
        ("Thrush in the nail hind", "nail", "near"),
        ("in each, which pad on both", "which", "wedge"),
        ("Soaked it, pulse and a bandage.", "pulse", "poultice"),
        ("The wall's a week on both fronts", "a week", "weak"),
        ("No puncture, heat an abscess in it", "heat", "he'd"),
        ("Near fore, heat a corn there last time", "heat", "he'd"),
        ("She foundered two falls a go, and", "a go", "ago"),
        ("In October, apple three at the time", "apple", "obel"),
        ("He was when out of five", "when", "one"),
        ("Lameness is to out of 5 today", "to", "two"),
        ("Body score ate out of nine", "ate", "eight"),
        ("She walked out to a five lame.", "to a five", "two of five"),
        ("She was a free at Christmas", "free", "three"),
        ("three out of five laym on the near hind", "laym", "lame"),
        ("She is deadly on the left hind.", "deadly", "dead lame"),
        ("New still shoes all round", "still", "steel"),
        ("in new planes, steel, size one", "planes", "plain"),
        ("we'll put a bar she on it", "she", "shoe"),
        ("eight nails afoot, road nails", "afoot", "a foot"),
        ("The hinds event sheared heels", "event", "haven't"),
        ("size one with boredom. Next", "boredom", "borium"),
        ("There's well lost at the toe", "well lost", "wall loss"),
        ("A quarter track in the off fore", "track", "crack"),
        ("cut at the heel build of the near fore", "build", "bulb"),
        ("The pasture nexus is broken", "pasture nexus", "pastern axis"),
        ("Crusty neck four", "crusty neck", "cresty neck"),
        ("He has a regular in both fores", "a regular", "navicular"),
        ("a puncture in the aught hind", "aught", "off"),
        ("No thrush, no cedito either", "cedito", "seedy toe"),
        ("might be a catomy at the toe", "catomy", "keratoma"),
        ("I quick the left fore", "quick", "quicked"),
        ("in the foot, that if she's not walking better", "that", "vet"),
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
        "Sixes on the fore, fives on the hind.",
        "Fives on the hind, and sixes on the fore.",
        "The shoes in the far van",
        "The near fore trimmed short",
        "The oak is down, a minute from the gate.",
        "Clips on the fore feet.",
        "Seven in the near fore.",
        "She likes an apple.",
        "Let him have a go, and I held her.",
        "He was still new in front.",
        "The plane is late.",
        "When he's out, she comes in.",
        "Is that if she's well?",
        "A regular visit in June",
        "They went back to a five week cycle.",
        "The event is on Saturday.",
        "Give me a free hand.",
        "The track is hard.",
        "He lost the shoe and we lost a day.",
        "The boss asked for it hot, and the bar was shut.",
        "Swelling at the neck far back",
        "The far gate, which pads the walk by a mile.",
        "Nail in the hind, a raised pulse and a bit of heat.",
        "The wall in a week or so, in heat an hour.",
    ],
)
def test_everyday_talk_is_left_alone(text: str) -> None:
    assert found(text) == []
