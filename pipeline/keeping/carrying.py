"""What a person decided about the facts of one reading, carried over to the facts of another.

A settled fact is one that a person stands for, or dropped: the fact of the other reading that was read from the same
words takes its whole state. Where no fact was read from them, what the person stands for is kept and put before him.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pipeline.keeping import reading_back
from pipeline.keeping.correcting import next_position
from pipeline.keeping.database import insert_row, update_row
from pipeline.keeping.raw import RawRow
from pipeline.keeping.rows import Columns, as_json
from pipeline.record import Transcript

if TYPE_CHECKING:
    from sqlite_utils import Database

# The rules of a fact that a person stands for and the present reading does not find.
KEPT = as_json(["kept by a person"])
_STATE = ("foot", "value", "zone", "status", "severity", "stands")
_SURE: Columns = {"confidence": 1.0, "flagged": 0, "reasons": "[]"}
_NO_LONGER_FOUND = "A person stood for this; read again, the memo no longer says it{}. Is it still right?"
_SAME_FACT = 100.0
_SAME_FOOT, _SAME_VALUE, _SAME_ZONE = 4.0, 3.0, 1.0  # the same place in the body tells more than the same words


@dataclass(frozen=True)
class Told:
    """A fact as it is now and as it was read."""

    now: RawRow
    read: RawRow
    corrected_outside: bool = False

    @property
    def decided(self) -> bool:
        """Whether a person stands for it or dropped it; whoever corrected it by another program stands for it too."""
        return bool(self.now["settled"]) or self.corrected_outside

    @property
    def root(self) -> int:
        """The first fact that was read from these words, in whichever reading, or itself."""
        return int(self.now["origin"] or self.now["id"])

    def either(self, column: str) -> set[str | float | None]:
        """What the column says now and what it said when it was read."""
        return {self.now[column], self.read[column]}


@dataclass(frozen=True)
class Into:
    """The reading that stands from now on, the change that lets it stand, and the visits that a person alone knows."""

    reading: int
    change: int
    by_hand: frozenset[int] = frozenset()


def told(database: Database, facts: Sequence[RawRow]) -> list[Told]:
    """The facts with what they said when they were read, before any correction."""
    read = {row["id"]: dict(row) for row in facts}
    outside = set()
    for entry in reversed(reading_back.history_of_rows(database, "facts", list(read))):
        read[entry.row][entry.column] = entry.old
        if entry.change is None and (entry.column in _STATE or (entry.column == "flagged" and not entry.new)):
            outside.add(entry.row)
    return [Told(row, read[row["id"]], row["id"] in outside) for row in facts]


def carry(
    database: Database, source: Sequence[Told], target: Sequence[Told], transcript: Transcript | None, into: Into
) -> None:
    """Bring every decided fact of ``source`` to ``target``, the facts of the reading that stands from now on.

    ``transcript`` is that reading's wording when it is another one than the source's.
    """
    carried = [fact for fact in source if fact.decided or fact.now["visit"] in into.by_hand]
    pairs = matched(carried, target, same_words=transcript is None)
    for fact in carried:
        found = pairs.get(fact.now["id"])
        if found is not None:
            columns: Columns = {name: fact.now[name] for name in _STATE} | {"settled": 1} if fact.decided else {}
            columns |= _SURE if fact.decided and fact.now["stands"] else {}
            if _stays_in_its_visit(database, fact, found, into):
                columns |= {"visit": fact.now["visit"], "position": _behind(database, fact)}
            if columns:
                update_row(database, "facts", found.now["id"], columns)
        elif fact.decided and fact.now["stands"]:
            _keep(database, fact, transcript, into)


def matched(source: Iterable[Told], target: Iterable[Told], same_words: bool) -> dict[int, Told]:
    """For facts of ``source``, by number, the fact of ``target`` that was read from the same words; one for one."""
    facts, others = list(source), list(target)
    likeness = [
        (score, fact.now["id"], -other.now["id"], fact, other)
        for fact in facts
        for other in others
        if (score := _likeness(fact, other, same_words)) > 0
    ]
    pairs: dict[int, Told] = {}
    taken: set[int] = set()
    for _, _, _, fact, other in sorted(likeness, key=lambda pair: (-pair[0], pair[1], -pair[2])):
        if fact.now["id"] not in pairs and other.now["id"] not in taken:
            pairs[fact.now["id"]] = other
            taken.add(other.now["id"])
    return pairs


def origins(source: Sequence[Told], fresh: Sequence[Told], same_words: bool) -> dict[int, int]:
    """For new facts, by number, the fact of the former reading that was read from the same words.

    What a person settled is looked for first, so that it is sure to find its like.
    """
    settled = matched([fact for fact in source if fact.decided], fresh, same_words)
    taken = {other.now["id"] for other in settled.values()}
    others = [fact for fact in source if not fact.decided]
    pairs = settled | matched(others, [fact for fact in fresh if fact.now["id"] not in taken], same_words)
    roots = {fact.now["id"]: fact.root for fact in source}
    return {other.now["id"]: roots[number] for number, other in pairs.items()}


def set_aside_doubles(database: Database, by_hand: Sequence[RawRow], target: Sequence[RawRow]) -> None:
    """A fact that a person had entered and the reader finds by now is kept once: as the person entered it."""
    same = ("visit", "foot", "slot", "value", "status")
    entered = {tuple(fact[name] for name in same) for fact in by_hand if fact["stands"]}
    for fact in target:
        if tuple(fact[name] for name in same) in entered:
            update_row(database, "facts", fact["id"], {"stands": 0})


def _likeness(fact: Told, other: Told, same_words: bool) -> float:
    """How surely two facts were read from the same words; 0 for surely not."""
    if fact.root == other.root:
        return _SAME_FACT
    if fact.now["slot"] != other.now["slot"]:
        return 0.0
    words = _shared_span(fact.now, other.now) if same_words else _shared_sound(fact.now, other.now)
    foot = bool(fact.either("foot") & other.either("foot"))
    value = bool(fact.either("value") & other.either("value"))
    if words <= 0 or not (foot or value):
        return 0.0
    zone = bool(fact.either("zone") & other.either("zone"))
    exact = float(fact.read["foot"] == other.read["foot"])  # of four feet in one statement, the one that was read
    return words + _SAME_FOOT * foot + _SAME_VALUE * value + _SAME_ZONE * zone + exact


def _shared_span(one: RawRow, other: RawRow) -> float:
    return _shared((one["span_start"], one["span_end"]), (other["span_start"], other["span_end"]))


def _shared_sound(one: RawRow, other: RawRow) -> float:
    """Of two hearings: the share of the seconds, or else the same words."""
    if None in (one["start_s"], one["end_s"], other["start_s"], other["end_s"]):
        return float(bool(one["quote"]) and one["quote"].casefold() == other["quote"].casefold())
    return _shared((one["start_s"], one["end_s"]), (other["start_s"], other["end_s"]))


def _shared(one: tuple[float, float], other: tuple[float, float]) -> float:
    together = min(one[1], other[1]) - max(one[0], other[0])
    whole = max(one[1], other[1]) - min(one[0], other[0])
    return together / whole if together > 0 and whole > 0 else 0.0


def _stays_in_its_visit(database: Database, fact: Told, found: Told, into: Into) -> bool:
    """Whether a decided fact stays in its visit though it is found in another one by now.

    It does when a person moved it there, or moved back what he had given to another horse with all that is told
    around it, and when one of the two visits stands and the other does not: what a person stands for is not lost in a
    visit that he dropped, and what he dropped with a visit does not come back in another.
    """
    if fact.now["visit"] == found.now["visit"]:
        return False
    moved = fact.now["visit"] != fact.read["visit"] or found.now["visit"] != found.read["visit"]
    if moved or fact.now["visit"] in into.by_hand:
        return True
    sql = "SELECT count(DISTINCT stands) FROM visits WHERE id IN (?, ?)"
    return bool(database.execute(sql, [fact.now["visit"], found.now["visit"]]).fetchone()[0] == 2)


def _keep(database: Database, fact: Told, transcript: Transcript | None, into: Into) -> None:
    """Let what a person stands for stand in the reading that does not find it, before his eyes."""
    kept: Columns = {name: value for name, value in fact.now.items() if name != "id"}
    asked_before = fact.now["rules"] == KEPT and not fact.now["flagged"]
    heard = f" (it was heard as “{kept['quote']}”)" if transcript is not None and kept["quote"] else ""
    if transcript is not None:
        kept |= _words_in(transcript, str(kept["quote"]))
    kept |= {"reading": into.reading, "change": into.change, "origin": fact.root}
    kept |= {"position": _behind(database, fact), "rules": KEPT, "settled": 1}
    if not asked_before:
        kept |= {"flagged": 1, "reasons": as_json([_NO_LONGER_FOUND.format(heard)])}
    insert_row(database, "facts", kept)


def _words_in(transcript: Transcript, quote: str) -> Columns:
    """Where the words of a fact are in another wording; nowhere when they are not in it."""
    start = transcript.text.find(quote) if quote else -1
    if start < 0:
        return {"quote": "", "span_start": 0, "span_end": 0, "start_s": None, "end_s": None}
    end = start + len(quote)
    seconds = transcript.seconds_of(start, end)
    return {"span_start": start, "span_end": end, "start_s": seconds[0], "end_s": seconds[1]}


def _behind(database: Database, fact: Told) -> int:
    memo = database.execute("SELECT memo FROM visits WHERE id = ?", [fact.now["visit"]]).fetchone()[0]
    return next_position(database, int(memo))
