"""Frames for the forms of what is done and put on, and of what is measured."""

from __future__ import annotations

from tests.generator.facts import OPEN, Gold, on_feet
from tests.generator.framing import Framed, filled, plural, sentence
from tests.generator.scene import ALL, Feet, Scene

_LEAST: dict[str, tuple[str, str, float]] = {
    # the measure, how it is said behind its name, what it is then
    "toe_angle": ("fifty two degrees", "toe_angle", 52.0),
    "heel_angle": ("fifty degrees", "heel_angle", 50.0),
    "toe_length": ("eighty eight millimetres", "toe_length", 88.0),
    "sole_depth": ("twelve millimetres", "sole_depth", 12.0),
    "heel_height": ("thirty eight millimetres", "heel_height", 38.0),
    "hoof_width": ("a hundred and thirty millimetres", "hoof_width", 130.0),
    "body_condition": ("five", "body_condition", 5.0),
    "cresty_neck": ("two", "cresty_neck", 2.0),
    "obel": ("two", "obel", 2.0),
    "lameness": ("two", "lameness", 2.0),
    "weeks": ("six weeks", "next_visit_weeks", 6.0),
}
_UNITS = {
    "inch": ("toe length three", "toe_length", 76.2),
    "mm": ("toe length eighty eight", "toe_length", 88.0),
    "cm": ("toe length nine", "toe_length", 90.0),
    "degree": ("toe angle fifty", "toe_angle", 50.0),
    "week": ("back in six", "next_visit_weeks", 6.0),
    "fortnight": ("back in a", "next_visit_weeks", 2.0),
}


def _of_shoe(slot: str, scene: Scene, canonical: str, form: str) -> Framed:
    """ "Both fronts reset, half rounds." With "in each" there are several; some forms name the stuff too."""
    feet = scene.pair() if plural(form) or form.endswith(("s", " each")) else scene.one_foot()
    text = sentence(f"{scene.name(feet)} reset, {filled(form)}")
    return Framed(text, (*on_feet(feet, "work", "reset"), *on_feet(feet, slot, canonical), *_stuff(slot, feet, form)))


def _stuff(slot: str, feet: Feet, form: str) -> tuple[Gold, ...]:
    """The stuff that the name of a shoe holds: "flat steel" is a plain shoe, of steel."""
    told = {word for word in form.split() if word in ("steel", "rubber", "plastic", "aluminum", "aluminium")}
    if slot != "shoe_type" or not told:
        return ()
    return on_feet(feet, "shoe_material", told.pop().replace("aluminium", "aluminum"))


def shoe_type(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Both fronts reset, egg bars." A boot is no shoe to reset: "Left fore, boot on." """
    if form.startswith(("'s", "is a")):
        return None
    if canonical != "boot":
        return _of_shoe("shoe_type", scene, canonical, form)
    feet = scene.one_foot()
    facts = (*on_feet(feet, "shoe_type", "boot"), *_stuff("shoe_type", feet, form))
    return Framed(sentence(f"{scene.name(feet)}, {form}"), facts)


def material(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Both fronts reset, in steel." """
    return _of_shoe("shoe_material", scene, canonical, form)


def pad(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Both fronts reset, leather pads." """
    return _of_shoe("pad", scene, canonical, form)


def clips(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Both fronts reset, quarter clips." """
    return _of_shoe("clips", scene, canonical, form)


def traction(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Both hinds reset, studs." Studs taken out again are left out."""
    return None if form.endswith(" out") else _of_shoe("traction", scene, canonical, form)


def packing(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left fore, leather pad, pine tar." """
    feet = scene.one_foot()
    text = sentence(f"{scene.name(feet)}, leather pad, {filled(form)}")
    return Framed(text, (*on_feet(feet, "pad", "leather"), *on_feet(feet, "packing", canonical)))


def treatment(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, tubbed it." """
    feet = scene.one_foot()
    text = sentence(f"{scene.name(feet)}, {filled(form, 'it')}")
    return Framed(text, (Gold(feet[0], "treatment", canonical, severity=OPEN),))


def nail_line(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, nail line spot on." """
    feet = scene.one_foot()
    return Framed(
        sentence(f"{scene.name(feet)}, nail line {form}"), (Gold(feet[0], "nail_line", canonical, severity=OPEN),)
    )


def nail_line_head(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left hind, line of nails is good." """
    feet = scene.one_foot()
    verb = "are" if "lines" in form else "is"
    return Framed(sentence(f"{scene.name(feet)}, {form} {verb} good"), (Gold(feet[0], "nail_line", "good"),))


def work(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Both fronts, same shoes back on." Half a set leaves open which half."""
    if "half set" in form or form.startswith(("are ", "were ", "is ")):
        return None
    feet: Feet = scene.pair() if plural(form) else scene.one_foot()
    if "set of" in form or "set" in form.split() or "four" in form.split():
        feet = ALL
    text = sentence(f"{scene.name(feet)}, {filled(form, 'shoes' if plural(form) else 'that')}")
    return Framed(text, on_feet(feet, "work", canonical))


def measure(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Left fore, toe length eighty eight millimetres", "body score five"."""
    said, slot, value = _LEAST[canonical]
    if slot in ("toe_angle", "heel_angle", "toe_length", "sole_depth", "heel_height", "hoof_width"):
        feet = scene.pair() if form.endswith("s") and form != "across" else scene.one_foot()
        length = f"{said} {form}" if form in ("wide", "across") else f"{form} {said}"
        return Framed(sentence(f"{scene.name(feet)}, {length}"), on_feet(feet, slot, value))
    scale = form.startswith("on the") or form.endswith("scale")
    on = form if form.startswith("on the") else f"on the {form}"
    text = sentence(f"grade {said} {on}" if scale else f"{form} {said}")
    return Framed(text, (Gold(None, slot, value, status="planned" if slot == "next_visit_weeks" else "present"),))


def unit(scene: Scene, canonical: str, form: str) -> Framed | None:
    """ "Left fore, toe length nine centimetres." """
    if canonical not in _UNITS or (canonical == "fortnight" and form.endswith("s")):
        return None
    said, slot, value = _UNITS[canonical]
    if slot == "next_visit_weeks":
        return Framed(sentence(f"{said} {form}"), (Gold(None, slot, value, status="planned"),))
    feet = scene.one_foot()
    return Framed(sentence(f"{scene.name(feet)}, {said}{'' if form == '°' else ' '}{form}"), on_feet(feet, slot, value))


def total(scene: Scene, canonical: str, form: str) -> Framed:
    """ "Both fronts reset, three nails a side", "four nails outside, three inside"."""
    feet = (
        scene.one_foot()
        if form in ("in there", "in that one", "in this one", "in it")
        else ALL
        if "every" in form or "all" in form.split()
        else scene.pair()
    )
    nails = 6
    said = f"six nails {form}"
    if canonical == "each_side":
        said = f"three nails {form}"
    if canonical in ("outside", "inside"):
        other = "inside" if canonical == "outside" else "outside"
        nails, said = 7, f"four nails {form} and three {other}"
    text = sentence(f"{scene.name(feet)} reset, {said}")
    return Framed(text, (*on_feet(feet, "work", "reset"), *on_feet(feet, "nails", float(nails))))


FRAMES = {
    "shoe_types": shoe_type,
    "shoe_materials": material,
    "pads": pad,
    "packings": packing,
    "treatments": treatment,
    "nail_lines": nail_line,
    "nail_line_heads": nail_line_head,
    "clips": clips,
    "traction": traction,
    "work": work,
    "measures": measure,
    "units": unit,
    "totals": total,
}
