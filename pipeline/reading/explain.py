"""Why a memo was read as it was: every span with its rules, what was said and not kept, and what each cue changed.

What a cue reached is found by experiment, not by retelling the rules: the memo is read once more with that cue passed
over, and the difference is what the cue did.
"""

from __future__ import annotations

from collections.abc import Sequence
from copy import copy, deepcopy
from dataclasses import dataclass, replace
from datetime import date

from pipeline.reading.mentions import Mention, MentionFinder
from pipeline.reading.reader import Reader
from pipeline.reading.settling import settle
from pipeline.reading.talk import Draft, Talk
from pipeline.reading.tokens import Tokens
from pipeline.record import SLOTS, Fact, RosterHorse, Status, Transcript, Visit

# Classes of words that say how something is meant, and what a cue of each is called.
CUE_CLASSES = {
    "denials": "denial",
    "doubts": "doubt",
    "times": "time",
    "plans": "plan",
    "resolutions": "gone",
    "taking_back": "repair",
    "asides": "aside",
}
# Rules that tell what a draft was attached to, or how it was meant; the rest of a dropped draft's say why it went.
_ATTACHED = frozenset({"foot", "zone", "severity", "next visit", "one", *SLOTS})
_ASSERTED = frozenset({"denied", "doubted", "planned", "gone", "of an earlier time", "elliptic", "refers back"})
_ANY_DAY = date(2000, 1, 1)  # no rule looks at the day

FactKey = tuple[str | None, str | None, str, str | float]  # horse, foot, slot, value
Said = tuple[str, str | None, str | None]  # status, zone, severity
_Cue = tuple[Mention, str]  # and the class in which it is a cue


@dataclass(frozen=True)
class SpanRow:
    """One thing read from the characters ``span`` of the transcript; ``why`` says why it was not kept, if so."""

    words: str
    span: tuple[int, int]
    horse: str | None
    foot: str | None
    slot: str
    value: str | float
    zone: str | None
    severity: str | None
    status: str
    confidence: float | None
    match: str
    rules: tuple[str, ...]
    why: str | None = None


@dataclass(frozen=True)
class Effect:
    """A fact as rules read it and as they would without the cue: status, zone and severity; None is no such fact."""

    foot: str | None
    slot: str
    value: str | float
    now: Said | None
    without: Said | None


@dataclass(frozen=True)
class CueRow:
    """A cue, its canonical name in its class ("before", "after", "pseudo" …), and all that it changed.

    Cues of one kind in one sentence of which each alone would do ("might be …, couldn't say for sure") are one row.
    """

    words: tuple[str, ...]
    span: tuple[int, int]
    kind: str
    name: str
    effects: tuple[Effect, ...]


@dataclass(frozen=True)
class Explanation:
    """Everything in the order said."""

    kept: tuple[SpanRow, ...]
    dropped: tuple[SpanRow, ...]
    cues: tuple[CueRow, ...]


def explain(
    reader: Reader, transcript: Transcript, roster: Sequence[RosterHorse], visits: Sequence[Visit]
) -> Explanation:
    """Explain ``visits``, which ``reader`` read from this transcript with this roster (and which may be judged)."""
    listener, ear = _hearing_with(reader, transcript.heard)
    talk, _ = listener.parse(transcript, roster)
    kept = [_kept_row(visit.horse, fact) for visit in visits for fact in visit.facts]
    by_rules = [_by_rules(visit) for visit in visits]
    read = [_kept_row(visit.horse, fact) for visit in by_rules for fact in visit.facts]
    dropped = [*_dropped_rows(transcript, talk, read), *_taken_back(transcript, talk)]
    cues = _cue_rows(reader, transcript, roster, by_rules, talk, ear.heard)
    return Explanation(tuple(sorted(kept, key=_place)), tuple(sorted(dropped, key=_place)), tuple(cues))


def _by_rules(visit: Visit) -> Visit:
    """A visit as it was read, before anything of today was put right."""
    facts = [f.model_copy(update={"status": Status.PRESENT}) if f.put_right else f for f in visit.facts]
    return visit.model_copy(update={"facts": facts})


