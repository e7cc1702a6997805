"""Denials in other words, exceptions to a denial, what was wanted and refused, and what an old finding left.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_denial_in_other_words = reads(
    [
        ("Wouldn't say there's heat in the left front.", ["LF finding heat absent"]),
        ("I'd not call that thrush in the left hind.", ["LH finding thrush absent"]),
        ("Hardly what you'd call thrush in the off hind.", ["RH finding thrush absent"]),
        ("Lacks any flare on the fronts.", ["LF+RF finding flare absent"]),
        ("I was wrong about the thrush in the left hind.", ["LH finding thrush absent"]),
        ("The crack in the left front turned out to be nothing.", ["LF finding crack absent"]),
        ("What looked like a corn in the near fore was only dirt.", ["LF finding corn absent"]),
        ("False alarm on the abscess in the right front.", ["RF finding abscess absent"]),
        ("Far from lame on the left front.", ["LF gait lame absent"]),
        ("Anything but lame.", ["- gait lame absent"]),
        ("Nor is there any bruise in the right hind.", ["RH finding bruise absent"]),
        ("Testers drew a blank on the right front.", ["RF tester none"]),
        ("Digital pulse nothing to write home about in the fronts.", ["LF+RF pulse normal"]),
        ("I don't see any sign of the old abscess in the left front.", ["LF finding abscess resolved"]),
        ("No mistaking the thrush in the left hind.", ["LH finding thrush"]),
        ("There's no denying the flare on the left front.", ["LF finding flare"]),
        ("Not without thrush in the off hind.", ["RH finding thrush"]),
        ("The corn in the off fore isn't as bad as it was.", ["RF finding corn"]),
        ("Not sure there isn't a corn in the off fore.", ["RF finding corn suspected"]),
        ("Wouldn't call it a bad crack in the left front.", ["LF finding crack"]),
        ("A flare far from the coronet in the left front.", ["LF finding flare @coronary_band"]),
    ],
    "Tansy. {}",
)

test_what_he_is_not_thought_to_be_is_denied = reads(
    [
        (
            "I don't think he's foundered, but the testers were mild, both fores.",
            ["- finding laminitis absent", "LF+RF tester mild"],
        ),
        ("I don't believe she's really foundered.", ["- finding laminitis absent"]),
        ("I don't reckon he's lame on the off fore.", ["RF gait lame absent"]),
        ("I don't think she's interfering now.", ["- gait interfere absent"]),
        # he is, and for something else
        ("I don't think he's lame enough to rest, left front.", ["LF gait lame"]),
        ("I don't think he's lame from the corn in the left front.", ["LF finding corn", "LF gait lame"]),
        ("I think he's foundered.", ["- finding laminitis suspected"]),
    ],
    "Tansy. {}",
)

test_what_is_not_seen_behind_its_foot_is_denied = reads(
    [
        (
            "There's a keratoma they were worried about, right front, but I don't see one.",
            ["RF finding keratoma absent"],
        ),
        ("There's thrush she'd told me of, left hind, but I couldn't see any.", ["LH finding thrush absent"]),
        ("A crack he told me of, off fore, and I can't find one.", ["RF finding crack absent"]),
        # something else is not seen
        ("There's a corn, right front, but I don't see any heat.", ["RF finding corn", "RF finding heat absent"]),
    ],
    "Tansy. {}",
)

test_a_denial_with_an_exception_is_there_on_it = reads(
    [
        ("No thrush anywhere bar the left hind.", ["LF+RF+RH finding thrush absent", "LH finding thrush"]),
        ("No flare on any of them but the off fore.", ["LF+LH+RH finding flare absent", "RF finding flare"]),
        (
            "No thrush in any foot except the left hind, which is bad.",
            ["LF+RF+RH finding thrush absent", "LH finding thrush ~severe"],
        ),
        (
            "Wasn't any thrush in the hinds, bar a touch in the left.",
            ["LH finding thrush ~mild", "RH finding thrush absent"],
        ),
        ("Thrush in every foot but the off fore.", ["LF+LH+RH finding thrush"]),
    ],
    "Tansy. {}",
)

test_what_is_not_of_today = reads(
    [
        ("Owner wanted bar shoes in front, I said no.", []),
        ("They wanted her in rim pads on the fronts. Told them no.", []),
        ("She asked for full pads all round, I said no. Reset the fronts.", ["LF+RF work reset"]),
        ("Owner wanted egg bars in front, not happening, so plain shoes.", ["LF+RF shoe_type plain"]),
        ("Owner wanted bar shoes in front, so that's what I put on.", ["LF+RF shoe_type bar"]),
        ("Sedated next time or I'm not doing it.", ["- manner sedated planned"]),
        ("In six weeks the fronts get leather pads.", ["- next_visit_weeks 6 planned", "LF+RF pad leather planned"]),
        ("There's a scar from an old abscess in the left front.", ["LF finding abscess history"]),
        ("Hole of an old puncture in the right front.", ["RF finding puncture history"]),
        ("Old bruise in the left front.", ["LF finding bruise"]),
    ],
    "Tansy. {}",
)

test_ruled_out = reads(
    [
        ("Navicular's been ruled out in both fronts.", ["LF+RF finding navicular absent"]),
        ("An abscess has been ruled out in the left front.", ["LF finding abscess absent"]),
        ("Sidebone and ringbone have been ruled out.", ["- finding ringbone absent", "- finding sidebone absent"]),
        ("Left front has thrush and sidebone was ruled out.", ["LF finding sidebone absent", "LF finding thrush"]),
    ],
    "Tally. {}",
)

test_not_ruled_out = reads(
    [
        ("Navicular hasn't been ruled out in the left front.", ["LF finding navicular suspected"]),
        ("Canker isn't ruled out in the left hind.", ["LH finding canker suspected"]),
        ("A keratoma in the right front can't be ruled out.", ["RF finding keratoma suspected"]),
    ],
    "Tally. {}",
)

test_thought_by_others_and_not_there = reads(
    [
        (
            "The lad thought he felt heat in the near fore, but I had my hand on it a good while and there's none.",
            ["LF finding heat absent"],
        ),
        (
            "The girl swore he had a corn in the left hind, I pared down and spent an age looking, there was none.",
            ["LH finding corn absent"],
        ),
        (
            "They told me there was swelling in the right hind, I stood him square and looked, and there isn't any.",
            ["RH finding swelling absent"],
        ),
        (
            "The lad thought he felt heat in the near fore, and there's none in the off fore.",
            ["LF finding heat", "RF finding heat absent"],
        ),
        ("The lad felt heat in the near fore, and I felt it too.", ["LF finding heat"]),
    ],
    "Tally. {}",
)

test_less_than_it_was_has_no_degree = reads(
    [
        ("Not nearly as bad near fore thrush.", ["LF finding thrush"]),
        ("Near fore thrush, nowhere near as bad.", ["LF finding thrush"]),
        ("Near hind thrush, nothing like as bad as it was.", ["LH finding thrush"]),
        ("Near fore thrush isn't anywhere near as bad.", ["LF finding thrush"]),
        ("Near fore thrush not quite as severe.", ["LF finding thrush"]),
        ("Nowhere near as bad a crack in the off fore.", ["RF finding crack"]),
        ("The near fore isn't as shelly as it was.", ["LF finding weak_wall"]),
        ("Testers on the near fore not nearly as strong.", ["LF tester positive"]),
        ("Near fore testers, not as sore at the toe.", ["LF tester positive @toe"]),
        ("Testers not so strong on the near fore.", ["LF tester positive"]),
        # as bad, or denied
        ("Near fore thrush is as bad as ever.", ["LF finding thrush ~severe"]),
        ("The thrush is every bit as bad in the near fore.", ["LF finding thrush ~severe"]),
        ("Testers on the near fore, not sore.", ["LF tester none"]),
        ("Testers on the near fore, not so much as a flinch.", ["LF tester none"]),
        ("Near fore thrush, not so bad.", ["LF finding thrush ~mild"]),
    ],
    "Tally. {}",
)

test_denied_twice = reads(
    [
        ("Near hind. I won't say there isn't thrush in it.", ["LH finding thrush suspected"]),
        ("Off fore. I couldn't tell you there isn't a corn in it, because there is.", ["RF finding corn"]),
        (
            "Off fore. I'm not going to tell you there's no bruise, because there is, a bad one.",
            ["RF finding bruise ~severe"],
        ),
        ("Off fore. There isn't a bruise, because I looked.", ["RF finding bruise absent"]),
        ("Off fore. I'd say there isn't an abscess in it.", ["RF finding abscess absent"]),
        (
            "Off fore. Might be an abscess because there is a bit of heat.",
            ["RF finding abscess suspected", "RF finding heat ~mild"],
        ),
        (
            "There isn't a foot on him without a touch of thrush in the frog.",
            ["LF+RF+LH+RH finding thrush @frog ~mild"],
        ),
        ("None of his feet is without thrush.", ["LF+RF+LH+RH finding thrush"]),
        ("Near fore, trimmed. There isn't a foot without flare.", ["LF work trim", "LF+RF+LH+RH finding flare"]),
        ("It isn't only thrush in the near hind, there's canker too.", ["LH finding canker", "LH finding thrush"]),
        ("It isn't the left that has the corn, it's the right front.", ["RF finding corn"]),
        (
            "It isn't only the left that has the flat sole in front, the right is every bit as flat.",
            ["LF+RF finding flat_sole"],
        ),
    ],
    "Tansy. {}",
)

test_less_than_it_was = reads(
    [
        ("The sole isn't as thin as it was.", ["RF finding thin_sole"]),
        ("The sole isn't as thin as it was but it's thin yet.", ["RF finding thin_sole"]),
        ("The heels aren't as contracted as they were, but they're contracted yet.", ["RF finding contracted_heels"]),
        ("The wall isn't as weak as before.", ["RF finding weak_wall"]),
        ("The sole isn't thin.", ["RF finding thin_sole absent"]),
        ("The sole isn't thin any more.", ["RF finding thin_sole resolved"]),
    ],
    "Tansy, off fore. {}",
)

test_not_the_same = reads(
    [
        ("Can't say the same for the off.", ["LH finding thrush absent", "RH finding thrush suspected"]),
        ("Couldn't say the same about the off hind.", ["LH finding thrush absent", "RH finding thrush suspected"]),
        (
            "I can't say the same for the off one, quarter crack.",
            ["LH finding thrush absent", "RH finding crack @quarter"],
        ),
        ("I can say the same for the off.", ["LH+RH finding thrush absent"]),
    ],
    "Tansy, no thrush in the near hind. {}",
)
