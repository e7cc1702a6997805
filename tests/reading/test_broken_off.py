"""A full stop in the midst of a sentence neither denies nor brings a plan into today."""

from __future__ import annotations

from tests.reading.conftest import reads

PUT_RIGHT = [
    ("Found a bruise in the left front, no. Right front, in the sole.", ["RF finding bruise @sole"]),
    ("Thrush in the near hind, no. Off hind.", ["RH finding thrush"]),
    ("Both fronts reset, size one, no. Two.", ["LF+RF shoe_size 2", "LF+RF work reset"]),
    ("Crack in the left front, mild, no. Severe.", ["LF finding crack ~severe"]),
    (
        "Right hind has seedy toe at the inside, no. Outside quarter.",
        ["RH finding white_line_disease @lateral_quarter"],
    ),
    ("Pads on both fronts with putty, no. Silicone.", ["LF+RF packing silicone"]),
    ("Scratches on all four, no. Only the hinds.", ["LH+RH finding scratches"]),
    ("Seven nails in the right front, no. Hang on, six.", ["RF nails 6"]),
    ("Both hinds have thrush, well, no. The near hind does.", ["LH finding thrush"]),
    ("There's a corn in both fronts, no. Only the off fore has. Heat in it.", ["RF finding corn", "RF finding heat"]),
    (
        "Leather pads in front, silicone in there, no. I'd none left. Pine tar.",
        ["LF+RF packing pine_tar", "LF+RF pad leather"],
    ),
    ("Fronts reset, quarter clips, no. He wouldn't have it, toe clips.", ["LF+RF clips toe", "LF+RF work reset"]),
]

# "No" answers: what stands behind it is a statement of its own.
ANSWERED = [
    ("Left front thrush, no. Right front thrush, mild.", ["LF finding thrush absent", "RF finding thrush ~mild"]),
    (
        "Thrush, no. Corn, no. Bruise, left front.",
        ["- finding corn absent", "- finding thrush absent", "LF finding bruise"],
    ),
    ("Thrush in the left front, no. Heat in the right front.", ["LF finding thrush absent", "RF finding heat"]),
    (
        "Thrush in both fronts, no. He's sound, corn in the left front.",
        ["- gait sound", "LF finding corn", "LF+RF finding thrush absent"],
    ),
    (
        "Heat in the left front, no. I looked twice. Pads, leather, on both.",
        ["LF finding heat absent", "LF+RF pad leather"],
    ),
    ("Any thrush? No. Corn in the left front.", ["- finding thrush absent", "LF finding corn"]),
]

AGAINST = [
    (
        "Near fore, the pulse is normal. Compared with raised a month ago, he's one out of five on the near fore.",
        ["LF lameness 1", "LF pulse normal", "LF pulse raised history"],
    ),
    (
        "Toe angle 51 left front, 52 right front, and last time, from my notes. The right front was 49, no heat.",
        ["LF toe_angle 51", "RF finding heat absent", "RF toe_angle 49 history", "RF toe_angle 52"],
    ),
    (
        "Toe angle 51 on the left front. He was bad last time. The right front was shelly.",
        ["LF toe_angle 51", "RF finding weak_wall"],
    ),
    (
        "The off fore was sprung. No, I'm thinking of the grey. It was the near fore that was sprung.",
        ["LF shoe_state sprung"],
    ),
    (
        "They wanted wedge pads in front, I said not today. So no wedge pads. If he's sore in June he'll get them.",
        ["LF+RF pad wedge absent", "LF+RF pad wedge planned"],
    ),
    (
        "Thrush in the left hind. So no pads, leather or otherwise. Trimmed the hinds.",
        ["LH finding thrush", "LH+RH work trim"],
    ),
]

PLANNED = [
    (
        "Next time I'll put new shoes on the fronts. Plain steel, probably an aught. Six weeks.",
        [
            "- next_visit_weeks 6 planned",
            "LF+RF shoe_material steel planned",
            "LF+RF shoe_size 0 planned",
            "LF+RF shoe_type plain planned",
            "LF+RF work new_shoe planned",
        ],
    ),
    (
        "Once he's right I'll put a new shoe on the left front. Size one. With a full pad.",
        ["LF pad full planned", "LF shoe_size 1 planned", "LF work new_shoe planned"],
    ),
    (
        "If she gets tender I'll put new shoes on the fronts, steel. Size two.",
        ["LF+RF shoe_material steel planned", "LF+RF shoe_size 2 planned", "LF+RF work new_shoe planned"],
    ),
    # Another foot, or work, is of today.
    (
        "Next time bar shoes in front. Plain steel behind, reset.",
        [
            "LF+RF shoe_type bar planned",
            "LH+RH shoe_material steel",
            "LH+RH shoe_type plain",
            "LH+RH work reset",
        ],
    ),
    (
        "If that crack runs I'll put a bar shoe on the left front. Six nails in each hind.",
        ["LF shoe_type bar planned", "LH+RH nails 6"],
    ),
]

NOT_SEEN = [
    (
        "Not seen, thrush or swelling in any foot, new shoes all round, steel.",
        [
            "LF+RF+LH+RH finding swelling absent",
            "LF+RF+LH+RH finding thrush absent",
            "LF+RF+LH+RH shoe_material steel",
            "LF+RF+LH+RH work new_shoe",
        ],
    ),
    (
        "White line separation in the off fore, medial quarter, not seen, thrush or heat in any foot.",
        [
            "LF+RF+LH+RH finding heat absent",
            "LF+RF+LH+RH finding thrush absent",
            "RF finding white_line_separation @medial_quarter",
        ],
    ),
    ("Sidebone in the near fore, not seen.", ["LF finding sidebone absent"]),
]

ANSWER_BEHIND = [
    (
        "Testers, left front, mild at the toe, right front. No reaction, trimmed all round.",
        ["LF tester mild @toe", "LF+RF+LH+RH work trim", "RF tester none"],
    ),
    (
        "Left hind has thrush in the frog. Bad, copper sulfate packed in.",
        ["LH finding thrush @frog ~severe", "LH treatment copper_sulfate"],
    ),
]

THOUGHT_OVER = [
    (
        "New shoe on the near hind, size three. No. Wait till I see. Two and a half. Fronts reset.",
        ["LF+RF work reset", "LH shoe_size 2.5", "LH work new_shoe"],
    ),
    ("Near hind took six nails. No. Let me think. Seven.", ["LH nails 7"]),
    (
        "Corn in the left front. No. Hang on. Right front. Six weeks.",
        ["- next_visit_weeks 6 planned", "RF finding corn"],
    ),
    (
        "Sole depth nine mil on the near fore and on the off fore. Let me look, twelve, no, eleven.",
        ["LF sole_depth 9", "RF sole_depth 11"],
    ),
    ("Toe angle 52 on the left front and on the right front. Um. 53.", ["LF toe_angle 52", "RF toe_angle 53"]),
    (
        "Toe length 85 on the left front and on the right front. Let me see. Six weeks.",
        ["- next_visit_weeks 6 planned", "LF+RF toe_length 85"],
    ),
    (
        "New shoes in front, size three. No. Wait. Six nails each.",
        ["LF+RF nails 6", "LF+RF shoe_size 3", "LF+RF work new_shoe"],
    ),
]

test_against = reads(AGAINST)
test_thought_over = reads(THOUGHT_OVER)
test_answer_behind = reads(ANSWER_BEHIND)
test_put_right = reads(PUT_RIGHT)
test_answered = reads(ANSWERED)
test_planned = reads(PLANNED)
test_not_seen = reads(NOT_SEEN)
