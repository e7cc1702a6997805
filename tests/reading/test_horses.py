"""Which horse a statement belongs to, and what is asked when that is not certain."""

from __future__ import annotations

import pytest

from pipeline.reading import Reader
from pipeline.record import FlagKind, HorseMatch, RosterHorse, Transcript, Visit
from tests.reading.conftest import DAY, Read
from tests.reading.spoken import spoken
from tests.reading.telling import told

ROSTER = ("Marigold", "Tansy", "Fennel", "Sergeant Pip")


def by_horse(visits: list[Visit]) -> dict[str | None, list[str]]:
    return {visit.horse: told(visit) for visit in visits}


def test_each_horse_has_its_own_visit(read: Read) -> None:
    visits = read("Marigold. Reset the fronts. Tansy. Trimmed all four.", *ROSTER)
    assert by_horse(visits) == {"Marigold": ["LF+RF work reset"], "Tansy": ["LF+RF+LH+RH work trim"]}
    assert [(v.horse_match, v.date, v.flags) for v in visits] == [(HorseMatch.KNOWN, DAY, [])] * 2


def test_weeks_for_both(read: Read) -> None:
    visits = read("Marigold, trimmed all four. Next up Fennel, thrush in the left hind. Six weeks for both.", *ROSTER)
    assert by_horse(visits) == {
        "Marigold": ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"],
        "Fennel": ["- next_visit_weeks 6 planned", "LH finding thrush"],
    }


def test_weeks_for_each(read: Read) -> None:
    visits = read("Tansy six weeks, Fennel eight.", *ROSTER)
    assert by_horse(visits) == {
        "Tansy": ["- next_visit_weeks 6 planned"],
        "Fennel": ["- next_visit_weeks 8 planned"],
    }


def test_two_horses_in_one_sentence(read: Read) -> None:
    visits = read("Tansy's left front has an abscess, and Fennel's right front has a corn.", *ROSTER)
    assert by_horse(visits) == {"Tansy": ["LF finding abscess"], "Fennel": ["RF finding corn"]}


def test_done_to_both_by_name(read: Read) -> None:
    trimmed = ["LF+RF+LH+RH work trim"]
    for text in ("Both Tansy and Fennel trimmed all four.", "Trimmed Tansy and Fennel."):
        assert by_horse(read(text, *ROSTER)) == {"Tansy": trimmed, "Fennel": trimmed}


def test_back_to_the_first(read: Read) -> None:
    visits = read("Marigold, trimmed. Fennel, reset the fronts. Back to Marigold, her left hind has a flare.", *ROSTER)
    assert by_horse(visits) == {
        "Marigold": ["LF+RF+LH+RH work trim", "LH finding flare"],
        "Fennel": ["LF+RF work reset"],
    }


def test_a_horse_only_compared_with_is_not_visited(read: Read) -> None:
    assert by_horse(read("Fennel. Same as Tansy, left front has a corn.", *ROSTER)) == {"Fennel": ["LF finding corn"]}


def test_a_horse_that_only_did_something_is_not_visited(read: Read) -> None:
    visits = read("Tansy bit Fennel. Fennel has a corn in the left front.", *ROSTER)
    assert by_horse(visits) == {"Fennel": ["LF finding corn"]}
    assert visits[0].notes == "Tansy bit Fennel"


def test_a_horse_said_not_to_be_meant(read: Read) -> None:
    visits = read("Tansy has thrush in the left hind, not Fennel.", *ROSTER)
    assert by_horse(visits) == {"Tansy": ["LH finding thrush"]}


def test_a_name_of_two_words_and_a_name_in_two_words(read: Read) -> None:
    assert [v.horse for v in read("Sergeant Pip stood quiet.", *ROSTER)] == ["Sergeant Pip"]
    assert [v.horse for v in read("Mary Gold, trimmed all four.", *ROSTER)] == ["Marigold"]


def test_another_name_of_the_same_horse(reader: Reader) -> None:
    roster = [RosterHorse(name="Sergeant Pip", also_called=["Pippin"]), RosterHorse(name="Tansy")]
    (visit,) = reader.read(Transcript(text="Pippin stood quiet."), roster, DAY)
    assert (visit.horse, visit.horse_match) == ("Sergeant Pip", HorseMatch.KNOWN)


