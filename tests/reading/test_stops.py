"""A full stop at a pause does not cut a degree or a place off from what it belongs to."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

CASES = {
    "a degree alone": ("Left front quarter crack. Mild.", ["LF finding crack @quarter ~mild"]),
    "a place, then a degree": (
        "Near fore bruise. Medial heel. Moderate. Pulse normal.",
        ["LF finding bruise @medial_heel ~moderate", "LF pulse normal"],
    ),
    "a place in a phrase": ("Thrush in the off hind. Down in the sulcus.", ["RH finding thrush @sulcus"]),
    "it is": (
        "White line separation in the right hind. At the toe. It's mild.",
        [
            "RH finding white_line_separation @toe ~mild",
        ],
    ),
    "one foot worse": (
        "Thrush both hinds. Near hind's worse. That one's severe. Off hind mild.",
        ["RH finding thrush ~mild", "LH finding thrush ~severe"],
    ),
    "not to the next finding": (
        "Thrush in the left hind. Mild flare on the right hind.",
        ["LH finding thrush", "RH finding flare ~mild"],
    ),
    "not to work": ("Reset the left hind. Toe.", ["LH work reset"]),
    "a place of both, and what was put there": (
        "Seedy toe, mild, left front and left hind. Both of them at the toe, copper sulfate on each.",
        ["LF+LH finding white_line_disease @toe ~mild", "LF+LH treatment copper_sulfate"],
    ),
    "a place at the head of a finding of its own": (
        "Thrush in the left hind. At the toe, a bruise.",
        ["LH finding bruise @toe", "LH finding thrush"],
    ),
    "a foot alone, and its place": (
        "Flare, moderate. Right hind only, out at the lateral quarter, no cracks in any foot.",
        ["LF+RF+LH+RH finding crack absent", "RH finding flare @lateral_quarter ~moderate"],
    ),
    "a foot alone before what needs none": (
        "Near fore reset. I'd suspect sidebone in her. Off hind. Vet to look at her.",
        ["LF work reset", "RH finding sidebone suspected", "- vet referral planned"],
    ),
    "all feet alone before what needs none": (
        "Sole depth ten on both fronts. Pulse is normal. All four, stood quiet. Six weeks.",
        ["- manner quiet", "- next_visit_weeks 6 planned", "LF+RF sole_depth 10", "LF+RF+LH+RH pulse normal"],
    ),
    "a foot that heads what is behind": (
        "Hinds reset. There's a corn in there. Left front. Six nails, size two.",
        ["LF nails 6", "LF shoe_size 2", "LH+RH finding corn", "LH+RH work reset"],
    ),
    "a denial takes no foot that follows": (
        "Hinds reset. No heat. Left front. Right front, thrush.",
        ["LH+RH finding heat absent", "LH+RH work reset", "RF finding thrush"],
    ),
    "a time alone": (
        "She had an abscess in the left hind. Two winters ago. Testers mild at the toe on the right front.",
        ["LH finding abscess history", "RF tester mild @toe"],
    ),
    "a grade of that time": (
        "She's the one that foundered. Obel grade two, last spring. Reset the hinds.",
        ["- finding laminitis history", "- obel 2 history", "LH+RH work reset"],
    ),
    "a time with what was then": (
        "Corn in the left front. Last time, a bruise. Reset the hinds.",
        ["LF finding bruise history", "LF finding corn", "LH+RH work reset"],
    ),
    "a time with more than itself": (
        "Corn in the left front. Two winters ago we'd the frost. Reset the hinds.",
        ["LF finding corn", "LH+RH work reset"],
    ),
    "the work of feet that were named before": (
        "Off fore has a new shoe. The near fore and both hinds got what they had. Reset, seven nails in the off fore.",
        ["LF+LH+RH work reset", "RF nails 7", "RF work new_shoe"],
    ),
    "the work said over again": (
        "Both hinds reset. Reset, six nails in the left hind and seven in the right hind.",
        ["LH nails 6", "LH+RH work reset", "RH nails 7"],
    ),
    "work of feet of its own": (
        "Thrush in both hinds. Trimmed, the fronts and hinds.",
        ["LF+RF+LH+RH work trim", "LH+RH finding thrush"],
    ),
    "a degree that somebody judges": (
        "Sidebone in the off fore. I'd say moderate. Near hind, thrush. I'd call that one thing or another.",
        ["LH finding thrush", "RF finding sidebone ~moderate"],
    ),
    "a degree judged behind a place": (
        "She's got thrush. Near hind, in the frog, mild, and off hind too, in the sulcus. I'd call it severe.",
        ["LH finding thrush @frog ~mild", "RH finding thrush @sulcus ~severe"],
    ),
    "a judgement on something else": (
        "Corn in the left hind. I'd say mild thrush on the right hind. Call it six weeks.",
        ["- next_visit_weeks 6 planned", "LH finding corn", "RH finding thrush ~mild"],
    ),
    "the feet of a measure": (
        "Trimmed the hinds. Hoof width four and a half inches. Both fronts, rims on both fronts.",
        ["LF+RF hoof_width 114.3", "LF+RF shoe_type rim", "LH+RH work trim"],
    ),
    "the feet of a measure, and the weather": (
        "No corn in the near fore. Heel height forty millimetres. Both hinds, minus ten and no gloves. Five weeks.",
        ["- next_visit_weeks 5 planned", "LF finding corn absent", "LH+RH heel_height 40"],
    ),
    "feet behind a measure that has its own": (
        "Corn in the left front. Toe length 85 millimetres. Both hinds, seedy toe, trimmed.",
        ["LF finding corn", "LF toe_length 85", "LH+RH finding white_line_disease", "LH+RH work trim"],
    ),
    "shoeing behind a stop, and a trim": (
        "Refitted both hinds, size two. Quarter clips, and trimmed in front.",
        ["LF+RF work trim", "LH+RH clips quarter", "LH+RH shoe_size 2", "LH+RH work reset"],
    ),
    "pads behind a stop, and a trim": (
        "Reset both fores. Leather pads, trimmed the hinds.",
        ["LF+RF pad leather", "LF+RF work reset", "LH+RH work trim"],
    ),
    "a word that leads to feet": (
        "Thrush in the left hind. He's flared at the outside quarter on. Both fronts, moderate.",
        ["LF+RF finding flare @lateral_quarter ~moderate", "LH finding thrush"],
    ),
    "shoes left on": (
        "Trimmed the hinds. Left the front ones on. Right hind has a corn.",
        ["LH+RH work trim", "RH finding corn"],
    ),
    "a foot with a place is a statement of its own": (
        "Thrush in the left hind. Right hind frog, canker.",
        ["LH finding thrush", "RH finding canker @frog"],
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


test_it_is_so_bad = reads(
    [
        ("Corn in the right front. It's mild, and I reset both fronts.", ["LF+RF work reset", "RF finding corn ~mild"]),
        ("Corn in the right front. It's severe, no heat.", ["RF finding corn ~severe", "RF finding heat absent"]),
        (
            "Club foot, right front. It's mild, and there's no sign of one in the left front.",
            ["LF finding club_foot absent", "RF finding club_foot ~mild"],
        ),
        ("Corn in the right front. Mild, a bruise in the left front.", ["LF finding bruise", "RF finding corn"]),
    ],
    "Tansy. {}",
)
