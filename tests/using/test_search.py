"""A search lists what was found, never what was denied, and takes any words."""

from __future__ import annotations

import sqlite3
from datetime import date
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pipeline.errors import NotFoundError, SettingsError
from pipeline.keeping import Found, Looking, Store
from pipeline.record import Fact, HorseMatch, Status, Visit
from pipeline.using.found import found_json, found_lines
from pipeline.using.search import Asked, count, foot_asked, meant_perhaps, search, split_findings, wanted_of
from pipeline.vocabulary import Vocabulary, load_vocabulary

if TYPE_CHECKING:
    from tests.using.conftest import Keep


def told(found: Found) -> list[tuple[str, str | None, str | float, str]]:
    """Day, foot, value and status of every fact found."""
    return [(str(hit.date), hit.fact.foot, hit.fact.value, hit.fact.status.value) for hit in found.facts]


APRIL_THRUSH = ("2026-04-13", "RF", "thrush", "present")


@pytest.mark.parametrize(
    "asked", [Asked("thrush"), Asked(findings=["thrush"]), Asked(values=["Thrush"]), Asked("THRUSHY!")]
)
def test_denied_thrush_is_not_listed(store: Store, vocabulary: Vocabulary, asked: Asked) -> None:
    found = search(store, asked, vocabulary)
    assert told(found) == [APRIL_THRUSH]
    assert found.passages == []


def test_denied_thrush_is_listed_when_asked_for(store: Store, vocabulary: Vocabulary) -> None:
    found = search(store, Asked("thrush", statuses=["absent"]), vocabulary)
    assert told(found) == [("2026-03-02", "LF", "thrush", "absent")]


def test_words_that_were_only_denied_find_no_passage(store: Store, vocabulary: Vocabulary) -> None:
    assert search(store, Asked("anywhere"), vocabulary) == Found([], [], False)
    asked = search(store, Asked("anywhere", statuses=["absent"]), vocabulary)
    assert [passage.where for passage in asked.passages] == ["transcript"]


@pytest.mark.parametrize(
    ("words", "found"), [("thrush right fore", True), ("RF thrush sulcus", True), ("thrush left fore", False)]
)
def test_a_foot_beside_a_finding_is_that_foot(store: Store, vocabulary: Vocabulary, words: str, found: bool) -> None:
    assert told(search(store, Asked(words), vocabulary)) == ([APRIL_THRUSH] if found else [])


def test_another_name_of_a_finding_finds_it(store: Store, vocabulary: Vocabulary) -> None:
    found = search(store, Asked("seedy toe"), vocabulary)
    assert told(found) == [("2026-03-02", "LH", "white_line_disease", "present")]


def test_suspected_is_listed_and_marked(store: Store, vocabulary: Vocabulary) -> None:
    lines = found_lines(search(store, Asked("abscess"), vocabulary))
    assert lines == [
        "date        horse    foot  what was said    visit",
        "2026-04-13  Bramble  RF    perhaps abscess      2",
    ]


def test_what_was_seen_stands_apart_from_what_was_only_suspected(store: Store, vocabulary: Vocabulary) -> None:
    both = search(
        store, Asked(horse="Bramble", slots=["finding"], statuses=["absent", "suspected", "present"]), vocabulary
    )
    assert [line.split("  ")[0] for line in found_lines(both)] == [
        "date", "Seen or done", "2026-04-13", "2026-04-13", "2026-03-02", "Only suspected", "2026-04-13", "Denied",
        "2026-03-02",
    ]  # fmt: skip


def test_free_words_find_notes_and_the_facts_own_words(store: Store, vocabulary: Vocabulary) -> None:
    notes = search(store, Asked("kicking"), vocabulary)
    assert [(passage.horse, passage.where) for passage in notes.passages] == [("Sorrel", "notes")]
    double = search(store, Asked("double AUGHT"), vocabulary)
    assert told(double) == [("2026-03-02", "LH", "00", "present")]
    assert found_lines(double)[2].startswith("2026-03-02  Bramble  LH    (!) shoe size 00 ")
    assert found_json(double)["more"] is False


