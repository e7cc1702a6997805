"""What is to be after a race or a show is planned; what was done after one, or found, is of today.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

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
