"""How a thing was said: denied, doubted, of an earlier time, gone, or planned."""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read
from tests.reading.telling import told

CASES = {
    "reach of no": (
        "Left hind, no thrush, no white line, but a little flare on the outside.",
        ["LH finding thrush absent", "LH finding white_line_disease absent", "LH finding flare @lateral ~mild"],
    ),
    "no or": ("No heat or swelling in the right front.", ["RF finding heat absent", "RF finding swelling absent"]),
    "neither nor": (
        "Neither thrush nor canker in the left hind.",
        ["LH finding thrush absent", "LH finding canker absent"],
    ),
    "nor": ("No thrush in the off hind, nor any flare.", ["RH finding thrush absent", "RH finding flare absent"]),
    "without": ("Left front without any heat.", ["LF finding heat absent"]),
    "no sign of": ("No sign of an abscess in the right front.", ["RF finding abscess absent"]),
    "free of": ("All four free of thrush.", ["LF+RF+LH+RH finding thrush absent"]),
    "not lame": ("He's not lame.", ["- gait lame absent"]),
    "isn't": ("The left front isn't flared.", ["LF finding flare absent"]),
    "hasn't": ("She hasn't got thrush in the near hind.", ["LH finding thrush absent"]),
    "comma ends": (
        "No thrush in the left hind, right hind has thrush.",
        ["LH finding thrush absent", "RH finding thrush"],
    ),
    "no denial over sentence": (
        "No heat in the left front. Corn in the inside heel.",
        ["LF finding heat absent", "LF finding corn @medial_heel"],
    ),
    "pseudo no change": ("No change in the flare on the left hind.", ["LH finding flare"]),
    "no worse": ("The crack in the right front is no worse.", ["RF finding crack"]),
    "pseudo problem": ("No problem. Thrush in the left hind.", ["LH finding thrush"]),
    "and two": ("No thrush and no flare in the left hind.", ["LH finding thrush absent", "LH finding flare absent"]),
    "with": ("Left front has a flare with no crack.", ["LF finding flare", "LF finding crack absent"]),
    "nothing in": ("Nothing in the left front.", []),
    "clean is no fact": ("Frogs are clean.", []),
    "looks good": ("Left front looks good.", []),
    "possible": ("Possible abscess in the right hind.", ["RH finding abscess suspected"]),
    "might be": ("There might be a corn in the left front.", ["LF finding corn suspected"]),
    "suspect": ("I suspect a keratoma in the off fore.", ["RF finding keratoma suspected"]),
    "not sure": ("Bruise in the left front, not sure.", ["LF finding bruise suspected"]),
    "could be": ("Could be an abscess brewing in the near hind.", ["LH finding abscess suspected"]),
    "query": ("Query navicular in the near fore.", ["LF finding navicular suspected"]),
    "doubt ends": (
        "Maybe a bruise in the left front, and a flare on the right front.",
        ["LF finding bruise suspected", "RF finding flare"],
    ),
    "last time": ("He had thrush in the left hind last time.", ["LH finding thrush history"]),
    "history of": ("History of laminitis.", ["- finding laminitis history"]),
    "used to": ("Left front used to have a quarter crack.", ["LF finding crack history @quarter"]),
    "gone now": ("Had thrush in the left hind last time, gone now.", ["LH finding thrush resolved"]),
    "cleared": ("The thrush in the right hind has cleared up.", ["RH finding thrush resolved"]),
    "grown out": ("Toe crack in the left front has grown out.", ["LF finding crack resolved @toe"]),
    "no longer": ("She no longer has thrush in the off hind.", ["RH finding thrush resolved"]),
    "not gone": ("The abscess in the right front hasn't healed.", ["RF finding abscess"]),
    "nearly gone": ("The thrush in the left hind is nearly gone.", ["LH finding thrush"]),
    "last time now": (
        "Last time the left front was two out of five, today he's sound.",
        ["LF lameness 2 history", "- gait sound"],
    ),
    "will": ("Next time I'll put bar shoes on the fronts.", ["LF+RF shoe_type bar planned"]),
    "if not a fact": ("If he throws the left front shoe, call me.", []),
    "next time pads": ("Next visit we'll try full pads on both fronts.", ["LF+RF pad full planned"]),
    "condition then fact": (
        "If the heat comes back in the left front ring the vet. Right front has a corn.",
        ["- vet referral planned", "RF finding corn"],
    ),
    "denied history": ("Never had laminitis.", ["- finding laminitis absent"]),
    "in march": ("He foundered in March.", ["- finding laminitis history"]),
    "still": ("Still has thrush in the left hind.", ["LH finding thrush"]),
    "again": ("Thrush again in the right hind.", ["RH finding thrush"]),
    "no doubt": ("No doubt that's thrush in the left hind.", ["LH finding thrush"]),
    "didn't find": ("Didn't find any bruising in the fronts.", ["LF+RF finding bruise absent"]),
    "couldn't find": ("Couldn't find an abscess in the left hind.", ["LH finding abscess absent"]),
    "checked": ("Checked the right front for heat, none.", ["RF finding heat absent"]),
    "isn't any": ("There isn't any flare on the hinds.", ["LH+RH finding flare absent"]),
}


@pytest.mark.parametrize("name", CASES)
def test_said(name: str, read: Read) -> None:
    text, facts = CASES[name]
    (visit,) = read(text)
    assert told(visit) == sorted(facts)
