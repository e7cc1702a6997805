"""What was thought to be gone, or hoped to be, and is there still; and what is gone although "it isn't" stands near."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES = [
    ("Tally. The crack in the right front, which I thought was gone, isn't.", ["RF finding crack"]),
    ("Tally. The corn that I said was gone isn't, right front.", ["RF finding corn"]),
    ("Tally. The thrush in the left hind, which was meant to be cleared up, hasn't.", ["LH finding thrush"]),
    ("Tally. The crack in the right front has grown half way out.", ["RF finding crack"]),
    ("Tally. The seedy toe in the near fore is two thirds grown out.", ["LF finding white_line_disease"]),
    ("Tally. The abscess in the off hind has all but dried up.", ["RH finding abscess"]),
    ("Tally. The quarter crack in the left hind has grown out.", ["LH finding crack resolved @quarter"]),
    (
        "Tally. Canker in the right hind, I'd marked it gone, and it isn't, it's there yet, in the frog, mild.",
        ["RH finding canker @frog ~mild"],
    ),
    (
        (
            "Tally. The scratches on his hinds, I told them last visit "
            "they'd clear, they haven't, still there on both, mild."
        ),
        ["LH+RH finding scratches ~mild"],
    ),
    (
        (
            "Tally. Near fore toe crack is gone, or so I was thinking, I "
            "rasped at it and, no, not gone, there's some left, mild."
        ),
        ["LF finding crack @toe ~mild"],
    ),
    (
        "Tally. The corn in the right front I thought had grown out, but it's still there, mild.",
        ["RF finding corn ~mild"],
    ),
    ("Tally. I had the near fore thrush down as cleared up but it hasn't cleared.", ["LF finding thrush"]),
    ("Tally. Thrush in the off hind, I wrote it up as gone, it's not gone.", ["RH finding thrush"]),
    (
        "Tally. The bruise in the left front, I told her it would be gone by now, it isn't, moderate.",
        ["LF finding bruise ~moderate"],
    ),
    ("Tally. Seedy toe in the near fore, gone I said last visit, well it's back.", ["LF finding white_line_disease"]),
    ("Tally. Thought the abscess in the right hind was healed. It isn't.", ["RH finding abscess"]),
    ("Tally. Near hind thrush, thought it had cleared, no such luck, still there.", ["LH finding thrush"]),
    ("Tally. Crack in the right front, it's gone, no, it isn't gone, it's only shorter.", ["RF finding crack"]),
    (
        "Tally. That toe crack in the right front, I'd hoped it'd be gone, it's still there, mild.",
        ["RF finding crack @toe ~mild"],
    ),
    (
        "Tally. The left hind thrush is gone, I was sure it was, then I looked closer and it's not.",
        ["LH finding thrush"],
    ),
    ("Tally. Thrush in the left hind has cleared up, and it isn't coming back.", ["LH finding thrush resolved"]),
    (
        "Tally. The corn in the right front is gone. Heat in the left hind. It isn't much.",
        ["LH finding heat", "RF finding corn resolved"],
    ),
    (
        "Tally. The abscess in the right hind has grown out and he hasn't been lame since.",
        ["- gait lame absent", "RH finding abscess resolved"],
    ),
    (
        "Tally. Thrush in both hinds, the right's cleared up and the left's still got it.",
        ["LH finding thrush", "RH finding thrush resolved"],
    ),
    (
        "Tally. I looked for a corn in the left front and there isn't one, the old one has grown out.",
        ["LF finding corn absent"],
    ),
    ("Tally. The crack in the left front has grown out, so if it comes back ring me.", ["LF finding crack resolved"]),
    ("Tally. I thought he'd thrush in the left hind, he hasn't.", ["LH finding thrush absent"]),
    (
        "Tally. Bruise in the left front is gone, no heat left there.",
        ["LF finding bruise resolved", "LF finding heat absent"],
    ),
    ("Tally. The left hind thrush hasn't cleared.", ["LH finding thrush"]),
    (
        "Tally. He had seedy toe in the near fore in January, it cleared, and it's back.",
        ["LF finding white_line_disease"],
    ),
    (
        "Buck. I'd had the off fore abscess closed in the book, cleared, and it hasn't, it's weeping yet.",
        ["RF finding abscess"],
    ),
    (
        "Tally. The mud fever on the hinds was gone, I told them, and it's there again on both, moderate.",
        ["LH+RH finding scratches ~moderate"],
    ),
    (
        ("Tally. I put the left hind canker down as healed last month. It's not, there's some left in the sulcus."),
        ["LH finding canker"],
    ),
    (
        ("Tally. I reckoned the quarter crack in the near fore had grown out, wishful thinking, it's still there."),
        ["LF finding crack @quarter"],
    ),
    (
        "Sable. Stone bruise in the right hind sole, should have been gone by now, it isn't, severe.",
        ["RH finding bruise @sole ~severe"],
    ),
    ("Sable. The keratoma in the near hind, the vet said it's gone, well, it never did go.", ["LH finding keratoma"]),
    (
        "Sable. The thrush in the frog of the off hind was away when I rang, and now it's back.",
        ["RH finding thrush @frog"],
    ),
    ("Sable. The flares on the fronts, we'd thought they were grown out, they weren't.", ["LF+RF finding flare"]),
    (
        "Sable. Corn in the left front, I had it down as gone, no, still there, medial heel.",
        ["LF finding corn @medial_heel"],
    ),
    (
        "Tally. Lame on the left hind, three out of five, no, two. Figured a puncture, it's not.",
        ["LH finding puncture absent", "LH lameness 2"],
    ),
    ("Tally. Thought it was an abscess in the near fore, it's not.", ["LF finding abscess absent"]),
    (
        "Tally. Left hind thrush is gone, but the right hind still has some left.",
        ["LH finding thrush resolved", "RH finding thrush"],
    ),
    (
        "Tally. Flare in the left front gone. No heat, it's not back.",
        ["LF finding flare resolved", "LF finding heat absent"],
    ),
    (
        "Tally. Thrush gone from the left hind, still there in the right.",
        ["LH finding thrush resolved", "RH finding thrush"],
    ),
    (
        "Tally. Bruise gone in the left front, still there in the right front.",
        ["LF finding bruise resolved", "RF finding bruise"],
    ),
    ("Tally. The corn is gone, not so the bruise, left front.", ["- finding corn resolved", "LF finding bruise"]),
    ("Tally. Swelling's gone down, not gone, in the left hind.", ["LH finding swelling"]),
    (
        "Tally. The puncture in the right hind healed, I thought it would never heal, but it did.",
        ["RH finding puncture resolved"],
    ),
    ("Tally. Is the thrush gone, no it isn't, left hind.", ["LH finding thrush"]),
    ("Tally. The thrush in the left hind hasn't gone, it's worse.", ["LH finding thrush"]),
    ("Tally. Canker in the off hind, thought we'd got rid of it, we hadn't.", ["RH finding canker"]),
    ("Tally. I'd told her the abscess was finished, near fore, and it wasn't.", ["LF finding abscess"]),
    ("Tally. Bruise gone in the left front.", ["LF finding bruise resolved"]),
    ("Tally. Thrush gone in both hinds.", ["LH+RH finding thrush resolved"]),
    ("Tally. Heat's gone in the near fore.", ["LF finding heat resolved"]),
    ("Tally. Corn is all gone in the off fore, and no heat.", ["RF finding corn resolved", "RF finding heat absent"]),
    ("Tally. Thrush in the left hind, should be gone in two weeks.", ["LH finding thrush"]),
    ("Tally. Thrush in the left hind, it'll be gone in a week.", ["LH finding thrush"]),
]

test_not_gone = reads(CASES)

test_the_right_of_a_foot_is_no_healing = reads(
    [
        ("Thrush in the right front, too soon to say.", ["RF finding thrush suspected"]),
        ("A corn in the right hind, too soon to say.", ["RH finding corn suspected"]),
        ("Right front, abscess, too soon to say.", ["RF finding abscess suspected"]),
        ("Bruise in the right fore, wouldn't swear to it, too soon.", ["RF finding bruise suspected"]),
        ("Thrush in the left hind, hoped it would come right, still there.", ["LH finding thrush"]),
        ("I thought the thrush in the left hind had gone, too soon.", ["LH finding thrush"]),
    ],
    "Buck. {}",
)

test_it_is_there = reads(
    [
        (
            (
                "Her off fore, the inside quarter crack, I thought it had gone, but no, it's "
                "there, it's just gone mild on me."
            ),
            ["RF finding crack @medial_quarter ~mild"],
        ),
        ("Right fore bruise, I'd marked it healed, it is there.", ["RF finding bruise"]),
        ("Crack in the near fore, I thought it had gone, and it has gone.", ["LF finding crack resolved"]),
        (
            "Thrush in the near hind, it's cleared, and it's there we put the iodine.",
            ["LH finding thrush resolved", "LH treatment iodine"],
        ),
    ],
    "Tally. {}",
)

test_gone_and_not_grown_again = reads(
    [
        (
            "The off hind had a flare till the last trim, that one's gone and hasn't grown again.",
            ["RH finding flare resolved"],
        ),
        ("She had a flare on the near fore, it's gone and hasn't grown back.", ["LF finding flare resolved"]),
        ("The off hind had a toe crack, I thought it'd be gone, and it hasn't grown out.", ["RH finding crack @toe"]),
    ],
    "Buck. {}",
)

test_still_a_bit = reads(
    [
        (
            "The mud fever on his near hind has cleared up. Still a bit on the off hind, mild.",
            ["LH finding scratches resolved", "RH finding scratches ~mild"],
        ),
        (
            "Thrush in the near fore is gone. Still a touch in the off fore.",
            ["LF finding thrush resolved", "RF finding thrush ~mild"],
        ),
        (
            "Thrush near fore has cleared up. A bit left in the off fore.",
            ["LF finding thrush resolved", "RF finding thrush ~mild"],
        ),
        (
            "Thrush near fore has cleared up, a bit yet in the off fore.",
            ["LF finding thrush resolved", "RF finding thrush ~mild"],
        ),
        (
            "No thrush in the near fore. Still a bit in the off fore, mild.",
            ["LF finding thrush absent", "RF finding thrush ~mild"],
        ),
        ("Thrush in both fores has cleared up. Still a bit sore on the off hind.", ["LF+RF finding thrush resolved"]),
        ("Corn in the near fore. Off fore still a bit on the long side.", ["LF finding corn"]),
        ("Corn near fore. Still a bit to come off the off fore.", ["LF finding corn"]),
        ("Lame near fore. Still a bit on the off fore.", ["LF gait lame"]),
    ],
    "Tansy. {}",
)
