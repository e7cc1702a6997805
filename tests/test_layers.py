"""The house's own rules, held by tests: layers, file and function lengths, no silenced warnings."""

from __future__ import annotations

import ast
import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
SOURCES = sorted((ROOT / "pipeline").rglob("*.py"))
TESTS = sorted((ROOT / "tests").rglob("*.py"))
LONGEST_FILE = 400
LONGEST_FUNCTION = 40
# Written apart, so that this file does not find itself.
SILENCERS = re.compile(
    "no" + r"qa|type: *ign" + r"ore|pragma: no " + "cover|TO" + r"DO|FIX" + r"ME|except Excep" + "tion"
)


def name_of(path: Path) -> str:
    """A path as a test's name."""
    return path.relative_to(ROOT).as_posix()


def test_imports_run_one_way() -> None:
    linter = Path(sys.executable).with_name("lint-imports")
    done = subprocess.run([str(linter), "--no-cache"], cwd=ROOT, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.mark.parametrize("path", SOURCES, ids=name_of)
def test_files_and_functions_stay_short(path: Path) -> None:
    source = path.read_text(encoding="utf-8")
    assert source.count("\n") < LONGEST_FILE
    functions = (ast.FunctionDef, ast.AsyncFunctionDef)
    long = [
        f"{node.name}: {length} lines"
        for node in ast.walk(ast.parse(source))
        if isinstance(node, functions) and (length := code_lines(node)) >= LONGEST_FUNCTION
    ]
    assert long == []


def code_lines(function: ast.FunctionDef | ast.AsyncFunctionDef) -> int:
    """The lines of a function's body, its docstring aside."""
    body = function.body[1:] if ast.get_docstring(function) is not None else function.body
    return (body[-1].end_lineno or 0) - body[0].lineno + 1 if body else 0


@pytest.mark.parametrize("path", [*SOURCES, *TESTS], ids=name_of)
def test_nothing_is_silenced_or_left_undone(path: Path) -> None:
    assert SILENCERS.findall(path.read_text(encoding="utf-8")) == []
