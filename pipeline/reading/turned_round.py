"""Sides and pairs put right as a whole: "wait, I'm turned around. It's the left hind"; "swap those"; "not both".

Carried out on the mentions before the other repairs, which look for their correction right behind the cue.
"""

from __future__ import annotations

from pipeline.reading.exchanges import kind_of, sentence_end
from pipeline.reading.mentions import Mention
from pipeline.reading.sayings import Sayings
from pipeline.reading.talk import Talk, grouped
from pipeline.reading.tokens import SENTENCE_ENDS
from pipeline.record import FEET
from pipeline.vocabulary import CLASS_SLOTS

# What says that left and right were taken for each other.
_TURNED = Sayings(
    "turned around", "turned round", "facing me", "facing him", "facing her", "backwards", "back to front",
    "wrong side", "wrong foot", "wrong leg", "wrong one", "wrong way round", "wrong way around", "wrong way about",
    "my left", "my right", "other way round", "other way around", "other way about", "mixed up", "mirror image",
    "the other side of him", "the other side of her", "under the other side", "round the other side",
    "sides crossed",
)  # fmt: skip
CUE_WORDS = frozenset({"wait", "no", "sorry", "hang", "hold", "oh", "actually", "whoops", "oops", "scratch", "nah"})
_LEADS = (
    ["it", "'s"], ["it", "was"], ["it", "is"], ["that", "'s"], ["that", "was"], ["that", "is"], ["this", "is"],
    ["make", "that"], ["make", "it"], ["should", "be"], ["so"], ["so", "it", "'s"], ["so", "that", "'s"], ["meaning"],
    ["which", "is"], ["which", "makes", "it"], ["we", "'re", "on"], ["i", "mean"], ["call", "it"], ["no", ","],
)  # fmt: skip
_LEADS_BY_END = grouped((words[-1], words) for words in _LEADS)
_TOLD = frozenset({*CLASS_SLOTS, "feet", "measures", "horse"})
_OWNED = frozenset({"the", "his", "her"})
_TALK_BACK = 3  # sentences from the foot that was wrong to the word that says so
_CHAT = 2  # sentences that may explain the mistake before the right foot is named
_SWAPS = frozenset({"swap", "switch", "flip", "reverse", "flipped", "switched", "swapped", "reversed"})
_SWAPPED = frozenset({"those", "them", "that", "these", "'em"})
_ROUND = frozenset({"round", "around", "over", "about"})
_OTHER_WAY = Sayings(
    "the other way around", "the other way round", "the other way about", "other way around", "other way round",
    "other way about", "the wrong way around", "the wrong way round", "the wrong way about", "backwards",
    "the other way on", "other way on", "the other way", "other way", "back to front", "the reverse", "vice versa",
    "arseways", "arse about face", "arse about", "ass backwards",
    *(f"{them} {crossed}" for them in ("those", "them", "that", "these", "'em")
      for crossed in ("mixed up", "muddled up", "switched", "crossed", "flipped", "swapped", "swapped round")),
)  # fmt: skip
_NOT_SO = Sayings(
    *(
        f"no {mark}{said}"
        for mark in ("", ", ")
        for said in ("it is n't", "it 's not", "it was n't", "that 's right", "that was right", "i had it right",
                     "i was right", "it was right", "i 'd it right", "they 're right", "they were right")
    )
)  # fmt: skip
_SWAPPING = _OTHER_WAY.first_words | _SWAPS
BEFORE_SWAP = frozenset(
    {",", "no", "wait", "sorry", "it", "'s", "that", "i", "'ve", "got", "had", "have", "those", "them", "or", "well"}
    | {"hang", "hold", "on", "actually", "they", "'re", "is", "was", "should", "be", "oh", "uh", "said", "and", "just"}
    | {
        "these", "the", "two", "both", "'d", "were", "are", "er", "um", "erm", "ah", "a", "minute", "second", "sec",
        "yeah",
    }
    | {
        "moment", "now", "let", "me", "think", "scratch", "strike", "forget", "nah", "hmm", "shoot", "dang", "it",
        "damn", "well", "i", "you", "know", "what",
    }
)  # fmt: skip
MIRRORED = {"LF": "RF", "RF": "LF", "LH": "RH", "RH": "LH", "bare_L": "bare_R", "bare_R": "bare_L"}
_SINGLE = frozenset(MIRRORED)
_WENT = frozenset({"gone", "went", "goes", "going", "go", "grows", "grown", "leans", "leaning"})  # "gone the other way"
_TWO = 2
_BOTH = frozenset({"both"})
_NOT_BOTH = frozenset({",", "just", "only", "it", "'s", "the", "that", "is", "was", "his", "her", "on", "in", "no"})


