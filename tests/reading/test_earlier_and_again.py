"""How a horse stood and went once, doubts that were answered, slips owned up to, and work that repeats no finding.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_how_he_stood_then = reads(
    [
        (
            "He was dangerous at the last place, so I had him sedated.",
            ["- manner dangerous history", "- manner sedated"],
        ),
        ("At his old yard he was dangerous, he's quiet with me.", ["- manner dangerous history", "- manner quiet"]),
        ("Last time he was fidgety, stood well today.", ["- manner fidgety history", "- manner quiet"]),
        ("She was fidgety in March, quiet this time.", ["- manner fidgety history", "- manner quiet"]),
        ("He was dangerous before they got him.", ["- manner dangerous history"]),
        ("They had to sedate him at the last place.", ["- manner sedated history"]),
        ("They sedated him at the last place.", ["- manner sedated history"]),
        ("He'd been sedated for the last man.", ["- manner sedated history"]),
        ("I had him sedated last time.", ["- manner sedated history"]),
        ("Fidgety the last day, quiet this time.", ["- manner fidgety history", "- manner quiet"]),
        # of today
        ("He's dangerous, the last farrier wouldn't do him.", ["- manner dangerous"]),
        ("He was fidgety, same as last time.", ["- manner fidgety"]),
        ("She was sedated before I came.", ["- manner sedated"]),
        ("He'd been sedated when I got there.", ["- manner sedated"]),
        (
            "He stood quiet and he had thrush in the left hind last month.",
            ["- manner quiet", "LH finding thrush history"],
        ),
    ]
)

test_when_it_was = reads(
    [
        ("He was three out of five lame last July, nothing since.", ["- lameness 3 history"]),
        ("She was lame in early July.", ["- gait lame history"]),
        ("Had an abscess in the left front in mid June.", ["LF finding abscess history"]),
        ("Laminitis the July before last.", ["- finding laminitis history"]),
        ("Lame on the left hind over Christmas, sound now.", ["- gait sound", "LH gait lame history"]),
        ("He was lame the week before last, sound today.", ["- gait lame history", "- gait sound"]),
        ("An abscess in the right hind during February.", ["RH finding abscess history"]),
        ("Two out of five lame last July, one out of five today.", ["- lameness 1", "- lameness 2 history"]),
        ("He was two out of five lame when I last came, he's sound.", ["- gait sound", "- lameness 2 history"]),
        # to come
        ("We'll try bar shoes in front at the end of June.", ["LF+RF shoe_type bar planned"]),
        ("At the end of June we'll try bar shoes in front.", ["LF+RF shoe_type bar planned"]),
        ("In June we'll try bar shoes in front.", ["LF+RF shoe_type bar planned"]),
        ("If he's not sound by the end of July they ring the vet.", ["- vet referral planned"]),
    ]
)

test_doubts_that_were_answered = reads(
    [
        (
            "Bruise in the off fore sole. I was thinking abscess but there's no abscess in either fore.",
            ["LF+RF finding abscess absent", "RF finding bruise @sole"],
        ),
        ("I was expecting thrush but there's no thrush in the hinds.", ["LH+RH finding thrush absent"]),
        ("I thought I'd find thrush in the hinds but there's none.", ["LH+RH finding thrush absent"]),
        (
            "Corn in the near fore. I had my doubts about a bruise, but no bruise in either fore.",
            ["LF finding corn", "LF+RF finding bruise absent"],
        ),
        ("Off fore. I wondered about a keratoma, no keratoma in either.", ["LF+RF finding keratoma absent"]),
        (
            "Bruise in the left front. I was thinking abscess, and there's an abscess in both fronts.",
            ["LF finding bruise", "LF+RF finding abscess"],
        ),
        ("I figured on thrush in the hinds and sure enough, both of them.", ["LH+RH finding thrush"]),
        ("Checked for thrush in the left hind, found it, mild.", ["LH finding thrush ~mild"]),
        # still in doubt
        (
            "Might be an abscess in the left front, no abscess in the hinds.",
            ["LF finding abscess suspected", "LH+RH finding abscess absent"],
        ),
        (
            "Possible corn in the near fore, no corn in the off fore.",
            ["LF finding corn suspected", "RF finding corn absent"],
        ),
        ("I wondered about a corn in the near fore.", ["LF finding corn suspected"]),
    ]
)

test_slips = reads(
    [
        (
            "New shoes on both fronts, bar shoes, no, egg bars, I keep saying bar shoes, egg bars, size three.",
            ["LF+RF shoe_size 3", "LF+RF shoe_type egg_bar", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, rim shoes, I keep calling them wide webs, rim shoes, size two.",
            ["LF+RF shoe_size 2", "LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, straight bars. I nearly said egg bars. Straight bars.",
            ["LF+RF shoe_type straight_bar", "LF+RF work new_shoe"],
        ),
        (
            "Reset both fronts, size three, no, four, I always say three, four.",
            ["LF+RF shoe_size 4", "LF+RF work reset"],
        ),
        ("Reset in front with six nails, no, seven, always say six, seven.", ["LF+RF nails 7", "LF+RF work reset"]),
        ("Thrush in the left hind, no, right hind, I keep saying left hind, right hind.", ["RH finding thrush"]),
        ("Corn at the medial heel of the left front, I nearly said lateral.", ["LF finding corn @medial_heel"]),
        ("Side clips in front, I always say quarter clips, side clips.", ["LF+RF clips side"]),
        ("Iodine in the left hind, I keep calling it copper sulfate, iodine.", ["LH treatment iodine"]),
        (
            "New shoes in front, plain, why am I saying plain, rims, size one.",
            ["LF+RF shoe_size 1", "LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        ("Bar shoes in front, why do I keep saying bar shoes, egg bars.", ["LF+RF shoe_type egg_bar"]),
        ("Six weeks, I nearly said eight.", ["- next_visit_weeks 6 planned"]),
        ("I was going to say no thrush in the left hind but there's a touch.", ["LH finding thrush ~mild"]),
        ("There's a bit of mud fever, I guess they say scratches, on the right hind.", ["RH finding scratches ~mild"]),
        (
            "Corn in the left hind. A touch of seedy toe, you'd call it white line disease, in the off fore.",
            ["LH finding corn", "RF finding white_line_disease ~mild"],
        ),
        ("Greasy heel, or scratches as they call it here, in both hinds.", ["LH+RH finding scratches"]),
        # no slips
        (
            "Thrush in the near fore, they say thrush in the off fore too.",
            ["LF+RF finding thrush"],
        ),
        (
            "Bruise in the near fore, I'd call it a corn in the off fore.",
            ["LF finding bruise", "RF finding corn"],
        ),
        ("I keep saying he's underrun in both fores and nobody listens.", ["LF+RF finding underrun_heels"]),
        (
            "Reset in front, seven nails each, I always say seven nails for a big horse.",
            ["LF+RF nails 7", "LF+RF work reset"],
        ),
    ]
)

test_work_that_repeats_no_finding = reads(
    [
        (
            "Close nail in the off fore, on the inside. Nearly shod the hinds too but they got a trim.",
            ["LH+RH work trim", "RF finding close_nail @medial"],
        ),
        (
            "Corn in the left front. I meant to do the hinds too, but just trimmed them.",
            ["LF finding corn", "LH+RH work trim"],
        ),
        (
            "Abscess in the off fore. She wanted the hinds shod as well but I trimmed them.",
            ["LH+RH work trim", "RF finding abscess"],
        ),
        ("Corn in the left front. I'd have shod the hinds as well.", ["LF finding corn"]),
        ("Crack at the toe of the left front. Should have done the hinds too.", ["LF finding crack @toe"]),
        ("Corn in the left front. I wanted to look at the hinds too.", ["LF finding corn"]),
        ("Heat in the left front. Felt the right front too, cool.", ["LF finding heat"]),
        ("Reset both fronts. I nearly did the hinds too.", ["LF+RF work reset"]),
        (
            "Thrush in the left hind, iodine in it. Put some on the right hind as well.",
            ["LH finding thrush", "LH+RH treatment iodine"],
        ),
        (
            "Left front reset, six nails, size one. Had to do the right front as well.",
            ["LF+RF nails 6", "LF+RF shoe_size 1", "LF+RF work reset"],
        ),
        # said of another foot too
        ("Thrush in the left hind. The right hind too.", ["LH+RH finding thrush"]),
        ("Crack in the left front. I found one in the right front too.", ["LF+RF finding crack"]),
        ("Crack in the left front. Right front has it too.", ["LF+RF finding crack"]),
        ("Trimmed the fronts. Did the hinds too.", ["LF+RF+LH+RH work trim"]),
    ]
)

test_since_then = reads(
    [
        ("Crack's been in the right front since last June, not moved.", ["RF finding crack"]),
        ("He's been lame since last June on the near fore.", ["LF gait lame"]),
        ("Thrush in the hinds since the summer, severe.", ["LH+RH finding thrush ~severe"]),
        ("That flare on the near fore, it was worse last May, mild now.", ["LF finding flare ~mild"]),
        (
            "She was a two out of five back in early spring on the left front, today she's sound.",
            ["- gait sound", "LF lameness 2 history"],
        ),
    ]
)

test_did_this_before_told_behind = reads(
    [
        (
            "Reset the hinds, they're plain. She did this two years ago in the left hind too, a toe crack, bad one.",
            ["LH finding crack history @toe ~severe", "LH+RH shoe_type plain", "LH+RH work reset"],
        ),
        (
            "Quarter crack in the right front. She did this last year in the left front, a toe crack.",
            ["LF finding crack history @toe", "RF finding crack @quarter"],
        ),
        (
            "Abscess in the right front. He had the same two winters ago in the left hind, an abscess.",
            ["LH finding abscess history", "RF finding abscess"],
        ),
        (
            "Bruise in the right front. He's done this before in the left front, a bruise at the toe.",
            ["LF finding bruise history @toe", "RF finding bruise"],
        ),
        (
            "Reset the hinds. Same thing happened last spring in the left hind, a corn.",
            ["LH finding corn history", "LH+RH work reset"],
        ),
        (
            "Trimmed. Left hind was sore last year, and now a toe crack there.",
            ["LF+RF+LH+RH work trim", "LH finding crack @toe"],
        ),
    ]
)

test_done_once_before = reads(
    [
        (
            "He's foundered. Obel grade one. He did it once before, two springs back, Obel two that time.",
            ["- finding laminitis", "- finding laminitis history", "- obel 1", "- obel 2 history"],
        ),
        (
            "She's foundered. She's done it twice before, Obel two the last time.",
            ["- finding laminitis", "- finding laminitis history", "- obel 2 history"],
        ),
        (
            "Abscess in the right front. It's happened once before, last winter.",
            ["RF finding abscess", "RF finding abscess history"],
        ),
        (
            "He's got an abscess in the left front. He did it last year too.",
            ["LF finding abscess", "LF finding abscess history"],
        ),
        (
            "She foundered last spring, Obel three that time, today she's Obel one.",
            ["- finding laminitis history", "- obel 1", "- obel 3 history"],
        ),
    ],
    "Tally. {}",
)

test_done_before_by_somebody_or_elsewhere = reads(
    [
        (
            "Thrush in the left hind. I did it once before with copper sulfate.",
            ["LH finding thrush", "LH treatment copper_sulfate history"],
        ),
        ("He did the left front last year, an abscess.", ["LF finding abscess history"]),
        ("He kicked the wall. He did that last year as well. Reset the fronts.", ["LF+RF work reset"]),
        ("Reset the fronts, and he stood quiet that time.", ["- manner quiet", "LF+RF work reset"]),
    ],
    "Tally. {}",
)

test_rather_there_was = reads(
    [
        (
            "A bruise on the off fore sole, or rather there was one, that was at the last visit, and it's cleared now.",
            ["RF finding bruise resolved @sole"],
        ),
        (
            "There's a corn in the near hind, well there was one, that was last time, it's gone now.",
            ["LH finding corn resolved"],
        ),
        (
            "She's got laminitis again, and she had it two summers ago.",
            ["- finding laminitis", "- finding laminitis history"],
        ),
    ],
    "Tansy. {}",
)

test_not_now_and_still = reads(
    [
        ("Used to forge, not now, stopped.", ["- gait forge resolved"]),
        ("He used to interfere, not any more.", ["- gait interfere resolved"]),
        ("He was lame on the off fore in May, not now.", ["RF gait lame resolved"]),
        ("He was lame in May, and today I could not fault him.", ["- gait lame history"]),
        ("He used to forge, and still does.", ["- gait forge"]),
        (
            "He used to forge like a drum kit, and I listened for it, and he's not forging now.",
            ["- gait forge resolved"],
        ),
        ("She used to interfere, and she isn't interfering now.", ["- gait interfere resolved"]),
        ("He used to forge, and he's not short striding now.", ["- gait forge history", "- gait short_stride absent"]),
        ("Corn in the off fore last time and she still has.", ["RF finding corn"]),
        ("He was lame on the off fore in May and he still is.", ["RF gait lame"]),
        ("He used to overreach, and he still stood quiet.", ["- gait overreach history", "- manner quiet"]),
        (
            "She's been known to be dangerous, but she was quiet today.",
            ["- manner dangerous history", "- manner quiet"],
        ),
        (
            "She always had to be sedated for the chap before me, for me she was only fidgety.",
            ["- manner fidgety", "- manner sedated history"],
        ),
        (
            "A wedge pad on each front, three degrees, he had two degrees up to Christmas.",
            ["LF+RF pad wedge", "LF+RF wedge 2 history", "LF+RF wedge 3"],
        ),
    ],
    "Tansy. {}",
)

test_was_behind_a_stop = reads(
    [
        (
            "Right front heel angle fifty. Was forty-eight in the fall.",
            ["RF heel_angle 48 history", "RF heel_angle 50"],
        ),
        ("Condition five. Was a seven in May.", ["- body_condition 5", "- body_condition 7 history"]),
        ("Condition five. Was lame in May.", ["- body_condition 5", "- gait lame history"]),
    ],
    "Tansy. {}",
)

test_worn_or_had_before = reads(
    [
        ("Somebody's had rubber shoes on her fronts before me.", ["LF+RF shoe_material rubber history"]),
        ("Both hinds were in egg bars before us.", ["LH+RH shoe_type egg_bar history"]),
        (
            "New steel on the fronts. The mesh pads he was wearing on the fronts before only held the dirt.",
            ["LF+RF pad mesh history", "LF+RF shoe_material steel", "LF+RF work new_shoe"],
        ),
        ("The studs she had behind before never stayed in.", ["LH+RH traction studs history"]),
        ("The rim pads he wore in front before didn't help.", ["LF+RF pad rim history"]),
        ("The rim pads I put in front before lunch.", ["LF+RF pad rim"]),
        ("He was quiet. Leather pads in front before only the rain came.", ["- manner quiet", "LF+RF pad leather"]),
    ],
    "Tally. {}",
)

test_happened_some_days_ago = reads(
    [
        ("The lad says he overreached last Tuesday on the beach.", ["- gait overreach history"]),
        ("He grabbed a heel on Sunday.", ["- gait overreach history"]),
        ("He hobbled in on Tuesday, off fore.", ["RF gait lame history"]),
        ("He's been forging since Sunday.", ["- gait forge"]),
        ("He lost the off fore on Tuesday.", ["RF shoe_state lost"]),
    ],
    "Tally. {}",
)

test_slip_of_one_finding_by_two_names = reads(
    [
        (
            "She's got greasy heel, that's scratches, on the near hind, severe, and on the off hind, mild.",
            ["LH finding scratches ~severe", "RH finding scratches ~mild"],
        ),
        (
            "Weak wall on the near fore. Mud fever, that is scratches, in both hinds.",
            ["LF finding weak_wall", "LH+RH finding scratches"],
        ),
        ("A bruise on the near fore, that's a corn on the off.", ["LF finding bruise", "RF finding corn"]),
    ],
    "Tally. {}",
)

test_over_and_still_seen = reads(
    [
        ("She'd laminitis two years ago, you'd see it still, growth rings.",
         ["- finding growth_rings", "- finding laminitis history"]),
        ("She foundered three years ago and you can see it still, growth rings on both fores.",
         ["- finding laminitis history", "LF+RF finding growth_rings"]),
        ("Had laminitis two years ago, it still shows, growth rings in front.",
         ["- finding laminitis history", "LF+RF finding growth_rings"]),
        ("He'd laminitis as a young horse and it still shows, he has growth rings all round.",
         ["- finding laminitis history", "LF+RF+LH+RH finding growth_rings"]),
        ("She had laminitis last month and she still has it.", ["- finding laminitis"]),
        ("Laminitis last month, it's still there.", ["- finding laminitis"]),
        ("Thrush last time in the left hind, you can still see it.", ["LH finding thrush"]),
        ("She'd a crack in the near fore two visits ago, you'd see it still.", ["LF finding crack"]),
        ("Bruise on the off fore last time, you can still see it.", ["RF finding bruise"]),
    ],
    "Tally. {}",
)  # fmt: skip

test_two_names_of_one_finding_behind = reads(
    [
        (
            "Tally. Near hind new. Other three refitted. Greasy heel, mud fever that is, on both hinds, moderate.",
            ["LF+RF+RH work reset", "LH work new_shoe", "LH+RH finding scratches ~moderate"],
        ),
        (
            "Tally. Reset in front. White line disease, seedy toe that is, in the near hind.",
            ["LF+RF work reset", "LH finding white_line_disease"],
        ),
        (
            "Tally. Reset in front. Thrush in the near hind, thrush that is old in the off hind.",
            ["LF+RF work reset", "LH+RH finding thrush"],
        ),
        (
            "Tally. Reset in front. Corn, bruise that is, in the near hind.",
            ["LF+RF finding corn", "LF+RF work reset", "LH finding bruise"],
        ),
    ]
)
