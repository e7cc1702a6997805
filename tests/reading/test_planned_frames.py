"""What is put on later, in every frame that says so, and what was done today told in the same breath."""

from __future__ import annotations

from itertools import product

from tests.reading.conftest import reads

THINGS = {
    "leather pads": "pad leather", "egg bars": "shoe_type egg_bar", "side clips": "clips side",
    "studs": "traction studs",
}  # fmt: skip
FEET = {"the fronts": "LF+RF", "the near fore": "LF"}
FRAMES = (
    "The plan's {} on {}.", "I'd be inclined to put {} on {}.", "I'm minded to go to {} on {}.",
    "Down the track {} on {}.", "When I'm back, {} on {}.", "The owner would like {} on {}.", "Worst case, {} on {}.",
    "In case he stays sore we'd use {} on {}.", "I may well put {} on {}.", "{} on {} once they come in.",
    "{} on {}, if the owner agrees.", "{} on {}, once I can get them.", "{} on {} would be my next move.",
    "{} on {} is where we're going next.", "Next step, {} on {}.", "The next stop would be {} on {}.",
    "Going forward, {} on {}.", "I can see him needing {} on {}.", "Give it one more cycle, then {} on {}.",
    "{} might help {}.", "{} on {} would be worth a try.", "Before we go to {} on {} I'll speak to the owner.",
    "{} going on {} next week.", "{} on {}, once they arrive.",
)  # fmt: skip

test_what_is_to_be_put_on_is_planned = reads(
    [
        (f"Thrush in the left hind. {frame.format(thing, feet).capitalize()} He was quiet.",
         sorted(["LH finding thrush", f"{FEET[feet]} {THINGS[thing]} planned", "- manner quiet"]))
        for frame, (thing, feet) in product(FRAMES, zip(THINGS, [*FEET, *FEET], strict=True))
    ],
    "Tally. {}",
)  # fmt: skip

TODAY = (
    "Trimmed {1} today with {0} to come next time.", "If he's sore we'll go to {0}, but today I just trimmed {1}.",
    "Trimmed {1} today, {0} going on next week.", "Trimmed {1} because the {0} haven't come, they'll go on next time.",
    "Trimmed {1}, {0} once they arrive.", "Trimmed {1}. Next step is {0}.",
)  # fmt: skip

test_what_was_done_today_stays_so = reads(
    [
        (f"Reset the off fore. {frame.format(thing, 'the near fore')}",
         sorted(["RF work reset", "LF work trim", f"{'RF' if frame[0] == 'I' else 'LF'} {THINGS[thing]} planned"]))
        for frame, thing in product(TODAY, THINGS)
    ],
    "Tally. {}",
)  # fmt: skip

test_what_hangs_on_nothing_is_of_today = reads(
    [
        ("Leather pads on the fronts, and if he pulls one ring me.", ["LF+RF pad leather"]),
        ("Leather pads on the fronts, if that doesn't work I'll think again.", ["LF+RF pad leather"]),
        ("New shoes on the fronts, if he loses one call me.", ["LF+RF work new_shoe"]),
        ("Six nails in the near fore, five in the off fore, if I remember right.", ["LF nails 6", "RF nails 5"]),
        ("I put leather pads on the fronts, if you please.", ["LF+RF pad leather"]),
        ("Leather pads on the fronts once the sole was dry.", ["LF+RF pad leather"]),
        ("Leather pads on the fronts, and they help him.", ["LF+RF pad leather"]),
        ("Bar shoes would be overkill on the fronts, so plain.", ["LF+RF shoe_type plain"]),
        ("Trimmed the fronts, the hinds might do with less.", ["LF+RF work trim"]),
    ],
    "Tally. {}",
)

test_what_always_will_be = reads(
    [
        (
            "Near fore's the club foot, always will be, with heels at fifty eight mil.",
            ["LF finding club_foot", "LF heel_height 58"],
        ),
        ("He'll always be flat in front. Sole depth ten mil on both fores.", ["LF+RF sole_depth 10"]),
        ("Near fore will be in wedges next time.", ["LF pad wedge planned"]),
    ],
    "Tally. {}",
)

test_feet_behind_the_condition = reads(
    [
        (
            "Rotation in the off fore. If the rotation gets worse I'll put wedges on her, five degrees, both fores.",
            ["LF+RF pad wedge planned", "LF+RF wedge 5 planned", "RF finding rotation"],
        ),
        (
            "Rotation in the off fore. If the rotation gets worse I'll put wedges on her, five degrees.",
            ["RF finding rotation", "RF pad wedge planned", "RF wedge 5 planned"],
        ),
    ],
    "Tally. {}",
)

