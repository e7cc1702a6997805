"""Words that sound the same as the trade's and are no words of the trade where they stand: "off four", "poor in pads".

The recogniser spells such words by chance, and the sound cannot tell them apart; what stands beside them can. Each row
is a pattern over the lower-case words of a stretch, whose one group is what was heard, and the wording that the trade
would have there. The rows are sound-alikes in any voice (common practice, no source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

_COUNT = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|\d+)"
_COUNTED = r"(?:nails?|weeks?|degrees?|inch|inches|mil|mill|a side|aside|apiece|each|in each|of|out of)\b"
_END = r"(?=[.,?!;:]|$)"
# "Staying off for now", "left for the vet", "right for him": no foot.
_FOR_WHAT = (
    rf"(?:{_COUNT}|now|good|ever|the|an?|this|that|these|them|today|tonight|tomorrow|next|him|her|it|me|us|you|my|his|their"
    r"|another|about|some|most|all|as(?! well)|at|winter|summer|spring|weeks|months)\b"
)
_ROWS = (
    (rf"\b(?:near|off|left|right) (four|4|full)\b(?! {_COUNTED}| (?:now|good)\b)", "fore"),
    (rf"\bnear (for)\b(?! {_COUNTED})", "fore"),
    (rf"\b(?:off|left|right) (for)\b(?! {_COUNTED}| {_FOR_WHAT})", "fore"),
    (rf"\b(?:either|neither) (four|for|4){_END}", "fore"),
    (r"\b(off-four|off-for|off-4)\b", "off fore"),
    (r"\b(?:near|off)-(four|for)\b", "fore"),
    (rf"\b(?:both|either|neither) (fours'?|four's|4s|4|force)(?=[ .,?!;:]|$)(?! {_COUNTED})", "fores"),
    (r"(?:^|[.,?!;:] )(?:the )?(fours|force|forz)(?=[,.]? (?:trimmed|reset|shod|in|are|were|get|got)\b)", "fores"),
    (r"\b(for) (?:nails|a side|aside|slims)\b", "four"),
    (rf"(?:^|[,.?!] )(for) weeks{_END}", "four"),
    (rf"\b(?:trim|trimmed|reset) (?:the|on|all) (fore|for){_END}", "four"),
    (r"(?:'s|\b(?:the|all|his|her)) (fore)(?= (?:trimmed|reset|shod)\b)", "four"),
    (rf"\b(?:on|in|off|for|under) the (fore){_END}", "four"),
    (rf"\b(?:nails?|clips?|plates?|shoes?|studs?) (?:on|in) the (far){_END}", "four"),
    (rf"\b(do|too|to) weeks{_END}", "two"),
    (rf"\b(?:hind|hinds|fore|fores|front|fronts|road nails|studs) (two|to){_END}", "too"),
    (r"\b(poor|pore|paw|four|for) in(?= (?:sole )?pads?\b)", "pour"),
    (r"\b(?:hoof|foot) (with)(?=,? (?:is |of )?(?:a hundred|\d\d|one hundred))", "width"),
    (r"\b(?:flat|thin) (sold|sole)(?= (?:on|in|all|behind)\b)", "soled"),
    (r"\b(?:flat|thin) (sold)(?= (?:and|with|as)\b|[.,?!;:]|$)", "soled"),
    (r"\bdropped (solars|solers)\b", "soles"),
    (r"\b(she had|she'd)(?= heels (?:in|on) (?:both|the|all|his|her)\b)", "sheared"),
    (
        r"(?:^|[.,?!;:] )(you)"
        r"(?= (?:all round|all around|in front|behind|both (?:fores|fronts|hinds)|shoes|set|plain|steel)\b)",
        "new",
    ),
    (
        r"\b(next of|next are|next is|necks are|necks of)"
        r"(?= (?:zero|one|two|three|four|five|[0-5])(?:[.,?!;:]|$| last\b))",
        "neck's a",
    ),
    (rf"\b(condition's got|conditions got)(?= {_COUNT})", "condition score"),
    (r"\b(?:came|come|comes) out (shod)(?= (?:in|on|behind)\b)", "short"),
    (r"\b(?:moving|stepping|bit|touch) (shod)(?= (?:again|on (?:the|it|his|her|one))\b)", "short"),
    (r"(?:^|\W)(i dined|i'd dine|high dine|i dine|high done|eye dine|i done)(?= (?:in|on|into)\b)", "iodine"),
    (rf"\b(?:at the|and the) (dough|door|doe|tow){_END}", "toe"),
    (r"\b(he'll|heal|hill)(?= (?:angles?|height|heights)\b)", "heel"),
    (r"\b(cd to|cd toe|cd tow|cd too|c d toe|city toe)\b", "seedy toe"),
    (r"\b(side (?:a|i|of) bone)\b", "sidebone"),
    (r"\b(then|than)(?= (?:soles?|soled|sold)\b)", "thin"),
    (r"\b(to|tow|tau)(?= (?:angle|length)\b)", "toe"),
    (rf"\b{_COUNT}(?: nails?)? (of peace|of peas|a piece|a peace|of piece|a peas)\b", "apiece"),
    (r"\b(?:nails|clips) (of|off|or)(?= (?:foot|side|shoe)\b)", "a"),
    (
        r"\b(under on|under an|under and|under one|under un|under ran|under own)"
        r"(?= (?:heels|on|both|in)\b|,? (?:mild|moderate|severe)\b)",
        "underrun",
    ),
    (r"\b(shared|shear|sheer|cheered)(?= heels\b)", "sheared"),
    (r"\bheels (?:are|is|were) (shared|sheer)\b", "sheared"),
    (r"\b(?:the|a|two|old|bay|gray|grey|brown|chestnut) (mayor)\b", "mare"),
    (r"\b(?:the|a|two|old|bay|gray|grey|brown|chestnut) (mayors)\b", "mares"),
    (r"\b(nail)(?= (?:it |that )?back on\b)", "nailed"),
    (r"\b(prick)(?= (?:him|her)\b)", "pricked"),
    (r"\b(?:crest|neck|score|grade|condition) (free)\b", "three"),
    (r"\b(free)(?= (?:nails|weeks|a side|degrees|out of five)\b)", "three"),
    (r"\b(drops)(?= soles?\b)", "dropped"),
    (r"(?:out of|of|a) (?:five )?(five lane|five-lane)\b", "five lame"),
    (r"\b(hard|heart|hart|hot)(?= bars?\b)", "heart"),
    (r"\b(boss|bah)(?= shoes?\b)", "bar"),
    (r"\b(lost)(?= (?:time|visit|spring|summer|autumn|winter|month|year|shoeing)\b)", "last"),
    (r"\bthe (far)(?= (?:feet|shoes)\b)", "four"),
    (r"\b(nail)(?= (?:hinds?|fores?)\b)", "near"),
    (r"\b(which)(?= pads? (?:on|in|under)\b)", "wedge"),
    (r"\b(pulse)(?= and a (?:bandage|boot|wrap)\b)", "poultice"),
    (r"\bwall(?:s|'s)?(?: is| are)? (a week|week)(?= (?:on|in|at)\b)", "weak"),
    (r"\b(heat)(?= an? (?:abscess|corn|bruise|crack|puncture|split)\b)", "he'd"),
    (r"\bneck (fall|far)(?=[.,?!;:]|$)", "four"),
    (
        rf"\b(?:week|month|year|day|fall|winter|spring|summer|visit|shoeing|while)s? (a go|a goal|and go|a grow){_END}",
        "ago",
    ),
    (
        r"\b(apple|opal|able|label|obelgrade|obel-grade|a bell|oh bell)"
        r"(?= (?:grade )?(?:zero|one|two|three|four|[0-4])\b)",
        "obel",
    ),
    (r"\b(when|want|won)(?= out of (?:five|5)\b)", "one"),
    (r"\b(to|too|do)(?= out of (?:five|5|nine|9)\b)", "two"),
    (r"\b(free|tree)(?= out of (?:five|5|nine|9)\b)", "three"),
    (r"\b(for|fore)(?= out of (?:five|5|nine|9)\b)", "four"),
    (r"\b(ate)(?= out of (?:nine|9)\b)", "eight"),
    (
        r"\b(?:walked|trotted|jogged|went|came|is|was|he's|she's)(?: up| out| off)?"
        r" (to a five|to of five|two a five|too of five)(?= lame\b)",
        "two of five",
    ),
    (r"\b(?:a|grade|obel) (free)(?= (?:at|last|today|now|or|in)\b|[.,?!;:]|$)", "three"),
    (r"\bout of (?:five|5) (laym|lain|lamb|leim|layman|blame|lamé)\b", "lame"),
    (r"\b(?:is|was|he's|she's|he was|she was) (deadly|dead lamb|dead laym)(?= (?:on|in|behind)\b)", "dead lame"),
    (
        r"\b(?:new|plain) (still|steal|seal|stele)(?= (?:shoes?|all|on|size|in front|behind|both)\b|[.,?!;:]|$)",
        "steel",
    ),
    (r"\b(playing|planes|plane|plains|plan)(?=,? steel\b)", "plain"),
    (r"\bbars? (she|shoo)(?= (?:on|is|was|goes|for)\b)", "shoe"),
    (rf"\b{_COUNT} nails (afoot)\b", "a foot"),
    (
        r"\b(?:hinds|fores|fronts|heels|feet|soles|they|we) (event|heaven|haven|even't|heavent)"
        r"(?= (?:got|any|a|sheared|contracted|seen|been|had|lost|moved|changed)\b)",
        "haven't",
    ),
    (
        r"\b(?:with|got|and|steel|of) (boredom|boreum|bore em|boarium|bore 'em)(?= (?:on|in|at|now|both)\b|[.,?!;:]|$)",
        "borium",
    ),
    (r"\b(well lost|wall lost|well loss)(?= (?:at|in|on)\b|[.,?!;:]|$)", "wall loss"),
    (
        r"\b(?:quarter|toe|sand|grass|wall|hairline) (track|crap|crag|crac)(?= (?:in|on|at|is|has)\b|[.,?!;:]|$)",
        "crack",
    ),
    (r"\bheel (build|bold|ball|belt|bulge|bowl)(?= (?:of|on|in|is|above|moderate|mild)\b|[.,?!;:]|$)", "bulb"),
    (r"\b(pasture nexus|pastern access|pastern nexus|pasture axis|pasture access)\b", "pastern axis"),
    (
        r"\b(crestynec|crusty neck|christie neck|christy neck|cresting neck|crest in neck|trusty neck)\b",
        "cresty neck",
    ),
    (r"\bbody (conditionate)\b", "condition eight"),
    (r"\b(an avicular|a regular|a vicular)(?= in (?:both|the|his|her|one|either)\b)", "navicular"),
    (r"\bthe (aught|ought|oft)(?= (?:hind|fore)\b)", "off"),
    (r"\b(?:then|i|and) (irreset|we set)(?= (?:her|him|them|both|all)\b|[.,?!;:]|$)", "reset"),
    (r"\b(we set)(?= (?:her|him|them) all\b)", "reset"),
    (r"\b(cedito|ceedy toe|seedito|seedy tow|ceedito)\b", "seedy toe"),
    (r"\b(catomy|kirtom|carotoma|curatoma|caratoma|kerotoma|care a toma|care atoma)\b", "keratoma"),
    (r"\b(oak a minute|oak in it|oak 'em in it|oakham in it)", "oakum in it"),
    (r"\bi (quick)(?= (?:the|him|her|his)\b)", "quicked"),
    (r"(?:^|[.,?!;:] )(that)(?= if (?:he|she|it)(?:'s| is) (?:not|no)\b)", "vet"),
    (
        rf"\b(?:heels?|soles?|walls?|thrush|corns?|bruise|flares?|crack|quarter) "
        rf"(are four|are for|are fore|our four|our fore){_END}",
        "off fore",
    ),
    (
        r"(?:^|[.,?!;:] |\b(?:and|size|double) )(knots|nots|nods)"
        r"(?= (?:in front|behind|on the (?:fores|fronts|hinds|front|back))\b)",
        "noughts",
    ),
    (r"\bdouble (knot|not|nod)\b", "nought"),
    (r"\b(?:shoes?|fores|fronts|hinds) (want a|want)(?= (?:nothing|wafer|sliver|paper|bits)\b)", "worn to"),
    (
        r"(?:^|[.?!] )(?!crack|nail|wall|went|it |straight)(?:[a-z]+ )?(through)"
        r"(?= (?:the|a|his|her) (?:near|off|left|right) (?:fore|front|hind),?"
        r" (?:so |and )?(?:i |we )?(?:nailed|tacked|put (?:it|that|one))\b)",
        "threw",
    ),
    (r"\b(pine|point)(?= pads?\b)", "pour in"),
)
# One foot is "the near fore", two are "the fores"; who says "the fore" and "the hind" of a pair means no "four".
_OPPOSITE = re.compile(r"[^.?!;]*\bthe hind\b")
_PATTERNS = tuple((re.compile(pattern), wording) for pattern, wording in _ROWS)


def same_sounding(plain: Sequence[str], marks: Sequence[str]) -> Iterator[tuple[int, int, str]]:
    """First word, last word (exclusive) and the wording for every match in a stretch.

    ``plain`` are its lower-case words without marks, ``marks`` what stands behind each.
    """
    text, starts = "", []
    for word, mark in zip(plain, marks, strict=True):
        starts.append(len(text))
        text += f"{word}{mark} "
    text = text.rstrip()
    for pattern, wording in _PATTERNS:
        for match in pattern.finditer(text):
            first = next((n for n, start in enumerate(starts) if start == match.start(1)), None)
            last = sum(start < match.end(1) for start in starts)
            if (
                first is not None
                and match[1] != wording
                and not (match[1] == "fore" and _opposed(text, match.start(1)))
            ):
                yield first, last, wording


def _opposed(text: str, at: int) -> bool:
    """Whether the sentence around a place names the hind pair as it may name the other."""
    begins = max(text.rfind(mark, 0, at) for mark in ".?!;") + 1
    return _OPPOSITE.match(text, begins) is not None
