"""One visit, foot by foot, with its drawn feet, its cautions and the words behind it all."""

from __future__ import annotations

from flask import Blueprint, render_template
from flask.typing import ResponseReturnValue

from pipeline.page.desk import desk
from pipeline.page.telling import told
from pipeline.using.review.queue import items_of

pages = Blueprint("visits", __name__)


@pages.get("/visit/<int:number>")
def one(number: int) -> ResponseReturnValue:
    """The visit's page."""
    with desk().review() as review:
        visit = review.store.visit(number)
        items = items_of(review.store, visit) if visit.stands else []
    return render_template("visit.html", visit=told(visit), items=items)