def test_half_a_name_is_kept_as_heard_and_asked_about(read: Read) -> None:
    (visit,) = read("Pip stood quiet.", *ROSTER)
    assert (visit.horse, visit.horse_match) == ("Pip", HorseMatch.UNCLEAR)
    assert [(f.kind, f.quote) for f in visit.flags] == [(FlagKind.HORSE, "Pip")]


def test_a_new_horse_is_new_and_not_asked_about(read: Read) -> None:
    (visit,) = read("New pony called Biscuit. Trimmed all four.", *ROSTER)
    assert (visit.horse, visit.horse_match, visit.flags) == ("Biscuit", HorseMatch.NEW, [])


def test_nobody_named_is_asked_about(read: Read) -> None:
    for text in ("", "   ", "Um, uh, you know.", "Trimmed all four."):
        (visit,) = read(text, *ROSTER)
        assert (visit.horse, visit.horse_match) == (None, HorseMatch.UNCLEAR)
        assert [f.reason for f in visit.flags] == ["No horse was named; which horse is it?"]


def test_the_foot_in_hand_does_not_cross_to_the_next_horse(read: Read) -> None:
    visits = read("Marigold. Left hind has thrush. Tansy. Got a bruise.", *ROSTER)
    assert by_horse(visits) == {"Marigold": ["LH finding thrush"], "Tansy": ["- finding bruise"]}


def test_the_statement_goes_to_the_horse_it_was_meant_of(read: Read) -> None:
    visits = read("Marigold has thrush in the left hind. No, sorry, that's Tansy.", *ROSTER)
    assert by_horse(visits) == {"Tansy": ["LH finding thrush"]}


def test_the_wrong_horse_keeps_nothing_of_it(read: Read) -> None:
    visits = read(
        "Marigold has a corn in the left front. Wrong horse, that was Tansy. Marigold was trimmed all four.", *ROSTER
    )
    assert by_horse(visits) == {"Marigold": ["LF+RF+LH+RH work trim"], "Tansy": ["LF finding corn"]}


def test_unlike_another_horse_says_nothing_of_that_one(read: Read) -> None:
    visits = read("This is Fennel. Unlike Tansy he has no thrush in the left hind.", *ROSTER)
    assert by_horse(visits) == {"Fennel": ["LH finding thrush absent"]}


def test_a_name_far_from_the_roster_is_taken_for_none(read: Read) -> None:
    for said in ("Gambit", "Star", "Daisy"):
        (visit,) = read(f"{said}. Trimmed all four.", "Gambler", "Stan", "Maisie")
        assert (visit.horse, visit.horse_match) == (said, HorseMatch.UNCLEAR)
        assert [flag.quote for flag in visit.flags] == [said]


def test_a_name_that_only_sounds_like_one_is_asked_about(read: Read) -> None:
    for said, named in (("Rowan", "Roman"), ("Molly", "Holly")):
        (visit,) = read(f"{said}, trimmed all four.", named, "Bramble")
        assert (visit.horse, visit.horse_match) == (named, HorseMatch.KNOWN)
        assert [flag.reason for flag in visit.flags] == [f"Heard “{said}”, taken for {named}; is that the horse?"]


def questions(reader: Reader, transcript: Transcript, *names: str) -> list[str]:
    visits = reader.read(transcript, [RosterHorse(name=name) for name in names], DAY)
    return [flag.reason for visit in visits for flag in visit.flags if flag.kind is FlagKind.HORSE]


def test_a_heard_name_that_sounds_like_another_on_the_roster_is_asked_about(reader: Reader) -> None:
    text = "Bramwell, trimmed all four."
    asked = questions(reader, spoken(text), "Bramwell", "Branwell", "Otter")
    assert asked == ["Bramwell and Branwell sound alike; is it Bramwell?"]
    assert questions(reader, Transcript(text=text), "Bramwell", "Branwell", "Otter") == []  # typed, not heard
    assert questions(reader, spoken(text), "Bramwell", "Brandy", "Otter") == []


