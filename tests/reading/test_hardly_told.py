"""Talk of no trade: a word put in place of another is no fact there, and is asked about."""

from __future__ import annotations

from datetime import date

import pytest

from pipeline.reading import Reader
from pipeline.record import FlagKind, RosterHorse, Transcript, Visit
from tests.reading.spoken import spoken

TALK = "We had a lovely tea at my sister's and the weather held. "


def visits(reader: Reader, transcript: Transcript) -> list[Visit]:
    return reader.read(transcript, [RosterHorse(name="Teasel")], date(2026, 3, 2))


@pytest.mark.parametrize(
    ("told", "instead", "quote"),
    [
        ("Her borium dots on her.", {"borium": "birthday's", "dots": "birthday's"}, "borium dots"),
        ("He had thrush on the lawn.", {"thrush": "trash"}, "thrush"),
        ("Teasel had thrush on the lawn.", {"thrush": "trash"}, "thrush"),
        ("A boat, or a horse, so I'd call the vet.", {}, "call the vet"),  # of no horse and no foot
        (f"{TALK * 4}He had new shoes on his left front.", {}, "new shoes"),  # a foot alone, in twice as much talk
        (f"{TALK * 12}Teasel called the vet.", {}, "called the vet"),  # a name alone, in four times as much
    ],
)
def test_it_is_asked_and_no_fact(reader: Reader, told: str, instead: dict[str, str], quote: str) -> None:
    (visit,) = visits(reader, spoken(TALK * 4 + told, instead))
    assert not visit.facts
    (flag,) = [f for f in visit.flags if "left out" in f.reason]
    first = next(iter(instead.values()), None)
    assert (flag.kind, flag.quote) == (FlagKind.NOT_UNDERSTOOD, quote)
    assert flag.reason.startswith(f"Heard “{first}”, which may be “{quote}”;" if first else f"Heard “{quote}”;")


@pytest.mark.parametrize(
    ("text", "instead"),
    [
        (f"{TALK * 4}He had thrush on the near fore.", {}),  # heard as it stands, of a foot
        (f"Teasel. {TALK * 4}She's sound.", {}),  # of a horse
        (f"Teasel. {TALK * 11}She's sound.", {}),
        ("Sound, and six weeks.", {}),
        ("Teasel. Thrush in the near fore.", {"Thrush": "Trash"}),  # a short memo that tells something
        (f"{TALK * 2}Teasel. Thrush in the near fore.", {"Thrush": "Trash"}),
        (f"{TALK * 4}Teasel reset in front. Thrush in the near fore.", {"Thrush": "Trash"}),  # more is told
    ],
)
def test_it_stands(reader: Reader, text: str, instead: dict[str, str]) -> None:
    (visit,) = visits(reader, spoken(text, instead))
    assert visit.facts