@pytest.mark.parametrize(
    ("asked", "expected"),
    [
        (Asked(horse="bram", findings=["thrush"]), [APRIL_THRUSH]),
        (Asked(horse="Sorrel", findings=["thrush"]), []),
        (Asked(owner="fern", findings=["thrush"]), [APRIL_THRUSH]),
        (Asked(place="hill", slots=["gait"]), [("2026-04-13", None, "sound", "present")]),
        (Asked(feet=["near hind"], slots=["shoe size"]), [("2026-03-02", "LH", "00", "present")]),
        (Asked(feet=["horse"]), [("2026-04-13", None, "sound", "present")]),
        (Asked(feet=["rf", "horse"], zones=["central sulcus"]), [APRIL_THRUSH]),
        (Asked(slots=["nails"], values=["6"]), [("2026-04-13", "LF", 6.0, "present")]),
        (Asked(slots=["toe_length"], values=["88.9"]), [("2026-04-13", "LF", 88.9, "present")]),
        (Asked(values=["00"]), [("2026-03-02", "LH", "00", "present")]),
        (Asked(until=date(2026, 3, 2), slots=["finding"]), [("2026-03-02", "LH", "white_line_disease", "present")]),
        (Asked(since=date(2026, 3, 3), slots=["shoe_size"]), []),
        (Asked(flagged=True), [("2026-03-02", "LH", "00", "present")]),
        (Asked(statuses=["planned"]), [("2026-03-02", None, 6.0, "planned")]),
    ],
)
def test_every_way_of_asking(
    store: Store, vocabulary: Vocabulary, asked: Asked, expected: list[tuple[str, str | None, str | float, str]]
) -> None:
    assert told(search(store, asked, vocabulary)) == expected


def test_the_newest_comes_first_and_a_limit_is_said(store: Store, vocabulary: Vocabulary) -> None:
    found = search(store, Asked(slots=["finding"], limit=2), vocabulary)
    assert [hit.fact.value for hit in found.facts] == ["thrush", "abscess"]
    assert found.more
    passages = search(store, Asked("bramble", limit=1), vocabulary)
    assert (len(passages.passages), passages.more) == (1, True)


def test_an_unassigned_visit_is_found_by_its_heard_name_and_marked(
    store: Store, keep_memo: Keep, vocabulary: Vocabulary
) -> None:
    fact = Fact(foot="LF", slot="finding", value="corn")
    visit = Visit(horse="Brindle", horse_match=HorseMatch.UNCLEAR, date=date(2026, 5, 1), facts=[fact])
    keep_memo(store, "may.m4a", "Brindle, corn left fore.", [visit])
    found = search(store, Asked(horse="brindle"), vocabulary)
    assert found_lines(found)[1:] == ["2026-05-01  Brindle (?)  LF    corn               4"]


@pytest.mark.parametrize(
    ("asked", "message"),
    [
        (Asked(findings=["gremlins"]), "no finding"),
        (Asked(slots=["colour"]), "no kind of fact; known are finding, tester"),
        (Asked(slots=["shoesize"]), r"no kind of fact\. Did you mean shoe_size\?"),
        (Asked(feet=["fifth"]), "no foot"),
        (Asked(zones=["ear"]), "no part of the foot"),
        (Asked(statuses=["maybe"]), "no status"),
        (Asked(values=["gremlins"]), "no value"),
        (Asked(slots=["nails"], values=["many"]), "no value of nails"),
        (Asked(slots=["nails"], values=["nan"]), "no value of nails"),
        (Asked(since=date(2026, 3, 3), until=date(2026, 3, 2)), "Nothing lies between"),
        (Asked(limit=0), "At least one"),
    ],
)
def test_what_there_is_none_of_is_said(vocabulary: Vocabulary, asked: Asked, message: str) -> None:
    with pytest.raises(SettingsError, match=message):
        wanted_of(asked, vocabulary)


def test_a_horse_that_nobody_knows_is_said(store: Store, vocabulary: Vocabulary) -> None:
    with pytest.raises(NotFoundError, match="Did you mean Sorrel"):
        search(store, Asked(horse="Sorrell"), vocabulary)


def test_findings_are_split_from_other_words(vocabulary: Vocabulary) -> None:
    assert split_findings("bad Seedy-toe, hind", vocabulary) == (["white_line_disease"], ["bad", "hind"])


