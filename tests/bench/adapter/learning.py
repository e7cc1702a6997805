"""The factors learnt step by step, and the losses over what is held out."""

from __future__ import annotations

from collections.abc import Callable, Iterable

import torch

from pipeline.errors import ClinchbookError
from tests.bench.adapter.batches import IGNORED, Batch, Lesson
from tests.bench.adapter.course import Course
from tests.bench.adapter.whisper import Whisper

VERSION = str(torch.__version__)


def device(wanted: str | None) -> str:
    """The device that is wanted; the graphics card, where there is one, when none is.

    Raises ClinchbookError for a card that is not there.
    """
    card = bool(torch.cuda.is_available())
    if wanted == "cuda" and not card:
        raise ClinchbookError("There is no graphics card that torch can use; leave --device out, or give cpu.")
    return wanted or ("cuda" if card else "cpu")


def learn(network: Whisper, course: Course, lessons: Iterable[Lesson], watch: Callable[[int, float], None]) -> None:
    """One step a lesson; ``watch`` is told the number of every step and its loss, that of sameness in it."""
    torch.manual_seed(course.seed)
    optimiser = torch.optim.AdamW(network.learnt(), course.rate, betas=(0.9, 0.98), weight_decay=course.decay)
    schedule = torch.optim.lr_scheduler.LambdaLR(optimiser, course.share)
    with network.learning():
        for step, lesson in enumerate(lessons, 1):
            loss = network.loss(lesson.learnt)
            if lesson.same is not None:
                loss = loss + course.sameness * network.drift(lesson.same)
            optimiser.zero_grad()
            loss.backward()
            torch.nn.utils.clip_grad_norm_(network.learnt(), course.longest)
            optimiser.step()
            schedule.step()
            watch(step, float(loss.detach()))


def loss_over(network: Whisper, batches: Iterable[Batch]) -> float:
    """The mean loss of a piece over all batches."""
    total, pieces = 0.0, 0
    with torch.no_grad():
        for batch in batches:
            count = int((batch.targets != IGNORED).sum())
            total += float(network.loss(batch)) * count
            pieces += count
    return total / pieces
