"""More plain words for what was read already: wraps, believing, manners, seasons, shoes taken off, a hundred and so."""

from __future__ import annotations

from tests.reading.conftest import reads

CASES: list[tuple[str, list[str]]] = [
    ("Tally. Poultice and a wrap on the left hind.", ["LH treatment bandage", "LH treatment poultice"]),
    ("Tally. Off fore, drained it and put a wrap on.", ["RF treatment bandage", "RF treatment drained"]),
    ("Tally. Left hind, I believe it's a corn.", ["LH finding corn suspected"]),
    ("Tally. I believe there's an abscess in the left hind.", ["LH finding abscess suspected"]),
    ("Tally. Right front, I want to say there's a bruise.", ["RF finding bruise suspected"]),
    ("Tally. The lad said it was a corn in the near fore and I believe him.", ["LF finding corn"]),
    ("Tally. Both fronts were toed long.", ["LF+RF finding long_toe"]),
    ("Tally. Left front is long in his toes.", ["LF finding long_toe"]),
    ("Tally's a gent to shoe.", ["- manner quiet"]),
    ("Tally is a pleasure to trim.", ["- manner quiet"]),
    ("Tally. She's an angel to do.", ["- manner quiet"]),
    ("Tally dozed off on me.", ["- manner quiet"]),
    ("Tally. He nodded off.", ["- manner quiet"]),
    ("Tally. He's nodding on the left front.", ["LF gait lame"]),
    (
        "Buck. She was two out of five on the right hind before Easter, sound now.",
        ["- gait sound", "RH lameness 2 history"],
    ),
    ("Buck. He had studs in the hinds before Thanksgiving.", ["LH+RH traction studs history"]),
    (
        "Buck. He was three out of five on the near fore around Christmas, sound today.",
        ["- gait sound", "LF lameness 3 history"],
    ),
    ("Buck. We can try boots behind in the spring.", ["LH+RH shoe_type boot planned"]),
    ("Buck. They can go to glue-ons in front if he won't hold those.", ["LF+RF shoe_type glue_on planned"]),
    ("Buck. He can go ten weeks.", ["- next_visit_weeks 10 planned"]),
    (
        "Buck. I've taken both front shoes off and she's standing in boots.",
        ["LF+RF shoe_type boot", "LF+RF work removed"],
    ),
    ("Buck. I've taken his hind shoes off.", ["LH+RH work removed"]),
    ("Buck. We have taken the front shoes off and left them off.", ["LF+RF work removed"]),
    (
        "Buck. Hoof width near fore one thirty-two, off fore one twenty-eight.",
        ["LF hoof_width 132", "RF hoof_width 128"],
    ),
    (
        "Buck. Width of the near fore one hundred and twenty, the off fore one thirty-two.",
        ["LF hoof_width 120", "RF hoof_width 132"],
    ),
    ("Buck. Width on the left front one fifteen.", ["LF hoof_width 115"]),
    ("Buck. Borium on the fronts, sorry, on the hinds, nothing on the fronts.", ["LH+RH traction borium"]),
    ("Buck. Leather pads on the fronts, no, on the hinds, nothing in front.", ["LH+RH pad leather"]),
    ("Buck. Studs in the hinds, I mean in the fronts.", ["LF+RF traction studs"]),
]

test_said_plainly = reads(CASES)


test_plain_that_is_no_shoe = reads(
    [
        ("She's interfering, saw it plain on the lunge line.", ["- gait interfere"]),
        ("He's forging, you could see it plain on the road.", ["- gait forge"]),
        ("Tally. The near hind was just plain lame.", ["LH gait lame"]),
        ("Tally. Left hind was plain pricked.", ["LH finding quicked"]),
        ("Tally. Off fore shoe was plain worn out.", ["RF shoe_state worn"]),
        ("Tally. The off fore's got plain steel on it.", ["RF shoe_material steel", "RF shoe_type plain"]),
        ("Tally. Plain loose shoe on the near fore.", ["LF shoe_state loose", "LF shoe_type plain"]),
    ]
)


test_the_shoe_is_new = reads(
    [
        ("Tally. Off fore, shoe's new, size two.", ["RF shoe_size 2", "RF work new_shoe"]),
        ("Tally. Right front, the shoe's a new one, a one and a half.", ["RF shoe_size 1.5", "RF work new_shoe"]),
        ("Tally. Size one, both fronts. Shoes are new.", ["LF+RF shoe_size 1", "LF+RF work new_shoe"]),
        ("Tally. Size one, both fronts. The shoe rack in the van is new.", ["LF+RF shoe_size 1"]),
    ]
)


