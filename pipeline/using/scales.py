"""The grades that records carry, named with their scale and its source."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Scale:
    """A scale: the slot graded with it, its name, what the grades mean in short, and the source."""

    slot: str
    name: str
    steps: tuple[str, ...]
    source: str


SCALES = (
    # Checked against the scale as several veterinary practices print it; shortened in our own words.
    Scale(
        "lameness",
        "Lameness, AAEP grade 0 to 5",
        (
            "0: not seen under any circumstances",
            "1: hard to see, and not every time",
            "2: hard to see at a walk or a straight trot, but every time under some circumstances",
            "3: seen every time at a trot",
            "4: plain at a walk",
            "5: hardly any weight on the leg, or unable to move",
        ),
        "American Association of Equine Practitioners, lameness scale; some vets use 0 to 10 instead",
    ),
    # The grades from memory, after the paper named.
    Scale(
        "obel",
        "Laminitis, Obel grade 1 to 4",
        (
            "1: shifts its weight at rest, short steps at a trot",
            "2: stilted at a walk, but a foot can be lifted",
            "3: moves unwillingly and resists when a foot is to be lifted",
            "4: moves only when forced",
        ),
        "Obel 1948, Studies on the histopathology of acute laminitis",
    ),
    Scale(
        "body_condition",
        "Body condition, 1 (poor) to 9 (extremely fat)",
        (),
        "Henneke et al. 1983, Equine Veterinary Journal 15:371-372",
    ),
    Scale(
        "cresty_neck",
        "Cresty neck, 0 (no crest) to 5 (crest droops to one side)",
        (),
        "Carter et al. 2009, The Veterinary Journal 179:204-210",
    ),
    Scale(
        "tester",
        "Answer to the hoof testers: none, mild, positive (degree not said), moderate, strong",
        (),
        "the farrier's own judgement; common practice, no source",
    ),
)
