"""What is to be after a race or a show is planned; what was done after one, or found, is of today.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

test_what_is_to_be_after_an_event = reads(
    [
        (
            "Racing plates on all round. After the race he goes back into steel all round.",
            ["LF+RF+LH+RH shoe_material steel planned", "LF+RF+LH+RH shoe_type racing_plate"],
        ),
        (
            "Racing plates in front. When the season's over she goes back into plain steel in front.",
            ["LF+RF shoe_material steel planned", "LF+RF shoe_type plain planned", "LF+RF shoe_type racing_plate"],
        ),
        ("Once he's done racing he'll go back to steel in front.", ["LF+RF shoe_material steel planned"]),
        ("After Saturday he goes back into plain shoes in front.", ["LF+RF shoe_type plain planned"]),
        ("He goes back into steel all round after the show.", ["LF+RF+LH+RH shoe_material steel planned"]),
        ("After the show he's going back into steel in front.", ["LF+RF shoe_material steel planned"]),
        ("When she's finished hunting she goes barefoot behind.", ["LH+RH work trim planned"]),
        ("After the race he was put back into steel in front.", ["LF+RF shoe_material steel"]),
        ("After the show last week he went back into steel in front.", ["LF+RF shoe_material steel"]),
        (
            "Straight bars off, he goes back into plain steel in front.",
            ["LF+RF shoe_material steel", "LF+RF shoe_type plain", "LF+RF shoe_type straight_bar history"],
        ),
        ("He went back into steel in front today after the race.", ["LF+RF shoe_material steel"]),
        (
            "He goes into plain steel in front after Sunday's race.",
            ["LF+RF shoe_material steel planned", "LF+RF shoe_type plain planned"],
        ),
        ("After the show, iodine on both hinds.", ["LH+RH treatment iodine"]),
        ("He's short on the left front after the race.", ["LF gait short_stride"]),
        ("She comes back from the hunt with a bruise in the left front.", ["LF finding bruise"]),
        ("After the race he's lame on the left front.", ["LF gait lame"]),
        (
            "She goes for the sale on Friday and after the sale she gets leather pads in front.",
            ["LF+RF pad leather planned"],
        ),
        ("Until the show he's in plain shoes in front.", ["LF+RF shoe_type plain planned"]),
        ("Till the race he stays in racing plates in front.", ["LF+RF shoe_type racing_plate"]),
    ],
    "Tansy. {}",
)

DONE_AGAIN = [
    ("Back in six weeks to do it again, bar shoes in front.", ["- next_visit_weeks 6 planned", "LF+RF shoe_type bar"]),
    ("Back in five weeks to do him again, egg bars in front, plain behind.",
     ["- next_visit_weeks 5 planned", "LF+RF shoe_type egg_bar", "LH+RH shoe_type plain"]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "facts"), DONE_AGAIN)
def test_what_is_done_again_is_of_today_and_asked(read: Read, text: str, facts: list[str]) -> None:
    (visit,) = read(f"Tally. {text}", "Tally")
    assert told(visit) == facts
    assert [f.reason for f in visit.flags] == ["Heard what is to be done again, but not whether it was done today."]


test_what_is_to_be_done_then_is_planned = reads(
    [
        ("Tally. Back in six weeks to put bars on in front, leather pads.",
         ["- next_visit_weeks 6 planned", "LF+RF pad leather planned"]),
        ("Tally. Back in six weeks to do it again, near fore had thrush.",
         ["- next_visit_weeks 6 planned", "LF finding thrush"]),
        ("Tally. Bar shoes in front. Back in six weeks to do it again.",
         ["- next_visit_weeks 6 planned", "LF+RF shoe_type bar"]),
    ]
)  # fmt: skip
