"""A pair said the wrong way round and said again, and one's own question answered in a word.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_other_way_round_and_said_again = reads(
    [
        (
            "Left front was loose and the right front was sprung. Hang on. Other "
            "way around, right front loose, left front sprung, yeah.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Left front was loose, right front sprung. Wait, that's backwards, "
            "right was loose and the left was sprung.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Left front was loose, right front sprung, wait, that's backwards, "
            "right was loose and the left was sprung.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Near hind's lost, off hind's loose. No, wait. Other way round, off hind lost, near hind loose.",
            ["LH shoe_state loose", "RH shoe_state lost"],
        ),
        (
            "Near fore loose and the off fore sprung. Er, other way about, the off loose and the near sprung.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Corn in the left front, bruise in the right front. Hold on, I've got "
            "that the wrong way round. Bruise left, corn right.",
            ["LF finding bruise", "RF finding corn"],
        ),
        (
            "Left front was loose and the right front was sprung. Hang on. No. Other way around.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Six nails in the left front and seven in the right front. Hang on. "
            "The other way round, seven left, six right.",
            ["LF nails 7", "RF nails 6"],
        ),
        (
            "Bar shoe on the left front, plain on the right front. Hang on a "
            "minute, other way round, plain left front, bar shoe right front, that's it.",
            ["LF shoe_type plain", "RF shoe_type bar"],
        ),
        (
            "Left front was loose and the right front was sprung, no, wait, I've "
            "that arseways, right front loose and left front sprung.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Left front loose, right front sprung. Got that switched. Right front loose, left front sprung.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
    ],
    "Tansy. {}",
)

test_right_at_first_after_all = reads(
    [
        (
            "New shoes all round. Ones in front and noughts behind. Nah sorry, "
            "other way about. No it isn't, ones in front, noughts behind, yeah.",
            ["LF+RF shoe_size 1", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 0"],
        ),
        (
            "Left front loose, right front sprung. Other way round. No, I had it "
            "right, left front loose, right front sprung.",
            ["LF shoe_state loose", "RF shoe_state sprung"],
        ),
    ],
    "Tansy. {}",
)

test_asked_and_it_was = reads(
    [
        (
            "He'd cast the off hind and, wait now, was it the off, it was, and the near hind was hanging loose.",
            ["LH shoe_state loose", "RH shoe_state lost"],
        ),
        (
            "He'd cast the off hind, was it the off, yes it was, and the near hind was loose.",
            ["LH shoe_state loose", "RH shoe_state lost"],
        ),
        ("Corn in the near fore, is it the near, it is, medial heel.", ["LF finding corn @medial_heel"]),
        ("Abscess in the off hind, was it the off, no, it was the near.", ["LH finding abscess"]),
        ("She threw the left front, was it the left, yeah, left front.", ["LF shoe_state lost"]),
        (
            "He'd lost the off hind, or was it the near, no, the off, and the other was loose.",
            ["LH shoe_state loose", "RH shoe_state lost"],
        ),
    ],
    "Tansy. {}",
)
