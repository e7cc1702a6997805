"""Fixed turns of words, found by their first word."""

from __future__ import annotations

from pipeline.reading.sayings import Sayings

SAYINGS = Sayings("it 's back", "it 's", "no joy", "back")


def test_the_first_that_stands_there_counts() -> None:
    words = ["well", "it", "'s", "back", "no", "joy", "no"]
    assert SAYINGS.at(words, 1) == ["it", "'s", "back"]
    assert SAYINGS.at(words[:3], 1) == ["it", "'s"]
    assert Sayings("it 's", "it 's back").at(words, 1) == ["it", "'s"]
    assert SAYINGS.at(words, 0) == []
    assert SAYINGS.at(words, 6) == []
    assert SAYINGS.at(words, 7) == []


def test_each_place_within_a_stretch() -> None:
    words = ["it", "'s", "back", "no", "joy"]
    assert list(SAYINGS.within(words, 0, 5)) == [(0, ["it", "'s", "back"]), (2, ["back"]), (3, ["no", "joy"])]
    assert list(SAYINGS.within(words, 1, 3)) == [(2, ["back"])]
    assert list(SAYINGS.within(words, 4, 9)) == []


def test_the_words_that_they_begin_with() -> None:
    assert SAYINGS.first_words == {"it", "no", "back"}


def test_a_memo_is_looked_through_once_for_all() -> None:
    """By their first two words: what may begin there, though the rest of it may not stand there."""
    late, alone = Sayings("it 's back again", "no joy"), Sayings("joy", "joy of it")
    begun = Sayings.beginning(["it", "'s", "back", "no", "joy", "of"])
    assert begun[SAYINGS] == [0, 2, 3]
    assert begun[late] == [0, 3]
    assert begun[alone] == [4]
    assert Sayings("joy in it") not in begun
    assert alone not in Sayings.beginning(["no", "of"])
