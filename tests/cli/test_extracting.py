"""Typed text in, facts out."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from pipeline.errors import TextError
from pipeline.record import HorseMatch, MemoRecord

if TYPE_CHECKING:
    from tests.cli.conftest import FakeHearer, Run

TEXT = b"Bramble. Thrush in the left hind."


def test_text_from_stdin_as_json(run: Run, hearer: FakeHearer, own_surroundings: Path) -> None:
    ended = run("extract", "-", "--date", "2026-03-02", "--json", given=TEXT)
    record = MemoRecord.model_validate_json(ended.out)
    assert (ended.code, ended.err) == (0, "")
    assert record.transcript == TEXT.decode()
    visit = record.visits[0]
    assert (visit.horse, visit.date, visit.facts[0].foot, visit.facts[0].value) == (
        "Bramble",
        date(2026, 3, 2),
        "LH",
        "thrush",
    )
    assert not own_surroundings.exists()
    assert hearer.heard == []


def test_text_from_a_file_with_a_byte_order_mark(run: Run, hearer: FakeHearer, tmp_path: Path) -> None:
    (tmp_path / "memo.txt").write_bytes(b"\xef\xbb\xbf" + TEXT)
    ended = run("extract", tmp_path / "memo.txt", "--json")
    assert MemoRecord.model_validate_json(ended.out).visits[0].horse == "Bramble"


def test_text_without_a_date_is_of_today(run: Run, hearer: FakeHearer) -> None:
    before = date.today()
    record = MemoRecord.model_validate_json(run("extract", "--json", given=TEXT).out)
    assert before <= record.visits[0].date <= date.today()


def test_the_roster_of_a_file(run: Run, hearer: FakeHearer, tmp_path: Path) -> None:
    (tmp_path / "horses.csv").write_text("name\nBramble\n", encoding="utf-8")
    ended = run("extract", "--roster", tmp_path / "horses.csv", "--json", given=TEXT)
    assert MemoRecord.model_validate_json(ended.out).visits[0].horse_match is HorseMatch.KNOWN


def test_people_get_a_table(run: Run, hearer: FakeHearer) -> None:
    out = run("extract", "--date", "2026-03-02", given=TEXT).out
    assert out.splitlines()[0] == "Bramble (new horse), 2026-03-02"
    assert out.splitlines()[2].removeprefix("(!)").split(";")[0].split() == ["LH", "thrush", "Thrush"]


def test_explain_tells_what_was_kept_what_was_not_and_what_each_cue_changed(run: Run) -> None:
    said = b"Bramble. No thrush in the left hind. If he's sore we'll pull the pads, size one, no, make that a two."
    lines = run("extract", "--date", "2026-03-02", "--explain", given=said).out.splitlines()
    shown = lines[lines.index("KEPT") :]
    assert "LH       absent    finding: thrush" in shown
    assert "      LH finding thrush: absent (without: present)" in shown
    assert "      not kept: taken back for “two”" in shown
    assert max(len(line) for line in shown) <= 100


def test_explain_says_so_when_there_is_nothing(run: Run) -> None:
    lines = run("extract", "--explain", given=b"Bramble.").out.splitlines()
    assert lines[lines.index("KEPT") :] == [
        *("KEPT", "none", "", "SAID AND NOT KEPT", "none", "", "CUES, AND WHAT EACH CHANGED", "none")
    ]


def test_own_words_are_understood(run: Run) -> None:
    said = b"Bramble. Porridge frog in the left hind."
    assert MemoRecord.model_validate_json(run("extract", "--json", given=said).out).visits[0].facts == []
    run("words", "add", "findings", "thrush", "porridge frog")
    (fact,) = MemoRecord.model_validate_json(run("extract", "--json", given=said).out).visits[0].facts
    assert (fact.foot, fact.value) == ("LH", "thrush")
    run("words", "forget", "porridge frog")
    assert MemoRecord.model_validate_json(run("extract", "--json", given=said).out).visits[0].facts == []


def test_every_line_has_its_answer_and_bad_ones_do_not_stop_the_rest(
    run: Run, hearer: FakeHearer, tmp_path: Path
) -> None:
    good = {"id": "a", "date": "2026-02-03", "roster": ["Bramble"], "text": TEXT.decode(), "visits": [1]}
    lines = [
        json.dumps(good).encode(),
        b"",
        b"{not json",
        b"[1]",
        b'{"id": "bytes", "text": "\xff"}',
        b'{"id": "day", "date": "2026-02-30", "text": "Thrush."}',
        b'{"id": "empty", "roster": []}',
        b'{"id": 7, "text": "Clover. No words of interest."}',
    ]
    (tmp_path / "memos.jsonl").write_bytes(b"\r\n".join(lines))
    ended = run("extract", "--jsonl", tmp_path / "memos.jsonl", "--json")
    records = [MemoRecord.model_validate_json(line) for line in ended.out.splitlines()]
    assert [record.id for record in records] == ["a", None, None, None, "day", "empty", "7"]
    assert [len(record.visits) for record in records] == [1, 0, 0, 0, 0, 0, 1]
    assert [len(record.flags) for record in records] == [0, 1, 1, 1, 1, 1, 0]
    assert records[0].visits[0].date == date(2026, 2, 3)
    told = [line.split(":")[0] for line in ended.err.splitlines()]
    assert told == [f"memos.jsonl line {number}" for number in (3, 4, 5, 6, 7)]
    assert ended.code == TextError.exit_code


def test_a_line_that_is_no_text_is_told_once_with_its_number(run: Run, hearer: FakeHearer) -> None:
    ended = run("extract", "--jsonl", "-", given=b'{"text": "Left hind, thrush."}\n\xff\xfe\n')
    assert ended.code == TextError.exit_code
    assert ended.err == "stdin line 2: The line is not UTF-8 text.\n"


def test_lines_from_stdin(run: Run, hearer: FakeHearer) -> None:
    ended = run("extract", "--jsonl", "-", given=b'{"id": "x", "text": "Thrush."}\n')
    assert json.loads(ended.out)["id"] == "x"
    assert ended.code == 0


def test_a_name_without_letters_is_no_horse_of_the_roster(run: Run) -> None:
    ended = run("extract", "--jsonl", "-", "--json", given=b'{"text": "Left hind, thrush.", "roster": ["", " "]}\n')
    assert (ended.code, [visit["horse"] for visit in json.loads(ended.out)["visits"]]) == (0, [None])


def test_the_horses_of_the_store_are_known(run: Run, hearer: FakeHearer, own_surroundings: Path) -> None:
    assert json.loads(run("extract", "--json", given=TEXT).out)["visits"][0]["horse_match"] == "new"
    assert not own_surroundings.exists()
    assert run("roster", "add", "Bramble").code == 0
    assert json.loads(run("extract", "--json", given=TEXT).out)["visits"][0]["horse_match"] == "known"
