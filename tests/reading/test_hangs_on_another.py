"""A plan that hangs on how another horse is, told in this one's part, is that horse's, and nothing of it was done.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import NAMES, Read, reads
from tests.reading.telling import told

_RESET, _SIX, _NEW = "LF+RF+LH+RH work reset", "- next_visit_weeks 6 planned", "LF+RF work new_shoe planned"


def _by_horse(read: Read, said: str) -> dict[str, list[str]]:
    visits = read(f"Buck. Reset all round. {said} Six weeks.", *NAMES)
    return {str(v.horse): told(v) for v in visits}


@pytest.mark.parametrize(
    "plan",
    [
        "When Tally's sound, new shoes in front.",
        "Once Tally's sound again, new shoes in front.",
        "New shoes in front when Tally's sound.",
        "When Tally comes sound she gets new shoes in front.",
        "As soon as Tally's come right, new shoes in front.",
        "If Tally's sound, new shoes in front.",
    ],
)
def test_the_plan_of_another(read: Read, plan: str) -> None:
    assert _by_horse(read, plan) == {"Buck": [_SIX, _RESET], "Tally": [_NEW]}


@pytest.mark.parametrize(
    ("said", "its"),
    [
        ("When he's sound, new shoes in front.", [_SIX, _NEW, _RESET]),
        ("When Tally's home, ring me.", [_SIX, _RESET]),
        ("Quiet.", ["- manner quiet", _SIX, _RESET]),
    ],
)
def test_his_own(read: Read, said: str, its: list[str]) -> None:
    assert _by_horse(read, said) == {"Buck": its}


def test_done_when_another_was(read: Read) -> None:
    (buck,) = read("Buck. When Tally was done, new shoes in front.", *NAMES)
    assert told(buck) == ["LF+RF work new_shoe"]


def test_as_another_that_is_not_here(read: Read) -> None:
    """Who is named only for her weeks is no visit; who is told of elsewhere has them too."""
    for said in ("Seven weeks, same as Tally.", "Same as Tally, seven weeks.", "Seven weeks, the same as Tally's on."):
        (buck,) = read(f"Buck. Reset all round. {said}", *NAMES)
        assert told(buck) == ["- next_visit_weeks 7 planned", _RESET]
    both = read("Tally. Reset all round. Buck. Reset all round. Seven weeks, same as Tally.", *NAMES)
    assert [told(v) for v in both] == [["- next_visit_weeks 7 planned", _RESET]] * 2
    both = read("Tally. Reset all round. Then Buck, same as Tally.", *NAMES)
    assert [told(v) for v in both] == [[_RESET]] * 2


_TRIM = "LF+RF+LH+RH work trim"
_SHOE, _HIS = "LH work new_shoe planned", "LH finding abscess"


@pytest.mark.parametrize(
    ("said", "buck"),
    [
        ("Once Buck comes right he'll get a new shoe on that near hind.", [_HIS, _SHOE]),
        ("Once Buck comes right I'll put a new shoe on that near hind.", [_HIS, _SHOE]),
        ("When Buck's better, he'll have a bar shoe on the near hind.", [_HIS, "LH shoe_type bar planned"]),
        ("As soon as Buck has settled he gets a new shoe on the near hind.", [_HIS, _SHOE]),
        ("If Buck's right by Friday, he'll have a new shoe on the near hind.", [_HIS, _SHOE]),
    ],
)
def test_once_another_comes_right(read: Read, said: str, buck: list[str]) -> None:
    visits = read(f"Buck, abscess near hind. Tally, trimmed all four. {said} Six weeks.", *NAMES)
    assert {v.horse: told(v) for v in visits} == {"Buck": buck, "Tally": ["- next_visit_weeks 6 planned", _TRIM]}


def test_unless_another_kicks(read: Read) -> None:
    buck, tally = read("Buck, abscess near hind. Tally, trimmed all fours. Unless Buck kicks, reset her hinds.", *NAMES)
    assert told(buck) == [_HIS]
    assert told(tally)[-1:] == ["LH+RH work reset planned"]


@pytest.mark.parametrize(
    ("said", "weeks"),
    [
        ("I'll see him in a week, her in ten.", (1, 10)),
        ("Her in ten weeks, him in a week.", (1, 10)),
        ("She's in ten weeks, he's in two.", (2, 10)),
    ],
)
def test_him_in_a_week_her_in_ten(read: Read, said: str, weeks: tuple[int, int]) -> None:
    both = read(f"Buck, he has an abscess near hind. Tally, trimmed her four. {said}", *NAMES)
    assert [told(v)[:1] for v in both] == [[f"- next_visit_weeks {n} planned"] for n in weeks]


_ASKED_PLAN, _ASKED_WORK = "a plan that hangs on a horse", "two horses, but not whose work"


def _asked(read: Read, said: str) -> tuple[dict[str, list[str]], bool]:
    visits = read(f"Tally. {said} Six weeks.", *NAMES)
    flags = [flag.reason for visit in visits for flag in visit.flags]
    asked = any(what in reason for reason in flags for what in (_ASKED_PLAN, _ASKED_WORK))
    return {str(v.horse): [fact for fact in told(v) if fact != _SIX] for v in visits}, asked


@pytest.mark.parametrize(
    ("said", "facts", "asked"),
    [
        # the condition closes the plan
        ("She's grand. Trimmed all four. He'll get new shoes in front, once Buck comes right.",
         {"Tally": [_TRIM], "Buck": [_NEW]}, False),
        ("Her four trimmed. He gets new shoes in front as soon as Buck's sound.",
         {"Tally": [_TRIM], "Buck": [_NEW]}, False),
        ("Trimmed all four. New shoes in front once Buck comes right.", {"Tally": [_TRIM], "Buck": [_NEW]}, False),
        ("Trimmed all four. He'll get new shoes in front, once Buck comes right.",
         {"Tally": [_TRIM], "Buck": [_NEW]}, True),
        ("Trimmed all four. I'll put new shoes on him in front once Buck's better.",
         {"Tally": [_TRIM], "Buck": [_NEW]}, True),
        ("A corn near hind. She'll get a new shoe on it, once Buck comes right.",
         {"Tally": ["LH finding corn", _SHOE]}, True),
        ("Her four trimmed. She'll get new shoes in front once Buck comes right.", {"Tally": [_NEW, _TRIM]}, True),
        ("Trimmed all four. He'll get new shoes in front, once he comes right.", {"Tally": [_NEW, _TRIM]}, False),
        # it only tells when it was done
        ("She's had a corn, near hind. When Buck had settled I reset her hinds.",
         {"Tally": ["LH finding corn", "LH+RH work reset"]}, False),
        ("She fidgeted. Once Buck was settled I reset her hinds.",
         {"Tally": ["- manner fidgety", "LH+RH work reset"]}, False),
        ("Reset her hinds after Buck had gone out.", {"Tally": ["LH+RH work reset"]}, False),
        ("With Buck beside her I reset her hinds.", {"Tally": ["LH+RH work reset"]}, True),
        ("When Buck had settled I reset the hinds.", {"Tally": ["LH+RH work reset"]}, True),
        ("When Buck had settled I reset his hinds.", {"Tally": ["LH+RH work reset"]}, True),
        ("She has a corn, near hind. While Buck stood by, I reset his hinds.",
         {"Tally": ["LH finding corn"], "Buck": ["LH+RH work reset"]}, False),
        ("Trimmed all four. Once Buck was in, reset in front.",
         {"Tally": [_TRIM], "Buck": ["LF+RF work reset"]}, False),
    ],
)  # fmt: skip
def test_whose_it_is(read: Read, said: str, facts: dict[str, list[str]], asked: bool) -> None:
    assert _asked(read, said) == (facts, asked)


_HAS = ["LF finding close_nail", "RF finding corn", "RF shoe_type bar planned"]
test_on_the_foot_that_has_it = reads(
    [
        ("If the corn's still bothering him he'll go in a bar shoe on that foot.", _HAS),
        ("If that corn's no better we'll put a bar shoe on that one.", _HAS),
        ("He'll go in a bar shoe on that foot if the corn's still there.", _HAS),
        ("If the corn's no better he gets a bar shoe.", _HAS),
        (
            "If he's still sore he'll go in a bar shoe on that foot.",
            ["LF finding close_nail", "LF shoe_type bar planned", "RF finding corn"],
        ),
        (
            "If the close nail's still sore he'll go in a bar shoe on that foot.",
            ["LF finding close_nail", "LF shoe_type bar planned", "RF finding corn"],
        ),
        (
            "If the corn's no better, a bar shoe on the near fore.",
            ["LF finding close_nail", "LF shoe_type bar planned", "RF finding corn"],
        ),
    ],
    "Buck. Corn in the off fore. Close nail in the near fore. {}",
)
