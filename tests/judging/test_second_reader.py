"""The second reader's net computes what its formulas say, and knows a memo by its words alone."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from pipeline.judging.second_reader import OF_FEET, STATUSES, SecondReader, View, plain, second_reader
from pipeline.judging.surroundings import Surroundings
from pipeline.record import SLOTS, Fact, Status
from tests.bench.second_reader.exporting import LEVELS, step, whole
from tests.judging.making import fact

Floats = NDArray[np.float64]
# A net of three numbers a word and two a state, with the weights that it was written from.
ROOT = Path(__file__).resolve().parents[2]
TINY = ROOT / "tests" / "bench" / "second_reader" / "tiny.onnx"
TEXT = "Thrush left, 54."  # of its five words and marks, "," was not learnt


def told(slot: str, value: str | float, words: str, foot: str | None = "LF", text: str = TEXT) -> Fact:
    start = text.lower().index(words)
    return fact(slot, value, foot, span=(start, start + len(words)))


def sigmoid(x: Floats) -> Floats:
    return np.asarray(1 / (1 + np.exp(-x)))


def one_way(weights: Mapping[str, Floats], end: str, inputs: Floats) -> Floats:
    """Cho et al. 2014, section 2.3 (from memory), the reset gate on the state with its bias."""
    w, u = weights[f"body.weight_ih{end}"], weights[f"body.weight_hh{end}"]
    b, c = weights[f"body.bias_ih{end}"], weights[f"body.bias_hh{end}"]
    size = u.shape[1]
    reset, update, new = slice(0, size), slice(size, 2 * size), slice(2 * size, None)
    state, found = np.zeros(size), []
    for x in inputs:
        a, h = w @ x + b, u @ state + c
        z, r = sigmoid(a[update] + h[update]), sigmoid(a[reset] + h[reset])
        state = (1 - z) * np.tanh(a[new] + r * h[new]) + z * state
        found.append(state)
    return np.array(found)


def by_hand(words: list[int], first: int, last: int, slot: int, foot: int) -> tuple[Floats, Floats]:
    with np.load(TINY.with_suffix(".npz")) as kept:
        weights = {name: kept[name].astype(np.float64) for name in kept.files}
    now = weights["emb.weight"][words]
    for layer in ("_l0", "_l1"):
        back = one_way(weights, f"{layer}_reverse", now[::-1])[::-1]
        now = np.concatenate([one_way(weights, layer, now), back], 1)
    joined = np.concatenate([now[first], now[last - 1], now[first:last].mean(0)])
    hidden = weights["hid.weight"] @ joined + weights["hid.bias"] + weights["slot.weight"][slot]
    half = len(hidden) // 2
    status = np.maximum(hidden[:half] + weights["foot.weight"][foot], 0)
    scores = np.exp(weights["st.weight"] @ status + weights["st.bias"])
    feet = sigmoid(weights["ft.weight"] @ np.maximum(hidden[half:], 0) + weights["ft.bias"])
    return scores / scores.sum(), feet


def test_it_computes_what_the_formulas_say() -> None:
    facts = [told("finding", "thrush", "thrush left", "RH"), told("nails", 6.0, "54", "LF")]
    views = SecondReader(TINY.read_bytes()).views(Surroundings(TEXT), facts)
    words = [2, 3, 1, 4, 5]
    for one, asked in zip(facts, [(0, 2, 0, 4), (3, 4, 1, 1)], strict=True):
        statuses, feet = by_hand(words, *asked)
        assert views[id(one)].statuses == pytest.approx(tuple(statuses), abs=1e-5)
        assert views[id(one)].feet == pytest.approx(tuple(feet), abs=1e-5)


def test_a_slot_that_was_not_learnt_and_a_memo_without_words() -> None:
    tiny, known = SecondReader(TINY.read_bytes()), told("finding", "thrush", "thrush")
    views = tiny.views(Surroundings(TEXT), [told("pad", "rim", "left"), known])
    assert list(views) == [id(known)]
    assert tiny.views(Surroundings(TEXT), [told("pad", "rim", "left")]) == {}
    assert tiny.views(Surroundings(""), [known]) == {}


def test_a_fact_behind_the_end_is_taken_for_the_last_word() -> None:
    lost, last = fact("finding", "thrush", "LF", span=(90, 95)), told("finding", "thrush", ".")
    views = SecondReader(TINY.read_bytes()).views(Surroundings(TEXT), [lost, last])
    assert views[id(lost)] == views[id(last)]


def test_of_figures_only_how_many_counts() -> None:
    assert [plain(word) for word in ("52", "3.5", "left", "5°", "½")] == ["##", "#.#", "left", "#°", "½"]
    other = "Thrush left, 51."
    net = SecondReader(TINY.read_bytes())
    here, there = told("nails", 6.0, "54"), told("nails", 6.0, "51", text=other)
    assert net.views(Surroundings(TEXT), [here])[id(here)] == net.views(Surroundings(other), [there])[id(there)]


def test_the_likeliest_other_status() -> None:
    view = View((0.5, 0.1, 0.0, 0.0, 0.05, 0.3, 0.05), (0.0, 0.9, 0.2, 0.0, 0.0))
    assert view.otherwise(Status.PRESENT) == (Status.PLANNED, 0.3)
    assert view.otherwise(Status.PLANNED) == (Status.PRESENT, 0.5)
    assert (view.of_foot("LF"), view.of_foot(None)) == (0.9, 0.0)


def test_the_shipped_one_tells_a_plan_from_what_was_done() -> None:
    text = "Wickham. Reset both fronts, six nails each. Next time full pads on both fronts."
    pads, reset = told("pad", "full", "full pads", text=text), told("work", "reset", "reset", text=text)
    views = second_reader().views(Surroundings(text), [pads, reset])
    likeliest = {id(one): STATUSES[int(np.argmax(views[id(one)].statuses[:-1]))] for one in (pads, reset)}
    assert (likeliest[id(pads)], likeliest[id(reset)]) == (Status.PLANNED, Status.PRESENT)
    feet = views[id(pads)].feet
    assert min(feet[OF_FEET.index("LF")], feet[OF_FEET.index("RF")]) > 0.9
    assert max(feet[OF_FEET.index("LH")], feet[OF_FEET.index("RH")]) < 0.1


def test_it_knows_every_status_and_slot() -> None:
    assert set(STATUSES) == set(Status)
    assert set(second_reader()._slots) == set(SLOTS)


def test_its_library_is_told_to_report_nothing() -> None:
    """Also where no sound is heard, in a process of its own that says otherwise."""
    script = (
        "from pipeline.judging.second_reader import second_reader; import os; second_reader(); print(os.environ[NAME])"
    )
    told = subprocess.run(
        [sys.executable, "-c", script.replace("NAME", "'ORT_DISABLE_TELEMETRY'")],
        env={**os.environ, "PYTHONPATH": str(ROOT), "ORT_DISABLE_TELEMETRY": "0"},
        capture_output=True,
        text=True,
        check=True,
    )
    assert told.stdout == "1\n"


@pytest.mark.parametrize("scale", [2e-3, 1.0, 40.0])
def test_weights_are_kept_within_half_a_step(scale: float) -> None:
    weights = (np.random.default_rng(3).normal(size=(20, 30)) * scale).astype(np.float32)
    numbers, power = whole(weights)
    assert np.abs(numbers).max() == LEVELS
    half = np.abs(weights).max(axis=1, keepdims=True) / LEVELS / 2
    # A row's step is half of a sixteenth of a power of two off at most.
    off = np.abs(numbers * step(power) - weights).max(axis=1, keepdims=True) / half
    assert off.max() <= 2 ** (1 / 32)
    assert off.max() > 0.9
