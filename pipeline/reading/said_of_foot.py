"""A foot that was said wrongly: "I said left front for that crack, it's the right"; "was it the near, no, the off".

Or written wrongly: "I had it down as the left hind in the book. It's the right", "they'd the off marked, that's wrong".
"""

from __future__ import annotations

from dataclasses import dataclass

from pipeline.reading.bare_sides import SIDES
from pipeline.reading.mentions import Mention
from pipeline.reading.other_side import ENDS
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.reading.turned_round import BEFORE_SWAP, CUE_WORDS, MIRRORED
from pipeline.record import FEET

_VERBS = (
    "said", "put", "called", "wrote", "told you", "'ve said", "'ve put", "'ve called", "have said", "had", "'d",
    "marked",
)  # fmt: skip
_IT = (" that was", " it was", " that", " it", " was", "")
# Behind these the right foot may stand alone: "did I say left? Right".
_BARELY = ("did i say", "when i say", "keep saying", "scratch", "forget")
_I_SAID = Sayings(*(f"i {verb}{it}" for verb in _VERBS for it in _IT), *_BARELY)
_SHOULD_BE = Sayings(
    "should have said", "should 've said", "that should have been", "that should 've been", "all that was the",
    "all of that was the",
)  # fmt: skip
_OTHER = Sayings(
    *(f"{other} {one}" for other in ("other", "opposite") for one in ("one", "foot", "side", "leg", "left", "right"))
)
_SORRY = CUE_WORDS | {"mean", "rather", "my", "mistake", "say"}
_ASKED = Sayings("or was it", "or is it", "was it", "is it", "or was that", "or did i say")
_MEANT = Sayings(
    "it 's", "it was", "it is", "that 's", "i meant", "i mean", "should be", "should have been", "should 've been",
    "make that", "it should be", "that should be", "meant to be", "is", "it 's actually", "it 's really", "make it",
)  # fmt: skip
_MEANT_BEHIND = Sayings(
    "i meant", "i mean", "i should say", "i should have said", "i was holding", "i had in my hand", "i had hold of",
)  # fmt: skip
_SURE = frozenset({"no", "nah", "sorry", "actually", "lie", "oops"})
_BEING = frozenset({"'s", "was", "is"})
_FAR = 3  # stops back
_ONE = frozenset({"foot", "one", "side", "leg"})
_THE = frozenset({"the", "his", "her", "in", "on", "as"})
_FOR = frozenset({"for", "on", "with", "about", "has", "had"})
_PAUSES = frozenset(
    {",", ".", "?", "but", "no", "nah", "nope", "sorry", "well", "wait", "actually", "and", "oh", "now"}
)
_LIE = frozenset({"i", "tell", "a", "lie", "it", "was", "'s", "the", "that", "hang", "hold", "on", "tis"})
_LEADING = _PAUSES | _LIE | _SURE
_ABOUT = 5  # tokens of "for that toe crack"
_RECORDED = frozenset({"marked", "down", "written", "listed", "entered", "booked"})
_WRITTEN = _RECORDED | {"wrote", "says", "said", "put", "has"}
_PAPERS = frozenset({"board", "card", "sheet", "book", "list", "diary", "notes", "chart", "message", "text"})
_LEADS_TO_IT = frozenset({"as", "said", "says", "wrote", "had", "has", "have", "'d", "marked", "put"})
_WRONG = Sayings(
    *(f"{it} {is_} {wrong}" for it in ("that", "which", "it") for is_ in ("'s", "is", "was")
      for wrong in ("wrong", "not right", "a mistake", "n't right")),
    "wrong", "wrongly", "by mistake", "in error",
)  # fmt: skip
_TOLD_OF = frozenset({"findings", "number", "pads", "shoe_types", "work", "shoe_states", "tester_heads", "pulse_heads"})
_CLOSING: tuple[list[str], ...] = ([","], ["."], ["?"], ["and"], ["that"], [], ["yeah"], ["yes"])


@dataclass(frozen=True)
class _Foot:
    """A foot as it is named, side and end; ``stop`` is the token behind it."""

    side: str
    end: str | None
    stop: int


def foot_said_before(talk: Talk) -> None:
    """Exchange, on the mentions, the foot that the speaker says to have named wrongly."""
    for at, form in talk.turns(_I_SAID):
        if at:
            _said(talk, at, at + len(form))
    for at, form in talk.turns(_SHOULD_BE):
        _should_be(talk, at, at + len(form))
    for at, form in talk.turns(_OTHER):
        _other(talk, at, at + len(form))
    for at, form in talk.turns(_ASKED):
        if at and talk.words[at - 1] in (",", "and", "wait", *SENTENCE_ENDS):
            _asked(talk, at, at + len(form))
    if talk.says(_WRITTEN) and (talk.says(_PAPERS) or talk.says(_RECORDED)):
        for foot in [m for m in talk.having("feet") if m.start]:
            _written(talk, foot)
    if talk.says(_SURE) or talk.tells(_MEANT_BEHIND):
        for start in [i + 1 for i, word in enumerate(talk.words) if word in SENTENCE_ENDS]:
            _late(talk, start)


