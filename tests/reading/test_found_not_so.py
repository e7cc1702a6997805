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
    ("Tally, corn in the near fore. Nothing of the sort in the off fore.", ["LF finding corn", "RF finding corn absent"]),
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
test_told = reads([*TOLD, *WORSE])
test_cant_say = reads(CANT_SAY)
