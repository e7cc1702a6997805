"""Thought or told to be lame, and found sound.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_thought_lame_and_found_sound = reads(
    [
        ("I thought he was lame on the off fore but he's sound.", ["- gait sound"]),
        ("I thought he was lame on the off fore, he's sound.", ["- gait sound"]),
        ("Owner thought he was lame, but he trotted up sound.", ["- gait sound"]),
        ("Owner said she was lame. She's sound.", ["- gait sound"]),
        ("He looked lame coming out of the box but he's sound on the hard.", ["- gait sound"]),
        ("They had him down as lame, I had him trotted and he's sound.", ["- gait sound"]),
        ("I was told he was two out of five lame, I make him sound.", ["- gait sound"]),
        ("They rang to say she was lame, she's sound.", ["- gait sound"]),
        ("I'd have sworn he was lame on the near hind, but jogged up he was sound.", ["- gait sound"]),
        ("She said he was lame behind, I couldn't see it.", []),
        ("I thought he was forging but he's not.", ["- gait forge absent"]),
        (
            "I did wonder about the near hind, he was resting it, but there's no heat in it and the pulse is normal.",
            ["LH finding heat absent", "LH pulse normal"],
        ),
        ("He was lame on the off fore but he's sound now.", ["- gait sound", "RF gait lame history"]),
        (
            "He looked lame last week, two out of five. He's sound today.",
            ["- gait sound", "- lameness 2 history"],
        ),
        ("He's lame on the off fore, I thought he'd be sound by now.", ["RF gait lame"]),
        ("I was hoping to find her sound but she's two out of five on the near fore.", ["LF lameness 2"]),
        # lame
        ("She said he was lame and he is, three out of five on the left front.", ["LF lameness 3"]),
        ("She says he's lame behind but sound in front.", ["LF+RF gait sound", "LH+RH gait lame"]),
        (
            "He looked lame on the off fore and testers were strong at the toe.",
            ["RF gait lame", "RF tester strong @toe"],
        ),
        ("Lame on the left front, sound behind.", ["LF gait lame", "LH+RH gait sound"]),
        (
            "She looked lame on the near fore. Abscess at the toe. Other three sound.",
            ["LF finding abscess @toe", "LF gait lame", "RF+LH+RH gait sound"],
        ),
    ]
)

test_told_of_him = reads(
    [
        (
            "The fella before me told me she was a dangerous article, but she stood quiet for me.",
            ["- manner dangerous history", "- manner quiet"],
        ),
        ("I'd been warned he was dangerous but not a bother on him.", ["- manner dangerous history", "- manner quiet"]),
        ("Word was he'd be dangerous. Quiet as anything.", ["- manner quiet"]),
        ("She said he'd be quiet, he was dangerous.", ["- manner dangerous"]),
        ("They'd told me he wouldn't stand without being sedated, he stood quiet.", ["- manner quiet"]),
        # as he stood today
        ("Owner says he's dangerous and I believe it.", ["- manner dangerous"]),
        ("Fidgety to start with, then stood quiet.", ["- manner fidgety", "- manner quiet"]),
    ]
)

test_quiet_for_being_sedated = reads(
    [
        ("He was sedated so no bother at all.", ["- manner sedated"]),
        ("Doped, so she was no trouble.", ["- manner sedated"]),
        ("Sedated, so she stood well.", ["- manner sedated"]),
        ("The vet sedated her first, so she was no bother.", ["- manner sedated"]),  # and nothing of the vet
        # how he stood, in words of its own
        ("Sedated, stood like a lamb.", ["- manner quiet", "- manner sedated"]),
        ("The vet sedated her, she was no bother.", ["- manner quiet", "- manner sedated"]),
        ("Not sedated, so stood well for once.", ["- manner quiet"]),
        ("Sedated last time, so I was glad she stood quiet.", ["- manner quiet", "- manner sedated history"]),
        ("Should they call the vet, no need.", ["- vet referral absent"]),
    ]
)

test_feared_and_not_there = reads(
    [
        (
            "Bruise in the left front sole. My first thought was an abscess, but I searched it and there's none.",
            ["LF finding abscess absent", "LF finding bruise @sole"],
        ),
        (
            "At first I reckoned he'd an abscess in the right front, turned out to be a bruise at the toe.",
            ["RF finding bruise @toe"],
        ),
        ("I thought it was an abscess in the left front, turned out it was a close nail.", ["LF finding close_nail"]),
        ("I was sure it was an abscess in the left front, it was only a bruise.", ["LF finding bruise"]),
        ("I was fearing laminitis but the pulses are normal in both fronts.", ["LF+RF pulse normal"]),
        # there after all
        ("I feared thrush in the hinds and sure enough, thrush in both.", ["LH+RH finding thrush"]),
        (
            "I was convinced there was an abscess in the left front and there was, at the toe.",
            ["LF finding abscess @toe"],
        ),
        ("I was sure he'd thrush in the left hind and he had.", ["LH finding thrush"]),
        ("I reckoned he'd a corn in the near fore.", ["LF finding corn"]),
    ]
)

test_a_gait_that_was_only_thought = reads(
    [
        ("They thought he was interfering, but he doesn't interfere, I watched him go.", ["- gait interfere absent"]),
        ("She reckoned he was forging, and he's not forging.", ["- gait forge absent"]),
        ("The owner thought he was forging, and he is.", ["- gait forge"]),
    ],
    "Tansy. {}",
)

test_sound_in_part_is_not_sound = reads(
    [
        ("Sound on the straight, but on the circle he's lame left hind.", ["LH gait lame"]),
        ("Trots up sound in a straight line but he's lame on the near fore on the circle.", ["LF gait lame"]),
        ("Looks sound on the straight. On a circle he's two out of five on the left front.", ["LF lameness 2"]),
        ("Walks out sound, one out of five on the off fore at the trot.", ["RF lameness 1"]),
        ("Lame left hind on the circle, sound on the straight.", ["LH gait lame"]),
        ("Sound at the walk, short striding in front at the trot.", ["LF+RF gait short_stride"]),
        ("Lame in front on hard ground, sound on soft.", ["LF+RF gait lame"]),
        ("Sound on the straight and on the circle.", ["- gait sound"]),
        ("Sound on the straight. Forges on the circle.", ["- gait forge", "- gait sound"]),
        ("Lame left hind, and then sound once the nail was out.", ["- gait sound", "LH gait lame"]),
    ],
    "Buck. {}",
)

test_gone_when_listened_for = reads(
    [
        ("He used to forge. I listened for it today. He's not forging now.", ["- gait forge resolved"]),
        ("He used to forge, and I listened for it, and he's not forging now.", ["- gait forge resolved"]),
        ("Overreaching in the spring. Listened for it and he's not overreaching.", ["- gait overreach resolved"]),
        (
            "He was forging last time. He's not overreaching today.",
            ["- gait forge history", "- gait overreach absent"],
        ),
    ],
    "Buck. {}",
)

test_thought_so_and_found_otherwise = reads(
    [
        ("I had thought the near fore was loose and it wasn't loose.", ["LF shoe_state loose absent"]),
        ("They told me the off hind was sprung. It isn't sprung.", ["RH shoe_state sprung absent"]),
        (
            "Near hind. I said puncture in June, it's not a puncture, there's no puncture in it.",
            ["LH finding puncture absent"],
        ),
        (
            "The last bloke called the near fore a club foot and the angle says otherwise, it's not a club foot.",
            ["LF finding club_foot absent"],
        ),
        (
            "The vet called it navicular in the off fore last year and it isn't navicular at all.",
            ["RF finding navicular absent"],
        ),
        (
            "His last man had him down for navicular in the off fore, and I don't see it, and no more does the vet, "
            "there's no navicular in him, the off fore or the near.",
            ["LF+RF finding navicular absent"],
        ),
        (
            "Right front, not certain if it's thrush. Left front, toe angle fifty degrees, no he isn't, fifty two.",
            ["LF toe_angle 52", "RF finding thrush suspected"],
        ),
        ("Her dad thinks laminitis. I don't reckon it is, there's no founder there.", ["- finding laminitis absent"]),
        ("They think thrush in the near hind. I don't think it is.", ["LH finding thrush absent"]),
        ("The groom reckoned he'd a corn in the near fore. I don't think so.", ["LF finding corn absent"]),
        # what was there once is gone, what is found elsewhere stands, and nobody's view is of another matter
        ("The vet said thrush in the off fore last year and there's no thrush now.", ["RF finding thrush resolved"]),
        (
            "They told me the off hind was sprung. The near hind isn't sprung.",
            ["LH shoe_state sprung absent", "RH shoe_state sprung"],
        ),
        ("Corn in the near fore. I don't think so much of the paddock either.", ["LF finding corn"]),
    ]
)

test_resting_and_forging = reads(
    [
        (
            "I had a look for an abscess in the off fore, 'cause she's been resting it, and there isn't one.",
            ["RF finding abscess absent"],
        ),
        ("He was resting it when I came. Corn in the off fore.", ["RF finding corn"]),
        ("Lame on the off fore, and she was resting it.", ["RF gait lame"]),
        ("She forged at the trot.", ["- gait forge"]),
        ("Forged in hand, and no other trouble.", ["- gait forge"]),
        ("I forged a bar shoe for the left front.", ["LF shoe_type bar"]),
    ],
    "Tally. {}",
)


test_lame_in_a_season = reads(
    [
        (
            "Owner said she were lame on the near hind in spring, but she's sound now.",
            ["- gait sound", "LH gait lame history"],
        ),
        ("Owner said she was lame on the near hind, but she's sound now.", ["- gait sound"]),
    ]
)
