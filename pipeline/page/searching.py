"""Search over everything that is kept, in a farrier's words."""

from __future__ import annotations

from flask import Blueprint, render_template, request
from flask.typing import ResponseReturnValue

from pipeline.errors import NotFoundError, SettingsError
from pipeline.keeping import Found
from pipeline.page.desk import desk
from pipeline.record import Status
from pipeline.using.search import DEFAULT_STATUSES, Asked, meant_perhaps, search
from pipeline.using.wording import FOOT_NAMES, fact_words

pages = Blueprint("searching", __name__)
MOST = 60  # finds on one page
_FEET = {"": "any foot", **{foot or "horse": name for foot, name in FOOT_NAMES.items()}}
_STATUSES = {
    "": "found or perhaps",
    Status.ABSENT.value: "said not to be there",
    Status.HISTORY.value: "at an earlier time",
    Status.RESOLVED.value: "gone now",
    Status.PLANNED.value: "planned",
    "any": "anything said",
}


@pages.get("/search")
def look() -> ResponseReturnValue:
    """The form, and below it what was found."""
    words = request.args.get("words", "").strip()
    foot, status = request.args.get("foot", ""), request.args.get("status", "")
    horse = request.args.get("horse", "").strip()
    found, trouble, perhaps = Found([], [], False), None, ""
    if words or foot or horse:
        try:
            found, perhaps = _found(words, foot, status, horse)
        except (SettingsError, NotFoundError) as error:
            trouble = str(error)
    told = {"words": words, "foot": foot, "status": status, "horse": horse, "asked": bool(words or foot or horse)}
    return render_template(
        "search.html", found=found, trouble=trouble, perhaps=perhaps, feet=_FEET, statuses=_STATUSES, said=fact_words,
        foot_names=FOOT_NAMES, **told,
    )  # fmt: skip


def _found(words: str, foot: str, status: str, horse: str) -> tuple[Found, str]:
    """What was found; of nothing, what was perhaps meant."""
    statuses = [one.value for one in Status] if status == "any" else [status] if status else list(DEFAULT_STATUSES)
    asked = Asked(
        words=words,
        feet=[foot] if foot else [],
        statuses=statuses,
        horse=horse or None,
        limit=MOST,
    )
    with desk().review() as review:
        found = search(review.store, asked, review.vocabulary)
        nothing = not (found.facts or found.passages)
        return found, meant_perhaps(words, review.vocabulary) if nothing else ""
