"""A command line that cannot be understood, told in one sentence as every other problem is."""

from __future__ import annotations

from typing import Any

import typer
from typer._click.exceptions import BadOptionUsage, MissingParameter, NoSuchOption, UsageError

_NUMBERS = {"int": "a whole number", "int range": "a whole number", "float": "a number", "float range": "a number"}


def misuse_sentence(error: UsageError) -> str:
    """What is wrong with the command line, and where its help is."""
    told = _what_is_wrong(error)
    told = told if told.endswith((".", "?")) else f"{told}."
    return f"{told} See {error.ctx.command_path} --help." if error.ctx else told


def _what_is_wrong(error: UsageError) -> str:
    if isinstance(error, NoSuchOption):
        near = f" Did you mean {' or '.join(sorted(error.possibilities))}?" if error.possibilities else ""
        behind = "" if error.ctx and error.ctx.parent else " Options go behind the command."
        return f"There is no option {error.option_name}.{near or behind}"
    if isinstance(error, MissingParameter) and error.param is not None:
        return f"{_name(error, error.param)} is missing."
    if isinstance(error, BadOptionUsage):
        return f"{error.option_name} wants something behind it."
    if isinstance(error, typer.BadParameter) and error.param is not None:
        return _bad_value(error, error.param)
    return str(error.message).replace("Got unexpected extra argument(s)", "That is more than the command takes")


def _bad_value(error: typer.BadParameter, parameter: Any) -> str:
    name, kind = _name(error, parameter), parameter.type
    given = str(error.message).split(" is not ")[0]
    if kind.name in _NUMBERS:
        return f"{name} is {_NUMBERS[kind.name]}{_bounds(kind)}; {given} will not do."
    if kind.name == "choice":
        return f"{name} is one of {', '.join(map(str, kind.choices))}; {given} will not do."
    return f"{name}: {error.message}"


def _name(error: UsageError, parameter: Any) -> str:
    """How the option or argument is written in the help."""
    return str(parameter.get_error_hint(error.ctx)).replace("'", "")


def _bounds(kind: Any) -> str:
    """The limits of a number that has some."""
    low, high = getattr(kind, "min", None), getattr(kind, "max", None)
    if low is None:
        return ""
    return f" of at least {low}" if high is None else f" from {low} to {high}"
