"""How is learnt: the rank, the steps, and how fast at each."""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Course:
    """What the shipped adapter was learnt with."""

    rank: int = 16
    steps: int = 1100
    readings: int = 24  # of a step
    rate: float = 4e-4
    warming: int = 60  # steps until the full rate
    decay: float = 0.01
    longest: float = 1.0  # the gradient's length, at most
    dropped: float = 0.1  # of what comes into the factors
    strength: float = 2.0  # by which the product of the factors is multiplied while learning
    sameness: float = 0.3  # the weight of hearing other talk as the bare weights do, beside the loss
    same_readings: int = 6  # of other talk, of a step
    seed: int = 0

    def share(self, step: int) -> float:
        """The share of the full rate at a step from 0 on: warming up, then falling as a half cosine to nothing."""
        return min(1.0, (step + 1) / self.warming) * (0.5 + 0.5 * math.cos(math.pi * min(1.0, step / self.steps)))
