"""The recipes of DEVELOPERS.md, each followed to the letter in a copy of the project, or through what it names."""

from __future__ import annotations

import ast
import os
import re
import shutil
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest

from pipeline.errors import VocabularyError, WeightsError
from pipeline.hearing import weights
from pipeline.reading import Reader
from pipeline.record import Fact, Transcript
from pipeline.vocabulary import load_vocabulary, vocabulary_folder

ROOT = Path(__file__).resolve().parent.parent
SECTION = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").partition("## 3. Recipes")[2].partition("\n## 4.")[0]
RECIPES = dict(re.findall(r"^\*\*(.+?)\.?\*\*(.*?)(?=^\*\*|\Z)", SECTION, re.MULTILINE | re.DOTALL))
# "`WORDED_SLOTS` of `terms.py`", "`SLOT_CLASSES` in `vocabulary.py`", "`_DENIABLE` (`denials.py`)".
NAMED_THERE = re.compile(r"`([A-Za-z_]\w*)(?:\[[^`]*\])?`\s+(?:(?:of|in)\s+|\()`([\w/]+\.(?:py|csv|toml))`")


@pytest.mark.parametrize("wanted", ["A word", "A finding", "A slot", "An export format", "A recogniser model"])
def test_there_is_a_recipe(wanted: str) -> None:
    assert wanted in RECIPES


def _places() -> list[tuple[str, str]]:
    return sorted({(name, file) for text in RECIPES.values() for name, file in NAMED_THERE.findall(text)})


def _sources(file: str) -> list[str]:
    ours = [path for top in ("pipeline", "tests", "vocab") for path in (ROOT / top).rglob("*") if path.is_file()]
    return [path.read_text(encoding="utf-8") for path in ours if f"/{path.as_posix()}".endswith(f"/{file}")]


def _names(source: str) -> set[str]:
    """Every name that a module defines or binds, at any depth."""
    tree = list(ast.walk(ast.parse(source)))
    made = {node.name for node in tree if isinstance(node, ast.FunctionDef | ast.ClassDef)}
    return made | {node.id for node in tree if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store)}


def test_the_recipes_name_places() -> None:
    assert len(_places()) > 15


@pytest.mark.parametrize(("name", "file"), _places(), ids=" in ".join)
def test_what_a_recipe_names_is_there(name: str, file: str) -> None:
    sources = _sources(file)
    assert sources, f"there is no {file}"
    assert any(name in _names(source) if file.endswith(".py") else name in source for source in sources)


class TestAWord:
    """A form goes into its file, with a source; nothing else is needed."""

    @staticmethod
    def _with(folder: Path, line: str) -> Path:
        shutil.copytree(vocabulary_folder(), folder)
        with (folder / "findings.csv").open("a", encoding="utf-8") as file:
            file.write(f"\n{line}\n")
        return folder

    @staticmethod
    def _facts(folder: Path, text: str) -> list[Fact]:
        reader = Reader(load_vocabulary(folder))
        visits = reader.read(Transcript(text=text), [], date(2026, 3, 2))
        return [fact for visit in visits for fact in visit.facts]

    def test_is_read(self, tmp_path: Path) -> None:
        folder = self._with(tmp_path / "vocab", 'thrush,porridge frog,,"common practice, no source"')
        found = self._facts(folder, "Left fore, porridge frog.")
        assert [(fact.foot, fact.slot, fact.value, fact.quote) for fact in found] == [
            ("LF", "finding", "thrush", "porridge frog")
        ]
        assert load_vocabulary(folder).version != load_vocabulary().version

    def test_is_read_over_a_gap(self, tmp_path: Path) -> None:
        folder = self._with(tmp_path / "vocab", 'thrush,gone ... porridgy,,"common practice, no source"')
        found = self._facts(folder, "Left fore, gone a bit porridgy.")
        assert [(fact.foot, fact.value) for fact in found] == [("LF", "thrush")]

    @pytest.mark.parametrize(
        ("line", "problem"),
        [
            ("thrush,porridge frog,,", "no source; write 'common practice, no source'"),
            ('corn,thrush,,"common practice, no source"', "'thrush' means thrush on line"),
            ('porridge,porridge frog,,"common practice, no source"', "'porridge' is no finding of the record"),
        ],
    )
    def test_with_a_mistake_is_refused(self, tmp_path: Path, line: str, problem: str) -> None:
        with pytest.raises(VocabularyError, match=problem):
            load_vocabulary(self._with(tmp_path / "vocab", line))


class Copy:
    """A copy of the project that a recipe is followed in."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        for name in ("pipeline", "vocab"):
            shutil.copytree(ROOT / name, folder / name, ignore=shutil.ignore_patterns("__pycache__"))

    def put(self, file: str, before: str, after: str) -> None:
        """Write ``after`` in place of ``before``, which must stand there once."""
        path = self.folder / file
        text = path.read_text(encoding="utf-8")
        assert text.count(before) == 1, f"{before!r} stands {text.count(before)} times in {file}"
        path.write_text(text.replace(before, after), encoding="utf-8")

    def add(self, file: str, text: str) -> None:
        """Write ``text`` behind what a file holds; a file that is not there is made."""
        with (self.folder / file).open("a", encoding="utf-8") as out:
            out.write(text)

    def run(self, script: str) -> str:
        """What a script prints that uses the copy and nothing but the copy."""
        surroundings = {**os.environ, "PYTHONPATH": str(self.folder), "PYTHONDONTWRITEBYTECODE": "1"}
        done = subprocess.run(
            [sys.executable, "-c", script], cwd=self.folder, env=surroundings,
            capture_output=True, text=True, encoding="utf-8", timeout=120,
        )  # fmt: skip
        assert done.returncode == 0, done.stderr
        return done.stdout.strip()


@pytest.fixture
def copied(tmp_path: Path) -> Copy:
    """A copy of the project in a folder of its own."""
    return Copy(tmp_path / "copy")


# Reads a memo, judges it, keeps it, and tells what the store has of it by then and which cautions its record carries.
KEEP = """
import hashlib
from datetime import date
from pathlib import Path
from pipeline.judging import cautions, judge
from pipeline.keeping import Store
from pipeline.reading import Reader
from pipeline.record import Memo, MemoRecord, Transcript
from pipeline.using.wording import fact_words
from pipeline.vocabulary import load_vocabulary

