"""What another horse has is none of this one's, and a foot with a speaker behind opens its own statement.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_another_horse_has_it = reads(
    [
        (
            "Trimmed the hinds. The gal's other horse has a club foot and she's "
            "all worried, and I told her, he's got no club foot, not on either front.",
            ["LF+RF finding club_foot absent", "LH+RH work trim"],
        ),
        ("Trimmed the hinds. Their other one has navicular, but there's none of that here.", ["LH+RH work trim"]),
        ("Reset all round. The owner's other mare has thrush in all four, but he's clean.", ["LF+RF+LH+RH work reset"]),
        (
            "Reset all round. The old pony she has at home foundered, so she's "
            "scared of laminitis, but there's no laminitis in him.",
            ["- finding laminitis absent", "LF+RF+LH+RH work reset"],
        ),
        (
            "Trimmed all round. The one in the next box has a quarter crack, this fella hasn't.",
            ["LF+RF+LH+RH work trim"],
        ),
        (
            "Trimmed the hinds. A friend of hers has a horse with white line disease, so I checked, nothing.",
            ["LH+RH work trim"],
        ),
        ("Trimmed the hinds. His other gelding has canker.", ["LH+RH work trim"]),
        ("Trimmed the hinds. The lady's other youngster had ringbone.", ["LH+RH work trim"]),
        ("Trimmed the hinds. Her other girl's got thrush in both hinds.", ["LH+RH work trim"]),
        ("Trimmed the hinds. The neighbour's donkey had seedy toe.", ["LH+RH work trim"]),
    ],
    "Tansy. {}",
)

test_this_horse_has_it = reads(
    [
        ("Left front, corn. The other front has a club foot.", ["LF finding corn", "RF finding club_foot"]),
        ("Left front, corn. The other one has a bruise.", ["LF finding corn", "RF finding bruise"]),
        ("Left front, corn. Her other front is bruised.", ["LF finding corn", "RF finding bruise"]),
    ],
    "Tansy. {}",
)

test_a_foot_and_its_speaker = reads(
    [
        (
            "Abscess in the left hind, soaked it, put a bandage on, her right hind "
            "I thought about pulling too but, nah, just reset that one.",
            ["LH finding abscess", "LH treatment bandage", "LH treatment soak", "RH work reset"],
        ),
        (
            "Thrush in the left hind, iodine on it, the fronts he wouldn't let me near.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        (
            "Testers, left front moderate at the lateral quarter, right front I had as mild.",
            ["LF tester moderate @lateral_quarter", "RF tester mild"],
        ),
    ],
    "Tansy. {}",
)

test_it_was_another_horse = reads(
    [
        (
            "Right hind used to be clubby, no, that was his brother. No club foot in any of them.",
            ["LF+RF+LH+RH finding club_foot absent"],
        ),
        ("Thrush in the left hind, no, that's the other mare. Trimmed.", ["LF+RF+LH+RH work trim"]),
        (
            "It's Buck who has the navicular, not this one. No navicular in either front.",
            ["LF+RF finding navicular absent"],
        ),
        (
            (
                "Trimmed. It's Buck who has the navicular, not this one. I had the left hind "
                "down as sprung, scratch that, wrong horse."
            ),
            ["LF+RF+LH+RH work trim"],
        ),
        ("Body condition's a seven, no, that was the other pony, Tally's an eight.", ["- body_condition 8"]),
    ],
    "Tally. {}",
)

test_one_they_had_before = reads(
    [
        (
            "Now, their old cob had canker, God rest him, so they're all in a panic, and no, there's no canker in any "
            "of Tansy's feet, not one.",
            ["LF+RF+LH+RH finding canker absent"],
        ),
        (
            "Her last pony had canker, so the woman sees it in everything. There's no canker in his hinds.",
            ["LH+RH finding canker absent"],
        ),
        ("The lady's old cob, God rest him, had seedy toe. Trimmed.", ["LF+RF+LH+RH work trim"]),
        ("His late mare had ringbone. No ringbone in the fores.", ["LF+RF finding ringbone absent"]),
        ("Their first pony went lame with navicular. Reset the fronts.", ["LF+RF work reset"]),
        ("The mare they had before her foundered. No founder here.", ["- finding laminitis absent"]),
        ("He lost a horse to laminitis last year. Trimmed.", ["LF+RF+LH+RH work trim"]),
        # "Old" may be the one in hand: where a foot is named, what it has is kept.
        ("Their old cob had thrush, near fore.", ["LF finding thrush"]),
        ("Their first pony had canker in the off hind.", ["RH finding canker"]),
        ("This old cob had canker in the near hind last year.", ["LH finding canker history"]),
        ("She's their old cob. Thrush in both hinds.", ["LH+RH finding thrush"]),
        ("She's her last pony, thrush in both hinds.", ["LH+RH finding thrush"]),
    ],
    "Tansy. {}",
)

test_asked_about_another = reads(
    [
        (
            "Lady there was asking me about her barrel horse with the crack, I told her call me Thursday.",
            ["LH+RH work trim"],
        ),
        ("A girl there asked about her eventer's corns.", ["LH+RH work trim"]),
        ("A woman stopped me about her cob with thrush.", ["LH+RH work trim"]),
        ("The neighbour came over to ask about his roping horse with the quarter crack.", ["LH+RH work trim"]),
        ("Some fella rang me about a mare with an abscess while I was under her.", ["LH+RH work trim"]),
        # Whose horse it is may be asked about by its owner.
        ("Lady asked me about her mare's crack in the left front.", ["LF finding crack", "LH+RH work trim"]),
        ("The owner was asking about the crack in the near fore.", ["LF finding crack", "LH+RH work trim"]),
        ("The woman asked about the horse's crack, left front.", ["LF finding crack", "LH+RH work trim"]),
    ],
    "Tansy. Trimmed the hinds. {}",
)