test_all_done_new = reads(
    [
        ("I did all four new, steel.", ["LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe"]),
        ("Did the fronts new, size two.", ["LF+RF shoe_size 2", "LF+RF work new_shoe"]),
        ("All four done new today.", ["LF+RF+LH+RH work new_shoe"]),
        ("I did all four, nothing new.", []),
        ("Did both fronts, new owner on her.", []),
    ],
    "Tally. {}",
)

test_thrown_up_is_no_shoe_thrown = reads(
    [
        ("Thrush in the near hind. The dog ate a trimming and threw it up.", ["LH finding thrush"]),
        ("Side clips on the fronts. Pup ate one of his trimmings and threw up in the truck.", ["LF+RF clips side"]),
        ("Side clips on the fronts. He threw up his head and pulled the left front.",
         ["LF shoe_state lost", "LF+RF clips side"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_looked_at_and_they_are = reads(
    [
        ("Off fore. I had a look at the heels and they're sheared, moderate.", ["RF finding sheared_heels ~moderate"]),
        ("Off fore. I looked at his heels and they were a bit sheared.", ["RF finding sheared_heels ~mild"]),
        ("Off fore. Looked at the sole and it's thin.", ["RF finding thin_sole"]),
        ("Off fore. Looked at the heels and they're fine.", []),
        ("Off fore. I had a look at the soles and they're good.", []),
    ],
    "Tally. {}",
)

test_the_testers_did_not_find_a_thing = reads(
    [
        ("Tester didn't find a thing on that right front.", ["RF tester none"]),
        ("Right front. Testers didn't turn up a thing.", ["RF tester none"]),
        ("Right front. Testers couldn't find a thing.", ["RF tester none"]),
        ("Right front. Testers found a thing or two, moderate at the toe.", ["RF tester moderate @toe"]),
    ],
    "Tally. {}",
)

test_forging_is_the_horse_or_the_fire = reads(
    [
        ("Tally. Trimmed all four. He's forging some.", ["- gait forge", "LF+RF+LH+RH work trim"]),
        ("Tally. She's been forging some lately.", ["- gait forge"]),
        ("Tally. Owner says he's forging some at the trot.", ["- gait forge"]),
        ("Tally. He's forging up a storm.", ["- gait forge"]),
        ("Tally. Interfering some behind.", ["LH+RH gait interfere"]),
        ("Tally. She's overreaching some.", ["- gait overreach"]),
        ("Tally. He's brushing a bit.", ["- gait interfere ~mild"]),
        ("Tally. He isn't forging any.", ["- gait forge absent"]),
        ("Tally. I was forging some shoes for a man. Reset all four.", ["LF+RF+LH+RH work reset"]),
        ("Tally. Spent the morning forging some bar shoes. Reset all four.", ["LF+RF+LH+RH work reset"]),
        ("Tally. Reset all four. I'll be forging some tonight.", ["LF+RF+LH+RH work reset"]),
        ("Tally. Reset all four. My nephew's forging some for me.", ["LF+RF+LH+RH work reset"]),
        ("Tally. Reset all four. I was out forging some this morning.", ["LF+RF+LH+RH work reset"]),
    ]
)

test_what_the_wall_has_gone = reads(
    [
        ("Flat soles and the off fore wall's gone shelly.", ["- finding flat_sole", "RF finding weak_wall"]),
        ("Off fore, the wall's gone brittle at the quarter.", ["RF finding weak_wall @quarter"]),
        ("Off fore wall's gone a bit shelly.", ["RF finding weak_wall ~mild"]),
        ("Off fore wall went soft on him.", ["RF finding weak_wall"]),
        ("Walls are going crumbly all round.", ["LF+RF+LH+RH finding weak_wall"]),
        ("Off fore, the wall's gone hard.", []),
        ("Off fore wall's gone at the quarter.", ["RF finding wall_loss @quarter"]),
        ("Off fore, a chunk of wall's gone.", ["RF finding wall_loss"]),
        ("Off fore wall was shelly last time, gone now.", ["RF finding weak_wall resolved"]),
    ],
    "Tally. {}",
)
