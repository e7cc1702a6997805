"""A foot that is gone lost its shoe, a finding that is gone healed; heads alone; "call it" behind a foot.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads

test_what_is_gone = reads(
    [
        ("The off hind could be throwing a flare at the toe.", ["RH finding flare suspected @toe"]),
        ("Near fore has thrown a quarter crack.", ["LF finding crack @quarter"]),
        ("He's throwing a flare, left front.", ["LF finding flare"]),
        ("Threw the near fore, and there's a flare on the off.", ["LF shoe_state lost", "RF finding flare"]),
        ("He'd thrown the off hind.", ["RH shoe_state lost"]),
        ("RH gone, new shoe on that one.", ["RH shoe_state lost", "RH work new_shoe"]),
        ("Left front gone, right front loose.", ["LF shoe_state lost", "RF shoe_state loose"]),
        ("The off hind's gone, near hind's sprung.", ["LH shoe_state sprung", "RH shoe_state lost"]),
        ("Came in with both hinds gone.", ["LH+RH shoe_state lost"]),
        ("Near fore gone, put it back on with six.", ["LF nails 6", "LF shoe_state lost", "LF work put_back"]),
        ("Left front. Gone. New shoe on it.", ["LF shoe_state lost", "LF work new_shoe"]),
        ("Thrush in the left hind last time, RH gone.", ["LH finding thrush history", "RH shoe_state lost"]),
        (
            "Thrush in both hinds last time, right hind gone, left hind still there.",
            ["LH finding thrush", "RH finding thrush resolved"],
        ),
        ("Thrush. Left hind gone, right hind mild.", ["LH finding thrush resolved", "RH finding thrush ~mild"]),
        ("Thrush in the left hind is gone.", ["LH finding thrush resolved"]),
        ("Corn in the left front, gone now.", ["LF finding corn resolved"]),
        ("Left hind, gone lame.", ["LH gait lame"]),
        ("Gone very lame on the off fore.", ["RF gait lame"]),
    ],
    "Tansy. {}",
)

test_a_loss_told_again_with_its_foot_is_one = reads(
    [
        ("A lost shoe call. Right front's gone.", ["RF shoe_state lost"]),
        ("A lost shoe call, right front's gone.", ["RF shoe_state lost"]),
        ("Threw a shoe. The left hind's gone, new shoe on it.", ["LH shoe_state lost", "LH work new_shoe"]),
        ("Lost two. The near fore's gone.", ["-+LF shoe_state lost"]),
    ],
    "Tansy. {}",
)

test_a_part_alone_is_the_head_of_lengths = reads(
    [
        ("Toes. Left front three and a half, right front the same.", ["LF+RF toe_length 88.9"]),
        ("Toes. Fronts ninety, hinds eighty eight.", ["LF+RF toe_length 90", "LH+RH toe_length 88"]),
        ("Toes: LF 91, RF 92, LH 91, RH 92.", ["LF+LH toe_length 91", "RF+RH toe_length 92"]),
        ("Toes, left hind 90, right hind 88.", ["LH toe_length 90", "RH toe_length 88"]),
        ("Soles. Left front nine, right front eight.", ["LF sole_depth 9", "RF sole_depth 8"]),
        ("Heels. Near fore thirty eight millimetres, off fore forty.", ["LF heel_height 38", "RF heel_height 40"]),
        ("Toes first. Fronts are both three and a half inches.", ["LF+RF toe_length 88.9"]),
        ("Heels. Left front forty.", []),
        ("Toes. Left front fifty two.", []),
        ("Toes. Left front flared.", ["LF finding flare"]),
        ("Rolled the toes. Left front, six nails.", ["LF nails 6"]),
    ],
    "Tansy. {}",
)

test_called_behind_another_foot_takes_nothing_back = reads(
    [
        ("Six nails in the left front, the right call it seven.", ["LF nails 6", "RF nails 7"]),
        ("Six nails on the near fore, off fore make it seven.", ["LF nails 6", "RF nails 7"]),
        ("Toe length left hind ninety, right hind call it eighty eight.", ["LH toe_length 90", "RH toe_length 88"]),
        ("Toe length, left front 90, off side call it 88.", ["LF toe_length 90", "RF toe_length 88"]),
        ("Two out of five lame on the left front, right front call it one.", ["LF lameness 2", "RF lameness 1"]),
        ("Size two in front, behind call it a one.", ["LF+RF shoe_size 2", "LH+RH shoe_size 1"]),
        ("Six nails in the left front, call it seven.", ["LF nails 7"]),
        ("Six weeks, call it seven.", ["- next_visit_weeks 7 planned"]),
    ],
    "Tansy. {}",
)

test_dug_out_of_the_ground = reads(
    [
        (
            "Lost the left front, owner dug it out of the snow. Put it back on.",
            ["LF shoe_state lost", "LF work put_back"],
        ),
        (
            "Threw the off hind, the lad dug it out of the ditch, so I nailed it back on.",
            ["RH shoe_state lost", "RH work put_back"],
        ),
        # out of the foot
        ("Abscess in the off fore, I dug it out of the sole.", ["RF finding abscess", "RF treatment drained"]),
    ],
    "Tally. {}",
)

test_shoes_that_are_gone = reads(
    [
        ("She came in from the field with both hind shoes gone, Lord knows where.", ["LH+RH shoe_state lost"]),
        (
            "Both front shoes are gone, so new rims.",
            ["LF+RF shoe_state lost", "LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        ("Near fore plate gone when I got there.", ["LF shoe_state lost"]),
        ("I had the hind shoes gone over with a rasp.", []),
        ("Front shoes gone thin at the toe.", []),
    ],
    "Tansy. {}",
)


@pytest.mark.parametrize("said", ["Without", "Minus.", "without the", "He was minus both"])
def test_nothing_behind_what_is_lacking(read: Read, said: str) -> None:
    (visit,) = read(said, "Tally")
    assert not [fact for fact in visit.facts if fact.foot]


test_worn_and_had_worn = reads(
    [
        (
            "He'd worn bar shoes on the fronts for years. Trimmed all four.",
            ["LF+RF shoe_type bar history", "LF+RF+LH+RH work trim"],
        ),
        ("He'd worn the near fore thin. New shoe on it.", ["LF shoe_state worn", "LF work new_shoe"]),
        ("Had worn through the off hind.", ["RH shoe_state worn"]),
    ],
    "Tally. {}",
)


test_after_losing_one = reads(
    [
        ("He's after losing the off hind.", ["RH shoe_state lost"]),
        ("She's after losing both fronts in the bog.", ["LF+RF shoe_state lost"]),
        ("He's after losing weight. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
    ]
)
