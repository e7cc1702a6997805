"""The README's own lines: those that continuous integration runs, and every clinchbook command it shows."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest
import typer.main
from typer.core import TyperGroup

from pipeline.cli import app

ROOT = Path(__file__).resolve().parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")
BLOCK = re.compile(r"^```sh\n(.*?)^```", re.MULTILINE | re.DOTALL)


def shell_lines() -> list[str]:
    """Every line of the README's shell blocks, comments aside."""
    joined = "".join(BLOCK.findall(README)).replace("\\\n", " ")
    return [line.strip() for line in joined.splitlines() if line.strip() and not line.lstrip().startswith("#")]


def commands_shown() -> list[str]:
    """Every call of clinchbook in the README's shell blocks."""
    calls = [call.strip() for line in shell_lines() for call in re.split(r"&&|\||;", line)]
    return [call for call in calls if re.match(r"(\S*/)?clinchbook\b", call)]


def block_after(marker: str) -> str:
    """The shell block that follows a marker, as the continuous integration finds it."""
    behind = README.partition(f"<!-- line: {marker} -->")[2]
    found = BLOCK.search(behind)
    assert found is not None, f"README.md has no shell block after the marker {marker}"
    return found.group(1).strip()


def test_the_demo_line_ends_with_the_demo() -> None:
    assert block_after("demo").endswith("clinchbook demo")


def test_the_test_line_installs_and_tests() -> None:
    line = block_after("test")
    assert ".[dev]" in line
    assert "pytest" in line
    assert ".venv" in line


@pytest.mark.parametrize("call", commands_shown())
def test_every_command_shown_is_understood(call: str) -> None:
    words = shlex.split(call.split(" <")[0].split(" >")[0])[1:]
    command = typer.main.get_command(app)
    while isinstance(command, TyperGroup) and words and not words[0].startswith("-"):
        command = command.commands[words.pop(0)]
    if not isinstance(command, TyperGroup):
        assert command.make_context("clinchbook", words).params
