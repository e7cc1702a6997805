"""Sentences put together for a line."""

from __future__ import annotations

from collections.abc import Iterable, Mapping


def in_a_row(sentences: Iterable[str]) -> str:
    """Sentences behind one another; what does not end in a mark of its own is parted by a semicolon."""
    told = ""
    for sentence in sentences:
        parted = "" if not told else " " if told.endswith((".", "?", "!")) else "; "
        told += parted + sentence
    return told


def capital(text: str) -> str:
    """The text with its first letter made a capital, as a sentence begins."""
    return text[:1].upper() + text[1:]


def did_you_mean(said: str, known: Iterable[str] | Mapping[str, str], alike: float = 0.6) -> str:
    """A question that offers what is spelled most like what was said, with a space before it; "" when nothing is.

    Of a mapping the keys are compared and their values offered. ``alike`` is the least likeness, from 0 to 1.
    """
    from difflib import get_close_matches  # only who mistypes waits for it

    offers = known if isinstance(known, Mapping) else {name: name for name in known}
    close = dict.fromkeys(offers[name] for name in get_close_matches(said, offers, n=3, cutoff=alike))
    return f" Did you mean {' or '.join(close)}?" if close else ""


def none_such(said: str, thing: str, known: Iterable[str]) -> str:
    """That there is no such thing, and what is near; where nothing is, all that there are."""
    names = list(known)
    near = did_you_mean(said, names, alike=0.7)
    rest = f".{near}" if near else f"; known are {', '.join(names)}."
    return f"{said!r} is no {thing}{rest}"
