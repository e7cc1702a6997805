"""When a memo was recorded: by rank of the sources, with every doubt flagged."""

from __future__ import annotations

import time
from collections.abc import Iterator
from datetime import date, datetime

import pytest

from pipeline.hearing.decode import decode
from pipeline.hearing.intake import take_in
from pipeline.hearing.recorded import (
    FROM_FILE,
    FROM_METADATA,
    FROM_NAME,
    FROM_USER,
    date_in_name,
    parse_moment,
    recorded_at,
)
from pipeline.record import FlagKind

from .conftest import MakeSound

MODIFIED = datetime(2026, 3, 9, 20, 0)
NOW = datetime(2026, 3, 10, 12, 0)


@pytest.fixture(autouse=True)
def far_from_greenwich(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    monkeypatch.setenv("TZ", "America/Denver")
    time.tzset()
    yield
    monkeypatch.undo()
    time.tzset()


@pytest.mark.parametrize(
    ("kind", "tags"),
    [
        ("aac.m4a", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("alac.m4a", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("memo.3gp", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("memo.caf", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("memo.mp3", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("memo.flac", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("memo.webm", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("opus.ogg", {"creation_time": "2026-03-02T21:05:12Z"}),
        ("memo.mp3", {"date": "2026-03-02T14:05:12"}),
        ("memo.flac", {"date": "2026-03-02 14:05:12"}),
        ("memo.wav", {"date": "2026-03-02 14:05:12"}),
    ],
)
def test_every_container_gives_its_own_date(make_sound: MakeSound, kind: str, tags: dict[str, str]) -> None:
    with take_in(make_sound(kind, seconds=0.5, metadata=tags, stream_metadata=tags)) as memo:
        found = recorded_at("memo", decode(memo).metadata, MODIFIED, now=NOW)
    assert (found.moment, found.source) == (datetime(2026, 3, 2, 14, 5, 12), FROM_METADATA)
    assert found.flags == ()


def test_rank_of_the_sources() -> None:
    tags = [{"creation_time": "2026-03-02T21:05:00Z"}]
    name = "20260302_140512.m4a"
    assert recorded_at(name, tags, MODIFIED, date(2026, 3, 2), NOW).source == FROM_USER
    assert recorded_at(name, tags, MODIFIED, None, NOW).source == FROM_METADATA
    assert recorded_at(name, [], MODIFIED, None, NOW).source == FROM_NAME
    assert recorded_at("New Recording 4.m4a", [], MODIFIED, None, NOW).source == FROM_FILE


def test_time_of_change_alone_is_flagged() -> None:
    found = recorded_at("memo.wav", [{}], MODIFIED, now=NOW)
    assert found.moment == MODIFIED
    assert [flag.kind for flag in found.flags] == [FlagKind.DATE]
    assert "only the file's time of change" in found.flags[0].reason


def test_a_date_in_the_future_is_flagged() -> None:
    reasons = [flag.reason for flag in recorded_at("2027-03-02.wav", [], MODIFIED, now=NOW).flags]
    assert any("lies in the future" in reason for reason in reasons)


@pytest.mark.parametrize(("name", "flagged"), [("2026-03-03.m4a", False), ("2026-03-05.m4a", True)])
def test_sources_more_than_a_day_apart_are_flagged(name: str, flagged: bool) -> None:
    found = recorded_at(name, [{"creation_time": "2026-03-02T21:05:00Z"}], MODIFIED, now=NOW)
    assert [("check the visit's date" in flag.reason) for flag in found.flags] == [True] * flagged


def test_a_file_older_than_its_own_date_is_flagged() -> None:
    found = recorded_at("2026-03-09.wav", [], datetime(2026, 3, 2), now=NOW)
    assert ["the file is older" in flag.reason for flag in found.flags] == [True]


@pytest.mark.parametrize(
    ("name", "moment"),
    [
        ("2026-03-02.m4a", datetime(2026, 3, 2)),
        ("20260302.m4a", datetime(2026, 3, 2)),
        ("Voice_20260302_140512.m4a", datetime(2026, 3, 2, 14, 5, 12)),
        ("20260302140512.m4a", datetime(2026, 3, 2, 14, 5, 12)),
        ("2026-03-02 14.05.12.m4a", datetime(2026, 3, 2, 14, 5, 12)),
        ("2026-03-02T14-05.wav", datetime(2026, 3, 2, 14, 5)),
        ("memo 2026_03_02 at 14.05.12.wav", datetime(2026, 3, 2, 14, 5, 12)),
        ("2026-03-02 99.99.wav", datetime(2026, 3, 2)),
        ("Recording 02-03-2026.m4a", None),
        ("2026-13-02.m4a", None),
        ("2026-02-30.m4a", None),
        ("19700101_000000.m4a", None),
        ("120260302.m4a", None),
        ("Recording 41.m4a", None),
    ],
)
def test_dates_in_names(name: str, moment: datetime | None) -> None:
    assert date_in_name(name) == moment


@pytest.mark.parametrize(
    "text", ["1904-01-01T00:00:00Z", "1970-01-01T00:00:00.000000Z", "0000-00-00", "2026", "2026-03", "", "yesterday"]
)
def test_a_clock_at_zero_and_half_a_date_are_no_date(text: str) -> None:
    assert parse_moment(text) is None


def test_a_zone_is_converted_to_local_time() -> None:
    assert parse_moment("2026-03-02T21:05:12+00:00") == datetime(2026, 3, 2, 14, 5, 12)
    given = datetime.fromisoformat("2026-03-02T21:05:12+00:00")
    assert recorded_at("memo", [], MODIFIED, given, NOW).moment == datetime(2026, 3, 2, 14, 5, 12)
