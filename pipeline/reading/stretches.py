"""A memo in stretches between its marks and joiners, as they are looked at before anything is cut into segments."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import pairwise

from pipeline.reading.mentions import Mention
from pipeline.reading.once import Once
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS

MARKS = frozenset({",", *SENTENCE_ENDS})
CUTS = MARKS | {";", ":", "and", "but", "so", "then", "though", "because"}
FILLERS = frozenset({"uh", "um", "er", "erm", "eh", "oh", "well"})
TOLD = frozenset({
    "findings", "work", "shoe_types", "shoe_materials", "pads", "packings", "treatments", "clips", "traction",
    "gaits", "manners", "shoe_states", "vet", "pulses", "tester_responses", "nail_lines", "number", "warmths",
})  # fmt: skip
WAITING_HEADS = frozenset({"measures", "tester_heads", "pulse_heads", "nail_line_heads"})
_BEGUN = TOLD | WAITING_HEADS | {"feet"}
SAID = TOLD - {"number"}
JOINING = frozenset({
    "and", "but", "so", "which", "who", "when", "where", "then", "though", "because", "except", "while", "if", "or",
    "what", "as", "that", "it", "they",
})  # fmt: skip
_WAITING = frozenset({
    "while", "when", "if", "since", "as", "before", "after", "once", "because", "though", "where", "what", "which",
    "who",
})  # fmt: skip
_VERBS = frozenset({"past", "present", "action"})
_GETS = frozenset({"gets", "get", "goes", "go", "takes", "take"})
_GOT = frozenset({"a", "an", "the", "in", "into", "new", "his", "her", "back"})
_BESIDE_FEET = frozenset({"the", "on", "in", "and", "both"})
_A_CLAUSE = 3  # tokens that a subject needs more than to be one
_BESIDE_A_TIME = frozenset({"a", "an", "couple", "few", "of", "about", "around", "some", "and", "but", "so"})


class Stretch:
    """The tokens ``[start, end)``, what they do in their clause, and the mentions that start among them.

    ``classes`` are the classes of these mentions, with "number" where one is a number; ``cues`` every class with its
    canonical name; ``opening`` the classes of those that open the stretch.
    """

    def __init__(self, talk: Talk, starting: dict[int, list[Mention]], start: int, end: int) -> None:
        """Hold the words, and what starts among them, as they stand now; the rest is looked up when a rule asks."""
        self.start, self.end = start, end
        self.words = talk.words[start:end]
        self.mentions = [m for i in range(start, end) if i in starting for m in starting[i] if not m.dropped]
        self.classes = classes_of(self.mentions)
        self._talk, self._starting = talk, starting

    @Once
    def roles(self) -> list[str | None]:
        """What each word does in its clause."""
        return self._talk.roles[self.start : self.end]

    @Once
    def cues(self) -> set[tuple[str, str]]:
        """Every class of its mentions with the canonical name."""
        return {pair for m in self.mentions for pair in m.readings.items()}

    @Once
    def opening(self) -> set[str]:
        """The classes of the mentions that open it."""
        said = self.start < self.end and self.start in self._starting
        return classes_of(self._starting[self.start]) if said else set()

    def has(self, names: Iterable[str]) -> bool:
        """Whether it has a mention of one of the classes."""
        return not self.classes.isdisjoint(names)

    def opens_with(self, *names: str) -> bool:
        """Whether its first word is of one of the classes."""
        return not self.opening.isdisjoint(names)

    def verb(self) -> bool:
        """Whether it has a verb."""
        return not _VERBS.isdisjoint(self.roles) or "'ll" in self.words

    def clause(self) -> bool:
        """Whether it is a clause on its own: "I'll watch it"; not what waits for more ("while I was there")."""
        spoken = self.verb() or ("subject" in self.roles and len(self.words) > _A_CLAUSE)
        return spoken and self.words[0] not in _WAITING

    def feet(self) -> list[Mention]:
        """The feet that it names; not "that foot", which only points at one."""
        if "feet" not in self.classes:
            return []
        return [m for m in self.mentions if m.get("feet") and not m.readings["feet"].endswith("in_hand")]

    def closes(self) -> bool:
        """Whether its sentence ends with it."""
        return SENTENCE_ENDS.issuperset(self._talk.words[self.end : self.end + 1])

    def only_feet(self) -> bool:
        """Whether it is nothing but the name of a foot: "the left hind"."""
        if "feet" not in self.classes:
            return False
        named = {i for m in self.mentions if m.get("feet") for i in range(m.start, m.end)}
        return bool(named) and all(i in named or w in _BESIDE_FEET for i, w in enumerate(self.words, self.start))

    def only_a_time(self) -> bool:
        """Whether it is nothing but a time of before: "three weeks ago", "last go round"."""
        if ("times", "history") not in self.cues and ("times", "recent") not in self.cues:
            return False
        named = {i for m in self.mentions if m.get("times") or m.number is not None for i in range(m.start, m.end)}
        return all(i in named or w in _BESIDE_A_TIME for i, w in enumerate(self.words, self.start))

    def conditional(self) -> bool:
        """Whether it is a condition without its main clause: "if he's sore, …", "plan: if he's sore, …"."""
        if "plans" not in self.classes or ("plans", "condition") not in self.cues:
            return False
        cues = [m for m in self.mentions if m.get("plans") == "condition"]
        ahead = self.words[: cues[0].start - self.start] if cues else []
        headed = max((i + 1 for i, word in enumerate(ahead) if word == ":"), default=0)
        if not cues or not set(ahead[headed:]) <= JOINING | FILLERS:
            return False
        if any(m.start >= cues[-1].end and m.get("plans") in ("main", "before") for m in self.mentions):
            return False
        behind = self.words[cues[-1].end + 1 - self.start :]  # "once it's dry she gets a new shoe"
        return not any(one in _GETS and other in _GOT for one, other in pairwise(behind))


def next_mark(talk: Talk, at: int, marks: frozenset[str] = MARKS) -> int:
    """The next of the marks from the token on, or the end."""
    words = talk.words
    return next((i for i in range(at, len(words)) if words[i] in marks), len(words))


def classes_of(mentions: Iterable[Mention]) -> set[str]:
    """The classes that the mentions may belong to, and "number"."""
    classes: set[str] = set()
    for mention in mentions:
        if not mention.dropped:
            classes.update(mention.readings)
            if mention.number is not None:
                classes.add("number")
    return classes


@dataclass
class Statement:
    """What was said since the last seam: its stretches, and the classes of their words.

    ``foot_first`` says that a foot opened its sentence: the feet then stand before what is told of them.
    ``horses`` counts the names that stand before anything is told, ``headed`` says that it has a colon.
    """

    classes: set[str] = field(default_factory=set)
    stretches: list[Stretch] = field(default_factory=list)
    foot_first: bool | None = None
    headed: bool = False
    horses: int = 0

    def add(self, stretch: Stretch) -> None:
        """Take in the next stretch."""
        if "horse" in stretch.classes and not self.has(TOLD):
            self.horses += sum("horse" in m.readings for m in stretch.mentions)
        self.classes |= stretch.classes
        self.stretches.append(stretch)
        self.headed = self.headed or ":" in stretch.words
        if self.foot_first is None and stretch.has(_BEGUN):
            self.foot_first = stretch.opens_with("feet")

    @property
    def cues(self) -> set[tuple[str, str]]:
        """The classes of its words with their canonical names, which few rules ask for."""
        return {pair for stretch in self.stretches for pair in stretch.cues}

    def has(self, names: Iterable[str]) -> bool:
        """Whether it has a mention of one of the classes."""
        return not self.classes.isdisjoint(names)

    def of_several(self) -> bool:
        """Whether several horses open it: what follows may be said of all of them."""
        return self.horses > 1


@dataclass
class Seam:
    """A comma: the statement so far, its last stretch, the stretch behind, and the one behind that (or nothing)."""

    before: Statement
    near: Stretch
    behind: Stretch
    after: Stretch

    def planned(self) -> bool:
        """Whether what was told last belongs to a plan, which a list of shoeing may go on."""
        cues = {kind for name, kind in self.before.cues if name == "plans"}
        listed = self.near.has(
            ("shoe_types", "shoe_materials", "pads", "packings", "clips", "traction", "work", "number")
        )
        return ("condition" in cues and not cues & {"main", "before"}) or (
            listed and bool(cues & {"condition", "main", "before"})
        )
