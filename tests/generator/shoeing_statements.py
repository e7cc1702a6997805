"""Statements of what was done: sets of shoes with their parts, trims, treatments, plans, shoes as found."""

from __future__ import annotations

from tests.generator.facts import Gold, Statement, Value, on_feet
from tests.generator.framing import sentence
from tests.generator.scene import ALL, FRONTS, HINDS, Feet, Scene

NUMBERS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"]
Part = tuple[str, str, Value]
"""How a part of the set is said, and its slot and value."""

_SIZES = (
    ("size one", "1"),
    ("size two", "2"),
    ("size double aught", "00"),
    ("size triple aught", "000"),
    ("size aught", "0"),
    ("number three", "3"),
    ("size one and a half", "1.5"),
    ("a size four", "4"),
    ("size single aught", "0"),
    ("size two and a half", "2.5"),
    ("between a one and a two", "1-2"),
)
_TYPES = (
    ("egg bars", "egg_bar"),
    ("heart bars", "heart_bar"),
    ("wide webs", "wide_web"),
    ("half rounds", "half_round"),
    ("rocker toes", "rocker_toe"),
    ("rolled toes", "rolled_toe"),
    ("straight bars", "straight_bar"),
    ("rim shoes", "rim"),
    ("racing plates", "racing_plate"),
    ("plain", "plain"),
    ("keg shoes", "plain"),
)
_MATERIALS = (("steel", "steel"), ("in aluminum", "aluminum"), ("aluminium", "aluminum"), ("in steel", "steel"))
_CLIPS = (("toe clips", "toe"), ("quarter clips", "quarter"), ("side clips", "side"))
_PADS = (
    ("leather pads", "leather"),
    ("rim pads", "rim"),
    ("full pads", "full"),
    ("mesh pads", "mesh"),
    ("frog support pads", "frog_support"),
    ("half mesh pads", "half_mesh"),
    ("pour in pads", "pour_in"),
)
_PACKINGS = (
    ("impression material", "impression_material"),
    ("putty", "putty"),
    ("oakum and pine tar", "oakum"),
    ("silicone", "silicone"),
    ("pine tar", "pine_tar"),
)
_TRACTION = (("borium", "borium"), ("road nails", "road_nails"), ("studs", "studs"))
_NAIL_SIZES = (
    ("size five nails", "5"),
    ("size five slims", "5 slim"),
    ("size four and a half nails", "4.5"),
    ("size six nails", "6"),
)

_BARE_NAIL_SIZES = (("fives", "5"), ("four and a halfs", "4.5"), ("three and a halfs", "3.5"))  # behind the shoes' size


def _nails(scene: Scene) -> tuple[str, float]:
    count = scene.pick((5, 6, 7, 8))
    side = scene.pick((2, 3, 4))
    other = scene.pick((2, 3, 4))
    return scene.pick(
        (
            (f"{NUMBERS[count]} nails in each", float(count)),
            (f"{NUMBERS[side]} nails a side", 2.0 * side),
            (f"{NUMBERS[side]} a side", 2.0 * side),
            (f"{NUMBERS[count]} nails", float(count)),
            (f"{NUMBERS[side]} nails outside and {NUMBERS[other]} inside", float(side + other)),
            (f"{count} nails", float(count)),
            ("three and three", 6.0),
            (f"{NUMBERS[count]} nails apiece", float(count)),
        )
    )


def _parts(scene: Scene) -> list[Part]:
    """Two to five parts in the order in which a farrier lists them."""
    nails, count = _nails(scene)
    drawn: list[Part] = []
    for slot, options in (
        ("shoe_type", _TYPES),
        ("shoe_material", _MATERIALS),
        ("shoe_size", _SIZES),
        ("clips", _CLIPS),
        ("pad", _PADS),
        ("traction", _TRACTION),
    ):
        if scene.chance.random() < 0.45:
            said, value = scene.pick(options)
            drawn.append((said, slot, value))
    if scene.chance.random() < 0.6:
        drawn.append((nails, "nails", count))
    if scene.chance.random() < 0.25:
        sized = any(slot == "shoe_size" for _, slot, _ in drawn)
        said, value = scene.pick((*_NAIL_SIZES, *_BARE_NAIL_SIZES) if sized else _NAIL_SIZES)
        drawn.append((said, "nail_size", value))
    return drawn


