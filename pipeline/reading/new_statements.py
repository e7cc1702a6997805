"""What opens a statement of its own behind a comma: a new thing looked at, another foot, a person who does something.

One function a kind; each says of a seam whether what stands behind it cannot go on what was said before.
"""

from __future__ import annotations

from collections.abc import Callable

from pipeline.reading.stretches import JOINING, SAID, TOLD, Seam, Stretch

_SETUP = frozenset({"shoe_types", "shoe_materials", "pads", "packings", "clips", "traction"})
_SHOD = _SETUP | {"work", "number"}
_ANSWERS = frozenset({"pulses", "tester_responses", "nail_lines", "number"})
_TOLD_OF_A_FOOT = TOLD - _ANSWERS
_FOUND = frozenset({"findings", "tester_responses", "pulses", "gaits", "manners", "measures"})
_HEADS = frozenset({"tester_heads", "pulse_heads", "nail_line_heads"})
_FELT = frozenset({"findings", "pulse_heads", "tester_heads", "tester_responses", "vet"})
_HANGING = frozenset({"as", "if", "once", "when", "assuming", "provided", "subject", "depending", "unless"})
_BODY = frozenset({"body_condition", "cresty_neck"})
_LENGTHS = frozenset({"toe_angle", "heel_angle", "toe_length", "heel_height", "sole_depth", "hoof_width"})
_PERSONS = frozenset({"he", "she", "i", "we", "there"})
_POINTING = frozenset({"it", "that", "one"})
_OPINIONS = frozenset({
    "mean", "say", "think", "guess", "reckon", "call", "suppose", "suspect", "believe", "know", "said", "thought",
    "checked", "looked", "felt", "tried", "dug", "told",
})  # fmt: skip
_DONE = frozenset({
    "gave", "took", "pulled", "nailed", "dressed", "packed", "used", "pared", "cleaned", "soaked", "opened", "fitted",
    "backed", "lowered", "applied", "treated", "added", "switched", "tacked", "drilled", "painted", "wrapped",
    "poulticed", "shod", "put",
})  # fmt: skip
_GOING = frozenset({"trotted", "trots", "trotting", "jogged", "jogs", "walked", "walks", "moving", "moves", "going"})
_GOES = frozenset({"goes", "is", "'s", "gets"})
_SAYING = frozenset({"past", "present"})  # the roles of verbs
_SOME = frozenset({"a", "an", "some", "the", "his", "her", "bit", "of", "little", "small", "another"})
_LEAD = 4  # tokens of a degree and an article before a finding
_SEE_AGAIN = frozenset({"see", "back", "get", "keep", "due", "next"})
_WEEKS = frozenset({"weeks", "week", "fortnight"})
_REACH = 8  # tokens to the weeks
_A_NUMBER = frozenset({"number", "units", "fillers", "horse_cues", "feet"})


def an_examination(seam: Seam) -> bool:
    """ "…, testers mild", "…, pulse raised": another thing felt for."""
    felt = seam.behind.opens_with("tester_heads", "pulse_heads") and not seam.near.has(_HEADS)
    return felt and (seam.before.has(("feet",)) or not (_that_foot(seam.behind) or _that_foot(seam.after)))


def _that_foot(stretch: Stretch) -> bool:
    """ "Heat gone, pulse normal, that's the near hind": the foot of all that was told before."""
    pointed = [m for m in stretch.feet() if {"that", "those", "all"} & set(stretch.words[: m.start - stretch.start])]
    return bool(pointed) and not stretch.has(("findings", "gaits", "tester_heads"))


