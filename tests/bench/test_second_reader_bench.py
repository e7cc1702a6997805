"""What the second reader and judging learn from: readings by readers that lack rules, and chances that are kept."""

from __future__ import annotations

import gzip
import json
from dataclasses import replace
from multiprocessing import Pool
from pathlib import Path

import numpy as np
import pytest

from pipeline.judging.putting_right import put_right_by
from pipeline.judging.second_reader import OF_FEET, STATUSES, SecondReader, View, second_reader
from pipeline.record import Fact, Status, Visit
from tests.bench.judging.gathering import (
    DATA,
    all_have_seconds,
    heard_readings,
    of_what_stands,
    past_readings,
    renew_seconds,
    seconds_by_shipped,
    seconds_of,
    views_of,
)
from tests.bench.second_reader.__main__ import Taught, fold_of
from tests.bench.second_reader.exporting import step, whole
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


def test_what_was_put_right_is_judged_by_the_chanceof_what_stands() -> None:
    told = fact("pad", "full", "LF", span=(0, 9))
    kept = [[3000, 6500, 500, 9000]]
    (seen,) = put_right_by([visit(told)], views_of([told], kept))
    assert of_what_stands([told], seen.facts, kept) == [[6500, 6500, 500, 9000]]
    assert of_what_stands([told], [told], kept) == kept


def test_chances_of_the_shipped_one() -> None:
    text = "Wickham. Reset both fronts."
    facts = [fact("work", "reset", foot, span=(9, 14)) for foot in ("LF", "RF")]
    kept = seconds_by_shipped([visit(*facts)], text)
    assert [len(one) for one in kept] == [4, 4]
    assert all(one[0] > 9000 and one[3] > 9000 for one in kept)


def test_every_kept_reading_has_its_chances() -> None:
    typed = list(past_readings())
    assert all_have_seconds(typed)
    assert all_have_seconds(heard_readings())
    assert not all_have_seconds([replace(typed[0], second=())])


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


def said(name: str, text: str) -> Lesson:
    return Lesson(name, text, tuple(text.lower().replace(".", " .").split()), (), ())


def test_a_net_that_leaves_memos_out_knows_none_of_them_nor_the_cases_like_them() -> None:
    one, other = (
        said("a", "Reset both fronts with six nails in each."),
        said("b", "Thrush in the near hind frog again."),
    )
    like = said("Tansy. Reset both", "Tansy. Reset both fronts with six nails each.")
    unlike = said("Tansy. Reset the", "Tansy. Reset the hinds with six nails in each.")
    made = Taught([one, other, like, unlike], [], [])
    assert made.without({"a"}, {"a", "b"}).lessons == [other, unlike]
    assert made.without({"b"}, {"a", "b"}).lessons == [one, like, unlike]


def test_what_a_second_reader_makes_of_kept_readings_is_kept_anew(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept = {}
    for name in ("typed", "heard"):
        with gzip.open(DATA / f"{name}.jsonl.gz", "rt", encoding="utf-8") as lines:
            kept[name] = {**json.loads(next(lines)), "second": []}
        with gzip.open(tmp_path / f"{name}.jsonl.gz", "wt", encoding="utf-8") as out:
            out.write(json.dumps(kept[name]) + "\n")
    monkeypatch.setattr("tests.bench.judging.gathering.DATA", tmp_path)
    assert not all_have_seconds(past_readings())
    asked: list[str] = []

    def of(memo: str) -> SecondReader:
        asked.append(memo)
        return second_reader()

    renew_seconds(of)
    assert asked == [kept["typed"]["id"], kept["heard"]["id"]]
    assert all_have_seconds([*past_readings(), *heard_readings()])
    (typed,) = past_readings()
    assert typed.second == seconds_by_shipped(typed.visits, typed.gold["text"])


def test_a_net_learns_in_the_steps_in_which_it_is_kept() -> None:
    torch = pytest.importorskip("torch")
    from tests.bench.second_reader.learning import Soft, averaged, rounded
    from tests.bench.second_reader.net import Net

    net = Net(9, 2, (4, 3, 4), 0.0)
    before = {name: value.clone() for name, value in net.state_dict().items()}
    with rounded(net):
        for name, value in net.state_dict().items():
            kept = before[name].numpy()
            if kept.ndim == 2:
                numbers, power = whole(kept)
                kept = numbers * step(power)
            assert np.allclose(value.numpy(), kept, atol=1e-6)
    assert all(torch.equal(value, before[name]) for name, value in net.state_dict().items())
    one, other = (Soft(torch.full((2, 7), chance), torch.full((1, 5), chance)) for chance in (0.2, 0.6))
    (mean,) = averaged([[one], [other]])
    assert torch.allclose(mean.status, torch.full((2, 7), 0.4))
    assert torch.allclose(mean.feet, torch.full((1, 5), 0.4))


def test_the_memos_are_in_five_parts() -> None:
    assert {fold_of(f"memo{number}") for number in range(40)} == set(range(5))
