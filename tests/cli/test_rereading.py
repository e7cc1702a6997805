"""Kept memos read again, and the history of a visit."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.cli.past import read_moment
from pipeline.errors import CorrectionError, DateError, NoSpeechError, NotFoundError, StoreError
from pipeline.keeping import Store, store_folder
from pipeline.record import Fact, RosterHorse, Transcript, Visit
from tests.cli.conftest import FakeReader

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHeard, FakeHearer, MakeMemo, Run


class TodaysReader(FakeReader):
    """Finds a corn besides."""

    def read(self, transcript: Transcript, roster: Sequence[RosterHorse], day: date) -> list[Visit]:
        """The thrush, and a corn in the left fore."""
        (visit,) = super().read(transcript, roster, day)
        corn = Fact(foot="LF", slot="finding", value="corn", quote="left", span=(23, 27))
        return [visit.model_copy(update={"facts": [*visit.facts, corn]})]


@pytest.fixture(autouse=True)
def kept(run: Run, hearer: FakeHearer, make_memo: MakeMemo) -> None:
    """Two memos: visits 1 and 2 of Bramble, each with thrush in the left hind."""
    assert run("roster", "add", "Bramble").code == 0
    assert run("ingest", make_memo("a.wav", seed=1), make_memo("b.wav", seed=2)).code == 0


@pytest.fixture
def today(monkeypatch: pytest.MonkeyPatch) -> None:
    """Today's rules find more."""
    monkeypatch.setattr("pipeline.ingest.load_reader", lambda vocabulary: TodaysReader())


