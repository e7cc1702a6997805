"""Words made comparable: what was said and what a recogniser wrote, levelled before they are counted.

Lower case without punctuation; figures, fractions and ordinals spelled out as they are spoken ("3½" is "three and a
half", "00" is "double aught", "#5" is "number five"); nought, naught and zero are aught; units and a few spellings are
brought to one form; a compound may be written apart or together (``figures.py``). "Ought" for aught stays a mistake,
and so does every other sound-alike.
"""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

from num2words import num2words

_AUGHTS = {"0": "aught", "00": "double aught", "000": "triple aught", "0000": "quadruple aught"}
_HALVES = {"1/2": "half", "1/4": "quarter", "3/4": "three quarters", "1/3": "third", "2/3": "two thirds"}
_UNITS = {"mm": "millimeters", "cm": "centimeters", "deg": "degrees", "wk": "weeks", "wks": "weeks", "lbs": "pounds"}
_SAME = {
    "nought": "aught",
    "naught": "aught",
    "zero": "aught",
    "noughts": "aughts",
    "naughts": "aughts",
    "quad": "quadruple",
    "ok": "okay",
    "alright": "all right",
    "til": "till",
    "aluminium": "aluminum",
    "millimetre": "millimeter",
    "millimetres": "millimeters",
    "centimetre": "centimeter",
    "centimetres": "centimeters",
    "grey": "gray",
    "sulphate": "sulfate",
}
_FRACTION = re.compile(r"(?:(\d+)[ -]+)?\b(\d+)/(\d+)\b")
_DECIMAL = re.compile(r"\b(\d+)\.(\d+)\b")
_ORDINAL = re.compile(r"\b(\d+)(?:st|nd|rd|th)\b")
_NUMBER = re.compile(r"\d+")
_MOST_FIGURES = 6  # longer rows of figures are said one by one


@lru_cache(maxsize=4096)
def plain(text: str) -> tuple[str, ...]:
    """The words of ``text`` as they are compared."""
    text = re.sub("(?<=[0-9])(?=[½¼¾⅓⅔⅛⅜⅝⅞])", " ", text.lower())
    text = unicodedata.normalize("NFKC", text).replace("⁄", "/").replace("’", "'")
    text = re.sub(r"(?<=\d),(?=\d{3}\b)", "", text)
    text = text.replace("°", " degrees ").replace("%", " percent ").replace("&", " and ").replace("#", " number ")
    text = re.sub(r"(?<=\d)\s?(?:\"|'')", " inches ", text)
    text = re.sub(r"(?<=\d)(?=mm\b|cm\b|wks?\b|lbs\b|deg\b)", " ", text)
    text = _FRACTION.sub(_fraction, text)
    text = _DECIMAL.sub(_decimal, text)
    text = _ORDINAL.sub(lambda found: f" {num2words(int(found[1]), to='ordinal')} ", text)
    text = _NUMBER.sub(_cardinal, text)
    words = re.findall(r"[a-z]+(?:'[a-z]+)*", text.replace("-", " "))
    return tuple(" ".join(_SAME.get(word, _UNITS.get(word, word)) for word in words).split())


def _fraction(found: re.Match[str]) -> str:
    whole, over, under = found.groups()
    part = _HALVES.get(f"{over}/{under}")
    if part is None:
        if under == "0" or len(over) > 2 or len(under) > 2:
            return " ".join(num2words(int(figure)) for figure in f"{whole or ''}{over}{under}")
        part = f"{num2words(int(over))} {num2words(int(under), to='ordinal')}{'s' if over != '1' else ''}"
    if whole is None:
        return f" {part} "
    return f" {num2words(int(whole))} and {'a ' if over == '1' and ' ' not in part else ''}{part} "


def _decimal(found: re.Match[str]) -> str:
    if found[2] == "5":
        return f" {num2words(int(found[1]))} and a half " if found[1] != "0" else " half "
    return f" {num2words(int(found[1]))} point {' '.join(num2words(int(figure)) for figure in found[2])} "


def _cardinal(found: re.Match[str]) -> str:
    figures = found[0]
    if figures in _AUGHTS:
        return f" {_AUGHTS[figures]} "
    if len(figures) > _MOST_FIGURES or figures[0] == "0":
        return " " + " ".join(num2words(int(figure)) for figure in figures) + " "
    return f" {num2words(int(figures))} "
