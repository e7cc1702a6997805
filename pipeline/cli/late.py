"""Commands that are made when they are asked for.

Making one out of its function's annotations takes about a millisecond, and its module must be loaded first: a search
would wait for thirty commands that it is none of.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, MutableMapping
from importlib import import_module
from typing import Any

import typer
from typer.core import TyperCommand, TyperGroup

Command = TyperCommand | TyperGroup


class LateCommands(MutableMapping[str, Any]):
    """Commands by name; ``homes`` tells of each the module beside this one that holds it, and what it is called there:
    a function, or a Typer with commands of its own."""

    def __init__(self, homes: Mapping[str, tuple[str, str]]) -> None:
        self._homes = homes
        self._made: dict[str, Command] = {}

    def __getitem__(self, name: str) -> Command:
        if name not in self._made:
            module, attribute = self._homes[name]
            self._made[name] = _made(name, getattr(import_module(f"{__package__}.{module}"), attribute))
        return self._made[name]

    def __setitem__(self, name: str, command: Command) -> None:
        self._made[name] = command

    def __delitem__(self, name: str) -> None:
        del self._made[name]

    def __contains__(self, name: object) -> bool:
        return name in self._homes or name in self._made

    def __iter__(self) -> Iterator[str]:
        return iter({**self._homes, **self._made})

    def __len__(self) -> int:
        return len({**self._homes, **self._made})


def _made(name: str, found: object) -> Command:
    holder = typer.Typer(rich_markup_mode=None, add_completion=False)
    if isinstance(found, typer.Typer):
        holder.add_typer(found, name=name)
    else:
        assert callable(found)
        holder.command(name)(found)
    made = typer.main.get_command(holder)
    if isinstance(found, typer.Typer):
        assert isinstance(made, TyperGroup)
        made = made.commands[name]
    assert isinstance(made, TyperCommand | TyperGroup)
    return made