def set_of_shoes(scene: Scene) -> Statement:
    """ "New shoes in front, egg bars, size two, toe clips, six nails in each." """
    feet = scene.pick((FRONTS, FRONTS, HINDS, ALL))
    where, name = scene.shod(feet), scene.name(feet)
    opening, value = scene.pick(
        (
            (f"new shoes {where}", "new_shoe"),
            (f"reset {name}", "reset"),
            (f"{name} reset", "reset"),
            (f"fresh set {where}", "new_shoe") if feet != ALL else ("full new set", "new_shoe"),
            (f"new shoes {where}", "new_shoe"),
            (f"put new shoes {where}", "new_shoe"),
        )
    )
    parts = _parts(scene)
    text = ", ".join((opening, *(said for said, _, _ in parts)))
    facts = [*on_feet(feet, "work", value)]
    for _, slot, said_value in parts:
        facts.extend(on_feet(feet, slot, said_value))
    return Statement(sentence(text), tuple(facts), "set of shoes")


def one_shoe(scene: Scene) -> Statement:
    """ "New shoe on the left fore, size two, seven nails." """
    feet = scene.one_foot()
    (size, size_value), count = scene.pick(_SIZES), scene.pick((5, 6, 7, 8))
    opening, value = scene.pick(
        (
            (f"new shoe on {scene.the(feet)}", "new_shoe"),
            (f"reset {scene.the(feet)}", "reset"),
            (f"{scene.name(feet)} reset", "reset"),
        )
    )
    text = sentence(f"{opening}, {size}, {NUMBERS[count]} nails")
    return Statement(
        text,
        (*on_feet(feet, "work", value), *on_feet(feet, "shoe_size", size_value), *on_feet(feet, "nails", float(count))),
        "one shoe",
    )


def padded(scene: Scene) -> Statement:
    """ "Leather pads on both fronts with putty under them", "two degree wedge pads"."""
    feet = scene.pair()
    if scene.chance.random() < 0.35:
        degrees = scene.pick((2, 3, 4))
        text = f"{NUMBERS[degrees]} degree wedge{scene.pick((' pads', 's'))} {scene.shod(feet)}"
        return Statement(
            sentence(text), (*on_feet(feet, "pad", "wedge"), *on_feet(feet, "wedge", float(degrees))), "padded"
        )
    (pads, pad), (material, packing) = scene.pick(_PADS[:6]), scene.pick(_PACKINGS)
    text = scene.pick(
        (
            f"{pads} {scene.shod(feet)} with {material} under them",
            f"{scene.name(feet)} got {pads}, {material} underneath",
        )
    )
    return Statement(sentence(text), (*on_feet(feet, "pad", pad), *on_feet(feet, "packing", packing)), "padded")


def trimmed(scene: Scene) -> Statement:
    """ "Trimmed all four", "hinds just trimmed"."""
    feet = scene.pick((ALL, HINDS, FRONTS, scene.one_foot()))
    name = scene.name(feet)
    text = scene.pick(
        (
            f"trimmed {scene.the(feet)}",
            f"{name} just trimmed",
            f"{name} trimmed and left barefoot",
            f"trim on {scene.the(feet)}",
        )
    )
    return Statement(sentence(text), on_feet(feet, "work", "trim"), "trimmed")


def front_and_behind(scene: Scene) -> Statement:
    """ "Fronts reset, hinds trimmed", "size two in front, size one behind"."""
    (a, first), (b, second) = scene.chance.sample(_SIZES[:4], 2)
    text, slot, front, behind = scene.pick(
        (
            ("fronts reset, hinds trimmed", "work", "reset", "trim"),
            ("reset the fronts and trimmed the hinds", "work", "reset", "trim"),
            ("new shoes in front, hinds just trimmed", "work", "new_shoe", "trim"),
            (f"{a} in front, {b} behind", "shoe_size", first, second),
            ("toe clips in front and quarter clips behind", "clips", "toe", "quarter"),
        )
    )
    return Statement(sentence(text), (*on_feet(FRONTS, slot, front), *on_feet(HINDS, slot, behind)), "front and behind")


