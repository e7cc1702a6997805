"""How every command ends: the one place that turns an error into one sentence and an exit code."""

from __future__ import annotations

import errno
import io
import os
import sys
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import typer
from typer._click.exceptions import NoArgsIsHelpError, UsageError
from typer.core import TyperGroup

from pipeline.errors import ClinchbookError, TextError

INTERRUPTED = 130  # 128 + SIGINT, as shells count
PIPE_CLOSED = 141  # 128 + SIGPIPE
FILE_TROUBLE = 20  # the system refuses to read or write a file


class PlainEndings(TyperGroup):
    """The root command: nothing that goes wrong inside a command reaches a person as a traceback."""

    def make_context(self, *args: Any, **settings: Any) -> Any:
        """Read the options in front of the command."""
        with plain_endings():
            return super().make_context(*args, **settings)

    def invoke(self, ctx: Any) -> Any:
        """Run the command; its errors become one sentence on stderr and an exit code."""
        with plain_endings():
            return super().invoke(ctx)


@contextmanager
def plain_endings() -> Iterator[None]:
    """Turn errors into ``typer.Exit`` with a sentence on stderr; a closed pipe ends quietly."""
    _write_what_cannot_be_encoded()
    try:
        yield
        sys.stdout.flush()
    except ClinchbookError as error:
        say(str(error))
        raise typer.Exit(error.exit_code) from error
    except NoArgsIsHelpError:  # its help is the answer
        raise
    except UsageError as error:
        from pipeline.cli.misuse import misuse_sentence

        say(misuse_sentence(error))
        raise typer.Exit(error.exit_code) from error
    except KeyboardInterrupt as error:
        say("Stopped. What was kept before stays kept.")
        raise typer.Exit(INTERRUPTED) from error
    except UnicodeEncodeError as error:
        say("Something given here holds bytes that are not UTF-8 text, which no name or word can have.")
        raise typer.Exit(TextError.exit_code) from error
    except OSError as error:
        if _pipe_is_closed(error):
            # Whatever is still buffered must not raise a second time when Python closes stdout.
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            raise typer.Exit(PIPE_CLOSED) from error
        say(f"{error.filename or 'A file'} cannot be used: {error.strerror or error}.")
        raise typer.Exit(FILE_TROUBLE) from error


def say(sentence: str) -> None:
    """One line on stderr, harmless to a terminal whatever names are in it: messages never mix with results."""
    from pipeline.using.wording import harmless

    sys.stderr.write(f"{harmless(sentence)}\n")


def say_written(paths: Sequence[Path]) -> None:
    """Tell on stderr which files were written; of more than three, how many and where."""
    if len(paths) > 3:
        say(f"{len(paths)} files are written into {paths[0].parent}.")
    elif paths:
        say(f"Written: {', '.join(map(str, paths))}")


def exit_code_of(problems: Iterable[ClinchbookError]) -> int:
    """The exit code of a run over many memos: 0 without problems, the code they share, or 1 for a mixture."""
    codes = {problem.exit_code for problem in problems}
    if not codes:
        return 0
    return codes.pop() if len(codes) == 1 else ClinchbookError.exit_code


def _pipe_is_closed(error: OSError) -> bool:
    """Whether nobody reads any more; Windows calls that an invalid argument of no file."""
    windows = sys.platform == "win32" and error.errno == errno.EINVAL and error.filename is None
    return windows or isinstance(error, BrokenPipeError)


def _write_what_cannot_be_encoded(windows: bool = sys.platform == "win32") -> None:
    """No name or word ends a command because the stream cannot write it.

    Into a file or a pipe Windows would write its old code page, with a second carriage return in every row of a CSV:
    what is printed there is UTF-8 as it stands, as on every other system.
    """
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            if windows and not stream.isatty():
                stream.reconfigure(encoding="utf-8", newline="")
            stream.reconfigure(errors="backslashreplace")
