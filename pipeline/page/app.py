"""The web application: its guards, its pages, and what it says when something goes wrong."""

from __future__ import annotations

import logging

from flask import Flask, Response, abort, g, render_template, request
from flask.sessions import SessionInterface
from flask.typing import ResponseReturnValue
from jinja2 import StrictUndefined
from werkzeug.exceptions import HTTPException, RequestEntityTooLarge

from pipeline.errors import ClinchbookError
from pipeline.page import days, entering, questions, searching, sounds, visits
from pipeline.page.desk import Desk, desk, put
from pipeline.page.gate import HEADERS
from pipeline.page.statuses import status_of
from pipeline.page.telling import long_date, readable
from pipeline.using.wording import clock

LARGEST_FORM = 64 * 1024  # bytes
_OPEN_ENDPOINTS = frozenset({"entering.enter", "entering.exchange", "static"})
_SENTENCES = {
    400: "The browser sent something that cannot be understood.",
    401: "This browser has no key. Open the address that clinchbook printed; it works once.",
    403: "This did not come from a page of clinchbook, so nothing was done.",
    404: "There is no such page.",
    405: "This address does not take that.",
    413: "That is more than a form may hold; nothing was done.",
    421: "This is not the address of clinchbook.",
}


def make_app(at: Desk) -> Flask:
    """The application for one desk. It serves nothing to a browser that has not exchanged the desk's token."""
    app = Flask("pipeline.page", static_url_path="/own")
    app.config["MAX_CONTENT_LENGTH"] = app.config["MAX_FORM_MEMORY_SIZE"] = LARGEST_FORM
    app.session_interface = _NoSession()
    # A misspelt name in a template is an error, and what was said cannot rewrite a screen.
    app.jinja_options = {**app.jinja_options, "undefined": StrictUndefined, "finalize": readable}
    app.jinja_env.filters.update(long_date=long_date, clock=clock)
    app.jinja_env.trim_blocks = app.jinja_env.lstrip_blocks = True
    put(app.extensions, at)
    for pages in (entering.pages, days.pages, visits.pages, questions.pages, searching.pages, sounds.pages):
        app.register_blueprint(pages)
    app.before_request(_guard)
    app.after_request(_harden)
    app.context_processor(_everywhere)
    app.register_error_handler(ClinchbookError, _own_trouble)
    app.register_error_handler(HTTPException, _http_trouble)
    app.register_error_handler(Exception, _any_trouble)
    return app


class _NoSession(SessionInterface):
    """No cookie but the gate's own: nothing about him is kept in the browser."""

    def open_session(self, app: Flask, request: object) -> None:
        return None


def _guard() -> None:
    gate = desk().gate
    g.inside = False
    if not gate.ours(request.headers.get("Host")):
        abort(421)
    writing = request.method not in ("GET", "HEAD")
    if writing and not gate.from_our_page(request.headers.get("Sec-Fetch-Site"), request.headers.get("Origin")):
        abort(403)
    g.inside = gate.knows(request.cookies.get(gate.cookie_name))
    if request.endpoint in _OPEN_ENDPOINTS:
        return
    if not g.inside:
        abort(401)
    if writing and not gate.form_is_ours(request.form.get("form_key")):
        abort(403)


def _harden(response: Response) -> Response:
    response.headers.update(HEADERS)
    return response


def _everywhere() -> dict[str, object]:
    at = desk()
    inside = bool(g.get("inside"))
    return {"inside": inside, "form_key": at.gate.form_key if inside else "", "here": request.path}


def _own_trouble(error: ClinchbookError) -> ResponseReturnValue:
    return _trouble(str(error), status_of(error))


def _http_trouble(error: HTTPException) -> ResponseReturnValue:
    code = error.code or 500
    if code == 301 or code == 308:  # a redirect to the proper spelling of an address
        return error
    if isinstance(error, RequestEntityTooLarge):
        code = 413
    return _trouble(_SENTENCES.get(code, "Something went wrong; nothing was changed."), code)


def _any_trouble(error: Exception) -> ResponseReturnValue:
    logging.getLogger("clinchbook").error("a page could not be made", exc_info=error)
    return _trouble("Something in clinchbook went wrong. What was kept before stays kept.", 500)


def _trouble(sentence: str, code: int) -> ResponseReturnValue:
    return render_template("trouble.html", sentence=sentence, code=code), code
