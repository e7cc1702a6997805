"""Feet that were left, what hangs on another horse's "if", whose weeks the vet's are, and what nobody suspects.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

_SHOD = ["LF+RF shoe_size 2", "LF+RF work new_shoe"]

test_the_feet_that_were_left_are_not_in_hand_for_what_is_put_on = reads(
    [
        ("I got the fronts done and that's all, the hinds never got looked at. New shoes, size two.", _SHOD),
        ("I did the fronts, hinds I left alone. New shoes, size two.", _SHOD),
        ("Fronts done, hinds weren't touched. New shoes, size two.", _SHOD),
        ("I got the fronts done, didn't get near the hinds. New shoes, size two.", _SHOD),
        ("Did the fronts, the hinds were left. New shoes, size two.", _SHOD),
        ("Did the hinds, never touched the fronts. New shoes, size two.", ["LH+RH shoe_size 2", "LH+RH work new_shoe"]),
        ("New shoes in front, size two. Hinds I left alone. Six nails.", ["LF+RF nails 6", *_SHOD]),
        ("Abscess in the left front, right front I left. Poultice.", ["LF finding abscess", "LF treatment poultice"]),
        # the feet named last are in hand all the same
        ("I did the fronts, hinds I left alone. Thrush, mild.", ["LH+RH finding thrush ~mild"]),
        ("Fronts trimmed. The hinds were worn. New shoes.", [
            "LF+RF work trim", "LH+RH shoe_state worn", "LH+RH work new_shoe"]),
        ("The hinds never got done. New shoes in front, size two.", _SHOD),
        ("Right hind I left alone. Left hind reset. Six nails.", ["LH nails 6", "LH work reset"]),
    ],
    "Buck. {}",
)  # fmt: skip

test_off_and_back_on_and_a_corn_dug_out = reads(
    [
        ("Hinds I took off and put back on again, side clips.", ["LH+RH clips side", "LH+RH work reset"]),
        ("Both fronts I took off and put back on.", ["LF+RF work reset"]),
        ("Front shoes I pulled and put back on.", ["LF+RF work reset"]),
        ("Pulled the fronts and left them off.", ["LF+RF work removed"]),
        ("Right hind lost, bent, so it's a new one, size three.", [
            "RH shoe_size 3", "RH shoe_state lost", "RH work new_shoe"]),
        ("Corn in the left front, dug it out.", ["LF finding corn"]),
        ("Corn in the left front, dug it out and it drained.", ["LF finding corn", "LF treatment drained"]),
        ("Abscess in the left front, dug it out.", ["LF finding abscess", "LF treatment drained"]),
        ("Nobody suspects laminitis in the fronts.", ["LF+RF finding laminitis absent"]),
        ("No one suspects an abscess in the left front.", ["LF finding abscess absent"]),
        ("I do not suspect an abscess in the left front.", ["LF finding abscess absent"]),
        ("I suspect an abscess in the left front.", ["LF finding abscess suspected"]),
        ("I'm a bit worried it's laminitis in the fronts.", ["LF+RF finding laminitis suspected"]),
        ("I'm worried it's a mild abscess, left front.", ["LF finding abscess suspected ~mild"]),
        ("Reset the fronts, size one, plain steel, and I used fives, six in each.", [
            "LF+RF nail_size 5", "LF+RF nails 6", "LF+RF shoe_material steel", "LF+RF shoe_size 1",
            "LF+RF shoe_type plain", "LF+RF work reset"]),
        ("Reset the fronts, I used fives, six in each.", ["LF+RF nails 6", "LF+RF shoe_size 5", "LF+RF work reset"]),
    ],
    "Buck. {}",
)  # fmt: skip

_TRIM = "LF+RF+LH+RH work trim"

test_whose_weeks_and_what_then = reads(
    [
        ("The vet is coming back in three weeks.", ["- vet referral planned", _TRIM]),
        ("Vet's back in three weeks.", [_TRIM]),
        ("The vet's due back in ten days and I'm back in four weeks.", ["- next_visit_weeks 4 planned", _TRIM]),
        ("Vet to see him, back in three weeks.", ["- next_visit_weeks 3 planned", "- vet referral planned", _TRIM]),
        ("The vet's been, back in three weeks.", ["- next_visit_weeks 3 planned", _TRIM]),
    ],
    "Buck. Trimmed all round. {}",
)


@pytest.mark.parametrize(
    "then",
    [
        "If Tally's still bad tomorrow, get the vet.",
        "If Tally isn't right by Friday, get the vet.",
        "But if Tally gets worse, ring the vet.",
        "Unless Tally's better by Monday, get the vet.",
        "Should Tally get worse, they're to call the vet.",
    ],
)
def test_what_hangs_on_another_horse_is_for_that_horse(read: Read, then: str) -> None:
    tally, buck = read(f"Tally. Left front abscess, drained. Buck. Trimmed all round. {then}", "Tally", "Buck")
    assert told(tally) == ["- vet referral planned", "LF finding abscess", "LF treatment drained"]
    assert told(buck) == [_TRIM]


def test_another_horse_named_behind_the_if(read: Read) -> None:
    text = "Tally. Trimmed all round. Buck. Reset all round. If Tally's no better, Buck gets new shoes in front."
    tally, buck = read(text, "Tally", "Buck")
    assert told(tally) == [_TRIM]
    assert told(buck) == ["LF+RF work new_shoe planned", "LF+RF+LH+RH work reset"]
