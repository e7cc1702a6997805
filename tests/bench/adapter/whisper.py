"""The recogniser's network in torch, straight on CTranslate2's arrays, with the factors that are learnt.

After Radford, Kim, Xu, Brockman, McLeavey and Sutskever 2022, "Robust Speech Recognition via Large-Scale Weak
Supervision", arXiv 2212.04356, section 2.2; queries, keys and values lie in one matrix, as CTranslate2 keeps them.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import numpy as np
import torch
from torch.nn import functional

from tests.bench.adapter.batches import IGNORED, Batch
from tests.bench.adapter.course import Course
from tests.bench.adapter.exporting import Factors
from tests.bench.adapter.weights import Arrays

Tensor = Any
_HEAD = 64  # numbers of each head, in every size of Whisper


class Whisper:
    """The weights, which stay as they are, and for every linear matrix two factors, which are learnt."""

    def __init__(self, weights: Arrays, course: Course, device: str) -> None:
        """The factors begin as nothing: their product is zero."""
        self.device, self._course = device, course
        self._weights = {name: torch.from_numpy(array.copy()).to(device) for name, array in weights.items()}
        self._width = len(weights["encoder/layer_norm/gamma"])
        self._adapted, self._learning = True, False
        drawn = torch.Generator().manual_seed(course.seed)
        self._factors: dict[str, tuple[Tensor, Tensor]] = {}
        for name in sorted(name for name in weights if re.search(r"/linear_\d+/weight$", name)):
            out, width = weights[name].shape
            a = torch.randn(course.rank, width, generator=drawn) / math.sqrt(width)
            pair = a.to(device), torch.zeros(out, course.rank, device=device)
            self._factors[name] = (pair[0].requires_grad_(), pair[1].requires_grad_())

    def learnt(self) -> list[Tensor]:
        """The factors, to be changed by learning."""
        return [factor for pair in self._factors.values() for factor in pair]

    def factors(self) -> Factors:
        """A (rank, in) and B (rank, out) of each matrix, as they are exported."""
        strength = self._course.strength
        return {
            name: (a.detach().cpu().numpy().copy(), strength * b.detach().cpu().numpy().T)
            for name, (a, b) in self._factors.items()
        }

    def take(self, factors: Factors) -> None:
        """Put these factors in the place of the learnt ones."""
        with torch.no_grad():
            for name, (a, b) in self._factors.items():
                a.copy_(torch.from_numpy(np.array(factors[name][0])))
                b.copy_(torch.from_numpy(np.array(factors[name][1].T / self._course.strength)))

    @contextmanager
    def learning(self) -> Iterator[None]:
        """Drop a part of what comes into the factors meanwhile."""
        self._learning = True
        try:
            yield
        finally:
            self._learning = False

    @contextmanager
    def bare(self) -> Iterator[None]:
        """Leave the factors out meanwhile."""
        self._adapted = False
        try:
            yield
        finally:
            self._adapted = True

    def loss(self, batch: Batch) -> Tensor:
        """The mean of the negative log probabilities, in nats, of the pieces that are to be written."""
        targets = torch.from_numpy(batch.targets).to(self.device)
        return functional.cross_entropy(self.scores(batch).flatten(0, 1), targets.flatten(), ignore_index=IGNORED)

    def drift(self, batch: Batch) -> Tensor:
        """How far what is expected of each piece that is to be written lies from what the bare weights expect.

        The Kullback-Leibler divergence from the bare weights' probabilities, which are not changed by learning, to
        those with the factors, in nats, the mean over the pieces. After Li and Hoiem 2016, "Learning without
        Forgetting", arXiv 1606.09282, which keeps the answers of the network as it was in this way.
        """
        wanted = torch.from_numpy(batch.targets != IGNORED).to(self.device)
        with torch.no_grad(), self.bare():
            before = self.scores(batch)[wanted].log_softmax(-1)
        now = self.scores(batch)[wanted].log_softmax(-1)
        return functional.kl_div(now, before, log_target=True, reduction="batchmean")

    def scores(self, batch: Batch) -> Tensor:
        """The scores (reading, place, piece) of what stands behind each token."""
        features, tokens = (torch.from_numpy(part).to(self.device) for part in (batch.features, batch.tokens))
        with torch.autocast(self.device, torch.bfloat16):
            return self._decode(self._encode(features), tokens).float()

    def _encode(self, features: Tensor) -> Tensor:
        """The encoder's output (reading, step of 20 ms, width) of spectra (reading, band, frame)."""
        x = functional.gelu(self._convolved("encoder/conv1", features))
        x = functional.gelu(self._convolved("encoder/conv2", x, stride=2)).transpose(1, 2)
        x = x + self._weights["encoder/position_encodings/encodings"][: x.shape[1]]
        for layer in self._layers("encoder"):
            x = self._attended(f"{layer}/self_attention", x)
            x = self._fed_forward(f"{layer}/ffn", x)
        return self._normed("encoder", x)

    def _decode(self, heard: Tensor, tokens: Tensor) -> Tensor:
        """The scores (reading, place, piece) of what stands behind each token."""
        pieces = self._weights["decoder/embeddings/weight"]
        x = pieces[tokens] + self._weights["decoder/position_encodings/encodings"][: tokens.shape[1]]
        for layer in self._layers("decoder"):
            x = self._attended(f"{layer}/self_attention", x, causal=True)
            x = self._listened(f"{layer}/attention", x, heard)
            x = self._fed_forward(f"{layer}/ffn", x)
        return functional.linear(self._normed("decoder", x), pieces)

    def _layers(self, side: str) -> list[str]:
        names = (re.match(rf"{side}/layer_\d+(?=/)", name) for name in self._weights)
        return list(dict.fromkeys(sorted((m[0] for m in names if m), key=lambda name: int(name.rpartition("_")[2]))))

    def _attended(self, name: str, x: Tensor, causal: bool = False) -> Tensor:
        q, k, v = self._linear(f"{name}/linear_0", self._normed(name, x)).chunk(3, -1)
        return x + self._linear(f"{name}/linear_1", self._attention(q, k, v, causal))

    def _listened(self, name: str, x: Tensor, heard: Tensor) -> Tensor:
        q = self._linear(f"{name}/linear_0", self._normed(name, x))
        k, v = self._linear(f"{name}/linear_1", heard).chunk(2, -1)
        return x + self._linear(f"{name}/linear_2", self._attention(q, k, v))

    def _fed_forward(self, name: str, x: Tensor) -> Tensor:
        inner = functional.gelu(self._linear(f"{name}/linear_0", self._normed(name, x)))
        return x + self._linear(f"{name}/linear_1", inner)

    def _attention(self, q: Tensor, k: Tensor, v: Tensor, causal: bool = False) -> Tensor:
        heads = (part.unflatten(-1, (-1, _HEAD)).transpose(1, 2) for part in (q, k, v))
        return functional.scaled_dot_product_attention(*heads, is_causal=causal).transpose(1, 2).flatten(2)

    def _linear(self, name: str, x: Tensor) -> Tensor:
        """Wx + b, and B(Ax) in the strength of the course."""
        plain = functional.linear(x, self._weights[f"{name}/weight"], self._weights.get(f"{name}/bias"))
        if not self._adapted:
            return plain
        a, b = self._factors[f"{name}/weight"]
        narrow = functional.linear(functional.dropout(x, self._course.dropped, self._learning), a)
        return plain + functional.linear(narrow, b) * self._course.strength

    def _normed(self, name: str, x: Tensor) -> Tensor:
        gamma, beta = (self._weights[f"{name}/layer_norm/{part}"] for part in ("gamma", "beta"))
        return functional.layer_norm(x, (self._width,), gamma, beta)

    def _convolved(self, name: str, x: Tensor, stride: int = 1) -> Tensor:
        weight, bias = (self._weights[f"{name}/{part}"] for part in ("weight", "bias"))
        return functional.conv1d(x, weight, bias, stride=stride, padding=1)
