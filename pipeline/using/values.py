"""Results as JSON values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from datetime import date
from enum import Enum

from pipeline.keeping.seen import SeenFact


def as_values(thing: object) -> object:
    """Dataclasses, named tuples, days and lists as what JSON has; a fact as the record contract prints it."""
    if isinstance(thing, SeenFact):
        return thing.as_json()
    if is_dataclass(thing) and not isinstance(thing, type):
        return {one.name: as_values(getattr(thing, one.name)) for one in fields(thing)}
    if isinstance(thing, tuple) and hasattr(thing, "_fields"):
        return {name: as_values(getattr(thing, name)) for name in thing._fields}
    if isinstance(thing, Mapping):
        return {str(key): as_values(value) for key, value in thing.items()}
    if isinstance(thing, list | tuple):
        return [as_values(one) for one in thing]
    if isinstance(thing, date):
        return thing.isoformat()
    return thing.value if isinstance(thing, Enum) else thing
