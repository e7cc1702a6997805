"""An opinion of what lies hidden in the foot is a doubt; what is seen from outside is not doubted by "I'd say".

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_opinions = reads(
    [
        ("Bruise in the off fore, from a stone I reckon.", ["RF finding bruise"]),
        ("Corn in the near fore, probably from a shoe left on too long.", ["LF finding corn"]),
        ("Heat in the near fore maybe from the hard ground.", ["LF finding heat"]),
        ("Growth rings on the fronts, since the feed changed I'd guess.", ["LF+RF finding growth_rings"]),
        (
            "Heat in the off fore, from an abscess I reckon.",
            ["RF finding abscess suspected", "RF finding heat"],
        ),
        ("Maybe a corn in the off fore, from the look of it.", ["RF finding corn suspected"]),
        ("From the look of the off fore, a corn I reckon.", ["RF finding corn suspected"]),
        # it is doubted from where it was seen
        ("The hinds have flares, but I couldn't swear to it from here.", ["LH+RH finding flare suspected"]),
        (
            "There's a flare on the off hind, I couldn't swear to it from where I stood.",
            ["RH finding flare suspected"],
        ),
        ("The fronts look like they have flares, I couldn't get near.", ["LF+RF finding flare suspected"]),
        (
            "There's a crack in the near hind, but I couldn't tell you for sure from outside.",
            ["LH finding crack suspected"],
        ),
        ("It doesn't look like an abscess in the near fore.", ["LF finding abscess absent"]),
        (
            "Strong at the testers, off hind. I'd say it's an abscess but I couldn't get to it.",
            ["RH finding abscess suspected", "RH tester strong"],
        ),
        ("A keratoma in the right front, at the toe, nothing's confirmed.", ["RF finding keratoma suspected @toe"]),
        ("Navicular in the left front. Nothing certain.", ["LF finding navicular suspected"]),
        ("Abscess in the off hind, it's not been confirmed yet.", ["RH finding abscess suspected"]),
        ("The vet thinks it's a keratoma in the right front.", ["RF finding keratoma suspected"]),
        ("The vets reckon there's navicular in both fronts.", ["LF+RF finding navicular suspected"]),
        ("The vet thinks he needs a bar shoe on the left front.", ["LF shoe_type bar planned"]),
        ("The vet's confirmed the keratoma in the right front.", ["RF finding keratoma"]),
        ("Off hind, I'd say abscess.", ["RH finding abscess suspected"]),
        ("I'd say he's got a keratoma in the left front.", ["LF finding keratoma suspected"]),
        ("I'd call it a puncture, right hind.", ["RH finding puncture suspected"]),
        ("Abscess in the left hind, couldn't get to it today.", ["LH finding abscess suspected"]),
        ("Abscess in the near fore and I never did get down to it.", ["LF finding abscess suspected"]),
        ("A keratoma in the right front but I couldn't find it.", ["RF finding keratoma suspected"]),
        (
            "I'd say an abscess in the left front, and a bruise in the right.",
            ["LF finding abscess suspected", "RF finding bruise"],
        ),
        ("Happen I pricked him with the last one, near fore.", ["LF finding quicked suspected"]),
        ("Happen it's a corn in the left front.", ["LF finding corn suspected"]),
        ("Happen he's got thrush in the off hind.", ["RH finding thrush suspected"]),
        ("Right hind, happen there's an abscess brewing.", ["RH finding abscess suspected"]),
        ("Happen she has a bruise in the near fore.", ["LF finding bruise suspected"]),
        ("Off fore's warm, happen it's a puncture.", ["RF finding heat", "RF finding puncture suspected"]),
        ("I'd say the abscess in the left front has burst.", ["LF finding abscess"]),
        ("I'd say no abscess in the left front.", ["LF finding abscess absent"]),
        ("I wouldn't say it's an abscess in the left front.", ["LF finding abscess absent"]),
        ("Left front, I'd say thin sole.", ["LF finding thin_sole"]),
        ("Crack in the left front, moderate I'd say.", ["LF finding crack ~moderate"]),
        ("Abscess in the left front, drained it, easy to get to it.", ["LF finding abscess", "LF treatment drained"]),
        ("Thrush in the left hind, I couldn't get to it.", ["LH finding thrush"]),
        ("I happen to have reset the left front.", ["LF work reset"]),
        ("These things happen, he lost the left front shoe.", ["LF shoe_state lost"]),
    ],
    "Buck. {}",
)

test_what_is_not_ruled_out_is_suspected = reads(
    [
        (
            "Ringbone in the off hind, and I'd not rule out ringbone in the near hind too.",
            ["LH finding ringbone suspected", "RH finding ringbone"],
        ),
        ("I would not rule out a corn in the near fore.", ["LF finding corn suspected"]),
        ("A keratoma can't be ruled out in the off fore.", ["RF finding keratoma suspected"]),
        ("The vet hasn't ruled out navicular in the left front.", ["LF finding navicular suspected"]),
        ("An abscess in the near hind, I couldn't rule it out.", ["LH finding abscess suspected"]),
        ("The vet ruled out navicular in the left front.", ["LF finding navicular absent"]),
        ("Sidebone was ruled out in the off fore.", ["RF finding sidebone absent"]),
    ],
    "Buck. {}",
)

test_suspected_behind_what_is = reads(
    [
        (
            "A keratoma suspected at the toe of the near fore, that's the vet's notion and I'd go along with him.",
            ["LF finding keratoma suspected @toe"],
        ),
        (
            "Ringbone suspected in the off hind, heat in the near hind.",
            ["LH finding heat", "RH finding ringbone suspected"],
        ),
        ("No navicular suspected in the off fore, the vet's view.", ["RF finding navicular absent"]),
        ("Pulse bounding in the left front, that's got me thinking.", ["LF pulse bounding"]),
        ("Heat in the off hind, and it has me wondering.", ["RH finding heat"]),
    ],
    "Tansy. {}",
)

test_thought_and_still_suspected = reads(
    [
        (
            "The off hind, I thought there was ringbone in it, and I only suspect it, I can't feel it well.",
            ["RH finding ringbone suspected"],
        ),
        ("I thought there was a corn in the near fore, I still suspect one.", ["LF finding corn suspected"]),
        ("I thought there was a corn in the near fore and there wasn't.", ["LF finding corn absent"]),
        ("I suspect it's the heel, I thought there was a bruise in the off fore, no.", ["RF finding bruise absent"]),
    ],
    "Tansy. {}",
)

test_a_white_line_that_may_part = reads(
    [
        ("White line could be stretching right front, not sure.", ["RF finding white_line_separation suspected"]),
        ("The white line may be separating in the off hind.", ["RH finding white_line_separation suspected"]),
        ("White line could do with a clean in the right front.", []),
    ],
    "Tansy. {}",
)

test_i_hope_i_am_wrong = reads(
    [
        (
            "Might be canker in the frog of the near hind, I hope to God I'm wrong. Off hind grand, no canker in it.",
            ["LH finding canker suspected @frog", "RH finding canker absent"],
        ),
        (
            "Navicular in the near fore, I hope I'm wrong. Heat in the off fore.",
            ["LF finding navicular suspected", "RF finding heat"],
        ),
        ("I said near fore, I'm wrong, it's the off fore that has the corn.", ["RF finding corn"]),
    ],
    "Tansy. {}",
)

test_half_a_doubt = reads(
    [
        ("I half wonder is he starting a ringbone on the off fore.", ["RF finding ringbone suspected"]),
        ("I half suspect navicular in the near fore.", ["LF finding navicular suspected"]),
        (
            "The question was navicular, and the films say no, there is no navicular in the left front.",
            ["LF finding navicular absent"],
        ),
        ("The worry was a corn in the near hind, there isn't one.", ["LH finding corn absent"]),
        ("Lameness exam with the vet there. He's a one out of five on the left front.", ["LF lameness 1"]),
        (
            "Don't know who's been telling the vet she's got thrush, she don't, not in any foot.",
            ["LF+RF+LH+RH finding thrush absent"],
        ),
        ("No need to tell the vet.", ["- vet referral absent"]),
        (
            "The off fore. I'm not sure of the heels, they might be starting to shear.",
            ["RF finding sheared_heels suspected"],
        ),
        ("Today I'd call him maybe a little short on the right front.", ["RF gait short_stride suspected ~mild"]),
        ("She's a bit short on the left hind.", ["LH gait short_stride ~mild"]),
        ("He's a bit short on manners.", []),
    ],
    "Tally. {}",
)

test_which_of_two_it_is = reads(
    [
        (
            "Off fore, I can't decide if it's a corn or a bruise.",
            ["RF finding bruise suspected", "RF finding corn suspected"],
        ),
        (
            "Near fore, couldn't make up my mind whether it's an abscess or a bruise.",
            ["LF finding abscess suspected", "LF finding bruise suspected"],
        ),
        (
            "Left front, a corn or a bruise, couldn't swear to it.",
            ["LF finding bruise suspected", "LF finding corn suspected"],
        ),
        (
            "It's either an abscess or a bruise in the near fore.",
            ["LF finding abscess suspected", "LF finding bruise suspected"],
        ),
        ("No corn or bruise in either fore.", ["LF+RF finding bruise absent", "LF+RF finding corn absent"]),
        (
            "A corn and a bruise in the near fore, no heat in either.",
            ["LF finding bruise", "LF finding corn", "LF+RF finding heat absent"],
        ),
        (
            "Corn or bruise in the off fore. Might be either.",
            ["RF finding bruise suspected", "RF finding corn suspected"],
        ),
        (
            "Corn in the off fore and a bruise in the near fore, I suspect.",
            ["LF finding bruise suspected", "RF finding corn"],
        ),
        ("Corn in the off fore. Can't make up my mind about the pads.", ["RF finding corn"]),
    ],
    "Tally. {}",
)

test_no_surprise = reads(
    [
        ("I'd not be surprised to find seedy toe in the near fore.", ["LF finding white_line_disease suspected"]),
        ("Off fore, I wouldn't be surprised to see an abscess there.", ["RF finding abscess suspected"]),
        ("It'd not surprise me if there's a keratoma in the left front.", ["LF finding keratoma suspected"]),
        ("Not surprised, no thrush in the near hind.", ["LH finding thrush absent"]),
    ],
    "Tally. {}",
)

test_short_on_a_foot = reads(
    [
        ("She's a small bit short on that near fore, or she might be.", ["LF gait short_stride suspected ~mild"]),
        ("He's still a touch short on the off hind.", ["RH gait short_stride ~mild"]),
        (
            "He has ringbone in the near fore, if you remember, and he probably has the start of it in the off fore.",
            ["LF finding ringbone", "RF finding ringbone suspected"],
        ),
        # of the shoe, of the hoof
        ("The old shoe was short on the off hind.", []),
        ("The wall's short on the off hind.", []),
    ],
    "Tally. {}",
)

test_cannot_be_certain = reads(
    [
        (
            "I rather think the heels are sheared on the right hind, though I cannot be certain.",
            ["RH finding sheared_heels suspected"],
        ),
        ("A corn in the off fore, though I could not be sure.", ["RF finding corn suspected"]),
        ("I rather suspect an abscess in the near fore.", ["LF finding abscess suspected"]),
        # said of something else
        ("There's a corn in the off fore, and I cannot tell you how he hates that.", ["RF finding corn"]),
    ],
    "Tally. {}",
)

test_what_they_swore_to_and_was_not_found = reads(
    [
        (
            "They swore Tansy had an abscess. I pared the right front and never found one.",
            ["RF finding abscess absent"],
        ),
        ("She insisted there was a corn in the left front. I looked and never found one.", ["LF finding corn absent"]),
        ("They thought Tansy had a bruise in the off hind. I looked, there wasn't one.", ["RH finding bruise absent"]),
        # his own suspicion may be right all the same
        ("I suspect an abscess in the left front. I never found one.", ["LF finding abscess suspected"]),
    ],
    "Tansy. {}",
)

test_doubted_is_only_what_it_was = reads(
    [
        ("She stepped on a nail, a fencing nail I reckon. Puncture in the left hind.", ["LH finding puncture"]),
        ("Puncture in the right hind, an old roofing nail I think.", ["RH finding puncture"]),
        (
            "Puncture in the off fore, a piece of glass, I reckon, and a poultice on.",
            ["RF finding puncture", "RF treatment poultice"],
        ),
        ("Something in the right hind, a puncture I think.", ["RH finding puncture suspected"]),
        ("I reckon a puncture in the left fore, a nail.", ["LF finding puncture suspected"]),
    ],
    "Tansy. {}",
)

test_a_doubt_of_the_other_foot = reads(
    [
        ("Left front has a corn, right front I couldn't tell.", ["LF finding corn"]),
        ("Left front's got thrush in the frog. Right front, I couldn't say.", ["LF finding thrush @frog"]),
        ("Corn in the near hind, the off I couldn't tell.", ["LH finding corn"]),
        ("Corn in the near fore, the off fore maybe one as well.", ["LF finding corn", "RF finding corn suspected"]),
        # the doubt of the foot itself
        ("Corn in the near fore, I couldn't tell for certain.", ["LF finding corn suspected"]),
        (
            "Thrush in the near hind, off hind a corn, I couldn't swear to it.",
            ["LH finding thrush", "RH finding corn suspected"],
        ),
        (
            "A corn in the left front or the right front, I'm not sure.",
            ["LF+RF finding corn suspected"],
        ),
    ]
)

test_where_it_is_behind_who_says_so = reads(
    [
        ("The owner's calling it founder, and I'd agree, in the near fore.", ["LF finding laminitis"]),
        ("Laminitis, the vet says, in both fronts.", ["LF+RF finding laminitis"]),
        ("Lame, the owner reckons, on the off fore.", ["RF gait lame"]),
        ("Laminitis, and he's sore, in both fronts there's heat.", ["- finding laminitis", "LF+RF finding heat"]),
    ]
)

test_the_degree_is_what_is_guessed = reads(
    [
        ("There's heat in the right front, I want to say mild.", ["RF finding heat ~mild"]),
        ("Thrush in the near hind, I'd guess moderate.", ["LH finding thrush ~moderate"]),
        ("There might be thrush in the near hind, I want to say mild.", ["LH finding thrush suspected ~mild"]),
        ("Pulse normal in the near hind, maybe mild thrush.", ["LH finding thrush suspected ~mild", "LH pulse normal"]),
    ]
)

test_a_suspicion = reads(
    [
        ("I've a suspicion the near fore is thin soled.", ["LF finding thin_sole suspected"]),
        ("I've a sneaking suspicion there's an abscess in the off hind.", ["RH finding abscess suspected"]),
        ("A corn in the near fore, but it's only a suspicion.", ["LF finding corn suspected"]),
    ]
)

test_a_feeling_and_other_guesses = reads(
    [
        ("I have my suspicions of a keratoma at the toe of the near hind.", ["LH finding keratoma suspected @toe"]),
        ("I've my suspicions about a keratoma in the near hind.", ["LH finding keratoma suspected"]),
        ("A keratoma at the toe of the near hind, I have my suspicions.", ["LH finding keratoma suspected @toe"]),
        ("I have a bad feeling about laminitis in both fores.", ["LF+RF finding laminitis suspected"]),
        ("I've a fair idea there's an abscess in the off fore.", ["RF finding abscess suspected"]),
        ("Could very well be an abscess, right front.", ["RF finding abscess suspected"]),
        ("All the signs point to navicular in the near fore.", ["LF finding navicular suspected"]),
        ("I wouldn't be shocked if there's a keratoma in the near fore.", ["LF finding keratoma suspected"]),
        ("I wouldn't discount a keratoma in the near hind.", ["LH finding keratoma suspected"]),
        ("If I had to put money on it I'd say a corn, off fore.", ["RF finding corn suspected"]),
        # no guess
        ("I had my suspicions about a keratoma and there's none, near hind.", ["LH finding keratoma absent"]),
        ("He was feeling the corn in the near fore.", ["LF finding corn"]),
    ],
    "Tally. {}",
)

test_maybe_at_the_end = reads(
    [
        (
            "Canker, I think it is, in the off hind frog, I wouldn't bet the house on it, iodine on it anyway.",
            ["RH finding canker suspected @frog", "RH treatment iodine"],
        ),
        ("Abscess in the off fore, I'd not stake my life on it.", ["RF finding abscess suspected"]),
        ("Three down at the flapping yard, fores reset.", ["LF+RF work reset"]),
        ("Sheared heels in the near hind maybe, I'll know next time.", ["LH finding sheared_heels suspected"]),
        ("Thrush near fore possibly, I'd not swear.", ["LF finding thrush suspected"]),
        ("Abscess in the off fore maybe, wait and see.", ["RF finding abscess suspected"]),
        ("Bruise in the near fore perhaps, he's tender on the stones.", ["LF finding bruise suspected"]),
        ("Corn near fore, maybe a bruise.", ["LF finding bruise suspected", "LF finding corn"]),
        ("Thrush near hind, studs maybe next time.", ["LH finding thrush", "LH traction studs planned"]),
        (
            "Corn near fore. I'd be back in six weeks maybe, we'll see.",
            ["- next_visit_weeks 6 planned", "LF finding corn"],
        ),
        ("No thrush near fore maybe, I'd look again.", ["LF finding thrush absent"]),
    ],
    "Tansy. {}",
)
