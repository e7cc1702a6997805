"""The finding just told, once more on another foot in its own place and degree; and what is gone by now.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_again_on_another_foot = reads(
    [
        (
            "No thrush in the hinds, only a small touch in the off fore frog.",
            ["LH+RH finding thrush absent", "RF finding thrush @frog ~mild"],
        ),
        (
            "No heat in the near fore, just a wee touch in the off fore.",
            ["LF finding heat absent", "RF finding heat ~mild"],
        ),
        (
            "White line disease, near fore, toe, severe. Off fore, toe also, slight.",
            ["LF finding white_line_disease @toe ~severe", "RF finding white_line_disease @toe ~mild"],
        ),
        (
            "White line disease, near fore, toe, severe. Off fore the toe as well, slight.",
            ["LF finding white_line_disease @toe ~severe", "RF finding white_line_disease @toe ~mild"],
        ),
        (
            "Crack near fore, toe, moderate. Off fore too, at the quarter, mild.",
            ["LF finding crack @toe ~moderate", "RF finding crack @quarter ~mild"],
        ),
        ("Bruise left front, heel. Right front also, toe.", ["LF finding bruise @heel", "RF finding bruise @toe"]),
        (
            "Thrush left hind, frog, bad. Right hind likewise, mild.",
            ["LH finding thrush @frog ~severe", "RH finding thrush @frog ~mild"],
        ),
        (
            "Flare left front, lateral quarter. Right front as well, medial quarter.",
            ["LF finding flare @lateral_quarter", "RF finding flare @medial_quarter"],
        ),
        (
            "Seedy toe near fore, severe. Off fore, a touch.",
            ["LF finding white_line_disease ~severe", "RF finding white_line_disease ~mild"],
        ),
        (
            "Thrush left hind, sulcus, severe. Right hind, slight.",
            ["LH finding thrush @sulcus ~severe", "RH finding thrush ~mild"],
        ),
        (
            "Testers left front, moderate at the toe. Right front, toe also, mild.",
            ["LF tester moderate @toe", "RF tester mild @toe"],
        ),
        ("Thrush left hind, frog, bad. Right hind as well.", ["LH+RH finding thrush @frog ~severe"]),
        (
            "Thrush left hind, frog, bad. Copper sulfate on it. Right hind, frog, mild.",
            ["LH finding thrush @frog ~severe", "LH treatment copper_sulfate", "RH finding thrush @frog ~mild"],
        ),
        (
            "Bruise right front at the toe. Left hind, heel, severe.",
            ["LH finding bruise @heel ~severe", "RF finding bruise @toe"],
        ),
        ("No thrush in the left hind. Right hind, mild.", ["LH finding thrush absent", "RH finding thrush ~mild"]),
        ("Thrush left hind, severe. Right hind, heel, corn.", ["LH finding thrush ~severe", "RH finding corn @heel"]),
        ("Thrush left hind, severe. Right hind, mild flare.", ["LH finding thrush ~severe", "RH finding flare ~mild"]),
        ("Thrush left hind, severe. Right hind, trimmed.", ["LH finding thrush ~severe", "RH work trim"]),
    ],
    "Buck. {}",
)

test_there_last_time_and_now = reads(
    [
        ("Abscess off fore last visit, nothing of it now.", ["RF finding abscess resolved"]),
        ("Abscess off fore last visit, no sign of it today.", ["RF finding abscess resolved"]),
        ("Corn in the near fore last time, not a trace of it now.", ["LF finding corn resolved"]),
        ("Thrush in the left hind in March, nothing there now.", ["LH finding thrush resolved"]),
        ("Bruise right front last trip, can't find it today.", ["RF finding bruise resolved"]),
        ("Had a crack in the near fore last year, nothing to see of it now.", ["LF finding crack resolved"]),
        ("Scratches on both hinds last month, none of it left.", ["LH+RH finding scratches resolved"]),
        ("Seedy toe off fore in the spring, all grown out.", ["RF finding white_line_disease resolved"]),
        ("Abscess off fore last visit, still draining.", ["RF finding abscess history"]),
        ("Corn left front last cycle, you'd never know it now.", ["LF finding corn resolved"]),
        ("I half suspect an abscess in the off fore but I couldn't find it.", ["RF finding abscess suspected"]),
    ],
    "Buck. {}",
)

test_every_shoe_and_the_lot = reads(
    [
        (
            "Every shoe worn thin as he came. New set all round.",
            ["LF+RF+LH+RH shoe_state worn", "LF+RF+LH+RH work new_shoe"],
        ),
        ("Every shoe loose.", ["LF+RF+LH+RH shoe_state loose"]),
        ("All the shoes were worn.", ["LF+RF+LH+RH shoe_state worn"]),
        ("All his shoes were sprung.", ["LF+RF+LH+RH shoe_state sprung"]),
        ("Every one of his shoes worn through.", ["LF+RF+LH+RH shoe_state worn"]),
        ("Shoes all worn thin.", ["LF+RF+LH+RH shoe_state worn"]),
        ("Each shoe was loose.", ["LF+RF+LH+RH shoe_state loose"]),
        ("The whole set was worn.", ["LF+RF+LH+RH shoe_state worn"]),
        ("Worn to nothing, the four of them.", ["LF+RF+LH+RH shoe_state worn"]),
        ("All four shoes worn.", ["LF+RF+LH+RH shoe_state worn"]),
        ("Growth rings on the lot.", ["LF+RF+LH+RH finding growth_rings"]),
        ("Growth rings on every foot.", ["LF+RF+LH+RH finding growth_rings"]),
        ("Growth rings, all of them.", ["LF+RF+LH+RH finding growth_rings"]),
        ("Growth rings the whole way round.", ["LF+RF+LH+RH finding growth_rings"]),
        ("Both fronts reset. Every shoe was loose.", ["LF+RF shoe_state loose", "LF+RF work reset"]),
        ("Near fore was loose.", ["LF shoe_state loose"]),
        ("Bandaged the lot.", ["- treatment bandage"]),
    ],
    "Buck. {}",
)

test_graded_before_it_is_named = reads(
    [
        ("Mild on the off hind, that thrush.", ["RH finding thrush ~mild"]),
        (
            "Mild on the off hind, moderate on the near, the thrush.",
            ["LH finding thrush ~moderate", "RH finding thrush ~mild"],
        ),
        (
            "Severe on the left hind, worse on the right, that canker.",
            ["LH finding canker ~severe", "RH finding canker"],
        ),
        (
            "Thrush both hinds: mild on the off, worse on the near.",
            ["LH finding thrush", "RH finding thrush ~mild"],
        ),
        ("Mild on the off hind, a bruise in the near fore.", ["LF finding bruise"]),
        ("Mild on the off hind, the bruise is at the toe.", ["RH finding bruise @toe"]),
    ],
    "Buck. {}",
)

test_degrees_in_other_words = reads(
    [
        ("Little toe crack on the left front, nothing I'd lose sleep over.", ["LF finding crack @toe ~mild"]),
        ("Smidge of flare on the right hind, inside.", ["RH finding flare @medial ~mild"]),
        ("Corn in the near fore, wouldn't lose any sleep over it.", ["LF finding corn ~mild"]),
        ("Toe crack, left front, nothing to lose sleep over.", ["LF finding crack @toe ~mild"]),
        ("Little toe crack, left front.", ["LF finding crack @toe ~mild"]),
        ("Tad of thrush in the off hind.", ["RH finding thrush ~mild"]),
        ("Little mare, flare on the near fore.", ["LF finding flare"]),
        ("Little or no thrush in the near hind.", ["LH finding thrush absent"]),
        ("Thrush in the near hind. Bit me, but I wouldn't lose sleep over that.",
         ["- manner dangerous", "LH finding thrush"]),
    ],
    "Tally. {}",
)  # fmt: skip