@pytest.mark.parametrize(
    ("asked", "values"),
    [
        (Asked("seedy toe"), (("finding", "white_line_disease"),)),
        (Asked("stretched white line"), (("finding", "white_line_separation"),)),
        (Asked(values=["egg bars"]), (("shoe_type", "egg_bar"),)),
        (Asked("founder"), (("finding", "laminitis"),)),
        (Asked("Egg bars, near fore"), (("shoe_type", "egg_bar"),)),
        (Asked("copper sulphate"), (("treatment", "copper_sulfate"),)),
        (Asked("toe"), ()),
        (Asked("egg timer"), ()),
        (Asked(slots=["treatment"], values=["copper sulphate"]), (("treatment", "copper_sulfate"),)),
    ],
)
def test_the_shipped_words_lead_to_canonical_names(asked: Asked, values: tuple[tuple[str, str], ...]) -> None:
    assert wanted_of(asked, load_vocabulary()).values == values


def test_a_foot_is_asked_in_many_ways() -> None:
    assert [foot_asked(said) for said in ("LF", "Left front", "off  hind", "horse")] == ["LF", "LF", "RH", None]


@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    words=st.one_of(st.text(max_size=30), st.text(alphabet="\"'*^:(){}+-~/\\%_;ANDORNOTNEAR thrus\x00", max_size=30))
)
def test_no_punctuation_breaks_a_search(store: Store, vocabulary: Vocabulary, words: str) -> None:
    for hit in search(store, Asked(words), vocabulary).facts:
        assert hit.fact.status.value in ("present", "suspected")


@pytest.mark.parametrize(
    "words", ['"', "thrush OR 1", "NEAR(thrush)", "aught*", "notes:hat", "'; DROP TABLE facts; --", "!!!"]
)
def test_operators_are_only_words(store: Store, vocabulary: Vocabulary, words: str) -> None:
    before = store.memos()
    search(store, Asked(words), vocabulary)
    assert store.memos() == before


def test_a_word_with_a_star_is_no_prefix(store: Store, vocabulary: Vocabulary) -> None:
    assert search(store, Asked("kick*"), vocabulary) == Found([], [], False)
    assert search(store, Asked("NOT kicking"), vocabulary) == Found([], [], False)


MEASURED = [
    Fact(foot="LF", slot="toe_angle", value=47.5),
    Fact(foot="LF", slot="sole_depth", value=9.525),
    Fact(foot="RF", slot="toe_angle", value=50.0),
    Fact(foot="RF", slot="shoe_size", value="1.5"),
    Fact(foot="LH", slot="shoe_size", value="0-1"),
    Fact(foot="RH", slot="toe_angle", value=44.0, status=Status.HISTORY),
    Fact(foot="LF", slot="finding", value="thrush"),
    Fact(foot="RF", slot="finding", value="thrush"),
    Fact(foot=None, slot="body_condition", value=7.0),
]


@pytest.mark.parametrize(
    ("asked", "found"),
    [
        (Asked(compared=["toe angle below 48"]), [("LF", 47.5)]),
        (Asked(compared=["toe_angle<=50"]), [("LF", 47.5), ("RF", 50.0)]),
        (Asked(compared=["toe angle below 48"], statuses=["history"]), [("RH", 44.0)]),
        (Asked(compared=["toe angle between 48 and 52"]), [("RF", 50.0)]),
        (Asked(compared=["sole depth at least 3/8 inch"]), [("LF", 9.525)]),
        (Asked(compared=["sole depth over 3/8 inch"]), []),
        (Asked(compared=["shoe size above 0"]), [("RF", "1.5"), ("LH", "0-1")]),
        (Asked(compared=["shoe size at least 1"]), [("RF", "1.5")]),
        (Asked(compared=["toe angle below 48", "sole depth < 1 cm"]), [("LF", 47.5), ("LF", 9.525)]),
        (Asked(compared=["toe angle above 48", "sole depth < 1 cm"]), []),
        (Asked("thrush", compared=["toe angle below 48"], since=date(2026, 5, 1)), [("LF", "thrush")]),
        (Asked("thrush", compared=["body condition over 6"]), [("LF", "thrush"), ("RF", "thrush")]),
        (Asked(feet=["RF"], compared=["toe angle over 40"]), [("RF", 50.0)]),
        (Asked(horse="Bramble", compared=["toe angle over 40"]), [("LF", 47.5), ("RF", 50.0)]),
    ],
)
def test_sizes_and_measures_are_compared(
    store: Store,
    keep_memo: Keep,
    vocabulary: Vocabulary,
    asked: Asked,
    found: list[tuple[str | None, str | float]],
) -> None:
    visit = Visit(horse="Bramble", horse_match=HorseMatch.KNOWN, date=date(2026, 5, 1), facts=MEASURED)
    keep_memo(store, "may.m4a", "Bramble.", [visit])
    assert [(foot, value) for _, foot, value, _ in told(search(store, asked, vocabulary))] == found