class _Ear(MentionFinder):
    """A finder that keeps what it found as it was found, and passes over some mentions' meaning in one class."""

    def __init__(self, finder: MentionFinder, deaf_to: Sequence[_Cue] = ()) -> None:
        self._inner = finder
        self._deaf_to = deaf_to
        self.heard: list[Mention] = []

    def find(self, tokens: Tokens, names: Sequence[Mention] = ()) -> list[Mention]:
        """What the inner finder finds, less the meanings that are passed over."""
        found = self._inner.find(tokens, names)
        for cue, name in self._deaf_to:
            for mention in found:
                if mention.literal == cue.literal:
                    mention.readings.pop(name, None)
        self.heard = deepcopy(found)
        return [mention for mention in found if mention.readings]

    def meaning(self, form: str) -> dict[str, str]:
        """What the inner finder knows of the form."""
        return self._inner.meaning(form)


def _hearing_with(reader: Reader, heard: bool, deaf_to: Sequence[_Cue] = ()) -> tuple[Reader, _Ear]:
    """A reader beside ``reader`` with the same matchers behind an ear of its own."""
    ear = _Ear(reader._finder(heard), deaf_to)
    other = copy(reader)
    other._finders = {heard: ear}
    return other, ear


def _kept_row(horse: str | None, fact: Fact) -> SpanRow:
    return SpanRow(
        words=fact.quote, span=fact.span, horse=horse, foot=fact.foot, slot=fact.slot, value=fact.value,
        zone=fact.zone, severity=fact.severity, status=fact.status.value, confidence=fact.confidence,
        match=fact.match.value, rules=tuple(fact.rules),
    )  # fmt: skip


# -- what was said and not kept ----------------------------------------------------------------------------------------


def _dropped_rows(transcript: Transcript, talk: Talk, kept: Sequence[SpanRow]) -> list[SpanRow]:
    """Drafts without a fact. Settling is repeated here, horse by horse, because it is what drops the last of them."""
    drafts = [draft for segment in talk.segments for draft in segment.drafts]
    for horse in {draft.segment.horse for draft in drafts}:
        settle(draft for draft in drafts if draft.segment.horse == horse)
    rows = []
    for draft in drafts:
        for foot in _unkept(talk, draft, kept):
            row = _draft_row(transcript, talk, draft, foot)
            rows.append(replace(row, why=_reason(draft) if draft.dropped else _overruled(row, kept)))
    return rows


def _reason(draft: Draft) -> str:
    """The rule that dropped it: the last one that does not tell how something was attached or asserted."""
    reasons = [r for r in draft.rules if r not in _ASSERTED and r.partition(": ")[0] not in _ATTACHED]
    return reasons[-1] if reasons else "dropped"


def _overruled(row: SpanRow, kept: Sequence[SpanRow]) -> str:
    same = [k for k in kept if (k.foot, k.slot) == (row.foot, row.slot)]
    if any((k.value, k.status) == (row.value, row.status) for k in same):
        return "said again"
    return f"“{same[-1].words}” stands instead" if same else "another statement stands instead"


def _unkept(talk: Talk, draft: Draft, kept: Sequence[SpanRow]) -> list[str | None]:
    """The feet of a draft that became no fact: all of a dropped one, else those that another statement overruled."""
    feet: tuple[str | None, ...] = draft.feet or (None,)
    if draft.dropped:
        return list(feet)
    start, value = talk.tokens.starts[draft.start], draft.kept_value()
    mine = [
        row for row in kept
        if (row.slot, row.value, row.status) == (draft.slot, value, draft.status) and row.span[0] <= start < row.span[1]
    ]  # fmt: skip
    if any(row.foot is None for row in mine) or (draft.feet is None and mine):
        return []
    return [foot for foot in feet if foot not in {row.foot for row in mine}]


