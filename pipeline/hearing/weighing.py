"""Which wording the sound bears out: the recogniser's own decoder says how probable each is on the same seconds.

Forced decoding (CTranslate2's ``align``) gives the probability of every piece of a given text behind the same encoded
sound. The margin of another wording is the difference of the sums of log probabilities over its own pieces and the few
behind it. Several far-apart wordings are weighed in one go.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from pipeline.hearing.wordings import Proposal

Encode = Callable[[str], list[int]]
# Pieces of several texts in, log probabilities of their pieces out.
Weigh = Callable[[list[list[int]]], list[NDArray[np.float64]]]

_BEHIND = 4  # pieces behind a wording that count with it
_APART = 4  # words between two wordings weighed at once
# Texts weighed for one stretch at most: of 131 right wordings of 80 memos 110 stood in the first three; of those that
# stood only in later ones 21 were right and 43 wrong.
_ROUNDS = 3
MARKS = ".,?!;:"


@dataclass(frozen=True)
class Weighed:
    """A proposal with its margin in nats: above 0 the sound prefers it to what was written."""

    proposal: Proposal
    margin: float


def weigh(
    words: Sequence[str], proposals: Sequence[Proposal], encode: Encode, probabilities: Weigh, most: int = _ROUNDS
) -> list[Weighed]:
    """Margins of the proposals for a stretch of ``words`` (each with its leading space and its marks).

    What does not fit into ``most`` texts is left out.
    """
    rounds = _rounds(proposals, most)
    if not rounds:
        return []
    pieces = [encode(word) for word in words]
    starts = np.cumsum([0, *(len(p) for p in pieces)])
    texts = [[piece for word in pieces for piece in word]]
    places: list[list[tuple[Proposal, int, int]]] = []
    for chosen in rounds:
        text, placed = _spliced(words, pieces, chosen, encode)
        texts.append(text)
        places.append(placed)
    plain, *others = probabilities(texts)
    weighed = []
    for logs, placed in zip(others, places, strict=True):
        for proposal, start, end in placed:
            first, last = int(starts[proposal.first]), int(starts[proposal.last])
            margin = logs[start : end + _BEHIND].sum() - plain[first : last + _BEHIND].sum()
            weighed.append(Weighed(proposal, round(float(margin), 2)))
    return weighed


def _rounds(proposals: Sequence[Proposal], most: int) -> list[list[Proposal]]:
    """Proposals dealt into texts so that in each they stand well apart; the most alike come first."""
    rounds: list[list[Proposal]] = []
    for proposal in proposals:
        apart = (r for r in rounds if all(_apart(proposal, other) for other in r))
        home = next(apart, None)
        if home is not None:
            home.append(proposal)
        elif len(rounds) < most:
            rounds.append([proposal])
    return [sorted(chosen, key=lambda p: p.first) for chosen in rounds]


def _apart(one: Proposal, other: Proposal) -> bool:
    return one.first >= other.last + _APART or other.first >= one.last + _APART


def _spliced(
    words: Sequence[str], pieces: Sequence[list[int]], chosen: Sequence[Proposal], encode: Encode
) -> tuple[list[int], list[tuple[Proposal, int, int]]]:
    """The pieces of the text with the proposals in it, up to what counts, and where each stands."""
    text: list[int] = []
    placed = []
    at = 0
    for proposal in chosen:
        text += [piece for word in pieces[at : proposal.first] for piece in word]
        start = len(text)
        text += encode(written(words, proposal))
        placed.append((proposal, start, len(text)))
        at = proposal.last
    behind = [piece for word in pieces[at : at + _BEHIND] for piece in word]
    return text + behind[:_BEHIND], placed


def written(words: Sequence[str], proposal: Proposal) -> str:
    """The proposal as the recogniser would write it there: with the space, the capital and the mark of the words."""
    first, last = words[proposal.first], words[proposal.last - 1].rstrip()
    mark = last[len(last.rstrip(MARKS)) :]
    capital = first.strip()[:1].isupper()
    wording = proposal.wording[:1].upper() + proposal.wording[1:] if capital else proposal.wording
    return f"{' ' if first[:1].isspace() else ''}{wording}{mark}"
