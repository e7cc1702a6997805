"""A finding gone from another foot than it is on, a place summed up behind "so", bounding feet, and other small turns.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_gone_from_the_other = reads(
    [
        ("Thrush in the left hind, gone in the right.", ["LH finding thrush", "RH finding thrush resolved"]),
        ("Thrush in the left hind, gone in the right hind.", ["LH finding thrush", "RH finding thrush resolved"]),
        ("Thrush in the near hind, gone from the off hind.", ["LH finding thrush", "RH finding thrush resolved"]),
        ("Thrush in the left hind, and it's gone from the right.", ["LH finding thrush", "RH finding thrush resolved"]),
        (
            "White line disease at the toe of the near fore, cleared up in the off fore.",
            ["LF finding white_line_disease @toe", "RF finding white_line_disease resolved"],
        ),
        (
            "Crack in the left front at the toe, grown out on the right front.",
            ["LF finding crack @toe", "RF finding crack resolved"],
        ),
        (
            "Thrush in the left hind, mild, gone in the right hind.",
            ["LH finding thrush ~mild", "RH finding thrush resolved"],
        ),
        # on the foot itself, and of a pair
        ("He had thrush in the left hind last time, gone in the left hind now.", ["LH finding thrush resolved"]),
        ("Thrush in both hinds, gone in the right.", ["LH finding thrush", "RH finding thrush resolved"]),
    ]
)

test_still_on_the_other = reads(
    [
        (
            "The broken back axis has gone on the left front, it's the right front that's still got it.",
            ["LF finding broken_back_axis resolved", "RF finding broken_back_axis"],
        ),
        (
            "Thrush is gone from the near hind, the off hind is the one that's still got it.",
            ["LH finding thrush resolved", "RH finding thrush"],
        ),
        (
            "No thrush in the near hind, it's the off hind that's got it.",
            ["LH finding thrush absent", "RH finding thrush"],
        ),
        # has something else
        (
            "The crack in the left front has grown out, it's the right front that's got the new shoe.",
            ["LF finding crack resolved", "RF work new_shoe"],
        ),
        (
            "The bruise has gone from the left front, it's the right front that has me worried.",
            ["LF finding bruise resolved"],
        ),
    ]
)

test_summed_up = reads(
    [
        (
            "Near fore is three out of five lame, and I found a nail gone in at the sole, so that's a puncture.",
            ["LF finding puncture @sole", "LF lameness 3"],
        ),
        ("The wall split at the toe of the left hind, so it's a crack.", ["LH finding crack @toe"]),
        ("Off hind, a screw gone into the frog, so that's a puncture.", ["RH finding puncture @frog"]),
        ("Bruise in the left front at the toe, so that's a reset.", ["LF finding bruise @toe", "LF work reset"]),
    ]
)

test_bounding = reads(
    [
        (
            "Fronts were bounding then, pulse normal in them now.",
            ["LF+RF pulse bounding history", "LF+RF pulse normal"],
        ),
        (
            "Both fronts were bounding last time, pulses normal today.",
            ["LF+RF pulse bounding history", "LF+RF pulse normal"],
        ),
        ("He came bounding across the field on the left front.", []),
    ]
)

test_half_a_nail_is_a_size = reads(
    [
        (
            "Left front reset, six nails with number five, no, four and a half nails.",
            ["LF nail_size 4.5", "LF nails 6", "LF work reset"],
        ),
        (
            "Size two, six nails, size five, sorry, four and a half nails, both fronts.",
            ["LF+RF nail_size 4.5", "LF+RF nails 6", "LF+RF shoe_size 2"],
        ),
    ]
)

test_stuff_in_the_name = reads(
    [
        (
            "Both front shoes flat steel, new.",
            ["LF+RF shoe_material steel", "LF+RF shoe_type plain", "LF+RF work new_shoe"],
        ),
        (
            "A pair of rubber boots over them, both fronts.",
            ["LF+RF shoe_material rubber", "LF+RF shoe_type boot"],
        ),
        ("New steel shoes in front.", ["LF+RF shoe_material steel", "LF+RF work new_shoe"]),
    ]
)

test_all_her_feet = reads(
    [
        (
            "The x-rays showed rotation in the near fore. Trimmed him round, left bare.",
            ["LF finding rotation", "LF+RF+LH+RH work trim"],
        ),
        ("Corn in the left front. Trimmed her, left her bare.", ["LF finding corn", "LF+RF+LH+RH work trim"]),
        ("Corn in the left front. Left her in her bare feet.", ["LF finding corn", "LF+RF+LH+RH work trim"]),
        ("Corn in the left front, trimmed it, left it bare.", ["LF finding corn", "LF work trim"]),
        (
            "Right fore abscess, drained it. That shoe stops off.",
            ["RF finding abscess", "RF treatment drained", "RF work removed"],
        ),
    ]
)

test_a_foot_that_is_rid_of_it = reads(
    [
        (
            "Near fore heels are underrun, the off fore's aren't any longer.",
            ["LF finding underrun_heels", "RF finding underrun_heels resolved"],
        ),
        (
            "Thin sole on the left front, the right front's come right.",
            ["LF finding thin_sole", "RF finding thin_sole resolved"],
        ),
        ("Corn in the near hind. The off hind's has grown out.", ["LH finding corn", "RH finding corn resolved"]),
        (
            "Flare on the left hind, lateral quarter, and the right hind used to and doesn't now.",
            ["LH finding flare @lateral_quarter", "RH finding flare resolved"],
        ),
        (
            "Left hind crack, right hind abscess, the left hind's grown out.",
            ["LH finding crack resolved", "RH finding abscess"],
        ),
        (
            (
                "Scratches have cleared up on the left hind, I'm not seeing any on the right "
                "hind now either, that's gone too."
            ),
            ["LH+RH finding scratches resolved"],
        ),
        ("Her heels were sheared on the near fore, they're grand now.", ["LF finding sheared_heels resolved"]),
        ("He'd a bruise in the off hind in March, it's fine now.", ["RH finding bruise resolved"]),
        ("The thrush that was in the left hind is cured.", ["LH finding thrush resolved"]),
        ("The corn in the near fore is finished.", ["LF finding corn resolved"]),
        (
            "The laminitis he had last spring, Obel two it was then, is all behind him.",
            ["- finding laminitis resolved", "- obel 2 history"],
        ),
        ("The abscess in the right front, that's well behind her.", ["RF finding abscess resolved"]),
        ("Thrush in both hinds, the right's cleared up.", ["LH finding thrush", "RH finding thrush resolved"]),
        ("Bruise in the off hind, mild. Reset it. She's fine now.", ["RH finding bruise ~mild", "RH work reset"]),
        (
            "Thrush in the near hind, iodine on it, and the job is finished.",
            ["LH finding thrush", "LH treatment iodine"],
        ),
        ("Bruise in the left front, about healed, still a touch there.", ["LF finding bruise ~mild"]),
        ("Corn in the off fore, just about gone.", ["RF finding corn"]),
        (
            "Seedy toe in the left front, iodine on it. It's gone into the wall there.",
            ["LF finding white_line_disease", "LF treatment iodine"],
        ),
        ("No thrush in front. The near hind's is gone.", ["LF+RF finding thrush absent"]),
    ],
    "Tally. {}",
)

test_the_foot_that_opens_the_clause = reads(
    [
        (
            "Thrush in the left hind, the right hind has cleared up.",
            ["LH finding thrush", "RH finding thrush resolved"],
        ),
        ("Thrush in the off hind, but the near hind's dried out.", ["LH finding thrush resolved", "RH finding thrush"]),
        (
            "The thrush in the left hind is no better, moderate still, but the right hind has dried up.",
            ["LH finding thrush ~moderate", "RH finding thrush resolved"],
        ),
        ("Bruise in the off fore. The near fore has healed.", ["LF finding bruise resolved", "RF finding bruise"]),
        (
            "Crack in the near fore, corn in the off fore, the near fore's grown out.",
            ["LF finding crack resolved", "RF finding corn"],
        ),
        ("Bruise in the near fore, the off fore has gone short.", ["LF finding bruise"]),
        (
            "Corn in the off fore. The near fore has gone a bit crumbly.",
            ["LF finding weak_wall ~mild", "RF finding corn"],
        ),
        ("Thrush in both hinds, the right hind's cleared up.", ["LH finding thrush", "RH finding thrush resolved"]),
        ("Had a crack in the left front. It has grown out.", ["LF finding crack resolved"]),
        ("Thrush in the left hind, and that one's dried up now.", ["LH finding thrush resolved"]),
    ],
    "Tally. {}",
)

test_settled = reads(
    [
        ("The close nail in her off hind from last time has settled completely.", ["RH finding close_nail resolved"]),
        ("The swelling in the off hind has settled.", ["RH finding swelling resolved"]),
        ("The bruise from last time in the near fore, that's settled down.", ["LF finding bruise resolved"]),
        ("Swelling in the near fore, fully settled.", ["LF finding swelling resolved"]),
        ("Near fore were pricked last time, that's settled now.", ["LF finding quicked resolved"]),
        ("Abscess near hind last visit, it's settled nicely.", ["LH finding abscess resolved"]),
        # the horse settles, and what has not
        ("Corn in the off hind, he's settled now.", ["RH finding corn"]),
        ("Corn in the off hind. Six weeks, that's settled then.", ["- next_visit_weeks 6 planned", "RH finding corn"]),
        ("Corn in the off hind. She settled completely once the others came in.", ["RH finding corn"]),
        ("Corn in the off hind. The mare soon settled down.", ["RH finding corn"]),
        ("Corn in the off hind, it has not settled.", ["RH finding corn"]),
    ]
)

test_there_was_one_on_the_other_foot = reads(
    [
        (
            "Right front has a bruise at the toe, and there was one in the left front in May, and that's cleared up.",
            ["LF finding bruise resolved", "RF finding bruise @toe"],
        ),
        (
            "Corn in the off fore, and he had one in the near fore, and that's gone.",
            ["LF finding corn resolved", "RF finding corn"],
        ),
        (
            "Thrush in the off hind, and there was some in the near hind, but that's dried up.",
            ["LH finding thrush resolved", "RH finding thrush"],
        ),
        # on the same foot, and where another is only spoken of
        ("Thrush in the off hind last time, and that's gone.", ["RH finding thrush resolved"]),
        ("Thrush in the near hind, the off hind was dirty, and it's gone.", ["LH finding thrush resolved"]),
    ]
)
