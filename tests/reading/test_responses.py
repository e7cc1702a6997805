"""What the hoof testers, the digital pulse and the nail line answered."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "none": ("Nothing to the testers on the left front.", ["LF tester none"]),
    "no reaction": ("No reaction to the hoof testers in either front.", ["LF+RF tester none"]),
    "didn't react": ("He didn't react to the testers on the off fore.", ["RF tester none"]),
    "any notice": (
        "Not one of the four feet took any notice of the testers.",
        ["LF+RF+LH+RH tester none"],
    ),
    "no notice": ("He took no notice of the testers in front.", ["LF+RF tester none"]),
    "positive": ("Left front reacted to the testers.", ["LF tester positive"]),
    "strong": ("Strong reaction to the testers at the toe of the right front.", ["RF tester strong @toe"]),
    "mild": ("Mildly sore to the testers on the near fore, outside heel.", ["LF tester mild @lateral_heel"]),
    "moderate": ("Moderate response to hoof testers over the frog, right front.", ["RF tester moderate @frog"]),
    "positive no severity": ("Testers positive at the toe, left front.", ["LF tester positive @toe"]),
    "across": (
        "Testers, positive across the frog on the right front, nothing on the left front.",
        ["LF tester none", "RF tester positive @frog"],
    ),
    "across the toe": ("Testers, moderate across the toe, near fore.", ["LF tester moderate @toe"]),
    "a width behind": (
        "Testers, mild at the toe of the near fore, across the widest 122 millimetres.",
        ["LF hoof_width 122", "LF tester mild @toe"],
    ),
    "pulse bounding": ("Bounding pulse in the left front.", ["LF pulse bounding"]),
    "pulse UK": ("Digital pulse raised in the near fore.", ["LF pulse raised"]),
    "pulse normal": ("Pulses normal all round.", ["LF+RF+LH+RH pulse normal"]),
    "pulse not up": ("Pulse isn't up in the off fore.", ["RF pulse normal"]),
    "pulse strong": ("Digital pulse is strong in both fronts.", ["LF+RF pulse raised"]),
    "nail line low": ("Nail line's a bit low on the right hind.", ["RH nail_line low"]),
    "nail line of the other foot behind a stop": (
        "The nail line is low on the near fore. And on the off fore it's good.",
        ["LF nail_line low", "RF nail_line good"],
    ),
    "nail line of other feet is not told so": (
        "Nail line's low on the near fore. Both hinds good.",
        ["LF nail_line low"],
    ),
    "nail line good": ("Nail line is good on all four.", ["LF+RF+LH+RH nail_line good"]),
    "testers each foot": (
        "Testers: left front positive, right front nothing.",
        ["LF tester positive", "RF tester none"],
    ),
    "flinched": ("He flinched to the testers on the left hind at the toe.", ["LH tester positive @toe"]),
    "pulse and heat": ("Left front has heat and a bounding pulse.", ["LF finding heat", "LF pulse bounding"]),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


@pytest.mark.parametrize("said", ["the pulse bombing in both fores", "a pulse rumbling in both fores"])
def test_a_pulse_that_goes_somehow_is_asked_about(said: str, read: Read) -> None:
    (visit,) = read(f"Heat in both fores and {said}.")
    pulses = [f for f in visit.facts if f.slot == "pulse"]
    assert [(f.value, "pulse: how it goes was not understood" in f.rules) for f in pulses] == [("raised", True)] * 2


@pytest.mark.parametrize(
    "said", ["a pulse in the near fore", "the pulse pounding in the near fore", "some pulse there"]
)
def test_a_pulse_in_known_words_is_not(said: str, read: Read) -> None:
    (visit,) = read(f"Heat in the near fore and {said}.")
    assert not any("pulse: how it goes was not understood" in f.rules for f in visit.facts)
    assert "pulse" in {f.slot for f in visit.facts}


test_the_pulse_of_the_other_foot = reads(
    [
        ("Pulse raised in the off fore, the near fore is perfectly normal.", ["LF pulse normal", "RF pulse raised"]),
        ("Bounding pulse in the left fore. Right fore normal.", ["LF pulse bounding", "RF pulse normal"]),
        ("Pulse normal in the near fore. The off fore is bounding.", ["LF pulse normal", "RF pulse bounding"]),
        ("Pulse raised in the off fore. The near fore is fine.", ["RF pulse raised"]),
        ("Pulse raised in the off fore. The near fore is normal in shape.", ["RF pulse raised"]),
    ],
    "Tally. {}",
)

test_not_so_much_as = reads(
    [
        ("Not so much as a flinch to the testers on the off fore.", ["RF tester none"]),
        ("Testers on the near fore, she didn't so much as blink.", ["LF tester none"]),
        ("Not so much as a hint of thrush in the near hind.", ["LH finding thrush absent"]),
        ("There wasn't so much as a crack in either fore.", ["LF+RF finding crack absent"]),
    ],
    "Tally. {}",
)


@pytest.mark.parametrize(
    ("said", "facts"),
    [
        ("Not one of the four feet took any notice of the testers.", ["LF+RF+LH+RH tester none"]),
        ("She took no notice of the testers on either fore.", ["LF+RF tester none"]),
        ("Neither fore shows a thing to the testers.", ["LF+RF tester none"]),
        ("Testers on both fronts, neither showed anything.", ["LF+RF tester none"]),
        ("She answered the testers at the toe, near fore.", ["LF tester positive @toe"]),
        ("Near fore mild at the heel to the testers. I took no notice.", ["LF tester mild @heel"]),
    ],
)
def test_notice_taken_of_the_testers(said: str, facts: list[str], read: Read) -> None:
    (visit,) = read(said)
    assert told(visit) == facts


test_answered_in_the_next_sentence = reads(
    [
        (
            "I went round the off fore twice with the testers. Nothing at the heel, nothing at the frog, and then "
            "strong at the toe.",
            ["RF tester none @frog", "RF tester none @heel", "RF tester strong @toe"],
        ),
        ("Had the testers on both fronts. Left front mild, right front nothing.", ["LF tester mild", "RF tester none"]),
        ("I put the testers on the near fore. Mild at the toe.", ["LF tester mild @toe"]),
        ("Put the testers across the near fore. Mild thrush in the frog.", ["LF finding thrush @frog ~mild"]),
        ("No need of the testers. Left front mild.", []),
    ],
    "Tally. {}",
)


test_a_place_between_the_foot_and_its_answer = reads(
    [
        (
            "Tally. Testers. Near fore, nothing. Both hinds, nothing. Off fore, lateral heel, strong.",
            ["LF+LH+RH tester none", "RF tester strong @lateral_heel"],
        ),
        (
            "Tally. Testers. Left front, negative. Right front, toe, positive, and I found a bruise there.",
            ["LF tester none", "RF finding bruise", "RF tester positive @toe"],
        ),
        (
            "Tally. Testers. Near fore, nothing. Off fore, lateral heel, strong, he about sat in my lap.",
            ["LF tester none", "RF tester strong @lateral_heel"],
        ),
        (
            "Tally. Testers negative on the left front. Right front, bad thrush, and he's lame.",
            ["- gait lame", "LF tester none", "RF finding thrush ~severe"],
        ),
    ]
)

test_nothing_from_a_foot_and_nothing_given = reads(
    [
        (
            "Testers strong in the off fore heel. Not a thing from the near fore.",
            ["LF tester none", "RF tester strong @heel"],
        ),
        (
            "Testers moderate at the toe, right hind. Not a peep from the left hind.",
            ["LH tester none", "RH tester moderate @toe"],
        ),
        ("Neither of the fronts gave me anything on the testers.", ["LF+RF tester none"]),
        ("Neither of Tansy's hinds gave me anything on the testers.", ["LH+RH tester none"]),
        ("The off fore didn't give me a thing on the testers.", ["RF tester none"]),
        (
            "Neither hind gave me a thing on the testers, thrush in the left hind.",
            ["LH finding thrush", "LH+RH tester none"],
        ),
        (
            "Left front mild. Right front I went all over. Raised pulse in the left, normal in the right.",
            ["LF pulse raised", "RF pulse normal"],
        ),
        # a foot that is only measured from, and what was given
        ("The near fore gave me a strong at the toe on the testers.", ["LF tester strong @toe"]),
        ("Thrush all over.", ["LF+RF+LH+RH finding thrush"]),
    ],
    "Tansy. {}",
)

test_pulse_still_so_on_the_other_feet = reads(
    [
        ("Pulse is normal in both hinds, still raised in both fronts.", ["LF+RF pulse raised", "LH+RH pulse normal"]),
        ("Pulse is bounding in the near fore. Now normal in the off fore.", ["LF pulse bounding", "RF pulse normal"]),
        ("Pulse is normal in the hinds. He's still bounding about.", ["LH+RH pulse normal"]),
    ],
    "Tally. {}",
)

test_the_last_answer_before_work = reads(
    [
        (
            "Testers moderate at the toe, off fore, and mild at the toe, near fore. Reset behind.",
            ["LF tester mild @toe", "LH+RH work reset", "RF tester moderate @toe"],
        ),
        (
            "Testers strong at the heel, left front, mild at the heel, right front. New shoes all round.",
            ["LF tester strong @heel", "LF+RF+LH+RH work new_shoe", "RF tester mild @heel"],
        ),
        ("Near fore, six nails at the toe, off fore, reset.", ["LF nails 6", "RF work reset"]),
    ],
    "Tally. {}",
)

test_pulse_up_there = reads(
    [
        ("Tally. Testers moderate on the right front. Pulse is up there.", ["RF pulse raised", "RF tester moderate"]),
        (
            "Tally. Heat in the near fore. Pulse up there, no swelling.",
            ["LF finding heat", "LF finding swelling absent", "LF pulse raised"],
        ),
        ("Tally. Heat in the near fore. Iodine up there.", ["LF finding heat", "LF treatment iodine"]),
    ]
)

test_nothing_anywhere = reads(
    [
        (
            "Flat soles on both fronts. Testers nothing anywhere.",
            ["LF+RF finding flat_sole", "LF+RF+LH+RH tester none"],
        ),
        ("Near fore, testers nothing anywhere.", ["LF tester none"]),
        ("Left front, testers showed nothing anywhere.", ["LF tester none"]),
        ("Testers on the near fore, nothing anywhere in the foot.", ["LF tester none"]),
        ("Testers all round, nothing anywhere.", ["LF+RF+LH+RH tester none"]),
        (
            "Lame near hind. The rest of her is just trimmed, the three other feet.",
            ["LF+RF+RH work trim", "LH gait lame"],
        ),
    ],
    "Tansy. {}",
)

test_each_answer_at_its_own_place = reads(
    [
        (f"Near fore. {said}", ["LF tester none @sole", "LF tester strong @heel"])
        for said in (
            "Pushed hard on the sole with the testers, no answer, but the heel strong.",
            "Testers on the sole, nothing, but strong at the heel.",
            "Testers on the sole, nothing, the heel strong.",
            "Squeezed the sole with the testers, not a flinch, the heel strong though.",
        )
    ]
    + [
        ("Testers at the heel near fore, strong on the outside, mild on the inside.",
         ["LF tester mild @medial_heel", "LF tester strong @lateral_heel"]),
        ("Testers at the toe, strong on the right fore, mild on the left fore.",
         ["LF tester mild @toe", "RF tester strong @toe"]),
        ("Near fore. Testers on the sole, nothing. Heels underrun.",
         ["LF finding underrun_heels", "LF tester none @sole"]),
        ("Near fore. Testers mild at the toe and the heel.", ["LF tester mild @heel", "LF tester mild @toe"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_fierce = reads(
    [
        ("Near fore heat was savage.", ["LF finding heat ~severe"]),
        ("Vicious abscess at the toe of the near fore.", ["LF finding abscess @toe ~severe"]),
        ("Near fore, savage pulse.", ["LF pulse bounding"]),
        ("The pulse was wicked in the off hind.", ["RH pulse bounding"]),
        ("Near fore, vicious on the testers at the toe.", ["LF tester strong @toe"]),
        ("Testers near fore, savage.", ["LF tester strong"]),
        ("Near fore, savage reaction on the testers.", ["LF tester strong"]),
        ("Vicious pulse and savage heat in the off fore.", ["RF finding heat ~severe", "RF pulse bounding"]),
        ("Near fore, thrush, savage.", ["LF finding thrush ~severe"]),
        # asked: the horse, or the corn; the horse, or his answer
        ("Corn in the near fore, savage.", ["LF finding corn"]),
        ("He was vicious with the testers on the near fore.", []),
        # how the horse was
        ("Corn in the near fore, she was savage.", ["- manner dangerous", "LF finding corn"]),
        ("Corn in the near fore, and savage.", ["- manner dangerous", "LF finding corn"]),
        ("Vicious behind, heat in the near fore.", ["- manner dangerous", "LF finding heat"]),
        ("Savage about the near fore, heat there.", ["- manner dangerous", "LF finding heat"]),
        ("Wicked heat with a pulse in the near fore.", ["LF finding heat ~severe", "LF pulse raised"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_a_degree_behind_a_stop = reads(
    [
        ("He snatched the off hind away when the testers touched the heel. Big reaction.", ["RH tester strong @heel"]),
        ("Near hind, he flinched on the testers at the toe. Mild. Reset.", ["LH tester mild @toe", "LH work reset"]),
        ("She reacted to the testers on the left front, at the bar. A strong one.", ["LF tester strong @bar"]),
        ("Left front sore to the testers at the bar. Fairly strong, too.", ["LF tester moderate @bar"]),
        (
            "Both fronts positive on the testers. Moderate. Pulse raised.",
            ["LF+RF pulse raised", "LF+RF tester moderate"],
        ),
        ("Near fore positive to the testers. Strong at the heel.", ["LF tester strong @heel"]),
        ("Near fore positive to the testers at the toe. Strong at the toe.", ["LF tester strong @toe"]),
        (
            "Near fore positive to the testers at the toe. Strong at the heel.",
            ["LF tester positive @toe", "LF tester strong @heel"],
        ),
        (
            "Near fore positive to the testers, corn at the heel. Severe.",
            ["LF finding corn @heel ~severe", "LF tester positive"],
        ),
        ("Near fore positive to the testers. Nothing at the toe.", ["LF tester none @toe", "LF tester positive"]),
        ("Near fore positive to the testers. Strong pulse.", ["LF pulse raised", "LF tester positive"]),
        ("Testers positive on the near fore. Hard feet. Trimmed.", ["LF tester positive", "LF work trim"]),
        ("Testers strong on the near fore. Mild.", ["LF tester strong"]),
    ],
    "Tansy. {}",
)

test_answers_of_many_words = reads(
    [
        ("She gave me something on the testers at the off hind heel. Moderate.", ["RH tester moderate @heel"]),
        (
            "He gave it to me on the heel with the testers, off fore. Nothing at the toe.",
            ["RF tester none @toe", "RF tester positive @heel"],
        ),
        ("Gave me something for the road. Testers nothing all round.", ["LF+RF+LH+RH tester none"]),
        ("He nearly sat on me when the testers touched the toe of the near fore.", ["LF tester strong @toe"]),
        ("Off hind, as big a reaction to the testers as you could get.", ["RH tester strong"]),
        ("Off hind, not as big a reaction to the testers as last time.", ["RH tester positive"]),
        ("Off hind. I couldn't get so much as a flinch out of her with the testers.", ["RH tester none"]),
        ("Off hind. I couldn't make her flinch with the testers.", ["RH tester none"]),
        ("Off hind. He pulled a face with the testers on. No reaction, mind.", ["RH tester none"]),
        (
            "Testers nothing in the left hind. Right hind's another story, moderate across the heels.",
            ["LH tester none", "RH tester moderate @heel"],
        ),
        (
            "Testers nothing in the left hind. Right hind, moderate across the heels, and a pulse.",
            ["LH tester none", "RH pulse raised", "RH tester moderate @heel"],
        ),
        (
            "Testers nothing in the left hind. Right hind's four inches across the heels.",
            ["LH tester none", "RH hoof_width 101.6"],
        ),
    ],
    "Tansy. {}",
)


_MILD = "LF tester mild"
test_nil_is_an_answer = reads(
    [
        ("Testers mild near fore, nil off fore.", [_MILD, "RF tester none"]),
        ("Testers mild near fore, nil at the toe off fore.", [_MILD, "RF tester none @toe"]),
        ("Testers, near fore mild, off fore nil.", [_MILD, "RF tester none"]),
        ("Testers mild near fore, zero right front.", [_MILD, "RF tester none"]),
        ("Testers mild near fore. Nought on the off fore.", [_MILD, "RF tester none"]),
        (
            "Testers on both fronts, zero. New shoes, nought in front, one behind.",
            [
                "LF+RF shoe_size 0",
                "LF+RF tester none",
                "LF+RF+LH+RH work new_shoe",
                "LH+RH shoe_size 1",
            ],
        ),
        ("Testers mild near fore, thrush nil off fore.", [_MILD, "RF finding thrush absent"]),
        (
            "Testers mild near fore, new shoes in front, nought off fore, one near fore.",
            ["LF shoe_size 1", _MILD, "LF+RF work new_shoe", "RF shoe_size 0"],
        ),
        ("Testers mild near fore, shoes are noughts in front.", [_MILD, "LF+RF shoe_size 0"]),
    ]
)