def a_measure(seam: Seam) -> bool:
    """ "…, sole depth ten on the left front", "…, condition five"; not one of several of the foot in hand."""
    behind, near, after = seam.behind, seam.near, seam.after
    if not behind.opens_with("measures", "number"):
        return False
    if near.classes <= _A_NUMBER and near.has(("number",)) and not behind.has(("number",)):
        return False  # "fifty four degrees, toe angle, left front": the word for the number ahead
    named = {kind for name, kind in first_cues(behind) if name == "measures"}
    if named & _BODY and any(("measures", score) in near.cues for score in _BODY):
        return False  # "condition seven, crest a three": scores in turn
    own = bool(behind.feet()) or (after.only_feet() and not seam.before.foot_first)
    closed = bool(behind.feet()) and max(m.end for m in behind.feet()) == behind.end
    listed = closed and not (near.feet() or seam.before.has(("feet",)))  # "… 52, heel angle 48 on the near fore"
    if named & _LENGTHS and (not own or listed) and near.has(("measures",)):
        return False
    wide = behind.opens_with("number") and own and any(m.get("measures") in _LENGTHS for m in behind.mentions)
    counted = behind.has(("number",)) or (
        not behind.opens_with("zones") and (behind.has(("feet",)) or after.opens_with("feet", "number"))
    )
    return wide or (bool(named & (_BODY | _LENGTHS)) and counted)


def first_cues(stretch: Stretch) -> set[tuple[str, str]]:
    """The classes of the words that open the stretch, with their canonical names."""
    return {pair for m in stretch.mentions if m.start == stretch.start for pair in m.readings.items()}


def how_he_goes(seam: Seam) -> bool:
    """ "…, trotted up sound", "…, two out of five lame"."""
    behind, near = seam.behind, seam.near
    if not behind.has(("gaits",)) or behind.has(("findings",)) or near.has(("gaits",)):
        return False
    told = near.has(SAID) or near.classes >= {"feet", "number"}
    graded = behind.opens_with("number", "measures") and "it" not in behind.words and told
    return behind.opens_with("gaits") or behind.words[0] in _GOING or graded


def after_how_he_goes(seam: Seam) -> bool:
    """ "Trotted up sound, new plates in front": how he goes takes no foot from what follows."""
    gone = seam.near.has(("gaits",)) and not seam.near.has(("feet", "number", "zones"))
    return gone and seam.behind.has(_TOLD_OF_A_FOOT - {"gaits"})


def a_finding(seam: Seam) -> bool:
    """ "… on the off hind, sidebone in the near fore": another finding, on a foot of its own."""
    behind, near, before = seam.behind, seam.near, seam.before
    behind_it = seam.after.opens_with("feet") and (before.has(("feet",)) or not behind.has(("zones",)))
    denied = near.has(("denials", "doubts")) and not near.has(("feet",))
    timed = any(m.get("times") == "history" and m.end == near.end for m in near.mentions)  # "foundered last year"
    listed = near.has(("findings",)) and (denied or not (timed or before.has(("feet",))))
    headed = before.headed and before.has(("denials",))
    return _leads_to_a_finding(behind) and (bool(behind.feet()) or behind_it) and not listed and not headed


def _leads_to_a_finding(behind: Stretch) -> bool:
    """Whether it opens with a finding, or a degree, a doubt or an article stands before it and nothing else."""
    finding = next((m for m in behind.mentions if m.get("findings")), None)
    if finding is None or finding.start - behind.start > _LEAD:
        return False
    graded = {i for m in behind.mentions if m.is_any(("severities", "doubts")) for i in range(m.start, m.end)}
    return all(i in graded or behind.words[i - behind.start] in _SOME for i in range(behind.start, finding.start))


def another_foot(seam: Seam) -> bool:
    """ "…, left hind has thrush", "…, behind he's in plain steel"; not "lame, left fore" or "sizes two, hinds one"."""
    behind, near, before = seam.behind, seam.near, seam.before
    if not behind.opens_with("feet"):
        return False
    if near.only_feet():
        return not behind.only_feet() and "present" in behind.roles
    if behind.only_feet() and seam.after.opens_with("work") and near.has(("nail_lines", "nail_line_heads")):
        return True  # "good nail line, hinds, trimmed"
    pointed = any(name == "feet" and kind.endswith("in_hand") for name, kind in first_cues(behind))
    if pointed or not (before.has(("feet",)) or near.has(("manners",)) or not near.has(TOLD)):
        return False
    if behind.only_feet():
        if (
            before.has(("feet",))
            and not near.has(("feet",))
            and near.has(("measures", *SAID))
            and _its_own_work(seam.after)
        ):
            return True  # "new bar shoe on the right front, five nails, left front, new plain shoe"
        return (bool(near.feet()) or not near.has(("feet",))) and _foot_alone(seam)  # "in that foot, left hind, …"
    measured = near.has(("measures",)) and any(m.get("measures") in _LENGTHS for m in behind.mentions)
    same = behind.has(("same",)) and near.has(SAID)
    someone = not _PERSONS.isdisjoint(behind.words[1:4]) and behind.has(("vet",))
    return behind.has(_TOLD_OF_A_FOOT - {"vet"}) or measured or same or someone


