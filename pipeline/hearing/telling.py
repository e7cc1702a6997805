"""The recogniser that tells, of every stretch that it decodes, how far it sounds like English."""

from __future__ import annotations

from typing import Any

from faster_whisper import BatchedInferencePipeline

from pipeline.hearing.decode import Samples

_ENGLISH = "<|en|>"


def english_of(model: Any, samples: Samples) -> float:
    """The chance (0-1) that the first half minute is English; 1 from an English-only model."""
    if not model.model.is_multilingual:
        return 1.0
    _, _, chances = model.detect_language(samples)
    return float(dict(chances).get("en", 0.0))


class TellingPipeline(BatchedInferencePipeline):
    """Decodes as its base does. ``english`` has, for every stretch in order, the chance (0-1) that it is English.

    It is asked of the encoded sound that is there anyway; an English-only model knows no others and says 1.
    """

    def __init__(self, model: Any) -> None:
        super().__init__(model)
        self.english: list[float] = []

    def generate_segment_batched(self, features: Any, tokenizer: Any, options: Any) -> Any:
        """The base's encoder output and texts."""
        encoded, outputs = super().generate_segment_batched(features, tokenizer, options)
        if self.model.model.is_multilingual:
            self.english += [dict(found).get(_ENGLISH, 0.0) for found in self.model.model.detect_language(encoded)]
        else:
            self.english += [1.0] * len(outputs)
        return encoded, outputs
