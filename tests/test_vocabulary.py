"""The loader refuses every mistake with its file and line, and the shipped words cover the record."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pipeline.errors import VocabularyError
from pipeline.record import WORDED_SLOTS, ZONES, Severity
from pipeline.vocabulary import CLASS_SLOTS, Entry, Vocabulary, load_vocabulary

HEADER = "canonical,spoken,heard_as,source\n"
MATTERS = (*CLASS_SLOTS, "zones", "severities")


@pytest.fixture(scope="module")
def shipped() -> Vocabulary:
    """The words as they are shipped."""
    return load_vocabulary()


def _write(folder: Path, name: str, lines: str) -> Path:
    (folder / f"{name}.csv").write_text(HEADER + lines, encoding="utf-8")
    return folder


def _within(inner: str, outer: str) -> bool:
    """Whether the words of ``inner`` stand together, as whole words, in ``outer``."""
    return f" {inner.replace(chr(39), ' ' + chr(39))} " in f" {outer.replace(chr(39), ' ' + chr(39))} "


# -- what is read ------------------------------------------------------------------------------------------------------


def test_reads_forms_comments_and_quoted_cells(tmp_path: Path) -> None:
    folder = _write(tmp_path, "findings", '# a comment\n\nthrush,thrush | thrushy,fresh,"common practice, no source"\n')
    (entry,) = load_vocabulary(folder).entries("findings")
    assert entry == Entry("thrush", ("thrush", "thrushy"), ("fresh",), "common practice, no source", "findings.csv", 4)


@pytest.mark.parametrize(
    ("cell", "forms"),
    [
        ("[soft;mushy] frog", ["soft frog", "mushy frog"]),
        (
            "frog [gone;turned] [soft;mushy]",
            ["frog gone soft", "frog gone mushy", "frog turned soft", "frog turned mushy"],
        ),
        ("[;rather;a bit] soft", ["soft", "rather soft", "a bit soft"]),
        ("soft [at;] the frog", ["soft at the frog", "soft the frog"]),
        ("soft[;ened]", ["soft", "softened"]),
        ("[frog ...;bars ...] soft | n/a", ["frog ... soft", "bars ... soft", "n/a"]),
        ("rotten|[soft;mushy] frog|foul", ["rotten", "soft frog", "mushy frog", "foul"]),
    ],
)
def test_alternatives_stand_for_the_forms_they_would_be_written_out_as(
    tmp_path: Path, cell: str, forms: list[str]
) -> None:
    vocabulary = load_vocabulary(_write(tmp_path, "findings", f"thrush,{cell},,x\ncorn,korn,{cell},x\n"))
    assert [list(vocabulary.spoken("findings")), list(vocabulary.heard_as("findings"))] == [[*forms, "korn"], forms]


def test_alternatives_are_the_same_words_as_their_forms_written_out(tmp_path: Path) -> None:
    first = load_vocabulary(_write(tmp_path, "findings", "thrush,[soft;mushy] [;old] frog,,x\n")).version
    assert load_vocabulary(tmp_path).version == first
    written = "thrush,soft frog|soft old frog|mushy frog|mushy old frog,,x\n"
    assert load_vocabulary(_write(tmp_path, "findings", written)).version == first


def test_spoken_and_heard_as_are_kept_apart(tmp_path: Path) -> None:
    vocabulary = load_vocabulary(_write(tmp_path, "findings", "thrush,thrush|thrushy,fresh|trash,common practice\n"))
    assert vocabulary.spoken("findings") == {"thrush": "thrush", "thrushy": "thrush"}
    assert vocabulary.heard_as("findings") == {"fresh": "thrush", "trash": "thrush"}


def test_own_words_join_their_class(tmp_path: Path) -> None:
    folder = _write(tmp_path, "findings", "thrush,thrush,,common practice\n")
    own = Entry("thrush", ("the rot",), (), "own word", "own words", 1)
    assert load_vocabulary(folder, [("findings", own)]).spoken("findings") == {"thrush": "thrush", "the rot": "thrush"}


def test_version_changes_with_any_word(tmp_path: Path) -> None:
    first = load_vocabulary(_write(tmp_path, "findings", "thrush,thrush,,common practice\n")).version
    again = load_vocabulary(tmp_path).version
    changed = load_vocabulary(_write(tmp_path, "findings", "thrush,thrush|thrushy,,common practice\n")).version
    assert first == again != changed


# -- what is refused ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "lines", "says"),
    [
        (
            "findings",
            "measles,measles,,common practice\n",
            "findings.csv line 2: 'measles' is no finding of the record",
        ),
        ("zones", "knee,knee,,common practice\n", "zones.csv line 2: 'knee' is no zone of the record"),
        ("pulses", "\nnormal,,,common practice\n", "pulses.csv line 3: 'normal' has no spoken form"),
        ("pulses", "normal,normal,,\n", "pulses.csv line 2: no source"),
        ("pulses", ",normal,,common practice\n", "pulses.csv line 2: no canonical name"),
        (
            "pulses",
            "normal,Normal,,common practice\n",
            "pulses.csv line 2: 'Normal' must be words of the small",
        ),
        ("pulses", "normal,not  raised,,common practice\n", "pulses.csv line 2: 'not  raised' must be words"),
        ("pulses", "normal,not-raised,,common practice\n", "pulses.csv line 2: 'not-raised' must be words"),
        ("pulses", "normal,normal,NORMAL,common practice\n", "pulses.csv line 2: 'NORMAL' must be words"),
        ("pulses", "normal,not [raised,,x\n", "pulses.csv line 2: the brackets of 'not [raised' do not match"),
        ("pulses", "normal,quiet,raised/up],x\n", "pulses.csv line 2: the brackets of 'raised/up]' do not match"),
        ("pulses", "normal,not [up;[very;so] up],,x\n", "pulses.csv line 2: the brackets of 'not [up;[very;so] up]'"),
        ("pulses", "normal,]up/so[,,x\n", "pulses.csv line 2: the brackets of ']up/so[' do not match"),
        ("pulses", "normal,not [a|b],,x\n", "pulses.csv line 2: the brackets of 'not [a' do not match"),
        ("pulses", "normal,not [] up,,x\n", "pulses.csv line 2: the brackets of 'not [] up' must hold two or more"),
        ("pulses", "normal,not [up],,x\n", "pulses.csv line 2: the brackets of 'not [up]' must hold two or more"),
        ("pulses", "normal,[up;so;up],,x\n", "pulses.csv line 2: the brackets of '[up;so;up]' must hold two or more"),
        ("pulses", "normal,[quiet;],,x\n", "pulses.csv line 2: '' must be words"),
        ("pulses", "normal,[quiet;Calm],,x\n", "pulses.csv line 2: 'Calm' must be words"),
        (
            "pulses",
            "normal,[so;very] quiet,,x\nraised,very [quiet;up],,x\n",
            "pulses.csv line 3: 'very quiet' means normal on line 2 already",
        ),
        ("pulses", "normal,normal,common practice\n", "pulses.csv line 2: 3 cells where 4 belong"),
        (
            "pulses",
            "normal,quiet,,common practice\nraised,quiet,,common practice\n",
            "pulses.csv line 3: 'quiet' means normal on line 2 already",
        ),
    ],
)
def test_a_mistake_is_refused_with_file_and_line(tmp_path: Path, name: str, lines: str, says: str) -> None:
    with pytest.raises(VocabularyError) as refused:
        load_vocabulary(_write(tmp_path, name, lines))
    assert str(refused.value).startswith(says)


def test_wrong_columns_are_refused(tmp_path: Path) -> None:
    (tmp_path / "pulses.csv").write_text("# words\ncanonical,spoken,source\n", encoding="utf-8")
    with pytest.raises(VocabularyError, match=r"pulses\.csv line 2: the columns must be canonical,spoken"):
        load_vocabulary(tmp_path)


def test_text_that_is_not_utf8_is_refused(tmp_path: Path) -> None:
    (tmp_path / "pulses.csv").write_bytes(b"canonical,spoken,heard_as,source\nnormal,caf\xe9,,x\n")
    with pytest.raises(VocabularyError, match=r"pulses\.csv cannot be read as UTF-8"):
        load_vocabulary(tmp_path)


def test_an_empty_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(VocabularyError, match="No vocabulary files"):
        load_vocabulary(tmp_path)


def test_own_words_of_an_unknown_class_or_meaning_are_refused(tmp_path: Path) -> None:
    folder = _write(tmp_path, "findings", "thrush,thrush,,common practice\n")
    with pytest.raises(VocabularyError, match="no class of words 'ailments'"):
        load_vocabulary(folder, [("ailments", Entry("thrush", ("rot",), (), "own word", "own words", 1))])
    with pytest.raises(VocabularyError, match="own words line 7: 'rot' is no finding"):
        load_vocabulary(folder, [("findings", Entry("rot", ("rot",), (), "own word", "own words", 7))])


def test_asking_for_a_class_that_is_not_there_is_refused(tmp_path: Path) -> None:
    vocabulary = load_vocabulary(_write(tmp_path, "findings", "thrush,thrush,,common practice\n"))
    with pytest.raises(VocabularyError, match=r"no file ailments\.csv"):
        vocabulary.entries("ailments")


@given(st.text(alphabet=st.characters(whitelist_categories=["Lu"], max_codepoint=90), min_size=1, max_size=8))
def test_capitals_never_pass_as_a_form(word: str) -> None:
    entry = Entry("thrush", (word,), (), "own word", "own words", 1)
    with pytest.raises(VocabularyError, match="small letters a to z"):
        load_vocabulary(own_words=[("findings", entry)])


# -- the shipped words -------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("slot", sorted(set(CLASS_SLOTS.values())))
def test_every_value_of_the_record_can_be_said(shipped: Vocabulary, slot: str) -> None:
    said = {value for name in CLASS_SLOTS if CLASS_SLOTS[name] == slot for value in shipped.spoken(name).values()}
    assert said == set(WORDED_SLOTS[slot])


def test_every_zone_and_severity_can_be_said(shipped: Vocabulary) -> None:
    assert set(shipped.spoken("zones").values()) == set(ZONES)
    assert set(shipped.spoken("severities").values()) == {severity.value for severity in Severity}


@pytest.mark.parametrize("name", MATTERS)
def test_no_form_is_listed_twice(shipped: Vocabulary, name: str) -> None:
    forms = [form for entry in shipped.entries(name) for form in entry.spoken]
    assert sorted(forms) == sorted(set(forms))


@pytest.mark.parametrize("name", MATTERS)
def test_what_recognisers_write_is_no_true_form_of_another_meaning(shipped: Vocabulary, name: str) -> None:
    spoken = shipped.spoken(name)
    wrong = {form for form, meant in shipped.heard_as(name).items() if spoken.get(form, meant) != meant}
    assert wrong == set()


@pytest.mark.parametrize(
    ("phrase", "name", "hidden"),
    [
        ("bell boots", "shoe_types", "boots"),
        ("sound asleep", "gaits", "sound"),
        ("turned loose", "shoe_states", "loose"),
        ("lost weight", "shoe_states", "lost"),
        ("heel of bread", "zones", "heel"),
        ("toe the line", "zones", "toe"),
        ("in heat", "findings", "heat"),
        ("corn oil", "findings", "corn"),
        ("flared nostrils", "findings", "flared"),
        ("bad day", "severities", "bad"),
    ],
)
def test_talk_that_holds_a_word_of_the_trade_is_set_aside(
    shipped: Vocabulary, phrase: str, name: str, hidden: str
) -> None:
    assert phrase in shipped.spoken("not_facts")
    assert hidden in shipped.spoken(name)
    assert _within(hidden, phrase)


def test_no_phrase_is_both_a_fact_and_none(shipped: Vocabulary) -> None:
    facts = {form for name in MATTERS for form in shipped.spoken(name)}
    assert facts.intersection(shipped.spoken("not_facts")) == set()


@pytest.mark.parametrize(
    ("form", "canonical"),
    [
        ("seedy toe", "white_line_disease"),
        ("foundered", "laminitis"),
        ("stretched white line", "white_line_separation"),
        ("shelly", "weak_wall"),
        ("pricked", "quicked"),
        ("nail bind", "close_nail"),
        ("cracked heels", "scratches"),
        ("mud fever", "scratches"),
        ("sandcrack", "crack"),
        ("heels are contracted", "contracted_heels"),
    ],
)
def test_trade_names_of_findings(shipped: Vocabulary, form: str, canonical: str) -> None:
    assert shipped.spoken("findings")[form] == canonical


@pytest.mark.parametrize(
    ("name", "form"),
    [
        ("findings", "hot"),
        ("findings", "split"),
        ("findings", "no sole"),
        ("findings", "drew blood"),
        ("findings", "white line"),
        ("shoe_states", "pulled"),
        ("gaits", "off on"),
        ("tester_responses", "not positive"),
        ("tester_responses", "okay"),
        ("pulses", "good"),
        ("severities", "deep"),
    ],
)
def test_words_that_also_mean_something_else_are_no_forms(shipped: Vocabulary, name: str, form: str) -> None:
    assert form not in shipped.spoken(name)
