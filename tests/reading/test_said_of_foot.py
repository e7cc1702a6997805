"""A foot said wrongly and named by the speaker, sides that still have it, and another horse's finding.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads

test_i_said_the_wrong_foot = reads(
    [
        (
            "Crack in the left front at the toe. I said left front for that crack, it's the right.",
            ["RF finding crack @toe"],
        ),
        ("Crack in the left front at the toe. I said left for the crack, it's the right.", ["RF finding crack @toe"]),
        (
            "Crack in the left front at the toe. When I said left front for the crack I meant the right.",
            ["RF finding crack @toe"],
        ),
        (
            "Crack in the left front at the toe. That crack I said was left front is right front.",
            ["RF finding crack @toe"],
        ),
        (
            "Crack in the left front at the toe. Bruise in the right front. I told "
            "you left front for the crack, it was the right.",
            ["RF finding bruise", "RF finding crack @toe"],
        ),
        ("Thrush in the near hind. Did I say near hind, it's the off.", ["RH finding thrush"]),
        ("Thrush in the near hind. If I said near hind, it's the off hind.", ["RH finding thrush"]),
        ("Thrush in the near hind. I've put near hind for that thrush, should be off.", ["RH finding thrush"]),
        ("Thrush in the near hind. I called that the near hind, it was the off.", ["RH finding thrush"]),
        ("Thrush in the near hind. I said near hind and near hind it is.", ["LH finding thrush"]),
    ],
    "Tansy. {}",
)

test_asked_which_foot_it_was = reads(
    [
        ("Cast the near fore, was it the near, no, tell a lie, the off.", ["RF shoe_state lost"]),
        ("Cast the near fore, was it the near, no, I tell a lie, it was the off.", ["RF shoe_state lost"]),
        ("Cast the near fore, was it the near, no, the off.", ["RF shoe_state lost"]),
        ("Corn in the off fore, was it off, no, near.", ["LF finding corn"]),
        ("Lost the left front, wait, was it the left, no, right front.", ["RF shoe_state lost"]),
        ("Lost the left front. Was it the left? No, the right.", ["RF shoe_state lost"]),
        ("Lost the left front. Or was it the right? It was the right.", ["RF shoe_state lost"]),
    ],
    "Tansy. {}",
)

test_turned_about_in_other_words = reads(
    [
        (
            "Left front loose, right front gone. Shoot, other way, right front loose, left front gone.",
            ["LF shoe_state lost", "RF shoe_state loose"],
        ),
        (
            "Left front loose, right front sprung, well it's the other way on, left sprung, right loose.",
            ["LF shoe_state sprung", "RF shoe_state loose"],
        ),
        (
            "Right front abscess, left front corn. Dang it, I've flipped those. Left front abscess, right front corn.",
            ["LF finding abscess", "RF finding corn"],
        ),
        ("Near fore cast, off fore loose. Other way, sorry.", ["LF shoe_state loose", "RF shoe_state lost"]),
    ],
    "Tansy. {}",
)

test_a_side_that_has_it = reads(
    [
        (
            "Mud fever on both hinds, the near is bad and the off is mild.",
            ["LH finding scratches ~severe", "RH finding scratches ~mild"],
        ),
        (
            "Mud fever on both hinds, the near's bad and there's a wee touch on the off.",
            ["LH finding scratches ~severe", "RH finding scratches ~mild"],
        ),
        (
            "Thrush in both hinds last time. Off hind's clean now. Near hind still has a bit.",
            ["LH finding thrush history", "LH finding thrush ~mild", "RH finding thrush resolved"],
        ),
        (
            "Both hinds had thrush last trip. The right's clean now, the left still has some.",
            ["LH finding thrush", "LH finding thrush history", "RH finding thrush resolved"],
        ),
        (
            "Thrush in both hinds in May, the near's clear now and there's a bit in the off yet.",
            ["LH finding thrush resolved", "RH finding thrush ~mild"],
        ),
        (
            "The corn's gone from the near fore, there's still one there on the off fore though, medial heel, mild.",
            ["LF finding corn resolved", "RF finding corn @medial_heel ~mild"],
        ),
        (
            "Scratches on the left hind, mild. Right hind's eat up with it.",
            ["LH finding scratches ~mild", "RH finding scratches ~severe"],
        ),
        (
            "Right hind's got thrush, moderate, in the frog. So's the left hind.",
            ["LH+RH finding thrush @frog ~moderate"],
        ),
        (
            "Right front had an abscess, that's healed up. He's brewing one on the left front, I believe.",
            ["LF finding abscess suspected", "RF finding abscess resolved"],
        ),
        ("Corn in the right front. The left never had one.", ["LF finding corn absent", "RF finding corn"]),
        ("He stood in right still today. Trimmed all round.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tansy. {}",
)

test_not_wanted_and_counted_on = reads(
    [
        (
            "New shoes in front. Started with six nails, finished with seven on the left front.",
            ["LF nails 7", "LF+RF work new_shoe"],
        ),
        (
            "Reset in front. The trainer's hollering for rim shoes and I told him not till the ground dries.",
            ["LF+RF work reset"],
        ),
        (
            "Fores reset, steel. Madam would like him in aluminium but she can like all she likes.",
            ["LF+RF shoe_material steel", "LF+RF work reset"],
        ),
        (
            "Heart bar on the near fore, I toyed with an egg bar first. Six nails.",
            ["LF nails 6", "LF shoe_type heart_bar"],
        ),
        (
            "New shoes on the fores, size three, I had him measured for a four and "
            "it wasn't having it. Seven nails each.",
            ["LF+RF nails 7", "LF+RF shoe_size 3", "LF+RF work new_shoe"],
        ),
        (
            "Set of plain steel up front, size one, I had a pair of twos on the "
            "tailgate and put 'em back, six nails apiece.",
            ["LF+RF nails 6", "LF+RF shoe_material steel", "LF+RF shoe_size 1", "LF+RF shoe_type plain"],
        ),
    ],
    "Tansy. {}",
)

test_another_horses_finding = reads(
    [
        (
            "The lady's other mare's got navicular and she wants to know does this "
            "one, and no ma'am, he does not, no navicular on either front.",
            ["LF+RF finding navicular absent"],
        ),
        (
            "Her other lad has sidebone and she's convinced this one has, but I "
            "felt all round both fores and there's none.",
            ["LF+RF finding sidebone absent"],
        ),
    ],
    "Tansy. {}",
)


@pytest.mark.parametrize(
    "back",
    [
        "Back to Tally. I said right front on that corn and it's the left front.",
        "Oh, back to Tally for a second. I said right front for the corn, it's the left.",
        "Going back to Tally, I said right front and I meant left front.",
    ],
)
def test_said_wrongly_of_the_horse_that_is_turned_back_to(read: Read, back: str) -> None:
    first = (
        "Tally had a corn in the right front. Then Buck. Pulse raised in the left front, normal in the right front. "
    )
    visits = read(first + back, "Tally", "Buck")
    told = {(v.horse, f.foot, f.value) for v in visits for f in v.facts}
    assert told == {("Tally", "LF", "corn"), ("Buck", "LF", "raised"), ("Buck", "RF", "normal")}


def test_said_wrongly_of_a_horse_with_no_such_foot_changes_no_other_horse(read: Read) -> None:
    first = "Tally's trimmed. Then Buck. Pulse raised in the left front and normal in the right front. "
    visits = read(first + "Back to Tally. I said right front on that corn and it's the left front.", "Tally", "Buck")
    pulses = {(v.horse, f.foot, f.value) for v in visits for f in v.facts if f.slot == "pulse"}
    assert pulses == {("Buck", "LF", "raised"), ("Buck", "RF", "normal")}


test_only_what_is_put_right_moves = reads(
    [
        (
            "Corn right front, reset, six nails. That corn's in the left front, not the right front.",
            ["LF finding corn", "RF nails 6", "RF work reset"],
        ),
        (
            "Right front, a corn at the heel, mild, reset, six nails. "
            "That corn's in the left front, not the right front.",
            ["LF finding corn @heel ~mild", "RF nails 6", "RF work reset"],
        ),
        (
            "Corn right front. Reset it, six nails. That corn's in the left front, not the right front.",
            ["LF finding corn", "RF nails 6", "RF work reset"],
        ),
        (
            "Corn and a bruise right front, reset. That corn's in the left front, not the right front.",
            ["LF finding corn", "RF finding bruise", "RF work reset"],
        ),
        (
            "Right front reset, six nails, corn in it. That corn's in the left front, not the right front.",
            ["LF finding corn", "RF nails 6", "RF work reset"],
        ),
        (
            "Right front reset, six nails. It's the left front, not the right front.",
            ["LF nails 6", "LF work reset"],
        ),
        ("Corn right front. That corn's in the left front, not the right front.", ["LF finding corn"]),
    ],
    "Tally. {}",
)

test_the_other_foot_is_meant = reads(
    [
        ("Thrush in the near hind. No, other one. Off hind.", ["RH finding thrush"]),
        ("Corn in the left front. No, the other one.", ["RF finding corn"]),
        ("Bruise on the off fore, heel. Opposite foot, sorry.", ["LF finding bruise @heel"]),
        ("Corn in the near fore. Wait, other side.", ["RF finding corn"]),
        ("Left front's got the thrush. Sorry, other left. Right front.", ["RF finding thrush"]),
        ("Corn in the left hind. My mistake, the other one. Reset behind.", ["LH+RH work reset", "RH finding corn"]),
        ("Testers mild left front. Other foot, I mean.", ["RF tester mild"]),
        # another foot is told of
        ("Corn in the near fore. And the other one has a bruise.", ["LF finding corn", "RF finding bruise"]),
        ("Corn in the near fore. No corn in the other one.", ["LF finding corn", "RF finding corn absent"]),
        ("Thrush in the near hind. Other side, none.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Corn in the near fore. No other one has it.", ["LF finding corn"]),
        ("Corn in the near fore. Also the other one, off fore.", ["LF+RF finding corn"]),
    ],
    "Tansy. {}",
)

test_a_foot_that_should_have_been_said = reads(
    [
        ("Heat in the left hind. Did I say left? Right hind.", ["RH finding heat"]),
        ("Thrush in the off hind, did I say? Near hind it is.", ["LH finding thrush"]),
        ("Corn in the left front. Forget left, right.", ["RF finding corn"]),
        (
            "Pulled the near fore, abscess at the toe. Scratch near, it's the off.",
            ["RF finding abscess @toe", "RF work removed"],
        ),
        (
            "Off hind, thrush, iodine on it. Sorry, all that was the near hind.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        (
            "Near fore, corn. Testers strong in the near fore. All of that was the off fore.",
            ["RF finding corn", "RF tester strong"],
        ),
        ("Iodine on the near hind. That should have been the off.", ["RH treatment iodine"]),
        ("Hot nail in the near fore. Should've said off fore.", ["RF finding quicked"]),
        ("Wedge on the left front. Not the left, what am I at, the right.", ["RF pad wedge"]),
        # no foot is put right
        ("Lost the near fore. That should have been the last of it.", ["LF shoe_state lost"]),
        ("Thrush in the near hind. That's all that was left.", ["LH finding thrush"]),
        ("Testers strong in the near fore. I mean he nearly took my head off.", ["LF tester strong"]),
        ("Left front, I mean right front, five nails.", ["RF nails 5"]),
    ],
    "Tansy. {}",
)

test_an_end_put_right_keeps_its_side = reads(
    [
        ("Quarter crack left hind. Sorry, front.", ["LF finding crack @quarter"]),
        ("Left fore, I mean hind, corn.", ["LH finding corn"]),
        ("Left front's lost. Make that hind.", ["LH shoe_state lost"]),
        ("Contracted heels behind, I mean in front.", ["LF+RF finding contracted_heels"]),
    ],
    "Tansy. {}",
)

test_a_foot_that_was_written_down_wrongly = reads(
    [
        (
            "Thrush in the near fore. They had the off marked on the board and that's wrong. Iodine on it.",
            ["LF finding thrush", "LF treatment iodine"],
        ),
        (
            "Corn in the off fore. She had it down as the near fore on the sheet, which is a mistake. Bar shoe on it.",
            ["RF finding corn", "RF shoe_type bar"],
        ),
        (
            "Crack in the off hind. They'd put near hind in the diary, wrong. Reset it.",
            ["RH finding crack", "RH work reset"],
        ),
        (
            "I had her corn down as the left hind in the book. It's the right hind, always was. Drained it.",
            ["RH finding corn", "RH treatment drained"],
        ),
        (
            "The abscess was written up as the left fore. It's the right fore. Poultice on it.",
            ["RF finding abscess", "RF treatment poultice"],
        ),
        (
            "The sheet has the abscess as left hind, it's the right hind. Drained it.",
            ["RH finding abscess", "RH treatment drained"],
        ),
        (
            "The abscess is down as the near fore on the card and that's wrong, it's the off fore.",
            ["RF finding abscess"],
        ),
        ("The book says left hind. It's the right, a corn at the heel.", ["RH finding corn @heel"]),
        ("The card had the near fore down as a corn and that's wrong, it's a bruise.", ["LF finding bruise"]),
        ("The book says left hind, and that's right. Corn in it.", ["LH finding corn"]),
        ("They had the off fore marked on the board. Trimmed it.", ["RF work trim"]),
        ("The sheet says right fore, it's right. Bruise in it.", ["RF finding bruise"]),
    ],
    "Tansy. {}",
)

test_an_end_said_over_names_no_other_foot = reads(
    [
        (
            "Two out of five lame on the right hind, hind mind you, not front. Heat at the coronary band of it.",
            ["RH finding heat @coronary_band", "RH lameness 2"],
        ),
        ("Abscess in the near fore, fore mind, not hind. Drained it.", ["LF finding abscess", "LF treatment drained"]),
        ("Bruise in the off hind, that's hind, not front. Iodine on it.", ["RH finding bruise", "RH treatment iodine"]),
        (
            "Lost the near fore. Front, not hind. Nailed it back on with six.",
            ["LF nails 6", "LF shoe_state lost", "LF work put_back"],
        ),
        ("Size two on the left hind, hind one mind, not a front. Six nails in it.", ["LH nails 6", "LH shoe_size 2"]),
        ("Bruise in the near fore, front mind you. Poultice on it.", ["LF finding bruise", "LF treatment poultice"]),
        ("Bruise in the near fore, hinds trimmed.", ["LF finding bruise", "LH+RH work trim"]),
        ("Near fore, fronts reset, not the hinds. Six nails.", ["LF+RF nails 6", "LF+RF work reset"]),
        ("Corn in the off hind. Back, mind you, in a week.", ["- next_visit_weeks 1 planned", "RH finding corn"]),
    ],
    "Tansy. {}",
)
