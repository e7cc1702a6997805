"""What a search found, as lines for a person and as values for a program."""

from __future__ import annotations

from pipeline.keeping import Found, FoundFact, Passage
from pipeline.using.show import SIGN
from pipeline.using.wording import fact_words, harmless


def found_lines(found: Found) -> list[str]:
    """One line a find: day, horse, foot (``--`` for the whole horse), what was said, and the visit's number.

    ``(?)`` after a horse's name marks a visit that is not assigned to a horse yet.
    """
    return [_line(text) for text in (*map(_fact_line, found.facts), *map(_passage_line, found.passages))]


def found_json(found: Found) -> dict[str, object]:
    """The finds as JSON values: ``facts``, ``passages``, and ``more`` when the limit cut them off."""
    return {
        "facts": [_fact_json(hit) for hit in found.facts],
        "passages": [_passage_json(passage) for passage in found.passages],
        "more": found.more,
    }


def _fact_line(hit: FoundFact) -> str:
    horse = f"{hit.horse or 'unknown horse'}{'' if hit.assigned else ' (?)'}"
    sign = f"{SIGN} " if hit.fact.flagged else ""
    return f"{hit.date}  {horse}  {hit.fact.foot or '--'}  {sign}{fact_words(hit.fact)}  [visit {hit.visit_id}]"


def _passage_line(passage: Passage) -> str:
    horse = passage.horse or "unknown horse"
    return f"{passage.date}  {horse}  {passage.where}: {passage.text}  [visit {passage.visit_id}]"


def _line(text: str) -> str:
    return harmless(text).replace("\n", " ").replace("\t", " ")


def _fact_json(hit: FoundFact) -> dict[str, object]:
    return {
        **hit.fact.model_dump(mode="json"),
        "visit": hit.visit_id,
        "date": hit.date.isoformat(),
        "horse": hit.horse,
        "assigned": hit.assigned,
        "owner": hit.owner,
        "place": hit.place,
        "file_name": hit.file_name,
    }


def _passage_json(passage: Passage) -> dict[str, object]:
    return {
        "visit": passage.visit_id,
        "date": passage.date.isoformat(),
        "horse": passage.horse,
        "where": passage.where,
        "text": passage.text,
    }
