"""Told the long way round: a part of a foot before what it is, the vet wished for, a gait given up, only a trim."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = [
    ("Tally. The heels of the near hind are sheared.", ["LH finding sheared_heels"]),
    ("Tally. The heels on the near hind are sheared.", ["LH finding sheared_heels"]),
    ("Tally. The heels of the off fore are underrun.", ["RF finding underrun_heels"]),
    ("Tally. The heels of the left front are contracted.", ["LF finding contracted_heels"]),
    ("Tally. The toes of both fronts are long.", ["LF+RF finding long_toe"]),
    ("Tally. The sole of the right front is thin.", ["RF finding thin_sole"]),
    ("Tally. The wall of the near fore is shelly.", ["LF finding weak_wall"]),
    ("Tally. The soles of the fronts are flat.", ["LF+RF finding flat_sole"]),
    ("Tally. The pastern of the left hind is broken back.", ["LH finding broken_back_axis"]),
    ("Tally. The white line of the near fore is stretched.", ["LF finding white_line_separation"]),
    ("Tally. The vet passed her sound and needn't see her again.", ["- gait sound", "- vet referral absent"]),
    (
        "Tally. The vet, who was there for a foal, passed him sound and needn't see him again.",
        ["- gait sound", "- vet referral absent"],
    ),
    ("Tally. Vet's seen it and needn't be troubled again.", ["- vet referral absent"]),
    ("Tally. The vet was here Monday, is happy, and doesn't need to come back.", ["- vet referral absent"]),
    ("Tally. I'd sooner the vet looked at that foot.", ["- vet referral planned"]),
    ("Tally. I'd rather the vet saw it.", ["- vet referral planned"]),
    ("Tally. I'd prefer the vet had a look at that.", ["- vet referral planned"]),
    ("Tally. I'd be happier if the vet looked at him.", ["- vet referral planned"]),
    ("Tally. I'd as soon the vet came out to him.", ["- vet referral planned"]),
    ("Tally. It's high time the vet looked at it.", ["- vet referral planned"]),
    ("Tally. I'd feel better with the vet looking at it.", ["- vet referral planned"]),
    ("Tally. No harm if the vet saw that foot.", ["- vet referral planned"]),
    ("Tally. I'd sooner the vet didn't have to come.", []),
    ("Tally. I'd rather the vet than me.", []),
    ("Tally. He'd rather stand than walk, and needn't come in till spring.", []),
    ("Tally was brushing in the autumn and has given it up entirely.", ["- gait interfere resolved"]),
    ("Tally. He was brushing behind last time and has stopped.", ["LH+RH gait interfere resolved"]),
    ("Tally. Was overreaching in the winter, he's quit that.", ["- gait overreach resolved"]),
    ("Tally. She was short striding in March and she's not now.", ["- gait short_stride resolved"]),
    ("Tally used to interfere, hasn't done it since.", ["- gait interfere resolved"]),
    ("Tally. He used to overreach, he isn't doing it now.", ["- gait overreach resolved"]),
    ("Tally. Interfering behind in the autumn, gave it up once he was fit.", ["LH+RH gait interfere resolved"]),
    ("Tally. He's forging still.", ["- gait forge"]),
    ("Tally. Heat in the left front, I've quit worrying about it.", ["LF finding heat"]),
    ("Tally. He was forging in the spring and he's forging now.", ["- gait forge", "- gait forge history"]),
    ("Tally. In front there was nothing done bar a reset.", ["LF+RF work reset"]),
    ("Tally. Nothing done behind but a trim.", ["LH+RH work trim"]),
    ("Tally. Only a trim behind.", ["LH+RH work trim"]),
    ("Tally. I did no more than trim the hinds.", ["LH+RH work trim"]),
    ("Tally. The hinds got nothing but a trim.", ["LH+RH work trim"]),
    ("Tally. Nothing needed in front except a reset.", ["LF+RF work reset"]),
    ("Tally. Didn't do anything behind beyond a trim.", ["LH+RH work trim"]),
    ("Tally. All he had behind was a trim.", ["LH+RH work trim"]),
    ("Tally. No work to the hinds except a trim.", ["LH+RH work trim"]),
    ("Tally. Behind, no more than a reset.", ["LH+RH work reset"]),
    ("Tally. Nothing at all done in front, apart from a trim.", ["LF+RF work trim"]),
    ("Tally. Didn't trim the hinds, reset the fronts.", ["LF+RF work reset"]),
]


@pytest.mark.parametrize(("text", "facts"), CASES)
def test_said_round(read: Read, text: str, facts: list[str]) -> None:
    assert told(read(text, "Tally", "Buck", "Sable")[0]) == facts
