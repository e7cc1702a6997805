"""The sound behind the words: a few seconds of a memo, named by the memo's number, never by a path."""

from __future__ import annotations

import io

from flask import Blueprint, send_file
from flask.typing import ResponseReturnValue

from pipeline.page.desk import desk

pages = Blueprint("sounds", __name__)


@pages.get("/sound/<int:memo>/<int:start_ms>-<int:end_ms>.wav")
def clip(memo: int, start_ms: int, end_ms: int) -> ResponseReturnValue:
    """A WAV of these milliseconds; ranges are answered with 206, as players on phones ask for."""
    sound = desk().wav(memo, start_ms, end_ms)
    response = send_file(io.BytesIO(sound), mimetype="audio/wav", conditional=True)
    response.headers["Accept-Ranges"] = "bytes"
    return response
