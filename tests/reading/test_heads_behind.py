"""A number said before the word for what it measures, and numbers of the weather that measure no foot.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_the_word_behind_the_number = reads(
    [
        ("Fifty four degrees, toe angle, left front.", ["LF toe_angle 54"]),
        ("Forty seven degrees, heel angle, off hind.", ["RH heel_angle 47"]),
        (
            "Fifty two degrees, toe angle, right front. Forty seven degrees, heel angle, left front.",
            ["LF heel_angle 47", "RF toe_angle 52"],
        ),
        (
            "Fifty four degrees, toe angle, forty seven degrees, heel angle, near fore.",
            ["LF heel_angle 47", "LF toe_angle 54"],
        ),
        ("Left front fifty four degrees, toe angle, forty seven, heel angle.", ["LF heel_angle 47", "LF toe_angle 54"]),
        ("Three and three eighths inches, toe length, both fronts.", ["LF+RF toe_length 85.7"]),
        ("Ninety millimetres, toe length, near fore.", ["LF toe_length 90"]),
        ("Half an inch, sole depth, left front.", ["LF sole_depth 12.7"]),
        ("Five inches, hoof width, both fronts.", ["LF+RF hoof_width 127"]),
        (
            "Ninety mil, toe length, near hind. Two inches, heel height, off hind.",
            ["LH toe_length 90", "RH heel_height 50.8"],
        ),
        (
            "Three inches, toe length, two inches, heel height, left front.",
            ["LF heel_height 50.8", "LF toe_length 76.2"],
        ),
    ]
)

test_the_word_ahead_of_the_number = reads(
    [
        (
            "Toe angle, left front, fifty four degrees, heel angle, forty seven.",
            ["LF heel_angle 47", "LF toe_angle 54"],
        ),
        ("Toe angle left front fifty four degrees, heel angle forty seven.", ["LF heel_angle 47", "LF toe_angle 54"]),
        (
            "Near fore, toe angle fifty one, heel angle, er, forty seven degrees.",
            ["LF heel_angle 47", "LF toe_angle 51"],
        ),
        (
            "Toe length, three inches, heel height, two inches, left front.",
            ["LF heel_height 50.8", "LF toe_length 76.2"],
        ),
        ("Toe angle on the left front. Fifty two degrees.", ["LF toe_angle 52"]),
    ]
)

test_degrees_of_the_weather = reads(
    [
        ("Toe angle fifty two left front. Eighty degrees today and flies everywhere.", ["LF toe_angle 52"]),
        ("Heel angle forty six on the off fore. Ninety five degrees and humid.", ["RF heel_angle 46"]),
        ("Toe angle fifty two left front, and it was sixty degrees out there in the wind.", ["LF toe_angle 52"]),
        ("Toe angle fifty right hind. Thirty eight degrees in the shade today.", ["RH toe_angle 50"]),
        ("Toe angle fifty two degrees left front. Fifty degrees right front.", ["LF toe_angle 52", "RF toe_angle 50"]),
    ]
)

test_a_measure_apiece = reads(
    [
        (
            "Toe angles fifty left front, forty eight right front. Heel angles the same at forty five apiece.",
            ["LF toe_angle 50", "LF+RF heel_angle 45", "RF toe_angle 48"],
        ),
        (
            "Left front toe angle 50, right front 52. Toe length 85 mil each.",
            ["LF toe_angle 50", "LF+RF toe_length 85", "RF toe_angle 52"],
        ),
        (
            "Near hind reset, off hind reset. Heel height two inches apiece.",
            ["LH+RH heel_height 50.8", "LH+RH work reset"],
        ),
    ]
)