def turn_round(talk: Talk) -> None:
    """Put right, on the mentions, feet and pairs that were told the wrong way round."""
    _put_foot_right(talk)
    _swap_pairs(talk)
    _not_both(talk)


def _starts(talk: Talk) -> list[int]:
    """The first tokens of the sentences."""
    return [0] + [i + 1 for i, word in enumerate(talk.words) if word in SENTENCE_ENDS]


def _put_foot_right(talk: Talk) -> None:
    """ "Toe crack in the right hind. Wait, I'm turned around, she was facing me. It's the left hind."."""
    for foot in [m for m in talk.having("feet") if m.readings["feet"] in _SINGLE]:
        chat, lead = _explained(talk, foot)
        if chat is None:
            continue
        wrong = _wrong_foot(talk, chat, str(foot.get("feet")))
        if not wrong:
            continue
        side, end = foot.readings["feet"].removeprefix("bare_")[0], wrong[-1].readings["feet"][1]
        right = foot.readings["feet"] if foot.readings["feet"] in FEET else side + end
        for mention in wrong:
            mention.readings["feet"] = right
        for mention in [m for m in talk.mentions if chat <= m.start < lead or m is foot]:
            mention.dropped = True


def _explained(talk: Talk, foot: Mention) -> tuple[int | None, int]:
    """Where the talk about the mistake begins, and where the lead to the right foot begins; None when there is none."""
    at = foot.start - (foot.start > 0 and talk.words[foot.start - 1] in _OWNED)
    leads = _LEADS_BY_END.get(talk.words[at - 1], ())
    lead = max((w for w in leads if talk.words[at - len(w) : at] == w), key=len, default=[])
    begin = at - len(lead)
    if not lead and not talk.tells(_TURNED):
        return None, begin
    after = talk.words[foot.end] if foot.end < len(talk.words) else "."
    stop = after in SENTENCE_ENDS or (bool(lead) and after in (",", "and"))
    if not stop or (begin and talk.words[begin - 1] not in (",", *SENTENCE_ENDS)):
        return None, begin
    opening = [s for s in _starts(talk) if s <= begin][-_CHAT - 1 :]
    for chat in [*_clauses(talk, opening[-1], begin), *reversed(opening)]:
        said = talk.words[chat:begin]
        turned = any(_turned_at(talk, i) for i in range(chat, begin))
        led = bool(lead) and bool(said) and said[0] in CUE_WORDS and said[-1] in SENTENCE_ENDS
        if said and (turned or led) and not _told(talk, chat, begin):
            return chat, begin
    return None, begin


def _clauses(talk: Talk, start: int, end: int) -> list[int]:
    """The clauses of a sentence, the last first: "corn in the right front, and that was my right, so his left"."""
    return [i + 1 for i in range(end - 2, start, -1) if talk.words[i] == ","]


def _told(talk: Talk, start: int, end: int) -> bool:
    """Whether anything of the trade is said there, the words of having turned round aside."""
    mine = {at for i in range(start, end) for at in _turned_at(talk, i)}
    told = [m for m in talk.mentions if start <= m.start < end and not m.dropped and not mine & set(m.literal)]
    return any(m.is_any(_TOLD) or m.number for m in told)


def _turned_at(talk: Talk, at: int) -> range:
    """The tokens of "my left", "the other side of him" at this token; none where nothing of the kind stands."""
    return range(at, at + len(_TURNED.at(talk.words, at)))


def _wrong_foot(talk: Talk, chat: int, right: str) -> list[Mention]:
    """The foot that was named last before the mistake was noticed, as often as it was named in a row."""
    reach = [s for s in _starts(talk) if s < chat][-_TALK_BACK:]
    named = [m for m in talk.mentions if reach and reach[0] <= m.start < chat and not m.dropped]
    since = max((m.end for m in named if m.get("horse")), default=0)
    feet = [m for m in named if m.get("feet") and m.start >= since]
    if not feet or feet[-1].get("feet") not in FEET or feet[-1].get("feet") == right:
        return []
    first = next((i for i in range(len(feet), 0, -1) if feet[i - 1].get("feet") != feet[-1].get("feet")), 0)
    return feet[first:]


