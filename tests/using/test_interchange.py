"""A record goes to another store and back: the same to the byte, all of it or nothing."""

from __future__ import annotations

import base64
import json
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from importlib.resources import files
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from pipeline.errors import FileMissingError, RecordError
from pipeline.keeping import Prefer, Store
from pipeline.record import RosterHorse
from pipeline.using.export import Request, choice_of, export_all, export_horse
from pipeline.using.interchange import SCHEMA_NAME, schema_text, take_in

DAY = date(2026, 5, 12)
WHOLE = Request("json", choice_of(DAY))


@pytest.fixture
def other(tmp_path: Path) -> Iterator[Store]:
    """Another farrier's store, empty."""
    with Store.open(tmp_path / "other") as opened:
        yield opened


def correct(store: Store) -> None:
    """A correction of a fact and of whose visit it was, as any program could write them."""
    store.assign(3, store.horse("Bramble"), who="nora", why="listened again")
    store.assign(3, store.horse("Sorrel"), who="nora", why="no, it was she")
    store._database.execute("UPDATE facts SET severity = 'mild' WHERE id = 1")
    store._database.conn.commit()


def changed(store: Store, path: Path, change: Callable[[dict[str, Any]], object]) -> Path:
    """The store's record in a file, after a change to its JSON."""
    data = json.loads(export_all(store, WHOLE))
    change(data)
    path.write_text(json.dumps(data), encoding="utf-8")
    return path


def test_a_whole_store_comes_back_to_the_byte(store: Store, other: Store, tmp_path: Path) -> None:
    correct(store)
    record = export_all(store, WHOLE)
    path = tmp_path / "all.json"
    path.write_bytes(record)
    taken = take_in(other, path)
    assert (taken.horses, taken.memos, taken.visits) == (3, 2, 3)
    assert export_all(other, WHOLE) == record
    again = json.loads(export_all(other, Request("json", choice_of(date(2026, 5, 13)))))
    assert again.pop("exported_on") == "2026-05-13"
    assert again == {key: value for key, value in json.loads(record).items() if key != "exported_on"}


def test_one_horse_comes_back_to_the_byte(store: Store, other: Store, tmp_path: Path) -> None:
    correct(store)
    record = export_horse(store, "Bramble", WHOLE)
    path = tmp_path / "bramble.json"
    path.write_bytes(record)
    take_in(other, path)
    assert export_horse(other, "Bramble", WHOLE) == record
    assert "Sorrel" not in record.decode("utf-8")


def test_corrections_come_along(store: Store, other: Store, tmp_path: Path) -> None:
    correct(store)
    take_in(other, changed(store, tmp_path / "all.json", lambda data: None))
    mine = [(entry.who, entry.column, entry.why) for entry in store.history()]
    theirs = [(entry.who, entry.column, entry.why) for entry in other.history() if entry.column != "taken_in"]
    assert theirs == mine
    taken = [(entry.new, entry.why) for entry in other.history() if entry.column == "taken_in"]
    assert taken == [("without its recording", "taken in from all.json")] * 2


def test_recordings_come_along_when_asked_for(store: Store, other: Store, tmp_path: Path) -> None:
    request = Request("json", choice_of(DAY), with_audio=True)
    record = export_all(store, request)
    path = tmp_path / "all.json"
    path.write_bytes(record)
    take_in(other, path)
    assert export_all(other, request) == record
    assert [memo.original.read_bytes() for memo in other.memos()] == [m.original.read_bytes() for m in store.memos()]
    assert other.problems(deep=True) == []


def test_what_never_had_its_recording_here_is_no_problem(store: Store, other: Store, tmp_path: Path) -> None:
    take_in(other, changed(store, tmp_path / "all.json", lambda data: None))
    assert other.problems(deep=True) == []


