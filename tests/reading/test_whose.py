"""Horses told by owner, colour, kin and place."""

from __future__ import annotations

from pipeline.reading import Reader
from pipeline.record import FlagKind, HorseMatch, RosterHorse, Transcript, Visit
from tests.reading.conftest import DAY
from tests.reading.telling import told

ROSTER = [
    RosterHorse(name="Tansy", owner="Ada Whitcombe", place="Mill Lane"),
    RosterHorse(name="Tansy", owner="Bo Lark", place="River barn"),
    RosterHorse(name="Fennel", owner="Cass Thorne"),
    RosterHorse(name="Sorrel", owner="Dev Marsh"),
    RosterHorse(name="Basil", owner="Dev Marsh"),
]


def said(reader: Reader, text: str) -> list[Visit]:
    return reader.read(Transcript(text=text), ROSTER, DAY)


def test_the_owner_of_one_horse_stands_for_it_and_is_asked_about(reader: Reader) -> None:
    for text in ("Thorne's mare. Corn in the left front.", "Cass Thorne's mare. Corn in the left front."):
        (visit,) = said(reader, text)
        assert (visit.horse, visit.horse_match) == ("Fennel", HorseMatch.KNOWN)
        assert [flag.kind for flag in visit.flags] == [FlagKind.HORSE]
        assert told(visit) == ["LF finding corn"]


def test_the_owner_of_two_horses_stands_for_none(reader: Reader) -> None:
    (visit,) = said(reader, "Marsh's pony. Corn in the left front.")
    assert visit.horse_match is HorseMatch.UNCLEAR
    assert visit.horse not in ("Sorrel", "Basil")


def test_a_colour_given_to_a_horse_names_it_again(reader: Reader) -> None:
    visits = said(
        reader, "Fennel, the grey mare. Corn in the left front. Basil. Trimmed. The grey, thrush in the left hind."
    )
    assert {visit.horse: told(visit) for visit in visits} == {
        "Fennel": ["LF finding corn", "LH finding thrush"],
        "Basil": ["LF+RF+LH+RH work trim"],
    }


def test_a_colour_of_two_horses_names_none(reader: Reader) -> None:
    visits = said(
        reader,
        "Fennel, the grey mare. Corn in the left front. Basil, the grey pony. Trimmed. "
        "The grey, thrush in the left hind.",
    )
    assert {visit.horse: "LH finding thrush" in told(visit) for visit in visits} == {"Fennel": False, "Basil": True}


def test_horses_told_apart_by_colour_are_told_by_it(reader: Reader) -> None:
    for text in (
        "Fennel's the big bay and Basil is the little grey, and I'll do the grey first. Trimmed. Now the bay, "
        "corn in the left front. Eight weeks for the bay and five for the grey.",
        "The bay mare is Fennel and the wee grey is Basil. Starting with the grey. Trimmed. Then the big bay. Corn in "
        "the left front. The bay is eight weeks, the grey five.",
        "Basil is the grey and Fennel is the bay. Did the grey to start, trimmed. The bay, corn in the left front. The "
        "grey in five weeks, the bay in eight.",
    ):
        assert {visit.horse: told(visit) for visit in said(reader, text)} == {
            "Fennel": ["- next_visit_weeks 8 planned", "LF finding corn"],
            "Basil": ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"],
        }


def test_the_colour_of_something_else_names_no_horse(reader: Reader) -> None:
    visits = said(reader, "Fennel, the bay mare. Trimmed. Basil was tied in the bay. Corn in the left front.")
    assert {visit.horse: told(visit) for visit in visits} == {
        "Fennel": ["LF+RF+LH+RH work trim"],
        "Basil": ["LF finding corn"],
    }


def test_a_dams_young_is_the_horse_that_the_roster_calls_so(reader: Reader) -> None:
    roster = [*ROSTER, RosterHorse(name="Sorrel's Filly")]
    for text in (
        "Sorrel. Trimmed. Then her filly, nobody's named her yet, corn in the left front. Four weeks for the filly.",
        "Sorrel. Trimmed. Now her filly. Corn in the left front. The filly in four weeks.",
        "Sorrel's Filly, corn in the left front. Sorrel. Trimmed. Four weeks for her filly.",
    ):
        visits = reader.read(Transcript(text=text), roster, DAY)
        assert {(visit.horse, visit.horse_match): told(visit) for visit in visits} == {
            ("Sorrel", HorseMatch.KNOWN): ["LF+RF+LH+RH work trim"],
            ("Sorrel's Filly", HorseMatch.KNOWN): ["- next_visit_weeks 4 planned", "LF finding corn"],
        }


