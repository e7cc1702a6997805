"""How a place is asked about where another horse's part may have begun, and what such a question says, read back.

A flag carries only its sentence; whoever answers it must know which part of the memo it asks about.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

_FROM = re.compile(r"From “(?P<words>.*)” on this may be another horse(?P<why>: .*)?; please listen\.", re.DOTALL)
_BEFORE = re.compile(
    r"What is told before (?P<words>.+) is named may be of another horse(?P<why>: .*)?; please listen\.", re.DOTALL
)
_NAME = re.compile(r"“([^“”]+)” may be a name")


@dataclass(frozen=True)
class AskedPlace:
    """What a question of this kind asks about: what is told from some ``words`` on, or ``before`` a horse named so.

    ``of_fact`` is the reason that every fact of the part carries, ``name`` a word of the place that may be a name.
    """

    words: str
    before: bool
    of_fact: str
    name: str | None = None


def asks_from(words: str, why: str) -> str:
    """The question about what is told from these words on; ``why`` is what speaks for it, or nothing."""
    return f"From “{words}” on this may be another horse{f': {why}' if why else ''}; please listen."


def asks_before(horse: str | None, why: str) -> str:
    """The question about what is told before the first horse is named."""
    return f"What is told before {horse} is named may be of another horse{f': {why}' if why else ''}; please listen."


def of_fact_from(words: str) -> str:
    """Why a fact is doubted that is told from these words on."""
    return f"Another horse may have come in at “{words}”; whose is it?"


def of_fact_before(horse: str | None) -> str:
    """Why a fact is doubted that is told before the first horse is named."""
    return f"Told before {horse} is named, and perhaps of another horse; whose is it?"


def may_be_name(word: str) -> str:
    """The sign that a word at the place may be the lost name."""
    return f"“{word}” may be a name"


def asked_place(reason: str) -> AskedPlace | None:
    """The place that a question asks about; None for a question about anything else."""
    for form, before, of_fact in ((_FROM, False, of_fact_from), (_BEFORE, True, of_fact_before)):
        if said := form.fullmatch(reason):
            name = _NAME.search(said["why"] or "")
            return AskedPlace(said["words"], before, of_fact(said["words"]), name and name[1])
    return None
