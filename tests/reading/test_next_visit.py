"""When to come back: every way of saying it, and what is no next visit.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads

SIX_WEEKS = """\
She's on six weeks since the spring
Six weeks
Six weeks please
Back in six weeks
Back in six
Back at six weeks
Again in six weeks
See him in six weeks
See him again in six weeks
I'll see him in six
Due in six weeks
Due again in six weeks
Next due six weeks
Next visit six weeks
Next visit in six weeks
Next one in six weeks
Next shoeing six weeks
Next time six weeks
Book six weeks
Booked for six weeks
Book him for six weeks
Booked in for six weeks
Pencilled in for six weeks
Put him down for six weeks
Put her in the book for six weeks
Put down six weeks
Make it six weeks
Call it six weeks
Say six weeks
Let's say six weeks
We'll say six weeks
We said six weeks
I said six weeks
Told them six weeks
Told the owner six weeks
I told her six weeks
She wants him done in six weeks
Owner wants six weeks
They want six weeks
He goes six weeks
He can go six weeks
He can go another six weeks
He'll go six weeks
He'll do six weeks
He'll be good for six weeks
Good for six weeks
That'll do him six weeks
Six weeks should do it
Six weeks and no longer
No longer than six weeks
Don't let him go past six weeks
Don't let him go over six weeks
Keep him to six weeks
Keep him on six weeks
On a six week cycle
Six week cycle
Stick with six weeks
Staying at six weeks
Stay on six weeks
Six weeks from today
Six weeks Tuesday
Six weeks on Tuesday
Six weeks from now
In six weeks' time
Come back in six weeks
I'm back in six weeks
I'll be back in six weeks
I'll be out again in six weeks
We'll be back in six weeks
Return six weeks
Recheck in six weeks
Check him in six weeks
Look at him again in six weeks
Do him again in six weeks
Reset in six weeks
Trim again in six weeks
Needs doing in six weeks
He'll need doing in six weeks
Wants doing in six weeks
Six weeks till the next one
Six weeks until I'm back
Six weeks between visits
Drop him back to six weeks
Bring him back to six weeks
Cut him back to six weeks
Down to six weeks from eight
Six weeks instead of eight
Six weeks not eight
Was eight, now six weeks
Change him from eight to six weeks
Six or seven weeks
Six to seven weeks
Six weeks, seven at most
Six weeks at the outside
Six weeks tops
Six weeks max
About six weeks
Around six weeks
Roughly six weeks
Six weeks or so
Six weeks give or take
Six weeks or thereabouts
Say six weeks or thereabouts
Six weeks as usual
Usual six weeks
The usual six weeks
Same six weeks
Six weeks again
Six weeks, same as always
6 weeks
6 wks
Six wks
"""

NO_NEXT_VISIT = """\
She was on six weeks since the spring
He was six weeks overdue
It's been six weeks
Six weeks since I was here
Six weeks since the last trim
Last done six weeks ago
He's had six weeks off
Six weeks of box rest
He was on box rest for six weeks
Box rest six weeks
Turned out for six weeks
He's been lame for six weeks
Lame six weeks
She had him six weeks
They've had him six weeks
He's six weeks late
He went six weeks last time
He was at six weeks last time
Shoes were six weeks old
The shoes have been on six weeks
He lost it six weeks in
Six weeks back he lost a shoe
It happened six weeks ago
Every six weeks they worm him
Show's in six weeks
She foals in six weeks
He runs in six weeks
The abscess took six weeks
It took six weeks to grow out
After six weeks it was gone
I was off six weeks with my back
He's six weeks into it
Antibiotics for six weeks
"""


def weeks(read: Read, said: str) -> list[object]:
    visits = read(f"Tally, trimmed the fronts. {said}.", "Tally")
    return [fact.value for visit in visits for fact in visit.facts if fact.slot == "next_visit_weeks"]


@pytest.mark.parametrize("said", SIX_WEEKS.splitlines())
def test_six_weeks(read: Read, said: str) -> None:
    assert weeks(read, said) == [6.0]


@pytest.mark.parametrize("said", NO_NEXT_VISIT.splitlines())
def test_no_next_visit(read: Read, said: str) -> None:
    assert weeks(read, said) == []


@pytest.mark.parametrize(
    ("said", "count"),
    [
        ("Eight weeks, except it's show season, so let's say six", 6.0),
        ("Eight weeks I told them, no I didn't, I told them six", 6.0),
        ("They wanted ten, I'm saying eight weeks", 8.0),
        ("Five weeks I said, only he's away showing that week, so it's six", 6.0),
        ("Back to her in two weeks. Make that three", 3.0),
        ("Six weeks. Actually she asked for five, so five", 5.0),
        ("Nine, no, let's do eight weeks", 8.0),
        ("Six weeks, she wanted eight", 6.0),
        ("Six weeks, the owner wanted eight weeks", 6.0),
        ("Five weeks. They asked for six", 5.0),
        ("Mother would like ten weeks and she's getting seven", 7.0),
        ("They'd prefer eight weeks, it'll be six", 6.0),
        ("Have him back in six weeks, and get four done together", 6.0),
        ("They have him booked in six weeks, and he'll be ten then", 6.0),
        ("Herself fancies nine weeks and she can have six", 6.0),
        ("Seven weeks is what she'd like and five is what she'll get", 5.0),
        ("The owner would like six weeks and that's fine by me", 6.0),
        ("Six weeks, no, she wanted eight", 8.0),
        ("I wanted six weeks, they wanted eight, so eight it is", 8.0),
        ("They wanted six weeks", 6.0),
        ("I said six weeks to start with, but they are away, so she's going on to seven", 7.0),
        ("I said eight weeks, but with the shows coming it'll be five", 5.0),
        ("I said eight weeks to begin with, but the ground's hard, so he'll be on six", 6.0),
        ("I said six weeks, but the left front took a four", 6.0),
        ("I said six weeks, but the toe came back to seven", 6.0),
    ],
)
def test_what_was_settled_counts(read: Read, said: str, count: float) -> None:
    assert weeks(read, said) == [count]


test_behind_with_something = reads(
    [
        (
            "He's due in five weeks. I need to invoice this barn, they're two months behind.",
            ["- next_visit_weeks 5 planned"],
        ),
        ("They owe me for two visits, six weeks behind with the money.", []),
        ("I'm two weeks behind with everything. Five weeks for him.", ["- next_visit_weeks 5 planned"]),
        ("Six weeks in front, five weeks behind.", ["- next_visit_weeks 5 planned"]),
    ],
    "Tally. {}",
)

test_otherwise = reads(
    [
        (
            "He'll ring me if she goes off, but otherwise six weeks, and next time the pad comes out.",
            ["- next_visit_weeks 6 planned"],
        ),
        (
            "If he's no better ring the vet, and otherwise it's five weeks.",
            ["- next_visit_weeks 5 planned", "- vet referral planned"],
        ),
        ("If he's off in six weeks ring the vet.", ["- vet referral planned"]),
    ],
    "Tansy. {}",
)

test_how_often_and_what_instead = reads(
    [
        ("I want her every five weeks.", ["- next_visit_weeks 5 planned"]),
        ("From now on it's every six weeks.", ["- next_visit_weeks 6 planned"]),
        ("He needs doing every four weeks.", ["- next_visit_weeks 4 planned"]),
        ("He's to be done every seven weeks.", ["- next_visit_weeks 7 planned"]),
        ("She wants doing every five weeks.", ["- next_visit_weeks 5 planned"]),
        ("Keep him on every six weeks.", ["- next_visit_weeks 6 planned"]),
        ("They have been doing him every eight weeks.", []),
        ("The last man did him every ten weeks. See him in six weeks.", ["- next_visit_weeks 6 planned"]),
        ("Make it five weeks rather than eight.", ["- next_visit_weeks 5 planned"]),
        ("Call it four weeks instead of six.", ["- next_visit_weeks 4 planned"]),
        ("I'd rather six weeks.", ["- next_visit_weeks 6 planned"]),
    ],
    "Tally. {}",
)

test_what_was_said_at_first = reads(
    [
        (
            "I'd said six weeks to them at the gate, but with that in it he's coming down to five.",
            ["- next_visit_weeks 5 planned"],
        ),
        (
            "I'd told them six weeks but with all that growth I'm cutting it back to four.",
            ["- next_visit_weeks 4 planned"],
        ),
        ("We'd said six weeks, but he's going out to eight now.", ["- next_visit_weeks 8 planned"]),
        ("I'd said six weeks, but his crest is going up to a three.", ["- next_visit_weeks 6 planned"]),
        (
            "I'd said six weeks, but she's going up to a two in front.",
            ["- next_visit_weeks 6 planned", "LF+RF shoe_size 2"],
        ),
    ],
    "Tansy. {}",
)

test_every_so_many_weeks = reads(
    [
        (
            "Thrush in the near hind, so I'm back every four weeks.",
            ["- next_visit_weeks 4 planned", "LH finding thrush"],
        ),
        ("I want her every five weeks.", ["- next_visit_weeks 5 planned"]),
        ("She has to be done every six weeks.", ["- next_visit_weeks 6 planned"]),
        ("I've had him on every four weeks.", []),
        ("I've been doing her every six weeks.", []),
        ("They change it every two weeks.", []),
        ("He was on every six weeks, I'll see him in five.", ["- next_visit_weeks 5 planned"]),
    ],
    "Tansy. {}",
)

test_wanted_and_addressed = reads(
    [
        ("I'd like him every five weeks from here.", ["- next_visit_weeks 5 planned"]),
        ("We'd like her every six weeks.", ["- next_visit_weeks 6 planned"]),
        ("They'd like him every five weeks.", []),
        ("See you in eight weeks, old girl.", ["- next_visit_weeks 8 planned"]),
        ("Back in six weeks, the old lad.", ["- next_visit_weeks 6 planned"]),
        ("The foal's six weeks old.", []),
    ],
    "Tally. {}",
)

test_weeks_that_it_has_been_so = reads(
    [
        ("Three weeks I've had her in wedge pads in front.", ["LF+RF pad wedge"]),
        ("Five weeks he's been on rim pads in front. Six weeks.", ["- next_visit_weeks 6 planned", "LF+RF pad rim"]),
        ("Two months he's worn rim shoes behind.", ["LH+RH shoe_type rim"]),
        ("Eight weeks'll do.", ["- next_visit_weeks 8 planned"]),
        ("A fortnight'll do him.", ["- next_visit_weeks 2 planned"]),
        ("Five weeks he's due back.", ["- next_visit_weeks 5 planned"]),
    ],
    "Tally. {}",
)

test_rest_that_is_no_rest = reads(
    [
        (
            "Off hind was loose. The rest of his are fine until I come back in four weeks.",
            ["- next_visit_weeks 4 planned", "RH shoe_state loose"],
        ),
        ("Lame near hind. Spell her ten days.", ["LH gait lame"]),
        ("Give him ten days' spell, then I'll see him in three weeks.", ["- next_visit_weeks 3 planned"]),
        ("Rest him a month and I'll be back in five weeks.", ["- next_visit_weeks 5 planned"]),
    ],
    "Tally. {}",
)

test_a_horse_to_be_seen_by_name = reads(
    [
        ("Trimmed. See Tally in eight.", ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"]),
        ("Trimmed. We'll see Tally in six or seven.", ["- next_visit_weeks 6 planned", "LF+RF+LH+RH work trim"]),
        ("Trimmed. I'll do Tally in seven, no, eight.", ["- next_visit_weeks 8 planned", "LF+RF+LH+RH work trim"]),
        ("Trimmed. See you in five.", ["- next_visit_weeks 5 planned", "LF+RF+LH+RH work trim"]),
        ("Trimmed. See Tally in stall eight.", ["LF+RF+LH+RH work trim"]),
        ("Trimmed. Couldn't see Tally in five inches of mud.", ["LF+RF+LH+RH work trim"]),
    ],
    "Tally. {}",
)

test_shod_new = reads(
    [
        (
            "Shod all round new, nought in front, double nought behind.",
            ["LF+RF shoe_size 0", "LF+RF+LH+RH work new_shoe", "LH+RH shoe_size 00"],
        ),
        ("Shod both fronts brand new, size one.", ["LF+RF shoe_size 1", "LF+RF work new_shoe"]),
        ("Shod him behind new.", ["LH+RH work new_shoe"]),
        ("Was shod all round new in May. Trimmed.", ["LF+RF+LH+RH work trim"]),
        ("Shod all round, size two.", ["LF+RF+LH+RH shoe_size 2"]),
        ("Condition score's a six.", ["- body_condition 6"]),
        ("Condition score is a six.", ["- body_condition 6"]),
    ],
    "Tally. {}",
)

test_how_often_till_i_hear = reads(
    [
        ("Every three weeks till I hear otherwise.", ["- next_visit_weeks 3 planned"]),
        (
            "Trimmed the hinds. Every three weeks until further notice.",
            ["- next_visit_weeks 3 planned", "LH+RH work trim"],
        ),
        ("Every five weeks unless I hear different.", ["- next_visit_weeks 5 planned"]),
        # no visit
        ("Soak it every two days till I hear otherwise.", ["- treatment soak"]),
        ("They had her every eight weeks till I told them otherwise.", []),
        ("I did her every eight weeks till I heard otherwise.", []),
    ],
    "Tally. {}",
)

test_wanted_at_so_many_weeks = reads(
    [
        ("Tally. They'd like five weeks, but I want her at four.", ["- next_visit_weeks 4 planned"]),
        ("Tally. Owner would go eight weeks, I want him at six.", ["- next_visit_weeks 6 planned"]),
        ("Tally. The vet wants him at four. Six weeks.", ["- next_visit_weeks 6 planned"]),
        ("Tally. They'd like five weeks.", ["- next_visit_weeks 5 planned"]),
    ]
)

test_with_the_rest = reads(
    [
        (
            "Lost the near fore. Back in six weeks with the rest of the string.",
            ["- next_visit_weeks 6 planned", "LF shoe_state lost"],
        ),
        ("Corn near fore. Six weeks with the rest.", ["- next_visit_weeks 6 planned", "LF finding corn"]),
        ("Corn near fore. Give him six weeks with rest.", ["LF finding corn"]),
        ("Corn near fore. Six weeks of rest.", ["LF finding corn"]),
    ],
    "Tansy. {}",
)
