"""Hostile lists, lines and names: nothing outside the store is written, and everything refused gets a sentence."""

from __future__ import annotations

import hashlib
import json
import os
import random
import tempfile
from collections.abc import Iterator
from pathlib import Path

from pipeline.errors import ClinchbookError
from pipeline.keeping import Store
from pipeline.keeping.roster import read_roster
from tests.endurance.apart import Caught
from tests.endurance.commands import Ended, command, loaded_reader, wav
from tests.endurance.damage import damaged_bytes
from tests.endurance.outcome import Outcome
from tests.endurance.yard import with_roster

_LIST = (
    b"name,owner,place,also_called,age\r\n"
    b'Bramble,A. Fern,River barn,Bram;Brambles,12\r\n"Tansy, the grey",B. Reed,Mill,,7\r\nCopper,,,"",\r\n'
)
_LISTS = {
    "nothing": b"",
    "one line end": b"\n",
    "a mark alone": b"\xef\xbb\xbf",
    "a header alone": b"name,owner\n",
    "UTF-16": _LIST.decode().encode("utf-16"),
    "Latin-1": "name\nBlüte\n".encode("latin-1"),
    "a NUL": b"name\nBram\x00ble\n",
    "only NULs": bytes(5000),
    "the same column twice": b"name,owner,Name\nBramble,A,B\n",
    "no column name": b"horse,owner\nBramble,A\n",
    "a huge cell": b"name,owner\nBramble," + b"x" * 5_000_000 + b"\n",
    "a huge name": b"name\n" + b"x" * 100_000 + b"\n",
    "many columns": b"name," + b",".join(b"c%d" % n for n in range(20_000)) + b"\nBramble\n",
    "many columns without names": b"name" + b"," * 50_000 + b"\nBramble\n",
    "an open quote": b'name\n"Bramble\n' * 50,
    "formulas": b'name,owner\n=1+1,@SUM(A1)\n-2+3,+4\n"=HYPERLINK(""http://x"")",\t=1\n',
    "old line ends": b"name,owner\rBramble,A\rTansy,B\r",
    "a page": b"<html><body>name</body></html>",
    "an escape": b"name\n\x1b[31mBramble\x1b[0m\n",
    "the other way round": "name\n\u202eelbmarB\n".encode(),
    "letters without a key": "name\n\u200b\n\u00a0\n".encode(),
    "one name in two spellings": "name\nBlüte\nBlu\u0308te\n".encode(),
    "a lone half": b"name\n\xed\xa0\x80\n",
    "a zip": b"PK\x03\x04" + bytes(range(256)) * 20,
}
NAMES = (
    "../../x",
    "..",
    ".",
    "/etc/passwd",
    "a\x00b",
    "n" * 300,
    "n" * 100_000,
    "Blüte 🐴",
    "\u202eelbmarB",
    "a\nb",
    "\r",
    "\x1b[31mred",
    "-rf",
    "--store",
    "'; DROP TABLE horses; --",
    '"',
    "%s%n",
    "{0}",
    "$(id)",
    "`id`",
    "*",
    "NEAR(",
    "AND",
    'a" OR "b',
    "COM1",
    " ",
    "\ufeff",
    "\u200b",
    "\udcff",
    "ﷺ" * 50,
    "İ",
    "𝕭𝖗",
    "=1+1",
    "name\tother",
    "a/b\\c",
    "~",
    "~root/x",
    "\u2028",
)
_FILES = (
    "..wav",
    "-rf.wav",
    "a\nb.wav",
    "\u202evaw.x.wav",
    "🐴.wav",
    "n" * 251 + ".wav",
    "\x1b[31m.wav",
    "'; --.wav",
    "%s.wav",
    "a:b.wav",
    "2026-99-99.wav",
    "9999-12-31 23-59-59.wav",
    "CON.wav",
    " .wav",
    "\udcff\udcfe.wav",
    "memo.wav.exe",
    "no ending",
    "“”.WAV",
    "x.{}",
)
_LINES = (
    "",
    "{}",
    "[]",
    "null",
    "1",
    "NaN",
    '"text"',
    "{" * 100_000,
    "[" * 100_000,
    '{"text": ' * 50_000,
    "9" * 5000,
    '{"id": ' + "9" * 5000 + "}",
    '{"text": NaN}',
    '{"text": 1}',
    '{"text": ""}',
    '{"text": "\\u0000"}',
    '{"text": "\\ud800 thrush"}',
    '{"id": "\\udfff", "text": "x"}',
    '{"text": "thrush", "date": "0000-00-00"}',
    '{"text": "thrush", "date": 1e300}',
    '{"text": "thrush", "date": -1e18}',
    '{"text": "thrush", "date": ' + "9" * 400 + "}",
    '{"text": "thrush", "date": "9999-12-31"}',
    '{"text": "thrush", "date": 253402300800}',
    '{"text": "x", "roster": "Bramble"}',
    '{"text": "x", "roster": [1]}',
    '{"text": "x", "roster": [""]}',
    '{"text": "x", "roster": ["\\ud800"]}',
    '{"text": "Bramble", "roster": ["' + "n" * 50_000 + '"]}',
    '{"text": "a", "text": "b"}',
    '{"id": 1.5, "text": "x"}',
    '{"id": [], "text": "x"}',
    '{"text": "x", "roster": ' + json.dumps(["Bramble"] * 3000) + "}",
    '{"audio": "/etc/passwd"}',
    "\ufeff{}",
    '{"text": "x"} {}',
    "\x00",
)


