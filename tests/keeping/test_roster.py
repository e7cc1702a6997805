"""A roster from a CSV file: taken whole, or refused with its line."""

from __future__ import annotations

from pathlib import Path

import pytest

from pipeline.errors import FileMissingError, RosterError
from pipeline.keeping.roster import read_roster
from pipeline.record import RosterHorse


def written(folder: Path, data: bytes) -> Path:
    """The data as a file."""
    path = folder / "horses.csv"
    path.write_bytes(data)
    return path


def test_a_list_with_everything_in_it(tmp_path: Path) -> None:
    data = (
        "\ufeffName,Owner,Place,Also called,Stable vet\r\n"
        'Bramble,"Fern, A.",River barn,Bram; Old Bram ;,D. Moor\r\n'
        "\r\n"
        "Blüte,,,,\r\n"
        'Bramble,,"Hill\nyard",,\r\n'
    )
    assert read_roster(written(tmp_path, data.encode())) == [
        RosterHorse(
            name="Bramble", owner="Fern, A.", place="River barn", also_called=["Bram", "Old Bram"],
            other={"stable_vet": "D. Moor"},
        ),
        RosterHorse(name="Blüte"),
        RosterHorse(name="Bramble", place="Hill\nyard"),
    ]  # fmt: skip


def test_only_names_are_needed(tmp_path: Path) -> None:
    assert read_roster(written(tmp_path, b"name\nBramble\n")) == [RosterHorse(name="Bramble")]


@pytest.mark.parametrize(
    ("data", "message"),
    [
        (b"", "is empty"),
        (b"horse,owner\nBramble,Fern\n", "no column “name”"),
        (b"name,owner,owner\nBramble,Fern,Fern\n", "column owner twice"),
        (b"name,owner\nBramble,Fern\n,Fern\n", "line 3 has no name"),
        (b"name\nBramble\n\nBl\xfcte\n", "line 4 is no UTF-8"),
        (b"name,place\nBramble,Ford\nSorrel,Ford\n bramble ,FORD\n", "twice: line 2 and line 4"),
        (b"name\nBram\x00ble\n", "line 2 has a character"),
        (b"name\nBramble,Ford\n", "line 2 has 2 cells where 1 belong"),
        (b'name\n"Bramble\n', "no proper CSV"),
        (b"name\n" + b"n" * 300 + b"\n", "line 2: a name of 300"),
    ],
)
def test_a_mistake_is_refused_with_its_line(tmp_path: Path, data: bytes, message: str) -> None:
    with pytest.raises(RosterError, match=message):
        read_roster(written(tmp_path, data))


def test_a_missing_file_and_a_folder(tmp_path: Path) -> None:
    with pytest.raises(FileMissingError):
        read_roster(tmp_path / "none.csv")
    with pytest.raises(RosterError, match=f"{tmp_path} is a folder; name the list in it"):
        read_roster(tmp_path)


@pytest.mark.parametrize("mark", [",", ";", "\t"])
def test_cells_are_parted_as_spreadsheets_part_them(tmp_path: Path, mark: str) -> None:
    text = f"name{mark}place\nBramble{mark}Ford\n"
    assert read_roster(written(tmp_path, text.encode())) == [RosterHorse(name="Bramble", place="Ford")]
