"""What was told of then and is there today, what is brewing again, and other turns of everyday speech."""

from __future__ import annotations

from tests.reading.conftest import reads

test_confirmed_then = reads(
    [
        (
            "Navicular both fronts, vet confirmed it in March. New egg bars.",
            ["LF+RF finding navicular", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
        (
            "Navicular in both fronts, confirmed by the vet last month. New egg bars.",
            ["LF+RF finding navicular", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
        ("Ringbone off fore, the vet x-rayed it in the spring.", ["RF finding ringbone"]),
        ("Navicular, left front, vet diagnosed it last year.", ["LF finding navicular"]),
        (
            "Sidebone on the near fore, the vet found it in January. Bar shoes on.",
            ["LF finding sidebone", "LF shoe_type bar"],
        ),
        ("Keratoma in the off fore, they confirmed it at the clinic in April.", ["RF finding keratoma"]),
        # what goes away is of then, and asked
        ("Abscess off fore in March.", ["RF finding abscess history"]),
        ("Abscess off fore, the vet confirmed it in March.", ["RF finding abscess history"]),
        ("The vet confirmed an abscess in the off fore in March.", ["RF finding abscess history"]),
        ("Keratoma in the off fore, the vet found it in March, removed since.", ["RF finding keratoma history"]),
        ("Navicular both fronts in March.", ["LF+RF finding navicular history"]),
        ("Corn in the left front, vet confirmed it in March, gone now.", ["LF finding corn resolved"]),
    ],
    "Tally. {}",
)

test_put_back_that_was_lost = reads(
    [
        (
            "Left front put back on, he stepped it off last night, six nails.",
            ["LF nails 6", "LF shoe_state lost", "LF work put_back"],
        ),
        ("Near hind nailed back on, she pulled it in the field yesterday.", ["LH shoe_state lost", "LH work put_back"]),
        ("Right front tacked back on, he'd cast it in the trailer.", ["RF shoe_state lost", "RF work put_back"]),
        (
            "Off fore put back on, he threw it at the show, seven nails.",
            ["RF nails 7", "RF shoe_state lost", "RF work put_back"],
        ),
        ("Fronts put back on, lost them both in the bog.", ["LF+RF shoe_state lost", "LF+RF work put_back"]),
        # another foot's
        ("Off fore put back on, near fore lost.", ["LF shoe_state lost"]),
        ("Off fore put back on, six nails.", ["RF nails 6"]),
        ("Trimmed. I'm back there in three minutes to fetch the rasp.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_then_and_starting_again = reads(
    [
        (
            "So she's been foundered, that's going back three years, and her fronts show it, growth rings on both.",
            ["- finding laminitis history", "LF+RF finding growth_rings"],
        ),
        (
            "She foundered, going back two years. Trimmed all round.",
            ["- finding laminitis history", "LF+RF+LH+RH work trim"],
        ),
        ("She'd an abscess in the near fore, going back a year or so.", ["LF finding abscess history"]),
        (
            "Laminitic two years ago and I think it could be starting again.",
            ["- finding laminitis history", "- finding laminitis suspected"],
        ),
        (
            "Laminitis last spring and it might be coming back.",
            ["- finding laminitis history", "- finding laminitis suspected"],
        ),
        (
            "Foundered three years ago and I think she could be starting again.",
            ["- finding laminitis history", "- finding laminitis suspected"],
        ),
        (
            "Abscess in the near fore last month and I think it might be brewing again.",
            ["LF finding abscess history", "LF finding abscess suspected"],
        ),
        (
            "Rotation left front, no, right front, four degrees on last month's films, and none in the left front.",
            ["LF finding rotation absent", "RF finding rotation"],
        ),
        # not again, and no time told
        ("Laminitic two years ago and it's never started again.", ["- finding laminitis history"]),
        ("Laminitic two years ago and I don't think it's starting again.", ["- finding laminitis history"]),
        ("She's foundered. I'm going back in three weeks.", ["- finding laminitis", "- next_visit_weeks 3 planned"]),
        ("She's been foundered, growth rings on both fronts.", ["- finding laminitis", "LF+RF finding growth_rings"]),
    ],
    "Tally. {}",
)

test_wants_no_more = reads(
    [
        (
            "Wants nothing but a trim, all four, bare. Eight weeks.",
            ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"],
        ),
        ("Needs nothing but a trim all round.", ["LF+RF+LH+RH work trim"]),
        ("Wants nothing more than a trim behind, fronts reset.", ["LF+RF work reset", "LH+RH work trim"]),
        ("Just wants a trim all round, nothing else.", ["LF+RF+LH+RH work trim"]),
        ("Wants nothing only a trim.", ["LF+RF+LH+RH work trim"]),
        ("Only wanted a trim.", ["LF+RF+LH+RH work trim"]),
        # a plan, and what somebody else wants
        ("He wants a trim next time.", ["LF+RF+LH+RH work trim planned"]),
        ("He only wants a trim next time.", ["LF+RF+LH+RH work trim planned"]),
        ("Next time he wants nothing but a trim.", ["LF+RF+LH+RH work trim planned"]),
        ("Owner wants nothing but a trim. I reset the fronts.", ["LF+RF work reset"]),
    ],
    "Tally. {}",
)

test_came_off_and_left_off = reads(
    [
        (
            "New shoes behind, size eight. Fores came off and they're left off, trimmed and bare for the summer.",
            ["LF+RF work removed", "LF+RF work trim", "LH+RH shoe_size 8", "LH+RH work new_shoe"],
        ),
        ("Off fore came off and it's left off.", ["RF work removed"]),
        ("Hinds are off and left off.", ["LH+RH work removed"]),
        ("The hinds came off and are left off.", ["LH+RH work removed"]),
        ("Fores are off and being left off for the winter.", ["LF+RF work removed"]),
        # not left off
        ("Fores came off and went back on.", ["LF+RF work reset"]),
        ("Fores came off and were left on the fence.", []),
    ],
    "Tally. {}",
)

test_at_that_quarter = reads(
    [
        (
            "Quarter crack, off fore, inside quarter. New straight bar on that one. Testers positive at that quarter.",
            [
                "RF finding crack @medial_quarter",
                "RF shoe_type straight_bar",
                "RF tester positive @medial_quarter",
                "RF work new_shoe",
            ],
        ),
        (
            "Corn in the near fore, inside heel. Testers moderate at that heel.",
            ["LF finding corn @medial_heel", "LF tester moderate @medial_heel"],
        ),
        (
            "Corn off fore, lateral heel. Heat at that heel.",
            ["RF finding corn @lateral_heel", "RF finding heat @lateral_heel"],
        ),
        (
            "Near hind, crack at the outside quarter. Pulse normal. Testers mild at that quarter and none at the toe.",
            [
                "LH finding crack @lateral_quarter",
                "LH pulse normal",
                "LH tester mild @lateral_quarter",
                "LH tester none @toe",
            ],
        ),
        # another foot, two places, or none told
        (
            "Corn off fore, inside heel. Near fore, testers mild at that heel.",
            ["LF tester mild @heel", "RF finding corn @medial_heel"],
        ),
        (
            "Crack off fore, inside quarter and outside quarter. Testers mild at that quarter.",
            ["RF finding crack @lateral_quarter", "RF finding crack @medial_quarter", "RF tester mild @quarter"],
        ),
        (
            "Corn off fore, inside heel. Testers mild at the heel.",
            ["RF finding corn @medial_heel", "RF tester mild @heel"],
        ),
        (
            "Flare inside quarter near fore. Crack off fore, quarter. Testers mild at that quarter.",
            ["LF finding flare @medial_quarter", "RF finding crack @quarter", "RF tester mild @quarter"],
        ),
    ],
    "Tally. {}",
)

test_would_want_a_picture = reads(
    [
        (
            "She has ringbone in the off fore and I'd say sidebone on the near, though I'd want a picture to be sure.",
            ["LF finding sidebone suspected", "RF finding ringbone"],
        ),
        ("I'd say sidebone in the near fore, but I'd want films to be sure.", ["LF finding sidebone suspected"]),
        ("I'd say ringbone on the near fore, I'd need an x-ray to know.", ["LF finding ringbone suspected"]),
        ("Keratoma off fore, though you'd want a picture to be sure of it.", ["RF finding keratoma suspected"]),
        ("Sidebone near fore, though I can't be sure without a picture.", ["LF finding sidebone suspected"]),
        # nothing is doubted
        ("Sidebone on the near fore. I'd want a picture of it for the file.", ["LF finding sidebone"]),
        ("Reset the fronts without films, sidebone on the near fore.", ["LF finding sidebone", "LF+RF work reset"]),
        (
            "Sidebone on the near fore, reset, and I'd want pictures to be sure of the angles.",
            ["LF finding sidebone", "LF work reset"],
        ),
    ],
    "Tally. {}",
)

test_a_little_starting = reads(
    [
        (
            "Seedy toe, off hind, moderate. Could be the same starting in the near hind, too early to say.",
            ["LH finding white_line_disease suspected ~moderate", "RH finding white_line_disease ~moderate"],
        ),
        (
            "No thrush in the hinds, maybe a little starting in the left front.",
            ["LF finding thrush suspected ~mild", "LH+RH finding thrush absent"],
        ),
        (
            "No thrush behind, possibly a bit starting in the near fore.",
            ["LF finding thrush suspected ~mild", "LH+RH finding thrush absent"],
        ),
        (
            "No corns in front, maybe one starting in the near hind.",
            ["LF+RF finding corn absent", "LH finding corn suspected"],
        ),
        (
            "Thrush in the off hind, maybe a touch in the near hind.",
            ["LH finding thrush suspected ~mild", "RH finding thrush"],
        ),
        # another thing
        (
            "No thrush in the hinds, maybe trim the left front a little next time.",
            ["LF work trim planned", "LH+RH finding thrush absent"],
        ),
        (
            "No thrush in the hinds, a little flare on the left front.",
            ["LF finding flare ~mild", "LH+RH finding thrush absent"],
        ),
        ("Reset the fronts, maybe a little starting in the near hind.", ["LF+RF work reset"]),
    ],
    "Tally. {}",
)

test_another_one = reads(
    [
        (
            "Abscess in the right front last time, that's gone. Left hind swollen at the "
            "heel bulb, testers positive. I think she's brewing another one in there.",
            [
                "LH finding abscess suspected",
                "LH finding swelling @heel_bulb",
                "LH tester positive",
                "RF finding abscess resolved",
            ],
        ),
        (
            "Had an abscess in the near fore last visit, gone now. Off "
            "hind, heat in it. I'd say he's brewing another one there.",
            ["LF finding abscess resolved", "RH finding abscess suspected", "RH finding heat"],
        ),
        (
            "Abscess off fore last time, all healed. Near fore warm, could be another one brewing in there.",
            ["LF finding abscess suspected", "LF finding heat", "RF finding abscess resolved"],
        ),
        (
            "Corn in the near fore, inside heel. Swelling at the heel bulb. There's another one in the off fore.",
            ["LF finding corn @medial_heel", "LF finding swelling @heel_bulb", "RF finding corn"],
        ),
        # as before
        (
            "Heat and swelling in the near fore. I think he's brewing an abscess in there.",
            ["LF finding abscess suspected", "LF finding heat", "LF finding swelling"],
        ),
        ("Bruise in the near fore, another one in the off fore.", ["LF+RF finding bruise"]),
        ("A swelling on the near hind, another one on the off hind.", ["LH+RH finding swelling"]),
        (
            "Abscess off fore, drained. I've another one coming at four, so short.",
            ["RF finding abscess", "RF treatment drained"],
        ),
    ],
    "Tally. {}",
)

test_thin_in_front_too = reads(
    [
        (
            "Flat soles on all four. They're thin in front, too.",
            ["LF+RF finding thin_sole", "LF+RF+LH+RH finding flat_sole"],
        ),
        (
            "Soles are flat in front and behind. They're thin behind as well.",
            ["LF+RF+LH+RH finding flat_sole", "LH+RH finding thin_sole"],
        ),
        ("Flat soles all round. Thin in front, too.", ["LF+RF finding thin_sole", "LF+RF+LH+RH finding flat_sole"]),
        (
            "Flat soles on all four. They're thin on the near fore, mind.",
            ["LF finding thin_sole", "LF+RF+LH+RH finding flat_sole"],
        ),
        (
            "Contracted heels in front. They're sheared on the near fore, too.",
            ["LF finding sheared_heels", "LF+RF finding contracted_heels"],
        ),
        # of a part that was not told, or of what was put on
        ("Reset the fronts. They're thin in front, too.", ["LF+RF work reset"]),
        ("Walls are shelly on both fronts. They're thin in front too.", ["LF+RF finding weak_wall"]),
        ("Flat soles in front. Reset. They're thin in front too.", ["LF+RF finding flat_sole", "LF+RF work reset"]),
        ("Flat soles in front, egg bars on. They're thin.", ["LF+RF finding flat_sole", "LF+RF shoe_type egg_bar"]),
        ("Flat soles on all four. They're not thin.", ["LF+RF+LH+RH finding flat_sole"]),
    ],
    "Tally. {}",
)

test_no_they_are_not = reads(
    [
        ("I thought I saw thin soles but no, soles aren't thin on either front.", ["LF+RF finding thin_sole absent"]),
        (
            "I thought he had contracted heels but no, heels aren't contracted on either hind.",
            ["LH+RH finding contracted_heels absent"],
        ),
        (
            "Walls are weak in front, no, the walls aren't weak, soles are thin.",
            ["LF+RF finding thin_sole", "LF+RF finding weak_wall absent"],
        ),
        ("Heels are sheared on the near fore, no, the heels aren't sheared.", ["LF finding sheared_heels absent"]),
        (
            "Heels are sheared on the near fore, no, the heels aren't sheared, they're contracted.",
            ["LF finding contracted_heels", "LF finding sheared_heels absent"],
        ),
        (
            "Soles are thin in front, no, soles aren't thin, they're flat.",
            ["LF+RF finding flat_sole", "LF+RF finding thin_sole absent"],
        ),
        # put right
        ("Corn in the near fore, no, it's a bruise.", ["LF finding bruise"]),
        ("Soles are thin on the left front, no, the right front.", ["RF finding thin_sole"]),
    ],
    "Tally. {}",
)

test_under_both_of_them = reads(
    [
        (
            "Reset both fronts, and I stuck a rim pad under the left front, well, under both of them, so she's level.",
            ["LF+RF pad rim", "LF+RF work reset"],
        ),
        (
            "Reset the fronts, leather pad on the off fore, well, both of them really.",
            ["LF+RF pad leather", "LF+RF work reset"],
        ),
        ("Reset the fronts, rim pad under the left front, actually under both.", ["LF+RF pad rim", "LF+RF work reset"]),
        ("Thrush in the left front, well, in both of them.", ["LF+RF finding thrush"]),
    ],
    "Tally. {}",
)

test_a_plain_two = reads(
    [
        (
            "New egg bar on the right front, size two, seven nails. Left front's a plain two, reset, six nails.",
            [
                "LF nails 6",
                "LF shoe_type plain",
                "LF work reset",
                "LF+RF shoe_size 2",
                "RF nails 7",
                "RF shoe_type egg_bar",
                "RF work new_shoe",
            ],
        ),
        (
            "Fronts are a plain three, new, six nails.",
            ["LF+RF nails 6", "LF+RF shoe_size 3", "LF+RF shoe_type plain", "LF+RF work new_shoe"],
        ),
        (
            "A plain two on the near fore, an egg bar three on the off.",
            ["LF shoe_size 2", "LF shoe_type plain", "RF shoe_size 3", "RF shoe_type egg_bar"],
        ),
        # no size
        ("Left front is a plain one, reset.", ["LF shoe_type plain", "LF work reset"]),
        ("Left front's a plain three degree wedge.", ["LF pad wedge", "LF shoe_type plain", "LF wedge 3"]),
    ],
    "Tally. {}",
)

test_a_plain_trim = reads(
    [
        ("A plain trim all round, no shoes on her.", ["LF+RF+LH+RH work trim"]),
        ("Plain trim behind, new shoes in front.", ["LF+RF work new_shoe", "LH+RH work trim"]),
        ("Trimmed plain all round.", ["LF+RF+LH+RH work trim"]),
        ("Plain shoes in front, trim behind.", ["LF+RF shoe_type plain", "LH+RH work trim"]),
        ("Fronts new, plain. Trim behind.", ["LF+RF shoe_type plain", "LF+RF work new_shoe", "LH+RH work trim"]),
        ("A lamb to shoe. Six weeks so.", ["- manner quiet", "- next_visit_weeks 6 planned"]),
        ("He was a lamb to trim.", ["- manner quiet"]),
        ("He was a lamb last time, a devil today.", ["- manner quiet history"]),
        ("Owner had a lamb in the box. Trimmed all round.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)