def test_a_filly_that_is_only_spoken_of_opens_nothing(reader: Reader) -> None:
    roster = [*ROSTER, RosterHorse(name="Sorrel's Filly")]
    for text in (
        "Sorrel. Trimmed while they walked her filly about. Corn in the left front.",
        "Sorrel. Trimmed. She goes nowhere without her filly. Corn in the left front.",
    ):
        (visit,) = reader.read(Transcript(text=text), roster, DAY)
        assert (visit.horse, told(visit)) == ("Sorrel", ["LF finding corn", "LF+RF+LH+RH work trim"])
    (other, young) = reader.read(
        Transcript(text="Fennel. Trimmed. Then her filly, corn in the left front."), roster, DAY
    )
    assert (other.horse, young.horse, young.horse_match) == ("Fennel", "her filly", HorseMatch.UNCLEAR)


def test_kin_that_is_named_is_no_third_horse(reader: Reader) -> None:
    visits = said(reader, "Fennel. Trimmed. Then her sister, Basil, corn in the left front.")
    assert [visit.horse for visit in visits] == ["Fennel", "Basil"]


def test_kin_is_another_horse(reader: Reader) -> None:
    visits = said(reader, "Fennel. Trimmed all four. Then her sister, corn in the left front.")
    assert [(v.horse, v.horse_match, told(v)) for v in visits] == [
        ("Fennel", HorseMatch.KNOWN, ["LF+RF+LH+RH work trim"]),
        ("her sister", HorseMatch.UNCLEAR, ["LF finding corn"]),
    ]
    assert [flag.kind for flag in visits[1].flags] == [FlagKind.HORSE]


def test_the_place_tells_namesakes_apart(reader: Reader) -> None:
    (visit,) = said(reader, "Tansy at the River barn. Corn in the left front.")
    assert (visit.horse, visit.place, visit.flags) == ("Tansy", "River barn", [])


def test_namesakes_without_a_place_are_asked_about(reader: Reader) -> None:
    for text in ("Tansy. Corn in the left front.", "Mill Lane and River barn today. Tansy. Corn in the left front."):
        (visit,) = said(reader, text)
        assert (visit.horse, visit.place) == ("Tansy", None)
        assert [flag.reason for flag in visit.flags] == [
            "Several horses are called Tansy (at Mill Lane, at River barn), and no place was said; which one is it?"
        ]


def test_an_anecdote_opens_no_visit(reader: Reader) -> None:
    visits = said(
        reader, "Fennel. Corn in the left front. Basil trod on the phone so if this cuts out that's why. Six weeks."
    )
    assert [(v.horse, told(v)) for v in visits] == [("Fennel", ["- next_visit_weeks 6 planned", "LF finding corn"])]


def test_a_dog_is_no_horse(reader: Reader) -> None:
    (visit,) = said(reader, "Fennel. They've got a dog called Rasp. Corn in the left front.")
    assert (visit.horse, told(visit)) == ("Fennel", ["LF finding corn"])


def test_what_is_said_of_all_before_one(reader: Reader) -> None:
    visits = said(
        reader, "Fennel, Sorrel and Basil. All trims, everybody's barefoot. Basil has thrush in the left hind."
    )
    assert {v.horse: told(v) for v in visits} == {
        "Fennel": ["LF+RF+LH+RH work trim"],
        "Sorrel": ["LF+RF+LH+RH work trim"],
        "Basil": ["LF+RF+LH+RH work trim", "LH finding thrush"],
    }


def test_shod_as_the_horse_before(reader: Reader) -> None:
    visits = said(reader, "Fennel. New shoes in front, size one. Basil, same deal. Thrush in the left hind.")
    assert {v.horse: told(v) for v in visits} == {
        "Fennel": ["LF+RF shoe_size 1", "LF+RF work new_shoe"],
        "Basil": ["LF+RF shoe_size 1", "LF+RF work new_shoe", "LH finding thrush"],
    }


def test_a_turn_to_a_name_on_no_list_takes_the_facts_from_the_horse_before(reader: Reader) -> None:
    for text in ("Fennel, corn in the left front. Then Zephyr, trimmed all four.", "Zephyr and Fennel today."):
        assert "Zephyr" in {visit.horse for visit in said(reader, f"{text} Zephyr, thrush in the left hind.")}
    visits = said(reader, "Fennel, corn in the left front. Then Zephyr, trimmed all four.")
    assert [(v.horse, v.horse_match, told(v)) for v in visits] == [
        ("Fennel", HorseMatch.KNOWN, ["LF finding corn"]),
        ("Zephyr", HorseMatch.UNCLEAR, ["LF+RF+LH+RH work trim"]),
    ]


def test_a_name_on_no_list_in_the_first_sentence(reader: Reader) -> None:
    for text in (
        "Did Zephyr this morning. Trimmed.",
        "Here with Zephyr. Trimmed.",
        "Right, that's Zephyr done. Trimmed.",
    ):
        (visit,) = said(reader, text)
        assert (visit.horse, visit.horse_match) == ("Zephyr", HorseMatch.UNCLEAR)
    (visit,) = said(reader, "Zephyr is a new horse, so this is his first time. Trimmed.")
    assert (visit.horse, visit.horse_match) == ("Zephyr", HorseMatch.NEW)
