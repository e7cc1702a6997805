"""How a question of the review looks in a terminal of 80 columns, and as JSON."""

from __future__ import annotations

import textwrap
from typing import TYPE_CHECKING

from pipeline.using.review.items import ItemKind
from pipeline.using.wording import clock, harmless

if TYPE_CHECKING:
    from pipeline.using.review.items import Item
    from pipeline.using.review.session import Shown

WIDTH = 80
_INDENT = 10
_KEYS = {
    ItemKind.FIELD: "a right  c type it  n not said  f foot  h horse  m missed",
    ItemKind.SPOT_CHECK: "a right  c type it  n not said  f foot  h horse  m missed",
    ItemKind.CHOICE: "a all are right  n none was said  m missed",
    ItemKind.HORSE: "a right  h type its name  w new horse  o none of these  m missed",
    ItemKind.SECOND_HORSE: "a same horse all through  h this part is another horse's  m missed\n"
    "  w this part is a new horse's  v the whole visit is another horse's",
    ItemKind.WORDS: "a nothing to add  m what was said",
    ItemKind.DAY: "a right  c type the day  m missed",
}
_ALWAYS = "p play  s skip  u take back  q stop"


def question_text(shown: Shown, place: int, total: int) -> str:
    """The question in at most 80 columns, the keys below it; every word of a memo made harmless."""
    item = shown.item
    head = f"{place} of {total}  {_whose(item)}, {item.visit.visit.date.isoformat()}"
    lines = ["-" * WIDTH, *_wrapped(head + ("  SPOT CHECK" if item.spot_check else ""), "")]
    lines += _labelled("as read", item.as_read())
    lines += _labelled("why", item.reason())
    if item.visit.memo.transcript.text:
        lines += _labelled("heard", _marked(shown))
    if shown.there:
        lines += _labelled("that part", "; ".join(shown.there))
    if shown.last is not None:
        lines += _labelled("last time", f"{shown.last.said} ({shown.last.day.isoformat()})")
    for number, says in enumerate(answers(shown), start=1):
        lines += _labelled(f"key {number}", says)
    return "\n".join([*lines, *key_lines(item)])


def key_lines(item: Item) -> list[str]:
    """The keys that this question knows, its own in a line or two and one for those that every question knows."""
    own = _KEYS[item.kind]
    if item.kind is ItemKind.HORSE and item.visit.horse is None:
        own = own.removeprefix("a right  ")  # there is nothing yet that could be right
    return [f"  {own}", f"  {_ALWAYS}"]


def answers(shown: Shown) -> list[str]:
    """What the number keys say."""
    return [choice.says for choice in shown.choices] or [near.says for near in shown.horses]


def question_json(shown: Shown) -> dict[str, object]:
    """The question as JSON values."""
    item, clip, last = shown.item, shown.clip, shown.last
    return {
        "key": item.key,
        "kind": item.kind.value,
        "visit": item.visit.id,
        "horse": item.visit.horse.name if item.visit.horse else None,
        "date": item.visit.visit.date.isoformat(),
        "score": round(item.score, 3),
        "as_read": item.as_read(),
        "reason": item.reason(),
        "facts": [{"id": kept.id, **kept.fact.model_dump(mode="json")} for kept in item.facts],
        "words": {"before": shown.words.before, "marked": shown.words.marked, "behind": shown.words.behind},
        "clip": {"memo": clip.memo_id, "start": round(clip.start_s, 2), "end": round(clip.end_s, 2)} if clip else None,
        "there": shown.there,
        "starts": [{"at": start.at, "words": start.says} for start in shown.starts],
        "answers": answers(shown),
        "last_time": {"date": last.day.isoformat(), "said": last.said, "value": last.value} if last else None,
    }


def list_line(item: Item) -> str:
    """The question on one line or a few, for a list."""
    at = f" at {clock(item.seconds[0])}" if item.seconds else ""
    check = "  SPOT CHECK" if item.spot_check else ""
    text = f"visit {item.visit.id}  {_whose(item)}{check}: {item.as_read()}. {item.reason()}{at}"
    return "\n".join(_wrapped(text, "    "))


def _whose(item: Item) -> str:
    heard = item.heard_name()
    if item.visit.horse:
        return item.visit.horse.name
    return f"Unknown horse (heard: {heard})" if heard else "Unknown horse"


def _marked(shown: Shown) -> str:
    words = shown.words
    return f"{words.before}»{words.marked}«{words.behind}" if words.marked else f"{words.before}{words.behind}"


def _labelled(label: str, text: str) -> list[str]:
    first, *rest = _wrapped(text, "", WIDTH - _INDENT) or [""]
    return [f"{label:<{_INDENT}}{first}", *(" " * _INDENT + line for line in rest)]


def fitted(text: str) -> str:
    """The text with every line that is wider than the screen broken between words."""
    lines = [textwrap.wrap(line, WIDTH, break_on_hyphens=False, break_long_words=False) for line in text.split("\n")]
    return "\n".join("\n".join(parts) for parts in lines)


def _wrapped(text: str, indent: str, width: int = WIDTH) -> list[str]:
    plain = " ".join(harmless(text).split())
    return textwrap.wrap(plain, width, subsequent_indent=indent)