def run(count: int, every: int, seed: int) -> list[Outcome]:
    """Every crafted list and line and each ``every``-th name once, and ``count`` damaged lists and lines."""
    loaded_reader()
    return [_lists(count, seed), _lines(count, seed), _names(every), _files()]


def _lists(count: int, seed: int) -> Outcome:
    outcome = Outcome("hostile lists", remarks=[f"seed {seed}"])
    damaged = {f"damaged {n}": damaged_bytes(_LIST, random.Random(f"{seed} list {n}")) for n in range(count)}
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        path = Path(named) / "horses.csv"
        with Store.open(Path(named) / "book") as store:
            for name, content in {**_LISTS, **damaged}.items():
                path.write_bytes(content)
                outcome.cases += 1
                with Caught() as caught:
                    _import(store, path)
                outcome.expect(not caught.trouble, f"{name}: {caught.trouble.strip()[-300:]}")
            outcome.failures += store.problems()
    return outcome


def _import(store: Store, path: Path) -> None:
    try:
        horses = read_roster(path)
        added, updated = store.add_horses(horses)
    except ClinchbookError as error:
        if not str(error).endswith("."):
            raise
    else:
        assert added + updated <= len(horses)
        assert {horse.name for horse in horses} <= {kept.name for kept in store.horses()}


def _lines(count: int, seed: int) -> Outcome:
    outcome = Outcome("hostile lines", remarks=[f"seed {seed}"])
    whole = json.dumps(
        {"id": "1", "date": "2026-03-02", "roster": ["Bramble", "Tansy"], "text": "Bramble. Thrush, left hind."}
    )
    damaged = [
        damaged_bytes(whole.encode(), random.Random(f"{seed} line {n}")).replace(b"\n", b"") for n in range(count)
    ]
    lines = [*(line.encode("utf-8", "surrogatepass") for line in _LINES), *damaged]
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        path = Path(named) / "lines.jsonl"
        for first in range(0, len(lines), 200):
            for task in (("extract",), ("ingest", "--dry-run")):
                some = lines[first : first + 200]
                outcome.cases += len(some)
                path.write_bytes(b"\n".join(some))
                outcome.failures += _wrong_answers(
                    command(*task, "--jsonl", path), [line for line in some if line.strip()]
                )
    return outcome


def _wrong_answers(ended: Ended, asked: list[bytes]) -> list[str]:
    if ended.trouble:
        return [ended.trouble.strip()[-400:]]
    answers = ended.out.split("\n")[:-1]
    wrong = [] if len(answers) == len(asked) else [f"{len(answers)} answers to {len(asked)} lines"]
    for answer, line in zip(answers, asked, strict=False):
        with Caught() as caught:
            assert isinstance(json.loads(answer), dict)
        if caught.trouble:
            wrong.append(f"the answer to {line[:100]!r} is {answer[:100]!r}")
    return wrong


