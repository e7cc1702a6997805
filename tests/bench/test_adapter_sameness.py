"""Other talk is heard as the bare weights hear it: which that is, its prompts, its loss; and what rounding costs."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from pipeline.errors import ClinchbookError
from pipeline.hearing.adapter import add, arrays
from pipeline.hearing.adapter import factors as factors_of
from pipeline.hearing.weights import weights_folder
from pipeline.vocabulary import load_vocabulary
from tests.bench.adapter import __main__ as bench
from tests.bench.adapter.batches import IGNORED, Batch, Batches, Lesson, written
from tests.bench.adapter.course import Course
from tests.bench.adapter.exporting import MOST, export, levels, rounded
from tests.bench.adapter.prompts import Prompts
from tests.bench.adapter.real import real_readings
from tests.bench.adapter.saying import path_of
from tests.bench.adapter.voices import Reading, held_out, kept_same, learnt_from
from tests.bench.adapter.windows import GENERAL, MEMO, REAL, Window
from tests.bench.hearing.conditions import read_wav, seconds_of, write_wav
from tests.bench.hearing.noises import RATE, Sound
from tests.bench.history import RESULTS
from tests.bench.test_adapter_learning import tiny
from tests.hearing.test_adapter import model

ROSTERS = [("Pip", "Otter"), ("Quince",)]


def said(count: int, kind: str, voice: str = "slt") -> list[Reading]:
    """So many readings, each of a window of its own."""
    return [Reading(Window(kind, (f"{kind} {n}.",), ("Pip",)), voice, 1.0) for n in range(count)]


def spoken(folder: Path, seconds: float, name: str) -> Path:
    """A WAV file of 8 kHz, as prompts are."""
    folder.mkdir(exist_ok=True)
    write_wav(folder / name, 0.5 * np.sin(np.arange(round(seconds * RATE / 2)) * 0.3), RATE // 2)
    return folder / name


def before(targets: NDArray[np.int64]) -> int:
    """How many tokens stand before the first word."""
    return int(np.argmax(targets != IGNORED)) + 1


def writing(*texts: str) -> tuple[Callable[[], Callable[[Sound], str]], list[int]]:
    """What writes these texts in turn, and the lengths of what it was given."""
    left, given = list(texts), []

    def write(heard: Sound) -> str:
        given.append(len(heard))
        return left.pop(0)

    return lambda: write, given


def test_of_real_prompts_two_fifths_are_held_out_and_the_others_kept_the_same_but_not_learnt() -> None:
    real, general, memos = said(11, REAL, REAL), said(8, GENERAL), said(4, MEMO)
    everything = [*real, *general, *memos]
    held = held_out(everything)
    assert {name: len(found) for name, found in held.items()} == {GENERAL: 2, "windows": 1, REAL: 4}
    assert kept_same(everything) == [*real[4:], *general[2:]]
    assert learnt_from(everything) == [*general[2:], *memos[1:]]


def test_of_many_real_prompts_120_are_held_out() -> None:
    assert len(held_out(said(308, REAL, REAL))[REAL]) == 120


def test_what_a_held_voice_says_and_held_words_are_not_kept_the_same_either() -> None:
    real = said(5, REAL, REAL)
    again = Reading(real[0].window, REAL, 1.0, "another take")
    assert kept_same([*real, again, *said(1, GENERAL, "kal16")]) == real[2:]


def test_two_takes_of_the_same_words_have_files_of_their_own() -> None:
    (one,) = said(1, REAL, REAL)
    assert Reading(one.window, REAL, 1.0, "a take").key != one.key


def test_prompts_of_fitting_length_are_heard_once_and_kept_at_16_khz(tmp_path: Path) -> None:
    for name, seconds in (("short.wav", 1.0), ("fits.wav", 2.0), ("long.wav", 25.5), ("other.wav", 3.0)):
        spoken(tmp_path / "prompts", seconds, name)
    writer, given = writing("Good evening. Please hold.", " ")
    (reading,) = real_readings(tmp_path / "prompts", tmp_path, ROSTERS, writer=writer)
    assert sorted(given) == [2 * RATE, 3 * RATE]
    assert (reading.window.kind, reading.voice) == (REAL, REAL)
    assert reading.window.sentences == ("Good evening.", "Please hold.")
    assert reading.window.roster in ROSTERS
    assert seconds_of(path_of(reading, tmp_path)) * RATE == given[0]
    assert float(np.abs(read_wav(path_of(reading, tmp_path))).max()) == pytest.approx(0.5, abs=0.05)

    def unwanted() -> Callable[[Sound], str]:
        raise AssertionError("heard again")

    assert real_readings(tmp_path / "prompts", tmp_path, ROSTERS, writer=unwanted) == [reading]


def test_a_trial_hears_only_so_many_prompts(tmp_path: Path) -> None:
    for number in range(3):
        spoken(tmp_path / "prompts", 2.0 + number, f"{number}.wav")
    writer, given = writing("One.", "Two.")
    assert len(real_readings(tmp_path / "prompts", tmp_path, ROSTERS, 2, writer)) == len(given) == 2


def test_a_folder_without_prompts_and_a_damaged_one_are_said(tmp_path: Path) -> None:
    with pytest.raises(ClinchbookError, match=r"^There are no WAV files of 1\.2 to 25 s in "):
        real_readings(tmp_path / "none", tmp_path, ROSTERS)
    (tmp_path / "torn.wav").write_bytes(b"RIFF")
    with pytest.raises(ClinchbookError, match=r"torn\.wav is no WAV file that can be read\.$"):
        real_readings(tmp_path, tmp_path, ROSTERS)


def test_real_prompts_are_shown_with_a_memos_prompt_two_times_of_three(tmp_path: Path) -> None:
    for number in range(12):
        spoken(tmp_path / "prompts", 2.0 + number / 10, f"{number}.wav")
    writer, _ = writing(*[f"Please hold {number}." for number in range(12)])
    real = real_readings(tmp_path / "prompts", tmp_path, ROSTERS, writer=writer)
    batches = Batches(Prompts(Path(weights_folder()), load_vocabulary(), ["Bosun"]), tmp_path, real)
    shown = [before(row) for seed in range(10) for row in batches.disturbed(real, seed).targets]
    assert set(filter(lambda count: count < 40, shown)) == {4}  # the four marks alone
    assert 50 <= sum(count > 4 for count in shown) <= 80  # of 120; a tenth of the memos' prompts is none as well
    assert sum(before(row) > 4 for row in batches.plain(real, 1).targets) >= 9


def test_rounding_loses_less_than_a_fiftieth_of_the_energy_and_is_read_back(tmp_path: Path) -> None:
    drawn = np.random.default_rng(5)
    a, b = (drawn.normal(0, 0.05, (16, width)).astype(np.float32) for width in (512, 2048))
    kept_a, kept_b = rounded({"layer/weight": (a, b)})["layer/weight"]
    for exact, kept in ((a, kept_a), (b, kept_b)):
        assert 0 < float(((kept - exact) ** 2).sum() / (exact**2).sum()) < 0.02
        # Of products of about the mean energy the largest is 11 times the root of 1 / 1.5, 9 or 10: 19 or 21 levels.
        assert {len(np.unique(row)) for row in kept} <= set(range(15, 22))
    export({"layer/weight": (a, b)}, tmp_path / "adapter.npz.z")
    ((_, read_a, read_b),) = factors_of((tmp_path / "adapter.npz.z").read_bytes())
    assert np.array_equal(read_a, kept_a)
    assert np.array_equal(read_b, kept_b)
    adapted = model(layer__weight=np.zeros((2048, 512), np.float16))
    add(adapted, (tmp_path / "adapter.npz.z").read_bytes())
    start, shape = dict(arrays(adapted))["layer/weight"]
    found = np.frombuffer(adapted, np.float16, shape[0] * shape[1], start).reshape(shape)
    assert np.allclose(found, kept_b.T @ kept_a, atol=1e-4)


def test_a_weak_product_has_fewer_levels_and_loses_no_more_than_a_strong_one() -> None:
    drawn = np.random.default_rng(6)
    a, b = (drawn.normal(0, 0.05, (4, width)).astype(np.float32) for width in (512, 512))
    a *= np.array([[1.0], [1.0], [0.25], [0.0]], np.float32)
    # Energies 1, 1, 1/16 and none: 1.5 of their mean 0.6875 is 1.03, and 11 times the root of 1/16 by that is 2.7.
    assert levels({"layer/weight": (a, b)})["layer/weight"].tolist() == [MOST, MOST, 3, 2]
    kept_a, kept_b = rounded({"layer/weight": (a, b)})["layer/weight"]
    lost = [float(((np.outer(b[i], a[i]) - np.outer(kept_b[i], kept_a[i])) ** 2).sum()) for i in range(4)]
    assert 0 < lost[2] < max(lost[:2])
    assert lost[3] == 0


def test_the_history_of_the_losses_has_the_columns_of_the_bench() -> None:
    with (RESULTS / "adapter.csv").open(encoding="utf-8", newline="") as file:
        header, *rows = csv.reader(file)
    assert header == ["day", "version", *bench.COLUMNS]
    assert {len(row) for row in rows} == {len(header)}


def test_what_is_kept_the_same_drifts_less_than_what_is_not() -> None:
    pytest.importorskip("torch")
    from tests.bench.adapter import learning
    from tests.bench.adapter.whisper import Whisper

    tokens, targets = written([([1, 2], [5, 6, 0]), ([1], [7, 0])], end=0)
    learnt = Batch(np.ones((2, 80, 40), np.float32), tokens, targets)
    tokens, targets = written([([1], [3, 4, 0])], end=0)
    other = Batch(np.full((1, 80, 40), -0.5, np.float32), tokens, targets)
    drifts = {}
    for sameness in (0.0, 3.0):
        course = Course(rank=2, steps=30, warming=2, rate=0.02, dropped=0.0, sameness=sameness)
        network = Whisper(tiny(), course, "cpu")
        assert float(network.drift(other)) == 0  # B is zero before anything is learnt
        learning.learn(network, course, [Lesson(learnt, other)] * 30, lambda step, loss: None)
        drifts[sameness] = float(network.drift(other).detach())
    assert 0 < drifts[3.0] < drifts[0.0] / 2


def test_the_drift_is_the_divergence_from_the_bare_weights_over_the_pieces_that_are_written() -> None:
    torch = pytest.importorskip("torch")
    from tests.bench.adapter.whisper import Whisper

    network = Whisper(tiny(), Course(rank=2), "cpu")
    network.take({name: (a, b + np.float32(0.1)) for name, (a, b) in network.factors().items()})
    tokens, targets = written([([1, 2], [5, 6, 0]), ([1], [7, 0])], end=0)
    batch = Batch(np.ones((2, 80, 40), np.float32), tokens, targets)
    with torch.no_grad(), network.bare():
        before = network.scores(batch).softmax(-1).numpy()
    with torch.no_grad():
        now = network.scores(batch).softmax(-1).numpy()
    wanted = targets != IGNORED
    expected = (before * np.log(before / now)).sum(axis=-1)[wanted].mean()
    assert expected > 0
    assert float(network.drift(batch).detach()) == pytest.approx(expected, rel=1e-3)
