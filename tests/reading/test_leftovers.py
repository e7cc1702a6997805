"""Sentences of which nothing was read: flagged when they name a foot or a measure, left alone otherwise."""

from __future__ import annotations

import pytest

from pipeline.record import FlagKind
from tests.facts.conftest import Read
from tests.facts.conftest import read as read
from tests.facts.conftest import reader as reader

FOOT = "A foot is named here, but nothing of it was understood."


@pytest.mark.parametrize(
    ("sentence", "reason"),
    [
        ("Near fore is shaped like a banana skin.", FOOT),
        ("Right hind, something odd at the heel.", FOOT),
        ("Sole depth I wrote on the gatepost.", "Heard “sole depth”, but no value for it was understood."),
        ("The heel angle I wrote on the wall somewhere.", "Heard “heel angle”, but no value for it was understood."),
    ],
)
def test_it_is_put_before_him_with_its_words(read: Read, sentence: str, reason: str) -> None:
    (visit,) = read(f"Bramble. Reset all round. {sentence} Six weeks.", "Bramble")
    (flag,) = visit.flags
    assert (flag.kind, flag.reason, flag.quote) == (FlagKind.NOT_UNDERSTOOD, reason, sentence.rstrip("."))


@pytest.mark.parametrize(
    "sentence",
    [
        "Thrush in the near fore.",  # read
        "Near fore.",  # only opens the foot
        "Near fore is fine.",  # nothing to look at
        "The hinds I never touched.",
        "Sole depth wasn't taken.",  # denied
        "Order more hind shoes for the van.",  # an errand
        "Lovely spot behind the chapel, mind.",  # no foot
        "The flies were something terrible.",
        "Sole depth. On the left front, eleven millimetres.",  # told by the next sentence
    ],
)
def test_it_is_left_alone(read: Read, sentence: str) -> None:
    (visit,) = read(f"Bramble. Reset all round. {sentence} Six weeks.", "Bramble")
    assert visit.flags == []


DEGREE = "A degree is named here, but not of what was understood."


@pytest.mark.parametrize(
    ("sentence", "quote"),
    [
        (
            "He sprues the sole of that foot, moderate, and testers moderate over the sole on the near fore.",
            "He sprues the sole of that foot, moderate",
        ),
        ("Near hind's spurled at the toe, mild, and thrush in the off hind.", "Near hind's spurled at the toe, mild"),
    ],
)
def test_a_degree_of_what_no_list_knows_is_put_before_him(read: Read, sentence: str, quote: str) -> None:
    (visit,) = read(f"Bramble. Reset all round. {sentence} Six weeks.", "Bramble")
    (flag,) = visit.flags
    assert (flag.kind, flag.reason, flag.quote) == (FlagKind.NOT_UNDERSTOOD, DEGREE, quote)


@pytest.mark.parametrize(
    "sentence",
    [
        "Thrush in the near fore, moderate, and a corn in the off hind.",
        "Thrush, near fore moderate, off fore mild.",
        "He was a bit of a lout, and thrush in the near fore.",
        "Testers mild across the toe on the near fore.",
    ],
)
def test_a_degree_that_has_its_word_is_left_alone(read: Read, sentence: str) -> None:
    (visit,) = read(f"Bramble. Reset all round. {sentence} Six weeks.", "Bramble")
    assert DEGREE not in [flag.reason for flag in visit.flags]
