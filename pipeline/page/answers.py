"""From a form to an answer of the review."""

from __future__ import annotations

from collections.abc import Mapping

from pipeline.errors import CorrectionError, StoreConflictError
from pipeline.keeping import KeptHorse
from pipeline.using.review import Done, Item, Review
from pipeline.using.review.typed import FEET_SAID

LONGEST_TEXT = 500  # characters that may be typed at once
Form = Mapping[str, str]


def answer(review: Review, item: Item, form: Form) -> Done:
    """What ``do`` names, done. Raises CorrectionError for what no record can hold, and all that the review raises."""
    match form.get("do"):
        case "right":
            return review.accept(item)
        case "choice":
            return _choice(review, item, form)
        case "type":
            return review.correct_typed(item, _text(form))
        case "day":
            return review.set_day(item, _text(form))
        case "not_said":
            return review.drop(item)
        case "feet":
            return review.set_feet(item, FEET_SAID[_one_of(form.get("feet"), FEET_SAID, "Choose the foot.")])
        case "missed":
            return review.add(item, _text(form))
        case _:
            return _of_horse(review, item, form)


def _of_horse(review: Review, item: Item, form: Form) -> Done:
    match form.get("do"):
        case "horse":
            return review.assign(item, _horse(review, form))
        case "split":
            return review.split(item, _horse(review, form), _start(review, item, form))
        case "move":
            return review.move(item, _horse(review, form))
        case "new_horse":
            place = " ".join(form.get("place", "").split())[:LONGEST_TEXT]
            return review.new_horse(item, _text(form), place or None, _start(review, item, form))
        case "no_horse":
            return review.no_horse(item)
        case _:
            raise CorrectionError("The form did not say what to do; nothing was changed.")


def _choice(review: Review, item: Item, form: Form) -> Done:
    """The choice is named by what it says: by its number another one might be taken when the list has changed."""
    for choice in review.show(item).choices:
        if choice.says == form.get("choice"):
            return review.choose(item, choice)
    raise StoreConflictError("The choices have changed since; choose again.")


def _start(review: Review, item: Item, form: Form) -> int | None:
    """With which words the other horse comes in; None when there is nothing to choose."""
    said = form.get("start", "")
    starts = {str(start.at): start.at for start in review.show(item).starts}
    if said and said not in starts:
        raise StoreConflictError("The places to choose from have changed since; choose again.")
    return starts.get(said)


def _horse(review: Review, form: Form) -> KeptHorse:
    """The horse of a button or a list, by its row, or of a name that was typed."""
    named = form.get("named", "").strip()
    if named:
        return review.store.horse(named)
    for horse in review.store.horses():
        if str(horse.id) == form.get("horse"):
            return horse
    raise CorrectionError("Choose the horse.")


def _text(form: Form) -> str:
    text = form.get("text", "").strip()
    if not text:
        raise CorrectionError("Nothing was typed; nothing was changed.")
    if len(text) > LONGEST_TEXT:
        raise CorrectionError(f"That is too long; {LONGEST_TEXT} letters are enough for one answer.")
    return text


def _one_of(said: str | None, known: Mapping[str, object], sentence: str) -> str:
    if said is None or said not in known:
        raise CorrectionError(sentence)
    return said
