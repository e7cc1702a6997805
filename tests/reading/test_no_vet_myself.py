"""A farrier who says that he is no vet says nothing of the vet."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    ("Tally. Lameness three. I'm no vet, so ask the vet.", ["- lameness 3", "- vet referral planned"]),
    (
        "Tally. Corn in the near fore. I'm no vet but it looks like navicular in the off fore.",
        ["LF finding corn", "RF finding navicular suspected"],
    ),
    ("Tally. Lameness three. I'm not a vet. Get the vet out.", ["- lameness 3", "- vet referral planned"]),
    ("Tally. Lameness three. I am not the vet, so I left it at that.", ["- lameness 3"]),
    (
        "Tally. Lameness three. I'm no veterinarian, but the vet should look at it.",
        ["- lameness 3", "- vet referral planned"],
    ),
    ("Tally. Lameness three. I'm not calling the vet.", ["- lameness 3", "- vet referral absent"]),
    ("Tally. Lameness three. No vet needed.", ["- lameness 3", "- vet referral absent"]),
    ("Tally. Lameness three. Not one for the vet.", ["- lameness 3", "- vet referral absent"]),
]
test_no_vet_myself = reads(CASES)
