"""The door: the token of the printed address is exchanged for a cookie, by a button.

By a button, because whatever merely looks at an address (a preview, a browser that loads ahead) would use the token up.
"""

from __future__ import annotations

from flask import Blueprint, abort, g, make_response, redirect, render_template, request
from flask.typing import ResponseReturnValue

from pipeline.page.desk import desk

pages = Blueprint("entering", __name__)


@pages.get("/enter")
def enter() -> ResponseReturnValue:
    """The page with the button."""
    if g.inside:
        return redirect("/", 303)
    return render_template("enter.html", token=request.args.get("token", ""))


@pages.post("/enter")
def exchange() -> ResponseReturnValue:
    """Token in, cookie out; a second time there is nothing to exchange."""
    gate = desk().gate
    session = gate.enter(request.form.get("token", ""))
    if session is None:
        abort(401)
    response = make_response(redirect("/", 303))
    response.set_cookie(gate.cookie_name, session, path="/", httponly=True, samesite="Strict")
    return response
