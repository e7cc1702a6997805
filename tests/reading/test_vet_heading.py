"""The vet as a heading and the answer behind it.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_the_vet_as_a_heading = reads(
    [
        ("Vet: not needed.", ["- vet referral absent"]),
        ("Vet: no.", ["- vet referral absent"]),
        ("Vet: none needed.", ["- vet referral absent"]),
        ("Vet: not required this time.", ["- vet referral absent"]),
        ("Vet, not this time.", ["- vet referral absent"]),
        ("Vet: not called for.", ["- vet referral absent"]),
        ("Vet, no, not yet.", ["- vet referral absent"]),
        ("The vet, not needed.", ["- vet referral absent"]),
        ("As for the vet, no need of him.", ["- vet referral absent"]),
        ("Vet. Not needed.", ["- vet referral absent"]),
        ("Vet: none. Next: six weeks.", ["- next_visit_weeks 6 planned", "- vet referral absent"]),
        ("Vet: nothing for him.", ["- vet referral absent"]),
        ("Vet: yes.", ["- vet referral planned"]),
        ("Vet: to see the right front.", ["- vet referral planned"]),
        ("Vet: needed.", ["- vet referral planned"]),
        ("Vet, please.", ["- vet referral planned"]),
        ("Vet: no heat in the left front, he says.", ["LF finding heat absent"]),
        ("Vet, no, farrier. Thrush in the left hind.", ["LH finding thrush"]),
        ("The vet, yes, I know him well. Thrush in the left hind.", ["LH finding thrush"]),
        ("Vet: not happy with the left front.", []),
        ("The vet. No heat in the left front.", ["LF finding heat absent"]),
    ],
    "Buck. {}",
)