def a_foot_and_someone(seam: Seam) -> bool:
    """ "…, her right hind I thought about pulling too", "…, the fronts he wouldn't let me near"."""
    behind = seam.behind
    first = int(behind.words[0] in ("the", "his", "her"))
    foot = next((m for m in behind.feet() if m.start == behind.start + first), None)
    at = foot.end - behind.start if foot is not None else len(behind.words)
    answering = seam.before.has(_HEADS) or seam.near.has(_HEADS)  # "pulse bounding in front, hinds I had to hunt for"
    return behind.words[at : at + 1] in (["i"], ["we"], ["he"], ["she"]) and seam.near.has(TOLD) and not answering


def _its_own_work(after: Stretch) -> bool:
    """Whether it opens with what was done, on the foot before it."""
    shod = after.words[:1] == ["new"] and after.has(("shoe_types", "shoe_materials", "work"))
    return (shod or after.opens_with("work")) and not after.feet()


def _foot_alone(seam: Seam) -> bool:
    """ "Left front, toe angle 52, right front, toe angle 51": feet stand before what is told of them."""
    after = seam.after
    there = after.words[:1] == ["there"]  # "left hind, there's some in the frog"
    told = (there or after.has(TOLD | _HEADS | {"measures", "same"})) and not after.feet()
    answered = after.opens_with("zones", "severities", "pulses", "tester_responses", "feet", "number", "fillers")
    return told and not answered and (there or seam.near.has(("feet",)) or bool(seam.before.foot_first))


def work_done(seam: Seam) -> bool:
    """ "…, trimmed all four"; of a plan only the plain past goes on with today."""
    behind, near = seam.behind, seam.near
    if not behind.opens_with("work") or not seam.before.has(TOLD) or ("work", "removed") in near.cues:
        return False
    to_do = ("plans", "before") in near.cues and near.has(("feet",)) and not (near.has(("number",)) or behind.feet())
    if seam.planned() or to_do:  # "I'll do the hinds then, just trim them"
        return behind.words[0] == "trimmed"
    again = any(
        pair in near.cues for pair in first_cues(behind) if pair[0] == "work"
    )  # "just resets, same shoes reset"
    listed = near.has(("work",)) and (again or not seam.before.has(("feet",)))
    ones = "ones" in behind.words[1:3]  # "egg bars, brand new ones, both fronts"
    return not near.has(("shoe_states",)) and behind.words[0] not in ("new", "went") and not (listed or ones)


def something_done(seam: Seam) -> bool:
    """ "…, gave him rocker toes", "…, drilled the hinds"."""
    behind = seam.behind
    done = behind.words[0] in _DONE and behind.roles[0] == "action"
    return done and seam.before.has(TOLD) and (behind.has(SAID) or bool(behind.feet()))


def a_new_shoe(seam: Seam) -> bool:
    """ "…, new rim shoes on the hinds"; not "egg bars, new ones" and not in a plan."""
    behind = seam.behind
    shoe = behind.has(("shoe_types", "shoe_materials", "work")) and behind.words[1:2] not in (["ones"], ["one"])
    return (
        behind.words[0] == "new" and shoe and seam.before.has(("feet",)) and seam.near.has(SAID) and not seam.planned()
    )


def shoes_after_findings(seam: Seam) -> bool:
    """ "… no reaction on the off fore, straight bars in front": from what was found to what was put on."""
    behind, near = seam.behind, seam.near
    return behind.opens_with(*_SETUP) and bool(behind.feet()) and near.has(_FOUND) and not near.has(_SHOD)


