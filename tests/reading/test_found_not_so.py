"""What was told or thought and is nothing of the sort, and a denial that is said in a roundabout way."""

from __future__ import annotations

from tests.reading.conftest import reads

TOLD = [
    (
        "Tally, his fronts I was told were contracted in the heels. They're nothing of the sort, lovely and open.",
        ["LF+RF finding contracted_heels absent"],
    ),
    ("Tally, they told me he was sound. He's nothing of the kind, he's lame on the near hind.", ["LH gait lame"]),
    ("Tally, the owner says he's sound. He's nothing of the sort.", ["- gait lame"]),
    ("Tally, the girl swore there was a corn in the near fore. Nothing of the kind.", ["LF finding corn absent"]),
    ("Tally, they said the off fore was hot. No such thing, cold as a stone.", ["RF finding heat absent"]),
    ("Tally, supposed to have laminitis in front. He has no such thing.", ["LF+RF finding laminitis absent"]),
    ("Tally, they told me he was quiet. He's nothing of the kind.", []),
    (
        "Tally, they told me the white line was separated in the fronts. It isn't, tight as a drum.",
        ["LF+RF finding white_line_separation absent"],
    ),
    ("Tally, the owner told me the thrush in the near hind was gone. It's nothing of the sort.", ["LH finding thrush"]),
    (
        "Tally, corn in the near fore. Nothing of the sort in the off fore.",
        ["LF finding corn", "RF finding corn absent"],
    ),
]
WORSE = [
    ("Tally, the crack in the near fore is no better, it's gone up to the coronary band.", ["LF finding crack"]),
    ("Tally, the crack in the near fore is no better. Far from it.", ["LF finding crack"]),
    ("Tally, thrush near hind, it's gone deeper.", ["LH finding thrush"]),
    ("Tally, near fore, the heat's gone up the leg.", ["LF finding heat"]),
    ("Tally, the crack in the near fore has gone.", ["LF finding crack resolved"]),
    ("Tally, swelling near hind, gone down.", ["LH finding swelling resolved"]),
]
CANT_SAY = [
    ("Tally, I can't say I found any heat in either front.", ["LF+RF finding heat absent"]),
    ("Tally, couldn't say I felt a pulse in either front.", ["LF+RF pulse normal"]),
    ("Tally, I can't say there was any reaction to the testers on the near fore.", ["LF tester none"]),
    ("Tally, can't say I didn't find a bit of thrush in the off hind.", ["RH finding thrush ~mild"]),
    ("Tally, I can't say there's no thrush in the near hind.", ["LH finding thrush suspected"]),
    ("Tally, can't say I like the crack in the off fore.", ["RF finding crack"]),
]
TURNED = [
    ("Tally, I'd be lying if I said she'd no thrush, it's in both hinds.", ["LH+RH finding thrush"]),
    ("Tally, it'd be a lie to say there's no flare in the fronts.", ["LF+RF finding flare"]),
    ("Tally, I'd be a liar if I told you there was thrush in the off hind.", ["RH finding thrush absent"]),
    ("Tally, don't tell me that isn't thrush in the near hind.", ["LH finding thrush"]),
    ("Tally, don't anyone tell me there's no heat in the off fore.", ["RF finding heat"]),
    ("Tally, they tell me there's no heat in the off fore.", ["RF finding heat absent"]),
    ("Tally, off fore, it looked like a keratoma, but a keratoma it is not.", ["RF finding keratoma absent"]),
    ("Tally, lame he is not.", ["- gait lame absent"]),
    ("Tally, corn it is, near fore heel.", ["LF finding corn @heel"]),
    ("Tally, pulse anything but normal in the near fore.", ["LF pulse raised"]),
    ("Tally, pulse is far from normal in the off fore.", ["RF pulse raised"]),
    ("Tally, testers on the near fore were far from positive.", ["LF tester none"]),
    (
        "Tally, the testers were anything but positive, I got nothing in the near fore and nothing in the off fore.",
        ["LF+RF tester none"],
    ),
    (
        "Tally, there's nothing strong about her answer to the testers, mild on the off fore at the toe.",
        ["RF tester mild @toe"],
    ),
    ("Tally, there's nothing mild about that thrush in the near hind.", ["LH finding thrush"]),
]
EVERY = [
    ("Tally, there isn't one of his four feet that hasn't got growth rings.", ["LF+RF+LH+RH finding growth_rings"]),
    ("Tally, there's not a foot on him that hasn't thrush.", ["LF+RF+LH+RH finding thrush"]),
    ("Tally, neither front is without a corn.", ["LF+RF finding corn"]),
    ("Tally, no thrush in the near fore and the off fore is free of it.", ["LF+RF finding thrush absent"]),
]
OTHER_THAN = [
    (
        "Tally, I wouldn't say there was anything wrong with the left front other than a corn at the inside heel.",
        ["LF finding corn @medial_heel"],
    ),
    ("Tally, there was no fault in the near fore other than a corn.", ["LF finding corn"]),
    ("Tally, couldn't find a thing wrong with the near fore besides a bruise at the toe.", ["LF finding bruise @toe"]),
    ("Tally, no corn other than the one in the near fore.", ["LF finding corn"]),
    ("Tally, I wouldn't say there was any thrush in the left hind.", ["LH finding thrush absent"]),
]
ANSWERS = [
    (
        "Tally. Any white line disease in the hinds? I looked, both of them, and no, not a trace, so I trimmed them.",
        ["LH+RH finding white_line_disease absent", "LH+RH work trim"],
    ),
    ("Tally. Any thrush in the hinds? I had a good look and there's none.", ["LH+RH finding thrush absent"]),
    ("Tally. Any thrush in the near hind? Not that I found.", ["LH finding thrush absent"]),
    ("Tally, did I find a corn in the off fore? I did, plain as day, in the heel.", ["RF finding corn @heel"]),
    ("Tally, did I find a corn in the off fore? I did not.", ["RF finding corn absent"]),
    ("Tally. Did I check him for thrush? I did, and none.", ["- finding thrush absent"]),
    ("Tally. Did I check for thrush? I did. Near fore has a wee bit.", ["LF finding thrush ~mild"]),
    ("Tally. Any thrush in the near hind? There's none in the off.", ["RH finding thrush absent"]),
    ("Tally, is that heat in the off fore? It is, round the coronary band.", ["RF finding heat @coronary_band"]),
]
test_told = reads([*TOLD, *WORSE])
test_cant_say = reads([*CANT_SAY, *TURNED, *EVERY])
test_answers = reads([*OTHER_THAN, *ANSWERS])

