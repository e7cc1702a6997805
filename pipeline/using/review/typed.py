"""What a person types, read by the very reader that reads his memos, and held to the record's own limits."""

from __future__ import annotations

from datetime import date
from typing import Protocol

from pipeline.errors import CorrectionError
from pipeline.record import (
    FEET,
    HORSE_SLOTS,
    NUMBER_SLOTS,
    WORDED_SLOTS,
    Fact,
    Foot,
    RosterHorse,
    Transcript,
    Visit,
    value_problem,
)
from pipeline.using.review.harm import foot_in_doubt
from pipeline.vocabulary import SLOT_CLASSES, Vocabulary

# How a value is said so that the reader knows what it counts; the value alone is tried last.
_SAID = {
    "shoe_size": "size {}",
    "nail_size": "size {} nails",
    "nails": "{} nails",
    "wedge": "{} degree wedge",
    "lameness": "lameness grade {}",
    "obel": "Obel grade {}",
    "body_condition": "body condition {}",
    "cresty_neck": "cresty neck {}",
    "next_visit_weeks": "{} weeks",
}
FEET_SAID: dict[str, tuple[Foot | None, ...]] = {
    "LF": ("LF",), "RF": ("RF",), "LH": ("LH",), "RH": ("RH",),
    "fronts": ("LF", "RF"), "hinds": ("LH", "RH"), "all": FEET, "horse": (None,),
}  # fmt: skip


class TextReader(Protocol):
    """Turns words into visits of facts."""

    def read(self, transcript: Transcript, roster: list[RosterHorse], day: date) -> list[Visit]: ...


def read_facts(text: str, reader: TextReader, day: date) -> list[Fact]:
    """The facts in a typed statement, without spans: ``left fore, mild thrush``. Raises CorrectionError for none."""
    facts = [fact for visit in reader.read(Transcript(text=text), [], day) for fact in visit.facts]
    if not facts:
        raise CorrectionError(f"“{text.strip()}” is not understood; say it as in a memo: left fore, mild thrush.")
    for fact in facts:
        if foot_in_doubt(fact):
            raise CorrectionError("Say the foot too, such as left fore.")
    # The words are typed, not said: what stands in the memo is not claimed to hold them.
    return [fact.model_copy(update={"quote": "", "span": (0, 0), "start": None, "end": None}) for fact in facts]


def read_value(slot: str, text: str, vocabulary: Vocabulary, reader: TextReader) -> str | float:
    """The canonical value in what was typed for a slot: ``double aught`` is ``00``. Raises CorrectionError."""
    said = " ".join(text.split())
    for value in _plainly(slot, said, vocabulary):
        if value_problem(slot, value) is None:
            return value
    where = "" if slot in HORSE_SLOTS or slot in ("lameness", "gait") else "left front, "
    name = slot.replace("_", " ")
    for form in (_SAID.get(slot, f"{name} {{}}"), f"{name} {{}}", "{}"):
        sentence = f"{where}{form.format(said)}."
        for visit in reader.read(Transcript(text=sentence), [], date(2000, 1, 1)):
            for fact in visit.facts:
                if fact.slot == slot:
                    return fact.value
    raise CorrectionError(_refusal(slot, said))


def _plainly(slot: str, said: str, vocabulary: Vocabulary) -> list[str | float]:
    if slot in NUMBER_SLOTS:
        try:
            return [float(said)]
        except ValueError:
            return []
    spoken = vocabulary.classes.get(SLOT_CLASSES.get(slot, ""), ())
    low = said.lower()
    return [low, low.replace(" ", "_"), *(entry.canonical for entry in spoken if low in entry.spoken)]


def _refusal(slot: str, said: str) -> str:
    name = slot.replace("_", " ")
    if slot in NUMBER_SLOTS:
        low, high = NUMBER_SLOTS[slot]
        return f"“{said}” is no {name}: a number from {low:g} to {high:g} belongs there."
    if slot in WORDED_SLOTS:
        known = ", ".join(value.replace("_", " ") for value in WORDED_SLOTS[slot])
        return f"“{said}” is no {name}; there are {known}."
    return f"“{said}” is no {name}; write it as 2, 1.5, double aught or 5 slim."
