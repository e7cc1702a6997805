"""The numbers that say which horse it is: its UELN and its microchip, checked and written in one way.

UELN: 15 characters, of which the first three are digits for the country of the data base, the next three its code and
the last nine the number within it, filled up with zeros on the left (ueln.net, "Rules of attribution": 250001 with
00155928M is 25000100155928M, 372414 with 1234567 is 372414001234567). Microchip: 15 digits, of which the first three
are a country (ISO 3166, below 900) or a manufacturer (900 to 998) and 999 stands for a test (ISO 11784:1996).
"""

from __future__ import annotations

import re
from collections.abc import Mapping

UELN, MICROCHIP = "ueln", "microchip"
_UELN_LENGTH, _UELN_OWN_LENGTH = 15, 9
_CHIP_LENGTH = 15
_TEST_CHIP = "999"
_HEADERS = {
    "ueln": UELN,
    "ueln_number": UELN,
    "microchip": MICROCHIP,
    "microchip_number": MICROCHIP,
    "chip": MICROCHIP,
    "chip_number": MICROCHIP,
}
_FILLERS = re.compile(r"[\s.\-_]+")
_SPREADSHEET_NUMBER = re.compile(r"\d+([.,]\d+)?[eE]\+?\d+")


class IdentityError(ValueError):
    """A number that is no UELN or no microchip; the message is one clause without a full stop."""


def with_identity(columns: Mapping[str, str]) -> dict[str, str]:
    """``columns`` of a roster with the UELN and the microchip under these names and in their written form.

    Raises IdentityError for a number that cannot be one, and when one horse is given two.
    """
    checked: dict[str, str] = {}
    for column, text in columns.items():
        name = _HEADERS.get(column, column)
        value = _CHECKS[name](text) if name in _CHECKS else text
        if checked.setdefault(name, value) != value:
            raise IdentityError(f"the columns give two different numbers for {name}")
    return checked


def ueln(text: str) -> str:
    """The UELN in its 15 characters; the data base's code and the number may be parted by ``+``.

    Raises IdentityError.
    """
    _refuse_spreadsheet_number(text, "UELN")
    base, parted, own = _FILLERS.sub("", text).upper().partition("+")
    if parted:
        if len(base) != _UELN_LENGTH - _UELN_OWN_LENGTH or not 1 <= len(own) <= _UELN_OWN_LENGTH:
            raise IdentityError(f"the UELN {text!r} needs six characters before the sign and one to nine behind it")
        own = own.zfill(_UELN_OWN_LENGTH)
    whole = base + own
    if len(whole) != _UELN_LENGTH:
        raise IdentityError(f"the UELN {text!r} has {len(whole)} characters, not 15")
    if not (whole.isascii() and whole.isalnum()):
        raise IdentityError(f"the UELN {text!r} holds a sign that is neither a letter nor a digit")
    if not whole[:3].isdigit():
        raise IdentityError(f"the UELN {text!r} does not begin with the three digits of a country")
    return whole


def microchip(text: str) -> str:
    """The microchip's 15 digits; raises IdentityError."""
    _refuse_spreadsheet_number(text, "microchip")
    digits = _FILLERS.sub("", text)
    if not (digits.isascii() and digits.isdigit()):
        raise IdentityError(f"the microchip {text!r} holds a sign that is no digit")
    if len(digits) != _CHIP_LENGTH:
        raise IdentityError(f"the microchip {text!r} has {len(digits)} digits, not 15")
    if digits.startswith(_TEST_CHIP):
        raise IdentityError(f"the microchip {text!r} begins with 999, which is for tests only")
    if digits.startswith("000"):
        raise IdentityError(f"the microchip {text!r} begins with 000, which is no country and no manufacturer")
    return digits


_CHECKS = {UELN: ueln, MICROCHIP: microchip}


def _refuse_spreadsheet_number(text: str, what: str) -> None:
    if _SPREADSHEET_NUMBER.fullmatch(text.strip()):
        raise IdentityError(f"the {what} {text!r} was rounded by a spreadsheet; give its column the format text")
