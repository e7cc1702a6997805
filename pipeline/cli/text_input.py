"""Typed text on its way in: from a file or from stdin, as UTF-8 and nothing else."""

from __future__ import annotations

import sys
from pathlib import Path

from pipeline.errors import ClinchbookError, FileEmptyError, FileMissingError, TextError

STDIN = Path("-")


def read_bytes(path: Path) -> bytes:
    """All bytes of a file, or of stdin for ``-``. Raises FileMissingError, and ClinchbookError when unreadable."""
    if path == STDIN:
        return sys.stdin.buffer.read()
    try:
        return path.read_bytes()
    except FileNotFoundError as error:
        raise FileMissingError(f"There is no file {path}.") from error
    except OSError as error:
        if path.is_dir():
            raise TextError(f"{path} is a folder, not a text.") from error
        raise ClinchbookError(f"{path} cannot be read: {(error.strerror or str(error)).lower()}.") from error


def decode(raw: bytes, where: str) -> str:
    """UTF-8 text without its byte order mark. Raises TextError naming the line that is none."""
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = raw.count(b"\n", 0, error.start) + 1
        raise TextError(f"{where} line {line} is not UTF-8 text.") from error


def read_text(path: Path) -> str:
    """The text of a file or of stdin. Raises FileEmptyError when there are no words, TextError for bad UTF-8."""
    where = "The text from stdin" if path == STDIN else path.name
    text = decode(read_bytes(path), where)
    if not text.strip():
        raise FileEmptyError(f"{where} holds no words.")
    return text
