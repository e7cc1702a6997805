"""The caution that a record carries when it names something that can hurt. A record, never a diagnosis."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from pipeline.terms import Said, Status

REFER = "Ask your vet; local rules apply."
_NOW = frozenset({Status.PRESENT, Status.SUSPECTED})
_BY_VET_FROM = 4  # AAEP grade: lameness obvious at a walk


def cautions(facts: Iterable[Said]) -> list[str]:
    """The caution lines that these facts call for, each once, in a fixed order."""
    now = [f for f in facts if f.status in _NOW]
    return [line for applies, line in _RULES if applies(now)]


def _has(facts: Sequence[Said], slot: str, *values: str) -> bool:
    return any(f.slot == slot and f.value in values for f in facts)


def _laminitis(facts: Sequence[Said]) -> bool:
    return _has(facts, "finding", "laminitis", "rotation") or any(f.slot == "obel" for f in facts)


def _laminitic_signs(facts: Sequence[Said]) -> bool:
    hot = {f.foot for f in facts if f.slot == "finding" and f.value == "heat"}
    beating = {f.foot for f in facts if f.slot == "pulse" and f.value == "bounding"}
    return _laminitis(facts) or bool(hot & beating)


def _very_lame(facts: Sequence[Said]) -> bool:
    return any(f.slot == "lameness" and isinstance(f.value, float) and f.value >= _BY_VET_FROM for f in facts)


def _drained(facts: Sequence[Said]) -> bool:
    return _has(facts, "treatment", "drained", "resection")


_RULES: tuple[tuple[Callable[[Sequence[Said]], bool], str], ...] = (
    (_laminitic_signs, f"Signs that can go with laminitis are recorded: laminitis is an emergency. {REFER}"),
    (
        lambda f: _has(f, "finding", "puncture"),
        f"A puncture is recorded: it can reach deep structures, and tetanus cover matters. {REFER}",
    ),
    (
        lambda f: _has(f, "finding", "quicked"),
        f"A quicked nail is recorded: watch for lameness, heat and pulse, and tetanus cover matters. {REFER}",
    ),
    (_very_lame, f"Lameness of grade 4 or more is recorded. {REFER}"),
    (
        lambda f: _has(f, "finding", "canker", "keratoma"),
        f"A finding is recorded that needs a vet to name it for certain. {REFER}",
    ),
    (_drained, f"Opened horn is recorded: opening living tissue is a vet's act in many places. {REFER}"),
    (
        lambda f: _has(f, "treatment", "copper_sulfate"),
        f"Copper sulfate is recorded: its dust harms eyes and lungs, and it is poisonous to stock and water life; "
        f"gloves, mask, no dry dust. {REFER}",
    ),
)
