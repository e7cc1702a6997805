"""The recogniser's word pieces, mended where a copy of its weights lost a merge.

The base weights come with a tokenizer whose first merge ("Ġ t", a space and a "t") is missing, so that every word that
begins with a "t" — the, toe, thrush, three — falls into pieces that the recogniser was never taught. What it writes is
not touched by that, but what it is told to expect is, and so is every wording that is weighed against the sound.
"""

from __future__ import annotations

import json
from typing import Any

from tokenizers import Tokenizer

_PAIR = 2
_BYTES = 256  # byte-level pieces come first; each merge then makes the piece whose number is 256 plus its rank


def mended(tokenizer: Tokenizer) -> Tokenizer:
    """The same tokenizer with the two-character merges that its vocabulary needs and its list lacks."""
    description: dict[str, Any] = json.loads(tokenizer.to_str())
    model = description["model"]
    if model.get("type") != "BPE":
        return tokenizer
    pairs = [tuple(m.split(" ")) if isinstance(m, str) else tuple(m) for m in model["merges"]]
    made = {"".join(pair) for pair in pairs}
    lost = [
        (number - _BYTES, piece)
        for piece, number in model["vocab"].items()
        if number >= _BYTES and len(piece) == _PAIR and piece not in made
    ]
    if not lost:
        return tokenizer
    for rank, piece in sorted(lost):
        pairs.insert(rank, (piece[0], piece[1]))
    model["merges"] = [list(pair) for pair in pairs]
    return Tokenizer.from_str(json.dumps(description))
