"""The grammar, case by case: what is said, and the exact facts it becomes."""

from __future__ import annotations

import pytest

from pipeline.record import HorseMatch, Visit
from tests.facts.conftest import Read

Row = tuple[str | None, str, str | float, str, str | None, str | None]


def rows(visit: Visit) -> set[Row]:
    return {(f.foot, f.slot, f.value, str(f.status), f.zone, f.severity and str(f.severity)) for f in visit.facts}


def said(*facts: str) -> set[Row]:
    """Facts written ``foot slot value [status] [@zone] [!severity]``; the foot is ``-`` for the whole horse."""
    out: set[Row] = set()
    for fact in facts:
        words = fact.split()
        zone = next((w[1:] for w in words if w.startswith("@")), None)
        severity = next((w[1:] for w in words if w.startswith("!")), None)
        plain = [w.replace("~", " ") for w in words if w[0] not in "@!"]
        foot, slot, raw = plain[:3]
        status = plain[3] if len(plain) > 3 else "present"
        numeric = slot not in ("shoe_size", "nail_size") and raw.replace(".", "").isdigit()
        for one in foot.split("+"):
            out.add((None if one == "-" else one, slot, float(raw) if numeric else raw, status, zone, severity))
    return out


CASES: dict[str, tuple[str, set[Row]]] = {
    "foot before": ("Left front has thrush in the frog.", said("LF finding thrush @frog")),
    "foot behind a list": ("Corn and bruise on the off fore.", said("RF finding corn", "RF finding bruise")),
    "foot as a fragment": ("Right hind. Abscess at the toe.", said("RH finding abscess @toe")),
    "foot in hand": ("Near fore is shelly. Hardener on it.", said("LF finding weak_wall", "LF treatment hardener")),
    "feet contrasted": ("Size two in front, size one behind.", said("LF+RF shoe_size 2", "LH+RH shoe_size 1")),
    "the foot too": ("Flare on the left hind, right hind too.", said("LH+RH finding flare")),
    "other three": ("New shoe on the left front. Other three reset.", said("LF work new_shoe", "RF+LH+RH work reset")),
    "the finding as one": ("Corn in the left front. There's one in the right front too.", said("LF+RF finding corn")),
    "side of the pair": ("Reset both fronts, four nails on the left and five on the right.",
                         said("LF+RF work reset", "LF nails 4", "RF nails 5")),
    "a side": ("Reset the fronts, three nails a side.", said("LF+RF work reset", "LF+RF nails 6")),
    "inside and outside": ("Left front, four nails outside and three inside.", said("LF nails 7")),
    "half a dozen": ("Left front reset, half a dozen nails.", said("LF work reset", "LF nails 6")),
    "slim nails": ("Fronts reset, size five slims.", said("LF+RF work reset", "LF+RF nail_size 5~slim")),
    "double aught": ("New shoes on both fronts, double aught.", said("LF+RF work new_shoe", "LF+RF shoe_size 00")),
    "between sizes": ("Near hind new shoe, between a one and an aught.", said("LH work new_shoe", "LH shoe_size 0-1")),
    "half size": ("Off fore new shoe, size two and a half.", said("RF work new_shoe", "RF shoe_size 2.5")),
    "inches and eighths": ("Left front toe length three inches and three eighths.", said("LF toe_length 85.7")),
    "mixed number": ("Right front toe length three and a quarter inches.", said("RF toe_length 82.6")),
    "ellipsis of a measure": ("Toe length near fore ninety millimetres, off fore eighty eight.",
                              said("LF toe_length 90", "RF toe_length 88")),
    "half degrees": ("Toe angle on the left front fifty one and a half degrees.", said("LF toe_angle 51.5")),
    "wedge": ("Three degree wedge pads on both fronts.", said("LF+RF pad wedge", "LF+RF wedge 3")),
    "rotation has no slot for degrees": ("Seven degrees of rotation in the left front.", said("LF finding rotation")),
    "denied list": ("No heat, swelling or thrush in the left hind.",
                    said("LH finding heat absent", "LH finding swelling absent", "LH finding thrush absent")),
    "denial ends at but": ("Near fore, no thrush, but a slight flare.",
                           said("LF finding thrush absent", "LF finding flare !mild")),
    "denied elsewhere": ("Thrush in the near hind, none in the off hind.",
                         said("LH finding thrush", "RH finding thrush absent")),
    "only looked for": ("I checked the left hind for a puncture but there wasn't one.",
                        said("LH finding puncture absent")),
    "doubt before": ("Possible keratoma in the off fore.", said("RF finding keratoma suspected")),
    "doubt behind": ("Corn in the left front, I couldn't swear to it.", said("LF finding corn suspected")),
    "earlier time": ("Last time he had full pads on both fronts.", said("LF+RF pad full history")),
    "earlier and now": ("Left front was an aught last time, up to a one now.",
                        said("LF shoe_size 0 history", "LF shoe_size 1")),
    "gone": ("The abscess in the off hind is gone.", said("RH finding abscess resolved")),
    "plan with a condition": ("If he's still sore we'll go to full pads up front.", said("LF+RF pad full planned")),
    "no fact from a condition": ("If that swelling comes up in the left front, call the vet.",
                                 said("- vet referral planned")),
    "value taken back": ("Left front, size one, no, make that an aught.", said("LF shoe_size 0")),
    "foot taken back": ("Thrush in the left hind, no, sorry, right hind.", said("RH finding thrush")),
    "finding taken back": ("Right front has a bruise, no, a corn, at the inside heel.",
                           said("RF finding corn @medial_heel")),
    "statement taken back": ("Full pads on the fronts. Scratch that. Reset the fronts.", said("LF+RF work reset")),
    "slot taken back": ("Reset the fronts, leather pads. Scratch all that about the pads.", said("LF+RF work reset")),
    "testers on two feet": ("Testers mild at the toe on the left front, nothing on the right front.",
                            said("LF tester mild @toe", "RF tester none")),
    "severity is no response": ("Mild bruise in the off fore sole, but no reaction to the testers on the off fore.",
                                said("RF finding bruise @sole !mild", "RF tester none")),
    "pulse": ("Pulse is up in both fronts, normal in both hinds.", said("LF+RF pulse raised", "LH+RH pulse normal")),
    "grade": ("Two out of five lame on the near fore.", said("LF lameness 2")),
    "scores": ("Body condition six, cresty neck two.", said("- body_condition 6", "- cresty_neck 2")),
    "obel": ("She's Obel grade two today.", said("- obel 2")),
    "trim is left barefoot": ("Trimmed all four, put new shoes on the fronts.",
                              said("LH+RH work trim", "LF+RF work new_shoe")),
    "weeks": ("See him in six to seven weeks.", said("- next_visit_weeks 6 planned")),
    "fortnight": ("Back in a fortnight.", said("- next_visit_weeks 2 planned")),
    "asked for, told otherwise": ("They asked for eight weeks but I told them six.",
                                  said("- next_visit_weeks 6 planned")),
    "an interval of the past": ("It's been nine weeks since I was here.", set()),
    "no need of the vet": ("No need for the vet.", said("- vet referral absent")),
    "other gear": ("Told them to keep bell boots on.", set()),
    "an errand": ("Note to self, order more size five nails.", set()),
    "another animal": ("The dog next door is lame.", set()),
}  # fmt: skip


