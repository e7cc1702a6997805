"""Where a memo names something: the longest phrase wins, gaps claim only their own words."""

from __future__ import annotations

from fractions import Fraction

import pytest

from pipeline.reading.mentions import Mention, MentionFinder
from pipeline.reading.tokens import form_tokens, level, tokenize
from pipeline.record import MatchKind
from pipeline.vocabulary import Vocabulary


@pytest.fixture(scope="module")
def typed(vocabulary: Vocabulary) -> MentionFinder:
    return MentionFinder(vocabulary)


@pytest.fixture(scope="module")
def heard(vocabulary: Vocabulary) -> MentionFinder:
    return MentionFinder(vocabulary, sound_alikes=True)


def of_class(finder: MentionFinder, text: str, name: str) -> list[tuple[str, str, MatchKind]]:
    tokens = tokenize(text)
    found = [m for m in finder.find(tokens) if m.get(name)]
    return [(" ".join(tokens.lowers[i] for i in m.literal), m.readings[name], m.match) for m in found]


FINDINGS = {
    "Thrush in the frog": [("thrush", "thrush", MatchKind.EXACT)],
    "some seedy toe": [("seedy toe", "white_line_disease", MatchKind.VARIANT)],
    "stretched white line": [("stretched white line", "white_line_separation", MatchKind.VARIANT)],
    "mud fever and a corn": [("mud fever", "scratches", MatchKind.VARIANT), ("corn", "corn", MatchKind.EXACT)],
    "he's foundered": [("foundered", "laminitis", MatchKind.VARIANT)],
    "a side-bone": [("side bone", "sidebone", MatchKind.VARIANT)],
}


@pytest.mark.parametrize("text", FINDINGS)
def test_findings_and_how_they_matched(text: str, typed: MentionFinder) -> None:
    assert of_class(typed, text, "findings") == FINDINGS[text]


def test_the_longest_phrase_wins(typed: MentionFinder) -> None:
    assert of_class(typed, "two half mesh pads", "pads") == [("half mesh pads", "half_mesh", MatchKind.VARIANT)]


def test_a_gap_claims_only_its_own_words(typed: MentionFinder) -> None:
    text = "left the hinds barefoot"
    assert of_class(typed, text, "work") == [("left barefoot", "trim", MatchKind.VARIANT)]
    assert [row[1] for row in of_class(typed, text, "feet")] == ["hinds"]


def test_sound_alikes_count_only_for_what_was_heard(typed: MentionFinder, heard: MentionFinder) -> None:
    assert of_class(typed, "some fresh in the frog", "findings") == []
    assert of_class(heard, "some fresh in the frog", "findings") == [("fresh", "thrush", MatchKind.SOUND_ALIKE)]


@pytest.mark.parametrize("put_on", ["bandage over that", "leather pads", "oakum packed in", "steel all round"])
def test_a_word_before_what_is_put_on_is_no_finding(heard: MentionFinder, put_on: str) -> None:
    assert of_class(heard, f"copper sulfate on it, fresh {put_on}", "findings") == []
    assert of_class(heard, f"left hind fresh, {put_on}", "findings") == [("fresh", "thrush", MatchKind.SOUND_ALIKE)]


def test_the_words_of_a_longer_sound_alike_are_only_its_parts(heard: MentionFinder) -> None:
    text = "the CD toe he had, and rode nails"
    assert of_class(heard, text, "findings") == [("cd toe", "white_line_disease", MatchKind.SOUND_ALIKE)]
    assert of_class(heard, text, "traction") == [("rode nails", "road_nails", MatchKind.SOUND_ALIKE)]
    assert of_class(heard, text, "measures") == []


def test_a_sound_alike_takes_nothing_that_is_surer(heard: MentionFinder) -> None:
    assert of_class(heard, "the pulse is up in both", "pulses") == [("up", "raised", MatchKind.VARIANT)]
    assert of_class(heard, "her feet are thin so the shoes stay off", "findings") == []
    assert of_class(heard, "no action", "denials") == [("no", "before", MatchKind.VARIANT)]
    assert of_class(heard, "you could see the toe", "findings") == []


@pytest.mark.parametrize(
    ("text", "feet"),
    [
        ("a cresty neck of four", []),
        ("condition score of four, corn in the near fore", ["LF"]),
        ("new set of fours", []),
        ("grade of four on the near hind", ["LH"]),
        ("on the left four nails", []),
        ("bruise of four", ["RF"]),
        ("heel angle of four 52", ["RF"]),
        ("lameness of four 2", ["RF"]),
        ("corn in the left four", ["LF"]),
    ],
)
def test_what_sounds_like_a_fore_may_be_a_number(text: str, feet: list[str], heard: MentionFinder) -> None:
    assert [row[1] for row in of_class(heard, text, "feet")] == feet


@pytest.mark.parametrize(
    ("text", "sizes"),
    [
        ("fives in front and fores behind", ["fives", "fores"]),
        ("size three on the hinds, fores in front", ["three", "fores"]),
        ("steel, fores, no, hang on, fives", ["fores", "fives"]),
        ("fores, sorry, threes", ["fores", "threes"]),
        ("fives on the fores", ["fives"]),
        ("reset the fores, no, the hinds, fives", ["fives"]),
        ("rolled toes on the fores, corns behind", []),
        ("thrush in the fores and behind", []),
    ],
)
def test_sizes_that_sound_like_front_feet(
    text: str, sizes: list[str], typed: MentionFinder, heard: MentionFinder
) -> None:
    tokens = tokenize(text)
    assert [tokens.lowers[m.start] for m in heard.find(tokens) if m.number] == sizes
    assert "fores" not in [tokens.lowers[m.start] for m in typed.find(tokens) if m.number]


