"""Statements of what was found: one foot or several, denied, doubted, gone, of old, listed, with place and degree."""

from __future__ import annotations

from dataclasses import dataclass

from tests.generator.facts import Gold, Statement, on_feet
from tests.generator.framing import sentence
from tests.generator.scene import Scene


@dataclass(frozen=True)
class Noun:
    """A finding as a noun: what it is, whether it takes an article, and the places where it is found."""

    name: str
    value: str
    article: str = ""
    zones: tuple[tuple[str, str], ...] = ()
    graded: bool = True


_HEELS = (("at the medial heel", "medial_heel"), ("at the outside heel", "lateral_heel"))
_FROG = (
    ("in the sulcus", "sulcus"),
    ("in the frog", "frog"),
    ("in the commissures", "commissure"),
    ("down in the central cleft", "sulcus"),
)
_ROUND = (
    ("at the toe", "toe"),
    ("at the inside quarter", "medial_quarter"),
    ("at the lateral quarter", "lateral_quarter"),
)
NOUNS = (
    Noun("thrush", "thrush", "", _FROG),
    Noun("seedy toe", "white_line_disease", "", (("at the medial quarter", "medial_quarter"), ("at the toe", "toe"))),
    Noun("white line disease", "white_line_disease", "", _ROUND),
    Noun("stretched white line", "white_line_separation", "", _ROUND),
    Noun("flare", "flare", "a", (("on the outside", "lateral"), ("at the medial quarter", "medial_quarter"))),
    Noun("abscess", "abscess", "an", (("at the toe", "toe"), *_HEELS)),
    Noun("bruise", "bruise", "a", (("in the sole", "sole"), ("at the toe", "toe"), ("at the bar", "bar"))),
    Noun("corn", "corn", "a", _HEELS),
    Noun("canker", "canker", "", (("in the frog", "frog"),)),
    Noun("keratoma", "keratoma", "a", (("at the toe", "toe"),), graded=False),
    Noun("puncture", "puncture", "a", (("in the frog", "frog"), ("in the sole", "sole")), graded=False),
    Noun("heat", "heat", "", (("at the coronary band", "coronary_band"),), graded=False),
    Noun("swelling", "swelling", "", (("at the heel bulb", "heel_bulb"), ("at the coronet", "coronary_band"))),
    Noun(
        "wall loss",
        "wall_loss",
        "",
        (("at the lateral quarter", "lateral_quarter"), ("at the medial quarter", "medial_quarter")),
    ),
    Noun("sheared heels", "sheared_heels"),
    Noun("contracted heels", "contracted_heels"),
    Noun("underrun heels", "underrun_heels"),
    Noun("mud fever", "scratches"),
    Noun("sidebone", "sidebone", graded=False),
    Noun("ringbone", "ringbone", graded=False),
    Noun("growth rings", "growth_rings", graded=False),
    Noun("thin sole", "thin_sole", "a", graded=False),
    Noun("dropped sole", "dropped_sole", "a", graded=False),
    Noun("flat sole", "flat_sole", "a", graded=False),
    Noun("broken back axis", "broken_back_axis", "a", graded=False),
)
CRACKS = (("quarter crack", "quarter"), ("toe crack", "toe"), ("heel crack", "heel"))
_DEGREES = (("mild", "mild"), ("slight", "mild"), ("moderate", "moderate"), ("severe", "severe"), ("bad", "severe"))
_SIMPLE = tuple(noun for noun in NOUNS if not noun.name.endswith(("sole", "axis", "heels", "rings")))


def _several(scene: Scene, count: int) -> list[Noun]:
    """Different findings, never two names of one."""
    return scene.chance.sample([noun for noun in _SIMPLE if noun.name != "seedy toe"], count)


def _a(noun: Noun, degree: str = "") -> str:
    words = f"{degree} {noun.name}".strip()
    if not noun.article:
        return words
    return f"{'an' if words[0] in 'aeiou' else 'a'} {words}"


def _draw(scene: Scene, noun: Noun) -> tuple[tuple[str, str | None], tuple[str, str | None]]:
    """A degree and a place for the finding, each possibly not said."""
    degree: tuple[str, str | None] = scene.pick(_DEGREES) if noun.graded and scene.chance.random() < 0.4 else ("", None)
    place: tuple[str, str | None] = scene.pick(noun.zones) if noun.zones and scene.chance.random() < 0.5 else ("", None)
    return degree, place


