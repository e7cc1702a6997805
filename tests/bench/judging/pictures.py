"""The risk-coverage curve and the reliability diagram, as pictures."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import matplotlib as mpl
import numpy as np

from pipeline.judging.model import Care
from tests.bench.judging.promising import calibration_error
from tests.bench.judging.training import Judged, levels_of

_COLOURS = {"typed": "#1b6ca8", "heard": "#b3541e"}  # told apart by the colour-blind too; lines differ besides
_DASHES = {"typed": "-", "heard": "--"}
_BESIDE = {"typed": (-12, 8), "heard": (4, -13)}  # where a point's count stands, in points
_NAMED_AT = {"typed": (-8, -13), "heard": (5, 5)}  # where a level of care is named
_BINS = 10


def draw(kinds: Sequence[Judged], folder: Path) -> None:
    """Write ``risk-coverage.png`` and ``reliability.png`` into ``folder``."""
    mpl.use("Agg")
    folder.mkdir(parents=True, exist_ok=True)
    _risk(kinds, folder / "risk-coverage.png")
    _reliability(kinds, folder / "reliability.png")


def _risk(kinds: Sequence[Judged], path: Path) -> None:
    from matplotlib import pyplot as plt

    figure, axes = plt.subplots(figsize=(7, 4.6), dpi=130)
    for judged in kinds:
        wrong = np.array(judged.wrong)[np.argsort(-judged.doubts, kind="stable")]
        left = (wrong.sum() - np.concatenate([[0], np.cumsum(wrong)])) / len(wrong)
        load = np.arange(len(wrong) + 1) / len(wrong)
        axes.plot(100 * load, 100 * left, _DASHES[judged.kind], color=_COLOURS[judged.kind],
                  label=f"{judged.kind}: {len(wrong)} facts, {int(wrong.sum())} wrong")  # fmt: skip
        levels = levels_of(judged)
        for care in Care:
            point = 100 * levels[care]["flagged"], 100 * levels[care]["silent"]
            axes.plot(*point, "o", color=_COLOURS[judged.kind], markersize=5)
            axes.annotate(care.value, point, textcoords="offset points", xytext=_NAMED_AT[judged.kind],
                          fontsize=8, color=_COLOURS[judged.kind])  # fmt: skip
    axes.axhline(1, color="#777777", linewidth=0.8, linestyle=":")
    axes.annotate("1 %", (99, 1.15), fontsize=8, ha="right")
    axes.set(xlabel="facts put before a person (%)", ylabel="facts wrong in silence (%)", xlim=(0, 100), ylim=(0, None),
             title="What is still wrong when so much is looked at (memos left out of training)")  # fmt: skip
    axes.title.set_fontsize(10)
    axes.legend(frameon=False)
    figure.tight_layout()
    figure.savefig(path)
    plt.close(figure)


def _reliability(kinds: Sequence[Judged], path: Path) -> None:
    from matplotlib import pyplot as plt

    figure, axes = plt.subplots(figsize=(5.6, 5.2), dpi=130)
    axes.plot([0, 1], [0, 1], ":", color="#777777", label="as it should be")
    for judged in kinds:
        right = np.array([e.right for e in judged.examples], dtype=float)
        trust = 1 - judged.chances
        places = np.minimum((trust * _BINS).astype(int), _BINS - 1)
        bins = [places == number for number in range(_BINS) if np.any(places == number)]
        error = calibration_error(judged.wrong, [float(chance) for chance in judged.chances])
        axes.plot([trust[b].mean() for b in bins], [right[b].mean() for b in bins], "o" + _DASHES[judged.kind],
                  color=_COLOURS[judged.kind], label=f"{judged.kind}, calibration error {error:.3f}")  # fmt: skip
        for b in bins:
            axes.annotate(str(int(b.sum())), (float(trust[b].mean()), float(right[b].mean())), fontsize=7,
                          textcoords="offset points", xytext=_BESIDE[judged.kind],
                          color=_COLOURS[judged.kind])  # fmt: skip
    axes.set(xlabel="confidence that is told", ylabel="share that is right", xlim=(0, 1.02), ylim=(0, 1.02),
             title="Is confidence true? (memos left out of training; numbers: facts)")  # fmt: skip
    axes.title.set_fontsize(10)
    axes.legend(frameon=False, loc="upper left")
    figure.tight_layout()
    figure.savefig(path)
    plt.close(figure)
