"""Sound from the terminal: the system's own player where there is one, else where the clip lies."""

from __future__ import annotations

import shutil
import subprocess
import tempfile
from contextlib import suppress
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from pipeline.errors import ClinchbookError

if TYPE_CHECKING:
    from pipeline.hearing.snippets import Snippets
    from pipeline.keeping import KeptVisit
    from pipeline.using.review.surroundings import Clip

# In this order; {} is the clip.
_PLAYERS = (
    ("paplay", "{}"),
    ("aplay", "-q", "{}"),
    ("afplay", "{}"),
    ("ffplay", "-nodisp", "-autoexit", "-loglevel", "quiet", "{}"),
    ("powershell", "-NoProfile", "-Command", "(New-Object Media.SoundPlayer '{}').PlaySync()"),
)


class Player:
    """Plays clips of kept memos. They lie in a folder of this user's own, which goes when the review ends."""

    def __init__(self) -> None:
        self._folder = tempfile.TemporaryDirectory(prefix="clinchbook-", ignore_cleanup_errors=True)
        self._command = next((command for command in _PLAYERS if shutil.which(command[0])), None)
        self._playing: subprocess.Popen[bytes] | None = None
        self._snippets: Snippets | None = None

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.stop()
        self._folder.cleanup()

    def play(self, visit: KeptVisit, clip: Clip | None) -> str:
        """Start playing just these seconds; returns a sentence on what happened. Never raises for want of sound."""
        if clip is None:
            return "There is no sound behind this."
        self.stop()
        try:
            path = self._cut(visit, clip)
        except ClinchbookError as problem:
            return str(problem)
        except OSError as problem:
            return f"The sound cannot be cut: {problem.strerror or problem}."
        length = f"{clip.end_s - clip.start_s:.1f} seconds"
        if self._command is None:
            return f"No player was found; the {length} lie in {path} until the review ends."
        command = [part.format(_quoted(path) if "'" in part else path) for part in self._command]
        quiet = subprocess.DEVNULL
        try:
            self._playing = subprocess.Popen(command, stdin=quiet, stdout=quiet, stderr=quiet)
        except OSError:
            return f"{command[0]} does not start; the {length} lie in {path} until the review ends."
        return f"Playing {length}; they lie in {path} until the review ends."

    def stop(self) -> None:
        """Stop what is playing."""
        if self._playing is not None:
            with suppress(OSError):
                self._playing.kill()
            self._playing.wait()
            self._playing = None

    def _cut(self, visit: KeptVisit, clip: Clip) -> Path:
        from pipeline.hearing.snippets import Snippets

        path = Path(self._folder.name) / f"memo{clip.memo_id}-{clip.start_s:.2f}-{clip.end_s:.2f}.wav"
        if not path.exists():
            self._snippets = self._snippets or Snippets()
            self._snippets.write(visit.memo.original, clip.start_s, clip.end_s, path)
        return path


def _quoted(path: Path) -> str:
    """The path between PowerShell's single quotes: a quote within, as in O'Hara's folder, is written twice there."""
    return str(path).replace("'", "''")
