"""What belongs to an earlier time beside today, and what is gone."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "normal now, on Sunday bounding": (
        "Pulse is normal in the left hind now, Sunday it was bounding.",
        ["LH pulse bounding history", "LH pulse normal"],
    ),
    "nothing today, strong on Tuesday": (
        "Testers, right front, nothing today, it was strong on Tuesday.",
        ["RF tester none", "RF tester strong history"],
    ),
    "lost on Sunday": (
        "Right hind reset today, he lost it on Sunday.",
        ["RH shoe_state lost", "RH work reset"],
    ),
    "was a four": (
        "Crest score two, was a four.",
        ["- cresty_neck 2", "- cresty_neck 4 history"],
    ),
    "used to": (
        "Crest is a three where it used to be a four.",
        ["- cresty_neck 3", "- cresty_neck 4 history"],
    ),
    "then at the end": (
        "He foundered two years back, Obel two then.",
        ["- finding laminitis history", "- obel 2 history"],
    ),
    "had it as": (
        "Left hind crack at the toe, moderate, I had it as severe last time.",
        ["LH finding crack @toe ~moderate", "LH finding crack history @toe ~severe"],
    ),
    "till spring": (
        "They had racing plates on both fronts till spring.",
        ["LF+RF shoe_type racing_plate history"],
    ),
    "till fall ahead": (
        "They're off the road till fall, borium on the fronts.",
        ["LF+RF traction borium"],
    ),
    "hope": (
        "Corn in the left front, I was hoping it'd be gone.",
        ["LF finding corn"],
    ),
    "chunk": (
        "There's a chunk of hoof gone at the inside quarter of the left front.",
        ["LF finding wall_loss @medial_quarter"],
    ),
    "week back": (
        "She was lame on the near fore a week back and today she's sound.",
        ["- gait sound", "LF gait lame history"],
    ),
    "gone after had been": (
        "The off hind had been swollen at the coronet, the swelling has gone.",
        ["RH finding swelling resolved @coronary_band"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text, "Bob")
    assert told(visit) == sorted(facts)


WHEN_IT_WAS = """\
Short striding, better than February when he was three out of five.
Short striding, better than in the spring when he was three out of five.
Short striding, sounder than last month, when he was three out of five.
Short striding, improved on April when he was three out of five.
Short striding, better than Tuesday when she was three out of five.
Short striding, that's up on last visit when he was three out of five.
Short striding, not like Easter when he was three out of five.
"""

AT_SOME_STAGE = """\
He's had laminitis at some stage.
She had laminitis at some point.
He foundered at one time or another.
He's had laminitis somewhere along the line.
He's had laminitis before my time.
He had laminitis before they got him.
There's been laminitis at some time.
She was foundered before we got her.
"""


@pytest.mark.parametrize("text", WHEN_IT_WAS.splitlines())
def test_a_time_and_how_it_stood_then(text: str, read: Read) -> None:
    (visit,) = read(text, "Bob")
    assert told(visit) == ["- gait short_stride", "- lameness 3 history"]


@pytest.mark.parametrize("text", AT_SOME_STAGE.splitlines())
def test_at_no_time_that_is_told(text: str, read: Read) -> None:
    (visit,) = read(text, "Bob")
    assert told(visit) == ["- finding laminitis history"]


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("When he was trotted up he was three out of five.", ["- lameness 3"]),
        ("At some stage I'll resect the near fore.", ["LF treatment resection planned"]),
        ("The near fore will need an egg bar at some stage.", ["LF shoe_type egg_bar planned"]),
        ("At this stage he has thrush in the near fore.", ["LF finding thrush"]),
    ],
)
def test_words_like_these_that_are_no_earlier_time(text: str, facts: list[str], read: Read) -> None:
    (visit,) = read(text, "Bob")
    assert told(visit) == facts


test_a_season_gone_by = reads(
    [
        ("He had studs in both hinds right through the hunting season.", ["LH+RH traction studs history"]),
        (
            "She had leather pads in front all through the show season, today she's in plain shoes.",
            ["LF+RF pad leather history", "LF+RF shoe_type plain"],
        ),
        ("He went in studs throughout the season.", ["- traction studs history"]),
    ],
    "Tally. {}",
)

test_a_season_that_goes_on = reads(
    [
        ("He wears studs in both hinds right through the season.", ["LH+RH traction studs"]),
        ("He's in egg bars in front, and stays in them all through the winter.", ["LF+RF shoe_type egg_bar"]),
        ("I put studs in both hinds to see him through the season.", ["LH+RH traction studs"]),
        ("Keep him in bar shoes in front all season.", ["LF+RF shoe_type bar"]),
        ("He's been lame on the left front all season.", ["LF gait lame"]),
    ],
    "Tally. {}",
)


test_what_they_said_he_had_had_is_of_before = reads(
    [
        ("The last man told them he'd had laminitis, so I went easy.", ["- finding laminitis history"]),
        ("They said she'd had an abscess in the off hind.", ["RH finding abscess history"]),
        ("Corn in the near fore, they said. The off fore has thrush.", ["LF finding corn", "RF finding thrush"]),
    ],
    "Tansy. {}",
)

test_worn_until_then = reads(
    [
        (
            "Racing plates in front till September. Today, plain steel in front.",
            [
                "LF+RF shoe_material steel",
                "LF+RF shoe_type plain",
                "LF+RF shoe_type racing_plate history",
            ],
        ),
        (
            "Rim pads in front until Easter. Now full pads in front.",
            ["LF+RF pad full", "LF+RF pad rim history"],
        ),
        (
            "Racing plates in front till September. Today, new shoes in front.",
            ["LF+RF shoe_type racing_plate history", "LF+RF work new_shoe"],
        ),
        ("Racing plates in front till September. Hinds trimmed.", ["LF+RF shoe_type racing_plate", "LH+RH work trim"]),
        ("Egg bars in front till September. Today he's quiet.", ["- manner quiet", "LF+RF shoe_type egg_bar"]),
    ],
    "Tansy. {}",
)

test_a_memo_that_ends_in_the_middle = reads(
    [("Tally. Trimmed all four. Three weeks, when", ["- next_visit_weeks 3 planned", "LF+RF+LH+RH work trim"])]
)

test_a_time_alone_and_what_is_left = reads(
    [
        (
            (
                "Left fore toe angle fifty degrees, right fore forty seven, and last time, off "
                "the card, the right fore was forty five."
            ),
            ["LF toe_angle 50", "RF toe_angle 45 history", "RF toe_angle 47"],
        ),
        (
            "Thrush in the near hind, and last visit, there was some in the off hind.",
            ["LH finding thrush", "RH finding thrush history"],
        ),
        (
            "He'd thrush in the near hind, and a corn, last time.",
            ["LH finding corn history", "LH finding thrush history"],
        ),
        ("There was an old abscess scar in the right hind.", ["RH finding abscess history"]),
        ("An old puncture mark in the left front sole.", ["LF finding puncture history @sole"]),
        ("The old abscess in the left front has broken out again.", ["LF finding abscess"]),
    ],
    "Tally. {}",
)

test_in_a_year_that_is_past = reads(
    [
        ("Foundered in twenty twenty three. New fronts.", ["- finding laminitis history", "LF+RF work new_shoe"]),
        ("He had an abscess in the left front back in 2021.", ["LF finding abscess history"]),
        ("He had an abscess in the left front back in eighteen.", ["LF finding abscess history"]),
        ("He foundered in twenty one and came right.", ["- finding laminitis history"]),
        ("Foundered in nineteen, so new fronts.", ["- finding laminitis history", "LF+RF work new_shoe"]),
        (
            "She had ringbone in the near fore in twenty nineteen, and sidebone in the off fore today.",
            ["LF finding ringbone history", "RF finding sidebone"],
        ),
        # no year
        ("He foundered in twenty days of grass.", ["- finding laminitis"]),
        (
            "He had a corn in the left front, back in twenty one days.",
            ["- next_visit_weeks 3 planned", "LF finding corn"],
        ),
        (
            "Toe angles, fifty in front. Growth rings on the fronts, twenty or so.",
            ["LF+RF finding growth_rings", "LF+RF toe_angle 50"],
        ),
    ],
    "Tally. {}",
)

test_where_something_else_was = reads(
    [
        (
            "She has silicone this time where she had putty before, both fronts.",
            ["LF+RF packing putty history", "LF+RF packing silicone"],
        ),
        ("Full pads in front today where he had rim pads last time.", ["LF+RF pad full", "LF+RF pad rim history"]),
        (
            "She's a four on condition where she was a six last time.",
            ["- body_condition 4", "- body_condition 6 history"],
        ),
        ("Where he had a crack last time on the near fore, it's grown out.", ["LF finding crack resolved"]),
    ],
    "Tansy. {}",
)

test_told_of_before_and_not_there_now = reads(
    [
        ("Both hinds had thrush last time and neither has it now.", ["LH+RH finding thrush resolved"]),
        ("The hinds had a flare apiece in March, and neither has one now.", ["LH+RH finding flare resolved"]),
        ("Both fronts had a corn in the spring. Neither foot shows one today.", ["LF+RF finding corn resolved"]),
        ("Both hinds had thrush last time. None now.", ["LH+RH finding thrush resolved"]),
        ("He used to forge. He's not forging now.", ["- gait forge resolved"]),
        ("He had a corn in the near fore last time. No corn now.", ["LF finding corn resolved"]),
        (
            "A flare on the near fore last time, neither hind has one now.",
            ["LF finding flare history", "LH+RH finding flare absent"],
        ),
        (
            "A corn in the near fore last time. No thrush today.",
            ["LF finding corn history", "LF finding thrush absent"],
        ),
        ("Mild thrush in the near hind. No corn today.", ["LH finding corn absent", "LH finding thrush ~mild"]),
    ],
    "Tansy. {}",
)

test_when_it_was_found = reads(
    [
        ("She has navicular in the near fore, the vet found it at Easter.", ["LF finding navicular"]),
        ("She has sidebone in the off fore, the vet picked it up in March.", ["RF finding sidebone"]),
        (
            "She's got laminitis again in both fores, she had it two summers ago.",
            ["LF+RF finding laminitis", "LF+RF finding laminitis history"],
        ),
    ],
)

test_a_time_behind_who_told_it = reads(
    [
        ("He foundered, the owner says, the autumn before last.", ["- finding laminitis history"]),
        ("She had a corn in the left front, they tell me, last winter.", ["LF finding corn history"]),
        ("Bruise in the right front, the owner says.", ["RF finding bruise"]),
        (
            "Thrush in the left hind, the owner says. Last time she was sound.",
            ["- gait sound history", "LH finding thrush"],
        ),
    ],
    "Tansy. {}",
)

test_known_of_old_is_there = reads(
    [
        ("Ringbone in the off fore, we know that from before.", ["RF finding ringbone"]),
        (
            "Sidebone in the near fore, I've known about that from before, it's not going anywhere.",
            ["LF finding sidebone"],
        ),
        (
            "Ringbone in the off fore, it's not going anywhere. New rocker toe on it.",
            ["RF finding ringbone", "RF shoe_type rocker_toe", "RF work new_shoe"],
        ),
        ("He had egg bars in front from before.", ["LF+RF shoe_type egg_bar history"]),
        ("No thrush anywhere.", ["LF+RF+LH+RH finding thrush absent"]),
    ],
    "Tansy. {}",
)

test_beaten_is_gone = reads(
    [
        ("Near hind did have white line disease, we've beaten it.", ["LH finding white_line_disease resolved"]),
        ("Thrush in the left hind, we've seen it off.", ["LH finding thrush resolved"]),
        ("Near hind thrush, we haven't beaten it.", ["LH finding thrush"]),
    ],
    "Tansy. {}",
)

test_when_it_was_young = reads(
    [
        ("The old man says she foundered as a filly.", ["- finding laminitis history"]),
        ("He was lame as a colt, he's sound today.", ["- gait lame history", "- gait sound"]),
        ("She had a puncture in the off fore when she was a two year old.", ["RF finding puncture history"]),
        (
            "Club foot, left front, he had a toe crack in it when he was a weanling.",
            ["LF finding club_foot", "LF finding crack history @toe"],
        ),
        ("Club foot, left front, cut as a colt.", ["LF finding club_foot"]),
        ("She's as strong as a filly could be. Thrush in the left hind.", ["LH finding thrush"]),
    ],
    "Tansy. {}",
)

test_when_it_started_and_in_a_season = reads(
    [
        ("Obel three when it started, Obel one today.", ["- obel 1", "- obel 3 history"]),
        ("Obel three when it began, one today.", ["- obel 1", "- obel 3 history"]),
        (
            "Pulse bounding in the near fore when it started, normal today.",
            ["LF pulse bounding history", "LF pulse normal"],
        ),
        ("She was lame on the near hind in spring.", ["LH gait lame history"]),
        (
            "Owner said she were lame on the near hind in spring, but she's sound now.",
            ["- gait sound", "LH gait lame history"],
        ),
        ("Owner said she had a corn in the near fore in winter.", ["LF finding corn history"]),
        (
            "Monday I had a close nail in his left front, on the outside. Today he's one out of five on it.",
            ["LF finding close_nail history @lateral", "LF lameness 1"],
        ),
        (
            "I had a hot nail in the left front Monday, today he's sound.",
            ["- gait sound", "LF finding quicked history"],
        ),
        # of today, or of what is to come
        ("He was quiet when it started raining. Trimmed.", ["- manner quiet", "LF+RF+LH+RH work trim"]),
        ("Lost the near fore when it started to rain.", ["LF shoe_state lost"]),
        ("He has thrush in both hinds in winter.", ["LH+RH finding thrush"]),
        ("He'll want studs behind in winter.", ["LH+RH traction studs planned"]),
        ("I had a close nail in the left front.", ["LF finding close_nail"]),
    ],
    "Tally. {}",
)
