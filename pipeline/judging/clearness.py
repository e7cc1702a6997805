"""How clear a whole memo was to hear: in bad sound a recogniser is surer of its words than it should be.

The model of a fact's evidence was fitted on clean sound, so in poor sound the hand-set rules are asked as well, and
where hardly a memo is like this, every fact is put before a person. The limits are shares of clean memos only: of 80 in
six synthetic voices 1 in 20 has a mean word probability below 0.79 and none below 0.7.
"""

from __future__ import annotations

from enum import Enum
from statistics import mean

from pipeline.record import Transcript

_POOR = 0.79
_BAD = 0.7
_FEWEST = 12  # words; of fewer the mean says little

HARD_TO_HEAR = "Much of this memo was hard to hear; please listen."


class Clearness(Enum):
    """Of a whole memo; typed text is clear."""

    CLEAR = "clear"
    POOR = "poor"
    BAD = "bad"


def clearness(transcript: Transcript) -> Clearness:
    """From the mean probability of the words as the recogniser gave it."""
    if len(transcript.words) < _FEWEST:
        return Clearness.CLEAR
    sure = mean(word.probability for word in transcript.words)
    return Clearness.BAD if sure < _BAD else Clearness.POOR if sure < _POOR else Clearness.CLEAR