def test_two_horses_that_sound_alike_and_are_both_spoken_of_are_not_asked_about(reader: Reader) -> None:
    text = "Bramwell, trimmed all four. Branwell, reset the fronts."
    assert questions(reader, spoken(text), "Bramwell", "Branwell") == []


def test_a_name_put_for_what_was_heard_is_always_asked_about(reader: Reader) -> None:
    transcript = spoken("Nullarbor, trimmed all four.")
    first = transcript.words[0].model_copy(update={"heard": "Larriber", "support": 5.6})
    changed = transcript.model_copy(update={"words": [first, *transcript.words[1:]]})
    assert questions(reader, changed, "Nullarbor", "Otter") == [
        "Heard “Larriber”, taken for Nullarbor; is that the horse?"
    ]


@pytest.mark.parametrize(
    ("text", "weeks"),
    [
        ("Tally. Trimmed. Buck, trimmed. Ten weeks Tally, six for the mare.", {"Tally": 10, "Buck": 6}),
        ("Tally. Trim. Buck is the pony, trimmed. Six weeks on Tally and seven on the pony.", {"Tally": 6, "Buck": 7}),
        ("Tally. Trim. Buck, trimmed. Tally I'll see in a week and herself in five.", {"Tally": 1, "Buck": 5}),
    ],
)
def test_the_other_horse_of_two_needs_no_name(read: Read, text: str, weeks: dict[str, float]) -> None:
    visits = read(text, "Tally", "Buck")
    assert {v.horse: f.value for v in visits for f in v.facts if f.slot == "next_visit_weeks"} == weeks


@pytest.mark.parametrize("turn", ["Sticking with Buck", "Still on Buck", "Okay so now the actual Buck", "As for Buck"])
def test_a_turn_to_a_horse(read: Read, turn: str) -> None:
    visits = read(f"Tally. Trimmed all four. {turn}, reset the fronts.", "Tally", "Buck")
    assert by_horse(visits)["Buck"] == ["LF+RF work reset"]


BEGUN_UNNAMED = (
    (
        "Two at the mill. Reset both fronts, size one. Then Tansy. Trimmed all four. Marigold six weeks, Tansy five.",
        "Marigold",
    ),
    (
        "Right front's the club foot, and the hinds are trimmed. Tansy then, lost her left hind. Five weeks Tansy, "
        "seven for Fennel.",
        "Fennel",
    ),
)


@pytest.mark.parametrize(("memo", "meant"), BEGUN_UNNAMED)
def test_what_is_told_before_any_name_is_his_who_is_due_too(memo: str, meant: str, read: Read) -> None:
    visits = {v.horse: v for v in read(memo, *ROSTER)}
    assert set(visits) == {meant, "Tansy"}
    assert len(visits[meant].facts) > 2
    assert [(f.kind, "where the memo begins" in f.reason) for f in visits[meant].flags] == [(FlagKind.HORSE, True)]


@pytest.mark.parametrize(
    "memo",
    [
        # Fennel has a part of his own; the beginning may be anybody's
        "Reset both fronts, size one. Then Tansy. Trimmed all four. Fennel, corn, left front. Fennel six weeks.",
        # Nobody else is due
        "Reset both fronts, size one. Tansy, trimmed behind. Marigold isn't due till Tuesday.",
        # The name closes what was told before
        "Reset both fronts, size one, on Tansy, trimmed behind. Tansy five weeks, Marigold six.",
        # Two might be meant
        "Reset both fronts, size one. Then Tansy. Trimmed all four. Tansy five weeks, Marigold six, Fennel eight.",
    ],
)
def test_else_what_is_told_before_any_name_is_not_given_away(memo: str, read: Read) -> None:
    visits = {v.horse: v for v in read(memo, *ROSTER)}
    assert "work" in {f.slot for f in visits["Tansy"].facts}
    assert not any("where the memo begins" in flag.reason for v in visits.values() for flag in v.flags)


@pytest.mark.parametrize(
    "memo", ["I'm at Tansy now, not Tansy, reset the fronts.", "Tansy. Not Tansy. Reset the fronts."]
)
def test_a_horse_that_is_and_is_not_meant_is_asked_about(memo: str, read: Read) -> None:
    (visit,) = read(memo, *ROSTER)
    assert (visit.horse, [f.kind for f in visit.flags if "is said to be the horse" in f.reason]) == (
        "Tansy",
        [FlagKind.HORSE],
    )