def test_twice_is_once(store: Store, other: Store, tmp_path: Path) -> None:
    path = changed(store, tmp_path / "all.json", lambda data: None)
    take_in(other, path)
    before = list(other._database.conn.iterdump())
    taken = take_in(other, path)
    assert (taken.horses, taken.memos, taken.visits) == (0, 0, 0)
    assert list(other._database.conn.iterdump()) == before
    assert take_in(store, path).visits == 0


def test_two_horses_of_one_memo_come_one_by_one(store: Store, other: Store, tmp_path: Path) -> None:
    for name in ("Sorrel", "Bramble"):
        path = tmp_path / f"{name}.json"
        path.write_bytes(export_horse(store, name, WHOLE))
        take_in(other, path)
    assert [len(memo.visit_ids) for memo in other.memos()] == [2, 1]
    assert [visit.visit.facts for visit in other.visits_of("Bramble")] == [
        visit.visit.facts for visit in store.visits_of("Bramble")
    ]


class TestConflicts:
    """A record that says something else than the store."""

    def test_another_owner_is_asked_about(self, store: Store, tmp_path: Path) -> None:
        path = changed(store, tmp_path / "all.json", lambda data: data["horses"][0].update(owner="B. Holt"))
        with pytest.raises(RecordError, match=r"owner: here A\. Fern, there B\. Holt.*--horses mine"):
            take_in(store, path)
        take_in(store, path, Prefer.MINE)
        assert store.horse("Bramble").horse.owner == "A. Fern"
        take_in(store, path, Prefer.THEIRS)
        assert store.horse("Bramble").horse.owner == "B. Holt"
        assert store.history()[-1].old == "A. Fern"

    def test_a_namesake_without_a_place_is_asked_about(self, store: Store, tmp_path: Path) -> None:
        path = changed(store, tmp_path / "all.json", lambda data: data["horses"][0].update(place=None))
        with pytest.raises(RecordError, match="whether it is the same one cannot be told"):
            take_in(store, path)
        assert take_in(store, path, Prefer.MINE).horses == 0

    def test_a_namesake_at_another_place_is_another_horse(self, store: Store, other: Store, tmp_path: Path) -> None:
        other.add_horses([RosterHorse(name="Bramble", place="Ford")])
        assert take_in(other, changed(store, tmp_path / "all.json", lambda data: None)).horses == 3

    def test_one_microchip_is_one_horse(self, store: Store, other: Store, tmp_path: Path) -> None:
        other.add_horses([RosterHorse(name="Clover", other={"microchip": "250001234567890"})])
        path = changed(
            store, tmp_path / "all.json", lambda data: data["horses"][0]["other"].update(microchip="250001234567890")
        )
        with pytest.raises(RecordError, match="has the microchip 250001234567890, which is Clover's here"):
            take_in(other, path)

    def test_a_visit_that_says_something_else(self, store: Store, tmp_path: Path) -> None:
        path = changed(store, tmp_path / "all.json", lambda data: data["memos"][0]["visits"][0].update(notes="else"))
        with pytest.raises(RecordError, match=r"visit of 2026-03-02 at Bramble is kept already \(visit 1\)"):
            take_in(store, path)

    def test_a_memo_with_other_words(self, store: Store, tmp_path: Path) -> None:
        path = changed(store, tmp_path / "all.json", lambda data: data["memos"][0].update(transcript="else"))
        with pytest.raises(RecordError, match=r"memo march\.m4a is kept already with other words"):
            take_in(store, path)

    def test_a_late_conflict_keeps_nothing_of_what_came_before(self, store: Store, tmp_path: Path) -> None:
        def add_one(data: dict[str, Any]) -> None:
            data["horses"].insert(0, {"name": "Clover", "owner": None, "place": None, "also_called": [], "other": {}})
            for memo in data["memos"]:
                for visit in memo["visits"]:
                    visit["of_horse"] += 1
            data["memos"][1]["visits"][1]["notes"] = "else"

        before = list(store._database.conn.iterdump())
        with pytest.raises(RecordError):
            take_in(store, changed(store, tmp_path / "all.json", add_one))
        assert list(store._database.conn.iterdump()) == before