def _draft_row(transcript: Transcript, talk: Talk, draft: Draft, foot: str | None) -> SpanRow:
    span = _span(talk, draft.start, draft.end)
    return SpanRow(
        words=transcript.text[span[0] : span[1]], span=span, horse=None, foot=foot, slot=draft.slot,
        value=draft.kept_value(), zone=draft.zone, severity=draft.severity, status=draft.status.value, confidence=None,
        match=draft.match.value, rules=tuple(draft.rules),
    )  # fmt: skip


def _taken_back(transcript: Transcript, talk: Talk) -> list[SpanRow]:
    """Words that a repair replaced before they became anything."""
    rows = []
    for new in talk.mentions:
        old = new.stands_for
        if old is None:
            continue
        span, better = _span(talk, old.start, old.end), _span(talk, new.start, new.end)
        shared = [name for name in new.readings if name in old.readings] or list(old.readings)
        rows.append(SpanRow(
            words=transcript.text[span[0] : span[1]], span=span, horse=None, foot=None, slot=shared[0],
            value=old.readings[shared[0]], zone=None, severity=None, status="", confidence=None,
            match=old.match.value, rules=(),
            why=f"taken back for “{transcript.text[better[0] : better[1]]}”",
        ))  # fmt: skip
    return rows


def _span(talk: Talk, start: int, end: int) -> tuple[int, int]:
    return talk.tokens.span(start, end)


def _place(row: SpanRow) -> tuple[int, int]:
    return row.span


# -- what each cue changed ---------------------------------------------------------------------------------------------


def _cue_rows(
    reader: Reader,
    transcript: Transcript,
    roster: Sequence[RosterHorse],
    visits: Sequence[Visit],
    talk: Talk,
    heard: Sequence[Mention],
) -> tuple[CueRow, ...]:
    def row(*cues: _Cue) -> CueRow:
        deaf, _ = _hearing_with(reader, transcript.heard, deaf_to=cues)
        spans = [_span(talk, mention.start, mention.end) for mention, _ in cues]
        words = tuple(transcript.text[start:end] for start, end in spans)
        mention, name = cues[0]
        effects = _effects(visits, deaf.read(transcript, roster, _ANY_DAY))
        return CueRow(words, (spans[0][0], spans[-1][1]), CUE_CLASSES[name], mention.readings[name], effects)

    sentences = {i: s.sentence for s in talk.segments for i in range(s.start, s.end)}
    rows: list[CueRow] = []
    idle: dict[tuple[str, int], list[tuple[_Cue, CueRow]]] = {}
    for cue in ((mention, name) for mention in heard for name in CUE_CLASSES if name in mention.readings):
        alone = row(cue)
        if alone.effects:
            rows.append(alone)
        else:
            idle.setdefault((cue[1], sentences.get(cue[0].start, -1)), []).append((cue, alone))
    for group in idle.values():
        together = row(*(cue for cue, _ in group)) if len(group) > 1 else None
        rows += [together] if together is not None and together.effects else [alone for _, alone in group]
    return tuple(sorted(rows, key=lambda r: r.span))


def _effects(now: Sequence[Visit], without: Sequence[Visit]) -> tuple[Effect, ...]:
    with_cue, left = _said(now), _said(without)
    effects = []
    for key in dict.fromkeys([*with_cue, *left]):
        before, after = with_cue.get(key, []), left.get(key, [])
        gone, come = [s for s in before if s not in after], [s for s in after if s not in before]
        for index in range(max(len(gone), len(come))):
            effects.append(Effect(*key[1:], _at(gone, index), _at(come, index)))
    return tuple(effects)


def _at(said: Sequence[Said], index: int) -> Said | None:
    return said[index] if index < len(said) else None


def _said(visits: Sequence[Visit]) -> dict[FactKey, list[Said]]:
    said: dict[FactKey, list[Said]] = {}
    for visit in visits:
        for fact in visit.facts:
            key = (visit.horse, fact.foot, fact.slot, fact.value)
            said.setdefault(key, []).append((fact.status.value, fact.zone, fact.severity))
    return said
