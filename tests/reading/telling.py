"""Facts as one line each, so that a test states the whole record of a sentence: nothing missing, nothing more.

``LF+RF nails 6`` is a fact on two feet, ``-`` the whole horse; then the status unless it is present, ``@zone`` and
``~severity``.
"""

from __future__ import annotations

from pipeline.record import FEET, Fact, Visit


def line(fact: Fact) -> str:
    """What a fact says, its foot left out."""
    value = f"{fact.value:g}" if isinstance(fact.value, float) else fact.value
    status = "" if fact.status == "present" else f" {fact.status}"
    zone = f" @{fact.zone}" if fact.zone else ""
    severity = f" ~{fact.severity}" if fact.severity else ""
    return f"{fact.slot} {value}{status}{zone}{severity}"


def told(visit: Visit) -> list[str]:
    """One line a fact, sorted; the feet of equal facts are joined. A fact given twice on a foot shows as two lines."""
    feet: dict[str, list[str]] = {}
    for fact in visit.facts:
        feet.setdefault(line(fact), []).append(fact.foot or "-")
    rows = []
    for text, named in feet.items():
        rows.append(f"{'+'.join(f for f in ('-', *FEET) if f in named)} {text}")
        rows.extend(f"{foot} {text}" for foot in named for _ in range(named.count(foot) - 1))
    return sorted(rows)
