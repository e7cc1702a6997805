"""The collector of garbage rests while a memo is read, and no longer."""

from __future__ import annotations

import gc

import pytest

from pipeline.reading.collector import collector_at_rest


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
