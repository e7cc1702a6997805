"""Somebody else's animal tells nothing of this one; a guess is a doubt; what the farrier tore off was not lost.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

OTHERS = """\
Neighbor's mule leaned over the fence with a toe crack you could park in, not my circus.
The neighbour's pony has thrush that would knock you over.
Somebody else's gelding in the next stall is lame on the left hind.
The horse next door had a sprung shoe, not my job.
Saw the neighbor's mare over the fence, she's foundered in both fronts.
Other fella's horse had an abscess, left hind.
Lady wanted me to look at her friend's pony's quarter crack.
My buddy's mare has scratches on both hinds.
Some guy's mule had his left front shoe sprung.
Other people's horses have seedy toe all round, not my problem.
"""


@pytest.mark.parametrize("aside", OTHERS.splitlines())
def test_somebody_elses_animal(read: Read, aside: str) -> None:
    (visit,) = read(f"Tally. Reset in front. {aside} Trimmed behind.", "Tally")
    assert told(visit) == ["LF+RF work reset", "LH+RH work trim"]


@pytest.mark.parametrize("said", ["The neighbor's boy helped.", "My buddy's truck was in the way."])
def test_somebody_elses_person_or_thing(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said} Corn in the left front.", "Tally")
    assert told(visit) == ["LF finding corn"]


ANOTHER_DAYS = """\
Danny's horse with the abscess, that's Thursday, that's a different story.
Karen's mare with the thrush, that's tomorrow.
The Millers' pony with the canker, that's another story.
Tom's gelding, the one with the founder, he's Friday.
Susie's horse that had the abscess is next week.
Danny's horse has an abscess, I'm doing him tomorrow.
"""


@pytest.mark.parametrize("aside", ANOTHER_DAYS.splitlines())
def test_somebodys_horse_of_another_day(read: Read, aside: str) -> None:
    (visit,) = read(f"Tally. Trimmed all round. {aside} Corn in the left front. Six weeks.", "Tally")
    assert told(visit) == ["- next_visit_weeks 6 planned", "LF finding corn", "LF+RF+LH+RH work trim"]


@pytest.mark.parametrize("turn", ["Danny's horse, Buck, he's Friday.", "Danny's horse next, that's Buck."])
def test_somebodys_horse_that_is_named(read: Read, turn: str) -> None:
    tally, buck = read(f"Tally. Trimmed all round. {turn} Corn in the left front.", "Tally", "Buck")
    assert told(tally) == ["LF+RF+LH+RH work trim"]
    assert told(buck) == ["LF finding corn"]


@pytest.mark.parametrize("denied", ["No, not in any of his feet.", "None in any foot."])
def test_a_question_denied_of_the_feet_in_hand(read: Read, denied: str) -> None:
    (visit,) = read(f"Tally. Trimmed all round. Thrush? {denied}", "Tally")
    assert told(visit) == ["LF+RF+LH+RH finding thrush absent", "LF+RF+LH+RH work trim"]


GUESSES = """\
If I had to bet there's an abscess brewing, right front.
If I had to guess, an abscess in the right front.
If you pushed me I'd say abscess, right front.
If I were a betting man I'd say there's an abscess in the right front.
My money's on an abscess in the right front.
I'd bet on an abscess, right front.
I'd put money on an abscess in the right front.
Right front smells like an abscess to me.
"""


@pytest.mark.parametrize("said", GUESSES.splitlines())
def test_a_guess_is_a_doubt(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. {said}", "Tally")
    assert told(visit) == ["RF finding abscess suspected"]


@pytest.mark.parametrize(
    "said",
    [
        "Right front might be growing one, jury's out.",
        "Right front might have one too.",
        "And maybe one in the right front.",
        "Possibly one in the right front.",
        "Could be one in the right front.",
    ],
)
def test_perhaps_another_one(read: Read, said: str) -> None:
    (visit,) = read(f"Tally. Corn in the left front. {said}", "Tally")
    assert told(visit) == ["LF finding corn", "RF finding corn suspected"]


test_what_was_done_and_what_was_lost = reads(
    [
        ("Tore that pair off in front and nailed on new trailers.", ["LF+RF shoe_type trailer", "LF+RF work new_shoe"]),
        ("He tore the left front off and we never found it.", ["LF shoe_state lost"]),
        ("He'd yanked the left hind.", ["LH shoe_state lost"]),
        ("Left hind I reset because it's barely worn in.", ["LH work reset"]),
        ("Left hind's worn thin.", ["LH shoe_state worn"]),
        (
            "Full pads in front, I was all set on silicone and I was out of it so putty's what's under there.",
            ["LF+RF packing putty", "LF+RF pad full"],
        ),
        ("Thrush in both fronts. Trimmed those four little feet.", ["LF+RF finding thrush", "LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_a_word_of_the_soles_alone = reads(
    [
        ("Front soles are dropped, no, just flat.", ["LF+RF finding flat_sole"]),
        ("Soles are thin in front, sorry, flat.", ["LF+RF finding flat_sole"]),
        ("Soles flat in front, I mean dropped.", ["LF+RF finding dropped_sole"]),
        (
            "Thin soles all round, and flat on the hinds besides.",
            ["LF+RF+LH+RH finding thin_sole", "LH+RH finding flat_sole"],
        ),
        ("Thin soles in front, flat shoes on them.", ["LF+RF finding thin_sole", "LF+RF shoe_type plain"]),
        ("Off fore sole is flat, and thin with it.", ["RF finding flat_sole", "RF finding thin_sole"]),
        ("Near fore's flat soled, and quite thin too.", ["LF finding flat_sole", "LF finding thin_sole"]),
        ("Near fore sole is flat. Thin with it.", ["LF finding flat_sole", "LF finding thin_sole"]),
        ("Near fore the sole is flat and it's thin.", ["LF finding flat_sole", "LF finding thin_sole"]),
        ("The near fore heels are underrun and sheared as well.",
         ["LF finding sheared_heels", "LF finding underrun_heels"]),
        ("Near fore heels are sheared, and collapsed into the bargain.",
         ["LF finding sheared_heels", "LF finding underrun_heels"]),
        ("Walls weak and the sole thin with it, off fore.", ["RF finding thin_sole", "RF finding weak_wall"]),
        ("Near fore has a corn, and he's thin with it.", ["LF finding corn"]),
        ("Near fore sole is flat. She is thin, and quiet with it.", ["- manner quiet", "LF finding flat_sole"]),
        ("Near fore heels underrun, going is soft and wet.", ["LF finding underrun_heels"]),
        ("Thin soles in front, crushed rock and flat roads don't help.", ["LF+RF finding thin_sole"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_a_nail_of_somebody_else = reads(
    [
        (
            "A nail too close in the right hind, a close nail, not mine, so I took it out and put iodine in it.",
            ["RH finding close_nail", "RH treatment iodine"],
        ),
        ("The off fore was quicked, not mine, poultice on it.", ["RF finding quicked", "RF treatment poultice"]),
        ("The chestnut mare with the close nail is not mine, corn in the near fore.", []),
    ],
    "Tansy. {}",
)

test_spoken_of_and_denied = reads(
    [
        (
            "The owner asked me about sidebone, and I found no sidebone in either front.",
            ["LF+RF finding sidebone absent"],
        ),
        ("The lad wondered about thrush, but there is no thrush in the hinds.", ["LH+RH finding thrush absent"]),
        ("The trainer asked us about a corn, and I see no corn in the near fore.", ["LF finding corn absent"]),
        # there after all, and another finding
        ("They asked about a corn, and there is a corn in the near fore.", ["LF finding corn"]),
        (
            "Corn in the near fore. They asked me about the weather, no thrush.",
            ["LF finding corn", "LF finding thrush absent"],
        ),
    ]
)

test_what_i_wondered_is_doubted = reads(
    [
        ("Off fore, wondered was it thrush.", ["RF finding thrush suspected"]),
        ("Wondered was it thrush in the near fore", ["LF finding thrush suspected"]),
        ("I half wondered was there a corn in the near fore.", ["LF finding corn suspected"]),
        ("We were wondering is it an abscess, near hind.", ["LH finding abscess suspected"]),
        ("Near hind, just wondered had she a bruise.", ["LH finding bruise suspected"]),
        # others wondered
        ("She wondered was it thrush in the off fore.", []),
        ("The owner rang, wondered was it thrush in the off fore.", []),
        ("Near hind, they were wondering was it an abscess.", []),
    ],
    "Tansy. {}",
)