HUGE = 10**400
HOSTILE: list[tuple[str, Callable[[dict[str, Any]], object]]] = [
    ("no record that clinchbook exported", lambda d: d.update(format="other")),
    ("later clinchbook", lambda d: d.update(version=2)),
    ("redacted", lambda d: d.update(redacted=True)),
    ("Extra inputs", lambda d: d.update(surprise=1)),
    ("Field required", lambda d: d.pop("memos")),
    ("is no finding", lambda d: d["memos"][0]["visits"][0]["facts"][0].update(value="bad luck")),
    ("not a zone", lambda d: d["memos"][0]["visits"][0]["facts"][0].update(zone="ear")),
    ("outside 1 to 20", lambda d: d["memos"][1]["visits"][0]["facts"][3].update(value=99.0)),
    ("number or a character", lambda d: d["memos"][0]["memo"].update(seconds=float("inf"))),
    ("number or a character", lambda d: d["memos"][0]["memo"].update(seconds=float("nan"))),
    ("facts 1 start", lambda d: d["memos"][0]["visits"][0]["facts"][0].update(start="1.5")),
    ("outside its transcript", lambda d: d["memos"][0]["visits"][0]["facts"][0].update(span=[5, 2])),
    ("outside its transcript", lambda d: d["memos"][0]["visits"][0]["facts"][0].update(span=[0, 2**70])),
    ("position", lambda d: d["memos"][0]["visits"][0].update(position=2**70)),
    ("position", lambda d: d["memos"][0]["visits"][0].update(position=-1)),
    ("number or a character", lambda d: d["memos"][0]["memo"].update(seconds=HUGE)),
    ("two visits at one place", lambda d: d["memos"][1]["visits"][1].update(position=0)),
    ("does not have", lambda d: d["memos"][0]["visits"][0].update(of_horse=7)),
    ("no hash of its own", lambda d: d["memos"][0]["memo"].update(sha256="../../etc/passwd")),
    ("no hash of its own", lambda d: d["memos"][0]["memo"].update(sha256=None)),
    ("no hash of its own", lambda d: d["memos"][1]["memo"].update(sha256=d["memos"][0]["memo"]["sha256"])),
    ("cannot be printed", lambda d: d["horses"][0].update(owner="a\x1b[2Jb")),
    ("cannot be printed", lambda d: d["memos"][0]["memo"].update(path="a\nb.m4a")),
    ("has no name", lambda d: d["horses"][0].update(name=" ")),
    ("too long", lambda d: d["horses"][0].update(name="x" * 300)),
    ("twice", lambda d: d["horses"].append(dict(d["horses"][0], name="BRAMBLE"))),
    ("column", lambda d: d["history"][0].update(column="x = 1; DROP TABLE facts; --")),
    ("recording of memo 1 is damaged", lambda d: d["memos"][0].update(sound="!!")),
    ("not the one that was heard", lambda d: d["memos"][0].update(sound=base64.b64encode(b"else").decode())),
]


@pytest.mark.parametrize(("sentence", "change"), HOSTILE)
def test_a_hostile_file_keeps_nothing(
    store: Store, other: Store, tmp_path: Path, sentence: str, change: Callable[[dict[str, Any]], object]
) -> None:
    correct(store)
    path = changed(store, tmp_path / "hostile.json", change)
    before = sorted(file.name for file in other.folder.rglob("*"))
    with pytest.raises(RecordError, match=sentence) as refused:
        take_in(other, path)
    assert "\n" not in str(refused.value)
    assert other.counts() == {"memos": 0, "visits": 0, "facts": 0, "horses": 0, "flagged": 0}
    assert sorted(file.name for file in other.folder.rglob("*")) == before


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (b"", "no JSON text"),
        (b"[]", "no record that clinchbook exported"),
        (b"[" * 100_000, "no JSON text"),
        (b'{"format": "clinchbook-record", "version": 1', "cut off"),
        (b"\xff\xfe", "no UTF-8 text"),
        (b"\x00" * 50, "no JSON text"),
    ],
)
def test_a_broken_file_is_said(other: Store, tmp_path: Path, data: bytes, sentence: str) -> None:
    path = tmp_path / "broken.json"
    path.write_bytes(data)
    with pytest.raises(RecordError, match=sentence):
        take_in(other, path)