def _foot_at(talk: Talk, at: int) -> _Foot | None:
    while at < len(talk.words) and talk.words[at] in _THE:
        at += 1
    named = talk.mention_starting(at)
    if named is not None and named.get("feet") in FEET:
        return _Foot(named.readings["feet"][0], named.readings["feet"][1], named.end)
    if at >= len(talk.words) or talk.words[at] not in SIDES:
        return None
    behind = talk.words[at + 1] if at + 1 < len(talk.words) else ""
    stop = at + 1 + (behind in ENDS or behind in _ONE)
    return _Foot(SIDES[talk.words[at]], ENDS.get(behind), stop)


def _said(talk: Talk, cue: int, at: int) -> None:
    """ "I said left front for that crack, it's the right"; "I said the crack was the left front, …"."""
    named = at + (talk.words[at : at + 1] == ["the"])
    told = talk.mention_starting(named)
    if told is not None and told.get("findings") and talk.words[told.end : told.end + 1] == ["was"]:
        at = told.end + 1
    wrong = _foot_at(talk, at)
    if talk.words[cue - 1] in ("n't", "not", "to"):
        return  # "don't forget left front, right front"
    if wrong is None:
        if talk.words[at : at + 1] == ["?"]:
            _should_be(talk, cue, at + 1)  # "thrush in the off hind, did I say? Near hind"
        return
    stop, about = wrong.stop, set[str]()
    if talk.words[stop : stop + 1] != [] and talk.words[stop] in _FOR:
        end = stop + 1
        while (
            end < min(len(talk.words), stop + _ABOUT)
            and talk.words[end] not in _PAUSES
            and not _MEANT.at(talk.words, end)
        ):
            end += 1
        about, stop = set(talk.words[stop + 1 : end]) - _THE, end
    stop = _past_pauses(talk.words, stop)
    lead = _MEANT.at(talk.words, stop)
    barely = stop > wrong.stop and talk.words[cue] != "i"
    right = _foot_at(talk, stop + len(lead)) if lead or barely else None
    if right is None or talk.words[right.stop : right.stop + 1] not in _CLOSING:
        return
    for old in _named(talk, cue, wrong, about):
        old.readings["feet"] = right.side + (right.end or old.readings["feet"][1])
        _drop(talk, cue, right.stop)


def _written(talk: Talk, foot: Mention) -> None:
    """ "I had his thrush down as the left hind in the book. It's the right hind", "they had the off marked, wrong"."""
    words = talk.words
    led = foot.start - (words[foot.start - 1] in _THE - {"as"})
    stop = next((i for i in range(foot.end, len(words)) if words[i] in _PAUSES), len(words))
    clause = {*words[next((i for i in range(led, 0, -1) if words[i - 1] in (",", *SENTENCE_ENDS)), 0) : stop]}
    on_paper = not _PAPERS.isdisjoint(clause) or (words[led - 1] == "as" and not _RECORDED.isdisjoint(clause))
    if not on_paper or _WRITTEN.isdisjoint(clause) or words[led - 1] not in _LEADS_TO_IT:
        return
    if any(foot.end <= m.start < stop for m in talk.mentions if _TOLD_OF & m.readings.keys()):
        return  # "they had the near fore down as a corn, and that's wrong": the corn is
    stop = _past_pauses(words, stop)
    if wrong := _WRONG.at(words, stop):
        foot.dropped = True
        stop = _past_pauses(words, stop + len(wrong))
    lead = _MEANT.at(words, stop)
    right = _foot_at(talk, stop + len(lead)) if lead else None
    true = right is not None and words[stop + len(lead) : right.stop] == ["right"]  # "… and it's right"
    if right is None or true or words[right.stop : right.stop + 1] not in _CLOSING:
        return
    foot.readings["feet"] = right.side + (right.end or str(foot.readings["feet"])[-1])
    foot.dropped = False
    _drop(talk, stop, right.stop)


def _past_pauses(words: list[str], at: int) -> int:
    return next((i for i in range(at, len(words)) if words[i] not in _PAUSES), len(words))


def _asked(talk: Talk, cue: int, at: int) -> None:
    """ "Cast the near fore, was it the near, no, tell a lie, the off"."""
    asked = _foot_at(talk, at)
    if asked is None or talk.words[asked.stop : asked.stop + 1] not in ([","], ["?"], ["."]):
        return
    stop = asked.stop
    while stop < len(talk.words) and talk.words[stop] in _PAUSES | _LIE:
        stop += 1
    answer = _foot_at(talk, stop)
    if answer is None or talk.words[answer.stop : answer.stop + 1] not in _CLOSING:
        return
    for old in _last_foot(talk, cue):
        end = answer.end or asked.end or old.readings["feet"][1]
        old.readings["feet"] = answer.side + end
        for cue_word in [m for m in talk.having("taking_back") if old.end <= m.start < cue]:
            cue_word.dropped = True
        _drop(talk, cue, answer.stop)


