"""A redacted record names nobody and quotes nothing, in whatever form, under its name and in its metadata."""

from __future__ import annotations

import io
import json
import zlib
from datetime import date
from pathlib import Path

import pypdf
import pytest

from pipeline.errors import RecordError
from pipeline.keeping import Store
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, RosterHorse, Visit
from pipeline.using.export import FORMS, Request, choice_of, export_all, export_all_to, export_horse
from pipeline.using.interchange import take_in
from tests.using.conftest import Keep

DAY = date(2026, 5, 12)
NAMES = (
    "quillfeather", "grimsdyke", "thornwick", "marrowby", "pellamore", "25000100155928m", "250001234567890", "skewbald",
    "zephyrine", "secret-memo", "overheard", "whispering", "nightjar", "login-of-nora",
)  # fmt: skip


@pytest.fixture
def telling(empty: Store, keep_memo: Keep) -> Store:
    """A store in which every text names somebody."""
    roster = RosterHorse(
        name="Zephyrine",
        owner="Q. Quillfeather",
        place="Grimsdyke",
        also_called=["Nightjar"],
        other={"ueln": "25000100155928M", "microchip": "250001234567890", "colour": "skewbald"},
    )
    empty.add_horses([roster])
    fact = Fact(
        foot="LF", slot="finding", value="thrush", zone="sulcus", quote="Thornwick whispering thrush", flagged=True,
        reasons=["Heard “Marrowby”, read as thrush."], span=(0, 9), start=1.0, end=2.0,
    )  # fmt: skip
    flags = [
        Flag(kind=FlagKind.HORSE, reason="2 horses are called Pellamore", quote="Pellamore"),
        Flag(kind=FlagKind.NOT_UNDERSTOOD, reason="Not understood: Pellamore", quote="overheard"),
    ]
    visit = Visit(
        horse="Zephyrine", horse_match=HorseMatch.KNOWN, date=DAY, facts=[fact], flags=flags, notes="Tell Marrowby."
    )
    keep_memo(empty, "secret-memo.m4a", "Zephyrine of Quillfeather, overheard.", [visit])
    empty.assign(1, empty.horse("Zephyrine"), who="login-of-nora", why="Marrowby said so")
    empty._database.execute("UPDATE pen SET who = 'login-of-nora', why = 'Marrowby said so'")
    empty._database.execute("UPDATE facts SET severity = 'mild', reasons = '[\"Thornwick\"]'")
    empty._database.execute("UPDATE visits SET notes = 'Tell Pellamore.'")
    empty._database.conn.commit()
    return empty


def all_text(data: bytes, form: str) -> str:
    """Everything that can be read in an export, lower case: of a PDF its text, its metadata and its raw bytes."""
    if form != "pdf":
        return data.decode("utf-8").lower()
    reader = pypdf.PdfReader(io.BytesIO(data))
    pages = "".join(page.extract_text() for page in reader.pages)
    metadata = " ".join(str(value) for value in (reader.metadata or {}).values())
    streams = [stream.partition(b"endstream")[0].strip() for stream in data.split(b"stream\n")]
    opened = b"".join(
        zlib.decompress(stream) for stream in streams if stream[:1] == b"x" and stream[1:2] in b"\x9c\xda\x01"
    )
    return (pages + metadata + (data + opened).decode("latin-1")).lower()


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("audience", ["owner", "vet"])
def test_nobody_is_named(telling: Store, form: str, audience: str) -> None:
    choice = choice_of(DAY, audience, redact=True)
    text = all_text(export_horse(telling, "Zephyrine", Request(form, choice)), form)
    assert [name for name in NAMES if name in text] == []
    assert "thrush" in text
    assert "horse 1" in text


@pytest.mark.parametrize("form", FORMS)
def test_they_are_named_otherwise(telling: Store, form: str) -> None:
    text = all_text(export_horse(telling, "Zephyrine", Request(form, choice_of(DAY, "vet"))), form)
    assert [name for name in NAMES[:2] if name not in text] == []


@pytest.mark.parametrize("form", ["csv", "json"])
def test_nobody_of_the_whole_store_is_named(telling: Store, form: str) -> None:
    text = all_text(export_all(telling, Request(form, choice_of(DAY, redact=True))), form)
    assert [name for name in (*NAMES, "bramble", "sorrel", "river barn", "c. lind") if name in text] == []


@pytest.mark.parametrize("form", ["html", "pdf", "md"])
def test_no_file_is_named_after_anybody(telling: Store, tmp_path: Path, form: str) -> None:
    folder = tmp_path / "records"
    folder.mkdir()
    export_all_to(telling, Request(form, choice_of(DAY, redact=True)), folder)
    assert sorted(path.name for path in folder.iterdir()) == [f"horse-{number}.{form}" for number in (1, 2, 3, 4)]


def test_the_edits_stay_without_their_hand(telling: Store) -> None:
    data = json.loads(export_horse(telling, "Zephyrine", Request("json", choice_of(DAY, redact=True))))
    assert [(change["column"], change["new"], change["who"], change["why"]) for change in data["history"]] == [
        ("severity", "mild", "", "")
    ]
    page = export_horse(telling, "Zephyrine", Request("md", choice_of(DAY, "vet", redact=True))).decode("utf-8")
    assert "severity from nothing to mild" in page


def test_it_cannot_be_taken_in(telling: Store, tmp_path: Path) -> None:
    path = tmp_path / "redacted.json"
    path.write_bytes(export_all(telling, Request("json", choice_of(DAY, redact=True))))
    with pytest.raises(RecordError, match="it is redacted"):
        take_in(telling, path)
