"""UELN and microchip: checked, written in one way, and a wrong one named with its line."""

from __future__ import annotations

from pathlib import Path

import pytest

from pipeline.errors import RosterError
from pipeline.keeping.identity import IdentityError, microchip, ueln, with_identity
from pipeline.keeping.roster import read_roster


@pytest.mark.parametrize(
    ("given", "written"),
    [
        # Worked examples: ueln.net, "Rules of attribution of the UELN".
        ("250001+00155928M", "25000100155928M"),
        ("372414+1234567", "372414001234567"),
        ("25000100155928M", "25000100155928M"),
        ("250001 00155928m", "25000100155928M"),
        ("250-001-00155928M", "25000100155928M"),
        ("1212120078M0234", "1212120078M0234"),
        ("372IRE000001234", "372IRE000001234"),
    ],
)
def test_a_ueln_is_written_in_fifteen_characters(given: str, written: str) -> None:
    assert ueln(given) == written


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ("2500010015592", "has 13 characters, not 15"),
        ("25000100155928MM", "has 16 characters, not 15"),
        ("", "has 0 characters"),
        ("FRA00100155928M", "three digits of a country"),
        ("12121278M/23400", "neither a letter nor a digit"),
        ("25000100155928Ö", "neither a letter nor a digit"),
        ("2500+00155928M", "six characters before the sign"),
        ("250001+0015592800M", "one to nine behind it"),
        ("250001+", "one to nine behind it"),
        ("2.50001E+14", "rounded by a spreadsheet"),
    ],
)
def test_what_is_no_ueln(given: str, sentence: str) -> None:
    with pytest.raises(IdentityError, match=sentence):
        ueln(given)


@pytest.mark.parametrize(
    ("given", "written"),
    [
        ("250001234567890", "250001234567890"),
        ("250 0012 3456 7890", "250001234567890"),
        ("981-020000123456", "981020000123456"),
    ],
)
def test_a_microchip_is_written_in_fifteen_digits(given: str, written: str) -> None:
    assert microchip(given) == written


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ("25000123456789", "has 14 digits, not 15"),
        ("0123456789", "has 10 digits, not 15"),
        ("25000123456789A", "no digit"),
        ("２50001234567890", "no digit"),
        ("999000000000001", "for tests only"),
        ("000001234567890", "no country and no manufacturer"),
        ("9.8102E+14", "rounded by a spreadsheet"),
    ],
)
def test_what_is_no_microchip(given: str, sentence: str) -> None:
    with pytest.raises(IdentityError, match=sentence):
        microchip(given)


def test_the_columns_may_have_other_names() -> None:
    given = {"chip_number": "250 001234567890", "ueln_number": "372414+1234567", "colour": "bay"}
    assert with_identity(given) == {"microchip": "250001234567890", "ueln": "372414001234567", "colour": "bay"}
    with pytest.raises(IdentityError, match="two different numbers for microchip"):
        with_identity({"chip": "250001234567890", "microchip": "250001234567891"})


class TestRoster:
    """The numbers in a list of horses."""

    def test_they_are_kept_as_they_are_written(self, tmp_path: Path) -> None:
        path = tmp_path / "horses.csv"
        path.write_text("name,UELN,Microchip number\nBramble,372414+1234567,250 001234567890\nSorrel,,\n")
        bramble, sorrel = read_roster(path)
        assert bramble.other == {"ueln": "372414001234567", "microchip": "250001234567890"}
        assert sorrel.other == {}

    def test_a_wrong_one_is_named_with_its_line(self, tmp_path: Path) -> None:
        path = tmp_path / "horses.csv"
        path.write_text("name,microchip\nBramble,250001234567890\nSorrel,1234\n")
        with pytest.raises(RosterError) as refused:
            read_roster(path)
        assert str(refused.value) == "horses.csv line 3: the microchip '1234' has 4 digits, not 15."

    def test_one_number_is_one_horse(self, tmp_path: Path) -> None:
        path = tmp_path / "horses.csv"
        path.write_text("name,microchip\nBramble,250001234567890\nSorrel,250 001 234567890\n")
        with pytest.raises(RosterError, match="gives the microchip 250001234567890 to two horses: line 2 and line 3"):
            read_roster(path)
