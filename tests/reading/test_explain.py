"""Why a memo was read as it was."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.reading import Reader
from pipeline.reading.explain import Explanation, explain
from pipeline.record import SECOND_READER, RosterHorse, Status, Transcript


def explained(reader: Reader, text: str) -> Explanation:
    """The explanation of typed text about Bramble."""
    transcript, roster = Transcript(text=text), [RosterHorse(name="Bramble")]
    return explain(reader, transcript, roster, reader.read(transcript, roster, date(2026, 3, 2)))


def test_a_kept_row_has_words_place_and_rules(reader: Reader) -> None:
    text = "Bramble. Bad thrush in the sulcus of the left hind."
    (row,) = explained(reader, text).kept
    assert (row.horse, row.foot, row.slot, row.value) == ("Bramble", "LH", "finding", "thrush")
    assert (row.zone, row.severity, row.status, row.why) == ("sulcus", "severe", "present", None)
    assert text[slice(*row.span)] == row.words
    assert {"zone: sulcus", "severity: severe"} <= set(row.rules)


@pytest.mark.parametrize(
    ("text", "slot", "why"),
    [
        ("Bramble. If there is heat in the left fore call the vet.", "finding", "only a condition"),
        ("Bramble. Need to order more size fives.", "shoe_size", "an aside"),
        ("Bramble. Left fore, three nails a side. Scratch that.", "nails", "taken back"),
        ("Bramble. Checked for a puncture in the left fore.", "finding", "only looked for"),
        ("Bramble. Thrush in the left fore. Thrush in the left fore.", "finding", "said again"),
        (
            "Bramble. Back in six weeks. Stood well. Back in five weeks.",
            "next_visit_weeks",
            "“five weeks” stands instead",
        ),
        ("Bramble. Left fore, size one, no, make that a two.", "shoe_size", "taken back for “two”"),
    ],
)
def test_what_was_not_kept_says_why(reader: Reader, text: str, slot: str, why: str) -> None:
    reasons = [(row.slot, row.why) for row in explained(reader, text).dropped]
    assert (slot, why) in [(slot if what == "number" else what, reason) for what, reason in reasons]


def effects(found: Explanation, kind: str) -> list[tuple[str | None, str | float, str | None, str | None]]:
    """Foot, value, status now and status without the cue, of every cue of a kind."""
    return [
        (e.foot, e.value, e.now[0] if e.now else None, e.without[0] if e.without else None)
        for cue in found.cues
        if cue.kind == kind
        for e in cue.effects
    ]


@pytest.mark.parametrize(
    ("text", "kind", "expected"),
    [
        ("Bramble. No heat or swelling in the left fore.", "denial",
         [("LF", "heat", "absent", "present"), ("LF", "swelling", "absent", "present")]),
        ("Bramble. Maybe a bruise in the left fore.", "doubt", [("LF", "bruise", "suspected", "present")]),
        ("Bramble. Thrush in the left fore last time.", "time", [("LF", "thrush", "history", "present")]),
        ("Bramble. Next time a wedge pad on the left fore.", "plan", [("LF", "wedge", "planned", "present")]),
        ("Bramble. Need to order more size fives.", "aside", [(None, "5", None, "present")]),
        ("Bramble. Left fore, size one, no, two.", "repair",
         [("LF", "2", "present", None), ("LF", "1", None, "present")]),
    ],
)  # fmt: skip
def test_a_cue_shows_what_it_changed(
    reader: Reader, text: str, kind: str, expected: list[tuple[str | None, str | float, str | None, str | None]]
) -> None:
    assert effects(explained(reader, text), kind) == expected


def test_cues_of_which_one_would_do_are_one_row(reader: Reader) -> None:
    found = explained(reader, "Bramble. Might be a bruise in the left fore, couldn't say for sure.")
    (cue,) = [cue for cue in found.cues if cue.kind == "doubt"]
    assert cue.words == ("Might be", "couldn't say for sure")
    assert [(e.value, e.now, e.without) for e in cue.effects] == [
        ("bruise", ("suspected", None, None), ("present", None, None))
    ]


def test_a_cue_that_only_looks_like_one_changes_nothing(reader: Reader) -> None:
    (cue,) = explained(reader, "Bramble. No change, thrush in the left fore.").cues
    assert (cue.words, cue.kind, cue.name, cue.effects) == (("No change",), "denial", "pseudo", ())


def test_a_part_and_how_it_is_are_explained(reader: Reader) -> None:
    rows = explained(reader, "Bramble. Heels, sheared, left fore.").kept
    assert [(row.foot, row.value) for row in rows] == [("LF", "sheared_heels")]


def test_explaining_leaves_the_reader_as_it_was(reader: Reader) -> None:
    transcript = Transcript(text="Bramble. No thrush in the left hind, maybe a corn, back in six weeks.")
    before = reader.read(transcript, [], date(2026, 3, 2))
    explain(reader, transcript, [], before)
    assert reader.read(transcript, [], date(2026, 3, 2)) == before


def test_what_was_put_right_is_told_as_it_stands_and_no_cue_is_said_to_have_done_it(reader: Reader) -> None:
    text = "Bramble. Leather pads in front. No thrush in the left hind."
    transcript, roster = Transcript(text=text), [RosterHorse(name="Bramble")]
    (visit,) = reader.read(transcript, roster, date(2026, 3, 2))
    rule = f"{SECOND_READER}for a later day"
    put = [
        f.model_copy(update={"status": Status.PLANNED, "rules": [*f.rules, rule]}) if f.slot == "pad" else f
        for f in visit.facts
    ]
    found = explain(reader, transcript, roster, [visit.model_copy(update={"facts": put})])
    assert [(row.foot, row.status, rule in row.rules) for row in found.kept if row.slot == "pad"] == [
        ("LF", "planned", True),
        ("RF", "planned", True),
    ]
    assert found.dropped == ()
    assert effects(found, "denial") == [("LH", "thrush", "absent", "present")]
