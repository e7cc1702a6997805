"""What no slot takes is kept word for word; what was heard and not understood is asked about."""

from __future__ import annotations

from pipeline.record import FlagKind
from tests.reading.conftest import Read


def test_a_sentence_without_a_fact_is_kept_word_for_word(read: Read) -> None:
    (visit,) = read("Tansy. The vet gave him antibiotics last week. Owner is away till Friday.", "Tansy")
    assert visit.facts == []
    assert visit.notes == "The vet gave him antibiotics last week\nOwner is away till Friday"


def test_a_sentence_that_became_facts_is_not_repeated(read: Read) -> None:
    (visit,) = read("Tansy. Gate was open again. Trimmed all four.", "Tansy")
    assert visit.notes == "Gate was open again"


def test_each_horse_keeps_its_own_notes(read: Read) -> None:
    one, other = read(
        "Tansy. Trimmed all four. Her mane wants pulling. Fennel. Reset the fronts. His rug is torn.", "Tansy", "Fennel"
    )
    assert (one.notes, other.notes) == ("Her mane wants pulling", "His rug is torn")


def test_a_bare_name_says_nothing(read: Read) -> None:
    (visit,) = read("Tansy.", "Tansy")
    assert (visit.facts, visit.notes, visit.flags) == ([], "", [])


def test_testers_without_an_answer_are_asked_about(read: Read) -> None:
    (visit,) = read("Tansy. Used testers.", "Tansy")
    assert [(f.kind, f.quote) for f in visit.flags] == [(FlagKind.NOT_UNDERSTOOD, "Used testers")]
    assert visit.flags[0].span == (7, 19)


def test_other_people_and_gear_make_no_facts(read: Read) -> None:
    for text in (
        "My toes are cold.",
        "Had a puncture on the van.",
        "Keep overreach boots on him.",
        "I was up at the crack of dawn.",
        "Order more copper sulfate.",
    ):
        (visit,) = read(f"Tansy. {text}", "Tansy")
        assert visit.facts == []
