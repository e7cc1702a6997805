"""The day: every visit of it, and how many questions are open."""

from __future__ import annotations

from collections import Counter
from datetime import date

from flask import Blueprint, redirect, render_template, request
from flask.typing import ResponseReturnValue

from pipeline.errors import DateError
from pipeline.page.desk import desk
from pipeline.page.telling import row_of

pages = Blueprint("days", __name__)
MOST = 30  # days on one page


@pages.get("/")
def newest() -> ResponseReturnValue:
    """To the newest day; a store without a visit says so."""
    with desk().review() as review:
        found = review.store.days(1)
    if not found:
        return render_template("empty.html")
    return redirect(f"/day/{found[0].day.isoformat()}", 303)


@pages.get("/day/<said>")
def one(said: str) -> ResponseReturnValue:
    """All visits of one day, in the order in which they were kept."""
    day = read_day(said)
    at = desk()
    with at.review() as review:
        visits = review.store.visits_on(day)
        items = review.queue(day)
        before, after = review.store.days(1, before=day), review.store.days(1, after=day)
    questions = Counter(item.visit.id for item in items)
    return render_template(
        "day.html",
        day=day,
        rows=[row_of(visit, questions[visit.id]) for visit in visits],
        questions=len(items),
        before=before[0].day if before else None,
        after=after[0].day if after else None,
        notice=at.evening.say_once(),
    )


@pages.get("/days")
def every() -> ResponseReturnValue:
    """The days with visits in them, the newest first, some at a time."""
    before = request.args.get("before")
    with desk().review() as review:
        found = review.store.days(MOST + 1, before=read_day(before) if before else None)
    return render_template("days.html", days=found[:MOST], more=found[MOST - 1].day if len(found) > MOST else None)


def read_day(said: str) -> date:
    """A day written as 2026-05-12. Raises DateError."""
    try:
        return date.fromisoformat(said)
    except ValueError as error:
        raise DateError(f"“{said}” is no day; write it as 2026-05-12.") from error