def a_dressing(seam: Seam) -> bool:
    """ "…, hardener on both fores"."""
    behind = seam.behind
    return behind.opens_with("treatments") and bool(behind.feet()) and not seam.near.has(("treatments",))


def somebody(seam: Seam) -> bool:
    """ "…, he's fidgety", "…, there's a corn in the left hind"; not "I'd say", nor more about the same thing."""
    behind, near = seam.behind, seam.near
    they = behind.words[0] == "they" and (behind.has(("vet",)) or behind.roles[1:2] == ["past"])
    if not they and (behind.words[0] not in _PERSONS or len(behind.words) < 3):
        return False
    said = set(behind.words)
    earlier = ("times", "history") in behind.cues and not said.isdisjoint(_POINTING - {"one"})
    named = not near.verb() and not near.has(("feet",)) and not said.isdisjoint(_POINTING)  # "seedy toe, she had that"
    again = any(pair in seam.before.cues for pair in behind.cues if pair[0] in ("findings", "gaits"))
    theirs = near.has(("asides",)) and behind.words[0] != "i"
    story = ("times", "history") in behind.cues and not near.has(SAID)
    into = near.words[-1] == "off" and behind.words[1] in _GOES  # "bars off, he goes back into …"
    headed = near.only_feet() and behind.has(("gaits",)) and not seam.before.has(SAID)  # "so, left hind, he's lame"
    if earlier or story or named or theirs or again or into or headed or not _OPINIONS.isdisjoint(behind.words[1:4]):
        return False
    return behind.has(SAID | {"tester_heads"}) or bool(behind.feet())


def something(seam: Seam) -> bool:
    """ "…, his hinds were trimmed", "…, that shoe's been pulled"."""
    behind = seam.behind
    if behind.roles[0] != "determiner" and behind.words[:2] != ["that", "shoe"]:
        return False
    told = behind.has(SAID) and behind.has(("feet", "findings"))
    return told and behind.verb() and not behind.opens_with("feet")


def a_noun(seam: Seam) -> bool:
    """ "…, axis is broken back on both fores", "…, nails are size five", "…, films show rotation"."""
    behind, near = seam.behind, seam.near
    if behind.words[0] in JOINING or behind.roles[0] is not None or _SAYING.isdisjoint(behind.roles[1:4]):
        return False
    if behind.opens_with("feet", "fillers", "number"):
        return False
    found = behind.has(_TOLD_OF_A_FOOT) and (bool(behind.feet()) or not near.has(("findings",)))
    counted = behind.has(("number",)) and (behind.opens_with("measures") or bool(behind.feet()))
    return found or counted


def a_condition(seam: Seam) -> bool:
    """ "…, if he's no better they call the vet"; not "bars in front, if the owner agrees.", which hangs on it."""
    return ("plans", "condition") in first_cues(seam.behind) and not _hangs_on_it(seam)


def _hangs_on_it(seam: Seam) -> bool:
    """Whether the condition closes what only names things to put on, with no clause of its own behind it."""
    near, behind = seam.near, seam.behind
    told = near.classes & TOLD
    if (
        behind.words[0] not in _HANGING
        or behind.has(TOLD)
        or not told
        or not told <= _SETUP | {"number"}
        or near.verb()
    ):
        return False
    closes = behind.closes() and not {("plans", "before"), ("plans", "main")} & behind.cues
    return closes and behind.roles.count("subject") <= 1


def a_time(seam: Seam) -> bool:
    """ "…, last time he had a corn": a time that opens, with what was then."""
    opened = first_cues(seam.behind) & {("times", "history"), ("times", "today")}
    return bool(opened) and seam.behind.has(SAID)


def a_next_time(seam: Seam) -> bool:
    """ "…, next trip it's egg bars"."""
    return seam.behind.words[0] == "next" and ("plans", "before") in seam.behind.cues