@pytest.mark.parametrize(
    ("text", "numbers"),
    [
        ("toe length three in an eight", [Fraction(25, 8)]),
        ("toe lengths left front three inches, right front three in a quarter", [Fraction(3), Fraction(13, 4)]),
        ("three and an eight inches", [Fraction(25, 8)]),
        ("sizes seven and an eight", [Fraction(7), Fraction(8)]),
        ("six weeks for Buck, for for Tally", [Fraction(6), Fraction(4)]),
        ("to nails", [Fraction(2)]),
        ("nothing to nail to", []),
        ("here for a trim, for the winter", []),
    ],
)
def test_numbers_written_as_little_words(text: str, numbers: list[Fraction], heard: MentionFinder) -> None:
    assert [m.number.value for m in heard.find(tokenize(text)) if m.number] == numbers


def test_a_door_may_be_a_door(heard: MentionFinder) -> None:
    assert of_class(heard, "mild at the door", "zones") == [("door", "toe", MatchKind.SOUND_ALIKE)]
    assert of_class(heard, "had me over the stable door, kicked the door", "zones") == []


@pytest.mark.parametrize("text", ["fresh bandage", "fresh pads in front", "freshly trimmed", "fresh poultice on it"])
def test_what_is_new_is_no_misheard_thrush(text: str, heard: MentionFinder) -> None:
    assert of_class(heard, text, "findings") == []
    assert of_class(heard, f"fresh in the frog, {text}", "findings") == [("fresh", "thrush", MatchKind.SOUND_ALIKE)]
    assert of_class(heard, "he's fresh today, fresh air", "findings") == []


def test_a_sound_alike_never_takes_a_name(heard: MentionFinder) -> None:
    tokens = tokenize("Seedy to the field")
    found = heard.find(tokens, [Mention(0, 1, (0,), {"horse": "Seedy"})])
    assert [m.readings for m in found if m.start == 0] == [{"horse": "Seedy"}]


def test_a_name_gives_way_only_to_a_longer_phrase(typed: MentionFinder) -> None:
    tokens = tokenize("Copper had copper sulfate")
    names = [Mention(i, i + 1, (i,), {"horse": "Copper"}) for i in (0, 2)]
    found = typed.find(tokens, names)
    assert [(m.start, m.readings["horse"]) for m in found if m.get("horse")] == [(0, "Copper")]
    assert [m.start for m in found if m.get("treatments")] == [2]


def test_a_number_is_a_mention_with_its_tokens(typed: MentionFinder) -> None:
    (number,) = [m for m in typed.find(tokenize("toe at fifty one and a half degrees")) if m.number]
    assert (number.start, number.end) == (2, 7)
    assert number.number is not None
    assert number.number.value == Fraction(103, 2)


def test_mentions_are_in_order_and_share_no_token(typed: MentionFinder) -> None:
    tokens = tokenize("Left front had a toe crack, trimmed the hinds and left them bare, six to seven weeks.")
    claimed = [i for m in typed.find(tokens) for i in m.literal]
    starts = [m.start for m in typed.find(tokens)]
    assert starts == sorted(starts)
    assert len(claimed) == len(set(claimed))


def test_a_dropped_mention_means_nothing() -> None:
    mention = Mention(0, 1, (0,), {"findings": "thrush"}, dropped=True)
    assert mention.get("findings") is None
    assert not mention.is_any(("findings",))


def test_levelling_keeps_every_offset() -> None:
    text = "left–hind’s a double-aught — “really”"
    assert len(level(text)) == len(text)
    assert level(text) == 'left,hind\'s a double aught , "really"'


def test_a_form_splits_as_a_transcript_does() -> None:
    assert form_tokens("didn't ... react") == ["did", "n't", "...", "react"]


def test_every_form_splits_as_a_transcript_does(vocabulary: Vocabulary) -> None:
    forms = {form for name in vocabulary.classes for form in (*vocabulary.spoken(name), *vocabulary.heard_as(name))}
    plain = sorted(form for form in forms if "..." not in form)
    assert len(plain) > 5000
    assert [form_tokens(form) for form in plain] == [tokenize(form).words for form in plain]
    for form in ("cannot say", "dont", "em", "cos of it", "im sure", "till then"):
        assert form_tokens(form) == tokenize(form).words


SCORED = {
    "cresty neck for , condition seven": ["4", "7"],
    "grade to . trimmed the hinds": ["2"],
    "condition ate , trimmed": ["8"],
    "a cresty neck too , condition seven": ["7"],
    "what size for him": [],
    "condition for a cob": [],
}


@pytest.mark.parametrize("text", SCORED)
def test_a_score_that_sounds_like_a_little_word(heard: MentionFinder, text: str) -> None:
    assert [number for _, number, _ in of_class(heard, text, "number")] == SCORED[text]


def test_a_little_word_is_no_score_where_it_was_typed(typed: MentionFinder) -> None:
    assert of_class(typed, "cresty neck for , trimmed", "number") == []
