"""What is denied of all feet but one is there on that one: "no thrush anywhere bar the left hind"."""

from __future__ import annotations

from dataclasses import replace

from pipeline.reading.copying import AFFIRMED
from pipeline.reading.foot_names import resolve
from pipeline.reading.talk import Draft, Segment, Talk
from pipeline.record import Status

_ONE_OF = "foot: one of several"
_EXCEPT = frozenset({"bar", "barring", "except", "save", "apart", "excepting"})


def there_where_excepted(talk: Talk, sentence: list[Segment]) -> None:
    """Add the finding on the feet that its denial leaves out, unless the sentence tells of them itself."""
    for segment in sentence:
        if segment.delimiter.endswith("except") or talk.words[segment.start] in _EXCEPT:
            _there_after_all(sentence, segment)
        if not segment.drafts:
            continue
        denied = [d for d in segment.drafts if d.slot == "finding" and d.status is Status.ABSENT and not d.dropped]
        names = [str(m.get("feet")) for m in segment.having("feet") if "-" in str(m.get("feet"))] if denied else []
        left = resolve(names[0].split("-", 1)[1], None) if names else None
        for draft in denied if left else ():
            if not _told(sentence, draft, left or ()) and not set(left or ()) & set(draft.feet or left or ()):
                rules = [*(r for r in draft.rules if r != "denied"), "there on the foot left out"]
                made = replace(draft, feet=left, status=Status.PRESENT, rules=rules, evidence=set(draft.evidence))
                segment.drafts.append(made)
                draft.severity = None  # "no thrush in any foot except the left hind, which is bad"


def _there_after_all(sentence: list[Segment], segment: Segment) -> None:
    """ "Wasn't any thrush in the hinds, bar a touch in the left": a degree says that it is there."""
    if not segment.having("severities"):
        return
    narrowed = [d for s in sentence if s.index < segment.index for d in s.drafts if d.severity and _ONE_OF in d.rules]
    for draft in [d for d in [*segment.drafts, *narrowed] if d.slot == "finding"]:
        draft.status = Status.PRESENT
        draft.rules = [rule for rule in draft.rules if rule != "denied"]
        draft.note(AFFIRMED)


def _told(sentence: list[Segment], draft: Draft, feet: tuple[str, ...]) -> bool:
    """Whether the same finding is told of the foot by itself: "… bar the left hind, where it was bad"."""
    same = [d for s in sentence for d in s.drafts if (d.slot, d.value) == (draft.slot, draft.value) and d is not draft]
    return any(set(d.feet or ()) & set(feet) for d in same)
