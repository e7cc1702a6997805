"""Statements that take something back: the value, the foot, the finding, or all of it."""

from __future__ import annotations

from tests.generator.facts import Gold, Statement, Value, on_feet
from tests.generator.framing import sentence
from tests.generator.scene import FRONTS, Scene

_NUMBERS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]
_NOUNS = (
    ("thrush", "thrush"),
    ("a corn", "corn"),
    ("a bruise", "bruise"),
    ("an abscess", "abscess"),
    ("canker", "canker"),
    ("seedy toe", "white_line_disease"),
)


def value(scene: Scene) -> Statement:
    """ "Size one, no, make that size two", "six nails, sorry, seven nails"."""
    wrong, right = scene.chance.sample((4, 5, 6, 7, 8), 2)
    cue = scene.pick((", no,", ", sorry,", ", I mean", ", no, make that", ", wait,", ", correction,"))
    feet = scene.pick((FRONTS, scene.one_foot()))
    name, old, new = scene.name(feet), _NUMBERS[wrong - 3], _NUMBERS[right - 3]
    options: tuple[tuple[str, str, Value], ...] = (
        (f"{name} reset, {_NUMBERS[wrong]} nails{cue} {_NUMBERS[right]} nails", "nails", float(right)),
        (f"{name} reset, size {old}{cue} size {new}", "shoe_size", str(right - 3)),
        (f"{name} reset, size {old}{cue} {new}", "shoe_size", str(right - 3)),
    )
    text, slot, said = scene.pick(options)
    return Statement(sentence(text), (*on_feet(feet, "work", "reset"), *on_feet(feet, slot, said)), "value corrected")


def measure(scene: Scene) -> Statement:
    """ "Toe angle fifty two, no, fifty three degrees"."""
    feet = scene.one_foot()
    wrong, right = scene.chance.sample(("fifty", "fifty one", "fifty two", "fifty four"), 2)
    cue = scene.pick((", no,", ", sorry,", ", make that", ", I mean"))
    degrees = {"fifty": 50.0, "fifty one": 51.0, "fifty two": 52.0, "fifty four": 54.0}[right]
    text = f"{scene.name(feet)}, toe angle {wrong}{cue} {right} degrees"
    return Statement(sentence(text), on_feet(feet, "toe_angle", degrees), "measure corrected")


def foot(scene: Scene) -> Statement:
    """ "Thrush in the left hind, no, the right hind"."""
    noun, said = scene.pick(_NOUNS)
    wrong, right = scene.chance.sample(("LF", "RF", "LH", "RH"), 2)
    no = scene.pick(("no,", "sorry,", "no wait, that's", "I mean", "no, sorry,"))
    bare = no.removesuffix(" that's")
    text = scene.pick(
        (
            f"{noun} in {scene.the((wrong,))}, {no} {scene.the((right,))}",
            f"{scene.name((wrong,))}, {bare} {scene.name((right,))} has {noun}",
        )
    )
    return Statement(
        sentence(text), (Gold(right, "finding", said),), "foot corrected", taken_back=(Gold(wrong, "finding", said),)
    )


def finding(scene: Scene) -> Statement:
    """ "Left hind has a corn, no, a bruise"."""
    (wrong, slip), (right, said) = scene.chance.sample(_NOUNS, 2)
    feet = scene.one_foot()
    no = scene.pick(("no,", "sorry,", "no, make that", "I mean"))
    return Statement(
        sentence(f"{scene.name(feet)} has {wrong}, {no} {right}"),
        on_feet(feet, "finding", said),
        "finding corrected",
        taken_back=on_feet(feet, "finding", slip),
    )


def struck(scene: Scene) -> Statement:
    """ "Left hind has a corn. Scratch that. Left hind has a bruise"."""
    (wrong, slip), (right, said) = scene.chance.sample(_NOUNS, 2)
    feet = scene.one_foot()
    strike = scene.pick(("Scratch that.", "Strike that.", "No, forget that."))
    text = f"{sentence(f'{scene.name(feet)} has {wrong}')} {strike} {sentence(f'{scene.name(feet)} has {right}')}"
    return Statement(text, on_feet(feet, "finding", said), "struck", taken_back=on_feet(feet, "finding", slip))


CORRECTING = (value, measure, foot, finding, struck)
