"""Every --help answers, with an example, and without heavy imports."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
import typer.main
from typer.core import TyperGroup

from pipeline.cli import app

if TYPE_CHECKING:
    from tests.cli.conftest import Run

HEAVY = (
    "spacy",
    "faster_whisper",
    "ctranslate2",
    "onnxruntime",
    "av",
    "numpy",
    "torch",
    "matplotlib",
    "fpdf",
    "jinja2",
)
PROBE = """
import sys
from pipeline.cli import app
try:
    app(sys.argv[1:])
except SystemExit as ended:
    code = ended.code
print("\\nLOADED", code, *sorted(set(sys.modules) & set({heavy!r})))
"""


def commands(group: TyperGroup, before: tuple[str, ...] = ()) -> Iterator[tuple[str, ...]]:
    """The words of every command and sub-command."""
    yield before
    for name, command in group.commands.items():
        if isinstance(command, TyperGroup):
            yield from commands(command, (*before, name))
        else:
            yield (*before, name)


def all_commands() -> list[tuple[str, ...]]:
    """Every command of clinchbook, itself included."""
    root = typer.main.get_command(app)
    assert isinstance(root, TyperGroup)
    return list(commands(root))


def test_the_commands_that_are_promised_are_there() -> None:
    names = {" ".join(words) for words in all_commands()}
    promised = (
        "ingest,watch,extract,show,search,brief,due,stock,export,import,review,roster import,roster add,roster list,"
        "demo,check"
    )
    assert names >= set(promised.split(","))


@pytest.mark.parametrize("words", all_commands(), ids=" ".join)
def test_help_answers_with_an_example(words: tuple[str, ...], run: Run) -> None:
    ended = run(*words, "--help")
    assert ended.code == 0
    assert "Example: " in ended.out
    assert "clinchbook " + " ".join(words) in " ".join(ended.out.rpartition("Example: ")[2].split())
    assert ended.err == ""


@pytest.mark.parametrize("group", [(), ("roster",), ("words",)], ids=" ".join)
def test_the_list_of_commands_cuts_no_sentence_short(group: tuple[str, ...], run: Run) -> None:
    assert "..." not in run(*group, "--help").out.rpartition("Commands:")[2]


def loaded_by(*arguments: str, store: Path, heavy: tuple[str, ...] = HEAVY) -> list[str]:
    """Run a command in a fresh Python; returns its exit code and the heavy modules that it loaded."""
    done = subprocess.run(
        [
            sys.executable,
            "-c",
            PROBE.format(heavy=heavy),
            *arguments,
            *(() if {"--help", "--version"} & {*arguments} else ("--store", str(store))),
        ],
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    return done.stdout.rpartition("LOADED ")[2].split()


def test_the_probe_would_find_something_heavy(tmp_path: Path) -> None:
    """What reads a memo loads spaCy, and the probe says so."""
    text = tmp_path / "memo.txt"
    text.write_text("Bramble. Thrush in the left hind.", encoding="utf-8")
    assert {"0", "numpy", "spacy"} <= {*loaded_by("extract", str(text), store=tmp_path / "store")}


@pytest.mark.parametrize("arguments", [["--help"], ["ingest", "--help"], ["roster", "add", "Bramble"]], ids=" ".join)
def test_light_commands_load_nothing_heavy(arguments: list[str], tmp_path: Path) -> None:
    assert loaded_by(*arguments, store=tmp_path / "store") == ["0"]


def test_looking_things_up_loads_nothing_heavy(tmp_path: Path) -> None:
    store = tmp_path / "store"
    assert loaded_by("roster", "add", "Bramble", store=store) == ["0"]
    assert loaded_by("roster", "list", store=store) == ["0"]
    assert loaded_by("search", "thrush", store=store) == ["0"]
    for form in ("csv", "json", "md"):
        assert loaded_by("export", "Bramble", "--format", form, store=store) == ["0"]
    assert loaded_by("review", "--no-input", store=store) == ["0"]
    assert loaded_by("review", "--json", store=store) == ["0"]
    assert loaded_by("brief", "Bramble", store=store) == ["0"]
    assert loaded_by("due", store=store) == ["0"]
    assert loaded_by("stock", store=store) == ["0"]


def test_a_query_loads_no_models_and_no_tables(tmp_path: Path) -> None:
    store = tmp_path / "store"
    assert loaded_by("roster", "add", "Bramble", store=store) == ["0"]
    for words in (["search", "thrush"], ["brief", "Bramble"], ["due"], ["stock"]):
        assert loaded_by(*words, store=store, heavy=("pydantic", "rich", "sqlite_utils", "icalendar")) == ["0"]


def test_versions_are_told_without_models_and_tables(tmp_path: Path) -> None:
    assert loaded_by("--version", store=tmp_path, heavy=(*HEAVY, "pydantic", "rich", "sqlite_utils")) == ["0"]


def completed(typed: str, shell: str = "bash") -> list[str]:
    """What a shell is offered behind these words, as it asks for it: in the environment of a command of its own."""
    words = typed.split(" ")
    asked = {"_CLINCHBOOK_COMPLETE": f"complete_{shell}", "COMP_WORDS": typed, "COMP_CWORD": str(len(words) - 1)}
    asked |= {"_TYPER_COMPLETE_ARGS": typed, "_TYPER_COMPLETE_FISH_ACTION": "get-args"}
    done = subprocess.run(
        [sys.executable, "-m", "pipeline.cli"],
        capture_output=True, text=True, check=True, timeout=60, env={**os.environ, **asked},
    )  # fmt: skip
    return done.stdout.split()


@pytest.mark.parametrize(
    ("typed", "offered"),
    [
        ("clinchbook re", ["review", "reread", "restore"]),
        ("clinchbook roster ", ["import", "add", "list"]),
        ("clinchbook search --st", ["--status", "--store"]),
        ("clinchbook export --format ", ["html", "pdf", "csv", "json", "md"]),
    ],
)
def test_a_shell_completes_commands_options_and_values(typed: str, offered: list[str]) -> None:
    assert completed(typed) == offered


@pytest.mark.parametrize("shell", ["bash", "zsh", "fish", "powershell"])
def test_every_shell_gets_its_script(shell: str) -> None:
    asked = {"_CLINCHBOOK_COMPLETE": f"source_{shell}"}
    done = subprocess.run(
        [sys.executable, "-m", "pipeline.cli"],
        capture_output=True, text=True, check=True, timeout=60, env={**os.environ, **asked},
    )  # fmt: skip
    assert "_CLINCHBOOK_COMPLETE" in done.stdout
    assert f"complete_{shell}" in done.stdout