def _names(every: int) -> Outcome:
    outcome = Outcome("hostile names")
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        outside = Path(named)
        book = outside / "book"
        with_roster(book)
        command("ingest", wav(outside / "2026-03-02.wav", 1), "--store", book)
        before = snapshot(outside, book)
        for name in NAMES[::every]:
            for arguments in _uses(book, name):
                outcome.cases += 1
                ended = command(*arguments)
                words = f"{arguments[:2]} {name[:40]!r}"
                outcome.expect(not ended.trouble and "Traceback" not in ended.err, f"{words}: {ended.told()[:400]}")
                outcome.expect(not ended.code or bool(ended.err.strip()), f"{words}: code {ended.code} without a word")
                outcome.expect("\x1b" not in ended.out + ended.err, f"{words}: an escape reaches the terminal")
        outcome.expect(snapshot(outside, book) == before, "something outside the store was written")
        with Store.open(book) as store:
            outcome.failures += store.problems(deep=True)
    return outcome


def _uses(book: Path, name: str) -> Iterator[tuple[str | Path, ...]]:
    store = ("--store", book)
    yield ("roster", "add", *store, "--owner", name, "--place", name, "--also-called", name, "--", name)
    yield ("search", *store, "--horse", name)
    yield ("search", *store, "--", name)
    yield ("assign", *store, "--place", name, "--", "1", name)
    yield ("export", *store, "--format", "md", "--", name)
    yield ("show", *store, "--", name)
    yield ("words", "add", *store, "--", "findings", "thrush", name)
    yield ("words", "add", *store, "--", name, name, name)
    yield ("words", "forget", *store, "--", name)
    yield ("roster", "list", *store)


def _files() -> Outcome:
    outcome = Outcome("hostile files")
    with tempfile.TemporaryDirectory(prefix="clinchbook-") as named:
        outside = Path(named)
        memos, book = outside / "memos", outside / "book"
        made = _hostile_folder(memos)
        before = snapshot(outside, book)
        runs: list[tuple[str | Path, ...]] = [
            ("ingest", memos),
            ("ingest", *made),
            ("watch", memos, "--once", "--settle", "0.1"),
        ]
        for number, arguments in enumerate(runs):
            ended = command(*arguments, "--store", book)
            outcome.cases += len(made)
            outcome.expect(not ended.trouble and "Traceback" not in ended.err, f"run {number}: {ended.told()[:600]}")
            outcome.expect("\x1b" not in ended.out + ended.err, f"run {number}: an escape reaches the terminal")
        outcome.expect(snapshot(outside, book) == before, "something outside the store was written")
        with Store.open(book) as store:
            outcome.failures += store.problems(deep=True)
            kept = {memo.file_name for memo in store.memos()}
        wanted = {os.fsencode(path.name).decode("utf-8", "replace") for path in made}
        outcome.expect(len(kept) == len(wanted), f"{len(kept)} of {len(wanted)} were kept: not {sorted(wanted - kept)}")
    return outcome


def _hostile_folder(memos: Path) -> list[Path]:
    """Recordings with odd names, beside what is no recording: links out and in a circle, a pipe, a deep folder."""
    memos.mkdir()
    made = [wav(memos / name, number) for number, name in enumerate(_FILES)]
    (memos / "out.wav").symlink_to("/etc/passwd")
    (memos / "round").symlink_to(memos)
    (memos / "gone.wav").symlink_to(memos / "nothing")
    os.mkfifo(memos / "pipe.wav")
    deep = memos
    for _ in range(60):
        deep = deep / "folder in folder"
    deep.mkdir(parents=True)
    return made


def snapshot(folder: Path, without: Path) -> dict[str, str]:
    """Every file under a folder with the hash of its bytes, but for one folder."""
    return {
        str(path): hashlib.sha256(path.read_bytes()).hexdigest() if path.is_file() and not path.is_symlink() else ""
        for path in folder.rglob("*")
        if not path.is_relative_to(without)
    }
