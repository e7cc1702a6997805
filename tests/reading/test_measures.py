"""Numbers with what they count: measures, sizes, nails, wedges and grades."""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

CASES = {
    "size of shoes, not how many": ("Number four shoes in front.", ["LF+RF shoe_size 4"]),
    "size of shoes and of nails": (
        "In front size four shoes, number six nails. Behind, number three shoes and number five nails.",
        ["LF+RF nail_size 6", "LF+RF shoe_size 4", "LH+RH nail_size 5", "LH+RH shoe_size 3"],
    ),
    "how many shoes": ("Reset all four shoes, size two.", ["LF+RF+LH+RH shoe_size 2", "LF+RF+LH+RH work reset"]),
    "inches eighths": ("Left front toe three inches and three eighths.", ["LF toe_length 85.7"]),
    "three and three eighths": ("Right front toe length three and three eighths inches.", ["RF toe_length 85.7"]),
    "digits": ("Left front toe length 3 1/4 inches.", ["LF toe_length 82.6"]),
    "mm": ("Toe length 92 mm on the near fore.", ["LF toe_length 92"]),
    "cm": ("Off fore toe length nine centimetres.", ["RF toe_length 90"]),
    "angle half": ("Left front toe angle fifty one and a half.", ["LF toe_angle 51.5"]),
    "angles at their places": (
        "Left front 48 degrees at the toe and 42 degrees at the heel, right front fifty at the toe and 45 at the heel.",
        ["LF heel_angle 42", "LF toe_angle 48", "RF heel_angle 45", "RF toe_angle 50"],
    ),
    "angles at their places, heel first": (
        "The near hind measured 44 degrees at the heel and 53 at the toe.",
        ["LH heel_angle 44", "LH toe_angle 53"],
    ),
    "angles behind their places": (
        "Left front toe 48 degrees at the heel 42 degrees.",
        ["LF heel_angle 42", "LF toe_angle 48"],
    ),
    "no angle at a place": (
        "Left front 48 degrees at the toe, bruise at the heel.",
        ["LF finding bruise @heel", "LF toe_angle 48"],
    ),
    "crest behind the grade": ("The neck is, what, a four out of five on the crest.", ["- cresty_neck 4"]),
    "crest and lameness": (
        "Three out of five for the crest and two out of five on the near fore.",
        ["- cresty_neck 3", "LF lameness 2"],
    ),
    "angles both": (
        "Toe angle fifty two degrees left front and fifty three degrees right front.",
        ["LF toe_angle 52", "RF toe_angle 53"],
    ),
    "angle both fronts": ("Both fronts toe angle fifty three degrees.", ["LF+RF toe_angle 53"]),
    "angle decimals": ("Near fore angle 51.5 degrees.", ["LF toe_angle 51.5"]),
    "point five": ("Near fore toe angle fifty one point five degrees.", ["LF toe_angle 51.5"]),
    "heel angle": ("Heel angle forty eight on the off hind.", ["RH heel_angle 48"]),
    "heel height": ("Heel height two inches on the left front.", ["LF heel_height 50.8"]),
    "sole depth": ("Sole depth twelve millimetres on the right front.", ["RF sole_depth 12"]),
    "half an inch sole": ("Half an inch of sole on the left front.", ["LF sole_depth 12.7"]),
    "width": ("Left front is five inches across.", ["LF hoof_width 127"]),
    "hoof width": ("Hoof width five and a quarter inches, left front.", ["LF hoof_width 133.4"]),
    "size word": ("Size three on the fronts.", ["LF+RF shoe_size 3"]),
    "size zero": ("Left front, size zero.", ["LF shoe_size 0"]),
    "double aught": ("Double aught on both hinds.", ["LH+RH shoe_size 00"]),
    "triple aught": ("Triple aughts on the fronts.", ["LF+RF shoe_size 000"]),
    "quad": ("Quad aught on the hinds.", ["LH+RH shoe_size 0000"]),
    "nought UK": ("Size nought on the fores.", ["LF+RF shoe_size 0"]),
    "ones in front": ("Ones in front, aughts behind.", ["LF+RF shoe_size 1", "LH+RH shoe_size 0"]),
    "number two": ("Number two shoes on the fronts.", ["LF+RF shoe_size 2"]),
    "one and a half": ("Size one and a half on the left hind.", ["LH shoe_size 1.5"]),
    "between aught and one": ("Left front is between an aught and a one.", ["LF shoe_size 0-1"]),
    "between one and two": ("Right front is between a one and a two.", ["RF shoe_size 1-2"]),
    "three a side": ("Fronts three a side.", ["LF+RF nails 6"]),
    "three each side": ("Reset the hinds, three nails each side.", ["LH+RH work reset", "LH+RH nails 6"]),
    "four out three in": ("Left hind, four outside and three inside.", ["LH nails 7"]),
    "two in three out": ("Right front, two nails inside, three outside.", ["RF nails 5"]),
    "half dozen": ("Half a dozen nails in the right front.", ["RF nails 6"]),
    "six in each": ("Six nails in each of the fronts.", ["LF+RF nails 6"]),
    "apiece": ("Hinds seven nails apiece.", ["LH+RH nails 7"]),
    "six and seven": ("Six nails in the left front and seven in the right front.", ["LF nails 6", "RF nails 7"]),
    "nail size": ("Size five nails on the fronts.", ["LF+RF nail_size 5"]),
    "slims": ("Five slims on both fronts.", ["LF+RF nail_size 5 slim"]),
    "four and a half": ("Four and a half nails on the hinds.", ["LH+RH nail_size 4.5"]),
    "count and size": ("Fronts, six nails, size five.", ["LF+RF nails 6", "LF+RF nail_size 5"]),
    "wedge": ("Two degree wedges on the fronts.", ["LF+RF pad wedge", "LF+RF wedge 2"]),
    "wedge pad": ("Three degree wedge pad on the left front.", ["LF pad wedge", "LF wedge 3"]),
    "aaep": ("Grade three lame on the right hind.", ["RH lameness 3"]),
    "out of five": ("One out of five lame, left front.", ["LF lameness 1"]),
    "whole horse grade": ("He's two out of five lame.", ["- lameness 2"]),
    "bcs": ("Body condition score five.", ["- body_condition 5"]),
    "bcs half": ("Body condition five and a half.", ["- body_condition 5.5"]),
    "bcs out of nine": ("Body condition seven out of nine.", ["- body_condition 7"]),
    "cresty": ("Cresty neck score three.", ["- cresty_neck 3"]),
    "crest out of five": ("Cresty neck three out of five.", ["- cresty_neck 3"]),
    "obel": ("Obel grade one.", ["- obel 1"]),
    "year is no size": ("She's been with them since two thousand and ten.", []),
    "age is no size": ("He's a six year old.", []),
    "hands is no size": ("He's sixteen two hands.", []),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)