def found(scene: Scene) -> Statement:
    """ "Left hind has moderate thrush in the sulcus", and the same in other orders."""
    noun, feet = scene.pick(NOUNS), scene.one_foot()
    (word, severity), (where, zone) = _draw(scene, noun)
    tail = f" {where}" if where else ""
    inside = "on" if noun.name == "mud fever" else "in"
    name, the = scene.name(feet), scene.the(feet)
    late = f"{name} has {_a(noun)}{tail}" + (f", {word}" if word and word != "bad" else "")
    early = f"{name} has {_a(noun, word)}{tail}"
    text = scene.pick(
        (
            early,
            late if word != "bad" else early,
            f"there's {_a(noun, word)} in {the}{',' if where else ''}{tail}",
            f"{word} {noun.name} {inside} {the}{',' if where else ''}{tail}".strip(),
            f"{name}, {word + ' ' if word else ''}{noun.name}{tail}",
            f"found {_a(noun, word)}{tail} on {the}",
            f"on {the}, {_a(noun, word)}{tail}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "finding", noun.value, zone, "present", severity), "found")


def cracked(scene: Scene) -> Statement:
    """ "Quarter crack in the left hind, on the inside, mild." """
    (name, zone), feet = scene.pick(CRACKS), scene.one_foot()
    word, severity = scene.pick((("", None), ("mild ", "mild"), ("bad ", "severe")))
    text = scene.pick(
        (
            f"{word}{name} in {scene.the(feet)}",
            f"{scene.name(feet)} has a {word}{name}",
            f"{scene.name(feet)}, {word}{name}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "finding", "crack", zone, "present", severity), "cracked")


def on_many(scene: Scene) -> Statement:
    """ "Thrush in both hinds", "underrun heels on both fronts"."""
    noun, feet = scene.pick([n for n in NOUNS if n.article == ""]), scene.pair()
    text = scene.pick(
        (
            f"{noun.name} in {scene.the(feet)}",
            f"{scene.name(feet)} have {noun.name}",
            f"{scene.name(feet)}, {noun.name}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "finding", noun.value), "on many feet")


def two_feet(scene: Scene) -> Statement:
    """ "Thrush in the left hind and the right hind", "mild in the left hind, severe in the right hind"."""
    noun = scene.pick([n for n in NOUNS if n.graded and n.article == ""])
    one, other = scene.chance.sample(("LF", "RF", "LH", "RH"), 2)
    first, second = scene.the((one,)), scene.the((other,))
    if scene.chance.random() < 0.5:
        return Statement(
            sentence(f"{noun.name} in {first} and {second}"), on_feet((one, other), "finding", noun.value), "two feet"
        )
    (a, mild), (b, severe) = scene.chance.sample(_DEGREES, 2)
    text = sentence(
        f"{noun.name} in both {scene.name((one,))} and {scene.name((other,))}, {a} in {first}, {b} in {second}"
    )
    return Statement(
        text,
        (Gold(one, "finding", noun.value, severity=mild), Gold(other, "finding", noun.value, severity=severe)),
        "two feet",
    )


def two_found(scene: Scene) -> Statement:
    """ "Left hind has thrush and a corn": the foot holds for both."""
    one, other = _several(scene, 2)
    feet = scene.one_foot()
    text = scene.pick(
        (
            f"{scene.name(feet)} has {_a(one)} and {_a(other)}",
            f"{_a(one)} and {_a(other)} in {scene.the(feet)}",
            f"{scene.name(feet)} has {_a(one)}, and there's {_a(other)} in it too",
        )
    )
    return Statement(
        sentence(text), (*on_feet(feet, "finding", one.value), *on_feet(feet, "finding", other.value)), "two found"
    )


def carried(scene: Scene) -> Statement:
    """ "Left hind has thrush. Pulse is up. Bit of heat too": a foot once named stays in hand."""
    one, other = _several(scene, 2)
    feet = scene.one_foot()
    second = scene.pick((f"there is {_a(other)} as well", f"{_a(other)} too"))
    text = f"{sentence(f'{scene.name(feet)} has {_a(one)}')} {sentence(second)}"
    return Statement(
        text, (*on_feet(feet, "finding", one.value), *on_feet(feet, "finding", other.value)), "carried over"
    )


def denied(scene: Scene) -> Statement:
    """ "No thrush in the left hind", "no sign of an abscess"."""
    noun, feet = scene.pick(_SIMPLE), scene.some_feet()
    name, the = scene.name(feet), scene.the(feet)
    has = "has" if len(feet) == 1 else "have"
    text = scene.pick(
        (
            f"no {noun.name} in {the}",
            f"{name}, no {noun.name}",
            f"no sign of {_a(noun)} in {the}",
            f"{name} {has} no {noun.name}",
            f"there's no {noun.name} in {the}",
            f"couldn't find any {noun.name} in {the}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "finding", noun.value, status="absent"), "denied")


def denied_list(scene: Scene) -> Statement:
    """ "No heat, no swelling and no thrush in the left hind", "no heat or swelling"."""
    nouns = _several(scene, 3)
    feet = scene.some_feet()
    names = [noun.name for noun in nouns]
    the = scene.the(feet)
    text, said = scene.pick(
        (
            (f"no {names[0]}, no {names[1]} and no {names[2]} in {the}", 3),
            (f"no {names[0]} or {names[1]} in {the}", 2),
            (f"{scene.name(feet)}, no {names[0]}, no {names[1]}, no {names[2]}", 3),
            (f"no {names[0]}, {names[1]} or {names[2]} in {the}", 3),
        )
    )
    facts = tuple(fact for noun in nouns[:said] for fact in on_feet(feet, "finding", noun.value, status="absent"))
    return Statement(sentence(text), facts, "denied list")


def one_not_other(scene: Scene) -> Statement:
    """ "Left hind has thrush but no canker", "thrush in the left hind, none in the right hind"."""
    noun, other = _several(scene, 2)
    one, two = scene.chance.sample(("LF", "RF", "LH", "RH"), 2)
    first, second = scene.the((one,)), scene.the((two,))
    if scene.chance.random() < 0.5:
        text = f"{scene.name((one,))} has {_a(noun)} but no {other.name}"
        facts = (Gold(one, "finding", noun.value), Gold(one, "finding", other.value, status="absent"))
    else:
        text = f"{_a(noun)} in {first}, {scene.pick(('none', 'but none'))} in {second}"
        facts = (Gold(one, "finding", noun.value), Gold(two, "finding", noun.value, status="absent"))
    return Statement(sentence(text), facts, "one but not the other")


def doubted(scene: Scene) -> Statement:
    """ "Possible abscess in the left hind", "might be a corn there, I'm not sure"."""
    noun, feet = scene.pick(_SIMPLE), scene.one_foot()
    the = scene.the(feet)
    text = scene.pick(
        (
            f"possible {noun.name} in {the}",
            f"might be {_a(noun)} in {the}",
            f"I suspect {_a(noun)} in {the}",
            f"{_a(noun)} in {the}, I'm not sure",
            f"{scene.name(feet)}, maybe {_a(noun)}",
            f"query {noun.name} in {the}",
            f"could be {_a(noun)} in {the}, hard to say",
            f"there may be {_a(noun)} in {the}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "finding", noun.value, status="suspected"), "doubted")


def gone(scene: Scene) -> Statement:
    """ "The abscess in the left hind is gone", "had thrush last time, gone now"."""
    noun, feet = (
        scene.pick([n for n in _SIMPLE if n.name not in ("sidebone", "ringbone", "keratoma", "wall loss")]),
        scene.one_foot(),
    )
    the = scene.the(feet)
    text = scene.pick(
        (
            f"the {noun.name} in {the} is gone",
            f"the {noun.name} in {the} has cleared up",
            f"{scene.name(feet)} had {_a(noun)} last time, gone now",
            f"that {noun.name} in {the} is all healed up",
            f"the {noun.name} {scene.pronoun} had in {the} last time has gone",
        )
    )
    return Statement(sentence(text), on_feet(feet, "finding", noun.value, status="resolved"), "gone")


def of_old(scene: Scene) -> Statement:
    """ "He had an abscess in the left hind last winter"."""
    noun, feet = scene.pick(_SIMPLE), scene.one_foot()
    when = scene.pick(("last winter", "last year", "back in March", "a couple of years ago", "last summer"))
    text = scene.pick(
        (
            f"{scene.pronoun} had {_a(noun)} in {scene.the(feet)} {when}",
            f"{when}, {scene.pronoun} had {_a(noun)} in {scene.the(feet)}",
            f"{scene.name(feet)} had {_a(noun)} {when}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "finding", noun.value, status="history"), "of old")


FINDINGS = (
    found,
    found,
    found,
    cracked,
    on_many,
    two_feet,
    two_found,
    carried,
    denied,
    denied,
    denied_list,
    one_not_other,
    doubted,
    gone,
    of_old,
)
