"""When to come back, in every frame, and what only lasts some weeks or happens within them."""

from __future__ import annotations

from itertools import product

from tests.reading.conftest import reads

BACK = (
    "{}.", "Back in {}.", "See him again in {}.", "Give her {}.", "Call it {}.", "No later than {}.",
    "Not a day over {}.",
    "Next trim in {}.", "Reset again in {}.", "Due a trim in {}.", "If he's lame on it I want to see him in {}.",
    "He won't go past {}.", "Put him down for {}.", "It's too dry, so {}.",
)  # fmt: skip
SPANS = {"six weeks": 6, "a couple of weeks": 2, "a month": 4, "four to six weeks": 4, "five, no, seven weeks": 7}

test_when_to_come_back = reads(
    [
        (frame.format(span), [f"- next_visit_weeks {weeks} planned", "LH finding thrush"])
        for frame, (span, weeks) in product(BACK, SPANS.items())
    ],
    "Tally. Thrush in the left hind. {}",
)

LASTS = (
    "Ring me in a week.", "Text me in a couple of weeks.", "He was sore for a week.", "No riding for two weeks.",
    "Walk him out for a week.", "Turn him out for a month.", "Hand walking for two weeks.", "Keep it dry for a week.",
    "The owner's away for three weeks.", "Should be right in a week.", "They want to sell him in a month.",
    "He goes hunting in four weeks.", "The season starts in six weeks.", "It'll take six months to grow out.",
    "That'll grow out in a couple of months.", "Bring him back into work in a month.", "They left him nine weeks.",
    "It came on a week after I was here.", "Six weeks was too long.", "Eight weeks is too long for him.",
    "He's gone nine weeks.", "He's overdue by two weeks.", "A couple of weeks ago he was fine.",
    "It was supposed to be six weeks but it was nine.",
)  # fmt: skip

test_what_lasts_is_no_next_visit = reads(
    [(text, ["LH finding thrush"]) for text in LASTS],
    "Tally. Thrush in the left hind. {}",
)

test_what_lasts_leaves_the_next_visit = reads(
    [(f"{text} Back in five weeks.", ["- next_visit_weeks 5 planned", "LH finding thrush"]) for text in LASTS],
    "Tally. Thrush in the left hind. {}",
)

test_work_and_weeks = reads(
    [
        ("Ring me in six weeks.", ["- next_visit_weeks 6 planned"]),
        ("Put him down for six weeks.", ["- next_visit_weeks 6 planned"]),
        ("Trim the hinds in six weeks.", ["- next_visit_weeks 6 planned", "LH+RH work trim planned"]),
        ("Trimmed the hinds, six weeks.", ["- next_visit_weeks 6 planned", "LH+RH work trim"]),
        ("Reset all round. Again in six weeks.", ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work reset"]),
        ("Eight weeks is too long for her, so I said five.", ["- next_visit_weeks 5 planned"]),
        ("The thrush is gone, nine weeks.", ["- finding thrush resolved", "- next_visit_weeks 9 planned"]),
    ],
    "Tally. {}",
)

VET = (
    "The vet had better see it.", "I've told the owner vet.", "She's booked in with the vet.",
    "Could do with the vet looking.",
    "It'd be no harm to have the vet look at it.", "I want films from the vet.", "Get on to the vet.",
    "Get hold of the vet.", "Give the vet a bell.", "The vet needs to know.", "Would be worth the vet looking.",
)  # fmt: skip

test_the_vet_is_to_look = reads(
    [(f"Corn in the near fore.{sep}{text}", ["- vet referral planned", "LF finding corn"])
     for text, sep in product(VET, (" ",))],
    "Tally. {}",
)  # fmt: skip

_LONG_AGO = """\
Reset in front. Didn't see Tally in eight weeks.
Hadn't seen her in nine weeks. Reset in front.
I haven't seen her in nine weeks, reset in front.
Reset in front. Didn't get to her for eight weeks.
Nobody's touched him in nine weeks. Reset in front.
Reset in front. Hadn't laid eyes on her in nine weeks.
First time I've seen her in nine weeks. Reset in front.
Didn't trim him in eight weeks. Reset in front.
"""
_BACK_IN_SIX = """\
Reset in front. If I haven't heard, see her in six weeks.
Reset in front, never had a bother, see her in six weeks.
Reset in front. I haven't shod her for years, back in six weeks.
Reset in front. I'll see her in six weeks.
Not been done in twelve weeks. Reset in front. Back in six weeks.
Reset in front. We didn't get it all, so see her in six weeks.
"""
test_how_long_it_has_been = reads([(text, ["LF+RF work reset"]) for text in _LONG_AGO.splitlines()], "Tally. {}")
test_how_long_it_will_be = reads(
    [(text, ["- next_visit_weeks 6 planned", "LF+RF work reset"]) for text in _BACK_IN_SIX.splitlines()], "Tally. {}"
)
