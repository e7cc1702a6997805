"""Shoes that the horse trod off, and the same one put back.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import reads

test_shoes_that_the_horse_took_off = reads(
    [
        (
            "Trod his near fore off in the lorry, so the same one went back on.",
            ["LF shoe_state lost", "LF work put_back"],
        ),
        ("He stood his off fore off at the show.", ["RF shoe_state lost"]),
        ("She'd trodden her near fore off.", ["LF shoe_state lost"]),
        ("He walked his near hind off coming through the gate.", ["LH shoe_state lost"]),
        ("She pulled her off fore off in the mud.", ["RF shoe_state lost"]),
        ("She caught her off fore on the gate.", []),
        ("She'd ripped her near hind off on the fence.", ["LH shoe_state lost"]),
        ("He's trod his left front off.", ["LF shoe_state lost"]),
        ("Stood his right front off in the trailer.", ["RF shoe_state lost"]),
        ("Kicked his near hind off in the stable.", ["LH shoe_state lost"]),
        ("I took his near fore off.", ["LF work removed"]),
        ("Stood on the off fore, thrush there.", ["RF finding thrush"]),
        ("I stood his near fore off the block.", []),
        ("She kicked the near hind off the stand.", []),
        ("Trod his near fore off. Same one went back on.", ["LF shoe_state lost", "LF work put_back"]),
        ("Shoe back on the near fore as it was.", ["LF work put_back"]),
        ("Off fore, shoe back on as it was, same one.", ["RF work reset"]),
    ],
    "Tansy. {}",
)
