"""How the adapter is learnt: weights rounded as they will be, sound disturbed, batches in order, factors exported."""

from __future__ import annotations

import random
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from pipeline.hearing.adapter import add, arrays
from pipeline.hearing.weights import weights_folder
from pipeline.vocabulary import load_vocabulary
from tests.bench.adapter import din
from tests.bench.adapter.batches import IGNORED, Batch, Batches, Lesson, frames_of, in_turns, written
from tests.bench.adapter.course import Course
from tests.bench.adapter.disturbing import between, disturbed, faster, in_a_room
from tests.bench.adapter.exporting import at_strength, export, levels, rounded
from tests.bench.adapter.prompts import Prompts
from tests.bench.adapter.saying import path_of
from tests.bench.adapter.voices import Reading
from tests.bench.adapter.weights import Arrays, in_eight_bits, read, whole_numbers
from tests.bench.adapter.windows import MEMO, Window
from tests.bench.hearing import takes
from tests.bench.hearing.conditions import write_wav
from tests.bench.hearing.noises import RATE, Sound
from tests.hearing.test_adapter import model

Noise = Callable[[int, np.random.Generator], Sound]


def talker() -> Sound:
    """Half a second of somebody."""
    return np.asarray(np.sin(np.arange(RATE // 2) * 0.3))


def reading(number: int) -> Reading:
    return Reading(Window(MEMO, (f"Number {number}.",), ("Pip",)), "slt", 1.0)


def factors(out: int = 5, width: int = 7, rank: int = 2) -> tuple[NDArray[np.float32], NDArray[np.float32]]:
    drawn = np.random.default_rng(4)
    a, b = drawn.standard_normal((rank, width)), drawn.standard_normal((rank, out))
    return a.astype(np.float32), b.astype(np.float32)


def test_rows_are_rounded_to_whole_numbers_of_eight_bits() -> None:
    matrix = np.array([[1.27, -0.634, 0.004], [0, 0, 0]], np.float32)
    numbers, scale = whole_numbers(matrix)
    assert numbers.tolist() == [[127, -63, 0], [0, 0, 0]]
    assert scale.tolist() == pytest.approx([0.01, 1])
    assert in_eight_bits(matrix)[0].tolist() == pytest.approx([1.27, -0.63, 0])


def test_matrices_are_rounded_and_the_rest_is_read_as_it_is(tmp_path: Path) -> None:
    weight, kernel = np.array([[127, 0.3]], np.float16), np.array([[[127, 0.3]]], np.float16)
    places = np.array([[127, 0.3]], np.float16)
    sound = model(a__linear_0__weight=weight, conv1__weight=kernel, a__linear_0__bias=weight[0], encodings=places)
    (tmp_path / "model.bin").write_bytes(sound)
    found = read(tmp_path)
    assert found["a/linear_0/weight"].tolist() == [[127, 0]]
    for name in ("conv1/weight", "a/linear_0/bias", "encodings"):
        assert found[name].ravel().tolist() == pytest.approx([127, 0.3], abs=1e-4)
    assert found["conv1/weight"].shape == (1, 1, 2)


def test_what_is_exported_is_added_as_b_times_a_within_the_rounding(tmp_path: Path) -> None:
    a, b = factors()
    weight = np.ones((5, 7), np.float16)
    export({"layer/weight": (a, b)}, tmp_path / "new" / "adapter.npz.z")
    adapted = model(layer__weight=weight)
    add(adapted, (tmp_path / "new" / "adapter.npz.z").read_bytes())
    start = dict(arrays(adapted))["layer/weight"][0]
    found = np.frombuffer(adapted, np.float16, weight.size, start).reshape(weight.shape).astype(np.float32)
    # each factor is off by half a step at most, a step being its rank's largest over the levels of that rank
    most = levels({"layer/weight": (a, b)})["layer/weight"]
    steps_a, steps_b = np.abs(a).max(axis=1) / most, np.abs(b).max(axis=1) / most
    bound = (np.abs(b).T @ steps_a)[:, None] / 2 + (steps_b @ np.abs(a))[None] / 2 + (steps_a @ steps_b) / 4 + 2e-3
    assert (np.abs(found - (weight + b.T @ a)) <= bound).all()
    exact_a, exact_b = rounded({"layer/weight": (a, b)})["layer/weight"]
    assert found == pytest.approx(weight + exact_b.T @ exact_a, abs=2e-3)
    assert [path.name for path in (tmp_path / "new").iterdir()] == ["adapter.npz.z"]


def test_half_the_strength_is_half_of_what_is_added() -> None:
    a, b = np.array([[1, 2]], np.float32), np.array([[3, 5, 7]], np.float32)
    half_a, half_b = at_strength({"layer/weight": (a, b)}, 0.5)["layer/weight"]
    assert (half_b.T @ half_a).tolist() == [[1.5, 3.0], [2.5, 5.0], [3.5, 7.0]]


def test_factors_that_learnt_nothing_are_exported_as_nothing(tmp_path: Path) -> None:
    a, b = factors()
    export({"layer/weight": (a, 0 * b)}, tmp_path / "adapter.npz.z")
    adapted = model(layer__weight=np.ones((5, 7), np.float16))
    add(adapted, (tmp_path / "adapter.npz.z").read_bytes())
    assert adapted == model(layer__weight=np.ones((5, 7), np.float16))


def test_the_rate_warms_up_and_falls_to_nothing() -> None:
    course = Course()
    assert (course.rank, course.rate, course.steps, course.readings) == (16, 4e-4, 1100, 24)
    assert (course.dropped, course.sameness, course.same_readings) == (0.1, 0.3, 6)
    assert course.share(0) == pytest.approx(1 / 60)
    assert course.share(550) == pytest.approx(0.5)
    assert course.share(1100) == pytest.approx(0)
    assert max(course.share(step) for step in range(1100)) == course.share(59)


@pytest.mark.parametrize("made", [din.rumble, din.band, din.blows, din.hum])
def test_noises_are_the_same_for_the_same_seed_alone(made: Noise) -> None:
    first = made(RATE, np.random.default_rng(1))
    assert len(first) == RATE
    assert np.isfinite(first).all()
    assert np.array_equal(first, made(RATE, np.random.default_rng(1)))
    assert not np.allclose(first, made(RATE, np.random.default_rng(2)))


def test_no_noise_is_one_that_the_report_has() -> None:
    assert not {name for name in takes.NOISES if hasattr(din, name)}
    assert not {"noise", "wind", "hammer", "diesel", "babble", "small_talk"} & set(vars(din))


def test_every_din_is_equally_loud() -> None:
    made = [din.din(RATE, np.random.default_rng(seed), talker) for seed in range(30)]
    assert [float(np.sqrt(np.mean(sound**2))) for sound in made] == pytest.approx([1.0] * 30)


def test_disturbed_readings_stay_whole_loud_enough_and_differ_by_seed_alone() -> None:
    clean = 0.5 * np.sin(np.arange(2 * RATE) * 0.2)
    made = [disturbed(clean, np.random.default_rng(seed), talker) for seed in range(40)]
    assert all(0.049 < np.abs(sound).max() < 0.951 for sound in made)
    assert all(2 * RATE / 1.23 < len(sound) < 2 * RATE / 0.79 for sound in made)
    assert np.array_equal(made[7], disturbed(clean, np.random.default_rng(7), talker))
    assert len({sound.tobytes() for sound in made}) == 40


def test_nothing_that_is_said_is_cut_off_by_playing_it_slower() -> None:
    clean = 0.5 * np.sin(np.arange(29 * RATE) * 0.2)
    assert all(len(disturbed(clean, np.random.default_rng(seed), talker)) <= 29.5 * RATE for seed in range(12))


def test_faster_is_shorter_and_higher() -> None:
    tone = np.sin(2 * np.pi * 400 * np.arange(RATE) / RATE)
    quick = faster(tone, 1.25)
    assert len(quick) == RATE / 1.25
    assert np.argmax(np.abs(np.fft.rfft(quick))) * RATE / len(quick) == pytest.approx(500, abs=2)


def test_a_room_leaves_the_sound_where_it_was_and_rings_after_it() -> None:
    click = np.zeros(RATE)
    click[100] = 1
    ringing = in_a_room(click, np.random.default_rng(1))
    assert len(ringing) == RATE
    assert np.allclose(ringing[:100], 0)
    assert ringing[100] == pytest.approx(1)
    assert float(np.abs(ringing[101:]).max()) > 0.01


def test_a_narrow_band_has_nothing_outside() -> None:
    tones = sum((np.sin(2 * np.pi * hz * np.arange(1 << 14) / RATE) for hz in (125, 1000, 6000)), np.zeros(1 << 14))
    spectrum = np.abs(np.fft.rfft(between(tones, 300, 3000), 1 << 14))
    assert [float(spectrum[round(hz * (1 << 14) / RATE)]) > 100 for hz in (125, 1000, 6000)] == [False, True, False]


def test_every_target_is_the_piece_behind_and_nothing_is_learnt_of_what_stands_before() -> None:
    tokens, targets = written([([1, 2, 3], [10, 11, 99]), ([3], [99])], end=99)
    assert tokens.tolist() == [[1, 2, 3, 10, 11], [3, 99, 99, 99, 99]]
    assert targets.tolist() == [[IGNORED, IGNORED, 10, 11, 99], [99, *[IGNORED] * 4]]
    tokens, targets = written([([1] * 400, [10] * 100)], end=99)
    assert tokens.shape == targets.shape == (1, 448)


def test_batches_are_half_a_minute_or_as_long_as_they_must_be() -> None:
    found = [frames_of([400, 1501], random.Random(seed)) for seed in range(60)]
    assert set(found) == {3000, 1600}
    assert 5 < found.count(3000) < 35
    assert {frames_of([2990], random.Random(seed)) for seed in range(9)} == {3000}
    assert {frames_of([90], random.Random(seed)) for seed in range(20)} == {1000, 3000}


def test_all_readings_have_their_turn_before_any_comes_again() -> None:
    said = [reading(number) for number in range(10)]
    turns = [r for handful in in_turns(said, 4, 5) for r in handful]
    assert len(turns) == 20
    assert set(turns[:10]) == set(turns[10:]) == set(said)
    assert turns[:10] != turns[10:]


@pytest.fixture(scope="module")
def batches(tmp_path_factory: pytest.TempPathFactory) -> tuple[Batches, list[Reading]]:
    """Five readings of a tone of half a second."""
    sound = tmp_path_factory.mktemp("sound")
    said = [reading(number) for number in range(5)]
    for one in said:
        path_of(one, sound).parent.mkdir(exist_ok=True)
        write_wav(path_of(one, sound), talker() / 2, RATE)
    prompts = Prompts(Path(weights_folder()), load_vocabulary(), ["Otter", "Fennel"])
    return Batches(prompts, sound, said), said


def test_plain_batches_ask_for_the_words_of_their_readings(batches: tuple[Batches, list[Reading]]) -> None:
    made, said = batches
    batch = made.plain(said, seed=1)
    assert batch.features.shape[:2] == (5, 80)
    assert batch.features[:, :, 60:].any() == np.False_
    words = [row[row != IGNORED].tolist() for row in batch.targets]
    assert [row[-1] for row in words] == [50257] * 5
    assert words[0][:-1] != words[1][:-1]
    assert len(words[0]) > 2


def test_batches_to_learn_from_are_the_same_however_they_are_made(
    batches: tuple[Batches, list[Reading]], monkeypatch: pytest.MonkeyPatch
) -> None:
    made, said = batches
    course = Course(steps=4, readings=2, same_readings=3)
    first = list(made.learning(said, said[:2], course))
    monkeypatch.setattr("tests.bench.adapter.batches.cores", lambda: 1)
    again = list(made.learning(said, said[:2], course))
    assert len(first) == 4
    for one, other in zip(first, again, strict=True):
        assert one.same is not None
        assert other.same is not None
        assert (len(one.learnt.features), len(one.same.features)) == (2, 3)
        for batch, as_before in ((one.learnt, other.learnt), (one.same, other.same)):
            assert np.array_equal(batch.features, as_before.features)
            assert np.array_equal(batch.tokens, as_before.tokens)
    assert not np.array_equal(first[0].learnt.features[:, :, :60], first[1].learnt.features[:, :, :60])
    assert [lesson.same for lesson in made.learning(said, [], course)] == [None] * 4


def tiny() -> Arrays:
    """A network of one layer a side, one head, sixteen pieces."""
    drawn = np.random.default_rng(9)

    def some(*shape: int) -> NDArray[np.float32]:
        return (0.1 * drawn.standard_normal(shape)).astype(np.float32)

    shapes: dict[str, tuple[int, ...]] = {
        "encoder/conv1/weight": (64, 80, 3),
        "encoder/conv2/weight": (64, 64, 3),
        "encoder/conv1/bias": (64,),
        "encoder/conv2/bias": (64,),
        "encoder/position_encodings/encodings": (1500, 64),
        "decoder/position_encodings/encodings": (448, 64),
        "decoder/embeddings/weight": (16, 64),
    }
    for layer in ("encoder/layer_0", "decoder/layer_0"):
        shapes |= {f"{layer}/self_attention/linear_{n}/weight": (size, 64) for n, size in enumerate((192, 64))}
        shapes |= {f"{layer}/ffn/linear_0/weight": (128, 64), f"{layer}/ffn/linear_1/weight": (64, 128)}
    shapes |= {f"decoder/layer_0/attention/linear_{n}/weight": (size, 64) for n, size in enumerate((64, 128, 64))}
    normed = ("encoder", "decoder", *(name.rpartition("/linear")[0] for name in shapes if "linear_0" in name))
    norms = {f"{name}/layer_norm/{part}": np.ones(64, np.float32) for name in normed for part in ("gamma", "beta")}
    return {name: some(*shape) for name, shape in shapes.items()} | norms


def test_the_network_learns_its_factors_and_nothing_else() -> None:
    pytest.importorskip("torch")
    from tests.bench.adapter import learning
    from tests.bench.adapter.whisper import Whisper

    weights, course = tiny(), Course(rank=2, steps=30, warming=2, rate=0.02)
    network = Whisper(weights, course, "cpu")
    tokens, targets = written([([1, 2], [5, 6, 0]), ([1], [7, 0])], end=0)
    batch = Batch(np.ones((2, 80, 40), np.float32), tokens, targets)
    with network.bare():
        before = learning.loss_over(network, [batch])
    assert learning.loss_over(network, [batch]) == before  # B is zero before anything is learnt
    told: list[tuple[int, float]] = []
    learning.learn(network, course, [Lesson(batch, None)] * 30, lambda step, loss: told.append((step, loss)))
    assert [step for step, _ in told] == list(range(1, 31))
    after = learning.loss_over(network, [batch])
    assert after < before - 0.5
    with network.bare():
        assert learning.loss_over(network, [batch]) == before
    learnt = network.factors()
    assert len(learnt) == 4 + 7
    assert all(a.shape[0] == b.shape[0] == 2 for a, b in learnt.values())
    network.take({name: (0 * a, b) for name, (a, b) in learnt.items()})
    assert learning.loss_over(network, [batch]) == pytest.approx(before)
    network.take(rounded(learnt))
    assert learning.loss_over(network, [batch]) == pytest.approx(after, abs=0.15)


def test_a_graphics_card_that_is_not_there_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    torch = pytest.importorskip("torch")
    from pipeline.errors import ClinchbookError
    from tests.bench.adapter import learning

    monkeypatch.setattr(torch.cuda, "is_available", lambda: False)
    assert learning.device(None) == "cpu"
    with pytest.raises(ClinchbookError, match="There is no graphics card that torch can use"):
        learning.device("cuda")
