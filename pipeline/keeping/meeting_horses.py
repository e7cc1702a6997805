"""The horses of another store's record meet those of this one: the same, a new one, or one in doubt."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from pipeline.errors import RecordError
from pipeline.keeping.database import insert_row
from pipeline.keeping.horses import all_horses
from pipeline.keeping.identity import MICROCHIP, UELN
from pipeline.keeping.kept import KeptHorse
from pipeline.keeping.names import name_key
from pipeline.keeping.record_file import HorseOnFile
from pipeline.keeping.rows import Columns, horse_columns
from pipeline.record import RosterHorse

if TYPE_CHECKING:
    from sqlite_utils import Database


class Prefer(StrEnum):
    """What holds when a horse is known already and the record says something else of it."""

    ASK = "ask"  # neither: nothing is taken in, and the difference is told
    MINE = "mine"
    THEIRS = "theirs"


@dataclass(frozen=True)
class Met:
    """The row that a horse of the record has in the store, and whether it was made for it."""

    row: int
    new: bool = False


class Meeting:
    """Finds or makes the row of each horse of a record (inside the caller's transaction)."""

    def __init__(self, database: Database, prefer: Prefer) -> None:
        self.database = database
        self.prefer = prefer

    def meet(self, horses: Sequence[HorseOnFile], memo_rows: Mapping[str, int]) -> list[Met]:
        """One row a horse, in their order; ``memo_rows`` are the record's memos by hash.

        Raises RecordError for a horse that may or may not be one of the store's, or is told of differently.
        """
        known = all_horses(self.database)
        return [self._meet(horse, memo_rows, known) for horse in horses]

    def _meet(self, on_file: HorseOnFile, memo_rows: Mapping[str, int], known: list[KeptHorse]) -> Met:
        horse = RosterHorse.model_validate(on_file.model_dump(exclude={"first_named_in"}))
        same = self._same(horse, known)
        self._check_numbers(horse, same, known)
        if same is None:
            row = {**horse_columns(horse), "from_memo": memo_rows.get(on_file.first_named_in or "")}
            made = insert_row(self.database, "horses", row)
            known.append(KeptHorse(made, horse))
            return Met(made, new=True)
        differences = _differences(same.horse, horse)
        if differences and self.prefer is Prefer.ASK:
            raise RecordError(
                f"{horse.name} is known already, and the record tells something else of it ({'; '.join(differences)}); "
                "nothing was taken in. Say with --horses mine or --horses theirs which of the two holds."
            )
        if differences and self.prefer is Prefer.THEIRS:
            before = horse_columns(same.horse)
            changed: Columns = {name: value for name, value in horse_columns(horse).items() if before[name] != value}
            self.database.table("horses").update(same.id, changed)
            known[known.index(same)] = KeptHorse(same.id, horse, same.from_memo)
        return Met(same.id)

    def _same(self, horse: RosterHorse, known: Sequence[KeptHorse]) -> KeptHorse | None:
        namesakes = [other for other in known if name_key(other.name) == name_key(horse.name)]
        for other in namesakes:
            if name_key(other.horse.place) == name_key(horse.place):
                return other
        # With no place on one side it may be the same horse or another of its name.
        doubtful = namesakes if not name_key(horse.place) else [o for o in namesakes if not name_key(o.horse.place)]
        if not doubtful:
            return None
        if len(doubtful) == 1 and self.prefer is not Prefer.ASK:
            return doubtful[0]
        here = ", ".join(other.horse.place or "no place" for other in doubtful)
        raise RecordError(
            f"A horse called {horse.name} is known already ({here}; the record says {horse.place or 'no place'}), and "
            "whether it is the same one cannot be told; nothing was taken in. "
            + ("Name the places in the roster first." if len(doubtful) > 1 else
               "If it is, say --horses mine or --horses theirs; if not, name its place in the roster first.")
        )  # fmt: skip

    def _check_numbers(self, horse: RosterHorse, same: KeptHorse | None, known: Sequence[KeptHorse]) -> None:
        for kind in (UELN, MICROCHIP):
            number = horse.other.get(kind)
            for other in known:
                if number and other.horse.other.get(kind) == number and other != same:
                    raise RecordError(
                        f"{horse.name} of the record has the {kind} {number}, which is {other.name}'s here; "
                        "nothing was taken in."
                    )


def _differences(mine: RosterHorse, theirs: RosterHorse) -> list[str]:
    def told(value: object) -> str:
        return str(value) if value else "nothing"

    pairs = [
        ("name", mine.name, theirs.name),
        ("owner", mine.owner, theirs.owner),
        ("place", mine.place, theirs.place),
        ("other names", ", ".join(mine.also_called), ", ".join(theirs.also_called)),
        *((key, mine.other.get(key), theirs.other.get(key)) for key in sorted({*mine.other, *theirs.other})),
    ]
    return [f"{what}: here {told(ours)}, there {told(other)}" for what, ours, other in pairs if ours != other]
