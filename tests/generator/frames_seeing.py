"""Frames for the forms of what is seen and felt: findings, places, degrees, testers, pulse, going, manner."""

from __future__ import annotations

import re

from tests.generator.facts import OPEN, Gold, of_horse, on_feet
from tests.generator.framing import Framed, degree, filled, sentence
from tests.generator.scene import FRONTS, HINDS, Feet, Scene

_OF_FEET = re.compile(r"\b(front|fronts|fore|fores|hind|hinds|behind|heels?|quarters?|feet|foot|leg|it|weight)\b")
_SIDES = {"inside": "medial", "medial": "medial", "outside": "lateral", "lateral": "lateral"}


def finding(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, thrushy." """
    feet = scene.one_foot()
    text = sentence(f"{scene.name(feet)}, {filled(form)}")
    side = {_SIDES[word] for word in filled(form).split() if word in _SIDES} if canonical == "imbalance" else set()
    place = next(iter(side)) if len(side) == 1 else None
    return Framed(text, (Gold(feet[0], "finding", canonical, zone=place, severity=degree(filled(form))),))


def warmth(scene: Scene, canonical: str, form: str) -> Framed:
    """ "The left hind is hot." """
    feet = scene.one_foot()
    return Framed(sentence(f"{scene.the(feet)} is {form}"), (Gold(feet[0], "finding", canonical),))


def zone(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, bruise, outside quarter." """
    feet = scene.one_foot()
    where = form if form.startswith(("on ", "quarter on", "heel on", "inside", "outside")) else f"at the {form}"
    if form.endswith("ly") or where.endswith(("inside", "outside")):
        where = form
    text = sentence(f"{scene.name(feet)}, bruise, {where}")
    return Framed(text, (Gold(feet[0], "finding", "bruise", zone=canonical),))


def severity(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, thrush, moderate." or, where the form wants its noun, "A touch of thrush." """
    feet = scene.one_foot()
    noun = "bruise" if form.split()[-1] == "a" else "thrush"
    leading = form.split()[-1] in ("a", "of", "with")
    said = f"{form} {noun}" if leading else f"{noun}, {form}"
    return Framed(sentence(f"{scene.name(feet)}, {said}"), (Gold(feet[0], "finding", noun, severity=canonical),))


def tester(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Testers on the left hind, jumped out of his skin." """
    feet = scene.one_foot()
    text = sentence(f"testers on {scene.the(feet)}, {filled(form)}")
    return Framed(text, (Gold(feet[0], "tester", canonical, severity=OPEN),))


def tester_head(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, hoof testers, no reaction." """
    feet = scene.one_foot()
    return Framed(sentence(f"{scene.name(feet)}, {form}, no reaction"), (Gold(feet[0], "tester", "none"),))


def pulse(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Left fore, pulse bounding away." """
    if form.startswith(("no ", "not a ", "nothing ")) or "..." in form:
        return None
    feet = scene.one_foot()
    return Framed(sentence(f"{scene.name(feet)}, pulse {form}"), (Gold(feet[0], "pulse", canonical, severity=OPEN),))


def pulse_head(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left fore, digital pulse raised." """
    feet = scene.one_foot()
    return Framed(sentence(f"{scene.name(feet)}, {form} raised"), (Gold(feet[0], "pulse", "raised"),))


def shoe_state(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Left fore, cast a shoe." """
    if plural_shoes(form):
        return None
    feet: Feet = scene.one_foot()
    if "front" in form:
        feet = (scene.pick(FRONTS),)
    if "hind" in form:
        feet = (scene.pick(HINDS),)
    text = sentence(f"{scene.name(feet)}, {filled(form, 'the shoe')}")
    return Framed(text, (Gold(feet[0], "shoe_state", canonical, severity=OPEN),))


def plural_shoes(form: str) -> bool:
    """Whether a form tells a habit or several shoes, which is no finding of one foot today."""
    return bool(re.search(r"\b(shoes|loses|throws|casts|losing|throwing|casting|losing)\b", form)) or form.startswith(
        "had "
    )


def gait(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Up the yard, stepping short." A form that names a part of the leg is left out: it may or may not be a foot."""
    if _OF_FEET.search(form):
        return None
    return Framed(sentence(f"up the yard, {filled(form)}"), (Gold(None, "gait", canonical, severity=OPEN),))


def manner(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Today, stood like a rock." """
    return Framed(sentence(f"today, {filled(form)}"), (Gold(None, "manner", canonical, severity=OPEN),))


def not_fact(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Somebody was on about wire mesh." A form that breaks off is left out."""
    if re.search(r" (a|the|his|her|some|my|from|in|as|to|of|on|for|out|me|like|i)$", form):
        return None
    if form.startswith("gone "):  # a participle: nobody is "on about gone quiet", which says "about gone" besides
        return Framed(sentence(f"the lads had {form}"), ())
    return Framed(sentence(f"somebody was on about {filled(form)}"), ())


def vet(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Note for the owner, one for the vet." What somebody did already is left out: it may be over."""
    if re.match(r"(\w+ed|rang|rung|sent)\b", form) and not form.startswith(("need", "seen", "referr")):
        return None
    if form.endswith(("ought to", " if", "get the vet to", "needs the vet to")):
        return None
    filling = "him to the" if form.startswith("refer") else "really"
    return Framed(sentence(f"note for the owner, {filled(form, filling)}"), of_horse("vet", "referral", "planned"))


def foot(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Thrush, both hinds." With a foot in hand first for the forms that point at one."""
    feet = _FEET.get(canonical)
    if feet is not None:
        denied = form.split()[0] == "any" or " any" in form or form.startswith("either")
        if re.search(r"\b(shoes?|set|new|gone)\b", form):
            return None
        status = "absent" if denied else "present"
        text = sentence(f"{'no thrush' if denied else 'thrush'}, {form}")
        return Framed(text, on_feet(feet, "finding", "thrush", status=status))
    if canonical not in _POINTING or re.search(r"either|each|into|to (it|both)|the foot", form):
        return None
    first, second = _POINTING[canonical]
    named = "left front" if first == ("LF",) else "both fronts"
    text = f"{sentence(f'flare, {named}')} {sentence(f'thrush, {form}')}"
    return Framed(text, (*on_feet(first, "finding", "flare"), *on_feet(second, "finding", "thrush")))


_FEET: dict[str, Feet] = {
    "LF": ("LF",),
    "RF": ("RF",),
    "LH": ("LH",),
    "RH": ("RH",),
    "fronts": ("LF", "RF"),
    "hinds": ("LH", "RH"),
    "lefts": ("LF", "LH"),
    "rights": ("RF", "RH"),
    "all": ("LF", "RF", "LH", "RH"),
}
_POINTING: dict[str, tuple[Feet, Feet]] = {
    "other": (("LF",), ("RF",)),
    "other_front": (("LF",), ("RF",)),
    "other_three": (("LF",), ("RF", "LH", "RH")),
    "in_hand": (("LF",), ("LF",)),
    "pair_in_hand": (("LF", "RF"), ("LF", "RF")),
}

FRAMES = {
    "warmths": warmth,
    "findings": finding,
    "zones": zone,
    "severities": severity,
    "tester_responses": tester,
    "tester_heads": tester_head,
    "pulses": pulse,
    "pulse_heads": pulse_head,
    "shoe_states": shoe_state,
    "gaits": gait,
    "manners": manner,
    "vet": vet,
    "feet": foot,
    "not_facts": not_fact,
}
