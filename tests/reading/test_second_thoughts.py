"""A finding or its degree thought better of, and what hangs on a finding: on the foot that has it.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_what_he_settles_on = reads(
    [
        ("She'd been overreaching back in the winter, and she's not overreaching now.", ["- gait overreach resolved"]),
        ("He was interfering behind last time, but he's not interfering now.", ["LH+RH gait interfere resolved"]),
        ("He used to forge. He's not overreaching.", ["- gait forge history", "- gait overreach absent"]),
        (
            "Thrush in the off hind, in the sulcus, moderate, and a mild one in the near hind, in the frog.",
            ["LH finding thrush @frog ~mild", "RH finding thrush @sulcus ~moderate"],
        ),
        (
            "A bruise in the off fore, at the toe, bad, and a slight one in the near fore, at the heel.",
            ["LF finding bruise @heel ~mild", "RF finding bruise @toe ~severe"],
        ),
        ("I was going to say eight weeks, but with that joint I'd rather six.", ["- next_visit_weeks 6 planned"]),
        ("Eight weeks he'd normally go, but I'd sooner seven.", ["- next_visit_weeks 7 planned"]),
        ("Eight weeks. Six nails in front rather than seven.", ["- next_visit_weeks 8 planned", "LF+RF nails 6"]),
        ("Off hind, I've the shoe off that foot and left off.", ["RH work removed"]),
        ("Near fore, I had the shoe off that foot and nailed it back on.", ["LF work put_back"]),
        ("Vet out if she's no better by Friday.", ["- vet referral planned"]),
        ("He's interfering behind, no, he isn't interfering.", ["- gait interfere absent"]),
        ("He's forging, no, I watched him trot, he's not forging.", ["- gait forge absent"]),
        ("She's lame on the left front. No, she isn't lame.", ["- gait lame absent"]),
        ("She's lame on the left front, she's not lame behind.", ["LF gait lame", "LH+RH gait lame absent"]),
        ("He bit me. He's not dangerous, just fidgety.", ["- manner fidgety"]),
        ("She kicked out at me. No, she's not dangerous.", []),
        ("He lashed out at me. He isn't lame.", ["- gait lame absent", "- manner dangerous"]),
        (
            "Left front, quicked him, no abscess. Hinds trimmed. If it turns into an abscess we'll poultice it.",
            ["LF finding abscess absent", "LF finding quicked", "LF treatment poultice planned", "LH+RH work trim"],
        ),
        (
            "Thrush in the left hind. Fronts reset. If that thrush isn't gone we'll use iodine on it.",
            ["LF+RF work reset", "LH finding thrush", "LH treatment iodine planned"],
        ),
        (
            "Quarter crack on the near fore. Hinds trimmed. If that crack runs any higher I'll resect it.",
            ["LF finding crack @quarter", "LF treatment resection planned", "LH+RH work trim"],
        ),
        (
            "Abscess in the left hind. Fronts reset. If the abscess bursts we'll poultice it.",
            ["LF+RF work reset", "LH finding abscess", "LH treatment poultice planned"],
        ),
        (
            "Seedy toe in the off fore. Hinds trimmed. If the seedy toe spreads I'll resect it.",
            ["LH+RH work trim", "RF finding white_line_disease", "RF treatment resection planned"],
        ),
        (
            "Left front, white line disease at the toe, pretty bad, well, moderate.",
            ["LF finding white_line_disease @toe ~moderate"],
        ),
        ("Left front, thrush, severe, well, moderate really.", ["LF finding thrush ~moderate"]),
        ("Left front, a mild crack at the toe, well, moderate.", ["LF finding crack @toe ~moderate"]),
        (
            "Corn in the inside heel of the off fore, well no, it's more bruise than corn, put down bruise.",
            ["RF finding bruise @medial_heel"],
        ),
        ("Corn on the left front, no, more of a bruise than a corn.", ["LF finding bruise"]),
        ("Left front, an abscess, well no, it's more a bruise than an abscess.", ["LF finding bruise"]),
        (
            "Off fore has an abscess. The shoe was loose in any case so it's off and staying off.",
            ["RF finding abscess", "RF shoe_state loose", "RF work removed"],
        ),
        (
            "Took his old set off and he's on a new one, steel, fives in front and fours behind.",
            ["LF+RF shoe_size 5", "LF+RF+LH+RH shoe_material steel", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 4"],
        ),
        (
            "Thrush in the off hind and the near fore. Pulse is strong in both hinds.",
            ["LF+RH finding thrush", "LH+RH pulse raised"],
        ),
        (
            "Thrush in the off hind and the near fore. Testers moderate on both hinds.",
            ["LF+RH finding thrush", "LH+RH tester moderate"],
        ),
        # two things of their own
        (
            "Left front, bad thrush. Well, moderate flare on the right front.",
            ["LF finding thrush ~severe", "RF finding flare ~moderate"],
        ),
        ("Left front more flare than the right front.", ["LF finding flare"]),
        ("Left hind has thrush. Right hind, has it.", ["LH+RH finding thrush"]),
    ],
    "Tally. {}",
)

test_the_answer_of_one_foot_of_the_pair = reads(
    [
        ("Pulse was raised in both fronts, no, the right front was normal.", ["LF pulse raised", "RF pulse normal"]),
        (
            "Pulse raised in the left front and the right front, no, scratch that, the right front was normal.",
            ["LF pulse raised", "RF pulse normal"],
        ),
        ("Testers mild in both fronts, no, the right front was nothing.", ["LF tester mild", "RF tester none"]),
        ("Pulse bounding in both hinds, sorry, the near hind was raised.", ["LH pulse raised", "RH pulse bounding"]),
        ("Pulse was raised in both fronts, no, both hinds.", ["LH+RH pulse raised"]),
        ("Pulse raised in the left front, no, the right front was raised.", ["RF pulse raised"]),
    ]
)

test_half_asleep_the_horse_or_the_speaker = reads(
    [
        ("Near hind, toe angle fifty degrees, half asleep, fifty two degrees.", ["LH toe_angle 52"]),
        ("Reset in front, six nails, half asleep, seven.", ["LF+RF nails 7", "LF+RF work reset"]),
        # the horse
        (
            "Near fore, corn. Today, half asleep. Both fores, thrush.",
            ["- manner quiet", "LF finding corn", "LF+RF finding thrush"],
        ),
        ("Reset in front, half asleep, size two.", ["- manner quiet", "LF+RF shoe_size 2", "LF+RF work reset"]),
    ],
    "Tally. {}",
)

test_an_earlier_time_put_right = reads(
    [
        (
            "Last time the other chap had her in plain shoes in front, no, I'm wrong, in rim shoes, both fronts.",
            ["LF+RF shoe_type rim history"],
        ),
        ("Last month he'd a leather pad on the near fore, no, I'm wrong, a rim pad.", ["LF pad rim history"]),
        (
            "Last time he had rim shoes in front, I've put bar shoes on.",
            ["LF+RF shoe_type bar", "LF+RF shoe_type rim history"],
        ),
    ],
    "Buck. {}",
)

test_let_me_see_goes_on_to_the_other_end = reads(
    [
        (
            "Left hind has thrush. The other hind was reset. Let me see, the front.",
            ["LH finding thrush", "RH work reset"],
        ),
        ("Off hind reset, seven nails. Let me think, the fores.", ["RH nails 7", "RH work reset"]),
        ("Six nails in the left hind. Let me think, right hind.", ["RH nails 6"]),
    ],
    "Buck. {}",
)

test_one_more_finding_takes_nothing_back = reads(
    [
        (
            "Tally. Hinds trimmed. Oh, I should say, near fore's got a mild corn.",
            ["LF finding corn ~mild", "LH+RH work trim"],
        ),
        (
            "Tally. Near hind I refitted, six nails. Oh, I should say, near fore's got a mild corn, outside heel.",
            ["LF finding corn @lateral_heel ~mild", "LH nails 6", "LH work reset"],
        ),
        (
            "Tally. Thrush in the near hind. I should say, there's a crack in the off fore at the toe.",
            ["LH finding thrush", "RF finding crack @toe"],
        ),
        (
            "Tally. White line disease in the near fore, I reckon. Actually she's got a flare as well, off fore.",
            ["LF finding white_line_disease suspected", "RF finding flare"],
        ),
        (
            "Tally. Bruise in the off fore. Actually there's a corn too, inside heel.",
            ["RF finding bruise", "RF finding corn @medial_heel"],
        ),
        (
            "Tally. Reset in front. Actually he's got thrush in the near hind too.",
            ["LF+RF work reset", "LH finding thrush"],
        ),
        ("Tally. Corn in the near fore. I should say, the off fore's got the corn.", ["RF finding corn"]),
        ("Tally. Corn in the near fore, I should say the off fore.", ["RF finding corn"]),
        ("Tally. Bruise in the off fore. Actually, he's got a corn.", ["RF finding corn"]),
        (
            "Tally. Corn in the near fore, actually a bruise, and he's got thrush too.",
            ["LF finding bruise", "LF finding thrush"],
        ),
        ("Tally. Six nails in front. I should say, seven.", ["LF+RF nails 7"]),
    ]
)

_EGG = "LF+RF shoe_type egg_bar"
_NEW = "LF+RF work new_shoe"
_RESET = "LF+RF work reset"
test_thought_aloud = reads(
    [
        (
            "Reset both fores, egg bars, wedge pads, two degree, hmm, what did I put, three, it was three degree.",
            ["LF+RF pad wedge", _EGG, "LF+RF wedge 3", _RESET],
        ),
        (
            "Reset both fores, egg bars, two degree wedge pads, what did I put, it was three degree.",
            ["LF+RF pad wedge", _EGG, "LF+RF wedge 3", _RESET],
        ),
        ("New in front, size one, what did I put on, two, it was a two.", ["LF+RF shoe_size 2", _NEW]),
        ("New in front, size one. What did I put? Two.", ["LF+RF shoe_size 2", _NEW]),
        ("New in front, six nails. What did I use, uh, seven.", ["LF+RF nails 7", _NEW]),
        ("Toe angle left front fifty, hmm, what was it, fifty two, it was fifty two.", ["LF toe_angle 52"]),
        (
            "Reset in front, egg bars, hmm, what did I put on, straight bars, it was straight bars.",
            ["LF+RF shoe_type straight_bar", _RESET],
        ),
        (
            "New in front, silicone, what did I put in, putty, it was putty.",
            ["LF+RF packing putty", _NEW],
        ),
        ("New in front, size one, what did I put on her, six nails.", ["LF+RF nails 6", "LF+RF shoe_size 1", _NEW]),
        ("New in front, what did I put on, size two, six nails.", ["LF+RF nails 6", "LF+RF shoe_size 2", _NEW]),
        ("Six nails in front. What did I use? Six slims.", ["LF+RF nail_size 6 slim", "LF+RF nails 6"]),
        ("Toe angle near fore fifty two, it was fifty.", ["LF toe_angle 50 history", "LF toe_angle 52"]),
        (
            "Toe angle near fore fifty two, and last time, what was it, it was fifty.",
            ["LF toe_angle 50 history", "LF toe_angle 52"],
        ),
    ]
)

_LH_ALONE = ["LH finding thrush", "RH finding thrush absent"]
test_that_foot_alone = reads(
    [
        (
            "Thrush, the left hind, and, let me think, no, just the left hind, right hind didn't have any thrush. "
            "Copper sulfate on the thrush.",
            ["LH finding thrush", "LH treatment copper_sulfate", "RH finding thrush absent"],
        ),
        (
            "Thrush in the near hind, let me think, just the near hind, the off hind had none. Copper sulfate on it.",
            ["LH finding thrush", "LH treatment copper_sulfate", "RH finding thrush absent"],
        ),
        (
            "Thrush in the left hind, and the, uh, no, just the left hind, right hind hasn't any. Iodine on it.",
            ["LH finding thrush", "LH treatment iodine", "RH finding thrush absent"],
        ),
        ("Thrush in the near hind, no, only the near hind, off hind doesn't have it.", _LH_ALONE),
        ("Thrush in both hinds, no, just the left hind, right hind didn't have any.", _LH_ALONE),
        (
            "Thrush in the near hind. No thrush in the off hind. Copper sulfate on it.",
            ["LH finding thrush", "LH treatment copper_sulfate", "RH finding thrush absent"],
        ),
        ("Thrush in the near hind, no, off hind.", ["RH finding thrush"]),
    ]
)

test_put_on_the_sheet = reads(
    [
        (
            "Sheared heels on the right front, severe, so, wait, no, I put severe on the sheet but it's more moderate.",
            ["RF finding sheared_heels ~moderate"],
        ),
        ("Corn, off fore, mild, hang on, I had mild down but it's more severe.", ["RF finding corn ~severe"]),
        (
            "Testers strong on the near fore, no, I put strong on the sheet but it's more moderate.",
            ["LF tester moderate"],
        ),
        (
            "Toe angle near fore fifty, wait, I put fifty on the sheet but it's more like fifty two.",
            ["LF toe_angle 52"],
        ),
        (
            "Six nails in front. I put six nails in the hinds, and seven in the near fore.",
            ["LF nails 7", "RF+LH+RH nails 6"],
        ),
    ]
)

test_suspected_though_no_pus_came = reads(
    [
        (
            "Lame on the left hind. I suspect an abscess, but I didn't get any pus.",
            ["LH finding abscess suspected", "LH gait lame"],
        ),
        (
            "Left hind. Probably an abscess, no pus yet. Poultice on.",
            ["LH finding abscess suspected", "LH treatment poultice"],
        ),
        ("Left hind. I think there's an abscess brewing, but I found no pus.", ["LH finding abscess suspected"]),
        ("Left hind. Could be an abscess, didn't find any pus though.", ["LH finding abscess suspected"]),
        ("Left hind. Looked for an abscess, got no pus.", ["LH finding abscess absent"]),
        ("Left hind. I suspect an abscess, but the vet says it isn't one.", ["LH finding abscess absent"]),
    ]
)