def a_return(seam: Seam) -> bool:
    """ "…, four weeks", "…, see him in five weeks"."""
    behind, near = seam.behind, seam.near
    if _WEEKS.isdisjoint(behind.words[:_REACH]) or not (near.has(SAID) or near.clause()):
        return False
    counted = behind.opens_with("number") and _WEEKS.isdisjoint(near.words)
    return counted or behind.words[0] in _SEE_AGAIN


def a_denial(seam: Seam) -> bool:
    """ "…, no heat in the off fore"; not one more of a denied list, nor what is no longer there."""
    behind, near = seam.behind, seam.near
    if behind.words[0] != "no" or not behind.has(_FELT) or near.only_feet():
        return False  # "right front, no heat": the foot is its own
    named = {m.get("findings") for m in behind.mentions if m.get("findings")}
    again = any(m.get("findings") in named for m in near.mentions)  # "thrush in May, no thrush now"
    listed = near.has(("denials",)) and not near.has(("feet",)) and near.words[-1] != "there"
    return not again and not listed


def a_finding_answered(seam: Seam) -> bool:
    """ "…, growth rings, none to speak of", "…, heat, no, none in front": what the answer is to."""
    behind, near = seam.behind, seam.near
    alone = behind.opens_with("findings") and any(
        m.start == behind.start and m.end == behind.end for m in behind.mentions
    )
    answered = seam.after.words[:1] in (["none"], ["nil"]) or list(seam.after.words) == ["no"]
    listed = list(seam.after.words[:2]) == ["none", "of"]  # "corns, thrush, heat, none of it" answers them all
    return alone and answered and not listed and not near.has(("denials",))


def a_manner(seam: Seam) -> bool:
    """ "…, stood quiet"."""
    return seam.behind.opens_with("manners") and not seam.near.has(("manners",))


def the_vet(seam: Seam) -> bool:
    """ "…, vet to look at her on Friday"."""
    return seam.behind.opens_with("vet") and not seam.near.has(("vet",)) and not seam.planned()


def an_aside(seam: Seam) -> bool:
    """ "…, the mare next door kicked the wall": another animal's story."""
    told = seam.behind.has(("asides",)) and seam.behind.verb() and seam.behind.words[0] != "not"
    return told and seam.near.has(SAID) and "weeks" not in seam.near.words


Rule = Callable[[Seam], bool]
# The rules by the class of words that each waits for behind the comma, or by the first word there; some come always.
_BY_CLASS: dict[str, tuple[Rule, ...]] = {
    "tester_heads": (an_examination,),
    "pulse_heads": (an_examination,),
    "number": (a_measure,),
    "measures": (a_measure,),
    "gaits": (how_he_goes,),
    "findings": (a_finding, a_finding_answered),
    "feet": (another_foot, a_foot_and_someone),
    "work": (work_done,),
    "plans": (a_condition,),
    "times": (a_time,),
    "manners": (a_manner,),
    "vet": (the_vet,),
    "treatments": (a_dressing,),
    "asides": (an_aside,),
    **dict.fromkeys(_SETUP, (shoes_after_findings,)),
}
_BY_WORD: dict[str, tuple[Rule, ...]] = {
    **dict.fromkeys(_DONE, (something_done,)),
    **dict.fromkeys({*_PERSONS, "they"}, (somebody,)),
    "next": (a_next_time,),
    "no": (a_denial,),
    "new": (a_new_shoe,),
}
_ALWAYS: tuple[Rule, ...] = (something, a_noun, a_return, after_how_he_goes)


def every_rule() -> frozenset[Rule]:
    """All of them, for whoever asks more than the words let hope for."""
    return frozenset(rule for rules in (*_BY_CLASS.values(), *_BY_WORD.values(), _ALWAYS) for rule in rules)


def opens_a_statement(seam: Seam) -> bool:
    """Whether what stands behind the comma opens a statement of its own."""
    behind = seam.behind
    waiting = {rule for name in behind.classes if name in _BY_CLASS for rule in _BY_CLASS[name]}
    return any(rule(seam) for rule in (*_BY_WORD.get(behind.words[0], ()), *_ALWAYS, *waiting))