@pytest.mark.parametrize("name", CASES)
def test_case(name: str, read: Read) -> None:
    text, expected = CASES[name]
    (visit,) = read(text)
    assert rows(visit) == expected


def test_two_horses_and_back_again(read: Read) -> None:
    bramble, otter = read(
        "Bramble first. Trimmed all four. Then Otter, reset the fronts. Back to Bramble, thrush in the left hind. "
        "Six weeks for Bramble, five for Otter.", "Bramble", "Otter",
    )  # fmt: skip
    assert (bramble.horse, otter.horse) == ("Bramble", "Otter")
    assert rows(bramble) == said("LF+RF+LH+RH work trim", "LH finding thrush", "- next_visit_weeks 6 planned")
    assert rows(otter) == said("LF+RF work reset", "- next_visit_weeks 5 planned")


def test_a_name_taken_back_is_no_visit(read: Read) -> None:
    (visit,) = read("This is Otter, not Bramble. Trimmed the hinds.", "Bramble", "Otter")
    assert (visit.horse, visit.horse_match) == ("Otter", HorseMatch.KNOWN)


def test_new_horse(read: Read) -> None:
    (visit,) = read("New horse today, name's Quill. Trimmed all four.", "Bramble")
    assert (visit.horse, visit.horse_match) == ("Quill", HorseMatch.NEW)


def test_name_by_sound_is_flagged_when_far(read: Read) -> None:
    (visit,) = read("Brumbel first. Trimmed all four.", "Bramble", "Otter")
    assert visit.horse == "Bramble"
    assert [f.quote for f in visit.flags] == ["Brumbel"]


def test_a_name_nobody_knows_stays_as_heard(read: Read) -> None:
    (visit,) = read("Zephyr first. Trimmed all four.", "Bramble", "Otter")
    assert (visit.horse, visit.horse_match) == ("Zephyr", HorseMatch.UNCLEAR)
    assert visit.flags


def test_no_name_is_flagged(read: Read) -> None:
    (visit,) = read("Trimmed all four.", "Bramble")
    assert visit.horse is None
    assert [f.reason for f in visit.flags] == ["No horse was named; which horse is it?"]


def test_copper_sulfate_is_not_the_horse(read: Read) -> None:
    (visit,) = read("Bramble. Copper sulfate in the left hind.", "Copper", "Bramble")
    assert visit.horse == "Bramble"
    assert rows(visit) == said("LH treatment copper_sulfate")


def test_what_fits_no_slot_stays_in_the_notes(read: Read) -> None:
    (visit,) = read("Bramble. Trimmed all four. The owner's boy has gone to sea.", "Bramble")
    assert visit.notes == "The owner's boy has gone to sea"


def test_a_number_with_nothing_to_hang_on_is_flagged(read: Read) -> None:
    (visit,) = read("Bramble. The testers came out, and that was that.", "Bramble")
    assert any("hoof testers" in f.reason for f in visit.flags)