def test_a_size_alone_behind_the_nails_of_a_sized_shoe_is_theirs(read: Read) -> None:
    visits = read("Tally. New shoes in front. Size one. Four nails a side. Size five.", "Tally")
    told = {(f.foot, f.slot, f.value) for v in visits for f in v.facts if f.slot in ("shoe_size", "nail_size")}
    assert told == {
        (foot, slot, value) for foot in ("LF", "RF") for slot, value in (("shoe_size", "1"), ("nail_size", "5"))
    }


test_two_lengths_set_against_each_other = reads(
    [
        (
            "Off fore, heel height there is sixty millimetres against forty two on the near fore.",
            ["LF heel_height 42", "RF heel_height 60"],
        ),
        (
            "Heel height on the off fore, sixty one millimetres as against fifty eight millimetres on the near fore.",
            ["LF heel_height 58", "RF heel_height 61"],
        ),
        (
            "Toe angle off fore fifty two degrees as compared with fifty degrees on the near fore.",
            ["LF toe_angle 50", "RF toe_angle 52"],
        ),
        ("Heel height sixty one on the off fore, as good as I've had it.", ["RF heel_height 61"]),
    ],
    "Buck. {}",
)

test_a_bare_toe_is_its_length = reads(
    [
        ("Off fore toe was eighty-five and the heel was forty-two.", ["RF toe_length 85"]),
        (
            "Off fore, toe length ninety, heel height thirty-eight. The off fore toe was ninety-six last time.",
            ["RF heel_height 38", "RF toe_length 90", "RF toe_length 96 history"],
        ),
        ("Off hind heel height forty. Toe's eighty-five on that foot.", ["RH heel_height 40", "RH toe_length 85"]),
        ("Near fore hoof width a hundred and thirty, toe eighty-eight.", ["LF hoof_width 130", "LF toe_length 88"]),
        (
            "Near fore, toe angle fifty-two, heel angle forty-eight. The near fore toe was fifty last time.",
            ["LF heel_angle 48", "LF toe_angle 50 history", "LF toe_angle 52"],
        ),
        ("Rocker toe on the near fore, size two.", ["LF shoe_size 2", "LF shoe_type rocker_toe"]),
    ],
    "Buck. {}",
)

