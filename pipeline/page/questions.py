"""The review: one question a page, every answer a form, and after each answer the next question."""

from __future__ import annotations

from flask import Blueprint, redirect, render_template, request
from flask.typing import ResponseReturnValue

from pipeline.errors import ClinchbookError, CorrectionError, NotFoundError, StoreConflictError
from pipeline.judging import cautions
from pipeline.keeping import KeptHorse
from pipeline.page.answers import answer
from pipeline.page.days import read_day
from pipeline.page.desk import desk
from pipeline.page.statuses import status_of
from pipeline.page.telling import horse_of, sound_of
from pipeline.using.review import Item, ItemKind, Review
from pipeline.using.review.typed import FEET_SAID

pages = Blueprint("questions", __name__)
MORE_S = 5.0  # of sound on either side, when the words alone do not tell
_FEET = dict(
    zip(
        FEET_SAID,
        ("left fore", "right fore", "left hind", "right hind", "both fronts", "both hinds", "all four", "whole horse"),
        strict=True,
    )
)
MOST_LISTED = 60  # horses in a list to choose from; of a longer roster the name is typed
_FIELDS = (ItemKind.FIELD, ItemKind.SPOT_CHECK)
_CHANGED = "Somebody changed this visit since you saw it. Here is the question as it stands now; nothing was done."


@pages.get("/review")
def next_one() -> ResponseReturnValue:
    """The next question, or how the evening ended."""
    at = desk()
    with at.review() as review:
        item = at.evening.next(review)
        if item is not None:
            return _page(review, item)
        learned = list(review.learned)
    evening = at.evening
    return render_template(
        "done.html", evening=evening, learned=learned, notice=evening.say_once(), offer=evening.offer
    )


@pages.post("/review")
def start() -> ResponseReturnValue:
    """Begin the review of a day, or of all days; or ask what was skipped."""
    at = desk()
    if request.form.get("do") == "skipped":
        at.evening.ask_skipped()
    else:
        said = request.form.get("day")
        with at.review() as review:
            at.evening.start(review, read_day(said) if said else None)
    return redirect("/review", 303)


@pages.get("/review/<key>")
def one(key: str) -> ResponseReturnValue:
    """This one question."""
    with desk().review() as review:
        return _page(review, review.item(key))


@pages.post("/review/<key>")
def answered(key: str) -> ResponseReturnValue:
    """Take one answer, then show the next question; an answer that cannot be shows its question again."""
    at = desk()
    if request.form.get("do") == "skip":
        at.evening.skip(key)
        return redirect("/review", 303)
    with at.review() as review:
        try:
            item = review.item(key)
        except NotFoundError as gone:
            at.evening.notice = str(gone)
            return redirect("/review", 303)
        if request.form.get("seen") != str(item.seen):
            return _page(review, item, _CHANGED), 409
        try:
            done = answer(review, item, request.form)
        except StoreConflictError:
            return _page(review, review.item(key), _CHANGED), 409
        except ClinchbookError as problem:
            return _page(review, item, str(problem)), status_of(problem)
        at.evening.settle(key, done)
    return redirect("/review" if done.answered else f"/review/{key}", 303)


@pages.post("/undo")
def undo() -> ResponseReturnValue:
    """Take back the last answer; its question comes first again."""
    at = desk()
    with at.review() as review:
        try:
            at.evening.taken_back(review, review.undo())
        except (NotFoundError, CorrectionError, StoreConflictError) as problem:
            at.evening.notice = str(problem)
    return redirect("/review", 303)


@pages.post("/learn")
def learn() -> ResponseReturnValue:
    """Yes or no to what the last answer could teach."""
    at = desk()
    offer, at.evening.offer = at.evening.offer, None
    if offer is not None and request.form.get("do") == "yes":
        with at.review() as review:
            try:
                at.evening.notice = f"Learned: {review.learn(offer[1])}"
            except ClinchbookError as problem:
                at.evening.notice = str(problem)
    return redirect("/review", 303)


def _page(review: Review, item: Item, trouble: str | None = None) -> str:
    evening, shown = desk().evening, review.show(item)
    place, total = evening.place(item.key)
    length = item.visit.memo.record.memo.seconds
    return render_template(
        "question.html",
        shown=shown,
        item=item,
        horse=horse_of(item.visit),
        place=place,
        total=total,
        counted=item.key in evening.waiting,  # not a question that he opened from a visit, outside the review
        cautions=cautions(kept.fact for kept in item.facts),
        sound=sound_of(shown.clip),
        wider=sound_of(shown.clip, MORE_S, length),
        feet=_FEET,
        is_field=item.kind in _FIELDS,
        kind=item.kind.value,
        horses=_listed(review, item),
        did=request.form.get("do", "") if trouble else "",
        typed=request.form.get("text", "") if trouble else "",
        trouble=trouble,
        notice=evening.say_once(),
        offer=evening.offer,
    )


def _listed(review: Review, item: Item) -> list[KeptHorse]:
    if item.kind not in (*_FIELDS, ItemKind.HORSE, ItemKind.SECOND_HORSE):
        return []
    horses = review.store.horses()
    return horses if len(horses) <= MOST_LISTED else []
