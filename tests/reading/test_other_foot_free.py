"""A finding on some feet, and said in passing not to be on others: both are kept, each with its own place and degree.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_what_the_other_foot_has_not = reads(
    [
        (
            "Off fore has underrun heels, which the near fore hasn't.",
            ["LF finding underrun_heels absent", "RF finding underrun_heels"],
        ),
        (
            "Thrush in the left hind frog, which the right hind hasn't got.",
            ["LH finding thrush @frog", "RH finding thrush absent"],
        ),
        (
            "There's a crack on the left front, which the right front doesn't have.",
            ["LF finding crack", "RF finding crack absent"],
        ),
        (
            "Corn in the off fore, inside heel, something the near fore hasn't.",
            ["LF finding corn absent", "RF finding corn @medial_heel"],
        ),
        (
            "Scratches on the right hind, severe, and the left hind is free of them.",
            ["LH finding scratches absent", "RH finding scratches ~severe"],
        ),
        (
            "Flare on every foot bar the near hind, which hasn't any.",
            ["LF+RF+RH finding flare", "LH finding flare absent"],
        ),
        (
            "Growth rings on all four except the left hind, which has none.",
            ["LF+RF+RH finding growth_rings", "LH finding growth_rings absent"],
        ),
        (
            "Thrush in every foot but the off fore, which is clean.",
            ["LF+LH+RH finding thrush", "RF finding thrush absent"],
        ),
        (
            "Bruising all round bar the left hind, where there's none.",
            ["LF+RF+RH finding bruise", "LH finding bruise absent"],
        ),
        (
            "Flat soles on all feet barring the right hind, which isn't. Hardener on those three.",
            ["LF+RF+LH finding flat_sole", "LF+RF+LH treatment hardener", "RH finding flat_sole absent"],
        ),
        (
            "Left front, white line disease at the toe. Nothing of the sort on the right front.",
            ["LF finding white_line_disease @toe", "RF finding white_line_disease absent"],
        ),
        (
            "Seedy toe in the near fore. The off fore hasn't got it.",
            ["LF finding white_line_disease", "RF finding white_line_disease absent"],
        ),
        (
            "Seedy toe in the near fore. Off fore has no such thing.",
            ["LF finding white_line_disease", "RF finding white_line_disease absent"],
        ),
        ("No flares on anything.", ["LF+RF+LH+RH finding flare absent"]),
        ("No cracks on anything he stands on.", ["LF+RF+LH+RH finding crack absent"]),
        ("There's no thrush in anything.", ["LF+RF+LH+RH finding thrush absent"]),
        ("I did look for thrush and there was none in any foot.", ["LF+RF+LH+RH finding thrush absent"]),
        ("I looked for thrush and found none in any of them.", ["LF+RF+LH+RH finding thrush absent"]),
        ("I had a look for corns and there were none in either front.", ["LF+RF finding corn absent"]),
        (
            "Cracks, left front none, right front none, left hind one at the toe, right hind the same.",
            ["LF+RF finding crack absent", "LH+RH finding crack @toe"],
        ),
        (
            "Thrush then. Near fore none, off fore none, near hind a small bit in the frog, off hind the very same.",
            ["LF+RF finding thrush absent", "LH+RH finding thrush @frog ~mild"],
        ),
        (
            "I found no thrush in the hinds but there's some in the near fore, in the frog.",
            ["LF finding thrush @frog", "LH+RH finding thrush absent"],
        ),
        (
            "No thrush in the hinds, but a little in the left front, in the sulcus.",
            ["LF finding thrush @sulcus ~mild", "LH+RH finding thrush absent"],
        ),
        (
            "No bruising in the fronts, but there is in the left hind, at the toe.",
            ["LF+RF finding bruise absent", "LH finding bruise @toe"],
        ),
        (
            "No crack in the near fore but the off fore has one, at the toe.",
            ["LF finding crack absent", "RF finding crack @toe"],
        ),
        (
            "No thrush in the left hind but the right hind does, down in the sulcus, bad.",
            ["LH finding thrush absent", "RH finding thrush @sulcus ~severe"],
        ),
        (
            "No thrush in the fronts but the left hind's got some in the frog.",
            ["LF+RF finding thrush absent", "LH finding thrush @frog"],
        ),
        (
            "No thrush in the fronts, but both hinds have it, in the frog, mild.",
            ["LF+RF finding thrush absent", "LH+RH finding thrush @frog ~mild"],
        ),
        # what must not be taken for a denial
        (
            "Thrush in the left hind, which the vet looked at. Bruise in the right hind.",
            ["LH finding thrush", "RH finding bruise"],
        ),
        (
            "Near fore has a corn at the inside heel. He's not stood on anything sharp.",
            ["LF finding corn @medial_heel"],
        ),
        (
            "Thrush in the left hind but none in the right hind, in the frog it was.",
            ["LH finding thrush @frog", "RH finding thrush absent"],
        ),
        ("Flare on the left front but the right front is fine, at the quarter.", ["LF finding flare @quarter"]),
        (
            "A bruise in both fronts. Hinds have nothing on them, just trimmed.",
            ["LF+RF finding bruise", "LH+RH work trim"],
        ),
        (
            "No corns in the fores but there's one in the near hind, inside heel.",
            ["LF+RF finding corn absent", "LH finding corn @medial_heel"],
        ),
    ],
    "Tally. {}",
)

test_nor_was_it_ever_there = reads(
    [
        (
            "Not broken back any more in the near fore, and he never was in the off fore.",
            ["LF finding broken_back_axis resolved", "RF finding broken_back_axis absent"],
        ),
        (
            "He's still got contracted heels in the near fore, and the off fore hasn't any more.",
            ["LF finding contracted_heels", "RF finding contracted_heels resolved"],
        ),
        (
            "Canker in the near hind, none in the off hind anymore.",
            ["LH finding canker", "RH finding canker resolved"],
        ),
        (
            "Growth rings on the left front and the right front's got them too, and neither hind does.",
            ["LF+RF finding growth_rings", "LH+RH finding growth_rings absent"],
        ),
        # what has not gone is there, and a hind that is not due denies nothing
        (
            "The mud fever has cleared on the left hind, and on the right hind it hasn't, still moderate.",
            ["LH finding scratches resolved", "RH finding scratches ~moderate"],
        ),
        (
            "The thrush is gone from the near hind but in the off hind it isn't.",
            ["LH finding thrush resolved", "RH finding thrush"],
        ),
        (
            "The corn is bad in the near fore but the off fore hasn't it.",
            ["LF finding corn ~severe", "RF finding corn absent"],
        ),
        ("Growth rings on the fronts, neither hind was due.", ["LF+RF finding growth_rings"]),
    ],
    "Tally. {}",
)

test_nor_there = reads(
    [
        (
            "Looked at the right front for a quick. She isn't quicked there, nor is she on the left front.",
            ["LF+RF finding quicked absent"],
        ),
        ("No corn on the right front, nor is there in the left.", ["LF+RF finding corn absent"]),
        (
            "He's navicular in the left front, that's been filmed, and it ain't in the right front.",
            ["LF finding navicular", "RF finding navicular absent"],
        ),
        (
            "White line in the right hind is stretched, mild, left hind isn't stretched at all.",
            ["LH finding white_line_separation absent", "RH finding white_line_separation ~mild"],
        ),
        ("He'd loosened the near hind, not the off.", ["LH shoe_state loose", "RH shoe_state loose absent"]),
        ("No thrush in the near hind or in either of the fores.", ["LF+RF+LH finding thrush absent"]),
        # the feet that are named beside it stay, and what is joined by "nor" is another finding
        ("No thrush nor canker in the off hind.", ["RH finding canker absent", "RH finding thrush absent"]),
        ("White line in the right hind is tight.", []),
    ],
    "Tally. {}",
)

test_no_sign_of_one = reads(
    [
        (
            "A keratoma in the near fore. There's no trace of one in the off fore.",
            ["LF finding keratoma", "RF finding keratoma absent"],
        ),
        ("Thrush in the near hind. No sign of any in the off hind.", ["LH finding thrush", "RH finding thrush absent"]),
        ("Thrush in the near hind. No one has picked out the off hind.", ["LH finding thrush"]),
    ],
    "Tally. {}",
)

test_told_again_of_the_foot_that_has_none = reads(
    [
        (
            "A bruise in the near fore and none in the off fore, no bruise in that one.",
            ["LF finding bruise", "RF finding bruise absent"],
        ),
        (
            "Rotation in the left front and, um, none in the right front, there's no rotation in that one.",
            ["LF finding rotation", "RF finding rotation absent"],
        ),
        (
            "Thrush in the left hind, none in the right hind, there's no thrush in that one.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        ("Sidebone, none that I can feel in either front.", ["LF+RF finding sidebone absent"]),
    ],
)


test_none_there_as_somebody_says = reads(
    [
        (
            "Thrush in the left hind, and she has none in the right hind.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "Thrush in the left hind, and he said there's none in the right hind.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "Thrush in the left hind, and the owner says there's none in the right hind.",
            ["LH finding thrush", "RH finding thrush absent"],
        ),
        (
            "Corn in the near fore, I'd have none of it in the off fore, he snatched it away.",
            ["LF finding corn"],
        ),
        (
            "A crack in the left hind, I looked and found none in the right hind.",
            ["LH finding crack", "RH finding crack absent"],
        ),
        (
            "It's navicular in the left front, the vet said, and said the right front doesn't have it.",
            ["LF finding navicular", "RF finding navicular absent"],
        ),
        ("The owner said thrush in the left hind, and I found none in the left hind.", ["LH finding thrush absent"]),
        ("The owner said thrush in the left hind, and I found none there.", ["LH finding thrush absent"]),
    ]
)
