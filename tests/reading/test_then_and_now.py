"""A finding or a score of then beside that of now.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_a_degree_of_then_and_one_of_now = reads(
    [
        (
            "The off fore has a crack at the inside heel, which was severe last time and I'd say it's moderate now.",
            ["RF finding crack @medial_heel ~moderate", "RF finding crack history @medial_heel ~severe"],
        ),
        (
            "Flare in the left hind, it was moderate in March and I'm calling it mild now.",
            ["LH finding flare history ~moderate", "LH finding flare ~mild"],
        ),
        (
            "Thrush in the right hind, was bad last visit, I would call it mild today.",
            ["RH finding thrush history ~severe", "RH finding thrush ~mild"],
        ),
        (
            "Canker in the near hind frog, it was severe in January and it's mild now.",
            ["LH finding canker @frog ~mild", "LH finding canker history @frog ~severe"],
        ),
        (
            "Canker in the near hind frog, it was severe in January, it's mild now.",
            ["LH finding canker @frog ~mild", "LH finding canker history @frog ~severe"],
        ),
        (
            "Thrush in the left hind, that was bad last time and it's mild now.",
            ["LH finding thrush history ~severe", "LH finding thrush ~mild"],
        ),
        (
            "Thrush in the left hind, was severe last visit, mild now.",
            ["LH finding thrush history ~severe", "LH finding thrush ~mild"],
        ),
        (
            "Crack at the toe, left front, moderate last time and mild now.",
            ["LF finding crack @toe ~mild", "LF finding crack history @toe ~moderate"],
        ),
        (
            "Flare in both fronts, they were severe last year and they're mild now.",
            ["LF+RF finding flare history ~severe", "LF+RF finding flare ~mild"],
        ),
        (
            "A year ago she had contracted heels in both fronts, severe, and now they're mild, both of them.",
            ["LF+RF finding contracted_heels history ~severe", "LF+RF finding contracted_heels ~mild"],
        ),
        (
            "She had thrush in the left hind last time, severe. It's mild now.",
            ["LH finding thrush history ~severe", "LH finding thrush ~mild"],
        ),
        (
            "Last time the left front crack was severe, today it's moderate.",
            ["LF finding crack history ~severe", "LF finding crack ~moderate"],
        ),
        (
            "Left hind thrush was bad the last day, it's only slight now. Iodine on it.",
            ["LH finding thrush history ~severe", "LH finding thrush ~mild", "LH treatment iodine"],
        ),
        (
            "Left hind had severe thrush last visit, now it's mild.",
            ["LH finding thrush history ~severe", "LH finding thrush ~mild"],
        ),
        (
            "Thrush in the left hind, mild last time. It's bad today. Corn in the right front, severe.",
            ["LH finding thrush history ~mild", "LH finding thrush ~severe", "RF finding corn ~severe"],
        ),
    ]
)

test_another_finding_is_not_graded = reads(
    [
        ("Corn in the right front, I'd say it's mild today.", ["RF finding corn ~mild"]),
        (
            "Thrush in the left hind, severe last time, and I'd say the corn in the right front is mild now.",
            ["LH finding thrush history ~severe", "RF finding corn ~mild"],
        ),
        (
            "He had thrush in the left hind last time, severe, and a corn in the right front, mild today.",
            ["LH finding thrush history ~severe", "RF finding corn ~mild"],
        ),
        ("She had thrush in the left hind last time, and it's still there now.", ["LH finding thrush"]),
        (
            "Thrush in the left hind last time. Corn in the left front, mild today.",
            ["LF finding corn ~mild", "LH finding thrush history"],
        ),
    ]
)

test_scores_that_went_up_or_down = reads(
    [
        (
            "Condition score five, down from a seven. She doesn't need the vet.",
            ["- body_condition 5", "- body_condition 7 history", "- vet referral absent"],
        ),
        ("Condition score's a five, dropped from a six.", ["- body_condition 5", "- body_condition 6 history"]),
        ("Condition score six, up from a four in the spring.", ["- body_condition 4 history", "- body_condition 6"]),
        ("Cresty neck three, up from a two.", ["- cresty_neck 2 history", "- cresty_neck 3"]),
        ("Body condition five, that's down from an eight.", ["- body_condition 5", "- body_condition 8 history"]),
    ]
)

test_gone_from_one_foot_and_still_in_the_other = reads(
    [
        (
            "Left hind had white line separation at the quarter last time and that's gone. "
            "Right hind's still got it at the quarter, moderate.",
            [
                "LH finding white_line_separation resolved @quarter",
                "RH finding white_line_separation @quarter ~moderate",
            ],
        ),
        (
            "Left hind had thrush last visit, that's cleared up. Right hind still has it, mild.",
            ["LH finding thrush resolved", "RH finding thrush ~mild"],
        ),
        (
            "The thrush in the near hind is gone. The off hind's still got it.",
            ["LH finding thrush resolved", "RH finding thrush"],
        ),
        (
            "The thrush in the near hind is gone. Off hind's still loose.",
            ["LH finding thrush resolved", "RH shoe_state loose"],
        ),
        (
            "The corn in the near fore is gone. Off fore's got a new shoe.",
            ["LF finding corn resolved", "RF work new_shoe"],
        ),
    ]
)

test_they_are_not_on_the_other_foot = reads(
    [
        (
            "Underrun heels on the off fore, the near fore hasn't got them.",
            ["LF finding underrun_heels absent", "RF finding underrun_heels"],
        ),
        (
            "Heels are contracted on the left front, the right front doesn't have them.",
            ["LF finding contracted_heels", "RF finding contracted_heels absent"],
        ),
        ("Flares on both fronts, hinds haven't got them.", ["LF+RF finding flare", "LH+RH finding flare absent"]),
    ]
)

test_leaning_towards_is_a_doubt = reads(
    [
        ("Right front, I'm leaning toward a corn in there.", ["RF finding corn suspected"]),
        (
            "Right front, I'm leaning toward a corn in there. Stood quiet.",
            ["- manner quiet", "RF finding corn suspected"],
        ),
        ("Left front, I'm inclined to say bruise.", ["LF finding bruise suspected"]),
        ("He kept leaning on me. Thrush in the right front.", ["RF finding thrush"]),
    ]
)

test_how_bad_it_is_today = reads(
    [
        (
            (
                "Tally. When I started on her a year ago she had contracted heels in both "
                "fronts, severe, and now they're mild, both of them."
            ),
            ["LF+RF finding contracted_heels history ~severe", "LF+RF finding contracted_heels ~mild"],
        ),
        (
            "Tally. He had severe thrush in the left hind last visit, today it's only mild.",
            ["LH finding thrush history ~severe", "LH finding thrush ~mild"],
        ),
        (
            "Tally. Last time he had thrush in the left hind, bad, and it's moderate now.",
            ["LH finding thrush history ~severe", "LH finding thrush ~moderate"],
        ),
        (
            "Tally. Bad scratches on the right hind last month, now they're down to mild.",
            ["RH finding scratches history ~severe", "RH finding scratches ~mild"],
        ),
        (
            "Tally. She'd severe canker in the near hind in January, and it's mild now.",
            ["LH finding canker history ~severe", "LH finding canker ~mild"],
        ),
        (
            "Tally. Canker in the near hind frog, it was severe in January and it's mild now.",
            ["LH finding canker @frog ~mild", "LH finding canker history @frog ~severe"],
        ),
        (
            "Tally. White line disease in the right front was severe last fall, it's mild today.",
            ["RF finding white_line_disease history ~severe", "RF finding white_line_disease ~mild"],
        ),
        (
            "Tally. The flare on the left front was severe when I took him on, now I'd call it moderate.",
            ["LF finding flare history ~severe", "LF finding flare ~moderate"],
        ),
        (
            "Tally. Thrush in the left hind last time, mild now.",
            ["LH finding thrush history", "LH finding thrush ~mild"],
        ),
        ("Tally. He had thrush in the left hind last time, and it's still moderate.", ["LH finding thrush ~moderate"]),
        ("Tally. He had a corn in the left front last time, it's still there.", ["LF finding corn"]),
        (
            "Tally. Had underrun heels in both fronts, severe, last spring. They're still severe.",
            ["LF+RF finding underrun_heels ~severe"],
        ),
        ("Tally. Thrush in the left hind was severe last time, now it's gone.", ["LH finding thrush resolved ~severe"]),
        (
            "Tally. Last visit he'd a severe flare on the near fore. Now I'd call it moderate.",
            ["LF finding flare history ~severe", "LF finding flare ~moderate"],
        ),
        (
            "Tally. He had bad thrush in the left hind last time, mild flare on it now.",
            ["LH finding flare ~mild", "LH finding thrush history ~severe"],
        ),
    ]
)

test_the_degree_that_stands_and_the_degree_in_doubt = reads(
    [
        (
            "Flare on the left front, I said moderate to the lady but it's mild, I was being gloomy.",
            ["LF finding flare ~mild"],
        ),
        ("Thrush in the left hind, I'd have said severe but it's moderate.", ["LH finding thrush ~moderate"]),
        ("Flare on the left front, I told her moderate, it's mild really.", ["LF finding flare ~mild"]),
        ("Flare on the left front, moderate, well, it's mild.", ["LF finding flare ~mild"]),
        ("There's a bruise in the right front sole, oh, moderate, I guess.", ["RF finding bruise @sole ~moderate"]),
        ("A crack at the toe, left front, mild, I'd guess.", ["LF finding crack @toe ~mild"]),
        # each its own degree, and a finding in doubt
        (
            "Thrush in the hinds, I'd call it moderate in the left and it's mild in the right.",
            ["LH finding thrush ~moderate", "RH finding thrush ~mild"],
        ),
        (
            "Thrush, left hind, I'd call it moderate, and the corn, it's mild.",
            ["LH finding corn ~mild", "LH finding thrush ~moderate"],
        ),
        ("Bruise in the left front, I think.", ["LF finding bruise suspected"]),
        ("Bruise in the left front, mild, can't be sure.", ["LF finding bruise suspected ~mild"]),
    ],
    "Tansy. {}",
)

test_what_stands_as_it_was_is_of_today = reads(
    [
        (
            "Last time I wrote down a toe crack in the off fore, and it's the same as it was, mild, no worse.",
            ["RF finding crack @toe ~mild"],
        ),
        ("Last visit there was a corn in the left front. It's much the same.", ["LF finding corn"]),
        ("He had thrush in the left hind last time and it's no better.", ["LH finding thrush"]),
        ("In the spring there was a mild flare on both fronts, and it hasn't changed.", ["LF+RF finding flare ~mild"]),
        ("He had seedy toe in the near fore in the fall, they're no different.", ["LF finding white_line_disease"]),
        # said of something else
        (
            "He had a bad abscess in the left front last time, and he's no worse for it.",
            ["LF finding abscess history ~severe"],
        ),
        (
            "He had a corn in the left front last time. Right hind trimmed. It's no better.",
            ["LF finding corn history", "RH work trim"],
        ),
        ("He had a corn in the left front last time. If it's no better we'll see.", ["LF finding corn history"]),
    ],
    "Tansy. {}",
)

test_a_degree_of_today_and_one_of_then = reads(
    [
        (
            "Thrush, right front. Mild today. It was moderate last time.",
            ["RF finding thrush history ~moderate", "RF finding thrush ~mild"],
        ),
        (
            "Left hind, a corn. It's severe today. Was mild last visit.",
            ["LH finding corn history ~mild", "LH finding corn ~severe"],
        ),
        (
            "Bruise in the near fore. Moderate now, was bad last time.",
            ["LF finding bruise history ~severe", "LF finding bruise ~moderate"],
        ),
        ("Thrush in the off hind. Mild today.", ["RH finding thrush ~mild"]),
        # a degree of something else
        ("Thrush in the left hind, iodine in it. Mild today.", ["LH finding thrush", "LH treatment iodine"]),
        ("Lame on the left hind. Mild today.", ["LH gait lame"]),
    ],
    "Tally. {}",
)