def _swap_pairs(talk: Talk) -> None:
    """ "Left front 50, right front 53. Swap those."; "Tally at four weeks and Buck six. Other way around."."""
    done = 0
    for at in talk.where(_SWAPPING) if talk.says(_SWAPS) or talk.tells(_OTHER_WAY) else ():
        end = _swap_cue(talk, at, talk.words[at]) if at >= done else None
        if end is None:
            continue
        starts = _starts(talk)
        begin = max(s for s in starts if s <= at)
        clause = _clause_start(talk, begin, at)
        if not set(talk.words[clause:at]) <= BEFORE_SWAP or talk.words[clause - 1] == "which":
            continue  # "trimmed in front and shod behind, which is back to front" remarks on how it is
        if talk.words[at] == "backwards" and set(talk.words[clause:at]) <= {","}:
            continue  # "the axis is broken backwards", "a broken axis, backwards"
        if _one_number(talk, clause, end):
            continue
        if clause == begin:
            clause = begin = _chat_before(talk, starts, begin)
        asked = talk.words[end : end + 1] == ["?"] and talk.words[end + 1 : end + 2] in (["no"], ["nah"])
        if asked or _NOT_SO.at(talk.words, end + 1):
            begin = end  # "other way about. No it isn't, ones in front": as it was said at first
            for no in [m for m in talk.mentions if m.start == end + 1]:
                no.dropped = True
        elif not _exchange(talk, begin, clause):
            before = [s for s in starts if s < begin]
            first = next((m for m in talk.mentions if m.start >= end and not m.dropped), None)
            if clause > begin and first is not None and first.number is not None:
                continue  # "right front, toe angle fifty degrees, had that backwards, fifty two"
            if not before or not _exchange_behind(talk, [*before, begin] if clause > begin else before, clause):
                continue
        for mention in [m for m in talk.mentions if clause <= m.start < end]:
            mention.dropped = True
        if begin < end:
            _drop_said_again(talk, clause, end)
        done = end


def _one_number(talk: Talk, start: int, end: int) -> bool:
    """ "Toe angle fifty degrees, had that backwards, fifty two degrees": one number is put right, no pair."""
    behind = talk.mention_starting(end + 1)
    before = [m for m in talk.mentions if m.end <= start and start - m.end <= _TWO]
    if behind is None or behind.number is None or not any(m.number or m.get("units") for m in before):
        return False
    stop = sentence_end(talk, end)
    said = [m for m in talk.mentions if end <= m.start < stop]
    return sum(m.number is not None for m in said) == 1 and not any(m.get("feet") or m.get("horse") for m in said)


def _chat_before(talk: Talk, starts: list[int], begin: int) -> int:
    """ "Hang on. No. Other way around.": sentences of nothing but such words lead to the cue."""
    for start in reversed([s for s in starts if s < begin]):
        if not set(talk.words[start:begin]) <= BEFORE_SWAP | SENTENCE_ENDS:
            break
        begin = start
    return begin


def _exchange_behind(talk: Talk, starts: list[int], end: int) -> bool:
    """Exchange what the sentence before tells, or the two before when each names one foot of the same horse."""
    if _exchange(talk, starts[-1], end):
        return True
    said = [m for m in talk.mentions if starts[-1] <= m.start < end and not m.dropped]
    alone = len(starts) > 1 and sum(m.get("feet") is not None for m in said) == 1
    return alone and not any(m.get("horse") for m in said) and _exchange(talk, starts[-2], end)


def _swap_cue(talk: Talk, at: int, word: str) -> int | None:
    """The token behind the words that exchange two things; None when there are none at the token."""
    end = None
    if word in _SWAPS and talk.words[at + 1 : at + 2] and talk.words[at + 1] in _SWAPPED:
        end = at + 3 if talk.words[at + 2 : at + 3] and talk.words[at + 2] in _ROUND else at + 2
    if end is None and (form := _OTHER_WAY.at(talk.words, at)):
        end = at + len(form) if _WENT.isdisjoint(talk.words[max(0, at - 2) : at]) else None
    closed = end is not None and (talk.words[end : end + 1] == [] or talk.words[end] in (",", *SENTENCE_ENDS))
    return end if closed else None


