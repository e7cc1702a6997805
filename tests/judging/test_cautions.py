"""Which facts call for a caution, and that nothing else does."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pipeline.judging import cautions
from pipeline.record import WORDED_SLOTS, Fact, Status
from tests.judging.making import fact

NOT_TODAY = [Status.ABSENT, Status.RESOLVED, Status.HISTORY, Status.PLANNED]
CALLING = {
    "laminitis": (fact("finding", "laminitis", None), "laminitis is an emergency"),
    "rotation": (fact("finding", "rotation"), "laminitis is an emergency"),
    "obel": (fact("obel", 1.0, None), "laminitis is an emergency"),
    "puncture": (fact("finding", "puncture"), "tetanus cover matters"),
    "quicked": (fact("finding", "quicked"), "watch for lameness, heat and pulse"),
    "grade 4": (fact("lameness", 4.0, None), "grade 4 or more"),
    "grade 5": (fact("lameness", 5.0), "grade 4 or more"),
    "canker": (fact("finding", "canker"), "needs a vet to name it for certain"),
    "keratoma": (fact("finding", "keratoma"), "needs a vet to name it for certain"),
    "drained": (fact("treatment", "drained"), "opening living tissue is a vet's act"),
    "resection": (fact("treatment", "resection"), "opening living tissue is a vet's act"),
    "copper sulfate": (fact("treatment", "copper_sulfate"), "gloves, mask, no dry dust"),
}


@pytest.mark.parametrize("name", CALLING)
@pytest.mark.parametrize("status", [Status.PRESENT, Status.SUSPECTED])
def test_now_or_suspected_calls_for_it(name: str, status: Status) -> None:
    cause, words = CALLING[name]
    (line,) = cautions([cause.model_copy(update={"status": status})])
    assert words in line
    assert line.endswith("Ask your vet; local rules apply.")


@pytest.mark.parametrize("name", CALLING)
@pytest.mark.parametrize("status", NOT_TODAY)
def test_what_is_not_so_today_calls_for_none(name: str, status: Status) -> None:
    cause, _ = CALLING[name]
    assert cautions([cause.model_copy(update={"status": status})]) == []


@pytest.mark.parametrize("grade", [0.0, 1.0, 2.0, 3.0, 3.5])
def test_lameness_below_grade_four_calls_for_none(grade: float) -> None:
    assert cautions([fact("lameness", grade, None)]) == []


def test_heat_and_a_bounding_pulse_in_one_foot_call_for_it() -> None:
    (line,) = cautions([fact("finding", "heat", "LH"), fact("pulse", "bounding", "LH")])
    assert "laminitis is an emergency" in line


@pytest.mark.parametrize(
    "facts",
    [
        [fact("finding", "heat"), fact("pulse", "bounding", "RF")],
        [fact("finding", "heat"), fact("pulse", "raised")],
        [fact("finding", "heat", status=Status.ABSENT), fact("pulse", "bounding")],
        [fact("finding", "heat", status=Status.HISTORY), fact("pulse", "bounding")],
        [fact("finding", "heat")],
        [fact("pulse", "bounding")],
    ],
)
def test_heat_and_pulse_not_together_call_for_none(facts: list[Fact]) -> None:
    assert cautions(facts) == []


HARMLESS = [
    fact(slot, value, None if slot in ("manner", "vet") else "LF")
    for slot, values in WORDED_SLOTS.items()
    for value in values
    if (slot, value)
    not in {
        ("finding", "laminitis"), ("finding", "rotation"), ("finding", "puncture"), ("finding", "quicked"),
        ("finding", "canker"), ("finding", "keratoma"), ("treatment", "drained"), ("treatment", "resection"),
        ("treatment", "copper_sulfate"), ("finding", "heat"), ("pulse", "bounding"),
    }
]  # fmt: skip


@pytest.mark.parametrize("one", HARMLESS, ids=lambda f: f"{f.slot} {f.value}")
def test_everything_else_calls_for_none(one: Fact) -> None:
    assert cautions([one]) == []


@given(st.permutations([cause for cause, _ in CALLING.values()]))
def test_each_line_once_and_in_one_order(facts: list[Fact]) -> None:
    lines = cautions([*facts, *facts])
    assert lines == cautions([cause for cause, _ in CALLING.values()])
    assert len(lines) == len(set(lines)) == 7