test_asked_and_answered = reads(
    [
        (
            "Off hind. She asked me was it canker. It wasn't, just thrush.",
            ["RH finding canker absent", "RH finding thrush"],
        ),
        ("Off hind. He asked me if it was an abscess. It is not.", ["RH finding abscess absent"]),
        (
            "Off hind. They asked me was it an abscess. It was, and I drained it.",
            ["RH finding abscess", "RH treatment drained"],
        ),
        ("They asked me was it thrush in the off hind. No, canker.", ["RH finding canker"]),
        ("They asked me was she sound. She was not.", ["- gait lame"]),
        ("The owner was saying laminitis. No sign of it.", ["- finding laminitis absent"]),
        ("They told me there's thrush in the off hind. Not a trace of it.", ["RH finding thrush absent"]),
        ("She said he had an abscess, off fore. There's no sign of it.", ["RF finding abscess resolved"]),
        ("Had an abscess in the off fore. No sign of it.", ["RF finding abscess resolved"]),
        ("Off hind. Can't say I found any sign of that abscess.", ["RH finding abscess absent"]),
        ("Off hind. Can't say I've found any sign of an abscess.", ["RH finding abscess absent"]),
        ("Off hind. Can't say I'm surprised, there's an abscess.", ["RH finding abscess"]),
        ("Off hind. Nothing of the old abscess is left.", ["RH finding abscess resolved"]),
        ("Off hind. Nothing is left of the crack.", ["RH finding crack resolved"]),
        ("Off hind. Nothing of the frog is left. Thrush.", ["RH finding thrush"]),
    ],
    "Tansy. {}",
)

test_has_not_got_it = reads(
    [
        (
            "Tally, he's a laminitis waiting to happen, but he hasn't got it, no heat in either fore.",
            ["- finding laminitis absent", "LF+RF finding heat absent"],
        ),
        ("Tally, they were all worried about laminitis, but he hasn't got it.", ["- finding laminitis absent"]),
        ("Tally, I looked for thrush in the near fore, but he hasn't got it.", ["LF finding thrush absent"]),
        ("Tally, thrush in the near fore. She hasn't got it in the off fore.",
         ["LF finding thrush", "RF finding thrush absent"]),
        ("Tally, corn in the near fore, and he hasn't got it easy.", ["LF finding corn"]),
        ("Tally, corn in the near fore last time and she hasn't got it now.", ["LF finding corn resolved"]),
    ]
)  # fmt: skip
