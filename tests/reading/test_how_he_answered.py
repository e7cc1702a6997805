"""How the horse answered the testers, how he went and what was felt: asked, answered behind a stop, settled, put right.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from itertools import product

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

_BEFORE, _BEHIND = "Right hind, flare at the heel.", "Left hind, sidebone. Six weeks."
_NEIGHBOURS = ["- next_visit_weeks 6 planned", "LH finding sidebone", "RH finding flare @heel"]
_FELT = {  # what is felt, how it answers as a word and as the horse does it, and what is then told
    "Testers": (
        ("nothing", "tester none"), ("negative", "tester none"), ("mild at the toe", "tester mild @toe"),
        ("he flinched", "tester positive"), ("she didn't mind", "tester none"),
        ("a strong reaction across the heels", "tester strong @heel"),
    ),
    "Digital pulse": (
        ("bounding", "pulse bounding"), ("normal", "pulse normal"), ("strong", "pulse raised"),
        ("nothing to speak of", "pulse normal"),
    ),
}  # fmt: skip
_ASKED = ("{head} on the near fore, {said}.", "{head} on the near fore. {Said}.", "{head} on the near fore? {Said}.")
_GRADES = {
    "two out of five": "2", "grade two": "2", "one to two out of five": "1", "a grade three": "3",
    "one or two out of five": "1",
}  # fmt: skip
_GRADED = (
    "Lame on the near fore. {Grade}.",
    "Lame? {Grade} on the near fore.",
    "Lame? Yes, {grade}, near fore.",
    "Was he lame? He was, {grade} on the near fore.",
    "Any lameness? {Grade}, near fore.",
    "He's lame on the near fore, {grade}.",
)
_SHORT = (
    "He's {short} on the near fore.", "{Short} on the near fore.", "Trotted up {short} on the near fore.",
    "She came out {short} on the near fore.", "Near fore, he's {short}.",
    "Is he sound? Not really, {short} on the near fore.",
    "Sound in a straight line, {short} on the near fore on a circle.",
    "If I'm not mistaken he's {short} on the near fore.",
)  # fmt: skip


def _upper(text: str) -> str:
    return text[:1].upper() + text[1:]


def _texts() -> list[tuple[str, str]]:
    texts = [
        (form.format(head=head, said=said, Said=_upper(said)), f"LF {fact}")
        for head, answers in _FELT.items()
        for (said, fact), form in product(answers, _ASKED)
    ]
    texts += [
        (form.format(grade=grade, Grade=_upper(grade)), f"LF lameness {value}")
        for (grade, value), form in product(_GRADES.items(), _GRADED)
    ]
    degrees = {"short": "", "a bit short": " ~mild", "slightly short": " ~mild"}
    texts += [
        (form.format(short=short, Short=_upper(short)), f"LF gait short_stride{degree}")
        for (short, degree), form in product(degrees.items(), _SHORT)
    ]
    return texts


@pytest.mark.parametrize(("said", "fact"), _texts())
def test_between_neighbours(said: str, fact: str, read: Read) -> None:
    (visit,) = read(f"Tally. {_BEFORE} {said} {_BEHIND}", *NAMES)
    assert told(visit) == sorted([*_NEIGHBOURS, fact])


test_asked_how_he_goes = reads(
    [
        ("Lame? No.", ["- gait lame absent"]),
        ("Lame on the off fore? No.", ["RF gait lame absent"]),
        ("Is he forging? No.", ["- gait forge absent"]),
        ("Any brushing? None.", ["- gait interfere absent"]),
        ("Is he still forging? He is.", ["- gait forge"]),
        ("Is he lame? He isn't.", ["- gait lame absent"]),
        ("Lame? Yes, off fore.", ["RF gait lame"]),
        ("Lame? A touch, off fore.", ["RF gait lame ~mild"]),
        ("Lame? No, sound.", ["- gait sound"]),
        ("Sound? Yes.", ["- gait sound"]),
        ("Is he sound? No.", ["- gait lame"]),
        ("Sound? Not quite. Two out of five on the off fore.", ["RF lameness 2"]),
        ("Sound? No. Lame on the off fore.", ["RF gait lame"]),
        ("Was he lame behind? No. Grade two on the off fore.", ["LH+RH gait lame absent", "RF lameness 2"]),
        ("The owner asked is he lame. He's not.", ["- gait lame absent"]),
        ("They asked is she lame on the off fore, and she is.", ["RF gait lame"]),
        ("Any heat in the off fore? A little.", ["RF finding heat ~mild"]),
        ("Any pulse in the off fore? Yes, bounding.", ["RF pulse bounding"]),
        ("Testers? Mild across the heels on the off fore.", ["RF tester mild @heel"]),
        ("Pulses? Bounding in front, normal behind.", ["LF+RF pulse bounding", "LH+RH pulse normal"]),
        # no answer that can be kept
        ("Is he lame? I couldn't tell you.", []),
        ("Is he lame? Trimmed all round.", ["LF+RF+LH+RH work trim"]),
        ("Pulse in the off fore? Didn't check.", []),
        ("Is she lame? Maybe, off fore.", ["RF gait lame suspected"]),
    ],
    "Tally. {}",
)

test_settled = reads(
    [
        ("Thought he flinched with the testers on the off fore, but no.", ["RF tester none"]),
        ("Thought there was a pulse in the off fore, but no.", ["RF pulse normal"]),
        ("Thought he was lame, but no.", ["- gait lame absent"]),
        ("Testers on the off fore, maybe a reaction. No, definitely a reaction.", ["RF tester positive"]),
        ("Maybe a pulse in the off fore. No, definitely a pulse.", ["RF pulse raised"]),
        ("Maybe lame on the off fore. No, definitely lame.", ["RF gait lame"]),
        ("Possibly a corn in the off fore. No, certainly a corn.", ["RF finding corn"]),
        ("If I'm not mistaken the pulse is up in the off fore.", ["RF pulse raised"]),
        ("He's two out of five on the off fore, make that three.", ["RF lameness 3"]),
        ("Grade two on the off fore, no, grade one.", ["RF lameness 1"]),
        ("Down to one out of five on the off fore from three.", ["RF lameness 1", "RF lameness 3 history"]),
        # still in doubt
        ("Testers on the off fore, maybe a reaction at the toe.", ["RF tester positive suspected @toe"]),
        ("Maybe lame. No, certainly not.", ["- gait lame suspected"]),
        ("He might be a bit short on the off fore.", ["RF gait short_stride suspected ~mild"]),
    ],
    "Tally. {}",
)

test_all_but_one = reads(
    [
        (
            "Testers clear on all four bar the near fore, mild at the toe.",
            ["LF tester mild @toe", "RF+LH+RH tester none"],
        ),
        ("Nothing to the testers anywhere but the near fore, strong.", ["LF tester strong", "RF+LH+RH tester none"]),
        ("No reaction to the testers anywhere but the near fore heel.", ["RF+LH+RH tester none"]),
        ("Testers clear all round bar the near fore, pulse normal.", ["RF+LH+RH pulse normal", "RF+LH+RH tester none"]),
    ],
    "Tally. {}",
)

test_short_of_something_else = reads(
    [
        ("She trotted up short in front.", ["LF+RF gait short_stride"]),
        ("Going slightly short behind.", ["LH+RH gait short_stride ~mild"]),
        ("Came in short the left front.", ["LF shoe_state lost"]),
        ("Short on time so I trimmed the fronts only.", ["LF+RF work trim"]),
        ("Toes short in front, trimmed.", ["LF+RF work trim"]),
        ("Shoes are short on the near fore.", []),
    ],
    "Tally. {}",
)

test_behind_a_heading_of_one_foot = reads(
    [
        ("Testers on the near fore. Corn in the off fore.", ["RF finding corn"]),
        ("Lame on the near fore. Size two all round.", ["LF gait lame", "LF+RF+LH+RH shoe_size 2"]),
        ("He's lame. Laminitis, grade two.", ["- finding laminitis", "- gait lame", "- obel 2"]),
        ("Testers on the near fore. Quiet.", ["- manner quiet"]),
        ("I didn't use the testers on the near fore. Nothing else to tell.", []),
        ("Testers on the near fore next time. Nothing more today.", []),
    ],
    "Tally. {}",
)


def test_two_horses_each_with_an_answer(read: Read) -> None:
    tally, buck = read(
        "Tally. Lame? No. Testers? Nothing. Buck. Lame? Yes, near fore. Testers? Strong, near fore.", *NAMES
    )
    assert told(tally) == ["- gait lame absent", "- tester none"]
    assert told(buck) == ["LF gait lame", "LF tester strong"]


test_comes_in_short = reads(
    [
        (
            "She came in short on the right front, and jogging I'd put her two out of five on it.",
            ["RF gait short_stride", "RF lameness 2"],
        ),
        ("She came out of the box short on the near fore.", ["LF gait short_stride"]),
        ("He came in here a bit short on the off fore.", ["RF gait short_stride ~mild"]),
        ("He walked in short behind.", ["LH+RH gait short_stride"]),
        ("She came in short the left front.", ["LF shoe_state lost"]),
        ("She came in short a shoe on the right front.", ["RF shoe_state lost"]),
        ("She came in short in the wall on the right front.", []),
    ]
)

test_never_budged = reads(
    [
        (
            "Testers positive at the toe on the near fore, and not a budge out of him on the off fore.",
            ["LF tester positive @toe", "RF tester none"],
        ),
        (
            "Testers positive at the toe on the near fore, not a budge on the off fore.",
            ["LF tester positive @toe", "RF tester none"],
        ),
        (
            "Testers positive at the toe on the near fore, not a move out of him on the off fore.",
            ["LF tester positive @toe", "RF tester none"],
        ),
        (
            "Testers positive on the near fore, not a word out of him on the off fore.",
            ["LF tester positive", "RF tester none"],
        ),
        ("Testers on the near fore. Not a budge.", ["LF tester none"]),
        # no testers
        ("Not a budge out of him for the hinds, good lad.", []),
        ("The near fore shoe wouldn't budge.", []),
    ],
    "Tally. {}",
)


test_fitted_or_not = reads(
    [
        ("Studs behind? None today.", ["LH+RH traction studs absent"]),
        ("Studs behind? No, he's fine.", ["LH+RH traction studs absent"]),
        ("Leather pads on the fronts? No.", ["LF+RF pad leather absent"]),
        ("Leather pads on the fronts? No, rim pads.", ["LF+RF pad rim"]),
        ("Toe clips in front? No, quarter clips.", ["LF+RF clips quarter"]),
        ("Bar shoes in front? Not any more.", ["LF+RF shoe_type bar absent"]),
        ("Studs behind? No, that was last time.", ["LH+RH traction studs history"]),
        ("Did I put studs in behind? No, that was last time.", ["LH+RH traction studs history"]),
        ("Studs? He had studs behind last season, none today.", ["LH+RH traction studs history"]),
        # an answer that denies nothing
        ("Studs behind? Yes.", ["LH+RH traction studs"]),
        ("Studs behind? Not a problem.", ["LH+RH traction studs"]),
    ]
)


test_of_before_and_of_then = reads(
    [
        ("The trainer had racing plates on all four.", ["LF+RF+LH+RH shoe_type racing_plate history"]),
        ("The dealer had wedge pads on both fronts.", ["LF+RF pad wedge history"]),
        ("The trainer had me put bar shoes on both fronts.", ["LF+RF shoe_type bar"]),
        ("She's the foundered one.", ["- finding laminitis history"]),
        ("She's foundered", ["- finding laminitis"]),
        (
            "Trimmed. In three weeks, sedated.",
            ["- manner sedated planned", "- next_visit_weeks 3 planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "Trimmed, sedated. In three weeks.",
            ["- manner sedated", "- next_visit_weeks 3 planned", "LF+RF+LH+RH work trim"],
        ),
    ]
)


test_what_only_looks_like_a_repair = reads(
    [
        ("Thrush in the near fore. No other foot.", ["- finding thrush"]),
        ("Bruise in the near fore, on top of that a corn in the off fore.", ["LF finding bruise", "RF finding corn"]),
        ("Flare in the left front. Don't forget left front, right front.", ["LF finding flare"]),
        ("Put leather pads on the fronts, alright? No, nothing else.", ["LF+RF pad leather"]),
        ("Reset. They had Buck", ["LF+RF+LH+RH work reset"]),
    ]
)


def test_a_name_of_two_words_is_turned_to_like_another(read: Read) -> None:
    for name in ("Molly", "Red Molly"):
        talk = f"Dumpling today. Reset. On to {name}. Due again in six weeks."
        dumpling, molly = read(talk, "Dumpling", name)
        assert told(dumpling) == ["LF+RF+LH+RH work reset"]
        assert told(molly) == ["- next_visit_weeks 6 planned"]


test_he_never_stirred = reads(
    [
        ("Testers across the toe, near fore. He never stirred.", ["LF tester none @toe"]),
        ("Testers on the near fore, didn't move a muscle.", ["LF tester none"]),
        ("Tested the off fore. Not a peep out of him.", ["RF tester none"]),
        ("Put the testers on both fores and she never stirred.", ["LF+RF tester none"]),
        ("Testers round the near hind? Never moved an inch.", ["LH tester none"]),
        # no answer, but how he stood
        ("Shod all round. He never stirred.", ["- manner quiet"]),
        ("Testers mild on the near fore. He never stirred.", ["- manner quiet", "LF tester mild"]),
        ("Testers on the near fore. Stood like a rock.", ["- manner quiet"]),
        ("Testers mild, near fore. Reset, he didn't stir.", ["- manner quiet", "LF tester mild", "LF work reset"]),
        ("Testers on the near fore. He never stirred for the shoeing.", ["- manner quiet"]),
    ],
    "Tally. {}",
)

test_pressed_hard_is_no_answer = reads(
    [
        ("Testers hard on the near fore frog, he wasn't bothered.", ["LF tester none @frog"]),
        ("Hoof testers hard across the heels of the off fore, she never minded.", ["RF tester none @heel"]),
        ("Testers hard on both hinds. He didn't turn a hair.", ["LH+RH tester none"]),
        ("Went hard with the testers on both fronts, nothing.", ["LF+RF tester none"]),
        ("Near fore, leaned on it with the testers and he couldn't have cared less.", ["LF tester none"]),
        ("Strong squeeze with the testers at the near fore heel, no response.", ["LF tester none @heel"]),
        ("Testers really hard on the near fore toe and he flinched.", ["LF tester positive @toe"]),
        ("Near fore, a hard squeeze with the testers and he flinched.", ["LF tester positive"]),
        # how he answered
        ("Testers hard at the off fore toe, sore.", ["RF tester strong @toe"]),
        ("Testers hard at the off fore toe, nothing at the heel.", ["RF tester none @heel", "RF tester strong @toe"]),
        ("Testers hard at the off fore toe, near fore not bothered.", ["LF tester none", "RF tester strong @toe"]),
        ("Testers, hard reaction at the toe on the near fore.", ["LF tester strong @toe"]),
        ("Near fore, testers hard on the frog.", ["LF tester strong @frog"]),
    ],
    "Tally. {}",
)

test_to_mind_being_picked_up_is_no_answer = reads(
    [
        ("Testers on the near fore, nothing. Didn't like having it picked up.", ["LF tester none"]),
        ("Testers clear all round. Didn't like the off hind picked up.", ["LF+RF+LH+RH tester none"]),
        ("Testers all round, no reaction. He objected to having the hinds held.", ["LF+RF+LH+RH tester none"]),
        ("Near fore, testers. She didn't like me holding it up.", []),
        ("Near fore, testers. Didn't like it.", ["LF tester positive"]),
        ("Near fore, testers. Didn't like having the toe squeezed.", ["LF tester positive @toe"]),
        ("Testers, mild near fore when held up.", ["LF tester mild"]),
    ],
    "Tally. {}",
)

test_fussed_and_squirmed = reads(
    [
        ("Trimmed behind. He squirmed and wiggled through the whole thing.", ["- manner fidgety", "LH+RH work trim"]),
        ("Trimmed behind. She fussed at me the whole time.", ["- manner fidgety", "LH+RH work trim"]),
        ("Trimmed behind. He wiggled all the way through.", ["- manner fidgety", "LH+RH work trim"]),
        ("Trimmed behind. The owner fussed at me the whole time.", ["LH+RH work trim"]),
        ("Trimmed behind. She fussed over him.", ["LH+RH work trim"]),
        ("Trimmed behind. He didn't fuss.", ["LH+RH work trim"]),
        ("Trimmed behind. The shoe wiggled.", ["LH+RH work trim"]),
    ]
)
