"""What a new reading changed, visit by visit."""

from __future__ import annotations

from dataclasses import replace

from pipeline.keeping import KeptVisit, Store
from pipeline.record import Fact, Visit
from pipeline.using.differences import difference_json, difference_lines, differences


def changed(kept: KeptVisit, facts: list[Fact], **more: object) -> KeptVisit:
    """The visit with other facts."""
    return replace(kept, visit=Visit.model_validate({**kept.visit.model_dump(), "facts": facts, **more}))


def test_the_same_visits_tell_nothing(store: Store) -> None:
    visits = [store.visit(number) for number in (1, 2, 3)]
    assert differences(visits, visits) == []


def test_gone_new_and_doubted_facts_are_told(store: Store) -> None:
    was = store.visit(2)
    thrush, abscess, *others = was.visit.facts
    doubted = abscess.model_copy(update={"flagged": True, "reasons": ["hard to hear"]})
    moved = thrush.model_copy(update={"foot": "LF"})
    (one,) = differences([was], [changed(was, [moved, doubted, *others])])
    assert difference_lines([one]) == [
        "visit 2: Bramble, 2026-04-13",
        "  - right fore: thrush (sulcus)",
        "  + left fore: thrush (sulcus)",
        "  ? right fore: perhaps abscess",
    ]
    told = difference_json(one)
    assert (told["visit"], told["gone"], told["new"]) == (
        2, [thrush.model_dump(mode="json")], [moved.model_dump(mode="json")],
    )  # fmt: skip


def test_a_fact_said_twice_and_once_now_is_gone_once(store: Store) -> None:
    was = store.visit(3)
    (sound,) = was.visit.facts
    (one,) = differences([changed(was, [sound, sound])], [was])
    assert (one.gone, one.new) == ((sound,), ())


def test_another_horse_and_other_notes_are_told(store: Store) -> None:
    was = store.visit(3)
    now = replace(changed(was, list(was.visit.facts), horse="Teasel", notes="Calm."), horse=None)
    assert difference_lines(differences([was], [now])) == [
        "visit 3: Unknown horse (heard: Teasel), 2026-04-13",
        "  the horse was Sorrel",
        "  the notes are others",
    ]


def test_a_visit_that_only_one_reading_found_is_told(store: Store) -> None:
    two, three = store.visit(2), store.visit(3)
    lines = difference_lines(differences([three], [two]))
    assert lines[0] == "visit 2: Bramble, 2026-04-13, not found before"
    assert lines[-2:] == ["visit 3: Sorrel, 2026-04-13, no longer found", "  - whole horse: sound"]
