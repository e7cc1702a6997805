"""Words that open the talk and mean nothing, of American, British, Irish, Australian and New Zealand mouths.

None of them is a horse, and none ends a horse's part. The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads
from tests.reading.telling import told

FILLERS = (
    "Anyroad", "Any road", "Any road up", "Anyways", "Anyhow", "Anyhoo", "Right then", "Now then", "Nah then", "Aye",
    "Mind you", "Yeah nah", "Yeah, nah", "Yeah no", "Rightio", "Righto", "Alrighty", "Alrighty then", "Well now",
    "Ah now", "Sithee", "Ey up", "Och", "Och aye", "Ach", "Ooh", "Eeh", "Wey", "Welp", "Aha", "Shoot", "Heck", "Shucks",
    "Lordy", "Doggone", "Strewth", "Howay", "Begob", "Arrah", "Musha", "Chur", "By gum", "Yup", "Regardless",
    "Long story short", "Leastways", "Onwards",
)  # fmt: skip


@pytest.mark.parametrize("filler", FILLERS)
def test_is_no_horse(read: Read, filler: str) -> None:
    (visit,) = read(f"Tally. Trimmed all four. {filler}, near fore, corn. {filler}. Thrush, off hind.", "Tally", "Buck")
    assert told(visit) == ["LF finding corn", "LF+RF+LH+RH work trim", "RH finding thrush"]


@pytest.mark.parametrize("filler", FILLERS)
def test_leads_to_the_next_horse(read: Read, filler: str) -> None:
    tally, buck = read(f"Tally. Trimmed all four. {filler}, Buck, reset all round.", "Tally", "Buck")
    assert told(tally) == ["LF+RF+LH+RH work trim"]
    assert told(buck) == ["LF+RF+LH+RH work reset"]


test_behind_fillers = reads(
    [
        ("Thrush in the near fore, yeah nah, off fore.", ["RF finding thrush"]),
        ("Any thrush? Aye, near fore.", ["LF finding thrush"]),
        (
            "Crack in the off hind at the toe, and there were one in the near hind and all but that's grown out now.",
            ["LH finding crack resolved", "RH finding crack @toe"],
        ),
        ("Corn, off fore. There'd been one in the near fore, gone.", ["LF finding corn resolved", "RF finding corn"]),
        (
            "Corn, off hind. There were one in the near hind but it's gone.",
            ["LH finding corn resolved", "RH finding corn"],
        ),
        (
            "Corn in the near fore, there's one in the off fore and all but it's mild.",
            ["LF finding corn", "RF finding corn ~mild"],
        ),
        ("The missus asked about the vet and I said there's no need.", ["- vet referral absent"]),
        ("They asked about the vet and I told them he wasn't needed.", ["- vet referral absent"]),
        ("They asked about the vet and I said there's every need.", []),
    ],
    "Tally. {}",
)
