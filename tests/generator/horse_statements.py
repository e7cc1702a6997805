"""Statements about the whole horse: going, manner, scores, the vet, the next visit; and talk that is no fact."""

from __future__ import annotations

from tests.generator.facts import Gold, Statement, of_horse
from tests.generator.framing import sentence
from tests.generator.scene import Scene

_NUMBERS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"]
_MANNERS = (
    ("stood quiet", "quiet"),
    ("stood like a rock", "quiet"),
    ("fidgety the whole time", "fidgety"),
    ("was good as gold", "quiet"),
    ("wouldn't stand still", "fidgety"),
    ("had to be sedated", "sedated"),
    ("tried to kick me", "dangerous"),
)
_GAITS = (
    ("is overreaching", "overreach"),
    ("is forging", "forge"),
    ("is interfering", "interfere"),
    ("is going short", "short_stride"),
    ("trotted up sound", "sound"),
    ("is short strided", "short_stride"),
    ("is lame", "lame"),
)
_CHAT = (
    "Raining sideways the whole time.",
    "The kids fed him peppermints.",
    "Nice cup of tea after.",
    "Gate code has changed.",
    "The dog ran off with my rasp.",
    "She wants the bill sent to the office.",
    "Parked by the lower barn.",
    "My back is killing me.",
    "Note to self, order more size five nails.",
    "Remind me to buy more road nails.",
    "A song thrush was going mad in the rafters.",
    "They were feeding corn again.",
    "Had to use the old anvil.",
    "Somebody left the gate open.",
    "The owner paid cash.",
    "He's off to a show on Saturday.",
    "Left my good knife in the truck.",
    "The vet was there for another horse.",
)


def manner(scene: Scene) -> Statement:
    """ "He stood like a rock." """
    said, value = scene.pick(_MANNERS)
    lead = "" if said.startswith("fidgety") else f"{scene.pronoun} "
    return Statement(sentence(f"{lead}{said}"), of_horse("manner", value), "manner")


def gait(scene: Scene) -> Statement:
    """ "She is forging", "lame on the left fore", "two out of five lame"."""
    said, value = scene.pick(_GAITS)
    feet = scene.one_foot()
    grade = scene.pick((1, 2, 3, 4))
    who = scene.pronoun
    text, facts = scene.pick(
        (
            (f"{who} {said}", (Gold(None, "gait", value),)),
            (f"{who} {said}", (Gold(None, "gait", value),)),
            (f"{who}'s lame on {scene.the(feet)}", (Gold(feet[0], "gait", "lame"),)),
            (
                f"{who}'s {_NUMBERS[grade]} out of five lame on {scene.the(feet)}",
                (Gold(feet[0], "lameness", float(grade)),),
            ),
            (f"lameness grade {_NUMBERS[grade]}", (Gold(None, "lameness", float(grade)),)),
            (f"grade {_NUMBERS[grade]} lame on {scene.the(feet)}", (Gold(feet[0], "lameness", float(grade)),)),
        )
    )
    return Statement(sentence(text), facts, "gait")


def scored(scene: Scene) -> Statement:
    """ "Body condition six", "cresty neck score is a two", "Obel grade two"."""
    body, crest, obel = scene.chance.randrange(2, 10), scene.chance.randrange(0, 6), scene.chance.randrange(1, 5)
    text, slot, value = scene.pick(
        (
            (f"body condition {_NUMBERS[body]}", "body_condition", body),
            (f"{scene.pronoun}'s a body condition {_NUMBERS[body]}", "body_condition", body),
            (f"body condition score is {_NUMBERS[body]} out of nine", "body_condition", body),
            (f"cresty neck score is a {_NUMBERS[crest]}", "cresty_neck", crest),
            (f"cresty neck {_NUMBERS[crest]}", "cresty_neck", crest),
            (f"Obel grade {_NUMBERS[obel]}", "obel", obel),
        )
    )
    return Statement(sentence(text), of_horse(slot, float(value)), "scored")


def vet(scene: Scene) -> Statement:
    """ "The vet should take a look", "no need for the vet"."""
    who = "him" if scene.pronoun == "he" else "her"
    text, status = scene.pick(
        (
            (f"the vet should take a look at {who}", "planned"),
            ("told them to call the vet", "planned"),
            ("one for the vet", "planned"),
            ("I've asked the owner to ring the vet", "planned"),
            ("no need for the vet", "absent"),
            ("no need to call the vet", "absent"),
            (f"if {scene.pronoun}'s no better by Monday they're to call the vet", "planned"),
        )
    )
    return Statement(sentence(text), of_horse("vet", "referral", status), "vet")


def next_visit(scene: Scene) -> Statement:
    """ "Back in six weeks", "five to six weeks", "eight weeks, no, seven"."""
    weeks = scene.chance.randrange(3, 11)
    who = "him" if scene.pronoun == "he" else "her"
    said, more, other = _NUMBERS[weeks], _NUMBERS[weeks + 1], _NUMBERS[weeks - 1]
    text = scene.pick(
        (
            f"back in {said} weeks",
            f"see {who} in {said} weeks",
            f"{said} weeks",
            f"{said} to {more} weeks",
            f"next visit in {said} weeks",
            f"{other} weeks, no, {said} weeks",
            f"due again in {said} weeks",
            f"I'll be back in {weeks} weeks",
            f"give {who} {said} weeks",
            f"{scene.pronoun}'s on {said} weeks",
            f"see {who} in {other}, no, {said} weeks",
        )
    )
    return Statement(sentence(text), of_horse("next_visit_weeks", float(weeks), "planned"), "next visit")


def chat(scene: Scene) -> Statement:
    """Talk that is no fact."""
    return Statement(scene.pick(_CHAT), (), "chat")


HORSE = (manner, gait, scored, vet, chat, chat)
