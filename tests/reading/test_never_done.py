"""What was nearly done or would have been done is no fact; shoes that come off if something happens are planned."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    ("Tally. I nearly pulled his shoes there and then, but he goes better with iron on, so I didn't.", []),
    ("Tally. I almost took the shoes off in front, but I left them on.", []),
    ("Tally. Very nearly pulled the left front shoe, then thought better of it.", []),
    ("Tally. I was this close to pulling the hinds, and I didn't.", []),
    ("Tally. I'd half a mind to pull both front shoes, but I left them.", []),
    (
        "Tally. If he's no easier by Tuesday the hind shoes come off and he goes in boots behind.",
        ["LH+RH shoe_type boot planned", "LH+RH work removed planned"],
    ),
    ("Tally. If he's sore next week the shoes come off in front.", ["LF+RF work removed planned"]),
    ("Tally. If the heat's still there Monday the near fore shoe comes off.", ["LF work removed planned"]),
    (
        "Tally. Unless she picks up by Friday the front shoes are coming off and it's boots in front.",
        ["LF+RF shoe_type boot planned", "LF+RF work removed planned"],
    ),
    ("Tally. I nearly put pads on him in front, but I didn't.", []),
    ("Tally. I almost put egg bars on the fronts, then I didn't bother.", []),
    ("Tally. I nearly quicked him in the left front.", []),
    ("Tally. Came near putting a wedge under the right front and then I left it.", []),
    ("Tally. I'd have soaked it only the kettle was cold, so a poultice on the off hind.", ["RH treatment poultice"]),
    ("Tally. I would have poulticed the left front but she'd none, so I bandaged it.", ["LF treatment bandage"]),
    ("Tally. Left front, I'd have drained it but it wasn't ready, poultice on it.", ["LF treatment poultice"]),
    ("Tally. He could have done with studs behind but the lad said no.", []),
    ("Tally. Hinds reset, I'd have trimmed them bare only he's working on the road.", ["LH+RH work reset"]),
    (
        "Tally. Would have used bar shoes on the fronts except I'd run out, so plain steel, size one.",
        ["LF+RF shoe_material steel", "LF+RF shoe_size 1", "LF+RF shoe_type plain"],
    ),
    ("Tally. I thought of wedging him, and then, well, I let it be.", []),
    (
        "Buck. He'd almost lost the off hind, it was hanging loose, so I reset it.",
        ["RH shoe_state loose", "RH work reset"],
    ),
    ("Buck. I nearly pricked him in the near fore, but no, he was fine.", []),
    (
        "Buck. I'd a good mind to leave her bare behind, anyway, reset the hinds, six nails each.",
        ["LH+RH nails 6", "LH+RH work reset"],
    ),
    (
        ("Buck. I'd have gone to egg bars and full pads in front, only the owner won't pay, so rim shoes in front."),
        ["LF+RF shoe_type rim"],
    ),
    (
        ("Buck. Almost switched him to aluminum in front and then stuck with steel. New steel in front, size two."),
        ["LF+RF shoe_material steel", "LF+RF shoe_size 2", "LF+RF work new_shoe"],
    ),
    ("Buck. I came close to opening that abscess in the left hind, but I left it for the vet.", ["LH finding abscess"]),
    ("Buck. Would have liked to put a wedge on the right front but she said no.", []),
    ("Buck. The crack in the left front is nearly grown out.", ["LF finding crack"]),
    ("Buck. Reset the fronts, nearly out of nails, six each.", ["LF+RF nails 6", "LF+RF work reset"]),
    ("Buck. I pulled the hinds and I nearly pulled the fronts too.", ["LH+RH work removed"]),
    ("Buck. He's almost a size two in front. New shoes in front.", ["LF+RF shoe_size 2", "LF+RF work new_shoe"]),
    ("Buck. Front shoes off and left off, he'd have been lame by Sunday.", ["LF+RF work removed"]),
    ("Buck. If the shoe comes off the left front again I'll glue it.", []),
    ("Buck. His shoes come off every winter. Reset all four.", ["LF+RF+LH+RH work reset"]),
    ("Buck. When she's in foal the hind shoes will come off.", ["LH+RH work removed planned"]),
    ("Buck. Next time the front shoes are to come off.", ["LF+RF work removed planned"]),
    ("Buck. The left front shoe came off in the field.", ["LF shoe_state lost"]),
    ("Buck. I'd have him back in four weeks.", ["- next_visit_weeks 4 planned"]),
]

test_never_done = reads(CASES)

_BACK_ON = ["LF shoe_state lost", "LF work put_back"]
test_hoped_for_and_managed = reads(
    [
        *(
            (f"Lost the near fore. {said}", _BACK_ON)
            for said in (
                "I hoped to nail it back on, and I managed it.",
                "I hoped to nail it back on, and I did.",
                "I wanted to nail it back on and got it done.",
                "I meant to tack it back on, and did.",
                "I managed to nail it back on.",
                "Was able to tack it back on.",
            )
        ),
        ("I hoped to trim all four and managed it.", ["LF+RF+LH+RH work trim"]),
        ("I wanted to reset the hinds, and got that done.", ["LH+RH work reset"]),
        ("I'd planned to reset all four, and that's what I did.", ["LF+RF+LH+RH work reset"]),
        *(
            (f"Lost the near fore. {said}", ["LF shoe_state lost"])
            for said in (
                "I hoped to nail it back on but couldn't.",
                "I hoped to nail it back on, and couldn't.",
                "I hoped to nail it back on.",
                "I couldn't nail it back on.",
                "Wasn't able to nail it back on.",
                "Too broken up to nail it back on.",
                "No point trying to nail it back on.",
                "Owner asked me to nail it back on.",
            )
        ),
        ("Lost the near fore. I'll nail it back on tomorrow.",
         ["LF shoe_state lost", "LF work put_back planned"]),
        ("I meant to reset the hinds, and didn't.", []),
        ("I meant to reset the hinds, and I did the fronts.", []),
    ],
    "Tally. {}",
)  # fmt: skip
