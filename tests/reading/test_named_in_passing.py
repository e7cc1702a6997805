"""A horse named in passing takes no talk over, and one that is turned to, or back to, does.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

_PASSING = (
    "Didn't get to Buck.", "Didn't do Buck today.", "Couldn't catch Buck.", "Never got to Buck.", "No Buck today.",
    "Left Buck for next time.", "Left Buck till Tuesday.", "Buck will have to wait.", "Buck's away at a show.",
    "Buck's gone home.", "Buck's been sold.", "Buck had to be left.", "Buck couldn't be caught.", "Buck wasn't there.",
    "Buck was out hacking.", "Buck's retired.", "Buck next week.", "Buck is due next week.", "Buck tomorrow.",
    "I did Buck last month.", "I'll do Buck on another day.", "Doing Buck next week.", "She stood next to Buck.",
    "Turned out with Buck.", "She came with Buck.", "The owner asked about Buck.", "Buck stood with her.",
    "Buck kept her company.", "Had to have Buck next to her.", "They've moved Buck to another yard.",
    "She's Buck's sister.", "She's wearing Buck's headcollar.", "Buck's mum was there.",
    "Her mate Buck is Thursday's job.", "Buck is on Friday's list.", "Buck was Monday's.", "I did Buck on Tuesday.",
    "Buck was done on Monday.", "Buck isn't on my list.", "Buck's not for today.", "Buck belongs to Saturday's run.",
    "Buck's one for Monday.", "Buck goes to another farrier.", "Buck is somebody else's.", "Buck I'll do on Thursday.",
)  # fmt: skip
_TURNED_TO = (
    "Over to her brother Buck.", "Then her friend Buck.", "And her mate Buck.", "They brought Buck out.",
    "They brought Buck in next.", "They led Buck up.", "Didn't take long. Buck.", "Buck was out next.", "Buck is next.",
    "With Buck,", "For Buck,", "About Buck,", "Then Buck came in.", "Last thing, Buck.",
    "Buck is the last job.", "Buck came in from the sales on Thursday.", "Buck is on the list too.",
    "Buck is today's other job.", "Buck is a different matter.", "Buck's another story.",
)  # fmt: skip
_BACK = (
    "Forgot to say, on Tally,", "Forgot to say about Tally,", "Forgot to say for Tally,", "Oh, on Tally,",
    "I forgot to tell you about Tally,", "One more thing for Tally,", "Another thing with Tally,", "Sorry, on Tally,",
    "Wait, on Tally,", "Actually, Tally again,",
    "Before I forget, on Tally,", "By the way, on Tally,", "While I think of it, on Tally,", "One for Tally,",
    "Don't think I said on Tally,", "I didn't say for Tally,", "Last thing for Tally,", "Addition for Tally,",
)  # fmt: skip
_TOLD = (
    ("Corn in the off fore.", "RF finding corn"),
    ("Pulse bounding in the near fore.", "LF pulse bounding"),
)


def _by_horse(read: Read, text: str) -> dict[str, list[str]]:
    return {str(visit.horse): told(visit) for visit in read(text, "Tally", "Buck") if visit.facts}


@pytest.mark.parametrize(("text", "fact"), _TOLD)
@pytest.mark.parametrize("passing", _PASSING)
def test_named_in_passing(read: Read, passing: str, text: str, fact: str) -> None:
    said = _by_horse(read, f"Tally. Trimmed the hinds. {passing} {text} Six weeks.")
    assert said == {"Tally": sorted(["LH+RH work trim", fact, "- next_visit_weeks 6 planned"])}


@pytest.mark.parametrize("turned", _TURNED_TO)
def test_turned_to(read: Read, turned: str) -> None:
    assert _by_horse(read, f"Tally. Trimmed the hinds. {turned} Corn in the off fore. Six weeks.") == {
        "Tally": ["LH+RH work trim"],
        "Buck": ["- next_visit_weeks 6 planned", "RF finding corn"],
    }


@pytest.mark.parametrize("on", ["Back to Buck.", "Carrying on with Buck.", "Right, Buck again."])
@pytest.mark.parametrize("back", _BACK)
def test_back_to_the_one_before(read: Read, back: str, on: str) -> None:
    buck = "Then Buck. Mild flare on the left hind."
    said = _by_horse(
        read, f"Tally. Trimmed the hinds. {buck} {back} a corn in the off fore. {on} Heat in the near fore."
    )
    assert said == {
        "Tally": ["LH+RH work trim", "RF finding corn"],
        "Buck": ["LF finding heat", "LH finding flare ~mild"],
    }


@pytest.mark.parametrize(
    "said",
    [
        "That's Buck done, no, Buck's next week, it's Tally I mean.",
        "Buck. No, I tell a lie, I did Buck yesterday, this is Tally.",
        "This is Buck, no, hang on, Buck's tomorrow, this is Tally.",
    ],
)
def test_put_right_at_once(read: Read, said: str) -> None:
    assert _by_horse(read, f"{said} Corn in the off fore.") == {"Tally": ["RF finding corn"]}


def test_a_new_one_that_was_hard_to_get_to(read: Read) -> None:
    said = _by_horse(read, "A new horse to me, Juniper's the name, and I'd a job getting in to him. Trimmed the hinds.")
    assert said == {"Juniper": ["LH+RH work trim"]}


def test_what_keeps_him_away_is_his(read: Read) -> None:
    said = _by_horse(read, "Tally. Trimmed the hinds. Buck's off, lame, doing him next week. Corn in the off fore.")
    assert said == {"Tally": ["LH+RH work trim", "RF finding corn"], "Buck": ["- gait lame"]}


@pytest.mark.parametrize(
    "said", ["Buck was asleep.", "Buck was watching.", "Buck had a good look.", "Saw Buck over the fence."]
)
def test_asked_whose_it_is(read: Read, said: str) -> None:
    visits = read(f"Tally. Trimmed the hinds. {said} Corn in the off fore.", "Tally", "Buck")
    assert [flag.kind for visit in visits for flag in visit.flags] == ["horse"]


@pytest.mark.parametrize("said", ["Buck's the one.", "Buck is a grey gelding.", "Buck.", "Buck was next."])
def test_not_asked_where_he_is_turned_to(read: Read, said: str) -> None:
    visits = read(f"Tally. Trimmed the hinds. {said} Corn in the off fore.", "Tally", "Buck")
    assert not [flag for visit in visits for flag in visit.flags]


@pytest.mark.parametrize(
    ("first", "other"),
    [("mare", "gelding"), ("cob", "pony"), ("filly", "colt"), ("grey", "bay"), ("grey mare", "bay cob")],
)
@pytest.mark.parametrize(
    "said",
    [
        "The {} has thrush in the left hind.",
        "Back to the {}. Thrush in the left hind.",
        "Going back to the {}, thrush in the left hind.",
        "On the {}, thrush in the left hind.",
        "Thrush in the {}'s left hind.",
    ],
)
@pytest.mark.parametrize("form", ["Tally, the {}.", "Tally's the {}.", "Tally the {}."])
def test_told_by_its_kind(read: Read, form: str, said: str, first: str, other: str) -> None:
    one, two = form.format(first), form.format(other).replace("Tally", "Buck")
    text = f"{one} Corn in the near fore. {two} Corn in the off fore. {said.format(first.split()[-1])}"
    assert _by_horse(read, text) == {"Tally": ["LF finding corn", "LH finding thrush"], "Buck": ["RF finding corn"]}


def test_one_told_by_another_article_is_of_the_kind_too(read: Read) -> None:
    text = (
        "Tally, the filly. Corn in the near fore. Buck, a filly too. Heat in the off fore. Thrush in the filly's frog."
    )
    assert [flag.kind for visit in read(text, "Tally", "Buck") for flag in visit.flags] == ["horse"]


@pytest.mark.parametrize("kind", ["mare", "gelding", "cob", "grey"])
@pytest.mark.parametrize("said", ["The {} has thrush in the left hind.", "Thrush in the {}'s left hind."])
def test_asked_which_of_two_of_a_kind(read: Read, said: str, kind: str) -> None:
    text = f"Tally, the {kind}. Corn in the near fore. Buck, the {kind}. Corn in the off fore."
    assert not [flag for visit in read(text, "Tally", "Buck") for flag in visit.flags]
    flags = [flag for visit in read(f"{text} {said.format(kind)}", "Tally", "Buck") for flag in visit.flags]
    assert [(flag.kind, flag.quote.lower()) for flag in flags] == [("horse", f"the {kind}")]


@pytest.mark.parametrize("done", ["reset Buck", "I reset Buck", "and reset Buck", "then I reset Buck all round"])
@pytest.mark.parametrize("lead", ["Trimmed Tally", "Tally. Trimmed all four", "I trimmed Tally all round"])
def test_done_to_the_one_named_behind(read: Read, lead: str, done: str) -> None:
    tally, buck = "LF+RF+LH+RH work trim", "LF+RF+LH+RH work reset"
    want = {"Tally": [tally], "Buck": ["- next_visit_weeks 6 planned", buck]}
    assert _by_horse(read, f"{lead}. {done[0].upper()}{done[1:]}. Six weeks.") == want
    assert _by_horse(read, f"{lead}, {done}. Six weeks.") == want


@pytest.mark.parametrize(
    ("said", "status"), [("I'll trim Buck next time.", " planned"), ("Trimmed Buck last week.", " history")]
)
def test_another_day_is_no_turn(read: Read, said: str, status: str) -> None:
    assert _by_horse(read, f"Tally. Corn in the off fore. {said} Six weeks.") == {
        "Tally": ["- next_visit_weeks 6 planned", "RF finding corn"],
        "Buck": [f"LF+RF+LH+RH work trim{status}"],
    }


@pytest.mark.parametrize(
    "said",
    [
        "Get the vet to Tally.",
        "I'd get the vet out to Tally.",
        "Ring the vet about Tally.",
        "Have the vet check Tally.",
    ],
)
def test_the_vet_for_the_one_named(read: Read, said: str) -> None:
    assert _by_horse(read, f"Tally. Trimmed the hinds. Then Buck. Corn in the off fore. {said} Five weeks.") == {
        "Tally": ["- vet referral planned", "LH+RH work trim"],
        "Buck": ["- next_visit_weeks 5 planned", "RF finding corn"],
    }


@pytest.mark.parametrize(
    "beside",
    [
        "Buck had the same last winter",
        "Buck had the same thing last year",
        "Buck had one like it",
        "reminds me of Buck's",
    ],
)
@pytest.mark.parametrize("found", ["Thrush in the off hind", "She has a corn in the near fore"])
def test_set_beside_anothers(read: Read, found: str, beside: str) -> None:
    fact = "RH finding thrush" if "Thrush" in found else "LF finding corn"
    said = _by_horse(read, f"Tally. {found}, {beside}. Reset in front. Six weeks.")
    assert said == {"Tally": sorted([fact, "LF+RF work reset", "- next_visit_weeks 6 planned"])}


def test_had_something_of_his_own(read: Read) -> None:
    said = _by_horse(read, "Tally. Thrush in the off hind. Buck had the same shoes last year, reset in front.")
    assert said == {"Tally": ["RH finding thrush"], "Buck": ["LF+RF work reset"]}


@pytest.mark.parametrize(
    "beside",
    [
        "Buck had that last year",
        "Buck had the same in the spring",
        "Buck had that same trouble over the winter",
        "Buck has had that before",
        "Buck gets that every winter",
        "same as Buck had last time",
        "that's what Buck had in January",
        "Buck had a touch of that a couple of years ago",
        "as bad as Buck's",
        "not nearly as bad as Buck's",
        "worse than Buck's ever was",
        "a bit better than Buck's",
        "as bad as what Buck had",
        "met Buck too",
        "looked at Buck while I was there, nothing to do",
        "had a look at Buck, all good",
        "said hello to Buck",
    ],
)
@pytest.mark.parametrize("mark", [".", ","])
def test_an_aside_gives_nothing_away(read: Read, beside: str, mark: str) -> None:
    aside = beside if mark == "," else beside[0].upper() + beside[1:]
    text = f"Tally. Thrush in the off hind{mark} {aside}. Reset in front. Six weeks."
    assert _by_horse(read, text) == {
        "Tally": sorted(["RH finding thrush", "LF+RF work reset", "- next_visit_weeks 6 planned"])
    }


@pytest.mark.parametrize(
    ("said", "buck"),
    [
        ("Buck had lost his left front.", ["LF shoe_state lost"]),
        ("Looked at Buck while I was there, he'd lost the left front.", ["LF shoe_state lost"]),
        ("Saw Buck too, left front shoe lost.", ["LF shoe_state lost"]),
        ("Saw Buck too. Lost his left front shoe.", ["LF shoe_state lost"]),
        ("Looked at Buck, all good. Reset the fronts on him.", ["LF+RF work reset"]),
        ("Buck has one like it, corn in the left hind.", ["LH finding corn"]),
        ("Buck had a bad corn in the left hind.", ["LH finding corn ~severe"]),
        ("Buck had thrush as bad as Tally's, left hind.", ["LH finding thrush"]),
    ],
)
def test_what_another_has_himself_is_his(read: Read, said: str, buck: list[str]) -> None:
    assert _by_horse(read, f"Tally. Trimmed the hinds. {said}") == {"Tally": ["LH+RH work trim"], "Buck": buck}


@pytest.mark.parametrize(
    "said", ["Vet for Buck.", "Vet to Buck.", "Get Buck to the vet.", "Call the vet for Buck.", "Vet should see Buck."]
)
def test_the_vet_for_one_of_whom_nothing_else_is_told(read: Read, said: str) -> None:
    assert _by_horse(read, f"Tally. Corn in the off fore. {said} Five weeks.") == {
        "Tally": ["- next_visit_weeks 5 planned", "RF finding corn"],
        "Buck": ["- vet referral planned"],
    }


@pytest.mark.parametrize("said", ["Vet's been to Buck.", "Took Buck to the vet last month."])
def test_the_vet_of_another_day(read: Read, said: str) -> None:
    assert _by_horse(read, f"Tally. Corn in the off fore. {said} Five weeks.") == {
        "Tally": ["- next_visit_weeks 5 planned", "RF finding corn"]
    }


@pytest.mark.parametrize(
    "back",
    [
        "Forgot to add on Tally, egg bars in front.",
        "One thing I left out on Tally: egg bars in front.",
        "And on Tally I should have said egg bars in front.",
        "I should have said Tally has egg bars in front.",
        "Slipped my mind on Tally, egg bars in front.",
        "On Tally I forgot to say egg bars in front.",
    ],
)
def test_left_out_before(read: Read, back: str) -> None:
    assert _by_horse(read, f"Tally. Trimmed the hinds. Then Buck. Corn in the off fore. {back}") == {
        "Tally": ["LF+RF shoe_type egg_bar", "LH+RH work trim"],
        "Buck": ["RF finding corn"],
    }


def test_forgotten_pads_are_not_put_on(read: Read) -> None:
    assert _by_horse(read, "Tally. Trimmed the hinds. Forgot to add full pads in front.") == {
        "Tally": ["LH+RH work trim"]
    }


@pytest.mark.parametrize(
    "said",
    [
        "Then saw Buck, no problems.",
        "Then looked at Buck, all good.",
        "Saw Buck next, fine.",
        "After that I saw Buck, no bother.",
        "Saw Buck after, all well.",
        "Had a look at Buck, all good.",
        "Looked at Buck, no complaints.",
        "Checked Buck, no issues.",
        "Now looked at Buck, nice and sound.",
        "Last I saw Buck, he was good.",
    ],
)
def test_seen_in_his_turn_what_is_done_next_is_his(read: Read, said: str) -> None:
    told_of = _by_horse(read, f"Tally. Trimmed the hinds. {said} Fronts reset.")
    assert told_of["Tally"] == ["LH+RH work trim"]
    assert "LF+RF work reset" in told_of["Buck"]


@pytest.mark.parametrize(
    "said",
    [
        "Saw Buck too, nothing to do.",
        "Looked at Buck while I was there, nothing to do.",
        "Then saw Buck last week, all good.",
        "Said hello to Buck.",
        "Saw Buck as well, all good.",
    ],
)
def test_seen_in_passing_what_is_done_next_is_not_his(read: Read, said: str) -> None:
    told_of = _by_horse(read, f"Tally. Trimmed the hinds. {said} Fronts reset.")
    assert told_of == {"Tally": ["LF+RF work reset", "LH+RH work trim"]}


test_a_foot_that_is_fine = reads(
    [
        ("Near fore had a corn, off fore's fine. Poultice on.", ["LF finding corn", "LF treatment poultice"]),
        (
            "She'd pulled the right front, no, left front, the right one's fine. Lost altogether.",
            ["LF shoe_state lost"],
        ),
        (
            "Near hind has an abscess, the other's grand. Poultice on it, and a bandage.",
            ["LH finding abscess", "LH treatment bandage", "LH treatment poultice"],
        ),
        # work and answers are of the foot named last
        ("Near fore has a corn, off fore's fine. Reset.", ["LF finding corn", "RF work reset"]),
        (
            "Near fore has a corn, off fore's fine. Testers mild at the heel.",
            ["LF finding corn", "RF tester mild @heel"],
        ),
    ],
    "Buck. {}",
)


@pytest.mark.parametrize(
    "said",
    [
        "who is not Buck, Buck's the little one and Buck's next month", "not Buck, Buck's the bay, Buck I do Friday",
        "not to be confused with Buck, Buck's her brother", "which isn't Buck, Buck's the big grey",
        "not to be mixed up with Buck, who's the bay",
    ],
)  # fmt: skip
def test_a_horse_set_aside_stays_so(read: Read, said: str) -> None:
    (visit,) = read(f"Tally, {said}. Thrush in the left front.", "Tally", "Buck")
    assert (visit.horse, told(visit)) == ("Tally", ["LF finding thrush"])


def test_a_horse_set_aside_may_come_behind(read: Read) -> None:
    tally, buck = read("Tally, not Buck, Buck's the bay. Trimmed. Now Buck, thrush left hind.", "Tally", "Buck")
    assert (told(tally), told(buck)) == (["LF+RF+LH+RH work trim"], ["LH finding thrush"])
