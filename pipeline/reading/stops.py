"""Full stops that only mark a pause: "Quarter crack, left front. Mild." is one statement.

People pause before the degree and the place, and recognisers write a full stop there.
"""

from __future__ import annotations

from pipeline.reading.mentions import Mention
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

_MODIFIERS = ("severities", "zones")
_MODIFIED = ("findings", "tester_responses", "tester_heads", "gaits")
_TOLD = (*_MODIFIED, "not_facts")
_LITTLE = frozenset(
    {"at", "in", "on", "the", "of", "down", "just", "only", "still", "very", "and", "it", "is", "'s", "that", "its"}
    | {"one", "over", "along", "under", "near", "around", "right", "up", "his", "her", "but", "about", ","}
)
_COMPARED = frozenset({"worse", "worst", "better"})


def soften_stops(talk: Talk) -> None:
    """Read the full stop before a sentence of nothing but degree and place as a comma, if it has what to belong to."""
    starting: dict[int, list[Mention]] = {}
    for mention in talk.mentions:
        starting.setdefault(mention.start, []).append(mention)
    told = {m.start for m in talk.mentions if m.is_any(_MODIFIED)}
    stops = [i for i, word in enumerate(talk.words) if word in SENTENCE_ENDS]
    modified = False
    start = 0
    for number, stop in enumerate(stops):
        modified = not told.isdisjoint(range(start, stop)) or (
            modified and number > 0 and talk.words[stops[number - 1]] == ","
        )
        start = stop + 1
        end = stops[number + 1] if number + 1 < len(stops) else len(talk.words)
        if (
            modified
            and talk.words[stop] == "."
            and (_only_modifies(talk, starting, start, end) or _degree_leads(talk, starting, start, end))
        ):
            talk.words[stop] = ","


def _degree_leads(talk: Talk, starting: dict[int, list[Mention]], start: int, end: int) -> bool:
    """ "… in the sulcus. Bad, copper sulfate packed in": a degree before the first comma; not "mild, shallow corn"."""
    comma = next((i for i in range(start, end) if talk.words[i] == ","), end)
    degree = [m for m in starting.get(start, ()) if m.get("severities") and m.end == comma]
    told = any(m.is_any(_MODIFIED) for i in range(comma, end) for m in starting.get(i, ()))
    return comma < end and bool(degree) and not told


def _only_modifies(talk: Talk, starting: dict[int, list[Mention]], start: int, end: int) -> bool:
    """Whether the tokens hold a degree or a place and no statement; a foot takes a degree ("off hind mild")."""
    claimed: set[int] = set()
    found: set[str] = set()
    for mention in [m for i in range(start, end) for m in starting.get(i, ()) if not m.dropped]:
        kind = _kind(mention)
        if kind == "other":
            return False
        found.add(kind)
        claimed.update(mention.literal)
    rest = {talk.words[i] for i in range(start, end) if i not in claimed}
    graded = "severities" in found or rest & _COMPARED
    placed = "zones" in found and "feet" not in found
    return bool(graded or placed) and rest <= _LITTLE | _COMPARED


def _kind(mention: Mention) -> str:
    if mention.is_any(_TOLD):
        return "other"
    if mention.get("horse_cues") == "opener" or mention.get("feet") == "in_hand":
        return "little"
    return next((kind for kind in (*_MODIFIERS, "feet", "fillers", "same") if mention.get(kind)), "other")
