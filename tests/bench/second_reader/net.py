"""The second reader as torch learns it; the names of its weights are those that ``exporting`` expects."""

from __future__ import annotations

import torch
from torch import Tensor, nn

from pipeline.judging.second_reader import OF_FEET
from tests.bench.second_reader.gathering import MEANINGS

LAYERS = 2


class Net(nn.Module):
    """Takes words (memo, length); every question is a row of memo, first, last, slot and, of status, foot."""

    def __init__(self, words: int, slots: int, size: tuple[int, int, int], drop: float) -> None:
        super().__init__()
        vector, state, hidden = size
        self.emb = nn.Embedding(words, vector, padding_idx=0)
        self.drop = nn.Dropout(drop)
        self.body = nn.GRU(vector, state, LAYERS, batch_first=True, bidirectional=True, dropout=drop)
        self.hid = nn.Linear(6 * state, 2 * hidden)
        self.slot = nn.Embedding(slots, 2 * hidden)
        self.foot = nn.Embedding(len(OF_FEET), hidden)
        self.st = nn.Linear(hidden, len(MEANINGS))
        self.ft = nn.Linear(hidden, len(OF_FEET))
        self._half = hidden

    def states(self, words: Tensor) -> Tensor:
        """What stands at each word once the memo has been passed over both ways: (memo, length, 2 * state)."""
        return self.drop(self.body(self.drop(self.emb(words)))[0])

    def _told(self, states: Tensor, asked: Tensor) -> Tensor:
        memo, first, last = asked[:, 0], asked[:, 1], asked[:, 2].clamp(max=states.shape[1])
        sums = torch.cat([torch.zeros_like(states[:, :1]), states.cumsum(1)], 1)
        mean = (sums[memo, last] - sums[memo, first]) / (last - first).clamp(min=1).unsqueeze(1)
        return self.hid(torch.cat([states[memo, first], states[memo, last - 1], mean], 1)) + self.slot(asked[:, 3])

    def status(self, states: Tensor, asked: Tensor) -> Tensor:
        """The scores of each of ``MEANINGS``: (question, 7)."""
        hidden = self._told(states, asked)[:, : self._half] + self.foot(asked[:, 4])
        return self.st(self.drop(hidden.relu()))

    def feet(self, states: Tensor, asked: Tensor) -> Tensor:
        """The scores of each of ``OF_FEET``: (question, 5)."""
        return self.ft(self.drop(self._told(states, asked)[:, self._half :].relu()))