def test_a_half_of_a_character_is_refused(store: Store, other: Store, tmp_path: Path) -> None:
    path = changed(store, tmp_path / "half.json", lambda data: data["memos"][0].update(transcript="\ud800"))
    with pytest.raises(RecordError):
        take_in(other, path)
    assert other.memos() == []


def test_a_missing_file_is_said(other: Store, tmp_path: Path) -> None:
    with pytest.raises(FileMissingError, match="There is no file"):
        take_in(other, tmp_path / "none.json")
    with pytest.raises(RecordError, match="cannot be read"):
        take_in(other, tmp_path)


def test_a_recording_of_a_refused_record_does_not_stay(store: Store, other: Store, tmp_path: Path) -> None:
    record = json.loads(export_all(store, Request("json", choice_of(DAY), with_audio=True)))
    other.add_horses([RosterHorse(name="Bramble", owner="B. Holt", place="River barn")])
    path = tmp_path / "all.json"
    path.write_text(json.dumps(record), encoding="utf-8")
    with pytest.raises(RecordError, match="Bramble is known already"):
        take_in(other, path)
    assert [file for file in (other.folder / "originals").rglob("*") if file.is_file()] == []


def test_a_recording_that_another_program_keeps_meanwhile_stays(
    store: Store, other: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    other.add_horses([RosterHorse(name="Bramble", owner="B. Holt", place="River barn")])
    path = tmp_path / "all.json"
    path.write_bytes(export_all(store, Request("json", choice_of(DAY), with_audio=True)))
    real, meanwhile, memo = Store._writing, [True], store.memos()[0]

    @contextmanager
    def writing(self: Store, who: str | None, why: str) -> Iterator[None]:
        if meanwhile:
            meanwhile.clear()
            with Store.open(other.folder) as second:
                second.keep(memo.record, memo.transcript, memo.original)
        with real(self, who, why):
            yield

    monkeypatch.setattr(Store, "_writing", writing)
    with pytest.raises(RecordError, match="Bramble is known already"):
        take_in(other, path)
    kept = [file for file in (other.folder / "originals").rglob("*") if file.is_file()]
    assert [file.name[:64] for file in kept] == [memo.record.memo.sha256]
    assert other.problems(deep=True) == []


class TestSchema:
    """The published JSON Schema."""

    def test_it_is_that_of_the_models(self) -> None:
        published = files("pipeline.using").joinpath(SCHEMA_NAME).read_text(encoding="utf-8")
        assert published == schema_text()

    def test_its_copy_among_the_examples_is_the_same(self) -> None:
        copy = Path(__file__).resolve().parents[2] / "outputs" / "handover" / SCHEMA_NAME
        assert copy.read_text(encoding="utf-8") == schema_text()

    def test_it_is_a_schema(self) -> None:
        jsonschema.Draft202012Validator.check_schema(json.loads(schema_text()))

    @pytest.mark.parametrize("redact", [False, True])
    def test_every_record_follows_it(self, store: Store, redact: bool) -> None:
        correct(store)
        validator = jsonschema.Draft202012Validator(json.loads(schema_text()))
        request = Request("json", choice_of(DAY, redact=redact))
        for record in (export_all(store, request), export_horse(store, "Bramble", request)):
            validator.validate(json.loads(record))

    def test_what_does_not_follow_is_seen(self, store: Store) -> None:
        validator = jsonschema.Draft202012Validator(json.loads(schema_text()))
        data = json.loads(export_all(store, WHOLE))
        data["memos"][0]["visits"][0]["facts"][0]["foot"] = "XX"
        with pytest.raises(jsonschema.ValidationError):
            validator.validate(data)
