"""One spoken form of the vocabulary in the shortest frame that gives it its sense: "Left hind, thrushy." """

from __future__ import annotations

from collections.abc import Callable

from tests.generator.facts import Statement
from tests.generator.frames_doing import FRAMES as DOING
from tests.generator.frames_joining import FRAMES as JOINING
from tests.generator.frames_seeing import FRAMES as SEEING
from tests.generator.framing import Framed
from tests.generator.scene import Scene
from tests.generator.words import Form

Frame = Callable[[Scene, str, str], Framed | None]
FRAMES: dict[str, Frame] = {**SEEING, **DOING, **JOINING}


def fragment(scene: Scene, form: Form) -> Statement | None:
    """The statement that exercises a form; None when the form has no natural frame (its class leaves it out)."""
    name, canonical, spoken = form
    framed = FRAMES[name](scene, canonical, spoken)
    if framed is None:
        return None
    return Statement(framed.text, framed.facts, f"form of {name}", (name, spoken))