def shoe_off(scene: Scene) -> Statement:
    """ "He'd lost the left fore; nailed the same shoe back on." """
    feet = scene.one_foot()
    the, name, who = scene.the(feet), scene.name(feet), scene.pronoun
    count = scene.pick((6, 7, 8))
    text, facts = scene.pick(
        (
            (
                f"{who} threw {the}, nailed the same shoe back on, {NUMBERS[count]} nails",
                (("shoe_state", "lost"), ("work", "put_back"), ("nails", float(count))),
            ),
            (f"{name} was loose, so I reset it", (("shoe_state", "loose"), ("work", "reset"))),
            (f"{who}'d cast {the}, so a new shoe on that one", (("shoe_state", "lost"), ("work", "new_shoe"))),
            (f"{name} had sprung", (("shoe_state", "sprung"),)),
            (f"the shoe on {the} was worn", (("shoe_state", "worn"),)),
            (f"pulled the shoe on {the} and left it off", (("work", "removed"),)),
        )
    )
    return Statement(sentence(text), tuple(Gold(feet[0], slot, value) for slot, value in facts), "shoe off")


def treated(scene: Scene) -> Statement:
    """ "Thrush in the left hind, copper sulfate on it": the treatment goes with the foot."""
    feet = scene.one_foot()
    what, value, cure, treatment = scene.pick(
        (
            ("thrush", "thrush", "copper sulfate on it", "copper_sulfate"),
            ("thrush", "thrush", "iodine on it", "iodine"),
            ("an abscess", "abscess", "opened it up and got it drained", "drained"),
            ("an abscess", "abscess", "put a poultice on", "poultice"),
            ("seedy toe", "white_line_disease", "resected it", "resection"),
            ("a bruise", "bruise", "soaked it", "soak"),
            ("canker", "canker", "cleaned it with antiseptic", "antiseptic"),
            ("a corn", "corn", "bandaged it", "bandage"),
            ("a thin sole", "thin_sole", "put hardener on it", "hardener"),
        )
    )
    text = f"{scene.name(feet)} has {what}, {cure}"
    return Statement(
        sentence(text), (*on_feet(feet, "finding", value), *on_feet(feet, "treatment", treatment)), "treated"
    )


def planned(scene: Scene) -> Statement:
    """ "Next time I'll put egg bars in front", "if he's no better we'll go to full pads in front"."""
    feet: Feet = scene.pick((FRONTS, HINDS))
    where = "in front" if feet == FRONTS else "behind"
    (pads, pad), (shoes, kind) = scene.pick(_PADS[:5]), scene.pick(_TYPES[:6])
    who = scene.pronoun
    text, slot, value = scene.pick(
        (
            (f"next time I'll put {shoes} {where}", "shoe_type", kind),
            (f"if {who}'s no better we'll go to {pads} {where}", "pad", pad),
            (f"if {who} gets sore we'll try {shoes} {where}", "shoe_type", kind),
            (f"thinking about {pads} {where} next time", "pad", pad),
            (f"plan is to go to {shoes} {where}", "shoe_type", kind),
        )
    )
    return Statement(sentence(text), on_feet(feet, slot, value, status="planned"), "planned")


def formerly(scene: Scene) -> Statement:
    """ "Last time he had full pads on both fronts"."""
    feet = scene.pair()
    (pads, pad), (size, value) = scene.pick(_PADS[:5]), scene.pick(_SIZES[:4])
    text, slot, said = scene.pick(
        (
            (f"last time {scene.pronoun} had {pads} on {scene.the(feet)}", "pad", pad),
            (f"{scene.pronoun} wore {pads} on {scene.the(feet)} last winter", "pad", pad),
            (f"last visit {scene.pronoun} was in {size} on {scene.the(feet)}", "shoe_size", value),
        )
    )
    return Statement(sentence(text), on_feet(feet, slot, said, status="history"), "formerly")


SHOEING = (
    set_of_shoes,
    set_of_shoes,
    set_of_shoes,
    one_shoe,
    padded,
    trimmed,
    front_and_behind,
    shoe_off,
    treated,
    planned,
    formerly,
)
