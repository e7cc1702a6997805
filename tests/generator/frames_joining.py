"""Frames for the forms that change what another word means: denial, doubt, time, resolution, taking back, likeness."""

from __future__ import annotations

import re

from tests.generator.facts import OPEN, Gold, on_feet
from tests.generator.framing import Framed, filled, sentence
from tests.generator.scene import Scene

_SUBJECTS = re.compile(r"(is|are|was|were|has|have|isn't|wasn't)\b|'s ")
_TAKES_VALUE = (
    "make that",
    "make it",
    "call it",
    "let's call it",
    "should say",
    "should be",
    "that should be",
    "or rather",
    "i'll make that",
    "i'll call it",
    "i'd better say",
    "put it down as",
    "better make it",
    "better make that",
    "actually",
)


def denial(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, no sign of thrush", "Looked for thrush in the left hind, none found"."""
    feet = scene.one_foot()
    if canonical == "before":
        text = f"{scene.name(feet)}, {form} thrush"
    elif _SUBJECTS.match(form):
        text = f"thrush in {scene.the(feet)} {form}"
    else:
        text = f"looked for thrush in {scene.the(feet)}, {form}"
    return Framed(sentence(text), on_feet(feet, "finding", "thrush", status="absent"))


def doubt(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, might be thrush", "Thrush in the left hind, hard to say"."""
    feet = scene.one_foot()
    said = f"{scene.name(feet)}, {form} thrush"
    if canonical == "after":
        joint = " " if _SUBJECTS.match(form) else ", "
        said = f"thrush in {scene.the(feet)}{joint}{form}"
    return Framed(sentence(said), on_feet(feet, "finding", "thrush", status="suspected"))


def resolution(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "The crack in the left hind, grown right out", "Left hind, over the thrush"."""
    feet = scene.one_foot()
    grown = "grown" in form or "grew" in form
    cooled = form.startswith(("cold", "cool"))
    what = "crack" if grown else "heat" if cooled else "abscess"
    if canonical == "before":
        if form.endswith("her") or form == "rid of":
            return None
        return Framed(
            sentence(f"{scene.name(feet)}, {form} thrush"), on_feet(feet, "finding", "thrush", status="resolved")
        )
    joint = "" if form.startswith("'s") else " " if _SUBJECTS.match(form) else ", "
    text = sentence(f"the {what} in {scene.the(feet)}{joint}{filled(form, 'right')}")
    status = "present" if canonical == "not_yet" else "resolved"
    return Framed(text, (Gold(feet[0], "finding", what, status=status, severity=OPEN),))


def time(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Last time, thrush in the left hind", with the verb that the time wants."""
    feet, form = scene.one_foot(), filled(form, "three")
    if form in ("history of", "used to", "wore") or form.endswith((" in", "after the")) or " in" in form[-4:]:
        return None
    if canonical == "today":
        return Framed(sentence(f"{form}, {scene.name(feet)} has thrush"), on_feet(feet, "finding", "thrush"))
    ago = re.match(r"(\w+s) (ago|back|since)$", form)
    said = (
        f"two {form}" if ago else f"a {form}" if re.match(r"\w+ (ago|back)$", form) and " while" not in form else form
    )
    if re.search(r"\b(bloke|fellow|farrier|man|guy|chap|lad|shoer|feller|one to do)\b", form):
        return None
    if re.match(r"(whoever|somebody|since|in|i had|as of)\b", form) or form.startswith(
        ("he ", "she ", "he'd", "she'd", "had ")
    ):
        return None
    text = sentence(f"{scene.the(feet)} had thrush {said}")
    return Framed(text, on_feet(feet, "finding", "thrush", status="history"))


def taking_back(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Six nails, no, seven nails", "Heat in the left fore. Scratch that. Flare in the left fore." """
    feet = scene.one_foot()
    if canonical == "strike":
        text = f"{sentence(f'heat in {scene.the(feet)}')} {sentence(form)} {sentence(f'flare in {scene.the(feet)}')}"
        return Framed(text, on_feet(feet, "finding", "flare"))
    joint = " " if form in _TAKES_VALUE else ", "
    text = sentence(f"{scene.name(feet)}, toe angle fifty degrees, {form}{joint}fifty two degrees")
    return Framed(text, on_feet(feet, "toe_angle", 52.0))


def same(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left fore reset, size two. Right fore, same again." """
    first, second = scene.pair()
    if canonical == "same_size":
        copied = sentence(f"{scene.name((second,))} reset, {form}")
        text = f"{sentence(f'{scene.name((first,))} reset, size two')} {copied}"
        return Framed(text, (*on_feet((first, second), "work", "reset"), *on_feet((first, second), "shoe_size", "2")))
    if canonical == "same_stuff":
        copied = sentence(f"{scene.name((second,))} reset, {form}")
        text = f"{sentence(f'{scene.name((first,))} reset, steel')} {copied}"
        shod = on_feet((first, second), "shoe_material", "steel")
        return Framed(text, (*on_feet((first, second), "work", "reset"), *shod))
    joint = " " if form in ("too", "as well", "also", "likewise") else ", "
    text = f"{sentence(f'{scene.name((first,))} has thrush')} {sentence(f'{scene.name((second,))}{joint}{form}')}"
    if form.split()[0] in ("maybe", "perhaps", "possibly", "might", "could"):
        doubted = on_feet((second,), "finding", "thrush", status="suspected")
        return Framed(text, (*on_feet((first,), "finding", "thrush"), *doubted))
    return Framed(text, on_feet((first, second), "finding", "thrush"))


FRAMES = {
    "denials": denial,
    "doubts": doubt,
    "resolutions": resolution,
    "times": time,
    "taking_back": taking_back,
    "same": same,
}
