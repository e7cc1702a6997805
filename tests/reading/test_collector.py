"""The collector of garbage rests while a memo is read, and no longer, and passes over what stays loaded."""

from __future__ import annotations

import gc
from datetime import date

import pytest

from pipeline.reading import Reader
from pipeline.reading.collector import collector_at_rest
from pipeline.record import Transcript


def test_the_collector_works_again_when_a_memo_is_read() -> None:
    with collector_at_rest():
        assert not gc.isenabled()
    assert gc.isenabled()


def test_the_collector_works_again_when_reading_fails() -> None:
    with pytest.raises(ValueError, match="no memo"), collector_at_rest():
        raise ValueError("no memo")
    assert gc.isenabled()


def test_a_collector_that_was_put_to_rest_before_stays_so() -> None:
    gc.disable()
    try:
        with collector_at_rest():
            assert not gc.isenabled()
        assert not gc.isenabled()
    finally:
        gc.enable()


def test_what_is_loaded_is_passed_over_and_no_memo_is(reader: Reader) -> None:
    talk = Transcript(text="Tally. Reset all round.")
    reader.read(talk, [], date(2026, 3, 2))
    loaded = gc.get_freeze_count()
    assert loaded > 50_000
    for _ in range(3):
        reader.read(talk, [], date(2026, 3, 2))
    assert gc.get_freeze_count() <= loaded
