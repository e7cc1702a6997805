"""What README.md and DEVELOPERS.md name in backticks is there: files, folders, modules, and names in the code."""

from __future__ import annotations

import io
import re
import tokenize
from functools import cache

import pytest

from tests.test_layers import ROOT

DOCUMENTS = ("README.md", "DEVELOPERS.md")
FENCED = re.compile(r"^```.*?^```", re.MULTILINE | re.DOTALL)
SPAN = re.compile(r"`([^`\n]+(?:\n[^`\n]+)?)`")
ENDINGS = r"(?:py|csv|toml|json|html|md|gz|db|zip|css|js)"
PATH = re.compile(rf"[\w.]*[\w-]+(?:/[\w.*-]+)+/?|[\w.-]+/|[\w-]+\.{ENDINGS}")
NAME = re.compile(r"[A-Za-z_]\w*(?:\.[A-Za-z_]\w*)*(?:\(\))?")
# Paths that are no files of this project: places on a farrier's machine, the files of his store and of a model.
ELSEWHERE = re.compile(
    r"/media/.*|~/.*|horses\.csv|memos/|outputs/demo-store|everything\.json|hester.*|horse\.pdf|due\.ics|clinchbook\.db"
    r"|originals/.*|words/|demo\.wav|\.venv.*|xx/.*|model\.bin|config\.json|tokenizer\.json"
)
# What is not ours to define: words of other programs and formats.
OTHERS = frozenset({"fsync", "align", "git", "pip", "ORT_DISABLE_TELEMETRY", "disable_telemetry_events()"})


@cache
def files() -> tuple[str, ...]:
    """Every file and folder of the project, with forward slashes."""
    tops = ("pipeline", "tests", "vocab", "demo_audio", "outputs")
    found = [path for top in tops for path in (ROOT / top).rglob("*") if "__pycache__" not in path.parts]
    # Of .ci the script alone: beside it stands a whole environment, of other people's code.
    found += [*(ROOT / top for top in (*tops, ".ci")), ROOT / ".ci" / "run", *ROOT.glob("*")]
    return tuple(path.relative_to(ROOT).as_posix() for path in found)


@cache
def words() -> frozenset[str]:
    """Every name and every word of a string in the code, and every word of the data beside it."""
    found: set[str] = set()
    for name in files():
        path = ROOT / name
        if name in ("tests/test_documents.py", "tests/test_recipes.py"):
            continue  # they say what is missing
        if path.suffix == ".py":
            for token in tokenize.generate_tokens(io.StringIO(path.read_text(encoding="utf-8")).readline):
                if token.type != tokenize.COMMENT:
                    found.update(re.findall(r"\w+", token.string))
        elif path.suffix in (".csv", ".html", ".toml", ".css") and path.stat().st_size < 1_000_000:
            found.update(re.findall(r"\w+", path.read_text(encoding="utf-8")))
    return frozenset(found)


def spans(document: str) -> list[str]:
    """Everything in backticks outside the fenced blocks, each once."""
    text = FENCED.sub("", (ROOT / document).read_text(encoding="utf-8"))
    return list(dict.fromkeys(" ".join(span.split()) for span in SPAN.findall(text)))


def is_there(path: str) -> bool:
    """Whether a path, or the end of one, is that of a file or folder of the project; ``*`` and ``N`` stand for any."""
    wanted = re.escape(path.rstrip("/")).replace(r"\*", "[^/]*").replace("vN", r"v\d+")
    return any(re.search(rf"(?:^|/){wanted}$", name) for name in files())


def paths_named() -> list[tuple[str, str]]:
    found = [(document, word) for document in DOCUMENTS for span in spans(document) for word in span.split()]
    return [(document, word) for document, word in dict.fromkeys(found) if PATH.fullmatch(word)]


@pytest.mark.parametrize(("document", "path"), paths_named(), ids=lambda part: part)
def test_every_path_is_there(document: str, path: str) -> None:
    assert ELSEWHERE.fullmatch(path) or is_there(path), f"{document} names {path}, which is not there"


def modules_run() -> list[str]:
    text = "\n".join((ROOT / document).read_text(encoding="utf-8") for document in DOCUMENTS)
    return sorted(set(re.findall(r"python -m ((?:pipeline|tests)[\w.]*)", text)))


@pytest.mark.parametrize("module", modules_run())
def test_every_module_can_be_run(module: str) -> None:
    path = ROOT.joinpath(*module.split("."))
    start = path / "__main__.py" if path.is_dir() else path.with_suffix(".py")
    assert 'if __name__ == "__main__"' in start.read_text(encoding="utf-8") or start.name == "__main__.py"


def names_in_code() -> list[str]:
    """Names that only code has: with an underscore, a capital in the middle, all in capitals, or a dot."""
    found = [span for document in DOCUMENTS for span in spans(document) if NAME.fullmatch(span)]
    telling = re.compile(r".*_.*|[A-Z0-9]+|.*[a-z][A-Z].*|.*\w\.\w.*|.*\(\)")
    return [name for name in dict.fromkeys(found) if telling.fullmatch(name) and not PATH.fullmatch(name)]


@pytest.mark.parametrize("name", names_in_code())
def test_every_name_is_in_the_code(name: str) -> None:
    parts = re.findall(r"\w+", name)
    assert name in OTHERS or all(part in words() for part in parts), f"nothing is called {name}"


def first_lines() -> dict[str, str]:
    """The first line of every module of the program, by its path."""
    paths = sorted((ROOT / "pipeline").rglob("*.py"))
    return {
        path.relative_to(ROOT).as_posix(): path.read_text(encoding="utf-8").partition("\n")[0]
        for path in paths
        if path.name != "__main__.py"
    }


def test_every_file_says_in_its_first_line_what_happens_there() -> None:
    silent = [name for name, line in first_lines().items() if not re.fullmatch(r'"""[^"].{15,}', line)]
    assert silent == []
    said = list(first_lines().values())
    assert sorted({line for line in said if said.count(line) > 1}) == []


def test_the_documents_name_much() -> None:
    assert len(paths_named()) > 100
    assert len(names_in_code()) > 60
    assert len(modules_run()) > 8


def test_what_is_not_there_would_be_missed() -> None:
    assert not is_there("pipeline/reading/gatepost.py")
    assert is_there("reading/feet.py")
    assert "GatepostReader" not in words()
