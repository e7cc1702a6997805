"""Facts in, judged facts out: confidence, plausibility and flags."""

from pipeline.judging.cautions import cautions
from pipeline.judging.judge import judge

__all__ = ["cautions", "judge"]
