"""Puts statements together into a memo: one to three horses, each opened by name, one perhaps gone back to."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

from pipeline.vocabulary import Vocabulary
from tests.generator.correcting_statements import CORRECTING
from tests.generator.facts import GeneratedMemo, Placed, Statement
from tests.generator.finding_statements import FINDINGS
from tests.generator.fragments import fragment
from tests.generator.horse_statements import HORSE, chat, next_visit
from tests.generator.measuring_statements import MEASURING
from tests.generator.scene import Scene
from tests.generator.shoeing_statements import SHOEING
from tests.generator.words import Sweep

_NAMES = (
    "Otter",
    "Fennel",
    "Kestrel",
    "Barnaby",
    "Quince",
    "Marlow",
    "Tansy",
    "Wilbur",
    "Nettle",
    "Sorrel",
    "Pascoe",
    "Juno",
    "Rascal",
    "Hebe",
    "Dumpling",
    "Corrigan",
    "Long Meadow",
    "Pilgrim",
    "Zephyr",
    "Bosun",
)
_STRANGERS = ("Tarquin", "Larkspur", "Mabel", "Ottoline", "Gulliver")
_FIRST = ("{}.", "Okay, {}.", "Right, {}.", "This is {}.", "So, {}.", "{} today.", "Notes on {}.")
_LATER = ("Next, {}.", "Then {}.", "On to {}.", "{} next.", "{}.", "Next up, {}.", "And {}.")
_BACK = ("Back to {}.", "One more thing on {}.", "Going back to {}.")
_NEW = (
    "New horse, name's {}.",
    "New horse today, they call him {}.",
    "New mare on the books, her name is {}.",
    "New gelding, called {}.",
)

Template = Callable[[Scene], Statement]
_TEMPLATES: tuple[tuple[tuple[Template, ...], int], ...] = (
    (FINDINGS, 9),
    (SHOEING, 7),
    (MEASURING, 6),
    (HORSE, 4),
    (CORRECTING, 2),
)
_FRAGMENTS_SHARE = 0.4
_TRIES = 30


class Composer:
    """Makes memos from a seed; the same seed and vocabulary give the same memos in the same order."""

    def __init__(self, seed: int, vocabulary: Vocabulary) -> None:
        self._chance = Random(seed)
        self._sweep = Sweep(vocabulary, self._chance)

    def memo(self) -> GeneratedMemo:
        """The next memo, with all its facts."""
        chance = self._chance
        roster = tuple(chance.sample(_NAMES, chance.randrange(3, 9)))
        horses = list(roster[: chance.choices((1, 2, 3), (6, 3, 1))[0]])
        dialect = chance.choice(("us", "uk"))
        scenes = {name: Scene(chance, dialect) for name in horses}
        parts: list[tuple[str, str, Statement | None]] = []
        for number, name in enumerate(horses):
            if number == len(horses) - 1 and chance.random() < 0.12:
                stranger = chance.choice(_STRANGERS)
                horses[number], scenes[stranger] = stranger, scenes[name]
                parts.append((stranger, chance.choice(_NEW).format(stranger), None))
            else:
                parts.append((name, chance.choice(_FIRST if number == 0 else _LATER).format(name), None))
            parts.extend(self._talk(horses[number], scenes[horses[number]]))
        if len(horses) > 1 and chance.random() < 0.25:
            parts.append((horses[0], chance.choice(_BACK).format(horses[0]), None))
            parts.append((horses[0], "", self._statement(scenes[horses[0]])))
        return _placed(parts, roster, tuple(horses))

    def _talk(self, name: str, scene: Scene) -> list[tuple[str, str, Statement | None]]:
        said = [self._statement(scene) for _ in range(self._chance.randrange(2, 8))]
        if self._chance.random() < 0.7:
            last = next_visit(scene)
            if scene.free(last.facts):
                scene.take(last.facts)
                said.append(last)
        return [(name, "", statement) for statement in said]

    def _statement(self, scene: Scene) -> Statement:
        for _ in range(_TRIES):
            statement = self._fragment(scene) if self._chance.random() < _FRAGMENTS_SHARE else self._template()(scene)
            if statement is not None and scene.free(statement.touched):
                scene.take(statement.touched)
                return statement
        return chat(scene)

    def _template(self) -> Template:
        group = self._chance.choices([g for g, _ in _TEMPLATES], [w for _, w in _TEMPLATES])[0]
        return group[self._chance.randrange(len(group))]

    def _fragment(self, scene: Scene) -> Statement | None:
        """A statement made for the next form; a form whose feet are taken comes up again."""
        form = self._sweep.draw()
        for _ in range(4):
            statement = fragment(scene, form)
            if statement is None:
                return None
            if scene.free(statement.touched):
                return statement
        self._sweep.give_back(form)
        return None


def _placed(
    parts: list[tuple[str, str, Statement | None]], roster: tuple[str, ...], horses: tuple[str, ...]
) -> GeneratedMemo:
    text, placed = "", []
    for horse, opening, statement in parts:
        said = opening if statement is None else statement.text
        start = len(text)
        text += f"{said} "
        if statement is not None:
            placed.append(Placed(statement, horse, start, start + len(said)))
    return GeneratedMemo(text.rstrip(), roster, horses, tuple(placed))
