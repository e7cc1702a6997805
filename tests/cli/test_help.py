"""Every --help answers, with an example, and without heavy imports."""

from __future__ import annotations

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
            *(() if "--help" in arguments else ("--store", str(store))),
        ],
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    return done.stdout.rpartition("LOADED ")[2].split()


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
