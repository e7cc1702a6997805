"""What is told and then put off: "but that's for next time"."""

from __future__ import annotations

from tests.reading.conftest import Read, reads

test_put_off = reads(
    [
        (
            "Fores were reset. I'd half a mind to try bar shoes on the fores but that's for next time.",
            ["LF+RF shoe_type bar planned", "LF+RF work reset"],
        ),
        (
            "I told the trainer half mesh pads for the fronts, but that's for next time, not today.",
            ["LF+RF pad half_mesh planned"],
        ),
        ("I was thinking of leather pads in front, but that's one for next time.", ["LF+RF pad leather planned"]),
        ("We talked about wedge pads in front, that's a job for the next visit.", ["LF+RF pad wedge planned"]),
        ("Full pads in front, that's for the next set, not today.", ["LF+RF pad full planned"]),
        ("Side clips in front, but that'll be next time.", ["LF+RF clips side planned"]),
        ("I'd half a mind to pull the hinds but that can wait till next time.", ["LH+RH work removed planned"]),
        (
            "Side clips and leather pads for the fronts, but that's for next time.",
            ["LF+RF clips side planned", "LF+RF pad leather planned"],
        ),
        ("Reset in front. Half mesh pads for the fronts. That's for next time.",
         ["LF+RF pad half_mesh planned", "LF+RF work reset"]),
        ("Leather pads in front, but that's for this time only.", ["LF+RF pad leather"]),
        (
            "Half mesh pads for the fronts I told the trainer, and that's what went on.",
            ["LF+RF pad half_mesh"],
        ),
        ("I'd half a mind to try bar shoes on the fores but I put plain ones on.", ["LF+RF shoe_type plain"]),
        ("I'd half a mind to try bar shoes on the fores.", []),
        ("Thrush in the left hind, but that's for next time.", ["LH finding thrush"]),
        ("Reset in front. Talked about the saddle. That's for another day.", ["LF+RF work reset"]),
    ],
    "Tansy. {}",
)  # fmt: skip


def test_how_much_is_put_off_is_asked(read: Read) -> None:
    for text in (
        "Reset in front, full pads, but that's for next time.",
        "Side clips in front and leather pads behind, but that's for next time.",
    ):
        (visit,) = read(f"Tansy. {text}", "Tansy")
        assert [flag.quote for flag in visit.flags if "put off" in flag.reason] == ["that's for next time"]
