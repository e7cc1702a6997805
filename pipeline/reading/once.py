"""Properties that are looked up once: what many rules may ask for and most never do."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Generic, TypeVar, overload

Told = TypeVar("Told")


class Once(Generic[Told]):
    """As functools.cached_property, without the lock that it takes in Python 3.11, which costs more than a look."""

    def __init__(self, look_up: Callable[[Any], Told]) -> None:
        self._look_up, self.__doc__ = look_up, look_up.__doc__
        self._name = look_up.__name__

    @overload
    def __get__(self, owner: None, kind: type) -> Once[Told]: ...

    @overload
    def __get__(self, owner: object, kind: type) -> Told: ...

    def __get__(self, owner: object | None, kind: type) -> Once[Told] | Told:
        """What was found; from now on it stands in the owner itself."""
        if owner is None:
            return self
        told = self._look_up(owner)
        owner.__dict__[self._name] = told
        return told
