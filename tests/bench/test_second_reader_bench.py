"""What the second reader and judging learn from: readings by readers that lack rules, and chances that are kept."""

from __future__ import annotations

from multiprocessing import Pool

import pytest

from pipeline.judging.putting_right import put_right_by
from pipeline.judging.second_reader import OF_FEET, STATUSES, View
from pipeline.record import Fact, Status, Visit
from tests.bench.judging.examples import _of_what_stands
from tests.bench.judging.gathering import past_readings, seconds_by_shipped, seconds_of, views_of
from tests.bench.second_reader.__main__ import Taught, fold_of
from tests.bench.second_reader.gathering import Feet, Lesson, Told, lesson, once
from tests.bench.second_reader.lacking import Part, _memos, _nothing, _parts, _read, reading_modules, rules
from tests.facts.scoring import score
from tests.judging.making import fact, visit


@pytest.mark.parametrize(
    ("returned", "said"),
    [("None", None), ("Mention | None", None), ("bool", False), ("list[Draft]", []), ("set[int]", set())],
)
def test_a_rule_that_is_lacking_says_nothing(returned: str, said: object) -> None:
    nothing = _nothing(returned)
    assert nothing is not None
    assert nothing("of this", talk="or that") == said


def test_what_reading_cannot_do_without_stays() -> None:
    assert _nothing("Tokens") is None
    names = {rule.__name__ for rule, _ in rules(reading_modules())}
    assert {"repair", "assert_all", "attach_zones", "carry_out"} <= names
    assert "tokenize" not in names


def test_every_memo_is_read_once_a_round() -> None:
    parts = _parts(2)
    places = [(part.heard, place) for part in parts for place in range(part.first, part.last)]
    assert len(places) == 2 * len(set(places)) == 2 * (len(_memos(False)) + len(_memos(True)))
    assert len({part.seed for part in parts}) == len(parts)


def test_a_lacking_reader_is_wrong_where_the_reader_is_right() -> None:
    with Pool(1) as pool:  # a process of its own, since what was changed there is not put back
        part, found = pool.apply(_read, (Part(41, False, 0, 60),))
    assert part.seed == 41
    total = score([(_memos(False)[at][0], [Visit.model_validate_json(one) for one in told]) for at, told in found])
    assert 0 < total.memos <= 60
    assert 0.6 <= total.f1 < 0.99


def view(**chances: float) -> View:
    return View((*(chances.get(str(status), 0.0) for status in STATUSES), 0.0), (0.0, 0.9, 0.25, 0.0, 0.0))


def test_chances_are_kept_and_found_again() -> None:
    told, unknown = fact("pad", "full", "LF"), fact("pad", "full", "RF")
    kept = seconds_of([told, unknown], {id(told): view(present=0.3, planned=0.65, history=0.05)})
    assert kept == [[3000, 6500, 500, 9000], []]
    found = views_of([told, unknown], kept)
    assert list(found) == [id(told)]
    assert found[id(told)].of_status(Status.PLANNED) == 0.65
    assert (found[id(told)].of_foot("LF"), found[id(told)].of_status(Status.ABSENT)) == (0.9, 0.0)


def test_what_was_put_right_is_judged_by_the_chance_of_what_stands() -> None:
    told = fact("pad", "full", "LF", span=(0, 9))
    kept = [[3000, 6500, 500, 9000]]
    (seen,) = put_right_by([visit(told)], views_of([told], kept))
    assert _of_what_stands([told], seen.facts, kept) == [[6500, 6500, 500, 9000]]
    assert _of_what_stands([told], [told], kept) == kept


def test_chances_of_the_shipped_one() -> None:
    text = "Wickham. Reset both fronts."
    facts = [fact("work", "reset", foot, span=(9, 14)) for foot in ("LF", "RF")]
    kept = seconds_by_shipped([visit(*facts)], text)
    assert [len(one) for one in kept] == [4, 4]
    assert all(one[0] > 9000 and one[3] > 9000 for one in kept)


def test_every_kept_reading_has_its_chances() -> None:
    for past in past_readings():
        facts = [one for visit in past.visits for one in visit.facts]
        assert len(past.second) == len(facts)


def gold(*facts: list[object]) -> dict[str, object]:
    return {"id": "made01", "visits": [{"horse": "Marigold", "facts": list(facts)}]}


def read(foot: str, value: str = "thrush", **more: object) -> Fact:
    return fact("finding", value, foot, span=(9, 15), **more)


def test_a_lesson_tells_what_was_meant() -> None:
    text = "Marigold Thrush right fore."
    meant = gold(["RF", "finding", "thrush", "present", None, None])
    one = lesson(meant, [visit(read("LF"), read("RF", status="absent"))], text)
    assert one.told == (
        Told(1, 2, "finding", OF_FEET.index("LF"), 6),
        Told(1, 2, "finding", OF_FEET.index("RF"), STATUSES.index(Status.PRESENT)),
    )
    assert one.feet == (Feet(1, 2, "finding", (0, 0, 1, 0, 0)),)


def test_lessons_of_the_same_words_go_together() -> None:
    words = ("thrush",)
    first, second = (Lesson("a", "thrush", words, (Told(0, 1, "finding", foot, 0),), ()) for foot in (1, 2))
    other = Lesson("b", "thrush", words, (Told(0, 1, "finding", 1, 0),), ())
    assert [len(one.told) for one in once([first, second, first, other])] == [2, 1]
    assert [one.name for one in once([first, other], held=["b"])] == ["a"]


def test_a_net_that_leaves_memos_out_knows_none_of_them() -> None:
    made = [Lesson(name, "thrush", ("thrush",), (), ()) for name in ("a", "b")]
    assert [one.name for one in Taught(made, [], []).without({"b"}).lessons] == ["a"]
    assert {fold_of(f"memo{number}") for number in range(40)} == set(range(5))