test_taken_back_to_a_length = reads(
    [
        ("Long at the toe. I took them back to ninety.", ["- finding long_toe", "- toe_length 90"]),
        ("Left front long at the toe. I took it back to ninety.", ["LF finding long_toe", "LF toe_length 90"]),
        (
            "Fronts were long in the toe, took them back to eighty five.",
            ["LF+RF finding long_toe", "LF+RF toe_length 85"],
        ),
        ("Long toes in front. Brought them back to eighty eight.", ["LF+RF finding long_toe", "LF+RF toe_length 88"]),
        ("Hinds long in the toe, cut back to eighty six.", ["LH+RH finding long_toe", "LH+RH toe_length 86"]),
        ("Toe was long on the near fore, I've it back to ninety one.", ["LF finding long_toe", "LF toe_length 91"]),
        (
            "Off fore long in the toe, took it back to three and a quarter.",
            ["RF finding long_toe", "RF toe_length 82.6"],
        ),
        (
            "Long toes all round, dressed back to eighty two.",
            ["LF+RF+LH+RH finding long_toe", "LF+RF+LH+RH toe_length 82"],
        ),
        ("Long toe on the near hind, back to eighty seven now.", ["LH finding long_toe", "LH toe_length 87"]),
        ("Near fore long at the toe, rasped back to eighty.", ["LF finding long_toe", "LF toe_length 80"]),
        # here it says nothing
        ("Fronts long in the toe. Took him back to fifty two degrees.", ["LF+RF finding long_toe"]),
        ("Long toes in front. He's back to six weeks.", ["- next_visit_weeks 6 planned", "LF+RF finding long_toe"]),
        ("Long toes in front. Put him back to a two.", ["LF+RF finding long_toe"]),
        ("Long toes in front. Back to number fives.", ["LF+RF finding long_toe", "LF+RF shoe_size 5"]),
        ("Long toes in front. The owner's back to ninety a set.", ["LF+RF finding long_toe"]),
    ]
)

ANGLE = "Heard degrees, but not of which angle."


@pytest.mark.parametrize(
    ("text", "facts", "asked"),
    [
        (
            "Fronts, fifty and fifty two degrees.",
            ["LF toe_angle 50", "RF toe_angle 52"],
            [ANGLE, "Heard a number for each foot, but not which is whose."],
        ),
        ("Fronts, fifty degrees.", ["LF+RF toe_angle 50"], [ANGLE]),
        ("Left front fifty degrees, right front fifty two.", ["LF toe_angle 50", "RF toe_angle 52"], [ANGLE]),
        ("Both fronts at fifty one degrees.", ["LF+RF toe_angle 51"], [ANGLE]),
        ("Left and right front, fifty and fifty two degrees.", ["LF toe_angle 50", "RF toe_angle 52"], [ANGLE]),
        ("Fronts forty degrees.", [], [ANGLE]),
        ("Fronts, three degrees.", [], []),
        ("Toe angles. Fronts fifty degrees, hinds fifty four.", ["LF+RF toe_angle 50", "LH+RH toe_angle 54"], []),
        ("It was ninety degrees out. Fronts reset.", ["LF+RF work reset"], []),
    ],
)
def test_degrees_of_no_named_angle(read: Read, text: str, facts: list[str], asked: list[str]) -> None:
    (visit,) = read(f"Tally. {text}", *NAMES)
    assert (told(visit), [flag.reason for flag in visit.flags]) == (facts, asked)


@pytest.mark.parametrize(
    ("text", "quote"),
    [
        ("Sole depth on the left front's a half inch, no, less, three eighths.", "three eighths"),
        ("Toe length on the left front three inches, no, three and three eighths.", "three and three eighths"),
        ("Left hind reset, same shoes, plenty of life left in them.", "reset, same shoes"),
        ("Reset the left hind, same shoe.", "Reset the left hind, same shoe"),
    ],
)
def test_words_that_a_fact_was_read_from(read: Read, text: str, quote: str) -> None:
    (visit,) = read(f"Tally. {text}", *NAMES)
    assert {fact.quote for fact in visit.facts} == {quote}


test_scores_behind_a_sigh = reads(
    [
        ("Cresty neck two, body condition, oh, five.", ["- body_condition 5", "- cresty_neck 2"]),
        ("Body condition score, well, four.", ["- body_condition 4"]),
        ("Crest, oh, three.", ["- cresty_neck 3"]),
        ("Body condition, oh, five nails in the near fore.", ["LF nails 5"]),
        ("Body condition's fine, oh, five weeks.", ["- next_visit_weeks 5 planned"]),
        ("Lame, oh, five weeks.", ["- gait lame", "- next_visit_weeks 5 planned"]),
    ]
)