test_a_plan_goes_on_behind_its_feet = reads(
    [
        (
            "Next time he'll have to be sedated, and I'll do his hinds then, just trim them.",
            ["- manner sedated planned", "LH+RH work trim planned"],
        ),
        (
            "Next time I'll sedate him and do the fores then, reset them.",
            ["- manner sedated planned", "LF+RF work reset planned"],
        ),
        (
            "He'll be sedated next time, and I'll do his hinds then, trimmed the fronts.",
            ["- manner sedated planned", "LF+RF work trim"],
        ),
    ],
    "Buck. {}",
)

test_what_they_are_to_do_before_the_vet_is_rung = reads(
    [
        (
            "Could be a corn in the near fore. If it gets worse, poultice it and ring the vet.",
            ["- vet referral planned", "LF finding corn suspected", "LF treatment poultice planned"],
        ),
        (
            "Corn in the near fore. If he's sore, soak it and ring the vet.",
            ["- vet referral planned", "LF finding corn", "LF treatment soak planned"],
        ),
        (
            "Corn in the near fore. If it's worse by Friday, pull the shoe and ring the vet.",
            ["- vet referral planned", "LF finding corn", "LF work removed planned"],
        ),
        (
            "Thrush in both hinds. If it comes back, iodine on it and ring the vet.",
            ["- vet referral planned", "LH+RH finding thrush", "LH+RH treatment iodine planned"],
        ),
        # within the condition
        (
            "Abscess in the near fore. If it's poulticed and soaked, and he's still lame, call the vet.",
            ["- vet referral planned", "LF finding abscess"],
        ),
        (
            "Corn in the near fore. If he's lame, soaking it, still sore, ring the vet.",
            ["- vet referral planned", "LF finding corn"],
        ),
    ],
    "Tally. {}",
)

test_then_behind_a_month = reads(
    [
        (
            "She wants him shod for snow in December, so we'll do borium on the fronts then.",
            ["LF+RF traction borium planned"],
        ),
        ("Shows start in April, so I'll put studs on behind then.", ["LH+RH traction studs planned"]),
        ("He was here in December, and he'd borium on the fronts then.", ["LF+RF traction borium history"]),
    ],
    "Tally. {}",
)

test_what_i_come_back_to_do = reads(
    [
        (
            "Pulled the shoe off the left hind. I'm back in a week to put a new shoe on the left hind.",
            ["- next_visit_weeks 1 planned", "LH work new_shoe planned", "LH work removed"],
        ),
        (
            "Reset the fronts. Back in two weeks to pull the near hind and drain it again.",
            ["- next_visit_weeks 2 planned", "LF+RF work reset", "LH work removed planned"],
        ),
        (
            "I'm back in six weeks to do the fronts, new shoes, size two.",
            ["- next_visit_weeks 6 planned", "LF+RF shoe_size 2 planned", "LF+RF work new_shoe planned"],
        ),
        (
            "I'm back in a week to put a new shoe on the left hind, and I reset the fronts.",
            ["- next_visit_weeks 1 planned", "LF+RF work reset", "LH work new_shoe planned"],
        ),
        (
            "Back in five weeks to reset the fronts, hinds trimmed.",
            ["- next_visit_weeks 5 planned", "LF+RF work reset planned", "LH+RH work trim"],
        ),
        ("Reset in front, six weeks.", ["- next_visit_weeks 6 planned", "LF+RF work reset"]),
    ],
    "Tally. {}",
)

test_what_goes_on_then = reads(
    [
        (
            "They'd asked for boots on the fronts. I'd none with me to fit her, so the boots go on next week.",
            ["LF+RF shoe_type boot planned"],
        ),
        ("Bar shoe goes on the near fore Thursday.", ["LF shoe_type bar planned"]),
        (
            "Heart bars go on the fronts in a fortnight.",
            ["- next_visit_weeks 2 planned", "LF+RF shoe_type heart_bar planned"],
        ),
        (
            "Reset in front. The bar shoes go on the fronts next week.",
            ["LF+RF shoe_type bar planned", "LF+RF work reset"],
        ),
        (
            "She goes back in bar shoes next week, fronts.",
            ["- next_visit_weeks 1 planned", "LF+RF shoe_type bar planned"],
        ),
        ("They'd asked for boots on the fronts.", []),
        ("They'd asked for boots on the fronts, and I put them on.", ["LF+RF shoe_type boot"]),
        ("Boots go on the fronts for turnout.", ["LF+RF shoe_type boot"]),
        ("The boots go on, both fronts, size two.", ["LF+RF shoe_size 2", "LF+RF shoe_type boot"]),
    ],
    "Tansy. {}",
)
