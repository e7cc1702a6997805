"""What may have to be done is planned; the vet who may have to look is a referral; thrush free has none."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    (
        "Tally. I may have to go to a three degree wedge on the fronts.",
        ["LF+RF pad wedge planned", "LF+RF wedge 3 planned"],
    ),
    ("Tally. We might have to put bar shoes on the fronts.", ["LF+RF shoe_type bar planned"]),
    ("Tally. Might need to resect the right front.", ["RF treatment resection planned"]),
    ("Tally. I'd have to put glue-ons on the fronts if those walls get worse.", ["LF+RF shoe_type glue_on planned"]),
    ("Tally. We may need to take the hinds off.", ["LH+RH work removed planned"]),
    ("Tally. He might have to be sedated.", ["- manner sedated planned"]),
    ("Tally. I'm going to have to use studs on the hinds.", ["LH+RH traction studs planned"]),
    ("Tally. I had to put bar shoes on the fronts.", ["LF+RF shoe_type bar"]),
    ("Tally. The vet may have to look at her.", ["- vet referral planned"]),
    ("Tally. The vet might have to be called.", ["- vet referral planned"]),
    ("Tally. The vet will need to see that foot.", ["- vet referral planned"]),
    ("Buck. Thrush free all round.", ["LF+RF+LH+RH finding thrush absent"]),
    ("Buck. Thrush-free in both hinds.", ["LH+RH finding thrush absent"]),
    ("Buck. All four crack free.", ["LF+RF+LH+RH finding crack absent"]),
    ("Buck. Abscess free now in the left hind.", ["LH finding abscess absent"]),
    ("Buck. Thrush in the left hind, the others free.", ["LF+RF+RH finding thrush absent", "LH finding thrush"]),
    ("Buck. Both fronts are bruise free, corn in the off fore.", ["LF+RF finding bruise absent", "RF finding corn"]),
    ("Buck. Used to forge, doesn't now.", ["- gait forge resolved"]),
    ("Buck. He used to interfere, doesn't do it now.", ["- gait interfere resolved"]),
]

test_may_have_to = reads(CASES)
