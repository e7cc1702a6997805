"""Statements of what was measured or felt: lengths, angles, testers, the digital pulse, the nail line."""

from __future__ import annotations

from tests.generator.facts import Gold, Statement, on_feet
from tests.generator.framing import sentence
from tests.generator.scene import Scene

_TENS = ["zero", "ten", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"]
_ONES = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]
_FRACTIONS = (
    ("and a quarter", 0.25),
    ("and a half", 0.5),
    ("and three quarters", 0.75),
    ("and an eighth", 0.125),
    ("and five eighths", 0.625),
)
_LENGTHS = (
    ("toe length", "toe_length", 76, 99),
    ("heel height", "heel_height", 25, 55),
    ("hoof width", "hoof_width", 90, 99),
    ("sole depth", "sole_depth", 20, 25),
)
_ANGLES = (("toe angle", "toe_angle"), ("heel angle", "heel_angle"))
_TESTED = (("positive", "positive"), ("mild", "mild"), ("moderate", "moderate"), ("strong", "strong"))
_ZONES = (
    ("at the toe", "toe"),
    ("at the heel", "heel"),
    ("over the frog", "frog"),
    ("at the medial heel", "medial_heel"),
    ("across the sole", "sole"),
)
_PULSES = (
    ("is up", "raised"),
    ("is raised", "raised"),
    ("is bounding", "bounding"),
    ("is normal", "normal"),
    ("is strong", "raised"),
)


def said_number(number: int) -> str:
    """A number from 20 to 99 in words, with no hyphen, as a recogniser writes it."""
    tens, ones = divmod(number, 10)
    return _TENS[tens] if ones == 0 else f"{_TENS[tens]} {_ONES[ones]}"


def angle(scene: Scene) -> Statement:
    """ "Left fore, toe angle fifty two degrees, heel angle fifty." """
    feet = scene.one_foot()
    toe, heel = scene.chance.randrange(45, 58), scene.chance.randrange(42, 56)
    first, second = (f"toe angle {said_number(toe)} degrees", f"heel angle {said_number(heel)} degrees")
    text, facts = scene.pick(
        (
            (f"{scene.name(feet)}, {first}, {second}", (("toe_angle", toe), ("heel_angle", heel))),
            (f"{first} on {scene.the(feet)}", (("toe_angle", toe),)),
            (f"{scene.name(feet)} {second}", (("heel_angle", heel),)),
            (f"toe angle on {scene.the(feet)} is {toe} degrees", (("toe_angle", toe),)),
        )
    )
    return Statement(sentence(text), tuple(Gold(feet[0], slot, float(value)) for slot, value in facts), "angle")


def metric(scene: Scene) -> Statement:
    """ "Toe length eighty eight millimetres near fore, eighty six off fore." """
    name, slot, low, high = scene.pick(_LENGTHS)
    one, other = scene.chance.randrange(low, high), scene.chance.randrange(low, high)
    first, second = scene.pair()
    first_said, other_said = said_number(one), said_number(other)
    unit = scene.pick(("millimetres", "millimeters", "mil"))
    text, values = scene.pick(
        (
            (
                f"{name} {first_said} {unit} {scene.name((first,))}, {other_said} {scene.name((second,))}",
                ((first, one), (second, other)),
            ),
            (
                f"{scene.name((first,))} {name} {first_said} {unit}, {scene.name((second,))} {other_said}",
                ((first, one), (second, other)),
            ),
            (f"{scene.name((first,))}, {name} {one} {unit}", ((first, one),)),
            (f"{name} is {first_said} {unit} on {scene.the((first,))}", ((first, one),)),
        )
    )
    return Statement(sentence(text), tuple(Gold(foot, slot, float(value)) for foot, value in values), "millimetres")


def inches(scene: Scene) -> Statement:
    """ "Toe length is three and a quarter inches on both fronts." """
    name, slot, whole = scene.pick(
        (("toe length", "toe_length", 3), ("hoof width", "hoof_width", 5), ("heel height", "heel_height", 1))
    )
    said, part = scene.pick(_FRACTIONS)
    feet = scene.some_feet()
    value = (whole + part) * 25.4
    text = scene.pick(
        (
            f"{name} is {_ONES[whole]} {said} inches on {scene.the(feet)}",
            f"{scene.name(feet)}, {name} {_ONES[whole]} {said} inches",
            f"{name} {_ONES[whole]} {said} inches {scene.name(feet)}",
        )
    )
    return Statement(sentence(text), on_feet(feet, slot, value), "inches")


