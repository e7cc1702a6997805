"""What others asked about and was not found; a size, a count or new shoes said wrongly and put right later.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads

test_asked_about_and_looked_into = reads(
    [
        ("Somebody asked about sidebone, I felt for it, either front, nothing.", ["LF+RF finding sidebone absent"]),
        ("They asked about ringbone, I felt for it in both fronts, nothing there.", ["LF+RF finding ringbone absent"]),
        ("Owner asked about a puncture in the near fore, I looked, nothing.", ["LF finding puncture absent"]),
        ("Owner wondered about thrush, I checked both hinds, nothing.", ["LH+RH finding thrush absent"]),
        ("She was worried about an abscess in the off fore, had a look, no.", ["RF finding abscess absent"]),
        ("They thought he'd a corn, near fore, I pared it, nothing.", ["LF finding corn absent"]),
        ("The vet mentioned sidebone, I felt both fronts, none.", ["LF+RF finding sidebone absent"]),
        ("The girl was on about a crack in the left front, I looked, nope.", ["LF finding crack absent"]),
        ("Owner asked about thrush in the left hind, I looked, and it's there.", ["LH finding thrush"]),
        ("Owner asked about thrush in the left hind, it's bad.", ["LH finding thrush ~severe"]),
        ("They were worried about the corn in the near fore, I pared it out.", ["LF finding corn suspected"]),
    ],
    "Buck. {}",
)

test_said_wrongly_and_put_right = reads(
    [
        (
            "Reset both fronts, size one. I said size one, that's wrong, it's a two.",
            ["LF+RF shoe_size 2", "LF+RF work reset"],
        ),
        (
            "Reset both fronts, size one, six nails. And I said size one, that's wrong, it's a two.",
            ["LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work reset"],
        ),
        (
            "Reset both fronts, six nails. I told you six nails, that's not right, it's seven.",
            ["LF+RF nails 7", "LF+RF work reset"],
        ),
        (
            "Reset both fronts, size one. Did I say size one, that was a mistake, it's a two.",
            ["LF+RF shoe_size 2", "LF+RF work reset"],
        ),
        ("Reset both fronts, size one. I said one, it's actually a two.", ["LF+RF shoe_size 2", "LF+RF work reset"]),
        (
            "Reset both fronts, size one. I said size one, it's not, it's a two.",
            ["LF+RF shoe_size 2", "LF+RF work reset"],
        ),
        ("Thrush left hind. I said left hind, that's wrong, it's the right hind.", ["RH finding thrush"]),
        ("Reset both fronts, size one. I wrote size one, wrong, it's two.", ["LF+RF shoe_size 2", "LF+RF work reset"]),
        ("Sole depth ten. I said ten, that's wrong, it's twelve.", ["- sole_depth 12"]),
        ("Six weeks. I said six weeks, sorry, it's five.", ["- next_visit_weeks 5 planned"]),
        ("Reset both fronts, size one. I said size one and I meant it.", ["LF+RF shoe_size 1", "LF+RF work reset"]),
        ("New, no, not new, reset, all four.", ["LF+RF+LH+RH work reset"]),
        ("New shoes, no, not new, resets, in front.", ["LF+RF work reset"]),
        ("All four new, sorry, not new, reset.", ["LF+RF+LH+RH work reset"]),
        ("Fronts new, er, no, not new, resets.", ["LF+RF work reset"]),
        ("New all round, well, not new, reset.", ["LF+RF+LH+RH work reset"]),
        ("Fronts trimmed, no, not trimmed, reset.", ["LF+RF work reset"]),
        ("New in front, not new behind, those were reset.", ["LF+RF work new_shoe", "LH+RH work reset"]),
        ("New shoes in front. The hinds are not new, reset.", ["LF+RF work new_shoe", "LH+RH work reset"]),
    ],
    "Buck. {}",
)


@pytest.mark.parametrize(
    ("put_right", "sizes"),
    [
        ("And Tally, I said size one, that's wrong, it's a two.", {"Tally": "2", "Buck": "1"}),
        ("I said size one, that's wrong, it's a two.", {"Tally": "1", "Buck": "2"}),
    ],
)
def test_the_horse_whose_size_is_put_right(put_right: str, sizes: dict[str, str], read: Read) -> None:
    visits = read(f"Tally. Fronts reset, size one. Buck, fronts reset, size one. {put_right}", "Tally", "Buck")
    assert {(v.horse, f.foot, f.value) for v in visits for f in v.facts if f.slot == "shoe_size"} == {
        (horse, foot, size) for horse, size in sizes.items() for foot in ("LF", "RF")
    }


test_only_in_my_head = reads(
    [
        ("Full pads on the fronts, I mean rim pads, I'd had full pads in my head.", ["LF+RF pad rim"]),
        ("Steel shoes in front, aluminum I had on the brain.", ["LF+RF shoe_material steel"]),
        ("Egg bars in front, I'd heart bars in my mind.", ["LF+RF shoe_type egg_bar"]),
        (
            "Rim pads on the fronts. I had it in my head she'd be lame, leather pads behind.",
            ["- gait lame", "LF+RF pad rim", "LH+RH pad leather"],
        ),
    ]
)

test_should_not_say_so = reads(
    [
        (
            "Canker. No, I shouldn't say canker, scratch that, it's thrush, right front, in the frog.",
            ["RF finding thrush @frog"],
        ),
        ("Canker in the right front, no, I wouldn't say canker, it's thrush.", ["RF finding thrush"]),
        ("Rim pads in front, no, I shouldn't say rim pads, full pads.", ["LF+RF pad full"]),
        (
            "Six nails in the right front, no, I wouldn't say thrush, it's clean.",
            ["RF finding thrush absent", "RF nails 6"],
        ),
    ]
)

test_forget_it = reads(
    [
        ("I reckon I saw an abscess track in the near fore, nah, forget it, just a stain.", []),
        ("Six nails in front. Possible flare on the left hind, forget it.", ["LF+RF nails 6"]),
        ("Corn in the near fore. She won't let me forget it.", ["LF finding corn"]),
    ]
)

test_the_right_word_has_its_own_foot = reads(
    [
        ("Canker. No, scratch that, it's thrush, right front, in the frog.", ["RF finding thrush @frog"]),
        ("Flare. No, make that wall loss on the left hind.", ["LH finding wall_loss"]),
        ("Flare on the left hind. No, make that wall loss.", ["LH finding wall_loss"]),
    ]
)

test_a_finding_said_of_the_wrong_foot = reads(
    [
        (
            "Swelling in the right hind. I said the swelling was the right hind, and I meant the left hind.",
            ["LH finding swelling"],
        ),
        ("Crack in the near fore. I said the crack was in the near fore, it's the off.", ["RF finding crack"]),
        ("Corn in the off fore. I said the corn was off fore, it should be near fore.", ["LF finding corn"]),
        # said over, and meant so
        ("Corn in the off fore. I said the corn was the off fore, yes.", ["RF finding corn"]),
    ],
    "Buck. {}",
)

test_asked_about_and_denied_by_name = reads(
    [
        (
            "Hinds trimmed. Sidebone, they asked me, and I don't see any sidebone in the fronts.",
            ["LF+RF finding sidebone absent", "LH+RH work trim"],
        ),
        (
            "Hinds trimmed. Ringbone, and I can't find any ringbone in the fores.",
            ["LF+RF finding ringbone absent", "LH+RH work trim"],
        ),
        (
            "Hinds trimmed. Thrush in the off hind, and I don't see any thrush in the near hind.",
            ["LH finding thrush absent", "LH+RH work trim", "RH finding thrush"],
        ),
    ],
    "Buck. {}",
)


test_a_foot_put_right_at_once_takes_nothing_of_before = reads(
    [
        (
            "Right hind has stretched white line. Sidebone too. Right hind, I mean left hind, corn.",
            ["LH finding corn", "RH finding sidebone", "RH finding white_line_separation"],
        ),
        (
            "Left front has thrush. There is a flare as well. Right hind, I mean right front, reset.",
            ["LF finding flare", "LF finding thrush", "RF work reset"],
        ),
        (
            "Near fore has a corn. And a bruise. Off hind, make that near hind, nothing with the testers.",
            ["LF finding bruise", "LF finding corn", "LH tester none"],
        ),
        # told of the foot behind, as if nothing had been put right
        (
            "Navicular, mild. Near fore, I mean off fore. Four weeks.",
            ["- next_visit_weeks 4 planned", "RF finding navicular ~mild"],
        ),
        ("Navicular. Near fore, I mean off fore, mild.", ["RF finding navicular ~mild"]),
    ],
    "Tally. {}",
)


test_one_of_a_pair_after_all_leaves_the_rest = reads(
    [
        ("Left hind I reset, and both fronts, no, scratch that, I only reset the left front.", ["LF+LH work reset"]),
        ("Left hind I reset, and both fronts, no, I only reset the left front.", ["LF+LH work reset"]),
        ("I trimmed the near fore and both hinds, sorry, I only trimmed the off hind.", ["LF+RH work trim"]),
        (
            "Left hind reset and both fronts, no, I just reset the left front and trimmed the right front.",
            ["LF+LH work reset", "RF work trim"],
        ),
        # all of it was wrong
        ("Reset both fronts, no, I only reset the left front.", ["LF work reset"]),
        ("Reset both fronts and the hinds, no, I only reset the left front.", ["LF work reset"]),
        ("Reset the left hind and both fronts, no, I just trimmed the left front.", ["LF work trim"]),
    ],
    "Tally. {}",
)
