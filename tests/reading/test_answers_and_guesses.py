"""A guess between two answers of the testers parts them not; two places are no two feet; why a word was wrong."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. Left front, testers mild at the toe, could be a bruise in it, and nothing in the right.",
        ["LF finding bruise suspected", "LF tester mild @toe", "RF tester none"],
    ),
    (
        "Tally. Testers mild across the toe of the off fore, could be a bruise in it, and nothing in the near fore.",
        ["LF tester none", "RF finding bruise suspected", "RF tester mild @toe"],
    ),
    (
        "Tally. Testers strong at the heel of the left front, I suspect a corn, none on the right front.",
        ["LF finding corn suspected", "LF tester strong @heel", "RF tester none"],
    ),
    (
        "Tally. Testers moderate on the near hind, maybe a bruise, nothing on the off hind.",
        ["LH finding bruise suspected", "LH tester moderate", "RH tester none"],
    ),
    (
        "Tally. Testers strong, left front, I think it's an abscess, none on the right.",
        ["LF finding abscess suspected", "LF tester strong", "RF tester none"],
    ),
    (
        "Tally. Testers positive on the right front, looks like a corn, no reaction on the left front.",
        ["LF tester none", "RF finding corn suspected", "RF tester positive"],
    ),
    (
        "Tally. Left hind has thrush in both the frog and the sulcus. Copper sulfate packed in.",
        ["LH finding thrush @frog", "LH finding thrush @sulcus", "LH treatment copper_sulfate"],
    ),
    (
        "Tally. Near fore, flare at both the toe and the quarter. Six nails.",
        ["LF finding flare @quarter", "LF finding flare @toe", "LF nails 6"],
    ),
    (
        "Tally. Thrush in both the frog and the commissure of the off hind. Iodine on it.",
        ["RH finding thrush @commissure", "RH finding thrush @frog", "RH treatment iodine"],
    ),
    ("Buck. Near fore. Bruises in both hinds.", ["LH+RH finding bruise"]),
    (
        "Buck. White line disease, right front, at the toe, mild, no, not once I had it open, that's severe.",
        ["RF finding white_line_disease @toe ~severe"],
    ),
    ("Buck. Crack in the left front, mild, no, not when you look close, moderate.", ["LF finding crack ~moderate"]),
    ("Buck. Thrush in the left hind, moderate, no, not after I pared it, severe.", ["LH finding thrush ~severe"]),
    ("Buck. Flare on the right hind, mild, no, not really, that's moderate.", ["RH finding flare ~moderate"]),
]

test_answers_and_guesses = reads(CASES)

test_a_degree_put_right_behind_a_finding_is_no_answer = reads(
    [
        (
            "Testers, strong at the medial heel, I found a corn, medial heel, a nasty one, call it severe.",
            ["RF finding corn @medial_heel ~severe", "RF tester strong @medial_heel"],
        ),
        (
            "Testers moderate at the toe, a bruise there as well, call it mild.",
            ["RF finding bruise ~mild", "RF tester moderate @toe"],
        ),
        ("Testers mild, found a bad corn, no, moderate.", ["RF finding corn ~moderate", "RF tester mild"]),
        ("Testers mild, thrush in the frog, call it severe.", ["RF finding thrush @frog ~severe", "RF tester mild"]),
        ("Bruise at the toe, testers moderate, call it strong.", ["RF finding bruise @toe", "RF tester strong"]),
        ("Bruise at the toe, testers mild, no, call it severe.", ["RF finding bruise @toe", "RF tester strong"]),
    ],
    "Buck, off fore. {}",
)

test_oakum_and_pine_tar_is_one_packing = reads(
    [
        ("Left front, putty, no, pine tar. Oakum and pine tar, that's what went in.", ["LF packing oakum"]),
        ("Pine tar under the pad, near fore. Oakum and pine tar, I should say.", ["LF packing oakum"]),
        ("Pine tar on the fronts. Oakum on the hinds.", ["LF+RF packing pine_tar", "LH+RH packing oakum"]),
    ],
    "Buck. {}",
)

test_what_is_wondered_about_and_asked = reads(
    [
        ("I wonder if that's navicular, near fore, I can't say more.", ["LF finding navicular suspected"]),
        ("I wonder whether there isn't a puncture in the off hind.", ["RH finding puncture suspected"]),
        ("I do wonder if he's got a corn in the near fore.", ["LF finding corn suspected"]),
        ("A corn in the near fore. I wonder if a full pad would help.", ["LF finding corn"]),
        ("A corn in the near fore, I wonder.", ["LF finding corn suspected"]),
        (
            "They asked was he foundered, and I'd say not, there's no laminitis in any of the four.",
            ["LF+RF+LH+RH finding laminitis absent"],
        ),
        ("The owner wondered had he a corn in the near fore, I couldn't find one.", ["LF finding corn absent"]),
        ("She asked is that thrush in the near hind, and it is.", ["LH finding thrush"]),
        ("They asked for bar shoes in front and they got them.", ["LF+RF shoe_type bar"]),
        ("Cracks, well, there's a toe crack in the near hind.", ["LH finding crack @toe"]),
        ("Near fore. Bruise, and a sole bruise in the off fore.", ["LF finding bruise", "RF finding bruise @sole"]),
    ],
    "Buck. {}",
)

test_or_it_is_only_something_else = reads(
    [
        (
            "Left hind, thrush in the sulcus. Or maybe it's only mud, I couldn't tell, so put a question mark on that.",
            ["LH finding thrush suspected @sulcus"],
        ),
        ("Bruise in the right front. Might only be a stain, I couldn't swear to it.", ["RF finding bruise suspected"]),
        ("Corn in the near fore. Could be just a stone mark, hard to say.", ["LF finding corn suspected"]),
    ]
)

test_another_guess_doubts_nothing = reads(
    [
        ("Corn in the left front. Maybe she'll be sore, I couldn't say.", ["LF finding corn"]),
        (
            "Thrush in the left hind. Maybe eight weeks, hard to say.",
            ["- next_visit_weeks 8 planned", "LH finding thrush"],
        ),
    ]
)

test_only_a_theory = reads(
    [
        ("Sheared heels in the right front, that's my theory.", ["RF finding sheared_heels suspected"]),
        ("Sidebone in the near fore, only a theory.", ["LF finding sidebone suspected"]),
        ("I'd be half afraid there's thrush in the off hind.", ["RH finding thrush suspected"]),
        ("A crack in the off hind, I amn't sure of it.", ["RH finding crack suspected"]),
        ("I think, I only think, there's navicular in the left front.", ["LF finding navicular suspected"]),
        (
            "She's a short stride, and I think, I only think, there's navicular in the left front.",
            ["- gait short_stride", "LF finding navicular suspected"],
        ),
        # regretted, and no doubt of what is told apart from it
        ("I'm afraid there's thrush in the off hind.", ["RH finding thrush"]),
        ("A corn in the near fore, I think. There's heat in it.", ["LF finding corn suspected", "LF finding heat"]),
    ],
    "Buck. {}",
)

test_one_answer_a_foot_behind_the_testers = reads(
    [
        (
            "I had the testers on both fronts. Right front, moderate, at the heel, left front, mild, at the toe.",
            ["LF tester mild @toe", "RF tester moderate @heel"],
        ),
        (
            "I went over the fores with the testers. Near fore, strong, at the toe, off fore, mild, at the heel.",
            ["LF tester strong @toe", "RF tester mild @heel"],
        ),
        # answered already
        ("Testers on the fronts nothing. Left hind, mild, right hind, moderate.", ["LF+RF tester none"]),
    ],
    "Buck. {}",
)

test_not_bothered_a_bit = reads(
    [
        ("Sidebone in both fores and it doesn't bother her a bit.", ["LF+RF finding sidebone"]),
        ("Mild corn in the off fore and it isn't troubling him a bit.", ["RF finding corn ~mild"]),
        ("Testers don't bother him a bit on the off fore.", ["RF tester none"]),
        ("A bit of a corn in the off fore.", ["RF finding corn ~mild"]),
    ],
    "Buck. {}",
)