class TestReread:
    """Memos read again."""

    def test_a_memo_that_reads_the_same_stays_as_it_was(self, run: Run) -> None:
        ended = run("reread", "1")
        assert (ended.code, ended.out) == (0, "")
        assert ended.err == "1 memo: 0 read differently, 1 the same.\n"

    @pytest.mark.usefixtures("today")
    def test_the_differences_are_told_and_taken_back(self, run: Run) -> None:
        before = run("show", "1").out
        ended = run("reread", "--all")
        assert ended.out.splitlines() == [
            "memo 1 (a.wav), reading 2:",
            "  visit 1: Bramble, 2026-03-02",
            "    + left fore: corn",
            "memo 2 (b.wav), reading 2:",
            "  visit 2: Bramble, 2026-03-02",
            "    + left fore: corn",
        ]
        assert ended.err == "2 memos: 2 read differently, 0 the same.\n"
        assert "corn" in run("show", "1").out
        assert run("reread", "--all").err == "2 memos: 0 read differently, 2 the same.\n"
        assert run("reread", "--undo", "a.wav").out == "memo 1: reading 1 stands again.\n"
        assert run("show", "1").out == before
        ended = run("reread", "--undo", "--all")
        assert (ended.out, ended.err) == ("memo 2: reading 1 stands again.\n", "1 memo taken back.\n")
        ended = run("reread", "--undo", "1")
        assert (ended.code, ended.err) == (
            CorrectionError.exit_code, "Memo 1 stands as it was first read; there is nothing to take back.\n",
        )  # fmt: skip

    @pytest.mark.usefixtures("today")
    def test_for_machines(self, run: Run) -> None:
        told = json.loads(run("reread", "2", "--json").out)
        assert (told["memo"], told["reading"], told["visits"][0]["visit"]) == (2, 2, 2)
        assert [fact["value"] for fact in told["visits"][0]["new"]] == ["corn"]
        assert told["visits"][0]["gone"] == []
        assert json.loads(run("reread", "2", "--undo", "--json").out) == {"memo": 2, "reading": 1}

    @pytest.mark.usefixtures("today")
    def test_what_a_person_corrected_stays(self, run: Run) -> None:
        with Store.open(store_folder()) as store:
            store.correct(1, {"value": "bruise"}, seen=0, who="Ann")
        assert "+ left fore: corn" in run("reread", "1").out
        assert "bruise" in run("show", "1").out
        assert "thrush" not in run("show", "1").out.split("Memo")[0]

    def test_listening_hears_the_kept_original(self, run: Run, hearer: FakeHearer) -> None:
        before = len(hearer.heard)
        assert run("reread", "--listen", "1").code == 0
        (heard,) = hearer.heard[before:]
        assert re.fullmatch(r"[0-9a-f]{64}\.wav", heard[0])
        assert heard[1] == ("Bramble",)

    def test_a_recording_that_is_not_heard_is_named_and_the_others_go_on(
        self, run: Run, hearer: FakeHearer, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        with Store.open(store_folder()) as store:
            first = store.memo(1).original
        hear = hearer.hear

        def hearing(path: Path, names: Sequence[str] = (), recorded: date | None = None) -> FakeHeard:
            if path == first:
                raise NoSpeechError("Nobody speaks in it.")
            return hear(path, names, recorded)

        monkeypatch.setattr(hearer, "hear", hearing)
        ended = run("reread", "--listen", "--all")
        assert ended.code == NoSpeechError.exit_code
        assert ended.err == (
            "memo 1: Nobody speaks in it.\n2 memos: 0 read differently, 1 the same, 1 could not be read.\n"
        )

    def test_a_recording_that_is_another_by_now_is_not_heard(self, run: Run, make_memo: MakeMemo) -> None:
        with Store.open(store_folder()) as store:
            original = store.memo(1).original
        original.write_bytes(make_memo("other.wav", seed=5).read_bytes())
        ended = run("reread", "--listen", "1")
        assert ended.code == StoreError.exit_code
        assert ended.err.startswith("memo 1: The recording of a.wav in the store is no longer what was kept.\n")
        assert "reading" not in run("history", "1").out

    @pytest.mark.parametrize("arguments", [[], ["--all", "1"], ["--undo", "--listen", "1"]], ids=" ".join)
    def test_nonsense_is_refused(self, run: Run, arguments: list[str]) -> None:
        assert run("reread", *arguments).code == 2

    @pytest.mark.parametrize("name", ["7", "c.wav", "9" * 40])
    def test_an_unknown_memo_is_not_found(self, run: Run, name: str) -> None:
        ended = run("reread", name)
        assert ended.code == NotFoundError.exit_code
        assert ended.err.count("\n") == 1

    def test_a_name_of_two_memos_asks_for_the_number(self, run: Run, make_memo: MakeMemo) -> None:
        other = make_memo("a.wav", seed=9, folder=store_folder().parent / "other")
        assert run("ingest", other).code == 0
        ended = run("reread", "a.wav")
        assert (ended.code, ended.err) == (
            NotFoundError.exit_code, "2 memos are called a.wav; say which number: 1, 3.\n",
        )  # fmt: skip


class TestHistory:
    """What was changed in a visit."""

    def corrected(self) -> None:
        """Ann corrects, moves the day, and takes the latter back."""
        with Store.open(store_folder()) as store:
            seen = store.correct(1, {"value": "corn", "zone": "heel"}, seen=0, who="Ann", why="misheard").revision
            store.correct_visit(1, seen=seen, day=date(2026, 3, 1), who="Ann")
            store.undo(who="Ann")

    def test_for_people(self, run: Run) -> None:
        self.corrected()
        lines = [line[21:] if line[:2] == "20" else line for line in run("history", "1").out.splitlines()]
        assert lines == [
            "visit 1 was kept",
            "Ann corrected, change 1 (misheard)",
            "    left hind: thrush: zone: nothing → heel",
            "    left hind: thrush: value: thrush → corn",
            "Ann corrected the visit, change 2 (corrected)",
            "    date: 2026-03-02 → 2026-03-01",
            "Ann took back change 2 as change 3 (taken back)",
            "    date: 2026-03-01 → 2026-03-02",
        ]

    def test_for_machines(self, run: Run) -> None:
        self.corrected()
        told = json.loads(run("history", "1", "--json").out)
        assert [(change["kind"], change["who"], change["undoes"]) for change in told["changes"]] == [
            ("correct", "Ann", None), ("visit", "Ann", None), ("undo", "Ann", 2),
        ]  # fmt: skip
        assert told["facts"]["1"]["value"] == "thrush"

    def test_a_confirmed_fact_and_a_new_reading_are_told(self, run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
        with Store.open(store_folder()) as store:
            store.accept(1, seen=0, who="Ann", why="")
        monkeypatch.setattr("pipeline.ingest.load_reader", lambda vocabulary: TodaysReader())
        run("reread", "1")
        out = run("history", "1").out
        assert "Ann confirmed, change 1\n    left hind: thrush: settled\n" in out
        assert "read the memo again, change 2 (read again)\n    reading 1 → 2\n" in out

    def test_a_visit_as_it_stood(self, run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
        before = run("show", "1").out
        monkeypatch.setattr("pipeline.keeping.opened.now", lambda: "2099-01-01T12:00:00+00:00")
        self.corrected()
        stood = run("history", "1", "--at", "2098-12-31").out
        assert stood == f"As it stood on 2098-12-31 at 23:59:59:\n\n{before}"
        assert "corn" in run("history", "1", "--at", "2099-01-02").out
        assert json.loads(run("history", "1", "--at", "2098-12-31", "--json").out)["facts"][0]["value"] == "thrush"
        ended = run("history", "1", "--at", "1999-01-01")
        assert (ended.code, ended.err) == (NotFoundError.exit_code, "Visit 1 was not kept yet at that time.\n")

    @pytest.mark.parametrize("text", ["yesterday", "2026-13-01", "2026-03-02 25:00", ""])
    def test_a_moment_that_is_none_is_refused(self, run: Run, text: str) -> None:
        ended = run("history", "1", "--at", text)
        assert (ended.code, ended.out) == (DateError.exit_code, "")

    def test_a_day_is_meant_to_its_end_and_a_time_to_the_second(self) -> None:
        assert read_moment("2026-03-02").replace(tzinfo=None).isoformat() == "2026-03-02T23:59:59.999999"
        assert read_moment("2026-03-02 18:00").replace(tzinfo=None).isoformat() == "2026-03-02T18:00:00"
        assert read_moment("2026-03-02T18:00:00+00:00").timestamp() == 1772474400.0

    @pytest.mark.parametrize("visit", ["9", "9" * 40])
    def test_an_unknown_visit_is_not_found(self, run: Run, visit: str) -> None:
        ended = run("history", visit)
        assert (ended.code, ended.out, ended.err.count("\n")) == (NotFoundError.exit_code, "", 1)
