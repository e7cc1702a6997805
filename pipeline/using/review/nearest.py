"""The horses of the roster that a name may mean: nearest by sound, or by the place of the day's other visits."""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.keeping import KeptHorse, KeptVisit, Store
from pipeline.reading.sounds import likeness
from pipeline.using.review.items import Item

MOST = 6


@dataclass(frozen=True)
class Near:
    """A horse that it may have been, and how alike its name is to what was heard (0-1)."""

    horse: KeptHorse
    alike: float

    @property
    def says(self) -> str:
        """The horse's name with its place."""
        place = self.horse.horse.place
        return f"{self.horse.name} ({place})" if place else self.horse.name


def nearest(store: Store, item: Item, most: int = MOST) -> list[Near]:
    """The nearest horses, the likeliest first; the one that the visit has now is left out.

    When no name was heard, the horses at the places of the same day's visits come first, those seen that day last.
    """
    heard, own = item.heard_name(), item.visit.horse
    that_day = [visit for visit in store.visits_on(item.visit.visit.date) if visit.id != item.visit.id]
    horses = [kept for kept in store.horses() if own is None or kept.id != own.id]
    ranked = [Near(kept, _alike(kept, heard)) for kept in horses]
    ranked.sort(key=lambda near: (-round(near.alike, 2), *_likely_by_day(near.horse, that_day), near.horse.name))
    return ranked[:most]


def _alike(kept: KeptHorse, heard: str) -> float:
    return max((likeness(heard, name) for name in (kept.name, *kept.horse.also_called)), default=0.0) if heard else 0.0


def _likely_by_day(kept: KeptHorse, that_day: list[KeptVisit]) -> tuple[bool, bool]:
    seen = {visit.horse.id for visit in that_day if visit.horse}
    places = {visit.horse.horse.place for visit in that_day if visit.horse and visit.horse.horse.place}
    return kept.id in seen, kept.horse.place not in places