def thin(scene: Scene) -> Statement:
    """ "Sole depth is three eighths of an inch on both fronts." """
    said, value = scene.pick(
        (
            ("half an inch", 12.7),
            ("three eighths of an inch", 9.5),
            ("a quarter inch", 6.4),
            ("five eighths of an inch", 15.9),
        )
    )
    feet = scene.some_feet()
    text = scene.pick((f"sole depth is {said} on {scene.the(feet)}", f"{scene.name(feet)}, sole depth {said}"))
    return Statement(sentence(text), on_feet(feet, "sole_depth", value), "part of an inch")


def tested(scene: Scene) -> Statement:
    """ "Testers strong at the toe on the left fore", "no reaction to the testers"."""
    feet = scene.some_feet()
    (word, value), (where, zone) = scene.pick(_TESTED), scene.pick(_ZONES)
    name, the = scene.name(feet), scene.the(feet)
    text, said, place = scene.pick(
        (
            (f"testers {word} {where} on {the}", value, zone),
            (f"{name}, testers {word} {where}", value, zone),
            (f"testers {word} on {the}", value, None),
            (f"no reaction to the testers on {the}", "none", None),
            (f"testers got nothing on {the}", "none", None),
            (f"{name}, nothing to the testers", "none", None),
            (f"testers, nothing on {the}", "none", None),
        )
    )
    return Statement(sentence(text), on_feet(feet, "tester", said, place), "tested")


def tested_two(scene: Scene) -> Statement:
    """ "Testers mild over the frog on the left fore, nothing on the right fore." """
    one, other = scene.pair() if scene.chance.random() < 0.5 else reversed(scene.pair())
    (word, value), (where, zone) = scene.pick(_TESTED), scene.pick(_ZONES)
    first, second = scene.the((one,)), scene.the((other,))
    text, facts = scene.pick(
        (
            (
                f"testers {word} {where} on {first}, nothing on {second}",
                (Gold(one, "tester", value, zone), Gold(other, "tester", "none")),
            ),
            (
                f"testers {word} on {first}, clear on {second}",
                (Gold(one, "tester", value), Gold(other, "tester", "none")),
            ),
            (
                f"no reaction to the testers on {first}, {word} on {second}",
                (Gold(one, "tester", "none"), Gold(other, "tester", value)),
            ),
        )
    )
    return Statement(sentence(text), facts, "tested on two feet")


def pulse(scene: Scene) -> Statement:
    """ "Digital pulse is bounding in the left fore", "pulse raised in both fronts, normal in both hinds"."""
    feet = scene.some_feet()
    said, value = scene.pick(_PULSES)
    text = scene.pick(
        (
            f"pulse {said} in {scene.the(feet)}",
            f"{scene.name(feet)}, digital pulse {said}",
            f"digital pulse in {scene.the(feet)} {said}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "pulse", value), "pulse")


def pulse_two(scene: Scene) -> Statement:
    """ "Pulse bounding in the left fore, normal in the right fore"."""
    one, other = scene.pair()
    word, value = scene.pick((("bounding", "bounding"), ("raised", "raised"), ("up", "raised")))
    text = f"pulse {word} in {scene.the((one,))}, normal in {scene.the((other,))}"
    return Statement(sentence(text), (Gold(one, "pulse", value), Gold(other, "pulse", "normal")), "pulse on two feet")


def nail_line(scene: Scene) -> Statement:
    """ "Nail line is a bit low on the left fore." """
    feet = scene.some_feet()
    said, value = scene.pick((("good", "good"), ("low", "low"), ("a bit low", "low"), ("nice and high", "good")))
    text = scene.pick((f"nail line is {said} on {scene.the(feet)}", f"{scene.name(feet)}, nail line {said}"))
    return Statement(
        sentence(text), tuple(Gold(foot, "nail_line", value, severity="open") for foot in feet), "nail line"
    )


MEASURING = (angle, metric, inches, thin, tested, tested, tested_two, pulse, pulse_two, nail_line)
