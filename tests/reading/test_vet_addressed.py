"""Memos spoken to the vet: he is asked to look, or spared the way; "you" said to anybody else is nothing.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_asked_to_look = reads(
    [
        (
            "Doctor, this is about Tally. Reset the fronts. Should he slip back, I'd want you to look at him again.",
            ["- vet referral planned", "LF+RF work reset"],
        ),
        (
            "Update for the clinic on Tally. Reset the fronts. I'd like you out this week please.",
            ["- vet referral planned", "LF+RF work reset"],
        ),
        (
            "For the clinic, a first report on Tally. Reset the fronts. Please come and film the left front again.",
            ["- vet referral planned", "LF+RF work reset"],
        ),
        (
            "Tally, for the doctor's file. Reset in front. Back in two weeks, please see him before the pad is off.",
            ["- next_visit_weeks 2 planned", "- vet referral planned", "LF+RF work reset"],
        ),
        (
            "Doc, Tally's the one you blocked in the fall. Reset the fronts. Could you take films of that left front?",
            ["- vet referral planned", "LF+RF work reset"],
        ),
        (
            "Report for the vet on Tally. Trimmed all four. I'd be glad if you had a look at her.",
            ["- vet referral planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "Tally, the mare you x-rayed. Trimmed all four. You'll want to see that right front.",
            ["- vet referral planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "A note for the clinic on Tally. Trimmed all four. If he's no better I'd want you to look at him.",
            ["- vet referral planned", "LF+RF+LH+RH work trim"],
        ),
        (
            "Doctor, Tally. Trimmed all four. Would you mind looking at that left hind.",
            ["- vet referral planned", "LF+RF+LH+RH work trim"],
        ),
    ],
)

test_spared = reads(
    [
        (
            "Following up on Tally, doctor. Reset the fronts. There is no need for you to come out on my account.",
            ["- vet referral absent", "LF+RF work reset"],
        ),
        (
            "Tally, I'm sending this on to the vet. Reset the fronts. You needn't come out for that.",
            ["- vet referral absent", "LF+RF work reset"],
        ),
        (
            "Report for the vet on Tally. Trimmed all four. I won't trouble you with it.",
            ["- vet referral absent", "LF+RF+LH+RH work trim"],
        ),
        (
            "A note for the clinic on Tally. Trimmed all four. You don't need to see him again.",
            ["- vet referral absent", "LF+RF+LH+RH work trim"],
        ),
        (
            "Doctor, about Tally. Reset all four. I don't think you need to come.",
            ["- vet referral absent", "LF+RF+LH+RH work reset"],
        ),
        (
            "Doctor, Tally. Trimmed all four. I wouldn't want you to come out specially.",
            ["- vet referral absent", "LF+RF+LH+RH work trim"],
        ),
    ],
)

test_only_spoken_to = reads(
    [
        (
            "Doctor, Tally again. Your films gave us four degrees of rotation in the left front.",
            ["LF finding rotation"],
        ),
        (
            "Doctor, Tally again. You wanted heart bars on the fronts, so that's what she has.",
            ["LF+RF shoe_type heart_bar"],
        ),
        (
            "Doctor, Tally again. Trimmed all four. Please send films. Please see my notes. As you know she kicks.",
            ["LF+RF+LH+RH work trim"],
        ),
        (
            "Doctor, Tally again. Trimmed all four, as you asked. When you see her next, check the sole.",
            ["LF+RF+LH+RH work trim"],
        ),
        (
            "Tally, for the owner. Trimmed all four. I'd like you out here to hold her next time.",
            ["LF+RF+LH+RH work trim"],
        ),
        (
            "Tally. Trimmed all four. You should see the place. Please come and look at the state of the gate.",
            ["LF+RF+LH+RH work trim"],
        ),
        ("Tally's off to the clinic on Friday. Trimmed all four. You should see her go.", ["LF+RF+LH+RH work trim"]),
    ],
)