def _should_be(talk: Talk, cue: int, at: int) -> None:
    """ "Corn, left front. I should have said right", "all that was the near hind"."""
    right = _foot_at(talk, at + len(_MEANT.at(talk.words, at)))
    if right is None or talk.words[right.stop : right.stop + 1] not in (*_CLOSING, ["it"]):
        return
    if talk.words[at - 1] == "?":
        talk.words[at - 1] = ","  # nothing else was asked
    for old in _last_foot(talk, cue):
        old.readings["feet"] = right.side + (right.end or old.readings["feet"][1])
        _drop(talk, cue, right.stop)


def _late(talk: Talk, start: int) -> None:
    """ "Corn in the near fore. Dug it out. No, it was the off I had in my hand.", "that's the off fore I meant"."""
    at = start
    while at < len(talk.words) and talk.words[at] in _LEADING:
        at += 1
    right = _foot_at(talk, at)
    if right is None:
        return
    said = talk.words[start:at]
    meant = _MEANT_BEHIND.at(talk.words, right.stop)
    stop = right.stop + len(meant)
    led = not _BEING.isdisjoint(said)
    rest = led and talk.words[stop : stop + 2] == [",", "the"] and talk.words[stop + 2 : stop + 3] != ["one"]
    # "…, the off was grand"; not "…, the one with the crack"
    closed = rest or talk.words[stop : stop + 1] in ([], ["."])
    for old in _last_foot(talk, start, _FAR) if closed and talk.words[start - 1] != "?" else ():
        near = not SENTENCE_ENDS & set(talk.words[old.end : start - 1])  # left to the repairs
        foot = right.side + (right.end or old.readings["feet"][1])
        alike = MIRRORED[foot] == old.readings["feet"]
        if meant or (alike and not near and not _SURE.isdisjoint(said)):
            old.readings["feet"] = foot
            _drop(talk, start, stop)


def _other(talk: Talk, start: int, stop: int) -> None:
    """ "Corn in the near fore. No, other one.", "opposite foot, sorry": alone, said to put right."""
    sure = talk.words[stop - 1] in SIDES
    if start and talk.words[start - 1] == "no" and not sure and talk.words[stop - 1] != "one":
        return  # "Thrush in the near fore. No other foot."
    while start and talk.words[start - 1] in BEFORE_SWAP | _SORRY:
        start -= 1
        sure = sure or talk.words[start] in _SORRY
    while talk.words[stop : stop + 1] and talk.words[stop] in {",", "i"} | _SORRY:
        sure = sure or talk.words[stop] in _SORRY
        stop += 1
    opens = not start or talk.words[start - 1] in SENTENCE_ENDS
    if not (sure and opens and talk.words[stop : stop + 1] in _CLOSING):
        return
    for old in _last_foot(talk, start):
        old.readings["feet"] = MIRRORED[old.readings["feet"]]
        _drop(talk, start, stop)


def _drop(talk: Talk, start: int, stop: int) -> None:
    for mention in talk.mentions:
        mention.dropped = mention.dropped or start <= mention.start < stop


def _named(talk: Talk, before: int, wrong: _Foot, about: set[str]) -> list[Mention]:
    """The foot named before: that of the finding, if one is told, else the last of that name in a row."""
    whose = _whose(talk, before)  # "back to Tally, I said left front on that crack": what was told of her before
    feet = [m for m in talk.having("feet") if m.start < before and m.readings["feet"] in FEET]
    feet = [m for m in feet if _whose(talk, m.start) == whose]
    if about:
        found = [m for m in talk.having("findings") if m.start < before]
        same = [m for m in found if about & set(talk.words[m.start : m.end])]
        sentence = [m for m in feet if same and not SENTENCE_ENDS & set(_between(talk, m, same[-1]))]
        feet = sentence or feet
    named = [m for m in feet if m.readings["feet"] == wrong.side + (wrong.end or m.readings["feet"][1])]
    return named[-1:]


def _whose(talk: Talk, at: int) -> str | None:
    return next((m.get("horse") for m in reversed(talk.having("horse")) if m.start < at), None)


def _between(talk: Talk, one: Mention, other: Mention) -> list[str]:
    return talk.words[min(one.end, other.end) : max(one.start, other.start)]


def _last_foot(talk: Talk, before: int, far: int = 1) -> list[Mention]:
    """The foot named last, at most so many stops back, as often as in a row."""
    named = [m for m in talk.mentions if m.end <= before and not m.dropped and (m.get("feet") or m.get("horse"))]
    named = [m for m in named if m.get("feet") != "in_hand"]
    if not named or named[-1].get("feet") not in FEET:
        return []
    stops = sum(word in SENTENCE_ENDS for word in talk.words[named[-1].end : before])
    first = next((i for i in range(len(named), 0, -1) if named[i - 1].get("feet") != named[-1].get("feet")), 0)
    return named[first:] if stops <= far else []
