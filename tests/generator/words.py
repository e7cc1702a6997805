"""The trade's spoken forms, handed out in rounds so that each is said before any is said twice."""

from __future__ import annotations

from random import Random

from pipeline.vocabulary import Vocabulary

Form = tuple[str, str, str]
"""Class of word, canonical name, spoken form."""

# Classes that no fragment of its own can carry: joints of the sentence, the recogniser's prompt, whole asides.
UNEXERCISED = frozenset(
    {"remarks", "asides", "bias", "clause_words", "numbers", "plans", "fillers", "horse_cues", "wishes"}
)

# Forms that make no sense, or another sense, in the frame of their class.
_UNFIT: dict[str, frozenset[str]] = {
    "denials": frozenset(
        {
            "n't",
            "nor",
            "neither",
            "neither a",
            "never",
            "not any",
            "denies",
            "nothing of",
            "not",
            "no longer",
            "found neither",
            "neither was there",
            "there was neither",
        }
    ),
    "feet": frozenset({"none of the four", "none of the feet"}),
    "same": frozenset(
        {
            "one in",
            "one on",
            "another one in",
            "another in",
            "another one on",
            "another on",
            "old one in",
            "another one",
            "there's one in",
            "got one in",
            "has one in",
            "and all",
            "same on",
            "to match",
            "identical",
            "matching",
        }
    ),
    "taking_back": frozenset(
        {"wrong foot", "put her down as", "put him down as", "more than that", "not that", "rather"}
    ),
    "pads": frozenset({"degree pad", "degree pads"}),
    # Wanted is not done; without a word of its loss a shoe put on again was reset; "off on" waits for the foot.
    "treatments": frozenset(
        f"{want} {done}" for want in ("need", "needs", "want", "wants") for done in ("poulticing", "soaking")
    ),
    "work": frozenset(
        {
            "same shoe back",
            "same shoe back on",
            "same shoe went back on",
            "set it back on",
            "set the same one back",
            "set the same one back on",
            "set the same shoe back",
            "set the same shoe back on",
        }
    ),
    "gaits": frozenset({"'s off on", "is off on", "was off on"}),
}
_UNFIT_CANONICAL = {
    "denials": frozenset({"pseudo"}),
    "doubts": frozenset({"pseudo", "sought"}),
    "feet": frozenset({"other_two"}),
    "times": frozenset({"neutral", "recent"}),
    "taking_back": frozenset({"other_horse", "about", "strike_object"}),
    "measures": frozenset({"nails", "slim", "grade", "shoe_size", "nail_size"}),
    "units": frozenset({"day"}),
}


class Sweep:
    """Every fit spoken form of the vocabulary in a shuffled order, round after round."""

    def __init__(self, vocabulary: Vocabulary, chance: Random) -> None:
        self._forms = tuple(fit_forms(vocabulary))
        self._chance = chance
        self._queue: list[Form] = []

    @property
    def size(self) -> int:
        """How many forms one round has."""
        return len(self._forms)

    def draw(self) -> Form:
        """The next form of the round."""
        if not self._queue:
            self._queue = list(self._forms)
            self._chance.shuffle(self._queue)
        return self._queue.pop()

    def give_back(self, form: Form) -> None:
        """Return a form that found no place; it comes up again soon."""
        self._queue.insert(len(self._queue) - min(len(self._queue), self._chance.randrange(1, 60)), form)


def fit_forms(vocabulary: Vocabulary) -> list[Form]:
    """The spoken forms that the fragments of ``fragments`` can say, by class and line."""
    forms: list[Form] = []
    for name in sorted(set(vocabulary.classes) - UNEXERCISED):
        for entry in vocabulary.entries(name):
            if entry.canonical in _UNFIT_CANONICAL.get(name, ()):
                continue
            forms.extend((name, entry.canonical, form) for form in entry.spoken if _fits(name, form))
    return list(dict.fromkeys(forms))


def _fits(name: str, form: str) -> bool:
    """Whether the form says in its frame what it is there for; "neither front" says that nothing is."""
    return form not in _UNFIT.get(name, ()) and not (name == "feet" and form.split()[0] == "neither")
