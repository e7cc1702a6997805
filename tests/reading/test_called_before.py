"""A name of another day opens nothing, and of two intervals the one behind the but stands."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES: list[tuple[str, dict[str | None, list[str]]]] = [
    (
        "This one's for Tally, I think I called her Buck on the last tape, my mistake. Trimmed all four.",
        {"Tally": ["LF+RF+LH+RH work trim"]},
    ),
    ("Tally, whom I called Buck last week. Trimmed all four.", {"Tally": ["LF+RF+LH+RH work trim"]}),
    ("Tally. I called him Buck in the last memo. Trimmed all four.", {"Tally": ["LF+RF+LH+RH work trim"]}),
    ("Tally. I'd called her Buck before. Trimmed all four.", {"Tally": ["LF+RF+LH+RH work trim"]}),
    ("Tally. We called him Buck by mistake. Trimmed all four.", {"Tally": ["LF+RF+LH+RH work trim"]}),
    ("Tally. I called it Buck last visit. Trimmed all four.", {"Tally": ["LF+RF+LH+RH work trim"]}),
    ("Buck, I've called him Tally once. Trimmed all four.", {"Buck": ["LF+RF+LH+RH work trim"]}),
    ("Buck. I wrongly had him as Tally last time. Trimmed all four.", {"Buck": ["LF+RF+LH+RH work trim"]}),
    (
        "Tally trimmed. Next one they call Buck. Reset the fronts.",
        {"Tally": ["LF+RF+LH+RH work trim"], "Buck": ["LF+RF work reset"]},
    ),
    (
        "Tally trimmed. Buck trimmed. Tally's five weeks and Buck's, well, I said five but those feet, four.",
        {
            "Tally": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
            "Buck": ["- next_visit_weeks 4 planned", "LF+RF+LH+RH work trim"],
        },
    ),
    (
        "Tally trimmed. I said six weeks but with those walls, five.",
        {"Tally": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"]},
    ),
    (
        "Tally trimmed. I said eight weeks, but he's long, make it seven.",
        {"Tally": ["- next_visit_weeks 7 planned", "LF+RF+LH+RH work trim"]},
    ),
]


@pytest.mark.parametrize(("text", "expected"), CASES, ids=[case[0] for case in CASES])
def test_called_before(read: Read, text: str, expected: dict[str | None, list[str]]) -> None:
    assert {v.horse: told(v) for v in read(text, "Tally", "Buck")} == expected