def test_a_value_that_is_corrected_is_found_under_its_new_value_and_day_alone(
    store: Store, vocabulary: Vocabulary
) -> None:
    with store._database.conn as connection:
        connection.execute("UPDATE facts SET value = 'canker' WHERE value = 'thrush' AND status = 'present'")
        connection.execute("UPDATE visits SET date = '2026-04-20' WHERE id = 2")
    assert told(search(store, Asked("thrush"), vocabulary)) == []
    assert told(search(store, Asked(findings=["canker"]), vocabulary)) == [("2026-04-20", "RF", "canker", "present")]
    left = store._database.execute("SELECT count(*), count(DISTINCT fact) FROM fact_days").fetchone()
    assert left == (10, 10)


def test_every_fact_has_its_day(store: Store) -> None:
    sql = """SELECT facts.id FROM facts JOIN visits ON visits.id = facts.visit
             EXCEPT SELECT fact FROM fact_days"""
    assert store._database.execute(sql).fetchall() == []


@pytest.mark.parametrize(
    ("by", "asked", "expected"),
    [
        ("month", Asked(slots=["finding"]), [("2026-03", 1, 0, 1, 1, 0), ("2026-04", 3, 1, 1, 1, 0)]),
        (
            "horse",
            Asked(statuses=["present"]),
            [("Bramble, River barn", 6, 0, 2, 1, 1), ("Sorrel, Hill yard", 1, 0, 1, 1, 0)],
        ),
        ("foot", Asked(slots=["finding"]), [("LF", 1, 0, 1, 1, 0), ("RF", 2, 1, 1, 1, 0), ("LH", 1, 0, 1, 1, 0)]),
        ("value", Asked("thrush"), [("finding thrush", 1, 0, 1, 1, 0)]),
        ("status", Asked("thrush", statuses=["absent"]), [("absent", 1, 0, 1, 1, 0)]),
        ("year", Asked("thrush"), [("2026", 1, 0, 1, 1, 0)]),
        ("place", Asked(slots=["gait"]), [("Hill yard", 1, 0, 1, 1, 0)]),
        ("owner", Asked(slots=["gait"]), [("C. Lind", 1, 0, 1, 1, 0)]),
        ("zone", Asked("thrush"), [("sulcus", 1, 0, 1, 1, 0)]),
    ],
)
def test_finds_are_counted(
    store: Store, vocabulary: Vocabulary, by: str, asked: Asked, expected: list[tuple[str, int, int, int, int, int]]
) -> None:
    with Looking.open(store.folder) as looking:
        counts = count(looking, asked, by, vocabulary)
    assert [(one.key, one.facts, one.suspected, one.visits, one.horses, one.flagged) for one in counts] == expected


def test_there_is_no_counting_by_moon(store: Store, vocabulary: Vocabulary) -> None:
    with (
        Looking.open(store.folder) as looking,
        pytest.raises(SettingsError, match="no way to count; known are month"),
    ):
        count(looking, Asked("thrush"), "moon", vocabulary)


def test_a_look_into_the_store_cannot_write(store: Store) -> None:
    with Looking.open(store.folder) as looking, pytest.raises(sqlite3.OperationalError, match="readonly"):
        looking._connection.execute("UPDATE visits SET notes = 'x'")


@pytest.mark.parametrize(
    ("words", "offered"),
    [
        ("trush", " Did you mean thrush"),
        ("seedy tow", " Did you mean seedy toe"),
        ("thrush", ""),
        ("gatepost", ""),
    ],
)
def test_what_was_perhaps_meant(vocabulary: Vocabulary, words: str, offered: str) -> None:
    told = meant_perhaps(words, vocabulary)
    assert told.startswith(offered) if offered else not told
