"""How the second reader is learnt: large nets from what was meant, then a small one from that and from the large ones.

Knowledge distillation (Hinton, Vinyals and Dean 2015, "Distilling the Knowledge in a Neural Network", arXiv
1503.02531).
In the second half of its course the small net learns with its weights in the few steps in which they will be kept.
"""

from __future__ import annotations

import random
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass

import torch
from torch import Tensor
from torch.nn import functional
from torch.nn.utils import clip_grad_norm_

from pipeline.judging.second_reader import UNKNOWN
from tests.bench.second_reader.exporting import LEVELS, PARTS
from tests.bench.second_reader.gathering import Lesson
from tests.bench.second_reader.net import Net

_TOKENS, _MOST = 7000, 128  # of one batch
_UNHEARD = 0.08  # of the words are taken for unknown, so that none is leaned on alone
_HARD = 0.4  # how much what was meant counts beside what the large nets make of it
_ROUNDED_FROM = 0.45  # of the course


@dataclass(frozen=True)
class Item:
    """One lesson in numbers: words, questions of status with their meaning, and of feet with theirs."""

    words: Tensor
    status: Tensor
    feet: Tensor


@dataclass(frozen=True)
class Soft:
    """What the large nets make of an item's questions, or one of them."""

    status: Tensor
    feet: Tensor


def items(lessons: Sequence[Lesson], words: Mapping[str, int], slots: Mapping[str, int]) -> list[Item]:
    """The lessons in numbers; what is told of a slot that is not known is left out."""
    found = []
    for one in lessons:
        told = [(t.first, t.last, slots[t.slot], t.foot, t.meant) for t in one.told if t.slot in slots]
        feet = [(f.first, f.last, slots[f.slot], *f.meant) for f in one.feet if f.slot in slots and max(f.meant) >= 0]
        if told:
            numbers = torch.tensor([words.get(word, UNKNOWN) for word in one.words])
            of_feet = torch.tensor(feet, dtype=torch.long).reshape(-1, 8)
            found.append(Item(numbers, torch.tensor(told), of_feet))
    return found


def batches(given: Sequence[Item], tokens: int = _TOKENS) -> list[list[int]]:
    """The places of items of like length together, in any order."""
    order = sorted(range(len(given)), key=lambda i: len(given[i].words) + 20 * random.random())
    found: list[list[int]] = [[]]
    for place in order:
        if (len(found[-1]) + 1) * len(given[place].words) > tokens or len(found[-1]) >= _MOST:
            found.append([])
        found[-1].append(place)
    random.shuffle(found)
    return [batch for batch in found if batch]


def padded(given: Sequence[Tensor], device: str) -> Tensor:
    """Words of several memos as one table, 0 behind each end."""
    return torch.nn.utils.rnn.pad_sequence(list(given), batch_first=True).to(device)


def stacked(rows: Sequence[Tensor], device: str) -> Tensor:
    """Questions of several memos as one table, the memo's place in front."""
    return torch.cat([torch.cat([torch.full((len(r), 1), i), r], 1) for i, r in enumerate(rows)]).to(device)


@contextmanager
def rounded(net: Net) -> Iterator[None]:
    """The net with its matrices as ``exporting`` keeps them, which its gradients pass by."""
    kept = {name: parameter.data for name, parameter in net.named_parameters()}
    for parameter in net.parameters():
        if parameter.dim() == 2:
            most = parameter.data.abs().amax(-1, keepdim=True).clamp(min=1e-4)
            step = torch.exp2((PARTS * torch.log2(most / LEVELS)).round() / PARTS)
            parameter.data = (parameter.data / step).round().clamp(-LEVELS, LEVELS) * step
    try:
        yield
    finally:
        for name, parameter in net.named_parameters():
            parameter.data = kept[name]


def learn(net: Net, given: Sequence[Item], rounds: int, rate: float, device: str, soft: Sequence[Soft] = ()) -> Net:
    """Teach ``net`` for so many rounds; with ``soft`` it is the small one."""
    net = net.to(device)
    optimizer = torch.optim.AdamW(net.parameters(), lr=rate, weight_decay=1e-4)
    steps = rounds * (len(batches(given)) + 6)
    course = torch.optim.lr_scheduler.OneCycleLR(optimizer, rate, total_steps=steps + 1)
    for number in range(rounds):
        net.train()
        as_kept = soft and number >= _ROUNDED_FROM * rounds
        for batch in batches(given):
            with rounded(net) if as_kept else nullcontext():
                loss = _loss(net, [given[i] for i in batch], [soft[i] for i in batch] if soft else [], device)
                optimizer.zero_grad()
                loss.backward()
            clip_grad_norm_(net.parameters(), 1.0)
            optimizer.step()
            course.step()
    return net


def _loss(net: Net, batch: Sequence[Item], soft: Sequence[Soft], device: str) -> Tensor:
    words = padded([item.words for item in batch], device)
    lost = (torch.rand(words.shape, device=device) < _UNHEARD) & (words > 0)
    states = net.states(torch.where(lost, torch.full_like(words, UNKNOWN), words))
    asked = stacked([item.status for item in batch], device)
    scores, meant = net.status(states, asked), asked[:, 5]
    loss = functional.cross_entropy(scores, meant, label_smoothing=0.0 if soft else 0.02)
    if soft:
        large = torch.cat([one.status for one in soft]).to(device)
        loss = _HARD * loss - (1 - _HARD) * (large * scores.log_softmax(1)).sum(1).mean()
    of_feet = stacked([item.feet for item in batch], device)
    if not len(of_feet):
        return loss
    told = of_feet[:, 4:].float()
    known = (told >= 0).float()
    if soft:
        large = torch.cat([one.feet for one in soft]).to(device)
        told, known = torch.where(told >= 0, _HARD * told + (1 - _HARD) * large, large), torch.ones_like(known)
    each = functional.binary_cross_entropy_with_logits(net.feet(states, of_feet), told.clamp(0, 1), reduction="none")
    return loss + (each * known).sum() / known.sum().clamp(min=1)


def softened(net: Net, given: Sequence[Item], device: str) -> list[Soft]:
    """What the large net makes of every question."""
    found: list[Soft | None] = [None] * len(given)
    net.eval()
    with torch.no_grad():
        for batch in batches(given, 3 * _TOKENS):
            states = net.states(padded([given[i].words for i in batch], device))
            of_status = net.status(states, stacked([given[i].status for i in batch], device)).softmax(1).cpu()
            of_feet = net.feet(states, stacked([given[i].feet for i in batch], device)).sigmoid().cpu()
            cuts = [len(given[i].status) for i in batch], [len(given[i].feet) for i in batch]
            for place, status, feet in zip(batch, of_status.split(cuts[0]), of_feet.split(cuts[1]), strict=True):
                found[place] = Soft(status, feet)
    return [one for one in found if one is not None]


def averaged(several: Sequence[Sequence[Soft]]) -> list[Soft]:
    """What several large nets make of every question together."""
    return [
        Soft(torch.stack([one.status for one in each]).mean(0), torch.stack([one.feet for one in each]).mean(0))
        for each in zip(*several, strict=True)
    ]