def _clause_start(talk: Talk, begin: int, at: int) -> int:
    """The start of the words that only lead to the cue: ", no wait, it's the other way round"."""
    while at > begin and talk.words[at - 1] in BEFORE_SWAP:
        at -= 1
    return at


def _exchange(talk: Talk, start: int, end: int) -> bool:
    """Exchange the last two said in ``[start, end)``: two feet, or two pairs, or two horses' numbers."""
    said = [m for m in talk.mentions if start <= m.start < end and not m.dropped]
    feet = [m for m in said if m.get("feet")]
    if len(feet) >= _TWO:
        first, second = feet[-2], feet[-1]
        one, other = str(first.get("feet")), str(second.get("feet"))
        pair = {one, other} in ({"fronts", "hinds"}, {"lefts", "rights"})
        mirrored = (one in MIRRORED and MIRRORED[one][-1] == other[-1]) or one[0] + other[-1] in ("LR", "RL")
        if any(m.get("taking_back") and m.end <= first.start for m in said):
            return False  # "toe clips behind, no, toe clips in front, quarter clips behind, other way about"
        differ = one != other and one in MIRRORED and other in MIRRORED
        if mirrored and differ:
            first.readings["feet"], second.readings["feet"] = MIRRORED[one], MIRRORED[other]
        elif pair or (differ and {one, other} <= {*FEET}):
            first.readings["feet"], second.readings["feet"] = other, one
        else:
            return False
        return True
    horses = {m.get("horse") for m in said if m.get("horse")}
    numbers = [m for m in said if m.number is not None]
    if feet or len(horses) != _TWO or len(numbers) != _TWO:
        return False
    numbers[0].number, numbers[1].number = numbers[1].number, numbers[0].number
    return True


def _drop_said_again(talk: Talk, clause: int, end: int) -> None:
    """ "Swap those, left is the 53 and right is the 50": what only says the pair again, now right."""
    stop = sentence_end(talk, end)
    alone = not any(end <= m.start < stop and not m.dropped for m in talk.mentions)
    if alone and talk.words[stop + 1 : stop + 2] not in ([], ["no"], ["nah"], ["wait"], ["hang"], ["hold"]):
        stop = sentence_end(talk, stop + 1)  # "I've got that backwards. Bruise left, corn right."
    again = [m for m in talk.mentions if end <= m.start < stop and not m.dropped]
    before = [m for m in talk.mentions if m.end <= clause]
    known = {_what(m) for m in before}
    told = [m for m in again if kind_of(m) is not None or m.get("horse")]
    if told and all(_what(m) in known or str(m.get("feet")).startswith(("bare_", "fronts", "hinds")) for m in told):
        for mention in again:
            mention.dropped = True


def _what(mention: Mention) -> tuple[str, str]:
    if mention.number is not None:
        return "number", f"{mention.number.value}/{mention.number.aughts}"
    kind = kind_of(mention) or ("horse" if mention.get("horse") else "")
    return kind, mention.readings.get(kind, "")


def _not_both(talk: Talk) -> None:
    """ "Thrush in both hinds. Or not both, just the left hind.": one foot of the pair that was said."""
    if not talk.says(_BOTH):
        return
    for foot in [m for m in talk.having("feet") if m.readings["feet"] in _SINGLE]:
        at = foot.start
        while at and talk.words[at - 1] in _NOT_BOTH:
            at -= 1
        said = talk.words[at - 2 : at] in (["not", "both"], ["say", "both"], ["said", "both"])
        if not said:
            continue
        before = [m for m in talk.having("feet") if m.end <= at - 2]
        pair = next((m for m in reversed(before) if m.get("feet") in ("fronts", "hinds")), None)
        if pair is None or pair is not before[-1]:
            continue
        end = "F" if pair.get("feet") == "fronts" else "H"
        name = foot.readings["feet"].removeprefix("bare_")
        if len(name) > 1 and name[1] != end:
            continue
        for mention in [m for m in talk.mentions if at - 2 <= m.start < foot.start]:
            mention.dropped = True
        pair.readings["feet"] = name[0] + end
        foot.dropped = True
