"""What was thought of, begun with or asked for, where another of its kind was put on.

The forms are common practice of the trade's speech, no source.
"""

from __future__ import annotations

from tests.reading.conftest import NAMES, Read, reads

test_what_was_put_on_in_the_end = reads(
    [
        (
            "Leather pads on the fronts with putty in below, no, it was oakum, I'd used up the putty on the last one.",
            ["LF+RF packing oakum", "LF+RF pad leather"],
        ),
        (
            "New shoes behind, steel, size nought. No, they're a one, I ran out of noughts.",
            ["LH+RH shoe_material steel", "LH+RH shoe_size 1", "LH+RH work new_shoe"],
        ),
        ("Rim pads in front, hang on, mesh pads, I'd left the rim pads at home.", ["LF+RF pad mesh"]),
        ("Rocker toes in front, no, rolled toes, I left the rockers on the truck.", ["LF+RF shoe_type rolled_toe"]),
        ("Used up the last of the silicone on the fronts.", ["LF+RF packing silicone"]),
        (
            "New wide webs in front. I thought aluminum, I'm always thinking aluminum, so steel, size one.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 1", "LF+RF shoe_type wide_web", "LF+RF work new_shoe"],
        ),
        (
            "Toe clips on the fores and I did think quarter clips behind, but they ended up side clips.",
            ["LF+RF clips toe", "LH+RH clips side"],
        ),
        ("I did think rim pads in front, but I went with mesh pads.", ["LF+RF pad mesh"]),
        (
            "Rim shoes, new ones, in front. I wanted toe clips and had quarter clips so it's quarter clips.",
            ["LF+RF clips quarter", "LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        (
            "New shoes on both fronts. I'd have liked side clips but all I had was toe clips, so toe clips.",
            ["LF+RF clips toe", "LF+RF work new_shoe"],
        ),
        (
            "New shoes on both fronts, I would have gone to aluminum but they're steel.",
            ["LF+RF shoe_material steel", "LF+RF work new_shoe"],
        ),
        (
            "New shoes on those fronts, aluminium, no I mean steel, the aluminium is for the grey.",
            ["LF+RF shoe_material steel", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, steel, no, aluminum, the steel ones are for the mule.",
            ["LF+RF shoe_material aluminum", "LF+RF work new_shoe"],
        ),
        (
            "New shoe on the off fore, half round, no, rolled toe, I had the half round in my hand and put it back.",
            ["RF shoe_type rolled_toe", "RF work new_shoe"],
        ),
        (
            "New shoes in front, egg bars, no, heart bars, the egg bars are still in the van.",
            ["LF+RF shoe_type heart_bar", "LF+RF work new_shoe"],
        ),
        (
            "New racing plates, both fronts, number 4. Three and a half nails. I started with fives, too much nail.",
            ["LF+RF nail_size 3.5", "LF+RF shoe_size 4", "LF+RF shoe_type racing_plate", "LF+RF work new_shoe"],
        ),
        (
            "They asked for plastic in front but it's steel he got, new, both fronts.",
            ["LF+RF shoe_material steel", "LF+RF work new_shoe"],
        ),
        ("Full pads in front. I had rim pads in mind, but full it is.", ["LF+RF pad full"]),
        (
            "Both fronts new, I reached for the egg bars and then went with straight bars.",
            ["LF+RF shoe_type straight_bar", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, I'd picked up egg bars but put on heart bars.",
            ["LF+RF shoe_type heart_bar", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front. Egg bars were what I'd planned, heart bars are what she got.",
            ["LF+RF shoe_type heart_bar", "LF+RF work new_shoe"],
        ),
        (
            "Wide webs would have been my choice but she got plain, new, both fronts.",
            ["LF+RF shoe_type plain", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, I brought wide webs and ended up with rim shoes.",
            ["LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front. I meant to use aluminum and ended up with steel.",
            ["LF+RF shoe_material steel", "LF+RF work new_shoe"],
        ),
        (
            "The vet asked for egg bars but I only had straight ones, so straight bars in front, new.",
            ["LF+RF shoe_type straight_bar", "LF+RF work new_shoe"],
        ),
        (
            "Rim pads, sorry, not rim, wedge pads, two degree ones, on both fronts.",
            ["LF+RF pad wedge", "LF+RF wedge 2"],
        ),
        ("Full pads, no, not full, leather pads, both fronts.", ["LF+RF pad leather"]),
        ("Half mesh pads, no wait, not half mesh, full mesh pads, both hinds.", ["LH+RH pad mesh"]),
        (
            "Three degree wedges on both fronts, no, it was the two degree, I'd no threes in the van.",
            ["LF+RF pad wedge", "LF+RF wedge 2"],
        ),
        ("Two degree wedges on both hinds. No, it was the three degree.", ["LH+RH pad wedge", "LH+RH wedge 3"]),
        # what stands
        ("I thought steel for the fronts, so steel, new.", ["LF+RF shoe_material steel", "LF+RF work new_shoe"]),
        (
            "Last time I tried egg bars in front, today straight bars in front.",
            ["LF+RF shoe_type egg_bar history", "LF+RF shoe_type straight_bar"],
        ),
        (
            "Picked up the left front first, egg bar on that one, and a straight bar on the right front.",
            ["LF shoe_type egg_bar", "RF shoe_type straight_bar"],
        ),
        (
            "She asked for wide webs in front, so new wide webs in front, and plain shoes behind.",
            ["LF+RF shoe_type wide_web", "LF+RF work new_shoe", "LH+RH shoe_type plain"],
        ),
        (
            "Next time I'd like egg bars in front. Straight bars in front today.",
            ["LF+RF shoe_type egg_bar planned", "LF+RF shoe_type straight_bar"],
        ),
        (
            "I thought the heart bars in front looked good, they're reset.",
            ["LF+RF shoe_type heart_bar", "LF+RF work reset"],
        ),
        (
            "New shoes in front, size two, six nails. I started with the hinds, size one, five nails.",
            ["LF+RF nails 6", "LF+RF shoe_size 2", "LF+RF work new_shoe", "LH+RH nails 5", "LH+RH shoe_size 1"],
        ),
    ],
    "Tally. {}",
)

test_work_and_boots_that_were_only_wished_for = reads(
    [
        (
            "I'd planned on resetting the fronts but they were worn, so new shoes, both fronts.",
            ["LF+RF shoe_state worn", "LF+RF work new_shoe"],
        ),
        ("She wanted new shoes in front but there was wear in these so I reset the fronts.", ["LF+RF work reset"]),
        ("New shoes in front. Boots were what the owner wanted.", ["LF+RF work new_shoe"]),
        ("They asked for boots, and I reset him in front.", ["LF+RF work reset"]),
        ("I'd planned on a reset in front and that's what he got.", ["LF+RF work reset"]),
        ("Boots in front. Reset the hinds. Boots were what she wanted.", ["LF+RF shoe_type boot", "LH+RH work reset"]),
        ("She wanted new shoes in front. Reset the hinds.", ["LF+RF work new_shoe", "LH+RH work reset"]),
    ],
    "Tally. {}",
)

test_pads_at_the_head_and_a_bare_zero = reads(
    [
        (
            "Pads, well, last time he had leather on the fronts and they rotted, so mesh this time.",
            ["LF+RF pad leather history", "LF+RF pad mesh"],
        ),
        ("Pads, went with leather in front and mesh behind.", ["LF+RF pad leather", "LH+RH pad mesh"]),
        ("Pads, he wore leathers in front last time.", ["LF+RF pad leather history"]),
        ("The girl wore leather. Trimmed the fronts.", ["LF+RF work trim"]),
        (
            "New ones, both fronts. Steel, zero, rim shoes.",
            ["LF+RF shoe_material steel", "LF+RF shoe_size 0", "LF+RF shoe_type rim", "LF+RF work new_shoe"],
        ),
        (
            "New shoes in front, steel. Near hind. Heat, zero.",
            [
                "LF+RF shoe_material steel",
                "LF+RF work new_shoe",
                "LH finding heat absent",
            ],
        ),
        (
            "New shoes on the fronts. Testers, none. No heat in front. Six weeks. Boots were what she wanted.",
            ["- next_visit_weeks 6 planned", "LF+RF finding heat absent", "LF+RF tester none", "LF+RF work new_shoe"],
        ),
    ],
    "Tally. {}",
)

test_packed_instead_of_padded = reads(
    [
        (
            "I first thought frog support pads in front, but no, I've packed silicone in both of them instead.",
            ["LF+RF packing silicone"],
        ),
        ("I thought oakum under the fronts, but I've put leather pads on them instead.", ["LF+RF pad leather"]),
        # the one with the other
        (
            "I thought frog support pads in front, with silicone packed in them.",
            ["LF+RF packing silicone", "LF+RF pad frog_support"],
        ),
    ]
)

test_what_the_owner_was_told = reads(
    [
        ("I told the owner toe clips, but in the end I used side clips on both fronts.", ["LF+RF clips side"]),
        ("Promised her egg bars, but I've gone with straight bars in front.", ["LF+RF shoe_type straight_bar"]),
        ("I told them leather pads. I put rim pads on both fronts.", ["LF+RF pad rim"]),
        # told of what is, of each foot its own, or of next time
        (
            "I told her he's in straight bars in front, and egg bars were on the hinds.",
            ["LF+RF shoe_type straight_bar", "LH+RH shoe_type egg_bar"],
        ),
        ("I told her side clips on the fronts and toe clips on the hinds.", ["LF+RF clips side", "LH+RH clips toe"]),
        (
            "I told the owner new shoes in front next time. Reset the fronts.",
            ["LF+RF work new_shoe planned", "LF+RF work reset"],
        ),
    ]
)

test_an_idea_for_a_later_day = reads(
    [
        (
            "Rubber shoes on the fores was the daughter's idea and I might try it at the back end.",
            ["LF+RF shoe_material rubber planned"],
        ),
        ("Leather pads on the fores were her idea and I may try them next time.", ["LF+RF pad leather planned"]),
        ("Egg bars in front were the vet's notion, and I might go to them yet.", ["LF+RF shoe_type egg_bar planned"]),
        ("Leather pads in front were the owner's idea and they're on now.", ["LF+RF pad leather"]),
        ("It was a good idea to put leather pads on the fores.", ["LF+RF pad leather"]),
    ]
)

test_what_others_wanted = reads(
    [
        ("The vet wanted egg bars in front.", ["LF+RF shoe_type egg_bar planned"]),
        ("Laminitis in front. The vet wanted him in heart bars.", [
            "LF+RF finding laminitis", "LF+RF shoe_type heart_bar planned",
        ]),
        ("The vet would like her in straight bars behind.", ["LH+RH shoe_type straight_bar planned"]),
        ("Reset behind, owner wanted toe clips in front.", ["LF+RF clips toe planned", "LH+RH work reset"]),
        ("Her trainer asked for studs behind. Left hind has a corn.", [
            "LH finding corn", "LH+RH traction studs planned",
        ]),
        ("Vet wanted a poultice on the left front.", ["LF treatment poultice planned"]),
        ("Reset in front. Vet wanted bars.", ["LF+RF work reset"]),
        # put on after all, refused, or what the horse itself takes
        ("The vet wanted egg bars in front so I put them on.", ["LF+RF shoe_type egg_bar"]),
        ("The owner wanted side clips in front. So I did that.", ["LF+RF clips side"]),
        ("The vet wanted egg bars in front. Egg bars on, size two.", ["LF+RF shoe_size 2", "LF+RF shoe_type egg_bar"]),
        ("The vet wanted heart bars in front, I put plain on.", ["LF+RF shoe_type plain"]),
        ("The owner wanted bar shoes in front, I said no.", []),
        ("He wanted a size two in front.", ["LF+RF shoe_size 2"]),
        ("Vet wanted.", ["- vet referral planned"]),
    ]
)  # fmt: skip

test_the_owner_wanted = reads(
    [
        ("She wanted studs on behind. Reset all four.", ["LF+RF+LH+RH work reset"]),
        ("She asked for studs on behind. Reset all four.", ["LF+RF+LH+RH work reset"]),
        ("She wanted the hinds trimmed. Reset the fronts.", ["LF+RF work reset"]),
        ("Thrush near fore, she wanted copper sulfate in it.", ["LF finding thrush"]),
        ("They wanted borium on the fronts. I put it on.", ["LF+RF traction borium"]),
        ("He wanted studs in behind so I put them in.", ["LH+RH traction studs"]),
        ("She wanted studs behind, done.", ["LH+RH traction studs"]),
        ("She wanted him shod in front so new shoes in front.", ["LF+RF work new_shoe"]),
        ("She wanted him trimmed. Trimmed all four.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tansy. {}",
)


def test_what_the_owner_wanted_is_asked_about(read: Read) -> None:
    (visit,) = read("Tansy. She wanted studs on behind. Reset all four.", *NAMES)
    told = [(flag.reason, flag.quote) for flag in visit.flags]
    assert told == [("Heard a wish, but not whether it was done.", "She wanted studs on behind")]


test_stays_off = reads(
    [
        ("The boots will stay off.", []),
        ("Reset all four. The boots will stay off till spring.", ["LF+RF+LH+RH work reset"]),
        ("The boots are staying off.", []),
        ("Keep the boots off him.", []),
        ("The studs stay out till winter.", []),
        ("The boots will stay on.", ["- shoe_type boot"]),
        ("The hind shoes will stay off till spring.", ["LH+RH work removed"]),
    ],
    "Tansy. {}",
)

test_work_that_was_wanted = reads(
    [
        ("Owner wanted a trim all round. Reset the fronts and trimmed the hinds.",
         ["LF+RF work reset", "LH+RH work trim"]),
        ("Owner wanted her trimmed all round. Reset all round.", ["LF+RF+LH+RH work reset"]),
        ("Owner wanted a trim all round. Seedy toe in the near fore, resected it.",
         ["LF finding white_line_disease", "LF treatment resection"]),
        ("Owner wanted a trim all round. Trimmed the hinds, fronts left alone.", ["LH+RH work trim"]),
        ("The lady wanted him trimmed all round, but he'd only let me do the fronts. Trimmed those.",
         ["LF+RF work trim"]),
        ("Owner wanted a trim, trimmed all four.", ["LF+RF+LH+RH work trim"]),
        ("Owner wanted all four trimmed. Trimmed.", ["LF+RF+LH+RH work trim"]),
        ("Owner wanted a trim all round, so I did that.", ["LF+RF+LH+RH work trim"]),
        ("Owner wanted a trim all round. Done. Thrush in the left hind.",
         ["LF+RF+LH+RH work trim", "LH finding thrush"]),
        ("The daughter wanted new shoes in front, and that's what she got.", ["LF+RF work new_shoe"]),
        ("Hinds only wanted a trim.", ["LH+RH work trim"]),
        ("Owner wanted rim pads in front. Reset in front.", ["LF+RF pad rim planned", "LF+RF work reset"]),
    ],
    "Tally. {}",
)  # fmt: skip


def test_wanted_and_not_told_to_be_done_is_asked(read: Read) -> None:
    (visit,) = read("Tally. Owner wanted a trim all round.", *NAMES)
    assert [flag.quote for flag in visit.flags] == ["Owner wanted a trim all round"]


test_what_a_horse_was_down_for = reads(
    [
        (
            "I had her listed for a full set, but she's to be roughed off, "
            "so I pulled the four shoes and trimmed all four.",
            ["LF+RF+LH+RH work removed", "LF+RF+LH+RH work trim"],
        ),
        (
            "I'd him booked for a set of removes but he'd lost the near fore, so new shoes all round.",
            ["LF shoe_state lost", "LF+RF+LH+RH work new_shoe"],
        ),
        ("I had him down for a reset but the shoes were done so new all round.", ["LF+RF+LH+RH work new_shoe"]),
        (
            "I had him down for eight weeks. Trimmed all four.",
            ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"],
        ),
        ("I had him down as a two in front and he was.", ["LF+RF shoe_size 2"]),
    ]
)


test_what_would_be_if_it_were_otherwise = reads(
    [
        (
            "Tally, if it were up to me she'd have a full pad on that near fore. It isn't, so I reset it plain.",
            ["LF shoe_type plain", "LF work reset"],
        ),
        (
            "Tally, if I had my way she'd be in bar shoes in front. I don't, so it's plain, reset.",
            ["LF+RF shoe_type plain", "LF+RF work reset"],
        ),
        (
            "Tally, if I had my choice she'd go barefoot, but they want shoes, so new shoes all round.",
            ["LF+RF+LH+RH work new_shoe"],
        ),
        ("Tally, left to me she'd wear egg bars behind. Reset behind.", ["LH+RH work reset"]),
        ("Tally, if she were mine I'd put a heart bar on the near fore.", []),
        (
            "Tally, in a perfect world she'd have a bar shoe on the near fore, but she got a plain one.",
            ["LF shoe_type plain"],
        ),
        # neighbours
        ("Tally, if the owner agrees she'll have a full pad on the near fore.", ["LF pad full planned"]),
        ("Tally, if it's up to me next time she'll have a full pad on the near fore.", ["LF pad full planned"]),
    ]
)