sound = Path("memo.wav")
sound.write_bytes(b"sound")
said = Transcript(text={text!r})
visits = judge(Reader(load_vocabulary()).read(said, [], date(2026, 3, 2)), said)
warned = cautions([fact for visit in visits for fact in visit.facts])
memo = Memo(path="memo.wav", sha256=hashlib.sha256(b"sound").hexdigest())
with Store.open(Path("store")) as store:
    (number,) = store.keep(MemoRecord(memo=memo, transcript=said.text, visits=visits, cautions=warned), said, sound)
    for fact in store.visit(number).visit.facts:
        print(fact.foot, fact.slot, fact.value, fact_words(fact), sep="|")
print(*warned, sep="\\n")
"""


def test_a_finding(copied: Copy) -> None:
    copied.put("pipeline/terms.py", '"thrush", "white_line_disease",', '"thrush", "pedal_bone", "white_line_disease",')
    copied.add("vocab/findings.csv", '\npedal_bone,porridge bone,,"common practice, no source"\n')
    copied.put("pipeline/judging/cautions.py", '"keratoma"', '"keratoma", "pedal_bone"')
    told = copied.run(KEEP.format(text="Left fore, porridge bone."))
    assert told.splitlines() == [
        "LF|finding|pedal_bone|pedal bone",
        "A finding is recorded that needs a vet to name it for certain. Ask your vet; local rules apply.",
    ]


def test_a_slot_of_words(copied: Copy) -> None:
    shape = '    "frog_shape": ("wide", "narrow"),\n'
    copied.put("pipeline/terms.py", '    "nail_line": ("low", "good"),', f'{shape}    "nail_line": ("low", "good"),')
    line = 'narrow,porridge shape,,"common practice, no source"'
    copied.add("vocab/frog_shapes.csv", f"canonical,spoken,heard_as,source\n{line}\n")
    copied.put("pipeline/vocabulary.py", "CLASS_SLOTS = {", 'CLASS_SLOTS = {\n    "frog_shapes": "frog_shape",')
    copied.put("pipeline/using/wording.py", "_WHOLE = {", '_WHOLE = {\n    "frog_shape": "frog {}",')
    told = copied.run(KEEP.format(text="Left fore, porridge shape."))
    assert told.splitlines() == ["LF|frog_shape|narrow|frog narrow"]


# Adds a horse and hands on its record in the new form, through the command line.
HAND_ON = """
from pipeline.cli import app

app(["roster", "add", "Bramble", "--store", "store"], standalone_mode=False)
app(["export", "Bramble", "--format", "txt", "--store", "store"], standalone_mode=False)
"""


def test_an_export_format(copied: Copy) -> None:
    copied.put("pipeline/using/export.py", '"json", "md")', '"json", "md", "txt")')
    renderer = '"txt": lambda page: f"The record of {page.title}".encode()}'
    copied.put("pipeline/using/export.py", '"md": _markdown}', f'"md": _markdown, {renderer}')
    copied.put("pipeline/cli/handing_on.py", '"json", "md"]', '"json", "md", "txt"]')
    assert copied.run(HAND_ON).splitlines() == ["Bramble added.", "The record of Bramble"]


class TestARecogniserModel:
    """A folder is taken as it is; a packaged one is an entry in ``WHOLE``."""

    @staticmethod
    def _model(folder: Path) -> Path:
        folder.mkdir(parents=True)
        for name in ("model.bin", "config.json", "tokenizer.json"):
            (folder / name).write_text("{}", encoding="utf-8")
        return folder

    def test_a_folder(self, tmp_path: Path) -> None:
        folder = self._model(tmp_path / "own")
        assert weights.weights_folder(str(folder)) == str(folder.resolve())
        assert re.fullmatch("own-[0-9a-f]{12}", weights.weights_version(str(folder)))

    def test_a_folder_that_lacks_a_file(self, tmp_path: Path) -> None:
        folder = self._model(tmp_path / "own")
        (folder / "tokenizer.json").unlink()
        with pytest.raises(WeightsError, match=r"tokenizer\.json"):
            weights.weights_folder(str(folder))

    def test_a_package(self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        package = self._model(tmp_path / "gatepost_model" / "data").parent
        (package / "__init__.py").touch()
        monkeypatch.syspath_prepend(str(tmp_path))
        monkeypatch.setitem(weights.WHOLE, "gatepost", ("gatepost_model", "data"))
        assert weights.weights_folder("gatepost") == str(package / "data")
        assert weights.weights_version("gatepost").startswith("gatepost-")
