"""The open memo as the decoder may use it."""

from __future__ import annotations

from typing import BinaryIO


class Readable:
    """Reads and seeks in an open file without ever raising inside the decoder, which would print a traceback.

    A place that is none is refused by number; a disk error ends the file and stays in ``error``.
    """

    def __init__(self, handle: BinaryIO) -> None:
        self._handle = handle
        self.name = ""  # the decoder asks for one; the file's own is nobody's business there
        self.error: OSError | None = None

    def read(self, size: int) -> bytes:
        """Up to ``size`` bytes; none at the end and after a disk error."""
        try:
            return self._handle.read(size)
        except OSError as error:
            self.error = self.error or error
            return b""

    def seek(self, offset: int, whence: int = 0) -> int:
        """The new place, or -1 when there is no such place."""
        try:
            return self._handle.seek(offset, whence)
        except (OSError, ValueError, OverflowError):
            return -1

    def tell(self) -> int:
        """The present place."""
        return self._handle.tell()
