"""Short stretches of talk, as said between two horses, in which a denial, a time, a plan or a foot is easily missed.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_denials = reads(
    [
        (
            "Wasn't so much thrush as plain muck in the near hind. Picked it out, frog's sound enough.",
            ["LH finding thrush absent"],
        ),
        (
            "Neither front has a mark of a corn on it. Near hind has one though, inside heel.",
            ["LF+RF finding corn absent", "LH finding corn @medial_heel"],
        ),
        ("Nothing in the off fore. Near fore, bruise at the toe.", ["LF finding bruise @toe"]),
        (
            "Never a sign of laminitis on him. Bit of flare on the fronts.",
            ["- finding laminitis absent", "LF+RF finding flare ~mild"],
        ),
        (
            "The thrush is gone from the off hind. Near hind still has some.",
            ["LH finding thrush", "RH finding thrush resolved"],
        ),
        (
            "It's not an abscess, I'd put money on it. More of a bruise, near fore, at the quarter.",
            ["- finding abscess absent", "LF finding bruise @quarter"],
        ),
        (
            "Dug and dug in that left front and there's no pus in there at all. Bruise is all it is.",
            ["LF finding abscess absent", "LF finding bruise"],
        ),
        (
            "Right hind is as clean as a whistle, not a bit of thrush. Left hind has thrush right up the sulcus.",
            ["LH finding thrush @sulcus", "RH finding thrush absent"],
        ),
        (
            "They were sure he'd an abscess in the near fore. He hasn't. Not a thing in it.",
            ["LF finding abscess absent"],
        ),
        (
            "She had no thrush in the fronts but I couldn't say the same for the hinds.",
            ["LF+RF finding thrush absent", "LH+RH finding thrush suspected"],
        ),
        (
            "No thrush, which is a first for her. No seedy toe either. Trim all round.",
            ["- finding thrush absent", "- finding white_line_disease absent", "LF+RF+LH+RH work trim"],
        ),
        (
            "Hind feet I couldn't fault. Fronts have a bit of stretched white line at the toe, nothing sinister.",
            ["LF+RF finding white_line_separation @toe ~mild"],
        ),
        ("I was half expecting thrush and there was none to be had. All four.", ["LF+RF+LH+RH finding thrush absent"]),
        (
            "He's got no more sidebone than I have. Little bit of ringbone on the off fore maybe.",
            ["- finding sidebone absent", "RF finding ringbone suspected ~mild"],
        ),
        (
            "If that's an abscess I'm a Dutchman. Near hind, bit of a bruise at the toe.",
            ["LH finding bruise @toe ~mild"],
        ),
        (
            "Far as I can see there's damn all wrong with the off fore. There's not a hint of heat.",
            ["RF finding heat absent"],
        ),
        ("The bruise they told me about in the near fore never came to anything.", ["LF finding bruise absent"]),
        (
            "She's shifted that seedy toe in the off fore. Good bit of new wall there.",
            ["RF finding white_line_disease resolved"],
        ),
    ],
    "Tansy. {}",
)

test_history = reads(
    [
        (
            "He used to have shocking thrush behind. You'd not know it to look at him today.",
            ["LH+RH finding thrush resolved ~severe"],
        ),
        (
            "Had been in heart bars in front since the winter. Put him in plain steel today, size two.",
            [
                "LF+RF shoe_material steel",
                "LF+RF shoe_size 2",
                "LF+RF shoe_type heart_bar history",
                "LF+RF shoe_type plain",
            ],
        ),
        (
            "He'd worn egg bars behind all last season. Rim shoes now.",
            ["LH+RH shoe_type egg_bar history", "LH+RH shoe_type rim"],
        ),
        (
            "Was in bars in front till spring. He's barefoot now and going lovely.",
            ["LF+RF shoe_type bar history", "LF+RF work trim"],
        ),
        (
            "Back in March she'd an abscess in the off hind. Hole's nearly grown down. Trimmed her.",
            ["LF+RF+LH+RH work trim", "RH finding abscess history"],
        ),
        (
            "The last fellow had him in wedges in front. I've gone flat. Reset behind.",
            ["LF+RF pad wedge history", "LH+RH work reset"],
        ),
        ("The corn in the near fore dates from before Christmas. Can't find it today.", ["LF finding corn resolved"]),
        (
            "He was a three out of five on the off fore a fortnight ago. Walks sound now.",
            ["- gait sound", "RF lameness 3 history"],
        ),
        (
            "Two winters back he foundered. Rotation in both fronts at the time. Soles are thin yet.",
            ["- finding laminitis history", "LF+RF finding rotation history", "LF+RF finding thin_sole"],
        ),
        (
            "I'd poulticed the near hind the week before. Dry as a bone today, so I nailed the shoe back on.",
            ["LH treatment poultice history", "LH work put_back"],
        ),
        (
            "Once upon a time he'd a quarter crack in the off fore you could lose a coin in. Only a line left.",
            ["RF finding crack history @quarter"],
        ),
        (
            "In his racing days he wore plates. He's in plain shoes these days, fronts only.",
            ["- shoe_type racing_plate history", "LF+RF shoe_type plain"],
        ),
        (
            "We'd had trouble with thrush in the off hind right the way through the wet. No bother now.",
            ["RH finding thrush resolved"],
        ),
        ("When he was with the dealer he was in studs behind. None today.", ["LH+RH traction studs history"]),
    ],
    "Tansy. {}",
)

test_plans_and_conditions = reads(
    [
        ("I'd go to a heart bar on the near fore. Owner won't have it, so he's reset.", ["LF work reset"]),
        ("We'll be looking at pads in front by the summer. Reset today.", ["LF+RF work reset"]),
        (
            "The vet wants him in wedges in front. I've left him flat till I see the pictures.",
            ["LF+RF pad wedge planned"],
        ),
        (
            "Down the road I'd see him barefoot behind. Today he's reset all round.",
            ["LF+RF+LH+RH work reset", "LH+RH work trim planned"],
        ),
        (
            "Pencilled in for six weeks, egg bars behind that day. Today he got plain ones.",
            ["- next_visit_weeks 6 planned", "LH+RH shoe_type egg_bar planned", "LH+RH shoe_type plain"],
        ),
        (
            "If he's not right by Friday they're to get the vet. Poulticed the off fore.",
            ["- vet referral planned", "RF treatment poultice"],
        ),
        (
            "Studs behind for the winter once the ground goes. Plain for now, size three.",
            ["LH+RH shoe_size 3", "LH+RH shoe_type plain", "LH+RH traction studs planned"],
        ),
        ("She's for pads in front the next day. Trimmed behind.", ["LH+RH work trim"]),
        ("I toyed with taking the shoes off behind. Left them on and reset.", ["LH+RH work reset"]),
        ("The plan had been rocker toes in front. Went with half rounds instead.", ["LF+RF shoe_type half_round"]),
        (
            "Say he's still footy in three weeks, pads it'll be, both fronts. Sole's thin.",
            ["- next_visit_weeks 3 planned", "LF+RF finding thin_sole"],
        ),
        ("No sense putting bars on the fronts at this stage. If the crack opens up we will.", []),
        (
            "They're to keep iodine on that off hind. I scraped the thrush out of it.",
            ["RH finding thrush", "RH treatment iodine planned"],
        ),
    ],
    "Tansy. {}",
)

test_other_horses_and_owners = reads(
    [
        ("Your woman's last horse had navicular and she thinks they all have it. Sound as a bell.", ["- gait sound"]),
        (
            "The one beside him had seedy toe all round. Not him. Off fore has a small flare.",
            ["RF finding flare ~mild"],
        ),
        (
            "She was telling me about her sister's pony with canker. Anyway. Reset all round, five nails each.",
            ["LF+RF+LH+RH nails 5", "LF+RF+LH+RH work reset"],
        ),
        (
            "Owner swears he was lame on the near hind yesterday. Trotted up sound for me.",
            ["- gait sound", "LH gait lame history"],
        ),
        (
            "Bit like Buck, only Buck had it in the off fore. Corn in the near fore, inside heel.",
            ["LF finding corn @medial_heel"],
        ),
        ("Unlike Buck he's no thrush. Flare on the hinds.", ["- finding thrush absent", "LH+RH finding flare"]),
        ("Reset in front. The bay in the next box has lost a hind, I'll get him Tuesday.", ["LF+RF work reset"]),
        ("Groom has it that he's forging. I listened and he isn't.", ["- gait forge absent"]),
        ("The internet told her it was white line. It's a seam of dirt, off fore toe.", []),
    ],
    "Tansy. {}",
)

test_corrections_of_a_foot = reads(
    [
        ("Corn in the near, I mean the off fore. Inside heel.", ["RF finding corn @medial_heel"]),
        ("Thrush in the near hind. No, other one. Off hind.", ["RH finding thrush"]),
        ("Left front, abscess at the toe. Wrong side. Right front.", ["RF finding abscess @toe"]),
        ("Bruise on the off fore, heel. Opposite foot, sorry.", ["LF finding bruise @heel"]),
        ("Near fore five nails, off fore six. Swap those.", ["LF nails 6", "RF nails 5"]),
        ("Crack in the right hind at the quarter, no I've that backwards, left hind.", ["LH finding crack @quarter"]),
        ("Testers strong left front. That's left, not right, I've my back to him.", ["LF tester strong"]),
        (
            "Near fore has the corn, off fore has the bruise. Other way round, sorry.",
            ["LF finding bruise", "RF finding corn"],
        ),
        ("Heat in the left hind. Did I say left? Right hind.", ["RH finding heat"]),
        (
            "Off hind, thrush, iodine on it. Sorry, all that was the near hind.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        (
            "Lost the right front. Left front, rather. New shoe on it, size one.",
            ["LF shoe_size 1", "LF shoe_state lost", "LF work new_shoe"],
        ),
        ("Pulse bounding in the left fore. My left, his right.", ["RF pulse bounding"]),
        ("Off fore mild on the testers, near fore strong. Swap them round.", ["LF tester mild", "RF tester strong"]),
        ("Thrush in the off hind, did I say? Near hind it is.", ["LH finding thrush"]),
        ("It's the off fore he's lame on, the corn is in the near.", ["LF finding corn", "RF gait lame"]),
        ("Left front's got the thrush. Sorry, other left. Right front.", ["RF finding thrush"]),
        ("Iodine on the near hind. That should have been the off.", ["RH treatment iodine"]),
        (
            "Pulled the near fore, abscess at the toe. Scratch near, it's the off.",
            ["RF finding abscess @toe", "RF work removed"],
        ),
        ("Wedge on the left front. Not the left, what am I at, the right.", ["RF pad wedge"]),
    ],
    "Tansy. {}",
)

test_neighbours = reads(
    [
        ("No way he's lame.", ["- gait lame absent"]),
        ("She thinks he's forging. He isn't.", ["- gait forge absent"]),
        ("Groom says the off fore is hot. It's not.", ["RF finding heat absent"]),
        ("Groom says the off fore is hot. It's not that hot.", ["RF finding heat"]),
        ("Thrush in the near hind. It isn't deep.", ["LH finding thrush"]),
        ("Crack in the near fore. It wasn't there last time.", ["LF finding crack"]),
        ("He's lame on the near fore. It isn't the foot.", ["LF gait lame"]),
        ("He's lame on the near fore. It's not the foot.", ["LF gait lame"]),
        ("Ideally six weeks. Reset in front.", ["- next_visit_weeks 6 planned", "LF+RF work reset"]),
        (
            "He'd come to me with contracted heels in front. Heels have opened a good bit.",
            ["LF+RF finding contracted_heels history"],
        ),
        ("His old farrier still does the hinds. Reset in front.", ["LF+RF work reset"]),
        ("He kicked the horse beside him and lost the near fore.", ["LF shoe_state lost"]),
        ("More mud than hoof. Thrush in the off hind.", ["RH finding thrush"]),
        ("Lost its shoe, the off hind.", ["RH shoe_state lost"]),
        ("He's on top of the world, the thrush in the off hind's still there.", ["RH finding thrush"]),
        ("The bruise never came to anything, off fore.", ["RF finding bruise absent"]),
        ("He got the better of the thrush in the off hind.", ["RH finding thrush resolved"]),
        ("The thrush got the better of him, off hind.", ["RH finding thrush"]),
        ("Once upon a time he'd a quarter crack in the off fore.", ["RF finding crack history @quarter"]),
        ("I'd go to a heart bar on the near fore. Owner said no.", []),
        ("I'd put egg bars on in front but he won't pay for it.", []),
        ("Leather pads next time in front, not today.", ["LF+RF pad leather planned"]),
        ("He's lost that flare on the near fore.", ["LF finding flare resolved"]),
        ("He's lost the near fore, corn in the off fore.", ["LF shoe_state lost", "RF finding corn"]),
        ("She lost her flare behind and she's a grand foot on her now.", ["LH+RH finding flare resolved"]),
    ],
    "Tansy. {}",
)

test_all_but_a_bit = reads(
    [
        ("No thrush bar a bit in the near hind.", ["- finding thrush absent", "LH finding thrush ~mild"]),
        ("No thrush, bar a bit in the near hind.", ["- finding thrush absent", "LH finding thrush ~mild"]),
        ("No thrush apart from a touch in the near hind.", ["- finding thrush absent", "LH finding thrush ~mild"]),
        ("No thrush only a bit in the near hind.", ["- finding thrush absent", "LH finding thrush ~mild"]),
        ("No thrush behind bar a touch in the near one.", ["LH finding thrush ~mild", "RH finding thrush absent"]),
        (
            "No flare bar a small bit at the toe on the off fore.",
            ["- finding flare absent", "RF finding flare @toe ~mild"],
        ),
        ("Hinds are clean bar a bit of thrush in the near one.", ["LH finding thrush ~mild"]),
        (
            "Nothing showing on the testers bar a bit of a twitch on the off fore.",
            ["- tester none", "RF tester mild"],
        ),
        ("Nothing wrong bar a corn in the near fore.", ["LF finding corn"]),
        (
            "No corn only a bruise at the toe in the near fore.",
            ["- finding corn absent", "LF finding bruise @toe"],
        ),
        ("Nothing done behind bar a trim.", ["LH+RH work trim"]),
        (
            "New plain steel in front, with rim pads, and behind there was nothing done bar a trim.",
            [
                "LF+RF pad rim",
                "LF+RF shoe_material steel",
                "LF+RF shoe_type plain",
                "LF+RF work new_shoe",
                "LH+RH work trim",
            ],
        ),
        # nothing is left out
        ("Thrush only a bit, near hind.", ["LH finding thrush ~mild"]),
        ("Thrush behind. Flare only a small bit on the off fore.", ["LH+RH finding thrush", "RF finding flare ~mild"]),
        (
            "No heat, only a bit of swelling in the near hind.",
            ["LH finding heat absent", "LH finding swelling ~mild"],
        ),
        ("Egg bar a bit long on the near fore.", ["LF shoe_type egg_bar"]),
        # a bar of the foot
        ("Crack in the bar a good inch long, near fore.", ["LF finding crack @bar"]),
        ("Bruise at the inside bar on the near fore.", ["LF finding bruise @bar"]),
        ("There's only a bit of thrush in the near hind.", ["LH finding thrush ~mild"]),
    ],
    "Tansy. {}",
)

test_more_that_is_denied_or_left_open = reads(
    [
        ("Divil a bit of heat in the near fore.", ["LF finding heat absent"]),
        ("Sorra the crack is in it now, off fore.", ["RF finding crack absent"]),
        (
            "Let the vet decide about the heart bars in front. Reset.",
            ["LF+RF shoe_type heart_bar planned", "LF+RF work reset"],
        ),
        ("Bruise near fore. I had my sides crossed there. Off fore.", ["RF finding bruise"]),
        ("There's no way he's not lame on the off fore.", ["RF gait lame"]),
    ],
    "Tansy. {}",
)