@pytest.mark.parametrize(
    "memo",
    [
        "Tansy, not Fennel, reset the fronts.",
        "Tansy. Reset the fronts, size one, plain steel. Fennel. The crack in the near fore is Fennel's, not Tansy's.",
    ],
)
def test_a_horse_that_is_not_another_is_not_asked_about(memo: str, read: Read) -> None:
    assert not any("is said to be the horse" in f.reason for v in read(memo, *ROSTER) for f in v.flags)


CRIED_OUT = """\
Dang, I dropped my phone in the bucket.
Dang, my phone's gone in the bucket, hang on.
Dang, it's raining again.
Dang, where did I put the rasp.
"""

NAMED_ALL_THE_SAME = """\
Dang, I trimmed all four.
Dang, the gelding. Trimmed all four.
Dang, I like him a lot. Trimmed all four.
Dang. Trimmed all four.
"""


@pytest.mark.parametrize("form", CRIED_OUT.splitlines())
def test_a_remark_that_sounds_like_a_name(read: Read, form: str) -> None:
    visits = read(f"Coral. Reset all four. {form} Four weeks.", "Coral", "Tango")
    assert [(v.horse, [f.value for f in v.facts if f.slot == "next_visit_weeks"]) for v in visits] == [("Coral", [4])]


@pytest.mark.parametrize("form", NAMED_ALL_THE_SAME.splitlines())
def test_a_name_misheard_as_a_remark_is_asked_about(read: Read, form: str) -> None:
    visits = read(f"Coral. Reset all four. {form}", "Coral", "Tango")
    assert [v.horse for v in visits] == ["Coral", "Tango"]
    assert any("Dang" in flag.reason for flag in visits[1].flags)


def test_a_horse_of_that_name(read: Read) -> None:
    visits = read("Coral. Reset all four. Dang, I know that one well. Trimmed.", "Coral", "Dang")
    assert [v.horse for v in visits] == ["Coral", "Dang"]


@pytest.mark.parametrize("said", ["June Bug", "June bug"])
def test_a_name_written_as_two_words(read: Read, said: str) -> None:
    visits = read(f"Buck. Trimmed. And then {said}, the filly, new tips on both fronts.", "Buck", "Junebug")
    assert [v.horse for v in visits] == ["Buck", "Junebug"]


def test_two_words_that_make_another_name(read: Read) -> None:
    visits = read("June, corn in the left front. Bug bites on her neck.", "June", "Junebug")
    assert [v.horse for v in visits] == ["June"]


@pytest.mark.parametrize(
    "plan",
    [
        "If Tally gets sore on the right front from that nail, I'll poultice it.",
        "But if Tally's lame on it I'll poultice the right front.",
    ],
)
def test_a_condition_of_another_horse(read: Read, plan: str) -> None:
    text = f"Tally, right front close nail. Then Buck, reset the fronts. {plan} Hinds trimmed."
    tally, buck = read(text, "Tally", "Buck")
    assert told(tally) == ["RF finding close_nail", "RF treatment poultice planned"]
    assert told(buck) == ["LF+RF work reset", "LH+RH work trim"]


@pytest.mark.parametrize("noise", ["was roaring over the door for his breakfast", "kept hollering for his feed"])
def test_a_horse_that_only_calls_for_food(read: Read, noise: str) -> None:
    (tally,) = read(f"Tally, corn in the left front. Buck {noise}. Hinds trimmed. Two weeks.", "Tally", "Buck")
    assert told(tally) == ["- next_visit_weeks 2 planned", "LF finding corn", "LH+RH work trim"]


def test_a_horse_that_is_told_of_opens(read: Read) -> None:
    text = "Tally, corn in the left front. Buck was lame on the near fore for his breakfast. Hinds trimmed."
    tally, buck = read(text, "Tally", "Buck")
    assert told(tally) == ["LF finding corn"]
    assert told(buck) == ["LF gait lame", "LH+RH work trim"]
