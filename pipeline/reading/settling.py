"""Last look over the drafts of one horse: what implies what, what is said twice, what cannot stand together."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from pipeline.reading.foot_groups import SETUP_SLOTS
from pipeline.reading.number_context import ANGLES, LENGTHS, SCORES
from pipeline.reading.settling_doubts import settle_doubts
from pipeline.reading.settling_gaits import settle_gaits
from pipeline.reading.settling_work import back_on_without_loss, settle_bare, tar_in_oakum
from pipeline.reading.talk import Draft, Feet, grouped
from pipeline.reading.then_and_now import THEN_AND_NOW
from pipeline.record import FEET, HORSE_SLOTS, Foot, Status

_SHOD = frozenset({"reset", "new_shoe", "put_back"})
_COUNTED = frozenset({"nails", "nail_size", "shoe_size", "shoe_type", "work"})
_COUNTS = frozenset({"nails", "nail_size", "shoe_size"})
_EXCEPTED = _COUNTED | {"pulse"}
_ONE_NUMBER = _COUNTS | {*LENGTHS, *ANGLES, *SCORES, "wedge"}
_SAID_LAST = _ONE_NUMBER | {"pulse"}
_ANNOUNCED = SETUP_SLOTS - _COUNTS
_ON_A_SHOE = frozenset({"shoe_size", "shoe_type", "shoe_material", "nails", "nail_size", "clips", "traction"})
_UNDER_SHOES = frozenset({"trim", "removed"})
_KIND_OF_SHOE = frozenset({"shoe_type", "shoe_material"})
_WHOLE_HORSE_WORK = frozenset({"trim", "reset", "new_shoe"})


class Settled(NamedTuple):
    """One fact to be: a draft on one foot (or None for the whole horse)."""

    foot: Foot | None
    draft: Draft


def settle(drafts: Iterable[Draft]) -> list[Settled]:
    """One entry a foot and fact, in the order said."""
    standing = [d for d in drafts if not d.dropped]
    slots = {d.slot for d in standing}
    if "gait" in slots or "lameness" in slots:
        settle_gaits(standing)
    settle_bare(standing)
    _removed_not_lost(standing)
    back_on_without_loss(standing)
    tar_in_oakum(standing)
    _of_the_set(standing)
    _exact_answer(standing)
    _without_foot_and_with(standing)
    settle_doubts(standing)
    _exchanged_in_the_end(standing)
    _last_word(standing)
    _still_there(standing)
    standing = [d for d in standing if not d.dropped]
    _gone_not_only_earlier(standing)
    standing = [d for d in standing if not d.dropped]
    rows = [Settled(foot, draft) for draft in standing for foot in _feet(draft)]
    if "work" in slots:
        rows = _without_needless_work(rows, {d.value for d in standing if d.slot == "work"})
    if any(d.foot_carried and d.slot in _ANNOUNCED for d in standing):
        rows = _without_announcements(rows)
    if not slots.isdisjoint(_EXCEPTED):
        rows = _with_exceptions(rows)
    if any(d.status is Status.ABSENT for d in standing):
        rows = _without_denied_at_large(rows)
    if len({(d.slot, d.value, d.status) for d in standing}) < len(standing):
        rows = _without_twins(rows)
    return _last_interval(rows) if "next_visit_weeks" in slots else rows


def _without_needless_work(rows: list[Settled], done: set[str | Fraction]) -> list[Settled]:
    """What other work says better: that of which no foot was said, and what shoeing takes with it."""
    if any(row.draft.foot_guessed for row in rows):
        rows = _guess_for_the_rest(_without_needless_guess(rows))
    if _UNDER_SHOES.isdisjoint(done):
        return rows
    return _without_shoes_on_a_bare_foot(_without_trim_under_shoes(rows))


def _gone_not_only_earlier(drafts: list[Draft]) -> None:
    """ "It had been swollen at the coronet, the swelling has gone": one thing that is gone."""
    for gone in [d for d in drafts if d.slot == "finding" and d.status is Status.RESOLVED]:
        for earlier in drafts:
            same = (earlier.slot, earlier.value, earlier.feet) == (gone.slot, gone.value, gone.feet)
            near = gone.segment.sentence - earlier.segment.sentence in (0, 1)
            if same and near and earlier.status is Status.HISTORY and earlier.start < gone.start:
                gone.zone = gone.zone or earlier.zone
                earlier.drop("it is gone")


def _without_needless_guess(rows: list[Settled]) -> list[Settled]:
    """ "Trimmed and reset the fronts", "barefoot mare … only trimmed the fronts": the feet said stand for the guess."""
    work = [r.draft for r in rows if r.draft.slot == "work" and not r.draft.foot_guessed]
    ever, today = {d.value for d in work}, {d.value for d in work if d.status is Status.PRESENT}

    def needless(draft: Draft) -> bool:  # "I'll reset the off fore next time. Trimmed him": a plan is nothing of today
        named = today if draft.status is Status.PRESENT else ever
        return draft.value in named or (draft.value == "trim" and not named.isdisjoint(_WHOLE_HORSE_WORK))

    return [row for row in rows if not (row.draft.foot_guessed and needless(row.draft))]


def _guess_for_the_rest(rows: list[Settled]) -> list[Settled]:
    """ "Reset today. The off hind got a new shoe.": work without a foot is that of the feet with none named."""
    work = [r for r in rows if r.draft.slot == "work" and r.draft.status is Status.PRESENT]
    named = {r.foot for r in work if not r.draft.foot_guessed and r.foot is not None}
    if not named or len(named) == len(FEET):
        return rows
    return [r for r in rows if not (r in work and r.draft.foot_guessed and r.foot in named)]


def _feet(draft: Draft) -> tuple[Foot | None, ...]:
    if draft.slot in HORSE_SLOTS:
        return (None,)
    if draft.feet:
        return _ordered(draft.feet)
    if draft.slot == "work" and draft.value in _WHOLE_HORSE_WORK and draft.feet is None:
        draft.foot_guessed = True
        return FEET
    return (None,)


@lru_cache(maxsize=128)
def _ordered(feet: Feet) -> tuple[Foot, ...]:
    return tuple(foot for foot in FEET if foot in feet)


def _removed_not_lost(drafts: list[Draft]) -> None:
    """ "The shoe came off and it's been left off" tells of work, not of a shoe found missing."""
    removed = {(d.segment.sentence, d.feet) for d in drafts if d.slot == "work" and d.value == "removed"}
    for draft in drafts:
        if draft.slot == "shoe_state" and draft.value == "lost" and (draft.segment.sentence, draft.feet) in removed:
            draft.drop("taken off, not lost")


def _without_foot_and_with(drafts: list[Draft]) -> None:
    """ "The founder mare. Laminitis in both fronts.": the finding that has its feet stands for the one without."""
    for draft in [d for d in drafts if d.slot in SETUP_SLOTS and not d.feet and d.status is Status.HISTORY]:
        again = [d for d in drafts if (d.slot, d.value, d.status) == (draft.slot, draft.value, draft.status)]
        if any(d.feet for d in again):
            draft.drop("said again with its feet")
    for draft in [
        d for d in drafts if d.slot in ("treatment", "pad", "tester") and not d.feet and d.status is Status.PRESENT
    ]:
        if any(d.feet and (d.slot, d.value, d.status) == (draft.slot, draft.value, draft.status) for d in drafts):
            draft.drop("said again with its feet")  # "bandage change on Tally … left hind, fresh bandage"
    for draft in [d for d in drafts if d.slot == "shoe_state" and not d.feet and d.status is Status.PRESENT]:
        alone = not any(m.number for m in draft.segment.mentions)  # not of "lost two", of which one is told
        again = [d for d in drafts if (d.slot, d.value, d.status) == (draft.slot, draft.value, draft.status) and d.feet]
        if alone and any(d.segment.sentence - draft.segment.sentence in (0, 1) for d in again):
            draft.drop("said again with its feet")  # "a lost shoe call. Right front's gone"
    footed = {(d.value, d.status, d.zone) for d in drafts if d.slot == "finding" and d.feet}
    for draft in [d for d in drafts if d.slot == "finding" and not d.feet]:
        same = {zone for value, status, zone in footed if (value, status) == (draft.value, draft.status)}
        if draft.zone in same or (draft.zone is None and same):
            draft.drop("said again with its feet")


def _of_the_set(drafts: list[Draft]) -> None:
    """ "New shoes, steel", "reset, rim shoes": of every shoe of the set that is told of without a foot."""
    work = [d for d in drafts if d.slot == "work" and d.status is Status.PRESENT]
    if any(d.feet for d in work):
        return
    told = {d.segment.sentence for d in work if d.value in _SHOD & _WHOLE_HORSE_WORK}
    for draft in [d for d in drafts if d.slot in _KIND_OF_SHOE and d.feet is None and d.status is Status.PRESENT]:
        if draft.segment.sentence in told:
            draft.feet, draft.foot_guessed = FEET, True


def _exact_answer(drafts: list[Draft]) -> None:
    """ "He snatched it away, strong reaction there": of a plain and an exact answer in a sentence the exact one."""
    testers = [d for d in drafts if d.slot == "tester"]
    for plain in [d for d in testers if d.value == "positive"]:
        same = [d for d in testers if (d.segment.sentence, d.feet) == (plain.segment.sentence, plain.feet)]
        exact = [d for d in same if d.value not in ("positive", "none") and None in (d.zone, plain.zone)]
        if exact:
            exact[0].zone = exact[0].zone or plain.zone
            plain.drop("a more exact answer stands")


def _last_word(drafts: list[Draft]) -> None:
    """ "I read 53 but it was crooked, so fifty two and a half": of two counts in a sentence the last one stands."""
    counts = [d for d in drafts if d.slot in _SAID_LAST and d.status is Status.PRESENT and d.feet is not None]
    for same in grouped([((d.slot, d.feet, d.segment.sentence), d) for d in counts]).values():
        for draft in same if len(same) > 1 else ():
            if any(o.start > draft.start and o.value != draft.value for o in same):
                draft.drop("another number was said last")


def _exchanged_in_the_end(drafts: list[Draft]) -> None:
    """ "Wait, the pads aren't leather, they're full pads": what was said before goes with its denial."""
    for denial in drafts:
        if denial.status is not Status.ABSENT or denial.slot not in SETUP_SLOTS:
            continue
        same = [d for d in drafts if (d.slot, d.feet) == (denial.slot, denial.feet) and d.status is Status.PRESENT]
        before = [d for d in same if d.start < denial.start and d.value == denial.value]
        after = [d for d in same if d.start > denial.start and d.value != denial.value]
        if before and after:
            for draft in (*before, denial):
                draft.drop("exchanged for another")


def _still_there(drafts: list[Draft]) -> None:
    """ "Both had underrun heels last time, and the right's still underrun": there today, as it was."""
    earlier = [d for d in drafts if d.slot == "finding" and d.status is Status.HISTORY]
    for draft in [d for d in earlier if THEN_AND_NOW not in d.rules]:
        told = (draft.slot, draft.value, draft.segment.sentence)
        same = [o for o in drafts if (o.slot, o.value, o.segment.sentence) == told]
        if any(o.status is Status.PRESENT and o.start > draft.start and o.feet and o.feet == draft.feet for o in same):
            draft.drop("still there")


def _without_trim_under_shoes(rows: list[Settled]) -> list[Settled]:
    """A foot that is shod was trimmed and its old shoe removed; in the record those mean left bare."""
    work = [r for r in rows if r.draft.slot == "work"]
    shoeing = {r.draft.segment.sentence for r in work if r.draft.value in _SHOD and r.foot}
    today = [r for r in work if r.draft.status is Status.PRESENT]
    bare = {r.foot for r in today if r.draft.value == "trim"}
    shod = {r.foot for r in today if r.draft.value in _SHOD}

    def needless(row: Settled) -> bool:
        if row.draft.value == "trim" and row.draft.status is Status.PLANNED:
            return row.foot in bare
        under = row.draft.value in _UNDER_SHOES and row.draft.status is Status.PRESENT
        return under and (row.foot in shod or _off_and_on(row, shoeing))

    return [row for row in rows if not (row.draft.slot == "work" and needless(row))]


def _off_and_on(row: Settled, shoeing: set[int]) -> bool:
    """ "Had his shoes off and refitted the same ones all round": off, of no foot, and on again in the same breath."""
    return row.foot is None and row.draft.value == "removed" and row.draft.segment.sentence in shoeing


def _without_shoes_on_a_bare_foot(rows: list[Settled]) -> list[Settled]:
    """ "Right hind's off and staying off. The rest reset, six nails all round": what several feet got it did not."""
    done = [r for r in rows if r.draft.slot == "work" and r.draft.status is Status.PRESENT]
    shod = {r.foot for r in done if r.draft.value in _SHOD}
    off = {
        r.foot: r.draft.start
        for r in done
        if r.draft.value in _UNDER_SHOES and r.foot not in shod and (shod or r.draft.value == "removed")
    }

    def meant(row: Settled) -> bool:
        on_a_shoe = row.draft.slot in _ON_A_SHOE and row.draft.value != "boot" and row.draft.status is Status.PRESENT
        return on_a_shoe and row.draft.start > off[row.foot] and not set(row.draft.feet or ()) <= off.keys()

    return [row for row in rows if not (row.foot in off and meant(row))] if off else rows


def _without_announcements(rows: list[Settled]) -> list[Settled]:
    """ "Then wedges, I put a two degree wedge pad on both fores": the first word only says what comes."""
    told = dict.fromkeys(row.draft for row in rows if row.draft.slot in _ANNOUNCED)
    placed = [draft for draft in told if not draft.foot_carried]

    def announced(draft: Draft) -> bool:
        return any(
            o.start > draft.start
            and o.segment.sentence == draft.segment.sentence
            and (o.slot, o.value, o.status) == (draft.slot, draft.value, draft.status)
            and not _as_well(draft, o)
            for o in placed
        )

    first = {draft for draft in told if draft.foot_carried and announced(draft)} if placed else ()
    return [row for row in rows if row.draft not in first] if first else rows


def _as_well(draft: Draft, behind: Draft) -> bool:
    """ "That's reset, and the near hind's reset along with it", "steel, off fore the same stuff": of another foot."""
    joined = behind.segment is not draft.segment and behind.segment.joined_by("and", ", and")
    joined = joined or any(rule.startswith("the same") for rule in behind.rules)
    return joined and not set(draft.feet or ()) & set(behind.feet or ())


def _with_exceptions(rows: list[Settled]) -> list[Settled]:
    """ "Three a side. The left front only took five": what is said of one foot stands over what was said of several."""
    counted = grouped([((foot, draft.slot), draft) for foot, draft in rows if draft.slot in _EXCEPTED])
    several = {told: drafts for told, drafts in counted.items() if len(drafts) > 1}

    def excepted(row: Settled) -> bool:
        draft = row.draft
        return (
            (row.foot, draft.slot) in several
            and len(draft.feet or ()) > 1
            and any(
                other.status is draft.status
                and other.value != draft.value
                and other.start > draft.start
                and 0 < len(other.feet or ()) < len(draft.feet or ())
                for other in several[row.foot, draft.slot]
            )
        )

    return [row for row in rows if not excepted(row)] if several else rows


def _without_denied_at_large(rows: list[Settled]) -> list[Settled]:
    """ "No cracks anywhere. Well, hold on, there's one in the left hind": the foot named alone is the exception."""
    findings = [row for row in rows if row.draft.slot == "finding"]
    found = [row for row in findings if row.draft.status in (Status.PRESENT, Status.SUSPECTED)]
    there = {(row.foot, row.draft.value) for row in found}

    def excepted(row: Settled) -> bool:
        draft = row.draft
        return (
            draft.status is Status.ABSENT
            and draft.slot == "finding"
            and (row.foot, draft.value) in there
            and any(
                o.foot == row.foot
                and o.draft.value == draft.value
                and o.draft.start > draft.start
                and len(o.draft.feet or ()) < len(draft.feet or ())
                for o in found
            )
        )

    return [row for row in rows if not excepted(row)]


def _without_twins(rows: list[Settled]) -> list[Settled]:
    kept: list[Settled] = []
    alike: dict[tuple[object, ...], list[Settled]] = {}
    for row in rows:
        same = alike.setdefault((row.foot, row.draft.slot, row.draft.value, row.draft.status), [])
        zone = row.draft.zone
        twin = next((k for k in same if None in (k.draft.zone, zone) or k.draft.zone == zone), None) if same else None
        if twin is None:
            kept.append(row)
            same.append(row)
            continue
        twin.draft.evidence |= row.draft.evidence if row.draft.segment.index == twin.draft.segment.index else set()
        refers = "refers back" in row.draft.rules and row.draft.severity is not None
        degree = row.draft.severity
        if degree is not None and (refers or (twin.draft.severity is None and _alone(twin, rows))):
            twin.draft.severity = degree
        if zone is not None and twin.draft.zone is None and _alone(twin, rows):
            twin.draft.zone = zone
    return kept


def _alone(row: Settled, rows: list[Settled]) -> bool:
    return sum(r.draft is row.draft for r in rows) == 1


def _last_interval(rows: list[Settled]) -> list[Settled]:
    """The interval said last is the plan."""
    intervals = [r for r in rows if r.draft.slot == "next_visit_weeks" and r.draft.status is Status.PLANNED]
    return [r for r in rows if r not in intervals[:-1]] if len(intervals) > 1 else rows
