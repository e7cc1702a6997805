"""What is taken back as a whole, before it is carried out on the drafts."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Strike:
    """A statement taken back at token ``at``.

    ``about`` is a slot when only that is ("all that about the pads"); ``what`` a slot and value ("forget the heat").
    ``what`` with ``other_horse`` is a thing that was another horse's.
    ``undone`` ("no, I didn't") takes back what was done, not what was found.
    ``named`` is the token of the horse that it belongs to, with all that was said under the wrong name if ``whole``.
    """

    at: int
    end: int
    about: str | None
    other_horse: bool = False
    what: tuple[str, str] | None = None
    named: int | None = None
    whole: bool = False
    undone: bool = False
